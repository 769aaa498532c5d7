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
  var schema31 = { "$schema": "https://json-schema.org/draft/2020-12/schema", "$id": "https://tapewright.invalid/schemas/dialect.schema.json", "title": "Dialect", "description": "What one controller and its machine want. A file states only what differs from the one that it extends; a key that no file of the chain states is never guessed: what needs it is refused.", "type": "object", "additionalProperties": false, "required": ["dialect"], "properties": { "dialect": { "title": "Name of the dialect", "description": "The name that programs, set-up sheets and findings quote. Lower case, words joined by hyphens; the file is called NAME.dialect.yaml.\n\nIf wrong: the program on the machine cannot be traced to the file that shaped it.", "type": "string", "pattern": "^[a-z0-9]+(-[a-z0-9]+)*$", "maxLength": 40, "examples": ["quarry-router"] }, "title": { "title": "Title", "description": "One line for people: which controller or machine this is.\n\nIf wrong: an operator picks the dialect of another machine.", "type": "string", "minLength": 1, "maxLength": 120, "examples": ["Six-pocket router at the quarry workshop"] }, "extends": { "title": "Extends", "description": "The dialect whose values hold wherever this file states none: the name of a shipped dialect, or a file in the same folder or below (its name ends with .yaml). Mappings are merged key by key; lists, single values and `none` replace.\n\nIf wrong: words of another controller are inherited that this one rejects or takes for something else.", "type": "string", "minLength": 1, "maxLength": 200, "examples": ["explicit-words", "base/workshop.dialect.yaml"] }, "sources": { "title": "Sources", "description": "Where the facts of this file come from: standard and section, manual and page, or what was tried at the machine.\n\nIf wrong: nobody can tell later which value was read and which was guessed.", "type": "array", "minItems": 1, "maxItems": 40, "items": { "type": "string", "minLength": 1, "maxLength": 300 }, "examples": [["NISTIR 6556, The NIST RS274/NGC Interpreter, version 3, 17 August 2000"]] }, "cases": { "title": "Cases", "description": "Steps, and the blocks that are expected for them; `dialect test` runs them. They are this file's alone: a file that extends it does not inherit them. They may also stand beside it, in NAME.cases.yaml.\n\nIf wrong: `dialect test` fails, or holds the file to blocks that the controller does not want; programs do not change.", "type": "array", "minItems": 1, "maxItems": 500, "items": { "title": "Case", "description": "One case: steps, and the blocks that are expected for them.", "type": "object", "additionalProperties": false, "required": ["given", "expect"], "examples": [{ "given": ["rapid x10 y5"], "expect": ["G00 X10. Y5."] }], "properties": { "name": { "title": "Name of the case", "description": "What the case is about, for reports.\n\nIf wrong: nobody knows which case failed.", "type": "string", "minLength": 1, "maxLength": 80, "examples": ["arcs past half a circle"] }, "units": { "title": "Units of the case", "description": "mm or inch: what the numbers under `given` count, and the units of the program.\n\nIf wrong: the case gives other places than it means, and fails.", "enum": ["mm", "inch"], "examples": ["mm"] }, "given": { "title": "Given", "description": "Steps, one a text, in the notation that this page explains.\n\nIf wrong: the case says nothing about what the controller wants.", "type": "array", "minItems": 1, "maxItems": 200, "items": { "type": "string", "minLength": 1, "maxLength": 400 }, "examples": [["rapid x10 y5", "line z-2 feed 300"]] }, "expect": { "title": "Expected", "description": "The blocks that are to be written, one a text; a blank stands for a tab.\n\nIf wrong: the case fails, or holds the dialect to what the controller does not want.", "type": "array", "maxItems": 500, "items": { "type": "string", "maxLength": 400 }, "examples": [["G00 X10. Y5.", "G01 Z-2. F300."]] } } }, "examples": [[{ "given": ["rapid x10 y5"], "expect": ["G00 X10. Y5."] }]] }, "file": { "title": "File", "description": "The frame of the program text: file name ending, line ends, the marks at its start and end.", "type": "object", "additionalProperties": false, "properties": { "extension": { "title": "File name ending", "description": "Ending of the program file, without the dot.\n\nIf wrong: the controller does not list the file, or opens it as something else.", "type": "string", "pattern": "^[A-Za-z0-9]{1,8}$", "examples": ["nc"] }, "line-end": { "title": "Line end", "description": "What ends a line: lf (line feed), crlf (carriage return and line feed) or cr (carriage return).\n\nIf wrong: the whole file is read as one block, or each second line as an empty one.", "type": "string", "enum": ["lf", "crlf", "cr"], "examples": ["lf"] }, "last-line-end": { "title": "Line end after the last line", "description": "Whether the last line is ended, too.\n\nIf wrong: the last block, the end of the program, is ignored.", "$ref": "#/$defs/yesNo", "examples": ["yes"] }, "end-of-block": { "title": "End-of-block mark", "description": "A visible mark at the end of each block: none, semicolon or asterisk.\n\nIf wrong: `;` starts a comment on some controllers, so that the rest of the block is dropped; `*` is an error on others.", "type": "string", "enum": ["none", "semicolon", "asterisk"], "examples": ["none"] }, "delimiter": { "title": "Program delimiter", "description": "Whether a line with `%` alone stands first and last.\n\nIf wrong: the controller finds no start or no end of the program and refuses the transfer.", "type": "string", "enum": ["none", "percent"], "examples": ["percent"] }, "program-number": { "title": "Program number", "description": "How the program is identified by a number of its own, or none. Where it is stated, a job must have a number in the range.", "anyOf": [{ "title": "None", "description": "Programs have no number; the file name tells them apart.", "type": "string", "const": "none" }, { "type": "object", "additionalProperties": false, "properties": { "letter": { "title": "Letter of the program number", "description": "The address of the number.\n\nIf wrong: the line is refused, or a program of another number is overwritten.", "type": "string", "enum": ["O", ":", "%"], "examples": ["O"] }, "digits": { "title": "Digits of the program number", "description": "Least digits; zeros are put in front.\n\nUnit: digits.\n\nIf wrong: the controller takes the program for another one, or refuses it.", "type": "integer", "minimum": 1, "maximum": 8, "examples": [4] }, "from": { "title": "Lowest program number", "description": "Lowest number that is free for programs.\n\nUnit: program number.\n\nIf wrong: a program that the builder protects is overwritten, or the transfer is refused.", "type": "integer", "minimum": 0, "maximum": 99999999, "examples": [1] }, "to": { "title": "Highest program number", "description": "Highest number that is free for programs; many controls keep the 8000s or 9000s to themselves.\n\nUnit: program number.\n\nIf wrong: a cycle or macro of the builder is overwritten.", "type": "integer", "minimum": 0, "maximum": 99999999, "examples": [7999] } } }], "examples": ["none", { "letter": "O", "digits": 4, "from": 1, "to": 7999 }] }, "byte-order-mark": { "title": "Byte order mark", "description": "Whether the file begins with the three bytes that mark UTF-8.\n\nIf wrong: the first block is rejected, or read without its first word.", "$ref": "#/$defs/yesNo", "examples": ["no"] }, "leader": { "title": "Leader", "description": "Blank lines before the first line of the program.\n\nUnit: lines.\n\nIf wrong: the controller misses the first block, or takes the blank line for the end of the program.", "type": "integer", "minimum": 0, "maximum": 100, "examples": [0] }, "blank-lines": { "title": "Blank lines", "description": "between-sections: one stands before each section of the program; skipped: none is written, and the controller passes over one; none: the controller takes one for the end of the program.\n\nIf wrong: the program ends at the first tool change, with the spindle running.", "type": "string", "enum": ["between-sections", "skipped", "none"], "examples": ["skipped"] }, "characters": { "title": "Characters", "description": "What the text may hold: upper (capital letters, digits and the marks of the code, in comments, too), ascii, or utf-8 (any character in comments).\n\nIf wrong: the block is rejected, or the comment on the screen is garbled so that an instruction to the operator is lost.", "type": "string", "enum": ["upper", "ascii", "utf-8"], "examples": ["upper"] } }, "examples": [{ "extension": "nc", "line-end": "lf", "delimiter": "percent" }] }, "comments": { "title": "Comments", "description": "How text for people is set apart from the code.", "type": "object", "additionalProperties": false, "properties": { "style": { "title": "Comment style", "description": "parentheses: ( ... ); semicolon: from ; to the end of the line; none: the controller takes no comments, and messages to the operator cannot be written.\n\nIf wrong: the text is executed as code, or the block alarms.", "type": "string", "enum": ["parentheses", "semicolon", "none"], "examples": ["parentheses"] }, "longest": { "title": "Longest comment", "description": "Most characters of one comment, its marks not counted. Longer text is cut.\n\nUnit: characters.\n\nIf wrong: the block alarms, or the end of an instruction to the operator is missing.", "type": "integer", "minimum": 8, "maximum": 200, "examples": [60] }, "place": { "title": "Place of comments", "description": "anywhere: a comment may share its block with words; own-block: a comment has a block of its own.\n\nIf wrong: the words behind the comment are dropped, or the block alarms.", "type": "string", "enum": ["anywhere", "own-block"], "examples": ["anywhere"] } }, "examples": [{ "style": "parentheses", "longest": 60 }] }, "blocks": { "title": "Blocks", "description": "How words make up a block and blocks follow one another.", "type": "object", "additionalProperties": false, "properties": { "number": { "title": "Block numbers", "description": "Which blocks have a number (N word), or none.", "anyOf": [{ "title": "None", "description": "No block has a number.", "type": "string", "const": "none" }, { "type": "object", "additionalProperties": false, "properties": { "on": { "title": "Numbered blocks", "description": "all: every block; sections: only the first block of each section.\n\nIf wrong: block search and restart do not find the place.", "type": "string", "enum": ["all", "sections"], "examples": ["all"] }, "start": { "title": "First block number", "description": "Number of the first numbered block, and of the first one after the highest was reached.\n\nUnit: block number.\n\nIf wrong: a number that the controller reserves is used.", "type": "integer", "minimum": 0, "maximum": 99999999, "examples": [10] }, "step": { "title": "Step of block numbers", "description": "Difference from one numbered block to the next.\n\nUnit: block numbers.\n\nIf wrong: no free numbers for a block put in at the machine.", "type": "integer", "minimum": 1, "maximum": 1e3, "examples": [10] }, "to": { "title": "Highest block number", "description": "After it numbers begin again at the first.\n\nUnit: block number.\n\nIf wrong: the controller alarms in the middle of the program.", "type": "integer", "minimum": 1, "maximum": 99999999, "examples": [99990] }, "width": { "title": "Digits of block numbers", "description": "Least digits, zeros put in front; 0: as many as needed.\n\nUnit: digits.\n\nIf wrong: the number is not recognised.", "type": "integer", "minimum": 0, "maximum": 8, "examples": [0] } } }], "examples": ["none", { "on": "all", "start": 10, "step": 10, "to": 99990, "width": 0 }] }, "separator": { "title": "Separator", "description": "What stands between two words: none, blank or tab.\n\nIf wrong: words that run together are misread, or a blank counts against the length of the block.", "type": "string", "enum": ["none", "blank", "tab"], "examples": ["blank"] }, "order": { "title": "Word order", "description": "Letters in the order in which a block has them, each once. Every letter that the dialect writes must stand here.\n\nIf wrong: a controller with a fixed order ignores or misreads the word that stands in the wrong place.", "type": "array", "minItems": 3, "maxItems": 26, "uniqueItems": true, "items": { "$ref": "#/$defs/letter" }, "examples": [["N", "G", "X", "Y", "Z", "A", "B", "C", "I", "J", "K", "R", "P", "Q", "F", "S", "T", "H", "D", "M"]] }, "longest": { "title": "Longest block", "description": "Most characters of a block, its line end not counted, or none.\n\nUnit: characters.\n\nIf wrong: the block is cut short: in the worst case a coordinate loses its last digits and the axis goes to another place without an alarm.", "anyOf": [{ "title": "None", "description": "Any length.", "type": "string", "const": "none" }, { "type": "integer", "minimum": 20, "maximum": 4e3 }], "examples": [80] }, "g-words": { "title": "G words in a block", "description": "one: a single G word; any: one of each modal group.\n\nIf wrong: the last one wins without a word, or the block alarms.", "type": "string", "enum": ["one", "any"], "examples": ["any"] }, "m-words": { "title": "M words in a block", "description": "Most M words in one block.\n\nUnit: words.\n\nIf wrong: only the first or the last one acts: coolant or spindle is missing.", "type": "integer", "minimum": 1, "maximum": 8, "examples": [1] }, "modes": { "title": "Modes in a block", "description": "together: modes that are set one after another share a block (as far as g-words allows); apart: each has a block of its own.\n\nIf wrong: a mode is dropped: the program runs in the wrong plane, units or offset.", "type": "string", "enum": ["together", "apart"], "examples": ["together"] }, "sections": { "title": "Sections", "description": "The parts of a program at which it can be taken up again: what begins one, and how its first block is marked.", "type": "object", "additionalProperties": false, "properties": { "begin-at": { "title": "Beginning of a section", "description": "operation: each operation of the job begins one; tool: only one with another tool does.\n\nIf wrong: the search for a block stops at a place where tool and offsets are not stated.", "type": "string", "enum": ["operation", "tool"], "examples": ["operation"] }, "mark": { "title": "Mark of a section", "description": "Address of the block number where a section begins: N as everywhere, or colon (the alignment function).\n\nIf wrong: the block alarms, or a search does not find the place.", "type": "string", "enum": ["N", "colon"], "examples": ["N"] }, "comments": { "title": "Comment of a section", "description": "yes: a comment with the name of the operation, or of the tool where a section begins at one, stands before the first block of each section; no: none does. A comment is no step, and is never read as a message.\n\nIf wrong: nobody finds the place at the screen, or the comment alarms.", "$ref": "#/$defs/yesNo", "examples": ["no"] }, "modes": { "title": "Modes of a section", "description": "restated: each section states all modes that the start of the program states, units, compensation off and cycles off among them, which a restart by the control's own block search needs; tool, length offset and spindle are said where they change, so that only a section that begins with a tool has them all; kept: it states the modes of its operation, and what was said at the start stays in force.\n\nIf wrong: a program that is taken up at a section runs in units or with a compensation that somebody left in force.", "type": "string", "enum": ["restated", "kept"], "examples": ["kept"] } }, "examples": [{ "begin-at": "operation", "mark": "N" }] }, "delete": { "title": "Block delete", "description": "Marks by which the operator's switch skips a block. Programs are written with one only where `stops.optional` asks for it; in programs that are read they are understood.", "type": "object", "additionalProperties": false, "properties": { "mark": { "title": "Block delete mark", "description": "none: there is no such switch; slash: `/`; numbered: `/` or `/1` to `/9`, with a switch for each.\n\nIf wrong: a block that should be skipped is executed, or the other way round.", "type": "string", "enum": ["none", "slash", "numbered"], "examples": ["slash"] }, "place": { "title": "Place of the block delete mark", "description": "before-number: /N10; after-number: N10/\n\nIf wrong: the mark is not seen, and the block is executed although its switch is on.", "type": "string", "enum": ["before-number", "after-number"], "examples": ["before-number"] } }, "examples": [{ "mark": "slash", "place": "before-number" }] }, "most-words": { "title": "Words in a block", "description": "Most words in one block, the block number not counted, or none.\n\nUnit: words.\n\nIf wrong: the block alarms, or words at its end are not executed.", "anyOf": [{ "title": "None", "description": "Any number of words.", "type": "string", "const": "none" }, { "type": "integer", "minimum": 2, "maximum": 40 }], "examples": ["none"] }, "stops-act": { "title": "When stops act", "description": "Whether spindle stop and coolant off act before or after the motion in their block; program stop and program end act after it in any case. Where `executes` is left-to-right, all of them act where they stand. They are written in blocks of their own; this decides what a program from elsewhere means.\n\nIf wrong: the spindle stops and the tool is then driven through the material.", "type": "string", "enum": ["before-motion", "after-motion"], "examples": ["after-motion"] }, "executes": { "title": "Order of execution", "description": "by-kind: the words of a block act in the order of their kinds, whatever their order in the text (NISTIR 6556 Table 8); left-to-right: each word acts where it stands, and a motion where its first axis word stands.\n\nIf wrong: the spindle starts at the speed said before, or an axis moves at the feed or in the mode of the block before.", "type": "string", "enum": ["by-kind", "left-to-right"], "examples": ["by-kind"] } }, "examples": [{ "number": "none", "separator": "blank", "longest": 80, "g-words": "any", "m-words": 1 }] }, "numbers": { "title": "Numbers", "description": "How numbers are written. `point`, `trailing-zeros`, `leading-zero`, `plus`, `suppressed-zeros`, `digits` and `whole-digits` hold for all; a single address may state its own.", "type": "object", "additionalProperties": false, "properties": { "point": { "title": "Decimal point", "description": "always: every number with decimals has a point; when-needed: whole numbers have none; never: the point is implied, and the number counts least increments.\n\nIf wrong: a control that counts least increments reads X50 as 0.050 mm; the opposite mistake moves a thousand times too far.", "type": "string", "enum": ["always", "when-needed", "never"], "examples": ["always"] }, "trailing-zeros": { "title": "Zeros at the end", "description": "keep: 1.500; drop: 1.5 and 10.; one: 1.5 and 10.0 (at least one digit behind the point).\n\nIf wrong: a number without decimals may be read in least increments.", "type": "string", "enum": ["keep", "drop", "one"], "examples": ["keep"] }, "leading-zero": { "title": "Zero before the point", "description": "keep: 0.5; drop: .5\n\nIf wrong: the word is a syntax error.", "type": "string", "enum": ["keep", "drop"], "examples": ["keep"] }, "plus": { "title": "Plus sign", "description": "Whether a positive number with a direction (axes, arc centres) has a + sign.\n\nIf wrong: the word is a syntax error, or an old control takes it as unsigned.", "$ref": "#/$defs/yesNo", "examples": ["no"] }, "suppressed-zeros": { "title": "Zeros left out", "description": "With an implied point: which zeros are left out. leading: X12500 is 12.500; trailing: the number is read from the left; none: all digits stand.\n\nIf wrong: every coordinate is wrong by powers of ten.", "type": "string", "enum": ["leading", "trailing", "none"], "examples": ["leading"] }, "digits": { "title": "Digits of a number", "description": "With an implied point: how many digits a number has before zeros at its end are left out.\n\nUnit: digits.\n\nIf wrong: every coordinate is wrong by powers of ten.", "type": "integer", "minimum": 1, "maximum": 12, "examples": [7] }, "whole-digits": { "title": "Digits before the point", "description": "Most digits before the point, or none for no limit.\n\nUnit: digits.\n\nIf wrong: the word alarms, or its first digits are lost and the axis goes to another place.", "anyOf": [{ "title": "None", "description": "As many as the number has.", "type": "string", "const": "none" }, { "type": "integer", "minimum": 1, "maximum": 12 }], "examples": ["none"] }, "length": { "title": "Axis words", "description": "Numbers of X Y Z, and of the levels and pecks of cycles. Digits behind the point, by the units of the program; the mapping may also state how this number differs from the rest.", "type": "object", "additionalProperties": false, "properties": { "mm": { "title": "Decimals in millimetres", "description": "Digits behind the point in a program in millimetres: 3 means a least increment of 0.001 mm.\n\nUnit: digits behind the point of a length in mm.\n\nIf wrong: the controller rejects a number with too many digits, or rounds it by itself, so that arcs no longer end where they should.", "type": "integer", "minimum": 0, "maximum": 7, "examples": [3] }, "inch": { "title": "Decimals in inches", "description": "Digits behind the point in a program in inches: 4 means a least increment of 0.0001 inch.\n\nUnit: digits behind the point of a length in inch.\n\nIf wrong: the controller rejects a number with too many digits, or rounds it by itself, so that arcs no longer end where they should.", "type": "integer", "minimum": 0, "maximum": 6, "examples": [4] }, "point": { "$ref": "#/$defs/own-point" }, "trailing-zeros": { "$ref": "#/$defs/own-trailing-zeros" }, "leading-zero": { "$ref": "#/$defs/own-leading-zero" }, "plus": { "$ref": "#/$defs/own-plus" }, "suppressed-zeros": { "$ref": "#/$defs/own-suppressed-zeros" }, "digits": { "$ref": "#/$defs/own-digits" }, "whole-digits": { "$ref": "#/$defs/own-whole-digits" } }, "examples": [{ "mm": 3, "inch": 4 }] }, "arc-centre": { "title": "Arc centre and radius words", "description": "Numbers of I J K and of the radius. Digits behind the point, by the units of the program; the mapping may also state how this number differs from the rest.", "type": "object", "additionalProperties": false, "properties": { "mm": { "title": "Decimals in millimetres", "description": "Digits behind the point in a program in millimetres: 3 means a least increment of 0.001 mm.\n\nUnit: digits behind the point of a length in mm.\n\nIf wrong: start and end of an arc differ in radius: the controller alarms, or steps on the part.", "type": "integer", "minimum": 0, "maximum": 7, "examples": [3] }, "inch": { "title": "Decimals in inches", "description": "Digits behind the point in a program in inches: 4 means a least increment of 0.0001 inch.\n\nUnit: digits behind the point of a length in inch.\n\nIf wrong: start and end of an arc differ in radius: the controller alarms, or steps on the part.", "type": "integer", "minimum": 0, "maximum": 6, "examples": [4] }, "point": { "$ref": "#/$defs/own-point" }, "trailing-zeros": { "$ref": "#/$defs/own-trailing-zeros" }, "leading-zero": { "$ref": "#/$defs/own-leading-zero" }, "plus": { "$ref": "#/$defs/own-plus" }, "suppressed-zeros": { "$ref": "#/$defs/own-suppressed-zeros" }, "digits": { "$ref": "#/$defs/own-digits" }, "whole-digits": { "$ref": "#/$defs/own-whole-digits" } }, "examples": [{ "mm": 3, "inch": 4 }] }, "peck": { "title": "Peck words", "description": "Numbers of the peck of a cycle and of its back-off. Digits behind the point, by the units of the program; the mapping may also state how this number differs from the rest, such as an implied point.", "type": "object", "additionalProperties": false, "properties": { "mm": { "title": "Decimals in millimetres", "description": "Digits behind the point in a program in millimetres: 3 means a least increment of 0.001 mm.\n\nUnit: digits behind the point of a length in mm.\n\nIf wrong: the hole is drilled in one go, or in a thousand pecks.", "type": "integer", "minimum": 0, "maximum": 7, "examples": [3] }, "inch": { "title": "Decimals in inches", "description": "Digits behind the point in a program in inches: 4 means a least increment of 0.0001 inch.\n\nUnit: digits behind the point of a length in inch.\n\nIf wrong: the hole is drilled in one go, or in a thousand pecks.", "type": "integer", "minimum": 0, "maximum": 6, "examples": [4] }, "point": { "$ref": "#/$defs/own-point" }, "trailing-zeros": { "$ref": "#/$defs/own-trailing-zeros" }, "leading-zero": { "$ref": "#/$defs/own-leading-zero" }, "plus": { "$ref": "#/$defs/own-plus" }, "suppressed-zeros": { "$ref": "#/$defs/own-suppressed-zeros" }, "digits": { "$ref": "#/$defs/own-digits" } }, "examples": [{ "mm": 3, "inch": 4 }] }, "angle": { "title": "Rotary words", "description": "Numbers of A B C. Either the digits behind the point, or a mapping that also states how this number differs from the rest.\n\nUnit: digits behind the point of an angle in degrees.\n\nIf wrong: the rotary axis stands short of or past its place.", "anyOf": [{ "type": "integer", "minimum": 0, "maximum": 7 }, { "type": "object", "additionalProperties": false, "properties": { "decimals": { "title": "Digits behind the point", "description": "The least increment as a number of decimals.\n\nUnit: digits.\n\nIf wrong: the rotary axis stands short of or past its place.", "type": "integer", "minimum": 0, "maximum": 7, "examples": [3] }, "point": { "$ref": "#/$defs/own-point" }, "trailing-zeros": { "$ref": "#/$defs/own-trailing-zeros" }, "leading-zero": { "$ref": "#/$defs/own-leading-zero" }, "plus": { "$ref": "#/$defs/own-plus" }, "suppressed-zeros": { "$ref": "#/$defs/own-suppressed-zeros" }, "digits": { "$ref": "#/$defs/own-digits" }, "whole-digits": { "$ref": "#/$defs/own-whole-digits" } } }], "examples": [3] }, "feed-per-minute": { "title": "Feed per minute", "description": "Numbers of F in feed per minute. Digits behind the point, by the units of the program; the mapping may also state how this number differs from the rest.", "type": "object", "additionalProperties": false, "properties": { "mm": { "title": "Decimals in millimetres", "description": "Digits behind the point in a program in millimetres: 3 means a least increment of 0.001 mm.\n\nUnit: digits behind the point of a feed in mm a minute.\n\nIf wrong: the feed is rejected, or a decimal is dropped and the tool moves ten times too fast.", "type": "integer", "minimum": 0, "maximum": 7, "examples": [1] }, "inch": { "title": "Decimals in inches", "description": "Digits behind the point in a program in inches: 4 means a least increment of 0.0001 inch.\n\nUnit: digits behind the point of a feed in inch a minute.\n\nIf wrong: the feed is rejected, or a decimal is dropped and the tool moves ten times too fast.", "type": "integer", "minimum": 0, "maximum": 6, "examples": [2] }, "point": { "$ref": "#/$defs/own-point" }, "trailing-zeros": { "$ref": "#/$defs/own-trailing-zeros" }, "leading-zero": { "$ref": "#/$defs/own-leading-zero" }, "plus": { "$ref": "#/$defs/own-plus" }, "suppressed-zeros": { "$ref": "#/$defs/own-suppressed-zeros" }, "digits": { "$ref": "#/$defs/own-digits" }, "whole-digits": { "$ref": "#/$defs/own-whole-digits" } }, "examples": [{ "mm": 1, "inch": 2 }] }, "feed-per-revolution": { "title": "Feed per revolution", "description": "Numbers of F in feed per revolution. Digits behind the point, by the units of the program; the mapping may also state how this number differs from the rest.", "type": "object", "additionalProperties": false, "properties": { "mm": { "title": "Decimals in millimetres", "description": "Digits behind the point in a program in millimetres: 3 means a least increment of 0.001 mm.\n\nUnit: digits behind the point of a feed in mm a revolution.\n\nIf wrong: a feed of 0.08 becomes 0, or is taken as 8.", "type": "integer", "minimum": 0, "maximum": 7, "examples": [3] }, "inch": { "title": "Decimals in inches", "description": "Digits behind the point in a program in inches: 4 means a least increment of 0.0001 inch.\n\nUnit: digits behind the point of a feed in inch a revolution.\n\nIf wrong: a feed of 0.08 becomes 0, or is taken as 8.", "type": "integer", "minimum": 0, "maximum": 6, "examples": [4] }, "point": { "$ref": "#/$defs/own-point" }, "trailing-zeros": { "$ref": "#/$defs/own-trailing-zeros" }, "leading-zero": { "$ref": "#/$defs/own-leading-zero" }, "plus": { "$ref": "#/$defs/own-plus" }, "suppressed-zeros": { "$ref": "#/$defs/own-suppressed-zeros" }, "digits": { "$ref": "#/$defs/own-digits" }, "whole-digits": { "$ref": "#/$defs/own-whole-digits" } }, "examples": [{ "mm": 3, "inch": 4 }] }, "inverse-time": { "title": "Inverse-time feed", "description": "Numbers of F in inverse time. Either the digits behind the point, or a mapping that also states how this number differs from the rest.\n\nUnit: digits behind the point of a feed in 1/min.\n\nIf wrong: the tool moves at a multiple or a fraction of the feed.", "anyOf": [{ "type": "integer", "minimum": 0, "maximum": 7 }, { "type": "object", "additionalProperties": false, "properties": { "decimals": { "title": "Digits behind the point", "description": "The least increment as a number of decimals.\n\nUnit: digits.\n\nIf wrong: the tool moves at a multiple or a fraction of the feed.", "type": "integer", "minimum": 0, "maximum": 7, "examples": [4] }, "point": { "$ref": "#/$defs/own-point" }, "trailing-zeros": { "$ref": "#/$defs/own-trailing-zeros" }, "leading-zero": { "$ref": "#/$defs/own-leading-zero" }, "plus": { "$ref": "#/$defs/own-plus" }, "suppressed-zeros": { "$ref": "#/$defs/own-suppressed-zeros" }, "digits": { "$ref": "#/$defs/own-digits" }, "whole-digits": { "$ref": "#/$defs/own-whole-digits" } } }], "examples": [4] }, "speed": { "title": "Spindle speed", "description": "Numbers of S. Either the digits behind the point, or a mapping that also states how this number differs from the rest.\n\nUnit: digits behind the point of a speed in rpm.\n\nIf wrong: the block alarms, or the speed is cut to a multiple.", "anyOf": [{ "type": "integer", "minimum": 0, "maximum": 7 }, { "type": "object", "additionalProperties": false, "properties": { "decimals": { "title": "Digits behind the point", "description": "The least increment as a number of decimals.\n\nUnit: digits.\n\nIf wrong: the block alarms, or the speed is cut to a multiple.", "type": "integer", "minimum": 0, "maximum": 7, "examples": [0] }, "point": { "$ref": "#/$defs/own-point" }, "trailing-zeros": { "$ref": "#/$defs/own-trailing-zeros" }, "leading-zero": { "$ref": "#/$defs/own-leading-zero" }, "plus": { "$ref": "#/$defs/own-plus" }, "suppressed-zeros": { "$ref": "#/$defs/own-suppressed-zeros" }, "digits": { "$ref": "#/$defs/own-digits" }, "whole-digits": { "$ref": "#/$defs/own-whole-digits" } } }], "examples": [0] }, "dwell": { "title": "Dwell", "description": "Number of the dwell, counted in `dwell.unit`. Either the digits behind the point, or a mapping that also states how this number differs from the rest.\n\nUnit: digits behind the point of a time in `dwell.unit`.\n\nIf wrong: a dwell of 0.5 becomes 0 and the spindle has not come up to speed.", "anyOf": [{ "type": "integer", "minimum": 0, "maximum": 7 }, { "type": "object", "additionalProperties": false, "properties": { "decimals": { "title": "Digits behind the point", "description": "The least increment as a number of decimals.\n\nUnit: digits.\n\nIf wrong: a dwell of 0.5 becomes 0 and the spindle has not come up to speed.", "type": "integer", "minimum": 0, "maximum": 7, "examples": [2] }, "point": { "$ref": "#/$defs/own-point" }, "trailing-zeros": { "$ref": "#/$defs/own-trailing-zeros" }, "leading-zero": { "$ref": "#/$defs/own-leading-zero" }, "plus": { "$ref": "#/$defs/own-plus" }, "suppressed-zeros": { "$ref": "#/$defs/own-suppressed-zeros" }, "digits": { "$ref": "#/$defs/own-digits" }, "whole-digits": { "$ref": "#/$defs/own-whole-digits" } } }], "examples": [2] }, "cycle-dwell": { "title": "Dwell in a cycle", "description": "Number of the dwell at the bottom of a hole, counted in `cycles.words.dwell-unit`. Either the digits behind the point, or a mapping that also states how this number differs from the rest.\n\nUnit: digits behind the point of a time in `cycles.words.dwell-unit`.\n\nIf wrong: no dwell, or a very long one with the tool rubbing in the hole.", "anyOf": [{ "type": "integer", "minimum": 0, "maximum": 7 }, { "type": "object", "additionalProperties": false, "properties": { "decimals": { "title": "Digits behind the point", "description": "The least increment as a number of decimals.\n\nUnit: digits.\n\nIf wrong: no dwell, or a very long one with the tool rubbing in the hole.", "type": "integer", "minimum": 0, "maximum": 7, "examples": [2] }, "point": { "$ref": "#/$defs/own-point" }, "trailing-zeros": { "$ref": "#/$defs/own-trailing-zeros" }, "leading-zero": { "$ref": "#/$defs/own-leading-zero" }, "plus": { "$ref": "#/$defs/own-plus" }, "suppressed-zeros": { "$ref": "#/$defs/own-suppressed-zeros" }, "digits": { "$ref": "#/$defs/own-digits" }, "whole-digits": { "$ref": "#/$defs/own-whole-digits" } } }], "examples": [2] }, "timeout": { "title": "Timeout of a wait", "description": "Number of the timeout, counted in `wait.timeout-unit`. Either the digits behind the point, or a mapping that also states how this number differs from the rest.\n\nUnit: digits behind the point of a time in `wait.timeout-unit`.\n\nIf wrong: the wait gives up at once, or hangs for minutes with the fault unseen.", "anyOf": [{ "type": "integer", "minimum": 0, "maximum": 7 }, { "type": "object", "additionalProperties": false, "properties": { "decimals": { "title": "Digits behind the point", "description": "The least increment as a number of decimals.\n\nUnit: digits.\n\nIf wrong: the wait gives up at once, or hangs for minutes with the fault unseen.", "type": "integer", "minimum": 0, "maximum": 7, "examples": [1] }, "point": { "$ref": "#/$defs/own-point" }, "trailing-zeros": { "$ref": "#/$defs/own-trailing-zeros" }, "leading-zero": { "$ref": "#/$defs/own-leading-zero" }, "plus": { "$ref": "#/$defs/own-plus" }, "suppressed-zeros": { "$ref": "#/$defs/own-suppressed-zeros" }, "digits": { "$ref": "#/$defs/own-digits" }, "whole-digits": { "$ref": "#/$defs/own-whole-digits" } } }], "examples": [1] }, "code-width": { "title": "Least digits of codes", "description": "Least digits of codes and of tool and offset numbers; zeros are put in front: 2 writes G00, M06, T01.", "type": "object", "additionalProperties": false, "properties": { "G": { "title": "Digits of G words", "description": "Least digits of a G code before its point.\n\nUnit: digits.\n\nIf wrong: the code is not recognised.", "type": "integer", "minimum": 1, "maximum": 4, "examples": [2] }, "M": { "title": "Digits of M words", "description": "Least digits of an M code.\n\nUnit: digits.\n\nIf wrong: the code is not recognised.", "type": "integer", "minimum": 1, "maximum": 4, "examples": [2] }, "T": { "title": "Digits of T words", "description": "Least digits of a tool number.\n\nUnit: digits.\n\nIf wrong: a number with too few digits selects another tool or carries no offset.", "type": "integer", "minimum": 1, "maximum": 4, "examples": [2] }, "H": { "title": "Digits of H words", "description": "Least digits of the number of a length offset.\n\nUnit: digits.\n\nIf wrong: the length of another tool acts, and the tool is driven into the work.", "type": "integer", "minimum": 1, "maximum": 4, "examples": [2] }, "D": { "title": "Digits of D words", "description": "Least digits of the number of a radius offset.\n\nUnit: digits.\n\nIf wrong: the radius of another tool acts, and the contour is gouged.", "type": "integer", "minimum": 1, "maximum": 4, "examples": [2] } }, "examples": [{ "G": 2, "M": 2, "T": 2, "H": 2, "D": 2 }] } }, "examples": [{ "point": "always", "trailing-zeros": "keep", "length": { "mm": 3, "inch": 4 } }] }, "modal": { "title": "Modal words", "description": "Which words are repeated although they have not changed.", "type": "object", "additionalProperties": false, "properties": { "motion": { "title": "Motion word", "description": "modal: written when the kind of motion changes; each-block: in every block with axis words.\n\nIf wrong: without its motion word a block does nothing, or is run as the last motion: a rapid where a feed was meant.", "type": "string", "enum": ["modal", "each-block"], "examples": ["modal"] }, "axes": { "title": "Axis words", "description": "changed: only axes that move; all: every axis whose place is known.\n\nIf wrong: an axis left out is taken as 0 or stays where it was.", "type": "string", "enum": ["changed", "all"], "examples": ["changed"] }, "arc-end": { "title": "End of an arc", "description": "changed: only the end coordinates that differ; both: both axes of the plane.\n\nIf wrong: the arc is refused, or ends at another place.", "type": "string", "enum": ["changed", "both"], "examples": ["changed"] }, "arc-centre": { "title": "Zeros in an arc centre", "description": "non-zero: a centre word of 0 is left out; both: both are written.\n\nIf wrong: `centre missing` alarm, or the last centre is used and the arc runs wild.", "type": "string", "enum": ["non-zero", "both"], "examples": ["both"] }, "feed": { "title": "Feed word", "description": "modal: when the feed changes; after-rapid: also in the first feed block after a rapid; each-block: in every feed block.\n\nIf wrong: the block alarms for want of a feed, or an old feed is used.", "type": "string", "enum": ["modal", "after-rapid", "each-block"], "examples": ["modal"] }, "speed": { "title": "Speed word", "description": "each-start: at every start of the spindle; changed: only where the speed is not the one said last, so that a start alone takes that one. Behind a stop of the program it is said in any case.\n\nIf wrong: the spindle starts at a speed that is left over, or not at all.", "type": "string", "enum": ["each-start", "changed"], "examples": ["each-start"] } }, "examples": [{ "motion": "modal", "axes": "changed", "arc-end": "changed", "arc-centre": "both", "feed": "modal", "speed": "each-start" }] }, "axes": { "title": "Letters of the axes", "description": "The letters by which the controller knows the axes of ISO 841, where Z is the axis of the spindle.", "type": "object", "additionalProperties": false, "axes": [56], "properties": { "x": { "title": "Letter of X", "description": "Letter of the linear axis X of ISO 841.\n\nIf wrong: another axis moves.", "$ref": "#/$defs/axisLetter", "examples": ["X"] }, "y": { "title": "Letter of Y", "description": "Letter of the linear axis Y of ISO 841.\n\nIf wrong: another axis moves.", "$ref": "#/$defs/axisLetter", "examples": ["Y"] }, "z": { "title": "Letter of Z", "description": "Letter of the linear axis Z of ISO 841.\n\nIf wrong: another axis moves.", "$ref": "#/$defs/axisLetter", "examples": ["Z"] }, "a": { "title": "Letter of A", "description": "Letter of the rotary axis A of ISO 841.\n\nIf wrong: another axis moves.", "$ref": "#/$defs/axisLetter", "examples": ["A"] }, "b": { "title": "Letter of B", "description": "Letter of the rotary axis B of ISO 841.\n\nIf wrong: another axis moves.", "$ref": "#/$defs/axisLetter", "examples": ["B"] }, "c": { "title": "Letter of C", "description": "Letter of the rotary axis C of ISO 841.\n\nIf wrong: another axis moves.", "$ref": "#/$defs/axisLetter", "examples": ["C"] } }, "examples": [{ "x": "X", "y": "Y", "z": "W" }] }, "motion": { "title": "Straight motion", "description": "Rapid and straight motion.", "type": "object", "additionalProperties": false, "properties": { "rapid": { "title": "Rapid", "description": "Code of the rapid.\n\nIf wrong: a rapid is run as a feed, or a feed as a rapid into the work.", "$ref": "#/$defs/codeOrNone", "examples": ["G0"] }, "line": { "title": "Straight line at feed", "description": "Code of a straight line at feed.\n\nIf wrong: a feed is run as a rapid into the work.", "$ref": "#/$defs/codeOrNone", "examples": ["G1"] }, "rapids": { "title": "Path of a rapid", "description": "straight: all axes arrive together on a straight path; dog-leg: each runs at its own rate. With dog-leg, a rapid that changes Z and X or Y is split: rising Z first, falling Z last.\n\nIf wrong: on a dog-leg the tool sweeps through a clamp that lies beside the straight path.", "type": "string", "enum": ["straight", "dog-leg"], "examples": ["dog-leg"] }, "rapid-axes": { "title": "Axes of a rapid", "description": "together: a rapid moves all its axes in one block; one-at-a-time: each has a block of its own, rising Z first, falling Z last. Between the holes of a fixed cycle the controller moves as it does.\n\nIf wrong: the tool sweeps through a clamp on a path that nobody has looked at.", "type": "string", "enum": ["together", "one-at-a-time"], "axes": [60], "examples": ["together"] }, "axes-at-once": { "title": "Axes that move at once", "description": "The most axes that one block may move. A job with a line or a helix that moves more is refused; rapids are split, rising Z first, falling Z last.\n\nUnit: axes.\n\nIf wrong: the block alarms, or an axis is left behind and the tool cuts elsewhere.", "type": "integer", "minimum": 2, "maximum": 6, "axes": [62], "examples": [3] }, "rapid-feed": { "title": "Rapid as a feed", "description": "For a controller without rapids (`rapid: none`): the feed of the straight lines that take their place, or none. A line at exactly this feed is a rapid; a job with a feed as fast is refused, and so is one with feeds other than a minute.\n\nUnit: mm/min, or with `in/min`.\n\nIf wrong: rapids creep, or the tool is dragged through the work at the speed of a rapid.", "anyOf": [{ "type": "string", "const": "none" }, { "$ref": "#/$defs/feed" }], "axes": [61], "examples": ["none", 6e3] }, "machine-move-lasts": { "title": "How long a move in machine coordinates lasts", "description": "block: the code of `machine-move` acts in its own block alone; until-work-offset: it suspends the work offset, and all motion is in machine coordinates until a work offset is stated anew.\n\nIf wrong: the tool goes to places of the work as if they were places of the machine.", "type": "string", "enum": ["block", "until-work-offset"], "axes": [52], "examples": ["block"] } }, "examples": [{ "rapid": "G0", "line": "G1", "rapids": "dog-leg" }] }, "units": { "title": "Units", "description": "Words for the units of the program.", "type": "object", "additionalProperties": false, "properties": { "mm": { "title": "Millimetres", "description": "Code for millimetres, or none where the controller has no word for it.\n\nIf wrong: everything is 25.4 times too small or too large.", "$ref": "#/$defs/codeOrNone", "examples": ["G21", "none"] }, "inch": { "title": "Inches", "description": "Code for inches, or none where the controller has no word for it.\n\nIf wrong: everything is 25.4 times too small or too large.", "$ref": "#/$defs/codeOrNone", "examples": ["G20", "none"] }, "programs-in": { "title": "Units of programs", "description": "job: a program is in the units of its job; mm or inch: always in these.\n\nIf wrong: everything is 25.4 times too small or too large.", "type": "string", "enum": ["job", "mm", "inch"], "examples": ["job"] }, "stated": { "title": "Where units are stated", "description": "with-modes: in the first block or any other, with other modes; first-block: alone in the first block of the program, and nowhere else.\n\nIf wrong: the block alarms, or offsets are taken in the other units.", "type": "string", "enum": ["with-modes", "first-block"], "axes": [49], "examples": ["with-modes"] } }, "examples": [{ "mm": "G21", "inch": "G20", "programs-in": "job" }] }, "plane": { "title": "Planes", "description": "Words that select the plane of arcs, cycles and compensation.", "type": "object", "additionalProperties": false, "properties": { "xy": { "title": "XY plane", "description": "Code of the XY plane.\n\nIf wrong: arcs run in another plane: the tool dives into the work.", "$ref": "#/$defs/codeOrNone", "examples": ["G17"] }, "zx": { "title": "ZX plane", "description": "Code of the ZX plane.\n\nIf wrong: arcs run in another plane: the tool dives into the work.", "$ref": "#/$defs/codeOrNone", "examples": ["G18"] }, "yz": { "title": "YZ plane", "description": "Code of the YZ plane.\n\nIf wrong: arcs run in another plane: the tool dives into the work.", "$ref": "#/$defs/codeOrNone", "examples": ["G19"] } }, "examples": [{ "xy": "G17", "zx": "G18", "yz": "G19" }] }, "distance": { "title": "Absolute and incremental", "description": "Words for absolute and incremental coordinates.", "type": "object", "additionalProperties": false, "properties": { "absolute": { "title": "Absolute", "description": "Code for absolute coordinates.\n\nIf wrong: places are taken as distances and the tool runs off.", "$ref": "#/$defs/codeOrNone", "examples": ["G90"] }, "incremental": { "title": "Incremental", "description": "Code for incremental coordinates.\n\nIf wrong: distances are taken as places.", "$ref": "#/$defs/codeOrNone", "examples": ["G91"] }, "programs-in": { "title": "Coordinates of programs", "description": "Whether programs are written with absolute or incremental coordinates.\n\nIf wrong: places are taken as distances and the tool runs off.", "type": "string", "enum": ["absolute", "incremental"], "examples": ["absolute"] } }, "examples": [{ "absolute": "G90", "incremental": "G91", "programs-in": "absolute" }] }, "arc": { "title": "Arcs", "description": "Circular motion.", "type": "object", "additionalProperties": false, "properties": { "cw": { "title": "Arc clockwise", "description": "Code of an arc clockwise seen from the + end of the axis across the plane.\n\nIf wrong: the arc runs the other way round.", "$ref": "#/$defs/codeOrNone", "examples": ["G2"] }, "ccw": { "title": "Arc counter-clockwise", "description": "Code of an arc counter-clockwise.\n\nIf wrong: the arc runs the other way round.", "$ref": "#/$defs/codeOrNone", "examples": ["G3"] }, "form": { "title": "Form of an arc", "description": "incremental-centre: I J K from the start point; absolute-centre: I J K as coordinates; radius: a radius word, negative above 180 degrees; none: arcs are not understood, and chords take their place.\n\nIf wrong: the centre lies elsewhere: a wild circle through work and clamps.", "type": "string", "enum": ["incremental-centre", "absolute-centre", "radius", "none"], "examples": ["incremental-centre"] }, "centre-words": { "title": "Arc centre modes", "description": "Words that choose absolute or incremental arc centres, where the controller has them.", "type": "object", "additionalProperties": false, "properties": { "absolute": { "title": "Absolute arc centres", "description": "Code for absolute arc centres, or none.\n\nIf wrong: the centre lies elsewhere: a wild circle.", "$ref": "#/$defs/codeOrNone", "examples": ["none", "G90.1"] }, "incremental": { "title": "Incremental arc centres", "description": "Code for incremental arc centres, or none.\n\nIf wrong: the centre lies elsewhere: a wild circle.", "$ref": "#/$defs/codeOrNone", "examples": ["none", "G91.1"] } }, "examples": [{ "absolute": "none", "incremental": "none" }] }, "radius-word": { "title": "Radius word", "description": "Letter of the radius, where `form` is radius.\n\nIf wrong: the arc is refused.", "$ref": "#/$defs/letter", "examples": ["R"] }, "planes": { "title": "Planes with arcs", "description": "The planes in which arcs are understood. Arcs in others become chords, or are refused.\n\nIf wrong: the block alarms, or the arc is cut in another plane.", "type": "array", "maxItems": 3, "uniqueItems": true, "items": { "type": "string", "enum": ["xy", "zx", "yz"] }, "examples": [["xy", "zx", "yz"]] }, "largest-sweep": { "title": "Largest sweep", "description": "Largest sweep of an arc in one block; larger ones are split.\n\nUnit: degrees.\n\nIf wrong: the arc takes the short way instead of the long one.", "type": "number", "exclusiveMinimum": 0, "maximum": 360, "examples": [360] }, "quadrants": { "title": "Arcs and quadrant lines", "description": "any: an arc may cross the quadrant lines of its circle (the lines through its centre along the axes); one: each block stays in one quadrant, and longer arcs are split at the lines.\n\nIf wrong: the block alarms, or the arc is cut in the wrong quadrant.", "type": "string", "enum": ["any", "one"], "examples": ["any"] }, "full-circle": { "title": "Full circle", "description": "Whether one block can be a full circle.\n\nIf wrong: nothing is cut, or a whole circle where nothing was meant.", "$ref": "#/$defs/yesNo", "examples": ["yes"] }, "helix": { "title": "Helix", "description": "Whether the third axis may move during an arc.\n\nIf wrong: the third axis plunges before or after the arc.", "$ref": "#/$defs/yesNo", "examples": ["yes"] }, "turns-word": { "title": "Turns word", "description": "Letter of the word for the number of turns of a helix, or none: one turn a block.\n\nIf wrong: the helix is cut with one turn and a steep plunge.", "$ref": "#/$defs/letterOrNone", "examples": ["none"] }, "feed-along": { "title": "Feed on a helix", "description": "What F means on a helix: path, the speed along the helix; circle, the speed along its circle seen from above.\n\nIf wrong: the tool moves up to several times faster than meant on a steep helix.", "type": "string", "enum": ["path", "circle"], "examples": ["path"] }, "smallest-radius": { "title": "Smallest radius", "description": "Arcs with a smaller radius become chords, or none.\n\nUnit: mm, or with `in`.\n\nIf wrong: the arc alarms or becomes a dwell mark.", "$ref": "#/$defs/lengthOrNone", "examples": ["none", 0.05] }, "largest-radius": { "title": "Largest radius", "description": "Arcs with a larger radius become chords, or none.\n\nUnit: mm, or with `in`.\n\nIf wrong: the arc alarms.", "$ref": "#/$defs/lengthOrNone", "examples": ["none", 5e3] }, "tolerance": { "title": "Radius tolerance", "description": "How far the radius at the start and at the end of an arc may differ before the controller alarms.", "type": "object", "additionalProperties": false, "properties": { "mm": { "title": "Tolerance in millimetres", "description": "In a program in millimetres.\n\nUnit: mm.\n\nIf wrong: the program stops in the middle of a cut, or the controller steps to the end point on the part.", "type": "number", "minimum": 0, "maximum": 10, "examples": [2e-3] }, "inch": { "title": "Tolerance in inches", "description": "In a program in inches.\n\nUnit: inch.\n\nIf wrong: the program stops in the middle of a cut, or the controller steps to the end point on the part.", "type": "number", "minimum": 0, "maximum": 1, "examples": [2e-4] }, "relative": { "title": "Relative tolerance", "description": "As a share of the radius; the larger of the two holds. 0: none.\n\nUnit: share of the radius (0.001 is 0.1 %).\n\nIf wrong: the program stops in the middle of a cut, or the controller steps to the end point on the part.", "type": "number", "minimum": 0, "maximum": 0.01, "examples": [0] } }, "examples": [{ "mm": 2e-3, "inch": 2e-4, "relative": 0 }] }, "chord-tolerance": { "title": "Chord tolerance", "description": "Largest distance between a chord and its arc, where chords take the place of an arc.\n\nUnit: mm, or with `in`.\n\nIf wrong: flats are seen on curves, or the blocks come faster than the controller reads them and the motion stutters.", "$ref": "#/$defs/length", "examples": [0.01] } }, "examples": [{ "cw": "G2", "ccw": "G3", "form": "incremental-centre", "helix": "yes", "feed-along": "path" }] }, "path": { "title": "Path modes", "description": "Words for how corners are taken.", "type": "object", "additionalProperties": false, "properties": { "exact": { "title": "Exact path", "description": "Code for the exact path.\n\nIf wrong: corners are rounded.", "$ref": "#/$defs/codeWithWordOrNone", "examples": ["G61"] }, "stop": { "title": "Exact stop", "description": "Code for a stop at each corner.\n\nIf wrong: dwell marks at each corner, or rounded corners.", "$ref": "#/$defs/codeWithWordOrNone", "examples": ["G61.1", "none"] }, "blend": { "title": "Continuous path", "description": "Code for blending corners at speed.\n\nIf wrong: the motion stutters and burns the edge.", "$ref": "#/$defs/codeWithWordOrNone", "examples": ["G64"] }, "tolerance-word": { "title": "Tolerance word", "description": "Letter of the word beside `blend` that says how far the path may leave its corners, a length in the units of the program; or none: an operation with a `tolerance` is then written on the exact path, and refused where there is no word for that.\n\nIf wrong: the block is rejected, or corners are cut wider than the job allows.", "$ref": "#/$defs/letterOrNone", "examples": ["none", "P"] }, "look-ahead": { "title": "Look-ahead", "description": "Codes that turn looking ahead over many blocks on, for operations that are blended, and off, for those on the exact path; or none.", "anyOf": [{ "title": "None", "description": "The control looks ahead by itself, or not at all.", "type": "string", "const": "none" }, { "type": "object", "additionalProperties": false, "properties": { "on": { "title": "Look-ahead on", "description": "Code that turns look-ahead on.\n\nIf wrong: the motion stutters, or details are rounded off.", "$ref": "#/$defs/codeWithWordOrNone", "examples": ["M97"] }, "off": { "title": "Look-ahead off", "description": "Code that turns look-ahead off.\n\nIf wrong: details are rounded off.", "$ref": "#/$defs/codeWithWordOrNone", "examples": ["M98"] } } }], "axes": [77], "examples": ["none", { "on": "M97", "off": "M98" }] } }, "examples": [{ "exact": "G61", "stop": "none", "blend": "G64" }] }, "feed": { "title": "Feed modes", "description": "Words for what F means.", "type": "object", "additionalProperties": false, "properties": { "per-minute": { "title": "Feed per minute", "description": "Code for feed in length units a minute.\n\nIf wrong: the feed is wrong by the spindle speed.", "$ref": "#/$defs/codeOrNone", "examples": ["G94"] }, "per-revolution": { "title": "Feed per revolution", "description": "Code for feed in length units a revolution, or none: the feed is worked out a minute.\n\nIf wrong: the feed is wrong by the spindle speed.", "$ref": "#/$defs/codeOrNone", "examples": ["none", "G95"] }, "inverse-time": { "title": "Inverse time", "description": "Code for feed in 1/minutes a block, or none.\n\nIf wrong: the tool moves at a wildly wrong feed.", "$ref": "#/$defs/codeOrNone", "examples": ["G93", "none"] }, "inverse-time-unit": { "title": "Unit of inverse time", "description": "What F counts in inverse time: per-minute: 1/minutes; per-second: 1/seconds.\n\nIf wrong: the tool moves 60 times too fast or too slow.", "type": "string", "enum": ["per-minute", "per-second"], "axes": [72], "examples": ["per-minute"] } }, "examples": [{ "per-minute": "G94", "per-revolution": "none", "inverse-time": "none" }] }, "dwell": { "title": "Dwell", "description": "A pause of a set time.", "type": "object", "additionalProperties": false, "properties": { "code": { "title": "Dwell code", "description": "Code of the dwell.\n\nIf wrong: there is no pause: the spindle is not up to speed when the cut begins.", "$ref": "#/$defs/codeOrNone", "examples": ["G4"] }, "word": { "title": "Dwell word", "description": "Letter of the time.\n\nIf wrong: the dwell alarms or is skipped; the spindle is not up to speed when the cut begins.", "$ref": "#/$defs/letter", "examples": ["P"] }, "unit": { "title": "Dwell unit", "description": "What a dwell is counted in: seconds, milliseconds, or revolutions of the spindle (rev). Under rev the time of a job becomes revolutions at the speed that is commanded there, rounded up, and no state can be confirmed by a dwell.\n\nUnit: s, ms or rev.\n\nIf wrong: 500 becomes 500 seconds, or 0.5 becomes nothing and the cut begins at low speed.", "type": "string", "enum": ["s", "ms", "rev"], "examples": ["s"] }, "blocks": { "title": "Block of a dwell", "description": "apart: a dwell has a block of its own; with-start: the one that follows a start of the spindle shares its block, on a control that starts before it dwells.\n\nIf wrong: the control dwells before it starts the spindle, or skips one of the two: the cut begins at low speed.", "type": "string", "enum": ["apart", "with-start"], "axes": [75], "examples": ["apart"] } }, "examples": [{ "code": "G4", "word": "P", "unit": "s" }] }, "compensation": { "title": "Cutter radius compensation", "description": "Words for compensation by the tool's radius, or none.", "anyOf": [{ "title": "None", "description": "The controller does not compensate.", "type": "string", "const": "none" }, { "type": "object", "additionalProperties": false, "properties": { "off": { "title": "Compensation off", "description": "Code that ends compensation.\n\nIf wrong: the next motion is offset by the radius.", "$ref": "#/$defs/codeOrNone", "examples": ["G40"] }, "left": { "title": "Compensation left", "description": "Code for the tool left of the contour.\n\nIf wrong: the contour is off by the tool's diameter.", "$ref": "#/$defs/codeOrNone", "examples": ["G41"] }, "right": { "title": "Compensation right", "description": "Code for the tool right of the contour.\n\nIf wrong: the contour is off by the tool's diameter.", "$ref": "#/$defs/codeOrNone", "examples": ["G42"] }, "word": { "title": "Radius offset word", "description": "Letter of the number of the radius offset, or none where the tool in the spindle decides.\n\nIf wrong: the radius of another tool acts.", "$ref": "#/$defs/letterOrNone", "examples": ["D"] }, "corner-feed": { "title": "Feed at inside corners", "description": "Codes that turn the slowing at inside corners on, where compensation begins, and off, where it has ended; or none.", "anyOf": [{ "title": "None", "description": "There are no words for it.", "type": "string", "const": "none" }, { "type": "object", "additionalProperties": false, "properties": { "on": { "title": "Slow at inside corners", "description": "Code that has the feed lowered at inside corners.\n\nIf wrong: the tool digs in at inside corners.", "$ref": "#/$defs/codeWithWordOrNone", "examples": ["G36"] }, "off": { "title": "Feed as stated", "description": "Code that ends the slowing.\n\nIf wrong: later contours are cut slower than meant.", "$ref": "#/$defs/codeWithWordOrNone", "examples": ["G37"] } } }], "axes": [78], "examples": ["none", { "on": "G36", "off": "G37" }] } } }], "examples": ["none", { "off": "G40", "left": "G41", "right": "G42", "word": "D" }] }, "length-offset": { "title": "Tool length offset", "description": "Words that make the length of the tool act, or none.", "anyOf": [{ "title": "None", "description": "No word makes a tool length act; the operator sets Z.", "type": "string", "const": "none" }, { "type": "object", "additionalProperties": false, "properties": { "on": { "title": "Length offset on", "description": "Code that makes a length offset act.\n\nIf wrong: the tool is driven into the work by its length.", "$ref": "#/$defs/codeOrNone", "examples": ["G43", "none"] }, "off": { "title": "Length offset off", "description": "Code that cancels it; or offset number 0 of its word, such as H0: the offset is then cancelled by its own code with that number (G43 H0).\n\nIf wrong: the length of the last tool still acts for the next one.", "type": "string", "pattern": "^(none|[A-Z]0|[GM]\\d{1,3}(\\.\\d)?)$", "examples": ["G49", "H0"] }, "word": { "title": "Length offset word", "description": "Letter of the number of the length offset.\n\nIf wrong: the length of another tool acts, and the tool is driven into the work.", "$ref": "#/$defs/letter", "examples": ["H"] }, "number": { "title": "Number of the length offset", "description": "tool: a tool has the length offset of its own number; free: any.\n\nIf wrong: another tool's length acts, and the tool is driven into the work.", "type": "string", "enum": ["tool", "free"], "examples": ["free"] }, "added": { "title": "Added to the number of the length offset", "description": "What is added to the number of a length offset when it is written, where the control keeps lengths behind other offsets of the same table: with 100, offset 3 is H103. Offset number 0 stays 0.\n\nUnit: offset number.\n\nIf wrong: another tool's length acts, and the tool is driven into the work.", "type": "integer", "minimum": 0, "maximum": 900, "examples": [0, 100] } } }], "examples": ["none", { "on": "G43", "off": "G49", "word": "H" }] }, "work-offset": { "title": "Work offsets", "description": "Codes of the work offsets 1 to 9 in order, or none. A number behind the end of the list cannot be said.\n\nIf wrong: the work is cut at the place of another set-up.", "anyOf": [{ "title": "None", "description": "There are no words for work offsets; the operator sets the origin.", "type": "string", "const": "none" }, { "type": "array", "minItems": 1, "maxItems": 9, "items": { "$ref": "#/$defs/codeWithWordOrNone" } }], "examples": ["none", ["G54", "G55", "G56", "G57", "G58", "G59"]] }, "machine-move": { "title": "Move in machine coordinates", "description": "Code for a move in machine coordinates, in the same block as the motion code, or none. It acts in its own block alone.\n\nIf wrong: the retract goes to a place in work coordinates: into the work, or past the travel.", "$ref": "#/$defs/codeWithWordOrNone", "examples": ["G53", "none"] }, "reference-return": { "title": "Return to the reference position", "description": "Code of the return to the reference position, or none.\n\nIf wrong: an intermediate point is taken for the target: a diagonal through the work.", "$ref": "#/$defs/codeWithWordOrNone", "examples": ["G28", "none"] }, "cancel": { "title": "Cancelling", "description": "Words that put an end to what an earlier program may have left in force.", "type": "object", "additionalProperties": false, "properties": { "cycles": { "title": "Cycles off", "description": "Code that ends fixed cycles.\n\nIf wrong: a hole is drilled at every place that follows.", "$ref": "#/$defs/codeOrNone", "examples": ["G80"] }, "local-shift": { "title": "Local shift off", "description": "Code that cancels a shift of the origin, or none.\n\nIf wrong: the work is cut at a shifted place.", "$ref": "#/$defs/codeOrNone", "examples": ["G92.2", "none"] }, "rotation": { "title": "Rotation off", "description": "Code that cancels a rotation, or none.\n\nIf wrong: the work is cut rotated.", "$ref": "#/$defs/codeOrNone", "examples": ["G69", "none"] }, "scale": { "title": "Scale off", "description": "Code that cancels scaling and mirroring, or none.\n\nIf wrong: the work is cut at another size or mirrored.", "$ref": "#/$defs/codeOrNone", "examples": ["G50", "none"] }, "overrides": { "title": "Overrides on", "description": "Code that makes the feed and speed overrides act, or none.\n\nIf wrong: the override knob is dead while the program is proved out.", "$ref": "#/$defs/codeOrNone", "examples": ["M48", "none"] }, "before-change": { "title": "Cancelling before a tool change", "description": "Whether compensation off and cycles off are said again before each swap of a tool, where the dialect has the words.\n\nIf wrong: the controller alarms at the change, since it takes compensation or a cycle as still on.", "$ref": "#/$defs/yesNo", "examples": ["no"] } }, "examples": [{ "cycles": "G80", "local-shift": "none", "rotation": "none", "scale": "none", "overrides": "M48" }] }, "cycles": { "title": "Fixed cycles", "description": "Codes of fixed cycles for holes and what goes with them, or none: every hole is written longhand.", "anyOf": [{ "title": "None", "description": "The controller has no fixed cycles.", "type": "string", "const": "none" }, { "type": "object", "additionalProperties": false, "properties": { "drill": { "title": "Drill", "description": "Feed in, rapid out, or none: it is written longhand.\n\nIf wrong: the hole has another depth, or the tool breaks on its way out.", "$ref": "#/$defs/codeOrNone", "examples": ["G81"] }, "dwell": { "title": "Drill with dwell", "description": "Feed in, dwell, rapid out, or none: it is written longhand.\n\nIf wrong: the hole has another depth, or the tool breaks on its way out.", "$ref": "#/$defs/codeOrNone", "examples": ["G82"] }, "peck": { "title": "Peck", "description": "Pecks with a rapid out of the hole after each, or none: it is written longhand.\n\nIf wrong: the hole has another depth, or the tool breaks on its way out.", "$ref": "#/$defs/codeOrNone", "examples": ["G83"] }, "chip-break": { "title": "Chip-breaking", "description": "Pecks with a small back-off, or none: it is written longhand.\n\nIf wrong: the hole has another depth, or the tool breaks on its way out.", "$ref": "#/$defs/codeOrNone", "examples": ["G73", "none"] }, "tap": { "title": "Tap right-hand", "description": "Feed in, reverse, feed out, or none: it is written longhand.\n\nIf wrong: the hole has another depth, or the tool breaks on its way out.", "$ref": "#/$defs/codeOrNone", "examples": ["G84"] }, "tap-left": { "title": "Tap left-hand", "description": "The same with a left-hand tap, or none: it is written longhand.\n\nIf wrong: the hole has another depth, or the tool breaks on its way out.", "$ref": "#/$defs/codeOrNone", "examples": ["G74", "none"] }, "ream": { "title": "Ream", "description": "Feed in, feed out, or none: it is written longhand.\n\nIf wrong: the hole has another depth, or the tool breaks on its way out.", "$ref": "#/$defs/codeOrNone", "examples": ["G85"] }, "bore-dwell": { "title": "Bore with dwell", "description": "Feed in, dwell, feed out, or none: it is written longhand.\n\nIf wrong: the hole has another depth, or the tool breaks on its way out.", "$ref": "#/$defs/codeOrNone", "examples": ["G89"] }, "bore-stop": { "title": "Bore with spindle stop", "description": "Feed in, dwell, spindle stop, rapid out, or none: it is written longhand.\n\nIf wrong: the hole has another depth, or the tool breaks on its way out.", "$ref": "#/$defs/codeOrNone", "examples": ["G86", "none"] }, "bore-manual": { "title": "Bore with manual retract", "description": "Feed in, dwell, spindle stop, program stop, or none: it is written longhand.\n\nIf wrong: the hole has another depth, or the tool breaks on its way out.", "$ref": "#/$defs/codeOrNone", "examples": ["G88", "none"] }, "return": { "title": "Level between holes", "description": "Words that choose the level to which the tool goes between holes.", "type": "object", "additionalProperties": false, "properties": { "initial": { "title": "Initial level", "description": "Code for the level at which the tool stood before the first hole, or none.\n\nIf wrong: the tool is dragged through a clamp between two holes.", "$ref": "#/$defs/codeOrNone", "examples": ["G98", "none"] }, "retract": { "title": "Retract level", "description": "Code for the retract level of the cycle, or none.\n\nIf wrong: the tool is dragged through a clamp between two holes.", "$ref": "#/$defs/codeOrNone", "examples": ["G99", "none"] }, "without": { "title": "Level without a word", "description": "The level between holes where there is no word, or none where both words are there.\n\nIf wrong: the tool is dragged through a clamp between two holes.", "type": "string", "enum": ["retract", "initial", "none"], "examples": ["none"] } }, "examples": [{ "initial": "G98", "retract": "G99", "without": "none" }] }, "back-off": { "title": "Back-off", "description": "How far the controller's own cycle backs off. A job that asks for another back-off is written longhand.", "type": "object", "additionalProperties": false, "properties": { "peck": { "title": "Back-off of pecks", "description": "How far above the last depth the rapid back into the hole ends.\n\nUnit: mm, or with `in`.\n\nIf wrong: the drill is driven into the bottom at rapid and breaks.", "$ref": "#/$defs/length", "examples": [0.254] }, "chip-break": { "title": "Back-off of chip-breaking", "description": "How far the drill is withdrawn between two pecks.\n\nUnit: mm, or with `in`.\n\nIf wrong: the chip does not break.", "$ref": "#/$defs/length", "examples": [0.254] } }, "examples": [{ "peck": 0.254, "chip-break": 0.254 }] }, "levels": { "title": "Depth and retract level", "description": "absolute: Z and R are coordinates; under incremental distances R counts from where the tool is, and Z from R (NISTIR 6556 3.5.16). relative: R counts from the initial level, and Z from R. from-initial: R and Z both count from the initial level. The last two hold under absolute distances, too.\n\nIf wrong: the depth is doubled, or the hole is drilled in the air.", "type": "string", "enum": ["absolute", "relative", "from-initial"], "examples": ["absolute"] }, "words": { "title": "Words of a cycle", "description": "Letters of the values of a cycle.", "type": "object", "additionalProperties": false, "properties": { "retract": { "title": "Retract level word", "description": "Letter of the retract level.\n\nIf wrong: feed begins at another height: a rapid into the work.", "$ref": "#/$defs/letter", "examples": ["R"] }, "peck": { "title": "Peck word", "description": "Letter of the depth of one peck.\n\nIf wrong: the hole is drilled in one go and the drill breaks.", "$ref": "#/$defs/letter", "examples": ["Q"] }, "back-off": { "title": "Back-off word", "description": "Letter of the back-off of pecks and chip-breaking, or none: the controller's own back-off holds (`cycles.back-off`).\n\nIf wrong: the drill is driven into the bottom at rapid and breaks, or the chip does not break.", "$ref": "#/$defs/letterOrNone", "examples": ["none", "K"] }, "dwell": { "title": "Dwell word", "description": "Letter of the dwell at depth.\n\nIf wrong: no dwell at depth, or a very long one.", "$ref": "#/$defs/letter", "examples": ["P"] }, "dwell-unit": { "title": "Unit of the dwell", "description": "What the dwell in a cycle is counted in: seconds, milliseconds, or revolutions of the spindle (rev), rounded up at the commanded speed.\n\nUnit: s, ms or rev.\n\nIf wrong: no dwell at depth, or a very long one.", "type": "string", "enum": ["s", "ms", "rev"], "examples": ["s"] }, "repeat": { "title": "Repeat word", "description": "Letter of how often the hole of a block is drilled, or none. Programs are written with it only to define a cycle without a hole (0).\n\nIf wrong: holes are missing, or one too many is drilled.", "$ref": "#/$defs/letterOrNone", "examples": ["none", "L"] } }, "examples": [{ "retract": "R", "peck": "Q", "dwell": "P", "dwell-unit": "s", "back-off": "none", "repeat": "none" }] }, "repeat": { "title": "Later holes", "description": "positions: later holes state their place alone; all: each states the words of the cycle again.\n\nIf wrong: later holes are missing or have another depth.", "type": "string", "enum": ["positions", "all"], "examples": ["positions"] }, "definition": { "title": "Definition of a cycle", "description": "with-first-hole: the block with the cycle's code states the first hole, too; apart: it states no place and drills nothing (with the repeat word 0 where there is one), and each hole follows in a block of its own.\n\nIf wrong: the first hole is missing, or one is drilled where the tool stands.", "type": "string", "enum": ["with-first-hole", "apart"], "examples": ["with-first-hole"] }, "positions": { "title": "Place of a hole", "description": "changed: a hole states X and Y where they differ; both: it always states both.\n\nIf wrong: a hole is missing, or drilled at X0 or Y0.", "type": "string", "enum": ["changed", "both"], "examples": ["changed"] }, "initial-level": { "title": "Initial level", "description": "Where the initial level is taken: before-series: the Z before the first hole behind a cancel code; current: the Z at each block with a cycle's code. A program always cancels one series before the next; this decides what one from elsewhere means.\n\nIf wrong: between holes the tool is dragged through a clamp.", "type": "string", "enum": ["before-series", "current"], "examples": ["before-series"] }, "axis": { "title": "Axis of a cycle", "description": "plane-normal: holes go along the normal of the plane in force; z: along Z in any plane, so that no plane word is needed before.\n\nIf wrong: the drill is driven sideways into the work.", "type": "string", "enum": ["plane-normal", "z"], "examples": ["plane-normal"] }, "tap-feed": { "title": "Feed word of a tap", "description": "feed-mode: F means what the feed mode says; lead: F in a tapping cycle is the lead of the thread, whatever the feed mode. It then needs `numbers.feed-per-revolution`, and the feed is stated anew behind the cycle.\n\nIf wrong: the tap breaks.", "type": "string", "enum": ["feed-mode", "lead"], "examples": ["feed-mode"] }, "tap-synchronised": { "title": "Synchronising code", "description": "Code that locks spindle and feed for the tapping cycle that follows, in a block of its own before it; none: the controller always does, or never.\n\nIf wrong: the tap breaks or strips the thread.", "$ref": "#/$defs/codeOrNone", "examples": ["none", "M29"] }, "ended-by": { "title": "End of a cycle", "description": "any-motion: a motion word ends the cycle, too; cancel-code: its own code alone. The code is always written; this decides what a program from elsewhere means.\n\nIf wrong: a hole is drilled at every place that follows.", "type": "string", "enum": ["any-motion", "cancel-code"], "examples": ["cancel-code"] } } }], "examples": ["none", { "drill": "G81", "peck": "G83", "return": { "initial": "G98", "retract": "G99", "without": "none" } }] }, "spindle": { "title": "Spindle", "description": "Words for the spindle.", "type": "object", "additionalProperties": false, "properties": { "cw": { "title": "Spindle clockwise", "description": "Code that starts the spindle clockwise, as for a right-hand tool.\n\nIf wrong: the spindle turns the wrong way and the tool breaks.", "$ref": "#/$defs/codeOrNone", "examples": ["M3"] }, "ccw": { "title": "Spindle counter-clockwise", "description": "Code that starts it counter-clockwise, or none.\n\nIf wrong: the spindle turns the wrong way and the tool breaks.", "$ref": "#/$defs/codeOrNone", "examples": ["M4", "none"] }, "stop": { "title": "Spindle stop", "description": "Code that stops the spindle.\n\nIf wrong: the spindle runs on into the swap or past the end of the program.", "$ref": "#/$defs/codeOrNone", "examples": ["M5"] }, "orient": { "title": "Spindle orientation", "description": "Code that stops the spindle at its swap angle, or none.\n\nIf wrong: the drive keys of the tool strike the rack.", "$ref": "#/$defs/codeWithWordOrNone", "examples": ["M19", "none"] }, "order": { "title": "Order of speed and start", "description": "speed-first: the S word before the start word; start-first: the start word before the S word. It holds in a block, whatever `blocks.order` says, and from block to block.\n\nIf wrong: the spindle starts at the last speed, or the speed is ignored.", "type": "string", "enum": ["speed-first", "start-first"], "examples": ["speed-first"] }, "blocks": { "title": "Speed and start in a block", "description": "together: one block; apart: one block each.\n\nIf wrong: one of the two is ignored.", "type": "string", "enum": ["together", "apart"], "examples": ["together"] }, "speed-unit": { "title": "Unit of the speed word", "description": "What S counts. rpm: revolutions a minute; percent: hundredths of `spindle.full-speed`, which the dialect then has to state. Its decimals are `numbers.speed`.\n\nIf wrong: the spindle runs at its highest speed where a low one was meant, or hardly turns.", "type": "string", "enum": ["rpm", "percent"], "examples": ["rpm"] }, "full-speed": { "title": "Speed at 100 percent", "description": "Speed that S100 asks for, where S counts percent. It stays what it is when `machine.spindle.max-rpm` is lowered to protect a tool or a bearing.\n\nUnit: rpm.\n\nIf wrong: the spindle turns faster or slower than every program says.", "type": "number", "exclusiveMinimum": 0, "maximum": 1e6, "examples": [24e3] }, "gears": { "title": "Gear ranges", "description": "Ranges of the spindle's gear that a code selects, or none. The first range that a speed lies in is selected, in a block of its own before the speed; a range changes only while the spindle stands.\n\nIf wrong: the speed ends at the top of the range in force, or the gear is shifted while it turns.", "anyOf": [{ "title": "None", "description": "One range, or the control shifts by itself.", "type": "string", "const": "none" }, { "type": "array", "minItems": 1, "maxItems": 6, "items": { "title": "Gear range", "description": "One range and its code.", "type": "object", "additionalProperties": false, "properties": { "code": { "title": "Code of the range", "description": "Code that selects it.\n\nIf wrong: another range is selected.", "type": "string", "pattern": "^M\\d{1,3}$", "examples": ["M41"] }, "from": { "title": "Lowest speed of the range", "description": "Lowest speed of the range.\n\nUnit: rpm.\n\nIf wrong: the motor stalls in the cut.", "type": "number", "minimum": 0, "maximum": 1e6, "examples": [100] }, "to": { "title": "Highest speed of the range", "description": "Highest speed of the range.\n\nUnit: rpm.\n\nIf wrong: the spindle runs slower than the feed is made for.", "type": "number", "exclusiveMinimum": 0, "maximum": 1e6, "examples": [4e3] } }, "examples": [{ "code": "M41", "from": 100, "to": 4e3 }] } }], "examples": ["none", [{ "code": "M41", "from": 100, "to": 4e3 }, { "code": "M42", "from": 4e3, "to": 12e3 }]] } }, "examples": [{ "cw": "M3", "ccw": "M4", "stop": "M5", "order": "speed-first", "blocks": "together" }] }, "coolant": { "title": "Coolant", "description": "Words for coolant and air.", "type": "object", "additionalProperties": false, "properties": { "mist": { "title": "Mist", "description": "Code that turns mist on, or none.\n\nIf wrong: the tool runs dry.", "$ref": "#/$defs/codeOrNone", "examples": ["M7", "none"] }, "flood": { "title": "Flood", "description": "Code that turns flood coolant on, or none.\n\nIf wrong: the tool runs dry.", "$ref": "#/$defs/codeOrNone", "examples": ["M8", "none"] }, "air": { "title": "Air", "description": "Code that turns air on, or none.\n\nIf wrong: chips stay in the cut.", "$ref": "#/$defs/codeOrNone", "examples": ["none"] }, "through-tool": { "title": "Coolant through the tool", "description": "Code that turns coolant through the tool on, or none.\n\nIf wrong: a deep hole is drilled dry.", "$ref": "#/$defs/codeOrNone", "examples": ["none"] }, "off": { "title": "All off", "description": "Code that turns all of them off, or a code for each medium that can be turned on.\n\nIf wrong: coolant runs during the swap, into the taper and the rack.", "anyOf": [{ "title": "One code for all", "description": "Turns all media off.", "$ref": "#/$defs/codeOrNone" }, { "type": "object", "additionalProperties": false, "properties": { "mist": { "title": "Mist off", "description": "Code that turns mist off, or none.\n\nIf wrong: mist runs on into the swap.", "$ref": "#/$defs/codeOrNone", "examples": ["M97"] }, "flood": { "title": "Flood off", "description": "Code that turns flood coolant off, or none.\n\nIf wrong: coolant runs on into the swap.", "$ref": "#/$defs/codeOrNone", "examples": ["M98"] }, "air": { "title": "Air off", "description": "Code that turns air off, or none.\n\nIf wrong: air blows chips into the rack.", "$ref": "#/$defs/codeOrNone", "examples": ["none"] }, "through-tool": { "title": "Coolant through the tool off", "description": "Code that turns coolant through the tool off, or none.\n\nIf wrong: coolant runs into the taper at the swap.", "$ref": "#/$defs/codeOrNone", "examples": ["none"] } } }], "examples": ["M9", { "mist": "M97", "flood": "M98" }] }, "blocks": { "title": "Coolant words in a block", "description": "apart: each in a block of its own; together: media that are turned on, or off, behind one another share a block, as far as `blocks.m-words` goes.\n\nIf wrong: only the last word of the block acts, or the block alarms.", "type": "string", "enum": ["apart", "together"], "examples": ["apart"] } }, "examples": [{ "mist": "M7", "flood": "M8", "air": "none", "through-tool": "none", "off": "M9", "blocks": "apart" }] }, "tools": { "title": "Tools", "description": "Words for selecting and changing tools.", "type": "object", "additionalProperties": false, "properties": { "change": { "title": "Tool change", "description": "Code of the controller's own tool change; with-tool-word: it has none, and the tool word alone changes the tool; none: it changes no tools.\n\nIf wrong: the tool is not changed, and the next operation runs with the last one; or the spindle's tool is put away where a word was only meant to say its number.", "type": "string", "pattern": "^(none|with-tool-word|[GM]\\d{1,3}(\\.\\d)?)$", "examples": ["M6", "with-tool-word", "none"] }, "blocks": { "title": "Selection and change in a block", "description": "together: T and the change code share a block; apart: one block each.\n\nIf wrong: the change takes the tool selected before.", "type": "string", "enum": ["together", "apart"], "examples": ["together"] }, "order": { "title": "Order of selection and change", "description": "select-first: T before the change code; change-first: the change code first.\n\nIf wrong: the change takes the tool selected before.", "type": "string", "enum": ["select-first", "change-first"], "examples": ["select-first"] }, "preselect": { "title": "Preselection", "description": "Whether the next tool is selected right after each change, so that the changer gets it ready.\n\nIf wrong: the changer takes the wrong tool at the next change.", "$ref": "#/$defs/yesNo", "examples": ["no"] }, "in-operator-swap": { "title": "Tool word in a swap by the operator", "description": "Whether the tool word stands before the stop at which the operator changes the tool. Without it the message to the operator alone says which tool that is, so that the dialect needs `idioms.message`.\n\nIf wrong: the controller alarms at a tool it does not know, or starts a changer that is not there.", "$ref": "#/$defs/yesNo", "examples": ["yes"] }, "empty": { "title": "Tool word of an empty spindle", "description": "Number of the tool word with which the controller's own change leaves the spindle empty; the program then ends with that change. none: the last tool stays in the spindle.\n\nUnit: tool number.\n\nIf wrong: the last tool stays in the spindle where the next program expects none, or a tool of that number is put in.", "anyOf": [{ "title": "None", "description": "The last tool stays in the spindle.", "type": "string", "const": "none" }, { "type": "integer", "minimum": 0, "maximum": 9999 }], "examples": ["none", 0] } }, "examples": [{ "change": "M6", "blocks": "together", "order": "select-first", "preselect": "no" }] }, "stops": { "title": "Stops and end", "description": "Words that stop and end the program.", "type": "object", "additionalProperties": false, "properties": { "stop": { "title": "Program stop", "description": "Code of a stop that the operator ends.\n\nIf wrong: the program runs on while a hand is in the machine.", "$ref": "#/$defs/codeOrNone", "examples": ["M0"] }, "optional": { "title": "Optional stop", "description": "Code of a stop that acts when its switch is on, or none. A code behind a block delete mark, such as /M0 or /2 M0, is a stop that acts while that switch is off.\n\nIf wrong: the program runs on although a check was meant.", "$ref": "#/$defs/optionalStop", "examples": ["M1", "none", "/M0", "/2 M0"] }, "end": { "title": "End of program", "description": "Code of the end of the program.\n\nIf wrong: the controller alarms, does not rewind, or moves a pallet.", "$ref": "#/$defs/codeOrNone", "examples": ["M30", "M2"] }, "comment": { "title": "Message of a stop", "description": "Where the message stands that says what a stop is for. own-block: in a block of its own before the stop; with-stop: in the block of the stop, behind its code. Of a message that takes several comments the last one stands there, the others in blocks before it.\n\nIf wrong: the message is gone from the screen while the program stands, and the operator does not see what to do.", "type": "string", "enum": ["own-block", "with-stop"], "examples": ["own-block"] }, "resume": { "title": "Modes behind a stop", "description": "What is in force when the operator starts the program again after a stop. keeps-modes: what was in force before; loses-modes: nothing is certain, so that the program states all its modes anew before anything moves, and its offsets before the approach.\n\nIf wrong: the program goes on in inches, in increments or in another work offset.", "type": "string", "enum": ["keeps-modes", "loses-modes"], "examples": ["keeps-modes"] }, "end-resets": { "title": "Modes at the end", "description": "Whether the end of the program puts the modes back by itself. no: the program states feed per minute, the XY plane, compensation off, absolute distances and cycles off before its end, each where there is a word for it, and the work offset where a machine move has suspended it (`motion.machine-move-lasts`).\n\nIf wrong: the next program, or what the operator types in, runs in increments or in another plane.", "$ref": "#/$defs/yesNo", "examples": ["yes"] } }, "examples": [{ "stop": "M0", "optional": "M1", "end": "M30", "comment": "own-block", "resume": "keeps-modes", "end-resets": "yes" }] }, "wait": { "title": "Values of a wait", "description": "Numbers that a wait on a signal says.", "type": "object", "additionalProperties": false, "properties": { "on": { "title": "Level on", "description": "Number for a signal that is on.\n\nUnit: number of the level word.\n\nIf wrong: the wait is over at once, whatever the machine does.", "type": "integer", "minimum": 0, "maximum": 9999, "examples": [1] }, "off": { "title": "Level off", "description": "Number for a signal that is off.\n\nUnit: number of the level word.\n\nIf wrong: the wait is over at once, whatever the machine does.", "type": "integer", "minimum": 0, "maximum": 9999, "examples": [0] }, "timeout-unit": { "title": "Unit of the timeout", "description": "What the timeout is counted in.\n\nUnit: s or ms.\n\nIf wrong: the wait gives up at once, or hangs for minutes with the fault unseen.", "type": "string", "enum": ["s", "ms"], "examples": ["s"] } }, "examples": [{ "on": 1, "off": 0, "timeout-unit": "s" }] }, "codes": { "title": "Codes of the builder", "description": "What further codes do that a program from elsewhere may hold: what they are for, and their effects. They are read, not written.", "type": "object", "additionalProperties": false, "patternProperties": { "^[GM]\\d{1,3}$": { "title": "One code", "description": "A code with no meaning of its own in the standards, and what it leaves behind.", "type": "object", "additionalProperties": false, "properties": { "does": { "title": "What it does", "description": "In words, for findings and the set-up sheet.\n\nIf wrong: the operator does not know what is switched.", "type": "string", "minLength": 1, "maxLength": 120, "examples": ["chip conveyor on"] }, "position": { "title": "Effect on the position", "description": "unchanged: the axes end where they were; unknown: they may be anywhere, so that the program states them anew; swap-height: Z ends at the swap height.\n\nIf wrong: the next approach starts from a place that nobody knows.", "type": "string", "enum": ["unchanged", "unknown", "swap-height"], "examples": ["unchanged"] }, "spindle": { "title": "Effect on the spindle", "description": "unchanged, or stopped.\n\nIf wrong: the spindle is thought to stand while it turns.", "type": "string", "enum": ["unchanged", "stopped"], "examples": ["stopped"] }, "coolant": { "title": "Effect on coolant", "description": "unchanged, or off.\n\nIf wrong: coolant is missing, or runs into the taper.", "type": "string", "enum": ["unchanged", "off"], "examples": ["unchanged"] }, "length-offset": { "title": "Effect on the length offset", "description": "unchanged; active: the length of the new tool acts; cancelled: none acts.\n\nIf wrong: the tool is driven into the work by its length.", "type": "string", "enum": ["unchanged", "active", "cancelled"], "examples": ["unchanged"] } }, "examples": [{ "does": "chip conveyor on", "position": "unchanged", "spindle": "unchanged", "coolant": "unchanged", "length-offset": "unchanged" }] } }, "examples": [{ "M27": { "does": "chip conveyor on", "position": "unchanged", "spindle": "unchanged", "coolant": "unchanged", "length-offset": "unchanged" } }] }, "idioms": { "title": "Idioms", "description": "How this controller says one action: literal words and {{name}} for the whole number of a word. One code each; beside it may stand P Q R L E I J K.", "type": "object", "additionalProperties": false, "properties": { "message": { "title": "Message to the operator", "description": "A whole comment with a mark of its own, so that a message is told from a remark, or none. It may name {{text}} (must).\n\nIf wrong: the operator does not see what is asked of them.", "$ref": "#/$defs/template", "examples": ["(MSG, {{text}})"] }, "header": { "title": "Header lines", "description": "Comment lines at the head of the program, in place of its name and the dialect. What is assumed and the caution stand in every header. Each entry is a line, or with {{#each tools}}, {{#each operations}} or {{#each assumptions}} around it one for each of them. Lines name {{program}}, {{number}}, {{dialect}} and {{units}}; within tools {{number}}, {{description}}, {{diameter}} and {{lengthOffset}}, within operations {{id}} and {{name}}, within assumptions {{text}}.\n\nIf wrong: the transfer is refused, or the operator cannot tell one program from another.", "anyOf": [{ "title": "None", "description": "No lines of the dialect's own.", "type": "string", "const": "none" }, { "type": "array", "minItems": 1, "maxItems": 40, "items": { "type": "string", "minLength": 1, "maxLength": 160 } }], "examples": [["{{program}} FOR {{dialect}}", "{{#each tools}}T{{number}} {{description}} D{{diameter}} H{{lengthOffset}}{{/each}}"]] }, "footer": { "title": "Footer lines", "description": "Comment lines behind the last block. Each entry is a line, or with {{#each tools}}, {{#each operations}} or {{#each assumptions}} around it one for each of them. Lines name {{program}}, {{number}}, {{dialect}} and {{units}}; within tools {{number}}, {{description}}, {{diameter}} and {{lengthOffset}}, within operations {{id}} and {{name}}, within assumptions {{text}}.\n\nIf wrong: the transfer is refused, or blocks are looked for behind the end.", "anyOf": [{ "title": "None", "description": "No lines of the dialect's own.", "type": "string", "const": "none" }, { "type": "array", "minItems": 1, "maxItems": 40, "items": { "type": "string", "minLength": 1, "maxLength": 160 } }], "examples": [["{{program}} FOR {{dialect}}", "{{#each tools}}T{{number}} {{description}} D{{diameter}} H{{lengthOffset}}{{/each}}"]] }, "wait-signal": { "title": "Wait on a signal", "description": "Waits until an input has a level, or none. It may name {{signal}} (must), {{level}} (without it every signal is waited for until it is on) and {{timeout}} (without it the wait lasts for ever).\n\nIf wrong: the program does not wait: the tool cuts before the spindle is up to speed, or swaps while it turns.", "$ref": "#/$defs/template", "examples": ["M94 P{{signal}} R{{level}} Q{{timeout}}"] }, "output-on": { "title": "Output on", "description": "Switches an output on, or none. It may name {{output}} (must).\n\nIf wrong: another output is switched.", "$ref": "#/$defs/template", "examples": ["M95 P{{output}}"] }, "output-off": { "title": "Output off", "description": "Switches an output off, or none. It may name {{output}} (must).\n\nIf wrong: another output is switched.", "$ref": "#/$defs/template", "examples": ["M96 P{{output}}"] }, "release": { "title": "Release the tool", "description": "Opens the drawbar, or none. It names no value.\n\nIf wrong: the tool drops, or is pulled out of the rack with its fork.", "$ref": "#/$defs/template", "examples": ["M21"] }, "clamp": { "title": "Clamp the tool", "description": "Closes the drawbar, or none. It names no value.\n\nIf wrong: the spindle starts with a loose tool.", "$ref": "#/$defs/template", "examples": ["M22"] }, "taper-air-on": { "title": "Taper air on", "description": "Blows the taper clean, or none. It names no value.\n\nIf wrong: a chip between taper and holder: the tool runs out.", "$ref": "#/$defs/template", "examples": ["M25"] }, "taper-air-off": { "title": "Taper air off", "description": "Ends it, or none. It names no value.\n\nIf wrong: air blows on during the cut.", "$ref": "#/$defs/template", "examples": ["M26"] }, "cover-open": { "title": "Open the rack's cover", "description": "Opens the cover of the rack, or none. It names no value.\n\nIf wrong: the spindle is driven into the cover.", "$ref": "#/$defs/template", "examples": ["M27"] }, "cover-close": { "title": "Close the rack's cover", "description": "Closes the cover of the rack, or none. It names no value.\n\nIf wrong: chips fill the pockets.", "$ref": "#/$defs/template", "examples": ["M28"] }, "hood-up": { "title": "Dust hood up", "description": "Lifts the dust hood, or none. It names no value.\n\nIf wrong: the hood is driven into the rack or the clamps.", "$ref": "#/$defs/template", "examples": ["M23"] }, "hood-down": { "title": "Dust hood down", "description": "Lowers the dust hood, or none. It names no value.\n\nIf wrong: dust is not drawn off.", "$ref": "#/$defs/template", "examples": ["M24"] }, "measure": { "title": "Measure the tool", "description": "Has the controller measure the tool's length and make it its length offset, or none. It names no value.\n\nIf wrong: the length of the last measurement acts.", "$ref": "#/$defs/template", "examples": ["M29"] } }, "examples": [{ "wait-signal": "M94 P{{signal}} R{{level}} Q{{timeout}}", "release": "M21", "clamp": "M22" }] }, "machine": { "title": "Machine", "description": "Facts of this machine, in its own leaf. A key is needed when a job needs it.", "type": "object", "additionalProperties": false, "properties": { "travel": { "title": "Travel", "description": "Where each axis can go, machine coordinates. Rotary axes are allowed only where they stand here.", "type": "object", "additionalProperties": false, "properties": { "x": { "title": "Travel of X", "description": "Least and greatest place of X in machine coordinates.\n\nUnit: mm, or with `in`.\n\nIf wrong: the axis runs onto its limit switch in the middle of the program.", "type": "array", "minItems": 2, "maxItems": 2, "items": { "$ref": "#/$defs/length" }, "examples": [[0, 1220]] }, "y": { "title": "Travel of Y", "description": "Least and greatest place of Y in machine coordinates.\n\nUnit: mm, or with `in`.\n\nIf wrong: the axis runs onto its limit switch in the middle of the program.", "type": "array", "minItems": 2, "maxItems": 2, "items": { "$ref": "#/$defs/length" }, "examples": [[0, 1220]] }, "z": { "title": "Travel of Z", "description": "Least and greatest place of Z in machine coordinates.\n\nUnit: mm, or with `in`.\n\nIf wrong: the axis runs onto its limit switch in the middle of the program.", "type": "array", "minItems": 2, "maxItems": 2, "items": { "$ref": "#/$defs/length" }, "examples": [[0, 1220]] }, "a": { "title": "Travel of A", "description": "Least and greatest place of A in machine coordinates.\n\nUnit: degrees.\n\nIf wrong: the axis runs onto its limit switch in the middle of the program.", "type": "array", "minItems": 2, "maxItems": 2, "items": { "type": "number", "minimum": -36e6, "maximum": 36e6 }, "examples": [[-360, 360]] }, "b": { "title": "Travel of B", "description": "Least and greatest place of B in machine coordinates.\n\nUnit: degrees.\n\nIf wrong: the axis runs onto its limit switch in the middle of the program.", "type": "array", "minItems": 2, "maxItems": 2, "items": { "type": "number", "minimum": -36e6, "maximum": 36e6 }, "examples": [[-360, 360]] }, "c": { "title": "Travel of C", "description": "Least and greatest place of C in machine coordinates.\n\nUnit: degrees.\n\nIf wrong: the axis runs onto its limit switch in the middle of the program.", "type": "array", "minItems": 2, "maxItems": 2, "items": { "type": "number", "minimum": -36e6, "maximum": 36e6 }, "examples": [[-360, 360]] } }, "examples": [{ "x": [0, 1220], "y": [0, 810], "z": [-95, 0] }] }, "spindle": { "title": "Spindle of the machine", "description": "What the spindle and its drive can do.", "type": "object", "additionalProperties": false, "properties": { "min-rpm": { "title": "Lowest speed", "description": "Lowest speed that the spindle may run at.\n\nUnit: rpm.\n\nIf wrong: the spindle overheats, or does not turn.", "type": "number", "minimum": 0, "maximum": 1e6, "examples": [6e3] }, "max-rpm": { "title": "Highest speed", "description": "Highest speed.\n\nUnit: rpm.\n\nIf wrong: the speed is cut without a word and the feed is too fast for it.", "type": "number", "exclusiveMinimum": 0, "maximum": 1e6, "examples": [24e3] }, "spin-up": { "title": "Time to come up to speed", "description": "Time from standstill to the highest speed.\n\nUnit: s, ms or min, written behind the number.\n\nIf wrong: the tool cuts before the spindle is up to speed.", "$ref": "#/$defs/time", "examples": ["6 s"] }, "spin-down": { "title": "Time to stop", "description": "Time from the highest speed to standstill by the drive.\n\nUnit: s, ms or min, written behind the number.\n\nIf wrong: the tool is swapped while the spindle turns.", "$ref": "#/$defs/time", "examples": ["6 s"] }, "coast-down": { "title": "Time to coast down", "description": "The same in free run, with the drive tripped.\n\nUnit: s, ms or min, written behind the number.\n\nIf wrong: the tool is swapped, or a hand is in the machine, while the spindle turns.", "$ref": "#/$defs/time", "examples": ["25 s"] }, "orient": { "title": "Orientation before a swap", "description": "Whether the spindle must be oriented before a swap.\n\nIf wrong: the drive keys of the tool strike the rack.", "$ref": "#/$defs/yesNo", "examples": ["no"] } }, "examples": [{ "min-rpm": 6e3, "max-rpm": 24e3, "spin-up": "6 s", "spin-down": "6 s", "coast-down": "25 s" }] }, "signals": { "title": "Signals", "description": "Inputs that the program can wait on.", "type": "object", "additionalProperties": false, "properties": { "at-speed": { "title": "At speed", "description": "The drive reports that the spindle is at its speed: the number of its input where it is on in that state, or a mapping.\n\nUnit: number of the input.\n\nIf wrong: the tool cuts before the spindle is up to speed.", "anyOf": [{ "type": "integer", "minimum": 0, "maximum": 9999 }, { "$ref": "#/$defs/signal" }], "examples": [{ "input": 4, "settle": "0.3 s" }] }, "stopped": { "title": "Stopped", "description": "The drive or a sensor reports standstill: the number of its input where it is on in that state, or a mapping.\n\nUnit: number of the input.\n\nIf wrong: the tool is swapped while the spindle turns.", "anyOf": [{ "type": "integer", "minimum": 0, "maximum": 9999 }, { "$ref": "#/$defs/signal" }], "examples": [5] }, "released": { "title": "Released", "description": "The drawbar is open: the number of its input where it is on in that state, or a mapping.\n\nUnit: number of the input.\n\nIf wrong: the holder is torn out of its pocket.", "anyOf": [{ "type": "integer", "minimum": 0, "maximum": 9999 }, { "$ref": "#/$defs/signal" }], "examples": [8] }, "clamped": { "title": "Clamped", "description": "The drawbar is closed with a tool in it: the number of its input where it is on in that state, or a mapping.\n\nUnit: number of the input.\n\nIf wrong: the spindle starts with a loose tool.", "anyOf": [{ "type": "integer", "minimum": 0, "maximum": 9999 }, { "$ref": "#/$defs/signal" }], "examples": [7] }, "tool-present": { "title": "Tool present", "description": "A tool is in the spindle: the number of its input where it is on in that state, or a mapping.\n\nUnit: number of the input.\n\nIf wrong: the program goes on without a tool.", "anyOf": [{ "type": "integer", "minimum": 0, "maximum": 9999 }, { "$ref": "#/$defs/signal" }], "examples": [9] }, "air": { "title": "Air pressure", "description": "There is enough air to work the drawbar: the number of its input where it is on in that state, or a mapping.\n\nUnit: number of the input.\n\nIf wrong: the drawbar opens halfway and the tool drops.", "anyOf": [{ "type": "integer", "minimum": 0, "maximum": 9999 }, { "$ref": "#/$defs/signal" }], "examples": [6] }, "hold-down": { "title": "Hold-down", "description": "Vacuum or clamps hold the work: the number of its input where it is on in that state, or a mapping.\n\nUnit: number of the input.\n\nIf wrong: the work comes loose in the cut.", "anyOf": [{ "type": "integer", "minimum": 0, "maximum": 9999 }, { "$ref": "#/$defs/signal" }], "examples": [10] } }, "examples": [{ "at-speed": { "input": 4, "settle": "0.3 s" }, "stopped": 5 }] }, "waits": { "title": "Waits", "description": "What a wait does when its time is up.", "type": "object", "additionalProperties": false, "properties": { "on-timeout": { "title": "On timeout", "description": "alarm: the program stops; continues: it goes on as if the signal had come, so that such a wait confirms nothing.\n\nIf wrong: a fault of the spindle or the air goes unseen and the program runs on.", "type": "string", "enum": ["alarm", "continues"], "examples": ["alarm"] } }, "examples": [{ "on-timeout": "alarm" }] }, "swap": { "title": "Swap style", "description": "controller: the controller changes tools by itself; rack: the program drives to the pockets and works the drawbar; operator: the program stops and asks for the tool; none: one tool a program, which is in the spindle before it starts.\n\nIf wrong: the program waits for a change that never comes, or drives to a rack that is not there.", "type": "string", "enum": ["controller", "rack", "operator", "none"], "examples": ["rack"] }, "change-effects": { "title": "Effects of the tool change", "description": "What the controller's own tool change does besides changing the tool. Needed where `swap` is controller.", "type": "object", "additionalProperties": false, "properties": { "position": { "title": "Effect on the position", "description": "unchanged: the axes end where they were; unknown: they may be anywhere, so that the program states them anew; swap-height: Z ends at the swap height.\n\nIf wrong: the next approach starts from a place that nobody knows.", "type": "string", "enum": ["unchanged", "unknown", "swap-height"], "examples": ["unchanged"] }, "spindle": { "title": "Effect on the spindle", "description": "unchanged; stopped; restarts: the control starts the spindle again behind the change, at a speed that nobody knows, so that the program stops it at once and confirms that.\n\nIf wrong: the spindle is thought to stand while it turns.", "type": "string", "enum": ["unchanged", "stopped", "restarts"], "examples": ["stopped"] }, "coolant": { "title": "Effect on coolant", "description": "unchanged, or off.\n\nIf wrong: coolant is missing, or runs into the taper.", "type": "string", "enum": ["unchanged", "off"], "examples": ["unchanged"] }, "length-offset": { "title": "Effect on the length offset", "description": "unchanged; active: the length of the new tool acts; cancelled: none acts.\n\nIf wrong: the tool is driven into the work by its length.", "type": "string", "enum": ["unchanged", "active", "cancelled"], "examples": ["unchanged"] } }, "examples": [{ "position": "unchanged", "spindle": "stopped", "coolant": "unchanged", "length-offset": "unchanged" }] }, "measure-effects": { "title": "Effects of measuring", "description": "What the controller's measurement of a tool does. Needed where `lengths` is measured.", "type": "object", "additionalProperties": false, "properties": { "position": { "title": "Effect on the position", "description": "unchanged: the axes end where they were; unknown: they may be anywhere, so that the program states them anew; swap-height: Z ends at the swap height.\n\nIf wrong: the next approach starts from a place that nobody knows.", "type": "string", "enum": ["unchanged", "unknown", "swap-height"], "examples": ["unchanged"] }, "spindle": { "title": "Effect on the spindle", "description": "unchanged, or stopped.\n\nIf wrong: the spindle is thought to stand while it turns.", "type": "string", "enum": ["unchanged", "stopped"], "examples": ["stopped"] }, "coolant": { "title": "Effect on coolant", "description": "unchanged, or off.\n\nIf wrong: coolant is missing, or runs into the taper.", "type": "string", "enum": ["unchanged", "off"], "examples": ["unchanged"] }, "length-offset": { "title": "Effect on the length offset", "description": "unchanged; active: the length of the new tool acts; cancelled: none acts.\n\nIf wrong: the tool is driven into the work by its length.", "type": "string", "enum": ["unchanged", "active", "cancelled"], "examples": ["unchanged"] } }, "examples": [{ "position": "unknown", "spindle": "stopped", "coolant": "unchanged", "length-offset": "active" }] }, "retract": { "title": "Retract to swap height", "description": "How Z goes up to the swap height.", "type": "object", "additionalProperties": false, "properties": { "by": { "title": "Retract by", "description": "machine-move: a rapid in machine coordinates; reference-return: the return to the reference position; clearance: the clearance of the job (operator swaps only).\n\nIf wrong: the tool is dragged across the work, or driven past the travel.", "type": "string", "enum": ["machine-move", "reference-return", "clearance"], "examples": ["machine-move"] }, "z": { "title": "Swap height", "description": "Z of the swap height in machine coordinates, with machine-move.\n\nUnit: mm, or with `in`.\n\nIf wrong: Z does not clear the work, or runs onto its limit switch.", "$ref": "#/$defs/length", "examples": [0] }, "acts-on": { "title": "What it moves", "description": "spindle-nose: machine coordinates are those of the spindle; tool-tip: an active length offset counts, too.\n\nIf wrong: Z stands lower by the tool's length than meant.", "type": "string", "enum": ["spindle-nose", "tool-tip"], "examples": ["spindle-nose"] }, "cancel-length-first": { "title": "Cancel the length offset first", "description": "Whether the length offset must be cancelled before it.\n\nIf wrong: the controller alarms, or the tool runs past the travel by its length.", "$ref": "#/$defs/yesNo", "examples": ["no"] }, "intermediate": { "title": "Intermediate point", "description": "incremental-zero: a reference return has an intermediate point, given as zero increments; none: it has none.\n\nIf wrong: the intermediate point is taken for a target: a diagonal through the work.", "type": "string", "enum": ["none", "incremental-zero"], "examples": ["none"] }, "change-position": { "title": "Change position", "description": "Where the operator changes tools, with retract by clearance; work coordinates.\n\nUnit: mm, or with `in`.\n\nIf wrong: the operator reaches between tool and work to change it.", "$ref": "#/$defs/place", "examples": [[0, 0, 120]] } }, "examples": [{ "by": "machine-move", "z": 0, "acts-on": "spindle-nose", "cancel-length-first": "no", "intermediate": "none" }] }, "length-offset": { "title": "Length offset at the machine", "description": "How the tool's length comes to act.", "type": "object", "additionalProperties": false, "properties": { "form": { "title": "Form", "description": "with-first-z: in the block of the first Z motion; own-block: in a block of its own before it; in-tool-word: with the tool word; none: there is no length offset, the operator sets Z.\n\nIf wrong: the tool is driven into the work by its length.", "type": "string", "enum": ["with-first-z", "own-block", "in-tool-word", "none"], "examples": ["with-first-z"] }, "select-moves": { "title": "Selecting moves Z", "description": "Whether selecting it moves the axis by itself.\n\nIf wrong: Z moves where nobody meant it to.", "$ref": "#/$defs/yesNo", "examples": ["no"] }, "cancel-moves": { "title": "Cancelling moves Z", "description": "Whether cancelling it moves the axis by itself. It is then cancelled at swap height only.\n\nIf wrong: Z moves down by the tool's length.", "$ref": "#/$defs/yesNo", "examples": ["no"] } }, "examples": [{ "form": "with-first-z", "select-moves": "no", "cancel-moves": "no" }] }, "lengths": { "title": "Tool lengths", "description": "Where they come from: table, the controller's tool table; measured, a measurement after each swap; operator, set by hand.\n\nIf wrong: the tool is driven into the work by the difference.", "type": "string", "enum": ["table", "measured", "operator"], "examples": ["table"] }, "drawbar": { "title": "Drawbar", "description": "How the drawbar is worked at a rack, or none.", "anyOf": [{ "title": "None", "description": "There is no drawbar that the program works.", "type": "string", "const": "none" }, { "type": "object", "additionalProperties": false, "properties": { "travels": { "title": "Travel of an empty spindle", "description": "Whether an empty spindle travels along the rack clamped or released.\n\nIf wrong: the released drawbar strikes a holder, or the clamped one is pressed onto it.", "type": "string", "enum": ["clamped", "released"], "examples": ["clamped"] }, "taper-air": { "title": "Taper air", "description": "Whether air cleans the taper while a tool is picked.\n\nIf wrong: a chip between taper and holder: the tool runs out.", "$ref": "#/$defs/yesNo", "examples": ["no"] } } }], "examples": ["none", { "travels": "clamped", "taper-air": "no" }] }, "rack": { "title": "Rack", "description": "Where tools wait and how they are fetched, or none.", "anyOf": [{ "title": "None", "description": "There is no rack that the program drives to.", "type": "string", "const": "none" }, { "type": "object", "additionalProperties": false, "properties": { "style": { "title": "Style of the rack", "description": "drop-in: the holder is let down into its pocket from above; slide-in: it is slid into a fork from the side.\n\nIf wrong: the spindle is driven into the rack.", "type": "string", "enum": ["drop-in", "slide-in"], "examples": ["drop-in"] }, "clear-z": { "title": "Clear height", "description": "Machine Z at which an empty spindle clears the tools in the rack, and a full one the empty pockets.\n\nUnit: mm, or with `in`.\n\nIf wrong: the tool is dragged through the rack.", "$ref": "#/$defs/length", "examples": [-5] }, "pocket-z": { "title": "Pocket height", "description": "Machine Z at which the holder sits in its pocket.\n\nUnit: mm, or with `in`.\n\nIf wrong: the holder is crushed into the rack, or drops.", "$ref": "#/$defs/length", "examples": [-78.4] }, "descend-from": { "title": "Start of the slow descent", "description": "How far above the pocket height the descent at feed begins.\n\nUnit: mm, or with `in`.\n\nIf wrong: the holder is driven into its pocket at rapid.", "$ref": "#/$defs/length", "examples": [20] }, "descend-feed": { "title": "Feed of the slow descent", "description": "Feed of the last part of the way down.\n\nUnit: mm/min, or with `in/min`.\n\nIf wrong: the holder is driven into its pocket too fast.", "$ref": "#/$defs/feed", "examples": [600] }, "pockets": { "title": "Pockets", "description": "Places of the pockets, machine coordinates: the first one, the pitch to the next and their number, or a list of places.\n\nIf wrong: the spindle is driven beside the pocket.", "anyOf": [{ "type": "object", "additionalProperties": false, "properties": { "first": { "title": "First pocket", "description": "X and Y of pocket 1.\n\nUnit: mm, or with `in`.\n\nIf wrong: the spindle is driven beside the pocket.", "$ref": "#/$defs/point", "examples": [[40, 20]] }, "pitch": { "title": "Pitch", "description": "X and Y from one pocket to the next.\n\nUnit: mm, or with `in`.\n\nIf wrong: the spindle is driven beside the pocket, farther with each one.", "$ref": "#/$defs/point", "examples": [[80, 0]] }, "count": { "title": "Number of pockets", "description": "How many there are.\n\nUnit: pockets.\n\nIf wrong: the spindle is driven past the end of the rack.", "type": "integer", "minimum": 1, "maximum": 200, "examples": [6] } } }, { "type": "array", "minItems": 1, "maxItems": 200, "items": { "$ref": "#/$defs/point" } }], "examples": [{ "first": [40, 20], "pitch": [80, 0], "count": 6 }, [[40, 20], [120, 20]]] }, "zone": { "title": "Rack zone", "description": "Box that only swaps enter.", "type": "object", "additionalProperties": false, "properties": { "min": { "title": "Least corner", "description": "Least X, Y and Z of the rack, machine coordinates.\n\nUnit: mm, or with `in`.\n\nIf wrong: the tool is driven into it.", "$ref": "#/$defs/place", "examples": [[0, 0, -95]] }, "max": { "title": "Greatest corner", "description": "Greatest X, Y and Z of the rack, machine coordinates.\n\nUnit: mm, or with `in`.\n\nIf wrong: the tool is driven into it.", "$ref": "#/$defs/place", "examples": [[500, 60, -5]] } }, "examples": [{ "min": [0, 0, -95], "max": [500, 60, -5] }] }, "slide": { "title": "Slide", "description": "The way into a fork, with slide-in.", "type": "object", "additionalProperties": false, "properties": { "direction": { "title": "Direction of the slide", "description": "Direction from the approach into the pocket.\n\nIf wrong: the holder is torn out of the fork.", "type": "string", "enum": ["+x", "-x", "+y", "-y"], "examples": ["+y"] }, "distance": { "title": "Length of the slide", "description": "Distance from the approach to the pocket.\n\nUnit: mm, or with `in`.\n\nIf wrong: the holder strikes the fork on its way up or down.", "$ref": "#/$defs/length", "examples": [40] }, "feed": { "title": "Feed of the slide", "description": "Feed of the slide.\n\nUnit: mm/min, or with `in/min`.\n\nIf wrong: the holder strikes the fork too fast.", "$ref": "#/$defs/feed", "examples": [1e3] } }, "examples": [{ "direction": "+y", "distance": 40, "feed": 1e3 }] }, "widest": { "title": "Widest tool", "description": "Widest tool that a pocket takes, or none: not checked.\n\nUnit: mm, or with `in`.\n\nIf wrong: a wide tool strikes its neighbour.", "$ref": "#/$defs/lengthOrNone", "examples": [60] }, "longest": { "title": "Longest tool", "description": "Longest tool that a pocket takes, or none: not checked.\n\nUnit: mm, or with `in`.\n\nIf wrong: a long tool strikes the table under the rack.", "$ref": "#/$defs/lengthOrNone", "examples": [90] }, "cover": { "title": "Cover", "description": "Whether the program opens and closes a cover.\n\nIf wrong: the spindle is driven into the cover.", "$ref": "#/$defs/yesNo", "examples": ["no"] }, "at-end": { "title": "At the end", "description": "What becomes of the last tool.", "type": "object", "additionalProperties": false, "properties": { "tool": { "title": "Last tool", "description": "return: it goes back to its pocket; keep: it stays in the spindle.\n\nIf wrong: the next program finds a tool where it expects none.", "type": "string", "enum": ["return", "keep"], "examples": ["return"] } }, "examples": [{ "tool": "return" }] } } }], "examples": ["none", { "style": "drop-in", "clear-z": -5, "pocket-z": -78.4, "descend-from": 20, "descend-feed": 600, "pockets": { "first": [40, 20], "pitch": [80, 0], "count": 6 }, "at-end": { "tool": "return" } }] }, "park": { "title": "Parking place", "description": "X and Y where the program leaves the axes at its end, machine coordinates.\n\nUnit: mm, or with `in`.\n\nIf wrong: the spindle is in the way of unloading.", "$ref": "#/$defs/point", "examples": [[600, 800]] }, "outputs": { "title": "Outputs", "description": "Outputs that the program switches, by a name of yours.", "type": "object", "additionalProperties": false, "patternProperties": { "^[a-z][a-z0-9-]{0,30}$": { "title": "One output", "description": "An output and when it is on.", "type": "object", "additionalProperties": false, "properties": { "number": { "title": "Number of the output", "description": "Number as the idiom says it.\n\nUnit: number of the output.\n\nIf wrong: another output is switched.", "type": "integer", "minimum": 0, "maximum": 9999, "examples": [1] }, "during": { "title": "When it is on", "description": "cutting: from the spindle's start to its stop; program: from the first swap to the end.\n\nIf wrong: the extraction is off while dust is made, or on during the swap.", "type": "string", "enum": ["cutting", "program"], "examples": ["cutting"] } }, "examples": [{ "number": 1, "during": "cutting" }] } }, "examples": [{ "extraction": { "number": 1, "during": "cutting" } }] }, "hood": { "title": "Dust hood", "description": "Whether the program lifts and lowers a dust hood.\n\nIf wrong: the hood is driven into the rack or the clamps.", "$ref": "#/$defs/yesNo", "examples": ["yes"] }, "keep-out": { "title": "Keep-out boxes", "description": "Boxes in machine coordinates that no motion of the work may enter.\n\nUnit: mm, or with `in`.\n\nIf wrong: the tool is driven into what stands there.", "type": "array", "maxItems": 50, "items": { "title": "One box", "description": "A box and what stands there.", "type": "object", "additionalProperties": false, "required": ["name", "min", "max"], "properties": { "name": { "title": "What stands there", "description": "Findings name it.\n\nIf wrong: nobody knows what the finding means.", "type": "string", "minLength": 1, "maxLength": 60, "examples": ["vise"] }, "min": { "title": "Least corner", "description": "Least X, Y and Z of what stands there, machine coordinates.\n\nUnit: mm, or with `in`.\n\nIf wrong: the tool is driven into it.", "$ref": "#/$defs/place", "examples": [[100, 100, -95]] }, "max": { "title": "Greatest corner", "description": "Greatest X, Y and Z of what stands there, machine coordinates.\n\nUnit: mm, or with `in`.\n\nIf wrong: the tool is driven into it.", "$ref": "#/$defs/place", "examples": [[250, 200, -40]] } }, "examples": [{ "name": "vise", "min": [100, 100, -95], "max": [250, 200, -40] }] }, "examples": [[{ "name": "vise", "min": [100, 100, -95], "max": [250, 200, -40] }]] }, "tapping": { "title": "Tapping", "description": "How the machine taps.", "type": "object", "additionalProperties": false, "properties": { "kind": { "title": "Kind of tapping", "description": "none: not at all; floating: with a floating holder; synchronised: spindle and feed are locked.\n\nIf wrong: the tap breaks or strips the thread.", "type": "string", "enum": ["none", "floating", "synchronised"], "examples": ["floating"] }, "reversal": { "title": "Time to reverse", "description": "Time that the spindle needs to reverse, with a floating holder.\n\nUnit: s, ms or min, written behind the number.\n\nIf wrong: the holder runs out of float and the tap breaks.", "$ref": "#/$defs/time", "examples": ["1 s"] }, "longhand": { "title": "Tapping longhand", "description": "Whether tapping may be written without its cycle.\n\nIf wrong: the tap breaks: feed and spindle do not reverse together.", "$ref": "#/$defs/yesNo", "examples": ["no"] } }, "examples": [{ "kind": "floating", "reversal": "1 s", "longhand": "no" }] }, "feed": { "title": "Feed limits", "description": "Lowest and highest feed; without them feeds are not checked against the machine.", "type": "object", "additionalProperties": false, "properties": { "least": { "title": "Lowest feed", "description": "Lowest feed.\n\nUnit: mm/min, or with `in/min`.\n\nIf wrong: the feed is raised without a word.", "$ref": "#/$defs/feed", "examples": [1] }, "most": { "title": "Highest feed", "description": "Highest feed.\n\nUnit: mm/min, or with `in/min`.\n\nIf wrong: the feed is cut without a word, and times on the sheet are wrong.", "$ref": "#/$defs/feed", "examples": [12e3] } }, "examples": [{ "least": 1, "most": 12e3 }] }, "work-zero": { "title": "Origins of the work offsets", "description": "Where the origin of each work offset (1 to 9) lies in machine coordinates, where it is always the same; a set-up file overrides it. With it, travel is checked in full.\n\nUnit: mm, or with `in`.\n\nIf wrong: a program that runs past the travel is passed, or a good one refused.", "type": "object", "additionalProperties": false, "patternProperties": { "^[1-9]$": { "title": "Origin of one work offset", "description": "X, Y and Z of its origin in machine coordinates.\n\nUnit: mm, or with `in`.\n\nIf wrong: a program that runs past the travel is passed, or a good one refused.", "$ref": "#/$defs/place", "examples": [[300, 200, -80]] } }, "examples": [{ "1": [300, 200, -80] }] } }, "examples": [{ "travel": { "x": [0, 1220], "y": [0, 810], "z": [-95, 0] }, "swap": "operator" }] }, "confirm": { "title": "Confirmations", "description": "How the program makes sure of a state before it relies on it. One that is not stated cannot be relied on: a job that needs it is refused.", "type": "object", "additionalProperties": false, "properties": { "at-speed": { "title": "Spindle at speed", "description": "How it is confirmed that the spindle is at its speed: wait (on a signal), dwell (for a time or by an expression), intrinsic (the controller holds by itself; the reason is stated), or the word operator.\n\nIf wrong: the tool cuts before the spindle is up to speed.", "anyOf": [{ "title": "By the operator", "description": "The program stops and asks the operator to see to it.", "type": "string", "const": "operator" }, { "$ref": "#/$defs/confirmation" }], "examples": [{ "wait": "at-speed", "timeout": "10 s" }, { "dwell": "max(spin_up, spin_down) * max(rpm - from_rpm, from_rpm - rpm) / max_rpm + 0.5 * second" }] }, "stopped": { "title": "Spindle stopped", "description": "How it is confirmed that the spindle stands: wait (on a signal), dwell (for a time or by an expression), intrinsic (the controller holds by itself; the reason is stated), or the word operator.\n\nIf wrong: the tool is swapped, or a hand is in the machine, while the spindle turns.", "anyOf": [{ "title": "By the operator", "description": "The program stops and asks the operator to see to it.", "type": "string", "const": "operator" }, { "$ref": "#/$defs/confirmation" }], "examples": [{ "wait": "stopped", "timeout": "30 s" }, { "dwell": "coast_down * from_rpm / max_rpm + 0.5 * second" }] }, "released": { "title": "Tool released", "description": "How it is confirmed that the drawbar is open: wait (on a signal), dwell (for a time or by an expression), intrinsic (the controller holds by itself; the reason is stated), or the word operator.\n\nIf wrong: the holder is torn out of its pocket.", "anyOf": [{ "title": "By the operator", "description": "The program stops and asks the operator to see to it.", "type": "string", "const": "operator" }, { "$ref": "#/$defs/confirmation" }], "examples": [{ "wait": "released", "timeout": "2 s" }, { "dwell": "0.8 s" }] }, "clamped": { "title": "Tool clamped", "description": "How it is confirmed that the drawbar is closed with a tool in it: wait (on a signal), dwell (for a time or by an expression), intrinsic (the controller holds by itself; the reason is stated), or the word operator.\n\nIf wrong: the spindle starts with a loose tool.", "anyOf": [{ "title": "By the operator", "description": "The program stops and asks the operator to see to it.", "type": "string", "const": "operator" }, { "$ref": "#/$defs/confirmation" }], "examples": [{ "wait": "clamped", "timeout": "2 s" }] }, "air": { "title": "Air pressure", "description": "How it is confirmed that there is air to work the drawbar: wait (on a signal), dwell (for a time or by an expression), intrinsic (the controller holds by itself; the reason is stated), or the word operator.\n\nIf wrong: the drawbar opens halfway and the tool drops.", "anyOf": [{ "title": "By the operator", "description": "The program stops and asks the operator to see to it.", "type": "string", "const": "operator" }, { "$ref": "#/$defs/confirmation" }], "examples": [{ "wait": "air", "timeout": "5 s" }] }, "hold-down": { "title": "Work held", "description": "How it is confirmed that vacuum or clamps hold the work: by a wait on the signal `hold-down`, before the first start of the spindle and behind each stop, since hands may then have been at the work.\n\nIf wrong: the work comes loose in the cut.", "type": "object", "additionalProperties": false, "required": ["wait"], "properties": { "wait": { "title": "Wait on its signal", "description": "The signal of the hold-down.\n\nIf wrong: the program waits on something else.", "type": "string", "const": "hold-down", "examples": ["hold-down"] }, "timeout": { "title": "Timeout of the hold-down", "description": "How long the wait lasts before the controller alarms.\n\nUnit: s, ms or min, written behind the number.\n\nIf wrong: the program alarms before the vacuum stands.", "$ref": "#/$defs/time", "examples": ["10 s"] } }, "examples": [{ "wait": "hold-down", "timeout": "10 s" }] } }, "examples": [{ "at-speed": { "wait": "at-speed", "timeout": "10 s" }, "stopped": { "dwell": "60 s" } }] } }, "$defs": { "yesNo": { "description": "yes or no", "type": "string", "enum": ["yes", "no"] }, "code": { "description": "a code such as G54 or M6", "type": "string", "pattern": "^[GM]\\d{1,3}(\\.\\d)?$" }, "codeOrNone": { "description": "a code such as G54 or M6, or none", "type": "string", "pattern": "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, "codeWithWordOrNone": { "description": "a code such as G53, if need be with a word that belongs to it (G54.1 P2), or none", "type": "string", "pattern": "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$" }, "optionalStop": { "description": "a code such as M1, one behind a block delete mark such as /M0 or /2 M0, or none", "type": "string", "pattern": "^(none|(/([1-9] )?)?[GM]\\d{1,3}(\\.\\d)?)$" }, "letter": { "description": "one capital letter", "type": "string", "pattern": "^[A-Z]$" }, "axisLetter": { "description": "one of X Y Z A B C U V W", "type": "string", "enum": ["X", "Y", "Z", "A", "B", "C", "U", "V", "W"] }, "letterOrNone": { "description": "one capital letter, or none", "type": "string", "pattern": "^(none|[A-Z])$" }, "length": { "description": "a length: a number in mm, or a text such as 2 in", "anyOf": [{ "type": "number", "minimum": -1e6, "maximum": 1e6 }, { "type": "string", "pattern": "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }] }, "lengthOrNone": { "description": "a length (a number in mm, or a text such as 2 in), or none", "anyOf": [{ "type": "number", "minimum": 0, "maximum": 1e6 }, { "type": "string", "pattern": "^(none|\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }] }, "feed": { "description": "a feed: a number in mm/min, or a text such as 20 in/min", "anyOf": [{ "type": "number", "exclusiveMinimum": 0, "maximum": 1e6 }, { "type": "string", "pattern": "^\\d{1,5}(\\.\\d{1,5})? (mm|in)/min$" }] }, "time": { "description": "a time such as 6 s, 500 ms or 2 min", "type": "string", "pattern": "^\\d{1,6}(\\.\\d{1,6})? ?(s|ms|min)$" }, "point": { "description": "a list of two lengths, X and Y", "type": "array", "minItems": 2, "maxItems": 2, "items": { "$ref": "#/$defs/length" } }, "place": { "description": "a list of three lengths, X, Y and Z", "type": "array", "minItems": 3, "maxItems": 3, "items": { "$ref": "#/$defs/length" } }, "template": { "description": "none, or words such as M94 P{{signal}}", "type": "string", "minLength": 1, "maxLength": 120 }, "signal": { "description": "a mapping with the keys input, level and settle", "type": "object", "additionalProperties": false, "properties": { "input": { "title": "Input", "description": "Number of the input as the wait says it.\n\nUnit: number of the input.\n\nIf wrong: the program waits on something else.", "type": "integer", "minimum": 0, "maximum": 9999, "examples": [4] }, "level": { "title": "Level", "description": "Level of the input in that state; on unless stated.\n\nIf wrong: the wait is over at once, whatever the machine does.", "type": "string", "enum": ["on", "off"], "examples": ["on"] }, "settle": { "title": "Settling time", "description": "How long the contact may still show the old state after a command: a dwell before the wait. None unless stated.\n\nUnit: s, ms or min, written behind the number.\n\nIf wrong: the wait sees the old state and is over at once.", "$ref": "#/$defs/time", "examples": ["0.3 s"] } } }, "confirmation": { "description": "a mapping with wait and timeout, with dwell, or with intrinsic", "type": "object", "additionalProperties": false, "properties": { "wait": { "title": "Wait on a signal", "description": "The signal, one of those under machine.signals.\n\nIf wrong: the program waits on something else.", "type": "string", "enum": ["at-speed", "stopped", "released", "clamped", "tool-present", "air", "hold-down"], "examples": ["at-speed"] }, "timeout": { "title": "Timeout", "description": "How long the wait lasts before the controller alarms.\n\nUnit: s, ms or min, written behind the number.\n\nIf wrong: the program hangs, or alarms before the state can be reached.", "$ref": "#/$defs/time", "examples": ["10 s"] }, "dwell": { "title": "Dwell", "description": "A time such as 5 s, or an expression that gives one: numbers, + - * / ( ), min, max, the constants second, minute, mm, inch, rev, and the names rpm, from_rpm, min_rpm, max_rpm, spin_up, spin_down, coast_down.\n\nUnit: s, ms or min behind a number; an expression has units of its own.\n\nIf wrong: the state is taken as reached before it is.", "type": "string", "minLength": 1, "maxLength": 300, "examples": ["20 * second"] }, "intrinsic": { "title": "By the controller itself", "description": "The controller holds the program until the state is reached; here stands how that is known.\n\nIf wrong: the state is taken as reached before it is.", "type": "string", "minLength": 10, "maxLength": 200, "examples": ["the start code waits for the drive's at-speed contact, tried with a slow ramp"] } } }, "own-point": { "title": "Decimal point", "description": "always: every number with decimals has a point; when-needed: whole numbers have none; never: the point is implied, and the number counts least increments.\n\nIf wrong: a control that counts least increments reads X50 as 0.050 mm; the opposite mistake moves a thousand times too far.", "type": "string", "enum": ["always", "when-needed", "never"], "examples": ["always"] }, "own-trailing-zeros": { "title": "Zeros at the end", "description": "keep: 1.500; drop: 1.5 and 10.; one: 1.5 and 10.0 (at least one digit behind the point).\n\nIf wrong: a number without decimals may be read in least increments.", "type": "string", "enum": ["keep", "drop", "one"], "examples": ["keep"] }, "own-leading-zero": { "title": "Zero before the point", "description": "keep: 0.5; drop: .5\n\nIf wrong: the word is a syntax error.", "type": "string", "enum": ["keep", "drop"], "examples": ["keep"] }, "own-plus": { "title": "Plus sign", "description": "Whether a positive number with a direction (axes, arc centres) has a + sign.\n\nIf wrong: the word is a syntax error, or an old control takes it as unsigned.", "$ref": "#/$defs/yesNo", "examples": ["no"] }, "own-suppressed-zeros": { "title": "Zeros left out", "description": "With an implied point: which zeros are left out. leading: X12500 is 12.500; trailing: the number is read from the left; none: all digits stand.\n\nIf wrong: every coordinate is wrong by powers of ten.", "type": "string", "enum": ["leading", "trailing", "none"], "examples": ["leading"] }, "own-digits": { "title": "Digits of a number", "description": "With an implied point: how many digits a number has before zeros at its end are left out.\n\nUnit: digits.\n\nIf wrong: every coordinate is wrong by powers of ten.", "type": "integer", "minimum": 1, "maximum": 12, "examples": [7] }, "own-whole-digits": { "title": "Digits before the point", "description": "Most digits before the point, or none for no limit.\n\nUnit: digits.\n\nIf wrong: the word alarms, or its first digits are lost and the axis goes to another place.", "anyOf": [{ "title": "None", "description": "As many as the number has.", "type": "string", "const": "none" }, { "type": "integer", "minimum": 1, "maximum": 12 }], "examples": ["none"] } } };
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
  var pattern5 = new RegExp("^[A-Za-z0-9]{1,8}$", "u");
  var pattern6 = new RegExp("^[A-Z]$", "u");
  var pattern7 = new RegExp("^(none|[GM]\\d{1,3}(\\.\\d)?)$", "u");
  var pattern9 = new RegExp("^\\d{1,5}(\\.\\d{1,5})? (mm|in)/min$", "u");
  var pattern22 = new RegExp("^(none|[A-Z])$", "u");
  var pattern23 = new RegExp("^(none|\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$", "u");
  var pattern25 = new RegExp("^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$", "u");
  var pattern26 = new RegExp("^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$", "u");
  var pattern44 = new RegExp("^(none|[A-Z]0|[GM]\\d{1,3}(\\.\\d)?)$", "u");
  var pattern78 = new RegExp("^M\\d{1,3}$", "u");
  var pattern88 = new RegExp("^(none|with-tool-word|[GM]\\d{1,3}(\\.\\d)?)$", "u");
  var pattern90 = new RegExp("^(none|(/([1-9] )?)?[GM]\\d{1,3}(\\.\\d)?)$", "u");
  var pattern92 = new RegExp("^[GM]\\d{1,3}$", "u");
  var pattern97 = new RegExp("^\\d{1,6}(\\.\\d{1,6})? ?(s|ms|min)$", "u");
  var pattern112 = new RegExp("^[a-z][a-z0-9-]{0,30}$", "u");
  var pattern117 = new RegExp("^[1-9]$", "u");
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
          if (!pattern97.test(data2)) {
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
          if (!pattern25.test(data0)) {
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
          if (!pattern25.test(data0)) {
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
          if (!pattern97.test(data1)) {
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
      if (data.file !== void 0) {
        let data13 = data.file;
        if (data13 && typeof data13 == "object" && !Array.isArray(data13)) {
          for (const key2 in data13) {
            if (!func1.call(schema31.properties.file.properties, key2)) {
              const err38 = { instancePath: instancePath + "/file", schemaPath: "#/properties/file/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key2 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err38];
              } else {
                vErrors.push(err38);
              }
              errors++;
            }
          }
          if (data13.extension !== void 0) {
            let data14 = data13.extension;
            if (typeof data14 === "string") {
              if (!pattern5.test(data14)) {
                const err39 = { instancePath: instancePath + "/file/extension", schemaPath: "#/properties/file/properties/extension/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9]{1,8}$" }, message: 'must match pattern "^[A-Za-z0-9]{1,8}$"' };
                if (vErrors === null) {
                  vErrors = [err39];
                } else {
                  vErrors.push(err39);
                }
                errors++;
              }
            } else {
              const err40 = { instancePath: instancePath + "/file/extension", schemaPath: "#/properties/file/properties/extension/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err40];
              } else {
                vErrors.push(err40);
              }
              errors++;
            }
          }
          if (data13["line-end"] !== void 0) {
            let data15 = data13["line-end"];
            if (typeof data15 !== "string") {
              const err41 = { instancePath: instancePath + "/file/line-end", schemaPath: "#/properties/file/properties/line-end/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err41];
              } else {
                vErrors.push(err41);
              }
              errors++;
            }
            if (!(data15 === "lf" || data15 === "crlf" || data15 === "cr")) {
              const err42 = { instancePath: instancePath + "/file/line-end", schemaPath: "#/properties/file/properties/line-end/enum", keyword: "enum", params: { allowedValues: schema31.properties.file.properties["line-end"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err42];
              } else {
                vErrors.push(err42);
              }
              errors++;
            }
          }
          if (data13["last-line-end"] !== void 0) {
            let data16 = data13["last-line-end"];
            if (typeof data16 !== "string") {
              const err43 = { instancePath: instancePath + "/file/last-line-end", schemaPath: "#/$defs/yesNo/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err43];
              } else {
                vErrors.push(err43);
              }
              errors++;
            }
            if (!(data16 === "yes" || data16 === "no")) {
              const err44 = { instancePath: instancePath + "/file/last-line-end", schemaPath: "#/$defs/yesNo/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err44];
              } else {
                vErrors.push(err44);
              }
              errors++;
            }
          }
          if (data13["end-of-block"] !== void 0) {
            let data17 = data13["end-of-block"];
            if (typeof data17 !== "string") {
              const err45 = { instancePath: instancePath + "/file/end-of-block", schemaPath: "#/properties/file/properties/end-of-block/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err45];
              } else {
                vErrors.push(err45);
              }
              errors++;
            }
            if (!(data17 === "none" || data17 === "semicolon" || data17 === "asterisk")) {
              const err46 = { instancePath: instancePath + "/file/end-of-block", schemaPath: "#/properties/file/properties/end-of-block/enum", keyword: "enum", params: { allowedValues: schema31.properties.file.properties["end-of-block"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err46];
              } else {
                vErrors.push(err46);
              }
              errors++;
            }
          }
          if (data13.delimiter !== void 0) {
            let data18 = data13.delimiter;
            if (typeof data18 !== "string") {
              const err47 = { instancePath: instancePath + "/file/delimiter", schemaPath: "#/properties/file/properties/delimiter/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err47];
              } else {
                vErrors.push(err47);
              }
              errors++;
            }
            if (!(data18 === "none" || data18 === "percent")) {
              const err48 = { instancePath: instancePath + "/file/delimiter", schemaPath: "#/properties/file/properties/delimiter/enum", keyword: "enum", params: { allowedValues: schema31.properties.file.properties.delimiter.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err48];
              } else {
                vErrors.push(err48);
              }
              errors++;
            }
          }
          if (data13["program-number"] !== void 0) {
            let data19 = data13["program-number"];
            const _errs43 = errors;
            let valid12 = false;
            const _errs44 = errors;
            if (typeof data19 !== "string") {
              const err49 = { instancePath: instancePath + "/file/program-number", schemaPath: "#/properties/file/properties/program-number/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err49];
              } else {
                vErrors.push(err49);
              }
              errors++;
            }
            if ("none" !== data19) {
              const err50 = { instancePath: instancePath + "/file/program-number", schemaPath: "#/properties/file/properties/program-number/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
              if (vErrors === null) {
                vErrors = [err50];
              } else {
                vErrors.push(err50);
              }
              errors++;
            }
            var _valid0 = _errs44 === errors;
            valid12 = valid12 || _valid0;
            const _errs46 = errors;
            if (data19 && typeof data19 == "object" && !Array.isArray(data19)) {
              for (const key3 in data19) {
                if (!(key3 === "letter" || key3 === "digits" || key3 === "from" || key3 === "to")) {
                  const err51 = { instancePath: instancePath + "/file/program-number", schemaPath: "#/properties/file/properties/program-number/anyOf/1/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key3 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err51];
                  } else {
                    vErrors.push(err51);
                  }
                  errors++;
                }
              }
              if (data19.letter !== void 0) {
                let data20 = data19.letter;
                if (typeof data20 !== "string") {
                  const err52 = { instancePath: instancePath + "/file/program-number/letter", schemaPath: "#/properties/file/properties/program-number/anyOf/1/properties/letter/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err52];
                  } else {
                    vErrors.push(err52);
                  }
                  errors++;
                }
                if (!(data20 === "O" || data20 === ":" || data20 === "%")) {
                  const err53 = { instancePath: instancePath + "/file/program-number/letter", schemaPath: "#/properties/file/properties/program-number/anyOf/1/properties/letter/enum", keyword: "enum", params: { allowedValues: schema31.properties.file.properties["program-number"].anyOf[1].properties.letter.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err53];
                  } else {
                    vErrors.push(err53);
                  }
                  errors++;
                }
              }
              if (data19.digits !== void 0) {
                let data21 = data19.digits;
                if (!(typeof data21 == "number" && (!(data21 % 1) && !isNaN(data21)) && isFinite(data21))) {
                  const err54 = { instancePath: instancePath + "/file/program-number/digits", schemaPath: "#/properties/file/properties/program-number/anyOf/1/properties/digits/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err54];
                  } else {
                    vErrors.push(err54);
                  }
                  errors++;
                }
                if (typeof data21 == "number" && isFinite(data21)) {
                  if (data21 > 8 || isNaN(data21)) {
                    const err55 = { instancePath: instancePath + "/file/program-number/digits", schemaPath: "#/properties/file/properties/program-number/anyOf/1/properties/digits/maximum", keyword: "maximum", params: { comparison: "<=", limit: 8 }, message: "must be <= 8" };
                    if (vErrors === null) {
                      vErrors = [err55];
                    } else {
                      vErrors.push(err55);
                    }
                    errors++;
                  }
                  if (data21 < 1 || isNaN(data21)) {
                    const err56 = { instancePath: instancePath + "/file/program-number/digits", schemaPath: "#/properties/file/properties/program-number/anyOf/1/properties/digits/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err56];
                    } else {
                      vErrors.push(err56);
                    }
                    errors++;
                  }
                }
              }
              if (data19.from !== void 0) {
                let data22 = data19.from;
                if (!(typeof data22 == "number" && (!(data22 % 1) && !isNaN(data22)) && isFinite(data22))) {
                  const err57 = { instancePath: instancePath + "/file/program-number/from", schemaPath: "#/properties/file/properties/program-number/anyOf/1/properties/from/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err57];
                  } else {
                    vErrors.push(err57);
                  }
                  errors++;
                }
                if (typeof data22 == "number" && isFinite(data22)) {
                  if (data22 > 99999999 || isNaN(data22)) {
                    const err58 = { instancePath: instancePath + "/file/program-number/from", schemaPath: "#/properties/file/properties/program-number/anyOf/1/properties/from/maximum", keyword: "maximum", params: { comparison: "<=", limit: 99999999 }, message: "must be <= 99999999" };
                    if (vErrors === null) {
                      vErrors = [err58];
                    } else {
                      vErrors.push(err58);
                    }
                    errors++;
                  }
                  if (data22 < 0 || isNaN(data22)) {
                    const err59 = { instancePath: instancePath + "/file/program-number/from", schemaPath: "#/properties/file/properties/program-number/anyOf/1/properties/from/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err59];
                    } else {
                      vErrors.push(err59);
                    }
                    errors++;
                  }
                }
              }
              if (data19.to !== void 0) {
                let data23 = data19.to;
                if (!(typeof data23 == "number" && (!(data23 % 1) && !isNaN(data23)) && isFinite(data23))) {
                  const err60 = { instancePath: instancePath + "/file/program-number/to", schemaPath: "#/properties/file/properties/program-number/anyOf/1/properties/to/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err60];
                  } else {
                    vErrors.push(err60);
                  }
                  errors++;
                }
                if (typeof data23 == "number" && isFinite(data23)) {
                  if (data23 > 99999999 || isNaN(data23)) {
                    const err61 = { instancePath: instancePath + "/file/program-number/to", schemaPath: "#/properties/file/properties/program-number/anyOf/1/properties/to/maximum", keyword: "maximum", params: { comparison: "<=", limit: 99999999 }, message: "must be <= 99999999" };
                    if (vErrors === null) {
                      vErrors = [err61];
                    } else {
                      vErrors.push(err61);
                    }
                    errors++;
                  }
                  if (data23 < 0 || isNaN(data23)) {
                    const err62 = { instancePath: instancePath + "/file/program-number/to", schemaPath: "#/properties/file/properties/program-number/anyOf/1/properties/to/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err62];
                    } else {
                      vErrors.push(err62);
                    }
                    errors++;
                  }
                }
              }
            } else {
              const err63 = { instancePath: instancePath + "/file/program-number", schemaPath: "#/properties/file/properties/program-number/anyOf/1/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err63];
              } else {
                vErrors.push(err63);
              }
              errors++;
            }
            var _valid0 = _errs46 === errors;
            valid12 = valid12 || _valid0;
            if (!valid12) {
              const err64 = { instancePath: instancePath + "/file/program-number", schemaPath: "#/properties/file/properties/program-number/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err64];
              } else {
                vErrors.push(err64);
              }
              errors++;
            } else {
              errors = _errs43;
              if (vErrors !== null) {
                if (_errs43) {
                  vErrors.length = _errs43;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data13["byte-order-mark"] !== void 0) {
            let data24 = data13["byte-order-mark"];
            if (typeof data24 !== "string") {
              const err65 = { instancePath: instancePath + "/file/byte-order-mark", schemaPath: "#/$defs/yesNo/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err65];
              } else {
                vErrors.push(err65);
              }
              errors++;
            }
            if (!(data24 === "yes" || data24 === "no")) {
              const err66 = { instancePath: instancePath + "/file/byte-order-mark", schemaPath: "#/$defs/yesNo/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err66];
              } else {
                vErrors.push(err66);
              }
              errors++;
            }
          }
          if (data13.leader !== void 0) {
            let data25 = data13.leader;
            if (!(typeof data25 == "number" && (!(data25 % 1) && !isNaN(data25)) && isFinite(data25))) {
              const err67 = { instancePath: instancePath + "/file/leader", schemaPath: "#/properties/file/properties/leader/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
              if (vErrors === null) {
                vErrors = [err67];
              } else {
                vErrors.push(err67);
              }
              errors++;
            }
            if (typeof data25 == "number" && isFinite(data25)) {
              if (data25 > 100 || isNaN(data25)) {
                const err68 = { instancePath: instancePath + "/file/leader", schemaPath: "#/properties/file/properties/leader/maximum", keyword: "maximum", params: { comparison: "<=", limit: 100 }, message: "must be <= 100" };
                if (vErrors === null) {
                  vErrors = [err68];
                } else {
                  vErrors.push(err68);
                }
                errors++;
              }
              if (data25 < 0 || isNaN(data25)) {
                const err69 = { instancePath: instancePath + "/file/leader", schemaPath: "#/properties/file/properties/leader/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                if (vErrors === null) {
                  vErrors = [err69];
                } else {
                  vErrors.push(err69);
                }
                errors++;
              }
            }
          }
          if (data13["blank-lines"] !== void 0) {
            let data26 = data13["blank-lines"];
            if (typeof data26 !== "string") {
              const err70 = { instancePath: instancePath + "/file/blank-lines", schemaPath: "#/properties/file/properties/blank-lines/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err70];
              } else {
                vErrors.push(err70);
              }
              errors++;
            }
            if (!(data26 === "between-sections" || data26 === "skipped" || data26 === "none")) {
              const err71 = { instancePath: instancePath + "/file/blank-lines", schemaPath: "#/properties/file/properties/blank-lines/enum", keyword: "enum", params: { allowedValues: schema31.properties.file.properties["blank-lines"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err71];
              } else {
                vErrors.push(err71);
              }
              errors++;
            }
          }
          if (data13.characters !== void 0) {
            let data27 = data13.characters;
            if (typeof data27 !== "string") {
              const err72 = { instancePath: instancePath + "/file/characters", schemaPath: "#/properties/file/properties/characters/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err72];
              } else {
                vErrors.push(err72);
              }
              errors++;
            }
            if (!(data27 === "upper" || data27 === "ascii" || data27 === "utf-8")) {
              const err73 = { instancePath: instancePath + "/file/characters", schemaPath: "#/properties/file/properties/characters/enum", keyword: "enum", params: { allowedValues: schema31.properties.file.properties.characters.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err73];
              } else {
                vErrors.push(err73);
              }
              errors++;
            }
          }
        } else {
          const err74 = { instancePath: instancePath + "/file", schemaPath: "#/properties/file/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err74];
          } else {
            vErrors.push(err74);
          }
          errors++;
        }
      }
      if (data.comments !== void 0) {
        let data28 = data.comments;
        if (data28 && typeof data28 == "object" && !Array.isArray(data28)) {
          for (const key4 in data28) {
            if (!(key4 === "style" || key4 === "longest" || key4 === "place")) {
              const err75 = { instancePath: instancePath + "/comments", schemaPath: "#/properties/comments/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key4 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err75];
              } else {
                vErrors.push(err75);
              }
              errors++;
            }
          }
          if (data28.style !== void 0) {
            let data29 = data28.style;
            if (typeof data29 !== "string") {
              const err76 = { instancePath: instancePath + "/comments/style", schemaPath: "#/properties/comments/properties/style/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err76];
              } else {
                vErrors.push(err76);
              }
              errors++;
            }
            if (!(data29 === "parentheses" || data29 === "semicolon" || data29 === "none")) {
              const err77 = { instancePath: instancePath + "/comments/style", schemaPath: "#/properties/comments/properties/style/enum", keyword: "enum", params: { allowedValues: schema31.properties.comments.properties.style.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err77];
              } else {
                vErrors.push(err77);
              }
              errors++;
            }
          }
          if (data28.longest !== void 0) {
            let data30 = data28.longest;
            if (!(typeof data30 == "number" && (!(data30 % 1) && !isNaN(data30)) && isFinite(data30))) {
              const err78 = { instancePath: instancePath + "/comments/longest", schemaPath: "#/properties/comments/properties/longest/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
              if (vErrors === null) {
                vErrors = [err78];
              } else {
                vErrors.push(err78);
              }
              errors++;
            }
            if (typeof data30 == "number" && isFinite(data30)) {
              if (data30 > 200 || isNaN(data30)) {
                const err79 = { instancePath: instancePath + "/comments/longest", schemaPath: "#/properties/comments/properties/longest/maximum", keyword: "maximum", params: { comparison: "<=", limit: 200 }, message: "must be <= 200" };
                if (vErrors === null) {
                  vErrors = [err79];
                } else {
                  vErrors.push(err79);
                }
                errors++;
              }
              if (data30 < 8 || isNaN(data30)) {
                const err80 = { instancePath: instancePath + "/comments/longest", schemaPath: "#/properties/comments/properties/longest/minimum", keyword: "minimum", params: { comparison: ">=", limit: 8 }, message: "must be >= 8" };
                if (vErrors === null) {
                  vErrors = [err80];
                } else {
                  vErrors.push(err80);
                }
                errors++;
              }
            }
          }
          if (data28.place !== void 0) {
            let data31 = data28.place;
            if (typeof data31 !== "string") {
              const err81 = { instancePath: instancePath + "/comments/place", schemaPath: "#/properties/comments/properties/place/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err81];
              } else {
                vErrors.push(err81);
              }
              errors++;
            }
            if (!(data31 === "anywhere" || data31 === "own-block")) {
              const err82 = { instancePath: instancePath + "/comments/place", schemaPath: "#/properties/comments/properties/place/enum", keyword: "enum", params: { allowedValues: schema31.properties.comments.properties.place.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err82];
              } else {
                vErrors.push(err82);
              }
              errors++;
            }
          }
        } else {
          const err83 = { instancePath: instancePath + "/comments", schemaPath: "#/properties/comments/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err83];
          } else {
            vErrors.push(err83);
          }
          errors++;
        }
      }
      if (data.blocks !== void 0) {
        let data32 = data.blocks;
        if (data32 && typeof data32 == "object" && !Array.isArray(data32)) {
          for (const key5 in data32) {
            if (!func1.call(schema31.properties.blocks.properties, key5)) {
              const err84 = { instancePath: instancePath + "/blocks", schemaPath: "#/properties/blocks/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key5 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err84];
              } else {
                vErrors.push(err84);
              }
              errors++;
            }
          }
          if (data32.number !== void 0) {
            let data33 = data32.number;
            const _errs79 = errors;
            let valid17 = false;
            const _errs80 = errors;
            if (typeof data33 !== "string") {
              const err85 = { instancePath: instancePath + "/blocks/number", schemaPath: "#/properties/blocks/properties/number/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err85];
              } else {
                vErrors.push(err85);
              }
              errors++;
            }
            if ("none" !== data33) {
              const err86 = { instancePath: instancePath + "/blocks/number", schemaPath: "#/properties/blocks/properties/number/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
              if (vErrors === null) {
                vErrors = [err86];
              } else {
                vErrors.push(err86);
              }
              errors++;
            }
            var _valid1 = _errs80 === errors;
            valid17 = valid17 || _valid1;
            const _errs82 = errors;
            if (data33 && typeof data33 == "object" && !Array.isArray(data33)) {
              for (const key6 in data33) {
                if (!(key6 === "on" || key6 === "start" || key6 === "step" || key6 === "to" || key6 === "width")) {
                  const err87 = { instancePath: instancePath + "/blocks/number", schemaPath: "#/properties/blocks/properties/number/anyOf/1/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key6 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err87];
                  } else {
                    vErrors.push(err87);
                  }
                  errors++;
                }
              }
              if (data33.on !== void 0) {
                let data34 = data33.on;
                if (typeof data34 !== "string") {
                  const err88 = { instancePath: instancePath + "/blocks/number/on", schemaPath: "#/properties/blocks/properties/number/anyOf/1/properties/on/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err88];
                  } else {
                    vErrors.push(err88);
                  }
                  errors++;
                }
                if (!(data34 === "all" || data34 === "sections")) {
                  const err89 = { instancePath: instancePath + "/blocks/number/on", schemaPath: "#/properties/blocks/properties/number/anyOf/1/properties/on/enum", keyword: "enum", params: { allowedValues: schema31.properties.blocks.properties.number.anyOf[1].properties.on.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err89];
                  } else {
                    vErrors.push(err89);
                  }
                  errors++;
                }
              }
              if (data33.start !== void 0) {
                let data35 = data33.start;
                if (!(typeof data35 == "number" && (!(data35 % 1) && !isNaN(data35)) && isFinite(data35))) {
                  const err90 = { instancePath: instancePath + "/blocks/number/start", schemaPath: "#/properties/blocks/properties/number/anyOf/1/properties/start/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err90];
                  } else {
                    vErrors.push(err90);
                  }
                  errors++;
                }
                if (typeof data35 == "number" && isFinite(data35)) {
                  if (data35 > 99999999 || isNaN(data35)) {
                    const err91 = { instancePath: instancePath + "/blocks/number/start", schemaPath: "#/properties/blocks/properties/number/anyOf/1/properties/start/maximum", keyword: "maximum", params: { comparison: "<=", limit: 99999999 }, message: "must be <= 99999999" };
                    if (vErrors === null) {
                      vErrors = [err91];
                    } else {
                      vErrors.push(err91);
                    }
                    errors++;
                  }
                  if (data35 < 0 || isNaN(data35)) {
                    const err92 = { instancePath: instancePath + "/blocks/number/start", schemaPath: "#/properties/blocks/properties/number/anyOf/1/properties/start/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err92];
                    } else {
                      vErrors.push(err92);
                    }
                    errors++;
                  }
                }
              }
              if (data33.step !== void 0) {
                let data36 = data33.step;
                if (!(typeof data36 == "number" && (!(data36 % 1) && !isNaN(data36)) && isFinite(data36))) {
                  const err93 = { instancePath: instancePath + "/blocks/number/step", schemaPath: "#/properties/blocks/properties/number/anyOf/1/properties/step/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err93];
                  } else {
                    vErrors.push(err93);
                  }
                  errors++;
                }
                if (typeof data36 == "number" && isFinite(data36)) {
                  if (data36 > 1e3 || isNaN(data36)) {
                    const err94 = { instancePath: instancePath + "/blocks/number/step", schemaPath: "#/properties/blocks/properties/number/anyOf/1/properties/step/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e3 }, message: "must be <= 1000" };
                    if (vErrors === null) {
                      vErrors = [err94];
                    } else {
                      vErrors.push(err94);
                    }
                    errors++;
                  }
                  if (data36 < 1 || isNaN(data36)) {
                    const err95 = { instancePath: instancePath + "/blocks/number/step", schemaPath: "#/properties/blocks/properties/number/anyOf/1/properties/step/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err95];
                    } else {
                      vErrors.push(err95);
                    }
                    errors++;
                  }
                }
              }
              if (data33.to !== void 0) {
                let data37 = data33.to;
                if (!(typeof data37 == "number" && (!(data37 % 1) && !isNaN(data37)) && isFinite(data37))) {
                  const err96 = { instancePath: instancePath + "/blocks/number/to", schemaPath: "#/properties/blocks/properties/number/anyOf/1/properties/to/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err96];
                  } else {
                    vErrors.push(err96);
                  }
                  errors++;
                }
                if (typeof data37 == "number" && isFinite(data37)) {
                  if (data37 > 99999999 || isNaN(data37)) {
                    const err97 = { instancePath: instancePath + "/blocks/number/to", schemaPath: "#/properties/blocks/properties/number/anyOf/1/properties/to/maximum", keyword: "maximum", params: { comparison: "<=", limit: 99999999 }, message: "must be <= 99999999" };
                    if (vErrors === null) {
                      vErrors = [err97];
                    } else {
                      vErrors.push(err97);
                    }
                    errors++;
                  }
                  if (data37 < 1 || isNaN(data37)) {
                    const err98 = { instancePath: instancePath + "/blocks/number/to", schemaPath: "#/properties/blocks/properties/number/anyOf/1/properties/to/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err98];
                    } else {
                      vErrors.push(err98);
                    }
                    errors++;
                  }
                }
              }
              if (data33.width !== void 0) {
                let data38 = data33.width;
                if (!(typeof data38 == "number" && (!(data38 % 1) && !isNaN(data38)) && isFinite(data38))) {
                  const err99 = { instancePath: instancePath + "/blocks/number/width", schemaPath: "#/properties/blocks/properties/number/anyOf/1/properties/width/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err99];
                  } else {
                    vErrors.push(err99);
                  }
                  errors++;
                }
                if (typeof data38 == "number" && isFinite(data38)) {
                  if (data38 > 8 || isNaN(data38)) {
                    const err100 = { instancePath: instancePath + "/blocks/number/width", schemaPath: "#/properties/blocks/properties/number/anyOf/1/properties/width/maximum", keyword: "maximum", params: { comparison: "<=", limit: 8 }, message: "must be <= 8" };
                    if (vErrors === null) {
                      vErrors = [err100];
                    } else {
                      vErrors.push(err100);
                    }
                    errors++;
                  }
                  if (data38 < 0 || isNaN(data38)) {
                    const err101 = { instancePath: instancePath + "/blocks/number/width", schemaPath: "#/properties/blocks/properties/number/anyOf/1/properties/width/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err101];
                    } else {
                      vErrors.push(err101);
                    }
                    errors++;
                  }
                }
              }
            } else {
              const err102 = { instancePath: instancePath + "/blocks/number", schemaPath: "#/properties/blocks/properties/number/anyOf/1/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err102];
              } else {
                vErrors.push(err102);
              }
              errors++;
            }
            var _valid1 = _errs82 === errors;
            valid17 = valid17 || _valid1;
            if (!valid17) {
              const err103 = { instancePath: instancePath + "/blocks/number", schemaPath: "#/properties/blocks/properties/number/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err103];
              } else {
                vErrors.push(err103);
              }
              errors++;
            } else {
              errors = _errs79;
              if (vErrors !== null) {
                if (_errs79) {
                  vErrors.length = _errs79;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data32.separator !== void 0) {
            let data39 = data32.separator;
            if (typeof data39 !== "string") {
              const err104 = { instancePath: instancePath + "/blocks/separator", schemaPath: "#/properties/blocks/properties/separator/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err104];
              } else {
                vErrors.push(err104);
              }
              errors++;
            }
            if (!(data39 === "none" || data39 === "blank" || data39 === "tab")) {
              const err105 = { instancePath: instancePath + "/blocks/separator", schemaPath: "#/properties/blocks/properties/separator/enum", keyword: "enum", params: { allowedValues: schema31.properties.blocks.properties.separator.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err105];
              } else {
                vErrors.push(err105);
              }
              errors++;
            }
          }
          if (data32.order !== void 0) {
            let data40 = data32.order;
            if (Array.isArray(data40)) {
              if (data40.length > 26) {
                const err106 = { instancePath: instancePath + "/blocks/order", schemaPath: "#/properties/blocks/properties/order/maxItems", keyword: "maxItems", params: { limit: 26 }, message: "must NOT have more than 26 items" };
                if (vErrors === null) {
                  vErrors = [err106];
                } else {
                  vErrors.push(err106);
                }
                errors++;
              }
              if (data40.length < 3) {
                const err107 = { instancePath: instancePath + "/blocks/order", schemaPath: "#/properties/blocks/properties/order/minItems", keyword: "minItems", params: { limit: 3 }, message: "must NOT have fewer than 3 items" };
                if (vErrors === null) {
                  vErrors = [err107];
                } else {
                  vErrors.push(err107);
                }
                errors++;
              }
              const len4 = data40.length;
              for (let i4 = 0; i4 < len4; i4++) {
                let data41 = data40[i4];
                if (typeof data41 === "string") {
                  if (!pattern6.test(data41)) {
                    const err108 = { instancePath: instancePath + "/blocks/order/" + i4, schemaPath: "#/$defs/letter/pattern", keyword: "pattern", params: { pattern: "^[A-Z]$" }, message: 'must match pattern "^[A-Z]$"' };
                    if (vErrors === null) {
                      vErrors = [err108];
                    } else {
                      vErrors.push(err108);
                    }
                    errors++;
                  }
                } else {
                  const err109 = { instancePath: instancePath + "/blocks/order/" + i4, schemaPath: "#/$defs/letter/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err109];
                  } else {
                    vErrors.push(err109);
                  }
                  errors++;
                }
              }
              let i5 = data40.length;
              let j0;
              if (i5 > 1) {
                outer0: for (; i5--; ) {
                  for (j0 = i5; j0--; ) {
                    if (func0(data40[i5], data40[j0])) {
                      const err110 = { instancePath: instancePath + "/blocks/order", schemaPath: "#/properties/blocks/properties/order/uniqueItems", keyword: "uniqueItems", params: { i: i5, j: j0 }, message: "must NOT have duplicate items (items ## " + j0 + " and " + i5 + " are identical)" };
                      if (vErrors === null) {
                        vErrors = [err110];
                      } else {
                        vErrors.push(err110);
                      }
                      errors++;
                      break outer0;
                    }
                  }
                }
              }
            } else {
              const err111 = { instancePath: instancePath + "/blocks/order", schemaPath: "#/properties/blocks/properties/order/type", keyword: "type", params: { type: "array" }, message: "must be array" };
              if (vErrors === null) {
                vErrors = [err111];
              } else {
                vErrors.push(err111);
              }
              errors++;
            }
          }
          if (data32.longest !== void 0) {
            let data42 = data32.longest;
            const _errs103 = errors;
            let valid23 = false;
            const _errs104 = errors;
            if (typeof data42 !== "string") {
              const err112 = { instancePath: instancePath + "/blocks/longest", schemaPath: "#/properties/blocks/properties/longest/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err112];
              } else {
                vErrors.push(err112);
              }
              errors++;
            }
            if ("none" !== data42) {
              const err113 = { instancePath: instancePath + "/blocks/longest", schemaPath: "#/properties/blocks/properties/longest/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
              if (vErrors === null) {
                vErrors = [err113];
              } else {
                vErrors.push(err113);
              }
              errors++;
            }
            var _valid2 = _errs104 === errors;
            valid23 = valid23 || _valid2;
            const _errs106 = errors;
            if (!(typeof data42 == "number" && (!(data42 % 1) && !isNaN(data42)) && isFinite(data42))) {
              const err114 = { instancePath: instancePath + "/blocks/longest", schemaPath: "#/properties/blocks/properties/longest/anyOf/1/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
              if (vErrors === null) {
                vErrors = [err114];
              } else {
                vErrors.push(err114);
              }
              errors++;
            }
            if (typeof data42 == "number" && isFinite(data42)) {
              if (data42 > 4e3 || isNaN(data42)) {
                const err115 = { instancePath: instancePath + "/blocks/longest", schemaPath: "#/properties/blocks/properties/longest/anyOf/1/maximum", keyword: "maximum", params: { comparison: "<=", limit: 4e3 }, message: "must be <= 4000" };
                if (vErrors === null) {
                  vErrors = [err115];
                } else {
                  vErrors.push(err115);
                }
                errors++;
              }
              if (data42 < 20 || isNaN(data42)) {
                const err116 = { instancePath: instancePath + "/blocks/longest", schemaPath: "#/properties/blocks/properties/longest/anyOf/1/minimum", keyword: "minimum", params: { comparison: ">=", limit: 20 }, message: "must be >= 20" };
                if (vErrors === null) {
                  vErrors = [err116];
                } else {
                  vErrors.push(err116);
                }
                errors++;
              }
            }
            var _valid2 = _errs106 === errors;
            valid23 = valid23 || _valid2;
            if (!valid23) {
              const err117 = { instancePath: instancePath + "/blocks/longest", schemaPath: "#/properties/blocks/properties/longest/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err117];
              } else {
                vErrors.push(err117);
              }
              errors++;
            } else {
              errors = _errs103;
              if (vErrors !== null) {
                if (_errs103) {
                  vErrors.length = _errs103;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data32["g-words"] !== void 0) {
            let data43 = data32["g-words"];
            if (typeof data43 !== "string") {
              const err118 = { instancePath: instancePath + "/blocks/g-words", schemaPath: "#/properties/blocks/properties/g-words/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err118];
              } else {
                vErrors.push(err118);
              }
              errors++;
            }
            if (!(data43 === "one" || data43 === "any")) {
              const err119 = { instancePath: instancePath + "/blocks/g-words", schemaPath: "#/properties/blocks/properties/g-words/enum", keyword: "enum", params: { allowedValues: schema31.properties.blocks.properties["g-words"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err119];
              } else {
                vErrors.push(err119);
              }
              errors++;
            }
          }
          if (data32["m-words"] !== void 0) {
            let data44 = data32["m-words"];
            if (!(typeof data44 == "number" && (!(data44 % 1) && !isNaN(data44)) && isFinite(data44))) {
              const err120 = { instancePath: instancePath + "/blocks/m-words", schemaPath: "#/properties/blocks/properties/m-words/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
              if (vErrors === null) {
                vErrors = [err120];
              } else {
                vErrors.push(err120);
              }
              errors++;
            }
            if (typeof data44 == "number" && isFinite(data44)) {
              if (data44 > 8 || isNaN(data44)) {
                const err121 = { instancePath: instancePath + "/blocks/m-words", schemaPath: "#/properties/blocks/properties/m-words/maximum", keyword: "maximum", params: { comparison: "<=", limit: 8 }, message: "must be <= 8" };
                if (vErrors === null) {
                  vErrors = [err121];
                } else {
                  vErrors.push(err121);
                }
                errors++;
              }
              if (data44 < 1 || isNaN(data44)) {
                const err122 = { instancePath: instancePath + "/blocks/m-words", schemaPath: "#/properties/blocks/properties/m-words/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                if (vErrors === null) {
                  vErrors = [err122];
                } else {
                  vErrors.push(err122);
                }
                errors++;
              }
            }
          }
          if (data32.modes !== void 0) {
            let data45 = data32.modes;
            if (typeof data45 !== "string") {
              const err123 = { instancePath: instancePath + "/blocks/modes", schemaPath: "#/properties/blocks/properties/modes/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err123];
              } else {
                vErrors.push(err123);
              }
              errors++;
            }
            if (!(data45 === "together" || data45 === "apart")) {
              const err124 = { instancePath: instancePath + "/blocks/modes", schemaPath: "#/properties/blocks/properties/modes/enum", keyword: "enum", params: { allowedValues: schema31.properties.blocks.properties.modes.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err124];
              } else {
                vErrors.push(err124);
              }
              errors++;
            }
          }
          if (data32.sections !== void 0) {
            let data46 = data32.sections;
            if (data46 && typeof data46 == "object" && !Array.isArray(data46)) {
              for (const key7 in data46) {
                if (!(key7 === "begin-at" || key7 === "mark" || key7 === "comments" || key7 === "modes")) {
                  const err125 = { instancePath: instancePath + "/blocks/sections", schemaPath: "#/properties/blocks/properties/sections/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key7 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err125];
                  } else {
                    vErrors.push(err125);
                  }
                  errors++;
                }
              }
              if (data46["begin-at"] !== void 0) {
                let data47 = data46["begin-at"];
                if (typeof data47 !== "string") {
                  const err126 = { instancePath: instancePath + "/blocks/sections/begin-at", schemaPath: "#/properties/blocks/properties/sections/properties/begin-at/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err126];
                  } else {
                    vErrors.push(err126);
                  }
                  errors++;
                }
                if (!(data47 === "operation" || data47 === "tool")) {
                  const err127 = { instancePath: instancePath + "/blocks/sections/begin-at", schemaPath: "#/properties/blocks/properties/sections/properties/begin-at/enum", keyword: "enum", params: { allowedValues: schema31.properties.blocks.properties.sections.properties["begin-at"].enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err127];
                  } else {
                    vErrors.push(err127);
                  }
                  errors++;
                }
              }
              if (data46.mark !== void 0) {
                let data48 = data46.mark;
                if (typeof data48 !== "string") {
                  const err128 = { instancePath: instancePath + "/blocks/sections/mark", schemaPath: "#/properties/blocks/properties/sections/properties/mark/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err128];
                  } else {
                    vErrors.push(err128);
                  }
                  errors++;
                }
                if (!(data48 === "N" || data48 === "colon")) {
                  const err129 = { instancePath: instancePath + "/blocks/sections/mark", schemaPath: "#/properties/blocks/properties/sections/properties/mark/enum", keyword: "enum", params: { allowedValues: schema31.properties.blocks.properties.sections.properties.mark.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err129];
                  } else {
                    vErrors.push(err129);
                  }
                  errors++;
                }
              }
              if (data46.comments !== void 0) {
                let data49 = data46.comments;
                if (typeof data49 !== "string") {
                  const err130 = { instancePath: instancePath + "/blocks/sections/comments", schemaPath: "#/$defs/yesNo/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err130];
                  } else {
                    vErrors.push(err130);
                  }
                  errors++;
                }
                if (!(data49 === "yes" || data49 === "no")) {
                  const err131 = { instancePath: instancePath + "/blocks/sections/comments", schemaPath: "#/$defs/yesNo/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err131];
                  } else {
                    vErrors.push(err131);
                  }
                  errors++;
                }
              }
              if (data46.modes !== void 0) {
                let data50 = data46.modes;
                if (typeof data50 !== "string") {
                  const err132 = { instancePath: instancePath + "/blocks/sections/modes", schemaPath: "#/properties/blocks/properties/sections/properties/modes/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err132];
                  } else {
                    vErrors.push(err132);
                  }
                  errors++;
                }
                if (!(data50 === "restated" || data50 === "kept")) {
                  const err133 = { instancePath: instancePath + "/blocks/sections/modes", schemaPath: "#/properties/blocks/properties/sections/properties/modes/enum", keyword: "enum", params: { allowedValues: schema31.properties.blocks.properties.sections.properties.modes.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err133];
                  } else {
                    vErrors.push(err133);
                  }
                  errors++;
                }
              }
            } else {
              const err134 = { instancePath: instancePath + "/blocks/sections", schemaPath: "#/properties/blocks/properties/sections/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err134];
              } else {
                vErrors.push(err134);
              }
              errors++;
            }
          }
          if (data32.delete !== void 0) {
            let data51 = data32.delete;
            if (data51 && typeof data51 == "object" && !Array.isArray(data51)) {
              for (const key8 in data51) {
                if (!(key8 === "mark" || key8 === "place")) {
                  const err135 = { instancePath: instancePath + "/blocks/delete", schemaPath: "#/properties/blocks/properties/delete/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key8 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err135];
                  } else {
                    vErrors.push(err135);
                  }
                  errors++;
                }
              }
              if (data51.mark !== void 0) {
                let data52 = data51.mark;
                if (typeof data52 !== "string") {
                  const err136 = { instancePath: instancePath + "/blocks/delete/mark", schemaPath: "#/properties/blocks/properties/delete/properties/mark/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err136];
                  } else {
                    vErrors.push(err136);
                  }
                  errors++;
                }
                if (!(data52 === "none" || data52 === "slash" || data52 === "numbered")) {
                  const err137 = { instancePath: instancePath + "/blocks/delete/mark", schemaPath: "#/properties/blocks/properties/delete/properties/mark/enum", keyword: "enum", params: { allowedValues: schema31.properties.blocks.properties.delete.properties.mark.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err137];
                  } else {
                    vErrors.push(err137);
                  }
                  errors++;
                }
              }
              if (data51.place !== void 0) {
                let data53 = data51.place;
                if (typeof data53 !== "string") {
                  const err138 = { instancePath: instancePath + "/blocks/delete/place", schemaPath: "#/properties/blocks/properties/delete/properties/place/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err138];
                  } else {
                    vErrors.push(err138);
                  }
                  errors++;
                }
                if (!(data53 === "before-number" || data53 === "after-number")) {
                  const err139 = { instancePath: instancePath + "/blocks/delete/place", schemaPath: "#/properties/blocks/properties/delete/properties/place/enum", keyword: "enum", params: { allowedValues: schema31.properties.blocks.properties.delete.properties.place.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err139];
                  } else {
                    vErrors.push(err139);
                  }
                  errors++;
                }
              }
            } else {
              const err140 = { instancePath: instancePath + "/blocks/delete", schemaPath: "#/properties/blocks/properties/delete/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err140];
              } else {
                vErrors.push(err140);
              }
              errors++;
            }
          }
          if (data32["most-words"] !== void 0) {
            let data54 = data32["most-words"];
            const _errs134 = errors;
            let valid27 = false;
            const _errs135 = errors;
            if (typeof data54 !== "string") {
              const err141 = { instancePath: instancePath + "/blocks/most-words", schemaPath: "#/properties/blocks/properties/most-words/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err141];
              } else {
                vErrors.push(err141);
              }
              errors++;
            }
            if ("none" !== data54) {
              const err142 = { instancePath: instancePath + "/blocks/most-words", schemaPath: "#/properties/blocks/properties/most-words/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
              if (vErrors === null) {
                vErrors = [err142];
              } else {
                vErrors.push(err142);
              }
              errors++;
            }
            var _valid3 = _errs135 === errors;
            valid27 = valid27 || _valid3;
            const _errs137 = errors;
            if (!(typeof data54 == "number" && (!(data54 % 1) && !isNaN(data54)) && isFinite(data54))) {
              const err143 = { instancePath: instancePath + "/blocks/most-words", schemaPath: "#/properties/blocks/properties/most-words/anyOf/1/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
              if (vErrors === null) {
                vErrors = [err143];
              } else {
                vErrors.push(err143);
              }
              errors++;
            }
            if (typeof data54 == "number" && isFinite(data54)) {
              if (data54 > 40 || isNaN(data54)) {
                const err144 = { instancePath: instancePath + "/blocks/most-words", schemaPath: "#/properties/blocks/properties/most-words/anyOf/1/maximum", keyword: "maximum", params: { comparison: "<=", limit: 40 }, message: "must be <= 40" };
                if (vErrors === null) {
                  vErrors = [err144];
                } else {
                  vErrors.push(err144);
                }
                errors++;
              }
              if (data54 < 2 || isNaN(data54)) {
                const err145 = { instancePath: instancePath + "/blocks/most-words", schemaPath: "#/properties/blocks/properties/most-words/anyOf/1/minimum", keyword: "minimum", params: { comparison: ">=", limit: 2 }, message: "must be >= 2" };
                if (vErrors === null) {
                  vErrors = [err145];
                } else {
                  vErrors.push(err145);
                }
                errors++;
              }
            }
            var _valid3 = _errs137 === errors;
            valid27 = valid27 || _valid3;
            if (!valid27) {
              const err146 = { instancePath: instancePath + "/blocks/most-words", schemaPath: "#/properties/blocks/properties/most-words/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err146];
              } else {
                vErrors.push(err146);
              }
              errors++;
            } else {
              errors = _errs134;
              if (vErrors !== null) {
                if (_errs134) {
                  vErrors.length = _errs134;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data32["stops-act"] !== void 0) {
            let data55 = data32["stops-act"];
            if (typeof data55 !== "string") {
              const err147 = { instancePath: instancePath + "/blocks/stops-act", schemaPath: "#/properties/blocks/properties/stops-act/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err147];
              } else {
                vErrors.push(err147);
              }
              errors++;
            }
            if (!(data55 === "before-motion" || data55 === "after-motion")) {
              const err148 = { instancePath: instancePath + "/blocks/stops-act", schemaPath: "#/properties/blocks/properties/stops-act/enum", keyword: "enum", params: { allowedValues: schema31.properties.blocks.properties["stops-act"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err148];
              } else {
                vErrors.push(err148);
              }
              errors++;
            }
          }
          if (data32.executes !== void 0) {
            let data56 = data32.executes;
            if (typeof data56 !== "string") {
              const err149 = { instancePath: instancePath + "/blocks/executes", schemaPath: "#/properties/blocks/properties/executes/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err149];
              } else {
                vErrors.push(err149);
              }
              errors++;
            }
            if (!(data56 === "by-kind" || data56 === "left-to-right")) {
              const err150 = { instancePath: instancePath + "/blocks/executes", schemaPath: "#/properties/blocks/properties/executes/enum", keyword: "enum", params: { allowedValues: schema31.properties.blocks.properties.executes.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err150];
              } else {
                vErrors.push(err150);
              }
              errors++;
            }
          }
        } else {
          const err151 = { instancePath: instancePath + "/blocks", schemaPath: "#/properties/blocks/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err151];
          } else {
            vErrors.push(err151);
          }
          errors++;
        }
      }
      if (data.numbers !== void 0) {
        let data57 = data.numbers;
        if (data57 && typeof data57 == "object" && !Array.isArray(data57)) {
          for (const key9 in data57) {
            if (!func1.call(schema31.properties.numbers.properties, key9)) {
              const err152 = { instancePath: instancePath + "/numbers", schemaPath: "#/properties/numbers/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key9 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err152];
              } else {
                vErrors.push(err152);
              }
              errors++;
            }
          }
          if (data57.point !== void 0) {
            let data58 = data57.point;
            if (typeof data58 !== "string") {
              const err153 = { instancePath: instancePath + "/numbers/point", schemaPath: "#/properties/numbers/properties/point/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err153];
              } else {
                vErrors.push(err153);
              }
              errors++;
            }
            if (!(data58 === "always" || data58 === "when-needed" || data58 === "never")) {
              const err154 = { instancePath: instancePath + "/numbers/point", schemaPath: "#/properties/numbers/properties/point/enum", keyword: "enum", params: { allowedValues: schema31.properties.numbers.properties.point.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err154];
              } else {
                vErrors.push(err154);
              }
              errors++;
            }
          }
          if (data57["trailing-zeros"] !== void 0) {
            let data59 = data57["trailing-zeros"];
            if (typeof data59 !== "string") {
              const err155 = { instancePath: instancePath + "/numbers/trailing-zeros", schemaPath: "#/properties/numbers/properties/trailing-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err155];
              } else {
                vErrors.push(err155);
              }
              errors++;
            }
            if (!(data59 === "keep" || data59 === "drop" || data59 === "one")) {
              const err156 = { instancePath: instancePath + "/numbers/trailing-zeros", schemaPath: "#/properties/numbers/properties/trailing-zeros/enum", keyword: "enum", params: { allowedValues: schema31.properties.numbers.properties["trailing-zeros"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err156];
              } else {
                vErrors.push(err156);
              }
              errors++;
            }
          }
          if (data57["leading-zero"] !== void 0) {
            let data60 = data57["leading-zero"];
            if (typeof data60 !== "string") {
              const err157 = { instancePath: instancePath + "/numbers/leading-zero", schemaPath: "#/properties/numbers/properties/leading-zero/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err157];
              } else {
                vErrors.push(err157);
              }
              errors++;
            }
            if (!(data60 === "keep" || data60 === "drop")) {
              const err158 = { instancePath: instancePath + "/numbers/leading-zero", schemaPath: "#/properties/numbers/properties/leading-zero/enum", keyword: "enum", params: { allowedValues: schema31.properties.numbers.properties["leading-zero"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err158];
              } else {
                vErrors.push(err158);
              }
              errors++;
            }
          }
          if (data57.plus !== void 0) {
            let data61 = data57.plus;
            if (typeof data61 !== "string") {
              const err159 = { instancePath: instancePath + "/numbers/plus", schemaPath: "#/$defs/yesNo/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err159];
              } else {
                vErrors.push(err159);
              }
              errors++;
            }
            if (!(data61 === "yes" || data61 === "no")) {
              const err160 = { instancePath: instancePath + "/numbers/plus", schemaPath: "#/$defs/yesNo/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err160];
              } else {
                vErrors.push(err160);
              }
              errors++;
            }
          }
          if (data57["suppressed-zeros"] !== void 0) {
            let data62 = data57["suppressed-zeros"];
            if (typeof data62 !== "string") {
              const err161 = { instancePath: instancePath + "/numbers/suppressed-zeros", schemaPath: "#/properties/numbers/properties/suppressed-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err161];
              } else {
                vErrors.push(err161);
              }
              errors++;
            }
            if (!(data62 === "leading" || data62 === "trailing" || data62 === "none")) {
              const err162 = { instancePath: instancePath + "/numbers/suppressed-zeros", schemaPath: "#/properties/numbers/properties/suppressed-zeros/enum", keyword: "enum", params: { allowedValues: schema31.properties.numbers.properties["suppressed-zeros"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err162];
              } else {
                vErrors.push(err162);
              }
              errors++;
            }
          }
          if (data57.digits !== void 0) {
            let data63 = data57.digits;
            if (!(typeof data63 == "number" && (!(data63 % 1) && !isNaN(data63)) && isFinite(data63))) {
              const err163 = { instancePath: instancePath + "/numbers/digits", schemaPath: "#/properties/numbers/properties/digits/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
              if (vErrors === null) {
                vErrors = [err163];
              } else {
                vErrors.push(err163);
              }
              errors++;
            }
            if (typeof data63 == "number" && isFinite(data63)) {
              if (data63 > 12 || isNaN(data63)) {
                const err164 = { instancePath: instancePath + "/numbers/digits", schemaPath: "#/properties/numbers/properties/digits/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                if (vErrors === null) {
                  vErrors = [err164];
                } else {
                  vErrors.push(err164);
                }
                errors++;
              }
              if (data63 < 1 || isNaN(data63)) {
                const err165 = { instancePath: instancePath + "/numbers/digits", schemaPath: "#/properties/numbers/properties/digits/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                if (vErrors === null) {
                  vErrors = [err165];
                } else {
                  vErrors.push(err165);
                }
                errors++;
              }
            }
          }
          if (data57["whole-digits"] !== void 0) {
            let data64 = data57["whole-digits"];
            const _errs160 = errors;
            let valid30 = false;
            const _errs161 = errors;
            if (typeof data64 !== "string") {
              const err166 = { instancePath: instancePath + "/numbers/whole-digits", schemaPath: "#/properties/numbers/properties/whole-digits/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err166];
              } else {
                vErrors.push(err166);
              }
              errors++;
            }
            if ("none" !== data64) {
              const err167 = { instancePath: instancePath + "/numbers/whole-digits", schemaPath: "#/properties/numbers/properties/whole-digits/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
              if (vErrors === null) {
                vErrors = [err167];
              } else {
                vErrors.push(err167);
              }
              errors++;
            }
            var _valid4 = _errs161 === errors;
            valid30 = valid30 || _valid4;
            const _errs163 = errors;
            if (!(typeof data64 == "number" && (!(data64 % 1) && !isNaN(data64)) && isFinite(data64))) {
              const err168 = { instancePath: instancePath + "/numbers/whole-digits", schemaPath: "#/properties/numbers/properties/whole-digits/anyOf/1/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
              if (vErrors === null) {
                vErrors = [err168];
              } else {
                vErrors.push(err168);
              }
              errors++;
            }
            if (typeof data64 == "number" && isFinite(data64)) {
              if (data64 > 12 || isNaN(data64)) {
                const err169 = { instancePath: instancePath + "/numbers/whole-digits", schemaPath: "#/properties/numbers/properties/whole-digits/anyOf/1/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                if (vErrors === null) {
                  vErrors = [err169];
                } else {
                  vErrors.push(err169);
                }
                errors++;
              }
              if (data64 < 1 || isNaN(data64)) {
                const err170 = { instancePath: instancePath + "/numbers/whole-digits", schemaPath: "#/properties/numbers/properties/whole-digits/anyOf/1/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                if (vErrors === null) {
                  vErrors = [err170];
                } else {
                  vErrors.push(err170);
                }
                errors++;
              }
            }
            var _valid4 = _errs163 === errors;
            valid30 = valid30 || _valid4;
            if (!valid30) {
              const err171 = { instancePath: instancePath + "/numbers/whole-digits", schemaPath: "#/properties/numbers/properties/whole-digits/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err171];
              } else {
                vErrors.push(err171);
              }
              errors++;
            } else {
              errors = _errs160;
              if (vErrors !== null) {
                if (_errs160) {
                  vErrors.length = _errs160;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data57.length !== void 0) {
            let data65 = data57.length;
            if (data65 && typeof data65 == "object" && !Array.isArray(data65)) {
              for (const key10 in data65) {
                if (!func1.call(schema31.properties.numbers.properties.length.properties, key10)) {
                  const err172 = { instancePath: instancePath + "/numbers/length", schemaPath: "#/properties/numbers/properties/length/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key10 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err172];
                  } else {
                    vErrors.push(err172);
                  }
                  errors++;
                }
              }
              if (data65.mm !== void 0) {
                let data66 = data65.mm;
                if (!(typeof data66 == "number" && (!(data66 % 1) && !isNaN(data66)) && isFinite(data66))) {
                  const err173 = { instancePath: instancePath + "/numbers/length/mm", schemaPath: "#/properties/numbers/properties/length/properties/mm/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err173];
                  } else {
                    vErrors.push(err173);
                  }
                  errors++;
                }
                if (typeof data66 == "number" && isFinite(data66)) {
                  if (data66 > 7 || isNaN(data66)) {
                    const err174 = { instancePath: instancePath + "/numbers/length/mm", schemaPath: "#/properties/numbers/properties/length/properties/mm/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                    if (vErrors === null) {
                      vErrors = [err174];
                    } else {
                      vErrors.push(err174);
                    }
                    errors++;
                  }
                  if (data66 < 0 || isNaN(data66)) {
                    const err175 = { instancePath: instancePath + "/numbers/length/mm", schemaPath: "#/properties/numbers/properties/length/properties/mm/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err175];
                    } else {
                      vErrors.push(err175);
                    }
                    errors++;
                  }
                }
              }
              if (data65.inch !== void 0) {
                let data67 = data65.inch;
                if (!(typeof data67 == "number" && (!(data67 % 1) && !isNaN(data67)) && isFinite(data67))) {
                  const err176 = { instancePath: instancePath + "/numbers/length/inch", schemaPath: "#/properties/numbers/properties/length/properties/inch/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err176];
                  } else {
                    vErrors.push(err176);
                  }
                  errors++;
                }
                if (typeof data67 == "number" && isFinite(data67)) {
                  if (data67 > 6 || isNaN(data67)) {
                    const err177 = { instancePath: instancePath + "/numbers/length/inch", schemaPath: "#/properties/numbers/properties/length/properties/inch/maximum", keyword: "maximum", params: { comparison: "<=", limit: 6 }, message: "must be <= 6" };
                    if (vErrors === null) {
                      vErrors = [err177];
                    } else {
                      vErrors.push(err177);
                    }
                    errors++;
                  }
                  if (data67 < 0 || isNaN(data67)) {
                    const err178 = { instancePath: instancePath + "/numbers/length/inch", schemaPath: "#/properties/numbers/properties/length/properties/inch/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err178];
                    } else {
                      vErrors.push(err178);
                    }
                    errors++;
                  }
                }
              }
              if (data65.point !== void 0) {
                let data68 = data65.point;
                if (typeof data68 !== "string") {
                  const err179 = { instancePath: instancePath + "/numbers/length/point", schemaPath: "#/$defs/own-point/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err179];
                  } else {
                    vErrors.push(err179);
                  }
                  errors++;
                }
                if (!(data68 === "always" || data68 === "when-needed" || data68 === "never")) {
                  const err180 = { instancePath: instancePath + "/numbers/length/point", schemaPath: "#/$defs/own-point/enum", keyword: "enum", params: { allowedValues: schema37.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err180];
                  } else {
                    vErrors.push(err180);
                  }
                  errors++;
                }
              }
              if (data65["trailing-zeros"] !== void 0) {
                let data69 = data65["trailing-zeros"];
                if (typeof data69 !== "string") {
                  const err181 = { instancePath: instancePath + "/numbers/length/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err181];
                  } else {
                    vErrors.push(err181);
                  }
                  errors++;
                }
                if (!(data69 === "keep" || data69 === "drop" || data69 === "one")) {
                  const err182 = { instancePath: instancePath + "/numbers/length/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/enum", keyword: "enum", params: { allowedValues: schema38.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err182];
                  } else {
                    vErrors.push(err182);
                  }
                  errors++;
                }
              }
              if (data65["leading-zero"] !== void 0) {
                let data70 = data65["leading-zero"];
                if (typeof data70 !== "string") {
                  const err183 = { instancePath: instancePath + "/numbers/length/leading-zero", schemaPath: "#/$defs/own-leading-zero/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err183];
                  } else {
                    vErrors.push(err183);
                  }
                  errors++;
                }
                if (!(data70 === "keep" || data70 === "drop")) {
                  const err184 = { instancePath: instancePath + "/numbers/length/leading-zero", schemaPath: "#/$defs/own-leading-zero/enum", keyword: "enum", params: { allowedValues: schema39.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err184];
                  } else {
                    vErrors.push(err184);
                  }
                  errors++;
                }
              }
              if (data65.plus !== void 0) {
                let data71 = data65.plus;
                if (typeof data71 !== "string") {
                  const err185 = { instancePath: instancePath + "/numbers/length/plus", schemaPath: "#/$defs/own-plus/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err185];
                  } else {
                    vErrors.push(err185);
                  }
                  errors++;
                }
                if (!(data71 === "yes" || data71 === "no")) {
                  const err186 = { instancePath: instancePath + "/numbers/length/plus", schemaPath: "#/$defs/own-plus/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err186];
                  } else {
                    vErrors.push(err186);
                  }
                  errors++;
                }
              }
              if (data65["suppressed-zeros"] !== void 0) {
                let data72 = data65["suppressed-zeros"];
                if (typeof data72 !== "string") {
                  const err187 = { instancePath: instancePath + "/numbers/length/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err187];
                  } else {
                    vErrors.push(err187);
                  }
                  errors++;
                }
                if (!(data72 === "leading" || data72 === "trailing" || data72 === "none")) {
                  const err188 = { instancePath: instancePath + "/numbers/length/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/enum", keyword: "enum", params: { allowedValues: schema41.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err188];
                  } else {
                    vErrors.push(err188);
                  }
                  errors++;
                }
              }
              if (data65.digits !== void 0) {
                let data73 = data65.digits;
                if (!(typeof data73 == "number" && (!(data73 % 1) && !isNaN(data73)) && isFinite(data73))) {
                  const err189 = { instancePath: instancePath + "/numbers/length/digits", schemaPath: "#/$defs/own-digits/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err189];
                  } else {
                    vErrors.push(err189);
                  }
                  errors++;
                }
                if (typeof data73 == "number" && isFinite(data73)) {
                  if (data73 > 12 || isNaN(data73)) {
                    const err190 = { instancePath: instancePath + "/numbers/length/digits", schemaPath: "#/$defs/own-digits/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err190];
                    } else {
                      vErrors.push(err190);
                    }
                    errors++;
                  }
                  if (data73 < 1 || isNaN(data73)) {
                    const err191 = { instancePath: instancePath + "/numbers/length/digits", schemaPath: "#/$defs/own-digits/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err191];
                    } else {
                      vErrors.push(err191);
                    }
                    errors++;
                  }
                }
              }
              if (data65["whole-digits"] !== void 0) {
                let data74 = data65["whole-digits"];
                const _errs192 = errors;
                let valid39 = false;
                const _errs193 = errors;
                if (typeof data74 !== "string") {
                  const err192 = { instancePath: instancePath + "/numbers/length/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err192];
                  } else {
                    vErrors.push(err192);
                  }
                  errors++;
                }
                if ("none" !== data74) {
                  const err193 = { instancePath: instancePath + "/numbers/length/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
                  if (vErrors === null) {
                    vErrors = [err193];
                  } else {
                    vErrors.push(err193);
                  }
                  errors++;
                }
                var _valid5 = _errs193 === errors;
                valid39 = valid39 || _valid5;
                const _errs195 = errors;
                if (!(typeof data74 == "number" && (!(data74 % 1) && !isNaN(data74)) && isFinite(data74))) {
                  const err194 = { instancePath: instancePath + "/numbers/length/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err194];
                  } else {
                    vErrors.push(err194);
                  }
                  errors++;
                }
                if (typeof data74 == "number" && isFinite(data74)) {
                  if (data74 > 12 || isNaN(data74)) {
                    const err195 = { instancePath: instancePath + "/numbers/length/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err195];
                    } else {
                      vErrors.push(err195);
                    }
                    errors++;
                  }
                  if (data74 < 1 || isNaN(data74)) {
                    const err196 = { instancePath: instancePath + "/numbers/length/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err196];
                    } else {
                      vErrors.push(err196);
                    }
                    errors++;
                  }
                }
                var _valid5 = _errs195 === errors;
                valid39 = valid39 || _valid5;
                if (!valid39) {
                  const err197 = { instancePath: instancePath + "/numbers/length/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err197];
                  } else {
                    vErrors.push(err197);
                  }
                  errors++;
                } else {
                  errors = _errs192;
                  if (vErrors !== null) {
                    if (_errs192) {
                      vErrors.length = _errs192;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
            } else {
              const err198 = { instancePath: instancePath + "/numbers/length", schemaPath: "#/properties/numbers/properties/length/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err198];
              } else {
                vErrors.push(err198);
              }
              errors++;
            }
          }
          if (data57["arc-centre"] !== void 0) {
            let data75 = data57["arc-centre"];
            if (data75 && typeof data75 == "object" && !Array.isArray(data75)) {
              for (const key11 in data75) {
                if (!func1.call(schema31.properties.numbers.properties["arc-centre"].properties, key11)) {
                  const err199 = { instancePath: instancePath + "/numbers/arc-centre", schemaPath: "#/properties/numbers/properties/arc-centre/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key11 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err199];
                  } else {
                    vErrors.push(err199);
                  }
                  errors++;
                }
              }
              if (data75.mm !== void 0) {
                let data76 = data75.mm;
                if (!(typeof data76 == "number" && (!(data76 % 1) && !isNaN(data76)) && isFinite(data76))) {
                  const err200 = { instancePath: instancePath + "/numbers/arc-centre/mm", schemaPath: "#/properties/numbers/properties/arc-centre/properties/mm/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err200];
                  } else {
                    vErrors.push(err200);
                  }
                  errors++;
                }
                if (typeof data76 == "number" && isFinite(data76)) {
                  if (data76 > 7 || isNaN(data76)) {
                    const err201 = { instancePath: instancePath + "/numbers/arc-centre/mm", schemaPath: "#/properties/numbers/properties/arc-centre/properties/mm/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                    if (vErrors === null) {
                      vErrors = [err201];
                    } else {
                      vErrors.push(err201);
                    }
                    errors++;
                  }
                  if (data76 < 0 || isNaN(data76)) {
                    const err202 = { instancePath: instancePath + "/numbers/arc-centre/mm", schemaPath: "#/properties/numbers/properties/arc-centre/properties/mm/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err202];
                    } else {
                      vErrors.push(err202);
                    }
                    errors++;
                  }
                }
              }
              if (data75.inch !== void 0) {
                let data77 = data75.inch;
                if (!(typeof data77 == "number" && (!(data77 % 1) && !isNaN(data77)) && isFinite(data77))) {
                  const err203 = { instancePath: instancePath + "/numbers/arc-centre/inch", schemaPath: "#/properties/numbers/properties/arc-centre/properties/inch/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err203];
                  } else {
                    vErrors.push(err203);
                  }
                  errors++;
                }
                if (typeof data77 == "number" && isFinite(data77)) {
                  if (data77 > 6 || isNaN(data77)) {
                    const err204 = { instancePath: instancePath + "/numbers/arc-centre/inch", schemaPath: "#/properties/numbers/properties/arc-centre/properties/inch/maximum", keyword: "maximum", params: { comparison: "<=", limit: 6 }, message: "must be <= 6" };
                    if (vErrors === null) {
                      vErrors = [err204];
                    } else {
                      vErrors.push(err204);
                    }
                    errors++;
                  }
                  if (data77 < 0 || isNaN(data77)) {
                    const err205 = { instancePath: instancePath + "/numbers/arc-centre/inch", schemaPath: "#/properties/numbers/properties/arc-centre/properties/inch/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err205];
                    } else {
                      vErrors.push(err205);
                    }
                    errors++;
                  }
                }
              }
              if (data75.point !== void 0) {
                let data78 = data75.point;
                if (typeof data78 !== "string") {
                  const err206 = { instancePath: instancePath + "/numbers/arc-centre/point", schemaPath: "#/$defs/own-point/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err206];
                  } else {
                    vErrors.push(err206);
                  }
                  errors++;
                }
                if (!(data78 === "always" || data78 === "when-needed" || data78 === "never")) {
                  const err207 = { instancePath: instancePath + "/numbers/arc-centre/point", schemaPath: "#/$defs/own-point/enum", keyword: "enum", params: { allowedValues: schema37.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err207];
                  } else {
                    vErrors.push(err207);
                  }
                  errors++;
                }
              }
              if (data75["trailing-zeros"] !== void 0) {
                let data79 = data75["trailing-zeros"];
                if (typeof data79 !== "string") {
                  const err208 = { instancePath: instancePath + "/numbers/arc-centre/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err208];
                  } else {
                    vErrors.push(err208);
                  }
                  errors++;
                }
                if (!(data79 === "keep" || data79 === "drop" || data79 === "one")) {
                  const err209 = { instancePath: instancePath + "/numbers/arc-centre/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/enum", keyword: "enum", params: { allowedValues: schema38.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err209];
                  } else {
                    vErrors.push(err209);
                  }
                  errors++;
                }
              }
              if (data75["leading-zero"] !== void 0) {
                let data80 = data75["leading-zero"];
                if (typeof data80 !== "string") {
                  const err210 = { instancePath: instancePath + "/numbers/arc-centre/leading-zero", schemaPath: "#/$defs/own-leading-zero/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err210];
                  } else {
                    vErrors.push(err210);
                  }
                  errors++;
                }
                if (!(data80 === "keep" || data80 === "drop")) {
                  const err211 = { instancePath: instancePath + "/numbers/arc-centre/leading-zero", schemaPath: "#/$defs/own-leading-zero/enum", keyword: "enum", params: { allowedValues: schema39.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err211];
                  } else {
                    vErrors.push(err211);
                  }
                  errors++;
                }
              }
              if (data75.plus !== void 0) {
                let data81 = data75.plus;
                if (typeof data81 !== "string") {
                  const err212 = { instancePath: instancePath + "/numbers/arc-centre/plus", schemaPath: "#/$defs/own-plus/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err212];
                  } else {
                    vErrors.push(err212);
                  }
                  errors++;
                }
                if (!(data81 === "yes" || data81 === "no")) {
                  const err213 = { instancePath: instancePath + "/numbers/arc-centre/plus", schemaPath: "#/$defs/own-plus/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err213];
                  } else {
                    vErrors.push(err213);
                  }
                  errors++;
                }
              }
              if (data75["suppressed-zeros"] !== void 0) {
                let data82 = data75["suppressed-zeros"];
                if (typeof data82 !== "string") {
                  const err214 = { instancePath: instancePath + "/numbers/arc-centre/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err214];
                  } else {
                    vErrors.push(err214);
                  }
                  errors++;
                }
                if (!(data82 === "leading" || data82 === "trailing" || data82 === "none")) {
                  const err215 = { instancePath: instancePath + "/numbers/arc-centre/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/enum", keyword: "enum", params: { allowedValues: schema41.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err215];
                  } else {
                    vErrors.push(err215);
                  }
                  errors++;
                }
              }
              if (data75.digits !== void 0) {
                let data83 = data75.digits;
                if (!(typeof data83 == "number" && (!(data83 % 1) && !isNaN(data83)) && isFinite(data83))) {
                  const err216 = { instancePath: instancePath + "/numbers/arc-centre/digits", schemaPath: "#/$defs/own-digits/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err216];
                  } else {
                    vErrors.push(err216);
                  }
                  errors++;
                }
                if (typeof data83 == "number" && isFinite(data83)) {
                  if (data83 > 12 || isNaN(data83)) {
                    const err217 = { instancePath: instancePath + "/numbers/arc-centre/digits", schemaPath: "#/$defs/own-digits/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err217];
                    } else {
                      vErrors.push(err217);
                    }
                    errors++;
                  }
                  if (data83 < 1 || isNaN(data83)) {
                    const err218 = { instancePath: instancePath + "/numbers/arc-centre/digits", schemaPath: "#/$defs/own-digits/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err218];
                    } else {
                      vErrors.push(err218);
                    }
                    errors++;
                  }
                }
              }
              if (data75["whole-digits"] !== void 0) {
                let data84 = data75["whole-digits"];
                const _errs224 = errors;
                let valid48 = false;
                const _errs225 = errors;
                if (typeof data84 !== "string") {
                  const err219 = { instancePath: instancePath + "/numbers/arc-centre/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err219];
                  } else {
                    vErrors.push(err219);
                  }
                  errors++;
                }
                if ("none" !== data84) {
                  const err220 = { instancePath: instancePath + "/numbers/arc-centre/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
                  if (vErrors === null) {
                    vErrors = [err220];
                  } else {
                    vErrors.push(err220);
                  }
                  errors++;
                }
                var _valid6 = _errs225 === errors;
                valid48 = valid48 || _valid6;
                const _errs227 = errors;
                if (!(typeof data84 == "number" && (!(data84 % 1) && !isNaN(data84)) && isFinite(data84))) {
                  const err221 = { instancePath: instancePath + "/numbers/arc-centre/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err221];
                  } else {
                    vErrors.push(err221);
                  }
                  errors++;
                }
                if (typeof data84 == "number" && isFinite(data84)) {
                  if (data84 > 12 || isNaN(data84)) {
                    const err222 = { instancePath: instancePath + "/numbers/arc-centre/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err222];
                    } else {
                      vErrors.push(err222);
                    }
                    errors++;
                  }
                  if (data84 < 1 || isNaN(data84)) {
                    const err223 = { instancePath: instancePath + "/numbers/arc-centre/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err223];
                    } else {
                      vErrors.push(err223);
                    }
                    errors++;
                  }
                }
                var _valid6 = _errs227 === errors;
                valid48 = valid48 || _valid6;
                if (!valid48) {
                  const err224 = { instancePath: instancePath + "/numbers/arc-centre/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err224];
                  } else {
                    vErrors.push(err224);
                  }
                  errors++;
                } else {
                  errors = _errs224;
                  if (vErrors !== null) {
                    if (_errs224) {
                      vErrors.length = _errs224;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
            } else {
              const err225 = { instancePath: instancePath + "/numbers/arc-centre", schemaPath: "#/properties/numbers/properties/arc-centre/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err225];
              } else {
                vErrors.push(err225);
              }
              errors++;
            }
          }
          if (data57.peck !== void 0) {
            let data85 = data57.peck;
            if (data85 && typeof data85 == "object" && !Array.isArray(data85)) {
              for (const key12 in data85) {
                if (!(key12 === "mm" || key12 === "inch" || key12 === "point" || key12 === "trailing-zeros" || key12 === "leading-zero" || key12 === "plus" || key12 === "suppressed-zeros" || key12 === "digits")) {
                  const err226 = { instancePath: instancePath + "/numbers/peck", schemaPath: "#/properties/numbers/properties/peck/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key12 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err226];
                  } else {
                    vErrors.push(err226);
                  }
                  errors++;
                }
              }
              if (data85.mm !== void 0) {
                let data86 = data85.mm;
                if (!(typeof data86 == "number" && (!(data86 % 1) && !isNaN(data86)) && isFinite(data86))) {
                  const err227 = { instancePath: instancePath + "/numbers/peck/mm", schemaPath: "#/properties/numbers/properties/peck/properties/mm/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err227];
                  } else {
                    vErrors.push(err227);
                  }
                  errors++;
                }
                if (typeof data86 == "number" && isFinite(data86)) {
                  if (data86 > 7 || isNaN(data86)) {
                    const err228 = { instancePath: instancePath + "/numbers/peck/mm", schemaPath: "#/properties/numbers/properties/peck/properties/mm/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                    if (vErrors === null) {
                      vErrors = [err228];
                    } else {
                      vErrors.push(err228);
                    }
                    errors++;
                  }
                  if (data86 < 0 || isNaN(data86)) {
                    const err229 = { instancePath: instancePath + "/numbers/peck/mm", schemaPath: "#/properties/numbers/properties/peck/properties/mm/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err229];
                    } else {
                      vErrors.push(err229);
                    }
                    errors++;
                  }
                }
              }
              if (data85.inch !== void 0) {
                let data87 = data85.inch;
                if (!(typeof data87 == "number" && (!(data87 % 1) && !isNaN(data87)) && isFinite(data87))) {
                  const err230 = { instancePath: instancePath + "/numbers/peck/inch", schemaPath: "#/properties/numbers/properties/peck/properties/inch/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err230];
                  } else {
                    vErrors.push(err230);
                  }
                  errors++;
                }
                if (typeof data87 == "number" && isFinite(data87)) {
                  if (data87 > 6 || isNaN(data87)) {
                    const err231 = { instancePath: instancePath + "/numbers/peck/inch", schemaPath: "#/properties/numbers/properties/peck/properties/inch/maximum", keyword: "maximum", params: { comparison: "<=", limit: 6 }, message: "must be <= 6" };
                    if (vErrors === null) {
                      vErrors = [err231];
                    } else {
                      vErrors.push(err231);
                    }
                    errors++;
                  }
                  if (data87 < 0 || isNaN(data87)) {
                    const err232 = { instancePath: instancePath + "/numbers/peck/inch", schemaPath: "#/properties/numbers/properties/peck/properties/inch/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err232];
                    } else {
                      vErrors.push(err232);
                    }
                    errors++;
                  }
                }
              }
              if (data85.point !== void 0) {
                let data88 = data85.point;
                if (typeof data88 !== "string") {
                  const err233 = { instancePath: instancePath + "/numbers/peck/point", schemaPath: "#/$defs/own-point/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err233];
                  } else {
                    vErrors.push(err233);
                  }
                  errors++;
                }
                if (!(data88 === "always" || data88 === "when-needed" || data88 === "never")) {
                  const err234 = { instancePath: instancePath + "/numbers/peck/point", schemaPath: "#/$defs/own-point/enum", keyword: "enum", params: { allowedValues: schema37.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err234];
                  } else {
                    vErrors.push(err234);
                  }
                  errors++;
                }
              }
              if (data85["trailing-zeros"] !== void 0) {
                let data89 = data85["trailing-zeros"];
                if (typeof data89 !== "string") {
                  const err235 = { instancePath: instancePath + "/numbers/peck/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err235];
                  } else {
                    vErrors.push(err235);
                  }
                  errors++;
                }
                if (!(data89 === "keep" || data89 === "drop" || data89 === "one")) {
                  const err236 = { instancePath: instancePath + "/numbers/peck/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/enum", keyword: "enum", params: { allowedValues: schema38.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err236];
                  } else {
                    vErrors.push(err236);
                  }
                  errors++;
                }
              }
              if (data85["leading-zero"] !== void 0) {
                let data90 = data85["leading-zero"];
                if (typeof data90 !== "string") {
                  const err237 = { instancePath: instancePath + "/numbers/peck/leading-zero", schemaPath: "#/$defs/own-leading-zero/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err237];
                  } else {
                    vErrors.push(err237);
                  }
                  errors++;
                }
                if (!(data90 === "keep" || data90 === "drop")) {
                  const err238 = { instancePath: instancePath + "/numbers/peck/leading-zero", schemaPath: "#/$defs/own-leading-zero/enum", keyword: "enum", params: { allowedValues: schema39.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err238];
                  } else {
                    vErrors.push(err238);
                  }
                  errors++;
                }
              }
              if (data85.plus !== void 0) {
                let data91 = data85.plus;
                if (typeof data91 !== "string") {
                  const err239 = { instancePath: instancePath + "/numbers/peck/plus", schemaPath: "#/$defs/own-plus/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err239];
                  } else {
                    vErrors.push(err239);
                  }
                  errors++;
                }
                if (!(data91 === "yes" || data91 === "no")) {
                  const err240 = { instancePath: instancePath + "/numbers/peck/plus", schemaPath: "#/$defs/own-plus/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err240];
                  } else {
                    vErrors.push(err240);
                  }
                  errors++;
                }
              }
              if (data85["suppressed-zeros"] !== void 0) {
                let data92 = data85["suppressed-zeros"];
                if (typeof data92 !== "string") {
                  const err241 = { instancePath: instancePath + "/numbers/peck/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err241];
                  } else {
                    vErrors.push(err241);
                  }
                  errors++;
                }
                if (!(data92 === "leading" || data92 === "trailing" || data92 === "none")) {
                  const err242 = { instancePath: instancePath + "/numbers/peck/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/enum", keyword: "enum", params: { allowedValues: schema41.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err242];
                  } else {
                    vErrors.push(err242);
                  }
                  errors++;
                }
              }
              if (data85.digits !== void 0) {
                let data93 = data85.digits;
                if (!(typeof data93 == "number" && (!(data93 % 1) && !isNaN(data93)) && isFinite(data93))) {
                  const err243 = { instancePath: instancePath + "/numbers/peck/digits", schemaPath: "#/$defs/own-digits/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err243];
                  } else {
                    vErrors.push(err243);
                  }
                  errors++;
                }
                if (typeof data93 == "number" && isFinite(data93)) {
                  if (data93 > 12 || isNaN(data93)) {
                    const err244 = { instancePath: instancePath + "/numbers/peck/digits", schemaPath: "#/$defs/own-digits/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err244];
                    } else {
                      vErrors.push(err244);
                    }
                    errors++;
                  }
                  if (data93 < 1 || isNaN(data93)) {
                    const err245 = { instancePath: instancePath + "/numbers/peck/digits", schemaPath: "#/$defs/own-digits/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err245];
                    } else {
                      vErrors.push(err245);
                    }
                    errors++;
                  }
                }
              }
            } else {
              const err246 = { instancePath: instancePath + "/numbers/peck", schemaPath: "#/properties/numbers/properties/peck/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err246];
              } else {
                vErrors.push(err246);
              }
              errors++;
            }
          }
          if (data57.angle !== void 0) {
            let data94 = data57.angle;
            const _errs255 = errors;
            let valid56 = false;
            const _errs256 = errors;
            if (!(typeof data94 == "number" && (!(data94 % 1) && !isNaN(data94)) && isFinite(data94))) {
              const err247 = { instancePath: instancePath + "/numbers/angle", schemaPath: "#/properties/numbers/properties/angle/anyOf/0/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
              if (vErrors === null) {
                vErrors = [err247];
              } else {
                vErrors.push(err247);
              }
              errors++;
            }
            if (typeof data94 == "number" && isFinite(data94)) {
              if (data94 > 7 || isNaN(data94)) {
                const err248 = { instancePath: instancePath + "/numbers/angle", schemaPath: "#/properties/numbers/properties/angle/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                if (vErrors === null) {
                  vErrors = [err248];
                } else {
                  vErrors.push(err248);
                }
                errors++;
              }
              if (data94 < 0 || isNaN(data94)) {
                const err249 = { instancePath: instancePath + "/numbers/angle", schemaPath: "#/properties/numbers/properties/angle/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                if (vErrors === null) {
                  vErrors = [err249];
                } else {
                  vErrors.push(err249);
                }
                errors++;
              }
            }
            var _valid7 = _errs256 === errors;
            valid56 = valid56 || _valid7;
            const _errs258 = errors;
            if (data94 && typeof data94 == "object" && !Array.isArray(data94)) {
              for (const key13 in data94) {
                if (!(key13 === "decimals" || key13 === "point" || key13 === "trailing-zeros" || key13 === "leading-zero" || key13 === "plus" || key13 === "suppressed-zeros" || key13 === "digits" || key13 === "whole-digits")) {
                  const err250 = { instancePath: instancePath + "/numbers/angle", schemaPath: "#/properties/numbers/properties/angle/anyOf/1/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key13 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err250];
                  } else {
                    vErrors.push(err250);
                  }
                  errors++;
                }
              }
              if (data94.decimals !== void 0) {
                let data95 = data94.decimals;
                if (!(typeof data95 == "number" && (!(data95 % 1) && !isNaN(data95)) && isFinite(data95))) {
                  const err251 = { instancePath: instancePath + "/numbers/angle/decimals", schemaPath: "#/properties/numbers/properties/angle/anyOf/1/properties/decimals/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err251];
                  } else {
                    vErrors.push(err251);
                  }
                  errors++;
                }
                if (typeof data95 == "number" && isFinite(data95)) {
                  if (data95 > 7 || isNaN(data95)) {
                    const err252 = { instancePath: instancePath + "/numbers/angle/decimals", schemaPath: "#/properties/numbers/properties/angle/anyOf/1/properties/decimals/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                    if (vErrors === null) {
                      vErrors = [err252];
                    } else {
                      vErrors.push(err252);
                    }
                    errors++;
                  }
                  if (data95 < 0 || isNaN(data95)) {
                    const err253 = { instancePath: instancePath + "/numbers/angle/decimals", schemaPath: "#/properties/numbers/properties/angle/anyOf/1/properties/decimals/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err253];
                    } else {
                      vErrors.push(err253);
                    }
                    errors++;
                  }
                }
              }
              if (data94.point !== void 0) {
                let data96 = data94.point;
                if (typeof data96 !== "string") {
                  const err254 = { instancePath: instancePath + "/numbers/angle/point", schemaPath: "#/$defs/own-point/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err254];
                  } else {
                    vErrors.push(err254);
                  }
                  errors++;
                }
                if (!(data96 === "always" || data96 === "when-needed" || data96 === "never")) {
                  const err255 = { instancePath: instancePath + "/numbers/angle/point", schemaPath: "#/$defs/own-point/enum", keyword: "enum", params: { allowedValues: schema37.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err255];
                  } else {
                    vErrors.push(err255);
                  }
                  errors++;
                }
              }
              if (data94["trailing-zeros"] !== void 0) {
                let data97 = data94["trailing-zeros"];
                if (typeof data97 !== "string") {
                  const err256 = { instancePath: instancePath + "/numbers/angle/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err256];
                  } else {
                    vErrors.push(err256);
                  }
                  errors++;
                }
                if (!(data97 === "keep" || data97 === "drop" || data97 === "one")) {
                  const err257 = { instancePath: instancePath + "/numbers/angle/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/enum", keyword: "enum", params: { allowedValues: schema38.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err257];
                  } else {
                    vErrors.push(err257);
                  }
                  errors++;
                }
              }
              if (data94["leading-zero"] !== void 0) {
                let data98 = data94["leading-zero"];
                if (typeof data98 !== "string") {
                  const err258 = { instancePath: instancePath + "/numbers/angle/leading-zero", schemaPath: "#/$defs/own-leading-zero/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err258];
                  } else {
                    vErrors.push(err258);
                  }
                  errors++;
                }
                if (!(data98 === "keep" || data98 === "drop")) {
                  const err259 = { instancePath: instancePath + "/numbers/angle/leading-zero", schemaPath: "#/$defs/own-leading-zero/enum", keyword: "enum", params: { allowedValues: schema39.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err259];
                  } else {
                    vErrors.push(err259);
                  }
                  errors++;
                }
              }
              if (data94.plus !== void 0) {
                let data99 = data94.plus;
                if (typeof data99 !== "string") {
                  const err260 = { instancePath: instancePath + "/numbers/angle/plus", schemaPath: "#/$defs/own-plus/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err260];
                  } else {
                    vErrors.push(err260);
                  }
                  errors++;
                }
                if (!(data99 === "yes" || data99 === "no")) {
                  const err261 = { instancePath: instancePath + "/numbers/angle/plus", schemaPath: "#/$defs/own-plus/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err261];
                  } else {
                    vErrors.push(err261);
                  }
                  errors++;
                }
              }
              if (data94["suppressed-zeros"] !== void 0) {
                let data100 = data94["suppressed-zeros"];
                if (typeof data100 !== "string") {
                  const err262 = { instancePath: instancePath + "/numbers/angle/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err262];
                  } else {
                    vErrors.push(err262);
                  }
                  errors++;
                }
                if (!(data100 === "leading" || data100 === "trailing" || data100 === "none")) {
                  const err263 = { instancePath: instancePath + "/numbers/angle/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/enum", keyword: "enum", params: { allowedValues: schema41.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err263];
                  } else {
                    vErrors.push(err263);
                  }
                  errors++;
                }
              }
              if (data94.digits !== void 0) {
                let data101 = data94.digits;
                if (!(typeof data101 == "number" && (!(data101 % 1) && !isNaN(data101)) && isFinite(data101))) {
                  const err264 = { instancePath: instancePath + "/numbers/angle/digits", schemaPath: "#/$defs/own-digits/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err264];
                  } else {
                    vErrors.push(err264);
                  }
                  errors++;
                }
                if (typeof data101 == "number" && isFinite(data101)) {
                  if (data101 > 12 || isNaN(data101)) {
                    const err265 = { instancePath: instancePath + "/numbers/angle/digits", schemaPath: "#/$defs/own-digits/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err265];
                    } else {
                      vErrors.push(err265);
                    }
                    errors++;
                  }
                  if (data101 < 1 || isNaN(data101)) {
                    const err266 = { instancePath: instancePath + "/numbers/angle/digits", schemaPath: "#/$defs/own-digits/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err266];
                    } else {
                      vErrors.push(err266);
                    }
                    errors++;
                  }
                }
              }
              if (data94["whole-digits"] !== void 0) {
                let data102 = data94["whole-digits"];
                const _errs283 = errors;
                let valid65 = false;
                const _errs284 = errors;
                if (typeof data102 !== "string") {
                  const err267 = { instancePath: instancePath + "/numbers/angle/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err267];
                  } else {
                    vErrors.push(err267);
                  }
                  errors++;
                }
                if ("none" !== data102) {
                  const err268 = { instancePath: instancePath + "/numbers/angle/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
                  if (vErrors === null) {
                    vErrors = [err268];
                  } else {
                    vErrors.push(err268);
                  }
                  errors++;
                }
                var _valid8 = _errs284 === errors;
                valid65 = valid65 || _valid8;
                const _errs286 = errors;
                if (!(typeof data102 == "number" && (!(data102 % 1) && !isNaN(data102)) && isFinite(data102))) {
                  const err269 = { instancePath: instancePath + "/numbers/angle/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err269];
                  } else {
                    vErrors.push(err269);
                  }
                  errors++;
                }
                if (typeof data102 == "number" && isFinite(data102)) {
                  if (data102 > 12 || isNaN(data102)) {
                    const err270 = { instancePath: instancePath + "/numbers/angle/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err270];
                    } else {
                      vErrors.push(err270);
                    }
                    errors++;
                  }
                  if (data102 < 1 || isNaN(data102)) {
                    const err271 = { instancePath: instancePath + "/numbers/angle/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err271];
                    } else {
                      vErrors.push(err271);
                    }
                    errors++;
                  }
                }
                var _valid8 = _errs286 === errors;
                valid65 = valid65 || _valid8;
                if (!valid65) {
                  const err272 = { instancePath: instancePath + "/numbers/angle/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err272];
                  } else {
                    vErrors.push(err272);
                  }
                  errors++;
                } else {
                  errors = _errs283;
                  if (vErrors !== null) {
                    if (_errs283) {
                      vErrors.length = _errs283;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
            } else {
              const err273 = { instancePath: instancePath + "/numbers/angle", schemaPath: "#/properties/numbers/properties/angle/anyOf/1/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err273];
              } else {
                vErrors.push(err273);
              }
              errors++;
            }
            var _valid7 = _errs258 === errors;
            valid56 = valid56 || _valid7;
            if (!valid56) {
              const err274 = { instancePath: instancePath + "/numbers/angle", schemaPath: "#/properties/numbers/properties/angle/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err274];
              } else {
                vErrors.push(err274);
              }
              errors++;
            } else {
              errors = _errs255;
              if (vErrors !== null) {
                if (_errs255) {
                  vErrors.length = _errs255;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data57["feed-per-minute"] !== void 0) {
            let data103 = data57["feed-per-minute"];
            if (data103 && typeof data103 == "object" && !Array.isArray(data103)) {
              for (const key14 in data103) {
                if (!func1.call(schema31.properties.numbers.properties["feed-per-minute"].properties, key14)) {
                  const err275 = { instancePath: instancePath + "/numbers/feed-per-minute", schemaPath: "#/properties/numbers/properties/feed-per-minute/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key14 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err275];
                  } else {
                    vErrors.push(err275);
                  }
                  errors++;
                }
              }
              if (data103.mm !== void 0) {
                let data104 = data103.mm;
                if (!(typeof data104 == "number" && (!(data104 % 1) && !isNaN(data104)) && isFinite(data104))) {
                  const err276 = { instancePath: instancePath + "/numbers/feed-per-minute/mm", schemaPath: "#/properties/numbers/properties/feed-per-minute/properties/mm/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err276];
                  } else {
                    vErrors.push(err276);
                  }
                  errors++;
                }
                if (typeof data104 == "number" && isFinite(data104)) {
                  if (data104 > 7 || isNaN(data104)) {
                    const err277 = { instancePath: instancePath + "/numbers/feed-per-minute/mm", schemaPath: "#/properties/numbers/properties/feed-per-minute/properties/mm/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                    if (vErrors === null) {
                      vErrors = [err277];
                    } else {
                      vErrors.push(err277);
                    }
                    errors++;
                  }
                  if (data104 < 0 || isNaN(data104)) {
                    const err278 = { instancePath: instancePath + "/numbers/feed-per-minute/mm", schemaPath: "#/properties/numbers/properties/feed-per-minute/properties/mm/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err278];
                    } else {
                      vErrors.push(err278);
                    }
                    errors++;
                  }
                }
              }
              if (data103.inch !== void 0) {
                let data105 = data103.inch;
                if (!(typeof data105 == "number" && (!(data105 % 1) && !isNaN(data105)) && isFinite(data105))) {
                  const err279 = { instancePath: instancePath + "/numbers/feed-per-minute/inch", schemaPath: "#/properties/numbers/properties/feed-per-minute/properties/inch/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err279];
                  } else {
                    vErrors.push(err279);
                  }
                  errors++;
                }
                if (typeof data105 == "number" && isFinite(data105)) {
                  if (data105 > 6 || isNaN(data105)) {
                    const err280 = { instancePath: instancePath + "/numbers/feed-per-minute/inch", schemaPath: "#/properties/numbers/properties/feed-per-minute/properties/inch/maximum", keyword: "maximum", params: { comparison: "<=", limit: 6 }, message: "must be <= 6" };
                    if (vErrors === null) {
                      vErrors = [err280];
                    } else {
                      vErrors.push(err280);
                    }
                    errors++;
                  }
                  if (data105 < 0 || isNaN(data105)) {
                    const err281 = { instancePath: instancePath + "/numbers/feed-per-minute/inch", schemaPath: "#/properties/numbers/properties/feed-per-minute/properties/inch/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err281];
                    } else {
                      vErrors.push(err281);
                    }
                    errors++;
                  }
                }
              }
              if (data103.point !== void 0) {
                let data106 = data103.point;
                if (typeof data106 !== "string") {
                  const err282 = { instancePath: instancePath + "/numbers/feed-per-minute/point", schemaPath: "#/$defs/own-point/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err282];
                  } else {
                    vErrors.push(err282);
                  }
                  errors++;
                }
                if (!(data106 === "always" || data106 === "when-needed" || data106 === "never")) {
                  const err283 = { instancePath: instancePath + "/numbers/feed-per-minute/point", schemaPath: "#/$defs/own-point/enum", keyword: "enum", params: { allowedValues: schema37.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err283];
                  } else {
                    vErrors.push(err283);
                  }
                  errors++;
                }
              }
              if (data103["trailing-zeros"] !== void 0) {
                let data107 = data103["trailing-zeros"];
                if (typeof data107 !== "string") {
                  const err284 = { instancePath: instancePath + "/numbers/feed-per-minute/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err284];
                  } else {
                    vErrors.push(err284);
                  }
                  errors++;
                }
                if (!(data107 === "keep" || data107 === "drop" || data107 === "one")) {
                  const err285 = { instancePath: instancePath + "/numbers/feed-per-minute/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/enum", keyword: "enum", params: { allowedValues: schema38.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err285];
                  } else {
                    vErrors.push(err285);
                  }
                  errors++;
                }
              }
              if (data103["leading-zero"] !== void 0) {
                let data108 = data103["leading-zero"];
                if (typeof data108 !== "string") {
                  const err286 = { instancePath: instancePath + "/numbers/feed-per-minute/leading-zero", schemaPath: "#/$defs/own-leading-zero/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err286];
                  } else {
                    vErrors.push(err286);
                  }
                  errors++;
                }
                if (!(data108 === "keep" || data108 === "drop")) {
                  const err287 = { instancePath: instancePath + "/numbers/feed-per-minute/leading-zero", schemaPath: "#/$defs/own-leading-zero/enum", keyword: "enum", params: { allowedValues: schema39.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err287];
                  } else {
                    vErrors.push(err287);
                  }
                  errors++;
                }
              }
              if (data103.plus !== void 0) {
                let data109 = data103.plus;
                if (typeof data109 !== "string") {
                  const err288 = { instancePath: instancePath + "/numbers/feed-per-minute/plus", schemaPath: "#/$defs/own-plus/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err288];
                  } else {
                    vErrors.push(err288);
                  }
                  errors++;
                }
                if (!(data109 === "yes" || data109 === "no")) {
                  const err289 = { instancePath: instancePath + "/numbers/feed-per-minute/plus", schemaPath: "#/$defs/own-plus/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err289];
                  } else {
                    vErrors.push(err289);
                  }
                  errors++;
                }
              }
              if (data103["suppressed-zeros"] !== void 0) {
                let data110 = data103["suppressed-zeros"];
                if (typeof data110 !== "string") {
                  const err290 = { instancePath: instancePath + "/numbers/feed-per-minute/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err290];
                  } else {
                    vErrors.push(err290);
                  }
                  errors++;
                }
                if (!(data110 === "leading" || data110 === "trailing" || data110 === "none")) {
                  const err291 = { instancePath: instancePath + "/numbers/feed-per-minute/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/enum", keyword: "enum", params: { allowedValues: schema41.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err291];
                  } else {
                    vErrors.push(err291);
                  }
                  errors++;
                }
              }
              if (data103.digits !== void 0) {
                let data111 = data103.digits;
                if (!(typeof data111 == "number" && (!(data111 % 1) && !isNaN(data111)) && isFinite(data111))) {
                  const err292 = { instancePath: instancePath + "/numbers/feed-per-minute/digits", schemaPath: "#/$defs/own-digits/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err292];
                  } else {
                    vErrors.push(err292);
                  }
                  errors++;
                }
                if (typeof data111 == "number" && isFinite(data111)) {
                  if (data111 > 12 || isNaN(data111)) {
                    const err293 = { instancePath: instancePath + "/numbers/feed-per-minute/digits", schemaPath: "#/$defs/own-digits/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err293];
                    } else {
                      vErrors.push(err293);
                    }
                    errors++;
                  }
                  if (data111 < 1 || isNaN(data111)) {
                    const err294 = { instancePath: instancePath + "/numbers/feed-per-minute/digits", schemaPath: "#/$defs/own-digits/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err294];
                    } else {
                      vErrors.push(err294);
                    }
                    errors++;
                  }
                }
              }
              if (data103["whole-digits"] !== void 0) {
                let data112 = data103["whole-digits"];
                const _errs315 = errors;
                let valid74 = false;
                const _errs316 = errors;
                if (typeof data112 !== "string") {
                  const err295 = { instancePath: instancePath + "/numbers/feed-per-minute/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err295];
                  } else {
                    vErrors.push(err295);
                  }
                  errors++;
                }
                if ("none" !== data112) {
                  const err296 = { instancePath: instancePath + "/numbers/feed-per-minute/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
                  if (vErrors === null) {
                    vErrors = [err296];
                  } else {
                    vErrors.push(err296);
                  }
                  errors++;
                }
                var _valid9 = _errs316 === errors;
                valid74 = valid74 || _valid9;
                const _errs318 = errors;
                if (!(typeof data112 == "number" && (!(data112 % 1) && !isNaN(data112)) && isFinite(data112))) {
                  const err297 = { instancePath: instancePath + "/numbers/feed-per-minute/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err297];
                  } else {
                    vErrors.push(err297);
                  }
                  errors++;
                }
                if (typeof data112 == "number" && isFinite(data112)) {
                  if (data112 > 12 || isNaN(data112)) {
                    const err298 = { instancePath: instancePath + "/numbers/feed-per-minute/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err298];
                    } else {
                      vErrors.push(err298);
                    }
                    errors++;
                  }
                  if (data112 < 1 || isNaN(data112)) {
                    const err299 = { instancePath: instancePath + "/numbers/feed-per-minute/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err299];
                    } else {
                      vErrors.push(err299);
                    }
                    errors++;
                  }
                }
                var _valid9 = _errs318 === errors;
                valid74 = valid74 || _valid9;
                if (!valid74) {
                  const err300 = { instancePath: instancePath + "/numbers/feed-per-minute/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err300];
                  } else {
                    vErrors.push(err300);
                  }
                  errors++;
                } else {
                  errors = _errs315;
                  if (vErrors !== null) {
                    if (_errs315) {
                      vErrors.length = _errs315;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
            } else {
              const err301 = { instancePath: instancePath + "/numbers/feed-per-minute", schemaPath: "#/properties/numbers/properties/feed-per-minute/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err301];
              } else {
                vErrors.push(err301);
              }
              errors++;
            }
          }
          if (data57["feed-per-revolution"] !== void 0) {
            let data113 = data57["feed-per-revolution"];
            if (data113 && typeof data113 == "object" && !Array.isArray(data113)) {
              for (const key15 in data113) {
                if (!func1.call(schema31.properties.numbers.properties["feed-per-revolution"].properties, key15)) {
                  const err302 = { instancePath: instancePath + "/numbers/feed-per-revolution", schemaPath: "#/properties/numbers/properties/feed-per-revolution/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key15 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err302];
                  } else {
                    vErrors.push(err302);
                  }
                  errors++;
                }
              }
              if (data113.mm !== void 0) {
                let data114 = data113.mm;
                if (!(typeof data114 == "number" && (!(data114 % 1) && !isNaN(data114)) && isFinite(data114))) {
                  const err303 = { instancePath: instancePath + "/numbers/feed-per-revolution/mm", schemaPath: "#/properties/numbers/properties/feed-per-revolution/properties/mm/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err303];
                  } else {
                    vErrors.push(err303);
                  }
                  errors++;
                }
                if (typeof data114 == "number" && isFinite(data114)) {
                  if (data114 > 7 || isNaN(data114)) {
                    const err304 = { instancePath: instancePath + "/numbers/feed-per-revolution/mm", schemaPath: "#/properties/numbers/properties/feed-per-revolution/properties/mm/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                    if (vErrors === null) {
                      vErrors = [err304];
                    } else {
                      vErrors.push(err304);
                    }
                    errors++;
                  }
                  if (data114 < 0 || isNaN(data114)) {
                    const err305 = { instancePath: instancePath + "/numbers/feed-per-revolution/mm", schemaPath: "#/properties/numbers/properties/feed-per-revolution/properties/mm/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err305];
                    } else {
                      vErrors.push(err305);
                    }
                    errors++;
                  }
                }
              }
              if (data113.inch !== void 0) {
                let data115 = data113.inch;
                if (!(typeof data115 == "number" && (!(data115 % 1) && !isNaN(data115)) && isFinite(data115))) {
                  const err306 = { instancePath: instancePath + "/numbers/feed-per-revolution/inch", schemaPath: "#/properties/numbers/properties/feed-per-revolution/properties/inch/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err306];
                  } else {
                    vErrors.push(err306);
                  }
                  errors++;
                }
                if (typeof data115 == "number" && isFinite(data115)) {
                  if (data115 > 6 || isNaN(data115)) {
                    const err307 = { instancePath: instancePath + "/numbers/feed-per-revolution/inch", schemaPath: "#/properties/numbers/properties/feed-per-revolution/properties/inch/maximum", keyword: "maximum", params: { comparison: "<=", limit: 6 }, message: "must be <= 6" };
                    if (vErrors === null) {
                      vErrors = [err307];
                    } else {
                      vErrors.push(err307);
                    }
                    errors++;
                  }
                  if (data115 < 0 || isNaN(data115)) {
                    const err308 = { instancePath: instancePath + "/numbers/feed-per-revolution/inch", schemaPath: "#/properties/numbers/properties/feed-per-revolution/properties/inch/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err308];
                    } else {
                      vErrors.push(err308);
                    }
                    errors++;
                  }
                }
              }
              if (data113.point !== void 0) {
                let data116 = data113.point;
                if (typeof data116 !== "string") {
                  const err309 = { instancePath: instancePath + "/numbers/feed-per-revolution/point", schemaPath: "#/$defs/own-point/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err309];
                  } else {
                    vErrors.push(err309);
                  }
                  errors++;
                }
                if (!(data116 === "always" || data116 === "when-needed" || data116 === "never")) {
                  const err310 = { instancePath: instancePath + "/numbers/feed-per-revolution/point", schemaPath: "#/$defs/own-point/enum", keyword: "enum", params: { allowedValues: schema37.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err310];
                  } else {
                    vErrors.push(err310);
                  }
                  errors++;
                }
              }
              if (data113["trailing-zeros"] !== void 0) {
                let data117 = data113["trailing-zeros"];
                if (typeof data117 !== "string") {
                  const err311 = { instancePath: instancePath + "/numbers/feed-per-revolution/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err311];
                  } else {
                    vErrors.push(err311);
                  }
                  errors++;
                }
                if (!(data117 === "keep" || data117 === "drop" || data117 === "one")) {
                  const err312 = { instancePath: instancePath + "/numbers/feed-per-revolution/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/enum", keyword: "enum", params: { allowedValues: schema38.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err312];
                  } else {
                    vErrors.push(err312);
                  }
                  errors++;
                }
              }
              if (data113["leading-zero"] !== void 0) {
                let data118 = data113["leading-zero"];
                if (typeof data118 !== "string") {
                  const err313 = { instancePath: instancePath + "/numbers/feed-per-revolution/leading-zero", schemaPath: "#/$defs/own-leading-zero/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err313];
                  } else {
                    vErrors.push(err313);
                  }
                  errors++;
                }
                if (!(data118 === "keep" || data118 === "drop")) {
                  const err314 = { instancePath: instancePath + "/numbers/feed-per-revolution/leading-zero", schemaPath: "#/$defs/own-leading-zero/enum", keyword: "enum", params: { allowedValues: schema39.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err314];
                  } else {
                    vErrors.push(err314);
                  }
                  errors++;
                }
              }
              if (data113.plus !== void 0) {
                let data119 = data113.plus;
                if (typeof data119 !== "string") {
                  const err315 = { instancePath: instancePath + "/numbers/feed-per-revolution/plus", schemaPath: "#/$defs/own-plus/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err315];
                  } else {
                    vErrors.push(err315);
                  }
                  errors++;
                }
                if (!(data119 === "yes" || data119 === "no")) {
                  const err316 = { instancePath: instancePath + "/numbers/feed-per-revolution/plus", schemaPath: "#/$defs/own-plus/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err316];
                  } else {
                    vErrors.push(err316);
                  }
                  errors++;
                }
              }
              if (data113["suppressed-zeros"] !== void 0) {
                let data120 = data113["suppressed-zeros"];
                if (typeof data120 !== "string") {
                  const err317 = { instancePath: instancePath + "/numbers/feed-per-revolution/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err317];
                  } else {
                    vErrors.push(err317);
                  }
                  errors++;
                }
                if (!(data120 === "leading" || data120 === "trailing" || data120 === "none")) {
                  const err318 = { instancePath: instancePath + "/numbers/feed-per-revolution/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/enum", keyword: "enum", params: { allowedValues: schema41.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err318];
                  } else {
                    vErrors.push(err318);
                  }
                  errors++;
                }
              }
              if (data113.digits !== void 0) {
                let data121 = data113.digits;
                if (!(typeof data121 == "number" && (!(data121 % 1) && !isNaN(data121)) && isFinite(data121))) {
                  const err319 = { instancePath: instancePath + "/numbers/feed-per-revolution/digits", schemaPath: "#/$defs/own-digits/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err319];
                  } else {
                    vErrors.push(err319);
                  }
                  errors++;
                }
                if (typeof data121 == "number" && isFinite(data121)) {
                  if (data121 > 12 || isNaN(data121)) {
                    const err320 = { instancePath: instancePath + "/numbers/feed-per-revolution/digits", schemaPath: "#/$defs/own-digits/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err320];
                    } else {
                      vErrors.push(err320);
                    }
                    errors++;
                  }
                  if (data121 < 1 || isNaN(data121)) {
                    const err321 = { instancePath: instancePath + "/numbers/feed-per-revolution/digits", schemaPath: "#/$defs/own-digits/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err321];
                    } else {
                      vErrors.push(err321);
                    }
                    errors++;
                  }
                }
              }
              if (data113["whole-digits"] !== void 0) {
                let data122 = data113["whole-digits"];
                const _errs347 = errors;
                let valid83 = false;
                const _errs348 = errors;
                if (typeof data122 !== "string") {
                  const err322 = { instancePath: instancePath + "/numbers/feed-per-revolution/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err322];
                  } else {
                    vErrors.push(err322);
                  }
                  errors++;
                }
                if ("none" !== data122) {
                  const err323 = { instancePath: instancePath + "/numbers/feed-per-revolution/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
                  if (vErrors === null) {
                    vErrors = [err323];
                  } else {
                    vErrors.push(err323);
                  }
                  errors++;
                }
                var _valid10 = _errs348 === errors;
                valid83 = valid83 || _valid10;
                const _errs350 = errors;
                if (!(typeof data122 == "number" && (!(data122 % 1) && !isNaN(data122)) && isFinite(data122))) {
                  const err324 = { instancePath: instancePath + "/numbers/feed-per-revolution/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err324];
                  } else {
                    vErrors.push(err324);
                  }
                  errors++;
                }
                if (typeof data122 == "number" && isFinite(data122)) {
                  if (data122 > 12 || isNaN(data122)) {
                    const err325 = { instancePath: instancePath + "/numbers/feed-per-revolution/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err325];
                    } else {
                      vErrors.push(err325);
                    }
                    errors++;
                  }
                  if (data122 < 1 || isNaN(data122)) {
                    const err326 = { instancePath: instancePath + "/numbers/feed-per-revolution/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err326];
                    } else {
                      vErrors.push(err326);
                    }
                    errors++;
                  }
                }
                var _valid10 = _errs350 === errors;
                valid83 = valid83 || _valid10;
                if (!valid83) {
                  const err327 = { instancePath: instancePath + "/numbers/feed-per-revolution/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err327];
                  } else {
                    vErrors.push(err327);
                  }
                  errors++;
                } else {
                  errors = _errs347;
                  if (vErrors !== null) {
                    if (_errs347) {
                      vErrors.length = _errs347;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
            } else {
              const err328 = { instancePath: instancePath + "/numbers/feed-per-revolution", schemaPath: "#/properties/numbers/properties/feed-per-revolution/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err328];
              } else {
                vErrors.push(err328);
              }
              errors++;
            }
          }
          if (data57["inverse-time"] !== void 0) {
            let data123 = data57["inverse-time"];
            const _errs353 = errors;
            let valid84 = false;
            const _errs354 = errors;
            if (!(typeof data123 == "number" && (!(data123 % 1) && !isNaN(data123)) && isFinite(data123))) {
              const err329 = { instancePath: instancePath + "/numbers/inverse-time", schemaPath: "#/properties/numbers/properties/inverse-time/anyOf/0/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
              if (vErrors === null) {
                vErrors = [err329];
              } else {
                vErrors.push(err329);
              }
              errors++;
            }
            if (typeof data123 == "number" && isFinite(data123)) {
              if (data123 > 7 || isNaN(data123)) {
                const err330 = { instancePath: instancePath + "/numbers/inverse-time", schemaPath: "#/properties/numbers/properties/inverse-time/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                if (vErrors === null) {
                  vErrors = [err330];
                } else {
                  vErrors.push(err330);
                }
                errors++;
              }
              if (data123 < 0 || isNaN(data123)) {
                const err331 = { instancePath: instancePath + "/numbers/inverse-time", schemaPath: "#/properties/numbers/properties/inverse-time/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                if (vErrors === null) {
                  vErrors = [err331];
                } else {
                  vErrors.push(err331);
                }
                errors++;
              }
            }
            var _valid11 = _errs354 === errors;
            valid84 = valid84 || _valid11;
            const _errs356 = errors;
            if (data123 && typeof data123 == "object" && !Array.isArray(data123)) {
              for (const key16 in data123) {
                if (!(key16 === "decimals" || key16 === "point" || key16 === "trailing-zeros" || key16 === "leading-zero" || key16 === "plus" || key16 === "suppressed-zeros" || key16 === "digits" || key16 === "whole-digits")) {
                  const err332 = { instancePath: instancePath + "/numbers/inverse-time", schemaPath: "#/properties/numbers/properties/inverse-time/anyOf/1/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key16 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err332];
                  } else {
                    vErrors.push(err332);
                  }
                  errors++;
                }
              }
              if (data123.decimals !== void 0) {
                let data124 = data123.decimals;
                if (!(typeof data124 == "number" && (!(data124 % 1) && !isNaN(data124)) && isFinite(data124))) {
                  const err333 = { instancePath: instancePath + "/numbers/inverse-time/decimals", schemaPath: "#/properties/numbers/properties/inverse-time/anyOf/1/properties/decimals/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err333];
                  } else {
                    vErrors.push(err333);
                  }
                  errors++;
                }
                if (typeof data124 == "number" && isFinite(data124)) {
                  if (data124 > 7 || isNaN(data124)) {
                    const err334 = { instancePath: instancePath + "/numbers/inverse-time/decimals", schemaPath: "#/properties/numbers/properties/inverse-time/anyOf/1/properties/decimals/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                    if (vErrors === null) {
                      vErrors = [err334];
                    } else {
                      vErrors.push(err334);
                    }
                    errors++;
                  }
                  if (data124 < 0 || isNaN(data124)) {
                    const err335 = { instancePath: instancePath + "/numbers/inverse-time/decimals", schemaPath: "#/properties/numbers/properties/inverse-time/anyOf/1/properties/decimals/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err335];
                    } else {
                      vErrors.push(err335);
                    }
                    errors++;
                  }
                }
              }
              if (data123.point !== void 0) {
                let data125 = data123.point;
                if (typeof data125 !== "string") {
                  const err336 = { instancePath: instancePath + "/numbers/inverse-time/point", schemaPath: "#/$defs/own-point/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err336];
                  } else {
                    vErrors.push(err336);
                  }
                  errors++;
                }
                if (!(data125 === "always" || data125 === "when-needed" || data125 === "never")) {
                  const err337 = { instancePath: instancePath + "/numbers/inverse-time/point", schemaPath: "#/$defs/own-point/enum", keyword: "enum", params: { allowedValues: schema37.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err337];
                  } else {
                    vErrors.push(err337);
                  }
                  errors++;
                }
              }
              if (data123["trailing-zeros"] !== void 0) {
                let data126 = data123["trailing-zeros"];
                if (typeof data126 !== "string") {
                  const err338 = { instancePath: instancePath + "/numbers/inverse-time/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err338];
                  } else {
                    vErrors.push(err338);
                  }
                  errors++;
                }
                if (!(data126 === "keep" || data126 === "drop" || data126 === "one")) {
                  const err339 = { instancePath: instancePath + "/numbers/inverse-time/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/enum", keyword: "enum", params: { allowedValues: schema38.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err339];
                  } else {
                    vErrors.push(err339);
                  }
                  errors++;
                }
              }
              if (data123["leading-zero"] !== void 0) {
                let data127 = data123["leading-zero"];
                if (typeof data127 !== "string") {
                  const err340 = { instancePath: instancePath + "/numbers/inverse-time/leading-zero", schemaPath: "#/$defs/own-leading-zero/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err340];
                  } else {
                    vErrors.push(err340);
                  }
                  errors++;
                }
                if (!(data127 === "keep" || data127 === "drop")) {
                  const err341 = { instancePath: instancePath + "/numbers/inverse-time/leading-zero", schemaPath: "#/$defs/own-leading-zero/enum", keyword: "enum", params: { allowedValues: schema39.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err341];
                  } else {
                    vErrors.push(err341);
                  }
                  errors++;
                }
              }
              if (data123.plus !== void 0) {
                let data128 = data123.plus;
                if (typeof data128 !== "string") {
                  const err342 = { instancePath: instancePath + "/numbers/inverse-time/plus", schemaPath: "#/$defs/own-plus/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err342];
                  } else {
                    vErrors.push(err342);
                  }
                  errors++;
                }
                if (!(data128 === "yes" || data128 === "no")) {
                  const err343 = { instancePath: instancePath + "/numbers/inverse-time/plus", schemaPath: "#/$defs/own-plus/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err343];
                  } else {
                    vErrors.push(err343);
                  }
                  errors++;
                }
              }
              if (data123["suppressed-zeros"] !== void 0) {
                let data129 = data123["suppressed-zeros"];
                if (typeof data129 !== "string") {
                  const err344 = { instancePath: instancePath + "/numbers/inverse-time/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err344];
                  } else {
                    vErrors.push(err344);
                  }
                  errors++;
                }
                if (!(data129 === "leading" || data129 === "trailing" || data129 === "none")) {
                  const err345 = { instancePath: instancePath + "/numbers/inverse-time/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/enum", keyword: "enum", params: { allowedValues: schema41.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err345];
                  } else {
                    vErrors.push(err345);
                  }
                  errors++;
                }
              }
              if (data123.digits !== void 0) {
                let data130 = data123.digits;
                if (!(typeof data130 == "number" && (!(data130 % 1) && !isNaN(data130)) && isFinite(data130))) {
                  const err346 = { instancePath: instancePath + "/numbers/inverse-time/digits", schemaPath: "#/$defs/own-digits/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err346];
                  } else {
                    vErrors.push(err346);
                  }
                  errors++;
                }
                if (typeof data130 == "number" && isFinite(data130)) {
                  if (data130 > 12 || isNaN(data130)) {
                    const err347 = { instancePath: instancePath + "/numbers/inverse-time/digits", schemaPath: "#/$defs/own-digits/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err347];
                    } else {
                      vErrors.push(err347);
                    }
                    errors++;
                  }
                  if (data130 < 1 || isNaN(data130)) {
                    const err348 = { instancePath: instancePath + "/numbers/inverse-time/digits", schemaPath: "#/$defs/own-digits/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err348];
                    } else {
                      vErrors.push(err348);
                    }
                    errors++;
                  }
                }
              }
              if (data123["whole-digits"] !== void 0) {
                let data131 = data123["whole-digits"];
                const _errs381 = errors;
                let valid93 = false;
                const _errs382 = errors;
                if (typeof data131 !== "string") {
                  const err349 = { instancePath: instancePath + "/numbers/inverse-time/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err349];
                  } else {
                    vErrors.push(err349);
                  }
                  errors++;
                }
                if ("none" !== data131) {
                  const err350 = { instancePath: instancePath + "/numbers/inverse-time/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
                  if (vErrors === null) {
                    vErrors = [err350];
                  } else {
                    vErrors.push(err350);
                  }
                  errors++;
                }
                var _valid12 = _errs382 === errors;
                valid93 = valid93 || _valid12;
                const _errs384 = errors;
                if (!(typeof data131 == "number" && (!(data131 % 1) && !isNaN(data131)) && isFinite(data131))) {
                  const err351 = { instancePath: instancePath + "/numbers/inverse-time/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err351];
                  } else {
                    vErrors.push(err351);
                  }
                  errors++;
                }
                if (typeof data131 == "number" && isFinite(data131)) {
                  if (data131 > 12 || isNaN(data131)) {
                    const err352 = { instancePath: instancePath + "/numbers/inverse-time/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err352];
                    } else {
                      vErrors.push(err352);
                    }
                    errors++;
                  }
                  if (data131 < 1 || isNaN(data131)) {
                    const err353 = { instancePath: instancePath + "/numbers/inverse-time/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err353];
                    } else {
                      vErrors.push(err353);
                    }
                    errors++;
                  }
                }
                var _valid12 = _errs384 === errors;
                valid93 = valid93 || _valid12;
                if (!valid93) {
                  const err354 = { instancePath: instancePath + "/numbers/inverse-time/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err354];
                  } else {
                    vErrors.push(err354);
                  }
                  errors++;
                } else {
                  errors = _errs381;
                  if (vErrors !== null) {
                    if (_errs381) {
                      vErrors.length = _errs381;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
            } else {
              const err355 = { instancePath: instancePath + "/numbers/inverse-time", schemaPath: "#/properties/numbers/properties/inverse-time/anyOf/1/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err355];
              } else {
                vErrors.push(err355);
              }
              errors++;
            }
            var _valid11 = _errs356 === errors;
            valid84 = valid84 || _valid11;
            if (!valid84) {
              const err356 = { instancePath: instancePath + "/numbers/inverse-time", schemaPath: "#/properties/numbers/properties/inverse-time/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err356];
              } else {
                vErrors.push(err356);
              }
              errors++;
            } else {
              errors = _errs353;
              if (vErrors !== null) {
                if (_errs353) {
                  vErrors.length = _errs353;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data57.speed !== void 0) {
            let data132 = data57.speed;
            const _errs387 = errors;
            let valid94 = false;
            const _errs388 = errors;
            if (!(typeof data132 == "number" && (!(data132 % 1) && !isNaN(data132)) && isFinite(data132))) {
              const err357 = { instancePath: instancePath + "/numbers/speed", schemaPath: "#/properties/numbers/properties/speed/anyOf/0/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
              if (vErrors === null) {
                vErrors = [err357];
              } else {
                vErrors.push(err357);
              }
              errors++;
            }
            if (typeof data132 == "number" && isFinite(data132)) {
              if (data132 > 7 || isNaN(data132)) {
                const err358 = { instancePath: instancePath + "/numbers/speed", schemaPath: "#/properties/numbers/properties/speed/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                if (vErrors === null) {
                  vErrors = [err358];
                } else {
                  vErrors.push(err358);
                }
                errors++;
              }
              if (data132 < 0 || isNaN(data132)) {
                const err359 = { instancePath: instancePath + "/numbers/speed", schemaPath: "#/properties/numbers/properties/speed/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                if (vErrors === null) {
                  vErrors = [err359];
                } else {
                  vErrors.push(err359);
                }
                errors++;
              }
            }
            var _valid13 = _errs388 === errors;
            valid94 = valid94 || _valid13;
            const _errs390 = errors;
            if (data132 && typeof data132 == "object" && !Array.isArray(data132)) {
              for (const key17 in data132) {
                if (!(key17 === "decimals" || key17 === "point" || key17 === "trailing-zeros" || key17 === "leading-zero" || key17 === "plus" || key17 === "suppressed-zeros" || key17 === "digits" || key17 === "whole-digits")) {
                  const err360 = { instancePath: instancePath + "/numbers/speed", schemaPath: "#/properties/numbers/properties/speed/anyOf/1/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key17 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err360];
                  } else {
                    vErrors.push(err360);
                  }
                  errors++;
                }
              }
              if (data132.decimals !== void 0) {
                let data133 = data132.decimals;
                if (!(typeof data133 == "number" && (!(data133 % 1) && !isNaN(data133)) && isFinite(data133))) {
                  const err361 = { instancePath: instancePath + "/numbers/speed/decimals", schemaPath: "#/properties/numbers/properties/speed/anyOf/1/properties/decimals/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err361];
                  } else {
                    vErrors.push(err361);
                  }
                  errors++;
                }
                if (typeof data133 == "number" && isFinite(data133)) {
                  if (data133 > 7 || isNaN(data133)) {
                    const err362 = { instancePath: instancePath + "/numbers/speed/decimals", schemaPath: "#/properties/numbers/properties/speed/anyOf/1/properties/decimals/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                    if (vErrors === null) {
                      vErrors = [err362];
                    } else {
                      vErrors.push(err362);
                    }
                    errors++;
                  }
                  if (data133 < 0 || isNaN(data133)) {
                    const err363 = { instancePath: instancePath + "/numbers/speed/decimals", schemaPath: "#/properties/numbers/properties/speed/anyOf/1/properties/decimals/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err363];
                    } else {
                      vErrors.push(err363);
                    }
                    errors++;
                  }
                }
              }
              if (data132.point !== void 0) {
                let data134 = data132.point;
                if (typeof data134 !== "string") {
                  const err364 = { instancePath: instancePath + "/numbers/speed/point", schemaPath: "#/$defs/own-point/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err364];
                  } else {
                    vErrors.push(err364);
                  }
                  errors++;
                }
                if (!(data134 === "always" || data134 === "when-needed" || data134 === "never")) {
                  const err365 = { instancePath: instancePath + "/numbers/speed/point", schemaPath: "#/$defs/own-point/enum", keyword: "enum", params: { allowedValues: schema37.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err365];
                  } else {
                    vErrors.push(err365);
                  }
                  errors++;
                }
              }
              if (data132["trailing-zeros"] !== void 0) {
                let data135 = data132["trailing-zeros"];
                if (typeof data135 !== "string") {
                  const err366 = { instancePath: instancePath + "/numbers/speed/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err366];
                  } else {
                    vErrors.push(err366);
                  }
                  errors++;
                }
                if (!(data135 === "keep" || data135 === "drop" || data135 === "one")) {
                  const err367 = { instancePath: instancePath + "/numbers/speed/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/enum", keyword: "enum", params: { allowedValues: schema38.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err367];
                  } else {
                    vErrors.push(err367);
                  }
                  errors++;
                }
              }
              if (data132["leading-zero"] !== void 0) {
                let data136 = data132["leading-zero"];
                if (typeof data136 !== "string") {
                  const err368 = { instancePath: instancePath + "/numbers/speed/leading-zero", schemaPath: "#/$defs/own-leading-zero/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err368];
                  } else {
                    vErrors.push(err368);
                  }
                  errors++;
                }
                if (!(data136 === "keep" || data136 === "drop")) {
                  const err369 = { instancePath: instancePath + "/numbers/speed/leading-zero", schemaPath: "#/$defs/own-leading-zero/enum", keyword: "enum", params: { allowedValues: schema39.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err369];
                  } else {
                    vErrors.push(err369);
                  }
                  errors++;
                }
              }
              if (data132.plus !== void 0) {
                let data137 = data132.plus;
                if (typeof data137 !== "string") {
                  const err370 = { instancePath: instancePath + "/numbers/speed/plus", schemaPath: "#/$defs/own-plus/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err370];
                  } else {
                    vErrors.push(err370);
                  }
                  errors++;
                }
                if (!(data137 === "yes" || data137 === "no")) {
                  const err371 = { instancePath: instancePath + "/numbers/speed/plus", schemaPath: "#/$defs/own-plus/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err371];
                  } else {
                    vErrors.push(err371);
                  }
                  errors++;
                }
              }
              if (data132["suppressed-zeros"] !== void 0) {
                let data138 = data132["suppressed-zeros"];
                if (typeof data138 !== "string") {
                  const err372 = { instancePath: instancePath + "/numbers/speed/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err372];
                  } else {
                    vErrors.push(err372);
                  }
                  errors++;
                }
                if (!(data138 === "leading" || data138 === "trailing" || data138 === "none")) {
                  const err373 = { instancePath: instancePath + "/numbers/speed/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/enum", keyword: "enum", params: { allowedValues: schema41.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err373];
                  } else {
                    vErrors.push(err373);
                  }
                  errors++;
                }
              }
              if (data132.digits !== void 0) {
                let data139 = data132.digits;
                if (!(typeof data139 == "number" && (!(data139 % 1) && !isNaN(data139)) && isFinite(data139))) {
                  const err374 = { instancePath: instancePath + "/numbers/speed/digits", schemaPath: "#/$defs/own-digits/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err374];
                  } else {
                    vErrors.push(err374);
                  }
                  errors++;
                }
                if (typeof data139 == "number" && isFinite(data139)) {
                  if (data139 > 12 || isNaN(data139)) {
                    const err375 = { instancePath: instancePath + "/numbers/speed/digits", schemaPath: "#/$defs/own-digits/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err375];
                    } else {
                      vErrors.push(err375);
                    }
                    errors++;
                  }
                  if (data139 < 1 || isNaN(data139)) {
                    const err376 = { instancePath: instancePath + "/numbers/speed/digits", schemaPath: "#/$defs/own-digits/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err376];
                    } else {
                      vErrors.push(err376);
                    }
                    errors++;
                  }
                }
              }
              if (data132["whole-digits"] !== void 0) {
                let data140 = data132["whole-digits"];
                const _errs415 = errors;
                let valid103 = false;
                const _errs416 = errors;
                if (typeof data140 !== "string") {
                  const err377 = { instancePath: instancePath + "/numbers/speed/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err377];
                  } else {
                    vErrors.push(err377);
                  }
                  errors++;
                }
                if ("none" !== data140) {
                  const err378 = { instancePath: instancePath + "/numbers/speed/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
                  if (vErrors === null) {
                    vErrors = [err378];
                  } else {
                    vErrors.push(err378);
                  }
                  errors++;
                }
                var _valid14 = _errs416 === errors;
                valid103 = valid103 || _valid14;
                const _errs418 = errors;
                if (!(typeof data140 == "number" && (!(data140 % 1) && !isNaN(data140)) && isFinite(data140))) {
                  const err379 = { instancePath: instancePath + "/numbers/speed/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err379];
                  } else {
                    vErrors.push(err379);
                  }
                  errors++;
                }
                if (typeof data140 == "number" && isFinite(data140)) {
                  if (data140 > 12 || isNaN(data140)) {
                    const err380 = { instancePath: instancePath + "/numbers/speed/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err380];
                    } else {
                      vErrors.push(err380);
                    }
                    errors++;
                  }
                  if (data140 < 1 || isNaN(data140)) {
                    const err381 = { instancePath: instancePath + "/numbers/speed/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err381];
                    } else {
                      vErrors.push(err381);
                    }
                    errors++;
                  }
                }
                var _valid14 = _errs418 === errors;
                valid103 = valid103 || _valid14;
                if (!valid103) {
                  const err382 = { instancePath: instancePath + "/numbers/speed/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err382];
                  } else {
                    vErrors.push(err382);
                  }
                  errors++;
                } else {
                  errors = _errs415;
                  if (vErrors !== null) {
                    if (_errs415) {
                      vErrors.length = _errs415;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
            } else {
              const err383 = { instancePath: instancePath + "/numbers/speed", schemaPath: "#/properties/numbers/properties/speed/anyOf/1/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err383];
              } else {
                vErrors.push(err383);
              }
              errors++;
            }
            var _valid13 = _errs390 === errors;
            valid94 = valid94 || _valid13;
            if (!valid94) {
              const err384 = { instancePath: instancePath + "/numbers/speed", schemaPath: "#/properties/numbers/properties/speed/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err384];
              } else {
                vErrors.push(err384);
              }
              errors++;
            } else {
              errors = _errs387;
              if (vErrors !== null) {
                if (_errs387) {
                  vErrors.length = _errs387;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data57.dwell !== void 0) {
            let data141 = data57.dwell;
            const _errs421 = errors;
            let valid104 = false;
            const _errs422 = errors;
            if (!(typeof data141 == "number" && (!(data141 % 1) && !isNaN(data141)) && isFinite(data141))) {
              const err385 = { instancePath: instancePath + "/numbers/dwell", schemaPath: "#/properties/numbers/properties/dwell/anyOf/0/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
              if (vErrors === null) {
                vErrors = [err385];
              } else {
                vErrors.push(err385);
              }
              errors++;
            }
            if (typeof data141 == "number" && isFinite(data141)) {
              if (data141 > 7 || isNaN(data141)) {
                const err386 = { instancePath: instancePath + "/numbers/dwell", schemaPath: "#/properties/numbers/properties/dwell/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                if (vErrors === null) {
                  vErrors = [err386];
                } else {
                  vErrors.push(err386);
                }
                errors++;
              }
              if (data141 < 0 || isNaN(data141)) {
                const err387 = { instancePath: instancePath + "/numbers/dwell", schemaPath: "#/properties/numbers/properties/dwell/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                if (vErrors === null) {
                  vErrors = [err387];
                } else {
                  vErrors.push(err387);
                }
                errors++;
              }
            }
            var _valid15 = _errs422 === errors;
            valid104 = valid104 || _valid15;
            const _errs424 = errors;
            if (data141 && typeof data141 == "object" && !Array.isArray(data141)) {
              for (const key18 in data141) {
                if (!(key18 === "decimals" || key18 === "point" || key18 === "trailing-zeros" || key18 === "leading-zero" || key18 === "plus" || key18 === "suppressed-zeros" || key18 === "digits" || key18 === "whole-digits")) {
                  const err388 = { instancePath: instancePath + "/numbers/dwell", schemaPath: "#/properties/numbers/properties/dwell/anyOf/1/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key18 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err388];
                  } else {
                    vErrors.push(err388);
                  }
                  errors++;
                }
              }
              if (data141.decimals !== void 0) {
                let data142 = data141.decimals;
                if (!(typeof data142 == "number" && (!(data142 % 1) && !isNaN(data142)) && isFinite(data142))) {
                  const err389 = { instancePath: instancePath + "/numbers/dwell/decimals", schemaPath: "#/properties/numbers/properties/dwell/anyOf/1/properties/decimals/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err389];
                  } else {
                    vErrors.push(err389);
                  }
                  errors++;
                }
                if (typeof data142 == "number" && isFinite(data142)) {
                  if (data142 > 7 || isNaN(data142)) {
                    const err390 = { instancePath: instancePath + "/numbers/dwell/decimals", schemaPath: "#/properties/numbers/properties/dwell/anyOf/1/properties/decimals/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                    if (vErrors === null) {
                      vErrors = [err390];
                    } else {
                      vErrors.push(err390);
                    }
                    errors++;
                  }
                  if (data142 < 0 || isNaN(data142)) {
                    const err391 = { instancePath: instancePath + "/numbers/dwell/decimals", schemaPath: "#/properties/numbers/properties/dwell/anyOf/1/properties/decimals/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err391];
                    } else {
                      vErrors.push(err391);
                    }
                    errors++;
                  }
                }
              }
              if (data141.point !== void 0) {
                let data143 = data141.point;
                if (typeof data143 !== "string") {
                  const err392 = { instancePath: instancePath + "/numbers/dwell/point", schemaPath: "#/$defs/own-point/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err392];
                  } else {
                    vErrors.push(err392);
                  }
                  errors++;
                }
                if (!(data143 === "always" || data143 === "when-needed" || data143 === "never")) {
                  const err393 = { instancePath: instancePath + "/numbers/dwell/point", schemaPath: "#/$defs/own-point/enum", keyword: "enum", params: { allowedValues: schema37.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err393];
                  } else {
                    vErrors.push(err393);
                  }
                  errors++;
                }
              }
              if (data141["trailing-zeros"] !== void 0) {
                let data144 = data141["trailing-zeros"];
                if (typeof data144 !== "string") {
                  const err394 = { instancePath: instancePath + "/numbers/dwell/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err394];
                  } else {
                    vErrors.push(err394);
                  }
                  errors++;
                }
                if (!(data144 === "keep" || data144 === "drop" || data144 === "one")) {
                  const err395 = { instancePath: instancePath + "/numbers/dwell/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/enum", keyword: "enum", params: { allowedValues: schema38.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err395];
                  } else {
                    vErrors.push(err395);
                  }
                  errors++;
                }
              }
              if (data141["leading-zero"] !== void 0) {
                let data145 = data141["leading-zero"];
                if (typeof data145 !== "string") {
                  const err396 = { instancePath: instancePath + "/numbers/dwell/leading-zero", schemaPath: "#/$defs/own-leading-zero/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err396];
                  } else {
                    vErrors.push(err396);
                  }
                  errors++;
                }
                if (!(data145 === "keep" || data145 === "drop")) {
                  const err397 = { instancePath: instancePath + "/numbers/dwell/leading-zero", schemaPath: "#/$defs/own-leading-zero/enum", keyword: "enum", params: { allowedValues: schema39.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err397];
                  } else {
                    vErrors.push(err397);
                  }
                  errors++;
                }
              }
              if (data141.plus !== void 0) {
                let data146 = data141.plus;
                if (typeof data146 !== "string") {
                  const err398 = { instancePath: instancePath + "/numbers/dwell/plus", schemaPath: "#/$defs/own-plus/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err398];
                  } else {
                    vErrors.push(err398);
                  }
                  errors++;
                }
                if (!(data146 === "yes" || data146 === "no")) {
                  const err399 = { instancePath: instancePath + "/numbers/dwell/plus", schemaPath: "#/$defs/own-plus/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err399];
                  } else {
                    vErrors.push(err399);
                  }
                  errors++;
                }
              }
              if (data141["suppressed-zeros"] !== void 0) {
                let data147 = data141["suppressed-zeros"];
                if (typeof data147 !== "string") {
                  const err400 = { instancePath: instancePath + "/numbers/dwell/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err400];
                  } else {
                    vErrors.push(err400);
                  }
                  errors++;
                }
                if (!(data147 === "leading" || data147 === "trailing" || data147 === "none")) {
                  const err401 = { instancePath: instancePath + "/numbers/dwell/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/enum", keyword: "enum", params: { allowedValues: schema41.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err401];
                  } else {
                    vErrors.push(err401);
                  }
                  errors++;
                }
              }
              if (data141.digits !== void 0) {
                let data148 = data141.digits;
                if (!(typeof data148 == "number" && (!(data148 % 1) && !isNaN(data148)) && isFinite(data148))) {
                  const err402 = { instancePath: instancePath + "/numbers/dwell/digits", schemaPath: "#/$defs/own-digits/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err402];
                  } else {
                    vErrors.push(err402);
                  }
                  errors++;
                }
                if (typeof data148 == "number" && isFinite(data148)) {
                  if (data148 > 12 || isNaN(data148)) {
                    const err403 = { instancePath: instancePath + "/numbers/dwell/digits", schemaPath: "#/$defs/own-digits/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err403];
                    } else {
                      vErrors.push(err403);
                    }
                    errors++;
                  }
                  if (data148 < 1 || isNaN(data148)) {
                    const err404 = { instancePath: instancePath + "/numbers/dwell/digits", schemaPath: "#/$defs/own-digits/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err404];
                    } else {
                      vErrors.push(err404);
                    }
                    errors++;
                  }
                }
              }
              if (data141["whole-digits"] !== void 0) {
                let data149 = data141["whole-digits"];
                const _errs449 = errors;
                let valid113 = false;
                const _errs450 = errors;
                if (typeof data149 !== "string") {
                  const err405 = { instancePath: instancePath + "/numbers/dwell/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err405];
                  } else {
                    vErrors.push(err405);
                  }
                  errors++;
                }
                if ("none" !== data149) {
                  const err406 = { instancePath: instancePath + "/numbers/dwell/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
                  if (vErrors === null) {
                    vErrors = [err406];
                  } else {
                    vErrors.push(err406);
                  }
                  errors++;
                }
                var _valid16 = _errs450 === errors;
                valid113 = valid113 || _valid16;
                const _errs452 = errors;
                if (!(typeof data149 == "number" && (!(data149 % 1) && !isNaN(data149)) && isFinite(data149))) {
                  const err407 = { instancePath: instancePath + "/numbers/dwell/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err407];
                  } else {
                    vErrors.push(err407);
                  }
                  errors++;
                }
                if (typeof data149 == "number" && isFinite(data149)) {
                  if (data149 > 12 || isNaN(data149)) {
                    const err408 = { instancePath: instancePath + "/numbers/dwell/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err408];
                    } else {
                      vErrors.push(err408);
                    }
                    errors++;
                  }
                  if (data149 < 1 || isNaN(data149)) {
                    const err409 = { instancePath: instancePath + "/numbers/dwell/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err409];
                    } else {
                      vErrors.push(err409);
                    }
                    errors++;
                  }
                }
                var _valid16 = _errs452 === errors;
                valid113 = valid113 || _valid16;
                if (!valid113) {
                  const err410 = { instancePath: instancePath + "/numbers/dwell/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err410];
                  } else {
                    vErrors.push(err410);
                  }
                  errors++;
                } else {
                  errors = _errs449;
                  if (vErrors !== null) {
                    if (_errs449) {
                      vErrors.length = _errs449;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
            } else {
              const err411 = { instancePath: instancePath + "/numbers/dwell", schemaPath: "#/properties/numbers/properties/dwell/anyOf/1/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err411];
              } else {
                vErrors.push(err411);
              }
              errors++;
            }
            var _valid15 = _errs424 === errors;
            valid104 = valid104 || _valid15;
            if (!valid104) {
              const err412 = { instancePath: instancePath + "/numbers/dwell", schemaPath: "#/properties/numbers/properties/dwell/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err412];
              } else {
                vErrors.push(err412);
              }
              errors++;
            } else {
              errors = _errs421;
              if (vErrors !== null) {
                if (_errs421) {
                  vErrors.length = _errs421;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data57["cycle-dwell"] !== void 0) {
            let data150 = data57["cycle-dwell"];
            const _errs455 = errors;
            let valid114 = false;
            const _errs456 = errors;
            if (!(typeof data150 == "number" && (!(data150 % 1) && !isNaN(data150)) && isFinite(data150))) {
              const err413 = { instancePath: instancePath + "/numbers/cycle-dwell", schemaPath: "#/properties/numbers/properties/cycle-dwell/anyOf/0/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
              if (vErrors === null) {
                vErrors = [err413];
              } else {
                vErrors.push(err413);
              }
              errors++;
            }
            if (typeof data150 == "number" && isFinite(data150)) {
              if (data150 > 7 || isNaN(data150)) {
                const err414 = { instancePath: instancePath + "/numbers/cycle-dwell", schemaPath: "#/properties/numbers/properties/cycle-dwell/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                if (vErrors === null) {
                  vErrors = [err414];
                } else {
                  vErrors.push(err414);
                }
                errors++;
              }
              if (data150 < 0 || isNaN(data150)) {
                const err415 = { instancePath: instancePath + "/numbers/cycle-dwell", schemaPath: "#/properties/numbers/properties/cycle-dwell/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                if (vErrors === null) {
                  vErrors = [err415];
                } else {
                  vErrors.push(err415);
                }
                errors++;
              }
            }
            var _valid17 = _errs456 === errors;
            valid114 = valid114 || _valid17;
            const _errs458 = errors;
            if (data150 && typeof data150 == "object" && !Array.isArray(data150)) {
              for (const key19 in data150) {
                if (!(key19 === "decimals" || key19 === "point" || key19 === "trailing-zeros" || key19 === "leading-zero" || key19 === "plus" || key19 === "suppressed-zeros" || key19 === "digits" || key19 === "whole-digits")) {
                  const err416 = { instancePath: instancePath + "/numbers/cycle-dwell", schemaPath: "#/properties/numbers/properties/cycle-dwell/anyOf/1/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key19 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err416];
                  } else {
                    vErrors.push(err416);
                  }
                  errors++;
                }
              }
              if (data150.decimals !== void 0) {
                let data151 = data150.decimals;
                if (!(typeof data151 == "number" && (!(data151 % 1) && !isNaN(data151)) && isFinite(data151))) {
                  const err417 = { instancePath: instancePath + "/numbers/cycle-dwell/decimals", schemaPath: "#/properties/numbers/properties/cycle-dwell/anyOf/1/properties/decimals/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err417];
                  } else {
                    vErrors.push(err417);
                  }
                  errors++;
                }
                if (typeof data151 == "number" && isFinite(data151)) {
                  if (data151 > 7 || isNaN(data151)) {
                    const err418 = { instancePath: instancePath + "/numbers/cycle-dwell/decimals", schemaPath: "#/properties/numbers/properties/cycle-dwell/anyOf/1/properties/decimals/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                    if (vErrors === null) {
                      vErrors = [err418];
                    } else {
                      vErrors.push(err418);
                    }
                    errors++;
                  }
                  if (data151 < 0 || isNaN(data151)) {
                    const err419 = { instancePath: instancePath + "/numbers/cycle-dwell/decimals", schemaPath: "#/properties/numbers/properties/cycle-dwell/anyOf/1/properties/decimals/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err419];
                    } else {
                      vErrors.push(err419);
                    }
                    errors++;
                  }
                }
              }
              if (data150.point !== void 0) {
                let data152 = data150.point;
                if (typeof data152 !== "string") {
                  const err420 = { instancePath: instancePath + "/numbers/cycle-dwell/point", schemaPath: "#/$defs/own-point/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err420];
                  } else {
                    vErrors.push(err420);
                  }
                  errors++;
                }
                if (!(data152 === "always" || data152 === "when-needed" || data152 === "never")) {
                  const err421 = { instancePath: instancePath + "/numbers/cycle-dwell/point", schemaPath: "#/$defs/own-point/enum", keyword: "enum", params: { allowedValues: schema37.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err421];
                  } else {
                    vErrors.push(err421);
                  }
                  errors++;
                }
              }
              if (data150["trailing-zeros"] !== void 0) {
                let data153 = data150["trailing-zeros"];
                if (typeof data153 !== "string") {
                  const err422 = { instancePath: instancePath + "/numbers/cycle-dwell/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err422];
                  } else {
                    vErrors.push(err422);
                  }
                  errors++;
                }
                if (!(data153 === "keep" || data153 === "drop" || data153 === "one")) {
                  const err423 = { instancePath: instancePath + "/numbers/cycle-dwell/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/enum", keyword: "enum", params: { allowedValues: schema38.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err423];
                  } else {
                    vErrors.push(err423);
                  }
                  errors++;
                }
              }
              if (data150["leading-zero"] !== void 0) {
                let data154 = data150["leading-zero"];
                if (typeof data154 !== "string") {
                  const err424 = { instancePath: instancePath + "/numbers/cycle-dwell/leading-zero", schemaPath: "#/$defs/own-leading-zero/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err424];
                  } else {
                    vErrors.push(err424);
                  }
                  errors++;
                }
                if (!(data154 === "keep" || data154 === "drop")) {
                  const err425 = { instancePath: instancePath + "/numbers/cycle-dwell/leading-zero", schemaPath: "#/$defs/own-leading-zero/enum", keyword: "enum", params: { allowedValues: schema39.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err425];
                  } else {
                    vErrors.push(err425);
                  }
                  errors++;
                }
              }
              if (data150.plus !== void 0) {
                let data155 = data150.plus;
                if (typeof data155 !== "string") {
                  const err426 = { instancePath: instancePath + "/numbers/cycle-dwell/plus", schemaPath: "#/$defs/own-plus/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err426];
                  } else {
                    vErrors.push(err426);
                  }
                  errors++;
                }
                if (!(data155 === "yes" || data155 === "no")) {
                  const err427 = { instancePath: instancePath + "/numbers/cycle-dwell/plus", schemaPath: "#/$defs/own-plus/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err427];
                  } else {
                    vErrors.push(err427);
                  }
                  errors++;
                }
              }
              if (data150["suppressed-zeros"] !== void 0) {
                let data156 = data150["suppressed-zeros"];
                if (typeof data156 !== "string") {
                  const err428 = { instancePath: instancePath + "/numbers/cycle-dwell/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err428];
                  } else {
                    vErrors.push(err428);
                  }
                  errors++;
                }
                if (!(data156 === "leading" || data156 === "trailing" || data156 === "none")) {
                  const err429 = { instancePath: instancePath + "/numbers/cycle-dwell/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/enum", keyword: "enum", params: { allowedValues: schema41.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err429];
                  } else {
                    vErrors.push(err429);
                  }
                  errors++;
                }
              }
              if (data150.digits !== void 0) {
                let data157 = data150.digits;
                if (!(typeof data157 == "number" && (!(data157 % 1) && !isNaN(data157)) && isFinite(data157))) {
                  const err430 = { instancePath: instancePath + "/numbers/cycle-dwell/digits", schemaPath: "#/$defs/own-digits/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err430];
                  } else {
                    vErrors.push(err430);
                  }
                  errors++;
                }
                if (typeof data157 == "number" && isFinite(data157)) {
                  if (data157 > 12 || isNaN(data157)) {
                    const err431 = { instancePath: instancePath + "/numbers/cycle-dwell/digits", schemaPath: "#/$defs/own-digits/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err431];
                    } else {
                      vErrors.push(err431);
                    }
                    errors++;
                  }
                  if (data157 < 1 || isNaN(data157)) {
                    const err432 = { instancePath: instancePath + "/numbers/cycle-dwell/digits", schemaPath: "#/$defs/own-digits/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err432];
                    } else {
                      vErrors.push(err432);
                    }
                    errors++;
                  }
                }
              }
              if (data150["whole-digits"] !== void 0) {
                let data158 = data150["whole-digits"];
                const _errs483 = errors;
                let valid123 = false;
                const _errs484 = errors;
                if (typeof data158 !== "string") {
                  const err433 = { instancePath: instancePath + "/numbers/cycle-dwell/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err433];
                  } else {
                    vErrors.push(err433);
                  }
                  errors++;
                }
                if ("none" !== data158) {
                  const err434 = { instancePath: instancePath + "/numbers/cycle-dwell/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
                  if (vErrors === null) {
                    vErrors = [err434];
                  } else {
                    vErrors.push(err434);
                  }
                  errors++;
                }
                var _valid18 = _errs484 === errors;
                valid123 = valid123 || _valid18;
                const _errs486 = errors;
                if (!(typeof data158 == "number" && (!(data158 % 1) && !isNaN(data158)) && isFinite(data158))) {
                  const err435 = { instancePath: instancePath + "/numbers/cycle-dwell/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err435];
                  } else {
                    vErrors.push(err435);
                  }
                  errors++;
                }
                if (typeof data158 == "number" && isFinite(data158)) {
                  if (data158 > 12 || isNaN(data158)) {
                    const err436 = { instancePath: instancePath + "/numbers/cycle-dwell/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err436];
                    } else {
                      vErrors.push(err436);
                    }
                    errors++;
                  }
                  if (data158 < 1 || isNaN(data158)) {
                    const err437 = { instancePath: instancePath + "/numbers/cycle-dwell/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err437];
                    } else {
                      vErrors.push(err437);
                    }
                    errors++;
                  }
                }
                var _valid18 = _errs486 === errors;
                valid123 = valid123 || _valid18;
                if (!valid123) {
                  const err438 = { instancePath: instancePath + "/numbers/cycle-dwell/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err438];
                  } else {
                    vErrors.push(err438);
                  }
                  errors++;
                } else {
                  errors = _errs483;
                  if (vErrors !== null) {
                    if (_errs483) {
                      vErrors.length = _errs483;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
            } else {
              const err439 = { instancePath: instancePath + "/numbers/cycle-dwell", schemaPath: "#/properties/numbers/properties/cycle-dwell/anyOf/1/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err439];
              } else {
                vErrors.push(err439);
              }
              errors++;
            }
            var _valid17 = _errs458 === errors;
            valid114 = valid114 || _valid17;
            if (!valid114) {
              const err440 = { instancePath: instancePath + "/numbers/cycle-dwell", schemaPath: "#/properties/numbers/properties/cycle-dwell/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err440];
              } else {
                vErrors.push(err440);
              }
              errors++;
            } else {
              errors = _errs455;
              if (vErrors !== null) {
                if (_errs455) {
                  vErrors.length = _errs455;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data57.timeout !== void 0) {
            let data159 = data57.timeout;
            const _errs489 = errors;
            let valid124 = false;
            const _errs490 = errors;
            if (!(typeof data159 == "number" && (!(data159 % 1) && !isNaN(data159)) && isFinite(data159))) {
              const err441 = { instancePath: instancePath + "/numbers/timeout", schemaPath: "#/properties/numbers/properties/timeout/anyOf/0/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
              if (vErrors === null) {
                vErrors = [err441];
              } else {
                vErrors.push(err441);
              }
              errors++;
            }
            if (typeof data159 == "number" && isFinite(data159)) {
              if (data159 > 7 || isNaN(data159)) {
                const err442 = { instancePath: instancePath + "/numbers/timeout", schemaPath: "#/properties/numbers/properties/timeout/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                if (vErrors === null) {
                  vErrors = [err442];
                } else {
                  vErrors.push(err442);
                }
                errors++;
              }
              if (data159 < 0 || isNaN(data159)) {
                const err443 = { instancePath: instancePath + "/numbers/timeout", schemaPath: "#/properties/numbers/properties/timeout/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                if (vErrors === null) {
                  vErrors = [err443];
                } else {
                  vErrors.push(err443);
                }
                errors++;
              }
            }
            var _valid19 = _errs490 === errors;
            valid124 = valid124 || _valid19;
            const _errs492 = errors;
            if (data159 && typeof data159 == "object" && !Array.isArray(data159)) {
              for (const key20 in data159) {
                if (!(key20 === "decimals" || key20 === "point" || key20 === "trailing-zeros" || key20 === "leading-zero" || key20 === "plus" || key20 === "suppressed-zeros" || key20 === "digits" || key20 === "whole-digits")) {
                  const err444 = { instancePath: instancePath + "/numbers/timeout", schemaPath: "#/properties/numbers/properties/timeout/anyOf/1/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key20 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err444];
                  } else {
                    vErrors.push(err444);
                  }
                  errors++;
                }
              }
              if (data159.decimals !== void 0) {
                let data160 = data159.decimals;
                if (!(typeof data160 == "number" && (!(data160 % 1) && !isNaN(data160)) && isFinite(data160))) {
                  const err445 = { instancePath: instancePath + "/numbers/timeout/decimals", schemaPath: "#/properties/numbers/properties/timeout/anyOf/1/properties/decimals/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err445];
                  } else {
                    vErrors.push(err445);
                  }
                  errors++;
                }
                if (typeof data160 == "number" && isFinite(data160)) {
                  if (data160 > 7 || isNaN(data160)) {
                    const err446 = { instancePath: instancePath + "/numbers/timeout/decimals", schemaPath: "#/properties/numbers/properties/timeout/anyOf/1/properties/decimals/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                    if (vErrors === null) {
                      vErrors = [err446];
                    } else {
                      vErrors.push(err446);
                    }
                    errors++;
                  }
                  if (data160 < 0 || isNaN(data160)) {
                    const err447 = { instancePath: instancePath + "/numbers/timeout/decimals", schemaPath: "#/properties/numbers/properties/timeout/anyOf/1/properties/decimals/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err447];
                    } else {
                      vErrors.push(err447);
                    }
                    errors++;
                  }
                }
              }
              if (data159.point !== void 0) {
                let data161 = data159.point;
                if (typeof data161 !== "string") {
                  const err448 = { instancePath: instancePath + "/numbers/timeout/point", schemaPath: "#/$defs/own-point/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err448];
                  } else {
                    vErrors.push(err448);
                  }
                  errors++;
                }
                if (!(data161 === "always" || data161 === "when-needed" || data161 === "never")) {
                  const err449 = { instancePath: instancePath + "/numbers/timeout/point", schemaPath: "#/$defs/own-point/enum", keyword: "enum", params: { allowedValues: schema37.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err449];
                  } else {
                    vErrors.push(err449);
                  }
                  errors++;
                }
              }
              if (data159["trailing-zeros"] !== void 0) {
                let data162 = data159["trailing-zeros"];
                if (typeof data162 !== "string") {
                  const err450 = { instancePath: instancePath + "/numbers/timeout/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err450];
                  } else {
                    vErrors.push(err450);
                  }
                  errors++;
                }
                if (!(data162 === "keep" || data162 === "drop" || data162 === "one")) {
                  const err451 = { instancePath: instancePath + "/numbers/timeout/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/enum", keyword: "enum", params: { allowedValues: schema38.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err451];
                  } else {
                    vErrors.push(err451);
                  }
                  errors++;
                }
              }
              if (data159["leading-zero"] !== void 0) {
                let data163 = data159["leading-zero"];
                if (typeof data163 !== "string") {
                  const err452 = { instancePath: instancePath + "/numbers/timeout/leading-zero", schemaPath: "#/$defs/own-leading-zero/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err452];
                  } else {
                    vErrors.push(err452);
                  }
                  errors++;
                }
                if (!(data163 === "keep" || data163 === "drop")) {
                  const err453 = { instancePath: instancePath + "/numbers/timeout/leading-zero", schemaPath: "#/$defs/own-leading-zero/enum", keyword: "enum", params: { allowedValues: schema39.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err453];
                  } else {
                    vErrors.push(err453);
                  }
                  errors++;
                }
              }
              if (data159.plus !== void 0) {
                let data164 = data159.plus;
                if (typeof data164 !== "string") {
                  const err454 = { instancePath: instancePath + "/numbers/timeout/plus", schemaPath: "#/$defs/own-plus/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err454];
                  } else {
                    vErrors.push(err454);
                  }
                  errors++;
                }
                if (!(data164 === "yes" || data164 === "no")) {
                  const err455 = { instancePath: instancePath + "/numbers/timeout/plus", schemaPath: "#/$defs/own-plus/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err455];
                  } else {
                    vErrors.push(err455);
                  }
                  errors++;
                }
              }
              if (data159["suppressed-zeros"] !== void 0) {
                let data165 = data159["suppressed-zeros"];
                if (typeof data165 !== "string") {
                  const err456 = { instancePath: instancePath + "/numbers/timeout/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err456];
                  } else {
                    vErrors.push(err456);
                  }
                  errors++;
                }
                if (!(data165 === "leading" || data165 === "trailing" || data165 === "none")) {
                  const err457 = { instancePath: instancePath + "/numbers/timeout/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/enum", keyword: "enum", params: { allowedValues: schema41.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err457];
                  } else {
                    vErrors.push(err457);
                  }
                  errors++;
                }
              }
              if (data159.digits !== void 0) {
                let data166 = data159.digits;
                if (!(typeof data166 == "number" && (!(data166 % 1) && !isNaN(data166)) && isFinite(data166))) {
                  const err458 = { instancePath: instancePath + "/numbers/timeout/digits", schemaPath: "#/$defs/own-digits/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err458];
                  } else {
                    vErrors.push(err458);
                  }
                  errors++;
                }
                if (typeof data166 == "number" && isFinite(data166)) {
                  if (data166 > 12 || isNaN(data166)) {
                    const err459 = { instancePath: instancePath + "/numbers/timeout/digits", schemaPath: "#/$defs/own-digits/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err459];
                    } else {
                      vErrors.push(err459);
                    }
                    errors++;
                  }
                  if (data166 < 1 || isNaN(data166)) {
                    const err460 = { instancePath: instancePath + "/numbers/timeout/digits", schemaPath: "#/$defs/own-digits/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err460];
                    } else {
                      vErrors.push(err460);
                    }
                    errors++;
                  }
                }
              }
              if (data159["whole-digits"] !== void 0) {
                let data167 = data159["whole-digits"];
                const _errs517 = errors;
                let valid133 = false;
                const _errs518 = errors;
                if (typeof data167 !== "string") {
                  const err461 = { instancePath: instancePath + "/numbers/timeout/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err461];
                  } else {
                    vErrors.push(err461);
                  }
                  errors++;
                }
                if ("none" !== data167) {
                  const err462 = { instancePath: instancePath + "/numbers/timeout/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
                  if (vErrors === null) {
                    vErrors = [err462];
                  } else {
                    vErrors.push(err462);
                  }
                  errors++;
                }
                var _valid20 = _errs518 === errors;
                valid133 = valid133 || _valid20;
                const _errs520 = errors;
                if (!(typeof data167 == "number" && (!(data167 % 1) && !isNaN(data167)) && isFinite(data167))) {
                  const err463 = { instancePath: instancePath + "/numbers/timeout/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err463];
                  } else {
                    vErrors.push(err463);
                  }
                  errors++;
                }
                if (typeof data167 == "number" && isFinite(data167)) {
                  if (data167 > 12 || isNaN(data167)) {
                    const err464 = { instancePath: instancePath + "/numbers/timeout/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err464];
                    } else {
                      vErrors.push(err464);
                    }
                    errors++;
                  }
                  if (data167 < 1 || isNaN(data167)) {
                    const err465 = { instancePath: instancePath + "/numbers/timeout/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf/1/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err465];
                    } else {
                      vErrors.push(err465);
                    }
                    errors++;
                  }
                }
                var _valid20 = _errs520 === errors;
                valid133 = valid133 || _valid20;
                if (!valid133) {
                  const err466 = { instancePath: instancePath + "/numbers/timeout/whole-digits", schemaPath: "#/$defs/own-whole-digits/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err466];
                  } else {
                    vErrors.push(err466);
                  }
                  errors++;
                } else {
                  errors = _errs517;
                  if (vErrors !== null) {
                    if (_errs517) {
                      vErrors.length = _errs517;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
            } else {
              const err467 = { instancePath: instancePath + "/numbers/timeout", schemaPath: "#/properties/numbers/properties/timeout/anyOf/1/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err467];
              } else {
                vErrors.push(err467);
              }
              errors++;
            }
            var _valid19 = _errs492 === errors;
            valid124 = valid124 || _valid19;
            if (!valid124) {
              const err468 = { instancePath: instancePath + "/numbers/timeout", schemaPath: "#/properties/numbers/properties/timeout/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err468];
              } else {
                vErrors.push(err468);
              }
              errors++;
            } else {
              errors = _errs489;
              if (vErrors !== null) {
                if (_errs489) {
                  vErrors.length = _errs489;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data57["code-width"] !== void 0) {
            let data168 = data57["code-width"];
            if (data168 && typeof data168 == "object" && !Array.isArray(data168)) {
              for (const key21 in data168) {
                if (!(key21 === "G" || key21 === "M" || key21 === "T" || key21 === "H" || key21 === "D")) {
                  const err469 = { instancePath: instancePath + "/numbers/code-width", schemaPath: "#/properties/numbers/properties/code-width/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key21 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err469];
                  } else {
                    vErrors.push(err469);
                  }
                  errors++;
                }
              }
              if (data168.G !== void 0) {
                let data169 = data168.G;
                if (!(typeof data169 == "number" && (!(data169 % 1) && !isNaN(data169)) && isFinite(data169))) {
                  const err470 = { instancePath: instancePath + "/numbers/code-width/G", schemaPath: "#/properties/numbers/properties/code-width/properties/G/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err470];
                  } else {
                    vErrors.push(err470);
                  }
                  errors++;
                }
                if (typeof data169 == "number" && isFinite(data169)) {
                  if (data169 > 4 || isNaN(data169)) {
                    const err471 = { instancePath: instancePath + "/numbers/code-width/G", schemaPath: "#/properties/numbers/properties/code-width/properties/G/maximum", keyword: "maximum", params: { comparison: "<=", limit: 4 }, message: "must be <= 4" };
                    if (vErrors === null) {
                      vErrors = [err471];
                    } else {
                      vErrors.push(err471);
                    }
                    errors++;
                  }
                  if (data169 < 1 || isNaN(data169)) {
                    const err472 = { instancePath: instancePath + "/numbers/code-width/G", schemaPath: "#/properties/numbers/properties/code-width/properties/G/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err472];
                    } else {
                      vErrors.push(err472);
                    }
                    errors++;
                  }
                }
              }
              if (data168.M !== void 0) {
                let data170 = data168.M;
                if (!(typeof data170 == "number" && (!(data170 % 1) && !isNaN(data170)) && isFinite(data170))) {
                  const err473 = { instancePath: instancePath + "/numbers/code-width/M", schemaPath: "#/properties/numbers/properties/code-width/properties/M/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err473];
                  } else {
                    vErrors.push(err473);
                  }
                  errors++;
                }
                if (typeof data170 == "number" && isFinite(data170)) {
                  if (data170 > 4 || isNaN(data170)) {
                    const err474 = { instancePath: instancePath + "/numbers/code-width/M", schemaPath: "#/properties/numbers/properties/code-width/properties/M/maximum", keyword: "maximum", params: { comparison: "<=", limit: 4 }, message: "must be <= 4" };
                    if (vErrors === null) {
                      vErrors = [err474];
                    } else {
                      vErrors.push(err474);
                    }
                    errors++;
                  }
                  if (data170 < 1 || isNaN(data170)) {
                    const err475 = { instancePath: instancePath + "/numbers/code-width/M", schemaPath: "#/properties/numbers/properties/code-width/properties/M/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err475];
                    } else {
                      vErrors.push(err475);
                    }
                    errors++;
                  }
                }
              }
              if (data168.T !== void 0) {
                let data171 = data168.T;
                if (!(typeof data171 == "number" && (!(data171 % 1) && !isNaN(data171)) && isFinite(data171))) {
                  const err476 = { instancePath: instancePath + "/numbers/code-width/T", schemaPath: "#/properties/numbers/properties/code-width/properties/T/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err476];
                  } else {
                    vErrors.push(err476);
                  }
                  errors++;
                }
                if (typeof data171 == "number" && isFinite(data171)) {
                  if (data171 > 4 || isNaN(data171)) {
                    const err477 = { instancePath: instancePath + "/numbers/code-width/T", schemaPath: "#/properties/numbers/properties/code-width/properties/T/maximum", keyword: "maximum", params: { comparison: "<=", limit: 4 }, message: "must be <= 4" };
                    if (vErrors === null) {
                      vErrors = [err477];
                    } else {
                      vErrors.push(err477);
                    }
                    errors++;
                  }
                  if (data171 < 1 || isNaN(data171)) {
                    const err478 = { instancePath: instancePath + "/numbers/code-width/T", schemaPath: "#/properties/numbers/properties/code-width/properties/T/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err478];
                    } else {
                      vErrors.push(err478);
                    }
                    errors++;
                  }
                }
              }
              if (data168.H !== void 0) {
                let data172 = data168.H;
                if (!(typeof data172 == "number" && (!(data172 % 1) && !isNaN(data172)) && isFinite(data172))) {
                  const err479 = { instancePath: instancePath + "/numbers/code-width/H", schemaPath: "#/properties/numbers/properties/code-width/properties/H/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err479];
                  } else {
                    vErrors.push(err479);
                  }
                  errors++;
                }
                if (typeof data172 == "number" && isFinite(data172)) {
                  if (data172 > 4 || isNaN(data172)) {
                    const err480 = { instancePath: instancePath + "/numbers/code-width/H", schemaPath: "#/properties/numbers/properties/code-width/properties/H/maximum", keyword: "maximum", params: { comparison: "<=", limit: 4 }, message: "must be <= 4" };
                    if (vErrors === null) {
                      vErrors = [err480];
                    } else {
                      vErrors.push(err480);
                    }
                    errors++;
                  }
                  if (data172 < 1 || isNaN(data172)) {
                    const err481 = { instancePath: instancePath + "/numbers/code-width/H", schemaPath: "#/properties/numbers/properties/code-width/properties/H/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err481];
                    } else {
                      vErrors.push(err481);
                    }
                    errors++;
                  }
                }
              }
              if (data168.D !== void 0) {
                let data173 = data168.D;
                if (!(typeof data173 == "number" && (!(data173 % 1) && !isNaN(data173)) && isFinite(data173))) {
                  const err482 = { instancePath: instancePath + "/numbers/code-width/D", schemaPath: "#/properties/numbers/properties/code-width/properties/D/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err482];
                  } else {
                    vErrors.push(err482);
                  }
                  errors++;
                }
                if (typeof data173 == "number" && isFinite(data173)) {
                  if (data173 > 4 || isNaN(data173)) {
                    const err483 = { instancePath: instancePath + "/numbers/code-width/D", schemaPath: "#/properties/numbers/properties/code-width/properties/D/maximum", keyword: "maximum", params: { comparison: "<=", limit: 4 }, message: "must be <= 4" };
                    if (vErrors === null) {
                      vErrors = [err483];
                    } else {
                      vErrors.push(err483);
                    }
                    errors++;
                  }
                  if (data173 < 1 || isNaN(data173)) {
                    const err484 = { instancePath: instancePath + "/numbers/code-width/D", schemaPath: "#/properties/numbers/properties/code-width/properties/D/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err484];
                    } else {
                      vErrors.push(err484);
                    }
                    errors++;
                  }
                }
              }
            } else {
              const err485 = { instancePath: instancePath + "/numbers/code-width", schemaPath: "#/properties/numbers/properties/code-width/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err485];
              } else {
                vErrors.push(err485);
              }
              errors++;
            }
          }
        } else {
          const err486 = { instancePath: instancePath + "/numbers", schemaPath: "#/properties/numbers/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err486];
          } else {
            vErrors.push(err486);
          }
          errors++;
        }
      }
      if (data.modal !== void 0) {
        let data174 = data.modal;
        if (data174 && typeof data174 == "object" && !Array.isArray(data174)) {
          for (const key22 in data174) {
            if (!(key22 === "motion" || key22 === "axes" || key22 === "arc-end" || key22 === "arc-centre" || key22 === "feed" || key22 === "speed")) {
              const err487 = { instancePath: instancePath + "/modal", schemaPath: "#/properties/modal/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key22 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err487];
              } else {
                vErrors.push(err487);
              }
              errors++;
            }
          }
          if (data174.motion !== void 0) {
            let data175 = data174.motion;
            if (typeof data175 !== "string") {
              const err488 = { instancePath: instancePath + "/modal/motion", schemaPath: "#/properties/modal/properties/motion/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err488];
              } else {
                vErrors.push(err488);
              }
              errors++;
            }
            if (!(data175 === "modal" || data175 === "each-block")) {
              const err489 = { instancePath: instancePath + "/modal/motion", schemaPath: "#/properties/modal/properties/motion/enum", keyword: "enum", params: { allowedValues: schema31.properties.modal.properties.motion.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err489];
              } else {
                vErrors.push(err489);
              }
              errors++;
            }
          }
          if (data174.axes !== void 0) {
            let data176 = data174.axes;
            if (typeof data176 !== "string") {
              const err490 = { instancePath: instancePath + "/modal/axes", schemaPath: "#/properties/modal/properties/axes/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err490];
              } else {
                vErrors.push(err490);
              }
              errors++;
            }
            if (!(data176 === "changed" || data176 === "all")) {
              const err491 = { instancePath: instancePath + "/modal/axes", schemaPath: "#/properties/modal/properties/axes/enum", keyword: "enum", params: { allowedValues: schema31.properties.modal.properties.axes.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err491];
              } else {
                vErrors.push(err491);
              }
              errors++;
            }
          }
          if (data174["arc-end"] !== void 0) {
            let data177 = data174["arc-end"];
            if (typeof data177 !== "string") {
              const err492 = { instancePath: instancePath + "/modal/arc-end", schemaPath: "#/properties/modal/properties/arc-end/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err492];
              } else {
                vErrors.push(err492);
              }
              errors++;
            }
            if (!(data177 === "changed" || data177 === "both")) {
              const err493 = { instancePath: instancePath + "/modal/arc-end", schemaPath: "#/properties/modal/properties/arc-end/enum", keyword: "enum", params: { allowedValues: schema31.properties.modal.properties["arc-end"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err493];
              } else {
                vErrors.push(err493);
              }
              errors++;
            }
          }
          if (data174["arc-centre"] !== void 0) {
            let data178 = data174["arc-centre"];
            if (typeof data178 !== "string") {
              const err494 = { instancePath: instancePath + "/modal/arc-centre", schemaPath: "#/properties/modal/properties/arc-centre/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err494];
              } else {
                vErrors.push(err494);
              }
              errors++;
            }
            if (!(data178 === "non-zero" || data178 === "both")) {
              const err495 = { instancePath: instancePath + "/modal/arc-centre", schemaPath: "#/properties/modal/properties/arc-centre/enum", keyword: "enum", params: { allowedValues: schema31.properties.modal.properties["arc-centre"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err495];
              } else {
                vErrors.push(err495);
              }
              errors++;
            }
          }
          if (data174.feed !== void 0) {
            let data179 = data174.feed;
            if (typeof data179 !== "string") {
              const err496 = { instancePath: instancePath + "/modal/feed", schemaPath: "#/properties/modal/properties/feed/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err496];
              } else {
                vErrors.push(err496);
              }
              errors++;
            }
            if (!(data179 === "modal" || data179 === "after-rapid" || data179 === "each-block")) {
              const err497 = { instancePath: instancePath + "/modal/feed", schemaPath: "#/properties/modal/properties/feed/enum", keyword: "enum", params: { allowedValues: schema31.properties.modal.properties.feed.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err497];
              } else {
                vErrors.push(err497);
              }
              errors++;
            }
          }
          if (data174.speed !== void 0) {
            let data180 = data174.speed;
            if (typeof data180 !== "string") {
              const err498 = { instancePath: instancePath + "/modal/speed", schemaPath: "#/properties/modal/properties/speed/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err498];
              } else {
                vErrors.push(err498);
              }
              errors++;
            }
            if (!(data180 === "each-start" || data180 === "changed")) {
              const err499 = { instancePath: instancePath + "/modal/speed", schemaPath: "#/properties/modal/properties/speed/enum", keyword: "enum", params: { allowedValues: schema31.properties.modal.properties.speed.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err499];
              } else {
                vErrors.push(err499);
              }
              errors++;
            }
          }
        } else {
          const err500 = { instancePath: instancePath + "/modal", schemaPath: "#/properties/modal/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err500];
          } else {
            vErrors.push(err500);
          }
          errors++;
        }
      }
      if (data.axes !== void 0) {
        let data181 = data.axes;
        if (data181 && typeof data181 == "object" && !Array.isArray(data181)) {
          for (const key23 in data181) {
            if (!(key23 === "x" || key23 === "y" || key23 === "z" || key23 === "a" || key23 === "b" || key23 === "c")) {
              const err501 = { instancePath: instancePath + "/axes", schemaPath: "#/properties/axes/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key23 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err501];
              } else {
                vErrors.push(err501);
              }
              errors++;
            }
          }
          if (data181.x !== void 0) {
            let data182 = data181.x;
            if (typeof data182 !== "string") {
              const err502 = { instancePath: instancePath + "/axes/x", schemaPath: "#/$defs/axisLetter/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err502];
              } else {
                vErrors.push(err502);
              }
              errors++;
            }
            if (!(data182 === "X" || data182 === "Y" || data182 === "Z" || data182 === "A" || data182 === "B" || data182 === "C" || data182 === "U" || data182 === "V" || data182 === "W")) {
              const err503 = { instancePath: instancePath + "/axes/x", schemaPath: "#/$defs/axisLetter/enum", keyword: "enum", params: { allowedValues: schema113.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err503];
              } else {
                vErrors.push(err503);
              }
              errors++;
            }
          }
          if (data181.y !== void 0) {
            let data183 = data181.y;
            if (typeof data183 !== "string") {
              const err504 = { instancePath: instancePath + "/axes/y", schemaPath: "#/$defs/axisLetter/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err504];
              } else {
                vErrors.push(err504);
              }
              errors++;
            }
            if (!(data183 === "X" || data183 === "Y" || data183 === "Z" || data183 === "A" || data183 === "B" || data183 === "C" || data183 === "U" || data183 === "V" || data183 === "W")) {
              const err505 = { instancePath: instancePath + "/axes/y", schemaPath: "#/$defs/axisLetter/enum", keyword: "enum", params: { allowedValues: schema113.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err505];
              } else {
                vErrors.push(err505);
              }
              errors++;
            }
          }
          if (data181.z !== void 0) {
            let data184 = data181.z;
            if (typeof data184 !== "string") {
              const err506 = { instancePath: instancePath + "/axes/z", schemaPath: "#/$defs/axisLetter/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err506];
              } else {
                vErrors.push(err506);
              }
              errors++;
            }
            if (!(data184 === "X" || data184 === "Y" || data184 === "Z" || data184 === "A" || data184 === "B" || data184 === "C" || data184 === "U" || data184 === "V" || data184 === "W")) {
              const err507 = { instancePath: instancePath + "/axes/z", schemaPath: "#/$defs/axisLetter/enum", keyword: "enum", params: { allowedValues: schema113.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err507];
              } else {
                vErrors.push(err507);
              }
              errors++;
            }
          }
          if (data181.a !== void 0) {
            let data185 = data181.a;
            if (typeof data185 !== "string") {
              const err508 = { instancePath: instancePath + "/axes/a", schemaPath: "#/$defs/axisLetter/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err508];
              } else {
                vErrors.push(err508);
              }
              errors++;
            }
            if (!(data185 === "X" || data185 === "Y" || data185 === "Z" || data185 === "A" || data185 === "B" || data185 === "C" || data185 === "U" || data185 === "V" || data185 === "W")) {
              const err509 = { instancePath: instancePath + "/axes/a", schemaPath: "#/$defs/axisLetter/enum", keyword: "enum", params: { allowedValues: schema113.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err509];
              } else {
                vErrors.push(err509);
              }
              errors++;
            }
          }
          if (data181.b !== void 0) {
            let data186 = data181.b;
            if (typeof data186 !== "string") {
              const err510 = { instancePath: instancePath + "/axes/b", schemaPath: "#/$defs/axisLetter/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err510];
              } else {
                vErrors.push(err510);
              }
              errors++;
            }
            if (!(data186 === "X" || data186 === "Y" || data186 === "Z" || data186 === "A" || data186 === "B" || data186 === "C" || data186 === "U" || data186 === "V" || data186 === "W")) {
              const err511 = { instancePath: instancePath + "/axes/b", schemaPath: "#/$defs/axisLetter/enum", keyword: "enum", params: { allowedValues: schema113.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err511];
              } else {
                vErrors.push(err511);
              }
              errors++;
            }
          }
          if (data181.c !== void 0) {
            let data187 = data181.c;
            if (typeof data187 !== "string") {
              const err512 = { instancePath: instancePath + "/axes/c", schemaPath: "#/$defs/axisLetter/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err512];
              } else {
                vErrors.push(err512);
              }
              errors++;
            }
            if (!(data187 === "X" || data187 === "Y" || data187 === "Z" || data187 === "A" || data187 === "B" || data187 === "C" || data187 === "U" || data187 === "V" || data187 === "W")) {
              const err513 = { instancePath: instancePath + "/axes/c", schemaPath: "#/$defs/axisLetter/enum", keyword: "enum", params: { allowedValues: schema113.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err513];
              } else {
                vErrors.push(err513);
              }
              errors++;
            }
          }
        } else {
          const err514 = { instancePath: instancePath + "/axes", schemaPath: "#/properties/axes/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err514];
          } else {
            vErrors.push(err514);
          }
          errors++;
        }
      }
      if (data.motion !== void 0) {
        let data188 = data.motion;
        if (data188 && typeof data188 == "object" && !Array.isArray(data188)) {
          for (const key24 in data188) {
            if (!(key24 === "rapid" || key24 === "line" || key24 === "rapids" || key24 === "rapid-axes" || key24 === "axes-at-once" || key24 === "rapid-feed" || key24 === "machine-move-lasts")) {
              const err515 = { instancePath: instancePath + "/motion", schemaPath: "#/properties/motion/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key24 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err515];
              } else {
                vErrors.push(err515);
              }
              errors++;
            }
          }
          if (data188.rapid !== void 0) {
            let data189 = data188.rapid;
            if (typeof data189 === "string") {
              if (!pattern7.test(data189)) {
                const err516 = { instancePath: instancePath + "/motion/rapid", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err516];
                } else {
                  vErrors.push(err516);
                }
                errors++;
              }
            } else {
              const err517 = { instancePath: instancePath + "/motion/rapid", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err517];
              } else {
                vErrors.push(err517);
              }
              errors++;
            }
          }
          if (data188.line !== void 0) {
            let data190 = data188.line;
            if (typeof data190 === "string") {
              if (!pattern7.test(data190)) {
                const err518 = { instancePath: instancePath + "/motion/line", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err518];
                } else {
                  vErrors.push(err518);
                }
                errors++;
              }
            } else {
              const err519 = { instancePath: instancePath + "/motion/line", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err519];
              } else {
                vErrors.push(err519);
              }
              errors++;
            }
          }
          if (data188.rapids !== void 0) {
            let data191 = data188.rapids;
            if (typeof data191 !== "string") {
              const err520 = { instancePath: instancePath + "/motion/rapids", schemaPath: "#/properties/motion/properties/rapids/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err520];
              } else {
                vErrors.push(err520);
              }
              errors++;
            }
            if (!(data191 === "straight" || data191 === "dog-leg")) {
              const err521 = { instancePath: instancePath + "/motion/rapids", schemaPath: "#/properties/motion/properties/rapids/enum", keyword: "enum", params: { allowedValues: schema31.properties.motion.properties.rapids.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err521];
              } else {
                vErrors.push(err521);
              }
              errors++;
            }
          }
          if (data188["rapid-axes"] !== void 0) {
            let data192 = data188["rapid-axes"];
            if (typeof data192 !== "string") {
              const err522 = { instancePath: instancePath + "/motion/rapid-axes", schemaPath: "#/properties/motion/properties/rapid-axes/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err522];
              } else {
                vErrors.push(err522);
              }
              errors++;
            }
            if (!(data192 === "together" || data192 === "one-at-a-time")) {
              const err523 = { instancePath: instancePath + "/motion/rapid-axes", schemaPath: "#/properties/motion/properties/rapid-axes/enum", keyword: "enum", params: { allowedValues: schema31.properties.motion.properties["rapid-axes"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err523];
              } else {
                vErrors.push(err523);
              }
              errors++;
            }
          }
          if (data188["axes-at-once"] !== void 0) {
            let data193 = data188["axes-at-once"];
            if (!(typeof data193 == "number" && (!(data193 % 1) && !isNaN(data193)) && isFinite(data193))) {
              const err524 = { instancePath: instancePath + "/motion/axes-at-once", schemaPath: "#/properties/motion/properties/axes-at-once/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
              if (vErrors === null) {
                vErrors = [err524];
              } else {
                vErrors.push(err524);
              }
              errors++;
            }
            if (typeof data193 == "number" && isFinite(data193)) {
              if (data193 > 6 || isNaN(data193)) {
                const err525 = { instancePath: instancePath + "/motion/axes-at-once", schemaPath: "#/properties/motion/properties/axes-at-once/maximum", keyword: "maximum", params: { comparison: "<=", limit: 6 }, message: "must be <= 6" };
                if (vErrors === null) {
                  vErrors = [err525];
                } else {
                  vErrors.push(err525);
                }
                errors++;
              }
              if (data193 < 2 || isNaN(data193)) {
                const err526 = { instancePath: instancePath + "/motion/axes-at-once", schemaPath: "#/properties/motion/properties/axes-at-once/minimum", keyword: "minimum", params: { comparison: ">=", limit: 2 }, message: "must be >= 2" };
                if (vErrors === null) {
                  vErrors = [err526];
                } else {
                  vErrors.push(err526);
                }
                errors++;
              }
            }
          }
          if (data188["rapid-feed"] !== void 0) {
            let data194 = data188["rapid-feed"];
            const _errs587 = errors;
            let valid146 = false;
            const _errs588 = errors;
            if (typeof data194 !== "string") {
              const err527 = { instancePath: instancePath + "/motion/rapid-feed", schemaPath: "#/properties/motion/properties/rapid-feed/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err527];
              } else {
                vErrors.push(err527);
              }
              errors++;
            }
            if ("none" !== data194) {
              const err528 = { instancePath: instancePath + "/motion/rapid-feed", schemaPath: "#/properties/motion/properties/rapid-feed/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
              if (vErrors === null) {
                vErrors = [err528];
              } else {
                vErrors.push(err528);
              }
              errors++;
            }
            var _valid21 = _errs588 === errors;
            valid146 = valid146 || _valid21;
            const _errs590 = errors;
            const _errs592 = errors;
            let valid148 = false;
            const _errs593 = errors;
            if (typeof data194 == "number" && isFinite(data194)) {
              if (data194 > 1e6 || isNaN(data194)) {
                const err529 = { instancePath: instancePath + "/motion/rapid-feed", schemaPath: "#/$defs/feed/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                if (vErrors === null) {
                  vErrors = [err529];
                } else {
                  vErrors.push(err529);
                }
                errors++;
              }
              if (data194 <= 0 || isNaN(data194)) {
                const err530 = { instancePath: instancePath + "/motion/rapid-feed", schemaPath: "#/$defs/feed/anyOf/0/exclusiveMinimum", keyword: "exclusiveMinimum", params: { comparison: ">", limit: 0 }, message: "must be > 0" };
                if (vErrors === null) {
                  vErrors = [err530];
                } else {
                  vErrors.push(err530);
                }
                errors++;
              }
            } else {
              const err531 = { instancePath: instancePath + "/motion/rapid-feed", schemaPath: "#/$defs/feed/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
              if (vErrors === null) {
                vErrors = [err531];
              } else {
                vErrors.push(err531);
              }
              errors++;
            }
            var _valid22 = _errs593 === errors;
            valid148 = valid148 || _valid22;
            const _errs595 = errors;
            if (typeof data194 === "string") {
              if (!pattern9.test(data194)) {
                const err532 = { instancePath: instancePath + "/motion/rapid-feed", schemaPath: "#/$defs/feed/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^\\d{1,5}(\\.\\d{1,5})? (mm|in)/min$" }, message: 'must match pattern "^\\d{1,5}(\\.\\d{1,5})? (mm|in)/min$"' };
                if (vErrors === null) {
                  vErrors = [err532];
                } else {
                  vErrors.push(err532);
                }
                errors++;
              }
            } else {
              const err533 = { instancePath: instancePath + "/motion/rapid-feed", schemaPath: "#/$defs/feed/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err533];
              } else {
                vErrors.push(err533);
              }
              errors++;
            }
            var _valid22 = _errs595 === errors;
            valid148 = valid148 || _valid22;
            if (!valid148) {
              const err534 = { instancePath: instancePath + "/motion/rapid-feed", schemaPath: "#/$defs/feed/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err534];
              } else {
                vErrors.push(err534);
              }
              errors++;
            } else {
              errors = _errs592;
              if (vErrors !== null) {
                if (_errs592) {
                  vErrors.length = _errs592;
                } else {
                  vErrors = null;
                }
              }
            }
            var _valid21 = _errs590 === errors;
            valid146 = valid146 || _valid21;
            if (!valid146) {
              const err535 = { instancePath: instancePath + "/motion/rapid-feed", schemaPath: "#/properties/motion/properties/rapid-feed/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err535];
              } else {
                vErrors.push(err535);
              }
              errors++;
            } else {
              errors = _errs587;
              if (vErrors !== null) {
                if (_errs587) {
                  vErrors.length = _errs587;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data188["machine-move-lasts"] !== void 0) {
            let data195 = data188["machine-move-lasts"];
            if (typeof data195 !== "string") {
              const err536 = { instancePath: instancePath + "/motion/machine-move-lasts", schemaPath: "#/properties/motion/properties/machine-move-lasts/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err536];
              } else {
                vErrors.push(err536);
              }
              errors++;
            }
            if (!(data195 === "block" || data195 === "until-work-offset")) {
              const err537 = { instancePath: instancePath + "/motion/machine-move-lasts", schemaPath: "#/properties/motion/properties/machine-move-lasts/enum", keyword: "enum", params: { allowedValues: schema31.properties.motion.properties["machine-move-lasts"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err537];
              } else {
                vErrors.push(err537);
              }
              errors++;
            }
          }
        } else {
          const err538 = { instancePath: instancePath + "/motion", schemaPath: "#/properties/motion/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err538];
          } else {
            vErrors.push(err538);
          }
          errors++;
        }
      }
      if (data.units !== void 0) {
        let data196 = data.units;
        if (data196 && typeof data196 == "object" && !Array.isArray(data196)) {
          for (const key25 in data196) {
            if (!(key25 === "mm" || key25 === "inch" || key25 === "programs-in" || key25 === "stated")) {
              const err539 = { instancePath: instancePath + "/units", schemaPath: "#/properties/units/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key25 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err539];
              } else {
                vErrors.push(err539);
              }
              errors++;
            }
          }
          if (data196.mm !== void 0) {
            let data197 = data196.mm;
            if (typeof data197 === "string") {
              if (!pattern7.test(data197)) {
                const err540 = { instancePath: instancePath + "/units/mm", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err540];
                } else {
                  vErrors.push(err540);
                }
                errors++;
              }
            } else {
              const err541 = { instancePath: instancePath + "/units/mm", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err541];
              } else {
                vErrors.push(err541);
              }
              errors++;
            }
          }
          if (data196.inch !== void 0) {
            let data198 = data196.inch;
            if (typeof data198 === "string") {
              if (!pattern7.test(data198)) {
                const err542 = { instancePath: instancePath + "/units/inch", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err542];
                } else {
                  vErrors.push(err542);
                }
                errors++;
              }
            } else {
              const err543 = { instancePath: instancePath + "/units/inch", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err543];
              } else {
                vErrors.push(err543);
              }
              errors++;
            }
          }
          if (data196["programs-in"] !== void 0) {
            let data199 = data196["programs-in"];
            if (typeof data199 !== "string") {
              const err544 = { instancePath: instancePath + "/units/programs-in", schemaPath: "#/properties/units/properties/programs-in/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err544];
              } else {
                vErrors.push(err544);
              }
              errors++;
            }
            if (!(data199 === "job" || data199 === "mm" || data199 === "inch")) {
              const err545 = { instancePath: instancePath + "/units/programs-in", schemaPath: "#/properties/units/properties/programs-in/enum", keyword: "enum", params: { allowedValues: schema31.properties.units.properties["programs-in"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err545];
              } else {
                vErrors.push(err545);
              }
              errors++;
            }
          }
          if (data196.stated !== void 0) {
            let data200 = data196.stated;
            if (typeof data200 !== "string") {
              const err546 = { instancePath: instancePath + "/units/stated", schemaPath: "#/properties/units/properties/stated/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err546];
              } else {
                vErrors.push(err546);
              }
              errors++;
            }
            if (!(data200 === "with-modes" || data200 === "first-block")) {
              const err547 = { instancePath: instancePath + "/units/stated", schemaPath: "#/properties/units/properties/stated/enum", keyword: "enum", params: { allowedValues: schema31.properties.units.properties.stated.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err547];
              } else {
                vErrors.push(err547);
              }
              errors++;
            }
          }
        } else {
          const err548 = { instancePath: instancePath + "/units", schemaPath: "#/properties/units/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err548];
          } else {
            vErrors.push(err548);
          }
          errors++;
        }
      }
      if (data.plane !== void 0) {
        let data201 = data.plane;
        if (data201 && typeof data201 == "object" && !Array.isArray(data201)) {
          for (const key26 in data201) {
            if (!(key26 === "xy" || key26 === "zx" || key26 === "yz")) {
              const err549 = { instancePath: instancePath + "/plane", schemaPath: "#/properties/plane/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key26 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err549];
              } else {
                vErrors.push(err549);
              }
              errors++;
            }
          }
          if (data201.xy !== void 0) {
            let data202 = data201.xy;
            if (typeof data202 === "string") {
              if (!pattern7.test(data202)) {
                const err550 = { instancePath: instancePath + "/plane/xy", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err550];
                } else {
                  vErrors.push(err550);
                }
                errors++;
              }
            } else {
              const err551 = { instancePath: instancePath + "/plane/xy", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err551];
              } else {
                vErrors.push(err551);
              }
              errors++;
            }
          }
          if (data201.zx !== void 0) {
            let data203 = data201.zx;
            if (typeof data203 === "string") {
              if (!pattern7.test(data203)) {
                const err552 = { instancePath: instancePath + "/plane/zx", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err552];
                } else {
                  vErrors.push(err552);
                }
                errors++;
              }
            } else {
              const err553 = { instancePath: instancePath + "/plane/zx", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err553];
              } else {
                vErrors.push(err553);
              }
              errors++;
            }
          }
          if (data201.yz !== void 0) {
            let data204 = data201.yz;
            if (typeof data204 === "string") {
              if (!pattern7.test(data204)) {
                const err554 = { instancePath: instancePath + "/plane/yz", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err554];
                } else {
                  vErrors.push(err554);
                }
                errors++;
              }
            } else {
              const err555 = { instancePath: instancePath + "/plane/yz", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err555];
              } else {
                vErrors.push(err555);
              }
              errors++;
            }
          }
        } else {
          const err556 = { instancePath: instancePath + "/plane", schemaPath: "#/properties/plane/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err556];
          } else {
            vErrors.push(err556);
          }
          errors++;
        }
      }
      if (data.distance !== void 0) {
        let data205 = data.distance;
        if (data205 && typeof data205 == "object" && !Array.isArray(data205)) {
          for (const key27 in data205) {
            if (!(key27 === "absolute" || key27 === "incremental" || key27 === "programs-in")) {
              const err557 = { instancePath: instancePath + "/distance", schemaPath: "#/properties/distance/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key27 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err557];
              } else {
                vErrors.push(err557);
              }
              errors++;
            }
          }
          if (data205.absolute !== void 0) {
            let data206 = data205.absolute;
            if (typeof data206 === "string") {
              if (!pattern7.test(data206)) {
                const err558 = { instancePath: instancePath + "/distance/absolute", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err558];
                } else {
                  vErrors.push(err558);
                }
                errors++;
              }
            } else {
              const err559 = { instancePath: instancePath + "/distance/absolute", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err559];
              } else {
                vErrors.push(err559);
              }
              errors++;
            }
          }
          if (data205.incremental !== void 0) {
            let data207 = data205.incremental;
            if (typeof data207 === "string") {
              if (!pattern7.test(data207)) {
                const err560 = { instancePath: instancePath + "/distance/incremental", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err560];
                } else {
                  vErrors.push(err560);
                }
                errors++;
              }
            } else {
              const err561 = { instancePath: instancePath + "/distance/incremental", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err561];
              } else {
                vErrors.push(err561);
              }
              errors++;
            }
          }
          if (data205["programs-in"] !== void 0) {
            let data208 = data205["programs-in"];
            if (typeof data208 !== "string") {
              const err562 = { instancePath: instancePath + "/distance/programs-in", schemaPath: "#/properties/distance/properties/programs-in/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err562];
              } else {
                vErrors.push(err562);
              }
              errors++;
            }
            if (!(data208 === "absolute" || data208 === "incremental")) {
              const err563 = { instancePath: instancePath + "/distance/programs-in", schemaPath: "#/properties/distance/properties/programs-in/enum", keyword: "enum", params: { allowedValues: schema31.properties.distance.properties["programs-in"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err563];
              } else {
                vErrors.push(err563);
              }
              errors++;
            }
          }
        } else {
          const err564 = { instancePath: instancePath + "/distance", schemaPath: "#/properties/distance/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err564];
          } else {
            vErrors.push(err564);
          }
          errors++;
        }
      }
      if (data.arc !== void 0) {
        let data209 = data.arc;
        if (data209 && typeof data209 == "object" && !Array.isArray(data209)) {
          for (const key28 in data209) {
            if (!func1.call(schema31.properties.arc.properties, key28)) {
              const err565 = { instancePath: instancePath + "/arc", schemaPath: "#/properties/arc/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key28 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err565];
              } else {
                vErrors.push(err565);
              }
              errors++;
            }
          }
          if (data209.cw !== void 0) {
            let data210 = data209.cw;
            if (typeof data210 === "string") {
              if (!pattern7.test(data210)) {
                const err566 = { instancePath: instancePath + "/arc/cw", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err566];
                } else {
                  vErrors.push(err566);
                }
                errors++;
              }
            } else {
              const err567 = { instancePath: instancePath + "/arc/cw", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err567];
              } else {
                vErrors.push(err567);
              }
              errors++;
            }
          }
          if (data209.ccw !== void 0) {
            let data211 = data209.ccw;
            if (typeof data211 === "string") {
              if (!pattern7.test(data211)) {
                const err568 = { instancePath: instancePath + "/arc/ccw", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err568];
                } else {
                  vErrors.push(err568);
                }
                errors++;
              }
            } else {
              const err569 = { instancePath: instancePath + "/arc/ccw", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err569];
              } else {
                vErrors.push(err569);
              }
              errors++;
            }
          }
          if (data209.form !== void 0) {
            let data212 = data209.form;
            if (typeof data212 !== "string") {
              const err570 = { instancePath: instancePath + "/arc/form", schemaPath: "#/properties/arc/properties/form/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err570];
              } else {
                vErrors.push(err570);
              }
              errors++;
            }
            if (!(data212 === "incremental-centre" || data212 === "absolute-centre" || data212 === "radius" || data212 === "none")) {
              const err571 = { instancePath: instancePath + "/arc/form", schemaPath: "#/properties/arc/properties/form/enum", keyword: "enum", params: { allowedValues: schema31.properties.arc.properties.form.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err571];
              } else {
                vErrors.push(err571);
              }
              errors++;
            }
          }
          if (data209["centre-words"] !== void 0) {
            let data213 = data209["centre-words"];
            if (data213 && typeof data213 == "object" && !Array.isArray(data213)) {
              for (const key29 in data213) {
                if (!(key29 === "absolute" || key29 === "incremental")) {
                  const err572 = { instancePath: instancePath + "/arc/centre-words", schemaPath: "#/properties/arc/properties/centre-words/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key29 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err572];
                  } else {
                    vErrors.push(err572);
                  }
                  errors++;
                }
              }
              if (data213.absolute !== void 0) {
                let data214 = data213.absolute;
                if (typeof data214 === "string") {
                  if (!pattern7.test(data214)) {
                    const err573 = { instancePath: instancePath + "/arc/centre-words/absolute", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                    if (vErrors === null) {
                      vErrors = [err573];
                    } else {
                      vErrors.push(err573);
                    }
                    errors++;
                  }
                } else {
                  const err574 = { instancePath: instancePath + "/arc/centre-words/absolute", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err574];
                  } else {
                    vErrors.push(err574);
                  }
                  errors++;
                }
              }
              if (data213.incremental !== void 0) {
                let data215 = data213.incremental;
                if (typeof data215 === "string") {
                  if (!pattern7.test(data215)) {
                    const err575 = { instancePath: instancePath + "/arc/centre-words/incremental", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                    if (vErrors === null) {
                      vErrors = [err575];
                    } else {
                      vErrors.push(err575);
                    }
                    errors++;
                  }
                } else {
                  const err576 = { instancePath: instancePath + "/arc/centre-words/incremental", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err576];
                  } else {
                    vErrors.push(err576);
                  }
                  errors++;
                }
              }
            } else {
              const err577 = { instancePath: instancePath + "/arc/centre-words", schemaPath: "#/properties/arc/properties/centre-words/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err577];
              } else {
                vErrors.push(err577);
              }
              errors++;
            }
          }
          if (data209["radius-word"] !== void 0) {
            let data216 = data209["radius-word"];
            if (typeof data216 === "string") {
              if (!pattern6.test(data216)) {
                const err578 = { instancePath: instancePath + "/arc/radius-word", schemaPath: "#/$defs/letter/pattern", keyword: "pattern", params: { pattern: "^[A-Z]$" }, message: 'must match pattern "^[A-Z]$"' };
                if (vErrors === null) {
                  vErrors = [err578];
                } else {
                  vErrors.push(err578);
                }
                errors++;
              }
            } else {
              const err579 = { instancePath: instancePath + "/arc/radius-word", schemaPath: "#/$defs/letter/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err579];
              } else {
                vErrors.push(err579);
              }
              errors++;
            }
          }
          if (data209.planes !== void 0) {
            let data217 = data209.planes;
            if (Array.isArray(data217)) {
              if (data217.length > 3) {
                const err580 = { instancePath: instancePath + "/arc/planes", schemaPath: "#/properties/arc/properties/planes/maxItems", keyword: "maxItems", params: { limit: 3 }, message: "must NOT have more than 3 items" };
                if (vErrors === null) {
                  vErrors = [err580];
                } else {
                  vErrors.push(err580);
                }
                errors++;
              }
              const len5 = data217.length;
              for (let i6 = 0; i6 < len5; i6++) {
                let data218 = data217[i6];
                if (typeof data218 !== "string") {
                  const err581 = { instancePath: instancePath + "/arc/planes/" + i6, schemaPath: "#/properties/arc/properties/planes/items/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err581];
                  } else {
                    vErrors.push(err581);
                  }
                  errors++;
                }
                if (!(data218 === "xy" || data218 === "zx" || data218 === "yz")) {
                  const err582 = { instancePath: instancePath + "/arc/planes/" + i6, schemaPath: "#/properties/arc/properties/planes/items/enum", keyword: "enum", params: { allowedValues: schema31.properties.arc.properties.planes.items.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err582];
                  } else {
                    vErrors.push(err582);
                  }
                  errors++;
                }
              }
              let i7 = data217.length;
              let j1;
              if (i7 > 1) {
                const indices0 = {};
                for (; i7--; ) {
                  let item0 = data217[i7];
                  if (typeof item0 !== "string") {
                    continue;
                  }
                  if (typeof indices0[item0] == "number") {
                    j1 = indices0[item0];
                    const err583 = { instancePath: instancePath + "/arc/planes", schemaPath: "#/properties/arc/properties/planes/uniqueItems", keyword: "uniqueItems", params: { i: i7, j: j1 }, message: "must NOT have duplicate items (items ## " + j1 + " and " + i7 + " are identical)" };
                    if (vErrors === null) {
                      vErrors = [err583];
                    } else {
                      vErrors.push(err583);
                    }
                    errors++;
                    break;
                  }
                  indices0[item0] = i7;
                }
              }
            } else {
              const err584 = { instancePath: instancePath + "/arc/planes", schemaPath: "#/properties/arc/properties/planes/type", keyword: "type", params: { type: "array" }, message: "must be array" };
              if (vErrors === null) {
                vErrors = [err584];
              } else {
                vErrors.push(err584);
              }
              errors++;
            }
          }
          if (data209["largest-sweep"] !== void 0) {
            let data219 = data209["largest-sweep"];
            if (typeof data219 == "number" && isFinite(data219)) {
              if (data219 > 360 || isNaN(data219)) {
                const err585 = { instancePath: instancePath + "/arc/largest-sweep", schemaPath: "#/properties/arc/properties/largest-sweep/maximum", keyword: "maximum", params: { comparison: "<=", limit: 360 }, message: "must be <= 360" };
                if (vErrors === null) {
                  vErrors = [err585];
                } else {
                  vErrors.push(err585);
                }
                errors++;
              }
              if (data219 <= 0 || isNaN(data219)) {
                const err586 = { instancePath: instancePath + "/arc/largest-sweep", schemaPath: "#/properties/arc/properties/largest-sweep/exclusiveMinimum", keyword: "exclusiveMinimum", params: { comparison: ">", limit: 0 }, message: "must be > 0" };
                if (vErrors === null) {
                  vErrors = [err586];
                } else {
                  vErrors.push(err586);
                }
                errors++;
              }
            } else {
              const err587 = { instancePath: instancePath + "/arc/largest-sweep", schemaPath: "#/properties/arc/properties/largest-sweep/type", keyword: "type", params: { type: "number" }, message: "must be number" };
              if (vErrors === null) {
                vErrors = [err587];
              } else {
                vErrors.push(err587);
              }
              errors++;
            }
          }
          if (data209.quadrants !== void 0) {
            let data220 = data209.quadrants;
            if (typeof data220 !== "string") {
              const err588 = { instancePath: instancePath + "/arc/quadrants", schemaPath: "#/properties/arc/properties/quadrants/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err588];
              } else {
                vErrors.push(err588);
              }
              errors++;
            }
            if (!(data220 === "any" || data220 === "one")) {
              const err589 = { instancePath: instancePath + "/arc/quadrants", schemaPath: "#/properties/arc/properties/quadrants/enum", keyword: "enum", params: { allowedValues: schema31.properties.arc.properties.quadrants.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err589];
              } else {
                vErrors.push(err589);
              }
              errors++;
            }
          }
          if (data209["full-circle"] !== void 0) {
            let data221 = data209["full-circle"];
            if (typeof data221 !== "string") {
              const err590 = { instancePath: instancePath + "/arc/full-circle", schemaPath: "#/$defs/yesNo/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err590];
              } else {
                vErrors.push(err590);
              }
              errors++;
            }
            if (!(data221 === "yes" || data221 === "no")) {
              const err591 = { instancePath: instancePath + "/arc/full-circle", schemaPath: "#/$defs/yesNo/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err591];
              } else {
                vErrors.push(err591);
              }
              errors++;
            }
          }
          if (data209.helix !== void 0) {
            let data222 = data209.helix;
            if (typeof data222 !== "string") {
              const err592 = { instancePath: instancePath + "/arc/helix", schemaPath: "#/$defs/yesNo/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err592];
              } else {
                vErrors.push(err592);
              }
              errors++;
            }
            if (!(data222 === "yes" || data222 === "no")) {
              const err593 = { instancePath: instancePath + "/arc/helix", schemaPath: "#/$defs/yesNo/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err593];
              } else {
                vErrors.push(err593);
              }
              errors++;
            }
          }
          if (data209["turns-word"] !== void 0) {
            let data223 = data209["turns-word"];
            if (typeof data223 === "string") {
              if (!pattern22.test(data223)) {
                const err594 = { instancePath: instancePath + "/arc/turns-word", schemaPath: "#/$defs/letterOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[A-Z])$" }, message: 'must match pattern "^(none|[A-Z])$"' };
                if (vErrors === null) {
                  vErrors = [err594];
                } else {
                  vErrors.push(err594);
                }
                errors++;
              }
            } else {
              const err595 = { instancePath: instancePath + "/arc/turns-word", schemaPath: "#/$defs/letterOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err595];
              } else {
                vErrors.push(err595);
              }
              errors++;
            }
          }
          if (data209["feed-along"] !== void 0) {
            let data224 = data209["feed-along"];
            if (typeof data224 !== "string") {
              const err596 = { instancePath: instancePath + "/arc/feed-along", schemaPath: "#/properties/arc/properties/feed-along/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err596];
              } else {
                vErrors.push(err596);
              }
              errors++;
            }
            if (!(data224 === "path" || data224 === "circle")) {
              const err597 = { instancePath: instancePath + "/arc/feed-along", schemaPath: "#/properties/arc/properties/feed-along/enum", keyword: "enum", params: { allowedValues: schema31.properties.arc.properties["feed-along"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err597];
              } else {
                vErrors.push(err597);
              }
              errors++;
            }
          }
          if (data209["smallest-radius"] !== void 0) {
            let data225 = data209["smallest-radius"];
            const _errs679 = errors;
            let valid173 = false;
            const _errs680 = errors;
            if (typeof data225 == "number" && isFinite(data225)) {
              if (data225 > 1e6 || isNaN(data225)) {
                const err598 = { instancePath: instancePath + "/arc/smallest-radius", schemaPath: "#/$defs/lengthOrNone/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                if (vErrors === null) {
                  vErrors = [err598];
                } else {
                  vErrors.push(err598);
                }
                errors++;
              }
              if (data225 < 0 || isNaN(data225)) {
                const err599 = { instancePath: instancePath + "/arc/smallest-radius", schemaPath: "#/$defs/lengthOrNone/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                if (vErrors === null) {
                  vErrors = [err599];
                } else {
                  vErrors.push(err599);
                }
                errors++;
              }
            } else {
              const err600 = { instancePath: instancePath + "/arc/smallest-radius", schemaPath: "#/$defs/lengthOrNone/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
              if (vErrors === null) {
                vErrors = [err600];
              } else {
                vErrors.push(err600);
              }
              errors++;
            }
            var _valid23 = _errs680 === errors;
            valid173 = valid173 || _valid23;
            const _errs682 = errors;
            if (typeof data225 === "string") {
              if (!pattern23.test(data225)) {
                const err601 = { instancePath: instancePath + "/arc/smallest-radius", schemaPath: "#/$defs/lengthOrNone/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^(none|\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }, message: 'must match pattern "^(none|\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$"' };
                if (vErrors === null) {
                  vErrors = [err601];
                } else {
                  vErrors.push(err601);
                }
                errors++;
              }
            } else {
              const err602 = { instancePath: instancePath + "/arc/smallest-radius", schemaPath: "#/$defs/lengthOrNone/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err602];
              } else {
                vErrors.push(err602);
              }
              errors++;
            }
            var _valid23 = _errs682 === errors;
            valid173 = valid173 || _valid23;
            if (!valid173) {
              const err603 = { instancePath: instancePath + "/arc/smallest-radius", schemaPath: "#/$defs/lengthOrNone/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err603];
              } else {
                vErrors.push(err603);
              }
              errors++;
            } else {
              errors = _errs679;
              if (vErrors !== null) {
                if (_errs679) {
                  vErrors.length = _errs679;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data209["largest-radius"] !== void 0) {
            let data226 = data209["largest-radius"];
            const _errs686 = errors;
            let valid175 = false;
            const _errs687 = errors;
            if (typeof data226 == "number" && isFinite(data226)) {
              if (data226 > 1e6 || isNaN(data226)) {
                const err604 = { instancePath: instancePath + "/arc/largest-radius", schemaPath: "#/$defs/lengthOrNone/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                if (vErrors === null) {
                  vErrors = [err604];
                } else {
                  vErrors.push(err604);
                }
                errors++;
              }
              if (data226 < 0 || isNaN(data226)) {
                const err605 = { instancePath: instancePath + "/arc/largest-radius", schemaPath: "#/$defs/lengthOrNone/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                if (vErrors === null) {
                  vErrors = [err605];
                } else {
                  vErrors.push(err605);
                }
                errors++;
              }
            } else {
              const err606 = { instancePath: instancePath + "/arc/largest-radius", schemaPath: "#/$defs/lengthOrNone/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
              if (vErrors === null) {
                vErrors = [err606];
              } else {
                vErrors.push(err606);
              }
              errors++;
            }
            var _valid24 = _errs687 === errors;
            valid175 = valid175 || _valid24;
            const _errs689 = errors;
            if (typeof data226 === "string") {
              if (!pattern23.test(data226)) {
                const err607 = { instancePath: instancePath + "/arc/largest-radius", schemaPath: "#/$defs/lengthOrNone/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^(none|\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }, message: 'must match pattern "^(none|\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$"' };
                if (vErrors === null) {
                  vErrors = [err607];
                } else {
                  vErrors.push(err607);
                }
                errors++;
              }
            } else {
              const err608 = { instancePath: instancePath + "/arc/largest-radius", schemaPath: "#/$defs/lengthOrNone/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err608];
              } else {
                vErrors.push(err608);
              }
              errors++;
            }
            var _valid24 = _errs689 === errors;
            valid175 = valid175 || _valid24;
            if (!valid175) {
              const err609 = { instancePath: instancePath + "/arc/largest-radius", schemaPath: "#/$defs/lengthOrNone/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err609];
              } else {
                vErrors.push(err609);
              }
              errors++;
            } else {
              errors = _errs686;
              if (vErrors !== null) {
                if (_errs686) {
                  vErrors.length = _errs686;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data209.tolerance !== void 0) {
            let data227 = data209.tolerance;
            if (data227 && typeof data227 == "object" && !Array.isArray(data227)) {
              for (const key30 in data227) {
                if (!(key30 === "mm" || key30 === "inch" || key30 === "relative")) {
                  const err610 = { instancePath: instancePath + "/arc/tolerance", schemaPath: "#/properties/arc/properties/tolerance/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key30 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err610];
                  } else {
                    vErrors.push(err610);
                  }
                  errors++;
                }
              }
              if (data227.mm !== void 0) {
                let data228 = data227.mm;
                if (typeof data228 == "number" && isFinite(data228)) {
                  if (data228 > 10 || isNaN(data228)) {
                    const err611 = { instancePath: instancePath + "/arc/tolerance/mm", schemaPath: "#/properties/arc/properties/tolerance/properties/mm/maximum", keyword: "maximum", params: { comparison: "<=", limit: 10 }, message: "must be <= 10" };
                    if (vErrors === null) {
                      vErrors = [err611];
                    } else {
                      vErrors.push(err611);
                    }
                    errors++;
                  }
                  if (data228 < 0 || isNaN(data228)) {
                    const err612 = { instancePath: instancePath + "/arc/tolerance/mm", schemaPath: "#/properties/arc/properties/tolerance/properties/mm/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err612];
                    } else {
                      vErrors.push(err612);
                    }
                    errors++;
                  }
                } else {
                  const err613 = { instancePath: instancePath + "/arc/tolerance/mm", schemaPath: "#/properties/arc/properties/tolerance/properties/mm/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                  if (vErrors === null) {
                    vErrors = [err613];
                  } else {
                    vErrors.push(err613);
                  }
                  errors++;
                }
              }
              if (data227.inch !== void 0) {
                let data229 = data227.inch;
                if (typeof data229 == "number" && isFinite(data229)) {
                  if (data229 > 1 || isNaN(data229)) {
                    const err614 = { instancePath: instancePath + "/arc/tolerance/inch", schemaPath: "#/properties/arc/properties/tolerance/properties/inch/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1 }, message: "must be <= 1" };
                    if (vErrors === null) {
                      vErrors = [err614];
                    } else {
                      vErrors.push(err614);
                    }
                    errors++;
                  }
                  if (data229 < 0 || isNaN(data229)) {
                    const err615 = { instancePath: instancePath + "/arc/tolerance/inch", schemaPath: "#/properties/arc/properties/tolerance/properties/inch/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err615];
                    } else {
                      vErrors.push(err615);
                    }
                    errors++;
                  }
                } else {
                  const err616 = { instancePath: instancePath + "/arc/tolerance/inch", schemaPath: "#/properties/arc/properties/tolerance/properties/inch/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                  if (vErrors === null) {
                    vErrors = [err616];
                  } else {
                    vErrors.push(err616);
                  }
                  errors++;
                }
              }
              if (data227.relative !== void 0) {
                let data230 = data227.relative;
                if (typeof data230 == "number" && isFinite(data230)) {
                  if (data230 > 0.01 || isNaN(data230)) {
                    const err617 = { instancePath: instancePath + "/arc/tolerance/relative", schemaPath: "#/properties/arc/properties/tolerance/properties/relative/maximum", keyword: "maximum", params: { comparison: "<=", limit: 0.01 }, message: "must be <= 0.01" };
                    if (vErrors === null) {
                      vErrors = [err617];
                    } else {
                      vErrors.push(err617);
                    }
                    errors++;
                  }
                  if (data230 < 0 || isNaN(data230)) {
                    const err618 = { instancePath: instancePath + "/arc/tolerance/relative", schemaPath: "#/properties/arc/properties/tolerance/properties/relative/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err618];
                    } else {
                      vErrors.push(err618);
                    }
                    errors++;
                  }
                } else {
                  const err619 = { instancePath: instancePath + "/arc/tolerance/relative", schemaPath: "#/properties/arc/properties/tolerance/properties/relative/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                  if (vErrors === null) {
                    vErrors = [err619];
                  } else {
                    vErrors.push(err619);
                  }
                  errors++;
                }
              }
            } else {
              const err620 = { instancePath: instancePath + "/arc/tolerance", schemaPath: "#/properties/arc/properties/tolerance/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err620];
              } else {
                vErrors.push(err620);
              }
              errors++;
            }
          }
          if (data209["chord-tolerance"] !== void 0) {
            let data231 = data209["chord-tolerance"];
            const _errs702 = errors;
            let valid178 = false;
            const _errs703 = errors;
            if (typeof data231 == "number" && isFinite(data231)) {
              if (data231 > 1e6 || isNaN(data231)) {
                const err621 = { instancePath: instancePath + "/arc/chord-tolerance", schemaPath: "#/$defs/length/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                if (vErrors === null) {
                  vErrors = [err621];
                } else {
                  vErrors.push(err621);
                }
                errors++;
              }
              if (data231 < -1e6 || isNaN(data231)) {
                const err622 = { instancePath: instancePath + "/arc/chord-tolerance", schemaPath: "#/$defs/length/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: -1e6 }, message: "must be >= -1000000" };
                if (vErrors === null) {
                  vErrors = [err622];
                } else {
                  vErrors.push(err622);
                }
                errors++;
              }
            } else {
              const err623 = { instancePath: instancePath + "/arc/chord-tolerance", schemaPath: "#/$defs/length/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
              if (vErrors === null) {
                vErrors = [err623];
              } else {
                vErrors.push(err623);
              }
              errors++;
            }
            var _valid25 = _errs703 === errors;
            valid178 = valid178 || _valid25;
            const _errs705 = errors;
            if (typeof data231 === "string") {
              if (!pattern25.test(data231)) {
                const err624 = { instancePath: instancePath + "/arc/chord-tolerance", schemaPath: "#/$defs/length/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }, message: 'must match pattern "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$"' };
                if (vErrors === null) {
                  vErrors = [err624];
                } else {
                  vErrors.push(err624);
                }
                errors++;
              }
            } else {
              const err625 = { instancePath: instancePath + "/arc/chord-tolerance", schemaPath: "#/$defs/length/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err625];
              } else {
                vErrors.push(err625);
              }
              errors++;
            }
            var _valid25 = _errs705 === errors;
            valid178 = valid178 || _valid25;
            if (!valid178) {
              const err626 = { instancePath: instancePath + "/arc/chord-tolerance", schemaPath: "#/$defs/length/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err626];
              } else {
                vErrors.push(err626);
              }
              errors++;
            } else {
              errors = _errs702;
              if (vErrors !== null) {
                if (_errs702) {
                  vErrors.length = _errs702;
                } else {
                  vErrors = null;
                }
              }
            }
          }
        } else {
          const err627 = { instancePath: instancePath + "/arc", schemaPath: "#/properties/arc/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err627];
          } else {
            vErrors.push(err627);
          }
          errors++;
        }
      }
      if (data.path !== void 0) {
        let data232 = data.path;
        if (data232 && typeof data232 == "object" && !Array.isArray(data232)) {
          for (const key31 in data232) {
            if (!(key31 === "exact" || key31 === "stop" || key31 === "blend" || key31 === "tolerance-word" || key31 === "look-ahead")) {
              const err628 = { instancePath: instancePath + "/path", schemaPath: "#/properties/path/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key31 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err628];
              } else {
                vErrors.push(err628);
              }
              errors++;
            }
          }
          if (data232.exact !== void 0) {
            let data233 = data232.exact;
            if (typeof data233 === "string") {
              if (!pattern26.test(data233)) {
                const err629 = { instancePath: instancePath + "/path/exact", schemaPath: "#/$defs/codeWithWordOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$"' };
                if (vErrors === null) {
                  vErrors = [err629];
                } else {
                  vErrors.push(err629);
                }
                errors++;
              }
            } else {
              const err630 = { instancePath: instancePath + "/path/exact", schemaPath: "#/$defs/codeWithWordOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err630];
              } else {
                vErrors.push(err630);
              }
              errors++;
            }
          }
          if (data232.stop !== void 0) {
            let data234 = data232.stop;
            if (typeof data234 === "string") {
              if (!pattern26.test(data234)) {
                const err631 = { instancePath: instancePath + "/path/stop", schemaPath: "#/$defs/codeWithWordOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$"' };
                if (vErrors === null) {
                  vErrors = [err631];
                } else {
                  vErrors.push(err631);
                }
                errors++;
              }
            } else {
              const err632 = { instancePath: instancePath + "/path/stop", schemaPath: "#/$defs/codeWithWordOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err632];
              } else {
                vErrors.push(err632);
              }
              errors++;
            }
          }
          if (data232.blend !== void 0) {
            let data235 = data232.blend;
            if (typeof data235 === "string") {
              if (!pattern26.test(data235)) {
                const err633 = { instancePath: instancePath + "/path/blend", schemaPath: "#/$defs/codeWithWordOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$"' };
                if (vErrors === null) {
                  vErrors = [err633];
                } else {
                  vErrors.push(err633);
                }
                errors++;
              }
            } else {
              const err634 = { instancePath: instancePath + "/path/blend", schemaPath: "#/$defs/codeWithWordOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err634];
              } else {
                vErrors.push(err634);
              }
              errors++;
            }
          }
          if (data232["tolerance-word"] !== void 0) {
            let data236 = data232["tolerance-word"];
            if (typeof data236 === "string") {
              if (!pattern22.test(data236)) {
                const err635 = { instancePath: instancePath + "/path/tolerance-word", schemaPath: "#/$defs/letterOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[A-Z])$" }, message: 'must match pattern "^(none|[A-Z])$"' };
                if (vErrors === null) {
                  vErrors = [err635];
                } else {
                  vErrors.push(err635);
                }
                errors++;
              }
            } else {
              const err636 = { instancePath: instancePath + "/path/tolerance-word", schemaPath: "#/$defs/letterOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err636];
              } else {
                vErrors.push(err636);
              }
              errors++;
            }
          }
          if (data232["look-ahead"] !== void 0) {
            let data237 = data232["look-ahead"];
            const _errs723 = errors;
            let valid184 = false;
            const _errs724 = errors;
            if (typeof data237 !== "string") {
              const err637 = { instancePath: instancePath + "/path/look-ahead", schemaPath: "#/properties/path/properties/look-ahead/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err637];
              } else {
                vErrors.push(err637);
              }
              errors++;
            }
            if ("none" !== data237) {
              const err638 = { instancePath: instancePath + "/path/look-ahead", schemaPath: "#/properties/path/properties/look-ahead/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
              if (vErrors === null) {
                vErrors = [err638];
              } else {
                vErrors.push(err638);
              }
              errors++;
            }
            var _valid26 = _errs724 === errors;
            valid184 = valid184 || _valid26;
            const _errs726 = errors;
            if (data237 && typeof data237 == "object" && !Array.isArray(data237)) {
              for (const key32 in data237) {
                if (!(key32 === "on" || key32 === "off")) {
                  const err639 = { instancePath: instancePath + "/path/look-ahead", schemaPath: "#/properties/path/properties/look-ahead/anyOf/1/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key32 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err639];
                  } else {
                    vErrors.push(err639);
                  }
                  errors++;
                }
              }
              if (data237.on !== void 0) {
                let data238 = data237.on;
                if (typeof data238 === "string") {
                  if (!pattern26.test(data238)) {
                    const err640 = { instancePath: instancePath + "/path/look-ahead/on", schemaPath: "#/$defs/codeWithWordOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$"' };
                    if (vErrors === null) {
                      vErrors = [err640];
                    } else {
                      vErrors.push(err640);
                    }
                    errors++;
                  }
                } else {
                  const err641 = { instancePath: instancePath + "/path/look-ahead/on", schemaPath: "#/$defs/codeWithWordOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err641];
                  } else {
                    vErrors.push(err641);
                  }
                  errors++;
                }
              }
              if (data237.off !== void 0) {
                let data239 = data237.off;
                if (typeof data239 === "string") {
                  if (!pattern26.test(data239)) {
                    const err642 = { instancePath: instancePath + "/path/look-ahead/off", schemaPath: "#/$defs/codeWithWordOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$"' };
                    if (vErrors === null) {
                      vErrors = [err642];
                    } else {
                      vErrors.push(err642);
                    }
                    errors++;
                  }
                } else {
                  const err643 = { instancePath: instancePath + "/path/look-ahead/off", schemaPath: "#/$defs/codeWithWordOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err643];
                  } else {
                    vErrors.push(err643);
                  }
                  errors++;
                }
              }
            } else {
              const err644 = { instancePath: instancePath + "/path/look-ahead", schemaPath: "#/properties/path/properties/look-ahead/anyOf/1/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err644];
              } else {
                vErrors.push(err644);
              }
              errors++;
            }
            var _valid26 = _errs726 === errors;
            valid184 = valid184 || _valid26;
            if (!valid184) {
              const err645 = { instancePath: instancePath + "/path/look-ahead", schemaPath: "#/properties/path/properties/look-ahead/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err645];
              } else {
                vErrors.push(err645);
              }
              errors++;
            } else {
              errors = _errs723;
              if (vErrors !== null) {
                if (_errs723) {
                  vErrors.length = _errs723;
                } else {
                  vErrors = null;
                }
              }
            }
          }
        } else {
          const err646 = { instancePath: instancePath + "/path", schemaPath: "#/properties/path/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err646];
          } else {
            vErrors.push(err646);
          }
          errors++;
        }
      }
      if (data.feed !== void 0) {
        let data240 = data.feed;
        if (data240 && typeof data240 == "object" && !Array.isArray(data240)) {
          for (const key33 in data240) {
            if (!(key33 === "per-minute" || key33 === "per-revolution" || key33 === "inverse-time" || key33 === "inverse-time-unit")) {
              const err647 = { instancePath: instancePath + "/feed", schemaPath: "#/properties/feed/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key33 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err647];
              } else {
                vErrors.push(err647);
              }
              errors++;
            }
          }
          if (data240["per-minute"] !== void 0) {
            let data241 = data240["per-minute"];
            if (typeof data241 === "string") {
              if (!pattern7.test(data241)) {
                const err648 = { instancePath: instancePath + "/feed/per-minute", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err648];
                } else {
                  vErrors.push(err648);
                }
                errors++;
              }
            } else {
              const err649 = { instancePath: instancePath + "/feed/per-minute", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err649];
              } else {
                vErrors.push(err649);
              }
              errors++;
            }
          }
          if (data240["per-revolution"] !== void 0) {
            let data242 = data240["per-revolution"];
            if (typeof data242 === "string") {
              if (!pattern7.test(data242)) {
                const err650 = { instancePath: instancePath + "/feed/per-revolution", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err650];
                } else {
                  vErrors.push(err650);
                }
                errors++;
              }
            } else {
              const err651 = { instancePath: instancePath + "/feed/per-revolution", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err651];
              } else {
                vErrors.push(err651);
              }
              errors++;
            }
          }
          if (data240["inverse-time"] !== void 0) {
            let data243 = data240["inverse-time"];
            if (typeof data243 === "string") {
              if (!pattern7.test(data243)) {
                const err652 = { instancePath: instancePath + "/feed/inverse-time", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err652];
                } else {
                  vErrors.push(err652);
                }
                errors++;
              }
            } else {
              const err653 = { instancePath: instancePath + "/feed/inverse-time", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err653];
              } else {
                vErrors.push(err653);
              }
              errors++;
            }
          }
          if (data240["inverse-time-unit"] !== void 0) {
            let data244 = data240["inverse-time-unit"];
            if (typeof data244 !== "string") {
              const err654 = { instancePath: instancePath + "/feed/inverse-time-unit", schemaPath: "#/properties/feed/properties/inverse-time-unit/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err654];
              } else {
                vErrors.push(err654);
              }
              errors++;
            }
            if (!(data244 === "per-minute" || data244 === "per-second")) {
              const err655 = { instancePath: instancePath + "/feed/inverse-time-unit", schemaPath: "#/properties/feed/properties/inverse-time-unit/enum", keyword: "enum", params: { allowedValues: schema31.properties.feed.properties["inverse-time-unit"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err655];
              } else {
                vErrors.push(err655);
              }
              errors++;
            }
          }
        } else {
          const err656 = { instancePath: instancePath + "/feed", schemaPath: "#/properties/feed/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err656];
          } else {
            vErrors.push(err656);
          }
          errors++;
        }
      }
      if (data.dwell !== void 0) {
        let data245 = data.dwell;
        if (data245 && typeof data245 == "object" && !Array.isArray(data245)) {
          for (const key34 in data245) {
            if (!(key34 === "code" || key34 === "word" || key34 === "unit" || key34 === "blocks")) {
              const err657 = { instancePath: instancePath + "/dwell", schemaPath: "#/properties/dwell/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key34 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err657];
              } else {
                vErrors.push(err657);
              }
              errors++;
            }
          }
          if (data245.code !== void 0) {
            let data246 = data245.code;
            if (typeof data246 === "string") {
              if (!pattern7.test(data246)) {
                const err658 = { instancePath: instancePath + "/dwell/code", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err658];
                } else {
                  vErrors.push(err658);
                }
                errors++;
              }
            } else {
              const err659 = { instancePath: instancePath + "/dwell/code", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err659];
              } else {
                vErrors.push(err659);
              }
              errors++;
            }
          }
          if (data245.word !== void 0) {
            let data247 = data245.word;
            if (typeof data247 === "string") {
              if (!pattern6.test(data247)) {
                const err660 = { instancePath: instancePath + "/dwell/word", schemaPath: "#/$defs/letter/pattern", keyword: "pattern", params: { pattern: "^[A-Z]$" }, message: 'must match pattern "^[A-Z]$"' };
                if (vErrors === null) {
                  vErrors = [err660];
                } else {
                  vErrors.push(err660);
                }
                errors++;
              }
            } else {
              const err661 = { instancePath: instancePath + "/dwell/word", schemaPath: "#/$defs/letter/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err661];
              } else {
                vErrors.push(err661);
              }
              errors++;
            }
          }
          if (data245.unit !== void 0) {
            let data248 = data245.unit;
            if (typeof data248 !== "string") {
              const err662 = { instancePath: instancePath + "/dwell/unit", schemaPath: "#/properties/dwell/properties/unit/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err662];
              } else {
                vErrors.push(err662);
              }
              errors++;
            }
            if (!(data248 === "s" || data248 === "ms" || data248 === "rev")) {
              const err663 = { instancePath: instancePath + "/dwell/unit", schemaPath: "#/properties/dwell/properties/unit/enum", keyword: "enum", params: { allowedValues: schema31.properties.dwell.properties.unit.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err663];
              } else {
                vErrors.push(err663);
              }
              errors++;
            }
          }
          if (data245.blocks !== void 0) {
            let data249 = data245.blocks;
            if (typeof data249 !== "string") {
              const err664 = { instancePath: instancePath + "/dwell/blocks", schemaPath: "#/properties/dwell/properties/blocks/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err664];
              } else {
                vErrors.push(err664);
              }
              errors++;
            }
            if (!(data249 === "apart" || data249 === "with-start")) {
              const err665 = { instancePath: instancePath + "/dwell/blocks", schemaPath: "#/properties/dwell/properties/blocks/enum", keyword: "enum", params: { allowedValues: schema31.properties.dwell.properties.blocks.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err665];
              } else {
                vErrors.push(err665);
              }
              errors++;
            }
          }
        } else {
          const err666 = { instancePath: instancePath + "/dwell", schemaPath: "#/properties/dwell/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err666];
          } else {
            vErrors.push(err666);
          }
          errors++;
        }
      }
      if (data.compensation !== void 0) {
        let data250 = data.compensation;
        const _errs763 = errors;
        let valid195 = false;
        const _errs764 = errors;
        if (typeof data250 !== "string") {
          const err667 = { instancePath: instancePath + "/compensation", schemaPath: "#/properties/compensation/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
          if (vErrors === null) {
            vErrors = [err667];
          } else {
            vErrors.push(err667);
          }
          errors++;
        }
        if ("none" !== data250) {
          const err668 = { instancePath: instancePath + "/compensation", schemaPath: "#/properties/compensation/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
          if (vErrors === null) {
            vErrors = [err668];
          } else {
            vErrors.push(err668);
          }
          errors++;
        }
        var _valid27 = _errs764 === errors;
        valid195 = valid195 || _valid27;
        const _errs766 = errors;
        if (data250 && typeof data250 == "object" && !Array.isArray(data250)) {
          for (const key35 in data250) {
            if (!(key35 === "off" || key35 === "left" || key35 === "right" || key35 === "word" || key35 === "corner-feed")) {
              const err669 = { instancePath: instancePath + "/compensation", schemaPath: "#/properties/compensation/anyOf/1/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key35 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err669];
              } else {
                vErrors.push(err669);
              }
              errors++;
            }
          }
          if (data250.off !== void 0) {
            let data251 = data250.off;
            if (typeof data251 === "string") {
              if (!pattern7.test(data251)) {
                const err670 = { instancePath: instancePath + "/compensation/off", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err670];
                } else {
                  vErrors.push(err670);
                }
                errors++;
              }
            } else {
              const err671 = { instancePath: instancePath + "/compensation/off", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err671];
              } else {
                vErrors.push(err671);
              }
              errors++;
            }
          }
          if (data250.left !== void 0) {
            let data252 = data250.left;
            if (typeof data252 === "string") {
              if (!pattern7.test(data252)) {
                const err672 = { instancePath: instancePath + "/compensation/left", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err672];
                } else {
                  vErrors.push(err672);
                }
                errors++;
              }
            } else {
              const err673 = { instancePath: instancePath + "/compensation/left", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err673];
              } else {
                vErrors.push(err673);
              }
              errors++;
            }
          }
          if (data250.right !== void 0) {
            let data253 = data250.right;
            if (typeof data253 === "string") {
              if (!pattern7.test(data253)) {
                const err674 = { instancePath: instancePath + "/compensation/right", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err674];
                } else {
                  vErrors.push(err674);
                }
                errors++;
              }
            } else {
              const err675 = { instancePath: instancePath + "/compensation/right", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err675];
              } else {
                vErrors.push(err675);
              }
              errors++;
            }
          }
          if (data250.word !== void 0) {
            let data254 = data250.word;
            if (typeof data254 === "string") {
              if (!pattern22.test(data254)) {
                const err676 = { instancePath: instancePath + "/compensation/word", schemaPath: "#/$defs/letterOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[A-Z])$" }, message: 'must match pattern "^(none|[A-Z])$"' };
                if (vErrors === null) {
                  vErrors = [err676];
                } else {
                  vErrors.push(err676);
                }
                errors++;
              }
            } else {
              const err677 = { instancePath: instancePath + "/compensation/word", schemaPath: "#/$defs/letterOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err677];
              } else {
                vErrors.push(err677);
              }
              errors++;
            }
          }
          if (data250["corner-feed"] !== void 0) {
            let data255 = data250["corner-feed"];
            const _errs782 = errors;
            let valid201 = false;
            const _errs783 = errors;
            if (typeof data255 !== "string") {
              const err678 = { instancePath: instancePath + "/compensation/corner-feed", schemaPath: "#/properties/compensation/anyOf/1/properties/corner-feed/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err678];
              } else {
                vErrors.push(err678);
              }
              errors++;
            }
            if ("none" !== data255) {
              const err679 = { instancePath: instancePath + "/compensation/corner-feed", schemaPath: "#/properties/compensation/anyOf/1/properties/corner-feed/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
              if (vErrors === null) {
                vErrors = [err679];
              } else {
                vErrors.push(err679);
              }
              errors++;
            }
            var _valid28 = _errs783 === errors;
            valid201 = valid201 || _valid28;
            const _errs785 = errors;
            if (data255 && typeof data255 == "object" && !Array.isArray(data255)) {
              for (const key36 in data255) {
                if (!(key36 === "on" || key36 === "off")) {
                  const err680 = { instancePath: instancePath + "/compensation/corner-feed", schemaPath: "#/properties/compensation/anyOf/1/properties/corner-feed/anyOf/1/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key36 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err680];
                  } else {
                    vErrors.push(err680);
                  }
                  errors++;
                }
              }
              if (data255.on !== void 0) {
                let data256 = data255.on;
                if (typeof data256 === "string") {
                  if (!pattern26.test(data256)) {
                    const err681 = { instancePath: instancePath + "/compensation/corner-feed/on", schemaPath: "#/$defs/codeWithWordOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$"' };
                    if (vErrors === null) {
                      vErrors = [err681];
                    } else {
                      vErrors.push(err681);
                    }
                    errors++;
                  }
                } else {
                  const err682 = { instancePath: instancePath + "/compensation/corner-feed/on", schemaPath: "#/$defs/codeWithWordOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err682];
                  } else {
                    vErrors.push(err682);
                  }
                  errors++;
                }
              }
              if (data255.off !== void 0) {
                let data257 = data255.off;
                if (typeof data257 === "string") {
                  if (!pattern26.test(data257)) {
                    const err683 = { instancePath: instancePath + "/compensation/corner-feed/off", schemaPath: "#/$defs/codeWithWordOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$"' };
                    if (vErrors === null) {
                      vErrors = [err683];
                    } else {
                      vErrors.push(err683);
                    }
                    errors++;
                  }
                } else {
                  const err684 = { instancePath: instancePath + "/compensation/corner-feed/off", schemaPath: "#/$defs/codeWithWordOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err684];
                  } else {
                    vErrors.push(err684);
                  }
                  errors++;
                }
              }
            } else {
              const err685 = { instancePath: instancePath + "/compensation/corner-feed", schemaPath: "#/properties/compensation/anyOf/1/properties/corner-feed/anyOf/1/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err685];
              } else {
                vErrors.push(err685);
              }
              errors++;
            }
            var _valid28 = _errs785 === errors;
            valid201 = valid201 || _valid28;
            if (!valid201) {
              const err686 = { instancePath: instancePath + "/compensation/corner-feed", schemaPath: "#/properties/compensation/anyOf/1/properties/corner-feed/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err686];
              } else {
                vErrors.push(err686);
              }
              errors++;
            } else {
              errors = _errs782;
              if (vErrors !== null) {
                if (_errs782) {
                  vErrors.length = _errs782;
                } else {
                  vErrors = null;
                }
              }
            }
          }
        } else {
          const err687 = { instancePath: instancePath + "/compensation", schemaPath: "#/properties/compensation/anyOf/1/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err687];
          } else {
            vErrors.push(err687);
          }
          errors++;
        }
        var _valid27 = _errs766 === errors;
        valid195 = valid195 || _valid27;
        if (!valid195) {
          const err688 = { instancePath: instancePath + "/compensation", schemaPath: "#/properties/compensation/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
          if (vErrors === null) {
            vErrors = [err688];
          } else {
            vErrors.push(err688);
          }
          errors++;
        } else {
          errors = _errs763;
          if (vErrors !== null) {
            if (_errs763) {
              vErrors.length = _errs763;
            } else {
              vErrors = null;
            }
          }
        }
      }
      if (data["length-offset"] !== void 0) {
        let data258 = data["length-offset"];
        const _errs795 = errors;
        let valid205 = false;
        const _errs796 = errors;
        if (typeof data258 !== "string") {
          const err689 = { instancePath: instancePath + "/length-offset", schemaPath: "#/properties/length-offset/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
          if (vErrors === null) {
            vErrors = [err689];
          } else {
            vErrors.push(err689);
          }
          errors++;
        }
        if ("none" !== data258) {
          const err690 = { instancePath: instancePath + "/length-offset", schemaPath: "#/properties/length-offset/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
          if (vErrors === null) {
            vErrors = [err690];
          } else {
            vErrors.push(err690);
          }
          errors++;
        }
        var _valid29 = _errs796 === errors;
        valid205 = valid205 || _valid29;
        const _errs798 = errors;
        if (data258 && typeof data258 == "object" && !Array.isArray(data258)) {
          for (const key37 in data258) {
            if (!(key37 === "on" || key37 === "off" || key37 === "word" || key37 === "number" || key37 === "added")) {
              const err691 = { instancePath: instancePath + "/length-offset", schemaPath: "#/properties/length-offset/anyOf/1/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key37 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err691];
              } else {
                vErrors.push(err691);
              }
              errors++;
            }
          }
          if (data258.on !== void 0) {
            let data259 = data258.on;
            if (typeof data259 === "string") {
              if (!pattern7.test(data259)) {
                const err692 = { instancePath: instancePath + "/length-offset/on", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err692];
                } else {
                  vErrors.push(err692);
                }
                errors++;
              }
            } else {
              const err693 = { instancePath: instancePath + "/length-offset/on", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err693];
              } else {
                vErrors.push(err693);
              }
              errors++;
            }
          }
          if (data258.off !== void 0) {
            let data260 = data258.off;
            if (typeof data260 === "string") {
              if (!pattern44.test(data260)) {
                const err694 = { instancePath: instancePath + "/length-offset/off", schemaPath: "#/properties/length-offset/anyOf/1/properties/off/pattern", keyword: "pattern", params: { pattern: "^(none|[A-Z]0|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[A-Z]0|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err694];
                } else {
                  vErrors.push(err694);
                }
                errors++;
              }
            } else {
              const err695 = { instancePath: instancePath + "/length-offset/off", schemaPath: "#/properties/length-offset/anyOf/1/properties/off/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err695];
              } else {
                vErrors.push(err695);
              }
              errors++;
            }
          }
          if (data258.word !== void 0) {
            let data261 = data258.word;
            if (typeof data261 === "string") {
              if (!pattern6.test(data261)) {
                const err696 = { instancePath: instancePath + "/length-offset/word", schemaPath: "#/$defs/letter/pattern", keyword: "pattern", params: { pattern: "^[A-Z]$" }, message: 'must match pattern "^[A-Z]$"' };
                if (vErrors === null) {
                  vErrors = [err696];
                } else {
                  vErrors.push(err696);
                }
                errors++;
              }
            } else {
              const err697 = { instancePath: instancePath + "/length-offset/word", schemaPath: "#/$defs/letter/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err697];
              } else {
                vErrors.push(err697);
              }
              errors++;
            }
          }
          if (data258.number !== void 0) {
            let data262 = data258.number;
            if (typeof data262 !== "string") {
              const err698 = { instancePath: instancePath + "/length-offset/number", schemaPath: "#/properties/length-offset/anyOf/1/properties/number/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err698];
              } else {
                vErrors.push(err698);
              }
              errors++;
            }
            if (!(data262 === "tool" || data262 === "free")) {
              const err699 = { instancePath: instancePath + "/length-offset/number", schemaPath: "#/properties/length-offset/anyOf/1/properties/number/enum", keyword: "enum", params: { allowedValues: schema31.properties["length-offset"].anyOf[1].properties.number.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err699];
              } else {
                vErrors.push(err699);
              }
              errors++;
            }
          }
          if (data258.added !== void 0) {
            let data263 = data258.added;
            if (!(typeof data263 == "number" && (!(data263 % 1) && !isNaN(data263)) && isFinite(data263))) {
              const err700 = { instancePath: instancePath + "/length-offset/added", schemaPath: "#/properties/length-offset/anyOf/1/properties/added/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
              if (vErrors === null) {
                vErrors = [err700];
              } else {
                vErrors.push(err700);
              }
              errors++;
            }
            if (typeof data263 == "number" && isFinite(data263)) {
              if (data263 > 900 || isNaN(data263)) {
                const err701 = { instancePath: instancePath + "/length-offset/added", schemaPath: "#/properties/length-offset/anyOf/1/properties/added/maximum", keyword: "maximum", params: { comparison: "<=", limit: 900 }, message: "must be <= 900" };
                if (vErrors === null) {
                  vErrors = [err701];
                } else {
                  vErrors.push(err701);
                }
                errors++;
              }
              if (data263 < 0 || isNaN(data263)) {
                const err702 = { instancePath: instancePath + "/length-offset/added", schemaPath: "#/properties/length-offset/anyOf/1/properties/added/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                if (vErrors === null) {
                  vErrors = [err702];
                } else {
                  vErrors.push(err702);
                }
                errors++;
              }
            }
          }
        } else {
          const err703 = { instancePath: instancePath + "/length-offset", schemaPath: "#/properties/length-offset/anyOf/1/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err703];
          } else {
            vErrors.push(err703);
          }
          errors++;
        }
        var _valid29 = _errs798 === errors;
        valid205 = valid205 || _valid29;
        if (!valid205) {
          const err704 = { instancePath: instancePath + "/length-offset", schemaPath: "#/properties/length-offset/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
          if (vErrors === null) {
            vErrors = [err704];
          } else {
            vErrors.push(err704);
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
      if (data["work-offset"] !== void 0) {
        let data264 = data["work-offset"];
        const _errs814 = errors;
        let valid209 = false;
        const _errs815 = errors;
        if (typeof data264 !== "string") {
          const err705 = { instancePath: instancePath + "/work-offset", schemaPath: "#/properties/work-offset/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
          if (vErrors === null) {
            vErrors = [err705];
          } else {
            vErrors.push(err705);
          }
          errors++;
        }
        if ("none" !== data264) {
          const err706 = { instancePath: instancePath + "/work-offset", schemaPath: "#/properties/work-offset/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
          if (vErrors === null) {
            vErrors = [err706];
          } else {
            vErrors.push(err706);
          }
          errors++;
        }
        var _valid30 = _errs815 === errors;
        valid209 = valid209 || _valid30;
        const _errs817 = errors;
        if (Array.isArray(data264)) {
          if (data264.length > 9) {
            const err707 = { instancePath: instancePath + "/work-offset", schemaPath: "#/properties/work-offset/anyOf/1/maxItems", keyword: "maxItems", params: { limit: 9 }, message: "must NOT have more than 9 items" };
            if (vErrors === null) {
              vErrors = [err707];
            } else {
              vErrors.push(err707);
            }
            errors++;
          }
          if (data264.length < 1) {
            const err708 = { instancePath: instancePath + "/work-offset", schemaPath: "#/properties/work-offset/anyOf/1/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items" };
            if (vErrors === null) {
              vErrors = [err708];
            } else {
              vErrors.push(err708);
            }
            errors++;
          }
          const len6 = data264.length;
          for (let i8 = 0; i8 < len6; i8++) {
            let data265 = data264[i8];
            if (typeof data265 === "string") {
              if (!pattern26.test(data265)) {
                const err709 = { instancePath: instancePath + "/work-offset/" + i8, schemaPath: "#/$defs/codeWithWordOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$"' };
                if (vErrors === null) {
                  vErrors = [err709];
                } else {
                  vErrors.push(err709);
                }
                errors++;
              }
            } else {
              const err710 = { instancePath: instancePath + "/work-offset/" + i8, schemaPath: "#/$defs/codeWithWordOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err710];
              } else {
                vErrors.push(err710);
              }
              errors++;
            }
          }
        } else {
          const err711 = { instancePath: instancePath + "/work-offset", schemaPath: "#/properties/work-offset/anyOf/1/type", keyword: "type", params: { type: "array" }, message: "must be array" };
          if (vErrors === null) {
            vErrors = [err711];
          } else {
            vErrors.push(err711);
          }
          errors++;
        }
        var _valid30 = _errs817 === errors;
        valid209 = valid209 || _valid30;
        if (!valid209) {
          const err712 = { instancePath: instancePath + "/work-offset", schemaPath: "#/properties/work-offset/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
          if (vErrors === null) {
            vErrors = [err712];
          } else {
            vErrors.push(err712);
          }
          errors++;
        } else {
          errors = _errs814;
          if (vErrors !== null) {
            if (_errs814) {
              vErrors.length = _errs814;
            } else {
              vErrors = null;
            }
          }
        }
      }
      if (data["machine-move"] !== void 0) {
        let data266 = data["machine-move"];
        if (typeof data266 === "string") {
          if (!pattern26.test(data266)) {
            const err713 = { instancePath: instancePath + "/machine-move", schemaPath: "#/$defs/codeWithWordOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$"' };
            if (vErrors === null) {
              vErrors = [err713];
            } else {
              vErrors.push(err713);
            }
            errors++;
          }
        } else {
          const err714 = { instancePath: instancePath + "/machine-move", schemaPath: "#/$defs/codeWithWordOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
          if (vErrors === null) {
            vErrors = [err714];
          } else {
            vErrors.push(err714);
          }
          errors++;
        }
      }
      if (data["reference-return"] !== void 0) {
        let data267 = data["reference-return"];
        if (typeof data267 === "string") {
          if (!pattern26.test(data267)) {
            const err715 = { instancePath: instancePath + "/reference-return", schemaPath: "#/$defs/codeWithWordOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$"' };
            if (vErrors === null) {
              vErrors = [err715];
            } else {
              vErrors.push(err715);
            }
            errors++;
          }
        } else {
          const err716 = { instancePath: instancePath + "/reference-return", schemaPath: "#/$defs/codeWithWordOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
          if (vErrors === null) {
            vErrors = [err716];
          } else {
            vErrors.push(err716);
          }
          errors++;
        }
      }
      if (data.cancel !== void 0) {
        let data268 = data.cancel;
        if (data268 && typeof data268 == "object" && !Array.isArray(data268)) {
          for (const key38 in data268) {
            if (!(key38 === "cycles" || key38 === "local-shift" || key38 === "rotation" || key38 === "scale" || key38 === "overrides" || key38 === "before-change")) {
              const err717 = { instancePath: instancePath + "/cancel", schemaPath: "#/properties/cancel/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key38 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err717];
              } else {
                vErrors.push(err717);
              }
              errors++;
            }
          }
          if (data268.cycles !== void 0) {
            let data269 = data268.cycles;
            if (typeof data269 === "string") {
              if (!pattern7.test(data269)) {
                const err718 = { instancePath: instancePath + "/cancel/cycles", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err718];
                } else {
                  vErrors.push(err718);
                }
                errors++;
              }
            } else {
              const err719 = { instancePath: instancePath + "/cancel/cycles", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err719];
              } else {
                vErrors.push(err719);
              }
              errors++;
            }
          }
          if (data268["local-shift"] !== void 0) {
            let data270 = data268["local-shift"];
            if (typeof data270 === "string") {
              if (!pattern7.test(data270)) {
                const err720 = { instancePath: instancePath + "/cancel/local-shift", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err720];
                } else {
                  vErrors.push(err720);
                }
                errors++;
              }
            } else {
              const err721 = { instancePath: instancePath + "/cancel/local-shift", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err721];
              } else {
                vErrors.push(err721);
              }
              errors++;
            }
          }
          if (data268.rotation !== void 0) {
            let data271 = data268.rotation;
            if (typeof data271 === "string") {
              if (!pattern7.test(data271)) {
                const err722 = { instancePath: instancePath + "/cancel/rotation", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err722];
                } else {
                  vErrors.push(err722);
                }
                errors++;
              }
            } else {
              const err723 = { instancePath: instancePath + "/cancel/rotation", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err723];
              } else {
                vErrors.push(err723);
              }
              errors++;
            }
          }
          if (data268.scale !== void 0) {
            let data272 = data268.scale;
            if (typeof data272 === "string") {
              if (!pattern7.test(data272)) {
                const err724 = { instancePath: instancePath + "/cancel/scale", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err724];
                } else {
                  vErrors.push(err724);
                }
                errors++;
              }
            } else {
              const err725 = { instancePath: instancePath + "/cancel/scale", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err725];
              } else {
                vErrors.push(err725);
              }
              errors++;
            }
          }
          if (data268.overrides !== void 0) {
            let data273 = data268.overrides;
            if (typeof data273 === "string") {
              if (!pattern7.test(data273)) {
                const err726 = { instancePath: instancePath + "/cancel/overrides", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err726];
                } else {
                  vErrors.push(err726);
                }
                errors++;
              }
            } else {
              const err727 = { instancePath: instancePath + "/cancel/overrides", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err727];
              } else {
                vErrors.push(err727);
              }
              errors++;
            }
          }
          if (data268["before-change"] !== void 0) {
            let data274 = data268["before-change"];
            if (typeof data274 !== "string") {
              const err728 = { instancePath: instancePath + "/cancel/before-change", schemaPath: "#/$defs/yesNo/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err728];
              } else {
                vErrors.push(err728);
              }
              errors++;
            }
            if (!(data274 === "yes" || data274 === "no")) {
              const err729 = { instancePath: instancePath + "/cancel/before-change", schemaPath: "#/$defs/yesNo/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err729];
              } else {
                vErrors.push(err729);
              }
              errors++;
            }
          }
        } else {
          const err730 = { instancePath: instancePath + "/cancel", schemaPath: "#/properties/cancel/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err730];
          } else {
            vErrors.push(err730);
          }
          errors++;
        }
      }
      if (data.cycles !== void 0) {
        let data275 = data.cycles;
        const _errs850 = errors;
        let valid222 = false;
        const _errs851 = errors;
        if (typeof data275 !== "string") {
          const err731 = { instancePath: instancePath + "/cycles", schemaPath: "#/properties/cycles/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
          if (vErrors === null) {
            vErrors = [err731];
          } else {
            vErrors.push(err731);
          }
          errors++;
        }
        if ("none" !== data275) {
          const err732 = { instancePath: instancePath + "/cycles", schemaPath: "#/properties/cycles/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
          if (vErrors === null) {
            vErrors = [err732];
          } else {
            vErrors.push(err732);
          }
          errors++;
        }
        var _valid31 = _errs851 === errors;
        valid222 = valid222 || _valid31;
        const _errs853 = errors;
        if (data275 && typeof data275 == "object" && !Array.isArray(data275)) {
          for (const key39 in data275) {
            if (!func1.call(schema31.properties.cycles.anyOf[1].properties, key39)) {
              const err733 = { instancePath: instancePath + "/cycles", schemaPath: "#/properties/cycles/anyOf/1/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key39 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err733];
              } else {
                vErrors.push(err733);
              }
              errors++;
            }
          }
          if (data275.drill !== void 0) {
            let data276 = data275.drill;
            if (typeof data276 === "string") {
              if (!pattern7.test(data276)) {
                const err734 = { instancePath: instancePath + "/cycles/drill", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err734];
                } else {
                  vErrors.push(err734);
                }
                errors++;
              }
            } else {
              const err735 = { instancePath: instancePath + "/cycles/drill", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err735];
              } else {
                vErrors.push(err735);
              }
              errors++;
            }
          }
          if (data275.dwell !== void 0) {
            let data277 = data275.dwell;
            if (typeof data277 === "string") {
              if (!pattern7.test(data277)) {
                const err736 = { instancePath: instancePath + "/cycles/dwell", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err736];
                } else {
                  vErrors.push(err736);
                }
                errors++;
              }
            } else {
              const err737 = { instancePath: instancePath + "/cycles/dwell", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err737];
              } else {
                vErrors.push(err737);
              }
              errors++;
            }
          }
          if (data275.peck !== void 0) {
            let data278 = data275.peck;
            if (typeof data278 === "string") {
              if (!pattern7.test(data278)) {
                const err738 = { instancePath: instancePath + "/cycles/peck", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err738];
                } else {
                  vErrors.push(err738);
                }
                errors++;
              }
            } else {
              const err739 = { instancePath: instancePath + "/cycles/peck", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err739];
              } else {
                vErrors.push(err739);
              }
              errors++;
            }
          }
          if (data275["chip-break"] !== void 0) {
            let data279 = data275["chip-break"];
            if (typeof data279 === "string") {
              if (!pattern7.test(data279)) {
                const err740 = { instancePath: instancePath + "/cycles/chip-break", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err740];
                } else {
                  vErrors.push(err740);
                }
                errors++;
              }
            } else {
              const err741 = { instancePath: instancePath + "/cycles/chip-break", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err741];
              } else {
                vErrors.push(err741);
              }
              errors++;
            }
          }
          if (data275.tap !== void 0) {
            let data280 = data275.tap;
            if (typeof data280 === "string") {
              if (!pattern7.test(data280)) {
                const err742 = { instancePath: instancePath + "/cycles/tap", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err742];
                } else {
                  vErrors.push(err742);
                }
                errors++;
              }
            } else {
              const err743 = { instancePath: instancePath + "/cycles/tap", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err743];
              } else {
                vErrors.push(err743);
              }
              errors++;
            }
          }
          if (data275["tap-left"] !== void 0) {
            let data281 = data275["tap-left"];
            if (typeof data281 === "string") {
              if (!pattern7.test(data281)) {
                const err744 = { instancePath: instancePath + "/cycles/tap-left", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err744];
                } else {
                  vErrors.push(err744);
                }
                errors++;
              }
            } else {
              const err745 = { instancePath: instancePath + "/cycles/tap-left", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err745];
              } else {
                vErrors.push(err745);
              }
              errors++;
            }
          }
          if (data275.ream !== void 0) {
            let data282 = data275.ream;
            if (typeof data282 === "string") {
              if (!pattern7.test(data282)) {
                const err746 = { instancePath: instancePath + "/cycles/ream", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err746];
                } else {
                  vErrors.push(err746);
                }
                errors++;
              }
            } else {
              const err747 = { instancePath: instancePath + "/cycles/ream", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err747];
              } else {
                vErrors.push(err747);
              }
              errors++;
            }
          }
          if (data275["bore-dwell"] !== void 0) {
            let data283 = data275["bore-dwell"];
            if (typeof data283 === "string") {
              if (!pattern7.test(data283)) {
                const err748 = { instancePath: instancePath + "/cycles/bore-dwell", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err748];
                } else {
                  vErrors.push(err748);
                }
                errors++;
              }
            } else {
              const err749 = { instancePath: instancePath + "/cycles/bore-dwell", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err749];
              } else {
                vErrors.push(err749);
              }
              errors++;
            }
          }
          if (data275["bore-stop"] !== void 0) {
            let data284 = data275["bore-stop"];
            if (typeof data284 === "string") {
              if (!pattern7.test(data284)) {
                const err750 = { instancePath: instancePath + "/cycles/bore-stop", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err750];
                } else {
                  vErrors.push(err750);
                }
                errors++;
              }
            } else {
              const err751 = { instancePath: instancePath + "/cycles/bore-stop", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err751];
              } else {
                vErrors.push(err751);
              }
              errors++;
            }
          }
          if (data275["bore-manual"] !== void 0) {
            let data285 = data275["bore-manual"];
            if (typeof data285 === "string") {
              if (!pattern7.test(data285)) {
                const err752 = { instancePath: instancePath + "/cycles/bore-manual", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err752];
                } else {
                  vErrors.push(err752);
                }
                errors++;
              }
            } else {
              const err753 = { instancePath: instancePath + "/cycles/bore-manual", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err753];
              } else {
                vErrors.push(err753);
              }
              errors++;
            }
          }
          if (data275.return !== void 0) {
            let data286 = data275.return;
            if (data286 && typeof data286 == "object" && !Array.isArray(data286)) {
              for (const key40 in data286) {
                if (!(key40 === "initial" || key40 === "retract" || key40 === "without")) {
                  const err754 = { instancePath: instancePath + "/cycles/return", schemaPath: "#/properties/cycles/anyOf/1/properties/return/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key40 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err754];
                  } else {
                    vErrors.push(err754);
                  }
                  errors++;
                }
              }
              if (data286.initial !== void 0) {
                let data287 = data286.initial;
                if (typeof data287 === "string") {
                  if (!pattern7.test(data287)) {
                    const err755 = { instancePath: instancePath + "/cycles/return/initial", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                    if (vErrors === null) {
                      vErrors = [err755];
                    } else {
                      vErrors.push(err755);
                    }
                    errors++;
                  }
                } else {
                  const err756 = { instancePath: instancePath + "/cycles/return/initial", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err756];
                  } else {
                    vErrors.push(err756);
                  }
                  errors++;
                }
              }
              if (data286.retract !== void 0) {
                let data288 = data286.retract;
                if (typeof data288 === "string") {
                  if (!pattern7.test(data288)) {
                    const err757 = { instancePath: instancePath + "/cycles/return/retract", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                    if (vErrors === null) {
                      vErrors = [err757];
                    } else {
                      vErrors.push(err757);
                    }
                    errors++;
                  }
                } else {
                  const err758 = { instancePath: instancePath + "/cycles/return/retract", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err758];
                  } else {
                    vErrors.push(err758);
                  }
                  errors++;
                }
              }
              if (data286.without !== void 0) {
                let data289 = data286.without;
                if (typeof data289 !== "string") {
                  const err759 = { instancePath: instancePath + "/cycles/return/without", schemaPath: "#/properties/cycles/anyOf/1/properties/return/properties/without/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err759];
                  } else {
                    vErrors.push(err759);
                  }
                  errors++;
                }
                if (!(data289 === "retract" || data289 === "initial" || data289 === "none")) {
                  const err760 = { instancePath: instancePath + "/cycles/return/without", schemaPath: "#/properties/cycles/anyOf/1/properties/return/properties/without/enum", keyword: "enum", params: { allowedValues: schema31.properties.cycles.anyOf[1].properties.return.properties.without.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err760];
                  } else {
                    vErrors.push(err760);
                  }
                  errors++;
                }
              }
            } else {
              const err761 = { instancePath: instancePath + "/cycles/return", schemaPath: "#/properties/cycles/anyOf/1/properties/return/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err761];
              } else {
                vErrors.push(err761);
              }
              errors++;
            }
          }
          if (data275["back-off"] !== void 0) {
            let data290 = data275["back-off"];
            if (data290 && typeof data290 == "object" && !Array.isArray(data290)) {
              for (const key41 in data290) {
                if (!(key41 === "peck" || key41 === "chip-break")) {
                  const err762 = { instancePath: instancePath + "/cycles/back-off", schemaPath: "#/properties/cycles/anyOf/1/properties/back-off/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key41 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err762];
                  } else {
                    vErrors.push(err762);
                  }
                  errors++;
                }
              }
              if (data290.peck !== void 0) {
                let data291 = data290.peck;
                const _errs902 = errors;
                let valid239 = false;
                const _errs903 = errors;
                if (typeof data291 == "number" && isFinite(data291)) {
                  if (data291 > 1e6 || isNaN(data291)) {
                    const err763 = { instancePath: instancePath + "/cycles/back-off/peck", schemaPath: "#/$defs/length/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                    if (vErrors === null) {
                      vErrors = [err763];
                    } else {
                      vErrors.push(err763);
                    }
                    errors++;
                  }
                  if (data291 < -1e6 || isNaN(data291)) {
                    const err764 = { instancePath: instancePath + "/cycles/back-off/peck", schemaPath: "#/$defs/length/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: -1e6 }, message: "must be >= -1000000" };
                    if (vErrors === null) {
                      vErrors = [err764];
                    } else {
                      vErrors.push(err764);
                    }
                    errors++;
                  }
                } else {
                  const err765 = { instancePath: instancePath + "/cycles/back-off/peck", schemaPath: "#/$defs/length/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                  if (vErrors === null) {
                    vErrors = [err765];
                  } else {
                    vErrors.push(err765);
                  }
                  errors++;
                }
                var _valid32 = _errs903 === errors;
                valid239 = valid239 || _valid32;
                const _errs905 = errors;
                if (typeof data291 === "string") {
                  if (!pattern25.test(data291)) {
                    const err766 = { instancePath: instancePath + "/cycles/back-off/peck", schemaPath: "#/$defs/length/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }, message: 'must match pattern "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$"' };
                    if (vErrors === null) {
                      vErrors = [err766];
                    } else {
                      vErrors.push(err766);
                    }
                    errors++;
                  }
                } else {
                  const err767 = { instancePath: instancePath + "/cycles/back-off/peck", schemaPath: "#/$defs/length/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err767];
                  } else {
                    vErrors.push(err767);
                  }
                  errors++;
                }
                var _valid32 = _errs905 === errors;
                valid239 = valid239 || _valid32;
                if (!valid239) {
                  const err768 = { instancePath: instancePath + "/cycles/back-off/peck", schemaPath: "#/$defs/length/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err768];
                  } else {
                    vErrors.push(err768);
                  }
                  errors++;
                } else {
                  errors = _errs902;
                  if (vErrors !== null) {
                    if (_errs902) {
                      vErrors.length = _errs902;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
              if (data290["chip-break"] !== void 0) {
                let data292 = data290["chip-break"];
                const _errs909 = errors;
                let valid241 = false;
                const _errs910 = errors;
                if (typeof data292 == "number" && isFinite(data292)) {
                  if (data292 > 1e6 || isNaN(data292)) {
                    const err769 = { instancePath: instancePath + "/cycles/back-off/chip-break", schemaPath: "#/$defs/length/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                    if (vErrors === null) {
                      vErrors = [err769];
                    } else {
                      vErrors.push(err769);
                    }
                    errors++;
                  }
                  if (data292 < -1e6 || isNaN(data292)) {
                    const err770 = { instancePath: instancePath + "/cycles/back-off/chip-break", schemaPath: "#/$defs/length/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: -1e6 }, message: "must be >= -1000000" };
                    if (vErrors === null) {
                      vErrors = [err770];
                    } else {
                      vErrors.push(err770);
                    }
                    errors++;
                  }
                } else {
                  const err771 = { instancePath: instancePath + "/cycles/back-off/chip-break", schemaPath: "#/$defs/length/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                  if (vErrors === null) {
                    vErrors = [err771];
                  } else {
                    vErrors.push(err771);
                  }
                  errors++;
                }
                var _valid33 = _errs910 === errors;
                valid241 = valid241 || _valid33;
                const _errs912 = errors;
                if (typeof data292 === "string") {
                  if (!pattern25.test(data292)) {
                    const err772 = { instancePath: instancePath + "/cycles/back-off/chip-break", schemaPath: "#/$defs/length/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }, message: 'must match pattern "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$"' };
                    if (vErrors === null) {
                      vErrors = [err772];
                    } else {
                      vErrors.push(err772);
                    }
                    errors++;
                  }
                } else {
                  const err773 = { instancePath: instancePath + "/cycles/back-off/chip-break", schemaPath: "#/$defs/length/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err773];
                  } else {
                    vErrors.push(err773);
                  }
                  errors++;
                }
                var _valid33 = _errs912 === errors;
                valid241 = valid241 || _valid33;
                if (!valid241) {
                  const err774 = { instancePath: instancePath + "/cycles/back-off/chip-break", schemaPath: "#/$defs/length/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err774];
                  } else {
                    vErrors.push(err774);
                  }
                  errors++;
                } else {
                  errors = _errs909;
                  if (vErrors !== null) {
                    if (_errs909) {
                      vErrors.length = _errs909;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
            } else {
              const err775 = { instancePath: instancePath + "/cycles/back-off", schemaPath: "#/properties/cycles/anyOf/1/properties/back-off/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err775];
              } else {
                vErrors.push(err775);
              }
              errors++;
            }
          }
          if (data275.levels !== void 0) {
            let data293 = data275.levels;
            if (typeof data293 !== "string") {
              const err776 = { instancePath: instancePath + "/cycles/levels", schemaPath: "#/properties/cycles/anyOf/1/properties/levels/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err776];
              } else {
                vErrors.push(err776);
              }
              errors++;
            }
            if (!(data293 === "absolute" || data293 === "relative" || data293 === "from-initial")) {
              const err777 = { instancePath: instancePath + "/cycles/levels", schemaPath: "#/properties/cycles/anyOf/1/properties/levels/enum", keyword: "enum", params: { allowedValues: schema31.properties.cycles.anyOf[1].properties.levels.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err777];
              } else {
                vErrors.push(err777);
              }
              errors++;
            }
          }
          if (data275.words !== void 0) {
            let data294 = data275.words;
            if (data294 && typeof data294 == "object" && !Array.isArray(data294)) {
              for (const key42 in data294) {
                if (!(key42 === "retract" || key42 === "peck" || key42 === "back-off" || key42 === "dwell" || key42 === "dwell-unit" || key42 === "repeat")) {
                  const err778 = { instancePath: instancePath + "/cycles/words", schemaPath: "#/properties/cycles/anyOf/1/properties/words/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key42 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err778];
                  } else {
                    vErrors.push(err778);
                  }
                  errors++;
                }
              }
              if (data294.retract !== void 0) {
                let data295 = data294.retract;
                if (typeof data295 === "string") {
                  if (!pattern6.test(data295)) {
                    const err779 = { instancePath: instancePath + "/cycles/words/retract", schemaPath: "#/$defs/letter/pattern", keyword: "pattern", params: { pattern: "^[A-Z]$" }, message: 'must match pattern "^[A-Z]$"' };
                    if (vErrors === null) {
                      vErrors = [err779];
                    } else {
                      vErrors.push(err779);
                    }
                    errors++;
                  }
                } else {
                  const err780 = { instancePath: instancePath + "/cycles/words/retract", schemaPath: "#/$defs/letter/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err780];
                  } else {
                    vErrors.push(err780);
                  }
                  errors++;
                }
              }
              if (data294.peck !== void 0) {
                let data296 = data294.peck;
                if (typeof data296 === "string") {
                  if (!pattern6.test(data296)) {
                    const err781 = { instancePath: instancePath + "/cycles/words/peck", schemaPath: "#/$defs/letter/pattern", keyword: "pattern", params: { pattern: "^[A-Z]$" }, message: 'must match pattern "^[A-Z]$"' };
                    if (vErrors === null) {
                      vErrors = [err781];
                    } else {
                      vErrors.push(err781);
                    }
                    errors++;
                  }
                } else {
                  const err782 = { instancePath: instancePath + "/cycles/words/peck", schemaPath: "#/$defs/letter/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err782];
                  } else {
                    vErrors.push(err782);
                  }
                  errors++;
                }
              }
              if (data294["back-off"] !== void 0) {
                let data297 = data294["back-off"];
                if (typeof data297 === "string") {
                  if (!pattern22.test(data297)) {
                    const err783 = { instancePath: instancePath + "/cycles/words/back-off", schemaPath: "#/$defs/letterOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[A-Z])$" }, message: 'must match pattern "^(none|[A-Z])$"' };
                    if (vErrors === null) {
                      vErrors = [err783];
                    } else {
                      vErrors.push(err783);
                    }
                    errors++;
                  }
                } else {
                  const err784 = { instancePath: instancePath + "/cycles/words/back-off", schemaPath: "#/$defs/letterOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err784];
                  } else {
                    vErrors.push(err784);
                  }
                  errors++;
                }
              }
              if (data294.dwell !== void 0) {
                let data298 = data294.dwell;
                if (typeof data298 === "string") {
                  if (!pattern6.test(data298)) {
                    const err785 = { instancePath: instancePath + "/cycles/words/dwell", schemaPath: "#/$defs/letter/pattern", keyword: "pattern", params: { pattern: "^[A-Z]$" }, message: 'must match pattern "^[A-Z]$"' };
                    if (vErrors === null) {
                      vErrors = [err785];
                    } else {
                      vErrors.push(err785);
                    }
                    errors++;
                  }
                } else {
                  const err786 = { instancePath: instancePath + "/cycles/words/dwell", schemaPath: "#/$defs/letter/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err786];
                  } else {
                    vErrors.push(err786);
                  }
                  errors++;
                }
              }
              if (data294["dwell-unit"] !== void 0) {
                let data299 = data294["dwell-unit"];
                if (typeof data299 !== "string") {
                  const err787 = { instancePath: instancePath + "/cycles/words/dwell-unit", schemaPath: "#/properties/cycles/anyOf/1/properties/words/properties/dwell-unit/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err787];
                  } else {
                    vErrors.push(err787);
                  }
                  errors++;
                }
                if (!(data299 === "s" || data299 === "ms" || data299 === "rev")) {
                  const err788 = { instancePath: instancePath + "/cycles/words/dwell-unit", schemaPath: "#/properties/cycles/anyOf/1/properties/words/properties/dwell-unit/enum", keyword: "enum", params: { allowedValues: schema31.properties.cycles.anyOf[1].properties.words.properties["dwell-unit"].enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err788];
                  } else {
                    vErrors.push(err788);
                  }
                  errors++;
                }
              }
              if (data294.repeat !== void 0) {
                let data300 = data294.repeat;
                if (typeof data300 === "string") {
                  if (!pattern22.test(data300)) {
                    const err789 = { instancePath: instancePath + "/cycles/words/repeat", schemaPath: "#/$defs/letterOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[A-Z])$" }, message: 'must match pattern "^(none|[A-Z])$"' };
                    if (vErrors === null) {
                      vErrors = [err789];
                    } else {
                      vErrors.push(err789);
                    }
                    errors++;
                  }
                } else {
                  const err790 = { instancePath: instancePath + "/cycles/words/repeat", schemaPath: "#/$defs/letterOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err790];
                  } else {
                    vErrors.push(err790);
                  }
                  errors++;
                }
              }
            } else {
              const err791 = { instancePath: instancePath + "/cycles/words", schemaPath: "#/properties/cycles/anyOf/1/properties/words/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err791];
              } else {
                vErrors.push(err791);
              }
              errors++;
            }
          }
          if (data275.repeat !== void 0) {
            let data301 = data275.repeat;
            if (typeof data301 !== "string") {
              const err792 = { instancePath: instancePath + "/cycles/repeat", schemaPath: "#/properties/cycles/anyOf/1/properties/repeat/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err792];
              } else {
                vErrors.push(err792);
              }
              errors++;
            }
            if (!(data301 === "positions" || data301 === "all")) {
              const err793 = { instancePath: instancePath + "/cycles/repeat", schemaPath: "#/properties/cycles/anyOf/1/properties/repeat/enum", keyword: "enum", params: { allowedValues: schema31.properties.cycles.anyOf[1].properties.repeat.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err793];
              } else {
                vErrors.push(err793);
              }
              errors++;
            }
          }
          if (data275.definition !== void 0) {
            let data302 = data275.definition;
            if (typeof data302 !== "string") {
              const err794 = { instancePath: instancePath + "/cycles/definition", schemaPath: "#/properties/cycles/anyOf/1/properties/definition/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err794];
              } else {
                vErrors.push(err794);
              }
              errors++;
            }
            if (!(data302 === "with-first-hole" || data302 === "apart")) {
              const err795 = { instancePath: instancePath + "/cycles/definition", schemaPath: "#/properties/cycles/anyOf/1/properties/definition/enum", keyword: "enum", params: { allowedValues: schema31.properties.cycles.anyOf[1].properties.definition.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err795];
              } else {
                vErrors.push(err795);
              }
              errors++;
            }
          }
          if (data275.positions !== void 0) {
            let data303 = data275.positions;
            if (typeof data303 !== "string") {
              const err796 = { instancePath: instancePath + "/cycles/positions", schemaPath: "#/properties/cycles/anyOf/1/properties/positions/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err796];
              } else {
                vErrors.push(err796);
              }
              errors++;
            }
            if (!(data303 === "changed" || data303 === "both")) {
              const err797 = { instancePath: instancePath + "/cycles/positions", schemaPath: "#/properties/cycles/anyOf/1/properties/positions/enum", keyword: "enum", params: { allowedValues: schema31.properties.cycles.anyOf[1].properties.positions.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err797];
              } else {
                vErrors.push(err797);
              }
              errors++;
            }
          }
          if (data275["initial-level"] !== void 0) {
            let data304 = data275["initial-level"];
            if (typeof data304 !== "string") {
              const err798 = { instancePath: instancePath + "/cycles/initial-level", schemaPath: "#/properties/cycles/anyOf/1/properties/initial-level/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err798];
              } else {
                vErrors.push(err798);
              }
              errors++;
            }
            if (!(data304 === "before-series" || data304 === "current")) {
              const err799 = { instancePath: instancePath + "/cycles/initial-level", schemaPath: "#/properties/cycles/anyOf/1/properties/initial-level/enum", keyword: "enum", params: { allowedValues: schema31.properties.cycles.anyOf[1].properties["initial-level"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err799];
              } else {
                vErrors.push(err799);
              }
              errors++;
            }
          }
          if (data275.axis !== void 0) {
            let data305 = data275.axis;
            if (typeof data305 !== "string") {
              const err800 = { instancePath: instancePath + "/cycles/axis", schemaPath: "#/properties/cycles/anyOf/1/properties/axis/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err800];
              } else {
                vErrors.push(err800);
              }
              errors++;
            }
            if (!(data305 === "plane-normal" || data305 === "z")) {
              const err801 = { instancePath: instancePath + "/cycles/axis", schemaPath: "#/properties/cycles/anyOf/1/properties/axis/enum", keyword: "enum", params: { allowedValues: schema31.properties.cycles.anyOf[1].properties.axis.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err801];
              } else {
                vErrors.push(err801);
              }
              errors++;
            }
          }
          if (data275["tap-feed"] !== void 0) {
            let data306 = data275["tap-feed"];
            if (typeof data306 !== "string") {
              const err802 = { instancePath: instancePath + "/cycles/tap-feed", schemaPath: "#/properties/cycles/anyOf/1/properties/tap-feed/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err802];
              } else {
                vErrors.push(err802);
              }
              errors++;
            }
            if (!(data306 === "feed-mode" || data306 === "lead")) {
              const err803 = { instancePath: instancePath + "/cycles/tap-feed", schemaPath: "#/properties/cycles/anyOf/1/properties/tap-feed/enum", keyword: "enum", params: { allowedValues: schema31.properties.cycles.anyOf[1].properties["tap-feed"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err803];
              } else {
                vErrors.push(err803);
              }
              errors++;
            }
          }
          if (data275["tap-synchronised"] !== void 0) {
            let data307 = data275["tap-synchronised"];
            if (typeof data307 === "string") {
              if (!pattern7.test(data307)) {
                const err804 = { instancePath: instancePath + "/cycles/tap-synchronised", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err804];
                } else {
                  vErrors.push(err804);
                }
                errors++;
              }
            } else {
              const err805 = { instancePath: instancePath + "/cycles/tap-synchronised", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err805];
              } else {
                vErrors.push(err805);
              }
              errors++;
            }
          }
          if (data275["ended-by"] !== void 0) {
            let data308 = data275["ended-by"];
            if (typeof data308 !== "string") {
              const err806 = { instancePath: instancePath + "/cycles/ended-by", schemaPath: "#/properties/cycles/anyOf/1/properties/ended-by/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err806];
              } else {
                vErrors.push(err806);
              }
              errors++;
            }
            if (!(data308 === "any-motion" || data308 === "cancel-code")) {
              const err807 = { instancePath: instancePath + "/cycles/ended-by", schemaPath: "#/properties/cycles/anyOf/1/properties/ended-by/enum", keyword: "enum", params: { allowedValues: schema31.properties.cycles.anyOf[1].properties["ended-by"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err807];
              } else {
                vErrors.push(err807);
              }
              errors++;
            }
          }
        } else {
          const err808 = { instancePath: instancePath + "/cycles", schemaPath: "#/properties/cycles/anyOf/1/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err808];
          } else {
            vErrors.push(err808);
          }
          errors++;
        }
        var _valid31 = _errs853 === errors;
        valid222 = valid222 || _valid31;
        if (!valid222) {
          const err809 = { instancePath: instancePath + "/cycles", schemaPath: "#/properties/cycles/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
          if (vErrors === null) {
            vErrors = [err809];
          } else {
            vErrors.push(err809);
          }
          errors++;
        } else {
          errors = _errs850;
          if (vErrors !== null) {
            if (_errs850) {
              vErrors.length = _errs850;
            } else {
              vErrors = null;
            }
          }
        }
      }
      if (data.spindle !== void 0) {
        let data309 = data.spindle;
        if (data309 && typeof data309 == "object" && !Array.isArray(data309)) {
          for (const key43 in data309) {
            if (!func1.call(schema31.properties.spindle.properties, key43)) {
              const err810 = { instancePath: instancePath + "/spindle", schemaPath: "#/properties/spindle/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key43 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err810];
              } else {
                vErrors.push(err810);
              }
              errors++;
            }
          }
          if (data309.cw !== void 0) {
            let data310 = data309.cw;
            if (typeof data310 === "string") {
              if (!pattern7.test(data310)) {
                const err811 = { instancePath: instancePath + "/spindle/cw", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err811];
                } else {
                  vErrors.push(err811);
                }
                errors++;
              }
            } else {
              const err812 = { instancePath: instancePath + "/spindle/cw", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err812];
              } else {
                vErrors.push(err812);
              }
              errors++;
            }
          }
          if (data309.ccw !== void 0) {
            let data311 = data309.ccw;
            if (typeof data311 === "string") {
              if (!pattern7.test(data311)) {
                const err813 = { instancePath: instancePath + "/spindle/ccw", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err813];
                } else {
                  vErrors.push(err813);
                }
                errors++;
              }
            } else {
              const err814 = { instancePath: instancePath + "/spindle/ccw", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err814];
              } else {
                vErrors.push(err814);
              }
              errors++;
            }
          }
          if (data309.stop !== void 0) {
            let data312 = data309.stop;
            if (typeof data312 === "string") {
              if (!pattern7.test(data312)) {
                const err815 = { instancePath: instancePath + "/spindle/stop", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err815];
                } else {
                  vErrors.push(err815);
                }
                errors++;
              }
            } else {
              const err816 = { instancePath: instancePath + "/spindle/stop", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err816];
              } else {
                vErrors.push(err816);
              }
              errors++;
            }
          }
          if (data309.orient !== void 0) {
            let data313 = data309.orient;
            if (typeof data313 === "string") {
              if (!pattern26.test(data313)) {
                const err817 = { instancePath: instancePath + "/spindle/orient", schemaPath: "#/$defs/codeWithWordOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$"' };
                if (vErrors === null) {
                  vErrors = [err817];
                } else {
                  vErrors.push(err817);
                }
                errors++;
              }
            } else {
              const err818 = { instancePath: instancePath + "/spindle/orient", schemaPath: "#/$defs/codeWithWordOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err818];
              } else {
                vErrors.push(err818);
              }
              errors++;
            }
          }
          if (data309.order !== void 0) {
            let data314 = data309.order;
            if (typeof data314 !== "string") {
              const err819 = { instancePath: instancePath + "/spindle/order", schemaPath: "#/properties/spindle/properties/order/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err819];
              } else {
                vErrors.push(err819);
              }
              errors++;
            }
            if (!(data314 === "speed-first" || data314 === "start-first")) {
              const err820 = { instancePath: instancePath + "/spindle/order", schemaPath: "#/properties/spindle/properties/order/enum", keyword: "enum", params: { allowedValues: schema31.properties.spindle.properties.order.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err820];
              } else {
                vErrors.push(err820);
              }
              errors++;
            }
          }
          if (data309.blocks !== void 0) {
            let data315 = data309.blocks;
            if (typeof data315 !== "string") {
              const err821 = { instancePath: instancePath + "/spindle/blocks", schemaPath: "#/properties/spindle/properties/blocks/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err821];
              } else {
                vErrors.push(err821);
              }
              errors++;
            }
            if (!(data315 === "together" || data315 === "apart")) {
              const err822 = { instancePath: instancePath + "/spindle/blocks", schemaPath: "#/properties/spindle/properties/blocks/enum", keyword: "enum", params: { allowedValues: schema31.properties.spindle.properties.blocks.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err822];
              } else {
                vErrors.push(err822);
              }
              errors++;
            }
          }
          if (data309["speed-unit"] !== void 0) {
            let data316 = data309["speed-unit"];
            if (typeof data316 !== "string") {
              const err823 = { instancePath: instancePath + "/spindle/speed-unit", schemaPath: "#/properties/spindle/properties/speed-unit/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err823];
              } else {
                vErrors.push(err823);
              }
              errors++;
            }
            if (!(data316 === "rpm" || data316 === "percent")) {
              const err824 = { instancePath: instancePath + "/spindle/speed-unit", schemaPath: "#/properties/spindle/properties/speed-unit/enum", keyword: "enum", params: { allowedValues: schema31.properties.spindle.properties["speed-unit"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err824];
              } else {
                vErrors.push(err824);
              }
              errors++;
            }
          }
          if (data309["full-speed"] !== void 0) {
            let data317 = data309["full-speed"];
            if (typeof data317 == "number" && isFinite(data317)) {
              if (data317 > 1e6 || isNaN(data317)) {
                const err825 = { instancePath: instancePath + "/spindle/full-speed", schemaPath: "#/properties/spindle/properties/full-speed/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                if (vErrors === null) {
                  vErrors = [err825];
                } else {
                  vErrors.push(err825);
                }
                errors++;
              }
              if (data317 <= 0 || isNaN(data317)) {
                const err826 = { instancePath: instancePath + "/spindle/full-speed", schemaPath: "#/properties/spindle/properties/full-speed/exclusiveMinimum", keyword: "exclusiveMinimum", params: { comparison: ">", limit: 0 }, message: "must be > 0" };
                if (vErrors === null) {
                  vErrors = [err826];
                } else {
                  vErrors.push(err826);
                }
                errors++;
              }
            } else {
              const err827 = { instancePath: instancePath + "/spindle/full-speed", schemaPath: "#/properties/spindle/properties/full-speed/type", keyword: "type", params: { type: "number" }, message: "must be number" };
              if (vErrors === null) {
                vErrors = [err827];
              } else {
                vErrors.push(err827);
              }
              errors++;
            }
          }
          if (data309.gears !== void 0) {
            let data318 = data309.gears;
            const _errs977 = errors;
            let valid254 = false;
            const _errs978 = errors;
            if (typeof data318 !== "string") {
              const err828 = { instancePath: instancePath + "/spindle/gears", schemaPath: "#/properties/spindle/properties/gears/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err828];
              } else {
                vErrors.push(err828);
              }
              errors++;
            }
            if ("none" !== data318) {
              const err829 = { instancePath: instancePath + "/spindle/gears", schemaPath: "#/properties/spindle/properties/gears/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
              if (vErrors === null) {
                vErrors = [err829];
              } else {
                vErrors.push(err829);
              }
              errors++;
            }
            var _valid34 = _errs978 === errors;
            valid254 = valid254 || _valid34;
            const _errs980 = errors;
            if (Array.isArray(data318)) {
              if (data318.length > 6) {
                const err830 = { instancePath: instancePath + "/spindle/gears", schemaPath: "#/properties/spindle/properties/gears/anyOf/1/maxItems", keyword: "maxItems", params: { limit: 6 }, message: "must NOT have more than 6 items" };
                if (vErrors === null) {
                  vErrors = [err830];
                } else {
                  vErrors.push(err830);
                }
                errors++;
              }
              if (data318.length < 1) {
                const err831 = { instancePath: instancePath + "/spindle/gears", schemaPath: "#/properties/spindle/properties/gears/anyOf/1/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items" };
                if (vErrors === null) {
                  vErrors = [err831];
                } else {
                  vErrors.push(err831);
                }
                errors++;
              }
              const len7 = data318.length;
              for (let i9 = 0; i9 < len7; i9++) {
                let data319 = data318[i9];
                if (data319 && typeof data319 == "object" && !Array.isArray(data319)) {
                  for (const key44 in data319) {
                    if (!(key44 === "code" || key44 === "from" || key44 === "to")) {
                      const err832 = { instancePath: instancePath + "/spindle/gears/" + i9, schemaPath: "#/properties/spindle/properties/gears/anyOf/1/items/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key44 }, message: "must NOT have additional properties" };
                      if (vErrors === null) {
                        vErrors = [err832];
                      } else {
                        vErrors.push(err832);
                      }
                      errors++;
                    }
                  }
                  if (data319.code !== void 0) {
                    let data320 = data319.code;
                    if (typeof data320 === "string") {
                      if (!pattern78.test(data320)) {
                        const err833 = { instancePath: instancePath + "/spindle/gears/" + i9 + "/code", schemaPath: "#/properties/spindle/properties/gears/anyOf/1/items/properties/code/pattern", keyword: "pattern", params: { pattern: "^M\\d{1,3}$" }, message: 'must match pattern "^M\\d{1,3}$"' };
                        if (vErrors === null) {
                          vErrors = [err833];
                        } else {
                          vErrors.push(err833);
                        }
                        errors++;
                      }
                    } else {
                      const err834 = { instancePath: instancePath + "/spindle/gears/" + i9 + "/code", schemaPath: "#/properties/spindle/properties/gears/anyOf/1/items/properties/code/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                      if (vErrors === null) {
                        vErrors = [err834];
                      } else {
                        vErrors.push(err834);
                      }
                      errors++;
                    }
                  }
                  if (data319.from !== void 0) {
                    let data321 = data319.from;
                    if (typeof data321 == "number" && isFinite(data321)) {
                      if (data321 > 1e6 || isNaN(data321)) {
                        const err835 = { instancePath: instancePath + "/spindle/gears/" + i9 + "/from", schemaPath: "#/properties/spindle/properties/gears/anyOf/1/items/properties/from/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                        if (vErrors === null) {
                          vErrors = [err835];
                        } else {
                          vErrors.push(err835);
                        }
                        errors++;
                      }
                      if (data321 < 0 || isNaN(data321)) {
                        const err836 = { instancePath: instancePath + "/spindle/gears/" + i9 + "/from", schemaPath: "#/properties/spindle/properties/gears/anyOf/1/items/properties/from/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                        if (vErrors === null) {
                          vErrors = [err836];
                        } else {
                          vErrors.push(err836);
                        }
                        errors++;
                      }
                    } else {
                      const err837 = { instancePath: instancePath + "/spindle/gears/" + i9 + "/from", schemaPath: "#/properties/spindle/properties/gears/anyOf/1/items/properties/from/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                      if (vErrors === null) {
                        vErrors = [err837];
                      } else {
                        vErrors.push(err837);
                      }
                      errors++;
                    }
                  }
                  if (data319.to !== void 0) {
                    let data322 = data319.to;
                    if (typeof data322 == "number" && isFinite(data322)) {
                      if (data322 > 1e6 || isNaN(data322)) {
                        const err838 = { instancePath: instancePath + "/spindle/gears/" + i9 + "/to", schemaPath: "#/properties/spindle/properties/gears/anyOf/1/items/properties/to/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                        if (vErrors === null) {
                          vErrors = [err838];
                        } else {
                          vErrors.push(err838);
                        }
                        errors++;
                      }
                      if (data322 <= 0 || isNaN(data322)) {
                        const err839 = { instancePath: instancePath + "/spindle/gears/" + i9 + "/to", schemaPath: "#/properties/spindle/properties/gears/anyOf/1/items/properties/to/exclusiveMinimum", keyword: "exclusiveMinimum", params: { comparison: ">", limit: 0 }, message: "must be > 0" };
                        if (vErrors === null) {
                          vErrors = [err839];
                        } else {
                          vErrors.push(err839);
                        }
                        errors++;
                      }
                    } else {
                      const err840 = { instancePath: instancePath + "/spindle/gears/" + i9 + "/to", schemaPath: "#/properties/spindle/properties/gears/anyOf/1/items/properties/to/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                      if (vErrors === null) {
                        vErrors = [err840];
                      } else {
                        vErrors.push(err840);
                      }
                      errors++;
                    }
                  }
                } else {
                  const err841 = { instancePath: instancePath + "/spindle/gears/" + i9, schemaPath: "#/properties/spindle/properties/gears/anyOf/1/items/type", keyword: "type", params: { type: "object" }, message: "must be object" };
                  if (vErrors === null) {
                    vErrors = [err841];
                  } else {
                    vErrors.push(err841);
                  }
                  errors++;
                }
              }
            } else {
              const err842 = { instancePath: instancePath + "/spindle/gears", schemaPath: "#/properties/spindle/properties/gears/anyOf/1/type", keyword: "type", params: { type: "array" }, message: "must be array" };
              if (vErrors === null) {
                vErrors = [err842];
              } else {
                vErrors.push(err842);
              }
              errors++;
            }
            var _valid34 = _errs980 === errors;
            valid254 = valid254 || _valid34;
            if (!valid254) {
              const err843 = { instancePath: instancePath + "/spindle/gears", schemaPath: "#/properties/spindle/properties/gears/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err843];
              } else {
                vErrors.push(err843);
              }
              errors++;
            } else {
              errors = _errs977;
              if (vErrors !== null) {
                if (_errs977) {
                  vErrors.length = _errs977;
                } else {
                  vErrors = null;
                }
              }
            }
          }
        } else {
          const err844 = { instancePath: instancePath + "/spindle", schemaPath: "#/properties/spindle/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err844];
          } else {
            vErrors.push(err844);
          }
          errors++;
        }
      }
      if (data.coolant !== void 0) {
        let data323 = data.coolant;
        if (data323 && typeof data323 == "object" && !Array.isArray(data323)) {
          for (const key45 in data323) {
            if (!(key45 === "mist" || key45 === "flood" || key45 === "air" || key45 === "through-tool" || key45 === "off" || key45 === "blocks")) {
              const err845 = { instancePath: instancePath + "/coolant", schemaPath: "#/properties/coolant/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key45 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err845];
              } else {
                vErrors.push(err845);
              }
              errors++;
            }
          }
          if (data323.mist !== void 0) {
            let data324 = data323.mist;
            if (typeof data324 === "string") {
              if (!pattern7.test(data324)) {
                const err846 = { instancePath: instancePath + "/coolant/mist", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err846];
                } else {
                  vErrors.push(err846);
                }
                errors++;
              }
            } else {
              const err847 = { instancePath: instancePath + "/coolant/mist", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err847];
              } else {
                vErrors.push(err847);
              }
              errors++;
            }
          }
          if (data323.flood !== void 0) {
            let data325 = data323.flood;
            if (typeof data325 === "string") {
              if (!pattern7.test(data325)) {
                const err848 = { instancePath: instancePath + "/coolant/flood", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err848];
                } else {
                  vErrors.push(err848);
                }
                errors++;
              }
            } else {
              const err849 = { instancePath: instancePath + "/coolant/flood", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err849];
              } else {
                vErrors.push(err849);
              }
              errors++;
            }
          }
          if (data323.air !== void 0) {
            let data326 = data323.air;
            if (typeof data326 === "string") {
              if (!pattern7.test(data326)) {
                const err850 = { instancePath: instancePath + "/coolant/air", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err850];
                } else {
                  vErrors.push(err850);
                }
                errors++;
              }
            } else {
              const err851 = { instancePath: instancePath + "/coolant/air", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err851];
              } else {
                vErrors.push(err851);
              }
              errors++;
            }
          }
          if (data323["through-tool"] !== void 0) {
            let data327 = data323["through-tool"];
            if (typeof data327 === "string") {
              if (!pattern7.test(data327)) {
                const err852 = { instancePath: instancePath + "/coolant/through-tool", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err852];
                } else {
                  vErrors.push(err852);
                }
                errors++;
              }
            } else {
              const err853 = { instancePath: instancePath + "/coolant/through-tool", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err853];
              } else {
                vErrors.push(err853);
              }
              errors++;
            }
          }
          if (data323.off !== void 0) {
            let data328 = data323.off;
            const _errs1007 = errors;
            let valid263 = false;
            const _errs1008 = errors;
            if (typeof data328 === "string") {
              if (!pattern7.test(data328)) {
                const err854 = { instancePath: instancePath + "/coolant/off", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err854];
                } else {
                  vErrors.push(err854);
                }
                errors++;
              }
            } else {
              const err855 = { instancePath: instancePath + "/coolant/off", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err855];
              } else {
                vErrors.push(err855);
              }
              errors++;
            }
            var _valid35 = _errs1008 === errors;
            valid263 = valid263 || _valid35;
            const _errs1011 = errors;
            if (data328 && typeof data328 == "object" && !Array.isArray(data328)) {
              for (const key46 in data328) {
                if (!(key46 === "mist" || key46 === "flood" || key46 === "air" || key46 === "through-tool")) {
                  const err856 = { instancePath: instancePath + "/coolant/off", schemaPath: "#/properties/coolant/properties/off/anyOf/1/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key46 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err856];
                  } else {
                    vErrors.push(err856);
                  }
                  errors++;
                }
              }
              if (data328.mist !== void 0) {
                let data329 = data328.mist;
                if (typeof data329 === "string") {
                  if (!pattern7.test(data329)) {
                    const err857 = { instancePath: instancePath + "/coolant/off/mist", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                    if (vErrors === null) {
                      vErrors = [err857];
                    } else {
                      vErrors.push(err857);
                    }
                    errors++;
                  }
                } else {
                  const err858 = { instancePath: instancePath + "/coolant/off/mist", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err858];
                  } else {
                    vErrors.push(err858);
                  }
                  errors++;
                }
              }
              if (data328.flood !== void 0) {
                let data330 = data328.flood;
                if (typeof data330 === "string") {
                  if (!pattern7.test(data330)) {
                    const err859 = { instancePath: instancePath + "/coolant/off/flood", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                    if (vErrors === null) {
                      vErrors = [err859];
                    } else {
                      vErrors.push(err859);
                    }
                    errors++;
                  }
                } else {
                  const err860 = { instancePath: instancePath + "/coolant/off/flood", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err860];
                  } else {
                    vErrors.push(err860);
                  }
                  errors++;
                }
              }
              if (data328.air !== void 0) {
                let data331 = data328.air;
                if (typeof data331 === "string") {
                  if (!pattern7.test(data331)) {
                    const err861 = { instancePath: instancePath + "/coolant/off/air", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                    if (vErrors === null) {
                      vErrors = [err861];
                    } else {
                      vErrors.push(err861);
                    }
                    errors++;
                  }
                } else {
                  const err862 = { instancePath: instancePath + "/coolant/off/air", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err862];
                  } else {
                    vErrors.push(err862);
                  }
                  errors++;
                }
              }
              if (data328["through-tool"] !== void 0) {
                let data332 = data328["through-tool"];
                if (typeof data332 === "string") {
                  if (!pattern7.test(data332)) {
                    const err863 = { instancePath: instancePath + "/coolant/off/through-tool", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                    if (vErrors === null) {
                      vErrors = [err863];
                    } else {
                      vErrors.push(err863);
                    }
                    errors++;
                  }
                } else {
                  const err864 = { instancePath: instancePath + "/coolant/off/through-tool", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err864];
                  } else {
                    vErrors.push(err864);
                  }
                  errors++;
                }
              }
            } else {
              const err865 = { instancePath: instancePath + "/coolant/off", schemaPath: "#/properties/coolant/properties/off/anyOf/1/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err865];
              } else {
                vErrors.push(err865);
              }
              errors++;
            }
            var _valid35 = _errs1011 === errors;
            valid263 = valid263 || _valid35;
            if (!valid263) {
              const err866 = { instancePath: instancePath + "/coolant/off", schemaPath: "#/properties/coolant/properties/off/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err866];
              } else {
                vErrors.push(err866);
              }
              errors++;
            } else {
              errors = _errs1007;
              if (vErrors !== null) {
                if (_errs1007) {
                  vErrors.length = _errs1007;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data323.blocks !== void 0) {
            let data333 = data323.blocks;
            if (typeof data333 !== "string") {
              const err867 = { instancePath: instancePath + "/coolant/blocks", schemaPath: "#/properties/coolant/properties/blocks/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err867];
              } else {
                vErrors.push(err867);
              }
              errors++;
            }
            if (!(data333 === "apart" || data333 === "together")) {
              const err868 = { instancePath: instancePath + "/coolant/blocks", schemaPath: "#/properties/coolant/properties/blocks/enum", keyword: "enum", params: { allowedValues: schema31.properties.coolant.properties.blocks.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err868];
              } else {
                vErrors.push(err868);
              }
              errors++;
            }
          }
        } else {
          const err869 = { instancePath: instancePath + "/coolant", schemaPath: "#/properties/coolant/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err869];
          } else {
            vErrors.push(err869);
          }
          errors++;
        }
      }
      if (data.tools !== void 0) {
        let data334 = data.tools;
        if (data334 && typeof data334 == "object" && !Array.isArray(data334)) {
          for (const key47 in data334) {
            if (!(key47 === "change" || key47 === "blocks" || key47 === "order" || key47 === "preselect" || key47 === "in-operator-swap" || key47 === "empty")) {
              const err870 = { instancePath: instancePath + "/tools", schemaPath: "#/properties/tools/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key47 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err870];
              } else {
                vErrors.push(err870);
              }
              errors++;
            }
          }
          if (data334.change !== void 0) {
            let data335 = data334.change;
            if (typeof data335 === "string") {
              if (!pattern88.test(data335)) {
                const err871 = { instancePath: instancePath + "/tools/change", schemaPath: "#/properties/tools/properties/change/pattern", keyword: "pattern", params: { pattern: "^(none|with-tool-word|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|with-tool-word|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err871];
                } else {
                  vErrors.push(err871);
                }
                errors++;
              }
            } else {
              const err872 = { instancePath: instancePath + "/tools/change", schemaPath: "#/properties/tools/properties/change/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err872];
              } else {
                vErrors.push(err872);
              }
              errors++;
            }
          }
          if (data334.blocks !== void 0) {
            let data336 = data334.blocks;
            if (typeof data336 !== "string") {
              const err873 = { instancePath: instancePath + "/tools/blocks", schemaPath: "#/properties/tools/properties/blocks/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err873];
              } else {
                vErrors.push(err873);
              }
              errors++;
            }
            if (!(data336 === "together" || data336 === "apart")) {
              const err874 = { instancePath: instancePath + "/tools/blocks", schemaPath: "#/properties/tools/properties/blocks/enum", keyword: "enum", params: { allowedValues: schema31.properties.tools.properties.blocks.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err874];
              } else {
                vErrors.push(err874);
              }
              errors++;
            }
          }
          if (data334.order !== void 0) {
            let data337 = data334.order;
            if (typeof data337 !== "string") {
              const err875 = { instancePath: instancePath + "/tools/order", schemaPath: "#/properties/tools/properties/order/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err875];
              } else {
                vErrors.push(err875);
              }
              errors++;
            }
            if (!(data337 === "select-first" || data337 === "change-first")) {
              const err876 = { instancePath: instancePath + "/tools/order", schemaPath: "#/properties/tools/properties/order/enum", keyword: "enum", params: { allowedValues: schema31.properties.tools.properties.order.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err876];
              } else {
                vErrors.push(err876);
              }
              errors++;
            }
          }
          if (data334.preselect !== void 0) {
            let data338 = data334.preselect;
            if (typeof data338 !== "string") {
              const err877 = { instancePath: instancePath + "/tools/preselect", schemaPath: "#/$defs/yesNo/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err877];
              } else {
                vErrors.push(err877);
              }
              errors++;
            }
            if (!(data338 === "yes" || data338 === "no")) {
              const err878 = { instancePath: instancePath + "/tools/preselect", schemaPath: "#/$defs/yesNo/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err878];
              } else {
                vErrors.push(err878);
              }
              errors++;
            }
          }
          if (data334["in-operator-swap"] !== void 0) {
            let data339 = data334["in-operator-swap"];
            if (typeof data339 !== "string") {
              const err879 = { instancePath: instancePath + "/tools/in-operator-swap", schemaPath: "#/$defs/yesNo/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err879];
              } else {
                vErrors.push(err879);
              }
              errors++;
            }
            if (!(data339 === "yes" || data339 === "no")) {
              const err880 = { instancePath: instancePath + "/tools/in-operator-swap", schemaPath: "#/$defs/yesNo/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err880];
              } else {
                vErrors.push(err880);
              }
              errors++;
            }
          }
          if (data334.empty !== void 0) {
            let data340 = data334.empty;
            const _errs1044 = errors;
            let valid273 = false;
            const _errs1045 = errors;
            if (typeof data340 !== "string") {
              const err881 = { instancePath: instancePath + "/tools/empty", schemaPath: "#/properties/tools/properties/empty/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err881];
              } else {
                vErrors.push(err881);
              }
              errors++;
            }
            if ("none" !== data340) {
              const err882 = { instancePath: instancePath + "/tools/empty", schemaPath: "#/properties/tools/properties/empty/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
              if (vErrors === null) {
                vErrors = [err882];
              } else {
                vErrors.push(err882);
              }
              errors++;
            }
            var _valid36 = _errs1045 === errors;
            valid273 = valid273 || _valid36;
            const _errs1047 = errors;
            if (!(typeof data340 == "number" && (!(data340 % 1) && !isNaN(data340)) && isFinite(data340))) {
              const err883 = { instancePath: instancePath + "/tools/empty", schemaPath: "#/properties/tools/properties/empty/anyOf/1/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
              if (vErrors === null) {
                vErrors = [err883];
              } else {
                vErrors.push(err883);
              }
              errors++;
            }
            if (typeof data340 == "number" && isFinite(data340)) {
              if (data340 > 9999 || isNaN(data340)) {
                const err884 = { instancePath: instancePath + "/tools/empty", schemaPath: "#/properties/tools/properties/empty/anyOf/1/maximum", keyword: "maximum", params: { comparison: "<=", limit: 9999 }, message: "must be <= 9999" };
                if (vErrors === null) {
                  vErrors = [err884];
                } else {
                  vErrors.push(err884);
                }
                errors++;
              }
              if (data340 < 0 || isNaN(data340)) {
                const err885 = { instancePath: instancePath + "/tools/empty", schemaPath: "#/properties/tools/properties/empty/anyOf/1/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                if (vErrors === null) {
                  vErrors = [err885];
                } else {
                  vErrors.push(err885);
                }
                errors++;
              }
            }
            var _valid36 = _errs1047 === errors;
            valid273 = valid273 || _valid36;
            if (!valid273) {
              const err886 = { instancePath: instancePath + "/tools/empty", schemaPath: "#/properties/tools/properties/empty/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err886];
              } else {
                vErrors.push(err886);
              }
              errors++;
            } else {
              errors = _errs1044;
              if (vErrors !== null) {
                if (_errs1044) {
                  vErrors.length = _errs1044;
                } else {
                  vErrors = null;
                }
              }
            }
          }
        } else {
          const err887 = { instancePath: instancePath + "/tools", schemaPath: "#/properties/tools/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err887];
          } else {
            vErrors.push(err887);
          }
          errors++;
        }
      }
      if (data.stops !== void 0) {
        let data341 = data.stops;
        if (data341 && typeof data341 == "object" && !Array.isArray(data341)) {
          for (const key48 in data341) {
            if (!(key48 === "stop" || key48 === "optional" || key48 === "end" || key48 === "comment" || key48 === "resume" || key48 === "end-resets")) {
              const err888 = { instancePath: instancePath + "/stops", schemaPath: "#/properties/stops/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key48 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err888];
              } else {
                vErrors.push(err888);
              }
              errors++;
            }
          }
          if (data341.stop !== void 0) {
            let data342 = data341.stop;
            if (typeof data342 === "string") {
              if (!pattern7.test(data342)) {
                const err889 = { instancePath: instancePath + "/stops/stop", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err889];
                } else {
                  vErrors.push(err889);
                }
                errors++;
              }
            } else {
              const err890 = { instancePath: instancePath + "/stops/stop", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err890];
              } else {
                vErrors.push(err890);
              }
              errors++;
            }
          }
          if (data341.optional !== void 0) {
            let data343 = data341.optional;
            if (typeof data343 === "string") {
              if (!pattern90.test(data343)) {
                const err891 = { instancePath: instancePath + "/stops/optional", schemaPath: "#/$defs/optionalStop/pattern", keyword: "pattern", params: { pattern: "^(none|(/([1-9] )?)?[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|(/([1-9] )?)?[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err891];
                } else {
                  vErrors.push(err891);
                }
                errors++;
              }
            } else {
              const err892 = { instancePath: instancePath + "/stops/optional", schemaPath: "#/$defs/optionalStop/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err892];
              } else {
                vErrors.push(err892);
              }
              errors++;
            }
          }
          if (data341.end !== void 0) {
            let data344 = data341.end;
            if (typeof data344 === "string") {
              if (!pattern7.test(data344)) {
                const err893 = { instancePath: instancePath + "/stops/end", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err893];
                } else {
                  vErrors.push(err893);
                }
                errors++;
              }
            } else {
              const err894 = { instancePath: instancePath + "/stops/end", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err894];
              } else {
                vErrors.push(err894);
              }
              errors++;
            }
          }
          if (data341.comment !== void 0) {
            let data345 = data341.comment;
            if (typeof data345 !== "string") {
              const err895 = { instancePath: instancePath + "/stops/comment", schemaPath: "#/properties/stops/properties/comment/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err895];
              } else {
                vErrors.push(err895);
              }
              errors++;
            }
            if (!(data345 === "own-block" || data345 === "with-stop")) {
              const err896 = { instancePath: instancePath + "/stops/comment", schemaPath: "#/properties/stops/properties/comment/enum", keyword: "enum", params: { allowedValues: schema31.properties.stops.properties.comment.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err896];
              } else {
                vErrors.push(err896);
              }
              errors++;
            }
          }
          if (data341.resume !== void 0) {
            let data346 = data341.resume;
            if (typeof data346 !== "string") {
              const err897 = { instancePath: instancePath + "/stops/resume", schemaPath: "#/properties/stops/properties/resume/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err897];
              } else {
                vErrors.push(err897);
              }
              errors++;
            }
            if (!(data346 === "keeps-modes" || data346 === "loses-modes")) {
              const err898 = { instancePath: instancePath + "/stops/resume", schemaPath: "#/properties/stops/properties/resume/enum", keyword: "enum", params: { allowedValues: schema31.properties.stops.properties.resume.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err898];
              } else {
                vErrors.push(err898);
              }
              errors++;
            }
          }
          if (data341["end-resets"] !== void 0) {
            let data347 = data341["end-resets"];
            if (typeof data347 !== "string") {
              const err899 = { instancePath: instancePath + "/stops/end-resets", schemaPath: "#/$defs/yesNo/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err899];
              } else {
                vErrors.push(err899);
              }
              errors++;
            }
            if (!(data347 === "yes" || data347 === "no")) {
              const err900 = { instancePath: instancePath + "/stops/end-resets", schemaPath: "#/$defs/yesNo/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err900];
              } else {
                vErrors.push(err900);
              }
              errors++;
            }
          }
        } else {
          const err901 = { instancePath: instancePath + "/stops", schemaPath: "#/properties/stops/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err901];
          } else {
            vErrors.push(err901);
          }
          errors++;
        }
      }
      if (data.wait !== void 0) {
        let data348 = data.wait;
        if (data348 && typeof data348 == "object" && !Array.isArray(data348)) {
          for (const key49 in data348) {
            if (!(key49 === "on" || key49 === "off" || key49 === "timeout-unit")) {
              const err902 = { instancePath: instancePath + "/wait", schemaPath: "#/properties/wait/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key49 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err902];
              } else {
                vErrors.push(err902);
              }
              errors++;
            }
          }
          if (data348.on !== void 0) {
            let data349 = data348.on;
            if (!(typeof data349 == "number" && (!(data349 % 1) && !isNaN(data349)) && isFinite(data349))) {
              const err903 = { instancePath: instancePath + "/wait/on", schemaPath: "#/properties/wait/properties/on/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
              if (vErrors === null) {
                vErrors = [err903];
              } else {
                vErrors.push(err903);
              }
              errors++;
            }
            if (typeof data349 == "number" && isFinite(data349)) {
              if (data349 > 9999 || isNaN(data349)) {
                const err904 = { instancePath: instancePath + "/wait/on", schemaPath: "#/properties/wait/properties/on/maximum", keyword: "maximum", params: { comparison: "<=", limit: 9999 }, message: "must be <= 9999" };
                if (vErrors === null) {
                  vErrors = [err904];
                } else {
                  vErrors.push(err904);
                }
                errors++;
              }
              if (data349 < 0 || isNaN(data349)) {
                const err905 = { instancePath: instancePath + "/wait/on", schemaPath: "#/properties/wait/properties/on/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                if (vErrors === null) {
                  vErrors = [err905];
                } else {
                  vErrors.push(err905);
                }
                errors++;
              }
            }
          }
          if (data348.off !== void 0) {
            let data350 = data348.off;
            if (!(typeof data350 == "number" && (!(data350 % 1) && !isNaN(data350)) && isFinite(data350))) {
              const err906 = { instancePath: instancePath + "/wait/off", schemaPath: "#/properties/wait/properties/off/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
              if (vErrors === null) {
                vErrors = [err906];
              } else {
                vErrors.push(err906);
              }
              errors++;
            }
            if (typeof data350 == "number" && isFinite(data350)) {
              if (data350 > 9999 || isNaN(data350)) {
                const err907 = { instancePath: instancePath + "/wait/off", schemaPath: "#/properties/wait/properties/off/maximum", keyword: "maximum", params: { comparison: "<=", limit: 9999 }, message: "must be <= 9999" };
                if (vErrors === null) {
                  vErrors = [err907];
                } else {
                  vErrors.push(err907);
                }
                errors++;
              }
              if (data350 < 0 || isNaN(data350)) {
                const err908 = { instancePath: instancePath + "/wait/off", schemaPath: "#/properties/wait/properties/off/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                if (vErrors === null) {
                  vErrors = [err908];
                } else {
                  vErrors.push(err908);
                }
                errors++;
              }
            }
          }
          if (data348["timeout-unit"] !== void 0) {
            let data351 = data348["timeout-unit"];
            if (typeof data351 !== "string") {
              const err909 = { instancePath: instancePath + "/wait/timeout-unit", schemaPath: "#/properties/wait/properties/timeout-unit/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err909];
              } else {
                vErrors.push(err909);
              }
              errors++;
            }
            if (!(data351 === "s" || data351 === "ms")) {
              const err910 = { instancePath: instancePath + "/wait/timeout-unit", schemaPath: "#/properties/wait/properties/timeout-unit/enum", keyword: "enum", params: { allowedValues: schema31.properties.wait.properties["timeout-unit"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err910];
              } else {
                vErrors.push(err910);
              }
              errors++;
            }
          }
        } else {
          const err911 = { instancePath: instancePath + "/wait", schemaPath: "#/properties/wait/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err911];
          } else {
            vErrors.push(err911);
          }
          errors++;
        }
      }
      if (data.codes !== void 0) {
        let data352 = data.codes;
        if (data352 && typeof data352 == "object" && !Array.isArray(data352)) {
          for (const key50 in data352) {
            if (!pattern92.test(key50)) {
              const err912 = { instancePath: instancePath + "/codes", schemaPath: "#/properties/codes/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key50 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err912];
              } else {
                vErrors.push(err912);
              }
              errors++;
            }
          }
          for (const key51 in data352) {
            if (pattern92.test(key51)) {
              let data353 = data352[key51];
              if (data353 && typeof data353 == "object" && !Array.isArray(data353)) {
                for (const key52 in data353) {
                  if (!(key52 === "does" || key52 === "position" || key52 === "spindle" || key52 === "coolant" || key52 === "length-offset")) {
                    const err913 = { instancePath: instancePath + "/codes/" + key51.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/codes/patternProperties/%5E%5BGM%5D%5Cd%7B1%2C3%7D%24/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key52 }, message: "must NOT have additional properties" };
                    if (vErrors === null) {
                      vErrors = [err913];
                    } else {
                      vErrors.push(err913);
                    }
                    errors++;
                  }
                }
                if (data353.does !== void 0) {
                  let data354 = data353.does;
                  if (typeof data354 === "string") {
                    if (func2(data354) > 120) {
                      const err914 = { instancePath: instancePath + "/codes/" + key51.replace(/~/g, "~0").replace(/\//g, "~1") + "/does", schemaPath: "#/properties/codes/patternProperties/%5E%5BGM%5D%5Cd%7B1%2C3%7D%24/properties/does/maxLength", keyword: "maxLength", params: { limit: 120 }, message: "must NOT have more than 120 characters" };
                      if (vErrors === null) {
                        vErrors = [err914];
                      } else {
                        vErrors.push(err914);
                      }
                      errors++;
                    }
                    if (func2(data354) < 1) {
                      const err915 = { instancePath: instancePath + "/codes/" + key51.replace(/~/g, "~0").replace(/\//g, "~1") + "/does", schemaPath: "#/properties/codes/patternProperties/%5E%5BGM%5D%5Cd%7B1%2C3%7D%24/properties/does/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                      if (vErrors === null) {
                        vErrors = [err915];
                      } else {
                        vErrors.push(err915);
                      }
                      errors++;
                    }
                  } else {
                    const err916 = { instancePath: instancePath + "/codes/" + key51.replace(/~/g, "~0").replace(/\//g, "~1") + "/does", schemaPath: "#/properties/codes/patternProperties/%5E%5BGM%5D%5Cd%7B1%2C3%7D%24/properties/does/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                    if (vErrors === null) {
                      vErrors = [err916];
                    } else {
                      vErrors.push(err916);
                    }
                    errors++;
                  }
                }
                if (data353.position !== void 0) {
                  let data355 = data353.position;
                  if (typeof data355 !== "string") {
                    const err917 = { instancePath: instancePath + "/codes/" + key51.replace(/~/g, "~0").replace(/\//g, "~1") + "/position", schemaPath: "#/properties/codes/patternProperties/%5E%5BGM%5D%5Cd%7B1%2C3%7D%24/properties/position/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                    if (vErrors === null) {
                      vErrors = [err917];
                    } else {
                      vErrors.push(err917);
                    }
                    errors++;
                  }
                  if (!(data355 === "unchanged" || data355 === "unknown" || data355 === "swap-height")) {
                    const err918 = { instancePath: instancePath + "/codes/" + key51.replace(/~/g, "~0").replace(/\//g, "~1") + "/position", schemaPath: "#/properties/codes/patternProperties/%5E%5BGM%5D%5Cd%7B1%2C3%7D%24/properties/position/enum", keyword: "enum", params: { allowedValues: schema31.properties.codes.patternProperties["^[GM]\\d{1,3}$"].properties.position.enum }, message: "must be equal to one of the allowed values" };
                    if (vErrors === null) {
                      vErrors = [err918];
                    } else {
                      vErrors.push(err918);
                    }
                    errors++;
                  }
                }
                if (data353.spindle !== void 0) {
                  let data356 = data353.spindle;
                  if (typeof data356 !== "string") {
                    const err919 = { instancePath: instancePath + "/codes/" + key51.replace(/~/g, "~0").replace(/\//g, "~1") + "/spindle", schemaPath: "#/properties/codes/patternProperties/%5E%5BGM%5D%5Cd%7B1%2C3%7D%24/properties/spindle/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                    if (vErrors === null) {
                      vErrors = [err919];
                    } else {
                      vErrors.push(err919);
                    }
                    errors++;
                  }
                  if (!(data356 === "unchanged" || data356 === "stopped")) {
                    const err920 = { instancePath: instancePath + "/codes/" + key51.replace(/~/g, "~0").replace(/\//g, "~1") + "/spindle", schemaPath: "#/properties/codes/patternProperties/%5E%5BGM%5D%5Cd%7B1%2C3%7D%24/properties/spindle/enum", keyword: "enum", params: { allowedValues: schema31.properties.codes.patternProperties["^[GM]\\d{1,3}$"].properties.spindle.enum }, message: "must be equal to one of the allowed values" };
                    if (vErrors === null) {
                      vErrors = [err920];
                    } else {
                      vErrors.push(err920);
                    }
                    errors++;
                  }
                }
                if (data353.coolant !== void 0) {
                  let data357 = data353.coolant;
                  if (typeof data357 !== "string") {
                    const err921 = { instancePath: instancePath + "/codes/" + key51.replace(/~/g, "~0").replace(/\//g, "~1") + "/coolant", schemaPath: "#/properties/codes/patternProperties/%5E%5BGM%5D%5Cd%7B1%2C3%7D%24/properties/coolant/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                    if (vErrors === null) {
                      vErrors = [err921];
                    } else {
                      vErrors.push(err921);
                    }
                    errors++;
                  }
                  if (!(data357 === "unchanged" || data357 === "off")) {
                    const err922 = { instancePath: instancePath + "/codes/" + key51.replace(/~/g, "~0").replace(/\//g, "~1") + "/coolant", schemaPath: "#/properties/codes/patternProperties/%5E%5BGM%5D%5Cd%7B1%2C3%7D%24/properties/coolant/enum", keyword: "enum", params: { allowedValues: schema31.properties.codes.patternProperties["^[GM]\\d{1,3}$"].properties.coolant.enum }, message: "must be equal to one of the allowed values" };
                    if (vErrors === null) {
                      vErrors = [err922];
                    } else {
                      vErrors.push(err922);
                    }
                    errors++;
                  }
                }
                if (data353["length-offset"] !== void 0) {
                  let data358 = data353["length-offset"];
                  if (typeof data358 !== "string") {
                    const err923 = { instancePath: instancePath + "/codes/" + key51.replace(/~/g, "~0").replace(/\//g, "~1") + "/length-offset", schemaPath: "#/properties/codes/patternProperties/%5E%5BGM%5D%5Cd%7B1%2C3%7D%24/properties/length-offset/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                    if (vErrors === null) {
                      vErrors = [err923];
                    } else {
                      vErrors.push(err923);
                    }
                    errors++;
                  }
                  if (!(data358 === "unchanged" || data358 === "active" || data358 === "cancelled")) {
                    const err924 = { instancePath: instancePath + "/codes/" + key51.replace(/~/g, "~0").replace(/\//g, "~1") + "/length-offset", schemaPath: "#/properties/codes/patternProperties/%5E%5BGM%5D%5Cd%7B1%2C3%7D%24/properties/length-offset/enum", keyword: "enum", params: { allowedValues: schema31.properties.codes.patternProperties["^[GM]\\d{1,3}$"].properties["length-offset"].enum }, message: "must be equal to one of the allowed values" };
                    if (vErrors === null) {
                      vErrors = [err924];
                    } else {
                      vErrors.push(err924);
                    }
                    errors++;
                  }
                }
              } else {
                const err925 = { instancePath: instancePath + "/codes/" + key51.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/codes/patternProperties/%5E%5BGM%5D%5Cd%7B1%2C3%7D%24/type", keyword: "type", params: { type: "object" }, message: "must be object" };
                if (vErrors === null) {
                  vErrors = [err925];
                } else {
                  vErrors.push(err925);
                }
                errors++;
              }
            }
          }
        } else {
          const err926 = { instancePath: instancePath + "/codes", schemaPath: "#/properties/codes/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err926];
          } else {
            vErrors.push(err926);
          }
          errors++;
        }
      }
      if (data.idioms !== void 0) {
        let data359 = data.idioms;
        if (data359 && typeof data359 == "object" && !Array.isArray(data359)) {
          for (const key53 in data359) {
            if (!func1.call(schema31.properties.idioms.properties, key53)) {
              const err927 = { instancePath: instancePath + "/idioms", schemaPath: "#/properties/idioms/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key53 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err927];
              } else {
                vErrors.push(err927);
              }
              errors++;
            }
          }
          if (data359.message !== void 0) {
            let data360 = data359.message;
            if (typeof data360 === "string") {
              if (func2(data360) > 120) {
                const err928 = { instancePath: instancePath + "/idioms/message", schemaPath: "#/$defs/template/maxLength", keyword: "maxLength", params: { limit: 120 }, message: "must NOT have more than 120 characters" };
                if (vErrors === null) {
                  vErrors = [err928];
                } else {
                  vErrors.push(err928);
                }
                errors++;
              }
              if (func2(data360) < 1) {
                const err929 = { instancePath: instancePath + "/idioms/message", schemaPath: "#/$defs/template/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                if (vErrors === null) {
                  vErrors = [err929];
                } else {
                  vErrors.push(err929);
                }
                errors++;
              }
            } else {
              const err930 = { instancePath: instancePath + "/idioms/message", schemaPath: "#/$defs/template/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err930];
              } else {
                vErrors.push(err930);
              }
              errors++;
            }
          }
          if (data359.header !== void 0) {
            let data361 = data359.header;
            const _errs1100 = errors;
            let valid284 = false;
            const _errs1101 = errors;
            if (typeof data361 !== "string") {
              const err931 = { instancePath: instancePath + "/idioms/header", schemaPath: "#/properties/idioms/properties/header/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err931];
              } else {
                vErrors.push(err931);
              }
              errors++;
            }
            if ("none" !== data361) {
              const err932 = { instancePath: instancePath + "/idioms/header", schemaPath: "#/properties/idioms/properties/header/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
              if (vErrors === null) {
                vErrors = [err932];
              } else {
                vErrors.push(err932);
              }
              errors++;
            }
            var _valid37 = _errs1101 === errors;
            valid284 = valid284 || _valid37;
            const _errs1103 = errors;
            if (Array.isArray(data361)) {
              if (data361.length > 40) {
                const err933 = { instancePath: instancePath + "/idioms/header", schemaPath: "#/properties/idioms/properties/header/anyOf/1/maxItems", keyword: "maxItems", params: { limit: 40 }, message: "must NOT have more than 40 items" };
                if (vErrors === null) {
                  vErrors = [err933];
                } else {
                  vErrors.push(err933);
                }
                errors++;
              }
              if (data361.length < 1) {
                const err934 = { instancePath: instancePath + "/idioms/header", schemaPath: "#/properties/idioms/properties/header/anyOf/1/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items" };
                if (vErrors === null) {
                  vErrors = [err934];
                } else {
                  vErrors.push(err934);
                }
                errors++;
              }
              const len8 = data361.length;
              for (let i10 = 0; i10 < len8; i10++) {
                let data362 = data361[i10];
                if (typeof data362 === "string") {
                  if (func2(data362) > 160) {
                    const err935 = { instancePath: instancePath + "/idioms/header/" + i10, schemaPath: "#/properties/idioms/properties/header/anyOf/1/items/maxLength", keyword: "maxLength", params: { limit: 160 }, message: "must NOT have more than 160 characters" };
                    if (vErrors === null) {
                      vErrors = [err935];
                    } else {
                      vErrors.push(err935);
                    }
                    errors++;
                  }
                  if (func2(data362) < 1) {
                    const err936 = { instancePath: instancePath + "/idioms/header/" + i10, schemaPath: "#/properties/idioms/properties/header/anyOf/1/items/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                    if (vErrors === null) {
                      vErrors = [err936];
                    } else {
                      vErrors.push(err936);
                    }
                    errors++;
                  }
                } else {
                  const err937 = { instancePath: instancePath + "/idioms/header/" + i10, schemaPath: "#/properties/idioms/properties/header/anyOf/1/items/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err937];
                  } else {
                    vErrors.push(err937);
                  }
                  errors++;
                }
              }
            } else {
              const err938 = { instancePath: instancePath + "/idioms/header", schemaPath: "#/properties/idioms/properties/header/anyOf/1/type", keyword: "type", params: { type: "array" }, message: "must be array" };
              if (vErrors === null) {
                vErrors = [err938];
              } else {
                vErrors.push(err938);
              }
              errors++;
            }
            var _valid37 = _errs1103 === errors;
            valid284 = valid284 || _valid37;
            if (!valid284) {
              const err939 = { instancePath: instancePath + "/idioms/header", schemaPath: "#/properties/idioms/properties/header/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err939];
              } else {
                vErrors.push(err939);
              }
              errors++;
            } else {
              errors = _errs1100;
              if (vErrors !== null) {
                if (_errs1100) {
                  vErrors.length = _errs1100;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data359.footer !== void 0) {
            let data363 = data359.footer;
            const _errs1108 = errors;
            let valid287 = false;
            const _errs1109 = errors;
            if (typeof data363 !== "string") {
              const err940 = { instancePath: instancePath + "/idioms/footer", schemaPath: "#/properties/idioms/properties/footer/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err940];
              } else {
                vErrors.push(err940);
              }
              errors++;
            }
            if ("none" !== data363) {
              const err941 = { instancePath: instancePath + "/idioms/footer", schemaPath: "#/properties/idioms/properties/footer/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
              if (vErrors === null) {
                vErrors = [err941];
              } else {
                vErrors.push(err941);
              }
              errors++;
            }
            var _valid38 = _errs1109 === errors;
            valid287 = valid287 || _valid38;
            const _errs1111 = errors;
            if (Array.isArray(data363)) {
              if (data363.length > 40) {
                const err942 = { instancePath: instancePath + "/idioms/footer", schemaPath: "#/properties/idioms/properties/footer/anyOf/1/maxItems", keyword: "maxItems", params: { limit: 40 }, message: "must NOT have more than 40 items" };
                if (vErrors === null) {
                  vErrors = [err942];
                } else {
                  vErrors.push(err942);
                }
                errors++;
              }
              if (data363.length < 1) {
                const err943 = { instancePath: instancePath + "/idioms/footer", schemaPath: "#/properties/idioms/properties/footer/anyOf/1/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items" };
                if (vErrors === null) {
                  vErrors = [err943];
                } else {
                  vErrors.push(err943);
                }
                errors++;
              }
              const len9 = data363.length;
              for (let i11 = 0; i11 < len9; i11++) {
                let data364 = data363[i11];
                if (typeof data364 === "string") {
                  if (func2(data364) > 160) {
                    const err944 = { instancePath: instancePath + "/idioms/footer/" + i11, schemaPath: "#/properties/idioms/properties/footer/anyOf/1/items/maxLength", keyword: "maxLength", params: { limit: 160 }, message: "must NOT have more than 160 characters" };
                    if (vErrors === null) {
                      vErrors = [err944];
                    } else {
                      vErrors.push(err944);
                    }
                    errors++;
                  }
                  if (func2(data364) < 1) {
                    const err945 = { instancePath: instancePath + "/idioms/footer/" + i11, schemaPath: "#/properties/idioms/properties/footer/anyOf/1/items/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                    if (vErrors === null) {
                      vErrors = [err945];
                    } else {
                      vErrors.push(err945);
                    }
                    errors++;
                  }
                } else {
                  const err946 = { instancePath: instancePath + "/idioms/footer/" + i11, schemaPath: "#/properties/idioms/properties/footer/anyOf/1/items/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err946];
                  } else {
                    vErrors.push(err946);
                  }
                  errors++;
                }
              }
            } else {
              const err947 = { instancePath: instancePath + "/idioms/footer", schemaPath: "#/properties/idioms/properties/footer/anyOf/1/type", keyword: "type", params: { type: "array" }, message: "must be array" };
              if (vErrors === null) {
                vErrors = [err947];
              } else {
                vErrors.push(err947);
              }
              errors++;
            }
            var _valid38 = _errs1111 === errors;
            valid287 = valid287 || _valid38;
            if (!valid287) {
              const err948 = { instancePath: instancePath + "/idioms/footer", schemaPath: "#/properties/idioms/properties/footer/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err948];
              } else {
                vErrors.push(err948);
              }
              errors++;
            } else {
              errors = _errs1108;
              if (vErrors !== null) {
                if (_errs1108) {
                  vErrors.length = _errs1108;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data359["wait-signal"] !== void 0) {
            let data365 = data359["wait-signal"];
            if (typeof data365 === "string") {
              if (func2(data365) > 120) {
                const err949 = { instancePath: instancePath + "/idioms/wait-signal", schemaPath: "#/$defs/template/maxLength", keyword: "maxLength", params: { limit: 120 }, message: "must NOT have more than 120 characters" };
                if (vErrors === null) {
                  vErrors = [err949];
                } else {
                  vErrors.push(err949);
                }
                errors++;
              }
              if (func2(data365) < 1) {
                const err950 = { instancePath: instancePath + "/idioms/wait-signal", schemaPath: "#/$defs/template/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                if (vErrors === null) {
                  vErrors = [err950];
                } else {
                  vErrors.push(err950);
                }
                errors++;
              }
            } else {
              const err951 = { instancePath: instancePath + "/idioms/wait-signal", schemaPath: "#/$defs/template/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err951];
              } else {
                vErrors.push(err951);
              }
              errors++;
            }
          }
          if (data359["output-on"] !== void 0) {
            let data366 = data359["output-on"];
            if (typeof data366 === "string") {
              if (func2(data366) > 120) {
                const err952 = { instancePath: instancePath + "/idioms/output-on", schemaPath: "#/$defs/template/maxLength", keyword: "maxLength", params: { limit: 120 }, message: "must NOT have more than 120 characters" };
                if (vErrors === null) {
                  vErrors = [err952];
                } else {
                  vErrors.push(err952);
                }
                errors++;
              }
              if (func2(data366) < 1) {
                const err953 = { instancePath: instancePath + "/idioms/output-on", schemaPath: "#/$defs/template/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                if (vErrors === null) {
                  vErrors = [err953];
                } else {
                  vErrors.push(err953);
                }
                errors++;
              }
            } else {
              const err954 = { instancePath: instancePath + "/idioms/output-on", schemaPath: "#/$defs/template/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err954];
              } else {
                vErrors.push(err954);
              }
              errors++;
            }
          }
          if (data359["output-off"] !== void 0) {
            let data367 = data359["output-off"];
            if (typeof data367 === "string") {
              if (func2(data367) > 120) {
                const err955 = { instancePath: instancePath + "/idioms/output-off", schemaPath: "#/$defs/template/maxLength", keyword: "maxLength", params: { limit: 120 }, message: "must NOT have more than 120 characters" };
                if (vErrors === null) {
                  vErrors = [err955];
                } else {
                  vErrors.push(err955);
                }
                errors++;
              }
              if (func2(data367) < 1) {
                const err956 = { instancePath: instancePath + "/idioms/output-off", schemaPath: "#/$defs/template/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                if (vErrors === null) {
                  vErrors = [err956];
                } else {
                  vErrors.push(err956);
                }
                errors++;
              }
            } else {
              const err957 = { instancePath: instancePath + "/idioms/output-off", schemaPath: "#/$defs/template/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err957];
              } else {
                vErrors.push(err957);
              }
              errors++;
            }
          }
          if (data359.release !== void 0) {
            let data368 = data359.release;
            if (typeof data368 === "string") {
              if (func2(data368) > 120) {
                const err958 = { instancePath: instancePath + "/idioms/release", schemaPath: "#/$defs/template/maxLength", keyword: "maxLength", params: { limit: 120 }, message: "must NOT have more than 120 characters" };
                if (vErrors === null) {
                  vErrors = [err958];
                } else {
                  vErrors.push(err958);
                }
                errors++;
              }
              if (func2(data368) < 1) {
                const err959 = { instancePath: instancePath + "/idioms/release", schemaPath: "#/$defs/template/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                if (vErrors === null) {
                  vErrors = [err959];
                } else {
                  vErrors.push(err959);
                }
                errors++;
              }
            } else {
              const err960 = { instancePath: instancePath + "/idioms/release", schemaPath: "#/$defs/template/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err960];
              } else {
                vErrors.push(err960);
              }
              errors++;
            }
          }
          if (data359.clamp !== void 0) {
            let data369 = data359.clamp;
            if (typeof data369 === "string") {
              if (func2(data369) > 120) {
                const err961 = { instancePath: instancePath + "/idioms/clamp", schemaPath: "#/$defs/template/maxLength", keyword: "maxLength", params: { limit: 120 }, message: "must NOT have more than 120 characters" };
                if (vErrors === null) {
                  vErrors = [err961];
                } else {
                  vErrors.push(err961);
                }
                errors++;
              }
              if (func2(data369) < 1) {
                const err962 = { instancePath: instancePath + "/idioms/clamp", schemaPath: "#/$defs/template/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                if (vErrors === null) {
                  vErrors = [err962];
                } else {
                  vErrors.push(err962);
                }
                errors++;
              }
            } else {
              const err963 = { instancePath: instancePath + "/idioms/clamp", schemaPath: "#/$defs/template/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err963];
              } else {
                vErrors.push(err963);
              }
              errors++;
            }
          }
          if (data359["taper-air-on"] !== void 0) {
            let data370 = data359["taper-air-on"];
            if (typeof data370 === "string") {
              if (func2(data370) > 120) {
                const err964 = { instancePath: instancePath + "/idioms/taper-air-on", schemaPath: "#/$defs/template/maxLength", keyword: "maxLength", params: { limit: 120 }, message: "must NOT have more than 120 characters" };
                if (vErrors === null) {
                  vErrors = [err964];
                } else {
                  vErrors.push(err964);
                }
                errors++;
              }
              if (func2(data370) < 1) {
                const err965 = { instancePath: instancePath + "/idioms/taper-air-on", schemaPath: "#/$defs/template/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                if (vErrors === null) {
                  vErrors = [err965];
                } else {
                  vErrors.push(err965);
                }
                errors++;
              }
            } else {
              const err966 = { instancePath: instancePath + "/idioms/taper-air-on", schemaPath: "#/$defs/template/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err966];
              } else {
                vErrors.push(err966);
              }
              errors++;
            }
          }
          if (data359["taper-air-off"] !== void 0) {
            let data371 = data359["taper-air-off"];
            if (typeof data371 === "string") {
              if (func2(data371) > 120) {
                const err967 = { instancePath: instancePath + "/idioms/taper-air-off", schemaPath: "#/$defs/template/maxLength", keyword: "maxLength", params: { limit: 120 }, message: "must NOT have more than 120 characters" };
                if (vErrors === null) {
                  vErrors = [err967];
                } else {
                  vErrors.push(err967);
                }
                errors++;
              }
              if (func2(data371) < 1) {
                const err968 = { instancePath: instancePath + "/idioms/taper-air-off", schemaPath: "#/$defs/template/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                if (vErrors === null) {
                  vErrors = [err968];
                } else {
                  vErrors.push(err968);
                }
                errors++;
              }
            } else {
              const err969 = { instancePath: instancePath + "/idioms/taper-air-off", schemaPath: "#/$defs/template/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err969];
              } else {
                vErrors.push(err969);
              }
              errors++;
            }
          }
          if (data359["cover-open"] !== void 0) {
            let data372 = data359["cover-open"];
            if (typeof data372 === "string") {
              if (func2(data372) > 120) {
                const err970 = { instancePath: instancePath + "/idioms/cover-open", schemaPath: "#/$defs/template/maxLength", keyword: "maxLength", params: { limit: 120 }, message: "must NOT have more than 120 characters" };
                if (vErrors === null) {
                  vErrors = [err970];
                } else {
                  vErrors.push(err970);
                }
                errors++;
              }
              if (func2(data372) < 1) {
                const err971 = { instancePath: instancePath + "/idioms/cover-open", schemaPath: "#/$defs/template/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                if (vErrors === null) {
                  vErrors = [err971];
                } else {
                  vErrors.push(err971);
                }
                errors++;
              }
            } else {
              const err972 = { instancePath: instancePath + "/idioms/cover-open", schemaPath: "#/$defs/template/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err972];
              } else {
                vErrors.push(err972);
              }
              errors++;
            }
          }
          if (data359["cover-close"] !== void 0) {
            let data373 = data359["cover-close"];
            if (typeof data373 === "string") {
              if (func2(data373) > 120) {
                const err973 = { instancePath: instancePath + "/idioms/cover-close", schemaPath: "#/$defs/template/maxLength", keyword: "maxLength", params: { limit: 120 }, message: "must NOT have more than 120 characters" };
                if (vErrors === null) {
                  vErrors = [err973];
                } else {
                  vErrors.push(err973);
                }
                errors++;
              }
              if (func2(data373) < 1) {
                const err974 = { instancePath: instancePath + "/idioms/cover-close", schemaPath: "#/$defs/template/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                if (vErrors === null) {
                  vErrors = [err974];
                } else {
                  vErrors.push(err974);
                }
                errors++;
              }
            } else {
              const err975 = { instancePath: instancePath + "/idioms/cover-close", schemaPath: "#/$defs/template/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err975];
              } else {
                vErrors.push(err975);
              }
              errors++;
            }
          }
          if (data359["hood-up"] !== void 0) {
            let data374 = data359["hood-up"];
            if (typeof data374 === "string") {
              if (func2(data374) > 120) {
                const err976 = { instancePath: instancePath + "/idioms/hood-up", schemaPath: "#/$defs/template/maxLength", keyword: "maxLength", params: { limit: 120 }, message: "must NOT have more than 120 characters" };
                if (vErrors === null) {
                  vErrors = [err976];
                } else {
                  vErrors.push(err976);
                }
                errors++;
              }
              if (func2(data374) < 1) {
                const err977 = { instancePath: instancePath + "/idioms/hood-up", schemaPath: "#/$defs/template/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                if (vErrors === null) {
                  vErrors = [err977];
                } else {
                  vErrors.push(err977);
                }
                errors++;
              }
            } else {
              const err978 = { instancePath: instancePath + "/idioms/hood-up", schemaPath: "#/$defs/template/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err978];
              } else {
                vErrors.push(err978);
              }
              errors++;
            }
          }
          if (data359["hood-down"] !== void 0) {
            let data375 = data359["hood-down"];
            if (typeof data375 === "string") {
              if (func2(data375) > 120) {
                const err979 = { instancePath: instancePath + "/idioms/hood-down", schemaPath: "#/$defs/template/maxLength", keyword: "maxLength", params: { limit: 120 }, message: "must NOT have more than 120 characters" };
                if (vErrors === null) {
                  vErrors = [err979];
                } else {
                  vErrors.push(err979);
                }
                errors++;
              }
              if (func2(data375) < 1) {
                const err980 = { instancePath: instancePath + "/idioms/hood-down", schemaPath: "#/$defs/template/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                if (vErrors === null) {
                  vErrors = [err980];
                } else {
                  vErrors.push(err980);
                }
                errors++;
              }
            } else {
              const err981 = { instancePath: instancePath + "/idioms/hood-down", schemaPath: "#/$defs/template/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err981];
              } else {
                vErrors.push(err981);
              }
              errors++;
            }
          }
          if (data359.measure !== void 0) {
            let data376 = data359.measure;
            if (typeof data376 === "string") {
              if (func2(data376) > 120) {
                const err982 = { instancePath: instancePath + "/idioms/measure", schemaPath: "#/$defs/template/maxLength", keyword: "maxLength", params: { limit: 120 }, message: "must NOT have more than 120 characters" };
                if (vErrors === null) {
                  vErrors = [err982];
                } else {
                  vErrors.push(err982);
                }
                errors++;
              }
              if (func2(data376) < 1) {
                const err983 = { instancePath: instancePath + "/idioms/measure", schemaPath: "#/$defs/template/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                if (vErrors === null) {
                  vErrors = [err983];
                } else {
                  vErrors.push(err983);
                }
                errors++;
              }
            } else {
              const err984 = { instancePath: instancePath + "/idioms/measure", schemaPath: "#/$defs/template/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err984];
              } else {
                vErrors.push(err984);
              }
              errors++;
            }
          }
        } else {
          const err985 = { instancePath: instancePath + "/idioms", schemaPath: "#/properties/idioms/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err985];
          } else {
            vErrors.push(err985);
          }
          errors++;
        }
      }
      if (data.machine !== void 0) {
        let data377 = data.machine;
        if (data377 && typeof data377 == "object" && !Array.isArray(data377)) {
          for (const key54 in data377) {
            if (!func1.call(schema31.properties.machine.properties, key54)) {
              const err986 = { instancePath: instancePath + "/machine", schemaPath: "#/properties/machine/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key54 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err986];
              } else {
                vErrors.push(err986);
              }
              errors++;
            }
          }
          if (data377.travel !== void 0) {
            let data378 = data377.travel;
            if (data378 && typeof data378 == "object" && !Array.isArray(data378)) {
              for (const key55 in data378) {
                if (!(key55 === "x" || key55 === "y" || key55 === "z" || key55 === "a" || key55 === "b" || key55 === "c")) {
                  const err987 = { instancePath: instancePath + "/machine/travel", schemaPath: "#/properties/machine/properties/travel/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key55 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err987];
                  } else {
                    vErrors.push(err987);
                  }
                  errors++;
                }
              }
              if (data378.x !== void 0) {
                let data379 = data378.x;
                if (Array.isArray(data379)) {
                  if (data379.length > 2) {
                    const err988 = { instancePath: instancePath + "/machine/travel/x", schemaPath: "#/properties/machine/properties/travel/properties/x/maxItems", keyword: "maxItems", params: { limit: 2 }, message: "must NOT have more than 2 items" };
                    if (vErrors === null) {
                      vErrors = [err988];
                    } else {
                      vErrors.push(err988);
                    }
                    errors++;
                  }
                  if (data379.length < 2) {
                    const err989 = { instancePath: instancePath + "/machine/travel/x", schemaPath: "#/properties/machine/properties/travel/properties/x/minItems", keyword: "minItems", params: { limit: 2 }, message: "must NOT have fewer than 2 items" };
                    if (vErrors === null) {
                      vErrors = [err989];
                    } else {
                      vErrors.push(err989);
                    }
                    errors++;
                  }
                  const len10 = data379.length;
                  for (let i12 = 0; i12 < len10; i12++) {
                    let data380 = data379[i12];
                    const _errs1161 = errors;
                    let valid307 = false;
                    const _errs1162 = errors;
                    if (typeof data380 == "number" && isFinite(data380)) {
                      if (data380 > 1e6 || isNaN(data380)) {
                        const err990 = { instancePath: instancePath + "/machine/travel/x/" + i12, schemaPath: "#/$defs/length/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                        if (vErrors === null) {
                          vErrors = [err990];
                        } else {
                          vErrors.push(err990);
                        }
                        errors++;
                      }
                      if (data380 < -1e6 || isNaN(data380)) {
                        const err991 = { instancePath: instancePath + "/machine/travel/x/" + i12, schemaPath: "#/$defs/length/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: -1e6 }, message: "must be >= -1000000" };
                        if (vErrors === null) {
                          vErrors = [err991];
                        } else {
                          vErrors.push(err991);
                        }
                        errors++;
                      }
                    } else {
                      const err992 = { instancePath: instancePath + "/machine/travel/x/" + i12, schemaPath: "#/$defs/length/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                      if (vErrors === null) {
                        vErrors = [err992];
                      } else {
                        vErrors.push(err992);
                      }
                      errors++;
                    }
                    var _valid39 = _errs1162 === errors;
                    valid307 = valid307 || _valid39;
                    const _errs1164 = errors;
                    if (typeof data380 === "string") {
                      if (!pattern25.test(data380)) {
                        const err993 = { instancePath: instancePath + "/machine/travel/x/" + i12, schemaPath: "#/$defs/length/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }, message: 'must match pattern "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$"' };
                        if (vErrors === null) {
                          vErrors = [err993];
                        } else {
                          vErrors.push(err993);
                        }
                        errors++;
                      }
                    } else {
                      const err994 = { instancePath: instancePath + "/machine/travel/x/" + i12, schemaPath: "#/$defs/length/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                      if (vErrors === null) {
                        vErrors = [err994];
                      } else {
                        vErrors.push(err994);
                      }
                      errors++;
                    }
                    var _valid39 = _errs1164 === errors;
                    valid307 = valid307 || _valid39;
                    if (!valid307) {
                      const err995 = { instancePath: instancePath + "/machine/travel/x/" + i12, schemaPath: "#/$defs/length/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                      if (vErrors === null) {
                        vErrors = [err995];
                      } else {
                        vErrors.push(err995);
                      }
                      errors++;
                    } else {
                      errors = _errs1161;
                      if (vErrors !== null) {
                        if (_errs1161) {
                          vErrors.length = _errs1161;
                        } else {
                          vErrors = null;
                        }
                      }
                    }
                  }
                } else {
                  const err996 = { instancePath: instancePath + "/machine/travel/x", schemaPath: "#/properties/machine/properties/travel/properties/x/type", keyword: "type", params: { type: "array" }, message: "must be array" };
                  if (vErrors === null) {
                    vErrors = [err996];
                  } else {
                    vErrors.push(err996);
                  }
                  errors++;
                }
              }
              if (data378.y !== void 0) {
                let data381 = data378.y;
                if (Array.isArray(data381)) {
                  if (data381.length > 2) {
                    const err997 = { instancePath: instancePath + "/machine/travel/y", schemaPath: "#/properties/machine/properties/travel/properties/y/maxItems", keyword: "maxItems", params: { limit: 2 }, message: "must NOT have more than 2 items" };
                    if (vErrors === null) {
                      vErrors = [err997];
                    } else {
                      vErrors.push(err997);
                    }
                    errors++;
                  }
                  if (data381.length < 2) {
                    const err998 = { instancePath: instancePath + "/machine/travel/y", schemaPath: "#/properties/machine/properties/travel/properties/y/minItems", keyword: "minItems", params: { limit: 2 }, message: "must NOT have fewer than 2 items" };
                    if (vErrors === null) {
                      vErrors = [err998];
                    } else {
                      vErrors.push(err998);
                    }
                    errors++;
                  }
                  const len11 = data381.length;
                  for (let i13 = 0; i13 < len11; i13++) {
                    let data382 = data381[i13];
                    const _errs1170 = errors;
                    let valid311 = false;
                    const _errs1171 = errors;
                    if (typeof data382 == "number" && isFinite(data382)) {
                      if (data382 > 1e6 || isNaN(data382)) {
                        const err999 = { instancePath: instancePath + "/machine/travel/y/" + i13, schemaPath: "#/$defs/length/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                        if (vErrors === null) {
                          vErrors = [err999];
                        } else {
                          vErrors.push(err999);
                        }
                        errors++;
                      }
                      if (data382 < -1e6 || isNaN(data382)) {
                        const err1000 = { instancePath: instancePath + "/machine/travel/y/" + i13, schemaPath: "#/$defs/length/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: -1e6 }, message: "must be >= -1000000" };
                        if (vErrors === null) {
                          vErrors = [err1000];
                        } else {
                          vErrors.push(err1000);
                        }
                        errors++;
                      }
                    } else {
                      const err1001 = { instancePath: instancePath + "/machine/travel/y/" + i13, schemaPath: "#/$defs/length/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                      if (vErrors === null) {
                        vErrors = [err1001];
                      } else {
                        vErrors.push(err1001);
                      }
                      errors++;
                    }
                    var _valid40 = _errs1171 === errors;
                    valid311 = valid311 || _valid40;
                    const _errs1173 = errors;
                    if (typeof data382 === "string") {
                      if (!pattern25.test(data382)) {
                        const err1002 = { instancePath: instancePath + "/machine/travel/y/" + i13, schemaPath: "#/$defs/length/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }, message: 'must match pattern "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$"' };
                        if (vErrors === null) {
                          vErrors = [err1002];
                        } else {
                          vErrors.push(err1002);
                        }
                        errors++;
                      }
                    } else {
                      const err1003 = { instancePath: instancePath + "/machine/travel/y/" + i13, schemaPath: "#/$defs/length/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                      if (vErrors === null) {
                        vErrors = [err1003];
                      } else {
                        vErrors.push(err1003);
                      }
                      errors++;
                    }
                    var _valid40 = _errs1173 === errors;
                    valid311 = valid311 || _valid40;
                    if (!valid311) {
                      const err1004 = { instancePath: instancePath + "/machine/travel/y/" + i13, schemaPath: "#/$defs/length/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                      if (vErrors === null) {
                        vErrors = [err1004];
                      } else {
                        vErrors.push(err1004);
                      }
                      errors++;
                    } else {
                      errors = _errs1170;
                      if (vErrors !== null) {
                        if (_errs1170) {
                          vErrors.length = _errs1170;
                        } else {
                          vErrors = null;
                        }
                      }
                    }
                  }
                } else {
                  const err1005 = { instancePath: instancePath + "/machine/travel/y", schemaPath: "#/properties/machine/properties/travel/properties/y/type", keyword: "type", params: { type: "array" }, message: "must be array" };
                  if (vErrors === null) {
                    vErrors = [err1005];
                  } else {
                    vErrors.push(err1005);
                  }
                  errors++;
                }
              }
              if (data378.z !== void 0) {
                let data383 = data378.z;
                if (Array.isArray(data383)) {
                  if (data383.length > 2) {
                    const err1006 = { instancePath: instancePath + "/machine/travel/z", schemaPath: "#/properties/machine/properties/travel/properties/z/maxItems", keyword: "maxItems", params: { limit: 2 }, message: "must NOT have more than 2 items" };
                    if (vErrors === null) {
                      vErrors = [err1006];
                    } else {
                      vErrors.push(err1006);
                    }
                    errors++;
                  }
                  if (data383.length < 2) {
                    const err1007 = { instancePath: instancePath + "/machine/travel/z", schemaPath: "#/properties/machine/properties/travel/properties/z/minItems", keyword: "minItems", params: { limit: 2 }, message: "must NOT have fewer than 2 items" };
                    if (vErrors === null) {
                      vErrors = [err1007];
                    } else {
                      vErrors.push(err1007);
                    }
                    errors++;
                  }
                  const len12 = data383.length;
                  for (let i14 = 0; i14 < len12; i14++) {
                    let data384 = data383[i14];
                    const _errs1179 = errors;
                    let valid315 = false;
                    const _errs1180 = errors;
                    if (typeof data384 == "number" && isFinite(data384)) {
                      if (data384 > 1e6 || isNaN(data384)) {
                        const err1008 = { instancePath: instancePath + "/machine/travel/z/" + i14, schemaPath: "#/$defs/length/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                        if (vErrors === null) {
                          vErrors = [err1008];
                        } else {
                          vErrors.push(err1008);
                        }
                        errors++;
                      }
                      if (data384 < -1e6 || isNaN(data384)) {
                        const err1009 = { instancePath: instancePath + "/machine/travel/z/" + i14, schemaPath: "#/$defs/length/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: -1e6 }, message: "must be >= -1000000" };
                        if (vErrors === null) {
                          vErrors = [err1009];
                        } else {
                          vErrors.push(err1009);
                        }
                        errors++;
                      }
                    } else {
                      const err1010 = { instancePath: instancePath + "/machine/travel/z/" + i14, schemaPath: "#/$defs/length/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                      if (vErrors === null) {
                        vErrors = [err1010];
                      } else {
                        vErrors.push(err1010);
                      }
                      errors++;
                    }
                    var _valid41 = _errs1180 === errors;
                    valid315 = valid315 || _valid41;
                    const _errs1182 = errors;
                    if (typeof data384 === "string") {
                      if (!pattern25.test(data384)) {
                        const err1011 = { instancePath: instancePath + "/machine/travel/z/" + i14, schemaPath: "#/$defs/length/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }, message: 'must match pattern "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$"' };
                        if (vErrors === null) {
                          vErrors = [err1011];
                        } else {
                          vErrors.push(err1011);
                        }
                        errors++;
                      }
                    } else {
                      const err1012 = { instancePath: instancePath + "/machine/travel/z/" + i14, schemaPath: "#/$defs/length/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                      if (vErrors === null) {
                        vErrors = [err1012];
                      } else {
                        vErrors.push(err1012);
                      }
                      errors++;
                    }
                    var _valid41 = _errs1182 === errors;
                    valid315 = valid315 || _valid41;
                    if (!valid315) {
                      const err1013 = { instancePath: instancePath + "/machine/travel/z/" + i14, schemaPath: "#/$defs/length/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                      if (vErrors === null) {
                        vErrors = [err1013];
                      } else {
                        vErrors.push(err1013);
                      }
                      errors++;
                    } else {
                      errors = _errs1179;
                      if (vErrors !== null) {
                        if (_errs1179) {
                          vErrors.length = _errs1179;
                        } else {
                          vErrors = null;
                        }
                      }
                    }
                  }
                } else {
                  const err1014 = { instancePath: instancePath + "/machine/travel/z", schemaPath: "#/properties/machine/properties/travel/properties/z/type", keyword: "type", params: { type: "array" }, message: "must be array" };
                  if (vErrors === null) {
                    vErrors = [err1014];
                  } else {
                    vErrors.push(err1014);
                  }
                  errors++;
                }
              }
              if (data378.a !== void 0) {
                let data385 = data378.a;
                if (Array.isArray(data385)) {
                  if (data385.length > 2) {
                    const err1015 = { instancePath: instancePath + "/machine/travel/a", schemaPath: "#/properties/machine/properties/travel/properties/a/maxItems", keyword: "maxItems", params: { limit: 2 }, message: "must NOT have more than 2 items" };
                    if (vErrors === null) {
                      vErrors = [err1015];
                    } else {
                      vErrors.push(err1015);
                    }
                    errors++;
                  }
                  if (data385.length < 2) {
                    const err1016 = { instancePath: instancePath + "/machine/travel/a", schemaPath: "#/properties/machine/properties/travel/properties/a/minItems", keyword: "minItems", params: { limit: 2 }, message: "must NOT have fewer than 2 items" };
                    if (vErrors === null) {
                      vErrors = [err1016];
                    } else {
                      vErrors.push(err1016);
                    }
                    errors++;
                  }
                  const len13 = data385.length;
                  for (let i15 = 0; i15 < len13; i15++) {
                    let data386 = data385[i15];
                    if (typeof data386 == "number" && isFinite(data386)) {
                      if (data386 > 36e6 || isNaN(data386)) {
                        const err1017 = { instancePath: instancePath + "/machine/travel/a/" + i15, schemaPath: "#/properties/machine/properties/travel/properties/a/items/maximum", keyword: "maximum", params: { comparison: "<=", limit: 36e6 }, message: "must be <= 36000000" };
                        if (vErrors === null) {
                          vErrors = [err1017];
                        } else {
                          vErrors.push(err1017);
                        }
                        errors++;
                      }
                      if (data386 < -36e6 || isNaN(data386)) {
                        const err1018 = { instancePath: instancePath + "/machine/travel/a/" + i15, schemaPath: "#/properties/machine/properties/travel/properties/a/items/minimum", keyword: "minimum", params: { comparison: ">=", limit: -36e6 }, message: "must be >= -36000000" };
                        if (vErrors === null) {
                          vErrors = [err1018];
                        } else {
                          vErrors.push(err1018);
                        }
                        errors++;
                      }
                    } else {
                      const err1019 = { instancePath: instancePath + "/machine/travel/a/" + i15, schemaPath: "#/properties/machine/properties/travel/properties/a/items/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                      if (vErrors === null) {
                        vErrors = [err1019];
                      } else {
                        vErrors.push(err1019);
                      }
                      errors++;
                    }
                  }
                } else {
                  const err1020 = { instancePath: instancePath + "/machine/travel/a", schemaPath: "#/properties/machine/properties/travel/properties/a/type", keyword: "type", params: { type: "array" }, message: "must be array" };
                  if (vErrors === null) {
                    vErrors = [err1020];
                  } else {
                    vErrors.push(err1020);
                  }
                  errors++;
                }
              }
              if (data378.b !== void 0) {
                let data387 = data378.b;
                if (Array.isArray(data387)) {
                  if (data387.length > 2) {
                    const err1021 = { instancePath: instancePath + "/machine/travel/b", schemaPath: "#/properties/machine/properties/travel/properties/b/maxItems", keyword: "maxItems", params: { limit: 2 }, message: "must NOT have more than 2 items" };
                    if (vErrors === null) {
                      vErrors = [err1021];
                    } else {
                      vErrors.push(err1021);
                    }
                    errors++;
                  }
                  if (data387.length < 2) {
                    const err1022 = { instancePath: instancePath + "/machine/travel/b", schemaPath: "#/properties/machine/properties/travel/properties/b/minItems", keyword: "minItems", params: { limit: 2 }, message: "must NOT have fewer than 2 items" };
                    if (vErrors === null) {
                      vErrors = [err1022];
                    } else {
                      vErrors.push(err1022);
                    }
                    errors++;
                  }
                  const len14 = data387.length;
                  for (let i16 = 0; i16 < len14; i16++) {
                    let data388 = data387[i16];
                    if (typeof data388 == "number" && isFinite(data388)) {
                      if (data388 > 36e6 || isNaN(data388)) {
                        const err1023 = { instancePath: instancePath + "/machine/travel/b/" + i16, schemaPath: "#/properties/machine/properties/travel/properties/b/items/maximum", keyword: "maximum", params: { comparison: "<=", limit: 36e6 }, message: "must be <= 36000000" };
                        if (vErrors === null) {
                          vErrors = [err1023];
                        } else {
                          vErrors.push(err1023);
                        }
                        errors++;
                      }
                      if (data388 < -36e6 || isNaN(data388)) {
                        const err1024 = { instancePath: instancePath + "/machine/travel/b/" + i16, schemaPath: "#/properties/machine/properties/travel/properties/b/items/minimum", keyword: "minimum", params: { comparison: ">=", limit: -36e6 }, message: "must be >= -36000000" };
                        if (vErrors === null) {
                          vErrors = [err1024];
                        } else {
                          vErrors.push(err1024);
                        }
                        errors++;
                      }
                    } else {
                      const err1025 = { instancePath: instancePath + "/machine/travel/b/" + i16, schemaPath: "#/properties/machine/properties/travel/properties/b/items/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                      if (vErrors === null) {
                        vErrors = [err1025];
                      } else {
                        vErrors.push(err1025);
                      }
                      errors++;
                    }
                  }
                } else {
                  const err1026 = { instancePath: instancePath + "/machine/travel/b", schemaPath: "#/properties/machine/properties/travel/properties/b/type", keyword: "type", params: { type: "array" }, message: "must be array" };
                  if (vErrors === null) {
                    vErrors = [err1026];
                  } else {
                    vErrors.push(err1026);
                  }
                  errors++;
                }
              }
              if (data378.c !== void 0) {
                let data389 = data378.c;
                if (Array.isArray(data389)) {
                  if (data389.length > 2) {
                    const err1027 = { instancePath: instancePath + "/machine/travel/c", schemaPath: "#/properties/machine/properties/travel/properties/c/maxItems", keyword: "maxItems", params: { limit: 2 }, message: "must NOT have more than 2 items" };
                    if (vErrors === null) {
                      vErrors = [err1027];
                    } else {
                      vErrors.push(err1027);
                    }
                    errors++;
                  }
                  if (data389.length < 2) {
                    const err1028 = { instancePath: instancePath + "/machine/travel/c", schemaPath: "#/properties/machine/properties/travel/properties/c/minItems", keyword: "minItems", params: { limit: 2 }, message: "must NOT have fewer than 2 items" };
                    if (vErrors === null) {
                      vErrors = [err1028];
                    } else {
                      vErrors.push(err1028);
                    }
                    errors++;
                  }
                  const len15 = data389.length;
                  for (let i17 = 0; i17 < len15; i17++) {
                    let data390 = data389[i17];
                    if (typeof data390 == "number" && isFinite(data390)) {
                      if (data390 > 36e6 || isNaN(data390)) {
                        const err1029 = { instancePath: instancePath + "/machine/travel/c/" + i17, schemaPath: "#/properties/machine/properties/travel/properties/c/items/maximum", keyword: "maximum", params: { comparison: "<=", limit: 36e6 }, message: "must be <= 36000000" };
                        if (vErrors === null) {
                          vErrors = [err1029];
                        } else {
                          vErrors.push(err1029);
                        }
                        errors++;
                      }
                      if (data390 < -36e6 || isNaN(data390)) {
                        const err1030 = { instancePath: instancePath + "/machine/travel/c/" + i17, schemaPath: "#/properties/machine/properties/travel/properties/c/items/minimum", keyword: "minimum", params: { comparison: ">=", limit: -36e6 }, message: "must be >= -36000000" };
                        if (vErrors === null) {
                          vErrors = [err1030];
                        } else {
                          vErrors.push(err1030);
                        }
                        errors++;
                      }
                    } else {
                      const err1031 = { instancePath: instancePath + "/machine/travel/c/" + i17, schemaPath: "#/properties/machine/properties/travel/properties/c/items/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                      if (vErrors === null) {
                        vErrors = [err1031];
                      } else {
                        vErrors.push(err1031);
                      }
                      errors++;
                    }
                  }
                } else {
                  const err1032 = { instancePath: instancePath + "/machine/travel/c", schemaPath: "#/properties/machine/properties/travel/properties/c/type", keyword: "type", params: { type: "array" }, message: "must be array" };
                  if (vErrors === null) {
                    vErrors = [err1032];
                  } else {
                    vErrors.push(err1032);
                  }
                  errors++;
                }
              }
            } else {
              const err1033 = { instancePath: instancePath + "/machine/travel", schemaPath: "#/properties/machine/properties/travel/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err1033];
              } else {
                vErrors.push(err1033);
              }
              errors++;
            }
          }
          if (data377.spindle !== void 0) {
            let data391 = data377.spindle;
            if (data391 && typeof data391 == "object" && !Array.isArray(data391)) {
              for (const key56 in data391) {
                if (!(key56 === "min-rpm" || key56 === "max-rpm" || key56 === "spin-up" || key56 === "spin-down" || key56 === "coast-down" || key56 === "orient")) {
                  const err1034 = { instancePath: instancePath + "/machine/spindle", schemaPath: "#/properties/machine/properties/spindle/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key56 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err1034];
                  } else {
                    vErrors.push(err1034);
                  }
                  errors++;
                }
              }
              if (data391["min-rpm"] !== void 0) {
                let data392 = data391["min-rpm"];
                if (typeof data392 == "number" && isFinite(data392)) {
                  if (data392 > 1e6 || isNaN(data392)) {
                    const err1035 = { instancePath: instancePath + "/machine/spindle/min-rpm", schemaPath: "#/properties/machine/properties/spindle/properties/min-rpm/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                    if (vErrors === null) {
                      vErrors = [err1035];
                    } else {
                      vErrors.push(err1035);
                    }
                    errors++;
                  }
                  if (data392 < 0 || isNaN(data392)) {
                    const err1036 = { instancePath: instancePath + "/machine/spindle/min-rpm", schemaPath: "#/properties/machine/properties/spindle/properties/min-rpm/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err1036];
                    } else {
                      vErrors.push(err1036);
                    }
                    errors++;
                  }
                } else {
                  const err1037 = { instancePath: instancePath + "/machine/spindle/min-rpm", schemaPath: "#/properties/machine/properties/spindle/properties/min-rpm/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                  if (vErrors === null) {
                    vErrors = [err1037];
                  } else {
                    vErrors.push(err1037);
                  }
                  errors++;
                }
              }
              if (data391["max-rpm"] !== void 0) {
                let data393 = data391["max-rpm"];
                if (typeof data393 == "number" && isFinite(data393)) {
                  if (data393 > 1e6 || isNaN(data393)) {
                    const err1038 = { instancePath: instancePath + "/machine/spindle/max-rpm", schemaPath: "#/properties/machine/properties/spindle/properties/max-rpm/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                    if (vErrors === null) {
                      vErrors = [err1038];
                    } else {
                      vErrors.push(err1038);
                    }
                    errors++;
                  }
                  if (data393 <= 0 || isNaN(data393)) {
                    const err1039 = { instancePath: instancePath + "/machine/spindle/max-rpm", schemaPath: "#/properties/machine/properties/spindle/properties/max-rpm/exclusiveMinimum", keyword: "exclusiveMinimum", params: { comparison: ">", limit: 0 }, message: "must be > 0" };
                    if (vErrors === null) {
                      vErrors = [err1039];
                    } else {
                      vErrors.push(err1039);
                    }
                    errors++;
                  }
                } else {
                  const err1040 = { instancePath: instancePath + "/machine/spindle/max-rpm", schemaPath: "#/properties/machine/properties/spindle/properties/max-rpm/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                  if (vErrors === null) {
                    vErrors = [err1040];
                  } else {
                    vErrors.push(err1040);
                  }
                  errors++;
                }
              }
              if (data391["spin-up"] !== void 0) {
                let data394 = data391["spin-up"];
                if (typeof data394 === "string") {
                  if (!pattern97.test(data394)) {
                    const err1041 = { instancePath: instancePath + "/machine/spindle/spin-up", schemaPath: "#/$defs/time/pattern", keyword: "pattern", params: { pattern: "^\\d{1,6}(\\.\\d{1,6})? ?(s|ms|min)$" }, message: 'must match pattern "^\\d{1,6}(\\.\\d{1,6})? ?(s|ms|min)$"' };
                    if (vErrors === null) {
                      vErrors = [err1041];
                    } else {
                      vErrors.push(err1041);
                    }
                    errors++;
                  }
                } else {
                  const err1042 = { instancePath: instancePath + "/machine/spindle/spin-up", schemaPath: "#/$defs/time/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1042];
                  } else {
                    vErrors.push(err1042);
                  }
                  errors++;
                }
              }
              if (data391["spin-down"] !== void 0) {
                let data395 = data391["spin-down"];
                if (typeof data395 === "string") {
                  if (!pattern97.test(data395)) {
                    const err1043 = { instancePath: instancePath + "/machine/spindle/spin-down", schemaPath: "#/$defs/time/pattern", keyword: "pattern", params: { pattern: "^\\d{1,6}(\\.\\d{1,6})? ?(s|ms|min)$" }, message: 'must match pattern "^\\d{1,6}(\\.\\d{1,6})? ?(s|ms|min)$"' };
                    if (vErrors === null) {
                      vErrors = [err1043];
                    } else {
                      vErrors.push(err1043);
                    }
                    errors++;
                  }
                } else {
                  const err1044 = { instancePath: instancePath + "/machine/spindle/spin-down", schemaPath: "#/$defs/time/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1044];
                  } else {
                    vErrors.push(err1044);
                  }
                  errors++;
                }
              }
              if (data391["coast-down"] !== void 0) {
                let data396 = data391["coast-down"];
                if (typeof data396 === "string") {
                  if (!pattern97.test(data396)) {
                    const err1045 = { instancePath: instancePath + "/machine/spindle/coast-down", schemaPath: "#/$defs/time/pattern", keyword: "pattern", params: { pattern: "^\\d{1,6}(\\.\\d{1,6})? ?(s|ms|min)$" }, message: 'must match pattern "^\\d{1,6}(\\.\\d{1,6})? ?(s|ms|min)$"' };
                    if (vErrors === null) {
                      vErrors = [err1045];
                    } else {
                      vErrors.push(err1045);
                    }
                    errors++;
                  }
                } else {
                  const err1046 = { instancePath: instancePath + "/machine/spindle/coast-down", schemaPath: "#/$defs/time/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1046];
                  } else {
                    vErrors.push(err1046);
                  }
                  errors++;
                }
              }
              if (data391.orient !== void 0) {
                let data397 = data391.orient;
                if (typeof data397 !== "string") {
                  const err1047 = { instancePath: instancePath + "/machine/spindle/orient", schemaPath: "#/$defs/yesNo/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1047];
                  } else {
                    vErrors.push(err1047);
                  }
                  errors++;
                }
                if (!(data397 === "yes" || data397 === "no")) {
                  const err1048 = { instancePath: instancePath + "/machine/spindle/orient", schemaPath: "#/$defs/yesNo/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1048];
                  } else {
                    vErrors.push(err1048);
                  }
                  errors++;
                }
              }
            } else {
              const err1049 = { instancePath: instancePath + "/machine/spindle", schemaPath: "#/properties/machine/properties/spindle/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err1049];
              } else {
                vErrors.push(err1049);
              }
              errors++;
            }
          }
          if (data377.signals !== void 0) {
            let data398 = data377.signals;
            if (data398 && typeof data398 == "object" && !Array.isArray(data398)) {
              for (const key57 in data398) {
                if (!(key57 === "at-speed" || key57 === "stopped" || key57 === "released" || key57 === "clamped" || key57 === "tool-present" || key57 === "air" || key57 === "hold-down")) {
                  const err1050 = { instancePath: instancePath + "/machine/signals", schemaPath: "#/properties/machine/properties/signals/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key57 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err1050];
                  } else {
                    vErrors.push(err1050);
                  }
                  errors++;
                }
              }
              if (data398["at-speed"] !== void 0) {
                let data399 = data398["at-speed"];
                const _errs1219 = errors;
                let valid328 = false;
                const _errs1220 = errors;
                if (!(typeof data399 == "number" && (!(data399 % 1) && !isNaN(data399)) && isFinite(data399))) {
                  const err1051 = { instancePath: instancePath + "/machine/signals/at-speed", schemaPath: "#/properties/machine/properties/signals/properties/at-speed/anyOf/0/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err1051];
                  } else {
                    vErrors.push(err1051);
                  }
                  errors++;
                }
                if (typeof data399 == "number" && isFinite(data399)) {
                  if (data399 > 9999 || isNaN(data399)) {
                    const err1052 = { instancePath: instancePath + "/machine/signals/at-speed", schemaPath: "#/properties/machine/properties/signals/properties/at-speed/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 9999 }, message: "must be <= 9999" };
                    if (vErrors === null) {
                      vErrors = [err1052];
                    } else {
                      vErrors.push(err1052);
                    }
                    errors++;
                  }
                  if (data399 < 0 || isNaN(data399)) {
                    const err1053 = { instancePath: instancePath + "/machine/signals/at-speed", schemaPath: "#/properties/machine/properties/signals/properties/at-speed/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err1053];
                    } else {
                      vErrors.push(err1053);
                    }
                    errors++;
                  }
                }
                var _valid42 = _errs1220 === errors;
                valid328 = valid328 || _valid42;
                const _errs1222 = errors;
                if (!validate21(data399, { instancePath: instancePath + "/machine/signals/at-speed", parentData: data398, parentDataProperty: "at-speed", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate21.errors : vErrors.concat(validate21.errors);
                  errors = vErrors.length;
                }
                var _valid42 = _errs1222 === errors;
                valid328 = valid328 || _valid42;
                if (!valid328) {
                  const err1054 = { instancePath: instancePath + "/machine/signals/at-speed", schemaPath: "#/properties/machine/properties/signals/properties/at-speed/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err1054];
                  } else {
                    vErrors.push(err1054);
                  }
                  errors++;
                } else {
                  errors = _errs1219;
                  if (vErrors !== null) {
                    if (_errs1219) {
                      vErrors.length = _errs1219;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
              if (data398.stopped !== void 0) {
                let data400 = data398.stopped;
                const _errs1224 = errors;
                let valid329 = false;
                const _errs1225 = errors;
                if (!(typeof data400 == "number" && (!(data400 % 1) && !isNaN(data400)) && isFinite(data400))) {
                  const err1055 = { instancePath: instancePath + "/machine/signals/stopped", schemaPath: "#/properties/machine/properties/signals/properties/stopped/anyOf/0/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err1055];
                  } else {
                    vErrors.push(err1055);
                  }
                  errors++;
                }
                if (typeof data400 == "number" && isFinite(data400)) {
                  if (data400 > 9999 || isNaN(data400)) {
                    const err1056 = { instancePath: instancePath + "/machine/signals/stopped", schemaPath: "#/properties/machine/properties/signals/properties/stopped/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 9999 }, message: "must be <= 9999" };
                    if (vErrors === null) {
                      vErrors = [err1056];
                    } else {
                      vErrors.push(err1056);
                    }
                    errors++;
                  }
                  if (data400 < 0 || isNaN(data400)) {
                    const err1057 = { instancePath: instancePath + "/machine/signals/stopped", schemaPath: "#/properties/machine/properties/signals/properties/stopped/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err1057];
                    } else {
                      vErrors.push(err1057);
                    }
                    errors++;
                  }
                }
                var _valid43 = _errs1225 === errors;
                valid329 = valid329 || _valid43;
                const _errs1227 = errors;
                if (!validate21(data400, { instancePath: instancePath + "/machine/signals/stopped", parentData: data398, parentDataProperty: "stopped", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate21.errors : vErrors.concat(validate21.errors);
                  errors = vErrors.length;
                }
                var _valid43 = _errs1227 === errors;
                valid329 = valid329 || _valid43;
                if (!valid329) {
                  const err1058 = { instancePath: instancePath + "/machine/signals/stopped", schemaPath: "#/properties/machine/properties/signals/properties/stopped/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err1058];
                  } else {
                    vErrors.push(err1058);
                  }
                  errors++;
                } else {
                  errors = _errs1224;
                  if (vErrors !== null) {
                    if (_errs1224) {
                      vErrors.length = _errs1224;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
              if (data398.released !== void 0) {
                let data401 = data398.released;
                const _errs1229 = errors;
                let valid330 = false;
                const _errs1230 = errors;
                if (!(typeof data401 == "number" && (!(data401 % 1) && !isNaN(data401)) && isFinite(data401))) {
                  const err1059 = { instancePath: instancePath + "/machine/signals/released", schemaPath: "#/properties/machine/properties/signals/properties/released/anyOf/0/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err1059];
                  } else {
                    vErrors.push(err1059);
                  }
                  errors++;
                }
                if (typeof data401 == "number" && isFinite(data401)) {
                  if (data401 > 9999 || isNaN(data401)) {
                    const err1060 = { instancePath: instancePath + "/machine/signals/released", schemaPath: "#/properties/machine/properties/signals/properties/released/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 9999 }, message: "must be <= 9999" };
                    if (vErrors === null) {
                      vErrors = [err1060];
                    } else {
                      vErrors.push(err1060);
                    }
                    errors++;
                  }
                  if (data401 < 0 || isNaN(data401)) {
                    const err1061 = { instancePath: instancePath + "/machine/signals/released", schemaPath: "#/properties/machine/properties/signals/properties/released/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err1061];
                    } else {
                      vErrors.push(err1061);
                    }
                    errors++;
                  }
                }
                var _valid44 = _errs1230 === errors;
                valid330 = valid330 || _valid44;
                const _errs1232 = errors;
                if (!validate21(data401, { instancePath: instancePath + "/machine/signals/released", parentData: data398, parentDataProperty: "released", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate21.errors : vErrors.concat(validate21.errors);
                  errors = vErrors.length;
                }
                var _valid44 = _errs1232 === errors;
                valid330 = valid330 || _valid44;
                if (!valid330) {
                  const err1062 = { instancePath: instancePath + "/machine/signals/released", schemaPath: "#/properties/machine/properties/signals/properties/released/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err1062];
                  } else {
                    vErrors.push(err1062);
                  }
                  errors++;
                } else {
                  errors = _errs1229;
                  if (vErrors !== null) {
                    if (_errs1229) {
                      vErrors.length = _errs1229;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
              if (data398.clamped !== void 0) {
                let data402 = data398.clamped;
                const _errs1234 = errors;
                let valid331 = false;
                const _errs1235 = errors;
                if (!(typeof data402 == "number" && (!(data402 % 1) && !isNaN(data402)) && isFinite(data402))) {
                  const err1063 = { instancePath: instancePath + "/machine/signals/clamped", schemaPath: "#/properties/machine/properties/signals/properties/clamped/anyOf/0/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err1063];
                  } else {
                    vErrors.push(err1063);
                  }
                  errors++;
                }
                if (typeof data402 == "number" && isFinite(data402)) {
                  if (data402 > 9999 || isNaN(data402)) {
                    const err1064 = { instancePath: instancePath + "/machine/signals/clamped", schemaPath: "#/properties/machine/properties/signals/properties/clamped/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 9999 }, message: "must be <= 9999" };
                    if (vErrors === null) {
                      vErrors = [err1064];
                    } else {
                      vErrors.push(err1064);
                    }
                    errors++;
                  }
                  if (data402 < 0 || isNaN(data402)) {
                    const err1065 = { instancePath: instancePath + "/machine/signals/clamped", schemaPath: "#/properties/machine/properties/signals/properties/clamped/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err1065];
                    } else {
                      vErrors.push(err1065);
                    }
                    errors++;
                  }
                }
                var _valid45 = _errs1235 === errors;
                valid331 = valid331 || _valid45;
                const _errs1237 = errors;
                if (!validate21(data402, { instancePath: instancePath + "/machine/signals/clamped", parentData: data398, parentDataProperty: "clamped", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate21.errors : vErrors.concat(validate21.errors);
                  errors = vErrors.length;
                }
                var _valid45 = _errs1237 === errors;
                valid331 = valid331 || _valid45;
                if (!valid331) {
                  const err1066 = { instancePath: instancePath + "/machine/signals/clamped", schemaPath: "#/properties/machine/properties/signals/properties/clamped/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err1066];
                  } else {
                    vErrors.push(err1066);
                  }
                  errors++;
                } else {
                  errors = _errs1234;
                  if (vErrors !== null) {
                    if (_errs1234) {
                      vErrors.length = _errs1234;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
              if (data398["tool-present"] !== void 0) {
                let data403 = data398["tool-present"];
                const _errs1239 = errors;
                let valid332 = false;
                const _errs1240 = errors;
                if (!(typeof data403 == "number" && (!(data403 % 1) && !isNaN(data403)) && isFinite(data403))) {
                  const err1067 = { instancePath: instancePath + "/machine/signals/tool-present", schemaPath: "#/properties/machine/properties/signals/properties/tool-present/anyOf/0/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err1067];
                  } else {
                    vErrors.push(err1067);
                  }
                  errors++;
                }
                if (typeof data403 == "number" && isFinite(data403)) {
                  if (data403 > 9999 || isNaN(data403)) {
                    const err1068 = { instancePath: instancePath + "/machine/signals/tool-present", schemaPath: "#/properties/machine/properties/signals/properties/tool-present/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 9999 }, message: "must be <= 9999" };
                    if (vErrors === null) {
                      vErrors = [err1068];
                    } else {
                      vErrors.push(err1068);
                    }
                    errors++;
                  }
                  if (data403 < 0 || isNaN(data403)) {
                    const err1069 = { instancePath: instancePath + "/machine/signals/tool-present", schemaPath: "#/properties/machine/properties/signals/properties/tool-present/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err1069];
                    } else {
                      vErrors.push(err1069);
                    }
                    errors++;
                  }
                }
                var _valid46 = _errs1240 === errors;
                valid332 = valid332 || _valid46;
                const _errs1242 = errors;
                if (!validate21(data403, { instancePath: instancePath + "/machine/signals/tool-present", parentData: data398, parentDataProperty: "tool-present", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate21.errors : vErrors.concat(validate21.errors);
                  errors = vErrors.length;
                }
                var _valid46 = _errs1242 === errors;
                valid332 = valid332 || _valid46;
                if (!valid332) {
                  const err1070 = { instancePath: instancePath + "/machine/signals/tool-present", schemaPath: "#/properties/machine/properties/signals/properties/tool-present/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err1070];
                  } else {
                    vErrors.push(err1070);
                  }
                  errors++;
                } else {
                  errors = _errs1239;
                  if (vErrors !== null) {
                    if (_errs1239) {
                      vErrors.length = _errs1239;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
              if (data398.air !== void 0) {
                let data404 = data398.air;
                const _errs1244 = errors;
                let valid333 = false;
                const _errs1245 = errors;
                if (!(typeof data404 == "number" && (!(data404 % 1) && !isNaN(data404)) && isFinite(data404))) {
                  const err1071 = { instancePath: instancePath + "/machine/signals/air", schemaPath: "#/properties/machine/properties/signals/properties/air/anyOf/0/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err1071];
                  } else {
                    vErrors.push(err1071);
                  }
                  errors++;
                }
                if (typeof data404 == "number" && isFinite(data404)) {
                  if (data404 > 9999 || isNaN(data404)) {
                    const err1072 = { instancePath: instancePath + "/machine/signals/air", schemaPath: "#/properties/machine/properties/signals/properties/air/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 9999 }, message: "must be <= 9999" };
                    if (vErrors === null) {
                      vErrors = [err1072];
                    } else {
                      vErrors.push(err1072);
                    }
                    errors++;
                  }
                  if (data404 < 0 || isNaN(data404)) {
                    const err1073 = { instancePath: instancePath + "/machine/signals/air", schemaPath: "#/properties/machine/properties/signals/properties/air/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err1073];
                    } else {
                      vErrors.push(err1073);
                    }
                    errors++;
                  }
                }
                var _valid47 = _errs1245 === errors;
                valid333 = valid333 || _valid47;
                const _errs1247 = errors;
                if (!validate21(data404, { instancePath: instancePath + "/machine/signals/air", parentData: data398, parentDataProperty: "air", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate21.errors : vErrors.concat(validate21.errors);
                  errors = vErrors.length;
                }
                var _valid47 = _errs1247 === errors;
                valid333 = valid333 || _valid47;
                if (!valid333) {
                  const err1074 = { instancePath: instancePath + "/machine/signals/air", schemaPath: "#/properties/machine/properties/signals/properties/air/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err1074];
                  } else {
                    vErrors.push(err1074);
                  }
                  errors++;
                } else {
                  errors = _errs1244;
                  if (vErrors !== null) {
                    if (_errs1244) {
                      vErrors.length = _errs1244;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
              if (data398["hold-down"] !== void 0) {
                let data405 = data398["hold-down"];
                const _errs1249 = errors;
                let valid334 = false;
                const _errs1250 = errors;
                if (!(typeof data405 == "number" && (!(data405 % 1) && !isNaN(data405)) && isFinite(data405))) {
                  const err1075 = { instancePath: instancePath + "/machine/signals/hold-down", schemaPath: "#/properties/machine/properties/signals/properties/hold-down/anyOf/0/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err1075];
                  } else {
                    vErrors.push(err1075);
                  }
                  errors++;
                }
                if (typeof data405 == "number" && isFinite(data405)) {
                  if (data405 > 9999 || isNaN(data405)) {
                    const err1076 = { instancePath: instancePath + "/machine/signals/hold-down", schemaPath: "#/properties/machine/properties/signals/properties/hold-down/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 9999 }, message: "must be <= 9999" };
                    if (vErrors === null) {
                      vErrors = [err1076];
                    } else {
                      vErrors.push(err1076);
                    }
                    errors++;
                  }
                  if (data405 < 0 || isNaN(data405)) {
                    const err1077 = { instancePath: instancePath + "/machine/signals/hold-down", schemaPath: "#/properties/machine/properties/signals/properties/hold-down/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err1077];
                    } else {
                      vErrors.push(err1077);
                    }
                    errors++;
                  }
                }
                var _valid48 = _errs1250 === errors;
                valid334 = valid334 || _valid48;
                const _errs1252 = errors;
                if (!validate21(data405, { instancePath: instancePath + "/machine/signals/hold-down", parentData: data398, parentDataProperty: "hold-down", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate21.errors : vErrors.concat(validate21.errors);
                  errors = vErrors.length;
                }
                var _valid48 = _errs1252 === errors;
                valid334 = valid334 || _valid48;
                if (!valid334) {
                  const err1078 = { instancePath: instancePath + "/machine/signals/hold-down", schemaPath: "#/properties/machine/properties/signals/properties/hold-down/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err1078];
                  } else {
                    vErrors.push(err1078);
                  }
                  errors++;
                } else {
                  errors = _errs1249;
                  if (vErrors !== null) {
                    if (_errs1249) {
                      vErrors.length = _errs1249;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
            } else {
              const err1079 = { instancePath: instancePath + "/machine/signals", schemaPath: "#/properties/machine/properties/signals/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err1079];
              } else {
                vErrors.push(err1079);
              }
              errors++;
            }
          }
          if (data377.waits !== void 0) {
            let data406 = data377.waits;
            if (data406 && typeof data406 == "object" && !Array.isArray(data406)) {
              for (const key58 in data406) {
                if (!(key58 === "on-timeout")) {
                  const err1080 = { instancePath: instancePath + "/machine/waits", schemaPath: "#/properties/machine/properties/waits/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key58 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err1080];
                  } else {
                    vErrors.push(err1080);
                  }
                  errors++;
                }
              }
              if (data406["on-timeout"] !== void 0) {
                let data407 = data406["on-timeout"];
                if (typeof data407 !== "string") {
                  const err1081 = { instancePath: instancePath + "/machine/waits/on-timeout", schemaPath: "#/properties/machine/properties/waits/properties/on-timeout/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1081];
                  } else {
                    vErrors.push(err1081);
                  }
                  errors++;
                }
                if (!(data407 === "alarm" || data407 === "continues")) {
                  const err1082 = { instancePath: instancePath + "/machine/waits/on-timeout", schemaPath: "#/properties/machine/properties/waits/properties/on-timeout/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties.waits.properties["on-timeout"].enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1082];
                  } else {
                    vErrors.push(err1082);
                  }
                  errors++;
                }
              }
            } else {
              const err1083 = { instancePath: instancePath + "/machine/waits", schemaPath: "#/properties/machine/properties/waits/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err1083];
              } else {
                vErrors.push(err1083);
              }
              errors++;
            }
          }
          if (data377.swap !== void 0) {
            let data408 = data377.swap;
            if (typeof data408 !== "string") {
              const err1084 = { instancePath: instancePath + "/machine/swap", schemaPath: "#/properties/machine/properties/swap/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err1084];
              } else {
                vErrors.push(err1084);
              }
              errors++;
            }
            if (!(data408 === "controller" || data408 === "rack" || data408 === "operator" || data408 === "none")) {
              const err1085 = { instancePath: instancePath + "/machine/swap", schemaPath: "#/properties/machine/properties/swap/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties.swap.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err1085];
              } else {
                vErrors.push(err1085);
              }
              errors++;
            }
          }
          if (data377["change-effects"] !== void 0) {
            let data409 = data377["change-effects"];
            if (data409 && typeof data409 == "object" && !Array.isArray(data409)) {
              for (const key59 in data409) {
                if (!(key59 === "position" || key59 === "spindle" || key59 === "coolant" || key59 === "length-offset")) {
                  const err1086 = { instancePath: instancePath + "/machine/change-effects", schemaPath: "#/properties/machine/properties/change-effects/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key59 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err1086];
                  } else {
                    vErrors.push(err1086);
                  }
                  errors++;
                }
              }
              if (data409.position !== void 0) {
                let data410 = data409.position;
                if (typeof data410 !== "string") {
                  const err1087 = { instancePath: instancePath + "/machine/change-effects/position", schemaPath: "#/properties/machine/properties/change-effects/properties/position/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1087];
                  } else {
                    vErrors.push(err1087);
                  }
                  errors++;
                }
                if (!(data410 === "unchanged" || data410 === "unknown" || data410 === "swap-height")) {
                  const err1088 = { instancePath: instancePath + "/machine/change-effects/position", schemaPath: "#/properties/machine/properties/change-effects/properties/position/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties["change-effects"].properties.position.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1088];
                  } else {
                    vErrors.push(err1088);
                  }
                  errors++;
                }
              }
              if (data409.spindle !== void 0) {
                let data411 = data409.spindle;
                if (typeof data411 !== "string") {
                  const err1089 = { instancePath: instancePath + "/machine/change-effects/spindle", schemaPath: "#/properties/machine/properties/change-effects/properties/spindle/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1089];
                  } else {
                    vErrors.push(err1089);
                  }
                  errors++;
                }
                if (!(data411 === "unchanged" || data411 === "stopped" || data411 === "restarts")) {
                  const err1090 = { instancePath: instancePath + "/machine/change-effects/spindle", schemaPath: "#/properties/machine/properties/change-effects/properties/spindle/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties["change-effects"].properties.spindle.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1090];
                  } else {
                    vErrors.push(err1090);
                  }
                  errors++;
                }
              }
              if (data409.coolant !== void 0) {
                let data412 = data409.coolant;
                if (typeof data412 !== "string") {
                  const err1091 = { instancePath: instancePath + "/machine/change-effects/coolant", schemaPath: "#/properties/machine/properties/change-effects/properties/coolant/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1091];
                  } else {
                    vErrors.push(err1091);
                  }
                  errors++;
                }
                if (!(data412 === "unchanged" || data412 === "off")) {
                  const err1092 = { instancePath: instancePath + "/machine/change-effects/coolant", schemaPath: "#/properties/machine/properties/change-effects/properties/coolant/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties["change-effects"].properties.coolant.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1092];
                  } else {
                    vErrors.push(err1092);
                  }
                  errors++;
                }
              }
              if (data409["length-offset"] !== void 0) {
                let data413 = data409["length-offset"];
                if (typeof data413 !== "string") {
                  const err1093 = { instancePath: instancePath + "/machine/change-effects/length-offset", schemaPath: "#/properties/machine/properties/change-effects/properties/length-offset/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1093];
                  } else {
                    vErrors.push(err1093);
                  }
                  errors++;
                }
                if (!(data413 === "unchanged" || data413 === "active" || data413 === "cancelled")) {
                  const err1094 = { instancePath: instancePath + "/machine/change-effects/length-offset", schemaPath: "#/properties/machine/properties/change-effects/properties/length-offset/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties["change-effects"].properties["length-offset"].enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1094];
                  } else {
                    vErrors.push(err1094);
                  }
                  errors++;
                }
              }
            } else {
              const err1095 = { instancePath: instancePath + "/machine/change-effects", schemaPath: "#/properties/machine/properties/change-effects/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err1095];
              } else {
                vErrors.push(err1095);
              }
              errors++;
            }
          }
          if (data377["measure-effects"] !== void 0) {
            let data414 = data377["measure-effects"];
            if (data414 && typeof data414 == "object" && !Array.isArray(data414)) {
              for (const key60 in data414) {
                if (!(key60 === "position" || key60 === "spindle" || key60 === "coolant" || key60 === "length-offset")) {
                  const err1096 = { instancePath: instancePath + "/machine/measure-effects", schemaPath: "#/properties/machine/properties/measure-effects/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key60 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err1096];
                  } else {
                    vErrors.push(err1096);
                  }
                  errors++;
                }
              }
              if (data414.position !== void 0) {
                let data415 = data414.position;
                if (typeof data415 !== "string") {
                  const err1097 = { instancePath: instancePath + "/machine/measure-effects/position", schemaPath: "#/properties/machine/properties/measure-effects/properties/position/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1097];
                  } else {
                    vErrors.push(err1097);
                  }
                  errors++;
                }
                if (!(data415 === "unchanged" || data415 === "unknown" || data415 === "swap-height")) {
                  const err1098 = { instancePath: instancePath + "/machine/measure-effects/position", schemaPath: "#/properties/machine/properties/measure-effects/properties/position/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties["measure-effects"].properties.position.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1098];
                  } else {
                    vErrors.push(err1098);
                  }
                  errors++;
                }
              }
              if (data414.spindle !== void 0) {
                let data416 = data414.spindle;
                if (typeof data416 !== "string") {
                  const err1099 = { instancePath: instancePath + "/machine/measure-effects/spindle", schemaPath: "#/properties/machine/properties/measure-effects/properties/spindle/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1099];
                  } else {
                    vErrors.push(err1099);
                  }
                  errors++;
                }
                if (!(data416 === "unchanged" || data416 === "stopped")) {
                  const err1100 = { instancePath: instancePath + "/machine/measure-effects/spindle", schemaPath: "#/properties/machine/properties/measure-effects/properties/spindle/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties["measure-effects"].properties.spindle.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1100];
                  } else {
                    vErrors.push(err1100);
                  }
                  errors++;
                }
              }
              if (data414.coolant !== void 0) {
                let data417 = data414.coolant;
                if (typeof data417 !== "string") {
                  const err1101 = { instancePath: instancePath + "/machine/measure-effects/coolant", schemaPath: "#/properties/machine/properties/measure-effects/properties/coolant/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1101];
                  } else {
                    vErrors.push(err1101);
                  }
                  errors++;
                }
                if (!(data417 === "unchanged" || data417 === "off")) {
                  const err1102 = { instancePath: instancePath + "/machine/measure-effects/coolant", schemaPath: "#/properties/machine/properties/measure-effects/properties/coolant/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties["measure-effects"].properties.coolant.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1102];
                  } else {
                    vErrors.push(err1102);
                  }
                  errors++;
                }
              }
              if (data414["length-offset"] !== void 0) {
                let data418 = data414["length-offset"];
                if (typeof data418 !== "string") {
                  const err1103 = { instancePath: instancePath + "/machine/measure-effects/length-offset", schemaPath: "#/properties/machine/properties/measure-effects/properties/length-offset/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1103];
                  } else {
                    vErrors.push(err1103);
                  }
                  errors++;
                }
                if (!(data418 === "unchanged" || data418 === "active" || data418 === "cancelled")) {
                  const err1104 = { instancePath: instancePath + "/machine/measure-effects/length-offset", schemaPath: "#/properties/machine/properties/measure-effects/properties/length-offset/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties["measure-effects"].properties["length-offset"].enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1104];
                  } else {
                    vErrors.push(err1104);
                  }
                  errors++;
                }
              }
            } else {
              const err1105 = { instancePath: instancePath + "/machine/measure-effects", schemaPath: "#/properties/machine/properties/measure-effects/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err1105];
              } else {
                vErrors.push(err1105);
              }
              errors++;
            }
          }
          if (data377.retract !== void 0) {
            let data419 = data377.retract;
            if (data419 && typeof data419 == "object" && !Array.isArray(data419)) {
              for (const key61 in data419) {
                if (!(key61 === "by" || key61 === "z" || key61 === "acts-on" || key61 === "cancel-length-first" || key61 === "intermediate" || key61 === "change-position")) {
                  const err1106 = { instancePath: instancePath + "/machine/retract", schemaPath: "#/properties/machine/properties/retract/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key61 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err1106];
                  } else {
                    vErrors.push(err1106);
                  }
                  errors++;
                }
              }
              if (data419.by !== void 0) {
                let data420 = data419.by;
                if (typeof data420 !== "string") {
                  const err1107 = { instancePath: instancePath + "/machine/retract/by", schemaPath: "#/properties/machine/properties/retract/properties/by/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1107];
                  } else {
                    vErrors.push(err1107);
                  }
                  errors++;
                }
                if (!(data420 === "machine-move" || data420 === "reference-return" || data420 === "clearance")) {
                  const err1108 = { instancePath: instancePath + "/machine/retract/by", schemaPath: "#/properties/machine/properties/retract/properties/by/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties.retract.properties.by.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1108];
                  } else {
                    vErrors.push(err1108);
                  }
                  errors++;
                }
              }
              if (data419.z !== void 0) {
                let data421 = data419.z;
                const _errs1289 = errors;
                let valid340 = false;
                const _errs1290 = errors;
                if (typeof data421 == "number" && isFinite(data421)) {
                  if (data421 > 1e6 || isNaN(data421)) {
                    const err1109 = { instancePath: instancePath + "/machine/retract/z", schemaPath: "#/$defs/length/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                    if (vErrors === null) {
                      vErrors = [err1109];
                    } else {
                      vErrors.push(err1109);
                    }
                    errors++;
                  }
                  if (data421 < -1e6 || isNaN(data421)) {
                    const err1110 = { instancePath: instancePath + "/machine/retract/z", schemaPath: "#/$defs/length/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: -1e6 }, message: "must be >= -1000000" };
                    if (vErrors === null) {
                      vErrors = [err1110];
                    } else {
                      vErrors.push(err1110);
                    }
                    errors++;
                  }
                } else {
                  const err1111 = { instancePath: instancePath + "/machine/retract/z", schemaPath: "#/$defs/length/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                  if (vErrors === null) {
                    vErrors = [err1111];
                  } else {
                    vErrors.push(err1111);
                  }
                  errors++;
                }
                var _valid49 = _errs1290 === errors;
                valid340 = valid340 || _valid49;
                const _errs1292 = errors;
                if (typeof data421 === "string") {
                  if (!pattern25.test(data421)) {
                    const err1112 = { instancePath: instancePath + "/machine/retract/z", schemaPath: "#/$defs/length/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }, message: 'must match pattern "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$"' };
                    if (vErrors === null) {
                      vErrors = [err1112];
                    } else {
                      vErrors.push(err1112);
                    }
                    errors++;
                  }
                } else {
                  const err1113 = { instancePath: instancePath + "/machine/retract/z", schemaPath: "#/$defs/length/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1113];
                  } else {
                    vErrors.push(err1113);
                  }
                  errors++;
                }
                var _valid49 = _errs1292 === errors;
                valid340 = valid340 || _valid49;
                if (!valid340) {
                  const err1114 = { instancePath: instancePath + "/machine/retract/z", schemaPath: "#/$defs/length/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err1114];
                  } else {
                    vErrors.push(err1114);
                  }
                  errors++;
                } else {
                  errors = _errs1289;
                  if (vErrors !== null) {
                    if (_errs1289) {
                      vErrors.length = _errs1289;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
              if (data419["acts-on"] !== void 0) {
                let data422 = data419["acts-on"];
                if (typeof data422 !== "string") {
                  const err1115 = { instancePath: instancePath + "/machine/retract/acts-on", schemaPath: "#/properties/machine/properties/retract/properties/acts-on/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1115];
                  } else {
                    vErrors.push(err1115);
                  }
                  errors++;
                }
                if (!(data422 === "spindle-nose" || data422 === "tool-tip")) {
                  const err1116 = { instancePath: instancePath + "/machine/retract/acts-on", schemaPath: "#/properties/machine/properties/retract/properties/acts-on/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties.retract.properties["acts-on"].enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1116];
                  } else {
                    vErrors.push(err1116);
                  }
                  errors++;
                }
              }
              if (data419["cancel-length-first"] !== void 0) {
                let data423 = data419["cancel-length-first"];
                if (typeof data423 !== "string") {
                  const err1117 = { instancePath: instancePath + "/machine/retract/cancel-length-first", schemaPath: "#/$defs/yesNo/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1117];
                  } else {
                    vErrors.push(err1117);
                  }
                  errors++;
                }
                if (!(data423 === "yes" || data423 === "no")) {
                  const err1118 = { instancePath: instancePath + "/machine/retract/cancel-length-first", schemaPath: "#/$defs/yesNo/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1118];
                  } else {
                    vErrors.push(err1118);
                  }
                  errors++;
                }
              }
              if (data419.intermediate !== void 0) {
                let data424 = data419.intermediate;
                if (typeof data424 !== "string") {
                  const err1119 = { instancePath: instancePath + "/machine/retract/intermediate", schemaPath: "#/properties/machine/properties/retract/properties/intermediate/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1119];
                  } else {
                    vErrors.push(err1119);
                  }
                  errors++;
                }
                if (!(data424 === "none" || data424 === "incremental-zero")) {
                  const err1120 = { instancePath: instancePath + "/machine/retract/intermediate", schemaPath: "#/properties/machine/properties/retract/properties/intermediate/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties.retract.properties.intermediate.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1120];
                  } else {
                    vErrors.push(err1120);
                  }
                  errors++;
                }
              }
              if (data419["change-position"] !== void 0) {
                if (!validate29(data419["change-position"], { instancePath: instancePath + "/machine/retract/change-position", parentData: data419, parentDataProperty: "change-position", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate29.errors : vErrors.concat(validate29.errors);
                  errors = vErrors.length;
                }
              }
            } else {
              const err1121 = { instancePath: instancePath + "/machine/retract", schemaPath: "#/properties/machine/properties/retract/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err1121];
              } else {
                vErrors.push(err1121);
              }
              errors++;
            }
          }
          if (data377["length-offset"] !== void 0) {
            let data426 = data377["length-offset"];
            if (data426 && typeof data426 == "object" && !Array.isArray(data426)) {
              for (const key62 in data426) {
                if (!(key62 === "form" || key62 === "select-moves" || key62 === "cancel-moves")) {
                  const err1122 = { instancePath: instancePath + "/machine/length-offset", schemaPath: "#/properties/machine/properties/length-offset/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key62 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err1122];
                  } else {
                    vErrors.push(err1122);
                  }
                  errors++;
                }
              }
              if (data426.form !== void 0) {
                let data427 = data426.form;
                if (typeof data427 !== "string") {
                  const err1123 = { instancePath: instancePath + "/machine/length-offset/form", schemaPath: "#/properties/machine/properties/length-offset/properties/form/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1123];
                  } else {
                    vErrors.push(err1123);
                  }
                  errors++;
                }
                if (!(data427 === "with-first-z" || data427 === "own-block" || data427 === "in-tool-word" || data427 === "none")) {
                  const err1124 = { instancePath: instancePath + "/machine/length-offset/form", schemaPath: "#/properties/machine/properties/length-offset/properties/form/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties["length-offset"].properties.form.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1124];
                  } else {
                    vErrors.push(err1124);
                  }
                  errors++;
                }
              }
              if (data426["select-moves"] !== void 0) {
                let data428 = data426["select-moves"];
                if (typeof data428 !== "string") {
                  const err1125 = { instancePath: instancePath + "/machine/length-offset/select-moves", schemaPath: "#/$defs/yesNo/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1125];
                  } else {
                    vErrors.push(err1125);
                  }
                  errors++;
                }
                if (!(data428 === "yes" || data428 === "no")) {
                  const err1126 = { instancePath: instancePath + "/machine/length-offset/select-moves", schemaPath: "#/$defs/yesNo/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1126];
                  } else {
                    vErrors.push(err1126);
                  }
                  errors++;
                }
              }
              if (data426["cancel-moves"] !== void 0) {
                let data429 = data426["cancel-moves"];
                if (typeof data429 !== "string") {
                  const err1127 = { instancePath: instancePath + "/machine/length-offset/cancel-moves", schemaPath: "#/$defs/yesNo/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1127];
                  } else {
                    vErrors.push(err1127);
                  }
                  errors++;
                }
                if (!(data429 === "yes" || data429 === "no")) {
                  const err1128 = { instancePath: instancePath + "/machine/length-offset/cancel-moves", schemaPath: "#/$defs/yesNo/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1128];
                  } else {
                    vErrors.push(err1128);
                  }
                  errors++;
                }
              }
            } else {
              const err1129 = { instancePath: instancePath + "/machine/length-offset", schemaPath: "#/properties/machine/properties/length-offset/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err1129];
              } else {
                vErrors.push(err1129);
              }
              errors++;
            }
          }
          if (data377.lengths !== void 0) {
            let data430 = data377.lengths;
            if (typeof data430 !== "string") {
              const err1130 = { instancePath: instancePath + "/machine/lengths", schemaPath: "#/properties/machine/properties/lengths/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err1130];
              } else {
                vErrors.push(err1130);
              }
              errors++;
            }
            if (!(data430 === "table" || data430 === "measured" || data430 === "operator")) {
              const err1131 = { instancePath: instancePath + "/machine/lengths", schemaPath: "#/properties/machine/properties/lengths/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties.lengths.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err1131];
              } else {
                vErrors.push(err1131);
              }
              errors++;
            }
          }
          if (data377.drawbar !== void 0) {
            let data431 = data377.drawbar;
            const _errs1316 = errors;
            let valid345 = false;
            const _errs1317 = errors;
            if (typeof data431 !== "string") {
              const err1132 = { instancePath: instancePath + "/machine/drawbar", schemaPath: "#/properties/machine/properties/drawbar/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err1132];
              } else {
                vErrors.push(err1132);
              }
              errors++;
            }
            if ("none" !== data431) {
              const err1133 = { instancePath: instancePath + "/machine/drawbar", schemaPath: "#/properties/machine/properties/drawbar/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
              if (vErrors === null) {
                vErrors = [err1133];
              } else {
                vErrors.push(err1133);
              }
              errors++;
            }
            var _valid50 = _errs1317 === errors;
            valid345 = valid345 || _valid50;
            const _errs1319 = errors;
            if (data431 && typeof data431 == "object" && !Array.isArray(data431)) {
              for (const key63 in data431) {
                if (!(key63 === "travels" || key63 === "taper-air")) {
                  const err1134 = { instancePath: instancePath + "/machine/drawbar", schemaPath: "#/properties/machine/properties/drawbar/anyOf/1/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key63 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err1134];
                  } else {
                    vErrors.push(err1134);
                  }
                  errors++;
                }
              }
              if (data431.travels !== void 0) {
                let data432 = data431.travels;
                if (typeof data432 !== "string") {
                  const err1135 = { instancePath: instancePath + "/machine/drawbar/travels", schemaPath: "#/properties/machine/properties/drawbar/anyOf/1/properties/travels/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1135];
                  } else {
                    vErrors.push(err1135);
                  }
                  errors++;
                }
                if (!(data432 === "clamped" || data432 === "released")) {
                  const err1136 = { instancePath: instancePath + "/machine/drawbar/travels", schemaPath: "#/properties/machine/properties/drawbar/anyOf/1/properties/travels/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties.drawbar.anyOf[1].properties.travels.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1136];
                  } else {
                    vErrors.push(err1136);
                  }
                  errors++;
                }
              }
              if (data431["taper-air"] !== void 0) {
                let data433 = data431["taper-air"];
                if (typeof data433 !== "string") {
                  const err1137 = { instancePath: instancePath + "/machine/drawbar/taper-air", schemaPath: "#/$defs/yesNo/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1137];
                  } else {
                    vErrors.push(err1137);
                  }
                  errors++;
                }
                if (!(data433 === "yes" || data433 === "no")) {
                  const err1138 = { instancePath: instancePath + "/machine/drawbar/taper-air", schemaPath: "#/$defs/yesNo/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1138];
                  } else {
                    vErrors.push(err1138);
                  }
                  errors++;
                }
              }
            } else {
              const err1139 = { instancePath: instancePath + "/machine/drawbar", schemaPath: "#/properties/machine/properties/drawbar/anyOf/1/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err1139];
              } else {
                vErrors.push(err1139);
              }
              errors++;
            }
            var _valid50 = _errs1319 === errors;
            valid345 = valid345 || _valid50;
            if (!valid345) {
              const err1140 = { instancePath: instancePath + "/machine/drawbar", schemaPath: "#/properties/machine/properties/drawbar/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err1140];
              } else {
                vErrors.push(err1140);
              }
              errors++;
            } else {
              errors = _errs1316;
              if (vErrors !== null) {
                if (_errs1316) {
                  vErrors.length = _errs1316;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data377.rack !== void 0) {
            let data434 = data377.rack;
            const _errs1328 = errors;
            let valid348 = false;
            const _errs1329 = errors;
            if (typeof data434 !== "string") {
              const err1141 = { instancePath: instancePath + "/machine/rack", schemaPath: "#/properties/machine/properties/rack/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err1141];
              } else {
                vErrors.push(err1141);
              }
              errors++;
            }
            if ("none" !== data434) {
              const err1142 = { instancePath: instancePath + "/machine/rack", schemaPath: "#/properties/machine/properties/rack/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
              if (vErrors === null) {
                vErrors = [err1142];
              } else {
                vErrors.push(err1142);
              }
              errors++;
            }
            var _valid51 = _errs1329 === errors;
            valid348 = valid348 || _valid51;
            const _errs1331 = errors;
            if (data434 && typeof data434 == "object" && !Array.isArray(data434)) {
              for (const key64 in data434) {
                if (!func1.call(schema31.properties.machine.properties.rack.anyOf[1].properties, key64)) {
                  const err1143 = { instancePath: instancePath + "/machine/rack", schemaPath: "#/properties/machine/properties/rack/anyOf/1/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key64 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err1143];
                  } else {
                    vErrors.push(err1143);
                  }
                  errors++;
                }
              }
              if (data434.style !== void 0) {
                let data435 = data434.style;
                if (typeof data435 !== "string") {
                  const err1144 = { instancePath: instancePath + "/machine/rack/style", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/style/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1144];
                  } else {
                    vErrors.push(err1144);
                  }
                  errors++;
                }
                if (!(data435 === "drop-in" || data435 === "slide-in")) {
                  const err1145 = { instancePath: instancePath + "/machine/rack/style", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/style/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties.rack.anyOf[1].properties.style.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1145];
                  } else {
                    vErrors.push(err1145);
                  }
                  errors++;
                }
              }
              if (data434["clear-z"] !== void 0) {
                let data436 = data434["clear-z"];
                const _errs1338 = errors;
                let valid351 = false;
                const _errs1339 = errors;
                if (typeof data436 == "number" && isFinite(data436)) {
                  if (data436 > 1e6 || isNaN(data436)) {
                    const err1146 = { instancePath: instancePath + "/machine/rack/clear-z", schemaPath: "#/$defs/length/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                    if (vErrors === null) {
                      vErrors = [err1146];
                    } else {
                      vErrors.push(err1146);
                    }
                    errors++;
                  }
                  if (data436 < -1e6 || isNaN(data436)) {
                    const err1147 = { instancePath: instancePath + "/machine/rack/clear-z", schemaPath: "#/$defs/length/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: -1e6 }, message: "must be >= -1000000" };
                    if (vErrors === null) {
                      vErrors = [err1147];
                    } else {
                      vErrors.push(err1147);
                    }
                    errors++;
                  }
                } else {
                  const err1148 = { instancePath: instancePath + "/machine/rack/clear-z", schemaPath: "#/$defs/length/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                  if (vErrors === null) {
                    vErrors = [err1148];
                  } else {
                    vErrors.push(err1148);
                  }
                  errors++;
                }
                var _valid52 = _errs1339 === errors;
                valid351 = valid351 || _valid52;
                const _errs1341 = errors;
                if (typeof data436 === "string") {
                  if (!pattern25.test(data436)) {
                    const err1149 = { instancePath: instancePath + "/machine/rack/clear-z", schemaPath: "#/$defs/length/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }, message: 'must match pattern "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$"' };
                    if (vErrors === null) {
                      vErrors = [err1149];
                    } else {
                      vErrors.push(err1149);
                    }
                    errors++;
                  }
                } else {
                  const err1150 = { instancePath: instancePath + "/machine/rack/clear-z", schemaPath: "#/$defs/length/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1150];
                  } else {
                    vErrors.push(err1150);
                  }
                  errors++;
                }
                var _valid52 = _errs1341 === errors;
                valid351 = valid351 || _valid52;
                if (!valid351) {
                  const err1151 = { instancePath: instancePath + "/machine/rack/clear-z", schemaPath: "#/$defs/length/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err1151];
                  } else {
                    vErrors.push(err1151);
                  }
                  errors++;
                } else {
                  errors = _errs1338;
                  if (vErrors !== null) {
                    if (_errs1338) {
                      vErrors.length = _errs1338;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
              if (data434["pocket-z"] !== void 0) {
                let data437 = data434["pocket-z"];
                const _errs1345 = errors;
                let valid353 = false;
                const _errs1346 = errors;
                if (typeof data437 == "number" && isFinite(data437)) {
                  if (data437 > 1e6 || isNaN(data437)) {
                    const err1152 = { instancePath: instancePath + "/machine/rack/pocket-z", schemaPath: "#/$defs/length/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                    if (vErrors === null) {
                      vErrors = [err1152];
                    } else {
                      vErrors.push(err1152);
                    }
                    errors++;
                  }
                  if (data437 < -1e6 || isNaN(data437)) {
                    const err1153 = { instancePath: instancePath + "/machine/rack/pocket-z", schemaPath: "#/$defs/length/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: -1e6 }, message: "must be >= -1000000" };
                    if (vErrors === null) {
                      vErrors = [err1153];
                    } else {
                      vErrors.push(err1153);
                    }
                    errors++;
                  }
                } else {
                  const err1154 = { instancePath: instancePath + "/machine/rack/pocket-z", schemaPath: "#/$defs/length/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                  if (vErrors === null) {
                    vErrors = [err1154];
                  } else {
                    vErrors.push(err1154);
                  }
                  errors++;
                }
                var _valid53 = _errs1346 === errors;
                valid353 = valid353 || _valid53;
                const _errs1348 = errors;
                if (typeof data437 === "string") {
                  if (!pattern25.test(data437)) {
                    const err1155 = { instancePath: instancePath + "/machine/rack/pocket-z", schemaPath: "#/$defs/length/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }, message: 'must match pattern "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$"' };
                    if (vErrors === null) {
                      vErrors = [err1155];
                    } else {
                      vErrors.push(err1155);
                    }
                    errors++;
                  }
                } else {
                  const err1156 = { instancePath: instancePath + "/machine/rack/pocket-z", schemaPath: "#/$defs/length/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1156];
                  } else {
                    vErrors.push(err1156);
                  }
                  errors++;
                }
                var _valid53 = _errs1348 === errors;
                valid353 = valid353 || _valid53;
                if (!valid353) {
                  const err1157 = { instancePath: instancePath + "/machine/rack/pocket-z", schemaPath: "#/$defs/length/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err1157];
                  } else {
                    vErrors.push(err1157);
                  }
                  errors++;
                } else {
                  errors = _errs1345;
                  if (vErrors !== null) {
                    if (_errs1345) {
                      vErrors.length = _errs1345;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
              if (data434["descend-from"] !== void 0) {
                let data438 = data434["descend-from"];
                const _errs1352 = errors;
                let valid355 = false;
                const _errs1353 = errors;
                if (typeof data438 == "number" && isFinite(data438)) {
                  if (data438 > 1e6 || isNaN(data438)) {
                    const err1158 = { instancePath: instancePath + "/machine/rack/descend-from", schemaPath: "#/$defs/length/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                    if (vErrors === null) {
                      vErrors = [err1158];
                    } else {
                      vErrors.push(err1158);
                    }
                    errors++;
                  }
                  if (data438 < -1e6 || isNaN(data438)) {
                    const err1159 = { instancePath: instancePath + "/machine/rack/descend-from", schemaPath: "#/$defs/length/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: -1e6 }, message: "must be >= -1000000" };
                    if (vErrors === null) {
                      vErrors = [err1159];
                    } else {
                      vErrors.push(err1159);
                    }
                    errors++;
                  }
                } else {
                  const err1160 = { instancePath: instancePath + "/machine/rack/descend-from", schemaPath: "#/$defs/length/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                  if (vErrors === null) {
                    vErrors = [err1160];
                  } else {
                    vErrors.push(err1160);
                  }
                  errors++;
                }
                var _valid54 = _errs1353 === errors;
                valid355 = valid355 || _valid54;
                const _errs1355 = errors;
                if (typeof data438 === "string") {
                  if (!pattern25.test(data438)) {
                    const err1161 = { instancePath: instancePath + "/machine/rack/descend-from", schemaPath: "#/$defs/length/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }, message: 'must match pattern "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$"' };
                    if (vErrors === null) {
                      vErrors = [err1161];
                    } else {
                      vErrors.push(err1161);
                    }
                    errors++;
                  }
                } else {
                  const err1162 = { instancePath: instancePath + "/machine/rack/descend-from", schemaPath: "#/$defs/length/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1162];
                  } else {
                    vErrors.push(err1162);
                  }
                  errors++;
                }
                var _valid54 = _errs1355 === errors;
                valid355 = valid355 || _valid54;
                if (!valid355) {
                  const err1163 = { instancePath: instancePath + "/machine/rack/descend-from", schemaPath: "#/$defs/length/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err1163];
                  } else {
                    vErrors.push(err1163);
                  }
                  errors++;
                } else {
                  errors = _errs1352;
                  if (vErrors !== null) {
                    if (_errs1352) {
                      vErrors.length = _errs1352;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
              if (data434["descend-feed"] !== void 0) {
                let data439 = data434["descend-feed"];
                const _errs1359 = errors;
                let valid357 = false;
                const _errs1360 = errors;
                if (typeof data439 == "number" && isFinite(data439)) {
                  if (data439 > 1e6 || isNaN(data439)) {
                    const err1164 = { instancePath: instancePath + "/machine/rack/descend-feed", schemaPath: "#/$defs/feed/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                    if (vErrors === null) {
                      vErrors = [err1164];
                    } else {
                      vErrors.push(err1164);
                    }
                    errors++;
                  }
                  if (data439 <= 0 || isNaN(data439)) {
                    const err1165 = { instancePath: instancePath + "/machine/rack/descend-feed", schemaPath: "#/$defs/feed/anyOf/0/exclusiveMinimum", keyword: "exclusiveMinimum", params: { comparison: ">", limit: 0 }, message: "must be > 0" };
                    if (vErrors === null) {
                      vErrors = [err1165];
                    } else {
                      vErrors.push(err1165);
                    }
                    errors++;
                  }
                } else {
                  const err1166 = { instancePath: instancePath + "/machine/rack/descend-feed", schemaPath: "#/$defs/feed/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                  if (vErrors === null) {
                    vErrors = [err1166];
                  } else {
                    vErrors.push(err1166);
                  }
                  errors++;
                }
                var _valid55 = _errs1360 === errors;
                valid357 = valid357 || _valid55;
                const _errs1362 = errors;
                if (typeof data439 === "string") {
                  if (!pattern9.test(data439)) {
                    const err1167 = { instancePath: instancePath + "/machine/rack/descend-feed", schemaPath: "#/$defs/feed/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^\\d{1,5}(\\.\\d{1,5})? (mm|in)/min$" }, message: 'must match pattern "^\\d{1,5}(\\.\\d{1,5})? (mm|in)/min$"' };
                    if (vErrors === null) {
                      vErrors = [err1167];
                    } else {
                      vErrors.push(err1167);
                    }
                    errors++;
                  }
                } else {
                  const err1168 = { instancePath: instancePath + "/machine/rack/descend-feed", schemaPath: "#/$defs/feed/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1168];
                  } else {
                    vErrors.push(err1168);
                  }
                  errors++;
                }
                var _valid55 = _errs1362 === errors;
                valid357 = valid357 || _valid55;
                if (!valid357) {
                  const err1169 = { instancePath: instancePath + "/machine/rack/descend-feed", schemaPath: "#/$defs/feed/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err1169];
                  } else {
                    vErrors.push(err1169);
                  }
                  errors++;
                } else {
                  errors = _errs1359;
                  if (vErrors !== null) {
                    if (_errs1359) {
                      vErrors.length = _errs1359;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
              if (data434.pockets !== void 0) {
                let data440 = data434.pockets;
                const _errs1365 = errors;
                let valid358 = false;
                const _errs1366 = errors;
                if (data440 && typeof data440 == "object" && !Array.isArray(data440)) {
                  for (const key65 in data440) {
                    if (!(key65 === "first" || key65 === "pitch" || key65 === "count")) {
                      const err1170 = { instancePath: instancePath + "/machine/rack/pockets", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/pockets/anyOf/0/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key65 }, message: "must NOT have additional properties" };
                      if (vErrors === null) {
                        vErrors = [err1170];
                      } else {
                        vErrors.push(err1170);
                      }
                      errors++;
                    }
                  }
                  if (data440.first !== void 0) {
                    if (!validate31(data440.first, { instancePath: instancePath + "/machine/rack/pockets/first", parentData: data440, parentDataProperty: "first", rootData, dynamicAnchors })) {
                      vErrors = vErrors === null ? validate31.errors : vErrors.concat(validate31.errors);
                      errors = vErrors.length;
                    }
                  }
                  if (data440.pitch !== void 0) {
                    if (!validate31(data440.pitch, { instancePath: instancePath + "/machine/rack/pockets/pitch", parentData: data440, parentDataProperty: "pitch", rootData, dynamicAnchors })) {
                      vErrors = vErrors === null ? validate31.errors : vErrors.concat(validate31.errors);
                      errors = vErrors.length;
                    }
                  }
                  if (data440.count !== void 0) {
                    let data443 = data440.count;
                    if (!(typeof data443 == "number" && (!(data443 % 1) && !isNaN(data443)) && isFinite(data443))) {
                      const err1171 = { instancePath: instancePath + "/machine/rack/pockets/count", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/pockets/anyOf/0/properties/count/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                      if (vErrors === null) {
                        vErrors = [err1171];
                      } else {
                        vErrors.push(err1171);
                      }
                      errors++;
                    }
                    if (typeof data443 == "number" && isFinite(data443)) {
                      if (data443 > 200 || isNaN(data443)) {
                        const err1172 = { instancePath: instancePath + "/machine/rack/pockets/count", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/pockets/anyOf/0/properties/count/maximum", keyword: "maximum", params: { comparison: "<=", limit: 200 }, message: "must be <= 200" };
                        if (vErrors === null) {
                          vErrors = [err1172];
                        } else {
                          vErrors.push(err1172);
                        }
                        errors++;
                      }
                      if (data443 < 1 || isNaN(data443)) {
                        const err1173 = { instancePath: instancePath + "/machine/rack/pockets/count", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/pockets/anyOf/0/properties/count/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                        if (vErrors === null) {
                          vErrors = [err1173];
                        } else {
                          vErrors.push(err1173);
                        }
                        errors++;
                      }
                    }
                  }
                } else {
                  const err1174 = { instancePath: instancePath + "/machine/rack/pockets", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/pockets/anyOf/0/type", keyword: "type", params: { type: "object" }, message: "must be object" };
                  if (vErrors === null) {
                    vErrors = [err1174];
                  } else {
                    vErrors.push(err1174);
                  }
                  errors++;
                }
                var _valid56 = _errs1366 === errors;
                valid358 = valid358 || _valid56;
                const _errs1373 = errors;
                if (Array.isArray(data440)) {
                  if (data440.length > 200) {
                    const err1175 = { instancePath: instancePath + "/machine/rack/pockets", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/pockets/anyOf/1/maxItems", keyword: "maxItems", params: { limit: 200 }, message: "must NOT have more than 200 items" };
                    if (vErrors === null) {
                      vErrors = [err1175];
                    } else {
                      vErrors.push(err1175);
                    }
                    errors++;
                  }
                  if (data440.length < 1) {
                    const err1176 = { instancePath: instancePath + "/machine/rack/pockets", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/pockets/anyOf/1/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items" };
                    if (vErrors === null) {
                      vErrors = [err1176];
                    } else {
                      vErrors.push(err1176);
                    }
                    errors++;
                  }
                  const len16 = data440.length;
                  for (let i18 = 0; i18 < len16; i18++) {
                    if (!validate31(data440[i18], { instancePath: instancePath + "/machine/rack/pockets/" + i18, parentData: data440, parentDataProperty: i18, rootData, dynamicAnchors })) {
                      vErrors = vErrors === null ? validate31.errors : vErrors.concat(validate31.errors);
                      errors = vErrors.length;
                    }
                  }
                } else {
                  const err1177 = { instancePath: instancePath + "/machine/rack/pockets", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/pockets/anyOf/1/type", keyword: "type", params: { type: "array" }, message: "must be array" };
                  if (vErrors === null) {
                    vErrors = [err1177];
                  } else {
                    vErrors.push(err1177);
                  }
                  errors++;
                }
                var _valid56 = _errs1373 === errors;
                valid358 = valid358 || _valid56;
                if (!valid358) {
                  const err1178 = { instancePath: instancePath + "/machine/rack/pockets", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/pockets/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
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
              if (data434.zone !== void 0) {
                let data445 = data434.zone;
                if (data445 && typeof data445 == "object" && !Array.isArray(data445)) {
                  for (const key66 in data445) {
                    if (!(key66 === "min" || key66 === "max")) {
                      const err1179 = { instancePath: instancePath + "/machine/rack/zone", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/zone/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key66 }, message: "must NOT have additional properties" };
                      if (vErrors === null) {
                        vErrors = [err1179];
                      } else {
                        vErrors.push(err1179);
                      }
                      errors++;
                    }
                  }
                  if (data445.min !== void 0) {
                    if (!validate29(data445.min, { instancePath: instancePath + "/machine/rack/zone/min", parentData: data445, parentDataProperty: "min", rootData, dynamicAnchors })) {
                      vErrors = vErrors === null ? validate29.errors : vErrors.concat(validate29.errors);
                      errors = vErrors.length;
                    }
                  }
                  if (data445.max !== void 0) {
                    if (!validate29(data445.max, { instancePath: instancePath + "/machine/rack/zone/max", parentData: data445, parentDataProperty: "max", rootData, dynamicAnchors })) {
                      vErrors = vErrors === null ? validate29.errors : vErrors.concat(validate29.errors);
                      errors = vErrors.length;
                    }
                  }
                } else {
                  const err1180 = { instancePath: instancePath + "/machine/rack/zone", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/zone/type", keyword: "type", params: { type: "object" }, message: "must be object" };
                  if (vErrors === null) {
                    vErrors = [err1180];
                  } else {
                    vErrors.push(err1180);
                  }
                  errors++;
                }
              }
              if (data434.slide !== void 0) {
                let data448 = data434.slide;
                if (data448 && typeof data448 == "object" && !Array.isArray(data448)) {
                  for (const key67 in data448) {
                    if (!(key67 === "direction" || key67 === "distance" || key67 === "feed")) {
                      const err1181 = { instancePath: instancePath + "/machine/rack/slide", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/slide/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key67 }, message: "must NOT have additional properties" };
                      if (vErrors === null) {
                        vErrors = [err1181];
                      } else {
                        vErrors.push(err1181);
                      }
                      errors++;
                    }
                  }
                  if (data448.direction !== void 0) {
                    let data449 = data448.direction;
                    if (typeof data449 !== "string") {
                      const err1182 = { instancePath: instancePath + "/machine/rack/slide/direction", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/slide/properties/direction/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                      if (vErrors === null) {
                        vErrors = [err1182];
                      } else {
                        vErrors.push(err1182);
                      }
                      errors++;
                    }
                    if (!(data449 === "+x" || data449 === "-x" || data449 === "+y" || data449 === "-y")) {
                      const err1183 = { instancePath: instancePath + "/machine/rack/slide/direction", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/slide/properties/direction/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties.rack.anyOf[1].properties.slide.properties.direction.enum }, message: "must be equal to one of the allowed values" };
                      if (vErrors === null) {
                        vErrors = [err1183];
                      } else {
                        vErrors.push(err1183);
                      }
                      errors++;
                    }
                  }
                  if (data448.distance !== void 0) {
                    let data450 = data448.distance;
                    const _errs1388 = errors;
                    let valid365 = false;
                    const _errs1389 = errors;
                    if (typeof data450 == "number" && isFinite(data450)) {
                      if (data450 > 1e6 || isNaN(data450)) {
                        const err1184 = { instancePath: instancePath + "/machine/rack/slide/distance", schemaPath: "#/$defs/length/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                        if (vErrors === null) {
                          vErrors = [err1184];
                        } else {
                          vErrors.push(err1184);
                        }
                        errors++;
                      }
                      if (data450 < -1e6 || isNaN(data450)) {
                        const err1185 = { instancePath: instancePath + "/machine/rack/slide/distance", schemaPath: "#/$defs/length/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: -1e6 }, message: "must be >= -1000000" };
                        if (vErrors === null) {
                          vErrors = [err1185];
                        } else {
                          vErrors.push(err1185);
                        }
                        errors++;
                      }
                    } else {
                      const err1186 = { instancePath: instancePath + "/machine/rack/slide/distance", schemaPath: "#/$defs/length/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                      if (vErrors === null) {
                        vErrors = [err1186];
                      } else {
                        vErrors.push(err1186);
                      }
                      errors++;
                    }
                    var _valid57 = _errs1389 === errors;
                    valid365 = valid365 || _valid57;
                    const _errs1391 = errors;
                    if (typeof data450 === "string") {
                      if (!pattern25.test(data450)) {
                        const err1187 = { instancePath: instancePath + "/machine/rack/slide/distance", schemaPath: "#/$defs/length/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }, message: 'must match pattern "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$"' };
                        if (vErrors === null) {
                          vErrors = [err1187];
                        } else {
                          vErrors.push(err1187);
                        }
                        errors++;
                      }
                    } else {
                      const err1188 = { instancePath: instancePath + "/machine/rack/slide/distance", schemaPath: "#/$defs/length/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                      if (vErrors === null) {
                        vErrors = [err1188];
                      } else {
                        vErrors.push(err1188);
                      }
                      errors++;
                    }
                    var _valid57 = _errs1391 === errors;
                    valid365 = valid365 || _valid57;
                    if (!valid365) {
                      const err1189 = { instancePath: instancePath + "/machine/rack/slide/distance", schemaPath: "#/$defs/length/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                      if (vErrors === null) {
                        vErrors = [err1189];
                      } else {
                        vErrors.push(err1189);
                      }
                      errors++;
                    } else {
                      errors = _errs1388;
                      if (vErrors !== null) {
                        if (_errs1388) {
                          vErrors.length = _errs1388;
                        } else {
                          vErrors = null;
                        }
                      }
                    }
                  }
                  if (data448.feed !== void 0) {
                    let data451 = data448.feed;
                    const _errs1395 = errors;
                    let valid367 = false;
                    const _errs1396 = errors;
                    if (typeof data451 == "number" && isFinite(data451)) {
                      if (data451 > 1e6 || isNaN(data451)) {
                        const err1190 = { instancePath: instancePath + "/machine/rack/slide/feed", schemaPath: "#/$defs/feed/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                        if (vErrors === null) {
                          vErrors = [err1190];
                        } else {
                          vErrors.push(err1190);
                        }
                        errors++;
                      }
                      if (data451 <= 0 || isNaN(data451)) {
                        const err1191 = { instancePath: instancePath + "/machine/rack/slide/feed", schemaPath: "#/$defs/feed/anyOf/0/exclusiveMinimum", keyword: "exclusiveMinimum", params: { comparison: ">", limit: 0 }, message: "must be > 0" };
                        if (vErrors === null) {
                          vErrors = [err1191];
                        } else {
                          vErrors.push(err1191);
                        }
                        errors++;
                      }
                    } else {
                      const err1192 = { instancePath: instancePath + "/machine/rack/slide/feed", schemaPath: "#/$defs/feed/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                      if (vErrors === null) {
                        vErrors = [err1192];
                      } else {
                        vErrors.push(err1192);
                      }
                      errors++;
                    }
                    var _valid58 = _errs1396 === errors;
                    valid367 = valid367 || _valid58;
                    const _errs1398 = errors;
                    if (typeof data451 === "string") {
                      if (!pattern9.test(data451)) {
                        const err1193 = { instancePath: instancePath + "/machine/rack/slide/feed", schemaPath: "#/$defs/feed/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^\\d{1,5}(\\.\\d{1,5})? (mm|in)/min$" }, message: 'must match pattern "^\\d{1,5}(\\.\\d{1,5})? (mm|in)/min$"' };
                        if (vErrors === null) {
                          vErrors = [err1193];
                        } else {
                          vErrors.push(err1193);
                        }
                        errors++;
                      }
                    } else {
                      const err1194 = { instancePath: instancePath + "/machine/rack/slide/feed", schemaPath: "#/$defs/feed/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                      if (vErrors === null) {
                        vErrors = [err1194];
                      } else {
                        vErrors.push(err1194);
                      }
                      errors++;
                    }
                    var _valid58 = _errs1398 === errors;
                    valid367 = valid367 || _valid58;
                    if (!valid367) {
                      const err1195 = { instancePath: instancePath + "/machine/rack/slide/feed", schemaPath: "#/$defs/feed/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                      if (vErrors === null) {
                        vErrors = [err1195];
                      } else {
                        vErrors.push(err1195);
                      }
                      errors++;
                    } else {
                      errors = _errs1395;
                      if (vErrors !== null) {
                        if (_errs1395) {
                          vErrors.length = _errs1395;
                        } else {
                          vErrors = null;
                        }
                      }
                    }
                  }
                } else {
                  const err1196 = { instancePath: instancePath + "/machine/rack/slide", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/slide/type", keyword: "type", params: { type: "object" }, message: "must be object" };
                  if (vErrors === null) {
                    vErrors = [err1196];
                  } else {
                    vErrors.push(err1196);
                  }
                  errors++;
                }
              }
              if (data434.widest !== void 0) {
                let data452 = data434.widest;
                const _errs1402 = errors;
                let valid369 = false;
                const _errs1403 = errors;
                if (typeof data452 == "number" && isFinite(data452)) {
                  if (data452 > 1e6 || isNaN(data452)) {
                    const err1197 = { instancePath: instancePath + "/machine/rack/widest", schemaPath: "#/$defs/lengthOrNone/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                    if (vErrors === null) {
                      vErrors = [err1197];
                    } else {
                      vErrors.push(err1197);
                    }
                    errors++;
                  }
                  if (data452 < 0 || isNaN(data452)) {
                    const err1198 = { instancePath: instancePath + "/machine/rack/widest", schemaPath: "#/$defs/lengthOrNone/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err1198];
                    } else {
                      vErrors.push(err1198);
                    }
                    errors++;
                  }
                } else {
                  const err1199 = { instancePath: instancePath + "/machine/rack/widest", schemaPath: "#/$defs/lengthOrNone/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                  if (vErrors === null) {
                    vErrors = [err1199];
                  } else {
                    vErrors.push(err1199);
                  }
                  errors++;
                }
                var _valid59 = _errs1403 === errors;
                valid369 = valid369 || _valid59;
                const _errs1405 = errors;
                if (typeof data452 === "string") {
                  if (!pattern23.test(data452)) {
                    const err1200 = { instancePath: instancePath + "/machine/rack/widest", schemaPath: "#/$defs/lengthOrNone/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^(none|\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }, message: 'must match pattern "^(none|\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$"' };
                    if (vErrors === null) {
                      vErrors = [err1200];
                    } else {
                      vErrors.push(err1200);
                    }
                    errors++;
                  }
                } else {
                  const err1201 = { instancePath: instancePath + "/machine/rack/widest", schemaPath: "#/$defs/lengthOrNone/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1201];
                  } else {
                    vErrors.push(err1201);
                  }
                  errors++;
                }
                var _valid59 = _errs1405 === errors;
                valid369 = valid369 || _valid59;
                if (!valid369) {
                  const err1202 = { instancePath: instancePath + "/machine/rack/widest", schemaPath: "#/$defs/lengthOrNone/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err1202];
                  } else {
                    vErrors.push(err1202);
                  }
                  errors++;
                } else {
                  errors = _errs1402;
                  if (vErrors !== null) {
                    if (_errs1402) {
                      vErrors.length = _errs1402;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
              if (data434.longest !== void 0) {
                let data453 = data434.longest;
                const _errs1409 = errors;
                let valid371 = false;
                const _errs1410 = errors;
                if (typeof data453 == "number" && isFinite(data453)) {
                  if (data453 > 1e6 || isNaN(data453)) {
                    const err1203 = { instancePath: instancePath + "/machine/rack/longest", schemaPath: "#/$defs/lengthOrNone/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                    if (vErrors === null) {
                      vErrors = [err1203];
                    } else {
                      vErrors.push(err1203);
                    }
                    errors++;
                  }
                  if (data453 < 0 || isNaN(data453)) {
                    const err1204 = { instancePath: instancePath + "/machine/rack/longest", schemaPath: "#/$defs/lengthOrNone/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err1204];
                    } else {
                      vErrors.push(err1204);
                    }
                    errors++;
                  }
                } else {
                  const err1205 = { instancePath: instancePath + "/machine/rack/longest", schemaPath: "#/$defs/lengthOrNone/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                  if (vErrors === null) {
                    vErrors = [err1205];
                  } else {
                    vErrors.push(err1205);
                  }
                  errors++;
                }
                var _valid60 = _errs1410 === errors;
                valid371 = valid371 || _valid60;
                const _errs1412 = errors;
                if (typeof data453 === "string") {
                  if (!pattern23.test(data453)) {
                    const err1206 = { instancePath: instancePath + "/machine/rack/longest", schemaPath: "#/$defs/lengthOrNone/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^(none|\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }, message: 'must match pattern "^(none|\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$"' };
                    if (vErrors === null) {
                      vErrors = [err1206];
                    } else {
                      vErrors.push(err1206);
                    }
                    errors++;
                  }
                } else {
                  const err1207 = { instancePath: instancePath + "/machine/rack/longest", schemaPath: "#/$defs/lengthOrNone/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1207];
                  } else {
                    vErrors.push(err1207);
                  }
                  errors++;
                }
                var _valid60 = _errs1412 === errors;
                valid371 = valid371 || _valid60;
                if (!valid371) {
                  const err1208 = { instancePath: instancePath + "/machine/rack/longest", schemaPath: "#/$defs/lengthOrNone/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err1208];
                  } else {
                    vErrors.push(err1208);
                  }
                  errors++;
                } else {
                  errors = _errs1409;
                  if (vErrors !== null) {
                    if (_errs1409) {
                      vErrors.length = _errs1409;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
              if (data434.cover !== void 0) {
                let data454 = data434.cover;
                if (typeof data454 !== "string") {
                  const err1209 = { instancePath: instancePath + "/machine/rack/cover", schemaPath: "#/$defs/yesNo/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1209];
                  } else {
                    vErrors.push(err1209);
                  }
                  errors++;
                }
                if (!(data454 === "yes" || data454 === "no")) {
                  const err1210 = { instancePath: instancePath + "/machine/rack/cover", schemaPath: "#/$defs/yesNo/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1210];
                  } else {
                    vErrors.push(err1210);
                  }
                  errors++;
                }
              }
              if (data434["at-end"] !== void 0) {
                let data455 = data434["at-end"];
                if (data455 && typeof data455 == "object" && !Array.isArray(data455)) {
                  for (const key68 in data455) {
                    if (!(key68 === "tool")) {
                      const err1211 = { instancePath: instancePath + "/machine/rack/at-end", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/at-end/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key68 }, message: "must NOT have additional properties" };
                      if (vErrors === null) {
                        vErrors = [err1211];
                      } else {
                        vErrors.push(err1211);
                      }
                      errors++;
                    }
                  }
                  if (data455.tool !== void 0) {
                    let data456 = data455.tool;
                    if (typeof data456 !== "string") {
                      const err1212 = { instancePath: instancePath + "/machine/rack/at-end/tool", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/at-end/properties/tool/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                      if (vErrors === null) {
                        vErrors = [err1212];
                      } else {
                        vErrors.push(err1212);
                      }
                      errors++;
                    }
                    if (!(data456 === "return" || data456 === "keep")) {
                      const err1213 = { instancePath: instancePath + "/machine/rack/at-end/tool", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/at-end/properties/tool/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties.rack.anyOf[1].properties["at-end"].properties.tool.enum }, message: "must be equal to one of the allowed values" };
                      if (vErrors === null) {
                        vErrors = [err1213];
                      } else {
                        vErrors.push(err1213);
                      }
                      errors++;
                    }
                  }
                } else {
                  const err1214 = { instancePath: instancePath + "/machine/rack/at-end", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/at-end/type", keyword: "type", params: { type: "object" }, message: "must be object" };
                  if (vErrors === null) {
                    vErrors = [err1214];
                  } else {
                    vErrors.push(err1214);
                  }
                  errors++;
                }
              }
            } else {
              const err1215 = { instancePath: instancePath + "/machine/rack", schemaPath: "#/properties/machine/properties/rack/anyOf/1/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err1215];
              } else {
                vErrors.push(err1215);
              }
              errors++;
            }
            var _valid51 = _errs1331 === errors;
            valid348 = valid348 || _valid51;
            if (!valid348) {
              const err1216 = { instancePath: instancePath + "/machine/rack", schemaPath: "#/properties/machine/properties/rack/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err1216];
              } else {
                vErrors.push(err1216);
              }
              errors++;
            } else {
              errors = _errs1328;
              if (vErrors !== null) {
                if (_errs1328) {
                  vErrors.length = _errs1328;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data377.park !== void 0) {
            if (!validate31(data377.park, { instancePath: instancePath + "/machine/park", parentData: data377, parentDataProperty: "park", rootData, dynamicAnchors })) {
              vErrors = vErrors === null ? validate31.errors : vErrors.concat(validate31.errors);
              errors = vErrors.length;
            }
          }
          if (data377.outputs !== void 0) {
            let data458 = data377.outputs;
            if (data458 && typeof data458 == "object" && !Array.isArray(data458)) {
              for (const key69 in data458) {
                if (!pattern112.test(key69)) {
                  const err1217 = { instancePath: instancePath + "/machine/outputs", schemaPath: "#/properties/machine/properties/outputs/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key69 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err1217];
                  } else {
                    vErrors.push(err1217);
                  }
                  errors++;
                }
              }
              for (const key70 in data458) {
                if (pattern112.test(key70)) {
                  let data459 = data458[key70];
                  if (data459 && typeof data459 == "object" && !Array.isArray(data459)) {
                    for (const key71 in data459) {
                      if (!(key71 === "number" || key71 === "during")) {
                        const err1218 = { instancePath: instancePath + "/machine/outputs/" + key70.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/machine/properties/outputs/patternProperties/%5E%5Ba-z%5D%5Ba-z0-9-%5D%7B0%2C30%7D%24/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key71 }, message: "must NOT have additional properties" };
                        if (vErrors === null) {
                          vErrors = [err1218];
                        } else {
                          vErrors.push(err1218);
                        }
                        errors++;
                      }
                    }
                    if (data459.number !== void 0) {
                      let data460 = data459.number;
                      if (!(typeof data460 == "number" && (!(data460 % 1) && !isNaN(data460)) && isFinite(data460))) {
                        const err1219 = { instancePath: instancePath + "/machine/outputs/" + key70.replace(/~/g, "~0").replace(/\//g, "~1") + "/number", schemaPath: "#/properties/machine/properties/outputs/patternProperties/%5E%5Ba-z%5D%5Ba-z0-9-%5D%7B0%2C30%7D%24/properties/number/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                        if (vErrors === null) {
                          vErrors = [err1219];
                        } else {
                          vErrors.push(err1219);
                        }
                        errors++;
                      }
                      if (typeof data460 == "number" && isFinite(data460)) {
                        if (data460 > 9999 || isNaN(data460)) {
                          const err1220 = { instancePath: instancePath + "/machine/outputs/" + key70.replace(/~/g, "~0").replace(/\//g, "~1") + "/number", schemaPath: "#/properties/machine/properties/outputs/patternProperties/%5E%5Ba-z%5D%5Ba-z0-9-%5D%7B0%2C30%7D%24/properties/number/maximum", keyword: "maximum", params: { comparison: "<=", limit: 9999 }, message: "must be <= 9999" };
                          if (vErrors === null) {
                            vErrors = [err1220];
                          } else {
                            vErrors.push(err1220);
                          }
                          errors++;
                        }
                        if (data460 < 0 || isNaN(data460)) {
                          const err1221 = { instancePath: instancePath + "/machine/outputs/" + key70.replace(/~/g, "~0").replace(/\//g, "~1") + "/number", schemaPath: "#/properties/machine/properties/outputs/patternProperties/%5E%5Ba-z%5D%5Ba-z0-9-%5D%7B0%2C30%7D%24/properties/number/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                          if (vErrors === null) {
                            vErrors = [err1221];
                          } else {
                            vErrors.push(err1221);
                          }
                          errors++;
                        }
                      }
                    }
                    if (data459.during !== void 0) {
                      let data461 = data459.during;
                      if (typeof data461 !== "string") {
                        const err1222 = { instancePath: instancePath + "/machine/outputs/" + key70.replace(/~/g, "~0").replace(/\//g, "~1") + "/during", schemaPath: "#/properties/machine/properties/outputs/patternProperties/%5E%5Ba-z%5D%5Ba-z0-9-%5D%7B0%2C30%7D%24/properties/during/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                        if (vErrors === null) {
                          vErrors = [err1222];
                        } else {
                          vErrors.push(err1222);
                        }
                        errors++;
                      }
                      if (!(data461 === "cutting" || data461 === "program")) {
                        const err1223 = { instancePath: instancePath + "/machine/outputs/" + key70.replace(/~/g, "~0").replace(/\//g, "~1") + "/during", schemaPath: "#/properties/machine/properties/outputs/patternProperties/%5E%5Ba-z%5D%5Ba-z0-9-%5D%7B0%2C30%7D%24/properties/during/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties.outputs.patternProperties["^[a-z][a-z0-9-]{0,30}$"].properties.during.enum }, message: "must be equal to one of the allowed values" };
                        if (vErrors === null) {
                          vErrors = [err1223];
                        } else {
                          vErrors.push(err1223);
                        }
                        errors++;
                      }
                    }
                  } else {
                    const err1224 = { instancePath: instancePath + "/machine/outputs/" + key70.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/machine/properties/outputs/patternProperties/%5E%5Ba-z%5D%5Ba-z0-9-%5D%7B0%2C30%7D%24/type", keyword: "type", params: { type: "object" }, message: "must be object" };
                    if (vErrors === null) {
                      vErrors = [err1224];
                    } else {
                      vErrors.push(err1224);
                    }
                    errors++;
                  }
                }
              }
            } else {
              const err1225 = { instancePath: instancePath + "/machine/outputs", schemaPath: "#/properties/machine/properties/outputs/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err1225];
              } else {
                vErrors.push(err1225);
              }
              errors++;
            }
          }
          if (data377.hood !== void 0) {
            let data462 = data377.hood;
            if (typeof data462 !== "string") {
              const err1226 = { instancePath: instancePath + "/machine/hood", schemaPath: "#/$defs/yesNo/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err1226];
              } else {
                vErrors.push(err1226);
              }
              errors++;
            }
            if (!(data462 === "yes" || data462 === "no")) {
              const err1227 = { instancePath: instancePath + "/machine/hood", schemaPath: "#/$defs/yesNo/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err1227];
              } else {
                vErrors.push(err1227);
              }
              errors++;
            }
          }
          if (data377["keep-out"] !== void 0) {
            let data463 = data377["keep-out"];
            if (Array.isArray(data463)) {
              if (data463.length > 50) {
                const err1228 = { instancePath: instancePath + "/machine/keep-out", schemaPath: "#/properties/machine/properties/keep-out/maxItems", keyword: "maxItems", params: { limit: 50 }, message: "must NOT have more than 50 items" };
                if (vErrors === null) {
                  vErrors = [err1228];
                } else {
                  vErrors.push(err1228);
                }
                errors++;
              }
              const len17 = data463.length;
              for (let i19 = 0; i19 < len17; i19++) {
                let data464 = data463[i19];
                if (data464 && typeof data464 == "object" && !Array.isArray(data464)) {
                  if (data464.name === void 0) {
                    const err1229 = { instancePath: instancePath + "/machine/keep-out/" + i19, schemaPath: "#/properties/machine/properties/keep-out/items/required", keyword: "required", params: { missingProperty: "name" }, message: "must have required property 'name'" };
                    if (vErrors === null) {
                      vErrors = [err1229];
                    } else {
                      vErrors.push(err1229);
                    }
                    errors++;
                  }
                  if (data464.min === void 0) {
                    const err1230 = { instancePath: instancePath + "/machine/keep-out/" + i19, schemaPath: "#/properties/machine/properties/keep-out/items/required", keyword: "required", params: { missingProperty: "min" }, message: "must have required property 'min'" };
                    if (vErrors === null) {
                      vErrors = [err1230];
                    } else {
                      vErrors.push(err1230);
                    }
                    errors++;
                  }
                  if (data464.max === void 0) {
                    const err1231 = { instancePath: instancePath + "/machine/keep-out/" + i19, schemaPath: "#/properties/machine/properties/keep-out/items/required", keyword: "required", params: { missingProperty: "max" }, message: "must have required property 'max'" };
                    if (vErrors === null) {
                      vErrors = [err1231];
                    } else {
                      vErrors.push(err1231);
                    }
                    errors++;
                  }
                  for (const key72 in data464) {
                    if (!(key72 === "name" || key72 === "min" || key72 === "max")) {
                      const err1232 = { instancePath: instancePath + "/machine/keep-out/" + i19, schemaPath: "#/properties/machine/properties/keep-out/items/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key72 }, message: "must NOT have additional properties" };
                      if (vErrors === null) {
                        vErrors = [err1232];
                      } else {
                        vErrors.push(err1232);
                      }
                      errors++;
                    }
                  }
                  if (data464.name !== void 0) {
                    let data465 = data464.name;
                    if (typeof data465 === "string") {
                      if (func2(data465) > 60) {
                        const err1233 = { instancePath: instancePath + "/machine/keep-out/" + i19 + "/name", schemaPath: "#/properties/machine/properties/keep-out/items/properties/name/maxLength", keyword: "maxLength", params: { limit: 60 }, message: "must NOT have more than 60 characters" };
                        if (vErrors === null) {
                          vErrors = [err1233];
                        } else {
                          vErrors.push(err1233);
                        }
                        errors++;
                      }
                      if (func2(data465) < 1) {
                        const err1234 = { instancePath: instancePath + "/machine/keep-out/" + i19 + "/name", schemaPath: "#/properties/machine/properties/keep-out/items/properties/name/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                        if (vErrors === null) {
                          vErrors = [err1234];
                        } else {
                          vErrors.push(err1234);
                        }
                        errors++;
                      }
                    } else {
                      const err1235 = { instancePath: instancePath + "/machine/keep-out/" + i19 + "/name", schemaPath: "#/properties/machine/properties/keep-out/items/properties/name/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                      if (vErrors === null) {
                        vErrors = [err1235];
                      } else {
                        vErrors.push(err1235);
                      }
                      errors++;
                    }
                  }
                  if (data464.min !== void 0) {
                    if (!validate29(data464.min, { instancePath: instancePath + "/machine/keep-out/" + i19 + "/min", parentData: data464, parentDataProperty: "min", rootData, dynamicAnchors })) {
                      vErrors = vErrors === null ? validate29.errors : vErrors.concat(validate29.errors);
                      errors = vErrors.length;
                    }
                  }
                  if (data464.max !== void 0) {
                    if (!validate29(data464.max, { instancePath: instancePath + "/machine/keep-out/" + i19 + "/max", parentData: data464, parentDataProperty: "max", rootData, dynamicAnchors })) {
                      vErrors = vErrors === null ? validate29.errors : vErrors.concat(validate29.errors);
                      errors = vErrors.length;
                    }
                  }
                } else {
                  const err1236 = { instancePath: instancePath + "/machine/keep-out/" + i19, schemaPath: "#/properties/machine/properties/keep-out/items/type", keyword: "type", params: { type: "object" }, message: "must be object" };
                  if (vErrors === null) {
                    vErrors = [err1236];
                  } else {
                    vErrors.push(err1236);
                  }
                  errors++;
                }
              }
            } else {
              const err1237 = { instancePath: instancePath + "/machine/keep-out", schemaPath: "#/properties/machine/properties/keep-out/type", keyword: "type", params: { type: "array" }, message: "must be array" };
              if (vErrors === null) {
                vErrors = [err1237];
              } else {
                vErrors.push(err1237);
              }
              errors++;
            }
          }
          if (data377.tapping !== void 0) {
            let data468 = data377.tapping;
            if (data468 && typeof data468 == "object" && !Array.isArray(data468)) {
              for (const key73 in data468) {
                if (!(key73 === "kind" || key73 === "reversal" || key73 === "longhand")) {
                  const err1238 = { instancePath: instancePath + "/machine/tapping", schemaPath: "#/properties/machine/properties/tapping/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key73 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err1238];
                  } else {
                    vErrors.push(err1238);
                  }
                  errors++;
                }
              }
              if (data468.kind !== void 0) {
                let data469 = data468.kind;
                if (typeof data469 !== "string") {
                  const err1239 = { instancePath: instancePath + "/machine/tapping/kind", schemaPath: "#/properties/machine/properties/tapping/properties/kind/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1239];
                  } else {
                    vErrors.push(err1239);
                  }
                  errors++;
                }
                if (!(data469 === "none" || data469 === "floating" || data469 === "synchronised")) {
                  const err1240 = { instancePath: instancePath + "/machine/tapping/kind", schemaPath: "#/properties/machine/properties/tapping/properties/kind/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties.tapping.properties.kind.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1240];
                  } else {
                    vErrors.push(err1240);
                  }
                  errors++;
                }
              }
              if (data468.reversal !== void 0) {
                let data470 = data468.reversal;
                if (typeof data470 === "string") {
                  if (!pattern97.test(data470)) {
                    const err1241 = { instancePath: instancePath + "/machine/tapping/reversal", schemaPath: "#/$defs/time/pattern", keyword: "pattern", params: { pattern: "^\\d{1,6}(\\.\\d{1,6})? ?(s|ms|min)$" }, message: 'must match pattern "^\\d{1,6}(\\.\\d{1,6})? ?(s|ms|min)$"' };
                    if (vErrors === null) {
                      vErrors = [err1241];
                    } else {
                      vErrors.push(err1241);
                    }
                    errors++;
                  }
                } else {
                  const err1242 = { instancePath: instancePath + "/machine/tapping/reversal", schemaPath: "#/$defs/time/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1242];
                  } else {
                    vErrors.push(err1242);
                  }
                  errors++;
                }
              }
              if (data468.longhand !== void 0) {
                let data471 = data468.longhand;
                if (typeof data471 !== "string") {
                  const err1243 = { instancePath: instancePath + "/machine/tapping/longhand", schemaPath: "#/$defs/yesNo/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1243];
                  } else {
                    vErrors.push(err1243);
                  }
                  errors++;
                }
                if (!(data471 === "yes" || data471 === "no")) {
                  const err1244 = { instancePath: instancePath + "/machine/tapping/longhand", schemaPath: "#/$defs/yesNo/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1244];
                  } else {
                    vErrors.push(err1244);
                  }
                  errors++;
                }
              }
            } else {
              const err1245 = { instancePath: instancePath + "/machine/tapping", schemaPath: "#/properties/machine/properties/tapping/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err1245];
              } else {
                vErrors.push(err1245);
              }
              errors++;
            }
          }
          if (data377.feed !== void 0) {
            let data472 = data377.feed;
            if (data472 && typeof data472 == "object" && !Array.isArray(data472)) {
              for (const key74 in data472) {
                if (!(key74 === "least" || key74 === "most")) {
                  const err1246 = { instancePath: instancePath + "/machine/feed", schemaPath: "#/properties/machine/properties/feed/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key74 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err1246];
                  } else {
                    vErrors.push(err1246);
                  }
                  errors++;
                }
              }
              if (data472.least !== void 0) {
                let data473 = data472.least;
                const _errs1461 = errors;
                let valid385 = false;
                const _errs1462 = errors;
                if (typeof data473 == "number" && isFinite(data473)) {
                  if (data473 > 1e6 || isNaN(data473)) {
                    const err1247 = { instancePath: instancePath + "/machine/feed/least", schemaPath: "#/$defs/feed/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                    if (vErrors === null) {
                      vErrors = [err1247];
                    } else {
                      vErrors.push(err1247);
                    }
                    errors++;
                  }
                  if (data473 <= 0 || isNaN(data473)) {
                    const err1248 = { instancePath: instancePath + "/machine/feed/least", schemaPath: "#/$defs/feed/anyOf/0/exclusiveMinimum", keyword: "exclusiveMinimum", params: { comparison: ">", limit: 0 }, message: "must be > 0" };
                    if (vErrors === null) {
                      vErrors = [err1248];
                    } else {
                      vErrors.push(err1248);
                    }
                    errors++;
                  }
                } else {
                  const err1249 = { instancePath: instancePath + "/machine/feed/least", schemaPath: "#/$defs/feed/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                  if (vErrors === null) {
                    vErrors = [err1249];
                  } else {
                    vErrors.push(err1249);
                  }
                  errors++;
                }
                var _valid61 = _errs1462 === errors;
                valid385 = valid385 || _valid61;
                const _errs1464 = errors;
                if (typeof data473 === "string") {
                  if (!pattern9.test(data473)) {
                    const err1250 = { instancePath: instancePath + "/machine/feed/least", schemaPath: "#/$defs/feed/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^\\d{1,5}(\\.\\d{1,5})? (mm|in)/min$" }, message: 'must match pattern "^\\d{1,5}(\\.\\d{1,5})? (mm|in)/min$"' };
                    if (vErrors === null) {
                      vErrors = [err1250];
                    } else {
                      vErrors.push(err1250);
                    }
                    errors++;
                  }
                } else {
                  const err1251 = { instancePath: instancePath + "/machine/feed/least", schemaPath: "#/$defs/feed/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1251];
                  } else {
                    vErrors.push(err1251);
                  }
                  errors++;
                }
                var _valid61 = _errs1464 === errors;
                valid385 = valid385 || _valid61;
                if (!valid385) {
                  const err1252 = { instancePath: instancePath + "/machine/feed/least", schemaPath: "#/$defs/feed/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err1252];
                  } else {
                    vErrors.push(err1252);
                  }
                  errors++;
                } else {
                  errors = _errs1461;
                  if (vErrors !== null) {
                    if (_errs1461) {
                      vErrors.length = _errs1461;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
              if (data472.most !== void 0) {
                let data474 = data472.most;
                const _errs1468 = errors;
                let valid387 = false;
                const _errs1469 = errors;
                if (typeof data474 == "number" && isFinite(data474)) {
                  if (data474 > 1e6 || isNaN(data474)) {
                    const err1253 = { instancePath: instancePath + "/machine/feed/most", schemaPath: "#/$defs/feed/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                    if (vErrors === null) {
                      vErrors = [err1253];
                    } else {
                      vErrors.push(err1253);
                    }
                    errors++;
                  }
                  if (data474 <= 0 || isNaN(data474)) {
                    const err1254 = { instancePath: instancePath + "/machine/feed/most", schemaPath: "#/$defs/feed/anyOf/0/exclusiveMinimum", keyword: "exclusiveMinimum", params: { comparison: ">", limit: 0 }, message: "must be > 0" };
                    if (vErrors === null) {
                      vErrors = [err1254];
                    } else {
                      vErrors.push(err1254);
                    }
                    errors++;
                  }
                } else {
                  const err1255 = { instancePath: instancePath + "/machine/feed/most", schemaPath: "#/$defs/feed/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                  if (vErrors === null) {
                    vErrors = [err1255];
                  } else {
                    vErrors.push(err1255);
                  }
                  errors++;
                }
                var _valid62 = _errs1469 === errors;
                valid387 = valid387 || _valid62;
                const _errs1471 = errors;
                if (typeof data474 === "string") {
                  if (!pattern9.test(data474)) {
                    const err1256 = { instancePath: instancePath + "/machine/feed/most", schemaPath: "#/$defs/feed/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^\\d{1,5}(\\.\\d{1,5})? (mm|in)/min$" }, message: 'must match pattern "^\\d{1,5}(\\.\\d{1,5})? (mm|in)/min$"' };
                    if (vErrors === null) {
                      vErrors = [err1256];
                    } else {
                      vErrors.push(err1256);
                    }
                    errors++;
                  }
                } else {
                  const err1257 = { instancePath: instancePath + "/machine/feed/most", schemaPath: "#/$defs/feed/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1257];
                  } else {
                    vErrors.push(err1257);
                  }
                  errors++;
                }
                var _valid62 = _errs1471 === errors;
                valid387 = valid387 || _valid62;
                if (!valid387) {
                  const err1258 = { instancePath: instancePath + "/machine/feed/most", schemaPath: "#/$defs/feed/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err1258];
                  } else {
                    vErrors.push(err1258);
                  }
                  errors++;
                } else {
                  errors = _errs1468;
                  if (vErrors !== null) {
                    if (_errs1468) {
                      vErrors.length = _errs1468;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
            } else {
              const err1259 = { instancePath: instancePath + "/machine/feed", schemaPath: "#/properties/machine/properties/feed/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err1259];
              } else {
                vErrors.push(err1259);
              }
              errors++;
            }
          }
          if (data377["work-zero"] !== void 0) {
            let data475 = data377["work-zero"];
            if (data475 && typeof data475 == "object" && !Array.isArray(data475)) {
              for (const key75 in data475) {
                if (!pattern117.test(key75)) {
                  const err1260 = { instancePath: instancePath + "/machine/work-zero", schemaPath: "#/properties/machine/properties/work-zero/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key75 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err1260];
                  } else {
                    vErrors.push(err1260);
                  }
                  errors++;
                }
              }
              for (const key76 in data475) {
                if (pattern117.test(key76)) {
                  if (!validate29(data475[key76], { instancePath: instancePath + "/machine/work-zero/" + key76.replace(/~/g, "~0").replace(/\//g, "~1"), parentData: data475, parentDataProperty: key76, rootData, dynamicAnchors })) {
                    vErrors = vErrors === null ? validate29.errors : vErrors.concat(validate29.errors);
                    errors = vErrors.length;
                  }
                }
              }
            } else {
              const err1261 = { instancePath: instancePath + "/machine/work-zero", schemaPath: "#/properties/machine/properties/work-zero/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err1261];
              } else {
                vErrors.push(err1261);
              }
              errors++;
            }
          }
        } else {
          const err1262 = { instancePath: instancePath + "/machine", schemaPath: "#/properties/machine/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err1262];
          } else {
            vErrors.push(err1262);
          }
          errors++;
        }
      }
      if (data.confirm !== void 0) {
        let data477 = data.confirm;
        if (data477 && typeof data477 == "object" && !Array.isArray(data477)) {
          for (const key77 in data477) {
            if (!(key77 === "at-speed" || key77 === "stopped" || key77 === "released" || key77 === "clamped" || key77 === "air" || key77 === "hold-down")) {
              const err1263 = { instancePath: instancePath + "/confirm", schemaPath: "#/properties/confirm/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key77 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err1263];
              } else {
                vErrors.push(err1263);
              }
              errors++;
            }
          }
          if (data477["at-speed"] !== void 0) {
            let data478 = data477["at-speed"];
            const _errs1481 = errors;
            let valid390 = false;
            const _errs1482 = errors;
            if (typeof data478 !== "string") {
              const err1264 = { instancePath: instancePath + "/confirm/at-speed", schemaPath: "#/properties/confirm/properties/at-speed/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err1264];
              } else {
                vErrors.push(err1264);
              }
              errors++;
            }
            if ("operator" !== data478) {
              const err1265 = { instancePath: instancePath + "/confirm/at-speed", schemaPath: "#/properties/confirm/properties/at-speed/anyOf/0/const", keyword: "const", params: { allowedValue: "operator" }, message: "must be equal to constant" };
              if (vErrors === null) {
                vErrors = [err1265];
              } else {
                vErrors.push(err1265);
              }
              errors++;
            }
            var _valid63 = _errs1482 === errors;
            valid390 = valid390 || _valid63;
            const _errs1484 = errors;
            if (!validate41(data478, { instancePath: instancePath + "/confirm/at-speed", parentData: data477, parentDataProperty: "at-speed", rootData, dynamicAnchors })) {
              vErrors = vErrors === null ? validate41.errors : vErrors.concat(validate41.errors);
              errors = vErrors.length;
            }
            var _valid63 = _errs1484 === errors;
            valid390 = valid390 || _valid63;
            if (!valid390) {
              const err1266 = { instancePath: instancePath + "/confirm/at-speed", schemaPath: "#/properties/confirm/properties/at-speed/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err1266];
              } else {
                vErrors.push(err1266);
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
          if (data477.stopped !== void 0) {
            let data479 = data477.stopped;
            const _errs1486 = errors;
            let valid391 = false;
            const _errs1487 = errors;
            if (typeof data479 !== "string") {
              const err1267 = { instancePath: instancePath + "/confirm/stopped", schemaPath: "#/properties/confirm/properties/stopped/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err1267];
              } else {
                vErrors.push(err1267);
              }
              errors++;
            }
            if ("operator" !== data479) {
              const err1268 = { instancePath: instancePath + "/confirm/stopped", schemaPath: "#/properties/confirm/properties/stopped/anyOf/0/const", keyword: "const", params: { allowedValue: "operator" }, message: "must be equal to constant" };
              if (vErrors === null) {
                vErrors = [err1268];
              } else {
                vErrors.push(err1268);
              }
              errors++;
            }
            var _valid64 = _errs1487 === errors;
            valid391 = valid391 || _valid64;
            const _errs1489 = errors;
            if (!validate41(data479, { instancePath: instancePath + "/confirm/stopped", parentData: data477, parentDataProperty: "stopped", rootData, dynamicAnchors })) {
              vErrors = vErrors === null ? validate41.errors : vErrors.concat(validate41.errors);
              errors = vErrors.length;
            }
            var _valid64 = _errs1489 === errors;
            valid391 = valid391 || _valid64;
            if (!valid391) {
              const err1269 = { instancePath: instancePath + "/confirm/stopped", schemaPath: "#/properties/confirm/properties/stopped/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err1269];
              } else {
                vErrors.push(err1269);
              }
              errors++;
            } else {
              errors = _errs1486;
              if (vErrors !== null) {
                if (_errs1486) {
                  vErrors.length = _errs1486;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data477.released !== void 0) {
            let data480 = data477.released;
            const _errs1491 = errors;
            let valid392 = false;
            const _errs1492 = errors;
            if (typeof data480 !== "string") {
              const err1270 = { instancePath: instancePath + "/confirm/released", schemaPath: "#/properties/confirm/properties/released/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err1270];
              } else {
                vErrors.push(err1270);
              }
              errors++;
            }
            if ("operator" !== data480) {
              const err1271 = { instancePath: instancePath + "/confirm/released", schemaPath: "#/properties/confirm/properties/released/anyOf/0/const", keyword: "const", params: { allowedValue: "operator" }, message: "must be equal to constant" };
              if (vErrors === null) {
                vErrors = [err1271];
              } else {
                vErrors.push(err1271);
              }
              errors++;
            }
            var _valid65 = _errs1492 === errors;
            valid392 = valid392 || _valid65;
            const _errs1494 = errors;
            if (!validate41(data480, { instancePath: instancePath + "/confirm/released", parentData: data477, parentDataProperty: "released", rootData, dynamicAnchors })) {
              vErrors = vErrors === null ? validate41.errors : vErrors.concat(validate41.errors);
              errors = vErrors.length;
            }
            var _valid65 = _errs1494 === errors;
            valid392 = valid392 || _valid65;
            if (!valid392) {
              const err1272 = { instancePath: instancePath + "/confirm/released", schemaPath: "#/properties/confirm/properties/released/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err1272];
              } else {
                vErrors.push(err1272);
              }
              errors++;
            } else {
              errors = _errs1491;
              if (vErrors !== null) {
                if (_errs1491) {
                  vErrors.length = _errs1491;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data477.clamped !== void 0) {
            let data481 = data477.clamped;
            const _errs1496 = errors;
            let valid393 = false;
            const _errs1497 = errors;
            if (typeof data481 !== "string") {
              const err1273 = { instancePath: instancePath + "/confirm/clamped", schemaPath: "#/properties/confirm/properties/clamped/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err1273];
              } else {
                vErrors.push(err1273);
              }
              errors++;
            }
            if ("operator" !== data481) {
              const err1274 = { instancePath: instancePath + "/confirm/clamped", schemaPath: "#/properties/confirm/properties/clamped/anyOf/0/const", keyword: "const", params: { allowedValue: "operator" }, message: "must be equal to constant" };
              if (vErrors === null) {
                vErrors = [err1274];
              } else {
                vErrors.push(err1274);
              }
              errors++;
            }
            var _valid66 = _errs1497 === errors;
            valid393 = valid393 || _valid66;
            const _errs1499 = errors;
            if (!validate41(data481, { instancePath: instancePath + "/confirm/clamped", parentData: data477, parentDataProperty: "clamped", rootData, dynamicAnchors })) {
              vErrors = vErrors === null ? validate41.errors : vErrors.concat(validate41.errors);
              errors = vErrors.length;
            }
            var _valid66 = _errs1499 === errors;
            valid393 = valid393 || _valid66;
            if (!valid393) {
              const err1275 = { instancePath: instancePath + "/confirm/clamped", schemaPath: "#/properties/confirm/properties/clamped/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err1275];
              } else {
                vErrors.push(err1275);
              }
              errors++;
            } else {
              errors = _errs1496;
              if (vErrors !== null) {
                if (_errs1496) {
                  vErrors.length = _errs1496;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data477.air !== void 0) {
            let data482 = data477.air;
            const _errs1501 = errors;
            let valid394 = false;
            const _errs1502 = errors;
            if (typeof data482 !== "string") {
              const err1276 = { instancePath: instancePath + "/confirm/air", schemaPath: "#/properties/confirm/properties/air/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err1276];
              } else {
                vErrors.push(err1276);
              }
              errors++;
            }
            if ("operator" !== data482) {
              const err1277 = { instancePath: instancePath + "/confirm/air", schemaPath: "#/properties/confirm/properties/air/anyOf/0/const", keyword: "const", params: { allowedValue: "operator" }, message: "must be equal to constant" };
              if (vErrors === null) {
                vErrors = [err1277];
              } else {
                vErrors.push(err1277);
              }
              errors++;
            }
            var _valid67 = _errs1502 === errors;
            valid394 = valid394 || _valid67;
            const _errs1504 = errors;
            if (!validate41(data482, { instancePath: instancePath + "/confirm/air", parentData: data477, parentDataProperty: "air", rootData, dynamicAnchors })) {
              vErrors = vErrors === null ? validate41.errors : vErrors.concat(validate41.errors);
              errors = vErrors.length;
            }
            var _valid67 = _errs1504 === errors;
            valid394 = valid394 || _valid67;
            if (!valid394) {
              const err1278 = { instancePath: instancePath + "/confirm/air", schemaPath: "#/properties/confirm/properties/air/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err1278];
              } else {
                vErrors.push(err1278);
              }
              errors++;
            } else {
              errors = _errs1501;
              if (vErrors !== null) {
                if (_errs1501) {
                  vErrors.length = _errs1501;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data477["hold-down"] !== void 0) {
            let data483 = data477["hold-down"];
            if (data483 && typeof data483 == "object" && !Array.isArray(data483)) {
              if (data483.wait === void 0) {
                const err1279 = { instancePath: instancePath + "/confirm/hold-down", schemaPath: "#/properties/confirm/properties/hold-down/required", keyword: "required", params: { missingProperty: "wait" }, message: "must have required property 'wait'" };
                if (vErrors === null) {
                  vErrors = [err1279];
                } else {
                  vErrors.push(err1279);
                }
                errors++;
              }
              for (const key78 in data483) {
                if (!(key78 === "wait" || key78 === "timeout")) {
                  const err1280 = { instancePath: instancePath + "/confirm/hold-down", schemaPath: "#/properties/confirm/properties/hold-down/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key78 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err1280];
                  } else {
                    vErrors.push(err1280);
                  }
                  errors++;
                }
              }
              if (data483.wait !== void 0) {
                let data484 = data483.wait;
                if (typeof data484 !== "string") {
                  const err1281 = { instancePath: instancePath + "/confirm/hold-down/wait", schemaPath: "#/properties/confirm/properties/hold-down/properties/wait/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1281];
                  } else {
                    vErrors.push(err1281);
                  }
                  errors++;
                }
                if ("hold-down" !== data484) {
                  const err1282 = { instancePath: instancePath + "/confirm/hold-down/wait", schemaPath: "#/properties/confirm/properties/hold-down/properties/wait/const", keyword: "const", params: { allowedValue: "hold-down" }, message: "must be equal to constant" };
                  if (vErrors === null) {
                    vErrors = [err1282];
                  } else {
                    vErrors.push(err1282);
                  }
                  errors++;
                }
              }
              if (data483.timeout !== void 0) {
                let data485 = data483.timeout;
                if (typeof data485 === "string") {
                  if (!pattern97.test(data485)) {
                    const err1283 = { instancePath: instancePath + "/confirm/hold-down/timeout", schemaPath: "#/$defs/time/pattern", keyword: "pattern", params: { pattern: "^\\d{1,6}(\\.\\d{1,6})? ?(s|ms|min)$" }, message: 'must match pattern "^\\d{1,6}(\\.\\d{1,6})? ?(s|ms|min)$"' };
                    if (vErrors === null) {
                      vErrors = [err1283];
                    } else {
                      vErrors.push(err1283);
                    }
                    errors++;
                  }
                } else {
                  const err1284 = { instancePath: instancePath + "/confirm/hold-down/timeout", schemaPath: "#/$defs/time/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1284];
                  } else {
                    vErrors.push(err1284);
                  }
                  errors++;
                }
              }
            } else {
              const err1285 = { instancePath: instancePath + "/confirm/hold-down", schemaPath: "#/properties/confirm/properties/hold-down/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err1285];
              } else {
                vErrors.push(err1285);
              }
              errors++;
            }
          }
        } else {
          const err1286 = { instancePath: instancePath + "/confirm", schemaPath: "#/properties/confirm/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err1286];
          } else {
            vErrors.push(err1286);
          }
          errors++;
        }
      }
    } else {
      const err1287 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" };
      if (vErrors === null) {
        vErrors = [err1287];
      } else {
        vErrors.push(err1287);
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
