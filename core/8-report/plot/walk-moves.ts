import { decodeMoves, isArcMove, kindOf, moveFlag } from "./moves.ts";
import type { Plot, Packing } from "./plot.ts";

/** A motion on its way past; filled in anew for each. Micrometres. */
export interface PassingMove {
  kind: number;
  isMachine: boolean;
  /** There is no way to this place: nobody knows where the tool came from. */
  isJump: boolean;
  operation: number;
  line: number;
  readonly from: Float64Array;
  readonly to: Float64Array;
  /** Of an arc; otherwise what the last arc left. */
  c1: number;
  c2: number;
  turns: number;
}

/** Goes through the motions of a plot, one piece unpacked at a time, until `visit` gives false. */
export function walkMoves(
  plot: Pick<Plot, "moves">,
  { inflate }: Pick<Packing, "inflate">,
  visit: (move: PassingMove) => boolean,
): void {
  const move: PassingMove = {
    kind: 0,
    isMachine: false,
    isJump: false,
    operation: 0,
    line: 0,
    from: new Float64Array(3),
    to: new Float64Array(3),
    c1: 0,
    c2: 0,
    turns: 0,
  };
  for (const piece of plot.moves) {
    const moves = decodeMoves(inflate(piece));
    move.to.set(moves.before);
    let arc = 0;
    for (let row = 0; row < moves.count; row++) {
      const mark = moves.mark[row];
      move.from.set(move.to);
      move.to[0] = moves.x[row];
      move.to[1] = moves.y[row];
      move.to[2] = moves.z[row];
      move.kind = kindOf(mark);
      move.isMachine = (mark & moveFlag.machine) !== 0;
      move.isJump = (mark & moveFlag.jump) !== 0;
      move.operation = moves.operation[row];
      move.line = moves.line[row];
      if (isArcMove(move.kind)) {
        move.c1 = moves.c1[arc];
        move.c2 = moves.c2[arc];
        move.turns = moves.turns[arc++];
      }
      if (!visit(move)) return;
    }
  }
}
