/** Where findings are in the picture. */
import type { Finding, SourceName } from "#base";
import type { Point } from "#report";

/** A place in the picture and in the listing. */
export interface MarkedPlace {
  readonly line: number;
  readonly at: Point | undefined;
}

/** Finds the rows that findings are about: those of the same byte in the job or the program, or else the last before it. */
export interface Marks {
  /** Takes a row with its bytes in the texts; -1 where it has none. */
  readonly take: (job: number, program: number, place: () => MarkedPlace) => void;
  /** One for each finding, in their order; undefined where it has no row. */
  readonly places: () => (MarkedPlace | undefined)[];
}

export function createMarks(findings: readonly Finding[]): Marks {
  const job = createSought(findings, "job");
  const program = createSought(findings, "program");
  return {
    take(jobByte, programByte, place) {
      job.take(jobByte, place);
      program.take(programByte, place);
    },
    places: () =>
      findings.map((finding) => {
        if (finding.place?.source === "job") return job.placeOf(finding.place.offset);
        return finding.place?.source === "program" ? program.placeOf(finding.place.offset) : undefined;
      }),
  };
}

interface Sought {
  readonly take: (byte: number, place: () => MarkedPlace) => void;
  readonly placeOf: (offset: number) => MarkedPlace | undefined;
}

function createSought(findings: readonly Finding[], source: SourceName): Sought {
  const own = findings.flatMap(({ place }) => (place?.source === source ? [place.offset] : []));
  const offsets = [...new Set(own)].sort((a, b) => a - b);
  // Of the rows between one offset and the next, the last begin that is not behind it, and the first row that begins there.
  const best = offsets.map((): { byte: number; place: MarkedPlace | undefined } => ({
    byte: -1,
    place: undefined,
  }));
  return {
    take(byte, place) {
      const index = firstFrom(offsets, byte);
      if (byte < 0 || index >= best.length || best[index].byte >= byte) return;
      best[index] = { byte, place: place() };
    },
    placeOf(offset) {
      for (let index = offsets.indexOf(offset); index >= 0; index--)
        if (best[index].place !== undefined) return best[index].place;
      return undefined;
    },
  };
}

/** Index of the first of rising numbers that is not below a value. */
function firstFrom(numbers: readonly number[], value: number): number {
  let [low, high] = [0, numbers.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (numbers[middle] < value) low = middle + 1;
    else high = middle;
  }
  return low;
}
