import type { ToolDraft } from "./drafts.ts";
import { createTool } from "./drafts.ts";
import * as findings from "./findings.ts";
import type { Gathered, Gathering } from "./gathering.ts";
import { current, tellOnce } from "./gathering.ts";
import type { Explained } from "./held.ts";
import { toolRequest } from "./held.ts";
import { ownLengthOffset } from "./state.ts";
import type { Walk } from "./walk.ts";

/** What the operator is asked to load says what the tool is. */
export function noteRequest(
  all: Gathering,
  held: Explained["held"],
  belongs: Explained["belongs"],
  text: string,
): void {
  if (belongs !== "swap" || held.kind !== "step" || held.step.kind !== "pause") return;
  const [, number, rest] = toolRequest.exec(text) ?? [];
  if (number !== undefined)
    toolOf(all, Number(number), held.source).asked = { offset: held.source, text: rest };
}

function toolOf({ tools }: Gathered, number: number, source: number): ToolDraft {
  const known = tools.get(number);
  if (known !== undefined) return known;
  const made = createTool(number, source);
  tools.set(number, made);
  return made;
}

export function toolInHand(all: Gathering): ToolDraft {
  const { tool, source } = current(all);
  return toolOf(all, tool, source);
}

/** Offsets that the tool has by now. */
export function takeToolData(all: Gathering, { state }: Walk, source: number): void {
  const tool = toolInHand(all);
  const { radiusOffset, compensated } = state;
  takeOffset(all, tool, "lengthOffset", ownLengthOffset(state), source);
  const wordOffset = state.tool === 0 ? state.selectedOffset : state.toolOffset;
  if (wordOffset !== undefined && wordOffset !== 0) tool.lengthOffset ??= wordOffset;
  if (compensated !== "off") takeOffset(all, tool, "radiusOffset", radiusOffset, source);
  if (compensated !== "off" && radiusOffset === 0 && tool.radiusless < 0) tool.radiusless = source;
  tool.measured ||= state.measured;
}

/** Finding of a second number, by the offset that it is of. */
const differs = { lengthOffset: findings.lengthDiffers, radiusOffset: findings.radiusDiffers } as const;

/** The first number that the program states counts; 0 states none, and another one is told once. */
function takeOffset(
  { told, report }: Gathering,
  tool: ToolDraft,
  which: keyof typeof differs,
  number: number,
  source: number,
): void {
  if (number === 0) return;
  const first = (tool[which] ??= number);
  if (first !== number)
    tellOnce(told, `${which} ${tool.number}`, () => {
      report(differs[which](source, tool.number, first, number));
    });
}
