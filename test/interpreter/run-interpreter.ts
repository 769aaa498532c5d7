import { spawn, spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { CanonicalCall } from "./canonical-calls.ts";
import { readCanonicalCalls } from "./canonical-calls.ts";

/** A tool of the interpreter's tool table. */
export interface TableTool {
  readonly number: number;
  /** Length offset along Z, inches: without a configuration file the interpreter's machine is an inch machine. */
  readonly length: number;
  /** Diameter, inches. */
  readonly diameter: number;
}

/** What the interpreter's machine knows before the program begins. */
export interface InterpreterSetup {
  readonly tools: readonly TableTool[];
  /** Numbered parameters (NISTIR 6556 3.2.1), such as 5241 for X of work offset 2, inches; 0 where not named. */
  readonly parameters?: Readonly<Record<number, number>>;
  /** Whether blocks with a block delete mark are skipped. */
  readonly blockDelete?: boolean;
  /** Milliseconds after which a run is given up; 60,000 unless said. */
  readonly timeout?: number;
}

/** What came of a run. */
export interface InterpreterRun {
  /** 0 where the program ran to its end, 1 where the interpreter refused a block; null where it was given up or fell over. */
  readonly exitCode: number | null;
  readonly calls: readonly CanonicalCall[];
  /** The calls as they were printed. */
  readonly output: string;
  /** What the interpreter objects to, and the block; "" where it ran to its end. */
  readonly stderr: string;
  readonly timedOut: boolean;
}

const command = "rs274";
const killSignal = "SIGKILL";

/** What to do where the interpreter is missing. */
export const howToInstall =
  "The RS274/NGC interpreter `rs274` is not installed. On Debian: apt-get install linuxcnc-uspace";

/** Whether the interpreter can be started here. */
export function interpreterInstalled(): boolean {
  return spawnSync(command, ["-?"], { stdio: "ignore" }).error === undefined;
}

/**
 * Runs a program through Debian's RS274/NGC interpreter, in a folder of its own that is gone afterwards.
 *
 * @param program text of the program, or its bytes
 * @throws Error where the interpreter cannot be started, or prints what is no canonical call
 */
export async function runInterpreter(
  program: string | Uint8Array,
  setup: InterpreterSetup,
): Promise<InterpreterRun> {
  const folder = mkdtempSync(join(tmpdir(), "interpreter-"));
  try {
    writeFileSync(join(folder, "program.ngc"), program);
    writeFileSync(join(folder, "tool.tbl"), setup.tools.map(tableLine).join(""));
    writeFileSync(join(folder, "offsets.var"), parameterFile(setup.parameters ?? {}));
    return await runIn(folder, setup);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

function tableLine({ number, length, diameter }: TableTool): string {
  return `T${number} P${number} Z${length.toFixed(8)} D${diameter.toFixed(8)}\n`;
}

/** Places of the two reference points, of G92 and of the nine work offsets: 5161 to 5390 with gaps (NISTIR 6556 Table 2). */
const needed = [
  ...[5161, 5181, 5211].flatMap((first) => [0, 1, 2, 3, 4, 5].map((axis) => first + axis)),
  5220,
  ...[0, 1, 2, 3, 4, 5, 6, 7, 8].flatMap((system) =>
    [0, 1, 2, 3, 4, 5].map((axis) => 5221 + 20 * system + axis),
  ),
];

/** Text of a parameter file: number and value, rising; the active work offset is 1. */
function parameterFile(parameters: Readonly<Record<number, number>>): string {
  const values = new Map(needed.map((number) => [number, number === 5220 ? 1 : 0]));
  for (const [number, value] of Object.entries(parameters)) values.set(Number(number), value);
  const sorted = [...values].sort(([one], [other]) => one - other);
  return sorted.map(([number, value]) => `${number}\t${value.toFixed(8)}\n`).join("");
}

function runIn(folder: string, setup: InterpreterSetup): Promise<InterpreterRun> {
  const options = ["-g", ...(setup.blockDelete === true ? ["-b"] : [])];
  const files = ["-t", "tool.tbl", "-v", "offsets.var", "program.ngc"];
  return new Promise((done, failed) => {
    const child = spawn(command, [...options, ...files], {
      cwd: folder,
      // It keeps its tool table in a file of the home folder while it runs: two runs with one home spoil each other's.
      env: { ...process.env, HOME: folder },
      stdio: ["ignore", "pipe", "pipe"],
      timeout: setup.timeout ?? 60_000,
      killSignal,
    });
    const output: Buffer[] = [];
    const errors: Buffer[] = [];
    child.stdout.on("data", (chunk: Buffer) => output.push(chunk));
    child.stderr.on("data", (chunk: Buffer) => errors.push(chunk));
    child.on("error", (error: NodeJS.ErrnoException) => {
      failed(error.code === "ENOENT" ? new Error(howToInstall) : error);
    });
    child.on("close", (exitCode, signal) => {
      // A run that was given up may end in the middle of a line.
      const text = Buffer.concat(output).toString("utf8");
      const whole = exitCode === null ? text.slice(0, text.lastIndexOf("\n") + 1) : text;
      const stderr = Buffer.concat(errors)
        .toString("utf8")
        .replace(/^executing\n/, "");
      try {
        done({
          exitCode,
          calls: readCanonicalCalls(whole),
          output: whole,
          stderr,
          timedOut: signal === killSignal,
        });
      } catch (error) {
        failed(error instanceof Error ? error : new Error(String(error)));
      }
    });
  });
}
