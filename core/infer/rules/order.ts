import type { Base, Observed, Value } from "../evidence.ts";
import { lineOf, settle } from "../evidence.ts";
import type { Sample } from "../sample.ts";
import type { Line } from "../tokens.ts";
import type { Block } from "../walk.ts";

/** How often one letter stands before another, and a block where it does. */
interface Precedence {
  readonly first: string;
  readonly second: string;
  readonly count: number;
  readonly line: Line;
}

/** From this share on the rarer order is an exception. */
const enough = 0.95;

/** The order of words: letters in pairs as blocks have them, merged with the order that is inherited. */
export function wordOrder(sample: Sample): Observed[] {
  const pairs = countPairs(sample.blocks);
  if (pairs.size === 0) return [];
  const settled: Precedence[] = [];
  const divided: Observed[] = [];
  for (const [name, forward] of pairs) {
    const backward = pairs.get(`${forward.second}${forward.first}`);
    if (backward && `${forward.second}${forward.first}` < name) continue;
    const [more, fewer] = (backward?.count ?? 0) > forward.count ? [backward!, forward] : [forward, backward];
    const share = more.count / (more.count + (fewer?.count ?? 0));
    if (share >= enough) settled.push(more);
    if (fewer) divided.push({ kind: "contradiction", key: "blocks.order", message: `${more.first} before ${more.second} on ${String(more.count)} blocks, behind it on ${String(fewer.count)}`, lines: [fewer.line] }); // prettier-ignore
  }
  const letters = [...new Set(sample.blocks.flatMap(({ line }) => line.words.map(({ letter }) => letter)))];
  const value = (base: Base): Value => merged(orderOf(base("blocks.order")), settled, letters);
  const holds = (inherited: Value | undefined): boolean => agrees(orderOf(inherited), settled, letters);
  const total = settled.reduce((sum, { count }) => sum + count, 0);
  const example = settled[Math.floor(settled.length / 2)];
  if (example === undefined) return divided;
  const evidence = `${String(settled.length)} pairs of letters seen in ${String(total)} places, such as ${example.first} before ${example.second} on ${lineOf(example.line)}`; // prettier-ignore
  return [settle("blocks.order", value, evidence, { holds }), ...divided];
}

/** The spindle's words and those of a tool change have keys of their own for their order. */
function isApart({ m, words }: Block, one: string, other: string): boolean {
  const pair = one < other ? one + other : other + one;
  if (pair === "MS") return m.some((code) => code === 30 || code === 40);
  return pair === "MT" && words.has("T");
}

/** The words beside a code of the builder stand as its own idiom has them. */
function isIdiom({ m, motion, words }: Block): boolean {
  const isBuilders = m.some((code) => code > 100 && code !== 300);
  return isBuilders && motion === undefined && ["P", "Q", "R"].some((letter) => words.has(letter));
}

function countPairs(blocks: readonly Block[]): Map<string, Precedence> {
  const pairs = new Map<string, { first: string; second: string; count: number; line: Line }>();
  for (const block of blocks) {
    if (isIdiom(block)) continue;
    const letters = [...new Set(block.line.words.map(({ letter }) => letter))];
    for (let at = 0; at < letters.length; at++)
      for (let behind = at + 1; behind < letters.length; behind++) {
        const [first, second] = [letters[at], letters[behind]];
        if (isApart(block, first, second)) continue;
        const pair = pairs.get(first + second);
        if (pair) pair.count++;
        else pairs.set(first + second, { first, second, count: 1, line: block.line });
      }
  }
  return pairs;
}

function orderOf(value: Value | undefined): string[] {
  return Array.isArray(value) ? value.map(String) : [];
}

function agrees(
  order: readonly string[],
  settled: readonly Precedence[],
  letters: readonly string[],
): boolean {
  if (letters.some((letter) => !order.includes(letter) && letter !== "O")) return false;
  return settled.every(({ first, second }) => order.indexOf(first) < order.indexOf(second));
}

/**
 * The inherited order, in which each letter that stands too far behind is put right before the first that it precedes; a
 * letter that is not inherited stands behind the words of cycles.
 */
function merged(
  order: readonly string[],
  settled: readonly Precedence[],
  letters: readonly string[],
): string[] {
  const news = letters.filter((letter) => !order.includes(letter) && letter !== "O" && letter !== "N");
  const place = order.indexOf("Q") + 1;
  const result = [...order.slice(0, place), ...news, ...order.slice(place)];
  // Pairs that contradict one another in a ring would go round for ever.
  for (let round = 0; round < settled.length + result.length; round++) {
    const wrong = settled.find(({ first, second }) => result.indexOf(first) > result.indexOf(second));
    if (!wrong) break;
    result.splice(result.indexOf(wrong.first), 1);
    const targets = settled
      .filter(({ first }) => first === wrong.first)
      .map(({ second }) => result.indexOf(second));
    result.splice(Math.min(...targets.filter((at) => at >= 0)), 0, wrong.first);
  }
  return result;
}
