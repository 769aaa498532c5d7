import { describe, expect, it, test } from "vitest";
import { postText } from "../../core/index.ts";
import { ready } from "../support/ready.ts";
import { sampleJob } from "./sample-job.ts";

async function posted(keys: string, job = sampleJob): Promise<string[]> {
  const text = `dialect: leaf\ntitle: A leaf\nextends: rs274ngc\n${keys}\n`;
  const { program, outcome } = postText(
    { job },
    await ready("leaf.dialect.yaml", { "leaf.dialect.yaml": text }),
  );
  if (program === undefined) throw new Error(JSON.stringify(outcome.findings));
  return program.split("\n");
}

describe("header and footer", () => {
  it("are made of the dialect's lines; what is assumed and the caution stay", async () => {
    const lines = await posted(
      'idioms: { header: ["{{program}} {{number}} FOR {{dialect}}", "{{#each tools}}T{{number}} {{description}} D{{diameter}} H{{lengthOffset}}{{/each}}", "{{#each operations}}{{id}} {{name}}{{/each}}"], footer: ["END OF {{program}}"] }',
    );
    const head = lines.slice(
      0,
      lines.findIndex((line) => line.startsWith("G")),
    );
    expect(head.slice(0, 6)).toEqual([
      "%",
      "(RAIN GAUGE 120 FOR LEAF)",
      "(T1 END-MILL D6 H1)",
      "(T2 DRILL D4 H2)",
      "(OP10 EDGE)",
      "(OP20 HOLES)",
    ]);
    expect(head).toContain("(THE MACHINE IS HOMED.)");
    expect(head.at(-1)).toBe("(PROVE OUT ABOVE THE WORK, HAND ON FEED HOLD)");
    expect(lines.slice(-4)).toEqual(["M2", "(END OF RAIN GAUGE)", "%", ""]);
  });

  it("say what is assumed once, where the dialect places it", async () => {
    const lines = await posted('idioms: { header: ["{{#each assumptions}}- {{text}}{{/each}}"] }');
    expect(lines.filter((line) => line.includes("HOMED"))).toEqual(["(- THE MACHINE IS HOMED.)"]);
    expect(lines).toContain("(PROVE OUT ABOVE THE WORK, HAND ON FEED HOLD)");
  });

  it("are remarks, whatever the job's own words begin with", async () => {
    const job = sampleJob.replace("RAIN GAUGE", "M S G, LOAD TOOL 9");
    expect((await posted("", job))[1]).toBe("(- M S G, LOAD TOOL 9)");
    expect((await posted('idioms: { header: none, footer: ["MSG, {{program}}"] }', job)).at(-3)).toBe(
      "(- MSG, M S G, LOAD TOOL 9)",
    );
  });

  test.each([
    "{{program",
    "{{{program}}}",
    "{{#if program}}x{{/if}}",
    "{{#each tools}}{{../program}}{{/each}}",
    "{{#each tools}}{{number}}{{else}}none{{/each}}",
    "{{#each holders}}{{number}}{{/each}}",
    "x {{#each tools}}{{number}}{{/each}}",
    "{{#each tools}}{{#each operations}}{{id}}{{/each}}{{/each}}",
    "{{lookup program 1}}",
    "{{@root}}",
    "{{diameter}}",
    "{{> page}}",
    "{{!-- x --}}",
  ])("a line %s is refused", async (line) => {
    await expect(posted(`idioms: { header: ['${line}'] }`)).rejects.toThrow("dialect/template");
  });
});
