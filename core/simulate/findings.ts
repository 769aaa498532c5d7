import type { Finding, UnitSystem } from "#base";
import { atomsPerInch, atomsPerMillimetre, unitWord } from "#base";

/** Causes of findings that have a depth. */
export type Kind = "rapid" | "stopped" | "flutes" | "shank" | "holder" | "below" | "fixture";

/** What was met of one cause in one part of the work. */
export interface Meeting {
  readonly kind: Kind;
  readonly part: string;
  readonly tool: number;
  readonly detail: string;
  /** How many motions it was. */
  rows: number;
  /** The deepest of them, mm. */
  worst: number;
}

type Draft = Omit<Finding, "place">;

const inches = atomsPerInch / atomsPerMillimetre;

/** 2.15 -> 2.15 mm, or 0.0846 in */
export function depthText(depth: number, units: UnitSystem): string {
  const text = units === "mm" ? depth.toFixed(2) : (depth / inches).toFixed(4);
  return `${String(Number(text))} ${unitWord[units]}`;
}

function warning(rule: string, message: string, fix: string): Draft {
  return { rule, severity: "warning", message, fix };
}

const times = (rows: number): string => (rows === 1 ? "" : `, in ${String(rows)} motions, the deepest here`);

/** One function a cause: rule, message and way out. `where` is "in operation `op10` with tool 1", or "with tool 1". */
const drafts: Readonly<Record<Kind, (meeting: Meeting, depth: string, where: string) => Draft>> = {
  rapid: ({ rows }, depth, where) =>
    warning(
      "motion/rapid-through-material",
      `A rapid ${where} goes through material that is left there, up to ${depth} deep${times(rows)}.`,
      "Rise above it first, or cut it away before.",
    ),
  stopped: ({ rows, detail }, depth, where) =>
    warning(
      "motion/stopped-in-material",
      `While the tool stands in material ${where}, ${detail}; it is up to ${depth} deep there${times(rows)}.`,
      "Take the tool out of the material first.",
    ),
  flutes: ({ rows }, depth, where) =>
    warning(
      "limit/shank",
      `A cut ${where} is deeper than the cutting edges are long, by up to ${depth}${times(rows)}.`,
      "Cut in more steps down, or take a tool with longer edges (`fluteLength`).",
    ),
  shank: ({ rows }, depth, where) =>
    warning(
      "limit/shank",
      `Above its cutting edges the tool meets a wall that is left ${where}, over up to ${depth} of its height${times(rows)}.`,
      "Take a tool with longer edges (`fluteLength`) or a thinner shank (`shank`), or widen the cut.",
    ),
  holder: ({ rows }, depth, where) =>
    warning(
      "limit/holder",
      `The holder meets material that is left ${where}, up to ${depth} deep${times(rows)}.`,
      "Let the tool stick out further (`stickOut`), or cut the material away before.",
    ),
  below: (_, depth, where) =>
    warning(
      "limit/below-stock",
      `The tool goes ${depth} below the stock ${where}, into what it lies on.`,
      "Lift the cut, or see that a spoil board as thick as that lies under the stock.",
    ),
  fixture: ({ rows, detail }, depth, where) =>
    warning(
      "limit/fixture",
      `A motion ${where} goes into a fixture: ${detail}, up to ${depth} below its top${times(rows)}.`,
      "Go around it or above it, or move the clamp.",
    ),
};

/** A meeting as a finding without its place. */
export function words(meeting: Meeting, units: UnitSystem): Draft {
  const tool = `tool ${String(meeting.tool)}`;
  const where = meeting.part === tool ? `with ${tool}` : `in operation \`${meeting.part}\` with ${tool}`;
  return drafts[meeting.kind](meeting, depthText(meeting.worst, units), where);
}

/** What was left out of the simulation or taken for granted, a note. */
export function notSimulated(message: string, fix: string): Draft {
  return { rule: "motion/not-simulated", severity: "note", message, fix };
}

/** Break-through as it is usual: one note for all operations. */
export function breaksThrough(parts: readonly string[], deepest: number, units: UnitSystem): Draft {
  return {
    rule: "limit/below-stock",
    severity: "note",
    message: `Tools go below the stock, ${depthText(deepest, units)} at most: in ${parts.map((part) => `\`${part}\``).join(", ")}.`,
    fix: "See that nothing is in the way there: a spoil board, or a gap below.",
  };
}
