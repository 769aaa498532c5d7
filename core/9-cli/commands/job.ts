import type { Argv, CommandModule } from "yargs";
import type { JobArguments } from "./arguments.ts";
import { examples, fileArgument, readingOptions, reportOptions } from "./options.ts";

const footer = `Cutter location source (ISO 3592, ISO 4343; APT words) leaves some things open;
--cl KEY=VALUE says them, repeated or with commas between. The first value holds
unless another is stated; "refuse" asks for one where it matters.

  units=refuse|mm|inch                  unit of a source without UNITS
  rapid=one-shot|modal                  RAPID: for one motion, or until FEDRAT
  circle=right-handed|left-handed       sense of CIRCLE about its axis
  full-circle=refuse|turn|none          CIRCLE that ends where it starts
  depth=distance|signed|z               FEDTO: way down, signed step, or Z
  cycle=keywords|positional             CYCLE/kind, depth, feed, unit, clearance
  point=tip|centre                      point of the tool that GOTO leads
  feed=per-minute|per-revolution        FEDRAT without a unit
  home=clearance|from                   GOHOME: Z up, or also to FROM
  origin=refuse|ignore|add|subtract     ORIGIN that is not 0,0,0
  trans=refuse|add|subtract             TRANS that is not 0,0,0
  literal=text|continued                $ at the end of PPRINT and its like
  columns=by-itself|72|free             sequence field in columns 73 to 80
  fourth=feed|refuse                    fourth number of GOTO
  unknown=refuse|warn                   unknown words, INSERT, AUXFUN, PREFUN
  clearance=Z                           Z of safe travel

A program that exists already is read under --read-as DIALECT: its waits, swaps,
approaches and retracts are left out: each program of the job gets its own.
Tools, their sizes and the Z of safe travel come from tool words, comments and
the approach, or from a head file; a code that a job cannot say is refused.

A head file is a job without "operations": tools, clearance, stock, fixtures.
It states the lengthOffset of each tool with which a program selects none.

${examples(
  ["job plate.cls -o plate.job.json", "the source as a job that can be edited"],
  ["job plate.cls --cl rapid=modal,units=mm", "prints it, read as its writer meant it"],
  ["job plate.ngc --read-as rs274ngc -o plate.job.json", "a program as a job that can be edited"],
  ["job plate.json", "a job in tidy form, to compare"],
)}`;

/** `tapewright job`: its arguments and help; the work itself is loaded when it is asked for. */
export function jobCommand(end: (code: number) => void): CommandModule<object, JobArguments> {
  return {
    command: "job <input>",
    describe: "write any input as a neutral job, JSON",
    builder: (yargs: Argv) =>
      fileArgument(yargs, "input", "a job: .json, .apt .cls .cl, or a program with --read-as")
        .options({
          output: {
            alias: "o",
            type: "string",
            requiresArg: true,
            describe: "file for the job; else it goes to standard output",
          },
        })
        .options(readingOptions)
        .options(reportOptions)
        .epilogue(footer),
    handler: async (args) => {
      const { runJob } = await import("../run-job.ts");
      end(await runJob(args));
    },
  };
}
