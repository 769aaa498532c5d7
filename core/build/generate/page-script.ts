import { createHash } from "node:crypto";
import { join } from "node:path";
import { build } from "esbuild";
import type { Product } from "./product.ts";
import { generatedBanner } from "./product.ts";

/** The script of a page and what it imports as one text, and its hash for the page's policy (CSP, `script-src`). */
export function pageScript(entry: string, target: string, name: string): Product {
  return {
    target,
    needs: [entry],
    async make(root) {
      const { outputFiles } = await build({
        absWorkingDir: root,
        entryPoints: [join(root, entry)],
        bundle: true,
        write: false,
        format: "iife",
        target: "es2022",
        charset: "ascii",
        minifyWhitespace: true,
        minifySyntax: true,
        logLevel: "warning",
      });
      const text = outputFiles[0].text.trim();
      if (/<\/script|<!--/i.test(text))
        throw new Error(`${entry} holds what would end its element in a page`);
      const hash = createHash("sha256").update(text).digest("base64");
      return [
        generatedBanner([entry]),
        `export const ${name} = ${JSON.stringify(text)};`,
        `export const ${name}Hash = ${JSON.stringify(hash)};`,
        "",
      ].join("\n");
    },
  };
}
