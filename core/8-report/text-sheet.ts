import { cautions } from "./cautions.ts";
import { clean } from "./clean.ts";
import type { Reportable } from "./outcome.ts";
import type { SetupSheet } from "./sheet/sheet.ts";
import type { Layout } from "./text-findings.ts";
import { row } from "./row.ts";
import { bullets } from "./text-result.ts";

/** What the command says of a sheet that it wrote: where it stands, and which program file it goes with. */
export function sheetText({ output }: Reportable, sheet: SetupSheet, layout: Layout): string[] {
  const { plan, program, dialect } = sheet;
  const wide = { ...layout, width: Infinity };
  const counts =
    plan === undefined
      ? []
      : [
          counted(plan.tools.length, "tool"),
          counted(plan.operations.length, "operation"),
          counted(plan.stops.length, "stop"),
        ];
  return [
    ...row("sheet", clean(output ?? ""), wide),
    ...row("for", clean(dialect.name), layout),
    ...row("holds", counts.join(", "), layout),
    ...(program === undefined
      ? []
      : [
          ...row("program", clean(`${program.file}, as post writes it`), wide),
          ...row("sha256", program.sha256, wide),
        ]),
    "",
    layout.paint("warning", "Before it runs"),
    ...bullets(cautions, layout),
  ];
}

function counted(number: number, name: string): string {
  return `${number} ${name}${number === 1 ? "" : "s"}`;
}
