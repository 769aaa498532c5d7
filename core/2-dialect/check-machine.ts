import type { Axis, Box, MachineFacts, RackFacts } from "#base";
import type { Resolving } from "./resolving.ts";

type Fail = Resolving["fail"];

/** Facts of the machine that contradict one another. */
export function checkMachine({ fail }: Resolving, machine: MachineFacts): void {
  for (const [axis, [least, most]] of Object.entries(machine.travel)) {
    if (least >= most)
      fail(
        "dialect/machine",
        `machine.travel.${axis}`,
        `The travel of ${axis.toUpperCase()} ends where it begins, or below.`,
      );
  }
  const { minRpm, maxRpm } = machine.spindle;
  if (minRpm !== undefined && maxRpm !== undefined && minRpm > maxRpm) {
    fail("dialect/machine", "machine.spindle.min-rpm", "The lowest speed is above the highest one.");
  }
  if (machine.feed.least > machine.feed.most) {
    fail("dialect/machine", "machine.feed.least", "The lowest feed is above the highest one.");
  }
  checkRates(fail, machine);
  machine.keepOut.forEach((box, index) => checkBox(fail, `machine.keep-out.${index + 1}`, box));
  checkOutputs(fail, machine);
  checkRetract(fail, machine);
  checkPark(fail, machine);
  if (machine.rack !== undefined) checkRack(fail, machine, machine.rack);
}

/** A rate of 0 can be written with its unit; nothing would ever arrive. */
function checkRates(fail: Fail, { axisFeed, dynamics }: MachineFacts): void {
  const groups = [
    ["machine.axis-feed", axisFeed],
    ["machine.rapid-rate", dynamics.rapidRate],
    ["machine.acceleration", dynamics.acceleration],
  ] as const;
  for (const [group, rates] of groups)
    for (const [axis, rate] of Object.entries(rates))
      if (rate <= 0) fail("dialect/machine", `${group}.${axis}`, `\`${group}.${axis}\` must be above 0.`);
}

function checkBox(fail: Fail, path: string, { min, max }: Box): void {
  if (min.some((least, index) => least >= max[index])) {
    fail("dialect/machine", path, "Each number of `min` must be below that of `max`.");
  }
}

function checkOutputs(fail: Fail, { outputs }: MachineFacts): void {
  for (const [index, { name, number }] of outputs.entries()) {
    const other = outputs.slice(0, index).find((before) => before.number === number);
    if (other !== undefined)
      fail(
        "dialect/machine",
        `machine.outputs.${name}.number`,
        `\`${other.name}\` is output ${number}, too.`,
      );
  }
}

function checkRetract(fail: Fail, { retract, swap, lengthOffset, travel }: MachineFacts): void {
  if (retract?.by === "clearance" && (swap === "rack" || swap === "controller")) {
    const message = `Tools are swapped by ${swap}, but Z only goes up to the job's clearance: that says nothing about the place of the swap.`;
    fail("dialect/retract", "machine.retract.by", message, "Retract by machine-move or reference-return.");
  }
  if (retract?.by === "clearance" && lengthOffset?.cancelMoves === true) {
    const message =
      "Cancelling the length offset moves Z, which is allowed at swap height alone, and a retract by clearance has none.";
    fail(
      "dialect/retract",
      "machine.length-offset.cancel-moves",
      message,
      "Retract by machine-move or reference-return.",
    );
  }
  if (retract?.cancelLengthFirst === true && lengthOffset?.cancelMoves === true) {
    const message =
      "Cancelling the length offset moves Z, which is allowed at swap height alone, and the retract cancels it on the way there.";
    fail(
      "dialect/retract",
      "machine.retract.cancel-length-first",
      message,
      "State `cancel-length-first: no`, or `cancel-moves: no` if Z stands still.",
    );
  }
  if (retract?.by === "machine-move" && outside(travel, "z", retract.z)) {
    fail("dialect/retract", "machine.retract.z", "The swap height is outside the travel of Z.");
  }
}

function checkPark(fail: Fail, { park, travel }: MachineFacts): void {
  if (park !== undefined && (outside(travel, "x", park.x) || outside(travel, "y", park.y))) {
    fail("dialect/machine", "machine.park", "The parking place is outside the travel.");
  }
}

function outside(travel: MachineFacts["travel"], axis: Axis, value: number): boolean {
  const range = travel[axis];
  return range !== undefined && (value < range[0] || value > range[1]);
}

function checkRack(fail: Fail, machine: MachineFacts, rack: RackFacts): void {
  const path = "machine.rack";
  const { travel, retract } = machine;
  if (rack.pocketZ >= rack.clearZ)
    fail("dialect/rack", `${path}.clear-z`, "The clear height is not above the pocket height.");
  if (rack.descendFrom < 0 || rack.pocketZ + rack.descendFrom > rack.clearZ) {
    fail(
      "dialect/rack",
      `${path}.descend-from`,
      "The slow descent begins above the clear height, or below the pocket.",
    );
  }
  if (retract?.by === "machine-move" && rack.clearZ > retract.z) {
    fail("dialect/rack", `${path}.clear-z`, "The clear height is above the swap height.");
  }
  for (const [key, z] of [
    ["clear-z", rack.clearZ],
    ["pocket-z", rack.pocketZ],
  ] as const) {
    if (outside(travel, "z", z))
      fail("dialect/rack", `${path}.${key}`, `\`${path}.${key}\` is outside the travel of Z.`);
  }
  if (rack.zone !== undefined) checkBox(fail, `${path}.zone`, rack.zone);
  rack.pockets.forEach((pocket, index) => checkPocket(fail, machine, rack, pocket, index + 1));
}

function checkPocket(
  fail: Fail,
  { travel }: MachineFacts,
  { slide, zone }: RackFacts,
  pocket: RackFacts["pockets"][number],
  number: number,
): void {
  const path = "machine.rack.pockets";
  const approach = slide && { x: pocket.x - slide.x, y: pocket.y - slide.y };
  for (const [what, at] of [
    ["Pocket", pocket],
    ["The approach to pocket", approach],
  ] as const) {
    if (at === undefined) continue;
    if (outside(travel, "x", at.x) || outside(travel, "y", at.y)) {
      fail(
        "dialect/rack",
        path,
        `${what} ${number} is outside the travel.`,
        "Correct `first`, `pitch` or `count`.",
      );
    }
  }
  if (zone === undefined) return;
  const inside =
    pocket.x >= zone.min[0] && pocket.x <= zone.max[0] && pocket.y >= zone.min[1] && pocket.y <= zone.max[1];
  if (!inside)
    fail(
      "dialect/rack",
      "machine.rack.zone",
      `Pocket ${number} is outside the rack's zone.`,
      "Make the zone take in every pocket.",
    );
}
