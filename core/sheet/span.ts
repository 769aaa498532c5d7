/** Least and most of what was seen, in base units; `least` is above `most` while nothing was. */
export interface Span {
  least: number;
  most: number;
}

/** A span of nothing. */
export function createSpan(): Span {
  return { least: Infinity, most: -Infinity };
}

/** Takes a value in. */
export function widen(span: Span, value: number): void {
  if (value < span.least) span.least = value;
  if (value > span.most) span.most = value;
}

/** Whether anything was taken in. */
export function isSeen({ least, most }: Span): boolean {
  return least <= most;
}

/** A span for each of x y z. */
export type Reach = readonly [Span, Span, Span];

/** A reach of nothing. */
export function createReach(): Reach {
  return [createSpan(), createSpan(), createSpan()];
}
