/** The most G words and the most M words of a block that are kept; a block with more is refused. */
export const mostCodes = 24;

/** The most words of a block whose order is kept. */
export const mostWords = 96;

/** A code that is no number of tenths from 0 to 999.9. */
export const noCode = -1;

/**
 * One block as its words: columns by letter (A = 0), since a letter stands once in a block, and lists of G and M codes.
 * There is one block in memory; each line is read into it.
 */
export interface Block {
  /** Byte offset of the line in the program. */
  start: number;
  /** Letters that stand in the block with a number, G and M apart; bit 0 is A. */
  mask: number;
  /** Letters whose number cannot be known: a variable, or no number at all. */
  unknown: number;
  /** Letters whose number was worked out: it is the mantissa, not on any grid. Holds only where `careful` is set. */
  computed: number;
  /** Place behind the word, bytes from `start`; kept where its number was worked out. */
  readonly ends: Int32Array;
  /** Letters that some action has used. */
  used: number;
  /** Letters that belong to a dwell or an extra code of the block, and so to nothing else. */
  reserved: number;
  /** Whether the block has a code of unknown meaning, to which its words may belong. */
  unclear: boolean;
  /** Digits without their point, with their sign: 12.50 -> 1250. */
  readonly mantissa: Float64Array;
  /** 0 without a point, otherwise 1 + digits behind it: 12.50 -> 3. */
  readonly point: Uint8Array;
  /** Digits written, zeros included. */
  readonly digits: Uint8Array;
  /** Letters whose number has a zero at its end, behind the point; the plain scanner alone keeps them. */
  tails: number;
  /** Where the word stands, bytes from `start`. */
  readonly at: Int32Array;
  gCount: number;
  /** Tenths: G59.1 -> 591. */
  readonly gCode: Int32Array;
  readonly gAt: Int32Array;
  mCount: number;
  readonly mCode: Int32Array;
  readonly mAt: Int32Array;
  /** Whether the careful scanner has read it: only then the fields below hold. */
  careful: boolean;
  /** What the line is. */
  line: "words" | "nothing" | "blank" | "delimiter" | "flow";
  /** The mark by which the operator's switch skips it, "/" or "/2", and where it stands; empty for none. */
  deleted: string;
  deletedAt: number;
  /** Whether it is a stop with the mark by which this dialect says an optional stop. */
  optionalStop: boolean;
  /** Whether its number begins with a colon. */
  aligned: boolean;
  /** Place of the first comment; -1 for none. */
  commentAt: number;
  /** What stands before the program number. */
  programMark: "O" | ":" | "%";
  /** Text for the operator; undefined for none. */
  message: string | undefined;
  messageAt: number;
  /** The letters in the order of the text. */
  wordCount: number;
  readonly words: Uint8Array;
  readonly wordsAt: Int32Array;
  /** Place of the first blank where none belongs, or of the first word without the blank before it; -1 for none. */
  separatorAt: number;
  /** Place of the first lower-case letter of a word; -1 for none. */
  lowerAt: number;
  /** Whether the sign for the end of the block was there. */
  ended: boolean;
  /** Characters of the line. */
  length: number;
}

/** Makes the block of a reader. */
export function createBlock(): Block {
  return {
    start: 0,
    mask: 0,
    unknown: 0,
    computed: 0,
    ends: new Int32Array(26),
    used: 0,
    reserved: 0,
    unclear: false,
    mantissa: new Float64Array(26),
    point: new Uint8Array(26),
    digits: new Uint8Array(26),
    tails: 0,
    at: new Int32Array(26),
    gCount: 0,
    gCode: new Int32Array(mostCodes),
    gAt: new Int32Array(mostCodes),
    mCount: 0,
    mCode: new Int32Array(mostCodes),
    mAt: new Int32Array(mostCodes),
    careful: false,
    line: "nothing",
    deleted: "",
    deletedAt: 0,
    optionalStop: false,
    aligned: false,
    commentAt: -1,
    programMark: "O",
    message: undefined,
    messageAt: 0,
    wordCount: 0,
    words: new Uint8Array(mostWords),
    wordsAt: new Int32Array(mostWords),
    separatorAt: -1,
    lowerAt: -1,
    ended: false,
    length: 0,
  };
}

/** Empties the block for the careful scanner; `start` stays. */
export function clearBlock(block: Block): void {
  block.mask = block.unknown = block.computed = block.used = block.reserved = block.tails = 0;
  block.gCount = block.mCount = block.wordCount = 0;
  block.careful = true;
  block.unclear = false;
  block.line = "nothing";
  block.deleted = "";
  block.ended = block.optionalStop = block.aligned = false;
  block.programMark = "O";
  block.message = undefined;
  block.messageAt = 0;
  block.separatorAt = block.lowerAt = block.commentAt = -1;
  block.length = 0;
}

/** Byte offset in the program of the word with this letter. */
export function placeOf(block: Block, letter: number): number {
  return block.start + block.at[letter];
}

/** Letters of the block that no action has taken and none has set aside. */
export function freeLetters(block: Block): number {
  return block.mask & ~block.reserved & ~block.used;
}

/** Whether the number of a word was worked out. */
export function wasComputed({ careful, computed }: Block, letter: number): boolean {
  return careful && ((computed >> letter) & 1) !== 0;
}
