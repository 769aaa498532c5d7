/** Width that text is laid out for where no terminal says otherwise, in characters. */
export const defaultWidth = 80;

/**
 * Breaks a text at blanks into lines of at most `width` characters. A word that is longer stands on a line of its own,
 * so that a path or a block can still be copied. Blanks before the first word are kept, as lines of YAML need them.
 */
export function wrap(text: string, width: number): string[] {
  const lines: string[] = [];
  const [margin = ""] = /^ */.exec(text) ?? [];
  let line = "";
  for (const word of text.trimStart().split(/ +/)) {
    const longer = line === "" ? margin + word : `${line} ${word}`;
    if (line !== "" && length(longer) > width) {
      lines.push(line);
      line = margin + word;
    } else {
      line = longer;
    }
  }
  return [...lines, line];
}

/** Wraps each line of a text, the first behind `first`, the others indented to the same column. */
export function hang(first: string, text: string, width: number): string[] {
  const indent = " ".repeat(length(first));
  const lines = text.split("\n").flatMap((line) => wrap(line, Math.max(20, width - indent.length)));
  return lines.map((line, index) => (index === 0 ? first : indent) + line);
}

/** Length in characters, not in UTF-16 units. */
export function length(text: string): number {
  return [...text].length;
}
