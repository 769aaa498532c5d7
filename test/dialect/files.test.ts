import { describe, expect, test } from "vitest";
import type { Finding } from "#base";
import { resolveDialect } from "#dialect";
import { dialectLoader } from "../support/dialects.ts";
import { resolveText } from "./findings.ts";

/** What a hostile or broken file gives, "rule key @ file:line". */
const refused: readonly (readonly [what: string, text: string, finding: string])[] = [
  [
    "an alias",
    "dialect: own\nextends: rs274ngc\ntitle: &t X\nsources: [*t]\n",
    "dialect/yaml - @ own.yaml:4",
  ],
  ["an anchor", "dialect: &n own\n", "dialect/yaml - @ own.yaml:1"],
  ["a merge key", "dialect: own\nfile:\n  <<: { extension: nc }\n", "dialect/yaml - @ own.yaml:3"],
  ["a tag", "dialect: own\ntitle: !!str 5\n", "dialect/yaml - @ own.yaml:2"],
  ["a custom tag", "dialect: own\ntitle: !run 5\n", "dialect/yaml - @ own.yaml:2"],
  ["a second document", "dialect: own\n---\ndialect: other\n", "dialect/yaml - @ own.yaml:2"],
  ["a repeated key", "dialect: own\nspindle: { cw: M3,\n  cw: M4 }\n", "dialect/yaml - @ own.yaml:3"],
  ["__proto__", "dialect: own\n__proto__: { polluted: yes }\n", "dialect/yaml - @ own.yaml:2"],
  [
    "constructor",
    "dialect: own\nmachine:\n  constructor: { prototype: { polluted: yes } }\n",
    "dialect/yaml - @ own.yaml:3",
  ],
  ["prototype", "dialect: own\nprototype: 1\n", "dialect/yaml - @ own.yaml:2"],
  ["a key that is a list", "dialect: own\n? [a]\n: 1\n", "dialect/yaml - @ own.yaml:2"],
  ["a number with an exponent", "dialect: own\nnumbers: { speed: 1e1 }\n", "dialect/yaml - @ own.yaml:2"],
  ["a number in another base", "dialect: own\nnumbers: { speed: 0x1 }\n", "dialect/yaml - @ own.yaml:2"],
  ["a number without an end", "dialect: own\nnumbers: { speed: .inf }\n", "dialect/yaml - @ own.yaml:2"],
  ["text that is no YAML", "dialect: own\ntitle: [\n", "dialect/yaml - @ own.yaml:3"],
  ["an empty file", "# nothing\n", "dialect/yaml - @ own.yaml:1"],
  ["a list", "- dialect\n", "dialect/schema - @ own.yaml:1"],
  ["deep nesting", `dialect: own\na: ${"[".repeat(40)}${"]".repeat(40)}\n`, "dialect/yaml - @ own.yaml:2"],
  [
    "a line break in a string",
    'dialect: own\nextends: rs274ngc\nidioms: { release: "M21\\nM3" }\n',
    "dialect/characters - @ own.yaml:3",
  ],
  ["a block string", "dialect: own\ntitle: |\n  one\n  two\n", "dialect/characters - @ own.yaml:2"],
  ["a control character", 'dialect: own\ntitle: "a\\u0007b"\n', "dialect/characters - @ own.yaml:2"],
  ["a line separator", 'dialect: own\ntitle: "a\\u2028b"\n', "dialect/characters - @ own.yaml:2"],
  ["a control character in a key", 'dialect: own\n"ti\\ttle": a\n', "dialect/characters - @ own.yaml:2"],
];

describe("one file", () => {
  test.each(refused)("%s is refused", async (_what, text, finding) => {
    const { dialect, lines } = await resolveText(text);
    expect(lines).toContain(finding);
    expect(dialect).toBeUndefined();
    expect(({} as Record<string, unknown>)["polluted"]).toBeUndefined();
  });

  test.each([
    ["200,000 brackets", "a: " + "[".repeat(200_000), "dialect/yaml"],
    ["100,000 dashes on a line", "- ".repeat(100_000) + "1", "dialect/yaml"],
    ["100,000 words", "a: b\n".repeat(50_000), "dialect/size"],
    ["too many bytes", `dialect: own\n#${"x".repeat(262_144)}`, "dialect/size"],
    ["200,000 quotes", `a: ${'"'.repeat(200_000)}`, "dialect/size"],
  ])("%s are refused in less than two seconds", async (_what, text, rule) => {
    const begin = performance.now();
    const { findings } = await resolveText(text);
    expect(findings.map((finding) => finding.rule)).toEqual([rule]);
    expect(performance.now() - begin).toBeLessThan(2000);
  });

  test("bytes that are no UTF-8 are refused", async () => {
    const findings: Finding[] = [];
    const loader = {
      ...dialectLoader(),
      readFile: (file: string) => ({ file, bytes: Uint8Array.of(0x61, 0xff) }),
    };
    expect(await resolveDialect("own.yaml", loader, (finding) => findings.push(finding))).toBeUndefined();
    expect(findings.map(({ rule }) => rule)).toEqual(["dialect/encoding"]);
  });

  test("places count bytes, whatever stands before them", async () => {
    const text = 'dialect: own\ntitle: "Fräse № 5 🪨"\nspindel: { cw: M3 }\n';
    const { findings } = await resolveText(text);
    expect(findings[0]?.place?.offset).toBe(Buffer.from(text).indexOf("spindel"));
  });
});

describe("the chain of extends", () => {
  const leaf = (parent: string): string => `dialect: own\nextends: ${parent}\n`;

  test.each([
    ["the folder above", "../secret.yaml"],
    ["an absolute path", "/etc/secret.yaml"],
    ["a way out through a folder", "a/../../secret.yaml"],
    ["a drive", "C:secret.yaml"],
    ["a backslash", "..\\secret.yaml"],
    ["a home folder", "~/secret.yaml"],
    ["an address", "file:///etc/secret.yaml"],
  ])("%s is not followed", async (_what, parent) => {
    const opened: string[] = [];
    const loader = dialectLoader({ "own.yaml": leaf(parent) });
    const watched = { ...loader, readFile: (path: string) => (opened.push(path), loader.readFile(path)) };
    const findings: Finding[] = [];
    expect(await resolveDialect("own.yaml", watched, (finding) => findings.push(finding))).toBeUndefined();
    expect(findings.map(({ rule, key }) => `${rule} ${key}`)).toEqual(["dialect/path extends"]);
    expect(opened).toEqual(["own.yaml"]);
  });

  test("a file in a folder below is followed, and is relative to the file that names it", async () => {
    const texts = {
      "shop/own.yaml": leaf("base/mid.yaml"),
      "shop/base/mid.yaml": "dialect: mid\nextends: root.yaml\nspindle: { order: start-first }\n",
      "shop/base/root.yaml": "dialect: root\nextends: rs274ngc\nspindle: { blocks: apart }\n",
    };
    const dialect = await resolveDialect("shop/own.yaml", dialectLoader(texts), (finding) =>
      expect.fail(finding.message),
    );
    expect(dialect?.files).toEqual([
      "shop/own.yaml",
      "shop/base/mid.yaml",
      "shop/base/root.yaml",
      "rs274ngc.dialect.yaml",
      "iso-6983.dialect.yaml",
    ]);
    expect(dialect?.format.spindle).toEqual({ order: "start-first", blocks: "apart" });
  });

  test("a shipped dialect does not reach for files", async () => {
    const loader = dialectLoader();
    const shipped = {
      file: "trap.dialect.yaml",
      bytes: new TextEncoder().encode("dialect: trap\nextends: a.yaml\n"),
    };
    const trapped = { ...loader, shipped: ["trap"], readShipped: () => shipped };
    const rules: string[] = [];
    expect(await resolveDialect("trap", trapped, ({ rule }) => rules.push(rule))).toBeUndefined();
    expect(rules).toEqual(["dialect/path"]);
  });

  test("a circle is named", async () => {
    const { findings, lines } = await resolveText(leaf("b.yaml"), {
      "b.yaml": "dialect: b\nextends: own.yaml\n",
    });
    expect(lines).toEqual(["dialect/extends extends @ b.yaml:2"]);
    expect(findings[0]?.message).toContain("own.yaml -> b.yaml");
  });

  test("a file that extends itself is a circle", async () => {
    expect((await resolveText(leaf("own.yaml"))).lines).toEqual(["dialect/extends extends @ own.yaml:2"]);
  });

  test("a chain without an end is cut", async () => {
    const texts = Object.fromEntries(
      Array.from({ length: 20 }, (_, number) => [
        `f${number}.yaml`,
        `dialect: f\nextends: f${number + 1}.yaml\n`,
      ]),
    );
    expect((await resolveText(leaf("f0.yaml"), texts)).lines).toEqual([
      "dialect/extends extends @ f6.yaml:2",
    ]);
  });

  test("a name that does not exist is corrected", async () => {
    const { findings, lines } = await resolveText(leaf("rs274nge"));
    expect(lines).toEqual(["dialect/file - @ own.yaml:2"]);
    expect(findings[0]?.message).toContain("Did you mean `rs274ngc`?");
  });

  test("findings in a file of the chain name that file", async () => {
    const { lines } = await resolveText(leaf("b.yaml"), {
      "b.yaml": "dialect: b\nextends: rs274ngc\nfrobnicate: 1\n",
    });
    expect(lines).toEqual(["dialect/schema frobnicate @ b.yaml:3"]);
  });
});

describe("merging", () => {
  test("mappings are merged, lists and single values replace", async () => {
    const { dialect } = await resolveText(
      "dialect: own\nextends: rs274ngc\nwork-offset: [G54, G55]\narc: { planes: [xy] }\n",
    );
    expect(dialect?.capabilities.words).toMatchObject({
      "work-offset.2": true,
      "work-offset.3": false,
      "arc.cw": true,
    });
    expect(dialect?.format.arc.planes).toEqual(["xy"]);
  });

  test("none replaces a group, and a group replaces none", async () => {
    const none = await resolveText("dialect: own\nextends: rs274ngc\ncycles: none\ncompensation: none\n");
    expect(none.dialect?.capabilities.words).toMatchObject({
      "cycles.drill": false,
      "compensation.left": false,
    });
    expect(none.dialect?.format.cycles).toBeUndefined();
    expect(none.dialect?.format.compensationWord).toBeNull();
    const some = await resolveText(
      "dialect: own\nextends: b.yaml\ncompensation: { off: G40, left: G41, right: none, word: none }\n",
      {
        "b.yaml": "dialect: b\nextends: rs274ngc\ncompensation: none\n",
      },
    );
    expect(some.dialect?.capabilities.words).toMatchObject({
      "compensation.left": true,
      "compensation.right": false,
    });
  });

  test("a confirmation that names its way replaces the inherited one; its timeout alone does not", async () => {
    const base = { "b.yaml": "dialect: b\nextends: explicit-words\nmachine: { signals: { air: 6 } }\n" };
    const dwell = await resolveText(
      "dialect: own\nextends: b.yaml\nconfirm: { at-speed: { dwell: 5 s } }\n",
      base,
    );
    expect(dwell.dialect?.machine.confirm["at-speed"]).toEqual({
      by: "dwell",
      time: { op: "number", value: 5_000_000 },
    });
    const longer = await resolveText(
      "dialect: own\nextends: b.yaml\nconfirm: { at-speed: { timeout: 25 s } }\n",
      base,
    );
    expect(longer.dialect?.machine.confirm["at-speed"]).toEqual({
      by: "wait",
      signal: "at-speed",
      timeout: 25_000_000,
    });
  });

  test("`on` and `off` need no quotes, `yes` and `no` are words", async () => {
    const { dialect, lines } = await resolveText(
      'dialect: own\nextends: explicit-words\nwait: { on: 3, "off": 4 }\ntools: { preselect: yes }\n',
    );
    expect(lines).toEqual([]);
    expect(dialect?.format.waitValues).toEqual({ on: 3, off: 4, timeoutUnit: "s" });
    expect(dialect?.capabilities.preselect).toBe(true);
  });
});
