import type { Observed, Value } from "../evidence.ts";
import { settle } from "../evidence.ts";
import type { Sample } from "../sample.ts";
import type { Line } from "../tokens.ts";

const letters = ["G", "M", "T", "H", "D"] as const;

/** Zeros in front of codes and of tool and offset numbers: G1 or G01. Only numbers of one digit show it. */
export function codeWidth({ lines }: Sample): Observed[] {
  return letters.flatMap((letter): Observed[] => {
    const words = lines.flatMap(
      (line) =>
      line.kind !== "block" ? [] : line.words.filter((word) => word.letter === letter && word.value < 10 && word.digits !== "0" || word.letter === letter && /^0+\d/.test(word.digits)).map(({ digits }) => ({ digits, line })), // prettier-ignore
    );
    if (words.length === 0) return [];
    const inTool = letter === "T" && words.every(({ digits }) => digits.length === 4);
    return inTool ? [] : ofLetter(letter, words);
  });
}

function ofLetter(letter: string, words: readonly { digits: string; line: Line }[]): Observed[] {
  const key = `numbers.code-width.${letter}`;
  const widths = new Map<number, { digits: string; line: Line }[]>();
  for (const word of words) {
    const width = word.digits.split(".")[0].length;
    const known = widths.get(width);
    if (known) known.push(word);
    else widths.set(width, [word]);
  }
  const groups = [...widths].sort(([, a], [, b]) => b.length - a.length);
  const [[width, most], ...others] = groups;
  const rest = others.flatMap(([, group]) => group);
  const doubt: Observed[] = rest.length === 0 ? [] : [{ kind: "contradiction", key, message: `${letter} has ${groups.map(([one, group]) => `${String(one)} digits on ${String(group.length)}`).join(", ")} words`, lines: rest.map(({ line }) => line) }]; // prettier-ignore
  if (most.length < 0.95 * words.length) return doubt;
  const example = most[Math.floor(most.length / 2)];
  const holds = (inherited: Value | undefined): boolean => inherited === width;
  return [settle(key, width, `${letter}${example.digits} on ${String(most.length)} of ${String(words.length)} words, e.g. line ${String(example.line.number)}`, { holds }), ...doubt]; // prettier-ignore
}
