/** A plot in the form that its page asks for. */
import Handlebars from "handlebars";
import { plotCautions } from "../../cautions.ts";
import { clean } from "../../clean.ts";
import { plotDrawing, shownExtent, statusOf } from "../drawing/drawing.ts";
import { toolText } from "../drawing/legend.ts";
import { toolMark } from "../drawing/style.ts";
import type { Packing, Plot, PlotHead, PlotMark } from "../plot.ts";
import { placeText } from "../plot.ts";
import { plotScript, plotScriptHash } from "./plot-script.generated.ts";
import { pageStyle } from "./style.ts";
import { dataMark, pageTemplate } from "./template.ts";

const template = Handlebars.compile(pageTemplate, { strict: true, preventIndent: true });

/** Path data of the drawing for paper, characters. */
const mostOnPaper = 600_000;

/** Renders the page piece by piece: what stands around the data, and the data as they are packed. */
export function* renderPage(plot: Plot, packing: Pick<Packing, "inflate">): Generator<string> {
  const { head, moves, listing } = plot;
  const drawing = plotDrawing(plot, packing, {
    views: ["top"],
    isAlone: false,
    most: mostOnPaper,
    id: "paper",
  });
  const [before, after] = template(viewOf(head, drawing)).split(dataMark);
  yield before;
  yield `<script type="application/json" id="plot-head">${jsonOf({ ...head, work: shownExtent(head) })}</script>\n`;
  yield* block("plot-moves", moves);
  yield* block("plot-listing", listing);
  yield after;
}

/** No text of a job can end the block that it stands in. */
function jsonOf(value: unknown): string {
  return JSON.stringify(value).replace(/</g, "\\u003c");
}

function* block(id: string, pieces: readonly Uint8Array[]): Generator<string> {
  yield `<script type="text/plain" id="${id}">\n`;
  for (const piece of pieces) yield `${base64(piece)}\n`;
  yield "</script>\n";
}

/** Bytes turned into text at a time: a multiple of 3, so that the parts join. */
const bytesAtOnce = 3 * 8192;

function base64(bytes: Uint8Array): string {
  const parts: string[] = [];
  for (let at = 0; at < bytes.length; at += bytesAtOnce)
    parts.push(btoa(String.fromCharCode(...bytes.subarray(at, at + bytesAtOnce))));
  return parts.join("");
}

function viewOf(head: PlotHead, drawing: string) {
  const { text, isGood } = statusOf(head);
  const { counts, units } = head;
  const isJob = head.shows === "job";
  return {
    name: clean(`Backplot: ${head.name}`),
    title: clean(head.name),
    status: clean(text),
    state: isGood ? (isJob ? "plain" : "good") : "bad",
    counted: `${counts.lines} lines, ${counts.arcs} arcs, ${counts.holes} holes, ${counts.rapids} rapids; ${head.lines} lines of ${isJob ? "the job's moves" : "the program"}`,
    lineIs: isJob ? "Move of the job" : "Block of the program",
    listingTitle: isJob ? "Moves of the job" : "Program",
    style: new Handlebars.SafeString(pageStyle),
    script: plotScript,
    hash: plotScriptHash,
    drawing,
    tools: head.tools.map((tool, index) => {
      const { ink, dashes } = toolMark(index);
      const own = head.operations.filter((operation) => operation.tool === index);
      return {
        ink,
        dashes:
          dashes === ""
            ? "none"
            : dashes
                .split(" ")
                .map((length) => Number(length) / 4)
                .join(" "),
        text: toolText(tool, units),
        operations: own.map(({ id, name }) => clean(`${id} ${name}`)).join("; "),
      };
    }),
    findings: head.marks.map(findingView),
    units,
    extents: [extentView("feed motions", head.cut, units), extentView("all motions drawn", head.all, units)],
    remarks: head.remarks.map(clean),
    cautions: plotCautions,
  };
}

function findingView({ severity, rule, message, where, line, at }: PlotMark, index: number) {
  const said = message.charAt(0).toUpperCase() + message.slice(1);
  const place = [
    where,
    line === 0 ? "" : `line ${line} of the listing`,
    at === undefined ? "no place in the picture" : "",
  ];
  return {
    index,
    number: index + 1,
    severity,
    rule,
    message: clean(said),
    place: clean(place.filter((text) => text !== "").join(", ")),
  };
}

function extentView(name: string, extent: PlotHead["cut"], units: PlotHead["units"]) {
  const places = [0, 1, 2].map((axis) =>
    extent === undefined
      ? "–"
      : `${placeText(extent.min[axis], units)} to ${placeText(extent.max[axis], units)}`,
  );
  return { name, places };
}
