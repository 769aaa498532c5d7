import { test } from "vitest";
import { comparing } from "./compare/comparing.ts";
import { examples, shippedDialects } from "./support/examples.ts";
test("explore", async () => {
  const job = examples.find(({name})=>name==="rain-gauge-foot")!.job;
  for (const a of ["rs274ngc"]) for (const d of shippedDialects) {
    if (a === d) continue;
    const out = (await comparing({ names: [a, d], job }))!;
    const p = out.pairs[0]; if (!p) { console.log(a, d, "refused"); continue; }
    console.log(`== ${a} ${d} alike ${p.alikeSteps} groups ${p.groups.length} unexplained ${p.groups.filter(g=>g.keys.length===0).length}\n` + p.groups.filter(g=>g.keys.length===0).map(g => `   ${g.level[0]} ${g.count} ${g.what} ${g.only??""} [${g.example.first} / ${g.example.second}]`).join("\n"));
  }
}, 100000);
