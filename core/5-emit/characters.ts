import { constant, id, num } from "./builders.ts";
import type { Expression, Statement } from "./builders.ts";
import type { CharacterName } from "./names.ts";

/** Characters that generated code writes one by one, by the name of the constant that holds their code. */
const characters = {
  tab: "\t",
  lineFeed: "\n",
  carriageReturn: "\r",
  space: " ",
  plus: "+",
  minus: "-",
  point: ".",
  zero: "0",
} as const satisfies Partial<Record<CharacterName, string>>;

const letters = Array.from("ABCDEFGHIJKLMNOPQRSTUVWXYZ") as CharacterName[];

const named: readonly (readonly [CharacterName, string])[] = [
  ...(Object.entries(characters) as [CharacterName, string][]),
  ...letters.map((letter) => [letter, letter] as const),
];

/** Declarations of the constants. */
export function defineCharacters(): Statement[] {
  return named.map(([name, text]) => constant(name, text.charCodeAt(0)));
}

/** The code of a character: its constant where it has one, otherwise the number. */
export function character(text: string): Expression {
  const found = named.find(([, one]) => one === text);
  return found ? id(found[0]) : num(text.charCodeAt(0));
}

/** Whether an address is a letter that a word can begin with. */
export function isLetter(address: string): boolean {
  return /^[A-Z]$/u.test(address);
}
