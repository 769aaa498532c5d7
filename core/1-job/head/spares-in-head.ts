import type { Job, Tool } from "../job.ts";

/**
 * The spares that a head file has for the tools of an input that names tools by its own words: no operation uses them, so that nothing but
 * the head says that they are there. Each stands where its tool is named.
 */
export function sparesInHead(head: Job | undefined, tools: readonly Tool[]): Tool[] {
  return (head?.tools ?? []).flatMap((spare) => {
    const isThere = tools.some(({ number }) => number === spare.number);
    const tool = tools.find(({ number }) => number === spare.spareFor);
    return isThere || tool === undefined ? [] : [{ ...spare, source: tool.source }];
  });
}
