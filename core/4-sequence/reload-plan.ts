/** A rack that has to serve operations in their order. Tools are numbers above 0; pockets count from 0. */
export interface RackNeeds {
  /** Tool of each operation. */
  readonly uses: readonly number[];
  /** Tool in the spindle at the start, which needs a pocket to go back to; 0 for none. */
  readonly held: number;
  /** How many pockets there are. */
  readonly pockets: number;
  /** Tool in each pocket now; 0 or absent for none. */
  readonly now: readonly number[];
  /** Whether the program starts with the rack as it is; otherwise it is loaded before. */
  readonly startsAsIs: boolean;
  /** Whether two tools touch each other in their pockets. */
  readonly clash: (pocket: number, tool: number, otherPocket: number, otherTool: number) => boolean;
}

/** A stop at which the rack is loaded anew; the spindle is empty. */
export interface PlannedReload {
  /** The operation before which the program stops, as an index into `uses`. */
  readonly before: number;
  /** Tool in each pocket behind the stop. */
  readonly rack: readonly number[];
}

/** How a rack serves all operations. */
export interface ReloadPlan {
  /** Tool in each pocket at the start, the pocket of the tool in the spindle included. */
  readonly start: readonly number[];
  readonly reloads: readonly PlannedReload[];
  /** The operation for whose tool there is no pocket, as an index into `uses`, whatever else is taken out. */
  readonly stuck: number | undefined;
}

/**
 * Plans as few reload stops as there can be.
 *
 * Between two stops every tool in use needs a pocket of its own: it goes back before the next is picked, and before the stop. At a stop
 * any pockets may be exchanged. So what may lie between two stops is a run of operations whose tools fit the rack together,
 * and a part of such a run is one, too. Then running as far as the rack can serve, and stopping only there, is best: by induction no
 * other choice of stops is farther at its k-th stop. Which tools stay is the optimal replacement rule: those that are
 * needed stay where they are, empty pockets are filled first, then the tool leaves that is used again last.
 */
export function planReloads(needs: RackNeeds): ReloadPlan {
  const { uses, startsAsIs } = needs;
  const now = Array.from({ length: needs.pockets }, (_, pocket) => needs.now[pocket] ?? 0);
  const first = startsAsIs
    ? { end: firstMissing(uses, now), rack: now }
    : farthest(needs, 0, now, needs.held === 0 ? [] : [needs.held]);
  const reloads: PlannedReload[] = [];
  let { end, rack } = first;
  while (end < uses.length) {
    const next = farthest(needs, end, rack, []);
    if (next.end === end) return { start: first.rack, reloads, stuck: end };
    reloads.push({ before: end, rack: next.rack });
    ({ end, rack } = next);
  }
  return { start: first.rack, reloads, stuck: undefined };
}

function firstMissing(uses: readonly number[], rack: readonly number[]): number {
  const missing = uses.findIndex((tool) => !rack.includes(tool));
  return missing < 0 ? uses.length : missing;
}

/** A part of the program without a stop, and the rack that serves it. */
interface Served {
  /** The first operation that it does not serve. */
  readonly end: number;
  readonly rack: readonly number[];
}

/** How far a rack can serve from an operation on, loaded anew with what it needs. @param besides tools that need a pocket, too */
function farthest(
  needs: RackNeeds,
  from: number,
  rack: readonly number[],
  besides: readonly number[],
): Served {
  const { uses } = needs;
  const needed: number[] = [];
  let served: Served = { end: from, rack: arrange(needs, from, rack, besides) ?? rack };
  for (let end = from; end < uses.length; end++) {
    const isNew = !needed.includes(uses[end]);
    if (isNew) needed.push(uses[end]);
    const all = [...needed, ...besides.filter((tool) => !needed.includes(tool))];
    const arranged = isNew ? arrange(needs, from, rack, all) : served.rack;
    if (arranged === undefined) break;
    served = { end: end + 1, rack: arranged };
  }
  return served;
}

/** Steps of the search for places that do not clash; beyond it there are taken to be none. */
const mostTries = 20_000;

/**
 * A rack with all the tools of a list: in their places where they have one, in empty pockets, then in those of the tools that are
 * used again last. If tools clash so, those that are there already may move as well.
 */
function arrange(
  needs: RackNeeds,
  from: number,
  rack: readonly number[],
  tools: readonly number[],
): readonly number[] | undefined {
  if (tools.length > needs.pockets) return undefined;
  const order = pocketsInOrder(needs, from, rack, tools);
  const kept = rack.map((tool) => (tools.includes(tool) ? tool : 0));
  const missing = tools.filter((tool) => !rack.includes(tool));
  const nothing = kept.map(() => 0);
  const staying = isFree(needs, kept) ? place(needs, kept, missing, order) : undefined;
  const placed = staying ?? place(needs, nothing, tools, order);
  if (placed === undefined) return undefined;
  // What nobody needs may stay where it is in nobody's way.
  const result = [...placed];
  rack.forEach((tool, pocket) => {
    if (tool !== 0 && result[pocket] === 0 && !result.includes(tool) && isClear(needs, result, pocket, tool))
      result[pocket] = tool;
  });
  return result;
}

/** Pockets in the order in which they are given away: empty ones, then those whose tools are used again last. */
function pocketsInOrder(
  { uses }: RackNeeds,
  from: number,
  rack: readonly number[],
  needed: readonly number[],
): number[] {
  const nextUse = (tool: number): number => {
    const next = uses.indexOf(tool, from);
    return next < 0 ? Infinity : next;
  };
  const rank = rack.map((tool) =>
    tool === 0 ? [0, 0] : needed.includes(tool) ? [2, 0] : [1, -nextUse(tool)],
  );
  return rack
    .map((_, pocket) => pocket)
    .sort((one, other) => rank[one][0] - rank[other][0] || compare(rank[one][1], rank[other][1]));
}

/** Orders numbers, infinite ones too: their difference is no number. */
function compare(one: number, other: number): number {
  return one === other ? 0 : one < other ? -1 : 1;
}

/** Whether a tool clashes with none in the other pockets. */
function isClear({ clash }: RackNeeds, rack: readonly number[], pocket: number, tool: number): boolean {
  return rack.every((other, at) => at === pocket || other === 0 || !clash(pocket, tool, at, other));
}

/** Whether no two tools of a rack clash. */
function isFree(needs: RackNeeds, rack: readonly number[]): boolean {
  return rack.every((tool, pocket) => tool === 0 || isClear(needs, rack, pocket, tool));
}

/** Puts tools into free pockets so that none clash, by trying; undefined where that cannot be. */
function place(
  needs: RackNeeds,
  rack: readonly number[],
  tools: readonly number[],
  order: readonly number[],
): readonly number[] | undefined {
  const result = [...rack];
  const tries = { left: mostTries };
  const put = (index: number): boolean => {
    if (index === tools.length) return true;
    for (const pocket of order) {
      if (result[pocket] !== 0 || !isClear(needs, result, pocket, tools[index])) continue;
      if (tries.left-- <= 0) return false;
      result[pocket] = tools[index];
      if (put(index + 1)) return true;
      result[pocket] = 0;
    }
    return false;
  };
  return put(0) ? result : undefined;
}
