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
  var schema31 = { "$schema": "https://json-schema.org/draft/2020-12/schema", "$id": "https://tapewright.invalid/schemas/dialect.schema.json", "title": "Dialect", "description": "What one controller and its machine want. A file states only what differs from the one that it extends; a key that no file of the chain states is never guessed: what needs it is refused.", "type": "object", "additionalProperties": false, "required": ["dialect"], "properties": { "dialect": { "title": "Name of the dialect", "description": "The name that programs, set-up sheets and findings quote. Lower case, words joined by hyphens; the file is called NAME.dialect.yaml.\n\nIf wrong: the program on the machine cannot be traced to the file that shaped it.", "type": "string", "pattern": "^[a-z0-9]+(-[a-z0-9]+)*$", "maxLength": 40, "examples": ["quarry-router"] }, "title": { "title": "Title", "description": "One line for people: which controller or machine this is.\n\nIf wrong: an operator picks the dialect of another machine.", "type": "string", "minLength": 1, "maxLength": 120, "examples": ["Six-pocket router at the quarry workshop"] }, "extends": { "title": "Extends", "description": "The dialect whose values hold wherever this file states none: the name of a shipped dialect, or a file in the same folder or below (its name ends with .yaml). Mappings are merged key by key; lists, single values and `none` replace.\n\nIf wrong: words of another controller are inherited that this one rejects or takes for something else.", "type": "string", "minLength": 1, "maxLength": 200, "examples": ["explicit-words", "base/workshop.dialect.yaml"] }, "sources": { "title": "Sources", "description": "Where the facts of this file come from: standard and section, manual and page, or what was tried at the machine.\n\nIf wrong: nobody can tell later which value was read and which was guessed.", "type": "array", "minItems": 1, "maxItems": 40, "items": { "type": "string", "minLength": 1, "maxLength": 300 }, "examples": [["NISTIR 6556, The NIST RS274/NGC Interpreter, version 3, 17 August 2000"]] }, "cases": { "title": "Cases", "description": "Steps, and the blocks that are expected for them; `dialect test` runs them. They are this file's alone: a file that extends it does not inherit them. They may also stand beside it, in NAME.cases.yaml.\n\nIf wrong: `dialect test` fails, or holds the file to blocks that the controller does not want; programs do not change.", "type": "array", "minItems": 1, "maxItems": 500, "items": { "title": "Case", "description": "One case: steps, and the blocks that are expected for them.", "type": "object", "additionalProperties": false, "required": ["given", "expect"], "examples": [{ "given": ["rapid x10 y5"], "expect": ["G00 X10. Y5."] }], "properties": { "name": { "title": "Name of the case", "description": "What the case is about, for reports.\n\nIf wrong: nobody knows which case failed.", "type": "string", "minLength": 1, "maxLength": 80, "examples": ["arcs past half a circle"] }, "units": { "title": "Units of the case", "description": "mm or inch: what the numbers under `given` count, and the units of the program.\n\nIf wrong: the case gives other places than it means, and fails.", "enum": ["mm", "inch"], "examples": ["mm"] }, "given": { "title": "Given", "description": "Steps, one a text, in the notation that this page explains.\n\nIf wrong: the case says nothing about what the controller wants.", "type": "array", "minItems": 1, "maxItems": 200, "items": { "type": "string", "minLength": 1, "maxLength": 400 }, "examples": [["rapid x10 y5", "line z-2 feed 300"]] }, "expect": { "title": "Expected", "description": "The blocks that are to be written, one a text; a blank stands for a tab.\n\nIf wrong: the case fails, or holds the dialect to what the controller does not want.", "type": "array", "maxItems": 500, "items": { "type": "string", "maxLength": 400 }, "examples": [["G00 X10. Y5.", "G01 Z-2. F300."]] } } }, "examples": [[{ "given": ["rapid x10 y5"], "expect": ["G00 X10. Y5."] }]] }, "unanswered": { "title": "Unanswered", "description": "Keys of which nobody who knows the machine has said yet that they are true of it, as `dialect infer` lists them: each is told on every post, until it is taken out of the list. A confirmation that is listed is a wait or a dwell. A file that extends this one inherits the list, or states its own.\n\nIf wrong: a guess passes for a fact of the machine: the tool cuts before the spindle is at its speed.", "type": "array", "maxItems": 100, "uniqueItems": true, "items": { "type": "string", "pattern": "^[a-z0-9-]+(\\.[A-Za-z0-9-]+)*$", "maxLength": 80 }, "examples": [["confirm.at-speed", "confirm.stopped"]] }, "file": { "title": "File", "description": "The frame of the program text: file name ending, line ends, the marks at its start and end.", "type": "object", "additionalProperties": false, "properties": { "extension": { "title": "File name ending", "description": "Ending of the program file, without the dot.\n\nIf wrong: the controller does not list the file, or opens it as something else.", "type": "string", "pattern": "^[A-Za-z0-9]{1,8}$", "examples": ["nc"] }, "line-end": { "title": "Line end", "description": "What ends a line: lf (line feed), crlf (carriage return and line feed) or cr (carriage return).\n\nIf wrong: the whole file is read as one block, or each second line as an empty one.", "type": "string", "enum": ["lf", "crlf", "cr"], "examples": ["lf"] }, "last-line-end": { "title": "Line end after the last line", "description": "Whether the last line is ended, too.\n\nIf wrong: the last block, the end of the program, is ignored.", "$ref": "#/$defs/yesNo", "examples": ["yes"] }, "end-of-block": { "title": "End-of-block mark", "description": "A visible mark at the end of each block: none, semicolon or asterisk.\n\nIf wrong: `;` starts a comment on some controllers, so that the rest of the block is dropped; `*` is an error on others.", "type": "string", "enum": ["none", "semicolon", "asterisk"], "examples": ["none"] }, "delimiter": { "title": "Program delimiter", "description": "Whether a line with `%` alone stands first and last.\n\nIf wrong: the controller finds no start or no end of the program and refuses the transfer.", "type": "string", "enum": ["none", "percent"], "examples": ["percent"] }, "program-number": { "title": "Program number", "description": "How the program is identified by a number of its own, or none. Where it is stated, a job must have a number in the range.", "anyOf": [{ "title": "None", "description": "Programs have no number; the file name tells them apart.", "type": "string", "const": "none" }, { "type": "object", "additionalProperties": false, "properties": { "letter": { "title": "Letter of the program number", "description": "The address of the number.\n\nIf wrong: the line is refused, or a program of another number is overwritten.", "type": "string", "enum": ["O", ":", "%"], "examples": ["O"] }, "digits": { "title": "Digits of the program number", "description": "Least digits; zeros are put in front.\n\nUnit: digits.\n\nIf wrong: the controller takes the program for another one, or refuses it.", "type": "integer", "minimum": 1, "maximum": 8, "examples": [4] }, "from": { "title": "Lowest program number", "description": "Lowest number that is free for programs.\n\nUnit: program number.\n\nIf wrong: a program that the builder protects is overwritten, or the transfer is refused.", "type": "integer", "minimum": 0, "maximum": 99999999, "examples": [1] }, "to": { "title": "Highest program number", "description": "Highest number that is free for programs; many controls keep the 8000s or 9000s to themselves.\n\nUnit: program number.\n\nIf wrong: a cycle or macro of the builder is overwritten.", "type": "integer", "minimum": 0, "maximum": 99999999, "examples": [7999] } } }], "examples": ["none", { "letter": "O", "digits": 4, "from": 1, "to": 7999 }] }, "byte-order-mark": { "title": "Byte order mark", "description": "Whether the file begins with the three bytes that mark UTF-8.\n\nIf wrong: the first block is rejected, or read without its first word.", "$ref": "#/$defs/yesNo", "examples": ["no"] }, "leader": { "title": "Leader", "description": "Blank lines before the first line of the program.\n\nUnit: lines.\n\nIf wrong: the controller misses the first block, or takes the blank line for the end of the program.", "type": "integer", "minimum": 0, "maximum": 100, "examples": [0] }, "blank-lines": { "title": "Blank lines", "description": "between-sections: one stands before each section of the program; skipped: none is written, and the controller passes over one; none: the controller takes one for the end of the program.\n\nIf wrong: the program ends at the first tool change, with the spindle running.", "type": "string", "enum": ["between-sections", "skipped", "none"], "examples": ["skipped"] }, "characters": { "title": "Characters", "description": "What the text may hold: upper (capital letters, digits and the marks of the code, in comments, too), ascii, or utf-8 (any character in comments).\n\nIf wrong: the block is rejected, or the comment on the screen is garbled so that an instruction to the operator is lost.", "type": "string", "enum": ["upper", "ascii", "utf-8"], "examples": ["upper"] } }, "examples": [{ "extension": "nc", "line-end": "lf", "delimiter": "percent" }] }, "comments": { "title": "Comments", "description": "How text for people is set apart from the code.", "type": "object", "additionalProperties": false, "properties": { "style": { "title": "Comment style", "description": "parentheses: ( ... ); semicolon: from ; to the end of the line; none: the controller takes no comments, and messages to the operator cannot be written.\n\nIf wrong: the text is executed as code, or the block alarms.", "type": "string", "enum": ["parentheses", "semicolon", "none"], "examples": ["parentheses"] }, "longest": { "title": "Longest comment", "description": "Most characters of one comment, its marks not counted. Longer text is cut.\n\nUnit: characters.\n\nIf wrong: the block alarms, or the end of an instruction to the operator is missing.", "type": "integer", "minimum": 8, "maximum": 200, "examples": [60] }, "place": { "title": "Place of comments", "description": "anywhere: a comment may share its block with words; own-block: a comment has a block of its own.\n\nIf wrong: the words behind the comment are dropped, or the block alarms.", "type": "string", "enum": ["anywhere", "own-block"], "examples": ["anywhere"] } }, "examples": [{ "style": "parentheses", "longest": 60 }] }, "blocks": { "title": "Blocks", "description": "How words make up a block and blocks follow one another.", "type": "object", "additionalProperties": false, "properties": { "number": { "title": "Block numbers", "description": "Which blocks have a number (N word), or none.", "anyOf": [{ "title": "None", "description": "No block has a number.", "type": "string", "const": "none" }, { "type": "object", "additionalProperties": false, "properties": { "on": { "title": "Numbered blocks", "description": "all: every block; sections: only the first block of each section.\n\nIf wrong: block search and restart do not find the place.", "type": "string", "enum": ["all", "sections"], "examples": ["all"] }, "start": { "title": "First block number", "description": "Number of the first numbered block, and of the first one after the highest was reached.\n\nUnit: block number.\n\nIf wrong: a number that the controller reserves is used.", "type": "integer", "minimum": 0, "maximum": 99999999, "examples": [10] }, "step": { "title": "Step of block numbers", "description": "Difference from one numbered block to the next.\n\nUnit: block numbers.\n\nIf wrong: no free numbers for a block put in at the machine.", "type": "integer", "minimum": 1, "maximum": 1e3, "examples": [10] }, "to": { "title": "Highest block number", "description": "After it numbers begin again at the first.\n\nUnit: block number.\n\nIf wrong: the controller alarms in the middle of the program.", "type": "integer", "minimum": 1, "maximum": 99999999, "examples": [99990] }, "width": { "title": "Digits of block numbers", "description": "Least digits, zeros put in front; 0: as many as needed.\n\nUnit: digits.\n\nIf wrong: the number is not recognised.", "type": "integer", "minimum": 0, "maximum": 8, "examples": [0] } } }], "examples": ["none", { "on": "all", "start": 10, "step": 10, "to": 99990, "width": 0 }] }, "separator": { "title": "Separator", "description": "What stands between two words: none, blank or tab.\n\nIf wrong: words that run together are misread, or a blank counts against the length of the block.", "type": "string", "enum": ["none", "blank", "tab"], "examples": ["blank"] }, "order": { "title": "Word order", "description": "Letters in the order in which a block has them, each once. Every letter that the dialect writes must stand here.\n\nIf wrong: a controller with a fixed order ignores or misreads the word that stands in the wrong place.", "type": "array", "minItems": 3, "maxItems": 26, "uniqueItems": true, "items": { "$ref": "#/$defs/letter" }, "examples": [["N", "G", "X", "Y", "Z", "A", "B", "C", "I", "J", "K", "R", "P", "Q", "F", "S", "T", "H", "D", "M"]] }, "longest": { "title": "Longest block", "description": "Most characters of a block, its line end not counted, or none.\n\nUnit: characters.\n\nIf wrong: the block is cut short: in the worst case a coordinate loses its last digits and the axis goes to another place without an alarm.", "anyOf": [{ "title": "None", "description": "Any length.", "type": "string", "const": "none" }, { "type": "integer", "minimum": 20, "maximum": 4e3 }], "examples": [80] }, "g-words": { "title": "G words in a block", "description": "one: a single G word; any: one of each modal group.\n\nIf wrong: the last one wins without a word, or the block alarms.", "type": "string", "enum": ["one", "any"], "examples": ["any"] }, "m-words": { "title": "M words in a block", "description": "Most M words in one block.\n\nUnit: words.\n\nIf wrong: only the first or the last one acts: coolant or spindle is missing.", "type": "integer", "minimum": 1, "maximum": 8, "examples": [1] }, "modes": { "title": "Modes in a block", "description": "together: modes that are set one after another share a block (as far as g-words allows); apart: each has a block of its own.\n\nIf wrong: a mode is dropped: the program runs in the wrong plane, units or offset.", "type": "string", "enum": ["together", "apart"], "examples": ["together"] }, "sections": { "title": "Sections", "description": "The parts of a program at which it can be taken up again: what begins one, and how its first block is marked.", "type": "object", "additionalProperties": false, "properties": { "begin-at": { "title": "Beginning of a section", "description": "operation: each operation of the job begins one; tool: only one with another tool does.\n\nIf wrong: the search for a block stops at a place where tool and offsets are not stated.", "type": "string", "enum": ["operation", "tool"], "examples": ["operation"] }, "mark": { "title": "Mark of a section", "description": "Address of the block number where a section begins: N as everywhere, or colon (the alignment function).\n\nIf wrong: the block alarms, or a search does not find the place.", "type": "string", "enum": ["N", "colon"], "examples": ["N"] }, "comments": { "title": "Comment of a section", "description": "yes: a comment with the name of the operation, or of the tool where a section begins at one, stands before the first block of each section; no: none does. A comment is no step, and is never read as a message.\n\nIf wrong: nobody finds the place at the screen, or the comment alarms.", "$ref": "#/$defs/yesNo", "examples": ["no"] }, "modes": { "title": "Modes of a section", "description": "restated: each section states all modes that the start of the program states, units, compensation off and cycles off among them, which a restart by the control's own block search needs; tool, length offset and spindle are said where they change, so that only a section that begins with a tool has them all; kept: it states the modes of its operation, and what was said at the start stays in force.\n\nIf wrong: a program that is taken up at a section runs in units or with a compensation that somebody left in force.", "type": "string", "enum": ["restated", "kept"], "examples": ["kept"] } }, "examples": [{ "begin-at": "operation", "mark": "N" }] }, "delete": { "title": "Block delete", "description": "Marks by which the operator's switch skips a block. Programs are written with one only where `stops.optional` asks for it; in programs that are read they are understood.", "type": "object", "additionalProperties": false, "properties": { "mark": { "title": "Block delete mark", "description": "none: there is no such switch; slash: `/`; numbered: `/` or `/1` to `/9`, with a switch for each.\n\nIf wrong: a block that should be skipped is executed, or the other way round.", "type": "string", "enum": ["none", "slash", "numbered"], "examples": ["slash"] }, "place": { "title": "Place of the block delete mark", "description": "before-number: /N10; after-number: N10/\n\nIf wrong: the mark is not seen, and the block is executed although its switch is on.", "type": "string", "enum": ["before-number", "after-number"], "examples": ["before-number"] } }, "examples": [{ "mark": "slash", "place": "before-number" }] }, "most-words": { "title": "Words in a block", "description": "Most words in one block, the block number not counted, or none.\n\nUnit: words.\n\nIf wrong: the block alarms, or words at its end are not executed.", "anyOf": [{ "title": "None", "description": "Any number of words.", "type": "string", "const": "none" }, { "type": "integer", "minimum": 2, "maximum": 40 }], "examples": ["none"] }, "stops-act": { "title": "When stops act", "description": "Whether spindle stop and coolant off act before or after the motion in their block; program stop and program end act after it in any case. Where `executes` is left-to-right, all of them act where they stand. They are written in blocks of their own; this decides what a program from elsewhere means.\n\nIf wrong: the spindle stops and the tool is then driven through the material.", "type": "string", "enum": ["before-motion", "after-motion"], "examples": ["after-motion"] }, "executes": { "title": "Order of execution", "description": "by-kind: the words of a block act in the order of their kinds, whatever their order in the text (NISTIR 6556 Table 8); left-to-right: each word acts where it stands, and a motion where its first axis word stands.\n\nIf wrong: the spindle starts at the speed said before, or an axis moves at the feed or in the mode of the block before.", "type": "string", "enum": ["by-kind", "left-to-right"], "examples": ["by-kind"] } }, "examples": [{ "number": "none", "separator": "blank", "longest": 80, "g-words": "any", "m-words": 1 }] }, "numbers": { "title": "Numbers", "description": "How numbers are written. `point`, `trailing-zeros`, `leading-zero`, `plus`, `suppressed-zeros`, `digits` and `whole-digits` hold for all; a single address may state its own.", "type": "object", "additionalProperties": false, "properties": { "point": { "title": "Decimal point", "description": "always: every number with decimals has a point; when-needed: whole numbers have none; never: the point is implied, and the number counts least increments.\n\nIf wrong: a control that counts least increments reads X50 as 0.050 mm; the opposite mistake moves a thousand times too far.", "type": "string", "enum": ["always", "when-needed", "never"], "examples": ["always"] }, "trailing-zeros": { "title": "Zeros at the end", "description": "keep: 1.500; drop: 1.5 and 10.; one: 1.5 and 10.0 (at least one digit behind the point).\n\nIf wrong: a number without decimals may be read in least increments.", "type": "string", "enum": ["keep", "drop", "one"], "examples": ["keep"] }, "leading-zero": { "title": "Zero before the point", "description": "keep: 0.5; drop: .5\n\nIf wrong: the word is a syntax error.", "type": "string", "enum": ["keep", "drop"], "examples": ["keep"] }, "plus": { "title": "Plus sign", "description": "Whether a positive number with a direction (axes, arc centres) has a + sign.\n\nIf wrong: the word is a syntax error, or an old control takes it as unsigned.", "$ref": "#/$defs/yesNo", "examples": ["no"] }, "suppressed-zeros": { "title": "Zeros left out", "description": "With an implied point: which zeros are left out. leading: X12500 is 12.500; trailing: the number is read from the left; none: all digits stand.\n\nIf wrong: every coordinate is wrong by powers of ten.", "type": "string", "enum": ["leading", "trailing", "none"], "examples": ["leading"] }, "digits": { "title": "Digits of a number", "description": "With an implied point: how many digits a number has before zeros at its end are left out.\n\nUnit: digits.\n\nIf wrong: every coordinate is wrong by powers of ten.", "type": "integer", "minimum": 1, "maximum": 12, "examples": [7] }, "whole-digits": { "title": "Digits before the point", "description": "Most digits before the point, or none for no limit.\n\nUnit: digits.\n\nIf wrong: the word alarms, or its first digits are lost and the axis goes to another place.", "anyOf": [{ "title": "None", "description": "As many as the number has.", "type": "string", "const": "none" }, { "type": "integer", "minimum": 1, "maximum": 12 }], "examples": ["none"] }, "length": { "title": "Axis words", "description": "Numbers of X Y Z, and of the levels and pecks of cycles. Digits behind the point, by the units of the program; the mapping may also state how this number differs from the rest.", "type": "object", "additionalProperties": false, "properties": { "mm": { "title": "Decimals in millimetres", "description": "Digits behind the point in a program in millimetres: 3 means a least increment of 0.001 mm.\n\nUnit: digits behind the point of a length in mm.\n\nIf wrong: the controller rejects a number with too many digits, or rounds it by itself, so that arcs no longer end where they should.", "type": "integer", "minimum": 0, "maximum": 7, "examples": [3] }, "inch": { "title": "Decimals in inches", "description": "Digits behind the point in a program in inches: 4 means a least increment of 0.0001 inch.\n\nUnit: digits behind the point of a length in inch.\n\nIf wrong: the controller rejects a number with too many digits, or rounds it by itself, so that arcs no longer end where they should.", "type": "integer", "minimum": 0, "maximum": 6, "examples": [4] }, "point": { "$ref": "#/$defs/own-point" }, "trailing-zeros": { "$ref": "#/$defs/own-trailing-zeros" }, "leading-zero": { "$ref": "#/$defs/own-leading-zero" }, "plus": { "$ref": "#/$defs/own-plus" }, "suppressed-zeros": { "$ref": "#/$defs/own-suppressed-zeros" }, "digits": { "$ref": "#/$defs/own-digits" }, "whole-digits": { "$ref": "#/$defs/own-whole-digits" } }, "examples": [{ "mm": 3, "inch": 4 }] }, "arc-centre": { "title": "Arc centre and radius words", "description": "Numbers of I J K and of the radius. Digits behind the point, by the units of the program; the mapping may also state how this number differs from the rest.", "type": "object", "additionalProperties": false, "properties": { "mm": { "title": "Decimals in millimetres", "description": "Digits behind the point in a program in millimetres: 3 means a least increment of 0.001 mm.\n\nUnit: digits behind the point of a length in mm.\n\nIf wrong: start and end of an arc differ in radius: the controller alarms, or steps on the part.", "type": "integer", "minimum": 0, "maximum": 7, "examples": [3] }, "inch": { "title": "Decimals in inches", "description": "Digits behind the point in a program in inches: 4 means a least increment of 0.0001 inch.\n\nUnit: digits behind the point of a length in inch.\n\nIf wrong: start and end of an arc differ in radius: the controller alarms, or steps on the part.", "type": "integer", "minimum": 0, "maximum": 6, "examples": [4] }, "point": { "$ref": "#/$defs/own-point" }, "trailing-zeros": { "$ref": "#/$defs/own-trailing-zeros" }, "leading-zero": { "$ref": "#/$defs/own-leading-zero" }, "plus": { "$ref": "#/$defs/own-plus" }, "suppressed-zeros": { "$ref": "#/$defs/own-suppressed-zeros" }, "digits": { "$ref": "#/$defs/own-digits" }, "whole-digits": { "$ref": "#/$defs/own-whole-digits" } }, "examples": [{ "mm": 3, "inch": 4 }] }, "peck": { "title": "Peck words", "description": "Numbers of the peck of a cycle and of its back-off. Digits behind the point, by the units of the program; the mapping may also state how this number differs from the rest, such as an implied point.", "type": "object", "additionalProperties": false, "properties": { "mm": { "title": "Decimals in millimetres", "description": "Digits behind the point in a program in millimetres: 3 means a least increment of 0.001 mm.\n\nUnit: digits behind the point of a length in mm.\n\nIf wrong: the hole is drilled in one go, or in a thousand pecks.", "type": "integer", "minimum": 0, "maximum": 7, "examples": [3] }, "inch": { "title": "Decimals in inches", "description": "Digits behind the point in a program in inches: 4 means a least increment of 0.0001 inch.\n\nUnit: digits behind the point of a length in inch.\n\nIf wrong: the hole is drilled in one go, or in a thousand pecks.", "type": "integer", "minimum": 0, "maximum": 6, "examples": [4] }, "point": { "$ref": "#/$defs/own-point" }, "trailing-zeros": { "$ref": "#/$defs/own-trailing-zeros" }, "leading-zero": { "$ref": "#/$defs/own-leading-zero" }, "plus": { "$ref": "#/$defs/own-plus" }, "suppressed-zeros": { "$ref": "#/$defs/own-suppressed-zeros" }, "digits": { "$ref": "#/$defs/own-digits" } }, "examples": [{ "mm": 3, "inch": 4 }] }, "angle": { "title": "Rotary words", "description": "Numbers of A B C. Either the digits behind the point, or a mapping that also states how this number differs from the rest.\n\nUnit: digits behind the point of an angle in degrees.\n\nIf wrong: the rotary axis stands short of or past its place.", "anyOf": [{ "type": "integer", "minimum": 0, "maximum": 7 }, { "type": "object", "additionalProperties": false, "properties": { "decimals": { "title": "Digits behind the point", "description": "The least increment as a number of decimals.\n\nUnit: digits.\n\nIf wrong: the rotary axis stands short of or past its place.", "type": "integer", "minimum": 0, "maximum": 7, "examples": [3] }, "point": { "$ref": "#/$defs/own-point" }, "trailing-zeros": { "$ref": "#/$defs/own-trailing-zeros" }, "leading-zero": { "$ref": "#/$defs/own-leading-zero" }, "plus": { "$ref": "#/$defs/own-plus" }, "suppressed-zeros": { "$ref": "#/$defs/own-suppressed-zeros" }, "digits": { "$ref": "#/$defs/own-digits" }, "whole-digits": { "$ref": "#/$defs/own-whole-digits" } } }], "examples": [3] }, "feed-per-minute": { "title": "Feed per minute", "description": "Numbers of F in feed per minute. Digits behind the point, by the units of the program; the mapping may also state how this number differs from the rest.", "type": "object", "additionalProperties": false, "properties": { "mm": { "title": "Decimals in millimetres", "description": "Digits behind the point in a program in millimetres: 3 means a least increment of 0.001 mm.\n\nUnit: digits behind the point of a feed in mm a minute.\n\nIf wrong: the feed is rejected, or a decimal is dropped and the tool moves ten times too fast.", "type": "integer", "minimum": 0, "maximum": 7, "examples": [1] }, "inch": { "title": "Decimals in inches", "description": "Digits behind the point in a program in inches: 4 means a least increment of 0.0001 inch.\n\nUnit: digits behind the point of a feed in inch a minute.\n\nIf wrong: the feed is rejected, or a decimal is dropped and the tool moves ten times too fast.", "type": "integer", "minimum": 0, "maximum": 6, "examples": [2] }, "point": { "$ref": "#/$defs/own-point" }, "trailing-zeros": { "$ref": "#/$defs/own-trailing-zeros" }, "leading-zero": { "$ref": "#/$defs/own-leading-zero" }, "plus": { "$ref": "#/$defs/own-plus" }, "suppressed-zeros": { "$ref": "#/$defs/own-suppressed-zeros" }, "digits": { "$ref": "#/$defs/own-digits" }, "whole-digits": { "$ref": "#/$defs/own-whole-digits" } }, "examples": [{ "mm": 1, "inch": 2 }] }, "feed-per-revolution": { "title": "Feed per revolution", "description": "Numbers of F in feed per revolution. Digits behind the point, by the units of the program; the mapping may also state how this number differs from the rest.", "type": "object", "additionalProperties": false, "properties": { "mm": { "title": "Decimals in millimetres", "description": "Digits behind the point in a program in millimetres: 3 means a least increment of 0.001 mm.\n\nUnit: digits behind the point of a feed in mm a revolution.\n\nIf wrong: a feed of 0.08 becomes 0, or is taken as 8.", "type": "integer", "minimum": 0, "maximum": 7, "examples": [3] }, "inch": { "title": "Decimals in inches", "description": "Digits behind the point in a program in inches: 4 means a least increment of 0.0001 inch.\n\nUnit: digits behind the point of a feed in inch a revolution.\n\nIf wrong: a feed of 0.08 becomes 0, or is taken as 8.", "type": "integer", "minimum": 0, "maximum": 6, "examples": [4] }, "point": { "$ref": "#/$defs/own-point" }, "trailing-zeros": { "$ref": "#/$defs/own-trailing-zeros" }, "leading-zero": { "$ref": "#/$defs/own-leading-zero" }, "plus": { "$ref": "#/$defs/own-plus" }, "suppressed-zeros": { "$ref": "#/$defs/own-suppressed-zeros" }, "digits": { "$ref": "#/$defs/own-digits" }, "whole-digits": { "$ref": "#/$defs/own-whole-digits" } }, "examples": [{ "mm": 3, "inch": 4 }] }, "inverse-time": { "title": "Inverse-time feed", "description": "Numbers of F in inverse time. Either the digits behind the point, or a mapping that also states how this number differs from the rest.\n\nUnit: digits behind the point of a feed in 1/min.\n\nIf wrong: the tool moves at a multiple or a fraction of the feed.", "anyOf": [{ "type": "integer", "minimum": 0, "maximum": 7 }, { "type": "object", "additionalProperties": false, "properties": { "decimals": { "title": "Digits behind the point", "description": "The least increment as a number of decimals.\n\nUnit: digits.\n\nIf wrong: the tool moves at a multiple or a fraction of the feed.", "type": "integer", "minimum": 0, "maximum": 7, "examples": [4] }, "point": { "$ref": "#/$defs/own-point" }, "trailing-zeros": { "$ref": "#/$defs/own-trailing-zeros" }, "leading-zero": { "$ref": "#/$defs/own-leading-zero" }, "plus": { "$ref": "#/$defs/own-plus" }, "suppressed-zeros": { "$ref": "#/$defs/own-suppressed-zeros" }, "digits": { "$ref": "#/$defs/own-digits" }, "whole-digits": { "$ref": "#/$defs/own-whole-digits" } } }], "examples": [4] }, "speed": { "title": "Spindle speed", "description": "Numbers of S. Either the digits behind the point, or a mapping that also states how this number differs from the rest.\n\nUnit: digits behind the point of a speed in rpm.\n\nIf wrong: the block alarms, or the speed is cut to a multiple.", "anyOf": [{ "type": "integer", "minimum": 0, "maximum": 7 }, { "type": "object", "additionalProperties": false, "properties": { "decimals": { "title": "Digits behind the point", "description": "The least increment as a number of decimals.\n\nUnit: digits.\n\nIf wrong: the block alarms, or the speed is cut to a multiple.", "type": "integer", "minimum": 0, "maximum": 7, "examples": [0] }, "point": { "$ref": "#/$defs/own-point" }, "trailing-zeros": { "$ref": "#/$defs/own-trailing-zeros" }, "leading-zero": { "$ref": "#/$defs/own-leading-zero" }, "plus": { "$ref": "#/$defs/own-plus" }, "suppressed-zeros": { "$ref": "#/$defs/own-suppressed-zeros" }, "digits": { "$ref": "#/$defs/own-digits" }, "whole-digits": { "$ref": "#/$defs/own-whole-digits" } } }], "examples": [0] }, "dwell": { "title": "Dwell", "description": "Number of the dwell, counted in `dwell.unit`. Either the digits behind the point, or a mapping that also states how this number differs from the rest.\n\nUnit: digits behind the point of a time in `dwell.unit`.\n\nIf wrong: a dwell of 0.5 becomes 0 and the spindle has not come up to speed.", "anyOf": [{ "type": "integer", "minimum": 0, "maximum": 7 }, { "type": "object", "additionalProperties": false, "properties": { "decimals": { "title": "Digits behind the point", "description": "The least increment as a number of decimals.\n\nUnit: digits.\n\nIf wrong: a dwell of 0.5 becomes 0 and the spindle has not come up to speed.", "type": "integer", "minimum": 0, "maximum": 7, "examples": [2] }, "point": { "$ref": "#/$defs/own-point" }, "trailing-zeros": { "$ref": "#/$defs/own-trailing-zeros" }, "leading-zero": { "$ref": "#/$defs/own-leading-zero" }, "plus": { "$ref": "#/$defs/own-plus" }, "suppressed-zeros": { "$ref": "#/$defs/own-suppressed-zeros" }, "digits": { "$ref": "#/$defs/own-digits" }, "whole-digits": { "$ref": "#/$defs/own-whole-digits" } } }], "examples": [2] }, "cycle-dwell": { "title": "Dwell in a cycle", "description": "Number of the dwell at the bottom of a hole, counted in `cycles.words.dwell-unit`. Either the digits behind the point, or a mapping that also states how this number differs from the rest.\n\nUnit: digits behind the point of a time in `cycles.words.dwell-unit`.\n\nIf wrong: no dwell, or a very long one with the tool rubbing in the hole.", "anyOf": [{ "type": "integer", "minimum": 0, "maximum": 7 }, { "type": "object", "additionalProperties": false, "properties": { "decimals": { "title": "Digits behind the point", "description": "The least increment as a number of decimals.\n\nUnit: digits.\n\nIf wrong: no dwell, or a very long one with the tool rubbing in the hole.", "type": "integer", "minimum": 0, "maximum": 7, "examples": [2] }, "point": { "$ref": "#/$defs/own-point" }, "trailing-zeros": { "$ref": "#/$defs/own-trailing-zeros" }, "leading-zero": { "$ref": "#/$defs/own-leading-zero" }, "plus": { "$ref": "#/$defs/own-plus" }, "suppressed-zeros": { "$ref": "#/$defs/own-suppressed-zeros" }, "digits": { "$ref": "#/$defs/own-digits" }, "whole-digits": { "$ref": "#/$defs/own-whole-digits" } } }], "examples": [2] }, "timeout": { "title": "Timeout of a wait", "description": "Number of the timeout, counted in `wait.timeout-unit`. Either the digits behind the point, or a mapping that also states how this number differs from the rest.\n\nUnit: digits behind the point of a time in `wait.timeout-unit`.\n\nIf wrong: the wait gives up at once, or hangs for minutes with the fault unseen.", "anyOf": [{ "type": "integer", "minimum": 0, "maximum": 7 }, { "type": "object", "additionalProperties": false, "properties": { "decimals": { "title": "Digits behind the point", "description": "The least increment as a number of decimals.\n\nUnit: digits.\n\nIf wrong: the wait gives up at once, or hangs for minutes with the fault unseen.", "type": "integer", "minimum": 0, "maximum": 7, "examples": [1] }, "point": { "$ref": "#/$defs/own-point" }, "trailing-zeros": { "$ref": "#/$defs/own-trailing-zeros" }, "leading-zero": { "$ref": "#/$defs/own-leading-zero" }, "plus": { "$ref": "#/$defs/own-plus" }, "suppressed-zeros": { "$ref": "#/$defs/own-suppressed-zeros" }, "digits": { "$ref": "#/$defs/own-digits" }, "whole-digits": { "$ref": "#/$defs/own-whole-digits" } } }], "examples": [1] }, "code-width": { "title": "Least digits of codes", "description": "Least digits of codes and of tool and offset numbers; zeros are put in front: 2 writes G00, M06, T01.", "type": "object", "additionalProperties": false, "properties": { "G": { "title": "Digits of G words", "description": "Least digits of a G code before its point.\n\nUnit: digits.\n\nIf wrong: the code is not recognised.", "type": "integer", "minimum": 1, "maximum": 4, "examples": [2] }, "M": { "title": "Digits of M words", "description": "Least digits of an M code.\n\nUnit: digits.\n\nIf wrong: the code is not recognised.", "type": "integer", "minimum": 1, "maximum": 4, "examples": [2] }, "T": { "title": "Digits of T words", "description": "Least digits of a tool number.\n\nUnit: digits.\n\nIf wrong: a number with too few digits selects another tool or carries no offset.", "type": "integer", "minimum": 1, "maximum": 4, "examples": [2] }, "H": { "title": "Digits of H words", "description": "Least digits of the number of a length offset.\n\nUnit: digits.\n\nIf wrong: the length of another tool acts, and the tool is driven into the work.", "type": "integer", "minimum": 1, "maximum": 4, "examples": [2] }, "D": { "title": "Digits of D words", "description": "Least digits of the number of a radius offset.\n\nUnit: digits.\n\nIf wrong: the radius of another tool acts, and the contour is gouged.", "type": "integer", "minimum": 1, "maximum": 4, "examples": [2] } }, "examples": [{ "G": 2, "M": 2, "T": 2, "H": 2, "D": 2 }] } }, "examples": [{ "point": "always", "trailing-zeros": "keep", "length": { "mm": 3, "inch": 4 } }] }, "modal": { "title": "Modal words", "description": "Which words are repeated although they have not changed.", "type": "object", "additionalProperties": false, "properties": { "motion": { "title": "Motion word", "description": "modal: written when the kind of motion changes; each-block: in every block with axis words.\n\nIf wrong: without its motion word a block does nothing, or is run as the last motion: a rapid where a feed was meant.", "type": "string", "enum": ["modal", "each-block"], "examples": ["modal"] }, "axes": { "title": "Axis words", "description": "changed: only axes that move; all: every axis whose place is known.\n\nIf wrong: an axis left out is taken as 0 or stays where it was.", "type": "string", "enum": ["changed", "all"], "examples": ["changed"] }, "arc-end": { "title": "End of an arc", "description": "changed: only the end coordinates that differ; both: both axes of the plane.\n\nIf wrong: the arc is refused, or ends at another place.", "type": "string", "enum": ["changed", "both"], "examples": ["changed"] }, "arc-centre": { "title": "Zeros in an arc centre", "description": "non-zero: a centre word of 0 is left out; both: both are written.\n\nIf wrong: `centre missing` alarm, or the last centre is used and the arc runs wild.", "type": "string", "enum": ["non-zero", "both"], "examples": ["both"] }, "feed": { "title": "Feed word", "description": "modal: when the feed changes; after-rapid: also in the first feed block after a rapid; each-block: in every feed block.\n\nIf wrong: the block alarms for want of a feed, or an old feed is used.", "type": "string", "enum": ["modal", "after-rapid", "each-block"], "examples": ["modal"] }, "speed": { "title": "Speed word", "description": "each-start: at every start of the spindle; changed: only where the speed is not the one said last, so that a start alone takes that one. Behind a stop of the program it is said in any case.\n\nIf wrong: the spindle starts at a speed that is left over, or not at all.", "type": "string", "enum": ["each-start", "changed"], "examples": ["each-start"] } }, "examples": [{ "motion": "modal", "axes": "changed", "arc-end": "changed", "arc-centre": "both", "feed": "modal", "speed": "each-start" }] }, "axes": { "title": "Letters of the axes", "description": "The letters by which the controller knows the axes of ISO 841, where Z is the axis of the spindle.", "type": "object", "additionalProperties": false, "axes": [56], "properties": { "x": { "title": "Letter of X", "description": "Letter of the linear axis X of ISO 841.\n\nIf wrong: another axis moves.", "$ref": "#/$defs/axisLetter", "examples": ["X"] }, "y": { "title": "Letter of Y", "description": "Letter of the linear axis Y of ISO 841.\n\nIf wrong: another axis moves.", "$ref": "#/$defs/axisLetter", "examples": ["Y"] }, "z": { "title": "Letter of Z", "description": "Letter of the linear axis Z of ISO 841.\n\nIf wrong: another axis moves.", "$ref": "#/$defs/axisLetter", "examples": ["Z"] }, "a": { "title": "Letter of A", "description": "Letter of the rotary axis A of ISO 841.\n\nIf wrong: another axis moves.", "$ref": "#/$defs/axisLetter", "examples": ["A"] }, "b": { "title": "Letter of B", "description": "Letter of the rotary axis B of ISO 841.\n\nIf wrong: another axis moves.", "$ref": "#/$defs/axisLetter", "examples": ["B"] }, "c": { "title": "Letter of C", "description": "Letter of the rotary axis C of ISO 841.\n\nIf wrong: another axis moves.", "$ref": "#/$defs/axisLetter", "examples": ["C"] } }, "examples": [{ "x": "X", "y": "Y", "z": "W" }] }, "motion": { "title": "Straight motion", "description": "Rapid and straight motion.", "type": "object", "additionalProperties": false, "properties": { "rapid": { "title": "Rapid", "description": "Code of the rapid.\n\nIf wrong: a rapid is run as a feed, or a feed as a rapid into the work.", "$ref": "#/$defs/codeOrNone", "examples": ["G0"] }, "line": { "title": "Straight line at feed", "description": "Code of a straight line at feed.\n\nIf wrong: a feed is run as a rapid into the work.", "$ref": "#/$defs/codeOrNone", "examples": ["G1"] }, "rapids": { "title": "Path of a rapid", "description": "straight: all axes arrive together on a straight path; dog-leg: each runs at its own rate. With dog-leg, a rapid that changes Z and X or Y is split: rising Z first, falling Z last.\n\nIf wrong: on a dog-leg the tool sweeps through a clamp that lies beside the straight path.", "type": "string", "enum": ["straight", "dog-leg"], "examples": ["dog-leg"] }, "rapid-axes": { "title": "Axes of a rapid", "description": "together: a rapid moves all its axes in one block; one-at-a-time: each has a block of its own, rising Z first, falling Z last. Between the holes of a fixed cycle the controller moves as it does.\n\nIf wrong: the tool sweeps through a clamp on a path that nobody has looked at.", "type": "string", "enum": ["together", "one-at-a-time"], "axes": [60], "examples": ["together"] }, "axes-at-once": { "title": "Axes that move at once", "description": "The most axes that one block may move. A job with a line or a helix that moves more is refused; rapids are split, rising Z first, falling Z last.\n\nUnit: axes.\n\nIf wrong: the block alarms, or an axis is left behind and the tool cuts elsewhere.", "type": "integer", "minimum": 2, "maximum": 6, "axes": [62], "examples": [3] }, "rapid-feed": { "title": "Rapid as a feed", "description": "For a controller without rapids (`rapid: none`): the feed of the straight lines that take their place, or none. A line at exactly this feed is a rapid; a job with a feed as fast is refused, and so is one with feeds other than a minute.\n\nUnit: mm/min, or with `in/min`.\n\nIf wrong: rapids creep, or the tool is dragged through the work at the speed of a rapid.", "anyOf": [{ "type": "string", "const": "none" }, { "$ref": "#/$defs/feed" }], "axes": [61], "examples": ["none", 6e3] }, "machine-move-lasts": { "title": "How long a move in machine coordinates lasts", "description": "block: the code of `machine-move` acts in its own block alone; until-work-offset: it suspends the work offset, and all motion is in machine coordinates until a work offset is stated anew.\n\nIf wrong: the tool goes to places of the work as if they were places of the machine.", "type": "string", "enum": ["block", "until-work-offset"], "axes": [52], "examples": ["block"] } }, "examples": [{ "rapid": "G0", "line": "G1", "rapids": "dog-leg" }] }, "units": { "title": "Units", "description": "Words for the units of the program.", "type": "object", "additionalProperties": false, "properties": { "mm": { "title": "Millimetres", "description": "Code for millimetres, or none where the controller has no word for it.\n\nIf wrong: everything is 25.4 times too small or too large.", "$ref": "#/$defs/codeOrNone", "examples": ["G21", "none"] }, "inch": { "title": "Inches", "description": "Code for inches, or none where the controller has no word for it.\n\nIf wrong: everything is 25.4 times too small or too large.", "$ref": "#/$defs/codeOrNone", "examples": ["G20", "none"] }, "programs-in": { "title": "Units of programs", "description": "job: a program is in the units of its job; mm or inch: always in these.\n\nIf wrong: everything is 25.4 times too small or too large.", "type": "string", "enum": ["job", "mm", "inch"], "examples": ["job"] }, "stated": { "title": "Where units are stated", "description": "with-modes: in the first block or any other, with other modes; first-block: alone in the first block of the program, and nowhere else.\n\nIf wrong: the block alarms, or offsets are taken in the other units.", "type": "string", "enum": ["with-modes", "first-block"], "axes": [49], "examples": ["with-modes"] } }, "examples": [{ "mm": "G21", "inch": "G20", "programs-in": "job" }] }, "plane": { "title": "Planes", "description": "Words that select the plane of arcs, cycles and compensation.", "type": "object", "additionalProperties": false, "properties": { "xy": { "title": "XY plane", "description": "Code of the XY plane.\n\nIf wrong: arcs run in another plane: the tool dives into the work.", "$ref": "#/$defs/codeOrNone", "examples": ["G17"] }, "zx": { "title": "ZX plane", "description": "Code of the ZX plane.\n\nIf wrong: arcs run in another plane: the tool dives into the work.", "$ref": "#/$defs/codeOrNone", "examples": ["G18"] }, "yz": { "title": "YZ plane", "description": "Code of the YZ plane.\n\nIf wrong: arcs run in another plane: the tool dives into the work.", "$ref": "#/$defs/codeOrNone", "examples": ["G19"] } }, "examples": [{ "xy": "G17", "zx": "G18", "yz": "G19" }] }, "distance": { "title": "Absolute and incremental", "description": "Words for absolute and incremental coordinates.", "type": "object", "additionalProperties": false, "properties": { "absolute": { "title": "Absolute", "description": "Code for absolute coordinates.\n\nIf wrong: places are taken as distances and the tool runs off.", "$ref": "#/$defs/codeOrNone", "examples": ["G90"] }, "incremental": { "title": "Incremental", "description": "Code for incremental coordinates.\n\nIf wrong: distances are taken as places.", "$ref": "#/$defs/codeOrNone", "examples": ["G91"] }, "programs-in": { "title": "Coordinates of programs", "description": "Whether programs are written with absolute or incremental coordinates.\n\nIf wrong: places are taken as distances and the tool runs off.", "type": "string", "enum": ["absolute", "incremental"], "examples": ["absolute"] } }, "examples": [{ "absolute": "G90", "incremental": "G91", "programs-in": "absolute" }] }, "arc": { "title": "Arcs", "description": "Circular motion.", "type": "object", "additionalProperties": false, "properties": { "cw": { "title": "Arc clockwise", "description": "Code of an arc clockwise seen from the + end of the axis across the plane.\n\nIf wrong: the arc runs the other way round.", "$ref": "#/$defs/codeOrNone", "examples": ["G2"] }, "ccw": { "title": "Arc counter-clockwise", "description": "Code of an arc counter-clockwise.\n\nIf wrong: the arc runs the other way round.", "$ref": "#/$defs/codeOrNone", "examples": ["G3"] }, "form": { "title": "Form of an arc", "description": "incremental-centre: I J K from the start point; absolute-centre: I J K as coordinates; radius: a radius word, negative above 180 degrees; none: arcs are not understood, and chords take their place.\n\nIf wrong: the centre lies elsewhere: a wild circle through work and clamps.", "type": "string", "enum": ["incremental-centre", "absolute-centre", "radius", "none"], "examples": ["incremental-centre"] }, "centre-words": { "title": "Arc centre modes", "description": "Words that choose absolute or incremental arc centres, where the controller has them.", "type": "object", "additionalProperties": false, "properties": { "absolute": { "title": "Absolute arc centres", "description": "Code for absolute arc centres, or none.\n\nIf wrong: the centre lies elsewhere: a wild circle.", "$ref": "#/$defs/codeOrNone", "examples": ["none", "G90.1"] }, "incremental": { "title": "Incremental arc centres", "description": "Code for incremental arc centres, or none.\n\nIf wrong: the centre lies elsewhere: a wild circle.", "$ref": "#/$defs/codeOrNone", "examples": ["none", "G91.1"] } }, "examples": [{ "absolute": "none", "incremental": "none" }] }, "radius-word": { "title": "Radius word", "description": "Letter of the radius, where `form` is radius.\n\nIf wrong: the arc is refused.", "$ref": "#/$defs/letter", "examples": ["R"] }, "planes": { "title": "Planes with arcs", "description": "The planes in which arcs are understood. Arcs in others become chords, or are refused.\n\nIf wrong: the block alarms, or the arc is cut in another plane.", "type": "array", "maxItems": 3, "uniqueItems": true, "items": { "type": "string", "enum": ["xy", "zx", "yz"] }, "examples": [["xy", "zx", "yz"]] }, "largest-sweep": { "title": "Largest sweep", "description": "Largest sweep of an arc in one block; larger ones are split.\n\nUnit: degrees.\n\nIf wrong: the arc takes the short way instead of the long one.", "type": "number", "exclusiveMinimum": 0, "maximum": 360, "examples": [360] }, "quadrants": { "title": "Arcs and quadrant lines", "description": "any: an arc may cross the quadrant lines of its circle (the lines through its centre along the axes); one: each block stays in one quadrant, and longer arcs are split at the lines.\n\nIf wrong: the block alarms, or the arc is cut in the wrong quadrant.", "type": "string", "enum": ["any", "one"], "examples": ["any"] }, "full-circle": { "title": "Full circle", "description": "Whether one block can be a full circle.\n\nIf wrong: nothing is cut, or a whole circle where nothing was meant.", "$ref": "#/$defs/yesNo", "examples": ["yes"] }, "helix": { "title": "Helix", "description": "Whether the third axis may move during an arc.\n\nIf wrong: the third axis plunges before or after the arc.", "$ref": "#/$defs/yesNo", "examples": ["yes"] }, "turns-word": { "title": "Turns word", "description": "Letter of the word for the number of turns of a helix, or none: one turn a block.\n\nIf wrong: the helix is cut with one turn and a steep plunge.", "$ref": "#/$defs/letterOrNone", "examples": ["none"] }, "feed-along": { "title": "Feed on a helix", "description": "What F means on a helix: path, the speed along the helix; circle, the speed along its circle seen from above.\n\nIf wrong: the tool moves up to several times faster than meant on a steep helix.", "type": "string", "enum": ["path", "circle"], "examples": ["path"] }, "smallest-radius": { "title": "Smallest radius", "description": "Arcs with a smaller radius become chords, or none.\n\nUnit: mm, or with `in`.\n\nIf wrong: the arc alarms or becomes a dwell mark.", "$ref": "#/$defs/lengthOrNone", "examples": ["none", 0.05] }, "largest-radius": { "title": "Largest radius", "description": "Arcs with a larger radius become chords, or none.\n\nUnit: mm, or with `in`.\n\nIf wrong: the arc alarms.", "$ref": "#/$defs/lengthOrNone", "examples": ["none", 5e3] }, "tolerance": { "title": "Radius tolerance", "description": "How far the radius at the start and at the end of an arc may differ before the controller alarms.", "type": "object", "additionalProperties": false, "properties": { "mm": { "title": "Tolerance in millimetres", "description": "In a program in millimetres.\n\nUnit: mm.\n\nIf wrong: the program stops in the middle of a cut, or the controller steps to the end point on the part.", "type": "number", "minimum": 0, "maximum": 10, "examples": [2e-3] }, "inch": { "title": "Tolerance in inches", "description": "In a program in inches.\n\nUnit: inch.\n\nIf wrong: the program stops in the middle of a cut, or the controller steps to the end point on the part.", "type": "number", "minimum": 0, "maximum": 1, "examples": [2e-4] }, "relative": { "title": "Relative tolerance", "description": "As a share of the radius; the larger of the two holds. 0: none.\n\nUnit: share of the radius (0.001 is 0.1 %).\n\nIf wrong: the program stops in the middle of a cut, or the controller steps to the end point on the part.", "type": "number", "minimum": 0, "maximum": 0.01, "examples": [0] } }, "examples": [{ "mm": 2e-3, "inch": 2e-4, "relative": 0 }] }, "chord-tolerance": { "title": "Chord tolerance", "description": "Largest distance between a chord and its arc, where chords take the place of an arc.\n\nUnit: mm, or with `in`.\n\nIf wrong: flats are seen on curves, or the blocks come faster than the controller reads them and the motion stutters.", "$ref": "#/$defs/length", "examples": [0.01] } }, "examples": [{ "cw": "G2", "ccw": "G3", "form": "incremental-centre", "helix": "yes", "feed-along": "path" }] }, "path": { "title": "Path modes", "description": "Words for how corners are taken.", "type": "object", "additionalProperties": false, "properties": { "exact": { "title": "Exact path", "description": "Code for the exact path.\n\nIf wrong: corners are rounded.", "$ref": "#/$defs/codeWithWordOrNone", "examples": ["G61"] }, "stop": { "title": "Exact stop", "description": "Code for a stop at each corner.\n\nIf wrong: dwell marks at each corner, or rounded corners.", "$ref": "#/$defs/codeWithWordOrNone", "examples": ["G61.1", "none"] }, "blend": { "title": "Continuous path", "description": "Code for blending corners at speed.\n\nIf wrong: the motion stutters and burns the edge.", "$ref": "#/$defs/codeWithWordOrNone", "examples": ["G64"] }, "tolerance-word": { "title": "Tolerance word", "description": "Letter of the word beside `blend` that says how far the path may leave its corners, a length in the units of the program; or none: an operation with a `tolerance` is then written on the exact path, and refused where there is no word for that.\n\nIf wrong: the block is rejected, or corners are cut wider than the job allows.", "$ref": "#/$defs/letterOrNone", "examples": ["none", "P"] }, "look-ahead": { "title": "Look-ahead", "description": "Codes that turn looking ahead over many blocks on, for operations that are blended, and off, for those on the exact path; or none.", "anyOf": [{ "title": "None", "description": "The control looks ahead by itself, or not at all.", "type": "string", "const": "none" }, { "type": "object", "additionalProperties": false, "properties": { "on": { "title": "Look-ahead on", "description": "Code that turns look-ahead on.\n\nIf wrong: the motion stutters, or details are rounded off.", "$ref": "#/$defs/codeWithWordOrNone", "examples": ["M97"] }, "off": { "title": "Look-ahead off", "description": "Code that turns look-ahead off.\n\nIf wrong: details are rounded off.", "$ref": "#/$defs/codeWithWordOrNone", "examples": ["M98"] } } }], "axes": [77], "examples": ["none", { "on": "M97", "off": "M98" }] } }, "examples": [{ "exact": "G61", "stop": "none", "blend": "G64" }] }, "feed": { "title": "Feed modes", "description": "Words for what F means.", "type": "object", "additionalProperties": false, "properties": { "per-minute": { "title": "Feed per minute", "description": "Code for feed in length units a minute.\n\nIf wrong: the feed is wrong by the spindle speed.", "$ref": "#/$defs/codeOrNone", "examples": ["G94"] }, "per-revolution": { "title": "Feed per revolution", "description": "Code for feed in length units a revolution, or none: the feed is worked out a minute.\n\nIf wrong: the feed is wrong by the spindle speed.", "$ref": "#/$defs/codeOrNone", "examples": ["none", "G95"] }, "inverse-time": { "title": "Inverse time", "description": "Code for feed in 1/minutes a block, or none.\n\nIf wrong: the tool moves at a wildly wrong feed.", "$ref": "#/$defs/codeOrNone", "examples": ["G93", "none"] }, "inverse-time-unit": { "title": "Unit of inverse time", "description": "What F counts in inverse time: per-minute: 1/minutes; per-second: 1/seconds.\n\nIf wrong: the tool moves 60 times too fast or too slow.", "type": "string", "enum": ["per-minute", "per-second"], "axes": [72], "examples": ["per-minute"] } }, "examples": [{ "per-minute": "G94", "per-revolution": "none", "inverse-time": "none" }] }, "dwell": { "title": "Dwell", "description": "A pause of a set time.", "type": "object", "additionalProperties": false, "properties": { "code": { "title": "Dwell code", "description": "Code of the dwell.\n\nIf wrong: there is no pause: the spindle is not up to speed when the cut begins.", "$ref": "#/$defs/codeOrNone", "examples": ["G4"] }, "word": { "title": "Dwell word", "description": "Letter of the time.\n\nIf wrong: the dwell alarms or is skipped; the spindle is not up to speed when the cut begins.", "$ref": "#/$defs/letter", "examples": ["P"] }, "unit": { "title": "Dwell unit", "description": "What a dwell is counted in: seconds, milliseconds, or revolutions of the spindle (rev). Under rev the time of a job becomes revolutions at the speed that is commanded there, rounded up, and no state can be confirmed by a dwell.\n\nUnit: s, ms or rev.\n\nIf wrong: 500 becomes 500 seconds, or 0.5 becomes nothing and the cut begins at low speed.", "type": "string", "enum": ["s", "ms", "rev"], "examples": ["s"] }, "blocks": { "title": "Block of a dwell", "description": "apart: a dwell has a block of its own; with-start: the one that follows a start of the spindle shares its block, on a control that starts before it dwells.\n\nIf wrong: the control dwells before it starts the spindle, or skips one of the two: the cut begins at low speed.", "type": "string", "enum": ["apart", "with-start"], "axes": [75], "examples": ["apart"] } }, "examples": [{ "code": "G4", "word": "P", "unit": "s" }] }, "compensation": { "title": "Cutter radius compensation", "description": "Words for compensation by the tool's radius, or none.", "anyOf": [{ "title": "None", "description": "The controller does not compensate.", "type": "string", "const": "none" }, { "type": "object", "additionalProperties": false, "properties": { "off": { "title": "Compensation off", "description": "Code that ends compensation.\n\nIf wrong: the next motion is offset by the radius.", "$ref": "#/$defs/codeOrNone", "examples": ["G40"] }, "left": { "title": "Compensation left", "description": "Code for the tool left of the contour.\n\nIf wrong: the contour is off by the tool's diameter.", "$ref": "#/$defs/codeOrNone", "examples": ["G41"] }, "right": { "title": "Compensation right", "description": "Code for the tool right of the contour.\n\nIf wrong: the contour is off by the tool's diameter.", "$ref": "#/$defs/codeOrNone", "examples": ["G42"] }, "word": { "title": "Radius offset word", "description": "Letter of the number of the radius offset, or none where the tool in the spindle decides.\n\nIf wrong: the radius of another tool acts.", "$ref": "#/$defs/letterOrNone", "examples": ["D"] }, "corner-feed": { "title": "Feed at inside corners", "description": "Codes that turn the slowing at inside corners on, where compensation begins, and off, where it has ended; or none.", "anyOf": [{ "title": "None", "description": "There are no words for it.", "type": "string", "const": "none" }, { "type": "object", "additionalProperties": false, "properties": { "on": { "title": "Slow at inside corners", "description": "Code that has the feed lowered at inside corners.\n\nIf wrong: the tool digs in at inside corners.", "$ref": "#/$defs/codeWithWordOrNone", "examples": ["G36"] }, "off": { "title": "Feed as stated", "description": "Code that ends the slowing.\n\nIf wrong: later contours are cut slower than meant.", "$ref": "#/$defs/codeWithWordOrNone", "examples": ["G37"] } } }], "axes": [78], "examples": ["none", { "on": "G36", "off": "G37" }] } } }], "examples": ["none", { "off": "G40", "left": "G41", "right": "G42", "word": "D" }] }, "length-offset": { "title": "Tool length offset", "description": "Words that make the length of the tool act, or none.", "anyOf": [{ "title": "None", "description": "No word makes a tool length act; the operator sets Z.", "type": "string", "const": "none" }, { "type": "object", "additionalProperties": false, "properties": { "on": { "title": "Length offset on", "description": "Code that makes a length offset act.\n\nIf wrong: the tool is driven into the work by its length.", "$ref": "#/$defs/codeOrNone", "examples": ["G43", "none"] }, "off": { "title": "Length offset off", "description": "Code that cancels it; or offset number 0 of its word, such as H0: the offset is then cancelled by its own code with that number (G43 H0).\n\nIf wrong: the length of the last tool still acts for the next one.", "type": "string", "pattern": "^(none|[A-Z]0|[GM]\\d{1,3}(\\.\\d)?)$", "examples": ["G49", "H0"] }, "word": { "title": "Length offset word", "description": "Letter of the number of the length offset.\n\nIf wrong: the length of another tool acts, and the tool is driven into the work.", "$ref": "#/$defs/letter", "examples": ["H"] }, "number": { "title": "Number of the length offset", "description": "tool: a tool has the length offset of its own number; free: any.\n\nIf wrong: another tool's length acts, and the tool is driven into the work.", "type": "string", "enum": ["tool", "free"], "examples": ["free"] }, "added": { "title": "Added to the number of the length offset", "description": "What is added to the number of a length offset when it is written, where the control keeps lengths behind other offsets of the same table: with 100, offset 3 is H103. Offset number 0 stays 0.\n\nUnit: offset number.\n\nIf wrong: another tool's length acts, and the tool is driven into the work.", "type": "integer", "minimum": 0, "maximum": 900, "examples": [0, 100] } } }], "examples": ["none", { "on": "G43", "off": "G49", "word": "H" }] }, "work-offset": { "title": "Work offsets", "description": "Codes of the work offsets 1 to 9 in order, or none. A number behind the end of the list cannot be said.\n\nIf wrong: the work is cut at the place of another set-up.", "anyOf": [{ "title": "None", "description": "There are no words for work offsets; the operator sets the origin.", "type": "string", "const": "none" }, { "type": "array", "minItems": 1, "maxItems": 9, "items": { "$ref": "#/$defs/codeWithWordOrNone" } }], "examples": ["none", ["G54", "G55", "G56", "G57", "G58", "G59"]] }, "machine-move": { "title": "Move in machine coordinates", "description": "Code for a move in machine coordinates, in the same block as the motion code, or none. It acts in its own block alone.\n\nIf wrong: the retract goes to a place in work coordinates: into the work, or past the travel.", "$ref": "#/$defs/codeWithWordOrNone", "examples": ["G53", "none"] }, "reference-return": { "title": "Return to the reference position", "description": "Code of the return to the reference position, or none.\n\nIf wrong: an intermediate point is taken for the target: a diagonal through the work.", "$ref": "#/$defs/codeWithWordOrNone", "examples": ["G28", "none"] }, "cancel": { "title": "Cancelling", "description": "Words that put an end to what an earlier program may have left in force.", "type": "object", "additionalProperties": false, "properties": { "cycles": { "title": "Cycles off", "description": "Code that ends fixed cycles.\n\nIf wrong: a hole is drilled at every place that follows.", "$ref": "#/$defs/codeOrNone", "examples": ["G80"] }, "local-shift": { "title": "Local shift off", "description": "Code that cancels a shift of the origin, or none.\n\nIf wrong: the work is cut at a shifted place.", "$ref": "#/$defs/codeOrNone", "examples": ["G92.2", "none"] }, "rotation": { "title": "Rotation off", "description": "Code that cancels a rotation, or none.\n\nIf wrong: the work is cut rotated.", "$ref": "#/$defs/codeOrNone", "examples": ["G69", "none"] }, "scale": { "title": "Scale off", "description": "Code that cancels scaling and mirroring, or none.\n\nIf wrong: the work is cut at another size or mirrored.", "$ref": "#/$defs/codeOrNone", "examples": ["G50", "none"] }, "overrides": { "title": "Overrides on", "description": "Code that makes the feed and speed overrides act, or none.\n\nIf wrong: the override knob is dead while the program is proved out.", "$ref": "#/$defs/codeOrNone", "examples": ["M48", "none"] }, "before-change": { "title": "Cancelling before a tool change", "description": "Whether compensation off and cycles off are said again before each swap of a tool, where the dialect has the words.\n\nIf wrong: the controller alarms at the change, since it takes compensation or a cycle as still on.", "$ref": "#/$defs/yesNo", "examples": ["no"] } }, "examples": [{ "cycles": "G80", "local-shift": "none", "rotation": "none", "scale": "none", "overrides": "M48" }] }, "cycles": { "title": "Fixed cycles", "description": "Codes of fixed cycles for holes and what goes with them, or none: every hole is written longhand.", "anyOf": [{ "title": "None", "description": "The controller has no fixed cycles.", "type": "string", "const": "none" }, { "type": "object", "additionalProperties": false, "properties": { "drill": { "title": "Drill", "description": "Feed in, rapid out, or none: it is written longhand.\n\nIf wrong: the hole has another depth, or the tool breaks on its way out.", "$ref": "#/$defs/codeOrNone", "examples": ["G81"] }, "dwell": { "title": "Drill with dwell", "description": "Feed in, dwell, rapid out, or none: it is written longhand.\n\nIf wrong: the hole has another depth, or the tool breaks on its way out.", "$ref": "#/$defs/codeOrNone", "examples": ["G82"] }, "peck": { "title": "Peck", "description": "Pecks with a rapid out of the hole after each, or none: it is written longhand.\n\nIf wrong: the hole has another depth, or the tool breaks on its way out.", "$ref": "#/$defs/codeOrNone", "examples": ["G83"] }, "chip-break": { "title": "Chip-breaking", "description": "Pecks with a small back-off, or none: it is written longhand.\n\nIf wrong: the hole has another depth, or the tool breaks on its way out.", "$ref": "#/$defs/codeOrNone", "examples": ["G73", "none"] }, "tap": { "title": "Tap right-hand", "description": "Feed in, reverse, feed out, or none: it is written longhand.\n\nIf wrong: the hole has another depth, or the tool breaks on its way out.", "$ref": "#/$defs/codeOrNone", "examples": ["G84"] }, "tap-left": { "title": "Tap left-hand", "description": "The same with a left-hand tap, or none: it is written longhand.\n\nIf wrong: the hole has another depth, or the tool breaks on its way out.", "$ref": "#/$defs/codeOrNone", "examples": ["G74", "none"] }, "ream": { "title": "Ream", "description": "Feed in, feed out, or none: it is written longhand.\n\nIf wrong: the hole has another depth, or the tool breaks on its way out.", "$ref": "#/$defs/codeOrNone", "examples": ["G85"] }, "bore-dwell": { "title": "Bore with dwell", "description": "Feed in, dwell, feed out, or none: it is written longhand.\n\nIf wrong: the hole has another depth, or the tool breaks on its way out.", "$ref": "#/$defs/codeOrNone", "examples": ["G89"] }, "bore-stop": { "title": "Bore with spindle stop", "description": "Feed in, dwell, spindle stop, rapid out, or none: it is written longhand.\n\nIf wrong: the hole has another depth, or the tool breaks on its way out.", "$ref": "#/$defs/codeOrNone", "examples": ["G86", "none"] }, "bore-manual": { "title": "Bore with manual retract", "description": "Feed in, dwell, spindle stop, program stop, or none: it is written longhand.\n\nIf wrong: the hole has another depth, or the tool breaks on its way out.", "$ref": "#/$defs/codeOrNone", "examples": ["G88", "none"] }, "return": { "title": "Level between holes", "description": "Words that choose the level to which the tool goes between holes.", "type": "object", "additionalProperties": false, "properties": { "initial": { "title": "Initial level", "description": "Code for the level at which the tool stood before the first hole, or none.\n\nIf wrong: the tool is dragged through a clamp between two holes.", "$ref": "#/$defs/codeOrNone", "examples": ["G98", "none"] }, "retract": { "title": "Retract level", "description": "Code for the retract level of the cycle, or none.\n\nIf wrong: the tool is dragged through a clamp between two holes.", "$ref": "#/$defs/codeOrNone", "examples": ["G99", "none"] }, "without": { "title": "Level without a word", "description": "The level between holes where there is no word, or none where both words are there.\n\nIf wrong: the tool is dragged through a clamp between two holes.", "type": "string", "enum": ["retract", "initial", "none"], "examples": ["none"] } }, "examples": [{ "initial": "G98", "retract": "G99", "without": "none" }] }, "back-off": { "title": "Back-off", "description": "How far the controller's own cycle backs off. A job that asks for another back-off is written longhand.", "type": "object", "additionalProperties": false, "properties": { "peck": { "title": "Back-off of pecks", "description": "How far above the last depth the rapid back into the hole ends.\n\nUnit: mm, or with `in`.\n\nIf wrong: the drill is driven into the bottom at rapid and breaks.", "$ref": "#/$defs/length", "examples": [0.254] }, "chip-break": { "title": "Back-off of chip-breaking", "description": "How far the drill is withdrawn between two pecks.\n\nUnit: mm, or with `in`.\n\nIf wrong: the chip does not break.", "$ref": "#/$defs/length", "examples": [0.254] } }, "examples": [{ "peck": 0.254, "chip-break": 0.254 }] }, "levels": { "title": "Depth and retract level", "description": "absolute: Z and R are coordinates; under incremental distances R counts from where the tool is, and Z from R (NISTIR 6556 3.5.16). relative: R counts from the initial level, and Z from R. from-initial: R and Z both count from the initial level. The last two hold under absolute distances, too.\n\nIf wrong: the depth is doubled, or the hole is drilled in the air.", "type": "string", "enum": ["absolute", "relative", "from-initial"], "examples": ["absolute"] }, "words": { "title": "Words of a cycle", "description": "Letters of the values of a cycle.", "type": "object", "additionalProperties": false, "properties": { "retract": { "title": "Retract level word", "description": "Letter of the retract level.\n\nIf wrong: feed begins at another height: a rapid into the work.", "$ref": "#/$defs/letter", "examples": ["R"] }, "peck": { "title": "Peck word", "description": "Letter of the depth of one peck.\n\nIf wrong: the hole is drilled in one go and the drill breaks.", "$ref": "#/$defs/letter", "examples": ["Q"] }, "back-off": { "title": "Back-off word", "description": "Letter of the back-off of pecks and chip-breaking, or none: the controller's own back-off holds (`cycles.back-off`).\n\nIf wrong: the drill is driven into the bottom at rapid and breaks, or the chip does not break.", "$ref": "#/$defs/letterOrNone", "examples": ["none", "K"] }, "dwell": { "title": "Dwell word", "description": "Letter of the dwell at depth.\n\nIf wrong: no dwell at depth, or a very long one.", "$ref": "#/$defs/letter", "examples": ["P"] }, "dwell-unit": { "title": "Unit of the dwell", "description": "What the dwell in a cycle is counted in: seconds, milliseconds, or revolutions of the spindle (rev), rounded up at the commanded speed.\n\nUnit: s, ms or rev.\n\nIf wrong: no dwell at depth, or a very long one.", "type": "string", "enum": ["s", "ms", "rev"], "examples": ["s"] }, "repeat": { "title": "Repeat word", "description": "Letter of how often the hole of a block is drilled, or none. Programs are written with it only to define a cycle without a hole (0).\n\nIf wrong: holes are missing, or one too many is drilled.", "$ref": "#/$defs/letterOrNone", "examples": ["none", "L"] } }, "examples": [{ "retract": "R", "peck": "Q", "dwell": "P", "dwell-unit": "s", "back-off": "none", "repeat": "none" }] }, "repeat": { "title": "Later holes", "description": "positions: later holes state their place alone; all: each states the words of the cycle again.\n\nIf wrong: later holes are missing or have another depth.", "type": "string", "enum": ["positions", "all"], "examples": ["positions"] }, "definition": { "title": "Definition of a cycle", "description": "with-first-hole: the block with the cycle's code states the first hole, too; apart: it states no place and drills nothing (with the repeat word 0 where there is one), and each hole follows in a block of its own.\n\nIf wrong: the first hole is missing, or one is drilled where the tool stands.", "type": "string", "enum": ["with-first-hole", "apart"], "examples": ["with-first-hole"] }, "positions": { "title": "Place of a hole", "description": "changed: a hole states X and Y where they differ; both: it always states both.\n\nIf wrong: a hole is missing, or drilled at X0 or Y0.", "type": "string", "enum": ["changed", "both"], "examples": ["changed"] }, "initial-level": { "title": "Initial level", "description": "Where the initial level is taken: before-series: the Z before the first hole behind a cancel code; current: the Z at each block with a cycle's code. A program always cancels one series before the next; this decides what one from elsewhere means.\n\nIf wrong: between holes the tool is dragged through a clamp.", "type": "string", "enum": ["before-series", "current"], "examples": ["before-series"] }, "axis": { "title": "Axis of a cycle", "description": "plane-normal: holes go along the normal of the plane in force; z: along Z in any plane, so that no plane word is needed before.\n\nIf wrong: the drill is driven sideways into the work.", "type": "string", "enum": ["plane-normal", "z"], "examples": ["plane-normal"] }, "tap-feed": { "title": "Feed word of a tap", "description": "feed-mode: F means what the feed mode says; lead: F in a tapping cycle is the lead of the thread, whatever the feed mode. It then needs `numbers.feed-per-revolution`, and the feed is stated anew behind the cycle.\n\nIf wrong: the tap breaks.", "type": "string", "enum": ["feed-mode", "lead"], "examples": ["feed-mode"] }, "tap-synchronised": { "title": "Synchronising code", "description": "Code that locks spindle and feed for the tapping cycle that follows, in a block of its own before it; none: the controller always does, or never.\n\nIf wrong: the tap breaks or strips the thread.", "$ref": "#/$defs/codeOrNone", "examples": ["none", "M29"] }, "ended-by": { "title": "End of a cycle", "description": "any-motion: a motion word ends the cycle, too; cancel-code: its own code alone. The code is always written; this decides what a program from elsewhere means.\n\nIf wrong: a hole is drilled at every place that follows.", "type": "string", "enum": ["any-motion", "cancel-code"], "examples": ["cancel-code"] } } }], "examples": ["none", { "drill": "G81", "peck": "G83", "return": { "initial": "G98", "retract": "G99", "without": "none" } }] }, "spindle": { "title": "Spindle", "description": "Words for the spindle.", "type": "object", "additionalProperties": false, "properties": { "cw": { "title": "Spindle clockwise", "description": "Code that starts the spindle clockwise, as for a right-hand tool.\n\nIf wrong: the spindle turns the wrong way and the tool breaks.", "$ref": "#/$defs/codeOrNone", "examples": ["M3"] }, "ccw": { "title": "Spindle counter-clockwise", "description": "Code that starts it counter-clockwise, or none.\n\nIf wrong: the spindle turns the wrong way and the tool breaks.", "$ref": "#/$defs/codeOrNone", "examples": ["M4", "none"] }, "stop": { "title": "Spindle stop", "description": "Code that stops the spindle.\n\nIf wrong: the spindle runs on into the swap or past the end of the program.", "$ref": "#/$defs/codeOrNone", "examples": ["M5"] }, "orient": { "title": "Spindle orientation", "description": "Code that stops the spindle at its swap angle, or none.\n\nIf wrong: the drive keys of the tool strike the rack.", "$ref": "#/$defs/codeWithWordOrNone", "examples": ["M19", "none"] }, "order": { "title": "Order of speed and start", "description": "speed-first: the S word before the start word; start-first: the start word before the S word. It holds in a block, whatever `blocks.order` says, and from block to block.\n\nIf wrong: the spindle starts at the last speed, or the speed is ignored.", "type": "string", "enum": ["speed-first", "start-first"], "examples": ["speed-first"] }, "blocks": { "title": "Speed and start in a block", "description": "together: one block; apart: one block each.\n\nIf wrong: one of the two is ignored.", "type": "string", "enum": ["together", "apart"], "examples": ["together"] }, "speed-unit": { "title": "Unit of the speed word", "description": "What S counts. rpm: revolutions a minute; percent: hundredths of `spindle.full-speed`, which the dialect then has to state. Its decimals are `numbers.speed`.\n\nIf wrong: the spindle runs at its highest speed where a low one was meant, or hardly turns.", "type": "string", "enum": ["rpm", "percent"], "examples": ["rpm"] }, "full-speed": { "title": "Speed at 100 percent", "description": "Speed that S100 asks for, where S counts percent. It stays what it is when `machine.spindle.max-rpm` is lowered to protect a tool or a bearing.\n\nUnit: rpm.\n\nIf wrong: the spindle turns faster or slower than every program says.", "type": "number", "exclusiveMinimum": 0, "maximum": 1e6, "examples": [24e3] }, "gears": { "title": "Gear ranges", "description": "Ranges of the spindle's gear that a code selects, or none. The first range that a speed lies in is selected, in a block of its own before the speed; a range changes only while the spindle stands.\n\nIf wrong: the speed ends at the top of the range in force, or the gear is shifted while it turns.", "anyOf": [{ "title": "None", "description": "One range, or the control shifts by itself.", "type": "string", "const": "none" }, { "type": "array", "minItems": 1, "maxItems": 6, "items": { "title": "Gear range", "description": "One range and its code.", "type": "object", "additionalProperties": false, "properties": { "code": { "title": "Code of the range", "description": "Code that selects it.\n\nIf wrong: another range is selected.", "type": "string", "pattern": "^M\\d{1,3}$", "examples": ["M41"] }, "from": { "title": "Lowest speed of the range", "description": "Lowest speed of the range.\n\nUnit: rpm.\n\nIf wrong: the motor stalls in the cut.", "type": "number", "minimum": 0, "maximum": 1e6, "examples": [100] }, "to": { "title": "Highest speed of the range", "description": "Highest speed of the range.\n\nUnit: rpm.\n\nIf wrong: the spindle runs slower than the feed is made for.", "type": "number", "exclusiveMinimum": 0, "maximum": 1e6, "examples": [4e3] } }, "examples": [{ "code": "M41", "from": 100, "to": 4e3 }] } }], "examples": ["none", [{ "code": "M41", "from": 100, "to": 4e3 }, { "code": "M42", "from": 4e3, "to": 12e3 }]] } }, "examples": [{ "cw": "M3", "ccw": "M4", "stop": "M5", "order": "speed-first", "blocks": "together" }] }, "coolant": { "title": "Coolant", "description": "Words for coolant and air.", "type": "object", "additionalProperties": false, "properties": { "mist": { "title": "Mist", "description": "Code that turns mist on, or none.\n\nIf wrong: the tool runs dry.", "$ref": "#/$defs/codeOrNone", "examples": ["M7", "none"] }, "flood": { "title": "Flood", "description": "Code that turns flood coolant on, or none.\n\nIf wrong: the tool runs dry.", "$ref": "#/$defs/codeOrNone", "examples": ["M8", "none"] }, "air": { "title": "Air", "description": "Code that turns air on, or none.\n\nIf wrong: chips stay in the cut.", "$ref": "#/$defs/codeOrNone", "examples": ["none"] }, "through-tool": { "title": "Coolant through the tool", "description": "Code that turns coolant through the tool on, or none.\n\nIf wrong: a deep hole is drilled dry.", "$ref": "#/$defs/codeOrNone", "examples": ["none"] }, "off": { "title": "All off", "description": "Code that turns all of them off, or a code for each medium that can be turned on.\n\nIf wrong: coolant runs during the swap, into the taper and the rack.", "anyOf": [{ "title": "One code for all", "description": "Turns all media off.", "$ref": "#/$defs/codeOrNone" }, { "type": "object", "additionalProperties": false, "properties": { "mist": { "title": "Mist off", "description": "Code that turns mist off, or none.\n\nIf wrong: mist runs on into the swap.", "$ref": "#/$defs/codeOrNone", "examples": ["M97"] }, "flood": { "title": "Flood off", "description": "Code that turns flood coolant off, or none.\n\nIf wrong: coolant runs on into the swap.", "$ref": "#/$defs/codeOrNone", "examples": ["M98"] }, "air": { "title": "Air off", "description": "Code that turns air off, or none.\n\nIf wrong: air blows chips into the rack.", "$ref": "#/$defs/codeOrNone", "examples": ["none"] }, "through-tool": { "title": "Coolant through the tool off", "description": "Code that turns coolant through the tool off, or none.\n\nIf wrong: coolant runs into the taper at the swap.", "$ref": "#/$defs/codeOrNone", "examples": ["none"] } } }], "examples": ["M9", { "mist": "M97", "flood": "M98" }] }, "blocks": { "title": "Coolant words in a block", "description": "apart: each in a block of its own; together: media that are turned on, or off, behind one another share a block, as far as `blocks.m-words` goes.\n\nIf wrong: only the last word of the block acts, or the block alarms.", "type": "string", "enum": ["apart", "together"], "examples": ["apart"] } }, "examples": [{ "mist": "M7", "flood": "M8", "air": "none", "through-tool": "none", "off": "M9", "blocks": "apart" }] }, "tools": { "title": "Tools", "description": "Words for selecting and changing tools.", "type": "object", "additionalProperties": false, "properties": { "change": { "title": "Tool change", "description": "Code of the controller's own tool change; with-tool-word: it has none, and the tool word alone changes the tool; none: it changes no tools.\n\nIf wrong: the tool is not changed, and the next operation runs with the last one; or the spindle's tool is put away where a word was only meant to say its number.", "type": "string", "pattern": "^(none|with-tool-word|[GM]\\d{1,3}(\\.\\d)?)$", "examples": ["M6", "with-tool-word", "none"] }, "blocks": { "title": "Selection and change in a block", "description": "together: T and the change code share a block; apart: one block each.\n\nIf wrong: the change takes the tool selected before.", "type": "string", "enum": ["together", "apart"], "examples": ["together"] }, "order": { "title": "Order of selection and change", "description": "select-first: T before the change code; change-first: the change code first.\n\nIf wrong: the change takes the tool selected before.", "type": "string", "enum": ["select-first", "change-first"], "examples": ["select-first"] }, "preselect": { "title": "Preselection", "description": "Whether the next tool is selected right after each change, so that the changer gets it ready.\n\nIf wrong: the changer takes the wrong tool at the next change.", "$ref": "#/$defs/yesNo", "examples": ["no"] }, "in-operator-swap": { "title": "Tool word in a swap by the operator", "description": "Whether the tool word stands before the stop at which the operator changes the tool. Without it the message to the operator alone says which tool that is, so that the dialect needs `idioms.message`.\n\nIf wrong: the controller alarms at a tool it does not know, or starts a changer that is not there.", "$ref": "#/$defs/yesNo", "examples": ["yes"] }, "empty": { "title": "Tool word of an empty spindle", "description": "Number of the tool word with which the controller's own change leaves the spindle empty; the program then ends with that change. none: the last tool stays in the spindle.\n\nUnit: tool number.\n\nIf wrong: the last tool stays in the spindle where the next program expects none, or a tool of that number is put in.", "anyOf": [{ "title": "None", "description": "The last tool stays in the spindle.", "type": "string", "const": "none" }, { "type": "integer", "minimum": 0, "maximum": 9999 }], "examples": ["none", 0] } }, "examples": [{ "change": "M6", "blocks": "together", "order": "select-first", "preselect": "no" }] }, "stops": { "title": "Stops and end", "description": "Words that stop and end the program.", "type": "object", "additionalProperties": false, "properties": { "stop": { "title": "Program stop", "description": "Code of a stop that the operator ends.\n\nIf wrong: the program runs on while a hand is in the machine.", "$ref": "#/$defs/codeOrNone", "examples": ["M0"] }, "optional": { "title": "Optional stop", "description": "Code of a stop that acts when its switch is on, or none. A code behind a block delete mark, such as /M0 or /2 M0, is a stop that acts while that switch is off.\n\nIf wrong: the program runs on although a check was meant.", "$ref": "#/$defs/optionalStop", "examples": ["M1", "none", "/M0", "/2 M0"] }, "end": { "title": "End of program", "description": "Code of the end of the program.\n\nIf wrong: the controller alarms, does not rewind, or moves a pallet.", "$ref": "#/$defs/codeOrNone", "examples": ["M30", "M2"] }, "comment": { "title": "Message of a stop", "description": "Where the message stands that says what a stop is for. own-block: in a block of its own before the stop; with-stop: in the block of the stop, behind its code. Of a message that takes several comments the last one stands there, the others in blocks before it.\n\nIf wrong: the message is gone from the screen while the program stands, and the operator does not see what to do.", "type": "string", "enum": ["own-block", "with-stop"], "examples": ["own-block"] }, "resume": { "title": "Modes behind a stop", "description": "What is in force when the operator starts the program again after a stop. keeps-modes: what was in force before; loses-modes: nothing is certain, so that the program states all its modes anew before anything moves, and its offsets before the approach.\n\nIf wrong: the program goes on in inches, in increments or in another work offset.", "type": "string", "enum": ["keeps-modes", "loses-modes"], "examples": ["keeps-modes"] }, "end-resets": { "title": "Modes at the end", "description": "Whether the end of the program puts the modes back by itself. no: the program states feed per minute, the XY plane, compensation off, absolute distances and cycles off before its end, each where there is a word for it, and the work offset where a machine move has suspended it (`motion.machine-move-lasts`).\n\nIf wrong: the next program, or what the operator types in, runs in increments or in another plane.", "$ref": "#/$defs/yesNo", "examples": ["yes"] } }, "examples": [{ "stop": "M0", "optional": "M1", "end": "M30", "comment": "own-block", "resume": "keeps-modes", "end-resets": "yes" }] }, "wait": { "title": "Values of a wait", "description": "Numbers that a wait on a signal says.", "type": "object", "additionalProperties": false, "properties": { "on": { "title": "Level on", "description": "Number for a signal that is on.\n\nUnit: number of the level word.\n\nIf wrong: the wait is over at once, whatever the machine does.", "type": "integer", "minimum": 0, "maximum": 9999, "examples": [1] }, "off": { "title": "Level off", "description": "Number for a signal that is off.\n\nUnit: number of the level word.\n\nIf wrong: the wait is over at once, whatever the machine does.", "type": "integer", "minimum": 0, "maximum": 9999, "examples": [0] }, "timeout-unit": { "title": "Unit of the timeout", "description": "What the timeout is counted in.\n\nUnit: s or ms.\n\nIf wrong: the wait gives up at once, or hangs for minutes with the fault unseen.", "type": "string", "enum": ["s", "ms"], "examples": ["s"] } }, "examples": [{ "on": 1, "off": 0, "timeout-unit": "s" }] }, "codes": { "title": "Codes of the builder", "description": "What further codes do that a program from elsewhere may hold: what they are for, and their effects. They are read, not written.", "type": "object", "additionalProperties": false, "patternProperties": { "^[GM]\\d{1,3}$": { "title": "One code", "description": "A code with no meaning of its own in the standards, and what it leaves behind.", "type": "object", "additionalProperties": false, "properties": { "does": { "title": "What it does", "description": "In words, for findings and the set-up sheet.\n\nIf wrong: the operator does not know what is switched.", "type": "string", "minLength": 1, "maxLength": 120, "examples": ["chip conveyor on"] }, "position": { "title": "Effect on the position", "description": "unchanged: the axes end where they were; unknown: they may be anywhere, so that the program states them anew; swap-height: Z ends at the swap height.\n\nIf wrong: the next approach starts from a place that nobody knows.", "type": "string", "enum": ["unchanged", "unknown", "swap-height"], "examples": ["unchanged"] }, "spindle": { "title": "Effect on the spindle", "description": "unchanged, or stopped.\n\nIf wrong: the spindle is thought to stand while it turns.", "type": "string", "enum": ["unchanged", "stopped"], "examples": ["stopped"] }, "coolant": { "title": "Effect on coolant", "description": "unchanged, or off.\n\nIf wrong: coolant is missing, or runs into the taper.", "type": "string", "enum": ["unchanged", "off"], "examples": ["unchanged"] }, "length-offset": { "title": "Effect on the length offset", "description": "unchanged; active: the length of the new tool acts; cancelled: none acts.\n\nIf wrong: the tool is driven into the work by its length.", "type": "string", "enum": ["unchanged", "active", "cancelled"], "examples": ["unchanged"] } }, "examples": [{ "does": "chip conveyor on", "position": "unchanged", "spindle": "unchanged", "coolant": "unchanged", "length-offset": "unchanged" }] } }, "examples": [{ "M27": { "does": "chip conveyor on", "position": "unchanged", "spindle": "unchanged", "coolant": "unchanged", "length-offset": "unchanged" } }] }, "idioms": { "title": "Idioms", "description": "How this controller says one action: literal words and {{name}} for the whole number of a word. One code each; beside it may stand P Q R L E I J K.", "type": "object", "additionalProperties": false, "properties": { "message": { "title": "Message to the operator", "description": "A whole comment with a mark of its own, so that a message is told from a remark, or none. It may name {{text}} (must).\n\nIf wrong: the operator does not see what is asked of them.", "$ref": "#/$defs/template", "examples": ["(MSG, {{text}})"] }, "header": { "title": "Header lines", "description": "Comment lines at the head of the program, in place of its name and the dialect. What is assumed and the caution stand in every header. Each entry is a line, or with {{#each tools}}, {{#each operations}} or {{#each assumptions}} around it one for each of them. Lines name {{program}}, {{number}}, {{dialect}} and {{units}}; within tools {{number}}, {{description}}, {{diameter}} and {{lengthOffset}}, within operations {{id}} and {{name}}, within assumptions {{text}}.\n\nIf wrong: the transfer is refused, or the operator cannot tell one program from another.", "anyOf": [{ "title": "None", "description": "No lines of the dialect's own.", "type": "string", "const": "none" }, { "type": "array", "minItems": 1, "maxItems": 40, "items": { "type": "string", "minLength": 1, "maxLength": 160 } }], "examples": [["{{program}} FOR {{dialect}}", "{{#each tools}}T{{number}} {{description}} D{{diameter}} H{{lengthOffset}}{{/each}}"]] }, "footer": { "title": "Footer lines", "description": "Comment lines behind the last block. Each entry is a line, or with {{#each tools}}, {{#each operations}} or {{#each assumptions}} around it one for each of them. Lines name {{program}}, {{number}}, {{dialect}} and {{units}}; within tools {{number}}, {{description}}, {{diameter}} and {{lengthOffset}}, within operations {{id}} and {{name}}, within assumptions {{text}}.\n\nIf wrong: the transfer is refused, or blocks are looked for behind the end.", "anyOf": [{ "title": "None", "description": "No lines of the dialect's own.", "type": "string", "const": "none" }, { "type": "array", "minItems": 1, "maxItems": 40, "items": { "type": "string", "minLength": 1, "maxLength": 160 } }], "examples": [["{{program}} FOR {{dialect}}", "{{#each tools}}T{{number}} {{description}} D{{diameter}} H{{lengthOffset}}{{/each}}"]] }, "wait-signal": { "title": "Wait on a signal", "description": "Waits until an input has a level, or none. It may name {{signal}} (must), {{level}} (without it every signal is waited for until it is on) and {{timeout}} (without it the wait lasts for ever).\n\nIf wrong: the program does not wait: the tool cuts before the spindle is up to speed, or swaps while it turns.", "$ref": "#/$defs/template", "examples": ["M94 P{{signal}} R{{level}} Q{{timeout}}"] }, "output-on": { "title": "Output on", "description": "Switches an output on, or none. It may name {{output}} (must).\n\nIf wrong: another output is switched.", "$ref": "#/$defs/template", "examples": ["M95 P{{output}}"] }, "output-off": { "title": "Output off", "description": "Switches an output off, or none. It may name {{output}} (must).\n\nIf wrong: another output is switched.", "$ref": "#/$defs/template", "examples": ["M96 P{{output}}"] }, "release": { "title": "Release the tool", "description": "Opens the drawbar, or none. It names no value.\n\nIf wrong: the tool drops, or is pulled out of the rack with its fork.", "$ref": "#/$defs/template", "examples": ["M21"] }, "clamp": { "title": "Clamp the tool", "description": "Closes the drawbar, or none. It names no value.\n\nIf wrong: the spindle starts with a loose tool.", "$ref": "#/$defs/template", "examples": ["M22"] }, "taper-air-on": { "title": "Taper air on", "description": "Blows the taper clean, or none. It names no value.\n\nIf wrong: a chip between taper and holder: the tool runs out.", "$ref": "#/$defs/template", "examples": ["M25"] }, "taper-air-off": { "title": "Taper air off", "description": "Ends it, or none. It names no value.\n\nIf wrong: air blows on during the cut.", "$ref": "#/$defs/template", "examples": ["M26"] }, "cover-open": { "title": "Open the rack's cover", "description": "Opens the cover of the rack, or none. It names no value.\n\nIf wrong: the spindle is driven into the cover.", "$ref": "#/$defs/template", "examples": ["M27"] }, "cover-close": { "title": "Close the rack's cover", "description": "Closes the cover of the rack, or none. It names no value.\n\nIf wrong: chips fill the pockets.", "$ref": "#/$defs/template", "examples": ["M28"] }, "hood-up": { "title": "Dust hood up", "description": "Lifts the dust hood, or none. It names no value.\n\nIf wrong: the hood is driven into the rack or the clamps.", "$ref": "#/$defs/template", "examples": ["M23"] }, "hood-down": { "title": "Dust hood down", "description": "Lowers the dust hood, or none. It names no value.\n\nIf wrong: dust is not drawn off.", "$ref": "#/$defs/template", "examples": ["M24"] }, "measure": { "title": "Measure the tool", "description": "Has the controller measure the tool's length and make it its length offset, or none. It names no value.\n\nIf wrong: the length of the last measurement acts.", "$ref": "#/$defs/template", "examples": ["M29"] } }, "examples": [{ "wait-signal": "M94 P{{signal}} R{{level}} Q{{timeout}}", "release": "M21", "clamp": "M22" }] }, "machine": { "title": "Machine", "description": "Facts of this machine, in its own leaf. A key is needed when a job needs it.", "type": "object", "additionalProperties": false, "properties": { "travel": { "title": "Travel", "description": "Where each axis can go, machine coordinates. Rotary axes are allowed only where they stand here.", "type": "object", "additionalProperties": false, "properties": { "x": { "title": "Travel of X", "description": "Least and greatest place of X in machine coordinates.\n\nUnit: mm, or with `in`.\n\nIf wrong: the axis runs onto its limit switch in the middle of the program.", "type": "array", "minItems": 2, "maxItems": 2, "items": { "$ref": "#/$defs/length" }, "examples": [[0, 1220]] }, "y": { "title": "Travel of Y", "description": "Least and greatest place of Y in machine coordinates.\n\nUnit: mm, or with `in`.\n\nIf wrong: the axis runs onto its limit switch in the middle of the program.", "type": "array", "minItems": 2, "maxItems": 2, "items": { "$ref": "#/$defs/length" }, "examples": [[0, 1220]] }, "z": { "title": "Travel of Z", "description": "Least and greatest place of Z in machine coordinates.\n\nUnit: mm, or with `in`.\n\nIf wrong: the axis runs onto its limit switch in the middle of the program.", "type": "array", "minItems": 2, "maxItems": 2, "items": { "$ref": "#/$defs/length" }, "examples": [[0, 1220]] }, "a": { "title": "Travel of A", "description": "Least and greatest place of A in machine coordinates.\n\nUnit: degrees.\n\nIf wrong: the axis runs onto its limit switch in the middle of the program.", "type": "array", "minItems": 2, "maxItems": 2, "items": { "type": "number", "minimum": -36e6, "maximum": 36e6 }, "examples": [[-360, 360]] }, "b": { "title": "Travel of B", "description": "Least and greatest place of B in machine coordinates.\n\nUnit: degrees.\n\nIf wrong: the axis runs onto its limit switch in the middle of the program.", "type": "array", "minItems": 2, "maxItems": 2, "items": { "type": "number", "minimum": -36e6, "maximum": 36e6 }, "examples": [[-360, 360]] }, "c": { "title": "Travel of C", "description": "Least and greatest place of C in machine coordinates.\n\nUnit: degrees.\n\nIf wrong: the axis runs onto its limit switch in the middle of the program.", "type": "array", "minItems": 2, "maxItems": 2, "items": { "type": "number", "minimum": -36e6, "maximum": 36e6 }, "examples": [[-360, 360]] } }, "examples": [{ "x": [0, 1220], "y": [0, 810], "z": [-95, 0] }] }, "spindle": { "title": "Spindle of the machine", "description": "What the spindle and its drive can do.", "type": "object", "additionalProperties": false, "properties": { "min-rpm": { "title": "Lowest speed", "description": "Lowest speed that the spindle may run at.\n\nUnit: rpm.\n\nIf wrong: the spindle overheats, or does not turn.", "type": "number", "minimum": 0, "maximum": 1e6, "examples": [6e3] }, "max-rpm": { "title": "Highest speed", "description": "Highest speed.\n\nUnit: rpm.\n\nIf wrong: the speed is cut without a word and the feed is too fast for it.", "type": "number", "exclusiveMinimum": 0, "maximum": 1e6, "examples": [24e3] }, "spin-up": { "title": "Time to come up to speed", "description": "Time from standstill to the highest speed.\n\nUnit: s, ms or min, written behind the number.\n\nIf wrong: the tool cuts before the spindle is up to speed.", "$ref": "#/$defs/time", "examples": ["6 s"] }, "spin-down": { "title": "Time to stop", "description": "Time from the highest speed to standstill by the drive.\n\nUnit: s, ms or min, written behind the number.\n\nIf wrong: the tool is swapped while the spindle turns.", "$ref": "#/$defs/time", "examples": ["6 s"] }, "coast-down": { "title": "Time to coast down", "description": "The same in free run, with the drive tripped.\n\nUnit: s, ms or min, written behind the number.\n\nIf wrong: the tool is swapped, or a hand is in the machine, while the spindle turns.", "$ref": "#/$defs/time", "examples": ["25 s"] }, "orient": { "title": "Orientation before a swap", "description": "Whether the spindle must be oriented before a swap.\n\nIf wrong: the drive keys of the tool strike the rack.", "$ref": "#/$defs/yesNo", "examples": ["no"] } }, "examples": [{ "min-rpm": 6e3, "max-rpm": 24e3, "spin-up": "6 s", "spin-down": "6 s", "coast-down": "25 s" }] }, "signals": { "title": "Signals", "description": "Inputs that the program can wait on.", "type": "object", "additionalProperties": false, "properties": { "at-speed": { "title": "At speed", "description": "The drive reports that the spindle is at its speed: the number of its input where it is on in that state, or a mapping.\n\nUnit: number of the input.\n\nIf wrong: the tool cuts before the spindle is up to speed.", "anyOf": [{ "type": "integer", "minimum": 0, "maximum": 9999 }, { "$ref": "#/$defs/signal" }], "examples": [{ "input": 4, "settle": "0.3 s" }] }, "stopped": { "title": "Stopped", "description": "The drive or a sensor reports standstill: the number of its input where it is on in that state, or a mapping.\n\nUnit: number of the input.\n\nIf wrong: the tool is swapped while the spindle turns.", "anyOf": [{ "type": "integer", "minimum": 0, "maximum": 9999 }, { "$ref": "#/$defs/signal" }], "examples": [5] }, "released": { "title": "Released", "description": "The drawbar is open: the number of its input where it is on in that state, or a mapping.\n\nUnit: number of the input.\n\nIf wrong: the holder is torn out of its pocket.", "anyOf": [{ "type": "integer", "minimum": 0, "maximum": 9999 }, { "$ref": "#/$defs/signal" }], "examples": [8] }, "clamped": { "title": "Clamped", "description": "The drawbar is closed with a tool in it: the number of its input where it is on in that state, or a mapping.\n\nUnit: number of the input.\n\nIf wrong: the spindle starts with a loose tool.", "anyOf": [{ "type": "integer", "minimum": 0, "maximum": 9999 }, { "$ref": "#/$defs/signal" }], "examples": [7] }, "tool-present": { "title": "Tool present", "description": "A tool is in the spindle: the number of its input where it is on in that state, or a mapping.\n\nUnit: number of the input.\n\nIf wrong: the program goes on without a tool.", "anyOf": [{ "type": "integer", "minimum": 0, "maximum": 9999 }, { "$ref": "#/$defs/signal" }], "examples": [9] }, "air": { "title": "Air pressure", "description": "There is enough air to work the drawbar: the number of its input where it is on in that state, or a mapping.\n\nUnit: number of the input.\n\nIf wrong: the drawbar opens halfway and the tool drops.", "anyOf": [{ "type": "integer", "minimum": 0, "maximum": 9999 }, { "$ref": "#/$defs/signal" }], "examples": [6] }, "hold-down": { "title": "Hold-down", "description": "Vacuum or clamps hold the work: the number of its input where it is on in that state, or a mapping.\n\nUnit: number of the input.\n\nIf wrong: the work comes loose in the cut.", "anyOf": [{ "type": "integer", "minimum": 0, "maximum": 9999 }, { "$ref": "#/$defs/signal" }], "examples": [10] } }, "examples": [{ "at-speed": { "input": 4, "settle": "0.3 s" }, "stopped": 5 }] }, "waits": { "title": "Waits", "description": "What a wait does when its time is up.", "type": "object", "additionalProperties": false, "properties": { "on-timeout": { "title": "On timeout", "description": "alarm: the program stops; continues: it goes on as if the signal had come, so that such a wait confirms nothing.\n\nIf wrong: a fault of the spindle or the air goes unseen and the program runs on.", "type": "string", "enum": ["alarm", "continues"], "examples": ["alarm"] } }, "examples": [{ "on-timeout": "alarm" }] }, "swap": { "title": "Swap style", "description": "controller: the controller changes tools by itself; rack: the program drives to the pockets and works the drawbar; operator: the program stops and asks for the tool; none: one tool a program, which is in the spindle before it starts.\n\nIf wrong: the program waits for a change that never comes, or drives to a rack that is not there.", "type": "string", "enum": ["controller", "rack", "operator", "none"], "examples": ["rack"] }, "change-effects": { "title": "Effects of the tool change", "description": "What the controller's own tool change does besides changing the tool. Needed where `swap` is controller.", "type": "object", "additionalProperties": false, "properties": { "position": { "title": "Effect on the position", "description": "unchanged: the axes end where they were; unknown: they may be anywhere, so that the program states them anew; swap-height: Z ends at the swap height.\n\nIf wrong: the next approach starts from a place that nobody knows.", "type": "string", "enum": ["unchanged", "unknown", "swap-height"], "examples": ["unchanged"] }, "spindle": { "title": "Effect on the spindle", "description": "unchanged; stopped; restarts: the control starts the spindle again behind the change, at a speed that nobody knows, so that the program stops it at once and confirms that.\n\nIf wrong: the spindle is thought to stand while it turns.", "type": "string", "enum": ["unchanged", "stopped", "restarts"], "examples": ["stopped"] }, "coolant": { "title": "Effect on coolant", "description": "unchanged, or off.\n\nIf wrong: coolant is missing, or runs into the taper.", "type": "string", "enum": ["unchanged", "off"], "examples": ["unchanged"] }, "length-offset": { "title": "Effect on the length offset", "description": "unchanged; active: the length of the new tool acts; cancelled: none acts.\n\nIf wrong: the tool is driven into the work by its length.", "type": "string", "enum": ["unchanged", "active", "cancelled"], "examples": ["unchanged"] } }, "examples": [{ "position": "unchanged", "spindle": "stopped", "coolant": "unchanged", "length-offset": "unchanged" }] }, "measure-effects": { "title": "Effects of measuring", "description": "What the controller's measurement of a tool does. Needed where `lengths` is measured.", "type": "object", "additionalProperties": false, "properties": { "position": { "title": "Effect on the position", "description": "unchanged: the axes end where they were; unknown: they may be anywhere, so that the program states them anew; swap-height: Z ends at the swap height.\n\nIf wrong: the next approach starts from a place that nobody knows.", "type": "string", "enum": ["unchanged", "unknown", "swap-height"], "examples": ["unchanged"] }, "spindle": { "title": "Effect on the spindle", "description": "unchanged, or stopped.\n\nIf wrong: the spindle is thought to stand while it turns.", "type": "string", "enum": ["unchanged", "stopped"], "examples": ["stopped"] }, "coolant": { "title": "Effect on coolant", "description": "unchanged, or off.\n\nIf wrong: coolant is missing, or runs into the taper.", "type": "string", "enum": ["unchanged", "off"], "examples": ["unchanged"] }, "length-offset": { "title": "Effect on the length offset", "description": "unchanged; active: the length of the new tool acts; cancelled: none acts.\n\nIf wrong: the tool is driven into the work by its length.", "type": "string", "enum": ["unchanged", "active", "cancelled"], "examples": ["unchanged"] } }, "examples": [{ "position": "unknown", "spindle": "stopped", "coolant": "unchanged", "length-offset": "active" }] }, "retract": { "title": "Retract to swap height", "description": "How Z goes up to the swap height.", "type": "object", "additionalProperties": false, "properties": { "by": { "title": "Retract by", "description": "machine-move: a rapid in machine coordinates; reference-return: the return to the reference position; clearance: the clearance of the job (operator swaps only).\n\nIf wrong: the tool is dragged across the work, or driven past the travel.", "type": "string", "enum": ["machine-move", "reference-return", "clearance"], "examples": ["machine-move"] }, "z": { "title": "Swap height", "description": "Z of the swap height in machine coordinates, with machine-move.\n\nUnit: mm, or with `in`.\n\nIf wrong: Z does not clear the work, or runs onto its limit switch.", "$ref": "#/$defs/length", "examples": [0] }, "acts-on": { "title": "What it moves", "description": "spindle-nose: machine coordinates are those of the spindle; tool-tip: an active length offset counts, too.\n\nIf wrong: Z stands lower by the tool's length than meant.", "type": "string", "enum": ["spindle-nose", "tool-tip"], "examples": ["spindle-nose"] }, "cancel-length-first": { "title": "Cancel the length offset first", "description": "Whether the length offset must be cancelled before it.\n\nIf wrong: the controller alarms, or the tool runs past the travel by its length.", "$ref": "#/$defs/yesNo", "examples": ["no"] }, "intermediate": { "title": "Intermediate point", "description": "incremental-zero: a reference return has an intermediate point, given as zero increments; none: it has none.\n\nIf wrong: the intermediate point is taken for a target: a diagonal through the work.", "type": "string", "enum": ["none", "incremental-zero"], "examples": ["none"] }, "change-position": { "title": "Change position", "description": "Where the operator changes tools, with retract by clearance; work coordinates.\n\nUnit: mm, or with `in`.\n\nIf wrong: the operator reaches between tool and work to change it.", "$ref": "#/$defs/place", "examples": [[0, 0, 120]] } }, "examples": [{ "by": "machine-move", "z": 0, "acts-on": "spindle-nose", "cancel-length-first": "no", "intermediate": "none" }] }, "length-offset": { "title": "Length offset at the machine", "description": "How the tool's length comes to act.", "type": "object", "additionalProperties": false, "properties": { "form": { "title": "Form", "description": "with-first-z: in the block of the first Z motion; own-block: in a block of its own before it; in-tool-word: with the tool word; none: there is no length offset, the operator sets Z.\n\nIf wrong: the tool is driven into the work by its length.", "type": "string", "enum": ["with-first-z", "own-block", "in-tool-word", "none"], "examples": ["with-first-z"] }, "select-moves": { "title": "Selecting moves Z", "description": "Whether selecting it moves the axis by itself.\n\nIf wrong: Z moves where nobody meant it to.", "$ref": "#/$defs/yesNo", "examples": ["no"] }, "cancel-moves": { "title": "Cancelling moves Z", "description": "Whether cancelling it moves the axis by itself. It is then cancelled at swap height only.\n\nIf wrong: Z moves down by the tool's length.", "$ref": "#/$defs/yesNo", "examples": ["no"] } }, "examples": [{ "form": "with-first-z", "select-moves": "no", "cancel-moves": "no" }] }, "lengths": { "title": "Tool lengths", "description": "Where they come from: table, the controller's tool table; measured, a measurement after each swap; operator, set by hand.\n\nIf wrong: the tool is driven into the work by the difference.", "type": "string", "enum": ["table", "measured", "operator"], "examples": ["table"] }, "drawbar": { "title": "Drawbar", "description": "How the drawbar is worked at a rack, or none.", "anyOf": [{ "title": "None", "description": "There is no drawbar that the program works.", "type": "string", "const": "none" }, { "type": "object", "additionalProperties": false, "properties": { "travels": { "title": "Travel of an empty spindle", "description": "Whether an empty spindle travels along the rack clamped or released.\n\nIf wrong: the released drawbar strikes a holder, or the clamped one is pressed onto it.", "type": "string", "enum": ["clamped", "released"], "examples": ["clamped"] }, "taper-air": { "title": "Taper air", "description": "Whether air cleans the taper while a tool is picked.\n\nIf wrong: a chip between taper and holder: the tool runs out.", "$ref": "#/$defs/yesNo", "examples": ["no"] } } }], "examples": ["none", { "travels": "clamped", "taper-air": "no" }] }, "rack": { "title": "Rack", "description": "Where tools wait and how they are fetched, or none.", "anyOf": [{ "title": "None", "description": "There is no rack that the program drives to.", "type": "string", "const": "none" }, { "type": "object", "additionalProperties": false, "properties": { "style": { "title": "Style of the rack", "description": "drop-in: the holder is let down into its pocket from above; slide-in: it is slid into a fork from the side.\n\nIf wrong: the spindle is driven into the rack.", "type": "string", "enum": ["drop-in", "slide-in"], "examples": ["drop-in"] }, "clear-z": { "title": "Clear height", "description": "Machine Z at which an empty spindle clears the tools in the rack, and a full one the empty pockets.\n\nUnit: mm, or with `in`.\n\nIf wrong: the tool is dragged through the rack.", "$ref": "#/$defs/length", "examples": [-5] }, "pocket-z": { "title": "Pocket height", "description": "Machine Z at which the holder sits in its pocket.\n\nUnit: mm, or with `in`.\n\nIf wrong: the holder is crushed into the rack, or drops.", "$ref": "#/$defs/length", "examples": [-78.4] }, "descend-from": { "title": "Start of the slow descent", "description": "How far above the pocket height the descent at feed begins.\n\nUnit: mm, or with `in`.\n\nIf wrong: the holder is driven into its pocket at rapid.", "$ref": "#/$defs/length", "examples": [20] }, "descend-feed": { "title": "Feed of the slow descent", "description": "Feed of the last part of the way down.\n\nUnit: mm/min, or with `in/min`.\n\nIf wrong: the holder is driven into its pocket too fast.", "$ref": "#/$defs/feed", "examples": [600] }, "pockets": { "title": "Pockets", "description": "Places of the pockets, machine coordinates: the first one, the pitch to the next and their number, or a list of places.\n\nIf wrong: the spindle is driven beside the pocket.", "anyOf": [{ "type": "object", "additionalProperties": false, "properties": { "first": { "title": "First pocket", "description": "X and Y of pocket 1.\n\nUnit: mm, or with `in`.\n\nIf wrong: the spindle is driven beside the pocket.", "$ref": "#/$defs/point", "examples": [[40, 20]] }, "pitch": { "title": "Pitch", "description": "X and Y from one pocket to the next.\n\nUnit: mm, or with `in`.\n\nIf wrong: the spindle is driven beside the pocket, farther with each one.", "$ref": "#/$defs/point", "examples": [[80, 0]] }, "count": { "title": "Number of pockets", "description": "How many there are.\n\nUnit: pockets.\n\nIf wrong: the spindle is driven past the end of the rack.", "type": "integer", "minimum": 1, "maximum": 200, "examples": [6] } } }, { "type": "array", "minItems": 1, "maxItems": 200, "items": { "$ref": "#/$defs/point" } }], "examples": [{ "first": [40, 20], "pitch": [80, 0], "count": 6 }, [[40, 20], [120, 20]]] }, "zone": { "title": "Rack zone", "description": "Box that only swaps enter.", "type": "object", "additionalProperties": false, "properties": { "min": { "title": "Least corner", "description": "Least X, Y and Z of the rack, machine coordinates.\n\nUnit: mm, or with `in`.\n\nIf wrong: the tool is driven into it.", "$ref": "#/$defs/place", "examples": [[0, 0, -95]] }, "max": { "title": "Greatest corner", "description": "Greatest X, Y and Z of the rack, machine coordinates.\n\nUnit: mm, or with `in`.\n\nIf wrong: the tool is driven into it.", "$ref": "#/$defs/place", "examples": [[500, 60, -5]] } }, "examples": [{ "min": [0, 0, -95], "max": [500, 60, -5] }] }, "slide": { "title": "Slide", "description": "The way into a fork, with slide-in.", "type": "object", "additionalProperties": false, "properties": { "direction": { "title": "Direction of the slide", "description": "Direction from the approach into the pocket.\n\nIf wrong: the holder is torn out of the fork.", "type": "string", "enum": ["+x", "-x", "+y", "-y"], "examples": ["+y"] }, "distance": { "title": "Length of the slide", "description": "Distance from the approach to the pocket.\n\nUnit: mm, or with `in`.\n\nIf wrong: the holder strikes the fork on its way up or down.", "$ref": "#/$defs/length", "examples": [40] }, "feed": { "title": "Feed of the slide", "description": "Feed of the slide.\n\nUnit: mm/min, or with `in/min`.\n\nIf wrong: the holder strikes the fork too fast.", "$ref": "#/$defs/feed", "examples": [1e3] } }, "examples": [{ "direction": "+y", "distance": 40, "feed": 1e3 }] }, "widest": { "title": "Widest tool", "description": "Widest tool that a pocket takes, or none: not checked.\n\nUnit: mm, or with `in`.\n\nIf wrong: a wide tool strikes its neighbour.", "$ref": "#/$defs/lengthOrNone", "examples": [60] }, "longest": { "title": "Longest tool", "description": "Longest tool that a pocket takes, or none: not checked.\n\nUnit: mm, or with `in`.\n\nIf wrong: a long tool strikes the table under the rack.", "$ref": "#/$defs/lengthOrNone", "examples": [90] }, "cover": { "title": "Cover", "description": "Whether the program opens and closes a cover.\n\nIf wrong: the spindle is driven into the cover.", "$ref": "#/$defs/yesNo", "examples": ["no"] }, "at-end": { "title": "At the end", "description": "What becomes of the last tool.", "type": "object", "additionalProperties": false, "properties": { "tool": { "title": "Last tool", "description": "return: it goes back to its pocket; keep: it stays in the spindle.\n\nIf wrong: the next program finds a tool where it expects none.", "type": "string", "enum": ["return", "keep"], "examples": ["return"] } }, "examples": [{ "tool": "return" }] } } }], "examples": ["none", { "style": "drop-in", "clear-z": -5, "pocket-z": -78.4, "descend-from": 20, "descend-feed": 600, "pockets": { "first": [40, 20], "pitch": [80, 0], "count": 6 }, "at-end": { "tool": "return" } }] }, "park": { "title": "Parking place", "description": "X and Y where the program leaves the axes at its end, machine coordinates.\n\nUnit: mm, or with `in`.\n\nIf wrong: the spindle is in the way of unloading.", "$ref": "#/$defs/point", "examples": [[600, 800]] }, "outputs": { "title": "Outputs", "description": "Outputs that the program switches, by a name of yours.", "type": "object", "additionalProperties": false, "patternProperties": { "^[a-z][a-z0-9-]{0,30}$": { "title": "One output", "description": "An output and when it is on.", "type": "object", "additionalProperties": false, "properties": { "number": { "title": "Number of the output", "description": "Number as the idiom says it.\n\nUnit: number of the output.\n\nIf wrong: another output is switched.", "type": "integer", "minimum": 0, "maximum": 9999, "examples": [1] }, "during": { "title": "When it is on", "description": "cutting: from the spindle's start to its stop; program: from the first swap to the end.\n\nIf wrong: the extraction is off while dust is made, or on during the swap.", "type": "string", "enum": ["cutting", "program"], "examples": ["cutting"] } }, "examples": [{ "number": 1, "during": "cutting" }] } }, "examples": [{ "extraction": { "number": 1, "during": "cutting" } }] }, "hood": { "title": "Dust hood", "description": "Whether the program lifts and lowers a dust hood.\n\nIf wrong: the hood is driven into the rack or the clamps.", "$ref": "#/$defs/yesNo", "examples": ["yes"] }, "keep-out": { "title": "Keep-out boxes", "description": "Boxes in machine coordinates that no motion of the work may enter.\n\nUnit: mm, or with `in`.\n\nIf wrong: the tool is driven into what stands there.", "type": "array", "maxItems": 50, "items": { "title": "One box", "description": "A box and what stands there.", "type": "object", "additionalProperties": false, "required": ["name", "min", "max"], "properties": { "name": { "title": "What stands there", "description": "Findings name it.\n\nIf wrong: nobody knows what the finding means.", "type": "string", "minLength": 1, "maxLength": 60, "examples": ["vise"] }, "min": { "title": "Least corner", "description": "Least X, Y and Z of what stands there, machine coordinates.\n\nUnit: mm, or with `in`.\n\nIf wrong: the tool is driven into it.", "$ref": "#/$defs/place", "examples": [[100, 100, -95]] }, "max": { "title": "Greatest corner", "description": "Greatest X, Y and Z of what stands there, machine coordinates.\n\nUnit: mm, or with `in`.\n\nIf wrong: the tool is driven into it.", "$ref": "#/$defs/place", "examples": [[250, 200, -40]] } }, "examples": [{ "name": "vise", "min": [100, 100, -95], "max": [250, 200, -40] }] }, "examples": [[{ "name": "vise", "min": [100, 100, -95], "max": [250, 200, -40] }]] }, "tapping": { "title": "Tapping", "description": "How the machine taps.", "type": "object", "additionalProperties": false, "properties": { "kind": { "title": "Kind of tapping", "description": "none: not at all; floating: with a floating holder; synchronised: spindle and feed are locked.\n\nIf wrong: the tap breaks or strips the thread.", "type": "string", "enum": ["none", "floating", "synchronised"], "examples": ["floating"] }, "reversal": { "title": "Time to reverse", "description": "Time that the spindle needs to reverse, with a floating holder.\n\nUnit: s, ms or min, written behind the number.\n\nIf wrong: the holder runs out of float and the tap breaks.", "$ref": "#/$defs/time", "examples": ["1 s"] }, "longhand": { "title": "Tapping longhand", "description": "Whether tapping may be written without its cycle.\n\nIf wrong: the tap breaks: feed and spindle do not reverse together.", "$ref": "#/$defs/yesNo", "examples": ["no"] } }, "examples": [{ "kind": "floating", "reversal": "1 s", "longhand": "no" }] }, "feed": { "title": "Feed limits", "description": "Lowest and highest feed; without them feeds are not checked against the machine.", "type": "object", "additionalProperties": false, "properties": { "least": { "title": "Lowest feed", "description": "Lowest feed.\n\nUnit: mm/min, or with `in/min`.\n\nIf wrong: the feed is raised without a word.", "$ref": "#/$defs/feed", "examples": [1] }, "most": { "title": "Highest feed", "description": "Highest feed.\n\nUnit: mm/min, or with `in/min`.\n\nIf wrong: the feed is cut without a word, and times on the sheet are wrong.", "$ref": "#/$defs/feed", "examples": [12e3] } }, "examples": [{ "least": 1, "most": 12e3 }] }, "work-zero": { "title": "Origins of the work offsets", "description": "Where the origin of each work offset (1 to 9) lies in machine coordinates, where it is always the same; a set-up file overrides it. With it, travel is checked in full.\n\nUnit: mm, or with `in`.\n\nIf wrong: a program that runs past the travel is passed, or a good one refused.", "type": "object", "additionalProperties": false, "patternProperties": { "^[1-9]$": { "title": "Origin of one work offset", "description": "X, Y and Z of its origin in machine coordinates.\n\nUnit: mm, or with `in`.\n\nIf wrong: a program that runs past the travel is passed, or a good one refused.", "$ref": "#/$defs/place", "examples": [[300, 200, -80]] } }, "examples": [{ "1": [300, 200, -80] }] } }, "examples": [{ "travel": { "x": [0, 1220], "y": [0, 810], "z": [-95, 0] }, "swap": "operator" }] }, "confirm": { "title": "Confirmations", "description": "How the program makes sure of a state before it relies on it. One that is not stated cannot be relied on: a job that needs it is refused.", "type": "object", "additionalProperties": false, "properties": { "at-speed": { "title": "Spindle at speed", "description": "How it is confirmed that the spindle is at its speed: wait (on a signal), dwell (for a time or by an expression), intrinsic (the controller holds by itself; the reason is stated), or the word operator.\n\nIf wrong: the tool cuts before the spindle is up to speed.", "anyOf": [{ "title": "By the operator", "description": "The program stops and asks the operator to see to it.", "type": "string", "const": "operator" }, { "$ref": "#/$defs/confirmation" }], "examples": [{ "wait": "at-speed", "timeout": "10 s" }, { "dwell": "max(spin_up, spin_down) * max(rpm - from_rpm, from_rpm - rpm) / max_rpm + 0.5 * second" }] }, "stopped": { "title": "Spindle stopped", "description": "How it is confirmed that the spindle stands: wait (on a signal), dwell (for a time or by an expression), intrinsic (the controller holds by itself; the reason is stated), or the word operator.\n\nIf wrong: the tool is swapped, or a hand is in the machine, while the spindle turns.", "anyOf": [{ "title": "By the operator", "description": "The program stops and asks the operator to see to it.", "type": "string", "const": "operator" }, { "$ref": "#/$defs/confirmation" }], "examples": [{ "wait": "stopped", "timeout": "30 s" }, { "dwell": "coast_down * from_rpm / max_rpm + 0.5 * second" }] }, "released": { "title": "Tool released", "description": "How it is confirmed that the drawbar is open: wait (on a signal), dwell (for a time or by an expression), intrinsic (the controller holds by itself; the reason is stated), or the word operator.\n\nIf wrong: the holder is torn out of its pocket.", "anyOf": [{ "title": "By the operator", "description": "The program stops and asks the operator to see to it.", "type": "string", "const": "operator" }, { "$ref": "#/$defs/confirmation" }], "examples": [{ "wait": "released", "timeout": "2 s" }, { "dwell": "0.8 s" }] }, "clamped": { "title": "Tool clamped", "description": "How it is confirmed that the drawbar is closed with a tool in it: wait (on a signal), dwell (for a time or by an expression), intrinsic (the controller holds by itself; the reason is stated), or the word operator.\n\nIf wrong: the spindle starts with a loose tool.", "anyOf": [{ "title": "By the operator", "description": "The program stops and asks the operator to see to it.", "type": "string", "const": "operator" }, { "$ref": "#/$defs/confirmation" }], "examples": [{ "wait": "clamped", "timeout": "2 s" }] }, "air": { "title": "Air pressure", "description": "How it is confirmed that there is air to work the drawbar: wait (on a signal), dwell (for a time or by an expression), intrinsic (the controller holds by itself; the reason is stated), or the word operator.\n\nIf wrong: the drawbar opens halfway and the tool drops.", "anyOf": [{ "title": "By the operator", "description": "The program stops and asks the operator to see to it.", "type": "string", "const": "operator" }, { "$ref": "#/$defs/confirmation" }], "examples": [{ "wait": "air", "timeout": "5 s" }] }, "hold-down": { "title": "Work held", "description": "How it is confirmed that vacuum or clamps hold the work: by a wait on the signal `hold-down`, before the first start of the spindle and behind each stop, since hands may then have been at the work.\n\nIf wrong: the work comes loose in the cut.", "type": "object", "additionalProperties": false, "required": ["wait"], "properties": { "wait": { "title": "Wait on its signal", "description": "The signal of the hold-down.\n\nIf wrong: the program waits on something else.", "type": "string", "const": "hold-down", "examples": ["hold-down"] }, "timeout": { "title": "Timeout of the hold-down", "description": "How long the wait lasts before the controller alarms.\n\nUnit: s, ms or min, written behind the number.\n\nIf wrong: the program alarms before the vacuum stands.", "$ref": "#/$defs/time", "examples": ["10 s"] } }, "examples": [{ "wait": "hold-down", "timeout": "10 s" }] } }, "examples": [{ "at-speed": { "wait": "at-speed", "timeout": "10 s" }, "stopped": { "dwell": "60 s" } }] } }, "$defs": { "yesNo": { "description": "yes or no", "type": "string", "enum": ["yes", "no"] }, "code": { "description": "a code such as G54 or M6", "type": "string", "pattern": "^[GM]\\d{1,3}(\\.\\d)?$" }, "codeOrNone": { "description": "a code such as G54 or M6, or none", "type": "string", "pattern": "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, "codeWithWordOrNone": { "description": "a code such as G53, if need be with a word that belongs to it (G54.1 P2), or none", "type": "string", "pattern": "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$" }, "optionalStop": { "description": "a code such as M1, one behind a block delete mark such as /M0 or /2 M0, or none", "type": "string", "pattern": "^(none|(/([1-9] )?)?[GM]\\d{1,3}(\\.\\d)?)$" }, "letter": { "description": "one capital letter", "type": "string", "pattern": "^[A-Z]$" }, "axisLetter": { "description": "one of X Y Z A B C U V W", "type": "string", "enum": ["X", "Y", "Z", "A", "B", "C", "U", "V", "W"] }, "letterOrNone": { "description": "one capital letter, or none", "type": "string", "pattern": "^(none|[A-Z])$" }, "length": { "description": "a length: a number in mm, or a text such as 2 in", "anyOf": [{ "type": "number", "minimum": -1e6, "maximum": 1e6 }, { "type": "string", "pattern": "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }] }, "lengthOrNone": { "description": "a length (a number in mm, or a text such as 2 in), or none", "anyOf": [{ "type": "number", "minimum": 0, "maximum": 1e6 }, { "type": "string", "pattern": "^(none|\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }] }, "feed": { "description": "a feed: a number in mm/min, or a text such as 20 in/min", "anyOf": [{ "type": "number", "exclusiveMinimum": 0, "maximum": 1e6 }, { "type": "string", "pattern": "^\\d{1,5}(\\.\\d{1,5})? (mm|in)/min$" }] }, "time": { "description": "a time such as 6 s, 500 ms or 2 min", "type": "string", "pattern": "^\\d{1,6}(\\.\\d{1,6})? ?(s|ms|min)$" }, "point": { "description": "a list of two lengths, X and Y", "type": "array", "minItems": 2, "maxItems": 2, "items": { "$ref": "#/$defs/length" } }, "place": { "description": "a list of three lengths, X, Y and Z", "type": "array", "minItems": 3, "maxItems": 3, "items": { "$ref": "#/$defs/length" } }, "template": { "description": "none, or words such as M94 P{{signal}}", "type": "string", "minLength": 1, "maxLength": 120 }, "signal": { "description": "a mapping with the keys input, level and settle", "type": "object", "additionalProperties": false, "properties": { "input": { "title": "Input", "description": "Number of the input as the wait says it.\n\nUnit: number of the input.\n\nIf wrong: the program waits on something else.", "type": "integer", "minimum": 0, "maximum": 9999, "examples": [4] }, "level": { "title": "Level", "description": "Level of the input in that state; on unless stated.\n\nIf wrong: the wait is over at once, whatever the machine does.", "type": "string", "enum": ["on", "off"], "examples": ["on"] }, "settle": { "title": "Settling time", "description": "How long the contact may still show the old state after a command: a dwell before the wait. None unless stated.\n\nUnit: s, ms or min, written behind the number.\n\nIf wrong: the wait sees the old state and is over at once.", "$ref": "#/$defs/time", "examples": ["0.3 s"] } } }, "confirmation": { "description": "a mapping with wait and timeout, with dwell, or with intrinsic", "type": "object", "additionalProperties": false, "properties": { "wait": { "title": "Wait on a signal", "description": "The signal, one of those under machine.signals.\n\nIf wrong: the program waits on something else.", "type": "string", "enum": ["at-speed", "stopped", "released", "clamped", "tool-present", "air", "hold-down"], "examples": ["at-speed"] }, "timeout": { "title": "Timeout", "description": "How long the wait lasts before the controller alarms.\n\nUnit: s, ms or min, written behind the number.\n\nIf wrong: the program hangs, or alarms before the state can be reached.", "$ref": "#/$defs/time", "examples": ["10 s"] }, "dwell": { "title": "Dwell", "description": "A time such as 5 s, or an expression that gives one: numbers, + - * / ( ), min, max, the constants second, minute, mm, inch, rev, and the names rpm, from_rpm, min_rpm, max_rpm, spin_up, spin_down, coast_down.\n\nUnit: s, ms or min behind a number; an expression has units of its own.\n\nIf wrong: the state is taken as reached before it is.", "type": "string", "minLength": 1, "maxLength": 300, "examples": ["20 * second"] }, "intrinsic": { "title": "By the controller itself", "description": "The controller holds the program until the state is reached; here stands how that is known.\n\nIf wrong: the state is taken as reached before it is.", "type": "string", "minLength": 10, "maxLength": 200, "examples": ["the start code waits for the drive's at-speed contact, tried with a slow ramp"] } } }, "own-point": { "title": "Decimal point", "description": "always: every number with decimals has a point; when-needed: whole numbers have none; never: the point is implied, and the number counts least increments.\n\nIf wrong: a control that counts least increments reads X50 as 0.050 mm; the opposite mistake moves a thousand times too far.", "type": "string", "enum": ["always", "when-needed", "never"], "examples": ["always"] }, "own-trailing-zeros": { "title": "Zeros at the end", "description": "keep: 1.500; drop: 1.5 and 10.; one: 1.5 and 10.0 (at least one digit behind the point).\n\nIf wrong: a number without decimals may be read in least increments.", "type": "string", "enum": ["keep", "drop", "one"], "examples": ["keep"] }, "own-leading-zero": { "title": "Zero before the point", "description": "keep: 0.5; drop: .5\n\nIf wrong: the word is a syntax error.", "type": "string", "enum": ["keep", "drop"], "examples": ["keep"] }, "own-plus": { "title": "Plus sign", "description": "Whether a positive number with a direction (axes, arc centres) has a + sign.\n\nIf wrong: the word is a syntax error, or an old control takes it as unsigned.", "$ref": "#/$defs/yesNo", "examples": ["no"] }, "own-suppressed-zeros": { "title": "Zeros left out", "description": "With an implied point: which zeros are left out. leading: X12500 is 12.500; trailing: the number is read from the left; none: all digits stand.\n\nIf wrong: every coordinate is wrong by powers of ten.", "type": "string", "enum": ["leading", "trailing", "none"], "examples": ["leading"] }, "own-digits": { "title": "Digits of a number", "description": "With an implied point: how many digits a number has before zeros at its end are left out.\n\nUnit: digits.\n\nIf wrong: every coordinate is wrong by powers of ten.", "type": "integer", "minimum": 1, "maximum": 12, "examples": [7] }, "own-whole-digits": { "title": "Digits before the point", "description": "Most digits before the point, or none for no limit.\n\nUnit: digits.\n\nIf wrong: the word alarms, or its first digits are lost and the axis goes to another place.", "anyOf": [{ "title": "None", "description": "As many as the number has.", "type": "string", "const": "none" }, { "type": "integer", "minimum": 1, "maximum": 12 }], "examples": ["none"] } } };
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
      if (data.numbers !== void 0) {
        let data59 = data.numbers;
        if (data59 && typeof data59 == "object" && !Array.isArray(data59)) {
          for (const key9 in data59) {
            if (!func1.call(schema31.properties.numbers.properties, key9)) {
              const err158 = { instancePath: instancePath + "/numbers", schemaPath: "#/properties/numbers/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key9 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err158];
              } else {
                vErrors.push(err158);
              }
              errors++;
            }
          }
          if (data59.point !== void 0) {
            let data60 = data59.point;
            if (typeof data60 !== "string") {
              const err159 = { instancePath: instancePath + "/numbers/point", schemaPath: "#/properties/numbers/properties/point/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err159];
              } else {
                vErrors.push(err159);
              }
              errors++;
            }
            if (!(data60 === "always" || data60 === "when-needed" || data60 === "never")) {
              const err160 = { instancePath: instancePath + "/numbers/point", schemaPath: "#/properties/numbers/properties/point/enum", keyword: "enum", params: { allowedValues: schema31.properties.numbers.properties.point.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err160];
              } else {
                vErrors.push(err160);
              }
              errors++;
            }
          }
          if (data59["trailing-zeros"] !== void 0) {
            let data61 = data59["trailing-zeros"];
            if (typeof data61 !== "string") {
              const err161 = { instancePath: instancePath + "/numbers/trailing-zeros", schemaPath: "#/properties/numbers/properties/trailing-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err161];
              } else {
                vErrors.push(err161);
              }
              errors++;
            }
            if (!(data61 === "keep" || data61 === "drop" || data61 === "one")) {
              const err162 = { instancePath: instancePath + "/numbers/trailing-zeros", schemaPath: "#/properties/numbers/properties/trailing-zeros/enum", keyword: "enum", params: { allowedValues: schema31.properties.numbers.properties["trailing-zeros"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err162];
              } else {
                vErrors.push(err162);
              }
              errors++;
            }
          }
          if (data59["leading-zero"] !== void 0) {
            let data62 = data59["leading-zero"];
            if (typeof data62 !== "string") {
              const err163 = { instancePath: instancePath + "/numbers/leading-zero", schemaPath: "#/properties/numbers/properties/leading-zero/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err163];
              } else {
                vErrors.push(err163);
              }
              errors++;
            }
            if (!(data62 === "keep" || data62 === "drop")) {
              const err164 = { instancePath: instancePath + "/numbers/leading-zero", schemaPath: "#/properties/numbers/properties/leading-zero/enum", keyword: "enum", params: { allowedValues: schema31.properties.numbers.properties["leading-zero"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err164];
              } else {
                vErrors.push(err164);
              }
              errors++;
            }
          }
          if (data59.plus !== void 0) {
            let data63 = data59.plus;
            if (typeof data63 !== "string") {
              const err165 = { instancePath: instancePath + "/numbers/plus", schemaPath: "#/$defs/yesNo/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err165];
              } else {
                vErrors.push(err165);
              }
              errors++;
            }
            if (!(data63 === "yes" || data63 === "no")) {
              const err166 = { instancePath: instancePath + "/numbers/plus", schemaPath: "#/$defs/yesNo/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err166];
              } else {
                vErrors.push(err166);
              }
              errors++;
            }
          }
          if (data59["suppressed-zeros"] !== void 0) {
            let data64 = data59["suppressed-zeros"];
            if (typeof data64 !== "string") {
              const err167 = { instancePath: instancePath + "/numbers/suppressed-zeros", schemaPath: "#/properties/numbers/properties/suppressed-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err167];
              } else {
                vErrors.push(err167);
              }
              errors++;
            }
            if (!(data64 === "leading" || data64 === "trailing" || data64 === "none")) {
              const err168 = { instancePath: instancePath + "/numbers/suppressed-zeros", schemaPath: "#/properties/numbers/properties/suppressed-zeros/enum", keyword: "enum", params: { allowedValues: schema31.properties.numbers.properties["suppressed-zeros"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err168];
              } else {
                vErrors.push(err168);
              }
              errors++;
            }
          }
          if (data59.digits !== void 0) {
            let data65 = data59.digits;
            if (!(typeof data65 == "number" && (!(data65 % 1) && !isNaN(data65)) && isFinite(data65))) {
              const err169 = { instancePath: instancePath + "/numbers/digits", schemaPath: "#/properties/numbers/properties/digits/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
              if (vErrors === null) {
                vErrors = [err169];
              } else {
                vErrors.push(err169);
              }
              errors++;
            }
            if (typeof data65 == "number" && isFinite(data65)) {
              if (data65 > 12 || isNaN(data65)) {
                const err170 = { instancePath: instancePath + "/numbers/digits", schemaPath: "#/properties/numbers/properties/digits/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                if (vErrors === null) {
                  vErrors = [err170];
                } else {
                  vErrors.push(err170);
                }
                errors++;
              }
              if (data65 < 1 || isNaN(data65)) {
                const err171 = { instancePath: instancePath + "/numbers/digits", schemaPath: "#/properties/numbers/properties/digits/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                if (vErrors === null) {
                  vErrors = [err171];
                } else {
                  vErrors.push(err171);
                }
                errors++;
              }
            }
          }
          if (data59["whole-digits"] !== void 0) {
            let data66 = data59["whole-digits"];
            const _errs164 = errors;
            let valid33 = false;
            const _errs165 = errors;
            if (typeof data66 !== "string") {
              const err172 = { instancePath: instancePath + "/numbers/whole-digits", schemaPath: "#/properties/numbers/properties/whole-digits/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err172];
              } else {
                vErrors.push(err172);
              }
              errors++;
            }
            if ("none" !== data66) {
              const err173 = { instancePath: instancePath + "/numbers/whole-digits", schemaPath: "#/properties/numbers/properties/whole-digits/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
              if (vErrors === null) {
                vErrors = [err173];
              } else {
                vErrors.push(err173);
              }
              errors++;
            }
            var _valid4 = _errs165 === errors;
            valid33 = valid33 || _valid4;
            const _errs167 = errors;
            if (!(typeof data66 == "number" && (!(data66 % 1) && !isNaN(data66)) && isFinite(data66))) {
              const err174 = { instancePath: instancePath + "/numbers/whole-digits", schemaPath: "#/properties/numbers/properties/whole-digits/anyOf/1/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
              if (vErrors === null) {
                vErrors = [err174];
              } else {
                vErrors.push(err174);
              }
              errors++;
            }
            if (typeof data66 == "number" && isFinite(data66)) {
              if (data66 > 12 || isNaN(data66)) {
                const err175 = { instancePath: instancePath + "/numbers/whole-digits", schemaPath: "#/properties/numbers/properties/whole-digits/anyOf/1/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                if (vErrors === null) {
                  vErrors = [err175];
                } else {
                  vErrors.push(err175);
                }
                errors++;
              }
              if (data66 < 1 || isNaN(data66)) {
                const err176 = { instancePath: instancePath + "/numbers/whole-digits", schemaPath: "#/properties/numbers/properties/whole-digits/anyOf/1/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                if (vErrors === null) {
                  vErrors = [err176];
                } else {
                  vErrors.push(err176);
                }
                errors++;
              }
            }
            var _valid4 = _errs167 === errors;
            valid33 = valid33 || _valid4;
            if (!valid33) {
              const err177 = { instancePath: instancePath + "/numbers/whole-digits", schemaPath: "#/properties/numbers/properties/whole-digits/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err177];
              } else {
                vErrors.push(err177);
              }
              errors++;
            } else {
              errors = _errs164;
              if (vErrors !== null) {
                if (_errs164) {
                  vErrors.length = _errs164;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data59.length !== void 0) {
            let data67 = data59.length;
            if (data67 && typeof data67 == "object" && !Array.isArray(data67)) {
              for (const key10 in data67) {
                if (!func1.call(schema31.properties.numbers.properties.length.properties, key10)) {
                  const err178 = { instancePath: instancePath + "/numbers/length", schemaPath: "#/properties/numbers/properties/length/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key10 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err178];
                  } else {
                    vErrors.push(err178);
                  }
                  errors++;
                }
              }
              if (data67.mm !== void 0) {
                let data68 = data67.mm;
                if (!(typeof data68 == "number" && (!(data68 % 1) && !isNaN(data68)) && isFinite(data68))) {
                  const err179 = { instancePath: instancePath + "/numbers/length/mm", schemaPath: "#/properties/numbers/properties/length/properties/mm/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err179];
                  } else {
                    vErrors.push(err179);
                  }
                  errors++;
                }
                if (typeof data68 == "number" && isFinite(data68)) {
                  if (data68 > 7 || isNaN(data68)) {
                    const err180 = { instancePath: instancePath + "/numbers/length/mm", schemaPath: "#/properties/numbers/properties/length/properties/mm/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                    if (vErrors === null) {
                      vErrors = [err180];
                    } else {
                      vErrors.push(err180);
                    }
                    errors++;
                  }
                  if (data68 < 0 || isNaN(data68)) {
                    const err181 = { instancePath: instancePath + "/numbers/length/mm", schemaPath: "#/properties/numbers/properties/length/properties/mm/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err181];
                    } else {
                      vErrors.push(err181);
                    }
                    errors++;
                  }
                }
              }
              if (data67.inch !== void 0) {
                let data69 = data67.inch;
                if (!(typeof data69 == "number" && (!(data69 % 1) && !isNaN(data69)) && isFinite(data69))) {
                  const err182 = { instancePath: instancePath + "/numbers/length/inch", schemaPath: "#/properties/numbers/properties/length/properties/inch/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err182];
                  } else {
                    vErrors.push(err182);
                  }
                  errors++;
                }
                if (typeof data69 == "number" && isFinite(data69)) {
                  if (data69 > 6 || isNaN(data69)) {
                    const err183 = { instancePath: instancePath + "/numbers/length/inch", schemaPath: "#/properties/numbers/properties/length/properties/inch/maximum", keyword: "maximum", params: { comparison: "<=", limit: 6 }, message: "must be <= 6" };
                    if (vErrors === null) {
                      vErrors = [err183];
                    } else {
                      vErrors.push(err183);
                    }
                    errors++;
                  }
                  if (data69 < 0 || isNaN(data69)) {
                    const err184 = { instancePath: instancePath + "/numbers/length/inch", schemaPath: "#/properties/numbers/properties/length/properties/inch/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err184];
                    } else {
                      vErrors.push(err184);
                    }
                    errors++;
                  }
                }
              }
              if (data67.point !== void 0) {
                let data70 = data67.point;
                if (typeof data70 !== "string") {
                  const err185 = { instancePath: instancePath + "/numbers/length/point", schemaPath: "#/$defs/own-point/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err185];
                  } else {
                    vErrors.push(err185);
                  }
                  errors++;
                }
                if (!(data70 === "always" || data70 === "when-needed" || data70 === "never")) {
                  const err186 = { instancePath: instancePath + "/numbers/length/point", schemaPath: "#/$defs/own-point/enum", keyword: "enum", params: { allowedValues: schema37.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err186];
                  } else {
                    vErrors.push(err186);
                  }
                  errors++;
                }
              }
              if (data67["trailing-zeros"] !== void 0) {
                let data71 = data67["trailing-zeros"];
                if (typeof data71 !== "string") {
                  const err187 = { instancePath: instancePath + "/numbers/length/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err187];
                  } else {
                    vErrors.push(err187);
                  }
                  errors++;
                }
                if (!(data71 === "keep" || data71 === "drop" || data71 === "one")) {
                  const err188 = { instancePath: instancePath + "/numbers/length/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/enum", keyword: "enum", params: { allowedValues: schema38.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err188];
                  } else {
                    vErrors.push(err188);
                  }
                  errors++;
                }
              }
              if (data67["leading-zero"] !== void 0) {
                let data72 = data67["leading-zero"];
                if (typeof data72 !== "string") {
                  const err189 = { instancePath: instancePath + "/numbers/length/leading-zero", schemaPath: "#/$defs/own-leading-zero/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err189];
                  } else {
                    vErrors.push(err189);
                  }
                  errors++;
                }
                if (!(data72 === "keep" || data72 === "drop")) {
                  const err190 = { instancePath: instancePath + "/numbers/length/leading-zero", schemaPath: "#/$defs/own-leading-zero/enum", keyword: "enum", params: { allowedValues: schema39.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err190];
                  } else {
                    vErrors.push(err190);
                  }
                  errors++;
                }
              }
              if (data67.plus !== void 0) {
                let data73 = data67.plus;
                if (typeof data73 !== "string") {
                  const err191 = { instancePath: instancePath + "/numbers/length/plus", schemaPath: "#/$defs/own-plus/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err191];
                  } else {
                    vErrors.push(err191);
                  }
                  errors++;
                }
                if (!(data73 === "yes" || data73 === "no")) {
                  const err192 = { instancePath: instancePath + "/numbers/length/plus", schemaPath: "#/$defs/own-plus/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err192];
                  } else {
                    vErrors.push(err192);
                  }
                  errors++;
                }
              }
              if (data67["suppressed-zeros"] !== void 0) {
                let data74 = data67["suppressed-zeros"];
                if (typeof data74 !== "string") {
                  const err193 = { instancePath: instancePath + "/numbers/length/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err193];
                  } else {
                    vErrors.push(err193);
                  }
                  errors++;
                }
                if (!(data74 === "leading" || data74 === "trailing" || data74 === "none")) {
                  const err194 = { instancePath: instancePath + "/numbers/length/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/enum", keyword: "enum", params: { allowedValues: schema41.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err194];
                  } else {
                    vErrors.push(err194);
                  }
                  errors++;
                }
              }
              if (data67.digits !== void 0) {
                let data75 = data67.digits;
                if (!(typeof data75 == "number" && (!(data75 % 1) && !isNaN(data75)) && isFinite(data75))) {
                  const err195 = { instancePath: instancePath + "/numbers/length/digits", schemaPath: "#/$defs/own-digits/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err195];
                  } else {
                    vErrors.push(err195);
                  }
                  errors++;
                }
                if (typeof data75 == "number" && isFinite(data75)) {
                  if (data75 > 12 || isNaN(data75)) {
                    const err196 = { instancePath: instancePath + "/numbers/length/digits", schemaPath: "#/$defs/own-digits/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err196];
                    } else {
                      vErrors.push(err196);
                    }
                    errors++;
                  }
                  if (data75 < 1 || isNaN(data75)) {
                    const err197 = { instancePath: instancePath + "/numbers/length/digits", schemaPath: "#/$defs/own-digits/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err197];
                    } else {
                      vErrors.push(err197);
                    }
                    errors++;
                  }
                }
              }
              if (data67["whole-digits"] !== void 0) {
                let data76 = data67["whole-digits"];
                const _errs196 = errors;
                let valid42 = false;
                const _errs197 = errors;
                if (typeof data76 !== "string") {
                  const err198 = { instancePath: instancePath + "/numbers/length/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err198];
                  } else {
                    vErrors.push(err198);
                  }
                  errors++;
                }
                if ("none" !== data76) {
                  const err199 = { instancePath: instancePath + "/numbers/length/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
                  if (vErrors === null) {
                    vErrors = [err199];
                  } else {
                    vErrors.push(err199);
                  }
                  errors++;
                }
                var _valid5 = _errs197 === errors;
                valid42 = valid42 || _valid5;
                const _errs199 = errors;
                if (!(typeof data76 == "number" && (!(data76 % 1) && !isNaN(data76)) && isFinite(data76))) {
                  const err200 = { instancePath: instancePath + "/numbers/length/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err200];
                  } else {
                    vErrors.push(err200);
                  }
                  errors++;
                }
                if (typeof data76 == "number" && isFinite(data76)) {
                  if (data76 > 12 || isNaN(data76)) {
                    const err201 = { instancePath: instancePath + "/numbers/length/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err201];
                    } else {
                      vErrors.push(err201);
                    }
                    errors++;
                  }
                  if (data76 < 1 || isNaN(data76)) {
                    const err202 = { instancePath: instancePath + "/numbers/length/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err202];
                    } else {
                      vErrors.push(err202);
                    }
                    errors++;
                  }
                }
                var _valid5 = _errs199 === errors;
                valid42 = valid42 || _valid5;
                if (!valid42) {
                  const err203 = { instancePath: instancePath + "/numbers/length/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err203];
                  } else {
                    vErrors.push(err203);
                  }
                  errors++;
                } else {
                  errors = _errs196;
                  if (vErrors !== null) {
                    if (_errs196) {
                      vErrors.length = _errs196;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
            } else {
              const err204 = { instancePath: instancePath + "/numbers/length", schemaPath: "#/properties/numbers/properties/length/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err204];
              } else {
                vErrors.push(err204);
              }
              errors++;
            }
          }
          if (data59["arc-centre"] !== void 0) {
            let data77 = data59["arc-centre"];
            if (data77 && typeof data77 == "object" && !Array.isArray(data77)) {
              for (const key11 in data77) {
                if (!func1.call(schema31.properties.numbers.properties["arc-centre"].properties, key11)) {
                  const err205 = { instancePath: instancePath + "/numbers/arc-centre", schemaPath: "#/properties/numbers/properties/arc-centre/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key11 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err205];
                  } else {
                    vErrors.push(err205);
                  }
                  errors++;
                }
              }
              if (data77.mm !== void 0) {
                let data78 = data77.mm;
                if (!(typeof data78 == "number" && (!(data78 % 1) && !isNaN(data78)) && isFinite(data78))) {
                  const err206 = { instancePath: instancePath + "/numbers/arc-centre/mm", schemaPath: "#/properties/numbers/properties/arc-centre/properties/mm/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err206];
                  } else {
                    vErrors.push(err206);
                  }
                  errors++;
                }
                if (typeof data78 == "number" && isFinite(data78)) {
                  if (data78 > 7 || isNaN(data78)) {
                    const err207 = { instancePath: instancePath + "/numbers/arc-centre/mm", schemaPath: "#/properties/numbers/properties/arc-centre/properties/mm/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                    if (vErrors === null) {
                      vErrors = [err207];
                    } else {
                      vErrors.push(err207);
                    }
                    errors++;
                  }
                  if (data78 < 0 || isNaN(data78)) {
                    const err208 = { instancePath: instancePath + "/numbers/arc-centre/mm", schemaPath: "#/properties/numbers/properties/arc-centre/properties/mm/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err208];
                    } else {
                      vErrors.push(err208);
                    }
                    errors++;
                  }
                }
              }
              if (data77.inch !== void 0) {
                let data79 = data77.inch;
                if (!(typeof data79 == "number" && (!(data79 % 1) && !isNaN(data79)) && isFinite(data79))) {
                  const err209 = { instancePath: instancePath + "/numbers/arc-centre/inch", schemaPath: "#/properties/numbers/properties/arc-centre/properties/inch/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err209];
                  } else {
                    vErrors.push(err209);
                  }
                  errors++;
                }
                if (typeof data79 == "number" && isFinite(data79)) {
                  if (data79 > 6 || isNaN(data79)) {
                    const err210 = { instancePath: instancePath + "/numbers/arc-centre/inch", schemaPath: "#/properties/numbers/properties/arc-centre/properties/inch/maximum", keyword: "maximum", params: { comparison: "<=", limit: 6 }, message: "must be <= 6" };
                    if (vErrors === null) {
                      vErrors = [err210];
                    } else {
                      vErrors.push(err210);
                    }
                    errors++;
                  }
                  if (data79 < 0 || isNaN(data79)) {
                    const err211 = { instancePath: instancePath + "/numbers/arc-centre/inch", schemaPath: "#/properties/numbers/properties/arc-centre/properties/inch/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err211];
                    } else {
                      vErrors.push(err211);
                    }
                    errors++;
                  }
                }
              }
              if (data77.point !== void 0) {
                let data80 = data77.point;
                if (typeof data80 !== "string") {
                  const err212 = { instancePath: instancePath + "/numbers/arc-centre/point", schemaPath: "#/$defs/own-point/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err212];
                  } else {
                    vErrors.push(err212);
                  }
                  errors++;
                }
                if (!(data80 === "always" || data80 === "when-needed" || data80 === "never")) {
                  const err213 = { instancePath: instancePath + "/numbers/arc-centre/point", schemaPath: "#/$defs/own-point/enum", keyword: "enum", params: { allowedValues: schema37.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err213];
                  } else {
                    vErrors.push(err213);
                  }
                  errors++;
                }
              }
              if (data77["trailing-zeros"] !== void 0) {
                let data81 = data77["trailing-zeros"];
                if (typeof data81 !== "string") {
                  const err214 = { instancePath: instancePath + "/numbers/arc-centre/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err214];
                  } else {
                    vErrors.push(err214);
                  }
                  errors++;
                }
                if (!(data81 === "keep" || data81 === "drop" || data81 === "one")) {
                  const err215 = { instancePath: instancePath + "/numbers/arc-centre/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/enum", keyword: "enum", params: { allowedValues: schema38.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err215];
                  } else {
                    vErrors.push(err215);
                  }
                  errors++;
                }
              }
              if (data77["leading-zero"] !== void 0) {
                let data82 = data77["leading-zero"];
                if (typeof data82 !== "string") {
                  const err216 = { instancePath: instancePath + "/numbers/arc-centre/leading-zero", schemaPath: "#/$defs/own-leading-zero/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err216];
                  } else {
                    vErrors.push(err216);
                  }
                  errors++;
                }
                if (!(data82 === "keep" || data82 === "drop")) {
                  const err217 = { instancePath: instancePath + "/numbers/arc-centre/leading-zero", schemaPath: "#/$defs/own-leading-zero/enum", keyword: "enum", params: { allowedValues: schema39.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err217];
                  } else {
                    vErrors.push(err217);
                  }
                  errors++;
                }
              }
              if (data77.plus !== void 0) {
                let data83 = data77.plus;
                if (typeof data83 !== "string") {
                  const err218 = { instancePath: instancePath + "/numbers/arc-centre/plus", schemaPath: "#/$defs/own-plus/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err218];
                  } else {
                    vErrors.push(err218);
                  }
                  errors++;
                }
                if (!(data83 === "yes" || data83 === "no")) {
                  const err219 = { instancePath: instancePath + "/numbers/arc-centre/plus", schemaPath: "#/$defs/own-plus/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err219];
                  } else {
                    vErrors.push(err219);
                  }
                  errors++;
                }
              }
              if (data77["suppressed-zeros"] !== void 0) {
                let data84 = data77["suppressed-zeros"];
                if (typeof data84 !== "string") {
                  const err220 = { instancePath: instancePath + "/numbers/arc-centre/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err220];
                  } else {
                    vErrors.push(err220);
                  }
                  errors++;
                }
                if (!(data84 === "leading" || data84 === "trailing" || data84 === "none")) {
                  const err221 = { instancePath: instancePath + "/numbers/arc-centre/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/enum", keyword: "enum", params: { allowedValues: schema41.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err221];
                  } else {
                    vErrors.push(err221);
                  }
                  errors++;
                }
              }
              if (data77.digits !== void 0) {
                let data85 = data77.digits;
                if (!(typeof data85 == "number" && (!(data85 % 1) && !isNaN(data85)) && isFinite(data85))) {
                  const err222 = { instancePath: instancePath + "/numbers/arc-centre/digits", schemaPath: "#/$defs/own-digits/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err222];
                  } else {
                    vErrors.push(err222);
                  }
                  errors++;
                }
                if (typeof data85 == "number" && isFinite(data85)) {
                  if (data85 > 12 || isNaN(data85)) {
                    const err223 = { instancePath: instancePath + "/numbers/arc-centre/digits", schemaPath: "#/$defs/own-digits/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err223];
                    } else {
                      vErrors.push(err223);
                    }
                    errors++;
                  }
                  if (data85 < 1 || isNaN(data85)) {
                    const err224 = { instancePath: instancePath + "/numbers/arc-centre/digits", schemaPath: "#/$defs/own-digits/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err224];
                    } else {
                      vErrors.push(err224);
                    }
                    errors++;
                  }
                }
              }
              if (data77["whole-digits"] !== void 0) {
                let data86 = data77["whole-digits"];
                const _errs228 = errors;
                let valid51 = false;
                const _errs229 = errors;
                if (typeof data86 !== "string") {
                  const err225 = { instancePath: instancePath + "/numbers/arc-centre/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err225];
                  } else {
                    vErrors.push(err225);
                  }
                  errors++;
                }
                if ("none" !== data86) {
                  const err226 = { instancePath: instancePath + "/numbers/arc-centre/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
                  if (vErrors === null) {
                    vErrors = [err226];
                  } else {
                    vErrors.push(err226);
                  }
                  errors++;
                }
                var _valid6 = _errs229 === errors;
                valid51 = valid51 || _valid6;
                const _errs231 = errors;
                if (!(typeof data86 == "number" && (!(data86 % 1) && !isNaN(data86)) && isFinite(data86))) {
                  const err227 = { instancePath: instancePath + "/numbers/arc-centre/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err227];
                  } else {
                    vErrors.push(err227);
                  }
                  errors++;
                }
                if (typeof data86 == "number" && isFinite(data86)) {
                  if (data86 > 12 || isNaN(data86)) {
                    const err228 = { instancePath: instancePath + "/numbers/arc-centre/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err228];
                    } else {
                      vErrors.push(err228);
                    }
                    errors++;
                  }
                  if (data86 < 1 || isNaN(data86)) {
                    const err229 = { instancePath: instancePath + "/numbers/arc-centre/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err229];
                    } else {
                      vErrors.push(err229);
                    }
                    errors++;
                  }
                }
                var _valid6 = _errs231 === errors;
                valid51 = valid51 || _valid6;
                if (!valid51) {
                  const err230 = { instancePath: instancePath + "/numbers/arc-centre/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err230];
                  } else {
                    vErrors.push(err230);
                  }
                  errors++;
                } else {
                  errors = _errs228;
                  if (vErrors !== null) {
                    if (_errs228) {
                      vErrors.length = _errs228;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
            } else {
              const err231 = { instancePath: instancePath + "/numbers/arc-centre", schemaPath: "#/properties/numbers/properties/arc-centre/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err231];
              } else {
                vErrors.push(err231);
              }
              errors++;
            }
          }
          if (data59.peck !== void 0) {
            let data87 = data59.peck;
            if (data87 && typeof data87 == "object" && !Array.isArray(data87)) {
              for (const key12 in data87) {
                if (!(key12 === "mm" || key12 === "inch" || key12 === "point" || key12 === "trailing-zeros" || key12 === "leading-zero" || key12 === "plus" || key12 === "suppressed-zeros" || key12 === "digits")) {
                  const err232 = { instancePath: instancePath + "/numbers/peck", schemaPath: "#/properties/numbers/properties/peck/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key12 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err232];
                  } else {
                    vErrors.push(err232);
                  }
                  errors++;
                }
              }
              if (data87.mm !== void 0) {
                let data88 = data87.mm;
                if (!(typeof data88 == "number" && (!(data88 % 1) && !isNaN(data88)) && isFinite(data88))) {
                  const err233 = { instancePath: instancePath + "/numbers/peck/mm", schemaPath: "#/properties/numbers/properties/peck/properties/mm/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err233];
                  } else {
                    vErrors.push(err233);
                  }
                  errors++;
                }
                if (typeof data88 == "number" && isFinite(data88)) {
                  if (data88 > 7 || isNaN(data88)) {
                    const err234 = { instancePath: instancePath + "/numbers/peck/mm", schemaPath: "#/properties/numbers/properties/peck/properties/mm/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                    if (vErrors === null) {
                      vErrors = [err234];
                    } else {
                      vErrors.push(err234);
                    }
                    errors++;
                  }
                  if (data88 < 0 || isNaN(data88)) {
                    const err235 = { instancePath: instancePath + "/numbers/peck/mm", schemaPath: "#/properties/numbers/properties/peck/properties/mm/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err235];
                    } else {
                      vErrors.push(err235);
                    }
                    errors++;
                  }
                }
              }
              if (data87.inch !== void 0) {
                let data89 = data87.inch;
                if (!(typeof data89 == "number" && (!(data89 % 1) && !isNaN(data89)) && isFinite(data89))) {
                  const err236 = { instancePath: instancePath + "/numbers/peck/inch", schemaPath: "#/properties/numbers/properties/peck/properties/inch/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err236];
                  } else {
                    vErrors.push(err236);
                  }
                  errors++;
                }
                if (typeof data89 == "number" && isFinite(data89)) {
                  if (data89 > 6 || isNaN(data89)) {
                    const err237 = { instancePath: instancePath + "/numbers/peck/inch", schemaPath: "#/properties/numbers/properties/peck/properties/inch/maximum", keyword: "maximum", params: { comparison: "<=", limit: 6 }, message: "must be <= 6" };
                    if (vErrors === null) {
                      vErrors = [err237];
                    } else {
                      vErrors.push(err237);
                    }
                    errors++;
                  }
                  if (data89 < 0 || isNaN(data89)) {
                    const err238 = { instancePath: instancePath + "/numbers/peck/inch", schemaPath: "#/properties/numbers/properties/peck/properties/inch/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err238];
                    } else {
                      vErrors.push(err238);
                    }
                    errors++;
                  }
                }
              }
              if (data87.point !== void 0) {
                let data90 = data87.point;
                if (typeof data90 !== "string") {
                  const err239 = { instancePath: instancePath + "/numbers/peck/point", schemaPath: "#/$defs/own-point/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err239];
                  } else {
                    vErrors.push(err239);
                  }
                  errors++;
                }
                if (!(data90 === "always" || data90 === "when-needed" || data90 === "never")) {
                  const err240 = { instancePath: instancePath + "/numbers/peck/point", schemaPath: "#/$defs/own-point/enum", keyword: "enum", params: { allowedValues: schema37.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err240];
                  } else {
                    vErrors.push(err240);
                  }
                  errors++;
                }
              }
              if (data87["trailing-zeros"] !== void 0) {
                let data91 = data87["trailing-zeros"];
                if (typeof data91 !== "string") {
                  const err241 = { instancePath: instancePath + "/numbers/peck/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err241];
                  } else {
                    vErrors.push(err241);
                  }
                  errors++;
                }
                if (!(data91 === "keep" || data91 === "drop" || data91 === "one")) {
                  const err242 = { instancePath: instancePath + "/numbers/peck/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/enum", keyword: "enum", params: { allowedValues: schema38.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err242];
                  } else {
                    vErrors.push(err242);
                  }
                  errors++;
                }
              }
              if (data87["leading-zero"] !== void 0) {
                let data92 = data87["leading-zero"];
                if (typeof data92 !== "string") {
                  const err243 = { instancePath: instancePath + "/numbers/peck/leading-zero", schemaPath: "#/$defs/own-leading-zero/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err243];
                  } else {
                    vErrors.push(err243);
                  }
                  errors++;
                }
                if (!(data92 === "keep" || data92 === "drop")) {
                  const err244 = { instancePath: instancePath + "/numbers/peck/leading-zero", schemaPath: "#/$defs/own-leading-zero/enum", keyword: "enum", params: { allowedValues: schema39.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err244];
                  } else {
                    vErrors.push(err244);
                  }
                  errors++;
                }
              }
              if (data87.plus !== void 0) {
                let data93 = data87.plus;
                if (typeof data93 !== "string") {
                  const err245 = { instancePath: instancePath + "/numbers/peck/plus", schemaPath: "#/$defs/own-plus/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err245];
                  } else {
                    vErrors.push(err245);
                  }
                  errors++;
                }
                if (!(data93 === "yes" || data93 === "no")) {
                  const err246 = { instancePath: instancePath + "/numbers/peck/plus", schemaPath: "#/$defs/own-plus/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err246];
                  } else {
                    vErrors.push(err246);
                  }
                  errors++;
                }
              }
              if (data87["suppressed-zeros"] !== void 0) {
                let data94 = data87["suppressed-zeros"];
                if (typeof data94 !== "string") {
                  const err247 = { instancePath: instancePath + "/numbers/peck/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err247];
                  } else {
                    vErrors.push(err247);
                  }
                  errors++;
                }
                if (!(data94 === "leading" || data94 === "trailing" || data94 === "none")) {
                  const err248 = { instancePath: instancePath + "/numbers/peck/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/enum", keyword: "enum", params: { allowedValues: schema41.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err248];
                  } else {
                    vErrors.push(err248);
                  }
                  errors++;
                }
              }
              if (data87.digits !== void 0) {
                let data95 = data87.digits;
                if (!(typeof data95 == "number" && (!(data95 % 1) && !isNaN(data95)) && isFinite(data95))) {
                  const err249 = { instancePath: instancePath + "/numbers/peck/digits", schemaPath: "#/$defs/own-digits/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err249];
                  } else {
                    vErrors.push(err249);
                  }
                  errors++;
                }
                if (typeof data95 == "number" && isFinite(data95)) {
                  if (data95 > 12 || isNaN(data95)) {
                    const err250 = { instancePath: instancePath + "/numbers/peck/digits", schemaPath: "#/$defs/own-digits/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err250];
                    } else {
                      vErrors.push(err250);
                    }
                    errors++;
                  }
                  if (data95 < 1 || isNaN(data95)) {
                    const err251 = { instancePath: instancePath + "/numbers/peck/digits", schemaPath: "#/$defs/own-digits/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err251];
                    } else {
                      vErrors.push(err251);
                    }
                    errors++;
                  }
                }
              }
            } else {
              const err252 = { instancePath: instancePath + "/numbers/peck", schemaPath: "#/properties/numbers/properties/peck/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err252];
              } else {
                vErrors.push(err252);
              }
              errors++;
            }
          }
          if (data59.angle !== void 0) {
            let data96 = data59.angle;
            const _errs259 = errors;
            let valid59 = false;
            const _errs260 = errors;
            if (!(typeof data96 == "number" && (!(data96 % 1) && !isNaN(data96)) && isFinite(data96))) {
              const err253 = { instancePath: instancePath + "/numbers/angle", schemaPath: "#/properties/numbers/properties/angle/anyOf/0/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
              if (vErrors === null) {
                vErrors = [err253];
              } else {
                vErrors.push(err253);
              }
              errors++;
            }
            if (typeof data96 == "number" && isFinite(data96)) {
              if (data96 > 7 || isNaN(data96)) {
                const err254 = { instancePath: instancePath + "/numbers/angle", schemaPath: "#/properties/numbers/properties/angle/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                if (vErrors === null) {
                  vErrors = [err254];
                } else {
                  vErrors.push(err254);
                }
                errors++;
              }
              if (data96 < 0 || isNaN(data96)) {
                const err255 = { instancePath: instancePath + "/numbers/angle", schemaPath: "#/properties/numbers/properties/angle/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                if (vErrors === null) {
                  vErrors = [err255];
                } else {
                  vErrors.push(err255);
                }
                errors++;
              }
            }
            var _valid7 = _errs260 === errors;
            valid59 = valid59 || _valid7;
            const _errs262 = errors;
            if (data96 && typeof data96 == "object" && !Array.isArray(data96)) {
              for (const key13 in data96) {
                if (!(key13 === "decimals" || key13 === "point" || key13 === "trailing-zeros" || key13 === "leading-zero" || key13 === "plus" || key13 === "suppressed-zeros" || key13 === "digits" || key13 === "whole-digits")) {
                  const err256 = { instancePath: instancePath + "/numbers/angle", schemaPath: "#/properties/numbers/properties/angle/anyOf/1/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key13 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err256];
                  } else {
                    vErrors.push(err256);
                  }
                  errors++;
                }
              }
              if (data96.decimals !== void 0) {
                let data97 = data96.decimals;
                if (!(typeof data97 == "number" && (!(data97 % 1) && !isNaN(data97)) && isFinite(data97))) {
                  const err257 = { instancePath: instancePath + "/numbers/angle/decimals", schemaPath: "#/properties/numbers/properties/angle/anyOf/1/properties/decimals/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err257];
                  } else {
                    vErrors.push(err257);
                  }
                  errors++;
                }
                if (typeof data97 == "number" && isFinite(data97)) {
                  if (data97 > 7 || isNaN(data97)) {
                    const err258 = { instancePath: instancePath + "/numbers/angle/decimals", schemaPath: "#/properties/numbers/properties/angle/anyOf/1/properties/decimals/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                    if (vErrors === null) {
                      vErrors = [err258];
                    } else {
                      vErrors.push(err258);
                    }
                    errors++;
                  }
                  if (data97 < 0 || isNaN(data97)) {
                    const err259 = { instancePath: instancePath + "/numbers/angle/decimals", schemaPath: "#/properties/numbers/properties/angle/anyOf/1/properties/decimals/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err259];
                    } else {
                      vErrors.push(err259);
                    }
                    errors++;
                  }
                }
              }
              if (data96.point !== void 0) {
                let data98 = data96.point;
                if (typeof data98 !== "string") {
                  const err260 = { instancePath: instancePath + "/numbers/angle/point", schemaPath: "#/$defs/own-point/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err260];
                  } else {
                    vErrors.push(err260);
                  }
                  errors++;
                }
                if (!(data98 === "always" || data98 === "when-needed" || data98 === "never")) {
                  const err261 = { instancePath: instancePath + "/numbers/angle/point", schemaPath: "#/$defs/own-point/enum", keyword: "enum", params: { allowedValues: schema37.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err261];
                  } else {
                    vErrors.push(err261);
                  }
                  errors++;
                }
              }
              if (data96["trailing-zeros"] !== void 0) {
                let data99 = data96["trailing-zeros"];
                if (typeof data99 !== "string") {
                  const err262 = { instancePath: instancePath + "/numbers/angle/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err262];
                  } else {
                    vErrors.push(err262);
                  }
                  errors++;
                }
                if (!(data99 === "keep" || data99 === "drop" || data99 === "one")) {
                  const err263 = { instancePath: instancePath + "/numbers/angle/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/enum", keyword: "enum", params: { allowedValues: schema38.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err263];
                  } else {
                    vErrors.push(err263);
                  }
                  errors++;
                }
              }
              if (data96["leading-zero"] !== void 0) {
                let data100 = data96["leading-zero"];
                if (typeof data100 !== "string") {
                  const err264 = { instancePath: instancePath + "/numbers/angle/leading-zero", schemaPath: "#/$defs/own-leading-zero/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err264];
                  } else {
                    vErrors.push(err264);
                  }
                  errors++;
                }
                if (!(data100 === "keep" || data100 === "drop")) {
                  const err265 = { instancePath: instancePath + "/numbers/angle/leading-zero", schemaPath: "#/$defs/own-leading-zero/enum", keyword: "enum", params: { allowedValues: schema39.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err265];
                  } else {
                    vErrors.push(err265);
                  }
                  errors++;
                }
              }
              if (data96.plus !== void 0) {
                let data101 = data96.plus;
                if (typeof data101 !== "string") {
                  const err266 = { instancePath: instancePath + "/numbers/angle/plus", schemaPath: "#/$defs/own-plus/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err266];
                  } else {
                    vErrors.push(err266);
                  }
                  errors++;
                }
                if (!(data101 === "yes" || data101 === "no")) {
                  const err267 = { instancePath: instancePath + "/numbers/angle/plus", schemaPath: "#/$defs/own-plus/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err267];
                  } else {
                    vErrors.push(err267);
                  }
                  errors++;
                }
              }
              if (data96["suppressed-zeros"] !== void 0) {
                let data102 = data96["suppressed-zeros"];
                if (typeof data102 !== "string") {
                  const err268 = { instancePath: instancePath + "/numbers/angle/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err268];
                  } else {
                    vErrors.push(err268);
                  }
                  errors++;
                }
                if (!(data102 === "leading" || data102 === "trailing" || data102 === "none")) {
                  const err269 = { instancePath: instancePath + "/numbers/angle/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/enum", keyword: "enum", params: { allowedValues: schema41.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err269];
                  } else {
                    vErrors.push(err269);
                  }
                  errors++;
                }
              }
              if (data96.digits !== void 0) {
                let data103 = data96.digits;
                if (!(typeof data103 == "number" && (!(data103 % 1) && !isNaN(data103)) && isFinite(data103))) {
                  const err270 = { instancePath: instancePath + "/numbers/angle/digits", schemaPath: "#/$defs/own-digits/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err270];
                  } else {
                    vErrors.push(err270);
                  }
                  errors++;
                }
                if (typeof data103 == "number" && isFinite(data103)) {
                  if (data103 > 12 || isNaN(data103)) {
                    const err271 = { instancePath: instancePath + "/numbers/angle/digits", schemaPath: "#/$defs/own-digits/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err271];
                    } else {
                      vErrors.push(err271);
                    }
                    errors++;
                  }
                  if (data103 < 1 || isNaN(data103)) {
                    const err272 = { instancePath: instancePath + "/numbers/angle/digits", schemaPath: "#/$defs/own-digits/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err272];
                    } else {
                      vErrors.push(err272);
                    }
                    errors++;
                  }
                }
              }
              if (data96["whole-digits"] !== void 0) {
                let data104 = data96["whole-digits"];
                const _errs287 = errors;
                let valid68 = false;
                const _errs288 = errors;
                if (typeof data104 !== "string") {
                  const err273 = { instancePath: instancePath + "/numbers/angle/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err273];
                  } else {
                    vErrors.push(err273);
                  }
                  errors++;
                }
                if ("none" !== data104) {
                  const err274 = { instancePath: instancePath + "/numbers/angle/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
                  if (vErrors === null) {
                    vErrors = [err274];
                  } else {
                    vErrors.push(err274);
                  }
                  errors++;
                }
                var _valid8 = _errs288 === errors;
                valid68 = valid68 || _valid8;
                const _errs290 = errors;
                if (!(typeof data104 == "number" && (!(data104 % 1) && !isNaN(data104)) && isFinite(data104))) {
                  const err275 = { instancePath: instancePath + "/numbers/angle/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err275];
                  } else {
                    vErrors.push(err275);
                  }
                  errors++;
                }
                if (typeof data104 == "number" && isFinite(data104)) {
                  if (data104 > 12 || isNaN(data104)) {
                    const err276 = { instancePath: instancePath + "/numbers/angle/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err276];
                    } else {
                      vErrors.push(err276);
                    }
                    errors++;
                  }
                  if (data104 < 1 || isNaN(data104)) {
                    const err277 = { instancePath: instancePath + "/numbers/angle/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err277];
                    } else {
                      vErrors.push(err277);
                    }
                    errors++;
                  }
                }
                var _valid8 = _errs290 === errors;
                valid68 = valid68 || _valid8;
                if (!valid68) {
                  const err278 = { instancePath: instancePath + "/numbers/angle/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err278];
                  } else {
                    vErrors.push(err278);
                  }
                  errors++;
                } else {
                  errors = _errs287;
                  if (vErrors !== null) {
                    if (_errs287) {
                      vErrors.length = _errs287;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
            } else {
              const err279 = { instancePath: instancePath + "/numbers/angle", schemaPath: "#/properties/numbers/properties/angle/anyOf/1/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err279];
              } else {
                vErrors.push(err279);
              }
              errors++;
            }
            var _valid7 = _errs262 === errors;
            valid59 = valid59 || _valid7;
            if (!valid59) {
              const err280 = { instancePath: instancePath + "/numbers/angle", schemaPath: "#/properties/numbers/properties/angle/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err280];
              } else {
                vErrors.push(err280);
              }
              errors++;
            } else {
              errors = _errs259;
              if (vErrors !== null) {
                if (_errs259) {
                  vErrors.length = _errs259;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data59["feed-per-minute"] !== void 0) {
            let data105 = data59["feed-per-minute"];
            if (data105 && typeof data105 == "object" && !Array.isArray(data105)) {
              for (const key14 in data105) {
                if (!func1.call(schema31.properties.numbers.properties["feed-per-minute"].properties, key14)) {
                  const err281 = { instancePath: instancePath + "/numbers/feed-per-minute", schemaPath: "#/properties/numbers/properties/feed-per-minute/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key14 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err281];
                  } else {
                    vErrors.push(err281);
                  }
                  errors++;
                }
              }
              if (data105.mm !== void 0) {
                let data106 = data105.mm;
                if (!(typeof data106 == "number" && (!(data106 % 1) && !isNaN(data106)) && isFinite(data106))) {
                  const err282 = { instancePath: instancePath + "/numbers/feed-per-minute/mm", schemaPath: "#/properties/numbers/properties/feed-per-minute/properties/mm/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err282];
                  } else {
                    vErrors.push(err282);
                  }
                  errors++;
                }
                if (typeof data106 == "number" && isFinite(data106)) {
                  if (data106 > 7 || isNaN(data106)) {
                    const err283 = { instancePath: instancePath + "/numbers/feed-per-minute/mm", schemaPath: "#/properties/numbers/properties/feed-per-minute/properties/mm/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                    if (vErrors === null) {
                      vErrors = [err283];
                    } else {
                      vErrors.push(err283);
                    }
                    errors++;
                  }
                  if (data106 < 0 || isNaN(data106)) {
                    const err284 = { instancePath: instancePath + "/numbers/feed-per-minute/mm", schemaPath: "#/properties/numbers/properties/feed-per-minute/properties/mm/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err284];
                    } else {
                      vErrors.push(err284);
                    }
                    errors++;
                  }
                }
              }
              if (data105.inch !== void 0) {
                let data107 = data105.inch;
                if (!(typeof data107 == "number" && (!(data107 % 1) && !isNaN(data107)) && isFinite(data107))) {
                  const err285 = { instancePath: instancePath + "/numbers/feed-per-minute/inch", schemaPath: "#/properties/numbers/properties/feed-per-minute/properties/inch/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err285];
                  } else {
                    vErrors.push(err285);
                  }
                  errors++;
                }
                if (typeof data107 == "number" && isFinite(data107)) {
                  if (data107 > 6 || isNaN(data107)) {
                    const err286 = { instancePath: instancePath + "/numbers/feed-per-minute/inch", schemaPath: "#/properties/numbers/properties/feed-per-minute/properties/inch/maximum", keyword: "maximum", params: { comparison: "<=", limit: 6 }, message: "must be <= 6" };
                    if (vErrors === null) {
                      vErrors = [err286];
                    } else {
                      vErrors.push(err286);
                    }
                    errors++;
                  }
                  if (data107 < 0 || isNaN(data107)) {
                    const err287 = { instancePath: instancePath + "/numbers/feed-per-minute/inch", schemaPath: "#/properties/numbers/properties/feed-per-minute/properties/inch/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err287];
                    } else {
                      vErrors.push(err287);
                    }
                    errors++;
                  }
                }
              }
              if (data105.point !== void 0) {
                let data108 = data105.point;
                if (typeof data108 !== "string") {
                  const err288 = { instancePath: instancePath + "/numbers/feed-per-minute/point", schemaPath: "#/$defs/own-point/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err288];
                  } else {
                    vErrors.push(err288);
                  }
                  errors++;
                }
                if (!(data108 === "always" || data108 === "when-needed" || data108 === "never")) {
                  const err289 = { instancePath: instancePath + "/numbers/feed-per-minute/point", schemaPath: "#/$defs/own-point/enum", keyword: "enum", params: { allowedValues: schema37.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err289];
                  } else {
                    vErrors.push(err289);
                  }
                  errors++;
                }
              }
              if (data105["trailing-zeros"] !== void 0) {
                let data109 = data105["trailing-zeros"];
                if (typeof data109 !== "string") {
                  const err290 = { instancePath: instancePath + "/numbers/feed-per-minute/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err290];
                  } else {
                    vErrors.push(err290);
                  }
                  errors++;
                }
                if (!(data109 === "keep" || data109 === "drop" || data109 === "one")) {
                  const err291 = { instancePath: instancePath + "/numbers/feed-per-minute/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/enum", keyword: "enum", params: { allowedValues: schema38.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err291];
                  } else {
                    vErrors.push(err291);
                  }
                  errors++;
                }
              }
              if (data105["leading-zero"] !== void 0) {
                let data110 = data105["leading-zero"];
                if (typeof data110 !== "string") {
                  const err292 = { instancePath: instancePath + "/numbers/feed-per-minute/leading-zero", schemaPath: "#/$defs/own-leading-zero/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err292];
                  } else {
                    vErrors.push(err292);
                  }
                  errors++;
                }
                if (!(data110 === "keep" || data110 === "drop")) {
                  const err293 = { instancePath: instancePath + "/numbers/feed-per-minute/leading-zero", schemaPath: "#/$defs/own-leading-zero/enum", keyword: "enum", params: { allowedValues: schema39.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err293];
                  } else {
                    vErrors.push(err293);
                  }
                  errors++;
                }
              }
              if (data105.plus !== void 0) {
                let data111 = data105.plus;
                if (typeof data111 !== "string") {
                  const err294 = { instancePath: instancePath + "/numbers/feed-per-minute/plus", schemaPath: "#/$defs/own-plus/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err294];
                  } else {
                    vErrors.push(err294);
                  }
                  errors++;
                }
                if (!(data111 === "yes" || data111 === "no")) {
                  const err295 = { instancePath: instancePath + "/numbers/feed-per-minute/plus", schemaPath: "#/$defs/own-plus/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err295];
                  } else {
                    vErrors.push(err295);
                  }
                  errors++;
                }
              }
              if (data105["suppressed-zeros"] !== void 0) {
                let data112 = data105["suppressed-zeros"];
                if (typeof data112 !== "string") {
                  const err296 = { instancePath: instancePath + "/numbers/feed-per-minute/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err296];
                  } else {
                    vErrors.push(err296);
                  }
                  errors++;
                }
                if (!(data112 === "leading" || data112 === "trailing" || data112 === "none")) {
                  const err297 = { instancePath: instancePath + "/numbers/feed-per-minute/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/enum", keyword: "enum", params: { allowedValues: schema41.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err297];
                  } else {
                    vErrors.push(err297);
                  }
                  errors++;
                }
              }
              if (data105.digits !== void 0) {
                let data113 = data105.digits;
                if (!(typeof data113 == "number" && (!(data113 % 1) && !isNaN(data113)) && isFinite(data113))) {
                  const err298 = { instancePath: instancePath + "/numbers/feed-per-minute/digits", schemaPath: "#/$defs/own-digits/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err298];
                  } else {
                    vErrors.push(err298);
                  }
                  errors++;
                }
                if (typeof data113 == "number" && isFinite(data113)) {
                  if (data113 > 12 || isNaN(data113)) {
                    const err299 = { instancePath: instancePath + "/numbers/feed-per-minute/digits", schemaPath: "#/$defs/own-digits/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err299];
                    } else {
                      vErrors.push(err299);
                    }
                    errors++;
                  }
                  if (data113 < 1 || isNaN(data113)) {
                    const err300 = { instancePath: instancePath + "/numbers/feed-per-minute/digits", schemaPath: "#/$defs/own-digits/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err300];
                    } else {
                      vErrors.push(err300);
                    }
                    errors++;
                  }
                }
              }
              if (data105["whole-digits"] !== void 0) {
                let data114 = data105["whole-digits"];
                const _errs319 = errors;
                let valid77 = false;
                const _errs320 = errors;
                if (typeof data114 !== "string") {
                  const err301 = { instancePath: instancePath + "/numbers/feed-per-minute/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err301];
                  } else {
                    vErrors.push(err301);
                  }
                  errors++;
                }
                if ("none" !== data114) {
                  const err302 = { instancePath: instancePath + "/numbers/feed-per-minute/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
                  if (vErrors === null) {
                    vErrors = [err302];
                  } else {
                    vErrors.push(err302);
                  }
                  errors++;
                }
                var _valid9 = _errs320 === errors;
                valid77 = valid77 || _valid9;
                const _errs322 = errors;
                if (!(typeof data114 == "number" && (!(data114 % 1) && !isNaN(data114)) && isFinite(data114))) {
                  const err303 = { instancePath: instancePath + "/numbers/feed-per-minute/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err303];
                  } else {
                    vErrors.push(err303);
                  }
                  errors++;
                }
                if (typeof data114 == "number" && isFinite(data114)) {
                  if (data114 > 12 || isNaN(data114)) {
                    const err304 = { instancePath: instancePath + "/numbers/feed-per-minute/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err304];
                    } else {
                      vErrors.push(err304);
                    }
                    errors++;
                  }
                  if (data114 < 1 || isNaN(data114)) {
                    const err305 = { instancePath: instancePath + "/numbers/feed-per-minute/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err305];
                    } else {
                      vErrors.push(err305);
                    }
                    errors++;
                  }
                }
                var _valid9 = _errs322 === errors;
                valid77 = valid77 || _valid9;
                if (!valid77) {
                  const err306 = { instancePath: instancePath + "/numbers/feed-per-minute/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err306];
                  } else {
                    vErrors.push(err306);
                  }
                  errors++;
                } else {
                  errors = _errs319;
                  if (vErrors !== null) {
                    if (_errs319) {
                      vErrors.length = _errs319;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
            } else {
              const err307 = { instancePath: instancePath + "/numbers/feed-per-minute", schemaPath: "#/properties/numbers/properties/feed-per-minute/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err307];
              } else {
                vErrors.push(err307);
              }
              errors++;
            }
          }
          if (data59["feed-per-revolution"] !== void 0) {
            let data115 = data59["feed-per-revolution"];
            if (data115 && typeof data115 == "object" && !Array.isArray(data115)) {
              for (const key15 in data115) {
                if (!func1.call(schema31.properties.numbers.properties["feed-per-revolution"].properties, key15)) {
                  const err308 = { instancePath: instancePath + "/numbers/feed-per-revolution", schemaPath: "#/properties/numbers/properties/feed-per-revolution/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key15 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err308];
                  } else {
                    vErrors.push(err308);
                  }
                  errors++;
                }
              }
              if (data115.mm !== void 0) {
                let data116 = data115.mm;
                if (!(typeof data116 == "number" && (!(data116 % 1) && !isNaN(data116)) && isFinite(data116))) {
                  const err309 = { instancePath: instancePath + "/numbers/feed-per-revolution/mm", schemaPath: "#/properties/numbers/properties/feed-per-revolution/properties/mm/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err309];
                  } else {
                    vErrors.push(err309);
                  }
                  errors++;
                }
                if (typeof data116 == "number" && isFinite(data116)) {
                  if (data116 > 7 || isNaN(data116)) {
                    const err310 = { instancePath: instancePath + "/numbers/feed-per-revolution/mm", schemaPath: "#/properties/numbers/properties/feed-per-revolution/properties/mm/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                    if (vErrors === null) {
                      vErrors = [err310];
                    } else {
                      vErrors.push(err310);
                    }
                    errors++;
                  }
                  if (data116 < 0 || isNaN(data116)) {
                    const err311 = { instancePath: instancePath + "/numbers/feed-per-revolution/mm", schemaPath: "#/properties/numbers/properties/feed-per-revolution/properties/mm/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err311];
                    } else {
                      vErrors.push(err311);
                    }
                    errors++;
                  }
                }
              }
              if (data115.inch !== void 0) {
                let data117 = data115.inch;
                if (!(typeof data117 == "number" && (!(data117 % 1) && !isNaN(data117)) && isFinite(data117))) {
                  const err312 = { instancePath: instancePath + "/numbers/feed-per-revolution/inch", schemaPath: "#/properties/numbers/properties/feed-per-revolution/properties/inch/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err312];
                  } else {
                    vErrors.push(err312);
                  }
                  errors++;
                }
                if (typeof data117 == "number" && isFinite(data117)) {
                  if (data117 > 6 || isNaN(data117)) {
                    const err313 = { instancePath: instancePath + "/numbers/feed-per-revolution/inch", schemaPath: "#/properties/numbers/properties/feed-per-revolution/properties/inch/maximum", keyword: "maximum", params: { comparison: "<=", limit: 6 }, message: "must be <= 6" };
                    if (vErrors === null) {
                      vErrors = [err313];
                    } else {
                      vErrors.push(err313);
                    }
                    errors++;
                  }
                  if (data117 < 0 || isNaN(data117)) {
                    const err314 = { instancePath: instancePath + "/numbers/feed-per-revolution/inch", schemaPath: "#/properties/numbers/properties/feed-per-revolution/properties/inch/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err314];
                    } else {
                      vErrors.push(err314);
                    }
                    errors++;
                  }
                }
              }
              if (data115.point !== void 0) {
                let data118 = data115.point;
                if (typeof data118 !== "string") {
                  const err315 = { instancePath: instancePath + "/numbers/feed-per-revolution/point", schemaPath: "#/$defs/own-point/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err315];
                  } else {
                    vErrors.push(err315);
                  }
                  errors++;
                }
                if (!(data118 === "always" || data118 === "when-needed" || data118 === "never")) {
                  const err316 = { instancePath: instancePath + "/numbers/feed-per-revolution/point", schemaPath: "#/$defs/own-point/enum", keyword: "enum", params: { allowedValues: schema37.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err316];
                  } else {
                    vErrors.push(err316);
                  }
                  errors++;
                }
              }
              if (data115["trailing-zeros"] !== void 0) {
                let data119 = data115["trailing-zeros"];
                if (typeof data119 !== "string") {
                  const err317 = { instancePath: instancePath + "/numbers/feed-per-revolution/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err317];
                  } else {
                    vErrors.push(err317);
                  }
                  errors++;
                }
                if (!(data119 === "keep" || data119 === "drop" || data119 === "one")) {
                  const err318 = { instancePath: instancePath + "/numbers/feed-per-revolution/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/enum", keyword: "enum", params: { allowedValues: schema38.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err318];
                  } else {
                    vErrors.push(err318);
                  }
                  errors++;
                }
              }
              if (data115["leading-zero"] !== void 0) {
                let data120 = data115["leading-zero"];
                if (typeof data120 !== "string") {
                  const err319 = { instancePath: instancePath + "/numbers/feed-per-revolution/leading-zero", schemaPath: "#/$defs/own-leading-zero/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err319];
                  } else {
                    vErrors.push(err319);
                  }
                  errors++;
                }
                if (!(data120 === "keep" || data120 === "drop")) {
                  const err320 = { instancePath: instancePath + "/numbers/feed-per-revolution/leading-zero", schemaPath: "#/$defs/own-leading-zero/enum", keyword: "enum", params: { allowedValues: schema39.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err320];
                  } else {
                    vErrors.push(err320);
                  }
                  errors++;
                }
              }
              if (data115.plus !== void 0) {
                let data121 = data115.plus;
                if (typeof data121 !== "string") {
                  const err321 = { instancePath: instancePath + "/numbers/feed-per-revolution/plus", schemaPath: "#/$defs/own-plus/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err321];
                  } else {
                    vErrors.push(err321);
                  }
                  errors++;
                }
                if (!(data121 === "yes" || data121 === "no")) {
                  const err322 = { instancePath: instancePath + "/numbers/feed-per-revolution/plus", schemaPath: "#/$defs/own-plus/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err322];
                  } else {
                    vErrors.push(err322);
                  }
                  errors++;
                }
              }
              if (data115["suppressed-zeros"] !== void 0) {
                let data122 = data115["suppressed-zeros"];
                if (typeof data122 !== "string") {
                  const err323 = { instancePath: instancePath + "/numbers/feed-per-revolution/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err323];
                  } else {
                    vErrors.push(err323);
                  }
                  errors++;
                }
                if (!(data122 === "leading" || data122 === "trailing" || data122 === "none")) {
                  const err324 = { instancePath: instancePath + "/numbers/feed-per-revolution/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/enum", keyword: "enum", params: { allowedValues: schema41.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err324];
                  } else {
                    vErrors.push(err324);
                  }
                  errors++;
                }
              }
              if (data115.digits !== void 0) {
                let data123 = data115.digits;
                if (!(typeof data123 == "number" && (!(data123 % 1) && !isNaN(data123)) && isFinite(data123))) {
                  const err325 = { instancePath: instancePath + "/numbers/feed-per-revolution/digits", schemaPath: "#/$defs/own-digits/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err325];
                  } else {
                    vErrors.push(err325);
                  }
                  errors++;
                }
                if (typeof data123 == "number" && isFinite(data123)) {
                  if (data123 > 12 || isNaN(data123)) {
                    const err326 = { instancePath: instancePath + "/numbers/feed-per-revolution/digits", schemaPath: "#/$defs/own-digits/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err326];
                    } else {
                      vErrors.push(err326);
                    }
                    errors++;
                  }
                  if (data123 < 1 || isNaN(data123)) {
                    const err327 = { instancePath: instancePath + "/numbers/feed-per-revolution/digits", schemaPath: "#/$defs/own-digits/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err327];
                    } else {
                      vErrors.push(err327);
                    }
                    errors++;
                  }
                }
              }
              if (data115["whole-digits"] !== void 0) {
                let data124 = data115["whole-digits"];
                const _errs351 = errors;
                let valid86 = false;
                const _errs352 = errors;
                if (typeof data124 !== "string") {
                  const err328 = { instancePath: instancePath + "/numbers/feed-per-revolution/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err328];
                  } else {
                    vErrors.push(err328);
                  }
                  errors++;
                }
                if ("none" !== data124) {
                  const err329 = { instancePath: instancePath + "/numbers/feed-per-revolution/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
                  if (vErrors === null) {
                    vErrors = [err329];
                  } else {
                    vErrors.push(err329);
                  }
                  errors++;
                }
                var _valid10 = _errs352 === errors;
                valid86 = valid86 || _valid10;
                const _errs354 = errors;
                if (!(typeof data124 == "number" && (!(data124 % 1) && !isNaN(data124)) && isFinite(data124))) {
                  const err330 = { instancePath: instancePath + "/numbers/feed-per-revolution/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err330];
                  } else {
                    vErrors.push(err330);
                  }
                  errors++;
                }
                if (typeof data124 == "number" && isFinite(data124)) {
                  if (data124 > 12 || isNaN(data124)) {
                    const err331 = { instancePath: instancePath + "/numbers/feed-per-revolution/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err331];
                    } else {
                      vErrors.push(err331);
                    }
                    errors++;
                  }
                  if (data124 < 1 || isNaN(data124)) {
                    const err332 = { instancePath: instancePath + "/numbers/feed-per-revolution/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err332];
                    } else {
                      vErrors.push(err332);
                    }
                    errors++;
                  }
                }
                var _valid10 = _errs354 === errors;
                valid86 = valid86 || _valid10;
                if (!valid86) {
                  const err333 = { instancePath: instancePath + "/numbers/feed-per-revolution/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err333];
                  } else {
                    vErrors.push(err333);
                  }
                  errors++;
                } else {
                  errors = _errs351;
                  if (vErrors !== null) {
                    if (_errs351) {
                      vErrors.length = _errs351;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
            } else {
              const err334 = { instancePath: instancePath + "/numbers/feed-per-revolution", schemaPath: "#/properties/numbers/properties/feed-per-revolution/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err334];
              } else {
                vErrors.push(err334);
              }
              errors++;
            }
          }
          if (data59["inverse-time"] !== void 0) {
            let data125 = data59["inverse-time"];
            const _errs357 = errors;
            let valid87 = false;
            const _errs358 = errors;
            if (!(typeof data125 == "number" && (!(data125 % 1) && !isNaN(data125)) && isFinite(data125))) {
              const err335 = { instancePath: instancePath + "/numbers/inverse-time", schemaPath: "#/properties/numbers/properties/inverse-time/anyOf/0/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
              if (vErrors === null) {
                vErrors = [err335];
              } else {
                vErrors.push(err335);
              }
              errors++;
            }
            if (typeof data125 == "number" && isFinite(data125)) {
              if (data125 > 7 || isNaN(data125)) {
                const err336 = { instancePath: instancePath + "/numbers/inverse-time", schemaPath: "#/properties/numbers/properties/inverse-time/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                if (vErrors === null) {
                  vErrors = [err336];
                } else {
                  vErrors.push(err336);
                }
                errors++;
              }
              if (data125 < 0 || isNaN(data125)) {
                const err337 = { instancePath: instancePath + "/numbers/inverse-time", schemaPath: "#/properties/numbers/properties/inverse-time/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                if (vErrors === null) {
                  vErrors = [err337];
                } else {
                  vErrors.push(err337);
                }
                errors++;
              }
            }
            var _valid11 = _errs358 === errors;
            valid87 = valid87 || _valid11;
            const _errs360 = errors;
            if (data125 && typeof data125 == "object" && !Array.isArray(data125)) {
              for (const key16 in data125) {
                if (!(key16 === "decimals" || key16 === "point" || key16 === "trailing-zeros" || key16 === "leading-zero" || key16 === "plus" || key16 === "suppressed-zeros" || key16 === "digits" || key16 === "whole-digits")) {
                  const err338 = { instancePath: instancePath + "/numbers/inverse-time", schemaPath: "#/properties/numbers/properties/inverse-time/anyOf/1/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key16 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err338];
                  } else {
                    vErrors.push(err338);
                  }
                  errors++;
                }
              }
              if (data125.decimals !== void 0) {
                let data126 = data125.decimals;
                if (!(typeof data126 == "number" && (!(data126 % 1) && !isNaN(data126)) && isFinite(data126))) {
                  const err339 = { instancePath: instancePath + "/numbers/inverse-time/decimals", schemaPath: "#/properties/numbers/properties/inverse-time/anyOf/1/properties/decimals/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err339];
                  } else {
                    vErrors.push(err339);
                  }
                  errors++;
                }
                if (typeof data126 == "number" && isFinite(data126)) {
                  if (data126 > 7 || isNaN(data126)) {
                    const err340 = { instancePath: instancePath + "/numbers/inverse-time/decimals", schemaPath: "#/properties/numbers/properties/inverse-time/anyOf/1/properties/decimals/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                    if (vErrors === null) {
                      vErrors = [err340];
                    } else {
                      vErrors.push(err340);
                    }
                    errors++;
                  }
                  if (data126 < 0 || isNaN(data126)) {
                    const err341 = { instancePath: instancePath + "/numbers/inverse-time/decimals", schemaPath: "#/properties/numbers/properties/inverse-time/anyOf/1/properties/decimals/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err341];
                    } else {
                      vErrors.push(err341);
                    }
                    errors++;
                  }
                }
              }
              if (data125.point !== void 0) {
                let data127 = data125.point;
                if (typeof data127 !== "string") {
                  const err342 = { instancePath: instancePath + "/numbers/inverse-time/point", schemaPath: "#/$defs/own-point/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err342];
                  } else {
                    vErrors.push(err342);
                  }
                  errors++;
                }
                if (!(data127 === "always" || data127 === "when-needed" || data127 === "never")) {
                  const err343 = { instancePath: instancePath + "/numbers/inverse-time/point", schemaPath: "#/$defs/own-point/enum", keyword: "enum", params: { allowedValues: schema37.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err343];
                  } else {
                    vErrors.push(err343);
                  }
                  errors++;
                }
              }
              if (data125["trailing-zeros"] !== void 0) {
                let data128 = data125["trailing-zeros"];
                if (typeof data128 !== "string") {
                  const err344 = { instancePath: instancePath + "/numbers/inverse-time/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err344];
                  } else {
                    vErrors.push(err344);
                  }
                  errors++;
                }
                if (!(data128 === "keep" || data128 === "drop" || data128 === "one")) {
                  const err345 = { instancePath: instancePath + "/numbers/inverse-time/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/enum", keyword: "enum", params: { allowedValues: schema38.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err345];
                  } else {
                    vErrors.push(err345);
                  }
                  errors++;
                }
              }
              if (data125["leading-zero"] !== void 0) {
                let data129 = data125["leading-zero"];
                if (typeof data129 !== "string") {
                  const err346 = { instancePath: instancePath + "/numbers/inverse-time/leading-zero", schemaPath: "#/$defs/own-leading-zero/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err346];
                  } else {
                    vErrors.push(err346);
                  }
                  errors++;
                }
                if (!(data129 === "keep" || data129 === "drop")) {
                  const err347 = { instancePath: instancePath + "/numbers/inverse-time/leading-zero", schemaPath: "#/$defs/own-leading-zero/enum", keyword: "enum", params: { allowedValues: schema39.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err347];
                  } else {
                    vErrors.push(err347);
                  }
                  errors++;
                }
              }
              if (data125.plus !== void 0) {
                let data130 = data125.plus;
                if (typeof data130 !== "string") {
                  const err348 = { instancePath: instancePath + "/numbers/inverse-time/plus", schemaPath: "#/$defs/own-plus/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err348];
                  } else {
                    vErrors.push(err348);
                  }
                  errors++;
                }
                if (!(data130 === "yes" || data130 === "no")) {
                  const err349 = { instancePath: instancePath + "/numbers/inverse-time/plus", schemaPath: "#/$defs/own-plus/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err349];
                  } else {
                    vErrors.push(err349);
                  }
                  errors++;
                }
              }
              if (data125["suppressed-zeros"] !== void 0) {
                let data131 = data125["suppressed-zeros"];
                if (typeof data131 !== "string") {
                  const err350 = { instancePath: instancePath + "/numbers/inverse-time/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err350];
                  } else {
                    vErrors.push(err350);
                  }
                  errors++;
                }
                if (!(data131 === "leading" || data131 === "trailing" || data131 === "none")) {
                  const err351 = { instancePath: instancePath + "/numbers/inverse-time/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/enum", keyword: "enum", params: { allowedValues: schema41.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err351];
                  } else {
                    vErrors.push(err351);
                  }
                  errors++;
                }
              }
              if (data125.digits !== void 0) {
                let data132 = data125.digits;
                if (!(typeof data132 == "number" && (!(data132 % 1) && !isNaN(data132)) && isFinite(data132))) {
                  const err352 = { instancePath: instancePath + "/numbers/inverse-time/digits", schemaPath: "#/$defs/own-digits/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err352];
                  } else {
                    vErrors.push(err352);
                  }
                  errors++;
                }
                if (typeof data132 == "number" && isFinite(data132)) {
                  if (data132 > 12 || isNaN(data132)) {
                    const err353 = { instancePath: instancePath + "/numbers/inverse-time/digits", schemaPath: "#/$defs/own-digits/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err353];
                    } else {
                      vErrors.push(err353);
                    }
                    errors++;
                  }
                  if (data132 < 1 || isNaN(data132)) {
                    const err354 = { instancePath: instancePath + "/numbers/inverse-time/digits", schemaPath: "#/$defs/own-digits/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err354];
                    } else {
                      vErrors.push(err354);
                    }
                    errors++;
                  }
                }
              }
              if (data125["whole-digits"] !== void 0) {
                let data133 = data125["whole-digits"];
                const _errs385 = errors;
                let valid96 = false;
                const _errs386 = errors;
                if (typeof data133 !== "string") {
                  const err355 = { instancePath: instancePath + "/numbers/inverse-time/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err355];
                  } else {
                    vErrors.push(err355);
                  }
                  errors++;
                }
                if ("none" !== data133) {
                  const err356 = { instancePath: instancePath + "/numbers/inverse-time/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
                  if (vErrors === null) {
                    vErrors = [err356];
                  } else {
                    vErrors.push(err356);
                  }
                  errors++;
                }
                var _valid12 = _errs386 === errors;
                valid96 = valid96 || _valid12;
                const _errs388 = errors;
                if (!(typeof data133 == "number" && (!(data133 % 1) && !isNaN(data133)) && isFinite(data133))) {
                  const err357 = { instancePath: instancePath + "/numbers/inverse-time/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err357];
                  } else {
                    vErrors.push(err357);
                  }
                  errors++;
                }
                if (typeof data133 == "number" && isFinite(data133)) {
                  if (data133 > 12 || isNaN(data133)) {
                    const err358 = { instancePath: instancePath + "/numbers/inverse-time/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err358];
                    } else {
                      vErrors.push(err358);
                    }
                    errors++;
                  }
                  if (data133 < 1 || isNaN(data133)) {
                    const err359 = { instancePath: instancePath + "/numbers/inverse-time/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err359];
                    } else {
                      vErrors.push(err359);
                    }
                    errors++;
                  }
                }
                var _valid12 = _errs388 === errors;
                valid96 = valid96 || _valid12;
                if (!valid96) {
                  const err360 = { instancePath: instancePath + "/numbers/inverse-time/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err360];
                  } else {
                    vErrors.push(err360);
                  }
                  errors++;
                } else {
                  errors = _errs385;
                  if (vErrors !== null) {
                    if (_errs385) {
                      vErrors.length = _errs385;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
            } else {
              const err361 = { instancePath: instancePath + "/numbers/inverse-time", schemaPath: "#/properties/numbers/properties/inverse-time/anyOf/1/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err361];
              } else {
                vErrors.push(err361);
              }
              errors++;
            }
            var _valid11 = _errs360 === errors;
            valid87 = valid87 || _valid11;
            if (!valid87) {
              const err362 = { instancePath: instancePath + "/numbers/inverse-time", schemaPath: "#/properties/numbers/properties/inverse-time/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err362];
              } else {
                vErrors.push(err362);
              }
              errors++;
            } else {
              errors = _errs357;
              if (vErrors !== null) {
                if (_errs357) {
                  vErrors.length = _errs357;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data59.speed !== void 0) {
            let data134 = data59.speed;
            const _errs391 = errors;
            let valid97 = false;
            const _errs392 = errors;
            if (!(typeof data134 == "number" && (!(data134 % 1) && !isNaN(data134)) && isFinite(data134))) {
              const err363 = { instancePath: instancePath + "/numbers/speed", schemaPath: "#/properties/numbers/properties/speed/anyOf/0/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
              if (vErrors === null) {
                vErrors = [err363];
              } else {
                vErrors.push(err363);
              }
              errors++;
            }
            if (typeof data134 == "number" && isFinite(data134)) {
              if (data134 > 7 || isNaN(data134)) {
                const err364 = { instancePath: instancePath + "/numbers/speed", schemaPath: "#/properties/numbers/properties/speed/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                if (vErrors === null) {
                  vErrors = [err364];
                } else {
                  vErrors.push(err364);
                }
                errors++;
              }
              if (data134 < 0 || isNaN(data134)) {
                const err365 = { instancePath: instancePath + "/numbers/speed", schemaPath: "#/properties/numbers/properties/speed/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                if (vErrors === null) {
                  vErrors = [err365];
                } else {
                  vErrors.push(err365);
                }
                errors++;
              }
            }
            var _valid13 = _errs392 === errors;
            valid97 = valid97 || _valid13;
            const _errs394 = errors;
            if (data134 && typeof data134 == "object" && !Array.isArray(data134)) {
              for (const key17 in data134) {
                if (!(key17 === "decimals" || key17 === "point" || key17 === "trailing-zeros" || key17 === "leading-zero" || key17 === "plus" || key17 === "suppressed-zeros" || key17 === "digits" || key17 === "whole-digits")) {
                  const err366 = { instancePath: instancePath + "/numbers/speed", schemaPath: "#/properties/numbers/properties/speed/anyOf/1/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key17 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err366];
                  } else {
                    vErrors.push(err366);
                  }
                  errors++;
                }
              }
              if (data134.decimals !== void 0) {
                let data135 = data134.decimals;
                if (!(typeof data135 == "number" && (!(data135 % 1) && !isNaN(data135)) && isFinite(data135))) {
                  const err367 = { instancePath: instancePath + "/numbers/speed/decimals", schemaPath: "#/properties/numbers/properties/speed/anyOf/1/properties/decimals/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err367];
                  } else {
                    vErrors.push(err367);
                  }
                  errors++;
                }
                if (typeof data135 == "number" && isFinite(data135)) {
                  if (data135 > 7 || isNaN(data135)) {
                    const err368 = { instancePath: instancePath + "/numbers/speed/decimals", schemaPath: "#/properties/numbers/properties/speed/anyOf/1/properties/decimals/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                    if (vErrors === null) {
                      vErrors = [err368];
                    } else {
                      vErrors.push(err368);
                    }
                    errors++;
                  }
                  if (data135 < 0 || isNaN(data135)) {
                    const err369 = { instancePath: instancePath + "/numbers/speed/decimals", schemaPath: "#/properties/numbers/properties/speed/anyOf/1/properties/decimals/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err369];
                    } else {
                      vErrors.push(err369);
                    }
                    errors++;
                  }
                }
              }
              if (data134.point !== void 0) {
                let data136 = data134.point;
                if (typeof data136 !== "string") {
                  const err370 = { instancePath: instancePath + "/numbers/speed/point", schemaPath: "#/$defs/own-point/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err370];
                  } else {
                    vErrors.push(err370);
                  }
                  errors++;
                }
                if (!(data136 === "always" || data136 === "when-needed" || data136 === "never")) {
                  const err371 = { instancePath: instancePath + "/numbers/speed/point", schemaPath: "#/$defs/own-point/enum", keyword: "enum", params: { allowedValues: schema37.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err371];
                  } else {
                    vErrors.push(err371);
                  }
                  errors++;
                }
              }
              if (data134["trailing-zeros"] !== void 0) {
                let data137 = data134["trailing-zeros"];
                if (typeof data137 !== "string") {
                  const err372 = { instancePath: instancePath + "/numbers/speed/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err372];
                  } else {
                    vErrors.push(err372);
                  }
                  errors++;
                }
                if (!(data137 === "keep" || data137 === "drop" || data137 === "one")) {
                  const err373 = { instancePath: instancePath + "/numbers/speed/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/enum", keyword: "enum", params: { allowedValues: schema38.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err373];
                  } else {
                    vErrors.push(err373);
                  }
                  errors++;
                }
              }
              if (data134["leading-zero"] !== void 0) {
                let data138 = data134["leading-zero"];
                if (typeof data138 !== "string") {
                  const err374 = { instancePath: instancePath + "/numbers/speed/leading-zero", schemaPath: "#/$defs/own-leading-zero/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err374];
                  } else {
                    vErrors.push(err374);
                  }
                  errors++;
                }
                if (!(data138 === "keep" || data138 === "drop")) {
                  const err375 = { instancePath: instancePath + "/numbers/speed/leading-zero", schemaPath: "#/$defs/own-leading-zero/enum", keyword: "enum", params: { allowedValues: schema39.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err375];
                  } else {
                    vErrors.push(err375);
                  }
                  errors++;
                }
              }
              if (data134.plus !== void 0) {
                let data139 = data134.plus;
                if (typeof data139 !== "string") {
                  const err376 = { instancePath: instancePath + "/numbers/speed/plus", schemaPath: "#/$defs/own-plus/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err376];
                  } else {
                    vErrors.push(err376);
                  }
                  errors++;
                }
                if (!(data139 === "yes" || data139 === "no")) {
                  const err377 = { instancePath: instancePath + "/numbers/speed/plus", schemaPath: "#/$defs/own-plus/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err377];
                  } else {
                    vErrors.push(err377);
                  }
                  errors++;
                }
              }
              if (data134["suppressed-zeros"] !== void 0) {
                let data140 = data134["suppressed-zeros"];
                if (typeof data140 !== "string") {
                  const err378 = { instancePath: instancePath + "/numbers/speed/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err378];
                  } else {
                    vErrors.push(err378);
                  }
                  errors++;
                }
                if (!(data140 === "leading" || data140 === "trailing" || data140 === "none")) {
                  const err379 = { instancePath: instancePath + "/numbers/speed/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/enum", keyword: "enum", params: { allowedValues: schema41.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err379];
                  } else {
                    vErrors.push(err379);
                  }
                  errors++;
                }
              }
              if (data134.digits !== void 0) {
                let data141 = data134.digits;
                if (!(typeof data141 == "number" && (!(data141 % 1) && !isNaN(data141)) && isFinite(data141))) {
                  const err380 = { instancePath: instancePath + "/numbers/speed/digits", schemaPath: "#/$defs/own-digits/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err380];
                  } else {
                    vErrors.push(err380);
                  }
                  errors++;
                }
                if (typeof data141 == "number" && isFinite(data141)) {
                  if (data141 > 12 || isNaN(data141)) {
                    const err381 = { instancePath: instancePath + "/numbers/speed/digits", schemaPath: "#/$defs/own-digits/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err381];
                    } else {
                      vErrors.push(err381);
                    }
                    errors++;
                  }
                  if (data141 < 1 || isNaN(data141)) {
                    const err382 = { instancePath: instancePath + "/numbers/speed/digits", schemaPath: "#/$defs/own-digits/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err382];
                    } else {
                      vErrors.push(err382);
                    }
                    errors++;
                  }
                }
              }
              if (data134["whole-digits"] !== void 0) {
                let data142 = data134["whole-digits"];
                const _errs419 = errors;
                let valid106 = false;
                const _errs420 = errors;
                if (typeof data142 !== "string") {
                  const err383 = { instancePath: instancePath + "/numbers/speed/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err383];
                  } else {
                    vErrors.push(err383);
                  }
                  errors++;
                }
                if ("none" !== data142) {
                  const err384 = { instancePath: instancePath + "/numbers/speed/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
                  if (vErrors === null) {
                    vErrors = [err384];
                  } else {
                    vErrors.push(err384);
                  }
                  errors++;
                }
                var _valid14 = _errs420 === errors;
                valid106 = valid106 || _valid14;
                const _errs422 = errors;
                if (!(typeof data142 == "number" && (!(data142 % 1) && !isNaN(data142)) && isFinite(data142))) {
                  const err385 = { instancePath: instancePath + "/numbers/speed/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err385];
                  } else {
                    vErrors.push(err385);
                  }
                  errors++;
                }
                if (typeof data142 == "number" && isFinite(data142)) {
                  if (data142 > 12 || isNaN(data142)) {
                    const err386 = { instancePath: instancePath + "/numbers/speed/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err386];
                    } else {
                      vErrors.push(err386);
                    }
                    errors++;
                  }
                  if (data142 < 1 || isNaN(data142)) {
                    const err387 = { instancePath: instancePath + "/numbers/speed/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err387];
                    } else {
                      vErrors.push(err387);
                    }
                    errors++;
                  }
                }
                var _valid14 = _errs422 === errors;
                valid106 = valid106 || _valid14;
                if (!valid106) {
                  const err388 = { instancePath: instancePath + "/numbers/speed/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err388];
                  } else {
                    vErrors.push(err388);
                  }
                  errors++;
                } else {
                  errors = _errs419;
                  if (vErrors !== null) {
                    if (_errs419) {
                      vErrors.length = _errs419;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
            } else {
              const err389 = { instancePath: instancePath + "/numbers/speed", schemaPath: "#/properties/numbers/properties/speed/anyOf/1/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err389];
              } else {
                vErrors.push(err389);
              }
              errors++;
            }
            var _valid13 = _errs394 === errors;
            valid97 = valid97 || _valid13;
            if (!valid97) {
              const err390 = { instancePath: instancePath + "/numbers/speed", schemaPath: "#/properties/numbers/properties/speed/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err390];
              } else {
                vErrors.push(err390);
              }
              errors++;
            } else {
              errors = _errs391;
              if (vErrors !== null) {
                if (_errs391) {
                  vErrors.length = _errs391;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data59.dwell !== void 0) {
            let data143 = data59.dwell;
            const _errs425 = errors;
            let valid107 = false;
            const _errs426 = errors;
            if (!(typeof data143 == "number" && (!(data143 % 1) && !isNaN(data143)) && isFinite(data143))) {
              const err391 = { instancePath: instancePath + "/numbers/dwell", schemaPath: "#/properties/numbers/properties/dwell/anyOf/0/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
              if (vErrors === null) {
                vErrors = [err391];
              } else {
                vErrors.push(err391);
              }
              errors++;
            }
            if (typeof data143 == "number" && isFinite(data143)) {
              if (data143 > 7 || isNaN(data143)) {
                const err392 = { instancePath: instancePath + "/numbers/dwell", schemaPath: "#/properties/numbers/properties/dwell/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                if (vErrors === null) {
                  vErrors = [err392];
                } else {
                  vErrors.push(err392);
                }
                errors++;
              }
              if (data143 < 0 || isNaN(data143)) {
                const err393 = { instancePath: instancePath + "/numbers/dwell", schemaPath: "#/properties/numbers/properties/dwell/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                if (vErrors === null) {
                  vErrors = [err393];
                } else {
                  vErrors.push(err393);
                }
                errors++;
              }
            }
            var _valid15 = _errs426 === errors;
            valid107 = valid107 || _valid15;
            const _errs428 = errors;
            if (data143 && typeof data143 == "object" && !Array.isArray(data143)) {
              for (const key18 in data143) {
                if (!(key18 === "decimals" || key18 === "point" || key18 === "trailing-zeros" || key18 === "leading-zero" || key18 === "plus" || key18 === "suppressed-zeros" || key18 === "digits" || key18 === "whole-digits")) {
                  const err394 = { instancePath: instancePath + "/numbers/dwell", schemaPath: "#/properties/numbers/properties/dwell/anyOf/1/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key18 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err394];
                  } else {
                    vErrors.push(err394);
                  }
                  errors++;
                }
              }
              if (data143.decimals !== void 0) {
                let data144 = data143.decimals;
                if (!(typeof data144 == "number" && (!(data144 % 1) && !isNaN(data144)) && isFinite(data144))) {
                  const err395 = { instancePath: instancePath + "/numbers/dwell/decimals", schemaPath: "#/properties/numbers/properties/dwell/anyOf/1/properties/decimals/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err395];
                  } else {
                    vErrors.push(err395);
                  }
                  errors++;
                }
                if (typeof data144 == "number" && isFinite(data144)) {
                  if (data144 > 7 || isNaN(data144)) {
                    const err396 = { instancePath: instancePath + "/numbers/dwell/decimals", schemaPath: "#/properties/numbers/properties/dwell/anyOf/1/properties/decimals/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                    if (vErrors === null) {
                      vErrors = [err396];
                    } else {
                      vErrors.push(err396);
                    }
                    errors++;
                  }
                  if (data144 < 0 || isNaN(data144)) {
                    const err397 = { instancePath: instancePath + "/numbers/dwell/decimals", schemaPath: "#/properties/numbers/properties/dwell/anyOf/1/properties/decimals/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err397];
                    } else {
                      vErrors.push(err397);
                    }
                    errors++;
                  }
                }
              }
              if (data143.point !== void 0) {
                let data145 = data143.point;
                if (typeof data145 !== "string") {
                  const err398 = { instancePath: instancePath + "/numbers/dwell/point", schemaPath: "#/$defs/own-point/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err398];
                  } else {
                    vErrors.push(err398);
                  }
                  errors++;
                }
                if (!(data145 === "always" || data145 === "when-needed" || data145 === "never")) {
                  const err399 = { instancePath: instancePath + "/numbers/dwell/point", schemaPath: "#/$defs/own-point/enum", keyword: "enum", params: { allowedValues: schema37.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err399];
                  } else {
                    vErrors.push(err399);
                  }
                  errors++;
                }
              }
              if (data143["trailing-zeros"] !== void 0) {
                let data146 = data143["trailing-zeros"];
                if (typeof data146 !== "string") {
                  const err400 = { instancePath: instancePath + "/numbers/dwell/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err400];
                  } else {
                    vErrors.push(err400);
                  }
                  errors++;
                }
                if (!(data146 === "keep" || data146 === "drop" || data146 === "one")) {
                  const err401 = { instancePath: instancePath + "/numbers/dwell/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/enum", keyword: "enum", params: { allowedValues: schema38.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err401];
                  } else {
                    vErrors.push(err401);
                  }
                  errors++;
                }
              }
              if (data143["leading-zero"] !== void 0) {
                let data147 = data143["leading-zero"];
                if (typeof data147 !== "string") {
                  const err402 = { instancePath: instancePath + "/numbers/dwell/leading-zero", schemaPath: "#/$defs/own-leading-zero/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err402];
                  } else {
                    vErrors.push(err402);
                  }
                  errors++;
                }
                if (!(data147 === "keep" || data147 === "drop")) {
                  const err403 = { instancePath: instancePath + "/numbers/dwell/leading-zero", schemaPath: "#/$defs/own-leading-zero/enum", keyword: "enum", params: { allowedValues: schema39.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err403];
                  } else {
                    vErrors.push(err403);
                  }
                  errors++;
                }
              }
              if (data143.plus !== void 0) {
                let data148 = data143.plus;
                if (typeof data148 !== "string") {
                  const err404 = { instancePath: instancePath + "/numbers/dwell/plus", schemaPath: "#/$defs/own-plus/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err404];
                  } else {
                    vErrors.push(err404);
                  }
                  errors++;
                }
                if (!(data148 === "yes" || data148 === "no")) {
                  const err405 = { instancePath: instancePath + "/numbers/dwell/plus", schemaPath: "#/$defs/own-plus/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err405];
                  } else {
                    vErrors.push(err405);
                  }
                  errors++;
                }
              }
              if (data143["suppressed-zeros"] !== void 0) {
                let data149 = data143["suppressed-zeros"];
                if (typeof data149 !== "string") {
                  const err406 = { instancePath: instancePath + "/numbers/dwell/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err406];
                  } else {
                    vErrors.push(err406);
                  }
                  errors++;
                }
                if (!(data149 === "leading" || data149 === "trailing" || data149 === "none")) {
                  const err407 = { instancePath: instancePath + "/numbers/dwell/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/enum", keyword: "enum", params: { allowedValues: schema41.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err407];
                  } else {
                    vErrors.push(err407);
                  }
                  errors++;
                }
              }
              if (data143.digits !== void 0) {
                let data150 = data143.digits;
                if (!(typeof data150 == "number" && (!(data150 % 1) && !isNaN(data150)) && isFinite(data150))) {
                  const err408 = { instancePath: instancePath + "/numbers/dwell/digits", schemaPath: "#/$defs/own-digits/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err408];
                  } else {
                    vErrors.push(err408);
                  }
                  errors++;
                }
                if (typeof data150 == "number" && isFinite(data150)) {
                  if (data150 > 12 || isNaN(data150)) {
                    const err409 = { instancePath: instancePath + "/numbers/dwell/digits", schemaPath: "#/$defs/own-digits/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err409];
                    } else {
                      vErrors.push(err409);
                    }
                    errors++;
                  }
                  if (data150 < 1 || isNaN(data150)) {
                    const err410 = { instancePath: instancePath + "/numbers/dwell/digits", schemaPath: "#/$defs/own-digits/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err410];
                    } else {
                      vErrors.push(err410);
                    }
                    errors++;
                  }
                }
              }
              if (data143["whole-digits"] !== void 0) {
                let data151 = data143["whole-digits"];
                const _errs453 = errors;
                let valid116 = false;
                const _errs454 = errors;
                if (typeof data151 !== "string") {
                  const err411 = { instancePath: instancePath + "/numbers/dwell/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err411];
                  } else {
                    vErrors.push(err411);
                  }
                  errors++;
                }
                if ("none" !== data151) {
                  const err412 = { instancePath: instancePath + "/numbers/dwell/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
                  if (vErrors === null) {
                    vErrors = [err412];
                  } else {
                    vErrors.push(err412);
                  }
                  errors++;
                }
                var _valid16 = _errs454 === errors;
                valid116 = valid116 || _valid16;
                const _errs456 = errors;
                if (!(typeof data151 == "number" && (!(data151 % 1) && !isNaN(data151)) && isFinite(data151))) {
                  const err413 = { instancePath: instancePath + "/numbers/dwell/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err413];
                  } else {
                    vErrors.push(err413);
                  }
                  errors++;
                }
                if (typeof data151 == "number" && isFinite(data151)) {
                  if (data151 > 12 || isNaN(data151)) {
                    const err414 = { instancePath: instancePath + "/numbers/dwell/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err414];
                    } else {
                      vErrors.push(err414);
                    }
                    errors++;
                  }
                  if (data151 < 1 || isNaN(data151)) {
                    const err415 = { instancePath: instancePath + "/numbers/dwell/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err415];
                    } else {
                      vErrors.push(err415);
                    }
                    errors++;
                  }
                }
                var _valid16 = _errs456 === errors;
                valid116 = valid116 || _valid16;
                if (!valid116) {
                  const err416 = { instancePath: instancePath + "/numbers/dwell/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err416];
                  } else {
                    vErrors.push(err416);
                  }
                  errors++;
                } else {
                  errors = _errs453;
                  if (vErrors !== null) {
                    if (_errs453) {
                      vErrors.length = _errs453;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
            } else {
              const err417 = { instancePath: instancePath + "/numbers/dwell", schemaPath: "#/properties/numbers/properties/dwell/anyOf/1/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err417];
              } else {
                vErrors.push(err417);
              }
              errors++;
            }
            var _valid15 = _errs428 === errors;
            valid107 = valid107 || _valid15;
            if (!valid107) {
              const err418 = { instancePath: instancePath + "/numbers/dwell", schemaPath: "#/properties/numbers/properties/dwell/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err418];
              } else {
                vErrors.push(err418);
              }
              errors++;
            } else {
              errors = _errs425;
              if (vErrors !== null) {
                if (_errs425) {
                  vErrors.length = _errs425;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data59["cycle-dwell"] !== void 0) {
            let data152 = data59["cycle-dwell"];
            const _errs459 = errors;
            let valid117 = false;
            const _errs460 = errors;
            if (!(typeof data152 == "number" && (!(data152 % 1) && !isNaN(data152)) && isFinite(data152))) {
              const err419 = { instancePath: instancePath + "/numbers/cycle-dwell", schemaPath: "#/properties/numbers/properties/cycle-dwell/anyOf/0/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
              if (vErrors === null) {
                vErrors = [err419];
              } else {
                vErrors.push(err419);
              }
              errors++;
            }
            if (typeof data152 == "number" && isFinite(data152)) {
              if (data152 > 7 || isNaN(data152)) {
                const err420 = { instancePath: instancePath + "/numbers/cycle-dwell", schemaPath: "#/properties/numbers/properties/cycle-dwell/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                if (vErrors === null) {
                  vErrors = [err420];
                } else {
                  vErrors.push(err420);
                }
                errors++;
              }
              if (data152 < 0 || isNaN(data152)) {
                const err421 = { instancePath: instancePath + "/numbers/cycle-dwell", schemaPath: "#/properties/numbers/properties/cycle-dwell/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                if (vErrors === null) {
                  vErrors = [err421];
                } else {
                  vErrors.push(err421);
                }
                errors++;
              }
            }
            var _valid17 = _errs460 === errors;
            valid117 = valid117 || _valid17;
            const _errs462 = errors;
            if (data152 && typeof data152 == "object" && !Array.isArray(data152)) {
              for (const key19 in data152) {
                if (!(key19 === "decimals" || key19 === "point" || key19 === "trailing-zeros" || key19 === "leading-zero" || key19 === "plus" || key19 === "suppressed-zeros" || key19 === "digits" || key19 === "whole-digits")) {
                  const err422 = { instancePath: instancePath + "/numbers/cycle-dwell", schemaPath: "#/properties/numbers/properties/cycle-dwell/anyOf/1/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key19 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err422];
                  } else {
                    vErrors.push(err422);
                  }
                  errors++;
                }
              }
              if (data152.decimals !== void 0) {
                let data153 = data152.decimals;
                if (!(typeof data153 == "number" && (!(data153 % 1) && !isNaN(data153)) && isFinite(data153))) {
                  const err423 = { instancePath: instancePath + "/numbers/cycle-dwell/decimals", schemaPath: "#/properties/numbers/properties/cycle-dwell/anyOf/1/properties/decimals/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err423];
                  } else {
                    vErrors.push(err423);
                  }
                  errors++;
                }
                if (typeof data153 == "number" && isFinite(data153)) {
                  if (data153 > 7 || isNaN(data153)) {
                    const err424 = { instancePath: instancePath + "/numbers/cycle-dwell/decimals", schemaPath: "#/properties/numbers/properties/cycle-dwell/anyOf/1/properties/decimals/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                    if (vErrors === null) {
                      vErrors = [err424];
                    } else {
                      vErrors.push(err424);
                    }
                    errors++;
                  }
                  if (data153 < 0 || isNaN(data153)) {
                    const err425 = { instancePath: instancePath + "/numbers/cycle-dwell/decimals", schemaPath: "#/properties/numbers/properties/cycle-dwell/anyOf/1/properties/decimals/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err425];
                    } else {
                      vErrors.push(err425);
                    }
                    errors++;
                  }
                }
              }
              if (data152.point !== void 0) {
                let data154 = data152.point;
                if (typeof data154 !== "string") {
                  const err426 = { instancePath: instancePath + "/numbers/cycle-dwell/point", schemaPath: "#/$defs/own-point/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err426];
                  } else {
                    vErrors.push(err426);
                  }
                  errors++;
                }
                if (!(data154 === "always" || data154 === "when-needed" || data154 === "never")) {
                  const err427 = { instancePath: instancePath + "/numbers/cycle-dwell/point", schemaPath: "#/$defs/own-point/enum", keyword: "enum", params: { allowedValues: schema37.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err427];
                  } else {
                    vErrors.push(err427);
                  }
                  errors++;
                }
              }
              if (data152["trailing-zeros"] !== void 0) {
                let data155 = data152["trailing-zeros"];
                if (typeof data155 !== "string") {
                  const err428 = { instancePath: instancePath + "/numbers/cycle-dwell/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err428];
                  } else {
                    vErrors.push(err428);
                  }
                  errors++;
                }
                if (!(data155 === "keep" || data155 === "drop" || data155 === "one")) {
                  const err429 = { instancePath: instancePath + "/numbers/cycle-dwell/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/enum", keyword: "enum", params: { allowedValues: schema38.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err429];
                  } else {
                    vErrors.push(err429);
                  }
                  errors++;
                }
              }
              if (data152["leading-zero"] !== void 0) {
                let data156 = data152["leading-zero"];
                if (typeof data156 !== "string") {
                  const err430 = { instancePath: instancePath + "/numbers/cycle-dwell/leading-zero", schemaPath: "#/$defs/own-leading-zero/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err430];
                  } else {
                    vErrors.push(err430);
                  }
                  errors++;
                }
                if (!(data156 === "keep" || data156 === "drop")) {
                  const err431 = { instancePath: instancePath + "/numbers/cycle-dwell/leading-zero", schemaPath: "#/$defs/own-leading-zero/enum", keyword: "enum", params: { allowedValues: schema39.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err431];
                  } else {
                    vErrors.push(err431);
                  }
                  errors++;
                }
              }
              if (data152.plus !== void 0) {
                let data157 = data152.plus;
                if (typeof data157 !== "string") {
                  const err432 = { instancePath: instancePath + "/numbers/cycle-dwell/plus", schemaPath: "#/$defs/own-plus/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err432];
                  } else {
                    vErrors.push(err432);
                  }
                  errors++;
                }
                if (!(data157 === "yes" || data157 === "no")) {
                  const err433 = { instancePath: instancePath + "/numbers/cycle-dwell/plus", schemaPath: "#/$defs/own-plus/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err433];
                  } else {
                    vErrors.push(err433);
                  }
                  errors++;
                }
              }
              if (data152["suppressed-zeros"] !== void 0) {
                let data158 = data152["suppressed-zeros"];
                if (typeof data158 !== "string") {
                  const err434 = { instancePath: instancePath + "/numbers/cycle-dwell/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err434];
                  } else {
                    vErrors.push(err434);
                  }
                  errors++;
                }
                if (!(data158 === "leading" || data158 === "trailing" || data158 === "none")) {
                  const err435 = { instancePath: instancePath + "/numbers/cycle-dwell/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/enum", keyword: "enum", params: { allowedValues: schema41.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err435];
                  } else {
                    vErrors.push(err435);
                  }
                  errors++;
                }
              }
              if (data152.digits !== void 0) {
                let data159 = data152.digits;
                if (!(typeof data159 == "number" && (!(data159 % 1) && !isNaN(data159)) && isFinite(data159))) {
                  const err436 = { instancePath: instancePath + "/numbers/cycle-dwell/digits", schemaPath: "#/$defs/own-digits/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err436];
                  } else {
                    vErrors.push(err436);
                  }
                  errors++;
                }
                if (typeof data159 == "number" && isFinite(data159)) {
                  if (data159 > 12 || isNaN(data159)) {
                    const err437 = { instancePath: instancePath + "/numbers/cycle-dwell/digits", schemaPath: "#/$defs/own-digits/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err437];
                    } else {
                      vErrors.push(err437);
                    }
                    errors++;
                  }
                  if (data159 < 1 || isNaN(data159)) {
                    const err438 = { instancePath: instancePath + "/numbers/cycle-dwell/digits", schemaPath: "#/$defs/own-digits/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err438];
                    } else {
                      vErrors.push(err438);
                    }
                    errors++;
                  }
                }
              }
              if (data152["whole-digits"] !== void 0) {
                let data160 = data152["whole-digits"];
                const _errs487 = errors;
                let valid126 = false;
                const _errs488 = errors;
                if (typeof data160 !== "string") {
                  const err439 = { instancePath: instancePath + "/numbers/cycle-dwell/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err439];
                  } else {
                    vErrors.push(err439);
                  }
                  errors++;
                }
                if ("none" !== data160) {
                  const err440 = { instancePath: instancePath + "/numbers/cycle-dwell/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
                  if (vErrors === null) {
                    vErrors = [err440];
                  } else {
                    vErrors.push(err440);
                  }
                  errors++;
                }
                var _valid18 = _errs488 === errors;
                valid126 = valid126 || _valid18;
                const _errs490 = errors;
                if (!(typeof data160 == "number" && (!(data160 % 1) && !isNaN(data160)) && isFinite(data160))) {
                  const err441 = { instancePath: instancePath + "/numbers/cycle-dwell/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err441];
                  } else {
                    vErrors.push(err441);
                  }
                  errors++;
                }
                if (typeof data160 == "number" && isFinite(data160)) {
                  if (data160 > 12 || isNaN(data160)) {
                    const err442 = { instancePath: instancePath + "/numbers/cycle-dwell/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err442];
                    } else {
                      vErrors.push(err442);
                    }
                    errors++;
                  }
                  if (data160 < 1 || isNaN(data160)) {
                    const err443 = { instancePath: instancePath + "/numbers/cycle-dwell/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err443];
                    } else {
                      vErrors.push(err443);
                    }
                    errors++;
                  }
                }
                var _valid18 = _errs490 === errors;
                valid126 = valid126 || _valid18;
                if (!valid126) {
                  const err444 = { instancePath: instancePath + "/numbers/cycle-dwell/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err444];
                  } else {
                    vErrors.push(err444);
                  }
                  errors++;
                } else {
                  errors = _errs487;
                  if (vErrors !== null) {
                    if (_errs487) {
                      vErrors.length = _errs487;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
            } else {
              const err445 = { instancePath: instancePath + "/numbers/cycle-dwell", schemaPath: "#/properties/numbers/properties/cycle-dwell/anyOf/1/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err445];
              } else {
                vErrors.push(err445);
              }
              errors++;
            }
            var _valid17 = _errs462 === errors;
            valid117 = valid117 || _valid17;
            if (!valid117) {
              const err446 = { instancePath: instancePath + "/numbers/cycle-dwell", schemaPath: "#/properties/numbers/properties/cycle-dwell/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err446];
              } else {
                vErrors.push(err446);
              }
              errors++;
            } else {
              errors = _errs459;
              if (vErrors !== null) {
                if (_errs459) {
                  vErrors.length = _errs459;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data59.timeout !== void 0) {
            let data161 = data59.timeout;
            const _errs493 = errors;
            let valid127 = false;
            const _errs494 = errors;
            if (!(typeof data161 == "number" && (!(data161 % 1) && !isNaN(data161)) && isFinite(data161))) {
              const err447 = { instancePath: instancePath + "/numbers/timeout", schemaPath: "#/properties/numbers/properties/timeout/anyOf/0/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
              if (vErrors === null) {
                vErrors = [err447];
              } else {
                vErrors.push(err447);
              }
              errors++;
            }
            if (typeof data161 == "number" && isFinite(data161)) {
              if (data161 > 7 || isNaN(data161)) {
                const err448 = { instancePath: instancePath + "/numbers/timeout", schemaPath: "#/properties/numbers/properties/timeout/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                if (vErrors === null) {
                  vErrors = [err448];
                } else {
                  vErrors.push(err448);
                }
                errors++;
              }
              if (data161 < 0 || isNaN(data161)) {
                const err449 = { instancePath: instancePath + "/numbers/timeout", schemaPath: "#/properties/numbers/properties/timeout/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                if (vErrors === null) {
                  vErrors = [err449];
                } else {
                  vErrors.push(err449);
                }
                errors++;
              }
            }
            var _valid19 = _errs494 === errors;
            valid127 = valid127 || _valid19;
            const _errs496 = errors;
            if (data161 && typeof data161 == "object" && !Array.isArray(data161)) {
              for (const key20 in data161) {
                if (!(key20 === "decimals" || key20 === "point" || key20 === "trailing-zeros" || key20 === "leading-zero" || key20 === "plus" || key20 === "suppressed-zeros" || key20 === "digits" || key20 === "whole-digits")) {
                  const err450 = { instancePath: instancePath + "/numbers/timeout", schemaPath: "#/properties/numbers/properties/timeout/anyOf/1/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key20 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err450];
                  } else {
                    vErrors.push(err450);
                  }
                  errors++;
                }
              }
              if (data161.decimals !== void 0) {
                let data162 = data161.decimals;
                if (!(typeof data162 == "number" && (!(data162 % 1) && !isNaN(data162)) && isFinite(data162))) {
                  const err451 = { instancePath: instancePath + "/numbers/timeout/decimals", schemaPath: "#/properties/numbers/properties/timeout/anyOf/1/properties/decimals/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err451];
                  } else {
                    vErrors.push(err451);
                  }
                  errors++;
                }
                if (typeof data162 == "number" && isFinite(data162)) {
                  if (data162 > 7 || isNaN(data162)) {
                    const err452 = { instancePath: instancePath + "/numbers/timeout/decimals", schemaPath: "#/properties/numbers/properties/timeout/anyOf/1/properties/decimals/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                    if (vErrors === null) {
                      vErrors = [err452];
                    } else {
                      vErrors.push(err452);
                    }
                    errors++;
                  }
                  if (data162 < 0 || isNaN(data162)) {
                    const err453 = { instancePath: instancePath + "/numbers/timeout/decimals", schemaPath: "#/properties/numbers/properties/timeout/anyOf/1/properties/decimals/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err453];
                    } else {
                      vErrors.push(err453);
                    }
                    errors++;
                  }
                }
              }
              if (data161.point !== void 0) {
                let data163 = data161.point;
                if (typeof data163 !== "string") {
                  const err454 = { instancePath: instancePath + "/numbers/timeout/point", schemaPath: "#/$defs/own-point/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err454];
                  } else {
                    vErrors.push(err454);
                  }
                  errors++;
                }
                if (!(data163 === "always" || data163 === "when-needed" || data163 === "never")) {
                  const err455 = { instancePath: instancePath + "/numbers/timeout/point", schemaPath: "#/$defs/own-point/enum", keyword: "enum", params: { allowedValues: schema37.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err455];
                  } else {
                    vErrors.push(err455);
                  }
                  errors++;
                }
              }
              if (data161["trailing-zeros"] !== void 0) {
                let data164 = data161["trailing-zeros"];
                if (typeof data164 !== "string") {
                  const err456 = { instancePath: instancePath + "/numbers/timeout/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err456];
                  } else {
                    vErrors.push(err456);
                  }
                  errors++;
                }
                if (!(data164 === "keep" || data164 === "drop" || data164 === "one")) {
                  const err457 = { instancePath: instancePath + "/numbers/timeout/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/enum", keyword: "enum", params: { allowedValues: schema38.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err457];
                  } else {
                    vErrors.push(err457);
                  }
                  errors++;
                }
              }
              if (data161["leading-zero"] !== void 0) {
                let data165 = data161["leading-zero"];
                if (typeof data165 !== "string") {
                  const err458 = { instancePath: instancePath + "/numbers/timeout/leading-zero", schemaPath: "#/$defs/own-leading-zero/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err458];
                  } else {
                    vErrors.push(err458);
                  }
                  errors++;
                }
                if (!(data165 === "keep" || data165 === "drop")) {
                  const err459 = { instancePath: instancePath + "/numbers/timeout/leading-zero", schemaPath: "#/$defs/own-leading-zero/enum", keyword: "enum", params: { allowedValues: schema39.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err459];
                  } else {
                    vErrors.push(err459);
                  }
                  errors++;
                }
              }
              if (data161.plus !== void 0) {
                let data166 = data161.plus;
                if (typeof data166 !== "string") {
                  const err460 = { instancePath: instancePath + "/numbers/timeout/plus", schemaPath: "#/$defs/own-plus/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err460];
                  } else {
                    vErrors.push(err460);
                  }
                  errors++;
                }
                if (!(data166 === "yes" || data166 === "no")) {
                  const err461 = { instancePath: instancePath + "/numbers/timeout/plus", schemaPath: "#/$defs/own-plus/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err461];
                  } else {
                    vErrors.push(err461);
                  }
                  errors++;
                }
              }
              if (data161["suppressed-zeros"] !== void 0) {
                let data167 = data161["suppressed-zeros"];
                if (typeof data167 !== "string") {
                  const err462 = { instancePath: instancePath + "/numbers/timeout/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err462];
                  } else {
                    vErrors.push(err462);
                  }
                  errors++;
                }
                if (!(data167 === "leading" || data167 === "trailing" || data167 === "none")) {
                  const err463 = { instancePath: instancePath + "/numbers/timeout/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/enum", keyword: "enum", params: { allowedValues: schema41.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err463];
                  } else {
                    vErrors.push(err463);
                  }
                  errors++;
                }
              }
              if (data161.digits !== void 0) {
                let data168 = data161.digits;
                if (!(typeof data168 == "number" && (!(data168 % 1) && !isNaN(data168)) && isFinite(data168))) {
                  const err464 = { instancePath: instancePath + "/numbers/timeout/digits", schemaPath: "#/$defs/own-digits/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err464];
                  } else {
                    vErrors.push(err464);
                  }
                  errors++;
                }
                if (typeof data168 == "number" && isFinite(data168)) {
                  if (data168 > 12 || isNaN(data168)) {
                    const err465 = { instancePath: instancePath + "/numbers/timeout/digits", schemaPath: "#/$defs/own-digits/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err465];
                    } else {
                      vErrors.push(err465);
                    }
                    errors++;
                  }
                  if (data168 < 1 || isNaN(data168)) {
                    const err466 = { instancePath: instancePath + "/numbers/timeout/digits", schemaPath: "#/$defs/own-digits/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err466];
                    } else {
                      vErrors.push(err466);
                    }
                    errors++;
                  }
                }
              }
              if (data161["whole-digits"] !== void 0) {
                let data169 = data161["whole-digits"];
                const _errs521 = errors;
                let valid136 = false;
                const _errs522 = errors;
                if (typeof data169 !== "string") {
                  const err467 = { instancePath: instancePath + "/numbers/timeout/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err467];
                  } else {
                    vErrors.push(err467);
                  }
                  errors++;
                }
                if ("none" !== data169) {
                  const err468 = { instancePath: instancePath + "/numbers/timeout/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
                  if (vErrors === null) {
                    vErrors = [err468];
                  } else {
                    vErrors.push(err468);
                  }
                  errors++;
                }
                var _valid20 = _errs522 === errors;
                valid136 = valid136 || _valid20;
                const _errs524 = errors;
                if (!(typeof data169 == "number" && (!(data169 % 1) && !isNaN(data169)) && isFinite(data169))) {
                  const err469 = { instancePath: instancePath + "/numbers/timeout/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err469];
                  } else {
                    vErrors.push(err469);
                  }
                  errors++;
                }
                if (typeof data169 == "number" && isFinite(data169)) {
                  if (data169 > 12 || isNaN(data169)) {
                    const err470 = { instancePath: instancePath + "/numbers/timeout/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err470];
                    } else {
                      vErrors.push(err470);
                    }
                    errors++;
                  }
                  if (data169 < 1 || isNaN(data169)) {
                    const err471 = { instancePath: instancePath + "/numbers/timeout/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err471];
                    } else {
                      vErrors.push(err471);
                    }
                    errors++;
                  }
                }
                var _valid20 = _errs524 === errors;
                valid136 = valid136 || _valid20;
                if (!valid136) {
                  const err472 = { instancePath: instancePath + "/numbers/timeout/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err472];
                  } else {
                    vErrors.push(err472);
                  }
                  errors++;
                } else {
                  errors = _errs521;
                  if (vErrors !== null) {
                    if (_errs521) {
                      vErrors.length = _errs521;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
            } else {
              const err473 = { instancePath: instancePath + "/numbers/timeout", schemaPath: "#/properties/numbers/properties/timeout/anyOf/1/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err473];
              } else {
                vErrors.push(err473);
              }
              errors++;
            }
            var _valid19 = _errs496 === errors;
            valid127 = valid127 || _valid19;
            if (!valid127) {
              const err474 = { instancePath: instancePath + "/numbers/timeout", schemaPath: "#/properties/numbers/properties/timeout/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err474];
              } else {
                vErrors.push(err474);
              }
              errors++;
            } else {
              errors = _errs493;
              if (vErrors !== null) {
                if (_errs493) {
                  vErrors.length = _errs493;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data59["code-width"] !== void 0) {
            let data170 = data59["code-width"];
            if (data170 && typeof data170 == "object" && !Array.isArray(data170)) {
              for (const key21 in data170) {
                if (!(key21 === "G" || key21 === "M" || key21 === "T" || key21 === "H" || key21 === "D")) {
                  const err475 = { instancePath: instancePath + "/numbers/code-width", schemaPath: "#/properties/numbers/properties/code-width/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key21 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err475];
                  } else {
                    vErrors.push(err475);
                  }
                  errors++;
                }
              }
              if (data170.G !== void 0) {
                let data171 = data170.G;
                if (!(typeof data171 == "number" && (!(data171 % 1) && !isNaN(data171)) && isFinite(data171))) {
                  const err476 = { instancePath: instancePath + "/numbers/code-width/G", schemaPath: "#/properties/numbers/properties/code-width/properties/G/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err476];
                  } else {
                    vErrors.push(err476);
                  }
                  errors++;
                }
                if (typeof data171 == "number" && isFinite(data171)) {
                  if (data171 > 4 || isNaN(data171)) {
                    const err477 = { instancePath: instancePath + "/numbers/code-width/G", schemaPath: "#/properties/numbers/properties/code-width/properties/G/maximum", keyword: "maximum", params: { comparison: "<=", limit: 4 }, message: "must be <= 4" };
                    if (vErrors === null) {
                      vErrors = [err477];
                    } else {
                      vErrors.push(err477);
                    }
                    errors++;
                  }
                  if (data171 < 1 || isNaN(data171)) {
                    const err478 = { instancePath: instancePath + "/numbers/code-width/G", schemaPath: "#/properties/numbers/properties/code-width/properties/G/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err478];
                    } else {
                      vErrors.push(err478);
                    }
                    errors++;
                  }
                }
              }
              if (data170.M !== void 0) {
                let data172 = data170.M;
                if (!(typeof data172 == "number" && (!(data172 % 1) && !isNaN(data172)) && isFinite(data172))) {
                  const err479 = { instancePath: instancePath + "/numbers/code-width/M", schemaPath: "#/properties/numbers/properties/code-width/properties/M/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err479];
                  } else {
                    vErrors.push(err479);
                  }
                  errors++;
                }
                if (typeof data172 == "number" && isFinite(data172)) {
                  if (data172 > 4 || isNaN(data172)) {
                    const err480 = { instancePath: instancePath + "/numbers/code-width/M", schemaPath: "#/properties/numbers/properties/code-width/properties/M/maximum", keyword: "maximum", params: { comparison: "<=", limit: 4 }, message: "must be <= 4" };
                    if (vErrors === null) {
                      vErrors = [err480];
                    } else {
                      vErrors.push(err480);
                    }
                    errors++;
                  }
                  if (data172 < 1 || isNaN(data172)) {
                    const err481 = { instancePath: instancePath + "/numbers/code-width/M", schemaPath: "#/properties/numbers/properties/code-width/properties/M/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err481];
                    } else {
                      vErrors.push(err481);
                    }
                    errors++;
                  }
                }
              }
              if (data170.T !== void 0) {
                let data173 = data170.T;
                if (!(typeof data173 == "number" && (!(data173 % 1) && !isNaN(data173)) && isFinite(data173))) {
                  const err482 = { instancePath: instancePath + "/numbers/code-width/T", schemaPath: "#/properties/numbers/properties/code-width/properties/T/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err482];
                  } else {
                    vErrors.push(err482);
                  }
                  errors++;
                }
                if (typeof data173 == "number" && isFinite(data173)) {
                  if (data173 > 4 || isNaN(data173)) {
                    const err483 = { instancePath: instancePath + "/numbers/code-width/T", schemaPath: "#/properties/numbers/properties/code-width/properties/T/maximum", keyword: "maximum", params: { comparison: "<=", limit: 4 }, message: "must be <= 4" };
                    if (vErrors === null) {
                      vErrors = [err483];
                    } else {
                      vErrors.push(err483);
                    }
                    errors++;
                  }
                  if (data173 < 1 || isNaN(data173)) {
                    const err484 = { instancePath: instancePath + "/numbers/code-width/T", schemaPath: "#/properties/numbers/properties/code-width/properties/T/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err484];
                    } else {
                      vErrors.push(err484);
                    }
                    errors++;
                  }
                }
              }
              if (data170.H !== void 0) {
                let data174 = data170.H;
                if (!(typeof data174 == "number" && (!(data174 % 1) && !isNaN(data174)) && isFinite(data174))) {
                  const err485 = { instancePath: instancePath + "/numbers/code-width/H", schemaPath: "#/properties/numbers/properties/code-width/properties/H/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err485];
                  } else {
                    vErrors.push(err485);
                  }
                  errors++;
                }
                if (typeof data174 == "number" && isFinite(data174)) {
                  if (data174 > 4 || isNaN(data174)) {
                    const err486 = { instancePath: instancePath + "/numbers/code-width/H", schemaPath: "#/properties/numbers/properties/code-width/properties/H/maximum", keyword: "maximum", params: { comparison: "<=", limit: 4 }, message: "must be <= 4" };
                    if (vErrors === null) {
                      vErrors = [err486];
                    } else {
                      vErrors.push(err486);
                    }
                    errors++;
                  }
                  if (data174 < 1 || isNaN(data174)) {
                    const err487 = { instancePath: instancePath + "/numbers/code-width/H", schemaPath: "#/properties/numbers/properties/code-width/properties/H/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err487];
                    } else {
                      vErrors.push(err487);
                    }
                    errors++;
                  }
                }
              }
              if (data170.D !== void 0) {
                let data175 = data170.D;
                if (!(typeof data175 == "number" && (!(data175 % 1) && !isNaN(data175)) && isFinite(data175))) {
                  const err488 = { instancePath: instancePath + "/numbers/code-width/D", schemaPath: "#/properties/numbers/properties/code-width/properties/D/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err488];
                  } else {
                    vErrors.push(err488);
                  }
                  errors++;
                }
                if (typeof data175 == "number" && isFinite(data175)) {
                  if (data175 > 4 || isNaN(data175)) {
                    const err489 = { instancePath: instancePath + "/numbers/code-width/D", schemaPath: "#/properties/numbers/properties/code-width/properties/D/maximum", keyword: "maximum", params: { comparison: "<=", limit: 4 }, message: "must be <= 4" };
                    if (vErrors === null) {
                      vErrors = [err489];
                    } else {
                      vErrors.push(err489);
                    }
                    errors++;
                  }
                  if (data175 < 1 || isNaN(data175)) {
                    const err490 = { instancePath: instancePath + "/numbers/code-width/D", schemaPath: "#/properties/numbers/properties/code-width/properties/D/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err490];
                    } else {
                      vErrors.push(err490);
                    }
                    errors++;
                  }
                }
              }
            } else {
              const err491 = { instancePath: instancePath + "/numbers/code-width", schemaPath: "#/properties/numbers/properties/code-width/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err491];
              } else {
                vErrors.push(err491);
              }
              errors++;
            }
          }
        } else {
          const err492 = { instancePath: instancePath + "/numbers", schemaPath: "#/properties/numbers/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err492];
          } else {
            vErrors.push(err492);
          }
          errors++;
        }
      }
      if (data.modal !== void 0) {
        let data176 = data.modal;
        if (data176 && typeof data176 == "object" && !Array.isArray(data176)) {
          for (const key22 in data176) {
            if (!(key22 === "motion" || key22 === "axes" || key22 === "arc-end" || key22 === "arc-centre" || key22 === "feed" || key22 === "speed")) {
              const err493 = { instancePath: instancePath + "/modal", schemaPath: "#/properties/modal/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key22 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err493];
              } else {
                vErrors.push(err493);
              }
              errors++;
            }
          }
          if (data176.motion !== void 0) {
            let data177 = data176.motion;
            if (typeof data177 !== "string") {
              const err494 = { instancePath: instancePath + "/modal/motion", schemaPath: "#/properties/modal/properties/motion/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err494];
              } else {
                vErrors.push(err494);
              }
              errors++;
            }
            if (!(data177 === "modal" || data177 === "each-block")) {
              const err495 = { instancePath: instancePath + "/modal/motion", schemaPath: "#/properties/modal/properties/motion/enum", keyword: "enum", params: { allowedValues: schema31.properties.modal.properties.motion.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err495];
              } else {
                vErrors.push(err495);
              }
              errors++;
            }
          }
          if (data176.axes !== void 0) {
            let data178 = data176.axes;
            if (typeof data178 !== "string") {
              const err496 = { instancePath: instancePath + "/modal/axes", schemaPath: "#/properties/modal/properties/axes/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err496];
              } else {
                vErrors.push(err496);
              }
              errors++;
            }
            if (!(data178 === "changed" || data178 === "all")) {
              const err497 = { instancePath: instancePath + "/modal/axes", schemaPath: "#/properties/modal/properties/axes/enum", keyword: "enum", params: { allowedValues: schema31.properties.modal.properties.axes.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err497];
              } else {
                vErrors.push(err497);
              }
              errors++;
            }
          }
          if (data176["arc-end"] !== void 0) {
            let data179 = data176["arc-end"];
            if (typeof data179 !== "string") {
              const err498 = { instancePath: instancePath + "/modal/arc-end", schemaPath: "#/properties/modal/properties/arc-end/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err498];
              } else {
                vErrors.push(err498);
              }
              errors++;
            }
            if (!(data179 === "changed" || data179 === "both")) {
              const err499 = { instancePath: instancePath + "/modal/arc-end", schemaPath: "#/properties/modal/properties/arc-end/enum", keyword: "enum", params: { allowedValues: schema31.properties.modal.properties["arc-end"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err499];
              } else {
                vErrors.push(err499);
              }
              errors++;
            }
          }
          if (data176["arc-centre"] !== void 0) {
            let data180 = data176["arc-centre"];
            if (typeof data180 !== "string") {
              const err500 = { instancePath: instancePath + "/modal/arc-centre", schemaPath: "#/properties/modal/properties/arc-centre/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err500];
              } else {
                vErrors.push(err500);
              }
              errors++;
            }
            if (!(data180 === "non-zero" || data180 === "both")) {
              const err501 = { instancePath: instancePath + "/modal/arc-centre", schemaPath: "#/properties/modal/properties/arc-centre/enum", keyword: "enum", params: { allowedValues: schema31.properties.modal.properties["arc-centre"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err501];
              } else {
                vErrors.push(err501);
              }
              errors++;
            }
          }
          if (data176.feed !== void 0) {
            let data181 = data176.feed;
            if (typeof data181 !== "string") {
              const err502 = { instancePath: instancePath + "/modal/feed", schemaPath: "#/properties/modal/properties/feed/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err502];
              } else {
                vErrors.push(err502);
              }
              errors++;
            }
            if (!(data181 === "modal" || data181 === "after-rapid" || data181 === "each-block")) {
              const err503 = { instancePath: instancePath + "/modal/feed", schemaPath: "#/properties/modal/properties/feed/enum", keyword: "enum", params: { allowedValues: schema31.properties.modal.properties.feed.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err503];
              } else {
                vErrors.push(err503);
              }
              errors++;
            }
          }
          if (data176.speed !== void 0) {
            let data182 = data176.speed;
            if (typeof data182 !== "string") {
              const err504 = { instancePath: instancePath + "/modal/speed", schemaPath: "#/properties/modal/properties/speed/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err504];
              } else {
                vErrors.push(err504);
              }
              errors++;
            }
            if (!(data182 === "each-start" || data182 === "changed")) {
              const err505 = { instancePath: instancePath + "/modal/speed", schemaPath: "#/properties/modal/properties/speed/enum", keyword: "enum", params: { allowedValues: schema31.properties.modal.properties.speed.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err505];
              } else {
                vErrors.push(err505);
              }
              errors++;
            }
          }
        } else {
          const err506 = { instancePath: instancePath + "/modal", schemaPath: "#/properties/modal/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err506];
          } else {
            vErrors.push(err506);
          }
          errors++;
        }
      }
      if (data.axes !== void 0) {
        let data183 = data.axes;
        if (data183 && typeof data183 == "object" && !Array.isArray(data183)) {
          for (const key23 in data183) {
            if (!(key23 === "x" || key23 === "y" || key23 === "z" || key23 === "a" || key23 === "b" || key23 === "c")) {
              const err507 = { instancePath: instancePath + "/axes", schemaPath: "#/properties/axes/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key23 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err507];
              } else {
                vErrors.push(err507);
              }
              errors++;
            }
          }
          if (data183.x !== void 0) {
            let data184 = data183.x;
            if (typeof data184 !== "string") {
              const err508 = { instancePath: instancePath + "/axes/x", schemaPath: "#/$defs/axisLetter/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err508];
              } else {
                vErrors.push(err508);
              }
              errors++;
            }
            if (!(data184 === "X" || data184 === "Y" || data184 === "Z" || data184 === "A" || data184 === "B" || data184 === "C" || data184 === "U" || data184 === "V" || data184 === "W")) {
              const err509 = { instancePath: instancePath + "/axes/x", schemaPath: "#/$defs/axisLetter/enum", keyword: "enum", params: { allowedValues: schema113.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err509];
              } else {
                vErrors.push(err509);
              }
              errors++;
            }
          }
          if (data183.y !== void 0) {
            let data185 = data183.y;
            if (typeof data185 !== "string") {
              const err510 = { instancePath: instancePath + "/axes/y", schemaPath: "#/$defs/axisLetter/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err510];
              } else {
                vErrors.push(err510);
              }
              errors++;
            }
            if (!(data185 === "X" || data185 === "Y" || data185 === "Z" || data185 === "A" || data185 === "B" || data185 === "C" || data185 === "U" || data185 === "V" || data185 === "W")) {
              const err511 = { instancePath: instancePath + "/axes/y", schemaPath: "#/$defs/axisLetter/enum", keyword: "enum", params: { allowedValues: schema113.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err511];
              } else {
                vErrors.push(err511);
              }
              errors++;
            }
          }
          if (data183.z !== void 0) {
            let data186 = data183.z;
            if (typeof data186 !== "string") {
              const err512 = { instancePath: instancePath + "/axes/z", schemaPath: "#/$defs/axisLetter/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err512];
              } else {
                vErrors.push(err512);
              }
              errors++;
            }
            if (!(data186 === "X" || data186 === "Y" || data186 === "Z" || data186 === "A" || data186 === "B" || data186 === "C" || data186 === "U" || data186 === "V" || data186 === "W")) {
              const err513 = { instancePath: instancePath + "/axes/z", schemaPath: "#/$defs/axisLetter/enum", keyword: "enum", params: { allowedValues: schema113.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err513];
              } else {
                vErrors.push(err513);
              }
              errors++;
            }
          }
          if (data183.a !== void 0) {
            let data187 = data183.a;
            if (typeof data187 !== "string") {
              const err514 = { instancePath: instancePath + "/axes/a", schemaPath: "#/$defs/axisLetter/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err514];
              } else {
                vErrors.push(err514);
              }
              errors++;
            }
            if (!(data187 === "X" || data187 === "Y" || data187 === "Z" || data187 === "A" || data187 === "B" || data187 === "C" || data187 === "U" || data187 === "V" || data187 === "W")) {
              const err515 = { instancePath: instancePath + "/axes/a", schemaPath: "#/$defs/axisLetter/enum", keyword: "enum", params: { allowedValues: schema113.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err515];
              } else {
                vErrors.push(err515);
              }
              errors++;
            }
          }
          if (data183.b !== void 0) {
            let data188 = data183.b;
            if (typeof data188 !== "string") {
              const err516 = { instancePath: instancePath + "/axes/b", schemaPath: "#/$defs/axisLetter/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err516];
              } else {
                vErrors.push(err516);
              }
              errors++;
            }
            if (!(data188 === "X" || data188 === "Y" || data188 === "Z" || data188 === "A" || data188 === "B" || data188 === "C" || data188 === "U" || data188 === "V" || data188 === "W")) {
              const err517 = { instancePath: instancePath + "/axes/b", schemaPath: "#/$defs/axisLetter/enum", keyword: "enum", params: { allowedValues: schema113.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err517];
              } else {
                vErrors.push(err517);
              }
              errors++;
            }
          }
          if (data183.c !== void 0) {
            let data189 = data183.c;
            if (typeof data189 !== "string") {
              const err518 = { instancePath: instancePath + "/axes/c", schemaPath: "#/$defs/axisLetter/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err518];
              } else {
                vErrors.push(err518);
              }
              errors++;
            }
            if (!(data189 === "X" || data189 === "Y" || data189 === "Z" || data189 === "A" || data189 === "B" || data189 === "C" || data189 === "U" || data189 === "V" || data189 === "W")) {
              const err519 = { instancePath: instancePath + "/axes/c", schemaPath: "#/$defs/axisLetter/enum", keyword: "enum", params: { allowedValues: schema113.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err519];
              } else {
                vErrors.push(err519);
              }
              errors++;
            }
          }
        } else {
          const err520 = { instancePath: instancePath + "/axes", schemaPath: "#/properties/axes/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err520];
          } else {
            vErrors.push(err520);
          }
          errors++;
        }
      }
      if (data.motion !== void 0) {
        let data190 = data.motion;
        if (data190 && typeof data190 == "object" && !Array.isArray(data190)) {
          for (const key24 in data190) {
            if (!(key24 === "rapid" || key24 === "line" || key24 === "rapids" || key24 === "rapid-axes" || key24 === "axes-at-once" || key24 === "rapid-feed" || key24 === "machine-move-lasts")) {
              const err521 = { instancePath: instancePath + "/motion", schemaPath: "#/properties/motion/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key24 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err521];
              } else {
                vErrors.push(err521);
              }
              errors++;
            }
          }
          if (data190.rapid !== void 0) {
            let data191 = data190.rapid;
            if (typeof data191 === "string") {
              if (!pattern8.test(data191)) {
                const err522 = { instancePath: instancePath + "/motion/rapid", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err522];
                } else {
                  vErrors.push(err522);
                }
                errors++;
              }
            } else {
              const err523 = { instancePath: instancePath + "/motion/rapid", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err523];
              } else {
                vErrors.push(err523);
              }
              errors++;
            }
          }
          if (data190.line !== void 0) {
            let data192 = data190.line;
            if (typeof data192 === "string") {
              if (!pattern8.test(data192)) {
                const err524 = { instancePath: instancePath + "/motion/line", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err524];
                } else {
                  vErrors.push(err524);
                }
                errors++;
              }
            } else {
              const err525 = { instancePath: instancePath + "/motion/line", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err525];
              } else {
                vErrors.push(err525);
              }
              errors++;
            }
          }
          if (data190.rapids !== void 0) {
            let data193 = data190.rapids;
            if (typeof data193 !== "string") {
              const err526 = { instancePath: instancePath + "/motion/rapids", schemaPath: "#/properties/motion/properties/rapids/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err526];
              } else {
                vErrors.push(err526);
              }
              errors++;
            }
            if (!(data193 === "straight" || data193 === "dog-leg")) {
              const err527 = { instancePath: instancePath + "/motion/rapids", schemaPath: "#/properties/motion/properties/rapids/enum", keyword: "enum", params: { allowedValues: schema31.properties.motion.properties.rapids.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err527];
              } else {
                vErrors.push(err527);
              }
              errors++;
            }
          }
          if (data190["rapid-axes"] !== void 0) {
            let data194 = data190["rapid-axes"];
            if (typeof data194 !== "string") {
              const err528 = { instancePath: instancePath + "/motion/rapid-axes", schemaPath: "#/properties/motion/properties/rapid-axes/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err528];
              } else {
                vErrors.push(err528);
              }
              errors++;
            }
            if (!(data194 === "together" || data194 === "one-at-a-time")) {
              const err529 = { instancePath: instancePath + "/motion/rapid-axes", schemaPath: "#/properties/motion/properties/rapid-axes/enum", keyword: "enum", params: { allowedValues: schema31.properties.motion.properties["rapid-axes"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err529];
              } else {
                vErrors.push(err529);
              }
              errors++;
            }
          }
          if (data190["axes-at-once"] !== void 0) {
            let data195 = data190["axes-at-once"];
            if (!(typeof data195 == "number" && (!(data195 % 1) && !isNaN(data195)) && isFinite(data195))) {
              const err530 = { instancePath: instancePath + "/motion/axes-at-once", schemaPath: "#/properties/motion/properties/axes-at-once/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
              if (vErrors === null) {
                vErrors = [err530];
              } else {
                vErrors.push(err530);
              }
              errors++;
            }
            if (typeof data195 == "number" && isFinite(data195)) {
              if (data195 > 6 || isNaN(data195)) {
                const err531 = { instancePath: instancePath + "/motion/axes-at-once", schemaPath: "#/properties/motion/properties/axes-at-once/maximum", keyword: "maximum", params: { comparison: "<=", limit: 6 }, message: "must be <= 6" };
                if (vErrors === null) {
                  vErrors = [err531];
                } else {
                  vErrors.push(err531);
                }
                errors++;
              }
              if (data195 < 2 || isNaN(data195)) {
                const err532 = { instancePath: instancePath + "/motion/axes-at-once", schemaPath: "#/properties/motion/properties/axes-at-once/minimum", keyword: "minimum", params: { comparison: ">=", limit: 2 }, message: "must be >= 2" };
                if (vErrors === null) {
                  vErrors = [err532];
                } else {
                  vErrors.push(err532);
                }
                errors++;
              }
            }
          }
          if (data190["rapid-feed"] !== void 0) {
            let data196 = data190["rapid-feed"];
            const _errs591 = errors;
            let valid149 = false;
            const _errs592 = errors;
            if (typeof data196 !== "string") {
              const err533 = { instancePath: instancePath + "/motion/rapid-feed", schemaPath: "#/properties/motion/properties/rapid-feed/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err533];
              } else {
                vErrors.push(err533);
              }
              errors++;
            }
            if ("none" !== data196) {
              const err534 = { instancePath: instancePath + "/motion/rapid-feed", schemaPath: "#/properties/motion/properties/rapid-feed/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
              if (vErrors === null) {
                vErrors = [err534];
              } else {
                vErrors.push(err534);
              }
              errors++;
            }
            var _valid21 = _errs592 === errors;
            valid149 = valid149 || _valid21;
            const _errs594 = errors;
            const _errs596 = errors;
            let valid151 = false;
            const _errs597 = errors;
            if (typeof data196 == "number" && isFinite(data196)) {
              if (data196 > 1e6 || isNaN(data196)) {
                const err535 = { instancePath: instancePath + "/motion/rapid-feed", schemaPath: "#/$defs/feed/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                if (vErrors === null) {
                  vErrors = [err535];
                } else {
                  vErrors.push(err535);
                }
                errors++;
              }
              if (data196 <= 0 || isNaN(data196)) {
                const err536 = { instancePath: instancePath + "/motion/rapid-feed", schemaPath: "#/$defs/feed/anyOf/0/exclusiveMinimum", keyword: "exclusiveMinimum", params: { comparison: ">", limit: 0 }, message: "must be > 0" };
                if (vErrors === null) {
                  vErrors = [err536];
                } else {
                  vErrors.push(err536);
                }
                errors++;
              }
            } else {
              const err537 = { instancePath: instancePath + "/motion/rapid-feed", schemaPath: "#/$defs/feed/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
              if (vErrors === null) {
                vErrors = [err537];
              } else {
                vErrors.push(err537);
              }
              errors++;
            }
            var _valid22 = _errs597 === errors;
            valid151 = valid151 || _valid22;
            const _errs599 = errors;
            if (typeof data196 === "string") {
              if (!pattern10.test(data196)) {
                const err538 = { instancePath: instancePath + "/motion/rapid-feed", schemaPath: "#/$defs/feed/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^\\d{1,5}(\\.\\d{1,5})? (mm|in)/min$" }, message: 'must match pattern "^\\d{1,5}(\\.\\d{1,5})? (mm|in)/min$"' };
                if (vErrors === null) {
                  vErrors = [err538];
                } else {
                  vErrors.push(err538);
                }
                errors++;
              }
            } else {
              const err539 = { instancePath: instancePath + "/motion/rapid-feed", schemaPath: "#/$defs/feed/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err539];
              } else {
                vErrors.push(err539);
              }
              errors++;
            }
            var _valid22 = _errs599 === errors;
            valid151 = valid151 || _valid22;
            if (!valid151) {
              const err540 = { instancePath: instancePath + "/motion/rapid-feed", schemaPath: "#/$defs/feed/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err540];
              } else {
                vErrors.push(err540);
              }
              errors++;
            } else {
              errors = _errs596;
              if (vErrors !== null) {
                if (_errs596) {
                  vErrors.length = _errs596;
                } else {
                  vErrors = null;
                }
              }
            }
            var _valid21 = _errs594 === errors;
            valid149 = valid149 || _valid21;
            if (!valid149) {
              const err541 = { instancePath: instancePath + "/motion/rapid-feed", schemaPath: "#/properties/motion/properties/rapid-feed/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err541];
              } else {
                vErrors.push(err541);
              }
              errors++;
            } else {
              errors = _errs591;
              if (vErrors !== null) {
                if (_errs591) {
                  vErrors.length = _errs591;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data190["machine-move-lasts"] !== void 0) {
            let data197 = data190["machine-move-lasts"];
            if (typeof data197 !== "string") {
              const err542 = { instancePath: instancePath + "/motion/machine-move-lasts", schemaPath: "#/properties/motion/properties/machine-move-lasts/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err542];
              } else {
                vErrors.push(err542);
              }
              errors++;
            }
            if (!(data197 === "block" || data197 === "until-work-offset")) {
              const err543 = { instancePath: instancePath + "/motion/machine-move-lasts", schemaPath: "#/properties/motion/properties/machine-move-lasts/enum", keyword: "enum", params: { allowedValues: schema31.properties.motion.properties["machine-move-lasts"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err543];
              } else {
                vErrors.push(err543);
              }
              errors++;
            }
          }
        } else {
          const err544 = { instancePath: instancePath + "/motion", schemaPath: "#/properties/motion/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err544];
          } else {
            vErrors.push(err544);
          }
          errors++;
        }
      }
      if (data.units !== void 0) {
        let data198 = data.units;
        if (data198 && typeof data198 == "object" && !Array.isArray(data198)) {
          for (const key25 in data198) {
            if (!(key25 === "mm" || key25 === "inch" || key25 === "programs-in" || key25 === "stated")) {
              const err545 = { instancePath: instancePath + "/units", schemaPath: "#/properties/units/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key25 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err545];
              } else {
                vErrors.push(err545);
              }
              errors++;
            }
          }
          if (data198.mm !== void 0) {
            let data199 = data198.mm;
            if (typeof data199 === "string") {
              if (!pattern8.test(data199)) {
                const err546 = { instancePath: instancePath + "/units/mm", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err546];
                } else {
                  vErrors.push(err546);
                }
                errors++;
              }
            } else {
              const err547 = { instancePath: instancePath + "/units/mm", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err547];
              } else {
                vErrors.push(err547);
              }
              errors++;
            }
          }
          if (data198.inch !== void 0) {
            let data200 = data198.inch;
            if (typeof data200 === "string") {
              if (!pattern8.test(data200)) {
                const err548 = { instancePath: instancePath + "/units/inch", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err548];
                } else {
                  vErrors.push(err548);
                }
                errors++;
              }
            } else {
              const err549 = { instancePath: instancePath + "/units/inch", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err549];
              } else {
                vErrors.push(err549);
              }
              errors++;
            }
          }
          if (data198["programs-in"] !== void 0) {
            let data201 = data198["programs-in"];
            if (typeof data201 !== "string") {
              const err550 = { instancePath: instancePath + "/units/programs-in", schemaPath: "#/properties/units/properties/programs-in/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err550];
              } else {
                vErrors.push(err550);
              }
              errors++;
            }
            if (!(data201 === "job" || data201 === "mm" || data201 === "inch")) {
              const err551 = { instancePath: instancePath + "/units/programs-in", schemaPath: "#/properties/units/properties/programs-in/enum", keyword: "enum", params: { allowedValues: schema31.properties.units.properties["programs-in"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err551];
              } else {
                vErrors.push(err551);
              }
              errors++;
            }
          }
          if (data198.stated !== void 0) {
            let data202 = data198.stated;
            if (typeof data202 !== "string") {
              const err552 = { instancePath: instancePath + "/units/stated", schemaPath: "#/properties/units/properties/stated/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err552];
              } else {
                vErrors.push(err552);
              }
              errors++;
            }
            if (!(data202 === "with-modes" || data202 === "first-block")) {
              const err553 = { instancePath: instancePath + "/units/stated", schemaPath: "#/properties/units/properties/stated/enum", keyword: "enum", params: { allowedValues: schema31.properties.units.properties.stated.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err553];
              } else {
                vErrors.push(err553);
              }
              errors++;
            }
          }
        } else {
          const err554 = { instancePath: instancePath + "/units", schemaPath: "#/properties/units/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err554];
          } else {
            vErrors.push(err554);
          }
          errors++;
        }
      }
      if (data.plane !== void 0) {
        let data203 = data.plane;
        if (data203 && typeof data203 == "object" && !Array.isArray(data203)) {
          for (const key26 in data203) {
            if (!(key26 === "xy" || key26 === "zx" || key26 === "yz")) {
              const err555 = { instancePath: instancePath + "/plane", schemaPath: "#/properties/plane/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key26 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err555];
              } else {
                vErrors.push(err555);
              }
              errors++;
            }
          }
          if (data203.xy !== void 0) {
            let data204 = data203.xy;
            if (typeof data204 === "string") {
              if (!pattern8.test(data204)) {
                const err556 = { instancePath: instancePath + "/plane/xy", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err556];
                } else {
                  vErrors.push(err556);
                }
                errors++;
              }
            } else {
              const err557 = { instancePath: instancePath + "/plane/xy", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err557];
              } else {
                vErrors.push(err557);
              }
              errors++;
            }
          }
          if (data203.zx !== void 0) {
            let data205 = data203.zx;
            if (typeof data205 === "string") {
              if (!pattern8.test(data205)) {
                const err558 = { instancePath: instancePath + "/plane/zx", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err558];
                } else {
                  vErrors.push(err558);
                }
                errors++;
              }
            } else {
              const err559 = { instancePath: instancePath + "/plane/zx", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err559];
              } else {
                vErrors.push(err559);
              }
              errors++;
            }
          }
          if (data203.yz !== void 0) {
            let data206 = data203.yz;
            if (typeof data206 === "string") {
              if (!pattern8.test(data206)) {
                const err560 = { instancePath: instancePath + "/plane/yz", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err560];
                } else {
                  vErrors.push(err560);
                }
                errors++;
              }
            } else {
              const err561 = { instancePath: instancePath + "/plane/yz", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err561];
              } else {
                vErrors.push(err561);
              }
              errors++;
            }
          }
        } else {
          const err562 = { instancePath: instancePath + "/plane", schemaPath: "#/properties/plane/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err562];
          } else {
            vErrors.push(err562);
          }
          errors++;
        }
      }
      if (data.distance !== void 0) {
        let data207 = data.distance;
        if (data207 && typeof data207 == "object" && !Array.isArray(data207)) {
          for (const key27 in data207) {
            if (!(key27 === "absolute" || key27 === "incremental" || key27 === "programs-in")) {
              const err563 = { instancePath: instancePath + "/distance", schemaPath: "#/properties/distance/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key27 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err563];
              } else {
                vErrors.push(err563);
              }
              errors++;
            }
          }
          if (data207.absolute !== void 0) {
            let data208 = data207.absolute;
            if (typeof data208 === "string") {
              if (!pattern8.test(data208)) {
                const err564 = { instancePath: instancePath + "/distance/absolute", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err564];
                } else {
                  vErrors.push(err564);
                }
                errors++;
              }
            } else {
              const err565 = { instancePath: instancePath + "/distance/absolute", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err565];
              } else {
                vErrors.push(err565);
              }
              errors++;
            }
          }
          if (data207.incremental !== void 0) {
            let data209 = data207.incremental;
            if (typeof data209 === "string") {
              if (!pattern8.test(data209)) {
                const err566 = { instancePath: instancePath + "/distance/incremental", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err566];
                } else {
                  vErrors.push(err566);
                }
                errors++;
              }
            } else {
              const err567 = { instancePath: instancePath + "/distance/incremental", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err567];
              } else {
                vErrors.push(err567);
              }
              errors++;
            }
          }
          if (data207["programs-in"] !== void 0) {
            let data210 = data207["programs-in"];
            if (typeof data210 !== "string") {
              const err568 = { instancePath: instancePath + "/distance/programs-in", schemaPath: "#/properties/distance/properties/programs-in/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err568];
              } else {
                vErrors.push(err568);
              }
              errors++;
            }
            if (!(data210 === "absolute" || data210 === "incremental")) {
              const err569 = { instancePath: instancePath + "/distance/programs-in", schemaPath: "#/properties/distance/properties/programs-in/enum", keyword: "enum", params: { allowedValues: schema31.properties.distance.properties["programs-in"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err569];
              } else {
                vErrors.push(err569);
              }
              errors++;
            }
          }
        } else {
          const err570 = { instancePath: instancePath + "/distance", schemaPath: "#/properties/distance/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err570];
          } else {
            vErrors.push(err570);
          }
          errors++;
        }
      }
      if (data.arc !== void 0) {
        let data211 = data.arc;
        if (data211 && typeof data211 == "object" && !Array.isArray(data211)) {
          for (const key28 in data211) {
            if (!func1.call(schema31.properties.arc.properties, key28)) {
              const err571 = { instancePath: instancePath + "/arc", schemaPath: "#/properties/arc/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key28 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err571];
              } else {
                vErrors.push(err571);
              }
              errors++;
            }
          }
          if (data211.cw !== void 0) {
            let data212 = data211.cw;
            if (typeof data212 === "string") {
              if (!pattern8.test(data212)) {
                const err572 = { instancePath: instancePath + "/arc/cw", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err572];
                } else {
                  vErrors.push(err572);
                }
                errors++;
              }
            } else {
              const err573 = { instancePath: instancePath + "/arc/cw", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err573];
              } else {
                vErrors.push(err573);
              }
              errors++;
            }
          }
          if (data211.ccw !== void 0) {
            let data213 = data211.ccw;
            if (typeof data213 === "string") {
              if (!pattern8.test(data213)) {
                const err574 = { instancePath: instancePath + "/arc/ccw", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err574];
                } else {
                  vErrors.push(err574);
                }
                errors++;
              }
            } else {
              const err575 = { instancePath: instancePath + "/arc/ccw", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err575];
              } else {
                vErrors.push(err575);
              }
              errors++;
            }
          }
          if (data211.form !== void 0) {
            let data214 = data211.form;
            if (typeof data214 !== "string") {
              const err576 = { instancePath: instancePath + "/arc/form", schemaPath: "#/properties/arc/properties/form/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err576];
              } else {
                vErrors.push(err576);
              }
              errors++;
            }
            if (!(data214 === "incremental-centre" || data214 === "absolute-centre" || data214 === "radius" || data214 === "none")) {
              const err577 = { instancePath: instancePath + "/arc/form", schemaPath: "#/properties/arc/properties/form/enum", keyword: "enum", params: { allowedValues: schema31.properties.arc.properties.form.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err577];
              } else {
                vErrors.push(err577);
              }
              errors++;
            }
          }
          if (data211["centre-words"] !== void 0) {
            let data215 = data211["centre-words"];
            if (data215 && typeof data215 == "object" && !Array.isArray(data215)) {
              for (const key29 in data215) {
                if (!(key29 === "absolute" || key29 === "incremental")) {
                  const err578 = { instancePath: instancePath + "/arc/centre-words", schemaPath: "#/properties/arc/properties/centre-words/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key29 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err578];
                  } else {
                    vErrors.push(err578);
                  }
                  errors++;
                }
              }
              if (data215.absolute !== void 0) {
                let data216 = data215.absolute;
                if (typeof data216 === "string") {
                  if (!pattern8.test(data216)) {
                    const err579 = { instancePath: instancePath + "/arc/centre-words/absolute", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                    if (vErrors === null) {
                      vErrors = [err579];
                    } else {
                      vErrors.push(err579);
                    }
                    errors++;
                  }
                } else {
                  const err580 = { instancePath: instancePath + "/arc/centre-words/absolute", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err580];
                  } else {
                    vErrors.push(err580);
                  }
                  errors++;
                }
              }
              if (data215.incremental !== void 0) {
                let data217 = data215.incremental;
                if (typeof data217 === "string") {
                  if (!pattern8.test(data217)) {
                    const err581 = { instancePath: instancePath + "/arc/centre-words/incremental", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                    if (vErrors === null) {
                      vErrors = [err581];
                    } else {
                      vErrors.push(err581);
                    }
                    errors++;
                  }
                } else {
                  const err582 = { instancePath: instancePath + "/arc/centre-words/incremental", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err582];
                  } else {
                    vErrors.push(err582);
                  }
                  errors++;
                }
              }
            } else {
              const err583 = { instancePath: instancePath + "/arc/centre-words", schemaPath: "#/properties/arc/properties/centre-words/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err583];
              } else {
                vErrors.push(err583);
              }
              errors++;
            }
          }
          if (data211["radius-word"] !== void 0) {
            let data218 = data211["radius-word"];
            if (typeof data218 === "string") {
              if (!pattern7.test(data218)) {
                const err584 = { instancePath: instancePath + "/arc/radius-word", schemaPath: "#/$defs/letter/pattern", keyword: "pattern", params: { pattern: "^[A-Z]$" }, message: 'must match pattern "^[A-Z]$"' };
                if (vErrors === null) {
                  vErrors = [err584];
                } else {
                  vErrors.push(err584);
                }
                errors++;
              }
            } else {
              const err585 = { instancePath: instancePath + "/arc/radius-word", schemaPath: "#/$defs/letter/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err585];
              } else {
                vErrors.push(err585);
              }
              errors++;
            }
          }
          if (data211.planes !== void 0) {
            let data219 = data211.planes;
            if (Array.isArray(data219)) {
              if (data219.length > 3) {
                const err586 = { instancePath: instancePath + "/arc/planes", schemaPath: "#/properties/arc/properties/planes/maxItems", keyword: "maxItems", params: { limit: 3 }, message: "must NOT have more than 3 items" };
                if (vErrors === null) {
                  vErrors = [err586];
                } else {
                  vErrors.push(err586);
                }
                errors++;
              }
              const len6 = data219.length;
              for (let i8 = 0; i8 < len6; i8++) {
                let data220 = data219[i8];
                if (typeof data220 !== "string") {
                  const err587 = { instancePath: instancePath + "/arc/planes/" + i8, schemaPath: "#/properties/arc/properties/planes/items/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err587];
                  } else {
                    vErrors.push(err587);
                  }
                  errors++;
                }
                if (!(data220 === "xy" || data220 === "zx" || data220 === "yz")) {
                  const err588 = { instancePath: instancePath + "/arc/planes/" + i8, schemaPath: "#/properties/arc/properties/planes/items/enum", keyword: "enum", params: { allowedValues: schema31.properties.arc.properties.planes.items.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err588];
                  } else {
                    vErrors.push(err588);
                  }
                  errors++;
                }
              }
              let i9 = data219.length;
              let j2;
              if (i9 > 1) {
                const indices1 = {};
                for (; i9--; ) {
                  let item1 = data219[i9];
                  if (typeof item1 !== "string") {
                    continue;
                  }
                  if (typeof indices1[item1] == "number") {
                    j2 = indices1[item1];
                    const err589 = { instancePath: instancePath + "/arc/planes", schemaPath: "#/properties/arc/properties/planes/uniqueItems", keyword: "uniqueItems", params: { i: i9, j: j2 }, message: "must NOT have duplicate items (items ## " + j2 + " and " + i9 + " are identical)" };
                    if (vErrors === null) {
                      vErrors = [err589];
                    } else {
                      vErrors.push(err589);
                    }
                    errors++;
                    break;
                  }
                  indices1[item1] = i9;
                }
              }
            } else {
              const err590 = { instancePath: instancePath + "/arc/planes", schemaPath: "#/properties/arc/properties/planes/type", keyword: "type", params: { type: "array" }, message: "must be array" };
              if (vErrors === null) {
                vErrors = [err590];
              } else {
                vErrors.push(err590);
              }
              errors++;
            }
          }
          if (data211["largest-sweep"] !== void 0) {
            let data221 = data211["largest-sweep"];
            if (typeof data221 == "number" && isFinite(data221)) {
              if (data221 > 360 || isNaN(data221)) {
                const err591 = { instancePath: instancePath + "/arc/largest-sweep", schemaPath: "#/properties/arc/properties/largest-sweep/maximum", keyword: "maximum", params: { comparison: "<=", limit: 360 }, message: "must be <= 360" };
                if (vErrors === null) {
                  vErrors = [err591];
                } else {
                  vErrors.push(err591);
                }
                errors++;
              }
              if (data221 <= 0 || isNaN(data221)) {
                const err592 = { instancePath: instancePath + "/arc/largest-sweep", schemaPath: "#/properties/arc/properties/largest-sweep/exclusiveMinimum", keyword: "exclusiveMinimum", params: { comparison: ">", limit: 0 }, message: "must be > 0" };
                if (vErrors === null) {
                  vErrors = [err592];
                } else {
                  vErrors.push(err592);
                }
                errors++;
              }
            } else {
              const err593 = { instancePath: instancePath + "/arc/largest-sweep", schemaPath: "#/properties/arc/properties/largest-sweep/type", keyword: "type", params: { type: "number" }, message: "must be number" };
              if (vErrors === null) {
                vErrors = [err593];
              } else {
                vErrors.push(err593);
              }
              errors++;
            }
          }
          if (data211.quadrants !== void 0) {
            let data222 = data211.quadrants;
            if (typeof data222 !== "string") {
              const err594 = { instancePath: instancePath + "/arc/quadrants", schemaPath: "#/properties/arc/properties/quadrants/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err594];
              } else {
                vErrors.push(err594);
              }
              errors++;
            }
            if (!(data222 === "any" || data222 === "one")) {
              const err595 = { instancePath: instancePath + "/arc/quadrants", schemaPath: "#/properties/arc/properties/quadrants/enum", keyword: "enum", params: { allowedValues: schema31.properties.arc.properties.quadrants.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err595];
              } else {
                vErrors.push(err595);
              }
              errors++;
            }
          }
          if (data211["full-circle"] !== void 0) {
            let data223 = data211["full-circle"];
            if (typeof data223 !== "string") {
              const err596 = { instancePath: instancePath + "/arc/full-circle", schemaPath: "#/$defs/yesNo/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err596];
              } else {
                vErrors.push(err596);
              }
              errors++;
            }
            if (!(data223 === "yes" || data223 === "no")) {
              const err597 = { instancePath: instancePath + "/arc/full-circle", schemaPath: "#/$defs/yesNo/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err597];
              } else {
                vErrors.push(err597);
              }
              errors++;
            }
          }
          if (data211.helix !== void 0) {
            let data224 = data211.helix;
            if (typeof data224 !== "string") {
              const err598 = { instancePath: instancePath + "/arc/helix", schemaPath: "#/$defs/yesNo/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err598];
              } else {
                vErrors.push(err598);
              }
              errors++;
            }
            if (!(data224 === "yes" || data224 === "no")) {
              const err599 = { instancePath: instancePath + "/arc/helix", schemaPath: "#/$defs/yesNo/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err599];
              } else {
                vErrors.push(err599);
              }
              errors++;
            }
          }
          if (data211["turns-word"] !== void 0) {
            let data225 = data211["turns-word"];
            if (typeof data225 === "string") {
              if (!pattern23.test(data225)) {
                const err600 = { instancePath: instancePath + "/arc/turns-word", schemaPath: "#/$defs/letterOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[A-Z])$" }, message: 'must match pattern "^(none|[A-Z])$"' };
                if (vErrors === null) {
                  vErrors = [err600];
                } else {
                  vErrors.push(err600);
                }
                errors++;
              }
            } else {
              const err601 = { instancePath: instancePath + "/arc/turns-word", schemaPath: "#/$defs/letterOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err601];
              } else {
                vErrors.push(err601);
              }
              errors++;
            }
          }
          if (data211["feed-along"] !== void 0) {
            let data226 = data211["feed-along"];
            if (typeof data226 !== "string") {
              const err602 = { instancePath: instancePath + "/arc/feed-along", schemaPath: "#/properties/arc/properties/feed-along/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err602];
              } else {
                vErrors.push(err602);
              }
              errors++;
            }
            if (!(data226 === "path" || data226 === "circle")) {
              const err603 = { instancePath: instancePath + "/arc/feed-along", schemaPath: "#/properties/arc/properties/feed-along/enum", keyword: "enum", params: { allowedValues: schema31.properties.arc.properties["feed-along"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err603];
              } else {
                vErrors.push(err603);
              }
              errors++;
            }
          }
          if (data211["smallest-radius"] !== void 0) {
            let data227 = data211["smallest-radius"];
            const _errs683 = errors;
            let valid176 = false;
            const _errs684 = errors;
            if (typeof data227 == "number" && isFinite(data227)) {
              if (data227 > 1e6 || isNaN(data227)) {
                const err604 = { instancePath: instancePath + "/arc/smallest-radius", schemaPath: "#/$defs/lengthOrNone/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                if (vErrors === null) {
                  vErrors = [err604];
                } else {
                  vErrors.push(err604);
                }
                errors++;
              }
              if (data227 < 0 || isNaN(data227)) {
                const err605 = { instancePath: instancePath + "/arc/smallest-radius", schemaPath: "#/$defs/lengthOrNone/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                if (vErrors === null) {
                  vErrors = [err605];
                } else {
                  vErrors.push(err605);
                }
                errors++;
              }
            } else {
              const err606 = { instancePath: instancePath + "/arc/smallest-radius", schemaPath: "#/$defs/lengthOrNone/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
              if (vErrors === null) {
                vErrors = [err606];
              } else {
                vErrors.push(err606);
              }
              errors++;
            }
            var _valid23 = _errs684 === errors;
            valid176 = valid176 || _valid23;
            const _errs686 = errors;
            if (typeof data227 === "string") {
              if (!pattern24.test(data227)) {
                const err607 = { instancePath: instancePath + "/arc/smallest-radius", schemaPath: "#/$defs/lengthOrNone/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^(none|\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }, message: 'must match pattern "^(none|\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$"' };
                if (vErrors === null) {
                  vErrors = [err607];
                } else {
                  vErrors.push(err607);
                }
                errors++;
              }
            } else {
              const err608 = { instancePath: instancePath + "/arc/smallest-radius", schemaPath: "#/$defs/lengthOrNone/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err608];
              } else {
                vErrors.push(err608);
              }
              errors++;
            }
            var _valid23 = _errs686 === errors;
            valid176 = valid176 || _valid23;
            if (!valid176) {
              const err609 = { instancePath: instancePath + "/arc/smallest-radius", schemaPath: "#/$defs/lengthOrNone/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err609];
              } else {
                vErrors.push(err609);
              }
              errors++;
            } else {
              errors = _errs683;
              if (vErrors !== null) {
                if (_errs683) {
                  vErrors.length = _errs683;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data211["largest-radius"] !== void 0) {
            let data228 = data211["largest-radius"];
            const _errs690 = errors;
            let valid178 = false;
            const _errs691 = errors;
            if (typeof data228 == "number" && isFinite(data228)) {
              if (data228 > 1e6 || isNaN(data228)) {
                const err610 = { instancePath: instancePath + "/arc/largest-radius", schemaPath: "#/$defs/lengthOrNone/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                if (vErrors === null) {
                  vErrors = [err610];
                } else {
                  vErrors.push(err610);
                }
                errors++;
              }
              if (data228 < 0 || isNaN(data228)) {
                const err611 = { instancePath: instancePath + "/arc/largest-radius", schemaPath: "#/$defs/lengthOrNone/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                if (vErrors === null) {
                  vErrors = [err611];
                } else {
                  vErrors.push(err611);
                }
                errors++;
              }
            } else {
              const err612 = { instancePath: instancePath + "/arc/largest-radius", schemaPath: "#/$defs/lengthOrNone/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
              if (vErrors === null) {
                vErrors = [err612];
              } else {
                vErrors.push(err612);
              }
              errors++;
            }
            var _valid24 = _errs691 === errors;
            valid178 = valid178 || _valid24;
            const _errs693 = errors;
            if (typeof data228 === "string") {
              if (!pattern24.test(data228)) {
                const err613 = { instancePath: instancePath + "/arc/largest-radius", schemaPath: "#/$defs/lengthOrNone/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^(none|\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }, message: 'must match pattern "^(none|\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$"' };
                if (vErrors === null) {
                  vErrors = [err613];
                } else {
                  vErrors.push(err613);
                }
                errors++;
              }
            } else {
              const err614 = { instancePath: instancePath + "/arc/largest-radius", schemaPath: "#/$defs/lengthOrNone/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err614];
              } else {
                vErrors.push(err614);
              }
              errors++;
            }
            var _valid24 = _errs693 === errors;
            valid178 = valid178 || _valid24;
            if (!valid178) {
              const err615 = { instancePath: instancePath + "/arc/largest-radius", schemaPath: "#/$defs/lengthOrNone/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err615];
              } else {
                vErrors.push(err615);
              }
              errors++;
            } else {
              errors = _errs690;
              if (vErrors !== null) {
                if (_errs690) {
                  vErrors.length = _errs690;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data211.tolerance !== void 0) {
            let data229 = data211.tolerance;
            if (data229 && typeof data229 == "object" && !Array.isArray(data229)) {
              for (const key30 in data229) {
                if (!(key30 === "mm" || key30 === "inch" || key30 === "relative")) {
                  const err616 = { instancePath: instancePath + "/arc/tolerance", schemaPath: "#/properties/arc/properties/tolerance/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key30 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err616];
                  } else {
                    vErrors.push(err616);
                  }
                  errors++;
                }
              }
              if (data229.mm !== void 0) {
                let data230 = data229.mm;
                if (typeof data230 == "number" && isFinite(data230)) {
                  if (data230 > 10 || isNaN(data230)) {
                    const err617 = { instancePath: instancePath + "/arc/tolerance/mm", schemaPath: "#/properties/arc/properties/tolerance/properties/mm/maximum", keyword: "maximum", params: { comparison: "<=", limit: 10 }, message: "must be <= 10" };
                    if (vErrors === null) {
                      vErrors = [err617];
                    } else {
                      vErrors.push(err617);
                    }
                    errors++;
                  }
                  if (data230 < 0 || isNaN(data230)) {
                    const err618 = { instancePath: instancePath + "/arc/tolerance/mm", schemaPath: "#/properties/arc/properties/tolerance/properties/mm/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err618];
                    } else {
                      vErrors.push(err618);
                    }
                    errors++;
                  }
                } else {
                  const err619 = { instancePath: instancePath + "/arc/tolerance/mm", schemaPath: "#/properties/arc/properties/tolerance/properties/mm/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                  if (vErrors === null) {
                    vErrors = [err619];
                  } else {
                    vErrors.push(err619);
                  }
                  errors++;
                }
              }
              if (data229.inch !== void 0) {
                let data231 = data229.inch;
                if (typeof data231 == "number" && isFinite(data231)) {
                  if (data231 > 1 || isNaN(data231)) {
                    const err620 = { instancePath: instancePath + "/arc/tolerance/inch", schemaPath: "#/properties/arc/properties/tolerance/properties/inch/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1 }, message: "must be <= 1" };
                    if (vErrors === null) {
                      vErrors = [err620];
                    } else {
                      vErrors.push(err620);
                    }
                    errors++;
                  }
                  if (data231 < 0 || isNaN(data231)) {
                    const err621 = { instancePath: instancePath + "/arc/tolerance/inch", schemaPath: "#/properties/arc/properties/tolerance/properties/inch/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err621];
                    } else {
                      vErrors.push(err621);
                    }
                    errors++;
                  }
                } else {
                  const err622 = { instancePath: instancePath + "/arc/tolerance/inch", schemaPath: "#/properties/arc/properties/tolerance/properties/inch/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                  if (vErrors === null) {
                    vErrors = [err622];
                  } else {
                    vErrors.push(err622);
                  }
                  errors++;
                }
              }
              if (data229.relative !== void 0) {
                let data232 = data229.relative;
                if (typeof data232 == "number" && isFinite(data232)) {
                  if (data232 > 0.01 || isNaN(data232)) {
                    const err623 = { instancePath: instancePath + "/arc/tolerance/relative", schemaPath: "#/properties/arc/properties/tolerance/properties/relative/maximum", keyword: "maximum", params: { comparison: "<=", limit: 0.01 }, message: "must be <= 0.01" };
                    if (vErrors === null) {
                      vErrors = [err623];
                    } else {
                      vErrors.push(err623);
                    }
                    errors++;
                  }
                  if (data232 < 0 || isNaN(data232)) {
                    const err624 = { instancePath: instancePath + "/arc/tolerance/relative", schemaPath: "#/properties/arc/properties/tolerance/properties/relative/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err624];
                    } else {
                      vErrors.push(err624);
                    }
                    errors++;
                  }
                } else {
                  const err625 = { instancePath: instancePath + "/arc/tolerance/relative", schemaPath: "#/properties/arc/properties/tolerance/properties/relative/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                  if (vErrors === null) {
                    vErrors = [err625];
                  } else {
                    vErrors.push(err625);
                  }
                  errors++;
                }
              }
            } else {
              const err626 = { instancePath: instancePath + "/arc/tolerance", schemaPath: "#/properties/arc/properties/tolerance/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err626];
              } else {
                vErrors.push(err626);
              }
              errors++;
            }
          }
          if (data211["chord-tolerance"] !== void 0) {
            let data233 = data211["chord-tolerance"];
            const _errs706 = errors;
            let valid181 = false;
            const _errs707 = errors;
            if (typeof data233 == "number" && isFinite(data233)) {
              if (data233 > 1e6 || isNaN(data233)) {
                const err627 = { instancePath: instancePath + "/arc/chord-tolerance", schemaPath: "#/$defs/length/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                if (vErrors === null) {
                  vErrors = [err627];
                } else {
                  vErrors.push(err627);
                }
                errors++;
              }
              if (data233 < -1e6 || isNaN(data233)) {
                const err628 = { instancePath: instancePath + "/arc/chord-tolerance", schemaPath: "#/$defs/length/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: -1e6 }, message: "must be >= -1000000" };
                if (vErrors === null) {
                  vErrors = [err628];
                } else {
                  vErrors.push(err628);
                }
                errors++;
              }
            } else {
              const err629 = { instancePath: instancePath + "/arc/chord-tolerance", schemaPath: "#/$defs/length/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
              if (vErrors === null) {
                vErrors = [err629];
              } else {
                vErrors.push(err629);
              }
              errors++;
            }
            var _valid25 = _errs707 === errors;
            valid181 = valid181 || _valid25;
            const _errs709 = errors;
            if (typeof data233 === "string") {
              if (!pattern26.test(data233)) {
                const err630 = { instancePath: instancePath + "/arc/chord-tolerance", schemaPath: "#/$defs/length/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }, message: 'must match pattern "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$"' };
                if (vErrors === null) {
                  vErrors = [err630];
                } else {
                  vErrors.push(err630);
                }
                errors++;
              }
            } else {
              const err631 = { instancePath: instancePath + "/arc/chord-tolerance", schemaPath: "#/$defs/length/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err631];
              } else {
                vErrors.push(err631);
              }
              errors++;
            }
            var _valid25 = _errs709 === errors;
            valid181 = valid181 || _valid25;
            if (!valid181) {
              const err632 = { instancePath: instancePath + "/arc/chord-tolerance", schemaPath: "#/$defs/length/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err632];
              } else {
                vErrors.push(err632);
              }
              errors++;
            } else {
              errors = _errs706;
              if (vErrors !== null) {
                if (_errs706) {
                  vErrors.length = _errs706;
                } else {
                  vErrors = null;
                }
              }
            }
          }
        } else {
          const err633 = { instancePath: instancePath + "/arc", schemaPath: "#/properties/arc/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err633];
          } else {
            vErrors.push(err633);
          }
          errors++;
        }
      }
      if (data.path !== void 0) {
        let data234 = data.path;
        if (data234 && typeof data234 == "object" && !Array.isArray(data234)) {
          for (const key31 in data234) {
            if (!(key31 === "exact" || key31 === "stop" || key31 === "blend" || key31 === "tolerance-word" || key31 === "look-ahead")) {
              const err634 = { instancePath: instancePath + "/path", schemaPath: "#/properties/path/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key31 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err634];
              } else {
                vErrors.push(err634);
              }
              errors++;
            }
          }
          if (data234.exact !== void 0) {
            let data235 = data234.exact;
            if (typeof data235 === "string") {
              if (!pattern27.test(data235)) {
                const err635 = { instancePath: instancePath + "/path/exact", schemaPath: "#/$defs/codeWithWordOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$"' };
                if (vErrors === null) {
                  vErrors = [err635];
                } else {
                  vErrors.push(err635);
                }
                errors++;
              }
            } else {
              const err636 = { instancePath: instancePath + "/path/exact", schemaPath: "#/$defs/codeWithWordOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err636];
              } else {
                vErrors.push(err636);
              }
              errors++;
            }
          }
          if (data234.stop !== void 0) {
            let data236 = data234.stop;
            if (typeof data236 === "string") {
              if (!pattern27.test(data236)) {
                const err637 = { instancePath: instancePath + "/path/stop", schemaPath: "#/$defs/codeWithWordOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$"' };
                if (vErrors === null) {
                  vErrors = [err637];
                } else {
                  vErrors.push(err637);
                }
                errors++;
              }
            } else {
              const err638 = { instancePath: instancePath + "/path/stop", schemaPath: "#/$defs/codeWithWordOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err638];
              } else {
                vErrors.push(err638);
              }
              errors++;
            }
          }
          if (data234.blend !== void 0) {
            let data237 = data234.blend;
            if (typeof data237 === "string") {
              if (!pattern27.test(data237)) {
                const err639 = { instancePath: instancePath + "/path/blend", schemaPath: "#/$defs/codeWithWordOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$"' };
                if (vErrors === null) {
                  vErrors = [err639];
                } else {
                  vErrors.push(err639);
                }
                errors++;
              }
            } else {
              const err640 = { instancePath: instancePath + "/path/blend", schemaPath: "#/$defs/codeWithWordOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err640];
              } else {
                vErrors.push(err640);
              }
              errors++;
            }
          }
          if (data234["tolerance-word"] !== void 0) {
            let data238 = data234["tolerance-word"];
            if (typeof data238 === "string") {
              if (!pattern23.test(data238)) {
                const err641 = { instancePath: instancePath + "/path/tolerance-word", schemaPath: "#/$defs/letterOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[A-Z])$" }, message: 'must match pattern "^(none|[A-Z])$"' };
                if (vErrors === null) {
                  vErrors = [err641];
                } else {
                  vErrors.push(err641);
                }
                errors++;
              }
            } else {
              const err642 = { instancePath: instancePath + "/path/tolerance-word", schemaPath: "#/$defs/letterOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err642];
              } else {
                vErrors.push(err642);
              }
              errors++;
            }
          }
          if (data234["look-ahead"] !== void 0) {
            let data239 = data234["look-ahead"];
            const _errs727 = errors;
            let valid187 = false;
            const _errs728 = errors;
            if (typeof data239 !== "string") {
              const err643 = { instancePath: instancePath + "/path/look-ahead", schemaPath: "#/properties/path/properties/look-ahead/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err643];
              } else {
                vErrors.push(err643);
              }
              errors++;
            }
            if ("none" !== data239) {
              const err644 = { instancePath: instancePath + "/path/look-ahead", schemaPath: "#/properties/path/properties/look-ahead/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
              if (vErrors === null) {
                vErrors = [err644];
              } else {
                vErrors.push(err644);
              }
              errors++;
            }
            var _valid26 = _errs728 === errors;
            valid187 = valid187 || _valid26;
            const _errs730 = errors;
            if (data239 && typeof data239 == "object" && !Array.isArray(data239)) {
              for (const key32 in data239) {
                if (!(key32 === "on" || key32 === "off")) {
                  const err645 = { instancePath: instancePath + "/path/look-ahead", schemaPath: "#/properties/path/properties/look-ahead/anyOf/1/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key32 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err645];
                  } else {
                    vErrors.push(err645);
                  }
                  errors++;
                }
              }
              if (data239.on !== void 0) {
                let data240 = data239.on;
                if (typeof data240 === "string") {
                  if (!pattern27.test(data240)) {
                    const err646 = { instancePath: instancePath + "/path/look-ahead/on", schemaPath: "#/$defs/codeWithWordOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$"' };
                    if (vErrors === null) {
                      vErrors = [err646];
                    } else {
                      vErrors.push(err646);
                    }
                    errors++;
                  }
                } else {
                  const err647 = { instancePath: instancePath + "/path/look-ahead/on", schemaPath: "#/$defs/codeWithWordOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err647];
                  } else {
                    vErrors.push(err647);
                  }
                  errors++;
                }
              }
              if (data239.off !== void 0) {
                let data241 = data239.off;
                if (typeof data241 === "string") {
                  if (!pattern27.test(data241)) {
                    const err648 = { instancePath: instancePath + "/path/look-ahead/off", schemaPath: "#/$defs/codeWithWordOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$"' };
                    if (vErrors === null) {
                      vErrors = [err648];
                    } else {
                      vErrors.push(err648);
                    }
                    errors++;
                  }
                } else {
                  const err649 = { instancePath: instancePath + "/path/look-ahead/off", schemaPath: "#/$defs/codeWithWordOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err649];
                  } else {
                    vErrors.push(err649);
                  }
                  errors++;
                }
              }
            } else {
              const err650 = { instancePath: instancePath + "/path/look-ahead", schemaPath: "#/properties/path/properties/look-ahead/anyOf/1/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err650];
              } else {
                vErrors.push(err650);
              }
              errors++;
            }
            var _valid26 = _errs730 === errors;
            valid187 = valid187 || _valid26;
            if (!valid187) {
              const err651 = { instancePath: instancePath + "/path/look-ahead", schemaPath: "#/properties/path/properties/look-ahead/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err651];
              } else {
                vErrors.push(err651);
              }
              errors++;
            } else {
              errors = _errs727;
              if (vErrors !== null) {
                if (_errs727) {
                  vErrors.length = _errs727;
                } else {
                  vErrors = null;
                }
              }
            }
          }
        } else {
          const err652 = { instancePath: instancePath + "/path", schemaPath: "#/properties/path/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err652];
          } else {
            vErrors.push(err652);
          }
          errors++;
        }
      }
      if (data.feed !== void 0) {
        let data242 = data.feed;
        if (data242 && typeof data242 == "object" && !Array.isArray(data242)) {
          for (const key33 in data242) {
            if (!(key33 === "per-minute" || key33 === "per-revolution" || key33 === "inverse-time" || key33 === "inverse-time-unit")) {
              const err653 = { instancePath: instancePath + "/feed", schemaPath: "#/properties/feed/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key33 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err653];
              } else {
                vErrors.push(err653);
              }
              errors++;
            }
          }
          if (data242["per-minute"] !== void 0) {
            let data243 = data242["per-minute"];
            if (typeof data243 === "string") {
              if (!pattern8.test(data243)) {
                const err654 = { instancePath: instancePath + "/feed/per-minute", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err654];
                } else {
                  vErrors.push(err654);
                }
                errors++;
              }
            } else {
              const err655 = { instancePath: instancePath + "/feed/per-minute", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err655];
              } else {
                vErrors.push(err655);
              }
              errors++;
            }
          }
          if (data242["per-revolution"] !== void 0) {
            let data244 = data242["per-revolution"];
            if (typeof data244 === "string") {
              if (!pattern8.test(data244)) {
                const err656 = { instancePath: instancePath + "/feed/per-revolution", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err656];
                } else {
                  vErrors.push(err656);
                }
                errors++;
              }
            } else {
              const err657 = { instancePath: instancePath + "/feed/per-revolution", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err657];
              } else {
                vErrors.push(err657);
              }
              errors++;
            }
          }
          if (data242["inverse-time"] !== void 0) {
            let data245 = data242["inverse-time"];
            if (typeof data245 === "string") {
              if (!pattern8.test(data245)) {
                const err658 = { instancePath: instancePath + "/feed/inverse-time", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err658];
                } else {
                  vErrors.push(err658);
                }
                errors++;
              }
            } else {
              const err659 = { instancePath: instancePath + "/feed/inverse-time", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err659];
              } else {
                vErrors.push(err659);
              }
              errors++;
            }
          }
          if (data242["inverse-time-unit"] !== void 0) {
            let data246 = data242["inverse-time-unit"];
            if (typeof data246 !== "string") {
              const err660 = { instancePath: instancePath + "/feed/inverse-time-unit", schemaPath: "#/properties/feed/properties/inverse-time-unit/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err660];
              } else {
                vErrors.push(err660);
              }
              errors++;
            }
            if (!(data246 === "per-minute" || data246 === "per-second")) {
              const err661 = { instancePath: instancePath + "/feed/inverse-time-unit", schemaPath: "#/properties/feed/properties/inverse-time-unit/enum", keyword: "enum", params: { allowedValues: schema31.properties.feed.properties["inverse-time-unit"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err661];
              } else {
                vErrors.push(err661);
              }
              errors++;
            }
          }
        } else {
          const err662 = { instancePath: instancePath + "/feed", schemaPath: "#/properties/feed/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err662];
          } else {
            vErrors.push(err662);
          }
          errors++;
        }
      }
      if (data.dwell !== void 0) {
        let data247 = data.dwell;
        if (data247 && typeof data247 == "object" && !Array.isArray(data247)) {
          for (const key34 in data247) {
            if (!(key34 === "code" || key34 === "word" || key34 === "unit" || key34 === "blocks")) {
              const err663 = { instancePath: instancePath + "/dwell", schemaPath: "#/properties/dwell/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key34 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err663];
              } else {
                vErrors.push(err663);
              }
              errors++;
            }
          }
          if (data247.code !== void 0) {
            let data248 = data247.code;
            if (typeof data248 === "string") {
              if (!pattern8.test(data248)) {
                const err664 = { instancePath: instancePath + "/dwell/code", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err664];
                } else {
                  vErrors.push(err664);
                }
                errors++;
              }
            } else {
              const err665 = { instancePath: instancePath + "/dwell/code", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err665];
              } else {
                vErrors.push(err665);
              }
              errors++;
            }
          }
          if (data247.word !== void 0) {
            let data249 = data247.word;
            if (typeof data249 === "string") {
              if (!pattern7.test(data249)) {
                const err666 = { instancePath: instancePath + "/dwell/word", schemaPath: "#/$defs/letter/pattern", keyword: "pattern", params: { pattern: "^[A-Z]$" }, message: 'must match pattern "^[A-Z]$"' };
                if (vErrors === null) {
                  vErrors = [err666];
                } else {
                  vErrors.push(err666);
                }
                errors++;
              }
            } else {
              const err667 = { instancePath: instancePath + "/dwell/word", schemaPath: "#/$defs/letter/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err667];
              } else {
                vErrors.push(err667);
              }
              errors++;
            }
          }
          if (data247.unit !== void 0) {
            let data250 = data247.unit;
            if (typeof data250 !== "string") {
              const err668 = { instancePath: instancePath + "/dwell/unit", schemaPath: "#/properties/dwell/properties/unit/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err668];
              } else {
                vErrors.push(err668);
              }
              errors++;
            }
            if (!(data250 === "s" || data250 === "ms" || data250 === "rev")) {
              const err669 = { instancePath: instancePath + "/dwell/unit", schemaPath: "#/properties/dwell/properties/unit/enum", keyword: "enum", params: { allowedValues: schema31.properties.dwell.properties.unit.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err669];
              } else {
                vErrors.push(err669);
              }
              errors++;
            }
          }
          if (data247.blocks !== void 0) {
            let data251 = data247.blocks;
            if (typeof data251 !== "string") {
              const err670 = { instancePath: instancePath + "/dwell/blocks", schemaPath: "#/properties/dwell/properties/blocks/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err670];
              } else {
                vErrors.push(err670);
              }
              errors++;
            }
            if (!(data251 === "apart" || data251 === "with-start")) {
              const err671 = { instancePath: instancePath + "/dwell/blocks", schemaPath: "#/properties/dwell/properties/blocks/enum", keyword: "enum", params: { allowedValues: schema31.properties.dwell.properties.blocks.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err671];
              } else {
                vErrors.push(err671);
              }
              errors++;
            }
          }
        } else {
          const err672 = { instancePath: instancePath + "/dwell", schemaPath: "#/properties/dwell/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err672];
          } else {
            vErrors.push(err672);
          }
          errors++;
        }
      }
      if (data.compensation !== void 0) {
        let data252 = data.compensation;
        const _errs767 = errors;
        let valid198 = false;
        const _errs768 = errors;
        if (typeof data252 !== "string") {
          const err673 = { instancePath: instancePath + "/compensation", schemaPath: "#/properties/compensation/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
          if (vErrors === null) {
            vErrors = [err673];
          } else {
            vErrors.push(err673);
          }
          errors++;
        }
        if ("none" !== data252) {
          const err674 = { instancePath: instancePath + "/compensation", schemaPath: "#/properties/compensation/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
          if (vErrors === null) {
            vErrors = [err674];
          } else {
            vErrors.push(err674);
          }
          errors++;
        }
        var _valid27 = _errs768 === errors;
        valid198 = valid198 || _valid27;
        const _errs770 = errors;
        if (data252 && typeof data252 == "object" && !Array.isArray(data252)) {
          for (const key35 in data252) {
            if (!(key35 === "off" || key35 === "left" || key35 === "right" || key35 === "word" || key35 === "corner-feed")) {
              const err675 = { instancePath: instancePath + "/compensation", schemaPath: "#/properties/compensation/anyOf/1/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key35 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err675];
              } else {
                vErrors.push(err675);
              }
              errors++;
            }
          }
          if (data252.off !== void 0) {
            let data253 = data252.off;
            if (typeof data253 === "string") {
              if (!pattern8.test(data253)) {
                const err676 = { instancePath: instancePath + "/compensation/off", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err676];
                } else {
                  vErrors.push(err676);
                }
                errors++;
              }
            } else {
              const err677 = { instancePath: instancePath + "/compensation/off", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err677];
              } else {
                vErrors.push(err677);
              }
              errors++;
            }
          }
          if (data252.left !== void 0) {
            let data254 = data252.left;
            if (typeof data254 === "string") {
              if (!pattern8.test(data254)) {
                const err678 = { instancePath: instancePath + "/compensation/left", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err678];
                } else {
                  vErrors.push(err678);
                }
                errors++;
              }
            } else {
              const err679 = { instancePath: instancePath + "/compensation/left", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err679];
              } else {
                vErrors.push(err679);
              }
              errors++;
            }
          }
          if (data252.right !== void 0) {
            let data255 = data252.right;
            if (typeof data255 === "string") {
              if (!pattern8.test(data255)) {
                const err680 = { instancePath: instancePath + "/compensation/right", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err680];
                } else {
                  vErrors.push(err680);
                }
                errors++;
              }
            } else {
              const err681 = { instancePath: instancePath + "/compensation/right", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err681];
              } else {
                vErrors.push(err681);
              }
              errors++;
            }
          }
          if (data252.word !== void 0) {
            let data256 = data252.word;
            if (typeof data256 === "string") {
              if (!pattern23.test(data256)) {
                const err682 = { instancePath: instancePath + "/compensation/word", schemaPath: "#/$defs/letterOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[A-Z])$" }, message: 'must match pattern "^(none|[A-Z])$"' };
                if (vErrors === null) {
                  vErrors = [err682];
                } else {
                  vErrors.push(err682);
                }
                errors++;
              }
            } else {
              const err683 = { instancePath: instancePath + "/compensation/word", schemaPath: "#/$defs/letterOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err683];
              } else {
                vErrors.push(err683);
              }
              errors++;
            }
          }
          if (data252["corner-feed"] !== void 0) {
            let data257 = data252["corner-feed"];
            const _errs786 = errors;
            let valid204 = false;
            const _errs787 = errors;
            if (typeof data257 !== "string") {
              const err684 = { instancePath: instancePath + "/compensation/corner-feed", schemaPath: "#/properties/compensation/anyOf/1/properties/corner-feed/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err684];
              } else {
                vErrors.push(err684);
              }
              errors++;
            }
            if ("none" !== data257) {
              const err685 = { instancePath: instancePath + "/compensation/corner-feed", schemaPath: "#/properties/compensation/anyOf/1/properties/corner-feed/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
              if (vErrors === null) {
                vErrors = [err685];
              } else {
                vErrors.push(err685);
              }
              errors++;
            }
            var _valid28 = _errs787 === errors;
            valid204 = valid204 || _valid28;
            const _errs789 = errors;
            if (data257 && typeof data257 == "object" && !Array.isArray(data257)) {
              for (const key36 in data257) {
                if (!(key36 === "on" || key36 === "off")) {
                  const err686 = { instancePath: instancePath + "/compensation/corner-feed", schemaPath: "#/properties/compensation/anyOf/1/properties/corner-feed/anyOf/1/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key36 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err686];
                  } else {
                    vErrors.push(err686);
                  }
                  errors++;
                }
              }
              if (data257.on !== void 0) {
                let data258 = data257.on;
                if (typeof data258 === "string") {
                  if (!pattern27.test(data258)) {
                    const err687 = { instancePath: instancePath + "/compensation/corner-feed/on", schemaPath: "#/$defs/codeWithWordOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$"' };
                    if (vErrors === null) {
                      vErrors = [err687];
                    } else {
                      vErrors.push(err687);
                    }
                    errors++;
                  }
                } else {
                  const err688 = { instancePath: instancePath + "/compensation/corner-feed/on", schemaPath: "#/$defs/codeWithWordOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err688];
                  } else {
                    vErrors.push(err688);
                  }
                  errors++;
                }
              }
              if (data257.off !== void 0) {
                let data259 = data257.off;
                if (typeof data259 === "string") {
                  if (!pattern27.test(data259)) {
                    const err689 = { instancePath: instancePath + "/compensation/corner-feed/off", schemaPath: "#/$defs/codeWithWordOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$"' };
                    if (vErrors === null) {
                      vErrors = [err689];
                    } else {
                      vErrors.push(err689);
                    }
                    errors++;
                  }
                } else {
                  const err690 = { instancePath: instancePath + "/compensation/corner-feed/off", schemaPath: "#/$defs/codeWithWordOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err690];
                  } else {
                    vErrors.push(err690);
                  }
                  errors++;
                }
              }
            } else {
              const err691 = { instancePath: instancePath + "/compensation/corner-feed", schemaPath: "#/properties/compensation/anyOf/1/properties/corner-feed/anyOf/1/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err691];
              } else {
                vErrors.push(err691);
              }
              errors++;
            }
            var _valid28 = _errs789 === errors;
            valid204 = valid204 || _valid28;
            if (!valid204) {
              const err692 = { instancePath: instancePath + "/compensation/corner-feed", schemaPath: "#/properties/compensation/anyOf/1/properties/corner-feed/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err692];
              } else {
                vErrors.push(err692);
              }
              errors++;
            } else {
              errors = _errs786;
              if (vErrors !== null) {
                if (_errs786) {
                  vErrors.length = _errs786;
                } else {
                  vErrors = null;
                }
              }
            }
          }
        } else {
          const err693 = { instancePath: instancePath + "/compensation", schemaPath: "#/properties/compensation/anyOf/1/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err693];
          } else {
            vErrors.push(err693);
          }
          errors++;
        }
        var _valid27 = _errs770 === errors;
        valid198 = valid198 || _valid27;
        if (!valid198) {
          const err694 = { instancePath: instancePath + "/compensation", schemaPath: "#/properties/compensation/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
          if (vErrors === null) {
            vErrors = [err694];
          } else {
            vErrors.push(err694);
          }
          errors++;
        } else {
          errors = _errs767;
          if (vErrors !== null) {
            if (_errs767) {
              vErrors.length = _errs767;
            } else {
              vErrors = null;
            }
          }
        }
      }
      if (data["length-offset"] !== void 0) {
        let data260 = data["length-offset"];
        const _errs799 = errors;
        let valid208 = false;
        const _errs800 = errors;
        if (typeof data260 !== "string") {
          const err695 = { instancePath: instancePath + "/length-offset", schemaPath: "#/properties/length-offset/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
          if (vErrors === null) {
            vErrors = [err695];
          } else {
            vErrors.push(err695);
          }
          errors++;
        }
        if ("none" !== data260) {
          const err696 = { instancePath: instancePath + "/length-offset", schemaPath: "#/properties/length-offset/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
          if (vErrors === null) {
            vErrors = [err696];
          } else {
            vErrors.push(err696);
          }
          errors++;
        }
        var _valid29 = _errs800 === errors;
        valid208 = valid208 || _valid29;
        const _errs802 = errors;
        if (data260 && typeof data260 == "object" && !Array.isArray(data260)) {
          for (const key37 in data260) {
            if (!(key37 === "on" || key37 === "off" || key37 === "word" || key37 === "number" || key37 === "added")) {
              const err697 = { instancePath: instancePath + "/length-offset", schemaPath: "#/properties/length-offset/anyOf/1/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key37 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err697];
              } else {
                vErrors.push(err697);
              }
              errors++;
            }
          }
          if (data260.on !== void 0) {
            let data261 = data260.on;
            if (typeof data261 === "string") {
              if (!pattern8.test(data261)) {
                const err698 = { instancePath: instancePath + "/length-offset/on", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err698];
                } else {
                  vErrors.push(err698);
                }
                errors++;
              }
            } else {
              const err699 = { instancePath: instancePath + "/length-offset/on", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err699];
              } else {
                vErrors.push(err699);
              }
              errors++;
            }
          }
          if (data260.off !== void 0) {
            let data262 = data260.off;
            if (typeof data262 === "string") {
              if (!pattern45.test(data262)) {
                const err700 = { instancePath: instancePath + "/length-offset/off", schemaPath: "#/properties/length-offset/anyOf/1/properties/off/pattern", keyword: "pattern", params: { pattern: "^(none|[A-Z]0|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[A-Z]0|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err700];
                } else {
                  vErrors.push(err700);
                }
                errors++;
              }
            } else {
              const err701 = { instancePath: instancePath + "/length-offset/off", schemaPath: "#/properties/length-offset/anyOf/1/properties/off/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err701];
              } else {
                vErrors.push(err701);
              }
              errors++;
            }
          }
          if (data260.word !== void 0) {
            let data263 = data260.word;
            if (typeof data263 === "string") {
              if (!pattern7.test(data263)) {
                const err702 = { instancePath: instancePath + "/length-offset/word", schemaPath: "#/$defs/letter/pattern", keyword: "pattern", params: { pattern: "^[A-Z]$" }, message: 'must match pattern "^[A-Z]$"' };
                if (vErrors === null) {
                  vErrors = [err702];
                } else {
                  vErrors.push(err702);
                }
                errors++;
              }
            } else {
              const err703 = { instancePath: instancePath + "/length-offset/word", schemaPath: "#/$defs/letter/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err703];
              } else {
                vErrors.push(err703);
              }
              errors++;
            }
          }
          if (data260.number !== void 0) {
            let data264 = data260.number;
            if (typeof data264 !== "string") {
              const err704 = { instancePath: instancePath + "/length-offset/number", schemaPath: "#/properties/length-offset/anyOf/1/properties/number/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err704];
              } else {
                vErrors.push(err704);
              }
              errors++;
            }
            if (!(data264 === "tool" || data264 === "free")) {
              const err705 = { instancePath: instancePath + "/length-offset/number", schemaPath: "#/properties/length-offset/anyOf/1/properties/number/enum", keyword: "enum", params: { allowedValues: schema31.properties["length-offset"].anyOf[1].properties.number.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err705];
              } else {
                vErrors.push(err705);
              }
              errors++;
            }
          }
          if (data260.added !== void 0) {
            let data265 = data260.added;
            if (!(typeof data265 == "number" && (!(data265 % 1) && !isNaN(data265)) && isFinite(data265))) {
              const err706 = { instancePath: instancePath + "/length-offset/added", schemaPath: "#/properties/length-offset/anyOf/1/properties/added/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
              if (vErrors === null) {
                vErrors = [err706];
              } else {
                vErrors.push(err706);
              }
              errors++;
            }
            if (typeof data265 == "number" && isFinite(data265)) {
              if (data265 > 900 || isNaN(data265)) {
                const err707 = { instancePath: instancePath + "/length-offset/added", schemaPath: "#/properties/length-offset/anyOf/1/properties/added/maximum", keyword: "maximum", params: { comparison: "<=", limit: 900 }, message: "must be <= 900" };
                if (vErrors === null) {
                  vErrors = [err707];
                } else {
                  vErrors.push(err707);
                }
                errors++;
              }
              if (data265 < 0 || isNaN(data265)) {
                const err708 = { instancePath: instancePath + "/length-offset/added", schemaPath: "#/properties/length-offset/anyOf/1/properties/added/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                if (vErrors === null) {
                  vErrors = [err708];
                } else {
                  vErrors.push(err708);
                }
                errors++;
              }
            }
          }
        } else {
          const err709 = { instancePath: instancePath + "/length-offset", schemaPath: "#/properties/length-offset/anyOf/1/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err709];
          } else {
            vErrors.push(err709);
          }
          errors++;
        }
        var _valid29 = _errs802 === errors;
        valid208 = valid208 || _valid29;
        if (!valid208) {
          const err710 = { instancePath: instancePath + "/length-offset", schemaPath: "#/properties/length-offset/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
          if (vErrors === null) {
            vErrors = [err710];
          } else {
            vErrors.push(err710);
          }
          errors++;
        } else {
          errors = _errs799;
          if (vErrors !== null) {
            if (_errs799) {
              vErrors.length = _errs799;
            } else {
              vErrors = null;
            }
          }
        }
      }
      if (data["work-offset"] !== void 0) {
        let data266 = data["work-offset"];
        const _errs818 = errors;
        let valid212 = false;
        const _errs819 = errors;
        if (typeof data266 !== "string") {
          const err711 = { instancePath: instancePath + "/work-offset", schemaPath: "#/properties/work-offset/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
          if (vErrors === null) {
            vErrors = [err711];
          } else {
            vErrors.push(err711);
          }
          errors++;
        }
        if ("none" !== data266) {
          const err712 = { instancePath: instancePath + "/work-offset", schemaPath: "#/properties/work-offset/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
          if (vErrors === null) {
            vErrors = [err712];
          } else {
            vErrors.push(err712);
          }
          errors++;
        }
        var _valid30 = _errs819 === errors;
        valid212 = valid212 || _valid30;
        const _errs821 = errors;
        if (Array.isArray(data266)) {
          if (data266.length > 9) {
            const err713 = { instancePath: instancePath + "/work-offset", schemaPath: "#/properties/work-offset/anyOf/1/maxItems", keyword: "maxItems", params: { limit: 9 }, message: "must NOT have more than 9 items" };
            if (vErrors === null) {
              vErrors = [err713];
            } else {
              vErrors.push(err713);
            }
            errors++;
          }
          if (data266.length < 1) {
            const err714 = { instancePath: instancePath + "/work-offset", schemaPath: "#/properties/work-offset/anyOf/1/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items" };
            if (vErrors === null) {
              vErrors = [err714];
            } else {
              vErrors.push(err714);
            }
            errors++;
          }
          const len7 = data266.length;
          for (let i10 = 0; i10 < len7; i10++) {
            let data267 = data266[i10];
            if (typeof data267 === "string") {
              if (!pattern27.test(data267)) {
                const err715 = { instancePath: instancePath + "/work-offset/" + i10, schemaPath: "#/$defs/codeWithWordOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$"' };
                if (vErrors === null) {
                  vErrors = [err715];
                } else {
                  vErrors.push(err715);
                }
                errors++;
              }
            } else {
              const err716 = { instancePath: instancePath + "/work-offset/" + i10, schemaPath: "#/$defs/codeWithWordOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err716];
              } else {
                vErrors.push(err716);
              }
              errors++;
            }
          }
        } else {
          const err717 = { instancePath: instancePath + "/work-offset", schemaPath: "#/properties/work-offset/anyOf/1/type", keyword: "type", params: { type: "array" }, message: "must be array" };
          if (vErrors === null) {
            vErrors = [err717];
          } else {
            vErrors.push(err717);
          }
          errors++;
        }
        var _valid30 = _errs821 === errors;
        valid212 = valid212 || _valid30;
        if (!valid212) {
          const err718 = { instancePath: instancePath + "/work-offset", schemaPath: "#/properties/work-offset/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
          if (vErrors === null) {
            vErrors = [err718];
          } else {
            vErrors.push(err718);
          }
          errors++;
        } else {
          errors = _errs818;
          if (vErrors !== null) {
            if (_errs818) {
              vErrors.length = _errs818;
            } else {
              vErrors = null;
            }
          }
        }
      }
      if (data["machine-move"] !== void 0) {
        let data268 = data["machine-move"];
        if (typeof data268 === "string") {
          if (!pattern27.test(data268)) {
            const err719 = { instancePath: instancePath + "/machine-move", schemaPath: "#/$defs/codeWithWordOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$"' };
            if (vErrors === null) {
              vErrors = [err719];
            } else {
              vErrors.push(err719);
            }
            errors++;
          }
        } else {
          const err720 = { instancePath: instancePath + "/machine-move", schemaPath: "#/$defs/codeWithWordOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
          if (vErrors === null) {
            vErrors = [err720];
          } else {
            vErrors.push(err720);
          }
          errors++;
        }
      }
      if (data["reference-return"] !== void 0) {
        let data269 = data["reference-return"];
        if (typeof data269 === "string") {
          if (!pattern27.test(data269)) {
            const err721 = { instancePath: instancePath + "/reference-return", schemaPath: "#/$defs/codeWithWordOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$"' };
            if (vErrors === null) {
              vErrors = [err721];
            } else {
              vErrors.push(err721);
            }
            errors++;
          }
        } else {
          const err722 = { instancePath: instancePath + "/reference-return", schemaPath: "#/$defs/codeWithWordOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
          if (vErrors === null) {
            vErrors = [err722];
          } else {
            vErrors.push(err722);
          }
          errors++;
        }
      }
      if (data.cancel !== void 0) {
        let data270 = data.cancel;
        if (data270 && typeof data270 == "object" && !Array.isArray(data270)) {
          for (const key38 in data270) {
            if (!(key38 === "cycles" || key38 === "local-shift" || key38 === "rotation" || key38 === "scale" || key38 === "overrides" || key38 === "before-change")) {
              const err723 = { instancePath: instancePath + "/cancel", schemaPath: "#/properties/cancel/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key38 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err723];
              } else {
                vErrors.push(err723);
              }
              errors++;
            }
          }
          if (data270.cycles !== void 0) {
            let data271 = data270.cycles;
            if (typeof data271 === "string") {
              if (!pattern8.test(data271)) {
                const err724 = { instancePath: instancePath + "/cancel/cycles", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err724];
                } else {
                  vErrors.push(err724);
                }
                errors++;
              }
            } else {
              const err725 = { instancePath: instancePath + "/cancel/cycles", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err725];
              } else {
                vErrors.push(err725);
              }
              errors++;
            }
          }
          if (data270["local-shift"] !== void 0) {
            let data272 = data270["local-shift"];
            if (typeof data272 === "string") {
              if (!pattern8.test(data272)) {
                const err726 = { instancePath: instancePath + "/cancel/local-shift", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err726];
                } else {
                  vErrors.push(err726);
                }
                errors++;
              }
            } else {
              const err727 = { instancePath: instancePath + "/cancel/local-shift", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err727];
              } else {
                vErrors.push(err727);
              }
              errors++;
            }
          }
          if (data270.rotation !== void 0) {
            let data273 = data270.rotation;
            if (typeof data273 === "string") {
              if (!pattern8.test(data273)) {
                const err728 = { instancePath: instancePath + "/cancel/rotation", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err728];
                } else {
                  vErrors.push(err728);
                }
                errors++;
              }
            } else {
              const err729 = { instancePath: instancePath + "/cancel/rotation", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err729];
              } else {
                vErrors.push(err729);
              }
              errors++;
            }
          }
          if (data270.scale !== void 0) {
            let data274 = data270.scale;
            if (typeof data274 === "string") {
              if (!pattern8.test(data274)) {
                const err730 = { instancePath: instancePath + "/cancel/scale", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err730];
                } else {
                  vErrors.push(err730);
                }
                errors++;
              }
            } else {
              const err731 = { instancePath: instancePath + "/cancel/scale", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err731];
              } else {
                vErrors.push(err731);
              }
              errors++;
            }
          }
          if (data270.overrides !== void 0) {
            let data275 = data270.overrides;
            if (typeof data275 === "string") {
              if (!pattern8.test(data275)) {
                const err732 = { instancePath: instancePath + "/cancel/overrides", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err732];
                } else {
                  vErrors.push(err732);
                }
                errors++;
              }
            } else {
              const err733 = { instancePath: instancePath + "/cancel/overrides", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err733];
              } else {
                vErrors.push(err733);
              }
              errors++;
            }
          }
          if (data270["before-change"] !== void 0) {
            let data276 = data270["before-change"];
            if (typeof data276 !== "string") {
              const err734 = { instancePath: instancePath + "/cancel/before-change", schemaPath: "#/$defs/yesNo/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err734];
              } else {
                vErrors.push(err734);
              }
              errors++;
            }
            if (!(data276 === "yes" || data276 === "no")) {
              const err735 = { instancePath: instancePath + "/cancel/before-change", schemaPath: "#/$defs/yesNo/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err735];
              } else {
                vErrors.push(err735);
              }
              errors++;
            }
          }
        } else {
          const err736 = { instancePath: instancePath + "/cancel", schemaPath: "#/properties/cancel/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err736];
          } else {
            vErrors.push(err736);
          }
          errors++;
        }
      }
      if (data.cycles !== void 0) {
        let data277 = data.cycles;
        const _errs854 = errors;
        let valid225 = false;
        const _errs855 = errors;
        if (typeof data277 !== "string") {
          const err737 = { instancePath: instancePath + "/cycles", schemaPath: "#/properties/cycles/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
          if (vErrors === null) {
            vErrors = [err737];
          } else {
            vErrors.push(err737);
          }
          errors++;
        }
        if ("none" !== data277) {
          const err738 = { instancePath: instancePath + "/cycles", schemaPath: "#/properties/cycles/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
          if (vErrors === null) {
            vErrors = [err738];
          } else {
            vErrors.push(err738);
          }
          errors++;
        }
        var _valid31 = _errs855 === errors;
        valid225 = valid225 || _valid31;
        const _errs857 = errors;
        if (data277 && typeof data277 == "object" && !Array.isArray(data277)) {
          for (const key39 in data277) {
            if (!func1.call(schema31.properties.cycles.anyOf[1].properties, key39)) {
              const err739 = { instancePath: instancePath + "/cycles", schemaPath: "#/properties/cycles/anyOf/1/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key39 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err739];
              } else {
                vErrors.push(err739);
              }
              errors++;
            }
          }
          if (data277.drill !== void 0) {
            let data278 = data277.drill;
            if (typeof data278 === "string") {
              if (!pattern8.test(data278)) {
                const err740 = { instancePath: instancePath + "/cycles/drill", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err740];
                } else {
                  vErrors.push(err740);
                }
                errors++;
              }
            } else {
              const err741 = { instancePath: instancePath + "/cycles/drill", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err741];
              } else {
                vErrors.push(err741);
              }
              errors++;
            }
          }
          if (data277.dwell !== void 0) {
            let data279 = data277.dwell;
            if (typeof data279 === "string") {
              if (!pattern8.test(data279)) {
                const err742 = { instancePath: instancePath + "/cycles/dwell", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err742];
                } else {
                  vErrors.push(err742);
                }
                errors++;
              }
            } else {
              const err743 = { instancePath: instancePath + "/cycles/dwell", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err743];
              } else {
                vErrors.push(err743);
              }
              errors++;
            }
          }
          if (data277.peck !== void 0) {
            let data280 = data277.peck;
            if (typeof data280 === "string") {
              if (!pattern8.test(data280)) {
                const err744 = { instancePath: instancePath + "/cycles/peck", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err744];
                } else {
                  vErrors.push(err744);
                }
                errors++;
              }
            } else {
              const err745 = { instancePath: instancePath + "/cycles/peck", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err745];
              } else {
                vErrors.push(err745);
              }
              errors++;
            }
          }
          if (data277["chip-break"] !== void 0) {
            let data281 = data277["chip-break"];
            if (typeof data281 === "string") {
              if (!pattern8.test(data281)) {
                const err746 = { instancePath: instancePath + "/cycles/chip-break", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err746];
                } else {
                  vErrors.push(err746);
                }
                errors++;
              }
            } else {
              const err747 = { instancePath: instancePath + "/cycles/chip-break", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err747];
              } else {
                vErrors.push(err747);
              }
              errors++;
            }
          }
          if (data277.tap !== void 0) {
            let data282 = data277.tap;
            if (typeof data282 === "string") {
              if (!pattern8.test(data282)) {
                const err748 = { instancePath: instancePath + "/cycles/tap", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err748];
                } else {
                  vErrors.push(err748);
                }
                errors++;
              }
            } else {
              const err749 = { instancePath: instancePath + "/cycles/tap", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err749];
              } else {
                vErrors.push(err749);
              }
              errors++;
            }
          }
          if (data277["tap-left"] !== void 0) {
            let data283 = data277["tap-left"];
            if (typeof data283 === "string") {
              if (!pattern8.test(data283)) {
                const err750 = { instancePath: instancePath + "/cycles/tap-left", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err750];
                } else {
                  vErrors.push(err750);
                }
                errors++;
              }
            } else {
              const err751 = { instancePath: instancePath + "/cycles/tap-left", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err751];
              } else {
                vErrors.push(err751);
              }
              errors++;
            }
          }
          if (data277.ream !== void 0) {
            let data284 = data277.ream;
            if (typeof data284 === "string") {
              if (!pattern8.test(data284)) {
                const err752 = { instancePath: instancePath + "/cycles/ream", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err752];
                } else {
                  vErrors.push(err752);
                }
                errors++;
              }
            } else {
              const err753 = { instancePath: instancePath + "/cycles/ream", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err753];
              } else {
                vErrors.push(err753);
              }
              errors++;
            }
          }
          if (data277["bore-dwell"] !== void 0) {
            let data285 = data277["bore-dwell"];
            if (typeof data285 === "string") {
              if (!pattern8.test(data285)) {
                const err754 = { instancePath: instancePath + "/cycles/bore-dwell", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err754];
                } else {
                  vErrors.push(err754);
                }
                errors++;
              }
            } else {
              const err755 = { instancePath: instancePath + "/cycles/bore-dwell", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err755];
              } else {
                vErrors.push(err755);
              }
              errors++;
            }
          }
          if (data277["bore-stop"] !== void 0) {
            let data286 = data277["bore-stop"];
            if (typeof data286 === "string") {
              if (!pattern8.test(data286)) {
                const err756 = { instancePath: instancePath + "/cycles/bore-stop", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err756];
                } else {
                  vErrors.push(err756);
                }
                errors++;
              }
            } else {
              const err757 = { instancePath: instancePath + "/cycles/bore-stop", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err757];
              } else {
                vErrors.push(err757);
              }
              errors++;
            }
          }
          if (data277["bore-manual"] !== void 0) {
            let data287 = data277["bore-manual"];
            if (typeof data287 === "string") {
              if (!pattern8.test(data287)) {
                const err758 = { instancePath: instancePath + "/cycles/bore-manual", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err758];
                } else {
                  vErrors.push(err758);
                }
                errors++;
              }
            } else {
              const err759 = { instancePath: instancePath + "/cycles/bore-manual", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err759];
              } else {
                vErrors.push(err759);
              }
              errors++;
            }
          }
          if (data277.return !== void 0) {
            let data288 = data277.return;
            if (data288 && typeof data288 == "object" && !Array.isArray(data288)) {
              for (const key40 in data288) {
                if (!(key40 === "initial" || key40 === "retract" || key40 === "without")) {
                  const err760 = { instancePath: instancePath + "/cycles/return", schemaPath: "#/properties/cycles/anyOf/1/properties/return/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key40 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err760];
                  } else {
                    vErrors.push(err760);
                  }
                  errors++;
                }
              }
              if (data288.initial !== void 0) {
                let data289 = data288.initial;
                if (typeof data289 === "string") {
                  if (!pattern8.test(data289)) {
                    const err761 = { instancePath: instancePath + "/cycles/return/initial", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                    if (vErrors === null) {
                      vErrors = [err761];
                    } else {
                      vErrors.push(err761);
                    }
                    errors++;
                  }
                } else {
                  const err762 = { instancePath: instancePath + "/cycles/return/initial", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err762];
                  } else {
                    vErrors.push(err762);
                  }
                  errors++;
                }
              }
              if (data288.retract !== void 0) {
                let data290 = data288.retract;
                if (typeof data290 === "string") {
                  if (!pattern8.test(data290)) {
                    const err763 = { instancePath: instancePath + "/cycles/return/retract", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                    if (vErrors === null) {
                      vErrors = [err763];
                    } else {
                      vErrors.push(err763);
                    }
                    errors++;
                  }
                } else {
                  const err764 = { instancePath: instancePath + "/cycles/return/retract", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err764];
                  } else {
                    vErrors.push(err764);
                  }
                  errors++;
                }
              }
              if (data288.without !== void 0) {
                let data291 = data288.without;
                if (typeof data291 !== "string") {
                  const err765 = { instancePath: instancePath + "/cycles/return/without", schemaPath: "#/properties/cycles/anyOf/1/properties/return/properties/without/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err765];
                  } else {
                    vErrors.push(err765);
                  }
                  errors++;
                }
                if (!(data291 === "retract" || data291 === "initial" || data291 === "none")) {
                  const err766 = { instancePath: instancePath + "/cycles/return/without", schemaPath: "#/properties/cycles/anyOf/1/properties/return/properties/without/enum", keyword: "enum", params: { allowedValues: schema31.properties.cycles.anyOf[1].properties.return.properties.without.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err766];
                  } else {
                    vErrors.push(err766);
                  }
                  errors++;
                }
              }
            } else {
              const err767 = { instancePath: instancePath + "/cycles/return", schemaPath: "#/properties/cycles/anyOf/1/properties/return/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err767];
              } else {
                vErrors.push(err767);
              }
              errors++;
            }
          }
          if (data277["back-off"] !== void 0) {
            let data292 = data277["back-off"];
            if (data292 && typeof data292 == "object" && !Array.isArray(data292)) {
              for (const key41 in data292) {
                if (!(key41 === "peck" || key41 === "chip-break")) {
                  const err768 = { instancePath: instancePath + "/cycles/back-off", schemaPath: "#/properties/cycles/anyOf/1/properties/back-off/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key41 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err768];
                  } else {
                    vErrors.push(err768);
                  }
                  errors++;
                }
              }
              if (data292.peck !== void 0) {
                let data293 = data292.peck;
                const _errs906 = errors;
                let valid242 = false;
                const _errs907 = errors;
                if (typeof data293 == "number" && isFinite(data293)) {
                  if (data293 > 1e6 || isNaN(data293)) {
                    const err769 = { instancePath: instancePath + "/cycles/back-off/peck", schemaPath: "#/$defs/length/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                    if (vErrors === null) {
                      vErrors = [err769];
                    } else {
                      vErrors.push(err769);
                    }
                    errors++;
                  }
                  if (data293 < -1e6 || isNaN(data293)) {
                    const err770 = { instancePath: instancePath + "/cycles/back-off/peck", schemaPath: "#/$defs/length/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: -1e6 }, message: "must be >= -1000000" };
                    if (vErrors === null) {
                      vErrors = [err770];
                    } else {
                      vErrors.push(err770);
                    }
                    errors++;
                  }
                } else {
                  const err771 = { instancePath: instancePath + "/cycles/back-off/peck", schemaPath: "#/$defs/length/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                  if (vErrors === null) {
                    vErrors = [err771];
                  } else {
                    vErrors.push(err771);
                  }
                  errors++;
                }
                var _valid32 = _errs907 === errors;
                valid242 = valid242 || _valid32;
                const _errs909 = errors;
                if (typeof data293 === "string") {
                  if (!pattern26.test(data293)) {
                    const err772 = { instancePath: instancePath + "/cycles/back-off/peck", schemaPath: "#/$defs/length/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }, message: 'must match pattern "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$"' };
                    if (vErrors === null) {
                      vErrors = [err772];
                    } else {
                      vErrors.push(err772);
                    }
                    errors++;
                  }
                } else {
                  const err773 = { instancePath: instancePath + "/cycles/back-off/peck", schemaPath: "#/$defs/length/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err773];
                  } else {
                    vErrors.push(err773);
                  }
                  errors++;
                }
                var _valid32 = _errs909 === errors;
                valid242 = valid242 || _valid32;
                if (!valid242) {
                  const err774 = { instancePath: instancePath + "/cycles/back-off/peck", schemaPath: "#/$defs/length/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err774];
                  } else {
                    vErrors.push(err774);
                  }
                  errors++;
                } else {
                  errors = _errs906;
                  if (vErrors !== null) {
                    if (_errs906) {
                      vErrors.length = _errs906;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
              if (data292["chip-break"] !== void 0) {
                let data294 = data292["chip-break"];
                const _errs913 = errors;
                let valid244 = false;
                const _errs914 = errors;
                if (typeof data294 == "number" && isFinite(data294)) {
                  if (data294 > 1e6 || isNaN(data294)) {
                    const err775 = { instancePath: instancePath + "/cycles/back-off/chip-break", schemaPath: "#/$defs/length/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                    if (vErrors === null) {
                      vErrors = [err775];
                    } else {
                      vErrors.push(err775);
                    }
                    errors++;
                  }
                  if (data294 < -1e6 || isNaN(data294)) {
                    const err776 = { instancePath: instancePath + "/cycles/back-off/chip-break", schemaPath: "#/$defs/length/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: -1e6 }, message: "must be >= -1000000" };
                    if (vErrors === null) {
                      vErrors = [err776];
                    } else {
                      vErrors.push(err776);
                    }
                    errors++;
                  }
                } else {
                  const err777 = { instancePath: instancePath + "/cycles/back-off/chip-break", schemaPath: "#/$defs/length/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                  if (vErrors === null) {
                    vErrors = [err777];
                  } else {
                    vErrors.push(err777);
                  }
                  errors++;
                }
                var _valid33 = _errs914 === errors;
                valid244 = valid244 || _valid33;
                const _errs916 = errors;
                if (typeof data294 === "string") {
                  if (!pattern26.test(data294)) {
                    const err778 = { instancePath: instancePath + "/cycles/back-off/chip-break", schemaPath: "#/$defs/length/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }, message: 'must match pattern "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$"' };
                    if (vErrors === null) {
                      vErrors = [err778];
                    } else {
                      vErrors.push(err778);
                    }
                    errors++;
                  }
                } else {
                  const err779 = { instancePath: instancePath + "/cycles/back-off/chip-break", schemaPath: "#/$defs/length/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err779];
                  } else {
                    vErrors.push(err779);
                  }
                  errors++;
                }
                var _valid33 = _errs916 === errors;
                valid244 = valid244 || _valid33;
                if (!valid244) {
                  const err780 = { instancePath: instancePath + "/cycles/back-off/chip-break", schemaPath: "#/$defs/length/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err780];
                  } else {
                    vErrors.push(err780);
                  }
                  errors++;
                } else {
                  errors = _errs913;
                  if (vErrors !== null) {
                    if (_errs913) {
                      vErrors.length = _errs913;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
            } else {
              const err781 = { instancePath: instancePath + "/cycles/back-off", schemaPath: "#/properties/cycles/anyOf/1/properties/back-off/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err781];
              } else {
                vErrors.push(err781);
              }
              errors++;
            }
          }
          if (data277.levels !== void 0) {
            let data295 = data277.levels;
            if (typeof data295 !== "string") {
              const err782 = { instancePath: instancePath + "/cycles/levels", schemaPath: "#/properties/cycles/anyOf/1/properties/levels/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err782];
              } else {
                vErrors.push(err782);
              }
              errors++;
            }
            if (!(data295 === "absolute" || data295 === "relative" || data295 === "from-initial")) {
              const err783 = { instancePath: instancePath + "/cycles/levels", schemaPath: "#/properties/cycles/anyOf/1/properties/levels/enum", keyword: "enum", params: { allowedValues: schema31.properties.cycles.anyOf[1].properties.levels.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err783];
              } else {
                vErrors.push(err783);
              }
              errors++;
            }
          }
          if (data277.words !== void 0) {
            let data296 = data277.words;
            if (data296 && typeof data296 == "object" && !Array.isArray(data296)) {
              for (const key42 in data296) {
                if (!(key42 === "retract" || key42 === "peck" || key42 === "back-off" || key42 === "dwell" || key42 === "dwell-unit" || key42 === "repeat")) {
                  const err784 = { instancePath: instancePath + "/cycles/words", schemaPath: "#/properties/cycles/anyOf/1/properties/words/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key42 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err784];
                  } else {
                    vErrors.push(err784);
                  }
                  errors++;
                }
              }
              if (data296.retract !== void 0) {
                let data297 = data296.retract;
                if (typeof data297 === "string") {
                  if (!pattern7.test(data297)) {
                    const err785 = { instancePath: instancePath + "/cycles/words/retract", schemaPath: "#/$defs/letter/pattern", keyword: "pattern", params: { pattern: "^[A-Z]$" }, message: 'must match pattern "^[A-Z]$"' };
                    if (vErrors === null) {
                      vErrors = [err785];
                    } else {
                      vErrors.push(err785);
                    }
                    errors++;
                  }
                } else {
                  const err786 = { instancePath: instancePath + "/cycles/words/retract", schemaPath: "#/$defs/letter/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err786];
                  } else {
                    vErrors.push(err786);
                  }
                  errors++;
                }
              }
              if (data296.peck !== void 0) {
                let data298 = data296.peck;
                if (typeof data298 === "string") {
                  if (!pattern7.test(data298)) {
                    const err787 = { instancePath: instancePath + "/cycles/words/peck", schemaPath: "#/$defs/letter/pattern", keyword: "pattern", params: { pattern: "^[A-Z]$" }, message: 'must match pattern "^[A-Z]$"' };
                    if (vErrors === null) {
                      vErrors = [err787];
                    } else {
                      vErrors.push(err787);
                    }
                    errors++;
                  }
                } else {
                  const err788 = { instancePath: instancePath + "/cycles/words/peck", schemaPath: "#/$defs/letter/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err788];
                  } else {
                    vErrors.push(err788);
                  }
                  errors++;
                }
              }
              if (data296["back-off"] !== void 0) {
                let data299 = data296["back-off"];
                if (typeof data299 === "string") {
                  if (!pattern23.test(data299)) {
                    const err789 = { instancePath: instancePath + "/cycles/words/back-off", schemaPath: "#/$defs/letterOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[A-Z])$" }, message: 'must match pattern "^(none|[A-Z])$"' };
                    if (vErrors === null) {
                      vErrors = [err789];
                    } else {
                      vErrors.push(err789);
                    }
                    errors++;
                  }
                } else {
                  const err790 = { instancePath: instancePath + "/cycles/words/back-off", schemaPath: "#/$defs/letterOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err790];
                  } else {
                    vErrors.push(err790);
                  }
                  errors++;
                }
              }
              if (data296.dwell !== void 0) {
                let data300 = data296.dwell;
                if (typeof data300 === "string") {
                  if (!pattern7.test(data300)) {
                    const err791 = { instancePath: instancePath + "/cycles/words/dwell", schemaPath: "#/$defs/letter/pattern", keyword: "pattern", params: { pattern: "^[A-Z]$" }, message: 'must match pattern "^[A-Z]$"' };
                    if (vErrors === null) {
                      vErrors = [err791];
                    } else {
                      vErrors.push(err791);
                    }
                    errors++;
                  }
                } else {
                  const err792 = { instancePath: instancePath + "/cycles/words/dwell", schemaPath: "#/$defs/letter/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err792];
                  } else {
                    vErrors.push(err792);
                  }
                  errors++;
                }
              }
              if (data296["dwell-unit"] !== void 0) {
                let data301 = data296["dwell-unit"];
                if (typeof data301 !== "string") {
                  const err793 = { instancePath: instancePath + "/cycles/words/dwell-unit", schemaPath: "#/properties/cycles/anyOf/1/properties/words/properties/dwell-unit/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err793];
                  } else {
                    vErrors.push(err793);
                  }
                  errors++;
                }
                if (!(data301 === "s" || data301 === "ms" || data301 === "rev")) {
                  const err794 = { instancePath: instancePath + "/cycles/words/dwell-unit", schemaPath: "#/properties/cycles/anyOf/1/properties/words/properties/dwell-unit/enum", keyword: "enum", params: { allowedValues: schema31.properties.cycles.anyOf[1].properties.words.properties["dwell-unit"].enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err794];
                  } else {
                    vErrors.push(err794);
                  }
                  errors++;
                }
              }
              if (data296.repeat !== void 0) {
                let data302 = data296.repeat;
                if (typeof data302 === "string") {
                  if (!pattern23.test(data302)) {
                    const err795 = { instancePath: instancePath + "/cycles/words/repeat", schemaPath: "#/$defs/letterOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[A-Z])$" }, message: 'must match pattern "^(none|[A-Z])$"' };
                    if (vErrors === null) {
                      vErrors = [err795];
                    } else {
                      vErrors.push(err795);
                    }
                    errors++;
                  }
                } else {
                  const err796 = { instancePath: instancePath + "/cycles/words/repeat", schemaPath: "#/$defs/letterOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err796];
                  } else {
                    vErrors.push(err796);
                  }
                  errors++;
                }
              }
            } else {
              const err797 = { instancePath: instancePath + "/cycles/words", schemaPath: "#/properties/cycles/anyOf/1/properties/words/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err797];
              } else {
                vErrors.push(err797);
              }
              errors++;
            }
          }
          if (data277.repeat !== void 0) {
            let data303 = data277.repeat;
            if (typeof data303 !== "string") {
              const err798 = { instancePath: instancePath + "/cycles/repeat", schemaPath: "#/properties/cycles/anyOf/1/properties/repeat/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err798];
              } else {
                vErrors.push(err798);
              }
              errors++;
            }
            if (!(data303 === "positions" || data303 === "all")) {
              const err799 = { instancePath: instancePath + "/cycles/repeat", schemaPath: "#/properties/cycles/anyOf/1/properties/repeat/enum", keyword: "enum", params: { allowedValues: schema31.properties.cycles.anyOf[1].properties.repeat.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err799];
              } else {
                vErrors.push(err799);
              }
              errors++;
            }
          }
          if (data277.definition !== void 0) {
            let data304 = data277.definition;
            if (typeof data304 !== "string") {
              const err800 = { instancePath: instancePath + "/cycles/definition", schemaPath: "#/properties/cycles/anyOf/1/properties/definition/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err800];
              } else {
                vErrors.push(err800);
              }
              errors++;
            }
            if (!(data304 === "with-first-hole" || data304 === "apart")) {
              const err801 = { instancePath: instancePath + "/cycles/definition", schemaPath: "#/properties/cycles/anyOf/1/properties/definition/enum", keyword: "enum", params: { allowedValues: schema31.properties.cycles.anyOf[1].properties.definition.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err801];
              } else {
                vErrors.push(err801);
              }
              errors++;
            }
          }
          if (data277.positions !== void 0) {
            let data305 = data277.positions;
            if (typeof data305 !== "string") {
              const err802 = { instancePath: instancePath + "/cycles/positions", schemaPath: "#/properties/cycles/anyOf/1/properties/positions/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err802];
              } else {
                vErrors.push(err802);
              }
              errors++;
            }
            if (!(data305 === "changed" || data305 === "both")) {
              const err803 = { instancePath: instancePath + "/cycles/positions", schemaPath: "#/properties/cycles/anyOf/1/properties/positions/enum", keyword: "enum", params: { allowedValues: schema31.properties.cycles.anyOf[1].properties.positions.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err803];
              } else {
                vErrors.push(err803);
              }
              errors++;
            }
          }
          if (data277["initial-level"] !== void 0) {
            let data306 = data277["initial-level"];
            if (typeof data306 !== "string") {
              const err804 = { instancePath: instancePath + "/cycles/initial-level", schemaPath: "#/properties/cycles/anyOf/1/properties/initial-level/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err804];
              } else {
                vErrors.push(err804);
              }
              errors++;
            }
            if (!(data306 === "before-series" || data306 === "current")) {
              const err805 = { instancePath: instancePath + "/cycles/initial-level", schemaPath: "#/properties/cycles/anyOf/1/properties/initial-level/enum", keyword: "enum", params: { allowedValues: schema31.properties.cycles.anyOf[1].properties["initial-level"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err805];
              } else {
                vErrors.push(err805);
              }
              errors++;
            }
          }
          if (data277.axis !== void 0) {
            let data307 = data277.axis;
            if (typeof data307 !== "string") {
              const err806 = { instancePath: instancePath + "/cycles/axis", schemaPath: "#/properties/cycles/anyOf/1/properties/axis/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err806];
              } else {
                vErrors.push(err806);
              }
              errors++;
            }
            if (!(data307 === "plane-normal" || data307 === "z")) {
              const err807 = { instancePath: instancePath + "/cycles/axis", schemaPath: "#/properties/cycles/anyOf/1/properties/axis/enum", keyword: "enum", params: { allowedValues: schema31.properties.cycles.anyOf[1].properties.axis.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err807];
              } else {
                vErrors.push(err807);
              }
              errors++;
            }
          }
          if (data277["tap-feed"] !== void 0) {
            let data308 = data277["tap-feed"];
            if (typeof data308 !== "string") {
              const err808 = { instancePath: instancePath + "/cycles/tap-feed", schemaPath: "#/properties/cycles/anyOf/1/properties/tap-feed/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err808];
              } else {
                vErrors.push(err808);
              }
              errors++;
            }
            if (!(data308 === "feed-mode" || data308 === "lead")) {
              const err809 = { instancePath: instancePath + "/cycles/tap-feed", schemaPath: "#/properties/cycles/anyOf/1/properties/tap-feed/enum", keyword: "enum", params: { allowedValues: schema31.properties.cycles.anyOf[1].properties["tap-feed"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err809];
              } else {
                vErrors.push(err809);
              }
              errors++;
            }
          }
          if (data277["tap-synchronised"] !== void 0) {
            let data309 = data277["tap-synchronised"];
            if (typeof data309 === "string") {
              if (!pattern8.test(data309)) {
                const err810 = { instancePath: instancePath + "/cycles/tap-synchronised", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err810];
                } else {
                  vErrors.push(err810);
                }
                errors++;
              }
            } else {
              const err811 = { instancePath: instancePath + "/cycles/tap-synchronised", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err811];
              } else {
                vErrors.push(err811);
              }
              errors++;
            }
          }
          if (data277["ended-by"] !== void 0) {
            let data310 = data277["ended-by"];
            if (typeof data310 !== "string") {
              const err812 = { instancePath: instancePath + "/cycles/ended-by", schemaPath: "#/properties/cycles/anyOf/1/properties/ended-by/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err812];
              } else {
                vErrors.push(err812);
              }
              errors++;
            }
            if (!(data310 === "any-motion" || data310 === "cancel-code")) {
              const err813 = { instancePath: instancePath + "/cycles/ended-by", schemaPath: "#/properties/cycles/anyOf/1/properties/ended-by/enum", keyword: "enum", params: { allowedValues: schema31.properties.cycles.anyOf[1].properties["ended-by"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err813];
              } else {
                vErrors.push(err813);
              }
              errors++;
            }
          }
        } else {
          const err814 = { instancePath: instancePath + "/cycles", schemaPath: "#/properties/cycles/anyOf/1/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err814];
          } else {
            vErrors.push(err814);
          }
          errors++;
        }
        var _valid31 = _errs857 === errors;
        valid225 = valid225 || _valid31;
        if (!valid225) {
          const err815 = { instancePath: instancePath + "/cycles", schemaPath: "#/properties/cycles/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
          if (vErrors === null) {
            vErrors = [err815];
          } else {
            vErrors.push(err815);
          }
          errors++;
        } else {
          errors = _errs854;
          if (vErrors !== null) {
            if (_errs854) {
              vErrors.length = _errs854;
            } else {
              vErrors = null;
            }
          }
        }
      }
      if (data.spindle !== void 0) {
        let data311 = data.spindle;
        if (data311 && typeof data311 == "object" && !Array.isArray(data311)) {
          for (const key43 in data311) {
            if (!func1.call(schema31.properties.spindle.properties, key43)) {
              const err816 = { instancePath: instancePath + "/spindle", schemaPath: "#/properties/spindle/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key43 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err816];
              } else {
                vErrors.push(err816);
              }
              errors++;
            }
          }
          if (data311.cw !== void 0) {
            let data312 = data311.cw;
            if (typeof data312 === "string") {
              if (!pattern8.test(data312)) {
                const err817 = { instancePath: instancePath + "/spindle/cw", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err817];
                } else {
                  vErrors.push(err817);
                }
                errors++;
              }
            } else {
              const err818 = { instancePath: instancePath + "/spindle/cw", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err818];
              } else {
                vErrors.push(err818);
              }
              errors++;
            }
          }
          if (data311.ccw !== void 0) {
            let data313 = data311.ccw;
            if (typeof data313 === "string") {
              if (!pattern8.test(data313)) {
                const err819 = { instancePath: instancePath + "/spindle/ccw", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err819];
                } else {
                  vErrors.push(err819);
                }
                errors++;
              }
            } else {
              const err820 = { instancePath: instancePath + "/spindle/ccw", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err820];
              } else {
                vErrors.push(err820);
              }
              errors++;
            }
          }
          if (data311.stop !== void 0) {
            let data314 = data311.stop;
            if (typeof data314 === "string") {
              if (!pattern8.test(data314)) {
                const err821 = { instancePath: instancePath + "/spindle/stop", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err821];
                } else {
                  vErrors.push(err821);
                }
                errors++;
              }
            } else {
              const err822 = { instancePath: instancePath + "/spindle/stop", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err822];
              } else {
                vErrors.push(err822);
              }
              errors++;
            }
          }
          if (data311.orient !== void 0) {
            let data315 = data311.orient;
            if (typeof data315 === "string") {
              if (!pattern27.test(data315)) {
                const err823 = { instancePath: instancePath + "/spindle/orient", schemaPath: "#/$defs/codeWithWordOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$"' };
                if (vErrors === null) {
                  vErrors = [err823];
                } else {
                  vErrors.push(err823);
                }
                errors++;
              }
            } else {
              const err824 = { instancePath: instancePath + "/spindle/orient", schemaPath: "#/$defs/codeWithWordOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err824];
              } else {
                vErrors.push(err824);
              }
              errors++;
            }
          }
          if (data311.order !== void 0) {
            let data316 = data311.order;
            if (typeof data316 !== "string") {
              const err825 = { instancePath: instancePath + "/spindle/order", schemaPath: "#/properties/spindle/properties/order/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err825];
              } else {
                vErrors.push(err825);
              }
              errors++;
            }
            if (!(data316 === "speed-first" || data316 === "start-first")) {
              const err826 = { instancePath: instancePath + "/spindle/order", schemaPath: "#/properties/spindle/properties/order/enum", keyword: "enum", params: { allowedValues: schema31.properties.spindle.properties.order.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err826];
              } else {
                vErrors.push(err826);
              }
              errors++;
            }
          }
          if (data311.blocks !== void 0) {
            let data317 = data311.blocks;
            if (typeof data317 !== "string") {
              const err827 = { instancePath: instancePath + "/spindle/blocks", schemaPath: "#/properties/spindle/properties/blocks/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err827];
              } else {
                vErrors.push(err827);
              }
              errors++;
            }
            if (!(data317 === "together" || data317 === "apart")) {
              const err828 = { instancePath: instancePath + "/spindle/blocks", schemaPath: "#/properties/spindle/properties/blocks/enum", keyword: "enum", params: { allowedValues: schema31.properties.spindle.properties.blocks.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err828];
              } else {
                vErrors.push(err828);
              }
              errors++;
            }
          }
          if (data311["speed-unit"] !== void 0) {
            let data318 = data311["speed-unit"];
            if (typeof data318 !== "string") {
              const err829 = { instancePath: instancePath + "/spindle/speed-unit", schemaPath: "#/properties/spindle/properties/speed-unit/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err829];
              } else {
                vErrors.push(err829);
              }
              errors++;
            }
            if (!(data318 === "rpm" || data318 === "percent")) {
              const err830 = { instancePath: instancePath + "/spindle/speed-unit", schemaPath: "#/properties/spindle/properties/speed-unit/enum", keyword: "enum", params: { allowedValues: schema31.properties.spindle.properties["speed-unit"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err830];
              } else {
                vErrors.push(err830);
              }
              errors++;
            }
          }
          if (data311["full-speed"] !== void 0) {
            let data319 = data311["full-speed"];
            if (typeof data319 == "number" && isFinite(data319)) {
              if (data319 > 1e6 || isNaN(data319)) {
                const err831 = { instancePath: instancePath + "/spindle/full-speed", schemaPath: "#/properties/spindle/properties/full-speed/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                if (vErrors === null) {
                  vErrors = [err831];
                } else {
                  vErrors.push(err831);
                }
                errors++;
              }
              if (data319 <= 0 || isNaN(data319)) {
                const err832 = { instancePath: instancePath + "/spindle/full-speed", schemaPath: "#/properties/spindle/properties/full-speed/exclusiveMinimum", keyword: "exclusiveMinimum", params: { comparison: ">", limit: 0 }, message: "must be > 0" };
                if (vErrors === null) {
                  vErrors = [err832];
                } else {
                  vErrors.push(err832);
                }
                errors++;
              }
            } else {
              const err833 = { instancePath: instancePath + "/spindle/full-speed", schemaPath: "#/properties/spindle/properties/full-speed/type", keyword: "type", params: { type: "number" }, message: "must be number" };
              if (vErrors === null) {
                vErrors = [err833];
              } else {
                vErrors.push(err833);
              }
              errors++;
            }
          }
          if (data311.gears !== void 0) {
            let data320 = data311.gears;
            const _errs981 = errors;
            let valid257 = false;
            const _errs982 = errors;
            if (typeof data320 !== "string") {
              const err834 = { instancePath: instancePath + "/spindle/gears", schemaPath: "#/properties/spindle/properties/gears/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err834];
              } else {
                vErrors.push(err834);
              }
              errors++;
            }
            if ("none" !== data320) {
              const err835 = { instancePath: instancePath + "/spindle/gears", schemaPath: "#/properties/spindle/properties/gears/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
              if (vErrors === null) {
                vErrors = [err835];
              } else {
                vErrors.push(err835);
              }
              errors++;
            }
            var _valid34 = _errs982 === errors;
            valid257 = valid257 || _valid34;
            const _errs984 = errors;
            if (Array.isArray(data320)) {
              if (data320.length > 6) {
                const err836 = { instancePath: instancePath + "/spindle/gears", schemaPath: "#/properties/spindle/properties/gears/anyOf/1/maxItems", keyword: "maxItems", params: { limit: 6 }, message: "must NOT have more than 6 items" };
                if (vErrors === null) {
                  vErrors = [err836];
                } else {
                  vErrors.push(err836);
                }
                errors++;
              }
              if (data320.length < 1) {
                const err837 = { instancePath: instancePath + "/spindle/gears", schemaPath: "#/properties/spindle/properties/gears/anyOf/1/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items" };
                if (vErrors === null) {
                  vErrors = [err837];
                } else {
                  vErrors.push(err837);
                }
                errors++;
              }
              const len8 = data320.length;
              for (let i11 = 0; i11 < len8; i11++) {
                let data321 = data320[i11];
                if (data321 && typeof data321 == "object" && !Array.isArray(data321)) {
                  for (const key44 in data321) {
                    if (!(key44 === "code" || key44 === "from" || key44 === "to")) {
                      const err838 = { instancePath: instancePath + "/spindle/gears/" + i11, schemaPath: "#/properties/spindle/properties/gears/anyOf/1/items/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key44 }, message: "must NOT have additional properties" };
                      if (vErrors === null) {
                        vErrors = [err838];
                      } else {
                        vErrors.push(err838);
                      }
                      errors++;
                    }
                  }
                  if (data321.code !== void 0) {
                    let data322 = data321.code;
                    if (typeof data322 === "string") {
                      if (!pattern79.test(data322)) {
                        const err839 = { instancePath: instancePath + "/spindle/gears/" + i11 + "/code", schemaPath: "#/properties/spindle/properties/gears/anyOf/1/items/properties/code/pattern", keyword: "pattern", params: { pattern: "^M\\d{1,3}$" }, message: 'must match pattern "^M\\d{1,3}$"' };
                        if (vErrors === null) {
                          vErrors = [err839];
                        } else {
                          vErrors.push(err839);
                        }
                        errors++;
                      }
                    } else {
                      const err840 = { instancePath: instancePath + "/spindle/gears/" + i11 + "/code", schemaPath: "#/properties/spindle/properties/gears/anyOf/1/items/properties/code/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                      if (vErrors === null) {
                        vErrors = [err840];
                      } else {
                        vErrors.push(err840);
                      }
                      errors++;
                    }
                  }
                  if (data321.from !== void 0) {
                    let data323 = data321.from;
                    if (typeof data323 == "number" && isFinite(data323)) {
                      if (data323 > 1e6 || isNaN(data323)) {
                        const err841 = { instancePath: instancePath + "/spindle/gears/" + i11 + "/from", schemaPath: "#/properties/spindle/properties/gears/anyOf/1/items/properties/from/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                        if (vErrors === null) {
                          vErrors = [err841];
                        } else {
                          vErrors.push(err841);
                        }
                        errors++;
                      }
                      if (data323 < 0 || isNaN(data323)) {
                        const err842 = { instancePath: instancePath + "/spindle/gears/" + i11 + "/from", schemaPath: "#/properties/spindle/properties/gears/anyOf/1/items/properties/from/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                        if (vErrors === null) {
                          vErrors = [err842];
                        } else {
                          vErrors.push(err842);
                        }
                        errors++;
                      }
                    } else {
                      const err843 = { instancePath: instancePath + "/spindle/gears/" + i11 + "/from", schemaPath: "#/properties/spindle/properties/gears/anyOf/1/items/properties/from/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                      if (vErrors === null) {
                        vErrors = [err843];
                      } else {
                        vErrors.push(err843);
                      }
                      errors++;
                    }
                  }
                  if (data321.to !== void 0) {
                    let data324 = data321.to;
                    if (typeof data324 == "number" && isFinite(data324)) {
                      if (data324 > 1e6 || isNaN(data324)) {
                        const err844 = { instancePath: instancePath + "/spindle/gears/" + i11 + "/to", schemaPath: "#/properties/spindle/properties/gears/anyOf/1/items/properties/to/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                        if (vErrors === null) {
                          vErrors = [err844];
                        } else {
                          vErrors.push(err844);
                        }
                        errors++;
                      }
                      if (data324 <= 0 || isNaN(data324)) {
                        const err845 = { instancePath: instancePath + "/spindle/gears/" + i11 + "/to", schemaPath: "#/properties/spindle/properties/gears/anyOf/1/items/properties/to/exclusiveMinimum", keyword: "exclusiveMinimum", params: { comparison: ">", limit: 0 }, message: "must be > 0" };
                        if (vErrors === null) {
                          vErrors = [err845];
                        } else {
                          vErrors.push(err845);
                        }
                        errors++;
                      }
                    } else {
                      const err846 = { instancePath: instancePath + "/spindle/gears/" + i11 + "/to", schemaPath: "#/properties/spindle/properties/gears/anyOf/1/items/properties/to/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                      if (vErrors === null) {
                        vErrors = [err846];
                      } else {
                        vErrors.push(err846);
                      }
                      errors++;
                    }
                  }
                } else {
                  const err847 = { instancePath: instancePath + "/spindle/gears/" + i11, schemaPath: "#/properties/spindle/properties/gears/anyOf/1/items/type", keyword: "type", params: { type: "object" }, message: "must be object" };
                  if (vErrors === null) {
                    vErrors = [err847];
                  } else {
                    vErrors.push(err847);
                  }
                  errors++;
                }
              }
            } else {
              const err848 = { instancePath: instancePath + "/spindle/gears", schemaPath: "#/properties/spindle/properties/gears/anyOf/1/type", keyword: "type", params: { type: "array" }, message: "must be array" };
              if (vErrors === null) {
                vErrors = [err848];
              } else {
                vErrors.push(err848);
              }
              errors++;
            }
            var _valid34 = _errs984 === errors;
            valid257 = valid257 || _valid34;
            if (!valid257) {
              const err849 = { instancePath: instancePath + "/spindle/gears", schemaPath: "#/properties/spindle/properties/gears/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err849];
              } else {
                vErrors.push(err849);
              }
              errors++;
            } else {
              errors = _errs981;
              if (vErrors !== null) {
                if (_errs981) {
                  vErrors.length = _errs981;
                } else {
                  vErrors = null;
                }
              }
            }
          }
        } else {
          const err850 = { instancePath: instancePath + "/spindle", schemaPath: "#/properties/spindle/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err850];
          } else {
            vErrors.push(err850);
          }
          errors++;
        }
      }
      if (data.coolant !== void 0) {
        let data325 = data.coolant;
        if (data325 && typeof data325 == "object" && !Array.isArray(data325)) {
          for (const key45 in data325) {
            if (!(key45 === "mist" || key45 === "flood" || key45 === "air" || key45 === "through-tool" || key45 === "off" || key45 === "blocks")) {
              const err851 = { instancePath: instancePath + "/coolant", schemaPath: "#/properties/coolant/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key45 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err851];
              } else {
                vErrors.push(err851);
              }
              errors++;
            }
          }
          if (data325.mist !== void 0) {
            let data326 = data325.mist;
            if (typeof data326 === "string") {
              if (!pattern8.test(data326)) {
                const err852 = { instancePath: instancePath + "/coolant/mist", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err852];
                } else {
                  vErrors.push(err852);
                }
                errors++;
              }
            } else {
              const err853 = { instancePath: instancePath + "/coolant/mist", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err853];
              } else {
                vErrors.push(err853);
              }
              errors++;
            }
          }
          if (data325.flood !== void 0) {
            let data327 = data325.flood;
            if (typeof data327 === "string") {
              if (!pattern8.test(data327)) {
                const err854 = { instancePath: instancePath + "/coolant/flood", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err854];
                } else {
                  vErrors.push(err854);
                }
                errors++;
              }
            } else {
              const err855 = { instancePath: instancePath + "/coolant/flood", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err855];
              } else {
                vErrors.push(err855);
              }
              errors++;
            }
          }
          if (data325.air !== void 0) {
            let data328 = data325.air;
            if (typeof data328 === "string") {
              if (!pattern8.test(data328)) {
                const err856 = { instancePath: instancePath + "/coolant/air", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err856];
                } else {
                  vErrors.push(err856);
                }
                errors++;
              }
            } else {
              const err857 = { instancePath: instancePath + "/coolant/air", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err857];
              } else {
                vErrors.push(err857);
              }
              errors++;
            }
          }
          if (data325["through-tool"] !== void 0) {
            let data329 = data325["through-tool"];
            if (typeof data329 === "string") {
              if (!pattern8.test(data329)) {
                const err858 = { instancePath: instancePath + "/coolant/through-tool", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err858];
                } else {
                  vErrors.push(err858);
                }
                errors++;
              }
            } else {
              const err859 = { instancePath: instancePath + "/coolant/through-tool", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err859];
              } else {
                vErrors.push(err859);
              }
              errors++;
            }
          }
          if (data325.off !== void 0) {
            let data330 = data325.off;
            const _errs1011 = errors;
            let valid266 = false;
            const _errs1012 = errors;
            if (typeof data330 === "string") {
              if (!pattern8.test(data330)) {
                const err860 = { instancePath: instancePath + "/coolant/off", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err860];
                } else {
                  vErrors.push(err860);
                }
                errors++;
              }
            } else {
              const err861 = { instancePath: instancePath + "/coolant/off", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err861];
              } else {
                vErrors.push(err861);
              }
              errors++;
            }
            var _valid35 = _errs1012 === errors;
            valid266 = valid266 || _valid35;
            const _errs1015 = errors;
            if (data330 && typeof data330 == "object" && !Array.isArray(data330)) {
              for (const key46 in data330) {
                if (!(key46 === "mist" || key46 === "flood" || key46 === "air" || key46 === "through-tool")) {
                  const err862 = { instancePath: instancePath + "/coolant/off", schemaPath: "#/properties/coolant/properties/off/anyOf/1/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key46 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err862];
                  } else {
                    vErrors.push(err862);
                  }
                  errors++;
                }
              }
              if (data330.mist !== void 0) {
                let data331 = data330.mist;
                if (typeof data331 === "string") {
                  if (!pattern8.test(data331)) {
                    const err863 = { instancePath: instancePath + "/coolant/off/mist", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                    if (vErrors === null) {
                      vErrors = [err863];
                    } else {
                      vErrors.push(err863);
                    }
                    errors++;
                  }
                } else {
                  const err864 = { instancePath: instancePath + "/coolant/off/mist", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err864];
                  } else {
                    vErrors.push(err864);
                  }
                  errors++;
                }
              }
              if (data330.flood !== void 0) {
                let data332 = data330.flood;
                if (typeof data332 === "string") {
                  if (!pattern8.test(data332)) {
                    const err865 = { instancePath: instancePath + "/coolant/off/flood", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                    if (vErrors === null) {
                      vErrors = [err865];
                    } else {
                      vErrors.push(err865);
                    }
                    errors++;
                  }
                } else {
                  const err866 = { instancePath: instancePath + "/coolant/off/flood", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err866];
                  } else {
                    vErrors.push(err866);
                  }
                  errors++;
                }
              }
              if (data330.air !== void 0) {
                let data333 = data330.air;
                if (typeof data333 === "string") {
                  if (!pattern8.test(data333)) {
                    const err867 = { instancePath: instancePath + "/coolant/off/air", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                    if (vErrors === null) {
                      vErrors = [err867];
                    } else {
                      vErrors.push(err867);
                    }
                    errors++;
                  }
                } else {
                  const err868 = { instancePath: instancePath + "/coolant/off/air", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err868];
                  } else {
                    vErrors.push(err868);
                  }
                  errors++;
                }
              }
              if (data330["through-tool"] !== void 0) {
                let data334 = data330["through-tool"];
                if (typeof data334 === "string") {
                  if (!pattern8.test(data334)) {
                    const err869 = { instancePath: instancePath + "/coolant/off/through-tool", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                    if (vErrors === null) {
                      vErrors = [err869];
                    } else {
                      vErrors.push(err869);
                    }
                    errors++;
                  }
                } else {
                  const err870 = { instancePath: instancePath + "/coolant/off/through-tool", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err870];
                  } else {
                    vErrors.push(err870);
                  }
                  errors++;
                }
              }
            } else {
              const err871 = { instancePath: instancePath + "/coolant/off", schemaPath: "#/properties/coolant/properties/off/anyOf/1/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err871];
              } else {
                vErrors.push(err871);
              }
              errors++;
            }
            var _valid35 = _errs1015 === errors;
            valid266 = valid266 || _valid35;
            if (!valid266) {
              const err872 = { instancePath: instancePath + "/coolant/off", schemaPath: "#/properties/coolant/properties/off/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err872];
              } else {
                vErrors.push(err872);
              }
              errors++;
            } else {
              errors = _errs1011;
              if (vErrors !== null) {
                if (_errs1011) {
                  vErrors.length = _errs1011;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data325.blocks !== void 0) {
            let data335 = data325.blocks;
            if (typeof data335 !== "string") {
              const err873 = { instancePath: instancePath + "/coolant/blocks", schemaPath: "#/properties/coolant/properties/blocks/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err873];
              } else {
                vErrors.push(err873);
              }
              errors++;
            }
            if (!(data335 === "apart" || data335 === "together")) {
              const err874 = { instancePath: instancePath + "/coolant/blocks", schemaPath: "#/properties/coolant/properties/blocks/enum", keyword: "enum", params: { allowedValues: schema31.properties.coolant.properties.blocks.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err874];
              } else {
                vErrors.push(err874);
              }
              errors++;
            }
          }
        } else {
          const err875 = { instancePath: instancePath + "/coolant", schemaPath: "#/properties/coolant/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err875];
          } else {
            vErrors.push(err875);
          }
          errors++;
        }
      }
      if (data.tools !== void 0) {
        let data336 = data.tools;
        if (data336 && typeof data336 == "object" && !Array.isArray(data336)) {
          for (const key47 in data336) {
            if (!(key47 === "change" || key47 === "blocks" || key47 === "order" || key47 === "preselect" || key47 === "in-operator-swap" || key47 === "empty")) {
              const err876 = { instancePath: instancePath + "/tools", schemaPath: "#/properties/tools/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key47 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err876];
              } else {
                vErrors.push(err876);
              }
              errors++;
            }
          }
          if (data336.change !== void 0) {
            let data337 = data336.change;
            if (typeof data337 === "string") {
              if (!pattern89.test(data337)) {
                const err877 = { instancePath: instancePath + "/tools/change", schemaPath: "#/properties/tools/properties/change/pattern", keyword: "pattern", params: { pattern: "^(none|with-tool-word|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|with-tool-word|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err877];
                } else {
                  vErrors.push(err877);
                }
                errors++;
              }
            } else {
              const err878 = { instancePath: instancePath + "/tools/change", schemaPath: "#/properties/tools/properties/change/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err878];
              } else {
                vErrors.push(err878);
              }
              errors++;
            }
          }
          if (data336.blocks !== void 0) {
            let data338 = data336.blocks;
            if (typeof data338 !== "string") {
              const err879 = { instancePath: instancePath + "/tools/blocks", schemaPath: "#/properties/tools/properties/blocks/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err879];
              } else {
                vErrors.push(err879);
              }
              errors++;
            }
            if (!(data338 === "together" || data338 === "apart")) {
              const err880 = { instancePath: instancePath + "/tools/blocks", schemaPath: "#/properties/tools/properties/blocks/enum", keyword: "enum", params: { allowedValues: schema31.properties.tools.properties.blocks.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err880];
              } else {
                vErrors.push(err880);
              }
              errors++;
            }
          }
          if (data336.order !== void 0) {
            let data339 = data336.order;
            if (typeof data339 !== "string") {
              const err881 = { instancePath: instancePath + "/tools/order", schemaPath: "#/properties/tools/properties/order/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err881];
              } else {
                vErrors.push(err881);
              }
              errors++;
            }
            if (!(data339 === "select-first" || data339 === "change-first")) {
              const err882 = { instancePath: instancePath + "/tools/order", schemaPath: "#/properties/tools/properties/order/enum", keyword: "enum", params: { allowedValues: schema31.properties.tools.properties.order.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err882];
              } else {
                vErrors.push(err882);
              }
              errors++;
            }
          }
          if (data336.preselect !== void 0) {
            let data340 = data336.preselect;
            if (typeof data340 !== "string") {
              const err883 = { instancePath: instancePath + "/tools/preselect", schemaPath: "#/$defs/yesNo/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err883];
              } else {
                vErrors.push(err883);
              }
              errors++;
            }
            if (!(data340 === "yes" || data340 === "no")) {
              const err884 = { instancePath: instancePath + "/tools/preselect", schemaPath: "#/$defs/yesNo/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err884];
              } else {
                vErrors.push(err884);
              }
              errors++;
            }
          }
          if (data336["in-operator-swap"] !== void 0) {
            let data341 = data336["in-operator-swap"];
            if (typeof data341 !== "string") {
              const err885 = { instancePath: instancePath + "/tools/in-operator-swap", schemaPath: "#/$defs/yesNo/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err885];
              } else {
                vErrors.push(err885);
              }
              errors++;
            }
            if (!(data341 === "yes" || data341 === "no")) {
              const err886 = { instancePath: instancePath + "/tools/in-operator-swap", schemaPath: "#/$defs/yesNo/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err886];
              } else {
                vErrors.push(err886);
              }
              errors++;
            }
          }
          if (data336.empty !== void 0) {
            let data342 = data336.empty;
            const _errs1048 = errors;
            let valid276 = false;
            const _errs1049 = errors;
            if (typeof data342 !== "string") {
              const err887 = { instancePath: instancePath + "/tools/empty", schemaPath: "#/properties/tools/properties/empty/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err887];
              } else {
                vErrors.push(err887);
              }
              errors++;
            }
            if ("none" !== data342) {
              const err888 = { instancePath: instancePath + "/tools/empty", schemaPath: "#/properties/tools/properties/empty/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
              if (vErrors === null) {
                vErrors = [err888];
              } else {
                vErrors.push(err888);
              }
              errors++;
            }
            var _valid36 = _errs1049 === errors;
            valid276 = valid276 || _valid36;
            const _errs1051 = errors;
            if (!(typeof data342 == "number" && (!(data342 % 1) && !isNaN(data342)) && isFinite(data342))) {
              const err889 = { instancePath: instancePath + "/tools/empty", schemaPath: "#/properties/tools/properties/empty/anyOf/1/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
              if (vErrors === null) {
                vErrors = [err889];
              } else {
                vErrors.push(err889);
              }
              errors++;
            }
            if (typeof data342 == "number" && isFinite(data342)) {
              if (data342 > 9999 || isNaN(data342)) {
                const err890 = { instancePath: instancePath + "/tools/empty", schemaPath: "#/properties/tools/properties/empty/anyOf/1/maximum", keyword: "maximum", params: { comparison: "<=", limit: 9999 }, message: "must be <= 9999" };
                if (vErrors === null) {
                  vErrors = [err890];
                } else {
                  vErrors.push(err890);
                }
                errors++;
              }
              if (data342 < 0 || isNaN(data342)) {
                const err891 = { instancePath: instancePath + "/tools/empty", schemaPath: "#/properties/tools/properties/empty/anyOf/1/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                if (vErrors === null) {
                  vErrors = [err891];
                } else {
                  vErrors.push(err891);
                }
                errors++;
              }
            }
            var _valid36 = _errs1051 === errors;
            valid276 = valid276 || _valid36;
            if (!valid276) {
              const err892 = { instancePath: instancePath + "/tools/empty", schemaPath: "#/properties/tools/properties/empty/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err892];
              } else {
                vErrors.push(err892);
              }
              errors++;
            } else {
              errors = _errs1048;
              if (vErrors !== null) {
                if (_errs1048) {
                  vErrors.length = _errs1048;
                } else {
                  vErrors = null;
                }
              }
            }
          }
        } else {
          const err893 = { instancePath: instancePath + "/tools", schemaPath: "#/properties/tools/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err893];
          } else {
            vErrors.push(err893);
          }
          errors++;
        }
      }
      if (data.stops !== void 0) {
        let data343 = data.stops;
        if (data343 && typeof data343 == "object" && !Array.isArray(data343)) {
          for (const key48 in data343) {
            if (!(key48 === "stop" || key48 === "optional" || key48 === "end" || key48 === "comment" || key48 === "resume" || key48 === "end-resets")) {
              const err894 = { instancePath: instancePath + "/stops", schemaPath: "#/properties/stops/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key48 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err894];
              } else {
                vErrors.push(err894);
              }
              errors++;
            }
          }
          if (data343.stop !== void 0) {
            let data344 = data343.stop;
            if (typeof data344 === "string") {
              if (!pattern8.test(data344)) {
                const err895 = { instancePath: instancePath + "/stops/stop", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err895];
                } else {
                  vErrors.push(err895);
                }
                errors++;
              }
            } else {
              const err896 = { instancePath: instancePath + "/stops/stop", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err896];
              } else {
                vErrors.push(err896);
              }
              errors++;
            }
          }
          if (data343.optional !== void 0) {
            let data345 = data343.optional;
            if (typeof data345 === "string") {
              if (!pattern91.test(data345)) {
                const err897 = { instancePath: instancePath + "/stops/optional", schemaPath: "#/$defs/optionalStop/pattern", keyword: "pattern", params: { pattern: "^(none|(/([1-9] )?)?[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|(/([1-9] )?)?[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err897];
                } else {
                  vErrors.push(err897);
                }
                errors++;
              }
            } else {
              const err898 = { instancePath: instancePath + "/stops/optional", schemaPath: "#/$defs/optionalStop/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err898];
              } else {
                vErrors.push(err898);
              }
              errors++;
            }
          }
          if (data343.end !== void 0) {
            let data346 = data343.end;
            if (typeof data346 === "string") {
              if (!pattern8.test(data346)) {
                const err899 = { instancePath: instancePath + "/stops/end", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err899];
                } else {
                  vErrors.push(err899);
                }
                errors++;
              }
            } else {
              const err900 = { instancePath: instancePath + "/stops/end", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err900];
              } else {
                vErrors.push(err900);
              }
              errors++;
            }
          }
          if (data343.comment !== void 0) {
            let data347 = data343.comment;
            if (typeof data347 !== "string") {
              const err901 = { instancePath: instancePath + "/stops/comment", schemaPath: "#/properties/stops/properties/comment/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err901];
              } else {
                vErrors.push(err901);
              }
              errors++;
            }
            if (!(data347 === "own-block" || data347 === "with-stop")) {
              const err902 = { instancePath: instancePath + "/stops/comment", schemaPath: "#/properties/stops/properties/comment/enum", keyword: "enum", params: { allowedValues: schema31.properties.stops.properties.comment.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err902];
              } else {
                vErrors.push(err902);
              }
              errors++;
            }
          }
          if (data343.resume !== void 0) {
            let data348 = data343.resume;
            if (typeof data348 !== "string") {
              const err903 = { instancePath: instancePath + "/stops/resume", schemaPath: "#/properties/stops/properties/resume/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err903];
              } else {
                vErrors.push(err903);
              }
              errors++;
            }
            if (!(data348 === "keeps-modes" || data348 === "loses-modes")) {
              const err904 = { instancePath: instancePath + "/stops/resume", schemaPath: "#/properties/stops/properties/resume/enum", keyword: "enum", params: { allowedValues: schema31.properties.stops.properties.resume.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err904];
              } else {
                vErrors.push(err904);
              }
              errors++;
            }
          }
          if (data343["end-resets"] !== void 0) {
            let data349 = data343["end-resets"];
            if (typeof data349 !== "string") {
              const err905 = { instancePath: instancePath + "/stops/end-resets", schemaPath: "#/$defs/yesNo/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err905];
              } else {
                vErrors.push(err905);
              }
              errors++;
            }
            if (!(data349 === "yes" || data349 === "no")) {
              const err906 = { instancePath: instancePath + "/stops/end-resets", schemaPath: "#/$defs/yesNo/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err906];
              } else {
                vErrors.push(err906);
              }
              errors++;
            }
          }
        } else {
          const err907 = { instancePath: instancePath + "/stops", schemaPath: "#/properties/stops/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err907];
          } else {
            vErrors.push(err907);
          }
          errors++;
        }
      }
      if (data.wait !== void 0) {
        let data350 = data.wait;
        if (data350 && typeof data350 == "object" && !Array.isArray(data350)) {
          for (const key49 in data350) {
            if (!(key49 === "on" || key49 === "off" || key49 === "timeout-unit")) {
              const err908 = { instancePath: instancePath + "/wait", schemaPath: "#/properties/wait/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key49 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err908];
              } else {
                vErrors.push(err908);
              }
              errors++;
            }
          }
          if (data350.on !== void 0) {
            let data351 = data350.on;
            if (!(typeof data351 == "number" && (!(data351 % 1) && !isNaN(data351)) && isFinite(data351))) {
              const err909 = { instancePath: instancePath + "/wait/on", schemaPath: "#/properties/wait/properties/on/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
              if (vErrors === null) {
                vErrors = [err909];
              } else {
                vErrors.push(err909);
              }
              errors++;
            }
            if (typeof data351 == "number" && isFinite(data351)) {
              if (data351 > 9999 || isNaN(data351)) {
                const err910 = { instancePath: instancePath + "/wait/on", schemaPath: "#/properties/wait/properties/on/maximum", keyword: "maximum", params: { comparison: "<=", limit: 9999 }, message: "must be <= 9999" };
                if (vErrors === null) {
                  vErrors = [err910];
                } else {
                  vErrors.push(err910);
                }
                errors++;
              }
              if (data351 < 0 || isNaN(data351)) {
                const err911 = { instancePath: instancePath + "/wait/on", schemaPath: "#/properties/wait/properties/on/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                if (vErrors === null) {
                  vErrors = [err911];
                } else {
                  vErrors.push(err911);
                }
                errors++;
              }
            }
          }
          if (data350.off !== void 0) {
            let data352 = data350.off;
            if (!(typeof data352 == "number" && (!(data352 % 1) && !isNaN(data352)) && isFinite(data352))) {
              const err912 = { instancePath: instancePath + "/wait/off", schemaPath: "#/properties/wait/properties/off/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
              if (vErrors === null) {
                vErrors = [err912];
              } else {
                vErrors.push(err912);
              }
              errors++;
            }
            if (typeof data352 == "number" && isFinite(data352)) {
              if (data352 > 9999 || isNaN(data352)) {
                const err913 = { instancePath: instancePath + "/wait/off", schemaPath: "#/properties/wait/properties/off/maximum", keyword: "maximum", params: { comparison: "<=", limit: 9999 }, message: "must be <= 9999" };
                if (vErrors === null) {
                  vErrors = [err913];
                } else {
                  vErrors.push(err913);
                }
                errors++;
              }
              if (data352 < 0 || isNaN(data352)) {
                const err914 = { instancePath: instancePath + "/wait/off", schemaPath: "#/properties/wait/properties/off/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                if (vErrors === null) {
                  vErrors = [err914];
                } else {
                  vErrors.push(err914);
                }
                errors++;
              }
            }
          }
          if (data350["timeout-unit"] !== void 0) {
            let data353 = data350["timeout-unit"];
            if (typeof data353 !== "string") {
              const err915 = { instancePath: instancePath + "/wait/timeout-unit", schemaPath: "#/properties/wait/properties/timeout-unit/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err915];
              } else {
                vErrors.push(err915);
              }
              errors++;
            }
            if (!(data353 === "s" || data353 === "ms")) {
              const err916 = { instancePath: instancePath + "/wait/timeout-unit", schemaPath: "#/properties/wait/properties/timeout-unit/enum", keyword: "enum", params: { allowedValues: schema31.properties.wait.properties["timeout-unit"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err916];
              } else {
                vErrors.push(err916);
              }
              errors++;
            }
          }
        } else {
          const err917 = { instancePath: instancePath + "/wait", schemaPath: "#/properties/wait/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err917];
          } else {
            vErrors.push(err917);
          }
          errors++;
        }
      }
      if (data.codes !== void 0) {
        let data354 = data.codes;
        if (data354 && typeof data354 == "object" && !Array.isArray(data354)) {
          for (const key50 in data354) {
            if (!pattern93.test(key50)) {
              const err918 = { instancePath: instancePath + "/codes", schemaPath: "#/properties/codes/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key50 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err918];
              } else {
                vErrors.push(err918);
              }
              errors++;
            }
          }
          for (const key51 in data354) {
            if (pattern93.test(key51)) {
              let data355 = data354[key51];
              if (data355 && typeof data355 == "object" && !Array.isArray(data355)) {
                for (const key52 in data355) {
                  if (!(key52 === "does" || key52 === "position" || key52 === "spindle" || key52 === "coolant" || key52 === "length-offset")) {
                    const err919 = { instancePath: instancePath + "/codes/" + key51.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/codes/patternProperties/%5E%5BGM%5D%5Cd%7B1%2C3%7D%24/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key52 }, message: "must NOT have additional properties" };
                    if (vErrors === null) {
                      vErrors = [err919];
                    } else {
                      vErrors.push(err919);
                    }
                    errors++;
                  }
                }
                if (data355.does !== void 0) {
                  let data356 = data355.does;
                  if (typeof data356 === "string") {
                    if (func2(data356) > 120) {
                      const err920 = { instancePath: instancePath + "/codes/" + key51.replace(/~/g, "~0").replace(/\//g, "~1") + "/does", schemaPath: "#/properties/codes/patternProperties/%5E%5BGM%5D%5Cd%7B1%2C3%7D%24/properties/does/maxLength", keyword: "maxLength", params: { limit: 120 }, message: "must NOT have more than 120 characters" };
                      if (vErrors === null) {
                        vErrors = [err920];
                      } else {
                        vErrors.push(err920);
                      }
                      errors++;
                    }
                    if (func2(data356) < 1) {
                      const err921 = { instancePath: instancePath + "/codes/" + key51.replace(/~/g, "~0").replace(/\//g, "~1") + "/does", schemaPath: "#/properties/codes/patternProperties/%5E%5BGM%5D%5Cd%7B1%2C3%7D%24/properties/does/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                      if (vErrors === null) {
                        vErrors = [err921];
                      } else {
                        vErrors.push(err921);
                      }
                      errors++;
                    }
                  } else {
                    const err922 = { instancePath: instancePath + "/codes/" + key51.replace(/~/g, "~0").replace(/\//g, "~1") + "/does", schemaPath: "#/properties/codes/patternProperties/%5E%5BGM%5D%5Cd%7B1%2C3%7D%24/properties/does/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                    if (vErrors === null) {
                      vErrors = [err922];
                    } else {
                      vErrors.push(err922);
                    }
                    errors++;
                  }
                }
                if (data355.position !== void 0) {
                  let data357 = data355.position;
                  if (typeof data357 !== "string") {
                    const err923 = { instancePath: instancePath + "/codes/" + key51.replace(/~/g, "~0").replace(/\//g, "~1") + "/position", schemaPath: "#/properties/codes/patternProperties/%5E%5BGM%5D%5Cd%7B1%2C3%7D%24/properties/position/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                    if (vErrors === null) {
                      vErrors = [err923];
                    } else {
                      vErrors.push(err923);
                    }
                    errors++;
                  }
                  if (!(data357 === "unchanged" || data357 === "unknown" || data357 === "swap-height")) {
                    const err924 = { instancePath: instancePath + "/codes/" + key51.replace(/~/g, "~0").replace(/\//g, "~1") + "/position", schemaPath: "#/properties/codes/patternProperties/%5E%5BGM%5D%5Cd%7B1%2C3%7D%24/properties/position/enum", keyword: "enum", params: { allowedValues: schema31.properties.codes.patternProperties["^[GM]\\d{1,3}$"].properties.position.enum }, message: "must be equal to one of the allowed values" };
                    if (vErrors === null) {
                      vErrors = [err924];
                    } else {
                      vErrors.push(err924);
                    }
                    errors++;
                  }
                }
                if (data355.spindle !== void 0) {
                  let data358 = data355.spindle;
                  if (typeof data358 !== "string") {
                    const err925 = { instancePath: instancePath + "/codes/" + key51.replace(/~/g, "~0").replace(/\//g, "~1") + "/spindle", schemaPath: "#/properties/codes/patternProperties/%5E%5BGM%5D%5Cd%7B1%2C3%7D%24/properties/spindle/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                    if (vErrors === null) {
                      vErrors = [err925];
                    } else {
                      vErrors.push(err925);
                    }
                    errors++;
                  }
                  if (!(data358 === "unchanged" || data358 === "stopped")) {
                    const err926 = { instancePath: instancePath + "/codes/" + key51.replace(/~/g, "~0").replace(/\//g, "~1") + "/spindle", schemaPath: "#/properties/codes/patternProperties/%5E%5BGM%5D%5Cd%7B1%2C3%7D%24/properties/spindle/enum", keyword: "enum", params: { allowedValues: schema31.properties.codes.patternProperties["^[GM]\\d{1,3}$"].properties.spindle.enum }, message: "must be equal to one of the allowed values" };
                    if (vErrors === null) {
                      vErrors = [err926];
                    } else {
                      vErrors.push(err926);
                    }
                    errors++;
                  }
                }
                if (data355.coolant !== void 0) {
                  let data359 = data355.coolant;
                  if (typeof data359 !== "string") {
                    const err927 = { instancePath: instancePath + "/codes/" + key51.replace(/~/g, "~0").replace(/\//g, "~1") + "/coolant", schemaPath: "#/properties/codes/patternProperties/%5E%5BGM%5D%5Cd%7B1%2C3%7D%24/properties/coolant/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                    if (vErrors === null) {
                      vErrors = [err927];
                    } else {
                      vErrors.push(err927);
                    }
                    errors++;
                  }
                  if (!(data359 === "unchanged" || data359 === "off")) {
                    const err928 = { instancePath: instancePath + "/codes/" + key51.replace(/~/g, "~0").replace(/\//g, "~1") + "/coolant", schemaPath: "#/properties/codes/patternProperties/%5E%5BGM%5D%5Cd%7B1%2C3%7D%24/properties/coolant/enum", keyword: "enum", params: { allowedValues: schema31.properties.codes.patternProperties["^[GM]\\d{1,3}$"].properties.coolant.enum }, message: "must be equal to one of the allowed values" };
                    if (vErrors === null) {
                      vErrors = [err928];
                    } else {
                      vErrors.push(err928);
                    }
                    errors++;
                  }
                }
                if (data355["length-offset"] !== void 0) {
                  let data360 = data355["length-offset"];
                  if (typeof data360 !== "string") {
                    const err929 = { instancePath: instancePath + "/codes/" + key51.replace(/~/g, "~0").replace(/\//g, "~1") + "/length-offset", schemaPath: "#/properties/codes/patternProperties/%5E%5BGM%5D%5Cd%7B1%2C3%7D%24/properties/length-offset/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                    if (vErrors === null) {
                      vErrors = [err929];
                    } else {
                      vErrors.push(err929);
                    }
                    errors++;
                  }
                  if (!(data360 === "unchanged" || data360 === "active" || data360 === "cancelled")) {
                    const err930 = { instancePath: instancePath + "/codes/" + key51.replace(/~/g, "~0").replace(/\//g, "~1") + "/length-offset", schemaPath: "#/properties/codes/patternProperties/%5E%5BGM%5D%5Cd%7B1%2C3%7D%24/properties/length-offset/enum", keyword: "enum", params: { allowedValues: schema31.properties.codes.patternProperties["^[GM]\\d{1,3}$"].properties["length-offset"].enum }, message: "must be equal to one of the allowed values" };
                    if (vErrors === null) {
                      vErrors = [err930];
                    } else {
                      vErrors.push(err930);
                    }
                    errors++;
                  }
                }
              } else {
                const err931 = { instancePath: instancePath + "/codes/" + key51.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/codes/patternProperties/%5E%5BGM%5D%5Cd%7B1%2C3%7D%24/type", keyword: "type", params: { type: "object" }, message: "must be object" };
                if (vErrors === null) {
                  vErrors = [err931];
                } else {
                  vErrors.push(err931);
                }
                errors++;
              }
            }
          }
        } else {
          const err932 = { instancePath: instancePath + "/codes", schemaPath: "#/properties/codes/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err932];
          } else {
            vErrors.push(err932);
          }
          errors++;
        }
      }
      if (data.idioms !== void 0) {
        let data361 = data.idioms;
        if (data361 && typeof data361 == "object" && !Array.isArray(data361)) {
          for (const key53 in data361) {
            if (!func1.call(schema31.properties.idioms.properties, key53)) {
              const err933 = { instancePath: instancePath + "/idioms", schemaPath: "#/properties/idioms/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key53 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err933];
              } else {
                vErrors.push(err933);
              }
              errors++;
            }
          }
          if (data361.message !== void 0) {
            let data362 = data361.message;
            if (typeof data362 === "string") {
              if (func2(data362) > 120) {
                const err934 = { instancePath: instancePath + "/idioms/message", schemaPath: "#/$defs/template/maxLength", keyword: "maxLength", params: { limit: 120 }, message: "must NOT have more than 120 characters" };
                if (vErrors === null) {
                  vErrors = [err934];
                } else {
                  vErrors.push(err934);
                }
                errors++;
              }
              if (func2(data362) < 1) {
                const err935 = { instancePath: instancePath + "/idioms/message", schemaPath: "#/$defs/template/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                if (vErrors === null) {
                  vErrors = [err935];
                } else {
                  vErrors.push(err935);
                }
                errors++;
              }
            } else {
              const err936 = { instancePath: instancePath + "/idioms/message", schemaPath: "#/$defs/template/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err936];
              } else {
                vErrors.push(err936);
              }
              errors++;
            }
          }
          if (data361.header !== void 0) {
            let data363 = data361.header;
            const _errs1104 = errors;
            let valid287 = false;
            const _errs1105 = errors;
            if (typeof data363 !== "string") {
              const err937 = { instancePath: instancePath + "/idioms/header", schemaPath: "#/properties/idioms/properties/header/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err937];
              } else {
                vErrors.push(err937);
              }
              errors++;
            }
            if ("none" !== data363) {
              const err938 = { instancePath: instancePath + "/idioms/header", schemaPath: "#/properties/idioms/properties/header/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
              if (vErrors === null) {
                vErrors = [err938];
              } else {
                vErrors.push(err938);
              }
              errors++;
            }
            var _valid37 = _errs1105 === errors;
            valid287 = valid287 || _valid37;
            const _errs1107 = errors;
            if (Array.isArray(data363)) {
              if (data363.length > 40) {
                const err939 = { instancePath: instancePath + "/idioms/header", schemaPath: "#/properties/idioms/properties/header/anyOf/1/maxItems", keyword: "maxItems", params: { limit: 40 }, message: "must NOT have more than 40 items" };
                if (vErrors === null) {
                  vErrors = [err939];
                } else {
                  vErrors.push(err939);
                }
                errors++;
              }
              if (data363.length < 1) {
                const err940 = { instancePath: instancePath + "/idioms/header", schemaPath: "#/properties/idioms/properties/header/anyOf/1/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items" };
                if (vErrors === null) {
                  vErrors = [err940];
                } else {
                  vErrors.push(err940);
                }
                errors++;
              }
              const len9 = data363.length;
              for (let i12 = 0; i12 < len9; i12++) {
                let data364 = data363[i12];
                if (typeof data364 === "string") {
                  if (func2(data364) > 160) {
                    const err941 = { instancePath: instancePath + "/idioms/header/" + i12, schemaPath: "#/properties/idioms/properties/header/anyOf/1/items/maxLength", keyword: "maxLength", params: { limit: 160 }, message: "must NOT have more than 160 characters" };
                    if (vErrors === null) {
                      vErrors = [err941];
                    } else {
                      vErrors.push(err941);
                    }
                    errors++;
                  }
                  if (func2(data364) < 1) {
                    const err942 = { instancePath: instancePath + "/idioms/header/" + i12, schemaPath: "#/properties/idioms/properties/header/anyOf/1/items/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                    if (vErrors === null) {
                      vErrors = [err942];
                    } else {
                      vErrors.push(err942);
                    }
                    errors++;
                  }
                } else {
                  const err943 = { instancePath: instancePath + "/idioms/header/" + i12, schemaPath: "#/properties/idioms/properties/header/anyOf/1/items/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err943];
                  } else {
                    vErrors.push(err943);
                  }
                  errors++;
                }
              }
            } else {
              const err944 = { instancePath: instancePath + "/idioms/header", schemaPath: "#/properties/idioms/properties/header/anyOf/1/type", keyword: "type", params: { type: "array" }, message: "must be array" };
              if (vErrors === null) {
                vErrors = [err944];
              } else {
                vErrors.push(err944);
              }
              errors++;
            }
            var _valid37 = _errs1107 === errors;
            valid287 = valid287 || _valid37;
            if (!valid287) {
              const err945 = { instancePath: instancePath + "/idioms/header", schemaPath: "#/properties/idioms/properties/header/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err945];
              } else {
                vErrors.push(err945);
              }
              errors++;
            } else {
              errors = _errs1104;
              if (vErrors !== null) {
                if (_errs1104) {
                  vErrors.length = _errs1104;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data361.footer !== void 0) {
            let data365 = data361.footer;
            const _errs1112 = errors;
            let valid290 = false;
            const _errs1113 = errors;
            if (typeof data365 !== "string") {
              const err946 = { instancePath: instancePath + "/idioms/footer", schemaPath: "#/properties/idioms/properties/footer/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err946];
              } else {
                vErrors.push(err946);
              }
              errors++;
            }
            if ("none" !== data365) {
              const err947 = { instancePath: instancePath + "/idioms/footer", schemaPath: "#/properties/idioms/properties/footer/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
              if (vErrors === null) {
                vErrors = [err947];
              } else {
                vErrors.push(err947);
              }
              errors++;
            }
            var _valid38 = _errs1113 === errors;
            valid290 = valid290 || _valid38;
            const _errs1115 = errors;
            if (Array.isArray(data365)) {
              if (data365.length > 40) {
                const err948 = { instancePath: instancePath + "/idioms/footer", schemaPath: "#/properties/idioms/properties/footer/anyOf/1/maxItems", keyword: "maxItems", params: { limit: 40 }, message: "must NOT have more than 40 items" };
                if (vErrors === null) {
                  vErrors = [err948];
                } else {
                  vErrors.push(err948);
                }
                errors++;
              }
              if (data365.length < 1) {
                const err949 = { instancePath: instancePath + "/idioms/footer", schemaPath: "#/properties/idioms/properties/footer/anyOf/1/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items" };
                if (vErrors === null) {
                  vErrors = [err949];
                } else {
                  vErrors.push(err949);
                }
                errors++;
              }
              const len10 = data365.length;
              for (let i13 = 0; i13 < len10; i13++) {
                let data366 = data365[i13];
                if (typeof data366 === "string") {
                  if (func2(data366) > 160) {
                    const err950 = { instancePath: instancePath + "/idioms/footer/" + i13, schemaPath: "#/properties/idioms/properties/footer/anyOf/1/items/maxLength", keyword: "maxLength", params: { limit: 160 }, message: "must NOT have more than 160 characters" };
                    if (vErrors === null) {
                      vErrors = [err950];
                    } else {
                      vErrors.push(err950);
                    }
                    errors++;
                  }
                  if (func2(data366) < 1) {
                    const err951 = { instancePath: instancePath + "/idioms/footer/" + i13, schemaPath: "#/properties/idioms/properties/footer/anyOf/1/items/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                    if (vErrors === null) {
                      vErrors = [err951];
                    } else {
                      vErrors.push(err951);
                    }
                    errors++;
                  }
                } else {
                  const err952 = { instancePath: instancePath + "/idioms/footer/" + i13, schemaPath: "#/properties/idioms/properties/footer/anyOf/1/items/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err952];
                  } else {
                    vErrors.push(err952);
                  }
                  errors++;
                }
              }
            } else {
              const err953 = { instancePath: instancePath + "/idioms/footer", schemaPath: "#/properties/idioms/properties/footer/anyOf/1/type", keyword: "type", params: { type: "array" }, message: "must be array" };
              if (vErrors === null) {
                vErrors = [err953];
              } else {
                vErrors.push(err953);
              }
              errors++;
            }
            var _valid38 = _errs1115 === errors;
            valid290 = valid290 || _valid38;
            if (!valid290) {
              const err954 = { instancePath: instancePath + "/idioms/footer", schemaPath: "#/properties/idioms/properties/footer/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err954];
              } else {
                vErrors.push(err954);
              }
              errors++;
            } else {
              errors = _errs1112;
              if (vErrors !== null) {
                if (_errs1112) {
                  vErrors.length = _errs1112;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data361["wait-signal"] !== void 0) {
            let data367 = data361["wait-signal"];
            if (typeof data367 === "string") {
              if (func2(data367) > 120) {
                const err955 = { instancePath: instancePath + "/idioms/wait-signal", schemaPath: "#/$defs/template/maxLength", keyword: "maxLength", params: { limit: 120 }, message: "must NOT have more than 120 characters" };
                if (vErrors === null) {
                  vErrors = [err955];
                } else {
                  vErrors.push(err955);
                }
                errors++;
              }
              if (func2(data367) < 1) {
                const err956 = { instancePath: instancePath + "/idioms/wait-signal", schemaPath: "#/$defs/template/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                if (vErrors === null) {
                  vErrors = [err956];
                } else {
                  vErrors.push(err956);
                }
                errors++;
              }
            } else {
              const err957 = { instancePath: instancePath + "/idioms/wait-signal", schemaPath: "#/$defs/template/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err957];
              } else {
                vErrors.push(err957);
              }
              errors++;
            }
          }
          if (data361["output-on"] !== void 0) {
            let data368 = data361["output-on"];
            if (typeof data368 === "string") {
              if (func2(data368) > 120) {
                const err958 = { instancePath: instancePath + "/idioms/output-on", schemaPath: "#/$defs/template/maxLength", keyword: "maxLength", params: { limit: 120 }, message: "must NOT have more than 120 characters" };
                if (vErrors === null) {
                  vErrors = [err958];
                } else {
                  vErrors.push(err958);
                }
                errors++;
              }
              if (func2(data368) < 1) {
                const err959 = { instancePath: instancePath + "/idioms/output-on", schemaPath: "#/$defs/template/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                if (vErrors === null) {
                  vErrors = [err959];
                } else {
                  vErrors.push(err959);
                }
                errors++;
              }
            } else {
              const err960 = { instancePath: instancePath + "/idioms/output-on", schemaPath: "#/$defs/template/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err960];
              } else {
                vErrors.push(err960);
              }
              errors++;
            }
          }
          if (data361["output-off"] !== void 0) {
            let data369 = data361["output-off"];
            if (typeof data369 === "string") {
              if (func2(data369) > 120) {
                const err961 = { instancePath: instancePath + "/idioms/output-off", schemaPath: "#/$defs/template/maxLength", keyword: "maxLength", params: { limit: 120 }, message: "must NOT have more than 120 characters" };
                if (vErrors === null) {
                  vErrors = [err961];
                } else {
                  vErrors.push(err961);
                }
                errors++;
              }
              if (func2(data369) < 1) {
                const err962 = { instancePath: instancePath + "/idioms/output-off", schemaPath: "#/$defs/template/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                if (vErrors === null) {
                  vErrors = [err962];
                } else {
                  vErrors.push(err962);
                }
                errors++;
              }
            } else {
              const err963 = { instancePath: instancePath + "/idioms/output-off", schemaPath: "#/$defs/template/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err963];
              } else {
                vErrors.push(err963);
              }
              errors++;
            }
          }
          if (data361.release !== void 0) {
            let data370 = data361.release;
            if (typeof data370 === "string") {
              if (func2(data370) > 120) {
                const err964 = { instancePath: instancePath + "/idioms/release", schemaPath: "#/$defs/template/maxLength", keyword: "maxLength", params: { limit: 120 }, message: "must NOT have more than 120 characters" };
                if (vErrors === null) {
                  vErrors = [err964];
                } else {
                  vErrors.push(err964);
                }
                errors++;
              }
              if (func2(data370) < 1) {
                const err965 = { instancePath: instancePath + "/idioms/release", schemaPath: "#/$defs/template/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                if (vErrors === null) {
                  vErrors = [err965];
                } else {
                  vErrors.push(err965);
                }
                errors++;
              }
            } else {
              const err966 = { instancePath: instancePath + "/idioms/release", schemaPath: "#/$defs/template/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err966];
              } else {
                vErrors.push(err966);
              }
              errors++;
            }
          }
          if (data361.clamp !== void 0) {
            let data371 = data361.clamp;
            if (typeof data371 === "string") {
              if (func2(data371) > 120) {
                const err967 = { instancePath: instancePath + "/idioms/clamp", schemaPath: "#/$defs/template/maxLength", keyword: "maxLength", params: { limit: 120 }, message: "must NOT have more than 120 characters" };
                if (vErrors === null) {
                  vErrors = [err967];
                } else {
                  vErrors.push(err967);
                }
                errors++;
              }
              if (func2(data371) < 1) {
                const err968 = { instancePath: instancePath + "/idioms/clamp", schemaPath: "#/$defs/template/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                if (vErrors === null) {
                  vErrors = [err968];
                } else {
                  vErrors.push(err968);
                }
                errors++;
              }
            } else {
              const err969 = { instancePath: instancePath + "/idioms/clamp", schemaPath: "#/$defs/template/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err969];
              } else {
                vErrors.push(err969);
              }
              errors++;
            }
          }
          if (data361["taper-air-on"] !== void 0) {
            let data372 = data361["taper-air-on"];
            if (typeof data372 === "string") {
              if (func2(data372) > 120) {
                const err970 = { instancePath: instancePath + "/idioms/taper-air-on", schemaPath: "#/$defs/template/maxLength", keyword: "maxLength", params: { limit: 120 }, message: "must NOT have more than 120 characters" };
                if (vErrors === null) {
                  vErrors = [err970];
                } else {
                  vErrors.push(err970);
                }
                errors++;
              }
              if (func2(data372) < 1) {
                const err971 = { instancePath: instancePath + "/idioms/taper-air-on", schemaPath: "#/$defs/template/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                if (vErrors === null) {
                  vErrors = [err971];
                } else {
                  vErrors.push(err971);
                }
                errors++;
              }
            } else {
              const err972 = { instancePath: instancePath + "/idioms/taper-air-on", schemaPath: "#/$defs/template/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err972];
              } else {
                vErrors.push(err972);
              }
              errors++;
            }
          }
          if (data361["taper-air-off"] !== void 0) {
            let data373 = data361["taper-air-off"];
            if (typeof data373 === "string") {
              if (func2(data373) > 120) {
                const err973 = { instancePath: instancePath + "/idioms/taper-air-off", schemaPath: "#/$defs/template/maxLength", keyword: "maxLength", params: { limit: 120 }, message: "must NOT have more than 120 characters" };
                if (vErrors === null) {
                  vErrors = [err973];
                } else {
                  vErrors.push(err973);
                }
                errors++;
              }
              if (func2(data373) < 1) {
                const err974 = { instancePath: instancePath + "/idioms/taper-air-off", schemaPath: "#/$defs/template/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                if (vErrors === null) {
                  vErrors = [err974];
                } else {
                  vErrors.push(err974);
                }
                errors++;
              }
            } else {
              const err975 = { instancePath: instancePath + "/idioms/taper-air-off", schemaPath: "#/$defs/template/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err975];
              } else {
                vErrors.push(err975);
              }
              errors++;
            }
          }
          if (data361["cover-open"] !== void 0) {
            let data374 = data361["cover-open"];
            if (typeof data374 === "string") {
              if (func2(data374) > 120) {
                const err976 = { instancePath: instancePath + "/idioms/cover-open", schemaPath: "#/$defs/template/maxLength", keyword: "maxLength", params: { limit: 120 }, message: "must NOT have more than 120 characters" };
                if (vErrors === null) {
                  vErrors = [err976];
                } else {
                  vErrors.push(err976);
                }
                errors++;
              }
              if (func2(data374) < 1) {
                const err977 = { instancePath: instancePath + "/idioms/cover-open", schemaPath: "#/$defs/template/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                if (vErrors === null) {
                  vErrors = [err977];
                } else {
                  vErrors.push(err977);
                }
                errors++;
              }
            } else {
              const err978 = { instancePath: instancePath + "/idioms/cover-open", schemaPath: "#/$defs/template/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err978];
              } else {
                vErrors.push(err978);
              }
              errors++;
            }
          }
          if (data361["cover-close"] !== void 0) {
            let data375 = data361["cover-close"];
            if (typeof data375 === "string") {
              if (func2(data375) > 120) {
                const err979 = { instancePath: instancePath + "/idioms/cover-close", schemaPath: "#/$defs/template/maxLength", keyword: "maxLength", params: { limit: 120 }, message: "must NOT have more than 120 characters" };
                if (vErrors === null) {
                  vErrors = [err979];
                } else {
                  vErrors.push(err979);
                }
                errors++;
              }
              if (func2(data375) < 1) {
                const err980 = { instancePath: instancePath + "/idioms/cover-close", schemaPath: "#/$defs/template/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                if (vErrors === null) {
                  vErrors = [err980];
                } else {
                  vErrors.push(err980);
                }
                errors++;
              }
            } else {
              const err981 = { instancePath: instancePath + "/idioms/cover-close", schemaPath: "#/$defs/template/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err981];
              } else {
                vErrors.push(err981);
              }
              errors++;
            }
          }
          if (data361["hood-up"] !== void 0) {
            let data376 = data361["hood-up"];
            if (typeof data376 === "string") {
              if (func2(data376) > 120) {
                const err982 = { instancePath: instancePath + "/idioms/hood-up", schemaPath: "#/$defs/template/maxLength", keyword: "maxLength", params: { limit: 120 }, message: "must NOT have more than 120 characters" };
                if (vErrors === null) {
                  vErrors = [err982];
                } else {
                  vErrors.push(err982);
                }
                errors++;
              }
              if (func2(data376) < 1) {
                const err983 = { instancePath: instancePath + "/idioms/hood-up", schemaPath: "#/$defs/template/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                if (vErrors === null) {
                  vErrors = [err983];
                } else {
                  vErrors.push(err983);
                }
                errors++;
              }
            } else {
              const err984 = { instancePath: instancePath + "/idioms/hood-up", schemaPath: "#/$defs/template/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err984];
              } else {
                vErrors.push(err984);
              }
              errors++;
            }
          }
          if (data361["hood-down"] !== void 0) {
            let data377 = data361["hood-down"];
            if (typeof data377 === "string") {
              if (func2(data377) > 120) {
                const err985 = { instancePath: instancePath + "/idioms/hood-down", schemaPath: "#/$defs/template/maxLength", keyword: "maxLength", params: { limit: 120 }, message: "must NOT have more than 120 characters" };
                if (vErrors === null) {
                  vErrors = [err985];
                } else {
                  vErrors.push(err985);
                }
                errors++;
              }
              if (func2(data377) < 1) {
                const err986 = { instancePath: instancePath + "/idioms/hood-down", schemaPath: "#/$defs/template/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                if (vErrors === null) {
                  vErrors = [err986];
                } else {
                  vErrors.push(err986);
                }
                errors++;
              }
            } else {
              const err987 = { instancePath: instancePath + "/idioms/hood-down", schemaPath: "#/$defs/template/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err987];
              } else {
                vErrors.push(err987);
              }
              errors++;
            }
          }
          if (data361.measure !== void 0) {
            let data378 = data361.measure;
            if (typeof data378 === "string") {
              if (func2(data378) > 120) {
                const err988 = { instancePath: instancePath + "/idioms/measure", schemaPath: "#/$defs/template/maxLength", keyword: "maxLength", params: { limit: 120 }, message: "must NOT have more than 120 characters" };
                if (vErrors === null) {
                  vErrors = [err988];
                } else {
                  vErrors.push(err988);
                }
                errors++;
              }
              if (func2(data378) < 1) {
                const err989 = { instancePath: instancePath + "/idioms/measure", schemaPath: "#/$defs/template/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                if (vErrors === null) {
                  vErrors = [err989];
                } else {
                  vErrors.push(err989);
                }
                errors++;
              }
            } else {
              const err990 = { instancePath: instancePath + "/idioms/measure", schemaPath: "#/$defs/template/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err990];
              } else {
                vErrors.push(err990);
              }
              errors++;
            }
          }
        } else {
          const err991 = { instancePath: instancePath + "/idioms", schemaPath: "#/properties/idioms/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err991];
          } else {
            vErrors.push(err991);
          }
          errors++;
        }
      }
      if (data.machine !== void 0) {
        let data379 = data.machine;
        if (data379 && typeof data379 == "object" && !Array.isArray(data379)) {
          for (const key54 in data379) {
            if (!func1.call(schema31.properties.machine.properties, key54)) {
              const err992 = { instancePath: instancePath + "/machine", schemaPath: "#/properties/machine/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key54 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err992];
              } else {
                vErrors.push(err992);
              }
              errors++;
            }
          }
          if (data379.travel !== void 0) {
            let data380 = data379.travel;
            if (data380 && typeof data380 == "object" && !Array.isArray(data380)) {
              for (const key55 in data380) {
                if (!(key55 === "x" || key55 === "y" || key55 === "z" || key55 === "a" || key55 === "b" || key55 === "c")) {
                  const err993 = { instancePath: instancePath + "/machine/travel", schemaPath: "#/properties/machine/properties/travel/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key55 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err993];
                  } else {
                    vErrors.push(err993);
                  }
                  errors++;
                }
              }
              if (data380.x !== void 0) {
                let data381 = data380.x;
                if (Array.isArray(data381)) {
                  if (data381.length > 2) {
                    const err994 = { instancePath: instancePath + "/machine/travel/x", schemaPath: "#/properties/machine/properties/travel/properties/x/maxItems", keyword: "maxItems", params: { limit: 2 }, message: "must NOT have more than 2 items" };
                    if (vErrors === null) {
                      vErrors = [err994];
                    } else {
                      vErrors.push(err994);
                    }
                    errors++;
                  }
                  if (data381.length < 2) {
                    const err995 = { instancePath: instancePath + "/machine/travel/x", schemaPath: "#/properties/machine/properties/travel/properties/x/minItems", keyword: "minItems", params: { limit: 2 }, message: "must NOT have fewer than 2 items" };
                    if (vErrors === null) {
                      vErrors = [err995];
                    } else {
                      vErrors.push(err995);
                    }
                    errors++;
                  }
                  const len11 = data381.length;
                  for (let i14 = 0; i14 < len11; i14++) {
                    let data382 = data381[i14];
                    const _errs1165 = errors;
                    let valid310 = false;
                    const _errs1166 = errors;
                    if (typeof data382 == "number" && isFinite(data382)) {
                      if (data382 > 1e6 || isNaN(data382)) {
                        const err996 = { instancePath: instancePath + "/machine/travel/x/" + i14, schemaPath: "#/$defs/length/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                        if (vErrors === null) {
                          vErrors = [err996];
                        } else {
                          vErrors.push(err996);
                        }
                        errors++;
                      }
                      if (data382 < -1e6 || isNaN(data382)) {
                        const err997 = { instancePath: instancePath + "/machine/travel/x/" + i14, schemaPath: "#/$defs/length/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: -1e6 }, message: "must be >= -1000000" };
                        if (vErrors === null) {
                          vErrors = [err997];
                        } else {
                          vErrors.push(err997);
                        }
                        errors++;
                      }
                    } else {
                      const err998 = { instancePath: instancePath + "/machine/travel/x/" + i14, schemaPath: "#/$defs/length/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                      if (vErrors === null) {
                        vErrors = [err998];
                      } else {
                        vErrors.push(err998);
                      }
                      errors++;
                    }
                    var _valid39 = _errs1166 === errors;
                    valid310 = valid310 || _valid39;
                    const _errs1168 = errors;
                    if (typeof data382 === "string") {
                      if (!pattern26.test(data382)) {
                        const err999 = { instancePath: instancePath + "/machine/travel/x/" + i14, schemaPath: "#/$defs/length/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }, message: 'must match pattern "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$"' };
                        if (vErrors === null) {
                          vErrors = [err999];
                        } else {
                          vErrors.push(err999);
                        }
                        errors++;
                      }
                    } else {
                      const err1000 = { instancePath: instancePath + "/machine/travel/x/" + i14, schemaPath: "#/$defs/length/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                      if (vErrors === null) {
                        vErrors = [err1000];
                      } else {
                        vErrors.push(err1000);
                      }
                      errors++;
                    }
                    var _valid39 = _errs1168 === errors;
                    valid310 = valid310 || _valid39;
                    if (!valid310) {
                      const err1001 = { instancePath: instancePath + "/machine/travel/x/" + i14, schemaPath: "#/$defs/length/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                      if (vErrors === null) {
                        vErrors = [err1001];
                      } else {
                        vErrors.push(err1001);
                      }
                      errors++;
                    } else {
                      errors = _errs1165;
                      if (vErrors !== null) {
                        if (_errs1165) {
                          vErrors.length = _errs1165;
                        } else {
                          vErrors = null;
                        }
                      }
                    }
                  }
                } else {
                  const err1002 = { instancePath: instancePath + "/machine/travel/x", schemaPath: "#/properties/machine/properties/travel/properties/x/type", keyword: "type", params: { type: "array" }, message: "must be array" };
                  if (vErrors === null) {
                    vErrors = [err1002];
                  } else {
                    vErrors.push(err1002);
                  }
                  errors++;
                }
              }
              if (data380.y !== void 0) {
                let data383 = data380.y;
                if (Array.isArray(data383)) {
                  if (data383.length > 2) {
                    const err1003 = { instancePath: instancePath + "/machine/travel/y", schemaPath: "#/properties/machine/properties/travel/properties/y/maxItems", keyword: "maxItems", params: { limit: 2 }, message: "must NOT have more than 2 items" };
                    if (vErrors === null) {
                      vErrors = [err1003];
                    } else {
                      vErrors.push(err1003);
                    }
                    errors++;
                  }
                  if (data383.length < 2) {
                    const err1004 = { instancePath: instancePath + "/machine/travel/y", schemaPath: "#/properties/machine/properties/travel/properties/y/minItems", keyword: "minItems", params: { limit: 2 }, message: "must NOT have fewer than 2 items" };
                    if (vErrors === null) {
                      vErrors = [err1004];
                    } else {
                      vErrors.push(err1004);
                    }
                    errors++;
                  }
                  const len12 = data383.length;
                  for (let i15 = 0; i15 < len12; i15++) {
                    let data384 = data383[i15];
                    const _errs1174 = errors;
                    let valid314 = false;
                    const _errs1175 = errors;
                    if (typeof data384 == "number" && isFinite(data384)) {
                      if (data384 > 1e6 || isNaN(data384)) {
                        const err1005 = { instancePath: instancePath + "/machine/travel/y/" + i15, schemaPath: "#/$defs/length/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                        if (vErrors === null) {
                          vErrors = [err1005];
                        } else {
                          vErrors.push(err1005);
                        }
                        errors++;
                      }
                      if (data384 < -1e6 || isNaN(data384)) {
                        const err1006 = { instancePath: instancePath + "/machine/travel/y/" + i15, schemaPath: "#/$defs/length/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: -1e6 }, message: "must be >= -1000000" };
                        if (vErrors === null) {
                          vErrors = [err1006];
                        } else {
                          vErrors.push(err1006);
                        }
                        errors++;
                      }
                    } else {
                      const err1007 = { instancePath: instancePath + "/machine/travel/y/" + i15, schemaPath: "#/$defs/length/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                      if (vErrors === null) {
                        vErrors = [err1007];
                      } else {
                        vErrors.push(err1007);
                      }
                      errors++;
                    }
                    var _valid40 = _errs1175 === errors;
                    valid314 = valid314 || _valid40;
                    const _errs1177 = errors;
                    if (typeof data384 === "string") {
                      if (!pattern26.test(data384)) {
                        const err1008 = { instancePath: instancePath + "/machine/travel/y/" + i15, schemaPath: "#/$defs/length/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }, message: 'must match pattern "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$"' };
                        if (vErrors === null) {
                          vErrors = [err1008];
                        } else {
                          vErrors.push(err1008);
                        }
                        errors++;
                      }
                    } else {
                      const err1009 = { instancePath: instancePath + "/machine/travel/y/" + i15, schemaPath: "#/$defs/length/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                      if (vErrors === null) {
                        vErrors = [err1009];
                      } else {
                        vErrors.push(err1009);
                      }
                      errors++;
                    }
                    var _valid40 = _errs1177 === errors;
                    valid314 = valid314 || _valid40;
                    if (!valid314) {
                      const err1010 = { instancePath: instancePath + "/machine/travel/y/" + i15, schemaPath: "#/$defs/length/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
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
                  const err1011 = { instancePath: instancePath + "/machine/travel/y", schemaPath: "#/properties/machine/properties/travel/properties/y/type", keyword: "type", params: { type: "array" }, message: "must be array" };
                  if (vErrors === null) {
                    vErrors = [err1011];
                  } else {
                    vErrors.push(err1011);
                  }
                  errors++;
                }
              }
              if (data380.z !== void 0) {
                let data385 = data380.z;
                if (Array.isArray(data385)) {
                  if (data385.length > 2) {
                    const err1012 = { instancePath: instancePath + "/machine/travel/z", schemaPath: "#/properties/machine/properties/travel/properties/z/maxItems", keyword: "maxItems", params: { limit: 2 }, message: "must NOT have more than 2 items" };
                    if (vErrors === null) {
                      vErrors = [err1012];
                    } else {
                      vErrors.push(err1012);
                    }
                    errors++;
                  }
                  if (data385.length < 2) {
                    const err1013 = { instancePath: instancePath + "/machine/travel/z", schemaPath: "#/properties/machine/properties/travel/properties/z/minItems", keyword: "minItems", params: { limit: 2 }, message: "must NOT have fewer than 2 items" };
                    if (vErrors === null) {
                      vErrors = [err1013];
                    } else {
                      vErrors.push(err1013);
                    }
                    errors++;
                  }
                  const len13 = data385.length;
                  for (let i16 = 0; i16 < len13; i16++) {
                    let data386 = data385[i16];
                    const _errs1183 = errors;
                    let valid318 = false;
                    const _errs1184 = errors;
                    if (typeof data386 == "number" && isFinite(data386)) {
                      if (data386 > 1e6 || isNaN(data386)) {
                        const err1014 = { instancePath: instancePath + "/machine/travel/z/" + i16, schemaPath: "#/$defs/length/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                        if (vErrors === null) {
                          vErrors = [err1014];
                        } else {
                          vErrors.push(err1014);
                        }
                        errors++;
                      }
                      if (data386 < -1e6 || isNaN(data386)) {
                        const err1015 = { instancePath: instancePath + "/machine/travel/z/" + i16, schemaPath: "#/$defs/length/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: -1e6 }, message: "must be >= -1000000" };
                        if (vErrors === null) {
                          vErrors = [err1015];
                        } else {
                          vErrors.push(err1015);
                        }
                        errors++;
                      }
                    } else {
                      const err1016 = { instancePath: instancePath + "/machine/travel/z/" + i16, schemaPath: "#/$defs/length/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                      if (vErrors === null) {
                        vErrors = [err1016];
                      } else {
                        vErrors.push(err1016);
                      }
                      errors++;
                    }
                    var _valid41 = _errs1184 === errors;
                    valid318 = valid318 || _valid41;
                    const _errs1186 = errors;
                    if (typeof data386 === "string") {
                      if (!pattern26.test(data386)) {
                        const err1017 = { instancePath: instancePath + "/machine/travel/z/" + i16, schemaPath: "#/$defs/length/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }, message: 'must match pattern "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$"' };
                        if (vErrors === null) {
                          vErrors = [err1017];
                        } else {
                          vErrors.push(err1017);
                        }
                        errors++;
                      }
                    } else {
                      const err1018 = { instancePath: instancePath + "/machine/travel/z/" + i16, schemaPath: "#/$defs/length/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                      if (vErrors === null) {
                        vErrors = [err1018];
                      } else {
                        vErrors.push(err1018);
                      }
                      errors++;
                    }
                    var _valid41 = _errs1186 === errors;
                    valid318 = valid318 || _valid41;
                    if (!valid318) {
                      const err1019 = { instancePath: instancePath + "/machine/travel/z/" + i16, schemaPath: "#/$defs/length/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
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
                  const err1020 = { instancePath: instancePath + "/machine/travel/z", schemaPath: "#/properties/machine/properties/travel/properties/z/type", keyword: "type", params: { type: "array" }, message: "must be array" };
                  if (vErrors === null) {
                    vErrors = [err1020];
                  } else {
                    vErrors.push(err1020);
                  }
                  errors++;
                }
              }
              if (data380.a !== void 0) {
                let data387 = data380.a;
                if (Array.isArray(data387)) {
                  if (data387.length > 2) {
                    const err1021 = { instancePath: instancePath + "/machine/travel/a", schemaPath: "#/properties/machine/properties/travel/properties/a/maxItems", keyword: "maxItems", params: { limit: 2 }, message: "must NOT have more than 2 items" };
                    if (vErrors === null) {
                      vErrors = [err1021];
                    } else {
                      vErrors.push(err1021);
                    }
                    errors++;
                  }
                  if (data387.length < 2) {
                    const err1022 = { instancePath: instancePath + "/machine/travel/a", schemaPath: "#/properties/machine/properties/travel/properties/a/minItems", keyword: "minItems", params: { limit: 2 }, message: "must NOT have fewer than 2 items" };
                    if (vErrors === null) {
                      vErrors = [err1022];
                    } else {
                      vErrors.push(err1022);
                    }
                    errors++;
                  }
                  const len14 = data387.length;
                  for (let i17 = 0; i17 < len14; i17++) {
                    let data388 = data387[i17];
                    if (typeof data388 == "number" && isFinite(data388)) {
                      if (data388 > 36e6 || isNaN(data388)) {
                        const err1023 = { instancePath: instancePath + "/machine/travel/a/" + i17, schemaPath: "#/properties/machine/properties/travel/properties/a/items/maximum", keyword: "maximum", params: { comparison: "<=", limit: 36e6 }, message: "must be <= 36000000" };
                        if (vErrors === null) {
                          vErrors = [err1023];
                        } else {
                          vErrors.push(err1023);
                        }
                        errors++;
                      }
                      if (data388 < -36e6 || isNaN(data388)) {
                        const err1024 = { instancePath: instancePath + "/machine/travel/a/" + i17, schemaPath: "#/properties/machine/properties/travel/properties/a/items/minimum", keyword: "minimum", params: { comparison: ">=", limit: -36e6 }, message: "must be >= -36000000" };
                        if (vErrors === null) {
                          vErrors = [err1024];
                        } else {
                          vErrors.push(err1024);
                        }
                        errors++;
                      }
                    } else {
                      const err1025 = { instancePath: instancePath + "/machine/travel/a/" + i17, schemaPath: "#/properties/machine/properties/travel/properties/a/items/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                      if (vErrors === null) {
                        vErrors = [err1025];
                      } else {
                        vErrors.push(err1025);
                      }
                      errors++;
                    }
                  }
                } else {
                  const err1026 = { instancePath: instancePath + "/machine/travel/a", schemaPath: "#/properties/machine/properties/travel/properties/a/type", keyword: "type", params: { type: "array" }, message: "must be array" };
                  if (vErrors === null) {
                    vErrors = [err1026];
                  } else {
                    vErrors.push(err1026);
                  }
                  errors++;
                }
              }
              if (data380.b !== void 0) {
                let data389 = data380.b;
                if (Array.isArray(data389)) {
                  if (data389.length > 2) {
                    const err1027 = { instancePath: instancePath + "/machine/travel/b", schemaPath: "#/properties/machine/properties/travel/properties/b/maxItems", keyword: "maxItems", params: { limit: 2 }, message: "must NOT have more than 2 items" };
                    if (vErrors === null) {
                      vErrors = [err1027];
                    } else {
                      vErrors.push(err1027);
                    }
                    errors++;
                  }
                  if (data389.length < 2) {
                    const err1028 = { instancePath: instancePath + "/machine/travel/b", schemaPath: "#/properties/machine/properties/travel/properties/b/minItems", keyword: "minItems", params: { limit: 2 }, message: "must NOT have fewer than 2 items" };
                    if (vErrors === null) {
                      vErrors = [err1028];
                    } else {
                      vErrors.push(err1028);
                    }
                    errors++;
                  }
                  const len15 = data389.length;
                  for (let i18 = 0; i18 < len15; i18++) {
                    let data390 = data389[i18];
                    if (typeof data390 == "number" && isFinite(data390)) {
                      if (data390 > 36e6 || isNaN(data390)) {
                        const err1029 = { instancePath: instancePath + "/machine/travel/b/" + i18, schemaPath: "#/properties/machine/properties/travel/properties/b/items/maximum", keyword: "maximum", params: { comparison: "<=", limit: 36e6 }, message: "must be <= 36000000" };
                        if (vErrors === null) {
                          vErrors = [err1029];
                        } else {
                          vErrors.push(err1029);
                        }
                        errors++;
                      }
                      if (data390 < -36e6 || isNaN(data390)) {
                        const err1030 = { instancePath: instancePath + "/machine/travel/b/" + i18, schemaPath: "#/properties/machine/properties/travel/properties/b/items/minimum", keyword: "minimum", params: { comparison: ">=", limit: -36e6 }, message: "must be >= -36000000" };
                        if (vErrors === null) {
                          vErrors = [err1030];
                        } else {
                          vErrors.push(err1030);
                        }
                        errors++;
                      }
                    } else {
                      const err1031 = { instancePath: instancePath + "/machine/travel/b/" + i18, schemaPath: "#/properties/machine/properties/travel/properties/b/items/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                      if (vErrors === null) {
                        vErrors = [err1031];
                      } else {
                        vErrors.push(err1031);
                      }
                      errors++;
                    }
                  }
                } else {
                  const err1032 = { instancePath: instancePath + "/machine/travel/b", schemaPath: "#/properties/machine/properties/travel/properties/b/type", keyword: "type", params: { type: "array" }, message: "must be array" };
                  if (vErrors === null) {
                    vErrors = [err1032];
                  } else {
                    vErrors.push(err1032);
                  }
                  errors++;
                }
              }
              if (data380.c !== void 0) {
                let data391 = data380.c;
                if (Array.isArray(data391)) {
                  if (data391.length > 2) {
                    const err1033 = { instancePath: instancePath + "/machine/travel/c", schemaPath: "#/properties/machine/properties/travel/properties/c/maxItems", keyword: "maxItems", params: { limit: 2 }, message: "must NOT have more than 2 items" };
                    if (vErrors === null) {
                      vErrors = [err1033];
                    } else {
                      vErrors.push(err1033);
                    }
                    errors++;
                  }
                  if (data391.length < 2) {
                    const err1034 = { instancePath: instancePath + "/machine/travel/c", schemaPath: "#/properties/machine/properties/travel/properties/c/minItems", keyword: "minItems", params: { limit: 2 }, message: "must NOT have fewer than 2 items" };
                    if (vErrors === null) {
                      vErrors = [err1034];
                    } else {
                      vErrors.push(err1034);
                    }
                    errors++;
                  }
                  const len16 = data391.length;
                  for (let i19 = 0; i19 < len16; i19++) {
                    let data392 = data391[i19];
                    if (typeof data392 == "number" && isFinite(data392)) {
                      if (data392 > 36e6 || isNaN(data392)) {
                        const err1035 = { instancePath: instancePath + "/machine/travel/c/" + i19, schemaPath: "#/properties/machine/properties/travel/properties/c/items/maximum", keyword: "maximum", params: { comparison: "<=", limit: 36e6 }, message: "must be <= 36000000" };
                        if (vErrors === null) {
                          vErrors = [err1035];
                        } else {
                          vErrors.push(err1035);
                        }
                        errors++;
                      }
                      if (data392 < -36e6 || isNaN(data392)) {
                        const err1036 = { instancePath: instancePath + "/machine/travel/c/" + i19, schemaPath: "#/properties/machine/properties/travel/properties/c/items/minimum", keyword: "minimum", params: { comparison: ">=", limit: -36e6 }, message: "must be >= -36000000" };
                        if (vErrors === null) {
                          vErrors = [err1036];
                        } else {
                          vErrors.push(err1036);
                        }
                        errors++;
                      }
                    } else {
                      const err1037 = { instancePath: instancePath + "/machine/travel/c/" + i19, schemaPath: "#/properties/machine/properties/travel/properties/c/items/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                      if (vErrors === null) {
                        vErrors = [err1037];
                      } else {
                        vErrors.push(err1037);
                      }
                      errors++;
                    }
                  }
                } else {
                  const err1038 = { instancePath: instancePath + "/machine/travel/c", schemaPath: "#/properties/machine/properties/travel/properties/c/type", keyword: "type", params: { type: "array" }, message: "must be array" };
                  if (vErrors === null) {
                    vErrors = [err1038];
                  } else {
                    vErrors.push(err1038);
                  }
                  errors++;
                }
              }
            } else {
              const err1039 = { instancePath: instancePath + "/machine/travel", schemaPath: "#/properties/machine/properties/travel/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err1039];
              } else {
                vErrors.push(err1039);
              }
              errors++;
            }
          }
          if (data379.spindle !== void 0) {
            let data393 = data379.spindle;
            if (data393 && typeof data393 == "object" && !Array.isArray(data393)) {
              for (const key56 in data393) {
                if (!(key56 === "min-rpm" || key56 === "max-rpm" || key56 === "spin-up" || key56 === "spin-down" || key56 === "coast-down" || key56 === "orient")) {
                  const err1040 = { instancePath: instancePath + "/machine/spindle", schemaPath: "#/properties/machine/properties/spindle/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key56 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err1040];
                  } else {
                    vErrors.push(err1040);
                  }
                  errors++;
                }
              }
              if (data393["min-rpm"] !== void 0) {
                let data394 = data393["min-rpm"];
                if (typeof data394 == "number" && isFinite(data394)) {
                  if (data394 > 1e6 || isNaN(data394)) {
                    const err1041 = { instancePath: instancePath + "/machine/spindle/min-rpm", schemaPath: "#/properties/machine/properties/spindle/properties/min-rpm/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                    if (vErrors === null) {
                      vErrors = [err1041];
                    } else {
                      vErrors.push(err1041);
                    }
                    errors++;
                  }
                  if (data394 < 0 || isNaN(data394)) {
                    const err1042 = { instancePath: instancePath + "/machine/spindle/min-rpm", schemaPath: "#/properties/machine/properties/spindle/properties/min-rpm/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err1042];
                    } else {
                      vErrors.push(err1042);
                    }
                    errors++;
                  }
                } else {
                  const err1043 = { instancePath: instancePath + "/machine/spindle/min-rpm", schemaPath: "#/properties/machine/properties/spindle/properties/min-rpm/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                  if (vErrors === null) {
                    vErrors = [err1043];
                  } else {
                    vErrors.push(err1043);
                  }
                  errors++;
                }
              }
              if (data393["max-rpm"] !== void 0) {
                let data395 = data393["max-rpm"];
                if (typeof data395 == "number" && isFinite(data395)) {
                  if (data395 > 1e6 || isNaN(data395)) {
                    const err1044 = { instancePath: instancePath + "/machine/spindle/max-rpm", schemaPath: "#/properties/machine/properties/spindle/properties/max-rpm/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                    if (vErrors === null) {
                      vErrors = [err1044];
                    } else {
                      vErrors.push(err1044);
                    }
                    errors++;
                  }
                  if (data395 <= 0 || isNaN(data395)) {
                    const err1045 = { instancePath: instancePath + "/machine/spindle/max-rpm", schemaPath: "#/properties/machine/properties/spindle/properties/max-rpm/exclusiveMinimum", keyword: "exclusiveMinimum", params: { comparison: ">", limit: 0 }, message: "must be > 0" };
                    if (vErrors === null) {
                      vErrors = [err1045];
                    } else {
                      vErrors.push(err1045);
                    }
                    errors++;
                  }
                } else {
                  const err1046 = { instancePath: instancePath + "/machine/spindle/max-rpm", schemaPath: "#/properties/machine/properties/spindle/properties/max-rpm/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                  if (vErrors === null) {
                    vErrors = [err1046];
                  } else {
                    vErrors.push(err1046);
                  }
                  errors++;
                }
              }
              if (data393["spin-up"] !== void 0) {
                let data396 = data393["spin-up"];
                if (typeof data396 === "string") {
                  if (!pattern98.test(data396)) {
                    const err1047 = { instancePath: instancePath + "/machine/spindle/spin-up", schemaPath: "#/$defs/time/pattern", keyword: "pattern", params: { pattern: "^\\d{1,6}(\\.\\d{1,6})? ?(s|ms|min)$" }, message: 'must match pattern "^\\d{1,6}(\\.\\d{1,6})? ?(s|ms|min)$"' };
                    if (vErrors === null) {
                      vErrors = [err1047];
                    } else {
                      vErrors.push(err1047);
                    }
                    errors++;
                  }
                } else {
                  const err1048 = { instancePath: instancePath + "/machine/spindle/spin-up", schemaPath: "#/$defs/time/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1048];
                  } else {
                    vErrors.push(err1048);
                  }
                  errors++;
                }
              }
              if (data393["spin-down"] !== void 0) {
                let data397 = data393["spin-down"];
                if (typeof data397 === "string") {
                  if (!pattern98.test(data397)) {
                    const err1049 = { instancePath: instancePath + "/machine/spindle/spin-down", schemaPath: "#/$defs/time/pattern", keyword: "pattern", params: { pattern: "^\\d{1,6}(\\.\\d{1,6})? ?(s|ms|min)$" }, message: 'must match pattern "^\\d{1,6}(\\.\\d{1,6})? ?(s|ms|min)$"' };
                    if (vErrors === null) {
                      vErrors = [err1049];
                    } else {
                      vErrors.push(err1049);
                    }
                    errors++;
                  }
                } else {
                  const err1050 = { instancePath: instancePath + "/machine/spindle/spin-down", schemaPath: "#/$defs/time/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1050];
                  } else {
                    vErrors.push(err1050);
                  }
                  errors++;
                }
              }
              if (data393["coast-down"] !== void 0) {
                let data398 = data393["coast-down"];
                if (typeof data398 === "string") {
                  if (!pattern98.test(data398)) {
                    const err1051 = { instancePath: instancePath + "/machine/spindle/coast-down", schemaPath: "#/$defs/time/pattern", keyword: "pattern", params: { pattern: "^\\d{1,6}(\\.\\d{1,6})? ?(s|ms|min)$" }, message: 'must match pattern "^\\d{1,6}(\\.\\d{1,6})? ?(s|ms|min)$"' };
                    if (vErrors === null) {
                      vErrors = [err1051];
                    } else {
                      vErrors.push(err1051);
                    }
                    errors++;
                  }
                } else {
                  const err1052 = { instancePath: instancePath + "/machine/spindle/coast-down", schemaPath: "#/$defs/time/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1052];
                  } else {
                    vErrors.push(err1052);
                  }
                  errors++;
                }
              }
              if (data393.orient !== void 0) {
                let data399 = data393.orient;
                if (typeof data399 !== "string") {
                  const err1053 = { instancePath: instancePath + "/machine/spindle/orient", schemaPath: "#/$defs/yesNo/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1053];
                  } else {
                    vErrors.push(err1053);
                  }
                  errors++;
                }
                if (!(data399 === "yes" || data399 === "no")) {
                  const err1054 = { instancePath: instancePath + "/machine/spindle/orient", schemaPath: "#/$defs/yesNo/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1054];
                  } else {
                    vErrors.push(err1054);
                  }
                  errors++;
                }
              }
            } else {
              const err1055 = { instancePath: instancePath + "/machine/spindle", schemaPath: "#/properties/machine/properties/spindle/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err1055];
              } else {
                vErrors.push(err1055);
              }
              errors++;
            }
          }
          if (data379.signals !== void 0) {
            let data400 = data379.signals;
            if (data400 && typeof data400 == "object" && !Array.isArray(data400)) {
              for (const key57 in data400) {
                if (!(key57 === "at-speed" || key57 === "stopped" || key57 === "released" || key57 === "clamped" || key57 === "tool-present" || key57 === "air" || key57 === "hold-down")) {
                  const err1056 = { instancePath: instancePath + "/machine/signals", schemaPath: "#/properties/machine/properties/signals/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key57 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err1056];
                  } else {
                    vErrors.push(err1056);
                  }
                  errors++;
                }
              }
              if (data400["at-speed"] !== void 0) {
                let data401 = data400["at-speed"];
                const _errs1223 = errors;
                let valid331 = false;
                const _errs1224 = errors;
                if (!(typeof data401 == "number" && (!(data401 % 1) && !isNaN(data401)) && isFinite(data401))) {
                  const err1057 = { instancePath: instancePath + "/machine/signals/at-speed", schemaPath: "#/properties/machine/properties/signals/properties/at-speed/anyOf/0/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err1057];
                  } else {
                    vErrors.push(err1057);
                  }
                  errors++;
                }
                if (typeof data401 == "number" && isFinite(data401)) {
                  if (data401 > 9999 || isNaN(data401)) {
                    const err1058 = { instancePath: instancePath + "/machine/signals/at-speed", schemaPath: "#/properties/machine/properties/signals/properties/at-speed/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 9999 }, message: "must be <= 9999" };
                    if (vErrors === null) {
                      vErrors = [err1058];
                    } else {
                      vErrors.push(err1058);
                    }
                    errors++;
                  }
                  if (data401 < 0 || isNaN(data401)) {
                    const err1059 = { instancePath: instancePath + "/machine/signals/at-speed", schemaPath: "#/properties/machine/properties/signals/properties/at-speed/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err1059];
                    } else {
                      vErrors.push(err1059);
                    }
                    errors++;
                  }
                }
                var _valid42 = _errs1224 === errors;
                valid331 = valid331 || _valid42;
                const _errs1226 = errors;
                if (!validate21(data401, { instancePath: instancePath + "/machine/signals/at-speed", parentData: data400, parentDataProperty: "at-speed", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate21.errors : vErrors.concat(validate21.errors);
                  errors = vErrors.length;
                }
                var _valid42 = _errs1226 === errors;
                valid331 = valid331 || _valid42;
                if (!valid331) {
                  const err1060 = { instancePath: instancePath + "/machine/signals/at-speed", schemaPath: "#/properties/machine/properties/signals/properties/at-speed/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err1060];
                  } else {
                    vErrors.push(err1060);
                  }
                  errors++;
                } else {
                  errors = _errs1223;
                  if (vErrors !== null) {
                    if (_errs1223) {
                      vErrors.length = _errs1223;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
              if (data400.stopped !== void 0) {
                let data402 = data400.stopped;
                const _errs1228 = errors;
                let valid332 = false;
                const _errs1229 = errors;
                if (!(typeof data402 == "number" && (!(data402 % 1) && !isNaN(data402)) && isFinite(data402))) {
                  const err1061 = { instancePath: instancePath + "/machine/signals/stopped", schemaPath: "#/properties/machine/properties/signals/properties/stopped/anyOf/0/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err1061];
                  } else {
                    vErrors.push(err1061);
                  }
                  errors++;
                }
                if (typeof data402 == "number" && isFinite(data402)) {
                  if (data402 > 9999 || isNaN(data402)) {
                    const err1062 = { instancePath: instancePath + "/machine/signals/stopped", schemaPath: "#/properties/machine/properties/signals/properties/stopped/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 9999 }, message: "must be <= 9999" };
                    if (vErrors === null) {
                      vErrors = [err1062];
                    } else {
                      vErrors.push(err1062);
                    }
                    errors++;
                  }
                  if (data402 < 0 || isNaN(data402)) {
                    const err1063 = { instancePath: instancePath + "/machine/signals/stopped", schemaPath: "#/properties/machine/properties/signals/properties/stopped/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err1063];
                    } else {
                      vErrors.push(err1063);
                    }
                    errors++;
                  }
                }
                var _valid43 = _errs1229 === errors;
                valid332 = valid332 || _valid43;
                const _errs1231 = errors;
                if (!validate21(data402, { instancePath: instancePath + "/machine/signals/stopped", parentData: data400, parentDataProperty: "stopped", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate21.errors : vErrors.concat(validate21.errors);
                  errors = vErrors.length;
                }
                var _valid43 = _errs1231 === errors;
                valid332 = valid332 || _valid43;
                if (!valid332) {
                  const err1064 = { instancePath: instancePath + "/machine/signals/stopped", schemaPath: "#/properties/machine/properties/signals/properties/stopped/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err1064];
                  } else {
                    vErrors.push(err1064);
                  }
                  errors++;
                } else {
                  errors = _errs1228;
                  if (vErrors !== null) {
                    if (_errs1228) {
                      vErrors.length = _errs1228;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
              if (data400.released !== void 0) {
                let data403 = data400.released;
                const _errs1233 = errors;
                let valid333 = false;
                const _errs1234 = errors;
                if (!(typeof data403 == "number" && (!(data403 % 1) && !isNaN(data403)) && isFinite(data403))) {
                  const err1065 = { instancePath: instancePath + "/machine/signals/released", schemaPath: "#/properties/machine/properties/signals/properties/released/anyOf/0/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err1065];
                  } else {
                    vErrors.push(err1065);
                  }
                  errors++;
                }
                if (typeof data403 == "number" && isFinite(data403)) {
                  if (data403 > 9999 || isNaN(data403)) {
                    const err1066 = { instancePath: instancePath + "/machine/signals/released", schemaPath: "#/properties/machine/properties/signals/properties/released/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 9999 }, message: "must be <= 9999" };
                    if (vErrors === null) {
                      vErrors = [err1066];
                    } else {
                      vErrors.push(err1066);
                    }
                    errors++;
                  }
                  if (data403 < 0 || isNaN(data403)) {
                    const err1067 = { instancePath: instancePath + "/machine/signals/released", schemaPath: "#/properties/machine/properties/signals/properties/released/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err1067];
                    } else {
                      vErrors.push(err1067);
                    }
                    errors++;
                  }
                }
                var _valid44 = _errs1234 === errors;
                valid333 = valid333 || _valid44;
                const _errs1236 = errors;
                if (!validate21(data403, { instancePath: instancePath + "/machine/signals/released", parentData: data400, parentDataProperty: "released", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate21.errors : vErrors.concat(validate21.errors);
                  errors = vErrors.length;
                }
                var _valid44 = _errs1236 === errors;
                valid333 = valid333 || _valid44;
                if (!valid333) {
                  const err1068 = { instancePath: instancePath + "/machine/signals/released", schemaPath: "#/properties/machine/properties/signals/properties/released/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err1068];
                  } else {
                    vErrors.push(err1068);
                  }
                  errors++;
                } else {
                  errors = _errs1233;
                  if (vErrors !== null) {
                    if (_errs1233) {
                      vErrors.length = _errs1233;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
              if (data400.clamped !== void 0) {
                let data404 = data400.clamped;
                const _errs1238 = errors;
                let valid334 = false;
                const _errs1239 = errors;
                if (!(typeof data404 == "number" && (!(data404 % 1) && !isNaN(data404)) && isFinite(data404))) {
                  const err1069 = { instancePath: instancePath + "/machine/signals/clamped", schemaPath: "#/properties/machine/properties/signals/properties/clamped/anyOf/0/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err1069];
                  } else {
                    vErrors.push(err1069);
                  }
                  errors++;
                }
                if (typeof data404 == "number" && isFinite(data404)) {
                  if (data404 > 9999 || isNaN(data404)) {
                    const err1070 = { instancePath: instancePath + "/machine/signals/clamped", schemaPath: "#/properties/machine/properties/signals/properties/clamped/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 9999 }, message: "must be <= 9999" };
                    if (vErrors === null) {
                      vErrors = [err1070];
                    } else {
                      vErrors.push(err1070);
                    }
                    errors++;
                  }
                  if (data404 < 0 || isNaN(data404)) {
                    const err1071 = { instancePath: instancePath + "/machine/signals/clamped", schemaPath: "#/properties/machine/properties/signals/properties/clamped/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err1071];
                    } else {
                      vErrors.push(err1071);
                    }
                    errors++;
                  }
                }
                var _valid45 = _errs1239 === errors;
                valid334 = valid334 || _valid45;
                const _errs1241 = errors;
                if (!validate21(data404, { instancePath: instancePath + "/machine/signals/clamped", parentData: data400, parentDataProperty: "clamped", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate21.errors : vErrors.concat(validate21.errors);
                  errors = vErrors.length;
                }
                var _valid45 = _errs1241 === errors;
                valid334 = valid334 || _valid45;
                if (!valid334) {
                  const err1072 = { instancePath: instancePath + "/machine/signals/clamped", schemaPath: "#/properties/machine/properties/signals/properties/clamped/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err1072];
                  } else {
                    vErrors.push(err1072);
                  }
                  errors++;
                } else {
                  errors = _errs1238;
                  if (vErrors !== null) {
                    if (_errs1238) {
                      vErrors.length = _errs1238;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
              if (data400["tool-present"] !== void 0) {
                let data405 = data400["tool-present"];
                const _errs1243 = errors;
                let valid335 = false;
                const _errs1244 = errors;
                if (!(typeof data405 == "number" && (!(data405 % 1) && !isNaN(data405)) && isFinite(data405))) {
                  const err1073 = { instancePath: instancePath + "/machine/signals/tool-present", schemaPath: "#/properties/machine/properties/signals/properties/tool-present/anyOf/0/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err1073];
                  } else {
                    vErrors.push(err1073);
                  }
                  errors++;
                }
                if (typeof data405 == "number" && isFinite(data405)) {
                  if (data405 > 9999 || isNaN(data405)) {
                    const err1074 = { instancePath: instancePath + "/machine/signals/tool-present", schemaPath: "#/properties/machine/properties/signals/properties/tool-present/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 9999 }, message: "must be <= 9999" };
                    if (vErrors === null) {
                      vErrors = [err1074];
                    } else {
                      vErrors.push(err1074);
                    }
                    errors++;
                  }
                  if (data405 < 0 || isNaN(data405)) {
                    const err1075 = { instancePath: instancePath + "/machine/signals/tool-present", schemaPath: "#/properties/machine/properties/signals/properties/tool-present/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err1075];
                    } else {
                      vErrors.push(err1075);
                    }
                    errors++;
                  }
                }
                var _valid46 = _errs1244 === errors;
                valid335 = valid335 || _valid46;
                const _errs1246 = errors;
                if (!validate21(data405, { instancePath: instancePath + "/machine/signals/tool-present", parentData: data400, parentDataProperty: "tool-present", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate21.errors : vErrors.concat(validate21.errors);
                  errors = vErrors.length;
                }
                var _valid46 = _errs1246 === errors;
                valid335 = valid335 || _valid46;
                if (!valid335) {
                  const err1076 = { instancePath: instancePath + "/machine/signals/tool-present", schemaPath: "#/properties/machine/properties/signals/properties/tool-present/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err1076];
                  } else {
                    vErrors.push(err1076);
                  }
                  errors++;
                } else {
                  errors = _errs1243;
                  if (vErrors !== null) {
                    if (_errs1243) {
                      vErrors.length = _errs1243;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
              if (data400.air !== void 0) {
                let data406 = data400.air;
                const _errs1248 = errors;
                let valid336 = false;
                const _errs1249 = errors;
                if (!(typeof data406 == "number" && (!(data406 % 1) && !isNaN(data406)) && isFinite(data406))) {
                  const err1077 = { instancePath: instancePath + "/machine/signals/air", schemaPath: "#/properties/machine/properties/signals/properties/air/anyOf/0/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err1077];
                  } else {
                    vErrors.push(err1077);
                  }
                  errors++;
                }
                if (typeof data406 == "number" && isFinite(data406)) {
                  if (data406 > 9999 || isNaN(data406)) {
                    const err1078 = { instancePath: instancePath + "/machine/signals/air", schemaPath: "#/properties/machine/properties/signals/properties/air/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 9999 }, message: "must be <= 9999" };
                    if (vErrors === null) {
                      vErrors = [err1078];
                    } else {
                      vErrors.push(err1078);
                    }
                    errors++;
                  }
                  if (data406 < 0 || isNaN(data406)) {
                    const err1079 = { instancePath: instancePath + "/machine/signals/air", schemaPath: "#/properties/machine/properties/signals/properties/air/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err1079];
                    } else {
                      vErrors.push(err1079);
                    }
                    errors++;
                  }
                }
                var _valid47 = _errs1249 === errors;
                valid336 = valid336 || _valid47;
                const _errs1251 = errors;
                if (!validate21(data406, { instancePath: instancePath + "/machine/signals/air", parentData: data400, parentDataProperty: "air", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate21.errors : vErrors.concat(validate21.errors);
                  errors = vErrors.length;
                }
                var _valid47 = _errs1251 === errors;
                valid336 = valid336 || _valid47;
                if (!valid336) {
                  const err1080 = { instancePath: instancePath + "/machine/signals/air", schemaPath: "#/properties/machine/properties/signals/properties/air/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err1080];
                  } else {
                    vErrors.push(err1080);
                  }
                  errors++;
                } else {
                  errors = _errs1248;
                  if (vErrors !== null) {
                    if (_errs1248) {
                      vErrors.length = _errs1248;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
              if (data400["hold-down"] !== void 0) {
                let data407 = data400["hold-down"];
                const _errs1253 = errors;
                let valid337 = false;
                const _errs1254 = errors;
                if (!(typeof data407 == "number" && (!(data407 % 1) && !isNaN(data407)) && isFinite(data407))) {
                  const err1081 = { instancePath: instancePath + "/machine/signals/hold-down", schemaPath: "#/properties/machine/properties/signals/properties/hold-down/anyOf/0/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err1081];
                  } else {
                    vErrors.push(err1081);
                  }
                  errors++;
                }
                if (typeof data407 == "number" && isFinite(data407)) {
                  if (data407 > 9999 || isNaN(data407)) {
                    const err1082 = { instancePath: instancePath + "/machine/signals/hold-down", schemaPath: "#/properties/machine/properties/signals/properties/hold-down/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 9999 }, message: "must be <= 9999" };
                    if (vErrors === null) {
                      vErrors = [err1082];
                    } else {
                      vErrors.push(err1082);
                    }
                    errors++;
                  }
                  if (data407 < 0 || isNaN(data407)) {
                    const err1083 = { instancePath: instancePath + "/machine/signals/hold-down", schemaPath: "#/properties/machine/properties/signals/properties/hold-down/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err1083];
                    } else {
                      vErrors.push(err1083);
                    }
                    errors++;
                  }
                }
                var _valid48 = _errs1254 === errors;
                valid337 = valid337 || _valid48;
                const _errs1256 = errors;
                if (!validate21(data407, { instancePath: instancePath + "/machine/signals/hold-down", parentData: data400, parentDataProperty: "hold-down", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate21.errors : vErrors.concat(validate21.errors);
                  errors = vErrors.length;
                }
                var _valid48 = _errs1256 === errors;
                valid337 = valid337 || _valid48;
                if (!valid337) {
                  const err1084 = { instancePath: instancePath + "/machine/signals/hold-down", schemaPath: "#/properties/machine/properties/signals/properties/hold-down/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err1084];
                  } else {
                    vErrors.push(err1084);
                  }
                  errors++;
                } else {
                  errors = _errs1253;
                  if (vErrors !== null) {
                    if (_errs1253) {
                      vErrors.length = _errs1253;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
            } else {
              const err1085 = { instancePath: instancePath + "/machine/signals", schemaPath: "#/properties/machine/properties/signals/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err1085];
              } else {
                vErrors.push(err1085);
              }
              errors++;
            }
          }
          if (data379.waits !== void 0) {
            let data408 = data379.waits;
            if (data408 && typeof data408 == "object" && !Array.isArray(data408)) {
              for (const key58 in data408) {
                if (!(key58 === "on-timeout")) {
                  const err1086 = { instancePath: instancePath + "/machine/waits", schemaPath: "#/properties/machine/properties/waits/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key58 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err1086];
                  } else {
                    vErrors.push(err1086);
                  }
                  errors++;
                }
              }
              if (data408["on-timeout"] !== void 0) {
                let data409 = data408["on-timeout"];
                if (typeof data409 !== "string") {
                  const err1087 = { instancePath: instancePath + "/machine/waits/on-timeout", schemaPath: "#/properties/machine/properties/waits/properties/on-timeout/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1087];
                  } else {
                    vErrors.push(err1087);
                  }
                  errors++;
                }
                if (!(data409 === "alarm" || data409 === "continues")) {
                  const err1088 = { instancePath: instancePath + "/machine/waits/on-timeout", schemaPath: "#/properties/machine/properties/waits/properties/on-timeout/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties.waits.properties["on-timeout"].enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1088];
                  } else {
                    vErrors.push(err1088);
                  }
                  errors++;
                }
              }
            } else {
              const err1089 = { instancePath: instancePath + "/machine/waits", schemaPath: "#/properties/machine/properties/waits/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err1089];
              } else {
                vErrors.push(err1089);
              }
              errors++;
            }
          }
          if (data379.swap !== void 0) {
            let data410 = data379.swap;
            if (typeof data410 !== "string") {
              const err1090 = { instancePath: instancePath + "/machine/swap", schemaPath: "#/properties/machine/properties/swap/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err1090];
              } else {
                vErrors.push(err1090);
              }
              errors++;
            }
            if (!(data410 === "controller" || data410 === "rack" || data410 === "operator" || data410 === "none")) {
              const err1091 = { instancePath: instancePath + "/machine/swap", schemaPath: "#/properties/machine/properties/swap/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties.swap.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err1091];
              } else {
                vErrors.push(err1091);
              }
              errors++;
            }
          }
          if (data379["change-effects"] !== void 0) {
            let data411 = data379["change-effects"];
            if (data411 && typeof data411 == "object" && !Array.isArray(data411)) {
              for (const key59 in data411) {
                if (!(key59 === "position" || key59 === "spindle" || key59 === "coolant" || key59 === "length-offset")) {
                  const err1092 = { instancePath: instancePath + "/machine/change-effects", schemaPath: "#/properties/machine/properties/change-effects/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key59 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err1092];
                  } else {
                    vErrors.push(err1092);
                  }
                  errors++;
                }
              }
              if (data411.position !== void 0) {
                let data412 = data411.position;
                if (typeof data412 !== "string") {
                  const err1093 = { instancePath: instancePath + "/machine/change-effects/position", schemaPath: "#/properties/machine/properties/change-effects/properties/position/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1093];
                  } else {
                    vErrors.push(err1093);
                  }
                  errors++;
                }
                if (!(data412 === "unchanged" || data412 === "unknown" || data412 === "swap-height")) {
                  const err1094 = { instancePath: instancePath + "/machine/change-effects/position", schemaPath: "#/properties/machine/properties/change-effects/properties/position/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties["change-effects"].properties.position.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1094];
                  } else {
                    vErrors.push(err1094);
                  }
                  errors++;
                }
              }
              if (data411.spindle !== void 0) {
                let data413 = data411.spindle;
                if (typeof data413 !== "string") {
                  const err1095 = { instancePath: instancePath + "/machine/change-effects/spindle", schemaPath: "#/properties/machine/properties/change-effects/properties/spindle/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1095];
                  } else {
                    vErrors.push(err1095);
                  }
                  errors++;
                }
                if (!(data413 === "unchanged" || data413 === "stopped" || data413 === "restarts")) {
                  const err1096 = { instancePath: instancePath + "/machine/change-effects/spindle", schemaPath: "#/properties/machine/properties/change-effects/properties/spindle/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties["change-effects"].properties.spindle.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1096];
                  } else {
                    vErrors.push(err1096);
                  }
                  errors++;
                }
              }
              if (data411.coolant !== void 0) {
                let data414 = data411.coolant;
                if (typeof data414 !== "string") {
                  const err1097 = { instancePath: instancePath + "/machine/change-effects/coolant", schemaPath: "#/properties/machine/properties/change-effects/properties/coolant/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1097];
                  } else {
                    vErrors.push(err1097);
                  }
                  errors++;
                }
                if (!(data414 === "unchanged" || data414 === "off")) {
                  const err1098 = { instancePath: instancePath + "/machine/change-effects/coolant", schemaPath: "#/properties/machine/properties/change-effects/properties/coolant/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties["change-effects"].properties.coolant.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1098];
                  } else {
                    vErrors.push(err1098);
                  }
                  errors++;
                }
              }
              if (data411["length-offset"] !== void 0) {
                let data415 = data411["length-offset"];
                if (typeof data415 !== "string") {
                  const err1099 = { instancePath: instancePath + "/machine/change-effects/length-offset", schemaPath: "#/properties/machine/properties/change-effects/properties/length-offset/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1099];
                  } else {
                    vErrors.push(err1099);
                  }
                  errors++;
                }
                if (!(data415 === "unchanged" || data415 === "active" || data415 === "cancelled")) {
                  const err1100 = { instancePath: instancePath + "/machine/change-effects/length-offset", schemaPath: "#/properties/machine/properties/change-effects/properties/length-offset/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties["change-effects"].properties["length-offset"].enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1100];
                  } else {
                    vErrors.push(err1100);
                  }
                  errors++;
                }
              }
            } else {
              const err1101 = { instancePath: instancePath + "/machine/change-effects", schemaPath: "#/properties/machine/properties/change-effects/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err1101];
              } else {
                vErrors.push(err1101);
              }
              errors++;
            }
          }
          if (data379["measure-effects"] !== void 0) {
            let data416 = data379["measure-effects"];
            if (data416 && typeof data416 == "object" && !Array.isArray(data416)) {
              for (const key60 in data416) {
                if (!(key60 === "position" || key60 === "spindle" || key60 === "coolant" || key60 === "length-offset")) {
                  const err1102 = { instancePath: instancePath + "/machine/measure-effects", schemaPath: "#/properties/machine/properties/measure-effects/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key60 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err1102];
                  } else {
                    vErrors.push(err1102);
                  }
                  errors++;
                }
              }
              if (data416.position !== void 0) {
                let data417 = data416.position;
                if (typeof data417 !== "string") {
                  const err1103 = { instancePath: instancePath + "/machine/measure-effects/position", schemaPath: "#/properties/machine/properties/measure-effects/properties/position/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1103];
                  } else {
                    vErrors.push(err1103);
                  }
                  errors++;
                }
                if (!(data417 === "unchanged" || data417 === "unknown" || data417 === "swap-height")) {
                  const err1104 = { instancePath: instancePath + "/machine/measure-effects/position", schemaPath: "#/properties/machine/properties/measure-effects/properties/position/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties["measure-effects"].properties.position.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1104];
                  } else {
                    vErrors.push(err1104);
                  }
                  errors++;
                }
              }
              if (data416.spindle !== void 0) {
                let data418 = data416.spindle;
                if (typeof data418 !== "string") {
                  const err1105 = { instancePath: instancePath + "/machine/measure-effects/spindle", schemaPath: "#/properties/machine/properties/measure-effects/properties/spindle/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1105];
                  } else {
                    vErrors.push(err1105);
                  }
                  errors++;
                }
                if (!(data418 === "unchanged" || data418 === "stopped")) {
                  const err1106 = { instancePath: instancePath + "/machine/measure-effects/spindle", schemaPath: "#/properties/machine/properties/measure-effects/properties/spindle/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties["measure-effects"].properties.spindle.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1106];
                  } else {
                    vErrors.push(err1106);
                  }
                  errors++;
                }
              }
              if (data416.coolant !== void 0) {
                let data419 = data416.coolant;
                if (typeof data419 !== "string") {
                  const err1107 = { instancePath: instancePath + "/machine/measure-effects/coolant", schemaPath: "#/properties/machine/properties/measure-effects/properties/coolant/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1107];
                  } else {
                    vErrors.push(err1107);
                  }
                  errors++;
                }
                if (!(data419 === "unchanged" || data419 === "off")) {
                  const err1108 = { instancePath: instancePath + "/machine/measure-effects/coolant", schemaPath: "#/properties/machine/properties/measure-effects/properties/coolant/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties["measure-effects"].properties.coolant.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1108];
                  } else {
                    vErrors.push(err1108);
                  }
                  errors++;
                }
              }
              if (data416["length-offset"] !== void 0) {
                let data420 = data416["length-offset"];
                if (typeof data420 !== "string") {
                  const err1109 = { instancePath: instancePath + "/machine/measure-effects/length-offset", schemaPath: "#/properties/machine/properties/measure-effects/properties/length-offset/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1109];
                  } else {
                    vErrors.push(err1109);
                  }
                  errors++;
                }
                if (!(data420 === "unchanged" || data420 === "active" || data420 === "cancelled")) {
                  const err1110 = { instancePath: instancePath + "/machine/measure-effects/length-offset", schemaPath: "#/properties/machine/properties/measure-effects/properties/length-offset/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties["measure-effects"].properties["length-offset"].enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1110];
                  } else {
                    vErrors.push(err1110);
                  }
                  errors++;
                }
              }
            } else {
              const err1111 = { instancePath: instancePath + "/machine/measure-effects", schemaPath: "#/properties/machine/properties/measure-effects/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err1111];
              } else {
                vErrors.push(err1111);
              }
              errors++;
            }
          }
          if (data379.retract !== void 0) {
            let data421 = data379.retract;
            if (data421 && typeof data421 == "object" && !Array.isArray(data421)) {
              for (const key61 in data421) {
                if (!(key61 === "by" || key61 === "z" || key61 === "acts-on" || key61 === "cancel-length-first" || key61 === "intermediate" || key61 === "change-position")) {
                  const err1112 = { instancePath: instancePath + "/machine/retract", schemaPath: "#/properties/machine/properties/retract/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key61 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err1112];
                  } else {
                    vErrors.push(err1112);
                  }
                  errors++;
                }
              }
              if (data421.by !== void 0) {
                let data422 = data421.by;
                if (typeof data422 !== "string") {
                  const err1113 = { instancePath: instancePath + "/machine/retract/by", schemaPath: "#/properties/machine/properties/retract/properties/by/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1113];
                  } else {
                    vErrors.push(err1113);
                  }
                  errors++;
                }
                if (!(data422 === "machine-move" || data422 === "reference-return" || data422 === "clearance")) {
                  const err1114 = { instancePath: instancePath + "/machine/retract/by", schemaPath: "#/properties/machine/properties/retract/properties/by/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties.retract.properties.by.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1114];
                  } else {
                    vErrors.push(err1114);
                  }
                  errors++;
                }
              }
              if (data421.z !== void 0) {
                let data423 = data421.z;
                const _errs1293 = errors;
                let valid343 = false;
                const _errs1294 = errors;
                if (typeof data423 == "number" && isFinite(data423)) {
                  if (data423 > 1e6 || isNaN(data423)) {
                    const err1115 = { instancePath: instancePath + "/machine/retract/z", schemaPath: "#/$defs/length/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                    if (vErrors === null) {
                      vErrors = [err1115];
                    } else {
                      vErrors.push(err1115);
                    }
                    errors++;
                  }
                  if (data423 < -1e6 || isNaN(data423)) {
                    const err1116 = { instancePath: instancePath + "/machine/retract/z", schemaPath: "#/$defs/length/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: -1e6 }, message: "must be >= -1000000" };
                    if (vErrors === null) {
                      vErrors = [err1116];
                    } else {
                      vErrors.push(err1116);
                    }
                    errors++;
                  }
                } else {
                  const err1117 = { instancePath: instancePath + "/machine/retract/z", schemaPath: "#/$defs/length/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                  if (vErrors === null) {
                    vErrors = [err1117];
                  } else {
                    vErrors.push(err1117);
                  }
                  errors++;
                }
                var _valid49 = _errs1294 === errors;
                valid343 = valid343 || _valid49;
                const _errs1296 = errors;
                if (typeof data423 === "string") {
                  if (!pattern26.test(data423)) {
                    const err1118 = { instancePath: instancePath + "/machine/retract/z", schemaPath: "#/$defs/length/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }, message: 'must match pattern "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$"' };
                    if (vErrors === null) {
                      vErrors = [err1118];
                    } else {
                      vErrors.push(err1118);
                    }
                    errors++;
                  }
                } else {
                  const err1119 = { instancePath: instancePath + "/machine/retract/z", schemaPath: "#/$defs/length/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1119];
                  } else {
                    vErrors.push(err1119);
                  }
                  errors++;
                }
                var _valid49 = _errs1296 === errors;
                valid343 = valid343 || _valid49;
                if (!valid343) {
                  const err1120 = { instancePath: instancePath + "/machine/retract/z", schemaPath: "#/$defs/length/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err1120];
                  } else {
                    vErrors.push(err1120);
                  }
                  errors++;
                } else {
                  errors = _errs1293;
                  if (vErrors !== null) {
                    if (_errs1293) {
                      vErrors.length = _errs1293;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
              if (data421["acts-on"] !== void 0) {
                let data424 = data421["acts-on"];
                if (typeof data424 !== "string") {
                  const err1121 = { instancePath: instancePath + "/machine/retract/acts-on", schemaPath: "#/properties/machine/properties/retract/properties/acts-on/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1121];
                  } else {
                    vErrors.push(err1121);
                  }
                  errors++;
                }
                if (!(data424 === "spindle-nose" || data424 === "tool-tip")) {
                  const err1122 = { instancePath: instancePath + "/machine/retract/acts-on", schemaPath: "#/properties/machine/properties/retract/properties/acts-on/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties.retract.properties["acts-on"].enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1122];
                  } else {
                    vErrors.push(err1122);
                  }
                  errors++;
                }
              }
              if (data421["cancel-length-first"] !== void 0) {
                let data425 = data421["cancel-length-first"];
                if (typeof data425 !== "string") {
                  const err1123 = { instancePath: instancePath + "/machine/retract/cancel-length-first", schemaPath: "#/$defs/yesNo/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1123];
                  } else {
                    vErrors.push(err1123);
                  }
                  errors++;
                }
                if (!(data425 === "yes" || data425 === "no")) {
                  const err1124 = { instancePath: instancePath + "/machine/retract/cancel-length-first", schemaPath: "#/$defs/yesNo/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1124];
                  } else {
                    vErrors.push(err1124);
                  }
                  errors++;
                }
              }
              if (data421.intermediate !== void 0) {
                let data426 = data421.intermediate;
                if (typeof data426 !== "string") {
                  const err1125 = { instancePath: instancePath + "/machine/retract/intermediate", schemaPath: "#/properties/machine/properties/retract/properties/intermediate/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1125];
                  } else {
                    vErrors.push(err1125);
                  }
                  errors++;
                }
                if (!(data426 === "none" || data426 === "incremental-zero")) {
                  const err1126 = { instancePath: instancePath + "/machine/retract/intermediate", schemaPath: "#/properties/machine/properties/retract/properties/intermediate/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties.retract.properties.intermediate.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1126];
                  } else {
                    vErrors.push(err1126);
                  }
                  errors++;
                }
              }
              if (data421["change-position"] !== void 0) {
                if (!validate29(data421["change-position"], { instancePath: instancePath + "/machine/retract/change-position", parentData: data421, parentDataProperty: "change-position", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate29.errors : vErrors.concat(validate29.errors);
                  errors = vErrors.length;
                }
              }
            } else {
              const err1127 = { instancePath: instancePath + "/machine/retract", schemaPath: "#/properties/machine/properties/retract/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err1127];
              } else {
                vErrors.push(err1127);
              }
              errors++;
            }
          }
          if (data379["length-offset"] !== void 0) {
            let data428 = data379["length-offset"];
            if (data428 && typeof data428 == "object" && !Array.isArray(data428)) {
              for (const key62 in data428) {
                if (!(key62 === "form" || key62 === "select-moves" || key62 === "cancel-moves")) {
                  const err1128 = { instancePath: instancePath + "/machine/length-offset", schemaPath: "#/properties/machine/properties/length-offset/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key62 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err1128];
                  } else {
                    vErrors.push(err1128);
                  }
                  errors++;
                }
              }
              if (data428.form !== void 0) {
                let data429 = data428.form;
                if (typeof data429 !== "string") {
                  const err1129 = { instancePath: instancePath + "/machine/length-offset/form", schemaPath: "#/properties/machine/properties/length-offset/properties/form/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1129];
                  } else {
                    vErrors.push(err1129);
                  }
                  errors++;
                }
                if (!(data429 === "with-first-z" || data429 === "own-block" || data429 === "in-tool-word" || data429 === "none")) {
                  const err1130 = { instancePath: instancePath + "/machine/length-offset/form", schemaPath: "#/properties/machine/properties/length-offset/properties/form/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties["length-offset"].properties.form.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1130];
                  } else {
                    vErrors.push(err1130);
                  }
                  errors++;
                }
              }
              if (data428["select-moves"] !== void 0) {
                let data430 = data428["select-moves"];
                if (typeof data430 !== "string") {
                  const err1131 = { instancePath: instancePath + "/machine/length-offset/select-moves", schemaPath: "#/$defs/yesNo/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1131];
                  } else {
                    vErrors.push(err1131);
                  }
                  errors++;
                }
                if (!(data430 === "yes" || data430 === "no")) {
                  const err1132 = { instancePath: instancePath + "/machine/length-offset/select-moves", schemaPath: "#/$defs/yesNo/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1132];
                  } else {
                    vErrors.push(err1132);
                  }
                  errors++;
                }
              }
              if (data428["cancel-moves"] !== void 0) {
                let data431 = data428["cancel-moves"];
                if (typeof data431 !== "string") {
                  const err1133 = { instancePath: instancePath + "/machine/length-offset/cancel-moves", schemaPath: "#/$defs/yesNo/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1133];
                  } else {
                    vErrors.push(err1133);
                  }
                  errors++;
                }
                if (!(data431 === "yes" || data431 === "no")) {
                  const err1134 = { instancePath: instancePath + "/machine/length-offset/cancel-moves", schemaPath: "#/$defs/yesNo/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1134];
                  } else {
                    vErrors.push(err1134);
                  }
                  errors++;
                }
              }
            } else {
              const err1135 = { instancePath: instancePath + "/machine/length-offset", schemaPath: "#/properties/machine/properties/length-offset/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err1135];
              } else {
                vErrors.push(err1135);
              }
              errors++;
            }
          }
          if (data379.lengths !== void 0) {
            let data432 = data379.lengths;
            if (typeof data432 !== "string") {
              const err1136 = { instancePath: instancePath + "/machine/lengths", schemaPath: "#/properties/machine/properties/lengths/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err1136];
              } else {
                vErrors.push(err1136);
              }
              errors++;
            }
            if (!(data432 === "table" || data432 === "measured" || data432 === "operator")) {
              const err1137 = { instancePath: instancePath + "/machine/lengths", schemaPath: "#/properties/machine/properties/lengths/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties.lengths.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err1137];
              } else {
                vErrors.push(err1137);
              }
              errors++;
            }
          }
          if (data379.drawbar !== void 0) {
            let data433 = data379.drawbar;
            const _errs1320 = errors;
            let valid348 = false;
            const _errs1321 = errors;
            if (typeof data433 !== "string") {
              const err1138 = { instancePath: instancePath + "/machine/drawbar", schemaPath: "#/properties/machine/properties/drawbar/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err1138];
              } else {
                vErrors.push(err1138);
              }
              errors++;
            }
            if ("none" !== data433) {
              const err1139 = { instancePath: instancePath + "/machine/drawbar", schemaPath: "#/properties/machine/properties/drawbar/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
              if (vErrors === null) {
                vErrors = [err1139];
              } else {
                vErrors.push(err1139);
              }
              errors++;
            }
            var _valid50 = _errs1321 === errors;
            valid348 = valid348 || _valid50;
            const _errs1323 = errors;
            if (data433 && typeof data433 == "object" && !Array.isArray(data433)) {
              for (const key63 in data433) {
                if (!(key63 === "travels" || key63 === "taper-air")) {
                  const err1140 = { instancePath: instancePath + "/machine/drawbar", schemaPath: "#/properties/machine/properties/drawbar/anyOf/1/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key63 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err1140];
                  } else {
                    vErrors.push(err1140);
                  }
                  errors++;
                }
              }
              if (data433.travels !== void 0) {
                let data434 = data433.travels;
                if (typeof data434 !== "string") {
                  const err1141 = { instancePath: instancePath + "/machine/drawbar/travels", schemaPath: "#/properties/machine/properties/drawbar/anyOf/1/properties/travels/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1141];
                  } else {
                    vErrors.push(err1141);
                  }
                  errors++;
                }
                if (!(data434 === "clamped" || data434 === "released")) {
                  const err1142 = { instancePath: instancePath + "/machine/drawbar/travels", schemaPath: "#/properties/machine/properties/drawbar/anyOf/1/properties/travels/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties.drawbar.anyOf[1].properties.travels.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1142];
                  } else {
                    vErrors.push(err1142);
                  }
                  errors++;
                }
              }
              if (data433["taper-air"] !== void 0) {
                let data435 = data433["taper-air"];
                if (typeof data435 !== "string") {
                  const err1143 = { instancePath: instancePath + "/machine/drawbar/taper-air", schemaPath: "#/$defs/yesNo/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1143];
                  } else {
                    vErrors.push(err1143);
                  }
                  errors++;
                }
                if (!(data435 === "yes" || data435 === "no")) {
                  const err1144 = { instancePath: instancePath + "/machine/drawbar/taper-air", schemaPath: "#/$defs/yesNo/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1144];
                  } else {
                    vErrors.push(err1144);
                  }
                  errors++;
                }
              }
            } else {
              const err1145 = { instancePath: instancePath + "/machine/drawbar", schemaPath: "#/properties/machine/properties/drawbar/anyOf/1/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err1145];
              } else {
                vErrors.push(err1145);
              }
              errors++;
            }
            var _valid50 = _errs1323 === errors;
            valid348 = valid348 || _valid50;
            if (!valid348) {
              const err1146 = { instancePath: instancePath + "/machine/drawbar", schemaPath: "#/properties/machine/properties/drawbar/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err1146];
              } else {
                vErrors.push(err1146);
              }
              errors++;
            } else {
              errors = _errs1320;
              if (vErrors !== null) {
                if (_errs1320) {
                  vErrors.length = _errs1320;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data379.rack !== void 0) {
            let data436 = data379.rack;
            const _errs1332 = errors;
            let valid351 = false;
            const _errs1333 = errors;
            if (typeof data436 !== "string") {
              const err1147 = { instancePath: instancePath + "/machine/rack", schemaPath: "#/properties/machine/properties/rack/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err1147];
              } else {
                vErrors.push(err1147);
              }
              errors++;
            }
            if ("none" !== data436) {
              const err1148 = { instancePath: instancePath + "/machine/rack", schemaPath: "#/properties/machine/properties/rack/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
              if (vErrors === null) {
                vErrors = [err1148];
              } else {
                vErrors.push(err1148);
              }
              errors++;
            }
            var _valid51 = _errs1333 === errors;
            valid351 = valid351 || _valid51;
            const _errs1335 = errors;
            if (data436 && typeof data436 == "object" && !Array.isArray(data436)) {
              for (const key64 in data436) {
                if (!func1.call(schema31.properties.machine.properties.rack.anyOf[1].properties, key64)) {
                  const err1149 = { instancePath: instancePath + "/machine/rack", schemaPath: "#/properties/machine/properties/rack/anyOf/1/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key64 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err1149];
                  } else {
                    vErrors.push(err1149);
                  }
                  errors++;
                }
              }
              if (data436.style !== void 0) {
                let data437 = data436.style;
                if (typeof data437 !== "string") {
                  const err1150 = { instancePath: instancePath + "/machine/rack/style", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/style/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1150];
                  } else {
                    vErrors.push(err1150);
                  }
                  errors++;
                }
                if (!(data437 === "drop-in" || data437 === "slide-in")) {
                  const err1151 = { instancePath: instancePath + "/machine/rack/style", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/style/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties.rack.anyOf[1].properties.style.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1151];
                  } else {
                    vErrors.push(err1151);
                  }
                  errors++;
                }
              }
              if (data436["clear-z"] !== void 0) {
                let data438 = data436["clear-z"];
                const _errs1342 = errors;
                let valid354 = false;
                const _errs1343 = errors;
                if (typeof data438 == "number" && isFinite(data438)) {
                  if (data438 > 1e6 || isNaN(data438)) {
                    const err1152 = { instancePath: instancePath + "/machine/rack/clear-z", schemaPath: "#/$defs/length/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                    if (vErrors === null) {
                      vErrors = [err1152];
                    } else {
                      vErrors.push(err1152);
                    }
                    errors++;
                  }
                  if (data438 < -1e6 || isNaN(data438)) {
                    const err1153 = { instancePath: instancePath + "/machine/rack/clear-z", schemaPath: "#/$defs/length/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: -1e6 }, message: "must be >= -1000000" };
                    if (vErrors === null) {
                      vErrors = [err1153];
                    } else {
                      vErrors.push(err1153);
                    }
                    errors++;
                  }
                } else {
                  const err1154 = { instancePath: instancePath + "/machine/rack/clear-z", schemaPath: "#/$defs/length/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                  if (vErrors === null) {
                    vErrors = [err1154];
                  } else {
                    vErrors.push(err1154);
                  }
                  errors++;
                }
                var _valid52 = _errs1343 === errors;
                valid354 = valid354 || _valid52;
                const _errs1345 = errors;
                if (typeof data438 === "string") {
                  if (!pattern26.test(data438)) {
                    const err1155 = { instancePath: instancePath + "/machine/rack/clear-z", schemaPath: "#/$defs/length/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }, message: 'must match pattern "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$"' };
                    if (vErrors === null) {
                      vErrors = [err1155];
                    } else {
                      vErrors.push(err1155);
                    }
                    errors++;
                  }
                } else {
                  const err1156 = { instancePath: instancePath + "/machine/rack/clear-z", schemaPath: "#/$defs/length/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1156];
                  } else {
                    vErrors.push(err1156);
                  }
                  errors++;
                }
                var _valid52 = _errs1345 === errors;
                valid354 = valid354 || _valid52;
                if (!valid354) {
                  const err1157 = { instancePath: instancePath + "/machine/rack/clear-z", schemaPath: "#/$defs/length/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err1157];
                  } else {
                    vErrors.push(err1157);
                  }
                  errors++;
                } else {
                  errors = _errs1342;
                  if (vErrors !== null) {
                    if (_errs1342) {
                      vErrors.length = _errs1342;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
              if (data436["pocket-z"] !== void 0) {
                let data439 = data436["pocket-z"];
                const _errs1349 = errors;
                let valid356 = false;
                const _errs1350 = errors;
                if (typeof data439 == "number" && isFinite(data439)) {
                  if (data439 > 1e6 || isNaN(data439)) {
                    const err1158 = { instancePath: instancePath + "/machine/rack/pocket-z", schemaPath: "#/$defs/length/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                    if (vErrors === null) {
                      vErrors = [err1158];
                    } else {
                      vErrors.push(err1158);
                    }
                    errors++;
                  }
                  if (data439 < -1e6 || isNaN(data439)) {
                    const err1159 = { instancePath: instancePath + "/machine/rack/pocket-z", schemaPath: "#/$defs/length/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: -1e6 }, message: "must be >= -1000000" };
                    if (vErrors === null) {
                      vErrors = [err1159];
                    } else {
                      vErrors.push(err1159);
                    }
                    errors++;
                  }
                } else {
                  const err1160 = { instancePath: instancePath + "/machine/rack/pocket-z", schemaPath: "#/$defs/length/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                  if (vErrors === null) {
                    vErrors = [err1160];
                  } else {
                    vErrors.push(err1160);
                  }
                  errors++;
                }
                var _valid53 = _errs1350 === errors;
                valid356 = valid356 || _valid53;
                const _errs1352 = errors;
                if (typeof data439 === "string") {
                  if (!pattern26.test(data439)) {
                    const err1161 = { instancePath: instancePath + "/machine/rack/pocket-z", schemaPath: "#/$defs/length/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }, message: 'must match pattern "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$"' };
                    if (vErrors === null) {
                      vErrors = [err1161];
                    } else {
                      vErrors.push(err1161);
                    }
                    errors++;
                  }
                } else {
                  const err1162 = { instancePath: instancePath + "/machine/rack/pocket-z", schemaPath: "#/$defs/length/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1162];
                  } else {
                    vErrors.push(err1162);
                  }
                  errors++;
                }
                var _valid53 = _errs1352 === errors;
                valid356 = valid356 || _valid53;
                if (!valid356) {
                  const err1163 = { instancePath: instancePath + "/machine/rack/pocket-z", schemaPath: "#/$defs/length/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err1163];
                  } else {
                    vErrors.push(err1163);
                  }
                  errors++;
                } else {
                  errors = _errs1349;
                  if (vErrors !== null) {
                    if (_errs1349) {
                      vErrors.length = _errs1349;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
              if (data436["descend-from"] !== void 0) {
                let data440 = data436["descend-from"];
                const _errs1356 = errors;
                let valid358 = false;
                const _errs1357 = errors;
                if (typeof data440 == "number" && isFinite(data440)) {
                  if (data440 > 1e6 || isNaN(data440)) {
                    const err1164 = { instancePath: instancePath + "/machine/rack/descend-from", schemaPath: "#/$defs/length/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                    if (vErrors === null) {
                      vErrors = [err1164];
                    } else {
                      vErrors.push(err1164);
                    }
                    errors++;
                  }
                  if (data440 < -1e6 || isNaN(data440)) {
                    const err1165 = { instancePath: instancePath + "/machine/rack/descend-from", schemaPath: "#/$defs/length/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: -1e6 }, message: "must be >= -1000000" };
                    if (vErrors === null) {
                      vErrors = [err1165];
                    } else {
                      vErrors.push(err1165);
                    }
                    errors++;
                  }
                } else {
                  const err1166 = { instancePath: instancePath + "/machine/rack/descend-from", schemaPath: "#/$defs/length/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                  if (vErrors === null) {
                    vErrors = [err1166];
                  } else {
                    vErrors.push(err1166);
                  }
                  errors++;
                }
                var _valid54 = _errs1357 === errors;
                valid358 = valid358 || _valid54;
                const _errs1359 = errors;
                if (typeof data440 === "string") {
                  if (!pattern26.test(data440)) {
                    const err1167 = { instancePath: instancePath + "/machine/rack/descend-from", schemaPath: "#/$defs/length/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }, message: 'must match pattern "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$"' };
                    if (vErrors === null) {
                      vErrors = [err1167];
                    } else {
                      vErrors.push(err1167);
                    }
                    errors++;
                  }
                } else {
                  const err1168 = { instancePath: instancePath + "/machine/rack/descend-from", schemaPath: "#/$defs/length/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1168];
                  } else {
                    vErrors.push(err1168);
                  }
                  errors++;
                }
                var _valid54 = _errs1359 === errors;
                valid358 = valid358 || _valid54;
                if (!valid358) {
                  const err1169 = { instancePath: instancePath + "/machine/rack/descend-from", schemaPath: "#/$defs/length/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err1169];
                  } else {
                    vErrors.push(err1169);
                  }
                  errors++;
                } else {
                  errors = _errs1356;
                  if (vErrors !== null) {
                    if (_errs1356) {
                      vErrors.length = _errs1356;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
              if (data436["descend-feed"] !== void 0) {
                let data441 = data436["descend-feed"];
                const _errs1363 = errors;
                let valid360 = false;
                const _errs1364 = errors;
                if (typeof data441 == "number" && isFinite(data441)) {
                  if (data441 > 1e6 || isNaN(data441)) {
                    const err1170 = { instancePath: instancePath + "/machine/rack/descend-feed", schemaPath: "#/$defs/feed/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                    if (vErrors === null) {
                      vErrors = [err1170];
                    } else {
                      vErrors.push(err1170);
                    }
                    errors++;
                  }
                  if (data441 <= 0 || isNaN(data441)) {
                    const err1171 = { instancePath: instancePath + "/machine/rack/descend-feed", schemaPath: "#/$defs/feed/anyOf/0/exclusiveMinimum", keyword: "exclusiveMinimum", params: { comparison: ">", limit: 0 }, message: "must be > 0" };
                    if (vErrors === null) {
                      vErrors = [err1171];
                    } else {
                      vErrors.push(err1171);
                    }
                    errors++;
                  }
                } else {
                  const err1172 = { instancePath: instancePath + "/machine/rack/descend-feed", schemaPath: "#/$defs/feed/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                  if (vErrors === null) {
                    vErrors = [err1172];
                  } else {
                    vErrors.push(err1172);
                  }
                  errors++;
                }
                var _valid55 = _errs1364 === errors;
                valid360 = valid360 || _valid55;
                const _errs1366 = errors;
                if (typeof data441 === "string") {
                  if (!pattern10.test(data441)) {
                    const err1173 = { instancePath: instancePath + "/machine/rack/descend-feed", schemaPath: "#/$defs/feed/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^\\d{1,5}(\\.\\d{1,5})? (mm|in)/min$" }, message: 'must match pattern "^\\d{1,5}(\\.\\d{1,5})? (mm|in)/min$"' };
                    if (vErrors === null) {
                      vErrors = [err1173];
                    } else {
                      vErrors.push(err1173);
                    }
                    errors++;
                  }
                } else {
                  const err1174 = { instancePath: instancePath + "/machine/rack/descend-feed", schemaPath: "#/$defs/feed/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1174];
                  } else {
                    vErrors.push(err1174);
                  }
                  errors++;
                }
                var _valid55 = _errs1366 === errors;
                valid360 = valid360 || _valid55;
                if (!valid360) {
                  const err1175 = { instancePath: instancePath + "/machine/rack/descend-feed", schemaPath: "#/$defs/feed/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err1175];
                  } else {
                    vErrors.push(err1175);
                  }
                  errors++;
                } else {
                  errors = _errs1363;
                  if (vErrors !== null) {
                    if (_errs1363) {
                      vErrors.length = _errs1363;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
              if (data436.pockets !== void 0) {
                let data442 = data436.pockets;
                const _errs1369 = errors;
                let valid361 = false;
                const _errs1370 = errors;
                if (data442 && typeof data442 == "object" && !Array.isArray(data442)) {
                  for (const key65 in data442) {
                    if (!(key65 === "first" || key65 === "pitch" || key65 === "count")) {
                      const err1176 = { instancePath: instancePath + "/machine/rack/pockets", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/pockets/anyOf/0/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key65 }, message: "must NOT have additional properties" };
                      if (vErrors === null) {
                        vErrors = [err1176];
                      } else {
                        vErrors.push(err1176);
                      }
                      errors++;
                    }
                  }
                  if (data442.first !== void 0) {
                    if (!validate31(data442.first, { instancePath: instancePath + "/machine/rack/pockets/first", parentData: data442, parentDataProperty: "first", rootData, dynamicAnchors })) {
                      vErrors = vErrors === null ? validate31.errors : vErrors.concat(validate31.errors);
                      errors = vErrors.length;
                    }
                  }
                  if (data442.pitch !== void 0) {
                    if (!validate31(data442.pitch, { instancePath: instancePath + "/machine/rack/pockets/pitch", parentData: data442, parentDataProperty: "pitch", rootData, dynamicAnchors })) {
                      vErrors = vErrors === null ? validate31.errors : vErrors.concat(validate31.errors);
                      errors = vErrors.length;
                    }
                  }
                  if (data442.count !== void 0) {
                    let data445 = data442.count;
                    if (!(typeof data445 == "number" && (!(data445 % 1) && !isNaN(data445)) && isFinite(data445))) {
                      const err1177 = { instancePath: instancePath + "/machine/rack/pockets/count", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/pockets/anyOf/0/properties/count/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                      if (vErrors === null) {
                        vErrors = [err1177];
                      } else {
                        vErrors.push(err1177);
                      }
                      errors++;
                    }
                    if (typeof data445 == "number" && isFinite(data445)) {
                      if (data445 > 200 || isNaN(data445)) {
                        const err1178 = { instancePath: instancePath + "/machine/rack/pockets/count", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/pockets/anyOf/0/properties/count/maximum", keyword: "maximum", params: { comparison: "<=", limit: 200 }, message: "must be <= 200" };
                        if (vErrors === null) {
                          vErrors = [err1178];
                        } else {
                          vErrors.push(err1178);
                        }
                        errors++;
                      }
                      if (data445 < 1 || isNaN(data445)) {
                        const err1179 = { instancePath: instancePath + "/machine/rack/pockets/count", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/pockets/anyOf/0/properties/count/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                        if (vErrors === null) {
                          vErrors = [err1179];
                        } else {
                          vErrors.push(err1179);
                        }
                        errors++;
                      }
                    }
                  }
                } else {
                  const err1180 = { instancePath: instancePath + "/machine/rack/pockets", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/pockets/anyOf/0/type", keyword: "type", params: { type: "object" }, message: "must be object" };
                  if (vErrors === null) {
                    vErrors = [err1180];
                  } else {
                    vErrors.push(err1180);
                  }
                  errors++;
                }
                var _valid56 = _errs1370 === errors;
                valid361 = valid361 || _valid56;
                const _errs1377 = errors;
                if (Array.isArray(data442)) {
                  if (data442.length > 200) {
                    const err1181 = { instancePath: instancePath + "/machine/rack/pockets", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/pockets/anyOf/1/maxItems", keyword: "maxItems", params: { limit: 200 }, message: "must NOT have more than 200 items" };
                    if (vErrors === null) {
                      vErrors = [err1181];
                    } else {
                      vErrors.push(err1181);
                    }
                    errors++;
                  }
                  if (data442.length < 1) {
                    const err1182 = { instancePath: instancePath + "/machine/rack/pockets", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/pockets/anyOf/1/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items" };
                    if (vErrors === null) {
                      vErrors = [err1182];
                    } else {
                      vErrors.push(err1182);
                    }
                    errors++;
                  }
                  const len17 = data442.length;
                  for (let i20 = 0; i20 < len17; i20++) {
                    if (!validate31(data442[i20], { instancePath: instancePath + "/machine/rack/pockets/" + i20, parentData: data442, parentDataProperty: i20, rootData, dynamicAnchors })) {
                      vErrors = vErrors === null ? validate31.errors : vErrors.concat(validate31.errors);
                      errors = vErrors.length;
                    }
                  }
                } else {
                  const err1183 = { instancePath: instancePath + "/machine/rack/pockets", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/pockets/anyOf/1/type", keyword: "type", params: { type: "array" }, message: "must be array" };
                  if (vErrors === null) {
                    vErrors = [err1183];
                  } else {
                    vErrors.push(err1183);
                  }
                  errors++;
                }
                var _valid56 = _errs1377 === errors;
                valid361 = valid361 || _valid56;
                if (!valid361) {
                  const err1184 = { instancePath: instancePath + "/machine/rack/pockets", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/pockets/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err1184];
                  } else {
                    vErrors.push(err1184);
                  }
                  errors++;
                } else {
                  errors = _errs1369;
                  if (vErrors !== null) {
                    if (_errs1369) {
                      vErrors.length = _errs1369;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
              if (data436.zone !== void 0) {
                let data447 = data436.zone;
                if (data447 && typeof data447 == "object" && !Array.isArray(data447)) {
                  for (const key66 in data447) {
                    if (!(key66 === "min" || key66 === "max")) {
                      const err1185 = { instancePath: instancePath + "/machine/rack/zone", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/zone/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key66 }, message: "must NOT have additional properties" };
                      if (vErrors === null) {
                        vErrors = [err1185];
                      } else {
                        vErrors.push(err1185);
                      }
                      errors++;
                    }
                  }
                  if (data447.min !== void 0) {
                    if (!validate29(data447.min, { instancePath: instancePath + "/machine/rack/zone/min", parentData: data447, parentDataProperty: "min", rootData, dynamicAnchors })) {
                      vErrors = vErrors === null ? validate29.errors : vErrors.concat(validate29.errors);
                      errors = vErrors.length;
                    }
                  }
                  if (data447.max !== void 0) {
                    if (!validate29(data447.max, { instancePath: instancePath + "/machine/rack/zone/max", parentData: data447, parentDataProperty: "max", rootData, dynamicAnchors })) {
                      vErrors = vErrors === null ? validate29.errors : vErrors.concat(validate29.errors);
                      errors = vErrors.length;
                    }
                  }
                } else {
                  const err1186 = { instancePath: instancePath + "/machine/rack/zone", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/zone/type", keyword: "type", params: { type: "object" }, message: "must be object" };
                  if (vErrors === null) {
                    vErrors = [err1186];
                  } else {
                    vErrors.push(err1186);
                  }
                  errors++;
                }
              }
              if (data436.slide !== void 0) {
                let data450 = data436.slide;
                if (data450 && typeof data450 == "object" && !Array.isArray(data450)) {
                  for (const key67 in data450) {
                    if (!(key67 === "direction" || key67 === "distance" || key67 === "feed")) {
                      const err1187 = { instancePath: instancePath + "/machine/rack/slide", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/slide/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key67 }, message: "must NOT have additional properties" };
                      if (vErrors === null) {
                        vErrors = [err1187];
                      } else {
                        vErrors.push(err1187);
                      }
                      errors++;
                    }
                  }
                  if (data450.direction !== void 0) {
                    let data451 = data450.direction;
                    if (typeof data451 !== "string") {
                      const err1188 = { instancePath: instancePath + "/machine/rack/slide/direction", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/slide/properties/direction/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                      if (vErrors === null) {
                        vErrors = [err1188];
                      } else {
                        vErrors.push(err1188);
                      }
                      errors++;
                    }
                    if (!(data451 === "+x" || data451 === "-x" || data451 === "+y" || data451 === "-y")) {
                      const err1189 = { instancePath: instancePath + "/machine/rack/slide/direction", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/slide/properties/direction/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties.rack.anyOf[1].properties.slide.properties.direction.enum }, message: "must be equal to one of the allowed values" };
                      if (vErrors === null) {
                        vErrors = [err1189];
                      } else {
                        vErrors.push(err1189);
                      }
                      errors++;
                    }
                  }
                  if (data450.distance !== void 0) {
                    let data452 = data450.distance;
                    const _errs1392 = errors;
                    let valid368 = false;
                    const _errs1393 = errors;
                    if (typeof data452 == "number" && isFinite(data452)) {
                      if (data452 > 1e6 || isNaN(data452)) {
                        const err1190 = { instancePath: instancePath + "/machine/rack/slide/distance", schemaPath: "#/$defs/length/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                        if (vErrors === null) {
                          vErrors = [err1190];
                        } else {
                          vErrors.push(err1190);
                        }
                        errors++;
                      }
                      if (data452 < -1e6 || isNaN(data452)) {
                        const err1191 = { instancePath: instancePath + "/machine/rack/slide/distance", schemaPath: "#/$defs/length/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: -1e6 }, message: "must be >= -1000000" };
                        if (vErrors === null) {
                          vErrors = [err1191];
                        } else {
                          vErrors.push(err1191);
                        }
                        errors++;
                      }
                    } else {
                      const err1192 = { instancePath: instancePath + "/machine/rack/slide/distance", schemaPath: "#/$defs/length/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                      if (vErrors === null) {
                        vErrors = [err1192];
                      } else {
                        vErrors.push(err1192);
                      }
                      errors++;
                    }
                    var _valid57 = _errs1393 === errors;
                    valid368 = valid368 || _valid57;
                    const _errs1395 = errors;
                    if (typeof data452 === "string") {
                      if (!pattern26.test(data452)) {
                        const err1193 = { instancePath: instancePath + "/machine/rack/slide/distance", schemaPath: "#/$defs/length/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }, message: 'must match pattern "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$"' };
                        if (vErrors === null) {
                          vErrors = [err1193];
                        } else {
                          vErrors.push(err1193);
                        }
                        errors++;
                      }
                    } else {
                      const err1194 = { instancePath: instancePath + "/machine/rack/slide/distance", schemaPath: "#/$defs/length/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                      if (vErrors === null) {
                        vErrors = [err1194];
                      } else {
                        vErrors.push(err1194);
                      }
                      errors++;
                    }
                    var _valid57 = _errs1395 === errors;
                    valid368 = valid368 || _valid57;
                    if (!valid368) {
                      const err1195 = { instancePath: instancePath + "/machine/rack/slide/distance", schemaPath: "#/$defs/length/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                      if (vErrors === null) {
                        vErrors = [err1195];
                      } else {
                        vErrors.push(err1195);
                      }
                      errors++;
                    } else {
                      errors = _errs1392;
                      if (vErrors !== null) {
                        if (_errs1392) {
                          vErrors.length = _errs1392;
                        } else {
                          vErrors = null;
                        }
                      }
                    }
                  }
                  if (data450.feed !== void 0) {
                    let data453 = data450.feed;
                    const _errs1399 = errors;
                    let valid370 = false;
                    const _errs1400 = errors;
                    if (typeof data453 == "number" && isFinite(data453)) {
                      if (data453 > 1e6 || isNaN(data453)) {
                        const err1196 = { instancePath: instancePath + "/machine/rack/slide/feed", schemaPath: "#/$defs/feed/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                        if (vErrors === null) {
                          vErrors = [err1196];
                        } else {
                          vErrors.push(err1196);
                        }
                        errors++;
                      }
                      if (data453 <= 0 || isNaN(data453)) {
                        const err1197 = { instancePath: instancePath + "/machine/rack/slide/feed", schemaPath: "#/$defs/feed/anyOf/0/exclusiveMinimum", keyword: "exclusiveMinimum", params: { comparison: ">", limit: 0 }, message: "must be > 0" };
                        if (vErrors === null) {
                          vErrors = [err1197];
                        } else {
                          vErrors.push(err1197);
                        }
                        errors++;
                      }
                    } else {
                      const err1198 = { instancePath: instancePath + "/machine/rack/slide/feed", schemaPath: "#/$defs/feed/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                      if (vErrors === null) {
                        vErrors = [err1198];
                      } else {
                        vErrors.push(err1198);
                      }
                      errors++;
                    }
                    var _valid58 = _errs1400 === errors;
                    valid370 = valid370 || _valid58;
                    const _errs1402 = errors;
                    if (typeof data453 === "string") {
                      if (!pattern10.test(data453)) {
                        const err1199 = { instancePath: instancePath + "/machine/rack/slide/feed", schemaPath: "#/$defs/feed/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^\\d{1,5}(\\.\\d{1,5})? (mm|in)/min$" }, message: 'must match pattern "^\\d{1,5}(\\.\\d{1,5})? (mm|in)/min$"' };
                        if (vErrors === null) {
                          vErrors = [err1199];
                        } else {
                          vErrors.push(err1199);
                        }
                        errors++;
                      }
                    } else {
                      const err1200 = { instancePath: instancePath + "/machine/rack/slide/feed", schemaPath: "#/$defs/feed/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                      if (vErrors === null) {
                        vErrors = [err1200];
                      } else {
                        vErrors.push(err1200);
                      }
                      errors++;
                    }
                    var _valid58 = _errs1402 === errors;
                    valid370 = valid370 || _valid58;
                    if (!valid370) {
                      const err1201 = { instancePath: instancePath + "/machine/rack/slide/feed", schemaPath: "#/$defs/feed/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                      if (vErrors === null) {
                        vErrors = [err1201];
                      } else {
                        vErrors.push(err1201);
                      }
                      errors++;
                    } else {
                      errors = _errs1399;
                      if (vErrors !== null) {
                        if (_errs1399) {
                          vErrors.length = _errs1399;
                        } else {
                          vErrors = null;
                        }
                      }
                    }
                  }
                } else {
                  const err1202 = { instancePath: instancePath + "/machine/rack/slide", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/slide/type", keyword: "type", params: { type: "object" }, message: "must be object" };
                  if (vErrors === null) {
                    vErrors = [err1202];
                  } else {
                    vErrors.push(err1202);
                  }
                  errors++;
                }
              }
              if (data436.widest !== void 0) {
                let data454 = data436.widest;
                const _errs1406 = errors;
                let valid372 = false;
                const _errs1407 = errors;
                if (typeof data454 == "number" && isFinite(data454)) {
                  if (data454 > 1e6 || isNaN(data454)) {
                    const err1203 = { instancePath: instancePath + "/machine/rack/widest", schemaPath: "#/$defs/lengthOrNone/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                    if (vErrors === null) {
                      vErrors = [err1203];
                    } else {
                      vErrors.push(err1203);
                    }
                    errors++;
                  }
                  if (data454 < 0 || isNaN(data454)) {
                    const err1204 = { instancePath: instancePath + "/machine/rack/widest", schemaPath: "#/$defs/lengthOrNone/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err1204];
                    } else {
                      vErrors.push(err1204);
                    }
                    errors++;
                  }
                } else {
                  const err1205 = { instancePath: instancePath + "/machine/rack/widest", schemaPath: "#/$defs/lengthOrNone/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                  if (vErrors === null) {
                    vErrors = [err1205];
                  } else {
                    vErrors.push(err1205);
                  }
                  errors++;
                }
                var _valid59 = _errs1407 === errors;
                valid372 = valid372 || _valid59;
                const _errs1409 = errors;
                if (typeof data454 === "string") {
                  if (!pattern24.test(data454)) {
                    const err1206 = { instancePath: instancePath + "/machine/rack/widest", schemaPath: "#/$defs/lengthOrNone/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^(none|\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }, message: 'must match pattern "^(none|\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$"' };
                    if (vErrors === null) {
                      vErrors = [err1206];
                    } else {
                      vErrors.push(err1206);
                    }
                    errors++;
                  }
                } else {
                  const err1207 = { instancePath: instancePath + "/machine/rack/widest", schemaPath: "#/$defs/lengthOrNone/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1207];
                  } else {
                    vErrors.push(err1207);
                  }
                  errors++;
                }
                var _valid59 = _errs1409 === errors;
                valid372 = valid372 || _valid59;
                if (!valid372) {
                  const err1208 = { instancePath: instancePath + "/machine/rack/widest", schemaPath: "#/$defs/lengthOrNone/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err1208];
                  } else {
                    vErrors.push(err1208);
                  }
                  errors++;
                } else {
                  errors = _errs1406;
                  if (vErrors !== null) {
                    if (_errs1406) {
                      vErrors.length = _errs1406;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
              if (data436.longest !== void 0) {
                let data455 = data436.longest;
                const _errs1413 = errors;
                let valid374 = false;
                const _errs1414 = errors;
                if (typeof data455 == "number" && isFinite(data455)) {
                  if (data455 > 1e6 || isNaN(data455)) {
                    const err1209 = { instancePath: instancePath + "/machine/rack/longest", schemaPath: "#/$defs/lengthOrNone/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                    if (vErrors === null) {
                      vErrors = [err1209];
                    } else {
                      vErrors.push(err1209);
                    }
                    errors++;
                  }
                  if (data455 < 0 || isNaN(data455)) {
                    const err1210 = { instancePath: instancePath + "/machine/rack/longest", schemaPath: "#/$defs/lengthOrNone/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err1210];
                    } else {
                      vErrors.push(err1210);
                    }
                    errors++;
                  }
                } else {
                  const err1211 = { instancePath: instancePath + "/machine/rack/longest", schemaPath: "#/$defs/lengthOrNone/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                  if (vErrors === null) {
                    vErrors = [err1211];
                  } else {
                    vErrors.push(err1211);
                  }
                  errors++;
                }
                var _valid60 = _errs1414 === errors;
                valid374 = valid374 || _valid60;
                const _errs1416 = errors;
                if (typeof data455 === "string") {
                  if (!pattern24.test(data455)) {
                    const err1212 = { instancePath: instancePath + "/machine/rack/longest", schemaPath: "#/$defs/lengthOrNone/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^(none|\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }, message: 'must match pattern "^(none|\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$"' };
                    if (vErrors === null) {
                      vErrors = [err1212];
                    } else {
                      vErrors.push(err1212);
                    }
                    errors++;
                  }
                } else {
                  const err1213 = { instancePath: instancePath + "/machine/rack/longest", schemaPath: "#/$defs/lengthOrNone/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1213];
                  } else {
                    vErrors.push(err1213);
                  }
                  errors++;
                }
                var _valid60 = _errs1416 === errors;
                valid374 = valid374 || _valid60;
                if (!valid374) {
                  const err1214 = { instancePath: instancePath + "/machine/rack/longest", schemaPath: "#/$defs/lengthOrNone/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err1214];
                  } else {
                    vErrors.push(err1214);
                  }
                  errors++;
                } else {
                  errors = _errs1413;
                  if (vErrors !== null) {
                    if (_errs1413) {
                      vErrors.length = _errs1413;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
              if (data436.cover !== void 0) {
                let data456 = data436.cover;
                if (typeof data456 !== "string") {
                  const err1215 = { instancePath: instancePath + "/machine/rack/cover", schemaPath: "#/$defs/yesNo/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1215];
                  } else {
                    vErrors.push(err1215);
                  }
                  errors++;
                }
                if (!(data456 === "yes" || data456 === "no")) {
                  const err1216 = { instancePath: instancePath + "/machine/rack/cover", schemaPath: "#/$defs/yesNo/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1216];
                  } else {
                    vErrors.push(err1216);
                  }
                  errors++;
                }
              }
              if (data436["at-end"] !== void 0) {
                let data457 = data436["at-end"];
                if (data457 && typeof data457 == "object" && !Array.isArray(data457)) {
                  for (const key68 in data457) {
                    if (!(key68 === "tool")) {
                      const err1217 = { instancePath: instancePath + "/machine/rack/at-end", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/at-end/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key68 }, message: "must NOT have additional properties" };
                      if (vErrors === null) {
                        vErrors = [err1217];
                      } else {
                        vErrors.push(err1217);
                      }
                      errors++;
                    }
                  }
                  if (data457.tool !== void 0) {
                    let data458 = data457.tool;
                    if (typeof data458 !== "string") {
                      const err1218 = { instancePath: instancePath + "/machine/rack/at-end/tool", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/at-end/properties/tool/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                      if (vErrors === null) {
                        vErrors = [err1218];
                      } else {
                        vErrors.push(err1218);
                      }
                      errors++;
                    }
                    if (!(data458 === "return" || data458 === "keep")) {
                      const err1219 = { instancePath: instancePath + "/machine/rack/at-end/tool", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/at-end/properties/tool/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties.rack.anyOf[1].properties["at-end"].properties.tool.enum }, message: "must be equal to one of the allowed values" };
                      if (vErrors === null) {
                        vErrors = [err1219];
                      } else {
                        vErrors.push(err1219);
                      }
                      errors++;
                    }
                  }
                } else {
                  const err1220 = { instancePath: instancePath + "/machine/rack/at-end", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/at-end/type", keyword: "type", params: { type: "object" }, message: "must be object" };
                  if (vErrors === null) {
                    vErrors = [err1220];
                  } else {
                    vErrors.push(err1220);
                  }
                  errors++;
                }
              }
            } else {
              const err1221 = { instancePath: instancePath + "/machine/rack", schemaPath: "#/properties/machine/properties/rack/anyOf/1/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err1221];
              } else {
                vErrors.push(err1221);
              }
              errors++;
            }
            var _valid51 = _errs1335 === errors;
            valid351 = valid351 || _valid51;
            if (!valid351) {
              const err1222 = { instancePath: instancePath + "/machine/rack", schemaPath: "#/properties/machine/properties/rack/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err1222];
              } else {
                vErrors.push(err1222);
              }
              errors++;
            } else {
              errors = _errs1332;
              if (vErrors !== null) {
                if (_errs1332) {
                  vErrors.length = _errs1332;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data379.park !== void 0) {
            if (!validate31(data379.park, { instancePath: instancePath + "/machine/park", parentData: data379, parentDataProperty: "park", rootData, dynamicAnchors })) {
              vErrors = vErrors === null ? validate31.errors : vErrors.concat(validate31.errors);
              errors = vErrors.length;
            }
          }
          if (data379.outputs !== void 0) {
            let data460 = data379.outputs;
            if (data460 && typeof data460 == "object" && !Array.isArray(data460)) {
              for (const key69 in data460) {
                if (!pattern113.test(key69)) {
                  const err1223 = { instancePath: instancePath + "/machine/outputs", schemaPath: "#/properties/machine/properties/outputs/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key69 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err1223];
                  } else {
                    vErrors.push(err1223);
                  }
                  errors++;
                }
              }
              for (const key70 in data460) {
                if (pattern113.test(key70)) {
                  let data461 = data460[key70];
                  if (data461 && typeof data461 == "object" && !Array.isArray(data461)) {
                    for (const key71 in data461) {
                      if (!(key71 === "number" || key71 === "during")) {
                        const err1224 = { instancePath: instancePath + "/machine/outputs/" + key70.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/machine/properties/outputs/patternProperties/%5E%5Ba-z%5D%5Ba-z0-9-%5D%7B0%2C30%7D%24/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key71 }, message: "must NOT have additional properties" };
                        if (vErrors === null) {
                          vErrors = [err1224];
                        } else {
                          vErrors.push(err1224);
                        }
                        errors++;
                      }
                    }
                    if (data461.number !== void 0) {
                      let data462 = data461.number;
                      if (!(typeof data462 == "number" && (!(data462 % 1) && !isNaN(data462)) && isFinite(data462))) {
                        const err1225 = { instancePath: instancePath + "/machine/outputs/" + key70.replace(/~/g, "~0").replace(/\//g, "~1") + "/number", schemaPath: "#/properties/machine/properties/outputs/patternProperties/%5E%5Ba-z%5D%5Ba-z0-9-%5D%7B0%2C30%7D%24/properties/number/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                        if (vErrors === null) {
                          vErrors = [err1225];
                        } else {
                          vErrors.push(err1225);
                        }
                        errors++;
                      }
                      if (typeof data462 == "number" && isFinite(data462)) {
                        if (data462 > 9999 || isNaN(data462)) {
                          const err1226 = { instancePath: instancePath + "/machine/outputs/" + key70.replace(/~/g, "~0").replace(/\//g, "~1") + "/number", schemaPath: "#/properties/machine/properties/outputs/patternProperties/%5E%5Ba-z%5D%5Ba-z0-9-%5D%7B0%2C30%7D%24/properties/number/maximum", keyword: "maximum", params: { comparison: "<=", limit: 9999 }, message: "must be <= 9999" };
                          if (vErrors === null) {
                            vErrors = [err1226];
                          } else {
                            vErrors.push(err1226);
                          }
                          errors++;
                        }
                        if (data462 < 0 || isNaN(data462)) {
                          const err1227 = { instancePath: instancePath + "/machine/outputs/" + key70.replace(/~/g, "~0").replace(/\//g, "~1") + "/number", schemaPath: "#/properties/machine/properties/outputs/patternProperties/%5E%5Ba-z%5D%5Ba-z0-9-%5D%7B0%2C30%7D%24/properties/number/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                          if (vErrors === null) {
                            vErrors = [err1227];
                          } else {
                            vErrors.push(err1227);
                          }
                          errors++;
                        }
                      }
                    }
                    if (data461.during !== void 0) {
                      let data463 = data461.during;
                      if (typeof data463 !== "string") {
                        const err1228 = { instancePath: instancePath + "/machine/outputs/" + key70.replace(/~/g, "~0").replace(/\//g, "~1") + "/during", schemaPath: "#/properties/machine/properties/outputs/patternProperties/%5E%5Ba-z%5D%5Ba-z0-9-%5D%7B0%2C30%7D%24/properties/during/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                        if (vErrors === null) {
                          vErrors = [err1228];
                        } else {
                          vErrors.push(err1228);
                        }
                        errors++;
                      }
                      if (!(data463 === "cutting" || data463 === "program")) {
                        const err1229 = { instancePath: instancePath + "/machine/outputs/" + key70.replace(/~/g, "~0").replace(/\//g, "~1") + "/during", schemaPath: "#/properties/machine/properties/outputs/patternProperties/%5E%5Ba-z%5D%5Ba-z0-9-%5D%7B0%2C30%7D%24/properties/during/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties.outputs.patternProperties["^[a-z][a-z0-9-]{0,30}$"].properties.during.enum }, message: "must be equal to one of the allowed values" };
                        if (vErrors === null) {
                          vErrors = [err1229];
                        } else {
                          vErrors.push(err1229);
                        }
                        errors++;
                      }
                    }
                  } else {
                    const err1230 = { instancePath: instancePath + "/machine/outputs/" + key70.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/machine/properties/outputs/patternProperties/%5E%5Ba-z%5D%5Ba-z0-9-%5D%7B0%2C30%7D%24/type", keyword: "type", params: { type: "object" }, message: "must be object" };
                    if (vErrors === null) {
                      vErrors = [err1230];
                    } else {
                      vErrors.push(err1230);
                    }
                    errors++;
                  }
                }
              }
            } else {
              const err1231 = { instancePath: instancePath + "/machine/outputs", schemaPath: "#/properties/machine/properties/outputs/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err1231];
              } else {
                vErrors.push(err1231);
              }
              errors++;
            }
          }
          if (data379.hood !== void 0) {
            let data464 = data379.hood;
            if (typeof data464 !== "string") {
              const err1232 = { instancePath: instancePath + "/machine/hood", schemaPath: "#/$defs/yesNo/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err1232];
              } else {
                vErrors.push(err1232);
              }
              errors++;
            }
            if (!(data464 === "yes" || data464 === "no")) {
              const err1233 = { instancePath: instancePath + "/machine/hood", schemaPath: "#/$defs/yesNo/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err1233];
              } else {
                vErrors.push(err1233);
              }
              errors++;
            }
          }
          if (data379["keep-out"] !== void 0) {
            let data465 = data379["keep-out"];
            if (Array.isArray(data465)) {
              if (data465.length > 50) {
                const err1234 = { instancePath: instancePath + "/machine/keep-out", schemaPath: "#/properties/machine/properties/keep-out/maxItems", keyword: "maxItems", params: { limit: 50 }, message: "must NOT have more than 50 items" };
                if (vErrors === null) {
                  vErrors = [err1234];
                } else {
                  vErrors.push(err1234);
                }
                errors++;
              }
              const len18 = data465.length;
              for (let i21 = 0; i21 < len18; i21++) {
                let data466 = data465[i21];
                if (data466 && typeof data466 == "object" && !Array.isArray(data466)) {
                  if (data466.name === void 0) {
                    const err1235 = { instancePath: instancePath + "/machine/keep-out/" + i21, schemaPath: "#/properties/machine/properties/keep-out/items/required", keyword: "required", params: { missingProperty: "name" }, message: "must have required property 'name'" };
                    if (vErrors === null) {
                      vErrors = [err1235];
                    } else {
                      vErrors.push(err1235);
                    }
                    errors++;
                  }
                  if (data466.min === void 0) {
                    const err1236 = { instancePath: instancePath + "/machine/keep-out/" + i21, schemaPath: "#/properties/machine/properties/keep-out/items/required", keyword: "required", params: { missingProperty: "min" }, message: "must have required property 'min'" };
                    if (vErrors === null) {
                      vErrors = [err1236];
                    } else {
                      vErrors.push(err1236);
                    }
                    errors++;
                  }
                  if (data466.max === void 0) {
                    const err1237 = { instancePath: instancePath + "/machine/keep-out/" + i21, schemaPath: "#/properties/machine/properties/keep-out/items/required", keyword: "required", params: { missingProperty: "max" }, message: "must have required property 'max'" };
                    if (vErrors === null) {
                      vErrors = [err1237];
                    } else {
                      vErrors.push(err1237);
                    }
                    errors++;
                  }
                  for (const key72 in data466) {
                    if (!(key72 === "name" || key72 === "min" || key72 === "max")) {
                      const err1238 = { instancePath: instancePath + "/machine/keep-out/" + i21, schemaPath: "#/properties/machine/properties/keep-out/items/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key72 }, message: "must NOT have additional properties" };
                      if (vErrors === null) {
                        vErrors = [err1238];
                      } else {
                        vErrors.push(err1238);
                      }
                      errors++;
                    }
                  }
                  if (data466.name !== void 0) {
                    let data467 = data466.name;
                    if (typeof data467 === "string") {
                      if (func2(data467) > 60) {
                        const err1239 = { instancePath: instancePath + "/machine/keep-out/" + i21 + "/name", schemaPath: "#/properties/machine/properties/keep-out/items/properties/name/maxLength", keyword: "maxLength", params: { limit: 60 }, message: "must NOT have more than 60 characters" };
                        if (vErrors === null) {
                          vErrors = [err1239];
                        } else {
                          vErrors.push(err1239);
                        }
                        errors++;
                      }
                      if (func2(data467) < 1) {
                        const err1240 = { instancePath: instancePath + "/machine/keep-out/" + i21 + "/name", schemaPath: "#/properties/machine/properties/keep-out/items/properties/name/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                        if (vErrors === null) {
                          vErrors = [err1240];
                        } else {
                          vErrors.push(err1240);
                        }
                        errors++;
                      }
                    } else {
                      const err1241 = { instancePath: instancePath + "/machine/keep-out/" + i21 + "/name", schemaPath: "#/properties/machine/properties/keep-out/items/properties/name/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                      if (vErrors === null) {
                        vErrors = [err1241];
                      } else {
                        vErrors.push(err1241);
                      }
                      errors++;
                    }
                  }
                  if (data466.min !== void 0) {
                    if (!validate29(data466.min, { instancePath: instancePath + "/machine/keep-out/" + i21 + "/min", parentData: data466, parentDataProperty: "min", rootData, dynamicAnchors })) {
                      vErrors = vErrors === null ? validate29.errors : vErrors.concat(validate29.errors);
                      errors = vErrors.length;
                    }
                  }
                  if (data466.max !== void 0) {
                    if (!validate29(data466.max, { instancePath: instancePath + "/machine/keep-out/" + i21 + "/max", parentData: data466, parentDataProperty: "max", rootData, dynamicAnchors })) {
                      vErrors = vErrors === null ? validate29.errors : vErrors.concat(validate29.errors);
                      errors = vErrors.length;
                    }
                  }
                } else {
                  const err1242 = { instancePath: instancePath + "/machine/keep-out/" + i21, schemaPath: "#/properties/machine/properties/keep-out/items/type", keyword: "type", params: { type: "object" }, message: "must be object" };
                  if (vErrors === null) {
                    vErrors = [err1242];
                  } else {
                    vErrors.push(err1242);
                  }
                  errors++;
                }
              }
            } else {
              const err1243 = { instancePath: instancePath + "/machine/keep-out", schemaPath: "#/properties/machine/properties/keep-out/type", keyword: "type", params: { type: "array" }, message: "must be array" };
              if (vErrors === null) {
                vErrors = [err1243];
              } else {
                vErrors.push(err1243);
              }
              errors++;
            }
          }
          if (data379.tapping !== void 0) {
            let data470 = data379.tapping;
            if (data470 && typeof data470 == "object" && !Array.isArray(data470)) {
              for (const key73 in data470) {
                if (!(key73 === "kind" || key73 === "reversal" || key73 === "longhand")) {
                  const err1244 = { instancePath: instancePath + "/machine/tapping", schemaPath: "#/properties/machine/properties/tapping/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key73 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err1244];
                  } else {
                    vErrors.push(err1244);
                  }
                  errors++;
                }
              }
              if (data470.kind !== void 0) {
                let data471 = data470.kind;
                if (typeof data471 !== "string") {
                  const err1245 = { instancePath: instancePath + "/machine/tapping/kind", schemaPath: "#/properties/machine/properties/tapping/properties/kind/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1245];
                  } else {
                    vErrors.push(err1245);
                  }
                  errors++;
                }
                if (!(data471 === "none" || data471 === "floating" || data471 === "synchronised")) {
                  const err1246 = { instancePath: instancePath + "/machine/tapping/kind", schemaPath: "#/properties/machine/properties/tapping/properties/kind/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties.tapping.properties.kind.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1246];
                  } else {
                    vErrors.push(err1246);
                  }
                  errors++;
                }
              }
              if (data470.reversal !== void 0) {
                let data472 = data470.reversal;
                if (typeof data472 === "string") {
                  if (!pattern98.test(data472)) {
                    const err1247 = { instancePath: instancePath + "/machine/tapping/reversal", schemaPath: "#/$defs/time/pattern", keyword: "pattern", params: { pattern: "^\\d{1,6}(\\.\\d{1,6})? ?(s|ms|min)$" }, message: 'must match pattern "^\\d{1,6}(\\.\\d{1,6})? ?(s|ms|min)$"' };
                    if (vErrors === null) {
                      vErrors = [err1247];
                    } else {
                      vErrors.push(err1247);
                    }
                    errors++;
                  }
                } else {
                  const err1248 = { instancePath: instancePath + "/machine/tapping/reversal", schemaPath: "#/$defs/time/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1248];
                  } else {
                    vErrors.push(err1248);
                  }
                  errors++;
                }
              }
              if (data470.longhand !== void 0) {
                let data473 = data470.longhand;
                if (typeof data473 !== "string") {
                  const err1249 = { instancePath: instancePath + "/machine/tapping/longhand", schemaPath: "#/$defs/yesNo/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1249];
                  } else {
                    vErrors.push(err1249);
                  }
                  errors++;
                }
                if (!(data473 === "yes" || data473 === "no")) {
                  const err1250 = { instancePath: instancePath + "/machine/tapping/longhand", schemaPath: "#/$defs/yesNo/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1250];
                  } else {
                    vErrors.push(err1250);
                  }
                  errors++;
                }
              }
            } else {
              const err1251 = { instancePath: instancePath + "/machine/tapping", schemaPath: "#/properties/machine/properties/tapping/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err1251];
              } else {
                vErrors.push(err1251);
              }
              errors++;
            }
          }
          if (data379.feed !== void 0) {
            let data474 = data379.feed;
            if (data474 && typeof data474 == "object" && !Array.isArray(data474)) {
              for (const key74 in data474) {
                if (!(key74 === "least" || key74 === "most")) {
                  const err1252 = { instancePath: instancePath + "/machine/feed", schemaPath: "#/properties/machine/properties/feed/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key74 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err1252];
                  } else {
                    vErrors.push(err1252);
                  }
                  errors++;
                }
              }
              if (data474.least !== void 0) {
                let data475 = data474.least;
                const _errs1465 = errors;
                let valid388 = false;
                const _errs1466 = errors;
                if (typeof data475 == "number" && isFinite(data475)) {
                  if (data475 > 1e6 || isNaN(data475)) {
                    const err1253 = { instancePath: instancePath + "/machine/feed/least", schemaPath: "#/$defs/feed/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                    if (vErrors === null) {
                      vErrors = [err1253];
                    } else {
                      vErrors.push(err1253);
                    }
                    errors++;
                  }
                  if (data475 <= 0 || isNaN(data475)) {
                    const err1254 = { instancePath: instancePath + "/machine/feed/least", schemaPath: "#/$defs/feed/anyOf/0/exclusiveMinimum", keyword: "exclusiveMinimum", params: { comparison: ">", limit: 0 }, message: "must be > 0" };
                    if (vErrors === null) {
                      vErrors = [err1254];
                    } else {
                      vErrors.push(err1254);
                    }
                    errors++;
                  }
                } else {
                  const err1255 = { instancePath: instancePath + "/machine/feed/least", schemaPath: "#/$defs/feed/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                  if (vErrors === null) {
                    vErrors = [err1255];
                  } else {
                    vErrors.push(err1255);
                  }
                  errors++;
                }
                var _valid61 = _errs1466 === errors;
                valid388 = valid388 || _valid61;
                const _errs1468 = errors;
                if (typeof data475 === "string") {
                  if (!pattern10.test(data475)) {
                    const err1256 = { instancePath: instancePath + "/machine/feed/least", schemaPath: "#/$defs/feed/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^\\d{1,5}(\\.\\d{1,5})? (mm|in)/min$" }, message: 'must match pattern "^\\d{1,5}(\\.\\d{1,5})? (mm|in)/min$"' };
                    if (vErrors === null) {
                      vErrors = [err1256];
                    } else {
                      vErrors.push(err1256);
                    }
                    errors++;
                  }
                } else {
                  const err1257 = { instancePath: instancePath + "/machine/feed/least", schemaPath: "#/$defs/feed/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1257];
                  } else {
                    vErrors.push(err1257);
                  }
                  errors++;
                }
                var _valid61 = _errs1468 === errors;
                valid388 = valid388 || _valid61;
                if (!valid388) {
                  const err1258 = { instancePath: instancePath + "/machine/feed/least", schemaPath: "#/$defs/feed/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err1258];
                  } else {
                    vErrors.push(err1258);
                  }
                  errors++;
                } else {
                  errors = _errs1465;
                  if (vErrors !== null) {
                    if (_errs1465) {
                      vErrors.length = _errs1465;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
              if (data474.most !== void 0) {
                let data476 = data474.most;
                const _errs1472 = errors;
                let valid390 = false;
                const _errs1473 = errors;
                if (typeof data476 == "number" && isFinite(data476)) {
                  if (data476 > 1e6 || isNaN(data476)) {
                    const err1259 = { instancePath: instancePath + "/machine/feed/most", schemaPath: "#/$defs/feed/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                    if (vErrors === null) {
                      vErrors = [err1259];
                    } else {
                      vErrors.push(err1259);
                    }
                    errors++;
                  }
                  if (data476 <= 0 || isNaN(data476)) {
                    const err1260 = { instancePath: instancePath + "/machine/feed/most", schemaPath: "#/$defs/feed/anyOf/0/exclusiveMinimum", keyword: "exclusiveMinimum", params: { comparison: ">", limit: 0 }, message: "must be > 0" };
                    if (vErrors === null) {
                      vErrors = [err1260];
                    } else {
                      vErrors.push(err1260);
                    }
                    errors++;
                  }
                } else {
                  const err1261 = { instancePath: instancePath + "/machine/feed/most", schemaPath: "#/$defs/feed/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                  if (vErrors === null) {
                    vErrors = [err1261];
                  } else {
                    vErrors.push(err1261);
                  }
                  errors++;
                }
                var _valid62 = _errs1473 === errors;
                valid390 = valid390 || _valid62;
                const _errs1475 = errors;
                if (typeof data476 === "string") {
                  if (!pattern10.test(data476)) {
                    const err1262 = { instancePath: instancePath + "/machine/feed/most", schemaPath: "#/$defs/feed/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^\\d{1,5}(\\.\\d{1,5})? (mm|in)/min$" }, message: 'must match pattern "^\\d{1,5}(\\.\\d{1,5})? (mm|in)/min$"' };
                    if (vErrors === null) {
                      vErrors = [err1262];
                    } else {
                      vErrors.push(err1262);
                    }
                    errors++;
                  }
                } else {
                  const err1263 = { instancePath: instancePath + "/machine/feed/most", schemaPath: "#/$defs/feed/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1263];
                  } else {
                    vErrors.push(err1263);
                  }
                  errors++;
                }
                var _valid62 = _errs1475 === errors;
                valid390 = valid390 || _valid62;
                if (!valid390) {
                  const err1264 = { instancePath: instancePath + "/machine/feed/most", schemaPath: "#/$defs/feed/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err1264];
                  } else {
                    vErrors.push(err1264);
                  }
                  errors++;
                } else {
                  errors = _errs1472;
                  if (vErrors !== null) {
                    if (_errs1472) {
                      vErrors.length = _errs1472;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
            } else {
              const err1265 = { instancePath: instancePath + "/machine/feed", schemaPath: "#/properties/machine/properties/feed/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err1265];
              } else {
                vErrors.push(err1265);
              }
              errors++;
            }
          }
          if (data379["work-zero"] !== void 0) {
            let data477 = data379["work-zero"];
            if (data477 && typeof data477 == "object" && !Array.isArray(data477)) {
              for (const key75 in data477) {
                if (!pattern118.test(key75)) {
                  const err1266 = { instancePath: instancePath + "/machine/work-zero", schemaPath: "#/properties/machine/properties/work-zero/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key75 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err1266];
                  } else {
                    vErrors.push(err1266);
                  }
                  errors++;
                }
              }
              for (const key76 in data477) {
                if (pattern118.test(key76)) {
                  if (!validate29(data477[key76], { instancePath: instancePath + "/machine/work-zero/" + key76.replace(/~/g, "~0").replace(/\//g, "~1"), parentData: data477, parentDataProperty: key76, rootData, dynamicAnchors })) {
                    vErrors = vErrors === null ? validate29.errors : vErrors.concat(validate29.errors);
                    errors = vErrors.length;
                  }
                }
              }
            } else {
              const err1267 = { instancePath: instancePath + "/machine/work-zero", schemaPath: "#/properties/machine/properties/work-zero/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err1267];
              } else {
                vErrors.push(err1267);
              }
              errors++;
            }
          }
        } else {
          const err1268 = { instancePath: instancePath + "/machine", schemaPath: "#/properties/machine/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err1268];
          } else {
            vErrors.push(err1268);
          }
          errors++;
        }
      }
      if (data.confirm !== void 0) {
        let data479 = data.confirm;
        if (data479 && typeof data479 == "object" && !Array.isArray(data479)) {
          for (const key77 in data479) {
            if (!(key77 === "at-speed" || key77 === "stopped" || key77 === "released" || key77 === "clamped" || key77 === "air" || key77 === "hold-down")) {
              const err1269 = { instancePath: instancePath + "/confirm", schemaPath: "#/properties/confirm/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key77 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err1269];
              } else {
                vErrors.push(err1269);
              }
              errors++;
            }
          }
          if (data479["at-speed"] !== void 0) {
            let data480 = data479["at-speed"];
            const _errs1485 = errors;
            let valid393 = false;
            const _errs1486 = errors;
            if (typeof data480 !== "string") {
              const err1270 = { instancePath: instancePath + "/confirm/at-speed", schemaPath: "#/properties/confirm/properties/at-speed/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err1270];
              } else {
                vErrors.push(err1270);
              }
              errors++;
            }
            if ("operator" !== data480) {
              const err1271 = { instancePath: instancePath + "/confirm/at-speed", schemaPath: "#/properties/confirm/properties/at-speed/anyOf/0/const", keyword: "const", params: { allowedValue: "operator" }, message: "must be equal to constant" };
              if (vErrors === null) {
                vErrors = [err1271];
              } else {
                vErrors.push(err1271);
              }
              errors++;
            }
            var _valid63 = _errs1486 === errors;
            valid393 = valid393 || _valid63;
            const _errs1488 = errors;
            if (!validate41(data480, { instancePath: instancePath + "/confirm/at-speed", parentData: data479, parentDataProperty: "at-speed", rootData, dynamicAnchors })) {
              vErrors = vErrors === null ? validate41.errors : vErrors.concat(validate41.errors);
              errors = vErrors.length;
            }
            var _valid63 = _errs1488 === errors;
            valid393 = valid393 || _valid63;
            if (!valid393) {
              const err1272 = { instancePath: instancePath + "/confirm/at-speed", schemaPath: "#/properties/confirm/properties/at-speed/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err1272];
              } else {
                vErrors.push(err1272);
              }
              errors++;
            } else {
              errors = _errs1485;
              if (vErrors !== null) {
                if (_errs1485) {
                  vErrors.length = _errs1485;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data479.stopped !== void 0) {
            let data481 = data479.stopped;
            const _errs1490 = errors;
            let valid394 = false;
            const _errs1491 = errors;
            if (typeof data481 !== "string") {
              const err1273 = { instancePath: instancePath + "/confirm/stopped", schemaPath: "#/properties/confirm/properties/stopped/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err1273];
              } else {
                vErrors.push(err1273);
              }
              errors++;
            }
            if ("operator" !== data481) {
              const err1274 = { instancePath: instancePath + "/confirm/stopped", schemaPath: "#/properties/confirm/properties/stopped/anyOf/0/const", keyword: "const", params: { allowedValue: "operator" }, message: "must be equal to constant" };
              if (vErrors === null) {
                vErrors = [err1274];
              } else {
                vErrors.push(err1274);
              }
              errors++;
            }
            var _valid64 = _errs1491 === errors;
            valid394 = valid394 || _valid64;
            const _errs1493 = errors;
            if (!validate41(data481, { instancePath: instancePath + "/confirm/stopped", parentData: data479, parentDataProperty: "stopped", rootData, dynamicAnchors })) {
              vErrors = vErrors === null ? validate41.errors : vErrors.concat(validate41.errors);
              errors = vErrors.length;
            }
            var _valid64 = _errs1493 === errors;
            valid394 = valid394 || _valid64;
            if (!valid394) {
              const err1275 = { instancePath: instancePath + "/confirm/stopped", schemaPath: "#/properties/confirm/properties/stopped/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err1275];
              } else {
                vErrors.push(err1275);
              }
              errors++;
            } else {
              errors = _errs1490;
              if (vErrors !== null) {
                if (_errs1490) {
                  vErrors.length = _errs1490;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data479.released !== void 0) {
            let data482 = data479.released;
            const _errs1495 = errors;
            let valid395 = false;
            const _errs1496 = errors;
            if (typeof data482 !== "string") {
              const err1276 = { instancePath: instancePath + "/confirm/released", schemaPath: "#/properties/confirm/properties/released/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err1276];
              } else {
                vErrors.push(err1276);
              }
              errors++;
            }
            if ("operator" !== data482) {
              const err1277 = { instancePath: instancePath + "/confirm/released", schemaPath: "#/properties/confirm/properties/released/anyOf/0/const", keyword: "const", params: { allowedValue: "operator" }, message: "must be equal to constant" };
              if (vErrors === null) {
                vErrors = [err1277];
              } else {
                vErrors.push(err1277);
              }
              errors++;
            }
            var _valid65 = _errs1496 === errors;
            valid395 = valid395 || _valid65;
            const _errs1498 = errors;
            if (!validate41(data482, { instancePath: instancePath + "/confirm/released", parentData: data479, parentDataProperty: "released", rootData, dynamicAnchors })) {
              vErrors = vErrors === null ? validate41.errors : vErrors.concat(validate41.errors);
              errors = vErrors.length;
            }
            var _valid65 = _errs1498 === errors;
            valid395 = valid395 || _valid65;
            if (!valid395) {
              const err1278 = { instancePath: instancePath + "/confirm/released", schemaPath: "#/properties/confirm/properties/released/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err1278];
              } else {
                vErrors.push(err1278);
              }
              errors++;
            } else {
              errors = _errs1495;
              if (vErrors !== null) {
                if (_errs1495) {
                  vErrors.length = _errs1495;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data479.clamped !== void 0) {
            let data483 = data479.clamped;
            const _errs1500 = errors;
            let valid396 = false;
            const _errs1501 = errors;
            if (typeof data483 !== "string") {
              const err1279 = { instancePath: instancePath + "/confirm/clamped", schemaPath: "#/properties/confirm/properties/clamped/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err1279];
              } else {
                vErrors.push(err1279);
              }
              errors++;
            }
            if ("operator" !== data483) {
              const err1280 = { instancePath: instancePath + "/confirm/clamped", schemaPath: "#/properties/confirm/properties/clamped/anyOf/0/const", keyword: "const", params: { allowedValue: "operator" }, message: "must be equal to constant" };
              if (vErrors === null) {
                vErrors = [err1280];
              } else {
                vErrors.push(err1280);
              }
              errors++;
            }
            var _valid66 = _errs1501 === errors;
            valid396 = valid396 || _valid66;
            const _errs1503 = errors;
            if (!validate41(data483, { instancePath: instancePath + "/confirm/clamped", parentData: data479, parentDataProperty: "clamped", rootData, dynamicAnchors })) {
              vErrors = vErrors === null ? validate41.errors : vErrors.concat(validate41.errors);
              errors = vErrors.length;
            }
            var _valid66 = _errs1503 === errors;
            valid396 = valid396 || _valid66;
            if (!valid396) {
              const err1281 = { instancePath: instancePath + "/confirm/clamped", schemaPath: "#/properties/confirm/properties/clamped/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err1281];
              } else {
                vErrors.push(err1281);
              }
              errors++;
            } else {
              errors = _errs1500;
              if (vErrors !== null) {
                if (_errs1500) {
                  vErrors.length = _errs1500;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data479.air !== void 0) {
            let data484 = data479.air;
            const _errs1505 = errors;
            let valid397 = false;
            const _errs1506 = errors;
            if (typeof data484 !== "string") {
              const err1282 = { instancePath: instancePath + "/confirm/air", schemaPath: "#/properties/confirm/properties/air/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err1282];
              } else {
                vErrors.push(err1282);
              }
              errors++;
            }
            if ("operator" !== data484) {
              const err1283 = { instancePath: instancePath + "/confirm/air", schemaPath: "#/properties/confirm/properties/air/anyOf/0/const", keyword: "const", params: { allowedValue: "operator" }, message: "must be equal to constant" };
              if (vErrors === null) {
                vErrors = [err1283];
              } else {
                vErrors.push(err1283);
              }
              errors++;
            }
            var _valid67 = _errs1506 === errors;
            valid397 = valid397 || _valid67;
            const _errs1508 = errors;
            if (!validate41(data484, { instancePath: instancePath + "/confirm/air", parentData: data479, parentDataProperty: "air", rootData, dynamicAnchors })) {
              vErrors = vErrors === null ? validate41.errors : vErrors.concat(validate41.errors);
              errors = vErrors.length;
            }
            var _valid67 = _errs1508 === errors;
            valid397 = valid397 || _valid67;
            if (!valid397) {
              const err1284 = { instancePath: instancePath + "/confirm/air", schemaPath: "#/properties/confirm/properties/air/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err1284];
              } else {
                vErrors.push(err1284);
              }
              errors++;
            } else {
              errors = _errs1505;
              if (vErrors !== null) {
                if (_errs1505) {
                  vErrors.length = _errs1505;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data479["hold-down"] !== void 0) {
            let data485 = data479["hold-down"];
            if (data485 && typeof data485 == "object" && !Array.isArray(data485)) {
              if (data485.wait === void 0) {
                const err1285 = { instancePath: instancePath + "/confirm/hold-down", schemaPath: "#/properties/confirm/properties/hold-down/required", keyword: "required", params: { missingProperty: "wait" }, message: "must have required property 'wait'" };
                if (vErrors === null) {
                  vErrors = [err1285];
                } else {
                  vErrors.push(err1285);
                }
                errors++;
              }
              for (const key78 in data485) {
                if (!(key78 === "wait" || key78 === "timeout")) {
                  const err1286 = { instancePath: instancePath + "/confirm/hold-down", schemaPath: "#/properties/confirm/properties/hold-down/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key78 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err1286];
                  } else {
                    vErrors.push(err1286);
                  }
                  errors++;
                }
              }
              if (data485.wait !== void 0) {
                let data486 = data485.wait;
                if (typeof data486 !== "string") {
                  const err1287 = { instancePath: instancePath + "/confirm/hold-down/wait", schemaPath: "#/properties/confirm/properties/hold-down/properties/wait/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1287];
                  } else {
                    vErrors.push(err1287);
                  }
                  errors++;
                }
                if ("hold-down" !== data486) {
                  const err1288 = { instancePath: instancePath + "/confirm/hold-down/wait", schemaPath: "#/properties/confirm/properties/hold-down/properties/wait/const", keyword: "const", params: { allowedValue: "hold-down" }, message: "must be equal to constant" };
                  if (vErrors === null) {
                    vErrors = [err1288];
                  } else {
                    vErrors.push(err1288);
                  }
                  errors++;
                }
              }
              if (data485.timeout !== void 0) {
                let data487 = data485.timeout;
                if (typeof data487 === "string") {
                  if (!pattern98.test(data487)) {
                    const err1289 = { instancePath: instancePath + "/confirm/hold-down/timeout", schemaPath: "#/$defs/time/pattern", keyword: "pattern", params: { pattern: "^\\d{1,6}(\\.\\d{1,6})? ?(s|ms|min)$" }, message: 'must match pattern "^\\d{1,6}(\\.\\d{1,6})? ?(s|ms|min)$"' };
                    if (vErrors === null) {
                      vErrors = [err1289];
                    } else {
                      vErrors.push(err1289);
                    }
                    errors++;
                  }
                } else {
                  const err1290 = { instancePath: instancePath + "/confirm/hold-down/timeout", schemaPath: "#/$defs/time/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1290];
                  } else {
                    vErrors.push(err1290);
                  }
                  errors++;
                }
              }
            } else {
              const err1291 = { instancePath: instancePath + "/confirm/hold-down", schemaPath: "#/properties/confirm/properties/hold-down/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err1291];
              } else {
                vErrors.push(err1291);
              }
              errors++;
            }
          }
        } else {
          const err1292 = { instancePath: instancePath + "/confirm", schemaPath: "#/properties/confirm/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err1292];
          } else {
            vErrors.push(err1292);
          }
          errors++;
        }
      }
    } else {
      const err1293 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" };
      if (vErrors === null) {
        vErrors = [err1293];
      } else {
        vErrors.push(err1293);
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
