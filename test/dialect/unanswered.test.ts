import { expect, it } from "vitest";
import type { Finding } from "#base";
import { studyDialect } from "#dialect";
import { postText, proveText } from "../../core/index.ts";
import { sampleJob } from "../axes/sample-job.ts";
import { dialectLoader } from "../support/dialects.ts";
import { ready } from "../support/ready.ts";

const parent =
  "dialect: parent\ntitle: Own\nextends: rs274ngc\nunanswered: [confirm.at-speed, machine.travel]\n";
const files = {
  "parent.dialect.yaml": parent,
  "child.dialect.yaml": "dialect: child\nextends: parent.dialect.yaml\n",
  "answered.dialect.yaml": "dialect: answered\nextends: parent.dialect.yaml\nunanswered: [machine.travel]\n",
};

async function toldOnPost(file: string): Promise<(string | undefined)[]> {
  const made = await ready(file, files);
  const { outcome, program } = postText({ job: sampleJob }, made);
  expect(program).toBeDefined();
  const told = outcome.findings.filter(({ rule }) => rule === "dialect/unanswered");
  for (const { severity, place, fix } of told) {
    expect(severity).toBe("note");
    expect(place?.file).toBe(file);
    expect(fix).toContain("unanswered");
  }
  return told.map(({ key }) => key);
}

it("each unanswered key is told on every post, also by a file that inherits the list", async () => {
  expect(await toldOnPost("parent.dialect.yaml")).toEqual(["confirm.at-speed", "machine.travel"]);
  expect(await toldOnPost("child.dialect.yaml")).toEqual(["confirm.at-speed", "machine.travel"]);
});

it("a program that is read without a job is told them, too, and once where there is one", async () => {
  const made = await ready("parent.dialect.yaml", files);
  const { program = "" } = postText({ job: sampleJob }, made);
  const told = (findings: readonly Finding[]) =>
    findings.filter(({ rule }) => rule === "dialect/unanswered").map(({ key }) => key);
  expect(told(proveText(program, made).findings)).toEqual(["confirm.at-speed", "machine.travel"]);
  expect(told(proveText(program, made, { job: sampleJob }).findings)).toEqual([
    "confirm.at-speed",
    "machine.travel",
  ]);
});

it("a file that states its own list has answered the rest", async () => {
  expect(await toldOnPost("answered.dialect.yaml")).toEqual(["machine.travel"]);
});

it("check names each with its place", async () => {
  const notes: Finding[] = [];
  await studyDialect("parent.dialect.yaml", dialectLoader(files), (finding) => notes.push(finding), true);
  const told = notes.filter(({ rule }) => rule === "dialect/unanswered");
  expect(told.map(({ key, severity }) => `${severity} ${key ?? ""}`)).toEqual([
    "note confirm.at-speed",
    "note machine.travel",
  ]);
  expect(told.map(({ place }) => place?.offset)).toEqual([
    parent.indexOf("confirm.at-speed"),
    parent.indexOf("machine.travel"),
  ]);
});
