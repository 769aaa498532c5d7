import type { Argv, CommandModule } from "yargs";
import type { PlotArguments } from "./arguments.ts";
import { examples, fileArgument, plotOptions, makingOptions } from "./options.ts";

const footer = `With --dialect the job is posted, and the picture is that of its program, with
approaches and swaps; of a refused program, too, marked as not proved. Without,
it is that of the job's own moves. A .html page turns in three dimensions, steps
through the blocks and needs no network; .svg has three views for print.

A picture proves nothing: it shows where the tool's tip is told to go.

${examples(
  ["plot plate.json -d router.dialect.yaml -o plate.html", "the program, to turn and to step through"],
  ["plot plate.json", "the job's moves in three views, plate.svg"],
)}`;

/** `tapewright plot`: its arguments and help; the work itself is loaded when it is asked for. */
export function plotCommand(end: (code: number) => void): CommandModule<object, PlotArguments> {
  return {
    command: "plot <input>",
    describe: "draw the motions of a job, or of its program",
    builder: (yargs: Argv) =>
      fileArgument(yargs, "input", "a job: .json, .apt .cls .cl, or a program with --read-as")
        .options(plotOptions)
        .options(makingOptions)
        .epilogue(footer),
    handler: async (args) => {
      const { runPlot } = await import("../run-plot.ts");
      end(await runPlot(args));
    },
  };
}
