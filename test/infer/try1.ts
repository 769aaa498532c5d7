import { readFileSync } from "node:fs";
import { postText, proveText } from "../../core/index.ts";
import { ready } from "../support/ready.ts";
import { quarryRouter } from "../support/dialects.ts";
import { inferFrom } from "./support.ts";
const job = (n: string) => readFileSync(`examples/${n}/${n}.job.json`, "utf8");
const quarry = await ready(quarryRouter);
const demo = postText({ job: job("weather-plate") }, quarry).program!;
const { found } = await inferFrom([demo]);
console.log(found!.text.split("\n").length - 1, "lines", found!.asked.length, "questions");
for (const n of ["sensor-bracket-inch", "rain-gauge-foot"]) {
const posted = postText({ job: job(n) }, found!);
console.log(posted.outcome.verdict, posted.outcome.findings.map((f) => `${f.severity} ${f.rule} ${f.message.slice(0, 120)}`).join("\n"));
const show = (label: string, p: string | undefined, r: any, against = true) => { if (!p) { console.log(label, "no program"); return; } const o = proveText(p, r, against ? { job: job(n) } : undefined); console.log(label, o.verdict, o.findings.filter((f) => f.severity !== "note").map((f) => `${f.severity} ${f.rule} ${f.message.slice(0, 140)}`).join("\n")); };
show("under quarry", posted.program, quarry, false);
const base = await ready("explicit-words");
show("explicit-words' own under quarry", postText({ job: job(n) }, base).program, quarry, false);
show("quarry's own", postText({ job: job(n) }, quarry).program, quarry, false);
}
