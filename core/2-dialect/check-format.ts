import type { Dialect, Format } from "./dialect.ts";
import type { Resolving } from "./resolving.ts";
import { isNone, nodeAt } from "./tree.ts";
import { word } from "./values.ts";

/** Keys of the text and of arcs that contradict one another. */
export function checkFormat(resolving: Resolving, { format }: Dialect): void {
  checkFile(resolving, format);
  checkBlockNumbers(resolving, format);
  checkMessage(resolving, format);
  checkRapids(resolving, format);
  checkArcs(resolving, format);
  checkCycles(resolving);
}

function checkFile({ fail }: Resolving, { blockEnd, comments, programNumber, delimiter }: Format): void {
  if (blockEnd === ";" && comments.style === "semicolon") {
    fail(
      "dialect/format",
      "comments.style",
      "`;` ends each block and begins each comment.",
      "Choose another style, or none.",
    );
  }
  if (programNumber === null) return;
  const path = "file.program-number";
  if (programNumber.from > programNumber.to) {
    fail("dialect/format", `${path}.to`, "The highest program number is below the lowest one.");
  }
  if (programNumber.letter === "%" && delimiter === "percent") {
    fail(
      "dialect/format",
      `${path}.letter`,
      "`%` is the program delimiter, and the letter of the program number.",
      "State `delimiter: none`.",
    );
  }
  if (String(programNumber.to).length > programNumber.digits && programNumber.digits > 0) {
    fail(
      "dialect/format",
      `${path}.digits`,
      "The highest program number has more digits than a program number has.",
    );
  }
}

function checkBlockNumbers({ fail }: Resolving, { blockNumber }: Format): void {
  if (blockNumber === null) return;
  if (blockNumber.start + blockNumber.step > blockNumber.to) {
    fail(
      "dialect/format",
      "blocks.number.to",
      "After the highest block number numbers begin again at the first: there is no room for two.",
    );
  }
  if (blockNumber.width > 0 && String(blockNumber.to).length > blockNumber.width) {
    fail("dialect/format", "blocks.number.width", "The highest block number has more digits than `width`.");
  }
}

/** The message's own mark is written as it stands, so it must be made of characters that the controller takes. */
function checkMessage({ fail }: Resolving, { idioms, characters, comments }: Format): void {
  const literal =
    idioms.message?.blocks
      .flat()
      .map((part) => ("literal" in part ? part.literal : ""))
      .join("") ?? "";
  // eslint-disable-next-line no-control-regex
  const outside = characters === "utf-8" ? "" : literal.replace(/[\u0000-\u007f]/g, "");
  if (outside !== "" || (characters === "upper" && literal !== literal.toUpperCase())) {
    fail(
      "dialect/characters",
      "idioms.message",
      `The message's mark has characters that \`file.characters: ${characters}\` does not allow.`,
    );
  }
  if (literal.length + 8 > comments.longest) {
    fail(
      "dialect/format",
      "idioms.message",
      "The message's mark leaves no room for its text in `comments.longest`.",
    );
  }
}

/** A rapid has a code of its own, or is a line at a feed; not both. */
function checkRapids({ fail }: Resolving, { codes, motion }: Format): void {
  if (motion.rapidFeed === null || codes.rapid === null) return;
  const message = "Rapids have a code of their own, and are said to be lines at a feed.";
  fail("dialect/format", "motion.rapid-feed", message, "State `rapid: none`, or `rapid-feed: none`.");
}

function checkArcs({ tree, fail }: Resolving, { arc, codes }: Format): void {
  if (arc.form === "none") return;
  if (arc.form === "radius" && arc.fullCircle === true) {
    fail(
      "dialect/arc",
      "arc.full-circle",
      "A radius cannot say a full circle: its start and end do not tell where the centre is.",
      "State `full-circle: no`.",
    );
  }
  if (arc.fullCircle === true && arc.largestSweep !== undefined && arc.largestSweep < 360_000_000) {
    fail(
      "dialect/arc",
      "arc.full-circle",
      "A full circle is larger than `arc.largest-sweep`.",
      "State `full-circle: no`, or `largest-sweep: 360`.",
    );
  }
  for (const plane of arc.planes ?? []) {
    const inPlane = codes.modes.plane[plane] ?? null;
    if (inPlane === null && plane !== "xy") {
      fail(
        "dialect/arc",
        `plane.${plane}`,
        `Arcs are declared in ${plane}, but no word selects that plane.`,
        `Leave ${plane} out of \`arc.planes\`, or state \`plane.${plane}\`.`,
      );
    }
  }
  checkCentreWords(tree, fail, arc.form);
}

/** Where centres have a mode, the form that the dialect writes must be one that can be stated. */
function checkCentreWords(
  tree: Resolving["tree"],
  fail: Resolving["fail"],
  form: Format["arc"]["form"],
): void {
  const has = (mode: string): boolean => {
    const node = nodeAt(tree, `arc.centre-words.${mode}`);
    return node !== undefined && !isNone(node);
  };
  const [own, other] = form === "absolute-centre" ? ["absolute", "incremental"] : ["incremental", "absolute"];
  if (form === "radius" || form === undefined || !has(other) || has(own)) return;
  const message = `Arc centres are ${own}, but only the word for ${other} ones is stated: nothing puts the mode back.`;
  fail("dialect/arc", `arc.centre-words.${own}`, message);
}

/** A cycle needs to know where the tool goes between holes. */
function checkCycles({ tree, fail }: Resolving): void {
  const node = nodeAt(tree, "cycles");
  if (node === undefined || isNone(node)) return;
  const level = (name: string): boolean => {
    const found = nodeAt(tree, `cycles.return.${name}`);
    return found !== undefined && !isNone(found);
  };
  if (level("initial") || level("retract") || word(tree, "cycles.return.without") !== undefined) return;
  const message = "No word and no key says to which level the tool goes between holes.";
  fail(
    "dialect/undeclared",
    "cycles.return.without",
    message,
    "Add `cycles: { return: { without: retract } }`.",
  );
}
