const signals = ["SIGINT", "SIGTERM", "SIGHUP"] as const;

/**
 * Runs an action so that a signal that ends the process lets it tidy up first; the process then ends by that signal, as
 * whoever sent it expects.
 */
export async function tidyOnSignal<T>(
  tidy: () => void | Promise<void>,
  action: () => Promise<T>,
): Promise<T> {
  const onSignal = (signal: NodeJS.Signals): void => {
    signals.forEach((name) => process.off(name, onSignal));
    void Promise.resolve(tidy()).finally(() => process.kill(process.pid, signal));
  };
  signals.forEach((name) => process.on(name, onSignal));
  try {
    return await action();
  } finally {
    signals.forEach((name) => process.off(name, onSignal));
  }
}

/** A signal that came while this thread was busy is delivered in here, before anything is released. */
export function pendingSignals(): Promise<void> {
  return new Promise((resolve) => setImmediate(resolve));
}
