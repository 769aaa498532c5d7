import type { CycleDefinition, FeedMode } from "#base";
import type { Contour } from "./contour.ts";
import type { SimulationFacts, SimulationSizes } from "./facts.ts";
import type { HeightField } from "./field.ts";
import type { Part, Stretch } from "./figures.ts";
import type { Fixture } from "./fixtures.ts";
import type { Held } from "./held.ts";
import type { Ledger } from "./ledger.ts";
import type { Path } from "./path.ts";
import type { Body, Shape } from "./shape.ts";
import type { Sweeper } from "./sweep.ts";

/** A tool made ready for a field: its shapes with the margins that the checks take. */
export interface ReadyBody extends Body {
  /** What a rapid is checked with: thinner at its side by the tolerance. */
  readonly slim: Shape;
  /**
   * What is checked above the cutting edges; undefined where it is thinner than the cut or not known. Wider by half a cell's
   * diagonal: a wall that it rubs at is seen by the centres of cells behind its face.
   */
  readonly shankShape: Shape | undefined;
  readonly holderShape: Shape | undefined;
}

/** A simulation at work. Lengths in mm. */
export interface Walk {
  readonly facts: SimulationFacts;
  readonly sizes: SimulationSizes;
  readonly field: HeightField;
  readonly sweeper: Sweeper;
  readonly path: Path;
  readonly ledger: Ledger;
  readonly bodies: ReadonlyMap<number, ReadyBody>;
  readonly fixtures: readonly Fixture[];
  readonly parts: Part[];
  part: Part | undefined;
  /** Bytes of the job that belong to the part, from the one offset up to the other; none for a program. */
  readonly span: { from: number; to: number };
  /** The tool that cuts; undefined where nobody knows it. */
  body: ReadyBody | undefined;
  readonly held: Held;
  readonly stretch: Stretch;
  /** Place of the tip, and which axes of it are known. */
  x: number;
  y: number;
  z: number;
  known: number;
  /** Whether the tool has cut at that place. */
  begun: boolean;
  /** Work offset in force; 0: none stated yet. */
  workOffset: number;
  /** Length offset in force; 0: none. */
  lengthOffset: number;
  /** The row in hand: its number, and its byte offset in the input. */
  readonly at: { row: number; offset: number };
  feedMode: FeedMode;
  /** Revolutions a minute. */
  rpm: number;
  cycle: CycleDefinition | undefined;
  /** The contour that compensation follows; undefined while it is off. */
  contour: Contour | undefined;
  /** What was left out, each once. */
  readonly left: Set<string>;
}
