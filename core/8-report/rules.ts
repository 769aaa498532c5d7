import { clRules } from "./rules/cl-rules.ts";
import { dialectRules } from "./rules/dialect-rules.ts";
import { guardRules } from "./rules/guard-rules.ts";
import { jobRules } from "./rules/job-rules.ts";
import { lowerRules } from "./rules/lower-rules.ts";
import { programJobRules } from "./rules/program-job-rules.ts";
import { programRules } from "./rules/program-rules.ts";
import { readRules } from "./rules/read-rules.ts";
import { simulateRules } from "./rules/simulate-rules.ts";
import type { RuleTexts } from "./rules/rule-texts.ts";

/** A chapter of the catalogue. */
export interface RuleChapter {
  readonly title: string;
  readonly rules: RuleTexts;
}

/** Every rule there is, in the order in which a job meets them. */
export const ruleChapters: readonly RuleChapter[] = [
  { title: "Job, set-up and command line", rules: jobRules },
  { title: "Cutter location source", rules: clRules },
  { title: "Program that is read as a job", rules: programJobRules },
  { title: "Dialect", rules: dialectRules },
  { title: "What a dialect cannot say", rules: lowerRules },
  { title: "Guard", rules: guardRules },
  { title: "Simulation of the stock", rules: simulateRules },
  { title: "Reading a program", rules: readRules },
  { title: "Proof and program file", rules: programRules },
];

/** The catalogue as a page: a chapter each, a line a rule. */
export function rulesPage(): string {
  const chapters = ruleChapters.flatMap(({ title, rules }) => [
    `## ${title}`,
    "",
    ...Object.entries(rules).map(([rule, text]) => `- \`${rule}\` ${text}`),
    "",
  ]);
  return `# Rules

Every finding names one of these rules. Each line says what the rule demands. An error stops the output; a warning or a
note does not. An error of \`job/\` or \`dialect/\`, or about a file, ends a command with exit code 2; any other with 1.

<!-- Generated from core/8-report/rules/ by \`npm run generate\`. Do not edit. -->

${chapters.join("\n").trimEnd()}
`;
}
