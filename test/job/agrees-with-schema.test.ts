import { Ajv2020 } from "ajv/dist/2020.js";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import schema from "../../schemas/job.schema.json" with { type: "json" };
import type { Json } from "./jobs.ts";
import { errorsOf, everyKey, readAll } from "./jobs.ts";

const fits = new Ajv2020({ strict: true, allErrors: false }).compile(schema);

/** Rules about form, which the schema states as well. All other rules are about what a well-formed job means. */
const rulesOfForm = [
  "job/version",
  "job/type",
  "job/unknown-key",
  "job/missing-key",
  "job/range",
  "job/value",
  "job/list",
  "job/move",
  "job/axes",
];

interface Verdict {
  readonly schema: boolean;
  readonly reader: boolean;
  readonly found: string;
}

function verdict(job: Json): Verdict {
  const found = errorsOf(readAll(JSON.stringify(job)));
  const ofForm = found.filter(({ rule }) => rulesOfForm.includes(rule));
  return {
    schema: fits(job),
    reader: ofForm.length === 0,
    found: found.map(({ message }) => message).join(" "),
  };
}

/** Path -> each place in a value where something stands. */
function* places(
  value: Json,
  path: readonly (string | number)[] = [],
): Iterable<readonly (string | number)[]> {
  yield path;
  if (Array.isArray(value))
    for (const [index, inner] of value.entries()) yield* places(inner, [...path, index]);
  else if (value !== null && typeof value === "object")
    for (const [key, inner] of Object.entries(value)) yield* places(inner, [...path, key]);
}

function at(value: Json, path: readonly (string | number)[]): Json {
  return path.reduce<Json>((inner, step) => (inner as Record<string, Json>)[step], value);
}

function spoilt(
  path: readonly (string | number)[],
  change: (owner: Record<string, Json>, key: string) => void,
): Json {
  const root = { root: everyKey() as Json };
  const whole = ["root", ...path];
  change(at(root, whole.slice(0, -1)) as Record<string, Json>, String(whole.at(-1)));
  return root.root;
}

const replacements: readonly Json[] = [
  null,
  true,
  "",
  " ",
  "off",
  "line",
  -1,
  0,
  1,
  1.5,
  100,
  32768,
  [],
  [1],
  [1, 2],
  [1, 2, 3],
  [1, 2, 3, 4],
  [[1, 2, 3]],
  ["mist"],
  ["mist", "mist"],
  {},
  { x: 1 },
  { zz: 1 },
];

const paths = [...places(everyKey())];

describe("the reader and the schema give the same verdict", () => {
  test("on the job that uses every key", () => {
    expect(verdict(everyKey())).toEqual({ schema: true, reader: true, found: "" });
    expect(readAll(JSON.stringify(everyKey())).findings).toEqual([]);
  });

  test("when any one value is another", () => {
    for (const path of paths)
      for (const replacement of replacements) {
        const job = spoilt(path, (owner, key) => (owner[key] = replacement));
        const { schema: bySchema, reader, found } = verdict(job);
        expect(reader, `${path.join(".")} = ${JSON.stringify(replacement)}: ${found}`).toBe(bySchema);
      }
  });

  test("on numbers at and past the end of their range", () => {
    const ends: readonly (readonly [string, number, number])[] = [
      ["program.number", 1, 99_999_999],
      ["workOffset", 1, 9],
      ["tools.0.number", 1, 99_999_999],
      ["tools.0.flutes", 1, 1000],
      ["operations.0.moves.5.turns", 1, 32767],
    ];
    for (const [path, least, most] of ends)
      for (const value of [least - 1, least, most, most + 1, least + 0.5]) {
        const job = spoilt(path.split("."), (owner, key) => (owner[key] = value));
        const inside = value >= least && value <= most && Number.isInteger(value);
        const { schema: bySchema, reader } = verdict(job);
        expect([bySchema, reader], `${path} = ${value}`).toEqual([inside, inside]);
      }
  });

  test("when any one key is missing", () => {
    for (const path of paths.slice(1)) {
      const job = spoilt(path, (owner, key) => {
        if (Array.isArray(owner)) owner.splice(Number(key), 1);
        else Reflect.deleteProperty(owner, key);
      });
      const { schema: bySchema, reader, found } = verdict(job);
      expect(reader, `${path.join(".")} missing: ${found}`).toBe(bySchema);
    }
  });

  test("when a key is added anywhere", () => {
    const keys = ["zz", "feed", "x", "turn", "plane", "dwell", "cz", "__proto__"];
    for (const path of paths)
      for (const key of keys) {
        const job = spoilt(path, (owner, last) => {
          const inner = owner[last];
          if (
            inner !== null &&
            typeof inner === "object" &&
            !Array.isArray(inner) &&
            !Object.hasOwn(inner, key)
          )
            Object.defineProperty(inner, key, { value: 1, enumerable: true });
        });
        const { schema: bySchema, reader, found } = verdict(job);
        expect(reader, `${path.join(".")} with ${key}: ${found}`).toBe(bySchema);
      }
  });

  test("when moves are put together at random", () => {
    const number = fc.oneof(fc.integer({ min: -50, max: 50 }), fc.constantFrom(0.5, -0.25, 32767, 32768));
    const anything: fc.Arbitrary<Json> = fc.oneof(
      number,
      fc.constantFrom<Json>(
        "cw",
        "xy",
        "zx",
        "yz",
        "off",
        "mist",
        "left",
        "drill",
        "peck",
        "tap",
        "line",
        "rapid",
        true,
        null,
      ),
      fc.array(number, { maxLength: 4 }),
      fc.array(fc.array(number, { minLength: 1, maxLength: 4 }), { maxLength: 3 }),
    );
    const axisKeys = ["x", "y", "z", "a", "b", "c", "cx", "cy", "cz"];
    const holeKeys = [
      "kind",
      "at",
      "top",
      "depth",
      "retract",
      "peck",
      "dwell",
      "lead",
      "backOff",
      "feedOut",
      "between",
    ];
    const words = fc.oneof(
      fc.dictionary(fc.constantFrom(...axisKeys), number, { maxKeys: 6 }),
      fc.dictionary(fc.constantFrom(...holeKeys, "points", "rpm"), anything, { maxKeys: 8 }),
      anything,
    );
    const keys = [
      "rapid",
      "line",
      "arc",
      "holes",
      "path",
      "dwell",
      "pause",
      "note",
      "spindle",
      "coolant",
      "comp",
    ];
    const beside = ["feed", "turn", "plane", "turns", "optional", "park"];
    const move = fc
      .tuple(
        fc.constantFrom(...keys),
        words,
        fc.dictionary(fc.constantFrom(...beside, ...keys), anything, { maxKeys: 3 }),
      )
      .map(([key, value, others]) => ({ [key]: value, ...others }));
    fc.assert(
      fc.property(fc.array(move, { minLength: 1, maxLength: 3 }), (moves) => {
        const job = everyKey();
        (job["operations"] as Record<string, Json>[])[0]["moves"] = moves;
        const { schema: bySchema, reader, found } = verdict(job);
        expect(reader, found).toBe(bySchema);
      }),
      { numRuns: 1500 },
    );
  });
});
