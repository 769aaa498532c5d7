import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";

/** One run of a whole process. */
export interface Run {
  /** Milliseconds from start to exit. */
  readonly time: number;
  /** Milliseconds of CPU time, those of all its threads: other work on the machine hardly changes them. */
  readonly cpu: number;
  /** Peak resident memory, MB of 1e6 bytes. */
  readonly peak: number;
}

const preload = fileURLToPath(new URL("./peak.mjs", import.meta.url));

// Certificates that Node reads at each start where this is set, 40 ms of CPU time: no run here opens a connection.
const { NODE_EXTRA_CA_CERTS: _, ...env } = process.env;

/** Runs a Node process to its end and measures it; a failing process is a failing benchmark. */
export function measure(args: readonly string[]): Run {
  const begin = process.hrtime.bigint();
  const result = spawnSync(process.execPath, ["--import", preload, ...args], {
    stdio: ["ignore", "pipe", "pipe", "pipe"],
    maxBuffer: 1 << 26,
    env,
  });
  const time = Number(process.hrtime.bigint() - begin) / 1e6;
  if (result.status !== 0)
    throw new Error(
      `${args.join(" ")} ended with ${String(result.status)}: ${result.stderr.toString()}${result.stdout.toString()}`,
    );
  const [peak = NaN, cpu = NaN] = (result.output[3]?.toString() ?? "").split(" ").map(Number);
  return { time, cpu: cpu / 1000, peak: (peak * 1024) / 1e6 };
}

/** The middle of an odd number of figures. */
export function median(figures: readonly number[]): number {
  const sorted = [...figures].sort((a, b) => a - b);
  return sorted[(sorted.length - 1) / 2] ?? NaN;
}

/** The medians of several runs. */
export function medians(runs: readonly Run[]): Run {
  const of = (key: keyof Run): number => median(runs.map((run) => run[key]));
  return { time: of("time"), cpu: of("cpu"), peak: of("peak") };
}

/** Runs several commands by turns, so that what slows the machine down slows all of them. */
export function alternate(rounds: number, commands: readonly (readonly string[])[]): Run[][] {
  const runs: Run[][] = commands.map(() => []);
  for (let round = 0; round < rounds; round++)
    commands.forEach((command, index) => runs[index]?.push(measure(command)));
  return runs;
}
