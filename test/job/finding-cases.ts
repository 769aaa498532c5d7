import type { JobRule } from "../../core/1-job/findings.ts";
import { jobOf, jobWith } from "./jobs.ts";

/** A spoilt job: `¦` stands before the byte that the finding must point at, and is taken out before reading. */
export interface FindingCase {
  readonly rule: JobRule;
  readonly what: string;
  readonly job: string;
  /** A part of the message, where that matters. */
  readonly says?: string;
  /** A part of the fix, where that matters. */
  readonly fix?: string;
}

const tool = (rest: string): string =>
  `{"job":"1","units":"mm","clearance":15,"tools":[{"number":1,"diameter":6,${rest}}],` +
  `"operations":[{"id":"op10","tool":1,"spindle":{"rpm":1000,"direction":"cw"},"moves":[{"rapid":{"x":0,"y":0}}]}]}`;

const operation = (kind: string, rest: string): string =>
  `{"job":"1","units":"mm","clearance":15,"tools":[{"number":1,"kind":"${kind}","diameter":6}],` +
  `"operations":[¦{"id":"op10","tool":1,${rest}"moves":[{"rapid":{"x":0,"y":0}}]}]}`;

const head = (rest: string): string => jobOf(`{"rapid":{"x":0,"y":0}}`, "", rest);
const holes = (rest: string): string => `{"holes":{"kind":"drill","at":[[1,1]],${rest}}`;
const levels = `"top":0,"depth":-5,"retract":2`;
const arc = (rest: string): string => `{"arc":${rest},"turn":"cw","feed":100}`;
const tapJob = (toolRest: string, kind: string, spindle: string, move: string, mode = ""): string =>
  `{"job":"1","units":"mm","clearance":15,"tools":[{"number":1,"kind":"${kind}","diameter":6${toolRest}}],` +
  `"operations":[{"id":"op10","tool":1,${spindle}${mode}"moves":[{"rapid":{"x":0,"y":0}},${move}]}]}`;
const cw = `"spindle":{"rpm":500,"direction":"cw"},`;
const tap = `{"holes":{"kind":"tap","at":[[1,1]],${levels},"lead":1}`;

/** The text itself. */
const text: readonly FindingCase[] = [
  { rule: "job/json", what: "an empty file", job: "¦" },
  { rule: "job/json", what: "white space alone", job: "¦ \n\t ", says: "empty" },
  { rule: "job/json", what: "binary data", job: "¦\u0003\u0001\u0002", says: "binary" },
  { rule: "job/type", what: "a list", job: "¦[1]" },
  { rule: "job/json", what: "a job cut short in a key", job: `{"job":"1","un¦`, says: "cut short" },
  { rule: "job/json", what: "a job cut short behind a value", job: `{"job":"1"¦` },
  { rule: "job/json", what: "a job cut short in moves", job: jobWith(`{"line":{"x":1`).slice(0, -4) + "¦" },
  { rule: "job/json", what: "a comma too many in an object", job: `{"job":"1",¦}` },
  { rule: "job/json", what: "a comma too many in moves", job: jobOf(`{"rapid":{"x":0,"y":0}},¦`) },
  { rule: "job/json", what: "a comma left out in a move", job: jobWith(`{"line":{"x":1¦"y":2},"feed":9}`), says: '`"`' },
  { rule: "job/json", what: "brackets that do not match", job: jobWith(`{"line":{"x":1¦]},"feed":9}`) },
  { rule: "job/json", what: "a number with a leading zero", job: jobWith(`{"line":{"x":0¦1},"feed":9}`) },
  { rule: "job/json", what: "a number that ends in a point", job: jobWith(`{"line":{"x":¦1.},"feed":9}`) },
  { rule: "job/json", what: "a number that begins with a point", job: jobWith(`{"line":{"x":¦.5},"feed":9}`) },
  { rule: "job/json", what: "a number that begins with a plus", job: jobWith(`{"line":{"x":¦+5},"feed":9}`) },
  { rule: "job/json", what: "a minus alone", job: jobWith(`{"line":{"x":¦-},"feed":9}`) },
  { rule: "job/json", what: "an exponent without digits", job: jobWith(`{"line":{"x":¦1e},"feed":9}`) },
  { rule: "job/json", what: "a key without quotes", job: jobWith(`{¦line:{"x":1}}`) },
  { rule: "job/json", what: "a comment", job: `{"job":"1",¦// version\n"units":"mm"}` },
  { rule: "job/json", what: "an unknown literal", job: jobWith(`{"pause":"p","optional":¦yes}`) },
  { rule: "job/json", what: "a control character in a text", job: jobWith(`{"note":"a¦\nb"}`) },
  { rule: "job/json", what: "an escape that JSON does not have", job: jobWith(`{"note":"a¦\\x"}`) },
  { rule: "job/json", what: "half an escape", job: jobWith(`{"note":"a¦\\u12g4"}`) },
  { rule: "job/json", what: "something behind the job", job: `${jobWith('{"note":""}')} ¦x` },
  { rule: "job/json", what: "moves closed by a brace", job: `{"operations":[{"moves":[1¦}]}]}` },
  { rule: "job/json", what: "a NUL", job: `{"job":¦\0"1"}` },
  { rule: "job/encoding", what: "a byte order mark", job: "¦\ufeff{}", fix: "without a byte order mark" },
  { rule: "job/encoding", what: "half a surrogate pair", job: jobWith(`{"note":"¦\\ud800"}`) },
  { rule: "job/limit", what: "a text over 64 kB", job: `{"job":¦"${"x".repeat(65_600)}"}` },
  { rule: "job/limit", what: "a text over 64 kB in moves", job: jobWith(`{"note":¦"${"x".repeat(65_600)}"}`) },
  { rule: "job/limit", what: "lists 17 deep", job: `{"job":${"[".repeat(15)}¦[` },
  { rule: "job/limit", what: "lists 17 deep in moves", job: jobOf("[".repeat(12) + "¦[") },
  { rule: "job/limit", what: "a number of 2000 digits", job: jobWith(`{"line":{"x":¦${"1".repeat(2000)}},"feed":9}`) },
];

/** The format. */
const form: readonly FindingCase[] = [
  { rule: "job/version", what: "another version", job: `{"job":¦"2","units":"mm","clearance":1,"tools":[{"number":1,"kind":"pen","diameter":1}],"operations":[{"id":"a","tool":1,"moves":[{"rapid":{"x":0,"y":0}}]}]}` },
  { rule: "job/type", what: "a text for a number in the head", job: head(`"workOffset":¦"1",`), says: "a whole number" },
  { rule: "job/type", what: "a text for a number in a move", job: jobWith(`{"line":{"x":¦"1"},"feed":9}`), says: "`x` must be a number" },
  { rule: "job/type", what: "null for axes", job: jobWith(`{"line":¦null,"feed":9}`), says: "The line must be an object" },
  { rule: "job/type", what: "half a turn", job: jobWith(`{"arc":{"x":0,"y":0,"cx":1,"cy":0},"turn":"cw","turns":¦1.5,"feed":9}`), says: "whole" },
  { rule: "job/type", what: "a number for a coolant", job: jobWith(`{"coolant":¦1}`), says: "a text or a list" },
  { rule: "job/type", what: "a number for the coolant of an operation", job: jobOf(`{"rapid":{"x":0,"y":0}}`, `"coolant":¦1,`), says: "a text or a list" },
  { rule: "job/type", what: "a move that is no object", job: jobWith(`¦5`), says: "A move must be an object" },
  { rule: "job/type", what: "a point that is no list", job: jobWith(`{"path":{"kind":"rapid","points":[[0,0,9],¦7]}}`) },
  { rule: "job/unknown-key", what: "a slip in a key of a move", job: jobWith(`{"line":{"x":1},¦"fed":9}`), says: "did you mean `feed`?", fix: "`feed`" },
  { rule: "job/unknown-key", what: "a slip in a key of the head", job: head(`¦"stok":1,`), says: "The job has no key `stok`; did you mean `stock`?" },
  { rule: "job/unknown-key", what: "a key of another kind", job: jobWith(`{"line":{"x":1},"feed":9,¦"turn":"cw"}`), says: "kind `line`" },
  { rule: "job/unknown-key", what: "a feed on a rapid", job: jobWith(`{"rapid":{"x":1},¦"feed":9}`) },
  { rule: "job/unknown-key", what: "a feed on a path of rapids", job: jobWith(`{"path":{"kind":"rapid","points":[[0,0,9]]},¦"feed":9}`) },
  { rule: "job/unknown-key", what: "a rotary word in an arc", job: jobWith(arc(`{"x":0,"y":0,"cx":1,"cy":0,¦"a":9}`)) },
  { rule: "job/unknown-key", what: "the centre of another plane", job: jobWith(arc(`{"x":0,"y":0,"cx":1,"cy":0,¦"cz":9}`)), says: "centre" },
  { rule: "job/unknown-key", what: "a key of other holes", job: jobWith(`${holes(`${levels},¦"peck":1`)},"feed":9}`), says: "kind `drill`" },
  { rule: "job/unknown-key", what: "an escaped slip", job: jobWith(`{"line":{"x":1},¦"fe\\u0064d":9}`), says: "did you mean `feed`" },
  { rule: "job/repeated-key", what: "a key twice in the head", job: head(`"workOffset":1,¦"workOffset":1,`) },
  { rule: "job/repeated-key", what: "a key twice in a move", job: jobWith(`{"line":{"x":1},"feed":9,¦"feed":9}`) },
  { rule: "job/repeated-key", what: "a kind twice", job: jobWith(`{"line":{"x":1},¦"line":{"x":1},"feed":9}`) },
  { rule: "job/repeated-key", what: "an axis twice, once escaped", job: jobWith(`{"line":{"x":1,¦"\\u0078":2},"feed":9}`) },
  { rule: "job/repeated-key", what: "a key twice in an arc", job: jobWith(arc(`{"x":0,"y":0,"cx":1,"cy":0,¦"cx":1}`)) },
  { rule: "job/repeated-key", what: "a key twice in holes", job: jobWith(`${holes(`${levels},¦"top":0`)},"feed":9}`) },
  { rule: "job/repeated-key", what: "a key twice in a path", job: jobWith(`{"path":{"kind":"rapid",¦"kind":"rapid","points":[[0,0,9]]}}`) },
  { rule: "job/repeated-key", what: "a speed twice", job: jobWith(`{"spindle":{"rpm":1,¦"rpm":1}}`) },
  { rule: "job/missing-key", what: "no units", job: `¦{"job":"1","clearance":1,"tools":[{"number":1,"kind":"pen","diameter":1}],"operations":[{"id":"a","tool":1,"moves":[{"rapid":{"x":0,"y":0}}]}]}`, says: "The job needs the key `units`" },
  { rule: "job/missing-key", what: "an arc without a turn", job: jobWith(`¦{"arc":{"x":0,"y":0,"cx":1,"cy":0},"feed":9}`), says: "`turn`" },
  { rule: "job/missing-key", what: "an arc without an end", job: jobWith(arc(`¦{"x":0,"cx":1,"cy":0}`)), says: "The arc in xy needs the key `y`" },
  { rule: "job/missing-key", what: "an arc without a centre", job: jobWith(`{"arc":¦{"z":0,"x":0,"cx":1},"turn":"cw","plane":"zx","feed":9}`), says: "The arc in zx needs the key `cz`" },
  { rule: "job/missing-key", what: "pecks without a peck", job: jobWith(`{"holes":¦{"kind":"peck","at":[[0,0]],${levels}},"feed":9}`), says: "`peck`" },
  { rule: "job/missing-key", what: "a path without points", job: jobWith(`{"path":¦{"kind":"rapid"}}`), says: "`points`" },
  { rule: "job/number", what: "NaN in a move", job: jobWith(`{"line":{"x":¦NaN},"feed":9}`) },
  { rule: "job/number", what: "Infinity in a move", job: jobWith(`{"line":{"x":¦-Infinity},"feed":9}`) },
  { rule: "job/number", what: "1e999 in a move", job: jobWith(`{"line":{"x":¦1e999},"feed":9}`) },
  { rule: "job/number", what: "NaN in the head", job: head(`"workOffset":¦NaN,`) },
  { rule: "job/number", what: "-1e999 in the head", job: head(`"workOffset":¦-1e999,`) },
  { rule: "job/range", what: "feed 0", job: jobWith(`{"line":{"x":1},"feed":¦0}`), says: "above 0" },
  { rule: "job/range", what: "feed -0.0", job: jobWith(`{"line":{"x":1},"feed":¦-0.0}`) },
  { rule: "job/range", what: "a dwell below 0", job: jobWith(`{"dwell":¦-1}`) },
  { rule: "job/range", what: "a dwell that rounds to nothing", job: jobWith(`{"dwell":¦0.0000001}`) },
  { rule: "job/range", what: "a length over 1 km", job: jobWith(`{"line":{"x":¦1000000.1},"feed":9}`), says: "1000000 mm" },
  { rule: "job/range", what: "a clearance over 1 km", job: `{"job":"1","units":"inch","clearance":¦39371,"tools":[{"number":1,"kind":"pen","diameter":1}],"operations":[{"id":"a","tool":1,"moves":[{"rapid":{"x":0,"y":0}}]}]}`, says: "39370 inch" },
  { rule: "job/range", what: "no turns", job: jobWith(`{"arc":{"x":0,"y":0,"cx":1,"cy":0},"turn":"cw","turns":¦0,"feed":9}`) },
  { rule: "job/range", what: "work offset 10", job: head(`"workOffset":¦10,`), says: "at most 9" },
  { rule: "job/value", what: "a slip in a word of a move", job: jobWith(`{"comp":¦"lft"}`), says: "did you mean `left`?" },
  { rule: "job/value", what: "a slip in a word of the head", job: tool(`"kind":¦"endmill"`), says: "did you mean `end-mill`?" },
  { rule: "job/value", what: "a slip in a coolant", job: jobOf(`{"rapid":{"x":0,"y":0}}`, `"coolant":¦"mst",`), says: "did you mean `mist`?" },
  { rule: "job/value", what: "off in a list of coolants", job: jobOf(`{"rapid":{"x":0,"y":0}}`, `"coolant":["mist",¦"off"],`) },
  { rule: "job/value", what: "a plane by its other name", job: jobWith(`{"arc":{"x":0,"y":0,"cx":1,"cy":0},"turn":"cw","plane":¦"xz","feed":9}`), says: "did you mean `zx`?" },
  { rule: "job/value", what: "a blank id", job: `{"job":"1","units":"mm","clearance":1,"tools":[{"number":1,"kind":"pen","diameter":1}],"operations":[{"id":¦" ","tool":1,"moves":[{"rapid":{"x":0,"y":0}}]}]}` },
  { rule: "job/list", what: "no tools", job: `{"job":"1","units":"mm","clearance":1,"tools":¦[],"operations":[{"id":"a","tool":1,"moves":[{"rapid":{"x":0,"y":0}}]}]}`, says: "at least 1 element" },
  { rule: "job/list", what: "no moves", job: jobOf("").replace(`"moves":`, `"moves":¦`) },
  { rule: "job/list", what: "no points", job: jobWith(`{"path":{"kind":"rapid","points":¦[]}}`) },
  { rule: "job/list", what: "no holes", job: jobWith(`{"holes":{"kind":"drill","at":¦[],${levels}},"feed":9}`) },
  { rule: "job/list", what: "a point in the plane", job: jobWith(`{"path":{"kind":"rapid","points":[¦[0,0]]}}`), says: "3 numbers" },
  { rule: "job/list", what: "a hole in space", job: jobWith(`{"holes":{"kind":"drill","at":[[1,2],¦[1,2,3]],${levels}},"feed":9}`), says: "2 numbers" },
  { rule: "job/list", what: "a coolant twice", job: jobWith(`{"coolant":["mist",¦"mist"]}`) },
  { rule: "job/list", what: "a coolant twice in the head", job: jobOf(`{"rapid":{"x":0,"y":0}}`, `"coolant":¦["mist","mist"],`) },
  { rule: "job/move", what: "no kind", job: jobWith(`¦{"feed":9}`) },
  { rule: "job/move", what: "an empty move", job: jobWith(`¦{}`) },
  { rule: "job/move", what: "two kinds", job: jobWith(`{"line":{"x":1},¦"rapid":{"x":1},"feed":9}`), says: "both `line` and `rapid`" },
  { rule: "job/axes", what: "a line to nowhere", job: jobWith(`{"line":¦{},"feed":9}`) },
  { rule: "job/axes", what: "a rapid to nowhere", job: jobWith(`{"rapid":¦{}}`) },
];

/** What the head means. */
const meaning: readonly FindingCase[] = [
  { rule: "job/box", what: "stock inside out", job: head(`"stock":{"min":¦[0,0,0],"max":[1,1,0]},`), says: "in z" },
  { rule: "job/box", what: "a fixture inside out", job: head(`"fixtures":[{"name":"stop","min":¦[5,0,0],"max":[1,1,1]}],`), says: "`stop`" },
  { rule: "job/tool", what: "speeds inside out", job: tool(`"kind":"drill","minRpm":¦2000,"maxRpm":1000`) },
  { rule: "job/tool-undefined", what: "a tool that is not there", job: jobOf(`{"rapid":{"x":0,"y":0}}`).replace(`"tool":1`, `"tool":¦7`) },
  { rule: "job/unique", what: "two tools of one number", job: tool(`"kind":"drill"},{"number":¦1,"kind":"drill","diameter":2`) },
  { rule: "job/unique", what: "two operations of one id", job: jobOf(`{"rapid":{"x":0,"y":0}}]},{"id":¦"op10","tool":1,"spindle":{"rpm":1,"direction":"cw"},"moves":[{"rapid":{"x":0,"y":0}}`) },
  { rule: "job/spindle", what: "a drill without a spindle", job: operation("drill", "") },
  { rule: "job/spindle", what: "a pen with a spindle", job: operation("pen", `"spindle":¦{"rpm":9,"direction":"cw"},`).replace("¦{", "{") },
  { rule: "job/spindle", what: "a probe with a spindle", job: operation("probe", `"spindle":¦{"rpm":9,"direction":"cw"},`).replace("¦{", "{") },
  { rule: "job/spindle", what: "a knife with a spindle", job: operation("drag-knife", `"spindle":¦{"rpm":9,"direction":"cw"},`).replace("¦{", "{") },
  { rule: "job/spindle", what: "a speed for a pen", job: tapJob("", "pen", "", `¦{"spindle":{"rpm":9}}`) },
  { rule: "job/feed", what: "a pen that feeds per revolution", job: operation("pen", `"feedMode":¦"per-revolution",`).replace("¦{", "{") },
  { rule: "limit/tool", what: "a left-hand tool turned cw", job: tool(`"kind":"drill","hand":"left"`).replace(`"direction":`, `"direction":¦`), fix: "ccw" },
  { rule: "limit/tool", what: "a right-hand tool turned ccw", job: tool(`"kind":"drill","hand":"right"`).replace(`"direction":"cw"`, `"direction":¦"ccw"`), fix: "Turn it cw" },
  { rule: "offset/shared", what: "one length offset for two tools", job: tool(`"kind":"drill"},{"number":2,"kind":"drill","diameter":2,"lengthOffset":¦1`) },
  { rule: "offset/shared", what: "a length offset that is another's number", job: tool(`"kind":"drill","lengthOffset":2},¦{"number":2,"kind":"drill","diameter":2`) },
];

/** What the moves mean. */
const moves: readonly FindingCase[] = [
  { rule: "job/first-move", what: "a line first", job: jobOf(`¦{"line":{"x":1,"y":1},"feed":9}`) },
  { rule: "job/first-move", what: "a rapid in x alone first", job: jobOf(`¦{"rapid":{"x":1}}`) },
  { rule: "job/first-move", what: "a rapid in z alone first", job: jobOf(`{"note":"up"},¦{"rapid":{"z":20}},{"rapid":{"x":0,"y":0}}`) },
  { rule: "job/first-move", what: "an arc first", job: jobOf(`¦${arc(`{"x":10,"y":0,"cx":5,"cy":0}`)}`) },
  { rule: "job/first-move", what: "holes first", job: jobOf(`¦${holes(levels)},"feed":9}`) },
  { rule: "job/first-move", what: "a path of lines first", job: jobOf(`¦{"path":{"kind":"line","points":[[0,0,0]]},"feed":9}`) },
  { rule: "job/arc-radius", what: "radii that differ by 0.0051 mm", job: jobWith(`{"rapid":{"x":2,"y":0}},${arc(`¦{"x":-2.0051,"y":0,"cx":0,"cy":0}`)}`), says: "2.0051" },
  { rule: "job/arc-radius", what: "radii that differ by 0.11 %", job: jobWith(`{"rapid":{"x":100,"y":0}},${arc(`¦{"x":-100.11,"y":0,"cx":0,"cy":0}`)}`) },
  { rule: "job/arc-radius", what: "a centre in the start", job: jobWith(arc(`¦{"x":0,"y":0.001,"cx":0,"cy":0}`)) },
  { rule: "job/arc-radius", what: "radii in zx", job: jobWith(`{"line":{"z":0},"feed":9},{"arc":¦{"z":0,"x":10,"cz":0,"cx":4},"turn":"cw","plane":"zx"}`) },
  { rule: "job/arc-radius", what: "radii in yz from clearance", job: jobWith(`{"arc":{"y":20,"z":15,"cy":10,"cz":14},"turn":"cw","plane":"yz","feed":9},{"arc":{"y":0,"z":15,"cy":10,"cz":16},"turn":"cw","plane":"yz"},{"arc":¦{"y":8,"z":15,"cy":3,"cz":15},"turn":"cw","plane":"yz"}`) },
  { rule: "job/holes", what: "a depth at top", job: jobWith(`${holes(`"top":0,¦"depth":0,"retract":2`)},"feed":9}`), says: "below top" },
  { rule: "job/holes", what: "a retract below top", job: jobWith(`${holes(`"top":0,"depth":-1,¦"retract":-0.5`)},"feed":9}`), says: "not below top" },
  { rule: "job/holes", what: "holes under inverse-time feed", job: jobWith(`¦${holes(levels)},"feed":9}`, `"feedMode":"inverse-time",`) },
  { rule: "job/tap", what: "a feed that is not speed times lead", job: tapJob("", "tap", cw, `${tap},¦"feed":501}`), fix: "501 rpm" },
  { rule: "job/tap", what: "a feed that is not the changed speed times lead", job: tapJob("", "tap", cw, `{"spindle":{"rpm":400}},${tap},¦"feed":500}`) },
  { rule: "job/tap", what: "a feed per revolution that is not the lead", job: tapJob("", "tap", cw, `${tap},¦"feed":2}`, `"feedMode":"per-revolution",`) },
  { rule: "job/tap", what: "another lead than the tool's", job: tapJob(`,"lead":1.25`, "tap", cw, `${tap.replace('"lead"', '¦"lead"')}}`) },
  { rule: "job/tap", what: "a tap that never turns", job: tapJob("", "pen", "", `¦${tap}}`) },
  { rule: "job/tap", what: "(a warning) an end mill that taps", job: tapJob("", "end-mill", cw, `¦${tap}}`) },
  { rule: "job/feed", what: "a line without a feed", job: jobWith(`¦{"line":{"x":1}}`) },
  { rule: "job/feed", what: "an arc without a feed", job: jobWith(`¦{"arc":{"x":0,"y":0,"cx":1,"cy":0},"turn":"cw"}`) },
  { rule: "job/feed", what: "a path without a feed", job: jobWith(`¦{"path":{"kind":"line","points":[[0,0,0]]}}`) },
  { rule: "job/feed", what: "holes without a feed", job: jobWith(`¦${holes(levels)}}`) },
  { rule: "job/feed", what: "holes that rely on a feed before", job: jobWith(`{"line":{"z":3},"feed":9},¦${holes(levels)}}`) },
  { rule: "job/feed", what: "a line that relies on the feed of holes", job: jobWith(`${holes(levels)},"feed":9},¦{"line":{"x":5}}`) },
  { rule: "job/feed", what: "a line that relies on a feed under inverse-time feed", job: jobWith(`{"line":{"x":1},"feed":9},¦{"line":{"x":2}}`, `"feedMode":"inverse-time",`) },
  { rule: "job/path", what: "a path under inverse-time feed", job: jobWith(`¦{"path":{"kind":"line","points":[[0,0,0]]},"feed":9}`, `"feedMode":"inverse-time",`) },
  { rule: "job/path", what: "a path of rapids under inverse-time feed", job: jobWith(`¦{"path":{"kind":"rapid","points":[[0,0,20]]}}`, `"feedMode":"inverse-time",`) },
  { rule: "job/rotary", what: "a line that turns and goes straight", job: jobWith(`{"line":¦{"x":1,"c":90},"feed":9}`) },
  { rule: "job/compensation", what: "compensation at holes", job: jobWith(`{"comp":"left"},¦${holes(levels)},"feed":9},{"comp":"off"}`) },
  { rule: "job/compensation", what: "compensation at a pause", job: jobWith(`{"comp":"right"},¦{"pause":"look"},{"comp":"off"}`) },
  { rule: "job/compensation", what: "compensation at the end", job: jobWith(`{"comp":"left"}`).replace("]}]}", "¦]}]}") },
  { rule: "job/compensation", what: "compensation in an arc in zx", job: jobWith(`{"comp":"left"},¦{"arc":{"z":15,"x":0,"cz":15,"cx":5},"turn":"cw","plane":"zx","feed":9},{"comp":"off"}`) },
  { rule: "job/pause", what: "a pause below clearance", job: jobWith(`{"rapid":{"z":14.9999999}},¦{"pause":"look"}`) },
  { rule: "job/pause", what: "an optional pause below clearance", job: jobWith(`{"rapid":{"z":1}},¦{"pause":"look","optional":true}`) },
  { rule: "job/pause", what: "a pause on the level after holes", job: jobWith(`${holes(levels)},"feed":9},¦{"pause":"look"}`) },
  { rule: "job/more", what: "fifty faults", job: jobOf(`{"rapid":{"x":0,"y":0}}${',{"dwell":-1}'.repeat(49)},{"dwell":-1¦},{"dwell":-1}`) },
];

export const findingCases: readonly FindingCase[] = [...text, ...form, ...meaning, ...moves];
