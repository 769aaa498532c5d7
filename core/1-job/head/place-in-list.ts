/** Byte offset of what an element of a list says of a key; of the element where no key is given, or it says nothing of it. */
export type PlaceInList = (index: number, ...keys: readonly string[]) => number;
