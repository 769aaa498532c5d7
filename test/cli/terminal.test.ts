import { Writable } from "node:stream";
import { setTimeout } from "node:timers/promises";
import { afterEach, expect, test, vi } from "vitest";
import { layoutOf } from "../../core/9-cli/output.ts";
import { createProgressBar } from "../../core/9-cli/work/progress.ts";

/** Makes standard output and error look like a terminal, or not. */
function pretend(terminal: boolean, columns = 80): void {
  for (const stream of [process.stdout, process.stderr]) {
    vi.spyOn(stream, "isTTY", "get").mockReturnValue(terminal);
    vi.spyOn(stream, "columns", "get").mockReturnValue(columns);
  }
}

afterEach(() => {
  vi.unstubAllEnvs();
  vi.restoreAllMocks();
});

for (const stream of [process.stdout, process.stderr]) {
  // Where there is no terminal these properties are not there at all, and could not be mocked.
  for (const name of ["isTTY", "columns"]) {
    if (!(name in stream)) Object.defineProperty(stream, name, { get: () => undefined, configurable: true });
    else if (Object.hasOwn(stream, name)) {
      const value: unknown = Reflect.get(stream, name);
      Object.defineProperty(stream, name, { get: () => value, configurable: true });
    }
  }
}

const isColoured = (color = true): boolean => layoutOf(1, { color }).paint("error", "x") !== "x";

test("colour is used at a terminal alone, and not against the user's will", () => {
  vi.stubEnv("NO_COLOR", "");
  vi.stubEnv("TERM", "xterm");
  pretend(true);
  expect(isColoured()).toBe(true);
  expect(isColoured(false)).toBe(false);
  vi.stubEnv("NO_COLOR", "1");
  expect(isColoured()).toBe(false);
  vi.stubEnv("NO_COLOR", "");
  vi.stubEnv("TERM", "dumb");
  expect(isColoured()).toBe(false);
  vi.stubEnv("TERM", "xterm");
  pretend(false);
  expect(isColoured()).toBe(false);
});

test("text is as wide as the terminal, within what can be read, and 80 columns elsewhere", () => {
  const widthAt = (terminal: boolean, columns: number): number => {
    pretend(terminal, columns);
    return layoutOf(1, { color: true }).width;
  };
  expect([widthAt(true, 90), widthAt(true, 300), widthAt(true, 10), widthAt(false, 300)]).toEqual([
    90, 100, 40, 80,
  ]);
});

/** A stream that keeps what it is given. */
function recorder(isTTY: boolean): { stream: NodeJS.WriteStream; text: () => string } {
  const chunks: string[] = [];
  const stream = new Writable({
    write(chunk: Buffer, _encoding, done) {
      chunks.push(chunk.toString());
      done();
    },
  });
  return {
    stream: Object.assign(stream, { isTTY, columns: 80 }) as unknown as NodeJS.WriteStream,
    text: () => chunks.join(""),
  };
}

test("a bar shows after a second, at a terminal alone, and is gone at the end", async () => {
  const terminal = recorder(true);
  const file = recorder(false);
  const bars = [createProgressBar("posting", terminal.stream), createProgressBar("posting", file.stream)];
  bars.forEach((bar) => bar.show(1, 10));
  await setTimeout(300);
  expect(terminal.text()).toBe("");
  await setTimeout(900);
  bars.forEach((bar) => bar.show(5, 10));
  await vi.waitFor(() => expect(terminal.text()).toContain("posting ["));
  bars.forEach((bar) => bar.show(6, 10));
  bars.forEach((bar) => bar.end());
  expect(terminal.text()).toContain("50%");
  expect(file.text()).toBe("");
  // The last thing clears the line and shows the cursor again.
  expect(terminal.text()).toContain("\u001b[?25h");
  expect(terminal.text().endsWith("\u001b[2K")).toBe(true);
});

test("work that is done within a second shows no bar", async () => {
  const { stream, text } = recorder(true);
  const bar = createProgressBar("posting", stream);
  bar.show(5, 10);
  bar.end();
  await setTimeout(1200);
  bar.show(9, 10);
  await setTimeout(100);
  expect(text()).toBe("");
});
