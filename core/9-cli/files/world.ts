import type { Finding } from "#base";

/** What a file is to a command; its findings' rules begin alike. */
export type FileRole = "job" | "head" | "set-up" | "rack" | "program" | "dialect" | "answers" | "cases";

/** What can be wrong with a file that is read. */
type InputTrouble = "missing" | "folder" | "unreadable" | "changed";

const jobFile = {
  missing: "job/not-found",
  folder: "job/folder",
  unreadable: "job/unreadable",
  changed: "job/changed",
} as const;

const dialectRules = {
  missing: "dialect/file",
  folder: "dialect/folder",
  unreadable: "dialect/unreadable",
  changed: "dialect/changed",
} as const;

const inputRules = {
  job: jobFile,
  head: jobFile,
  "set-up": jobFile,
  rack: jobFile,
  program: {
    missing: "program/not-found",
    folder: "program/folder",
    unreadable: "program/unreadable",
    changed: "program/changed",
  },
  dialect: dialectRules,
  answers: dialectRules,
  cases: dialectRules,
} as const satisfies Record<FileRole, Record<InputTrouble, string>>;

/** An error that the operating system gave: its code, such as "ENOENT", and its text. */
export interface SystemError extends Error {
  readonly code: string;
  readonly syscall: string;
}

/** Whether something thrown is an error of the operating system. */
export function isSystemError(thrown: unknown): thrown is SystemError {
  return thrown instanceof Error && "code" in thrown && "syscall" in thrown;
}

/** A finding about a file as a whole. */
export function fileFinding(rule: string, file: string, message: string, fix: string): Finding {
  return { rule, severity: "error", message, fix, place: { source: "command", offset: 0, file } };
}

/** What is said when a file that is to be read cannot be. */
export function inputFinding(role: FileRole, file: string, error: SystemError): Finding {
  const rules = inputRules[role];
  const name = `The ${role} file`;
  if (error.code === "ENOENT" || error.code === "ENOTDIR")
    return fileFinding(rules.missing, file, `${name} does not exist.`, "Check the name and the folder.");
  if (error.code === "EISDIR")
    return fileFinding(rules.folder, file, `${name} is a folder.`, "Name a file in it.");
  const permission = error.code === "EACCES" || error.code === "EPERM";
  const message = permission
    ? `${name} may not be read by you.`
    : `${name} cannot be read: ${systemText(error)}.`;
  return fileFinding(
    rules.unreadable,
    file,
    message,
    permission ? "Ask for the right to read it." : "Try again, or copy the file elsewhere.",
  );
}

/** What is said when a file changed while it was read: it is read more than once, and each time must give the same. */
export function changedFinding(role: FileRole, file: string): Finding {
  const message = `The ${role} file changed while it was being read.`;
  return fileFinding(
    inputRules[role].changed,
    file,
    message,
    "Let whatever writes it finish, then start again.",
  );
}

/** What a command makes. */
export type Product = "program" | "module" | "dialect file" | "page" | "picture" | "job";

/** What is said when a product cannot be written: no room, no right, no folder. */
export function outputFinding(file: string, error: SystemError, product: Product): Finding {
  const full = error.code === "ENOSPC" || error.code === "EDQUOT" || error.code === "EFBIG";
  if (full)
    return fileFinding(
      "program/disk-full",
      file,
      `There is no room for the ${product} where it is to be written; nothing was left there.`,
      "Make room, or write it elsewhere with --output FILE.",
    );
  const reason = reasons[error.code] ?? systemText(error);
  return fileFinding(
    "program/not-writable",
    file,
    `The ${product} cannot be written: ${reason}.`,
    "Name another place with --output FILE, or - for standard output.",
  );
}

const reasons: Readonly<Record<string, string>> = {
  EACCES: "you have no right to write there",
  EPERM: "you have no right to write there",
  EROFS: "the file system is read-only",
  ENOENT: "the folder does not exist",
  ENOTDIR: "its folder is a file",
  EISDIR: "it is a folder",
  EPIPE: "whatever was to read it has gone",
  ENAMETOOLONG: "its name is too long",
  ELOOP: "its links lead in a circle",
};

/** "ENOENT: no such file or directory, open 'x'" -> "no such file or directory" */
function systemText({ message, code }: SystemError): string {
  return message.replace(`${code}: `, "").replace(/, [a-z]+( '.*)?$/s, "");
}

/** An error that carries a finding through code which knows nothing of files, such as the stages that pull a source. */
export interface CarriedFinding extends Error {
  readonly finding: Finding;
}

/** Wraps a finding so that it can be thrown through the stages. */
export function carry(finding: Finding): CarriedFinding {
  return Object.assign(new Error(finding.message), { finding });
}

/** Whether something thrown carries a finding. */
export function isCarried(thrown: unknown): thrown is CarriedFinding {
  return thrown instanceof Error && "finding" in thrown;
}
