/** What was done to a program. */
export type MutationKind =
  | "digit"
  | "sign"
  | "point"
  | "letter"
  | "word-dropped"
  | "word-doubled"
  | "block-dropped"
  | "blocks-swapped"
  | "block-inserted";

export interface Mutant {
  readonly kind: MutationKind;
  /** 0-based index of the block. */
  readonly block: number;
  /** The block before and after, for the report. */
  readonly before: string;
  readonly after: string;
  /** Why it need not be found, judged from the text alone; undefined: it must be found. */
  readonly harmless: HarmlessClass | undefined;
  /** The changed program; made when it is asked for, since most mutants of a long program are only counted. */
  readonly text: () => string;
}

/** What a controller does not look at, or reads the same. */
export type HarmlessClass = "block number" | "comment text" | "zero or code padding";

/** How the programs of a dialect are written, as far as one must know to change them. */
export interface Form {
  readonly lineEnd: string;
  readonly separator: string;
  readonly comments: "parentheses" | "semicolon" | "none";
  /** What a comment to the operator begins with, such as "MSG,"; undefined where none is one. */
  readonly message: string | undefined;
}

interface Word {
  readonly start: number;
  readonly end: number;
  readonly letter: string;
  readonly number: string;
}

/** The comment of a block: its text, and where that begins. */
function commentOf(block: string, form: Form): { text: string; at: number } | undefined {
  if (form.comments === "none") return undefined;
  const found = (form.comments === "parentheses" ? /\(([^)]*)\)/ : /;(.*)$/).exec(block);
  return found?.[1] === undefined ? undefined : { text: found[1], at: found.index + 1 };
}

/** Whether a comment is a message to the operator, which is compared. */
function isMessage(text: string, form: Form): boolean {
  return form.message !== undefined && text.trimStart().startsWith(form.message);
}

/** Words of a block outside its comments. */
function wordsOf(block: string, form: Form): Word[] {
  const words: Word[] = [];
  const comment = commentOf(block, form);
  const code = comment
    ? block.slice(0, comment.at) +
      " ".repeat(comment.text.length) +
      block.slice(comment.at + comment.text.length)
    : block;
  for (const match of code.matchAll(/([A-Z:])([-+]?[0-9.]+)/g)) {
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

/**
 * All mutants of a program, one at a time: each digit, sign and letter changed, each decimal point and each word dropped, each
 * word doubled, each block dropped, swapped with the next, and followed by a stray one.
 */
export function* mutants(program: string, form: Form): Generator<Mutant> {
  const blocks = program.split(form.lineEnd);
  for (let index = 0; index < blocks.length; index++) {
    const block = blocks[index] ?? "";
    const put = (kind: MutationKind, after: string, harmless?: HarmlessClass): Mutant => ({
      kind,
      block: index,
      before: block,
      after,
      harmless,
      text: () => [...blocks.slice(0, index), after, ...blocks.slice(index + 1)].join(form.lineEnd),
    });
    for (const word of wordsOf(block, form)) yield* mutateWord(block, word, form, put);
    yield* mutateComment(block, form, put);
    if (block !== "") yield* mutateBlocks(blocks, index, form);
  }
}

type Put = (kind: MutationKind, after: string, harmless?: HarmlessClass) => Mutant;

function* mutateWord(block: string, word: Word, form: Form, put: Put): Generator<Mutant> {
  const replace = (text: string): string => block.slice(0, word.start) + text + block.slice(word.end);
  const isNumber = word.letter === "N" || word.letter === ":";
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
  const turned = word.number.startsWith("-") ? word.number.slice(1) : `-${word.number.replace("+", "")}`;
  yield put("sign", replace(word.letter + turned), harmless(turned));
  if (word.number.includes(".")) {
    const pointless = word.number.replace(".", "");
    yield put("point", replace(word.letter + pointless), harmless(pointless));
  }
  const letter =
    word.letter === ":" ? "N" : String.fromCharCode(65 + ((word.letter.charCodeAt(0) - 64) % 26));
  yield put("letter", replace(letter + word.number), word.letter === ":" ? "block number" : undefined);
  const rest = block.slice(word.end);
  const closing = rest.startsWith(form.separator) ? rest.slice(form.separator.length) : rest;
  const dropped = (block.slice(0, word.start) + closing).trimEnd();
  yield put("word-dropped", dropped, isNumber ? "block number" : undefined);
  yield put(
    "word-doubled",
    `${block.slice(0, word.end)}${form.separator}${word.letter}${word.number}${rest}`,
    isNumber ? "block number" : undefined,
  );
}

/** One letter of a comment changed; the text of an operator's message is none that may change unseen. */
function* mutateComment(block: string, form: Form, put: Put): Generator<Mutant> {
  const comment = commentOf(block, form);
  if (comment === undefined || comment.text === "") return;
  const at = comment.at + Math.floor(comment.text.length / 2);
  const after = `${block.slice(0, at)}${block[at] === "X" ? "Y" : "X"}${block.slice(at + 1)}`;
  yield put("letter", after, isMessage(comment.text, form) ? undefined : "comment text");
}

function* mutateBlocks(blocks: readonly string[], index: number, form: Form): Generator<Mutant> {
  const block = blocks[index] ?? "";
  const next = blocks[index + 1];
  const bare = (text: string): string => text.replace(/^[N:][0-9]+[ \t]*/, "");
  const isComment = (text: string): boolean => {
    const comment = commentOf(text, form);
    if (comment === undefined || isMessage(comment.text, form)) return false;
    return (
      bare(text).startsWith(form.comments === "semicolon" ? ";" : "(") &&
      wordsOf(bare(text), form).length === 0
    );
  };
  yield {
    kind: "block-dropped",
    block: index,
    before: block,
    after: "",
    harmless: isComment(block) ? "comment text" : undefined,
    text: () => [...blocks.slice(0, index), ...blocks.slice(index + 1)].join(form.lineEnd),
  };
  // Any other block of the program, further on by a step that meets them all.
  const stray = blocks[(index * 7 + 5) % blocks.length] ?? "";
  if (bare(stray) !== "" && stray !== block) {
    yield {
      kind: "block-inserted",
      block: index,
      before: block,
      after: `${block} | ${stray}`,
      harmless: isComment(stray) ? "comment text" : undefined,
      text: () => [...blocks.slice(0, index + 1), stray, ...blocks.slice(index + 1)].join(form.lineEnd),
    };
  }
  if (next === undefined || next === "" || next === block) return;
  const harmless = (): HarmlessClass | undefined => {
    if (isComment(block) || isComment(next)) return "comment text";
    return bare(block) === bare(next) ? "block number" : undefined;
  };
  yield {
    kind: "blocks-swapped",
    block: index,
    before: `${block} | ${next}`,
    after: `${next} | ${block}`,
    harmless: harmless(),
    text: () => [...blocks.slice(0, index), next, block, ...blocks.slice(index + 2)].join(form.lineEnd),
  };
}
