import type { FeedMode, PerUnit } from "#base";
import { and, back, call, cases, choose, differs, func, get, not, or, same, set, str } from "./builders.ts";
import type { Expression, FunctionDeclaration, Statement } from "./builders.ts";
import type { EmitterFunction } from "./calls.ts";
import { character } from "./characters.ts";
import { hasWord } from "./code-text.ts";
import type { Context } from "./context.ts";
import { faultOn } from "./fault.ts";
import type { Word } from "./words.ts";
import { given, keyed, tracingWhere } from "./words.ts";
import { column } from "./write-motion.ts";

/** The number writer of each feed mode. */
const writers = {
  "per-minute": "writeFeedPerMinute",
  "per-revolution": "writeFeedPerRevolution",
  "inverse-time": "writeInverseTime",
} as const satisfies Record<FeedMode, EmitterFunction>;

/** The feed word, in the unit of the feed mode in force. */
export function defineFeed({ format }: Context): FunctionDeclaration {
  const modes = (["per-minute", "per-revolution", "inverse-time"] as const).filter(
    (mode) => mode === "per-minute" || hasWord(format.codes.modes["feed-mode"][mode]),
  );
  const branches = modes.map((mode) => ({
    of: str(mode),
    statements: [back(call(writers[mode], "state", "at", "address", "value"))],
  }));
  return func(
    "writeFeed",
    ["state", "at", "address", "value"],
    [
      set(get("state", "feed"), "value"),
      set(get("state", "afterRapid"), false),
      cases(get("state", "feedMode"), branches, [faultOn("feed")]),
    ],
  );
}

const inverseTime = (): Expression => same(get("state", "feedMode"), str("inverse-time"));

/** The feed word of a row, where the dialect's policy wants it; inverse time states each feed (NISTIR 6556 3.5.20). */
export function feedWord(context: Context): Word {
  const { modal, codes } = context.format;
  const always = alwaysFeedWord();
  const word = { ...always, statements: [...feedRepeats(context), ...always.statements] };
  if (modal.feed === "each-block") return word;
  return given(
    or(
      differs(column("feed"), get("state", "feed")),
      ...(modal.feed === "after-rapid" ? [get("state", "afterRapid")] : []),
      ...(hasWord(codes.modes["feed-mode"]["inverse-time"]) ? [inverseTime()] : []),
    ),
    word,
  );
}

/** The feed word of a row in any case. */
export function alwaysFeedWord(): Word {
  return {
    address: "F",
    statements: [set("at", call("writeFeed", "state", "at", character("F"), column("feed")))],
  };
}

/** Reports the policy where a feed word repeats the feed in force: no other one has it there. */
export function feedRepeats(context: Context): Statement[] {
  const holds = same(column("feed"), get("state", "feed"));
  const stays = hasWord(context.format.codes.modes["feed-mode"]["inverse-time"])
    ? and(holds, not(inverseTime()))
    : holds;
  return tracingWhere(context, stays, "modal.feed");
}

/** The feed of a rapid that is a line. */
export function rapidFeedWord(context: Context, { mm, inch }: PerUnit): Word {
  const value = choose(get("state", "inch"), inch, mm);
  const word = keyed(context, "motion.rapid-feed", {
    address: "F",
    statements: [set("at", call("writeFeed", "state", "at", character("F"), value))],
  });
  return context.format.modal.feed === "each-block"
    ? word
    : given(differs(value, get("state", "feed")), word);
}
