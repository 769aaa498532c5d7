import type { FeedMode, Finding, Place } from "#base";
import { atomsPerUnit } from "#base";

/** The findings of lowering: one function a rule. */

const inJob = (offset: number): Place => ({ source: "job", offset });

/** What to do about a question mark in an example, which stands for what no published standard says. */
function toAnswer(example: string): string {
  return example.includes("?") ? ", with what is right for the machine in place of the question mark" : "";
}

/** A value that no file of the dialect's chain states. */
export function undeclared(key: string, why: string, example: string, offset: number): Finding {
  return {
    rule: "dialect/undeclared",
    severity: "error",
    message: `the dialect does not say \`${key}\`, which this job needs ${why}`,
    place: inJob(offset),
    fix: `state it in the dialect file, for instance \`${example}\`${toAnswer(example)}`,
    key,
  };
}

/** A word that the dialect says it does not have. */
export function noWord(key: string, what: string, fix: string, offset: number): Finding {
  return {
    rule: "lower/word",
    severity: "error",
    message: `the dialect has no word for ${what} (\`${key}: none\`)`,
    place: inJob(offset),
    fix,
    key,
  };
}

/** A refusal of lowering with its own rule. */
function refusal(rule: string, message: string, fix: string, offset: number, key?: string): Finding {
  return {
    rule,
    severity: "error",
    message,
    place: inJob(offset),
    fix,
    ...(key === undefined ? {} : { key }),
  };
}

export function unitsNotSaid(units: string, offset: number): Finding {
  return refusal(
    "lower/units",
    `the job is in ${units} and the dialect has no word for that`,
    `declare the word if the controller has one, for instance \`units: { ${units}: ${units === "mm" ? "G21" : "G20"} }\`, or have programs converted to its own units (\`units: { programs-in: ${units === "mm" ? "inch" : "mm"} }\`)`,
    offset,
    `units.${units}`,
  );
}

/** Codes of the feed modes on most controllers (NISTIR 6556 Table 5; G95 from the ISO 6983-1 code tables). */
export const feedCodes = {
  "per-minute": "G94",
  "per-revolution": "G95",
  "inverse-time": "G93",
} as const satisfies Record<FeedMode, string>;

export function feedModeNotSaid(mode: FeedMode, offset: number): Finding {
  return refusal(
    "lower/feed-mode",
    `the operation states its feed in ${mode} mode and the dialect has no word for that`,
    `state the feeds of the operation per minute, or declare the word if the controller has one, for instance \`feed: { ${mode}: ${feedCodes[mode]} }\``,
    offset,
    `feed.${mode}`,
  );
}

export function rotaryNotThere(axis: string, offset: number): Finding {
  return refusal(
    "lower/rotary",
    `the job moves ${axis.toUpperCase()} and the machine has no such axis`,
    `leave ${axis} out of the job, or declare its range under \`machine.travel.${axis}\``,
    offset,
    `machine.travel.${axis}`,
  );
}

export function compensationNotSaid(key: string, reason: string, fix: string, offset: number): Finding {
  return refusal("lower/compensation", reason, fix, offset, key);
}

export function tapCycleNotSaid(key: string, offset: number): Finding {
  const [, cycle = ""] = key.split(".");
  // NISTIR 6556 has no left-hand tapping.
  const code = cycle === "tap-left" ? "?" : "G84";
  return refusal(
    "lower/cycle",
    "the dialect has no fixed cycle for tap holes, and they cannot be written out as single moves",
    `make these threads in another way, or declare the cycle if the controller has it, for instance \`cycles: { ${cycle}: ${code} }\`${toAnswer(code)}`,
    offset,
    key,
  );
}

export function tapLevelNotSaid(wanted: "initial" | "retract", offset: number): Finding {
  const [only, code] = wanted === "initial" ? ["retract", "G98"] : ["initial", "G99"];
  return refusal(
    "lower/cycle",
    `between these tap holes the tool is to go to the ${wanted} level, the cycle knows the ${only} level alone, and tapping cannot be written out as single moves`,
    `state \`"between": "${only}"\` in the job, or declare the word for the other level, for instance \`cycles: { return: { ${wanted}: ${code} } }\``,
    offset,
    `cycles.return.${wanted}`,
  );
}

export function tooManyChords(count: number, offset: number): Finding {
  return refusal(
    "lower/arc",
    `this arc would take ${String(count)} chords`,
    "state a coarser `arc.chord-tolerance`, or fewer turns",
    offset,
    "arc.chord-tolerance",
  );
}

export function roundsToNothing(what: string, key: string, offset: number): Finding {
  return refusal(
    "lower/range",
    `${what} is smaller than the least number that the dialect can write`,
    "state a larger value in the job, or more decimals in the dialect if the controller takes them",
    offset,
    key,
  );
}

export function tappingRefused(reason: string, fix: string, offset: number): Finding {
  return refusal("limit/tapping", reason, fix, offset, "machine.tapping.kind");
}

/** Numbers so coarse that rounding shows on the work; atoms. */
export const coarseGrid = 100_000;

export function coarseNumbers(grid: number, units: "mm" | "inch"): Finding {
  const increment = Number((grid / atomsPerUnit[units]).toFixed(7));
  return {
    rule: "lower/rounded",
    severity: "warning",
    message: `places are rounded to ${String(increment)} ${units}, which is all that the dialect can write`,
    place: inJob(0),
    fix: "state more decimals in `numbers.length` if the controller takes them",
    key: "numbers.length",
  };
}

export function keptFullCircle(offset: number): Finding {
  return {
    rule: "lower/full-circle",
    severity: "note",
    message:
      "the ends of this arc meet after rounding; its sweep in the job is above 180 degrees, so it is written as a full circle",
    place: inJob(offset),
  };
}

/** A motion that moves more axes than one block of the controller may. */
export function tooManyAxes(most: number, offset: number): Finding {
  return refusal(
    "lower/axes-at-once",
    `this motion moves more than ${most} axes, and the controller moves no more at once`,
    "split it in the job, so that each motion moves fewer axes",
    offset,
    "motion.axes-at-once",
  );
}

/** A feed that the controller would take for a rapid, or that is in a mode in which rapids have no number. */
export function asFastAsRapid(offset: number): Finding {
  return refusal(
    "lower/rapid-feed",
    "the controller runs rapids as lines at a feed a minute, and this feed is as fast as that or of another mode",
    "lower the feed below `motion.rapid-feed`, and state it a minute",
    offset,
    "motion.rapid-feed",
  );
}
