/**
 * What steps are about, and the keys that decide whether they are there and with which values. A topic has tiers: where keys
 * of one tier differ between two dialects, those of the next are not asked.
 */
import type { StepKind } from "#base";

/** A matter that programs differ about. */
export interface Topic {
  /** As the report says it: "the wait for the spindle's speed". */
  readonly title: string;
  /** Key paths; the first tier of which any key differs accounts for the difference. */
  readonly tiers: readonly (readonly string[])[];
}

/** The ways of a confirmation come before its numbers. */
function confirmation(name: string, signal: string, ...more: readonly string[]): (readonly string[])[] {
  const way = ["wait", "dwell", "intrinsic"].map((one) => `confirm.${name}.${one}`);
  return [
    way,
    [`confirm.${name}`, `machine.signals.${signal}`],
    more,
    ["machine.waits", "idioms.wait-signal"],
  ];
}

const spindleTimes = ["machine.spindle"];
const arcForms = [
  "arc.form",
  "arc.largest-sweep",
  "arc.full-circle",
  "arc.quadrants",
  "arc.planes",
  "arc.helix",
];
/** What decides how the spindle goes up, with the word that it takes. */
const retracts = ["machine.retract.by", "machine.retract.intermediate", "reference-return"];
/** What decides where a length offset is said. */
const lengthForms = ["machine.length-offset.form", "machine.change-effects.length-offset", "length-offset"];

export const topics = {
  swap: {
    title: "tool change",
    tiers: [
      ["machine.swap"],
      [
        "machine.rack",
        "machine.drawbar",
        "machine.change-effects",
        "tools",
        "confirm.released",
        "confirm.clamped",
        "confirm.air",
        "machine.retract",
        "machine.spindle.orient",
      ],
    ],
  },
  "at-speed": {
    title: "confirmation of the spindle's speed",
    tiers: confirmation("at-speed", "at-speed", ...spindleTimes),
  },
  stopped: {
    title: "confirmation of the spindle's standstill",
    tiers: confirmation("stopped", "stopped", ...spindleTimes),
  },
  released: { title: "confirmation that the tool is released", tiers: confirmation("released", "released") },
  clamped: { title: "confirmation that the tool is clamped", tiers: confirmation("clamped", "clamped") },
  air: { title: "confirmation of air pressure", tiers: confirmation("air", "air") },
  "hold-down": { title: "confirmation that the work is held", tiers: confirmation("hold-down", "hold-down") },
  hood: { title: "hood", tiers: [["machine.hood"], ["idioms.hood-up", "idioms.hood-down"]] },
  park: { title: "parking", tiers: [["machine.park"], ["machine.retract"]] },
  retract: {
    title: "retract in machine coordinates",
    tiers: [retracts, ["machine.retract"], ["machine.change-effects.position"], ["machine.length-offset"]],
  },
  "retract-after-change": {
    title: "retract behind a tool change",
    tiers: [["machine.change-effects.position"], ["machine.retract"]],
  },
  distance: {
    title: "absolute and incremental distances",
    tiers: [["distance.programs-in"], retracts, ["distance"]],
  },
  units: { title: "units", tiers: [["units.programs-in"], ["units.stated"], ["units"]] },
  plane: { title: "plane", tiers: [["plane", "arc.planes"]] },
  "mode-after-stop": { title: "modes behind a stop", tiers: [["stops.resume"], ["stops"]] },
  "mode-at-section": {
    title: "modes at a tool section",
    tiers: [["blocks.sections.modes"], ["stops.end-resets"], ["cancel.cycles", "cycles.ended-by"]],
  },
  "cancel-before-change": { title: "cancelled before a tool change", tiers: [["cancel.before-change"]] },
  path: { title: "path mode", tiers: [["path.tolerance-word"], ["path"]] },
  tolerance: { title: "tolerance of a blended path", tiers: [["path.tolerance-word"], ["path"]] },
  "feed-mode": { title: "feed mode", tiers: [["feed"]] },
  overrides: { title: "overrides", tiers: [["cancel.overrides"]] },
  "local-shift": { title: "local shift", tiers: [["cancel.local-shift"]] },
  rotation: { title: "rotation", tiers: [["cancel.rotation"]] },
  scale: { title: "scale", tiers: [["cancel.scale"]] },
  "cancel-cycle": {
    title: "end of fixed cycles",
    tiers: [["cancel.cycles"], ["cycles.ended-by"], ["cycles"]],
  },
  compensation: { title: "cutter compensation", tiers: [["compensation"]] },
  "work-offset": {
    title: "work offset",
    tiers: [["motion.machine-move-lasts"], ["work-offset"], ["machine.retract.by"]],
  },
  "length-offset": {
    title: "tool length offset",
    tiers: [lengthForms, ["machine.swap"], ["length-offset", "machine.length-offset"]],
  },
  "length-cancel": {
    title: "tool length offset cancelled",
    tiers: [["machine.retract.cancel-length-first"], lengthForms, ["machine.swap"], ["length-offset"]],
  },
  preselect: { title: "tool chosen beforehand", tiers: [["tools.preselect"], ["tools"]] },
  "select-tool": { title: "tool word", tiers: [lengthForms, ["machine.swap"], ["tools"]] },
  speed: { title: "spindle speed", tiers: [["modal.speed"], ["spindle.gears"], ["machine.spindle"]] },
  spindle: {
    title: "spindle start and stop",
    tiers: [["machine.swap"], ["machine.change-effects.spindle"], ["spindle"]],
  },
  orient: { title: "spindle orientation", tiers: [["machine.spindle.orient"], ["spindle.orient"]] },
  coolant: { title: "coolant", tiers: [["machine.swap"], ["machine.change-effects.coolant"], ["coolant"]] },
  output: { title: "outputs", tiers: [["machine.outputs"], ["idioms"]] },
  dwell: { title: "dwell", tiers: [["dwell.unit", "dwell.blocks", "numbers.dwell"], ["dwell"]] },
  pause: { title: "stop for the operator", tiers: [["machine.swap"], ["stops"]] },
  message: {
    title: "message to the operator",
    tiers: [["machine.swap"], ["idioms.message", "stops.comment", "comments"]],
  },
  cycle: { title: "fixed cycle", tiers: [["cycles"], ["machine.tapping"]] },
  opaque: { title: "code of the builder", tiers: [["codes", "idioms"]] },
  "program-number": { title: "program number", tiers: [["file.program-number"]] },
  "program-end": { title: "end of the program", tiers: [["stops.end"]] },
  "arc-form": { title: "arcs", tiers: [arcForms, ["arc", "numbers.arc-centre", "numbers.length"]] },
  "arc-feed": { title: "arcs and their feed", tiers: [[...arcForms, "arc.feed-along"]] },
  "cycle-code": { title: "words that name a cycle", tiers: [["cycles.repeat", "modal.motion"]] },
  feed: { title: "feed of a motion", tiers: [["arc.feed-along", "feed", "machine.feed"], ["arc"]] },
  rapids: {
    title: "path of rapids",
    tiers: [["motion.rapids", "motion.rapid-axes", "motion.axes-at-once"], ["motion.rapid-feed"], ["cycles"]],
  },
  modes: { title: "modes", tiers: [] },
  "block-number": { title: "block numbers", tiers: [["blocks.number"]] },
  page: { title: "comments and header", tiers: [] },
  text: { title: "text of the file", tiers: [] },
  "motion-word": { title: "motion words", tiers: [["modal.motion"], ["motion"]] },
  axes: { title: "axis words", tiers: [["modal.axes"], ["axes"]] },
  "feed-word": { title: "feed words", tiers: [["modal.feed"], ["numbers.feed-per-minute"]] },
  centre: { title: "arc centres and radii", tiers: [["modal.arc-centre"], ["arc.form"], ["arc"]] },
  "cycle-words": { title: "words of fixed cycles", tiers: [["cycles.words"], ["cycles.repeat"], ["cycles"]] },
  motion: { title: "motion", tiers: [["cycles"], ["motion"], ["numbers.length", "units.programs-in"]] },
} as const satisfies Record<string, Topic>;

/** The name of a topic. */
export type TopicName = keyof typeof topics;

/** What the kind of a step is about where nothing around it says otherwise. */
export const topicOfStep = {
  "program-start": "program-number",
  units: "units",
  plane: "plane",
  distance: "distance",
  "arc-centre": "arc-form",
  "feed-mode": "feed-mode",
  path: "path",
  "look-ahead": "path",
  "corner-feed": "compensation",
  overrides: "overrides",
  cycle: "cancel-cycle",
  "local-shift": "local-shift",
  rotation: "rotation",
  scale: "scale",
  compensation: "compensation",
  "work-offset": "work-offset",
  "length-offset": "length-offset",
  "select-tool": "select-tool",
  "change-tool": "swap",
  "spindle-speed": "speed",
  "spindle-start": "spindle",
  "spindle-stop": "spindle",
  "spindle-orient": "orient",
  coolant: "coolant",
  output: "output",
  wait: "at-speed",
  dwell: "dwell",
  pause: "pause",
  message: "message",
  "cycle-definition": "cycle",
  auxiliary: "opaque",
  "reference-return": "retract",
  "program-end": "program-end",
} as const satisfies Record<StepKind, TopicName>;
