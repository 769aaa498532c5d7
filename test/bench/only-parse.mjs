// What merely reading a program takes with a G-code reader of the npm registry: the file in one text, parsed, no line of it kept.
import { readFileSync } from "node:fs";
import Toolpath from "gcode-toolpath";

const [program] = process.argv.slice(2);
let lines = 0;
const toolpath = new Toolpath({ addLine: () => lines++, addArcCurve: () => lines++ });
toolpath.loadFromStringSync(readFileSync(program, "utf8"));
if (lines < 1000) throw new Error("the reader has read nothing");
