import { test } from "vitest";
import { confirmGroups } from "./compare/confirming.ts";
import { quarryRouter } from "./support/dialects.ts";
import { weatherPlate } from "./support/examples.ts";
test("explore", async () => {
  for (const d of (process.env["ONLY"] ?? "explicit-words rs274ngc din-66025 staged-tools").split(" ")) {
    const t=Date.now();
    const all = await confirmGroups({ names: [quarryRouter, d], job: weatherPlate });
    console.log(`== ${d} ${Date.now()-t}ms confirmed ${all.filter(x=>x.way).length} of ${all.length}`);
    for (const c of all) if (!c.way) console.log(c.way ? `ok   ${c.way}` : "FAIL", c.group.count, c.group.level[0], c.group.what, "|", c.group.example.first, "/", c.group.example.second, "|", c.group.keys.map(k=>k.key).join(","), c.tried.length ? "\n        " + c.tried.join("\n        ") : "");
  }
}, 600000);
