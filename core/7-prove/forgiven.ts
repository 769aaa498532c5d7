import { rowKind } from "#base";
import type { Step, StepKind } from "#base";

/**
 * All that the comparison forgives, each with its reason. What is not listed here is compared exactly: kinds, frames,
 * known axes, places, feeds, centres, turns and every field of every step, one to one and in order.
 */
export const forgiven = {
  source: "Where a row comes from is a place in the job on one side and in the program on the other.",
  stated: "Which axes a block names is a matter of form; where they are after it is compared.",
  "rapid-feed": "A rapid has no feed word, and a feed left in its column moves nothing.",
  "unknown-axis":
    "The value of an axis whose place is unknown means nothing; that it is unknown is compared.",
  "batch-cut": "Where one batch ends and the next begins is up to the stage that fills them.",
  "program-number": "A dialect without program numbers writes none; the number moves nothing.",
  "message-text":
    "A message is written in the controller's characters and cut to its length; its numbers must be whole.",
} as const satisfies Record<string, string>;

/** What is forgiven. */
export type Forgiven = keyof typeof forgiven;

/** "rapid-feed": whether the feed of a row counts. */
export function feedCounts(kind: number): boolean {
  return kind !== rowKind.rapid;
}

/** "unknown-axis": whether the value of an axis counts. */
export function placeCounts(known: number, axis: number): boolean {
  return (known & (1 << axis)) !== 0;
}

/** "message-text": letters and digits alone, without accents and case. */
function bareText(text: string): string {
  return text
    .normalize("NFKD")
    .toUpperCase()
    .replace(/[^A-Z0-9]/g, "");
}

/** Whether one text is another with letters left out. */
function isThinned(thin: string, full: string): boolean {
  let at = 0;
  for (const letter of full) if (letter === thin[at]) at++;
  return at === thin.length;
}

/** "message-text": the text read is the text meant with characters left out or the end cut off, its numbers untouched. */
function sameMessage(expected: string, actual: string): boolean {
  const numbers = actual.match(/[0-9]+/g) ?? [];
  const wanted = expected.match(/[0-9]+/g) ?? [];
  if (expected === actual) return true;
  return (
    isThinned(bareText(actual), bareText(expected)) &&
    numbers.every((number, index) => number === wanted[index])
  );
}

type Forgiving = {
  readonly [K in StepKind]?: (
    expected: Extract<Step, { kind: K }>,
    actual: Extract<Step, { kind: K }>,
  ) => boolean;
};

/** Steps that may differ in the one way that is said above; all others have to be equal in every field. */
const forgivingSteps: Forgiving = {
  "program-start": (expected, actual) => actual.number === expected.number || actual.number === 0,
  message: (expected, actual) => sameMessage(expected.text, actual.text),
};

/** Whether a step that is not equal is forgiven. Both are of one kind. */
export function forgivesStep(expected: Step, actual: Step): boolean {
  const rule = forgivingSteps[expected.kind] as ((expected: Step, actual: Step) => boolean) | undefined;
  return rule !== undefined && rule(expected, actual);
}
