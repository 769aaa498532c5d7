import { pushAside, rowKind, turns } from "#base";
import * as findings from "../findings.ts";
import type { HoleKind, Holes } from "../job.ts";
import { readNumber, scales } from "../scan/number.ts";
import { nextMember, openObject } from "../scan/structure.ts";
import { noName, scanKey } from "../scan/text.ts";
import { createWords } from "../scan/words.ts";
import type { KindOfMove } from "./kind.ts";
import { checkMoved, statesFeed } from "./motion.ts";
import type { MoveReader } from "./reader.ts";
import { keyIndex, slot } from "./reader.ts";
import { beginStream, readListSpan } from "./stream.ts";
import { readWord, refuseKey, refuseRepeated } from "./values.ts";

const holeKeys = [
  "kind",
  "at",
  "between",
  "top",
  "depth",
  "retract",
  "peck",
  "dwell",
  "lead",
  "backOff",
  "feedOut",
] as const;

type HoleKey = (typeof holeKeys)[number];

const holeWords = createWords(holeKeys);

/** Bits of the keys of holes in `Move.words`. */
export const holeBit = Object.fromEntries(holeKeys.map((key, index) => [key, 1 << index])) as Readonly<
  Record<HoleKey, number>
>;

/** What each kind needs, and may have, beside the keys of all. */
const holeKinds = {
  drill: { needs: [], may: [] },
  dwell: { needs: ["dwell"], may: [] },
  peck: { needs: ["peck"], may: ["backOff"] },
  "chip-break": { needs: ["peck"], may: ["backOff"] },
  tap: { needs: ["lead"], may: [] },
  bore: { needs: [], may: ["feedOut", "dwell"] },
  ream: { needs: [], may: ["feedOut"] },
} as const satisfies Record<
  HoleKind,
  { readonly needs: readonly HoleKey[]; readonly may: readonly HoleKey[] }
>;

/** Kinds of holes in the order of `Move.choice`. */
export const holeKindNames = Object.keys(holeKinds) as readonly HoleKind[];
const kindWords = createWords(holeKindNames);
const betweenNames = ["retract", "initial"] as const;
const betweenWords = createWords(betweenNames);

const neededByAll: readonly HoleKey[] = ["kind", "at", "top", "depth", "retract"];

/** { "holes": { "kind": "peck", "at": [[10, 10]], "top": 0, "depth": -12, "retract": 2, "peck": 3 }, "feed": 200 } */
export const holes: KindOfMove = { beside: ["feed"], read: readHoles, finish: finishHoles };

function readHoles(reader: MoveReader): boolean {
  const { scanner, move } = reader;
  const errors = reader.errors;
  move.listAt = -1;
  let seen = 0;
  for (let more = openObject(scanner, "`holes`"); more; more = nextMember(scanner)) {
    const word = scanKey(scanner, holeWords);
    if (word < 0) {
      if (word === noName) return false;
      refuseKey(scanner, "`holes`", holeWords);
    } else if ((seen & (1 << word)) !== 0) {
      refuseRepeated(scanner, holeKeys[word]);
    } else {
      seen |= 1 << word;
      move.wordAt[word] = scanner.tokenAt;
      readers[holeKeys[word]](reader);
    }
  }
  move.words = seen;
  if (reader.errors === errors) checkKeys(reader);
  return reader.errors === errors;
}

const length =
  (place: number, label: string, above0: boolean) =>
  ({ scanner, length: scale, move }: MoveReader): void =>
    void readNumber(scanner, scale, move.values, place, above0, label);

const readers = {
  kind: ({ scanner, move }) => (move.choice = readWord(scanner, kindWords, "`kind`")),
  at: (reader) => readListSpan(reader, "`at`"),
  between: ({ scanner, move }) => (move.between = readWord(scanner, betweenWords, "`between`")),
  top: length(slot.top, "`top`", false),
  depth: length(slot.depth, "`depth`", false),
  retract: length(slot.retract, "`retract`", false),
  peck: length(slot.peck, "`peck`", true),
  backOff: length(slot.backOff, "`backOff`", true),
  lead: length(slot.lead, "`lead`", true),
  dwell: ({ scanner, move }) => readNumber(scanner, scales.second, move.values, slot.dwell, true, "`dwell`"),
  feedOut: ({ scanner, feedScale, move }) =>
    readNumber(scanner, feedScale, move.values, slot.feedOut, true, "`feedOut`"),
} satisfies Record<HoleKey, (reader: MoveReader) => unknown>;

/** The keys by the table of kinds: none missing, and none outside of its row. */
function checkKeys(reader: MoveReader): void {
  const { words, wordAt, valueAt, choice } = reader.move;
  const has = (key: HoleKey): boolean => (words & holeBit[key]) !== 0;
  if (!has("kind")) {
    reader.report(findings.missingKey(valueAt, "kind", "`holes`"));
    return;
  }
  const kind = holeKindNames[choice];
  const { needs, may }: { needs: readonly HoleKey[]; may: readonly HoleKey[] } = holeKinds[kind];
  const owner = `\`holes\` of kind \`${kind}\``;
  const needed = [...neededByAll, ...needs];
  for (const key of needed) if (!has(key)) reader.report(findings.missingKey(valueAt, key, owner));
  holeKeys.forEach((key, index) => {
    if (!has(key) || needed.includes(key) || may.includes(key) || key === "between") return;
    reader.report(findings.strayKey(wordAt[index], key, owner, "it belongs to other kinds"));
  });
}

function finishHoles(reader: MoveReader): void {
  const { move, operation } = reader;
  checkMoved(reader);
  checkLevels(reader);
  if (reader.compensated) reader.report(findings.compensationOn(move.source, "where holes begin"));
  if (operation.feedMode === "inverse-time")
    reader.report(findings.holesRefused(move.source, "under inverse-time feed", "Use another feed mode."));
  const head = describeHoles(reader);
  if (head.cycle === "tap") checkTap(reader);
  else if (!statesFeed(reader) && !reader.lost)
    reader.report(findings.noOwnFeed(move.source, "Holes", "no other feed carries over to them"));
  // The feed of holes is theirs alone, and none from before them comes back.
  reader.feed = 0;
  pushAside(reader.batch, head, move.source);
  const { retract, between } = head;
  reader.place[2] = between === "initial" ? Math.max(reader.place[2], retract) : retract;
  beginStream(reader, rowKind.hole, 2, head.feed);
}

function checkLevels(reader: MoveReader): void {
  const { values, wordAt } = reader.move;
  const at = (key: HoleKey): number => wordAt[holeKeys.indexOf(key)];
  if (values[slot.depth] >= values[slot.top])
    reader.report(findings.levelsOutOfOrder(at("depth"), "a depth below top"));
  if (values[slot.retract] < values[slot.top])
    reader.report(findings.levelsOutOfOrder(at("retract"), "a retract not below top"));
}

function describeHoles(reader: MoveReader): Holes {
  const { words, values, choice, between } = reader.move;
  const cycle = holeKindNames[choice];
  const number = (key: "peck" | "dwell" | "lead" | "backOff" | "feedOut"): number =>
    (words & holeBit[key]) === 0 ? 0 : values[slot[key]];
  return {
    kind: "holes",
    cycle,
    top: values[slot.top],
    depth: values[slot.depth],
    retract: values[slot.retract],
    peck: number("peck"),
    backOff: number("backOff"),
    dwell: number("dwell"),
    lead: number("lead"),
    feedOut: number("feedOut"),
    between: betweenNames[(words & holeBit.between) === 0 ? 0 : between],
    feed: cycle === "tap" || !statesFeed(reader) ? 0 : values[slot.feed],
  };
}

/** A tap is driven by speed and lead; what the job states besides must not contradict them. */
function checkTap(reader: MoveReader): void {
  const { move, tool, operation, rpm } = reader;
  const lead = move.values[slot.lead];
  if (tool && !turns(tool.kind)) reader.report(findings.tapStandstill(move.source));
  else if (tool && tool.kind !== "tap" && !reader.warned) {
    reader.warned = true;
    reader.report(findings.tapTool(move.source, tool.kind));
  }
  const leadAt = move.wordAt[holeKeys.indexOf("lead")];
  if (tool?.lead !== undefined && tool.lead !== lead) reader.report(findings.tapLead(leadAt));
  if (!statesFeed(reader) || rpm === 0) return;
  const feed = move.values[slot.feed];
  const right = operation.feedMode === "per-revolution" ? lead : (rpm * lead) / 1000;
  if (Math.abs(feed - right) > right / 1000)
    reader.report(
      findings.tapFeed(move.keyAt[keyIndex.feed], String(Math.round((feed / lead) * 1000) / 1000)),
    );
}
