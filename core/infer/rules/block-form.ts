import type { Ballot, Base, Observed, Settled, Value } from "../evidence.ts";
import { counted, largestOf, lineOf, settle, textOf, vote } from "../evidence.ts";
import type { Sample } from "../sample.ts";
import type { Block } from "../walk.ts";
import { identityOf } from "./framing.ts";

/** Block numbers, separators, lengths, and how many codes share a block. */
export function blockForm(sample: Sample): Observed[] {
  return [
    ...blockNumbers(sample),
    ...separators(sample),
    ...lengths(sample),
    ...codesTogether(sample),
    ...deletion(sample),
  ];
}

function blockNumbers(sample: Sample): Observed[] {
  const identities = new Set(sample.programs.map(identityOf));
  const blocks = sample.blocks.filter(({ line }) => !identities.has(line));
  const numbered = blocks.filter(({ line }) => line.blockNumber);
  if (blocks.length === 0) return [];
  if (numbered.length === 0)
    return [settle("blocks.number", "none", counted(blocks, blocks.length, "blocks have none"))];
  const aligned = numbered.filter(({ line }) => line.aligned);
  const mark =
    aligned.length > 0
      ? [settle("blocks.sections.mark", "colon", counted(aligned, numbered.length, "block numbers have a colon"))] // prettier-ignore
      : [];
  const share = numbered.length / blocks.length;
  if (share > 0.5 && share < 0.95) {
    const lines = blocks.filter(({ line }) => !line.blockNumber).map(({ line }) => line);
    return [{ kind: "contradiction", key: "blocks.number", message: `${String(numbered.length)} of ${String(blocks.length)} blocks have a number`, lines }, ...mark]; // prettier-ignore
  }
  const on = share >= 0.95 ? "all" : "sections";
  return [...numberKeys(sample, on, numbered, blocks.length), ...mark];
}

function numberKeys(
  sample: Sample,
  on: "all" | "sections",
  numbered: readonly Block[],
  total: number,
): Observed[] {
  const runs = sample.byProgram.map((blocks) =>
    blocks.flatMap(({ line }) => (line.blockNumber && line.words.length > 0 ? [line] : [])),
  );
  const starts = runs.flatMap(([line]) =>
    line?.blockNumber ? [{ value: line.blockNumber.value, line }] : [],
  );
  const steps = runs.flatMap((lines) => lines.slice(1).map((line, index): Ballot<number> => ({ value: line.blockNumber!.value - lines[index].blockNumber!.value, line }))); // prettier-ignore
  const found = [
    ...vote("blocks.number.start", starts, "first numbers"),
    ...vote("blocks.number.step", steps.filter(({ value }) => value > 0), "differences of block numbers"), // prettier-ignore
    ...widths(numbered),
  ];
  const wrap = steps.find(({ value }) => value < 0);
  const highest = largestOf(numbered.map(({ line }) => line.blockNumber!.value));
  const evidence = counted(numbered, total, "blocks have a number");
  // The group is inherited as `none` where the base has no numbers; then all of it has to stand.
  const whole = (base: Base): boolean => base("blocks.number") === "none";
  const to = settle("blocks.number.to", wrap ? highest : roundTop(highest), wrap ? `begins again on ${lineOf(wrap.line)}` : `highest seen is ${String(highest)}; the limit itself is asked`, { holds: (inherited) => typeof inherited === "number" && (wrap ? inherited === highest : inherited >= highest), ...(wrap ? {} : { limit: true as const }) }); // prettier-ignore
  const stepless = found.some(({ key, kind }) => key === "blocks.number.step" && kind === "settled");
  const step = settle("blocks.number.step", 10, "not seen: one number in the program", { only: whole });
  return [settle("blocks.number.on", on, evidence), ...found, ...(stepless ? [] : [step]), to];
}

function roundTop(highest: number): number {
  return Math.max(9999, 10 ** String(highest).length - 1);
}

/** Leading zeros show the width; numbers without one fit width 0 and their own digits. */
function widths(numbered: readonly Block[]): Settled[] {
  const digits = numbered.map(({ line }) => line.blockNumber!.digits);
  const padded = numbered.find(({ line }) => line.blockNumber!.digits.startsWith("0"));
  const least = -largestOf(digits.map((text) => -text.length));
  const narrow = numbered.find(({ line }) => line.blockNumber!.digits.length === least)!.line;
  if (!padded)
    return [settle("blocks.number.width", 0, `no zeros in front, e.g. ${lineOf(narrow)}`, { holds: (inherited) => typeof inherited === "number" && inherited <= least })]; // prettier-ignore
  return [settle("blocks.number.width", least, `zeros in front, e.g. ${lineOf(padded.line)}`)];
}

const gapNames: Readonly<Record<string, string>> = { "": "none", " ": "blank", "\t": "tab" };

function separators({ lines }: Sample): Observed[] {
  const ballots = lines.flatMap(
    (line) =>
    line.kind !== "block" ? [] : line.gaps.map((gap): Ballot => ({ value: gapNames[gap] ?? `other (${JSON.stringify(gap)})`, line })), // prettier-ignore
  );
  return vote("blocks.separator", ballots, "gaps between words").filter(
    (one) => one.kind === "contradiction" || !textOf(one.value as Value).startsWith("other"),
  );
}

/** Limits are shown from below alone: a block that was taken is not too long. */
function lengths({ blocks }: Sample): Observed[] {
  const longest = extreme(blocks, ({ line }) => withoutComments(line.text).length);
  const most = extreme(blocks, ({ line }) => line.words.length);
  const withMost = extreme(blocks, ({ m }) => m.length);
  if (!longest || !most || !withMost) return [];
  const atLeast =
    (least: number) =>
    (inherited: Value | undefined): boolean =>
      inherited === "none" || (typeof inherited === "number" && inherited >= least);
  const seen = (what: string, { value, block }: Extreme): string =>
    `${String(value)} ${what} on ${lineOf(block.line)}; the limit itself is asked`;
  return [
    settle("blocks.longest", Math.max(20, longest.value), seen("characters", longest), { holds: atLeast(longest.value), limit: true }), // prettier-ignore
    settle("blocks.most-words", most.value, seen("words", most), { holds: atLeast(most.value), limit: true }),
    settle("blocks.m-words", Math.min(8, Math.max(1, withMost.value)), seen("M words", withMost), { holds: atLeast(withMost.value), limit: true }), // prettier-ignore
  ];
}

interface Extreme {
  readonly value: number;
  readonly block: Block;
}

function extreme(blocks: readonly Block[], measure: (block: Block) => number): Extreme | undefined {
  let found: Extreme | undefined;
  for (const block of blocks) {
    const value = measure(block);
    if (!found || value > found.value) found = { value, block };
  }
  return found;
}

function withoutComments(text: string): string {
  return text.replace(/\([^)]*\)|;.*/g, "").trimEnd();
}

/** Modes that a block can state without moving: units, planes, distances, offsets, path and cancelling codes. */
const modeCodes = new Set([170, 180, 190, 200, 210, 400, 490, 540, 550, 560, 570, 580, 590, 600, 610, 640, 690, 500, 700, 710, 800, 900, 910, 930, 940, 950]); // prettier-ignore

/** Whether G words share a block, and modes that are set one behind another. */
function codesTogether({ blocks }: Sample): Observed[] {
  const many = blocks.find(({ g }) => g.length > 1);
  const gWords = many
    ? [settle("blocks.g-words", "any", `${String(many.g.length)} G words on ${lineOf(many.line)}`)]
    : [];
  const isMode = ({ g, motion, line }: Block): boolean =>
    !motion && g.length > 0 && g.length === line.words.length && g.every((code) => modeCodes.has(code));
  const shared = blocks.filter((block) => isMode(block) && block.g.length > 1);
  const lone = blocks.filter((block, index) => isMode(block) && block.g.length === 1 && neighbours(blocks, index, isMode)); // prettier-ignore
  if (shared.length > 0)
    return [...gWords, settle("blocks.modes", "together", counted(shared.map(({ line }) => ({ line })), shared.length, "blocks state several modes"))]; // prettier-ignore
  if (lone.length < 2) return gWords;
  const evidence = counted(lone, lone.length, "modes in a row have a block each");
  // With one G word a block modes are apart in any case.
  return [
    ...gWords,
    settle("blocks.modes", "apart", evidence, { holds: (inherited) => inherited === "apart" }),
  ];
}

function neighbours(blocks: readonly Block[], index: number, isMode: (block: Block) => boolean): boolean {
  const before = index > 0 && isMode(blocks[index - 1]);
  return before || (index + 1 < blocks.length && isMode(blocks[index + 1]));
}

function deletion({ lines }: Sample): Observed[] {
  const marked = lines.filter(({ deleteMark }) => deleteMark);
  if (marked.length === 0) return [];
  const numbered = marked.find(({ deleteMark }) => deleteMark!.mark !== "/");
  const mark = numbered
    ? settle("blocks.delete.mark", "numbered", `${numbered.deleteMark!.mark} on ${lineOf(numbered)}`)
    : settle("blocks.delete.mark", "slash", `/ on ${lineOf(marked[0])}`, { holds: (inherited) => inherited !== "none" }); // prettier-ignore
  const ballots = marked
    .filter(({ blockNumber }) => blockNumber)
    .map((line): Ballot => ({
      value: line.deleteMark!.behindNumber ? "after-number" : "before-number",
      line,
    }));
  return [mark, ...vote("blocks.delete.place", ballots, "block delete marks")];
}
