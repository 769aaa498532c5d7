import type { Dialect, Format } from "./dialect.ts";
import type { Resolving } from "./resolving.ts";
import { stated } from "./resolving.ts";
import { isNone, nodeAt } from "./tree.ts";
import { word } from "./values.ts";

/** Keys of the text and of arcs that contradict one another. */
export function checkFormat(resolving: Resolving, { format }: Dialect): void {
  checkFile(resolving, format);
  checkBlockNumbers(resolving, format);
  checkBlockDelete(resolving, format);
  checkMostWords(resolving, format);
  checkMessage(resolving, format);
  checkStopMessage(resolving, format);
  checkResume(resolving, format);
  checkRapids(resolving, format);
  checkArcs(resolving, format);
  checkCycles(resolving);
  checkCoolant(resolving, format);
  checkGears(resolving, format);
  checkSpeed(resolving, format);
}

function checkFile(
  { fail }: Resolving,
  { blockEnd, comments, programNumber, delimiter, sections, idioms }: Format,
): void {
  if (blockEnd === ";" && comments.style === "semicolon") {
    fail(
      "dialect/format",
      "comments.style",
      "`;` ends each block and begins each comment.",
      "Choose another style, or none.",
    );
  }
  checkSectionComments(fail, sections, comments, idioms);
  if (programNumber === null) return;
  if (programNumber.letter === ":" && sections.mark === ":") {
    fail("dialect/format", "blocks.sections.mark", "A colon marks the program number and each section.");
  }
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

/** Each section comment begins with the word SECTION, which must not be what a message is known by. */
function checkSectionComments(
  fail: Resolving["fail"],
  sections: Format["sections"],
  { style }: Format["comments"],
  { message: idiom }: Format["idioms"],
): void {
  if (!sections.comments) return;
  const key = "blocks.sections.comments";
  if (style === "none")
    fail("dialect/format", key, "Sections have comments, and the dialect has none.", "State `comments: no`.");
  const first = idiom?.blocks[0]?.[0];
  const mark = first && "literal" in first ? first.literal.replace(/[\s(;]/g, "").toUpperCase() : "";
  if (mark === "" || (!mark.startsWith("SECTION") && !"SECTION".startsWith(mark))) return;
  const message =
    "The comment of a section begins with SECTION, by which a message to the operator is known.";
  fail("dialect/format", key, message, "Give messages another mark in `idioms.message`.");
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

/** An optional stop that is a stop with a block delete mark needs that mark, and the code of the stop. */
function checkBlockDelete({ tree, fail }: Resolving, { optionalStopMark, blockDelete, codes }: Format): void {
  const fault = (message: string, fix: string): void =>
    fail("dialect/format", "stops.optional", message, fix);
  if (optionalStopMark === "") return;
  if (blockDelete === null || (optionalStopMark.length > 1 && blockDelete.mark === "slash"))
    fault(
      `\`${optionalStopMark}\` is no block delete mark of this dialect.`,
      "State `blocks: { delete: { mark: slash } }`, or `numbered` for /1 to /9.",
    );
  if (codes.optionalStop?.value !== codes.stop?.value || codes.optionalStop?.letter !== codes.stop?.letter)
    fault(
      "With a block delete mark the optional stop is the stop itself, and has its code.",
      `Write \`optional: ${optionalStopMark} ${word(tree, "stops.stop") ?? "M00"}\`.`,
    );
}

/** The words that each line and each arc has whatever the job is. */
function checkMostWords({ fail }: Resolving, { mostWords, modal, arc }: Format): void {
  const motion = (modal.motion === "each-block" ? 1 : 0) + (modal.feed === "each-block" ? 1 : 0);
  const line = motion + (modal.axes === "all" ? 3 : 1);
  const ends = modal.axes === "all" ? 3 : modal.arcEnd === "both" ? 2 : 1;
  const shape = arc.form === "radius" ? 1 : modal.arcCentre === "both" ? 2 : 1;
  const least = arc.form === "none" || arc.form === undefined ? line : Math.max(line, motion + ends + shape);
  if (mostWords === 0 || least <= mostWords) return;
  const message = `A block of motion has ${least} words, and \`most-words\` leaves ${mostWords}.`;
  fail("dialect/format", "blocks.most-words", message, "State what is repeated under `modal` otherwise.");
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

/** What a stop loses has to be said again behind it: units that stand in the first block alone cannot be. */
function checkResume(resolving: Resolving, { stops, lengthOffset, unitsStated, codes }: Format): void {
  const { fail } = resolving;
  if (stops.resume !== "loses-modes") return;
  const saysUnits = codes.modes.units.mm !== null || codes.modes.units.inch !== null;
  if (unitsStated === "first-block" && saysUnits && (codes.stop !== null || codes.optionalStop !== null)) {
    const message = `A stop loses the units (${stated(resolving, "stops.resume")}), and they are said in the first block alone (${stated(resolving, "units.stated")}): nothing could state them again.`;
    const fix = "State `units: { stated: with-modes }`, or `resume: keeps-modes` if the control keeps them.";
    fail("dialect/format", "stops.resume", message, fix);
  }
  if (lengthOffset?.form !== "in-tool-word") return;
  const message =
    "A stop loses the length offset, which stands in the tool word: nothing could state it again without a swap.";
  fail("dialect/format", "stops.resume", message, "Use a control that keeps its modes over a stop.");
}

/** The block of a stop has to hold the longest message, and to end behind it. */
function checkStopMessage({ fail }: Resolving, format: Format): void {
  const { stops, idioms, comments, blockNumber, longest, separator, blockEnd, numbers } = format;
  if (stops.comment !== "with-stop" || idioms.message === undefined) return;
  if (comments.style === "semicolon" && blockEnd !== "") {
    const message = "The message of a stop would swallow the sign at the end of its block.";
    fail("dialect/format", "stops.comment", message, "State `comment: own-block`.");
  }
  if (comments.place === "own-block") {
    const message = "The message of a stop shares its block, and a comment shares a block with nothing.";
    const fix = "State `stops: { comment: own-block }`, or `comments: { place: anywhere }`.";
    fail("dialect/format", "stops.comment", message, fix);
  }
  const number =
    blockNumber === null
      ? 0
      : 1 + Math.max(String(blockNumber.to).length, blockNumber.width) + separator.length;
  const code = 1 + Math.max(3, numbers.width.M) + separator.length;
  const most = number + code + comments.longest + 2 + blockEnd.length;
  if (longest === 0 || most <= longest) return;
  const message = `A stop with a message of ${comments.longest} characters takes ${most}, more than \`blocks.longest\`.`;
  fail(
    "dialect/format",
    "stops.comment",
    message,
    "State a lower `comments.longest`, or `comment: own-block`.",
  );
}

/** A rapid has a code of its own, or is a line at a feed; not both. */
function checkRapids({ fail }: Resolving, { codes, motion }: Format): void {
  if (motion.rapidFeed === null || codes.rapid === null) return;
  const message = "Rapids have a code of their own, and are said to be lines at a feed.";
  fail("dialect/format", "motion.rapid-feed", message, "State `rapid: none`, or `rapid-feed: none`.");
}

/** What a control cannot do that takes no arc over a quadrant line. */
function checkQuadrants(
  fail: Resolving["fail"],
  { form, quadrants, fullCircle, largestSweep }: Format["arc"],
): void {
  if (quadrants !== "one") return;
  const refuse = (message: string, fix: string): void => {
    fail("dialect/arc", "arc.quadrants", message, fix);
  };
  if (form === "radius")
    refuse(
      "The centre of an arc by its radius follows from its ends and lies beside the grid, so that no end lies on a quadrant line.",
      "State `form: incremental-centre` or `form: absolute-centre` if the controller has one, else `form: none`.",
    );
  if (fullCircle === true)
    refuse("A full circle crosses the quadrant lines.", "State `full-circle: no`, or `quadrants: any`.");
  if (largestSweep !== undefined && largestSweep < 90_000_000)
    refuse(
      "Arcs are split at the quadrant lines, and no further.",
      "State `largest-sweep: 90`, or `quadrants: any`.",
    );
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
  checkQuadrants(fail, arc);
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

/** A range is selected before the speed, and the speed said before the start: the gear must not shift as it turns. */
function checkGears({ fail }: Resolving, { gears, spindle }: Format): void {
  for (const [index, { from, to }] of gears.entries())
    if (from >= to)
      fail(
        "dialect/format",
        `spindle.gears.${index + 1}.to`,
        "The gear range ends where it begins, or below.",
      );
  if (gears.length === 0 || spindle?.order !== "start-first" || spindle.blocks !== "apart") return;
  const message =
    "The spindle is started before its speed, so that its gear would be shifted while it turns.";
  fail("dialect/format", "spindle.gears", message, "State `order: speed-first`, or `blocks: together`.");
}

/** Where the speed comes behind the start, a start alone does not show whether a speed is still to come. */
function checkSpeed({ fail }: Resolving, { modal, spindle }: Format): void {
  if (modal.speed !== "changed" || spindle?.order !== "start-first" || spindle.blocks !== "apart") return;
  const message =
    "The speed is said in a block behind the start, so that a start alone does not say which speed it takes.";
  fail("dialect/format", "modal.speed", message, "State `speed: each-start`.");
}

/** Each medium that can be turned on can be turned off, and words that share a block have room in it. */
function checkCoolant({ tree, fail }: Resolving, { codes, coolantBlocks, mWords }: Format): void {
  if (nodeAt(tree, "coolant.off")?.kind === "mapping")
    for (const [medium, code] of Object.entries(codes.coolant)) {
      const off = `coolant.off.${medium}`;
      const node = nodeAt(tree, off);
      if (!code || (node !== undefined && !isNone(node))) continue;
      const message = `\`coolant.${medium}\` is stated, but no word turns that medium off.`;
      fail("dialect/undeclared", off, message, `State \`${off}\`, or say that there is no ${medium}.`);
    }
  if (coolantBlocks === "together" && mWords < 2) {
    const message = "Coolant words share a block, and a block has one M word.";
    fail("dialect/format", "coolant.blocks", message, "State `blocks: apart`, or more `blocks.m-words`.");
  }
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
