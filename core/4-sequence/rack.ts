import type { RackFacts } from "#base";
import { axisBit } from "#base";
import { machineMove } from "./motion.ts";
import type { Run } from "./run.ts";
import { fact, refuse } from "./words.ts";

/** A place in the plane, machine coordinates, atoms. */
export interface Pocket {
  readonly x: number;
  readonly y: number;
}

/** What a style of rack does before a tool is released and after one is clamped. */
interface RackStyle {
  /** Where the tool comes down to be returned. */
  readonly entry: (run: Run, rack: RackFacts, pocket: Pocket) => Pocket;
  /** From there into the pocket. */
  readonly goIn: (run: Run, rack: RackFacts, pocket: Pocket) => void;
  /** Out of the pocket with a tool. */
  readonly comeOut: (run: Run, rack: RackFacts, pocket: Pocket) => void;
}

const stay = (): void => undefined;

/** Tools drop into their pockets from above, or slide into a fork from the side. */
export const rackStyles = {
  "drop-in": { entry: (_run, _rack, pocket) => pocket, goIn: stay, comeOut: stay },
  "slide-in": {
    entry: (run, rack, pocket) => {
      const slide = slideOf(run, rack);
      return { x: pocket.x - slide.x, y: pocket.y - slide.y };
    },
    goIn: (run, rack, pocket) => {
      machineMove(run, pocket, slideOf(run, rack).feed);
    },
    comeOut: (run, rack, pocket) => {
      const slide = slideOf(run, rack);
      machineMove(run, { x: pocket.x - slide.x, y: pocket.y - slide.y }, slide.feed);
    },
  },
} as const satisfies Record<RackFacts["style"], RackStyle>;

function slideOf(
  run: Run,
  rack: RackFacts,
): { readonly x: number; readonly y: number; readonly feed: number } {
  const because = "its tools slide into the pockets of the rack";
  return fact(run, rack.slide, "machine.rack.slide", because) ?? { x: 0, y: 0, feed: rack.descendFeed };
}

/** The pocket of a tool; refused where it has none. */
export function pocketOf(run: Run, rack: RackFacts, tool: number): Pocket | undefined {
  const home = run.state.homes.get(tool);
  const pocket = home === undefined ? undefined : rack.pockets[home];
  if (!pocket) {
    refuse(
      run,
      "limit/pockets",
      `tool ${String(tool)} has no pocket in the rack`,
      "give it a pocket in the set-up, or swap it by the operator",
      "machine.rack.pockets",
    );
  }
  return pocket;
}

/** Down to the height of the holder in its pocket: rapid to just above, `between`, then at feed. */
export function sink(run: Run, rack: RackFacts, between: () => void = () => undefined): void {
  moveToHeight(run, Math.min(rack.clearZ, rack.pocketZ + rack.descendFrom));
  between();
  machineMove(run, { z: rack.pocketZ }, rack.descendFeed);
}

/** Z alone at rapid, unless it stands there already. */
export function moveToHeight(run: Run, z: number): void {
  const { machine } = run.state;
  const there = (machine.known & axisBit.z) !== 0 && machine.at[2] === z;
  if (!there) machineMove(run, { z });
}
