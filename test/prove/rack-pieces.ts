import { atomsPerMillimetre } from "#base";
import { confirm, move, retract, step } from "./pieces.ts";
import type { Setting } from "./pieces.ts";
import type { Item } from "./layout.ts";

interface Rack {
  clearZ: number;
  pocketZ: number;
  above: number;
  feed: number;
  pocket: { x: number; y: number };
  entry: { x: number; y: number };
  slideFeed: number;
}

/** The rack's numbers in millimetres, for one pocket. */
function rackAt(setting: Setting, pocket: number): Rack {
  const rack = setting.facts.rack!;
  const scale = (value: number): number => value / atomsPerMillimetre;
  const at = rack.pockets[pocket - 1];
  return {
    clearZ: scale(rack.clearZ),
    pocketZ: scale(rack.pocketZ),
    above: scale(rack.pocketZ + rack.descendFrom),
    feed: scale(rack.descendFeed),
    pocket: { x: scale(at.x), y: scale(at.y) },
    entry: { x: scale(at.x - (rack.slide?.x ?? 0)), y: scale(at.y - (rack.slide?.y ?? 0)) },
    slideFeed: scale(rack.slide?.feed ?? 0),
  };
}

const machine = (
  kind: "rapid" | "line",
  at: { x?: number; y?: number; z?: number },
  feed: number,
  name: string,
): Item => move({ kind, machine: true, ...at, ...(kind === "line" ? { feed } : {}) }, name);

/** Down to the holder's seat: rapid first, the last part at feed. */
function descend(rack: Rack, name: string): Item[] {
  return [
    machine("rapid", { z: rack.above }, 0, `${name} above`),
    machine("line", { z: rack.pocketZ }, rack.feed, `${name} down`),
  ];
}

const auxiliary = (
  action: "release" | "clamp" | "cover-open" | "cover-close" | "taper-air-on" | "taper-air-off",
  name: string,
): Item => step({ kind: "auxiliary", action, code: "" }, name);

export function coverOpen(setting: Setting): Item[] {
  return setting.facts.rack!.cover ? [auxiliary("cover-open", "cover open")] : [];
}

export function coverClose(setting: Setting): Item[] {
  return setting.facts.rack!.cover ? [auxiliary("cover-close", "cover close")] : [];
}

/** The tool held goes back to its pocket. */
export function returnTool(setting: Setting, pocket: number): Item[] {
  const rack = rackAt(setting, pocket);
  const slides = setting.facts.rack!.style === "slide-in";
  const closes = setting.facts.drawbar!.travels === "clamped";
  return [
    machine("rapid", { z: rack.clearZ }, 0, "return clear"),
    machine("rapid", slides ? rack.entry : rack.pocket, 0, "return xy"),
    ...descend(rack, "return"),
    ...(slides ? [machine("line", rack.pocket, rack.slideFeed, "slide in")] : []),
    ...confirm(setting, "air").map((item) => ({ ...item, name: "air before release" })),
    auxiliary("release", "release"),
    ...confirm(setting, "released"),
    machine("rapid", { z: rack.clearZ }, 0, "leave pocket"),
    ...(closes ? [...confirm(setting, "air"), auxiliary("clamp", "clamp empty")] : []),
  ];
}

/** The next tool is picked; `open` says whether the drawbar is released already. */
export function pickTool(setting: Setting, pocket: number, open: boolean): Item[] {
  const rack = rackAt(setting, pocket);
  const { facts } = setting;
  const slides = facts.rack!.style === "slide-in";
  const opens = open
    ? []
    : [
        ...confirm(setting, "air").map((item) => ({ ...item, name: "air before opening" })),
        auxiliary("release", "open"),
        ...confirm(setting, "released"),
      ];
  const sensed = facts.signals["tool-present"];
  const { x: entryX, y: entryY } = rack.entry;
  return [
    machine("rapid", { z: rack.clearZ }, 0, "pick clear"),
    machine("rapid", rack.pocket, 0, "pick xy"),
    ...opens,
    machine("rapid", { z: rack.above }, 0, "pick above"),
    ...(facts.drawbar!.taperAir ? [auxiliary("taper-air-on", "taper air")] : []),
    machine("line", { z: rack.pocketZ }, rack.feed, "pick down"),
    ...(facts.drawbar!.taperAir ? [auxiliary("taper-air-off", "taper air off")] : []),
    ...confirm(setting, "air").map((item) => ({ ...item, name: "air before clamp" })),
    auxiliary("clamp", "clamp"),
    ...confirm(setting, "clamped"),
    ...(sensed
      ? [step({ kind: "wait", input: sensed.input, level: sensed.level, timeout: 0 }, "sense tool")]
      : []),
    ...(slides ? [machine("line", { x: entryX, y: entryY }, rack.slideFeed, "slide out")] : []),
    machine("rapid", { z: rack.clearZ }, 0, "pick rise"),
    ...retract(setting),
  ];
}

/** At the end: the tool goes back, the drawbar closes, Z goes up. */
export function returnAtEnd(setting: Setting, pocket: number): Item[] {
  const open = setting.facts.drawbar!.travels === "released";
  return [
    ...coverOpen(setting),
    ...returnTool(setting, pocket),
    ...(open ? [...confirm(setting, "air"), auxiliary("clamp", "clamp at end")] : []),
    ...retract(setting).map((item) => ({ ...item, name: "retract at end" })),
    ...coverClose(setting),
  ];
}
