import type { Finding, Place, Report, SourceName } from "#base";
import { isAlias, isMap, isScalar, isSeq, Lexer, parseDocument } from "yaml";
import type { Node, ParsedNode, Range, YAMLMap } from "yaml";
import type { TextPlaces } from "./text-places.ts";
import { textPlaces } from "./text-places.ts";
import type { Origin, ScalarNode, TreeNode } from "./tree.ts";

/** Largest file, bytes. */
const largestFile = 262_144;

/** Most tokens of a file; a dialect with every key has about two thousand. */
const mostTokens = 50_000;

/** Deepest nesting. */
const deepest = 16;

/** Keys that name parts of an object in the language we run on; no format has them, so they are refused by name. */
const refusedKeys: ReadonlySet<string> = new Set(["__proto__", "prototype", "constructor"]);

/** Line breaks and control characters: they could end a comment or a block of the program. */
// eslint-disable-next-line no-control-regex
const controlCharacters = /[\u0000-\u001f\u007f-\u009f\u2028\u2029\ufeff]/;

/** No exponent, no other base, nothing infinite. */
const plainNumber = /^[-+]?(\d+\.?\d*|\.\d+)$/;

const lexerMarks: ReadonlySet<string> = new Set(["\u0002", "\u0018", "\u001f"]);

/** What kind of file is read, and how findings name it. */
export interface YamlFile {
  readonly file: string;
  /** Index of the file in its chain. */
  readonly index: number;
  readonly source: Extract<SourceName, "dialect" | "setup">;
  readonly bytes: Uint8Array;
}

interface Parsing {
  readonly file: YamlFile;
  readonly text: string;
  readonly places: TextPlaces;
  readonly fail: (rule: string, message: string, offset: number, fix?: string) => void;
}

/**
 * Reads YAML 1.2 as a tree with places. Only plain data is taken: no anchors, aliases, merge keys, tags or second
 * document, no key twice, no line break or control character in a string.
 *
 * @returns undefined after a finding: dialect/size, dialect/encoding, dialect/yaml or dialect/characters
 */
export function parseYaml(file: YamlFile, report: Report): TreeNode | undefined {
  const parsing = start(file, report);
  if (parsing === undefined) return undefined;
  const { text, fail } = parsing.state;
  if (!tokensAreFew(parsing.state)) return undefined;
  const options = { version: "1.2", schema: "core", merge: false, prettyErrors: false } as const;
  const document = parseDocument(text, { ...options, uniqueKeys: false });
  for (const { message, pos } of document.errors)
    fail("dialect/yaml", `${message}.`, pos[0], openQuestion(text, pos[0]));
  if (document.errors.length > 0) return undefined;
  if (document.contents === null) return (fail("dialect/yaml", "The file is empty.", 0), undefined);
  const tree = toTree(parsing.state, document.contents, document.contents.range, 1);
  return parsing.failed() ? undefined : tree;
}

/** Findings offer lines with `?` for what only the user can know; such a line is no YAML before it is answered. */
function openQuestion(text: string, offset: number): string | undefined {
  const from = text.lastIndexOf("\n", offset - 1) + 1;
  const [line = ""] = text.slice(from).split("\n", 1);
  return /:\s*\?(\s|[,}]|$)/.test(line) ? "Put the answer in place of the question mark." : undefined;
}

function start(file: YamlFile, report: Report): { state: Parsing; failed: () => boolean } | undefined {
  const found: Finding[] = [];
  const fail = (rule: string, message: string, offset: number, fix?: string): void => {
    const place: Place = { source: file.source, file: file.file, offset };
    const finding: Finding = { rule, severity: "error", message, place };
    found.push(finding);
    report(fix === undefined ? finding : { ...finding, fix });
  };
  if (file.bytes.length > largestFile) {
    return (
      fail("dialect/size", `The file has ${file.bytes.length} bytes; ${largestFile} are allowed.`, 0),
      undefined
    );
  }
  const text = decode(file.bytes);
  if (text === undefined) return (fail("dialect/encoding", "The file is not UTF-8 text.", 0), undefined);
  const places = textPlaces(text);
  const atCharacter: Parsing["fail"] = (rule, message, offset, fix) => {
    fail(rule, message, places.byteOffset(offset), fix);
  };
  return { state: { file, text, places, fail: atCharacter }, failed: () => found.length > 0 };
}

function decode(bytes: Uint8Array): string | undefined {
  try {
    return new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return undefined;
  }
}

/**
 * Counts tokens and nesting before the parser, which is recursive, sees the text: a file of brackets alone would use up
 * the memory of the process.
 */
function tokensAreFew({ text, fail }: Parsing): boolean {
  let tokens = 0;
  let brackets = 0;
  let onLine = 0;
  let offset = 0;
  for (const token of new Lexer().lex(text)) {
    if (token === "[" || token === "{") brackets++;
    else if (token === "]" || token === "}") brackets--;
    else if (token === "-" || token === "?" || token === ":") onLine += brackets === 0 ? 1 : 0;
    else if (token.includes("\n")) onLine = 0;
    if (++tokens > mostTokens)
      return (fail("dialect/size", `The file has more than ${mostTokens} words and marks.`, 0), false);
    if (brackets > deepest || (brackets === 0 && onLine > deepest)) {
      return (fail("dialect/yaml", `Nested more than ${deepest} deep.`, offset), false);
    }
    // The lexer marks documents and scalars with control characters of its own, which are not in the text.
    if (!lexerMarks.has(token)) offset += token.length;
  }
  return true;
}

function toTree(parsing: Parsing, node: Node | null, at: Range | null | undefined, depth: number): TreeNode {
  const offset = at?.[0] ?? 0;
  const origin = originAt(parsing, offset);
  if (depth > deepest) parsing.fail("dialect/yaml", `Nested more than ${deepest} deep.`, offset);
  else if (node === null) return { kind: "scalar", value: null, source: "", origin };
  else if (isAlias(node))
    parsing.fail("dialect/yaml", "Aliases are not used in these files.", offset, "Write the value itself.");
  else {
    refuseDecoration(parsing, node, offset);
    if (isMap(node)) return { kind: "mapping", entries: toEntries(parsing, node, depth), origin };
    if (isSeq(node)) {
      const items = node.items.map((item) =>
        toTree(parsing, item as ParsedNode, (item as ParsedNode).range, depth + 1),
      );
      return { kind: "list", items, origin };
    }
    if (isScalar(node)) {
      const scalar = toScalar(parsing, node.value, node.source, origin, offset);
      return node.type === "QUOTE_DOUBLE" || node.type === "QUOTE_SINGLE"
        ? { ...scalar, quoted: true }
        : scalar;
    }
  }
  return { kind: "scalar", value: null, source: "", origin };
}

function toScalar(
  parsing: Parsing,
  value: unknown,
  source: string | undefined,
  origin: Origin,
  offset: number,
): ScalarNode {
  if (typeof value === "string" && controlCharacters.test(value)) {
    const message =
      "A line break or control character in a string: it could end a comment or a block of the program.";
    parsing.fail("dialect/characters", message, offset, "Write the text on one line, without escapes.");
  }
  if (typeof value === "number" && !plainNumber.test(source ?? "")) {
    parsing.fail(
      "dialect/yaml",
      `\`${source}\` is not a plain decimal number.`,
      offset,
      "Write it with digits and a point alone.",
    );
  }
  const known = typeof value === "string" || typeof value === "number" || typeof value === "boolean";
  return { kind: "scalar", value: known ? value : null, source: source ?? String(value), origin };
}

function refuseDecoration(parsing: Parsing, node: Node, offset: number): void {
  const { anchor, tag } = node as { anchor?: string; tag?: string };
  if (anchor !== undefined)
    parsing.fail("dialect/yaml", "Anchors are not used in these files.", offset, "Leave the anchor out.");
  if (tag !== undefined)
    parsing.fail("dialect/yaml", "Tags are not used in these files.", offset, "Leave the tag out.");
}

/** The entries of a mapping; each has the place of its key. */
function toEntries(parsing: Parsing, mapping: YAMLMap, depth: number): Map<string, TreeNode> {
  const entries = new Map<string, TreeNode>();
  for (const pair of mapping.items) {
    const key = pair.key as ParsedNode | null;
    const offset = key?.range[0] ?? 0;
    const name = isScalar(key) ? (key.source ?? String(key.value)) : "";
    if (isScalar(key)) refuseDecoration(parsing, key, offset);
    if (name === "") parsing.fail("dialect/yaml", "A key must be a plain word.", offset);
    else if (refusedKeys.has(name) || name === "<<")
      parsing.fail("dialect/yaml", `The key "${name}" is not allowed.`, offset);
    else if (controlCharacters.test(name))
      parsing.fail("dialect/characters", "A control character in a key.", offset);
    else if (entries.has(name)) {
      parsing.fail("dialect/yaml", `The key "${name}" stands here twice.`, offset, "Keep one of the two.");
    } else entries.set(name, toTree(parsing, pair.value as ParsedNode | null, key?.range, depth + 1));
  }
  return entries;
}

function originAt({ file, places }: Parsing, offset: number): Origin {
  return { file: file.index, line: places.line(offset), offset: places.byteOffset(offset) };
}
