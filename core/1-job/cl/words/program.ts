import { scales } from "../../scan/number.ts";
import type { Scale } from "../../scan/number.ts";
import * as findings from "../findings.ts";
import { tellOnce } from "../items.ts";
import type { ClRun } from "../state.ts";
import type { Statement } from "../statement.ts";

/** Units of UNITS: the scale, and which of the two of a job it goes with. */
const units: Readonly<Record<string, { readonly scale: Scale; readonly system: "mm" | "inch" }>> = {
  MM: { scale: scales.mm, system: "mm" },
  CM: { scale: scales.cm, system: "mm" },
  METERS: { scale: scales.metre, system: "mm" },
  INCHES: { scale: scales.inch, system: "inch" },
  FEET: { scale: scales.foot, system: "inch" },
};

/** UNITS/MM and the like: the unit of every length behind it. */
export function unitsWord(run: ClRun, { items, offset }: Statement): void {
  const [item] = items;
  const name = item?.text ?? "";
  if (items.length !== 1 || !Object.hasOwn(units, name)) {
    run.report(findings.wrongItem(item?.offset ?? offset, "UNITS", Object.keys(units)));
    return;
  }
  const { scale, system } = units[name];
  const stated = run.options.units;
  if (stated !== "refuse" && scales[stated] !== scale) run.report(findings.unitsContradicted(offset));
  run.state.scale = scale;
  run.state.units ??= system;
}

/** PPRINT text: a comment. */
export function pprint(run: ClRun, { text = "", offset, dollar }: Statement): void {
  literal(run, dollar, offset);
  if (text !== "") run.act.note(text, offset);
}

/** What goes for every word with free text. */
export function literal(run: ClRun, dollar: boolean, offset: number): void {
  if (dollar && run.options.literal === "text") tellOnce(run, "literal", findings.literalDollar(offset));
}

/** STOP and OPSTOP. */
export function stop(run: ClRun, { word, offset, items }: Statement): void {
  if (items.length > 0) run.report(findings.wrongItems(offset, word, word));
  if (run.state.cycleOn) run.report(findings.cycleStill(offset, word));
  const isOptional = word === "OPSTOP";
  run.act.pause(isOptional ? "Optional stop" : "Stop", isOptional, offset);
}

/** MULTAX/ON and OFF: points may have a tool axis, which must be +Z. */
export function multax(run: ClRun, { items, offset }: Statement): void {
  const isForm = items.length === 0 || (items.length === 1 && ["ON", "OFF"].includes(items[0].text));
  if (!isForm) run.report(findings.wrongItems(offset, "MULTAX", "MULTAX/ON or MULTAX/OFF"));
}

/** OPSKIP/OFF is how things are; blocks that a switch skips cannot be said. */
export function opskip(run: ClRun, { items, offset }: Statement): void {
  if (items.length === 1 && items[0].text === "OFF") return;
  run.report(
    findings.withoutCounterpart(offset, "OPSKIP/ON", "Make two sources of it, with and without the part."),
  );
}

/** MODE: coordinates here are absolute, whatever the word means elsewhere. */
export function mode(run: ClRun, { offset }: Statement): void {
  run.report(findings.withoutCounterpart(offset, "MODE", "Leave it out: GOTO is absolute."));
}

/** END: the section is over, spindle and coolant off. */
export function end(run: ClRun, { offset, word }: Statement): void {
  const { state } = run;
  if (state.cycleOn) run.report(findings.cycleStill(offset, word));
  if (state.circle) run.report(findings.circleWithoutEnd(offset, word));
  state.circle = undefined;
  state.cycleOn = false;
  state.ended = word === "FINI" ? "source" : "section";
  state.spindle = "off";
  state.coolant = [];
}
