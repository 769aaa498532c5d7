/*
 * Makes every file that is generated and checked in. `npm run generate` makes those whose sources exist, and names the
 * rest; with `--strict`, as the checks call it, a missing source is a failure.
 */
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { axesList } from "./generate/axes-list.ts";
import { dialectsReadmePage } from "./generate/dialects-readme.ts";
import { pageScript } from "./generate/page-script.ts";
import type { Product } from "./generate/product.ts";
import { rulesPageProduct } from "./generate/rules-page.ts";
import { schemaTypes } from "./generate/schema-types.ts";
import { schemaValidator } from "./generate/schema-validator.ts";

const root = resolve(import.meta.dirname, "../..");

/** One line a product. A page made from the dialects or from the catalogue of rules joins here. */
const products: readonly Product[] = [
  schemaTypes("schemas/job.schema.json", "core/1-job/job-schema.generated.ts", "JobSchema"),
  schemaTypes("schemas/dialect.schema.json", "core/2-dialect/dialect-schema.generated.ts", "DialectSchema"),
  // The reader of moves is as strict as the schema, and the head has a list in their place.
  schemaValidator(
    "schemas/job.schema.json",
    "core/1-job/job-validator.generated.ts",
    { validateJob: "" },
    "/$defs/operation/properties/moves/items",
  ),
  schemaValidator("schemas/dialect.schema.json", "core/2-dialect/dialect-validator.generated.ts", {
    validateDialect: "",
  }),
  schemaValidator("schemas/setup.schema.json", "core/2-dialect/setup-validator.generated.ts", {
    validateSetup: "",
  }),
  pageScript(
    "core/8-report/plot/script/main.ts",
    "core/8-report/plot/page/plot-script.generated.ts",
    "plotScript",
  ),
  dialectsReadmePage(),
  rulesPageProduct,
  axesList,
];

async function generate(product: Product): Promise<"current" | "written" | "missing"> {
  if (!product.needs.every((path) => existsSync(join(root, path)))) return "missing";
  const target = join(root, product.target);
  const text = await product.make(root);
  if (existsSync(target) && readFileSync(target, "utf8") === text) return "current";
  writeFileSync(target, text);
  return "written";
}

const strict = process.argv.includes("--strict");
for (const product of products) {
  const outcome = await generate(product);
  console.log(`${outcome.padEnd(8)} ${product.target}`);
  if (outcome !== "missing") continue;
  console.log(`         made from ${product.needs.join(", ")}`);
  if (strict) process.exitCode = 1;
}
