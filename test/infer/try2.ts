import { printProgram } from "./print-program.ts";
import { drawSteps } from "./steps.ts";
import { drawStyle } from "./style.ts";
import { seeded } from "../support/seeded.ts";
const seed = Number(process.argv[2]); const first = Number(process.argv[3] ?? 0);
process.stdout.write(printProgram(drawSteps(seeded(first + seed * 211 + 1)), drawStyle(seeded(first + seed * 101))));
