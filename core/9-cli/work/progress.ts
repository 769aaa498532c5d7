import type { SingleBar } from "cli-progress";
import type { Progress } from "./plan.ts";

/** A bar on standard error. */
export interface ProgressBar {
  readonly show: Progress;
  /** Takes the bar away. */
  end(): void;
}

/** Work shorter than this shows no bar, milliseconds. */
const patience = 1000;

/** Shows a bar once the work has taken a second, at a terminal only. */
export function createProgressBar(label: string, stream: NodeJS.WriteStream = process.stderr): ProgressBar {
  if (!stream.isTTY) return { show: () => undefined, end: () => undefined };
  const started = Date.now();
  let bar: SingleBar | undefined;
  let ended = false;
  const begin = async (done: number, total: number): Promise<void> => {
    const { default: progress } = await import("cli-progress");
    if (ended || bar !== undefined) return;
    bar = new progress.SingleBar({
      format: `${label} [{bar}] {percentage}% {eta_formatted}`,
      barsize: 30,
      clearOnComplete: true,
      hideCursor: true,
      gracefulExit: false,
      stream,
    });
    bar.start(total, done);
  };
  return {
    show(done, total) {
      if (bar !== undefined) bar.update(done);
      else if (Date.now() - started > patience) void begin(done, total);
    },
    end() {
      ended = true;
      bar?.stop();
    },
  };
}
