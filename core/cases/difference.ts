import { diffArrays } from "diff";

/** A piece of a block: in both texts, in what is expected alone, or in what is written alone. */
export interface Piece {
  readonly side: "both" | "expected" | "written";
  readonly text: string;
}

/** A block as both sides have it; undefined where one side has none there. */
export interface BlockPair {
  readonly expected: string | undefined;
  readonly written: string | undefined;
  /** Empty where the two are equal. */
  readonly pieces: readonly Piece[];
}

/** Words of a block with what stands between them: "N10 G00X5" -> "N10", " ", "G00", "X5". */
function wordsOf(block: string): string[] {
  return block.match(/\s+|[A-Za-z][^A-Za-z\s]*|[^A-Za-z\s]+/g) ?? [];
}

/**
 * Compares blocks, and where two stand against each other, word by word. Blocks that differ are paired in their order;
 * what is left over stands alone.
 */
export function compareBlocks(expected: readonly string[], written: readonly string[]): BlockPair[] {
  const pairs: BlockPair[] = [];
  const open: { expected: string[]; written: string[] } = { expected: [], written: [] };
  const close = (): void => {
    const count = Math.max(open.expected.length, open.written.length);
    for (let index = 0; index < count; index++) pairs.push(pair(open.expected[index], open.written[index]));
    open.expected = [];
    open.written = [];
  };
  for (const { added, removed, value } of diffArrays([...expected], [...written])) {
    if (removed) open.expected.push(...value);
    else if (added) open.written.push(...value);
    else {
      close();
      for (const block of value) pairs.push({ expected: block, written: block, pieces: [] });
    }
  }
  close();
  return pairs;
}

function pair(expected: string | undefined, written: string | undefined): BlockPair {
  const changes = diffArrays(wordsOf(expected ?? ""), wordsOf(written ?? ""));
  const pieces = changes.map(({ added, removed, value }): Piece => {
    const side = added ? "written" : removed ? "expected" : "both";
    return { side, text: value.join("") };
  });
  return { expected, written, pieces };
}
