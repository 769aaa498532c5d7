/** A program that was not written by our emitter, with what is expected of the reader. */
export interface ForeignProgram {
  readonly name: string;
  readonly text: string;
  /** Rules by which it is refused, `block/` apart: sorted, one blank between; "" where its meaning is known. */
  readonly refused: string;
  /** Why we refuse what the interpreter runs, or read what it refuses; "" where both are of one mind. */
  readonly because: string;
  /** Whether the interpreter does something else than we read, which `because` then explains. */
  readonly differs: boolean;
}

/** What may be said about a program. */
export interface Expected {
  readonly refused?: string;
  readonly because?: string;
  readonly differs?: boolean;
}

/** A program whole. */
export function whole(name: string, text: string, expected: Expected = {}): ForeignProgram {
  return { name, text, refused: "", because: "", differs: false, ...expected };
}

/** Modes of the head that small programs share: all that the dialect has words for, so that nothing is assumed. */
export const head = "G17 G21 G40 G49 G54 G61 G80 G90 G94 G98\nG0 X0 Y0 Z20\n";

/** Blocks with a head before them, which goes to X0 Y0 Z20, and an end behind. */
export function blocks(name: string, text: string, expected: Expected = {}): ForeignProgram {
  return whole(name, `%\n${head}${text}\nM2\n%\n`, expected);
}
