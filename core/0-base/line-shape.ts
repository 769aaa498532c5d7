/** Where a straight way goes along one axis, and what a rectangle takes of that axis; all in one unit of length. */
export type AlongAxis = readonly [from: number, to: number, low: number, high: number];

/** Whether a straight way goes through the inside of a rectangle; one along an edge, or up to it, does not. */
export function lineCrosses(alongX: AlongAxis, alongY: AlongAxis): boolean {
  let [enter, leave] = [0, 1];
  for (const [from, to, low, high] of [alongX, alongY]) {
    if (from === to) {
      if (from <= low || from >= high) return false;
      continue;
    }
    const [one, other] = [(low - from) / (to - from), (high - from) / (to - from)];
    enter = Math.max(enter, Math.min(one, other));
    leave = Math.min(leave, Math.max(one, other));
  }
  return enter < leave;
}
