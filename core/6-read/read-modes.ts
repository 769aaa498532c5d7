import type { ModeKind, ModeStep } from "#base";
import { framing } from "./findings-form.ts";
import { letterF, letterN } from "./letters.ts";
import type { Group } from "./modal-groups.ts";
import { planes } from "./planes.ts";
import { refuseCompensated } from "./read-compensation.ts";
import { dropFeed } from "./read-feed.ts";
import type { Reader } from "./reader.ts";
import { pushStep } from "./rows.ts";
import { forgetLevel, forgetSeries, loseWork, modeBit } from "./state.ts";

type ModeOf<Kind extends ModeKind> = Extract<ModeStep, { kind: Kind }>;
type Apply = { readonly [Kind in ModeKind]: (reader: Reader, step: ModeOf<Kind>) => void };

/** What each mode changes for the words that follow. */
const apply: Apply = {
  units(reader, { value }) {
    const { state, block, quantities } = reader;
    if (reader.format.unitsStated === "first-block") checkFirst(reader);
    state.modes |= modeBit.units;
    if (state.units === value) return;
    refuseCompensated(reader, "units");
    forgetSeries(state);
    state.units = value;
    state.length = quantities.length[value];
    state.centre = quantities.centre[value];
    // A feed in the other units is no feed in these; the F word of the same block is read in the new ones, unless it has acted before.
    const before = reader.format.executes === "left-to-right" && block.used & (1 << letterF);
    if ((block.mask & (1 << letterF)) === 0 || before) dropFeed(reader);
  },
  plane(reader, { value }) {
    const { state } = reader;
    state.modes |= modeBit.plane;
    if (state.plane.name !== value) refuseCompensated(reader, "plane");
    state.plane = planes[value];
  },
  distance({ state }, { value }) {
    state.modes |= modeBit.distance;
    state.incremental = value === "incremental";
  },
  "arc-centre"({ state }, { value }) {
    state.modes |= modeBit.arcCentre;
    state.arcAbsolute = value === "absolute";
  },
  "feed-mode"(reader, { value }) {
    const { state } = reader;
    state.modes |= modeBit.feedMode;
    if (state.feedMode === value) return;
    state.feedMode = value;
    dropFeed(reader);
  },
  path: () => undefined,
  "look-ahead": () => undefined,
  "corner-feed": () => undefined,
  overrides: () => undefined,
  cycle: () => undefined,
  "local-shift": cancelShift,
  rotation: cancelShift,
  scale: cancelShift,
};

/** Units that are stated alone in the first block: only the start of the program and the step itself have been handed on. */
function checkFirst({ block, batch, rowsBefore, fragment, slots, report }: Reader): void {
  const isFirst = fragment || rowsBefore + batch.count <= 2;
  const words = block.mask & ~(1 << letterN);
  if (isFirst && words === 0 && block.gCount + block.mCount === 1) return;
  const message = "This dialect states units alone in the first block of the program, and nowhere else.";
  const at = block.start + (slots.units?.at ?? 0);
  report(framing(at, message, "Put the units into the first block.", "units.stated"));
}

/** Until it is known to be off, cancelling a shift, a rotation or a scale puts work coordinates elsewhere. */
function cancelShift({ state }: Reader, { kind }: ModeOf<"local-shift" | "rotation" | "scale">): void {
  if (state.cancelled.has(kind)) return;
  state.cancelled.add(kind);
  loseWork(state, 63);
  forgetLevel(state);
}

/** The mode of a group, if the block states it: a step, and what it changes. */
export function readMode(group: Group): (reader: Reader) => void {
  return (reader) => {
    const meaning = reader.slots[group]?.meaning;
    if (meaning?.kind !== "mode" || meaning.step.kind === "cycle") return;
    pushStep(reader, meaning.step);
    (apply[meaning.step.kind] as (reader: Reader, step: ModeStep) => void)(reader, meaning.step);
  };
}

/** The level between holes, which is no step of its own: it shows in the definition of the cycle. */
export function readCycleReturn({ slots, state, format }: Reader): void {
  const meaning = slots["cycle-return"]?.meaning;
  if (meaning?.kind !== "cycle-return") return;
  state.modes |= modeBit.cycleReturn;
  state.cycle.between = meaning.between;
  // Where there is but one level, its word chooses nothing.
  const { initial, retract } = format.codes.cycleReturn;
  state.cycle.levelSaid = Boolean(initial) && Boolean(retract);
}

/** The code that locks spindle and feed for the tapping cycle that follows; it shows in no step. */
export function readSynchronising({ slots, state }: Reader): void {
  if (slots["tap-synchronised"] !== undefined) state.synchronised = true;
}
