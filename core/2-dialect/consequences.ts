/** A key that a dialect can leave undeclared or declare `none`, and what follows. */
export interface Consequence {
  readonly key: string;
  /** Such as "jobs with mist are refused". */
  readonly then: string;
  /** Whether `none` says it in another way, and nothing is refused for it. */
  readonly noneIsFine?: true;
  /** Only where this key is `yes`. */
  readonly where?: string;
  /** Only where one of these keys is stated. */
  readonly whereStated?: readonly string[];
  /** Only where none of these keys is stated. */
  readonly unlessStated?: readonly string[];
}

/** A file that states one of these declares a machine of its own, and speeds are held against its limits. */
const ownMachine = ["machine.travel", "machine.spindle"];

/** In the order of the keys in a file. */
export const consequences: readonly Consequence[] = [
  {
    key: "motion.rapid",
    then: "all jobs are refused, unless `motion.rapid-feed` says how",
    noneIsFine: true,
  },
  { key: "motion.line", then: "all jobs are refused" },
  { key: "motion.rapids", then: "jobs with a rapid that changes Z and X or Y together are refused" },
  {
    key: "units.mm",
    then: "jobs in millimetres are refused, unless programs are always in the other unit",
    noneIsFine: true,
  },
  {
    key: "units.inch",
    then: "jobs in inches are refused, unless programs are always in the other unit",
    noneIsFine: true,
  },
  { key: "plane.xy", then: "jobs with arcs or cycles are refused" },
  { key: "plane.zx", then: "jobs with arcs in the ZX plane are refused" },
  { key: "plane.yz", then: "jobs with arcs in the YZ plane are refused" },
  { key: "arc.form", then: "jobs with arcs are refused", noneIsFine: true },
  { key: "arc.planes", then: "jobs with arcs are refused" },
  { key: "arc.largest-sweep", then: "jobs with arcs are refused" },
  { key: "arc.quadrants", then: "jobs with arcs are refused" },
  { key: "arc.full-circle", then: "jobs with full circles are refused" },
  { key: "arc.helix", then: "jobs with helices are refused" },
  { key: "arc.feed-along", then: "jobs with helices are refused", where: "arc.helix" },
  { key: "arc.turns-word", then: "jobs with helices of several turns are refused", noneIsFine: true },
  { key: "arc.tolerance", then: "jobs with arcs by centre are refused" },
  { key: "arc.chord-tolerance", then: "jobs with arcs that become chords are refused" },
  { key: "path.exact", then: 'jobs that ask for `"path": "exact"` are refused' },
  { key: "path.blend", then: 'jobs that ask for `"path": "blend"` are refused' },
  { key: "path.tolerance-word", then: "jobs that blend within a tolerance are refused", noneIsFine: true },
  { key: "feed.per-minute", then: "jobs with feed per minute are refused", noneIsFine: true },
  { key: "feed.per-revolution", then: "jobs with feed per revolution are refused", noneIsFine: true },
  { key: "feed.inverse-time", then: "jobs in inverse time are refused" },
  { key: "dwell.code", then: "jobs with dwells are refused, and all that are confirmed by one" },
  { key: "compensation.left", then: "jobs with cutter radius compensation are refused" },
  { key: "work-offset", then: "jobs in a work offset other than 1 are refused" },
  { key: "cycles", then: "jobs with holes are refused", noneIsFine: true },
  { key: "spindle.cw", then: "jobs with a tool that turns clockwise are refused" },
  { key: "spindle.ccw", then: "jobs with a tool that turns counter-clockwise are refused" },
  { key: "spindle.stop", then: "jobs with a tool that turns are refused" },
  { key: "coolant.mist", then: "jobs with mist are refused" },
  { key: "coolant.flood", then: "jobs with flood coolant are refused" },
  { key: "coolant.air", then: "jobs with air are refused" },
  { key: "coolant.through-tool", then: "jobs with coolant through the tool are refused" },
  { key: "coolant.off", then: "jobs with coolant are refused" },
  { key: "stops.stop", then: "jobs with pauses or swaps by the operator are refused" },
  { key: "stops.optional", then: "jobs with optional pauses are refused" },
  { key: "stops.end", then: "all jobs are refused" },
  { key: "idioms.message", then: "jobs that must tell the operator something are refused" },
  { key: "machine.travel", then: "travel is not checked" },
  {
    key: "machine.spindle.max-rpm",
    then: "spindle speeds are not checked",
    unlessStated: ownMachine,
  },
  {
    key: "machine.spindle.min-rpm",
    then: "jobs with a tool that turns are refused",
    whereStated: ownMachine,
  },
  {
    key: "machine.spindle.max-rpm",
    then: "jobs with a tool that turns are refused",
    whereStated: ownMachine,
  },
  { key: "machine.feed", then: "feeds are not checked against the machine" },
  { key: "machine.axis-feed", then: "the feed of each axis is not checked" },
  { key: "machine.swap", then: "jobs with a tool to load are refused" },
  { key: "machine.retract", then: "all jobs are refused" },
  { key: "machine.length-offset", then: "all jobs are refused" },
  { key: "machine.lengths", then: "all jobs are refused" },
  { key: "machine.tapping", then: "jobs that tap are refused" },
  { key: "confirm.at-speed", then: "jobs with a tool that turns are refused" },
  { key: "confirm.stopped", then: "all jobs are refused" },
];

/** The same for a machine with a rack. */
export const rackConsequences: readonly Consequence[] = [
  { key: "confirm.released", then: "jobs with a swap are refused" },
  { key: "confirm.clamped", then: "jobs with a swap are refused" },
  { key: "confirm.air", then: "jobs with a swap are refused", whereStated: ["machine.signals.air"] },
];
