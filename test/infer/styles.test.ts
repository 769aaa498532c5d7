import { afterAll, describe, expect, it } from "vitest";
import type { Inference } from "#infer";
import { seeded } from "../support/seeded.ts";
import { printProgram } from "./print-program.ts";
import { drawSteps } from "./steps.ts";
import { axesDrawn, drawStyle } from "./style.ts";
import { heldOut, mustInfer } from "./support.ts";
import type { Measured } from "../../core/infer/measure.ts";
import { truthOf } from "./truth.ts";

/** Number from which seeds are drawn; TAPEWRIGHT_STYLE_SEED tries other styles. */
const first = Number(process.env.TAPEWRIGHT_STYLE_SEED ?? 770_000);

const rows: string[] = [];
const total = { right: 0, wrong: 0, asked: 0, alike: 0, identical: 0, blocks: 0 };

function effective(found: Inference, key: string): unknown {
  const own = [...found.stated, ...found.careful].find(
    (one) => one.key === key || key.startsWith(`${one.key}.`),
  );
  if (own === undefined) return found.archetype.base(key);
  return own.key === key ? own.value : (own.value as Record<string, unknown>)[key.slice(own.key.length + 1)];
}

describe("ten styles drawn by seed", () => {
  it.each(Array.from({ length: 10 }, (_, index) => index + 1))(
    "style %i",
    { timeout: 60_000 },
    async (seed) => {
      const style = drawStyle(seeded(first + seed * 101));
      const program = printProgram(drawSteps(seeded(first + seed * 211 + 1)), style);
      const other = printProgram(drawSteps(seeded(first + seed * 307 + 2)), style);
      const found = await mustInfer([program]);
      const counts = { right: 0, wrong: 0, asked: 0, silent: 0 };
      const wrong: string[] = [];
      const asked: string[] = [];
      for (const [key, truth] of Object.entries(truthOf(style))) {
        if (truth === undefined) continue;
        const shown = [...found.stated, ...found.inherited].some(
          (one) => one.key === key || key.startsWith(`${one.key}.`),
        );
        const isRight = norm(effective(found, key)) === norm(truth);
        if (shown && isRight) counts.right++;
        else if (shown) {
          counts.wrong++;
          wrong.push(`${key}: ${norm(effective(found, key))} for ${norm(truth)}`);
        } else if (found.asked.some(({ keys }) => keys.includes(key))) {
          counts.asked++;
          asked.push(
            `${key}${isRight ? "" : " (" + norm(effective(found, key)) + " for " + norm(truth) + ")"}`,
          );
        } else if (isRight) counts.silent++;
        else {
          counts.wrong++;
          wrong.push(`${key}: silently ${norm(effective(found, key))} for ${norm(truth)}`);
        }
      }
      if (found.findings.length > 0)
        console.info(
          seed,
          found.findings.map(({ message }) => message.slice(0, 200)),
        );
      const own = heldOut(program, found);
      const held = heldOut(other, found);
      rows.push(
        `${String(seed).padStart(2)} ${found.archetype.name.padEnd(15)} lines ${String(found.text.split("\n").length - 1).padStart(3)} keys ${String(found.stated.length).padStart(2)} right ${String(counts.right).padStart(2)} wrong ${String(counts.wrong).padStart(2)} asked ${String(counts.asked).padStart(2)} inherited unseen ${String(counts.silent).padStart(2)} identical ${percent(own)} held out ${percent(held)} (${String(held.blocks)} blocks, ${String(held.identical)} with their number, ${String(held.reordered)} reordered, ${String(held.renumbered)} renumbered, ${String(held.added)} added)`,
      );
      for (const name of ["right", "wrong", "asked"] as const) total[name] += counts[name];
      total.alike += held.identical + held.renumbered;
      total.identical += held.identical;
      total.blocks += held.blocks;
      if (wrong.length > 0 || asked.length > 0)
        rows.push(`   wrong: ${wrong.join("; ")} | asked: ${asked.join(", ")}`);
      if (process.env.SHOW) {
        console.info(program.split(/\r?\n/).slice(0, 60).join("\n"));
        console.info(found.text);
      }
      if (process.env.SHOW !== undefined || percentOf(held) < 95) console.info(seed, held.different, held.findings.slice(0, 8).map(({ rule, message }) => rule + " " + message)); // prettier-ignore
      expect.soft(percentOf(held)).toBeGreaterThanOrEqual(95);
      expect.soft(wrong).toEqual([]);
    },
  );
});

/** Blocks that are alike; a block number that runs on behind a block more or less counts as alike. */
function percentOf({ identical, renumbered, blocks }: Measured): number {
  return (100 * (identical + renumbered)) / blocks;
}

function percent(measured: Measured): string {
  return `${percentOf(measured).toFixed(1)} %`;
}

function norm(value: unknown): string {
  return JSON.stringify(value)?.replace(/"([GM])0(\d)"/, '"$1$2"') ?? "undefined";
}

afterAll(() => {
  console.info(
    [
      `Ten styles of ${String(axesDrawn.length)} axes`,
      ...rows,
      `keys: ${String(total.right)} right, ${String(total.wrong)} wrong, ${String(total.asked)} asked; held out: ${String(total.alike)} of ${String(total.blocks)} blocks alike, ${String(total.identical)} with their number`,
    ].join("\n"),
  );
});
