import type { Ballot, Observed, Value } from "../evidence.ts";
import { counted, lineOf, settle, vote } from "../evidence.ts";
import type { Program } from "../program.ts";
import type { Sample } from "../sample.ts";
import type { Line } from "../tokens.ts";

/** Line ends, marks at start and end, program number, blank lines, characters. */
export function framing(sample: Sample): Observed[] {
  return [
    ...lineEnds(sample),
    ...endOfBlock(sample),
    ...delimiter(sample),
    ...programNumber(sample),
    ...byteOrderMark(sample),
    ...leader(sample),
    ...blankLines(sample),
    ...characters(sample),
    ...extension(sample),
  ];
}

function lineEnds({ programs }: Sample): Observed[] {
  const ballots = programs.flatMap(({ lines, lineEnds: ends }) =>
    lines.flatMap((line, index): Ballot[] => {
      const end = ends[index];
      return end === undefined ? [] : [{ value: end, line }];
    }),
  );
  const last = programs.flatMap(({ lines, lineEnds: ends }): Ballot[] => {
    const line = lines.at(-1);
    return line ? [{ value: ends.at(-1) === undefined ? "no" : "yes", line }] : [];
  });
  return [...vote("file.line-end", ballots, "lines"), ...vote("file.last-line-end", last, "last lines")];
}

/** A semicolon with nothing behind it, on all blocks, is a mark and no comment. */
function endOfBlock({ lines }: Sample): Observed[] {
  const blocks = lines.filter(({ kind }) => kind === "block");
  const ballots = blocks.map((line): Ballot => ({ value: markOf(line), line }));
  return vote("file.end-of-block", ballots, "blocks");
}

function markOf({ endMark, comments }: Line): string {
  if (endMark === "*") return "asterisk";
  return comments.at(-1) === ";" ? "semicolon" : "none";
}

function delimiter({ programs }: Sample): Observed[] {
  const ballots = programs.flatMap(({ lines }): Ballot[] => {
    const filled = lines.filter(({ kind }) => kind !== "blank");
    const first = filled[0];
    if (first === undefined) return [];
    return [{ value: first.kind === "delimiter" ? "percent" : "none", line: first }];
  });
  return vote("file.delimiter", ballots, "programs");
}

/** Line that identifies a program by a number: O1001, :1001 or %1001 before its first block. */
export function identityOf({ lines }: Pick<Program, "lines">): Line | undefined {
  const first = lines.find(({ kind }) => !["blank", "delimiter", "comment"].includes(kind));
  if (first === undefined) return undefined;
  const bareColon = first.aligned && first.words.length === 0 && first.kind === "block";
  return first.kind === "program-number" || bareColon ? first : undefined;
}

function programNumber({ programs }: Sample): Observed[] {
  const found = programs.map(identityOf);
  const numbered = found.filter((line) => line !== undefined);
  if (numbered.length === 0) {
    const blocks = programs.flatMap(({ lines }) => lines.filter(({ kind }) => kind === "block").slice(0, 1));
    return vote("file.program-number", blocks.map((line): Ballot => ({ value: "none", line })), "programs"); // prettier-ignore
  }
  const spoken = numbered.map((line) => ({ line, ...spelling(line) }));
  const digits = Math.min(...spoken.map(({ text }) => text.length));
  const padded = spoken.some(({ text }) => text.startsWith("0"));
  const values = spoken.map(({ text }) => Number(text));
  const [{ letter }] = spoken;
  const evidence = `${letter}${spoken[0].text} on ${lineOf(numbered[0])}; the range that is free is asked`;
  const fits = (inherited: Value | undefined): boolean => {
    if (typeof inherited !== "object" || Array.isArray(inherited)) return false;
    const range = inherited as { letter?: Value; digits?: Value; from?: Value; to?: Value };
    const within = values.every((one) => one >= Number(range.from) && one <= Number(range.to));
    return (
      range.letter === letter &&
      within &&
      spoken.every(({ text }) => text === padTo(text, Number(range.digits)))
    );
  };
  const value = (): Value => ({ letter, digits: padded ? digits : Math.min(4, digits), from: 1, to: 10 ** Math.max(4, ...spoken.map(({ text }) => text.length)) - 1 }); // prettier-ignore
  return [settle("file.program-number", value, evidence, { holds: fits })];
}

const padTo = (text: string, digits: number): string => String(Number(text)).padStart(digits, "0");

function spelling(line: Line): { letter: string; text: string } {
  if (line.blockNumber) return { letter: ":", text: line.blockNumber.digits };
  const [, letter = "O", text = ""] = /([%O])\s*(\d+)/i.exec(line.text) ?? [];
  return { letter: letter.toUpperCase(), text };
}

function byteOrderMark({ programs }: Sample): Observed[] {
  const ballots = programs.flatMap(({ lines, byteOrderMark: mark }): Ballot[] =>
    lines.slice(0, 1).map((line) => ({ value: mark ? "yes" : "no", line })),
  );
  return vote("file.byte-order-mark", ballots, "programs");
}

function leader({ programs }: Sample): Observed[] {
  const ballots = programs.flatMap(({ lines }): Ballot[] => {
    const first = lines.findIndex(({ kind }) => kind !== "blank");
    return first < 0 ? [] : [{ value: first, line: lines[first] }];
  });
  return vote("file.leader", ballots, "programs");
}

/** Blank lines inside the program: where they stand in front of tool changes, they part sections. */
function blankLines({ programs }: Sample): Observed[] {
  const blanks = programs.flatMap(({ lines }) => {
    const first = lines.findIndex(({ kind }) => kind !== "blank");
    const last = lines.findLastIndex(({ kind }) => kind !== "blank");
    return lines.slice(first, last).filter(({ kind }) => kind === "blank");
  });
  if (blanks.length === 0) return [];
  const evidence = counted(
    blanks.map((line) => ({ line })),
    blanks.length,
    "blank lines stand inside the program",
  );
  return [
    settle("file.blank-lines", "between-sections", evidence, {
      holds: (inherited) => inherited === "between-sections",
    }),
  ];
}

/** Only what goes beyond capitals is shown by a program; a text in capitals fits every controller. */
function characters({ lines }: Sample): Observed[] {
  const high = lines.find(({ text }) => /[\u0080-\u00ff]/.test(text));
  if (high) return [settle("file.characters", "utf-8", `characters beyond ASCII on ${lineOf(high)}`)];
  const small = lines.find(({ comments }) => comments.some((comment) => /[a-z]/.test(comment)));
  if (!small) return [];
  const holds = (inherited: Value | undefined): boolean => inherited === "ascii" || inherited === "utf-8";
  return [settle("file.characters", "ascii", `small letters in a comment on ${lineOf(small)}`, { holds })];
}

function extension({ programs }: Sample): Observed[] {
  const endings = programs.map(({ file }) => /\.([A-Za-z0-9]{1,8})$/.exec(file)?.[1]);
  const [ending] = endings;
  if (ending === undefined || endings.some((one) => one !== ending)) return [];
  return [
    settle("file.extension", ending, `the file is called ${programs[0].file.split(/[/\\]/).at(-1) ?? ""}`),
  ];
}
