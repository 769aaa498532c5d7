import { readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { parse } from "yaml";
import { describe, expect, it } from "vitest";
import type { ExtraCode } from "#dialect";
import { proveText } from "../../core/index.ts";
import { loadDialect, quarryRouter } from "../support/dialects.ts";
import { ready } from "../support/ready.ts";
import { builderCodes, isoCodes } from "./tables/iso-codes.ts";
import { isoGroups } from "./tables/modal-groups.ts";

const root = resolve(import.meta.dirname, "../..");
const iso = parse(readFileSync(join(root, "dialects/iso-6983.dialect.yaml"), "utf8")) as Record<
  string,
  Record<string, unknown>
>;

describe("codes of the ISO 6983 family", () => {
  it.each(isoCodes)("$code is $meaning ($confidence)", ({ code, key }) => {
    const [group = "", name = ""] = key.split(".");
    expect(iso[group]?.[name]).toBe(code);
  });

  it.each(isoGroups)("two codes of group $group in one block contradict each other", async ({ codes }) => {
    const made = await ready("iso-6983");
    const pairs = codes.flatMap((first, at) => codes.slice(at + 1).map((second) => `${first} ${second}`));
    for (const pair of pairs) {
      const { findings } = proveText(`%\n${pair}\nM30\n%\n`, made);
      expect(
        findings.map(({ rule }) => rule),
        pair,
      ).toContain("read/modal-conflict");
    }
  });

  it.each(["explicit-words", "least-increment", quarryRouter])(
    "builder's codes of %s come from the range that the tables leave free",
    async (name) => {
      const { format } = await loadDialect(name);
      const isFree = ({ letter, value }: ExtraCode): boolean =>
        letter === "M" && builderCodes.some(([from, to]) => value >= from * 10 && value <= to * 10);
      expect(format.extraCodes.length).toBeGreaterThan(0);
      expect(format.extraCodes.filter((code) => !isFree(code))).toEqual([]);
    },
  );
});
