import type { Dialect } from "./dialect.ts";
import type { Resolving } from "./resolving.ts";
import { stated } from "./resolving.ts";
import { word } from "./values.ts";

/** Keys of tools and length offsets that contradict one another. */
export function checkTools(resolving: Resolving, { format, machine }: Dialect): void {
  const { tools } = format;
  if (tools?.changedBy === "tool-word") checkToolWord(resolving, tools.preselect === true, machine.swap);
  if (tools?.named === false && format.idioms.message === undefined) {
    resolving.fail(
      "dialect/undeclared",
      "idioms.message",
      "The operator changes the tools, no tool word names them, and the dialect has no messages: nobody would know which tool to load.",
      'Add `idioms: { message: "(MSG, {{text}})" }`, or state `tools: { in-operator-swap: yes }`.',
    );
  }
  checkOffsetZero(resolving);
  checkEmptying(resolving, machine);
}

/** The change that puts the last tool away would start the spindle without one. */
function checkEmptying(resolving: Resolving, { endsEmpty, changeEffects }: Dialect["machine"]): void {
  if (!endsEmpty || changeEffects?.spindle !== "restarts") return;
  const restarts = stated(resolving, "machine.change-effects.spindle");
  const message = `The program ends with a change that empties the spindle (${stated(resolving, "tools.empty")}), and each change starts it again (${restarts}): it would turn without a tool.`;
  const fix =
    "State `tools: { empty: none }`, or another effect if the control leaves an empty spindle alone.";
  resolving.fail("dialect/machine", "tools.empty", message, fix);
}

/** Keys of cycles that contradict one another, or the machine. */
export function checkCycleWords({ fail }: Resolving, { format, machine }: Dialect): void {
  const { cycles, codes } = format;
  if (cycles === undefined) return;
  if (cycles.definition === "apart" && cycles.repeat === "all")
    fail(
      "dialect/format",
      "cycles.definition",
      "Each hole states the words of its cycle again, and the block that defines a cycle states no hole.",
      "State `repeat: positions`, or `definition: with-first-hole`.",
    );
  if (cycles.definition === "apart" && format.modal.motion === "each-block")
    fail(
      "dialect/format",
      "cycles.definition",
      "Each block states its motion word, here the code of the cycle, and a block with that code defines a cycle and states no hole.",
      "State `modal: { motion: modal }`, or `definition: with-first-hole`.",
    );
  if (Object.values(codes.cycles).some(Boolean) && !codes.modes.cycle.off)
    fail(
      "dialect/format",
      "cancel.cycles",
      "Each further move of a program would drill again: no word ends a fixed cycle.",
      "State the word, for instance `cancel: { cycles: G80 }`, or `cycles: none`.",
    );
  if (cycles.levels !== "absolute" && cycles.repeat === "all" && cycles.initialLevel === "current")
    fail(
      "dialect/format",
      "cycles.initial-level",
      "Levels count from the initial level, which each hole would take anew from where the tool stands.",
      "State `repeat: positions`, or `initial-level: before-series`.",
    );
  if (codes.tapSynchronised && machine.tapping !== undefined && machine.tapping.kind !== "synchronised")
    fail(
      "dialect/machine",
      "cycles.tap-synchronised",
      "A code locks spindle and feed for taps, but the machine does not tap synchronised.",
      "State `machine: { tapping: { kind: synchronised } }`, or `tap-synchronised: none`.",
    );
}

/** A tool word that changes the tool cannot also name one for later, or for the operator. */
function checkToolWord({ fail }: Resolving, preselects: boolean, swap: Dialect["machine"]["swap"]): void {
  if (preselects)
    fail(
      "dialect/format",
      "tools.preselect",
      "The tool word changes the tool, so it cannot select the next one ahead.",
      "State `preselect: no`.",
    );
  if (swap !== "controller")
    fail(
      "dialect/format",
      "tools.change",
      "The tool word changes the tool by the controller, but the machine swaps its tools in another way.",
      "State `machine: { swap: controller }`, or another value of `tools.change`.",
    );
}

/** `off: H0` is the number 0 of the word that numbers length offsets. */
function checkOffsetZero({ tree, fail }: Resolving): void {
  const off = word(tree, "length-offset.off");
  const letter = word(tree, "length-offset.word");
  if (off === undefined || !/^[^GM]0$/.test(off) || off === `${letter ?? ""}0`) return;
  const message = `\`length-offset.off\` is ${off}, but length offsets are numbered with ${letter ?? "no letter"}.`;
  fail("dialect/format", "length-offset.off", message, `State \`off: ${letter ?? "H"}0\`, or its code.`);
}
