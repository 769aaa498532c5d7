/** What stands below the views: tools and operations, signs, extents, remarks, findings and cautions. */
import { plotCautions } from "../../cautions.ts";
import { clean } from "../../clean.ts";
import { wrap } from "../../wrap.ts";
import type { Extent, PlotHead, PlotMark, PlotTool } from "../plot.ts";
import { placeText } from "../plot.ts";
import { zeroSign } from "./around.ts";
import { round, textAt, toolMark } from "./style.ts";

/** Characters of a text over the whole sheet in letters as wide as those of common screen fonts, units between lines, and findings that are listed. */
const columns = 104;
const leading = 68;
const mostFindings = 40;
const mostOperations = 12;

/** Lines of the legend, and where the sheet ends. */
export interface Legend {
  readonly parts: readonly string[];
  readonly bottom: number;
}

/** A pen that writes line below line. */
interface Pen {
  readonly parts: string[];
  y: number;
}

const left = 60;
const indent = 300;

/** Writes all of it below a height of the sheet. */
export function legendOf(head: PlotHead, top: number, id: string): Legend {
  const pen: Pen = { parts: [], y: top };
  heading(pen, "Tools and operations");
  head.tools.forEach((tool, index) => toolLines(pen, head, tool, index));
  heading(pen, "Signs");
  signs(pen, head, id);
  heading(pen, "Extents");
  extentLine(pen, head, "feed motions", head.cut);
  extentLine(pen, head, "all motions drawn", head.all);
  if (head.marks.length > 0) findings(pen, head.marks);
  if (head.remarks.length > 0) {
    heading(pen, "About this picture");
    head.remarks.forEach((remark) => paragraph(pen, left, `– ${remark}`, ""));
  }
  heading(pen, "Before anything runs");
  plotCautions.forEach((caution) => paragraph(pen, left, `– ${caution}`, "small"));
  return { parts: pen.parts, bottom: pen.y + 40 };
}

function heading(pen: Pen, text: string): void {
  pen.y += leading * 1.5;
  pen.parts.push(textAt(left, pen.y, text, "strong"));
}

function paragraph(pen: Pen, x: number, text: string, style: string): void {
  // Strong letters are wider.
  const width = Math.floor((columns - x / 34) * (style === "warn" ? 0.88 : 1));
  for (const line of wrap(clean(text), width)) {
    pen.y += leading;
    pen.parts.push(textAt(x, pen.y, line, style));
  }
}

/** "T1 end-mill 6 mm, carbide end-mill" behind a sample of its line, and its operations. */
function toolLines(pen: Pen, head: PlotHead, tool: PlotTool, index: number): void {
  const { ink, dashes } = toolMark(index);
  pen.y += leading;
  pen.parts.push(
    `<path class="cut" style="stroke:${ink}${dashes === "" ? "" : `;stroke-dasharray:${dashes}`}" d="M${left} ${round(pen.y - 18)}h190"/>`,
  );
  pen.parts.push(textAt(indent, pen.y, toolText(tool, head.units)));
  const own = head.operations.filter((operation) => operation.tool === index);
  const named = own.slice(0, mostOperations).map(({ id, name }) => `${id} ${name}`.trim());
  const more = own.length - named.length;
  paragraph(pen, indent, [...named, ...(more > 0 ? [`and ${more} more`] : [])].join("; "), "small");
}

export function toolText(
  { number, kind, diameter, description }: PlotTool,
  units: PlotHead["units"],
): string {
  const size = diameter === 0 ? "diameter not known" : `${placeText(diameter, units)} ${units}`;
  return clean(
    `T${number} ${kind}, ${size}${description === "" || description === kind ? "" : `, ${description}`}`,
  );
}

function signs(pen: Pen, { shows, boxes }: PlotHead, id: string): void {
  const line = (style: string, y: number): string => `<path class="${style}" d="M${left} ${round(y)}h190"/>`;
  const kinds = new Set(boxes.map(({ kind }) => kind));
  const samples: (readonly [string, (y: number) => string])[] = [
    ["rapid, or the way out of a hole", (y) => line("rapid", y)],
    ...(shows === "job" ? [] : [["in machine coordinates", (y: number) => line("machine", y)] as const]),
    [
      "hole: the tool's circle with its centre, and its depth",
      (y) =>
        `<path class="hole" d="M${left + 70} ${round(y)}a22 22 0 1 0 44 0a22 22 0 1 0 -44 0m-10 0h64M${left + 92} ${round(y - 32)}v64"/>`,
    ],
    ["clearance", (y) => line("clearance", y)],
    ["work zero", (y) => zeroSign(left + 92, y, "work zero")],
    ...(kinds.has("stock") ? [["stock", (y: number) => sample("stock", y)] as const] : []),
    ...(kinds.has("fixture")
      ? [
          [
            "fixture (hatched)",
            (y: number) => sample("fixture", y, ` style="fill:url(#${id}-hatch)"`),
          ] as const,
        ]
      : []),
    ...(kinds.has("rack") || kinds.has("keep-out") || kinds.has("travel")
      ? [["rack, keep-out box, travel", (y: number) => line("travel", y)] as const]
      : []),
  ];
  samples.forEach(([text, draw], index) => {
    if (index % 2 === 0) pen.y += leading + 6;
    const shift = index % 2 === 0 ? 0 : 1850;
    pen.parts.push(
      `<g${shift === 0 ? "" : ` transform="translate(${shift})"`}>${draw(pen.y - 18)}${textAt(indent, pen.y, text)}</g>`,
    );
  });
}

function sample(style: string, y: number, fill = ""): string {
  return `<rect class="${style}"${fill} x="${left + 40}" y="${round(y - 22)}" width="110" height="44"/>`;
}

function extentLine(pen: Pen, { units }: PlotHead, name: string, extent: Extent | undefined): void {
  const said =
    extent === undefined
      ? "none"
      : [..."XYZ"]
          .map(
            (letter, axis) =>
              `${letter} ${placeText(extent.min[axis], units)} to ${placeText(extent.max[axis], units)}`,
          )
          .join(",  ");
  paragraph(pen, left, `${name}:  ${said}${extent === undefined ? "" : ` ${units}`}`, "");
}

function findings(pen: Pen, marks: readonly PlotMark[]): void {
  heading(pen, "Findings");
  marks.slice(0, mostFindings).forEach(({ severity, rule, message, where, line, at }, index) => {
    const place = [where, line === 0 ? "" : `line ${line}`].filter((text) => text !== "").join(", ");
    const seen = at === undefined ? " (not marked)" : "";
    paragraph(
      pen,
      left,
      `${index + 1}  ${severity} ${rule}${place === "" ? "" : ` at ${place}`}${seen}: ${message}`,
      severity === "error" ? "warn" : "",
    );
  });
  const more = marks.length - mostFindings;
  if (more > 0) paragraph(pen, left, `and ${more} more, which the report lists`, "");
}
