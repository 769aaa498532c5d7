import type { Batch } from "#base";
import type { Region } from "../lines.ts";
import type { Reader } from "../reader.ts";
import { decide, nowhere } from "./decide.ts";
import * as findings from "./findings-flow.ts";
import type { Flow } from "./flow.ts";
import { indexLines } from "./index-lines.ts";
import type { PlacedLine } from "./structures.ts";
import { findStructures } from "./structures.ts";
import { rowsSoFar } from "../rows.ts";
import type { Text } from "./text.ts";
import { createText, lineEnd, linesFrom } from "./text.ts";

/** The most lines that decide which is next, and the most bytes of text (about a million blocks), that are read of one program that branches. */
const mostDecided = 500_000;
const mostRead = 32_000_000;
/** The most rows that it gives from the first such line on: a block that repeats holes gives 10,000. */
const mostRows = 4_000_000;

/** Reads whole lines until one decides which is next, which `flow.at` then says. */
export type ReadRegion = (reader: Reader, region: Region) => Iterable<Batch>;

/**
 * Reads a program on from the first line that decides which is next: blocks in the order in which they are run, as often as
 * they are run. Of the text one window is kept, and the list of such lines; of what was run, nothing.
 *
 * @param readRegion what reads blocks
 * @returns batches as those of the reader
 */
export function* readFlow(reader: Reader, flow: Flow, readRegion: ReadRegion): Generator<Batch> {
  const first = flow.at;
  const text = flow.source && createText(flow.source);
  if (text === undefined) {
    reader.report(findings.noWayBack(first));
    reader.refused = true;
    return;
  }
  const lines = indexLines(text, first, flow.words, reader.report);
  flow.structures = lines && findStructures(lines, reader.report);
  flow.firstRow = rowsSoFar(reader);
  reader.refused = flow.structures === undefined;
  let offset = first;
  while (!reader.refused && offset < text.source.size) {
    const region = linesFrom(text, offset);
    if (region === undefined) break;
    flow.at = -1;
    flow.stopped = false;
    const next = yield* readOn(reader, flow, text, offset, region, readRegion);
    if (next < 0) reader.refused = true;
    offset = next;
  }
}

/** The program goes on beyond a limit. @returns no place to go on from */
function giveUp(reader: Reader, offset: number, limit: string): number {
  reader.report(findings.tooManySteps(offset, limit));
  return nowhere;
}

/** The limit that has been passed, in words; undefined where none has. */
function limitPassed({ decided, read }: Flow): string | undefined {
  if (decided > mostDecided) return `${String(mostDecided)} O words and calls`;
  return read > mostRead ? `${String(mostRead)} characters` : undefined;
}

/** Reads as far as one region and one decision go; gives the byte offset to go on from, or -1. */
function* readOn(
  reader: Reader,
  flow: Flow,
  text: Text,
  offset: number,
  region: Region,
  readRegion: ReadRegion,
): Generator<Batch, number> {
  for (const batch of readRegion(reader, region)) {
    if (rowsSoFar(reader) - flow.firstRow > mostRows)
      return giveUp(reader, reader.block.start, `${String(mostRows)} motions and steps`);
    yield batch;
  }
  const isAtLine = flow.at >= 0;
  flow.read += (isAtLine ? flow.at : region.base + region.to) - offset;
  if (reader.state.phase === "ended" && !flow.ended) return passRest(reader, flow, text);
  if (!isAtLine) return region.base + region.to;
  flow.decided++;
  const limit = limitPassed(flow);
  if (limit !== undefined) return giveUp(reader, flow.at, limit);
  return decide(reader, flow, text, lineAt(flow));
}

function lineAt({ structures, at }: Flow): PlacedLine {
  const line = structures?.lines.get(at);
  if (line === undefined) throw new Error(`No line of the index begins at byte ${String(at)}.`);
  return line;
}

/**
 * The program has ended. Inside of a subprogram, a loop or a branch, what follows in the text are other branches: they are passed
 * over as far as the last mark of the program. Otherwise nothing but subprograms may follow.
 */
function passRest(reader: Reader, flow: Flow, text: Text): number {
  flow.ended = true;
  const { block } = reader;
  const isInside =
    flow.calls.length > 0 ||
    [...(flow.structures?.lines.values() ?? [])].some(
      ({ structure, offset }) =>
        structure?.start.offset === offset && offset < block.start && block.start < structure.end.offset,
    );
  const behind = flow.at >= 0 ? flow.at : behindLine(text, block.start);
  return isInside ? markFrom(text, behind) : behind;
}

function behindLine(text: Text, offset: number): number {
  const region = linesFrom(text, offset);
  if (region === undefined) return text.source.size;
  return region.base + lineEnd(region.bytes, region.from, region.to).next;
}

/** Byte offset of the next line that begins with %; the end of the text where there is none. */
function markFrom(text: Text, from: number): number {
  let offset = from;
  for (let region = linesFrom(text, offset); region; region = linesFrom(text, offset)) {
    const { bytes, to, base } = region;
    for (let at = region.from; at < to; at = lineEnd(bytes, at, to).next)
      if (bytes[at] === 37) return base + at;
    offset = base + to;
  }
  return offset;
}
