import type { Ballot, Base, Observed, Value } from "../evidence.ts";
import { counted, lineOf, settle, vote } from "../evidence.ts";
import type { Sample } from "../sample.ts";
import { withG, withM } from "../sample.ts";
import type { Line } from "../tokens.ts";
import type { Block } from "../walk.ts";

/** How tools are chosen and changed, and how their lengths come to act. */
export function tools(sample: Sample): Observed[] {
  return [...changes(sample), ...lengthOffsets(sample), ...toolWords(sample), ...staging(sample)];
}

/** The tool word and the code of the change: in one block or two, and which comes first. */
function changes(sample: Sample): Observed[] {
  const changing = withM(sample, 60);
  if (changing.length === 0) return withoutChange(sample);
  const together = changing.filter(({ words }) => words.has("T"));
  const order = together.map(({ line }): Ballot => ({ value: at(line, "T") < atChange(line) ? "select-first" : "change-first", line })); // prettier-ignore
  const blocks = changing.map((block): Ballot => ({ value: block.words.has("T") ? "together" : "apart", line: block.line })); // prettier-ignore
  const evidence = counted(changing, changing.length, "changes by M06");
  // Effects of a change show in no program; where none are inherited the most careful reading stands, and is asked.
  const careful = { position: "unknown", spindle: "stopped", coolant: "off", "length-offset": "unchanged" };
  const lacks = (base: Base): boolean => base("machine.change-effects") === undefined;
  return [
    settle("machine.swap", "controller", evidence),
    settle("machine.change-effects", careful, "not shown by a program: the most careful reading", { holds: (inherited) => inherited !== undefined, only: lacks, limit: true }), // prettier-ignore
    ...vote("tools.blocks", blocks, "changes"),
    ...vote("tools.order", order, "changes"),
  ];
}

/** Programs with tool words and stops, but no change: the operator changes. */
function withoutChange(sample: Sample): Observed[] {
  const stops = withM(sample, 0);
  const chosen = sample.blocks.filter(({ words }) => words.has("T"));
  if (chosen.length < 2 || stops.length < chosen.length - 1) return [];
  return [settle("machine.swap", "operator", `${String(chosen.length)} tool words and ${String(stops.length)} stops, but no M06`)]; // prettier-ignore
}

/** A tool word that stands behind a change and before the first motion stages the next tool. */
function staging({ byProgram }: Sample): Observed[] {
  const ballots = byProgram.flatMap((blocks) =>
    blocks.flatMap(({ m, words }, index): Ballot[] => {
      if (!m.includes(60)) return [];
      const next = blocks.slice(index + 1, index + 12);
      const end = next.findIndex(({ motion, m: codes }) => motion !== undefined || codes.includes(60));
      const staged = (end < 0 ? next : next.slice(0, end)).some((block) => block.words.has("T"));
      const isLast = !blocks.slice(index + 1).some(({ m: codes }) => codes.includes(60));
      if (isLast && !staged) return [];
      return [{ value: staged && (words.has("T") || index > 0) ? "yes" : "no", line: blocks[index].line }];
    }),
  );
  return vote("tools.preselect", ballots, "changes with another one behind them");
}

function at({ words }: Line, letter: string): number {
  return words.findIndex((word) => word.letter === letter);
}

function atChange({ words }: Line): number {
  return words.findIndex(({ letter, value }) => letter === "M" && value === 6);
}

/** Where the code of a length offset stands: with the first Z motion, or in a block of its own. */
function lengthOffsets(sample: Sample): Observed[] {
  const selecting = withG(sample, 430);
  if (selecting.length === 0) return [];
  // An offset that is said again for the same tool needs no motion, so that one block with Z decides.
  const withZ = selecting.filter(({ words }) => words.has("Z"));
  const form = withZ.length > 0
    ? settle("machine.length-offset.form", "with-first-z", counted(withZ, selecting.length, "blocks with G43 move Z")) // prettier-ignore
    : settle("machine.length-offset.form", "own-block", counted(selecting, selecting.length, "blocks with G43 move nothing")); // prettier-ignore
  const word = selecting.flatMap(({ words, line }): Ballot[] => {
    const letter = ["H", "D"].find((one) => words.has(one));
    return letter === undefined ? [] : [{ value: letter, line }];
  });
  return [
    form,
    ...vote("length-offset.word", word, "blocks with G43"),
    settle("machine.lengths", "table", counted(selecting, selecting.length, "blocks with G43"), { holds: (inherited) => inherited === "table" || inherited === "measured" }), // prettier-ignore
    ...added(sample, selecting),
  ];
}

/** The number of the offset, compared with that of the tool in the spindle. */
function added({ byProgram }: Sample, selecting: readonly Block[]): Observed[] {
  const ballots = byProgram.flatMap((blocks) => {
    let tool: number | undefined;
    let next: number | undefined;
    return blocks.flatMap(({ words, m, g, line }): Ballot[] => {
      next = words.get("T")?.value ?? next;
      if (m.includes(60)) tool = next;
      const offset = words.get("H")?.value;
      if (!g.includes(430) || offset === undefined || tool === undefined) return [];
      return [{ value: offset - tool, line }];
    });
  });
  const differences = new Set(ballots.map(({ value }) => value));
  const [only] = ballots;
  if (differences.size !== 1 || selecting.length < 2) return [];
  return [settle("length-offset.added", Math.max(0, Number(only.value)), counted(ballots, ballots.length, "offsets have the number of their tool, or so much more"))]; // prettier-ignore
}

/** A tool word of four digits whose last two are the offset: T0101. */
function toolWords(sample: Sample): Observed[] {
  const words = sample.blocks.flatMap(({ words: all, line }) => {
    const word = all.get("T");
    return word === undefined ? [] : [{ word, line }];
  });
  const long = words.filter(({ word }) => /^\d{4}$/.test(word.digits) && !word.digits.endsWith("00"));
  if (long.length === 0 || long.length < words.length || withG(sample, 430).length > 0) return [];
  const holds = (inherited: Value | undefined): boolean => inherited === "in-tool-word";
  return [
    settle("machine.length-offset.form", "in-tool-word", `T${long[0].word.digits} on ${lineOf(long[0].line)}`, { holds }), // prettier-ignore
    settle("machine.lengths", "table", "the offset stands in the tool word"),
  ];
}
