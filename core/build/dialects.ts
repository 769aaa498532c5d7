import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { buildDialect } from "../9-cli/dialects/own.ts";
import { shippedNames } from "../9-cli/dialects/shipped.ts";
import { packDialect } from "../2-dialect/index.ts";

/**
 * dialects/NAME.dialect.yaml -> OUT/dialects/NAME.json, resolved, and OUT/dialects/NAME.js, its emitter, so that posting
 * with a shipped dialect reads no YAML and compiles nothing. A shipped dialect gives no findings; one fails the build.
 */
export async function buildShippedDialects(out: string): Promise<void> {
  const folder = join(out, "dialects");
  mkdirSync(folder, { recursive: true });
  for (const name of shippedNames()) {
    const { built, findings } = await buildDialect(name);
    if (built === undefined || findings.length > 0)
      throw new Error(`${name}: ${findings.map(({ rule, message }) => `${rule} ${message}`).join(" ")}`);
    writeFileSync(join(folder, `${name}.json`), packDialect(built.dialect));
    writeFileSync(join(folder, `${name}.js`), built.emitterSource);
  }
}
