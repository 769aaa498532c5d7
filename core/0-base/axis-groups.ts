/** How many axes a mask names. */
export function axisCount(mask: number): number {
  let count = 0;
  for (let rest = mask; rest !== 0; rest &= rest - 1) count++;
  return count;
}

/** A mask in groups of at most `most` axes, in the order of their bits: x y z by twos -> xy, z. */
export function axisGroups(mask: number, most: number): number[] {
  const groups: number[] = [];
  let group = 0;
  for (let rest = mask; rest !== 0; rest &= rest - 1) {
    if (axisCount(group) === most) {
      groups.push(group);
      group = 0;
    }
    group |= rest & -rest;
  }
  return group === 0 ? groups : [...groups, group];
}
