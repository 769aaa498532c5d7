import { describe, expect, test } from "vitest";
import { faults, guardItems } from "./run.ts";
import { goodSequences } from "./sequences.ts";

describe("sequences in the order of the house give no finding", () => {
  for (const [name, make] of Object.entries(goodSequences)) {
    test.each([1, 7, 4096])(`${name}, %i rows a batch`, (rows) => {
      const errors = faults(guardItems(make(), rows)).filter((finding) => finding.rule !== "swap/timed");
      expect(errors.map(({ rule, message, place }) => `${rule} @${place?.offset}: ${message}`)).toEqual([]);
    });
  }
});
