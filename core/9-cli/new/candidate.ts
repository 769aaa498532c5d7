import type { Finding } from "#base";
import type { Dialect } from "#dialect";
import type { AnsweredKey, Answers, AnswersFile, Archetype } from "#interview";
import { answeredKeys, sampleJob, writeDialect } from "#interview";
import { postText, prepareDialect } from "../../in-memory.ts";
import { createFileLoader } from "../dialects/loader.ts";

/** A dialect file as the answers make it, before it is written. */
export interface Candidate {
  readonly text: string;
  readonly archetype: Archetype;
  readonly answers: Answers;
  readonly answered: readonly AnsweredKey[];
  /** What was found when it was resolved, and a warning where the sample job is refused. */
  readonly findings: readonly Finding[];
  /** Whether the dialect cannot be used. */
  readonly refused: boolean;
  /** The program of the sample job, proved, and the dialect that it is of. */
  readonly sample: { readonly program: string; readonly dialect: Dialect } | undefined;
}

/** How the file is called that a candidate is for. */
export interface CandidateFile {
  readonly path: string;
  readonly name: string;
  readonly title: string | undefined;
  readonly schema: string;
}

/** Writes a dialect file in memory, resolves it, and posts the sample job with it. */
export async function tryCandidate(
  file: CandidateFile,
  archetype: Archetype,
  answers: Answers,
): Promise<Candidate> {
  const answered = answeredKeys(answers, archetype);
  const title = file.title ?? titleOf(file.name);
  const text = await writeDialect({ ...file, title }, archetype, answered);
  const loader = createFileLoader();
  const bytes = new TextEncoder().encode(text);
  const withCandidate = {
    ...loader,
    readFile: (path: string) => (path === file.path ? { file: path, bytes } : loader.readFile(path)),
  };
  const findings: Finding[] = [];
  const ready = await prepareDialect(file.path, withCandidate, (finding) => findings.push(finding));
  const common = { text, archetype, answers, answered };
  if (ready === undefined) return { ...common, findings, refused: true, sample: undefined };
  const { outcome, program } = postText({ job: sampleJob }, ready);
  if (program !== undefined)
    return { ...common, findings, refused: false, sample: { program, dialect: ready.dialect } };
  const reason = outcome.findings.find(({ severity }) => severity === "error")?.message ?? "";
  const warning: Finding = {
    rule: "dialect/sample",
    severity: "warning",
    message: `The sample job cannot be posted with this dialect: ${reason}`,
  };
  return { ...common, findings: [...findings, warning], refused: false, sample: undefined };
}

/** "shop-mill" -> "Shop mill" */
function titleOf(name: string): string {
  const words = name.replaceAll("-", " ");
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** Findings about the file that was not written, at the answers that caused them. */
export function atAnswers({ findings, answered }: Candidate, opened: AnswersFile, path: string): Finding[] {
  return findings.map((finding) => {
    if (finding.place?.file !== path) return finding;
    const { key = "" } = finding;
    const cause = answered.find((one) => isWithin(one.key, key) || isWithin(key, one.key));
    const node = cause && opened.entries.get(cause.question.id);
    const place = { source: "dialect", file: opened.file, offset: node?.origin.offset ?? 0 } as const;
    return { ...finding, place };
  });
}

function isWithin(key: string, group: string): boolean {
  return key === group || key.startsWith(`${group}.`);
}
