/** The text beside the picture, unpacked piece by piece as it is looked at. */
import { linesOfPiece } from "../plot.ts";
import { bytesOf, inflate } from "./pieces.ts";

/** Pieces kept unpacked. */
const keptPieces = 8;

/** Gives lines of the listing. */
export interface Listing {
  /** Lines `from` to `to`, from 1, both within the listing. */
  readonly lines: (from: number, to: number) => Promise<string[]>;
}

/** @param packed base64, one piece a line */
export function createListing(packed: readonly string[]): Listing {
  const kept = new Map<number, Promise<string[]>>();
  const piece = (index: number): Promise<string[]> => {
    const known = kept.get(index) ?? inflate(bytesOf(packed[index])).then(toLines);
    kept.delete(index);
    kept.set(index, known);
    const [oldest] = kept.keys();
    if (kept.size > keptPieces && oldest !== undefined) kept.delete(oldest);
    return known;
  };
  return {
    async lines(from, to) {
      const first = Math.floor((from - 1) / linesOfPiece);
      const last = Math.floor((to - 1) / linesOfPiece);
      const pieces = await Promise.all(
        Array.from({ length: last - first + 1 }, (_, index) => piece(first + index)),
      );
      const begin = from - 1 - first * linesOfPiece;
      return pieces.flat().slice(begin, begin + to - from + 1);
    },
  };
}

function toLines(bytes: Uint8Array): string[] {
  return new TextDecoder().decode(bytes).split("\n");
}
