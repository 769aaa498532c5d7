import { readSync } from "node:fs";
import { chunksOf } from "../files/chunks.ts";

/** Where the lines of a text file are, and what they say in short: 16 bytes a line, whatever its length. */
export interface LineTable {
  readonly descriptor: number;
  /** Lines. */
  readonly count: number;
  /** Byte offset of each line; one more than there are lines, the last is the end of the file. */
  readonly starts: Float64Array;
  /** 53 bits of each line without its block number and line end: equal lines have equal ones. */
  readonly marks: Float64Array;
}

const lineFeed = 10;
const carriageReturn = 13;
/** Both of FNV-1a with 32 bits; two sums of different primes leave no room for chance. */
const offsetBasis = 0x811c9dc5;
const primes = [0x01000193, 0x01000197] as const;

/** Goes through a text file once. */
export function lineTable(descriptor: number): LineTable {
  let starts = new Float64Array(1024);
  let marks = new Float64Array(1024);
  let count = 0;
  let offset = 0;
  const line = createMark();
  for (const chunk of chunksOf(descriptor)) {
    for (const byte of chunk) {
      offset++;
      if (byte !== lineFeed) {
        line.take(byte);
        continue;
      }
      if (count + 2 > starts.length) [starts, marks] = [doubled(starts), doubled(marks)];
      marks[count] = line.end();
      starts[++count] = offset;
    }
  }
  if (offset > starts[count]) {
    marks[count] = line.end();
    starts[++count] = offset;
  }
  return { descriptor, count, starts, marks };
}

/** Some lines of a table as texts. */
export function linesOf({ descriptor, starts }: LineTable, from: number, to: number): string[] {
  const bytes = new Uint8Array(starts[to] - starts[from]);
  readSync(descriptor, bytes, 0, bytes.length, starts[from]);
  const text = new TextDecoder().decode(bytes);
  return to === from ? [] : text.replace(/\r?\n$/, "").split(/\r?\n/);
}

/**
 * The sum of one line after another. A block number at its begin does not count, since one block more changes all numbers
 * behind it; nor does a carriage return at its end. A number behind a colon counts: it can be that of the program.
 */
function createMark(): { take(byte: number): void; end(): number } {
  let first = offsetBasis;
  let second = offsetBasis;
  let state: "begin" | "number" | "body" = "begin";
  let held = false;
  const add = (byte: number): void => {
    first = Math.imul(first ^ byte, primes[0]);
    second = Math.imul(second ^ byte, primes[1]);
  };
  return {
    take(byte) {
      if (held) add(carriageReturn);
      held = byte === carriageReturn;
      if (state === "begin" && byte === 0x4e) return void (state = "number");
      if (state === "number" && ((byte >= 0x30 && byte <= 0x39) || byte === 0x20)) return;
      state = "body";
      if (!held) add(byte);
    },
    end() {
      const mark = (first >>> 0) * 0x200000 + (second >>> 11);
      [first, second, state, held] = [offsetBasis, offsetBasis, "begin", false];
      return mark;
    },
  };
}

function doubled(table: Float64Array): Float64Array<ArrayBuffer> {
  const larger = new Float64Array(2 * table.length);
  larger.set(table);
  return larger;
}
