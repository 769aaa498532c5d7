/** Where time goes, seconds. */
export interface TimeParts {
  /** Motion at feed. */
  readonly cutting: number;
  readonly rapid: number;
  /** Dwells of the job and of cycles. */
  readonly dwell: number;
  /** Until the spindle turns at its speed, or stands. */
  readonly spindle: number;
  /** Tool changes without a hand, the ways to and from them included. */
  readonly swap: number;
  readonly total: number;
}

/** Estimated times of a program. Plain data. */
export interface Times extends TimeParts {
  /** "acceleration": the axes speed up and slow down; "feeds": they are taken to be at their feed at once. */
  readonly basis: "acceleration" | "feeds";
  readonly operations: readonly (TimeParts & {
    readonly id: string;
    readonly name: string;
    readonly tool: number;
  })[];
  /** The same for each tool, in order of use. */
  readonly tools: readonly (TimeParts & { readonly tool: number })[];
  /** Stops of the program that wait for the operator, who takes what time they like: in no sum. */
  readonly stops: number;
  readonly optionalStops: number;
  readonly swaps: {
    readonly automatic: number;
    /** Each of them is a stop as well. */
    readonly byHand: number;
    /** What the automatic ones save against as many by hand, seconds, and how long one by hand is taken to last. */
    readonly saving: number;
    readonly oneByHand: number;
  };
  /** What was taken for granted, one sentence each. */
  readonly assumptions: readonly string[];
}
