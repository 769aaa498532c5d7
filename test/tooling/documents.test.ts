import { execFileSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { describe, expect, it } from "vitest";

const root = resolve(import.meta.dirname, "../..");
const documents = ["README.md", "DEVELOPERS.md", "CHANGELOG.md", "dialects/README.md"];

/** Paths that a document names: in code marks or links, with a slash or a file ending, without a placeholder in capitals. */
function namedPaths(text: string): string[] {
  const marked = [...text.matchAll(/`([^`\s]+)`/g), ...text.matchAll(/\]\(([^)\s#]+)\)/g)].map(
    (match) => match[1] ?? "",
  );
  return marked.filter(
    (path) =>
      /^[\w.-]+(\/[\w.*-]+)+\/?$/.test(path) &&
      /^(core|dialects|schemas|examples|test|\.ci)\//.test(path) &&
      !/[A-Z]{4}/.test(path.replace("README", "")),
  );
}

describe.each(documents)("%s", (document) => {
  const text = readFileSync(join(root, document), "utf8");

  it("names only paths that are there", () => {
    expect(namedPaths(text).filter((path) => !existsSync(join(root, path)))).toEqual([]);
  });

  it("names only scripts that are there", () => {
    const { scripts } = JSON.parse(readFileSync(join(root, "package.json"), "utf8")) as {
      scripts: Record<string, string>;
    };
    const named = [...text.matchAll(/npm run ([\w:]+)/g)].map((match) => match[1] ?? "");
    expect(named.filter((name) => !(name in scripts))).toEqual([]);
    expect(Object.keys(scripts).length).toBeLessThanOrEqual(10);
  });
});

describe("the tree", () => {
  it("names no path of one machine", () => {
    const files = execFileSync("git", ["ls-files"], { cwd: root, encoding: "utf8" })
      .split("\n")
      .filter((file) => /\.(ts|mjs|cjs|json|yaml|md)$/.test(file) && file !== "package-lock.json");
    expect(files.length).toBeGreaterThan(100);
    const found = files.filter(
      (file) =>
        existsSync(join(root, file)) &&
        new RegExp("(^|[^A-Za-z0-9_.])/(work|root|home)/").test(readFileSync(join(root, file), "utf8")),
    );
    expect(found.filter((file) => file !== "test/tooling/documents.test.ts")).toEqual([]);
  });
});
