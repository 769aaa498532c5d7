import { expect, test } from "vitest";
import fc from "fast-check";
import type { ByteSource } from "#base";
import { memorySource } from "#base";
import { positionsOf } from "../../core/8-report/positions.ts";

const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text);

/** A source that gives a few bytes at a time, as a pipe or a slow disk may. */
function dripping(bytes: Uint8Array, most: number): ByteSource {
  const source = memorySource(bytes);
  return { size: bytes.length, read: (offset, target) => source.read(offset, target.subarray(0, most)) };
}

/** The same by the plainest way there is. */
function plainly(text: string, characters: number): { line: number; column: number } {
  const before = text.slice(0, characters);
  const lines = before.split(/\r\n|\r|\n/);
  return { line: lines.length, column: [...(lines.at(-1) ?? "")].length + 1 };
}

test("lines and columns count from 1, and columns count characters", () => {
  const text = "ab\nç€😀x\r\nlast\rend";
  const at = (mark: string) => bytesOf(text.slice(0, text.indexOf(mark))).length;
  const marks = ["a", "b", "ç", "€", "x", "last", "end"];
  const found = positionsOf(memorySource(bytesOf(text)), marks.map(at));
  expect(found.map(({ line, column }) => [line, column])).toEqual([
    [1, 1],
    [1, 2],
    [2, 1],
    [2, 2],
    [2, 4],
    [3, 1],
    [4, 1],
  ]);
});

test("a byte order mark is no column, and a place behind the end is the end", () => {
  const bytes = bytesOf("\uFEFFab");
  const [mark, first, end] = positionsOf(memorySource(bytes), [0, 3, 999]);
  expect([mark.column, first.column, end.column]).toEqual([1, 1, 3]);
  expect(positionsOf(memorySource(new Uint8Array()), [0])).toEqual([{ line: 1, column: 1, lineStart: 0 }]);
});

test("any places in any text, however it is read", () => {
  const character = fc.constantFrom("a", "é", "😀", "\n", "\r\n", "\r", " ");
  fc.assert(
    fc.property(
      fc.array(character, { maxLength: 60 }),
      fc.integer({ min: 1, max: 9 }),
      (characters, most) => {
        const text = characters.join("");
        // Places inside CR LF, or inside a character, are not places of findings.
        const starts = characters
          .map((_, index) => characters.slice(0, index).join(""))
          .filter((before) => !/\r$/.test(before));
        const offsets = starts.map((before) => bytesOf(before).length).reverse();
        const found = positionsOf(dripping(bytesOf(text), most), offsets);
        const expected = starts.map((before) => plainly(text, before.length)).reverse();
        expect(found.map(({ line, column }) => ({ line, column }))).toEqual(expected);
      },
    ),
  );
});

test("places on both sides of the end of a window", () => {
  const text = "x".repeat(65_530) + "\nabc\n" + "y".repeat(70_000) + "\nz";
  const bytes = bytesOf(text);
  const offsets = [65_535, 65_536, 65_531, bytes.length - 1, bytes.length];
  const found = positionsOf(memorySource(bytes), offsets).map(({ line, column }) => [line, column]);
  expect(found).toEqual([
    [3, 1],
    [3, 2],
    [2, 1],
    [4, 1],
    [4, 2],
  ]);
});
