/*
 * Makes the package: core/9-cli -> dist/cli.js and dist/scripts, core/index.ts -> dist/index.js and dist/index.d.ts,
 * and the shipped dialects -> dist/dialects.
 *
 * Everything is made in a folder aside and swapped in at the end, so that a failed build leaves the last good one, and a
 * command that runs meanwhile never meets half of the new one.
 */
import { mkdirSync, renameSync, rmSync } from "node:fs";
import { join, resolve } from "node:path";
import { compileAhead } from "./compile-ahead.ts";
import { bundleCommand, bundleLibrary } from "./bundle.ts";
import { writeDeclarations } from "./declarations.ts";
import { buildShippedDialects } from "./dialects.ts";
import { writeIdentity } from "./identity.ts";
import { writeLicences } from "./licences.ts";

const root = resolve(import.meta.dirname, "../..");
const staging = join(root, "node_modules/.cache", `tapewright-${process.pid}`);
const target = join(root, "dist");

/** Each step writes into the staging folder; what is built with the package joins here, one call each. */
async function build(): Promise<void> {
  const command = await bundleCommand(root, staging);
  const library = await bundleLibrary(root, staging);
  await buildShippedDialects(staging);
  writeDeclarations(root, staging);
  writeLicences(root, staging, [...command, library]);
  writeIdentity(staging);
}

mkdirSync(staging, { recursive: true });
try {
  await build();
  rmSync(target, { recursive: true, force: true });
  renameSync(staging, target);
  compileAhead(root, target);
} finally {
  rmSync(staging, { recursive: true, force: true });
}
