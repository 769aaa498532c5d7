import type { RuleTexts } from "./rule-texts.ts";

/** Reading a program: `block/` is about form and leaves the meaning clear, `read/` is about meaning (6-read). */
export const readRules = {
  "block/case": "A dialect writes the blocks that its cases expect (dialect test).",
  "block/motion-word": "A block that moves states its motion word where the dialect wants it.",
  "block/word-order": "Words stand in the dialect's order.",
  "block/spindle-order": "The spindle's speed and its start stand in the dialect's order.",
  "block/feed-word": "A feed word stands where the dialect wants it.",
  "block/axis-words": "A block names the axes that the dialect wants in it.",
  "block/arc-words": "An arc has the words that the dialect wants in it.",
  "block/cycle-words": "A cycle has the words that the dialect wants in it.",
  "block/tool-words": "Tool words and change codes stand together, apart or ahead as in the dialect.",
  "block/cancelled":
    "Compensation and cycles are cancelled anew before each change where the dialect wants it.",
  "block/offset-number": "A tool has the length offset of its own number where the dialect says so.",
  "block/length-block":
    "A length offset stands in the block of the first Z or in its own, as in the dialect.",
  "block/length": "A block is no longer than the controller takes.",
  "block/number": "Blocks are numbered where the dialect wants it, and nowhere else.",
  "block/number-form": "A number has the zeros, the sign and the point that the dialect writes.",
  "block/separator": "Words are separated as in the dialect.",
  "block/characters": "A text holds only characters that the controller takes.",
  "block/g-words": "A block has no more G words than the controller takes.",
  "block/m-words": "A block has no more M words than the controller takes.",
  "block/own-block":
    "A stop, swap, spindle or coolant action has a block of its own, and so has a comment where the dialect wants it.",
  "block/words": "A block has no more words than the controller takes.",
  "block/section": "The first block of a section, and no other, is marked as the dialect marks it.",
  "block/speed-word": "A start of the spindle says its speed where the dialect wants it.",
  "block/gear-range":
    "A gear range is selected while the spindle stands, before its speed, and the speed lies in it.",
  "block/stop-message": "The message of a stop stands in its block or before it, as the dialect wants it.",
  "block/axes-at-once": "A block moves no more axes than the controller moves at once.",
  "block/framing": "A program begins and ends as the dialect wants it.",
  "read/unknown-code": "A code has a meaning in the dialect.",
  "read/unknown-word": "A letter is an address of the dialect.",
  "read/number": "A number is one that its address can take.",
  "read/decimal":
    "A number has a decimal point, or none, as the dialect says; otherwise it may be off by a thousand.",
  "read/finer-than-grid": "A number is no finer than the controller's least increment.",
  "read/repeated-word": "An address stands once in a block.",
  "read/modal-conflict": "A block has one code of each modal group.",
  "read/mode-unknown": "A mode that decides what a block means has been stated before.",
  "read/position": "A place that a block counts from is known.",
  "read/variable": "A program holds numbers and no variables.",
  "read/subprogram": "A program calls no other program.",
  "read/branch": "A program does not branch or repeat.",
  "read/block-delete":
    "A block with a leading slash is one that runs or not at the operator's choice, so it has no one meaning.",
  "read/comment": "A comment is closed, and not inside another one.",
  "read/unused-word": "Every word of a block is used by some action of it.",
  "read/word-missing": "A code has the words that it needs.",
  "read/arc": "An arc has a centre or a radius that makes one.",
  "read/cycle": "A cycle has levels and values that it can work with.",
  "read/after-end": "Nothing follows the end of a program.",
  "read/no-end": "A program ends with its end code.",
  "read/encoding": "A program is text in the encoding that the dialect says.",
} as const satisfies RuleTexts;
