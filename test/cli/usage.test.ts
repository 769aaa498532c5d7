import { expect, test } from "vitest";
import type { JsonReport } from "./command.ts";
import { run, temporaryFolder } from "./command.ts";

const folder = temporaryFolder();

const mistakes: readonly (readonly [words: string, says: string])[] = [
  ["", "Say what to do: post, prove, compare, why, sheet, plot, job or dialect."],
  ["pots plate.json", "There is no command `pots`. Did you mean `post`?"],
  ["dialect lst", "There is no command `lst`. Did you mean `list`?"],
  ["dialect bild x", "There is no command `bild`. Did you mean `build`?"],
  ["dialect build", "The name of the file is missing."],
  ["dialect build rs274ngc -o x.txt", "--output is the name of a module, such as router.js or router.mjs"],
  ["dialect build rs274ngc --tracd", "There is no option --tracd. Did you mean `--traced`?"],
  ["dialect", "Say what to do with dialects: list, show, new, infer, check, test or build."],
  ["post plate.json --dialct x", "There is no option --dialct. Did you mean `--dialect`?"],
  ["post plate.json -d x --otuput=y", "There is no option --otuput. Did you mean `--output`?"],
  ["post plate.json -d x -z", "There is no option -z."],
  ["post plate.json", "--dialect must be given."],
  ["post -d x", "The name of the file is missing."],
  ["post plate.json -d", "--dialect needs a value."],
  ["prove plate.tap -d x -d y", "--dialect is given twice."],
  ["prove plate.tap other.tap -d x", "`other.tap` is one word too many."],
  ["post plate.json other.json plate.json -d x", "The job plate.json is named twice."],
  ["post plate.json -d x -d x", "The dialect x is stated twice."],
  ["post plate.json -d x --report xml", "--report can be text, json, and not xml."],
  [
    "post plate.json -d x --spindle-holds three",
    "--spindle-holds is the number of a tool, or none, and not three.",
  ],
  ["post plate.json -d x --spindle-holds 0", "--spindle-holds is the number of a tool, or none, and not 0."],
  ["jb plate.json", "There is no command `jb`. Did you mean `job`?"],
  ["job plate.json --cl rapid=modal", "--cl is for cutter location source; plate.json is read as JSON."],
  ["job - --head x.json", "standard input is read as such with --input-form cl."],
  ["job plate.cls --cl rapd=modal", "--cl has no key `rapd`; did you mean `rapid`?"],
  ["job plate.cls --cl", "--cl needs a value."],
  ["job plate.cls --head a --head b", "--head is given twice."],
  [
    "job plate.ngc --read-as rs274ngc --cl units=mm",
    "--cl is for cutter location source, and --read-as for a program.",
  ],
  [
    "job plate.ngc --read-as rs274ngc --input-form cl",
    "--read-as says that the job is a program, and --input-form that it is cl.",
  ],
  ["job plate.ngc --read-as", "--read-as needs a value."],
  ["job plate --input-form apt", "--input-form can be json, cl, and not apt."],
  ["post plate.json -d x --resolution 0.5", "--resolution goes with --simulate."],
  [
    "post plate.json -d x --simulate --resolution 0",
    "--resolution is a length above 0 in the job's units, such as 0.5, and not 0.",
  ],
  ["post plate.json -d x --simulat", "There is no option --simulat. Did you mean `--simulate`?"],
  ["prove plate.tap -d x --simulate --resolution", "--resolution needs a value."],
  ["post plate.json -d x --only op10,,op20", "--only lists the ids of operations with commas between"],
];

test.each(mistakes)("`%s` is a mistake with a way out", (line, says) => {
  const words = line.split(" ").filter((word) => word !== "");
  const { status, stdout, stderr } = run(words, { cwd: folder });
  expect({ status, stdout }).toEqual({ status: 2, stdout: "" });
  expect(stderr).toMatch(/^error +job\/usage\n/);
  expect(stderr.replace(/\n +/g, " ")).toContain(says);
  expect(stderr).toMatch(/fix +`tapewright (\w+ )*--help`/);
});

test.each(["%\nG21 G90\n", "(PLATE)\nT1 M6\n", "N10 G0 X0\n", "PARTNO/PLATE\n"])(
  "a file that begins with %j is no job in JSON, and says how it is read",
  (text) => {
    for (const words of [
      ["post", "-", "-d", "rs274ngc"],
      ["job", "-"],
    ]) {
      const { status, stderr } = run(words, { cwd: folder, input: text });
      expect(status).toBe(2);
      expect(stderr.replace(/\n +/g, " ")).toContain("A program is read with --read-as DIALECT");
    }
  },
);

test("a mistake is a JSON report where JSON is asked for", () => {
  const { status, stdout } = run(["post", "--report", "json"], { cwd: folder });
  const report = JSON.parse(stdout) as JsonReport;
  expect(status).toBe(2);
  expect(report).toMatchObject({ verdict: "refused", findings: [{ rule: "job/usage", severity: "error" }] });
});
