import type { Capabilities, MachineFacts, UnitSystem } from "#base";
import { roundToGrid } from "#base";

/**
 * Machine facts as the program can write them: every place and feed that sequencing puts into words, rounded onto the grid of
 * a program in these units. -78.4 mm in an inch program of four decimals -> -3.0866 inch. Travel, zones and boxes are
 * limits, not words, and stay as they are.
 */
export function onProgramGrid(
  machine: MachineFacts,
  capabilities: Capabilities,
  units: UnitSystem,
): MachineFacts {
  const lengthGrid = capabilities.lengthGrid?.[units] ?? 1;
  const feedGrid = capabilities.feedPerMinuteGrid?.[units] ?? 1;
  const place = (length: number): number => roundToGrid(length, lengthGrid);
  const feed = (value: number): number => Math.max(feedGrid, roundToGrid(value, feedGrid));
  const { retract, rack, park } = machine;
  const change = retract?.changePosition;
  return {
    ...machine,
    retract: retract && {
      ...retract,
      z: place(retract.z),
      changePosition: change && { x: place(change.x), y: place(change.y), z: place(change.z) },
    },
    rack: rack && {
      ...rack,
      clearZ: place(rack.clearZ),
      pocketZ: place(rack.pocketZ),
      descendFrom: place(rack.descendFrom),
      descendFeed: feed(rack.descendFeed),
      pockets: rack.pockets.map((pocket) => ({ x: place(pocket.x), y: place(pocket.y) })),
      slide: rack.slide && { x: place(rack.slide.x), y: place(rack.slide.y), feed: feed(rack.slide.feed) },
    },
    park: park && { x: place(park.x), y: place(park.y) },
  };
}
