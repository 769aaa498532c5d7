/** A set-up sheet in the form that its page asks for: texts alone. */
import Handlebars from "handlebars";
import { cautions, machineCautions } from "../cautions.ts";
import { clean } from "../clean.ts";
import { findingView } from "../finding-view.ts";
import { groupedDigits } from "../counts.ts";
import type { Located } from "../locate.ts";
import type { CheckStep, HashedFile, SetupSheet, SheetPlan, SheetProgram } from "../sheet/sheet.ts";
import { backplotView } from "./backplot-view.ts";
import { setUpView } from "./set-up-view.ts";
import type { SheetPageInput } from "./sheet-page-input.ts";
import { sheetStyle } from "./style.ts";
import { sheetTemplate, stepTemplate } from "./template.ts";
import { toolsView } from "./tools-view.ts";
import { unitWords } from "./words.ts";
import { workView } from "./work-view.ts";

const handlebars = Handlebars.create();
handlebars.registerPartial("step", stepTemplate);
const template = handlebars.compile(sheetTemplate, { strict: true, preventIndent: true });

const severities = ["error", "warning", "note"] as const;

/** Findings in the order in which the terminal has them, too. */
function worstFirst(findings: readonly Located[]): Located[] {
  return severities.flatMap((severity) => findings.filter((found) => found.severity === severity));
}

/** Renders the page; every text of a job or dialect is escaped by the template. The same sheet gives the same bytes. */
export function renderSheet({ sheet, findings, backplot }: SheetPageInput): string {
  const { plan, program, dialect, options } = sheet;
  const title = clean(plan?.name || sheet.job.file);
  const refused = sheet.verdict === "refused";
  return template({
    style: new Handlebars.SafeString(sheetStyle(headLeft(title, sheet), refused ? "NOT PROVED" : "")),
    title,
    machine: clean(`${dialect.title} (${dialect.name})`),
    isArchetype: !dialect.hasMachine,
    refused,
    files: filesView(sheet),
    program: program === undefined ? "" : clean(quotedName(program.file)),
    options: options.map(clean),
    findings: worstFirst(findings).map((found) => findingView(withoutFolder(found))),
    hasFindings: findings.length > 0,
    hasPlan: plan !== undefined,
    ...(plan === undefined ? {} : planView(plan)),
    ...backplotView(backplot),
    hasChecks: plan !== undefined && !refused,
    before: (plan?.before ?? []).map(stepView),
    proveOut: (plan?.proveOut ?? []).map(stepView),
    cautions: refused ? machineCautions : cautions,
  });
}

/** What stands at the head of each sheet of paper: the job, and the beginning of the program's hash. */
function headLeft(title: string, { program, job }: SetupSheet): string {
  const short = (sha256: string): string => sha256.slice(0, 16);
  return program === undefined
    ? `Set-up sheet: ${title}; job ${short(job.sha256)}`
    : `Set-up sheet: ${title}; program ${short(program.sha256)}`;
}

function planView(plan: SheetPlan) {
  const units = unitWords[plan.units];
  return {
    ...units,
    isMetric: plan.units === "mm",
    ...setUpView(plan, units),
    ...toolsView(plan, units),
    ...workView(plan, units),
  };
}

/** Everything that has a hash, the program first. */
function filesView({ program, job, head, setup, readAs = [], dialect }: SetupSheet) {
  const row = (what: string, role: string, { file, sha256 }: HashedFile, more = "") => ({
    what,
    role,
    file: clean(file),
    sha256,
    parts: sha256.match(/.{1,16}/g) ?? [],
    more,
  });
  const [leaf, ...extended] = dialect.files;
  return [
    ...(program === undefined ? [] : [row("Program", "program", program, sizeOf(program))]),
    row("Job", "job", job),
    ...(head === undefined ? [] : [row("Tools and stock of the job", "head", head)]),
    ...(setup === undefined ? [] : [row("Set-up", "setup", setup)]),
    ...readAs.map((file, index) =>
      row(index === 0 ? "Dialect that the job is read by" : "which extends", "read-as", file),
    ),
    row("Dialect", "dialect", leaf),
    ...extended.map((file) => row("which extends", "dialect", file)),
    ...(program === undefined
      ? []
      : [
          row("Proof", "facts", {
            file: "all that decides the program, taken together",
            sha256: program.facts,
          }),
        ]),
  ];
}

function sizeOf({ bytes, steps }: SheetProgram): string {
  return `${groupedDigits(bytes)} bytes, ${groupedDigits(steps)} steps, read back and proved equal to the job`;
}

/** A finding whose file is named without its folder, which is one of this computer. */
function withoutFolder(found: Located): Located {
  const { file } = found;
  return file === undefined ? found : { ...found, file: file.replace(/^.*[\\/](?=.)/, "") };
}

/** A file name as a shell takes it: quoted where it holds more than plain characters. */
function quotedName(file: string): string {
  return /^[\w./-]+$/.test(file) ? file : `'${file.replaceAll("'", `'\\''`)}'`;
}

function stepView({ text, each }: CheckStep) {
  return { text: clean(text), each: each.map(clean) };
}
