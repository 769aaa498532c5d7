import type { Report } from "#base";
import * as findings from "../findings.ts";
import type { Job, Tool } from "../job.ts";
import type { PlaceInList } from "./place-in-list.ts";

/** What a spare must have in common with its tool, to cut the same and to be set the same way. */
const geometry = {
  kind: "kind",
  diameter: "diameter",
  flutes: "flutes",
  fluteLength: "flute length",
  shank: "shank",
  cornerRadius: "corner radius",
  tipAngle: "tip angle",
  tipDiameter: "tip diameter",
  lead: "lead",
  hand: "hand",
  centreCutting: "centre cutting",
} as const satisfies Partial<Record<keyof Tool, string>>;

/** Checks that each spare can take over from its tool, and is ever asked to. */
export function checkSpares({ tools }: Job, place: PlaceInList, report: Report): void {
  tools.forEach((spare, index) => {
    const { number, spareFor } = spare;
    if (spareFor === undefined) return;
    const at = place(index, "spareFor");
    const refuse = (why: string, fix: string): void => {
      report(findings.spareRefused(at, number, why, fix));
    };
    const tool = tools.find((one) => one.number === spareFor);
    if (spareFor === number) refuse("itself", "Name the tool that it takes over from.");
    else if (tool === undefined)
      refuse(`tool ${spareFor}, which the job does not have`, "Name a tool of the job.");
    else if (tool.spareFor !== undefined)
      refuse(
        `tool ${spareFor}, which is a spare itself`,
        `Name tool ${tool.spareFor}: several spares of one tool are taken in the order of the list.`,
      );
    else {
      const differs = differences(spare, tool);
      const lacks = offsetFault(spare, tool, tools.slice(0, index));
      if (differs.length > 0)
        refuse(
          `tool ${spareFor}: they differ in ${differs.join(", ")}`,
          "State the same for both, or leave out `spareFor`.",
        );
      else if (lacks !== undefined) refuse(`tool ${spareFor}: ${lacks.why}`, lacks.fix);
      else if (tool.life === undefined) report(findings.spareNeverUsed(at, number, spareFor));
    }
  });
}

/** What is stated for one alone differs, too: nobody knows that it is the same. */
function differences(spare: Tool, tool: Tool): string[] {
  const differing = (Object.keys(geometry) as (keyof typeof geometry)[]).filter(
    (key) => spare[key] !== tool[key],
  );
  const isMeasured = ({ measure = false }: Tool): boolean => measure;
  const measuring = isMeasured(spare) === isMeasured(tool) ? [] : ["measuring"];
  return [...differing.map((key) => geometry[key]), ...measuring];
}

/** What each tool of a family has of its own, since each has its own length and its own wear. */
const offsets = { lengthOffset: "length offset", radiusOffset: "radius offset" } as const;

/** Why the offsets of a spare do not serve it. @param before tools that stand before the spare in the list */
function offsetFault(
  spare: Tool,
  tool: Tool,
  before: readonly Tool[],
): { why: string; fix: string } | undefined {
  const family = [tool, ...before.filter(({ spareFor }) => spareFor === tool.number)];
  for (const key of Object.keys(offsets) as (keyof typeof offsets)[]) {
    if (tool[key] === undefined) continue;
    const fix = `State a \`${key}\` that is the spare's alone.`;
    const number = spare[key];
    if (number === undefined) return { why: `tool ${tool.number} has a \`${key}\` and it has none`, fix };
    const same = family.find((one) => one[key] === number);
    if (same) return { why: `it has ${offsets[key]} ${number}, and so has tool ${same.number}`, fix };
  }
  return undefined;
}
