import { describe, expect, it } from "vitest";
import { ready } from "../support/ready.ts";
import { begin, end } from "./bad-programs.ts";
import { readAsJob } from "./reading.ts";

/*
 * Where a head file and the program say different things of a tool. `begin` has (T1 D=6 END MILL) in line 2 and T1 M6 in line 3.
 */

const rs274ngc = await ready("rs274ngc");

const iso = await ready("iso-6983");

const headOf = (tool: string): string =>
  `{ "job": "1",\n "units": "mm", "clearance": 20,\n "tools": [\n { "number": 1, ${tool} } ] }`;

/** The warnings of a program, each behind its line. */
function warningsOf(program: string, head: string, dialect = rs274ngc): string[] {
  const { findings } = readAsJob(program, dialect, head);
  expect(findings.filter(({ severity }) => severity === "error")).toEqual([]);
  return findings
    .filter(({ severity }) => severity === "warning")
    .map(({ message, place }) => `${program.slice(0, place?.offset).split("\n").length}: ${message}`);
}

function read(comment: string, tool: string) {
  const program = `${begin.replace("(T1 D=6 END MILL)", `(${comment})`)}G1 Z-1 F200${end}`;
  const { tools } = JSON.parse(readAsJob(program, rs274ngc, headOf(tool)).json ?? "") as { tools: unknown[] };
  return { warnings: warningsOf(program, headOf(tool)), tool: tools[0] };
}

describe("a tool of which a comment says something else than the head file", () => {
  it("has the diameter of the head file, and both are told with their places", () => {
    const { warnings, tool } = read("T1 D=6 END MILL", '"kind": "end-mill", "diameter": 10');
    expect(warnings).toEqual([
      "2: Tool 1 is 10 mm in the head file (line 4), and 6 mm here, in a comment; the head file counts.",
    ]);
    expect(tool).toMatchObject({ diameter: 10 });
  });

  it("has the kind of the head file", () => {
    const { warnings, tool } = read("T1 D=6 END MILL", '"kind": "ball-mill", "diameter": 6');
    expect(warnings).toEqual([
      "2: Tool 1 is ball-mill in the head file (line 4), and end-mill here, in a comment; the head file counts.",
    ]);
    expect(tool).toMatchObject({ kind: "ball-mill" });
  });

  it("is told of both where both differ", () => {
    expect(read("T1 D=6 DRILL", '"kind": "end-mill", "diameter": 8').warnings).toHaveLength(2);
  });

  it("is found in the list of tools of a header, whose line is named", () => {
    const program = `(ONE PART. Tools 2 drill 5,)\n(1 end-mill 6.)\n${begin.replace("(T1 D=6 END MILL)\n", "")}`;
    const warnings = warningsOf(`${program}G1 Z-1 F200${end}`, headOf('"kind": "end-mill", "diameter": 10'));
    expect(warnings).toEqual([expect.stringMatching(/^2: Tool 1 is 10 mm .* and 6 mm here/)]);
  });

  it("is found where the program asks for it", () => {
    const program =
      "G90 G94\nT1\n(MSG, LOAD TOOL 1, END-MILL 6 MM)\nM00\nS9000 M03\nG00 X0. Y0.\nZ20.\nG01 Z-1. F200.\nG00 Z20.\nM05\nM30\n";
    const warnings = warningsOf(program, headOf('"kind": "end-mill", "diameter": 10'), iso);
    expect(warnings).toEqual([expect.stringMatching(/^4: Tool 1 is 10 mm .* and 6 mm here/)]);
  });

  it("is read with dashes between names and numbers, and the number of an offset is no diameter", () => {
    const comment = "TOOL - 1 DIA. OFF. - 1 LEN. - 1 DIA. - 6.";
    expect(read(comment, '"kind": "end-mill", "diameter": 10').warnings).toEqual([
      expect.stringMatching(/^2: Tool 1 is 10 mm .* and 6 mm here/),
    ]);
  });

  it("a mill or a cutter may be any kind of mill, and rounding is no difference", () => {
    expect(read("T1 D=6 CUTTER", '"kind": "ball-mill", "diameter": 6').warnings).toEqual([]);
    expect(read("T1 D=0.236IN END MILL", '"kind": "end-mill", "diameter": 6').warnings).toEqual([]);
    expect(read("T1 D=6 CUTTER", '"kind": "drill", "diameter": 6').warnings).toHaveLength(1);
  });

  it("a comment that says neither is no difference", () => {
    expect(read("T1 SHORT ONE", '"kind": "ball-mill", "diameter": 6').warnings).toEqual([]);
  });
});

it("a length offset of the head file that the program does not select is told; the program counts", () => {
  const tool = '"kind": "end-mill", "diameter": 6, "lengthOffset": 7';
  const { warnings, tool: made } = read("T1 D=6 END MILL", tool);
  expect(warnings).toEqual([
    "5: Tool 1 has length offset 7 in the head file (line 4), and the program selects 1; the program counts.",
  ]);
  expect(made).not.toHaveProperty("lengthOffset");
});
