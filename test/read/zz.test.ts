import { it } from "vitest";
import { memorySource } from "#base";
import { read } from "#read";
import { ready } from "../support/ready.ts";
it("speed", async () => {
  const made = await ready("rs274ngc");
  const run = (text: string) => { const bytes = new TextEncoder().encode(text); const t = performance.now(); let n = 0; const rules = new Set<string>();
    for (const b of read([bytes], made.dialect.format, made.dialect.machine, { units: "mm", source: memorySource(bytes) }, (f) => rules.add(f.rule))) n += b.count;
    console.log(n, (performance.now() - t).toFixed(0), "ms", [...rules].join()); };
  const h = "%\nG17 G21 G40 G49 G54 G61 G80 G90 G94 G98\nG0 X0 Y0 Z5\n";
  run(h + "#1=1\no1 while [#1]\nG0 X1\no1 endwhile\nM2\n%\n");
  run(h + "#1=1\no1 while [#1 LT 200000]\nG0 X[#1/1000] Y[SIN[#1]*10]\n#1=[#1+1]\no1 endwhile\nM2\n%\n");
  run(h + "F100\n" + "G1 X1. Y2.\nX1.5\n".repeat(200000) + "M2\n%\n");
});
