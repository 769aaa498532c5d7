import type { Ballot, Observed } from "../evidence.ts";
import { vote } from "../evidence.ts";
import type { Sample } from "../sample.ts";
import { withM } from "../sample.ts";
import type { Block } from "../walk.ts";

/** Order of speed word and start word, whether they share a block, how often the speed is said; and the dwell behind. */
export function spindle(sample: Sample): Observed[] {
  const starts = withM(sample, 30, 40);
  const { blocks } = sample;
  const places = new Map(blocks.map((block, index) => [block, index]));
  const around = starts.flatMap((block) => {
    const at = places.get(block)!;
    return [{ block, before: blocks[at - 1], behind: blocks[at + 1] }];
  });
  const ballots = around.flatMap(({ block, before, behind }): Ballot<string>[] => {
    const speed = block.line.words.findIndex(({ letter }) => letter === "S");
    const start = block.line.words.findIndex(
      ({ letter, value }) => letter === "M" && (value === 3 || value === 4),
    );
    if (speed >= 0) return [{ value: speed < start ? "speed-first together" : "start-first together", line: block.line }]; // prettier-ignore
    if (isSpeedAlone(before)) return [{ value: "speed-first apart", line: block.line }];
    return isSpeedAlone(behind) ? [{ value: "start-first apart", line: block.line }] : [];
  });
  const part = (index: number): Ballot[] =>
    ballots.map(({ value, line }) => ({ value: value.split(" ")[index], line }));
  return [
    ...vote("spindle.order", part(0), "starts of the spindle"),
    ...vote("spindle.blocks", part(1), "starts of the spindle"),
    ...vote("modal.speed", repeats(sample), "starts at the speed that was said last"),
  ];
}

function isSpeedAlone(block: Block | undefined): boolean {
  return block?.line.words.length === 1 && block.words.has("S");
}

/** A start without a speed, behind one that said it; or with the speed that was said last. */
function repeats({ byProgram }: Sample): Ballot[] {
  return byProgram.flatMap((blocks) => {
    let last: number | undefined;
    return blocks.flatMap(({ words, m, line }, index): Ballot[] => {
      const said = words.get("S")?.value ?? (isSpeedAlone(blocks[index - 1]) ? blocks[index - 1].words.get("S")?.value : undefined); // prettier-ignore
      const behind = isSpeedAlone(blocks[index + 1]) ? blocks[index + 1].words.get("S")?.value : undefined;
      const speed = said ?? behind;
      if (m.includes(0) || m.includes(10)) last = undefined;
      const before = last;
      if (m.some((code) => code === 30 || code === 40)) {
        last = speed ?? last;
        if (before !== undefined && speed === undefined) return [{ value: "changed", line }];
        return before !== undefined && speed === before ? [{ value: "each-start", line }] : [];
      }
      // A speed that changes while the spindle turns.
      if (words.has("S") && !isStartNext(blocks, index)) last = words.get("S")!.value;
      return [];
    });
  });
}

function isStartNext(blocks: readonly Block[], index: number): boolean {
  const near = [blocks[index - 1], blocks[index + 1]] as (Block | undefined)[];
  return near.some((block) => block?.m.some((code) => code === 30 || code === 40));
}
