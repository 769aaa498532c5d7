import type { Finding } from "#base";
import type { Dialect } from "./dialect.ts";

/** What each post with a dialect must say: that it takes the longest times where no machine is declared. */
export function cautions(dialect: Dialect): Finding[] {
  if (dialect.machine.declared) return [];
  return [
    {
      rule: "dialect/no-machine",
      severity: "warning",
      message: `The dialect ${dialect.name} declares no machine: travel is not checked, and times are the longest that are common.`,
      fix: `Write a file that extends ${dialect.name} and states \`machine: { travel, spindle }\` of yours.`,
      key: "machine",
    },
  ];
}
