/** What a piece of text is, for its colour. */
export type Role = "error" | "warning" | "note" | "good" | "rule" | "label";

/** Colours a piece of text, or leaves it as it is. */
export type Paint = (role: Role, text: string) => string;

/** Select graphic rendition, ECMA-48 8.3.117: the sixteen basic colours follow the terminal's own theme. */
const parameters = {
  error: "1;31",
  warning: "1;33",
  note: "1;36",
  good: "1;32",
  rule: "1",
  label: "2",
} as const satisfies Record<Role, string>;

/** A paint that colours, or one that does nothing. */
export function createPaint(colour: boolean): Paint {
  return colour ? (role, text) => `\u001b[${parameters[role]}m${text}\u001b[0m` : (_role, text) => text;
}
