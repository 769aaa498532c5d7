import { allCodeKeys, codeAt } from "./code-keys.ts";
import type { ExtraCode } from "./dialect.ts";
import type { Resolving } from "./resolving.ts";
import { standardCodes } from "./standard-codes.ts";
import { blockDeleteMark, codeText } from "./values.ts";

/** A code with the key that gives it. */
interface Use {
  readonly code: string;
  readonly key: string;
  readonly extra: ExtraCode | undefined;
}

/** Each code has one meaning, and a code of the standards has that of the standards. */
export function checkCodes(resolving: Resolving, extraCodes: readonly ExtraCode[]): void {
  const uses = [
    ...keyUses(resolving),
    ...extraCodes.map((extra) => ({ code: codeText(extra), key: extra.key, extra })),
  ];
  for (const use of uses) checkStandard(resolving, use);
  for (const [index, use] of uses.entries()) {
    const other = uses
      .slice(0, index)
      .find((before) => before.code === use.code && !tellApart(before.extra, use.extra));
    if (other === undefined) continue;
    const message = `\`${use.key}\` and \`${other.key}\` are both ${use.code}; when a program is read, a code has one meaning.`;
    const rule = use.extra === undefined ? "dialect/code-twice" : "dialect/idiom-meaning";
    resolving.fail(rule, use.key, message, "Give one of the two another code, or `none`.");
  }
}

function keyUses({ tree }: Resolving): Use[] {
  return allCodeKeys().flatMap((key) => {
    const code = codeAt(tree, key);
    // A stop with a block delete mark is told from the stop by that mark.
    const isMarked = blockDeleteMark(tree, key) !== "";
    return code === undefined || code === null || isMarked
      ? []
      : [{ code: codeText(code), key, extra: undefined }];
  });
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
