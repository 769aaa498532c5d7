import { readFileSync, readdirSync } from "node:fs";
import { join, resolve } from "node:path";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, test } from "vitest";
import { parse } from "yaml";
import { editorLine } from "#dialect";

/*
 * What an editor with a YAML language server has of the schema: it reads the file itself, without our validator, and shows
 * the description of a key when the pointer rests on it.
 */
const root = resolve(import.meta.dirname, "../..");

const schema = JSON.parse(readFileSync(join(root, "schemas/dialect.schema.json"), "utf8")) as Part;

interface Part {
  readonly description?: string;
  readonly title?: string;
  readonly $ref?: string;
  readonly properties?: Readonly<Record<string, Part>>;
  readonly patternProperties?: Readonly<Record<string, Part>>;
  readonly items?: Part;
  readonly anyOf?: readonly Part[];
  readonly $defs?: Readonly<Record<string, Part>>;
}

const validate = new Ajv2020({ allErrors: true, strict: true, keywords: ["axes"] }).compile(schema);

/** Every dialect file of the tree. */
const files = ["dialects", ...readdirSync(join(root, "examples")).map((name) => `examples/${name}`)].flatMap(
  (folder) =>
    readdirSync(join(root, folder))
      .filter((name) => name.endsWith(".dialect.yaml"))
      .map((name) => `${folder}/${name}`),
);

describe("the schema as an editor reads it", () => {
  test("there are files to check", () => {
    expect(files.length).toBeGreaterThanOrEqual(9);
  });

  test.each(files)("%s fits", (file) => {
    const text = readFileSync(join(root, file), "utf8");
    validate(parse(text, { version: "1.2" }));
    expect(validate.errors ?? []).toEqual([]);
  });

  test("a wrong key and a wrong value do not", () => {
    expect(validate({ dialect: "a", spindel: {} })).toBe(false);
    expect(validate({ dialect: "a", spindle: { order: "first" } })).toBe(false);
    expect(validate({ dialect: "a", spindle: { order: "start-first" } })).toBe(true);
  });
});

/** Every property of a part, with its path. */
function propertiesOf(part: Part, path: string): (readonly [path: string, part: Part])[] {
  const own = Object.entries({ ...part.properties, ...part.patternProperties });
  return [
    ...own.flatMap(([name, inner]) => [
      [`${path}/${name}`, inner] as const,
      ...propertiesOf(inner, `${path}/${name}`),
    ]),
    ...(part.items === undefined ? [] : propertiesOf(part.items, `${path}/*`)),
    ...(part.anyOf ?? []).flatMap((branch) => propertiesOf(branch, path)),
    ...Object.entries(part.$defs ?? {}).flatMap(([name, inner]) =>
      propertiesOf(inner, `${path}/$defs/${name}`),
    ),
  ];
}

test("every property has a text for hovering: a title and a description, its own or that of its definition", () => {
  const all = propertiesOf(schema, "");
  expect(all.length).toBeGreaterThan(250);
  const silent = all.filter(([, part]) => {
    const referred = part.$ref === undefined ? undefined : schema.$defs?.[part.$ref.slice("#/$defs/".length)];
    const { title, description } = { ...referred, ...part };
    return (title ?? "").length < 3 || (description ?? "").length < 9;
  });
  expect(silent.map(([path]) => path)).toEqual([]);
});

test("the first line of a file is what a language server looks for", () => {
  const line = editorLine("node_modules/tapewright/schemas/dialect.schema.json");
  expect(line).toBe("# yaml-language-server: $schema=node_modules/tapewright/schemas/dialect.schema.json");
  for (const address of ["", "my shop/schema.json", "a\nb"])
    expect(() => editorLine(address)).toThrow("address");
});
