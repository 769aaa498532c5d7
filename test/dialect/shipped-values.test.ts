import { readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { parse } from "yaml";
import { describe, expect, test } from "vitest";
import { dialectLoader } from "../support/dialects.ts";

/*
 * Every enumerated key of the schema takes at least two values over the shipped dialects: a key about which no two controllers
 * disagree would be a constant, and a value that no shipped dialect has is seen by no golden. The files are merged here by
 * themselves, so that the product's own merging is not what is counted.
 */

const root = resolve(import.meta.dirname, "../..");

/** Keys, or groups of keys, that shipped dialects leave to a leaf, each with the reason. What is no longer true fails. */
const exceptions: Readonly<Record<string, string>> = {
  "file.byte-order-mark": "no published standard has the mark; a controller that wants it is one of its own",
  "spindle.speed-unit": "what 100 percent is, is a fact of one drive; an archetype has no machine",
  axes: "archetypes take the letters of ISO 841",
  "machine.spindle.orient": "a fact of one spindle; an archetype has no machine",
  "machine.signals": "an input is off in its state on one machine's wiring alone",
  "machine.waits.on-timeout":
    "a wait that goes on when its time is up confirms nothing, so no archetype can rest on one",
  "machine.measure-effects": "a measuring device is part of one machine",
  "machine.drawbar": "a rack is part of one machine",
  "machine.rack": "a rack is part of one machine",
  "machine.outputs": "what is wired to an output is a fact of one machine",
  "machine.hood": "a dust hood is part of one machine",
  "machine.tapping.longhand":
    "a tap without its cycle breaks sooner or later: only the owner of a machine may say yes",
  confirm: "a state is confirmed by the signal of its name; the mapping could name another one",
  cases: "what a dialect is tested with is no fact of a controller",
  codes: "further codes belong to programs from elsewhere, on one machine",
};

type Node = Readonly<Record<string, unknown>>;

const isMapping = (value: unknown): value is Node =>
  typeof value === "object" && value !== null && !Array.isArray(value);
const readYaml = (name: string): Node =>
  parse(readFileSync(join(root, "dialects", `${name}.dialect.yaml`), "utf8")) as Node;

/** A file over the one that it extends: mappings key by key, all else replaced. */
function merged(base: unknown, leaf: unknown): unknown {
  if (!isMapping(base) || !isMapping(leaf)) return leaf;
  const keys = new Set([...Object.keys(base), ...Object.keys(leaf)]);
  return Object.fromEntries(
    [...keys].map((key) => [key, key in leaf ? merged(base[key], leaf[key]) : base[key]]),
  );
}

function whole(name: string): unknown {
  const file = readYaml(name);
  return typeof file["extends"] === "string" ? merged(whole(file["extends"]), file) : file;
}

const shipped = dialectLoader().shipped.map((name) => whole(name));

/** The value at a path; `*` stands for any key. Addresses take what `numbers` says for all, unless they say it themselves. */
function valuesAt(tree: unknown, path: readonly string[]): unknown[] {
  const [key, ...rest] = path;
  if (key === undefined) return tree === undefined ? [] : [tree];
  if (!isMapping(tree)) return [];
  return (key === "*" ? Object.keys(tree) : [key]).flatMap((name) => valuesAt(tree[name], rest));
}

function effectiveValues(tree: unknown, key: string): unknown[] {
  const path = key.split(".");
  const [group = "", address = "", name] = path;
  const own = valuesAt(tree, path);
  if (group !== "numbers" || name === undefined || own.length > 0) return own;
  return valuesAt(tree, [group, address]).length === 0 ? [] : valuesAt(tree, [group, name]);
}

interface Enumerated {
  readonly key: string;
  readonly values: readonly string[];
}

/** Each key of the schema with a closed list of words. */
function enumerated(node: unknown, path: readonly string[], definitions: Node): Enumerated[] {
  if (!isMapping(node)) return [];
  const { $ref } = node;
  if (typeof $ref === "string")
    return enumerated(definitions[$ref.replace("#/$defs/", "")], path, definitions);
  const here = Array.isArray(node["enum"]) ? [{ key: path.join("."), values: node["enum"] as string[] }] : [];
  const children = Object.entries({ ...mappingOf(node["properties"]) }).flatMap(([name, child]) =>
    enumerated(child, [...path, name], definitions),
  );
  const patterns = Object.values({ ...mappingOf(node["patternProperties"]) }).flatMap((child) =>
    enumerated(child, [...path, "*"], definitions),
  );
  const others = ["oneOf", "anyOf", "allOf"].flatMap((word) =>
    Array.isArray(node[word]) ? (node[word] as unknown[]) : [],
  );
  return [
    ...here,
    ...children,
    ...patterns,
    ...[...others, node["items"]].flatMap((child) => enumerated(child, path, definitions)),
  ];
}

const mappingOf = (value: unknown): Node => (isMapping(value) ? value : {});

const schema = JSON.parse(readFileSync(join(root, "schemas/dialect.schema.json"), "utf8")) as Node;
const keys = enumerated(schema, [], mappingOf(schema["$defs"]));

/** The different values that a key has in these dialects; a list counts as a whole. */
function taken(key: string, dialects: readonly unknown[]): Set<string> {
  return new Set(
    dialects
      .flatMap((tree) => effectiveValues(tree, key))
      .map((value) => (Array.isArray(value) ? value.join() : String(value))),
  );
}

const excepted = (key: string): string | undefined =>
  Object.keys(exceptions).find((group) => key === group || key.startsWith(`${group}.`));

describe("enumerated keys of the schema", () => {
  test("are found, groups and references included", () => {
    const names = keys.map(({ key }) => key);
    expect(names.length).toBeGreaterThan(100);
    expect(names).toEqual(
      expect.arrayContaining([
        "file.line-end",
        "numbers.dwell.point",
        "cycles.levels",
        "arc.planes",
        "codes.*.spindle",
        "blocks.number.on",
      ]),
    );
  });

  test.each(keys.filter(({ key }) => excepted(key) === undefined))(
    "$key takes two values or more",
    ({ key, values }) => {
      const found = taken(key, shipped);
      expect([...found]).not.toHaveLength(0);
      expect(found.size, `of ${values.join(", ")} only ${[...found].join(", ")}`).toBeGreaterThan(1);
    },
  );

  test.each(Object.entries(exceptions))("%s is rightly left out: %s", (group) => {
    const within = keys.filter(({ key }) => excepted(key) === group);
    expect(within.length).toBeGreaterThan(0);
    expect(within.filter(({ key }) => taken(key, shipped).size > 1)).toEqual([]);
  });

  test("one value alone is told from two", () => {
    const one = [{ file: { "line-end": "lf" } }, { numbers: { plus: "no", dwell: { decimals: 1 } } }];
    expect(taken("file.line-end", one).size).toBe(1);
    expect(taken("file.line-end", [...one, { file: { "line-end": "cr" } }]).size).toBe(2);
    expect(taken("numbers.dwell.plus", [...one, { numbers: { dwell: { plus: "yes" } } }]).size).toBe(2);
  });
});
