import { questions } from "../../interview/questions.ts";
import type { Choice } from "../../interview/question.ts";
import { cell } from "./markdown-cell.ts";

/** The questions of `dialect new` with their answers and the keys that these set. */
export function questionsTable(): string {
  const rows = questions.flatMap(({ id, ask, choices }) => [
    row(`\`${id}\``, `**${ask}**`, ""),
    ...choices.map((choice) => row("", `\`${choice.id}\` ${choice.words}${needs(choice)}`, keysOf(choice))),
  ]);
  return ["| key | question and answers | what an answer states |", "|---|---|---|", ...rows].join("\n");
}

function row(...cells: readonly string[]): string {
  return `| ${cells.map(cell).join(" | ")} |`;
}

function needs({ asks = [] }: Choice): string {
  if (asks.length === 0) return "";
  const details = asks.map(
    ({ id, unless }) => `\`${id}\`${unless === undefined ? "" : ` (where the dialect has no \`${unless}\`)`}`,
  );
  return `; with ${details.join(", ")}`;
}

function keysOf({ sets, with: following = {} }: Choice): string {
  return Object.keys({ ...sets, ...following })
    .map((key) => `\`${key}\``)
    .join(" ");
}
