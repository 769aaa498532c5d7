/** A way to write programs by hand, drawn axis by axis; names and values are those of the dialect keys where there are such. */
export interface Style {
  readonly "file.line-end": "lf" | "crlf";
  readonly "file.last-line-end": "yes" | "no";
  readonly "file.end-of-block": "none" | "semicolon" | "asterisk";
  readonly "file.delimiter": "percent" | "none";
  readonly "file.program-number": "none" | "O" | ":";
  readonly "comments.style": "parentheses" | "semicolon";
  readonly "blocks.number": "none" | "all-10" | "all-5-wide" | "all-1";
  readonly "blocks.separator": "none" | "blank" | "tab";
  readonly "blocks.order": string;
  readonly "blocks.modes": "together" | "apart";
  readonly "numbers.point": "always" | "when-needed";
  readonly "numbers.trailing-zeros": "keep" | "drop" | "one";
  readonly "numbers.leading-zero": "keep" | "drop";
  readonly "numbers.plus": "yes" | "no";
  readonly "numbers.length.mm": 2 | 3 | 4;
  readonly "numbers.feed-per-minute.mm": 0 | 1;
  readonly "numbers.code-width.G": 1 | 2;
  readonly "numbers.code-width.M": 1 | 2;
  readonly "numbers.code-width.T": 1 | 2;
  readonly "numbers.code-width.H": 1 | 2;
  readonly "modal.motion": "modal" | "each-block";
  readonly "modal.axes": "changed" | "all";
  readonly "modal.arc-end": "changed" | "both";
  readonly "modal.arc-centre": "non-zero" | "both";
  readonly "modal.feed": "modal" | "after-rapid" | "each-block";
  readonly "units.mm": "G21" | "G71";
  readonly "units.stated": "with-modes" | "first-block";
  readonly "distance.programs-in": "absolute" | "incremental";
  readonly "motion.rapid-axes": "together" | "one-at-a-time";
  readonly "machine.retract.by": "machine-move" | "reference-return";
  /** Whether G91 shares the block of a return to the reference position; no key says so. */
  readonly returns: "apart" | "together";
  readonly "arc.form": "incremental-centre" | "absolute-centre" | "radius";
  readonly "arc.full-circle": "yes" | "no";
  readonly "arc.quadrants": "any" | "one";
  readonly "dwell.word": "P" | "X";
  readonly "dwell.unit": "s" | "ms";
  readonly "spindle.order": "speed-first" | "start-first";
  readonly "spindle.blocks": "together" | "apart";
  readonly "tools.blocks": "together" | "apart";
  readonly "tools.order": "select-first" | "change-first";
  readonly "tools.preselect": "yes" | "no";
  readonly "machine.length-offset.form": "with-first-z" | "own-block";
  readonly "length-offset.added": 0 | 20;
  readonly "cycles.repeat": "positions" | "all";
  readonly "cycles.positions": "changed" | "both";
  readonly "cycles.definition": "with-first-hole" | "apart";
  readonly "cycles.levels": "absolute" | "relative";
  readonly "cycles.words.peck": "Q" | "K";
  readonly "stops.end": "M30" | "M02";
}

/** The axes that a style is drawn from: section and number of the list in DEVELOPERS.md, key, ways. */
const axes: readonly {
  readonly axis: number;
  readonly key: keyof Style;
  readonly ways: readonly (string | number)[];
}[] = [
  { axis: 2, key: "file.line-end", ways: ["lf", "crlf"] },
  { axis: 2, key: "file.last-line-end", ways: ["yes", "yes", "no"] },
  { axis: 3, key: "file.end-of-block", ways: ["none", "none", "semicolon", "asterisk"] },
  { axis: 4, key: "file.delimiter", ways: ["percent", "none"] },
  { axis: 5, key: "file.program-number", ways: ["none", "O", ":"] },
  { axis: 7, key: "stops.end", ways: ["M30", "M02"] },
  { axis: 11, key: "blocks.number", ways: ["none", "all-10", "all-5-wide", "all-1"] },
  { axis: 15, key: "blocks.separator", ways: ["none", "blank", "blank", "tab"] },
  { axis: 16, key: "blocks.order", ways: ["NGXYZIJKRPQLFSTHDM", "NGFXYZIJKRPQLSTHDM", "NMGXYZIJKRPQLFSTHD", "NGXYZRPQIJKLHDFSTM", "NGHDXYZIJKRPQLSFTM"] }, // prettier-ignore
  { axis: 22, key: "comments.style", ways: ["parentheses", "semicolon"] },
  { axis: 28, key: "numbers.point", ways: ["always", "when-needed"] },
  { axis: 30, key: "numbers.length.mm", ways: [2, 3, 4] },
  { axis: 31, key: "numbers.feed-per-minute.mm", ways: [0, 1] },
  { axis: 32, key: "numbers.trailing-zeros", ways: ["keep", "drop", "one"] },
  { axis: 33, key: "numbers.leading-zero", ways: ["keep", "drop"] },
  { axis: 34, key: "numbers.plus", ways: ["no", "no", "yes"] },
  { axis: 36, key: "numbers.code-width.G", ways: [1, 2] },
  { axis: 36, key: "numbers.code-width.M", ways: [1, 2] },
  { axis: 91, key: "numbers.code-width.T", ways: [1, 2] },
  { axis: 36, key: "numbers.code-width.H", ways: [1, 2] },
  { axis: 41, key: "modal.motion", ways: ["modal", "each-block"] },
  { axis: 42, key: "modal.axes", ways: ["changed", "changed", "all"] },
  { axis: 42, key: "modal.arc-end", ways: ["changed", "both"] },
  { axis: 43, key: "modal.arc-centre", ways: ["non-zero", "both"] },
  { axis: 44, key: "modal.feed", ways: ["modal", "after-rapid", "each-block"] },
  { axis: 48, key: "units.mm", ways: ["G21", "G71"] },
  { axis: 49, key: "units.stated", ways: ["with-modes", "first-block"] },
  { axis: 50, key: "distance.programs-in", ways: ["absolute", "absolute", "incremental"] },
  { axis: 53, key: "machine.retract.by", ways: ["machine-move", "reference-return"] },
  { axis: 53, key: "returns", ways: ["apart", "together"] },
  { axis: 60, key: "motion.rapid-axes", ways: ["together", "together", "one-at-a-time"] },
  { axis: 64, key: "arc.form", ways: ["incremental-centre", "absolute-centre", "radius"] },
  { axis: 65, key: "arc.quadrants", ways: ["any", "any", "one"] },
  { axis: 66, key: "arc.full-circle", ways: ["yes", "no"] },
  { axis: 74, key: "dwell.word", ways: ["P", "X"] },
  { axis: 74, key: "dwell.unit", ways: ["s", "ms"] },
  { axis: 79, key: "spindle.order", ways: ["speed-first", "start-first"] },
  { axis: 79, key: "spindle.blocks", ways: ["together", "apart"] },
  { axis: 92, key: "tools.blocks", ways: ["together", "apart"] },
  { axis: 92, key: "tools.order", ways: ["select-first", "change-first"] },
  { axis: 93, key: "tools.preselect", ways: ["no", "no", "yes"] },
  { axis: 97, key: "machine.length-offset.form", ways: ["with-first-z", "own-block"] },
  { axis: 98, key: "length-offset.added", ways: [0, 0, 20] },
  { axis: 103, key: "cycles.levels", ways: ["absolute", "absolute", "relative"] },
  { axis: 106, key: "cycles.words.peck", ways: ["Q", "Q", "K"] },
  { axis: 109, key: "cycles.repeat", ways: ["positions", "all"] },
  { axis: 110, key: "cycles.definition", ways: ["with-first-hole", "apart"] },
  { axis: 111, key: "cycles.positions", ways: ["changed", "both"] },
  { axis: 125, key: "blocks.modes", ways: ["together", "apart"] },
];

/** Numbers of the axes of variation that styles differ on. */
export const axesDrawn: readonly number[] = [...new Set(axes.map(({ axis }) => axis))];

/** Draws a style; what cannot stand beside what was drawn gives way. */
export function drawStyle(random: () => number): Style {
  const drawn = Object.fromEntries(
    axes.map(({ key, ways }) => [key, ways[Math.floor(random() * ways.length)]]),
  ) as unknown as Style;
  const style: { -readonly [Key in keyof Style]: Style[Key] } = { ...drawn };
  // A semicolon cannot both end blocks and begin comments.
  if (style["file.end-of-block"] === "semicolon") style["comments.style"] = "parentheses";
  // One quadrant a block goes by centre, and leaves no full circle; a radius has none either.
  if (style["arc.quadrants"] === "one" && style["arc.form"] === "radius") style["arc.quadrants"] = "any";
  if (style["arc.quadrants"] === "one" || style["arc.form"] === "radius") style["arc.full-circle"] = "no";
  // A change code in a block of its own stands behind its tool word; so does one whose tool was chosen beforehand.
  if (style["tools.preselect"] === "yes") style["tools.blocks"] = "apart";
  if (style["tools.blocks"] === "apart") style["tools.order"] = "select-first";
  // Where each hole states all words of its cycle, the first one defines it.
  // So does the code of a cycle at each hole, where motion words stand in each block.
  if (style["cycles.repeat"] === "all" || style["modal.motion"] === "each-block")
    style["cycles.definition"] = "with-first-hole";
  // Absolute centres beside incremental ends are nobody's habit.
  if (style["distance.programs-in"] === "incremental" && style["arc.form"] === "absolute-centre")
    style["arc.form"] = "incremental-centre";
  // Where whole numbers have no point, no zeros are kept behind it; all axes are ends of arcs, too.
  if (style["numbers.point"] === "when-needed") style["numbers.trailing-zeros"] = "drop";
  if (style["modal.axes"] === "all") style["modal.arc-end"] = style["cycles.positions"] = "both";
  // Controllers differ about a retract level that is said again by increments while the tool stands at it.
  if (style["distance.programs-in"] === "incremental") style["cycles.repeat"] = "positions";
  // Where each mode has a block of its own, nothing tells a first block of units from the others.
  if (style["blocks.modes"] === "apart") style["units.stated"] = "with-modes";
  return style;
}
