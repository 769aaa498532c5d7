import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

/**
 * Keeps the compiled code of the command's scripts beside them: one process posts with a shipped dialect and with a file of
 * one's own, and proves, so that the functions which nearly every run calls are among it.
 */
export function compileAhead(root: string, dist: string): void {
  const folder = mkdtempSync(join(tmpdir(), "tapewright-build-"));
  try {
    const child = join(root, "core/build/keep-compiled.ts");
    const { status, stderr } = spawnSync(process.execPath, ["--import", "tsx", child, root, dist, folder], {
      cwd: root,
      encoding: "utf8",
    });
    if (status !== 0) throw new Error(`compiling ahead has failed:\n${stderr}`);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
