import type { CompareAnswer, DifferenceGroup } from "./compare-answer.ts";
import type { SourceText } from "./locate.ts";
import { positionsOf } from "./positions.ts";

/** Gives the places of an answer their lines in the job. */
export function withJobPlaces(answer: CompareAnswer, { file, bytes }: SourceText): CompareAnswer {
  const groups = answer.pairs.flatMap((pair) => pair.groups);
  const offsets = [...new Set(groups.flatMap(({ places }) => places.flatMap(({ source }) => source ?? [])))];
  const positions = positionsOf(bytes, offsets);
  const known = new Map(offsets.map((offset, index) => [offset, positions[index]]));
  const placed = (group: DifferenceGroup): DifferenceGroup => ({
    ...group,
    places: group.places.map((place) => {
      const found = place.source === undefined ? undefined : known.get(place.source);
      return found === undefined
        ? place
        : { ...place, job: { file, line: found.line, column: found.column } };
    }),
  });
  return { ...answer, pairs: answer.pairs.map((pair) => ({ ...pair, groups: pair.groups.map(placed) })) };
}

/** What the programs are called in a report: A is what the others are compared with. */
export function letterOf(index: number): string {
  return String.fromCharCode(65 + (index % 26)) + (index < 26 ? "" : String(Math.floor(index / 26)));
}

/** The sum of a count over groups. */
export function placesIn(groups: readonly DifferenceGroup[]): number {
  return groups.reduce((sum, { count }) => sum + count, 0);
}

/** "path: written longhand in B", which programs that are called otherwise: A and B stand for the first and the second. */
export function lettered({ what, only }: DifferenceGroup, letters: readonly [string, string]): string {
  const said = what.replaceAll(/\bin ([AB])\b/g, (_, side) => `in ${letters[side === "A" ? 0 : 1]}`);
  return only === undefined ? said : `${said}, only in ${letters[only === "first" ? 0 : 1]}`;
}

/** Words that are short enough to stand behind the name of a difference. */
const longestExample = 16;

/** "J6.750 / J6.75", or nothing where the first place has to be seen to tell. */
export function exampleWords({ level, example: { first, second } }: DifferenceGroup): string {
  const texts = [first, second];
  if (level !== "form" || texts.some((text) => text.length > longestExample)) return "";
  return texts.map((text) => (text === "" ? "nothing" : text)).join(" / ");
}
