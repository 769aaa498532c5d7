/* Generated from schemas/dialect.schema.json by `npm run generate`. Do not edit. */

// @ts-nocheck: the body is compiled code; the exports below it are typed by hand.

/** One thing that does not fit the schema. */
export interface SchemaError {
  /** JSON pointer to the value, "" for the whole. */
  readonly instancePath: string;
  /** JSON pointer into the schema, to the keyword that failed. */
  readonly schemaPath: string;
  /** The keyword that failed: "required", "enum", "additionalProperties" ... */
  readonly keyword: string;
  /** What the keyword has to say: { missingProperty }, { allowedValues }, { additionalProperty } ... */
  readonly params: Readonly<Record<string, unknown>>;
  /** The failure in words, in English. */
  readonly message?: string;
}

"use strict";
var compiled = (() => {
  var __defProp = Object.defineProperty;
  var __getOwnPropDesc = Object.getOwnPropertyDescriptor;
  var __getOwnPropNames = Object.getOwnPropertyNames;
  var __hasOwnProp = Object.prototype.hasOwnProperty;
  var __commonJS = (cb, mod) => function __require() {
    try {
      return mod || (0, cb[__getOwnPropNames(cb)[0]])((mod = { exports: {} }).exports, mod), mod.exports;
    } catch (e) {
      throw mod = 0, e;
    }
  };
  var __export = (target, all) => {
    for (var name in all)
      __defProp(target, name, { get: all[name], enumerable: true });
  };
  var __copyProps = (to, from, except, desc) => {
    if (from && typeof from === "object" || typeof from === "function") {
      for (let key of __getOwnPropNames(from))
        if (!__hasOwnProp.call(to, key) && key !== except)
          __defProp(to, key, { get: () => from[key], enumerable: !(desc = __getOwnPropDesc(from, key)) || desc.enumerable });
    }
    return to;
  };
  var __toCommonJS = (mod) => __copyProps(__defProp({}, "__esModule", { value: true }), mod);

  // node_modules/ajv/dist/runtime/ucs2length.js
  var require_ucs2length = __commonJS({
    "node_modules/ajv/dist/runtime/ucs2length.js"(exports) {
      "use strict";
      Object.defineProperty(exports, "__esModule", { value: true });
      function ucs2length(str) {
        const len = str.length;
        let length = 0;
        let pos = 0;
        let value;
        while (pos < len) {
          length++;
          value = str.charCodeAt(pos++);
          if (value >= 55296 && value <= 56319 && pos < len) {
            value = str.charCodeAt(pos);
            if ((value & 64512) === 56320)
              pos++;
          }
        }
        return length;
      }
      exports.default = ucs2length;
      ucs2length.code = 'require("ajv/dist/runtime/ucs2length").default';
    }
  });

  // node_modules/fast-deep-equal/index.js
  var require_fast_deep_equal = __commonJS({
    "node_modules/fast-deep-equal/index.js"(exports, module) {
      "use strict";
      module.exports = function equal(a, b) {
        if (a === b) return true;
        if (a && b && typeof a == "object" && typeof b == "object") {
          if (a.constructor !== b.constructor) return false;
          var length, i, keys;
          if (Array.isArray(a)) {
            length = a.length;
            if (length != b.length) return false;
            for (i = length; i-- !== 0; )
              if (!equal(a[i], b[i])) return false;
            return true;
          }
          if (a.constructor === RegExp) return a.source === b.source && a.flags === b.flags;
          if (a.valueOf !== Object.prototype.valueOf) return a.valueOf() === b.valueOf();
          if (a.toString !== Object.prototype.toString) return a.toString() === b.toString();
          keys = Object.keys(a);
          length = keys.length;
          if (length !== Object.keys(b).length) return false;
          for (i = length; i-- !== 0; )
            if (!Object.prototype.hasOwnProperty.call(b, keys[i])) return false;
          for (i = length; i-- !== 0; ) {
            var key = keys[i];
            if (!equal(a[key], b[key])) return false;
          }
          return true;
        }
        return a !== a && b !== b;
      };
    }
  });

  // node_modules/ajv/dist/runtime/equal.js
  var require_equal = __commonJS({
    "node_modules/ajv/dist/runtime/equal.js"(exports) {
      "use strict";
      Object.defineProperty(exports, "__esModule", { value: true });
      var equal = require_fast_deep_equal();
      equal.code = 'require("ajv/dist/runtime/equal").default';
      exports.default = equal;
    }
  });

  // validator.js
  var validator_exports = {};
  __export(validator_exports, {
    validateDialect: () => validateDialect
  });
  var validateDialect = validate20;
  var schema31 = { "$schema": "https://json-schema.org/draft/2020-12/schema", "$id": "https://tapewright.invalid/schemas/dialect.schema.json", "title": "Dialect", "description": "What one controller and its machine want. A file states only what differs from the one that it extends; a key that no file of the chain states is never guessed: what needs it is refused.", "type": "object", "additionalProperties": false, "required": ["dialect"], "properties": { "dialect": { "title": "Name of the dialect", "description": "The name that programs, set-up sheets and findings quote. Lower case, words joined by hyphens; the file is called NAME.dialect.yaml.\n\nIf wrong: the program on the machine cannot be traced to the file that shaped it.", "type": "string", "pattern": "^[a-z0-9]+(-[a-z0-9]+)*$", "maxLength": 40, "examples": ["quarry-router"] }, "title": { "title": "Title", "description": "One line for people: which controller or machine this is.\n\nIf wrong: an operator picks the dialect of another machine.", "type": "string", "minLength": 1, "maxLength": 120, "examples": ["Six-pocket router at the quarry workshop"] }, "extends": { "title": "Extends", "description": "The dialect whose values hold wherever this file states none: the name of a shipped dialect, or a file in the same folder or below (its name ends with .yaml). Mappings are merged key by key; lists, single values and `none` replace.\n\nIf wrong: words of another controller are inherited that this one rejects or takes for something else.", "type": "string", "minLength": 1, "maxLength": 200, "examples": ["explicit-words", "base/workshop.dialect.yaml"] }, "sources": { "title": "Sources", "description": "Where the facts of this file come from: standard and section, manual and page, or what was tried at the machine.\n\nIf wrong: nobody can tell later which value was read and which was guessed.", "type": "array", "minItems": 1, "maxItems": 40, "items": { "type": "string", "minLength": 1, "maxLength": 300 }, "examples": [["NISTIR 6556, The NIST RS274/NGC Interpreter, version 3, 17 August 2000"]] }, "cases": { "title": "Cases", "description": "Steps, and the blocks that are expected for them; `dialect test` runs them. They are this file's alone: a file that extends it does not inherit them. They may also stand beside it, in NAME.cases.yaml.\n\nIf wrong: `dialect test` fails, or holds the file to blocks that the controller does not want; programs do not change.", "type": "array", "minItems": 1, "maxItems": 500, "items": { "title": "Case", "description": "One case: steps, and the blocks that are expected for them.", "type": "object", "additionalProperties": false, "required": ["given", "expect"], "examples": [{ "given": ["rapid x10 y5"], "expect": ["G00 X10. Y5."] }], "properties": { "name": { "title": "Name of the case", "description": "What the case is about, for reports.\n\nIf wrong: nobody knows which case failed.", "type": "string", "minLength": 1, "maxLength": 80, "examples": ["arcs past half a circle"] }, "units": { "title": "Units of the case", "description": "mm or inch: what the numbers under `given` count, and the units of the program.\n\nIf wrong: the case gives other places than it means, and fails.", "enum": ["mm", "inch"], "examples": ["mm"] }, "given": { "title": "Given", "description": "Steps, one a text, in the notation that this page explains.\n\nIf wrong: the case says nothing about what the controller wants.", "type": "array", "minItems": 1, "maxItems": 200, "items": { "type": "string", "minLength": 1, "maxLength": 400 }, "examples": [["rapid x10 y5", "line z-2 feed 300"]] }, "expect": { "title": "Expected", "description": "The blocks that are to be written, one a text; a blank stands for a tab.\n\nIf wrong: the case fails, or holds the dialect to what the controller does not want.", "type": "array", "maxItems": 500, "items": { "type": "string", "maxLength": 400 }, "examples": [["G00 X10. Y5.", "G01 Z-2. F300."]] } } }, "examples": [[{ "given": ["rapid x10 y5"], "expect": ["G00 X10. Y5."] }]] }, "unanswered": { "title": "Unanswered", "description": "Keys of which nobody who knows the machine has said yet that they are true of it, as `dialect infer` lists them: each is told on every post, until it is taken out of the list. A confirmation that is listed is a wait or a dwell. A file that extends this one inherits the list, or states its own.\n\nIf wrong: a guess passes for a fact of the machine: the tool cuts before the spindle is at its speed.", "type": "array", "maxItems": 100, "uniqueItems": true, "items": { "type": "string", "pattern": "^[a-z0-9-]+(\\.[A-Za-z0-9-]+)*$", "maxLength": 80 }, "examples": [["confirm.at-speed", "confirm.stopped"]] }, "file": { "title": "File", "description": "The frame of the program text: file name ending, line ends, the marks at its start and end.", "type": "object", "additionalProperties": false, "properties": { "extension": { "title": "File name ending", "description": "Ending of the program file, without the dot.\n\nIf wrong: the controller does not list the file, or opens it as something else.", "type": "string", "pattern": "^[A-Za-z0-9]{1,8}$", "examples": ["nc"] }, "line-end": { "title": "Line end", "description": "What ends a line: lf (line feed), crlf (carriage return and line feed) or cr (carriage return).\n\nIf wrong: the whole file is read as one block, or each second line as an empty one.", "type": "string", "enum": ["lf", "crlf", "cr"], "examples": ["lf"] }, "last-line-end": { "title": "Line end after the last line", "description": "Whether the last line is ended, too.\n\nIf wrong: the last block, the end of the program, is ignored.", "$ref": "#/$defs/yesNo", "examples": ["yes"] }, "end-of-block": { "title": "End-of-block mark", "description": "A visible mark at the end of each block: none, semicolon or asterisk.\n\nIf wrong: `;` starts a comment on some controllers, so that the rest of the block is dropped; `*` is an error on others.", "type": "string", "enum": ["none", "semicolon", "asterisk"], "examples": ["none"] }, "delimiter": { "title": "Program delimiter", "description": "Whether a line with `%` alone stands first and last.\n\nIf wrong: the controller finds no start or no end of the program and refuses the transfer.", "type": "string", "enum": ["none", "percent"], "examples": ["percent"] }, "program-number": { "title": "Program number", "description": "How the program is identified by a number of its own, or none. Where it is stated, a job must have a number in the range.", "anyOf": [{ "title": "None", "description": "Programs have no number; the file name tells them apart.", "type": "string", "const": "none" }, { "type": "object", "additionalProperties": false, "properties": { "letter": { "title": "Letter of the program number", "description": "The address of the number.\n\nIf wrong: the line is refused, or a program of another number is overwritten.", "type": "string", "enum": ["O", ":", "%"], "examples": ["O"] }, "digits": { "title": "Digits of the program number", "description": "Least digits; zeros are put in front.\n\nUnit: digits.\n\nIf wrong: the controller takes the program for another one, or refuses it.", "type": "integer", "minimum": 1, "maximum": 8, "examples": [4] }, "from": { "title": "Lowest program number", "description": "Lowest number that is free for programs.\n\nUnit: program number.\n\nIf wrong: a program that the builder protects is overwritten, or the transfer is refused.", "type": "integer", "minimum": 0, "maximum": 99999999, "examples": [1] }, "to": { "title": "Highest program number", "description": "Highest number that is free for programs; many controls keep the 8000s or 9000s to themselves.\n\nUnit: program number.\n\nIf wrong: a cycle or macro of the builder is overwritten.", "type": "integer", "minimum": 0, "maximum": 99999999, "examples": [7999] } } }], "examples": ["none", { "letter": "O", "digits": 4, "from": 1, "to": 7999 }] }, "byte-order-mark": { "title": "Byte order mark", "description": "Whether the file begins with the three bytes that mark UTF-8.\n\nIf wrong: the first block is rejected, or read without its first word.", "$ref": "#/$defs/yesNo", "examples": ["no"] }, "leader": { "title": "Leader", "description": "Blank lines before the first line of the program.\n\nUnit: lines.\n\nIf wrong: the controller misses the first block, or takes the blank line for the end of the program.", "type": "integer", "minimum": 0, "maximum": 100, "examples": [0] }, "blank-lines": { "title": "Blank lines", "description": "between-sections: one stands before each section of the program; skipped: none is written, and the controller passes over one; none: the controller takes one for the end of the program.\n\nIf wrong: the program ends at the first tool change, with the spindle running.", "type": "string", "enum": ["between-sections", "skipped", "none"], "examples": ["skipped"] }, "characters": { "title": "Characters", "description": "What the text may hold: upper (capital letters, digits and the marks of the code, in comments, too), ascii, or utf-8 (any character in comments).\n\nIf wrong: the block is rejected, or the comment on the screen is garbled so that an instruction to the operator is lost.", "type": "string", "enum": ["upper", "ascii", "utf-8"], "examples": ["upper"] } }, "examples": [{ "extension": "nc", "line-end": "lf", "delimiter": "percent" }] }, "comments": { "title": "Comments", "description": "How text for people is set apart from the code.", "type": "object", "additionalProperties": false, "properties": { "style": { "title": "Comment style", "description": "parentheses: ( ... ); semicolon: from ; to the end of the line; none: the controller takes no comments, and messages to the operator cannot be written.\n\nIf wrong: the text is executed as code, or the block alarms.", "type": "string", "enum": ["parentheses", "semicolon", "none"], "examples": ["parentheses"] }, "longest": { "title": "Longest comment", "description": "Most characters of one comment, its marks not counted. Longer text is cut.\n\nUnit: characters.\n\nIf wrong: the block alarms, or the end of an instruction to the operator is missing.", "type": "integer", "minimum": 8, "maximum": 200, "examples": [60] }, "place": { "title": "Place of comments", "description": "anywhere: a comment may share its block with words; own-block: a comment has a block of its own.\n\nIf wrong: the words behind the comment are dropped, or the block alarms.", "type": "string", "enum": ["anywhere", "own-block"], "examples": ["anywhere"] } }, "examples": [{ "style": "parentheses", "longest": 60 }] }, "blocks": { "title": "Blocks", "description": "How words make up a block and blocks follow one another.", "type": "object", "additionalProperties": false, "properties": { "number": { "title": "Block numbers", "description": "Which blocks have a number (N word), or none.", "anyOf": [{ "title": "None", "description": "No block has a number.", "type": "string", "const": "none" }, { "type": "object", "additionalProperties": false, "properties": { "on": { "title": "Numbered blocks", "description": "all: every block; sections: only the first block of each section.\n\nIf wrong: block search and restart do not find the place.", "type": "string", "enum": ["all", "sections"], "examples": ["all"] }, "start": { "title": "First block number", "description": "Number of the first numbered block, and of the first one after the highest was reached.\n\nUnit: block number.\n\nIf wrong: a number that the controller reserves is used.", "type": "integer", "minimum": 0, "maximum": 99999999, "examples": [10] }, "step": { "title": "Step of block numbers", "description": "Difference from one numbered block to the next.\n\nUnit: block numbers.\n\nIf wrong: no free numbers for a block put in at the machine.", "type": "integer", "minimum": 1, "maximum": 1e3, "examples": [10] }, "to": { "title": "Highest block number", "description": "After it numbers begin again at the first.\n\nUnit: block number.\n\nIf wrong: the controller alarms in the middle of the program.", "type": "integer", "minimum": 1, "maximum": 99999999, "examples": [99990] }, "width": { "title": "Digits of block numbers", "description": "Least digits, zeros put in front; 0: as many as needed.\n\nUnit: digits.\n\nIf wrong: the number is not recognised.", "type": "integer", "minimum": 0, "maximum": 8, "examples": [0] } } }], "examples": ["none", { "on": "all", "start": 10, "step": 10, "to": 99990, "width": 0 }] }, "separator": { "title": "Separator", "description": "What stands between two words: none, blank or tab.\n\nIf wrong: words that run together are misread, or a blank counts against the length of the block.", "type": "string", "enum": ["none", "blank", "tab"], "examples": ["blank"] }, "order": { "title": "Word order", "description": "Letters in the order in which a block has them, each once. Every letter that the dialect writes must stand here.\n\nIf wrong: a controller with a fixed order ignores or misreads the word that stands in the wrong place.", "type": "array", "minItems": 3, "maxItems": 26, "uniqueItems": true, "items": { "$ref": "#/$defs/letter" }, "examples": [["N", "G", "X", "Y", "Z", "A", "B", "C", "I", "J", "K", "R", "P", "Q", "F", "S", "T", "H", "D", "M"]] }, "longest": { "title": "Longest block", "description": "Most characters of a block, its line end not counted, or none.\n\nUnit: characters.\n\nIf wrong: the block is cut short: in the worst case a coordinate loses its last digits and the axis goes to another place without an alarm.", "anyOf": [{ "title": "None", "description": "Any length.", "type": "string", "const": "none" }, { "type": "integer", "minimum": 20, "maximum": 4e3 }], "examples": [80] }, "g-words": { "title": "G words in a block", "description": "one: a single G word; any: one of each modal group.\n\nIf wrong: the last one wins without a word, or the block alarms.", "type": "string", "enum": ["one", "any"], "examples": ["any"] }, "m-words": { "title": "M words in a block", "description": "Most M words in one block.\n\nUnit: words.\n\nIf wrong: only the first or the last one acts: coolant or spindle is missing.", "type": "integer", "minimum": 1, "maximum": 8, "examples": [1] }, "modes": { "title": "Modes in a block", "description": "together: modes that are set one after another share a block (as far as g-words allows); apart: each has a block of its own.\n\nIf wrong: a mode is dropped: the program runs in the wrong plane, units or offset.", "type": "string", "enum": ["together", "apart"], "examples": ["together"] }, "sections": { "title": "Sections", "description": "The parts of a program at which it can be taken up again: what begins one, and how its first block is marked.", "type": "object", "additionalProperties": false, "properties": { "begin-at": { "title": "Beginning of a section", "description": "operation: each operation of the job begins one; tool: only one with another tool does.\n\nIf wrong: the search for a block stops at a place where tool and offsets are not stated.", "type": "string", "enum": ["operation", "tool"], "examples": ["operation"] }, "mark": { "title": "Mark of a section", "description": "Address of the block number where a section begins: N as everywhere, or colon (the alignment function).\n\nIf wrong: the block alarms, or a search does not find the place.", "type": "string", "enum": ["N", "colon"], "examples": ["N"] }, "comments": { "title": "Comment of a section", "description": "yes: a comment with the name of the operation, or of the tool where a section begins at one, stands before the first block of each section; no: none does. A comment is no step, and is never read as a message.\n\nIf wrong: nobody finds the place at the screen, or the comment alarms.", "$ref": "#/$defs/yesNo", "examples": ["no"] }, "modes": { "title": "Modes of a section", "description": "restated: each section states all modes that the start of the program states, units, compensation off and cycles off among them, which a restart by the control's own block search needs; tool, length offset and spindle are said where they change, so that only a section that begins with a tool has them all; kept: it states the modes of its operation, and what was said at the start stays in force.\n\nIf wrong: a program that is taken up at a section runs in units or with a compensation that somebody left in force.", "type": "string", "enum": ["restated", "kept"], "examples": ["kept"] } }, "examples": [{ "begin-at": "operation", "mark": "N" }] }, "delete": { "title": "Block delete", "description": "Marks by which the operator's switch skips a block. Programs are written with one only where `stops.optional` asks for it; in programs that are read they are understood.", "type": "object", "additionalProperties": false, "properties": { "mark": { "title": "Block delete mark", "description": "none: there is no such switch; slash: `/`; numbered: `/` or `/1` to `/9`, with a switch for each.\n\nIf wrong: a block that should be skipped is executed, or the other way round.", "type": "string", "enum": ["none", "slash", "numbered"], "examples": ["slash"] }, "place": { "title": "Place of the block delete mark", "description": "before-number: /N10; after-number: N10/\n\nIf wrong: the mark is not seen, and the block is executed although its switch is on.", "type": "string", "enum": ["before-number", "after-number"], "examples": ["before-number"] } }, "examples": [{ "mark": "slash", "place": "before-number" }] }, "most-words": { "title": "Words in a block", "description": "Most words in one block, the block number not counted, or none.\n\nUnit: words.\n\nIf wrong: the block alarms, or words at its end are not executed.", "anyOf": [{ "title": "None", "description": "Any number of words.", "type": "string", "const": "none" }, { "type": "integer", "minimum": 2, "maximum": 40 }], "examples": ["none"] }, "stops-act": { "title": "When stops act", "description": "Whether spindle stop and coolant off act before or after the motion in their block; program stop and program end act after it in any case. Where `executes` is left-to-right, all of them act where they stand. They are written in blocks of their own; this decides what a program from elsewhere means.\n\nIf wrong: the spindle stops and the tool is then driven through the material.", "type": "string", "enum": ["before-motion", "after-motion"], "examples": ["after-motion"] }, "executes": { "title": "Order of execution", "description": "by-kind: the words of a block act in the order of their kinds, whatever their order in the text (NISTIR 6556 Table 8); left-to-right: each word acts where it stands, and a motion where its first axis word stands.\n\nIf wrong: the spindle starts at the speed said before, or an axis moves at the feed or in the mode of the block before.", "type": "string", "enum": ["by-kind", "left-to-right"], "examples": ["by-kind"] } }, "examples": [{ "number": "none", "separator": "blank", "longest": 80, "g-words": "any", "m-words": 1 }] }, "variables": { "title": "Variables and subprograms", "description": "What the controller works out while it reads a program. Programs that are posted never have any of it; a program from elsewhere is read with the values and in the order of blocks that follow from it.", "type": "object", "additionalProperties": false, "properties": { "parameters": { "title": "Parameters and arithmetic", "description": "none: a word has a number and nothing else; numbered: parameters such as #1, and arithmetic in brackets in the place of a number (NISTIR 6556 3.3.2); named: parameters with names such as #<depth>, too.\n\nIf wrong: `#1` is read as a value that the controller does not have, or a program that it runs is refused.", "type": "string", "enum": ["none", "numbered", "named"], "examples": ["numbered"] }, "control": { "title": "Subprograms and branches", "description": "none: blocks run once, from the first to the last; calls: M98 P calls the subprogram that O and its number begin and M99 ends; o-words: calls, and O words that call, branch and repeat (sub, call, if, while, do, repeat).\n\nIf wrong: blocks are run that the controller skips, or not as often as it runs them.", "type": "string", "enum": ["none", "calls", "o-words"], "examples": ["o-words"] }, "nesting": { "title": "Depth of calls", "description": "Most subprograms that are under way at once: one that the program calls counts one, one that it calls counts two.\n\nUnit: calls.\n\nIf wrong: the controller alarms in the middle of the program.", "type": "integer", "minimum": 0, "maximum": 99, "examples": [9] } }, "examples": [{ "parameters": "numbered", "control": "calls", "nesting": 4 }] }, "numbers": { "title": "Numbers", "description": "How numbers are written. `point`, `trailing-zeros`, `leading-zero`, `plus`, `suppressed-zeros`, `digits` and `whole-digits` hold for all; a single address may state its own.", "type": "object", "additionalProperties": false, "properties": { "point": { "title": "Decimal point", "description": "always: every number with decimals has a point; when-needed: whole numbers have none; never: the point is implied, and the number counts least increments.\n\nIf wrong: a control that counts least increments reads X50 as 0.050 mm; the opposite mistake moves a thousand times too far.", "type": "string", "enum": ["always", "when-needed", "never"], "examples": ["always"] }, "trailing-zeros": { "title": "Zeros at the end", "description": "keep: 1.500; drop: 1.5 and 10.; one: 1.5 and 10.0 (at least one digit behind the point).\n\nIf wrong: a number without decimals may be read in least increments.", "type": "string", "enum": ["keep", "drop", "one"], "examples": ["keep"] }, "leading-zero": { "title": "Zero before the point", "description": "keep: 0.5; drop: .5\n\nIf wrong: the word is a syntax error.", "type": "string", "enum": ["keep", "drop"], "examples": ["keep"] }, "plus": { "title": "Plus sign", "description": "Whether a positive number with a direction (axes, arc centres) has a + sign.\n\nIf wrong: the word is a syntax error, or an old control takes it as unsigned.", "$ref": "#/$defs/yesNo", "examples": ["no"] }, "suppressed-zeros": { "title": "Zeros left out", "description": "With an implied point: which zeros are left out. leading: X12500 is 12.500; trailing: the number is read from the left; none: all digits stand.\n\nIf wrong: every coordinate is wrong by powers of ten.", "type": "string", "enum": ["leading", "trailing", "none"], "examples": ["leading"] }, "digits": { "title": "Digits of a number", "description": "With an implied point: how many digits a number has before zeros at its end are left out.\n\nUnit: digits.\n\nIf wrong: every coordinate is wrong by powers of ten.", "type": "integer", "minimum": 1, "maximum": 12, "examples": [7] }, "whole-digits": { "title": "Digits before the point", "description": "Most digits before the point, or none for no limit.\n\nUnit: digits.\n\nIf wrong: the word alarms, or its first digits are lost and the axis goes to another place.", "anyOf": [{ "title": "None", "description": "As many as the number has.", "type": "string", "const": "none" }, { "type": "integer", "minimum": 1, "maximum": 12 }], "examples": ["none"] }, "length": { "title": "Axis words", "description": "Numbers of X Y Z, and of the levels and pecks of cycles. Digits behind the point, by the units of the program; the mapping may also state how this number differs from the rest.", "type": "object", "additionalProperties": false, "properties": { "mm": { "title": "Decimals in millimetres", "description": "Digits behind the point in a program in millimetres: 3 means a least increment of 0.001 mm.\n\nUnit: digits behind the point of a length in mm.\n\nIf wrong: the controller rejects a number with too many digits, or rounds it by itself, so that arcs no longer end where they should.", "type": "integer", "minimum": 0, "maximum": 7, "examples": [3] }, "inch": { "title": "Decimals in inches", "description": "Digits behind the point in a program in inches: 4 means a least increment of 0.0001 inch.\n\nUnit: digits behind the point of a length in inch.\n\nIf wrong: the controller rejects a number with too many digits, or rounds it by itself, so that arcs no longer end where they should.", "type": "integer", "minimum": 0, "maximum": 6, "examples": [4] }, "point": { "$ref": "#/$defs/own-point" }, "trailing-zeros": { "$ref": "#/$defs/own-trailing-zeros" }, "leading-zero": { "$ref": "#/$defs/own-leading-zero" }, "plus": { "$ref": "#/$defs/own-plus" }, "suppressed-zeros": { "$ref": "#/$defs/own-suppressed-zeros" }, "digits": { "$ref": "#/$defs/own-digits" }, "whole-digits": { "$ref": "#/$defs/own-whole-digits" } }, "examples": [{ "mm": 3, "inch": 4 }] }, "arc-centre": { "title": "Arc centre and radius words", "description": "Numbers of I J K and of the radius. Digits behind the point, by the units of the program; the mapping may also state how this number differs from the rest.", "type": "object", "additionalProperties": false, "properties": { "mm": { "title": "Decimals in millimetres", "description": "Digits behind the point in a program in millimetres: 3 means a least increment of 0.001 mm.\n\nUnit: digits behind the point of a length in mm.\n\nIf wrong: start and end of an arc differ in radius: the controller alarms, or steps on the part.", "type": "integer", "minimum": 0, "maximum": 7, "examples": [3] }, "inch": { "title": "Decimals in inches", "description": "Digits behind the point in a program in inches: 4 means a least increment of 0.0001 inch.\n\nUnit: digits behind the point of a length in inch.\n\nIf wrong: start and end of an arc differ in radius: the controller alarms, or steps on the part.", "type": "integer", "minimum": 0, "maximum": 6, "examples": [4] }, "point": { "$ref": "#/$defs/own-point" }, "trailing-zeros": { "$ref": "#/$defs/own-trailing-zeros" }, "leading-zero": { "$ref": "#/$defs/own-leading-zero" }, "plus": { "$ref": "#/$defs/own-plus" }, "suppressed-zeros": { "$ref": "#/$defs/own-suppressed-zeros" }, "digits": { "$ref": "#/$defs/own-digits" }, "whole-digits": { "$ref": "#/$defs/own-whole-digits" } }, "examples": [{ "mm": 3, "inch": 4 }] }, "peck": { "title": "Peck words", "description": "Numbers of the peck of a cycle and of its back-off. Digits behind the point, by the units of the program; the mapping may also state how this number differs from the rest, such as an implied point.", "type": "object", "additionalProperties": false, "properties": { "mm": { "title": "Decimals in millimetres", "description": "Digits behind the point in a program in millimetres: 3 means a least increment of 0.001 mm.\n\nUnit: digits behind the point of a length in mm.\n\nIf wrong: the hole is drilled in one go, or in a thousand pecks.", "type": "integer", "minimum": 0, "maximum": 7, "examples": [3] }, "inch": { "title": "Decimals in inches", "description": "Digits behind the point in a program in inches: 4 means a least increment of 0.0001 inch.\n\nUnit: digits behind the point of a length in inch.\n\nIf wrong: the hole is drilled in one go, or in a thousand pecks.", "type": "integer", "minimum": 0, "maximum": 6, "examples": [4] }, "point": { "$ref": "#/$defs/own-point" }, "trailing-zeros": { "$ref": "#/$defs/own-trailing-zeros" }, "leading-zero": { "$ref": "#/$defs/own-leading-zero" }, "plus": { "$ref": "#/$defs/own-plus" }, "suppressed-zeros": { "$ref": "#/$defs/own-suppressed-zeros" }, "digits": { "$ref": "#/$defs/own-digits" } }, "examples": [{ "mm": 3, "inch": 4 }] }, "angle": { "title": "Rotary words", "description": "Numbers of A B C. Either the digits behind the point, or a mapping that also states how this number differs from the rest.\n\nUnit: digits behind the point of an angle in degrees.\n\nIf wrong: the rotary axis stands short of or past its place.", "anyOf": [{ "type": "integer", "minimum": 0, "maximum": 7 }, { "type": "object", "additionalProperties": false, "properties": { "decimals": { "title": "Digits behind the point", "description": "The least increment as a number of decimals.\n\nUnit: digits.\n\nIf wrong: the rotary axis stands short of or past its place.", "type": "integer", "minimum": 0, "maximum": 7, "examples": [3] }, "point": { "$ref": "#/$defs/own-point" }, "trailing-zeros": { "$ref": "#/$defs/own-trailing-zeros" }, "leading-zero": { "$ref": "#/$defs/own-leading-zero" }, "plus": { "$ref": "#/$defs/own-plus" }, "suppressed-zeros": { "$ref": "#/$defs/own-suppressed-zeros" }, "digits": { "$ref": "#/$defs/own-digits" }, "whole-digits": { "$ref": "#/$defs/own-whole-digits" } } }], "examples": [3] }, "feed-per-minute": { "title": "Feed per minute", "description": "Numbers of F in feed per minute. Digits behind the point, by the units of the program; the mapping may also state how this number differs from the rest.", "type": "object", "additionalProperties": false, "properties": { "mm": { "title": "Decimals in millimetres", "description": "Digits behind the point in a program in millimetres: 3 means a least increment of 0.001 mm.\n\nUnit: digits behind the point of a feed in mm a minute.\n\nIf wrong: the feed is rejected, or a decimal is dropped and the tool moves ten times too fast.", "type": "integer", "minimum": 0, "maximum": 7, "examples": [1] }, "inch": { "title": "Decimals in inches", "description": "Digits behind the point in a program in inches: 4 means a least increment of 0.0001 inch.\n\nUnit: digits behind the point of a feed in inch a minute.\n\nIf wrong: the feed is rejected, or a decimal is dropped and the tool moves ten times too fast.", "type": "integer", "minimum": 0, "maximum": 6, "examples": [2] }, "point": { "$ref": "#/$defs/own-point" }, "trailing-zeros": { "$ref": "#/$defs/own-trailing-zeros" }, "leading-zero": { "$ref": "#/$defs/own-leading-zero" }, "plus": { "$ref": "#/$defs/own-plus" }, "suppressed-zeros": { "$ref": "#/$defs/own-suppressed-zeros" }, "digits": { "$ref": "#/$defs/own-digits" }, "whole-digits": { "$ref": "#/$defs/own-whole-digits" } }, "examples": [{ "mm": 1, "inch": 2 }] }, "feed-per-revolution": { "title": "Feed per revolution", "description": "Numbers of F in feed per revolution. Digits behind the point, by the units of the program; the mapping may also state how this number differs from the rest.", "type": "object", "additionalProperties": false, "properties": { "mm": { "title": "Decimals in millimetres", "description": "Digits behind the point in a program in millimetres: 3 means a least increment of 0.001 mm.\n\nUnit: digits behind the point of a feed in mm a revolution.\n\nIf wrong: a feed of 0.08 becomes 0, or is taken as 8.", "type": "integer", "minimum": 0, "maximum": 7, "examples": [3] }, "inch": { "title": "Decimals in inches", "description": "Digits behind the point in a program in inches: 4 means a least increment of 0.0001 inch.\n\nUnit: digits behind the point of a feed in inch a revolution.\n\nIf wrong: a feed of 0.08 becomes 0, or is taken as 8.", "type": "integer", "minimum": 0, "maximum": 6, "examples": [4] }, "point": { "$ref": "#/$defs/own-point" }, "trailing-zeros": { "$ref": "#/$defs/own-trailing-zeros" }, "leading-zero": { "$ref": "#/$defs/own-leading-zero" }, "plus": { "$ref": "#/$defs/own-plus" }, "suppressed-zeros": { "$ref": "#/$defs/own-suppressed-zeros" }, "digits": { "$ref": "#/$defs/own-digits" }, "whole-digits": { "$ref": "#/$defs/own-whole-digits" } }, "examples": [{ "mm": 3, "inch": 4 }] }, "inverse-time": { "title": "Inverse-time feed", "description": "Numbers of F in inverse time. Either the digits behind the point, or a mapping that also states how this number differs from the rest.\n\nUnit: digits behind the point of a feed in 1/min.\n\nIf wrong: the tool moves at a multiple or a fraction of the feed.", "anyOf": [{ "type": "integer", "minimum": 0, "maximum": 7 }, { "type": "object", "additionalProperties": false, "properties": { "decimals": { "title": "Digits behind the point", "description": "The least increment as a number of decimals.\n\nUnit: digits.\n\nIf wrong: the tool moves at a multiple or a fraction of the feed.", "type": "integer", "minimum": 0, "maximum": 7, "examples": [4] }, "point": { "$ref": "#/$defs/own-point" }, "trailing-zeros": { "$ref": "#/$defs/own-trailing-zeros" }, "leading-zero": { "$ref": "#/$defs/own-leading-zero" }, "plus": { "$ref": "#/$defs/own-plus" }, "suppressed-zeros": { "$ref": "#/$defs/own-suppressed-zeros" }, "digits": { "$ref": "#/$defs/own-digits" }, "whole-digits": { "$ref": "#/$defs/own-whole-digits" } } }], "examples": [4] }, "speed": { "title": "Spindle speed", "description": "Numbers of S. Either the digits behind the point, or a mapping that also states how this number differs from the rest.\n\nUnit: digits behind the point of a speed in rpm.\n\nIf wrong: the block alarms, or the speed is cut to a multiple.", "anyOf": [{ "type": "integer", "minimum": 0, "maximum": 7 }, { "type": "object", "additionalProperties": false, "properties": { "decimals": { "title": "Digits behind the point", "description": "The least increment as a number of decimals.\n\nUnit: digits.\n\nIf wrong: the block alarms, or the speed is cut to a multiple.", "type": "integer", "minimum": 0, "maximum": 7, "examples": [0] }, "point": { "$ref": "#/$defs/own-point" }, "trailing-zeros": { "$ref": "#/$defs/own-trailing-zeros" }, "leading-zero": { "$ref": "#/$defs/own-leading-zero" }, "plus": { "$ref": "#/$defs/own-plus" }, "suppressed-zeros": { "$ref": "#/$defs/own-suppressed-zeros" }, "digits": { "$ref": "#/$defs/own-digits" }, "whole-digits": { "$ref": "#/$defs/own-whole-digits" } } }], "examples": [0] }, "dwell": { "title": "Dwell", "description": "Number of the dwell, counted in `dwell.unit`. Either the digits behind the point, or a mapping that also states how this number differs from the rest.\n\nUnit: digits behind the point of a time in `dwell.unit`.\n\nIf wrong: a dwell of 0.5 becomes 0 and the spindle has not come up to speed.", "anyOf": [{ "type": "integer", "minimum": 0, "maximum": 7 }, { "type": "object", "additionalProperties": false, "properties": { "decimals": { "title": "Digits behind the point", "description": "The least increment as a number of decimals.\n\nUnit: digits.\n\nIf wrong: a dwell of 0.5 becomes 0 and the spindle has not come up to speed.", "type": "integer", "minimum": 0, "maximum": 7, "examples": [2] }, "point": { "$ref": "#/$defs/own-point" }, "trailing-zeros": { "$ref": "#/$defs/own-trailing-zeros" }, "leading-zero": { "$ref": "#/$defs/own-leading-zero" }, "plus": { "$ref": "#/$defs/own-plus" }, "suppressed-zeros": { "$ref": "#/$defs/own-suppressed-zeros" }, "digits": { "$ref": "#/$defs/own-digits" }, "whole-digits": { "$ref": "#/$defs/own-whole-digits" } } }], "examples": [2] }, "cycle-dwell": { "title": "Dwell in a cycle", "description": "Number of the dwell at the bottom of a hole, counted in `cycles.words.dwell-unit`. Either the digits behind the point, or a mapping that also states how this number differs from the rest.\n\nUnit: digits behind the point of a time in `cycles.words.dwell-unit`.\n\nIf wrong: no dwell, or a very long one with the tool rubbing in the hole.", "anyOf": [{ "type": "integer", "minimum": 0, "maximum": 7 }, { "type": "object", "additionalProperties": false, "properties": { "decimals": { "title": "Digits behind the point", "description": "The least increment as a number of decimals.\n\nUnit: digits.\n\nIf wrong: no dwell, or a very long one with the tool rubbing in the hole.", "type": "integer", "minimum": 0, "maximum": 7, "examples": [2] }, "point": { "$ref": "#/$defs/own-point" }, "trailing-zeros": { "$ref": "#/$defs/own-trailing-zeros" }, "leading-zero": { "$ref": "#/$defs/own-leading-zero" }, "plus": { "$ref": "#/$defs/own-plus" }, "suppressed-zeros": { "$ref": "#/$defs/own-suppressed-zeros" }, "digits": { "$ref": "#/$defs/own-digits" }, "whole-digits": { "$ref": "#/$defs/own-whole-digits" } } }], "examples": [2] }, "timeout": { "title": "Timeout of a wait", "description": "Number of the timeout, counted in `wait.timeout-unit`. Either the digits behind the point, or a mapping that also states how this number differs from the rest.\n\nUnit: digits behind the point of a time in `wait.timeout-unit`.\n\nIf wrong: the wait gives up at once, or hangs for minutes with the fault unseen.", "anyOf": [{ "type": "integer", "minimum": 0, "maximum": 7 }, { "type": "object", "additionalProperties": false, "properties": { "decimals": { "title": "Digits behind the point", "description": "The least increment as a number of decimals.\n\nUnit: digits.\n\nIf wrong: the wait gives up at once, or hangs for minutes with the fault unseen.", "type": "integer", "minimum": 0, "maximum": 7, "examples": [1] }, "point": { "$ref": "#/$defs/own-point" }, "trailing-zeros": { "$ref": "#/$defs/own-trailing-zeros" }, "leading-zero": { "$ref": "#/$defs/own-leading-zero" }, "plus": { "$ref": "#/$defs/own-plus" }, "suppressed-zeros": { "$ref": "#/$defs/own-suppressed-zeros" }, "digits": { "$ref": "#/$defs/own-digits" }, "whole-digits": { "$ref": "#/$defs/own-whole-digits" } } }], "examples": [1] }, "code-width": { "title": "Least digits of codes", "description": "Least digits of codes and of tool and offset numbers; zeros are put in front: 2 writes G00, M06, T01.", "type": "object", "additionalProperties": false, "properties": { "G": { "title": "Digits of G words", "description": "Least digits of a G code before its point.\n\nUnit: digits.\n\nIf wrong: the code is not recognised.", "type": "integer", "minimum": 1, "maximum": 4, "examples": [2] }, "M": { "title": "Digits of M words", "description": "Least digits of an M code.\n\nUnit: digits.\n\nIf wrong: the code is not recognised.", "type": "integer", "minimum": 1, "maximum": 4, "examples": [2] }, "T": { "title": "Digits of T words", "description": "Least digits of a tool number.\n\nUnit: digits.\n\nIf wrong: a number with too few digits selects another tool or carries no offset.", "type": "integer", "minimum": 1, "maximum": 4, "examples": [2] }, "H": { "title": "Digits of H words", "description": "Least digits of the number of a length offset.\n\nUnit: digits.\n\nIf wrong: the length of another tool acts, and the tool is driven into the work.", "type": "integer", "minimum": 1, "maximum": 4, "examples": [2] }, "D": { "title": "Digits of D words", "description": "Least digits of the number of a radius offset.\n\nUnit: digits.\n\nIf wrong: the radius of another tool acts, and the contour is gouged.", "type": "integer", "minimum": 1, "maximum": 4, "examples": [2] } }, "examples": [{ "G": 2, "M": 2, "T": 2, "H": 2, "D": 2 }] } }, "examples": [{ "point": "always", "trailing-zeros": "keep", "length": { "mm": 3, "inch": 4 } }] }, "modal": { "title": "Modal words", "description": "Which words are repeated although they have not changed.", "type": "object", "additionalProperties": false, "properties": { "motion": { "title": "Motion word", "description": "modal: written when the kind of motion changes; each-block: in every block with axis words.\n\nIf wrong: without its motion word a block does nothing, or is run as the last motion: a rapid where a feed was meant.", "type": "string", "enum": ["modal", "each-block"], "examples": ["modal"] }, "axes": { "title": "Axis words", "description": "changed: only axes that move; all: every axis whose place is known.\n\nIf wrong: an axis left out is taken as 0 or stays where it was.", "type": "string", "enum": ["changed", "all"], "examples": ["changed"] }, "arc-end": { "title": "End of an arc", "description": "changed: only the end coordinates that differ; both: both axes of the plane.\n\nIf wrong: the arc is refused, or ends at another place.", "type": "string", "enum": ["changed", "both"], "examples": ["changed"] }, "arc-centre": { "title": "Zeros in an arc centre", "description": "non-zero: a centre word of 0 is left out; both: both are written.\n\nIf wrong: `centre missing` alarm, or the last centre is used and the arc runs wild.", "type": "string", "enum": ["non-zero", "both"], "examples": ["both"] }, "feed": { "title": "Feed word", "description": "modal: when the feed changes; after-rapid: also in the first feed block after a rapid; each-block: in every feed block.\n\nIf wrong: the block alarms for want of a feed, or an old feed is used.", "type": "string", "enum": ["modal", "after-rapid", "each-block"], "examples": ["modal"] }, "speed": { "title": "Speed word", "description": "each-start: at every start of the spindle; changed: only where the speed is not the one said last, so that a start alone takes that one. Behind a stop of the program it is said in any case.\n\nIf wrong: the spindle starts at a speed that is left over, or not at all.", "type": "string", "enum": ["each-start", "changed"], "examples": ["each-start"] } }, "examples": [{ "motion": "modal", "axes": "changed", "arc-end": "changed", "arc-centre": "both", "feed": "modal", "speed": "each-start" }] }, "axes": { "title": "Letters of the axes", "description": "The letters by which the controller knows the axes of ISO 841, where Z is the axis of the spindle.", "type": "object", "additionalProperties": false, "axes": [56], "properties": { "x": { "title": "Letter of X", "description": "Letter of the linear axis X of ISO 841.\n\nIf wrong: another axis moves.", "$ref": "#/$defs/axisLetter", "examples": ["X"] }, "y": { "title": "Letter of Y", "description": "Letter of the linear axis Y of ISO 841.\n\nIf wrong: another axis moves.", "$ref": "#/$defs/axisLetter", "examples": ["Y"] }, "z": { "title": "Letter of Z", "description": "Letter of the linear axis Z of ISO 841.\n\nIf wrong: another axis moves.", "$ref": "#/$defs/axisLetter", "examples": ["Z"] }, "a": { "title": "Letter of A", "description": "Letter of the rotary axis A of ISO 841.\n\nIf wrong: another axis moves.", "$ref": "#/$defs/axisLetter", "examples": ["A"] }, "b": { "title": "Letter of B", "description": "Letter of the rotary axis B of ISO 841.\n\nIf wrong: another axis moves.", "$ref": "#/$defs/axisLetter", "examples": ["B"] }, "c": { "title": "Letter of C", "description": "Letter of the rotary axis C of ISO 841.\n\nIf wrong: another axis moves.", "$ref": "#/$defs/axisLetter", "examples": ["C"] } }, "examples": [{ "x": "X", "y": "Y", "z": "W" }] }, "motion": { "title": "Straight motion", "description": "Rapid and straight motion.", "type": "object", "additionalProperties": false, "properties": { "rapid": { "title": "Rapid", "description": "Code of the rapid.\n\nIf wrong: a rapid is run as a feed, or a feed as a rapid into the work.", "$ref": "#/$defs/codeOrNone", "examples": ["G0"] }, "line": { "title": "Straight line at feed", "description": "Code of a straight line at feed.\n\nIf wrong: a feed is run as a rapid into the work.", "$ref": "#/$defs/codeOrNone", "examples": ["G1"] }, "rapids": { "title": "Path of a rapid", "description": "straight: all axes arrive together on a straight path; dog-leg: each runs at its own rate. With dog-leg, a rapid that changes Z and X or Y is split: rising Z first, falling Z last.\n\nIf wrong: on a dog-leg the tool sweeps through a clamp that lies beside the straight path.", "type": "string", "enum": ["straight", "dog-leg"], "examples": ["dog-leg"] }, "rapid-axes": { "title": "Axes of a rapid", "description": "together: a rapid moves all its axes in one block; one-at-a-time: each has a block of its own, rising Z first, falling Z last. Between the holes of a fixed cycle the controller moves as it does.\n\nIf wrong: the tool sweeps through a clamp on a path that nobody has looked at.", "type": "string", "enum": ["together", "one-at-a-time"], "axes": [60], "examples": ["together"] }, "axes-at-once": { "title": "Axes that move at once", "description": "The most axes that one block may move. A job with a line or a helix that moves more is refused; rapids are split, rising Z first, falling Z last.\n\nUnit: axes.\n\nIf wrong: the block alarms, or an axis is left behind and the tool cuts elsewhere.", "type": "integer", "minimum": 2, "maximum": 6, "axes": [62], "examples": [3] }, "rapid-feed": { "title": "Rapid as a feed", "description": "For a controller without rapids (`rapid: none`): the feed of the straight lines that take their place, or none. A line at exactly this feed is a rapid; a job with a feed as fast is refused, and so is one with feeds other than a minute.\n\nUnit: mm/min, or with `in/min`.\n\nIf wrong: rapids creep, or the tool is dragged through the work at the speed of a rapid.", "anyOf": [{ "type": "string", "const": "none" }, { "$ref": "#/$defs/feed" }], "axes": [61], "examples": ["none", 6e3] }, "machine-move-lasts": { "title": "How long a move in machine coordinates lasts", "description": "block: the code of `machine-move` acts in its own block alone; until-work-offset: it suspends the work offset, and all motion is in machine coordinates until a work offset is stated anew.\n\nIf wrong: the tool goes to places of the work as if they were places of the machine.", "type": "string", "enum": ["block", "until-work-offset"], "axes": [52], "examples": ["block"] } }, "examples": [{ "rapid": "G0", "line": "G1", "rapids": "dog-leg" }] }, "units": { "title": "Units", "description": "Words for the units of the program.", "type": "object", "additionalProperties": false, "properties": { "mm": { "title": "Millimetres", "description": "Code for millimetres, or none where the controller has no word for it.\n\nIf wrong: everything is 25.4 times too small or too large.", "$ref": "#/$defs/codeOrNone", "examples": ["G21", "none"] }, "inch": { "title": "Inches", "description": "Code for inches, or none where the controller has no word for it.\n\nIf wrong: everything is 25.4 times too small or too large.", "$ref": "#/$defs/codeOrNone", "examples": ["G20", "none"] }, "programs-in": { "title": "Units of programs", "description": "job: a program is in the units of its job; mm or inch: always in these.\n\nIf wrong: everything is 25.4 times too small or too large.", "type": "string", "enum": ["job", "mm", "inch"], "examples": ["job"] }, "stated": { "title": "Where units are stated", "description": "with-modes: in the first block or any other, with other modes; first-block: alone in the first block of the program, and nowhere else.\n\nIf wrong: the block alarms, or offsets are taken in the other units.", "type": "string", "enum": ["with-modes", "first-block"], "axes": [49], "examples": ["with-modes"] } }, "examples": [{ "mm": "G21", "inch": "G20", "programs-in": "job" }] }, "plane": { "title": "Planes", "description": "Words that select the plane of arcs, cycles and compensation.", "type": "object", "additionalProperties": false, "properties": { "xy": { "title": "XY plane", "description": "Code of the XY plane.\n\nIf wrong: arcs run in another plane: the tool dives into the work.", "$ref": "#/$defs/codeOrNone", "examples": ["G17"] }, "zx": { "title": "ZX plane", "description": "Code of the ZX plane.\n\nIf wrong: arcs run in another plane: the tool dives into the work.", "$ref": "#/$defs/codeOrNone", "examples": ["G18"] }, "yz": { "title": "YZ plane", "description": "Code of the YZ plane.\n\nIf wrong: arcs run in another plane: the tool dives into the work.", "$ref": "#/$defs/codeOrNone", "examples": ["G19"] } }, "examples": [{ "xy": "G17", "zx": "G18", "yz": "G19" }] }, "distance": { "title": "Absolute and incremental", "description": "Words for absolute and incremental coordinates.", "type": "object", "additionalProperties": false, "properties": { "absolute": { "title": "Absolute", "description": "Code for absolute coordinates.\n\nIf wrong: places are taken as distances and the tool runs off.", "$ref": "#/$defs/codeOrNone", "examples": ["G90"] }, "incremental": { "title": "Incremental", "description": "Code for incremental coordinates.\n\nIf wrong: distances are taken as places.", "$ref": "#/$defs/codeOrNone", "examples": ["G91"] }, "programs-in": { "title": "Coordinates of programs", "description": "Whether programs are written with absolute or incremental coordinates.\n\nIf wrong: places are taken as distances and the tool runs off.", "type": "string", "enum": ["absolute", "incremental"], "examples": ["absolute"] } }, "examples": [{ "absolute": "G90", "incremental": "G91", "programs-in": "absolute" }] }, "arc": { "title": "Arcs", "description": "Circular motion.", "type": "object", "additionalProperties": false, "properties": { "cw": { "title": "Arc clockwise", "description": "Code of an arc clockwise seen from the + end of the axis across the plane.\n\nIf wrong: the arc runs the other way round.", "$ref": "#/$defs/codeOrNone", "examples": ["G2"] }, "ccw": { "title": "Arc counter-clockwise", "description": "Code of an arc counter-clockwise.\n\nIf wrong: the arc runs the other way round.", "$ref": "#/$defs/codeOrNone", "examples": ["G3"] }, "form": { "title": "Form of an arc", "description": "incremental-centre: I J K from the start point; absolute-centre: I J K as coordinates; radius: a radius word, negative above 180 degrees; none: arcs are not understood, and chords take their place.\n\nIf wrong: the centre lies elsewhere: a wild circle through work and clamps.", "type": "string", "enum": ["incremental-centre", "absolute-centre", "radius", "none"], "examples": ["incremental-centre"] }, "centre-words": { "title": "Arc centre modes", "description": "Words that choose absolute or incremental arc centres, where the controller has them.", "type": "object", "additionalProperties": false, "properties": { "absolute": { "title": "Absolute arc centres", "description": "Code for absolute arc centres, or none.\n\nIf wrong: the centre lies elsewhere: a wild circle.", "$ref": "#/$defs/codeOrNone", "examples": ["none", "G90.1"] }, "incremental": { "title": "Incremental arc centres", "description": "Code for incremental arc centres, or none.\n\nIf wrong: the centre lies elsewhere: a wild circle.", "$ref": "#/$defs/codeOrNone", "examples": ["none", "G91.1"] } }, "examples": [{ "absolute": "none", "incremental": "none" }] }, "radius-word": { "title": "Radius word", "description": "Letter of the radius, where `form` is radius.\n\nIf wrong: the arc is refused.", "$ref": "#/$defs/letter", "examples": ["R"] }, "planes": { "title": "Planes with arcs", "description": "The planes in which arcs are understood. Arcs in others become chords, or are refused.\n\nIf wrong: the block alarms, or the arc is cut in another plane.", "type": "array", "maxItems": 3, "uniqueItems": true, "items": { "type": "string", "enum": ["xy", "zx", "yz"] }, "examples": [["xy", "zx", "yz"]] }, "largest-sweep": { "title": "Largest sweep", "description": "Largest sweep of an arc in one block; larger ones are split.\n\nUnit: degrees.\n\nIf wrong: the arc takes the short way instead of the long one.", "type": "number", "exclusiveMinimum": 0, "maximum": 360, "examples": [360] }, "quadrants": { "title": "Arcs and quadrant lines", "description": "any: an arc may cross the quadrant lines of its circle (the lines through its centre along the axes); one: each block stays in one quadrant, and longer arcs are split at the lines.\n\nIf wrong: the block alarms, or the arc is cut in the wrong quadrant.", "type": "string", "enum": ["any", "one"], "examples": ["any"] }, "full-circle": { "title": "Full circle", "description": "Whether one block can be a full circle.\n\nIf wrong: nothing is cut, or a whole circle where nothing was meant.", "$ref": "#/$defs/yesNo", "examples": ["yes"] }, "helix": { "title": "Helix", "description": "Whether the third axis may move during an arc.\n\nIf wrong: the third axis plunges before or after the arc.", "$ref": "#/$defs/yesNo", "examples": ["yes"] }, "turns-word": { "title": "Turns word", "description": "Letter of the word for the number of turns of a helix, or none: one turn a block.\n\nIf wrong: the helix is cut with one turn and a steep plunge.", "$ref": "#/$defs/letterOrNone", "examples": ["none"] }, "feed-along": { "title": "Feed on a helix", "description": "What F means on a helix: path, the speed along the helix; circle, the speed along its circle seen from above.\n\nIf wrong: the tool moves up to several times faster than meant on a steep helix.", "type": "string", "enum": ["path", "circle"], "examples": ["path"] }, "smallest-radius": { "title": "Smallest radius", "description": "Arcs with a smaller radius become chords, or none.\n\nUnit: mm, or with `in`.\n\nIf wrong: the arc alarms or becomes a dwell mark.", "$ref": "#/$defs/lengthOrNone", "examples": ["none", 0.05] }, "largest-radius": { "title": "Largest radius", "description": "Arcs with a larger radius become chords, or none.\n\nUnit: mm, or with `in`.\n\nIf wrong: the arc alarms.", "$ref": "#/$defs/lengthOrNone", "examples": ["none", 5e3] }, "tolerance": { "title": "Radius tolerance", "description": "How far the radius at the start and at the end of an arc may differ before the controller alarms.", "type": "object", "additionalProperties": false, "properties": { "mm": { "title": "Tolerance in millimetres", "description": "In a program in millimetres.\n\nUnit: mm.\n\nIf wrong: the program stops in the middle of a cut, or the controller steps to the end point on the part.", "type": "number", "minimum": 0, "maximum": 10, "examples": [2e-3] }, "inch": { "title": "Tolerance in inches", "description": "In a program in inches.\n\nUnit: inch.\n\nIf wrong: the program stops in the middle of a cut, or the controller steps to the end point on the part.", "type": "number", "minimum": 0, "maximum": 1, "examples": [2e-4] }, "relative": { "title": "Relative tolerance", "description": "As a share of the radius; the larger of the two holds. 0: none.\n\nUnit: share of the radius (0.001 is 0.1 %).\n\nIf wrong: the program stops in the middle of a cut, or the controller steps to the end point on the part.", "type": "number", "minimum": 0, "maximum": 0.01, "examples": [0] } }, "examples": [{ "mm": 2e-3, "inch": 2e-4, "relative": 0 }] }, "chord-tolerance": { "title": "Chord tolerance", "description": "Largest distance between a chord and its arc, where chords take the place of an arc.\n\nUnit: mm, or with `in`.\n\nIf wrong: flats are seen on curves, or the blocks come faster than the controller reads them and the motion stutters.", "$ref": "#/$defs/length", "examples": [0.01] } }, "examples": [{ "cw": "G2", "ccw": "G3", "form": "incremental-centre", "helix": "yes", "feed-along": "path" }] }, "path": { "title": "Path modes", "description": "Words for how corners are taken.", "type": "object", "additionalProperties": false, "properties": { "exact": { "title": "Exact path", "description": "Code for the exact path.\n\nIf wrong: corners are rounded.", "$ref": "#/$defs/codeWithWordOrNone", "examples": ["G61"] }, "stop": { "title": "Exact stop", "description": "Code for a stop at each corner.\n\nIf wrong: dwell marks at each corner, or rounded corners.", "$ref": "#/$defs/codeWithWordOrNone", "examples": ["G61.1", "none"] }, "blend": { "title": "Continuous path", "description": "Code for blending corners at speed.\n\nIf wrong: the motion stutters and burns the edge.", "$ref": "#/$defs/codeWithWordOrNone", "examples": ["G64"] }, "tolerance-word": { "title": "Tolerance word", "description": "Letter of the word beside `blend` that says how far the path may leave its corners, a length in the units of the program; or none: an operation with a `tolerance` is then written on the exact path, and refused where there is no word for that.\n\nIf wrong: the block is rejected, or corners are cut wider than the job allows.", "$ref": "#/$defs/letterOrNone", "examples": ["none", "P"] }, "look-ahead": { "title": "Look-ahead", "description": "Codes that turn looking ahead over many blocks on, for operations that are blended, and off, for those on the exact path; or none.", "anyOf": [{ "title": "None", "description": "The control looks ahead by itself, or not at all.", "type": "string", "const": "none" }, { "type": "object", "additionalProperties": false, "properties": { "on": { "title": "Look-ahead on", "description": "Code that turns look-ahead on.\n\nIf wrong: the motion stutters, or details are rounded off.", "$ref": "#/$defs/codeWithWordOrNone", "examples": ["M97"] }, "off": { "title": "Look-ahead off", "description": "Code that turns look-ahead off.\n\nIf wrong: details are rounded off.", "$ref": "#/$defs/codeWithWordOrNone", "examples": ["M98"] } } }], "axes": [77], "examples": ["none", { "on": "M97", "off": "M98" }] } }, "examples": [{ "exact": "G61", "stop": "none", "blend": "G64" }] }, "feed": { "title": "Feed modes", "description": "Words for what F means.", "type": "object", "additionalProperties": false, "properties": { "per-minute": { "title": "Feed per minute", "description": "Code for feed in length units a minute.\n\nIf wrong: the feed is wrong by the spindle speed.", "$ref": "#/$defs/codeOrNone", "examples": ["G94"] }, "per-revolution": { "title": "Feed per revolution", "description": "Code for feed in length units a revolution, or none: the feed is worked out a minute.\n\nIf wrong: the feed is wrong by the spindle speed.", "$ref": "#/$defs/codeOrNone", "examples": ["none", "G95"] }, "inverse-time": { "title": "Inverse time", "description": "Code for feed in 1/minutes a block, or none.\n\nIf wrong: the tool moves at a wildly wrong feed.", "$ref": "#/$defs/codeOrNone", "examples": ["G93", "none"] }, "inverse-time-unit": { "title": "Unit of inverse time", "description": "What F counts in inverse time: per-minute: 1/minutes; per-second: 1/seconds.\n\nIf wrong: the tool moves 60 times too fast or too slow.", "type": "string", "enum": ["per-minute", "per-second"], "axes": [72], "examples": ["per-minute"] } }, "examples": [{ "per-minute": "G94", "per-revolution": "none", "inverse-time": "none" }] }, "dwell": { "title": "Dwell", "description": "A pause of a set time.", "type": "object", "additionalProperties": false, "properties": { "code": { "title": "Dwell code", "description": "Code of the dwell.\n\nIf wrong: there is no pause: the spindle is not up to speed when the cut begins.", "$ref": "#/$defs/codeOrNone", "examples": ["G4"] }, "word": { "title": "Dwell word", "description": "Letter of the time.\n\nIf wrong: the dwell alarms or is skipped; the spindle is not up to speed when the cut begins.", "$ref": "#/$defs/letter", "examples": ["P"] }, "unit": { "title": "Dwell unit", "description": "What a dwell is counted in: seconds, milliseconds, or revolutions of the spindle (rev). Under rev the time of a job becomes revolutions at the speed that is commanded there, rounded up, and no state can be confirmed by a dwell.\n\nUnit: s, ms or rev.\n\nIf wrong: 500 becomes 500 seconds, or 0.5 becomes nothing and the cut begins at low speed.", "type": "string", "enum": ["s", "ms", "rev"], "examples": ["s"] }, "blocks": { "title": "Block of a dwell", "description": "apart: a dwell has a block of its own; with-start: the one that follows a start of the spindle shares its block, on a control that starts before it dwells.\n\nIf wrong: the control dwells before it starts the spindle, or skips one of the two: the cut begins at low speed.", "type": "string", "enum": ["apart", "with-start"], "axes": [75], "examples": ["apart"] } }, "examples": [{ "code": "G4", "word": "P", "unit": "s" }] }, "compensation": { "title": "Cutter radius compensation", "description": "Words for compensation by the tool's radius, or none.", "anyOf": [{ "title": "None", "description": "The controller does not compensate.", "type": "string", "const": "none" }, { "type": "object", "additionalProperties": false, "properties": { "off": { "title": "Compensation off", "description": "Code that ends compensation.\n\nIf wrong: the next motion is offset by the radius.", "$ref": "#/$defs/codeOrNone", "examples": ["G40"] }, "left": { "title": "Compensation left", "description": "Code for the tool left of the contour.\n\nIf wrong: the contour is off by the tool's diameter.", "$ref": "#/$defs/codeOrNone", "examples": ["G41"] }, "right": { "title": "Compensation right", "description": "Code for the tool right of the contour.\n\nIf wrong: the contour is off by the tool's diameter.", "$ref": "#/$defs/codeOrNone", "examples": ["G42"] }, "word": { "title": "Radius offset word", "description": "Letter of the number of the radius offset, or none where the tool in the spindle decides.\n\nIf wrong: the radius of another tool acts.", "$ref": "#/$defs/letterOrNone", "examples": ["D"] }, "corner-feed": { "title": "Feed at inside corners", "description": "Codes that turn the slowing at inside corners on, where compensation begins, and off, where it has ended; or none.", "anyOf": [{ "title": "None", "description": "There are no words for it.", "type": "string", "const": "none" }, { "type": "object", "additionalProperties": false, "properties": { "on": { "title": "Slow at inside corners", "description": "Code that has the feed lowered at inside corners.\n\nIf wrong: the tool digs in at inside corners.", "$ref": "#/$defs/codeWithWordOrNone", "examples": ["G36"] }, "off": { "title": "Feed as stated", "description": "Code that ends the slowing.\n\nIf wrong: later contours are cut slower than meant.", "$ref": "#/$defs/codeWithWordOrNone", "examples": ["G37"] } } }], "axes": [78], "examples": ["none", { "on": "G36", "off": "G37" }] } } }], "examples": ["none", { "off": "G40", "left": "G41", "right": "G42", "word": "D" }] }, "length-offset": { "title": "Tool length offset", "description": "Words that make the length of the tool act, or none.", "anyOf": [{ "title": "None", "description": "No word makes a tool length act; the operator sets Z.", "type": "string", "const": "none" }, { "type": "object", "additionalProperties": false, "properties": { "on": { "title": "Length offset on", "description": "Code that makes a length offset act.\n\nIf wrong: the tool is driven into the work by its length.", "$ref": "#/$defs/codeOrNone", "examples": ["G43", "none"] }, "off": { "title": "Length offset off", "description": "Code that cancels it; or offset number 0 of its word, such as H0: the offset is then cancelled by its own code with that number (G43 H0).\n\nIf wrong: the length of the last tool still acts for the next one.", "type": "string", "pattern": "^(none|[A-Z]0|[GM]\\d{1,3}(\\.\\d)?)$", "examples": ["G49", "H0"] }, "word": { "title": "Length offset word", "description": "Letter of the number of the length offset.\n\nIf wrong: the length of another tool acts, and the tool is driven into the work.", "$ref": "#/$defs/letter", "examples": ["H"] }, "number": { "title": "Number of the length offset", "description": "tool: a tool has the length offset of its own number; free: any.\n\nIf wrong: another tool's length acts, and the tool is driven into the work.", "type": "string", "enum": ["tool", "free"], "examples": ["free"] }, "added": { "title": "Added to the number of the length offset", "description": "What is added to the number of a length offset when it is written, where the control keeps lengths behind other offsets of the same table: with 100, offset 3 is H103. Offset number 0 stays 0.\n\nUnit: offset number.\n\nIf wrong: another tool's length acts, and the tool is driven into the work.", "type": "integer", "minimum": 0, "maximum": 900, "examples": [0, 100] } } }], "examples": ["none", { "on": "G43", "off": "G49", "word": "H" }] }, "work-offset": { "title": "Work offsets", "description": "Codes of the work offsets 1 to 9 in order, or none. A number behind the end of the list cannot be said.\n\nIf wrong: the work is cut at the place of another set-up.", "anyOf": [{ "title": "None", "description": "There are no words for work offsets; the operator sets the origin.", "type": "string", "const": "none" }, { "type": "array", "minItems": 1, "maxItems": 9, "items": { "$ref": "#/$defs/codeWithWordOrNone" } }], "examples": ["none", ["G54", "G55", "G56", "G57", "G58", "G59"]] }, "machine-move": { "title": "Move in machine coordinates", "description": "Code for a move in machine coordinates, in the same block as the motion code, or none. It acts in its own block alone.\n\nIf wrong: the retract goes to a place in work coordinates: into the work, or past the travel.", "$ref": "#/$defs/codeWithWordOrNone", "examples": ["G53", "none"] }, "reference-return": { "title": "Return to the reference position", "description": "Code of the return to the reference position, or none.\n\nIf wrong: an intermediate point is taken for the target: a diagonal through the work.", "$ref": "#/$defs/codeWithWordOrNone", "examples": ["G28", "none"] }, "cancel": { "title": "Cancelling", "description": "Words that put an end to what an earlier program may have left in force.", "type": "object", "additionalProperties": false, "properties": { "cycles": { "title": "Cycles off", "description": "Code that ends fixed cycles.\n\nIf wrong: a hole is drilled at every place that follows.", "$ref": "#/$defs/codeOrNone", "examples": ["G80"] }, "local-shift": { "title": "Local shift off", "description": "Code that cancels a shift of the origin, or none.\n\nIf wrong: the work is cut at a shifted place.", "$ref": "#/$defs/codeOrNone", "examples": ["G92.2", "none"] }, "rotation": { "title": "Rotation off", "description": "Code that cancels a rotation, or none.\n\nIf wrong: the work is cut rotated.", "$ref": "#/$defs/codeOrNone", "examples": ["G69", "none"] }, "scale": { "title": "Scale off", "description": "Code that cancels scaling and mirroring, or none.\n\nIf wrong: the work is cut at another size or mirrored.", "$ref": "#/$defs/codeOrNone", "examples": ["G50", "none"] }, "overrides": { "title": "Overrides on", "description": "Code that makes the feed and speed overrides act, or none.\n\nIf wrong: the override knob is dead while the program is proved out.", "$ref": "#/$defs/codeOrNone", "examples": ["M48", "none"] }, "before-change": { "title": "Cancelling before a tool change", "description": "Whether compensation off and cycles off are said again before each swap of a tool, where the dialect has the words.\n\nIf wrong: the controller alarms at the change, since it takes compensation or a cycle as still on.", "$ref": "#/$defs/yesNo", "examples": ["no"] } }, "examples": [{ "cycles": "G80", "local-shift": "none", "rotation": "none", "scale": "none", "overrides": "M48" }] }, "cycles": { "title": "Fixed cycles", "description": "Codes of fixed cycles for holes and what goes with them, or none: every hole is written longhand.", "anyOf": [{ "title": "None", "description": "The controller has no fixed cycles.", "type": "string", "const": "none" }, { "type": "object", "additionalProperties": false, "properties": { "drill": { "title": "Drill", "description": "Feed in, rapid out, or none: it is written longhand.\n\nIf wrong: the hole has another depth, or the tool breaks on its way out.", "$ref": "#/$defs/codeOrNone", "examples": ["G81"] }, "dwell": { "title": "Drill with dwell", "description": "Feed in, dwell, rapid out, or none: it is written longhand.\n\nIf wrong: the hole has another depth, or the tool breaks on its way out.", "$ref": "#/$defs/codeOrNone", "examples": ["G82"] }, "peck": { "title": "Peck", "description": "Pecks with a rapid out of the hole after each, or none: it is written longhand.\n\nIf wrong: the hole has another depth, or the tool breaks on its way out.", "$ref": "#/$defs/codeOrNone", "examples": ["G83"] }, "chip-break": { "title": "Chip-breaking", "description": "Pecks with a small back-off, or none: it is written longhand.\n\nIf wrong: the hole has another depth, or the tool breaks on its way out.", "$ref": "#/$defs/codeOrNone", "examples": ["G73", "none"] }, "tap": { "title": "Tap right-hand", "description": "Feed in, reverse, feed out, or none: it is written longhand.\n\nIf wrong: the hole has another depth, or the tool breaks on its way out.", "$ref": "#/$defs/codeOrNone", "examples": ["G84"] }, "tap-left": { "title": "Tap left-hand", "description": "The same with a left-hand tap, or none: it is written longhand.\n\nIf wrong: the hole has another depth, or the tool breaks on its way out.", "$ref": "#/$defs/codeOrNone", "examples": ["G74", "none"] }, "ream": { "title": "Ream", "description": "Feed in, feed out, or none: it is written longhand.\n\nIf wrong: the hole has another depth, or the tool breaks on its way out.", "$ref": "#/$defs/codeOrNone", "examples": ["G85"] }, "bore-dwell": { "title": "Bore with dwell", "description": "Feed in, dwell, feed out, or none: it is written longhand.\n\nIf wrong: the hole has another depth, or the tool breaks on its way out.", "$ref": "#/$defs/codeOrNone", "examples": ["G89"] }, "bore-stop": { "title": "Bore with spindle stop", "description": "Feed in, dwell, spindle stop, rapid out, or none: it is written longhand.\n\nIf wrong: the hole has another depth, or the tool breaks on its way out.", "$ref": "#/$defs/codeOrNone", "examples": ["G86", "none"] }, "bore-manual": { "title": "Bore with manual retract", "description": "Feed in, dwell, spindle stop, program stop, or none: it is written longhand.\n\nIf wrong: the hole has another depth, or the tool breaks on its way out.", "$ref": "#/$defs/codeOrNone", "examples": ["G88", "none"] }, "return": { "title": "Level between holes", "description": "Words that choose the level to which the tool goes between holes.", "type": "object", "additionalProperties": false, "properties": { "initial": { "title": "Initial level", "description": "Code for the level at which the tool stood before the first hole, or none.\n\nIf wrong: the tool is dragged through a clamp between two holes.", "$ref": "#/$defs/codeOrNone", "examples": ["G98", "none"] }, "retract": { "title": "Retract level", "description": "Code for the retract level of the cycle, or none.\n\nIf wrong: the tool is dragged through a clamp between two holes.", "$ref": "#/$defs/codeOrNone", "examples": ["G99", "none"] }, "without": { "title": "Level without a word", "description": "The level between holes where there is no word, or none where both words are there.\n\nIf wrong: the tool is dragged through a clamp between two holes.", "type": "string", "enum": ["retract", "initial", "none"], "examples": ["none"] } }, "examples": [{ "initial": "G98", "retract": "G99", "without": "none" }] }, "back-off": { "title": "Back-off", "description": "How far the controller's own cycle backs off. A job that asks for another back-off is written longhand.", "type": "object", "additionalProperties": false, "properties": { "peck": { "title": "Back-off of pecks", "description": "How far above the last depth the rapid back into the hole ends.\n\nUnit: mm, or with `in`.\n\nIf wrong: the drill is driven into the bottom at rapid and breaks.", "$ref": "#/$defs/length", "examples": [0.254] }, "chip-break": { "title": "Back-off of chip-breaking", "description": "How far the drill is withdrawn between two pecks.\n\nUnit: mm, or with `in`.\n\nIf wrong: the chip does not break.", "$ref": "#/$defs/length", "examples": [0.254] } }, "examples": [{ "peck": 0.254, "chip-break": 0.254 }] }, "levels": { "title": "Depth and retract level", "description": "absolute: Z and R are coordinates; under incremental distances R counts from where the tool is, and Z from R (NISTIR 6556 3.5.16). relative: R counts from the initial level, and Z from R. from-initial: R and Z both count from the initial level. The last two hold under absolute distances, too.\n\nIf wrong: the depth is doubled, or the hole is drilled in the air.", "type": "string", "enum": ["absolute", "relative", "from-initial"], "examples": ["absolute"] }, "words": { "title": "Words of a cycle", "description": "Letters of the values of a cycle.", "type": "object", "additionalProperties": false, "properties": { "retract": { "title": "Retract level word", "description": "Letter of the retract level.\n\nIf wrong: feed begins at another height: a rapid into the work.", "$ref": "#/$defs/letter", "examples": ["R"] }, "peck": { "title": "Peck word", "description": "Letter of the depth of one peck.\n\nIf wrong: the hole is drilled in one go and the drill breaks.", "$ref": "#/$defs/letter", "examples": ["Q"] }, "back-off": { "title": "Back-off word", "description": "Letter of the back-off of pecks and chip-breaking, or none: the controller's own back-off holds (`cycles.back-off`).\n\nIf wrong: the drill is driven into the bottom at rapid and breaks, or the chip does not break.", "$ref": "#/$defs/letterOrNone", "examples": ["none", "K"] }, "dwell": { "title": "Dwell word", "description": "Letter of the dwell at depth.\n\nIf wrong: no dwell at depth, or a very long one.", "$ref": "#/$defs/letter", "examples": ["P"] }, "dwell-unit": { "title": "Unit of the dwell", "description": "What the dwell in a cycle is counted in: seconds, milliseconds, or revolutions of the spindle (rev), rounded up at the commanded speed.\n\nUnit: s, ms or rev.\n\nIf wrong: no dwell at depth, or a very long one.", "type": "string", "enum": ["s", "ms", "rev"], "examples": ["s"] }, "repeat": { "title": "Repeat word", "description": "Letter of how often the hole of a block is drilled, or none. Programs are written with it only to define a cycle without a hole (0).\n\nIf wrong: holes are missing, or one too many is drilled.", "$ref": "#/$defs/letterOrNone", "examples": ["none", "L"] } }, "examples": [{ "retract": "R", "peck": "Q", "dwell": "P", "dwell-unit": "s", "back-off": "none", "repeat": "none" }] }, "repeat": { "title": "Later holes", "description": "positions: later holes state their place alone; all: each states the words of the cycle again.\n\nIf wrong: later holes are missing or have another depth.", "type": "string", "enum": ["positions", "all"], "examples": ["positions"] }, "definition": { "title": "Definition of a cycle", "description": "with-first-hole: the block with the cycle's code states the first hole, too; apart: it states no place and drills nothing (with the repeat word 0 where there is one), and each hole follows in a block of its own.\n\nIf wrong: the first hole is missing, or one is drilled where the tool stands.", "type": "string", "enum": ["with-first-hole", "apart"], "examples": ["with-first-hole"] }, "positions": { "title": "Place of a hole", "description": "changed: a hole states X and Y where they differ; both: it always states both.\n\nIf wrong: a hole is missing, or drilled at X0 or Y0.", "type": "string", "enum": ["changed", "both"], "examples": ["changed"] }, "initial-level": { "title": "Initial level", "description": "Where the initial level is taken: before-series: the Z before the first hole behind a cancel code; current: the Z at each block with a cycle's code. A program always cancels one series before the next; this decides what one from elsewhere means.\n\nIf wrong: between holes the tool is dragged through a clamp.", "type": "string", "enum": ["before-series", "current"], "examples": ["before-series"] }, "axis": { "title": "Axis of a cycle", "description": "plane-normal: holes go along the normal of the plane in force; z: along Z in any plane, so that no plane word is needed before.\n\nIf wrong: the drill is driven sideways into the work.", "type": "string", "enum": ["plane-normal", "z"], "examples": ["plane-normal"] }, "tap-feed": { "title": "Feed word of a tap", "description": "feed-mode: F means what the feed mode says; lead: F in a tapping cycle is the lead of the thread, whatever the feed mode. It then needs `numbers.feed-per-revolution`, and the feed is stated anew behind the cycle.\n\nIf wrong: the tap breaks.", "type": "string", "enum": ["feed-mode", "lead"], "examples": ["feed-mode"] }, "tap-synchronised": { "title": "Synchronising code", "description": "Code that locks spindle and feed for the tapping cycle that follows, in a block of its own before it; none: the controller always does, or never.\n\nIf wrong: the tap breaks or strips the thread.", "$ref": "#/$defs/codeOrNone", "examples": ["none", "M29"] }, "ended-by": { "title": "End of a cycle", "description": "any-motion: a motion word ends the cycle, too; cancel-code: its own code alone. The code is always written; this decides what a program from elsewhere means.\n\nIf wrong: a hole is drilled at every place that follows.", "type": "string", "enum": ["any-motion", "cancel-code"], "examples": ["cancel-code"] } } }], "examples": ["none", { "drill": "G81", "peck": "G83", "return": { "initial": "G98", "retract": "G99", "without": "none" } }] }, "spindle": { "title": "Spindle", "description": "Words for the spindle.", "type": "object", "additionalProperties": false, "properties": { "cw": { "title": "Spindle clockwise", "description": "Code that starts the spindle clockwise, as for a right-hand tool.\n\nIf wrong: the spindle turns the wrong way and the tool breaks.", "$ref": "#/$defs/codeOrNone", "examples": ["M3"] }, "ccw": { "title": "Spindle counter-clockwise", "description": "Code that starts it counter-clockwise, or none.\n\nIf wrong: the spindle turns the wrong way and the tool breaks.", "$ref": "#/$defs/codeOrNone", "examples": ["M4", "none"] }, "stop": { "title": "Spindle stop", "description": "Code that stops the spindle.\n\nIf wrong: the spindle runs on into the swap or past the end of the program.", "$ref": "#/$defs/codeOrNone", "examples": ["M5"] }, "orient": { "title": "Spindle orientation", "description": "Code that stops the spindle at its swap angle, or none.\n\nIf wrong: the drive keys of the tool strike the rack.", "$ref": "#/$defs/codeWithWordOrNone", "examples": ["M19", "none"] }, "order": { "title": "Order of speed and start", "description": "speed-first: the S word before the start word; start-first: the start word before the S word. It holds in a block, whatever `blocks.order` says, and from block to block.\n\nIf wrong: the spindle starts at the last speed, or the speed is ignored.", "type": "string", "enum": ["speed-first", "start-first"], "examples": ["speed-first"] }, "blocks": { "title": "Speed and start in a block", "description": "together: one block; apart: one block each.\n\nIf wrong: one of the two is ignored.", "type": "string", "enum": ["together", "apart"], "examples": ["together"] }, "speed-unit": { "title": "Unit of the speed word", "description": "What S counts. rpm: revolutions a minute; percent: hundredths of `spindle.full-speed`, which the dialect then has to state. Its decimals are `numbers.speed`.\n\nIf wrong: the spindle runs at its highest speed where a low one was meant, or hardly turns.", "type": "string", "enum": ["rpm", "percent"], "examples": ["rpm"] }, "full-speed": { "title": "Speed at 100 percent", "description": "Speed that S100 asks for, where S counts percent. It stays what it is when `machine.spindle.max-rpm` is lowered to protect a tool or a bearing.\n\nUnit: rpm.\n\nIf wrong: the spindle turns faster or slower than every program says.", "type": "number", "exclusiveMinimum": 0, "maximum": 1e6, "examples": [24e3] }, "gears": { "title": "Gear ranges", "description": "Ranges of the spindle's gear that a code selects, or none. The first range that a speed lies in is selected, in a block of its own before the speed; a range changes only while the spindle stands.\n\nIf wrong: the speed ends at the top of the range in force, or the gear is shifted while it turns.", "anyOf": [{ "title": "None", "description": "One range, or the control shifts by itself.", "type": "string", "const": "none" }, { "type": "array", "minItems": 1, "maxItems": 6, "items": { "title": "Gear range", "description": "One range and its code.", "type": "object", "additionalProperties": false, "properties": { "code": { "title": "Code of the range", "description": "Code that selects it.\n\nIf wrong: another range is selected.", "type": "string", "pattern": "^M\\d{1,3}$", "examples": ["M41"] }, "from": { "title": "Lowest speed of the range", "description": "Lowest speed of the range.\n\nUnit: rpm.\n\nIf wrong: the motor stalls in the cut.", "type": "number", "minimum": 0, "maximum": 1e6, "examples": [100] }, "to": { "title": "Highest speed of the range", "description": "Highest speed of the range.\n\nUnit: rpm.\n\nIf wrong: the spindle runs slower than the feed is made for.", "type": "number", "exclusiveMinimum": 0, "maximum": 1e6, "examples": [4e3] } }, "examples": [{ "code": "M41", "from": 100, "to": 4e3 }] } }], "examples": ["none", [{ "code": "M41", "from": 100, "to": 4e3 }, { "code": "M42", "from": 4e3, "to": 12e3 }]] } }, "examples": [{ "cw": "M3", "ccw": "M4", "stop": "M5", "order": "speed-first", "blocks": "together" }] }, "coolant": { "title": "Coolant", "description": "Words for coolant and air.", "type": "object", "additionalProperties": false, "properties": { "mist": { "title": "Mist", "description": "Code that turns mist on, or none.\n\nIf wrong: the tool runs dry.", "$ref": "#/$defs/codeOrNone", "examples": ["M7", "none"] }, "flood": { "title": "Flood", "description": "Code that turns flood coolant on, or none.\n\nIf wrong: the tool runs dry.", "$ref": "#/$defs/codeOrNone", "examples": ["M8", "none"] }, "air": { "title": "Air", "description": "Code that turns air on, or none.\n\nIf wrong: chips stay in the cut.", "$ref": "#/$defs/codeOrNone", "examples": ["none"] }, "through-tool": { "title": "Coolant through the tool", "description": "Code that turns coolant through the tool on, or none.\n\nIf wrong: a deep hole is drilled dry.", "$ref": "#/$defs/codeOrNone", "examples": ["none"] }, "off": { "title": "All off", "description": "Code that turns all of them off, or a code for each medium that can be turned on.\n\nIf wrong: coolant runs during the swap, into the taper and the rack.", "anyOf": [{ "title": "One code for all", "description": "Turns all media off.", "$ref": "#/$defs/codeOrNone" }, { "type": "object", "additionalProperties": false, "properties": { "mist": { "title": "Mist off", "description": "Code that turns mist off, or none.\n\nIf wrong: mist runs on into the swap.", "$ref": "#/$defs/codeOrNone", "examples": ["M97"] }, "flood": { "title": "Flood off", "description": "Code that turns flood coolant off, or none.\n\nIf wrong: coolant runs on into the swap.", "$ref": "#/$defs/codeOrNone", "examples": ["M98"] }, "air": { "title": "Air off", "description": "Code that turns air off, or none.\n\nIf wrong: air blows chips into the rack.", "$ref": "#/$defs/codeOrNone", "examples": ["none"] }, "through-tool": { "title": "Coolant through the tool off", "description": "Code that turns coolant through the tool off, or none.\n\nIf wrong: coolant runs into the taper at the swap.", "$ref": "#/$defs/codeOrNone", "examples": ["none"] } } }], "examples": ["M9", { "mist": "M97", "flood": "M98" }] }, "blocks": { "title": "Coolant words in a block", "description": "apart: each in a block of its own; together: media that are turned on, or off, behind one another share a block, as far as `blocks.m-words` goes.\n\nIf wrong: only the last word of the block acts, or the block alarms.", "type": "string", "enum": ["apart", "together"], "examples": ["apart"] } }, "examples": [{ "mist": "M7", "flood": "M8", "air": "none", "through-tool": "none", "off": "M9", "blocks": "apart" }] }, "tools": { "title": "Tools", "description": "Words for selecting and changing tools.", "type": "object", "additionalProperties": false, "properties": { "change": { "title": "Tool change", "description": "Code of the controller's own tool change; with-tool-word: it has none, and the tool word alone changes the tool; none: it changes no tools.\n\nIf wrong: the tool is not changed, and the next operation runs with the last one; or the spindle's tool is put away where a word was only meant to say its number.", "type": "string", "pattern": "^(none|with-tool-word|[GM]\\d{1,3}(\\.\\d)?)$", "examples": ["M6", "with-tool-word", "none"] }, "blocks": { "title": "Selection and change in a block", "description": "together: T and the change code share a block; apart: one block each.\n\nIf wrong: the change takes the tool selected before.", "type": "string", "enum": ["together", "apart"], "examples": ["together"] }, "order": { "title": "Order of selection and change", "description": "select-first: T before the change code; change-first: the change code first.\n\nIf wrong: the change takes the tool selected before.", "type": "string", "enum": ["select-first", "change-first"], "examples": ["select-first"] }, "preselect": { "title": "Preselection", "description": "Whether the next tool is selected right after each change, so that the changer gets it ready.\n\nIf wrong: the changer takes the wrong tool at the next change.", "$ref": "#/$defs/yesNo", "examples": ["no"] }, "in-operator-swap": { "title": "Tool word in a swap by the operator", "description": "Whether the tool word stands before the stop at which the operator changes the tool. Without it the message to the operator alone says which tool that is, so that the dialect needs `idioms.message`.\n\nIf wrong: the controller alarms at a tool it does not know, or starts a changer that is not there.", "$ref": "#/$defs/yesNo", "examples": ["yes"] }, "empty": { "title": "Tool word of an empty spindle", "description": "Number of the tool word with which the controller's own change leaves the spindle empty; the program then ends with that change. none: the last tool stays in the spindle.\n\nUnit: tool number.\n\nIf wrong: the last tool stays in the spindle where the next program expects none, or a tool of that number is put in.", "anyOf": [{ "title": "None", "description": "The last tool stays in the spindle.", "type": "string", "const": "none" }, { "type": "integer", "minimum": 0, "maximum": 9999 }], "examples": ["none", 0] } }, "examples": [{ "change": "M6", "blocks": "together", "order": "select-first", "preselect": "no" }] }, "stops": { "title": "Stops and end", "description": "Words that stop and end the program.", "type": "object", "additionalProperties": false, "properties": { "stop": { "title": "Program stop", "description": "Code of a stop that the operator ends.\n\nIf wrong: the program runs on while a hand is in the machine.", "$ref": "#/$defs/codeOrNone", "examples": ["M0"] }, "optional": { "title": "Optional stop", "description": "Code of a stop that acts when its switch is on, or none. A code behind a block delete mark, such as /M0 or /2 M0, is a stop that acts while that switch is off.\n\nIf wrong: the program runs on although a check was meant.", "$ref": "#/$defs/optionalStop", "examples": ["M1", "none", "/M0", "/2 M0"] }, "end": { "title": "End of program", "description": "Code of the end of the program.\n\nIf wrong: the controller alarms, does not rewind, or moves a pallet.", "$ref": "#/$defs/codeOrNone", "examples": ["M30", "M2"] }, "comment": { "title": "Message of a stop", "description": "Where the message stands that says what a stop is for. own-block: in a block of its own before the stop; with-stop: in the block of the stop, behind its code. Of a message that takes several comments the last one stands there, the others in blocks before it.\n\nIf wrong: the message is gone from the screen while the program stands, and the operator does not see what to do.", "type": "string", "enum": ["own-block", "with-stop"], "examples": ["own-block"] }, "resume": { "title": "Modes behind a stop", "description": "What is in force when the operator starts the program again after a stop. keeps-modes: what was in force before; loses-modes: nothing is certain, so that the program states all its modes anew before anything moves, and its offsets before the approach.\n\nIf wrong: the program goes on in inches, in increments or in another work offset.", "type": "string", "enum": ["keeps-modes", "loses-modes"], "examples": ["keeps-modes"] }, "end-resets": { "title": "Modes at the end", "description": "Whether the end of the program puts the modes back by itself. no: the program states feed per minute, the XY plane, compensation off, absolute distances and cycles off before its end, each where there is a word for it, and the work offset where a machine move has suspended it (`motion.machine-move-lasts`).\n\nIf wrong: the next program, or what the operator types in, runs in increments or in another plane.", "$ref": "#/$defs/yesNo", "examples": ["yes"] } }, "examples": [{ "stop": "M0", "optional": "M1", "end": "M30", "comment": "own-block", "resume": "keeps-modes", "end-resets": "yes" }] }, "wait": { "title": "Values of a wait", "description": "Numbers that a wait on a signal says.", "type": "object", "additionalProperties": false, "properties": { "on": { "title": "Level on", "description": "Number for a signal that is on.\n\nUnit: number of the level word.\n\nIf wrong: the wait is over at once, whatever the machine does.", "type": "integer", "minimum": 0, "maximum": 9999, "examples": [1] }, "off": { "title": "Level off", "description": "Number for a signal that is off.\n\nUnit: number of the level word.\n\nIf wrong: the wait is over at once, whatever the machine does.", "type": "integer", "minimum": 0, "maximum": 9999, "examples": [0] }, "timeout-unit": { "title": "Unit of the timeout", "description": "What the timeout is counted in.\n\nUnit: s or ms.\n\nIf wrong: the wait gives up at once, or hangs for minutes with the fault unseen.", "type": "string", "enum": ["s", "ms"], "examples": ["s"] } }, "examples": [{ "on": 1, "off": 0, "timeout-unit": "s" }] }, "codes": { "title": "Codes of the builder", "description": "What further codes do that a program from elsewhere may hold: what they are for, and their effects. They are read, not written.", "type": "object", "additionalProperties": false, "patternProperties": { "^[GM]\\d{1,3}$": { "title": "One code", "description": "A code with no meaning of its own in the standards, and what it leaves behind.", "type": "object", "additionalProperties": false, "properties": { "does": { "title": "What it does", "description": "In words, for findings and the set-up sheet.\n\nIf wrong: the operator does not know what is switched.", "type": "string", "minLength": 1, "maxLength": 120, "examples": ["chip conveyor on"] }, "position": { "title": "Effect on the position", "description": "unchanged: the axes end where they were; unknown: they may be anywhere, so that the program states them anew; swap-height: Z ends at the swap height.\n\nIf wrong: the next approach starts from a place that nobody knows.", "type": "string", "enum": ["unchanged", "unknown", "swap-height"], "examples": ["unchanged"] }, "spindle": { "title": "Effect on the spindle", "description": "unchanged, or stopped.\n\nIf wrong: the spindle is thought to stand while it turns.", "type": "string", "enum": ["unchanged", "stopped"], "examples": ["stopped"] }, "coolant": { "title": "Effect on coolant", "description": "unchanged, or off.\n\nIf wrong: coolant is missing, or runs into the taper.", "type": "string", "enum": ["unchanged", "off"], "examples": ["unchanged"] }, "length-offset": { "title": "Effect on the length offset", "description": "unchanged; active: the length of the new tool acts; cancelled: none acts.\n\nIf wrong: the tool is driven into the work by its length.", "type": "string", "enum": ["unchanged", "active", "cancelled"], "examples": ["unchanged"] } }, "examples": [{ "does": "chip conveyor on", "position": "unchanged", "spindle": "unchanged", "coolant": "unchanged", "length-offset": "unchanged" }] } }, "examples": [{ "M27": { "does": "chip conveyor on", "position": "unchanged", "spindle": "unchanged", "coolant": "unchanged", "length-offset": "unchanged" } }] }, "idioms": { "title": "Idioms", "description": "How this controller says one action: literal words and {{name}} for the whole number of a word. One code each; beside it may stand P Q R L E I J K.", "type": "object", "additionalProperties": false, "properties": { "message": { "title": "Message to the operator", "description": "A whole comment with a mark of its own, so that a message is told from a remark, or none. It may name {{text}} (must).\n\nIf wrong: the operator does not see what is asked of them.", "$ref": "#/$defs/template", "examples": ["(MSG, {{text}})"] }, "header": { "title": "Header lines", "description": "Comment lines at the head of the program, in place of its name and the dialect. What is assumed and the caution stand in every header. Each entry is a line, or with {{#each tools}}, {{#each operations}} or {{#each assumptions}} around it one for each of them. Lines name {{program}}, {{number}}, {{dialect}} and {{units}}; within tools {{number}}, {{description}}, {{diameter}} and {{lengthOffset}}, within operations {{id}} and {{name}}, within assumptions {{text}}.\n\nIf wrong: the transfer is refused, or the operator cannot tell one program from another.", "anyOf": [{ "title": "None", "description": "No lines of the dialect's own.", "type": "string", "const": "none" }, { "type": "array", "minItems": 1, "maxItems": 40, "items": { "type": "string", "minLength": 1, "maxLength": 160 } }], "examples": [["{{program}} FOR {{dialect}}", "{{#each tools}}T{{number}} {{description}} D{{diameter}} H{{lengthOffset}}{{/each}}"]] }, "footer": { "title": "Footer lines", "description": "Comment lines behind the last block. Each entry is a line, or with {{#each tools}}, {{#each operations}} or {{#each assumptions}} around it one for each of them. Lines name {{program}}, {{number}}, {{dialect}} and {{units}}; within tools {{number}}, {{description}}, {{diameter}} and {{lengthOffset}}, within operations {{id}} and {{name}}, within assumptions {{text}}.\n\nIf wrong: the transfer is refused, or blocks are looked for behind the end.", "anyOf": [{ "title": "None", "description": "No lines of the dialect's own.", "type": "string", "const": "none" }, { "type": "array", "minItems": 1, "maxItems": 40, "items": { "type": "string", "minLength": 1, "maxLength": 160 } }], "examples": [["{{program}} FOR {{dialect}}", "{{#each tools}}T{{number}} {{description}} D{{diameter}} H{{lengthOffset}}{{/each}}"]] }, "wait-signal": { "title": "Wait on a signal", "description": "Waits until an input has a level, or none. It may name {{signal}} (must), {{level}} (without it every signal is waited for until it is on) and {{timeout}} (without it the wait lasts for ever).\n\nIf wrong: the program does not wait: the tool cuts before the spindle is up to speed, or swaps while it turns.", "$ref": "#/$defs/template", "examples": ["M94 P{{signal}} R{{level}} Q{{timeout}}"] }, "output-on": { "title": "Output on", "description": "Switches an output on, or none. It may name {{output}} (must).\n\nIf wrong: another output is switched.", "$ref": "#/$defs/template", "examples": ["M95 P{{output}}"] }, "output-off": { "title": "Output off", "description": "Switches an output off, or none. It may name {{output}} (must).\n\nIf wrong: another output is switched.", "$ref": "#/$defs/template", "examples": ["M96 P{{output}}"] }, "release": { "title": "Release the tool", "description": "Opens the drawbar, or none. It names no value.\n\nIf wrong: the tool drops, or is pulled out of the rack with its fork.", "$ref": "#/$defs/template", "examples": ["M21"] }, "clamp": { "title": "Clamp the tool", "description": "Closes the drawbar, or none. It names no value.\n\nIf wrong: the spindle starts with a loose tool.", "$ref": "#/$defs/template", "examples": ["M22"] }, "taper-air-on": { "title": "Taper air on", "description": "Blows the taper clean, or none. It names no value.\n\nIf wrong: a chip between taper and holder: the tool runs out.", "$ref": "#/$defs/template", "examples": ["M25"] }, "taper-air-off": { "title": "Taper air off", "description": "Ends it, or none. It names no value.\n\nIf wrong: air blows on during the cut.", "$ref": "#/$defs/template", "examples": ["M26"] }, "cover-open": { "title": "Open the rack's cover", "description": "Opens the cover of the rack, or none. It names no value.\n\nIf wrong: the spindle is driven into the cover.", "$ref": "#/$defs/template", "examples": ["M27"] }, "cover-close": { "title": "Close the rack's cover", "description": "Closes the cover of the rack, or none. It names no value.\n\nIf wrong: chips fill the pockets.", "$ref": "#/$defs/template", "examples": ["M28"] }, "hood-up": { "title": "Dust hood up", "description": "Lifts the dust hood, or none. It names no value.\n\nIf wrong: the hood is driven into the rack or the clamps.", "$ref": "#/$defs/template", "examples": ["M23"] }, "hood-down": { "title": "Dust hood down", "description": "Lowers the dust hood, or none. It names no value.\n\nIf wrong: dust is not drawn off.", "$ref": "#/$defs/template", "examples": ["M24"] }, "measure": { "title": "Measure the tool", "description": "Has the controller measure the tool's length and make it its length offset, or none. It names no value.\n\nIf wrong: the length of the last measurement acts.", "$ref": "#/$defs/template", "examples": ["M29"] } }, "examples": [{ "wait-signal": "M94 P{{signal}} R{{level}} Q{{timeout}}", "release": "M21", "clamp": "M22" }] }, "machine": { "title": "Machine", "description": "Facts of this machine, in its own leaf. A key is needed when a job needs it.", "type": "object", "additionalProperties": false, "properties": { "travel": { "title": "Travel", "description": "Where each axis can go, machine coordinates. Rotary axes are allowed only where they stand here.", "type": "object", "additionalProperties": false, "properties": { "x": { "title": "Travel of X", "description": "Least and greatest place of X in machine coordinates.\n\nUnit: mm, or with `in`.\n\nIf wrong: the axis runs onto its limit switch in the middle of the program.", "type": "array", "minItems": 2, "maxItems": 2, "items": { "$ref": "#/$defs/length" }, "examples": [[0, 1220]] }, "y": { "title": "Travel of Y", "description": "Least and greatest place of Y in machine coordinates.\n\nUnit: mm, or with `in`.\n\nIf wrong: the axis runs onto its limit switch in the middle of the program.", "type": "array", "minItems": 2, "maxItems": 2, "items": { "$ref": "#/$defs/length" }, "examples": [[0, 1220]] }, "z": { "title": "Travel of Z", "description": "Least and greatest place of Z in machine coordinates.\n\nUnit: mm, or with `in`.\n\nIf wrong: the axis runs onto its limit switch in the middle of the program.", "type": "array", "minItems": 2, "maxItems": 2, "items": { "$ref": "#/$defs/length" }, "examples": [[0, 1220]] }, "a": { "title": "Travel of A", "description": "Least and greatest place of A in machine coordinates.\n\nUnit: degrees.\n\nIf wrong: the axis runs onto its limit switch in the middle of the program.", "type": "array", "minItems": 2, "maxItems": 2, "items": { "type": "number", "minimum": -36e6, "maximum": 36e6 }, "examples": [[-360, 360]] }, "b": { "title": "Travel of B", "description": "Least and greatest place of B in machine coordinates.\n\nUnit: degrees.\n\nIf wrong: the axis runs onto its limit switch in the middle of the program.", "type": "array", "minItems": 2, "maxItems": 2, "items": { "type": "number", "minimum": -36e6, "maximum": 36e6 }, "examples": [[-360, 360]] }, "c": { "title": "Travel of C", "description": "Least and greatest place of C in machine coordinates.\n\nUnit: degrees.\n\nIf wrong: the axis runs onto its limit switch in the middle of the program.", "type": "array", "minItems": 2, "maxItems": 2, "items": { "type": "number", "minimum": -36e6, "maximum": 36e6 }, "examples": [[-360, 360]] } }, "examples": [{ "x": [0, 1220], "y": [0, 810], "z": [-95, 0] }] }, "spindle": { "title": "Spindle of the machine", "description": "What the spindle and its drive can do.", "type": "object", "additionalProperties": false, "properties": { "min-rpm": { "title": "Lowest speed", "description": "Lowest speed that the spindle may run at.\n\nUnit: rpm.\n\nIf wrong: the spindle overheats, or does not turn.", "type": "number", "minimum": 0, "maximum": 1e6, "examples": [6e3] }, "max-rpm": { "title": "Highest speed", "description": "Highest speed.\n\nUnit: rpm.\n\nIf wrong: the speed is cut without a word and the feed is too fast for it.", "type": "number", "exclusiveMinimum": 0, "maximum": 1e6, "examples": [24e3] }, "spin-up": { "title": "Time to come up to speed", "description": "Time from standstill to the highest speed.\n\nUnit: s, ms or min, written behind the number.\n\nIf wrong: the tool cuts before the spindle is up to speed.", "$ref": "#/$defs/time", "examples": ["6 s"] }, "spin-down": { "title": "Time to stop", "description": "Time from the highest speed to standstill by the drive.\n\nUnit: s, ms or min, written behind the number.\n\nIf wrong: the tool is swapped while the spindle turns.", "$ref": "#/$defs/time", "examples": ["6 s"] }, "coast-down": { "title": "Time to coast down", "description": "The same in free run, with the drive tripped.\n\nUnit: s, ms or min, written behind the number.\n\nIf wrong: the tool is swapped, or a hand is in the machine, while the spindle turns.", "$ref": "#/$defs/time", "examples": ["25 s"] }, "orient": { "title": "Orientation before a swap", "description": "Whether the spindle must be oriented before a swap.\n\nIf wrong: the drive keys of the tool strike the rack.", "$ref": "#/$defs/yesNo", "examples": ["no"] } }, "examples": [{ "min-rpm": 6e3, "max-rpm": 24e3, "spin-up": "6 s", "spin-down": "6 s", "coast-down": "25 s" }] }, "signals": { "title": "Signals", "description": "Inputs that the program can wait on.", "type": "object", "additionalProperties": false, "properties": { "at-speed": { "title": "At speed", "description": "The drive reports that the spindle is at its speed: the number of its input where it is on in that state, or a mapping.\n\nUnit: number of the input.\n\nIf wrong: the tool cuts before the spindle is up to speed.", "anyOf": [{ "type": "integer", "minimum": 0, "maximum": 9999 }, { "$ref": "#/$defs/signal" }], "examples": [{ "input": 4, "settle": "0.3 s" }] }, "stopped": { "title": "Stopped", "description": "The drive or a sensor reports standstill: the number of its input where it is on in that state, or a mapping.\n\nUnit: number of the input.\n\nIf wrong: the tool is swapped while the spindle turns.", "anyOf": [{ "type": "integer", "minimum": 0, "maximum": 9999 }, { "$ref": "#/$defs/signal" }], "examples": [5] }, "released": { "title": "Released", "description": "The drawbar is open: the number of its input where it is on in that state, or a mapping.\n\nUnit: number of the input.\n\nIf wrong: the holder is torn out of its pocket.", "anyOf": [{ "type": "integer", "minimum": 0, "maximum": 9999 }, { "$ref": "#/$defs/signal" }], "examples": [8] }, "clamped": { "title": "Clamped", "description": "The drawbar is closed with a tool in it: the number of its input where it is on in that state, or a mapping.\n\nUnit: number of the input.\n\nIf wrong: the spindle starts with a loose tool.", "anyOf": [{ "type": "integer", "minimum": 0, "maximum": 9999 }, { "$ref": "#/$defs/signal" }], "examples": [7] }, "tool-present": { "title": "Tool present", "description": "A tool is in the spindle: the number of its input where it is on in that state, or a mapping.\n\nUnit: number of the input.\n\nIf wrong: the program goes on without a tool.", "anyOf": [{ "type": "integer", "minimum": 0, "maximum": 9999 }, { "$ref": "#/$defs/signal" }], "examples": [9] }, "air": { "title": "Air pressure", "description": "There is enough air to work the drawbar: the number of its input where it is on in that state, or a mapping.\n\nUnit: number of the input.\n\nIf wrong: the drawbar opens halfway and the tool drops.", "anyOf": [{ "type": "integer", "minimum": 0, "maximum": 9999 }, { "$ref": "#/$defs/signal" }], "examples": [6] }, "hold-down": { "title": "Hold-down", "description": "Vacuum or clamps hold the work: the number of its input where it is on in that state, or a mapping.\n\nUnit: number of the input.\n\nIf wrong: the work comes loose in the cut.", "anyOf": [{ "type": "integer", "minimum": 0, "maximum": 9999 }, { "$ref": "#/$defs/signal" }], "examples": [10] } }, "examples": [{ "at-speed": { "input": 4, "settle": "0.3 s" }, "stopped": 5 }] }, "waits": { "title": "Waits", "description": "What a wait does when its time is up.", "type": "object", "additionalProperties": false, "properties": { "on-timeout": { "title": "On timeout", "description": "alarm: the program stops; continues: it goes on as if the signal had come, so that such a wait confirms nothing.\n\nIf wrong: a fault of the spindle or the air goes unseen and the program runs on.", "type": "string", "enum": ["alarm", "continues"], "examples": ["alarm"] } }, "examples": [{ "on-timeout": "alarm" }] }, "swap": { "title": "Swap style", "description": "controller: the controller changes tools by itself; rack: the program drives to the pockets and works the drawbar; operator: the program stops and asks for the tool; none: one tool a program, which is in the spindle before it starts.\n\nIf wrong: the program waits for a change that never comes, or drives to a rack that is not there.", "type": "string", "enum": ["controller", "rack", "operator", "none"], "examples": ["rack"] }, "change-effects": { "title": "Effects of the tool change", "description": "What the controller's own tool change does besides changing the tool. Needed where `swap` is controller.", "type": "object", "additionalProperties": false, "properties": { "position": { "title": "Effect on the position", "description": "unchanged: the axes end where they were; unknown: they may be anywhere, so that the program states them anew; swap-height: Z ends at the swap height.\n\nIf wrong: the next approach starts from a place that nobody knows.", "type": "string", "enum": ["unchanged", "unknown", "swap-height"], "examples": ["unchanged"] }, "spindle": { "title": "Effect on the spindle", "description": "unchanged; stopped; restarts: the control starts the spindle again behind the change, at a speed that nobody knows, so that the program stops it at once and confirms that.\n\nIf wrong: the spindle is thought to stand while it turns.", "type": "string", "enum": ["unchanged", "stopped", "restarts"], "examples": ["stopped"] }, "coolant": { "title": "Effect on coolant", "description": "unchanged, or off.\n\nIf wrong: coolant is missing, or runs into the taper.", "type": "string", "enum": ["unchanged", "off"], "examples": ["unchanged"] }, "length-offset": { "title": "Effect on the length offset", "description": "unchanged; active: the length of the new tool acts; cancelled: none acts.\n\nIf wrong: the tool is driven into the work by its length.", "type": "string", "enum": ["unchanged", "active", "cancelled"], "examples": ["unchanged"] } }, "examples": [{ "position": "unchanged", "spindle": "stopped", "coolant": "unchanged", "length-offset": "unchanged" }] }, "measure-effects": { "title": "Effects of measuring", "description": "What the controller's measurement of a tool does. Needed where `lengths` is measured.", "type": "object", "additionalProperties": false, "properties": { "position": { "title": "Effect on the position", "description": "unchanged: the axes end where they were; unknown: they may be anywhere, so that the program states them anew; swap-height: Z ends at the swap height.\n\nIf wrong: the next approach starts from a place that nobody knows.", "type": "string", "enum": ["unchanged", "unknown", "swap-height"], "examples": ["unchanged"] }, "spindle": { "title": "Effect on the spindle", "description": "unchanged, or stopped.\n\nIf wrong: the spindle is thought to stand while it turns.", "type": "string", "enum": ["unchanged", "stopped"], "examples": ["stopped"] }, "coolant": { "title": "Effect on coolant", "description": "unchanged, or off.\n\nIf wrong: coolant is missing, or runs into the taper.", "type": "string", "enum": ["unchanged", "off"], "examples": ["unchanged"] }, "length-offset": { "title": "Effect on the length offset", "description": "unchanged; active: the length of the new tool acts; cancelled: none acts.\n\nIf wrong: the tool is driven into the work by its length.", "type": "string", "enum": ["unchanged", "active", "cancelled"], "examples": ["unchanged"] } }, "examples": [{ "position": "unknown", "spindle": "stopped", "coolant": "unchanged", "length-offset": "active" }] }, "retract": { "title": "Retract to swap height", "description": "How Z goes up to the swap height.", "type": "object", "additionalProperties": false, "properties": { "by": { "title": "Retract by", "description": "machine-move: a rapid in machine coordinates; reference-return: the return to the reference position; clearance: the clearance of the job (operator swaps only).\n\nIf wrong: the tool is dragged across the work, or driven past the travel.", "type": "string", "enum": ["machine-move", "reference-return", "clearance"], "examples": ["machine-move"] }, "z": { "title": "Swap height", "description": "Z of the swap height in machine coordinates, with machine-move.\n\nUnit: mm, or with `in`.\n\nIf wrong: Z does not clear the work, or runs onto its limit switch.", "$ref": "#/$defs/length", "examples": [0] }, "acts-on": { "title": "What it moves", "description": "spindle-nose: machine coordinates are those of the spindle; tool-tip: an active length offset counts, too.\n\nIf wrong: Z stands lower by the tool's length than meant.", "type": "string", "enum": ["spindle-nose", "tool-tip"], "examples": ["spindle-nose"] }, "cancel-length-first": { "title": "Cancel the length offset first", "description": "Whether the length offset must be cancelled before it.\n\nIf wrong: the controller alarms, or the tool runs past the travel by its length.", "$ref": "#/$defs/yesNo", "examples": ["no"] }, "intermediate": { "title": "Intermediate point", "description": "incremental-zero: a reference return has an intermediate point, given as zero increments; none: it has none.\n\nIf wrong: the intermediate point is taken for a target: a diagonal through the work.", "type": "string", "enum": ["none", "incremental-zero"], "examples": ["none"] }, "change-position": { "title": "Change position", "description": "Where the operator changes tools, with retract by clearance; work coordinates.\n\nUnit: mm, or with `in`.\n\nIf wrong: the operator reaches between tool and work to change it.", "$ref": "#/$defs/place", "examples": [[0, 0, 120]] } }, "examples": [{ "by": "machine-move", "z": 0, "acts-on": "spindle-nose", "cancel-length-first": "no", "intermediate": "none" }] }, "length-offset": { "title": "Length offset at the machine", "description": "How the tool's length comes to act.", "type": "object", "additionalProperties": false, "properties": { "form": { "title": "Form", "description": "with-first-z: in the block of the first Z motion; own-block: in a block of its own before it; in-tool-word: with the tool word; none: there is no length offset, the operator sets Z.\n\nIf wrong: the tool is driven into the work by its length.", "type": "string", "enum": ["with-first-z", "own-block", "in-tool-word", "none"], "examples": ["with-first-z"] }, "select-moves": { "title": "Selecting moves Z", "description": "Whether selecting it moves the axis by itself.\n\nIf wrong: Z moves where nobody meant it to.", "$ref": "#/$defs/yesNo", "examples": ["no"] }, "cancel-moves": { "title": "Cancelling moves Z", "description": "Whether cancelling it moves the axis by itself. It is then cancelled at swap height only.\n\nIf wrong: Z moves down by the tool's length.", "$ref": "#/$defs/yesNo", "examples": ["no"] } }, "examples": [{ "form": "with-first-z", "select-moves": "no", "cancel-moves": "no" }] }, "lengths": { "title": "Tool lengths", "description": "Where they come from: table, the controller's tool table; measured, a measurement after each swap; operator, set by hand.\n\nIf wrong: the tool is driven into the work by the difference.", "type": "string", "enum": ["table", "measured", "operator"], "examples": ["table"] }, "drawbar": { "title": "Drawbar", "description": "How the drawbar is worked at a rack, or none.", "anyOf": [{ "title": "None", "description": "There is no drawbar that the program works.", "type": "string", "const": "none" }, { "type": "object", "additionalProperties": false, "properties": { "travels": { "title": "Travel of an empty spindle", "description": "Whether an empty spindle travels along the rack clamped or released.\n\nIf wrong: the released drawbar strikes a holder, or the clamped one is pressed onto it.", "type": "string", "enum": ["clamped", "released"], "examples": ["clamped"] }, "taper-air": { "title": "Taper air", "description": "Whether air cleans the taper while a tool is picked.\n\nIf wrong: a chip between taper and holder: the tool runs out.", "$ref": "#/$defs/yesNo", "examples": ["no"] } } }], "examples": ["none", { "travels": "clamped", "taper-air": "no" }] }, "rack": { "title": "Rack", "description": "Where tools wait and how they are fetched, or none.", "anyOf": [{ "title": "None", "description": "There is no rack that the program drives to.", "type": "string", "const": "none" }, { "type": "object", "additionalProperties": false, "properties": { "style": { "title": "Style of the rack", "description": "drop-in: the holder is let down into its pocket from above; slide-in: it is slid into a fork from the side.\n\nIf wrong: the spindle is driven into the rack.", "type": "string", "enum": ["drop-in", "slide-in"], "examples": ["drop-in"] }, "clear-z": { "title": "Clear height", "description": "Machine Z at which an empty spindle clears the tools in the rack, and a full one the empty pockets.\n\nUnit: mm, or with `in`.\n\nIf wrong: the tool is dragged through the rack.", "$ref": "#/$defs/length", "examples": [-5] }, "pocket-z": { "title": "Pocket height", "description": "Machine Z at which the holder sits in its pocket.\n\nUnit: mm, or with `in`.\n\nIf wrong: the holder is crushed into the rack, or drops.", "$ref": "#/$defs/length", "examples": [-78.4] }, "descend-from": { "title": "Start of the slow descent", "description": "How far above the pocket height the descent at feed begins.\n\nUnit: mm, or with `in`.\n\nIf wrong: the holder is driven into its pocket at rapid.", "$ref": "#/$defs/length", "examples": [20] }, "descend-feed": { "title": "Feed of the slow descent", "description": "Feed of the last part of the way down.\n\nUnit: mm/min, or with `in/min`.\n\nIf wrong: the holder is driven into its pocket too fast.", "$ref": "#/$defs/feed", "examples": [600] }, "pockets": { "title": "Pockets", "description": "Places of the pockets, machine coordinates: the first one, the pitch to the next and their number, or a list of places.\n\nIf wrong: the spindle is driven beside the pocket.", "anyOf": [{ "type": "object", "additionalProperties": false, "properties": { "first": { "title": "First pocket", "description": "X and Y of pocket 1.\n\nUnit: mm, or with `in`.\n\nIf wrong: the spindle is driven beside the pocket.", "$ref": "#/$defs/point", "examples": [[40, 20]] }, "pitch": { "title": "Pitch", "description": "X and Y from one pocket to the next.\n\nUnit: mm, or with `in`.\n\nIf wrong: the spindle is driven beside the pocket, farther with each one.", "$ref": "#/$defs/point", "examples": [[80, 0]] }, "count": { "title": "Number of pockets", "description": "How many there are.\n\nUnit: pockets.\n\nIf wrong: the spindle is driven past the end of the rack.", "type": "integer", "minimum": 1, "maximum": 200, "examples": [6] } } }, { "type": "array", "minItems": 1, "maxItems": 200, "items": { "$ref": "#/$defs/point" } }], "examples": [{ "first": [40, 20], "pitch": [80, 0], "count": 6 }, [[40, 20], [120, 20]]] }, "zone": { "title": "Rack zone", "description": "Box that only swaps enter.", "type": "object", "additionalProperties": false, "properties": { "min": { "title": "Least corner", "description": "Least X, Y and Z of the rack, machine coordinates.\n\nUnit: mm, or with `in`.\n\nIf wrong: the tool is driven into it.", "$ref": "#/$defs/place", "examples": [[0, 0, -95]] }, "max": { "title": "Greatest corner", "description": "Greatest X, Y and Z of the rack, machine coordinates.\n\nUnit: mm, or with `in`.\n\nIf wrong: the tool is driven into it.", "$ref": "#/$defs/place", "examples": [[500, 60, -5]] } }, "examples": [{ "min": [0, 0, -95], "max": [500, 60, -5] }] }, "slide": { "title": "Slide", "description": "The way into a fork, with slide-in.", "type": "object", "additionalProperties": false, "properties": { "direction": { "title": "Direction of the slide", "description": "Direction from the approach into the pocket.\n\nIf wrong: the holder is torn out of the fork.", "type": "string", "enum": ["+x", "-x", "+y", "-y"], "examples": ["+y"] }, "distance": { "title": "Length of the slide", "description": "Distance from the approach to the pocket.\n\nUnit: mm, or with `in`.\n\nIf wrong: the holder strikes the fork on its way up or down.", "$ref": "#/$defs/length", "examples": [40] }, "feed": { "title": "Feed of the slide", "description": "Feed of the slide.\n\nUnit: mm/min, or with `in/min`.\n\nIf wrong: the holder strikes the fork too fast.", "$ref": "#/$defs/feed", "examples": [1e3] } }, "examples": [{ "direction": "+y", "distance": 40, "feed": 1e3 }] }, "widest": { "title": "Widest tool", "description": "Widest tool that a pocket takes, or none: not checked.\n\nUnit: mm, or with `in`.\n\nIf wrong: a wide tool strikes its neighbour.", "$ref": "#/$defs/lengthOrNone", "examples": [60] }, "longest": { "title": "Longest tool", "description": "Longest tool that a pocket takes, or none: not checked.\n\nUnit: mm, or with `in`.\n\nIf wrong: a long tool strikes the table under the rack.", "$ref": "#/$defs/lengthOrNone", "examples": [90] }, "cover": { "title": "Cover", "description": "Whether the program opens and closes a cover.\n\nIf wrong: the spindle is driven into the cover.", "$ref": "#/$defs/yesNo", "examples": ["no"] }, "at-end": { "title": "At the end", "description": "What becomes of the last tool.", "type": "object", "additionalProperties": false, "properties": { "tool": { "title": "Last tool", "description": "return: it goes back to its pocket; keep: it stays in the spindle.\n\nIf wrong: the next program finds a tool where it expects none.", "type": "string", "enum": ["return", "keep"], "examples": ["return"] } }, "examples": [{ "tool": "return" }] } } }], "examples": ["none", { "style": "drop-in", "clear-z": -5, "pocket-z": -78.4, "descend-from": 20, "descend-feed": 600, "pockets": { "first": [40, 20], "pitch": [80, 0], "count": 6 }, "at-end": { "tool": "return" } }] }, "park": { "title": "Parking place", "description": "X and Y where the program leaves the axes at its end, machine coordinates.\n\nUnit: mm, or with `in`.\n\nIf wrong: the spindle is in the way of unloading.", "$ref": "#/$defs/point", "examples": [[600, 800]] }, "outputs": { "title": "Outputs", "description": "Outputs that the program switches, by a name of yours.", "type": "object", "additionalProperties": false, "patternProperties": { "^[a-z][a-z0-9-]{0,30}$": { "title": "One output", "description": "An output and when it is on.", "type": "object", "additionalProperties": false, "properties": { "number": { "title": "Number of the output", "description": "Number as the idiom says it.\n\nUnit: number of the output.\n\nIf wrong: another output is switched.", "type": "integer", "minimum": 0, "maximum": 9999, "examples": [1] }, "during": { "title": "When it is on", "description": "cutting: from the spindle's start to its stop; program: from the first swap to the end.\n\nIf wrong: the extraction is off while dust is made, or on during the swap.", "type": "string", "enum": ["cutting", "program"], "examples": ["cutting"] } }, "examples": [{ "number": 1, "during": "cutting" }] } }, "examples": [{ "extraction": { "number": 1, "during": "cutting" } }] }, "hood": { "title": "Dust hood", "description": "Whether the program lifts and lowers a dust hood.\n\nIf wrong: the hood is driven into the rack or the clamps.", "$ref": "#/$defs/yesNo", "examples": ["yes"] }, "keep-out": { "title": "Keep-out boxes", "description": "Boxes in machine coordinates that no motion of the work may enter.\n\nUnit: mm, or with `in`.\n\nIf wrong: the tool is driven into what stands there.", "type": "array", "maxItems": 50, "items": { "title": "One box", "description": "A box and what stands there.", "type": "object", "additionalProperties": false, "required": ["name", "min", "max"], "properties": { "name": { "title": "What stands there", "description": "Findings name it.\n\nIf wrong: nobody knows what the finding means.", "type": "string", "minLength": 1, "maxLength": 60, "examples": ["vise"] }, "min": { "title": "Least corner", "description": "Least X, Y and Z of what stands there, machine coordinates.\n\nUnit: mm, or with `in`.\n\nIf wrong: the tool is driven into it.", "$ref": "#/$defs/place", "examples": [[100, 100, -95]] }, "max": { "title": "Greatest corner", "description": "Greatest X, Y and Z of what stands there, machine coordinates.\n\nUnit: mm, or with `in`.\n\nIf wrong: the tool is driven into it.", "$ref": "#/$defs/place", "examples": [[250, 200, -40]] } }, "examples": [{ "name": "vise", "min": [100, 100, -95], "max": [250, 200, -40] }] }, "examples": [[{ "name": "vise", "min": [100, 100, -95], "max": [250, 200, -40] }]] }, "tapping": { "title": "Tapping", "description": "How the machine taps.", "type": "object", "additionalProperties": false, "properties": { "kind": { "title": "Kind of tapping", "description": "none: not at all; floating: with a floating holder; synchronised: spindle and feed are locked.\n\nIf wrong: the tap breaks or strips the thread.", "type": "string", "enum": ["none", "floating", "synchronised"], "examples": ["floating"] }, "reversal": { "title": "Time to reverse", "description": "Time that the spindle needs to reverse, with a floating holder.\n\nUnit: s, ms or min, written behind the number.\n\nIf wrong: the holder runs out of float and the tap breaks.", "$ref": "#/$defs/time", "examples": ["1 s"] }, "longhand": { "title": "Tapping longhand", "description": "Whether tapping may be written without its cycle.\n\nIf wrong: the tap breaks: feed and spindle do not reverse together.", "$ref": "#/$defs/yesNo", "examples": ["no"] } }, "examples": [{ "kind": "floating", "reversal": "1 s", "longhand": "no" }] }, "feed": { "title": "Feed limits", "description": "Lowest and highest feed; without them feeds are not checked against the machine.", "type": "object", "additionalProperties": false, "properties": { "least": { "title": "Lowest feed", "description": "Lowest feed.\n\nUnit: mm/min, or with `in/min`.\n\nIf wrong: the feed is raised without a word.", "$ref": "#/$defs/feed", "examples": [1] }, "most": { "title": "Highest feed", "description": "Highest feed.\n\nUnit: mm/min, or with `in/min`.\n\nIf wrong: the feed is cut without a word, and times on the sheet are wrong.", "$ref": "#/$defs/feed", "examples": [12e3] } }, "examples": [{ "least": 1, "most": 12e3 }] }, "work-zero": { "title": "Origins of the work offsets", "description": "Where the origin of each work offset (1 to 9) lies in machine coordinates, where it is always the same; a set-up file overrides it. With it, travel is checked in full.\n\nUnit: mm, or with `in`.\n\nIf wrong: a program that runs past the travel is passed, or a good one refused.", "type": "object", "additionalProperties": false, "patternProperties": { "^[1-9]$": { "title": "Origin of one work offset", "description": "X, Y and Z of its origin in machine coordinates.\n\nUnit: mm, or with `in`.\n\nIf wrong: a program that runs past the travel is passed, or a good one refused.", "$ref": "#/$defs/place", "examples": [[300, 200, -80]] } }, "examples": [{ "1": [300, 200, -80] }] } }, "examples": [{ "travel": { "x": [0, 1220], "y": [0, 810], "z": [-95, 0] }, "swap": "operator" }] }, "confirm": { "title": "Confirmations", "description": "How the program makes sure of a state before it relies on it. One that is not stated cannot be relied on: a job that needs it is refused.", "type": "object", "additionalProperties": false, "properties": { "at-speed": { "title": "Spindle at speed", "description": "How it is confirmed that the spindle is at its speed: wait (on a signal), dwell (for a time or by an expression), intrinsic (the controller holds by itself; the reason is stated), or the word operator.\n\nIf wrong: the tool cuts before the spindle is up to speed.", "anyOf": [{ "title": "By the operator", "description": "The program stops and asks the operator to see to it.", "type": "string", "const": "operator" }, { "$ref": "#/$defs/confirmation" }], "examples": [{ "wait": "at-speed", "timeout": "10 s" }, { "dwell": "max(spin_up, spin_down) * max(rpm - from_rpm, from_rpm - rpm) / max_rpm + 0.5 * second" }] }, "stopped": { "title": "Spindle stopped", "description": "How it is confirmed that the spindle stands: wait (on a signal), dwell (for a time or by an expression), intrinsic (the controller holds by itself; the reason is stated), or the word operator.\n\nIf wrong: the tool is swapped, or a hand is in the machine, while the spindle turns.", "anyOf": [{ "title": "By the operator", "description": "The program stops and asks the operator to see to it.", "type": "string", "const": "operator" }, { "$ref": "#/$defs/confirmation" }], "examples": [{ "wait": "stopped", "timeout": "30 s" }, { "dwell": "coast_down * from_rpm / max_rpm + 0.5 * second" }] }, "released": { "title": "Tool released", "description": "How it is confirmed that the drawbar is open: wait (on a signal), dwell (for a time or by an expression), intrinsic (the controller holds by itself; the reason is stated), or the word operator.\n\nIf wrong: the holder is torn out of its pocket.", "anyOf": [{ "title": "By the operator", "description": "The program stops and asks the operator to see to it.", "type": "string", "const": "operator" }, { "$ref": "#/$defs/confirmation" }], "examples": [{ "wait": "released", "timeout": "2 s" }, { "dwell": "0.8 s" }] }, "clamped": { "title": "Tool clamped", "description": "How it is confirmed that the drawbar is closed with a tool in it: wait (on a signal), dwell (for a time or by an expression), intrinsic (the controller holds by itself; the reason is stated), or the word operator.\n\nIf wrong: the spindle starts with a loose tool.", "anyOf": [{ "title": "By the operator", "description": "The program stops and asks the operator to see to it.", "type": "string", "const": "operator" }, { "$ref": "#/$defs/confirmation" }], "examples": [{ "wait": "clamped", "timeout": "2 s" }] }, "air": { "title": "Air pressure", "description": "How it is confirmed that there is air to work the drawbar: wait (on a signal), dwell (for a time or by an expression), intrinsic (the controller holds by itself; the reason is stated), or the word operator.\n\nIf wrong: the drawbar opens halfway and the tool drops.", "anyOf": [{ "title": "By the operator", "description": "The program stops and asks the operator to see to it.", "type": "string", "const": "operator" }, { "$ref": "#/$defs/confirmation" }], "examples": [{ "wait": "air", "timeout": "5 s" }] }, "hold-down": { "title": "Work held", "description": "How it is confirmed that vacuum or clamps hold the work: by a wait on the signal `hold-down`, before the first start of the spindle and behind each stop, since hands may then have been at the work.\n\nIf wrong: the work comes loose in the cut.", "type": "object", "additionalProperties": false, "required": ["wait"], "properties": { "wait": { "title": "Wait on its signal", "description": "The signal of the hold-down.\n\nIf wrong: the program waits on something else.", "type": "string", "const": "hold-down", "examples": ["hold-down"] }, "timeout": { "title": "Timeout of the hold-down", "description": "How long the wait lasts before the controller alarms.\n\nUnit: s, ms or min, written behind the number.\n\nIf wrong: the program alarms before the vacuum stands.", "$ref": "#/$defs/time", "examples": ["10 s"] } }, "examples": [{ "wait": "hold-down", "timeout": "10 s" }] } }, "examples": [{ "at-speed": { "wait": "at-speed", "timeout": "10 s" }, "stopped": { "dwell": "60 s" } }] } }, "$defs": { "yesNo": { "description": "yes or no", "type": "string", "enum": ["yes", "no"] }, "code": { "description": "a code such as G54 or M6", "type": "string", "pattern": "^[GM]\\d{1,3}(\\.\\d)?$" }, "codeOrNone": { "description": "a code such as G54 or M6, or none", "type": "string", "pattern": "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, "codeWithWordOrNone": { "description": "a code such as G53, if need be with a word that belongs to it (G54.1 P2), or none", "type": "string", "pattern": "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$" }, "optionalStop": { "description": "a code such as M1, one behind a block delete mark such as /M0 or /2 M0, or none", "type": "string", "pattern": "^(none|(/([1-9] )?)?[GM]\\d{1,3}(\\.\\d)?)$" }, "letter": { "description": "one capital letter", "type": "string", "pattern": "^[A-Z]$" }, "axisLetter": { "description": "one of X Y Z A B C U V W", "type": "string", "enum": ["X", "Y", "Z", "A", "B", "C", "U", "V", "W"] }, "letterOrNone": { "description": "one capital letter, or none", "type": "string", "pattern": "^(none|[A-Z])$" }, "length": { "description": "a length: a number in mm, or a text such as 2 in", "anyOf": [{ "type": "number", "minimum": -1e6, "maximum": 1e6 }, { "type": "string", "pattern": "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }] }, "lengthOrNone": { "description": "a length (a number in mm, or a text such as 2 in), or none", "anyOf": [{ "type": "number", "minimum": 0, "maximum": 1e6 }, { "type": "string", "pattern": "^(none|\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }] }, "feed": { "description": "a feed: a number in mm/min, or a text such as 20 in/min", "anyOf": [{ "type": "number", "exclusiveMinimum": 0, "maximum": 1e6 }, { "type": "string", "pattern": "^\\d{1,5}(\\.\\d{1,5})? (mm|in)/min$" }] }, "time": { "description": "a time such as 6 s, 500 ms or 2 min", "type": "string", "pattern": "^\\d{1,6}(\\.\\d{1,6})? ?(s|ms|min)$" }, "point": { "description": "a list of two lengths, X and Y", "type": "array", "minItems": 2, "maxItems": 2, "items": { "$ref": "#/$defs/length" } }, "place": { "description": "a list of three lengths, X, Y and Z", "type": "array", "minItems": 3, "maxItems": 3, "items": { "$ref": "#/$defs/length" } }, "template": { "description": "none, or words such as M94 P{{signal}}", "type": "string", "minLength": 1, "maxLength": 120 }, "signal": { "description": "a mapping with the keys input, level and settle", "type": "object", "additionalProperties": false, "properties": { "input": { "title": "Input", "description": "Number of the input as the wait says it.\n\nUnit: number of the input.\n\nIf wrong: the program waits on something else.", "type": "integer", "minimum": 0, "maximum": 9999, "examples": [4] }, "level": { "title": "Level", "description": "Level of the input in that state; on unless stated.\n\nIf wrong: the wait is over at once, whatever the machine does.", "type": "string", "enum": ["on", "off"], "examples": ["on"] }, "settle": { "title": "Settling time", "description": "How long the contact may still show the old state after a command: a dwell before the wait. None unless stated.\n\nUnit: s, ms or min, written behind the number.\n\nIf wrong: the wait sees the old state and is over at once.", "$ref": "#/$defs/time", "examples": ["0.3 s"] } } }, "confirmation": { "description": "a mapping with wait and timeout, with dwell, or with intrinsic", "type": "object", "additionalProperties": false, "properties": { "wait": { "title": "Wait on a signal", "description": "The signal, one of those under machine.signals.\n\nIf wrong: the program waits on something else.", "type": "string", "enum": ["at-speed", "stopped", "released", "clamped", "tool-present", "air", "hold-down"], "examples": ["at-speed"] }, "timeout": { "title": "Timeout", "description": "How long the wait lasts before the controller alarms.\n\nUnit: s, ms or min, written behind the number.\n\nIf wrong: the program hangs, or alarms before the state can be reached.", "$ref": "#/$defs/time", "examples": ["10 s"] }, "dwell": { "title": "Dwell", "description": "A time such as 5 s, or an expression that gives one: numbers, + - * / ( ), min, max, the constants second, minute, mm, inch, rev, and the names rpm, from_rpm, min_rpm, max_rpm, spin_up, spin_down, coast_down.\n\nUnit: s, ms or min behind a number; an expression has units of its own.\n\nIf wrong: the state is taken as reached before it is.", "type": "string", "minLength": 1, "maxLength": 300, "examples": ["20 * second"] }, "intrinsic": { "title": "By the controller itself", "description": "The controller holds the program until the state is reached; here stands how that is known.\n\nIf wrong: the state is taken as reached before it is.", "type": "string", "minLength": 10, "maxLength": 200, "examples": ["the start code waits for the drive's at-speed contact, tried with a slow ramp"] } } }, "own-point": { "title": "Decimal point", "description": "always: every number with decimals has a point; when-needed: whole numbers have none; never: the point is implied, and the number counts least increments.\n\nIf wrong: a control that counts least increments reads X50 as 0.050 mm; the opposite mistake moves a thousand times too far.", "type": "string", "enum": ["always", "when-needed", "never"], "examples": ["always"] }, "own-trailing-zeros": { "title": "Zeros at the end", "description": "keep: 1.500; drop: 1.5 and 10.; one: 1.5 and 10.0 (at least one digit behind the point).\n\nIf wrong: a number without decimals may be read in least increments.", "type": "string", "enum": ["keep", "drop", "one"], "examples": ["keep"] }, "own-leading-zero": { "title": "Zero before the point", "description": "keep: 0.5; drop: .5\n\nIf wrong: the word is a syntax error.", "type": "string", "enum": ["keep", "drop"], "examples": ["keep"] }, "own-plus": { "title": "Plus sign", "description": "Whether a positive number with a direction (axes, arc centres) has a + sign.\n\nIf wrong: the word is a syntax error, or an old control takes it as unsigned.", "$ref": "#/$defs/yesNo", "examples": ["no"] }, "own-suppressed-zeros": { "title": "Zeros left out", "description": "With an implied point: which zeros are left out. leading: X12500 is 12.500; trailing: the number is read from the left; none: all digits stand.\n\nIf wrong: every coordinate is wrong by powers of ten.", "type": "string", "enum": ["leading", "trailing", "none"], "examples": ["leading"] }, "own-digits": { "title": "Digits of a number", "description": "With an implied point: how many digits a number has before zeros at its end are left out.\n\nUnit: digits.\n\nIf wrong: every coordinate is wrong by powers of ten.", "type": "integer", "minimum": 1, "maximum": 12, "examples": [7] }, "own-whole-digits": { "title": "Digits before the point", "description": "Most digits before the point, or none for no limit.\n\nUnit: digits.\n\nIf wrong: the word alarms, or its first digits are lost and the axis goes to another place.", "anyOf": [{ "title": "None", "description": "As many as the number has.", "type": "string", "const": "none" }, { "type": "integer", "minimum": 1, "maximum": 12 }], "examples": ["none"] } } };
  var schema32 = { "description": "yes or no", "type": "string", "enum": ["yes", "no"] };
  var schema37 = { "title": "Decimal point", "description": "always: every number with decimals has a point; when-needed: whole numbers have none; never: the point is implied, and the number counts least increments.\n\nIf wrong: a control that counts least increments reads X50 as 0.050 mm; the opposite mistake moves a thousand times too far.", "type": "string", "enum": ["always", "when-needed", "never"], "examples": ["always"] };
  var schema38 = { "title": "Zeros at the end", "description": "keep: 1.500; drop: 1.5 and 10.; one: 1.5 and 10.0 (at least one digit behind the point).\n\nIf wrong: a number without decimals may be read in least increments.", "type": "string", "enum": ["keep", "drop", "one"], "examples": ["keep"] };
  var schema39 = { "title": "Zero before the point", "description": "keep: 0.5; drop: .5\n\nIf wrong: the word is a syntax error.", "type": "string", "enum": ["keep", "drop"], "examples": ["keep"] };
  var schema41 = { "title": "Zeros left out", "description": "With an implied point: which zeros are left out. leading: X12500 is 12.500; trailing: the number is read from the left; none: all digits stand.\n\nIf wrong: every coordinate is wrong by powers of ten.", "type": "string", "enum": ["leading", "trailing", "none"], "examples": ["leading"] };
  var schema113 = { "description": "one of X Y Z A B C U V W", "type": "string", "enum": ["X", "Y", "Z", "A", "B", "C", "U", "V", "W"] };
  var func1 = Object.prototype.hasOwnProperty;
  var func2 = require_ucs2length().default;
  var func0 = require_equal().default;
  var pattern4 = new RegExp("^[a-z0-9]+(-[a-z0-9]+)*$", "u");
  var pattern5 = new RegExp("^[a-z0-9-]+(\\.[A-Za-z0-9-]+)*$", "u");
  var pattern6 = new RegExp("^[A-Za-z0-9]{1,8}$", "u");
  var pattern7 = new RegExp("^[A-Z]$", "u");
  var pattern8 = new RegExp("^(none|[GM]\\d{1,3}(\\.\\d)?)$", "u");
  var pattern10 = new RegExp("^\\d{1,5}(\\.\\d{1,5})? (mm|in)/min$", "u");
  var pattern23 = new RegExp("^(none|[A-Z])$", "u");
  var pattern24 = new RegExp("^(none|\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$", "u");
  var pattern26 = new RegExp("^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$", "u");
  var pattern27 = new RegExp("^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$", "u");
  var pattern45 = new RegExp("^(none|[A-Z]0|[GM]\\d{1,3}(\\.\\d)?)$", "u");
  var pattern79 = new RegExp("^M\\d{1,3}$", "u");
  var pattern89 = new RegExp("^(none|with-tool-word|[GM]\\d{1,3}(\\.\\d)?)$", "u");
  var pattern91 = new RegExp("^(none|(/([1-9] )?)?[GM]\\d{1,3}(\\.\\d)?)$", "u");
  var pattern93 = new RegExp("^[GM]\\d{1,3}$", "u");
  var pattern98 = new RegExp("^\\d{1,6}(\\.\\d{1,6})? ?(s|ms|min)$", "u");
  var pattern113 = new RegExp("^[a-z][a-z0-9-]{0,30}$", "u");
  var pattern118 = new RegExp("^[1-9]$", "u");
  var schema227 = { "description": "a mapping with the keys input, level and settle", "type": "object", "additionalProperties": false, "properties": { "input": { "title": "Input", "description": "Number of the input as the wait says it.\n\nUnit: number of the input.\n\nIf wrong: the program waits on something else.", "type": "integer", "minimum": 0, "maximum": 9999, "examples": [4] }, "level": { "title": "Level", "description": "Level of the input in that state; on unless stated.\n\nIf wrong: the wait is over at once, whatever the machine does.", "type": "string", "enum": ["on", "off"], "examples": ["on"] }, "settle": { "title": "Settling time", "description": "How long the contact may still show the old state after a command: a dwell before the wait. None unless stated.\n\nUnit: s, ms or min, written behind the number.\n\nIf wrong: the wait sees the old state and is over at once.", "$ref": "#/$defs/time", "examples": ["0.3 s"] } } };
  function validate21(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
    let vErrors = null;
    let errors = 0;
    const evaluated0 = validate21.evaluated;
    if (evaluated0.dynamicProps) {
      evaluated0.props = void 0;
    }
    if (evaluated0.dynamicItems) {
      evaluated0.items = void 0;
    }
    if (data && typeof data == "object" && !Array.isArray(data)) {
      for (const key0 in data) {
        if (!(key0 === "input" || key0 === "level" || key0 === "settle")) {
          const err0 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" };
          if (vErrors === null) {
            vErrors = [err0];
          } else {
            vErrors.push(err0);
          }
          errors++;
        }
      }
      if (data.input !== void 0) {
        let data0 = data.input;
        if (!(typeof data0 == "number" && (!(data0 % 1) && !isNaN(data0)) && isFinite(data0))) {
          const err1 = { instancePath: instancePath + "/input", schemaPath: "#/properties/input/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
          if (vErrors === null) {
            vErrors = [err1];
          } else {
            vErrors.push(err1);
          }
          errors++;
        }
        if (typeof data0 == "number" && isFinite(data0)) {
          if (data0 > 9999 || isNaN(data0)) {
            const err2 = { instancePath: instancePath + "/input", schemaPath: "#/properties/input/maximum", keyword: "maximum", params: { comparison: "<=", limit: 9999 }, message: "must be <= 9999" };
            if (vErrors === null) {
              vErrors = [err2];
            } else {
              vErrors.push(err2);
            }
            errors++;
          }
          if (data0 < 0 || isNaN(data0)) {
            const err3 = { instancePath: instancePath + "/input", schemaPath: "#/properties/input/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
            if (vErrors === null) {
              vErrors = [err3];
            } else {
              vErrors.push(err3);
            }
            errors++;
          }
        }
      }
      if (data.level !== void 0) {
        let data1 = data.level;
        if (typeof data1 !== "string") {
          const err4 = { instancePath: instancePath + "/level", schemaPath: "#/properties/level/type", keyword: "type", params: { type: "string" }, message: "must be string" };
          if (vErrors === null) {
            vErrors = [err4];
          } else {
            vErrors.push(err4);
          }
          errors++;
        }
        if (!(data1 === "on" || data1 === "off")) {
          const err5 = { instancePath: instancePath + "/level", schemaPath: "#/properties/level/enum", keyword: "enum", params: { allowedValues: schema227.properties.level.enum }, message: "must be equal to one of the allowed values" };
          if (vErrors === null) {
            vErrors = [err5];
          } else {
            vErrors.push(err5);
          }
          errors++;
        }
      }
      if (data.settle !== void 0) {
        let data2 = data.settle;
        if (typeof data2 === "string") {
          if (!pattern98.test(data2)) {
            const err6 = { instancePath: instancePath + "/settle", schemaPath: "#/$defs/time/pattern", keyword: "pattern", params: { pattern: "^\\d{1,6}(\\.\\d{1,6})? ?(s|ms|min)$" }, message: 'must match pattern "^\\d{1,6}(\\.\\d{1,6})? ?(s|ms|min)$"' };
            if (vErrors === null) {
              vErrors = [err6];
            } else {
              vErrors.push(err6);
            }
            errors++;
          }
        } else {
          const err7 = { instancePath: instancePath + "/settle", schemaPath: "#/$defs/time/type", keyword: "type", params: { type: "string" }, message: "must be string" };
          if (vErrors === null) {
            vErrors = [err7];
          } else {
            vErrors.push(err7);
          }
          errors++;
        }
      }
    } else {
      const err8 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" };
      if (vErrors === null) {
        vErrors = [err8];
      } else {
        vErrors.push(err8);
      }
      errors++;
    }
    validate21.errors = vErrors;
    return errors === 0;
  }
  validate21.evaluated = { "props": true, "dynamicProps": false, "dynamicItems": false };
  function validate29(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
    let vErrors = null;
    let errors = 0;
    const evaluated0 = validate29.evaluated;
    if (evaluated0.dynamicProps) {
      evaluated0.props = void 0;
    }
    if (evaluated0.dynamicItems) {
      evaluated0.items = void 0;
    }
    if (Array.isArray(data)) {
      if (data.length > 3) {
        const err0 = { instancePath, schemaPath: "#/maxItems", keyword: "maxItems", params: { limit: 3 }, message: "must NOT have more than 3 items" };
        if (vErrors === null) {
          vErrors = [err0];
        } else {
          vErrors.push(err0);
        }
        errors++;
      }
      if (data.length < 3) {
        const err1 = { instancePath, schemaPath: "#/minItems", keyword: "minItems", params: { limit: 3 }, message: "must NOT have fewer than 3 items" };
        if (vErrors === null) {
          vErrors = [err1];
        } else {
          vErrors.push(err1);
        }
        errors++;
      }
      const len0 = data.length;
      for (let i0 = 0; i0 < len0; i0++) {
        let data0 = data[i0];
        const _errs3 = errors;
        let valid3 = false;
        const _errs4 = errors;
        if (typeof data0 == "number" && isFinite(data0)) {
          if (data0 > 1e6 || isNaN(data0)) {
            const err2 = { instancePath: instancePath + "/" + i0, schemaPath: "#/$defs/length/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
            if (vErrors === null) {
              vErrors = [err2];
            } else {
              vErrors.push(err2);
            }
            errors++;
          }
          if (data0 < -1e6 || isNaN(data0)) {
            const err3 = { instancePath: instancePath + "/" + i0, schemaPath: "#/$defs/length/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: -1e6 }, message: "must be >= -1000000" };
            if (vErrors === null) {
              vErrors = [err3];
            } else {
              vErrors.push(err3);
            }
            errors++;
          }
        } else {
          const err4 = { instancePath: instancePath + "/" + i0, schemaPath: "#/$defs/length/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
          if (vErrors === null) {
            vErrors = [err4];
          } else {
            vErrors.push(err4);
          }
          errors++;
        }
        var _valid0 = _errs4 === errors;
        valid3 = valid3 || _valid0;
        const _errs6 = errors;
        if (typeof data0 === "string") {
          if (!pattern26.test(data0)) {
            const err5 = { instancePath: instancePath + "/" + i0, schemaPath: "#/$defs/length/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }, message: 'must match pattern "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$"' };
            if (vErrors === null) {
              vErrors = [err5];
            } else {
              vErrors.push(err5);
            }
            errors++;
          }
        } else {
          const err6 = { instancePath: instancePath + "/" + i0, schemaPath: "#/$defs/length/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
          if (vErrors === null) {
            vErrors = [err6];
          } else {
            vErrors.push(err6);
          }
          errors++;
        }
        var _valid0 = _errs6 === errors;
        valid3 = valid3 || _valid0;
        if (!valid3) {
          const err7 = { instancePath: instancePath + "/" + i0, schemaPath: "#/$defs/length/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
          if (vErrors === null) {
            vErrors = [err7];
          } else {
            vErrors.push(err7);
          }
          errors++;
        } else {
          errors = _errs3;
          if (vErrors !== null) {
            if (_errs3) {
              vErrors.length = _errs3;
            } else {
              vErrors = null;
            }
          }
        }
      }
    } else {
      const err8 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "array" }, message: "must be array" };
      if (vErrors === null) {
        vErrors = [err8];
      } else {
        vErrors.push(err8);
      }
      errors++;
    }
    validate29.errors = vErrors;
    return errors === 0;
  }
  validate29.evaluated = { "items": true, "dynamicProps": false, "dynamicItems": false };
  function validate31(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
    let vErrors = null;
    let errors = 0;
    const evaluated0 = validate31.evaluated;
    if (evaluated0.dynamicProps) {
      evaluated0.props = void 0;
    }
    if (evaluated0.dynamicItems) {
      evaluated0.items = void 0;
    }
    if (Array.isArray(data)) {
      if (data.length > 2) {
        const err0 = { instancePath, schemaPath: "#/maxItems", keyword: "maxItems", params: { limit: 2 }, message: "must NOT have more than 2 items" };
        if (vErrors === null) {
          vErrors = [err0];
        } else {
          vErrors.push(err0);
        }
        errors++;
      }
      if (data.length < 2) {
        const err1 = { instancePath, schemaPath: "#/minItems", keyword: "minItems", params: { limit: 2 }, message: "must NOT have fewer than 2 items" };
        if (vErrors === null) {
          vErrors = [err1];
        } else {
          vErrors.push(err1);
        }
        errors++;
      }
      const len0 = data.length;
      for (let i0 = 0; i0 < len0; i0++) {
        let data0 = data[i0];
        const _errs3 = errors;
        let valid3 = false;
        const _errs4 = errors;
        if (typeof data0 == "number" && isFinite(data0)) {
          if (data0 > 1e6 || isNaN(data0)) {
            const err2 = { instancePath: instancePath + "/" + i0, schemaPath: "#/$defs/length/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
            if (vErrors === null) {
              vErrors = [err2];
            } else {
              vErrors.push(err2);
            }
            errors++;
          }
          if (data0 < -1e6 || isNaN(data0)) {
            const err3 = { instancePath: instancePath + "/" + i0, schemaPath: "#/$defs/length/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: -1e6 }, message: "must be >= -1000000" };
            if (vErrors === null) {
              vErrors = [err3];
            } else {
              vErrors.push(err3);
            }
            errors++;
          }
        } else {
          const err4 = { instancePath: instancePath + "/" + i0, schemaPath: "#/$defs/length/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
          if (vErrors === null) {
            vErrors = [err4];
          } else {
            vErrors.push(err4);
          }
          errors++;
        }
        var _valid0 = _errs4 === errors;
        valid3 = valid3 || _valid0;
        const _errs6 = errors;
        if (typeof data0 === "string") {
          if (!pattern26.test(data0)) {
            const err5 = { instancePath: instancePath + "/" + i0, schemaPath: "#/$defs/length/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }, message: 'must match pattern "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$"' };
            if (vErrors === null) {
              vErrors = [err5];
            } else {
              vErrors.push(err5);
            }
            errors++;
          }
        } else {
          const err6 = { instancePath: instancePath + "/" + i0, schemaPath: "#/$defs/length/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
          if (vErrors === null) {
            vErrors = [err6];
          } else {
            vErrors.push(err6);
          }
          errors++;
        }
        var _valid0 = _errs6 === errors;
        valid3 = valid3 || _valid0;
        if (!valid3) {
          const err7 = { instancePath: instancePath + "/" + i0, schemaPath: "#/$defs/length/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
          if (vErrors === null) {
            vErrors = [err7];
          } else {
            vErrors.push(err7);
          }
          errors++;
        } else {
          errors = _errs3;
          if (vErrors !== null) {
            if (_errs3) {
              vErrors.length = _errs3;
            } else {
              vErrors = null;
            }
          }
        }
      }
    } else {
      const err8 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "array" }, message: "must be array" };
      if (vErrors === null) {
        vErrors = [err8];
      } else {
        vErrors.push(err8);
      }
      errors++;
    }
    validate31.errors = vErrors;
    return errors === 0;
  }
  validate31.evaluated = { "items": true, "dynamicProps": false, "dynamicItems": false };
  var schema252 = { "description": "a mapping with wait and timeout, with dwell, or with intrinsic", "type": "object", "additionalProperties": false, "properties": { "wait": { "title": "Wait on a signal", "description": "The signal, one of those under machine.signals.\n\nIf wrong: the program waits on something else.", "type": "string", "enum": ["at-speed", "stopped", "released", "clamped", "tool-present", "air", "hold-down"], "examples": ["at-speed"] }, "timeout": { "title": "Timeout", "description": "How long the wait lasts before the controller alarms.\n\nUnit: s, ms or min, written behind the number.\n\nIf wrong: the program hangs, or alarms before the state can be reached.", "$ref": "#/$defs/time", "examples": ["10 s"] }, "dwell": { "title": "Dwell", "description": "A time such as 5 s, or an expression that gives one: numbers, + - * / ( ), min, max, the constants second, minute, mm, inch, rev, and the names rpm, from_rpm, min_rpm, max_rpm, spin_up, spin_down, coast_down.\n\nUnit: s, ms or min behind a number; an expression has units of its own.\n\nIf wrong: the state is taken as reached before it is.", "type": "string", "minLength": 1, "maxLength": 300, "examples": ["20 * second"] }, "intrinsic": { "title": "By the controller itself", "description": "The controller holds the program until the state is reached; here stands how that is known.\n\nIf wrong: the state is taken as reached before it is.", "type": "string", "minLength": 10, "maxLength": 200, "examples": ["the start code waits for the drive's at-speed contact, tried with a slow ramp"] } } };
  function validate41(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
    let vErrors = null;
    let errors = 0;
    const evaluated0 = validate41.evaluated;
    if (evaluated0.dynamicProps) {
      evaluated0.props = void 0;
    }
    if (evaluated0.dynamicItems) {
      evaluated0.items = void 0;
    }
    if (data && typeof data == "object" && !Array.isArray(data)) {
      for (const key0 in data) {
        if (!(key0 === "wait" || key0 === "timeout" || key0 === "dwell" || key0 === "intrinsic")) {
          const err0 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" };
          if (vErrors === null) {
            vErrors = [err0];
          } else {
            vErrors.push(err0);
          }
          errors++;
        }
      }
      if (data.wait !== void 0) {
        let data0 = data.wait;
        if (typeof data0 !== "string") {
          const err1 = { instancePath: instancePath + "/wait", schemaPath: "#/properties/wait/type", keyword: "type", params: { type: "string" }, message: "must be string" };
          if (vErrors === null) {
            vErrors = [err1];
          } else {
            vErrors.push(err1);
          }
          errors++;
        }
        if (!(data0 === "at-speed" || data0 === "stopped" || data0 === "released" || data0 === "clamped" || data0 === "tool-present" || data0 === "air" || data0 === "hold-down")) {
          const err2 = { instancePath: instancePath + "/wait", schemaPath: "#/properties/wait/enum", keyword: "enum", params: { allowedValues: schema252.properties.wait.enum }, message: "must be equal to one of the allowed values" };
          if (vErrors === null) {
            vErrors = [err2];
          } else {
            vErrors.push(err2);
          }
          errors++;
        }
      }
      if (data.timeout !== void 0) {
        let data1 = data.timeout;
        if (typeof data1 === "string") {
          if (!pattern98.test(data1)) {
            const err3 = { instancePath: instancePath + "/timeout", schemaPath: "#/$defs/time/pattern", keyword: "pattern", params: { pattern: "^\\d{1,6}(\\.\\d{1,6})? ?(s|ms|min)$" }, message: 'must match pattern "^\\d{1,6}(\\.\\d{1,6})? ?(s|ms|min)$"' };
            if (vErrors === null) {
              vErrors = [err3];
            } else {
              vErrors.push(err3);
            }
            errors++;
          }
        } else {
          const err4 = { instancePath: instancePath + "/timeout", schemaPath: "#/$defs/time/type", keyword: "type", params: { type: "string" }, message: "must be string" };
          if (vErrors === null) {
            vErrors = [err4];
          } else {
            vErrors.push(err4);
          }
          errors++;
        }
      }
      if (data.dwell !== void 0) {
        let data2 = data.dwell;
        if (typeof data2 === "string") {
          if (func2(data2) > 300) {
            const err5 = { instancePath: instancePath + "/dwell", schemaPath: "#/properties/dwell/maxLength", keyword: "maxLength", params: { limit: 300 }, message: "must NOT have more than 300 characters" };
            if (vErrors === null) {
              vErrors = [err5];
            } else {
              vErrors.push(err5);
            }
            errors++;
          }
          if (func2(data2) < 1) {
            const err6 = { instancePath: instancePath + "/dwell", schemaPath: "#/properties/dwell/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
            if (vErrors === null) {
              vErrors = [err6];
            } else {
              vErrors.push(err6);
            }
            errors++;
          }
        } else {
          const err7 = { instancePath: instancePath + "/dwell", schemaPath: "#/properties/dwell/type", keyword: "type", params: { type: "string" }, message: "must be string" };
          if (vErrors === null) {
            vErrors = [err7];
          } else {
            vErrors.push(err7);
          }
          errors++;
        }
      }
      if (data.intrinsic !== void 0) {
        let data3 = data.intrinsic;
        if (typeof data3 === "string") {
          if (func2(data3) > 200) {
            const err8 = { instancePath: instancePath + "/intrinsic", schemaPath: "#/properties/intrinsic/maxLength", keyword: "maxLength", params: { limit: 200 }, message: "must NOT have more than 200 characters" };
            if (vErrors === null) {
              vErrors = [err8];
            } else {
              vErrors.push(err8);
            }
            errors++;
          }
          if (func2(data3) < 10) {
            const err9 = { instancePath: instancePath + "/intrinsic", schemaPath: "#/properties/intrinsic/minLength", keyword: "minLength", params: { limit: 10 }, message: "must NOT have fewer than 10 characters" };
            if (vErrors === null) {
              vErrors = [err9];
            } else {
              vErrors.push(err9);
            }
            errors++;
          }
        } else {
          const err10 = { instancePath: instancePath + "/intrinsic", schemaPath: "#/properties/intrinsic/type", keyword: "type", params: { type: "string" }, message: "must be string" };
          if (vErrors === null) {
            vErrors = [err10];
          } else {
            vErrors.push(err10);
          }
          errors++;
        }
      }
    } else {
      const err11 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" };
      if (vErrors === null) {
        vErrors = [err11];
      } else {
        vErrors.push(err11);
      }
      errors++;
    }
    validate41.errors = vErrors;
    return errors === 0;
  }
  validate41.evaluated = { "props": true, "dynamicProps": false, "dynamicItems": false };
  function validate20(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
    ;
    let vErrors = null;
    let errors = 0;
    const evaluated0 = validate20.evaluated;
    if (evaluated0.dynamicProps) {
      evaluated0.props = void 0;
    }
    if (evaluated0.dynamicItems) {
      evaluated0.items = void 0;
    }
    if (data && typeof data == "object" && !Array.isArray(data)) {
      if (data.dialect === void 0) {
        const err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "dialect" }, message: "must have required property 'dialect'" };
        if (vErrors === null) {
          vErrors = [err0];
        } else {
          vErrors.push(err0);
        }
        errors++;
      }
      for (const key0 in data) {
        if (!func1.call(schema31.properties, key0)) {
          const err1 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" };
          if (vErrors === null) {
            vErrors = [err1];
          } else {
            vErrors.push(err1);
          }
          errors++;
        }
      }
      if (data.dialect !== void 0) {
        let data0 = data.dialect;
        if (typeof data0 === "string") {
          if (func2(data0) > 40) {
            const err2 = { instancePath: instancePath + "/dialect", schemaPath: "#/properties/dialect/maxLength", keyword: "maxLength", params: { limit: 40 }, message: "must NOT have more than 40 characters" };
            if (vErrors === null) {
              vErrors = [err2];
            } else {
              vErrors.push(err2);
            }
            errors++;
          }
          if (!pattern4.test(data0)) {
            const err3 = { instancePath: instancePath + "/dialect", schemaPath: "#/properties/dialect/pattern", keyword: "pattern", params: { pattern: "^[a-z0-9]+(-[a-z0-9]+)*$" }, message: 'must match pattern "^[a-z0-9]+(-[a-z0-9]+)*$"' };
            if (vErrors === null) {
              vErrors = [err3];
            } else {
              vErrors.push(err3);
            }
            errors++;
          }
        } else {
          const err4 = { instancePath: instancePath + "/dialect", schemaPath: "#/properties/dialect/type", keyword: "type", params: { type: "string" }, message: "must be string" };
          if (vErrors === null) {
            vErrors = [err4];
          } else {
            vErrors.push(err4);
          }
          errors++;
        }
      }
      if (data.title !== void 0) {
        let data1 = data.title;
        if (typeof data1 === "string") {
          if (func2(data1) > 120) {
            const err5 = { instancePath: instancePath + "/title", schemaPath: "#/properties/title/maxLength", keyword: "maxLength", params: { limit: 120 }, message: "must NOT have more than 120 characters" };
            if (vErrors === null) {
              vErrors = [err5];
            } else {
              vErrors.push(err5);
            }
            errors++;
          }
          if (func2(data1) < 1) {
            const err6 = { instancePath: instancePath + "/title", schemaPath: "#/properties/title/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
            if (vErrors === null) {
              vErrors = [err6];
            } else {
              vErrors.push(err6);
            }
            errors++;
          }
        } else {
          const err7 = { instancePath: instancePath + "/title", schemaPath: "#/properties/title/type", keyword: "type", params: { type: "string" }, message: "must be string" };
          if (vErrors === null) {
            vErrors = [err7];
          } else {
            vErrors.push(err7);
          }
          errors++;
        }
      }
      if (data.extends !== void 0) {
        let data2 = data.extends;
        if (typeof data2 === "string") {
          if (func2(data2) > 200) {
            const err8 = { instancePath: instancePath + "/extends", schemaPath: "#/properties/extends/maxLength", keyword: "maxLength", params: { limit: 200 }, message: "must NOT have more than 200 characters" };
            if (vErrors === null) {
              vErrors = [err8];
            } else {
              vErrors.push(err8);
            }
            errors++;
          }
          if (func2(data2) < 1) {
            const err9 = { instancePath: instancePath + "/extends", schemaPath: "#/properties/extends/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
            if (vErrors === null) {
              vErrors = [err9];
            } else {
              vErrors.push(err9);
            }
            errors++;
          }
        } else {
          const err10 = { instancePath: instancePath + "/extends", schemaPath: "#/properties/extends/type", keyword: "type", params: { type: "string" }, message: "must be string" };
          if (vErrors === null) {
            vErrors = [err10];
          } else {
            vErrors.push(err10);
          }
          errors++;
        }
      }
      if (data.sources !== void 0) {
        let data3 = data.sources;
        if (Array.isArray(data3)) {
          if (data3.length > 40) {
            const err11 = { instancePath: instancePath + "/sources", schemaPath: "#/properties/sources/maxItems", keyword: "maxItems", params: { limit: 40 }, message: "must NOT have more than 40 items" };
            if (vErrors === null) {
              vErrors = [err11];
            } else {
              vErrors.push(err11);
            }
            errors++;
          }
          if (data3.length < 1) {
            const err12 = { instancePath: instancePath + "/sources", schemaPath: "#/properties/sources/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items" };
            if (vErrors === null) {
              vErrors = [err12];
            } else {
              vErrors.push(err12);
            }
            errors++;
          }
          const len0 = data3.length;
          for (let i0 = 0; i0 < len0; i0++) {
            let data4 = data3[i0];
            if (typeof data4 === "string") {
              if (func2(data4) > 300) {
                const err13 = { instancePath: instancePath + "/sources/" + i0, schemaPath: "#/properties/sources/items/maxLength", keyword: "maxLength", params: { limit: 300 }, message: "must NOT have more than 300 characters" };
                if (vErrors === null) {
                  vErrors = [err13];
                } else {
                  vErrors.push(err13);
                }
                errors++;
              }
              if (func2(data4) < 1) {
                const err14 = { instancePath: instancePath + "/sources/" + i0, schemaPath: "#/properties/sources/items/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                if (vErrors === null) {
                  vErrors = [err14];
                } else {
                  vErrors.push(err14);
                }
                errors++;
              }
            } else {
              const err15 = { instancePath: instancePath + "/sources/" + i0, schemaPath: "#/properties/sources/items/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err15];
              } else {
                vErrors.push(err15);
              }
              errors++;
            }
          }
        } else {
          const err16 = { instancePath: instancePath + "/sources", schemaPath: "#/properties/sources/type", keyword: "type", params: { type: "array" }, message: "must be array" };
          if (vErrors === null) {
            vErrors = [err16];
          } else {
            vErrors.push(err16);
          }
          errors++;
        }
      }
      if (data.cases !== void 0) {
        let data5 = data.cases;
        if (Array.isArray(data5)) {
          if (data5.length > 500) {
            const err17 = { instancePath: instancePath + "/cases", schemaPath: "#/properties/cases/maxItems", keyword: "maxItems", params: { limit: 500 }, message: "must NOT have more than 500 items" };
            if (vErrors === null) {
              vErrors = [err17];
            } else {
              vErrors.push(err17);
            }
            errors++;
          }
          if (data5.length < 1) {
            const err18 = { instancePath: instancePath + "/cases", schemaPath: "#/properties/cases/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items" };
            if (vErrors === null) {
              vErrors = [err18];
            } else {
              vErrors.push(err18);
            }
            errors++;
          }
          const len1 = data5.length;
          for (let i1 = 0; i1 < len1; i1++) {
            let data6 = data5[i1];
            if (data6 && typeof data6 == "object" && !Array.isArray(data6)) {
              if (data6.given === void 0) {
                const err19 = { instancePath: instancePath + "/cases/" + i1, schemaPath: "#/properties/cases/items/required", keyword: "required", params: { missingProperty: "given" }, message: "must have required property 'given'" };
                if (vErrors === null) {
                  vErrors = [err19];
                } else {
                  vErrors.push(err19);
                }
                errors++;
              }
              if (data6.expect === void 0) {
                const err20 = { instancePath: instancePath + "/cases/" + i1, schemaPath: "#/properties/cases/items/required", keyword: "required", params: { missingProperty: "expect" }, message: "must have required property 'expect'" };
                if (vErrors === null) {
                  vErrors = [err20];
                } else {
                  vErrors.push(err20);
                }
                errors++;
              }
              for (const key1 in data6) {
                if (!(key1 === "name" || key1 === "units" || key1 === "given" || key1 === "expect")) {
                  const err21 = { instancePath: instancePath + "/cases/" + i1, schemaPath: "#/properties/cases/items/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key1 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err21];
                  } else {
                    vErrors.push(err21);
                  }
                  errors++;
                }
              }
              if (data6.name !== void 0) {
                let data7 = data6.name;
                if (typeof data7 === "string") {
                  if (func2(data7) > 80) {
                    const err22 = { instancePath: instancePath + "/cases/" + i1 + "/name", schemaPath: "#/properties/cases/items/properties/name/maxLength", keyword: "maxLength", params: { limit: 80 }, message: "must NOT have more than 80 characters" };
                    if (vErrors === null) {
                      vErrors = [err22];
                    } else {
                      vErrors.push(err22);
                    }
                    errors++;
                  }
                  if (func2(data7) < 1) {
                    const err23 = { instancePath: instancePath + "/cases/" + i1 + "/name", schemaPath: "#/properties/cases/items/properties/name/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                    if (vErrors === null) {
                      vErrors = [err23];
                    } else {
                      vErrors.push(err23);
                    }
                    errors++;
                  }
                } else {
                  const err24 = { instancePath: instancePath + "/cases/" + i1 + "/name", schemaPath: "#/properties/cases/items/properties/name/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err24];
                  } else {
                    vErrors.push(err24);
                  }
                  errors++;
                }
              }
              if (data6.units !== void 0) {
                let data8 = data6.units;
                if (!(data8 === "mm" || data8 === "inch")) {
                  const err25 = { instancePath: instancePath + "/cases/" + i1 + "/units", schemaPath: "#/properties/cases/items/properties/units/enum", keyword: "enum", params: { allowedValues: schema31.properties.cases.items.properties.units.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err25];
                  } else {
                    vErrors.push(err25);
                  }
                  errors++;
                }
              }
              if (data6.given !== void 0) {
                let data9 = data6.given;
                if (Array.isArray(data9)) {
                  if (data9.length > 200) {
                    const err26 = { instancePath: instancePath + "/cases/" + i1 + "/given", schemaPath: "#/properties/cases/items/properties/given/maxItems", keyword: "maxItems", params: { limit: 200 }, message: "must NOT have more than 200 items" };
                    if (vErrors === null) {
                      vErrors = [err26];
                    } else {
                      vErrors.push(err26);
                    }
                    errors++;
                  }
                  if (data9.length < 1) {
                    const err27 = { instancePath: instancePath + "/cases/" + i1 + "/given", schemaPath: "#/properties/cases/items/properties/given/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items" };
                    if (vErrors === null) {
                      vErrors = [err27];
                    } else {
                      vErrors.push(err27);
                    }
                    errors++;
                  }
                  const len2 = data9.length;
                  for (let i2 = 0; i2 < len2; i2++) {
                    let data10 = data9[i2];
                    if (typeof data10 === "string") {
                      if (func2(data10) > 400) {
                        const err28 = { instancePath: instancePath + "/cases/" + i1 + "/given/" + i2, schemaPath: "#/properties/cases/items/properties/given/items/maxLength", keyword: "maxLength", params: { limit: 400 }, message: "must NOT have more than 400 characters" };
                        if (vErrors === null) {
                          vErrors = [err28];
                        } else {
                          vErrors.push(err28);
                        }
                        errors++;
                      }
                      if (func2(data10) < 1) {
                        const err29 = { instancePath: instancePath + "/cases/" + i1 + "/given/" + i2, schemaPath: "#/properties/cases/items/properties/given/items/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                        if (vErrors === null) {
                          vErrors = [err29];
                        } else {
                          vErrors.push(err29);
                        }
                        errors++;
                      }
                    } else {
                      const err30 = { instancePath: instancePath + "/cases/" + i1 + "/given/" + i2, schemaPath: "#/properties/cases/items/properties/given/items/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                      if (vErrors === null) {
                        vErrors = [err30];
                      } else {
                        vErrors.push(err30);
                      }
                      errors++;
                    }
                  }
                } else {
                  const err31 = { instancePath: instancePath + "/cases/" + i1 + "/given", schemaPath: "#/properties/cases/items/properties/given/type", keyword: "type", params: { type: "array" }, message: "must be array" };
                  if (vErrors === null) {
                    vErrors = [err31];
                  } else {
                    vErrors.push(err31);
                  }
                  errors++;
                }
              }
              if (data6.expect !== void 0) {
                let data11 = data6.expect;
                if (Array.isArray(data11)) {
                  if (data11.length > 500) {
                    const err32 = { instancePath: instancePath + "/cases/" + i1 + "/expect", schemaPath: "#/properties/cases/items/properties/expect/maxItems", keyword: "maxItems", params: { limit: 500 }, message: "must NOT have more than 500 items" };
                    if (vErrors === null) {
                      vErrors = [err32];
                    } else {
                      vErrors.push(err32);
                    }
                    errors++;
                  }
                  const len3 = data11.length;
                  for (let i3 = 0; i3 < len3; i3++) {
                    let data12 = data11[i3];
                    if (typeof data12 === "string") {
                      if (func2(data12) > 400) {
                        const err33 = { instancePath: instancePath + "/cases/" + i1 + "/expect/" + i3, schemaPath: "#/properties/cases/items/properties/expect/items/maxLength", keyword: "maxLength", params: { limit: 400 }, message: "must NOT have more than 400 characters" };
                        if (vErrors === null) {
                          vErrors = [err33];
                        } else {
                          vErrors.push(err33);
                        }
                        errors++;
                      }
                    } else {
                      const err34 = { instancePath: instancePath + "/cases/" + i1 + "/expect/" + i3, schemaPath: "#/properties/cases/items/properties/expect/items/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                      if (vErrors === null) {
                        vErrors = [err34];
                      } else {
                        vErrors.push(err34);
                      }
                      errors++;
                    }
                  }
                } else {
                  const err35 = { instancePath: instancePath + "/cases/" + i1 + "/expect", schemaPath: "#/properties/cases/items/properties/expect/type", keyword: "type", params: { type: "array" }, message: "must be array" };
                  if (vErrors === null) {
                    vErrors = [err35];
                  } else {
                    vErrors.push(err35);
                  }
                  errors++;
                }
              }
            } else {
              const err36 = { instancePath: instancePath + "/cases/" + i1, schemaPath: "#/properties/cases/items/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err36];
              } else {
                vErrors.push(err36);
              }
              errors++;
            }
          }
        } else {
          const err37 = { instancePath: instancePath + "/cases", schemaPath: "#/properties/cases/type", keyword: "type", params: { type: "array" }, message: "must be array" };
          if (vErrors === null) {
            vErrors = [err37];
          } else {
            vErrors.push(err37);
          }
          errors++;
        }
      }
      if (data.unanswered !== void 0) {
        let data13 = data.unanswered;
        if (Array.isArray(data13)) {
          if (data13.length > 100) {
            const err38 = { instancePath: instancePath + "/unanswered", schemaPath: "#/properties/unanswered/maxItems", keyword: "maxItems", params: { limit: 100 }, message: "must NOT have more than 100 items" };
            if (vErrors === null) {
              vErrors = [err38];
            } else {
              vErrors.push(err38);
            }
            errors++;
          }
          const len4 = data13.length;
          for (let i4 = 0; i4 < len4; i4++) {
            let data14 = data13[i4];
            if (typeof data14 === "string") {
              if (func2(data14) > 80) {
                const err39 = { instancePath: instancePath + "/unanswered/" + i4, schemaPath: "#/properties/unanswered/items/maxLength", keyword: "maxLength", params: { limit: 80 }, message: "must NOT have more than 80 characters" };
                if (vErrors === null) {
                  vErrors = [err39];
                } else {
                  vErrors.push(err39);
                }
                errors++;
              }
              if (!pattern5.test(data14)) {
                const err40 = { instancePath: instancePath + "/unanswered/" + i4, schemaPath: "#/properties/unanswered/items/pattern", keyword: "pattern", params: { pattern: "^[a-z0-9-]+(\\.[A-Za-z0-9-]+)*$" }, message: 'must match pattern "^[a-z0-9-]+(\\.[A-Za-z0-9-]+)*$"' };
                if (vErrors === null) {
                  vErrors = [err40];
                } else {
                  vErrors.push(err40);
                }
                errors++;
              }
            } else {
              const err41 = { instancePath: instancePath + "/unanswered/" + i4, schemaPath: "#/properties/unanswered/items/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err41];
              } else {
                vErrors.push(err41);
              }
              errors++;
            }
          }
          let i5 = data13.length;
          let j0;
          if (i5 > 1) {
            const indices0 = {};
            for (; i5--; ) {
              let item0 = data13[i5];
              if (typeof item0 !== "string") {
                continue;
              }
              if (typeof indices0[item0] == "number") {
                j0 = indices0[item0];
                const err42 = { instancePath: instancePath + "/unanswered", schemaPath: "#/properties/unanswered/uniqueItems", keyword: "uniqueItems", params: { i: i5, j: j0 }, message: "must NOT have duplicate items (items ## " + j0 + " and " + i5 + " are identical)" };
                if (vErrors === null) {
                  vErrors = [err42];
                } else {
                  vErrors.push(err42);
                }
                errors++;
                break;
              }
              indices0[item0] = i5;
            }
          }
        } else {
          const err43 = { instancePath: instancePath + "/unanswered", schemaPath: "#/properties/unanswered/type", keyword: "type", params: { type: "array" }, message: "must be array" };
          if (vErrors === null) {
            vErrors = [err43];
          } else {
            vErrors.push(err43);
          }
          errors++;
        }
      }
      if (data.file !== void 0) {
        let data15 = data.file;
        if (data15 && typeof data15 == "object" && !Array.isArray(data15)) {
          for (const key2 in data15) {
            if (!func1.call(schema31.properties.file.properties, key2)) {
              const err44 = { instancePath: instancePath + "/file", schemaPath: "#/properties/file/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key2 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err44];
              } else {
                vErrors.push(err44);
              }
              errors++;
            }
          }
          if (data15.extension !== void 0) {
            let data16 = data15.extension;
            if (typeof data16 === "string") {
              if (!pattern6.test(data16)) {
                const err45 = { instancePath: instancePath + "/file/extension", schemaPath: "#/properties/file/properties/extension/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9]{1,8}$" }, message: 'must match pattern "^[A-Za-z0-9]{1,8}$"' };
                if (vErrors === null) {
                  vErrors = [err45];
                } else {
                  vErrors.push(err45);
                }
                errors++;
              }
            } else {
              const err46 = { instancePath: instancePath + "/file/extension", schemaPath: "#/properties/file/properties/extension/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err46];
              } else {
                vErrors.push(err46);
              }
              errors++;
            }
          }
          if (data15["line-end"] !== void 0) {
            let data17 = data15["line-end"];
            if (typeof data17 !== "string") {
              const err47 = { instancePath: instancePath + "/file/line-end", schemaPath: "#/properties/file/properties/line-end/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err47];
              } else {
                vErrors.push(err47);
              }
              errors++;
            }
            if (!(data17 === "lf" || data17 === "crlf" || data17 === "cr")) {
              const err48 = { instancePath: instancePath + "/file/line-end", schemaPath: "#/properties/file/properties/line-end/enum", keyword: "enum", params: { allowedValues: schema31.properties.file.properties["line-end"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err48];
              } else {
                vErrors.push(err48);
              }
              errors++;
            }
          }
          if (data15["last-line-end"] !== void 0) {
            let data18 = data15["last-line-end"];
            if (typeof data18 !== "string") {
              const err49 = { instancePath: instancePath + "/file/last-line-end", schemaPath: "#/$defs/yesNo/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err49];
              } else {
                vErrors.push(err49);
              }
              errors++;
            }
            if (!(data18 === "yes" || data18 === "no")) {
              const err50 = { instancePath: instancePath + "/file/last-line-end", schemaPath: "#/$defs/yesNo/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err50];
              } else {
                vErrors.push(err50);
              }
              errors++;
            }
          }
          if (data15["end-of-block"] !== void 0) {
            let data19 = data15["end-of-block"];
            if (typeof data19 !== "string") {
              const err51 = { instancePath: instancePath + "/file/end-of-block", schemaPath: "#/properties/file/properties/end-of-block/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err51];
              } else {
                vErrors.push(err51);
              }
              errors++;
            }
            if (!(data19 === "none" || data19 === "semicolon" || data19 === "asterisk")) {
              const err52 = { instancePath: instancePath + "/file/end-of-block", schemaPath: "#/properties/file/properties/end-of-block/enum", keyword: "enum", params: { allowedValues: schema31.properties.file.properties["end-of-block"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err52];
              } else {
                vErrors.push(err52);
              }
              errors++;
            }
          }
          if (data15.delimiter !== void 0) {
            let data20 = data15.delimiter;
            if (typeof data20 !== "string") {
              const err53 = { instancePath: instancePath + "/file/delimiter", schemaPath: "#/properties/file/properties/delimiter/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err53];
              } else {
                vErrors.push(err53);
              }
              errors++;
            }
            if (!(data20 === "none" || data20 === "percent")) {
              const err54 = { instancePath: instancePath + "/file/delimiter", schemaPath: "#/properties/file/properties/delimiter/enum", keyword: "enum", params: { allowedValues: schema31.properties.file.properties.delimiter.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err54];
              } else {
                vErrors.push(err54);
              }
              errors++;
            }
          }
          if (data15["program-number"] !== void 0) {
            let data21 = data15["program-number"];
            const _errs47 = errors;
            let valid15 = false;
            const _errs48 = errors;
            if (typeof data21 !== "string") {
              const err55 = { instancePath: instancePath + "/file/program-number", schemaPath: "#/properties/file/properties/program-number/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err55];
              } else {
                vErrors.push(err55);
              }
              errors++;
            }
            if ("none" !== data21) {
              const err56 = { instancePath: instancePath + "/file/program-number", schemaPath: "#/properties/file/properties/program-number/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
              if (vErrors === null) {
                vErrors = [err56];
              } else {
                vErrors.push(err56);
              }
              errors++;
            }
            var _valid0 = _errs48 === errors;
            valid15 = valid15 || _valid0;
            const _errs50 = errors;
            if (data21 && typeof data21 == "object" && !Array.isArray(data21)) {
              for (const key3 in data21) {
                if (!(key3 === "letter" || key3 === "digits" || key3 === "from" || key3 === "to")) {
                  const err57 = { instancePath: instancePath + "/file/program-number", schemaPath: "#/properties/file/properties/program-number/anyOf/1/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key3 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err57];
                  } else {
                    vErrors.push(err57);
                  }
                  errors++;
                }
              }
              if (data21.letter !== void 0) {
                let data22 = data21.letter;
                if (typeof data22 !== "string") {
                  const err58 = { instancePath: instancePath + "/file/program-number/letter", schemaPath: "#/properties/file/properties/program-number/anyOf/1/properties/letter/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err58];
                  } else {
                    vErrors.push(err58);
                  }
                  errors++;
                }
                if (!(data22 === "O" || data22 === ":" || data22 === "%")) {
                  const err59 = { instancePath: instancePath + "/file/program-number/letter", schemaPath: "#/properties/file/properties/program-number/anyOf/1/properties/letter/enum", keyword: "enum", params: { allowedValues: schema31.properties.file.properties["program-number"].anyOf[1].properties.letter.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err59];
                  } else {
                    vErrors.push(err59);
                  }
                  errors++;
                }
              }
              if (data21.digits !== void 0) {
                let data23 = data21.digits;
                if (!(typeof data23 == "number" && (!(data23 % 1) && !isNaN(data23)) && isFinite(data23))) {
                  const err60 = { instancePath: instancePath + "/file/program-number/digits", schemaPath: "#/properties/file/properties/program-number/anyOf/1/properties/digits/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err60];
                  } else {
                    vErrors.push(err60);
                  }
                  errors++;
                }
                if (typeof data23 == "number" && isFinite(data23)) {
                  if (data23 > 8 || isNaN(data23)) {
                    const err61 = { instancePath: instancePath + "/file/program-number/digits", schemaPath: "#/properties/file/properties/program-number/anyOf/1/properties/digits/maximum", keyword: "maximum", params: { comparison: "<=", limit: 8 }, message: "must be <= 8" };
                    if (vErrors === null) {
                      vErrors = [err61];
                    } else {
                      vErrors.push(err61);
                    }
                    errors++;
                  }
                  if (data23 < 1 || isNaN(data23)) {
                    const err62 = { instancePath: instancePath + "/file/program-number/digits", schemaPath: "#/properties/file/properties/program-number/anyOf/1/properties/digits/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err62];
                    } else {
                      vErrors.push(err62);
                    }
                    errors++;
                  }
                }
              }
              if (data21.from !== void 0) {
                let data24 = data21.from;
                if (!(typeof data24 == "number" && (!(data24 % 1) && !isNaN(data24)) && isFinite(data24))) {
                  const err63 = { instancePath: instancePath + "/file/program-number/from", schemaPath: "#/properties/file/properties/program-number/anyOf/1/properties/from/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err63];
                  } else {
                    vErrors.push(err63);
                  }
                  errors++;
                }
                if (typeof data24 == "number" && isFinite(data24)) {
                  if (data24 > 99999999 || isNaN(data24)) {
                    const err64 = { instancePath: instancePath + "/file/program-number/from", schemaPath: "#/properties/file/properties/program-number/anyOf/1/properties/from/maximum", keyword: "maximum", params: { comparison: "<=", limit: 99999999 }, message: "must be <= 99999999" };
                    if (vErrors === null) {
                      vErrors = [err64];
                    } else {
                      vErrors.push(err64);
                    }
                    errors++;
                  }
                  if (data24 < 0 || isNaN(data24)) {
                    const err65 = { instancePath: instancePath + "/file/program-number/from", schemaPath: "#/properties/file/properties/program-number/anyOf/1/properties/from/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err65];
                    } else {
                      vErrors.push(err65);
                    }
                    errors++;
                  }
                }
              }
              if (data21.to !== void 0) {
                let data25 = data21.to;
                if (!(typeof data25 == "number" && (!(data25 % 1) && !isNaN(data25)) && isFinite(data25))) {
                  const err66 = { instancePath: instancePath + "/file/program-number/to", schemaPath: "#/properties/file/properties/program-number/anyOf/1/properties/to/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err66];
                  } else {
                    vErrors.push(err66);
                  }
                  errors++;
                }
                if (typeof data25 == "number" && isFinite(data25)) {
                  if (data25 > 99999999 || isNaN(data25)) {
                    const err67 = { instancePath: instancePath + "/file/program-number/to", schemaPath: "#/properties/file/properties/program-number/anyOf/1/properties/to/maximum", keyword: "maximum", params: { comparison: "<=", limit: 99999999 }, message: "must be <= 99999999" };
                    if (vErrors === null) {
                      vErrors = [err67];
                    } else {
                      vErrors.push(err67);
                    }
                    errors++;
                  }
                  if (data25 < 0 || isNaN(data25)) {
                    const err68 = { instancePath: instancePath + "/file/program-number/to", schemaPath: "#/properties/file/properties/program-number/anyOf/1/properties/to/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err68];
                    } else {
                      vErrors.push(err68);
                    }
                    errors++;
                  }
                }
              }
            } else {
              const err69 = { instancePath: instancePath + "/file/program-number", schemaPath: "#/properties/file/properties/program-number/anyOf/1/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err69];
              } else {
                vErrors.push(err69);
              }
              errors++;
            }
            var _valid0 = _errs50 === errors;
            valid15 = valid15 || _valid0;
            if (!valid15) {
              const err70 = { instancePath: instancePath + "/file/program-number", schemaPath: "#/properties/file/properties/program-number/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err70];
              } else {
                vErrors.push(err70);
              }
              errors++;
            } else {
              errors = _errs47;
              if (vErrors !== null) {
                if (_errs47) {
                  vErrors.length = _errs47;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data15["byte-order-mark"] !== void 0) {
            let data26 = data15["byte-order-mark"];
            if (typeof data26 !== "string") {
              const err71 = { instancePath: instancePath + "/file/byte-order-mark", schemaPath: "#/$defs/yesNo/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err71];
              } else {
                vErrors.push(err71);
              }
              errors++;
            }
            if (!(data26 === "yes" || data26 === "no")) {
              const err72 = { instancePath: instancePath + "/file/byte-order-mark", schemaPath: "#/$defs/yesNo/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err72];
              } else {
                vErrors.push(err72);
              }
              errors++;
            }
          }
          if (data15.leader !== void 0) {
            let data27 = data15.leader;
            if (!(typeof data27 == "number" && (!(data27 % 1) && !isNaN(data27)) && isFinite(data27))) {
              const err73 = { instancePath: instancePath + "/file/leader", schemaPath: "#/properties/file/properties/leader/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
              if (vErrors === null) {
                vErrors = [err73];
              } else {
                vErrors.push(err73);
              }
              errors++;
            }
            if (typeof data27 == "number" && isFinite(data27)) {
              if (data27 > 100 || isNaN(data27)) {
                const err74 = { instancePath: instancePath + "/file/leader", schemaPath: "#/properties/file/properties/leader/maximum", keyword: "maximum", params: { comparison: "<=", limit: 100 }, message: "must be <= 100" };
                if (vErrors === null) {
                  vErrors = [err74];
                } else {
                  vErrors.push(err74);
                }
                errors++;
              }
              if (data27 < 0 || isNaN(data27)) {
                const err75 = { instancePath: instancePath + "/file/leader", schemaPath: "#/properties/file/properties/leader/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                if (vErrors === null) {
                  vErrors = [err75];
                } else {
                  vErrors.push(err75);
                }
                errors++;
              }
            }
          }
          if (data15["blank-lines"] !== void 0) {
            let data28 = data15["blank-lines"];
            if (typeof data28 !== "string") {
              const err76 = { instancePath: instancePath + "/file/blank-lines", schemaPath: "#/properties/file/properties/blank-lines/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err76];
              } else {
                vErrors.push(err76);
              }
              errors++;
            }
            if (!(data28 === "between-sections" || data28 === "skipped" || data28 === "none")) {
              const err77 = { instancePath: instancePath + "/file/blank-lines", schemaPath: "#/properties/file/properties/blank-lines/enum", keyword: "enum", params: { allowedValues: schema31.properties.file.properties["blank-lines"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err77];
              } else {
                vErrors.push(err77);
              }
              errors++;
            }
          }
          if (data15.characters !== void 0) {
            let data29 = data15.characters;
            if (typeof data29 !== "string") {
              const err78 = { instancePath: instancePath + "/file/characters", schemaPath: "#/properties/file/properties/characters/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err78];
              } else {
                vErrors.push(err78);
              }
              errors++;
            }
            if (!(data29 === "upper" || data29 === "ascii" || data29 === "utf-8")) {
              const err79 = { instancePath: instancePath + "/file/characters", schemaPath: "#/properties/file/properties/characters/enum", keyword: "enum", params: { allowedValues: schema31.properties.file.properties.characters.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err79];
              } else {
                vErrors.push(err79);
              }
              errors++;
            }
          }
        } else {
          const err80 = { instancePath: instancePath + "/file", schemaPath: "#/properties/file/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err80];
          } else {
            vErrors.push(err80);
          }
          errors++;
        }
      }
      if (data.comments !== void 0) {
        let data30 = data.comments;
        if (data30 && typeof data30 == "object" && !Array.isArray(data30)) {
          for (const key4 in data30) {
            if (!(key4 === "style" || key4 === "longest" || key4 === "place")) {
              const err81 = { instancePath: instancePath + "/comments", schemaPath: "#/properties/comments/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key4 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err81];
              } else {
                vErrors.push(err81);
              }
              errors++;
            }
          }
          if (data30.style !== void 0) {
            let data31 = data30.style;
            if (typeof data31 !== "string") {
              const err82 = { instancePath: instancePath + "/comments/style", schemaPath: "#/properties/comments/properties/style/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err82];
              } else {
                vErrors.push(err82);
              }
              errors++;
            }
            if (!(data31 === "parentheses" || data31 === "semicolon" || data31 === "none")) {
              const err83 = { instancePath: instancePath + "/comments/style", schemaPath: "#/properties/comments/properties/style/enum", keyword: "enum", params: { allowedValues: schema31.properties.comments.properties.style.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err83];
              } else {
                vErrors.push(err83);
              }
              errors++;
            }
          }
          if (data30.longest !== void 0) {
            let data32 = data30.longest;
            if (!(typeof data32 == "number" && (!(data32 % 1) && !isNaN(data32)) && isFinite(data32))) {
              const err84 = { instancePath: instancePath + "/comments/longest", schemaPath: "#/properties/comments/properties/longest/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
              if (vErrors === null) {
                vErrors = [err84];
              } else {
                vErrors.push(err84);
              }
              errors++;
            }
            if (typeof data32 == "number" && isFinite(data32)) {
              if (data32 > 200 || isNaN(data32)) {
                const err85 = { instancePath: instancePath + "/comments/longest", schemaPath: "#/properties/comments/properties/longest/maximum", keyword: "maximum", params: { comparison: "<=", limit: 200 }, message: "must be <= 200" };
                if (vErrors === null) {
                  vErrors = [err85];
                } else {
                  vErrors.push(err85);
                }
                errors++;
              }
              if (data32 < 8 || isNaN(data32)) {
                const err86 = { instancePath: instancePath + "/comments/longest", schemaPath: "#/properties/comments/properties/longest/minimum", keyword: "minimum", params: { comparison: ">=", limit: 8 }, message: "must be >= 8" };
                if (vErrors === null) {
                  vErrors = [err86];
                } else {
                  vErrors.push(err86);
                }
                errors++;
              }
            }
          }
          if (data30.place !== void 0) {
            let data33 = data30.place;
            if (typeof data33 !== "string") {
              const err87 = { instancePath: instancePath + "/comments/place", schemaPath: "#/properties/comments/properties/place/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err87];
              } else {
                vErrors.push(err87);
              }
              errors++;
            }
            if (!(data33 === "anywhere" || data33 === "own-block")) {
              const err88 = { instancePath: instancePath + "/comments/place", schemaPath: "#/properties/comments/properties/place/enum", keyword: "enum", params: { allowedValues: schema31.properties.comments.properties.place.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err88];
              } else {
                vErrors.push(err88);
              }
              errors++;
            }
          }
        } else {
          const err89 = { instancePath: instancePath + "/comments", schemaPath: "#/properties/comments/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err89];
          } else {
            vErrors.push(err89);
          }
          errors++;
        }
      }
      if (data.blocks !== void 0) {
        let data34 = data.blocks;
        if (data34 && typeof data34 == "object" && !Array.isArray(data34)) {
          for (const key5 in data34) {
            if (!func1.call(schema31.properties.blocks.properties, key5)) {
              const err90 = { instancePath: instancePath + "/blocks", schemaPath: "#/properties/blocks/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key5 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err90];
              } else {
                vErrors.push(err90);
              }
              errors++;
            }
          }
          if (data34.number !== void 0) {
            let data35 = data34.number;
            const _errs83 = errors;
            let valid20 = false;
            const _errs84 = errors;
            if (typeof data35 !== "string") {
              const err91 = { instancePath: instancePath + "/blocks/number", schemaPath: "#/properties/blocks/properties/number/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err91];
              } else {
                vErrors.push(err91);
              }
              errors++;
            }
            if ("none" !== data35) {
              const err92 = { instancePath: instancePath + "/blocks/number", schemaPath: "#/properties/blocks/properties/number/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
              if (vErrors === null) {
                vErrors = [err92];
              } else {
                vErrors.push(err92);
              }
              errors++;
            }
            var _valid1 = _errs84 === errors;
            valid20 = valid20 || _valid1;
            const _errs86 = errors;
            if (data35 && typeof data35 == "object" && !Array.isArray(data35)) {
              for (const key6 in data35) {
                if (!(key6 === "on" || key6 === "start" || key6 === "step" || key6 === "to" || key6 === "width")) {
                  const err93 = { instancePath: instancePath + "/blocks/number", schemaPath: "#/properties/blocks/properties/number/anyOf/1/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key6 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err93];
                  } else {
                    vErrors.push(err93);
                  }
                  errors++;
                }
              }
              if (data35.on !== void 0) {
                let data36 = data35.on;
                if (typeof data36 !== "string") {
                  const err94 = { instancePath: instancePath + "/blocks/number/on", schemaPath: "#/properties/blocks/properties/number/anyOf/1/properties/on/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err94];
                  } else {
                    vErrors.push(err94);
                  }
                  errors++;
                }
                if (!(data36 === "all" || data36 === "sections")) {
                  const err95 = { instancePath: instancePath + "/blocks/number/on", schemaPath: "#/properties/blocks/properties/number/anyOf/1/properties/on/enum", keyword: "enum", params: { allowedValues: schema31.properties.blocks.properties.number.anyOf[1].properties.on.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err95];
                  } else {
                    vErrors.push(err95);
                  }
                  errors++;
                }
              }
              if (data35.start !== void 0) {
                let data37 = data35.start;
                if (!(typeof data37 == "number" && (!(data37 % 1) && !isNaN(data37)) && isFinite(data37))) {
                  const err96 = { instancePath: instancePath + "/blocks/number/start", schemaPath: "#/properties/blocks/properties/number/anyOf/1/properties/start/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err96];
                  } else {
                    vErrors.push(err96);
                  }
                  errors++;
                }
                if (typeof data37 == "number" && isFinite(data37)) {
                  if (data37 > 99999999 || isNaN(data37)) {
                    const err97 = { instancePath: instancePath + "/blocks/number/start", schemaPath: "#/properties/blocks/properties/number/anyOf/1/properties/start/maximum", keyword: "maximum", params: { comparison: "<=", limit: 99999999 }, message: "must be <= 99999999" };
                    if (vErrors === null) {
                      vErrors = [err97];
                    } else {
                      vErrors.push(err97);
                    }
                    errors++;
                  }
                  if (data37 < 0 || isNaN(data37)) {
                    const err98 = { instancePath: instancePath + "/blocks/number/start", schemaPath: "#/properties/blocks/properties/number/anyOf/1/properties/start/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err98];
                    } else {
                      vErrors.push(err98);
                    }
                    errors++;
                  }
                }
              }
              if (data35.step !== void 0) {
                let data38 = data35.step;
                if (!(typeof data38 == "number" && (!(data38 % 1) && !isNaN(data38)) && isFinite(data38))) {
                  const err99 = { instancePath: instancePath + "/blocks/number/step", schemaPath: "#/properties/blocks/properties/number/anyOf/1/properties/step/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err99];
                  } else {
                    vErrors.push(err99);
                  }
                  errors++;
                }
                if (typeof data38 == "number" && isFinite(data38)) {
                  if (data38 > 1e3 || isNaN(data38)) {
                    const err100 = { instancePath: instancePath + "/blocks/number/step", schemaPath: "#/properties/blocks/properties/number/anyOf/1/properties/step/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e3 }, message: "must be <= 1000" };
                    if (vErrors === null) {
                      vErrors = [err100];
                    } else {
                      vErrors.push(err100);
                    }
                    errors++;
                  }
                  if (data38 < 1 || isNaN(data38)) {
                    const err101 = { instancePath: instancePath + "/blocks/number/step", schemaPath: "#/properties/blocks/properties/number/anyOf/1/properties/step/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err101];
                    } else {
                      vErrors.push(err101);
                    }
                    errors++;
                  }
                }
              }
              if (data35.to !== void 0) {
                let data39 = data35.to;
                if (!(typeof data39 == "number" && (!(data39 % 1) && !isNaN(data39)) && isFinite(data39))) {
                  const err102 = { instancePath: instancePath + "/blocks/number/to", schemaPath: "#/properties/blocks/properties/number/anyOf/1/properties/to/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err102];
                  } else {
                    vErrors.push(err102);
                  }
                  errors++;
                }
                if (typeof data39 == "number" && isFinite(data39)) {
                  if (data39 > 99999999 || isNaN(data39)) {
                    const err103 = { instancePath: instancePath + "/blocks/number/to", schemaPath: "#/properties/blocks/properties/number/anyOf/1/properties/to/maximum", keyword: "maximum", params: { comparison: "<=", limit: 99999999 }, message: "must be <= 99999999" };
                    if (vErrors === null) {
                      vErrors = [err103];
                    } else {
                      vErrors.push(err103);
                    }
                    errors++;
                  }
                  if (data39 < 1 || isNaN(data39)) {
                    const err104 = { instancePath: instancePath + "/blocks/number/to", schemaPath: "#/properties/blocks/properties/number/anyOf/1/properties/to/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err104];
                    } else {
                      vErrors.push(err104);
                    }
                    errors++;
                  }
                }
              }
              if (data35.width !== void 0) {
                let data40 = data35.width;
                if (!(typeof data40 == "number" && (!(data40 % 1) && !isNaN(data40)) && isFinite(data40))) {
                  const err105 = { instancePath: instancePath + "/blocks/number/width", schemaPath: "#/properties/blocks/properties/number/anyOf/1/properties/width/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err105];
                  } else {
                    vErrors.push(err105);
                  }
                  errors++;
                }
                if (typeof data40 == "number" && isFinite(data40)) {
                  if (data40 > 8 || isNaN(data40)) {
                    const err106 = { instancePath: instancePath + "/blocks/number/width", schemaPath: "#/properties/blocks/properties/number/anyOf/1/properties/width/maximum", keyword: "maximum", params: { comparison: "<=", limit: 8 }, message: "must be <= 8" };
                    if (vErrors === null) {
                      vErrors = [err106];
                    } else {
                      vErrors.push(err106);
                    }
                    errors++;
                  }
                  if (data40 < 0 || isNaN(data40)) {
                    const err107 = { instancePath: instancePath + "/blocks/number/width", schemaPath: "#/properties/blocks/properties/number/anyOf/1/properties/width/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err107];
                    } else {
                      vErrors.push(err107);
                    }
                    errors++;
                  }
                }
              }
            } else {
              const err108 = { instancePath: instancePath + "/blocks/number", schemaPath: "#/properties/blocks/properties/number/anyOf/1/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err108];
              } else {
                vErrors.push(err108);
              }
              errors++;
            }
            var _valid1 = _errs86 === errors;
            valid20 = valid20 || _valid1;
            if (!valid20) {
              const err109 = { instancePath: instancePath + "/blocks/number", schemaPath: "#/properties/blocks/properties/number/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err109];
              } else {
                vErrors.push(err109);
              }
              errors++;
            } else {
              errors = _errs83;
              if (vErrors !== null) {
                if (_errs83) {
                  vErrors.length = _errs83;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data34.separator !== void 0) {
            let data41 = data34.separator;
            if (typeof data41 !== "string") {
              const err110 = { instancePath: instancePath + "/blocks/separator", schemaPath: "#/properties/blocks/properties/separator/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err110];
              } else {
                vErrors.push(err110);
              }
              errors++;
            }
            if (!(data41 === "none" || data41 === "blank" || data41 === "tab")) {
              const err111 = { instancePath: instancePath + "/blocks/separator", schemaPath: "#/properties/blocks/properties/separator/enum", keyword: "enum", params: { allowedValues: schema31.properties.blocks.properties.separator.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err111];
              } else {
                vErrors.push(err111);
              }
              errors++;
            }
          }
          if (data34.order !== void 0) {
            let data42 = data34.order;
            if (Array.isArray(data42)) {
              if (data42.length > 26) {
                const err112 = { instancePath: instancePath + "/blocks/order", schemaPath: "#/properties/blocks/properties/order/maxItems", keyword: "maxItems", params: { limit: 26 }, message: "must NOT have more than 26 items" };
                if (vErrors === null) {
                  vErrors = [err112];
                } else {
                  vErrors.push(err112);
                }
                errors++;
              }
              if (data42.length < 3) {
                const err113 = { instancePath: instancePath + "/blocks/order", schemaPath: "#/properties/blocks/properties/order/minItems", keyword: "minItems", params: { limit: 3 }, message: "must NOT have fewer than 3 items" };
                if (vErrors === null) {
                  vErrors = [err113];
                } else {
                  vErrors.push(err113);
                }
                errors++;
              }
              const len5 = data42.length;
              for (let i6 = 0; i6 < len5; i6++) {
                let data43 = data42[i6];
                if (typeof data43 === "string") {
                  if (!pattern7.test(data43)) {
                    const err114 = { instancePath: instancePath + "/blocks/order/" + i6, schemaPath: "#/$defs/letter/pattern", keyword: "pattern", params: { pattern: "^[A-Z]$" }, message: 'must match pattern "^[A-Z]$"' };
                    if (vErrors === null) {
                      vErrors = [err114];
                    } else {
                      vErrors.push(err114);
                    }
                    errors++;
                  }
                } else {
                  const err115 = { instancePath: instancePath + "/blocks/order/" + i6, schemaPath: "#/$defs/letter/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err115];
                  } else {
                    vErrors.push(err115);
                  }
                  errors++;
                }
              }
              let i7 = data42.length;
              let j1;
              if (i7 > 1) {
                outer0: for (; i7--; ) {
                  for (j1 = i7; j1--; ) {
                    if (func0(data42[i7], data42[j1])) {
                      const err116 = { instancePath: instancePath + "/blocks/order", schemaPath: "#/properties/blocks/properties/order/uniqueItems", keyword: "uniqueItems", params: { i: i7, j: j1 }, message: "must NOT have duplicate items (items ## " + j1 + " and " + i7 + " are identical)" };
                      if (vErrors === null) {
                        vErrors = [err116];
                      } else {
                        vErrors.push(err116);
                      }
                      errors++;
                      break outer0;
                    }
                  }
                }
              }
            } else {
              const err117 = { instancePath: instancePath + "/blocks/order", schemaPath: "#/properties/blocks/properties/order/type", keyword: "type", params: { type: "array" }, message: "must be array" };
              if (vErrors === null) {
                vErrors = [err117];
              } else {
                vErrors.push(err117);
              }
              errors++;
            }
          }
          if (data34.longest !== void 0) {
            let data44 = data34.longest;
            const _errs107 = errors;
            let valid26 = false;
            const _errs108 = errors;
            if (typeof data44 !== "string") {
              const err118 = { instancePath: instancePath + "/blocks/longest", schemaPath: "#/properties/blocks/properties/longest/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err118];
              } else {
                vErrors.push(err118);
              }
              errors++;
            }
            if ("none" !== data44) {
              const err119 = { instancePath: instancePath + "/blocks/longest", schemaPath: "#/properties/blocks/properties/longest/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
              if (vErrors === null) {
                vErrors = [err119];
              } else {
                vErrors.push(err119);
              }
              errors++;
            }
            var _valid2 = _errs108 === errors;
            valid26 = valid26 || _valid2;
            const _errs110 = errors;
            if (!(typeof data44 == "number" && (!(data44 % 1) && !isNaN(data44)) && isFinite(data44))) {
              const err120 = { instancePath: instancePath + "/blocks/longest", schemaPath: "#/properties/blocks/properties/longest/anyOf/1/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
              if (vErrors === null) {
                vErrors = [err120];
              } else {
                vErrors.push(err120);
              }
              errors++;
            }
            if (typeof data44 == "number" && isFinite(data44)) {
              if (data44 > 4e3 || isNaN(data44)) {
                const err121 = { instancePath: instancePath + "/blocks/longest", schemaPath: "#/properties/blocks/properties/longest/anyOf/1/maximum", keyword: "maximum", params: { comparison: "<=", limit: 4e3 }, message: "must be <= 4000" };
                if (vErrors === null) {
                  vErrors = [err121];
                } else {
                  vErrors.push(err121);
                }
                errors++;
              }
              if (data44 < 20 || isNaN(data44)) {
                const err122 = { instancePath: instancePath + "/blocks/longest", schemaPath: "#/properties/blocks/properties/longest/anyOf/1/minimum", keyword: "minimum", params: { comparison: ">=", limit: 20 }, message: "must be >= 20" };
                if (vErrors === null) {
                  vErrors = [err122];
                } else {
                  vErrors.push(err122);
                }
                errors++;
              }
            }
            var _valid2 = _errs110 === errors;
            valid26 = valid26 || _valid2;
            if (!valid26) {
              const err123 = { instancePath: instancePath + "/blocks/longest", schemaPath: "#/properties/blocks/properties/longest/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err123];
              } else {
                vErrors.push(err123);
              }
              errors++;
            } else {
              errors = _errs107;
              if (vErrors !== null) {
                if (_errs107) {
                  vErrors.length = _errs107;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data34["g-words"] !== void 0) {
            let data45 = data34["g-words"];
            if (typeof data45 !== "string") {
              const err124 = { instancePath: instancePath + "/blocks/g-words", schemaPath: "#/properties/blocks/properties/g-words/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err124];
              } else {
                vErrors.push(err124);
              }
              errors++;
            }
            if (!(data45 === "one" || data45 === "any")) {
              const err125 = { instancePath: instancePath + "/blocks/g-words", schemaPath: "#/properties/blocks/properties/g-words/enum", keyword: "enum", params: { allowedValues: schema31.properties.blocks.properties["g-words"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err125];
              } else {
                vErrors.push(err125);
              }
              errors++;
            }
          }
          if (data34["m-words"] !== void 0) {
            let data46 = data34["m-words"];
            if (!(typeof data46 == "number" && (!(data46 % 1) && !isNaN(data46)) && isFinite(data46))) {
              const err126 = { instancePath: instancePath + "/blocks/m-words", schemaPath: "#/properties/blocks/properties/m-words/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
              if (vErrors === null) {
                vErrors = [err126];
              } else {
                vErrors.push(err126);
              }
              errors++;
            }
            if (typeof data46 == "number" && isFinite(data46)) {
              if (data46 > 8 || isNaN(data46)) {
                const err127 = { instancePath: instancePath + "/blocks/m-words", schemaPath: "#/properties/blocks/properties/m-words/maximum", keyword: "maximum", params: { comparison: "<=", limit: 8 }, message: "must be <= 8" };
                if (vErrors === null) {
                  vErrors = [err127];
                } else {
                  vErrors.push(err127);
                }
                errors++;
              }
              if (data46 < 1 || isNaN(data46)) {
                const err128 = { instancePath: instancePath + "/blocks/m-words", schemaPath: "#/properties/blocks/properties/m-words/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                if (vErrors === null) {
                  vErrors = [err128];
                } else {
                  vErrors.push(err128);
                }
                errors++;
              }
            }
          }
          if (data34.modes !== void 0) {
            let data47 = data34.modes;
            if (typeof data47 !== "string") {
              const err129 = { instancePath: instancePath + "/blocks/modes", schemaPath: "#/properties/blocks/properties/modes/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err129];
              } else {
                vErrors.push(err129);
              }
              errors++;
            }
            if (!(data47 === "together" || data47 === "apart")) {
              const err130 = { instancePath: instancePath + "/blocks/modes", schemaPath: "#/properties/blocks/properties/modes/enum", keyword: "enum", params: { allowedValues: schema31.properties.blocks.properties.modes.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err130];
              } else {
                vErrors.push(err130);
              }
              errors++;
            }
          }
          if (data34.sections !== void 0) {
            let data48 = data34.sections;
            if (data48 && typeof data48 == "object" && !Array.isArray(data48)) {
              for (const key7 in data48) {
                if (!(key7 === "begin-at" || key7 === "mark" || key7 === "comments" || key7 === "modes")) {
                  const err131 = { instancePath: instancePath + "/blocks/sections", schemaPath: "#/properties/blocks/properties/sections/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key7 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err131];
                  } else {
                    vErrors.push(err131);
                  }
                  errors++;
                }
              }
              if (data48["begin-at"] !== void 0) {
                let data49 = data48["begin-at"];
                if (typeof data49 !== "string") {
                  const err132 = { instancePath: instancePath + "/blocks/sections/begin-at", schemaPath: "#/properties/blocks/properties/sections/properties/begin-at/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err132];
                  } else {
                    vErrors.push(err132);
                  }
                  errors++;
                }
                if (!(data49 === "operation" || data49 === "tool")) {
                  const err133 = { instancePath: instancePath + "/blocks/sections/begin-at", schemaPath: "#/properties/blocks/properties/sections/properties/begin-at/enum", keyword: "enum", params: { allowedValues: schema31.properties.blocks.properties.sections.properties["begin-at"].enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err133];
                  } else {
                    vErrors.push(err133);
                  }
                  errors++;
                }
              }
              if (data48.mark !== void 0) {
                let data50 = data48.mark;
                if (typeof data50 !== "string") {
                  const err134 = { instancePath: instancePath + "/blocks/sections/mark", schemaPath: "#/properties/blocks/properties/sections/properties/mark/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err134];
                  } else {
                    vErrors.push(err134);
                  }
                  errors++;
                }
                if (!(data50 === "N" || data50 === "colon")) {
                  const err135 = { instancePath: instancePath + "/blocks/sections/mark", schemaPath: "#/properties/blocks/properties/sections/properties/mark/enum", keyword: "enum", params: { allowedValues: schema31.properties.blocks.properties.sections.properties.mark.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err135];
                  } else {
                    vErrors.push(err135);
                  }
                  errors++;
                }
              }
              if (data48.comments !== void 0) {
                let data51 = data48.comments;
                if (typeof data51 !== "string") {
                  const err136 = { instancePath: instancePath + "/blocks/sections/comments", schemaPath: "#/$defs/yesNo/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err136];
                  } else {
                    vErrors.push(err136);
                  }
                  errors++;
                }
                if (!(data51 === "yes" || data51 === "no")) {
                  const err137 = { instancePath: instancePath + "/blocks/sections/comments", schemaPath: "#/$defs/yesNo/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err137];
                  } else {
                    vErrors.push(err137);
                  }
                  errors++;
                }
              }
              if (data48.modes !== void 0) {
                let data52 = data48.modes;
                if (typeof data52 !== "string") {
                  const err138 = { instancePath: instancePath + "/blocks/sections/modes", schemaPath: "#/properties/blocks/properties/sections/properties/modes/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err138];
                  } else {
                    vErrors.push(err138);
                  }
                  errors++;
                }
                if (!(data52 === "restated" || data52 === "kept")) {
                  const err139 = { instancePath: instancePath + "/blocks/sections/modes", schemaPath: "#/properties/blocks/properties/sections/properties/modes/enum", keyword: "enum", params: { allowedValues: schema31.properties.blocks.properties.sections.properties.modes.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err139];
                  } else {
                    vErrors.push(err139);
                  }
                  errors++;
                }
              }
            } else {
              const err140 = { instancePath: instancePath + "/blocks/sections", schemaPath: "#/properties/blocks/properties/sections/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err140];
              } else {
                vErrors.push(err140);
              }
              errors++;
            }
          }
          if (data34.delete !== void 0) {
            let data53 = data34.delete;
            if (data53 && typeof data53 == "object" && !Array.isArray(data53)) {
              for (const key8 in data53) {
                if (!(key8 === "mark" || key8 === "place")) {
                  const err141 = { instancePath: instancePath + "/blocks/delete", schemaPath: "#/properties/blocks/properties/delete/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key8 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err141];
                  } else {
                    vErrors.push(err141);
                  }
                  errors++;
                }
              }
              if (data53.mark !== void 0) {
                let data54 = data53.mark;
                if (typeof data54 !== "string") {
                  const err142 = { instancePath: instancePath + "/blocks/delete/mark", schemaPath: "#/properties/blocks/properties/delete/properties/mark/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err142];
                  } else {
                    vErrors.push(err142);
                  }
                  errors++;
                }
                if (!(data54 === "none" || data54 === "slash" || data54 === "numbered")) {
                  const err143 = { instancePath: instancePath + "/blocks/delete/mark", schemaPath: "#/properties/blocks/properties/delete/properties/mark/enum", keyword: "enum", params: { allowedValues: schema31.properties.blocks.properties.delete.properties.mark.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err143];
                  } else {
                    vErrors.push(err143);
                  }
                  errors++;
                }
              }
              if (data53.place !== void 0) {
                let data55 = data53.place;
                if (typeof data55 !== "string") {
                  const err144 = { instancePath: instancePath + "/blocks/delete/place", schemaPath: "#/properties/blocks/properties/delete/properties/place/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err144];
                  } else {
                    vErrors.push(err144);
                  }
                  errors++;
                }
                if (!(data55 === "before-number" || data55 === "after-number")) {
                  const err145 = { instancePath: instancePath + "/blocks/delete/place", schemaPath: "#/properties/blocks/properties/delete/properties/place/enum", keyword: "enum", params: { allowedValues: schema31.properties.blocks.properties.delete.properties.place.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err145];
                  } else {
                    vErrors.push(err145);
                  }
                  errors++;
                }
              }
            } else {
              const err146 = { instancePath: instancePath + "/blocks/delete", schemaPath: "#/properties/blocks/properties/delete/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err146];
              } else {
                vErrors.push(err146);
              }
              errors++;
            }
          }
          if (data34["most-words"] !== void 0) {
            let data56 = data34["most-words"];
            const _errs138 = errors;
            let valid30 = false;
            const _errs139 = errors;
            if (typeof data56 !== "string") {
              const err147 = { instancePath: instancePath + "/blocks/most-words", schemaPath: "#/properties/blocks/properties/most-words/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err147];
              } else {
                vErrors.push(err147);
              }
              errors++;
            }
            if ("none" !== data56) {
              const err148 = { instancePath: instancePath + "/blocks/most-words", schemaPath: "#/properties/blocks/properties/most-words/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
              if (vErrors === null) {
                vErrors = [err148];
              } else {
                vErrors.push(err148);
              }
              errors++;
            }
            var _valid3 = _errs139 === errors;
            valid30 = valid30 || _valid3;
            const _errs141 = errors;
            if (!(typeof data56 == "number" && (!(data56 % 1) && !isNaN(data56)) && isFinite(data56))) {
              const err149 = { instancePath: instancePath + "/blocks/most-words", schemaPath: "#/properties/blocks/properties/most-words/anyOf/1/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
              if (vErrors === null) {
                vErrors = [err149];
              } else {
                vErrors.push(err149);
              }
              errors++;
            }
            if (typeof data56 == "number" && isFinite(data56)) {
              if (data56 > 40 || isNaN(data56)) {
                const err150 = { instancePath: instancePath + "/blocks/most-words", schemaPath: "#/properties/blocks/properties/most-words/anyOf/1/maximum", keyword: "maximum", params: { comparison: "<=", limit: 40 }, message: "must be <= 40" };
                if (vErrors === null) {
                  vErrors = [err150];
                } else {
                  vErrors.push(err150);
                }
                errors++;
              }
              if (data56 < 2 || isNaN(data56)) {
                const err151 = { instancePath: instancePath + "/blocks/most-words", schemaPath: "#/properties/blocks/properties/most-words/anyOf/1/minimum", keyword: "minimum", params: { comparison: ">=", limit: 2 }, message: "must be >= 2" };
                if (vErrors === null) {
                  vErrors = [err151];
                } else {
                  vErrors.push(err151);
                }
                errors++;
              }
            }
            var _valid3 = _errs141 === errors;
            valid30 = valid30 || _valid3;
            if (!valid30) {
              const err152 = { instancePath: instancePath + "/blocks/most-words", schemaPath: "#/properties/blocks/properties/most-words/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err152];
              } else {
                vErrors.push(err152);
              }
              errors++;
            } else {
              errors = _errs138;
              if (vErrors !== null) {
                if (_errs138) {
                  vErrors.length = _errs138;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data34["stops-act"] !== void 0) {
            let data57 = data34["stops-act"];
            if (typeof data57 !== "string") {
              const err153 = { instancePath: instancePath + "/blocks/stops-act", schemaPath: "#/properties/blocks/properties/stops-act/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err153];
              } else {
                vErrors.push(err153);
              }
              errors++;
            }
            if (!(data57 === "before-motion" || data57 === "after-motion")) {
              const err154 = { instancePath: instancePath + "/blocks/stops-act", schemaPath: "#/properties/blocks/properties/stops-act/enum", keyword: "enum", params: { allowedValues: schema31.properties.blocks.properties["stops-act"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err154];
              } else {
                vErrors.push(err154);
              }
              errors++;
            }
          }
          if (data34.executes !== void 0) {
            let data58 = data34.executes;
            if (typeof data58 !== "string") {
              const err155 = { instancePath: instancePath + "/blocks/executes", schemaPath: "#/properties/blocks/properties/executes/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err155];
              } else {
                vErrors.push(err155);
              }
              errors++;
            }
            if (!(data58 === "by-kind" || data58 === "left-to-right")) {
              const err156 = { instancePath: instancePath + "/blocks/executes", schemaPath: "#/properties/blocks/properties/executes/enum", keyword: "enum", params: { allowedValues: schema31.properties.blocks.properties.executes.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err156];
              } else {
                vErrors.push(err156);
              }
              errors++;
            }
          }
        } else {
          const err157 = { instancePath: instancePath + "/blocks", schemaPath: "#/properties/blocks/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err157];
          } else {
            vErrors.push(err157);
          }
          errors++;
        }
      }
      if (data.variables !== void 0) {
        let data59 = data.variables;
        if (data59 && typeof data59 == "object" && !Array.isArray(data59)) {
          for (const key9 in data59) {
            if (!(key9 === "parameters" || key9 === "control" || key9 === "nesting")) {
              const err158 = { instancePath: instancePath + "/variables", schemaPath: "#/properties/variables/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key9 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err158];
              } else {
                vErrors.push(err158);
              }
              errors++;
            }
          }
          if (data59.parameters !== void 0) {
            let data60 = data59.parameters;
            if (typeof data60 !== "string") {
              const err159 = { instancePath: instancePath + "/variables/parameters", schemaPath: "#/properties/variables/properties/parameters/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err159];
              } else {
                vErrors.push(err159);
              }
              errors++;
            }
            if (!(data60 === "none" || data60 === "numbered" || data60 === "named")) {
              const err160 = { instancePath: instancePath + "/variables/parameters", schemaPath: "#/properties/variables/properties/parameters/enum", keyword: "enum", params: { allowedValues: schema31.properties.variables.properties.parameters.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err160];
              } else {
                vErrors.push(err160);
              }
              errors++;
            }
          }
          if (data59.control !== void 0) {
            let data61 = data59.control;
            if (typeof data61 !== "string") {
              const err161 = { instancePath: instancePath + "/variables/control", schemaPath: "#/properties/variables/properties/control/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err161];
              } else {
                vErrors.push(err161);
              }
              errors++;
            }
            if (!(data61 === "none" || data61 === "calls" || data61 === "o-words")) {
              const err162 = { instancePath: instancePath + "/variables/control", schemaPath: "#/properties/variables/properties/control/enum", keyword: "enum", params: { allowedValues: schema31.properties.variables.properties.control.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err162];
              } else {
                vErrors.push(err162);
              }
              errors++;
            }
          }
          if (data59.nesting !== void 0) {
            let data62 = data59.nesting;
            if (!(typeof data62 == "number" && (!(data62 % 1) && !isNaN(data62)) && isFinite(data62))) {
              const err163 = { instancePath: instancePath + "/variables/nesting", schemaPath: "#/properties/variables/properties/nesting/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
              if (vErrors === null) {
                vErrors = [err163];
              } else {
                vErrors.push(err163);
              }
              errors++;
            }
            if (typeof data62 == "number" && isFinite(data62)) {
              if (data62 > 99 || isNaN(data62)) {
                const err164 = { instancePath: instancePath + "/variables/nesting", schemaPath: "#/properties/variables/properties/nesting/maximum", keyword: "maximum", params: { comparison: "<=", limit: 99 }, message: "must be <= 99" };
                if (vErrors === null) {
                  vErrors = [err164];
                } else {
                  vErrors.push(err164);
                }
                errors++;
              }
              if (data62 < 0 || isNaN(data62)) {
                const err165 = { instancePath: instancePath + "/variables/nesting", schemaPath: "#/properties/variables/properties/nesting/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                if (vErrors === null) {
                  vErrors = [err165];
                } else {
                  vErrors.push(err165);
                }
                errors++;
              }
            }
          }
        } else {
          const err166 = { instancePath: instancePath + "/variables", schemaPath: "#/properties/variables/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err166];
          } else {
            vErrors.push(err166);
          }
          errors++;
        }
      }
      if (data.numbers !== void 0) {
        let data63 = data.numbers;
        if (data63 && typeof data63 == "object" && !Array.isArray(data63)) {
          for (const key10 in data63) {
            if (!func1.call(schema31.properties.numbers.properties, key10)) {
              const err167 = { instancePath: instancePath + "/numbers", schemaPath: "#/properties/numbers/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key10 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err167];
              } else {
                vErrors.push(err167);
              }
              errors++;
            }
          }
          if (data63.point !== void 0) {
            let data64 = data63.point;
            if (typeof data64 !== "string") {
              const err168 = { instancePath: instancePath + "/numbers/point", schemaPath: "#/properties/numbers/properties/point/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err168];
              } else {
                vErrors.push(err168);
              }
              errors++;
            }
            if (!(data64 === "always" || data64 === "when-needed" || data64 === "never")) {
              const err169 = { instancePath: instancePath + "/numbers/point", schemaPath: "#/properties/numbers/properties/point/enum", keyword: "enum", params: { allowedValues: schema31.properties.numbers.properties.point.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err169];
              } else {
                vErrors.push(err169);
              }
              errors++;
            }
          }
          if (data63["trailing-zeros"] !== void 0) {
            let data65 = data63["trailing-zeros"];
            if (typeof data65 !== "string") {
              const err170 = { instancePath: instancePath + "/numbers/trailing-zeros", schemaPath: "#/properties/numbers/properties/trailing-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err170];
              } else {
                vErrors.push(err170);
              }
              errors++;
            }
            if (!(data65 === "keep" || data65 === "drop" || data65 === "one")) {
              const err171 = { instancePath: instancePath + "/numbers/trailing-zeros", schemaPath: "#/properties/numbers/properties/trailing-zeros/enum", keyword: "enum", params: { allowedValues: schema31.properties.numbers.properties["trailing-zeros"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err171];
              } else {
                vErrors.push(err171);
              }
              errors++;
            }
          }
          if (data63["leading-zero"] !== void 0) {
            let data66 = data63["leading-zero"];
            if (typeof data66 !== "string") {
              const err172 = { instancePath: instancePath + "/numbers/leading-zero", schemaPath: "#/properties/numbers/properties/leading-zero/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err172];
              } else {
                vErrors.push(err172);
              }
              errors++;
            }
            if (!(data66 === "keep" || data66 === "drop")) {
              const err173 = { instancePath: instancePath + "/numbers/leading-zero", schemaPath: "#/properties/numbers/properties/leading-zero/enum", keyword: "enum", params: { allowedValues: schema31.properties.numbers.properties["leading-zero"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err173];
              } else {
                vErrors.push(err173);
              }
              errors++;
            }
          }
          if (data63.plus !== void 0) {
            let data67 = data63.plus;
            if (typeof data67 !== "string") {
              const err174 = { instancePath: instancePath + "/numbers/plus", schemaPath: "#/$defs/yesNo/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err174];
              } else {
                vErrors.push(err174);
              }
              errors++;
            }
            if (!(data67 === "yes" || data67 === "no")) {
              const err175 = { instancePath: instancePath + "/numbers/plus", schemaPath: "#/$defs/yesNo/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err175];
              } else {
                vErrors.push(err175);
              }
              errors++;
            }
          }
          if (data63["suppressed-zeros"] !== void 0) {
            let data68 = data63["suppressed-zeros"];
            if (typeof data68 !== "string") {
              const err176 = { instancePath: instancePath + "/numbers/suppressed-zeros", schemaPath: "#/properties/numbers/properties/suppressed-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err176];
              } else {
                vErrors.push(err176);
              }
              errors++;
            }
            if (!(data68 === "leading" || data68 === "trailing" || data68 === "none")) {
              const err177 = { instancePath: instancePath + "/numbers/suppressed-zeros", schemaPath: "#/properties/numbers/properties/suppressed-zeros/enum", keyword: "enum", params: { allowedValues: schema31.properties.numbers.properties["suppressed-zeros"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err177];
              } else {
                vErrors.push(err177);
              }
              errors++;
            }
          }
          if (data63.digits !== void 0) {
            let data69 = data63.digits;
            if (!(typeof data69 == "number" && (!(data69 % 1) && !isNaN(data69)) && isFinite(data69))) {
              const err178 = { instancePath: instancePath + "/numbers/digits", schemaPath: "#/properties/numbers/properties/digits/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
              if (vErrors === null) {
                vErrors = [err178];
              } else {
                vErrors.push(err178);
              }
              errors++;
            }
            if (typeof data69 == "number" && isFinite(data69)) {
              if (data69 > 12 || isNaN(data69)) {
                const err179 = { instancePath: instancePath + "/numbers/digits", schemaPath: "#/properties/numbers/properties/digits/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                if (vErrors === null) {
                  vErrors = [err179];
                } else {
                  vErrors.push(err179);
                }
                errors++;
              }
              if (data69 < 1 || isNaN(data69)) {
                const err180 = { instancePath: instancePath + "/numbers/digits", schemaPath: "#/properties/numbers/properties/digits/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                if (vErrors === null) {
                  vErrors = [err180];
                } else {
                  vErrors.push(err180);
                }
                errors++;
              }
            }
          }
          if (data63["whole-digits"] !== void 0) {
            let data70 = data63["whole-digits"];
            const _errs173 = errors;
            let valid34 = false;
            const _errs174 = errors;
            if (typeof data70 !== "string") {
              const err181 = { instancePath: instancePath + "/numbers/whole-digits", schemaPath: "#/properties/numbers/properties/whole-digits/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err181];
              } else {
                vErrors.push(err181);
              }
              errors++;
            }
            if ("none" !== data70) {
              const err182 = { instancePath: instancePath + "/numbers/whole-digits", schemaPath: "#/properties/numbers/properties/whole-digits/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
              if (vErrors === null) {
                vErrors = [err182];
              } else {
                vErrors.push(err182);
              }
              errors++;
            }
            var _valid4 = _errs174 === errors;
            valid34 = valid34 || _valid4;
            const _errs176 = errors;
            if (!(typeof data70 == "number" && (!(data70 % 1) && !isNaN(data70)) && isFinite(data70))) {
              const err183 = { instancePath: instancePath + "/numbers/whole-digits", schemaPath: "#/properties/numbers/properties/whole-digits/anyOf/1/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
              if (vErrors === null) {
                vErrors = [err183];
              } else {
                vErrors.push(err183);
              }
              errors++;
            }
            if (typeof data70 == "number" && isFinite(data70)) {
              if (data70 > 12 || isNaN(data70)) {
                const err184 = { instancePath: instancePath + "/numbers/whole-digits", schemaPath: "#/properties/numbers/properties/whole-digits/anyOf/1/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                if (vErrors === null) {
                  vErrors = [err184];
                } else {
                  vErrors.push(err184);
                }
                errors++;
              }
              if (data70 < 1 || isNaN(data70)) {
                const err185 = { instancePath: instancePath + "/numbers/whole-digits", schemaPath: "#/properties/numbers/properties/whole-digits/anyOf/1/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                if (vErrors === null) {
                  vErrors = [err185];
                } else {
                  vErrors.push(err185);
                }
                errors++;
              }
            }
            var _valid4 = _errs176 === errors;
            valid34 = valid34 || _valid4;
            if (!valid34) {
              const err186 = { instancePath: instancePath + "/numbers/whole-digits", schemaPath: "#/properties/numbers/properties/whole-digits/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err186];
              } else {
                vErrors.push(err186);
              }
              errors++;
            } else {
              errors = _errs173;
              if (vErrors !== null) {
                if (_errs173) {
                  vErrors.length = _errs173;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data63.length !== void 0) {
            let data71 = data63.length;
            if (data71 && typeof data71 == "object" && !Array.isArray(data71)) {
              for (const key11 in data71) {
                if (!func1.call(schema31.properties.numbers.properties.length.properties, key11)) {
                  const err187 = { instancePath: instancePath + "/numbers/length", schemaPath: "#/properties/numbers/properties/length/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key11 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err187];
                  } else {
                    vErrors.push(err187);
                  }
                  errors++;
                }
              }
              if (data71.mm !== void 0) {
                let data72 = data71.mm;
                if (!(typeof data72 == "number" && (!(data72 % 1) && !isNaN(data72)) && isFinite(data72))) {
                  const err188 = { instancePath: instancePath + "/numbers/length/mm", schemaPath: "#/properties/numbers/properties/length/properties/mm/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err188];
                  } else {
                    vErrors.push(err188);
                  }
                  errors++;
                }
                if (typeof data72 == "number" && isFinite(data72)) {
                  if (data72 > 7 || isNaN(data72)) {
                    const err189 = { instancePath: instancePath + "/numbers/length/mm", schemaPath: "#/properties/numbers/properties/length/properties/mm/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                    if (vErrors === null) {
                      vErrors = [err189];
                    } else {
                      vErrors.push(err189);
                    }
                    errors++;
                  }
                  if (data72 < 0 || isNaN(data72)) {
                    const err190 = { instancePath: instancePath + "/numbers/length/mm", schemaPath: "#/properties/numbers/properties/length/properties/mm/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err190];
                    } else {
                      vErrors.push(err190);
                    }
                    errors++;
                  }
                }
              }
              if (data71.inch !== void 0) {
                let data73 = data71.inch;
                if (!(typeof data73 == "number" && (!(data73 % 1) && !isNaN(data73)) && isFinite(data73))) {
                  const err191 = { instancePath: instancePath + "/numbers/length/inch", schemaPath: "#/properties/numbers/properties/length/properties/inch/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err191];
                  } else {
                    vErrors.push(err191);
                  }
                  errors++;
                }
                if (typeof data73 == "number" && isFinite(data73)) {
                  if (data73 > 6 || isNaN(data73)) {
                    const err192 = { instancePath: instancePath + "/numbers/length/inch", schemaPath: "#/properties/numbers/properties/length/properties/inch/maximum", keyword: "maximum", params: { comparison: "<=", limit: 6 }, message: "must be <= 6" };
                    if (vErrors === null) {
                      vErrors = [err192];
                    } else {
                      vErrors.push(err192);
                    }
                    errors++;
                  }
                  if (data73 < 0 || isNaN(data73)) {
                    const err193 = { instancePath: instancePath + "/numbers/length/inch", schemaPath: "#/properties/numbers/properties/length/properties/inch/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err193];
                    } else {
                      vErrors.push(err193);
                    }
                    errors++;
                  }
                }
              }
              if (data71.point !== void 0) {
                let data74 = data71.point;
                if (typeof data74 !== "string") {
                  const err194 = { instancePath: instancePath + "/numbers/length/point", schemaPath: "#/$defs/own-point/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err194];
                  } else {
                    vErrors.push(err194);
                  }
                  errors++;
                }
                if (!(data74 === "always" || data74 === "when-needed" || data74 === "never")) {
                  const err195 = { instancePath: instancePath + "/numbers/length/point", schemaPath: "#/$defs/own-point/enum", keyword: "enum", params: { allowedValues: schema37.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err195];
                  } else {
                    vErrors.push(err195);
                  }
                  errors++;
                }
              }
              if (data71["trailing-zeros"] !== void 0) {
                let data75 = data71["trailing-zeros"];
                if (typeof data75 !== "string") {
                  const err196 = { instancePath: instancePath + "/numbers/length/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err196];
                  } else {
                    vErrors.push(err196);
                  }
                  errors++;
                }
                if (!(data75 === "keep" || data75 === "drop" || data75 === "one")) {
                  const err197 = { instancePath: instancePath + "/numbers/length/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/enum", keyword: "enum", params: { allowedValues: schema38.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err197];
                  } else {
                    vErrors.push(err197);
                  }
                  errors++;
                }
              }
              if (data71["leading-zero"] !== void 0) {
                let data76 = data71["leading-zero"];
                if (typeof data76 !== "string") {
                  const err198 = { instancePath: instancePath + "/numbers/length/leading-zero", schemaPath: "#/$defs/own-leading-zero/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err198];
                  } else {
                    vErrors.push(err198);
                  }
                  errors++;
                }
                if (!(data76 === "keep" || data76 === "drop")) {
                  const err199 = { instancePath: instancePath + "/numbers/length/leading-zero", schemaPath: "#/$defs/own-leading-zero/enum", keyword: "enum", params: { allowedValues: schema39.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err199];
                  } else {
                    vErrors.push(err199);
                  }
                  errors++;
                }
              }
              if (data71.plus !== void 0) {
                let data77 = data71.plus;
                if (typeof data77 !== "string") {
                  const err200 = { instancePath: instancePath + "/numbers/length/plus", schemaPath: "#/$defs/own-plus/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err200];
                  } else {
                    vErrors.push(err200);
                  }
                  errors++;
                }
                if (!(data77 === "yes" || data77 === "no")) {
                  const err201 = { instancePath: instancePath + "/numbers/length/plus", schemaPath: "#/$defs/own-plus/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err201];
                  } else {
                    vErrors.push(err201);
                  }
                  errors++;
                }
              }
              if (data71["suppressed-zeros"] !== void 0) {
                let data78 = data71["suppressed-zeros"];
                if (typeof data78 !== "string") {
                  const err202 = { instancePath: instancePath + "/numbers/length/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err202];
                  } else {
                    vErrors.push(err202);
                  }
                  errors++;
                }
                if (!(data78 === "leading" || data78 === "trailing" || data78 === "none")) {
                  const err203 = { instancePath: instancePath + "/numbers/length/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/enum", keyword: "enum", params: { allowedValues: schema41.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err203];
                  } else {
                    vErrors.push(err203);
                  }
                  errors++;
                }
              }
              if (data71.digits !== void 0) {
                let data79 = data71.digits;
                if (!(typeof data79 == "number" && (!(data79 % 1) && !isNaN(data79)) && isFinite(data79))) {
                  const err204 = { instancePath: instancePath + "/numbers/length/digits", schemaPath: "#/$defs/own-digits/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err204];
                  } else {
                    vErrors.push(err204);
                  }
                  errors++;
                }
                if (typeof data79 == "number" && isFinite(data79)) {
                  if (data79 > 12 || isNaN(data79)) {
                    const err205 = { instancePath: instancePath + "/numbers/length/digits", schemaPath: "#/$defs/own-digits/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err205];
                    } else {
                      vErrors.push(err205);
                    }
                    errors++;
                  }
                  if (data79 < 1 || isNaN(data79)) {
                    const err206 = { instancePath: instancePath + "/numbers/length/digits", schemaPath: "#/$defs/own-digits/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err206];
                    } else {
                      vErrors.push(err206);
                    }
                    errors++;
                  }
                }
              }
              if (data71["whole-digits"] !== void 0) {
                let data80 = data71["whole-digits"];
                const _errs205 = errors;
                let valid43 = false;
                const _errs206 = errors;
                if (typeof data80 !== "string") {
                  const err207 = { instancePath: instancePath + "/numbers/length/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err207];
                  } else {
                    vErrors.push(err207);
                  }
                  errors++;
                }
                if ("none" !== data80) {
                  const err208 = { instancePath: instancePath + "/numbers/length/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
                  if (vErrors === null) {
                    vErrors = [err208];
                  } else {
                    vErrors.push(err208);
                  }
                  errors++;
                }
                var _valid5 = _errs206 === errors;
                valid43 = valid43 || _valid5;
                const _errs208 = errors;
                if (!(typeof data80 == "number" && (!(data80 % 1) && !isNaN(data80)) && isFinite(data80))) {
                  const err209 = { instancePath: instancePath + "/numbers/length/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err209];
                  } else {
                    vErrors.push(err209);
                  }
                  errors++;
                }
                if (typeof data80 == "number" && isFinite(data80)) {
                  if (data80 > 12 || isNaN(data80)) {
                    const err210 = { instancePath: instancePath + "/numbers/length/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err210];
                    } else {
                      vErrors.push(err210);
                    }
                    errors++;
                  }
                  if (data80 < 1 || isNaN(data80)) {
                    const err211 = { instancePath: instancePath + "/numbers/length/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err211];
                    } else {
                      vErrors.push(err211);
                    }
                    errors++;
                  }
                }
                var _valid5 = _errs208 === errors;
                valid43 = valid43 || _valid5;
                if (!valid43) {
                  const err212 = { instancePath: instancePath + "/numbers/length/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err212];
                  } else {
                    vErrors.push(err212);
                  }
                  errors++;
                } else {
                  errors = _errs205;
                  if (vErrors !== null) {
                    if (_errs205) {
                      vErrors.length = _errs205;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
            } else {
              const err213 = { instancePath: instancePath + "/numbers/length", schemaPath: "#/properties/numbers/properties/length/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err213];
              } else {
                vErrors.push(err213);
              }
              errors++;
            }
          }
          if (data63["arc-centre"] !== void 0) {
            let data81 = data63["arc-centre"];
            if (data81 && typeof data81 == "object" && !Array.isArray(data81)) {
              for (const key12 in data81) {
                if (!func1.call(schema31.properties.numbers.properties["arc-centre"].properties, key12)) {
                  const err214 = { instancePath: instancePath + "/numbers/arc-centre", schemaPath: "#/properties/numbers/properties/arc-centre/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key12 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err214];
                  } else {
                    vErrors.push(err214);
                  }
                  errors++;
                }
              }
              if (data81.mm !== void 0) {
                let data82 = data81.mm;
                if (!(typeof data82 == "number" && (!(data82 % 1) && !isNaN(data82)) && isFinite(data82))) {
                  const err215 = { instancePath: instancePath + "/numbers/arc-centre/mm", schemaPath: "#/properties/numbers/properties/arc-centre/properties/mm/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err215];
                  } else {
                    vErrors.push(err215);
                  }
                  errors++;
                }
                if (typeof data82 == "number" && isFinite(data82)) {
                  if (data82 > 7 || isNaN(data82)) {
                    const err216 = { instancePath: instancePath + "/numbers/arc-centre/mm", schemaPath: "#/properties/numbers/properties/arc-centre/properties/mm/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                    if (vErrors === null) {
                      vErrors = [err216];
                    } else {
                      vErrors.push(err216);
                    }
                    errors++;
                  }
                  if (data82 < 0 || isNaN(data82)) {
                    const err217 = { instancePath: instancePath + "/numbers/arc-centre/mm", schemaPath: "#/properties/numbers/properties/arc-centre/properties/mm/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err217];
                    } else {
                      vErrors.push(err217);
                    }
                    errors++;
                  }
                }
              }
              if (data81.inch !== void 0) {
                let data83 = data81.inch;
                if (!(typeof data83 == "number" && (!(data83 % 1) && !isNaN(data83)) && isFinite(data83))) {
                  const err218 = { instancePath: instancePath + "/numbers/arc-centre/inch", schemaPath: "#/properties/numbers/properties/arc-centre/properties/inch/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err218];
                  } else {
                    vErrors.push(err218);
                  }
                  errors++;
                }
                if (typeof data83 == "number" && isFinite(data83)) {
                  if (data83 > 6 || isNaN(data83)) {
                    const err219 = { instancePath: instancePath + "/numbers/arc-centre/inch", schemaPath: "#/properties/numbers/properties/arc-centre/properties/inch/maximum", keyword: "maximum", params: { comparison: "<=", limit: 6 }, message: "must be <= 6" };
                    if (vErrors === null) {
                      vErrors = [err219];
                    } else {
                      vErrors.push(err219);
                    }
                    errors++;
                  }
                  if (data83 < 0 || isNaN(data83)) {
                    const err220 = { instancePath: instancePath + "/numbers/arc-centre/inch", schemaPath: "#/properties/numbers/properties/arc-centre/properties/inch/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err220];
                    } else {
                      vErrors.push(err220);
                    }
                    errors++;
                  }
                }
              }
              if (data81.point !== void 0) {
                let data84 = data81.point;
                if (typeof data84 !== "string") {
                  const err221 = { instancePath: instancePath + "/numbers/arc-centre/point", schemaPath: "#/$defs/own-point/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err221];
                  } else {
                    vErrors.push(err221);
                  }
                  errors++;
                }
                if (!(data84 === "always" || data84 === "when-needed" || data84 === "never")) {
                  const err222 = { instancePath: instancePath + "/numbers/arc-centre/point", schemaPath: "#/$defs/own-point/enum", keyword: "enum", params: { allowedValues: schema37.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err222];
                  } else {
                    vErrors.push(err222);
                  }
                  errors++;
                }
              }
              if (data81["trailing-zeros"] !== void 0) {
                let data85 = data81["trailing-zeros"];
                if (typeof data85 !== "string") {
                  const err223 = { instancePath: instancePath + "/numbers/arc-centre/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err223];
                  } else {
                    vErrors.push(err223);
                  }
                  errors++;
                }
                if (!(data85 === "keep" || data85 === "drop" || data85 === "one")) {
                  const err224 = { instancePath: instancePath + "/numbers/arc-centre/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/enum", keyword: "enum", params: { allowedValues: schema38.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err224];
                  } else {
                    vErrors.push(err224);
                  }
                  errors++;
                }
              }
              if (data81["leading-zero"] !== void 0) {
                let data86 = data81["leading-zero"];
                if (typeof data86 !== "string") {
                  const err225 = { instancePath: instancePath + "/numbers/arc-centre/leading-zero", schemaPath: "#/$defs/own-leading-zero/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err225];
                  } else {
                    vErrors.push(err225);
                  }
                  errors++;
                }
                if (!(data86 === "keep" || data86 === "drop")) {
                  const err226 = { instancePath: instancePath + "/numbers/arc-centre/leading-zero", schemaPath: "#/$defs/own-leading-zero/enum", keyword: "enum", params: { allowedValues: schema39.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err226];
                  } else {
                    vErrors.push(err226);
                  }
                  errors++;
                }
              }
              if (data81.plus !== void 0) {
                let data87 = data81.plus;
                if (typeof data87 !== "string") {
                  const err227 = { instancePath: instancePath + "/numbers/arc-centre/plus", schemaPath: "#/$defs/own-plus/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err227];
                  } else {
                    vErrors.push(err227);
                  }
                  errors++;
                }
                if (!(data87 === "yes" || data87 === "no")) {
                  const err228 = { instancePath: instancePath + "/numbers/arc-centre/plus", schemaPath: "#/$defs/own-plus/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err228];
                  } else {
                    vErrors.push(err228);
                  }
                  errors++;
                }
              }
              if (data81["suppressed-zeros"] !== void 0) {
                let data88 = data81["suppressed-zeros"];
                if (typeof data88 !== "string") {
                  const err229 = { instancePath: instancePath + "/numbers/arc-centre/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err229];
                  } else {
                    vErrors.push(err229);
                  }
                  errors++;
                }
                if (!(data88 === "leading" || data88 === "trailing" || data88 === "none")) {
                  const err230 = { instancePath: instancePath + "/numbers/arc-centre/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/enum", keyword: "enum", params: { allowedValues: schema41.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err230];
                  } else {
                    vErrors.push(err230);
                  }
                  errors++;
                }
              }
              if (data81.digits !== void 0) {
                let data89 = data81.digits;
                if (!(typeof data89 == "number" && (!(data89 % 1) && !isNaN(data89)) && isFinite(data89))) {
                  const err231 = { instancePath: instancePath + "/numbers/arc-centre/digits", schemaPath: "#/$defs/own-digits/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err231];
                  } else {
                    vErrors.push(err231);
                  }
                  errors++;
                }
                if (typeof data89 == "number" && isFinite(data89)) {
                  if (data89 > 12 || isNaN(data89)) {
                    const err232 = { instancePath: instancePath + "/numbers/arc-centre/digits", schemaPath: "#/$defs/own-digits/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err232];
                    } else {
                      vErrors.push(err232);
                    }
                    errors++;
                  }
                  if (data89 < 1 || isNaN(data89)) {
                    const err233 = { instancePath: instancePath + "/numbers/arc-centre/digits", schemaPath: "#/$defs/own-digits/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err233];
                    } else {
                      vErrors.push(err233);
                    }
                    errors++;
                  }
                }
              }
              if (data81["whole-digits"] !== void 0) {
                let data90 = data81["whole-digits"];
                const _errs237 = errors;
                let valid52 = false;
                const _errs238 = errors;
                if (typeof data90 !== "string") {
                  const err234 = { instancePath: instancePath + "/numbers/arc-centre/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err234];
                  } else {
                    vErrors.push(err234);
                  }
                  errors++;
                }
                if ("none" !== data90) {
                  const err235 = { instancePath: instancePath + "/numbers/arc-centre/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
                  if (vErrors === null) {
                    vErrors = [err235];
                  } else {
                    vErrors.push(err235);
                  }
                  errors++;
                }
                var _valid6 = _errs238 === errors;
                valid52 = valid52 || _valid6;
                const _errs240 = errors;
                if (!(typeof data90 == "number" && (!(data90 % 1) && !isNaN(data90)) && isFinite(data90))) {
                  const err236 = { instancePath: instancePath + "/numbers/arc-centre/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err236];
                  } else {
                    vErrors.push(err236);
                  }
                  errors++;
                }
                if (typeof data90 == "number" && isFinite(data90)) {
                  if (data90 > 12 || isNaN(data90)) {
                    const err237 = { instancePath: instancePath + "/numbers/arc-centre/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err237];
                    } else {
                      vErrors.push(err237);
                    }
                    errors++;
                  }
                  if (data90 < 1 || isNaN(data90)) {
                    const err238 = { instancePath: instancePath + "/numbers/arc-centre/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err238];
                    } else {
                      vErrors.push(err238);
                    }
                    errors++;
                  }
                }
                var _valid6 = _errs240 === errors;
                valid52 = valid52 || _valid6;
                if (!valid52) {
                  const err239 = { instancePath: instancePath + "/numbers/arc-centre/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err239];
                  } else {
                    vErrors.push(err239);
                  }
                  errors++;
                } else {
                  errors = _errs237;
                  if (vErrors !== null) {
                    if (_errs237) {
                      vErrors.length = _errs237;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
            } else {
              const err240 = { instancePath: instancePath + "/numbers/arc-centre", schemaPath: "#/properties/numbers/properties/arc-centre/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err240];
              } else {
                vErrors.push(err240);
              }
              errors++;
            }
          }
          if (data63.peck !== void 0) {
            let data91 = data63.peck;
            if (data91 && typeof data91 == "object" && !Array.isArray(data91)) {
              for (const key13 in data91) {
                if (!(key13 === "mm" || key13 === "inch" || key13 === "point" || key13 === "trailing-zeros" || key13 === "leading-zero" || key13 === "plus" || key13 === "suppressed-zeros" || key13 === "digits")) {
                  const err241 = { instancePath: instancePath + "/numbers/peck", schemaPath: "#/properties/numbers/properties/peck/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key13 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err241];
                  } else {
                    vErrors.push(err241);
                  }
                  errors++;
                }
              }
              if (data91.mm !== void 0) {
                let data92 = data91.mm;
                if (!(typeof data92 == "number" && (!(data92 % 1) && !isNaN(data92)) && isFinite(data92))) {
                  const err242 = { instancePath: instancePath + "/numbers/peck/mm", schemaPath: "#/properties/numbers/properties/peck/properties/mm/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err242];
                  } else {
                    vErrors.push(err242);
                  }
                  errors++;
                }
                if (typeof data92 == "number" && isFinite(data92)) {
                  if (data92 > 7 || isNaN(data92)) {
                    const err243 = { instancePath: instancePath + "/numbers/peck/mm", schemaPath: "#/properties/numbers/properties/peck/properties/mm/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                    if (vErrors === null) {
                      vErrors = [err243];
                    } else {
                      vErrors.push(err243);
                    }
                    errors++;
                  }
                  if (data92 < 0 || isNaN(data92)) {
                    const err244 = { instancePath: instancePath + "/numbers/peck/mm", schemaPath: "#/properties/numbers/properties/peck/properties/mm/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err244];
                    } else {
                      vErrors.push(err244);
                    }
                    errors++;
                  }
                }
              }
              if (data91.inch !== void 0) {
                let data93 = data91.inch;
                if (!(typeof data93 == "number" && (!(data93 % 1) && !isNaN(data93)) && isFinite(data93))) {
                  const err245 = { instancePath: instancePath + "/numbers/peck/inch", schemaPath: "#/properties/numbers/properties/peck/properties/inch/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err245];
                  } else {
                    vErrors.push(err245);
                  }
                  errors++;
                }
                if (typeof data93 == "number" && isFinite(data93)) {
                  if (data93 > 6 || isNaN(data93)) {
                    const err246 = { instancePath: instancePath + "/numbers/peck/inch", schemaPath: "#/properties/numbers/properties/peck/properties/inch/maximum", keyword: "maximum", params: { comparison: "<=", limit: 6 }, message: "must be <= 6" };
                    if (vErrors === null) {
                      vErrors = [err246];
                    } else {
                      vErrors.push(err246);
                    }
                    errors++;
                  }
                  if (data93 < 0 || isNaN(data93)) {
                    const err247 = { instancePath: instancePath + "/numbers/peck/inch", schemaPath: "#/properties/numbers/properties/peck/properties/inch/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err247];
                    } else {
                      vErrors.push(err247);
                    }
                    errors++;
                  }
                }
              }
              if (data91.point !== void 0) {
                let data94 = data91.point;
                if (typeof data94 !== "string") {
                  const err248 = { instancePath: instancePath + "/numbers/peck/point", schemaPath: "#/$defs/own-point/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err248];
                  } else {
                    vErrors.push(err248);
                  }
                  errors++;
                }
                if (!(data94 === "always" || data94 === "when-needed" || data94 === "never")) {
                  const err249 = { instancePath: instancePath + "/numbers/peck/point", schemaPath: "#/$defs/own-point/enum", keyword: "enum", params: { allowedValues: schema37.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err249];
                  } else {
                    vErrors.push(err249);
                  }
                  errors++;
                }
              }
              if (data91["trailing-zeros"] !== void 0) {
                let data95 = data91["trailing-zeros"];
                if (typeof data95 !== "string") {
                  const err250 = { instancePath: instancePath + "/numbers/peck/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err250];
                  } else {
                    vErrors.push(err250);
                  }
                  errors++;
                }
                if (!(data95 === "keep" || data95 === "drop" || data95 === "one")) {
                  const err251 = { instancePath: instancePath + "/numbers/peck/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/enum", keyword: "enum", params: { allowedValues: schema38.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err251];
                  } else {
                    vErrors.push(err251);
                  }
                  errors++;
                }
              }
              if (data91["leading-zero"] !== void 0) {
                let data96 = data91["leading-zero"];
                if (typeof data96 !== "string") {
                  const err252 = { instancePath: instancePath + "/numbers/peck/leading-zero", schemaPath: "#/$defs/own-leading-zero/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err252];
                  } else {
                    vErrors.push(err252);
                  }
                  errors++;
                }
                if (!(data96 === "keep" || data96 === "drop")) {
                  const err253 = { instancePath: instancePath + "/numbers/peck/leading-zero", schemaPath: "#/$defs/own-leading-zero/enum", keyword: "enum", params: { allowedValues: schema39.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err253];
                  } else {
                    vErrors.push(err253);
                  }
                  errors++;
                }
              }
              if (data91.plus !== void 0) {
                let data97 = data91.plus;
                if (typeof data97 !== "string") {
                  const err254 = { instancePath: instancePath + "/numbers/peck/plus", schemaPath: "#/$defs/own-plus/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err254];
                  } else {
                    vErrors.push(err254);
                  }
                  errors++;
                }
                if (!(data97 === "yes" || data97 === "no")) {
                  const err255 = { instancePath: instancePath + "/numbers/peck/plus", schemaPath: "#/$defs/own-plus/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err255];
                  } else {
                    vErrors.push(err255);
                  }
                  errors++;
                }
              }
              if (data91["suppressed-zeros"] !== void 0) {
                let data98 = data91["suppressed-zeros"];
                if (typeof data98 !== "string") {
                  const err256 = { instancePath: instancePath + "/numbers/peck/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err256];
                  } else {
                    vErrors.push(err256);
                  }
                  errors++;
                }
                if (!(data98 === "leading" || data98 === "trailing" || data98 === "none")) {
                  const err257 = { instancePath: instancePath + "/numbers/peck/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/enum", keyword: "enum", params: { allowedValues: schema41.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err257];
                  } else {
                    vErrors.push(err257);
                  }
                  errors++;
                }
              }
              if (data91.digits !== void 0) {
                let data99 = data91.digits;
                if (!(typeof data99 == "number" && (!(data99 % 1) && !isNaN(data99)) && isFinite(data99))) {
                  const err258 = { instancePath: instancePath + "/numbers/peck/digits", schemaPath: "#/$defs/own-digits/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err258];
                  } else {
                    vErrors.push(err258);
                  }
                  errors++;
                }
                if (typeof data99 == "number" && isFinite(data99)) {
                  if (data99 > 12 || isNaN(data99)) {
                    const err259 = { instancePath: instancePath + "/numbers/peck/digits", schemaPath: "#/$defs/own-digits/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err259];
                    } else {
                      vErrors.push(err259);
                    }
                    errors++;
                  }
                  if (data99 < 1 || isNaN(data99)) {
                    const err260 = { instancePath: instancePath + "/numbers/peck/digits", schemaPath: "#/$defs/own-digits/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err260];
                    } else {
                      vErrors.push(err260);
                    }
                    errors++;
                  }
                }
              }
            } else {
              const err261 = { instancePath: instancePath + "/numbers/peck", schemaPath: "#/properties/numbers/properties/peck/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err261];
              } else {
                vErrors.push(err261);
              }
              errors++;
            }
          }
          if (data63.angle !== void 0) {
            let data100 = data63.angle;
            const _errs268 = errors;
            let valid60 = false;
            const _errs269 = errors;
            if (!(typeof data100 == "number" && (!(data100 % 1) && !isNaN(data100)) && isFinite(data100))) {
              const err262 = { instancePath: instancePath + "/numbers/angle", schemaPath: "#/properties/numbers/properties/angle/anyOf/0/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
              if (vErrors === null) {
                vErrors = [err262];
              } else {
                vErrors.push(err262);
              }
              errors++;
            }
            if (typeof data100 == "number" && isFinite(data100)) {
              if (data100 > 7 || isNaN(data100)) {
                const err263 = { instancePath: instancePath + "/numbers/angle", schemaPath: "#/properties/numbers/properties/angle/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                if (vErrors === null) {
                  vErrors = [err263];
                } else {
                  vErrors.push(err263);
                }
                errors++;
              }
              if (data100 < 0 || isNaN(data100)) {
                const err264 = { instancePath: instancePath + "/numbers/angle", schemaPath: "#/properties/numbers/properties/angle/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                if (vErrors === null) {
                  vErrors = [err264];
                } else {
                  vErrors.push(err264);
                }
                errors++;
              }
            }
            var _valid7 = _errs269 === errors;
            valid60 = valid60 || _valid7;
            const _errs271 = errors;
            if (data100 && typeof data100 == "object" && !Array.isArray(data100)) {
              for (const key14 in data100) {
                if (!(key14 === "decimals" || key14 === "point" || key14 === "trailing-zeros" || key14 === "leading-zero" || key14 === "plus" || key14 === "suppressed-zeros" || key14 === "digits" || key14 === "whole-digits")) {
                  const err265 = { instancePath: instancePath + "/numbers/angle", schemaPath: "#/properties/numbers/properties/angle/anyOf/1/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key14 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err265];
                  } else {
                    vErrors.push(err265);
                  }
                  errors++;
                }
              }
              if (data100.decimals !== void 0) {
                let data101 = data100.decimals;
                if (!(typeof data101 == "number" && (!(data101 % 1) && !isNaN(data101)) && isFinite(data101))) {
                  const err266 = { instancePath: instancePath + "/numbers/angle/decimals", schemaPath: "#/properties/numbers/properties/angle/anyOf/1/properties/decimals/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err266];
                  } else {
                    vErrors.push(err266);
                  }
                  errors++;
                }
                if (typeof data101 == "number" && isFinite(data101)) {
                  if (data101 > 7 || isNaN(data101)) {
                    const err267 = { instancePath: instancePath + "/numbers/angle/decimals", schemaPath: "#/properties/numbers/properties/angle/anyOf/1/properties/decimals/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                    if (vErrors === null) {
                      vErrors = [err267];
                    } else {
                      vErrors.push(err267);
                    }
                    errors++;
                  }
                  if (data101 < 0 || isNaN(data101)) {
                    const err268 = { instancePath: instancePath + "/numbers/angle/decimals", schemaPath: "#/properties/numbers/properties/angle/anyOf/1/properties/decimals/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err268];
                    } else {
                      vErrors.push(err268);
                    }
                    errors++;
                  }
                }
              }
              if (data100.point !== void 0) {
                let data102 = data100.point;
                if (typeof data102 !== "string") {
                  const err269 = { instancePath: instancePath + "/numbers/angle/point", schemaPath: "#/$defs/own-point/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err269];
                  } else {
                    vErrors.push(err269);
                  }
                  errors++;
                }
                if (!(data102 === "always" || data102 === "when-needed" || data102 === "never")) {
                  const err270 = { instancePath: instancePath + "/numbers/angle/point", schemaPath: "#/$defs/own-point/enum", keyword: "enum", params: { allowedValues: schema37.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err270];
                  } else {
                    vErrors.push(err270);
                  }
                  errors++;
                }
              }
              if (data100["trailing-zeros"] !== void 0) {
                let data103 = data100["trailing-zeros"];
                if (typeof data103 !== "string") {
                  const err271 = { instancePath: instancePath + "/numbers/angle/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err271];
                  } else {
                    vErrors.push(err271);
                  }
                  errors++;
                }
                if (!(data103 === "keep" || data103 === "drop" || data103 === "one")) {
                  const err272 = { instancePath: instancePath + "/numbers/angle/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/enum", keyword: "enum", params: { allowedValues: schema38.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err272];
                  } else {
                    vErrors.push(err272);
                  }
                  errors++;
                }
              }
              if (data100["leading-zero"] !== void 0) {
                let data104 = data100["leading-zero"];
                if (typeof data104 !== "string") {
                  const err273 = { instancePath: instancePath + "/numbers/angle/leading-zero", schemaPath: "#/$defs/own-leading-zero/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err273];
                  } else {
                    vErrors.push(err273);
                  }
                  errors++;
                }
                if (!(data104 === "keep" || data104 === "drop")) {
                  const err274 = { instancePath: instancePath + "/numbers/angle/leading-zero", schemaPath: "#/$defs/own-leading-zero/enum", keyword: "enum", params: { allowedValues: schema39.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err274];
                  } else {
                    vErrors.push(err274);
                  }
                  errors++;
                }
              }
              if (data100.plus !== void 0) {
                let data105 = data100.plus;
                if (typeof data105 !== "string") {
                  const err275 = { instancePath: instancePath + "/numbers/angle/plus", schemaPath: "#/$defs/own-plus/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err275];
                  } else {
                    vErrors.push(err275);
                  }
                  errors++;
                }
                if (!(data105 === "yes" || data105 === "no")) {
                  const err276 = { instancePath: instancePath + "/numbers/angle/plus", schemaPath: "#/$defs/own-plus/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err276];
                  } else {
                    vErrors.push(err276);
                  }
                  errors++;
                }
              }
              if (data100["suppressed-zeros"] !== void 0) {
                let data106 = data100["suppressed-zeros"];
                if (typeof data106 !== "string") {
                  const err277 = { instancePath: instancePath + "/numbers/angle/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err277];
                  } else {
                    vErrors.push(err277);
                  }
                  errors++;
                }
                if (!(data106 === "leading" || data106 === "trailing" || data106 === "none")) {
                  const err278 = { instancePath: instancePath + "/numbers/angle/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/enum", keyword: "enum", params: { allowedValues: schema41.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err278];
                  } else {
                    vErrors.push(err278);
                  }
                  errors++;
                }
              }
              if (data100.digits !== void 0) {
                let data107 = data100.digits;
                if (!(typeof data107 == "number" && (!(data107 % 1) && !isNaN(data107)) && isFinite(data107))) {
                  const err279 = { instancePath: instancePath + "/numbers/angle/digits", schemaPath: "#/$defs/own-digits/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err279];
                  } else {
                    vErrors.push(err279);
                  }
                  errors++;
                }
                if (typeof data107 == "number" && isFinite(data107)) {
                  if (data107 > 12 || isNaN(data107)) {
                    const err280 = { instancePath: instancePath + "/numbers/angle/digits", schemaPath: "#/$defs/own-digits/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err280];
                    } else {
                      vErrors.push(err280);
                    }
                    errors++;
                  }
                  if (data107 < 1 || isNaN(data107)) {
                    const err281 = { instancePath: instancePath + "/numbers/angle/digits", schemaPath: "#/$defs/own-digits/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err281];
                    } else {
                      vErrors.push(err281);
                    }
                    errors++;
                  }
                }
              }
              if (data100["whole-digits"] !== void 0) {
                let data108 = data100["whole-digits"];
                const _errs296 = errors;
                let valid69 = false;
                const _errs297 = errors;
                if (typeof data108 !== "string") {
                  const err282 = { instancePath: instancePath + "/numbers/angle/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err282];
                  } else {
                    vErrors.push(err282);
                  }
                  errors++;
                }
                if ("none" !== data108) {
                  const err283 = { instancePath: instancePath + "/numbers/angle/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
                  if (vErrors === null) {
                    vErrors = [err283];
                  } else {
                    vErrors.push(err283);
                  }
                  errors++;
                }
                var _valid8 = _errs297 === errors;
                valid69 = valid69 || _valid8;
                const _errs299 = errors;
                if (!(typeof data108 == "number" && (!(data108 % 1) && !isNaN(data108)) && isFinite(data108))) {
                  const err284 = { instancePath: instancePath + "/numbers/angle/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err284];
                  } else {
                    vErrors.push(err284);
                  }
                  errors++;
                }
                if (typeof data108 == "number" && isFinite(data108)) {
                  if (data108 > 12 || isNaN(data108)) {
                    const err285 = { instancePath: instancePath + "/numbers/angle/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err285];
                    } else {
                      vErrors.push(err285);
                    }
                    errors++;
                  }
                  if (data108 < 1 || isNaN(data108)) {
                    const err286 = { instancePath: instancePath + "/numbers/angle/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err286];
                    } else {
                      vErrors.push(err286);
                    }
                    errors++;
                  }
                }
                var _valid8 = _errs299 === errors;
                valid69 = valid69 || _valid8;
                if (!valid69) {
                  const err287 = { instancePath: instancePath + "/numbers/angle/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err287];
                  } else {
                    vErrors.push(err287);
                  }
                  errors++;
                } else {
                  errors = _errs296;
                  if (vErrors !== null) {
                    if (_errs296) {
                      vErrors.length = _errs296;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
            } else {
              const err288 = { instancePath: instancePath + "/numbers/angle", schemaPath: "#/properties/numbers/properties/angle/anyOf/1/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err288];
              } else {
                vErrors.push(err288);
              }
              errors++;
            }
            var _valid7 = _errs271 === errors;
            valid60 = valid60 || _valid7;
            if (!valid60) {
              const err289 = { instancePath: instancePath + "/numbers/angle", schemaPath: "#/properties/numbers/properties/angle/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err289];
              } else {
                vErrors.push(err289);
              }
              errors++;
            } else {
              errors = _errs268;
              if (vErrors !== null) {
                if (_errs268) {
                  vErrors.length = _errs268;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data63["feed-per-minute"] !== void 0) {
            let data109 = data63["feed-per-minute"];
            if (data109 && typeof data109 == "object" && !Array.isArray(data109)) {
              for (const key15 in data109) {
                if (!func1.call(schema31.properties.numbers.properties["feed-per-minute"].properties, key15)) {
                  const err290 = { instancePath: instancePath + "/numbers/feed-per-minute", schemaPath: "#/properties/numbers/properties/feed-per-minute/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key15 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err290];
                  } else {
                    vErrors.push(err290);
                  }
                  errors++;
                }
              }
              if (data109.mm !== void 0) {
                let data110 = data109.mm;
                if (!(typeof data110 == "number" && (!(data110 % 1) && !isNaN(data110)) && isFinite(data110))) {
                  const err291 = { instancePath: instancePath + "/numbers/feed-per-minute/mm", schemaPath: "#/properties/numbers/properties/feed-per-minute/properties/mm/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err291];
                  } else {
                    vErrors.push(err291);
                  }
                  errors++;
                }
                if (typeof data110 == "number" && isFinite(data110)) {
                  if (data110 > 7 || isNaN(data110)) {
                    const err292 = { instancePath: instancePath + "/numbers/feed-per-minute/mm", schemaPath: "#/properties/numbers/properties/feed-per-minute/properties/mm/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                    if (vErrors === null) {
                      vErrors = [err292];
                    } else {
                      vErrors.push(err292);
                    }
                    errors++;
                  }
                  if (data110 < 0 || isNaN(data110)) {
                    const err293 = { instancePath: instancePath + "/numbers/feed-per-minute/mm", schemaPath: "#/properties/numbers/properties/feed-per-minute/properties/mm/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err293];
                    } else {
                      vErrors.push(err293);
                    }
                    errors++;
                  }
                }
              }
              if (data109.inch !== void 0) {
                let data111 = data109.inch;
                if (!(typeof data111 == "number" && (!(data111 % 1) && !isNaN(data111)) && isFinite(data111))) {
                  const err294 = { instancePath: instancePath + "/numbers/feed-per-minute/inch", schemaPath: "#/properties/numbers/properties/feed-per-minute/properties/inch/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err294];
                  } else {
                    vErrors.push(err294);
                  }
                  errors++;
                }
                if (typeof data111 == "number" && isFinite(data111)) {
                  if (data111 > 6 || isNaN(data111)) {
                    const err295 = { instancePath: instancePath + "/numbers/feed-per-minute/inch", schemaPath: "#/properties/numbers/properties/feed-per-minute/properties/inch/maximum", keyword: "maximum", params: { comparison: "<=", limit: 6 }, message: "must be <= 6" };
                    if (vErrors === null) {
                      vErrors = [err295];
                    } else {
                      vErrors.push(err295);
                    }
                    errors++;
                  }
                  if (data111 < 0 || isNaN(data111)) {
                    const err296 = { instancePath: instancePath + "/numbers/feed-per-minute/inch", schemaPath: "#/properties/numbers/properties/feed-per-minute/properties/inch/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err296];
                    } else {
                      vErrors.push(err296);
                    }
                    errors++;
                  }
                }
              }
              if (data109.point !== void 0) {
                let data112 = data109.point;
                if (typeof data112 !== "string") {
                  const err297 = { instancePath: instancePath + "/numbers/feed-per-minute/point", schemaPath: "#/$defs/own-point/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err297];
                  } else {
                    vErrors.push(err297);
                  }
                  errors++;
                }
                if (!(data112 === "always" || data112 === "when-needed" || data112 === "never")) {
                  const err298 = { instancePath: instancePath + "/numbers/feed-per-minute/point", schemaPath: "#/$defs/own-point/enum", keyword: "enum", params: { allowedValues: schema37.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err298];
                  } else {
                    vErrors.push(err298);
                  }
                  errors++;
                }
              }
              if (data109["trailing-zeros"] !== void 0) {
                let data113 = data109["trailing-zeros"];
                if (typeof data113 !== "string") {
                  const err299 = { instancePath: instancePath + "/numbers/feed-per-minute/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err299];
                  } else {
                    vErrors.push(err299);
                  }
                  errors++;
                }
                if (!(data113 === "keep" || data113 === "drop" || data113 === "one")) {
                  const err300 = { instancePath: instancePath + "/numbers/feed-per-minute/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/enum", keyword: "enum", params: { allowedValues: schema38.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err300];
                  } else {
                    vErrors.push(err300);
                  }
                  errors++;
                }
              }
              if (data109["leading-zero"] !== void 0) {
                let data114 = data109["leading-zero"];
                if (typeof data114 !== "string") {
                  const err301 = { instancePath: instancePath + "/numbers/feed-per-minute/leading-zero", schemaPath: "#/$defs/own-leading-zero/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err301];
                  } else {
                    vErrors.push(err301);
                  }
                  errors++;
                }
                if (!(data114 === "keep" || data114 === "drop")) {
                  const err302 = { instancePath: instancePath + "/numbers/feed-per-minute/leading-zero", schemaPath: "#/$defs/own-leading-zero/enum", keyword: "enum", params: { allowedValues: schema39.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err302];
                  } else {
                    vErrors.push(err302);
                  }
                  errors++;
                }
              }
              if (data109.plus !== void 0) {
                let data115 = data109.plus;
                if (typeof data115 !== "string") {
                  const err303 = { instancePath: instancePath + "/numbers/feed-per-minute/plus", schemaPath: "#/$defs/own-plus/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err303];
                  } else {
                    vErrors.push(err303);
                  }
                  errors++;
                }
                if (!(data115 === "yes" || data115 === "no")) {
                  const err304 = { instancePath: instancePath + "/numbers/feed-per-minute/plus", schemaPath: "#/$defs/own-plus/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err304];
                  } else {
                    vErrors.push(err304);
                  }
                  errors++;
                }
              }
              if (data109["suppressed-zeros"] !== void 0) {
                let data116 = data109["suppressed-zeros"];
                if (typeof data116 !== "string") {
                  const err305 = { instancePath: instancePath + "/numbers/feed-per-minute/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err305];
                  } else {
                    vErrors.push(err305);
                  }
                  errors++;
                }
                if (!(data116 === "leading" || data116 === "trailing" || data116 === "none")) {
                  const err306 = { instancePath: instancePath + "/numbers/feed-per-minute/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/enum", keyword: "enum", params: { allowedValues: schema41.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err306];
                  } else {
                    vErrors.push(err306);
                  }
                  errors++;
                }
              }
              if (data109.digits !== void 0) {
                let data117 = data109.digits;
                if (!(typeof data117 == "number" && (!(data117 % 1) && !isNaN(data117)) && isFinite(data117))) {
                  const err307 = { instancePath: instancePath + "/numbers/feed-per-minute/digits", schemaPath: "#/$defs/own-digits/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err307];
                  } else {
                    vErrors.push(err307);
                  }
                  errors++;
                }
                if (typeof data117 == "number" && isFinite(data117)) {
                  if (data117 > 12 || isNaN(data117)) {
                    const err308 = { instancePath: instancePath + "/numbers/feed-per-minute/digits", schemaPath: "#/$defs/own-digits/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err308];
                    } else {
                      vErrors.push(err308);
                    }
                    errors++;
                  }
                  if (data117 < 1 || isNaN(data117)) {
                    const err309 = { instancePath: instancePath + "/numbers/feed-per-minute/digits", schemaPath: "#/$defs/own-digits/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err309];
                    } else {
                      vErrors.push(err309);
                    }
                    errors++;
                  }
                }
              }
              if (data109["whole-digits"] !== void 0) {
                let data118 = data109["whole-digits"];
                const _errs328 = errors;
                let valid78 = false;
                const _errs329 = errors;
                if (typeof data118 !== "string") {
                  const err310 = { instancePath: instancePath + "/numbers/feed-per-minute/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err310];
                  } else {
                    vErrors.push(err310);
                  }
                  errors++;
                }
                if ("none" !== data118) {
                  const err311 = { instancePath: instancePath + "/numbers/feed-per-minute/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
                  if (vErrors === null) {
                    vErrors = [err311];
                  } else {
                    vErrors.push(err311);
                  }
                  errors++;
                }
                var _valid9 = _errs329 === errors;
                valid78 = valid78 || _valid9;
                const _errs331 = errors;
                if (!(typeof data118 == "number" && (!(data118 % 1) && !isNaN(data118)) && isFinite(data118))) {
                  const err312 = { instancePath: instancePath + "/numbers/feed-per-minute/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err312];
                  } else {
                    vErrors.push(err312);
                  }
                  errors++;
                }
                if (typeof data118 == "number" && isFinite(data118)) {
                  if (data118 > 12 || isNaN(data118)) {
                    const err313 = { instancePath: instancePath + "/numbers/feed-per-minute/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err313];
                    } else {
                      vErrors.push(err313);
                    }
                    errors++;
                  }
                  if (data118 < 1 || isNaN(data118)) {
                    const err314 = { instancePath: instancePath + "/numbers/feed-per-minute/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err314];
                    } else {
                      vErrors.push(err314);
                    }
                    errors++;
                  }
                }
                var _valid9 = _errs331 === errors;
                valid78 = valid78 || _valid9;
                if (!valid78) {
                  const err315 = { instancePath: instancePath + "/numbers/feed-per-minute/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err315];
                  } else {
                    vErrors.push(err315);
                  }
                  errors++;
                } else {
                  errors = _errs328;
                  if (vErrors !== null) {
                    if (_errs328) {
                      vErrors.length = _errs328;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
            } else {
              const err316 = { instancePath: instancePath + "/numbers/feed-per-minute", schemaPath: "#/properties/numbers/properties/feed-per-minute/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err316];
              } else {
                vErrors.push(err316);
              }
              errors++;
            }
          }
          if (data63["feed-per-revolution"] !== void 0) {
            let data119 = data63["feed-per-revolution"];
            if (data119 && typeof data119 == "object" && !Array.isArray(data119)) {
              for (const key16 in data119) {
                if (!func1.call(schema31.properties.numbers.properties["feed-per-revolution"].properties, key16)) {
                  const err317 = { instancePath: instancePath + "/numbers/feed-per-revolution", schemaPath: "#/properties/numbers/properties/feed-per-revolution/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key16 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err317];
                  } else {
                    vErrors.push(err317);
                  }
                  errors++;
                }
              }
              if (data119.mm !== void 0) {
                let data120 = data119.mm;
                if (!(typeof data120 == "number" && (!(data120 % 1) && !isNaN(data120)) && isFinite(data120))) {
                  const err318 = { instancePath: instancePath + "/numbers/feed-per-revolution/mm", schemaPath: "#/properties/numbers/properties/feed-per-revolution/properties/mm/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err318];
                  } else {
                    vErrors.push(err318);
                  }
                  errors++;
                }
                if (typeof data120 == "number" && isFinite(data120)) {
                  if (data120 > 7 || isNaN(data120)) {
                    const err319 = { instancePath: instancePath + "/numbers/feed-per-revolution/mm", schemaPath: "#/properties/numbers/properties/feed-per-revolution/properties/mm/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                    if (vErrors === null) {
                      vErrors = [err319];
                    } else {
                      vErrors.push(err319);
                    }
                    errors++;
                  }
                  if (data120 < 0 || isNaN(data120)) {
                    const err320 = { instancePath: instancePath + "/numbers/feed-per-revolution/mm", schemaPath: "#/properties/numbers/properties/feed-per-revolution/properties/mm/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err320];
                    } else {
                      vErrors.push(err320);
                    }
                    errors++;
                  }
                }
              }
              if (data119.inch !== void 0) {
                let data121 = data119.inch;
                if (!(typeof data121 == "number" && (!(data121 % 1) && !isNaN(data121)) && isFinite(data121))) {
                  const err321 = { instancePath: instancePath + "/numbers/feed-per-revolution/inch", schemaPath: "#/properties/numbers/properties/feed-per-revolution/properties/inch/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err321];
                  } else {
                    vErrors.push(err321);
                  }
                  errors++;
                }
                if (typeof data121 == "number" && isFinite(data121)) {
                  if (data121 > 6 || isNaN(data121)) {
                    const err322 = { instancePath: instancePath + "/numbers/feed-per-revolution/inch", schemaPath: "#/properties/numbers/properties/feed-per-revolution/properties/inch/maximum", keyword: "maximum", params: { comparison: "<=", limit: 6 }, message: "must be <= 6" };
                    if (vErrors === null) {
                      vErrors = [err322];
                    } else {
                      vErrors.push(err322);
                    }
                    errors++;
                  }
                  if (data121 < 0 || isNaN(data121)) {
                    const err323 = { instancePath: instancePath + "/numbers/feed-per-revolution/inch", schemaPath: "#/properties/numbers/properties/feed-per-revolution/properties/inch/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err323];
                    } else {
                      vErrors.push(err323);
                    }
                    errors++;
                  }
                }
              }
              if (data119.point !== void 0) {
                let data122 = data119.point;
                if (typeof data122 !== "string") {
                  const err324 = { instancePath: instancePath + "/numbers/feed-per-revolution/point", schemaPath: "#/$defs/own-point/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err324];
                  } else {
                    vErrors.push(err324);
                  }
                  errors++;
                }
                if (!(data122 === "always" || data122 === "when-needed" || data122 === "never")) {
                  const err325 = { instancePath: instancePath + "/numbers/feed-per-revolution/point", schemaPath: "#/$defs/own-point/enum", keyword: "enum", params: { allowedValues: schema37.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err325];
                  } else {
                    vErrors.push(err325);
                  }
                  errors++;
                }
              }
              if (data119["trailing-zeros"] !== void 0) {
                let data123 = data119["trailing-zeros"];
                if (typeof data123 !== "string") {
                  const err326 = { instancePath: instancePath + "/numbers/feed-per-revolution/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err326];
                  } else {
                    vErrors.push(err326);
                  }
                  errors++;
                }
                if (!(data123 === "keep" || data123 === "drop" || data123 === "one")) {
                  const err327 = { instancePath: instancePath + "/numbers/feed-per-revolution/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/enum", keyword: "enum", params: { allowedValues: schema38.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err327];
                  } else {
                    vErrors.push(err327);
                  }
                  errors++;
                }
              }
              if (data119["leading-zero"] !== void 0) {
                let data124 = data119["leading-zero"];
                if (typeof data124 !== "string") {
                  const err328 = { instancePath: instancePath + "/numbers/feed-per-revolution/leading-zero", schemaPath: "#/$defs/own-leading-zero/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err328];
                  } else {
                    vErrors.push(err328);
                  }
                  errors++;
                }
                if (!(data124 === "keep" || data124 === "drop")) {
                  const err329 = { instancePath: instancePath + "/numbers/feed-per-revolution/leading-zero", schemaPath: "#/$defs/own-leading-zero/enum", keyword: "enum", params: { allowedValues: schema39.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err329];
                  } else {
                    vErrors.push(err329);
                  }
                  errors++;
                }
              }
              if (data119.plus !== void 0) {
                let data125 = data119.plus;
                if (typeof data125 !== "string") {
                  const err330 = { instancePath: instancePath + "/numbers/feed-per-revolution/plus", schemaPath: "#/$defs/own-plus/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err330];
                  } else {
                    vErrors.push(err330);
                  }
                  errors++;
                }
                if (!(data125 === "yes" || data125 === "no")) {
                  const err331 = { instancePath: instancePath + "/numbers/feed-per-revolution/plus", schemaPath: "#/$defs/own-plus/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err331];
                  } else {
                    vErrors.push(err331);
                  }
                  errors++;
                }
              }
              if (data119["suppressed-zeros"] !== void 0) {
                let data126 = data119["suppressed-zeros"];
                if (typeof data126 !== "string") {
                  const err332 = { instancePath: instancePath + "/numbers/feed-per-revolution/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err332];
                  } else {
                    vErrors.push(err332);
                  }
                  errors++;
                }
                if (!(data126 === "leading" || data126 === "trailing" || data126 === "none")) {
                  const err333 = { instancePath: instancePath + "/numbers/feed-per-revolution/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/enum", keyword: "enum", params: { allowedValues: schema41.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err333];
                  } else {
                    vErrors.push(err333);
                  }
                  errors++;
                }
              }
              if (data119.digits !== void 0) {
                let data127 = data119.digits;
                if (!(typeof data127 == "number" && (!(data127 % 1) && !isNaN(data127)) && isFinite(data127))) {
                  const err334 = { instancePath: instancePath + "/numbers/feed-per-revolution/digits", schemaPath: "#/$defs/own-digits/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err334];
                  } else {
                    vErrors.push(err334);
                  }
                  errors++;
                }
                if (typeof data127 == "number" && isFinite(data127)) {
                  if (data127 > 12 || isNaN(data127)) {
                    const err335 = { instancePath: instancePath + "/numbers/feed-per-revolution/digits", schemaPath: "#/$defs/own-digits/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err335];
                    } else {
                      vErrors.push(err335);
                    }
                    errors++;
                  }
                  if (data127 < 1 || isNaN(data127)) {
                    const err336 = { instancePath: instancePath + "/numbers/feed-per-revolution/digits", schemaPath: "#/$defs/own-digits/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err336];
                    } else {
                      vErrors.push(err336);
                    }
                    errors++;
                  }
                }
              }
              if (data119["whole-digits"] !== void 0) {
                let data128 = data119["whole-digits"];
                const _errs360 = errors;
                let valid87 = false;
                const _errs361 = errors;
                if (typeof data128 !== "string") {
                  const err337 = { instancePath: instancePath + "/numbers/feed-per-revolution/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err337];
                  } else {
                    vErrors.push(err337);
                  }
                  errors++;
                }
                if ("none" !== data128) {
                  const err338 = { instancePath: instancePath + "/numbers/feed-per-revolution/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
                  if (vErrors === null) {
                    vErrors = [err338];
                  } else {
                    vErrors.push(err338);
                  }
                  errors++;
                }
                var _valid10 = _errs361 === errors;
                valid87 = valid87 || _valid10;
                const _errs363 = errors;
                if (!(typeof data128 == "number" && (!(data128 % 1) && !isNaN(data128)) && isFinite(data128))) {
                  const err339 = { instancePath: instancePath + "/numbers/feed-per-revolution/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err339];
                  } else {
                    vErrors.push(err339);
                  }
                  errors++;
                }
                if (typeof data128 == "number" && isFinite(data128)) {
                  if (data128 > 12 || isNaN(data128)) {
                    const err340 = { instancePath: instancePath + "/numbers/feed-per-revolution/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err340];
                    } else {
                      vErrors.push(err340);
                    }
                    errors++;
                  }
                  if (data128 < 1 || isNaN(data128)) {
                    const err341 = { instancePath: instancePath + "/numbers/feed-per-revolution/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err341];
                    } else {
                      vErrors.push(err341);
                    }
                    errors++;
                  }
                }
                var _valid10 = _errs363 === errors;
                valid87 = valid87 || _valid10;
                if (!valid87) {
                  const err342 = { instancePath: instancePath + "/numbers/feed-per-revolution/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err342];
                  } else {
                    vErrors.push(err342);
                  }
                  errors++;
                } else {
                  errors = _errs360;
                  if (vErrors !== null) {
                    if (_errs360) {
                      vErrors.length = _errs360;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
            } else {
              const err343 = { instancePath: instancePath + "/numbers/feed-per-revolution", schemaPath: "#/properties/numbers/properties/feed-per-revolution/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err343];
              } else {
                vErrors.push(err343);
              }
              errors++;
            }
          }
          if (data63["inverse-time"] !== void 0) {
            let data129 = data63["inverse-time"];
            const _errs366 = errors;
            let valid88 = false;
            const _errs367 = errors;
            if (!(typeof data129 == "number" && (!(data129 % 1) && !isNaN(data129)) && isFinite(data129))) {
              const err344 = { instancePath: instancePath + "/numbers/inverse-time", schemaPath: "#/properties/numbers/properties/inverse-time/anyOf/0/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
              if (vErrors === null) {
                vErrors = [err344];
              } else {
                vErrors.push(err344);
              }
              errors++;
            }
            if (typeof data129 == "number" && isFinite(data129)) {
              if (data129 > 7 || isNaN(data129)) {
                const err345 = { instancePath: instancePath + "/numbers/inverse-time", schemaPath: "#/properties/numbers/properties/inverse-time/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                if (vErrors === null) {
                  vErrors = [err345];
                } else {
                  vErrors.push(err345);
                }
                errors++;
              }
              if (data129 < 0 || isNaN(data129)) {
                const err346 = { instancePath: instancePath + "/numbers/inverse-time", schemaPath: "#/properties/numbers/properties/inverse-time/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                if (vErrors === null) {
                  vErrors = [err346];
                } else {
                  vErrors.push(err346);
                }
                errors++;
              }
            }
            var _valid11 = _errs367 === errors;
            valid88 = valid88 || _valid11;
            const _errs369 = errors;
            if (data129 && typeof data129 == "object" && !Array.isArray(data129)) {
              for (const key17 in data129) {
                if (!(key17 === "decimals" || key17 === "point" || key17 === "trailing-zeros" || key17 === "leading-zero" || key17 === "plus" || key17 === "suppressed-zeros" || key17 === "digits" || key17 === "whole-digits")) {
                  const err347 = { instancePath: instancePath + "/numbers/inverse-time", schemaPath: "#/properties/numbers/properties/inverse-time/anyOf/1/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key17 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err347];
                  } else {
                    vErrors.push(err347);
                  }
                  errors++;
                }
              }
              if (data129.decimals !== void 0) {
                let data130 = data129.decimals;
                if (!(typeof data130 == "number" && (!(data130 % 1) && !isNaN(data130)) && isFinite(data130))) {
                  const err348 = { instancePath: instancePath + "/numbers/inverse-time/decimals", schemaPath: "#/properties/numbers/properties/inverse-time/anyOf/1/properties/decimals/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err348];
                  } else {
                    vErrors.push(err348);
                  }
                  errors++;
                }
                if (typeof data130 == "number" && isFinite(data130)) {
                  if (data130 > 7 || isNaN(data130)) {
                    const err349 = { instancePath: instancePath + "/numbers/inverse-time/decimals", schemaPath: "#/properties/numbers/properties/inverse-time/anyOf/1/properties/decimals/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                    if (vErrors === null) {
                      vErrors = [err349];
                    } else {
                      vErrors.push(err349);
                    }
                    errors++;
                  }
                  if (data130 < 0 || isNaN(data130)) {
                    const err350 = { instancePath: instancePath + "/numbers/inverse-time/decimals", schemaPath: "#/properties/numbers/properties/inverse-time/anyOf/1/properties/decimals/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err350];
                    } else {
                      vErrors.push(err350);
                    }
                    errors++;
                  }
                }
              }
              if (data129.point !== void 0) {
                let data131 = data129.point;
                if (typeof data131 !== "string") {
                  const err351 = { instancePath: instancePath + "/numbers/inverse-time/point", schemaPath: "#/$defs/own-point/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err351];
                  } else {
                    vErrors.push(err351);
                  }
                  errors++;
                }
                if (!(data131 === "always" || data131 === "when-needed" || data131 === "never")) {
                  const err352 = { instancePath: instancePath + "/numbers/inverse-time/point", schemaPath: "#/$defs/own-point/enum", keyword: "enum", params: { allowedValues: schema37.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err352];
                  } else {
                    vErrors.push(err352);
                  }
                  errors++;
                }
              }
              if (data129["trailing-zeros"] !== void 0) {
                let data132 = data129["trailing-zeros"];
                if (typeof data132 !== "string") {
                  const err353 = { instancePath: instancePath + "/numbers/inverse-time/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err353];
                  } else {
                    vErrors.push(err353);
                  }
                  errors++;
                }
                if (!(data132 === "keep" || data132 === "drop" || data132 === "one")) {
                  const err354 = { instancePath: instancePath + "/numbers/inverse-time/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/enum", keyword: "enum", params: { allowedValues: schema38.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err354];
                  } else {
                    vErrors.push(err354);
                  }
                  errors++;
                }
              }
              if (data129["leading-zero"] !== void 0) {
                let data133 = data129["leading-zero"];
                if (typeof data133 !== "string") {
                  const err355 = { instancePath: instancePath + "/numbers/inverse-time/leading-zero", schemaPath: "#/$defs/own-leading-zero/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err355];
                  } else {
                    vErrors.push(err355);
                  }
                  errors++;
                }
                if (!(data133 === "keep" || data133 === "drop")) {
                  const err356 = { instancePath: instancePath + "/numbers/inverse-time/leading-zero", schemaPath: "#/$defs/own-leading-zero/enum", keyword: "enum", params: { allowedValues: schema39.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err356];
                  } else {
                    vErrors.push(err356);
                  }
                  errors++;
                }
              }
              if (data129.plus !== void 0) {
                let data134 = data129.plus;
                if (typeof data134 !== "string") {
                  const err357 = { instancePath: instancePath + "/numbers/inverse-time/plus", schemaPath: "#/$defs/own-plus/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err357];
                  } else {
                    vErrors.push(err357);
                  }
                  errors++;
                }
                if (!(data134 === "yes" || data134 === "no")) {
                  const err358 = { instancePath: instancePath + "/numbers/inverse-time/plus", schemaPath: "#/$defs/own-plus/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err358];
                  } else {
                    vErrors.push(err358);
                  }
                  errors++;
                }
              }
              if (data129["suppressed-zeros"] !== void 0) {
                let data135 = data129["suppressed-zeros"];
                if (typeof data135 !== "string") {
                  const err359 = { instancePath: instancePath + "/numbers/inverse-time/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err359];
                  } else {
                    vErrors.push(err359);
                  }
                  errors++;
                }
                if (!(data135 === "leading" || data135 === "trailing" || data135 === "none")) {
                  const err360 = { instancePath: instancePath + "/numbers/inverse-time/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/enum", keyword: "enum", params: { allowedValues: schema41.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err360];
                  } else {
                    vErrors.push(err360);
                  }
                  errors++;
                }
              }
              if (data129.digits !== void 0) {
                let data136 = data129.digits;
                if (!(typeof data136 == "number" && (!(data136 % 1) && !isNaN(data136)) && isFinite(data136))) {
                  const err361 = { instancePath: instancePath + "/numbers/inverse-time/digits", schemaPath: "#/$defs/own-digits/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err361];
                  } else {
                    vErrors.push(err361);
                  }
                  errors++;
                }
                if (typeof data136 == "number" && isFinite(data136)) {
                  if (data136 > 12 || isNaN(data136)) {
                    const err362 = { instancePath: instancePath + "/numbers/inverse-time/digits", schemaPath: "#/$defs/own-digits/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err362];
                    } else {
                      vErrors.push(err362);
                    }
                    errors++;
                  }
                  if (data136 < 1 || isNaN(data136)) {
                    const err363 = { instancePath: instancePath + "/numbers/inverse-time/digits", schemaPath: "#/$defs/own-digits/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err363];
                    } else {
                      vErrors.push(err363);
                    }
                    errors++;
                  }
                }
              }
              if (data129["whole-digits"] !== void 0) {
                let data137 = data129["whole-digits"];
                const _errs394 = errors;
                let valid97 = false;
                const _errs395 = errors;
                if (typeof data137 !== "string") {
                  const err364 = { instancePath: instancePath + "/numbers/inverse-time/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err364];
                  } else {
                    vErrors.push(err364);
                  }
                  errors++;
                }
                if ("none" !== data137) {
                  const err365 = { instancePath: instancePath + "/numbers/inverse-time/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
                  if (vErrors === null) {
                    vErrors = [err365];
                  } else {
                    vErrors.push(err365);
                  }
                  errors++;
                }
                var _valid12 = _errs395 === errors;
                valid97 = valid97 || _valid12;
                const _errs397 = errors;
                if (!(typeof data137 == "number" && (!(data137 % 1) && !isNaN(data137)) && isFinite(data137))) {
                  const err366 = { instancePath: instancePath + "/numbers/inverse-time/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err366];
                  } else {
                    vErrors.push(err366);
                  }
                  errors++;
                }
                if (typeof data137 == "number" && isFinite(data137)) {
                  if (data137 > 12 || isNaN(data137)) {
                    const err367 = { instancePath: instancePath + "/numbers/inverse-time/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err367];
                    } else {
                      vErrors.push(err367);
                    }
                    errors++;
                  }
                  if (data137 < 1 || isNaN(data137)) {
                    const err368 = { instancePath: instancePath + "/numbers/inverse-time/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err368];
                    } else {
                      vErrors.push(err368);
                    }
                    errors++;
                  }
                }
                var _valid12 = _errs397 === errors;
                valid97 = valid97 || _valid12;
                if (!valid97) {
                  const err369 = { instancePath: instancePath + "/numbers/inverse-time/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err369];
                  } else {
                    vErrors.push(err369);
                  }
                  errors++;
                } else {
                  errors = _errs394;
                  if (vErrors !== null) {
                    if (_errs394) {
                      vErrors.length = _errs394;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
            } else {
              const err370 = { instancePath: instancePath + "/numbers/inverse-time", schemaPath: "#/properties/numbers/properties/inverse-time/anyOf/1/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err370];
              } else {
                vErrors.push(err370);
              }
              errors++;
            }
            var _valid11 = _errs369 === errors;
            valid88 = valid88 || _valid11;
            if (!valid88) {
              const err371 = { instancePath: instancePath + "/numbers/inverse-time", schemaPath: "#/properties/numbers/properties/inverse-time/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err371];
              } else {
                vErrors.push(err371);
              }
              errors++;
            } else {
              errors = _errs366;
              if (vErrors !== null) {
                if (_errs366) {
                  vErrors.length = _errs366;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data63.speed !== void 0) {
            let data138 = data63.speed;
            const _errs400 = errors;
            let valid98 = false;
            const _errs401 = errors;
            if (!(typeof data138 == "number" && (!(data138 % 1) && !isNaN(data138)) && isFinite(data138))) {
              const err372 = { instancePath: instancePath + "/numbers/speed", schemaPath: "#/properties/numbers/properties/speed/anyOf/0/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
              if (vErrors === null) {
                vErrors = [err372];
              } else {
                vErrors.push(err372);
              }
              errors++;
            }
            if (typeof data138 == "number" && isFinite(data138)) {
              if (data138 > 7 || isNaN(data138)) {
                const err373 = { instancePath: instancePath + "/numbers/speed", schemaPath: "#/properties/numbers/properties/speed/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                if (vErrors === null) {
                  vErrors = [err373];
                } else {
                  vErrors.push(err373);
                }
                errors++;
              }
              if (data138 < 0 || isNaN(data138)) {
                const err374 = { instancePath: instancePath + "/numbers/speed", schemaPath: "#/properties/numbers/properties/speed/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                if (vErrors === null) {
                  vErrors = [err374];
                } else {
                  vErrors.push(err374);
                }
                errors++;
              }
            }
            var _valid13 = _errs401 === errors;
            valid98 = valid98 || _valid13;
            const _errs403 = errors;
            if (data138 && typeof data138 == "object" && !Array.isArray(data138)) {
              for (const key18 in data138) {
                if (!(key18 === "decimals" || key18 === "point" || key18 === "trailing-zeros" || key18 === "leading-zero" || key18 === "plus" || key18 === "suppressed-zeros" || key18 === "digits" || key18 === "whole-digits")) {
                  const err375 = { instancePath: instancePath + "/numbers/speed", schemaPath: "#/properties/numbers/properties/speed/anyOf/1/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key18 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err375];
                  } else {
                    vErrors.push(err375);
                  }
                  errors++;
                }
              }
              if (data138.decimals !== void 0) {
                let data139 = data138.decimals;
                if (!(typeof data139 == "number" && (!(data139 % 1) && !isNaN(data139)) && isFinite(data139))) {
                  const err376 = { instancePath: instancePath + "/numbers/speed/decimals", schemaPath: "#/properties/numbers/properties/speed/anyOf/1/properties/decimals/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err376];
                  } else {
                    vErrors.push(err376);
                  }
                  errors++;
                }
                if (typeof data139 == "number" && isFinite(data139)) {
                  if (data139 > 7 || isNaN(data139)) {
                    const err377 = { instancePath: instancePath + "/numbers/speed/decimals", schemaPath: "#/properties/numbers/properties/speed/anyOf/1/properties/decimals/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                    if (vErrors === null) {
                      vErrors = [err377];
                    } else {
                      vErrors.push(err377);
                    }
                    errors++;
                  }
                  if (data139 < 0 || isNaN(data139)) {
                    const err378 = { instancePath: instancePath + "/numbers/speed/decimals", schemaPath: "#/properties/numbers/properties/speed/anyOf/1/properties/decimals/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err378];
                    } else {
                      vErrors.push(err378);
                    }
                    errors++;
                  }
                }
              }
              if (data138.point !== void 0) {
                let data140 = data138.point;
                if (typeof data140 !== "string") {
                  const err379 = { instancePath: instancePath + "/numbers/speed/point", schemaPath: "#/$defs/own-point/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err379];
                  } else {
                    vErrors.push(err379);
                  }
                  errors++;
                }
                if (!(data140 === "always" || data140 === "when-needed" || data140 === "never")) {
                  const err380 = { instancePath: instancePath + "/numbers/speed/point", schemaPath: "#/$defs/own-point/enum", keyword: "enum", params: { allowedValues: schema37.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err380];
                  } else {
                    vErrors.push(err380);
                  }
                  errors++;
                }
              }
              if (data138["trailing-zeros"] !== void 0) {
                let data141 = data138["trailing-zeros"];
                if (typeof data141 !== "string") {
                  const err381 = { instancePath: instancePath + "/numbers/speed/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err381];
                  } else {
                    vErrors.push(err381);
                  }
                  errors++;
                }
                if (!(data141 === "keep" || data141 === "drop" || data141 === "one")) {
                  const err382 = { instancePath: instancePath + "/numbers/speed/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/enum", keyword: "enum", params: { allowedValues: schema38.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err382];
                  } else {
                    vErrors.push(err382);
                  }
                  errors++;
                }
              }
              if (data138["leading-zero"] !== void 0) {
                let data142 = data138["leading-zero"];
                if (typeof data142 !== "string") {
                  const err383 = { instancePath: instancePath + "/numbers/speed/leading-zero", schemaPath: "#/$defs/own-leading-zero/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err383];
                  } else {
                    vErrors.push(err383);
                  }
                  errors++;
                }
                if (!(data142 === "keep" || data142 === "drop")) {
                  const err384 = { instancePath: instancePath + "/numbers/speed/leading-zero", schemaPath: "#/$defs/own-leading-zero/enum", keyword: "enum", params: { allowedValues: schema39.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err384];
                  } else {
                    vErrors.push(err384);
                  }
                  errors++;
                }
              }
              if (data138.plus !== void 0) {
                let data143 = data138.plus;
                if (typeof data143 !== "string") {
                  const err385 = { instancePath: instancePath + "/numbers/speed/plus", schemaPath: "#/$defs/own-plus/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err385];
                  } else {
                    vErrors.push(err385);
                  }
                  errors++;
                }
                if (!(data143 === "yes" || data143 === "no")) {
                  const err386 = { instancePath: instancePath + "/numbers/speed/plus", schemaPath: "#/$defs/own-plus/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err386];
                  } else {
                    vErrors.push(err386);
                  }
                  errors++;
                }
              }
              if (data138["suppressed-zeros"] !== void 0) {
                let data144 = data138["suppressed-zeros"];
                if (typeof data144 !== "string") {
                  const err387 = { instancePath: instancePath + "/numbers/speed/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err387];
                  } else {
                    vErrors.push(err387);
                  }
                  errors++;
                }
                if (!(data144 === "leading" || data144 === "trailing" || data144 === "none")) {
                  const err388 = { instancePath: instancePath + "/numbers/speed/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/enum", keyword: "enum", params: { allowedValues: schema41.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err388];
                  } else {
                    vErrors.push(err388);
                  }
                  errors++;
                }
              }
              if (data138.digits !== void 0) {
                let data145 = data138.digits;
                if (!(typeof data145 == "number" && (!(data145 % 1) && !isNaN(data145)) && isFinite(data145))) {
                  const err389 = { instancePath: instancePath + "/numbers/speed/digits", schemaPath: "#/$defs/own-digits/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err389];
                  } else {
                    vErrors.push(err389);
                  }
                  errors++;
                }
                if (typeof data145 == "number" && isFinite(data145)) {
                  if (data145 > 12 || isNaN(data145)) {
                    const err390 = { instancePath: instancePath + "/numbers/speed/digits", schemaPath: "#/$defs/own-digits/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err390];
                    } else {
                      vErrors.push(err390);
                    }
                    errors++;
                  }
                  if (data145 < 1 || isNaN(data145)) {
                    const err391 = { instancePath: instancePath + "/numbers/speed/digits", schemaPath: "#/$defs/own-digits/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err391];
                    } else {
                      vErrors.push(err391);
                    }
                    errors++;
                  }
                }
              }
              if (data138["whole-digits"] !== void 0) {
                let data146 = data138["whole-digits"];
                const _errs428 = errors;
                let valid107 = false;
                const _errs429 = errors;
                if (typeof data146 !== "string") {
                  const err392 = { instancePath: instancePath + "/numbers/speed/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err392];
                  } else {
                    vErrors.push(err392);
                  }
                  errors++;
                }
                if ("none" !== data146) {
                  const err393 = { instancePath: instancePath + "/numbers/speed/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
                  if (vErrors === null) {
                    vErrors = [err393];
                  } else {
                    vErrors.push(err393);
                  }
                  errors++;
                }
                var _valid14 = _errs429 === errors;
                valid107 = valid107 || _valid14;
                const _errs431 = errors;
                if (!(typeof data146 == "number" && (!(data146 % 1) && !isNaN(data146)) && isFinite(data146))) {
                  const err394 = { instancePath: instancePath + "/numbers/speed/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err394];
                  } else {
                    vErrors.push(err394);
                  }
                  errors++;
                }
                if (typeof data146 == "number" && isFinite(data146)) {
                  if (data146 > 12 || isNaN(data146)) {
                    const err395 = { instancePath: instancePath + "/numbers/speed/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err395];
                    } else {
                      vErrors.push(err395);
                    }
                    errors++;
                  }
                  if (data146 < 1 || isNaN(data146)) {
                    const err396 = { instancePath: instancePath + "/numbers/speed/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err396];
                    } else {
                      vErrors.push(err396);
                    }
                    errors++;
                  }
                }
                var _valid14 = _errs431 === errors;
                valid107 = valid107 || _valid14;
                if (!valid107) {
                  const err397 = { instancePath: instancePath + "/numbers/speed/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err397];
                  } else {
                    vErrors.push(err397);
                  }
                  errors++;
                } else {
                  errors = _errs428;
                  if (vErrors !== null) {
                    if (_errs428) {
                      vErrors.length = _errs428;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
            } else {
              const err398 = { instancePath: instancePath + "/numbers/speed", schemaPath: "#/properties/numbers/properties/speed/anyOf/1/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err398];
              } else {
                vErrors.push(err398);
              }
              errors++;
            }
            var _valid13 = _errs403 === errors;
            valid98 = valid98 || _valid13;
            if (!valid98) {
              const err399 = { instancePath: instancePath + "/numbers/speed", schemaPath: "#/properties/numbers/properties/speed/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err399];
              } else {
                vErrors.push(err399);
              }
              errors++;
            } else {
              errors = _errs400;
              if (vErrors !== null) {
                if (_errs400) {
                  vErrors.length = _errs400;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data63.dwell !== void 0) {
            let data147 = data63.dwell;
            const _errs434 = errors;
            let valid108 = false;
            const _errs435 = errors;
            if (!(typeof data147 == "number" && (!(data147 % 1) && !isNaN(data147)) && isFinite(data147))) {
              const err400 = { instancePath: instancePath + "/numbers/dwell", schemaPath: "#/properties/numbers/properties/dwell/anyOf/0/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
              if (vErrors === null) {
                vErrors = [err400];
              } else {
                vErrors.push(err400);
              }
              errors++;
            }
            if (typeof data147 == "number" && isFinite(data147)) {
              if (data147 > 7 || isNaN(data147)) {
                const err401 = { instancePath: instancePath + "/numbers/dwell", schemaPath: "#/properties/numbers/properties/dwell/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                if (vErrors === null) {
                  vErrors = [err401];
                } else {
                  vErrors.push(err401);
                }
                errors++;
              }
              if (data147 < 0 || isNaN(data147)) {
                const err402 = { instancePath: instancePath + "/numbers/dwell", schemaPath: "#/properties/numbers/properties/dwell/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                if (vErrors === null) {
                  vErrors = [err402];
                } else {
                  vErrors.push(err402);
                }
                errors++;
              }
            }
            var _valid15 = _errs435 === errors;
            valid108 = valid108 || _valid15;
            const _errs437 = errors;
            if (data147 && typeof data147 == "object" && !Array.isArray(data147)) {
              for (const key19 in data147) {
                if (!(key19 === "decimals" || key19 === "point" || key19 === "trailing-zeros" || key19 === "leading-zero" || key19 === "plus" || key19 === "suppressed-zeros" || key19 === "digits" || key19 === "whole-digits")) {
                  const err403 = { instancePath: instancePath + "/numbers/dwell", schemaPath: "#/properties/numbers/properties/dwell/anyOf/1/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key19 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err403];
                  } else {
                    vErrors.push(err403);
                  }
                  errors++;
                }
              }
              if (data147.decimals !== void 0) {
                let data148 = data147.decimals;
                if (!(typeof data148 == "number" && (!(data148 % 1) && !isNaN(data148)) && isFinite(data148))) {
                  const err404 = { instancePath: instancePath + "/numbers/dwell/decimals", schemaPath: "#/properties/numbers/properties/dwell/anyOf/1/properties/decimals/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err404];
                  } else {
                    vErrors.push(err404);
                  }
                  errors++;
                }
                if (typeof data148 == "number" && isFinite(data148)) {
                  if (data148 > 7 || isNaN(data148)) {
                    const err405 = { instancePath: instancePath + "/numbers/dwell/decimals", schemaPath: "#/properties/numbers/properties/dwell/anyOf/1/properties/decimals/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                    if (vErrors === null) {
                      vErrors = [err405];
                    } else {
                      vErrors.push(err405);
                    }
                    errors++;
                  }
                  if (data148 < 0 || isNaN(data148)) {
                    const err406 = { instancePath: instancePath + "/numbers/dwell/decimals", schemaPath: "#/properties/numbers/properties/dwell/anyOf/1/properties/decimals/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err406];
                    } else {
                      vErrors.push(err406);
                    }
                    errors++;
                  }
                }
              }
              if (data147.point !== void 0) {
                let data149 = data147.point;
                if (typeof data149 !== "string") {
                  const err407 = { instancePath: instancePath + "/numbers/dwell/point", schemaPath: "#/$defs/own-point/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err407];
                  } else {
                    vErrors.push(err407);
                  }
                  errors++;
                }
                if (!(data149 === "always" || data149 === "when-needed" || data149 === "never")) {
                  const err408 = { instancePath: instancePath + "/numbers/dwell/point", schemaPath: "#/$defs/own-point/enum", keyword: "enum", params: { allowedValues: schema37.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err408];
                  } else {
                    vErrors.push(err408);
                  }
                  errors++;
                }
              }
              if (data147["trailing-zeros"] !== void 0) {
                let data150 = data147["trailing-zeros"];
                if (typeof data150 !== "string") {
                  const err409 = { instancePath: instancePath + "/numbers/dwell/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err409];
                  } else {
                    vErrors.push(err409);
                  }
                  errors++;
                }
                if (!(data150 === "keep" || data150 === "drop" || data150 === "one")) {
                  const err410 = { instancePath: instancePath + "/numbers/dwell/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/enum", keyword: "enum", params: { allowedValues: schema38.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err410];
                  } else {
                    vErrors.push(err410);
                  }
                  errors++;
                }
              }
              if (data147["leading-zero"] !== void 0) {
                let data151 = data147["leading-zero"];
                if (typeof data151 !== "string") {
                  const err411 = { instancePath: instancePath + "/numbers/dwell/leading-zero", schemaPath: "#/$defs/own-leading-zero/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err411];
                  } else {
                    vErrors.push(err411);
                  }
                  errors++;
                }
                if (!(data151 === "keep" || data151 === "drop")) {
                  const err412 = { instancePath: instancePath + "/numbers/dwell/leading-zero", schemaPath: "#/$defs/own-leading-zero/enum", keyword: "enum", params: { allowedValues: schema39.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err412];
                  } else {
                    vErrors.push(err412);
                  }
                  errors++;
                }
              }
              if (data147.plus !== void 0) {
                let data152 = data147.plus;
                if (typeof data152 !== "string") {
                  const err413 = { instancePath: instancePath + "/numbers/dwell/plus", schemaPath: "#/$defs/own-plus/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err413];
                  } else {
                    vErrors.push(err413);
                  }
                  errors++;
                }
                if (!(data152 === "yes" || data152 === "no")) {
                  const err414 = { instancePath: instancePath + "/numbers/dwell/plus", schemaPath: "#/$defs/own-plus/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err414];
                  } else {
                    vErrors.push(err414);
                  }
                  errors++;
                }
              }
              if (data147["suppressed-zeros"] !== void 0) {
                let data153 = data147["suppressed-zeros"];
                if (typeof data153 !== "string") {
                  const err415 = { instancePath: instancePath + "/numbers/dwell/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err415];
                  } else {
                    vErrors.push(err415);
                  }
                  errors++;
                }
                if (!(data153 === "leading" || data153 === "trailing" || data153 === "none")) {
                  const err416 = { instancePath: instancePath + "/numbers/dwell/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/enum", keyword: "enum", params: { allowedValues: schema41.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err416];
                  } else {
                    vErrors.push(err416);
                  }
                  errors++;
                }
              }
              if (data147.digits !== void 0) {
                let data154 = data147.digits;
                if (!(typeof data154 == "number" && (!(data154 % 1) && !isNaN(data154)) && isFinite(data154))) {
                  const err417 = { instancePath: instancePath + "/numbers/dwell/digits", schemaPath: "#/$defs/own-digits/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err417];
                  } else {
                    vErrors.push(err417);
                  }
                  errors++;
                }
                if (typeof data154 == "number" && isFinite(data154)) {
                  if (data154 > 12 || isNaN(data154)) {
                    const err418 = { instancePath: instancePath + "/numbers/dwell/digits", schemaPath: "#/$defs/own-digits/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err418];
                    } else {
                      vErrors.push(err418);
                    }
                    errors++;
                  }
                  if (data154 < 1 || isNaN(data154)) {
                    const err419 = { instancePath: instancePath + "/numbers/dwell/digits", schemaPath: "#/$defs/own-digits/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err419];
                    } else {
                      vErrors.push(err419);
                    }
                    errors++;
                  }
                }
              }
              if (data147["whole-digits"] !== void 0) {
                let data155 = data147["whole-digits"];
                const _errs462 = errors;
                let valid117 = false;
                const _errs463 = errors;
                if (typeof data155 !== "string") {
                  const err420 = { instancePath: instancePath + "/numbers/dwell/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err420];
                  } else {
                    vErrors.push(err420);
                  }
                  errors++;
                }
                if ("none" !== data155) {
                  const err421 = { instancePath: instancePath + "/numbers/dwell/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
                  if (vErrors === null) {
                    vErrors = [err421];
                  } else {
                    vErrors.push(err421);
                  }
                  errors++;
                }
                var _valid16 = _errs463 === errors;
                valid117 = valid117 || _valid16;
                const _errs465 = errors;
                if (!(typeof data155 == "number" && (!(data155 % 1) && !isNaN(data155)) && isFinite(data155))) {
                  const err422 = { instancePath: instancePath + "/numbers/dwell/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err422];
                  } else {
                    vErrors.push(err422);
                  }
                  errors++;
                }
                if (typeof data155 == "number" && isFinite(data155)) {
                  if (data155 > 12 || isNaN(data155)) {
                    const err423 = { instancePath: instancePath + "/numbers/dwell/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err423];
                    } else {
                      vErrors.push(err423);
                    }
                    errors++;
                  }
                  if (data155 < 1 || isNaN(data155)) {
                    const err424 = { instancePath: instancePath + "/numbers/dwell/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err424];
                    } else {
                      vErrors.push(err424);
                    }
                    errors++;
                  }
                }
                var _valid16 = _errs465 === errors;
                valid117 = valid117 || _valid16;
                if (!valid117) {
                  const err425 = { instancePath: instancePath + "/numbers/dwell/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err425];
                  } else {
                    vErrors.push(err425);
                  }
                  errors++;
                } else {
                  errors = _errs462;
                  if (vErrors !== null) {
                    if (_errs462) {
                      vErrors.length = _errs462;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
            } else {
              const err426 = { instancePath: instancePath + "/numbers/dwell", schemaPath: "#/properties/numbers/properties/dwell/anyOf/1/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err426];
              } else {
                vErrors.push(err426);
              }
              errors++;
            }
            var _valid15 = _errs437 === errors;
            valid108 = valid108 || _valid15;
            if (!valid108) {
              const err427 = { instancePath: instancePath + "/numbers/dwell", schemaPath: "#/properties/numbers/properties/dwell/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err427];
              } else {
                vErrors.push(err427);
              }
              errors++;
            } else {
              errors = _errs434;
              if (vErrors !== null) {
                if (_errs434) {
                  vErrors.length = _errs434;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data63["cycle-dwell"] !== void 0) {
            let data156 = data63["cycle-dwell"];
            const _errs468 = errors;
            let valid118 = false;
            const _errs469 = errors;
            if (!(typeof data156 == "number" && (!(data156 % 1) && !isNaN(data156)) && isFinite(data156))) {
              const err428 = { instancePath: instancePath + "/numbers/cycle-dwell", schemaPath: "#/properties/numbers/properties/cycle-dwell/anyOf/0/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
              if (vErrors === null) {
                vErrors = [err428];
              } else {
                vErrors.push(err428);
              }
              errors++;
            }
            if (typeof data156 == "number" && isFinite(data156)) {
              if (data156 > 7 || isNaN(data156)) {
                const err429 = { instancePath: instancePath + "/numbers/cycle-dwell", schemaPath: "#/properties/numbers/properties/cycle-dwell/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                if (vErrors === null) {
                  vErrors = [err429];
                } else {
                  vErrors.push(err429);
                }
                errors++;
              }
              if (data156 < 0 || isNaN(data156)) {
                const err430 = { instancePath: instancePath + "/numbers/cycle-dwell", schemaPath: "#/properties/numbers/properties/cycle-dwell/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                if (vErrors === null) {
                  vErrors = [err430];
                } else {
                  vErrors.push(err430);
                }
                errors++;
              }
            }
            var _valid17 = _errs469 === errors;
            valid118 = valid118 || _valid17;
            const _errs471 = errors;
            if (data156 && typeof data156 == "object" && !Array.isArray(data156)) {
              for (const key20 in data156) {
                if (!(key20 === "decimals" || key20 === "point" || key20 === "trailing-zeros" || key20 === "leading-zero" || key20 === "plus" || key20 === "suppressed-zeros" || key20 === "digits" || key20 === "whole-digits")) {
                  const err431 = { instancePath: instancePath + "/numbers/cycle-dwell", schemaPath: "#/properties/numbers/properties/cycle-dwell/anyOf/1/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key20 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err431];
                  } else {
                    vErrors.push(err431);
                  }
                  errors++;
                }
              }
              if (data156.decimals !== void 0) {
                let data157 = data156.decimals;
                if (!(typeof data157 == "number" && (!(data157 % 1) && !isNaN(data157)) && isFinite(data157))) {
                  const err432 = { instancePath: instancePath + "/numbers/cycle-dwell/decimals", schemaPath: "#/properties/numbers/properties/cycle-dwell/anyOf/1/properties/decimals/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err432];
                  } else {
                    vErrors.push(err432);
                  }
                  errors++;
                }
                if (typeof data157 == "number" && isFinite(data157)) {
                  if (data157 > 7 || isNaN(data157)) {
                    const err433 = { instancePath: instancePath + "/numbers/cycle-dwell/decimals", schemaPath: "#/properties/numbers/properties/cycle-dwell/anyOf/1/properties/decimals/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                    if (vErrors === null) {
                      vErrors = [err433];
                    } else {
                      vErrors.push(err433);
                    }
                    errors++;
                  }
                  if (data157 < 0 || isNaN(data157)) {
                    const err434 = { instancePath: instancePath + "/numbers/cycle-dwell/decimals", schemaPath: "#/properties/numbers/properties/cycle-dwell/anyOf/1/properties/decimals/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err434];
                    } else {
                      vErrors.push(err434);
                    }
                    errors++;
                  }
                }
              }
              if (data156.point !== void 0) {
                let data158 = data156.point;
                if (typeof data158 !== "string") {
                  const err435 = { instancePath: instancePath + "/numbers/cycle-dwell/point", schemaPath: "#/$defs/own-point/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err435];
                  } else {
                    vErrors.push(err435);
                  }
                  errors++;
                }
                if (!(data158 === "always" || data158 === "when-needed" || data158 === "never")) {
                  const err436 = { instancePath: instancePath + "/numbers/cycle-dwell/point", schemaPath: "#/$defs/own-point/enum", keyword: "enum", params: { allowedValues: schema37.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err436];
                  } else {
                    vErrors.push(err436);
                  }
                  errors++;
                }
              }
              if (data156["trailing-zeros"] !== void 0) {
                let data159 = data156["trailing-zeros"];
                if (typeof data159 !== "string") {
                  const err437 = { instancePath: instancePath + "/numbers/cycle-dwell/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err437];
                  } else {
                    vErrors.push(err437);
                  }
                  errors++;
                }
                if (!(data159 === "keep" || data159 === "drop" || data159 === "one")) {
                  const err438 = { instancePath: instancePath + "/numbers/cycle-dwell/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/enum", keyword: "enum", params: { allowedValues: schema38.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err438];
                  } else {
                    vErrors.push(err438);
                  }
                  errors++;
                }
              }
              if (data156["leading-zero"] !== void 0) {
                let data160 = data156["leading-zero"];
                if (typeof data160 !== "string") {
                  const err439 = { instancePath: instancePath + "/numbers/cycle-dwell/leading-zero", schemaPath: "#/$defs/own-leading-zero/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err439];
                  } else {
                    vErrors.push(err439);
                  }
                  errors++;
                }
                if (!(data160 === "keep" || data160 === "drop")) {
                  const err440 = { instancePath: instancePath + "/numbers/cycle-dwell/leading-zero", schemaPath: "#/$defs/own-leading-zero/enum", keyword: "enum", params: { allowedValues: schema39.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err440];
                  } else {
                    vErrors.push(err440);
                  }
                  errors++;
                }
              }
              if (data156.plus !== void 0) {
                let data161 = data156.plus;
                if (typeof data161 !== "string") {
                  const err441 = { instancePath: instancePath + "/numbers/cycle-dwell/plus", schemaPath: "#/$defs/own-plus/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err441];
                  } else {
                    vErrors.push(err441);
                  }
                  errors++;
                }
                if (!(data161 === "yes" || data161 === "no")) {
                  const err442 = { instancePath: instancePath + "/numbers/cycle-dwell/plus", schemaPath: "#/$defs/own-plus/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err442];
                  } else {
                    vErrors.push(err442);
                  }
                  errors++;
                }
              }
              if (data156["suppressed-zeros"] !== void 0) {
                let data162 = data156["suppressed-zeros"];
                if (typeof data162 !== "string") {
                  const err443 = { instancePath: instancePath + "/numbers/cycle-dwell/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err443];
                  } else {
                    vErrors.push(err443);
                  }
                  errors++;
                }
                if (!(data162 === "leading" || data162 === "trailing" || data162 === "none")) {
                  const err444 = { instancePath: instancePath + "/numbers/cycle-dwell/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/enum", keyword: "enum", params: { allowedValues: schema41.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err444];
                  } else {
                    vErrors.push(err444);
                  }
                  errors++;
                }
              }
              if (data156.digits !== void 0) {
                let data163 = data156.digits;
                if (!(typeof data163 == "number" && (!(data163 % 1) && !isNaN(data163)) && isFinite(data163))) {
                  const err445 = { instancePath: instancePath + "/numbers/cycle-dwell/digits", schemaPath: "#/$defs/own-digits/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err445];
                  } else {
                    vErrors.push(err445);
                  }
                  errors++;
                }
                if (typeof data163 == "number" && isFinite(data163)) {
                  if (data163 > 12 || isNaN(data163)) {
                    const err446 = { instancePath: instancePath + "/numbers/cycle-dwell/digits", schemaPath: "#/$defs/own-digits/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err446];
                    } else {
                      vErrors.push(err446);
                    }
                    errors++;
                  }
                  if (data163 < 1 || isNaN(data163)) {
                    const err447 = { instancePath: instancePath + "/numbers/cycle-dwell/digits", schemaPath: "#/$defs/own-digits/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err447];
                    } else {
                      vErrors.push(err447);
                    }
                    errors++;
                  }
                }
              }
              if (data156["whole-digits"] !== void 0) {
                let data164 = data156["whole-digits"];
                const _errs496 = errors;
                let valid127 = false;
                const _errs497 = errors;
                if (typeof data164 !== "string") {
                  const err448 = { instancePath: instancePath + "/numbers/cycle-dwell/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err448];
                  } else {
                    vErrors.push(err448);
                  }
                  errors++;
                }
                if ("none" !== data164) {
                  const err449 = { instancePath: instancePath + "/numbers/cycle-dwell/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
                  if (vErrors === null) {
                    vErrors = [err449];
                  } else {
                    vErrors.push(err449);
                  }
                  errors++;
                }
                var _valid18 = _errs497 === errors;
                valid127 = valid127 || _valid18;
                const _errs499 = errors;
                if (!(typeof data164 == "number" && (!(data164 % 1) && !isNaN(data164)) && isFinite(data164))) {
                  const err450 = { instancePath: instancePath + "/numbers/cycle-dwell/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err450];
                  } else {
                    vErrors.push(err450);
                  }
                  errors++;
                }
                if (typeof data164 == "number" && isFinite(data164)) {
                  if (data164 > 12 || isNaN(data164)) {
                    const err451 = { instancePath: instancePath + "/numbers/cycle-dwell/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err451];
                    } else {
                      vErrors.push(err451);
                    }
                    errors++;
                  }
                  if (data164 < 1 || isNaN(data164)) {
                    const err452 = { instancePath: instancePath + "/numbers/cycle-dwell/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err452];
                    } else {
                      vErrors.push(err452);
                    }
                    errors++;
                  }
                }
                var _valid18 = _errs499 === errors;
                valid127 = valid127 || _valid18;
                if (!valid127) {
                  const err453 = { instancePath: instancePath + "/numbers/cycle-dwell/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err453];
                  } else {
                    vErrors.push(err453);
                  }
                  errors++;
                } else {
                  errors = _errs496;
                  if (vErrors !== null) {
                    if (_errs496) {
                      vErrors.length = _errs496;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
            } else {
              const err454 = { instancePath: instancePath + "/numbers/cycle-dwell", schemaPath: "#/properties/numbers/properties/cycle-dwell/anyOf/1/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err454];
              } else {
                vErrors.push(err454);
              }
              errors++;
            }
            var _valid17 = _errs471 === errors;
            valid118 = valid118 || _valid17;
            if (!valid118) {
              const err455 = { instancePath: instancePath + "/numbers/cycle-dwell", schemaPath: "#/properties/numbers/properties/cycle-dwell/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err455];
              } else {
                vErrors.push(err455);
              }
              errors++;
            } else {
              errors = _errs468;
              if (vErrors !== null) {
                if (_errs468) {
                  vErrors.length = _errs468;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data63.timeout !== void 0) {
            let data165 = data63.timeout;
            const _errs502 = errors;
            let valid128 = false;
            const _errs503 = errors;
            if (!(typeof data165 == "number" && (!(data165 % 1) && !isNaN(data165)) && isFinite(data165))) {
              const err456 = { instancePath: instancePath + "/numbers/timeout", schemaPath: "#/properties/numbers/properties/timeout/anyOf/0/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
              if (vErrors === null) {
                vErrors = [err456];
              } else {
                vErrors.push(err456);
              }
              errors++;
            }
            if (typeof data165 == "number" && isFinite(data165)) {
              if (data165 > 7 || isNaN(data165)) {
                const err457 = { instancePath: instancePath + "/numbers/timeout", schemaPath: "#/properties/numbers/properties/timeout/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                if (vErrors === null) {
                  vErrors = [err457];
                } else {
                  vErrors.push(err457);
                }
                errors++;
              }
              if (data165 < 0 || isNaN(data165)) {
                const err458 = { instancePath: instancePath + "/numbers/timeout", schemaPath: "#/properties/numbers/properties/timeout/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                if (vErrors === null) {
                  vErrors = [err458];
                } else {
                  vErrors.push(err458);
                }
                errors++;
              }
            }
            var _valid19 = _errs503 === errors;
            valid128 = valid128 || _valid19;
            const _errs505 = errors;
            if (data165 && typeof data165 == "object" && !Array.isArray(data165)) {
              for (const key21 in data165) {
                if (!(key21 === "decimals" || key21 === "point" || key21 === "trailing-zeros" || key21 === "leading-zero" || key21 === "plus" || key21 === "suppressed-zeros" || key21 === "digits" || key21 === "whole-digits")) {
                  const err459 = { instancePath: instancePath + "/numbers/timeout", schemaPath: "#/properties/numbers/properties/timeout/anyOf/1/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key21 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err459];
                  } else {
                    vErrors.push(err459);
                  }
                  errors++;
                }
              }
              if (data165.decimals !== void 0) {
                let data166 = data165.decimals;
                if (!(typeof data166 == "number" && (!(data166 % 1) && !isNaN(data166)) && isFinite(data166))) {
                  const err460 = { instancePath: instancePath + "/numbers/timeout/decimals", schemaPath: "#/properties/numbers/properties/timeout/anyOf/1/properties/decimals/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err460];
                  } else {
                    vErrors.push(err460);
                  }
                  errors++;
                }
                if (typeof data166 == "number" && isFinite(data166)) {
                  if (data166 > 7 || isNaN(data166)) {
                    const err461 = { instancePath: instancePath + "/numbers/timeout/decimals", schemaPath: "#/properties/numbers/properties/timeout/anyOf/1/properties/decimals/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                    if (vErrors === null) {
                      vErrors = [err461];
                    } else {
                      vErrors.push(err461);
                    }
                    errors++;
                  }
                  if (data166 < 0 || isNaN(data166)) {
                    const err462 = { instancePath: instancePath + "/numbers/timeout/decimals", schemaPath: "#/properties/numbers/properties/timeout/anyOf/1/properties/decimals/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err462];
                    } else {
                      vErrors.push(err462);
                    }
                    errors++;
                  }
                }
              }
              if (data165.point !== void 0) {
                let data167 = data165.point;
                if (typeof data167 !== "string") {
                  const err463 = { instancePath: instancePath + "/numbers/timeout/point", schemaPath: "#/$defs/own-point/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err463];
                  } else {
                    vErrors.push(err463);
                  }
                  errors++;
                }
                if (!(data167 === "always" || data167 === "when-needed" || data167 === "never")) {
                  const err464 = { instancePath: instancePath + "/numbers/timeout/point", schemaPath: "#/$defs/own-point/enum", keyword: "enum", params: { allowedValues: schema37.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err464];
                  } else {
                    vErrors.push(err464);
                  }
                  errors++;
                }
              }
              if (data165["trailing-zeros"] !== void 0) {
                let data168 = data165["trailing-zeros"];
                if (typeof data168 !== "string") {
                  const err465 = { instancePath: instancePath + "/numbers/timeout/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err465];
                  } else {
                    vErrors.push(err465);
                  }
                  errors++;
                }
                if (!(data168 === "keep" || data168 === "drop" || data168 === "one")) {
                  const err466 = { instancePath: instancePath + "/numbers/timeout/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/enum", keyword: "enum", params: { allowedValues: schema38.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err466];
                  } else {
                    vErrors.push(err466);
                  }
                  errors++;
                }
              }
              if (data165["leading-zero"] !== void 0) {
                let data169 = data165["leading-zero"];
                if (typeof data169 !== "string") {
                  const err467 = { instancePath: instancePath + "/numbers/timeout/leading-zero", schemaPath: "#/$defs/own-leading-zero/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err467];
                  } else {
                    vErrors.push(err467);
                  }
                  errors++;
                }
                if (!(data169 === "keep" || data169 === "drop")) {
                  const err468 = { instancePath: instancePath + "/numbers/timeout/leading-zero", schemaPath: "#/$defs/own-leading-zero/enum", keyword: "enum", params: { allowedValues: schema39.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err468];
                  } else {
                    vErrors.push(err468);
                  }
                  errors++;
                }
              }
              if (data165.plus !== void 0) {
                let data170 = data165.plus;
                if (typeof data170 !== "string") {
                  const err469 = { instancePath: instancePath + "/numbers/timeout/plus", schemaPath: "#/$defs/own-plus/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err469];
                  } else {
                    vErrors.push(err469);
                  }
                  errors++;
                }
                if (!(data170 === "yes" || data170 === "no")) {
                  const err470 = { instancePath: instancePath + "/numbers/timeout/plus", schemaPath: "#/$defs/own-plus/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err470];
                  } else {
                    vErrors.push(err470);
                  }
                  errors++;
                }
              }
              if (data165["suppressed-zeros"] !== void 0) {
                let data171 = data165["suppressed-zeros"];
                if (typeof data171 !== "string") {
                  const err471 = { instancePath: instancePath + "/numbers/timeout/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err471];
                  } else {
                    vErrors.push(err471);
                  }
                  errors++;
                }
                if (!(data171 === "leading" || data171 === "trailing" || data171 === "none")) {
                  const err472 = { instancePath: instancePath + "/numbers/timeout/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/enum", keyword: "enum", params: { allowedValues: schema41.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err472];
                  } else {
                    vErrors.push(err472);
                  }
                  errors++;
                }
              }
              if (data165.digits !== void 0) {
                let data172 = data165.digits;
                if (!(typeof data172 == "number" && (!(data172 % 1) && !isNaN(data172)) && isFinite(data172))) {
                  const err473 = { instancePath: instancePath + "/numbers/timeout/digits", schemaPath: "#/$defs/own-digits/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err473];
                  } else {
                    vErrors.push(err473);
                  }
                  errors++;
                }
                if (typeof data172 == "number" && isFinite(data172)) {
                  if (data172 > 12 || isNaN(data172)) {
                    const err474 = { instancePath: instancePath + "/numbers/timeout/digits", schemaPath: "#/$defs/own-digits/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err474];
                    } else {
                      vErrors.push(err474);
                    }
                    errors++;
                  }
                  if (data172 < 1 || isNaN(data172)) {
                    const err475 = { instancePath: instancePath + "/numbers/timeout/digits", schemaPath: "#/$defs/own-digits/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err475];
                    } else {
                      vErrors.push(err475);
                    }
                    errors++;
                  }
                }
              }
              if (data165["whole-digits"] !== void 0) {
                let data173 = data165["whole-digits"];
                const _errs530 = errors;
                let valid137 = false;
                const _errs531 = errors;
                if (typeof data173 !== "string") {
                  const err476 = { instancePath: instancePath + "/numbers/timeout/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err476];
                  } else {
                    vErrors.push(err476);
                  }
                  errors++;
                }
                if ("none" !== data173) {
                  const err477 = { instancePath: instancePath + "/numbers/timeout/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
                  if (vErrors === null) {
                    vErrors = [err477];
                  } else {
                    vErrors.push(err477);
                  }
                  errors++;
                }
                var _valid20 = _errs531 === errors;
                valid137 = valid137 || _valid20;
                const _errs533 = errors;
                if (!(typeof data173 == "number" && (!(data173 % 1) && !isNaN(data173)) && isFinite(data173))) {
                  const err478 = { instancePath: instancePath + "/numbers/timeout/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err478];
                  } else {
                    vErrors.push(err478);
                  }
                  errors++;
                }
                if (typeof data173 == "number" && isFinite(data173)) {
                  if (data173 > 12 || isNaN(data173)) {
                    const err479 = { instancePath: instancePath + "/numbers/timeout/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err479];
                    } else {
                      vErrors.push(err479);
                    }
                    errors++;
                  }
                  if (data173 < 1 || isNaN(data173)) {
                    const err480 = { instancePath: instancePath + "/numbers/timeout/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err480];
                    } else {
                      vErrors.push(err480);
                    }
                    errors++;
                  }
                }
                var _valid20 = _errs533 === errors;
                valid137 = valid137 || _valid20;
                if (!valid137) {
                  const err481 = { instancePath: instancePath + "/numbers/timeout/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err481];
                  } else {
                    vErrors.push(err481);
                  }
                  errors++;
                } else {
                  errors = _errs530;
                  if (vErrors !== null) {
                    if (_errs530) {
                      vErrors.length = _errs530;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
            } else {
              const err482 = { instancePath: instancePath + "/numbers/timeout", schemaPath: "#/properties/numbers/properties/timeout/anyOf/1/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err482];
              } else {
                vErrors.push(err482);
              }
              errors++;
            }
            var _valid19 = _errs505 === errors;
            valid128 = valid128 || _valid19;
            if (!valid128) {
              const err483 = { instancePath: instancePath + "/numbers/timeout", schemaPath: "#/properties/numbers/properties/timeout/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err483];
              } else {
                vErrors.push(err483);
              }
              errors++;
            } else {
              errors = _errs502;
              if (vErrors !== null) {
                if (_errs502) {
                  vErrors.length = _errs502;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data63["code-width"] !== void 0) {
            let data174 = data63["code-width"];
            if (data174 && typeof data174 == "object" && !Array.isArray(data174)) {
              for (const key22 in data174) {
                if (!(key22 === "G" || key22 === "M" || key22 === "T" || key22 === "H" || key22 === "D")) {
                  const err484 = { instancePath: instancePath + "/numbers/code-width", schemaPath: "#/properties/numbers/properties/code-width/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key22 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err484];
                  } else {
                    vErrors.push(err484);
                  }
                  errors++;
                }
              }
              if (data174.G !== void 0) {
                let data175 = data174.G;
                if (!(typeof data175 == "number" && (!(data175 % 1) && !isNaN(data175)) && isFinite(data175))) {
                  const err485 = { instancePath: instancePath + "/numbers/code-width/G", schemaPath: "#/properties/numbers/properties/code-width/properties/G/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err485];
                  } else {
                    vErrors.push(err485);
                  }
                  errors++;
                }
                if (typeof data175 == "number" && isFinite(data175)) {
                  if (data175 > 4 || isNaN(data175)) {
                    const err486 = { instancePath: instancePath + "/numbers/code-width/G", schemaPath: "#/properties/numbers/properties/code-width/properties/G/maximum", keyword: "maximum", params: { comparison: "<=", limit: 4 }, message: "must be <= 4" };
                    if (vErrors === null) {
                      vErrors = [err486];
                    } else {
                      vErrors.push(err486);
                    }
                    errors++;
                  }
                  if (data175 < 1 || isNaN(data175)) {
                    const err487 = { instancePath: instancePath + "/numbers/code-width/G", schemaPath: "#/properties/numbers/properties/code-width/properties/G/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err487];
                    } else {
                      vErrors.push(err487);
                    }
                    errors++;
                  }
                }
              }
              if (data174.M !== void 0) {
                let data176 = data174.M;
                if (!(typeof data176 == "number" && (!(data176 % 1) && !isNaN(data176)) && isFinite(data176))) {
                  const err488 = { instancePath: instancePath + "/numbers/code-width/M", schemaPath: "#/properties/numbers/properties/code-width/properties/M/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err488];
                  } else {
                    vErrors.push(err488);
                  }
                  errors++;
                }
                if (typeof data176 == "number" && isFinite(data176)) {
                  if (data176 > 4 || isNaN(data176)) {
                    const err489 = { instancePath: instancePath + "/numbers/code-width/M", schemaPath: "#/properties/numbers/properties/code-width/properties/M/maximum", keyword: "maximum", params: { comparison: "<=", limit: 4 }, message: "must be <= 4" };
                    if (vErrors === null) {
                      vErrors = [err489];
                    } else {
                      vErrors.push(err489);
                    }
                    errors++;
                  }
                  if (data176 < 1 || isNaN(data176)) {
                    const err490 = { instancePath: instancePath + "/numbers/code-width/M", schemaPath: "#/properties/numbers/properties/code-width/properties/M/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err490];
                    } else {
                      vErrors.push(err490);
                    }
                    errors++;
                  }
                }
              }
              if (data174.T !== void 0) {
                let data177 = data174.T;
                if (!(typeof data177 == "number" && (!(data177 % 1) && !isNaN(data177)) && isFinite(data177))) {
                  const err491 = { instancePath: instancePath + "/numbers/code-width/T", schemaPath: "#/properties/numbers/properties/code-width/properties/T/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err491];
                  } else {
                    vErrors.push(err491);
                  }
                  errors++;
                }
                if (typeof data177 == "number" && isFinite(data177)) {
                  if (data177 > 4 || isNaN(data177)) {
                    const err492 = { instancePath: instancePath + "/numbers/code-width/T", schemaPath: "#/properties/numbers/properties/code-width/properties/T/maximum", keyword: "maximum", params: { comparison: "<=", limit: 4 }, message: "must be <= 4" };
                    if (vErrors === null) {
                      vErrors = [err492];
                    } else {
                      vErrors.push(err492);
                    }
                    errors++;
                  }
                  if (data177 < 1 || isNaN(data177)) {
                    const err493 = { instancePath: instancePath + "/numbers/code-width/T", schemaPath: "#/properties/numbers/properties/code-width/properties/T/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err493];
                    } else {
                      vErrors.push(err493);
                    }
                    errors++;
                  }
                }
              }
              if (data174.H !== void 0) {
                let data178 = data174.H;
                if (!(typeof data178 == "number" && (!(data178 % 1) && !isNaN(data178)) && isFinite(data178))) {
                  const err494 = { instancePath: instancePath + "/numbers/code-width/H", schemaPath: "#/properties/numbers/properties/code-width/properties/H/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err494];
                  } else {
                    vErrors.push(err494);
                  }
                  errors++;
                }
                if (typeof data178 == "number" && isFinite(data178)) {
                  if (data178 > 4 || isNaN(data178)) {
                    const err495 = { instancePath: instancePath + "/numbers/code-width/H", schemaPath: "#/properties/numbers/properties/code-width/properties/H/maximum", keyword: "maximum", params: { comparison: "<=", limit: 4 }, message: "must be <= 4" };
                    if (vErrors === null) {
                      vErrors = [err495];
                    } else {
                      vErrors.push(err495);
                    }
                    errors++;
                  }
                  if (data178 < 1 || isNaN(data178)) {
                    const err496 = { instancePath: instancePath + "/numbers/code-width/H", schemaPath: "#/properties/numbers/properties/code-width/properties/H/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err496];
                    } else {
                      vErrors.push(err496);
                    }
                    errors++;
                  }
                }
              }
              if (data174.D !== void 0) {
                let data179 = data174.D;
                if (!(typeof data179 == "number" && (!(data179 % 1) && !isNaN(data179)) && isFinite(data179))) {
                  const err497 = { instancePath: instancePath + "/numbers/code-width/D", schemaPath: "#/properties/numbers/properties/code-width/properties/D/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err497];
                  } else {
                    vErrors.push(err497);
                  }
                  errors++;
                }
                if (typeof data179 == "number" && isFinite(data179)) {
                  if (data179 > 4 || isNaN(data179)) {
                    const err498 = { instancePath: instancePath + "/numbers/code-width/D", schemaPath: "#/properties/numbers/properties/code-width/properties/D/maximum", keyword: "maximum", params: { comparison: "<=", limit: 4 }, message: "must be <= 4" };
                    if (vErrors === null) {
                      vErrors = [err498];
                    } else {
                      vErrors.push(err498);
                    }
                    errors++;
                  }
                  if (data179 < 1 || isNaN(data179)) {
                    const err499 = { instancePath: instancePath + "/numbers/code-width/D", schemaPath: "#/properties/numbers/properties/code-width/properties/D/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err499];
                    } else {
                      vErrors.push(err499);
                    }
                    errors++;
                  }
                }
              }
            } else {
              const err500 = { instancePath: instancePath + "/numbers/code-width", schemaPath: "#/properties/numbers/properties/code-width/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err500];
              } else {
                vErrors.push(err500);
              }
              errors++;
            }
          }
        } else {
          const err501 = { instancePath: instancePath + "/numbers", schemaPath: "#/properties/numbers/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err501];
          } else {
            vErrors.push(err501);
          }
          errors++;
        }
      }
      if (data.modal !== void 0) {
        let data180 = data.modal;
        if (data180 && typeof data180 == "object" && !Array.isArray(data180)) {
          for (const key23 in data180) {
            if (!(key23 === "motion" || key23 === "axes" || key23 === "arc-end" || key23 === "arc-centre" || key23 === "feed" || key23 === "speed")) {
              const err502 = { instancePath: instancePath + "/modal", schemaPath: "#/properties/modal/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key23 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err502];
              } else {
                vErrors.push(err502);
              }
              errors++;
            }
          }
          if (data180.motion !== void 0) {
            let data181 = data180.motion;
            if (typeof data181 !== "string") {
              const err503 = { instancePath: instancePath + "/modal/motion", schemaPath: "#/properties/modal/properties/motion/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err503];
              } else {
                vErrors.push(err503);
              }
              errors++;
            }
            if (!(data181 === "modal" || data181 === "each-block")) {
              const err504 = { instancePath: instancePath + "/modal/motion", schemaPath: "#/properties/modal/properties/motion/enum", keyword: "enum", params: { allowedValues: schema31.properties.modal.properties.motion.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err504];
              } else {
                vErrors.push(err504);
              }
              errors++;
            }
          }
          if (data180.axes !== void 0) {
            let data182 = data180.axes;
            if (typeof data182 !== "string") {
              const err505 = { instancePath: instancePath + "/modal/axes", schemaPath: "#/properties/modal/properties/axes/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err505];
              } else {
                vErrors.push(err505);
              }
              errors++;
            }
            if (!(data182 === "changed" || data182 === "all")) {
              const err506 = { instancePath: instancePath + "/modal/axes", schemaPath: "#/properties/modal/properties/axes/enum", keyword: "enum", params: { allowedValues: schema31.properties.modal.properties.axes.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err506];
              } else {
                vErrors.push(err506);
              }
              errors++;
            }
          }
          if (data180["arc-end"] !== void 0) {
            let data183 = data180["arc-end"];
            if (typeof data183 !== "string") {
              const err507 = { instancePath: instancePath + "/modal/arc-end", schemaPath: "#/properties/modal/properties/arc-end/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err507];
              } else {
                vErrors.push(err507);
              }
              errors++;
            }
            if (!(data183 === "changed" || data183 === "both")) {
              const err508 = { instancePath: instancePath + "/modal/arc-end", schemaPath: "#/properties/modal/properties/arc-end/enum", keyword: "enum", params: { allowedValues: schema31.properties.modal.properties["arc-end"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err508];
              } else {
                vErrors.push(err508);
              }
              errors++;
            }
          }
          if (data180["arc-centre"] !== void 0) {
            let data184 = data180["arc-centre"];
            if (typeof data184 !== "string") {
              const err509 = { instancePath: instancePath + "/modal/arc-centre", schemaPath: "#/properties/modal/properties/arc-centre/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err509];
              } else {
                vErrors.push(err509);
              }
              errors++;
            }
            if (!(data184 === "non-zero" || data184 === "both")) {
              const err510 = { instancePath: instancePath + "/modal/arc-centre", schemaPath: "#/properties/modal/properties/arc-centre/enum", keyword: "enum", params: { allowedValues: schema31.properties.modal.properties["arc-centre"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err510];
              } else {
                vErrors.push(err510);
              }
              errors++;
            }
          }
          if (data180.feed !== void 0) {
            let data185 = data180.feed;
            if (typeof data185 !== "string") {
              const err511 = { instancePath: instancePath + "/modal/feed", schemaPath: "#/properties/modal/properties/feed/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err511];
              } else {
                vErrors.push(err511);
              }
              errors++;
            }
            if (!(data185 === "modal" || data185 === "after-rapid" || data185 === "each-block")) {
              const err512 = { instancePath: instancePath + "/modal/feed", schemaPath: "#/properties/modal/properties/feed/enum", keyword: "enum", params: { allowedValues: schema31.properties.modal.properties.feed.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err512];
              } else {
                vErrors.push(err512);
              }
              errors++;
            }
          }
          if (data180.speed !== void 0) {
            let data186 = data180.speed;
            if (typeof data186 !== "string") {
              const err513 = { instancePath: instancePath + "/modal/speed", schemaPath: "#/properties/modal/properties/speed/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err513];
              } else {
                vErrors.push(err513);
              }
              errors++;
            }
            if (!(data186 === "each-start" || data186 === "changed")) {
              const err514 = { instancePath: instancePath + "/modal/speed", schemaPath: "#/properties/modal/properties/speed/enum", keyword: "enum", params: { allowedValues: schema31.properties.modal.properties.speed.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err514];
              } else {
                vErrors.push(err514);
              }
              errors++;
            }
          }
        } else {
          const err515 = { instancePath: instancePath + "/modal", schemaPath: "#/properties/modal/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err515];
          } else {
            vErrors.push(err515);
          }
          errors++;
        }
      }
      if (data.axes !== void 0) {
        let data187 = data.axes;
        if (data187 && typeof data187 == "object" && !Array.isArray(data187)) {
          for (const key24 in data187) {
            if (!(key24 === "x" || key24 === "y" || key24 === "z" || key24 === "a" || key24 === "b" || key24 === "c")) {
              const err516 = { instancePath: instancePath + "/axes", schemaPath: "#/properties/axes/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key24 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err516];
              } else {
                vErrors.push(err516);
              }
              errors++;
            }
          }
          if (data187.x !== void 0) {
            let data188 = data187.x;
            if (typeof data188 !== "string") {
              const err517 = { instancePath: instancePath + "/axes/x", schemaPath: "#/$defs/axisLetter/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err517];
              } else {
                vErrors.push(err517);
              }
              errors++;
            }
            if (!(data188 === "X" || data188 === "Y" || data188 === "Z" || data188 === "A" || data188 === "B" || data188 === "C" || data188 === "U" || data188 === "V" || data188 === "W")) {
              const err518 = { instancePath: instancePath + "/axes/x", schemaPath: "#/$defs/axisLetter/enum", keyword: "enum", params: { allowedValues: schema113.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err518];
              } else {
                vErrors.push(err518);
              }
              errors++;
            }
          }
          if (data187.y !== void 0) {
            let data189 = data187.y;
            if (typeof data189 !== "string") {
              const err519 = { instancePath: instancePath + "/axes/y", schemaPath: "#/$defs/axisLetter/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err519];
              } else {
                vErrors.push(err519);
              }
              errors++;
            }
            if (!(data189 === "X" || data189 === "Y" || data189 === "Z" || data189 === "A" || data189 === "B" || data189 === "C" || data189 === "U" || data189 === "V" || data189 === "W")) {
              const err520 = { instancePath: instancePath + "/axes/y", schemaPath: "#/$defs/axisLetter/enum", keyword: "enum", params: { allowedValues: schema113.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err520];
              } else {
                vErrors.push(err520);
              }
              errors++;
            }
          }
          if (data187.z !== void 0) {
            let data190 = data187.z;
            if (typeof data190 !== "string") {
              const err521 = { instancePath: instancePath + "/axes/z", schemaPath: "#/$defs/axisLetter/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err521];
              } else {
                vErrors.push(err521);
              }
              errors++;
            }
            if (!(data190 === "X" || data190 === "Y" || data190 === "Z" || data190 === "A" || data190 === "B" || data190 === "C" || data190 === "U" || data190 === "V" || data190 === "W")) {
              const err522 = { instancePath: instancePath + "/axes/z", schemaPath: "#/$defs/axisLetter/enum", keyword: "enum", params: { allowedValues: schema113.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err522];
              } else {
                vErrors.push(err522);
              }
              errors++;
            }
          }
          if (data187.a !== void 0) {
            let data191 = data187.a;
            if (typeof data191 !== "string") {
              const err523 = { instancePath: instancePath + "/axes/a", schemaPath: "#/$defs/axisLetter/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err523];
              } else {
                vErrors.push(err523);
              }
              errors++;
            }
            if (!(data191 === "X" || data191 === "Y" || data191 === "Z" || data191 === "A" || data191 === "B" || data191 === "C" || data191 === "U" || data191 === "V" || data191 === "W")) {
              const err524 = { instancePath: instancePath + "/axes/a", schemaPath: "#/$defs/axisLetter/enum", keyword: "enum", params: { allowedValues: schema113.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err524];
              } else {
                vErrors.push(err524);
              }
              errors++;
            }
          }
          if (data187.b !== void 0) {
            let data192 = data187.b;
            if (typeof data192 !== "string") {
              const err525 = { instancePath: instancePath + "/axes/b", schemaPath: "#/$defs/axisLetter/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err525];
              } else {
                vErrors.push(err525);
              }
              errors++;
            }
            if (!(data192 === "X" || data192 === "Y" || data192 === "Z" || data192 === "A" || data192 === "B" || data192 === "C" || data192 === "U" || data192 === "V" || data192 === "W")) {
              const err526 = { instancePath: instancePath + "/axes/b", schemaPath: "#/$defs/axisLetter/enum", keyword: "enum", params: { allowedValues: schema113.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err526];
              } else {
                vErrors.push(err526);
              }
              errors++;
            }
          }
          if (data187.c !== void 0) {
            let data193 = data187.c;
            if (typeof data193 !== "string") {
              const err527 = { instancePath: instancePath + "/axes/c", schemaPath: "#/$defs/axisLetter/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err527];
              } else {
                vErrors.push(err527);
              }
              errors++;
            }
            if (!(data193 === "X" || data193 === "Y" || data193 === "Z" || data193 === "A" || data193 === "B" || data193 === "C" || data193 === "U" || data193 === "V" || data193 === "W")) {
              const err528 = { instancePath: instancePath + "/axes/c", schemaPath: "#/$defs/axisLetter/enum", keyword: "enum", params: { allowedValues: schema113.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err528];
              } else {
                vErrors.push(err528);
              }
              errors++;
            }
          }
        } else {
          const err529 = { instancePath: instancePath + "/axes", schemaPath: "#/properties/axes/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err529];
          } else {
            vErrors.push(err529);
          }
          errors++;
        }
      }
      if (data.motion !== void 0) {
        let data194 = data.motion;
        if (data194 && typeof data194 == "object" && !Array.isArray(data194)) {
          for (const key25 in data194) {
            if (!(key25 === "rapid" || key25 === "line" || key25 === "rapids" || key25 === "rapid-axes" || key25 === "axes-at-once" || key25 === "rapid-feed" || key25 === "machine-move-lasts")) {
              const err530 = { instancePath: instancePath + "/motion", schemaPath: "#/properties/motion/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key25 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err530];
              } else {
                vErrors.push(err530);
              }
              errors++;
            }
          }
          if (data194.rapid !== void 0) {
            let data195 = data194.rapid;
            if (typeof data195 === "string") {
              if (!pattern8.test(data195)) {
                const err531 = { instancePath: instancePath + "/motion/rapid", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err531];
                } else {
                  vErrors.push(err531);
                }
                errors++;
              }
            } else {
              const err532 = { instancePath: instancePath + "/motion/rapid", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err532];
              } else {
                vErrors.push(err532);
              }
              errors++;
            }
          }
          if (data194.line !== void 0) {
            let data196 = data194.line;
            if (typeof data196 === "string") {
              if (!pattern8.test(data196)) {
                const err533 = { instancePath: instancePath + "/motion/line", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err533];
                } else {
                  vErrors.push(err533);
                }
                errors++;
              }
            } else {
              const err534 = { instancePath: instancePath + "/motion/line", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err534];
              } else {
                vErrors.push(err534);
              }
              errors++;
            }
          }
          if (data194.rapids !== void 0) {
            let data197 = data194.rapids;
            if (typeof data197 !== "string") {
              const err535 = { instancePath: instancePath + "/motion/rapids", schemaPath: "#/properties/motion/properties/rapids/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err535];
              } else {
                vErrors.push(err535);
              }
              errors++;
            }
            if (!(data197 === "straight" || data197 === "dog-leg")) {
              const err536 = { instancePath: instancePath + "/motion/rapids", schemaPath: "#/properties/motion/properties/rapids/enum", keyword: "enum", params: { allowedValues: schema31.properties.motion.properties.rapids.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err536];
              } else {
                vErrors.push(err536);
              }
              errors++;
            }
          }
          if (data194["rapid-axes"] !== void 0) {
            let data198 = data194["rapid-axes"];
            if (typeof data198 !== "string") {
              const err537 = { instancePath: instancePath + "/motion/rapid-axes", schemaPath: "#/properties/motion/properties/rapid-axes/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err537];
              } else {
                vErrors.push(err537);
              }
              errors++;
            }
            if (!(data198 === "together" || data198 === "one-at-a-time")) {
              const err538 = { instancePath: instancePath + "/motion/rapid-axes", schemaPath: "#/properties/motion/properties/rapid-axes/enum", keyword: "enum", params: { allowedValues: schema31.properties.motion.properties["rapid-axes"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err538];
              } else {
                vErrors.push(err538);
              }
              errors++;
            }
          }
          if (data194["axes-at-once"] !== void 0) {
            let data199 = data194["axes-at-once"];
            if (!(typeof data199 == "number" && (!(data199 % 1) && !isNaN(data199)) && isFinite(data199))) {
              const err539 = { instancePath: instancePath + "/motion/axes-at-once", schemaPath: "#/properties/motion/properties/axes-at-once/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
              if (vErrors === null) {
                vErrors = [err539];
              } else {
                vErrors.push(err539);
              }
              errors++;
            }
            if (typeof data199 == "number" && isFinite(data199)) {
              if (data199 > 6 || isNaN(data199)) {
                const err540 = { instancePath: instancePath + "/motion/axes-at-once", schemaPath: "#/properties/motion/properties/axes-at-once/maximum", keyword: "maximum", params: { comparison: "<=", limit: 6 }, message: "must be <= 6" };
                if (vErrors === null) {
                  vErrors = [err540];
                } else {
                  vErrors.push(err540);
                }
                errors++;
              }
              if (data199 < 2 || isNaN(data199)) {
                const err541 = { instancePath: instancePath + "/motion/axes-at-once", schemaPath: "#/properties/motion/properties/axes-at-once/minimum", keyword: "minimum", params: { comparison: ">=", limit: 2 }, message: "must be >= 2" };
                if (vErrors === null) {
                  vErrors = [err541];
                } else {
                  vErrors.push(err541);
                }
                errors++;
              }
            }
          }
          if (data194["rapid-feed"] !== void 0) {
            let data200 = data194["rapid-feed"];
            const _errs600 = errors;
            let valid150 = false;
            const _errs601 = errors;
            if (typeof data200 !== "string") {
              const err542 = { instancePath: instancePath + "/motion/rapid-feed", schemaPath: "#/properties/motion/properties/rapid-feed/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err542];
              } else {
                vErrors.push(err542);
              }
              errors++;
            }
            if ("none" !== data200) {
              const err543 = { instancePath: instancePath + "/motion/rapid-feed", schemaPath: "#/properties/motion/properties/rapid-feed/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
              if (vErrors === null) {
                vErrors = [err543];
              } else {
                vErrors.push(err543);
              }
              errors++;
            }
            var _valid21 = _errs601 === errors;
            valid150 = valid150 || _valid21;
            const _errs603 = errors;
            const _errs605 = errors;
            let valid152 = false;
            const _errs606 = errors;
            if (typeof data200 == "number" && isFinite(data200)) {
              if (data200 > 1e6 || isNaN(data200)) {
                const err544 = { instancePath: instancePath + "/motion/rapid-feed", schemaPath: "#/$defs/feed/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                if (vErrors === null) {
                  vErrors = [err544];
                } else {
                  vErrors.push(err544);
                }
                errors++;
              }
              if (data200 <= 0 || isNaN(data200)) {
                const err545 = { instancePath: instancePath + "/motion/rapid-feed", schemaPath: "#/$defs/feed/anyOf/0/exclusiveMinimum", keyword: "exclusiveMinimum", params: { comparison: ">", limit: 0 }, message: "must be > 0" };
                if (vErrors === null) {
                  vErrors = [err545];
                } else {
                  vErrors.push(err545);
                }
                errors++;
              }
            } else {
              const err546 = { instancePath: instancePath + "/motion/rapid-feed", schemaPath: "#/$defs/feed/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
              if (vErrors === null) {
                vErrors = [err546];
              } else {
                vErrors.push(err546);
              }
              errors++;
            }
            var _valid22 = _errs606 === errors;
            valid152 = valid152 || _valid22;
            const _errs608 = errors;
            if (typeof data200 === "string") {
              if (!pattern10.test(data200)) {
                const err547 = { instancePath: instancePath + "/motion/rapid-feed", schemaPath: "#/$defs/feed/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^\\d{1,5}(\\.\\d{1,5})? (mm|in)/min$" }, message: 'must match pattern "^\\d{1,5}(\\.\\d{1,5})? (mm|in)/min$"' };
                if (vErrors === null) {
                  vErrors = [err547];
                } else {
                  vErrors.push(err547);
                }
                errors++;
              }
            } else {
              const err548 = { instancePath: instancePath + "/motion/rapid-feed", schemaPath: "#/$defs/feed/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err548];
              } else {
                vErrors.push(err548);
              }
              errors++;
            }
            var _valid22 = _errs608 === errors;
            valid152 = valid152 || _valid22;
            if (!valid152) {
              const err549 = { instancePath: instancePath + "/motion/rapid-feed", schemaPath: "#/$defs/feed/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err549];
              } else {
                vErrors.push(err549);
              }
              errors++;
            } else {
              errors = _errs605;
              if (vErrors !== null) {
                if (_errs605) {
                  vErrors.length = _errs605;
                } else {
                  vErrors = null;
                }
              }
            }
            var _valid21 = _errs603 === errors;
            valid150 = valid150 || _valid21;
            if (!valid150) {
              const err550 = { instancePath: instancePath + "/motion/rapid-feed", schemaPath: "#/properties/motion/properties/rapid-feed/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err550];
              } else {
                vErrors.push(err550);
              }
              errors++;
            } else {
              errors = _errs600;
              if (vErrors !== null) {
                if (_errs600) {
                  vErrors.length = _errs600;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data194["machine-move-lasts"] !== void 0) {
            let data201 = data194["machine-move-lasts"];
            if (typeof data201 !== "string") {
              const err551 = { instancePath: instancePath + "/motion/machine-move-lasts", schemaPath: "#/properties/motion/properties/machine-move-lasts/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err551];
              } else {
                vErrors.push(err551);
              }
              errors++;
            }
            if (!(data201 === "block" || data201 === "until-work-offset")) {
              const err552 = { instancePath: instancePath + "/motion/machine-move-lasts", schemaPath: "#/properties/motion/properties/machine-move-lasts/enum", keyword: "enum", params: { allowedValues: schema31.properties.motion.properties["machine-move-lasts"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err552];
              } else {
                vErrors.push(err552);
              }
              errors++;
            }
          }
        } else {
          const err553 = { instancePath: instancePath + "/motion", schemaPath: "#/properties/motion/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err553];
          } else {
            vErrors.push(err553);
          }
          errors++;
        }
      }
      if (data.units !== void 0) {
        let data202 = data.units;
        if (data202 && typeof data202 == "object" && !Array.isArray(data202)) {
          for (const key26 in data202) {
            if (!(key26 === "mm" || key26 === "inch" || key26 === "programs-in" || key26 === "stated")) {
              const err554 = { instancePath: instancePath + "/units", schemaPath: "#/properties/units/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key26 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err554];
              } else {
                vErrors.push(err554);
              }
              errors++;
            }
          }
          if (data202.mm !== void 0) {
            let data203 = data202.mm;
            if (typeof data203 === "string") {
              if (!pattern8.test(data203)) {
                const err555 = { instancePath: instancePath + "/units/mm", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err555];
                } else {
                  vErrors.push(err555);
                }
                errors++;
              }
            } else {
              const err556 = { instancePath: instancePath + "/units/mm", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err556];
              } else {
                vErrors.push(err556);
              }
              errors++;
            }
          }
          if (data202.inch !== void 0) {
            let data204 = data202.inch;
            if (typeof data204 === "string") {
              if (!pattern8.test(data204)) {
                const err557 = { instancePath: instancePath + "/units/inch", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err557];
                } else {
                  vErrors.push(err557);
                }
                errors++;
              }
            } else {
              const err558 = { instancePath: instancePath + "/units/inch", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err558];
              } else {
                vErrors.push(err558);
              }
              errors++;
            }
          }
          if (data202["programs-in"] !== void 0) {
            let data205 = data202["programs-in"];
            if (typeof data205 !== "string") {
              const err559 = { instancePath: instancePath + "/units/programs-in", schemaPath: "#/properties/units/properties/programs-in/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err559];
              } else {
                vErrors.push(err559);
              }
              errors++;
            }
            if (!(data205 === "job" || data205 === "mm" || data205 === "inch")) {
              const err560 = { instancePath: instancePath + "/units/programs-in", schemaPath: "#/properties/units/properties/programs-in/enum", keyword: "enum", params: { allowedValues: schema31.properties.units.properties["programs-in"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err560];
              } else {
                vErrors.push(err560);
              }
              errors++;
            }
          }
          if (data202.stated !== void 0) {
            let data206 = data202.stated;
            if (typeof data206 !== "string") {
              const err561 = { instancePath: instancePath + "/units/stated", schemaPath: "#/properties/units/properties/stated/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err561];
              } else {
                vErrors.push(err561);
              }
              errors++;
            }
            if (!(data206 === "with-modes" || data206 === "first-block")) {
              const err562 = { instancePath: instancePath + "/units/stated", schemaPath: "#/properties/units/properties/stated/enum", keyword: "enum", params: { allowedValues: schema31.properties.units.properties.stated.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err562];
              } else {
                vErrors.push(err562);
              }
              errors++;
            }
          }
        } else {
          const err563 = { instancePath: instancePath + "/units", schemaPath: "#/properties/units/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err563];
          } else {
            vErrors.push(err563);
          }
          errors++;
        }
      }
      if (data.plane !== void 0) {
        let data207 = data.plane;
        if (data207 && typeof data207 == "object" && !Array.isArray(data207)) {
          for (const key27 in data207) {
            if (!(key27 === "xy" || key27 === "zx" || key27 === "yz")) {
              const err564 = { instancePath: instancePath + "/plane", schemaPath: "#/properties/plane/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key27 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err564];
              } else {
                vErrors.push(err564);
              }
              errors++;
            }
          }
          if (data207.xy !== void 0) {
            let data208 = data207.xy;
            if (typeof data208 === "string") {
              if (!pattern8.test(data208)) {
                const err565 = { instancePath: instancePath + "/plane/xy", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err565];
                } else {
                  vErrors.push(err565);
                }
                errors++;
              }
            } else {
              const err566 = { instancePath: instancePath + "/plane/xy", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err566];
              } else {
                vErrors.push(err566);
              }
              errors++;
            }
          }
          if (data207.zx !== void 0) {
            let data209 = data207.zx;
            if (typeof data209 === "string") {
              if (!pattern8.test(data209)) {
                const err567 = { instancePath: instancePath + "/plane/zx", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err567];
                } else {
                  vErrors.push(err567);
                }
                errors++;
              }
            } else {
              const err568 = { instancePath: instancePath + "/plane/zx", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err568];
              } else {
                vErrors.push(err568);
              }
              errors++;
            }
          }
          if (data207.yz !== void 0) {
            let data210 = data207.yz;
            if (typeof data210 === "string") {
              if (!pattern8.test(data210)) {
                const err569 = { instancePath: instancePath + "/plane/yz", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err569];
                } else {
                  vErrors.push(err569);
                }
                errors++;
              }
            } else {
              const err570 = { instancePath: instancePath + "/plane/yz", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err570];
              } else {
                vErrors.push(err570);
              }
              errors++;
            }
          }
        } else {
          const err571 = { instancePath: instancePath + "/plane", schemaPath: "#/properties/plane/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err571];
          } else {
            vErrors.push(err571);
          }
          errors++;
        }
      }
      if (data.distance !== void 0) {
        let data211 = data.distance;
        if (data211 && typeof data211 == "object" && !Array.isArray(data211)) {
          for (const key28 in data211) {
            if (!(key28 === "absolute" || key28 === "incremental" || key28 === "programs-in")) {
              const err572 = { instancePath: instancePath + "/distance", schemaPath: "#/properties/distance/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key28 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err572];
              } else {
                vErrors.push(err572);
              }
              errors++;
            }
          }
          if (data211.absolute !== void 0) {
            let data212 = data211.absolute;
            if (typeof data212 === "string") {
              if (!pattern8.test(data212)) {
                const err573 = { instancePath: instancePath + "/distance/absolute", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err573];
                } else {
                  vErrors.push(err573);
                }
                errors++;
              }
            } else {
              const err574 = { instancePath: instancePath + "/distance/absolute", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err574];
              } else {
                vErrors.push(err574);
              }
              errors++;
            }
          }
          if (data211.incremental !== void 0) {
            let data213 = data211.incremental;
            if (typeof data213 === "string") {
              if (!pattern8.test(data213)) {
                const err575 = { instancePath: instancePath + "/distance/incremental", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err575];
                } else {
                  vErrors.push(err575);
                }
                errors++;
              }
            } else {
              const err576 = { instancePath: instancePath + "/distance/incremental", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err576];
              } else {
                vErrors.push(err576);
              }
              errors++;
            }
          }
          if (data211["programs-in"] !== void 0) {
            let data214 = data211["programs-in"];
            if (typeof data214 !== "string") {
              const err577 = { instancePath: instancePath + "/distance/programs-in", schemaPath: "#/properties/distance/properties/programs-in/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err577];
              } else {
                vErrors.push(err577);
              }
              errors++;
            }
            if (!(data214 === "absolute" || data214 === "incremental")) {
              const err578 = { instancePath: instancePath + "/distance/programs-in", schemaPath: "#/properties/distance/properties/programs-in/enum", keyword: "enum", params: { allowedValues: schema31.properties.distance.properties["programs-in"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err578];
              } else {
                vErrors.push(err578);
              }
              errors++;
            }
          }
        } else {
          const err579 = { instancePath: instancePath + "/distance", schemaPath: "#/properties/distance/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err579];
          } else {
            vErrors.push(err579);
          }
          errors++;
        }
      }
      if (data.arc !== void 0) {
        let data215 = data.arc;
        if (data215 && typeof data215 == "object" && !Array.isArray(data215)) {
          for (const key29 in data215) {
            if (!func1.call(schema31.properties.arc.properties, key29)) {
              const err580 = { instancePath: instancePath + "/arc", schemaPath: "#/properties/arc/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key29 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err580];
              } else {
                vErrors.push(err580);
              }
              errors++;
            }
          }
          if (data215.cw !== void 0) {
            let data216 = data215.cw;
            if (typeof data216 === "string") {
              if (!pattern8.test(data216)) {
                const err581 = { instancePath: instancePath + "/arc/cw", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err581];
                } else {
                  vErrors.push(err581);
                }
                errors++;
              }
            } else {
              const err582 = { instancePath: instancePath + "/arc/cw", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err582];
              } else {
                vErrors.push(err582);
              }
              errors++;
            }
          }
          if (data215.ccw !== void 0) {
            let data217 = data215.ccw;
            if (typeof data217 === "string") {
              if (!pattern8.test(data217)) {
                const err583 = { instancePath: instancePath + "/arc/ccw", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err583];
                } else {
                  vErrors.push(err583);
                }
                errors++;
              }
            } else {
              const err584 = { instancePath: instancePath + "/arc/ccw", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err584];
              } else {
                vErrors.push(err584);
              }
              errors++;
            }
          }
          if (data215.form !== void 0) {
            let data218 = data215.form;
            if (typeof data218 !== "string") {
              const err585 = { instancePath: instancePath + "/arc/form", schemaPath: "#/properties/arc/properties/form/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err585];
              } else {
                vErrors.push(err585);
              }
              errors++;
            }
            if (!(data218 === "incremental-centre" || data218 === "absolute-centre" || data218 === "radius" || data218 === "none")) {
              const err586 = { instancePath: instancePath + "/arc/form", schemaPath: "#/properties/arc/properties/form/enum", keyword: "enum", params: { allowedValues: schema31.properties.arc.properties.form.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err586];
              } else {
                vErrors.push(err586);
              }
              errors++;
            }
          }
          if (data215["centre-words"] !== void 0) {
            let data219 = data215["centre-words"];
            if (data219 && typeof data219 == "object" && !Array.isArray(data219)) {
              for (const key30 in data219) {
                if (!(key30 === "absolute" || key30 === "incremental")) {
                  const err587 = { instancePath: instancePath + "/arc/centre-words", schemaPath: "#/properties/arc/properties/centre-words/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key30 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err587];
                  } else {
                    vErrors.push(err587);
                  }
                  errors++;
                }
              }
              if (data219.absolute !== void 0) {
                let data220 = data219.absolute;
                if (typeof data220 === "string") {
                  if (!pattern8.test(data220)) {
                    const err588 = { instancePath: instancePath + "/arc/centre-words/absolute", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                    if (vErrors === null) {
                      vErrors = [err588];
                    } else {
                      vErrors.push(err588);
                    }
                    errors++;
                  }
                } else {
                  const err589 = { instancePath: instancePath + "/arc/centre-words/absolute", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err589];
                  } else {
                    vErrors.push(err589);
                  }
                  errors++;
                }
              }
              if (data219.incremental !== void 0) {
                let data221 = data219.incremental;
                if (typeof data221 === "string") {
                  if (!pattern8.test(data221)) {
                    const err590 = { instancePath: instancePath + "/arc/centre-words/incremental", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                    if (vErrors === null) {
                      vErrors = [err590];
                    } else {
                      vErrors.push(err590);
                    }
                    errors++;
                  }
                } else {
                  const err591 = { instancePath: instancePath + "/arc/centre-words/incremental", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err591];
                  } else {
                    vErrors.push(err591);
                  }
                  errors++;
                }
              }
            } else {
              const err592 = { instancePath: instancePath + "/arc/centre-words", schemaPath: "#/properties/arc/properties/centre-words/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err592];
              } else {
                vErrors.push(err592);
              }
              errors++;
            }
          }
          if (data215["radius-word"] !== void 0) {
            let data222 = data215["radius-word"];
            if (typeof data222 === "string") {
              if (!pattern7.test(data222)) {
                const err593 = { instancePath: instancePath + "/arc/radius-word", schemaPath: "#/$defs/letter/pattern", keyword: "pattern", params: { pattern: "^[A-Z]$" }, message: 'must match pattern "^[A-Z]$"' };
                if (vErrors === null) {
                  vErrors = [err593];
                } else {
                  vErrors.push(err593);
                }
                errors++;
              }
            } else {
              const err594 = { instancePath: instancePath + "/arc/radius-word", schemaPath: "#/$defs/letter/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err594];
              } else {
                vErrors.push(err594);
              }
              errors++;
            }
          }
          if (data215.planes !== void 0) {
            let data223 = data215.planes;
            if (Array.isArray(data223)) {
              if (data223.length > 3) {
                const err595 = { instancePath: instancePath + "/arc/planes", schemaPath: "#/properties/arc/properties/planes/maxItems", keyword: "maxItems", params: { limit: 3 }, message: "must NOT have more than 3 items" };
                if (vErrors === null) {
                  vErrors = [err595];
                } else {
                  vErrors.push(err595);
                }
                errors++;
              }
              const len6 = data223.length;
              for (let i8 = 0; i8 < len6; i8++) {
                let data224 = data223[i8];
                if (typeof data224 !== "string") {
                  const err596 = { instancePath: instancePath + "/arc/planes/" + i8, schemaPath: "#/properties/arc/properties/planes/items/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err596];
                  } else {
                    vErrors.push(err596);
                  }
                  errors++;
                }
                if (!(data224 === "xy" || data224 === "zx" || data224 === "yz")) {
                  const err597 = { instancePath: instancePath + "/arc/planes/" + i8, schemaPath: "#/properties/arc/properties/planes/items/enum", keyword: "enum", params: { allowedValues: schema31.properties.arc.properties.planes.items.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err597];
                  } else {
                    vErrors.push(err597);
                  }
                  errors++;
                }
              }
              let i9 = data223.length;
              let j2;
              if (i9 > 1) {
                const indices1 = {};
                for (; i9--; ) {
                  let item1 = data223[i9];
                  if (typeof item1 !== "string") {
                    continue;
                  }
                  if (typeof indices1[item1] == "number") {
                    j2 = indices1[item1];
                    const err598 = { instancePath: instancePath + "/arc/planes", schemaPath: "#/properties/arc/properties/planes/uniqueItems", keyword: "uniqueItems", params: { i: i9, j: j2 }, message: "must NOT have duplicate items (items ## " + j2 + " and " + i9 + " are identical)" };
                    if (vErrors === null) {
                      vErrors = [err598];
                    } else {
                      vErrors.push(err598);
                    }
                    errors++;
                    break;
                  }
                  indices1[item1] = i9;
                }
              }
            } else {
              const err599 = { instancePath: instancePath + "/arc/planes", schemaPath: "#/properties/arc/properties/planes/type", keyword: "type", params: { type: "array" }, message: "must be array" };
              if (vErrors === null) {
                vErrors = [err599];
              } else {
                vErrors.push(err599);
              }
              errors++;
            }
          }
          if (data215["largest-sweep"] !== void 0) {
            let data225 = data215["largest-sweep"];
            if (typeof data225 == "number" && isFinite(data225)) {
              if (data225 > 360 || isNaN(data225)) {
                const err600 = { instancePath: instancePath + "/arc/largest-sweep", schemaPath: "#/properties/arc/properties/largest-sweep/maximum", keyword: "maximum", params: { comparison: "<=", limit: 360 }, message: "must be <= 360" };
                if (vErrors === null) {
                  vErrors = [err600];
                } else {
                  vErrors.push(err600);
                }
                errors++;
              }
              if (data225 <= 0 || isNaN(data225)) {
                const err601 = { instancePath: instancePath + "/arc/largest-sweep", schemaPath: "#/properties/arc/properties/largest-sweep/exclusiveMinimum", keyword: "exclusiveMinimum", params: { comparison: ">", limit: 0 }, message: "must be > 0" };
                if (vErrors === null) {
                  vErrors = [err601];
                } else {
                  vErrors.push(err601);
                }
                errors++;
              }
            } else {
              const err602 = { instancePath: instancePath + "/arc/largest-sweep", schemaPath: "#/properties/arc/properties/largest-sweep/type", keyword: "type", params: { type: "number" }, message: "must be number" };
              if (vErrors === null) {
                vErrors = [err602];
              } else {
                vErrors.push(err602);
              }
              errors++;
            }
          }
          if (data215.quadrants !== void 0) {
            let data226 = data215.quadrants;
            if (typeof data226 !== "string") {
              const err603 = { instancePath: instancePath + "/arc/quadrants", schemaPath: "#/properties/arc/properties/quadrants/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err603];
              } else {
                vErrors.push(err603);
              }
              errors++;
            }
            if (!(data226 === "any" || data226 === "one")) {
              const err604 = { instancePath: instancePath + "/arc/quadrants", schemaPath: "#/properties/arc/properties/quadrants/enum", keyword: "enum", params: { allowedValues: schema31.properties.arc.properties.quadrants.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err604];
              } else {
                vErrors.push(err604);
              }
              errors++;
            }
          }
          if (data215["full-circle"] !== void 0) {
            let data227 = data215["full-circle"];
            if (typeof data227 !== "string") {
              const err605 = { instancePath: instancePath + "/arc/full-circle", schemaPath: "#/$defs/yesNo/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err605];
              } else {
                vErrors.push(err605);
              }
              errors++;
            }
            if (!(data227 === "yes" || data227 === "no")) {
              const err606 = { instancePath: instancePath + "/arc/full-circle", schemaPath: "#/$defs/yesNo/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err606];
              } else {
                vErrors.push(err606);
              }
              errors++;
            }
          }
          if (data215.helix !== void 0) {
            let data228 = data215.helix;
            if (typeof data228 !== "string") {
              const err607 = { instancePath: instancePath + "/arc/helix", schemaPath: "#/$defs/yesNo/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err607];
              } else {
                vErrors.push(err607);
              }
              errors++;
            }
            if (!(data228 === "yes" || data228 === "no")) {
              const err608 = { instancePath: instancePath + "/arc/helix", schemaPath: "#/$defs/yesNo/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err608];
              } else {
                vErrors.push(err608);
              }
              errors++;
            }
          }
          if (data215["turns-word"] !== void 0) {
            let data229 = data215["turns-word"];
            if (typeof data229 === "string") {
              if (!pattern23.test(data229)) {
                const err609 = { instancePath: instancePath + "/arc/turns-word", schemaPath: "#/$defs/letterOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[A-Z])$" }, message: 'must match pattern "^(none|[A-Z])$"' };
                if (vErrors === null) {
                  vErrors = [err609];
                } else {
                  vErrors.push(err609);
                }
                errors++;
              }
            } else {
              const err610 = { instancePath: instancePath + "/arc/turns-word", schemaPath: "#/$defs/letterOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err610];
              } else {
                vErrors.push(err610);
              }
              errors++;
            }
          }
          if (data215["feed-along"] !== void 0) {
            let data230 = data215["feed-along"];
            if (typeof data230 !== "string") {
              const err611 = { instancePath: instancePath + "/arc/feed-along", schemaPath: "#/properties/arc/properties/feed-along/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err611];
              } else {
                vErrors.push(err611);
              }
              errors++;
            }
            if (!(data230 === "path" || data230 === "circle")) {
              const err612 = { instancePath: instancePath + "/arc/feed-along", schemaPath: "#/properties/arc/properties/feed-along/enum", keyword: "enum", params: { allowedValues: schema31.properties.arc.properties["feed-along"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err612];
              } else {
                vErrors.push(err612);
              }
              errors++;
            }
          }
          if (data215["smallest-radius"] !== void 0) {
            let data231 = data215["smallest-radius"];
            const _errs692 = errors;
            let valid177 = false;
            const _errs693 = errors;
            if (typeof data231 == "number" && isFinite(data231)) {
              if (data231 > 1e6 || isNaN(data231)) {
                const err613 = { instancePath: instancePath + "/arc/smallest-radius", schemaPath: "#/$defs/lengthOrNone/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                if (vErrors === null) {
                  vErrors = [err613];
                } else {
                  vErrors.push(err613);
                }
                errors++;
              }
              if (data231 < 0 || isNaN(data231)) {
                const err614 = { instancePath: instancePath + "/arc/smallest-radius", schemaPath: "#/$defs/lengthOrNone/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                if (vErrors === null) {
                  vErrors = [err614];
                } else {
                  vErrors.push(err614);
                }
                errors++;
              }
            } else {
              const err615 = { instancePath: instancePath + "/arc/smallest-radius", schemaPath: "#/$defs/lengthOrNone/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
              if (vErrors === null) {
                vErrors = [err615];
              } else {
                vErrors.push(err615);
              }
              errors++;
            }
            var _valid23 = _errs693 === errors;
            valid177 = valid177 || _valid23;
            const _errs695 = errors;
            if (typeof data231 === "string") {
              if (!pattern24.test(data231)) {
                const err616 = { instancePath: instancePath + "/arc/smallest-radius", schemaPath: "#/$defs/lengthOrNone/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^(none|\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }, message: 'must match pattern "^(none|\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$"' };
                if (vErrors === null) {
                  vErrors = [err616];
                } else {
                  vErrors.push(err616);
                }
                errors++;
              }
            } else {
              const err617 = { instancePath: instancePath + "/arc/smallest-radius", schemaPath: "#/$defs/lengthOrNone/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err617];
              } else {
                vErrors.push(err617);
              }
              errors++;
            }
            var _valid23 = _errs695 === errors;
            valid177 = valid177 || _valid23;
            if (!valid177) {
              const err618 = { instancePath: instancePath + "/arc/smallest-radius", schemaPath: "#/$defs/lengthOrNone/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err618];
              } else {
                vErrors.push(err618);
              }
              errors++;
            } else {
              errors = _errs692;
              if (vErrors !== null) {
                if (_errs692) {
                  vErrors.length = _errs692;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data215["largest-radius"] !== void 0) {
            let data232 = data215["largest-radius"];
            const _errs699 = errors;
            let valid179 = false;
            const _errs700 = errors;
            if (typeof data232 == "number" && isFinite(data232)) {
              if (data232 > 1e6 || isNaN(data232)) {
                const err619 = { instancePath: instancePath + "/arc/largest-radius", schemaPath: "#/$defs/lengthOrNone/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                if (vErrors === null) {
                  vErrors = [err619];
                } else {
                  vErrors.push(err619);
                }
                errors++;
              }
              if (data232 < 0 || isNaN(data232)) {
                const err620 = { instancePath: instancePath + "/arc/largest-radius", schemaPath: "#/$defs/lengthOrNone/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                if (vErrors === null) {
                  vErrors = [err620];
                } else {
                  vErrors.push(err620);
                }
                errors++;
              }
            } else {
              const err621 = { instancePath: instancePath + "/arc/largest-radius", schemaPath: "#/$defs/lengthOrNone/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
              if (vErrors === null) {
                vErrors = [err621];
              } else {
                vErrors.push(err621);
              }
              errors++;
            }
            var _valid24 = _errs700 === errors;
            valid179 = valid179 || _valid24;
            const _errs702 = errors;
            if (typeof data232 === "string") {
              if (!pattern24.test(data232)) {
                const err622 = { instancePath: instancePath + "/arc/largest-radius", schemaPath: "#/$defs/lengthOrNone/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^(none|\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }, message: 'must match pattern "^(none|\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$"' };
                if (vErrors === null) {
                  vErrors = [err622];
                } else {
                  vErrors.push(err622);
                }
                errors++;
              }
            } else {
              const err623 = { instancePath: instancePath + "/arc/largest-radius", schemaPath: "#/$defs/lengthOrNone/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err623];
              } else {
                vErrors.push(err623);
              }
              errors++;
            }
            var _valid24 = _errs702 === errors;
            valid179 = valid179 || _valid24;
            if (!valid179) {
              const err624 = { instancePath: instancePath + "/arc/largest-radius", schemaPath: "#/$defs/lengthOrNone/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err624];
              } else {
                vErrors.push(err624);
              }
              errors++;
            } else {
              errors = _errs699;
              if (vErrors !== null) {
                if (_errs699) {
                  vErrors.length = _errs699;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data215.tolerance !== void 0) {
            let data233 = data215.tolerance;
            if (data233 && typeof data233 == "object" && !Array.isArray(data233)) {
              for (const key31 in data233) {
                if (!(key31 === "mm" || key31 === "inch" || key31 === "relative")) {
                  const err625 = { instancePath: instancePath + "/arc/tolerance", schemaPath: "#/properties/arc/properties/tolerance/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key31 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err625];
                  } else {
                    vErrors.push(err625);
                  }
                  errors++;
                }
              }
              if (data233.mm !== void 0) {
                let data234 = data233.mm;
                if (typeof data234 == "number" && isFinite(data234)) {
                  if (data234 > 10 || isNaN(data234)) {
                    const err626 = { instancePath: instancePath + "/arc/tolerance/mm", schemaPath: "#/properties/arc/properties/tolerance/properties/mm/maximum", keyword: "maximum", params: { comparison: "<=", limit: 10 }, message: "must be <= 10" };
                    if (vErrors === null) {
                      vErrors = [err626];
                    } else {
                      vErrors.push(err626);
                    }
                    errors++;
                  }
                  if (data234 < 0 || isNaN(data234)) {
                    const err627 = { instancePath: instancePath + "/arc/tolerance/mm", schemaPath: "#/properties/arc/properties/tolerance/properties/mm/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err627];
                    } else {
                      vErrors.push(err627);
                    }
                    errors++;
                  }
                } else {
                  const err628 = { instancePath: instancePath + "/arc/tolerance/mm", schemaPath: "#/properties/arc/properties/tolerance/properties/mm/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                  if (vErrors === null) {
                    vErrors = [err628];
                  } else {
                    vErrors.push(err628);
                  }
                  errors++;
                }
              }
              if (data233.inch !== void 0) {
                let data235 = data233.inch;
                if (typeof data235 == "number" && isFinite(data235)) {
                  if (data235 > 1 || isNaN(data235)) {
                    const err629 = { instancePath: instancePath + "/arc/tolerance/inch", schemaPath: "#/properties/arc/properties/tolerance/properties/inch/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1 }, message: "must be <= 1" };
                    if (vErrors === null) {
                      vErrors = [err629];
                    } else {
                      vErrors.push(err629);
                    }
                    errors++;
                  }
                  if (data235 < 0 || isNaN(data235)) {
                    const err630 = { instancePath: instancePath + "/arc/tolerance/inch", schemaPath: "#/properties/arc/properties/tolerance/properties/inch/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err630];
                    } else {
                      vErrors.push(err630);
                    }
                    errors++;
                  }
                } else {
                  const err631 = { instancePath: instancePath + "/arc/tolerance/inch", schemaPath: "#/properties/arc/properties/tolerance/properties/inch/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                  if (vErrors === null) {
                    vErrors = [err631];
                  } else {
                    vErrors.push(err631);
                  }
                  errors++;
                }
              }
              if (data233.relative !== void 0) {
                let data236 = data233.relative;
                if (typeof data236 == "number" && isFinite(data236)) {
                  if (data236 > 0.01 || isNaN(data236)) {
                    const err632 = { instancePath: instancePath + "/arc/tolerance/relative", schemaPath: "#/properties/arc/properties/tolerance/properties/relative/maximum", keyword: "maximum", params: { comparison: "<=", limit: 0.01 }, message: "must be <= 0.01" };
                    if (vErrors === null) {
                      vErrors = [err632];
                    } else {
                      vErrors.push(err632);
                    }
                    errors++;
                  }
                  if (data236 < 0 || isNaN(data236)) {
                    const err633 = { instancePath: instancePath + "/arc/tolerance/relative", schemaPath: "#/properties/arc/properties/tolerance/properties/relative/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err633];
                    } else {
                      vErrors.push(err633);
                    }
                    errors++;
                  }
                } else {
                  const err634 = { instancePath: instancePath + "/arc/tolerance/relative", schemaPath: "#/properties/arc/properties/tolerance/properties/relative/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                  if (vErrors === null) {
                    vErrors = [err634];
                  } else {
                    vErrors.push(err634);
                  }
                  errors++;
                }
              }
            } else {
              const err635 = { instancePath: instancePath + "/arc/tolerance", schemaPath: "#/properties/arc/properties/tolerance/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err635];
              } else {
                vErrors.push(err635);
              }
              errors++;
            }
          }
          if (data215["chord-tolerance"] !== void 0) {
            let data237 = data215["chord-tolerance"];
            const _errs715 = errors;
            let valid182 = false;
            const _errs716 = errors;
            if (typeof data237 == "number" && isFinite(data237)) {
              if (data237 > 1e6 || isNaN(data237)) {
                const err636 = { instancePath: instancePath + "/arc/chord-tolerance", schemaPath: "#/$defs/length/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                if (vErrors === null) {
                  vErrors = [err636];
                } else {
                  vErrors.push(err636);
                }
                errors++;
              }
              if (data237 < -1e6 || isNaN(data237)) {
                const err637 = { instancePath: instancePath + "/arc/chord-tolerance", schemaPath: "#/$defs/length/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: -1e6 }, message: "must be >= -1000000" };
                if (vErrors === null) {
                  vErrors = [err637];
                } else {
                  vErrors.push(err637);
                }
                errors++;
              }
            } else {
              const err638 = { instancePath: instancePath + "/arc/chord-tolerance", schemaPath: "#/$defs/length/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
              if (vErrors === null) {
                vErrors = [err638];
              } else {
                vErrors.push(err638);
              }
              errors++;
            }
            var _valid25 = _errs716 === errors;
            valid182 = valid182 || _valid25;
            const _errs718 = errors;
            if (typeof data237 === "string") {
              if (!pattern26.test(data237)) {
                const err639 = { instancePath: instancePath + "/arc/chord-tolerance", schemaPath: "#/$defs/length/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }, message: 'must match pattern "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$"' };
                if (vErrors === null) {
                  vErrors = [err639];
                } else {
                  vErrors.push(err639);
                }
                errors++;
              }
            } else {
              const err640 = { instancePath: instancePath + "/arc/chord-tolerance", schemaPath: "#/$defs/length/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err640];
              } else {
                vErrors.push(err640);
              }
              errors++;
            }
            var _valid25 = _errs718 === errors;
            valid182 = valid182 || _valid25;
            if (!valid182) {
              const err641 = { instancePath: instancePath + "/arc/chord-tolerance", schemaPath: "#/$defs/length/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err641];
              } else {
                vErrors.push(err641);
              }
              errors++;
            } else {
              errors = _errs715;
              if (vErrors !== null) {
                if (_errs715) {
                  vErrors.length = _errs715;
                } else {
                  vErrors = null;
                }
              }
            }
          }
        } else {
          const err642 = { instancePath: instancePath + "/arc", schemaPath: "#/properties/arc/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err642];
          } else {
            vErrors.push(err642);
          }
          errors++;
        }
      }
      if (data.path !== void 0) {
        let data238 = data.path;
        if (data238 && typeof data238 == "object" && !Array.isArray(data238)) {
          for (const key32 in data238) {
            if (!(key32 === "exact" || key32 === "stop" || key32 === "blend" || key32 === "tolerance-word" || key32 === "look-ahead")) {
              const err643 = { instancePath: instancePath + "/path", schemaPath: "#/properties/path/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key32 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err643];
              } else {
                vErrors.push(err643);
              }
              errors++;
            }
          }
          if (data238.exact !== void 0) {
            let data239 = data238.exact;
            if (typeof data239 === "string") {
              if (!pattern27.test(data239)) {
                const err644 = { instancePath: instancePath + "/path/exact", schemaPath: "#/$defs/codeWithWordOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$"' };
                if (vErrors === null) {
                  vErrors = [err644];
                } else {
                  vErrors.push(err644);
                }
                errors++;
              }
            } else {
              const err645 = { instancePath: instancePath + "/path/exact", schemaPath: "#/$defs/codeWithWordOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err645];
              } else {
                vErrors.push(err645);
              }
              errors++;
            }
          }
          if (data238.stop !== void 0) {
            let data240 = data238.stop;
            if (typeof data240 === "string") {
              if (!pattern27.test(data240)) {
                const err646 = { instancePath: instancePath + "/path/stop", schemaPath: "#/$defs/codeWithWordOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$"' };
                if (vErrors === null) {
                  vErrors = [err646];
                } else {
                  vErrors.push(err646);
                }
                errors++;
              }
            } else {
              const err647 = { instancePath: instancePath + "/path/stop", schemaPath: "#/$defs/codeWithWordOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err647];
              } else {
                vErrors.push(err647);
              }
              errors++;
            }
          }
          if (data238.blend !== void 0) {
            let data241 = data238.blend;
            if (typeof data241 === "string") {
              if (!pattern27.test(data241)) {
                const err648 = { instancePath: instancePath + "/path/blend", schemaPath: "#/$defs/codeWithWordOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$"' };
                if (vErrors === null) {
                  vErrors = [err648];
                } else {
                  vErrors.push(err648);
                }
                errors++;
              }
            } else {
              const err649 = { instancePath: instancePath + "/path/blend", schemaPath: "#/$defs/codeWithWordOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err649];
              } else {
                vErrors.push(err649);
              }
              errors++;
            }
          }
          if (data238["tolerance-word"] !== void 0) {
            let data242 = data238["tolerance-word"];
            if (typeof data242 === "string") {
              if (!pattern23.test(data242)) {
                const err650 = { instancePath: instancePath + "/path/tolerance-word", schemaPath: "#/$defs/letterOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[A-Z])$" }, message: 'must match pattern "^(none|[A-Z])$"' };
                if (vErrors === null) {
                  vErrors = [err650];
                } else {
                  vErrors.push(err650);
                }
                errors++;
              }
            } else {
              const err651 = { instancePath: instancePath + "/path/tolerance-word", schemaPath: "#/$defs/letterOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err651];
              } else {
                vErrors.push(err651);
              }
              errors++;
            }
          }
          if (data238["look-ahead"] !== void 0) {
            let data243 = data238["look-ahead"];
            const _errs736 = errors;
            let valid188 = false;
            const _errs737 = errors;
            if (typeof data243 !== "string") {
              const err652 = { instancePath: instancePath + "/path/look-ahead", schemaPath: "#/properties/path/properties/look-ahead/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err652];
              } else {
                vErrors.push(err652);
              }
              errors++;
            }
            if ("none" !== data243) {
              const err653 = { instancePath: instancePath + "/path/look-ahead", schemaPath: "#/properties/path/properties/look-ahead/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
              if (vErrors === null) {
                vErrors = [err653];
              } else {
                vErrors.push(err653);
              }
              errors++;
            }
            var _valid26 = _errs737 === errors;
            valid188 = valid188 || _valid26;
            const _errs739 = errors;
            if (data243 && typeof data243 == "object" && !Array.isArray(data243)) {
              for (const key33 in data243) {
                if (!(key33 === "on" || key33 === "off")) {
                  const err654 = { instancePath: instancePath + "/path/look-ahead", schemaPath: "#/properties/path/properties/look-ahead/anyOf/1/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key33 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err654];
                  } else {
                    vErrors.push(err654);
                  }
                  errors++;
                }
              }
              if (data243.on !== void 0) {
                let data244 = data243.on;
                if (typeof data244 === "string") {
                  if (!pattern27.test(data244)) {
                    const err655 = { instancePath: instancePath + "/path/look-ahead/on", schemaPath: "#/$defs/codeWithWordOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$"' };
                    if (vErrors === null) {
                      vErrors = [err655];
                    } else {
                      vErrors.push(err655);
                    }
                    errors++;
                  }
                } else {
                  const err656 = { instancePath: instancePath + "/path/look-ahead/on", schemaPath: "#/$defs/codeWithWordOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err656];
                  } else {
                    vErrors.push(err656);
                  }
                  errors++;
                }
              }
              if (data243.off !== void 0) {
                let data245 = data243.off;
                if (typeof data245 === "string") {
                  if (!pattern27.test(data245)) {
                    const err657 = { instancePath: instancePath + "/path/look-ahead/off", schemaPath: "#/$defs/codeWithWordOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$"' };
                    if (vErrors === null) {
                      vErrors = [err657];
                    } else {
                      vErrors.push(err657);
                    }
                    errors++;
                  }
                } else {
                  const err658 = { instancePath: instancePath + "/path/look-ahead/off", schemaPath: "#/$defs/codeWithWordOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err658];
                  } else {
                    vErrors.push(err658);
                  }
                  errors++;
                }
              }
            } else {
              const err659 = { instancePath: instancePath + "/path/look-ahead", schemaPath: "#/properties/path/properties/look-ahead/anyOf/1/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err659];
              } else {
                vErrors.push(err659);
              }
              errors++;
            }
            var _valid26 = _errs739 === errors;
            valid188 = valid188 || _valid26;
            if (!valid188) {
              const err660 = { instancePath: instancePath + "/path/look-ahead", schemaPath: "#/properties/path/properties/look-ahead/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err660];
              } else {
                vErrors.push(err660);
              }
              errors++;
            } else {
              errors = _errs736;
              if (vErrors !== null) {
                if (_errs736) {
                  vErrors.length = _errs736;
                } else {
                  vErrors = null;
                }
              }
            }
          }
        } else {
          const err661 = { instancePath: instancePath + "/path", schemaPath: "#/properties/path/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err661];
          } else {
            vErrors.push(err661);
          }
          errors++;
        }
      }
      if (data.feed !== void 0) {
        let data246 = data.feed;
        if (data246 && typeof data246 == "object" && !Array.isArray(data246)) {
          for (const key34 in data246) {
            if (!(key34 === "per-minute" || key34 === "per-revolution" || key34 === "inverse-time" || key34 === "inverse-time-unit")) {
              const err662 = { instancePath: instancePath + "/feed", schemaPath: "#/properties/feed/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key34 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err662];
              } else {
                vErrors.push(err662);
              }
              errors++;
            }
          }
          if (data246["per-minute"] !== void 0) {
            let data247 = data246["per-minute"];
            if (typeof data247 === "string") {
              if (!pattern8.test(data247)) {
                const err663 = { instancePath: instancePath + "/feed/per-minute", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err663];
                } else {
                  vErrors.push(err663);
                }
                errors++;
              }
            } else {
              const err664 = { instancePath: instancePath + "/feed/per-minute", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err664];
              } else {
                vErrors.push(err664);
              }
              errors++;
            }
          }
          if (data246["per-revolution"] !== void 0) {
            let data248 = data246["per-revolution"];
            if (typeof data248 === "string") {
              if (!pattern8.test(data248)) {
                const err665 = { instancePath: instancePath + "/feed/per-revolution", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err665];
                } else {
                  vErrors.push(err665);
                }
                errors++;
              }
            } else {
              const err666 = { instancePath: instancePath + "/feed/per-revolution", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err666];
              } else {
                vErrors.push(err666);
              }
              errors++;
            }
          }
          if (data246["inverse-time"] !== void 0) {
            let data249 = data246["inverse-time"];
            if (typeof data249 === "string") {
              if (!pattern8.test(data249)) {
                const err667 = { instancePath: instancePath + "/feed/inverse-time", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err667];
                } else {
                  vErrors.push(err667);
                }
                errors++;
              }
            } else {
              const err668 = { instancePath: instancePath + "/feed/inverse-time", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err668];
              } else {
                vErrors.push(err668);
              }
              errors++;
            }
          }
          if (data246["inverse-time-unit"] !== void 0) {
            let data250 = data246["inverse-time-unit"];
            if (typeof data250 !== "string") {
              const err669 = { instancePath: instancePath + "/feed/inverse-time-unit", schemaPath: "#/properties/feed/properties/inverse-time-unit/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err669];
              } else {
                vErrors.push(err669);
              }
              errors++;
            }
            if (!(data250 === "per-minute" || data250 === "per-second")) {
              const err670 = { instancePath: instancePath + "/feed/inverse-time-unit", schemaPath: "#/properties/feed/properties/inverse-time-unit/enum", keyword: "enum", params: { allowedValues: schema31.properties.feed.properties["inverse-time-unit"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err670];
              } else {
                vErrors.push(err670);
              }
              errors++;
            }
          }
        } else {
          const err671 = { instancePath: instancePath + "/feed", schemaPath: "#/properties/feed/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err671];
          } else {
            vErrors.push(err671);
          }
          errors++;
        }
      }
      if (data.dwell !== void 0) {
        let data251 = data.dwell;
        if (data251 && typeof data251 == "object" && !Array.isArray(data251)) {
          for (const key35 in data251) {
            if (!(key35 === "code" || key35 === "word" || key35 === "unit" || key35 === "blocks")) {
              const err672 = { instancePath: instancePath + "/dwell", schemaPath: "#/properties/dwell/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key35 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err672];
              } else {
                vErrors.push(err672);
              }
              errors++;
            }
          }
          if (data251.code !== void 0) {
            let data252 = data251.code;
            if (typeof data252 === "string") {
              if (!pattern8.test(data252)) {
                const err673 = { instancePath: instancePath + "/dwell/code", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err673];
                } else {
                  vErrors.push(err673);
                }
                errors++;
              }
            } else {
              const err674 = { instancePath: instancePath + "/dwell/code", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err674];
              } else {
                vErrors.push(err674);
              }
              errors++;
            }
          }
          if (data251.word !== void 0) {
            let data253 = data251.word;
            if (typeof data253 === "string") {
              if (!pattern7.test(data253)) {
                const err675 = { instancePath: instancePath + "/dwell/word", schemaPath: "#/$defs/letter/pattern", keyword: "pattern", params: { pattern: "^[A-Z]$" }, message: 'must match pattern "^[A-Z]$"' };
                if (vErrors === null) {
                  vErrors = [err675];
                } else {
                  vErrors.push(err675);
                }
                errors++;
              }
            } else {
              const err676 = { instancePath: instancePath + "/dwell/word", schemaPath: "#/$defs/letter/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err676];
              } else {
                vErrors.push(err676);
              }
              errors++;
            }
          }
          if (data251.unit !== void 0) {
            let data254 = data251.unit;
            if (typeof data254 !== "string") {
              const err677 = { instancePath: instancePath + "/dwell/unit", schemaPath: "#/properties/dwell/properties/unit/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err677];
              } else {
                vErrors.push(err677);
              }
              errors++;
            }
            if (!(data254 === "s" || data254 === "ms" || data254 === "rev")) {
              const err678 = { instancePath: instancePath + "/dwell/unit", schemaPath: "#/properties/dwell/properties/unit/enum", keyword: "enum", params: { allowedValues: schema31.properties.dwell.properties.unit.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err678];
              } else {
                vErrors.push(err678);
              }
              errors++;
            }
          }
          if (data251.blocks !== void 0) {
            let data255 = data251.blocks;
            if (typeof data255 !== "string") {
              const err679 = { instancePath: instancePath + "/dwell/blocks", schemaPath: "#/properties/dwell/properties/blocks/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err679];
              } else {
                vErrors.push(err679);
              }
              errors++;
            }
            if (!(data255 === "apart" || data255 === "with-start")) {
              const err680 = { instancePath: instancePath + "/dwell/blocks", schemaPath: "#/properties/dwell/properties/blocks/enum", keyword: "enum", params: { allowedValues: schema31.properties.dwell.properties.blocks.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err680];
              } else {
                vErrors.push(err680);
              }
              errors++;
            }
          }
        } else {
          const err681 = { instancePath: instancePath + "/dwell", schemaPath: "#/properties/dwell/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err681];
          } else {
            vErrors.push(err681);
          }
          errors++;
        }
      }
      if (data.compensation !== void 0) {
        let data256 = data.compensation;
        const _errs776 = errors;
        let valid199 = false;
        const _errs777 = errors;
        if (typeof data256 !== "string") {
          const err682 = { instancePath: instancePath + "/compensation", schemaPath: "#/properties/compensation/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
          if (vErrors === null) {
            vErrors = [err682];
          } else {
            vErrors.push(err682);
          }
          errors++;
        }
        if ("none" !== data256) {
          const err683 = { instancePath: instancePath + "/compensation", schemaPath: "#/properties/compensation/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
          if (vErrors === null) {
            vErrors = [err683];
          } else {
            vErrors.push(err683);
          }
          errors++;
        }
        var _valid27 = _errs777 === errors;
        valid199 = valid199 || _valid27;
        const _errs779 = errors;
        if (data256 && typeof data256 == "object" && !Array.isArray(data256)) {
          for (const key36 in data256) {
            if (!(key36 === "off" || key36 === "left" || key36 === "right" || key36 === "word" || key36 === "corner-feed")) {
              const err684 = { instancePath: instancePath + "/compensation", schemaPath: "#/properties/compensation/anyOf/1/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key36 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err684];
              } else {
                vErrors.push(err684);
              }
              errors++;
            }
          }
          if (data256.off !== void 0) {
            let data257 = data256.off;
            if (typeof data257 === "string") {
              if (!pattern8.test(data257)) {
                const err685 = { instancePath: instancePath + "/compensation/off", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err685];
                } else {
                  vErrors.push(err685);
                }
                errors++;
              }
            } else {
              const err686 = { instancePath: instancePath + "/compensation/off", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err686];
              } else {
                vErrors.push(err686);
              }
              errors++;
            }
          }
          if (data256.left !== void 0) {
            let data258 = data256.left;
            if (typeof data258 === "string") {
              if (!pattern8.test(data258)) {
                const err687 = { instancePath: instancePath + "/compensation/left", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err687];
                } else {
                  vErrors.push(err687);
                }
                errors++;
              }
            } else {
              const err688 = { instancePath: instancePath + "/compensation/left", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err688];
              } else {
                vErrors.push(err688);
              }
              errors++;
            }
          }
          if (data256.right !== void 0) {
            let data259 = data256.right;
            if (typeof data259 === "string") {
              if (!pattern8.test(data259)) {
                const err689 = { instancePath: instancePath + "/compensation/right", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err689];
                } else {
                  vErrors.push(err689);
                }
                errors++;
              }
            } else {
              const err690 = { instancePath: instancePath + "/compensation/right", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err690];
              } else {
                vErrors.push(err690);
              }
              errors++;
            }
          }
          if (data256.word !== void 0) {
            let data260 = data256.word;
            if (typeof data260 === "string") {
              if (!pattern23.test(data260)) {
                const err691 = { instancePath: instancePath + "/compensation/word", schemaPath: "#/$defs/letterOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[A-Z])$" }, message: 'must match pattern "^(none|[A-Z])$"' };
                if (vErrors === null) {
                  vErrors = [err691];
                } else {
                  vErrors.push(err691);
                }
                errors++;
              }
            } else {
              const err692 = { instancePath: instancePath + "/compensation/word", schemaPath: "#/$defs/letterOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err692];
              } else {
                vErrors.push(err692);
              }
              errors++;
            }
          }
          if (data256["corner-feed"] !== void 0) {
            let data261 = data256["corner-feed"];
            const _errs795 = errors;
            let valid205 = false;
            const _errs796 = errors;
            if (typeof data261 !== "string") {
              const err693 = { instancePath: instancePath + "/compensation/corner-feed", schemaPath: "#/properties/compensation/anyOf/1/properties/corner-feed/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err693];
              } else {
                vErrors.push(err693);
              }
              errors++;
            }
            if ("none" !== data261) {
              const err694 = { instancePath: instancePath + "/compensation/corner-feed", schemaPath: "#/properties/compensation/anyOf/1/properties/corner-feed/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
              if (vErrors === null) {
                vErrors = [err694];
              } else {
                vErrors.push(err694);
              }
              errors++;
            }
            var _valid28 = _errs796 === errors;
            valid205 = valid205 || _valid28;
            const _errs798 = errors;
            if (data261 && typeof data261 == "object" && !Array.isArray(data261)) {
              for (const key37 in data261) {
                if (!(key37 === "on" || key37 === "off")) {
                  const err695 = { instancePath: instancePath + "/compensation/corner-feed", schemaPath: "#/properties/compensation/anyOf/1/properties/corner-feed/anyOf/1/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key37 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err695];
                  } else {
                    vErrors.push(err695);
                  }
                  errors++;
                }
              }
              if (data261.on !== void 0) {
                let data262 = data261.on;
                if (typeof data262 === "string") {
                  if (!pattern27.test(data262)) {
                    const err696 = { instancePath: instancePath + "/compensation/corner-feed/on", schemaPath: "#/$defs/codeWithWordOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$"' };
                    if (vErrors === null) {
                      vErrors = [err696];
                    } else {
                      vErrors.push(err696);
                    }
                    errors++;
                  }
                } else {
                  const err697 = { instancePath: instancePath + "/compensation/corner-feed/on", schemaPath: "#/$defs/codeWithWordOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err697];
                  } else {
                    vErrors.push(err697);
                  }
                  errors++;
                }
              }
              if (data261.off !== void 0) {
                let data263 = data261.off;
                if (typeof data263 === "string") {
                  if (!pattern27.test(data263)) {
                    const err698 = { instancePath: instancePath + "/compensation/corner-feed/off", schemaPath: "#/$defs/codeWithWordOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$"' };
                    if (vErrors === null) {
                      vErrors = [err698];
                    } else {
                      vErrors.push(err698);
                    }
                    errors++;
                  }
                } else {
                  const err699 = { instancePath: instancePath + "/compensation/corner-feed/off", schemaPath: "#/$defs/codeWithWordOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err699];
                  } else {
                    vErrors.push(err699);
                  }
                  errors++;
                }
              }
            } else {
              const err700 = { instancePath: instancePath + "/compensation/corner-feed", schemaPath: "#/properties/compensation/anyOf/1/properties/corner-feed/anyOf/1/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err700];
              } else {
                vErrors.push(err700);
              }
              errors++;
            }
            var _valid28 = _errs798 === errors;
            valid205 = valid205 || _valid28;
            if (!valid205) {
              const err701 = { instancePath: instancePath + "/compensation/corner-feed", schemaPath: "#/properties/compensation/anyOf/1/properties/corner-feed/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err701];
              } else {
                vErrors.push(err701);
              }
              errors++;
            } else {
              errors = _errs795;
              if (vErrors !== null) {
                if (_errs795) {
                  vErrors.length = _errs795;
                } else {
                  vErrors = null;
                }
              }
            }
          }
        } else {
          const err702 = { instancePath: instancePath + "/compensation", schemaPath: "#/properties/compensation/anyOf/1/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err702];
          } else {
            vErrors.push(err702);
          }
          errors++;
        }
        var _valid27 = _errs779 === errors;
        valid199 = valid199 || _valid27;
        if (!valid199) {
          const err703 = { instancePath: instancePath + "/compensation", schemaPath: "#/properties/compensation/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
          if (vErrors === null) {
            vErrors = [err703];
          } else {
            vErrors.push(err703);
          }
          errors++;
        } else {
          errors = _errs776;
          if (vErrors !== null) {
            if (_errs776) {
              vErrors.length = _errs776;
            } else {
              vErrors = null;
            }
          }
        }
      }
      if (data["length-offset"] !== void 0) {
        let data264 = data["length-offset"];
        const _errs808 = errors;
        let valid209 = false;
        const _errs809 = errors;
        if (typeof data264 !== "string") {
          const err704 = { instancePath: instancePath + "/length-offset", schemaPath: "#/properties/length-offset/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
          if (vErrors === null) {
            vErrors = [err704];
          } else {
            vErrors.push(err704);
          }
          errors++;
        }
        if ("none" !== data264) {
          const err705 = { instancePath: instancePath + "/length-offset", schemaPath: "#/properties/length-offset/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
          if (vErrors === null) {
            vErrors = [err705];
          } else {
            vErrors.push(err705);
          }
          errors++;
        }
        var _valid29 = _errs809 === errors;
        valid209 = valid209 || _valid29;
        const _errs811 = errors;
        if (data264 && typeof data264 == "object" && !Array.isArray(data264)) {
          for (const key38 in data264) {
            if (!(key38 === "on" || key38 === "off" || key38 === "word" || key38 === "number" || key38 === "added")) {
              const err706 = { instancePath: instancePath + "/length-offset", schemaPath: "#/properties/length-offset/anyOf/1/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key38 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err706];
              } else {
                vErrors.push(err706);
              }
              errors++;
            }
          }
          if (data264.on !== void 0) {
            let data265 = data264.on;
            if (typeof data265 === "string") {
              if (!pattern8.test(data265)) {
                const err707 = { instancePath: instancePath + "/length-offset/on", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err707];
                } else {
                  vErrors.push(err707);
                }
                errors++;
              }
            } else {
              const err708 = { instancePath: instancePath + "/length-offset/on", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err708];
              } else {
                vErrors.push(err708);
              }
              errors++;
            }
          }
          if (data264.off !== void 0) {
            let data266 = data264.off;
            if (typeof data266 === "string") {
              if (!pattern45.test(data266)) {
                const err709 = { instancePath: instancePath + "/length-offset/off", schemaPath: "#/properties/length-offset/anyOf/1/properties/off/pattern", keyword: "pattern", params: { pattern: "^(none|[A-Z]0|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[A-Z]0|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err709];
                } else {
                  vErrors.push(err709);
                }
                errors++;
              }
            } else {
              const err710 = { instancePath: instancePath + "/length-offset/off", schemaPath: "#/properties/length-offset/anyOf/1/properties/off/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err710];
              } else {
                vErrors.push(err710);
              }
              errors++;
            }
          }
          if (data264.word !== void 0) {
            let data267 = data264.word;
            if (typeof data267 === "string") {
              if (!pattern7.test(data267)) {
                const err711 = { instancePath: instancePath + "/length-offset/word", schemaPath: "#/$defs/letter/pattern", keyword: "pattern", params: { pattern: "^[A-Z]$" }, message: 'must match pattern "^[A-Z]$"' };
                if (vErrors === null) {
                  vErrors = [err711];
                } else {
                  vErrors.push(err711);
                }
                errors++;
              }
            } else {
              const err712 = { instancePath: instancePath + "/length-offset/word", schemaPath: "#/$defs/letter/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err712];
              } else {
                vErrors.push(err712);
              }
              errors++;
            }
          }
          if (data264.number !== void 0) {
            let data268 = data264.number;
            if (typeof data268 !== "string") {
              const err713 = { instancePath: instancePath + "/length-offset/number", schemaPath: "#/properties/length-offset/anyOf/1/properties/number/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err713];
              } else {
                vErrors.push(err713);
              }
              errors++;
            }
            if (!(data268 === "tool" || data268 === "free")) {
              const err714 = { instancePath: instancePath + "/length-offset/number", schemaPath: "#/properties/length-offset/anyOf/1/properties/number/enum", keyword: "enum", params: { allowedValues: schema31.properties["length-offset"].anyOf[1].properties.number.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err714];
              } else {
                vErrors.push(err714);
              }
              errors++;
            }
          }
          if (data264.added !== void 0) {
            let data269 = data264.added;
            if (!(typeof data269 == "number" && (!(data269 % 1) && !isNaN(data269)) && isFinite(data269))) {
              const err715 = { instancePath: instancePath + "/length-offset/added", schemaPath: "#/properties/length-offset/anyOf/1/properties/added/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
              if (vErrors === null) {
                vErrors = [err715];
              } else {
                vErrors.push(err715);
              }
              errors++;
            }
            if (typeof data269 == "number" && isFinite(data269)) {
              if (data269 > 900 || isNaN(data269)) {
                const err716 = { instancePath: instancePath + "/length-offset/added", schemaPath: "#/properties/length-offset/anyOf/1/properties/added/maximum", keyword: "maximum", params: { comparison: "<=", limit: 900 }, message: "must be <= 900" };
                if (vErrors === null) {
                  vErrors = [err716];
                } else {
                  vErrors.push(err716);
                }
                errors++;
              }
              if (data269 < 0 || isNaN(data269)) {
                const err717 = { instancePath: instancePath + "/length-offset/added", schemaPath: "#/properties/length-offset/anyOf/1/properties/added/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                if (vErrors === null) {
                  vErrors = [err717];
                } else {
                  vErrors.push(err717);
                }
                errors++;
              }
            }
          }
        } else {
          const err718 = { instancePath: instancePath + "/length-offset", schemaPath: "#/properties/length-offset/anyOf/1/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err718];
          } else {
            vErrors.push(err718);
          }
          errors++;
        }
        var _valid29 = _errs811 === errors;
        valid209 = valid209 || _valid29;
        if (!valid209) {
          const err719 = { instancePath: instancePath + "/length-offset", schemaPath: "#/properties/length-offset/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
          if (vErrors === null) {
            vErrors = [err719];
          } else {
            vErrors.push(err719);
          }
          errors++;
        } else {
          errors = _errs808;
          if (vErrors !== null) {
            if (_errs808) {
              vErrors.length = _errs808;
            } else {
              vErrors = null;
            }
          }
        }
      }
      if (data["work-offset"] !== void 0) {
        let data270 = data["work-offset"];
        const _errs827 = errors;
        let valid213 = false;
        const _errs828 = errors;
        if (typeof data270 !== "string") {
          const err720 = { instancePath: instancePath + "/work-offset", schemaPath: "#/properties/work-offset/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
          if (vErrors === null) {
            vErrors = [err720];
          } else {
            vErrors.push(err720);
          }
          errors++;
        }
        if ("none" !== data270) {
          const err721 = { instancePath: instancePath + "/work-offset", schemaPath: "#/properties/work-offset/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
          if (vErrors === null) {
            vErrors = [err721];
          } else {
            vErrors.push(err721);
          }
          errors++;
        }
        var _valid30 = _errs828 === errors;
        valid213 = valid213 || _valid30;
        const _errs830 = errors;
        if (Array.isArray(data270)) {
          if (data270.length > 9) {
            const err722 = { instancePath: instancePath + "/work-offset", schemaPath: "#/properties/work-offset/anyOf/1/maxItems", keyword: "maxItems", params: { limit: 9 }, message: "must NOT have more than 9 items" };
            if (vErrors === null) {
              vErrors = [err722];
            } else {
              vErrors.push(err722);
            }
            errors++;
          }
          if (data270.length < 1) {
            const err723 = { instancePath: instancePath + "/work-offset", schemaPath: "#/properties/work-offset/anyOf/1/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items" };
            if (vErrors === null) {
              vErrors = [err723];
            } else {
              vErrors.push(err723);
            }
            errors++;
          }
          const len7 = data270.length;
          for (let i10 = 0; i10 < len7; i10++) {
            let data271 = data270[i10];
            if (typeof data271 === "string") {
              if (!pattern27.test(data271)) {
                const err724 = { instancePath: instancePath + "/work-offset/" + i10, schemaPath: "#/$defs/codeWithWordOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$"' };
                if (vErrors === null) {
                  vErrors = [err724];
                } else {
                  vErrors.push(err724);
                }
                errors++;
              }
            } else {
              const err725 = { instancePath: instancePath + "/work-offset/" + i10, schemaPath: "#/$defs/codeWithWordOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err725];
              } else {
                vErrors.push(err725);
              }
              errors++;
            }
          }
        } else {
          const err726 = { instancePath: instancePath + "/work-offset", schemaPath: "#/properties/work-offset/anyOf/1/type", keyword: "type", params: { type: "array" }, message: "must be array" };
          if (vErrors === null) {
            vErrors = [err726];
          } else {
            vErrors.push(err726);
          }
          errors++;
        }
        var _valid30 = _errs830 === errors;
        valid213 = valid213 || _valid30;
        if (!valid213) {
          const err727 = { instancePath: instancePath + "/work-offset", schemaPath: "#/properties/work-offset/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
          if (vErrors === null) {
            vErrors = [err727];
          } else {
            vErrors.push(err727);
          }
          errors++;
        } else {
          errors = _errs827;
          if (vErrors !== null) {
            if (_errs827) {
              vErrors.length = _errs827;
            } else {
              vErrors = null;
            }
          }
        }
      }
      if (data["machine-move"] !== void 0) {
        let data272 = data["machine-move"];
        if (typeof data272 === "string") {
          if (!pattern27.test(data272)) {
            const err728 = { instancePath: instancePath + "/machine-move", schemaPath: "#/$defs/codeWithWordOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$"' };
            if (vErrors === null) {
              vErrors = [err728];
            } else {
              vErrors.push(err728);
            }
            errors++;
          }
        } else {
          const err729 = { instancePath: instancePath + "/machine-move", schemaPath: "#/$defs/codeWithWordOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
          if (vErrors === null) {
            vErrors = [err729];
          } else {
            vErrors.push(err729);
          }
          errors++;
        }
      }
      if (data["reference-return"] !== void 0) {
        let data273 = data["reference-return"];
        if (typeof data273 === "string") {
          if (!pattern27.test(data273)) {
            const err730 = { instancePath: instancePath + "/reference-return", schemaPath: "#/$defs/codeWithWordOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$"' };
            if (vErrors === null) {
              vErrors = [err730];
            } else {
              vErrors.push(err730);
            }
            errors++;
          }
        } else {
          const err731 = { instancePath: instancePath + "/reference-return", schemaPath: "#/$defs/codeWithWordOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
          if (vErrors === null) {
            vErrors = [err731];
          } else {
            vErrors.push(err731);
          }
          errors++;
        }
      }
      if (data.cancel !== void 0) {
        let data274 = data.cancel;
        if (data274 && typeof data274 == "object" && !Array.isArray(data274)) {
          for (const key39 in data274) {
            if (!(key39 === "cycles" || key39 === "local-shift" || key39 === "rotation" || key39 === "scale" || key39 === "overrides" || key39 === "before-change")) {
              const err732 = { instancePath: instancePath + "/cancel", schemaPath: "#/properties/cancel/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key39 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err732];
              } else {
                vErrors.push(err732);
              }
              errors++;
            }
          }
          if (data274.cycles !== void 0) {
            let data275 = data274.cycles;
            if (typeof data275 === "string") {
              if (!pattern8.test(data275)) {
                const err733 = { instancePath: instancePath + "/cancel/cycles", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err733];
                } else {
                  vErrors.push(err733);
                }
                errors++;
              }
            } else {
              const err734 = { instancePath: instancePath + "/cancel/cycles", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err734];
              } else {
                vErrors.push(err734);
              }
              errors++;
            }
          }
          if (data274["local-shift"] !== void 0) {
            let data276 = data274["local-shift"];
            if (typeof data276 === "string") {
              if (!pattern8.test(data276)) {
                const err735 = { instancePath: instancePath + "/cancel/local-shift", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err735];
                } else {
                  vErrors.push(err735);
                }
                errors++;
              }
            } else {
              const err736 = { instancePath: instancePath + "/cancel/local-shift", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err736];
              } else {
                vErrors.push(err736);
              }
              errors++;
            }
          }
          if (data274.rotation !== void 0) {
            let data277 = data274.rotation;
            if (typeof data277 === "string") {
              if (!pattern8.test(data277)) {
                const err737 = { instancePath: instancePath + "/cancel/rotation", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err737];
                } else {
                  vErrors.push(err737);
                }
                errors++;
              }
            } else {
              const err738 = { instancePath: instancePath + "/cancel/rotation", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err738];
              } else {
                vErrors.push(err738);
              }
              errors++;
            }
          }
          if (data274.scale !== void 0) {
            let data278 = data274.scale;
            if (typeof data278 === "string") {
              if (!pattern8.test(data278)) {
                const err739 = { instancePath: instancePath + "/cancel/scale", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err739];
                } else {
                  vErrors.push(err739);
                }
                errors++;
              }
            } else {
              const err740 = { instancePath: instancePath + "/cancel/scale", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err740];
              } else {
                vErrors.push(err740);
              }
              errors++;
            }
          }
          if (data274.overrides !== void 0) {
            let data279 = data274.overrides;
            if (typeof data279 === "string") {
              if (!pattern8.test(data279)) {
                const err741 = { instancePath: instancePath + "/cancel/overrides", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err741];
                } else {
                  vErrors.push(err741);
                }
                errors++;
              }
            } else {
              const err742 = { instancePath: instancePath + "/cancel/overrides", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err742];
              } else {
                vErrors.push(err742);
              }
              errors++;
            }
          }
          if (data274["before-change"] !== void 0) {
            let data280 = data274["before-change"];
            if (typeof data280 !== "string") {
              const err743 = { instancePath: instancePath + "/cancel/before-change", schemaPath: "#/$defs/yesNo/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err743];
              } else {
                vErrors.push(err743);
              }
              errors++;
            }
            if (!(data280 === "yes" || data280 === "no")) {
              const err744 = { instancePath: instancePath + "/cancel/before-change", schemaPath: "#/$defs/yesNo/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err744];
              } else {
                vErrors.push(err744);
              }
              errors++;
            }
          }
        } else {
          const err745 = { instancePath: instancePath + "/cancel", schemaPath: "#/properties/cancel/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err745];
          } else {
            vErrors.push(err745);
          }
          errors++;
        }
      }
      if (data.cycles !== void 0) {
        let data281 = data.cycles;
        const _errs863 = errors;
        let valid226 = false;
        const _errs864 = errors;
        if (typeof data281 !== "string") {
          const err746 = { instancePath: instancePath + "/cycles", schemaPath: "#/properties/cycles/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
          if (vErrors === null) {
            vErrors = [err746];
          } else {
            vErrors.push(err746);
          }
          errors++;
        }
        if ("none" !== data281) {
          const err747 = { instancePath: instancePath + "/cycles", schemaPath: "#/properties/cycles/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
          if (vErrors === null) {
            vErrors = [err747];
          } else {
            vErrors.push(err747);
          }
          errors++;
        }
        var _valid31 = _errs864 === errors;
        valid226 = valid226 || _valid31;
        const _errs866 = errors;
        if (data281 && typeof data281 == "object" && !Array.isArray(data281)) {
          for (const key40 in data281) {
            if (!func1.call(schema31.properties.cycles.anyOf[1].properties, key40)) {
              const err748 = { instancePath: instancePath + "/cycles", schemaPath: "#/properties/cycles/anyOf/1/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key40 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err748];
              } else {
                vErrors.push(err748);
              }
              errors++;
            }
          }
          if (data281.drill !== void 0) {
            let data282 = data281.drill;
            if (typeof data282 === "string") {
              if (!pattern8.test(data282)) {
                const err749 = { instancePath: instancePath + "/cycles/drill", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err749];
                } else {
                  vErrors.push(err749);
                }
                errors++;
              }
            } else {
              const err750 = { instancePath: instancePath + "/cycles/drill", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err750];
              } else {
                vErrors.push(err750);
              }
              errors++;
            }
          }
          if (data281.dwell !== void 0) {
            let data283 = data281.dwell;
            if (typeof data283 === "string") {
              if (!pattern8.test(data283)) {
                const err751 = { instancePath: instancePath + "/cycles/dwell", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err751];
                } else {
                  vErrors.push(err751);
                }
                errors++;
              }
            } else {
              const err752 = { instancePath: instancePath + "/cycles/dwell", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err752];
              } else {
                vErrors.push(err752);
              }
              errors++;
            }
          }
          if (data281.peck !== void 0) {
            let data284 = data281.peck;
            if (typeof data284 === "string") {
              if (!pattern8.test(data284)) {
                const err753 = { instancePath: instancePath + "/cycles/peck", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err753];
                } else {
                  vErrors.push(err753);
                }
                errors++;
              }
            } else {
              const err754 = { instancePath: instancePath + "/cycles/peck", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err754];
              } else {
                vErrors.push(err754);
              }
              errors++;
            }
          }
          if (data281["chip-break"] !== void 0) {
            let data285 = data281["chip-break"];
            if (typeof data285 === "string") {
              if (!pattern8.test(data285)) {
                const err755 = { instancePath: instancePath + "/cycles/chip-break", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err755];
                } else {
                  vErrors.push(err755);
                }
                errors++;
              }
            } else {
              const err756 = { instancePath: instancePath + "/cycles/chip-break", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err756];
              } else {
                vErrors.push(err756);
              }
              errors++;
            }
          }
          if (data281.tap !== void 0) {
            let data286 = data281.tap;
            if (typeof data286 === "string") {
              if (!pattern8.test(data286)) {
                const err757 = { instancePath: instancePath + "/cycles/tap", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err757];
                } else {
                  vErrors.push(err757);
                }
                errors++;
              }
            } else {
              const err758 = { instancePath: instancePath + "/cycles/tap", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err758];
              } else {
                vErrors.push(err758);
              }
              errors++;
            }
          }
          if (data281["tap-left"] !== void 0) {
            let data287 = data281["tap-left"];
            if (typeof data287 === "string") {
              if (!pattern8.test(data287)) {
                const err759 = { instancePath: instancePath + "/cycles/tap-left", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err759];
                } else {
                  vErrors.push(err759);
                }
                errors++;
              }
            } else {
              const err760 = { instancePath: instancePath + "/cycles/tap-left", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err760];
              } else {
                vErrors.push(err760);
              }
              errors++;
            }
          }
          if (data281.ream !== void 0) {
            let data288 = data281.ream;
            if (typeof data288 === "string") {
              if (!pattern8.test(data288)) {
                const err761 = { instancePath: instancePath + "/cycles/ream", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err761];
                } else {
                  vErrors.push(err761);
                }
                errors++;
              }
            } else {
              const err762 = { instancePath: instancePath + "/cycles/ream", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err762];
              } else {
                vErrors.push(err762);
              }
              errors++;
            }
          }
          if (data281["bore-dwell"] !== void 0) {
            let data289 = data281["bore-dwell"];
            if (typeof data289 === "string") {
              if (!pattern8.test(data289)) {
                const err763 = { instancePath: instancePath + "/cycles/bore-dwell", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err763];
                } else {
                  vErrors.push(err763);
                }
                errors++;
              }
            } else {
              const err764 = { instancePath: instancePath + "/cycles/bore-dwell", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err764];
              } else {
                vErrors.push(err764);
              }
              errors++;
            }
          }
          if (data281["bore-stop"] !== void 0) {
            let data290 = data281["bore-stop"];
            if (typeof data290 === "string") {
              if (!pattern8.test(data290)) {
                const err765 = { instancePath: instancePath + "/cycles/bore-stop", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err765];
                } else {
                  vErrors.push(err765);
                }
                errors++;
              }
            } else {
              const err766 = { instancePath: instancePath + "/cycles/bore-stop", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err766];
              } else {
                vErrors.push(err766);
              }
              errors++;
            }
          }
          if (data281["bore-manual"] !== void 0) {
            let data291 = data281["bore-manual"];
            if (typeof data291 === "string") {
              if (!pattern8.test(data291)) {
                const err767 = { instancePath: instancePath + "/cycles/bore-manual", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err767];
                } else {
                  vErrors.push(err767);
                }
                errors++;
              }
            } else {
              const err768 = { instancePath: instancePath + "/cycles/bore-manual", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err768];
              } else {
                vErrors.push(err768);
              }
              errors++;
            }
          }
          if (data281.return !== void 0) {
            let data292 = data281.return;
            if (data292 && typeof data292 == "object" && !Array.isArray(data292)) {
              for (const key41 in data292) {
                if (!(key41 === "initial" || key41 === "retract" || key41 === "without")) {
                  const err769 = { instancePath: instancePath + "/cycles/return", schemaPath: "#/properties/cycles/anyOf/1/properties/return/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key41 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err769];
                  } else {
                    vErrors.push(err769);
                  }
                  errors++;
                }
              }
              if (data292.initial !== void 0) {
                let data293 = data292.initial;
                if (typeof data293 === "string") {
                  if (!pattern8.test(data293)) {
                    const err770 = { instancePath: instancePath + "/cycles/return/initial", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                    if (vErrors === null) {
                      vErrors = [err770];
                    } else {
                      vErrors.push(err770);
                    }
                    errors++;
                  }
                } else {
                  const err771 = { instancePath: instancePath + "/cycles/return/initial", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err771];
                  } else {
                    vErrors.push(err771);
                  }
                  errors++;
                }
              }
              if (data292.retract !== void 0) {
                let data294 = data292.retract;
                if (typeof data294 === "string") {
                  if (!pattern8.test(data294)) {
                    const err772 = { instancePath: instancePath + "/cycles/return/retract", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                    if (vErrors === null) {
                      vErrors = [err772];
                    } else {
                      vErrors.push(err772);
                    }
                    errors++;
                  }
                } else {
                  const err773 = { instancePath: instancePath + "/cycles/return/retract", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err773];
                  } else {
                    vErrors.push(err773);
                  }
                  errors++;
                }
              }
              if (data292.without !== void 0) {
                let data295 = data292.without;
                if (typeof data295 !== "string") {
                  const err774 = { instancePath: instancePath + "/cycles/return/without", schemaPath: "#/properties/cycles/anyOf/1/properties/return/properties/without/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err774];
                  } else {
                    vErrors.push(err774);
                  }
                  errors++;
                }
                if (!(data295 === "retract" || data295 === "initial" || data295 === "none")) {
                  const err775 = { instancePath: instancePath + "/cycles/return/without", schemaPath: "#/properties/cycles/anyOf/1/properties/return/properties/without/enum", keyword: "enum", params: { allowedValues: schema31.properties.cycles.anyOf[1].properties.return.properties.without.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err775];
                  } else {
                    vErrors.push(err775);
                  }
                  errors++;
                }
              }
            } else {
              const err776 = { instancePath: instancePath + "/cycles/return", schemaPath: "#/properties/cycles/anyOf/1/properties/return/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err776];
              } else {
                vErrors.push(err776);
              }
              errors++;
            }
          }
          if (data281["back-off"] !== void 0) {
            let data296 = data281["back-off"];
            if (data296 && typeof data296 == "object" && !Array.isArray(data296)) {
              for (const key42 in data296) {
                if (!(key42 === "peck" || key42 === "chip-break")) {
                  const err777 = { instancePath: instancePath + "/cycles/back-off", schemaPath: "#/properties/cycles/anyOf/1/properties/back-off/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key42 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err777];
                  } else {
                    vErrors.push(err777);
                  }
                  errors++;
                }
              }
              if (data296.peck !== void 0) {
                let data297 = data296.peck;
                const _errs915 = errors;
                let valid243 = false;
                const _errs916 = errors;
                if (typeof data297 == "number" && isFinite(data297)) {
                  if (data297 > 1e6 || isNaN(data297)) {
                    const err778 = { instancePath: instancePath + "/cycles/back-off/peck", schemaPath: "#/$defs/length/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                    if (vErrors === null) {
                      vErrors = [err778];
                    } else {
                      vErrors.push(err778);
                    }
                    errors++;
                  }
                  if (data297 < -1e6 || isNaN(data297)) {
                    const err779 = { instancePath: instancePath + "/cycles/back-off/peck", schemaPath: "#/$defs/length/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: -1e6 }, message: "must be >= -1000000" };
                    if (vErrors === null) {
                      vErrors = [err779];
                    } else {
                      vErrors.push(err779);
                    }
                    errors++;
                  }
                } else {
                  const err780 = { instancePath: instancePath + "/cycles/back-off/peck", schemaPath: "#/$defs/length/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                  if (vErrors === null) {
                    vErrors = [err780];
                  } else {
                    vErrors.push(err780);
                  }
                  errors++;
                }
                var _valid32 = _errs916 === errors;
                valid243 = valid243 || _valid32;
                const _errs918 = errors;
                if (typeof data297 === "string") {
                  if (!pattern26.test(data297)) {
                    const err781 = { instancePath: instancePath + "/cycles/back-off/peck", schemaPath: "#/$defs/length/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }, message: 'must match pattern "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$"' };
                    if (vErrors === null) {
                      vErrors = [err781];
                    } else {
                      vErrors.push(err781);
                    }
                    errors++;
                  }
                } else {
                  const err782 = { instancePath: instancePath + "/cycles/back-off/peck", schemaPath: "#/$defs/length/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err782];
                  } else {
                    vErrors.push(err782);
                  }
                  errors++;
                }
                var _valid32 = _errs918 === errors;
                valid243 = valid243 || _valid32;
                if (!valid243) {
                  const err783 = { instancePath: instancePath + "/cycles/back-off/peck", schemaPath: "#/$defs/length/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err783];
                  } else {
                    vErrors.push(err783);
                  }
                  errors++;
                } else {
                  errors = _errs915;
                  if (vErrors !== null) {
                    if (_errs915) {
                      vErrors.length = _errs915;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
              if (data296["chip-break"] !== void 0) {
                let data298 = data296["chip-break"];
                const _errs922 = errors;
                let valid245 = false;
                const _errs923 = errors;
                if (typeof data298 == "number" && isFinite(data298)) {
                  if (data298 > 1e6 || isNaN(data298)) {
                    const err784 = { instancePath: instancePath + "/cycles/back-off/chip-break", schemaPath: "#/$defs/length/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                    if (vErrors === null) {
                      vErrors = [err784];
                    } else {
                      vErrors.push(err784);
                    }
                    errors++;
                  }
                  if (data298 < -1e6 || isNaN(data298)) {
                    const err785 = { instancePath: instancePath + "/cycles/back-off/chip-break", schemaPath: "#/$defs/length/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: -1e6 }, message: "must be >= -1000000" };
                    if (vErrors === null) {
                      vErrors = [err785];
                    } else {
                      vErrors.push(err785);
                    }
                    errors++;
                  }
                } else {
                  const err786 = { instancePath: instancePath + "/cycles/back-off/chip-break", schemaPath: "#/$defs/length/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                  if (vErrors === null) {
                    vErrors = [err786];
                  } else {
                    vErrors.push(err786);
                  }
                  errors++;
                }
                var _valid33 = _errs923 === errors;
                valid245 = valid245 || _valid33;
                const _errs925 = errors;
                if (typeof data298 === "string") {
                  if (!pattern26.test(data298)) {
                    const err787 = { instancePath: instancePath + "/cycles/back-off/chip-break", schemaPath: "#/$defs/length/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }, message: 'must match pattern "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$"' };
                    if (vErrors === null) {
                      vErrors = [err787];
                    } else {
                      vErrors.push(err787);
                    }
                    errors++;
                  }
                } else {
                  const err788 = { instancePath: instancePath + "/cycles/back-off/chip-break", schemaPath: "#/$defs/length/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err788];
                  } else {
                    vErrors.push(err788);
                  }
                  errors++;
                }
                var _valid33 = _errs925 === errors;
                valid245 = valid245 || _valid33;
                if (!valid245) {
                  const err789 = { instancePath: instancePath + "/cycles/back-off/chip-break", schemaPath: "#/$defs/length/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err789];
                  } else {
                    vErrors.push(err789);
                  }
                  errors++;
                } else {
                  errors = _errs922;
                  if (vErrors !== null) {
                    if (_errs922) {
                      vErrors.length = _errs922;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
            } else {
              const err790 = { instancePath: instancePath + "/cycles/back-off", schemaPath: "#/properties/cycles/anyOf/1/properties/back-off/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err790];
              } else {
                vErrors.push(err790);
              }
              errors++;
            }
          }
          if (data281.levels !== void 0) {
            let data299 = data281.levels;
            if (typeof data299 !== "string") {
              const err791 = { instancePath: instancePath + "/cycles/levels", schemaPath: "#/properties/cycles/anyOf/1/properties/levels/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err791];
              } else {
                vErrors.push(err791);
              }
              errors++;
            }
            if (!(data299 === "absolute" || data299 === "relative" || data299 === "from-initial")) {
              const err792 = { instancePath: instancePath + "/cycles/levels", schemaPath: "#/properties/cycles/anyOf/1/properties/levels/enum", keyword: "enum", params: { allowedValues: schema31.properties.cycles.anyOf[1].properties.levels.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err792];
              } else {
                vErrors.push(err792);
              }
              errors++;
            }
          }
          if (data281.words !== void 0) {
            let data300 = data281.words;
            if (data300 && typeof data300 == "object" && !Array.isArray(data300)) {
              for (const key43 in data300) {
                if (!(key43 === "retract" || key43 === "peck" || key43 === "back-off" || key43 === "dwell" || key43 === "dwell-unit" || key43 === "repeat")) {
                  const err793 = { instancePath: instancePath + "/cycles/words", schemaPath: "#/properties/cycles/anyOf/1/properties/words/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key43 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err793];
                  } else {
                    vErrors.push(err793);
                  }
                  errors++;
                }
              }
              if (data300.retract !== void 0) {
                let data301 = data300.retract;
                if (typeof data301 === "string") {
                  if (!pattern7.test(data301)) {
                    const err794 = { instancePath: instancePath + "/cycles/words/retract", schemaPath: "#/$defs/letter/pattern", keyword: "pattern", params: { pattern: "^[A-Z]$" }, message: 'must match pattern "^[A-Z]$"' };
                    if (vErrors === null) {
                      vErrors = [err794];
                    } else {
                      vErrors.push(err794);
                    }
                    errors++;
                  }
                } else {
                  const err795 = { instancePath: instancePath + "/cycles/words/retract", schemaPath: "#/$defs/letter/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err795];
                  } else {
                    vErrors.push(err795);
                  }
                  errors++;
                }
              }
              if (data300.peck !== void 0) {
                let data302 = data300.peck;
                if (typeof data302 === "string") {
                  if (!pattern7.test(data302)) {
                    const err796 = { instancePath: instancePath + "/cycles/words/peck", schemaPath: "#/$defs/letter/pattern", keyword: "pattern", params: { pattern: "^[A-Z]$" }, message: 'must match pattern "^[A-Z]$"' };
                    if (vErrors === null) {
                      vErrors = [err796];
                    } else {
                      vErrors.push(err796);
                    }
                    errors++;
                  }
                } else {
                  const err797 = { instancePath: instancePath + "/cycles/words/peck", schemaPath: "#/$defs/letter/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err797];
                  } else {
                    vErrors.push(err797);
                  }
                  errors++;
                }
              }
              if (data300["back-off"] !== void 0) {
                let data303 = data300["back-off"];
                if (typeof data303 === "string") {
                  if (!pattern23.test(data303)) {
                    const err798 = { instancePath: instancePath + "/cycles/words/back-off", schemaPath: "#/$defs/letterOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[A-Z])$" }, message: 'must match pattern "^(none|[A-Z])$"' };
                    if (vErrors === null) {
                      vErrors = [err798];
                    } else {
                      vErrors.push(err798);
                    }
                    errors++;
                  }
                } else {
                  const err799 = { instancePath: instancePath + "/cycles/words/back-off", schemaPath: "#/$defs/letterOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err799];
                  } else {
                    vErrors.push(err799);
                  }
                  errors++;
                }
              }
              if (data300.dwell !== void 0) {
                let data304 = data300.dwell;
                if (typeof data304 === "string") {
                  if (!pattern7.test(data304)) {
                    const err800 = { instancePath: instancePath + "/cycles/words/dwell", schemaPath: "#/$defs/letter/pattern", keyword: "pattern", params: { pattern: "^[A-Z]$" }, message: 'must match pattern "^[A-Z]$"' };
                    if (vErrors === null) {
                      vErrors = [err800];
                    } else {
                      vErrors.push(err800);
                    }
                    errors++;
                  }
                } else {
                  const err801 = { instancePath: instancePath + "/cycles/words/dwell", schemaPath: "#/$defs/letter/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err801];
                  } else {
                    vErrors.push(err801);
                  }
                  errors++;
                }
              }
              if (data300["dwell-unit"] !== void 0) {
                let data305 = data300["dwell-unit"];
                if (typeof data305 !== "string") {
                  const err802 = { instancePath: instancePath + "/cycles/words/dwell-unit", schemaPath: "#/properties/cycles/anyOf/1/properties/words/properties/dwell-unit/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err802];
                  } else {
                    vErrors.push(err802);
                  }
                  errors++;
                }
                if (!(data305 === "s" || data305 === "ms" || data305 === "rev")) {
                  const err803 = { instancePath: instancePath + "/cycles/words/dwell-unit", schemaPath: "#/properties/cycles/anyOf/1/properties/words/properties/dwell-unit/enum", keyword: "enum", params: { allowedValues: schema31.properties.cycles.anyOf[1].properties.words.properties["dwell-unit"].enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err803];
                  } else {
                    vErrors.push(err803);
                  }
                  errors++;
                }
              }
              if (data300.repeat !== void 0) {
                let data306 = data300.repeat;
                if (typeof data306 === "string") {
                  if (!pattern23.test(data306)) {
                    const err804 = { instancePath: instancePath + "/cycles/words/repeat", schemaPath: "#/$defs/letterOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[A-Z])$" }, message: 'must match pattern "^(none|[A-Z])$"' };
                    if (vErrors === null) {
                      vErrors = [err804];
                    } else {
                      vErrors.push(err804);
                    }
                    errors++;
                  }
                } else {
                  const err805 = { instancePath: instancePath + "/cycles/words/repeat", schemaPath: "#/$defs/letterOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err805];
                  } else {
                    vErrors.push(err805);
                  }
                  errors++;
                }
              }
            } else {
              const err806 = { instancePath: instancePath + "/cycles/words", schemaPath: "#/properties/cycles/anyOf/1/properties/words/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err806];
              } else {
                vErrors.push(err806);
              }
              errors++;
            }
          }
          if (data281.repeat !== void 0) {
            let data307 = data281.repeat;
            if (typeof data307 !== "string") {
              const err807 = { instancePath: instancePath + "/cycles/repeat", schemaPath: "#/properties/cycles/anyOf/1/properties/repeat/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err807];
              } else {
                vErrors.push(err807);
              }
              errors++;
            }
            if (!(data307 === "positions" || data307 === "all")) {
              const err808 = { instancePath: instancePath + "/cycles/repeat", schemaPath: "#/properties/cycles/anyOf/1/properties/repeat/enum", keyword: "enum", params: { allowedValues: schema31.properties.cycles.anyOf[1].properties.repeat.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err808];
              } else {
                vErrors.push(err808);
              }
              errors++;
            }
          }
          if (data281.definition !== void 0) {
            let data308 = data281.definition;
            if (typeof data308 !== "string") {
              const err809 = { instancePath: instancePath + "/cycles/definition", schemaPath: "#/properties/cycles/anyOf/1/properties/definition/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err809];
              } else {
                vErrors.push(err809);
              }
              errors++;
            }
            if (!(data308 === "with-first-hole" || data308 === "apart")) {
              const err810 = { instancePath: instancePath + "/cycles/definition", schemaPath: "#/properties/cycles/anyOf/1/properties/definition/enum", keyword: "enum", params: { allowedValues: schema31.properties.cycles.anyOf[1].properties.definition.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err810];
              } else {
                vErrors.push(err810);
              }
              errors++;
            }
          }
          if (data281.positions !== void 0) {
            let data309 = data281.positions;
            if (typeof data309 !== "string") {
              const err811 = { instancePath: instancePath + "/cycles/positions", schemaPath: "#/properties/cycles/anyOf/1/properties/positions/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err811];
              } else {
                vErrors.push(err811);
              }
              errors++;
            }
            if (!(data309 === "changed" || data309 === "both")) {
              const err812 = { instancePath: instancePath + "/cycles/positions", schemaPath: "#/properties/cycles/anyOf/1/properties/positions/enum", keyword: "enum", params: { allowedValues: schema31.properties.cycles.anyOf[1].properties.positions.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err812];
              } else {
                vErrors.push(err812);
              }
              errors++;
            }
          }
          if (data281["initial-level"] !== void 0) {
            let data310 = data281["initial-level"];
            if (typeof data310 !== "string") {
              const err813 = { instancePath: instancePath + "/cycles/initial-level", schemaPath: "#/properties/cycles/anyOf/1/properties/initial-level/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err813];
              } else {
                vErrors.push(err813);
              }
              errors++;
            }
            if (!(data310 === "before-series" || data310 === "current")) {
              const err814 = { instancePath: instancePath + "/cycles/initial-level", schemaPath: "#/properties/cycles/anyOf/1/properties/initial-level/enum", keyword: "enum", params: { allowedValues: schema31.properties.cycles.anyOf[1].properties["initial-level"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err814];
              } else {
                vErrors.push(err814);
              }
              errors++;
            }
          }
          if (data281.axis !== void 0) {
            let data311 = data281.axis;
            if (typeof data311 !== "string") {
              const err815 = { instancePath: instancePath + "/cycles/axis", schemaPath: "#/properties/cycles/anyOf/1/properties/axis/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err815];
              } else {
                vErrors.push(err815);
              }
              errors++;
            }
            if (!(data311 === "plane-normal" || data311 === "z")) {
              const err816 = { instancePath: instancePath + "/cycles/axis", schemaPath: "#/properties/cycles/anyOf/1/properties/axis/enum", keyword: "enum", params: { allowedValues: schema31.properties.cycles.anyOf[1].properties.axis.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err816];
              } else {
                vErrors.push(err816);
              }
              errors++;
            }
          }
          if (data281["tap-feed"] !== void 0) {
            let data312 = data281["tap-feed"];
            if (typeof data312 !== "string") {
              const err817 = { instancePath: instancePath + "/cycles/tap-feed", schemaPath: "#/properties/cycles/anyOf/1/properties/tap-feed/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err817];
              } else {
                vErrors.push(err817);
              }
              errors++;
            }
            if (!(data312 === "feed-mode" || data312 === "lead")) {
              const err818 = { instancePath: instancePath + "/cycles/tap-feed", schemaPath: "#/properties/cycles/anyOf/1/properties/tap-feed/enum", keyword: "enum", params: { allowedValues: schema31.properties.cycles.anyOf[1].properties["tap-feed"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err818];
              } else {
                vErrors.push(err818);
              }
              errors++;
            }
          }
          if (data281["tap-synchronised"] !== void 0) {
            let data313 = data281["tap-synchronised"];
            if (typeof data313 === "string") {
              if (!pattern8.test(data313)) {
                const err819 = { instancePath: instancePath + "/cycles/tap-synchronised", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err819];
                } else {
                  vErrors.push(err819);
                }
                errors++;
              }
            } else {
              const err820 = { instancePath: instancePath + "/cycles/tap-synchronised", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err820];
              } else {
                vErrors.push(err820);
              }
              errors++;
            }
          }
          if (data281["ended-by"] !== void 0) {
            let data314 = data281["ended-by"];
            if (typeof data314 !== "string") {
              const err821 = { instancePath: instancePath + "/cycles/ended-by", schemaPath: "#/properties/cycles/anyOf/1/properties/ended-by/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err821];
              } else {
                vErrors.push(err821);
              }
              errors++;
            }
            if (!(data314 === "any-motion" || data314 === "cancel-code")) {
              const err822 = { instancePath: instancePath + "/cycles/ended-by", schemaPath: "#/properties/cycles/anyOf/1/properties/ended-by/enum", keyword: "enum", params: { allowedValues: schema31.properties.cycles.anyOf[1].properties["ended-by"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err822];
              } else {
                vErrors.push(err822);
              }
              errors++;
            }
          }
        } else {
          const err823 = { instancePath: instancePath + "/cycles", schemaPath: "#/properties/cycles/anyOf/1/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err823];
          } else {
            vErrors.push(err823);
          }
          errors++;
        }
        var _valid31 = _errs866 === errors;
        valid226 = valid226 || _valid31;
        if (!valid226) {
          const err824 = { instancePath: instancePath + "/cycles", schemaPath: "#/properties/cycles/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
          if (vErrors === null) {
            vErrors = [err824];
          } else {
            vErrors.push(err824);
          }
          errors++;
        } else {
          errors = _errs863;
          if (vErrors !== null) {
            if (_errs863) {
              vErrors.length = _errs863;
            } else {
              vErrors = null;
            }
          }
        }
      }
      if (data.spindle !== void 0) {
        let data315 = data.spindle;
        if (data315 && typeof data315 == "object" && !Array.isArray(data315)) {
          for (const key44 in data315) {
            if (!func1.call(schema31.properties.spindle.properties, key44)) {
              const err825 = { instancePath: instancePath + "/spindle", schemaPath: "#/properties/spindle/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key44 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err825];
              } else {
                vErrors.push(err825);
              }
              errors++;
            }
          }
          if (data315.cw !== void 0) {
            let data316 = data315.cw;
            if (typeof data316 === "string") {
              if (!pattern8.test(data316)) {
                const err826 = { instancePath: instancePath + "/spindle/cw", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err826];
                } else {
                  vErrors.push(err826);
                }
                errors++;
              }
            } else {
              const err827 = { instancePath: instancePath + "/spindle/cw", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err827];
              } else {
                vErrors.push(err827);
              }
              errors++;
            }
          }
          if (data315.ccw !== void 0) {
            let data317 = data315.ccw;
            if (typeof data317 === "string") {
              if (!pattern8.test(data317)) {
                const err828 = { instancePath: instancePath + "/spindle/ccw", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err828];
                } else {
                  vErrors.push(err828);
                }
                errors++;
              }
            } else {
              const err829 = { instancePath: instancePath + "/spindle/ccw", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err829];
              } else {
                vErrors.push(err829);
              }
              errors++;
            }
          }
          if (data315.stop !== void 0) {
            let data318 = data315.stop;
            if (typeof data318 === "string") {
              if (!pattern8.test(data318)) {
                const err830 = { instancePath: instancePath + "/spindle/stop", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err830];
                } else {
                  vErrors.push(err830);
                }
                errors++;
              }
            } else {
              const err831 = { instancePath: instancePath + "/spindle/stop", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err831];
              } else {
                vErrors.push(err831);
              }
              errors++;
            }
          }
          if (data315.orient !== void 0) {
            let data319 = data315.orient;
            if (typeof data319 === "string") {
              if (!pattern27.test(data319)) {
                const err832 = { instancePath: instancePath + "/spindle/orient", schemaPath: "#/$defs/codeWithWordOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$"' };
                if (vErrors === null) {
                  vErrors = [err832];
                } else {
                  vErrors.push(err832);
                }
                errors++;
              }
            } else {
              const err833 = { instancePath: instancePath + "/spindle/orient", schemaPath: "#/$defs/codeWithWordOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err833];
              } else {
                vErrors.push(err833);
              }
              errors++;
            }
          }
          if (data315.order !== void 0) {
            let data320 = data315.order;
            if (typeof data320 !== "string") {
              const err834 = { instancePath: instancePath + "/spindle/order", schemaPath: "#/properties/spindle/properties/order/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err834];
              } else {
                vErrors.push(err834);
              }
              errors++;
            }
            if (!(data320 === "speed-first" || data320 === "start-first")) {
              const err835 = { instancePath: instancePath + "/spindle/order", schemaPath: "#/properties/spindle/properties/order/enum", keyword: "enum", params: { allowedValues: schema31.properties.spindle.properties.order.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err835];
              } else {
                vErrors.push(err835);
              }
              errors++;
            }
          }
          if (data315.blocks !== void 0) {
            let data321 = data315.blocks;
            if (typeof data321 !== "string") {
              const err836 = { instancePath: instancePath + "/spindle/blocks", schemaPath: "#/properties/spindle/properties/blocks/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err836];
              } else {
                vErrors.push(err836);
              }
              errors++;
            }
            if (!(data321 === "together" || data321 === "apart")) {
              const err837 = { instancePath: instancePath + "/spindle/blocks", schemaPath: "#/properties/spindle/properties/blocks/enum", keyword: "enum", params: { allowedValues: schema31.properties.spindle.properties.blocks.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err837];
              } else {
                vErrors.push(err837);
              }
              errors++;
            }
          }
          if (data315["speed-unit"] !== void 0) {
            let data322 = data315["speed-unit"];
            if (typeof data322 !== "string") {
              const err838 = { instancePath: instancePath + "/spindle/speed-unit", schemaPath: "#/properties/spindle/properties/speed-unit/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err838];
              } else {
                vErrors.push(err838);
              }
              errors++;
            }
            if (!(data322 === "rpm" || data322 === "percent")) {
              const err839 = { instancePath: instancePath + "/spindle/speed-unit", schemaPath: "#/properties/spindle/properties/speed-unit/enum", keyword: "enum", params: { allowedValues: schema31.properties.spindle.properties["speed-unit"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err839];
              } else {
                vErrors.push(err839);
              }
              errors++;
            }
          }
          if (data315["full-speed"] !== void 0) {
            let data323 = data315["full-speed"];
            if (typeof data323 == "number" && isFinite(data323)) {
              if (data323 > 1e6 || isNaN(data323)) {
                const err840 = { instancePath: instancePath + "/spindle/full-speed", schemaPath: "#/properties/spindle/properties/full-speed/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                if (vErrors === null) {
                  vErrors = [err840];
                } else {
                  vErrors.push(err840);
                }
                errors++;
              }
              if (data323 <= 0 || isNaN(data323)) {
                const err841 = { instancePath: instancePath + "/spindle/full-speed", schemaPath: "#/properties/spindle/properties/full-speed/exclusiveMinimum", keyword: "exclusiveMinimum", params: { comparison: ">", limit: 0 }, message: "must be > 0" };
                if (vErrors === null) {
                  vErrors = [err841];
                } else {
                  vErrors.push(err841);
                }
                errors++;
              }
            } else {
              const err842 = { instancePath: instancePath + "/spindle/full-speed", schemaPath: "#/properties/spindle/properties/full-speed/type", keyword: "type", params: { type: "number" }, message: "must be number" };
              if (vErrors === null) {
                vErrors = [err842];
              } else {
                vErrors.push(err842);
              }
              errors++;
            }
          }
          if (data315.gears !== void 0) {
            let data324 = data315.gears;
            const _errs990 = errors;
            let valid258 = false;
            const _errs991 = errors;
            if (typeof data324 !== "string") {
              const err843 = { instancePath: instancePath + "/spindle/gears", schemaPath: "#/properties/spindle/properties/gears/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err843];
              } else {
                vErrors.push(err843);
              }
              errors++;
            }
            if ("none" !== data324) {
              const err844 = { instancePath: instancePath + "/spindle/gears", schemaPath: "#/properties/spindle/properties/gears/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
              if (vErrors === null) {
                vErrors = [err844];
              } else {
                vErrors.push(err844);
              }
              errors++;
            }
            var _valid34 = _errs991 === errors;
            valid258 = valid258 || _valid34;
            const _errs993 = errors;
            if (Array.isArray(data324)) {
              if (data324.length > 6) {
                const err845 = { instancePath: instancePath + "/spindle/gears", schemaPath: "#/properties/spindle/properties/gears/anyOf/1/maxItems", keyword: "maxItems", params: { limit: 6 }, message: "must NOT have more than 6 items" };
                if (vErrors === null) {
                  vErrors = [err845];
                } else {
                  vErrors.push(err845);
                }
                errors++;
              }
              if (data324.length < 1) {
                const err846 = { instancePath: instancePath + "/spindle/gears", schemaPath: "#/properties/spindle/properties/gears/anyOf/1/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items" };
                if (vErrors === null) {
                  vErrors = [err846];
                } else {
                  vErrors.push(err846);
                }
                errors++;
              }
              const len8 = data324.length;
              for (let i11 = 0; i11 < len8; i11++) {
                let data325 = data324[i11];
                if (data325 && typeof data325 == "object" && !Array.isArray(data325)) {
                  for (const key45 in data325) {
                    if (!(key45 === "code" || key45 === "from" || key45 === "to")) {
                      const err847 = { instancePath: instancePath + "/spindle/gears/" + i11, schemaPath: "#/properties/spindle/properties/gears/anyOf/1/items/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key45 }, message: "must NOT have additional properties" };
                      if (vErrors === null) {
                        vErrors = [err847];
                      } else {
                        vErrors.push(err847);
                      }
                      errors++;
                    }
                  }
                  if (data325.code !== void 0) {
                    let data326 = data325.code;
                    if (typeof data326 === "string") {
                      if (!pattern79.test(data326)) {
                        const err848 = { instancePath: instancePath + "/spindle/gears/" + i11 + "/code", schemaPath: "#/properties/spindle/properties/gears/anyOf/1/items/properties/code/pattern", keyword: "pattern", params: { pattern: "^M\\d{1,3}$" }, message: 'must match pattern "^M\\d{1,3}$"' };
                        if (vErrors === null) {
                          vErrors = [err848];
                        } else {
                          vErrors.push(err848);
                        }
                        errors++;
                      }
                    } else {
                      const err849 = { instancePath: instancePath + "/spindle/gears/" + i11 + "/code", schemaPath: "#/properties/spindle/properties/gears/anyOf/1/items/properties/code/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                      if (vErrors === null) {
                        vErrors = [err849];
                      } else {
                        vErrors.push(err849);
                      }
                      errors++;
                    }
                  }
                  if (data325.from !== void 0) {
                    let data327 = data325.from;
                    if (typeof data327 == "number" && isFinite(data327)) {
                      if (data327 > 1e6 || isNaN(data327)) {
                        const err850 = { instancePath: instancePath + "/spindle/gears/" + i11 + "/from", schemaPath: "#/properties/spindle/properties/gears/anyOf/1/items/properties/from/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                        if (vErrors === null) {
                          vErrors = [err850];
                        } else {
                          vErrors.push(err850);
                        }
                        errors++;
                      }
                      if (data327 < 0 || isNaN(data327)) {
                        const err851 = { instancePath: instancePath + "/spindle/gears/" + i11 + "/from", schemaPath: "#/properties/spindle/properties/gears/anyOf/1/items/properties/from/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                        if (vErrors === null) {
                          vErrors = [err851];
                        } else {
                          vErrors.push(err851);
                        }
                        errors++;
                      }
                    } else {
                      const err852 = { instancePath: instancePath + "/spindle/gears/" + i11 + "/from", schemaPath: "#/properties/spindle/properties/gears/anyOf/1/items/properties/from/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                      if (vErrors === null) {
                        vErrors = [err852];
                      } else {
                        vErrors.push(err852);
                      }
                      errors++;
                    }
                  }
                  if (data325.to !== void 0) {
                    let data328 = data325.to;
                    if (typeof data328 == "number" && isFinite(data328)) {
                      if (data328 > 1e6 || isNaN(data328)) {
                        const err853 = { instancePath: instancePath + "/spindle/gears/" + i11 + "/to", schemaPath: "#/properties/spindle/properties/gears/anyOf/1/items/properties/to/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                        if (vErrors === null) {
                          vErrors = [err853];
                        } else {
                          vErrors.push(err853);
                        }
                        errors++;
                      }
                      if (data328 <= 0 || isNaN(data328)) {
                        const err854 = { instancePath: instancePath + "/spindle/gears/" + i11 + "/to", schemaPath: "#/properties/spindle/properties/gears/anyOf/1/items/properties/to/exclusiveMinimum", keyword: "exclusiveMinimum", params: { comparison: ">", limit: 0 }, message: "must be > 0" };
                        if (vErrors === null) {
                          vErrors = [err854];
                        } else {
                          vErrors.push(err854);
                        }
                        errors++;
                      }
                    } else {
                      const err855 = { instancePath: instancePath + "/spindle/gears/" + i11 + "/to", schemaPath: "#/properties/spindle/properties/gears/anyOf/1/items/properties/to/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                      if (vErrors === null) {
                        vErrors = [err855];
                      } else {
                        vErrors.push(err855);
                      }
                      errors++;
                    }
                  }
                } else {
                  const err856 = { instancePath: instancePath + "/spindle/gears/" + i11, schemaPath: "#/properties/spindle/properties/gears/anyOf/1/items/type", keyword: "type", params: { type: "object" }, message: "must be object" };
                  if (vErrors === null) {
                    vErrors = [err856];
                  } else {
                    vErrors.push(err856);
                  }
                  errors++;
                }
              }
            } else {
              const err857 = { instancePath: instancePath + "/spindle/gears", schemaPath: "#/properties/spindle/properties/gears/anyOf/1/type", keyword: "type", params: { type: "array" }, message: "must be array" };
              if (vErrors === null) {
                vErrors = [err857];
              } else {
                vErrors.push(err857);
              }
              errors++;
            }
            var _valid34 = _errs993 === errors;
            valid258 = valid258 || _valid34;
            if (!valid258) {
              const err858 = { instancePath: instancePath + "/spindle/gears", schemaPath: "#/properties/spindle/properties/gears/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err858];
              } else {
                vErrors.push(err858);
              }
              errors++;
            } else {
              errors = _errs990;
              if (vErrors !== null) {
                if (_errs990) {
                  vErrors.length = _errs990;
                } else {
                  vErrors = null;
                }
              }
            }
          }
        } else {
          const err859 = { instancePath: instancePath + "/spindle", schemaPath: "#/properties/spindle/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err859];
          } else {
            vErrors.push(err859);
          }
          errors++;
        }
      }
      if (data.coolant !== void 0) {
        let data329 = data.coolant;
        if (data329 && typeof data329 == "object" && !Array.isArray(data329)) {
          for (const key46 in data329) {
            if (!(key46 === "mist" || key46 === "flood" || key46 === "air" || key46 === "through-tool" || key46 === "off" || key46 === "blocks")) {
              const err860 = { instancePath: instancePath + "/coolant", schemaPath: "#/properties/coolant/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key46 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err860];
              } else {
                vErrors.push(err860);
              }
              errors++;
            }
          }
          if (data329.mist !== void 0) {
            let data330 = data329.mist;
            if (typeof data330 === "string") {
              if (!pattern8.test(data330)) {
                const err861 = { instancePath: instancePath + "/coolant/mist", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err861];
                } else {
                  vErrors.push(err861);
                }
                errors++;
              }
            } else {
              const err862 = { instancePath: instancePath + "/coolant/mist", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err862];
              } else {
                vErrors.push(err862);
              }
              errors++;
            }
          }
          if (data329.flood !== void 0) {
            let data331 = data329.flood;
            if (typeof data331 === "string") {
              if (!pattern8.test(data331)) {
                const err863 = { instancePath: instancePath + "/coolant/flood", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err863];
                } else {
                  vErrors.push(err863);
                }
                errors++;
              }
            } else {
              const err864 = { instancePath: instancePath + "/coolant/flood", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err864];
              } else {
                vErrors.push(err864);
              }
              errors++;
            }
          }
          if (data329.air !== void 0) {
            let data332 = data329.air;
            if (typeof data332 === "string") {
              if (!pattern8.test(data332)) {
                const err865 = { instancePath: instancePath + "/coolant/air", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err865];
                } else {
                  vErrors.push(err865);
                }
                errors++;
              }
            } else {
              const err866 = { instancePath: instancePath + "/coolant/air", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err866];
              } else {
                vErrors.push(err866);
              }
              errors++;
            }
          }
          if (data329["through-tool"] !== void 0) {
            let data333 = data329["through-tool"];
            if (typeof data333 === "string") {
              if (!pattern8.test(data333)) {
                const err867 = { instancePath: instancePath + "/coolant/through-tool", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err867];
                } else {
                  vErrors.push(err867);
                }
                errors++;
              }
            } else {
              const err868 = { instancePath: instancePath + "/coolant/through-tool", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err868];
              } else {
                vErrors.push(err868);
              }
              errors++;
            }
          }
          if (data329.off !== void 0) {
            let data334 = data329.off;
            const _errs1020 = errors;
            let valid267 = false;
            const _errs1021 = errors;
            if (typeof data334 === "string") {
              if (!pattern8.test(data334)) {
                const err869 = { instancePath: instancePath + "/coolant/off", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err869];
                } else {
                  vErrors.push(err869);
                }
                errors++;
              }
            } else {
              const err870 = { instancePath: instancePath + "/coolant/off", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err870];
              } else {
                vErrors.push(err870);
              }
              errors++;
            }
            var _valid35 = _errs1021 === errors;
            valid267 = valid267 || _valid35;
            const _errs1024 = errors;
            if (data334 && typeof data334 == "object" && !Array.isArray(data334)) {
              for (const key47 in data334) {
                if (!(key47 === "mist" || key47 === "flood" || key47 === "air" || key47 === "through-tool")) {
                  const err871 = { instancePath: instancePath + "/coolant/off", schemaPath: "#/properties/coolant/properties/off/anyOf/1/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key47 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err871];
                  } else {
                    vErrors.push(err871);
                  }
                  errors++;
                }
              }
              if (data334.mist !== void 0) {
                let data335 = data334.mist;
                if (typeof data335 === "string") {
                  if (!pattern8.test(data335)) {
                    const err872 = { instancePath: instancePath + "/coolant/off/mist", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                    if (vErrors === null) {
                      vErrors = [err872];
                    } else {
                      vErrors.push(err872);
                    }
                    errors++;
                  }
                } else {
                  const err873 = { instancePath: instancePath + "/coolant/off/mist", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err873];
                  } else {
                    vErrors.push(err873);
                  }
                  errors++;
                }
              }
              if (data334.flood !== void 0) {
                let data336 = data334.flood;
                if (typeof data336 === "string") {
                  if (!pattern8.test(data336)) {
                    const err874 = { instancePath: instancePath + "/coolant/off/flood", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                    if (vErrors === null) {
                      vErrors = [err874];
                    } else {
                      vErrors.push(err874);
                    }
                    errors++;
                  }
                } else {
                  const err875 = { instancePath: instancePath + "/coolant/off/flood", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err875];
                  } else {
                    vErrors.push(err875);
                  }
                  errors++;
                }
              }
              if (data334.air !== void 0) {
                let data337 = data334.air;
                if (typeof data337 === "string") {
                  if (!pattern8.test(data337)) {
                    const err876 = { instancePath: instancePath + "/coolant/off/air", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                    if (vErrors === null) {
                      vErrors = [err876];
                    } else {
                      vErrors.push(err876);
                    }
                    errors++;
                  }
                } else {
                  const err877 = { instancePath: instancePath + "/coolant/off/air", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err877];
                  } else {
                    vErrors.push(err877);
                  }
                  errors++;
                }
              }
              if (data334["through-tool"] !== void 0) {
                let data338 = data334["through-tool"];
                if (typeof data338 === "string") {
                  if (!pattern8.test(data338)) {
                    const err878 = { instancePath: instancePath + "/coolant/off/through-tool", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                    if (vErrors === null) {
                      vErrors = [err878];
                    } else {
                      vErrors.push(err878);
                    }
                    errors++;
                  }
                } else {
                  const err879 = { instancePath: instancePath + "/coolant/off/through-tool", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err879];
                  } else {
                    vErrors.push(err879);
                  }
                  errors++;
                }
              }
            } else {
              const err880 = { instancePath: instancePath + "/coolant/off", schemaPath: "#/properties/coolant/properties/off/anyOf/1/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err880];
              } else {
                vErrors.push(err880);
              }
              errors++;
            }
            var _valid35 = _errs1024 === errors;
            valid267 = valid267 || _valid35;
            if (!valid267) {
              const err881 = { instancePath: instancePath + "/coolant/off", schemaPath: "#/properties/coolant/properties/off/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err881];
              } else {
                vErrors.push(err881);
              }
              errors++;
            } else {
              errors = _errs1020;
              if (vErrors !== null) {
                if (_errs1020) {
                  vErrors.length = _errs1020;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data329.blocks !== void 0) {
            let data339 = data329.blocks;
            if (typeof data339 !== "string") {
              const err882 = { instancePath: instancePath + "/coolant/blocks", schemaPath: "#/properties/coolant/properties/blocks/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err882];
              } else {
                vErrors.push(err882);
              }
              errors++;
            }
            if (!(data339 === "apart" || data339 === "together")) {
              const err883 = { instancePath: instancePath + "/coolant/blocks", schemaPath: "#/properties/coolant/properties/blocks/enum", keyword: "enum", params: { allowedValues: schema31.properties.coolant.properties.blocks.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err883];
              } else {
                vErrors.push(err883);
              }
              errors++;
            }
          }
        } else {
          const err884 = { instancePath: instancePath + "/coolant", schemaPath: "#/properties/coolant/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err884];
          } else {
            vErrors.push(err884);
          }
          errors++;
        }
      }
      if (data.tools !== void 0) {
        let data340 = data.tools;
        if (data340 && typeof data340 == "object" && !Array.isArray(data340)) {
          for (const key48 in data340) {
            if (!(key48 === "change" || key48 === "blocks" || key48 === "order" || key48 === "preselect" || key48 === "in-operator-swap" || key48 === "empty")) {
              const err885 = { instancePath: instancePath + "/tools", schemaPath: "#/properties/tools/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key48 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err885];
              } else {
                vErrors.push(err885);
              }
              errors++;
            }
          }
          if (data340.change !== void 0) {
            let data341 = data340.change;
            if (typeof data341 === "string") {
              if (!pattern89.test(data341)) {
                const err886 = { instancePath: instancePath + "/tools/change", schemaPath: "#/properties/tools/properties/change/pattern", keyword: "pattern", params: { pattern: "^(none|with-tool-word|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|with-tool-word|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err886];
                } else {
                  vErrors.push(err886);
                }
                errors++;
              }
            } else {
              const err887 = { instancePath: instancePath + "/tools/change", schemaPath: "#/properties/tools/properties/change/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err887];
              } else {
                vErrors.push(err887);
              }
              errors++;
            }
          }
          if (data340.blocks !== void 0) {
            let data342 = data340.blocks;
            if (typeof data342 !== "string") {
              const err888 = { instancePath: instancePath + "/tools/blocks", schemaPath: "#/properties/tools/properties/blocks/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err888];
              } else {
                vErrors.push(err888);
              }
              errors++;
            }
            if (!(data342 === "together" || data342 === "apart")) {
              const err889 = { instancePath: instancePath + "/tools/blocks", schemaPath: "#/properties/tools/properties/blocks/enum", keyword: "enum", params: { allowedValues: schema31.properties.tools.properties.blocks.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err889];
              } else {
                vErrors.push(err889);
              }
              errors++;
            }
          }
          if (data340.order !== void 0) {
            let data343 = data340.order;
            if (typeof data343 !== "string") {
              const err890 = { instancePath: instancePath + "/tools/order", schemaPath: "#/properties/tools/properties/order/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err890];
              } else {
                vErrors.push(err890);
              }
              errors++;
            }
            if (!(data343 === "select-first" || data343 === "change-first")) {
              const err891 = { instancePath: instancePath + "/tools/order", schemaPath: "#/properties/tools/properties/order/enum", keyword: "enum", params: { allowedValues: schema31.properties.tools.properties.order.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err891];
              } else {
                vErrors.push(err891);
              }
              errors++;
            }
          }
          if (data340.preselect !== void 0) {
            let data344 = data340.preselect;
            if (typeof data344 !== "string") {
              const err892 = { instancePath: instancePath + "/tools/preselect", schemaPath: "#/$defs/yesNo/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err892];
              } else {
                vErrors.push(err892);
              }
              errors++;
            }
            if (!(data344 === "yes" || data344 === "no")) {
              const err893 = { instancePath: instancePath + "/tools/preselect", schemaPath: "#/$defs/yesNo/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err893];
              } else {
                vErrors.push(err893);
              }
              errors++;
            }
          }
          if (data340["in-operator-swap"] !== void 0) {
            let data345 = data340["in-operator-swap"];
            if (typeof data345 !== "string") {
              const err894 = { instancePath: instancePath + "/tools/in-operator-swap", schemaPath: "#/$defs/yesNo/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err894];
              } else {
                vErrors.push(err894);
              }
              errors++;
            }
            if (!(data345 === "yes" || data345 === "no")) {
              const err895 = { instancePath: instancePath + "/tools/in-operator-swap", schemaPath: "#/$defs/yesNo/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err895];
              } else {
                vErrors.push(err895);
              }
              errors++;
            }
          }
          if (data340.empty !== void 0) {
            let data346 = data340.empty;
            const _errs1057 = errors;
            let valid277 = false;
            const _errs1058 = errors;
            if (typeof data346 !== "string") {
              const err896 = { instancePath: instancePath + "/tools/empty", schemaPath: "#/properties/tools/properties/empty/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err896];
              } else {
                vErrors.push(err896);
              }
              errors++;
            }
            if ("none" !== data346) {
              const err897 = { instancePath: instancePath + "/tools/empty", schemaPath: "#/properties/tools/properties/empty/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
              if (vErrors === null) {
                vErrors = [err897];
              } else {
                vErrors.push(err897);
              }
              errors++;
            }
            var _valid36 = _errs1058 === errors;
            valid277 = valid277 || _valid36;
            const _errs1060 = errors;
            if (!(typeof data346 == "number" && (!(data346 % 1) && !isNaN(data346)) && isFinite(data346))) {
              const err898 = { instancePath: instancePath + "/tools/empty", schemaPath: "#/properties/tools/properties/empty/anyOf/1/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
              if (vErrors === null) {
                vErrors = [err898];
              } else {
                vErrors.push(err898);
              }
              errors++;
            }
            if (typeof data346 == "number" && isFinite(data346)) {
              if (data346 > 9999 || isNaN(data346)) {
                const err899 = { instancePath: instancePath + "/tools/empty", schemaPath: "#/properties/tools/properties/empty/anyOf/1/maximum", keyword: "maximum", params: { comparison: "<=", limit: 9999 }, message: "must be <= 9999" };
                if (vErrors === null) {
                  vErrors = [err899];
                } else {
                  vErrors.push(err899);
                }
                errors++;
              }
              if (data346 < 0 || isNaN(data346)) {
                const err900 = { instancePath: instancePath + "/tools/empty", schemaPath: "#/properties/tools/properties/empty/anyOf/1/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                if (vErrors === null) {
                  vErrors = [err900];
                } else {
                  vErrors.push(err900);
                }
                errors++;
              }
            }
            var _valid36 = _errs1060 === errors;
            valid277 = valid277 || _valid36;
            if (!valid277) {
              const err901 = { instancePath: instancePath + "/tools/empty", schemaPath: "#/properties/tools/properties/empty/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err901];
              } else {
                vErrors.push(err901);
              }
              errors++;
            } else {
              errors = _errs1057;
              if (vErrors !== null) {
                if (_errs1057) {
                  vErrors.length = _errs1057;
                } else {
                  vErrors = null;
                }
              }
            }
          }
        } else {
          const err902 = { instancePath: instancePath + "/tools", schemaPath: "#/properties/tools/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err902];
          } else {
            vErrors.push(err902);
          }
          errors++;
        }
      }
      if (data.stops !== void 0) {
        let data347 = data.stops;
        if (data347 && typeof data347 == "object" && !Array.isArray(data347)) {
          for (const key49 in data347) {
            if (!(key49 === "stop" || key49 === "optional" || key49 === "end" || key49 === "comment" || key49 === "resume" || key49 === "end-resets")) {
              const err903 = { instancePath: instancePath + "/stops", schemaPath: "#/properties/stops/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key49 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err903];
              } else {
                vErrors.push(err903);
              }
              errors++;
            }
          }
          if (data347.stop !== void 0) {
            let data348 = data347.stop;
            if (typeof data348 === "string") {
              if (!pattern8.test(data348)) {
                const err904 = { instancePath: instancePath + "/stops/stop", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err904];
                } else {
                  vErrors.push(err904);
                }
                errors++;
              }
            } else {
              const err905 = { instancePath: instancePath + "/stops/stop", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err905];
              } else {
                vErrors.push(err905);
              }
              errors++;
            }
          }
          if (data347.optional !== void 0) {
            let data349 = data347.optional;
            if (typeof data349 === "string") {
              if (!pattern91.test(data349)) {
                const err906 = { instancePath: instancePath + "/stops/optional", schemaPath: "#/$defs/optionalStop/pattern", keyword: "pattern", params: { pattern: "^(none|(/([1-9] )?)?[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|(/([1-9] )?)?[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err906];
                } else {
                  vErrors.push(err906);
                }
                errors++;
              }
            } else {
              const err907 = { instancePath: instancePath + "/stops/optional", schemaPath: "#/$defs/optionalStop/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err907];
              } else {
                vErrors.push(err907);
              }
              errors++;
            }
          }
          if (data347.end !== void 0) {
            let data350 = data347.end;
            if (typeof data350 === "string") {
              if (!pattern8.test(data350)) {
                const err908 = { instancePath: instancePath + "/stops/end", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err908];
                } else {
                  vErrors.push(err908);
                }
                errors++;
              }
            } else {
              const err909 = { instancePath: instancePath + "/stops/end", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err909];
              } else {
                vErrors.push(err909);
              }
              errors++;
            }
          }
          if (data347.comment !== void 0) {
            let data351 = data347.comment;
            if (typeof data351 !== "string") {
              const err910 = { instancePath: instancePath + "/stops/comment", schemaPath: "#/properties/stops/properties/comment/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err910];
              } else {
                vErrors.push(err910);
              }
              errors++;
            }
            if (!(data351 === "own-block" || data351 === "with-stop")) {
              const err911 = { instancePath: instancePath + "/stops/comment", schemaPath: "#/properties/stops/properties/comment/enum", keyword: "enum", params: { allowedValues: schema31.properties.stops.properties.comment.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err911];
              } else {
                vErrors.push(err911);
              }
              errors++;
            }
          }
          if (data347.resume !== void 0) {
            let data352 = data347.resume;
            if (typeof data352 !== "string") {
              const err912 = { instancePath: instancePath + "/stops/resume", schemaPath: "#/properties/stops/properties/resume/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err912];
              } else {
                vErrors.push(err912);
              }
              errors++;
            }
            if (!(data352 === "keeps-modes" || data352 === "loses-modes")) {
              const err913 = { instancePath: instancePath + "/stops/resume", schemaPath: "#/properties/stops/properties/resume/enum", keyword: "enum", params: { allowedValues: schema31.properties.stops.properties.resume.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err913];
              } else {
                vErrors.push(err913);
              }
              errors++;
            }
          }
          if (data347["end-resets"] !== void 0) {
            let data353 = data347["end-resets"];
            if (typeof data353 !== "string") {
              const err914 = { instancePath: instancePath + "/stops/end-resets", schemaPath: "#/$defs/yesNo/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err914];
              } else {
                vErrors.push(err914);
              }
              errors++;
            }
            if (!(data353 === "yes" || data353 === "no")) {
              const err915 = { instancePath: instancePath + "/stops/end-resets", schemaPath: "#/$defs/yesNo/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err915];
              } else {
                vErrors.push(err915);
              }
              errors++;
            }
          }
        } else {
          const err916 = { instancePath: instancePath + "/stops", schemaPath: "#/properties/stops/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err916];
          } else {
            vErrors.push(err916);
          }
          errors++;
        }
      }
      if (data.wait !== void 0) {
        let data354 = data.wait;
        if (data354 && typeof data354 == "object" && !Array.isArray(data354)) {
          for (const key50 in data354) {
            if (!(key50 === "on" || key50 === "off" || key50 === "timeout-unit")) {
              const err917 = { instancePath: instancePath + "/wait", schemaPath: "#/properties/wait/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key50 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err917];
              } else {
                vErrors.push(err917);
              }
              errors++;
            }
          }
          if (data354.on !== void 0) {
            let data355 = data354.on;
            if (!(typeof data355 == "number" && (!(data355 % 1) && !isNaN(data355)) && isFinite(data355))) {
              const err918 = { instancePath: instancePath + "/wait/on", schemaPath: "#/properties/wait/properties/on/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
              if (vErrors === null) {
                vErrors = [err918];
              } else {
                vErrors.push(err918);
              }
              errors++;
            }
            if (typeof data355 == "number" && isFinite(data355)) {
              if (data355 > 9999 || isNaN(data355)) {
                const err919 = { instancePath: instancePath + "/wait/on", schemaPath: "#/properties/wait/properties/on/maximum", keyword: "maximum", params: { comparison: "<=", limit: 9999 }, message: "must be <= 9999" };
                if (vErrors === null) {
                  vErrors = [err919];
                } else {
                  vErrors.push(err919);
                }
                errors++;
              }
              if (data355 < 0 || isNaN(data355)) {
                const err920 = { instancePath: instancePath + "/wait/on", schemaPath: "#/properties/wait/properties/on/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                if (vErrors === null) {
                  vErrors = [err920];
                } else {
                  vErrors.push(err920);
                }
                errors++;
              }
            }
          }
          if (data354.off !== void 0) {
            let data356 = data354.off;
            if (!(typeof data356 == "number" && (!(data356 % 1) && !isNaN(data356)) && isFinite(data356))) {
              const err921 = { instancePath: instancePath + "/wait/off", schemaPath: "#/properties/wait/properties/off/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
              if (vErrors === null) {
                vErrors = [err921];
              } else {
                vErrors.push(err921);
              }
              errors++;
            }
            if (typeof data356 == "number" && isFinite(data356)) {
              if (data356 > 9999 || isNaN(data356)) {
                const err922 = { instancePath: instancePath + "/wait/off", schemaPath: "#/properties/wait/properties/off/maximum", keyword: "maximum", params: { comparison: "<=", limit: 9999 }, message: "must be <= 9999" };
                if (vErrors === null) {
                  vErrors = [err922];
                } else {
                  vErrors.push(err922);
                }
                errors++;
              }
              if (data356 < 0 || isNaN(data356)) {
                const err923 = { instancePath: instancePath + "/wait/off", schemaPath: "#/properties/wait/properties/off/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                if (vErrors === null) {
                  vErrors = [err923];
                } else {
                  vErrors.push(err923);
                }
                errors++;
              }
            }
          }
          if (data354["timeout-unit"] !== void 0) {
            let data357 = data354["timeout-unit"];
            if (typeof data357 !== "string") {
              const err924 = { instancePath: instancePath + "/wait/timeout-unit", schemaPath: "#/properties/wait/properties/timeout-unit/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err924];
              } else {
                vErrors.push(err924);
              }
              errors++;
            }
            if (!(data357 === "s" || data357 === "ms")) {
              const err925 = { instancePath: instancePath + "/wait/timeout-unit", schemaPath: "#/properties/wait/properties/timeout-unit/enum", keyword: "enum", params: { allowedValues: schema31.properties.wait.properties["timeout-unit"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err925];
              } else {
                vErrors.push(err925);
              }
              errors++;
            }
          }
        } else {
          const err926 = { instancePath: instancePath + "/wait", schemaPath: "#/properties/wait/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err926];
          } else {
            vErrors.push(err926);
          }
          errors++;
        }
      }
      if (data.codes !== void 0) {
        let data358 = data.codes;
        if (data358 && typeof data358 == "object" && !Array.isArray(data358)) {
          for (const key51 in data358) {
            if (!pattern93.test(key51)) {
              const err927 = { instancePath: instancePath + "/codes", schemaPath: "#/properties/codes/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key51 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err927];
              } else {
                vErrors.push(err927);
              }
              errors++;
            }
          }
          for (const key52 in data358) {
            if (pattern93.test(key52)) {
              let data359 = data358[key52];
              if (data359 && typeof data359 == "object" && !Array.isArray(data359)) {
                for (const key53 in data359) {
                  if (!(key53 === "does" || key53 === "position" || key53 === "spindle" || key53 === "coolant" || key53 === "length-offset")) {
                    const err928 = { instancePath: instancePath + "/codes/" + key52.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/codes/patternProperties/%5E%5BGM%5D%5Cd%7B1%2C3%7D%24/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key53 }, message: "must NOT have additional properties" };
                    if (vErrors === null) {
                      vErrors = [err928];
                    } else {
                      vErrors.push(err928);
                    }
                    errors++;
                  }
                }
                if (data359.does !== void 0) {
                  let data360 = data359.does;
                  if (typeof data360 === "string") {
                    if (func2(data360) > 120) {
                      const err929 = { instancePath: instancePath + "/codes/" + key52.replace(/~/g, "~0").replace(/\//g, "~1") + "/does", schemaPath: "#/properties/codes/patternProperties/%5E%5BGM%5D%5Cd%7B1%2C3%7D%24/properties/does/maxLength", keyword: "maxLength", params: { limit: 120 }, message: "must NOT have more than 120 characters" };
                      if (vErrors === null) {
                        vErrors = [err929];
                      } else {
                        vErrors.push(err929);
                      }
                      errors++;
                    }
                    if (func2(data360) < 1) {
                      const err930 = { instancePath: instancePath + "/codes/" + key52.replace(/~/g, "~0").replace(/\//g, "~1") + "/does", schemaPath: "#/properties/codes/patternProperties/%5E%5BGM%5D%5Cd%7B1%2C3%7D%24/properties/does/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                      if (vErrors === null) {
                        vErrors = [err930];
                      } else {
                        vErrors.push(err930);
                      }
                      errors++;
                    }
                  } else {
                    const err931 = { instancePath: instancePath + "/codes/" + key52.replace(/~/g, "~0").replace(/\//g, "~1") + "/does", schemaPath: "#/properties/codes/patternProperties/%5E%5BGM%5D%5Cd%7B1%2C3%7D%24/properties/does/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                    if (vErrors === null) {
                      vErrors = [err931];
                    } else {
                      vErrors.push(err931);
                    }
                    errors++;
                  }
                }
                if (data359.position !== void 0) {
                  let data361 = data359.position;
                  if (typeof data361 !== "string") {
                    const err932 = { instancePath: instancePath + "/codes/" + key52.replace(/~/g, "~0").replace(/\//g, "~1") + "/position", schemaPath: "#/properties/codes/patternProperties/%5E%5BGM%5D%5Cd%7B1%2C3%7D%24/properties/position/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                    if (vErrors === null) {
                      vErrors = [err932];
                    } else {
                      vErrors.push(err932);
                    }
                    errors++;
                  }
                  if (!(data361 === "unchanged" || data361 === "unknown" || data361 === "swap-height")) {
                    const err933 = { instancePath: instancePath + "/codes/" + key52.replace(/~/g, "~0").replace(/\//g, "~1") + "/position", schemaPath: "#/properties/codes/patternProperties/%5E%5BGM%5D%5Cd%7B1%2C3%7D%24/properties/position/enum", keyword: "enum", params: { allowedValues: schema31.properties.codes.patternProperties["^[GM]\\d{1,3}$"].properties.position.enum }, message: "must be equal to one of the allowed values" };
                    if (vErrors === null) {
                      vErrors = [err933];
                    } else {
                      vErrors.push(err933);
                    }
                    errors++;
                  }
                }
                if (data359.spindle !== void 0) {
                  let data362 = data359.spindle;
                  if (typeof data362 !== "string") {
                    const err934 = { instancePath: instancePath + "/codes/" + key52.replace(/~/g, "~0").replace(/\//g, "~1") + "/spindle", schemaPath: "#/properties/codes/patternProperties/%5E%5BGM%5D%5Cd%7B1%2C3%7D%24/properties/spindle/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                    if (vErrors === null) {
                      vErrors = [err934];
                    } else {
                      vErrors.push(err934);
                    }
                    errors++;
                  }
                  if (!(data362 === "unchanged" || data362 === "stopped")) {
                    const err935 = { instancePath: instancePath + "/codes/" + key52.replace(/~/g, "~0").replace(/\//g, "~1") + "/spindle", schemaPath: "#/properties/codes/patternProperties/%5E%5BGM%5D%5Cd%7B1%2C3%7D%24/properties/spindle/enum", keyword: "enum", params: { allowedValues: schema31.properties.codes.patternProperties["^[GM]\\d{1,3}$"].properties.spindle.enum }, message: "must be equal to one of the allowed values" };
                    if (vErrors === null) {
                      vErrors = [err935];
                    } else {
                      vErrors.push(err935);
                    }
                    errors++;
                  }
                }
                if (data359.coolant !== void 0) {
                  let data363 = data359.coolant;
                  if (typeof data363 !== "string") {
                    const err936 = { instancePath: instancePath + "/codes/" + key52.replace(/~/g, "~0").replace(/\//g, "~1") + "/coolant", schemaPath: "#/properties/codes/patternProperties/%5E%5BGM%5D%5Cd%7B1%2C3%7D%24/properties/coolant/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                    if (vErrors === null) {
                      vErrors = [err936];
                    } else {
                      vErrors.push(err936);
                    }
                    errors++;
                  }
                  if (!(data363 === "unchanged" || data363 === "off")) {
                    const err937 = { instancePath: instancePath + "/codes/" + key52.replace(/~/g, "~0").replace(/\//g, "~1") + "/coolant", schemaPath: "#/properties/codes/patternProperties/%5E%5BGM%5D%5Cd%7B1%2C3%7D%24/properties/coolant/enum", keyword: "enum", params: { allowedValues: schema31.properties.codes.patternProperties["^[GM]\\d{1,3}$"].properties.coolant.enum }, message: "must be equal to one of the allowed values" };
                    if (vErrors === null) {
                      vErrors = [err937];
                    } else {
                      vErrors.push(err937);
                    }
                    errors++;
                  }
                }
                if (data359["length-offset"] !== void 0) {
                  let data364 = data359["length-offset"];
                  if (typeof data364 !== "string") {
                    const err938 = { instancePath: instancePath + "/codes/" + key52.replace(/~/g, "~0").replace(/\//g, "~1") + "/length-offset", schemaPath: "#/properties/codes/patternProperties/%5E%5BGM%5D%5Cd%7B1%2C3%7D%24/properties/length-offset/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                    if (vErrors === null) {
                      vErrors = [err938];
                    } else {
                      vErrors.push(err938);
                    }
                    errors++;
                  }
                  if (!(data364 === "unchanged" || data364 === "active" || data364 === "cancelled")) {
                    const err939 = { instancePath: instancePath + "/codes/" + key52.replace(/~/g, "~0").replace(/\//g, "~1") + "/length-offset", schemaPath: "#/properties/codes/patternProperties/%5E%5BGM%5D%5Cd%7B1%2C3%7D%24/properties/length-offset/enum", keyword: "enum", params: { allowedValues: schema31.properties.codes.patternProperties["^[GM]\\d{1,3}$"].properties["length-offset"].enum }, message: "must be equal to one of the allowed values" };
                    if (vErrors === null) {
                      vErrors = [err939];
                    } else {
                      vErrors.push(err939);
                    }
                    errors++;
                  }
                }
              } else {
                const err940 = { instancePath: instancePath + "/codes/" + key52.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/codes/patternProperties/%5E%5BGM%5D%5Cd%7B1%2C3%7D%24/type", keyword: "type", params: { type: "object" }, message: "must be object" };
                if (vErrors === null) {
                  vErrors = [err940];
                } else {
                  vErrors.push(err940);
                }
                errors++;
              }
            }
          }
        } else {
          const err941 = { instancePath: instancePath + "/codes", schemaPath: "#/properties/codes/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err941];
          } else {
            vErrors.push(err941);
          }
          errors++;
        }
      }
      if (data.idioms !== void 0) {
        let data365 = data.idioms;
        if (data365 && typeof data365 == "object" && !Array.isArray(data365)) {
          for (const key54 in data365) {
            if (!func1.call(schema31.properties.idioms.properties, key54)) {
              const err942 = { instancePath: instancePath + "/idioms", schemaPath: "#/properties/idioms/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key54 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err942];
              } else {
                vErrors.push(err942);
              }
              errors++;
            }
          }
          if (data365.message !== void 0) {
            let data366 = data365.message;
            if (typeof data366 === "string") {
              if (func2(data366) > 120) {
                const err943 = { instancePath: instancePath + "/idioms/message", schemaPath: "#/$defs/template/maxLength", keyword: "maxLength", params: { limit: 120 }, message: "must NOT have more than 120 characters" };
                if (vErrors === null) {
                  vErrors = [err943];
                } else {
                  vErrors.push(err943);
                }
                errors++;
              }
              if (func2(data366) < 1) {
                const err944 = { instancePath: instancePath + "/idioms/message", schemaPath: "#/$defs/template/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                if (vErrors === null) {
                  vErrors = [err944];
                } else {
                  vErrors.push(err944);
                }
                errors++;
              }
            } else {
              const err945 = { instancePath: instancePath + "/idioms/message", schemaPath: "#/$defs/template/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err945];
              } else {
                vErrors.push(err945);
              }
              errors++;
            }
          }
          if (data365.header !== void 0) {
            let data367 = data365.header;
            const _errs1113 = errors;
            let valid288 = false;
            const _errs1114 = errors;
            if (typeof data367 !== "string") {
              const err946 = { instancePath: instancePath + "/idioms/header", schemaPath: "#/properties/idioms/properties/header/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err946];
              } else {
                vErrors.push(err946);
              }
              errors++;
            }
            if ("none" !== data367) {
              const err947 = { instancePath: instancePath + "/idioms/header", schemaPath: "#/properties/idioms/properties/header/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
              if (vErrors === null) {
                vErrors = [err947];
              } else {
                vErrors.push(err947);
              }
              errors++;
            }
            var _valid37 = _errs1114 === errors;
            valid288 = valid288 || _valid37;
            const _errs1116 = errors;
            if (Array.isArray(data367)) {
              if (data367.length > 40) {
                const err948 = { instancePath: instancePath + "/idioms/header", schemaPath: "#/properties/idioms/properties/header/anyOf/1/maxItems", keyword: "maxItems", params: { limit: 40 }, message: "must NOT have more than 40 items" };
                if (vErrors === null) {
                  vErrors = [err948];
                } else {
                  vErrors.push(err948);
                }
                errors++;
              }
              if (data367.length < 1) {
                const err949 = { instancePath: instancePath + "/idioms/header", schemaPath: "#/properties/idioms/properties/header/anyOf/1/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items" };
                if (vErrors === null) {
                  vErrors = [err949];
                } else {
                  vErrors.push(err949);
                }
                errors++;
              }
              const len9 = data367.length;
              for (let i12 = 0; i12 < len9; i12++) {
                let data368 = data367[i12];
                if (typeof data368 === "string") {
                  if (func2(data368) > 160) {
                    const err950 = { instancePath: instancePath + "/idioms/header/" + i12, schemaPath: "#/properties/idioms/properties/header/anyOf/1/items/maxLength", keyword: "maxLength", params: { limit: 160 }, message: "must NOT have more than 160 characters" };
                    if (vErrors === null) {
                      vErrors = [err950];
                    } else {
                      vErrors.push(err950);
                    }
                    errors++;
                  }
                  if (func2(data368) < 1) {
                    const err951 = { instancePath: instancePath + "/idioms/header/" + i12, schemaPath: "#/properties/idioms/properties/header/anyOf/1/items/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                    if (vErrors === null) {
                      vErrors = [err951];
                    } else {
                      vErrors.push(err951);
                    }
                    errors++;
                  }
                } else {
                  const err952 = { instancePath: instancePath + "/idioms/header/" + i12, schemaPath: "#/properties/idioms/properties/header/anyOf/1/items/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err952];
                  } else {
                    vErrors.push(err952);
                  }
                  errors++;
                }
              }
            } else {
              const err953 = { instancePath: instancePath + "/idioms/header", schemaPath: "#/properties/idioms/properties/header/anyOf/1/type", keyword: "type", params: { type: "array" }, message: "must be array" };
              if (vErrors === null) {
                vErrors = [err953];
              } else {
                vErrors.push(err953);
              }
              errors++;
            }
            var _valid37 = _errs1116 === errors;
            valid288 = valid288 || _valid37;
            if (!valid288) {
              const err954 = { instancePath: instancePath + "/idioms/header", schemaPath: "#/properties/idioms/properties/header/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err954];
              } else {
                vErrors.push(err954);
              }
              errors++;
            } else {
              errors = _errs1113;
              if (vErrors !== null) {
                if (_errs1113) {
                  vErrors.length = _errs1113;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data365.footer !== void 0) {
            let data369 = data365.footer;
            const _errs1121 = errors;
            let valid291 = false;
            const _errs1122 = errors;
            if (typeof data369 !== "string") {
              const err955 = { instancePath: instancePath + "/idioms/footer", schemaPath: "#/properties/idioms/properties/footer/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err955];
              } else {
                vErrors.push(err955);
              }
              errors++;
            }
            if ("none" !== data369) {
              const err956 = { instancePath: instancePath + "/idioms/footer", schemaPath: "#/properties/idioms/properties/footer/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
              if (vErrors === null) {
                vErrors = [err956];
              } else {
                vErrors.push(err956);
              }
              errors++;
            }
            var _valid38 = _errs1122 === errors;
            valid291 = valid291 || _valid38;
            const _errs1124 = errors;
            if (Array.isArray(data369)) {
              if (data369.length > 40) {
                const err957 = { instancePath: instancePath + "/idioms/footer", schemaPath: "#/properties/idioms/properties/footer/anyOf/1/maxItems", keyword: "maxItems", params: { limit: 40 }, message: "must NOT have more than 40 items" };
                if (vErrors === null) {
                  vErrors = [err957];
                } else {
                  vErrors.push(err957);
                }
                errors++;
              }
              if (data369.length < 1) {
                const err958 = { instancePath: instancePath + "/idioms/footer", schemaPath: "#/properties/idioms/properties/footer/anyOf/1/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items" };
                if (vErrors === null) {
                  vErrors = [err958];
                } else {
                  vErrors.push(err958);
                }
                errors++;
              }
              const len10 = data369.length;
              for (let i13 = 0; i13 < len10; i13++) {
                let data370 = data369[i13];
                if (typeof data370 === "string") {
                  if (func2(data370) > 160) {
                    const err959 = { instancePath: instancePath + "/idioms/footer/" + i13, schemaPath: "#/properties/idioms/properties/footer/anyOf/1/items/maxLength", keyword: "maxLength", params: { limit: 160 }, message: "must NOT have more than 160 characters" };
                    if (vErrors === null) {
                      vErrors = [err959];
                    } else {
                      vErrors.push(err959);
                    }
                    errors++;
                  }
                  if (func2(data370) < 1) {
                    const err960 = { instancePath: instancePath + "/idioms/footer/" + i13, schemaPath: "#/properties/idioms/properties/footer/anyOf/1/items/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                    if (vErrors === null) {
                      vErrors = [err960];
                    } else {
                      vErrors.push(err960);
                    }
                    errors++;
                  }
                } else {
                  const err961 = { instancePath: instancePath + "/idioms/footer/" + i13, schemaPath: "#/properties/idioms/properties/footer/anyOf/1/items/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err961];
                  } else {
                    vErrors.push(err961);
                  }
                  errors++;
                }
              }
            } else {
              const err962 = { instancePath: instancePath + "/idioms/footer", schemaPath: "#/properties/idioms/properties/footer/anyOf/1/type", keyword: "type", params: { type: "array" }, message: "must be array" };
              if (vErrors === null) {
                vErrors = [err962];
              } else {
                vErrors.push(err962);
              }
              errors++;
            }
            var _valid38 = _errs1124 === errors;
            valid291 = valid291 || _valid38;
            if (!valid291) {
              const err963 = { instancePath: instancePath + "/idioms/footer", schemaPath: "#/properties/idioms/properties/footer/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err963];
              } else {
                vErrors.push(err963);
              }
              errors++;
            } else {
              errors = _errs1121;
              if (vErrors !== null) {
                if (_errs1121) {
                  vErrors.length = _errs1121;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data365["wait-signal"] !== void 0) {
            let data371 = data365["wait-signal"];
            if (typeof data371 === "string") {
              if (func2(data371) > 120) {
                const err964 = { instancePath: instancePath + "/idioms/wait-signal", schemaPath: "#/$defs/template/maxLength", keyword: "maxLength", params: { limit: 120 }, message: "must NOT have more than 120 characters" };
                if (vErrors === null) {
                  vErrors = [err964];
                } else {
                  vErrors.push(err964);
                }
                errors++;
              }
              if (func2(data371) < 1) {
                const err965 = { instancePath: instancePath + "/idioms/wait-signal", schemaPath: "#/$defs/template/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                if (vErrors === null) {
                  vErrors = [err965];
                } else {
                  vErrors.push(err965);
                }
                errors++;
              }
            } else {
              const err966 = { instancePath: instancePath + "/idioms/wait-signal", schemaPath: "#/$defs/template/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err966];
              } else {
                vErrors.push(err966);
              }
              errors++;
            }
          }
          if (data365["output-on"] !== void 0) {
            let data372 = data365["output-on"];
            if (typeof data372 === "string") {
              if (func2(data372) > 120) {
                const err967 = { instancePath: instancePath + "/idioms/output-on", schemaPath: "#/$defs/template/maxLength", keyword: "maxLength", params: { limit: 120 }, message: "must NOT have more than 120 characters" };
                if (vErrors === null) {
                  vErrors = [err967];
                } else {
                  vErrors.push(err967);
                }
                errors++;
              }
              if (func2(data372) < 1) {
                const err968 = { instancePath: instancePath + "/idioms/output-on", schemaPath: "#/$defs/template/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                if (vErrors === null) {
                  vErrors = [err968];
                } else {
                  vErrors.push(err968);
                }
                errors++;
              }
            } else {
              const err969 = { instancePath: instancePath + "/idioms/output-on", schemaPath: "#/$defs/template/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err969];
              } else {
                vErrors.push(err969);
              }
              errors++;
            }
          }
          if (data365["output-off"] !== void 0) {
            let data373 = data365["output-off"];
            if (typeof data373 === "string") {
              if (func2(data373) > 120) {
                const err970 = { instancePath: instancePath + "/idioms/output-off", schemaPath: "#/$defs/template/maxLength", keyword: "maxLength", params: { limit: 120 }, message: "must NOT have more than 120 characters" };
                if (vErrors === null) {
                  vErrors = [err970];
                } else {
                  vErrors.push(err970);
                }
                errors++;
              }
              if (func2(data373) < 1) {
                const err971 = { instancePath: instancePath + "/idioms/output-off", schemaPath: "#/$defs/template/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                if (vErrors === null) {
                  vErrors = [err971];
                } else {
                  vErrors.push(err971);
                }
                errors++;
              }
            } else {
              const err972 = { instancePath: instancePath + "/idioms/output-off", schemaPath: "#/$defs/template/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err972];
              } else {
                vErrors.push(err972);
              }
              errors++;
            }
          }
          if (data365.release !== void 0) {
            let data374 = data365.release;
            if (typeof data374 === "string") {
              if (func2(data374) > 120) {
                const err973 = { instancePath: instancePath + "/idioms/release", schemaPath: "#/$defs/template/maxLength", keyword: "maxLength", params: { limit: 120 }, message: "must NOT have more than 120 characters" };
                if (vErrors === null) {
                  vErrors = [err973];
                } else {
                  vErrors.push(err973);
                }
                errors++;
              }
              if (func2(data374) < 1) {
                const err974 = { instancePath: instancePath + "/idioms/release", schemaPath: "#/$defs/template/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                if (vErrors === null) {
                  vErrors = [err974];
                } else {
                  vErrors.push(err974);
                }
                errors++;
              }
            } else {
              const err975 = { instancePath: instancePath + "/idioms/release", schemaPath: "#/$defs/template/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err975];
              } else {
                vErrors.push(err975);
              }
              errors++;
            }
          }
          if (data365.clamp !== void 0) {
            let data375 = data365.clamp;
            if (typeof data375 === "string") {
              if (func2(data375) > 120) {
                const err976 = { instancePath: instancePath + "/idioms/clamp", schemaPath: "#/$defs/template/maxLength", keyword: "maxLength", params: { limit: 120 }, message: "must NOT have more than 120 characters" };
                if (vErrors === null) {
                  vErrors = [err976];
                } else {
                  vErrors.push(err976);
                }
                errors++;
              }
              if (func2(data375) < 1) {
                const err977 = { instancePath: instancePath + "/idioms/clamp", schemaPath: "#/$defs/template/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                if (vErrors === null) {
                  vErrors = [err977];
                } else {
                  vErrors.push(err977);
                }
                errors++;
              }
            } else {
              const err978 = { instancePath: instancePath + "/idioms/clamp", schemaPath: "#/$defs/template/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err978];
              } else {
                vErrors.push(err978);
              }
              errors++;
            }
          }
          if (data365["taper-air-on"] !== void 0) {
            let data376 = data365["taper-air-on"];
            if (typeof data376 === "string") {
              if (func2(data376) > 120) {
                const err979 = { instancePath: instancePath + "/idioms/taper-air-on", schemaPath: "#/$defs/template/maxLength", keyword: "maxLength", params: { limit: 120 }, message: "must NOT have more than 120 characters" };
                if (vErrors === null) {
                  vErrors = [err979];
                } else {
                  vErrors.push(err979);
                }
                errors++;
              }
              if (func2(data376) < 1) {
                const err980 = { instancePath: instancePath + "/idioms/taper-air-on", schemaPath: "#/$defs/template/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                if (vErrors === null) {
                  vErrors = [err980];
                } else {
                  vErrors.push(err980);
                }
                errors++;
              }
            } else {
              const err981 = { instancePath: instancePath + "/idioms/taper-air-on", schemaPath: "#/$defs/template/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err981];
              } else {
                vErrors.push(err981);
              }
              errors++;
            }
          }
          if (data365["taper-air-off"] !== void 0) {
            let data377 = data365["taper-air-off"];
            if (typeof data377 === "string") {
              if (func2(data377) > 120) {
                const err982 = { instancePath: instancePath + "/idioms/taper-air-off", schemaPath: "#/$defs/template/maxLength", keyword: "maxLength", params: { limit: 120 }, message: "must NOT have more than 120 characters" };
                if (vErrors === null) {
                  vErrors = [err982];
                } else {
                  vErrors.push(err982);
                }
                errors++;
              }
              if (func2(data377) < 1) {
                const err983 = { instancePath: instancePath + "/idioms/taper-air-off", schemaPath: "#/$defs/template/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                if (vErrors === null) {
                  vErrors = [err983];
                } else {
                  vErrors.push(err983);
                }
                errors++;
              }
            } else {
              const err984 = { instancePath: instancePath + "/idioms/taper-air-off", schemaPath: "#/$defs/template/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err984];
              } else {
                vErrors.push(err984);
              }
              errors++;
            }
          }
          if (data365["cover-open"] !== void 0) {
            let data378 = data365["cover-open"];
            if (typeof data378 === "string") {
              if (func2(data378) > 120) {
                const err985 = { instancePath: instancePath + "/idioms/cover-open", schemaPath: "#/$defs/template/maxLength", keyword: "maxLength", params: { limit: 120 }, message: "must NOT have more than 120 characters" };
                if (vErrors === null) {
                  vErrors = [err985];
                } else {
                  vErrors.push(err985);
                }
                errors++;
              }
              if (func2(data378) < 1) {
                const err986 = { instancePath: instancePath + "/idioms/cover-open", schemaPath: "#/$defs/template/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                if (vErrors === null) {
                  vErrors = [err986];
                } else {
                  vErrors.push(err986);
                }
                errors++;
              }
            } else {
              const err987 = { instancePath: instancePath + "/idioms/cover-open", schemaPath: "#/$defs/template/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err987];
              } else {
                vErrors.push(err987);
              }
              errors++;
            }
          }
          if (data365["cover-close"] !== void 0) {
            let data379 = data365["cover-close"];
            if (typeof data379 === "string") {
              if (func2(data379) > 120) {
                const err988 = { instancePath: instancePath + "/idioms/cover-close", schemaPath: "#/$defs/template/maxLength", keyword: "maxLength", params: { limit: 120 }, message: "must NOT have more than 120 characters" };
                if (vErrors === null) {
                  vErrors = [err988];
                } else {
                  vErrors.push(err988);
                }
                errors++;
              }
              if (func2(data379) < 1) {
                const err989 = { instancePath: instancePath + "/idioms/cover-close", schemaPath: "#/$defs/template/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                if (vErrors === null) {
                  vErrors = [err989];
                } else {
                  vErrors.push(err989);
                }
                errors++;
              }
            } else {
              const err990 = { instancePath: instancePath + "/idioms/cover-close", schemaPath: "#/$defs/template/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err990];
              } else {
                vErrors.push(err990);
              }
              errors++;
            }
          }
          if (data365["hood-up"] !== void 0) {
            let data380 = data365["hood-up"];
            if (typeof data380 === "string") {
              if (func2(data380) > 120) {
                const err991 = { instancePath: instancePath + "/idioms/hood-up", schemaPath: "#/$defs/template/maxLength", keyword: "maxLength", params: { limit: 120 }, message: "must NOT have more than 120 characters" };
                if (vErrors === null) {
                  vErrors = [err991];
                } else {
                  vErrors.push(err991);
                }
                errors++;
              }
              if (func2(data380) < 1) {
                const err992 = { instancePath: instancePath + "/idioms/hood-up", schemaPath: "#/$defs/template/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                if (vErrors === null) {
                  vErrors = [err992];
                } else {
                  vErrors.push(err992);
                }
                errors++;
              }
            } else {
              const err993 = { instancePath: instancePath + "/idioms/hood-up", schemaPath: "#/$defs/template/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err993];
              } else {
                vErrors.push(err993);
              }
              errors++;
            }
          }
          if (data365["hood-down"] !== void 0) {
            let data381 = data365["hood-down"];
            if (typeof data381 === "string") {
              if (func2(data381) > 120) {
                const err994 = { instancePath: instancePath + "/idioms/hood-down", schemaPath: "#/$defs/template/maxLength", keyword: "maxLength", params: { limit: 120 }, message: "must NOT have more than 120 characters" };
                if (vErrors === null) {
                  vErrors = [err994];
                } else {
                  vErrors.push(err994);
                }
                errors++;
              }
              if (func2(data381) < 1) {
                const err995 = { instancePath: instancePath + "/idioms/hood-down", schemaPath: "#/$defs/template/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                if (vErrors === null) {
                  vErrors = [err995];
                } else {
                  vErrors.push(err995);
                }
                errors++;
              }
            } else {
              const err996 = { instancePath: instancePath + "/idioms/hood-down", schemaPath: "#/$defs/template/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err996];
              } else {
                vErrors.push(err996);
              }
              errors++;
            }
          }
          if (data365.measure !== void 0) {
            let data382 = data365.measure;
            if (typeof data382 === "string") {
              if (func2(data382) > 120) {
                const err997 = { instancePath: instancePath + "/idioms/measure", schemaPath: "#/$defs/template/maxLength", keyword: "maxLength", params: { limit: 120 }, message: "must NOT have more than 120 characters" };
                if (vErrors === null) {
                  vErrors = [err997];
                } else {
                  vErrors.push(err997);
                }
                errors++;
              }
              if (func2(data382) < 1) {
                const err998 = { instancePath: instancePath + "/idioms/measure", schemaPath: "#/$defs/template/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                if (vErrors === null) {
                  vErrors = [err998];
                } else {
                  vErrors.push(err998);
                }
                errors++;
              }
            } else {
              const err999 = { instancePath: instancePath + "/idioms/measure", schemaPath: "#/$defs/template/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err999];
              } else {
                vErrors.push(err999);
              }
              errors++;
            }
          }
        } else {
          const err1000 = { instancePath: instancePath + "/idioms", schemaPath: "#/properties/idioms/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err1000];
          } else {
            vErrors.push(err1000);
          }
          errors++;
        }
      }
      if (data.machine !== void 0) {
        let data383 = data.machine;
        if (data383 && typeof data383 == "object" && !Array.isArray(data383)) {
          for (const key55 in data383) {
            if (!func1.call(schema31.properties.machine.properties, key55)) {
              const err1001 = { instancePath: instancePath + "/machine", schemaPath: "#/properties/machine/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key55 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err1001];
              } else {
                vErrors.push(err1001);
              }
              errors++;
            }
          }
          if (data383.travel !== void 0) {
            let data384 = data383.travel;
            if (data384 && typeof data384 == "object" && !Array.isArray(data384)) {
              for (const key56 in data384) {
                if (!(key56 === "x" || key56 === "y" || key56 === "z" || key56 === "a" || key56 === "b" || key56 === "c")) {
                  const err1002 = { instancePath: instancePath + "/machine/travel", schemaPath: "#/properties/machine/properties/travel/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key56 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err1002];
                  } else {
                    vErrors.push(err1002);
                  }
                  errors++;
                }
              }
              if (data384.x !== void 0) {
                let data385 = data384.x;
                if (Array.isArray(data385)) {
                  if (data385.length > 2) {
                    const err1003 = { instancePath: instancePath + "/machine/travel/x", schemaPath: "#/properties/machine/properties/travel/properties/x/maxItems", keyword: "maxItems", params: { limit: 2 }, message: "must NOT have more than 2 items" };
                    if (vErrors === null) {
                      vErrors = [err1003];
                    } else {
                      vErrors.push(err1003);
                    }
                    errors++;
                  }
                  if (data385.length < 2) {
                    const err1004 = { instancePath: instancePath + "/machine/travel/x", schemaPath: "#/properties/machine/properties/travel/properties/x/minItems", keyword: "minItems", params: { limit: 2 }, message: "must NOT have fewer than 2 items" };
                    if (vErrors === null) {
                      vErrors = [err1004];
                    } else {
                      vErrors.push(err1004);
                    }
                    errors++;
                  }
                  const len11 = data385.length;
                  for (let i14 = 0; i14 < len11; i14++) {
                    let data386 = data385[i14];
                    const _errs1174 = errors;
                    let valid311 = false;
                    const _errs1175 = errors;
                    if (typeof data386 == "number" && isFinite(data386)) {
                      if (data386 > 1e6 || isNaN(data386)) {
                        const err1005 = { instancePath: instancePath + "/machine/travel/x/" + i14, schemaPath: "#/$defs/length/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                        if (vErrors === null) {
                          vErrors = [err1005];
                        } else {
                          vErrors.push(err1005);
                        }
                        errors++;
                      }
                      if (data386 < -1e6 || isNaN(data386)) {
                        const err1006 = { instancePath: instancePath + "/machine/travel/x/" + i14, schemaPath: "#/$defs/length/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: -1e6 }, message: "must be >= -1000000" };
                        if (vErrors === null) {
                          vErrors = [err1006];
                        } else {
                          vErrors.push(err1006);
                        }
                        errors++;
                      }
                    } else {
                      const err1007 = { instancePath: instancePath + "/machine/travel/x/" + i14, schemaPath: "#/$defs/length/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                      if (vErrors === null) {
                        vErrors = [err1007];
                      } else {
                        vErrors.push(err1007);
                      }
                      errors++;
                    }
                    var _valid39 = _errs1175 === errors;
                    valid311 = valid311 || _valid39;
                    const _errs1177 = errors;
                    if (typeof data386 === "string") {
                      if (!pattern26.test(data386)) {
                        const err1008 = { instancePath: instancePath + "/machine/travel/x/" + i14, schemaPath: "#/$defs/length/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }, message: 'must match pattern "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$"' };
                        if (vErrors === null) {
                          vErrors = [err1008];
                        } else {
                          vErrors.push(err1008);
                        }
                        errors++;
                      }
                    } else {
                      const err1009 = { instancePath: instancePath + "/machine/travel/x/" + i14, schemaPath: "#/$defs/length/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                      if (vErrors === null) {
                        vErrors = [err1009];
                      } else {
                        vErrors.push(err1009);
                      }
                      errors++;
                    }
                    var _valid39 = _errs1177 === errors;
                    valid311 = valid311 || _valid39;
                    if (!valid311) {
                      const err1010 = { instancePath: instancePath + "/machine/travel/x/" + i14, schemaPath: "#/$defs/length/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                      if (vErrors === null) {
                        vErrors = [err1010];
                      } else {
                        vErrors.push(err1010);
                      }
                      errors++;
                    } else {
                      errors = _errs1174;
                      if (vErrors !== null) {
                        if (_errs1174) {
                          vErrors.length = _errs1174;
                        } else {
                          vErrors = null;
                        }
                      }
                    }
                  }
                } else {
                  const err1011 = { instancePath: instancePath + "/machine/travel/x", schemaPath: "#/properties/machine/properties/travel/properties/x/type", keyword: "type", params: { type: "array" }, message: "must be array" };
                  if (vErrors === null) {
                    vErrors = [err1011];
                  } else {
                    vErrors.push(err1011);
                  }
                  errors++;
                }
              }
              if (data384.y !== void 0) {
                let data387 = data384.y;
                if (Array.isArray(data387)) {
                  if (data387.length > 2) {
                    const err1012 = { instancePath: instancePath + "/machine/travel/y", schemaPath: "#/properties/machine/properties/travel/properties/y/maxItems", keyword: "maxItems", params: { limit: 2 }, message: "must NOT have more than 2 items" };
                    if (vErrors === null) {
                      vErrors = [err1012];
                    } else {
                      vErrors.push(err1012);
                    }
                    errors++;
                  }
                  if (data387.length < 2) {
                    const err1013 = { instancePath: instancePath + "/machine/travel/y", schemaPath: "#/properties/machine/properties/travel/properties/y/minItems", keyword: "minItems", params: { limit: 2 }, message: "must NOT have fewer than 2 items" };
                    if (vErrors === null) {
                      vErrors = [err1013];
                    } else {
                      vErrors.push(err1013);
                    }
                    errors++;
                  }
                  const len12 = data387.length;
                  for (let i15 = 0; i15 < len12; i15++) {
                    let data388 = data387[i15];
                    const _errs1183 = errors;
                    let valid315 = false;
                    const _errs1184 = errors;
                    if (typeof data388 == "number" && isFinite(data388)) {
                      if (data388 > 1e6 || isNaN(data388)) {
                        const err1014 = { instancePath: instancePath + "/machine/travel/y/" + i15, schemaPath: "#/$defs/length/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                        if (vErrors === null) {
                          vErrors = [err1014];
                        } else {
                          vErrors.push(err1014);
                        }
                        errors++;
                      }
                      if (data388 < -1e6 || isNaN(data388)) {
                        const err1015 = { instancePath: instancePath + "/machine/travel/y/" + i15, schemaPath: "#/$defs/length/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: -1e6 }, message: "must be >= -1000000" };
                        if (vErrors === null) {
                          vErrors = [err1015];
                        } else {
                          vErrors.push(err1015);
                        }
                        errors++;
                      }
                    } else {
                      const err1016 = { instancePath: instancePath + "/machine/travel/y/" + i15, schemaPath: "#/$defs/length/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                      if (vErrors === null) {
                        vErrors = [err1016];
                      } else {
                        vErrors.push(err1016);
                      }
                      errors++;
                    }
                    var _valid40 = _errs1184 === errors;
                    valid315 = valid315 || _valid40;
                    const _errs1186 = errors;
                    if (typeof data388 === "string") {
                      if (!pattern26.test(data388)) {
                        const err1017 = { instancePath: instancePath + "/machine/travel/y/" + i15, schemaPath: "#/$defs/length/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }, message: 'must match pattern "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$"' };
                        if (vErrors === null) {
                          vErrors = [err1017];
                        } else {
                          vErrors.push(err1017);
                        }
                        errors++;
                      }
                    } else {
                      const err1018 = { instancePath: instancePath + "/machine/travel/y/" + i15, schemaPath: "#/$defs/length/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                      if (vErrors === null) {
                        vErrors = [err1018];
                      } else {
                        vErrors.push(err1018);
                      }
                      errors++;
                    }
                    var _valid40 = _errs1186 === errors;
                    valid315 = valid315 || _valid40;
                    if (!valid315) {
                      const err1019 = { instancePath: instancePath + "/machine/travel/y/" + i15, schemaPath: "#/$defs/length/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                      if (vErrors === null) {
                        vErrors = [err1019];
                      } else {
                        vErrors.push(err1019);
                      }
                      errors++;
                    } else {
                      errors = _errs1183;
                      if (vErrors !== null) {
                        if (_errs1183) {
                          vErrors.length = _errs1183;
                        } else {
                          vErrors = null;
                        }
                      }
                    }
                  }
                } else {
                  const err1020 = { instancePath: instancePath + "/machine/travel/y", schemaPath: "#/properties/machine/properties/travel/properties/y/type", keyword: "type", params: { type: "array" }, message: "must be array" };
                  if (vErrors === null) {
                    vErrors = [err1020];
                  } else {
                    vErrors.push(err1020);
                  }
                  errors++;
                }
              }
              if (data384.z !== void 0) {
                let data389 = data384.z;
                if (Array.isArray(data389)) {
                  if (data389.length > 2) {
                    const err1021 = { instancePath: instancePath + "/machine/travel/z", schemaPath: "#/properties/machine/properties/travel/properties/z/maxItems", keyword: "maxItems", params: { limit: 2 }, message: "must NOT have more than 2 items" };
                    if (vErrors === null) {
                      vErrors = [err1021];
                    } else {
                      vErrors.push(err1021);
                    }
                    errors++;
                  }
                  if (data389.length < 2) {
                    const err1022 = { instancePath: instancePath + "/machine/travel/z", schemaPath: "#/properties/machine/properties/travel/properties/z/minItems", keyword: "minItems", params: { limit: 2 }, message: "must NOT have fewer than 2 items" };
                    if (vErrors === null) {
                      vErrors = [err1022];
                    } else {
                      vErrors.push(err1022);
                    }
                    errors++;
                  }
                  const len13 = data389.length;
                  for (let i16 = 0; i16 < len13; i16++) {
                    let data390 = data389[i16];
                    const _errs1192 = errors;
                    let valid319 = false;
                    const _errs1193 = errors;
                    if (typeof data390 == "number" && isFinite(data390)) {
                      if (data390 > 1e6 || isNaN(data390)) {
                        const err1023 = { instancePath: instancePath + "/machine/travel/z/" + i16, schemaPath: "#/$defs/length/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                        if (vErrors === null) {
                          vErrors = [err1023];
                        } else {
                          vErrors.push(err1023);
                        }
                        errors++;
                      }
                      if (data390 < -1e6 || isNaN(data390)) {
                        const err1024 = { instancePath: instancePath + "/machine/travel/z/" + i16, schemaPath: "#/$defs/length/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: -1e6 }, message: "must be >= -1000000" };
                        if (vErrors === null) {
                          vErrors = [err1024];
                        } else {
                          vErrors.push(err1024);
                        }
                        errors++;
                      }
                    } else {
                      const err1025 = { instancePath: instancePath + "/machine/travel/z/" + i16, schemaPath: "#/$defs/length/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                      if (vErrors === null) {
                        vErrors = [err1025];
                      } else {
                        vErrors.push(err1025);
                      }
                      errors++;
                    }
                    var _valid41 = _errs1193 === errors;
                    valid319 = valid319 || _valid41;
                    const _errs1195 = errors;
                    if (typeof data390 === "string") {
                      if (!pattern26.test(data390)) {
                        const err1026 = { instancePath: instancePath + "/machine/travel/z/" + i16, schemaPath: "#/$defs/length/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }, message: 'must match pattern "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$"' };
                        if (vErrors === null) {
                          vErrors = [err1026];
                        } else {
                          vErrors.push(err1026);
                        }
                        errors++;
                      }
                    } else {
                      const err1027 = { instancePath: instancePath + "/machine/travel/z/" + i16, schemaPath: "#/$defs/length/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                      if (vErrors === null) {
                        vErrors = [err1027];
                      } else {
                        vErrors.push(err1027);
                      }
                      errors++;
                    }
                    var _valid41 = _errs1195 === errors;
                    valid319 = valid319 || _valid41;
                    if (!valid319) {
                      const err1028 = { instancePath: instancePath + "/machine/travel/z/" + i16, schemaPath: "#/$defs/length/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                      if (vErrors === null) {
                        vErrors = [err1028];
                      } else {
                        vErrors.push(err1028);
                      }
                      errors++;
                    } else {
                      errors = _errs1192;
                      if (vErrors !== null) {
                        if (_errs1192) {
                          vErrors.length = _errs1192;
                        } else {
                          vErrors = null;
                        }
                      }
                    }
                  }
                } else {
                  const err1029 = { instancePath: instancePath + "/machine/travel/z", schemaPath: "#/properties/machine/properties/travel/properties/z/type", keyword: "type", params: { type: "array" }, message: "must be array" };
                  if (vErrors === null) {
                    vErrors = [err1029];
                  } else {
                    vErrors.push(err1029);
                  }
                  errors++;
                }
              }
              if (data384.a !== void 0) {
                let data391 = data384.a;
                if (Array.isArray(data391)) {
                  if (data391.length > 2) {
                    const err1030 = { instancePath: instancePath + "/machine/travel/a", schemaPath: "#/properties/machine/properties/travel/properties/a/maxItems", keyword: "maxItems", params: { limit: 2 }, message: "must NOT have more than 2 items" };
                    if (vErrors === null) {
                      vErrors = [err1030];
                    } else {
                      vErrors.push(err1030);
                    }
                    errors++;
                  }
                  if (data391.length < 2) {
                    const err1031 = { instancePath: instancePath + "/machine/travel/a", schemaPath: "#/properties/machine/properties/travel/properties/a/minItems", keyword: "minItems", params: { limit: 2 }, message: "must NOT have fewer than 2 items" };
                    if (vErrors === null) {
                      vErrors = [err1031];
                    } else {
                      vErrors.push(err1031);
                    }
                    errors++;
                  }
                  const len14 = data391.length;
                  for (let i17 = 0; i17 < len14; i17++) {
                    let data392 = data391[i17];
                    if (typeof data392 == "number" && isFinite(data392)) {
                      if (data392 > 36e6 || isNaN(data392)) {
                        const err1032 = { instancePath: instancePath + "/machine/travel/a/" + i17, schemaPath: "#/properties/machine/properties/travel/properties/a/items/maximum", keyword: "maximum", params: { comparison: "<=", limit: 36e6 }, message: "must be <= 36000000" };
                        if (vErrors === null) {
                          vErrors = [err1032];
                        } else {
                          vErrors.push(err1032);
                        }
                        errors++;
                      }
                      if (data392 < -36e6 || isNaN(data392)) {
                        const err1033 = { instancePath: instancePath + "/machine/travel/a/" + i17, schemaPath: "#/properties/machine/properties/travel/properties/a/items/minimum", keyword: "minimum", params: { comparison: ">=", limit: -36e6 }, message: "must be >= -36000000" };
                        if (vErrors === null) {
                          vErrors = [err1033];
                        } else {
                          vErrors.push(err1033);
                        }
                        errors++;
                      }
                    } else {
                      const err1034 = { instancePath: instancePath + "/machine/travel/a/" + i17, schemaPath: "#/properties/machine/properties/travel/properties/a/items/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                      if (vErrors === null) {
                        vErrors = [err1034];
                      } else {
                        vErrors.push(err1034);
                      }
                      errors++;
                    }
                  }
                } else {
                  const err1035 = { instancePath: instancePath + "/machine/travel/a", schemaPath: "#/properties/machine/properties/travel/properties/a/type", keyword: "type", params: { type: "array" }, message: "must be array" };
                  if (vErrors === null) {
                    vErrors = [err1035];
                  } else {
                    vErrors.push(err1035);
                  }
                  errors++;
                }
              }
              if (data384.b !== void 0) {
                let data393 = data384.b;
                if (Array.isArray(data393)) {
                  if (data393.length > 2) {
                    const err1036 = { instancePath: instancePath + "/machine/travel/b", schemaPath: "#/properties/machine/properties/travel/properties/b/maxItems", keyword: "maxItems", params: { limit: 2 }, message: "must NOT have more than 2 items" };
                    if (vErrors === null) {
                      vErrors = [err1036];
                    } else {
                      vErrors.push(err1036);
                    }
                    errors++;
                  }
                  if (data393.length < 2) {
                    const err1037 = { instancePath: instancePath + "/machine/travel/b", schemaPath: "#/properties/machine/properties/travel/properties/b/minItems", keyword: "minItems", params: { limit: 2 }, message: "must NOT have fewer than 2 items" };
                    if (vErrors === null) {
                      vErrors = [err1037];
                    } else {
                      vErrors.push(err1037);
                    }
                    errors++;
                  }
                  const len15 = data393.length;
                  for (let i18 = 0; i18 < len15; i18++) {
                    let data394 = data393[i18];
                    if (typeof data394 == "number" && isFinite(data394)) {
                      if (data394 > 36e6 || isNaN(data394)) {
                        const err1038 = { instancePath: instancePath + "/machine/travel/b/" + i18, schemaPath: "#/properties/machine/properties/travel/properties/b/items/maximum", keyword: "maximum", params: { comparison: "<=", limit: 36e6 }, message: "must be <= 36000000" };
                        if (vErrors === null) {
                          vErrors = [err1038];
                        } else {
                          vErrors.push(err1038);
                        }
                        errors++;
                      }
                      if (data394 < -36e6 || isNaN(data394)) {
                        const err1039 = { instancePath: instancePath + "/machine/travel/b/" + i18, schemaPath: "#/properties/machine/properties/travel/properties/b/items/minimum", keyword: "minimum", params: { comparison: ">=", limit: -36e6 }, message: "must be >= -36000000" };
                        if (vErrors === null) {
                          vErrors = [err1039];
                        } else {
                          vErrors.push(err1039);
                        }
                        errors++;
                      }
                    } else {
                      const err1040 = { instancePath: instancePath + "/machine/travel/b/" + i18, schemaPath: "#/properties/machine/properties/travel/properties/b/items/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                      if (vErrors === null) {
                        vErrors = [err1040];
                      } else {
                        vErrors.push(err1040);
                      }
                      errors++;
                    }
                  }
                } else {
                  const err1041 = { instancePath: instancePath + "/machine/travel/b", schemaPath: "#/properties/machine/properties/travel/properties/b/type", keyword: "type", params: { type: "array" }, message: "must be array" };
                  if (vErrors === null) {
                    vErrors = [err1041];
                  } else {
                    vErrors.push(err1041);
                  }
                  errors++;
                }
              }
              if (data384.c !== void 0) {
                let data395 = data384.c;
                if (Array.isArray(data395)) {
                  if (data395.length > 2) {
                    const err1042 = { instancePath: instancePath + "/machine/travel/c", schemaPath: "#/properties/machine/properties/travel/properties/c/maxItems", keyword: "maxItems", params: { limit: 2 }, message: "must NOT have more than 2 items" };
                    if (vErrors === null) {
                      vErrors = [err1042];
                    } else {
                      vErrors.push(err1042);
                    }
                    errors++;
                  }
                  if (data395.length < 2) {
                    const err1043 = { instancePath: instancePath + "/machine/travel/c", schemaPath: "#/properties/machine/properties/travel/properties/c/minItems", keyword: "minItems", params: { limit: 2 }, message: "must NOT have fewer than 2 items" };
                    if (vErrors === null) {
                      vErrors = [err1043];
                    } else {
                      vErrors.push(err1043);
                    }
                    errors++;
                  }
                  const len16 = data395.length;
                  for (let i19 = 0; i19 < len16; i19++) {
                    let data396 = data395[i19];
                    if (typeof data396 == "number" && isFinite(data396)) {
                      if (data396 > 36e6 || isNaN(data396)) {
                        const err1044 = { instancePath: instancePath + "/machine/travel/c/" + i19, schemaPath: "#/properties/machine/properties/travel/properties/c/items/maximum", keyword: "maximum", params: { comparison: "<=", limit: 36e6 }, message: "must be <= 36000000" };
                        if (vErrors === null) {
                          vErrors = [err1044];
                        } else {
                          vErrors.push(err1044);
                        }
                        errors++;
                      }
                      if (data396 < -36e6 || isNaN(data396)) {
                        const err1045 = { instancePath: instancePath + "/machine/travel/c/" + i19, schemaPath: "#/properties/machine/properties/travel/properties/c/items/minimum", keyword: "minimum", params: { comparison: ">=", limit: -36e6 }, message: "must be >= -36000000" };
                        if (vErrors === null) {
                          vErrors = [err1045];
                        } else {
                          vErrors.push(err1045);
                        }
                        errors++;
                      }
                    } else {
                      const err1046 = { instancePath: instancePath + "/machine/travel/c/" + i19, schemaPath: "#/properties/machine/properties/travel/properties/c/items/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                      if (vErrors === null) {
                        vErrors = [err1046];
                      } else {
                        vErrors.push(err1046);
                      }
                      errors++;
                    }
                  }
                } else {
                  const err1047 = { instancePath: instancePath + "/machine/travel/c", schemaPath: "#/properties/machine/properties/travel/properties/c/type", keyword: "type", params: { type: "array" }, message: "must be array" };
                  if (vErrors === null) {
                    vErrors = [err1047];
                  } else {
                    vErrors.push(err1047);
                  }
                  errors++;
                }
              }
            } else {
              const err1048 = { instancePath: instancePath + "/machine/travel", schemaPath: "#/properties/machine/properties/travel/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err1048];
              } else {
                vErrors.push(err1048);
              }
              errors++;
            }
          }
          if (data383.spindle !== void 0) {
            let data397 = data383.spindle;
            if (data397 && typeof data397 == "object" && !Array.isArray(data397)) {
              for (const key57 in data397) {
                if (!(key57 === "min-rpm" || key57 === "max-rpm" || key57 === "spin-up" || key57 === "spin-down" || key57 === "coast-down" || key57 === "orient")) {
                  const err1049 = { instancePath: instancePath + "/machine/spindle", schemaPath: "#/properties/machine/properties/spindle/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key57 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err1049];
                  } else {
                    vErrors.push(err1049);
                  }
                  errors++;
                }
              }
              if (data397["min-rpm"] !== void 0) {
                let data398 = data397["min-rpm"];
                if (typeof data398 == "number" && isFinite(data398)) {
                  if (data398 > 1e6 || isNaN(data398)) {
                    const err1050 = { instancePath: instancePath + "/machine/spindle/min-rpm", schemaPath: "#/properties/machine/properties/spindle/properties/min-rpm/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                    if (vErrors === null) {
                      vErrors = [err1050];
                    } else {
                      vErrors.push(err1050);
                    }
                    errors++;
                  }
                  if (data398 < 0 || isNaN(data398)) {
                    const err1051 = { instancePath: instancePath + "/machine/spindle/min-rpm", schemaPath: "#/properties/machine/properties/spindle/properties/min-rpm/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err1051];
                    } else {
                      vErrors.push(err1051);
                    }
                    errors++;
                  }
                } else {
                  const err1052 = { instancePath: instancePath + "/machine/spindle/min-rpm", schemaPath: "#/properties/machine/properties/spindle/properties/min-rpm/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                  if (vErrors === null) {
                    vErrors = [err1052];
                  } else {
                    vErrors.push(err1052);
                  }
                  errors++;
                }
              }
              if (data397["max-rpm"] !== void 0) {
                let data399 = data397["max-rpm"];
                if (typeof data399 == "number" && isFinite(data399)) {
                  if (data399 > 1e6 || isNaN(data399)) {
                    const err1053 = { instancePath: instancePath + "/machine/spindle/max-rpm", schemaPath: "#/properties/machine/properties/spindle/properties/max-rpm/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                    if (vErrors === null) {
                      vErrors = [err1053];
                    } else {
                      vErrors.push(err1053);
                    }
                    errors++;
                  }
                  if (data399 <= 0 || isNaN(data399)) {
                    const err1054 = { instancePath: instancePath + "/machine/spindle/max-rpm", schemaPath: "#/properties/machine/properties/spindle/properties/max-rpm/exclusiveMinimum", keyword: "exclusiveMinimum", params: { comparison: ">", limit: 0 }, message: "must be > 0" };
                    if (vErrors === null) {
                      vErrors = [err1054];
                    } else {
                      vErrors.push(err1054);
                    }
                    errors++;
                  }
                } else {
                  const err1055 = { instancePath: instancePath + "/machine/spindle/max-rpm", schemaPath: "#/properties/machine/properties/spindle/properties/max-rpm/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                  if (vErrors === null) {
                    vErrors = [err1055];
                  } else {
                    vErrors.push(err1055);
                  }
                  errors++;
                }
              }
              if (data397["spin-up"] !== void 0) {
                let data400 = data397["spin-up"];
                if (typeof data400 === "string") {
                  if (!pattern98.test(data400)) {
                    const err1056 = { instancePath: instancePath + "/machine/spindle/spin-up", schemaPath: "#/$defs/time/pattern", keyword: "pattern", params: { pattern: "^\\d{1,6}(\\.\\d{1,6})? ?(s|ms|min)$" }, message: 'must match pattern "^\\d{1,6}(\\.\\d{1,6})? ?(s|ms|min)$"' };
                    if (vErrors === null) {
                      vErrors = [err1056];
                    } else {
                      vErrors.push(err1056);
                    }
                    errors++;
                  }
                } else {
                  const err1057 = { instancePath: instancePath + "/machine/spindle/spin-up", schemaPath: "#/$defs/time/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1057];
                  } else {
                    vErrors.push(err1057);
                  }
                  errors++;
                }
              }
              if (data397["spin-down"] !== void 0) {
                let data401 = data397["spin-down"];
                if (typeof data401 === "string") {
                  if (!pattern98.test(data401)) {
                    const err1058 = { instancePath: instancePath + "/machine/spindle/spin-down", schemaPath: "#/$defs/time/pattern", keyword: "pattern", params: { pattern: "^\\d{1,6}(\\.\\d{1,6})? ?(s|ms|min)$" }, message: 'must match pattern "^\\d{1,6}(\\.\\d{1,6})? ?(s|ms|min)$"' };
                    if (vErrors === null) {
                      vErrors = [err1058];
                    } else {
                      vErrors.push(err1058);
                    }
                    errors++;
                  }
                } else {
                  const err1059 = { instancePath: instancePath + "/machine/spindle/spin-down", schemaPath: "#/$defs/time/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1059];
                  } else {
                    vErrors.push(err1059);
                  }
                  errors++;
                }
              }
              if (data397["coast-down"] !== void 0) {
                let data402 = data397["coast-down"];
                if (typeof data402 === "string") {
                  if (!pattern98.test(data402)) {
                    const err1060 = { instancePath: instancePath + "/machine/spindle/coast-down", schemaPath: "#/$defs/time/pattern", keyword: "pattern", params: { pattern: "^\\d{1,6}(\\.\\d{1,6})? ?(s|ms|min)$" }, message: 'must match pattern "^\\d{1,6}(\\.\\d{1,6})? ?(s|ms|min)$"' };
                    if (vErrors === null) {
                      vErrors = [err1060];
                    } else {
                      vErrors.push(err1060);
                    }
                    errors++;
                  }
                } else {
                  const err1061 = { instancePath: instancePath + "/machine/spindle/coast-down", schemaPath: "#/$defs/time/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1061];
                  } else {
                    vErrors.push(err1061);
                  }
                  errors++;
                }
              }
              if (data397.orient !== void 0) {
                let data403 = data397.orient;
                if (typeof data403 !== "string") {
                  const err1062 = { instancePath: instancePath + "/machine/spindle/orient", schemaPath: "#/$defs/yesNo/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1062];
                  } else {
                    vErrors.push(err1062);
                  }
                  errors++;
                }
                if (!(data403 === "yes" || data403 === "no")) {
                  const err1063 = { instancePath: instancePath + "/machine/spindle/orient", schemaPath: "#/$defs/yesNo/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1063];
                  } else {
                    vErrors.push(err1063);
                  }
                  errors++;
                }
              }
            } else {
              const err1064 = { instancePath: instancePath + "/machine/spindle", schemaPath: "#/properties/machine/properties/spindle/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err1064];
              } else {
                vErrors.push(err1064);
              }
              errors++;
            }
          }
          if (data383.signals !== void 0) {
            let data404 = data383.signals;
            if (data404 && typeof data404 == "object" && !Array.isArray(data404)) {
              for (const key58 in data404) {
                if (!(key58 === "at-speed" || key58 === "stopped" || key58 === "released" || key58 === "clamped" || key58 === "tool-present" || key58 === "air" || key58 === "hold-down")) {
                  const err1065 = { instancePath: instancePath + "/machine/signals", schemaPath: "#/properties/machine/properties/signals/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key58 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err1065];
                  } else {
                    vErrors.push(err1065);
                  }
                  errors++;
                }
              }
              if (data404["at-speed"] !== void 0) {
                let data405 = data404["at-speed"];
                const _errs1232 = errors;
                let valid332 = false;
                const _errs1233 = errors;
                if (!(typeof data405 == "number" && (!(data405 % 1) && !isNaN(data405)) && isFinite(data405))) {
                  const err1066 = { instancePath: instancePath + "/machine/signals/at-speed", schemaPath: "#/properties/machine/properties/signals/properties/at-speed/anyOf/0/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err1066];
                  } else {
                    vErrors.push(err1066);
                  }
                  errors++;
                }
                if (typeof data405 == "number" && isFinite(data405)) {
                  if (data405 > 9999 || isNaN(data405)) {
                    const err1067 = { instancePath: instancePath + "/machine/signals/at-speed", schemaPath: "#/properties/machine/properties/signals/properties/at-speed/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 9999 }, message: "must be <= 9999" };
                    if (vErrors === null) {
                      vErrors = [err1067];
                    } else {
                      vErrors.push(err1067);
                    }
                    errors++;
                  }
                  if (data405 < 0 || isNaN(data405)) {
                    const err1068 = { instancePath: instancePath + "/machine/signals/at-speed", schemaPath: "#/properties/machine/properties/signals/properties/at-speed/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err1068];
                    } else {
                      vErrors.push(err1068);
                    }
                    errors++;
                  }
                }
                var _valid42 = _errs1233 === errors;
                valid332 = valid332 || _valid42;
                const _errs1235 = errors;
                if (!validate21(data405, { instancePath: instancePath + "/machine/signals/at-speed", parentData: data404, parentDataProperty: "at-speed", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate21.errors : vErrors.concat(validate21.errors);
                  errors = vErrors.length;
                }
                var _valid42 = _errs1235 === errors;
                valid332 = valid332 || _valid42;
                if (!valid332) {
                  const err1069 = { instancePath: instancePath + "/machine/signals/at-speed", schemaPath: "#/properties/machine/properties/signals/properties/at-speed/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err1069];
                  } else {
                    vErrors.push(err1069);
                  }
                  errors++;
                } else {
                  errors = _errs1232;
                  if (vErrors !== null) {
                    if (_errs1232) {
                      vErrors.length = _errs1232;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
              if (data404.stopped !== void 0) {
                let data406 = data404.stopped;
                const _errs1237 = errors;
                let valid333 = false;
                const _errs1238 = errors;
                if (!(typeof data406 == "number" && (!(data406 % 1) && !isNaN(data406)) && isFinite(data406))) {
                  const err1070 = { instancePath: instancePath + "/machine/signals/stopped", schemaPath: "#/properties/machine/properties/signals/properties/stopped/anyOf/0/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err1070];
                  } else {
                    vErrors.push(err1070);
                  }
                  errors++;
                }
                if (typeof data406 == "number" && isFinite(data406)) {
                  if (data406 > 9999 || isNaN(data406)) {
                    const err1071 = { instancePath: instancePath + "/machine/signals/stopped", schemaPath: "#/properties/machine/properties/signals/properties/stopped/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 9999 }, message: "must be <= 9999" };
                    if (vErrors === null) {
                      vErrors = [err1071];
                    } else {
                      vErrors.push(err1071);
                    }
                    errors++;
                  }
                  if (data406 < 0 || isNaN(data406)) {
                    const err1072 = { instancePath: instancePath + "/machine/signals/stopped", schemaPath: "#/properties/machine/properties/signals/properties/stopped/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err1072];
                    } else {
                      vErrors.push(err1072);
                    }
                    errors++;
                  }
                }
                var _valid43 = _errs1238 === errors;
                valid333 = valid333 || _valid43;
                const _errs1240 = errors;
                if (!validate21(data406, { instancePath: instancePath + "/machine/signals/stopped", parentData: data404, parentDataProperty: "stopped", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate21.errors : vErrors.concat(validate21.errors);
                  errors = vErrors.length;
                }
                var _valid43 = _errs1240 === errors;
                valid333 = valid333 || _valid43;
                if (!valid333) {
                  const err1073 = { instancePath: instancePath + "/machine/signals/stopped", schemaPath: "#/properties/machine/properties/signals/properties/stopped/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err1073];
                  } else {
                    vErrors.push(err1073);
                  }
                  errors++;
                } else {
                  errors = _errs1237;
                  if (vErrors !== null) {
                    if (_errs1237) {
                      vErrors.length = _errs1237;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
              if (data404.released !== void 0) {
                let data407 = data404.released;
                const _errs1242 = errors;
                let valid334 = false;
                const _errs1243 = errors;
                if (!(typeof data407 == "number" && (!(data407 % 1) && !isNaN(data407)) && isFinite(data407))) {
                  const err1074 = { instancePath: instancePath + "/machine/signals/released", schemaPath: "#/properties/machine/properties/signals/properties/released/anyOf/0/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err1074];
                  } else {
                    vErrors.push(err1074);
                  }
                  errors++;
                }
                if (typeof data407 == "number" && isFinite(data407)) {
                  if (data407 > 9999 || isNaN(data407)) {
                    const err1075 = { instancePath: instancePath + "/machine/signals/released", schemaPath: "#/properties/machine/properties/signals/properties/released/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 9999 }, message: "must be <= 9999" };
                    if (vErrors === null) {
                      vErrors = [err1075];
                    } else {
                      vErrors.push(err1075);
                    }
                    errors++;
                  }
                  if (data407 < 0 || isNaN(data407)) {
                    const err1076 = { instancePath: instancePath + "/machine/signals/released", schemaPath: "#/properties/machine/properties/signals/properties/released/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err1076];
                    } else {
                      vErrors.push(err1076);
                    }
                    errors++;
                  }
                }
                var _valid44 = _errs1243 === errors;
                valid334 = valid334 || _valid44;
                const _errs1245 = errors;
                if (!validate21(data407, { instancePath: instancePath + "/machine/signals/released", parentData: data404, parentDataProperty: "released", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate21.errors : vErrors.concat(validate21.errors);
                  errors = vErrors.length;
                }
                var _valid44 = _errs1245 === errors;
                valid334 = valid334 || _valid44;
                if (!valid334) {
                  const err1077 = { instancePath: instancePath + "/machine/signals/released", schemaPath: "#/properties/machine/properties/signals/properties/released/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err1077];
                  } else {
                    vErrors.push(err1077);
                  }
                  errors++;
                } else {
                  errors = _errs1242;
                  if (vErrors !== null) {
                    if (_errs1242) {
                      vErrors.length = _errs1242;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
              if (data404.clamped !== void 0) {
                let data408 = data404.clamped;
                const _errs1247 = errors;
                let valid335 = false;
                const _errs1248 = errors;
                if (!(typeof data408 == "number" && (!(data408 % 1) && !isNaN(data408)) && isFinite(data408))) {
                  const err1078 = { instancePath: instancePath + "/machine/signals/clamped", schemaPath: "#/properties/machine/properties/signals/properties/clamped/anyOf/0/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err1078];
                  } else {
                    vErrors.push(err1078);
                  }
                  errors++;
                }
                if (typeof data408 == "number" && isFinite(data408)) {
                  if (data408 > 9999 || isNaN(data408)) {
                    const err1079 = { instancePath: instancePath + "/machine/signals/clamped", schemaPath: "#/properties/machine/properties/signals/properties/clamped/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 9999 }, message: "must be <= 9999" };
                    if (vErrors === null) {
                      vErrors = [err1079];
                    } else {
                      vErrors.push(err1079);
                    }
                    errors++;
                  }
                  if (data408 < 0 || isNaN(data408)) {
                    const err1080 = { instancePath: instancePath + "/machine/signals/clamped", schemaPath: "#/properties/machine/properties/signals/properties/clamped/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err1080];
                    } else {
                      vErrors.push(err1080);
                    }
                    errors++;
                  }
                }
                var _valid45 = _errs1248 === errors;
                valid335 = valid335 || _valid45;
                const _errs1250 = errors;
                if (!validate21(data408, { instancePath: instancePath + "/machine/signals/clamped", parentData: data404, parentDataProperty: "clamped", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate21.errors : vErrors.concat(validate21.errors);
                  errors = vErrors.length;
                }
                var _valid45 = _errs1250 === errors;
                valid335 = valid335 || _valid45;
                if (!valid335) {
                  const err1081 = { instancePath: instancePath + "/machine/signals/clamped", schemaPath: "#/properties/machine/properties/signals/properties/clamped/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err1081];
                  } else {
                    vErrors.push(err1081);
                  }
                  errors++;
                } else {
                  errors = _errs1247;
                  if (vErrors !== null) {
                    if (_errs1247) {
                      vErrors.length = _errs1247;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
              if (data404["tool-present"] !== void 0) {
                let data409 = data404["tool-present"];
                const _errs1252 = errors;
                let valid336 = false;
                const _errs1253 = errors;
                if (!(typeof data409 == "number" && (!(data409 % 1) && !isNaN(data409)) && isFinite(data409))) {
                  const err1082 = { instancePath: instancePath + "/machine/signals/tool-present", schemaPath: "#/properties/machine/properties/signals/properties/tool-present/anyOf/0/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err1082];
                  } else {
                    vErrors.push(err1082);
                  }
                  errors++;
                }
                if (typeof data409 == "number" && isFinite(data409)) {
                  if (data409 > 9999 || isNaN(data409)) {
                    const err1083 = { instancePath: instancePath + "/machine/signals/tool-present", schemaPath: "#/properties/machine/properties/signals/properties/tool-present/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 9999 }, message: "must be <= 9999" };
                    if (vErrors === null) {
                      vErrors = [err1083];
                    } else {
                      vErrors.push(err1083);
                    }
                    errors++;
                  }
                  if (data409 < 0 || isNaN(data409)) {
                    const err1084 = { instancePath: instancePath + "/machine/signals/tool-present", schemaPath: "#/properties/machine/properties/signals/properties/tool-present/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err1084];
                    } else {
                      vErrors.push(err1084);
                    }
                    errors++;
                  }
                }
                var _valid46 = _errs1253 === errors;
                valid336 = valid336 || _valid46;
                const _errs1255 = errors;
                if (!validate21(data409, { instancePath: instancePath + "/machine/signals/tool-present", parentData: data404, parentDataProperty: "tool-present", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate21.errors : vErrors.concat(validate21.errors);
                  errors = vErrors.length;
                }
                var _valid46 = _errs1255 === errors;
                valid336 = valid336 || _valid46;
                if (!valid336) {
                  const err1085 = { instancePath: instancePath + "/machine/signals/tool-present", schemaPath: "#/properties/machine/properties/signals/properties/tool-present/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err1085];
                  } else {
                    vErrors.push(err1085);
                  }
                  errors++;
                } else {
                  errors = _errs1252;
                  if (vErrors !== null) {
                    if (_errs1252) {
                      vErrors.length = _errs1252;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
              if (data404.air !== void 0) {
                let data410 = data404.air;
                const _errs1257 = errors;
                let valid337 = false;
                const _errs1258 = errors;
                if (!(typeof data410 == "number" && (!(data410 % 1) && !isNaN(data410)) && isFinite(data410))) {
                  const err1086 = { instancePath: instancePath + "/machine/signals/air", schemaPath: "#/properties/machine/properties/signals/properties/air/anyOf/0/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err1086];
                  } else {
                    vErrors.push(err1086);
                  }
                  errors++;
                }
                if (typeof data410 == "number" && isFinite(data410)) {
                  if (data410 > 9999 || isNaN(data410)) {
                    const err1087 = { instancePath: instancePath + "/machine/signals/air", schemaPath: "#/properties/machine/properties/signals/properties/air/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 9999 }, message: "must be <= 9999" };
                    if (vErrors === null) {
                      vErrors = [err1087];
                    } else {
                      vErrors.push(err1087);
                    }
                    errors++;
                  }
                  if (data410 < 0 || isNaN(data410)) {
                    const err1088 = { instancePath: instancePath + "/machine/signals/air", schemaPath: "#/properties/machine/properties/signals/properties/air/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err1088];
                    } else {
                      vErrors.push(err1088);
                    }
                    errors++;
                  }
                }
                var _valid47 = _errs1258 === errors;
                valid337 = valid337 || _valid47;
                const _errs1260 = errors;
                if (!validate21(data410, { instancePath: instancePath + "/machine/signals/air", parentData: data404, parentDataProperty: "air", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate21.errors : vErrors.concat(validate21.errors);
                  errors = vErrors.length;
                }
                var _valid47 = _errs1260 === errors;
                valid337 = valid337 || _valid47;
                if (!valid337) {
                  const err1089 = { instancePath: instancePath + "/machine/signals/air", schemaPath: "#/properties/machine/properties/signals/properties/air/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err1089];
                  } else {
                    vErrors.push(err1089);
                  }
                  errors++;
                } else {
                  errors = _errs1257;
                  if (vErrors !== null) {
                    if (_errs1257) {
                      vErrors.length = _errs1257;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
              if (data404["hold-down"] !== void 0) {
                let data411 = data404["hold-down"];
                const _errs1262 = errors;
                let valid338 = false;
                const _errs1263 = errors;
                if (!(typeof data411 == "number" && (!(data411 % 1) && !isNaN(data411)) && isFinite(data411))) {
                  const err1090 = { instancePath: instancePath + "/machine/signals/hold-down", schemaPath: "#/properties/machine/properties/signals/properties/hold-down/anyOf/0/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err1090];
                  } else {
                    vErrors.push(err1090);
                  }
                  errors++;
                }
                if (typeof data411 == "number" && isFinite(data411)) {
                  if (data411 > 9999 || isNaN(data411)) {
                    const err1091 = { instancePath: instancePath + "/machine/signals/hold-down", schemaPath: "#/properties/machine/properties/signals/properties/hold-down/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 9999 }, message: "must be <= 9999" };
                    if (vErrors === null) {
                      vErrors = [err1091];
                    } else {
                      vErrors.push(err1091);
                    }
                    errors++;
                  }
                  if (data411 < 0 || isNaN(data411)) {
                    const err1092 = { instancePath: instancePath + "/machine/signals/hold-down", schemaPath: "#/properties/machine/properties/signals/properties/hold-down/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err1092];
                    } else {
                      vErrors.push(err1092);
                    }
                    errors++;
                  }
                }
                var _valid48 = _errs1263 === errors;
                valid338 = valid338 || _valid48;
                const _errs1265 = errors;
                if (!validate21(data411, { instancePath: instancePath + "/machine/signals/hold-down", parentData: data404, parentDataProperty: "hold-down", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate21.errors : vErrors.concat(validate21.errors);
                  errors = vErrors.length;
                }
                var _valid48 = _errs1265 === errors;
                valid338 = valid338 || _valid48;
                if (!valid338) {
                  const err1093 = { instancePath: instancePath + "/machine/signals/hold-down", schemaPath: "#/properties/machine/properties/signals/properties/hold-down/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err1093];
                  } else {
                    vErrors.push(err1093);
                  }
                  errors++;
                } else {
                  errors = _errs1262;
                  if (vErrors !== null) {
                    if (_errs1262) {
                      vErrors.length = _errs1262;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
            } else {
              const err1094 = { instancePath: instancePath + "/machine/signals", schemaPath: "#/properties/machine/properties/signals/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err1094];
              } else {
                vErrors.push(err1094);
              }
              errors++;
            }
          }
          if (data383.waits !== void 0) {
            let data412 = data383.waits;
            if (data412 && typeof data412 == "object" && !Array.isArray(data412)) {
              for (const key59 in data412) {
                if (!(key59 === "on-timeout")) {
                  const err1095 = { instancePath: instancePath + "/machine/waits", schemaPath: "#/properties/machine/properties/waits/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key59 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err1095];
                  } else {
                    vErrors.push(err1095);
                  }
                  errors++;
                }
              }
              if (data412["on-timeout"] !== void 0) {
                let data413 = data412["on-timeout"];
                if (typeof data413 !== "string") {
                  const err1096 = { instancePath: instancePath + "/machine/waits/on-timeout", schemaPath: "#/properties/machine/properties/waits/properties/on-timeout/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1096];
                  } else {
                    vErrors.push(err1096);
                  }
                  errors++;
                }
                if (!(data413 === "alarm" || data413 === "continues")) {
                  const err1097 = { instancePath: instancePath + "/machine/waits/on-timeout", schemaPath: "#/properties/machine/properties/waits/properties/on-timeout/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties.waits.properties["on-timeout"].enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1097];
                  } else {
                    vErrors.push(err1097);
                  }
                  errors++;
                }
              }
            } else {
              const err1098 = { instancePath: instancePath + "/machine/waits", schemaPath: "#/properties/machine/properties/waits/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err1098];
              } else {
                vErrors.push(err1098);
              }
              errors++;
            }
          }
          if (data383.swap !== void 0) {
            let data414 = data383.swap;
            if (typeof data414 !== "string") {
              const err1099 = { instancePath: instancePath + "/machine/swap", schemaPath: "#/properties/machine/properties/swap/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err1099];
              } else {
                vErrors.push(err1099);
              }
              errors++;
            }
            if (!(data414 === "controller" || data414 === "rack" || data414 === "operator" || data414 === "none")) {
              const err1100 = { instancePath: instancePath + "/machine/swap", schemaPath: "#/properties/machine/properties/swap/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties.swap.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err1100];
              } else {
                vErrors.push(err1100);
              }
              errors++;
            }
          }
          if (data383["change-effects"] !== void 0) {
            let data415 = data383["change-effects"];
            if (data415 && typeof data415 == "object" && !Array.isArray(data415)) {
              for (const key60 in data415) {
                if (!(key60 === "position" || key60 === "spindle" || key60 === "coolant" || key60 === "length-offset")) {
                  const err1101 = { instancePath: instancePath + "/machine/change-effects", schemaPath: "#/properties/machine/properties/change-effects/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key60 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err1101];
                  } else {
                    vErrors.push(err1101);
                  }
                  errors++;
                }
              }
              if (data415.position !== void 0) {
                let data416 = data415.position;
                if (typeof data416 !== "string") {
                  const err1102 = { instancePath: instancePath + "/machine/change-effects/position", schemaPath: "#/properties/machine/properties/change-effects/properties/position/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1102];
                  } else {
                    vErrors.push(err1102);
                  }
                  errors++;
                }
                if (!(data416 === "unchanged" || data416 === "unknown" || data416 === "swap-height")) {
                  const err1103 = { instancePath: instancePath + "/machine/change-effects/position", schemaPath: "#/properties/machine/properties/change-effects/properties/position/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties["change-effects"].properties.position.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1103];
                  } else {
                    vErrors.push(err1103);
                  }
                  errors++;
                }
              }
              if (data415.spindle !== void 0) {
                let data417 = data415.spindle;
                if (typeof data417 !== "string") {
                  const err1104 = { instancePath: instancePath + "/machine/change-effects/spindle", schemaPath: "#/properties/machine/properties/change-effects/properties/spindle/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1104];
                  } else {
                    vErrors.push(err1104);
                  }
                  errors++;
                }
                if (!(data417 === "unchanged" || data417 === "stopped" || data417 === "restarts")) {
                  const err1105 = { instancePath: instancePath + "/machine/change-effects/spindle", schemaPath: "#/properties/machine/properties/change-effects/properties/spindle/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties["change-effects"].properties.spindle.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1105];
                  } else {
                    vErrors.push(err1105);
                  }
                  errors++;
                }
              }
              if (data415.coolant !== void 0) {
                let data418 = data415.coolant;
                if (typeof data418 !== "string") {
                  const err1106 = { instancePath: instancePath + "/machine/change-effects/coolant", schemaPath: "#/properties/machine/properties/change-effects/properties/coolant/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1106];
                  } else {
                    vErrors.push(err1106);
                  }
                  errors++;
                }
                if (!(data418 === "unchanged" || data418 === "off")) {
                  const err1107 = { instancePath: instancePath + "/machine/change-effects/coolant", schemaPath: "#/properties/machine/properties/change-effects/properties/coolant/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties["change-effects"].properties.coolant.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1107];
                  } else {
                    vErrors.push(err1107);
                  }
                  errors++;
                }
              }
              if (data415["length-offset"] !== void 0) {
                let data419 = data415["length-offset"];
                if (typeof data419 !== "string") {
                  const err1108 = { instancePath: instancePath + "/machine/change-effects/length-offset", schemaPath: "#/properties/machine/properties/change-effects/properties/length-offset/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1108];
                  } else {
                    vErrors.push(err1108);
                  }
                  errors++;
                }
                if (!(data419 === "unchanged" || data419 === "active" || data419 === "cancelled")) {
                  const err1109 = { instancePath: instancePath + "/machine/change-effects/length-offset", schemaPath: "#/properties/machine/properties/change-effects/properties/length-offset/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties["change-effects"].properties["length-offset"].enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1109];
                  } else {
                    vErrors.push(err1109);
                  }
                  errors++;
                }
              }
            } else {
              const err1110 = { instancePath: instancePath + "/machine/change-effects", schemaPath: "#/properties/machine/properties/change-effects/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err1110];
              } else {
                vErrors.push(err1110);
              }
              errors++;
            }
          }
          if (data383["measure-effects"] !== void 0) {
            let data420 = data383["measure-effects"];
            if (data420 && typeof data420 == "object" && !Array.isArray(data420)) {
              for (const key61 in data420) {
                if (!(key61 === "position" || key61 === "spindle" || key61 === "coolant" || key61 === "length-offset")) {
                  const err1111 = { instancePath: instancePath + "/machine/measure-effects", schemaPath: "#/properties/machine/properties/measure-effects/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key61 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err1111];
                  } else {
                    vErrors.push(err1111);
                  }
                  errors++;
                }
              }
              if (data420.position !== void 0) {
                let data421 = data420.position;
                if (typeof data421 !== "string") {
                  const err1112 = { instancePath: instancePath + "/machine/measure-effects/position", schemaPath: "#/properties/machine/properties/measure-effects/properties/position/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1112];
                  } else {
                    vErrors.push(err1112);
                  }
                  errors++;
                }
                if (!(data421 === "unchanged" || data421 === "unknown" || data421 === "swap-height")) {
                  const err1113 = { instancePath: instancePath + "/machine/measure-effects/position", schemaPath: "#/properties/machine/properties/measure-effects/properties/position/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties["measure-effects"].properties.position.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1113];
                  } else {
                    vErrors.push(err1113);
                  }
                  errors++;
                }
              }
              if (data420.spindle !== void 0) {
                let data422 = data420.spindle;
                if (typeof data422 !== "string") {
                  const err1114 = { instancePath: instancePath + "/machine/measure-effects/spindle", schemaPath: "#/properties/machine/properties/measure-effects/properties/spindle/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1114];
                  } else {
                    vErrors.push(err1114);
                  }
                  errors++;
                }
                if (!(data422 === "unchanged" || data422 === "stopped")) {
                  const err1115 = { instancePath: instancePath + "/machine/measure-effects/spindle", schemaPath: "#/properties/machine/properties/measure-effects/properties/spindle/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties["measure-effects"].properties.spindle.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1115];
                  } else {
                    vErrors.push(err1115);
                  }
                  errors++;
                }
              }
              if (data420.coolant !== void 0) {
                let data423 = data420.coolant;
                if (typeof data423 !== "string") {
                  const err1116 = { instancePath: instancePath + "/machine/measure-effects/coolant", schemaPath: "#/properties/machine/properties/measure-effects/properties/coolant/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1116];
                  } else {
                    vErrors.push(err1116);
                  }
                  errors++;
                }
                if (!(data423 === "unchanged" || data423 === "off")) {
                  const err1117 = { instancePath: instancePath + "/machine/measure-effects/coolant", schemaPath: "#/properties/machine/properties/measure-effects/properties/coolant/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties["measure-effects"].properties.coolant.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1117];
                  } else {
                    vErrors.push(err1117);
                  }
                  errors++;
                }
              }
              if (data420["length-offset"] !== void 0) {
                let data424 = data420["length-offset"];
                if (typeof data424 !== "string") {
                  const err1118 = { instancePath: instancePath + "/machine/measure-effects/length-offset", schemaPath: "#/properties/machine/properties/measure-effects/properties/length-offset/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1118];
                  } else {
                    vErrors.push(err1118);
                  }
                  errors++;
                }
                if (!(data424 === "unchanged" || data424 === "active" || data424 === "cancelled")) {
                  const err1119 = { instancePath: instancePath + "/machine/measure-effects/length-offset", schemaPath: "#/properties/machine/properties/measure-effects/properties/length-offset/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties["measure-effects"].properties["length-offset"].enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1119];
                  } else {
                    vErrors.push(err1119);
                  }
                  errors++;
                }
              }
            } else {
              const err1120 = { instancePath: instancePath + "/machine/measure-effects", schemaPath: "#/properties/machine/properties/measure-effects/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err1120];
              } else {
                vErrors.push(err1120);
              }
              errors++;
            }
          }
          if (data383.retract !== void 0) {
            let data425 = data383.retract;
            if (data425 && typeof data425 == "object" && !Array.isArray(data425)) {
              for (const key62 in data425) {
                if (!(key62 === "by" || key62 === "z" || key62 === "acts-on" || key62 === "cancel-length-first" || key62 === "intermediate" || key62 === "change-position")) {
                  const err1121 = { instancePath: instancePath + "/machine/retract", schemaPath: "#/properties/machine/properties/retract/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key62 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err1121];
                  } else {
                    vErrors.push(err1121);
                  }
                  errors++;
                }
              }
              if (data425.by !== void 0) {
                let data426 = data425.by;
                if (typeof data426 !== "string") {
                  const err1122 = { instancePath: instancePath + "/machine/retract/by", schemaPath: "#/properties/machine/properties/retract/properties/by/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1122];
                  } else {
                    vErrors.push(err1122);
                  }
                  errors++;
                }
                if (!(data426 === "machine-move" || data426 === "reference-return" || data426 === "clearance")) {
                  const err1123 = { instancePath: instancePath + "/machine/retract/by", schemaPath: "#/properties/machine/properties/retract/properties/by/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties.retract.properties.by.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1123];
                  } else {
                    vErrors.push(err1123);
                  }
                  errors++;
                }
              }
              if (data425.z !== void 0) {
                let data427 = data425.z;
                const _errs1302 = errors;
                let valid344 = false;
                const _errs1303 = errors;
                if (typeof data427 == "number" && isFinite(data427)) {
                  if (data427 > 1e6 || isNaN(data427)) {
                    const err1124 = { instancePath: instancePath + "/machine/retract/z", schemaPath: "#/$defs/length/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                    if (vErrors === null) {
                      vErrors = [err1124];
                    } else {
                      vErrors.push(err1124);
                    }
                    errors++;
                  }
                  if (data427 < -1e6 || isNaN(data427)) {
                    const err1125 = { instancePath: instancePath + "/machine/retract/z", schemaPath: "#/$defs/length/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: -1e6 }, message: "must be >= -1000000" };
                    if (vErrors === null) {
                      vErrors = [err1125];
                    } else {
                      vErrors.push(err1125);
                    }
                    errors++;
                  }
                } else {
                  const err1126 = { instancePath: instancePath + "/machine/retract/z", schemaPath: "#/$defs/length/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                  if (vErrors === null) {
                    vErrors = [err1126];
                  } else {
                    vErrors.push(err1126);
                  }
                  errors++;
                }
                var _valid49 = _errs1303 === errors;
                valid344 = valid344 || _valid49;
                const _errs1305 = errors;
                if (typeof data427 === "string") {
                  if (!pattern26.test(data427)) {
                    const err1127 = { instancePath: instancePath + "/machine/retract/z", schemaPath: "#/$defs/length/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }, message: 'must match pattern "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$"' };
                    if (vErrors === null) {
                      vErrors = [err1127];
                    } else {
                      vErrors.push(err1127);
                    }
                    errors++;
                  }
                } else {
                  const err1128 = { instancePath: instancePath + "/machine/retract/z", schemaPath: "#/$defs/length/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1128];
                  } else {
                    vErrors.push(err1128);
                  }
                  errors++;
                }
                var _valid49 = _errs1305 === errors;
                valid344 = valid344 || _valid49;
                if (!valid344) {
                  const err1129 = { instancePath: instancePath + "/machine/retract/z", schemaPath: "#/$defs/length/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err1129];
                  } else {
                    vErrors.push(err1129);
                  }
                  errors++;
                } else {
                  errors = _errs1302;
                  if (vErrors !== null) {
                    if (_errs1302) {
                      vErrors.length = _errs1302;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
              if (data425["acts-on"] !== void 0) {
                let data428 = data425["acts-on"];
                if (typeof data428 !== "string") {
                  const err1130 = { instancePath: instancePath + "/machine/retract/acts-on", schemaPath: "#/properties/machine/properties/retract/properties/acts-on/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1130];
                  } else {
                    vErrors.push(err1130);
                  }
                  errors++;
                }
                if (!(data428 === "spindle-nose" || data428 === "tool-tip")) {
                  const err1131 = { instancePath: instancePath + "/machine/retract/acts-on", schemaPath: "#/properties/machine/properties/retract/properties/acts-on/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties.retract.properties["acts-on"].enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1131];
                  } else {
                    vErrors.push(err1131);
                  }
                  errors++;
                }
              }
              if (data425["cancel-length-first"] !== void 0) {
                let data429 = data425["cancel-length-first"];
                if (typeof data429 !== "string") {
                  const err1132 = { instancePath: instancePath + "/machine/retract/cancel-length-first", schemaPath: "#/$defs/yesNo/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1132];
                  } else {
                    vErrors.push(err1132);
                  }
                  errors++;
                }
                if (!(data429 === "yes" || data429 === "no")) {
                  const err1133 = { instancePath: instancePath + "/machine/retract/cancel-length-first", schemaPath: "#/$defs/yesNo/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1133];
                  } else {
                    vErrors.push(err1133);
                  }
                  errors++;
                }
              }
              if (data425.intermediate !== void 0) {
                let data430 = data425.intermediate;
                if (typeof data430 !== "string") {
                  const err1134 = { instancePath: instancePath + "/machine/retract/intermediate", schemaPath: "#/properties/machine/properties/retract/properties/intermediate/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1134];
                  } else {
                    vErrors.push(err1134);
                  }
                  errors++;
                }
                if (!(data430 === "none" || data430 === "incremental-zero")) {
                  const err1135 = { instancePath: instancePath + "/machine/retract/intermediate", schemaPath: "#/properties/machine/properties/retract/properties/intermediate/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties.retract.properties.intermediate.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1135];
                  } else {
                    vErrors.push(err1135);
                  }
                  errors++;
                }
              }
              if (data425["change-position"] !== void 0) {
                if (!validate29(data425["change-position"], { instancePath: instancePath + "/machine/retract/change-position", parentData: data425, parentDataProperty: "change-position", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate29.errors : vErrors.concat(validate29.errors);
                  errors = vErrors.length;
                }
              }
            } else {
              const err1136 = { instancePath: instancePath + "/machine/retract", schemaPath: "#/properties/machine/properties/retract/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err1136];
              } else {
                vErrors.push(err1136);
              }
              errors++;
            }
          }
          if (data383["length-offset"] !== void 0) {
            let data432 = data383["length-offset"];
            if (data432 && typeof data432 == "object" && !Array.isArray(data432)) {
              for (const key63 in data432) {
                if (!(key63 === "form" || key63 === "select-moves" || key63 === "cancel-moves")) {
                  const err1137 = { instancePath: instancePath + "/machine/length-offset", schemaPath: "#/properties/machine/properties/length-offset/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key63 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err1137];
                  } else {
                    vErrors.push(err1137);
                  }
                  errors++;
                }
              }
              if (data432.form !== void 0) {
                let data433 = data432.form;
                if (typeof data433 !== "string") {
                  const err1138 = { instancePath: instancePath + "/machine/length-offset/form", schemaPath: "#/properties/machine/properties/length-offset/properties/form/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1138];
                  } else {
                    vErrors.push(err1138);
                  }
                  errors++;
                }
                if (!(data433 === "with-first-z" || data433 === "own-block" || data433 === "in-tool-word" || data433 === "none")) {
                  const err1139 = { instancePath: instancePath + "/machine/length-offset/form", schemaPath: "#/properties/machine/properties/length-offset/properties/form/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties["length-offset"].properties.form.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1139];
                  } else {
                    vErrors.push(err1139);
                  }
                  errors++;
                }
              }
              if (data432["select-moves"] !== void 0) {
                let data434 = data432["select-moves"];
                if (typeof data434 !== "string") {
                  const err1140 = { instancePath: instancePath + "/machine/length-offset/select-moves", schemaPath: "#/$defs/yesNo/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1140];
                  } else {
                    vErrors.push(err1140);
                  }
                  errors++;
                }
                if (!(data434 === "yes" || data434 === "no")) {
                  const err1141 = { instancePath: instancePath + "/machine/length-offset/select-moves", schemaPath: "#/$defs/yesNo/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1141];
                  } else {
                    vErrors.push(err1141);
                  }
                  errors++;
                }
              }
              if (data432["cancel-moves"] !== void 0) {
                let data435 = data432["cancel-moves"];
                if (typeof data435 !== "string") {
                  const err1142 = { instancePath: instancePath + "/machine/length-offset/cancel-moves", schemaPath: "#/$defs/yesNo/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1142];
                  } else {
                    vErrors.push(err1142);
                  }
                  errors++;
                }
                if (!(data435 === "yes" || data435 === "no")) {
                  const err1143 = { instancePath: instancePath + "/machine/length-offset/cancel-moves", schemaPath: "#/$defs/yesNo/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1143];
                  } else {
                    vErrors.push(err1143);
                  }
                  errors++;
                }
              }
            } else {
              const err1144 = { instancePath: instancePath + "/machine/length-offset", schemaPath: "#/properties/machine/properties/length-offset/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err1144];
              } else {
                vErrors.push(err1144);
              }
              errors++;
            }
          }
          if (data383.lengths !== void 0) {
            let data436 = data383.lengths;
            if (typeof data436 !== "string") {
              const err1145 = { instancePath: instancePath + "/machine/lengths", schemaPath: "#/properties/machine/properties/lengths/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err1145];
              } else {
                vErrors.push(err1145);
              }
              errors++;
            }
            if (!(data436 === "table" || data436 === "measured" || data436 === "operator")) {
              const err1146 = { instancePath: instancePath + "/machine/lengths", schemaPath: "#/properties/machine/properties/lengths/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties.lengths.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err1146];
              } else {
                vErrors.push(err1146);
              }
              errors++;
            }
          }
          if (data383.drawbar !== void 0) {
            let data437 = data383.drawbar;
            const _errs1329 = errors;
            let valid349 = false;
            const _errs1330 = errors;
            if (typeof data437 !== "string") {
              const err1147 = { instancePath: instancePath + "/machine/drawbar", schemaPath: "#/properties/machine/properties/drawbar/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err1147];
              } else {
                vErrors.push(err1147);
              }
              errors++;
            }
            if ("none" !== data437) {
              const err1148 = { instancePath: instancePath + "/machine/drawbar", schemaPath: "#/properties/machine/properties/drawbar/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
              if (vErrors === null) {
                vErrors = [err1148];
              } else {
                vErrors.push(err1148);
              }
              errors++;
            }
            var _valid50 = _errs1330 === errors;
            valid349 = valid349 || _valid50;
            const _errs1332 = errors;
            if (data437 && typeof data437 == "object" && !Array.isArray(data437)) {
              for (const key64 in data437) {
                if (!(key64 === "travels" || key64 === "taper-air")) {
                  const err1149 = { instancePath: instancePath + "/machine/drawbar", schemaPath: "#/properties/machine/properties/drawbar/anyOf/1/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key64 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err1149];
                  } else {
                    vErrors.push(err1149);
                  }
                  errors++;
                }
              }
              if (data437.travels !== void 0) {
                let data438 = data437.travels;
                if (typeof data438 !== "string") {
                  const err1150 = { instancePath: instancePath + "/machine/drawbar/travels", schemaPath: "#/properties/machine/properties/drawbar/anyOf/1/properties/travels/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1150];
                  } else {
                    vErrors.push(err1150);
                  }
                  errors++;
                }
                if (!(data438 === "clamped" || data438 === "released")) {
                  const err1151 = { instancePath: instancePath + "/machine/drawbar/travels", schemaPath: "#/properties/machine/properties/drawbar/anyOf/1/properties/travels/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties.drawbar.anyOf[1].properties.travels.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1151];
                  } else {
                    vErrors.push(err1151);
                  }
                  errors++;
                }
              }
              if (data437["taper-air"] !== void 0) {
                let data439 = data437["taper-air"];
                if (typeof data439 !== "string") {
                  const err1152 = { instancePath: instancePath + "/machine/drawbar/taper-air", schemaPath: "#/$defs/yesNo/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1152];
                  } else {
                    vErrors.push(err1152);
                  }
                  errors++;
                }
                if (!(data439 === "yes" || data439 === "no")) {
                  const err1153 = { instancePath: instancePath + "/machine/drawbar/taper-air", schemaPath: "#/$defs/yesNo/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1153];
                  } else {
                    vErrors.push(err1153);
                  }
                  errors++;
                }
              }
            } else {
              const err1154 = { instancePath: instancePath + "/machine/drawbar", schemaPath: "#/properties/machine/properties/drawbar/anyOf/1/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err1154];
              } else {
                vErrors.push(err1154);
              }
              errors++;
            }
            var _valid50 = _errs1332 === errors;
            valid349 = valid349 || _valid50;
            if (!valid349) {
              const err1155 = { instancePath: instancePath + "/machine/drawbar", schemaPath: "#/properties/machine/properties/drawbar/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err1155];
              } else {
                vErrors.push(err1155);
              }
              errors++;
            } else {
              errors = _errs1329;
              if (vErrors !== null) {
                if (_errs1329) {
                  vErrors.length = _errs1329;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data383.rack !== void 0) {
            let data440 = data383.rack;
            const _errs1341 = errors;
            let valid352 = false;
            const _errs1342 = errors;
            if (typeof data440 !== "string") {
              const err1156 = { instancePath: instancePath + "/machine/rack", schemaPath: "#/properties/machine/properties/rack/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err1156];
              } else {
                vErrors.push(err1156);
              }
              errors++;
            }
            if ("none" !== data440) {
              const err1157 = { instancePath: instancePath + "/machine/rack", schemaPath: "#/properties/machine/properties/rack/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
              if (vErrors === null) {
                vErrors = [err1157];
              } else {
                vErrors.push(err1157);
              }
              errors++;
            }
            var _valid51 = _errs1342 === errors;
            valid352 = valid352 || _valid51;
            const _errs1344 = errors;
            if (data440 && typeof data440 == "object" && !Array.isArray(data440)) {
              for (const key65 in data440) {
                if (!func1.call(schema31.properties.machine.properties.rack.anyOf[1].properties, key65)) {
                  const err1158 = { instancePath: instancePath + "/machine/rack", schemaPath: "#/properties/machine/properties/rack/anyOf/1/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key65 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err1158];
                  } else {
                    vErrors.push(err1158);
                  }
                  errors++;
                }
              }
              if (data440.style !== void 0) {
                let data441 = data440.style;
                if (typeof data441 !== "string") {
                  const err1159 = { instancePath: instancePath + "/machine/rack/style", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/style/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1159];
                  } else {
                    vErrors.push(err1159);
                  }
                  errors++;
                }
                if (!(data441 === "drop-in" || data441 === "slide-in")) {
                  const err1160 = { instancePath: instancePath + "/machine/rack/style", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/style/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties.rack.anyOf[1].properties.style.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1160];
                  } else {
                    vErrors.push(err1160);
                  }
                  errors++;
                }
              }
              if (data440["clear-z"] !== void 0) {
                let data442 = data440["clear-z"];
                const _errs1351 = errors;
                let valid355 = false;
                const _errs1352 = errors;
                if (typeof data442 == "number" && isFinite(data442)) {
                  if (data442 > 1e6 || isNaN(data442)) {
                    const err1161 = { instancePath: instancePath + "/machine/rack/clear-z", schemaPath: "#/$defs/length/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                    if (vErrors === null) {
                      vErrors = [err1161];
                    } else {
                      vErrors.push(err1161);
                    }
                    errors++;
                  }
                  if (data442 < -1e6 || isNaN(data442)) {
                    const err1162 = { instancePath: instancePath + "/machine/rack/clear-z", schemaPath: "#/$defs/length/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: -1e6 }, message: "must be >= -1000000" };
                    if (vErrors === null) {
                      vErrors = [err1162];
                    } else {
                      vErrors.push(err1162);
                    }
                    errors++;
                  }
                } else {
                  const err1163 = { instancePath: instancePath + "/machine/rack/clear-z", schemaPath: "#/$defs/length/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                  if (vErrors === null) {
                    vErrors = [err1163];
                  } else {
                    vErrors.push(err1163);
                  }
                  errors++;
                }
                var _valid52 = _errs1352 === errors;
                valid355 = valid355 || _valid52;
                const _errs1354 = errors;
                if (typeof data442 === "string") {
                  if (!pattern26.test(data442)) {
                    const err1164 = { instancePath: instancePath + "/machine/rack/clear-z", schemaPath: "#/$defs/length/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }, message: 'must match pattern "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$"' };
                    if (vErrors === null) {
                      vErrors = [err1164];
                    } else {
                      vErrors.push(err1164);
                    }
                    errors++;
                  }
                } else {
                  const err1165 = { instancePath: instancePath + "/machine/rack/clear-z", schemaPath: "#/$defs/length/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1165];
                  } else {
                    vErrors.push(err1165);
                  }
                  errors++;
                }
                var _valid52 = _errs1354 === errors;
                valid355 = valid355 || _valid52;
                if (!valid355) {
                  const err1166 = { instancePath: instancePath + "/machine/rack/clear-z", schemaPath: "#/$defs/length/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err1166];
                  } else {
                    vErrors.push(err1166);
                  }
                  errors++;
                } else {
                  errors = _errs1351;
                  if (vErrors !== null) {
                    if (_errs1351) {
                      vErrors.length = _errs1351;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
              if (data440["pocket-z"] !== void 0) {
                let data443 = data440["pocket-z"];
                const _errs1358 = errors;
                let valid357 = false;
                const _errs1359 = errors;
                if (typeof data443 == "number" && isFinite(data443)) {
                  if (data443 > 1e6 || isNaN(data443)) {
                    const err1167 = { instancePath: instancePath + "/machine/rack/pocket-z", schemaPath: "#/$defs/length/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                    if (vErrors === null) {
                      vErrors = [err1167];
                    } else {
                      vErrors.push(err1167);
                    }
                    errors++;
                  }
                  if (data443 < -1e6 || isNaN(data443)) {
                    const err1168 = { instancePath: instancePath + "/machine/rack/pocket-z", schemaPath: "#/$defs/length/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: -1e6 }, message: "must be >= -1000000" };
                    if (vErrors === null) {
                      vErrors = [err1168];
                    } else {
                      vErrors.push(err1168);
                    }
                    errors++;
                  }
                } else {
                  const err1169 = { instancePath: instancePath + "/machine/rack/pocket-z", schemaPath: "#/$defs/length/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                  if (vErrors === null) {
                    vErrors = [err1169];
                  } else {
                    vErrors.push(err1169);
                  }
                  errors++;
                }
                var _valid53 = _errs1359 === errors;
                valid357 = valid357 || _valid53;
                const _errs1361 = errors;
                if (typeof data443 === "string") {
                  if (!pattern26.test(data443)) {
                    const err1170 = { instancePath: instancePath + "/machine/rack/pocket-z", schemaPath: "#/$defs/length/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }, message: 'must match pattern "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$"' };
                    if (vErrors === null) {
                      vErrors = [err1170];
                    } else {
                      vErrors.push(err1170);
                    }
                    errors++;
                  }
                } else {
                  const err1171 = { instancePath: instancePath + "/machine/rack/pocket-z", schemaPath: "#/$defs/length/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1171];
                  } else {
                    vErrors.push(err1171);
                  }
                  errors++;
                }
                var _valid53 = _errs1361 === errors;
                valid357 = valid357 || _valid53;
                if (!valid357) {
                  const err1172 = { instancePath: instancePath + "/machine/rack/pocket-z", schemaPath: "#/$defs/length/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err1172];
                  } else {
                    vErrors.push(err1172);
                  }
                  errors++;
                } else {
                  errors = _errs1358;
                  if (vErrors !== null) {
                    if (_errs1358) {
                      vErrors.length = _errs1358;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
              if (data440["descend-from"] !== void 0) {
                let data444 = data440["descend-from"];
                const _errs1365 = errors;
                let valid359 = false;
                const _errs1366 = errors;
                if (typeof data444 == "number" && isFinite(data444)) {
                  if (data444 > 1e6 || isNaN(data444)) {
                    const err1173 = { instancePath: instancePath + "/machine/rack/descend-from", schemaPath: "#/$defs/length/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                    if (vErrors === null) {
                      vErrors = [err1173];
                    } else {
                      vErrors.push(err1173);
                    }
                    errors++;
                  }
                  if (data444 < -1e6 || isNaN(data444)) {
                    const err1174 = { instancePath: instancePath + "/machine/rack/descend-from", schemaPath: "#/$defs/length/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: -1e6 }, message: "must be >= -1000000" };
                    if (vErrors === null) {
                      vErrors = [err1174];
                    } else {
                      vErrors.push(err1174);
                    }
                    errors++;
                  }
                } else {
                  const err1175 = { instancePath: instancePath + "/machine/rack/descend-from", schemaPath: "#/$defs/length/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                  if (vErrors === null) {
                    vErrors = [err1175];
                  } else {
                    vErrors.push(err1175);
                  }
                  errors++;
                }
                var _valid54 = _errs1366 === errors;
                valid359 = valid359 || _valid54;
                const _errs1368 = errors;
                if (typeof data444 === "string") {
                  if (!pattern26.test(data444)) {
                    const err1176 = { instancePath: instancePath + "/machine/rack/descend-from", schemaPath: "#/$defs/length/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }, message: 'must match pattern "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$"' };
                    if (vErrors === null) {
                      vErrors = [err1176];
                    } else {
                      vErrors.push(err1176);
                    }
                    errors++;
                  }
                } else {
                  const err1177 = { instancePath: instancePath + "/machine/rack/descend-from", schemaPath: "#/$defs/length/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1177];
                  } else {
                    vErrors.push(err1177);
                  }
                  errors++;
                }
                var _valid54 = _errs1368 === errors;
                valid359 = valid359 || _valid54;
                if (!valid359) {
                  const err1178 = { instancePath: instancePath + "/machine/rack/descend-from", schemaPath: "#/$defs/length/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err1178];
                  } else {
                    vErrors.push(err1178);
                  }
                  errors++;
                } else {
                  errors = _errs1365;
                  if (vErrors !== null) {
                    if (_errs1365) {
                      vErrors.length = _errs1365;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
              if (data440["descend-feed"] !== void 0) {
                let data445 = data440["descend-feed"];
                const _errs1372 = errors;
                let valid361 = false;
                const _errs1373 = errors;
                if (typeof data445 == "number" && isFinite(data445)) {
                  if (data445 > 1e6 || isNaN(data445)) {
                    const err1179 = { instancePath: instancePath + "/machine/rack/descend-feed", schemaPath: "#/$defs/feed/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                    if (vErrors === null) {
                      vErrors = [err1179];
                    } else {
                      vErrors.push(err1179);
                    }
                    errors++;
                  }
                  if (data445 <= 0 || isNaN(data445)) {
                    const err1180 = { instancePath: instancePath + "/machine/rack/descend-feed", schemaPath: "#/$defs/feed/anyOf/0/exclusiveMinimum", keyword: "exclusiveMinimum", params: { comparison: ">", limit: 0 }, message: "must be > 0" };
                    if (vErrors === null) {
                      vErrors = [err1180];
                    } else {
                      vErrors.push(err1180);
                    }
                    errors++;
                  }
                } else {
                  const err1181 = { instancePath: instancePath + "/machine/rack/descend-feed", schemaPath: "#/$defs/feed/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                  if (vErrors === null) {
                    vErrors = [err1181];
                  } else {
                    vErrors.push(err1181);
                  }
                  errors++;
                }
                var _valid55 = _errs1373 === errors;
                valid361 = valid361 || _valid55;
                const _errs1375 = errors;
                if (typeof data445 === "string") {
                  if (!pattern10.test(data445)) {
                    const err1182 = { instancePath: instancePath + "/machine/rack/descend-feed", schemaPath: "#/$defs/feed/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^\\d{1,5}(\\.\\d{1,5})? (mm|in)/min$" }, message: 'must match pattern "^\\d{1,5}(\\.\\d{1,5})? (mm|in)/min$"' };
                    if (vErrors === null) {
                      vErrors = [err1182];
                    } else {
                      vErrors.push(err1182);
                    }
                    errors++;
                  }
                } else {
                  const err1183 = { instancePath: instancePath + "/machine/rack/descend-feed", schemaPath: "#/$defs/feed/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1183];
                  } else {
                    vErrors.push(err1183);
                  }
                  errors++;
                }
                var _valid55 = _errs1375 === errors;
                valid361 = valid361 || _valid55;
                if (!valid361) {
                  const err1184 = { instancePath: instancePath + "/machine/rack/descend-feed", schemaPath: "#/$defs/feed/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err1184];
                  } else {
                    vErrors.push(err1184);
                  }
                  errors++;
                } else {
                  errors = _errs1372;
                  if (vErrors !== null) {
                    if (_errs1372) {
                      vErrors.length = _errs1372;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
              if (data440.pockets !== void 0) {
                let data446 = data440.pockets;
                const _errs1378 = errors;
                let valid362 = false;
                const _errs1379 = errors;
                if (data446 && typeof data446 == "object" && !Array.isArray(data446)) {
                  for (const key66 in data446) {
                    if (!(key66 === "first" || key66 === "pitch" || key66 === "count")) {
                      const err1185 = { instancePath: instancePath + "/machine/rack/pockets", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/pockets/anyOf/0/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key66 }, message: "must NOT have additional properties" };
                      if (vErrors === null) {
                        vErrors = [err1185];
                      } else {
                        vErrors.push(err1185);
                      }
                      errors++;
                    }
                  }
                  if (data446.first !== void 0) {
                    if (!validate31(data446.first, { instancePath: instancePath + "/machine/rack/pockets/first", parentData: data446, parentDataProperty: "first", rootData, dynamicAnchors })) {
                      vErrors = vErrors === null ? validate31.errors : vErrors.concat(validate31.errors);
                      errors = vErrors.length;
                    }
                  }
                  if (data446.pitch !== void 0) {
                    if (!validate31(data446.pitch, { instancePath: instancePath + "/machine/rack/pockets/pitch", parentData: data446, parentDataProperty: "pitch", rootData, dynamicAnchors })) {
                      vErrors = vErrors === null ? validate31.errors : vErrors.concat(validate31.errors);
                      errors = vErrors.length;
                    }
                  }
                  if (data446.count !== void 0) {
                    let data449 = data446.count;
                    if (!(typeof data449 == "number" && (!(data449 % 1) && !isNaN(data449)) && isFinite(data449))) {
                      const err1186 = { instancePath: instancePath + "/machine/rack/pockets/count", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/pockets/anyOf/0/properties/count/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                      if (vErrors === null) {
                        vErrors = [err1186];
                      } else {
                        vErrors.push(err1186);
                      }
                      errors++;
                    }
                    if (typeof data449 == "number" && isFinite(data449)) {
                      if (data449 > 200 || isNaN(data449)) {
                        const err1187 = { instancePath: instancePath + "/machine/rack/pockets/count", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/pockets/anyOf/0/properties/count/maximum", keyword: "maximum", params: { comparison: "<=", limit: 200 }, message: "must be <= 200" };
                        if (vErrors === null) {
                          vErrors = [err1187];
                        } else {
                          vErrors.push(err1187);
                        }
                        errors++;
                      }
                      if (data449 < 1 || isNaN(data449)) {
                        const err1188 = { instancePath: instancePath + "/machine/rack/pockets/count", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/pockets/anyOf/0/properties/count/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                        if (vErrors === null) {
                          vErrors = [err1188];
                        } else {
                          vErrors.push(err1188);
                        }
                        errors++;
                      }
                    }
                  }
                } else {
                  const err1189 = { instancePath: instancePath + "/machine/rack/pockets", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/pockets/anyOf/0/type", keyword: "type", params: { type: "object" }, message: "must be object" };
                  if (vErrors === null) {
                    vErrors = [err1189];
                  } else {
                    vErrors.push(err1189);
                  }
                  errors++;
                }
                var _valid56 = _errs1379 === errors;
                valid362 = valid362 || _valid56;
                const _errs1386 = errors;
                if (Array.isArray(data446)) {
                  if (data446.length > 200) {
                    const err1190 = { instancePath: instancePath + "/machine/rack/pockets", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/pockets/anyOf/1/maxItems", keyword: "maxItems", params: { limit: 200 }, message: "must NOT have more than 200 items" };
                    if (vErrors === null) {
                      vErrors = [err1190];
                    } else {
                      vErrors.push(err1190);
                    }
                    errors++;
                  }
                  if (data446.length < 1) {
                    const err1191 = { instancePath: instancePath + "/machine/rack/pockets", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/pockets/anyOf/1/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items" };
                    if (vErrors === null) {
                      vErrors = [err1191];
                    } else {
                      vErrors.push(err1191);
                    }
                    errors++;
                  }
                  const len17 = data446.length;
                  for (let i20 = 0; i20 < len17; i20++) {
                    if (!validate31(data446[i20], { instancePath: instancePath + "/machine/rack/pockets/" + i20, parentData: data446, parentDataProperty: i20, rootData, dynamicAnchors })) {
                      vErrors = vErrors === null ? validate31.errors : vErrors.concat(validate31.errors);
                      errors = vErrors.length;
                    }
                  }
                } else {
                  const err1192 = { instancePath: instancePath + "/machine/rack/pockets", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/pockets/anyOf/1/type", keyword: "type", params: { type: "array" }, message: "must be array" };
                  if (vErrors === null) {
                    vErrors = [err1192];
                  } else {
                    vErrors.push(err1192);
                  }
                  errors++;
                }
                var _valid56 = _errs1386 === errors;
                valid362 = valid362 || _valid56;
                if (!valid362) {
                  const err1193 = { instancePath: instancePath + "/machine/rack/pockets", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/pockets/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err1193];
                  } else {
                    vErrors.push(err1193);
                  }
                  errors++;
                } else {
                  errors = _errs1378;
                  if (vErrors !== null) {
                    if (_errs1378) {
                      vErrors.length = _errs1378;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
              if (data440.zone !== void 0) {
                let data451 = data440.zone;
                if (data451 && typeof data451 == "object" && !Array.isArray(data451)) {
                  for (const key67 in data451) {
                    if (!(key67 === "min" || key67 === "max")) {
                      const err1194 = { instancePath: instancePath + "/machine/rack/zone", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/zone/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key67 }, message: "must NOT have additional properties" };
                      if (vErrors === null) {
                        vErrors = [err1194];
                      } else {
                        vErrors.push(err1194);
                      }
                      errors++;
                    }
                  }
                  if (data451.min !== void 0) {
                    if (!validate29(data451.min, { instancePath: instancePath + "/machine/rack/zone/min", parentData: data451, parentDataProperty: "min", rootData, dynamicAnchors })) {
                      vErrors = vErrors === null ? validate29.errors : vErrors.concat(validate29.errors);
                      errors = vErrors.length;
                    }
                  }
                  if (data451.max !== void 0) {
                    if (!validate29(data451.max, { instancePath: instancePath + "/machine/rack/zone/max", parentData: data451, parentDataProperty: "max", rootData, dynamicAnchors })) {
                      vErrors = vErrors === null ? validate29.errors : vErrors.concat(validate29.errors);
                      errors = vErrors.length;
                    }
                  }
                } else {
                  const err1195 = { instancePath: instancePath + "/machine/rack/zone", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/zone/type", keyword: "type", params: { type: "object" }, message: "must be object" };
                  if (vErrors === null) {
                    vErrors = [err1195];
                  } else {
                    vErrors.push(err1195);
                  }
                  errors++;
                }
              }
              if (data440.slide !== void 0) {
                let data454 = data440.slide;
                if (data454 && typeof data454 == "object" && !Array.isArray(data454)) {
                  for (const key68 in data454) {
                    if (!(key68 === "direction" || key68 === "distance" || key68 === "feed")) {
                      const err1196 = { instancePath: instancePath + "/machine/rack/slide", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/slide/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key68 }, message: "must NOT have additional properties" };
                      if (vErrors === null) {
                        vErrors = [err1196];
                      } else {
                        vErrors.push(err1196);
                      }
                      errors++;
                    }
                  }
                  if (data454.direction !== void 0) {
                    let data455 = data454.direction;
                    if (typeof data455 !== "string") {
                      const err1197 = { instancePath: instancePath + "/machine/rack/slide/direction", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/slide/properties/direction/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                      if (vErrors === null) {
                        vErrors = [err1197];
                      } else {
                        vErrors.push(err1197);
                      }
                      errors++;
                    }
                    if (!(data455 === "+x" || data455 === "-x" || data455 === "+y" || data455 === "-y")) {
                      const err1198 = { instancePath: instancePath + "/machine/rack/slide/direction", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/slide/properties/direction/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties.rack.anyOf[1].properties.slide.properties.direction.enum }, message: "must be equal to one of the allowed values" };
                      if (vErrors === null) {
                        vErrors = [err1198];
                      } else {
                        vErrors.push(err1198);
                      }
                      errors++;
                    }
                  }
                  if (data454.distance !== void 0) {
                    let data456 = data454.distance;
                    const _errs1401 = errors;
                    let valid369 = false;
                    const _errs1402 = errors;
                    if (typeof data456 == "number" && isFinite(data456)) {
                      if (data456 > 1e6 || isNaN(data456)) {
                        const err1199 = { instancePath: instancePath + "/machine/rack/slide/distance", schemaPath: "#/$defs/length/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                        if (vErrors === null) {
                          vErrors = [err1199];
                        } else {
                          vErrors.push(err1199);
                        }
                        errors++;
                      }
                      if (data456 < -1e6 || isNaN(data456)) {
                        const err1200 = { instancePath: instancePath + "/machine/rack/slide/distance", schemaPath: "#/$defs/length/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: -1e6 }, message: "must be >= -1000000" };
                        if (vErrors === null) {
                          vErrors = [err1200];
                        } else {
                          vErrors.push(err1200);
                        }
                        errors++;
                      }
                    } else {
                      const err1201 = { instancePath: instancePath + "/machine/rack/slide/distance", schemaPath: "#/$defs/length/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                      if (vErrors === null) {
                        vErrors = [err1201];
                      } else {
                        vErrors.push(err1201);
                      }
                      errors++;
                    }
                    var _valid57 = _errs1402 === errors;
                    valid369 = valid369 || _valid57;
                    const _errs1404 = errors;
                    if (typeof data456 === "string") {
                      if (!pattern26.test(data456)) {
                        const err1202 = { instancePath: instancePath + "/machine/rack/slide/distance", schemaPath: "#/$defs/length/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }, message: 'must match pattern "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$"' };
                        if (vErrors === null) {
                          vErrors = [err1202];
                        } else {
                          vErrors.push(err1202);
                        }
                        errors++;
                      }
                    } else {
                      const err1203 = { instancePath: instancePath + "/machine/rack/slide/distance", schemaPath: "#/$defs/length/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                      if (vErrors === null) {
                        vErrors = [err1203];
                      } else {
                        vErrors.push(err1203);
                      }
                      errors++;
                    }
                    var _valid57 = _errs1404 === errors;
                    valid369 = valid369 || _valid57;
                    if (!valid369) {
                      const err1204 = { instancePath: instancePath + "/machine/rack/slide/distance", schemaPath: "#/$defs/length/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                      if (vErrors === null) {
                        vErrors = [err1204];
                      } else {
                        vErrors.push(err1204);
                      }
                      errors++;
                    } else {
                      errors = _errs1401;
                      if (vErrors !== null) {
                        if (_errs1401) {
                          vErrors.length = _errs1401;
                        } else {
                          vErrors = null;
                        }
                      }
                    }
                  }
                  if (data454.feed !== void 0) {
                    let data457 = data454.feed;
                    const _errs1408 = errors;
                    let valid371 = false;
                    const _errs1409 = errors;
                    if (typeof data457 == "number" && isFinite(data457)) {
                      if (data457 > 1e6 || isNaN(data457)) {
                        const err1205 = { instancePath: instancePath + "/machine/rack/slide/feed", schemaPath: "#/$defs/feed/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                        if (vErrors === null) {
                          vErrors = [err1205];
                        } else {
                          vErrors.push(err1205);
                        }
                        errors++;
                      }
                      if (data457 <= 0 || isNaN(data457)) {
                        const err1206 = { instancePath: instancePath + "/machine/rack/slide/feed", schemaPath: "#/$defs/feed/anyOf/0/exclusiveMinimum", keyword: "exclusiveMinimum", params: { comparison: ">", limit: 0 }, message: "must be > 0" };
                        if (vErrors === null) {
                          vErrors = [err1206];
                        } else {
                          vErrors.push(err1206);
                        }
                        errors++;
                      }
                    } else {
                      const err1207 = { instancePath: instancePath + "/machine/rack/slide/feed", schemaPath: "#/$defs/feed/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                      if (vErrors === null) {
                        vErrors = [err1207];
                      } else {
                        vErrors.push(err1207);
                      }
                      errors++;
                    }
                    var _valid58 = _errs1409 === errors;
                    valid371 = valid371 || _valid58;
                    const _errs1411 = errors;
                    if (typeof data457 === "string") {
                      if (!pattern10.test(data457)) {
                        const err1208 = { instancePath: instancePath + "/machine/rack/slide/feed", schemaPath: "#/$defs/feed/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^\\d{1,5}(\\.\\d{1,5})? (mm|in)/min$" }, message: 'must match pattern "^\\d{1,5}(\\.\\d{1,5})? (mm|in)/min$"' };
                        if (vErrors === null) {
                          vErrors = [err1208];
                        } else {
                          vErrors.push(err1208);
                        }
                        errors++;
                      }
                    } else {
                      const err1209 = { instancePath: instancePath + "/machine/rack/slide/feed", schemaPath: "#/$defs/feed/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                      if (vErrors === null) {
                        vErrors = [err1209];
                      } else {
                        vErrors.push(err1209);
                      }
                      errors++;
                    }
                    var _valid58 = _errs1411 === errors;
                    valid371 = valid371 || _valid58;
                    if (!valid371) {
                      const err1210 = { instancePath: instancePath + "/machine/rack/slide/feed", schemaPath: "#/$defs/feed/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                      if (vErrors === null) {
                        vErrors = [err1210];
                      } else {
                        vErrors.push(err1210);
                      }
                      errors++;
                    } else {
                      errors = _errs1408;
                      if (vErrors !== null) {
                        if (_errs1408) {
                          vErrors.length = _errs1408;
                        } else {
                          vErrors = null;
                        }
                      }
                    }
                  }
                } else {
                  const err1211 = { instancePath: instancePath + "/machine/rack/slide", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/slide/type", keyword: "type", params: { type: "object" }, message: "must be object" };
                  if (vErrors === null) {
                    vErrors = [err1211];
                  } else {
                    vErrors.push(err1211);
                  }
                  errors++;
                }
              }
              if (data440.widest !== void 0) {
                let data458 = data440.widest;
                const _errs1415 = errors;
                let valid373 = false;
                const _errs1416 = errors;
                if (typeof data458 == "number" && isFinite(data458)) {
                  if (data458 > 1e6 || isNaN(data458)) {
                    const err1212 = { instancePath: instancePath + "/machine/rack/widest", schemaPath: "#/$defs/lengthOrNone/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                    if (vErrors === null) {
                      vErrors = [err1212];
                    } else {
                      vErrors.push(err1212);
                    }
                    errors++;
                  }
                  if (data458 < 0 || isNaN(data458)) {
                    const err1213 = { instancePath: instancePath + "/machine/rack/widest", schemaPath: "#/$defs/lengthOrNone/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err1213];
                    } else {
                      vErrors.push(err1213);
                    }
                    errors++;
                  }
                } else {
                  const err1214 = { instancePath: instancePath + "/machine/rack/widest", schemaPath: "#/$defs/lengthOrNone/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                  if (vErrors === null) {
                    vErrors = [err1214];
                  } else {
                    vErrors.push(err1214);
                  }
                  errors++;
                }
                var _valid59 = _errs1416 === errors;
                valid373 = valid373 || _valid59;
                const _errs1418 = errors;
                if (typeof data458 === "string") {
                  if (!pattern24.test(data458)) {
                    const err1215 = { instancePath: instancePath + "/machine/rack/widest", schemaPath: "#/$defs/lengthOrNone/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^(none|\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }, message: 'must match pattern "^(none|\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$"' };
                    if (vErrors === null) {
                      vErrors = [err1215];
                    } else {
                      vErrors.push(err1215);
                    }
                    errors++;
                  }
                } else {
                  const err1216 = { instancePath: instancePath + "/machine/rack/widest", schemaPath: "#/$defs/lengthOrNone/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1216];
                  } else {
                    vErrors.push(err1216);
                  }
                  errors++;
                }
                var _valid59 = _errs1418 === errors;
                valid373 = valid373 || _valid59;
                if (!valid373) {
                  const err1217 = { instancePath: instancePath + "/machine/rack/widest", schemaPath: "#/$defs/lengthOrNone/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err1217];
                  } else {
                    vErrors.push(err1217);
                  }
                  errors++;
                } else {
                  errors = _errs1415;
                  if (vErrors !== null) {
                    if (_errs1415) {
                      vErrors.length = _errs1415;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
              if (data440.longest !== void 0) {
                let data459 = data440.longest;
                const _errs1422 = errors;
                let valid375 = false;
                const _errs1423 = errors;
                if (typeof data459 == "number" && isFinite(data459)) {
                  if (data459 > 1e6 || isNaN(data459)) {
                    const err1218 = { instancePath: instancePath + "/machine/rack/longest", schemaPath: "#/$defs/lengthOrNone/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                    if (vErrors === null) {
                      vErrors = [err1218];
                    } else {
                      vErrors.push(err1218);
                    }
                    errors++;
                  }
                  if (data459 < 0 || isNaN(data459)) {
                    const err1219 = { instancePath: instancePath + "/machine/rack/longest", schemaPath: "#/$defs/lengthOrNone/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err1219];
                    } else {
                      vErrors.push(err1219);
                    }
                    errors++;
                  }
                } else {
                  const err1220 = { instancePath: instancePath + "/machine/rack/longest", schemaPath: "#/$defs/lengthOrNone/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                  if (vErrors === null) {
                    vErrors = [err1220];
                  } else {
                    vErrors.push(err1220);
                  }
                  errors++;
                }
                var _valid60 = _errs1423 === errors;
                valid375 = valid375 || _valid60;
                const _errs1425 = errors;
                if (typeof data459 === "string") {
                  if (!pattern24.test(data459)) {
                    const err1221 = { instancePath: instancePath + "/machine/rack/longest", schemaPath: "#/$defs/lengthOrNone/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^(none|\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }, message: 'must match pattern "^(none|\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$"' };
                    if (vErrors === null) {
                      vErrors = [err1221];
                    } else {
                      vErrors.push(err1221);
                    }
                    errors++;
                  }
                } else {
                  const err1222 = { instancePath: instancePath + "/machine/rack/longest", schemaPath: "#/$defs/lengthOrNone/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1222];
                  } else {
                    vErrors.push(err1222);
                  }
                  errors++;
                }
                var _valid60 = _errs1425 === errors;
                valid375 = valid375 || _valid60;
                if (!valid375) {
                  const err1223 = { instancePath: instancePath + "/machine/rack/longest", schemaPath: "#/$defs/lengthOrNone/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err1223];
                  } else {
                    vErrors.push(err1223);
                  }
                  errors++;
                } else {
                  errors = _errs1422;
                  if (vErrors !== null) {
                    if (_errs1422) {
                      vErrors.length = _errs1422;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
              if (data440.cover !== void 0) {
                let data460 = data440.cover;
                if (typeof data460 !== "string") {
                  const err1224 = { instancePath: instancePath + "/machine/rack/cover", schemaPath: "#/$defs/yesNo/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1224];
                  } else {
                    vErrors.push(err1224);
                  }
                  errors++;
                }
                if (!(data460 === "yes" || data460 === "no")) {
                  const err1225 = { instancePath: instancePath + "/machine/rack/cover", schemaPath: "#/$defs/yesNo/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1225];
                  } else {
                    vErrors.push(err1225);
                  }
                  errors++;
                }
              }
              if (data440["at-end"] !== void 0) {
                let data461 = data440["at-end"];
                if (data461 && typeof data461 == "object" && !Array.isArray(data461)) {
                  for (const key69 in data461) {
                    if (!(key69 === "tool")) {
                      const err1226 = { instancePath: instancePath + "/machine/rack/at-end", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/at-end/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key69 }, message: "must NOT have additional properties" };
                      if (vErrors === null) {
                        vErrors = [err1226];
                      } else {
                        vErrors.push(err1226);
                      }
                      errors++;
                    }
                  }
                  if (data461.tool !== void 0) {
                    let data462 = data461.tool;
                    if (typeof data462 !== "string") {
                      const err1227 = { instancePath: instancePath + "/machine/rack/at-end/tool", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/at-end/properties/tool/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                      if (vErrors === null) {
                        vErrors = [err1227];
                      } else {
                        vErrors.push(err1227);
                      }
                      errors++;
                    }
                    if (!(data462 === "return" || data462 === "keep")) {
                      const err1228 = { instancePath: instancePath + "/machine/rack/at-end/tool", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/at-end/properties/tool/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties.rack.anyOf[1].properties["at-end"].properties.tool.enum }, message: "must be equal to one of the allowed values" };
                      if (vErrors === null) {
                        vErrors = [err1228];
                      } else {
                        vErrors.push(err1228);
                      }
                      errors++;
                    }
                  }
                } else {
                  const err1229 = { instancePath: instancePath + "/machine/rack/at-end", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/at-end/type", keyword: "type", params: { type: "object" }, message: "must be object" };
                  if (vErrors === null) {
                    vErrors = [err1229];
                  } else {
                    vErrors.push(err1229);
                  }
                  errors++;
                }
              }
            } else {
              const err1230 = { instancePath: instancePath + "/machine/rack", schemaPath: "#/properties/machine/properties/rack/anyOf/1/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err1230];
              } else {
                vErrors.push(err1230);
              }
              errors++;
            }
            var _valid51 = _errs1344 === errors;
            valid352 = valid352 || _valid51;
            if (!valid352) {
              const err1231 = { instancePath: instancePath + "/machine/rack", schemaPath: "#/properties/machine/properties/rack/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err1231];
              } else {
                vErrors.push(err1231);
              }
              errors++;
            } else {
              errors = _errs1341;
              if (vErrors !== null) {
                if (_errs1341) {
                  vErrors.length = _errs1341;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data383.park !== void 0) {
            if (!validate31(data383.park, { instancePath: instancePath + "/machine/park", parentData: data383, parentDataProperty: "park", rootData, dynamicAnchors })) {
              vErrors = vErrors === null ? validate31.errors : vErrors.concat(validate31.errors);
              errors = vErrors.length;
            }
          }
          if (data383.outputs !== void 0) {
            let data464 = data383.outputs;
            if (data464 && typeof data464 == "object" && !Array.isArray(data464)) {
              for (const key70 in data464) {
                if (!pattern113.test(key70)) {
                  const err1232 = { instancePath: instancePath + "/machine/outputs", schemaPath: "#/properties/machine/properties/outputs/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key70 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err1232];
                  } else {
                    vErrors.push(err1232);
                  }
                  errors++;
                }
              }
              for (const key71 in data464) {
                if (pattern113.test(key71)) {
                  let data465 = data464[key71];
                  if (data465 && typeof data465 == "object" && !Array.isArray(data465)) {
                    for (const key72 in data465) {
                      if (!(key72 === "number" || key72 === "during")) {
                        const err1233 = { instancePath: instancePath + "/machine/outputs/" + key71.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/machine/properties/outputs/patternProperties/%5E%5Ba-z%5D%5Ba-z0-9-%5D%7B0%2C30%7D%24/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key72 }, message: "must NOT have additional properties" };
                        if (vErrors === null) {
                          vErrors = [err1233];
                        } else {
                          vErrors.push(err1233);
                        }
                        errors++;
                      }
                    }
                    if (data465.number !== void 0) {
                      let data466 = data465.number;
                      if (!(typeof data466 == "number" && (!(data466 % 1) && !isNaN(data466)) && isFinite(data466))) {
                        const err1234 = { instancePath: instancePath + "/machine/outputs/" + key71.replace(/~/g, "~0").replace(/\//g, "~1") + "/number", schemaPath: "#/properties/machine/properties/outputs/patternProperties/%5E%5Ba-z%5D%5Ba-z0-9-%5D%7B0%2C30%7D%24/properties/number/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                        if (vErrors === null) {
                          vErrors = [err1234];
                        } else {
                          vErrors.push(err1234);
                        }
                        errors++;
                      }
                      if (typeof data466 == "number" && isFinite(data466)) {
                        if (data466 > 9999 || isNaN(data466)) {
                          const err1235 = { instancePath: instancePath + "/machine/outputs/" + key71.replace(/~/g, "~0").replace(/\//g, "~1") + "/number", schemaPath: "#/properties/machine/properties/outputs/patternProperties/%5E%5Ba-z%5D%5Ba-z0-9-%5D%7B0%2C30%7D%24/properties/number/maximum", keyword: "maximum", params: { comparison: "<=", limit: 9999 }, message: "must be <= 9999" };
                          if (vErrors === null) {
                            vErrors = [err1235];
                          } else {
                            vErrors.push(err1235);
                          }
                          errors++;
                        }
                        if (data466 < 0 || isNaN(data466)) {
                          const err1236 = { instancePath: instancePath + "/machine/outputs/" + key71.replace(/~/g, "~0").replace(/\//g, "~1") + "/number", schemaPath: "#/properties/machine/properties/outputs/patternProperties/%5E%5Ba-z%5D%5Ba-z0-9-%5D%7B0%2C30%7D%24/properties/number/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                          if (vErrors === null) {
                            vErrors = [err1236];
                          } else {
                            vErrors.push(err1236);
                          }
                          errors++;
                        }
                      }
                    }
                    if (data465.during !== void 0) {
                      let data467 = data465.during;
                      if (typeof data467 !== "string") {
                        const err1237 = { instancePath: instancePath + "/machine/outputs/" + key71.replace(/~/g, "~0").replace(/\//g, "~1") + "/during", schemaPath: "#/properties/machine/properties/outputs/patternProperties/%5E%5Ba-z%5D%5Ba-z0-9-%5D%7B0%2C30%7D%24/properties/during/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                        if (vErrors === null) {
                          vErrors = [err1237];
                        } else {
                          vErrors.push(err1237);
                        }
                        errors++;
                      }
                      if (!(data467 === "cutting" || data467 === "program")) {
                        const err1238 = { instancePath: instancePath + "/machine/outputs/" + key71.replace(/~/g, "~0").replace(/\//g, "~1") + "/during", schemaPath: "#/properties/machine/properties/outputs/patternProperties/%5E%5Ba-z%5D%5Ba-z0-9-%5D%7B0%2C30%7D%24/properties/during/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties.outputs.patternProperties["^[a-z][a-z0-9-]{0,30}$"].properties.during.enum }, message: "must be equal to one of the allowed values" };
                        if (vErrors === null) {
                          vErrors = [err1238];
                        } else {
                          vErrors.push(err1238);
                        }
                        errors++;
                      }
                    }
                  } else {
                    const err1239 = { instancePath: instancePath + "/machine/outputs/" + key71.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/machine/properties/outputs/patternProperties/%5E%5Ba-z%5D%5Ba-z0-9-%5D%7B0%2C30%7D%24/type", keyword: "type", params: { type: "object" }, message: "must be object" };
                    if (vErrors === null) {
                      vErrors = [err1239];
                    } else {
                      vErrors.push(err1239);
                    }
                    errors++;
                  }
                }
              }
            } else {
              const err1240 = { instancePath: instancePath + "/machine/outputs", schemaPath: "#/properties/machine/properties/outputs/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err1240];
              } else {
                vErrors.push(err1240);
              }
              errors++;
            }
          }
          if (data383.hood !== void 0) {
            let data468 = data383.hood;
            if (typeof data468 !== "string") {
              const err1241 = { instancePath: instancePath + "/machine/hood", schemaPath: "#/$defs/yesNo/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err1241];
              } else {
                vErrors.push(err1241);
              }
              errors++;
            }
            if (!(data468 === "yes" || data468 === "no")) {
              const err1242 = { instancePath: instancePath + "/machine/hood", schemaPath: "#/$defs/yesNo/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err1242];
              } else {
                vErrors.push(err1242);
              }
              errors++;
            }
          }
          if (data383["keep-out"] !== void 0) {
            let data469 = data383["keep-out"];
            if (Array.isArray(data469)) {
              if (data469.length > 50) {
                const err1243 = { instancePath: instancePath + "/machine/keep-out", schemaPath: "#/properties/machine/properties/keep-out/maxItems", keyword: "maxItems", params: { limit: 50 }, message: "must NOT have more than 50 items" };
                if (vErrors === null) {
                  vErrors = [err1243];
                } else {
                  vErrors.push(err1243);
                }
                errors++;
              }
              const len18 = data469.length;
              for (let i21 = 0; i21 < len18; i21++) {
                let data470 = data469[i21];
                if (data470 && typeof data470 == "object" && !Array.isArray(data470)) {
                  if (data470.name === void 0) {
                    const err1244 = { instancePath: instancePath + "/machine/keep-out/" + i21, schemaPath: "#/properties/machine/properties/keep-out/items/required", keyword: "required", params: { missingProperty: "name" }, message: "must have required property 'name'" };
                    if (vErrors === null) {
                      vErrors = [err1244];
                    } else {
                      vErrors.push(err1244);
                    }
                    errors++;
                  }
                  if (data470.min === void 0) {
                    const err1245 = { instancePath: instancePath + "/machine/keep-out/" + i21, schemaPath: "#/properties/machine/properties/keep-out/items/required", keyword: "required", params: { missingProperty: "min" }, message: "must have required property 'min'" };
                    if (vErrors === null) {
                      vErrors = [err1245];
                    } else {
                      vErrors.push(err1245);
                    }
                    errors++;
                  }
                  if (data470.max === void 0) {
                    const err1246 = { instancePath: instancePath + "/machine/keep-out/" + i21, schemaPath: "#/properties/machine/properties/keep-out/items/required", keyword: "required", params: { missingProperty: "max" }, message: "must have required property 'max'" };
                    if (vErrors === null) {
                      vErrors = [err1246];
                    } else {
                      vErrors.push(err1246);
                    }
                    errors++;
                  }
                  for (const key73 in data470) {
                    if (!(key73 === "name" || key73 === "min" || key73 === "max")) {
                      const err1247 = { instancePath: instancePath + "/machine/keep-out/" + i21, schemaPath: "#/properties/machine/properties/keep-out/items/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key73 }, message: "must NOT have additional properties" };
                      if (vErrors === null) {
                        vErrors = [err1247];
                      } else {
                        vErrors.push(err1247);
                      }
                      errors++;
                    }
                  }
                  if (data470.name !== void 0) {
                    let data471 = data470.name;
                    if (typeof data471 === "string") {
                      if (func2(data471) > 60) {
                        const err1248 = { instancePath: instancePath + "/machine/keep-out/" + i21 + "/name", schemaPath: "#/properties/machine/properties/keep-out/items/properties/name/maxLength", keyword: "maxLength", params: { limit: 60 }, message: "must NOT have more than 60 characters" };
                        if (vErrors === null) {
                          vErrors = [err1248];
                        } else {
                          vErrors.push(err1248);
                        }
                        errors++;
                      }
                      if (func2(data471) < 1) {
                        const err1249 = { instancePath: instancePath + "/machine/keep-out/" + i21 + "/name", schemaPath: "#/properties/machine/properties/keep-out/items/properties/name/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                        if (vErrors === null) {
                          vErrors = [err1249];
                        } else {
                          vErrors.push(err1249);
                        }
                        errors++;
                      }
                    } else {
                      const err1250 = { instancePath: instancePath + "/machine/keep-out/" + i21 + "/name", schemaPath: "#/properties/machine/properties/keep-out/items/properties/name/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                      if (vErrors === null) {
                        vErrors = [err1250];
                      } else {
                        vErrors.push(err1250);
                      }
                      errors++;
                    }
                  }
                  if (data470.min !== void 0) {
                    if (!validate29(data470.min, { instancePath: instancePath + "/machine/keep-out/" + i21 + "/min", parentData: data470, parentDataProperty: "min", rootData, dynamicAnchors })) {
                      vErrors = vErrors === null ? validate29.errors : vErrors.concat(validate29.errors);
                      errors = vErrors.length;
                    }
                  }
                  if (data470.max !== void 0) {
                    if (!validate29(data470.max, { instancePath: instancePath + "/machine/keep-out/" + i21 + "/max", parentData: data470, parentDataProperty: "max", rootData, dynamicAnchors })) {
                      vErrors = vErrors === null ? validate29.errors : vErrors.concat(validate29.errors);
                      errors = vErrors.length;
                    }
                  }
                } else {
                  const err1251 = { instancePath: instancePath + "/machine/keep-out/" + i21, schemaPath: "#/properties/machine/properties/keep-out/items/type", keyword: "type", params: { type: "object" }, message: "must be object" };
                  if (vErrors === null) {
                    vErrors = [err1251];
                  } else {
                    vErrors.push(err1251);
                  }
                  errors++;
                }
              }
            } else {
              const err1252 = { instancePath: instancePath + "/machine/keep-out", schemaPath: "#/properties/machine/properties/keep-out/type", keyword: "type", params: { type: "array" }, message: "must be array" };
              if (vErrors === null) {
                vErrors = [err1252];
              } else {
                vErrors.push(err1252);
              }
              errors++;
            }
          }
          if (data383.tapping !== void 0) {
            let data474 = data383.tapping;
            if (data474 && typeof data474 == "object" && !Array.isArray(data474)) {
              for (const key74 in data474) {
                if (!(key74 === "kind" || key74 === "reversal" || key74 === "longhand")) {
                  const err1253 = { instancePath: instancePath + "/machine/tapping", schemaPath: "#/properties/machine/properties/tapping/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key74 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err1253];
                  } else {
                    vErrors.push(err1253);
                  }
                  errors++;
                }
              }
              if (data474.kind !== void 0) {
                let data475 = data474.kind;
                if (typeof data475 !== "string") {
                  const err1254 = { instancePath: instancePath + "/machine/tapping/kind", schemaPath: "#/properties/machine/properties/tapping/properties/kind/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1254];
                  } else {
                    vErrors.push(err1254);
                  }
                  errors++;
                }
                if (!(data475 === "none" || data475 === "floating" || data475 === "synchronised")) {
                  const err1255 = { instancePath: instancePath + "/machine/tapping/kind", schemaPath: "#/properties/machine/properties/tapping/properties/kind/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties.tapping.properties.kind.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1255];
                  } else {
                    vErrors.push(err1255);
                  }
                  errors++;
                }
              }
              if (data474.reversal !== void 0) {
                let data476 = data474.reversal;
                if (typeof data476 === "string") {
                  if (!pattern98.test(data476)) {
                    const err1256 = { instancePath: instancePath + "/machine/tapping/reversal", schemaPath: "#/$defs/time/pattern", keyword: "pattern", params: { pattern: "^\\d{1,6}(\\.\\d{1,6})? ?(s|ms|min)$" }, message: 'must match pattern "^\\d{1,6}(\\.\\d{1,6})? ?(s|ms|min)$"' };
                    if (vErrors === null) {
                      vErrors = [err1256];
                    } else {
                      vErrors.push(err1256);
                    }
                    errors++;
                  }
                } else {
                  const err1257 = { instancePath: instancePath + "/machine/tapping/reversal", schemaPath: "#/$defs/time/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1257];
                  } else {
                    vErrors.push(err1257);
                  }
                  errors++;
                }
              }
              if (data474.longhand !== void 0) {
                let data477 = data474.longhand;
                if (typeof data477 !== "string") {
                  const err1258 = { instancePath: instancePath + "/machine/tapping/longhand", schemaPath: "#/$defs/yesNo/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1258];
                  } else {
                    vErrors.push(err1258);
                  }
                  errors++;
                }
                if (!(data477 === "yes" || data477 === "no")) {
                  const err1259 = { instancePath: instancePath + "/machine/tapping/longhand", schemaPath: "#/$defs/yesNo/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1259];
                  } else {
                    vErrors.push(err1259);
                  }
                  errors++;
                }
              }
            } else {
              const err1260 = { instancePath: instancePath + "/machine/tapping", schemaPath: "#/properties/machine/properties/tapping/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err1260];
              } else {
                vErrors.push(err1260);
              }
              errors++;
            }
          }
          if (data383.feed !== void 0) {
            let data478 = data383.feed;
            if (data478 && typeof data478 == "object" && !Array.isArray(data478)) {
              for (const key75 in data478) {
                if (!(key75 === "least" || key75 === "most")) {
                  const err1261 = { instancePath: instancePath + "/machine/feed", schemaPath: "#/properties/machine/properties/feed/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key75 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err1261];
                  } else {
                    vErrors.push(err1261);
                  }
                  errors++;
                }
              }
              if (data478.least !== void 0) {
                let data479 = data478.least;
                const _errs1474 = errors;
                let valid389 = false;
                const _errs1475 = errors;
                if (typeof data479 == "number" && isFinite(data479)) {
                  if (data479 > 1e6 || isNaN(data479)) {
                    const err1262 = { instancePath: instancePath + "/machine/feed/least", schemaPath: "#/$defs/feed/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                    if (vErrors === null) {
                      vErrors = [err1262];
                    } else {
                      vErrors.push(err1262);
                    }
                    errors++;
                  }
                  if (data479 <= 0 || isNaN(data479)) {
                    const err1263 = { instancePath: instancePath + "/machine/feed/least", schemaPath: "#/$defs/feed/anyOf/0/exclusiveMinimum", keyword: "exclusiveMinimum", params: { comparison: ">", limit: 0 }, message: "must be > 0" };
                    if (vErrors === null) {
                      vErrors = [err1263];
                    } else {
                      vErrors.push(err1263);
                    }
                    errors++;
                  }
                } else {
                  const err1264 = { instancePath: instancePath + "/machine/feed/least", schemaPath: "#/$defs/feed/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                  if (vErrors === null) {
                    vErrors = [err1264];
                  } else {
                    vErrors.push(err1264);
                  }
                  errors++;
                }
                var _valid61 = _errs1475 === errors;
                valid389 = valid389 || _valid61;
                const _errs1477 = errors;
                if (typeof data479 === "string") {
                  if (!pattern10.test(data479)) {
                    const err1265 = { instancePath: instancePath + "/machine/feed/least", schemaPath: "#/$defs/feed/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^\\d{1,5}(\\.\\d{1,5})? (mm|in)/min$" }, message: 'must match pattern "^\\d{1,5}(\\.\\d{1,5})? (mm|in)/min$"' };
                    if (vErrors === null) {
                      vErrors = [err1265];
                    } else {
                      vErrors.push(err1265);
                    }
                    errors++;
                  }
                } else {
                  const err1266 = { instancePath: instancePath + "/machine/feed/least", schemaPath: "#/$defs/feed/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1266];
                  } else {
                    vErrors.push(err1266);
                  }
                  errors++;
                }
                var _valid61 = _errs1477 === errors;
                valid389 = valid389 || _valid61;
                if (!valid389) {
                  const err1267 = { instancePath: instancePath + "/machine/feed/least", schemaPath: "#/$defs/feed/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err1267];
                  } else {
                    vErrors.push(err1267);
                  }
                  errors++;
                } else {
                  errors = _errs1474;
                  if (vErrors !== null) {
                    if (_errs1474) {
                      vErrors.length = _errs1474;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
              if (data478.most !== void 0) {
                let data480 = data478.most;
                const _errs1481 = errors;
                let valid391 = false;
                const _errs1482 = errors;
                if (typeof data480 == "number" && isFinite(data480)) {
                  if (data480 > 1e6 || isNaN(data480)) {
                    const err1268 = { instancePath: instancePath + "/machine/feed/most", schemaPath: "#/$defs/feed/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                    if (vErrors === null) {
                      vErrors = [err1268];
                    } else {
                      vErrors.push(err1268);
                    }
                    errors++;
                  }
                  if (data480 <= 0 || isNaN(data480)) {
                    const err1269 = { instancePath: instancePath + "/machine/feed/most", schemaPath: "#/$defs/feed/anyOf/0/exclusiveMinimum", keyword: "exclusiveMinimum", params: { comparison: ">", limit: 0 }, message: "must be > 0" };
                    if (vErrors === null) {
                      vErrors = [err1269];
                    } else {
                      vErrors.push(err1269);
                    }
                    errors++;
                  }
                } else {
                  const err1270 = { instancePath: instancePath + "/machine/feed/most", schemaPath: "#/$defs/feed/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                  if (vErrors === null) {
                    vErrors = [err1270];
                  } else {
                    vErrors.push(err1270);
                  }
                  errors++;
                }
                var _valid62 = _errs1482 === errors;
                valid391 = valid391 || _valid62;
                const _errs1484 = errors;
                if (typeof data480 === "string") {
                  if (!pattern10.test(data480)) {
                    const err1271 = { instancePath: instancePath + "/machine/feed/most", schemaPath: "#/$defs/feed/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^\\d{1,5}(\\.\\d{1,5})? (mm|in)/min$" }, message: 'must match pattern "^\\d{1,5}(\\.\\d{1,5})? (mm|in)/min$"' };
                    if (vErrors === null) {
                      vErrors = [err1271];
                    } else {
                      vErrors.push(err1271);
                    }
                    errors++;
                  }
                } else {
                  const err1272 = { instancePath: instancePath + "/machine/feed/most", schemaPath: "#/$defs/feed/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1272];
                  } else {
                    vErrors.push(err1272);
                  }
                  errors++;
                }
                var _valid62 = _errs1484 === errors;
                valid391 = valid391 || _valid62;
                if (!valid391) {
                  const err1273 = { instancePath: instancePath + "/machine/feed/most", schemaPath: "#/$defs/feed/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err1273];
                  } else {
                    vErrors.push(err1273);
                  }
                  errors++;
                } else {
                  errors = _errs1481;
                  if (vErrors !== null) {
                    if (_errs1481) {
                      vErrors.length = _errs1481;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
            } else {
              const err1274 = { instancePath: instancePath + "/machine/feed", schemaPath: "#/properties/machine/properties/feed/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err1274];
              } else {
                vErrors.push(err1274);
              }
              errors++;
            }
          }
          if (data383["work-zero"] !== void 0) {
            let data481 = data383["work-zero"];
            if (data481 && typeof data481 == "object" && !Array.isArray(data481)) {
              for (const key76 in data481) {
                if (!pattern118.test(key76)) {
                  const err1275 = { instancePath: instancePath + "/machine/work-zero", schemaPath: "#/properties/machine/properties/work-zero/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key76 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err1275];
                  } else {
                    vErrors.push(err1275);
                  }
                  errors++;
                }
              }
              for (const key77 in data481) {
                if (pattern118.test(key77)) {
                  if (!validate29(data481[key77], { instancePath: instancePath + "/machine/work-zero/" + key77.replace(/~/g, "~0").replace(/\//g, "~1"), parentData: data481, parentDataProperty: key77, rootData, dynamicAnchors })) {
                    vErrors = vErrors === null ? validate29.errors : vErrors.concat(validate29.errors);
                    errors = vErrors.length;
                  }
                }
              }
            } else {
              const err1276 = { instancePath: instancePath + "/machine/work-zero", schemaPath: "#/properties/machine/properties/work-zero/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err1276];
              } else {
                vErrors.push(err1276);
              }
              errors++;
            }
          }
        } else {
          const err1277 = { instancePath: instancePath + "/machine", schemaPath: "#/properties/machine/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err1277];
          } else {
            vErrors.push(err1277);
          }
          errors++;
        }
      }
      if (data.confirm !== void 0) {
        let data483 = data.confirm;
        if (data483 && typeof data483 == "object" && !Array.isArray(data483)) {
          for (const key78 in data483) {
            if (!(key78 === "at-speed" || key78 === "stopped" || key78 === "released" || key78 === "clamped" || key78 === "air" || key78 === "hold-down")) {
              const err1278 = { instancePath: instancePath + "/confirm", schemaPath: "#/properties/confirm/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key78 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err1278];
              } else {
                vErrors.push(err1278);
              }
              errors++;
            }
          }
          if (data483["at-speed"] !== void 0) {
            let data484 = data483["at-speed"];
            const _errs1494 = errors;
            let valid394 = false;
            const _errs1495 = errors;
            if (typeof data484 !== "string") {
              const err1279 = { instancePath: instancePath + "/confirm/at-speed", schemaPath: "#/properties/confirm/properties/at-speed/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err1279];
              } else {
                vErrors.push(err1279);
              }
              errors++;
            }
            if ("operator" !== data484) {
              const err1280 = { instancePath: instancePath + "/confirm/at-speed", schemaPath: "#/properties/confirm/properties/at-speed/anyOf/0/const", keyword: "const", params: { allowedValue: "operator" }, message: "must be equal to constant" };
              if (vErrors === null) {
                vErrors = [err1280];
              } else {
                vErrors.push(err1280);
              }
              errors++;
            }
            var _valid63 = _errs1495 === errors;
            valid394 = valid394 || _valid63;
            const _errs1497 = errors;
            if (!validate41(data484, { instancePath: instancePath + "/confirm/at-speed", parentData: data483, parentDataProperty: "at-speed", rootData, dynamicAnchors })) {
              vErrors = vErrors === null ? validate41.errors : vErrors.concat(validate41.errors);
              errors = vErrors.length;
            }
            var _valid63 = _errs1497 === errors;
            valid394 = valid394 || _valid63;
            if (!valid394) {
              const err1281 = { instancePath: instancePath + "/confirm/at-speed", schemaPath: "#/properties/confirm/properties/at-speed/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err1281];
              } else {
                vErrors.push(err1281);
              }
              errors++;
            } else {
              errors = _errs1494;
              if (vErrors !== null) {
                if (_errs1494) {
                  vErrors.length = _errs1494;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data483.stopped !== void 0) {
            let data485 = data483.stopped;
            const _errs1499 = errors;
            let valid395 = false;
            const _errs1500 = errors;
            if (typeof data485 !== "string") {
              const err1282 = { instancePath: instancePath + "/confirm/stopped", schemaPath: "#/properties/confirm/properties/stopped/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err1282];
              } else {
                vErrors.push(err1282);
              }
              errors++;
            }
            if ("operator" !== data485) {
              const err1283 = { instancePath: instancePath + "/confirm/stopped", schemaPath: "#/properties/confirm/properties/stopped/anyOf/0/const", keyword: "const", params: { allowedValue: "operator" }, message: "must be equal to constant" };
              if (vErrors === null) {
                vErrors = [err1283];
              } else {
                vErrors.push(err1283);
              }
              errors++;
            }
            var _valid64 = _errs1500 === errors;
            valid395 = valid395 || _valid64;
            const _errs1502 = errors;
            if (!validate41(data485, { instancePath: instancePath + "/confirm/stopped", parentData: data483, parentDataProperty: "stopped", rootData, dynamicAnchors })) {
              vErrors = vErrors === null ? validate41.errors : vErrors.concat(validate41.errors);
              errors = vErrors.length;
            }
            var _valid64 = _errs1502 === errors;
            valid395 = valid395 || _valid64;
            if (!valid395) {
              const err1284 = { instancePath: instancePath + "/confirm/stopped", schemaPath: "#/properties/confirm/properties/stopped/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err1284];
              } else {
                vErrors.push(err1284);
              }
              errors++;
            } else {
              errors = _errs1499;
              if (vErrors !== null) {
                if (_errs1499) {
                  vErrors.length = _errs1499;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data483.released !== void 0) {
            let data486 = data483.released;
            const _errs1504 = errors;
            let valid396 = false;
            const _errs1505 = errors;
            if (typeof data486 !== "string") {
              const err1285 = { instancePath: instancePath + "/confirm/released", schemaPath: "#/properties/confirm/properties/released/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err1285];
              } else {
                vErrors.push(err1285);
              }
              errors++;
            }
            if ("operator" !== data486) {
              const err1286 = { instancePath: instancePath + "/confirm/released", schemaPath: "#/properties/confirm/properties/released/anyOf/0/const", keyword: "const", params: { allowedValue: "operator" }, message: "must be equal to constant" };
              if (vErrors === null) {
                vErrors = [err1286];
              } else {
                vErrors.push(err1286);
              }
              errors++;
            }
            var _valid65 = _errs1505 === errors;
            valid396 = valid396 || _valid65;
            const _errs1507 = errors;
            if (!validate41(data486, { instancePath: instancePath + "/confirm/released", parentData: data483, parentDataProperty: "released", rootData, dynamicAnchors })) {
              vErrors = vErrors === null ? validate41.errors : vErrors.concat(validate41.errors);
              errors = vErrors.length;
            }
            var _valid65 = _errs1507 === errors;
            valid396 = valid396 || _valid65;
            if (!valid396) {
              const err1287 = { instancePath: instancePath + "/confirm/released", schemaPath: "#/properties/confirm/properties/released/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err1287];
              } else {
                vErrors.push(err1287);
              }
              errors++;
            } else {
              errors = _errs1504;
              if (vErrors !== null) {
                if (_errs1504) {
                  vErrors.length = _errs1504;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data483.clamped !== void 0) {
            let data487 = data483.clamped;
            const _errs1509 = errors;
            let valid397 = false;
            const _errs1510 = errors;
            if (typeof data487 !== "string") {
              const err1288 = { instancePath: instancePath + "/confirm/clamped", schemaPath: "#/properties/confirm/properties/clamped/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err1288];
              } else {
                vErrors.push(err1288);
              }
              errors++;
            }
            if ("operator" !== data487) {
              const err1289 = { instancePath: instancePath + "/confirm/clamped", schemaPath: "#/properties/confirm/properties/clamped/anyOf/0/const", keyword: "const", params: { allowedValue: "operator" }, message: "must be equal to constant" };
              if (vErrors === null) {
                vErrors = [err1289];
              } else {
                vErrors.push(err1289);
              }
              errors++;
            }
            var _valid66 = _errs1510 === errors;
            valid397 = valid397 || _valid66;
            const _errs1512 = errors;
            if (!validate41(data487, { instancePath: instancePath + "/confirm/clamped", parentData: data483, parentDataProperty: "clamped", rootData, dynamicAnchors })) {
              vErrors = vErrors === null ? validate41.errors : vErrors.concat(validate41.errors);
              errors = vErrors.length;
            }
            var _valid66 = _errs1512 === errors;
            valid397 = valid397 || _valid66;
            if (!valid397) {
              const err1290 = { instancePath: instancePath + "/confirm/clamped", schemaPath: "#/properties/confirm/properties/clamped/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err1290];
              } else {
                vErrors.push(err1290);
              }
              errors++;
            } else {
              errors = _errs1509;
              if (vErrors !== null) {
                if (_errs1509) {
                  vErrors.length = _errs1509;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data483.air !== void 0) {
            let data488 = data483.air;
            const _errs1514 = errors;
            let valid398 = false;
            const _errs1515 = errors;
            if (typeof data488 !== "string") {
              const err1291 = { instancePath: instancePath + "/confirm/air", schemaPath: "#/properties/confirm/properties/air/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err1291];
              } else {
                vErrors.push(err1291);
              }
              errors++;
            }
            if ("operator" !== data488) {
              const err1292 = { instancePath: instancePath + "/confirm/air", schemaPath: "#/properties/confirm/properties/air/anyOf/0/const", keyword: "const", params: { allowedValue: "operator" }, message: "must be equal to constant" };
              if (vErrors === null) {
                vErrors = [err1292];
              } else {
                vErrors.push(err1292);
              }
              errors++;
            }
            var _valid67 = _errs1515 === errors;
            valid398 = valid398 || _valid67;
            const _errs1517 = errors;
            if (!validate41(data488, { instancePath: instancePath + "/confirm/air", parentData: data483, parentDataProperty: "air", rootData, dynamicAnchors })) {
              vErrors = vErrors === null ? validate41.errors : vErrors.concat(validate41.errors);
              errors = vErrors.length;
            }
            var _valid67 = _errs1517 === errors;
            valid398 = valid398 || _valid67;
            if (!valid398) {
              const err1293 = { instancePath: instancePath + "/confirm/air", schemaPath: "#/properties/confirm/properties/air/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err1293];
              } else {
                vErrors.push(err1293);
              }
              errors++;
            } else {
              errors = _errs1514;
              if (vErrors !== null) {
                if (_errs1514) {
                  vErrors.length = _errs1514;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data483["hold-down"] !== void 0) {
            let data489 = data483["hold-down"];
            if (data489 && typeof data489 == "object" && !Array.isArray(data489)) {
              if (data489.wait === void 0) {
                const err1294 = { instancePath: instancePath + "/confirm/hold-down", schemaPath: "#/properties/confirm/properties/hold-down/required", keyword: "required", params: { missingProperty: "wait" }, message: "must have required property 'wait'" };
                if (vErrors === null) {
                  vErrors = [err1294];
                } else {
                  vErrors.push(err1294);
                }
                errors++;
              }
              for (const key79 in data489) {
                if (!(key79 === "wait" || key79 === "timeout")) {
                  const err1295 = { instancePath: instancePath + "/confirm/hold-down", schemaPath: "#/properties/confirm/properties/hold-down/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key79 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err1295];
                  } else {
                    vErrors.push(err1295);
                  }
                  errors++;
                }
              }
              if (data489.wait !== void 0) {
                let data490 = data489.wait;
                if (typeof data490 !== "string") {
                  const err1296 = { instancePath: instancePath + "/confirm/hold-down/wait", schemaPath: "#/properties/confirm/properties/hold-down/properties/wait/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1296];
                  } else {
                    vErrors.push(err1296);
                  }
                  errors++;
                }
                if ("hold-down" !== data490) {
                  const err1297 = { instancePath: instancePath + "/confirm/hold-down/wait", schemaPath: "#/properties/confirm/properties/hold-down/properties/wait/const", keyword: "const", params: { allowedValue: "hold-down" }, message: "must be equal to constant" };
                  if (vErrors === null) {
                    vErrors = [err1297];
                  } else {
                    vErrors.push(err1297);
                  }
                  errors++;
                }
              }
              if (data489.timeout !== void 0) {
                let data491 = data489.timeout;
                if (typeof data491 === "string") {
                  if (!pattern98.test(data491)) {
                    const err1298 = { instancePath: instancePath + "/confirm/hold-down/timeout", schemaPath: "#/$defs/time/pattern", keyword: "pattern", params: { pattern: "^\\d{1,6}(\\.\\d{1,6})? ?(s|ms|min)$" }, message: 'must match pattern "^\\d{1,6}(\\.\\d{1,6})? ?(s|ms|min)$"' };
                    if (vErrors === null) {
                      vErrors = [err1298];
                    } else {
                      vErrors.push(err1298);
                    }
                    errors++;
                  }
                } else {
                  const err1299 = { instancePath: instancePath + "/confirm/hold-down/timeout", schemaPath: "#/$defs/time/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1299];
                  } else {
                    vErrors.push(err1299);
                  }
                  errors++;
                }
              }
            } else {
              const err1300 = { instancePath: instancePath + "/confirm/hold-down", schemaPath: "#/properties/confirm/properties/hold-down/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err1300];
              } else {
                vErrors.push(err1300);
              }
              errors++;
            }
          }
        } else {
          const err1301 = { instancePath: instancePath + "/confirm", schemaPath: "#/properties/confirm/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err1301];
          } else {
            vErrors.push(err1301);
          }
          errors++;
        }
      }
    } else {
      const err1302 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" };
      if (vErrors === null) {
        vErrors = [err1302];
      } else {
        vErrors.push(err1302);
      }
      errors++;
    }
    validate20.errors = vErrors;
    return errors === 0;
  }
  validate20.evaluated = { "props": true, "dynamicProps": false, "dynamicItems": false };
  return __toCommonJS(validator_exports);
})();

export function validateDialect(data: unknown): readonly SchemaError[] {
  return compiled.validateDialect(data) ? [] : compiled.validateDialect.errors;
}
