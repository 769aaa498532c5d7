import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, test } from "vitest";
import schema from "../../schemas/job.schema.json" with { type: "json" };

interface Part {
  readonly $ref?: string;
  readonly const?: unknown;
  readonly type?: string;
  readonly title?: string;
  readonly description?: string;
  readonly examples?: readonly unknown[];
  readonly additionalProperties?: boolean;
  readonly properties?: Readonly<Record<string, Part>>;
}

/** Each part of the schema that may hold others, with its path. */
function* parts(value: unknown, path: string): Iterable<readonly [string, Part]> {
  if (value === null || typeof value !== "object" || path.endsWith("/examples")) return;
  if (!Array.isArray(value)) yield [path, value];
  for (const [key, inner] of Object.entries(value)) yield* parts(inner, `${path}/${key}`);
}

const everyPart = [...parts(schema, "#")];
const definitions = schema.$defs as Readonly<Record<string, Part>>;

/** What a reference leads to, with what stands beside it before. */
function resolved(part: Part): Part {
  return part.$ref === undefined ? part : { ...definitions[part.$ref.replace("#/$defs/", "")], ...part };
}

describe("the schema explains itself", () => {
  test("every key has a title, a description and an example", () => {
    const lists = ["#/properties/tools", "#/properties/operations", "#/$defs/operation/properties/moves"];
    for (const [path, { properties }] of everyPart)
      for (const [key, part] of Object.entries(properties ?? {})) {
        const { title, description, examples, const: only } = resolved(part);
        const at = `${path}/properties/${key}`;
        expect(title, at).toMatch(/\S/);
        expect(description, at).toMatch(/\.$/);
        // A key of one value is its own example, and what a list of objects holds has examples of its own.
        const shown = examples ?? (only === undefined ? undefined : [only]);
        if (!lists.includes(at) && !/(linePathMove|rapidPathMove)\/properties\/path$/.test(at))
          expect(shown, at).not.toBeUndefined();
      }
  });

  test("every example is valid", () => {
    const ajv = new Ajv2020({ strict: true });
    const { $defs } = schema;
    for (const [path, { examples = [], ...part }] of everyPart.slice(1)) {
      if (examples.length === 0) continue;
      const fits = ajv.compile({ ...part, $defs });
      for (const example of examples) expect(fits(example), `${path}: ${JSON.stringify(example)}`).toBe(true);
    }
  });

  test("no object takes a key that is not named", () => {
    for (const [path, part] of everyPart)
      if (part.type === "object" && part.properties) expect(part.additionalProperties, path).toBe(false);
  });
});
