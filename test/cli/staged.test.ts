import { createHash } from "node:crypto";
import { openSync, readFileSync, readdirSync, statSync, writeFileSync, writeSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import type { Proof } from "#prove";
import type { Staged } from "../../core/9-cli/files/staged.ts";
import { commit, discard, sinkOf, stage } from "../../core/9-cli/files/staged.ts";
import { resolveTarget } from "../../core/9-cli/files/target.ts";
import { isCarried } from "../../core/9-cli/files/world.ts";
import { temporaryFolder } from "./command.ts";

const folder = temporaryFolder();
const text = new TextEncoder().encode("N10 G00 X1.000\nN20 M30\n");

/** A proof that nothing has proved: only a test may do this. */
function proofOf(bytes: Uint8Array): Proof {
  const sha256 = createHash("sha256").update(bytes).digest("hex");
  return { bytes: bytes.length, sha256, steps: 2, facts: "" } as unknown as Proof;
}

function staged(name: string): Staged {
  const result = stage(resolveTarget(join(folder, name), [], "program"));
  sinkOf(result).write(text);
  return result;
}

/** The rule of the finding that an action throws. */
function ruleOf(action: () => void): string | undefined {
  try {
    action();
    return undefined;
  } catch (error) {
    if (isCarried(error)) return error.finding.rule;
    throw error;
  }
}

test("a proved program takes its place in one step, and nothing else is left", () => {
  const program = staged("a.tap");
  expect(readdirSync(folder).filter((name) => name.endsWith(".tap"))).toEqual([]);
  commit(program, proofOf(text));
  expect(readFileSync(join(folder, "a.tap"))).toEqual(Buffer.from(text));
  expect(readdirSync(folder)).toEqual(["a.tap"]);
});

test("a new program has the permissions that the user's mask gives", () => {
  commit(staged("mask.tap"), proofOf(text));
  expect(statSync(join(folder, "mask.tap")).mode & 0o777).toBe(0o666 & ~process.umask());
});

const others: readonly (readonly [string, (program: Staged) => Proof])[] = [
  ["other bytes", () => proofOf(new TextEncoder().encode("N10 G00 X2.000\nN20 M30\n"))],
  ["fewer bytes", () => proofOf(text.subarray(1))],
  [
    "bytes that came after the proof",
    (program) => {
      writeSync(program.descriptor, "M03\n");
      return proofOf(text);
    },
  ],
];

test.each(others)("a proof of %s releases nothing", (_what, prove) => {
  writeFileSync(join(folder, "kept.tap"), "kept");
  const program = staged("kept.tap");
  const proof = prove(program);
  expect(ruleOf(() => commit(program, proof))).toBe("program/not-as-proved");
  discard(program);
  expect(readFileSync(join(folder, "kept.tap"), "utf8")).toBe("kept");
  expect(readdirSync(folder).filter((name) => name.endsWith(".part"))).toEqual([]);
});

test("a full disk is a finding, and a second discard is none", () => {
  const full = { ...staged("full.tap"), descriptor: openSync("/dev/full", "w") };
  expect(ruleOf(() => sinkOf(full).write(text))).toBe("program/disk-full");
  discard(full);
  discard(full);
  expect(readdirSync(folder)).not.toContain("full.tap");
});
