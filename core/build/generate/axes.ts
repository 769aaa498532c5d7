/** An axis on which controllers differ, and the keys of dialect files that say where one stands on it. */
export interface Axis {
  readonly number: number;
  /** What controllers differ about. */
  readonly title: string;
  /** Key paths; empty where no key covers it yet. */
  readonly keys: readonly string[];
  /** Why there is no key yet, or what else must be known about the keys. */
  readonly note?: string;
}

/** Axes that belong together. */
export interface AxisGroup {
  readonly title: string;
  readonly axes: readonly Axis[];
}

/** Keys, space between them. */
function axis(number: number, title: string, keys: string, note?: string): Axis {
  const paths = keys === "" ? [] : keys.split(" ");
  return { number, title, keys: paths, ...(note === undefined ? {} : { note }) };
}

const readOnly = "read, never written";

/** The axes on which controllers of milling and routing machines differ, by number. */
export const axisGroups: readonly AxisGroup[] = [
  {
    title: "Framing",
    axes: [
      axis(1, "characters, byte order mark", "file.characters file.byte-order-mark"),
      axis(2, "line ends, end of the last line", "file.line-end file.last-line-end"),
      axis(3, "mark at the end of a block", "file.end-of-block"),
      axis(4, "marks at start and end of the program", "file.delimiter"),
      axis(5, "how a program is identified", "file.program-number"),
      axis(6, "numbers that are free for programs", "file.program-number.from file.program-number.to"),
      axis(7, "end code", "stops.end"),
      axis(8, "modes that the end code resets", "stops.end-resets"),
      axis(9, "leader, header and trailer", "file.leader idioms.header idioms.footer"),
      axis(10, "longest file, splitting", "", "programs are not split yet"),
    ],
  },
  {
    title: "Block syntax",
    axes: [
      axis(11, "block numbers", "blocks.number"),
      axis(12, "block number before or behind the block delete mark", "blocks.delete.place"),
      axis(13, "alignment mark", "blocks.sections.mark"),
      axis(14, "block delete and its levels", "blocks.delete.mark stops.optional"),
      axis(15, "what stands between words", "blocks.separator"),
      axis(16, "order of words", "blocks.order"),
      axis(17, "longest block", "blocks.longest"),
      axis(18, "most words of a block", "blocks.most-words"),
      axis(19, "G words of a block", "blocks.g-words"),
      axis(20, "M words of a block", "blocks.m-words"),
      axis(21, "words that must not share a block", "coolant.blocks blocks.modes"),
      axis(22, "comments and their place", "comments.style comments.place"),
      axis(23, "length and characters of comments", "comments.longest file.characters"),
      axis(24, "messages to the operator", "idioms.message"),
      axis(25, "blank lines", "file.blank-lines"),
      axis(26, "order of execution in a block", "blocks.executes"),
      axis(27, "checksums, line protocol", "", "belongs to the transfer, not to the program"),
    ],
  },
  {
    title: "Numbers",
    axes: [
      axis(28, "decimal point required, optional or forbidden", "numbers.point"),
      axis(29, "which zeros an implied point leaves out", "numbers.suppressed-zeros numbers.digits"),
      axis(30, "least increment", "numbers.length"),
      axis(
        31,
        "decimals by address",
        "numbers.arc-centre numbers.angle numbers.feed-per-minute numbers.dwell",
      ),
      axis(32, "zeros at the end", "numbers.trailing-zeros"),
      axis(33, "zero before the point", "numbers.leading-zero"),
      axis(34, "plus sign", "numbers.plus", "minus zero is never written"),
      axis(35, "exponents", "blocks.order", "never written; an E is a word of its own or unknown"),
      axis(36, "digits of codes", "numbers.code-width"),
      axis(37, "words that are whole numbers", "numbers.speed"),
      axis(38, "most digits, largest value", "numbers.whole-digits"),
      axis(
        39,
        "rounding and its sum over increments",
        "distance.programs-in",
        "differences of rounded absolutes",
      ),
      axis(40, "arithmetic in words", "variables.parameters", readOnly),
    ],
  },
  {
    title: "Modality",
    axes: [
      axis(41, "motion word modal or in each block", "modal.motion"),
      axis(42, "axis words when they change, or all", "modal.axes modal.arc-end"),
      axis(43, "arc centre words that are zero", "modal.arc-centre"),
      axis(44, "how often the feed is said", "modal.feed"),
      axis(45, "how often speed and offsets are said", "modal.speed"),
      axis(
        46,
        "which group a code belongs to",
        "feed.per-minute cycles.return",
        "any code may be of any group",
      ),
      axis(47, "what holds without a word", "units.programs-in", "all that has a word is said at the start"),
    ],
  },
  {
    title: "Units and coordinates",
    axes: [
      axis(48, "words of the units", "units.mm units.inch"),
      axis(49, "where units may be said", "units.stated"),
      axis(50, "absolute or incremental", "distance.programs-in distance.absolute distance.incremental"),
      axis(51, "work offsets", "work-offset"),
      axis(52, "machine coordinates", "machine-move motion.machine-move-lasts"),
      axis(53, "reference return", "reference-return machine.retract.intermediate"),
      axis(54, "shift, rotation, mirror, scale", "", "cancelled at the start (`cancel`), not used yet"),
      axis(55, "words of the planes", "plane arc.planes"),
      axis(56, "letters of the axes", "axes"),
      axis(
        57,
        "rotary axes: sense, range, clamps",
        "",
        "rotary words are absolute degrees as the job has them",
      ),
      axis(58, "travel", "machine.travel"),
    ],
  },
  {
    title: "Motion",
    axes: [
      axis(59, "path of rapids", "motion.rapids"),
      axis(60, "rapids split by axis", "motion.rapid-axes"),
      axis(61, "rapids as feed motion", "motion.rapid-feed"),
      axis(62, "axes that move at once", "motion.axes-at-once"),
      axis(63, "arcs: planes, radii", "arc.planes arc.smallest-radius arc.largest-radius"),
      axis(64, "arc centre or radius", "arc.form arc.radius-word arc.centre-words"),
      axis(65, "largest sweep, quadrant lines", "arc.largest-sweep arc.quadrants"),
      axis(66, "full circles", "arc.full-circle"),
      axis(67, "radius arcs over 180 degrees", "arc.largest-sweep arc.form"),
      axis(68, "arc tolerance", "arc.tolerance arc.chord-tolerance"),
      axis(69, "helices and turns", "arc.helix arc.turns-word"),
      axis(70, "feed on a helix", "arc.feed-along"),
      axis(71, "feed modes", "feed.per-minute feed.per-revolution feed.inverse-time"),
      axis(72, "unit of inverse time", "feed.inverse-time-unit"),
      axis(73, "lowest and highest feed", "machine.feed machine.axis-feed"),
      axis(74, "word and unit of the dwell", "dwell.word dwell.unit"),
      axis(75, "what may share a dwell's block", "dwell.blocks"),
      axis(76, "path mode and its tolerance", "path.exact path.stop path.blend path.tolerance-word"),
      axis(77, "look-ahead", "path.look-ahead"),
      axis(78, "feed in inside corners", "compensation.corner-feed"),
    ],
  },
  {
    title: "Spindle, coolant and accessories",
    axes: [
      axis(79, "speed before or behind the start", "spindle.order spindle.blocks"),
      axis(80, "unit of the speed word", "spindle.speed-unit spindle.full-speed"),
      axis(81, "gear ranges", "spindle.gears"),
      axis(82, "direction codes", "spindle.cw spindle.ccw"),
      axis(83, "wait for speed", "confirm.at-speed"),
      axis(84, "wait for standstill", "confirm.stopped"),
      axis(85, "orientation", "spindle.orient machine.spindle.orient"),
      axis(86, "stops before or after the motion of their block", "blocks.stops-act"),
      axis(87, "coolant codes", "coolant.mist coolant.flood coolant.air coolant.through-tool"),
      axis(88, "coolant off, all or one by one", "coolant.off"),
      axis(89, "accessories and their confirmation", "idioms machine.outputs confirm.hold-down"),
      axis(90, "constant surface speed", "", "belongs to turning"),
    ],
  },
  {
    title: "Tools",
    axes: [
      axis(91, "the tool word", "numbers.code-width machine.length-offset.form"),
      axis(92, "the change", "tools.change tools.order tools.blocks tools.in-operator-swap"),
      axis(93, "tool chosen beforehand", "tools.preselect"),
      axis(94, "where the change leaves the axes", "machine.change-effects.position"),
      axis(95, "putting the last tool away", "tools.empty"),
      axis(96, "spindle after the change", "machine.change-effects.spindle"),
      axis(97, "length offset forms", "length-offset machine.length-offset"),
      axis(98, "offset number of a tool", "length-offset.number length-offset.added"),
      axis(99, "radius compensation", "compensation"),
      axis(100, "what is cancelled before a change", "cancel.before-change"),
      axis(101, "tool data in the program", "", "lengths stand in the controller's table"),
    ],
  },
  {
    title: "Cycles",
    axes: [
      axis(102, "which cycles there are", "cycles"),
      axis(103, "levels absolute or relative", "cycles.levels"),
      axis(104, "level between holes", "cycles.return"),
      axis(105, "what the initial level is", "cycles.initial-level"),
      axis(106, "numbers of the peck", "numbers.peck cycles.words.peck"),
      axis(107, "back-off of pecks", "cycles.back-off cycles.words.back-off"),
      axis(108, "dwell in a cycle", "cycles.words.dwell-unit numbers.cycle-dwell"),
      axis(109, "repeats", "cycles.words.repeat"),
      axis(110, "first hole on the cycle's block", "cycles.definition"),
      axis(111, "position words of holes", "cycles.positions"),
      axis(112, "end of a series", "cycles.ended-by"),
      axis(113, "tapping", "cycles.tap cycles.tap-feed cycles.tap-synchronised machine.tapping"),
      axis(114, "boring and reaming", "cycles.ream cycles.bore-dwell cycles.bore-stop cycles.bore-manual"),
      axis(115, "axis of the cycle", "cycles.axis"),
      axis(116, "patterns of holes", "", "holes are written one by one"),
    ],
  },
  {
    title: "Subprograms and variables",
    axes: [
      axis(117, "calls", "variables.control", readOnly),
      axis(
        118,
        "place and end of a subprogram",
        "variables.control",
        "in the same file; read, never written",
      ),
      axis(119, "nesting and repeats", "variables.nesting", readOnly),
      axis(120, "modes on return", "variables.control", "they stay as the subprogram leaves them"),
      axis(121, "variables and branches", "variables.parameters variables.control", readOnly),
      axis(122, "coordinates in subprograms", "variables.control", "the same as outside"),
    ],
  },
  {
    title: "Stops, start and environment",
    axes: [
      axis(123, "stops and their comments", "stops.stop stops.optional stops.comment"),
      axis(124, "state after a stop", "stops.resume"),
      axis(125, "the start of the program in one block or many", "blocks.modes"),
      axis(126, "probing", "", "programs do not probe; a measuring code may be declared (`idioms.measure`)"),
      axis(127, "channels, pallets, doors", "", "one channel; further codes may be declared (`codes`)"),
      axis(128, "overrides", "cancel.overrides"),
      axis(129, "transfer line", "", "belongs to the transfer, not to the program"),
      axis(130, "restart places", "blocks.sections"),
      axis(131, "times of the machine", "machine.spindle.spin-up machine.spindle.coast-down"),
    ],
  },
];

/** All axes by number. */
export const axes: readonly Axis[] = axisGroups.flatMap((group) => group.axes);
