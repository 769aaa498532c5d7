import { describe, expect, test } from "vitest";
import { evaluate } from "#base";
import type { Confirmation } from "#base";
import { resolveText } from "./findings.ts";

const machine =
  "machine: { spindle: { min-rpm: 1000, max-rpm: 24000, spin-up: 6 s, spin-down: 4 s, coast-down: 25 s } }";

async function dwell(
  state: string,
  text: string,
): Promise<{ lines: readonly string[]; message: string; confirmation: Confirmation | undefined }> {
  const file = `dialect: own\nextends: rs274ngc\n${machine}\nconfirm: { ${state}: { dwell: ${JSON.stringify(text)} } }\n`;
  const { dialect, lines, findings } = await resolveText(file);
  return {
    lines,
    message: findings[0]?.message ?? "",
    confirmation: dialect?.machine.confirm[state as "stopped"],
  };
}

/** Values of the names in base units: milli-rpm and microseconds. */
const values = {
  rpm: 18_000_000,
  from_rpm: 6_000_000,
  min_rpm: 1_000_000,
  max_rpm: 24_000_000,
  spin_up: 6_000_000,
  spin_down: 4_000_000,
  coast_down: 25_000_000,
};

async function seconds(state: string, text: string): Promise<number> {
  const { confirmation, lines } = await dwell(state, text);
  expect(lines).toEqual([]);
  if (confirmation?.by !== "dwell") throw new Error("no dwell");
  return evaluate(confirmation.time, values) / 1e6;
}

describe("values", () => {
  test.each([
    ["5 s", 5],
    ["500 ms", 0.5],
    ["2 min", 120],
    ["20 * second", 20],
    ["0.5 * minute", 30],
    ["(1 + 2) * second - 0.5 * second", 2.5],
    ["max(spin_up, spin_down)", 6],
    ["min(spin_up, spin_down, second)", 1],
    // 6 s over the whole range: 12,000 of 24,000 rpm take 3 s.
    ["max(spin_up, spin_down) * max(rpm - from_rpm, from_rpm - rpm) / max_rpm + 0.5 * second", 3.5],
    ["10 * rev / max(rpm, from_rpm)", 10 / 300],
    ["spin_up * (1000 * rev / minute) / max_rpm", 0.25],
    ["-1 * -second", 1],
    ["spin_up * 2 * mm / inch", 12 / 25.4],
  ])("%s", async (text, wanted) => {
    expect(await seconds("at-speed", text)).toBeCloseTo(wanted, 9);
  });

  test("a stop counts from the old speed", async () => {
    expect(await seconds("stopped", "coast_down * from_rpm / max_rpm + 0.5 * second")).toBe(6.75);
  });
});

describe("what is refused", () => {
  test.each([
    ["a bare number", "5", "does not come out as a time"],
    ["a speed", "rpm", "does not come out as a time"],
    ["a length", "5 * mm", "does not come out as a time"],
    ["a time squared", "spin_up * spin_up", "does not come out as a time"],
    ["time and a bare number", "spin_up + 1", "+ mixes a time with a bare number"],
    ["time and speed", "spin_up - rpm", "- mixes a time with a speed"],
    ["the larger of time and speed", "max(spin_up, rpm)", "max mixes a time with a speed"],
    ["length and time", "(mm + second) / mm", "+ mixes a length with a time"],
    [
      "an unknown name",
      "spinup * 1",
      "`spinup` is not a name that an expression can use. Did you mean `spin_up`?",
    ],
    ["the name of an object", "globalThis", "is not a name"],
    ["a call", "process.exit(1)", "cannot be called"],
    ["a call of a name", "spin_up()", "cannot be called"],
    ["a call that hides as max", "max?.(second, second)", "cannot be called"],
    ["a type argument", "max<number>(second, second)", "cannot be called"],
    ["one argument", "max(second)", "max needs two values or more"],
    ["a spread", "max(second, ...spin_up)", "is not a number"],
    ["a property", "spin_up.constructor", "is not a number, a name"],
    ["an index", "spin_up[0]", "is not a number, a name"],
    ["a string", "'5 s'", "is not a number, a name"],
    ["a template", "`5`", "is not a number, a name"],
    ["an assignment", "spin_up = second", "`=` is not one of"],
    ["a comma", "second, second", "`,` is not one of"],
    ["a power", "second ** 1", "`**` is not one of"],
    ["a remainder", "spin_up % second", "`%` is not one of"],
    ["a comparison", "spin_up > second", "`>` is not one of"],
    ["a condition", "rpm ? second : second", "is not a number, a name"],
    ["an increment", "spin_up++", "is not a number, a name"],
    ["a plus in front", "+second", "is not a number, a name"],
    ["a not", "!second", "is not a number, a name"],
    ["a function", "(() => second)()", "cannot be called"],
    ["a second statement", "second; second", "it is not one arithmetic expression"],
    ["a way out of the brackets", "second); process.exit((1)", "it is not one arithmetic expression"],
    ["a comment", "second /* x */", "comments are not allowed"],
    ["a line comment", "second // x", "comments are not allowed"],
    ["nothing", " ", "it is not one arithmetic expression"],
    ["an exponent", "1e3 * second", "is not a plain decimal number"],
    ["a number in another base", "0x10 * second", "is not a plain decimal number"],
    ["a large integer", "10n * second", "is not a number"],
    ["a separator", "1_000 * second", "is not a plain decimal number"],
    ["a cast", "second as any", "is not a number, a name"],
    ["an assertion", "second!", "is not a number, a name"],
    ["an await", "await second", "is not a number, a name"],
    ["a regular expression", "/x/ * second", "is not a number, a name"],
    ["an escaped name", "\\u0073econd", "is not a name"],
    ["a unit without an operator", "5 sec", "it is not one arithmetic expression"],
  ])("%s", async (_what, text, message) => {
    const found = await dwell("at-speed", text);
    expect(found.lines).toEqual(["dialect/expression confirm.at-speed.dwell @ own.yaml:4"]);
    expect(found.message).toContain(message);
  });

  test.each([
    ["stopped", "rpm"],
    ["released", "rpm"],
    ["clamped", "from_rpm"],
    ["air", "from_rpm"],
  ])("in %s the name %s has no value", async (state, name) => {
    const found = await dwell(state, `spin_up * ${name} / max_rpm`);
    expect(found.lines).toEqual([`dialect/expression confirm.${state}.dwell @ own.yaml:4`]);
    expect(found.message).toContain(`\`${name}\` has no meaning here`);
  });

  test.each([
    ["stopped", "0 s"],
    ["at-speed", "0 * second"],
    ["at-speed", "-1 * second"],
    // Right on the way up, but nothing on the way down.
    ["at-speed", "spin_up * (rpm - from_rpm) / max_rpm"],
    ["stopped", "coast_down * (max_rpm - from_rpm) / max_rpm"],
    ["at-speed", "second / 0"],
    ["at-speed", "100 * minute"],
  ])("%s by %s confirms nothing, or never ends", async (state, text) => {
    expect((await dwell(state, text)).lines).toEqual([`dialect/confirm confirm.${state}.dwell @ own.yaml:4`]);
  });

  test("a wait for no time", async () => {
    const { lines } = await resolveText(
      "dialect: own\nextends: explicit-words\nconfirm: { stopped: { timeout: 0 s } }\n",
    );
    expect(lines).toEqual(["dialect/confirm confirm.stopped.timeout @ own.yaml:3"]);
  });

  test("a name whose fact no file states", async () => {
    const { lines } = await resolveText(
      'dialect: own\nextends: rs274ngc\nmachine: { spindle: { max-rpm: 9000 } }\nconfirm: { stopped: { dwell: "coast_down * from_rpm / max_rpm" } }\n',
    );
    expect(lines[0]).toBe("dialect/undeclared confirm.stopped.dwell @ own.yaml:4");
  });

  test("deep brackets do not bring it down", async () => {
    const found = await dwell("at-speed", "(".repeat(140) + "second" + ")".repeat(140));
    expect(found.lines).toEqual([]);
  });
});

test("the other ways of a confirmation", async () => {
  const { dialect } = await resolveText(
    "dialect: own\nextends: rs274ngc\nconfirm:\n  stopped: operator\n  at-speed: { intrinsic: the start code holds until the drive is at speed }\n",
  );
  expect(dialect?.machine.confirm).toEqual({
    stopped: { by: "operator" },
    "at-speed": { by: "intrinsic", reason: "the start code holds until the drive is at speed" },
  });
});
