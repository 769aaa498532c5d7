/** A text as a cell of a Markdown table has it. */
export function cell(text: string): string {
  return text.replaceAll("|", "\\|").replaceAll("\n", " ");
}
