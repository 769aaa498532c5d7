import js from "@eslint/js";
import { defineConfig, globalIgnores } from "eslint/config";
import tseslint from "typescript-eslint";

/** A `let` at module level is state that outlives a call; exported or not, it is refused. */
const noModuleLevelLet = ["Program", "Program > ExportNamedDeclaration"].map((parent) => ({
  selector: `${parent} > VariableDeclaration[kind=/^(let|var)$/]`,
  message: "No state at module level: pass it, or keep it inside the function that owns it.",
}));

const noDefaultExport = {
  selector: "ExportDefaultDeclaration",
  message: "Name what you export: the file's name, the export and the kind are one word.",
};

/** What only Node offers; outside 9-cli the code also runs in a browser. */
const nodeGlobals = [
  "process",
  "Buffer",
  "global",
  "require",
  "module",
  "__dirname",
  "__filename",
  "setImmediate",
];

export default defineConfig(
  globalIgnores([
    "dist/",
    "coverage/",
    "examples/",
    "**/*.generated.*",
    "test/goldens/",
    "test/emit/goldens/",
    "test/fixtures/",
  ]),
  js.configs.recommended,
  tseslint.configs.recommendedTypeChecked,
  {
    languageOptions: { parserOptions: { projectService: true, tsconfigRootDir: import.meta.dirname } },
    linterOptions: { reportUnusedDisableDirectives: "error" },
  },
  {
    files: ["**/*.ts"],
    rules: {
      eqeqeq: "error",
      "max-lines": ["error", { max: 400 }],
      "max-lines-per-function": ["error", { max: 60, skipBlankLines: true, skipComments: true }],
      "no-eval": "error",
      "no-new-func": "error",
      "no-restricted-syntax": ["error", ...noModuleLevelLet],
      "@typescript-eslint/consistent-type-imports": ["error", { fixStyle: "separate-type-imports" }],
      "@typescript-eslint/consistent-type-exports": "error",
      "@typescript-eslint/no-unused-vars": [
        "error",
        { argsIgnorePattern: "^_", varsIgnorePattern: "^_", destructuredArrayIgnorePattern: "^_" },
      ],
      "@typescript-eslint/restrict-template-expressions": ["error", { allowNumber: true }],
      // With a default branch the switch has said what it does with the rest.
      "@typescript-eslint/switch-exhaustiveness-check": [
        "error",
        { considerDefaultExhaustiveForUnions: true, requireDefaultForNonUnion: false },
      ],
    },
  },
  {
    files: ["core/**/*.ts"],
    rules: { "no-restricted-syntax": ["error", ...noModuleLevelLet, noDefaultExport] },
  },
  {
    files: ["core/**/*.ts"],
    ignores: ["core/9-cli/**", "core/build/**"],
    rules: {
      "no-console": "error",
      "no-restricted-globals": [
        "error",
        ...nodeGlobals.map((name) => ({ name, message: "Only 9-cli knows that it runs under Node." })),
      ],
    },
  },
  {
    files: ["test/**/*.ts"],
    // A describe() is a function by form only: its length is that of a chapter.
    rules: { "max-lines-per-function": "off" },
  },
  {
    files: ["**/*.js", "**/*.cjs"],
    extends: [tseslint.configs.disableTypeChecked],
    languageOptions: { globals: { module: "writable" } },
  },
  {
    // Scripts of the benchmark, which run without a build.
    files: ["test/**/*.mjs"],
    extends: [tseslint.configs.disableTypeChecked],
    languageOptions: { globals: { process: "readonly" } },
  },
);
