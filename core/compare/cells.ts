/** The smallest parts of two programs that can be compared: blocks that share rows which stand for one another. */
import type { SaidBlock, SaidRow } from "./blocks.ts";
import type { Match } from "./align.ts";
import { alignRows } from "./align.ts";
import type { Station, StationPair } from "./stations.ts";

/** A row with the block that says it. */
export interface PlacedRow {
  readonly row: SaidRow;
  readonly block: SaidBlock;
}

/** A row of each program that stand for one another, or a row of one alone. */
export interface RowMatch {
  readonly first: PlacedRow | undefined;
  readonly second: PlacedRow | undefined;
}

/** Blocks of both programs that say the same rows; of one alone where the other says none of them. */
export interface Cell {
  readonly first: readonly SaidBlock[];
  readonly second: readonly SaidBlock[];
  readonly matches: readonly RowMatch[];
}

/** A place of the job: its rows in order, and its cells. */
export interface ComparedPlace {
  readonly place: number;
  readonly matches: readonly RowMatch[];
  readonly cells: readonly Cell[];
  /** Blocks that say nothing: comments, marks, blank lines. */
  readonly silent: { readonly first: readonly SaidBlock[]; readonly second: readonly SaidBlock[] };
}

/** Pairs the rows of a place and cuts its blocks into cells. */
export function comparePlace({ first, second }: StationPair): ComparedPlace {
  const [one, other] = [placedRows(first), placedRows(second)];
  const rowsOf = (placed: readonly PlacedRow[]): SaidRow[] => placed.map(({ row }) => row);
  const matches = alignRows(rowsOf(one), rowsOf(other)).map((match) => placed(match, one, other));
  return {
    place: (first ?? second)!.place,
    matches,
    cells: cellsOf(matches, new Map([...heads(first), ...heads(second)])),
    silent: { first: silentOf(first), second: silentOf(second) },
  };
}

function placedRows(station: Station | undefined): PlacedRow[] {
  return (station?.blocks ?? []).flatMap((block) => block.rows.map((row) => ({ row, block })));
}

function silentOf(station: Station | undefined): SaidBlock[] {
  return (station?.blocks ?? []).filter((block) => block.rows.length === 0 && !isHead(block));
}

/** Whether a block says its part of a step that the next block ends: a cycle that is defined apart from its first hole. */
function isHead({ rows, written }: SaidBlock): boolean {
  return rows.length === 0 && written.words.some(({ keys }) => keys.some((key) => key.startsWith("cycles.")));
}

/** The blocks that go before a block that says a step. */
function heads(station: Station | undefined): [SaidBlock, SaidBlock[]][] {
  const found: [SaidBlock, SaidBlock[]][] = [];
  let open: SaidBlock[] = [];
  for (const block of station?.blocks ?? []) {
    if (isHead(block)) open.push(block);
    if (block.rows.length === 0) continue;
    if (open.length > 0) found.push([block, open]);
    open = [];
  }
  return found;
}

function placed({ first, second }: Match, one: readonly PlacedRow[], other: readonly PlacedRow[]): RowMatch {
  return {
    first: first === undefined ? undefined : one[first],
    second: second === undefined ? undefined : other[second],
  };
}

/** Cells in the order of their first row. Blocks that share a pair belong together, and so does all that their blocks say. */
function cellsOf(matches: readonly RowMatch[], before: ReadonlyMap<SaidBlock, readonly SaidBlock[]>): Cell[] {
  const cells: RowMatch[][] = [];
  const homes = new Map<SaidBlock, RowMatch[]>();
  for (const match of matches) {
    const blocks = [match.first?.block, match.second?.block].filter((block) => block !== undefined);
    const known = [...new Set(blocks.flatMap((block) => homes.get(block) ?? []))];
    const found = [...new Set(blocks.map((block) => homes.get(block)).filter((home) => home !== undefined))];
    const home = found.at(0) ?? [];
    if (found.length === 0) cells.push(home);
    if (found.length > 1) {
      // A pair joins two cells: the later one goes into the earlier.
      home.splice(0, home.length, ...known);
      cells.splice(cells.indexOf(found[1]), 1);
      for (const [block, at] of homes) if (at === found[1]) homes.set(block, home);
    }
    home.push(match);
    blocks.forEach((block) => homes.set(block, home));
  }
  return cells.map((own) => ({
    first: withHeads(blocksOf(own.map(({ first }) => first)), before),
    second: withHeads(blocksOf(own.map(({ second }) => second)), before),
    matches: own,
  }));
}

function blocksOf(rows: readonly (PlacedRow | undefined)[]): SaidBlock[] {
  return [...new Set(rows.flatMap((row) => (row === undefined ? [] : [row.block])))];
}

function withHeads(
  blocks: readonly SaidBlock[],
  before: ReadonlyMap<SaidBlock, readonly SaidBlock[]>,
): SaidBlock[] {
  return blocks.flatMap((block) => [...(before.get(block) ?? []), block]);
}
