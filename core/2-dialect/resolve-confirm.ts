import type {
  Confirmation,
  ConfirmationName,
  Expression,
  ExpressionName,
  MachineFacts,
  SignalName,
} from "#base";
import { evaluate } from "#base";
import { isTime } from "./expression-units.ts";
import type { Resolving } from "./resolving.ts";
import type { TreeNode } from "./tree.ts";
import { isNone, nodeAt } from "./tree.ts";
import { parseTime, speed, time, word } from "./values.ts";

const always = [
  "min_rpm",
  "max_rpm",
  "spin_up",
  "spin_down",
  "coast_down",
] as const satisfies readonly ExpressionName[];

/** Names that have a value while each state is waited for. A stop ends at no speed, so `rpm` has none there. */
const allowedNames = {
  "at-speed": ["rpm", "from_rpm", ...always],
  stopped: ["from_rpm", ...always],
  released: always,
  clamped: always,
  air: always,
  "hold-down": always,
} as const satisfies Record<ConfirmationName, readonly ExpressionName[]>;

/** Facts behind the names, so that a name without a value is found before a job is posted. */
const factOf = {
  min_rpm: "machine.spindle.min-rpm",
  max_rpm: "machine.spindle.max-rpm",
  spin_up: "machine.spindle.spin-up",
  spin_down: "machine.spindle.spin-down",
  coast_down: "machine.spindle.coast-down",
} as const satisfies Partial<Record<ExpressionName, string>>;

/** How each state is confirmed. Expressions are parsed only where a plain time will not do. */
export async function resolveConfirm(resolving: Resolving): Promise<MachineFacts["confirm"]> {
  const confirm: Partial<Record<ConfirmationName, Confirmation>> = {};
  for (const name of Object.keys(allowedNames) as ConfirmationName[]) {
    const found = await resolveOne(resolving, name);
    if (found !== undefined) confirm[name] = found;
  }
  return confirm;
}

async function resolveOne(resolving: Resolving, name: ConfirmationName): Promise<Confirmation | undefined> {
  const { tree, fail } = resolving;
  const path = `confirm.${name}`;
  const node = nodeAt(tree, path);
  if (node === undefined) return undefined;
  if (node.kind === "scalar") return isNone(node) ? undefined : { by: "operator" };
  const stated = (["wait", "dwell", "intrinsic"] as const).filter(
    (way) => nodeAt(tree, `${path}.${way}`) !== undefined,
  );
  if (stated.length !== 1) {
    const message = `\`${path}\` states ${stated.length === 0 ? "no way" : stated.join(" and ")}; it must state one.`;
    fail("dialect/confirm", path, message, "State one of wait, dwell, intrinsic or the word operator.");
    return undefined;
  }
  if (stated[0] === "wait") return resolveWait(resolving, path);
  if (stated[0] === "dwell") return resolveDwell(resolving, name, path);
  return { by: "intrinsic", reason: word(tree, `${path}.intrinsic`) ?? "" };
}

/** A wait whose words have no place for a timeout waits for ever: its timeout is 0. */
function resolveWait({ tree, need, fail }: Resolving, path: string): Confirmation {
  const signal = word<SignalName>(tree, `${path}.wait`)!;
  const stated = time(tree, `${path}.timeout`);
  if (stated === 0) fail("dialect/confirm", `${path}.timeout`, "A timeout of nothing waits for nothing.");
  const saysTimeout = word(tree, "idioms.wait-signal")?.includes("{{timeout}}") === true;
  const timeout = saysTimeout ? need(stated, `${path}.timeout`) : (stated ?? 0);
  return { by: "wait", signal, timeout };
}

async function resolveDwell(
  resolving: Resolving,
  name: ConfirmationName,
  path: string,
): Promise<Confirmation | undefined> {
  const text = word(resolving.tree, `${path}.dwell`)!;
  const plain = parseTime(text);
  const expression =
    plain === undefined
      ? await parseDwell(resolving, name, path, text)
      : ({ op: "number", value: plain } as const);
  if (expression === undefined) return undefined;
  needFacts(resolving, expression, `${path}.dwell`);
  checkDwell(resolving, name, expression, `${path}.dwell`);
  return { by: "dwell", time: expression };
}

async function parseDwell(
  { fail }: Resolving,
  name: ConfirmationName,
  path: string,
  text: string,
): Promise<Expression | undefined> {
  const { parseExpression } = await import("./expression-parser.ts");
  const found = parseExpression(text, allowedNames[name]);
  if ("problem" in found) {
    fail("dialect/expression", `${path}.dwell`, `In \`${path}.dwell\`: ${found.problem}.`, dwellExample);
    return undefined;
  }
  if (isTime(found)) return found.expression;
  fail("dialect/expression", `${path}.dwell`, `\`${path}.dwell\` does not come out as a time.`, dwellExample);
  return undefined;
}

const dwellExample =
  'Write a time such as "5 s", or an expression such as "spin_up * rpm / max_rpm + 0.5 * second".';

/**
 * A dwell confirms something only if it lasts: it must come out above 0 for the changes that take longest, from standstill
 * to the highest speed and from there to the lowest one or to standstill.
 */
function checkDwell(
  { tree, fail }: Resolving,
  name: ConfirmationName,
  expression: Expression,
  path: string,
): void {
  const max = speed(tree, factOf.max_rpm) ?? 1;
  const min = speed(tree, factOf.min_rpm) ?? 0;
  const times = {
    spin_up: time(tree, factOf.spin_up) ?? 0,
    spin_down: time(tree, factOf.spin_down) ?? 0,
    coast_down: time(tree, factOf.coast_down) ?? 0,
  };
  const speeds = { max_rpm: max, min_rpm: min };
  const slow = min > 0 ? min : max / 10;
  const up = { ...times, ...speeds, rpm: max, from_rpm: 0 };
  const down = { ...times, ...speeds, rpm: slow, from_rpm: max };
  const lasts = (name === "stopped" ? [down] : [up, down]).map((values) => evaluate(expression, values));
  const short = lasts.find((value) => !(value > 0 && value < longestDwell));
  if (short === undefined) return;
  const shown = Number.isFinite(short) ? `${short / 1e6} s` : "no number";
  const message = `\`${path}\` comes out as ${shown} for a change of speed over the whole range.`;
  fail("dialect/confirm", path, message, "It must last as long as that change, up or down.");
}

/** An hour in microseconds: nothing on a small machine takes that long. */
const longestDwell = 3.6e9;

function needFacts({ tree, fail }: Resolving, expression: Expression, path: string): void {
  for (const name of namesIn(expression)) {
    const fact = name in factOf ? factOf[name as keyof typeof factOf] : undefined;
    if (fact === undefined || isStated(tree, fact)) continue;
    fail(
      "dialect/undeclared",
      path,
      `\`${path}\` works with ${name}, but no file states \`${fact}\`.`,
      `State \`${fact}\`.`,
    );
  }
}

function isStated(tree: TreeNode, path: string): boolean {
  const node = nodeAt(tree, path);
  return node !== undefined && !isNone(node);
}

function namesIn(expression: Expression): ExpressionName[] {
  if (expression.op === "number") return [];
  if (expression.op === "name") return [expression.name];
  return [...new Set(expression.of.flatMap(namesIn))];
}
