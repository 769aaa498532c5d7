/** What was done to a program. */
export type MutationKind =
  "digit" | "sign" | "letter" | "word-dropped" | "word-doubled" | "block-dropped" | "blocks-swapped";

export interface Mutant {
  readonly kind: MutationKind;
  /** 0-based index of the block. */
  readonly block: number;
  /** The block before and after, for the report. */
  readonly before: string;
  readonly after: string;
  /** Why it need not be found, judged from the text alone; undefined: it must be found. */
  readonly harmless: HarmlessClass | undefined;
  readonly text: string;
}

/** What a controller does not look at, or reads the same. */
export type HarmlessClass = "block number" | "comment text" | "zero or code padding";

interface Word {
  readonly start: number;
  readonly end: number;
  readonly letter: string;
  readonly number: string;
}

/** A comment, in parentheses or from a semicolon to the end of the block; its text. */
const comments = /\(([^)]*)\)|;([^\r]*)/;

/** Whether the text of a comment is a message to the operator, which must not change unseen; by the marks of the shipped dialects. */
const isMessage = (text: string): boolean => /^(MSG,|OPERATOR )/.test(text);

/** Words of a block outside its comments. */
function wordsOf(block: string): Word[] {
  const words: Word[] = [];
  const blank = block.replace(new RegExp(comments, "g"), (comment) => " ".repeat(comment.length));
  for (const match of blank.matchAll(/([A-Z])([-+]?[0-9.]+)/g)) {
    words.push({
      start: match.index,
      end: match.index + match[0].length,
      letter: match[1] ?? "",
      number: match[2] ?? "",
    });
  }
  return words;
}

/** Whether two numbers written differently are the same number: 01 and 1, 1.50 and 1.5. */
function sameNumber(one: string, other: string): boolean {
  return one !== "" && other !== "" && Number(one) === Number(other);
}

/** All mutants of a program, one at a time: each digit, sign and letter changed, each word dropped and doubled, each block dropped and swapped with the next. */
export function* mutants(program: string): Generator<Mutant> {
  const blocks = program.split("\n");
  for (let index = 0; index < blocks.length; index++) {
    const block = blocks[index] ?? "";
    const put = (kind: MutationKind, after: string, harmless?: HarmlessClass): Mutant => ({
      kind,
      block: index,
      before: block,
      after,
      harmless,
      text: [...blocks.slice(0, index), after, ...blocks.slice(index + 1)].join("\n"),
    });
    for (const word of wordsOf(block)) yield* mutateWord(block, word, put);
    yield* mutateComment(block, put);
    if (block !== "") yield* mutateBlocks(blocks, index);
  }
}

type Put = (kind: MutationKind, after: string, harmless?: HarmlessClass) => Mutant;

function* mutateWord(block: string, word: Word, put: Put): Generator<Mutant> {
  const replace = (text: string): string => block.slice(0, word.start) + text + block.slice(word.end);
  const isNumber = word.letter === "N";
  const harmless = (changed: string): HarmlessClass | undefined => {
    if (isNumber) return "block number";
    return sameNumber(changed, word.number) ? "zero or code padding" : undefined;
  };
  for (let at = 0; at < word.number.length; at++) {
    const digit = word.number.charCodeAt(at) - 48;
    if (digit < 0 || digit > 9) continue;
    const changed =
      word.number.slice(0, at) +
      String((digit + 1 + ((at * 7 + digit) % 8)) % 10) +
      word.number.slice(at + 1);
    if (changed !== word.number) yield put("digit", replace(word.letter + changed), harmless(changed));
  }
  const turned = word.number.startsWith("-") ? word.number.slice(1) : `-${word.number}`;
  yield put("sign", replace(word.letter + turned), harmless(turned));
  const letter = String.fromCharCode(65 + ((word.letter.charCodeAt(0) - 65 + 1) % 26));
  yield put("letter", replace(letter + word.number));
  const closing = block.slice(word.end).replace(/^[ \t]/, "");
  const dropped = (block.slice(0, word.start) + closing).replace(/[ \t]+(?=[*\r]*$)/, "");
  yield put("word-dropped", dropped, isNumber ? "block number" : undefined);
  yield put(
    "word-doubled",
    `${block.slice(0, word.end)} ${word.letter}${word.number}${block.slice(word.end)}`,
    isNumber ? "block number" : undefined,
  );
}

/** One letter of a comment changed; the text of an operator's message is none that may change unseen. */
function* mutateComment(block: string, put: Put): Generator<Mutant> {
  const comment = comments.exec(block);
  const text = comment?.[1] ?? comment?.[2] ?? "";
  if (!comment || text === "") return;
  const at = comment.index + 1 + Math.floor(text.length / 2);
  const after = `${block.slice(0, at)}${block[at] === "X" ? "Y" : "X"}${block.slice(at + 1)}`;
  yield put("letter", after, isMessage(text) ? undefined : "comment text");
}

function* mutateBlocks(blocks: readonly string[], index: number): Generator<Mutant> {
  const block = blocks[index] ?? "";
  const next = blocks[index + 1];
  const isComment = (text: string): boolean => {
    const found = comments.exec(text);
    return /^(N[0-9]+\s*)?[(;]/.test(text) && !isMessage(found?.[1] ?? found?.[2] ?? "");
  };
  yield {
    kind: "block-dropped",
    block: index,
    before: block,
    after: "",
    harmless: isComment(block) ? "comment text" : undefined,
    text: [...blocks.slice(0, index), ...blocks.slice(index + 1)].join("\n"),
  };
  if (next === undefined || next === "" || next === block) return;
  const bare = (text: string): string => text.replace(/^N[0-9]+[ \t]*/, "");
  yield {
    kind: "blocks-swapped",
    block: index,
    before: `${block} | ${next}`,
    after: `${next} | ${block}`,
    harmless:
      isComment(block) || isComment(next)
        ? "comment text"
        : bare(block) === bare(next)
          ? "block number"
          : undefined,
    text: [...blocks.slice(0, index), next, block, ...blocks.slice(index + 2)].join("\n"),
  };
}
