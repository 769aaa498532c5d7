import type {
  Axis,
  ByLinearAxis,
  CoolantMedium,
  DynamicsFacts,
  Effects,
  LengthOffsetFacts,
  MachineFacts,
  NamedBox,
  OutputFacts,
  RetractFacts,
  Signal,
  SignalName,
  SpindleFacts,
  UnitSystem,
} from "#base";
import { atomsPerInch, axes } from "#base";
import { codeAt } from "./code-keys.ts";
import { resolveDrawbar, resolveRack } from "./resolve-rack.ts";
import type { Resolving } from "./resolving.ts";
import { must } from "./resolving.ts";
import { statableSteps } from "./statable.ts";
import type { ScalarNode, TreeNode } from "./tree.ts";
import { isNone, nodeAt, walkTree } from "./tree.ts";
import {
  acceleration,
  feed,
  length,
  lengths,
  number,
  parseLength,
  place,
  scaled,
  speed,
  time,
  word,
  wordOrNone,
  yes,
} from "./values.ts";

/** Parts of the machine facts that need the template and expression parsers. */
type ParsedParts = Pick<MachineFacts, "confirm" | "opaqueEffects">;

/** Facts of the machine; a group that is stated in part only is a finding. */
export function resolveMachine(resolving: Resolving, parsed: ParsedParts): MachineFacts {
  const { tree } = resolving;
  return {
    declared: isDeclared(tree),
    unsaid: isDeclared(tree) ? unsaidOf(tree) : [],
    countsIn: countsIn(tree),
    statable: statableSteps(tree),
    travel: resolveTravel(tree),
    spindle: resolveSpindle(tree),
    confirm: parsed.confirm,
    onTimeout: word<"alarm" | "continues">(tree, "machine.waits.on-timeout"),
    endResets: yes(tree, "stops.end-resets"),
    offWords: coolantMedia.filter((medium) => Boolean(codeAt(tree, `coolant.off.${medium}`))),
    signals: resolveSignals(resolving),
    afterStop: word<"keeps-modes" | "loses-modes">(tree, "stops.resume"),
    retract: resolveRetract(resolving),
    lengthOffset: resolveLengthOffset(resolving),
    lengths: word<"table" | "measured" | "operator">(tree, "machine.lengths"),
    swap: wordOrNone<"controller" | "rack" | "operator">(tree, "machine.swap"),
    changeEffects: resolveEffects(resolving, "machine.change-effects"),
    cyclesAlongZ: word(tree, "cycles.axis") === "z",
    endsEmpty: word(tree, "machine.swap") === "controller" && word(tree, "tools.empty") !== undefined,
    opaqueEffects: parsed.opaqueEffects,
    drawbar: resolveDrawbar(resolving),
    rack: resolveRack(resolving),
    park: resolvePark(tree),
    outputs: resolveOutputs(resolving),
    hood: yes(tree, "machine.hood") ?? false,
    keepOut: resolveKeepOut(resolving),
    tapping: resolveTapping(resolving),
    feed: { least: feed(tree, "machine.feed.least") ?? 0, most: feed(tree, "machine.feed.most") ?? Infinity },
    axisFeed: byAxis(tree, "machine.axis-feed", feed),
    dynamics: resolveDynamics(tree),
    rapids: word<"straight" | "dog-leg">(tree, "motion.rapids"),
    rapidAxes: word<"together" | "one-at-a-time">(tree, "motion.rapid-axes"),
    machineMoveLasts: word<"block" | "until-work-offset">(tree, "motion.machine-move-lasts"),
    arcTolerance: resolveArcTolerance(resolving),
  };
}

function isDeclared(tree: TreeNode): boolean {
  return nodeAt(tree, "machine.travel") !== undefined || nodeAt(tree, "machine.spindle") !== undefined;
}

/** What any machine has and a usual job is checked against; without it the check does not take place. */
const ownFacts = [
  ...["x", "y", "z"].map((axis) => `machine.travel.${axis}`),
  ...["min-rpm", "max-rpm"].map((limit) => `machine.spindle.${limit}`),
];

/** What a dialect without a machine states, too, so that a leaf inherits it whether it is true of the machine or not. */
const inheritedFacts = ["confirm.at-speed", "confirm.stopped"];

/** A dialect without a machine is behind the last file of the chain that states travel or spindle. */
function unsaidOf(tree: TreeNode): string[] {
  const files: number[] = [];
  for (const group of ["machine.travel", "machine.spindle"]) {
    const node = nodeAt(tree, group);
    if (node !== undefined) walkTree(node, (_, { origin }) => files.push(origin.file));
  }
  const last = Math.max(...files);
  const isForeign = (key: string): boolean => {
    const node = nodeAt(tree, key);
    let foreign = node !== undefined;
    if (node !== undefined)
      walkTree(node, (_, part) => {
        if (part.kind !== "mapping" && part.origin.file <= last) foreign = false;
      });
    return foreign;
  };
  return [...ownFacts.filter((key) => nodeAt(tree, key) === undefined), ...inheritedFacts.filter(isForeign)];
}

function countsIn(tree: TreeNode): MachineFacts["countsIn"] {
  const said = word<"job" | UnitSystem>(tree, "units.programs-in");
  return said === "job" ? undefined : said;
}

function resolveTravel(tree: TreeNode): MachineFacts["travel"] {
  const travel: Partial<Record<Axis, readonly [number, number]>> = {};
  for (const axis of axes) {
    const node = nodeAt(tree, `machine.travel.${axis}`);
    if (node?.kind !== "list") continue;
    const rotary = axis === "a" || axis === "b" || axis === "c";
    const read = (item: ScalarNode): number => (rotary ? scaled(item.source, 1_000_000) : parseLength(item));
    travel[axis] = [read(node.items[0] as ScalarNode), read(node.items[1] as ScalarNode)];
  }
  return travel;
}

function resolveSpindle(tree: TreeNode): SpindleFacts {
  return {
    minRpm: speed(tree, "machine.spindle.min-rpm"),
    maxRpm: speed(tree, "machine.spindle.max-rpm"),
    spinUp: time(tree, "machine.spindle.spin-up"),
    spinDown: time(tree, "machine.spindle.spin-down"),
    coastDown: time(tree, "machine.spindle.coast-down"),
    orient: yes(tree, "machine.spindle.orient") ?? false,
  };
}

const coolantMedia = ["mist", "flood", "air", "through-tool"] as const satisfies readonly CoolantMedium[];

const signalNames = [
  "at-speed",
  "stopped",
  "released",
  "clamped",
  "tool-present",
  "air",
  "hold-down",
] as const satisfies readonly SignalName[];

/** `stopped: 5` is input 5, on; the long form may state the level and the time that the old state needs to fall off. */
function resolveSignals(resolving: Resolving): MachineFacts["signals"] {
  const { tree } = resolving;
  const signals: Partial<Record<SignalName, Signal>> = {};
  for (const name of signalNames) {
    const path = `machine.signals.${name}`;
    const node = nodeAt(tree, path);
    if (node === undefined || isNone(node)) continue;
    signals[name] = {
      input: must(resolving, number, node.kind === "mapping" ? `${path}.input` : path),
      level: word<"on" | "off">(tree, `${path}.level`) ?? "on",
      settle: time(tree, `${path}.settle`) ?? 0,
    };
  }
  return signals;
}

function resolveRetract(resolving: Resolving): RetractFacts | undefined {
  const path = "machine.retract";
  if (nodeAt(resolving.tree, path)?.kind !== "mapping") return undefined;
  const by = must(resolving, word<RetractFacts["by"]>, `${path}.by`);
  const change = place(resolving.tree, `${path}.change-position`);
  return {
    by,
    z: by === "machine-move" ? must(resolving, length, `${path}.z`) : 0,
    actsOn: must(resolving, word<RetractFacts["actsOn"]>, `${path}.acts-on`),
    cancelLengthFirst: must(resolving, yes, `${path}.cancel-length-first`),
    intermediate: must(resolving, wordOrNone<"incremental-zero">, `${path}.intermediate`),
    changePosition: change === undefined ? undefined : { x: change[0], y: change[1], z: change[2] },
  };
}

function resolveLengthOffset(resolving: Resolving): LengthOffsetFacts | undefined {
  const path = "machine.length-offset";
  if (nodeAt(resolving.tree, path)?.kind !== "mapping") return undefined;
  return {
    form: must(resolving, wordOrNone<LengthOffsetForm>, `${path}.form`),
    selectMoves: must(resolving, yes, `${path}.select-moves`),
    cancelMoves: must(resolving, yes, `${path}.cancel-moves`),
  };
}

type LengthOffsetForm = "with-first-z" | "own-block" | "in-tool-word";

/** What a code does besides; undefined where the group is not stated at all. */
export function resolveEffects(resolving: Resolving, path: string): Effects | undefined {
  if (nodeAt(resolving.tree, path)?.kind !== "mapping") return undefined;
  const effect = <T extends string>(name: string): T => must(resolving, word<T>, `${path}.${name}`);
  return {
    position: effect("position"),
    spindle: effect("spindle"),
    coolant: effect("coolant"),
    lengthOffset: effect("length-offset"),
  };
}

function resolvePark(tree: TreeNode): MachineFacts["park"] {
  const values = lengths(tree, "machine.park");
  return values === undefined ? undefined : { x: values[0], y: values[1] };
}

function resolveOutputs(resolving: Resolving): OutputFacts[] {
  const node = nodeAt(resolving.tree, "machine.outputs");
  if (node?.kind !== "mapping") return [];
  return [...node.entries.keys()].map((name) => ({
    name,
    number: must(resolving, number, `machine.outputs.${name}.number`),
    during: must(resolving, word<OutputFacts["during"]>, `machine.outputs.${name}.during`),
  }));
}

function resolveKeepOut(resolving: Resolving): NamedBox[] {
  const node = nodeAt(resolving.tree, "machine.keep-out");
  if (node?.kind !== "list") return [];
  return node.items.map((_, index) => {
    const path = `machine.keep-out.${index + 1}`;
    return {
      name: must(resolving, word, `${path}.name`),
      min: must(resolving, place, `${path}.min`),
      max: must(resolving, place, `${path}.max`),
    };
  });
}

function resolveTapping(resolving: Resolving): MachineFacts["tapping"] {
  const path = "machine.tapping";
  if (nodeAt(resolving.tree, path) === undefined) return undefined;
  const kind = must(resolving, wordOrNone<"floating" | "synchronised">, `${path}.kind`);
  if (kind === "none") return { kind, reversal: 0, longhand: false };
  const floating = kind === "floating";
  return {
    kind,
    reversal: floating ? must(resolving, time, `${path}.reversal`) : 0,
    longhand: must(resolving, yes, `${path}.longhand`),
  };
}

/** What a group says for each linear axis. */
function byAxis(
  tree: TreeNode,
  path: string,
  read: (tree: TreeNode, path: string) => number | undefined,
): ByLinearAxis {
  const said = (["x", "y", "z"] as const).flatMap((axis) => {
    const value = read(tree, `${path}.${axis}`);
    return value === undefined ? [] : [[axis, value] as const];
  });
  return Object.fromEntries(said);
}

function resolveDynamics(tree: TreeNode): DynamicsFacts {
  const blending = nodeAt(tree, "machine.blending");
  return {
    rapidRate: byAxis(tree, "machine.rapid-rate", feed),
    acceleration: byAxis(tree, "machine.acceleration", acceleration),
    blending: blending !== undefined && isNone(blending) ? 0 : length(tree, "machine.blending"),
    controllerSwap: time(tree, "machine.swap-time.controller"),
    operatorSwap: time(tree, "machine.swap-time.operator"),
  };
}

function resolveArcTolerance(resolving: Resolving): MachineFacts["arcTolerance"] {
  const path = "arc.tolerance";
  if (nodeAt(resolving.tree, path)?.kind !== "mapping") return undefined;
  return {
    mm: must(resolving, length, `${path}.mm`),
    inch: Math.round(must(resolving, number, `${path}.inch`) * atomsPerInch),
    relative: must(resolving, number, `${path}.relative`),
  };
}

/** Origins of work offsets in machine coordinates, atoms; index is the number of the offset. */
export function resolveWorkZero(tree: TreeNode): ([number, number, number] | undefined)[] {
  return Array.from({ length: 10 }, (_, offset) => place(tree, `machine.work-zero.${offset}`));
}
