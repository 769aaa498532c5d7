import type { Box } from "#base";
import { atomsPerMillimetre } from "#base";
import type { HeightMap } from "./result.ts";

/** Cells along one side of a tile: the coarse level of the field, of which only the highest place is kept. */
const tileCells = 16;

/** Cuts into a tile after which its highest place is worked out anew; until then the last one stands in, which is no lower. */
const cutsBeforeRefresh = 16;

/** What is left of the stock as the simulation cuts it. */
export interface HeightField extends HeightMap {
  readonly tiles: Tiles;
}

/** No cell of a tile is higher than this. */
export interface Tiles {
  readonly columns: number;
  readonly rows: number;
  readonly tops: Float32Array;
  readonly cuts: Uint8Array;
}

/** The untouched stock, in cells of at most `resolution` mm. */
export function createField(stock: Box, resolution: number): HeightField {
  const [x, y, bottom] = stock.min.map((place) => place / atomsPerMillimetre);
  const [endX, endY, top] = stock.max.map((place) => place / atomsPerMillimetre);
  const columns = cellsAlong(endX - x, resolution);
  const rows = cellsAlong(endY - y, resolution);
  const tileColumns = Math.ceil(columns / tileCells);
  const tileRows = Math.ceil(rows / tileCells);
  return {
    columns,
    rows,
    cellX: (endX - x) / columns,
    cellY: (endY - y) / rows,
    x,
    y,
    bottom: Math.fround(bottom),
    top: Math.fround(top),
    heights: new Float32Array(columns * rows).fill(top),
    tiles: {
      columns: tileColumns,
      rows: tileRows,
      tops: new Float32Array(tileColumns * tileRows).fill(top),
      cuts: new Uint8Array(tileColumns * tileRows),
    },
  };
}

/** Number of even cells of at most `resolution`; a length that is a multiple of it but for rounding gets no cell more. */
export function cellsAlong(length: number, resolution: number): number {
  return Math.max(1, Math.ceil(length / resolution - 1e-6));
}

/** A rectangle of cells, both ends included; filled in anew for each motion. */
export interface Patch {
  firstColumn: number;
  lastColumn: number;
  firstRow: number;
  lastRow: number;
}

/**
 * The cells whose centres lie in a rectangle, mm. The lower edge belongs to it and the upper does not, so that what lies edge to
 * edge shares no cell.
 *
 * @returns false where there is none
 */
export function patchOf(
  field: HeightField,
  patch: Patch,
  lowX: number,
  highX: number,
  lowY: number,
  highY: number,
): boolean {
  patch.firstColumn = Math.max(0, Math.ceil((lowX - field.x) / field.cellX - 0.5));
  patch.lastColumn = Math.min(field.columns, Math.ceil((highX - field.x) / field.cellX - 0.5)) - 1;
  patch.firstRow = Math.max(0, Math.ceil((lowY - field.y) / field.cellY - 0.5));
  patch.lastRow = Math.min(field.rows, Math.ceil((highY - field.y) / field.cellY - 0.5)) - 1;
  return patch.firstColumn <= patch.lastColumn && patch.firstRow <= patch.lastRow;
}

/** Whether some cell of a patch may be higher than `level`: asks the tiles alone. */
export function risesAbove({ tiles }: HeightField, patch: Patch, level: number): boolean {
  const lastRow = Math.floor(patch.lastRow / tileCells);
  const lastColumn = Math.floor(patch.lastColumn / tileCells);
  for (let row = Math.floor(patch.firstRow / tileCells); row <= lastRow; row++) {
    const begin = row * tiles.columns;
    for (let column = Math.floor(patch.firstColumn / tileCells); column <= lastColumn; column++)
      if (tiles.tops[begin + column] > level) return true;
  }
  return false;
}

/** Takes note that cells of a patch were lowered. */
export function noteCut(field: HeightField, patch: Patch): void {
  const { tiles } = field;
  const lastRow = Math.floor(patch.lastRow / tileCells);
  const lastColumn = Math.floor(patch.lastColumn / tileCells);
  for (let row = Math.floor(patch.firstRow / tileCells); row <= lastRow; row++)
    for (let column = Math.floor(patch.firstColumn / tileCells); column <= lastColumn; column++) {
      const tile = row * tiles.columns + column;
      if (++tiles.cuts[tile] >= cutsBeforeRefresh) refreshTile(field, row, column);
    }
}

/** Works out the highest place of a tile. */
function refreshTile(field: HeightField, tileRow: number, tileColumn: number): void {
  const { heights, columns, rows, tiles, bottom } = field;
  const lastRow = Math.min(rows, (tileRow + 1) * tileCells);
  const firstColumn = tileColumn * tileCells;
  const lastColumn = Math.min(columns, firstColumn + tileCells);
  let top = bottom;
  for (let row = tileRow * tileCells; row < lastRow; row++)
    for (let index = row * columns + firstColumn; index < row * columns + lastColumn; index++)
      if (heights[index] > top) top = heights[index];
  const tile = tileRow * tiles.columns + tileColumn;
  tiles.tops[tile] = top;
  tiles.cuts[tile] = 0;
}

/** Volume of the material that is left, mm3. */
export function volumeLeft({ heights, bottom, cellX, cellY }: HeightField): number {
  let sum = 0;
  for (const height of heights) sum += height - bottom;
  return sum * cellX * cellY;
}
