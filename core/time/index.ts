export { createClock } from "./clock.ts";
export type { Clock } from "./clock.ts";
export { timeOf } from "./trapezoid.ts";
export type { TimedOperation } from "./state.ts";
