import type { Finding } from "#base";
import { error, note } from "./finding.ts";

/* Units, shifts, places. */

export const unitsUnknown = (offset: number): Finding =>
  error(
    "job/cl-units",
    offset,
    "The unit of this length is not known: no UNITS stands before it.",
    "Put UNITS/MM or UNITS/INCHES before it, or state `--cl units=mm` or `--cl units=inch`.",
  );

export const unitsContradicted = (offset: number): Finding =>
  error(
    "job/cl-units",
    offset,
    "UNITS contradicts the unit that `--cl units` states.",
    "Leave `--cl units` out, or correct it.",
  );

export const shiftUnclear = (offset: number, word: "ORIGIN" | "TRANS"): Finding =>
  error(
    "job/cl-shift",
    offset,
    `What ${word} does to the coordinates behind it is not fixed.`,
    word === "ORIGIN"
      ? "State it: `--cl origin=ignore` where the work offset does it, `--cl origin=add` or `--cl origin=subtract`."
      : "State it: `--cl trans=add` or `--cl trans=subtract`.",
  );

export const placeUnknown = (offset: number, word: string, why: string): Finding =>
  error("job/cl-place", offset, `Where ${word} leads is not known: ${why}.`, "Write GOTO/x, y, z.");

export const secondFrom = (offset: number): Finding =>
  error(
    "job/cl-place",
    offset,
    "FROM states another place than that where the tool is.",
    "Write GOTO if the tool is to move there; otherwise leave it out.",
  );

export const axisTilted = (offset: number): Finding =>
  error(
    "job/cl-axis",
    offset,
    "The tool axis is not +Z.",
    "Give the source for three axes: the tool axis is 0, 0, 1 everywhere.",
  );

export const fourthIsFeed = (offset: number): Finding =>
  note(
    "job/cl-fourth",
    offset,
    "The fourth number of GOTO is taken for a feed.",
    "If it is something else: `--cl fourth=refuse` names each place.",
  );

export const fourthRefused = (offset: number): Finding =>
  error(
    "job/cl-fourth",
    offset,
    "GOTO has a fourth number.",
    "Write the feed as FEDRAT, or read it so with `--cl fourth=feed`.",
  );

export const homeIsClearance = (offset: number): Finding =>
  note(
    "job/cl-home",
    offset,
    "GOHOME raises Z to clearance; X and Y stay.",
    "If it is to go to the place of FROM: `--cl home=from`.",
  );

export const homeUnknown = (offset: number): Finding =>
  error("job/cl-home", offset, "GOHOME goes to the place of FROM, but none is stated.", "State FROM.");

export const clearanceUnknown = (offset: number): Finding =>
  error(
    "job/cl-clearance",
    offset,
    "RETRCT goes to a clearance plane that is not known.",
    "Put CLEARP/z before it, or state `--cl clearance=Z`.",
  );

export const clearanceTaken = (offset: number, height: string): Finding =>
  note(
    "job/cl-clearance",
    offset,
    `The source states no clearance: the highest Z of each operation is taken, ${height} at the highest.`,
    "State the Z of safe travel with `--cl clearance=Z`, CLEARP or a head file.",
  );
