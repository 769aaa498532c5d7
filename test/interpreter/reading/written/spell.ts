import type { Chance } from "./chance.ts";

/** A word: its letter, and its number as whole steps of 10 to the power of minus `decimals`. */
export interface Word {
  readonly letter: string;
  readonly steps: number;
  readonly decimals: number;
}

/** How a writer of programs writes words and blocks. */
export interface Habits {
  /** Forms of a number: "usual" 1.5 -0.5 2, "short" 1.5 -.5 2, "pointed" 1.5 -0.5 2., "fixed" 1.500, "any" of these and odder ones. */
  readonly numbers: "usual" | "short" | "pointed" | "fixed" | "any";
  /** Digits of G and M codes: 2 for G01. "any": one to three, or with a point. */
  readonly codes: 1 | 2 | "any";
  /** Between words: "any" sets blanks and tabs anywhere, even in numbers. */
  readonly blanks: "" | " " | "\t" | "any";
  readonly lowerCase: boolean | "any";
  /** Order of the words in a block: as they come, by their letters in the usual order, or at random. */
  readonly order: "given" | "usual" | "any";
  readonly lineEnd: "\n" | "\r\n";
}

/** A word whose number is whole. */
export function whole(letter: string, value: number): Word {
  return { letter, steps: value, decimals: 0 };
}

/** A code: G59.1 is code("G", 59.1). */
export function code(letter: "G" | "M", value: number): Word {
  return { letter, steps: Math.round(value * 10), decimals: 1 };
}

/** The order of letters that most writers keep (DIN 66025-1, with L and H in their places). */
const usualOrder = "NGXYZABCIJKRPQLFSTHDM";

function inOrder(words: readonly Word[], { order }: Habits, chance: Chance): readonly Word[] {
  if (order === "any") return chance.shuffle(words);
  if (order === "given") return words;
  const rank = ({ letter }: Word): number => usualOrder.indexOf(letter);
  return [...words].sort((one, other) => rank(one) - rank(other));
}

/** Writes words as a block, without its end. */
export function spellBlock(words: readonly Word[], habits: Habits, chance: Chance): string {
  const spelled = inOrder(words, habits, chance).map((word) =>
    spellCase(spellWord(word, habits, chance), habits, chance),
  );
  if (habits.blanks !== "any") return spelled.join(habits.blanks);
  return spelled.map((word) => scatter(word, chance) + chance.pick(["", " ", "  ", "\t"])).join("");
}

/** Puts a blank into a word now and then (NISTIR 6556 3.3: they may stand anywhere). */
function scatter(word: string, chance: Chance): string {
  if (!chance.happens(0.2)) return word;
  const at = chance.between(1, word.length);
  return word.slice(0, at) + chance.pick([" ", "\t", "  "]) + word.slice(at);
}

function spellCase(word: string, { lowerCase }: Habits, chance: Chance): string {
  const lower = lowerCase === "any" ? chance.happens(0.3) : lowerCase;
  return lower ? word.toLowerCase() : word;
}

function spellWord(word: Word, habits: Habits, chance: Chance): string {
  const { letter, steps, decimals } = word;
  if (letter === "G" || letter === "M") return letter + spellCode(steps, habits, chance);
  if (decimals === 0 && habits.numbers !== "any") return letter + String(steps);
  return letter + spellNumber(steps, decimals, habits, chance);
}

/** A code in tenths. */
function spellCode(tenths: number, { codes }: Habits, chance: Chance): string {
  const digits = codes === "any" ? chance.pick([1, 1, 2, 2, 3]) : codes;
  const point = tenths % 10 === 0 ? "" : `.${tenths % 10}`;
  const extra = codes === "any" && chance.happens(0.1) ? (point === "" ? chance.pick([".", ".0"]) : "0") : "";
  return String(Math.floor(tenths / 10)).padStart(digits, "0") + point + extra;
}

/** A number in one of its forms (NISTIR 6556 3.3.2.1). */
function spellNumber(steps: number, decimals: number, { numbers }: Habits, chance: Chance): string {
  const form =
    numbers === "any" ? chance.pick(["usual", "short", "pointed", "fixed", "odd"] as const) : numbers;
  const digits = String(Math.abs(steps)).padStart(decimals + 1, "0");
  const before = digits.slice(0, digits.length - decimals);
  const behind = digits.slice(digits.length - decimals);
  const short = behind.replace(/0+$/, "");
  const sign = steps < 0 ? "-" : "";
  if (form === "fixed") return `${sign}${before}${decimals === 0 ? "" : `.${behind}`}`;
  if (form === "pointed") return `${sign}${before}.${short}`;
  if (form === "usual") return `${sign}${before}${short === "" ? "" : `.${short}`}`;
  const lead = before === "0" && short !== "" ? "" : before;
  if (form === "short") return `${sign}${lead}${short === "" ? "" : `.${short}`}`;
  const plus = steps < 0 ? "-" : chance.pick(["+", "", steps === 0 ? "-" : ""]);
  const padded = chance.pick(["", "0", "00"]) + (lead === "" ? chance.pick(["", "0"]) : lead);
  return `${plus}${padded}.${short}${short === "" && padded === "" ? "0" : chance.pick(["", "0", "000"])}`;
}
