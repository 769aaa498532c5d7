import { readFileSync } from "node:fs";
import { inferDialect } from "../../core/infer/index.ts";
import { dialectLoader } from "../support/dialects.ts";
const files = process.argv.slice(2).filter((a) => !a.startsWith("--"));
const from = process.argv.find((a) => a.startsWith("--from="))?.slice(7);
const t = Date.now();
const r = await inferDialect({ programs: files.map((file) => ({ file: file.split("/").at(-1)!, bytes: readFileSync(file) })), loader: dialectLoader(), name: "inferred", ...(from ? { from } : {}) }, (f) => console.log(f.severity, f.rule, f.message.slice(0, 300), f.place?.offset));
if (r) {
  if (!process.argv.includes("--short")) console.log(r.text);
  console.log(r.candidates.map((c) => `${c.name} ${c.keys}`).join(", "), "chosen", r.archetype.name, "asked", r.asked.length);
  for (const m of r.measured) console.log(m.file, m.blocks, "identical", m.identical, "renum", m.renumbered, "reord", m.reordered, "added", m.added, m.different.slice(0, 6), m.findings.slice(0,4).map(f => f.rule + " " + f.message.slice(0,150)));
}
console.log(Date.now() - t, "ms");
