import { test } from "vitest";
import { confirmGroups } from "./compare/confirming.ts";
import { examples, shippedDialects } from "./support/examples.ts";
test("explore", async () => {
  const job = examples.find(({name})=>name==="rain-gauge-foot")!.job;
  let sum = 0, ok = 0;
  for (const a of (process.env["FIRST"] ?? "rs274ngc").split(" ")) for (const d of shippedDialects) {
    if (a === d) continue;
    const all = await confirmGroups({ names: [a, d], job });
    sum += all.length; ok += all.filter(x=>x.way).length;
    console.log(`== ${a} ${d} confirmed ${all.filter(x=>x.way).length} of ${all.length}`);
    for (const c of all) if (!c.way) console.log("FAIL", c.group.count, c.group.level[0], c.group.what, c.group.only ?? "", "|", c.group.example.first, "/", c.group.example.second, "|", c.group.keys.map(k=>k.key).join(","), c.tried.length ? "\n        " + c.tried.join("\n        ") : "");
  }
  console.log("sum", ok, sum);
}, 1200000);
