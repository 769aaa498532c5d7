import type { Base, Value } from "./evidence.ts";
import { textOf } from "./evidence.ts";

/** Something that the programs do not show, and that somebody who knows the machine has to say. */
export interface Question {
  /** Keys that answer it, each by itself; those that the programs do not show are asked. */
  readonly keys: readonly string[];
  /** Whether one of the keys is enough of an answer. */
  readonly any?: true;
  readonly ask: string;
  /** Whether a wrong answer can hurt: it is then said on every post until it is answered. */
  readonly safety?: true;
  /** Whether it is asked at all for a dialect. */
  readonly when?: (base: Base) => boolean;
}

/** A question as it is put, with the answer that holds until another is given. */
export interface Asked {
  readonly keys: readonly string[];
  readonly ask: string;
  readonly safety: boolean;
  /** Of each key, as the file or what it extends has it; undefined: nobody says. */
  readonly answers: readonly (Value | undefined)[];
}

const isSwap = (...styles: readonly string[]) => (base: Base): boolean => styles.includes(textOf(base("machine.swap"))); // prettier-ignore
const has =
  (key: string) =>
  (base: Base): boolean =>
    base(key) !== undefined && base(key) !== "none";

/** Every question, by subject. Confirmations are no rule's business: whatever a program shows, they are asked. */
export const questions: readonly Question[] = [
  { keys: ["confirm.at-speed"], safety: true, ask: "How is it made sure that the spindle is at its speed before it cuts?" }, // prettier-ignore
  { keys: ["confirm.stopped"], safety: true, ask: "How is it made sure that the spindle stands before hands or a change come near?" }, // prettier-ignore
  { keys: ["confirm.released", "confirm.clamped", "confirm.air"], safety: true, when: isSwap("rack"), ask: "How is it made sure that the drawbar is open, that it is closed, and that there is air for it?" }, // prettier-ignore
  { keys: ["machine.travel"], ask: "How far does each axis travel, in machine coordinates?" },
  {
    keys: ["machine.spindle"],
    ask: "What are the lowest and highest speed, and the times of start, stop and free run?",
  },
  { keys: ["machine.swap"], safety: true, ask: "Who changes tools: the controller, the program at a rack, the operator, or nobody?" }, // prettier-ignore
  { keys: ["machine.rack"], when: isSwap("controller", "rack"), ask: "Is there a rack that the program drives to, and where are its pockets?" }, // prettier-ignore
  { keys: ["machine.change-effects"], safety: true, when: isSwap("controller"), ask: "What does a tool change leave behind: axes, spindle, coolant, length offset?" }, // prettier-ignore
  { keys: ["machine.retract.by"], safety: true, ask: "How does Z go up to where nothing is in the way?" },
  { keys: ["machine.retract.acts-on"], when: (base) => base("machine.retract.by") === "machine-move", ask: "Is a place in machine coordinates that of the spindle nose or of the tool's tip?" }, // prettier-ignore
  { keys: ["machine.length-offset.form"], safety: true, ask: "How does the length of a tool come to act?" },
  { keys: ["machine.length-offset.select-moves", "machine.length-offset.cancel-moves"], safety: true, when: has("length-offset.on"), ask: "Does Z move by itself when a length offset is selected, or cancelled?" }, // prettier-ignore
  { keys: ["length-offset.number"], when: has("length-offset.on"), ask: "May a tool have the length offset of another number?" }, // prettier-ignore
  { keys: ["machine.tapping"], when: has("cycles.tap"), ask: "How does the machine tap: not at all, with a floating holder, or synchronised?" }, // prettier-ignore
  { keys: ["machine.feed"], ask: "What are the lowest and the highest feed?" },
  { keys: ["machine.outputs", "machine.hood"], ask: "Does the program switch outputs, or lift a hood?" },
  { keys: ["dwell.unit"], safety: true, ask: "Does a dwell count seconds, milliseconds or revolutions?" },
  { keys: ["dwell.word"], safety: true, ask: "Which letter has the time of a dwell?" },
  {
    keys: ["units.mm", "units.inch"],
    any: true,
    safety: true,
    ask: "Which codes state the units, and what holds without them?",
  },
  { keys: ["numbers.length.mm", "numbers.length.inch"], any: true, ask: "What is the least increment: how many digits can stand behind the point, be it written or implied?" }, // prettier-ignore
  {
    keys: ["numbers.point"],
    safety: true,
    ask: "Must a number have a point, may it, or is the point implied?",
  },
  { keys: ["numbers.trailing-zeros"], ask: "Are zeros at the end of a number written?" },
  { keys: ["numbers.leading-zero"], ask: "Does a number below 1 have a zero before its point?" },
  {
    keys: ["numbers.arc-centre.mm", "numbers.arc-centre.inch"],
    any: true,
    ask: "How many digits have arc centres and radii?",
  },
  {
    keys: ["numbers.feed-per-minute.mm", "numbers.feed-per-minute.inch"],
    any: true,
    ask: "How many digits has a feed?",
  },
  { keys: ["numbers.speed"], ask: "How many digits behind the point has a speed?" },
  { keys: ["numbers.angle"], ask: "How many digits have rotary axes, and what are their letters?" },
  { keys: ["blocks.order"], ask: "In which order do words stand in a block?" },
  { keys: ["blocks.executes", "blocks.stops-act"], safety: true, ask: "Do words act by their kind or from left to right, and do M05 and M09 act before the motion of their block?" }, // prettier-ignore
  { keys: ["blocks.modes"], ask: "Do modes that are set one behind another share a block?" },
  { keys: ["blocks.g-words"], ask: "May a block have several G words?" },
  { keys: ["blocks.longest", "blocks.most-words"], ask: "How long may a block be?" },
  { keys: ["blocks.number"], ask: "Which blocks have a number?" },
  { keys: ["blocks.delete.mark"], ask: "Is there a switch that skips blocks, and which mark goes with it?" },
  { keys: ["comments.style"], ask: "How are comments set apart, if there are any?" },
  {
    keys: ["idioms.header"],
    ask: "Which comment lines stand at the head of a program, and which parts of them vary?",
  },
  { keys: ["idioms.message"], ask: "How is a message to the operator told from a remark?" },
  {
    keys: ["file.program-number.from"],
    when: has("file.program-number"),
    ask: "Which program numbers are free?",
  },
  { keys: ["file.characters"], ask: "Which characters may a comment have?" },
  { keys: ["modal.motion"], ask: "May a motion word be left out where it has not changed?" },
  { keys: ["modal.axes"], ask: "May an axis that does not move be left out?" },
  { keys: ["modal.feed"], ask: "How often must the feed be said?" },
  { keys: ["modal.speed"], ask: "Must each start say its speed?" },
  { keys: ["modal.arc-end", "modal.arc-centre"], when: (base) => base("arc.form") !== "none", ask: "May end coordinates and centre words of an arc be left out?" }, // prettier-ignore
  { keys: ["distance.programs-in"], safety: true, ask: "Are coordinates absolute or incremental?" },
  { keys: ["work-offset"], ask: "Which codes select work offsets?" },
  {
    keys: ["motion.rapids"],
    safety: true,
    ask: "Do rapids go straight, or does each axis run at its own rate?",
  },
  { keys: ["arc.form"], safety: true, ask: "How are arcs said: by centre, by radius, or not at all?" },
  { keys: ["arc.largest-sweep", "arc.full-circle", "arc.quadrants"], when: (base) => base("arc.form") !== "none", ask: "How far may an arc go in one block?" }, // prettier-ignore
  { keys: ["arc.helix"], when: (base) => base("arc.form") !== "none", ask: "May the third axis move during an arc, and along which path is its feed?" }, // prettier-ignore
  { keys: ["arc.tolerance"], when: (base) => base("arc.form") !== "none", ask: "How far may the radii at both ends of an arc differ?" }, // prettier-ignore
  { keys: ["path.exact", "path.blend"], ask: "Which words hold the exact path, and which blend corners?" },
  { keys: ["feed.per-revolution", "feed.inverse-time"], ask: "Are there feeds by the turn of the spindle, or by inverse time?" }, // prettier-ignore
  { keys: ["compensation"], ask: "Are there words for compensation by the tool's radius?" },
  {
    keys: ["cycles.drill", "cycles.peck"],
    any: true,
    ask: "Which fixed cycles are there, and what does each do?",
  },
  { keys: ["cycles.levels"], safety: true, when: has("cycles.drill"), ask: "Are the levels of cycles places, or do they count from one another?" }, // prettier-ignore
  { keys: ["cycles.return.initial", "cycles.return.without"], any: true, safety: true, when: has("cycles.drill"), ask: "To which level does the tool go between holes?" }, // prettier-ignore
  {
    keys: ["cycles.back-off"],
    when: has("cycles.peck"),
    ask: "How far does the controller back off between pecks?",
  },
  {
    keys: ["cycles.words.dwell-unit"],
    when: has("cycles.dwell"),
    ask: "What does the dwell of a cycle count?",
  },
  {
    keys: ["cycles.repeat", "cycles.positions", "cycles.definition"],
    when: has("cycles.drill"),
    ask: "What do later holes of a cycle state?",
  },
  { keys: ["cycles.ended-by", "cycles.initial-level"], when: has("cycles.drill"), ask: "What ends a series of holes, and where is the initial level taken?" }, // prettier-ignore
  { keys: ["spindle.order", "spindle.blocks"], ask: "Does the speed stand before the start of the spindle, and in its block?" }, // prettier-ignore
  { keys: ["tools.order", "tools.blocks"], when: isSwap("controller"), ask: "Do tool word and change share a block, and which comes first?" }, // prettier-ignore
  { keys: ["length-offset.word", "length-offset.added"], when: has("length-offset.on"), ask: "Which number has the length offset of a tool?" }, // prettier-ignore
  { keys: ["numbers.code-width.G", "numbers.code-width.M", "numbers.code-width.T", "numbers.code-width.H", "numbers.code-width.D"], ask: "Have codes, tool and offset numbers zeros in front?" }, // prettier-ignore
  { keys: ["units.stated"], ask: "May the units be stated with other modes, or in the first block alone?" },
  { keys: ["motion.rapid-axes"], ask: "May a rapid move several axes at once?" },
  { keys: ["numbers.plus"], ask: "Have positive numbers a sign?" },
  { keys: ["blocks.m-words"], ask: "How many M words may a block have?" },
  { keys: ["comments.longest", "comments.place"], ask: "How long may a comment be, and may it share a block with words?" }, // prettier-ignore
  { keys: ["spindle.ccw"], ask: "Does the spindle also turn counter-clockwise?" },
  { keys: ["coolant.mist", "coolant.flood", "coolant.air", "coolant.through-tool"], any: true, ask: "Which codes turn which coolant on?" }, // prettier-ignore
  { keys: ["tools.preselect"], when: isSwap("controller"), ask: "Is the next tool chosen beforehand?" },
  {
    keys: ["tools.empty"],
    when: isSwap("controller"),
    ask: "Is the last tool put away, and by which tool word?",
  },
  { keys: ["stops.stop", "stops.optional", "stops.resume"], ask: "Which codes stop the program, and what holds when it goes on?" }, // prettier-ignore
  { keys: ["stops.end-resets"], ask: "Does the end of the program put the modes back?" },
  { keys: ["idioms.wait-signal"], ask: "Can the program wait on a signal, and how?" },
];

/**
 * The questions that the programs leave open, each with the answer that holds until somebody gives another.
 *
 * @param shown keys that the programs show
 * @param answers values of the file with what it extends
 * @param hints what the programs have that bears on a question, by its key
 */
export function openQuestions(
  shown: ReadonlySet<string>,
  answers: Base,
  hints: ReadonlyMap<string, string>,
): Asked[] {
  const isShown = (key: string): boolean =>
    shown.has(key) || [...shown].some((one) => one.startsWith(`${key}.`));
  return questions.flatMap(({ keys, ask, safety, any, when }) => {
    if (when !== undefined && !when(answers)) return [];
    const open = any === true && keys.some(isShown) ? [] : keys.filter((key) => !isShown(key));
    if (open.length === 0) return [];
    const seen = open.flatMap((key) => hints.get(key) ?? []);
    return [
      {
        keys: open,
        ask: [ask, ...seen].join(" "),
        safety: safety === true,
        answers: open.map((key) => answers(key)),
      },
    ];
  });
}
