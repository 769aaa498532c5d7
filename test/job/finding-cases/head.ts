import { jobOf } from "../jobs.ts";
import type { FindingCase } from "./builders.ts";
import { tool, operation, head, spares, tapJob } from "./builders.ts";

/** What the head means. */
export const casesOfHead: readonly FindingCase[] = [
  {
    rule: "job/box",
    what: "stock inside out",
    job: head(`"stock":{"min":¦[0,0,0],"max":[1,1,0]},`),
    says: "in z",
  },
  {
    rule: "job/box",
    what: "a fixture inside out",
    job: head(`"fixtures":[{"name":"stop","min":¦[5,0,0],"max":[1,1,1]}],`),
    says: "`stop`",
  },
  { rule: "job/tool", what: "speeds inside out", job: tool(`"kind":"drill","minRpm":¦2000,"maxRpm":1000`) },
  {
    rule: "job/tool-undefined",
    what: "a tool that is not there",
    job: jobOf(`{"rapid":{"x":0,"y":0}}`).replace(`"tool":1`, `"tool":¦7`),
  },
  {
    rule: "job/unique",
    what: "two tools of one number",
    job: tool(`"kind":"drill"},{"number":¦1,"kind":"drill","diameter":2`),
  },
  {
    rule: "job/unique",
    what: "two operations of one id",
    job: jobOf(
      `{"rapid":{"x":0,"y":0}}]},{"id":¦"op10","tool":1,"spindle":{"rpm":1,"direction":"cw"},"moves":[{"rapid":{"x":0,"y":0}}`,
    ),
  },
  { rule: "job/spindle", what: "a drill without a spindle", job: operation("drill", "") },
  {
    rule: "job/spindle",
    what: "a pen with a spindle",
    job: operation("pen", `"spindle":¦{"rpm":9,"direction":"cw"},`).replace("¦{", "{"),
  },
  {
    rule: "job/spindle",
    what: "a probe with a spindle",
    job: operation("probe", `"spindle":¦{"rpm":9,"direction":"cw"},`).replace("¦{", "{"),
  },
  {
    rule: "job/spindle",
    what: "a knife with a spindle",
    job: operation("drag-knife", `"spindle":¦{"rpm":9,"direction":"cw"},`).replace("¦{", "{"),
  },
  { rule: "job/spindle", what: "a speed for a pen", job: tapJob("", "pen", "", `¦{"spindle":{"rpm":9}}`) },
  {
    rule: "job/feed",
    what: "a pen that feeds per revolution",
    job: operation("pen", `"feedMode":¦"per-revolution",`).replace("¦{", "{"),
  },
  {
    rule: "limit/tool",
    what: "a left-hand tool turned cw",
    job: tool(`"kind":"drill","hand":"left"`).replace(`"direction":`, `"direction":¦`),
    fix: "ccw",
  },
  {
    rule: "limit/tool",
    what: "a right-hand tool turned ccw",
    job: tool(`"kind":"drill","hand":"right"`).replace(`"direction":"cw"`, `"direction":¦"ccw"`),
    fix: "Turn it cw",
  },
  { rule: "job/spare", what: "a spare for itself", job: spares(`"spareFor":¦2`), says: "itself" },
  {
    rule: "job/spare",
    what: "a spare for a tool that is not there",
    job: spares(`"spareFor":¦5`),
    says: "tool 5",
  },
  {
    rule: "job/spare",
    what: "a spare for a spare",
    job: spares(`"spareFor":1},{"number":3,"kind":"drill","diameter":6,"tipAngle":118,"spareFor":¦2`),
    fix: "Name tool 1",
  },
  {
    rule: "job/spare",
    what: "a spare of another diameter",
    job: spares(`"spareFor":¦1`).replace(
      `"number":2,"kind":"drill","diameter":6`,
      `"number":2,"kind":"drill","diameter":5`,
    ),
    says: "they differ in diameter.",
  },
  {
    rule: "job/spare",
    what: "a spare of another kind, with flutes that its tool does not state",
    job: spares(`"flutes":2,"spareFor":¦1`).replace(
      `"number":2,"kind":"drill"`,
      `"number":2,"kind":"reamer"`,
    ),
    says: "they differ in kind, flutes.",
  },
  {
    rule: "job/spare",
    what: "a spare that does not state the point of its tool",
    job: spares(`"spareFor":¦1`).replace(`,"tipAngle":118,"spareFor"`, `,"spareFor"`),
    says: "they differ in tip angle.",
  },
  {
    rule: "job/spare",
    what: "a spare with the length offset of its tool",
    job: spares(`"lengthOffset":1,"spareFor":¦1`),
    says: "it has length offset 1, and so has tool 1.",
  },
  {
    rule: "job/spare",
    what: "a spare with the length offset of another spare",
    job: spares(
      `"spareFor":1},{"number":3,"kind":"drill","diameter":6,"tipAngle":118,"lengthOffset":2,"spareFor":¦1`,
    ),
    says: "it has length offset 2, and so has tool 2.",
  },
  {
    rule: "job/spare",
    what: "a spare without a radius offset, where its tool has one",
    job: spares(`"spareFor":¦1`).replace(`"life":10`, `"life":10,"radiusOffset":11`),
    says: "tool 1 has a `radiusOffset` and it has none.",
  },
  {
    rule: "job/spare",
    what: "a spare with the radius offset of its tool",
    job: spares(`"radiusOffset":11,"spareFor":¦1`).replace(`"life":10`, `"life":10,"radiusOffset":11`),
    says: "it has radius offset 11, and so has tool 1.",
  },
  {
    rule: "job/spare",
    what: "a spare that is not measured as its tool is",
    job: spares(`"spareFor":¦1`).replace(`"life":10`, `"life":10,"measure":true`),
    says: "they differ in measuring.",
  },
  {
    rule: "job/spare",
    what: "a spare that an operation names",
    job: spares(`"spareFor":1`).replace(`"tool":1`, `"tool":¦2`),
    says: "`op10` uses tool 2",
    fix: "Name tool 1",
  },
  {
    rule: "job/spare",
    what: "a spare that never takes over",
    job: spares(`"spareFor":¦1`).replace(`,"life":10`, ""),
    says: "never takes over",
    fix: "`life` of tool 1",
  },
  {
    rule: "job/tool-size",
    what: "a diameter that stands for one that nobody said",
    job: tool(`"kind":"drill"},{"number":2,"kind":"drill","diameter":¦100000`),
  },
  {
    rule: "offset/shared",
    what: "one length offset for two tools",
    job: tool(`"kind":"drill"},{"number":2,"kind":"drill","diameter":2,"lengthOffset":¦1`),
  },
  {
    rule: "offset/shared",
    what: "a length offset that is another's number",
    job: tool(`"kind":"drill","lengthOffset":2},¦{"number":2,"kind":"drill","diameter":2`),
  },
];
