import { axes, microDegreesPerTurn, milliPerRpm } from "#base";
import type { Plane } from "#base";
import { codeAt, gearNumbers, readCodes } from "./code-keys.ts";
import type { Format } from "./dialect.ts";
import type { VariableFormat } from "./variable-format.ts";
import { resolvePage } from "./page-template.ts";
import { rapidFeed } from "./rapid-feed.ts";
import { resolveNumbers } from "./resolve-numbers.ts";
import type { Resolving } from "./resolving.ts";
import type { TreeNode } from "./tree.ts";
import { isNone, nodeAt } from "./tree.ts";
import { angle, blockDeleteMark, length, number, speed, word, wordOrNone, yes } from "./values.ts";

/** The parts of the format that idioms and `codes` add. */
type IdiomParts = Pick<Format, "idioms" | "extraCodes">;

/** Everything that shapes text. Keys that each program needs are findings where no file states them. */
export function resolveFormat(resolving: Resolving, idioms: IdiomParts): Format {
  const { tree } = resolving;
  return {
    ...resolveFile(resolving),
    ...resolveBlocks(resolving),
    numbers: resolveNumbers(resolving),
    modal: resolveModal(resolving),
    motion: resolveMotion(resolving),
    unitsIn: choice(resolving, "units.programs-in"),
    unitsStated: choice(resolving, "units.stated"),
    distance: choice(resolving, "distance.programs-in"),
    codes: readCodes(tree),
    arc: resolveArc(resolving),
    dwell: resolveDwell(resolving),
    cycles: resolveCycles(resolving),
    ...resolveSpindleAndTools(resolving),
    speedUnit: resolveSpeedUnit(resolving),
    gears: gearRanges(tree),
    coolantBlocks: choice(resolving, "coolant.blocks"),
    cancelsBeforeChange: flag(resolving, "cancel.before-change"),
    ...resolveStops(resolving),
    compensationWord: letterOrNull(tree, "compensation.word"),
    toleranceWord: letterOrNull(tree, "path.tolerance-word"),
    referenceIntermediate: wordOrNone<"incremental-zero">(tree, "machine.retract.intermediate"),
    waitValues: resolveWaitValues(resolving),
    header: resolvePage(resolving, "idioms.header"),
    footer: resolvePage(resolving, "idioms.footer"),
    ...idioms,
  };
}

function choice<T extends string>(resolving: Resolving, path: string): T {
  const value = wordOrNone<T>(resolving.tree, path) as T | undefined;
  return resolving.need(value, path);
}

function flag(resolving: Resolving, path: string): boolean {
  return choice<"yes" | "no">(resolving, path) === "yes";
}

function count(resolving: Resolving, path: string): number {
  return resolving.need(number(resolving.tree, path), path);
}

const lineEnds = { lf: "\n", crlf: "\r\n", cr: "\r" } as const;
const blockEnds = { none: "", semicolon: ";", asterisk: "*" } as const;
const separators = { none: "", blank: " ", tab: "\t" } as const;

type FileParts = Pick<
  Format,
  | "extension"
  | "lineEnd"
  | "lastLineEnd"
  | "byteOrderMark"
  | "leader"
  | "blankLines"
  | "blockEnd"
  | "delimiter"
  | "programNumber"
  | "characters"
  | "comments"
>;

function resolveFile(resolving: Resolving): FileParts {
  return {
    extension: choice(resolving, "file.extension"),
    lineEnd: lineEnds[choice<keyof typeof lineEnds>(resolving, "file.line-end")],
    lastLineEnd: flag(resolving, "file.last-line-end"),
    byteOrderMark: flag(resolving, "file.byte-order-mark"),
    leader: count(resolving, "file.leader"),
    blankLines: choice(resolving, "file.blank-lines"),
    blockEnd: blockEnds[choice<keyof typeof blockEnds>(resolving, "file.end-of-block")],
    delimiter: choice(resolving, "file.delimiter"),
    programNumber: resolveProgramNumber(resolving),
    characters: choice(resolving, "file.characters"),
    comments: {
      style: choice(resolving, "comments.style"),
      longest: count(resolving, "comments.longest"),
      place: choice(resolving, "comments.place"),
    },
  };
}

function resolveProgramNumber(resolving: Resolving): Format["programNumber"] {
  const path = "file.program-number";
  const node = resolving.need(nodeAt(resolving.tree, path), path);
  if (node === undefined || isNone(node)) return null;
  return {
    letter: choice(resolving, `${path}.letter`),
    digits: count(resolving, `${path}.digits`),
    from: count(resolving, `${path}.from`),
    to: count(resolving, `${path}.to`),
  };
}

type BlockParts = Pick<
  Format,
  | "blockNumber"
  | "sections"
  | "separator"
  | "order"
  | "longest"
  | "mostWords"
  | "gWords"
  | "mWords"
  | "modes"
  | "blockDelete"
  | "optionalStopMark"
  | "stopsAct"
  | "executes"
  | "variables"
>;

function resolveBlocks(resolving: Resolving): BlockParts {
  const order = nodeAt(resolving.tree, "blocks.order");
  const letters =
    order?.kind === "list"
      ? order.items.map((item) => (item.kind === "scalar" ? String(item.value) : ""))
      : undefined;
  return {
    blockNumber: resolveBlockNumber(resolving),
    separator: separators[choice<keyof typeof separators>(resolving, "blocks.separator")],
    order: resolving.need(letters, "blocks.order"),
    sections: {
      beginAt: choice(resolving, "blocks.sections.begin-at"),
      mark: choice(resolving, "blocks.sections.mark") === "N" ? "N" : ":",
      comments: flag(resolving, "blocks.sections.comments"),
      modes: choice(resolving, "blocks.sections.modes"),
    },
    longest: limit(resolving, "blocks.longest"),
    mostWords: limit(resolving, "blocks.most-words"),
    gWords: choice(resolving, "blocks.g-words"),
    mWords: count(resolving, "blocks.m-words"),
    modes: choice(resolving, "blocks.modes"),
    blockDelete: resolveBlockDelete(resolving),
    optionalStopMark: blockDeleteMark(resolving.tree, "stops.optional"),
    stopsAct: choice(resolving, "blocks.stops-act"),
    executes: choice(resolving, "blocks.executes"),
    variables: resolveVariables(resolving),
  };
}

/** Only programs from elsewhere have any of it, so that a dialect need not state it to be posted with. */
function resolveVariables({ tree }: Resolving): Format["variables"] {
  const parameters = wordOrNone<VariableFormat["parameters"]>(tree, "variables.parameters");
  const control = wordOrNone<VariableFormat["control"]>(tree, "variables.control");
  const nesting = number(tree, "variables.nesting");
  if (parameters === undefined || control === undefined || nesting === undefined) return undefined;
  return { parameters, control, nesting };
}

/** A number, or `none` for no limit, which is 0. */
function limit(resolving: Resolving, path: string): number {
  return choice(resolving, path) === "none" ? 0 : count(resolving, path);
}

function resolveBlockDelete(resolving: Resolving): Format["blockDelete"] {
  const mark = choice<"none" | "slash" | "numbered">(resolving, "blocks.delete.mark");
  return mark === "none" ? null : { mark, place: choice(resolving, "blocks.delete.place") };
}

function resolveBlockNumber(resolving: Resolving): Format["blockNumber"] {
  const path = "blocks.number";
  const node = resolving.need(nodeAt(resolving.tree, path), path);
  if (node === undefined || isNone(node)) return null;
  return {
    on: choice(resolving, `${path}.on`),
    start: count(resolving, `${path}.start`),
    step: count(resolving, `${path}.step`),
    to: count(resolving, `${path}.to`),
    width: count(resolving, `${path}.width`),
  };
}

function resolveModal(resolving: Resolving): Format["modal"] {
  return {
    motion: choice(resolving, "modal.motion"),
    axes: choice(resolving, "modal.axes"),
    arcEnd: choice(resolving, "modal.arc-end"),
    arcCentre: choice(resolving, "modal.arc-centre"),
    feed: choice(resolving, "modal.feed"),
    speed: choice(resolving, "modal.speed"),
  };
}

function resolveMotion(resolving: Resolving): Format["motion"] {
  return {
    letters: Object.fromEntries(
      axes.map((axis) => [axis, choice(resolving, `axes.${axis}`)]),
    ) as Format["motion"]["letters"],
    rapidFeed: resolving.need(rapidFeed(resolving.tree), "motion.rapid-feed"),
    rapidAxes: choice(resolving, "motion.rapid-axes"),
    axesAtOnce: count(resolving, "motion.axes-at-once"),
    machineMoveLasts: choice(resolving, "motion.machine-move-lasts"),
    inverseTimeUnit: word<"per-minute" | "per-second">(resolving.tree, "feed.inverse-time-unit"),
  };
}

/** The planes in which arcs are declared; `none` for the whole group declares none. */
export function arcPlanes(tree: TreeNode): readonly Plane[] | undefined {
  const node = nodeAt(tree, "arc.planes");
  if (node?.kind !== "list") return undefined;
  return node.items.map((item) => (item.kind === "scalar" ? String(item.value) : "")) as Plane[];
}

/** How arcs are said. `arc: none` is the short form of `arc: { form: none }`. */
export function arcForm(tree: TreeNode): Format["arc"]["form"] {
  return wordOrNone<"incremental-centre" | "absolute-centre" | "radius">(tree, "arc.form");
}

function resolveArc(resolving: Resolving): Format["arc"] {
  const { tree } = resolving;
  const form = arcForm(tree);
  const radiusWord = word(tree, "arc.radius-word");
  return {
    form,
    radiusWord: form === "radius" ? resolving.need(radiusWord, "arc.radius-word") : (radiusWord ?? ""),
    turnsWord: word(tree, "arc.turns-word") ?? null,
    helix: yes(tree, "arc.helix"),
    fullCircle: yes(tree, "arc.full-circle"),
    largestSweep: largestSweep(tree),
    quadrants: word<"any" | "one">(tree, "arc.quadrants"),
    planes: arcPlanes(tree),
  };
}

/** Largest sweep of one block in micro-degrees. */
export function largestSweep(tree: TreeNode): number | undefined {
  const value = angle(tree, "arc.largest-sweep");
  return value === undefined ? undefined : Math.min(value, microDegreesPerTurn);
}

function resolveDwell(resolving: Resolving): Format["dwell"] {
  const letter = word(resolving.tree, "dwell.word");
  const unit = word<"s" | "ms" | "rev">(resolving.tree, "dwell.unit");
  const blocks = word<"apart" | "with-start">(resolving.tree, "dwell.blocks");
  if (letter === undefined || unit === undefined || blocks === undefined) return undefined;
  return { word: letter, unit, blocks };
}

function resolveCycles(resolving: Resolving): Format["cycles"] {
  const { tree } = resolving;
  const node = nodeAt(tree, "cycles");
  if (node === undefined || isNone(node)) return undefined;
  return {
    repeat: choice(resolving, "cycles.repeat"),
    levels: choice(resolving, "cycles.levels"),
    retractWord: choice(resolving, "cycles.words.retract"),
    peckWord: choice(resolving, "cycles.words.peck"),
    dwellWord: choice(resolving, "cycles.words.dwell"),
    dwellUnit: choice(resolving, "cycles.words.dwell-unit"),
    levelWithout: word<"retract" | "initial">(tree, "cycles.return.without"),
    backOff: {
      peck: length(tree, "cycles.back-off.peck"),
      chipBreak: length(tree, "cycles.back-off.chip-break"),
    },
    backOffWord: noneOrLetter(resolving, "cycles.words.back-off"),
    repeatWord: noneOrLetter(resolving, "cycles.words.repeat"),
    definition: choice(resolving, "cycles.definition"),
    positions: choice(resolving, "cycles.positions"),
    initialLevel: choice(resolving, "cycles.initial-level"),
    alongZ: choice<"z" | "plane-normal">(resolving, "cycles.axis") === "z",
    tapLead: choice<"lead" | "feed-mode">(resolving, "cycles.tap-feed") === "lead",
    endedBy: choice(resolving, "cycles.ended-by"),
  };
}

function noneOrLetter(resolving: Resolving, path: string): string | null {
  const value = choice(resolving, path);
  return value === "none" ? null : value;
}

function resolveSpindleAndTools(resolving: Resolving): Pick<Format, "spindle" | "tools" | "lengthOffset"> {
  const { tree } = resolving;
  const order = word<"speed-first" | "start-first">(tree, "spindle.order");
  const spindleBlocks = word<"together" | "apart">(tree, "spindle.blocks");
  const toolBlocks = word<"together" | "apart">(tree, "tools.blocks");
  const toolOrder = word<"select-first" | "change-first">(tree, "tools.order");
  const form = wordOrNone<"with-first-z" | "own-block" | "in-tool-word">(tree, "machine.length-offset.form");
  return {
    spindle:
      order === undefined || spindleBlocks === undefined ? undefined : { order, blocks: spindleBlocks },
    tools:
      toolBlocks === undefined || toolOrder === undefined
        ? undefined
        : { blocks: toolBlocks, order: toolOrder, ...resolveToolWords(resolving) },
    lengthOffset: form === undefined ? undefined : { form, ...resolveLengthWords(tree) },
  };
}

type ToolWords = Pick<NonNullable<Format["tools"]>, "preselect" | "changedBy" | "named" | "empty">;

function resolveToolWords(resolving: Resolving): ToolWords {
  const { tree } = resolving;
  const inSwap = flag(resolving, "tools.in-operator-swap");
  choice(resolving, "tools.empty");
  return {
    preselect: yes(tree, "tools.preselect"),
    changedBy: word(tree, "tools.change") === "with-tool-word" ? "tool-word" : "code",
    named: inSwap || word(tree, "machine.swap") !== "operator",
    empty: number(tree, "tools.empty"),
  };
}

/** The words of the length offset; where the dialect has none, nothing reads what stands here. */
function resolveLengthWords(tree: TreeNode): Omit<NonNullable<Format["lengthOffset"]>, "form"> {
  const off = word(tree, "length-offset.off");
  return {
    word: word(tree, "length-offset.word") ?? "",
    added: number(tree, "length-offset.added") ?? 0,
    free: word(tree, "length-offset.number") !== "tool",
    cancelledBy: off !== undefined && /^[^GM]0$/.test(off) ? "number" : "code",
  };
}

function resolveStops(resolving: Resolving): Pick<Format, "stops"> {
  flag(resolving, "stops.end-resets");
  return {
    stops: {
      comment: choice(resolving, "stops.comment"),
      resume: choice(resolving, "stops.resume"),
    },
  };
}

function resolveSpeedUnit(resolving: Resolving): number {
  const { tree, need } = resolving;
  choice(resolving, "spindle.speed-unit");
  const gears = need(nodeAt(tree, "spindle.gears"), "spindle.gears");
  for (let number = 1; gears?.kind === "list" && number <= gears.items.length; number++)
    for (const key of ["code", "from", "to"])
      need(nodeAt(tree, `spindle.gears.${number}.${key}`), `spindle.gears.${number}.${key}`);
  return need(speedUnit(tree), "spindle.full-speed");
}

/**
 * Milli-rpm in 1 of the S word; undefined for hundredths of a full speed that no file states. It is not the highest speed that
 * the machine is allowed: lowering that must not change what S means.
 */
export function speedUnit(tree: TreeNode): number | undefined {
  if (word(tree, "spindle.speed-unit") !== "percent") return milliPerRpm;
  const most = speed(tree, "spindle.full-speed");
  return most === undefined ? undefined : most / 100;
}

/** The gear ranges of the spindle. */
export function gearRanges(tree: TreeNode): Format["gears"] {
  return gearNumbers.flatMap((number) => {
    const path = `spindle.gears.${number}`;
    const found = codeAt(tree, `${path}.code`);
    const [from, to] = [speed(tree, `${path}.from`), speed(tree, `${path}.to`)];
    return found && from !== undefined && to !== undefined ? [{ code: found, from, to }] : [];
  });
}

/** A letter; null where the file says `none`, for the key or the group. */
function letterOrNull(tree: TreeNode, path: string): string | null | undefined {
  const value = wordOrNone(tree, path);
  return value === "none" ? null : value;
}

function resolveWaitValues(resolving: Resolving): Format["waitValues"] {
  const { tree } = resolving;
  const on = number(tree, "wait.on");
  const off = number(tree, "wait.off");
  const timeoutUnit = word<"s" | "ms">(tree, "wait.timeout-unit");
  return on === undefined || off === undefined || timeoutUnit === undefined
    ? undefined
    : { on, off, timeoutUnit };
}
