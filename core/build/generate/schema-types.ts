import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { JSONSchema } from "json-schema-to-typescript";
import { compile } from "json-schema-to-typescript";
import type { Product } from "./product.ts";
import { generatedBanner } from "./product.ts";

/** Types of a JSON Schema: `name` is the type of the whole document, definitions are named by their keys or titles. */
export function schemaTypes(schema: string, target: string, name: string): Product {
  return {
    target,
    needs: [schema],
    make: async (root) => {
      const parsed = JSON.parse(readFileSync(join(root, schema), "utf8")) as JSONSchema;
      // The title would name the root type, but it is written for people and may change.
      return compile({ ...parsed, title: name }, name, {
        additionalProperties: false,
        bannerComment: generatedBanner([schema]),
        cwd: join(root, "schemas"),
        style: { printWidth: 110 },
        unreachableDefinitions: true,
      });
    },
  };
}
