import { expect, it } from "vitest";
import type { Finding } from "#base";
import { read } from "#read";
import { ready } from "../support/ready.ts";

it.each(["crlf", "cr", "lf"] as const)(
  "an open last line says nothing of line ends under %s",
  async (name) => {
    const text = `dialect: own\nextends: longhand\nfile: { line-end: ${name}, last-line-end: no }\n`;
    const { dialect } = await ready("own.dialect.yaml", { "own.dialect.yaml": text });
    const lines = ["%", "N00001 G71", "N00002 G90", "N00003 M02", "%"];
    const told = (program: string): string[] => {
      const findings: Finding[] = [];
      const bytes = new TextEncoder().encode(program);
      for (const batch of read([bytes], dialect.format, dialect.machine, {}, (one) => findings.push(one))) void batch; // prettier-ignore
      return findings.filter(({ key }) => key?.startsWith("file.") === true).map(({ key }) => key ?? "");
    };
    const { lineEnd } = dialect.format;
    expect(told(lines.join(lineEnd))).toEqual([]);
    expect(told(lines.join(lineEnd) + lineEnd)).toEqual(["file.last-line-end"]);
  },
);
