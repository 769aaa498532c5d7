import type { Finding, Place, UnitSystem } from "#base";
import { atomsPerUnit, milliPerRpm } from "#base";
import type { Operation } from "#job";

/** The findings of sequencing: one function a rule. */

/**
 * How a key might be stated, by key path. Only codes and letters of ISO 6983-1 and NISTIR 6556 stand here; what the machine alone
 * can tell is a question mark, since a value that is pasted unread could hurt.
 */
const examples: Readonly<Record<string, string>> = {
  "confirm.at-speed": "confirm: { at-speed: { wait: at-speed, timeout: ? s } }",
  "confirm.stopped": "confirm: { stopped: { wait: stopped, timeout: ? s } }",
  "confirm.released": "confirm: { released: { wait: released, timeout: ? s } }",
  "confirm.clamped": "confirm: { clamped: { wait: clamped, timeout: ? s } }",
  "confirm.air": "confirm: { air: { wait: air, timeout: ? s } }",
  "machine.swap": "machine: { swap: ? } # controller, rack, operator or none",
  "machine.change-effects":
    "machine: { change-effects: { position: ?, spindle: ?, coolant: ?, length-offset: ? } }",
  "machine.retract.by": "machine: { retract: { by: ? } } # machine-move, reference-return or clearance",
  "machine.retract.change-position": "machine: { retract: { change-position: [?, ?, ?] } }",
  "machine.length-offset.form":
    "machine: { length-offset: { form: ? } } # with-first-z, own-block, in-tool-word or none",
  "machine.lengths": "machine: { lengths: ? } # table, measured or operator",
  "machine.drawbar.travels": "machine: { drawbar: { travels: ? } }",
  "machine.rack.style": "machine: { rack: { style: ? } }",
  "machine.rack.slide": "machine: { rack: { slide: { direction: ?, distance: ?, feed: ? } } }",
  "machine.park": "machine: { park: [?, ?] }",
  "machine.waits.on-timeout": "machine: { waits: { on-timeout: ? } }",
  "machine.spindle.min-rpm": "machine: { spindle: { min-rpm: ? } }",
  "machine.spindle.max-rpm": "machine: { spindle: { max-rpm: ? } }",
  "machine.spindle.spin-up": "machine: { spindle: { spin-up: ? s } }",
  "machine.spindle.spin-down": "machine: { spindle: { spin-down: ? s } }",
  "machine.spindle.coast-down": "machine: { spindle: { coast-down: ? s } }",
  "numbers.dwell": "numbers: { dwell: ? } # digits behind the point",
  "numbers.speed": "numbers: { speed: ? } # digits behind the point",
  "spindle.order": "spindle: { order: ? } # speed-first or start-first",
  "spindle.blocks": "spindle: { blocks: ? } # together or apart",
  "cancel.before-change": "cancel: { before-change: ? } # yes or no",
  "tools.preselect": "tools: { preselect: ? } # yes or no",
  "distance.programs-in": "distance: { programs-in: ? } # absolute or incremental",
  "arc.form": "arc: { form: ? } # incremental-centre, absolute-centre, radius or none",
  "path.exact": "path: { exact: G61 }",
  "path.tolerance-word": "path: { blend: G64, tolerance-word: ? }",
  "work-offset": "work-offset: [G54, G55, G56]",
  "coolant.mist": "coolant: { mist: M7 }",
  "coolant.flood": "coolant: { flood: M8 }",
  "coolant.air": "coolant: { air: ? }",
  "coolant.through-tool": "coolant: { through-tool: ? }",
  "coolant.off": "coolant: { off: M9 }",
  "spindle.cw": "spindle: { cw: M3 }",
  "spindle.ccw": "spindle: { ccw: M4 }",
  "spindle.stop": "spindle: { stop: M5 }",
  "stops.stop": "stops: { stop: M0 }",
  "stops.optional": "stops: { optional: M1 }",
  "stops.end": "stops: { end: M30 }",
  "dwell.code": "dwell: { code: G4, word: P, unit: ? } # s, ms or rev",
  "tools.change": "tools: { change: M6 }",
  "reference-return": "reference-return: G28",
  "machine-move": "machine-move: G53",
  "motion.rapid": "motion: { rapid: G0 }",
  "motion.line": "motion: { line: G1 }",
  "length-offset.on": "length-offset: { on: G43, off: G49, word: H }",
  "distance.absolute": "distance: { absolute: G90 }",
  "distance.incremental": "distance: { incremental: G91 }",
  "idioms.wait-signal": "idioms: { wait-signal: ? } # words with {{signal}}, {{level}} and {{timeout}}",
  "idioms.message": 'idioms: { message: "(MSG, {{text}})" }',
};

const inJob = (offset: number): Place => ({ source: "job", offset });

/** How a key might be stated in a dialect file: `path: { exact: G61 }`. */
export function example(key: string): string {
  const known = examples[key];
  if (known !== undefined) return known;
  const signal = key.startsWith("machine.signals.") ? "{ input: ? }" : "...";
  return `${key.split(".").join(": { ")}: ${signal}${" }".repeat(key.split(".").length - 1)}`;
}

/** A value that no file of the dialect's chain states. */
export function undeclared(key: string, because: string, offset: number): Finding {
  return {
    rule: "dialect/undeclared",
    severity: "error",
    message: `the dialect does not say \`${key}\`, which this job needs because ${because}`,
    place: inJob(offset),
    fix: `state it in the dialect file, for instance \`${example(key)}\`${toAnswer(example(key))}`,
    key,
  };
}

/** What to do about a question mark in an example; nothing where there is none. */
function toAnswer(text: string): string {
  if (!text.includes("?")) return "";
  if (text.includes("#")) return ", with what is right for the machine in place of the question mark";
  const how = text.includes("? s")
    ? "a time that you have taken with a watch"
    : "what the machine or its manual says";
  return `, with ${how} in place of the question mark`;
}

/** A word that the dialect says it does not have. */
export function noWord(key: string, because: string, offset: number): Finding {
  return {
    rule: "lower/word",
    severity: "error",
    message: `the dialect has no word for \`${key}\`, which this job needs because ${because}`,
    place: inJob(offset),
    fix: orDeclare("change the job so that it does without", key),
    key,
  };
}

/** The way out of a word that is not there: do without, or say which word the controller has, by an example. */
export function orDeclare(without: string, key: string): string {
  return `${without}, or declare the word if the controller has one, for instance \`${example(key)}\`${toAnswer(example(key))}`;
}

/** A refusal with its own rule. */
export function refusal(rule: string, message: string, fix: string, offset: number, key?: string): Finding {
  return {
    rule,
    severity: "error",
    message,
    place: inJob(offset),
    fix,
    ...(key === undefined ? {} : { key }),
  };
}

/** A hint that changes nothing. */
export function remark(
  rule: string,
  severity: "warning" | "note",
  message: string,
  offset: number,
  key?: string,
): Finding {
  return { rule, severity, message, place: inJob(offset), ...(key === undefined ? {} : { key }) };
}

/** A speed outside a limit of the machine or of the tool. */
export function speedOutside(
  rpm: number,
  limit: number,
  whose: string,
  offset: number,
  key?: string,
): Finding {
  const [said, side] = rpm > limit ? ["above", "most"] : ["below", "least"];
  return refusal(
    "limit/speed",
    `${inRpm(rpm)} is ${said} the ${side} speed of ${whose}, ${inRpm(limit)}`,
    "state a speed within the limits of both the machine and the tool, and the feed that goes with it",
    offset,
    key,
  );
}

/** A speed that the speed word cannot say as it is. */
export function speedRounded(rpm: number, written: number, offset: number): Finding {
  return remark(
    "lower/rounded",
    "note",
    `${inRpm(rpm)} is written as ${inRpm(written)}`,
    offset,
    "numbers.speed",
  );
}

/** Why a tolerance is not said, the key behind it, and what to do other than asking for the exact path. */
const unsaidTolerances = {
  "no-word": {
    reason: "the dialect has no word for that",
    key: "path.tolerance-word",
    fix: orDeclare(
      "leave `tolerance` out of the operation if the controller's own way of rounding corners will do",
      "path.tolerance-word",
    ),
  },
  "below-increment": {
    reason: "it is smaller than the least increment of a length",
    key: "numbers.length",
    fix: "state a wider tolerance",
  },
} as const;

/** What of an operation may be held to a tolerance. */
type Toleranced = Pick<Operation, "id" | "tolerance" | "source">;

/** A tolerance that cannot be said, where the exact path holds it. */
export function toleranceByExactPath(
  { id, source }: Toleranced,
  why: keyof typeof unsaidTolerances,
): Finding {
  const { reason, key } = unsaidTolerances[why];
  const message = `operation ${id} may be blended within its tolerance, and ${reason}: it is written on the exact path, which holds any tolerance and may be slower`;
  return remark("lower/tolerance", "note", message, source, key);
}

/** A tolerance that cannot be said, and no exact path to hold it. */
export function toleranceNotHeld({ id, source }: Toleranced, why: keyof typeof unsaidTolerances): Finding {
  const { reason, key, fix } = unsaidTolerances[why];
  const message = `operation ${id} may be blended within its tolerance, and ${reason}; without a word for the exact path corners could be cut wider`;
  const exact = `declare the exact path if the controller has a word for it, for instance \`${example("path.exact")}\``;
  return refusal("lower/tolerance", message, `${fix}, or ${exact}`, source, key);
}

/** A tolerance that the word of the path cannot say as it is. */
export function toleranceRounded(
  units: UnitSystem,
  { id, tolerance = 0, source }: Toleranced,
  written: number,
): Finding {
  const text = (length: number): string =>
    `${String(Number((length / atomsPerUnit[units]).toFixed(7)))} ${units}`;
  const message = `the tolerance of operation ${id}, ${text(tolerance)}, is written as ${text(written)}`;
  return remark("lower/rounded", "note", message, source, "numbers.length");
}

/** A speed for a message: 12500500 -> "12500.5 rpm". */
function inRpm(rpm: number): string {
  return `${String(rpm / milliPerRpm)} rpm`;
}
