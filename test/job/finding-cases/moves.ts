import { jobOf, jobWith } from "../jobs.ts";
import type { FindingCase } from "./builders.ts";
import { holes, levels, arc, tapJob, cw, tap } from "./builders.ts";

/** What the moves mean. */
export const casesOfMoves: readonly FindingCase[] = [
  { rule: "job/first-move", what: "a line first", job: jobOf(`¦{"line":{"x":1,"y":1},"feed":9}`) },
  { rule: "job/first-move", what: "a rapid in x alone first", job: jobOf(`¦{"rapid":{"x":1}}`) },
  {
    rule: "job/first-move",
    what: "a rapid in z alone first",
    job: jobOf(`{"note":"up"},¦{"rapid":{"z":20}},{"rapid":{"x":0,"y":0}}`),
  },
  { rule: "job/first-move", what: "an arc first", job: jobOf(`¦${arc(`{"x":10,"y":0,"cx":5,"cy":0}`)}`) },
  { rule: "job/first-move", what: "holes first", job: jobOf(`¦${holes(levels)},"feed":9}`) },
  {
    rule: "job/first-move",
    what: "a path of lines first",
    job: jobOf(`¦{"path":{"kind":"line","points":[[0,0,0]]},"feed":9}`),
  },
  {
    rule: "job/arc-radius",
    what: "radii that differ by 0.0051 mm",
    job: jobWith(`{"rapid":{"x":2,"y":0}},${arc(`¦{"x":-2.0051,"y":0,"cx":0,"cy":0}`)}`),
    says: "2.0051",
  },
  {
    rule: "job/arc-radius",
    what: "radii that differ by 0.1001 %",
    job: jobWith(`{"rapid":{"x":100,"y":0}},${arc(`¦{"x":-100.1001,"y":0,"cx":0,"cy":0}`)}`),
  },
  {
    rule: "job/arc-radius",
    what: "a centre in the start",
    job: jobWith(arc(`¦{"x":0,"y":0.001,"cx":0,"cy":0}`)),
  },
  {
    rule: "job/arc-radius",
    what: "radii in zx",
    job: jobWith(`{"line":{"z":0},"feed":9},{"arc":¦{"z":0,"x":10,"cz":0,"cx":4},"turn":"cw","plane":"zx"}`),
  },
  {
    rule: "job/arc-radius",
    what: "radii in yz from clearance",
    job: jobWith(
      `{"arc":{"y":20,"z":15,"cy":10,"cz":14},"turn":"cw","plane":"yz","feed":9},{"arc":{"y":0,"z":15,"cy":10,"cz":16},"turn":"cw","plane":"yz"},{"arc":¦{"y":8,"z":15,"cy":3,"cz":15},"turn":"cw","plane":"yz"}`,
    ),
  },
  {
    rule: "job/holes",
    what: "a depth at top",
    job: jobWith(`${holes(`"top":0,¦"depth":0,"retract":2`)},"feed":9}`),
    says: "below top",
  },
  {
    rule: "job/holes",
    what: "a retract below top",
    job: jobWith(`${holes(`"top":0,"depth":-1,¦"retract":-0.5`)},"feed":9}`),
    says: "not below top",
  },
  {
    rule: "job/holes",
    what: "holes under inverse-time feed",
    job: jobWith(`¦${holes(levels)},"feed":9}`, `"feedMode":"inverse-time",`),
  },
  {
    rule: "job/tap",
    what: "a feed that is not speed times lead",
    job: tapJob("", "tap", cw, `${tap},¦"feed":501}`),
    fix: "501 rpm",
  },
  {
    rule: "job/tap",
    what: "a feed that is not the changed speed times lead",
    job: tapJob("", "tap", cw, `{"spindle":{"rpm":400}},${tap},¦"feed":500}`),
  },
  {
    rule: "job/tap",
    what: "a feed per revolution that is not the lead",
    job: tapJob("", "tap", cw, `${tap},¦"feed":2}`, `"feedMode":"per-revolution",`),
  },
  {
    rule: "job/tap",
    what: "another lead than the tool's",
    job: tapJob(`,"lead":1.25`, "tap", cw, `${tap.replace('"lead"', '¦"lead"')}}`),
  },
  { rule: "job/tap", what: "a tap that never turns", job: tapJob("", "pen", "", `¦${tap}}`) },
  { rule: "job/tap", what: "(a warning) an end mill that taps", job: tapJob("", "end-mill", cw, `¦${tap}}`) },
  { rule: "job/feed", what: "a line without a feed", job: jobWith(`¦{"line":{"x":1}}`) },
  {
    rule: "job/feed",
    what: "an arc without a feed",
    job: jobWith(`¦{"arc":{"x":0,"y":0,"cx":1,"cy":0},"turn":"cw"}`),
  },
  {
    rule: "job/feed",
    what: "a path without a feed",
    job: jobWith(`¦{"path":{"kind":"line","points":[[0,0,0]]}}`),
  },
  { rule: "job/feed", what: "holes without a feed", job: jobWith(`¦${holes(levels)}}`) },
  {
    rule: "job/feed",
    what: "holes that rely on a feed before",
    job: jobWith(`{"line":{"z":3},"feed":9},¦${holes(levels)}}`),
  },
  {
    rule: "job/feed",
    what: "a line that relies on the feed of holes",
    job: jobWith(`${holes(levels)},"feed":9},¦{"line":{"x":5}}`),
  },
  {
    rule: "job/feed",
    what: "a line behind holes that relies on a feed before them",
    job: jobWith(`{"line":{"z":3},"feed":9},${holes(levels)},"feed":9},¦{"line":{"x":5}}`),
  },
  {
    rule: "job/feed",
    what: "a line that relies on a feed under inverse-time feed",
    job: jobWith(`{"line":{"x":1},"feed":9},¦{"line":{"x":2}}`, `"feedMode":"inverse-time",`),
  },
  {
    rule: "job/path",
    what: "a path under inverse-time feed",
    job: jobWith(`¦{"path":{"kind":"line","points":[[0,0,0]]},"feed":9}`, `"feedMode":"inverse-time",`),
  },
  {
    rule: "job/path",
    what: "a path of rapids under inverse-time feed",
    job: jobWith(`¦{"path":{"kind":"rapid","points":[[0,0,20]]}}`, `"feedMode":"inverse-time",`),
  },
  {
    rule: "job/rotary",
    what: "a line that turns and goes straight",
    job: jobWith(`{"line":¦{"x":1,"c":90},"feed":9}`),
  },
  {
    rule: "job/compensation",
    what: "compensation at holes",
    job: jobWith(`{"comp":"left"},¦${holes(levels)},"feed":9},{"comp":"off"}`),
  },
  {
    rule: "job/compensation",
    what: "compensation at a pause",
    job: jobWith(`{"comp":"right"},¦{"pause":"look"},{"comp":"off"}`),
  },
  {
    rule: "job/compensation",
    what: "compensation at the end",
    job: jobWith(`{"comp":"left"}`).replace("]}]}", "¦]}]}"),
  },
  {
    rule: "job/compensation",
    what: "compensation in an arc in zx",
    job: jobWith(
      `{"comp":"left"},¦{"arc":{"z":15,"x":0,"cz":15,"cx":5},"turn":"cw","plane":"zx","feed":9},{"comp":"off"}`,
    ),
  },
  {
    rule: "job/pause",
    what: "a pause below clearance",
    job: jobWith(`{"rapid":{"z":14.9999999}},¦{"pause":"look"}`),
  },
  {
    rule: "job/pause",
    what: "an optional pause below clearance",
    job: jobWith(`{"rapid":{"z":1}},¦{"pause":"look","optional":true}`),
  },
  {
    rule: "job/pause",
    what: "a pause on the level after holes",
    job: jobWith(`${holes(levels)},"feed":9},¦{"pause":"look"}`),
  },
  {
    rule: "job/more",
    what: "fifty faults",
    job: jobOf(`{"rapid":{"x":0,"y":0}}${',{"dwell":-1}'.repeat(49)},{"dwell":-1¦},{"dwell":-1}`),
  },
];
