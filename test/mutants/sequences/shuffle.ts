/** A list in an order that the seed decides (32-bit mixing by multiplication; any even spread will do). */
export function shuffled<Item>(items: readonly Item[], seed: number): Item[] {
  const list = [...items];
  let state = seed >>> 0;
  for (let last = list.length - 1; last > 0; last--) {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    const at = ((mixed ^ (mixed >>> 14)) >>> 0) % (last + 1);
    [list[last], list[at]] = [list[at], list[last]];
  }
  return list;
}
