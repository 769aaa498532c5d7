import type { Code, Codes } from "./dialect.ts";
import type { TreeNode } from "./tree.ts";
import { isNone, nodeAt } from "./tree.ts";
import { code, word } from "./values.ts";

/** Key paths whose value is a code or `none`, work offsets apart. */
export const codeKeys = [
  "motion.rapid",
  "motion.line",
  "arc.cw",
  "arc.ccw",
  "arc.centre-words.absolute",
  "arc.centre-words.incremental",
  "units.mm",
  "units.inch",
  "plane.xy",
  "plane.zx",
  "plane.yz",
  "distance.absolute",
  "distance.incremental",
  "path.exact",
  "path.stop",
  "path.blend",
  "path.look-ahead.on",
  "path.look-ahead.off",
  "feed.per-minute",
  "feed.per-revolution",
  "feed.inverse-time",
  "dwell.code",
  "compensation.off",
  "compensation.left",
  "compensation.right",
  "compensation.corner-feed.on",
  "compensation.corner-feed.off",
  "length-offset.on",
  "length-offset.off",
  "machine-move",
  "reference-return",
  "cancel.cycles",
  "cancel.local-shift",
  "cancel.rotation",
  "cancel.scale",
  "cancel.overrides",
  "cycles.drill",
  "cycles.dwell",
  "cycles.peck",
  "cycles.chip-break",
  "cycles.tap",
  "cycles.tap-left",
  "cycles.ream",
  "cycles.bore-dwell",
  "cycles.bore-stop",
  "cycles.bore-manual",
  "cycles.tap-synchronised",
  "cycles.return.initial",
  "cycles.return.retract",
  "spindle.cw",
  "spindle.ccw",
  "spindle.stop",
  "spindle.orient",
  "coolant.mist",
  "coolant.flood",
  "coolant.air",
  "coolant.through-tool",
  "coolant.off",
  "coolant.off.mist",
  "coolant.off.flood",
  "coolant.off.air",
  "coolant.off.through-tool",
  "tools.change",
  "stops.stop",
  "stops.optional",
  "stops.end",
] as const;

/** Numbers of the work offsets of a job. */
export const workOffsetNumbers = [1, 2, 3, 4, 5, 6, 7, 8, 9] as const;

/** Numbers of the gear ranges that a dialect may have. */
export const gearNumbers = [1, 2, 3, 4, 5, 6] as const;

/** All key paths with a code, such as "plane.zx" and "work-offset.3". */
export function allCodeKeys(): string[] {
  return [
    ...codeKeys,
    ...workOffsetNumbers.map((number) => `work-offset.${number}`),
    ...gearNumbers.map((number) => `spindle.gears.${number}.code`),
  ];
}

/** The code of a work offset. A list that states some offsets says that the control has no others. */
function workOffset(tree: TreeNode, number: number): Code | null | undefined {
  const node = nodeAt(tree, "work-offset");
  if (node?.kind === "list" && number > node.items.length) return null;
  return code(tree, `work-offset.${number}`);
}

/** The code of a key; null: `none`; undefined: undeclared. */
export function codeAt(tree: TreeNode, path: string): Code | null | undefined {
  return path.startsWith("work-offset.") ? workOffset(tree, Number(path.slice(12))) : code(tree, path);
}

/** Whether the dialect says what a key is for: by a code, or in a way without one (a tool word alone, an offset number 0). */
export function isSaid(tree: TreeNode, path: string): boolean | undefined {
  const found = codeAt(tree, path);
  const other = path === "tools.change" || path === "length-offset.off";
  if (found === null && other) return word(tree, path) !== undefined;
  return found === undefined ? undefined : found !== null;
}

/** Which keys have a word: true, false for `none`, absent for undeclared. */
export function declaredWords(tree: TreeNode): Record<string, boolean> {
  const words: Record<string, boolean> = {};
  for (const path of allCodeKeys()) {
    const said = isSaid(tree, path);
    if (said !== undefined) words[path] = said;
  }
  for (const path of ["file.program-number", "path.tolerance-word"]) {
    const node = nodeAt(tree, path);
    if (node !== undefined) words[path] = !isNone(node);
  }
  const idioms = nodeAt(tree, "idioms");
  if (idioms?.kind === "mapping")
    for (const [name, node] of idioms.entries) words[`idioms.${name}`] = !isNone(node);
  return words;
}

/** The codes as writing and reading look them up. */
export function readCodes(tree: TreeNode): Codes {
  const at = (path: (typeof codeKeys)[number]): Code | null | undefined => code(tree, path);
  return {
    rapid: at("motion.rapid"),
    line: at("motion.line"),
    arcCw: at("arc.cw"),
    arcCcw: at("arc.ccw"),
    modes: readModes(at),
    dwell: at("dwell.code"),
    compensation: group({
      off: at("compensation.off"),
      left: at("compensation.left"),
      right: at("compensation.right"),
    }),
    lengthOn: at("length-offset.on"),
    lengthOff: at("length-offset.off"),
    workOffsets: [undefined, ...workOffsetNumbers.map((number) => workOffset(tree, number))],
    machineMove: at("machine-move"),
    referenceReturn: at("reference-return"),
    cycles: group({
      drill: at("cycles.drill"),
      dwell: at("cycles.dwell"),
      peck: at("cycles.peck"),
      "chip-break": at("cycles.chip-break"),
      tap: at("cycles.tap"),
      "tap-left": at("cycles.tap-left"),
      ream: at("cycles.ream"),
      "bore-dwell": at("cycles.bore-dwell"),
      "bore-stop": at("cycles.bore-stop"),
      "bore-manual": at("cycles.bore-manual"),
    }),
    tapSynchronised: at("cycles.tap-synchronised"),
    cycleReturn: group({ initial: at("cycles.return.initial"), retract: at("cycles.return.retract") }),
    spindleCw: at("spindle.cw"),
    spindleCcw: at("spindle.ccw"),
    spindleStop: at("spindle.stop"),
    spindleOrient: at("spindle.orient"),
    coolant: group({
      mist: at("coolant.mist"),
      flood: at("coolant.flood"),
      air: at("coolant.air"),
      "through-tool": at("coolant.through-tool"),
    }),
    coolantOff: at("coolant.off"),
    coolantOffOne: group({
      mist: at("coolant.off.mist"),
      flood: at("coolant.off.flood"),
      air: at("coolant.off.air"),
      "through-tool": at("coolant.off.through-tool"),
    }),
    toolChange: at("tools.change"),
    stop: at("stops.stop"),
    optionalStop: at("stops.optional"),
    end: at("stops.end"),
  };
}

function readModes(at: (path: (typeof codeKeys)[number]) => Code | null | undefined): Codes["modes"] {
  return {
    units: group({ mm: at("units.mm"), inch: at("units.inch") }),
    plane: group({ xy: at("plane.xy"), zx: at("plane.zx"), yz: at("plane.yz") }),
    distance: group({ absolute: at("distance.absolute"), incremental: at("distance.incremental") }),
    "arc-centre": group({
      absolute: at("arc.centre-words.absolute"),
      incremental: at("arc.centre-words.incremental"),
    }),
    "feed-mode": group({
      "per-minute": at("feed.per-minute"),
      "per-revolution": at("feed.per-revolution"),
      "inverse-time": at("feed.inverse-time"),
    }),
    path: group({ exact: at("path.exact"), stop: at("path.stop"), blend: at("path.blend") }),
    "look-ahead": group({ on: at("path.look-ahead.on"), off: at("path.look-ahead.off") }),
    "corner-feed": group({ on: at("compensation.corner-feed.on"), off: at("compensation.corner-feed.off") }),
    overrides: group({ on: at("cancel.overrides") }),
    cycle: group({ off: at("cancel.cycles") }),
    "local-shift": group({ off: at("cancel.local-shift") }),
    rotation: group({ off: at("cancel.rotation") }),
    scale: group({ off: at("cancel.scale") }),
  };
}

/** Leaves out what is undeclared. */
function group<K extends string>(codes: Record<K, Code | null | undefined>): Partial<Record<K, Code | null>> {
  return Object.fromEntries(Object.entries(codes).filter(([, found]) => found !== undefined)) as Partial<
    Record<K, Code | null>
  >;
}
