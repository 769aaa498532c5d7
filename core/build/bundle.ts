import { chmodSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { BuildOptions, Metafile, Plugin } from "esbuild";
import { build } from "esbuild";

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

/** CommonJS packages in the bundle ask for Node's modules by `require`, which an ES module has to make first. */
const requireBanner = [
  'import { createRequire as createRequireForBundle } from "node:module";',
  "const require = createRequireForBundle(import.meta.url);",
].join("\n");

/**
 * core/9-cli/main.ts -> OUT/cli.js, and the thread for long work -> OUT/worker.js. What main.ts reaches by `import()` becomes a chunk that is loaded when it is needed.
 * Returns what esbuild knows of the files it read.
 */
export async function bundleCommand(root: string, out: string): Promise<Metafile> {
  const result = await build({
    ...shared,
    absWorkingDir: root,
    entryPoints: { cli: "core/9-cli/main.ts", worker: "core/9-cli/work/worker.ts" },
    outdir: out,
    splitting: true,
    chunkNames: "chunks/[name]-[hash]",
    platform: "node",
    plugins: [measurePlainly],
    banner: { js: requireBanner },
  });
  makeExecutable(join(out, "cli.js"));
  return result.metafile;
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
