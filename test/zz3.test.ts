import { test } from "vitest";
import { comparing } from "./compare/comparing.ts";
import { leafOf } from "./compare/changed-dialect.ts";
import { quarryRouter } from "./support/dialects.ts";
import { weatherPlate } from "./support/examples.ts";
test("explore", async () => {
  const c = leafOf("staged-tools", [{key:"length-offset",value:"{ on: G43, off: G49, word: H, number: free, added: 0 }"},{key:"machine.change-effects.length-offset",value:"unchanged"},{key:"machine.length-offset.form",value:"with-first-z"}])!;
  const o = await comparing({ names: [quarryRouter, c.name], texts: {[c.name]: c.text}, job: weatherPlate, seen: i => { if (i.topic==="length-cancel") console.log(i.place, i.aspect, i.example, i.first[0]?.written.text, i.second[0]?.written.text, i.keys.join()); } });
  console.log(o!.pairs[0].listing.slice(0,14).map(r=>(r.first?.texts.join("|")??"-").slice(0,60).padEnd(62)+(r.second?.texts.join("|")??"-")).join("\n"));
}, 100000);
