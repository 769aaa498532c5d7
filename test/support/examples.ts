import { existsSync, readdirSync, readFileSync } from "node:fs";
import { basename, join, resolve } from "node:path";

const root = resolve(import.meta.dirname, "../..");

/** An example of the tree: its job, and the machine of its own if it has one. */
export interface Example {
  readonly name: string;
  readonly job: string;
  /** Dialects to try: all shipped ones, and those in the example's folder, as paths. */
  readonly dialects: readonly string[];
}

/** Names of the shipped dialects: the folder is the list. */
export const shippedDialects: readonly string[] = readdirSync(join(root, "dialects"))
  .filter((name) => name.endsWith(".dialect.yaml"))
  .map((name) => basename(name, ".dialect.yaml"));

/** All examples with a job. */
export const examples: readonly Example[] = readdirSync(join(root, "examples"), { withFileTypes: true })
  .filter(({ name }) => existsSync(join(root, "examples", name, `${name}.job.json`)))
  .map(({ name }) => {
    const folder = join(root, "examples", name);
    const own = readdirSync(folder)
      .filter((file) => file.endsWith(".dialect.yaml"))
      .map((file) => join(folder, file));
    return {
      name,
      job: readFileSync(join(folder, `${name}.job.json`), "utf8"),
      dialects: [...shippedDialects, ...own],
    };
  });

/** The short name of a dialect, given by name or by path. */
export function dialectName(dialect: string): string {
  return basename(dialect, ".dialect.yaml");
}

/** The example of the weather plate. */
export const weatherPlate: string = readFileSync(
  join(root, "examples/weather-plate/weather-plate.job.json"),
  "utf8",
);
