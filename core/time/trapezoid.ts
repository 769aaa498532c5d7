/**
 * Time of a motion that speeds up, runs at its speed and slows down, each at one acceleration; where it is too short for that, it
 * turns from speeding up to slowing down at its peak. Any unit of length, seconds.
 *
 * 300 mm at 250 mm/s and 1000 mm/s2, from rest to rest -> 1.45 s; 20 mm -> 0.2828 s
 *
 * @param entry speed at the start; a motion of this length can get from it to `exit`
 * @param speed the highest it may have, at least that of entry and exit
 */
export function timeOf(
  length: number,
  entry: number,
  exit: number,
  speed: number,
  acceleration: number,
): number {
  const entry2 = entry * entry;
  const exit2 = exit * exit;
  const ramps = (2 * speed * speed - entry2 - exit2) / (2 * acceleration);
  if (ramps <= length) return (2 * speed - entry - exit) / acceleration + (length - ramps) / speed;
  const peak = Math.sqrt((2 * acceleration * length + entry2 + exit2) / 2);
  return (2 * peak - entry - exit) / acceleration;
}
