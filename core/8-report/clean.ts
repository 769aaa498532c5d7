/**
 * Control and direction characters, which could move the cursor, recolour a terminal, or make a line read otherwise than
 * it is: C0, DEL, C1, line separators, bidirectional controls and the byte order mark.
 */
// eslint-disable-next-line no-control-regex -- these are the characters that must not reach a terminal
const unprintable = /[\u0000-\u001f\u007f-\u009f\u061c\u200b-\u200f\u2028-\u202e\u2060-\u2069\ufeff]/g;

/** A text for a terminal: a tab becomes one blank, so that columns stay, and what cannot be printed a middle dot. */
export function clean(text: string): string {
  return text.replace(unprintable, (character) => (character === "\t" ? " " : "\u00b7"));
}
