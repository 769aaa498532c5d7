/**
 * The first line of a dialect file, by which an editor with a YAML language server finds the schema, and with it the
 * meaning of each key and the values that it can have:
 *
 *     # yaml-language-server: $schema=node_modules/tapewright/schemas/dialect.schema.json
 *
 * @param schema path of schemas/dialect.schema.json from the folder of the file, with `/` between folders, or a URL. A
 * server takes it up to the first blank, so that a path with one must be given as a URL.
 * @throws where it has a blank or a line break, which would end the address early
 */
export function editorLine(schema: string): string {
  if (schema === "" || /\s/u.test(schema))
    throw new Error(`no address of a schema: ${JSON.stringify(schema)}`);
  return `# yaml-language-server: $schema=${schema}`;
}
