import { resolve } from "node:path";
import ts from "typescript";
import { expect, test } from "vitest";
import { emitterTypes } from "#emit";

const root = resolve(import.meta.dirname, "../..");

/** Compiles a checking text beside the declaration file, and gives what the compiler says. */
function diagnose(traced: boolean, check: string): string[] {
  const declaration = resolve(root, "test/emit/made-emitter.d.ts");
  const checking = resolve(root, "test/emit/checking.ts");
  const texts = new Map([
    [declaration, emitterTypes({ traced })],
    [checking, check],
  ]);
  const config = ts.readConfigFile(resolve(root, "tsconfig.json"), (file) => ts.sys.readFile(file));
  const { options } = ts.parseJsonConfigFileContent(
    { ...config.config, include: [], files: [checking] },
    ts.sys,
    root,
  );
  const host = ts.createCompilerHost(options);
  const readFile = host.readFile.bind(host);
  const fileExists = host.fileExists.bind(host);
  const getSourceFile = host.getSourceFile.bind(host);
  host.readFile = (file) => texts.get(file) ?? readFile(file);
  host.fileExists = (file) => texts.has(file) || fileExists(file);
  host.getSourceFile = (file, version, ...rest) => {
    const text = texts.get(file);
    return text === undefined
      ? getSourceFile(file, version, ...rest)
      : ts.createSourceFile(file, text, version);
  };
  const program = ts.createProgram(
    [declaration, checking],
    { ...options, skipLibCheck: false, types: [] },
    host,
  );
  const files = [declaration, checking].map((file) => program.getSourceFile(file));
  return files
    .flatMap((file) => [...program.getSemanticDiagnostics(file), ...program.getSyntacticDiagnostics(file)])
    .map(({ messageText }) => ts.flattenDiagnosticMessageText(messageText, " "));
}

const check = `
import type * as Shared from "#base";
import type { EmitOptions, EmitStart, Emitter } from "#emit";
import type * as Made from "./made-emitter.js";

type Same<A, B> = (<T>() => T extends A ? 1 : 2) extends <T>() => T extends B ? 1 : 2 ? true : false;
type Mutual<A, B> = [A] extends [B] ? ([B] extends [A] ? true : false) : false;
// Whoever makes batches of their own may leave sections out.
type Batch = Omit<Shared.Batch, "sections" | "sectionNames"> & {
  readonly sections?: readonly number[];
  readonly sectionNames?: readonly string[];
};
export const batches: Mutual<Made.Batch, Batch> = true;
export const steps: Mutual<Made.Step, Shared.Step> = true;
export const kinds: Same<Made.Step["kind"], Shared.StepKind> = true;
export const options: Mutual<Made.EmitOptions, EmitOptions> = true;
export const starts: Mutual<Made.EmitStart, EmitStart> = true;
type Wide = (batches: Iterable<Made.Batch>, options: EmitOptions) => Iterable<Uint8Array>;
export const emits: Mutual<typeof Made.emitUnproved, Wide> = true;
export const cleans: Mutual<typeof Made.cleanText, Emitter["cleanText"]> = true;
export const module: Emitter = null as unknown as typeof Made;
`;

test("the declaration file stands alone and agrees with the shared types", () => {
  expect(diagnose(false, check)).toEqual([]);
  expect(
    diagnose(
      true,
      `${check}export const keys: NonNullable<Emitter["traceKeys"]> = null as unknown as typeof Made.traceKeys;`,
    ),
  ).toEqual([]);
});

test("the check can fail", () => {
  expect(
    diagnose(
      false,
      `import type * as Made from "./made-emitter.js"; export const wrong: Made.Step = { kind: "dwell" };`,
    ),
  ).toHaveLength(1);
});
