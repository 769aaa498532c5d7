import type { Format } from "#dialect";

/** A program without its comment blocks, which are no steps; messages to the operator stay. */
export function withoutComments(program: string, { lineEnd, idioms }: Format): string {
  const mark = idioms.message?.blocks[0]?.[0];
  const isMessage = (block: string): boolean =>
    mark !== undefined && "literal" in mark && block.startsWith(mark.literal);
  return program
    .split(lineEnd)
    .filter((block) => !/^[(;]/.test(block) || isMessage(block))
    .join(lineEnd);
}
