import { createHash, randomBytes } from "node:crypto";
import { closeSync, constants, fchmodSync, fsyncSync, openSync, renameSync, rmSync } from "node:fs";
import { dirname, join } from "node:path";
import type { Proof } from "#prove";
import { chunksOf } from "./chunks.ts";
import { deliver } from "./deliver.ts";
import { openNameless } from "./spool.ts";
import { removeStale, stagedName } from "./stale.ts";
import type { Target } from "./target.ts";
import { carry, fileFinding, isSystemError, outputFinding } from "./world.ts";
import { writeAll } from "./write.ts";

/** A program while it is being proved: a temporary file beside its target, or one without a name for a stream. */
export interface Staged {
  readonly target: Target;
  readonly descriptor: number;
  /** Its path; undefined: it has no name, and is gone when the process ends. */
  readonly path: string | undefined;
}

/**
 * A text that is no program, such as the module of an emitter, whole in its temporary file. It needs no proof, and a staged
 * program, which does, is none.
 */
export interface StagedText extends Staged {
  readonly holds: "text";
}

/** Permissions of a new file, before the user's mask. */
const newFileMode = 0o666;

/**
 * Opens the temporary file, after removing those that commands which died have left in the folder.
 *
 * @throws a carried finding
 */
export function stage(target: Target): Staged {
  return reporting(target, () => {
    if (target.kind === "stream") return { target, descriptor: openNameless(), path: undefined };
    const folder = dirname(target.path);
    removeStale(folder);
    const path = join(folder, stagedName(randomBytes(6).toString("hex")));
    const { O_RDWR, O_CREAT, O_EXCL } = constants;
    return {
      target,
      descriptor: openSync(path, O_RDWR | O_CREAT | O_EXCL, target.mode ?? newFileMode),
      path,
    };
  });
}

/** Where the emitter's bytes go. An error of the disk is thrown as a carried finding. */
export function sinkOf(staged: Staged): { write(chunk: Uint8Array): void } {
  return { write: (chunk) => reporting(staged.target, () => writeAll(staged.descriptor, chunk)) };
}

/**
 * Releases a proved program: compares the file's own bytes with the proof, flushes them to disk, and puts the file in
 * the place of the old one in one step, with the old one's permissions. A stream gets a copy.
 *
 * @throws a carried finding; the old file is untouched then
 */
export function commit(staged: Staged, proof: Proof): void {
  reporting(staged.target, () => requireEqual(staged, proof));
  release(staged);
}

/**
 * Stages a text that is no program, whole or in pieces; an error of the disk is thrown as a carried finding, and nothing is
 * left then.
 */
export function stageText(target: Target, text: string | Iterable<string>): StagedText {
  const staged = stage(target);
  try {
    const sink = sinkOf(staged);
    for (const piece of typeof text === "string" ? [text] : text) sink.write(new TextEncoder().encode(piece));
  } catch (error) {
    discard(staged);
    throw error;
  }
  return { ...staged, holds: "text" };
}

/** Puts a text in its place in one step, as `commit` does a program. */
export function commitText(staged: StagedText): void {
  release(staged);
}

function release({ target, descriptor, path }: Staged): void {
  reporting(target, () => {
    if (target.kind === "stream" || path === undefined) return deliver(descriptor, target);
    if (target.mode !== undefined) fchmodSync(descriptor, target.mode);
    fsyncSync(descriptor);
    renameSync(path, target.path);
    flushFolder(dirname(target.path));
  });
  closeSync(descriptor);
}

/** Removes the temporary file; nothing happens if it has been released or was removed before. */
export function discard({ path }: Pick<Staged, "path">): void {
  if (path !== undefined) rmSync(path, { force: true });
}

/** Gives up a staged program that nobody writes to any more: nothing of it is left, neither its name nor its bytes. */
export function abandon(staged: Staged): void {
  discard(staged);
  closeSync(staged.descriptor);
}

function requireEqual({ descriptor, target }: Staged, proof: Proof): void {
  const hash = createHash("sha256");
  let bytes = 0;
  for (const chunk of chunksOf(descriptor)) {
    hash.update(chunk);
    bytes += chunk.length;
  }
  const equal = bytes === proof.bytes && hash.digest("hex") === proof.sha256;
  if (equal) return;
  const message =
    "The bytes on the disk are not those that were proved; something else wrote to the temporary file.";
  throw carry(
    fileFinding(
      "program/not-as-proved",
      target.shown,
      message,
      "Start again; check the disk if it happens twice.",
    ),
  );
}

/** A rename is on the disk when its folder is; some file systems cannot say, and do it by themselves. */
function flushFolder(folder: string): void {
  try {
    const descriptor = openSync(folder, "r");
    fsyncSync(descriptor);
    closeSync(descriptor);
  } catch (error) {
    if (!isSystemError(error)) throw error;
  }
}

function reporting<T>(target: Target, action: () => T): T {
  try {
    return action();
  } catch (error) {
    throw isSystemError(error) ? carry(outputFinding(target.shown, error, target.product)) : error;
  }
}
