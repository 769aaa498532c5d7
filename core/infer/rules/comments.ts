import type { Ballot, Observed, Value } from "../evidence.ts";
import { lineOf, settle, vote } from "../evidence.ts";
import type { Sample } from "../sample.ts";
import type { Line } from "../tokens.ts";

/** How comments are set apart, where they stand, and how messages to the operator are told from remarks. */
export function comments({ lines, byProgram }: Sample): Observed[] {
  const spoken = lines.filter((line) => line.comments.some((text) => text !== ";"));
  if (spoken.length === 0) return [];
  const style = spoken.map((line): Ballot => ({ value: styleOf(line), line }));
  const longest = spoken.reduce((most, line) => (lengthOf(line) > lengthOf(most) ? line : most));
  const beside = spoken.filter(({ kind }) => kind === "block");
  const shares = (inherited: Value | undefined): boolean => beside.length === 0 || inherited === "anywhere";
  return [
    ...vote("comments.style", style, "lines with comments"),
    settle("comments.longest", Math.max(8, Math.min(200, lengthOf(longest))), `the longest one stands on ${lineOf(longest)}; the limit itself is asked`, { holds: (inherited) => typeof inherited === "number" && inherited >= lengthOf(longest), limit: true }), // prettier-ignore
    ...(beside.length === 0
      ? []
      : [settle("comments.place", "anywhere", `beside words on ${lineOf(beside[0])}`, { holds: shares })]),
    ...stopComments(byProgram),
  ];
}

/** Where the message of a stop stands. */
function stopComments(byProgram: Sample["byProgram"]): Observed[] {
  const stops = byProgram.flat().filter(({ m }) => m.includes(0));
  const ballots = stops
    .filter(({ line }) => line.comments.some((text) => text !== ";"))
    .map(({ line }): Ballot => ({ value: "with-stop", line }));
  return vote("stops.comment", ballots, "stops with a comment beside them");
}

function styleOf({ comments: texts }: Line): string {
  return texts.some((text) => text.startsWith("(")) ? "parentheses" : "semicolon";
}

function lengthOf({ comments: texts }: Line): number {
  return Math.max(...texts.map((text) => text.length - (text.startsWith("(") ? 2 : 1)));
}
