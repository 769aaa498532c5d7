import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { questions } from "#interview";
import { createPaint } from "#report";

/** What the user does: the value that is chosen, or the text that is typed. */
type Said = string;

interface Prompted {
  readonly message: string;
  readonly choices?: readonly { readonly value: string; readonly name: string }[];
  readonly default?: string;
  readonly validate?: (text: string) => true | string;
}

/** More prompts than any test needs. */
const mostPrompts = 100;

const prompted: Prompted[] = [];
const script: Said[] = [];
const shown: string[] = [];

function answer(asked: Prompted): Promise<string> {
  prompted.push(asked);
  // An answer that is refused is asked for again, without end where the script has no other.
  if (prompted.length > mostPrompts)
    return Promise.reject(new Error(`asked again and again: ${asked.message}`));
  const said = script.shift() ?? asked.default;
  if (said === "ctrl-c") return Promise.reject(Object.assign(new Error("left"), { name: "ExitPromptError" }));
  return Promise.resolve(said ?? asked.choices?.[0].value ?? "");
}

vi.mock("@inquirer/prompts", () => ({ select: answer, input: answer }));
vi.mock("../../core/9-cli/files/write.ts", () => ({
  writeText: (_: number, text: string) => void shown.push(text),
}));

const { interview } = await import("../../core/9-cli/new/interview.ts");

const file = {
  path: "mill.dialect.yaml",
  name: "mill",
  title: undefined,
  schema: "schemas/dialect.schema.json",
};
const layout = { width: 80, paint: createPaint(false) };

beforeEach(() => {
  prompted.length = script.length = shown.length = 0;
});
afterEach(() => vi.clearAllMocks());

async function ask(from?: string) {
  const found = await interview(from, file, layout);
  if ("verdict" in found) throw new Error("refused");
  return found;
}

test("every question is asked once, at most fifteen; leaving all as it is states nothing", async () => {
  script.push("rs274ngc");
  const { answered, text } = await ask();
  expect(prompted).toHaveLength(questions.length + 1);
  expect(prompted.length).toBeLessThanOrEqual(15);
  expect(answered).toEqual([]);
  expect(text).toContain("extends: rs274ngc");
  expect(prompted[1].message).toMatch(/^1\/14 How does a program begin and end\?/);
});

test("a sample stands behind each answer, as the file would write it", async () => {
  const at = questions.findIndex(({ id }) => id === "spindle");
  script.push(...questions.slice(0, at).map(() => ""), "start-first");
  script.fill("keep", 0, at);
  await ask("rs274ngc");
  // The introduction comes before the first sample.
  const sample = shown[at + 1].split("\n").map((line) => line.trim());
  expect(shown).toHaveLength(questions.length + 1);
  expect(sample).toContain("M3 S12000");
  expect(sample.filter((line) => line !== "")).toHaveLength(5);
});

test("an answer that does not hold together is told, and asked again", async () => {
  const at = questions.findIndex(({ id }) => id === "at-speed");
  script.push(...questions.slice(0, at).map(() => "keep"));
  script.push("wait", "4", "10 s", "G94 P{{signal}} R{{level}} Q{{timeout}}", "dwell", "8 s");
  const { text } = await ask("rs274ngc");
  expect(shown.join("")).toContain("dialect/idiom-meaning");
  expect(shown.join("")).toContain("That does not go together:");
  expect(text).toContain("at-speed: { dwell: 8 s }");
  expect(text).not.toContain("G94");
});

test("a detail is checked while it is typed", async () => {
  const at = questions.findIndex(({ id }) => id === "stopped");
  script.push(...questions.slice(0, at).map(() => "keep"), "dwell", "9 s");
  await ask("rs274ngc");
  const { validate } = prompted.at(-1)!;
  expect([validate?.("9 s"), validate?.("9")]).toEqual([
    true,
    "It can be a time with its unit, such as 20 s or 500 ms",
  ]);
});

test("where the archetype trusts the controller, leaving it so is not offered, and neither is what clashes", async () => {
  // Where only one answer is left, a question is not asked: each hole's block would define its cycle anew.
  script.push(
    ...questions.slice(0, -3).map(() => "keep"),
    "controller-holds",
    "manual page 3",
    "controller-holds",
    "tried with the slowest ramp",
  );
  const { text } = await ask("staged-tools");
  expect(prompted.some(({ message }) => message.includes("Must every block"))).toBe(false);
  const [atSpeed] = prompted.filter(({ message }) => message.includes("come up to speed"));
  expect(atSpeed.choices?.map(({ value }) => value)).toEqual(["wait", "controller-holds"]);
  expect(text).toContain("at-speed: { intrinsic: manual page 3 }");
});

test("nothing on the screen is wider than 80 columns, whatever the archetype", async () => {
  for (const from of ["rs274ngc", "least-increment", "hand-zeroed"]) await ask(from);
  for (const { message, choices = [] } of prompted) {
    // The prompt puts its mark and a blank before each.
    for (const line of message.split("\n")) expect(line.length).toBeLessThanOrEqual(78);
    for (const { name } of choices) expect(name.length).toBeLessThanOrEqual(78);
    for (const { name } of choices) expect(name).not.toMatch(/\.\.\.$/);
  }
  for (const line of shown.join("").split("\n")) expect(line.length).toBeLessThanOrEqual(80);
});

test("who leaves leaves: the prompt's error goes out, and there is no file", async () => {
  script.push("keep", "ctrl-c");
  await expect(ask("rs274ngc")).rejects.toThrow("left");
});
