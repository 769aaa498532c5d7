import { watch } from "chokidar";

/** Files being watched. */
export interface Changes {
  /** Done at the next change, or at once if there was one since the last call. */
  next(): Promise<void>;
  alsoWatch(files: readonly string[]): void;
  end(): Promise<void>;
}

/** How long a file must stand still before it counts as written, and how often it is looked at, milliseconds. */
const settled = { stabilityThreshold: 120, pollInterval: 30 };

/** Watches files, also those that an editor replaces by new ones; resolves when the watch is on. */
export async function watchFiles(files: readonly string[]): Promise<Changes> {
  const watcher = watch([...files], { ignoreInitial: true, awaitWriteFinish: settled });
  let changed = false;
  let wake: () => void = () => undefined;
  watcher.on("all", () => {
    changed = true;
    wake();
  });
  await new Promise<void>((resolve, reject) => {
    watcher.on("ready", resolve);
    watcher.on("error", reject);
  });
  return {
    async next() {
      if (!changed) await new Promise<void>((resolve) => (wake = resolve));
      changed = false;
    },
    alsoWatch: (more) => void watcher.add([...more]),
    end: () => watcher.close(),
  };
}
