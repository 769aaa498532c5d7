import * as findings from "../findings.ts";
import { length, lengthAbove0, onlyNumbers, strayMinor, wholeNumber } from "../items.ts";
import type { ClRun } from "../state.ts";
import type { Statement } from "../statement.ts";

/** CUTTER/d[,r[,e,f,a,b,h]]: the tool that is loaded, or that is about to be. */
export function cutter(run: ClRun, statement: Statement): void {
  const { items, offset } = statement;
  if (items.length < 1 || items.length > 7 || !onlyNumbers(statement)) {
    run.report(findings.wrongItems(offset, "CUTTER", "CUTTER/d or CUTTER/d, r"));
    return;
  }
  const diameter = lengthAbove0(run, items[0], "The diameter");
  const corner = items.length < 2 ? 0 : length(run, items[1]);
  if (diameter === undefined || corner === undefined) return;
  if (corner < 0 || corner * 2 > diameter) {
    run.report(findings.outOfRange(items[1].offset, "The corner radius", "from 0 to half the diameter"));
    return;
  }
  run.state.cutter = { diameter, corner, offset };
  run.state.cutterFresh = true;
}

const loadWords = ["IN", "LENGTH", "OSETNO", "MANUAL"];

/** LOADTL/n[,IN,m][,LENGTH,l][,OSETNO,h][,MANUAL]; TOOLNO and TURRET alike [memory]. */
export function loadtl(run: ClRun, statement: Statement): void {
  const { items, offset, word } = statement;
  const { state, act } = run;
  if (items[0]?.kind !== "number") {
    run.report(findings.wrongItems(offset, word, `${word}/n`));
    return;
  }
  const number = wholeNumber(run, items[0], "The number of a tool");
  const data = readData(run, statement);
  if (state.circle) run.report(findings.circleWithoutEnd(offset, word));
  if (state.cycleOn) run.report(findings.cycleStill(offset, word));
  if (number === undefined) return;
  if (state.moved) act.operation(offset);
  act.tool(number, offset);
  act.toolData(data, offset);
  state.tool = number;
  takeUp(run);
}

/** Nothing of how the last tool turned and moved holds for the next one. */
function takeUp({ state }: ClRun): void {
  if (!state.cutterFresh) state.cutter = undefined;
  if (!state.spindleFresh || state.spindle === "off") state.spindle = "unsaid";
  state.circle = undefined;
  state.cycle = undefined;
  state.cycleOn = false;
  state.movedWhileOff = undefined;
  state.afterRapid = false;
  state.toolZ = undefined;
  state.moved = false;
}

function readData(run: ClRun, statement: Statement): { length?: number; lengthOffset?: number } {
  const { items } = statement;
  const data: { length?: number; lengthOffset?: number } = {};
  for (let at = 1; at < items.length; at++) {
    const { kind, text } = items[at];
    const next = items[at + 1]?.kind === "number" ? items[at + 1] : undefined;
    if (kind === "word" && text === "MANUAL") continue;
    if (kind === "number" || !loadWords.includes(text) || next === undefined) {
      strayMinor(run, statement, items[at], loadWords);
      continue;
    }
    at++;
    if (text === "LENGTH") {
      const gauge = lengthAbove0(run, next, "The length");
      if (gauge !== undefined) data.length = gauge;
    }
    if (text === "OSETNO") {
      const number = wholeNumber(run, next, "The number of a length offset");
      if (number !== undefined) data.lengthOffset = number;
    }
  }
  return data;
}

/** UNLOAD[/...]: no tool is left to move. */
export function unload(run: ClRun, { offset }: Statement): void {
  if (run.state.cycleOn) run.report(findings.cycleStill(offset, "UNLOAD"));
  run.state.tool = 0;
}

const sides = { LEFT: "left", RIGHT: "right" } as const;

/** CUTCOM/LEFT|RIGHT|ON|OFF[,n][,XYPLAN]. */
export function cutcom(run: ClRun, statement: Statement): void {
  const { items, offset } = statement;
  const { state, act } = run;
  const [what, ...rest] = items;
  const name = what?.text ?? "";
  const side = Object.hasOwn(sides, name) ? sides[name as keyof typeof sides] : undefined;
  const chosen = name === "OFF" ? "off" : name === "ON" ? state.lastSide : side;
  if (chosen === undefined) {
    run.report(findings.wrongItem(what?.offset ?? offset, "CUTCOM", ["LEFT", "RIGHT", "ON", "OFF"]));
    return;
  }
  for (const item of rest) {
    if (item.kind === "number") {
      const number = wholeNumber(run, item, "The number of a radius offset");
      if (number !== undefined) act.toolData({ radiusOffset: number }, offset);
    } else if (item.text === "YZPLAN" || item.text === "ZXPLAN")
      run.report(
        findings.withoutCounterpart(item.offset, `Compensation in ${item.text}`, "Compensate in XYPLAN."),
      );
    else if (item.text !== "XYPLAN") strayMinor(run, statement, item, ["XYPLAN"]);
  }
  if (chosen !== "off") state.lastSide = chosen;
  if (chosen === "off" && !state.compensated) return;
  state.compensated = chosen !== "off";
  act.compensation(chosen, offset);
}
