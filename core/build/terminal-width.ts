/**
 * Stands in for the package that measures text for the help pages: that one loads Unicode segmentation and emoji tables
 * on each start, for pages which are ASCII.
 */
function terminalWidth(text: string): number {
  return [...text].length;
}

export { terminalWidth as default };
