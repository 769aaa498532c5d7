import { readFileSync } from "node:fs";
import { join } from "node:path";
import { axisGroups } from "./axes.ts";
import type { Product } from "./product.ts";

const begin = "<!-- The list below is made from core/build/generate/axes.ts by `npm run generate`. -->";
const end = "<!-- End of the list. -->";

/** The list of axes in DEVELOPERS.md, between two marks; the rest of the page is written by hand. */
export const axesList: Product = {
  target: "DEVELOPERS.md",
  needs: ["DEVELOPERS.md"],
  make: (root) => {
    const page = readFileSync(join(root, "DEVELOPERS.md"), "utf8");
    const [before, rest] = page.split(begin);
    const after = rest?.split(end)[1];
    if (before === undefined || after === undefined)
      throw new Error("DEVELOPERS.md lacks the marks of the list of axes");
    return `${before}${begin}\n\n${axesTable()}\n${end}${after}`;
  },
};

/** Axis by axis: number, what controllers differ about, the keys or why there is none yet. */
function axesTable(): string {
  const groups = axisGroups.map(({ title, axes }) => {
    const lines = axes.map(({ number, title: about, keys, note }) => {
      const said = keys.map((key) => `\`${key}\``).join(", ");
      const rest = note === undefined ? "" : said === "" ? `not yet; ${note}` : ` (${note})`;
      return `- ${String(number)} ${about}: ${said}${rest}`;
    });
    return `**${title}**\n\n${lines.join("\n")}\n`;
  });
  return groups.join("\n");
}
