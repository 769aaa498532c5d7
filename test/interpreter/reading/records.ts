import { createHash } from "node:crypto";
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { brotliCompressSync, brotliDecompressSync } from "node:zlib";
import { readCanonicalCalls } from "../canonical-calls.ts";
import type { ForeignProgram } from "./foreign.ts";
import type { ForeignRun } from "./verdict.ts";

/** A run of the interpreter as it is kept in the tree. */
export interface ForeignRecord extends ForeignRun {
  readonly name: string;
  /** SHA-256 of the text, 16 digits of it. */
  readonly hash: string;
}

/** Files of records lie in the folder of the tests with the interpreter. */
const folder = join(import.meta.dirname, "..");
const foreignFile = "reading/recorded-foreign.txt.br";

/** The first digits of the SHA-256 of a text. */
export function hashOf(text: string): string {
  return createHash("sha256").update(text).digest("hex").slice(0, 16);
}

/** Writes the records. One run: a line with hash, whether it ran to its end, and name; then its calls without numbers of any kind. */
export function writeForeign(
  runs: readonly { readonly program: ForeignProgram; readonly runs: boolean; readonly output: string }[],
  file = foreignFile,
): void {
  const parts = runs.map(({ program, runs: isWhole, output }) => {
    const calls = output.replace(/^ *\d+ N(\.+|\d*) */gm, "").trimEnd();
    return `# ${hashOf(program.text)} ${isWhole ? "runs" : "stops"} ${program.name}\n${calls}\n`;
  });
  writeFileSync(join(folder, file), brotliCompressSync(parts.join("")));
}

/** The records of the tree. */
export function readForeignRecords(file = foreignFile): ForeignRecord[] {
  const text = brotliDecompressSync(readFileSync(join(folder, file))).toString("utf8");
  const [, ...parts] = text.split(/^# (?=[0-9a-f]{16} )/m);
  return parts.map((part) => {
    const end = part.indexOf("\n");
    const [hash, runs, ...name] = part.slice(0, end).split(" ");
    const calls = part.slice(end + 1).replace(/^(?=[A-Z])/gm, "0 N..... ");
    return { hash, runs: runs === "runs", name: name.join(" "), calls: readCanonicalCalls(calls) };
  });
}
