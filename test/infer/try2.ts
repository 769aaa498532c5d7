import { printProgram } from "./print-program.ts";
import { drawSteps } from "./steps.ts";
import { drawStyle } from "./style.ts";
import { seeded } from "../support/seeded.ts";
const seed = Number(process.argv[2]);
process.stdout.write(printProgram(drawSteps(seeded(seed * 211 + 1)), drawStyle(seeded(seed * 101))));
