import type { ConfirmationName, MachineFacts, SignalName } from "#base";
import type { Dialect, IdiomValue } from "./dialect.ts";
import type { Resolving } from "./resolving.ts";
import { addOne } from "./offers.ts";
import { nodeAt } from "./tree.ts";

/** A confirmation by wait needs its signal, a word for the wait, and a wait that does not go on when its time is up. */
export function checkWaits(resolving: Resolving, { machine, format }: Dialect): void {
  const idiom = format.idioms["wait-signal"];
  const says = (value: IdiomValue): boolean =>
    idiom?.blocks.flat().some((part) => "value" in part && part.value === value) === true;
  checkInputs(resolving, machine.signals);
  if (says("level")) needKeys(resolving, ["wait.on", "wait.off"]);
  else if (idiom !== undefined) checkLevels(resolving, machine.signals);
  if (says("timeout")) needKeys(resolving, ["wait.timeout-unit", "numbers.timeout"]);
  if (nodeAt(resolving.tree, "numbers.timeout")?.kind === "mapping")
    needKeys(resolving, ["numbers.timeout.decimals"]);
  if (format.waitValues !== undefined && format.waitValues.on === format.waitValues.off) {
    resolving.fail(
      "dialect/signal",
      "wait.off",
      "The levels on and off are the same number.",
      "State two numbers.",
    );
  }
  checkTurns(resolving, { machine, format });
  for (const [name, confirmation] of Object.entries(machine.confirm)) {
    if (confirmation.by !== "wait") continue;
    checkSignal(resolving, name as ConfirmationName, confirmation.signal, machine);
    if (idiom === undefined) {
      const message = `\`confirm.${name}\` waits on a signal, but the dialect has no words for a wait.`;
      resolving.fail("dialect/undeclared", "idioms.wait-signal", message, wordsOfWait);
    } else if (nodeAt(resolving.tree, `confirm.${name}.timeout`) !== undefined && !says("timeout")) {
      const message = "The words of the wait have no place for a timeout.";
      const fix = "Name {{timeout}} in `idioms.wait-signal`, or leave the timeout out.";
      resolving.fail("dialect/confirm", `confirm.${name}.timeout`, message, fix);
    }
  }
}

/** A dwell in revolutions lasts as long as the spindle likes, and for ever where it stands: nothing can be confirmed by one. */
function checkTurns({ fail }: Resolving, { machine, format }: Pick<Dialect, "machine" | "format">): void {
  if (format.dwell?.unit !== "rev") return;
  const because = "dwells are counted in revolutions of the spindle (`dwell.unit: rev`)";
  const fix = "Confirm it by wait, intrinsic or operator, or state a `dwell.unit` of s or ms.";
  for (const [name, confirmation] of Object.entries(machine.confirm))
    if (confirmation.by === "dwell")
      fail("dialect/confirm", `confirm.${name}.dwell`, `\`confirm.${name}\` is a time, but ${because}.`, fix);
  for (const [name, signal] of Object.entries(machine.signals))
    if (signal.settle > 0)
      fail(
        "dialect/signal",
        `machine.signals.${name}.settle`,
        `The settling of \`${name}\` is a time, but ${because}.`,
        "Leave the settling out, or state a `dwell.unit` of s or ms.",
      );
}

const wordsOfWait =
  'Add `idioms: { wait-signal: "? P{{signal}} R{{level}} Q{{timeout}}" }`, with the code and the letters of the manual.';

function checkSignal(
  { fail }: Resolving,
  name: ConfirmationName,
  signal: SignalName,
  { signals, onTimeout }: MachineFacts,
): void {
  const path = `confirm.${name}`;
  if (signals[signal] === undefined) {
    const key = `machine.signals.${signal}`;
    const message = `\`${path}\` waits on the signal \`${signal}\`, but no file says which input it is.`;
    fail("dialect/undeclared", key, message, addOne(key));
  }
  if (onTimeout === undefined) {
    const message = `\`${path}\` waits on a signal, but no file says what happens when the time is up.`;
    fail("dialect/undeclared", "machine.waits.on-timeout", message, addOne("machine.waits.on-timeout"));
  }
  if (onTimeout !== "continues") return;
  const message = `\`${path}\` waits on a signal, but the controller goes on when the time is up: such a wait confirms nothing.`;
  fail(
    "dialect/wait-continues",
    path,
    message,
    "Confirm it in another way, or have the controller alarm on timeout.",
  );
}

function needKeys({ tree, need }: Resolving, keys: readonly string[]): void {
  for (const path of keys) need(nodeAt(tree, path), path);
}

/** Two signals may share an input at different levels only: otherwise one is taken for the other. */
function checkInputs({ fail }: Resolving, signals: MachineFacts["signals"]): void {
  const seen = new Map<string, string>();
  for (const [name, { input, level }] of Object.entries(signals)) {
    const identity = `${input} ${level}`;
    const other = seen.get(identity);
    seen.set(identity, name);
    if (other === undefined) continue;
    const message = `The signals \`${other}\` and \`${name}\` are the same input at the same level.`;
    fail(
      "dialect/signal",
      `machine.signals.${name}`,
      message,
      "Each signal has an input of its own, or another level.",
    );
  }
}

/** Words of a wait without a level wait until the input is on. */
function checkLevels({ fail }: Resolving, signals: MachineFacts["signals"]): void {
  for (const [name, { level }] of Object.entries(signals)) {
    if (level === "on") continue;
    const message = `The signal \`${name}\` is off in its state, but the words of the wait say no level.`;
    fail("dialect/signal", `machine.signals.${name}`, message, "Name {{level}} in `idioms.wait-signal`.");
  }
}
