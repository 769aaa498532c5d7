import { allCodeKeys, codeAt } from "./code-keys.ts";
import type { ExtraCode } from "./dialect.ts";
import type { Resolving } from "./resolving.ts";
import { standardCodes } from "./standard-codes.ts";
import { codeText } from "./code-text.ts";
import { blockDeleteMark } from "./values.ts";

/** A code with the key that gives it. */
interface Use {
  readonly code: string;
  /** The word beside it, such as P2; empty for none. */
  readonly word: string;
  readonly key: string;
  readonly extra: ExtraCode | undefined;
}

/** Each code has one meaning, and a code of the standards has that of the standards. */
export function checkCodes(resolving: Resolving, extraCodes: readonly ExtraCode[]): void {
  const uses = [
    ...keyUses(resolving),
    ...extraCodes.map((extra) => ({ code: codeText(extra), word: "", key: extra.key, extra })),
  ];
  for (const use of uses) checkLetter(resolving, use);
  for (const use of uses) checkStandard(resolving, use);
  for (const [index, use] of uses.entries()) {
    const other = uses.slice(0, index).find((before) => before.code === use.code && !areApart(before, use));
    if (other === undefined) continue;
    const text = use.word === other.word && use.word !== "" ? `${use.code} ${use.word}` : use.code;
    const message = `\`${use.key}\` and \`${other.key}\` are both ${text}; when a program is read, a code has one meaning.`;
    const rule = use.extra === undefined ? "dialect/code-twice" : "dialect/idiom-meaning";
    resolving.fail(rule, use.key, message, "Give one of the two another code, or `none`.");
  }
}

function keyUses({ tree }: Resolving): Use[] {
  return allCodeKeys().flatMap((key) => {
    const code = codeAt(tree, key);
    // A stop with a block delete mark is told from the stop by that mark.
    if (code === undefined || code === null || blockDeleteMark(tree, key) !== "") return [];
    const word = code.word ? code.word.letter + String(Number(code.word.digits)) : "";
    return [{ code: codeText(code), word, key, extra: undefined }];
  });
}

/** Two keys may share a code where each has a word beside it, of one letter and not the same number: G54.1 P1, G54.1 P2. */
function areApart(first: Use, second: Use): boolean {
  if (first.extra !== undefined || second.extra !== undefined) return tellApart(first.extra, second.extra);
  return first.word !== "" && first.word.charAt(0) === second.word.charAt(0) && first.word !== second.word;
}

/** Two idioms may share a code where a word beside it has a fixed number in both, and not the same. */
function tellApart(first: ExtraCode | undefined, second: ExtraCode | undefined): boolean {
  if (first === undefined || second === undefined) return false;
  const letters = Object.keys(first.words);
  const sameLetters =
    letters.length === Object.keys(second.words).length && letters.every((one) => one in second.words);
  return (
    sameLetters &&
    letters.some((letter) => {
      const [one, other] = [first.words[letter], second.words[letter]];
      return typeof one === "number" && typeof other === "number" && one !== other;
    })
  );
}

/** Keys whose codes are preparatory functions (ISO 6983-1): they stand before the words of their motion. */
const preparatory = /^(motion|arc|plane|cycles)\.(?!tap-synchronised$)/;

function checkLetter({ fail }: Resolving, { code, key, extra }: Use): void {
  if (extra !== undefined || !preparatory.test(key) || code.startsWith("G")) return;
  const message = `\`${key}\` is ${code}, and how the tool moves is said by a G word.`;
  fail("dialect/standard-code", key, message, "Look the code up in the builder's manual.");
}

function checkStandard(resolving: Resolving, { code, key, extra }: Use): void {
  const allowed = Object.hasOwn(standardCodes, code) ? standardCodes[code] : undefined;
  if (
    allowed === undefined ||
    allowed.some((one) => key === one || (one.endsWith(".") && key.startsWith(one)))
  )
    return;
  const meaning = allowed.map((one) => `\`${one.replace(/\.$/, "")}\``).join(", ");
  const message = `\`${key}\` is ${code}, which is the code of ${meaning} on every control of this family.`;
  const rule = extra === undefined ? "dialect/standard-code" : "dialect/idiom-meaning";
  resolving.fail(rule, key, message, "Look the code up in the builder's manual.");
}
