/** The legend: what each ink and dash means, each with a switch. */
import type { PlotHead } from "../plot.ts";
import { placeText } from "../plot.ts";
import { element, make } from "./elements.ts";
import type { Ink, Scheme } from "./palette.ts";
import { css, dashes, inkOf, machineInk, rapidInk } from "./palette.ts";
import type { Drawing, ShownInk } from "./picture.ts";

/** What is switched off, by what is coloured by. */
export interface Shown {
  readonly hidden: Record<Drawing["colourBy"], Set<number>>;
  rapid: boolean;
  machine: boolean;
  boxes: boolean;
}

/** Kinds of cuts, in the order of their looks. */
const kinds = ["lines", "arcs", "holes"];

/** Names of what is coloured by. */
export function namesOf(head: PlotHead, colourBy: Drawing["colourBy"]): string[] {
  if (colourBy === "kind") return kinds;
  if (colourBy === "operation")
    return head.operations.map(({ id, name, tool }) => `${id} ${name}, T${head.tools[tool].number}`);
  return head.tools.map(({ number, kind, diameter, description }) => {
    const size = diameter === 0 ? "diameter not known" : `${placeText(diameter, head.units)} ${head.units}`;
    return `T${number} ${kind}, ${size}${description === "" || description === kind ? "" : `, ${description}`}`;
  });
}

/** Inks as they are drawn now. */
export function inksOf(
  head: PlotHead,
  colourBy: Drawing["colourBy"],
  shown: Shown,
  scheme: Scheme,
): Pick<Drawing, "inks" | "rapid" | "machine"> {
  const count = namesOf(head, colourBy).length;
  const inks = Array.from({ length: count }, (_, index): ShownInk => {
    return { ...inkOf(index, scheme), isShown: !shown.hidden[colourBy].has(index) };
  });
  return {
    inks,
    rapid: { ...rapidInk(scheme), isShown: shown.rapid },
    machine: { ...machineInk(scheme), isShown: shown.machine },
  };
}

/** Writes the legend anew. */
export function showLegend(
  head: PlotHead,
  colourBy: Drawing["colourBy"],
  shown: Shown,
  scheme: Scheme,
  changed: () => void,
): void {
  const hidden = shown.hidden[colourBy];
  const own = namesOf(head, colourBy).map((name, index) =>
    entry(name, inkOf(index, scheme), !hidden.has(index), (on) => {
      if (on) hidden.delete(index);
      else hidden.add(index);
      changed();
    }),
  );
  const set = (key: "rapid" | "machine" | "boxes") => (on: boolean) => {
    shown[key] = on;
    changed();
  };
  const rest = [
    entry("rapids and ways out of holes", rapidInk(scheme), shown.rapid, set("rapid")),
    ...(head.shows === "job"
      ? []
      : [entry("in machine coordinates", machineInk(scheme), shown.machine, set("machine"))]),
    ...(head.boxes.length === 0
      ? []
      : [entry("stock, fixtures, machine", undefined, shown.boxes, set("boxes"))]),
  ];
  element("legend").replaceChildren(...own, ...rest);
}

function entry(
  name: string,
  ink: Ink | undefined,
  isShown: boolean,
  changed: (on: boolean) => void,
): HTMLElement {
  const item = make("li", "");
  const label = make("label", "");
  const box = make("input", "");
  box.type = "checkbox";
  box.checked = isShown;
  box.addEventListener("change", () => changed(box.checked));
  label.append(box, sample(ink), document.createTextNode(name));
  item.append(label);
  return item;
}

function sample(ink: Ink | undefined): SVGElement {
  const space = "http://www.w3.org/2000/svg";
  const svg = document.createElementNS(space, "svg");
  svg.setAttribute("viewBox", "0 0 44 12");
  svg.setAttribute("class", "sample");
  svg.setAttribute("aria-hidden", "true");
  const line = document.createElementNS(space, ink === undefined ? "rect" : "path");
  const look =
    ink === undefined
      ? { x: "8", y: "2", width: "28", height: "8", fill: "none", stroke: "currentColor" }
      : lookOf(ink);
  for (const [name, value] of Object.entries(look)) line.setAttribute(name, value);
  svg.append(line);
  return svg;
}

function lookOf(ink: Ink): Record<string, string> {
  return {
    d: "M0 6h44",
    stroke: css(ink),
    "stroke-width": "2.5",
    "stroke-dasharray": dashes[ink.dash].join(" ") || "none",
    fill: "none",
  };
}
