import { readFileSync } from "node:fs";
import { quarryRouter } from "../support/dialects.ts";

/** Name and text of the router's dialect, which stands beside the files of these tests. */
export const router = quarryRouter.split("/").at(-1)!;
export const routerText = readFileSync(quarryRouter, "utf8");
