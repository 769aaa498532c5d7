import { clean } from "../../clean.ts";

/** Ink of tools: six colours that differ in lightness, too; a tool's dashes tell it apart where hues cannot. */
export const toolInks = ["#12386b", "#a85c00", "#0d5a3c", "#a3296b", "#1d2327", "#1f7f90"] as const;

/** Dashes of the cuts of a tool, in units of the sheet. */
export const toolDashes = ["", "44 14", "12 12", "44 12 12 12"] as const;

/** Ink and dashes of a tool by its index; the first 24 have no two alike. */
export function toolMark(index: number): { readonly ink: string; readonly dashes: string } {
  const round = Math.floor(index / toolInks.length);
  return {
    ink: toolInks[index % toolInks.length],
    dashes: toolDashes[(index + round) % toolDashes.length],
  };
}

/**
 * The style of a drawing: ink on paper. Line widths are those of technical drawings, 0.35 mm and 0.18 mm; dashes tell what is no
 * cut. All names stand below one class, so that a page with a drawing in it keeps its own.
 */
export const drawingStyle = `
.plot-drawing { background: #fff; }
.plot-drawing text { font: 56px system-ui, sans-serif; fill: #1d2327; }
.plot-drawing .title { font-size: 92px; font-weight: 600; }
.plot-drawing .small { font-size: 48px; fill: #454d52; }
.plot-drawing .strong { font-weight: 600; }
.plot-drawing .warn { font-weight: 700; fill: #8c1d2f; }
.plot-drawing path, .plot-drawing line, .plot-drawing rect, .plot-drawing circle { fill: none; stroke: #1d2327; stroke-width: 4; }
.plot-drawing .cut { stroke-width: 7; stroke-linejoin: round; stroke-linecap: butt; }
.plot-drawing .hole { stroke-width: 7; }
.plot-drawing .rapid { stroke: #5a646a; stroke-width: 3; stroke-dasharray: 16 10; }
.plot-drawing .machine { stroke: #5a646a; stroke-width: 3; stroke-dasharray: 3 12; }
.plot-drawing .frame { stroke: #9a9a92; stroke-width: 3; }
.plot-drawing .stock { fill: #f1ede2; stroke: #6b5d3a; stroke-width: 5; }
.plot-drawing .fixture { stroke: #454d52; stroke-width: 5; }
.plot-drawing .keep-out, .plot-drawing .rack, .plot-drawing .travel { stroke: #454d52; stroke-dasharray: 60 16 8 16; }
.plot-drawing .clearance { stroke: #454d52; stroke-dasharray: 80 14 14 14 14 14; }
.plot-drawing .zero { stroke-width: 5; }
.plot-drawing .zero-filled { fill: #1d2327; stroke: none; }
.plot-drawing .mark { fill: #fff; stroke: #8c1d2f; stroke-width: 8; }
.plot-drawing .mark-text { font-weight: 700; text-anchor: middle; fill: #8c1d2f; }
.plot-drawing .label { font-size: 46px; paint-order: stroke; stroke: #fff; stroke-width: 12px; }
.plot-drawing .middle { text-anchor: middle; }
.plot-drawing .end { text-anchor: end; }
`;

/** A text as XML has it. */
export function xml(text: string): string {
  return clean(text).replace(/[&<>"]/g, (character) => entities[character] ?? character);
}

const entities: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" };

/** A text on the sheet. */
export function textAt(x: number, y: number, text: string, style = ""): string {
  return `<text x="${round(x)}" y="${round(y)}"${style === "" ? "" : ` class="${style}"`}>${xml(text)}</text>`;
}

/** A number on the sheet as it is written. */
export function round(value: number): string {
  return String(Math.round(value * 10) / 10 + 0);
}
