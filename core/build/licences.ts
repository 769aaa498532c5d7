import { readFileSync, readdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Metafile } from "esbuild";

/** The part of a path that names a package's folder, the innermost one where packages are nested. */
const packageFolder = /^.*node_modules\/(?:@[^/]+\/)?[^/]+/;

/** Writes OUT/third-party-licences.txt: packages whose code stands in the bundles, each with its licence in full. */
export function writeLicences(root: string, out: string, bundles: readonly Metafile[]): void {
  const folders = bundles.flatMap(bundledPackages);
  const texts = [...new Set(folders)].sort().map((folder) => licenceOf(join(root, folder)));
  writeFileSync(join(out, "third-party-licences.txt"), texts.join(`\n${"-".repeat(72)}\n\n`));
}

/** Only inputs that contribute bytes to an output count: the rest was read and shaken off. */
function bundledPackages({ outputs }: Metafile): string[] {
  return Object.values(outputs).flatMap(({ inputs }) =>
    Object.entries(inputs).flatMap(([file, { bytesInOutput }]) =>
      bytesInOutput > 0 ? (packageFolder.exec(file) ?? []) : [],
    ),
  );
}

function licenceOf(folder: string): string {
  const about = JSON.parse(readFileSync(join(folder, "package.json"), "utf8")) as Record<string, string>;
  const file = readdirSync(folder).find((name) => /^(licen[cs]e|copying)/i.test(name));
  const text = file === undefined ? "" : readFileSync(join(folder, file), "utf8");
  return `${about["name"]} ${about["version"]} (${about["license"]})\n\n${text.trim()}\n`;
}
