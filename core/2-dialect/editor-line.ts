/** Where an editor finds the schema of dialect files, seen from a file that stands beside an installed package. */
const schemaPath = "./node_modules/tapewright/schemas/dialect.schema.json";

/** First line of a dialect file: tells an editor with a YAML language server which schema to complete and check by. */
export function editorLine(): string {
  return `# yaml-language-server: $schema=${schemaPath}`;
}
