/**
 * Tools that wear out, and the spares that take over from them.
 *
 *     opened job ──cutting time of each operation, by its feeds──▶ choice ──▶ the same job, its operations with other tools
 *     sequence ──clock──▶ tools that cut longer than their life
 *
 * The choice is made before anything else looks at the job, so that no later stage knows of it.
 */
export { takeSpares } from "./take-spares.ts";
export type { SparedJob } from "./take-spares.ts";
export { tellReplacements } from "./tell-replacements.ts";
export { watchLife } from "./watch-life.ts";
export type { LifeRequest } from "./watch-life.ts";
