/** Where the program stands: at a line of the listing, and at the last motion that it has said. */
import { kindOf, moveFlag, moveKind } from "../moves.ts";
import type { Point } from "../plot.ts";
import type { Piece } from "./pieces.ts";

/** A motion among the pieces. */
export interface MoveAt {
  readonly piece: Piece;
  readonly row: number;
}

/** Motions up to a line, that line included. */
export function movesUpTo(pieces: readonly Piece[], line: number): number {
  for (let index = pieces.length - 1; index >= 0; index--) {
    const { moves, first } = pieces[index];
    if (moves.count === 0 || moves.line[0] > line) continue;
    let [low, high] = [0, moves.count];
    while (low < high) {
      const middle = (low + high) >> 1;
      if (moves.line[middle] <= line) low = middle + 1;
      else high = middle;
    }
    return first + low;
  }
  return 0;
}

/** The motion with an index; undefined before the first and where it is not loaded. */
export function moveAt(pieces: readonly Piece[], index: number): MoveAt | undefined {
  const piece = pieces.find(({ first, moves }) => index >= first && index < first + moves.count);
  return piece && { piece, row: index - piece.first };
}

export function placeOf({ piece: { moves }, row }: MoveAt): Point {
  return [moves.x[row], moves.y[row], moves.z[row]];
}

const kindWords: Readonly<Record<number, string>> = {
  [moveKind.rapid]: "rapid",
  [moveKind.line]: "line",
  [moveKind.arcXy]: "arc in XY",
  [moveKind.arcZx]: "arc in ZX",
  [moveKind.arcYz]: "arc in YZ",
  [moveKind.hole]: "hole",
  [moveKind.out]: "out of the hole",
};

/** "rapid, machine coordinates" */
export function kindText({ piece: { moves }, row }: MoveAt): string {
  const mark = moves.mark[row];
  const notes = [
    ...((mark & moveFlag.machine) !== 0 ? ["machine coordinates"] : []),
    ...((mark & moveFlag.jump) !== 0 ? ["the way to here is not known"] : []),
  ];
  return [kindWords[kindOf(mark)] ?? "", ...notes].join(", ");
}
