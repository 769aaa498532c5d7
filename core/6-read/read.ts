import type { Batch, MachineFacts, Report } from "#base";
import { batchRows, clearBatch } from "#base";
import type { Format } from "#dialect";
import * as formFindings from "./findings-form.ts";
import { readFlow } from "./flow/read-flow.ts";
import { callsByCode, stopAtEnd, stopHere } from "./flow/stop.ts";
import * as findings from "./findings-meaning.ts";
import type { Region } from "./lines.ts";
import { createLines, cutChunk, endsOpen, lastLine } from "./lines.ts";
import { readBlock } from "./read-block.ts";
import { pushRepeat } from "./read-cycle.ts";
import { finishProgram, readAfterEnd, readDelimiter } from "./read-framing.ts";
import { readBlankLine, readLeader } from "./read-blank-line.ts";
import type { ReadOptions, Reader } from "./reader.ts";
import { createReader, firstTime } from "./reader.ts";
import { readRun } from "./read-run.ts";
import { rowsOfBlock } from "./rows.ts";
import { scanCareful } from "./scan-careful.ts";
import { scanPlain } from "./scan-plain.ts";

const lineFeed = 10;
const carriageReturn = 13;

/**
 * Interprets a controller program under a dialect: modal groups, order of execution, cycles, offsets, codes (NISTIR 6556).
 * It looks the dialect up as it goes, and shares no code with the emitter that is compiled from it.
 *
 * @param chunks the text in bytes; a chunk is used only until the next is pulled
 * @param report takes findings: `block/...` about form, where the meaning is clear; `read/...` where it is not, so that
 * nothing can be proved
 * @returns batches of rows and steps as contracted in batch.ts, each valid until the next is pulled
 */
export function* read(
  chunks: Iterable<Uint8Array>,
  format: Format,
  machine: MachineFacts,
  options: ReadOptions,
  report: Report,
): Generator<Batch> {
  const reader = createReader(format, machine, options, report);
  const lines = createLines();
  for (const chunk of chunks) {
    for (const region of cutChunk(lines, chunk)) yield* readRegion(reader, region);
    if (reader.refused) break;
  }
  const open = endsOpen(lines);
  const rest = reader.refused ? undefined : lastLine(lines);
  // The line feed behind an open last line is our own: nothing is to be said of it.
  if (open) reader.told.add("\n");
  if (rest) yield* readRegion(reader, rest);
  if (reader.flow?.stopped === true && !reader.refused) yield* readFlow(reader, reader.flow, readRegion);
  if (open && format.lastLineEnd && !reader.fragment && !reader.refused)
    reader.report(formFindings.lineEnds(lines.next, "The last line has no line end.", "file.last-line-end"));
  if (!open && lines.next > 0 && !format.lastLineEnd && !reader.fragment && !reader.refused)
    reader.report(formFindings.lineEnds(lines.next, "The last line is ended.", "file.last-line-end"));
  finishProgram(reader, lines.next);
  reader.closeReport();
  if (reader.batch.count > 0) yield reader.batch;
}

/** Reads whole lines, and hands the batch on whenever it is full. */
function* readRegion(reader: Reader, region: Region): Generator<Batch> {
  reader.bytes = region.bytes;
  let at = region.from;
  while (at < region.to && !reader.refused && reader.flow?.stopped !== true) {
    at = readLines(reader, at, region.to, region.base);
    while (reader.state.repeat.count > 0 || isFull(reader)) {
      if (isFull(reader)) {
        yield reader.batch;
        reader.rowsBefore += reader.batch.count;
        clearBatch(reader.batch);
      } else pushRepeat(reader);
    }
  }
}

function isFull(reader: Reader): boolean {
  return reader.batch.count > batchRows - rowsOfBlock;
}

/** Reads lines until the batch has no room for another block, or a block has holes to repeat. Gives where it stopped. */
function readLines(reader: Reader, from: number, to: number, base: number): number {
  const { bytes, block, tables, state } = reader;
  const { lineEnd } = reader.format;
  let at = from;
  for (;;) {
    at = readRun(reader, at, to, base);
    if (at >= to || isFull(reader)) return at;
    block.start = base + at;
    reader.from = at;
    let end = scanPlain(block, bytes, at, tables);
    if (end < 0) end = scanCareful(reader, at, to);
    if (end < 0) return to;
    readLine(reader);
    if (reader.flow?.stopped === true) return at;
    if (lineEnd === "\n" && bytes[end] === lineFeed) at = end + 1;
    else at = passLineEnd(reader, end, to, base);
    if (state.repeat.count > 0) return at;
  }
}

function readLine(reader: Reader): void {
  const { block, state } = reader;
  if (block.careful ? block.line === "flow" : callsByCode(reader)) {
    stopHere(reader);
    return;
  }
  if (state.leader !== undefined) readLeader(reader);
  if (block.careful && block.line !== "words") {
    if (block.line === "delimiter") readDelimiter(reader);
    else if (block.line === "blank") readBlankLine(reader);
    else if (block.commentAt >= 0) state.section.commented = true;
  } else if (state.phase === "ended") readAfterEnd(reader);
  else readBlock(reader);
  if (state.phase === "ended") stopAtEnd(reader);
}

/** Line ends of another kind are told once; a carriage return alone may not end a block at all. */
function passLineEnd(reader: Reader, end: number, to: number, base: number): number {
  const { bytes, format } = reader;
  const pair = bytes[end] === carriageReturn && end + 1 < to && bytes[end + 1] === lineFeed;
  const found = pair ? "\r\n" : String.fromCharCode(bytes[end]);
  const next = pair ? end + 2 : end + 1;
  if (found === format.lineEnd || !firstTime(reader, found)) return next;
  if (found === "\r") reader.report(findings.badBytes(base + end, "a carriage return without a line feed"));
  else
    reader.report(
      formFindings.lineEnds(base + end, "Lines end otherwise than in this dialect.", "file.line-end"),
    );
  return next;
}
