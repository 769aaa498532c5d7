import { join } from "node:path";
import { parentPort, workerData } from "node:worker_threads";
import { loadScript } from "../scripts.ts";
import type { PlainOutcome } from "./build-aside.ts";
import type * as Own from "./own.ts";

/** What becomes dist/builder.js: the thread that builds a dialect of the user's own. */
const file = join(import.meta.dirname, "scripts", "own.cjs");
const { buildDialect } = loadScript(new Map(), file) as typeof Own;

const { findings, chain, built } = await buildDialect(workerData as string);
const plain = built && { dialect: built.dialect, emitterSource: built.emitterSource };
parentPort?.postMessage({ findings, chain, built: plain } satisfies PlainOutcome);
