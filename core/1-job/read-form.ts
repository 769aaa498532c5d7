import type { ByteSource, Finding, Report } from "#base";
import { byteOrderMark, emptyJob, headTooLarge, notText, otherEncoding, wrongType } from "./findings.ts";
import type { Tree } from "./head/tree.ts";
import { readTree } from "./head/tree.ts";
import type { Scanner } from "./scan/scanner.ts";
import { createScanner, ensure, fail, largestHead, offsetOf, peek } from "./scan/scanner.ts";
import { walkValue } from "./scan/walk.ts";

/** Reads the head as JSON; what is wrong with its form is reported. */
export function readForm(source: ByteSource, report: Report, window: number): Tree | undefined {
  const findings: Finding[] = [];
  const part = { from: 0, to: Math.min(source.size, largestHead) };
  const scanner = createScanner(source, (finding) => findings.push(finding), part, window);
  checkBeginning(scanner);
  const tree = scanner.failed ? undefined : readTree(scanner);
  const fault = scanner.failed ? findings.pop() : undefined;
  findings.forEach(report);
  if (fault) report(firstFault(source, window, fault));
  return tree;
}

/**
 * Where moves are gone over by their brackets alone, one that is missing shows only farther on, often at the very end.
 * So a job whose form is broken is read once more, strictly.
 */
function firstFault(source: ByteSource, window: number, fault: Finding): Finding {
  if (fault.rule !== "job/json") return fault;
  const last: { finding?: Finding } = {};
  const part = { from: 0, to: fault.place?.offset ?? 0 };
  const scanner = createScanner(source, (finding) => (last.finding = finding), part, window);
  walkValue(scanner, 0);
  // What ends the reading is reported last.
  const first = last.finding;
  // At the fault that is known the text ends for this reading, which is no fault of its own.
  return first === undefined || first.place?.offset === part.to ? fault : first;
}

/** Tells an empty file, another encoding and binary data from a job before anything else is read. */
function checkBeginning(scanner: Scanner): void {
  ensure(scanner, 4);
  const finding = firstBytes([...scanner.bytes.subarray(0, Math.min(4, scanner.end))]) ?? firstValue(scanner);
  if (finding) fail(scanner, finding);
}

/** First bytes of encodings that are not read; without a mark, the zeros around a bracket show them. */
const otherBeginnings: readonly (readonly number[])[] = [
  [0xff, 0xfe],
  [0xfe, 0xff],
  [0x7b, 0],
  [0, 0x7b],
  [0, 0, 0, 0x7b],
  [0, 0, 0xfe, 0xff],
];

function firstBytes(bytes: readonly number[]): Finding | undefined {
  const beginsWith = (beginning: readonly number[]): boolean =>
    beginning.every((byte, index) => bytes[index] === byte);
  if (beginsWith([0xef, 0xbb, 0xbf])) return byteOrderMark();
  return otherBeginnings.some(beginsWith) ? otherEncoding() : undefined;
}

function firstValue(scanner: Scanner): Finding | undefined {
  const byte = peek(scanner);
  const offset = offsetOf(scanner);
  if (byte === 0x7b) return undefined;
  if (byte === 0) return offset < scanner.source.size ? headTooLarge(offset) : emptyJob();
  return byte < 32 || byte > 126 ? notText(offset) : wrongType(offset, "The job", "an object");
}
