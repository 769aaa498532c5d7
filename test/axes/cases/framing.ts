import type { AxisCase } from "../axis-case.ts";
import { sampleJob } from "../sample-job.ts";

/** Group A: the file, and what frames the program in it. */
export const cases: readonly AxisCase[] = [
  {
    axis: 1,
    title: "small letters in comments, or capitals alone",
    base: "rs274ngc",
    one: "file: { characters: ascii }",
    other: "file: { characters: upper }",
    limit: true,
  },
  {
    axis: 1,
    title: "any character in comments, or ASCII alone",
    base: "rs274ngc",
    one: "file: { characters: utf-8 }",
    other: "file: { characters: ascii }",
    job: sampleJob.replace("RAIN GAUGE", "Schüssel für Regen"),
    limit: true,
  },
  {
    axis: 2,
    title: "lines end with a line feed, or with a carriage return before it",
    base: "rs274ngc",
    one: "file: { line-end: lf }",
    other: "file: { line-end: crlf }",
  },
  {
    axis: 2,
    title: "lines end with a line feed, or with a carriage return alone",
    base: "explicit-words",
    one: "file: { line-end: lf }",
    other: "file: { line-end: cr }",
  },
  {
    axis: 2,
    title: "the last line is ended, or not",
    base: "rs274ngc",
    one: "file: { last-line-end: yes }",
    other: "file: { last-line-end: no }",
  },
  {
    axis: 3,
    title: "a semicolon ends each block, or nothing does",
    base: "rs274ngc",
    one: "file: { end-of-block: semicolon }",
    other: "file: { end-of-block: none }",
  },
  {
    axis: 3,
    title: "an asterisk ends each block, or a semicolon does",
    base: "explicit-words",
    one: "file: { end-of-block: asterisk }",
    other: "file: { end-of-block: semicolon }",
  },
  {
    axis: 4,
    title: "lines with % around the program, or none",
    base: "rs274ngc",
    one: "file: { delimiter: percent }",
    other: "file: { delimiter: none }",
  },
  {
    axis: 5,
    title: "the program number begins with O, or with a colon",
    base: "rs274ngc",
    one: "file: { program-number: { letter: O, digits: 4, from: 1, to: 9999 } }",
    other: 'file: { program-number: { letter: ":", digits: 4, from: 1, to: 9999 } }',
  },
  {
    axis: 5,
    title: "the program number stands in the first line, %120, or there is none",
    base: "rs274ngc",
    both: "",
    one: 'file: { delimiter: none, program-number: { letter: "%", digits: 4, from: 1, to: 9999 } }',
    other: "file: { delimiter: none, program-number: none }",
  },
  {
    axis: 6,
    title: "numbers that the controller keeps to itself",
    base: "rs274ngc",
    one: "file: { program-number: { letter: O, digits: 4, from: 1, to: 7999 } }",
    other: "file: { program-number: { letter: O, digits: 4, from: 1000, to: 7999 } }",
    otherRefuses: "lower/program-number",
  },
];
