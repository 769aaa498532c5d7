import { test } from "vitest";
import { comparing } from "./compare/comparing.ts";
import { quarryRouter } from "./support/dialects.ts";
import { weatherPlate } from "./support/examples.ts";
test("explore", async () => {
  for (const d of (process.env["ONLY"] ?? "explicit-words rs274ngc din-66025 staged-tools").split(" ")) {
    const t=Date.now();
    const out = (await comparing({ names: [quarryRouter, d], job: weatherPlate }))!;
    const p = out.pairs[0];
    console.log(`== ${d} ${Date.now()-t}ms alike ${p.alikeSteps} groups ${p.groups.length} unexplained ${p.groups.filter(g=>g.keys.length===0).length}\n` + p.groups.map(g => `${g.level[0]} ${g.count} ${g.what} [${g.example.first} / ${g.example.second}] because ${g.keys.map(k=>`${k.key}`).join(", ")}`).join("\n"));
  }
}, 100000);
