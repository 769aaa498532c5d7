import type { Sourced } from "./row.ts";

/** A modal group: codes that replace each other. */
export interface ModalGroup extends Sourced {
  readonly group: string;
  readonly codes: readonly string[];
}

const table4 = { source: "NISTIR 6556 Table 4", confidence: "read" } as const;
const later = { source: "later RS274/NGC controllers", confidence: "memory" } as const;

// prettier-ignore
export const ngcGroups: readonly ModalGroup[] = [
  { group: "1 motion", codes: ["G0", "G1", "G2", "G3", "G80", "G81", "G82", "G83", "G84", "G85", "G86", "G88", "G89"], ...table4 },
  { group: "1 motion, cycles of later controllers", codes: ["G80", "G73", "G74"], ...later },
  { group: "2 plane", codes: ["G17", "G18", "G19"], ...table4 },
  { group: "3 distance", codes: ["G90", "G91"], ...table4 },
  { group: "4 arc centre", codes: ["G90.1", "G91.1"], ...later },
  { group: "5 feed mode", codes: ["G93", "G94"], ...table4 },
  { group: "5 feed mode, with feed per revolution", codes: ["G93", "G94", "G95"], ...later },
  { group: "6 units", codes: ["G20", "G21"], ...table4 },
  { group: "7 cutter radius compensation", codes: ["G40", "G41", "G42"], ...table4 },
  { group: "8 tool length offset", codes: ["G43", "G49"], ...table4 },
  { group: "10 cycle return", codes: ["G98", "G99"], ...table4 },
  { group: "12 coordinate system", codes: ["G54", "G55", "G56", "G57", "G58", "G59", "G59.1", "G59.2", "G59.3"], ...table4 },
  { group: "13 path", codes: ["G61", "G61.1", "G64"], ...table4 },
  { group: "0 non-modal", codes: ["G4", "G28", "G53", "G92.2"], ...table4 },
  { group: "M 4 stopping", codes: ["M0", "M1", "M2"], ...table4 },
  { group: "M 7 spindle", codes: ["M3", "M4", "M5"], ...table4 },
  { group: "M 7 spindle, with oriented stop", codes: ["M3", "M4", "M5", "M19"], ...later },
  { group: "M 8 coolant", codes: ["M7", "M8", "M9"], ...table4 },
  { group: "M 9 overrides", codes: ["M48", "M49"], ...table4 },
];

const gost = {
  source: "GOST 20999-83 (national edition of ISO 6983), G table; letters of the groups from memory",
} as const;

/** Groups of the ISO family, as far as the root dialect has their codes. */
// prettier-ignore
export const isoGroups: readonly ModalGroup[] = [
  { group: "a", codes: ["G00", "G01", "G02", "G03"], ...gost, confidence: "read" },
  { group: "c", codes: ["G17", "G18", "G19"], ...gost, confidence: "read" },
  { group: "d", codes: ["G40", "G41", "G42"], ...gost, confidence: "read" },
  { group: "e", codes: ["G80", "G81", "G82", "G83", "G84", "G85", "G89"], ...gost, confidence: "read" },
  { group: "j", codes: ["G90", "G91"], ...gost, confidence: "read" },
];

/** A code that shows by what a later block does, up to the next code of its group. */
export interface Lasting extends Sourced {
  readonly group: string;
  /** What stands before: a place that the probe starts from. */
  readonly before: string;
  /** Codes of the group, and the line that the probe gives under each (places in mm). */
  readonly codes: readonly (readonly [code: string, line: string])[];
  /** Block that stands behind each code, and again behind blocks of other groups. */
  readonly probe: string;
}

// prettier-ignore
export const lasting: readonly Lasting[] = [
  { group: "1", before: "F100", probe: "X5 Y5", codes: [["G1", "line x5 y5 f100"], ["G0", "rapid x5 y5"]], ...table4 },
  { group: "1", before: "G0 X0 Y0 Z9\nF100", probe: "X5", codes: [["G99 G81 X5 Z-1 R1", "hole x5 y0 z1 f100"], ["G0 Y0 Z1", "rapid x5 y0 z1"]], ...table4 },
  { group: "2", before: "F100", probe: "G0 X0 Y0 Z0\nG2 X2 Z2 R5", codes: [["G18", "radiusZx x2 y0 z2 c5,0 -1 f100"], ["G17", "radiusXy x2 y0 z2 c5,0 -1 f100"]], ...table4 },
  { group: "3", before: "G0 X0 Y0", probe: "G0 X5", codes: [["G90", "rapid x5 y0"], ["G91", "rapid x10 y0"]], ...table4 },
  { group: "5", before: "G0 X0 Y0", probe: "G1 X5 F100", codes: [["G94", "line x5 y0 f100"], ["G93", "line x5 y0 f10"]], ...table4 },
  { group: "6", before: "", probe: "G0 X5", codes: [["G21", "rapid x5"], ["G20", "rapid x127"]], ...table4 },
  { group: "10", before: "G0 X0 Y0 Z9\nF100", probe: "G81 X5 Z-1 R1", codes: [["G98", "hole x5 y0 z9 f100"], ["G99", "hole x5 y0 z1 f100"]], ...table4 },
];
