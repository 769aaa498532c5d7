import type { UnitSystem } from "#base";

/** Where a value comes from; it stands in the message of each finding that rests on it. */
export const sources = {
  chart: "a retailer's published chart for two-flute carbide router bits, cutting one diameter deep",
  cutter: "a tool maker's published cutting data",
  workshop: "a university workshop's published speeds",
  memory: "from memory, no published source",
} as const;

/** The key of a source. */
export type SourceOfValue = keyof typeof sources;

/** Chip loads of one material. */
export interface ChipLoads {
  /** Unit of the rows. */
  readonly unit: UnitSystem;
  /** Diameter, least and most chip load of a tooth, by rising diameter. */
  readonly rows: readonly (readonly [diameter: number, least: number, most: number])[];
  readonly source: SourceOfValue;
}

/** A cutting speed, m/min. */
export interface SpeedLimit {
  readonly speed: number;
  readonly source: SourceOfValue;
}

/** A material that jobs may name, and what is known of cutting it. */
export interface Material {
  /** As findings call it. */
  readonly name: string;
  /** What `stock.material` may say, lower case; one or more whole words. */
  readonly words: readonly string[];
  readonly chipLoads?: ChipLoads;
  /** Slowest and fastest speed that the sources give, of whichever tool material. */
  readonly slowest?: SpeedLimit;
  readonly fastest?: SpeedLimit;
}

const chart = (...rows: ChipLoads["rows"]): ChipLoads => ({ unit: "inch", rows, source: "chart" });

const limit = (speed: number, source: SourceOfValue): SpeedLimit => ({ speed, source });

/** Carbide in wood, 300 to 1500 m/min. */
const wood = { slowest: limit(300, "memory"), fastest: limit(1500, "memory") };

/** Uncoated carbide in plastics: 245 m/min in a slot, 305 on an outline, 505 in light cuts. */
const plastic = { slowest: limit(245, "cutter"), fastest: limit(505, "cutter") };

/**
 * The materials, in the order in which a text is looked through: boards stand before the woods that they are made of. The
 * numbers are those of their sources, unchanged; which plastics are soft and which hard is from memory.
 */
export const materials: readonly Material[] = [
  {
    name: "plywood",
    words: ["plywood", "ply", "multiplex"],
    chipLoads: chart([0.125, 0.003, 0.005], [0.25, 0.006, 0.009], [0.375, 0.015, 0.018], [0.5, 0.018, 0.021]),
    ...wood,
  },
  {
    name: "MDF or particle board",
    words: ["mdf", "hdf", "fibreboard", "fiberboard", "particle board", "particleboard", "chipboard"],
    chipLoads: chart([0.125, 0.004, 0.007], [0.25, 0.012, 0.015], [0.375, 0.017, 0.019], [0.5, 0.02, 0.025]),
    ...wood,
  },
  {
    name: "softwood",
    words: ["softwood", "pine", "spruce", "fir", "larch", "cedar"],
    chipLoads: chart([0.125, 0.003, 0.005], [0.25, 0.006, 0.008], [0.375, 0.015, 0.017], [0.5, 0.019, 0.021]),
    ...wood,
  },
  {
    name: "hardwood",
    words: ["hardwood", "oak", "beech", "maple", "ash", "birch", "walnut", "cherry"],
    chipLoads: chart([0.125, 0.002, 0.004], [0.25, 0.005, 0.007], [0.375, 0.013, 0.015], [0.5, 0.017, 0.019]),
    ...wood,
  },
  {
    name: "soft plastic",
    words: ["soft plastic", "polyethylene", "hdpe", "ldpe", "uhmw", "polypropylene", "ptfe"],
    chipLoads: chart([0.125, 0.003, 0.005], [0.25, 0.006, 0.009], [0.375, 0.009, 0.011], [0.5, 0.011, 0.014]),
    ...plastic,
  },
  {
    name: "hard plastic",
    words: ["hard plastic", "acrylic", "pmma", "polycarbonate", "pom", "acetal", "rigid pvc"],
    chipLoads: chart([0.125, 0.002, 0.004], [0.25, 0.005, 0.008], [0.375, 0.008, 0.01], [0.5, 0.01, 0.013]),
    ...plastic,
  },
  {
    name: "aluminium",
    words: ["aluminium", "aluminum", "6061", "6082", "6063"],
    // On routers.
    chipLoads: {
      unit: "mm",
      rows: [
        [3, 0.01, 0.025],
        [6, 0.03, 0.06],
        [10, 0.05, 0.1],
      ],
      source: "memory",
    },
    slowest: limit(200, "memory"),
    fastest: limit(500, "memory"),
  },
  {
    name: "mild steel",
    words: ["mild steel", "structural steel", "low carbon steel", "s235", "s355"],
    // High-speed steel at 120 ft/min; carbide 100 to 200 m/min.
    slowest: limit(37, "workshop"),
    fastest: limit(200, "memory"),
  },
  // High-speed steel at 600 ft/min and more.
  { name: "brass", words: ["brass"], slowest: limit(180, "workshop") },
];

/** Words that make another material of a text that names one of the table: aluminium bronze is no aluminium. */
const others = ["bronze", "composite", "sandwich", "foam", "foil", "clad", "veneered", "coated", "laminate"];

/** Whether a text holds a phrase as whole words. */
const names = (text: string, phrase: string): boolean => text.includes(` ${phrase} `);

/**
 * The material that a text names: "aluminium plate, 6000 series" -> aluminium, "Birch plywood" -> plywood, "slate" -> none. Case
 * does not count. Woods with boards are boards; any other two, such as "aluminium on MDF", leave it unclear, which is none.
 */
export function materialOf(text: string): Material | undefined {
  const words = ` ${text
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== "")
    .join(" ")} `;
  if (others.some((other) => names(words, other))) return undefined;
  const named = materials.filter((material) => material.words.some((phrase) => names(words, phrase)));
  const [first, ...rest] = named;
  const isBoard = first?.slowest === wood.slowest;
  return rest.every(({ slowest }) => isBoard && slowest === wood.slowest) ? first : undefined;
}
