/* Generated from schemas/dialect.schema.json by `npm run generate`. Do not edit. */

/**
 * The name that programs, set-up sheets and findings quote. Lower case, words joined by hyphens; the file is called NAME.dialect.yaml.
 *
 * If wrong: the program on the machine cannot be traced to the file that shaped it.
 */
export type NameOfTheDialect = string;
/**
 * One line for people: which controller or machine this is.
 *
 * If wrong: an operator picks the dialect of another machine.
 */
export type Title = string;
/**
 * The dialect whose values hold wherever this file states none: the name of a shipped dialect, or a file in the same folder or below (its name ends with .yaml). Mappings are merged key by key; lists, single values and `none` replace.
 *
 * If wrong: words of another controller are inherited that this one rejects or takes for something else.
 */
export type Extends = string;
/**
 * Where the facts of this file come from: standard and section, manual and page, or what was tried at the machine.
 *
 * If wrong: nobody can tell later which value was read and which was guessed.
 *
 * @minItems 1
 * @maxItems 40
 */
export type Sources = [string, ...string[]];
/**
 * Steps, and the blocks that are expected for them; `dialect test` runs them. They are this file's alone: a file that extends it does not inherit them. They may also stand beside it, in NAME.cases.yaml.
 *
 * If wrong: `dialect test` fails, or holds the file to blocks that the controller does not want; programs do not change.
 *
 * @minItems 1
 * @maxItems 500
 */
export type Cases = [Case, ...Case[]];
/**
 * What the case is about, for reports.
 *
 * If wrong: nobody knows which case failed.
 */
export type NameOfTheCase = string;
/**
 * mm or inch: what the numbers under `given` count, and the units of the program.
 *
 * If wrong: the case gives other places than it means, and fails.
 */
export type UnitsOfTheCase = "mm" | "inch";
/**
 * Steps, one a text, in the notation that this page explains.
 *
 * If wrong: the case says nothing about what the controller wants.
 *
 * @minItems 1
 * @maxItems 200
 */
export type Given = [string, ...string[]];
/**
 * The blocks that are to be written, one a text; a blank stands for a tab.
 *
 * If wrong: the case fails, or holds the dialect to what the controller does not want.
 *
 * @maxItems 500
 */
export type Expected = string[];
/**
 * Keys of which nobody who knows the machine has said yet that they are true of it, as `dialect infer` lists them: each is told on every post, until it is taken out of the list. A confirmation that is listed is a wait or a dwell. A file that extends this one inherits the list, or states its own.
 *
 * If wrong: a guess passes for a fact of the machine: the tool cuts before the spindle is at its speed.
 *
 * @maxItems 100
 */
export type Unanswered = string[];
/**
 * Ending of the program file, without the dot.
 *
 * If wrong: the controller does not list the file, or opens it as something else.
 */
export type FileNameEnding = string;
/**
 * What ends a line: lf (line feed), crlf (carriage return and line feed) or cr (carriage return).
 *
 * If wrong: the whole file is read as one block, or each second line as an empty one.
 */
export type LineEnd = "lf" | "crlf" | "cr";
/**
 * Whether the last line is ended, too.
 *
 * If wrong: the last block, the end of the program, is ignored.
 */
export type LineEndAfterTheLastLine = "yes" | "no";
/**
 * A visible mark at the end of each block: none, semicolon or asterisk.
 *
 * If wrong: `;` starts a comment on some controllers, so that the rest of the block is dropped; `*` is an error on others.
 */
export type EndOfBlockMark = "none" | "semicolon" | "asterisk";
/**
 * Whether a line with `%` alone stands first and last.
 *
 * If wrong: the controller finds no start or no end of the program and refuses the transfer.
 */
export type ProgramDelimiter = "none" | "percent";
/**
 * How the program is identified by a number of its own, or none. Where it is stated, a job must have a number in the range.
 */
export type ProgramNumber =
  | None
  | {
      letter?: LetterOfTheProgramNumber;
      digits?: DigitsOfTheProgramNumber;
      from?: LowestProgramNumber;
      to?: HighestProgramNumber;
    };
/**
 * Programs have no number; the file name tells them apart.
 */
export type None = "none";
/**
 * The address of the number.
 *
 * If wrong: the line is refused, or a program of another number is overwritten.
 */
export type LetterOfTheProgramNumber = "O" | ":" | "%";
/**
 * Least digits; zeros are put in front.
 *
 * Unit: digits.
 *
 * If wrong: the controller takes the program for another one, or refuses it.
 */
export type DigitsOfTheProgramNumber = number;
/**
 * Lowest number that is free for programs.
 *
 * Unit: program number.
 *
 * If wrong: a program that the builder protects is overwritten, or the transfer is refused.
 */
export type LowestProgramNumber = number;
/**
 * Highest number that is free for programs; many controls keep the 8000s or 9000s to themselves.
 *
 * Unit: program number.
 *
 * If wrong: a cycle or macro of the builder is overwritten.
 */
export type HighestProgramNumber = number;
/**
 * Whether the file begins with the three bytes that mark UTF-8.
 *
 * If wrong: the first block is rejected, or read without its first word.
 */
export type ByteOrderMark = "yes" | "no";
/**
 * Blank lines before the first line of the program.
 *
 * Unit: lines.
 *
 * If wrong: the controller misses the first block, or takes the blank line for the end of the program.
 */
export type Leader = number;
/**
 * between-sections: one stands before each section of the program; skipped: none is written, and the controller passes over one; none: the controller takes one for the end of the program.
 *
 * If wrong: the program ends at the first tool change, with the spindle running.
 */
export type BlankLines = "between-sections" | "skipped" | "none";
/**
 * What the text may hold: upper (capital letters, digits and the marks of the code, in comments, too), ascii, or utf-8 (any character in comments).
 *
 * If wrong: the block is rejected, or the comment on the screen is garbled so that an instruction to the operator is lost.
 */
export type Characters = "upper" | "ascii" | "utf-8";
/**
 * parentheses: ( ... ); semicolon: from ; to the end of the line; none: the controller takes no comments, and messages to the operator cannot be written.
 *
 * If wrong: the text is executed as code, or the block alarms.
 */
export type CommentStyle = "parentheses" | "semicolon" | "none";
/**
 * Most characters of one comment, its marks not counted. Longer text is cut.
 *
 * Unit: characters.
 *
 * If wrong: the block alarms, or the end of an instruction to the operator is missing.
 */
export type LongestComment = number;
/**
 * anywhere: a comment may share its block with words; own-block: a comment has a block of its own.
 *
 * If wrong: the words behind the comment are dropped, or the block alarms.
 */
export type PlaceOfComments = "anywhere" | "own-block";
/**
 * Which blocks have a number (N word), or none.
 */
export type BlockNumbers =
  | None1
  | {
      on?: NumberedBlocks;
      start?: FirstBlockNumber;
      step?: StepOfBlockNumbers;
      to?: HighestBlockNumber;
      width?: DigitsOfBlockNumbers;
    };
/**
 * No block has a number.
 */
export type None1 = "none";
/**
 * all: every block; sections: only the first block of each section.
 *
 * If wrong: block search and restart do not find the place.
 */
export type NumberedBlocks = "all" | "sections";
/**
 * Number of the first numbered block, and of the first one after the highest was reached.
 *
 * Unit: block number.
 *
 * If wrong: a number that the controller reserves is used.
 */
export type FirstBlockNumber = number;
/**
 * Difference from one numbered block to the next.
 *
 * Unit: block numbers.
 *
 * If wrong: no free numbers for a block put in at the machine.
 */
export type StepOfBlockNumbers = number;
/**
 * After it numbers begin again at the first.
 *
 * Unit: block number.
 *
 * If wrong: the controller alarms in the middle of the program.
 */
export type HighestBlockNumber = number;
/**
 * Least digits, zeros put in front; 0: as many as needed.
 *
 * Unit: digits.
 *
 * If wrong: the number is not recognised.
 */
export type DigitsOfBlockNumbers = number;
/**
 * What stands between two words: none, blank or tab.
 *
 * If wrong: words that run together are misread, or a blank counts against the length of the block.
 */
export type Separator = "none" | "blank" | "tab";
/**
 * Letters in the order in which a block has them, each once. Every letter that the dialect writes must stand here.
 *
 * If wrong: a controller with a fixed order ignores or misreads the word that stands in the wrong place.
 *
 * @minItems 3
 * @maxItems 26
 */
export type WordOrder = [Letter, Letter, Letter, ...Letter[]];
/**
 * one capital letter
 *
 * This interface was referenced by `DialectSchema`'s JSON-Schema
 * via the `definition` "letter".
 */
export type Letter = string;
/**
 * Most characters of a block, its line end not counted, or none.
 *
 * Unit: characters.
 *
 * If wrong: the block is cut short: in the worst case a coordinate loses its last digits and the axis goes to another place without an alarm.
 */
export type LongestBlock = None2 | number;
/**
 * Any length.
 */
export type None2 = "none";
/**
 * one: a single G word; any: one of each modal group.
 *
 * If wrong: the last one wins without a word, or the block alarms.
 */
export type GWordsInABlock = "one" | "any";
/**
 * Most M words in one block.
 *
 * Unit: words.
 *
 * If wrong: only the first or the last one acts: coolant or spindle is missing.
 */
export type MWordsInABlock = number;
/**
 * together: modes that are set one after another share a block (as far as g-words allows); apart: each has a block of its own.
 *
 * If wrong: a mode is dropped: the program runs in the wrong plane, units or offset.
 */
export type ModesInABlock = "together" | "apart";
/**
 * operation: each operation of the job begins one; tool: only one with another tool does.
 *
 * If wrong: the search for a block stops at a place where tool and offsets are not stated.
 */
export type BeginningOfASection = "operation" | "tool";
/**
 * Address of the block number where a section begins: N as everywhere, or colon (the alignment function).
 *
 * If wrong: the block alarms, or a search does not find the place.
 */
export type MarkOfASection = "N" | "colon";
/**
 * yes: a comment with the name of the operation, or of the tool where a section begins at one, stands before the first block of each section; no: none does. A comment is no step, and is never read as a message.
 *
 * If wrong: nobody finds the place at the screen, or the comment alarms.
 */
export type CommentOfASection = "yes" | "no";
/**
 * restated: each section states all modes that the start of the program states, units, compensation off and cycles off among them, which a restart by the control's own block search needs; tool, length offset and spindle are said where they change, so that only a section that begins with a tool has them all; kept: it states the modes of its operation, and what was said at the start stays in force.
 *
 * If wrong: a program that is taken up at a section runs in units or with a compensation that somebody left in force.
 */
export type ModesOfASection = "restated" | "kept";
/**
 * none: there is no such switch; slash: `/`; numbered: `/` or `/1` to `/9`, with a switch for each.
 *
 * If wrong: a block that should be skipped is executed, or the other way round.
 */
export type BlockDeleteMark = "none" | "slash" | "numbered";
/**
 * before-number: /N10; after-number: N10/
 *
 * If wrong: the mark is not seen, and the block is executed although its switch is on.
 */
export type PlaceOfTheBlockDeleteMark = "before-number" | "after-number";
/**
 * Most words in one block, the block number not counted, or none.
 *
 * Unit: words.
 *
 * If wrong: the block alarms, or words at its end are not executed.
 */
export type WordsInABlock = None3 | number;
/**
 * Any number of words.
 */
export type None3 = "none";
/**
 * Whether spindle stop and coolant off act before or after the motion in their block; program stop and program end act after it in any case. Where `executes` is left-to-right, all of them act where they stand. They are written in blocks of their own; this decides what a program from elsewhere means.
 *
 * If wrong: the spindle stops and the tool is then driven through the material.
 */
export type WhenStopsAct = "before-motion" | "after-motion";
/**
 * by-kind: the words of a block act in the order of their kinds, whatever their order in the text (NISTIR 6556 Table 8); left-to-right: each word acts where it stands, and a motion where its first axis word stands.
 *
 * If wrong: the spindle starts at the speed said before, or an axis moves at the feed or in the mode of the block before.
 */
export type OrderOfExecution = "by-kind" | "left-to-right";
/**
 * none: a word has a number and nothing else; numbered: parameters such as #1, and arithmetic in brackets in the place of a number (NISTIR 6556 3.3.2); named: parameters with names such as #<depth>, too.
 *
 * If wrong: `#1` is read as a value that the controller does not have, or a program that it runs is refused.
 */
export type ParametersAndArithmetic = "none" | "numbered" | "named";
/**
 * none: blocks run once, from the first to the last; calls: M98 P calls the subprogram that O and its number begin and M99 ends; o-words: calls, and O words that call, branch and repeat (sub, call, if, while, do, repeat).
 *
 * If wrong: blocks are run that the controller skips, or not as often as it runs them.
 */
export type SubprogramsAndBranches = "none" | "calls" | "o-words";
/**
 * Most subprograms that are under way at once: one that the program calls counts one, one that it calls counts two.
 *
 * Unit: calls.
 *
 * If wrong: the controller alarms in the middle of the program.
 */
export type DepthOfCalls = number;
/**
 * always: every number with decimals has a point; when-needed: whole numbers have none; never: the point is implied, and the number counts least increments.
 *
 * If wrong: a control that counts least increments reads X50 as 0.050 mm; the opposite mistake moves a thousand times too far.
 */
export type DecimalPoint = "always" | "when-needed" | "never";
/**
 * keep: 1.500; drop: 1.5 and 10.; one: 1.5 and 10.0 (at least one digit behind the point).
 *
 * If wrong: a number without decimals may be read in least increments.
 */
export type ZerosAtTheEnd = "keep" | "drop" | "one";
/**
 * keep: 0.5; drop: .5
 *
 * If wrong: the word is a syntax error.
 */
export type ZeroBeforeThePoint = "keep" | "drop";
/**
 * Whether a positive number with a direction (axes, arc centres) has a + sign.
 *
 * If wrong: the word is a syntax error, or an old control takes it as unsigned.
 */
export type PlusSign = "yes" | "no";
/**
 * With an implied point: which zeros are left out. leading: X12500 is 12.500; trailing: the number is read from the left; none: all digits stand.
 *
 * If wrong: every coordinate is wrong by powers of ten.
 */
export type ZerosLeftOut = "leading" | "trailing" | "none";
/**
 * With an implied point: how many digits a number has before zeros at its end are left out.
 *
 * Unit: digits.
 *
 * If wrong: every coordinate is wrong by powers of ten.
 */
export type DigitsOfANumber = number;
/**
 * Most digits before the point, or none for no limit.
 *
 * Unit: digits.
 *
 * If wrong: the word alarms, or its first digits are lost and the axis goes to another place.
 */
export type DigitsBeforeThePoint = None4 | number;
/**
 * As many as the number has.
 */
export type None4 = "none";
/**
 * Digits behind the point in a program in millimetres: 3 means a least increment of 0.001 mm.
 *
 * Unit: digits behind the point of a length in mm.
 *
 * If wrong: the controller rejects a number with too many digits, or rounds it by itself, so that arcs no longer end where they should.
 */
export type DecimalsInMillimetres = number;
/**
 * Digits behind the point in a program in inches: 4 means a least increment of 0.0001 inch.
 *
 * Unit: digits behind the point of a length in inch.
 *
 * If wrong: the controller rejects a number with too many digits, or rounds it by itself, so that arcs no longer end where they should.
 */
export type DecimalsInInches = number;
/**
 * always: every number with decimals has a point; when-needed: whole numbers have none; never: the point is implied, and the number counts least increments.
 *
 * If wrong: a control that counts least increments reads X50 as 0.050 mm; the opposite mistake moves a thousand times too far.
 *
 * This interface was referenced by `DialectSchema`'s JSON-Schema
 * via the `definition` "own-point".
 */
export type DecimalPoint1 = "always" | "when-needed" | "never";
/**
 * keep: 1.500; drop: 1.5 and 10.; one: 1.5 and 10.0 (at least one digit behind the point).
 *
 * If wrong: a number without decimals may be read in least increments.
 *
 * This interface was referenced by `DialectSchema`'s JSON-Schema
 * via the `definition` "own-trailing-zeros".
 */
export type ZerosAtTheEnd1 = "keep" | "drop" | "one";
/**
 * keep: 0.5; drop: .5
 *
 * If wrong: the word is a syntax error.
 *
 * This interface was referenced by `DialectSchema`'s JSON-Schema
 * via the `definition` "own-leading-zero".
 */
export type ZeroBeforeThePoint1 = "keep" | "drop";
/**
 * Whether a positive number with a direction (axes, arc centres) has a + sign.
 *
 * If wrong: the word is a syntax error, or an old control takes it as unsigned.
 */
export type PlusSign1 = "yes" | "no";
/**
 * With an implied point: which zeros are left out. leading: X12500 is 12.500; trailing: the number is read from the left; none: all digits stand.
 *
 * If wrong: every coordinate is wrong by powers of ten.
 *
 * This interface was referenced by `DialectSchema`'s JSON-Schema
 * via the `definition` "own-suppressed-zeros".
 */
export type ZerosLeftOut1 = "leading" | "trailing" | "none";
/**
 * With an implied point: how many digits a number has before zeros at its end are left out.
 *
 * Unit: digits.
 *
 * If wrong: every coordinate is wrong by powers of ten.
 *
 * This interface was referenced by `DialectSchema`'s JSON-Schema
 * via the `definition` "own-digits".
 */
export type DigitsOfANumber1 = number;
/**
 * Most digits before the point, or none for no limit.
 *
 * Unit: digits.
 *
 * If wrong: the word alarms, or its first digits are lost and the axis goes to another place.
 *
 * This interface was referenced by `DialectSchema`'s JSON-Schema
 * via the `definition` "own-whole-digits".
 */
export type DigitsBeforeThePoint1 = None5 | number;
/**
 * As many as the number has.
 */
export type None5 = "none";
/**
 * Digits behind the point in a program in millimetres: 3 means a least increment of 0.001 mm.
 *
 * Unit: digits behind the point of a length in mm.
 *
 * If wrong: start and end of an arc differ in radius: the controller alarms, or steps on the part.
 */
export type DecimalsInMillimetres1 = number;
/**
 * Digits behind the point in a program in inches: 4 means a least increment of 0.0001 inch.
 *
 * Unit: digits behind the point of a length in inch.
 *
 * If wrong: start and end of an arc differ in radius: the controller alarms, or steps on the part.
 */
export type DecimalsInInches1 = number;
/**
 * Digits behind the point in a program in millimetres: 3 means a least increment of 0.001 mm.
 *
 * Unit: digits behind the point of a length in mm.
 *
 * If wrong: the hole is drilled in one go, or in a thousand pecks.
 */
export type DecimalsInMillimetres2 = number;
/**
 * Digits behind the point in a program in inches: 4 means a least increment of 0.0001 inch.
 *
 * Unit: digits behind the point of a length in inch.
 *
 * If wrong: the hole is drilled in one go, or in a thousand pecks.
 */
export type DecimalsInInches2 = number;
/**
 * Numbers of A B C. Either the digits behind the point, or a mapping that also states how this number differs from the rest.
 *
 * Unit: digits behind the point of an angle in degrees.
 *
 * If wrong: the rotary axis stands short of or past its place.
 */
export type RotaryWords =
  | number
  | {
      decimals?: DigitsBehindThePoint;
      point?: DecimalPoint1;
      "trailing-zeros"?: ZerosAtTheEnd1;
      "leading-zero"?: ZeroBeforeThePoint1;
      plus?: PlusSign1;
      "suppressed-zeros"?: ZerosLeftOut1;
      digits?: DigitsOfANumber1;
      "whole-digits"?: DigitsBeforeThePoint1;
    };
/**
 * The least increment as a number of decimals.
 *
 * Unit: digits.
 *
 * If wrong: the rotary axis stands short of or past its place.
 */
export type DigitsBehindThePoint = number;
/**
 * Digits behind the point in a program in millimetres: 3 means a least increment of 0.001 mm.
 *
 * Unit: digits behind the point of a feed in mm a minute.
 *
 * If wrong: the feed is rejected, or a decimal is dropped and the tool moves ten times too fast.
 */
export type DecimalsInMillimetres3 = number;
/**
 * Digits behind the point in a program in inches: 4 means a least increment of 0.0001 inch.
 *
 * Unit: digits behind the point of a feed in inch a minute.
 *
 * If wrong: the feed is rejected, or a decimal is dropped and the tool moves ten times too fast.
 */
export type DecimalsInInches3 = number;
/**
 * Digits behind the point in a program in millimetres: 3 means a least increment of 0.001 mm.
 *
 * Unit: digits behind the point of a feed in mm a revolution.
 *
 * If wrong: a feed of 0.08 becomes 0, or is taken as 8.
 */
export type DecimalsInMillimetres4 = number;
/**
 * Digits behind the point in a program in inches: 4 means a least increment of 0.0001 inch.
 *
 * Unit: digits behind the point of a feed in inch a revolution.
 *
 * If wrong: a feed of 0.08 becomes 0, or is taken as 8.
 */
export type DecimalsInInches4 = number;
/**
 * Numbers of F in inverse time. Either the digits behind the point, or a mapping that also states how this number differs from the rest.
 *
 * Unit: digits behind the point of a feed in 1/min.
 *
 * If wrong: the tool moves at a multiple or a fraction of the feed.
 */
export type InverseTimeFeed =
  | number
  | {
      decimals?: DigitsBehindThePoint1;
      point?: DecimalPoint1;
      "trailing-zeros"?: ZerosAtTheEnd1;
      "leading-zero"?: ZeroBeforeThePoint1;
      plus?: PlusSign1;
      "suppressed-zeros"?: ZerosLeftOut1;
      digits?: DigitsOfANumber1;
      "whole-digits"?: DigitsBeforeThePoint1;
    };
/**
 * The least increment as a number of decimals.
 *
 * Unit: digits.
 *
 * If wrong: the tool moves at a multiple or a fraction of the feed.
 */
export type DigitsBehindThePoint1 = number;
/**
 * Numbers of S. Either the digits behind the point, or a mapping that also states how this number differs from the rest.
 *
 * Unit: digits behind the point of a speed in rpm.
 *
 * If wrong: the block alarms, or the speed is cut to a multiple.
 */
export type SpindleSpeed =
  | number
  | {
      decimals?: DigitsBehindThePoint2;
      point?: DecimalPoint1;
      "trailing-zeros"?: ZerosAtTheEnd1;
      "leading-zero"?: ZeroBeforeThePoint1;
      plus?: PlusSign1;
      "suppressed-zeros"?: ZerosLeftOut1;
      digits?: DigitsOfANumber1;
      "whole-digits"?: DigitsBeforeThePoint1;
    };
/**
 * The least increment as a number of decimals.
 *
 * Unit: digits.
 *
 * If wrong: the block alarms, or the speed is cut to a multiple.
 */
export type DigitsBehindThePoint2 = number;
/**
 * Number of the dwell, counted in `dwell.unit`. Either the digits behind the point, or a mapping that also states how this number differs from the rest.
 *
 * Unit: digits behind the point of a time in `dwell.unit`.
 *
 * If wrong: a dwell of 0.5 becomes 0 and the spindle has not come up to speed.
 */
export type Dwell =
  | number
  | {
      decimals?: DigitsBehindThePoint3;
      point?: DecimalPoint1;
      "trailing-zeros"?: ZerosAtTheEnd1;
      "leading-zero"?: ZeroBeforeThePoint1;
      plus?: PlusSign1;
      "suppressed-zeros"?: ZerosLeftOut1;
      digits?: DigitsOfANumber1;
      "whole-digits"?: DigitsBeforeThePoint1;
    };
/**
 * The least increment as a number of decimals.
 *
 * Unit: digits.
 *
 * If wrong: a dwell of 0.5 becomes 0 and the spindle has not come up to speed.
 */
export type DigitsBehindThePoint3 = number;
/**
 * Number of the dwell at the bottom of a hole, counted in `cycles.words.dwell-unit`. Either the digits behind the point, or a mapping that also states how this number differs from the rest.
 *
 * Unit: digits behind the point of a time in `cycles.words.dwell-unit`.
 *
 * If wrong: no dwell, or a very long one with the tool rubbing in the hole.
 */
export type DwellInACycle =
  | number
  | {
      decimals?: DigitsBehindThePoint4;
      point?: DecimalPoint1;
      "trailing-zeros"?: ZerosAtTheEnd1;
      "leading-zero"?: ZeroBeforeThePoint1;
      plus?: PlusSign1;
      "suppressed-zeros"?: ZerosLeftOut1;
      digits?: DigitsOfANumber1;
      "whole-digits"?: DigitsBeforeThePoint1;
    };
/**
 * The least increment as a number of decimals.
 *
 * Unit: digits.
 *
 * If wrong: no dwell, or a very long one with the tool rubbing in the hole.
 */
export type DigitsBehindThePoint4 = number;
/**
 * Number of the timeout, counted in `wait.timeout-unit`. Either the digits behind the point, or a mapping that also states how this number differs from the rest.
 *
 * Unit: digits behind the point of a time in `wait.timeout-unit`.
 *
 * If wrong: the wait gives up at once, or hangs for minutes with the fault unseen.
 */
export type TimeoutOfAWait =
  | number
  | {
      decimals?: DigitsBehindThePoint5;
      point?: DecimalPoint1;
      "trailing-zeros"?: ZerosAtTheEnd1;
      "leading-zero"?: ZeroBeforeThePoint1;
      plus?: PlusSign1;
      "suppressed-zeros"?: ZerosLeftOut1;
      digits?: DigitsOfANumber1;
      "whole-digits"?: DigitsBeforeThePoint1;
    };
/**
 * The least increment as a number of decimals.
 *
 * Unit: digits.
 *
 * If wrong: the wait gives up at once, or hangs for minutes with the fault unseen.
 */
export type DigitsBehindThePoint5 = number;
/**
 * Least digits of a G code before its point.
 *
 * Unit: digits.
 *
 * If wrong: the code is not recognised.
 */
export type DigitsOfGWords = number;
/**
 * Least digits of an M code.
 *
 * Unit: digits.
 *
 * If wrong: the code is not recognised.
 */
export type DigitsOfMWords = number;
/**
 * Least digits of a tool number.
 *
 * Unit: digits.
 *
 * If wrong: a number with too few digits selects another tool or carries no offset.
 */
export type DigitsOfTWords = number;
/**
 * Least digits of the number of a length offset.
 *
 * Unit: digits.
 *
 * If wrong: the length of another tool acts, and the tool is driven into the work.
 */
export type DigitsOfHWords = number;
/**
 * Least digits of the number of a radius offset.
 *
 * Unit: digits.
 *
 * If wrong: the radius of another tool acts, and the contour is gouged.
 */
export type DigitsOfDWords = number;
/**
 * modal: written when the kind of motion changes; each-block: in every block with axis words.
 *
 * If wrong: without its motion word a block does nothing, or is run as the last motion: a rapid where a feed was meant.
 */
export type MotionWord = "modal" | "each-block";
/**
 * changed: only axes that move; all: every axis whose place is known.
 *
 * If wrong: an axis left out is taken as 0 or stays where it was.
 */
export type AxisWords1 = "changed" | "all";
/**
 * changed: only the end coordinates that differ; both: both axes of the plane.
 *
 * If wrong: the arc is refused, or ends at another place.
 */
export type EndOfAnArc = "changed" | "both";
/**
 * non-zero: a centre word of 0 is left out; both: both are written.
 *
 * If wrong: `centre missing` alarm, or the last centre is used and the arc runs wild.
 */
export type ZerosInAnArcCentre = "non-zero" | "both";
/**
 * modal: when the feed changes; after-rapid: also in the first feed block after a rapid; each-block: in every feed block.
 *
 * If wrong: the block alarms for want of a feed, or an old feed is used.
 */
export type FeedWord = "modal" | "after-rapid" | "each-block";
/**
 * each-start: at every start of the spindle; changed: only where the speed is not the one said last, so that a start alone takes that one. Behind a stop of the program it is said in any case.
 *
 * If wrong: the spindle starts at a speed that is left over, or not at all.
 */
export type SpeedWord = "each-start" | "changed";
/**
 * Letter of the linear axis X of ISO 841.
 *
 * If wrong: another axis moves.
 */
export type LetterOfX = "X" | "Y" | "Z" | "A" | "B" | "C" | "U" | "V" | "W";
/**
 * Letter of the linear axis Y of ISO 841.
 *
 * If wrong: another axis moves.
 */
export type LetterOfY = "X" | "Y" | "Z" | "A" | "B" | "C" | "U" | "V" | "W";
/**
 * Letter of the linear axis Z of ISO 841.
 *
 * If wrong: another axis moves.
 */
export type LetterOfZ = "X" | "Y" | "Z" | "A" | "B" | "C" | "U" | "V" | "W";
/**
 * Letter of the rotary axis A of ISO 841.
 *
 * If wrong: another axis moves.
 */
export type LetterOfA = "X" | "Y" | "Z" | "A" | "B" | "C" | "U" | "V" | "W";
/**
 * Letter of the rotary axis B of ISO 841.
 *
 * If wrong: another axis moves.
 */
export type LetterOfB = "X" | "Y" | "Z" | "A" | "B" | "C" | "U" | "V" | "W";
/**
 * Letter of the rotary axis C of ISO 841.
 *
 * If wrong: another axis moves.
 */
export type LetterOfC = "X" | "Y" | "Z" | "A" | "B" | "C" | "U" | "V" | "W";
/**
 * Code of the rapid.
 *
 * If wrong: a rapid is run as a feed, or a feed as a rapid into the work.
 */
export type Rapid = string;
/**
 * Code of a straight line at feed.
 *
 * If wrong: a feed is run as a rapid into the work.
 */
export type StraightLineAtFeed = string;
/**
 * straight: all axes arrive together on a straight path; dog-leg: each runs at its own rate. With dog-leg, a rapid that changes Z and X or Y is split: rising Z first, falling Z last.
 *
 * If wrong: on a dog-leg the tool sweeps through a clamp that lies beside the straight path.
 */
export type PathOfARapid = "straight" | "dog-leg";
/**
 * together: a rapid moves all its axes in one block; one-at-a-time: each has a block of its own, rising Z first, falling Z last. Between the holes of a fixed cycle the controller moves as it does.
 *
 * If wrong: the tool sweeps through a clamp on a path that nobody has looked at.
 */
export type AxesOfARapid = "together" | "one-at-a-time";
/**
 * The most axes that one block may move. A job with a line or a helix that moves more is refused; rapids are split, rising Z first, falling Z last.
 *
 * Unit: axes.
 *
 * If wrong: the block alarms, or an axis is left behind and the tool cuts elsewhere.
 */
export type AxesThatMoveAtOnce = number;
/**
 * For a controller without rapids (`rapid: none`): the feed of the straight lines that take their place, or none. A line at exactly this feed is a rapid; a job with a feed as fast is refused, and so is one with feeds other than a minute.
 *
 * Unit: mm/min, or with `in/min`.
 *
 * If wrong: rapids creep, or the tool is dragged through the work at the speed of a rapid.
 */
export type RapidAsAFeed = "none" | Feed;
/**
 * a feed: a number in mm/min, or a text such as 20 in/min
 *
 * This interface was referenced by `DialectSchema`'s JSON-Schema
 * via the `definition` "feed".
 */
export type Feed = number | string;
/**
 * block: the code of `machine-move` acts in its own block alone; until-work-offset: it suspends the work offset, and all motion is in machine coordinates until a work offset is stated anew.
 *
 * If wrong: the tool goes to places of the work as if they were places of the machine.
 */
export type HowLongAMoveInMachineCoordinatesLasts = "block" | "until-work-offset";
/**
 * Code for millimetres, or none where the controller has no word for it.
 *
 * If wrong: everything is 25.4 times too small or too large.
 */
export type Millimetres = string;
/**
 * Code for inches, or none where the controller has no word for it.
 *
 * If wrong: everything is 25.4 times too small or too large.
 */
export type Inches = string;
/**
 * job: a program is in the units of its job; mm or inch: always in these.
 *
 * If wrong: everything is 25.4 times too small or too large.
 */
export type UnitsOfPrograms = "job" | "mm" | "inch";
/**
 * with-modes: in the first block or any other, with other modes; first-block: alone in the first block of the program, and nowhere else.
 *
 * If wrong: the block alarms, or offsets are taken in the other units.
 */
export type WhereUnitsAreStated = "with-modes" | "first-block";
/**
 * Code of the XY plane.
 *
 * If wrong: arcs run in another plane: the tool dives into the work.
 */
export type XYPlane = string;
/**
 * Code of the ZX plane.
 *
 * If wrong: arcs run in another plane: the tool dives into the work.
 */
export type ZXPlane = string;
/**
 * Code of the YZ plane.
 *
 * If wrong: arcs run in another plane: the tool dives into the work.
 */
export type YZPlane = string;
/**
 * Code for absolute coordinates.
 *
 * If wrong: places are taken as distances and the tool runs off.
 */
export type Absolute = string;
/**
 * Code for incremental coordinates.
 *
 * If wrong: distances are taken as places.
 */
export type Incremental = string;
/**
 * Whether programs are written with absolute or incremental coordinates.
 *
 * If wrong: places are taken as distances and the tool runs off.
 */
export type CoordinatesOfPrograms = "absolute" | "incremental";
/**
 * Code of an arc clockwise seen from the + end of the axis across the plane.
 *
 * If wrong: the arc runs the other way round.
 */
export type ArcClockwise = string;
/**
 * Code of an arc counter-clockwise.
 *
 * If wrong: the arc runs the other way round.
 */
export type ArcCounterClockwise = string;
/**
 * incremental-centre: I J K from the start point; absolute-centre: I J K as coordinates; radius: a radius word, negative above 180 degrees; none: arcs are not understood, and chords take their place.
 *
 * If wrong: the centre lies elsewhere: a wild circle through work and clamps.
 */
export type FormOfAnArc = "incremental-centre" | "absolute-centre" | "radius" | "none";
/**
 * Code for absolute arc centres, or none.
 *
 * If wrong: the centre lies elsewhere: a wild circle.
 */
export type AbsoluteArcCentres = string;
/**
 * Code for incremental arc centres, or none.
 *
 * If wrong: the centre lies elsewhere: a wild circle.
 */
export type IncrementalArcCentres = string;
/**
 * one capital letter
 */
export type RadiusWord = string;
/**
 * The planes in which arcs are understood. Arcs in others become chords, or are refused.
 *
 * If wrong: the block alarms, or the arc is cut in another plane.
 *
 * @maxItems 3
 */
export type PlanesWithArcs =
  | []
  | ["xy" | "zx" | "yz"]
  | ["xy" | "zx" | "yz", "xy" | "zx" | "yz"]
  | ["xy" | "zx" | "yz", "xy" | "zx" | "yz", "xy" | "zx" | "yz"];
/**
 * Largest sweep of an arc in one block; larger ones are split.
 *
 * Unit: degrees.
 *
 * If wrong: the arc takes the short way instead of the long one.
 */
export type LargestSweep = number;
/**
 * any: an arc may cross the quadrant lines of its circle (the lines through its centre along the axes); one: each block stays in one quadrant, and longer arcs are split at the lines.
 *
 * If wrong: the block alarms, or the arc is cut in the wrong quadrant.
 */
export type ArcsAndQuadrantLines = "any" | "one";
/**
 * Whether one block can be a full circle.
 *
 * If wrong: nothing is cut, or a whole circle where nothing was meant.
 */
export type FullCircle = "yes" | "no";
/**
 * Whether the third axis may move during an arc.
 *
 * If wrong: the third axis plunges before or after the arc.
 */
export type Helix = "yes" | "no";
/**
 * Letter of the word for the number of turns of a helix, or none: one turn a block.
 *
 * If wrong: the helix is cut with one turn and a steep plunge.
 */
export type TurnsWord = string;
/**
 * What F means on a helix: path, the speed along the helix; circle, the speed along its circle seen from above.
 *
 * If wrong: the tool moves up to several times faster than meant on a steep helix.
 */
export type FeedOnAHelix = "path" | "circle";
/**
 * Arcs with a smaller radius become chords, or none.
 *
 * Unit: mm, or with `in`.
 *
 * If wrong: the arc alarms or becomes a dwell mark.
 */
export type SmallestRadius = number | string;
/**
 * Arcs with a larger radius become chords, or none.
 *
 * Unit: mm, or with `in`.
 *
 * If wrong: the arc alarms.
 */
export type LargestRadius = number | string;
/**
 * In a program in millimetres.
 *
 * Unit: mm.
 *
 * If wrong: the program stops in the middle of a cut, or the controller steps to the end point on the part.
 */
export type ToleranceInMillimetres = number;
/**
 * In a program in inches.
 *
 * Unit: inch.
 *
 * If wrong: the program stops in the middle of a cut, or the controller steps to the end point on the part.
 */
export type ToleranceInInches = number;
/**
 * As a share of the radius; the larger of the two holds. 0: none.
 *
 * Unit: share of the radius (0.001 is 0.1 %).
 *
 * If wrong: the program stops in the middle of a cut, or the controller steps to the end point on the part.
 */
export type RelativeTolerance = number;
/**
 * Largest distance between a chord and its arc, where chords take the place of an arc.
 *
 * Unit: mm, or with `in`.
 *
 * If wrong: flats are seen on curves, or the blocks come faster than the controller reads them and the motion stutters.
 */
export type ChordTolerance = number | string;
/**
 * Code for the exact path.
 *
 * If wrong: corners are rounded.
 */
export type ExactPath = string;
/**
 * Code for a stop at each corner.
 *
 * If wrong: dwell marks at each corner, or rounded corners.
 */
export type ExactStop = string;
/**
 * Code for blending corners at speed.
 *
 * If wrong: the motion stutters and burns the edge.
 */
export type ContinuousPath = string;
/**
 * Letter of the word beside `blend` that says how far the path may leave its corners, a length in the units of the program; or none: an operation with a `tolerance` is then written on the exact path, and refused where there is no word for that.
 *
 * If wrong: the block is rejected, or corners are cut wider than the job allows.
 */
export type ToleranceWord = string;
/**
 * Codes that turn looking ahead over many blocks on, for operations that are blended, and off, for those on the exact path; or none.
 */
export type LookAhead =
  | None6
  | {
      on?: LookAheadOn;
      off?: LookAheadOff;
    };
/**
 * The control looks ahead by itself, or not at all.
 */
export type None6 = "none";
/**
 * Code that turns look-ahead on.
 *
 * If wrong: the motion stutters, or details are rounded off.
 */
export type LookAheadOn = string;
/**
 * Code that turns look-ahead off.
 *
 * If wrong: details are rounded off.
 */
export type LookAheadOff = string;
/**
 * Code for feed in length units a minute.
 *
 * If wrong: the feed is wrong by the spindle speed.
 */
export type FeedPerMinute1 = string;
/**
 * Code for feed in length units a revolution, or none: the feed is worked out a minute.
 *
 * If wrong: the feed is wrong by the spindle speed.
 */
export type FeedPerRevolution1 = string;
/**
 * Code for feed in 1/minutes a block, or none.
 *
 * If wrong: the tool moves at a wildly wrong feed.
 */
export type InverseTime = string;
/**
 * What F counts in inverse time: per-minute: 1/minutes; per-second: 1/seconds.
 *
 * If wrong: the tool moves 60 times too fast or too slow.
 */
export type UnitOfInverseTime = "per-minute" | "per-second";
/**
 * Code of the dwell.
 *
 * If wrong: there is no pause: the spindle is not up to speed when the cut begins.
 */
export type DwellCode = string;
/**
 * one capital letter
 */
export type DwellWord = string;
/**
 * What a dwell is counted in: seconds, milliseconds, or revolutions of the spindle (rev). Under rev the time of a job becomes revolutions at the speed that is commanded there, rounded up, and no state can be confirmed by a dwell.
 *
 * Unit: s, ms or rev.
 *
 * If wrong: 500 becomes 500 seconds, or 0.5 becomes nothing and the cut begins at low speed.
 */
export type DwellUnit = "s" | "ms" | "rev";
/**
 * apart: a dwell has a block of its own; with-start: the one that follows a start of the spindle shares its block, on a control that starts before it dwells.
 *
 * If wrong: the control dwells before it starts the spindle, or skips one of the two: the cut begins at low speed.
 */
export type BlockOfADwell = "apart" | "with-start";
/**
 * Words for compensation by the tool's radius, or none.
 */
export type CutterRadiusCompensation =
  | None7
  | {
      off?: CompensationOff;
      left?: CompensationLeft;
      right?: CompensationRight;
      word?: RadiusOffsetWord;
      "corner-feed"?: FeedAtInsideCorners;
    };
/**
 * The controller does not compensate.
 */
export type None7 = "none";
/**
 * Code that ends compensation.
 *
 * If wrong: the next motion is offset by the radius.
 */
export type CompensationOff = string;
/**
 * Code for the tool left of the contour.
 *
 * If wrong: the contour is off by the tool's diameter.
 */
export type CompensationLeft = string;
/**
 * Code for the tool right of the contour.
 *
 * If wrong: the contour is off by the tool's diameter.
 */
export type CompensationRight = string;
/**
 * Letter of the number of the radius offset, or none where the tool in the spindle decides.
 *
 * If wrong: the radius of another tool acts.
 */
export type RadiusOffsetWord = string;
/**
 * Codes that turn the slowing at inside corners on, where compensation begins, and off, where it has ended; or none.
 */
export type FeedAtInsideCorners =
  | None8
  | {
      on?: SlowAtInsideCorners;
      off?: FeedAsStated;
    };
/**
 * There are no words for it.
 */
export type None8 = "none";
/**
 * Code that has the feed lowered at inside corners.
 *
 * If wrong: the tool digs in at inside corners.
 */
export type SlowAtInsideCorners = string;
/**
 * Code that ends the slowing.
 *
 * If wrong: later contours are cut slower than meant.
 */
export type FeedAsStated = string;
/**
 * Words that make the length of the tool act, or none.
 */
export type ToolLengthOffset =
  | None9
  | {
      on?: LengthOffsetOn;
      off?: LengthOffsetOff;
      word?: LengthOffsetWord;
      number?: NumberOfTheLengthOffset;
      added?: AddedToTheNumberOfTheLengthOffset;
    };
/**
 * No word makes a tool length act; the operator sets Z.
 */
export type None9 = "none";
/**
 * Code that makes a length offset act.
 *
 * If wrong: the tool is driven into the work by its length.
 */
export type LengthOffsetOn = string;
/**
 * Code that cancels it; or offset number 0 of its word, such as H0: the offset is then cancelled by its own code with that number (G43 H0).
 *
 * If wrong: the length of the last tool still acts for the next one.
 */
export type LengthOffsetOff = string;
/**
 * one capital letter
 */
export type LengthOffsetWord = string;
/**
 * tool: a tool has the length offset of its own number; free: any.
 *
 * If wrong: another tool's length acts, and the tool is driven into the work.
 */
export type NumberOfTheLengthOffset = "tool" | "free";
/**
 * What is added to the number of a length offset when it is written, where the control keeps lengths behind other offsets of the same table: with 100, offset 3 is H103. Offset number 0 stays 0.
 *
 * Unit: offset number.
 *
 * If wrong: another tool's length acts, and the tool is driven into the work.
 */
export type AddedToTheNumberOfTheLengthOffset = number;
/**
 * Codes of the work offsets 1 to 9 in order, or none. A number behind the end of the list cannot be said.
 *
 * If wrong: the work is cut at the place of another set-up.
 */
export type WorkOffsets =
  | None10
  | [CodeWithWordOrNone]
  | [CodeWithWordOrNone, CodeWithWordOrNone]
  | [CodeWithWordOrNone, CodeWithWordOrNone, CodeWithWordOrNone]
  | [CodeWithWordOrNone, CodeWithWordOrNone, CodeWithWordOrNone, CodeWithWordOrNone]
  | [CodeWithWordOrNone, CodeWithWordOrNone, CodeWithWordOrNone, CodeWithWordOrNone, CodeWithWordOrNone]
  | [
      CodeWithWordOrNone,
      CodeWithWordOrNone,
      CodeWithWordOrNone,
      CodeWithWordOrNone,
      CodeWithWordOrNone,
      CodeWithWordOrNone
    ]
  | [
      CodeWithWordOrNone,
      CodeWithWordOrNone,
      CodeWithWordOrNone,
      CodeWithWordOrNone,
      CodeWithWordOrNone,
      CodeWithWordOrNone,
      CodeWithWordOrNone
    ]
  | [
      CodeWithWordOrNone,
      CodeWithWordOrNone,
      CodeWithWordOrNone,
      CodeWithWordOrNone,
      CodeWithWordOrNone,
      CodeWithWordOrNone,
      CodeWithWordOrNone,
      CodeWithWordOrNone
    ]
  | [
      CodeWithWordOrNone,
      CodeWithWordOrNone,
      CodeWithWordOrNone,
      CodeWithWordOrNone,
      CodeWithWordOrNone,
      CodeWithWordOrNone,
      CodeWithWordOrNone,
      CodeWithWordOrNone,
      CodeWithWordOrNone
    ];
/**
 * There are no words for work offsets; the operator sets the origin.
 */
export type None10 = "none";
/**
 * a code such as G53, if need be with a word that belongs to it (G54.1 P2), or none
 *
 * This interface was referenced by `DialectSchema`'s JSON-Schema
 * via the `definition` "codeWithWordOrNone".
 */
export type CodeWithWordOrNone = string;
/**
 * a code such as G53, if need be with a word that belongs to it (G54.1 P2), or none
 */
export type MoveInMachineCoordinates = string;
/**
 * a code such as G53, if need be with a word that belongs to it (G54.1 P2), or none
 */
export type ReturnToTheReferencePosition = string;
/**
 * Code that ends fixed cycles.
 *
 * If wrong: a hole is drilled at every place that follows.
 */
export type CyclesOff = string;
/**
 * Code that cancels a shift of the origin, or none.
 *
 * If wrong: the work is cut at a shifted place.
 */
export type LocalShiftOff = string;
/**
 * Code that cancels a rotation, or none.
 *
 * If wrong: the work is cut rotated.
 */
export type RotationOff = string;
/**
 * Code that cancels scaling and mirroring, or none.
 *
 * If wrong: the work is cut at another size or mirrored.
 */
export type ScaleOff = string;
/**
 * Code that makes the feed and speed overrides act, or none.
 *
 * If wrong: the override knob is dead while the program is proved out.
 */
export type OverridesOn = string;
/**
 * Whether compensation off and cycles off are said again before each swap of a tool, where the dialect has the words.
 *
 * If wrong: the controller alarms at the change, since it takes compensation or a cycle as still on.
 */
export type CancellingBeforeAToolChange = "yes" | "no";
/**
 * Codes of fixed cycles for holes and what goes with them, or none: every hole is written longhand.
 */
export type FixedCycles =
  | None11
  | {
      drill?: Drill;
      dwell?: DrillWithDwell;
      peck?: Peck;
      "chip-break"?: ChipBreaking;
      tap?: TapRightHand;
      "tap-left"?: TapLeftHand;
      ream?: Ream;
      "bore-dwell"?: BoreWithDwell;
      "bore-stop"?: BoreWithSpindleStop;
      "bore-manual"?: BoreWithManualRetract;
      return?: LevelBetweenHoles;
      "back-off"?: BackOff;
      levels?: DepthAndRetractLevel;
      words?: WordsOfACycle;
      repeat?: LaterHoles;
      definition?: DefinitionOfACycle;
      positions?: PlaceOfAHole;
      "initial-level"?: InitialLevel1;
      axis?: AxisOfACycle;
      "tap-feed"?: FeedWordOfATap;
      "tap-synchronised"?: SynchronisingCode;
      "ended-by"?: EndOfACycle;
    };
/**
 * The controller has no fixed cycles.
 */
export type None11 = "none";
/**
 * Feed in, rapid out, or none: it is written longhand.
 *
 * If wrong: the hole has another depth, or the tool breaks on its way out.
 */
export type Drill = string;
/**
 * Feed in, dwell, rapid out, or none: it is written longhand.
 *
 * If wrong: the hole has another depth, or the tool breaks on its way out.
 */
export type DrillWithDwell = string;
/**
 * Pecks with a rapid out of the hole after each, or none: it is written longhand.
 *
 * If wrong: the hole has another depth, or the tool breaks on its way out.
 */
export type Peck = string;
/**
 * Pecks with a small back-off, or none: it is written longhand.
 *
 * If wrong: the hole has another depth, or the tool breaks on its way out.
 */
export type ChipBreaking = string;
/**
 * Feed in, reverse, feed out, or none: it is written longhand.
 *
 * If wrong: the hole has another depth, or the tool breaks on its way out.
 */
export type TapRightHand = string;
/**
 * The same with a left-hand tap, or none: it is written longhand.
 *
 * If wrong: the hole has another depth, or the tool breaks on its way out.
 */
export type TapLeftHand = string;
/**
 * Feed in, feed out, or none: it is written longhand.
 *
 * If wrong: the hole has another depth, or the tool breaks on its way out.
 */
export type Ream = string;
/**
 * Feed in, dwell, feed out, or none: it is written longhand.
 *
 * If wrong: the hole has another depth, or the tool breaks on its way out.
 */
export type BoreWithDwell = string;
/**
 * Feed in, dwell, spindle stop, rapid out, or none: it is written longhand.
 *
 * If wrong: the hole has another depth, or the tool breaks on its way out.
 */
export type BoreWithSpindleStop = string;
/**
 * Feed in, dwell, spindle stop, program stop, or none: it is written longhand.
 *
 * If wrong: the hole has another depth, or the tool breaks on its way out.
 */
export type BoreWithManualRetract = string;
/**
 * Code for the level at which the tool stood before the first hole, or none.
 *
 * If wrong: the tool is dragged through a clamp between two holes.
 */
export type InitialLevel = string;
/**
 * Code for the retract level of the cycle, or none.
 *
 * If wrong: the tool is dragged through a clamp between two holes.
 */
export type RetractLevel = string;
/**
 * The level between holes where there is no word, or none where both words are there.
 *
 * If wrong: the tool is dragged through a clamp between two holes.
 */
export type LevelWithoutAWord = "retract" | "initial" | "none";
/**
 * How far above the last depth the rapid back into the hole ends.
 *
 * Unit: mm, or with `in`.
 *
 * If wrong: the drill is driven into the bottom at rapid and breaks.
 */
export type BackOffOfPecks = number | string;
/**
 * How far the drill is withdrawn between two pecks.
 *
 * Unit: mm, or with `in`.
 *
 * If wrong: the chip does not break.
 */
export type BackOffOfChipBreaking = number | string;
/**
 * absolute: Z and R are coordinates; under incremental distances R counts from where the tool is, and Z from R (NISTIR 6556 3.5.16). relative: R counts from the initial level, and Z from R. from-initial: R and Z both count from the initial level. The last two hold under absolute distances, too.
 *
 * If wrong: the depth is doubled, or the hole is drilled in the air.
 */
export type DepthAndRetractLevel = "absolute" | "relative" | "from-initial";
/**
 * one capital letter
 */
export type RetractLevelWord = string;
/**
 * one capital letter
 */
export type PeckWord = string;
/**
 * Letter of the back-off of pecks and chip-breaking, or none: the controller's own back-off holds (`cycles.back-off`).
 *
 * If wrong: the drill is driven into the bottom at rapid and breaks, or the chip does not break.
 */
export type BackOffWord = string;
/**
 * one capital letter
 */
export type DwellWord1 = string;
/**
 * What the dwell in a cycle is counted in: seconds, milliseconds, or revolutions of the spindle (rev), rounded up at the commanded speed.
 *
 * Unit: s, ms or rev.
 *
 * If wrong: no dwell at depth, or a very long one.
 */
export type UnitOfTheDwell = "s" | "ms" | "rev";
/**
 * Letter of how often the hole of a block is drilled, or none. Programs are written with it only to define a cycle without a hole (0).
 *
 * If wrong: holes are missing, or one too many is drilled.
 */
export type RepeatWord = string;
/**
 * positions: later holes state their place alone; all: each states the words of the cycle again.
 *
 * If wrong: later holes are missing or have another depth.
 */
export type LaterHoles = "positions" | "all";
/**
 * with-first-hole: the block with the cycle's code states the first hole, too; apart: it states no place and drills nothing (with the repeat word 0 where there is one), and each hole follows in a block of its own.
 *
 * If wrong: the first hole is missing, or one is drilled where the tool stands.
 */
export type DefinitionOfACycle = "with-first-hole" | "apart";
/**
 * changed: a hole states X and Y where they differ; both: it always states both.
 *
 * If wrong: a hole is missing, or drilled at X0 or Y0.
 */
export type PlaceOfAHole = "changed" | "both";
/**
 * Where the initial level is taken: before-series: the Z before the first hole behind a cancel code; current: the Z at each block with a cycle's code. A program always cancels one series before the next; this decides what one from elsewhere means.
 *
 * If wrong: between holes the tool is dragged through a clamp.
 */
export type InitialLevel1 = "before-series" | "current";
/**
 * plane-normal: holes go along the normal of the plane in force; z: along Z in any plane, so that no plane word is needed before.
 *
 * If wrong: the drill is driven sideways into the work.
 */
export type AxisOfACycle = "plane-normal" | "z";
/**
 * feed-mode: F means what the feed mode says; lead: F in a tapping cycle is the lead of the thread, whatever the feed mode. It then needs `numbers.feed-per-revolution`, and the feed is stated anew behind the cycle.
 *
 * If wrong: the tap breaks.
 */
export type FeedWordOfATap = "feed-mode" | "lead";
/**
 * Code that locks spindle and feed for the tapping cycle that follows, in a block of its own before it; none: the controller always does, or never.
 *
 * If wrong: the tap breaks or strips the thread.
 */
export type SynchronisingCode = string;
/**
 * any-motion: a motion word ends the cycle, too; cancel-code: its own code alone. The code is always written; this decides what a program from elsewhere means.
 *
 * If wrong: a hole is drilled at every place that follows.
 */
export type EndOfACycle = "any-motion" | "cancel-code";
/**
 * Code that starts the spindle clockwise, as for a right-hand tool.
 *
 * If wrong: the spindle turns the wrong way and the tool breaks.
 */
export type SpindleClockwise = string;
/**
 * Code that starts it counter-clockwise, or none.
 *
 * If wrong: the spindle turns the wrong way and the tool breaks.
 */
export type SpindleCounterClockwise = string;
/**
 * Code that stops the spindle.
 *
 * If wrong: the spindle runs on into the swap or past the end of the program.
 */
export type SpindleStop = string;
/**
 * a code such as G53, if need be with a word that belongs to it (G54.1 P2), or none
 */
export type SpindleOrientation = string;
/**
 * speed-first: the S word before the start word; start-first: the start word before the S word. It holds in a block, whatever `blocks.order` says, and from block to block.
 *
 * If wrong: the spindle starts at the last speed, or the speed is ignored.
 */
export type OrderOfSpeedAndStart = "speed-first" | "start-first";
/**
 * together: one block; apart: one block each.
 *
 * If wrong: one of the two is ignored.
 */
export type SpeedAndStartInABlock = "together" | "apart";
/**
 * What S counts. rpm: revolutions a minute; percent: hundredths of `spindle.full-speed`, which the dialect then has to state. Its decimals are `numbers.speed`.
 *
 * If wrong: the spindle runs at its highest speed where a low one was meant, or hardly turns.
 */
export type UnitOfTheSpeedWord = "rpm" | "percent";
/**
 * Speed that S100 asks for, where S counts percent. It stays what it is when `machine.spindle.max-rpm` is lowered to protect a tool or a bearing.
 *
 * Unit: rpm.
 *
 * If wrong: the spindle turns faster or slower than every program says.
 */
export type SpeedAt100Percent = number;
/**
 * Ranges of the spindle's gear that a code selects, or none. The first range that a speed lies in is selected, in a block of its own before the speed; a range changes only while the spindle stands.
 *
 * If wrong: the speed ends at the top of the range in force, or the gear is shifted while it turns.
 */
export type GearRanges =
  | None12
  | [GearRange]
  | [GearRange, GearRange]
  | [GearRange, GearRange, GearRange]
  | [GearRange, GearRange, GearRange, GearRange]
  | [GearRange, GearRange, GearRange, GearRange, GearRange]
  | [GearRange, GearRange, GearRange, GearRange, GearRange, GearRange];
/**
 * One range, or the control shifts by itself.
 */
export type None12 = "none";
/**
 * Code that selects it.
 *
 * If wrong: another range is selected.
 */
export type CodeOfTheRange = string;
/**
 * Lowest speed of the range.
 *
 * Unit: rpm.
 *
 * If wrong: the motor stalls in the cut.
 */
export type LowestSpeedOfTheRange = number;
/**
 * Highest speed of the range.
 *
 * Unit: rpm.
 *
 * If wrong: the spindle runs slower than the feed is made for.
 */
export type HighestSpeedOfTheRange = number;
/**
 * Code that turns mist on, or none.
 *
 * If wrong: the tool runs dry.
 */
export type Mist = string;
/**
 * Code that turns flood coolant on, or none.
 *
 * If wrong: the tool runs dry.
 */
export type Flood = string;
/**
 * Code that turns air on, or none.
 *
 * If wrong: chips stay in the cut.
 */
export type Air = string;
/**
 * Code that turns coolant through the tool on, or none.
 *
 * If wrong: a deep hole is drilled dry.
 */
export type CoolantThroughTheTool = string;
/**
 * Code that turns all of them off, or a code for each medium that can be turned on.
 *
 * If wrong: coolant runs during the swap, into the taper and the rack.
 */
export type AllOff =
  | OneCodeForAll
  | {
      mist?: MistOff;
      flood?: FloodOff;
      air?: AirOff;
      "through-tool"?: CoolantThroughTheToolOff;
    };
/**
 * Turns all media off.
 */
export type OneCodeForAll = string;
/**
 * Code that turns mist off, or none.
 *
 * If wrong: mist runs on into the swap.
 */
export type MistOff = string;
/**
 * Code that turns flood coolant off, or none.
 *
 * If wrong: coolant runs on into the swap.
 */
export type FloodOff = string;
/**
 * Code that turns air off, or none.
 *
 * If wrong: air blows chips into the rack.
 */
export type AirOff = string;
/**
 * Code that turns coolant through the tool off, or none.
 *
 * If wrong: coolant runs into the taper at the swap.
 */
export type CoolantThroughTheToolOff = string;
/**
 * apart: each in a block of its own; together: media that are turned on, or off, behind one another share a block, as far as `blocks.m-words` goes.
 *
 * If wrong: only the last word of the block acts, or the block alarms.
 */
export type CoolantWordsInABlock = "apart" | "together";
/**
 * Code of the controller's own tool change; with-tool-word: it has none, and the tool word alone changes the tool; none: it changes no tools.
 *
 * If wrong: the tool is not changed, and the next operation runs with the last one; or the spindle's tool is put away where a word was only meant to say its number.
 */
export type ToolChange = string;
/**
 * together: T and the change code share a block; apart: one block each.
 *
 * If wrong: the change takes the tool selected before.
 */
export type SelectionAndChangeInABlock = "together" | "apart";
/**
 * select-first: T before the change code; change-first: the change code first.
 *
 * If wrong: the change takes the tool selected before.
 */
export type OrderOfSelectionAndChange = "select-first" | "change-first";
/**
 * Whether the next tool is selected right after each change, so that the changer gets it ready.
 *
 * If wrong: the changer takes the wrong tool at the next change.
 */
export type Preselection = "yes" | "no";
/**
 * Whether the tool word stands before the stop at which the operator changes the tool. Without it the message to the operator alone says which tool that is, so that the dialect needs `idioms.message`.
 *
 * If wrong: the controller alarms at a tool it does not know, or starts a changer that is not there.
 */
export type ToolWordInASwapByTheOperator = "yes" | "no";
/**
 * Number of the tool word with which the controller's own change leaves the spindle empty; the program then ends with that change. none: the last tool stays in the spindle.
 *
 * Unit: tool number.
 *
 * If wrong: the last tool stays in the spindle where the next program expects none, or a tool of that number is put in.
 */
export type ToolWordOfAnEmptySpindle = None13 | number;
/**
 * The last tool stays in the spindle.
 */
export type None13 = "none";
/**
 * Code of a stop that the operator ends.
 *
 * If wrong: the program runs on while a hand is in the machine.
 */
export type ProgramStop = string;
/**
 * Code of a stop that acts when its switch is on, or none. A code behind a block delete mark, such as /M0 or /2 M0, is a stop that acts while that switch is off.
 *
 * If wrong: the program runs on although a check was meant.
 */
export type OptionalStop = string;
/**
 * Code of the end of the program.
 *
 * If wrong: the controller alarms, does not rewind, or moves a pallet.
 */
export type EndOfProgram = string;
/**
 * Where the message stands that says what a stop is for. own-block: in a block of its own before the stop; with-stop: in the block of the stop, behind its code. Of a message that takes several comments the last one stands there, the others in blocks before it.
 *
 * If wrong: the message is gone from the screen while the program stands, and the operator does not see what to do.
 */
export type MessageOfAStop = "own-block" | "with-stop";
/**
 * What is in force when the operator starts the program again after a stop. keeps-modes: what was in force before; loses-modes: nothing is certain, so that the program states all its modes anew before anything moves, and its offsets before the approach.
 *
 * If wrong: the program goes on in inches, in increments or in another work offset.
 */
export type ModesBehindAStop = "keeps-modes" | "loses-modes";
/**
 * Whether the end of the program puts the modes back by itself. no: the program states feed per minute, the XY plane, compensation off, absolute distances and cycles off before its end, each where there is a word for it, and the work offset where a machine move has suspended it (`motion.machine-move-lasts`).
 *
 * If wrong: the next program, or what the operator types in, runs in increments or in another plane.
 */
export type ModesAtTheEnd = "yes" | "no";
/**
 * Number for a signal that is on.
 *
 * Unit: number of the level word.
 *
 * If wrong: the wait is over at once, whatever the machine does.
 */
export type LevelOn = number;
/**
 * Number for a signal that is off.
 *
 * Unit: number of the level word.
 *
 * If wrong: the wait is over at once, whatever the machine does.
 */
export type LevelOff = number;
/**
 * What the timeout is counted in.
 *
 * Unit: s or ms.
 *
 * If wrong: the wait gives up at once, or hangs for minutes with the fault unseen.
 */
export type UnitOfTheTimeout = "s" | "ms";
/**
 * In words, for findings and the set-up sheet.
 *
 * If wrong: the operator does not know what is switched.
 */
export type WhatItDoes = string;
/**
 * unchanged: the axes end where they were; unknown: they may be anywhere, so that the program states them anew; swap-height: Z ends at the swap height.
 *
 * If wrong: the next approach starts from a place that nobody knows.
 */
export type EffectOnThePosition = "unchanged" | "unknown" | "swap-height";
/**
 * unchanged, or stopped.
 *
 * If wrong: the spindle is thought to stand while it turns.
 */
export type EffectOnTheSpindle = "unchanged" | "stopped";
/**
 * unchanged, or off.
 *
 * If wrong: coolant is missing, or runs into the taper.
 */
export type EffectOnCoolant = "unchanged" | "off";
/**
 * unchanged; active: the length of the new tool acts; cancelled: none acts.
 *
 * If wrong: the tool is driven into the work by its length.
 */
export type EffectOnTheLengthOffset = "unchanged" | "active" | "cancelled";
/**
 * A whole comment with a mark of its own, so that a message is told from a remark, or none. It may name {{text}} (must).
 *
 * If wrong: the operator does not see what is asked of them.
 */
export type MessageToTheOperator = string;
/**
 * Comment lines at the head of the program, in place of its name and the dialect. What is assumed and the caution stand in every header. Each entry is a line, or with {{#each tools}}, {{#each operations}} or {{#each assumptions}} around it one for each of them. Lines name {{program}}, {{number}}, {{dialect}} and {{units}}; within tools {{number}}, {{description}}, {{diameter}} and {{lengthOffset}}, within operations {{id}} and {{name}}, within assumptions {{text}}.
 *
 * If wrong: the transfer is refused, or the operator cannot tell one program from another.
 */
export type HeaderLines = None14 | [string, ...string[]];
/**
 * No lines of the dialect's own.
 */
export type None14 = "none";
/**
 * Comment lines behind the last block. Each entry is a line, or with {{#each tools}}, {{#each operations}} or {{#each assumptions}} around it one for each of them. Lines name {{program}}, {{number}}, {{dialect}} and {{units}}; within tools {{number}}, {{description}}, {{diameter}} and {{lengthOffset}}, within operations {{id}} and {{name}}, within assumptions {{text}}.
 *
 * If wrong: the transfer is refused, or blocks are looked for behind the end.
 */
export type FooterLines = None15 | [string, ...string[]];
/**
 * No lines of the dialect's own.
 */
export type None15 = "none";
/**
 * Waits until an input has a level, or none. It may name {{signal}} (must), {{level}} (without it every signal is waited for until it is on) and {{timeout}} (without it the wait lasts for ever).
 *
 * If wrong: the program does not wait: the tool cuts before the spindle is up to speed, or swaps while it turns.
 */
export type WaitOnASignal = string;
/**
 * Switches an output on, or none. It may name {{output}} (must).
 *
 * If wrong: another output is switched.
 */
export type OutputOn = string;
/**
 * Switches an output off, or none. It may name {{output}} (must).
 *
 * If wrong: another output is switched.
 */
export type OutputOff = string;
/**
 * Opens the drawbar, or none. It names no value.
 *
 * If wrong: the tool drops, or is pulled out of the rack with its fork.
 */
export type ReleaseTheTool = string;
/**
 * Closes the drawbar, or none. It names no value.
 *
 * If wrong: the spindle starts with a loose tool.
 */
export type ClampTheTool = string;
/**
 * Blows the taper clean, or none. It names no value.
 *
 * If wrong: a chip between taper and holder: the tool runs out.
 */
export type TaperAirOn = string;
/**
 * Ends it, or none. It names no value.
 *
 * If wrong: air blows on during the cut.
 */
export type TaperAirOff = string;
/**
 * Opens the cover of the rack, or none. It names no value.
 *
 * If wrong: the spindle is driven into the cover.
 */
export type OpenTheRackSCover = string;
/**
 * Closes the cover of the rack, or none. It names no value.
 *
 * If wrong: chips fill the pockets.
 */
export type CloseTheRackSCover = string;
/**
 * Lifts the dust hood, or none. It names no value.
 *
 * If wrong: the hood is driven into the rack or the clamps.
 */
export type DustHoodUp = string;
/**
 * Lowers the dust hood, or none. It names no value.
 *
 * If wrong: dust is not drawn off.
 */
export type DustHoodDown = string;
/**
 * Has the controller measure the tool's length and make it its length offset, or none. It names no value.
 *
 * If wrong: the length of the last measurement acts.
 */
export type MeasureTheTool = string;
/**
 * Least and greatest place of X in machine coordinates.
 *
 * Unit: mm, or with `in`.
 *
 * If wrong: the axis runs onto its limit switch in the middle of the program.
 *
 * @minItems 2
 * @maxItems 2
 */
export type TravelOfX = [Length, Length];
/**
 * a length: a number in mm, or a text such as 2 in
 *
 * This interface was referenced by `DialectSchema`'s JSON-Schema
 * via the `definition` "length".
 */
export type Length = number | string;
/**
 * Least and greatest place of Y in machine coordinates.
 *
 * Unit: mm, or with `in`.
 *
 * If wrong: the axis runs onto its limit switch in the middle of the program.
 *
 * @minItems 2
 * @maxItems 2
 */
export type TravelOfY = [Length, Length];
/**
 * Least and greatest place of Z in machine coordinates.
 *
 * Unit: mm, or with `in`.
 *
 * If wrong: the axis runs onto its limit switch in the middle of the program.
 *
 * @minItems 2
 * @maxItems 2
 */
export type TravelOfZ = [Length, Length];
/**
 * Least and greatest place of A in machine coordinates.
 *
 * Unit: degrees.
 *
 * If wrong: the axis runs onto its limit switch in the middle of the program.
 *
 * @minItems 2
 * @maxItems 2
 */
export type TravelOfA = [number, number];
/**
 * Least and greatest place of B in machine coordinates.
 *
 * Unit: degrees.
 *
 * If wrong: the axis runs onto its limit switch in the middle of the program.
 *
 * @minItems 2
 * @maxItems 2
 */
export type TravelOfB = [number, number];
/**
 * Least and greatest place of C in machine coordinates.
 *
 * Unit: degrees.
 *
 * If wrong: the axis runs onto its limit switch in the middle of the program.
 *
 * @minItems 2
 * @maxItems 2
 */
export type TravelOfC = [number, number];
/**
 * Lowest speed that the spindle may run at.
 *
 * Unit: rpm.
 *
 * If wrong: the spindle overheats, or does not turn.
 */
export type LowestSpeed = number;
/**
 * Highest speed.
 *
 * Unit: rpm.
 *
 * If wrong: the speed is cut without a word and the feed is too fast for it.
 */
export type HighestSpeed = number;
/**
 * Time from standstill to the highest speed.
 *
 * Unit: s, ms or min, written behind the number.
 *
 * If wrong: the tool cuts before the spindle is up to speed.
 */
export type TimeToComeUpToSpeed = string;
/**
 * Time from the highest speed to standstill by the drive.
 *
 * Unit: s, ms or min, written behind the number.
 *
 * If wrong: the tool is swapped while the spindle turns.
 */
export type TimeToStop = string;
/**
 * The same in free run, with the drive tripped.
 *
 * Unit: s, ms or min, written behind the number.
 *
 * If wrong: the tool is swapped, or a hand is in the machine, while the spindle turns.
 */
export type TimeToCoastDown = string;
/**
 * Whether the spindle must be oriented before a swap.
 *
 * If wrong: the drive keys of the tool strike the rack.
 */
export type OrientationBeforeASwap = "yes" | "no";
/**
 * The drive reports that the spindle is at its speed: the number of its input where it is on in that state, or a mapping.
 *
 * Unit: number of the input.
 *
 * If wrong: the tool cuts before the spindle is up to speed.
 */
export type AtSpeed = number | Signal;
/**
 * Number of the input as the wait says it.
 *
 * Unit: number of the input.
 *
 * If wrong: the program waits on something else.
 */
export type Input = number;
/**
 * Level of the input in that state; on unless stated.
 *
 * If wrong: the wait is over at once, whatever the machine does.
 */
export type Level = "on" | "off";
/**
 * How long the contact may still show the old state after a command: a dwell before the wait. None unless stated.
 *
 * Unit: s, ms or min, written behind the number.
 *
 * If wrong: the wait sees the old state and is over at once.
 */
export type SettlingTime = string;
/**
 * The drive or a sensor reports standstill: the number of its input where it is on in that state, or a mapping.
 *
 * Unit: number of the input.
 *
 * If wrong: the tool is swapped while the spindle turns.
 */
export type Stopped = number | Signal;
/**
 * The drawbar is open: the number of its input where it is on in that state, or a mapping.
 *
 * Unit: number of the input.
 *
 * If wrong: the holder is torn out of its pocket.
 */
export type Released = number | Signal;
/**
 * The drawbar is closed with a tool in it: the number of its input where it is on in that state, or a mapping.
 *
 * Unit: number of the input.
 *
 * If wrong: the spindle starts with a loose tool.
 */
export type Clamped = number | Signal;
/**
 * A tool is in the spindle: the number of its input where it is on in that state, or a mapping.
 *
 * Unit: number of the input.
 *
 * If wrong: the program goes on without a tool.
 */
export type ToolPresent = number | Signal;
/**
 * There is enough air to work the drawbar: the number of its input where it is on in that state, or a mapping.
 *
 * Unit: number of the input.
 *
 * If wrong: the drawbar opens halfway and the tool drops.
 */
export type AirPressure = number | Signal;
/**
 * Vacuum or clamps hold the work: the number of its input where it is on in that state, or a mapping.
 *
 * Unit: number of the input.
 *
 * If wrong: the work comes loose in the cut.
 */
export type HoldDown = number | Signal;
/**
 * alarm: the program stops; continues: it goes on as if the signal had come, so that such a wait confirms nothing.
 *
 * If wrong: a fault of the spindle or the air goes unseen and the program runs on.
 */
export type OnTimeout = "alarm" | "continues";
/**
 * controller: the controller changes tools by itself; rack: the program drives to the pockets and works the drawbar; operator: the program stops and asks for the tool; none: one tool a program, which is in the spindle before it starts.
 *
 * If wrong: the program waits for a change that never comes, or drives to a rack that is not there.
 */
export type SwapStyle = "controller" | "rack" | "operator" | "none";
/**
 * unchanged: the axes end where they were; unknown: they may be anywhere, so that the program states them anew; swap-height: Z ends at the swap height.
 *
 * If wrong: the next approach starts from a place that nobody knows.
 */
export type EffectOnThePosition1 = "unchanged" | "unknown" | "swap-height";
/**
 * unchanged; stopped; restarts: the control starts the spindle again behind the change, at a speed that nobody knows, so that the program stops it at once and confirms that.
 *
 * If wrong: the spindle is thought to stand while it turns.
 */
export type EffectOnTheSpindle1 = "unchanged" | "stopped" | "restarts";
/**
 * unchanged, or off.
 *
 * If wrong: coolant is missing, or runs into the taper.
 */
export type EffectOnCoolant1 = "unchanged" | "off";
/**
 * unchanged; active: the length of the new tool acts; cancelled: none acts.
 *
 * If wrong: the tool is driven into the work by its length.
 */
export type EffectOnTheLengthOffset1 = "unchanged" | "active" | "cancelled";
/**
 * unchanged: the axes end where they were; unknown: they may be anywhere, so that the program states them anew; swap-height: Z ends at the swap height.
 *
 * If wrong: the next approach starts from a place that nobody knows.
 */
export type EffectOnThePosition2 = "unchanged" | "unknown" | "swap-height";
/**
 * unchanged, or stopped.
 *
 * If wrong: the spindle is thought to stand while it turns.
 */
export type EffectOnTheSpindle2 = "unchanged" | "stopped";
/**
 * unchanged, or off.
 *
 * If wrong: coolant is missing, or runs into the taper.
 */
export type EffectOnCoolant2 = "unchanged" | "off";
/**
 * unchanged; active: the length of the new tool acts; cancelled: none acts.
 *
 * If wrong: the tool is driven into the work by its length.
 */
export type EffectOnTheLengthOffset2 = "unchanged" | "active" | "cancelled";
/**
 * machine-move: a rapid in machine coordinates; reference-return: the return to the reference position; clearance: the clearance of the job (operator swaps only).
 *
 * If wrong: the tool is dragged across the work, or driven past the travel.
 */
export type RetractBy = "machine-move" | "reference-return" | "clearance";
/**
 * a length: a number in mm, or a text such as 2 in
 */
export type SwapHeight = number | string;
/**
 * spindle-nose: machine coordinates are those of the spindle; tool-tip: an active length offset counts, too.
 *
 * If wrong: Z stands lower by the tool's length than meant.
 */
export type WhatItMoves = "spindle-nose" | "tool-tip";
/**
 * Whether the length offset must be cancelled before it.
 *
 * If wrong: the controller alarms, or the tool runs past the travel by its length.
 */
export type CancelTheLengthOffsetFirst = "yes" | "no";
/**
 * incremental-zero: a reference return has an intermediate point, given as zero increments; none: it has none.
 *
 * If wrong: the intermediate point is taken for a target: a diagonal through the work.
 */
export type IntermediatePoint = "none" | "incremental-zero";
/**
 * Where the operator changes tools, with retract by clearance; work coordinates.
 *
 * Unit: mm, or with `in`.
 *
 * If wrong: the operator reaches between tool and work to change it.
 *
 * @minItems 3
 * @maxItems 3
 */
export type ChangePosition = [Length, Length, Length];
/**
 * with-first-z: in the block of the first Z motion; own-block: in a block of its own before it; in-tool-word: with the tool word; none: there is no length offset, the operator sets Z.
 *
 * If wrong: the tool is driven into the work by its length.
 */
export type Form = "with-first-z" | "own-block" | "in-tool-word" | "none";
/**
 * Whether selecting it moves the axis by itself.
 *
 * If wrong: Z moves where nobody meant it to.
 */
export type SelectingMovesZ = "yes" | "no";
/**
 * Whether cancelling it moves the axis by itself. It is then cancelled at swap height only.
 *
 * If wrong: Z moves down by the tool's length.
 */
export type CancellingMovesZ = "yes" | "no";
/**
 * Where they come from: table, the controller's tool table; measured, a measurement after each swap; operator, set by hand.
 *
 * If wrong: the tool is driven into the work by the difference.
 */
export type ToolLengths = "table" | "measured" | "operator";
/**
 * How the drawbar is worked at a rack, or none.
 */
export type Drawbar =
  | None16
  | {
      travels?: TravelOfAnEmptySpindle;
      "taper-air"?: TaperAir;
    };
/**
 * There is no drawbar that the program works.
 */
export type None16 = "none";
/**
 * Whether an empty spindle travels along the rack clamped or released.
 *
 * If wrong: the released drawbar strikes a holder, or the clamped one is pressed onto it.
 */
export type TravelOfAnEmptySpindle = "clamped" | "released";
/**
 * Whether air cleans the taper while a tool is picked.
 *
 * If wrong: a chip between taper and holder: the tool runs out.
 */
export type TaperAir = "yes" | "no";
/**
 * Where tools wait and how they are fetched, or none.
 */
export type Rack =
  | None17
  | {
      style?: StyleOfTheRack;
      "clear-z"?: ClearHeight;
      "pocket-z"?: PocketHeight;
      "descend-from"?: StartOfTheSlowDescent;
      "descend-feed"?: FeedOfTheSlowDescent;
      pockets?: Pockets;
      zone?: RackZone;
      slide?: Slide;
      widest?: WidestTool;
      longest?: LongestTool;
      cover?: Cover;
      "at-end"?: AtTheEnd;
    };
/**
 * There is no rack that the program drives to.
 */
export type None17 = "none";
/**
 * drop-in: the holder is let down into its pocket from above; slide-in: it is slid into a fork from the side.
 *
 * If wrong: the spindle is driven into the rack.
 */
export type StyleOfTheRack = "drop-in" | "slide-in";
/**
 * a length: a number in mm, or a text such as 2 in
 */
export type ClearHeight = number | string;
/**
 * a length: a number in mm, or a text such as 2 in
 */
export type PocketHeight = number | string;
/**
 * a length: a number in mm, or a text such as 2 in
 */
export type StartOfTheSlowDescent = number | string;
/**
 * a feed: a number in mm/min, or a text such as 20 in/min
 */
export type FeedOfTheSlowDescent = number | string;
/**
 * Places of the pockets, machine coordinates: the first one, the pitch to the next and their number, or a list of places.
 *
 * If wrong: the spindle is driven beside the pocket.
 */
export type Pockets =
  | {
      first?: FirstPocket;
      pitch?: Pitch;
      count?: NumberOfPockets;
    }
  | [Point, ...Point[]];
/**
 * X and Y of pocket 1.
 *
 * Unit: mm, or with `in`.
 *
 * If wrong: the spindle is driven beside the pocket.
 *
 * @minItems 2
 * @maxItems 2
 */
export type FirstPocket = [Length, Length];
/**
 * X and Y from one pocket to the next.
 *
 * Unit: mm, or with `in`.
 *
 * If wrong: the spindle is driven beside the pocket, farther with each one.
 *
 * @minItems 2
 * @maxItems 2
 */
export type Pitch = [Length, Length];
/**
 * How many there are.
 *
 * Unit: pockets.
 *
 * If wrong: the spindle is driven past the end of the rack.
 */
export type NumberOfPockets = number;
/**
 * a list of two lengths, X and Y
 *
 * @minItems 2
 * @maxItems 2
 *
 * This interface was referenced by `DialectSchema`'s JSON-Schema
 * via the `definition` "point".
 */
export type Point = [Length, Length];
/**
 * Least X, Y and Z of the rack, machine coordinates.
 *
 * Unit: mm, or with `in`.
 *
 * If wrong: the tool is driven into it.
 *
 * @minItems 3
 * @maxItems 3
 */
export type LeastCorner = [Length, Length, Length];
/**
 * Greatest X, Y and Z of the rack, machine coordinates.
 *
 * Unit: mm, or with `in`.
 *
 * If wrong: the tool is driven into it.
 *
 * @minItems 3
 * @maxItems 3
 */
export type GreatestCorner = [Length, Length, Length];
/**
 * Direction from the approach into the pocket.
 *
 * If wrong: the holder is torn out of the fork.
 */
export type DirectionOfTheSlide = "+x" | "-x" | "+y" | "-y";
/**
 * a length: a number in mm, or a text such as 2 in
 */
export type LengthOfTheSlide = number | string;
/**
 * a feed: a number in mm/min, or a text such as 20 in/min
 */
export type FeedOfTheSlide = number | string;
/**
 * Widest tool that a pocket takes, or none: not checked.
 *
 * Unit: mm, or with `in`.
 *
 * If wrong: a wide tool strikes its neighbour.
 */
export type WidestTool = number | string;
/**
 * Longest tool that a pocket takes, or none: not checked.
 *
 * Unit: mm, or with `in`.
 *
 * If wrong: a long tool strikes the table under the rack.
 */
export type LongestTool = number | string;
/**
 * Whether the program opens and closes a cover.
 *
 * If wrong: the spindle is driven into the cover.
 */
export type Cover = "yes" | "no";
/**
 * return: it goes back to its pocket; keep: it stays in the spindle.
 *
 * If wrong: the next program finds a tool where it expects none.
 */
export type LastTool = "return" | "keep";
/**
 * a list of two lengths, X and Y
 *
 * @minItems 2
 * @maxItems 2
 */
export type ParkingPlace = [Length, Length];
/**
 * Number as the idiom says it.
 *
 * Unit: number of the output.
 *
 * If wrong: another output is switched.
 */
export type NumberOfTheOutput = number;
/**
 * cutting: from the spindle's start to its stop; program: from the first swap to the end.
 *
 * If wrong: the extraction is off while dust is made, or on during the swap.
 */
export type WhenItIsOn = "cutting" | "program";
/**
 * Whether the program lifts and lowers a dust hood.
 *
 * If wrong: the hood is driven into the rack or the clamps.
 */
export type DustHood = "yes" | "no";
/**
 * Findings name it.
 *
 * If wrong: nobody knows what the finding means.
 */
export type WhatStandsThere = string;
/**
 * Least X, Y and Z of what stands there, machine coordinates.
 *
 * Unit: mm, or with `in`.
 *
 * If wrong: the tool is driven into it.
 *
 * @minItems 3
 * @maxItems 3
 */
export type LeastCorner1 = [Length, Length, Length];
/**
 * Greatest X, Y and Z of what stands there, machine coordinates.
 *
 * Unit: mm, or with `in`.
 *
 * If wrong: the tool is driven into it.
 *
 * @minItems 3
 * @maxItems 3
 */
export type GreatestCorner1 = [Length, Length, Length];
/**
 * Boxes in machine coordinates that no motion of the work may enter.
 *
 * Unit: mm, or with `in`.
 *
 * If wrong: the tool is driven into what stands there.
 *
 * @maxItems 50
 */
export type KeepOutBoxes = OneBox[];
/**
 * none: not at all; floating: with a floating holder; synchronised: spindle and feed are locked.
 *
 * If wrong: the tap breaks or strips the thread.
 */
export type KindOfTapping = "none" | "floating" | "synchronised";
/**
 * Time that the spindle needs to reverse, with a floating holder.
 *
 * Unit: s, ms or min, written behind the number.
 *
 * If wrong: the holder runs out of float and the tap breaks.
 */
export type TimeToReverse = string;
/**
 * Whether tapping may be written without its cycle.
 *
 * If wrong: the tap breaks: feed and spindle do not reverse together.
 */
export type TappingLonghand = "yes" | "no";
/**
 * a feed: a number in mm/min, or a text such as 20 in/min
 */
export type LowestFeed = number | string;
/**
 * a feed: a number in mm/min, or a text such as 20 in/min
 */
export type HighestFeed = number | string;
/**
 * a feed: a number in mm/min, or a text such as 20 in/min
 */
export type HighestFeedOfX = number | string;
/**
 * a feed: a number in mm/min, or a text such as 20 in/min
 */
export type HighestFeedOfY = number | string;
/**
 * a feed: a number in mm/min, or a text such as 20 in/min
 */
export type HighestFeedOfZ = number | string;
/**
 * a feed: a number in mm/min, or a text such as 20 in/min
 */
export type RapidRateOfX = number | string;
/**
 * a feed: a number in mm/min, or a text such as 20 in/min
 */
export type RapidRateOfY = number | string;
/**
 * a feed: a number in mm/min, or a text such as 20 in/min
 */
export type RapidRateOfZ = number | string;
/**
 * How fast X changes its speed.
 *
 * Unit: mm/s2, or with `in/s2`.
 *
 * If wrong: the estimated time is wrong.
 */
export type AccelerationOfX = number | string;
/**
 * How fast Y changes its speed.
 *
 * Unit: mm/s2, or with `in/s2`.
 *
 * If wrong: the estimated time is wrong.
 */
export type AccelerationOfY = number | string;
/**
 * How fast Z changes its speed.
 *
 * Unit: mm/s2, or with `in/s2`.
 *
 * If wrong: the estimated time is wrong.
 */
export type AccelerationOfZ = number | string;
/**
 * How far the controller leaves the corner between two blocks to keep its speed, where the program states no path mode or no tolerance, or none: it stops at the end of each block. Times alone are worked out from it.
 *
 * Unit: mm, or with `in`.
 *
 * If wrong: the estimated time is wrong.
 */
export type RoundingOfCorners = number | string;
/**
 * How long the controller's own tool change takes.
 *
 * Unit: s, ms or min.
 *
 * If wrong: the estimated time is wrong.
 */
export type TimeOfTheControllerSOwnToolChange = string;
/**
 * How long the operator takes to change a tool and set its length.
 *
 * Unit: s, ms or min.
 *
 * If wrong: the time that an automatic change saves is wrong.
 */
export type TimeOfAChangeByHand = string;
/**
 * X, Y and Z of its origin in machine coordinates.
 *
 * Unit: mm, or with `in`.
 *
 * If wrong: a program that runs past the travel is passed, or a good one refused.
 *
 * @minItems 3
 * @maxItems 3
 *
 * This interface was referenced by `OriginsOfTheWorkOffsets`'s JSON-Schema definition
 * via the `patternProperty` "^[1-9]$".
 */
export type OriginOfOneWorkOffset = [Length, Length, Length];
/**
 * How it is confirmed that the spindle is at its speed: wait (on a signal), dwell (for a time or by an expression), intrinsic (the controller holds by itself; the reason is stated), or the word operator.
 *
 * If wrong: the tool cuts before the spindle is up to speed.
 */
export type SpindleAtSpeed = ByTheOperator | Confirmation;
/**
 * The program stops and asks the operator to see to it.
 */
export type ByTheOperator = "operator";
/**
 * The signal, one of those under machine.signals.
 *
 * If wrong: the program waits on something else.
 */
export type WaitOnASignal1 =
  "at-speed" | "stopped" | "released" | "clamped" | "tool-present" | "air" | "hold-down";
/**
 * How long the wait lasts before the controller alarms.
 *
 * Unit: s, ms or min, written behind the number.
 *
 * If wrong: the program hangs, or alarms before the state can be reached.
 */
export type Timeout = string;
/**
 * A time such as 5 s, or an expression that gives one: numbers, + - * / ( ), min, max, the constants second, minute, mm, inch, rev, and the names rpm, from_rpm, min_rpm, max_rpm, spin_up, spin_down, coast_down.
 *
 * Unit: s, ms or min behind a number; an expression has units of its own.
 *
 * If wrong: the state is taken as reached before it is.
 */
export type Dwell2 = string;
/**
 * The controller holds the program until the state is reached; here stands how that is known.
 *
 * If wrong: the state is taken as reached before it is.
 */
export type ByTheControllerItself = string;
/**
 * How it is confirmed that the spindle stands: wait (on a signal), dwell (for a time or by an expression), intrinsic (the controller holds by itself; the reason is stated), or the word operator.
 *
 * If wrong: the tool is swapped, or a hand is in the machine, while the spindle turns.
 */
export type SpindleStopped = ByTheOperator1 | Confirmation;
/**
 * The program stops and asks the operator to see to it.
 */
export type ByTheOperator1 = "operator";
/**
 * How it is confirmed that the drawbar is open: wait (on a signal), dwell (for a time or by an expression), intrinsic (the controller holds by itself; the reason is stated), or the word operator.
 *
 * If wrong: the holder is torn out of its pocket.
 */
export type ToolReleased = ByTheOperator2 | Confirmation;
/**
 * The program stops and asks the operator to see to it.
 */
export type ByTheOperator2 = "operator";
/**
 * How it is confirmed that the drawbar is closed with a tool in it: wait (on a signal), dwell (for a time or by an expression), intrinsic (the controller holds by itself; the reason is stated), or the word operator.
 *
 * If wrong: the spindle starts with a loose tool.
 */
export type ToolClamped = ByTheOperator3 | Confirmation;
/**
 * The program stops and asks the operator to see to it.
 */
export type ByTheOperator3 = "operator";
/**
 * How it is confirmed that there is air to work the drawbar: wait (on a signal), dwell (for a time or by an expression), intrinsic (the controller holds by itself; the reason is stated), or the word operator.
 *
 * If wrong: the drawbar opens halfway and the tool drops.
 */
export type AirPressure1 = ByTheOperator4 | Confirmation;
/**
 * The program stops and asks the operator to see to it.
 */
export type ByTheOperator4 = "operator";
/**
 * The signal of the hold-down.
 *
 * If wrong: the program waits on something else.
 */
export type WaitOnItsSignal = "hold-down";
/**
 * How long the wait lasts before the controller alarms.
 *
 * Unit: s, ms or min, written behind the number.
 *
 * If wrong: the program alarms before the vacuum stands.
 */
export type TimeoutOfTheHoldDown = string;
/**
 * yes or no
 *
 * This interface was referenced by `DialectSchema`'s JSON-Schema
 * via the `definition` "yesNo".
 */
export type YesNo = "yes" | "no";
/**
 * a code such as G54 or M6
 *
 * This interface was referenced by `DialectSchema`'s JSON-Schema
 * via the `definition` "code".
 */
export type Code = string;
/**
 * a code such as G54 or M6, or none
 *
 * This interface was referenced by `DialectSchema`'s JSON-Schema
 * via the `definition` "codeOrNone".
 */
export type CodeOrNone = string;
/**
 * a code such as M1, one behind a block delete mark such as /M0 or /2 M0, or none
 *
 * This interface was referenced by `DialectSchema`'s JSON-Schema
 * via the `definition` "optionalStop".
 */
export type OptionalStop1 = string;
/**
 * one of X Y Z A B C U V W
 *
 * This interface was referenced by `DialectSchema`'s JSON-Schema
 * via the `definition` "axisLetter".
 */
export type AxisLetter = "X" | "Y" | "Z" | "A" | "B" | "C" | "U" | "V" | "W";
/**
 * one capital letter, or none
 *
 * This interface was referenced by `DialectSchema`'s JSON-Schema
 * via the `definition` "letterOrNone".
 */
export type LetterOrNone = string;
/**
 * a length (a number in mm, or a text such as 2 in), or none
 *
 * This interface was referenced by `DialectSchema`'s JSON-Schema
 * via the `definition` "lengthOrNone".
 */
export type LengthOrNone = number | string;
/**
 * an acceleration: a number in mm/s2, or a text such as 20 in/s2
 *
 * This interface was referenced by `DialectSchema`'s JSON-Schema
 * via the `definition` "acceleration".
 */
export type Acceleration = number | string;
/**
 * a time such as 6 s, 500 ms or 2 min
 *
 * This interface was referenced by `DialectSchema`'s JSON-Schema
 * via the `definition` "time".
 */
export type Time = string;
/**
 * a list of three lengths, X, Y and Z
 *
 * @minItems 3
 * @maxItems 3
 *
 * This interface was referenced by `DialectSchema`'s JSON-Schema
 * via the `definition` "place".
 */
export type Place = [Length, Length, Length];
/**
 * none, or words such as M94 P{{signal}}
 *
 * This interface was referenced by `DialectSchema`'s JSON-Schema
 * via the `definition` "template".
 */
export type Template = string;
/**
 * Whether a positive number with a direction (axes, arc centres) has a + sign.
 *
 * If wrong: the word is a syntax error, or an old control takes it as unsigned.
 *
 * This interface was referenced by `DialectSchema`'s JSON-Schema
 * via the `definition` "own-plus".
 */
export type PlusSign2 = "yes" | "no";

/**
 * What one controller and its machine want. A file states only what differs from the one that it extends; a key that no file of the chain states is never guessed: what needs it is refused.
 */
export interface DialectSchema {
  dialect: NameOfTheDialect;
  title?: Title;
  extends?: Extends;
  sources?: Sources;
  cases?: Cases;
  unanswered?: Unanswered;
  file?: File;
  comments?: Comments;
  blocks?: Blocks;
  variables?: VariablesAndSubprograms;
  numbers?: Numbers;
  modal?: ModalWords;
  axes?: LettersOfTheAxes;
  motion?: StraightMotion;
  units?: Units;
  plane?: Planes;
  distance?: AbsoluteAndIncremental;
  arc?: Arcs;
  path?: PathModes;
  feed?: FeedModes;
  dwell?: Dwell1;
  compensation?: CutterRadiusCompensation;
  "length-offset"?: ToolLengthOffset;
  "work-offset"?: WorkOffsets;
  "machine-move"?: MoveInMachineCoordinates;
  "reference-return"?: ReturnToTheReferencePosition;
  cancel?: Cancelling;
  cycles?: FixedCycles;
  spindle?: Spindle;
  coolant?: Coolant;
  tools?: Tools;
  stops?: StopsAndEnd;
  wait?: ValuesOfAWait;
  codes?: CodesOfTheBuilder;
  idioms?: Idioms;
  machine?: Machine;
  confirm?: Confirmations;
}
/**
 * One case: steps, and the blocks that are expected for them.
 */
export interface Case {
  name?: NameOfTheCase;
  units?: UnitsOfTheCase;
  given: Given;
  expect: Expected;
}
/**
 * The frame of the program text: file name ending, line ends, the marks at its start and end.
 */
export interface File {
  extension?: FileNameEnding;
  "line-end"?: LineEnd;
  "last-line-end"?: LineEndAfterTheLastLine;
  "end-of-block"?: EndOfBlockMark;
  delimiter?: ProgramDelimiter;
  "program-number"?: ProgramNumber;
  "byte-order-mark"?: ByteOrderMark;
  leader?: Leader;
  "blank-lines"?: BlankLines;
  characters?: Characters;
}
/**
 * How text for people is set apart from the code.
 */
export interface Comments {
  style?: CommentStyle;
  longest?: LongestComment;
  place?: PlaceOfComments;
}
/**
 * How words make up a block and blocks follow one another.
 */
export interface Blocks {
  number?: BlockNumbers;
  separator?: Separator;
  order?: WordOrder;
  longest?: LongestBlock;
  "g-words"?: GWordsInABlock;
  "m-words"?: MWordsInABlock;
  modes?: ModesInABlock;
  sections?: Sections;
  delete?: BlockDelete;
  "most-words"?: WordsInABlock;
  "stops-act"?: WhenStopsAct;
  executes?: OrderOfExecution;
}
/**
 * The parts of a program at which it can be taken up again: what begins one, and how its first block is marked.
 */
export interface Sections {
  "begin-at"?: BeginningOfASection;
  mark?: MarkOfASection;
  comments?: CommentOfASection;
  modes?: ModesOfASection;
}
/**
 * Marks by which the operator's switch skips a block. Programs are written with one only where `stops.optional` asks for it; in programs that are read they are understood.
 */
export interface BlockDelete {
  mark?: BlockDeleteMark;
  place?: PlaceOfTheBlockDeleteMark;
}
/**
 * What the controller works out while it reads a program. Programs that are posted never have any of it; a program from elsewhere is read with the values and in the order of blocks that follow from it.
 */
export interface VariablesAndSubprograms {
  parameters?: ParametersAndArithmetic;
  control?: SubprogramsAndBranches;
  nesting?: DepthOfCalls;
}
/**
 * How numbers are written. `point`, `trailing-zeros`, `leading-zero`, `plus`, `suppressed-zeros`, `digits` and `whole-digits` hold for all; a single address may state its own.
 */
export interface Numbers {
  point?: DecimalPoint;
  "trailing-zeros"?: ZerosAtTheEnd;
  "leading-zero"?: ZeroBeforeThePoint;
  plus?: PlusSign;
  "suppressed-zeros"?: ZerosLeftOut;
  digits?: DigitsOfANumber;
  "whole-digits"?: DigitsBeforeThePoint;
  length?: AxisWords;
  "arc-centre"?: ArcCentreAndRadiusWords;
  peck?: PeckWords;
  angle?: RotaryWords;
  "feed-per-minute"?: FeedPerMinute;
  "feed-per-revolution"?: FeedPerRevolution;
  "inverse-time"?: InverseTimeFeed;
  speed?: SpindleSpeed;
  dwell?: Dwell;
  "cycle-dwell"?: DwellInACycle;
  timeout?: TimeoutOfAWait;
  "code-width"?: LeastDigitsOfCodes;
}
/**
 * Numbers of X Y Z, and of the levels and pecks of cycles. Digits behind the point, by the units of the program; the mapping may also state how this number differs from the rest.
 */
export interface AxisWords {
  mm?: DecimalsInMillimetres;
  inch?: DecimalsInInches;
  point?: DecimalPoint1;
  "trailing-zeros"?: ZerosAtTheEnd1;
  "leading-zero"?: ZeroBeforeThePoint1;
  plus?: PlusSign1;
  "suppressed-zeros"?: ZerosLeftOut1;
  digits?: DigitsOfANumber1;
  "whole-digits"?: DigitsBeforeThePoint1;
}
/**
 * Numbers of I J K and of the radius. Digits behind the point, by the units of the program; the mapping may also state how this number differs from the rest.
 */
export interface ArcCentreAndRadiusWords {
  mm?: DecimalsInMillimetres1;
  inch?: DecimalsInInches1;
  point?: DecimalPoint1;
  "trailing-zeros"?: ZerosAtTheEnd1;
  "leading-zero"?: ZeroBeforeThePoint1;
  plus?: PlusSign1;
  "suppressed-zeros"?: ZerosLeftOut1;
  digits?: DigitsOfANumber1;
  "whole-digits"?: DigitsBeforeThePoint1;
}
/**
 * Numbers of the peck of a cycle and of its back-off. Digits behind the point, by the units of the program; the mapping may also state how this number differs from the rest, such as an implied point.
 */
export interface PeckWords {
  mm?: DecimalsInMillimetres2;
  inch?: DecimalsInInches2;
  point?: DecimalPoint1;
  "trailing-zeros"?: ZerosAtTheEnd1;
  "leading-zero"?: ZeroBeforeThePoint1;
  plus?: PlusSign1;
  "suppressed-zeros"?: ZerosLeftOut1;
  digits?: DigitsOfANumber1;
}
/**
 * Numbers of F in feed per minute. Digits behind the point, by the units of the program; the mapping may also state how this number differs from the rest.
 */
export interface FeedPerMinute {
  mm?: DecimalsInMillimetres3;
  inch?: DecimalsInInches3;
  point?: DecimalPoint1;
  "trailing-zeros"?: ZerosAtTheEnd1;
  "leading-zero"?: ZeroBeforeThePoint1;
  plus?: PlusSign1;
  "suppressed-zeros"?: ZerosLeftOut1;
  digits?: DigitsOfANumber1;
  "whole-digits"?: DigitsBeforeThePoint1;
}
/**
 * Numbers of F in feed per revolution. Digits behind the point, by the units of the program; the mapping may also state how this number differs from the rest.
 */
export interface FeedPerRevolution {
  mm?: DecimalsInMillimetres4;
  inch?: DecimalsInInches4;
  point?: DecimalPoint1;
  "trailing-zeros"?: ZerosAtTheEnd1;
  "leading-zero"?: ZeroBeforeThePoint1;
  plus?: PlusSign1;
  "suppressed-zeros"?: ZerosLeftOut1;
  digits?: DigitsOfANumber1;
  "whole-digits"?: DigitsBeforeThePoint1;
}
/**
 * Least digits of codes and of tool and offset numbers; zeros are put in front: 2 writes G00, M06, T01.
 */
export interface LeastDigitsOfCodes {
  G?: DigitsOfGWords;
  M?: DigitsOfMWords;
  T?: DigitsOfTWords;
  H?: DigitsOfHWords;
  D?: DigitsOfDWords;
}
/**
 * Which words are repeated although they have not changed.
 */
export interface ModalWords {
  motion?: MotionWord;
  axes?: AxisWords1;
  "arc-end"?: EndOfAnArc;
  "arc-centre"?: ZerosInAnArcCentre;
  feed?: FeedWord;
  speed?: SpeedWord;
}
/**
 * The letters by which the controller knows the axes of ISO 841, where Z is the axis of the spindle.
 */
export interface LettersOfTheAxes {
  x?: LetterOfX;
  y?: LetterOfY;
  z?: LetterOfZ;
  a?: LetterOfA;
  b?: LetterOfB;
  c?: LetterOfC;
}
/**
 * Rapid and straight motion.
 */
export interface StraightMotion {
  rapid?: Rapid;
  line?: StraightLineAtFeed;
  rapids?: PathOfARapid;
  "rapid-axes"?: AxesOfARapid;
  "axes-at-once"?: AxesThatMoveAtOnce;
  "rapid-feed"?: RapidAsAFeed;
  "machine-move-lasts"?: HowLongAMoveInMachineCoordinatesLasts;
}
/**
 * Words for the units of the program.
 */
export interface Units {
  mm?: Millimetres;
  inch?: Inches;
  "programs-in"?: UnitsOfPrograms;
  stated?: WhereUnitsAreStated;
}
/**
 * Words that select the plane of arcs, cycles and compensation.
 */
export interface Planes {
  xy?: XYPlane;
  zx?: ZXPlane;
  yz?: YZPlane;
}
/**
 * Words for absolute and incremental coordinates.
 */
export interface AbsoluteAndIncremental {
  absolute?: Absolute;
  incremental?: Incremental;
  "programs-in"?: CoordinatesOfPrograms;
}
/**
 * Circular motion.
 */
export interface Arcs {
  cw?: ArcClockwise;
  ccw?: ArcCounterClockwise;
  form?: FormOfAnArc;
  "centre-words"?: ArcCentreModes;
  "radius-word"?: RadiusWord;
  planes?: PlanesWithArcs;
  "largest-sweep"?: LargestSweep;
  quadrants?: ArcsAndQuadrantLines;
  "full-circle"?: FullCircle;
  helix?: Helix;
  "turns-word"?: TurnsWord;
  "feed-along"?: FeedOnAHelix;
  "smallest-radius"?: SmallestRadius;
  "largest-radius"?: LargestRadius;
  tolerance?: RadiusTolerance;
  "chord-tolerance"?: ChordTolerance;
}
/**
 * Words that choose absolute or incremental arc centres, where the controller has them.
 */
export interface ArcCentreModes {
  absolute?: AbsoluteArcCentres;
  incremental?: IncrementalArcCentres;
}
/**
 * How far the radius at the start and at the end of an arc may differ before the controller alarms.
 */
export interface RadiusTolerance {
  mm?: ToleranceInMillimetres;
  inch?: ToleranceInInches;
  relative?: RelativeTolerance;
}
/**
 * Words for how corners are taken.
 */
export interface PathModes {
  exact?: ExactPath;
  stop?: ExactStop;
  blend?: ContinuousPath;
  "tolerance-word"?: ToleranceWord;
  "look-ahead"?: LookAhead;
}
/**
 * Words for what F means.
 */
export interface FeedModes {
  "per-minute"?: FeedPerMinute1;
  "per-revolution"?: FeedPerRevolution1;
  "inverse-time"?: InverseTime;
  "inverse-time-unit"?: UnitOfInverseTime;
}
/**
 * A pause of a set time.
 */
export interface Dwell1 {
  code?: DwellCode;
  word?: DwellWord;
  unit?: DwellUnit;
  blocks?: BlockOfADwell;
}
/**
 * Words that put an end to what an earlier program may have left in force.
 */
export interface Cancelling {
  cycles?: CyclesOff;
  "local-shift"?: LocalShiftOff;
  rotation?: RotationOff;
  scale?: ScaleOff;
  overrides?: OverridesOn;
  "before-change"?: CancellingBeforeAToolChange;
}
/**
 * Words that choose the level to which the tool goes between holes.
 */
export interface LevelBetweenHoles {
  initial?: InitialLevel;
  retract?: RetractLevel;
  without?: LevelWithoutAWord;
}
/**
 * How far the controller's own cycle backs off. A job that asks for another back-off is written longhand.
 */
export interface BackOff {
  peck?: BackOffOfPecks;
  "chip-break"?: BackOffOfChipBreaking;
}
/**
 * Letters of the values of a cycle.
 */
export interface WordsOfACycle {
  retract?: RetractLevelWord;
  peck?: PeckWord;
  "back-off"?: BackOffWord;
  dwell?: DwellWord1;
  "dwell-unit"?: UnitOfTheDwell;
  repeat?: RepeatWord;
}
/**
 * Words for the spindle.
 */
export interface Spindle {
  cw?: SpindleClockwise;
  ccw?: SpindleCounterClockwise;
  stop?: SpindleStop;
  orient?: SpindleOrientation;
  order?: OrderOfSpeedAndStart;
  blocks?: SpeedAndStartInABlock;
  "speed-unit"?: UnitOfTheSpeedWord;
  "full-speed"?: SpeedAt100Percent;
  gears?: GearRanges;
}
/**
 * One range and its code.
 */
export interface GearRange {
  code?: CodeOfTheRange;
  from?: LowestSpeedOfTheRange;
  to?: HighestSpeedOfTheRange;
}
/**
 * Words for coolant and air.
 */
export interface Coolant {
  mist?: Mist;
  flood?: Flood;
  air?: Air;
  "through-tool"?: CoolantThroughTheTool;
  off?: AllOff;
  blocks?: CoolantWordsInABlock;
}
/**
 * Words for selecting and changing tools.
 */
export interface Tools {
  change?: ToolChange;
  blocks?: SelectionAndChangeInABlock;
  order?: OrderOfSelectionAndChange;
  preselect?: Preselection;
  "in-operator-swap"?: ToolWordInASwapByTheOperator;
  empty?: ToolWordOfAnEmptySpindle;
}
/**
 * Words that stop and end the program.
 */
export interface StopsAndEnd {
  stop?: ProgramStop;
  optional?: OptionalStop;
  end?: EndOfProgram;
  comment?: MessageOfAStop;
  resume?: ModesBehindAStop;
  "end-resets"?: ModesAtTheEnd;
}
/**
 * Numbers that a wait on a signal says.
 */
export interface ValuesOfAWait {
  on?: LevelOn;
  off?: LevelOff;
  "timeout-unit"?: UnitOfTheTimeout;
}
/**
 * What further codes do that a program from elsewhere may hold: what they are for, and their effects. They are read, not written.
 */
export interface CodesOfTheBuilder {
  [k: string]: OneCode;
}
/**
 * A code with no meaning of its own in the standards, and what it leaves behind.
 *
 * This interface was referenced by `CodesOfTheBuilder`'s JSON-Schema definition
 * via the `patternProperty` "^[GM]\d{1,3}$".
 */
export interface OneCode {
  does?: WhatItDoes;
  position?: EffectOnThePosition;
  spindle?: EffectOnTheSpindle;
  coolant?: EffectOnCoolant;
  "length-offset"?: EffectOnTheLengthOffset;
}
/**
 * How this controller says one action: literal words and {{name}} for the whole number of a word. One code each; beside it may stand P Q R L E I J K.
 */
export interface Idioms {
  message?: MessageToTheOperator;
  header?: HeaderLines;
  footer?: FooterLines;
  "wait-signal"?: WaitOnASignal;
  "output-on"?: OutputOn;
  "output-off"?: OutputOff;
  release?: ReleaseTheTool;
  clamp?: ClampTheTool;
  "taper-air-on"?: TaperAirOn;
  "taper-air-off"?: TaperAirOff;
  "cover-open"?: OpenTheRackSCover;
  "cover-close"?: CloseTheRackSCover;
  "hood-up"?: DustHoodUp;
  "hood-down"?: DustHoodDown;
  measure?: MeasureTheTool;
}
/**
 * Facts of this machine, in its own leaf. A key is needed when a job needs it.
 */
export interface Machine {
  travel?: Travel;
  spindle?: SpindleOfTheMachine;
  signals?: Signals;
  waits?: Waits;
  swap?: SwapStyle;
  "change-effects"?: EffectsOfTheToolChange;
  "measure-effects"?: EffectsOfMeasuring;
  retract?: RetractToSwapHeight;
  "length-offset"?: LengthOffsetAtTheMachine;
  lengths?: ToolLengths;
  drawbar?: Drawbar;
  rack?: Rack;
  park?: ParkingPlace;
  outputs?: Outputs;
  hood?: DustHood;
  "keep-out"?: KeepOutBoxes;
  tapping?: Tapping;
  feed?: FeedLimits;
  "axis-feed"?: HighestFeedOfEachAxis;
  "rapid-rate"?: RapidRates;
  acceleration?: AccelerationOfTheAxes;
  blending?: RoundingOfCorners;
  "swap-time"?: TimesOfASwap;
  "work-zero"?: OriginsOfTheWorkOffsets;
}
/**
 * Where each axis can go, machine coordinates. Rotary axes are allowed only where they stand here.
 */
export interface Travel {
  x?: TravelOfX;
  y?: TravelOfY;
  z?: TravelOfZ;
  a?: TravelOfA;
  b?: TravelOfB;
  c?: TravelOfC;
}
/**
 * What the spindle and its drive can do.
 */
export interface SpindleOfTheMachine {
  "min-rpm"?: LowestSpeed;
  "max-rpm"?: HighestSpeed;
  "spin-up"?: TimeToComeUpToSpeed;
  "spin-down"?: TimeToStop;
  "coast-down"?: TimeToCoastDown;
  orient?: OrientationBeforeASwap;
}
/**
 * Inputs that the program can wait on.
 */
export interface Signals {
  "at-speed"?: AtSpeed;
  stopped?: Stopped;
  released?: Released;
  clamped?: Clamped;
  "tool-present"?: ToolPresent;
  air?: AirPressure;
  "hold-down"?: HoldDown;
}
/**
 * a mapping with the keys input, level and settle
 *
 * This interface was referenced by `DialectSchema`'s JSON-Schema
 * via the `definition` "signal".
 */
export interface Signal {
  input?: Input;
  level?: Level;
  settle?: SettlingTime;
}
/**
 * What a wait does when its time is up.
 */
export interface Waits {
  "on-timeout"?: OnTimeout;
}
/**
 * What the controller's own tool change does besides changing the tool. Needed where `swap` is controller.
 */
export interface EffectsOfTheToolChange {
  position?: EffectOnThePosition1;
  spindle?: EffectOnTheSpindle1;
  coolant?: EffectOnCoolant1;
  "length-offset"?: EffectOnTheLengthOffset1;
}
/**
 * What the controller's measurement of a tool does. Needed where `lengths` is measured.
 */
export interface EffectsOfMeasuring {
  position?: EffectOnThePosition2;
  spindle?: EffectOnTheSpindle2;
  coolant?: EffectOnCoolant2;
  "length-offset"?: EffectOnTheLengthOffset2;
}
/**
 * How Z goes up to the swap height.
 */
export interface RetractToSwapHeight {
  by?: RetractBy;
  z?: SwapHeight;
  "acts-on"?: WhatItMoves;
  "cancel-length-first"?: CancelTheLengthOffsetFirst;
  intermediate?: IntermediatePoint;
  "change-position"?: ChangePosition;
}
/**
 * How the tool's length comes to act.
 */
export interface LengthOffsetAtTheMachine {
  form?: Form;
  "select-moves"?: SelectingMovesZ;
  "cancel-moves"?: CancellingMovesZ;
}
/**
 * Box that only swaps enter.
 */
export interface RackZone {
  min?: LeastCorner;
  max?: GreatestCorner;
}
/**
 * The way into a fork, with slide-in.
 */
export interface Slide {
  direction?: DirectionOfTheSlide;
  distance?: LengthOfTheSlide;
  feed?: FeedOfTheSlide;
}
/**
 * What becomes of the last tool.
 */
export interface AtTheEnd {
  tool?: LastTool;
}
/**
 * Outputs that the program switches, by a name of yours.
 */
export interface Outputs {
  [k: string]: OneOutput;
}
/**
 * An output and when it is on.
 *
 * This interface was referenced by `Outputs`'s JSON-Schema definition
 * via the `patternProperty` "^[a-z][a-z0-9-]{0,30}$".
 */
export interface OneOutput {
  number?: NumberOfTheOutput;
  during?: WhenItIsOn;
}
/**
 * A box and what stands there.
 */
export interface OneBox {
  name: WhatStandsThere;
  min: LeastCorner1;
  max: GreatestCorner1;
}
/**
 * How the machine taps.
 */
export interface Tapping {
  kind?: KindOfTapping;
  reversal?: TimeToReverse;
  longhand?: TappingLonghand;
}
/**
 * Lowest and highest feed; without them feeds are not checked against the machine.
 */
export interface FeedLimits {
  least?: LowestFeed;
  most?: HighestFeed;
}
/**
 * How fast an axis may go in a cutting motion; a plunge is often slower than a cut. An axis that is left out is not checked.
 */
export interface HighestFeedOfEachAxis {
  x?: HighestFeedOfX;
  y?: HighestFeedOfY;
  z?: HighestFeedOfZ;
}
/**
 * How fast each axis goes in a rapid. Times alone are worked out from them; without them the time of rapids is not counted.
 */
export interface RapidRates {
  x?: RapidRateOfX;
  y?: RapidRateOfY;
  z?: RapidRateOfZ;
}
/**
 * How fast each axis changes its speed. Times alone are worked out from it; without all three, times are worked out from feeds alone.
 */
export interface AccelerationOfTheAxes {
  x?: AccelerationOfX;
  y?: AccelerationOfY;
  z?: AccelerationOfZ;
}
/**
 * How long tools take to be swapped. Times alone are worked out from them; what is left out is assumed, and the report says so.
 */
export interface TimesOfASwap {
  controller?: TimeOfTheControllerSOwnToolChange;
  operator?: TimeOfAChangeByHand;
}
/**
 * Where the origin of each work offset (1 to 9) lies in machine coordinates, where it is always the same; a set-up file overrides it. With it, travel is checked in full.
 *
 * Unit: mm, or with `in`.
 *
 * If wrong: a program that runs past the travel is passed, or a good one refused.
 */
export interface OriginsOfTheWorkOffsets {
  [k: string]: OriginOfOneWorkOffset;
}
/**
 * How the program makes sure of a state before it relies on it. One that is not stated cannot be relied on: a job that needs it is refused.
 */
export interface Confirmations {
  "at-speed"?: SpindleAtSpeed;
  stopped?: SpindleStopped;
  released?: ToolReleased;
  clamped?: ToolClamped;
  air?: AirPressure1;
  "hold-down"?: WorkHeld;
}
/**
 * a mapping with wait and timeout, with dwell, or with intrinsic
 *
 * This interface was referenced by `DialectSchema`'s JSON-Schema
 * via the `definition` "confirmation".
 */
export interface Confirmation {
  wait?: WaitOnASignal1;
  timeout?: Timeout;
  dwell?: Dwell2;
  intrinsic?: ByTheControllerItself;
}
/**
 * How it is confirmed that vacuum or clamps hold the work: by a wait on the signal `hold-down`, before the first start of the spindle and behind each stop, since hands may then have been at the work.
 *
 * If wrong: the work comes loose in the cut.
 */
export interface WorkHeld {
  wait: WaitOnItsSignal;
  timeout?: TimeoutOfTheHoldDown;
}
