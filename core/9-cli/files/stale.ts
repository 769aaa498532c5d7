import { createHash } from "node:crypto";
import { readdirSync, rmSync, statSync } from "node:fs";
import { hostname } from "node:os";
import { join } from "node:path";
import { isSystemError } from "./world.ts";

/** `.tapewright-HOST-PROCESS-RANDOM.part`: a folder may be shared, so a process number alone says nothing. */
const pattern = /^\.tapewright-([0-9a-f]{8})-(\d+)-[0-9a-f]+\.part$/;

/** A process number is given again some day; no command works longer than this, milliseconds. */
const longestWork = 24 * 3600 * 1000;

/** The name of a temporary file of this process. */
export function stagedName(random: string): string {
  return `.tapewright-${host()}-${process.pid}-${random}.part`;
}

/** Removes temporary files that processes of this computer left when they died. What cannot be removed is left. */
export function removeStale(folder: string): void {
  for (const name of readdirSync(folder)) {
    const [, owner, id] = pattern.exec(name) ?? [];
    if (owner !== host()) continue;
    const path = join(folder, name);
    if (!isAlive(Number(id)) || isOld(path)) attempt(() => rmSync(path, { force: true }));
  }
}

function host(): string {
  return createHash("sha256").update(hostname()).digest("hex").slice(0, 8);
}

function isAlive(id: number): boolean {
  try {
    process.kill(id, 0);
    return true;
  } catch (error) {
    // Somebody else's process is one, too.
    return isSystemError(error) && error.code === "EPERM";
  }
}

function isOld(path: string): boolean {
  const status = statSync(path, { throwIfNoEntry: false });
  return status !== undefined && Date.now() - status.mtimeMs > longestWork;
}

function attempt(action: () => void): void {
  try {
    action();
  } catch (error) {
    if (!isSystemError(error)) throw error;
  }
}
