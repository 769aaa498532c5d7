import type { Job, Operation } from "#job";
import type { PlannedFacts } from "#sequence";
import { clean } from "./clean.ts";
import type { Summary } from "./outcome.ts";
import type { Layout } from "./text-findings.ts";
import { hang } from "./wrap.ts";

/** What changes in one pocket; 0 for no tool. */
export interface PocketChange {
  /** Counted from 1. */
  readonly pocket: number;
  readonly out: number;
  readonly in: number;
}

/** A stop at which the rack is loaded anew. */
export interface ReloadStop {
  /** Id of the operation before which the program stops. */
  readonly before: string;
  readonly changes: readonly PocketChange[];
}

/** How the rack is loaded for a program: stands in the report where there is more to say than the list of pockets. */
export interface RackReport {
  /** Tool in each pocket at the start, pocket 1 first, 0 for none; a tool that the spindle holds counts in its own. */
  readonly pockets: readonly number[];
  /** What has to be changed before the start; absent where nobody says what is in the rack now. */
  readonly load?: readonly PocketChange[];
  readonly reloads: readonly ReloadStop[];
}

/** The rack of a program, where the rack is loaded anew on the way, or where it is known what it holds now. */
export function rackReport({ operations }: Job, facts: PlannedFacts): { readonly rack?: RackReport } {
  const { rack, heldPocket, spindleHolds = 0, reloads = [], reloadsBefore = [], rackNow } = facts;
  if (rack.length === 0 || (reloads.length === 0 && rackNow === undefined)) return {};
  const pockets = rack.map((tool, pocket) => (pocket === heldPocket ? spindleHolds : tool));
  const stops = reloads.map((next, index) => ({
    before: operations[reloadsBefore[index]].id,
    changes: changes(index === 0 ? pockets : reloads[index - 1], next),
  }));
  // The tool in the spindle is not put into its pocket by anybody.
  const load = rackNow === undefined ? {} : { load: changes(rackNow, rack) };
  return { rack: { pockets, ...load, reloads: stops } };
}

function changes(before: readonly number[], after: readonly number[]): PocketChange[] {
  return after.flatMap((tool, pocket) => {
    const out = before[pocket] ?? 0;
    return out === tool ? [] : [{ pocket: pocket + 1, out, in: tool }];
  });
}

/** Says of a program's header and sheet that it stops for the rack. */
export function reloadSentence(
  operations: readonly Operation[],
  { reloadsBefore = [] }: PlannedFacts,
): string[] {
  if (reloadsBefore.length === 0) return [];
  const ids = reloadsBefore.map((index) => operations[index].id).join(", ");
  const times = reloadsBefore.length === 1 ? "once" : `${reloadsBefore.length} times`;
  return [`The program stops ${times} for the rack to be loaded anew: before ${ids}.`];
}

/** The plan as text: the loading before the start, and each stop, a line a pocket. */
export function rackText({ rack }: Summary, layout: Layout): string[] {
  if (!isRack(rack)) return [];
  const { load, reloads } = rack;
  const title = (text: string): string[] => ["", layout.paint("rule", text)];
  return [
    ...(load === undefined ? [] : title("Before the start, in the rack")),
    ...(load === undefined ? [] : changesText(load, layout)),
    ...reloads.flatMap(({ before, changes: these }, index) => [
      ...title(`Reload stop ${index + 1} of ${reloads.length}, before ${clean(before)}`),
      ...changesText(these, layout),
    ]),
  ];
}

/** The summary holds plain data of many kinds; this one is made here alone. */
function isRack(rack: unknown): rack is RackReport {
  return typeof rack === "object" && rack !== null && "reloads" in rack;
}

function changesText(these: readonly PocketChange[], { width }: Layout): string[] {
  if (these.length === 0) return hang("  - ", "nothing changes", width);
  return these.flatMap(({ pocket, out, in: tool }) => {
    const parts = [out === 0 ? [] : [`tool ${out} out`], tool === 0 ? [] : [`tool ${tool} in`]].flat();
    return hang("  - ", `pocket ${pocket}: ${parts.join(", ")}`, width);
  });
}
