import { closeSync, fstatSync, openSync, readSync } from "node:fs";
import type { ByteSource } from "#base";
import type { FileRole } from "./world.ts";
import { carry, changedFinding, inputFinding, isSystemError } from "./world.ts";
import { spool } from "./spool.ts";

/** An input held open: plain data, since descriptors are good in every thread of a process. */
export interface Input {
  readonly role: FileRole;
  /** Its name as the user gave it. */
  readonly file: string;
  readonly descriptor: number;
  /** Bytes. */
  readonly size: number;
  /** Which file it is, and as it was when it was opened. */
  readonly identity: { readonly device: number; readonly inode: number; readonly modified: number };
}

/** Name of standard input and output on the command line. */
export const standardStream = "-";

/**
 * Opens an input. Standard input, pipes and devices are spooled to a temporary file first, since the stages read an
 * input more than once.
 *
 * @throws a carried finding: missing, a folder, not readable
 */
export async function openInput(role: FileRole, file: string): Promise<Input> {
  try {
    if (file === standardStream) return describe(role, "standard input", await spool(0));
    const descriptor = openSync(file, "r");
    const status = fstatSync(descriptor);
    if (status.isDirectory()) throw Object.assign(new Error(), { code: "EISDIR", syscall: "open" });
    if (status.isFile()) return describe(role, file, descriptor);
    const spooled = await spool(descriptor);
    closeSync(descriptor);
    return describe(role, file, spooled);
  } catch (error) {
    throw isSystemError(error) ? carry(inputFinding(role, file, error)) : error;
  }
}

function describe(role: FileRole, file: string, descriptor: number): Input {
  const { size, dev, ino, mtimeMs } = fstatSync(descriptor);
  return { role, file, descriptor, size, identity: { device: dev, inode: ino, modified: mtimeMs } };
}

/** Lets go of an input that nobody reads any more; a command that goes on would otherwise hold more and more of them. */
export function closeInput({ descriptor }: Input): void {
  closeSync(descriptor);
}

/** The input as the stages read it; an error of the disk is thrown as a carried finding. */
export function byteSource({ role, file, descriptor, size }: Input): ByteSource {
  return {
    size,
    read(offset, target) {
      try {
        return readSync(descriptor, target, 0, Math.min(target.length, Math.max(0, size - offset)), offset);
      } catch (error) {
        throw isSystemError(error) ? carry(inputFinding(role, file, error)) : error;
      }
    },
  };
}

/** Reads a small input whole. */
export function readWhole(input: Input): Uint8Array {
  const source = byteSource(input);
  const bytes = new Uint8Array(input.size);
  let filled = 0;
  while (filled < bytes.length) {
    const count = source.read(filled, bytes.subarray(filled));
    if (count === 0) break;
    filled += count;
  }
  return bytes.subarray(0, filled);
}

/** Throws a carried finding if the file is not as it was when it was opened. */
export function refuseChanged({ role, file, descriptor, size, identity }: Input): void {
  const status = fstatSync(descriptor);
  if (status.size !== size || status.mtimeMs !== identity.modified) throw carry(changedFinding(role, file));
}
