import { describe, expect, it } from "vitest";
import { ready } from "../support/ready.ts";
import { end } from "./bad-programs.ts";
import { readAsJob } from "./reading.ts";

/*
 * Where a finding of the reader tells what to state in a leaf of the dialect, that very text is stated in one, and the program is read.
 */

const head = "G21 G90 G17 G94 G40 G80 G54\nT1 M6\nS9000 M3\nG0 X0 Y0\nG43 Z20 H1\nG98\n";
const leafOf = (base: string, keys: string): string =>
  `dialect: leaf\ntitle: A leaf\nextends: ${base}\n${keys}\n`;
const semicolons = leafOf(
  "rs274ngc",
  'comments: { style: semicolon }\nidioms: { message: ";MSG, {{text}}" }',
);

interface Way {
  readonly name: string;
  readonly lines: string;
  readonly rule: string;
  /** Key that the way out names; undefined where no leaf helps. */
  readonly key: string | undefined;
  /** The dialect; rs274ngc unless it is given. */
  readonly base?: string;
}

const ways: readonly Way[] = [
  {
    name: "a cycle that breaks chips",
    lines: "G73 X10 Y0 Z-5 R2 Q1 F100\nG80",
    rule: "read/unknown-code",
    key: "cycles.chip-break",
  },
  {
    name: "a left-hand tap",
    lines: "G74 X10 Y0 Z-5 R2 F900\nG80",
    rule: "read/unknown-code",
    key: "cycles.tap-left",
  },
  {
    name: "another return",
    lines: "G1 Z-1 F200\nG0 Z20\nG91 G30 Z0\nG90",
    rule: "read/unknown-code",
    key: "reference-return",
  },
  {
    name: "another end of a shift",
    lines: "G92.1\nG0 X0 Y0\nG43 Z20 H1\nG1 Z-1 F200",
    rule: "read/unknown-code",
    key: "cancel.local-shift",
  },
  {
    name: "where I and J count from",
    lines: "G91.1\nG1 Z-1 F200\nG2 X10 Y0 I5 J0",
    rule: "read/unknown-code",
    key: "arc.centre-words.incremental",
  },
  {
    name: "a tolerance of the path",
    lines: "G64 P0.01\nG1 Z-1 F200",
    rule: "read/unused-word",
    key: "path.tolerance-word",
  },
  {
    name: "comments behind semicolons",
    lines: "; ROUGHING\nG1 Z-1 F200 ; DOWN",
    rule: "read/comment",
    key: "comments.style",
  },
  {
    name: "comments in parentheses",
    lines: "(ROUGHING)\nG1 Z-1 F200 (DOWN)",
    rule: "read/comment",
    key: "comments.style",
    base: "semicolons.dialect.yaml",
  },
  {
    name: "a table of offsets",
    lines: "G10 L2 P1 X0 Y0\nG1 Z-1 F200",
    rule: "read/unknown-code",
    key: undefined,
  },
  { name: "a shift", lines: "G92 X0 Y0\nG1 Z-1 F200", rule: "read/unknown-code", key: undefined },
  { name: "a shift again", lines: "G92.3\nG1 Z-1 F200", rule: "read/unknown-code", key: undefined },
  { name: "a code of nobody", lines: "M77\nG1 Z-1 F200", rule: "read/unknown-code", key: undefined },
];

/** What a fix puts between backquotes and that is YAML. */
const keysIn = (fix: string): string =>
  [...fix.matchAll(/`([a-z-]+: [^`]+)`/g)].map(([, text]) => text).join("\n");

describe.each(ways)("$name", ({ lines, rule, key, base = "rs274ngc" }) => {
  const program = `${head}${lines}${end}`;

  it(
    key === undefined ? "is refused, and no leaf is named" : `is refused, and read in a leaf with ${key}`,
    async () => {
      const files = { "semicolons.dialect.yaml": semicolons };
      const { json, findings } = readAsJob(program, await ready(base, files));
      const errors = findings.filter(({ severity }) => severity === "error");
      expect(json).toBeUndefined();
      expect(errors[0].rule).toBe(rule);
      const { fix = "" } = errors[0];
      if (key === undefined) {
        expect(keysIn(fix)).toBe("");
        expect(fix).not.toContain("`codes`");
        expect(fix).toMatch(
          rule === "read/unknown-code" && /G10|G92/.test(lines) ? /without it/ : /Take the code out/,
        );
        return;
      }
      expect(fix).toContain(`\`${key}\` of `);
      const leaf = await ready("leaf.dialect.yaml", {
        ...files,
        "leaf.dialect.yaml": leafOf(base, keysIn(fix)),
      });
      const read = readAsJob(program, leaf);
      expect(read.findings.filter(({ severity }) => severity === "error")).toEqual([]);
      expect(read.json).toBeDefined();
    },
  );
});
