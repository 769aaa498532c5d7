/* Generated from schemas/job.schema.json by `npm run generate`. Do not edit. */

/**
 * Version of this format.
 */
export type Version = "1";
/**
 * What is made; stands on the set-up sheet and in the header of the program.
 */
export type Name = string;
/**
 * Unit of every length and of every feed in this job.
 */
export type Units = "mm" | "inch";
/**
 * Number for controllers that number their programs.
 */
export type ProgramNumber = number;
/**
 * Name for controllers that name their programs.
 */
export type ProgramName = string;
/**
 * Least x, y and z of the stock, lengths in work coordinates.
 *
 * @minItems 3
 * @maxItems 3
 */
export type LeastCorner = [number, number, number];
/**
 * Greatest x, y and z of the stock, lengths in work coordinates; each above that of `min`.
 *
 * @minItems 3
 * @maxItems 3
 */
export type GreatestCorner = [number, number, number];
/**
 * What the stock is made of; stands on the set-up sheet.
 */
export type Material = string;
/**
 * Boxes of clamps and stops in work coordinates that no motion may enter.
 *
 * @minItems 1
 */
export type Fixtures = [Fixture, ...Fixture[]];
/**
 * What stands there; findings name it.
 */
export type FixtureName = string;
/**
 * Least x, y and z, lengths in work coordinates.
 *
 * @minItems 3
 * @maxItems 3
 */
export type LeastCorner1 = [number, number, number];
/**
 * Greatest x, y and z, lengths in work coordinates; each above that of `min`.
 *
 * @minItems 3
 * @maxItems 3
 */
export type GreatestCorner1 = [number, number, number];
/**
 * Work offset of operations that state none, 1 to 9; 1 unless given.
 */
export type WorkOffset = number;
/**
 * Z of safe travel over stock and clamps, a length in work coordinates.
 */
export type Clearance = number;
/**
 * The tools that the operations use.
 *
 * @minItems 1
 */
export type Tools = [Tool, ...Tool[]];
/**
 * Number of the tool, by which operations and the controller know it. No two tools share one.
 */
export type ToolNumber = number;
/**
 * What the tool is. The last three never turn.
 */
export type ToolKind =
  | "end-mill"
  | "ball-mill"
  | "bull-nose"
  | "face-mill"
  | "v-bit"
  | "engraver"
  | "drill"
  | "spot-drill"
  | "reamer"
  | "tap"
  | "boring-bar"
  | "chamfer"
  | "thread-mill"
  | "probe"
  | "drag-knife"
  | "pen";
/**
 * Cutting diameter, a length above 0.
 */
export type Diameter = number;
/**
 * What the operator reads on the set-up sheet and at a tool change.
 */
export type Description = string;
/**
 * Number of cutting edges.
 */
export type Flutes = number;
/**
 * Greatest spindle speed that the tool bears, revolutions a minute.
 */
export type GreatestSpeed = number;
/**
 * Least spindle speed at which the tool may cut, revolutions a minute; not above `maxRpm`.
 */
export type LeastSpeed = number;
/**
 * Greatest feed that the tool bears, length units a minute.
 */
export type GreatestFeed = number;
/**
 * Number of the tool length offset; the tool's number unless given.
 */
export type LengthOffset = number;
/**
 * Number of the tool radius offset that cutter compensation uses.
 */
export type RadiusOffset = number;
/**
 * Length from the spindle nose to the tool tip, a length.
 */
export type GaugeLength = number;
/**
 * Length of the cutting edges, a length.
 */
export type FluteLength = number;
/**
 * Length from the holder's face to the tool tip, a length.
 */
export type StickOut = number;
/**
 * Diameter of the shank, a length.
 */
export type Shank = number;
/**
 * Greatest diameter of the holder, a length.
 */
export type HolderDiameter = number;
/**
 * Length of the holder from the spindle nose to its face, a length.
 */
export type HolderLength = number;
/**
 * Radius of the corner of a bull-nose tool, a length; 0 is sharp.
 */
export type CornerRadius = number;
/**
 * Included angle of the point, degrees above 0, at most 180.
 */
export type TipAngle = number;
/**
 * Diameter of the flat at the point, a length; 0 is sharp.
 */
export type TipDiameter = number;
/**
 * Lead of a tap or thread mill, a length a revolution.
 */
export type Lead = number;
/**
 * Hand of cutting: right cuts with the spindle cw, left with it ccw. Without it either direction is accepted.
 */
export type Hand = "right" | "left";
/**
 * Whether the tool may plunge straight down.
 */
export type CentreCutting = boolean;
/**
 * Cutting time after which the tool is worn, minutes. An operation that would pass it is done with a spare, see `spareFor`; without one a warning tells it.
 */
export type Life = number;
/**
 * Number of the tool that this one takes over from when that has cut for its `life`, at the start of an operation. Both are of one kind and cutting geometry; lengths, holder, offsets, limits and life may differ. No operation names a spare. Several spares of one tool are taken in the order in which they are listed.
 */
export type SpareFor = number;
/**
 * Whether the length is measured after each change to this tool.
 */
export type Measure = boolean;
/**
 * What is done, in order. Nothing carries over from one operation to the next.
 *
 * @minItems 1
 */
export type Operations = [Operation, ...Operation[]];
/**
 * Short name by which findings and options know the operation. No two operations share one.
 */
export type OperationId = string;
/**
 * What is done; stands on the set-up sheet and in comments of the program. The id unless given.
 */
export type OperationName = string;
/**
 * Number of a tool that the job defines.
 */
export type Tool1 = number;
/**
 * Spindle speed, revolutions a minute.
 */
export type Speed = number;
/**
 * Seen from the spindle towards the work: cw drives a right-hand screw into the work.
 */
export type Direction = "cw" | "ccw";
/**
 * Coolant at the start of the operation; off unless given.
 */
export type Coolant =
  | ("off" | "mist" | "flood" | "air" | "through-tool")
  | ["mist" | "flood" | "air" | "through-tool", ...("mist" | "flood" | "air" | "through-tool")[]];
/**
 * What a feed means: length units a minute, length units a revolution, or 1/minutes for the whole motion. Per minute unless given.
 */
export type FeedMode = "per-minute" | "per-revolution" | "inverse-time";
/**
 * Work offset, 1 to 9; the job's unless given.
 */
export type WorkOffset1 = number;
/**
 * Z of safe travel in this operation, a length in work coordinates; the job's unless given.
 */
export type Clearance1 = number;
/**
 * Where the dust hood stands while cutting.
 */
export type Hood = "up" | "down";
/**
 * How far the path may be rounded off where it is blended, and chords may leave their arc, a length above 0. It is written rounded down; a controller that cannot be told gets the exact path, or the operation is refused.
 */
export type Tolerance = number;
/**
 * Whether corners are met exactly or blended.
 */
export type PathMode = "exact" | "blend";
/**
 * What the tool does, in order. The first motion is a rapid that names x and y; z is at clearance until named.
 *
 * @minItems 1
 */
export type Moves = [Move, ...Move[]];
/**
 * One move of one kind.
 *
 * This interface was referenced by `JobSchema`'s JSON-Schema
 * via the `definition` "move".
 */
export type Move =
  | Rapid
  | Line
  | ArcInXY
  | ArcInZX
  | ArcInYZ
  | Holes
  | PathAtFeed
  | PathAtRapid
  | Dwell1
  | Pause
  | Note
  | Spindle1
  | Coolant1
  | Compensation;
/**
 * A length in work coordinates.
 */
export type X = number;
/**
 * A length in work coordinates.
 */
export type Y = number;
/**
 * A length in work coordinates.
 */
export type Z = number;
/**
 * Rotation about X, unwrapped degrees.
 */
export type A = number;
/**
 * Rotation about Y, unwrapped degrees.
 */
export type B = number;
/**
 * Rotation about Z, unwrapped degrees.
 */
export type C = number;
/**
 * Feed along the path of the tool tip: units a minute, units a revolution or 1/minutes, as the operation's `feedMode` says. Holds for the lines, arcs and paths that follow in the operation until another is stated; that of holes is for those holes alone.
 *
 * This interface was referenced by `JobSchema`'s JSON-Schema
 * via the `definition` "feed".
 */
export type Feed = number;
/**
 * A length in work coordinates.
 */
export type EndX = number;
/**
 * A length in work coordinates.
 */
export type EndY = number;
/**
 * A length in work coordinates; makes a helix.
 */
export type EndZ = number;
/**
 * A length in work coordinates.
 */
export type CentreX = number;
/**
 * A length in work coordinates.
 */
export type CentreY = number;
/**
 * Sense of the arc, seen from the + end of the plane's normal (zx: from +Y).
 *
 * This interface was referenced by `JobSchema`'s JSON-Schema
 * via the `definition` "turn".
 */
export type Turn = "cw" | "ccw";
/**
 * Plane of the arc; xy unless given.
 */
export type Plane = "xy";
/**
 * Turns started; 1 unless given. An arc that ends where it starts is that many full circles.
 *
 * This interface was referenced by `JobSchema`'s JSON-Schema
 * via the `definition` "turns".
 */
export type Turns = number;
/**
 * A length in work coordinates.
 */
export type EndX1 = number;
/**
 * A length in work coordinates; makes a helix.
 */
export type EndY1 = number;
/**
 * A length in work coordinates.
 */
export type EndZ1 = number;
/**
 * A length in work coordinates.
 */
export type CentreZ = number;
/**
 * A length in work coordinates.
 */
export type CentreX1 = number;
/**
 * Plane of the arc.
 */
export type Plane1 = "zx";
/**
 * A length in work coordinates; makes a helix.
 */
export type EndX2 = number;
/**
 * A length in work coordinates.
 */
export type EndY2 = number;
/**
 * A length in work coordinates.
 */
export type EndZ2 = number;
/**
 * A length in work coordinates.
 */
export type CentreY1 = number;
/**
 * A length in work coordinates.
 */
export type CentreZ1 = number;
/**
 * Plane of the arc.
 */
export type Plane2 = "yz";
/**
 * Kind, places and levels of the holes.
 */
export type Holes1 = Drill | DrillWithDwell | Peck | ChipBreak | Tap | Bore | Ream;
/**
 * Drill.
 */
export type Kind = "drill";
/**
 * Where the holes are, each [x, y], lengths in work coordinates.
 *
 * @minItems 1
 *
 * This interface was referenced by `JobSchema`'s JSON-Schema
 * via the `definition` "places".
 */
export type Places = [[number, number], ...[number, number][]];
/**
 * Absolute Z of the surface, a length; above depth.
 *
 * This interface was referenced by `JobSchema`'s JSON-Schema
 * via the `definition` "top".
 */
export type Top = number;
/**
 * Absolute Z of the bottom, a length.
 *
 * This interface was referenced by `JobSchema`'s JSON-Schema
 * via the `definition` "depth".
 */
export type Depth = number;
/**
 * Absolute Z where the feed starts, a length; not below top. Pecks count from it.
 *
 * This interface was referenced by `JobSchema`'s JSON-Schema
 * via the `definition` "retract".
 */
export type Retract = number;
/**
 * Level between holes and after the last: `retract`, or `initial`, the higher of retract and the Z before; retract unless given.
 *
 * This interface was referenced by `JobSchema`'s JSON-Schema
 * via the `definition` "between".
 */
export type Between = "retract" | "initial";
/**
 * Drill with a dwell at the bottom.
 */
export type Kind1 = "dwell";
/**
 * Dwell at the bottom, seconds above 0.
 *
 * This interface was referenced by `JobSchema`'s JSON-Schema
 * via the `definition` "holeDwell".
 */
export type Dwell = number;
/**
 * Deep hole with full retract.
 */
export type Kind2 = "peck";
/**
 * Depth of one peck, a length above 0.
 *
 * This interface was referenced by `JobSchema`'s JSON-Schema
 * via the `definition` "peck".
 */
export type Peck1 = number;
/**
 * Way back between pecks, a length above 0; 0.25 mm unless given.
 *
 * This interface was referenced by `JobSchema`'s JSON-Schema
 * via the `definition` "backOff".
 */
export type BackOff = number;
/**
 * Deep hole with chip breaking.
 */
export type Kind3 = "chip-break";
/**
 * Tap; its hand is the tool's.
 */
export type Kind4 = "tap";
/**
 * Lead of the thread, a length a revolution above 0.
 */
export type Lead1 = number;
/**
 * Bore.
 */
export type Kind5 = "bore";
/**
 * Feed on the way out, in the unit of `feed`; as the feed in unless given.
 *
 * This interface was referenced by `JobSchema`'s JSON-Schema
 * via the `definition` "feedOut".
 */
export type FeedOut = number;
/**
 * Ream.
 */
export type Kind6 = "ream";
/**
 * Feed into the holes, for these holes alone. A tap needs none: its feed is speed times lead, and one that is stated must agree within 0.1 %.
 */
export type Feed1 = number;
/**
 * Lines at feed.
 */
export type Kind7 = "line";
/**
 * Points in order, each [x, y, z], lengths in work coordinates.
 *
 * @minItems 1
 *
 * This interface was referenced by `JobSchema`'s JSON-Schema
 * via the `definition` "points".
 */
export type Points = [[number, number, number], ...[number, number, number][]];
/**
 * Rapids.
 */
export type Kind8 = "rapid";
/**
 * Time, seconds above 0.
 */
export type Dwell2 = number;
/**
 * What the operator is to do.
 */
export type Pause1 = string;
/**
 * Whether the operator can switch the stop off.
 */
export type Optional = boolean;
/**
 * Whether the tool goes to the park position first.
 */
export type Park = boolean;
/**
 * Text of the comment.
 */
export type Note1 = string;
/**
 * Spindle speed, revolutions a minute.
 */
export type Speed1 = number;
/**
 * What runs from here on.
 */
export type Coolant2 =
  | ("off" | "mist" | "flood" | "air" | "through-tool")
  | ["mist" | "flood" | "air" | "through-tool", ...("mist" | "flood" | "air" | "through-tool")[]];
/**
 * Side of the contour on which the tool runs, seen along the motion. It takes effect with the next line in the plane, longer than the tool's radius, and is off before holes, pauses and the operation's end.
 */
export type Compensation1 = "left" | "right" | "off";
/**
 * A point as [x, y, z], lengths in work coordinates.
 *
 * @minItems 3
 * @maxItems 3
 *
 * This interface was referenced by `JobSchema`'s JSON-Schema
 * via the `definition` "corner".
 */
export type Corner = [number, number, number];
/**
 * Number of a work offset.
 *
 * This interface was referenced by `JobSchema`'s JSON-Schema
 * via the `definition` "workOffset".
 */
export type WorkOffset2 = number;
/**
 * A number above 0.
 *
 * This interface was referenced by `JobSchema`'s JSON-Schema
 * via the `definition` "above0".
 */
export type Above0 = number;
/**
 * A number in the controller's tool or offset table.
 *
 * This interface was referenced by `JobSchema`'s JSON-Schema
 * via the `definition` "tableNumber".
 */
export type TableNumber = number;
/**
 * Off, one coolant, or a list of those that run together.
 *
 * This interface was referenced by `JobSchema`'s JSON-Schema
 * via the `definition` "coolant".
 */
export type Coolant3 =
  | ("off" | "mist" | "flood" | "air" | "through-tool")
  | ["mist" | "flood" | "air" | "through-tool", ...("mist" | "flood" | "air" | "through-tool")[]];

/**
 * Neutral machining operations, version 1. Lengths are in the job's units, angles in degrees, times in seconds, speeds in revolutions a minute. Numbers are finite; every list holds at least one element; unknown and repeated keys are refused.
 */
export interface JobSchema {
  job: Version;
  name?: Name;
  units: Units;
  program?: Program;
  stock?: Stock;
  fixtures?: Fixtures;
  workOffset?: WorkOffset;
  clearance: Clearance;
  tools: Tools;
  operations: Operations;
}
/**
 * How the controller names the program.
 */
export interface Program {
  number?: ProgramNumber;
  name?: ProgramName;
}
/**
 * Box of the raw material in work coordinates. Without it, rapids through material cannot be found.
 */
export interface Stock {
  min: LeastCorner;
  max: GreatestCorner;
  material?: Material;
}
/**
 * One box.
 */
export interface Fixture {
  name: FixtureName;
  min: LeastCorner1;
  max: GreatestCorner1;
}
/**
 * One tool.
 *
 * This interface was referenced by `JobSchema`'s JSON-Schema
 * via the `definition` "tool".
 */
export interface Tool {
  number: ToolNumber;
  kind: ToolKind;
  diameter: Diameter;
  description?: Description;
  flutes?: Flutes;
  maxRpm?: GreatestSpeed;
  minRpm?: LeastSpeed;
  maxFeed?: GreatestFeed;
  lengthOffset?: LengthOffset;
  radiusOffset?: RadiusOffset;
  length?: GaugeLength;
  fluteLength?: FluteLength;
  stickOut?: StickOut;
  shank?: Shank;
  holder?: Holder;
  cornerRadius?: CornerRadius;
  tipAngle?: TipAngle;
  tipDiameter?: TipDiameter;
  lead?: Lead;
  hand?: Hand;
  centreCutting?: CentreCutting;
  life?: Life;
  spareFor?: SpareFor;
  measure?: Measure;
}
/**
 * The holder as a cylinder.
 */
export interface Holder {
  diameter: HolderDiameter;
  length: HolderLength;
}
/**
 * One operation with one tool.
 *
 * This interface was referenced by `JobSchema`'s JSON-Schema
 * via the `definition` "operation".
 */
export interface Operation {
  id: OperationId;
  name?: OperationName;
  tool: Tool1;
  spindle?: Spindle;
  coolant?: Coolant;
  feedMode?: FeedMode;
  workOffset?: WorkOffset1;
  clearance?: Clearance1;
  hood?: Hood;
  tolerance?: Tolerance;
  path?: PathMode;
  moves: Moves;
}
/**
 * Speed and direction. Stated with every tool that turns, and with none of probe, drag-knife and pen.
 */
export interface Spindle {
  rpm: Speed;
  direction: Direction;
}
/**
 * A rapid traverse.
 *
 * This interface was referenced by `JobSchema`'s JSON-Schema
 * via the `definition` "rapidMove".
 */
export interface Rapid {
  rapid: Rapid1;
}
/**
 * Where the tool tip goes at rapid traverse.
 */
export interface Rapid1 {
  x?: X;
  y?: Y;
  z?: Z;
  a?: A;
  b?: B;
  c?: C;
}
/**
 * A straight feed motion. Linear and rotary axes together need inverse-time feed.
 *
 * This interface was referenced by `JobSchema`'s JSON-Schema
 * via the `definition` "lineMove".
 */
export interface Line {
  line: Line1;
  feed?: Feed;
}
/**
 * Where the tool tip goes in a straight line at feed.
 */
export interface Line1 {
  x?: X;
  y?: Y;
  z?: Z;
  a?: A;
  b?: B;
  c?: C;
}
/**
 * An arc or helix about Z.
 *
 * This interface was referenced by `JobSchema`'s JSON-Schema
 * via the `definition` "arcXyMove".
 */
export interface ArcInXY {
  arc: Arc;
  turn: Turn;
  plane?: Plane;
  turns?: Turns;
  feed?: Feed;
}
/**
 * End and centre in XY, both absolute; z makes a helix.
 */
export interface Arc {
  x: EndX;
  y: EndY;
  z?: EndZ;
  cx: CentreX;
  cy: CentreY;
}
/**
 * An arc or helix about Y.
 *
 * This interface was referenced by `JobSchema`'s JSON-Schema
 * via the `definition` "arcZxMove".
 */
export interface ArcInZX {
  arc: Arc1;
  turn: Turn;
  plane: Plane1;
  turns?: Turns;
  feed?: Feed;
}
/**
 * End and centre in ZX, both absolute; y makes a helix.
 */
export interface Arc1 {
  x: EndX1;
  y?: EndY1;
  z: EndZ1;
  cz: CentreZ;
  cx: CentreX1;
}
/**
 * An arc or helix about X.
 *
 * This interface was referenced by `JobSchema`'s JSON-Schema
 * via the `definition` "arcYzMove".
 */
export interface ArcInYZ {
  arc: Arc2;
  turn: Turn;
  plane: Plane2;
  turns?: Turns;
  feed?: Feed;
}
/**
 * End and centre in YZ, both absolute; x makes a helix.
 */
export interface Arc2 {
  x?: EndX2;
  y: EndY2;
  z: EndZ2;
  cy: CentreY1;
  cz: CentreZ1;
}
/**
 * A row of like holes along Z. Not under compensation or inverse-time feed.
 *
 * This interface was referenced by `JobSchema`'s JSON-Schema
 * via the `definition` "holesMove".
 */
export interface Holes {
  holes: Holes1;
  feed?: Feed1;
}
/**
 * Feed in, rapid out.
 *
 * This interface was referenced by `JobSchema`'s JSON-Schema
 * via the `definition` "drillHoles".
 */
export interface Drill {
  kind: Kind;
  at: Places;
  top: Top;
  depth: Depth;
  retract: Retract;
  between?: Between;
}
/**
 * Feed in, dwell, rapid out.
 *
 * This interface was referenced by `JobSchema`'s JSON-Schema
 * via the `definition` "dwellHoles".
 */
export interface DrillWithDwell {
  kind: Kind1;
  at: Places;
  top: Top;
  depth: Depth;
  retract: Retract;
  dwell: Dwell;
  between?: Between;
}
/**
 * Feed in by pecks, rapid to retract after each and back to the last depth plus the back-off.
 *
 * This interface was referenced by `JobSchema`'s JSON-Schema
 * via the `definition` "peckHoles".
 */
export interface Peck {
  kind: Kind2;
  at: Places;
  top: Top;
  depth: Depth;
  retract: Retract;
  peck: Peck1;
  backOff?: BackOff;
  between?: Between;
}
/**
 * Feed in by pecks, rapid up by the back-off between them.
 *
 * This interface was referenced by `JobSchema`'s JSON-Schema
 * via the `definition` "chipBreakHoles".
 */
export interface ChipBreak {
  kind: Kind3;
  at: Places;
  top: Top;
  depth: Depth;
  retract: Retract;
  peck: Peck1;
  backOff?: BackOff;
  between?: Between;
}
/**
 * Feed in, reverse, feed out; the feed is speed times lead.
 *
 * This interface was referenced by `JobSchema`'s JSON-Schema
 * via the `definition` "tapHoles".
 */
export interface Tap {
  kind: Kind4;
  at: Places;
  top: Top;
  depth: Depth;
  retract: Retract;
  lead: Lead1;
  between?: Between;
}
/**
 * Feed in, dwell if stated, feed out to retract.
 *
 * This interface was referenced by `JobSchema`'s JSON-Schema
 * via the `definition` "boreHoles".
 */
export interface Bore {
  kind: Kind5;
  at: Places;
  top: Top;
  depth: Depth;
  retract: Retract;
  dwell?: Dwell;
  feedOut?: FeedOut;
  between?: Between;
}
/**
 * Feed in, feed out to retract.
 *
 * This interface was referenced by `JobSchema`'s JSON-Schema
 * via the `definition` "reamHoles".
 */
export interface Ream {
  kind: Kind6;
  at: Places;
  top: Top;
  depth: Depth;
  retract: Retract;
  feedOut?: FeedOut;
  between?: Between;
}
/**
 * Lines through many points. Not under inverse-time feed.
 *
 * This interface was referenced by `JobSchema`'s JSON-Schema
 * via the `definition` "linePathMove".
 */
export interface PathAtFeed {
  path: Path;
  feed?: Feed;
}
/**
 * Lines through points.
 */
export interface Path {
  kind: Kind7;
  points: Points;
}
/**
 * Rapids through many points. Not under inverse-time feed.
 *
 * This interface was referenced by `JobSchema`'s JSON-Schema
 * via the `definition` "rapidPathMove".
 */
export interface PathAtRapid {
  path: Path1;
}
/**
 * Rapids through points.
 */
export interface Path1 {
  kind: Kind8;
  points: Points;
}
/**
 * The tool stands still for a time.
 *
 * This interface was referenced by `JobSchema`'s JSON-Schema
 * via the `definition` "dwellMove".
 */
export interface Dwell1 {
  dwell: Dwell2;
}
/**
 * The machine stops, spindle too, until the operator goes on. Z is at or above clearance.
 *
 * This interface was referenced by `JobSchema`'s JSON-Schema
 * via the `definition` "pauseMove".
 */
export interface Pause {
  pause: Pause1;
  optional?: Optional;
  park?: Park;
}
/**
 * A comment in the program.
 *
 * This interface was referenced by `JobSchema`'s JSON-Schema
 * via the `definition` "noteMove".
 */
export interface Note {
  note: Note1;
}
/**
 * Another speed in an operation that states a spindle; the direction stays.
 *
 * This interface was referenced by `JobSchema`'s JSON-Schema
 * via the `definition` "spindleMove".
 */
export interface Spindle1 {
  spindle: Spindle2;
}
/**
 * The new speed.
 */
export interface Spindle2 {
  rpm: Speed1;
}
/**
 * Another coolant.
 *
 * This interface was referenced by `JobSchema`'s JSON-Schema
 * via the `definition` "coolantMove".
 */
export interface Coolant1 {
  coolant: Coolant2;
}
/**
 * Cutter radius compensation by the controller: the coordinates are those of the contour.
 *
 * This interface was referenced by `JobSchema`'s JSON-Schema
 * via the `definition` "compMove".
 */
export interface Compensation {
  comp: Compensation1;
}
/**
 * Where the tool tip goes; an axis that is left out keeps its value. At least one is named.
 *
 * This interface was referenced by `JobSchema`'s JSON-Schema
 * via the `definition` "axes".
 */
export interface Axes {
  x?: X;
  y?: Y;
  z?: Z;
  a?: A;
  b?: B;
  c?: C;
}
