import { chmodSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { BuildOptions, Metafile, Plugin } from "esbuild";
import { build } from "esbuild";
import { writeScripts } from "./scripts.ts";

/** Not minified: a stack trace in a report must name our functions. */
const shared = {
  bundle: true,
  format: "esm",
  target: "node20",
  charset: "utf8",
  logLevel: "warning",
  metafile: true,
  // Large, and wanted only when a dialect is compiled; it is installed beside the package.
  external: ["typescript"],
  // The main entry of this package reads files when it loads, the one named here does not.
  alias: { handlebars: "handlebars/dist/cjs/handlebars.js" },
} satisfies BuildOptions;

/** The ES modules that lay out help pages measure text with core/build/terminal-width.ts. */
const measurePlainly: Plugin = {
  name: "measure-plainly",
  setup(build) {
    build.onResolve({ filter: /^string-width$/ }, ({ kind }) =>
      kind === "import-statement" ? { path: join(import.meta.dirname, "terminal-width.ts") } : undefined,
    );
  },
};

/**
 * core/9-cli/command-line.ts and what it reaches -> OUT/scripts, as classic scripts; what is reached by `import()` is a chunk
 * that is loaded when it is needed. core/9-cli/main.ts -> OUT/cli.js, and the threads
 * worker-main.ts -> OUT/worker.js and builder-main.ts -> OUT/builder.js, which load them.
 * Returns what esbuild knows of the files it read.
 */
export async function bundleCommand(root: string, out: string): Promise<Metafile[]> {
  const command = { ...shared, absWorkingDir: root, platform: "node" } satisfies BuildOptions;
  const { outputFiles, metafile } = await build({
    ...command,
    // Texts in which a byte is a character are read and compiled faster.
    charset: "ascii",
    entryPoints: {
      "command-line": "core/9-cli/command-line.ts",
      worker: "core/9-cli/work/worker.ts",
      own: "core/9-cli/dialects/own.ts",
    },
    outdir: join(out, "scripts"),
    write: false,
    splitting: true,
    plugins: [measurePlainly],
  });
  writeScripts(outputFiles);
  const entries = await build({
    ...command,
    entryPoints: {
      cli: "core/9-cli/main.ts",
      worker: "core/9-cli/work/worker-main.ts",
      builder: "core/9-cli/dialects/builder-main.ts",
    },
    outdir: out,
  });
  makeExecutable(join(out, "cli.js"));
  return [metafile, entries.metafile];
}

/** core/index.ts -> OUT/index.js. The platform is neutral, so an import of a Node module fails the build. */
export async function bundleLibrary(root: string, out: string): Promise<Metafile> {
  const result = await build({
    ...shared,
    absWorkingDir: root,
    entryPoints: { index: "core/index.ts" },
    outdir: out,
    splitting: true,
    chunkNames: "chunks/[name]-[hash]",
    platform: "neutral",
    mainFields: ["module", "main"],
  });
  return result.metafile;
}

function makeExecutable(file: string): void {
  const text = readFileSync(file, "utf8");
  if (!text.startsWith("#!")) writeFileSync(file, `#!/usr/bin/env node\n${text}`);
  chmodSync(file, 0o755);
}
