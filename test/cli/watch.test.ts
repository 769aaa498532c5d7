import { closeSync, openSync, readFileSync, readdirSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { setTimeout } from "node:timers/promises";
import { describe, expect, onTestFinished, test } from "vitest";
import { changedBlocks } from "../../core/9-cli/watch/changed-blocks.ts";
import { watchFiles } from "../../core/9-cli/watch/changes.ts";
import { seeded } from "../support/seeded.ts";
import { longJob, plateDialect, put, run, start, temporaryFolder } from "./command.ts";

const folder = temporaryFolder();

/** Compares two texts as files. */
function changed(before: string, after: string) {
  const open = [put(folder, "before.txt", before), put(folder, "after.txt", after)].map((path) =>
    openSync(path, "r"),
  );
  try {
    return changedBlocks(open[0], open[1]);
  } finally {
    open.forEach(closeSync);
  }
}

describe("changed blocks", () => {
  test("are listed with their line, and numbers of blocks and line ends do not count", () => {
    const before = "%\nN10 G0 X1\nN20 G1 X2\nN30 M2\n";
    const after = "%\r\nN10 G0 X1\r\nN20 G0 Z5\r\nN30 G1 X3\r\nN40 M2\r\n";
    expect(changed(before, after)).toEqual({
      gone: 1,
      added: 2,
      runs: [{ line: 3, was: ["N20 G1 X2"], is: ["N20 G0 Z5", "N30 G1 X3"], more: 0 }],
      moreRuns: 0,
    });
  });

  test("are told where the number of the program is another one", () => {
    const number = { line: 1, was: [":1200"], is: [":1201"], more: 0 };
    expect(changed(":1200\nN10 G0 X1\n", ":1201\nN10 G0 X1\n").runs).toEqual([number]);
  });

  test("are none in equal texts, even without a last line end", () => {
    expect(changed("G0 X1\nM2", "G0 X1\nM2\n")).toEqual({ gone: 0, added: 0, runs: [], moreRuns: 0 });
    expect(changed("", "").runs).toEqual([]);
  });

  test("at the begin, at the end, and where all is new", () => {
    expect(changed("A1\nB2\n", "B2\n").runs).toEqual([{ line: 1, was: ["A1"], is: [], more: 0 }]);
    expect(changed("A1\n", "A1\nB2\n").runs).toEqual([{ line: 2, was: [], is: ["B2"], more: 0 }]);
    expect(changed("", "A1\n").runs).toEqual([{ line: 1, was: [], is: ["A1"], more: 0 }]);
  });

  test("put into the old text give the new one, for random changes", () => {
    const next = seeded(11);
    const upTo = (most: number): number => Math.floor(next() * (most + 1));
    for (let round = 0; round < 300; round++) {
      const old = Array.from({ length: upTo(12) }, () => `G1 X${upTo(3)}`);
      const fresh = [...old];
      for (let edit = upTo(3); edit > 0; edit--) fresh.splice(upTo(fresh.length), upTo(2), `G1 X${upTo(3)}`);
      const { runs } = changed(old.join("\n"), fresh.join("\n"));
      const patched = [...old];
      // Each run's line is one of the new text: those before it are patched already.
      for (const { line, was, is } of runs) expect(patched.splice(line - 1, was.length, ...is)).toEqual(was);
      expect(patched).toEqual(fresh);
    }
  });

  test("too many to sort out are told as one run, with the first of its lines", () => {
    const text = (name: string): string =>
      Array.from({ length: 5000 }, (_, index) => `${name}${index}`).join("\n");
    const { runs, gone, added } = changed(text("X"), text("Y"));
    expect(runs).toHaveLength(1);
    expect(runs[0]).toMatchObject({ line: 1, more: 2 * (5000 - 12) });
    expect([gone, added]).toEqual([5000, 5000]);
  });
});

/** Starts `post --watch` and waits for what it says. */
function watching(words: readonly string[]) {
  const child = start(["post", ...words, "--watch"], { cwd: folder });
  onTestFinished(() => void child.kill("SIGKILL"));
  let said = "";
  child.stdout.on("data", (chunk: Buffer) => (said += chunk.toString()));
  child.stderr.on("data", (chunk: Buffer) => (said += chunk.toString()));
  return {
    child,
    /** What was said until a text came; then it begins anew. */
    until: async (text: string): Promise<string> => {
      for (let wait = 0; !said.includes(text); wait++) {
        if (wait > 600) throw new Error(`"${text}" was not said within 30 s:\n${said}`);
        await setTimeout(50);
      }
      const all = said;
      said = "";
      return all;
    },
  };
}

describe("post --watch", () => {
  test("does not miss a change that comes while it posts", async () => {
    const file = put(folder, "busy.txt", "one");
    const changes = await watchFiles([file]);
    onTestFinished(() => changes.end());
    writeFileSync(file, "another");
    await setTimeout(1000);
    const told = await Promise.race([changes.next().then(() => "change"), setTimeout(500, "nothing")]);
    expect(told).toBe("change");
  });

  test("posts again on each change, shows the blocks that changed, and keeps the good program of a bad job", async () => {
    const job = put(folder, "w.json", longJob(30));
    const dialect = put(folder, "w.dialect.yaml", readFileSync(plateDialect, "utf8"));
    const program = join(folder, "w.tap");
    const { until, child } = watching([job, "-d", dialect]);
    expect(await until("Ctrl-C ends it")).toContain("Before it runs");

    writeFileSync(job, longJob(30).replace('"feed": 200', '"feed": 210'));
    const again = await until("prove it out again");
    expect(again).toMatch(/- .*F200/);
    expect(again).toMatch(/\+ .*F210/);
    expect(again).not.toContain("Before it runs");
    const good = readFileSync(program, "utf8");

    writeFileSync(job, longJob(30).replace('"feed": 200', '"feed": -1'));
    expect(await until("is still that of")).toContain("job/range");
    expect(readFileSync(program, "utf8")).toBe(good);

    // As an editor saves: a new file takes the place of the old one.
    renameSync(put(folder, "w.new", longJob(30)), job);
    expect(await until("prove it out again")).toMatch(/\+ .*F200/);

    const text = readFileSync(dialect, "utf8");
    writeFileSync(dialect, text.replace("at-speed:", "at-sped:"));
    expect(await until("is still that of")).toContain("dialect/schema");
    writeFileSync(dialect, text);
    await until("no block changed");

    // What nobody has answered for is told when it is new, and not again.
    writeFileSync(dialect, `unanswered: [confirm.at-speed]\n${text}`);
    expect(await until("no block changed")).toContain("Nobody who knows the machine has said yet");
    writeFileSync(job, longJob(30).replace('"feed": 200', '"feed": 220'));
    expect(await until("prove it out again")).not.toContain("Nobody who knows the machine");
    writeFileSync(dialect, text);
    await until("no block changed");

    rmSync(job);
    expect(await until("is still that of")).toContain("job/not-found");
    writeFileSync(job, longJob(30));
    await until("prove it out again");

    const ended = new Promise((resolve) => child.on("exit", (_, signal) => resolve(signal)));
    child.kill("SIGINT");
    expect(await ended).toBe("SIGINT");
  });

  test("holds no more files after many postings, proved or refused", async () => {
    const job = put(folder, "many.json", longJob(5));
    const { until, child } = watching([job, "-d", plateDialect]);
    await until("Ctrl-C ends it");
    const held = (): number => readdirSync(`/proc/${child.pid}/fd`).length;
    const postings = async (): Promise<void> => {
      writeFileSync(job, longJob(6));
      await until("posted again");
      writeFileSync(job, longJob(6).replace('"feed": 200', '"feed": -1'));
      await until("is still that of");
    };
    await postings();
    const before = held();
    for (let round = 0; round < 5; round++) await postings();
    expect(held()).toBeLessThanOrEqual(before);
  }, 30_000);

  test("a report for scripts is one document a posting", async () => {
    const job = put(folder, "j.json", longJob(5));
    const { until } = watching([job, "-d", plateDialect, "--report", "json"]);
    expect(JSON.parse(await until("\n}\n"))).toMatchObject({ verdict: "proved" });
    writeFileSync(job, longJob(6));
    expect(JSON.parse(await until("\n}\n"))).toMatchObject({
      verdict: "proved",
      summary: { changed: { gone: 0, added: 1 } },
    });
  });

  test("needs files on both sides", () => {
    const job = put(folder, "n.json", longJob(5));
    const onStream = run(["post", job, "-d", plateDialect, "-o", "-", "--watch"], { cwd: folder });
    expect(onStream.status).toBe(2);
    expect(onStream.stderr).toContain("--watch needs a file for the program");
    const fromStream = run(["post", "-", "-d", plateDialect, "-o", "x.tap", "--watch"], { cwd: folder });
    expect(fromStream.status).toBe(2);
    expect(fromStream.stderr).toContain("--watch needs a job in a file");
  });
});
