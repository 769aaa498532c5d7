import { rowKind } from "#base";
import { missingKey, pathInverseTime, strayKey } from "../findings.ts";
import { nextMember, openObject } from "../scan/structure.ts";
import { noName, scanKey } from "../scan/text.ts";
import { createWords } from "../scan/words.ts";
import type { KindOfMove } from "./kind.ts";
import { checkMoved, effectiveFeed, statesFeed } from "./motion.ts";
import type { MoveReader } from "./reader.ts";
import { keyIndex } from "./reader.ts";
import { beginStream, readListSpan } from "./stream.ts";
import { readWord, refuseKey, refuseRepeated } from "./values.ts";

const pathWords = createWords(["kind", "points"]);
const kindWords = createWords(["rapid", "line"]);

/** { "path": { "kind": "line", "points": [[10, 10, -1], [20, 10, -1]] }, "feed": 900 } */
export const path: KindOfMove = { beside: ["feed"], read: readPath, finish: finishPath };

function readPath(reader: MoveReader): boolean {
  const { scanner, move } = reader;
  const errors = reader.errors;
  move.listAt = -1;
  let seen = 0;
  for (let more = openObject(scanner, "The path"); more; more = nextMember(scanner)) {
    const word = scanKey(scanner, pathWords);
    if (word === noName) return false;
    if (word < 0) refuseKey(scanner, "The path", pathWords);
    else if ((seen & (1 << word)) !== 0) refuseRepeated(scanner, pathWords.names[word]);
    else if (word === 0) move.choice = readWord(scanner, kindWords, "`kind`");
    else readListSpan(reader, "`points`");
    if (word >= 0) seen |= 1 << word;
  }
  pathWords.names.forEach((name, index) => {
    if ((seen & (1 << index)) === 0 && !scanner.failed)
      reader.report(missingKey(move.valueAt, name, "The path"));
  });
  return reader.errors === errors;
}

function finishPath(reader: MoveReader): void {
  const { move, operation } = reader;
  const rapid = move.choice === 0;
  if (rapid) reader.moved = true;
  checkMoved(reader);
  if (operation.feedMode === "inverse-time") reader.report(pathInverseTime(move.source));
  if (rapid && statesFeed(reader))
    reader.report(strayKey(move.keyAt[keyIndex.feed], "feed", "A path of rapids", "rapids have no feed"));
  // Under inverse-time the path has been refused already; asking for a feed as well would mislead.
  const feed = rapid || operation.feedMode === "inverse-time" ? 0 : effectiveFeed(reader, "The path");
  beginStream(reader, rapid ? rowKind.rapid : rowKind.line, 3, feed);
}
