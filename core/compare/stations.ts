/** Blocks of two programs brought together by their place in the job. */
import type { SaidBlock } from "./blocks.ts";

/** Consecutive blocks of one place in the job; those that say nothing go with the ones that follow. */
export interface Station {
  readonly place: number;
  readonly blocks: readonly SaidBlock[];
}

/** Stations of both programs of one place; one side alone where the other says nothing at that place. */
export interface StationPair {
  readonly first: Station | undefined;
  readonly second: Station | undefined;
}

/** Stations that are looked at ahead to find where both sides meet again. */
const lookAhead = 64;

/** Cuts a program where the place in the job changes. */
export function* stationsOf(blocks: Iterable<SaidBlock>): Generator<Station> {
  let open: SaidBlock[] = [];
  let place: number | undefined;
  for (const block of blocks) {
    // A block that defines a cycle and drills its first hole belongs to the hole.
    const own = block.rows.at(-1)?.place;
    if (place !== undefined && own !== undefined && own !== place) {
      const from = silentTail(open);
      yield { place, blocks: open.slice(0, from) };
      open = open.slice(from);
    }
    open.push(block);
    place = own ?? place;
  }
  if (open.length > 0) yield { place: place ?? 0, blocks: open };
}

/** Where the blocks begin that say nothing, at the end of a list. */
function silentTail(blocks: readonly SaidBlock[]): number {
  let at = blocks.length;
  while (at > 0 && blocks[at - 1].rows.length === 0) at--;
  return at;
}

/** Pairs the stations of two programs, in order. */
export function* stationPairs(first: Iterable<Station>, second: Iterable<Station>): Generator<StationPair> {
  const [one, other] = [ahead(first), ahead(second)];
  for (;;) {
    const [a, b] = [one.at(0), other.at(0)];
    if (a === undefined && b === undefined) return;
    if (a?.place === b?.place) {
      yield { first: one.take(), second: other.take() };
      continue;
    }
    const [skipOne, skipOther] = meeting(one, other);
    for (let left = skipOne; left > 0; left--) yield { first: one.take(), second: undefined };
    for (let left = skipOther; left > 0; left--) yield { first: undefined, second: other.take() };
  }
}

/** How many stations of each side stand before the next that both have: as few as can be. */
function meeting(one: Ahead, other: Ahead): [number, number] {
  for (let sum = 1; sum < lookAhead; sum++)
    for (let i = 0; i <= sum; i++) {
      const [a, b] = [one.at(i), other.at(sum - i)];
      if (a !== undefined && b !== undefined && a.place === b.place) return [i, sum - i];
    }
  const [a, b] = [one.at(0), other.at(0)];
  if (a === undefined) return [0, 1];
  return b === undefined || a.place <= b.place ? [1, 0] : [0, 1];
}

/** A stream with a window of what comes. */
interface Ahead {
  readonly at: (index: number) => Station | undefined;
  readonly take: () => Station | undefined;
}

function ahead(stations: Iterable<Station>): Ahead {
  const iterator = stations[Symbol.iterator]();
  const window: Station[] = [];
  const at = (index: number): Station | undefined => {
    while (window.length <= index) {
      const next = iterator.next();
      if (next.done === true) return undefined;
      window.push(next.value);
    }
    return window[index];
  };
  return { at, take: () => (at(0) === undefined ? undefined : window.shift()) };
}
