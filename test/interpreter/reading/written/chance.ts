/** A source of chance that gives the same for the same seed, everywhere. */
export interface Chance {
  /** A whole number from 0 to `below` - 1. */
  readonly whole: (below: number) => number;
  /** A whole number from `from` to `to`. */
  readonly between: (from: number, to: number) => number;
  /** True this often, a share from 0 to 1. */
  readonly happens: (share: number) => boolean;
  readonly pick: <Item>(items: readonly Item[]) => Item;
  readonly shuffle: <Item>(items: readonly Item[]) => Item[];
}

/** Makes a source of chance (a linear congruence of 32 bits, with the multiplier of Numerical Recipes; from memory). */
export function createChance(seed: number): Chance {
  let state = seed >>> 0;
  const share = (): number => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return (state >>> 8) / 2 ** 24;
  };
  const whole = (below: number): number => Math.floor(share() * below);
  return {
    whole,
    between: (from, to) => from + whole(to - from + 1),
    happens: (part) => share() < part,
    pick: (items) => items[whole(items.length)],
    shuffle(items) {
      const mixed = [...items];
      for (let last = mixed.length - 1; last > 0; last--) {
        const other = whole(last + 1);
        [mixed[last], mixed[other]] = [mixed[other], mixed[last]];
      }
      return mixed;
    },
  };
}
