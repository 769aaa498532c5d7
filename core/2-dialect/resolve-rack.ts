import type { Box, DrawbarFacts, RackFacts } from "#base";
import type { Resolving } from "./resolving.ts";
import { must } from "./resolving.ts";
import type { TreeNode } from "./tree.ts";
import { nodeAt } from "./tree.ts";
import { feed, length, lengths, number, place, word, yes } from "./values.ts";

const path = "machine.rack";

/** The drawbar of a spindle whose tools are swapped at a rack. */
export function resolveDrawbar(resolving: Resolving): DrawbarFacts | undefined {
  if (nodeAt(resolving.tree, "machine.drawbar")?.kind !== "mapping") return undefined;
  return {
    travels: must(resolving, word<DrawbarFacts["travels"]>, "machine.drawbar.travels"),
    taperAir: must(resolving, yes, "machine.drawbar.taper-air"),
  };
}

/** The rack; each key that a swap needs is a finding where it is not stated. */
export function resolveRack(resolving: Resolving): RackFacts | undefined {
  const { tree } = resolving;
  if (nodeAt(tree, path)?.kind !== "mapping") return undefined;
  const style = must(resolving, word<RackFacts["style"]>, `${path}.style`);
  return {
    style,
    clearZ: must(resolving, length, `${path}.clear-z`),
    pocketZ: must(resolving, length, `${path}.pocket-z`),
    pockets: resolvePockets(resolving),
    zone: resolveZone(resolving),
    slide: style === "slide-in" ? resolveSlide(resolving) : undefined,
    descendFeed: must(resolving, feed, `${path}.descend-feed`),
    descendFrom: must(resolving, length, `${path}.descend-from`),
    widest: length(tree, `${path}.widest`) ?? Infinity,
    longest: length(tree, `${path}.longest`) ?? Infinity,
    cover: yes(tree, `${path}.cover`) ?? false,
    atEnd: must(resolving, word<RackFacts["atEnd"]>, `${path}.at-end.tool`),
  };
}

/** A row of pockets by its first one and the pitch, or each by its place. */
function resolvePockets(resolving: Resolving): RackFacts["pockets"] {
  const { tree, need } = resolving;
  const node = nodeAt(tree, `${path}.pockets`);
  if (node?.kind === "list") {
    return node.items.map((_, index) => {
      const [x, y] = lengths(tree, `${path}.pockets.${index + 1}`)!;
      return { x: x, y: y };
    });
  }
  if (need(node, `${path}.pockets`) === undefined) return [];
  const first = must(resolving, lengths, `${path}.pockets.first`);
  const pitch = must(resolving, lengths, `${path}.pockets.pitch`);
  const count = must(resolving, number, `${path}.pockets.count`);
  if (resolving.failed()) return [];
  return Array.from({ length: count }, (_, index) => ({
    x: first[0] + index * pitch[0],
    y: first[1] + index * pitch[1],
  }));
}

function resolveZone(resolving: Resolving): Box | undefined {
  if (nodeAt(resolving.tree, `${path}.zone`)?.kind !== "mapping") return undefined;
  return {
    min: must(resolving, place, `${path}.zone.min`),
    max: must(resolving, place, `${path}.zone.max`),
  };
}

const directions = { "+x": [1, 0], "-x": [-1, 0], "+y": [0, 1], "-y": [0, -1] } as const;

/** The way into a pocket from the side, as a vector. */
function resolveSlide(resolving: Resolving): RackFacts["slide"] {
  const direction = must(resolving, slideDirection, `${path}.slide.direction`);
  const distance = must(resolving, length, `${path}.slide.distance`);
  const rate = must(resolving, feed, `${path}.slide.feed`);
  if (resolving.failed()) return undefined;
  return { x: direction[0] * distance + 0, y: direction[1] * distance + 0, feed: rate };
}

function slideDirection(tree: TreeNode, at: string): readonly [number, number] | undefined {
  const name = word<keyof typeof directions>(tree, at);
  return name === undefined ? undefined : directions[name];
}
