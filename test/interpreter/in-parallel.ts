const atOnce = 4;

/** Works on all items, a few at a time: the interpreter waits more than it works. */
export async function inParallel<Item>(
  items: readonly Item[],
  work: (item: Item) => Promise<void>,
): Promise<void> {
  const waiting = items.values();
  const worker = async (): Promise<void> => {
    for (const item of waiting) await work(item);
  };
  await Promise.all(Array.from({ length: atOnce }, worker));
}
