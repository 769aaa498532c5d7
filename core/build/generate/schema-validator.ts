import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Options } from "ajv";
import { Ajv } from "ajv";
import { Ajv2020 } from "ajv/dist/2020.js";
import standaloneCode from "ajv/dist/standalone/index.js";
import { build } from "esbuild";
import type { Product } from "./product.ts";
import { generatedBanner } from "./product.ts";

/** Exported function -> part of the schema that it checks: "" is the whole, "#/$defs/tool" one definition. */
type Validators = Readonly<Record<string, string>>;

/** All errors are gathered, and strict mode refuses a schema with a keyword that has no effect. */
const options: Options = {
  allErrors: true,
  strict: true,
  discriminator: true,
  code: { source: true, esm: true },
};

/**
 * Validators compiled ahead, so that a start loads no schema compiler and runs no `new Function`. Each function takes
 * parsed data and gives its errors, none if it is valid; it keeps no state.
 *
 * @param leftOut JSON pointer to a part of the schema that something else checks, and that a start need not load
 */
export function schemaValidator(
  schema: string,
  target: string,
  validators: Validators,
  leftOut?: string,
): Product {
  return {
    target,
    needs: [schema],
    make: async (root) => {
      const parsed = JSON.parse(readFileSync(join(root, schema), "utf8")) as {
        $schema?: string;
        $id?: string;
      };
      if (leftOut !== undefined) removeAt(parsed, leftOut);
      const compiled = await inlineRuntime(root, compileStandalone(parsed, validators));
      return (
        [
          generatedBanner([schema]),
          "// @ts-nocheck: the body is compiled code; the exports below it are typed by hand.",
          errorType,
          compiled.trimEnd(),
          ...Object.keys(validators).map(typedExport),
        ].join("\n\n") + "\n"
      );
    },
  };
}

/** Takes a member out of a document; its JSON pointer needs no escapes. */
function removeAt(document: object, pointer: string): void {
  const steps = pointer.split("/").slice(1);
  const name = steps.pop() ?? "";
  const owner = steps.reduce<unknown>((inner, step) => (inner as Record<string, unknown>)[step], document);
  if (!Reflect.has(owner as object, name)) throw new Error(`the schema has nothing at ${pointer}`);
  Reflect.deleteProperty(owner as object, name);
}

function compileStandalone(schema: { $schema?: string; $id?: string }, validators: Validators): string {
  const id = schema.$id ?? "schema";
  const ajv = schema.$schema?.includes("2020-12") === true ? new Ajv2020(options) : new Ajv(options);
  // Which axes of variation a key covers; it checks nothing.
  ajv.addVocabulary(["axes"]);
  ajv.addSchema(schema, id);
  const references = Object.entries(validators).map(([name, part]) => [name, `${id}${part}`]);
  return standaloneCode.default(ajv, Object.fromEntries(references) as Record<string, string>);
}

/** The compiled code asks for two or three helpers by `require`; they are taken in, so that the file needs no package. */
async function inlineRuntime(root: string, contents: string): Promise<string> {
  const { outputFiles } = await build({
    absWorkingDir: root,
    stdin: { contents, resolveDir: root, sourcefile: "validator.js" },
    bundle: true,
    write: false,
    // One closed expression: what it does not return stays out of the file's scope and of its declarations.
    format: "iife",
    globalName: "compiled",
    platform: "neutral",
    mainFields: ["main"],
    target: "es2023",
    charset: "utf8",
  });
  return outputFiles.map((file) => file.text).join("");
}

const errorType = `/** One thing that does not fit the schema. */
export interface SchemaError {
  /** JSON pointer to the value, "" for the whole. */
  readonly instancePath: string;
  /** JSON pointer into the schema, to the keyword that failed. */
  readonly schemaPath: string;
  /** The keyword that failed: "required", "enum", "additionalProperties" ... */
  readonly keyword: string;
  /** What the keyword has to say: { missingProperty }, { allowedValues }, { additionalProperty } ... */
  readonly params: Readonly<Record<string, unknown>>;
  /** The failure in words, in English. */
  readonly message?: string;
}`;

function typedExport(name: string): string {
  return `export function ${name}(data: unknown): readonly SchemaError[] {
  return compiled.${name}(data) ? [] : compiled.${name}.errors;
}`;
}
