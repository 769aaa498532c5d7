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

  // ../../../work/main/node_modules/ajv/dist/runtime/ucs2length.js
  var require_ucs2length = __commonJS({
    "../../../work/main/node_modules/ajv/dist/runtime/ucs2length.js"(exports) {
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

  // ../../../work/main/node_modules/fast-deep-equal/index.js
  var require_fast_deep_equal = __commonJS({
    "../../../work/main/node_modules/fast-deep-equal/index.js"(exports, module) {
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

  // ../../../work/main/node_modules/ajv/dist/runtime/equal.js
  var require_equal = __commonJS({
    "../../../work/main/node_modules/ajv/dist/runtime/equal.js"(exports) {
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
  var schema31 = { "$schema": "https://json-schema.org/draft/2020-12/schema", "$id": "https://tapewright.invalid/schemas/dialect.schema.json", "title": "Dialect", "description": "What one controller and its machine want. A file states only what differs from the one that it extends; a key that no file of the chain states is never guessed: what needs it is refused.", "type": "object", "additionalProperties": false, "required": ["dialect"], "properties": { "dialect": { "title": "Name of the dialect", "description": "The name that programs, set-up sheets and findings quote. Lower case, words joined by hyphens; the file is called NAME.dialect.yaml.\n\nIf wrong: the program on the machine cannot be traced to the file that shaped it.", "type": "string", "pattern": "^[a-z0-9]+(-[a-z0-9]+)*$", "maxLength": 40, "examples": ["quarry-router"] }, "title": { "title": "Title", "description": "One line for people: which controller or machine this is.\n\nIf wrong: an operator picks the dialect of another machine.", "type": "string", "minLength": 1, "maxLength": 120, "examples": ["Six-pocket router at the quarry workshop"] }, "extends": { "title": "Extends", "description": "The dialect whose values hold wherever this file states none: the name of a shipped dialect, or a file in the same folder or below (its name ends with .yaml). Mappings are merged key by key; lists, single values and `none` replace.\n\nIf wrong: words of another controller are inherited that this one rejects or takes for something else.", "type": "string", "minLength": 1, "maxLength": 200, "examples": ["explicit-words", "base/workshop.dialect.yaml"] }, "sources": { "title": "Sources", "description": "Where the facts of this file come from: standard and section, manual and page, or what was tried at the machine.\n\nIf wrong: nobody can tell later which value was read and which was guessed.", "type": "array", "minItems": 1, "maxItems": 40, "items": { "type": "string", "minLength": 1, "maxLength": 300 }, "examples": [["NISTIR 6556, The NIST RS274/NGC Interpreter, version 3, 17 August 2000"]] }, "file": { "title": "File", "description": "The frame of the program text: file name ending, line ends, the marks at its start and end.", "type": "object", "additionalProperties": false, "properties": { "extension": { "title": "File name ending", "description": "Ending of the program file, without the dot.\n\nIf wrong: the controller does not list the file, or opens it as something else.", "type": "string", "pattern": "^[A-Za-z0-9]{1,8}$", "examples": ["nc"] }, "line-end": { "title": "Line end", "description": "What ends a line: lf (line feed), crlf (carriage return and line feed) or cr (carriage return).\n\nIf wrong: the whole file is read as one block, or each second line as an empty one.", "type": "string", "enum": ["lf", "crlf", "cr"], "examples": ["lf"] }, "last-line-end": { "title": "Line end after the last line", "description": "Whether the last line is ended, too.\n\nIf wrong: the last block, the end of the program, is ignored.", "$ref": "#/$defs/yesNo", "examples": ["yes"] }, "end-of-block": { "title": "End-of-block mark", "description": "A visible mark at the end of each block: none, semicolon or asterisk.\n\nIf wrong: `;` starts a comment on some controllers, so that the rest of the block is dropped; `*` is an error on others.", "type": "string", "enum": ["none", "semicolon", "asterisk"], "examples": ["none"] }, "delimiter": { "title": "Program delimiter", "description": "Whether a line with `%` alone stands first and last.\n\nIf wrong: the controller finds no start or no end of the program and refuses the transfer.", "type": "string", "enum": ["none", "percent"], "examples": ["percent"] }, "program-number": { "title": "Program number", "description": "How the program is identified by a number of its own, or none. Where it is stated, a job must have a number in the range.", "anyOf": [{ "title": "None", "description": "Programs have no number; the file name tells them apart.", "type": "string", "const": "none" }, { "type": "object", "additionalProperties": false, "properties": { "letter": { "title": "Letter of the program number", "description": "The address of the number.\n\nIf wrong: the line is refused, or a program of another number is overwritten.", "type": "string", "enum": ["O", ":", "%"], "examples": ["O"] }, "digits": { "title": "Digits of the program number", "description": "Least digits; zeros are put in front.\n\nUnit: digits.\n\nIf wrong: the controller takes the program for another one, or refuses it.", "type": "integer", "minimum": 1, "maximum": 8, "examples": [4] }, "from": { "title": "Lowest program number", "description": "Lowest number that is free for programs.\n\nUnit: program number.\n\nIf wrong: a program that the builder protects is overwritten, or the transfer is refused.", "type": "integer", "minimum": 0, "maximum": 99999999, "examples": [1] }, "to": { "title": "Highest program number", "description": "Highest number that is free for programs; many controls keep the 8000s or 9000s to themselves.\n\nUnit: program number.\n\nIf wrong: a cycle or macro of the builder is overwritten.", "type": "integer", "minimum": 0, "maximum": 99999999, "examples": [7999] } } }], "examples": ["none", { "letter": "O", "digits": 4, "from": 1, "to": 7999 }] }, "characters": { "title": "Characters", "description": "What the text may hold: upper (capital letters, digits and the marks of the code, in comments, too), ascii, or utf-8 (any character in comments).\n\nIf wrong: the block is rejected, or the comment on the screen is garbled so that an instruction to the operator is lost.", "type": "string", "enum": ["upper", "ascii", "utf-8"], "examples": ["upper"] } }, "examples": [{ "extension": "nc", "line-end": "lf", "delimiter": "percent" }] }, "comments": { "title": "Comments", "description": "How text for people is set apart from the code.", "type": "object", "additionalProperties": false, "properties": { "style": { "title": "Comment style", "description": "parentheses: ( ... ); semicolon: from ; to the end of the line; none: the controller takes no comments, and messages to the operator cannot be written.\n\nIf wrong: the text is executed as code, or the block alarms.", "type": "string", "enum": ["parentheses", "semicolon", "none"], "examples": ["parentheses"] }, "longest": { "title": "Longest comment", "description": "Most characters of one comment, its marks not counted. Longer text is cut.\n\nUnit: characters.\n\nIf wrong: the block alarms, or the end of an instruction to the operator is missing.", "type": "integer", "minimum": 8, "maximum": 200, "examples": [60] } }, "examples": [{ "style": "parentheses", "longest": 60 }] }, "blocks": { "title": "Blocks", "description": "How words make up a block and blocks follow one another.", "type": "object", "additionalProperties": false, "properties": { "number": { "title": "Block numbers", "description": "Which blocks have a number (N word), or none.", "anyOf": [{ "title": "None", "description": "No block has a number.", "type": "string", "const": "none" }, { "type": "object", "additionalProperties": false, "properties": { "on": { "title": "Numbered blocks", "description": "all: every block; sections: only the first block of each operation.\n\nIf wrong: block search and restart do not find the place.", "type": "string", "enum": ["all", "sections"], "examples": ["all"] }, "start": { "title": "First block number", "description": "Number of the first numbered block, and of the first one after the highest was reached.\n\nUnit: block number.\n\nIf wrong: a number that the controller reserves is used.", "type": "integer", "minimum": 0, "maximum": 99999999, "examples": [10] }, "step": { "title": "Step of block numbers", "description": "Difference from one numbered block to the next.\n\nUnit: block numbers.\n\nIf wrong: no free numbers for a block put in at the machine.", "type": "integer", "minimum": 1, "maximum": 1e3, "examples": [10] }, "to": { "title": "Highest block number", "description": "After it numbers begin again at the first.\n\nUnit: block number.\n\nIf wrong: the controller alarms in the middle of the program.", "type": "integer", "minimum": 1, "maximum": 99999999, "examples": [99990] }, "width": { "title": "Digits of block numbers", "description": "Least digits, zeros put in front; 0: as many as needed.\n\nUnit: digits.\n\nIf wrong: the number is not recognised.", "type": "integer", "minimum": 0, "maximum": 8, "examples": [0] } } }], "examples": ["none", { "on": "all", "start": 10, "step": 10, "to": 99990, "width": 0 }] }, "separator": { "title": "Separator", "description": "What stands between two words: none, blank or tab.\n\nIf wrong: words that run together are misread, or a blank counts against the length of the block.", "type": "string", "enum": ["none", "blank", "tab"], "examples": ["blank"] }, "order": { "title": "Word order", "description": "Letters in the order in which a block has them, each once. Every letter that the dialect writes must stand here.\n\nIf wrong: a controller with a fixed order ignores or misreads the word that stands in the wrong place.", "type": "array", "minItems": 3, "maxItems": 26, "uniqueItems": true, "items": { "$ref": "#/$defs/letter" }, "examples": [["N", "G", "X", "Y", "Z", "A", "B", "C", "I", "J", "K", "R", "P", "Q", "F", "S", "T", "H", "D", "M"]] }, "longest": { "title": "Longest block", "description": "Most characters of a block, its line end not counted, or none.\n\nUnit: characters.\n\nIf wrong: the block is cut short: in the worst case a coordinate loses its last digits and the axis goes to another place without an alarm.", "anyOf": [{ "title": "None", "description": "Any length.", "type": "string", "const": "none" }, { "type": "integer", "minimum": 20, "maximum": 4e3 }], "examples": [80] }, "g-words": { "title": "G words in a block", "description": "one: a single G word; any: one of each modal group.\n\nIf wrong: the last one wins without a word, or the block alarms.", "type": "string", "enum": ["one", "any"], "examples": ["any"] }, "m-words": { "title": "M words in a block", "description": "Most M words in one block.\n\nUnit: words.\n\nIf wrong: only the first or the last one acts: coolant or spindle is missing.", "type": "integer", "minimum": 1, "maximum": 8, "examples": [1] }, "modes": { "title": "Modes in a block", "description": "together: modes that are set one after another share a block (as far as g-words allows); apart: each has a block of its own.\n\nIf wrong: a mode is dropped: the program runs in the wrong plane, units or offset.", "type": "string", "enum": ["together", "apart"], "examples": ["together"] }, "delete": { "title": "Block delete", "description": "Whether the controller understands `/` at the start of a block. Programs are written without it; it is accepted in programs that are read.\n\nIf wrong: a block that should be skipped is executed, or the other way round.", "$ref": "#/$defs/yesNo", "examples": ["yes"] }, "stops-act": { "title": "When stops act", "description": "Whether spindle stop and coolant off act before or after the motion in their block; program stop and program end act after it in any case. They are written in blocks of their own; this decides what a program from elsewhere means.\n\nIf wrong: the spindle stops and the tool is then driven through the material.", "type": "string", "enum": ["before-motion", "after-motion"], "examples": ["after-motion"] } }, "examples": [{ "number": "none", "separator": "blank", "longest": 80, "g-words": "any", "m-words": 1 }] }, "numbers": { "title": "Numbers", "description": "How numbers are written. `point`, `trailing-zeros`, `leading-zero`, `plus`, `suppressed-zeros` and `digits` hold for all; a single address may state its own.", "type": "object", "additionalProperties": false, "properties": { "point": { "title": "Decimal point", "description": "always: every number with decimals has a point; when-needed: whole numbers have none; never: the point is implied, and the number counts least increments.\n\nIf wrong: a control that counts least increments reads X50 as 0.050 mm; the opposite mistake moves a thousand times too far.", "type": "string", "enum": ["always", "when-needed", "never"], "examples": ["always"] }, "trailing-zeros": { "title": "Zeros at the end", "description": "keep: 1.500; drop: 1.5 and 10.; one: 1.5 and 10.0 (at least one digit behind the point).\n\nIf wrong: a number without decimals may be read in least increments.", "type": "string", "enum": ["keep", "drop", "one"], "examples": ["keep"] }, "leading-zero": { "title": "Zero before the point", "description": "keep: 0.5; drop: .5\n\nIf wrong: the word is a syntax error.", "type": "string", "enum": ["keep", "drop"], "examples": ["keep"] }, "plus": { "title": "Plus sign", "description": "Whether a positive number with a direction (axes, arc centres) has a + sign.\n\nIf wrong: the word is a syntax error, or an old control takes it as unsigned.", "$ref": "#/$defs/yesNo", "examples": ["no"] }, "suppressed-zeros": { "title": "Zeros left out", "description": "With an implied point: which zeros are left out. leading: X12500 is 12.500; trailing: the number is read from the left; none: all digits stand.\n\nIf wrong: every coordinate is wrong by powers of ten.", "type": "string", "enum": ["leading", "trailing", "none"], "examples": ["leading"] }, "digits": { "title": "Digits of a number", "description": "With an implied point: how many digits a number has before zeros at its end are left out.\n\nUnit: digits.\n\nIf wrong: every coordinate is wrong by powers of ten.", "type": "integer", "minimum": 1, "maximum": 12, "examples": [7] }, "length": { "title": "Axis words", "description": "Numbers of X Y Z, and of the levels and pecks of cycles. Digits behind the point, by the units of the program; the mapping may also state how this number differs from the rest.", "type": "object", "additionalProperties": false, "properties": { "mm": { "title": "Decimals in millimetres", "description": "Digits behind the point in a program in millimetres: 3 means a least increment of 0.001 mm.\n\nUnit: digits behind the point of a length in mm.\n\nIf wrong: the controller rejects a number with too many digits, or rounds it by itself, so that arcs no longer end where they should.", "type": "integer", "minimum": 0, "maximum": 7, "examples": [3] }, "inch": { "title": "Decimals in inches", "description": "Digits behind the point in a program in inches: 4 means a least increment of 0.0001 inch.\n\nUnit: digits behind the point of a length in inch.\n\nIf wrong: the controller rejects a number with too many digits, or rounds it by itself, so that arcs no longer end where they should.", "type": "integer", "minimum": 0, "maximum": 6, "examples": [4] }, "point": { "$ref": "#/$defs/own-point" }, "trailing-zeros": { "$ref": "#/$defs/own-trailing-zeros" }, "leading-zero": { "$ref": "#/$defs/own-leading-zero" }, "plus": { "$ref": "#/$defs/own-plus" }, "suppressed-zeros": { "$ref": "#/$defs/own-suppressed-zeros" }, "digits": { "$ref": "#/$defs/own-digits" } }, "examples": [{ "mm": 3, "inch": 4 }] }, "arc-centre": { "title": "Arc centre and radius words", "description": "Numbers of I J K and of the radius. Digits behind the point, by the units of the program; the mapping may also state how this number differs from the rest.", "type": "object", "additionalProperties": false, "properties": { "mm": { "title": "Decimals in millimetres", "description": "Digits behind the point in a program in millimetres: 3 means a least increment of 0.001 mm.\n\nUnit: digits behind the point of a length in mm.\n\nIf wrong: start and end of an arc differ in radius: the controller alarms, or steps on the part.", "type": "integer", "minimum": 0, "maximum": 7, "examples": [3] }, "inch": { "title": "Decimals in inches", "description": "Digits behind the point in a program in inches: 4 means a least increment of 0.0001 inch.\n\nUnit: digits behind the point of a length in inch.\n\nIf wrong: start and end of an arc differ in radius: the controller alarms, or steps on the part.", "type": "integer", "minimum": 0, "maximum": 6, "examples": [4] }, "point": { "$ref": "#/$defs/own-point" }, "trailing-zeros": { "$ref": "#/$defs/own-trailing-zeros" }, "leading-zero": { "$ref": "#/$defs/own-leading-zero" }, "plus": { "$ref": "#/$defs/own-plus" }, "suppressed-zeros": { "$ref": "#/$defs/own-suppressed-zeros" }, "digits": { "$ref": "#/$defs/own-digits" } }, "examples": [{ "mm": 3, "inch": 4 }] }, "angle": { "title": "Rotary words", "description": "Numbers of A B C. Either the digits behind the point, or a mapping that also states how this number differs from the rest.\n\nUnit: digits behind the point of an angle in degrees.\n\nIf wrong: the rotary axis stands short of or past its place.", "anyOf": [{ "type": "integer", "minimum": 0, "maximum": 7 }, { "type": "object", "additionalProperties": false, "properties": { "decimals": { "title": "Digits behind the point", "description": "The least increment as a number of decimals.\n\nUnit: digits.\n\nIf wrong: the rotary axis stands short of or past its place.", "type": "integer", "minimum": 0, "maximum": 7, "examples": [3] }, "point": { "$ref": "#/$defs/own-point" }, "trailing-zeros": { "$ref": "#/$defs/own-trailing-zeros" }, "leading-zero": { "$ref": "#/$defs/own-leading-zero" }, "plus": { "$ref": "#/$defs/own-plus" }, "suppressed-zeros": { "$ref": "#/$defs/own-suppressed-zeros" }, "digits": { "$ref": "#/$defs/own-digits" } } }], "examples": [3] }, "feed-per-minute": { "title": "Feed per minute", "description": "Numbers of F in feed per minute. Digits behind the point, by the units of the program; the mapping may also state how this number differs from the rest.", "type": "object", "additionalProperties": false, "properties": { "mm": { "title": "Decimals in millimetres", "description": "Digits behind the point in a program in millimetres: 3 means a least increment of 0.001 mm.\n\nUnit: digits behind the point of a feed in mm a minute.\n\nIf wrong: the feed is rejected, or a decimal is dropped and the tool moves ten times too fast.", "type": "integer", "minimum": 0, "maximum": 7, "examples": [1] }, "inch": { "title": "Decimals in inches", "description": "Digits behind the point in a program in inches: 4 means a least increment of 0.0001 inch.\n\nUnit: digits behind the point of a feed in inch a minute.\n\nIf wrong: the feed is rejected, or a decimal is dropped and the tool moves ten times too fast.", "type": "integer", "minimum": 0, "maximum": 6, "examples": [2] }, "point": { "$ref": "#/$defs/own-point" }, "trailing-zeros": { "$ref": "#/$defs/own-trailing-zeros" }, "leading-zero": { "$ref": "#/$defs/own-leading-zero" }, "plus": { "$ref": "#/$defs/own-plus" }, "suppressed-zeros": { "$ref": "#/$defs/own-suppressed-zeros" }, "digits": { "$ref": "#/$defs/own-digits" } }, "examples": [{ "mm": 1, "inch": 2 }] }, "feed-per-revolution": { "title": "Feed per revolution", "description": "Numbers of F in feed per revolution. Digits behind the point, by the units of the program; the mapping may also state how this number differs from the rest.", "type": "object", "additionalProperties": false, "properties": { "mm": { "title": "Decimals in millimetres", "description": "Digits behind the point in a program in millimetres: 3 means a least increment of 0.001 mm.\n\nUnit: digits behind the point of a feed in mm a revolution.\n\nIf wrong: a feed of 0.08 becomes 0, or is taken as 8.", "type": "integer", "minimum": 0, "maximum": 7, "examples": [3] }, "inch": { "title": "Decimals in inches", "description": "Digits behind the point in a program in inches: 4 means a least increment of 0.0001 inch.\n\nUnit: digits behind the point of a feed in inch a revolution.\n\nIf wrong: a feed of 0.08 becomes 0, or is taken as 8.", "type": "integer", "minimum": 0, "maximum": 6, "examples": [4] }, "point": { "$ref": "#/$defs/own-point" }, "trailing-zeros": { "$ref": "#/$defs/own-trailing-zeros" }, "leading-zero": { "$ref": "#/$defs/own-leading-zero" }, "plus": { "$ref": "#/$defs/own-plus" }, "suppressed-zeros": { "$ref": "#/$defs/own-suppressed-zeros" }, "digits": { "$ref": "#/$defs/own-digits" } }, "examples": [{ "mm": 3, "inch": 4 }] }, "inverse-time": { "title": "Inverse-time feed", "description": "Numbers of F in inverse time. Either the digits behind the point, or a mapping that also states how this number differs from the rest.\n\nUnit: digits behind the point of a feed in 1/min.\n\nIf wrong: the tool moves at a multiple or a fraction of the feed.", "anyOf": [{ "type": "integer", "minimum": 0, "maximum": 7 }, { "type": "object", "additionalProperties": false, "properties": { "decimals": { "title": "Digits behind the point", "description": "The least increment as a number of decimals.\n\nUnit: digits.\n\nIf wrong: the tool moves at a multiple or a fraction of the feed.", "type": "integer", "minimum": 0, "maximum": 7, "examples": [4] }, "point": { "$ref": "#/$defs/own-point" }, "trailing-zeros": { "$ref": "#/$defs/own-trailing-zeros" }, "leading-zero": { "$ref": "#/$defs/own-leading-zero" }, "plus": { "$ref": "#/$defs/own-plus" }, "suppressed-zeros": { "$ref": "#/$defs/own-suppressed-zeros" }, "digits": { "$ref": "#/$defs/own-digits" } } }], "examples": [4] }, "speed": { "title": "Spindle speed", "description": "Numbers of S. Either the digits behind the point, or a mapping that also states how this number differs from the rest.\n\nUnit: digits behind the point of a speed in rpm.\n\nIf wrong: the block alarms, or the speed is cut to a multiple.", "anyOf": [{ "type": "integer", "minimum": 0, "maximum": 7 }, { "type": "object", "additionalProperties": false, "properties": { "decimals": { "title": "Digits behind the point", "description": "The least increment as a number of decimals.\n\nUnit: digits.\n\nIf wrong: the block alarms, or the speed is cut to a multiple.", "type": "integer", "minimum": 0, "maximum": 7, "examples": [0] }, "point": { "$ref": "#/$defs/own-point" }, "trailing-zeros": { "$ref": "#/$defs/own-trailing-zeros" }, "leading-zero": { "$ref": "#/$defs/own-leading-zero" }, "plus": { "$ref": "#/$defs/own-plus" }, "suppressed-zeros": { "$ref": "#/$defs/own-suppressed-zeros" }, "digits": { "$ref": "#/$defs/own-digits" } } }], "examples": [0] }, "dwell": { "title": "Dwell", "description": "Number of the dwell, counted in `dwell.unit`. Either the digits behind the point, or a mapping that also states how this number differs from the rest.\n\nUnit: digits behind the point of a time in `dwell.unit`.\n\nIf wrong: a dwell of 0.5 becomes 0 and the spindle has not come up to speed.", "anyOf": [{ "type": "integer", "minimum": 0, "maximum": 7 }, { "type": "object", "additionalProperties": false, "properties": { "decimals": { "title": "Digits behind the point", "description": "The least increment as a number of decimals.\n\nUnit: digits.\n\nIf wrong: a dwell of 0.5 becomes 0 and the spindle has not come up to speed.", "type": "integer", "minimum": 0, "maximum": 7, "examples": [2] }, "point": { "$ref": "#/$defs/own-point" }, "trailing-zeros": { "$ref": "#/$defs/own-trailing-zeros" }, "leading-zero": { "$ref": "#/$defs/own-leading-zero" }, "plus": { "$ref": "#/$defs/own-plus" }, "suppressed-zeros": { "$ref": "#/$defs/own-suppressed-zeros" }, "digits": { "$ref": "#/$defs/own-digits" } } }], "examples": [2] }, "cycle-dwell": { "title": "Dwell in a cycle", "description": "Number of the dwell at the bottom of a hole, counted in `cycles.words.dwell-unit`. Either the digits behind the point, or a mapping that also states how this number differs from the rest.\n\nUnit: digits behind the point of a time in `cycles.words.dwell-unit`.\n\nIf wrong: no dwell, or a very long one with the tool rubbing in the hole.", "anyOf": [{ "type": "integer", "minimum": 0, "maximum": 7 }, { "type": "object", "additionalProperties": false, "properties": { "decimals": { "title": "Digits behind the point", "description": "The least increment as a number of decimals.\n\nUnit: digits.\n\nIf wrong: no dwell, or a very long one with the tool rubbing in the hole.", "type": "integer", "minimum": 0, "maximum": 7, "examples": [2] }, "point": { "$ref": "#/$defs/own-point" }, "trailing-zeros": { "$ref": "#/$defs/own-trailing-zeros" }, "leading-zero": { "$ref": "#/$defs/own-leading-zero" }, "plus": { "$ref": "#/$defs/own-plus" }, "suppressed-zeros": { "$ref": "#/$defs/own-suppressed-zeros" }, "digits": { "$ref": "#/$defs/own-digits" } } }], "examples": [2] }, "timeout": { "title": "Timeout of a wait", "description": "Number of the timeout, counted in `wait.timeout-unit`. Either the digits behind the point, or a mapping that also states how this number differs from the rest.\n\nUnit: digits behind the point of a time in `wait.timeout-unit`.\n\nIf wrong: the wait gives up at once, or hangs for minutes with the fault unseen.", "anyOf": [{ "type": "integer", "minimum": 0, "maximum": 7 }, { "type": "object", "additionalProperties": false, "properties": { "decimals": { "title": "Digits behind the point", "description": "The least increment as a number of decimals.\n\nUnit: digits.\n\nIf wrong: the wait gives up at once, or hangs for minutes with the fault unseen.", "type": "integer", "minimum": 0, "maximum": 7, "examples": [1] }, "point": { "$ref": "#/$defs/own-point" }, "trailing-zeros": { "$ref": "#/$defs/own-trailing-zeros" }, "leading-zero": { "$ref": "#/$defs/own-leading-zero" }, "plus": { "$ref": "#/$defs/own-plus" }, "suppressed-zeros": { "$ref": "#/$defs/own-suppressed-zeros" }, "digits": { "$ref": "#/$defs/own-digits" } } }], "examples": [1] }, "code-width": { "title": "Least digits of codes", "description": "Least digits of codes and of tool and offset numbers; zeros are put in front: 2 writes G00, M06, T01.", "type": "object", "additionalProperties": false, "properties": { "G": { "title": "Digits of G words", "description": "Least digits of a G code before its point.\n\nUnit: digits.\n\nIf wrong: the code is not recognised.", "type": "integer", "minimum": 1, "maximum": 4, "examples": [2] }, "M": { "title": "Digits of M words", "description": "Least digits of an M code.\n\nUnit: digits.\n\nIf wrong: the code is not recognised.", "type": "integer", "minimum": 1, "maximum": 4, "examples": [2] }, "T": { "title": "Digits of T words", "description": "Least digits of a tool number.\n\nUnit: digits.\n\nIf wrong: a number with too few digits selects another tool or carries no offset.", "type": "integer", "minimum": 1, "maximum": 4, "examples": [2] }, "H": { "title": "Digits of H words", "description": "Least digits of the number of a length offset.\n\nUnit: digits.\n\nIf wrong: the length of another tool acts, and the tool is driven into the work.", "type": "integer", "minimum": 1, "maximum": 4, "examples": [2] }, "D": { "title": "Digits of D words", "description": "Least digits of the number of a radius offset.\n\nUnit: digits.\n\nIf wrong: the radius of another tool acts, and the contour is gouged.", "type": "integer", "minimum": 1, "maximum": 4, "examples": [2] } }, "examples": [{ "G": 2, "M": 2, "T": 2, "H": 2, "D": 2 }] } }, "examples": [{ "point": "always", "trailing-zeros": "keep", "length": { "mm": 3, "inch": 4 } }] }, "modal": { "title": "Modal words", "description": "Which words are repeated although they have not changed.", "type": "object", "additionalProperties": false, "properties": { "motion": { "title": "Motion word", "description": "modal: written when the kind of motion changes; each-block: in every block with axis words.\n\nIf wrong: without its motion word a block does nothing, or is run as the last motion: a rapid where a feed was meant.", "type": "string", "enum": ["modal", "each-block"], "examples": ["modal"] }, "axes": { "title": "Axis words", "description": "changed: only axes that move; all: every axis whose place is known.\n\nIf wrong: an axis left out is taken as 0 or stays where it was.", "type": "string", "enum": ["changed", "all"], "examples": ["changed"] }, "arc-end": { "title": "End of an arc", "description": "changed: only the end coordinates that differ; both: both axes of the plane.\n\nIf wrong: the arc is refused, or ends at another place.", "type": "string", "enum": ["changed", "both"], "examples": ["changed"] }, "arc-centre": { "title": "Zeros in an arc centre", "description": "non-zero: a centre word of 0 is left out; both: both are written.\n\nIf wrong: `centre missing` alarm, or the last centre is used and the arc runs wild.", "type": "string", "enum": ["non-zero", "both"], "examples": ["both"] }, "feed": { "title": "Feed word", "description": "modal: when the feed changes; after-rapid: also in the first feed block after a rapid; each-block: in every feed block.\n\nIf wrong: the block alarms for want of a feed, or an old feed is used.", "type": "string", "enum": ["modal", "after-rapid", "each-block"], "examples": ["modal"] } }, "examples": [{ "motion": "modal", "axes": "changed", "arc-end": "changed", "arc-centre": "both", "feed": "modal" }] }, "axes": { "title": "Letters of the axes", "description": "The letters by which the controller knows the axes of ISO 841, where Z is the axis of the spindle.", "type": "object", "additionalProperties": false, "axes": [56], "properties": { "x": { "title": "Letter of X", "description": "Letter of the linear axis X of ISO 841.\n\nIf wrong: another axis moves.", "$ref": "#/$defs/axisLetter", "examples": ["X"] }, "y": { "title": "Letter of Y", "description": "Letter of the linear axis Y of ISO 841.\n\nIf wrong: another axis moves.", "$ref": "#/$defs/axisLetter", "examples": ["Y"] }, "z": { "title": "Letter of Z", "description": "Letter of the linear axis Z of ISO 841.\n\nIf wrong: another axis moves.", "$ref": "#/$defs/axisLetter", "examples": ["Z"] }, "a": { "title": "Letter of A", "description": "Letter of the rotary axis A of ISO 841.\n\nIf wrong: another axis moves.", "$ref": "#/$defs/axisLetter", "examples": ["A"] }, "b": { "title": "Letter of B", "description": "Letter of the rotary axis B of ISO 841.\n\nIf wrong: another axis moves.", "$ref": "#/$defs/axisLetter", "examples": ["B"] }, "c": { "title": "Letter of C", "description": "Letter of the rotary axis C of ISO 841.\n\nIf wrong: another axis moves.", "$ref": "#/$defs/axisLetter", "examples": ["C"] } }, "examples": [{ "x": "X", "y": "Y", "z": "W" }] }, "motion": { "title": "Straight motion", "description": "Rapid and straight motion.", "type": "object", "additionalProperties": false, "properties": { "rapid": { "title": "Rapid", "description": "Code of the rapid.\n\nIf wrong: a rapid is run as a feed, or a feed as a rapid into the work.", "$ref": "#/$defs/codeOrNone", "examples": ["G0"] }, "line": { "title": "Straight line at feed", "description": "Code of a straight line at feed.\n\nIf wrong: a feed is run as a rapid into the work.", "$ref": "#/$defs/codeOrNone", "examples": ["G1"] }, "rapids": { "title": "Path of a rapid", "description": "straight: all axes arrive together on a straight path; dog-leg: each runs at its own rate. With dog-leg, a rapid that changes Z and X or Y is split: rising Z first, falling Z last.\n\nIf wrong: on a dog-leg the tool sweeps through a clamp that lies beside the straight path.", "type": "string", "enum": ["straight", "dog-leg"], "examples": ["dog-leg"] }, "rapid-axes": { "title": "Axes of a rapid", "description": "together: a rapid moves all its axes in one block; one-at-a-time: each has a block of its own, rising Z first, falling Z last. Between the holes of a fixed cycle the controller moves as it does.\n\nIf wrong: the tool sweeps through a clamp on a path that nobody has looked at.", "type": "string", "enum": ["together", "one-at-a-time"], "axes": [60], "examples": ["together"] }, "axes-at-once": { "title": "Axes that move at once", "description": "The most axes that one block may move. A job with a line or a helix that moves more is refused; rapids are split, rising Z first, falling Z last.\n\nUnit: axes.\n\nIf wrong: the block alarms, or an axis is left behind and the tool cuts elsewhere.", "type": "integer", "minimum": 2, "maximum": 6, "axes": [62], "examples": [3] }, "rapid-feed": { "title": "Rapid as a feed", "description": "For a controller without rapids (`rapid: none`): the feed of the straight lines that take their place, or none. A line at exactly this feed is a rapid; a job with a feed as fast is refused, and so is one with feeds other than a minute.\n\nUnit: mm/min, or with `in/min`.\n\nIf wrong: rapids creep, or the tool is dragged through the work at the speed of a rapid.", "anyOf": [{ "type": "string", "const": "none" }, { "$ref": "#/$defs/feed" }], "axes": [61], "examples": ["none", 6e3] }, "machine-move-lasts": { "title": "How long a move in machine coordinates lasts", "description": "block: the code of `machine-move` acts in its own block alone; until-work-offset: it suspends the work offset, and all motion is in machine coordinates until a work offset is stated anew.\n\nIf wrong: the tool goes to places of the work as if they were places of the machine.", "type": "string", "enum": ["block", "until-work-offset"], "axes": [52], "examples": ["block"] } }, "examples": [{ "rapid": "G0", "line": "G1", "rapids": "dog-leg" }] }, "units": { "title": "Units", "description": "Words for the units of the program.", "type": "object", "additionalProperties": false, "properties": { "mm": { "title": "Millimetres", "description": "Code for millimetres, or none where the controller has no word for it.\n\nIf wrong: everything is 25.4 times too small or too large.", "$ref": "#/$defs/codeOrNone", "examples": ["G21", "none"] }, "inch": { "title": "Inches", "description": "Code for inches, or none where the controller has no word for it.\n\nIf wrong: everything is 25.4 times too small or too large.", "$ref": "#/$defs/codeOrNone", "examples": ["G20", "none"] }, "programs-in": { "title": "Units of programs", "description": "job: a program is in the units of its job; mm or inch: always in these.\n\nIf wrong: everything is 25.4 times too small or too large.", "type": "string", "enum": ["job", "mm", "inch"], "examples": ["job"] }, "stated": { "title": "Where units are stated", "description": "with-modes: in the first block or any other, with other modes; first-block: alone in the first block of the program, and nowhere else.\n\nIf wrong: the block alarms, or offsets are taken in the other units.", "type": "string", "enum": ["with-modes", "first-block"], "axes": [49], "examples": ["with-modes"] } }, "examples": [{ "mm": "G21", "inch": "G20", "programs-in": "job" }] }, "plane": { "title": "Planes", "description": "Words that select the plane of arcs, cycles and compensation.", "type": "object", "additionalProperties": false, "properties": { "xy": { "title": "XY plane", "description": "Code of the XY plane.\n\nIf wrong: arcs run in another plane: the tool dives into the work.", "$ref": "#/$defs/codeOrNone", "examples": ["G17"] }, "zx": { "title": "ZX plane", "description": "Code of the ZX plane.\n\nIf wrong: arcs run in another plane: the tool dives into the work.", "$ref": "#/$defs/codeOrNone", "examples": ["G18"] }, "yz": { "title": "YZ plane", "description": "Code of the YZ plane.\n\nIf wrong: arcs run in another plane: the tool dives into the work.", "$ref": "#/$defs/codeOrNone", "examples": ["G19"] } }, "examples": [{ "xy": "G17", "zx": "G18", "yz": "G19" }] }, "distance": { "title": "Absolute and incremental", "description": "Words for absolute and incremental coordinates.", "type": "object", "additionalProperties": false, "properties": { "absolute": { "title": "Absolute", "description": "Code for absolute coordinates.\n\nIf wrong: places are taken as distances and the tool runs off.", "$ref": "#/$defs/codeOrNone", "examples": ["G90"] }, "incremental": { "title": "Incremental", "description": "Code for incremental coordinates.\n\nIf wrong: distances are taken as places.", "$ref": "#/$defs/codeOrNone", "examples": ["G91"] }, "programs-in": { "title": "Coordinates of programs", "description": "Whether programs are written with absolute or incremental coordinates.\n\nIf wrong: places are taken as distances and the tool runs off.", "type": "string", "enum": ["absolute", "incremental"], "examples": ["absolute"] } }, "examples": [{ "absolute": "G90", "incremental": "G91", "programs-in": "absolute" }] }, "arc": { "title": "Arcs", "description": "Circular motion.", "type": "object", "additionalProperties": false, "properties": { "cw": { "title": "Arc clockwise", "description": "Code of an arc clockwise seen from the + end of the axis across the plane.\n\nIf wrong: the arc runs the other way round.", "$ref": "#/$defs/codeOrNone", "examples": ["G2"] }, "ccw": { "title": "Arc counter-clockwise", "description": "Code of an arc counter-clockwise.\n\nIf wrong: the arc runs the other way round.", "$ref": "#/$defs/codeOrNone", "examples": ["G3"] }, "form": { "title": "Form of an arc", "description": "incremental-centre: I J K from the start point; absolute-centre: I J K as coordinates; radius: a radius word, negative above 180 degrees; none: arcs are not understood, and chords take their place.\n\nIf wrong: the centre lies elsewhere: a wild circle through work and clamps.", "type": "string", "enum": ["incremental-centre", "absolute-centre", "radius", "none"], "examples": ["incremental-centre"] }, "centre-words": { "title": "Arc centre modes", "description": "Words that choose absolute or incremental arc centres, where the controller has them.", "type": "object", "additionalProperties": false, "properties": { "absolute": { "title": "Absolute arc centres", "description": "Code for absolute arc centres, or none.\n\nIf wrong: the centre lies elsewhere: a wild circle.", "$ref": "#/$defs/codeOrNone", "examples": ["none", "G90.1"] }, "incremental": { "title": "Incremental arc centres", "description": "Code for incremental arc centres, or none.\n\nIf wrong: the centre lies elsewhere: a wild circle.", "$ref": "#/$defs/codeOrNone", "examples": ["none", "G91.1"] } }, "examples": [{ "absolute": "none", "incremental": "none" }] }, "radius-word": { "title": "Radius word", "description": "Letter of the radius, where `form` is radius.\n\nIf wrong: the arc is refused.", "$ref": "#/$defs/letter", "examples": ["R"] }, "planes": { "title": "Planes with arcs", "description": "The planes in which arcs are understood. Arcs in others become chords, or are refused.\n\nIf wrong: the block alarms, or the arc is cut in another plane.", "type": "array", "maxItems": 3, "uniqueItems": true, "items": { "type": "string", "enum": ["xy", "zx", "yz"] }, "examples": [["xy", "zx", "yz"]] }, "largest-sweep": { "title": "Largest sweep", "description": "Largest sweep of an arc in one block; larger ones are split.\n\nUnit: degrees.\n\nIf wrong: the arc takes the short way instead of the long one.", "type": "number", "exclusiveMinimum": 0, "maximum": 360, "examples": [360] }, "full-circle": { "title": "Full circle", "description": "Whether one block can be a full circle.\n\nIf wrong: nothing is cut, or a whole circle where nothing was meant.", "$ref": "#/$defs/yesNo", "examples": ["yes"] }, "helix": { "title": "Helix", "description": "Whether the third axis may move during an arc.\n\nIf wrong: the third axis plunges before or after the arc.", "$ref": "#/$defs/yesNo", "examples": ["yes"] }, "turns-word": { "title": "Turns word", "description": "Letter of the word for the number of turns of a helix, or none: one turn a block.\n\nIf wrong: the helix is cut with one turn and a steep plunge.", "$ref": "#/$defs/letterOrNone", "examples": ["none"] }, "feed-along": { "title": "Feed on a helix", "description": "What F means on a helix: path, the speed along the helix; circle, the speed along its circle seen from above.\n\nIf wrong: the tool moves up to several times faster than meant on a steep helix.", "type": "string", "enum": ["path", "circle"], "examples": ["path"] }, "smallest-radius": { "title": "Smallest radius", "description": "Arcs with a smaller radius become chords, or none.\n\nUnit: mm, or with `in`.\n\nIf wrong: the arc alarms or becomes a dwell mark.", "$ref": "#/$defs/lengthOrNone", "examples": ["none", 0.05] }, "largest-radius": { "title": "Largest radius", "description": "Arcs with a larger radius become chords, or none.\n\nUnit: mm, or with `in`.\n\nIf wrong: the arc alarms.", "$ref": "#/$defs/lengthOrNone", "examples": ["none", 5e3] }, "tolerance": { "title": "Radius tolerance", "description": "How far the radius at the start and at the end of an arc may differ before the controller alarms.", "type": "object", "additionalProperties": false, "properties": { "mm": { "title": "Tolerance in millimetres", "description": "In a program in millimetres.\n\nUnit: mm.\n\nIf wrong: the program stops in the middle of a cut, or the controller steps to the end point on the part.", "type": "number", "minimum": 0, "maximum": 10, "examples": [2e-3] }, "inch": { "title": "Tolerance in inches", "description": "In a program in inches.\n\nUnit: inch.\n\nIf wrong: the program stops in the middle of a cut, or the controller steps to the end point on the part.", "type": "number", "minimum": 0, "maximum": 1, "examples": [2e-4] }, "relative": { "title": "Relative tolerance", "description": "As a share of the radius; the larger of the two holds. 0: none.\n\nUnit: share of the radius (0.001 is 0.1 %).\n\nIf wrong: the program stops in the middle of a cut, or the controller steps to the end point on the part.", "type": "number", "minimum": 0, "maximum": 0.01, "examples": [0] } }, "examples": [{ "mm": 2e-3, "inch": 2e-4, "relative": 0 }] }, "chord-tolerance": { "title": "Chord tolerance", "description": "Largest distance between a chord and its arc, where chords take the place of an arc.\n\nUnit: mm, or with `in`.\n\nIf wrong: flats are seen on curves, or the blocks come faster than the controller reads them and the motion stutters.", "$ref": "#/$defs/length", "examples": [0.01] } }, "examples": [{ "cw": "G2", "ccw": "G3", "form": "incremental-centre", "helix": "yes", "feed-along": "path" }] }, "path": { "title": "Path modes", "description": "Words for how corners are taken.", "type": "object", "additionalProperties": false, "properties": { "exact": { "title": "Exact path", "description": "Code for the exact path.\n\nIf wrong: corners are rounded.", "$ref": "#/$defs/codeWithWordOrNone", "examples": ["G61"] }, "stop": { "title": "Exact stop", "description": "Code for a stop at each corner.\n\nIf wrong: dwell marks at each corner, or rounded corners.", "$ref": "#/$defs/codeWithWordOrNone", "examples": ["G61.1", "none"] }, "blend": { "title": "Continuous path", "description": "Code for blending corners at speed.\n\nIf wrong: the motion stutters and burns the edge.", "$ref": "#/$defs/codeWithWordOrNone", "examples": ["G64"] }, "tolerance-word": { "title": "Blend tolerance word", "description": "Letter of the tolerance with the continuous path, or none.\n\nIf wrong: corners are cut further than allowed.", "$ref": "#/$defs/letterOrNone", "examples": ["none"] }, "look-ahead": { "title": "Look-ahead", "description": "Codes that turn looking ahead over many blocks on, for operations that are blended, and off, for those on the exact path; or none.", "anyOf": [{ "title": "None", "description": "The control looks ahead by itself, or not at all.", "type": "string", "const": "none" }, { "type": "object", "additionalProperties": false, "properties": { "on": { "title": "Look-ahead on", "description": "Code that turns look-ahead on.\n\nIf wrong: the motion stutters, or details are rounded off.", "$ref": "#/$defs/codeWithWordOrNone", "examples": ["G5.1 Q1"] }, "off": { "title": "Look-ahead off", "description": "Code that turns look-ahead off.\n\nIf wrong: details are rounded off.", "$ref": "#/$defs/codeWithWordOrNone", "examples": ["G5.1 Q0"] } } }], "axes": [77], "examples": ["none", { "on": "G5.1 Q1", "off": "G5.1 Q0" }] } }, "examples": [{ "exact": "G61", "stop": "none", "blend": "G64" }] }, "feed": { "title": "Feed modes", "description": "Words for what F means.", "type": "object", "additionalProperties": false, "properties": { "per-minute": { "title": "Feed per minute", "description": "Code for feed in length units a minute.\n\nIf wrong: the feed is wrong by the spindle speed.", "$ref": "#/$defs/codeOrNone", "examples": ["G94"] }, "per-revolution": { "title": "Feed per revolution", "description": "Code for feed in length units a revolution, or none: the feed is worked out a minute.\n\nIf wrong: the feed is wrong by the spindle speed.", "$ref": "#/$defs/codeOrNone", "examples": ["none", "G95"] }, "inverse-time": { "title": "Inverse time", "description": "Code for feed in 1/minutes a block, or none.\n\nIf wrong: the tool moves at a wildly wrong feed.", "$ref": "#/$defs/codeOrNone", "examples": ["G93", "none"] }, "inverse-time-unit": { "title": "Unit of inverse time", "description": "What F counts in inverse time: per-minute: 1/minutes; per-second: 1/seconds.\n\nIf wrong: the tool moves 60 times too fast or too slow.", "type": "string", "enum": ["per-minute", "per-second"], "axes": [72], "examples": ["per-minute"] } }, "examples": [{ "per-minute": "G94", "per-revolution": "none", "inverse-time": "none" }] }, "dwell": { "title": "Dwell", "description": "A pause of a set time.", "type": "object", "additionalProperties": false, "properties": { "code": { "title": "Dwell code", "description": "Code of the dwell.\n\nIf wrong: there is no pause: the spindle is not up to speed when the cut begins.", "$ref": "#/$defs/codeOrNone", "examples": ["G4"] }, "word": { "title": "Dwell word", "description": "Letter of the time.\n\nIf wrong: the dwell alarms or is skipped; the spindle is not up to speed when the cut begins.", "$ref": "#/$defs/letter", "examples": ["P"] }, "unit": { "title": "Dwell unit", "description": "What the time is counted in.\n\nUnit: s or ms.\n\nIf wrong: 500 becomes 500 seconds, or 0.5 becomes nothing and the cut begins at low speed.", "type": "string", "enum": ["s", "ms"], "examples": ["s"] }, "blocks": { "title": "Block of a dwell", "description": "apart: a dwell has a block of its own; with-start: the one that follows a start of the spindle shares its block, on a control that starts before it dwells.\n\nIf wrong: the control dwells before it starts the spindle, or skips one of the two: the cut begins at low speed.", "type": "string", "enum": ["apart", "with-start"], "axes": [75], "examples": ["apart"] } }, "examples": [{ "code": "G4", "word": "P", "unit": "s" }] }, "compensation": { "title": "Cutter radius compensation", "description": "Words for compensation by the tool's radius, or none.", "anyOf": [{ "title": "None", "description": "The controller does not compensate.", "type": "string", "const": "none" }, { "type": "object", "additionalProperties": false, "properties": { "off": { "title": "Compensation off", "description": "Code that ends compensation.\n\nIf wrong: the next motion is offset by the radius.", "$ref": "#/$defs/codeOrNone", "examples": ["G40"] }, "left": { "title": "Compensation left", "description": "Code for the tool left of the contour.\n\nIf wrong: the contour is off by the tool's diameter.", "$ref": "#/$defs/codeOrNone", "examples": ["G41"] }, "right": { "title": "Compensation right", "description": "Code for the tool right of the contour.\n\nIf wrong: the contour is off by the tool's diameter.", "$ref": "#/$defs/codeOrNone", "examples": ["G42"] }, "word": { "title": "Radius offset word", "description": "Letter of the number of the radius offset, or none where the tool in the spindle decides.\n\nIf wrong: the radius of another tool acts.", "$ref": "#/$defs/letterOrNone", "examples": ["D"] }, "corner-feed": { "title": "Feed at inside corners", "description": "Codes that turn the slowing at inside corners on, where compensation begins, and off, where it has ended; or none.", "anyOf": [{ "title": "None", "description": "There are no words for it.", "type": "string", "const": "none" }, { "type": "object", "additionalProperties": false, "properties": { "on": { "title": "Slow at inside corners", "description": "Code that has the feed lowered at inside corners.\n\nIf wrong: the tool digs in at inside corners.", "$ref": "#/$defs/codeWithWordOrNone", "examples": ["G62"] }, "off": { "title": "Feed as stated", "description": "Code that ends the slowing.\n\nIf wrong: later contours are cut slower than meant.", "$ref": "#/$defs/codeWithWordOrNone", "examples": ["G63"] } } }], "axes": [78], "examples": ["none", { "on": "G62", "off": "G63" }] } } }], "examples": ["none", { "off": "G40", "left": "G41", "right": "G42", "word": "D" }] }, "length-offset": { "title": "Tool length offset", "description": "Words that make the length of the tool act, or none.", "anyOf": [{ "title": "None", "description": "No word makes a tool length act; the operator sets Z.", "type": "string", "const": "none" }, { "type": "object", "additionalProperties": false, "properties": { "on": { "title": "Length offset on", "description": "Code that makes a length offset act.\n\nIf wrong: the tool is driven into the work by its length.", "$ref": "#/$defs/codeOrNone", "examples": ["G43", "none"] }, "off": { "title": "Length offset off", "description": "Code that cancels it.\n\nIf wrong: the length of the last tool still acts for the next one.", "$ref": "#/$defs/codeOrNone", "examples": ["G49", "none"] }, "word": { "title": "Length offset word", "description": "Letter of the number of the length offset.\n\nIf wrong: the length of another tool acts, and the tool is driven into the work.", "$ref": "#/$defs/letter", "examples": ["H"] } } }], "examples": ["none", { "on": "G43", "off": "G49", "word": "H" }] }, "work-offset": { "title": "Work offsets", "description": "Codes of the work offsets 1 to 9 in order, or none. A number behind the end of the list cannot be said.\n\nIf wrong: the work is cut at the place of another set-up.", "anyOf": [{ "title": "None", "description": "There are no words for work offsets; the operator sets the origin.", "type": "string", "const": "none" }, { "type": "array", "minItems": 1, "maxItems": 9, "items": { "$ref": "#/$defs/codeWithWordOrNone" } }], "examples": ["none", ["G54", "G55", "G56", "G57", "G58", "G59"]] }, "machine-move": { "title": "Move in machine coordinates", "description": "Code for a move in machine coordinates, in the same block as the motion code, or none. It acts in its own block alone.\n\nIf wrong: the retract goes to a place in work coordinates: into the work, or past the travel.", "$ref": "#/$defs/codeWithWordOrNone", "examples": ["G53", "none"] }, "reference-return": { "title": "Return to the reference position", "description": "Code of the return to the reference position, or none.\n\nIf wrong: an intermediate point is taken for the target: a diagonal through the work.", "$ref": "#/$defs/codeWithWordOrNone", "examples": ["G28", "none"] }, "cancel": { "title": "Cancelling", "description": "Words that put an end to what an earlier program may have left in force.", "type": "object", "additionalProperties": false, "properties": { "cycles": { "title": "Cycles off", "description": "Code that ends fixed cycles.\n\nIf wrong: a hole is drilled at every place that follows.", "$ref": "#/$defs/codeOrNone", "examples": ["G80"] }, "local-shift": { "title": "Local shift off", "description": "Code that cancels a shift of the origin, or none.\n\nIf wrong: the work is cut at a shifted place.", "$ref": "#/$defs/codeOrNone", "examples": ["G92.2", "none"] }, "rotation": { "title": "Rotation off", "description": "Code that cancels a rotation, or none.\n\nIf wrong: the work is cut rotated.", "$ref": "#/$defs/codeOrNone", "examples": ["G69", "none"] }, "scale": { "title": "Scale off", "description": "Code that cancels scaling and mirroring, or none.\n\nIf wrong: the work is cut at another size or mirrored.", "$ref": "#/$defs/codeOrNone", "examples": ["G50", "none"] }, "overrides": { "title": "Overrides on", "description": "Code that makes the feed and speed overrides act, or none.\n\nIf wrong: the override knob is dead while the program is proved out.", "$ref": "#/$defs/codeOrNone", "examples": ["M48", "none"] } }, "examples": [{ "cycles": "G80", "local-shift": "none", "rotation": "none", "scale": "none", "overrides": "M48" }] }, "cycles": { "title": "Fixed cycles", "description": "Codes of fixed cycles for holes and what goes with them, or none: every hole is written longhand.", "anyOf": [{ "title": "None", "description": "The controller has no fixed cycles.", "type": "string", "const": "none" }, { "type": "object", "additionalProperties": false, "properties": { "drill": { "title": "Drill", "description": "Feed in, rapid out, or none: it is written longhand.\n\nIf wrong: the hole has another depth, or the tool breaks on its way out.", "$ref": "#/$defs/codeOrNone", "examples": ["G81"] }, "dwell": { "title": "Drill with dwell", "description": "Feed in, dwell, rapid out, or none: it is written longhand.\n\nIf wrong: the hole has another depth, or the tool breaks on its way out.", "$ref": "#/$defs/codeOrNone", "examples": ["G82"] }, "peck": { "title": "Peck", "description": "Pecks with a rapid out of the hole after each, or none: it is written longhand.\n\nIf wrong: the hole has another depth, or the tool breaks on its way out.", "$ref": "#/$defs/codeOrNone", "examples": ["G83"] }, "chip-break": { "title": "Chip-breaking", "description": "Pecks with a small back-off, or none: it is written longhand.\n\nIf wrong: the hole has another depth, or the tool breaks on its way out.", "$ref": "#/$defs/codeOrNone", "examples": ["G73", "none"] }, "tap": { "title": "Tap right-hand", "description": "Feed in, reverse, feed out, or none: it is written longhand.\n\nIf wrong: the hole has another depth, or the tool breaks on its way out.", "$ref": "#/$defs/codeOrNone", "examples": ["G84"] }, "tap-left": { "title": "Tap left-hand", "description": "The same with a left-hand tap, or none: it is written longhand.\n\nIf wrong: the hole has another depth, or the tool breaks on its way out.", "$ref": "#/$defs/codeOrNone", "examples": ["G74", "none"] }, "ream": { "title": "Ream", "description": "Feed in, feed out, or none: it is written longhand.\n\nIf wrong: the hole has another depth, or the tool breaks on its way out.", "$ref": "#/$defs/codeOrNone", "examples": ["G85"] }, "bore-dwell": { "title": "Bore with dwell", "description": "Feed in, dwell, feed out, or none: it is written longhand.\n\nIf wrong: the hole has another depth, or the tool breaks on its way out.", "$ref": "#/$defs/codeOrNone", "examples": ["G89"] }, "bore-stop": { "title": "Bore with spindle stop", "description": "Feed in, dwell, spindle stop, rapid out, or none: it is written longhand.\n\nIf wrong: the hole has another depth, or the tool breaks on its way out.", "$ref": "#/$defs/codeOrNone", "examples": ["G86", "none"] }, "bore-manual": { "title": "Bore with manual retract", "description": "Feed in, dwell, spindle stop, program stop, or none: it is written longhand.\n\nIf wrong: the hole has another depth, or the tool breaks on its way out.", "$ref": "#/$defs/codeOrNone", "examples": ["G88", "none"] }, "return": { "title": "Level between holes", "description": "Words that choose the level to which the tool goes between holes.", "type": "object", "additionalProperties": false, "properties": { "initial": { "title": "Initial level", "description": "Code for the level at which the tool stood before the first hole, or none.\n\nIf wrong: the tool is dragged through a clamp between two holes.", "$ref": "#/$defs/codeOrNone", "examples": ["G98", "none"] }, "retract": { "title": "Retract level", "description": "Code for the retract level of the cycle, or none.\n\nIf wrong: the tool is dragged through a clamp between two holes.", "$ref": "#/$defs/codeOrNone", "examples": ["G99", "none"] }, "without": { "title": "Level without a word", "description": "The level between holes where there is no word, or none where both words are there.\n\nIf wrong: the tool is dragged through a clamp between two holes.", "type": "string", "enum": ["retract", "initial", "none"], "examples": ["none"] } }, "examples": [{ "initial": "G98", "retract": "G99", "without": "none" }] }, "back-off": { "title": "Back-off", "description": "How far the controller's own cycle backs off. A job that asks for another back-off is written longhand.", "type": "object", "additionalProperties": false, "properties": { "peck": { "title": "Back-off of pecks", "description": "How far above the last depth the rapid back into the hole ends.\n\nUnit: mm, or with `in`.\n\nIf wrong: the drill is driven into the bottom at rapid and breaks.", "$ref": "#/$defs/length", "examples": [0.254] }, "chip-break": { "title": "Back-off of chip-breaking", "description": "How far the drill is withdrawn between two pecks.\n\nUnit: mm, or with `in`.\n\nIf wrong: the chip does not break.", "$ref": "#/$defs/length", "examples": [0.254] } }, "examples": [{ "peck": 0.254, "chip-break": 0.254 }] }, "levels": { "title": "Depth and retract level", "description": "absolute: Z and R are coordinates; relative: Z counts from R, and R from the initial level.\n\nIf wrong: the depth is doubled, or the hole is drilled in the air.", "type": "string", "enum": ["absolute", "relative"], "examples": ["absolute"] }, "words": { "title": "Words of a cycle", "description": "Letters of the values of a cycle.", "type": "object", "additionalProperties": false, "properties": { "retract": { "title": "Retract level word", "description": "Letter of the retract level.\n\nIf wrong: feed begins at another height: a rapid into the work.", "$ref": "#/$defs/letter", "examples": ["R"] }, "peck": { "title": "Peck word", "description": "Letter of the depth of one peck.\n\nIf wrong: the hole is drilled in one go and the drill breaks.", "$ref": "#/$defs/letter", "examples": ["Q"] }, "dwell": { "title": "Dwell word", "description": "Letter of the dwell at depth.\n\nIf wrong: no dwell at depth, or a very long one.", "$ref": "#/$defs/letter", "examples": ["P"] }, "dwell-unit": { "title": "Unit of the dwell", "description": "What the dwell in a cycle is counted in.\n\nUnit: s or ms.\n\nIf wrong: no dwell at depth, or a very long one.", "type": "string", "enum": ["s", "ms"], "examples": ["s"] } }, "examples": [{ "retract": "R", "peck": "Q", "dwell": "P", "dwell-unit": "s" }] }, "repeat": { "title": "Later holes", "description": "positions: later holes state their place alone; all: each states the words of the cycle again.\n\nIf wrong: later holes are missing or have another depth.", "type": "string", "enum": ["positions", "all"], "examples": ["positions"] }, "ended-by": { "title": "End of a cycle", "description": "any-motion: a motion word ends the cycle, too; cancel-code: its own code alone. The code is always written; this decides what a program from elsewhere means.\n\nIf wrong: a hole is drilled at every place that follows.", "type": "string", "enum": ["any-motion", "cancel-code"], "examples": ["cancel-code"] } } }], "examples": ["none", { "drill": "G81", "peck": "G83", "return": { "initial": "G98", "retract": "G99", "without": "none" } }] }, "spindle": { "title": "Spindle", "description": "Words for the spindle.", "type": "object", "additionalProperties": false, "properties": { "cw": { "title": "Spindle clockwise", "description": "Code that starts the spindle clockwise, as for a right-hand tool.\n\nIf wrong: the spindle turns the wrong way and the tool breaks.", "$ref": "#/$defs/codeOrNone", "examples": ["M3"] }, "ccw": { "title": "Spindle counter-clockwise", "description": "Code that starts it counter-clockwise, or none.\n\nIf wrong: the spindle turns the wrong way and the tool breaks.", "$ref": "#/$defs/codeOrNone", "examples": ["M4", "none"] }, "stop": { "title": "Spindle stop", "description": "Code that stops the spindle.\n\nIf wrong: the spindle runs on into the swap or past the end of the program.", "$ref": "#/$defs/codeOrNone", "examples": ["M5"] }, "orient": { "title": "Spindle orientation", "description": "Code that stops the spindle at its swap angle, or none.\n\nIf wrong: the drive keys of the tool strike the rack.", "$ref": "#/$defs/codeWithWordOrNone", "examples": ["M19", "none"] }, "order": { "title": "Order of speed and start", "description": "speed-first: the S word before the start word; start-first: the start word before the S word. It holds in a block, whatever `blocks.order` says, and from block to block.\n\nIf wrong: the spindle starts at the last speed, or the speed is ignored.", "type": "string", "enum": ["speed-first", "start-first"], "examples": ["speed-first"] }, "blocks": { "title": "Speed and start in a block", "description": "together: one block; apart: one block each.\n\nIf wrong: one of the two is ignored.", "type": "string", "enum": ["together", "apart"], "examples": ["together"] } }, "examples": [{ "cw": "M3", "ccw": "M4", "stop": "M5", "order": "speed-first", "blocks": "together" }] }, "coolant": { "title": "Coolant", "description": "Words for coolant and air.", "type": "object", "additionalProperties": false, "properties": { "mist": { "title": "Mist", "description": "Code that turns mist on, or none.\n\nIf wrong: the tool runs dry.", "$ref": "#/$defs/codeOrNone", "examples": ["M7", "none"] }, "flood": { "title": "Flood", "description": "Code that turns flood coolant on, or none.\n\nIf wrong: the tool runs dry.", "$ref": "#/$defs/codeOrNone", "examples": ["M8", "none"] }, "air": { "title": "Air", "description": "Code that turns air on, or none.\n\nIf wrong: chips stay in the cut.", "$ref": "#/$defs/codeOrNone", "examples": ["none"] }, "through-tool": { "title": "Coolant through the tool", "description": "Code that turns coolant through the tool on, or none.\n\nIf wrong: a deep hole is drilled dry.", "$ref": "#/$defs/codeOrNone", "examples": ["none"] }, "off": { "title": "All off", "description": "Code that turns all of them off.\n\nIf wrong: coolant runs during the swap, into the taper and the rack.", "$ref": "#/$defs/codeOrNone", "examples": ["M9"] } }, "examples": [{ "mist": "M7", "flood": "M8", "air": "none", "through-tool": "none", "off": "M9" }] }, "tools": { "title": "Tools", "description": "Words for selecting and changing tools.", "type": "object", "additionalProperties": false, "properties": { "change": { "title": "Tool change", "description": "Code of the controller's own tool change, or none.\n\nIf wrong: the tool is not changed, and the next operation runs with the last one.", "$ref": "#/$defs/codeOrNone", "examples": ["M6", "none"] }, "blocks": { "title": "Selection and change in a block", "description": "together: T and the change code share a block; apart: one block each.\n\nIf wrong: the change takes the tool selected before.", "type": "string", "enum": ["together", "apart"], "examples": ["together"] }, "order": { "title": "Order of selection and change", "description": "select-first: T before the change code; change-first: the change code first.\n\nIf wrong: the change takes the tool selected before.", "type": "string", "enum": ["select-first", "change-first"], "examples": ["select-first"] }, "preselect": { "title": "Preselection", "description": "Whether the next tool is selected right after each change, so that the changer gets it ready.\n\nIf wrong: the changer takes the wrong tool at the next change.", "$ref": "#/$defs/yesNo", "examples": ["no"] } }, "examples": [{ "change": "M6", "blocks": "together", "order": "select-first", "preselect": "no" }] }, "stops": { "title": "Stops and end", "description": "Words that stop and end the program.", "type": "object", "additionalProperties": false, "properties": { "stop": { "title": "Program stop", "description": "Code of a stop that the operator ends.\n\nIf wrong: the program runs on while a hand is in the machine.", "$ref": "#/$defs/codeOrNone", "examples": ["M0"] }, "optional": { "title": "Optional stop", "description": "Code of a stop that acts when its switch is on, or none.\n\nIf wrong: the program runs on although a check was meant.", "$ref": "#/$defs/codeOrNone", "examples": ["M1", "none"] }, "end": { "title": "End of program", "description": "Code of the end of the program.\n\nIf wrong: the controller alarms, does not rewind, or moves a pallet.", "$ref": "#/$defs/codeOrNone", "examples": ["M30", "M2"] } }, "examples": [{ "stop": "M0", "optional": "M1", "end": "M30" }] }, "wait": { "title": "Values of a wait", "description": "Numbers that a wait on a signal says.", "type": "object", "additionalProperties": false, "properties": { "on": { "title": "Level on", "description": "Number for a signal that is on.\n\nUnit: number of the level word.\n\nIf wrong: the wait is over at once, whatever the machine does.", "type": "integer", "minimum": 0, "maximum": 9999, "examples": [1] }, "off": { "title": "Level off", "description": "Number for a signal that is off.\n\nUnit: number of the level word.\n\nIf wrong: the wait is over at once, whatever the machine does.", "type": "integer", "minimum": 0, "maximum": 9999, "examples": [0] }, "timeout-unit": { "title": "Unit of the timeout", "description": "What the timeout is counted in.\n\nUnit: s or ms.\n\nIf wrong: the wait gives up at once, or hangs for minutes with the fault unseen.", "type": "string", "enum": ["s", "ms"], "examples": ["s"] } }, "examples": [{ "on": 1, "off": 0, "timeout-unit": "s" }] }, "codes": { "title": "Codes of the builder", "description": "What further codes do that a program from elsewhere may hold: what they are for, and their effects. They are read, not written.", "type": "object", "additionalProperties": false, "patternProperties": { "^[GM]\\d{1,3}$": { "title": "One code", "description": "A code with no meaning of its own in the standards, and what it leaves behind.", "type": "object", "additionalProperties": false, "properties": { "does": { "title": "What it does", "description": "In words, for findings and the set-up sheet.\n\nIf wrong: the operator does not know what is switched.", "type": "string", "minLength": 1, "maxLength": 120, "examples": ["chip conveyor on"] }, "position": { "title": "Effect on the position", "description": "unchanged: the axes end where they were; unknown: they may be anywhere, so that the program states them anew; swap-height: Z ends at the swap height.\n\nIf wrong: the next approach starts from a place that nobody knows.", "type": "string", "enum": ["unchanged", "unknown", "swap-height"], "examples": ["unchanged"] }, "spindle": { "title": "Effect on the spindle", "description": "unchanged, or stopped.\n\nIf wrong: the spindle is thought to stand while it turns.", "type": "string", "enum": ["unchanged", "stopped"], "examples": ["stopped"] }, "coolant": { "title": "Effect on coolant", "description": "unchanged, or off.\n\nIf wrong: coolant is missing, or runs into the taper.", "type": "string", "enum": ["unchanged", "off"], "examples": ["unchanged"] }, "length-offset": { "title": "Effect on the length offset", "description": "unchanged; active: the length of the new tool acts; cancelled: none acts.\n\nIf wrong: the tool is driven into the work by its length.", "type": "string", "enum": ["unchanged", "active", "cancelled"], "examples": ["unchanged"] } }, "examples": [{ "does": "chip conveyor on", "position": "unchanged", "spindle": "unchanged", "coolant": "unchanged", "length-offset": "unchanged" }] } }, "examples": [{ "M27": { "does": "chip conveyor on", "position": "unchanged", "spindle": "unchanged", "coolant": "unchanged", "length-offset": "unchanged" } }] }, "idioms": { "title": "Idioms", "description": "How this controller says one action: literal words and {{name}} for the whole number of a word. One code each; beside it may stand P Q R L E I J K.", "type": "object", "additionalProperties": false, "properties": { "message": { "title": "Message to the operator", "description": "A whole comment with a mark of its own, so that a message is told from a remark, or none. It may name {{text}} (must).\n\nIf wrong: the operator does not see what is asked of them.", "$ref": "#/$defs/template", "examples": ["(MSG, {{text}})"] }, "wait-signal": { "title": "Wait on a signal", "description": "Waits until an input has a level, or none. It may name {{signal}} (must), {{level}} (without it every signal is waited for until it is on) and {{timeout}} (without it the wait lasts for ever).\n\nIf wrong: the program does not wait: the tool cuts before the spindle is up to speed, or swaps while it turns.", "$ref": "#/$defs/template", "examples": ["M94 P{{signal}} R{{level}} Q{{timeout}}"] }, "output-on": { "title": "Output on", "description": "Switches an output on, or none. It may name {{output}} (must).\n\nIf wrong: another output is switched.", "$ref": "#/$defs/template", "examples": ["M95 P{{output}}"] }, "output-off": { "title": "Output off", "description": "Switches an output off, or none. It may name {{output}} (must).\n\nIf wrong: another output is switched.", "$ref": "#/$defs/template", "examples": ["M96 P{{output}}"] }, "release": { "title": "Release the tool", "description": "Opens the drawbar, or none. It names no value.\n\nIf wrong: the tool drops, or is pulled out of the rack with its fork.", "$ref": "#/$defs/template", "examples": ["M21"] }, "clamp": { "title": "Clamp the tool", "description": "Closes the drawbar, or none. It names no value.\n\nIf wrong: the spindle starts with a loose tool.", "$ref": "#/$defs/template", "examples": ["M22"] }, "taper-air-on": { "title": "Taper air on", "description": "Blows the taper clean, or none. It names no value.\n\nIf wrong: a chip between taper and holder: the tool runs out.", "$ref": "#/$defs/template", "examples": ["M25"] }, "taper-air-off": { "title": "Taper air off", "description": "Ends it, or none. It names no value.\n\nIf wrong: air blows on during the cut.", "$ref": "#/$defs/template", "examples": ["M26"] }, "cover-open": { "title": "Open the rack's cover", "description": "Opens the cover of the rack, or none. It names no value.\n\nIf wrong: the spindle is driven into the cover.", "$ref": "#/$defs/template", "examples": ["M27"] }, "cover-close": { "title": "Close the rack's cover", "description": "Closes the cover of the rack, or none. It names no value.\n\nIf wrong: chips fill the pockets.", "$ref": "#/$defs/template", "examples": ["M28"] }, "hood-up": { "title": "Dust hood up", "description": "Lifts the dust hood, or none. It names no value.\n\nIf wrong: the hood is driven into the rack or the clamps.", "$ref": "#/$defs/template", "examples": ["M23"] }, "hood-down": { "title": "Dust hood down", "description": "Lowers the dust hood, or none. It names no value.\n\nIf wrong: dust is not drawn off.", "$ref": "#/$defs/template", "examples": ["M24"] }, "measure": { "title": "Measure the tool", "description": "Has the controller measure the tool's length and make it its length offset, or none. It names no value.\n\nIf wrong: the length of the last measurement acts.", "$ref": "#/$defs/template", "examples": ["M29"] } }, "examples": [{ "wait-signal": "M94 P{{signal}} R{{level}} Q{{timeout}}", "release": "M21", "clamp": "M22" }] }, "machine": { "title": "Machine", "description": "Facts of this machine, in its own leaf. A key is needed when a job needs it.", "type": "object", "additionalProperties": false, "properties": { "travel": { "title": "Travel", "description": "Where each axis can go, machine coordinates. Rotary axes are allowed only where they stand here.", "type": "object", "additionalProperties": false, "properties": { "x": { "title": "Travel of X", "description": "Least and greatest place of X in machine coordinates.\n\nUnit: mm, or with `in`.\n\nIf wrong: the axis runs onto its limit switch in the middle of the program.", "type": "array", "minItems": 2, "maxItems": 2, "items": { "$ref": "#/$defs/length" }, "examples": [[0, 1220]] }, "y": { "title": "Travel of Y", "description": "Least and greatest place of Y in machine coordinates.\n\nUnit: mm, or with `in`.\n\nIf wrong: the axis runs onto its limit switch in the middle of the program.", "type": "array", "minItems": 2, "maxItems": 2, "items": { "$ref": "#/$defs/length" }, "examples": [[0, 1220]] }, "z": { "title": "Travel of Z", "description": "Least and greatest place of Z in machine coordinates.\n\nUnit: mm, or with `in`.\n\nIf wrong: the axis runs onto its limit switch in the middle of the program.", "type": "array", "minItems": 2, "maxItems": 2, "items": { "$ref": "#/$defs/length" }, "examples": [[0, 1220]] }, "a": { "title": "Travel of A", "description": "Least and greatest place of A in machine coordinates.\n\nUnit: degrees.\n\nIf wrong: the axis runs onto its limit switch in the middle of the program.", "type": "array", "minItems": 2, "maxItems": 2, "items": { "type": "number", "minimum": -36e6, "maximum": 36e6 }, "examples": [[-360, 360]] }, "b": { "title": "Travel of B", "description": "Least and greatest place of B in machine coordinates.\n\nUnit: degrees.\n\nIf wrong: the axis runs onto its limit switch in the middle of the program.", "type": "array", "minItems": 2, "maxItems": 2, "items": { "type": "number", "minimum": -36e6, "maximum": 36e6 }, "examples": [[-360, 360]] }, "c": { "title": "Travel of C", "description": "Least and greatest place of C in machine coordinates.\n\nUnit: degrees.\n\nIf wrong: the axis runs onto its limit switch in the middle of the program.", "type": "array", "minItems": 2, "maxItems": 2, "items": { "type": "number", "minimum": -36e6, "maximum": 36e6 }, "examples": [[-360, 360]] } }, "examples": [{ "x": [0, 1220], "y": [0, 810], "z": [-95, 0] }] }, "spindle": { "title": "Spindle of the machine", "description": "What the spindle and its drive can do.", "type": "object", "additionalProperties": false, "properties": { "min-rpm": { "title": "Lowest speed", "description": "Lowest speed that the spindle may run at.\n\nUnit: rpm.\n\nIf wrong: the spindle overheats, or does not turn.", "type": "number", "minimum": 0, "maximum": 1e6, "examples": [6e3] }, "max-rpm": { "title": "Highest speed", "description": "Highest speed.\n\nUnit: rpm.\n\nIf wrong: the speed is cut without a word and the feed is too fast for it.", "type": "number", "exclusiveMinimum": 0, "maximum": 1e6, "examples": [24e3] }, "spin-up": { "title": "Time to come up to speed", "description": "Time from standstill to the highest speed.\n\nUnit: s, ms or min, written behind the number.\n\nIf wrong: the tool cuts before the spindle is up to speed.", "$ref": "#/$defs/time", "examples": ["6 s"] }, "spin-down": { "title": "Time to stop", "description": "Time from the highest speed to standstill by the drive.\n\nUnit: s, ms or min, written behind the number.\n\nIf wrong: the tool is swapped while the spindle turns.", "$ref": "#/$defs/time", "examples": ["6 s"] }, "coast-down": { "title": "Time to coast down", "description": "The same in free run, with the drive tripped.\n\nUnit: s, ms or min, written behind the number.\n\nIf wrong: the tool is swapped, or a hand is in the machine, while the spindle turns.", "$ref": "#/$defs/time", "examples": ["25 s"] }, "orient": { "title": "Orientation before a swap", "description": "Whether the spindle must be oriented before a swap.\n\nIf wrong: the drive keys of the tool strike the rack.", "$ref": "#/$defs/yesNo", "examples": ["no"] } }, "examples": [{ "min-rpm": 6e3, "max-rpm": 24e3, "spin-up": "6 s", "spin-down": "6 s", "coast-down": "25 s" }] }, "signals": { "title": "Signals", "description": "Inputs that the program can wait on.", "type": "object", "additionalProperties": false, "properties": { "at-speed": { "title": "At speed", "description": "The drive reports that the spindle is at its speed: the number of its input where it is on in that state, or a mapping.\n\nUnit: number of the input.\n\nIf wrong: the tool cuts before the spindle is up to speed.", "anyOf": [{ "type": "integer", "minimum": 0, "maximum": 9999 }, { "$ref": "#/$defs/signal" }], "examples": [{ "input": 4, "settle": "0.3 s" }] }, "stopped": { "title": "Stopped", "description": "The drive or a sensor reports standstill: the number of its input where it is on in that state, or a mapping.\n\nUnit: number of the input.\n\nIf wrong: the tool is swapped while the spindle turns.", "anyOf": [{ "type": "integer", "minimum": 0, "maximum": 9999 }, { "$ref": "#/$defs/signal" }], "examples": [5] }, "released": { "title": "Released", "description": "The drawbar is open: the number of its input where it is on in that state, or a mapping.\n\nUnit: number of the input.\n\nIf wrong: the holder is torn out of its pocket.", "anyOf": [{ "type": "integer", "minimum": 0, "maximum": 9999 }, { "$ref": "#/$defs/signal" }], "examples": [8] }, "clamped": { "title": "Clamped", "description": "The drawbar is closed with a tool in it: the number of its input where it is on in that state, or a mapping.\n\nUnit: number of the input.\n\nIf wrong: the spindle starts with a loose tool.", "anyOf": [{ "type": "integer", "minimum": 0, "maximum": 9999 }, { "$ref": "#/$defs/signal" }], "examples": [7] }, "tool-present": { "title": "Tool present", "description": "A tool is in the spindle: the number of its input where it is on in that state, or a mapping.\n\nUnit: number of the input.\n\nIf wrong: the program goes on without a tool.", "anyOf": [{ "type": "integer", "minimum": 0, "maximum": 9999 }, { "$ref": "#/$defs/signal" }], "examples": [9] }, "air": { "title": "Air pressure", "description": "There is enough air to work the drawbar: the number of its input where it is on in that state, or a mapping.\n\nUnit: number of the input.\n\nIf wrong: the drawbar opens halfway and the tool drops.", "anyOf": [{ "type": "integer", "minimum": 0, "maximum": 9999 }, { "$ref": "#/$defs/signal" }], "examples": [6] }, "hold-down": { "title": "Hold-down", "description": "Vacuum or clamps hold the work: the number of its input where it is on in that state, or a mapping.\n\nUnit: number of the input.\n\nIf wrong: the work comes loose in the cut.", "anyOf": [{ "type": "integer", "minimum": 0, "maximum": 9999 }, { "$ref": "#/$defs/signal" }], "examples": [10] } }, "examples": [{ "at-speed": { "input": 4, "settle": "0.3 s" }, "stopped": 5 }] }, "waits": { "title": "Waits", "description": "What a wait does when its time is up.", "type": "object", "additionalProperties": false, "properties": { "on-timeout": { "title": "On timeout", "description": "alarm: the program stops; continues: it goes on as if the signal had come, so that such a wait confirms nothing.\n\nIf wrong: a fault of the spindle or the air goes unseen and the program runs on.", "type": "string", "enum": ["alarm", "continues"], "examples": ["alarm"] } }, "examples": [{ "on-timeout": "alarm" }] }, "swap": { "title": "Swap style", "description": "controller: the controller changes tools by itself; rack: the program drives to the pockets and works the drawbar; operator: the program stops and asks for the tool.\n\nIf wrong: the program waits for a change that never comes, or drives to a rack that is not there.", "type": "string", "enum": ["controller", "rack", "operator"], "examples": ["rack"] }, "change-effects": { "title": "Effects of the tool change", "description": "What the controller's own tool change does besides changing the tool. Needed where `swap` is controller.", "type": "object", "additionalProperties": false, "properties": { "position": { "title": "Effect on the position", "description": "unchanged: the axes end where they were; unknown: they may be anywhere, so that the program states them anew; swap-height: Z ends at the swap height.\n\nIf wrong: the next approach starts from a place that nobody knows.", "type": "string", "enum": ["unchanged", "unknown", "swap-height"], "examples": ["unchanged"] }, "spindle": { "title": "Effect on the spindle", "description": "unchanged, or stopped.\n\nIf wrong: the spindle is thought to stand while it turns.", "type": "string", "enum": ["unchanged", "stopped"], "examples": ["stopped"] }, "coolant": { "title": "Effect on coolant", "description": "unchanged, or off.\n\nIf wrong: coolant is missing, or runs into the taper.", "type": "string", "enum": ["unchanged", "off"], "examples": ["unchanged"] }, "length-offset": { "title": "Effect on the length offset", "description": "unchanged; active: the length of the new tool acts; cancelled: none acts.\n\nIf wrong: the tool is driven into the work by its length.", "type": "string", "enum": ["unchanged", "active", "cancelled"], "examples": ["unchanged"] } }, "examples": [{ "position": "unchanged", "spindle": "stopped", "coolant": "unchanged", "length-offset": "unchanged" }] }, "measure-effects": { "title": "Effects of measuring", "description": "What the controller's measurement of a tool does. Needed where `lengths` is measured.", "type": "object", "additionalProperties": false, "properties": { "position": { "title": "Effect on the position", "description": "unchanged: the axes end where they were; unknown: they may be anywhere, so that the program states them anew; swap-height: Z ends at the swap height.\n\nIf wrong: the next approach starts from a place that nobody knows.", "type": "string", "enum": ["unchanged", "unknown", "swap-height"], "examples": ["unchanged"] }, "spindle": { "title": "Effect on the spindle", "description": "unchanged, or stopped.\n\nIf wrong: the spindle is thought to stand while it turns.", "type": "string", "enum": ["unchanged", "stopped"], "examples": ["stopped"] }, "coolant": { "title": "Effect on coolant", "description": "unchanged, or off.\n\nIf wrong: coolant is missing, or runs into the taper.", "type": "string", "enum": ["unchanged", "off"], "examples": ["unchanged"] }, "length-offset": { "title": "Effect on the length offset", "description": "unchanged; active: the length of the new tool acts; cancelled: none acts.\n\nIf wrong: the tool is driven into the work by its length.", "type": "string", "enum": ["unchanged", "active", "cancelled"], "examples": ["unchanged"] } }, "examples": [{ "position": "unknown", "spindle": "stopped", "coolant": "unchanged", "length-offset": "active" }] }, "retract": { "title": "Retract to swap height", "description": "How Z goes up to the swap height.", "type": "object", "additionalProperties": false, "properties": { "by": { "title": "Retract by", "description": "machine-move: a rapid in machine coordinates; reference-return: the return to the reference position; clearance: the clearance of the job (operator swaps only).\n\nIf wrong: the tool is dragged across the work, or driven past the travel.", "type": "string", "enum": ["machine-move", "reference-return", "clearance"], "examples": ["machine-move"] }, "z": { "title": "Swap height", "description": "Z of the swap height in machine coordinates, with machine-move.\n\nUnit: mm, or with `in`.\n\nIf wrong: Z does not clear the work, or runs onto its limit switch.", "$ref": "#/$defs/length", "examples": [0] }, "acts-on": { "title": "What it moves", "description": "spindle-nose: machine coordinates are those of the spindle; tool-tip: an active length offset counts, too.\n\nIf wrong: Z stands lower by the tool's length than meant.", "type": "string", "enum": ["spindle-nose", "tool-tip"], "examples": ["spindle-nose"] }, "cancel-length-first": { "title": "Cancel the length offset first", "description": "Whether the length offset must be cancelled before it.\n\nIf wrong: the controller alarms, or the tool runs past the travel by its length.", "$ref": "#/$defs/yesNo", "examples": ["no"] }, "intermediate": { "title": "Intermediate point", "description": "incremental-zero: a reference return has an intermediate point, given as zero increments; none: it has none.\n\nIf wrong: the intermediate point is taken for a target: a diagonal through the work.", "type": "string", "enum": ["none", "incremental-zero"], "examples": ["none"] }, "change-position": { "title": "Change position", "description": "Where the operator changes tools, with retract by clearance; work coordinates.\n\nUnit: mm, or with `in`.\n\nIf wrong: the operator reaches between tool and work to change it.", "$ref": "#/$defs/place", "examples": [[0, 0, 120]] } }, "examples": [{ "by": "machine-move", "z": 0, "acts-on": "spindle-nose", "cancel-length-first": "no", "intermediate": "none" }] }, "length-offset": { "title": "Length offset at the machine", "description": "How the tool's length comes to act.", "type": "object", "additionalProperties": false, "properties": { "form": { "title": "Form", "description": "with-first-z: in the block of the first Z motion; own-block: in a block of its own before it; in-tool-word: with the tool word; none: there is no length offset, the operator sets Z.\n\nIf wrong: the tool is driven into the work by its length.", "type": "string", "enum": ["with-first-z", "own-block", "in-tool-word", "none"], "examples": ["with-first-z"] }, "select-moves": { "title": "Selecting moves Z", "description": "Whether selecting it moves the axis by itself.\n\nIf wrong: Z moves where nobody meant it to.", "$ref": "#/$defs/yesNo", "examples": ["no"] }, "cancel-moves": { "title": "Cancelling moves Z", "description": "Whether cancelling it moves the axis by itself. It is then cancelled at swap height only.\n\nIf wrong: Z moves down by the tool's length.", "$ref": "#/$defs/yesNo", "examples": ["no"] } }, "examples": [{ "form": "with-first-z", "select-moves": "no", "cancel-moves": "no" }] }, "lengths": { "title": "Tool lengths", "description": "Where they come from: table, the controller's tool table; measured, a measurement after each swap; operator, set by hand.\n\nIf wrong: the tool is driven into the work by the difference.", "type": "string", "enum": ["table", "measured", "operator"], "examples": ["table"] }, "drawbar": { "title": "Drawbar", "description": "How the drawbar is worked at a rack, or none.", "anyOf": [{ "title": "None", "description": "There is no drawbar that the program works.", "type": "string", "const": "none" }, { "type": "object", "additionalProperties": false, "properties": { "travels": { "title": "Travel of an empty spindle", "description": "Whether an empty spindle travels along the rack clamped or released.\n\nIf wrong: the released drawbar strikes a holder, or the clamped one is pressed onto it.", "type": "string", "enum": ["clamped", "released"], "examples": ["clamped"] }, "taper-air": { "title": "Taper air", "description": "Whether air cleans the taper while a tool is picked.\n\nIf wrong: a chip between taper and holder: the tool runs out.", "$ref": "#/$defs/yesNo", "examples": ["no"] } } }], "examples": ["none", { "travels": "clamped", "taper-air": "no" }] }, "rack": { "title": "Rack", "description": "Where tools wait and how they are fetched, or none.", "anyOf": [{ "title": "None", "description": "There is no rack that the program drives to.", "type": "string", "const": "none" }, { "type": "object", "additionalProperties": false, "properties": { "style": { "title": "Style of the rack", "description": "drop-in: the holder is let down into its pocket from above; slide-in: it is slid into a fork from the side.\n\nIf wrong: the spindle is driven into the rack.", "type": "string", "enum": ["drop-in", "slide-in"], "examples": ["drop-in"] }, "clear-z": { "title": "Clear height", "description": "Machine Z at which an empty spindle clears the tools in the rack, and a full one the empty pockets.\n\nUnit: mm, or with `in`.\n\nIf wrong: the tool is dragged through the rack.", "$ref": "#/$defs/length", "examples": [-5] }, "pocket-z": { "title": "Pocket height", "description": "Machine Z at which the holder sits in its pocket.\n\nUnit: mm, or with `in`.\n\nIf wrong: the holder is crushed into the rack, or drops.", "$ref": "#/$defs/length", "examples": [-78.4] }, "descend-from": { "title": "Start of the slow descent", "description": "How far above the pocket height the descent at feed begins.\n\nUnit: mm, or with `in`.\n\nIf wrong: the holder is driven into its pocket at rapid.", "$ref": "#/$defs/length", "examples": [20] }, "descend-feed": { "title": "Feed of the slow descent", "description": "Feed of the last part of the way down.\n\nUnit: mm/min, or with `in/min`.\n\nIf wrong: the holder is driven into its pocket too fast.", "$ref": "#/$defs/feed", "examples": [600] }, "pockets": { "title": "Pockets", "description": "Places of the pockets, machine coordinates: the first one, the pitch to the next and their number, or a list of places.\n\nIf wrong: the spindle is driven beside the pocket.", "anyOf": [{ "type": "object", "additionalProperties": false, "properties": { "first": { "title": "First pocket", "description": "X and Y of pocket 1.\n\nUnit: mm, or with `in`.\n\nIf wrong: the spindle is driven beside the pocket.", "$ref": "#/$defs/point", "examples": [[40, 20]] }, "pitch": { "title": "Pitch", "description": "X and Y from one pocket to the next.\n\nUnit: mm, or with `in`.\n\nIf wrong: the spindle is driven beside the pocket, farther with each one.", "$ref": "#/$defs/point", "examples": [[80, 0]] }, "count": { "title": "Number of pockets", "description": "How many there are.\n\nUnit: pockets.\n\nIf wrong: the spindle is driven past the end of the rack.", "type": "integer", "minimum": 1, "maximum": 200, "examples": [6] } } }, { "type": "array", "minItems": 1, "maxItems": 200, "items": { "$ref": "#/$defs/point" } }], "examples": [{ "first": [40, 20], "pitch": [80, 0], "count": 6 }, [[40, 20], [120, 20]]] }, "zone": { "title": "Rack zone", "description": "Box that only swaps enter.", "type": "object", "additionalProperties": false, "properties": { "min": { "title": "Least corner", "description": "Least X, Y and Z of the rack, machine coordinates.\n\nUnit: mm, or with `in`.\n\nIf wrong: the tool is driven into it.", "$ref": "#/$defs/place", "examples": [[0, 0, -95]] }, "max": { "title": "Greatest corner", "description": "Greatest X, Y and Z of the rack, machine coordinates.\n\nUnit: mm, or with `in`.\n\nIf wrong: the tool is driven into it.", "$ref": "#/$defs/place", "examples": [[500, 60, -5]] } }, "examples": [{ "min": [0, 0, -95], "max": [500, 60, -5] }] }, "slide": { "title": "Slide", "description": "The way into a fork, with slide-in.", "type": "object", "additionalProperties": false, "properties": { "direction": { "title": "Direction of the slide", "description": "Direction from the approach into the pocket.\n\nIf wrong: the holder is torn out of the fork.", "type": "string", "enum": ["+x", "-x", "+y", "-y"], "examples": ["+y"] }, "distance": { "title": "Length of the slide", "description": "Distance from the approach to the pocket.\n\nUnit: mm, or with `in`.\n\nIf wrong: the holder strikes the fork on its way up or down.", "$ref": "#/$defs/length", "examples": [40] }, "feed": { "title": "Feed of the slide", "description": "Feed of the slide.\n\nUnit: mm/min, or with `in/min`.\n\nIf wrong: the holder strikes the fork too fast.", "$ref": "#/$defs/feed", "examples": [1e3] } }, "examples": [{ "direction": "+y", "distance": 40, "feed": 1e3 }] }, "widest": { "title": "Widest tool", "description": "Widest tool that a pocket takes, or none: not checked.\n\nUnit: mm, or with `in`.\n\nIf wrong: a wide tool strikes its neighbour.", "$ref": "#/$defs/lengthOrNone", "examples": [60] }, "longest": { "title": "Longest tool", "description": "Longest tool that a pocket takes, or none: not checked.\n\nUnit: mm, or with `in`.\n\nIf wrong: a long tool strikes the table under the rack.", "$ref": "#/$defs/lengthOrNone", "examples": [90] }, "cover": { "title": "Cover", "description": "Whether the program opens and closes a cover.\n\nIf wrong: the spindle is driven into the cover.", "$ref": "#/$defs/yesNo", "examples": ["no"] }, "at-end": { "title": "At the end", "description": "What becomes of the last tool.", "type": "object", "additionalProperties": false, "properties": { "tool": { "title": "Last tool", "description": "return: it goes back to its pocket; keep: it stays in the spindle.\n\nIf wrong: the next program finds a tool where it expects none.", "type": "string", "enum": ["return", "keep"], "examples": ["return"] } }, "examples": [{ "tool": "return" }] } } }], "examples": ["none", { "style": "drop-in", "clear-z": -5, "pocket-z": -78.4, "descend-from": 20, "descend-feed": 600, "pockets": { "first": [40, 20], "pitch": [80, 0], "count": 6 }, "at-end": { "tool": "return" } }] }, "park": { "title": "Parking place", "description": "X and Y where the program leaves the axes at its end, machine coordinates.\n\nUnit: mm, or with `in`.\n\nIf wrong: the spindle is in the way of unloading.", "$ref": "#/$defs/point", "examples": [[600, 800]] }, "outputs": { "title": "Outputs", "description": "Outputs that the program switches, by a name of yours.", "type": "object", "additionalProperties": false, "patternProperties": { "^[a-z][a-z0-9-]{0,30}$": { "title": "One output", "description": "An output and when it is on.", "type": "object", "additionalProperties": false, "properties": { "number": { "title": "Number of the output", "description": "Number as the idiom says it.\n\nUnit: number of the output.\n\nIf wrong: another output is switched.", "type": "integer", "minimum": 0, "maximum": 9999, "examples": [1] }, "during": { "title": "When it is on", "description": "cutting: from the spindle's start to its stop; program: from the first swap to the end.\n\nIf wrong: the extraction is off while dust is made, or on during the swap.", "type": "string", "enum": ["cutting", "program"], "examples": ["cutting"] } }, "examples": [{ "number": 1, "during": "cutting" }] } }, "examples": [{ "extraction": { "number": 1, "during": "cutting" } }] }, "hood": { "title": "Dust hood", "description": "Whether the program lifts and lowers a dust hood.\n\nIf wrong: the hood is driven into the rack or the clamps.", "$ref": "#/$defs/yesNo", "examples": ["yes"] }, "keep-out": { "title": "Keep-out boxes", "description": "Boxes in machine coordinates that no motion of the work may enter.\n\nUnit: mm, or with `in`.\n\nIf wrong: the tool is driven into what stands there.", "type": "array", "maxItems": 50, "items": { "title": "One box", "description": "A box and what stands there.", "type": "object", "additionalProperties": false, "required": ["name", "min", "max"], "properties": { "name": { "title": "What stands there", "description": "Findings name it.\n\nIf wrong: nobody knows what the finding means.", "type": "string", "minLength": 1, "maxLength": 60, "examples": ["vise"] }, "min": { "title": "Least corner", "description": "Least X, Y and Z of what stands there, machine coordinates.\n\nUnit: mm, or with `in`.\n\nIf wrong: the tool is driven into it.", "$ref": "#/$defs/place", "examples": [[100, 100, -95]] }, "max": { "title": "Greatest corner", "description": "Greatest X, Y and Z of what stands there, machine coordinates.\n\nUnit: mm, or with `in`.\n\nIf wrong: the tool is driven into it.", "$ref": "#/$defs/place", "examples": [[250, 200, -40]] } }, "examples": [{ "name": "vise", "min": [100, 100, -95], "max": [250, 200, -40] }] }, "examples": [[{ "name": "vise", "min": [100, 100, -95], "max": [250, 200, -40] }]] }, "tapping": { "title": "Tapping", "description": "How the machine taps.", "type": "object", "additionalProperties": false, "properties": { "kind": { "title": "Kind of tapping", "description": "none: not at all; floating: with a floating holder; synchronised: spindle and feed are locked.\n\nIf wrong: the tap breaks or strips the thread.", "type": "string", "enum": ["none", "floating", "synchronised"], "examples": ["floating"] }, "reversal": { "title": "Time to reverse", "description": "Time that the spindle needs to reverse, with a floating holder.\n\nUnit: s, ms or min, written behind the number.\n\nIf wrong: the holder runs out of float and the tap breaks.", "$ref": "#/$defs/time", "examples": ["1 s"] }, "longhand": { "title": "Tapping longhand", "description": "Whether tapping may be written without its cycle.\n\nIf wrong: the tap breaks: feed and spindle do not reverse together.", "$ref": "#/$defs/yesNo", "examples": ["no"] } }, "examples": [{ "kind": "floating", "reversal": "1 s", "longhand": "no" }] }, "feed": { "title": "Feed limits", "description": "Lowest and highest feed; without them feeds are not checked against the machine.", "type": "object", "additionalProperties": false, "properties": { "least": { "title": "Lowest feed", "description": "Lowest feed.\n\nUnit: mm/min, or with `in/min`.\n\nIf wrong: the feed is raised without a word.", "$ref": "#/$defs/feed", "examples": [1] }, "most": { "title": "Highest feed", "description": "Highest feed.\n\nUnit: mm/min, or with `in/min`.\n\nIf wrong: the feed is cut without a word, and times on the sheet are wrong.", "$ref": "#/$defs/feed", "examples": [12e3] } }, "examples": [{ "least": 1, "most": 12e3 }] }, "work-zero": { "title": "Origins of the work offsets", "description": "Where the origin of each work offset (1 to 9) lies in machine coordinates, where it is always the same; a set-up file overrides it. With it, travel is checked in full.\n\nUnit: mm, or with `in`.\n\nIf wrong: a program that runs past the travel is passed, or a good one refused.", "type": "object", "additionalProperties": false, "patternProperties": { "^[1-9]$": { "title": "Origin of one work offset", "description": "X, Y and Z of its origin in machine coordinates.\n\nUnit: mm, or with `in`.\n\nIf wrong: a program that runs past the travel is passed, or a good one refused.", "$ref": "#/$defs/place", "examples": [[300, 200, -80]] } }, "examples": [{ "1": [300, 200, -80] }] } }, "examples": [{ "travel": { "x": [0, 1220], "y": [0, 810], "z": [-95, 0] }, "swap": "operator" }] }, "confirm": { "title": "Confirmations", "description": "How the program makes sure of a state before it relies on it. One that is not stated cannot be relied on: a job that needs it is refused.", "type": "object", "additionalProperties": false, "properties": { "at-speed": { "title": "Spindle at speed", "description": "How it is confirmed that the spindle is at its speed: wait (on a signal), dwell (for a time or by an expression), intrinsic (the controller holds by itself; the reason is stated), or the word operator.\n\nIf wrong: the tool cuts before the spindle is up to speed.", "anyOf": [{ "title": "By the operator", "description": "The program stops and asks the operator to see to it.", "type": "string", "const": "operator" }, { "$ref": "#/$defs/confirmation" }], "examples": [{ "wait": "at-speed", "timeout": "10 s" }, { "dwell": "max(spin_up, spin_down) * max(rpm - from_rpm, from_rpm - rpm) / max_rpm + 0.5 * second" }] }, "stopped": { "title": "Spindle stopped", "description": "How it is confirmed that the spindle stands: wait (on a signal), dwell (for a time or by an expression), intrinsic (the controller holds by itself; the reason is stated), or the word operator.\n\nIf wrong: the tool is swapped, or a hand is in the machine, while the spindle turns.", "anyOf": [{ "title": "By the operator", "description": "The program stops and asks the operator to see to it.", "type": "string", "const": "operator" }, { "$ref": "#/$defs/confirmation" }], "examples": [{ "wait": "stopped", "timeout": "30 s" }, { "dwell": "coast_down * from_rpm / max_rpm + 0.5 * second" }] }, "released": { "title": "Tool released", "description": "How it is confirmed that the drawbar is open: wait (on a signal), dwell (for a time or by an expression), intrinsic (the controller holds by itself; the reason is stated), or the word operator.\n\nIf wrong: the holder is torn out of its pocket.", "anyOf": [{ "title": "By the operator", "description": "The program stops and asks the operator to see to it.", "type": "string", "const": "operator" }, { "$ref": "#/$defs/confirmation" }], "examples": [{ "wait": "released", "timeout": "2 s" }, { "dwell": "0.8 s" }] }, "clamped": { "title": "Tool clamped", "description": "How it is confirmed that the drawbar is closed with a tool in it: wait (on a signal), dwell (for a time or by an expression), intrinsic (the controller holds by itself; the reason is stated), or the word operator.\n\nIf wrong: the spindle starts with a loose tool.", "anyOf": [{ "title": "By the operator", "description": "The program stops and asks the operator to see to it.", "type": "string", "const": "operator" }, { "$ref": "#/$defs/confirmation" }], "examples": [{ "wait": "clamped", "timeout": "2 s" }] }, "air": { "title": "Air pressure", "description": "How it is confirmed that there is air to work the drawbar: wait (on a signal), dwell (for a time or by an expression), intrinsic (the controller holds by itself; the reason is stated), or the word operator.\n\nIf wrong: the drawbar opens halfway and the tool drops.", "anyOf": [{ "title": "By the operator", "description": "The program stops and asks the operator to see to it.", "type": "string", "const": "operator" }, { "$ref": "#/$defs/confirmation" }], "examples": [{ "wait": "air", "timeout": "5 s" }] } }, "examples": [{ "at-speed": { "wait": "at-speed", "timeout": "10 s" }, "stopped": { "dwell": "60 s" } }] } }, "$defs": { "yesNo": { "description": "yes or no", "type": "string", "enum": ["yes", "no"] }, "code": { "description": "a code such as G54 or M6", "type": "string", "pattern": "^[GM]\\d{1,3}(\\.\\d)?$" }, "codeOrNone": { "description": "a code such as G54 or M6, or none", "type": "string", "pattern": "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, "codeWithWordOrNone": { "description": "a code such as G53, if need be with a word that belongs to it (G54.1 P2), or none", "type": "string", "pattern": "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$" }, "letter": { "description": "one capital letter", "type": "string", "pattern": "^[A-Z]$" }, "axisLetter": { "description": "one of X Y Z A B C U V W", "type": "string", "enum": ["X", "Y", "Z", "A", "B", "C", "U", "V", "W"] }, "letterOrNone": { "description": "one capital letter, or none", "type": "string", "pattern": "^(none|[A-Z])$" }, "length": { "description": "a length: a number in mm, or a text such as 2 in", "anyOf": [{ "type": "number", "minimum": -1e6, "maximum": 1e6 }, { "type": "string", "pattern": "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }] }, "lengthOrNone": { "description": "a length (a number in mm, or a text such as 2 in), or none", "anyOf": [{ "type": "number", "minimum": 0, "maximum": 1e6 }, { "type": "string", "pattern": "^(none|\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }] }, "feed": { "description": "a feed: a number in mm/min, or a text such as 20 in/min", "anyOf": [{ "type": "number", "exclusiveMinimum": 0, "maximum": 1e6 }, { "type": "string", "pattern": "^\\d{1,5}(\\.\\d{1,5})? (mm|in)/min$" }] }, "time": { "description": "a time such as 6 s, 500 ms or 2 min", "type": "string", "pattern": "^\\d{1,6}(\\.\\d{1,6})? ?(s|ms|min)$" }, "point": { "description": "a list of two lengths, X and Y", "type": "array", "minItems": 2, "maxItems": 2, "items": { "$ref": "#/$defs/length" } }, "place": { "description": "a list of three lengths, X, Y and Z", "type": "array", "minItems": 3, "maxItems": 3, "items": { "$ref": "#/$defs/length" } }, "template": { "description": "none, or words such as M94 P{{signal}}", "type": "string", "minLength": 1, "maxLength": 120 }, "signal": { "description": "a mapping with the keys input, level and settle", "type": "object", "additionalProperties": false, "properties": { "input": { "title": "Input", "description": "Number of the input as the wait says it.\n\nUnit: number of the input.\n\nIf wrong: the program waits on something else.", "type": "integer", "minimum": 0, "maximum": 9999, "examples": [4] }, "level": { "title": "Level", "description": "Level of the input in that state; on unless stated.\n\nIf wrong: the wait is over at once, whatever the machine does.", "type": "string", "enum": ["on", "off"], "examples": ["on"] }, "settle": { "title": "Settling time", "description": "How long the contact may still show the old state after a command: a dwell before the wait. None unless stated.\n\nUnit: s, ms or min, written behind the number.\n\nIf wrong: the wait sees the old state and is over at once.", "$ref": "#/$defs/time", "examples": ["0.3 s"] } } }, "confirmation": { "description": "a mapping with wait and timeout, with dwell, or with intrinsic", "type": "object", "additionalProperties": false, "properties": { "wait": { "title": "Wait on a signal", "description": "The signal, one of those under machine.signals.\n\nIf wrong: the program waits on something else.", "type": "string", "enum": ["at-speed", "stopped", "released", "clamped", "tool-present", "air", "hold-down"], "examples": ["at-speed"] }, "timeout": { "title": "Timeout", "description": "How long the wait lasts before the controller alarms.\n\nUnit: s, ms or min, written behind the number.\n\nIf wrong: the program hangs, or alarms before the state can be reached.", "$ref": "#/$defs/time", "examples": ["10 s"] }, "dwell": { "title": "Dwell", "description": "A time such as 5 s, or an expression that gives one: numbers, + - * / ( ), min, max, the constants second, minute, mm, inch, rev, and the names rpm, from_rpm, min_rpm, max_rpm, spin_up, spin_down, coast_down.\n\nUnit: s, ms or min behind a number; an expression has units of its own.\n\nIf wrong: the state is taken as reached before it is.", "type": "string", "minLength": 1, "maxLength": 300, "examples": ["20 * second"] }, "intrinsic": { "title": "By the controller itself", "description": "The controller holds the program until the state is reached; here stands how that is known.\n\nIf wrong: the state is taken as reached before it is.", "type": "string", "minLength": 10, "maxLength": 200, "examples": ["the start code waits for the drive's at-speed contact, tried with a slow ramp"] } } }, "own-point": { "title": "Decimal point", "description": "always: every number with decimals has a point; when-needed: whole numbers have none; never: the point is implied, and the number counts least increments.\n\nIf wrong: a control that counts least increments reads X50 as 0.050 mm; the opposite mistake moves a thousand times too far.", "type": "string", "enum": ["always", "when-needed", "never"], "examples": ["always"] }, "own-trailing-zeros": { "title": "Zeros at the end", "description": "keep: 1.500; drop: 1.5 and 10.; one: 1.5 and 10.0 (at least one digit behind the point).\n\nIf wrong: a number without decimals may be read in least increments.", "type": "string", "enum": ["keep", "drop", "one"], "examples": ["keep"] }, "own-leading-zero": { "title": "Zero before the point", "description": "keep: 0.5; drop: .5\n\nIf wrong: the word is a syntax error.", "type": "string", "enum": ["keep", "drop"], "examples": ["keep"] }, "own-plus": { "title": "Plus sign", "description": "Whether a positive number with a direction (axes, arc centres) has a + sign.\n\nIf wrong: the word is a syntax error, or an old control takes it as unsigned.", "$ref": "#/$defs/yesNo", "examples": ["no"] }, "own-suppressed-zeros": { "title": "Zeros left out", "description": "With an implied point: which zeros are left out. leading: X12500 is 12.500; trailing: the number is read from the left; none: all digits stand.\n\nIf wrong: every coordinate is wrong by powers of ten.", "type": "string", "enum": ["leading", "trailing", "none"], "examples": ["leading"] }, "own-digits": { "title": "Digits of a number", "description": "With an implied point: how many digits a number has before zeros at its end are left out.\n\nUnit: digits.\n\nIf wrong: every coordinate is wrong by powers of ten.", "type": "integer", "minimum": 1, "maximum": 12, "examples": [7] } } };
  var schema32 = { "description": "yes or no", "type": "string", "enum": ["yes", "no"] };
  var schema36 = { "title": "Decimal point", "description": "always: every number with decimals has a point; when-needed: whole numbers have none; never: the point is implied, and the number counts least increments.\n\nIf wrong: a control that counts least increments reads X50 as 0.050 mm; the opposite mistake moves a thousand times too far.", "type": "string", "enum": ["always", "when-needed", "never"], "examples": ["always"] };
  var schema37 = { "title": "Zeros at the end", "description": "keep: 1.500; drop: 1.5 and 10.; one: 1.5 and 10.0 (at least one digit behind the point).\n\nIf wrong: a number without decimals may be read in least increments.", "type": "string", "enum": ["keep", "drop", "one"], "examples": ["keep"] };
  var schema38 = { "title": "Zero before the point", "description": "keep: 0.5; drop: .5\n\nIf wrong: the word is a syntax error.", "type": "string", "enum": ["keep", "drop"], "examples": ["keep"] };
  var schema40 = { "title": "Zeros left out", "description": "With an implied point: which zeros are left out. leading: X12500 is 12.500; trailing: the number is read from the left; none: all digits stand.\n\nIf wrong: every coordinate is wrong by powers of ten.", "type": "string", "enum": ["leading", "trailing", "none"], "examples": ["leading"] };
  var schema96 = { "description": "one of X Y Z A B C U V W", "type": "string", "enum": ["X", "Y", "Z", "A", "B", "C", "U", "V", "W"] };
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
  var pattern84 = new RegExp("^[GM]\\d{1,3}$", "u");
  var pattern89 = new RegExp("^\\d{1,6}(\\.\\d{1,6})? ?(s|ms|min)$", "u");
  var pattern104 = new RegExp("^[a-z][a-z0-9-]{0,30}$", "u");
  var pattern109 = new RegExp("^[1-9]$", "u");
  var schema202 = { "description": "a mapping with the keys input, level and settle", "type": "object", "additionalProperties": false, "properties": { "input": { "title": "Input", "description": "Number of the input as the wait says it.\n\nUnit: number of the input.\n\nIf wrong: the program waits on something else.", "type": "integer", "minimum": 0, "maximum": 9999, "examples": [4] }, "level": { "title": "Level", "description": "Level of the input in that state; on unless stated.\n\nIf wrong: the wait is over at once, whatever the machine does.", "type": "string", "enum": ["on", "off"], "examples": ["on"] }, "settle": { "title": "Settling time", "description": "How long the contact may still show the old state after a command: a dwell before the wait. None unless stated.\n\nUnit: s, ms or min, written behind the number.\n\nIf wrong: the wait sees the old state and is over at once.", "$ref": "#/$defs/time", "examples": ["0.3 s"] } } };
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
          const err5 = { instancePath: instancePath + "/level", schemaPath: "#/properties/level/enum", keyword: "enum", params: { allowedValues: schema202.properties.level.enum }, message: "must be equal to one of the allowed values" };
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
          if (!pattern89.test(data2)) {
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
  var schema227 = { "description": "a mapping with wait and timeout, with dwell, or with intrinsic", "type": "object", "additionalProperties": false, "properties": { "wait": { "title": "Wait on a signal", "description": "The signal, one of those under machine.signals.\n\nIf wrong: the program waits on something else.", "type": "string", "enum": ["at-speed", "stopped", "released", "clamped", "tool-present", "air", "hold-down"], "examples": ["at-speed"] }, "timeout": { "title": "Timeout", "description": "How long the wait lasts before the controller alarms.\n\nUnit: s, ms or min, written behind the number.\n\nIf wrong: the program hangs, or alarms before the state can be reached.", "$ref": "#/$defs/time", "examples": ["10 s"] }, "dwell": { "title": "Dwell", "description": "A time such as 5 s, or an expression that gives one: numbers, + - * / ( ), min, max, the constants second, minute, mm, inch, rev, and the names rpm, from_rpm, min_rpm, max_rpm, spin_up, spin_down, coast_down.\n\nUnit: s, ms or min behind a number; an expression has units of its own.\n\nIf wrong: the state is taken as reached before it is.", "type": "string", "minLength": 1, "maxLength": 300, "examples": ["20 * second"] }, "intrinsic": { "title": "By the controller itself", "description": "The controller holds the program until the state is reached; here stands how that is known.\n\nIf wrong: the state is taken as reached before it is.", "type": "string", "minLength": 10, "maxLength": 200, "examples": ["the start code waits for the drive's at-speed contact, tried with a slow ramp"] } } };
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
          const err2 = { instancePath: instancePath + "/wait", schemaPath: "#/properties/wait/enum", keyword: "enum", params: { allowedValues: schema227.properties.wait.enum }, message: "must be equal to one of the allowed values" };
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
          if (!pattern89.test(data1)) {
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
      if (data.file !== void 0) {
        let data5 = data.file;
        if (data5 && typeof data5 == "object" && !Array.isArray(data5)) {
          for (const key1 in data5) {
            if (!(key1 === "extension" || key1 === "line-end" || key1 === "last-line-end" || key1 === "end-of-block" || key1 === "delimiter" || key1 === "program-number" || key1 === "characters")) {
              const err17 = { instancePath: instancePath + "/file", schemaPath: "#/properties/file/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key1 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err17];
              } else {
                vErrors.push(err17);
              }
              errors++;
            }
          }
          if (data5.extension !== void 0) {
            let data6 = data5.extension;
            if (typeof data6 === "string") {
              if (!pattern5.test(data6)) {
                const err18 = { instancePath: instancePath + "/file/extension", schemaPath: "#/properties/file/properties/extension/pattern", keyword: "pattern", params: { pattern: "^[A-Za-z0-9]{1,8}$" }, message: 'must match pattern "^[A-Za-z0-9]{1,8}$"' };
                if (vErrors === null) {
                  vErrors = [err18];
                } else {
                  vErrors.push(err18);
                }
                errors++;
              }
            } else {
              const err19 = { instancePath: instancePath + "/file/extension", schemaPath: "#/properties/file/properties/extension/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err19];
              } else {
                vErrors.push(err19);
              }
              errors++;
            }
          }
          if (data5["line-end"] !== void 0) {
            let data7 = data5["line-end"];
            if (typeof data7 !== "string") {
              const err20 = { instancePath: instancePath + "/file/line-end", schemaPath: "#/properties/file/properties/line-end/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err20];
              } else {
                vErrors.push(err20);
              }
              errors++;
            }
            if (!(data7 === "lf" || data7 === "crlf" || data7 === "cr")) {
              const err21 = { instancePath: instancePath + "/file/line-end", schemaPath: "#/properties/file/properties/line-end/enum", keyword: "enum", params: { allowedValues: schema31.properties.file.properties["line-end"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err21];
              } else {
                vErrors.push(err21);
              }
              errors++;
            }
          }
          if (data5["last-line-end"] !== void 0) {
            let data8 = data5["last-line-end"];
            if (typeof data8 !== "string") {
              const err22 = { instancePath: instancePath + "/file/last-line-end", schemaPath: "#/$defs/yesNo/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err22];
              } else {
                vErrors.push(err22);
              }
              errors++;
            }
            if (!(data8 === "yes" || data8 === "no")) {
              const err23 = { instancePath: instancePath + "/file/last-line-end", schemaPath: "#/$defs/yesNo/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err23];
              } else {
                vErrors.push(err23);
              }
              errors++;
            }
          }
          if (data5["end-of-block"] !== void 0) {
            let data9 = data5["end-of-block"];
            if (typeof data9 !== "string") {
              const err24 = { instancePath: instancePath + "/file/end-of-block", schemaPath: "#/properties/file/properties/end-of-block/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err24];
              } else {
                vErrors.push(err24);
              }
              errors++;
            }
            if (!(data9 === "none" || data9 === "semicolon" || data9 === "asterisk")) {
              const err25 = { instancePath: instancePath + "/file/end-of-block", schemaPath: "#/properties/file/properties/end-of-block/enum", keyword: "enum", params: { allowedValues: schema31.properties.file.properties["end-of-block"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err25];
              } else {
                vErrors.push(err25);
              }
              errors++;
            }
          }
          if (data5.delimiter !== void 0) {
            let data10 = data5.delimiter;
            if (typeof data10 !== "string") {
              const err26 = { instancePath: instancePath + "/file/delimiter", schemaPath: "#/properties/file/properties/delimiter/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err26];
              } else {
                vErrors.push(err26);
              }
              errors++;
            }
            if (!(data10 === "none" || data10 === "percent")) {
              const err27 = { instancePath: instancePath + "/file/delimiter", schemaPath: "#/properties/file/properties/delimiter/enum", keyword: "enum", params: { allowedValues: schema31.properties.file.properties.delimiter.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err27];
              } else {
                vErrors.push(err27);
              }
              errors++;
            }
          }
          if (data5["program-number"] !== void 0) {
            let data11 = data5["program-number"];
            const _errs27 = errors;
            let valid5 = false;
            const _errs28 = errors;
            if (typeof data11 !== "string") {
              const err28 = { instancePath: instancePath + "/file/program-number", schemaPath: "#/properties/file/properties/program-number/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err28];
              } else {
                vErrors.push(err28);
              }
              errors++;
            }
            if ("none" !== data11) {
              const err29 = { instancePath: instancePath + "/file/program-number", schemaPath: "#/properties/file/properties/program-number/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
              if (vErrors === null) {
                vErrors = [err29];
              } else {
                vErrors.push(err29);
              }
              errors++;
            }
            var _valid0 = _errs28 === errors;
            valid5 = valid5 || _valid0;
            const _errs30 = errors;
            if (data11 && typeof data11 == "object" && !Array.isArray(data11)) {
              for (const key2 in data11) {
                if (!(key2 === "letter" || key2 === "digits" || key2 === "from" || key2 === "to")) {
                  const err30 = { instancePath: instancePath + "/file/program-number", schemaPath: "#/properties/file/properties/program-number/anyOf/1/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key2 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err30];
                  } else {
                    vErrors.push(err30);
                  }
                  errors++;
                }
              }
              if (data11.letter !== void 0) {
                let data12 = data11.letter;
                if (typeof data12 !== "string") {
                  const err31 = { instancePath: instancePath + "/file/program-number/letter", schemaPath: "#/properties/file/properties/program-number/anyOf/1/properties/letter/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err31];
                  } else {
                    vErrors.push(err31);
                  }
                  errors++;
                }
                if (!(data12 === "O" || data12 === ":" || data12 === "%")) {
                  const err32 = { instancePath: instancePath + "/file/program-number/letter", schemaPath: "#/properties/file/properties/program-number/anyOf/1/properties/letter/enum", keyword: "enum", params: { allowedValues: schema31.properties.file.properties["program-number"].anyOf[1].properties.letter.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err32];
                  } else {
                    vErrors.push(err32);
                  }
                  errors++;
                }
              }
              if (data11.digits !== void 0) {
                let data13 = data11.digits;
                if (!(typeof data13 == "number" && (!(data13 % 1) && !isNaN(data13)) && isFinite(data13))) {
                  const err33 = { instancePath: instancePath + "/file/program-number/digits", schemaPath: "#/properties/file/properties/program-number/anyOf/1/properties/digits/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err33];
                  } else {
                    vErrors.push(err33);
                  }
                  errors++;
                }
                if (typeof data13 == "number" && isFinite(data13)) {
                  if (data13 > 8 || isNaN(data13)) {
                    const err34 = { instancePath: instancePath + "/file/program-number/digits", schemaPath: "#/properties/file/properties/program-number/anyOf/1/properties/digits/maximum", keyword: "maximum", params: { comparison: "<=", limit: 8 }, message: "must be <= 8" };
                    if (vErrors === null) {
                      vErrors = [err34];
                    } else {
                      vErrors.push(err34);
                    }
                    errors++;
                  }
                  if (data13 < 1 || isNaN(data13)) {
                    const err35 = { instancePath: instancePath + "/file/program-number/digits", schemaPath: "#/properties/file/properties/program-number/anyOf/1/properties/digits/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err35];
                    } else {
                      vErrors.push(err35);
                    }
                    errors++;
                  }
                }
              }
              if (data11.from !== void 0) {
                let data14 = data11.from;
                if (!(typeof data14 == "number" && (!(data14 % 1) && !isNaN(data14)) && isFinite(data14))) {
                  const err36 = { instancePath: instancePath + "/file/program-number/from", schemaPath: "#/properties/file/properties/program-number/anyOf/1/properties/from/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err36];
                  } else {
                    vErrors.push(err36);
                  }
                  errors++;
                }
                if (typeof data14 == "number" && isFinite(data14)) {
                  if (data14 > 99999999 || isNaN(data14)) {
                    const err37 = { instancePath: instancePath + "/file/program-number/from", schemaPath: "#/properties/file/properties/program-number/anyOf/1/properties/from/maximum", keyword: "maximum", params: { comparison: "<=", limit: 99999999 }, message: "must be <= 99999999" };
                    if (vErrors === null) {
                      vErrors = [err37];
                    } else {
                      vErrors.push(err37);
                    }
                    errors++;
                  }
                  if (data14 < 0 || isNaN(data14)) {
                    const err38 = { instancePath: instancePath + "/file/program-number/from", schemaPath: "#/properties/file/properties/program-number/anyOf/1/properties/from/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err38];
                    } else {
                      vErrors.push(err38);
                    }
                    errors++;
                  }
                }
              }
              if (data11.to !== void 0) {
                let data15 = data11.to;
                if (!(typeof data15 == "number" && (!(data15 % 1) && !isNaN(data15)) && isFinite(data15))) {
                  const err39 = { instancePath: instancePath + "/file/program-number/to", schemaPath: "#/properties/file/properties/program-number/anyOf/1/properties/to/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err39];
                  } else {
                    vErrors.push(err39);
                  }
                  errors++;
                }
                if (typeof data15 == "number" && isFinite(data15)) {
                  if (data15 > 99999999 || isNaN(data15)) {
                    const err40 = { instancePath: instancePath + "/file/program-number/to", schemaPath: "#/properties/file/properties/program-number/anyOf/1/properties/to/maximum", keyword: "maximum", params: { comparison: "<=", limit: 99999999 }, message: "must be <= 99999999" };
                    if (vErrors === null) {
                      vErrors = [err40];
                    } else {
                      vErrors.push(err40);
                    }
                    errors++;
                  }
                  if (data15 < 0 || isNaN(data15)) {
                    const err41 = { instancePath: instancePath + "/file/program-number/to", schemaPath: "#/properties/file/properties/program-number/anyOf/1/properties/to/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err41];
                    } else {
                      vErrors.push(err41);
                    }
                    errors++;
                  }
                }
              }
            } else {
              const err42 = { instancePath: instancePath + "/file/program-number", schemaPath: "#/properties/file/properties/program-number/anyOf/1/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err42];
              } else {
                vErrors.push(err42);
              }
              errors++;
            }
            var _valid0 = _errs30 === errors;
            valid5 = valid5 || _valid0;
            if (!valid5) {
              const err43 = { instancePath: instancePath + "/file/program-number", schemaPath: "#/properties/file/properties/program-number/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err43];
              } else {
                vErrors.push(err43);
              }
              errors++;
            } else {
              errors = _errs27;
              if (vErrors !== null) {
                if (_errs27) {
                  vErrors.length = _errs27;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data5.characters !== void 0) {
            let data16 = data5.characters;
            if (typeof data16 !== "string") {
              const err44 = { instancePath: instancePath + "/file/characters", schemaPath: "#/properties/file/properties/characters/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err44];
              } else {
                vErrors.push(err44);
              }
              errors++;
            }
            if (!(data16 === "upper" || data16 === "ascii" || data16 === "utf-8")) {
              const err45 = { instancePath: instancePath + "/file/characters", schemaPath: "#/properties/file/properties/characters/enum", keyword: "enum", params: { allowedValues: schema31.properties.file.properties.characters.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err45];
              } else {
                vErrors.push(err45);
              }
              errors++;
            }
          }
        } else {
          const err46 = { instancePath: instancePath + "/file", schemaPath: "#/properties/file/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err46];
          } else {
            vErrors.push(err46);
          }
          errors++;
        }
      }
      if (data.comments !== void 0) {
        let data17 = data.comments;
        if (data17 && typeof data17 == "object" && !Array.isArray(data17)) {
          for (const key3 in data17) {
            if (!(key3 === "style" || key3 === "longest")) {
              const err47 = { instancePath: instancePath + "/comments", schemaPath: "#/properties/comments/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key3 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err47];
              } else {
                vErrors.push(err47);
              }
              errors++;
            }
          }
          if (data17.style !== void 0) {
            let data18 = data17.style;
            if (typeof data18 !== "string") {
              const err48 = { instancePath: instancePath + "/comments/style", schemaPath: "#/properties/comments/properties/style/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err48];
              } else {
                vErrors.push(err48);
              }
              errors++;
            }
            if (!(data18 === "parentheses" || data18 === "semicolon" || data18 === "none")) {
              const err49 = { instancePath: instancePath + "/comments/style", schemaPath: "#/properties/comments/properties/style/enum", keyword: "enum", params: { allowedValues: schema31.properties.comments.properties.style.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err49];
              } else {
                vErrors.push(err49);
              }
              errors++;
            }
          }
          if (data17.longest !== void 0) {
            let data19 = data17.longest;
            if (!(typeof data19 == "number" && (!(data19 % 1) && !isNaN(data19)) && isFinite(data19))) {
              const err50 = { instancePath: instancePath + "/comments/longest", schemaPath: "#/properties/comments/properties/longest/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
              if (vErrors === null) {
                vErrors = [err50];
              } else {
                vErrors.push(err50);
              }
              errors++;
            }
            if (typeof data19 == "number" && isFinite(data19)) {
              if (data19 > 200 || isNaN(data19)) {
                const err51 = { instancePath: instancePath + "/comments/longest", schemaPath: "#/properties/comments/properties/longest/maximum", keyword: "maximum", params: { comparison: "<=", limit: 200 }, message: "must be <= 200" };
                if (vErrors === null) {
                  vErrors = [err51];
                } else {
                  vErrors.push(err51);
                }
                errors++;
              }
              if (data19 < 8 || isNaN(data19)) {
                const err52 = { instancePath: instancePath + "/comments/longest", schemaPath: "#/properties/comments/properties/longest/minimum", keyword: "minimum", params: { comparison: ">=", limit: 8 }, message: "must be >= 8" };
                if (vErrors === null) {
                  vErrors = [err52];
                } else {
                  vErrors.push(err52);
                }
                errors++;
              }
            }
          }
        } else {
          const err53 = { instancePath: instancePath + "/comments", schemaPath: "#/properties/comments/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err53];
          } else {
            vErrors.push(err53);
          }
          errors++;
        }
      }
      if (data.blocks !== void 0) {
        let data20 = data.blocks;
        if (data20 && typeof data20 == "object" && !Array.isArray(data20)) {
          for (const key4 in data20) {
            if (!func1.call(schema31.properties.blocks.properties, key4)) {
              const err54 = { instancePath: instancePath + "/blocks", schemaPath: "#/properties/blocks/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key4 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err54];
              } else {
                vErrors.push(err54);
              }
              errors++;
            }
          }
          if (data20.number !== void 0) {
            let data21 = data20.number;
            const _errs54 = errors;
            let valid9 = false;
            const _errs55 = errors;
            if (typeof data21 !== "string") {
              const err55 = { instancePath: instancePath + "/blocks/number", schemaPath: "#/properties/blocks/properties/number/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err55];
              } else {
                vErrors.push(err55);
              }
              errors++;
            }
            if ("none" !== data21) {
              const err56 = { instancePath: instancePath + "/blocks/number", schemaPath: "#/properties/blocks/properties/number/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
              if (vErrors === null) {
                vErrors = [err56];
              } else {
                vErrors.push(err56);
              }
              errors++;
            }
            var _valid1 = _errs55 === errors;
            valid9 = valid9 || _valid1;
            const _errs57 = errors;
            if (data21 && typeof data21 == "object" && !Array.isArray(data21)) {
              for (const key5 in data21) {
                if (!(key5 === "on" || key5 === "start" || key5 === "step" || key5 === "to" || key5 === "width")) {
                  const err57 = { instancePath: instancePath + "/blocks/number", schemaPath: "#/properties/blocks/properties/number/anyOf/1/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key5 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err57];
                  } else {
                    vErrors.push(err57);
                  }
                  errors++;
                }
              }
              if (data21.on !== void 0) {
                let data22 = data21.on;
                if (typeof data22 !== "string") {
                  const err58 = { instancePath: instancePath + "/blocks/number/on", schemaPath: "#/properties/blocks/properties/number/anyOf/1/properties/on/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err58];
                  } else {
                    vErrors.push(err58);
                  }
                  errors++;
                }
                if (!(data22 === "all" || data22 === "sections")) {
                  const err59 = { instancePath: instancePath + "/blocks/number/on", schemaPath: "#/properties/blocks/properties/number/anyOf/1/properties/on/enum", keyword: "enum", params: { allowedValues: schema31.properties.blocks.properties.number.anyOf[1].properties.on.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err59];
                  } else {
                    vErrors.push(err59);
                  }
                  errors++;
                }
              }
              if (data21.start !== void 0) {
                let data23 = data21.start;
                if (!(typeof data23 == "number" && (!(data23 % 1) && !isNaN(data23)) && isFinite(data23))) {
                  const err60 = { instancePath: instancePath + "/blocks/number/start", schemaPath: "#/properties/blocks/properties/number/anyOf/1/properties/start/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err60];
                  } else {
                    vErrors.push(err60);
                  }
                  errors++;
                }
                if (typeof data23 == "number" && isFinite(data23)) {
                  if (data23 > 99999999 || isNaN(data23)) {
                    const err61 = { instancePath: instancePath + "/blocks/number/start", schemaPath: "#/properties/blocks/properties/number/anyOf/1/properties/start/maximum", keyword: "maximum", params: { comparison: "<=", limit: 99999999 }, message: "must be <= 99999999" };
                    if (vErrors === null) {
                      vErrors = [err61];
                    } else {
                      vErrors.push(err61);
                    }
                    errors++;
                  }
                  if (data23 < 0 || isNaN(data23)) {
                    const err62 = { instancePath: instancePath + "/blocks/number/start", schemaPath: "#/properties/blocks/properties/number/anyOf/1/properties/start/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err62];
                    } else {
                      vErrors.push(err62);
                    }
                    errors++;
                  }
                }
              }
              if (data21.step !== void 0) {
                let data24 = data21.step;
                if (!(typeof data24 == "number" && (!(data24 % 1) && !isNaN(data24)) && isFinite(data24))) {
                  const err63 = { instancePath: instancePath + "/blocks/number/step", schemaPath: "#/properties/blocks/properties/number/anyOf/1/properties/step/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err63];
                  } else {
                    vErrors.push(err63);
                  }
                  errors++;
                }
                if (typeof data24 == "number" && isFinite(data24)) {
                  if (data24 > 1e3 || isNaN(data24)) {
                    const err64 = { instancePath: instancePath + "/blocks/number/step", schemaPath: "#/properties/blocks/properties/number/anyOf/1/properties/step/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e3 }, message: "must be <= 1000" };
                    if (vErrors === null) {
                      vErrors = [err64];
                    } else {
                      vErrors.push(err64);
                    }
                    errors++;
                  }
                  if (data24 < 1 || isNaN(data24)) {
                    const err65 = { instancePath: instancePath + "/blocks/number/step", schemaPath: "#/properties/blocks/properties/number/anyOf/1/properties/step/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
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
                  const err66 = { instancePath: instancePath + "/blocks/number/to", schemaPath: "#/properties/blocks/properties/number/anyOf/1/properties/to/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err66];
                  } else {
                    vErrors.push(err66);
                  }
                  errors++;
                }
                if (typeof data25 == "number" && isFinite(data25)) {
                  if (data25 > 99999999 || isNaN(data25)) {
                    const err67 = { instancePath: instancePath + "/blocks/number/to", schemaPath: "#/properties/blocks/properties/number/anyOf/1/properties/to/maximum", keyword: "maximum", params: { comparison: "<=", limit: 99999999 }, message: "must be <= 99999999" };
                    if (vErrors === null) {
                      vErrors = [err67];
                    } else {
                      vErrors.push(err67);
                    }
                    errors++;
                  }
                  if (data25 < 1 || isNaN(data25)) {
                    const err68 = { instancePath: instancePath + "/blocks/number/to", schemaPath: "#/properties/blocks/properties/number/anyOf/1/properties/to/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err68];
                    } else {
                      vErrors.push(err68);
                    }
                    errors++;
                  }
                }
              }
              if (data21.width !== void 0) {
                let data26 = data21.width;
                if (!(typeof data26 == "number" && (!(data26 % 1) && !isNaN(data26)) && isFinite(data26))) {
                  const err69 = { instancePath: instancePath + "/blocks/number/width", schemaPath: "#/properties/blocks/properties/number/anyOf/1/properties/width/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err69];
                  } else {
                    vErrors.push(err69);
                  }
                  errors++;
                }
                if (typeof data26 == "number" && isFinite(data26)) {
                  if (data26 > 8 || isNaN(data26)) {
                    const err70 = { instancePath: instancePath + "/blocks/number/width", schemaPath: "#/properties/blocks/properties/number/anyOf/1/properties/width/maximum", keyword: "maximum", params: { comparison: "<=", limit: 8 }, message: "must be <= 8" };
                    if (vErrors === null) {
                      vErrors = [err70];
                    } else {
                      vErrors.push(err70);
                    }
                    errors++;
                  }
                  if (data26 < 0 || isNaN(data26)) {
                    const err71 = { instancePath: instancePath + "/blocks/number/width", schemaPath: "#/properties/blocks/properties/number/anyOf/1/properties/width/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err71];
                    } else {
                      vErrors.push(err71);
                    }
                    errors++;
                  }
                }
              }
            } else {
              const err72 = { instancePath: instancePath + "/blocks/number", schemaPath: "#/properties/blocks/properties/number/anyOf/1/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err72];
              } else {
                vErrors.push(err72);
              }
              errors++;
            }
            var _valid1 = _errs57 === errors;
            valid9 = valid9 || _valid1;
            if (!valid9) {
              const err73 = { instancePath: instancePath + "/blocks/number", schemaPath: "#/properties/blocks/properties/number/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err73];
              } else {
                vErrors.push(err73);
              }
              errors++;
            } else {
              errors = _errs54;
              if (vErrors !== null) {
                if (_errs54) {
                  vErrors.length = _errs54;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data20.separator !== void 0) {
            let data27 = data20.separator;
            if (typeof data27 !== "string") {
              const err74 = { instancePath: instancePath + "/blocks/separator", schemaPath: "#/properties/blocks/properties/separator/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err74];
              } else {
                vErrors.push(err74);
              }
              errors++;
            }
            if (!(data27 === "none" || data27 === "blank" || data27 === "tab")) {
              const err75 = { instancePath: instancePath + "/blocks/separator", schemaPath: "#/properties/blocks/properties/separator/enum", keyword: "enum", params: { allowedValues: schema31.properties.blocks.properties.separator.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err75];
              } else {
                vErrors.push(err75);
              }
              errors++;
            }
          }
          if (data20.order !== void 0) {
            let data28 = data20.order;
            if (Array.isArray(data28)) {
              if (data28.length > 26) {
                const err76 = { instancePath: instancePath + "/blocks/order", schemaPath: "#/properties/blocks/properties/order/maxItems", keyword: "maxItems", params: { limit: 26 }, message: "must NOT have more than 26 items" };
                if (vErrors === null) {
                  vErrors = [err76];
                } else {
                  vErrors.push(err76);
                }
                errors++;
              }
              if (data28.length < 3) {
                const err77 = { instancePath: instancePath + "/blocks/order", schemaPath: "#/properties/blocks/properties/order/minItems", keyword: "minItems", params: { limit: 3 }, message: "must NOT have fewer than 3 items" };
                if (vErrors === null) {
                  vErrors = [err77];
                } else {
                  vErrors.push(err77);
                }
                errors++;
              }
              const len1 = data28.length;
              for (let i1 = 0; i1 < len1; i1++) {
                let data29 = data28[i1];
                if (typeof data29 === "string") {
                  if (!pattern6.test(data29)) {
                    const err78 = { instancePath: instancePath + "/blocks/order/" + i1, schemaPath: "#/$defs/letter/pattern", keyword: "pattern", params: { pattern: "^[A-Z]$" }, message: 'must match pattern "^[A-Z]$"' };
                    if (vErrors === null) {
                      vErrors = [err78];
                    } else {
                      vErrors.push(err78);
                    }
                    errors++;
                  }
                } else {
                  const err79 = { instancePath: instancePath + "/blocks/order/" + i1, schemaPath: "#/$defs/letter/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err79];
                  } else {
                    vErrors.push(err79);
                  }
                  errors++;
                }
              }
              let i2 = data28.length;
              let j0;
              if (i2 > 1) {
                outer0: for (; i2--; ) {
                  for (j0 = i2; j0--; ) {
                    if (func0(data28[i2], data28[j0])) {
                      const err80 = { instancePath: instancePath + "/blocks/order", schemaPath: "#/properties/blocks/properties/order/uniqueItems", keyword: "uniqueItems", params: { i: i2, j: j0 }, message: "must NOT have duplicate items (items ## " + j0 + " and " + i2 + " are identical)" };
                      if (vErrors === null) {
                        vErrors = [err80];
                      } else {
                        vErrors.push(err80);
                      }
                      errors++;
                      break outer0;
                    }
                  }
                }
              }
            } else {
              const err81 = { instancePath: instancePath + "/blocks/order", schemaPath: "#/properties/blocks/properties/order/type", keyword: "type", params: { type: "array" }, message: "must be array" };
              if (vErrors === null) {
                vErrors = [err81];
              } else {
                vErrors.push(err81);
              }
              errors++;
            }
          }
          if (data20.longest !== void 0) {
            let data30 = data20.longest;
            const _errs78 = errors;
            let valid15 = false;
            const _errs79 = errors;
            if (typeof data30 !== "string") {
              const err82 = { instancePath: instancePath + "/blocks/longest", schemaPath: "#/properties/blocks/properties/longest/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err82];
              } else {
                vErrors.push(err82);
              }
              errors++;
            }
            if ("none" !== data30) {
              const err83 = { instancePath: instancePath + "/blocks/longest", schemaPath: "#/properties/blocks/properties/longest/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
              if (vErrors === null) {
                vErrors = [err83];
              } else {
                vErrors.push(err83);
              }
              errors++;
            }
            var _valid2 = _errs79 === errors;
            valid15 = valid15 || _valid2;
            const _errs81 = errors;
            if (!(typeof data30 == "number" && (!(data30 % 1) && !isNaN(data30)) && isFinite(data30))) {
              const err84 = { instancePath: instancePath + "/blocks/longest", schemaPath: "#/properties/blocks/properties/longest/anyOf/1/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
              if (vErrors === null) {
                vErrors = [err84];
              } else {
                vErrors.push(err84);
              }
              errors++;
            }
            if (typeof data30 == "number" && isFinite(data30)) {
              if (data30 > 4e3 || isNaN(data30)) {
                const err85 = { instancePath: instancePath + "/blocks/longest", schemaPath: "#/properties/blocks/properties/longest/anyOf/1/maximum", keyword: "maximum", params: { comparison: "<=", limit: 4e3 }, message: "must be <= 4000" };
                if (vErrors === null) {
                  vErrors = [err85];
                } else {
                  vErrors.push(err85);
                }
                errors++;
              }
              if (data30 < 20 || isNaN(data30)) {
                const err86 = { instancePath: instancePath + "/blocks/longest", schemaPath: "#/properties/blocks/properties/longest/anyOf/1/minimum", keyword: "minimum", params: { comparison: ">=", limit: 20 }, message: "must be >= 20" };
                if (vErrors === null) {
                  vErrors = [err86];
                } else {
                  vErrors.push(err86);
                }
                errors++;
              }
            }
            var _valid2 = _errs81 === errors;
            valid15 = valid15 || _valid2;
            if (!valid15) {
              const err87 = { instancePath: instancePath + "/blocks/longest", schemaPath: "#/properties/blocks/properties/longest/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err87];
              } else {
                vErrors.push(err87);
              }
              errors++;
            } else {
              errors = _errs78;
              if (vErrors !== null) {
                if (_errs78) {
                  vErrors.length = _errs78;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data20["g-words"] !== void 0) {
            let data31 = data20["g-words"];
            if (typeof data31 !== "string") {
              const err88 = { instancePath: instancePath + "/blocks/g-words", schemaPath: "#/properties/blocks/properties/g-words/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err88];
              } else {
                vErrors.push(err88);
              }
              errors++;
            }
            if (!(data31 === "one" || data31 === "any")) {
              const err89 = { instancePath: instancePath + "/blocks/g-words", schemaPath: "#/properties/blocks/properties/g-words/enum", keyword: "enum", params: { allowedValues: schema31.properties.blocks.properties["g-words"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err89];
              } else {
                vErrors.push(err89);
              }
              errors++;
            }
          }
          if (data20["m-words"] !== void 0) {
            let data32 = data20["m-words"];
            if (!(typeof data32 == "number" && (!(data32 % 1) && !isNaN(data32)) && isFinite(data32))) {
              const err90 = { instancePath: instancePath + "/blocks/m-words", schemaPath: "#/properties/blocks/properties/m-words/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
              if (vErrors === null) {
                vErrors = [err90];
              } else {
                vErrors.push(err90);
              }
              errors++;
            }
            if (typeof data32 == "number" && isFinite(data32)) {
              if (data32 > 8 || isNaN(data32)) {
                const err91 = { instancePath: instancePath + "/blocks/m-words", schemaPath: "#/properties/blocks/properties/m-words/maximum", keyword: "maximum", params: { comparison: "<=", limit: 8 }, message: "must be <= 8" };
                if (vErrors === null) {
                  vErrors = [err91];
                } else {
                  vErrors.push(err91);
                }
                errors++;
              }
              if (data32 < 1 || isNaN(data32)) {
                const err92 = { instancePath: instancePath + "/blocks/m-words", schemaPath: "#/properties/blocks/properties/m-words/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                if (vErrors === null) {
                  vErrors = [err92];
                } else {
                  vErrors.push(err92);
                }
                errors++;
              }
            }
          }
          if (data20.modes !== void 0) {
            let data33 = data20.modes;
            if (typeof data33 !== "string") {
              const err93 = { instancePath: instancePath + "/blocks/modes", schemaPath: "#/properties/blocks/properties/modes/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err93];
              } else {
                vErrors.push(err93);
              }
              errors++;
            }
            if (!(data33 === "together" || data33 === "apart")) {
              const err94 = { instancePath: instancePath + "/blocks/modes", schemaPath: "#/properties/blocks/properties/modes/enum", keyword: "enum", params: { allowedValues: schema31.properties.blocks.properties.modes.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err94];
              } else {
                vErrors.push(err94);
              }
              errors++;
            }
          }
          if (data20.delete !== void 0) {
            let data34 = data20.delete;
            if (typeof data34 !== "string") {
              const err95 = { instancePath: instancePath + "/blocks/delete", schemaPath: "#/$defs/yesNo/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err95];
              } else {
                vErrors.push(err95);
              }
              errors++;
            }
            if (!(data34 === "yes" || data34 === "no")) {
              const err96 = { instancePath: instancePath + "/blocks/delete", schemaPath: "#/$defs/yesNo/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err96];
              } else {
                vErrors.push(err96);
              }
              errors++;
            }
          }
          if (data20["stops-act"] !== void 0) {
            let data35 = data20["stops-act"];
            if (typeof data35 !== "string") {
              const err97 = { instancePath: instancePath + "/blocks/stops-act", schemaPath: "#/properties/blocks/properties/stops-act/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err97];
              } else {
                vErrors.push(err97);
              }
              errors++;
            }
            if (!(data35 === "before-motion" || data35 === "after-motion")) {
              const err98 = { instancePath: instancePath + "/blocks/stops-act", schemaPath: "#/properties/blocks/properties/stops-act/enum", keyword: "enum", params: { allowedValues: schema31.properties.blocks.properties["stops-act"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err98];
              } else {
                vErrors.push(err98);
              }
              errors++;
            }
          }
        } else {
          const err99 = { instancePath: instancePath + "/blocks", schemaPath: "#/properties/blocks/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err99];
          } else {
            vErrors.push(err99);
          }
          errors++;
        }
      }
      if (data.numbers !== void 0) {
        let data36 = data.numbers;
        if (data36 && typeof data36 == "object" && !Array.isArray(data36)) {
          for (const key6 in data36) {
            if (!func1.call(schema31.properties.numbers.properties, key6)) {
              const err100 = { instancePath: instancePath + "/numbers", schemaPath: "#/properties/numbers/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key6 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err100];
              } else {
                vErrors.push(err100);
              }
              errors++;
            }
          }
          if (data36.point !== void 0) {
            let data37 = data36.point;
            if (typeof data37 !== "string") {
              const err101 = { instancePath: instancePath + "/numbers/point", schemaPath: "#/properties/numbers/properties/point/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err101];
              } else {
                vErrors.push(err101);
              }
              errors++;
            }
            if (!(data37 === "always" || data37 === "when-needed" || data37 === "never")) {
              const err102 = { instancePath: instancePath + "/numbers/point", schemaPath: "#/properties/numbers/properties/point/enum", keyword: "enum", params: { allowedValues: schema31.properties.numbers.properties.point.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err102];
              } else {
                vErrors.push(err102);
              }
              errors++;
            }
          }
          if (data36["trailing-zeros"] !== void 0) {
            let data38 = data36["trailing-zeros"];
            if (typeof data38 !== "string") {
              const err103 = { instancePath: instancePath + "/numbers/trailing-zeros", schemaPath: "#/properties/numbers/properties/trailing-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err103];
              } else {
                vErrors.push(err103);
              }
              errors++;
            }
            if (!(data38 === "keep" || data38 === "drop" || data38 === "one")) {
              const err104 = { instancePath: instancePath + "/numbers/trailing-zeros", schemaPath: "#/properties/numbers/properties/trailing-zeros/enum", keyword: "enum", params: { allowedValues: schema31.properties.numbers.properties["trailing-zeros"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err104];
              } else {
                vErrors.push(err104);
              }
              errors++;
            }
          }
          if (data36["leading-zero"] !== void 0) {
            let data39 = data36["leading-zero"];
            if (typeof data39 !== "string") {
              const err105 = { instancePath: instancePath + "/numbers/leading-zero", schemaPath: "#/properties/numbers/properties/leading-zero/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err105];
              } else {
                vErrors.push(err105);
              }
              errors++;
            }
            if (!(data39 === "keep" || data39 === "drop")) {
              const err106 = { instancePath: instancePath + "/numbers/leading-zero", schemaPath: "#/properties/numbers/properties/leading-zero/enum", keyword: "enum", params: { allowedValues: schema31.properties.numbers.properties["leading-zero"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err106];
              } else {
                vErrors.push(err106);
              }
              errors++;
            }
          }
          if (data36.plus !== void 0) {
            let data40 = data36.plus;
            if (typeof data40 !== "string") {
              const err107 = { instancePath: instancePath + "/numbers/plus", schemaPath: "#/$defs/yesNo/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err107];
              } else {
                vErrors.push(err107);
              }
              errors++;
            }
            if (!(data40 === "yes" || data40 === "no")) {
              const err108 = { instancePath: instancePath + "/numbers/plus", schemaPath: "#/$defs/yesNo/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err108];
              } else {
                vErrors.push(err108);
              }
              errors++;
            }
          }
          if (data36["suppressed-zeros"] !== void 0) {
            let data41 = data36["suppressed-zeros"];
            if (typeof data41 !== "string") {
              const err109 = { instancePath: instancePath + "/numbers/suppressed-zeros", schemaPath: "#/properties/numbers/properties/suppressed-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err109];
              } else {
                vErrors.push(err109);
              }
              errors++;
            }
            if (!(data41 === "leading" || data41 === "trailing" || data41 === "none")) {
              const err110 = { instancePath: instancePath + "/numbers/suppressed-zeros", schemaPath: "#/properties/numbers/properties/suppressed-zeros/enum", keyword: "enum", params: { allowedValues: schema31.properties.numbers.properties["suppressed-zeros"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err110];
              } else {
                vErrors.push(err110);
              }
              errors++;
            }
          }
          if (data36.digits !== void 0) {
            let data42 = data36.digits;
            if (!(typeof data42 == "number" && (!(data42 % 1) && !isNaN(data42)) && isFinite(data42))) {
              const err111 = { instancePath: instancePath + "/numbers/digits", schemaPath: "#/properties/numbers/properties/digits/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
              if (vErrors === null) {
                vErrors = [err111];
              } else {
                vErrors.push(err111);
              }
              errors++;
            }
            if (typeof data42 == "number" && isFinite(data42)) {
              if (data42 > 12 || isNaN(data42)) {
                const err112 = { instancePath: instancePath + "/numbers/digits", schemaPath: "#/properties/numbers/properties/digits/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                if (vErrors === null) {
                  vErrors = [err112];
                } else {
                  vErrors.push(err112);
                }
                errors++;
              }
              if (data42 < 1 || isNaN(data42)) {
                const err113 = { instancePath: instancePath + "/numbers/digits", schemaPath: "#/properties/numbers/properties/digits/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                if (vErrors === null) {
                  vErrors = [err113];
                } else {
                  vErrors.push(err113);
                }
                errors++;
              }
            }
          }
          if (data36.length !== void 0) {
            let data43 = data36.length;
            if (data43 && typeof data43 == "object" && !Array.isArray(data43)) {
              for (const key7 in data43) {
                if (!(key7 === "mm" || key7 === "inch" || key7 === "point" || key7 === "trailing-zeros" || key7 === "leading-zero" || key7 === "plus" || key7 === "suppressed-zeros" || key7 === "digits")) {
                  const err114 = { instancePath: instancePath + "/numbers/length", schemaPath: "#/properties/numbers/properties/length/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key7 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err114];
                  } else {
                    vErrors.push(err114);
                  }
                  errors++;
                }
              }
              if (data43.mm !== void 0) {
                let data44 = data43.mm;
                if (!(typeof data44 == "number" && (!(data44 % 1) && !isNaN(data44)) && isFinite(data44))) {
                  const err115 = { instancePath: instancePath + "/numbers/length/mm", schemaPath: "#/properties/numbers/properties/length/properties/mm/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err115];
                  } else {
                    vErrors.push(err115);
                  }
                  errors++;
                }
                if (typeof data44 == "number" && isFinite(data44)) {
                  if (data44 > 7 || isNaN(data44)) {
                    const err116 = { instancePath: instancePath + "/numbers/length/mm", schemaPath: "#/properties/numbers/properties/length/properties/mm/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                    if (vErrors === null) {
                      vErrors = [err116];
                    } else {
                      vErrors.push(err116);
                    }
                    errors++;
                  }
                  if (data44 < 0 || isNaN(data44)) {
                    const err117 = { instancePath: instancePath + "/numbers/length/mm", schemaPath: "#/properties/numbers/properties/length/properties/mm/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err117];
                    } else {
                      vErrors.push(err117);
                    }
                    errors++;
                  }
                }
              }
              if (data43.inch !== void 0) {
                let data45 = data43.inch;
                if (!(typeof data45 == "number" && (!(data45 % 1) && !isNaN(data45)) && isFinite(data45))) {
                  const err118 = { instancePath: instancePath + "/numbers/length/inch", schemaPath: "#/properties/numbers/properties/length/properties/inch/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err118];
                  } else {
                    vErrors.push(err118);
                  }
                  errors++;
                }
                if (typeof data45 == "number" && isFinite(data45)) {
                  if (data45 > 6 || isNaN(data45)) {
                    const err119 = { instancePath: instancePath + "/numbers/length/inch", schemaPath: "#/properties/numbers/properties/length/properties/inch/maximum", keyword: "maximum", params: { comparison: "<=", limit: 6 }, message: "must be <= 6" };
                    if (vErrors === null) {
                      vErrors = [err119];
                    } else {
                      vErrors.push(err119);
                    }
                    errors++;
                  }
                  if (data45 < 0 || isNaN(data45)) {
                    const err120 = { instancePath: instancePath + "/numbers/length/inch", schemaPath: "#/properties/numbers/properties/length/properties/inch/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err120];
                    } else {
                      vErrors.push(err120);
                    }
                    errors++;
                  }
                }
              }
              if (data43.point !== void 0) {
                let data46 = data43.point;
                if (typeof data46 !== "string") {
                  const err121 = { instancePath: instancePath + "/numbers/length/point", schemaPath: "#/$defs/own-point/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err121];
                  } else {
                    vErrors.push(err121);
                  }
                  errors++;
                }
                if (!(data46 === "always" || data46 === "when-needed" || data46 === "never")) {
                  const err122 = { instancePath: instancePath + "/numbers/length/point", schemaPath: "#/$defs/own-point/enum", keyword: "enum", params: { allowedValues: schema36.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err122];
                  } else {
                    vErrors.push(err122);
                  }
                  errors++;
                }
              }
              if (data43["trailing-zeros"] !== void 0) {
                let data47 = data43["trailing-zeros"];
                if (typeof data47 !== "string") {
                  const err123 = { instancePath: instancePath + "/numbers/length/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err123];
                  } else {
                    vErrors.push(err123);
                  }
                  errors++;
                }
                if (!(data47 === "keep" || data47 === "drop" || data47 === "one")) {
                  const err124 = { instancePath: instancePath + "/numbers/length/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/enum", keyword: "enum", params: { allowedValues: schema37.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err124];
                  } else {
                    vErrors.push(err124);
                  }
                  errors++;
                }
              }
              if (data43["leading-zero"] !== void 0) {
                let data48 = data43["leading-zero"];
                if (typeof data48 !== "string") {
                  const err125 = { instancePath: instancePath + "/numbers/length/leading-zero", schemaPath: "#/$defs/own-leading-zero/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err125];
                  } else {
                    vErrors.push(err125);
                  }
                  errors++;
                }
                if (!(data48 === "keep" || data48 === "drop")) {
                  const err126 = { instancePath: instancePath + "/numbers/length/leading-zero", schemaPath: "#/$defs/own-leading-zero/enum", keyword: "enum", params: { allowedValues: schema38.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err126];
                  } else {
                    vErrors.push(err126);
                  }
                  errors++;
                }
              }
              if (data43.plus !== void 0) {
                let data49 = data43.plus;
                if (typeof data49 !== "string") {
                  const err127 = { instancePath: instancePath + "/numbers/length/plus", schemaPath: "#/$defs/own-plus/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err127];
                  } else {
                    vErrors.push(err127);
                  }
                  errors++;
                }
                if (!(data49 === "yes" || data49 === "no")) {
                  const err128 = { instancePath: instancePath + "/numbers/length/plus", schemaPath: "#/$defs/own-plus/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err128];
                  } else {
                    vErrors.push(err128);
                  }
                  errors++;
                }
              }
              if (data43["suppressed-zeros"] !== void 0) {
                let data50 = data43["suppressed-zeros"];
                if (typeof data50 !== "string") {
                  const err129 = { instancePath: instancePath + "/numbers/length/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err129];
                  } else {
                    vErrors.push(err129);
                  }
                  errors++;
                }
                if (!(data50 === "leading" || data50 === "trailing" || data50 === "none")) {
                  const err130 = { instancePath: instancePath + "/numbers/length/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/enum", keyword: "enum", params: { allowedValues: schema40.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err130];
                  } else {
                    vErrors.push(err130);
                  }
                  errors++;
                }
              }
              if (data43.digits !== void 0) {
                let data51 = data43.digits;
                if (!(typeof data51 == "number" && (!(data51 % 1) && !isNaN(data51)) && isFinite(data51))) {
                  const err131 = { instancePath: instancePath + "/numbers/length/digits", schemaPath: "#/$defs/own-digits/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err131];
                  } else {
                    vErrors.push(err131);
                  }
                  errors++;
                }
                if (typeof data51 == "number" && isFinite(data51)) {
                  if (data51 > 12 || isNaN(data51)) {
                    const err132 = { instancePath: instancePath + "/numbers/length/digits", schemaPath: "#/$defs/own-digits/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err132];
                    } else {
                      vErrors.push(err132);
                    }
                    errors++;
                  }
                  if (data51 < 1 || isNaN(data51)) {
                    const err133 = { instancePath: instancePath + "/numbers/length/digits", schemaPath: "#/$defs/own-digits/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err133];
                    } else {
                      vErrors.push(err133);
                    }
                    errors++;
                  }
                }
              }
            } else {
              const err134 = { instancePath: instancePath + "/numbers/length", schemaPath: "#/properties/numbers/properties/length/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err134];
              } else {
                vErrors.push(err134);
              }
              errors++;
            }
          }
          if (data36["arc-centre"] !== void 0) {
            let data52 = data36["arc-centre"];
            if (data52 && typeof data52 == "object" && !Array.isArray(data52)) {
              for (const key8 in data52) {
                if (!(key8 === "mm" || key8 === "inch" || key8 === "point" || key8 === "trailing-zeros" || key8 === "leading-zero" || key8 === "plus" || key8 === "suppressed-zeros" || key8 === "digits")) {
                  const err135 = { instancePath: instancePath + "/numbers/arc-centre", schemaPath: "#/properties/numbers/properties/arc-centre/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key8 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err135];
                  } else {
                    vErrors.push(err135);
                  }
                  errors++;
                }
              }
              if (data52.mm !== void 0) {
                let data53 = data52.mm;
                if (!(typeof data53 == "number" && (!(data53 % 1) && !isNaN(data53)) && isFinite(data53))) {
                  const err136 = { instancePath: instancePath + "/numbers/arc-centre/mm", schemaPath: "#/properties/numbers/properties/arc-centre/properties/mm/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err136];
                  } else {
                    vErrors.push(err136);
                  }
                  errors++;
                }
                if (typeof data53 == "number" && isFinite(data53)) {
                  if (data53 > 7 || isNaN(data53)) {
                    const err137 = { instancePath: instancePath + "/numbers/arc-centre/mm", schemaPath: "#/properties/numbers/properties/arc-centre/properties/mm/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                    if (vErrors === null) {
                      vErrors = [err137];
                    } else {
                      vErrors.push(err137);
                    }
                    errors++;
                  }
                  if (data53 < 0 || isNaN(data53)) {
                    const err138 = { instancePath: instancePath + "/numbers/arc-centre/mm", schemaPath: "#/properties/numbers/properties/arc-centre/properties/mm/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err138];
                    } else {
                      vErrors.push(err138);
                    }
                    errors++;
                  }
                }
              }
              if (data52.inch !== void 0) {
                let data54 = data52.inch;
                if (!(typeof data54 == "number" && (!(data54 % 1) && !isNaN(data54)) && isFinite(data54))) {
                  const err139 = { instancePath: instancePath + "/numbers/arc-centre/inch", schemaPath: "#/properties/numbers/properties/arc-centre/properties/inch/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err139];
                  } else {
                    vErrors.push(err139);
                  }
                  errors++;
                }
                if (typeof data54 == "number" && isFinite(data54)) {
                  if (data54 > 6 || isNaN(data54)) {
                    const err140 = { instancePath: instancePath + "/numbers/arc-centre/inch", schemaPath: "#/properties/numbers/properties/arc-centre/properties/inch/maximum", keyword: "maximum", params: { comparison: "<=", limit: 6 }, message: "must be <= 6" };
                    if (vErrors === null) {
                      vErrors = [err140];
                    } else {
                      vErrors.push(err140);
                    }
                    errors++;
                  }
                  if (data54 < 0 || isNaN(data54)) {
                    const err141 = { instancePath: instancePath + "/numbers/arc-centre/inch", schemaPath: "#/properties/numbers/properties/arc-centre/properties/inch/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err141];
                    } else {
                      vErrors.push(err141);
                    }
                    errors++;
                  }
                }
              }
              if (data52.point !== void 0) {
                let data55 = data52.point;
                if (typeof data55 !== "string") {
                  const err142 = { instancePath: instancePath + "/numbers/arc-centre/point", schemaPath: "#/$defs/own-point/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err142];
                  } else {
                    vErrors.push(err142);
                  }
                  errors++;
                }
                if (!(data55 === "always" || data55 === "when-needed" || data55 === "never")) {
                  const err143 = { instancePath: instancePath + "/numbers/arc-centre/point", schemaPath: "#/$defs/own-point/enum", keyword: "enum", params: { allowedValues: schema36.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err143];
                  } else {
                    vErrors.push(err143);
                  }
                  errors++;
                }
              }
              if (data52["trailing-zeros"] !== void 0) {
                let data56 = data52["trailing-zeros"];
                if (typeof data56 !== "string") {
                  const err144 = { instancePath: instancePath + "/numbers/arc-centre/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err144];
                  } else {
                    vErrors.push(err144);
                  }
                  errors++;
                }
                if (!(data56 === "keep" || data56 === "drop" || data56 === "one")) {
                  const err145 = { instancePath: instancePath + "/numbers/arc-centre/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/enum", keyword: "enum", params: { allowedValues: schema37.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err145];
                  } else {
                    vErrors.push(err145);
                  }
                  errors++;
                }
              }
              if (data52["leading-zero"] !== void 0) {
                let data57 = data52["leading-zero"];
                if (typeof data57 !== "string") {
                  const err146 = { instancePath: instancePath + "/numbers/arc-centre/leading-zero", schemaPath: "#/$defs/own-leading-zero/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err146];
                  } else {
                    vErrors.push(err146);
                  }
                  errors++;
                }
                if (!(data57 === "keep" || data57 === "drop")) {
                  const err147 = { instancePath: instancePath + "/numbers/arc-centre/leading-zero", schemaPath: "#/$defs/own-leading-zero/enum", keyword: "enum", params: { allowedValues: schema38.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err147];
                  } else {
                    vErrors.push(err147);
                  }
                  errors++;
                }
              }
              if (data52.plus !== void 0) {
                let data58 = data52.plus;
                if (typeof data58 !== "string") {
                  const err148 = { instancePath: instancePath + "/numbers/arc-centre/plus", schemaPath: "#/$defs/own-plus/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err148];
                  } else {
                    vErrors.push(err148);
                  }
                  errors++;
                }
                if (!(data58 === "yes" || data58 === "no")) {
                  const err149 = { instancePath: instancePath + "/numbers/arc-centre/plus", schemaPath: "#/$defs/own-plus/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err149];
                  } else {
                    vErrors.push(err149);
                  }
                  errors++;
                }
              }
              if (data52["suppressed-zeros"] !== void 0) {
                let data59 = data52["suppressed-zeros"];
                if (typeof data59 !== "string") {
                  const err150 = { instancePath: instancePath + "/numbers/arc-centre/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err150];
                  } else {
                    vErrors.push(err150);
                  }
                  errors++;
                }
                if (!(data59 === "leading" || data59 === "trailing" || data59 === "none")) {
                  const err151 = { instancePath: instancePath + "/numbers/arc-centre/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/enum", keyword: "enum", params: { allowedValues: schema40.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err151];
                  } else {
                    vErrors.push(err151);
                  }
                  errors++;
                }
              }
              if (data52.digits !== void 0) {
                let data60 = data52.digits;
                if (!(typeof data60 == "number" && (!(data60 % 1) && !isNaN(data60)) && isFinite(data60))) {
                  const err152 = { instancePath: instancePath + "/numbers/arc-centre/digits", schemaPath: "#/$defs/own-digits/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err152];
                  } else {
                    vErrors.push(err152);
                  }
                  errors++;
                }
                if (typeof data60 == "number" && isFinite(data60)) {
                  if (data60 > 12 || isNaN(data60)) {
                    const err153 = { instancePath: instancePath + "/numbers/arc-centre/digits", schemaPath: "#/$defs/own-digits/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err153];
                    } else {
                      vErrors.push(err153);
                    }
                    errors++;
                  }
                  if (data60 < 1 || isNaN(data60)) {
                    const err154 = { instancePath: instancePath + "/numbers/arc-centre/digits", schemaPath: "#/$defs/own-digits/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err154];
                    } else {
                      vErrors.push(err154);
                    }
                    errors++;
                  }
                }
              }
            } else {
              const err155 = { instancePath: instancePath + "/numbers/arc-centre", schemaPath: "#/properties/numbers/properties/arc-centre/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err155];
              } else {
                vErrors.push(err155);
              }
              errors++;
            }
          }
          if (data36.angle !== void 0) {
            let data61 = data36.angle;
            const _errs161 = errors;
            let valid33 = false;
            const _errs162 = errors;
            if (!(typeof data61 == "number" && (!(data61 % 1) && !isNaN(data61)) && isFinite(data61))) {
              const err156 = { instancePath: instancePath + "/numbers/angle", schemaPath: "#/properties/numbers/properties/angle/anyOf/0/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
              if (vErrors === null) {
                vErrors = [err156];
              } else {
                vErrors.push(err156);
              }
              errors++;
            }
            if (typeof data61 == "number" && isFinite(data61)) {
              if (data61 > 7 || isNaN(data61)) {
                const err157 = { instancePath: instancePath + "/numbers/angle", schemaPath: "#/properties/numbers/properties/angle/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                if (vErrors === null) {
                  vErrors = [err157];
                } else {
                  vErrors.push(err157);
                }
                errors++;
              }
              if (data61 < 0 || isNaN(data61)) {
                const err158 = { instancePath: instancePath + "/numbers/angle", schemaPath: "#/properties/numbers/properties/angle/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                if (vErrors === null) {
                  vErrors = [err158];
                } else {
                  vErrors.push(err158);
                }
                errors++;
              }
            }
            var _valid3 = _errs162 === errors;
            valid33 = valid33 || _valid3;
            const _errs164 = errors;
            if (data61 && typeof data61 == "object" && !Array.isArray(data61)) {
              for (const key9 in data61) {
                if (!(key9 === "decimals" || key9 === "point" || key9 === "trailing-zeros" || key9 === "leading-zero" || key9 === "plus" || key9 === "suppressed-zeros" || key9 === "digits")) {
                  const err159 = { instancePath: instancePath + "/numbers/angle", schemaPath: "#/properties/numbers/properties/angle/anyOf/1/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key9 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err159];
                  } else {
                    vErrors.push(err159);
                  }
                  errors++;
                }
              }
              if (data61.decimals !== void 0) {
                let data62 = data61.decimals;
                if (!(typeof data62 == "number" && (!(data62 % 1) && !isNaN(data62)) && isFinite(data62))) {
                  const err160 = { instancePath: instancePath + "/numbers/angle/decimals", schemaPath: "#/properties/numbers/properties/angle/anyOf/1/properties/decimals/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err160];
                  } else {
                    vErrors.push(err160);
                  }
                  errors++;
                }
                if (typeof data62 == "number" && isFinite(data62)) {
                  if (data62 > 7 || isNaN(data62)) {
                    const err161 = { instancePath: instancePath + "/numbers/angle/decimals", schemaPath: "#/properties/numbers/properties/angle/anyOf/1/properties/decimals/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                    if (vErrors === null) {
                      vErrors = [err161];
                    } else {
                      vErrors.push(err161);
                    }
                    errors++;
                  }
                  if (data62 < 0 || isNaN(data62)) {
                    const err162 = { instancePath: instancePath + "/numbers/angle/decimals", schemaPath: "#/properties/numbers/properties/angle/anyOf/1/properties/decimals/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err162];
                    } else {
                      vErrors.push(err162);
                    }
                    errors++;
                  }
                }
              }
              if (data61.point !== void 0) {
                let data63 = data61.point;
                if (typeof data63 !== "string") {
                  const err163 = { instancePath: instancePath + "/numbers/angle/point", schemaPath: "#/$defs/own-point/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err163];
                  } else {
                    vErrors.push(err163);
                  }
                  errors++;
                }
                if (!(data63 === "always" || data63 === "when-needed" || data63 === "never")) {
                  const err164 = { instancePath: instancePath + "/numbers/angle/point", schemaPath: "#/$defs/own-point/enum", keyword: "enum", params: { allowedValues: schema36.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err164];
                  } else {
                    vErrors.push(err164);
                  }
                  errors++;
                }
              }
              if (data61["trailing-zeros"] !== void 0) {
                let data64 = data61["trailing-zeros"];
                if (typeof data64 !== "string") {
                  const err165 = { instancePath: instancePath + "/numbers/angle/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err165];
                  } else {
                    vErrors.push(err165);
                  }
                  errors++;
                }
                if (!(data64 === "keep" || data64 === "drop" || data64 === "one")) {
                  const err166 = { instancePath: instancePath + "/numbers/angle/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/enum", keyword: "enum", params: { allowedValues: schema37.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err166];
                  } else {
                    vErrors.push(err166);
                  }
                  errors++;
                }
              }
              if (data61["leading-zero"] !== void 0) {
                let data65 = data61["leading-zero"];
                if (typeof data65 !== "string") {
                  const err167 = { instancePath: instancePath + "/numbers/angle/leading-zero", schemaPath: "#/$defs/own-leading-zero/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err167];
                  } else {
                    vErrors.push(err167);
                  }
                  errors++;
                }
                if (!(data65 === "keep" || data65 === "drop")) {
                  const err168 = { instancePath: instancePath + "/numbers/angle/leading-zero", schemaPath: "#/$defs/own-leading-zero/enum", keyword: "enum", params: { allowedValues: schema38.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err168];
                  } else {
                    vErrors.push(err168);
                  }
                  errors++;
                }
              }
              if (data61.plus !== void 0) {
                let data66 = data61.plus;
                if (typeof data66 !== "string") {
                  const err169 = { instancePath: instancePath + "/numbers/angle/plus", schemaPath: "#/$defs/own-plus/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err169];
                  } else {
                    vErrors.push(err169);
                  }
                  errors++;
                }
                if (!(data66 === "yes" || data66 === "no")) {
                  const err170 = { instancePath: instancePath + "/numbers/angle/plus", schemaPath: "#/$defs/own-plus/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err170];
                  } else {
                    vErrors.push(err170);
                  }
                  errors++;
                }
              }
              if (data61["suppressed-zeros"] !== void 0) {
                let data67 = data61["suppressed-zeros"];
                if (typeof data67 !== "string") {
                  const err171 = { instancePath: instancePath + "/numbers/angle/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err171];
                  } else {
                    vErrors.push(err171);
                  }
                  errors++;
                }
                if (!(data67 === "leading" || data67 === "trailing" || data67 === "none")) {
                  const err172 = { instancePath: instancePath + "/numbers/angle/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/enum", keyword: "enum", params: { allowedValues: schema40.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err172];
                  } else {
                    vErrors.push(err172);
                  }
                  errors++;
                }
              }
              if (data61.digits !== void 0) {
                let data68 = data61.digits;
                if (!(typeof data68 == "number" && (!(data68 % 1) && !isNaN(data68)) && isFinite(data68))) {
                  const err173 = { instancePath: instancePath + "/numbers/angle/digits", schemaPath: "#/$defs/own-digits/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err173];
                  } else {
                    vErrors.push(err173);
                  }
                  errors++;
                }
                if (typeof data68 == "number" && isFinite(data68)) {
                  if (data68 > 12 || isNaN(data68)) {
                    const err174 = { instancePath: instancePath + "/numbers/angle/digits", schemaPath: "#/$defs/own-digits/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err174];
                    } else {
                      vErrors.push(err174);
                    }
                    errors++;
                  }
                  if (data68 < 1 || isNaN(data68)) {
                    const err175 = { instancePath: instancePath + "/numbers/angle/digits", schemaPath: "#/$defs/own-digits/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err175];
                    } else {
                      vErrors.push(err175);
                    }
                    errors++;
                  }
                }
              }
            } else {
              const err176 = { instancePath: instancePath + "/numbers/angle", schemaPath: "#/properties/numbers/properties/angle/anyOf/1/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err176];
              } else {
                vErrors.push(err176);
              }
              errors++;
            }
            var _valid3 = _errs164 === errors;
            valid33 = valid33 || _valid3;
            if (!valid33) {
              const err177 = { instancePath: instancePath + "/numbers/angle", schemaPath: "#/properties/numbers/properties/angle/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err177];
              } else {
                vErrors.push(err177);
              }
              errors++;
            } else {
              errors = _errs161;
              if (vErrors !== null) {
                if (_errs161) {
                  vErrors.length = _errs161;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data36["feed-per-minute"] !== void 0) {
            let data69 = data36["feed-per-minute"];
            if (data69 && typeof data69 == "object" && !Array.isArray(data69)) {
              for (const key10 in data69) {
                if (!(key10 === "mm" || key10 === "inch" || key10 === "point" || key10 === "trailing-zeros" || key10 === "leading-zero" || key10 === "plus" || key10 === "suppressed-zeros" || key10 === "digits")) {
                  const err178 = { instancePath: instancePath + "/numbers/feed-per-minute", schemaPath: "#/properties/numbers/properties/feed-per-minute/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key10 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err178];
                  } else {
                    vErrors.push(err178);
                  }
                  errors++;
                }
              }
              if (data69.mm !== void 0) {
                let data70 = data69.mm;
                if (!(typeof data70 == "number" && (!(data70 % 1) && !isNaN(data70)) && isFinite(data70))) {
                  const err179 = { instancePath: instancePath + "/numbers/feed-per-minute/mm", schemaPath: "#/properties/numbers/properties/feed-per-minute/properties/mm/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err179];
                  } else {
                    vErrors.push(err179);
                  }
                  errors++;
                }
                if (typeof data70 == "number" && isFinite(data70)) {
                  if (data70 > 7 || isNaN(data70)) {
                    const err180 = { instancePath: instancePath + "/numbers/feed-per-minute/mm", schemaPath: "#/properties/numbers/properties/feed-per-minute/properties/mm/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                    if (vErrors === null) {
                      vErrors = [err180];
                    } else {
                      vErrors.push(err180);
                    }
                    errors++;
                  }
                  if (data70 < 0 || isNaN(data70)) {
                    const err181 = { instancePath: instancePath + "/numbers/feed-per-minute/mm", schemaPath: "#/properties/numbers/properties/feed-per-minute/properties/mm/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err181];
                    } else {
                      vErrors.push(err181);
                    }
                    errors++;
                  }
                }
              }
              if (data69.inch !== void 0) {
                let data71 = data69.inch;
                if (!(typeof data71 == "number" && (!(data71 % 1) && !isNaN(data71)) && isFinite(data71))) {
                  const err182 = { instancePath: instancePath + "/numbers/feed-per-minute/inch", schemaPath: "#/properties/numbers/properties/feed-per-minute/properties/inch/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err182];
                  } else {
                    vErrors.push(err182);
                  }
                  errors++;
                }
                if (typeof data71 == "number" && isFinite(data71)) {
                  if (data71 > 6 || isNaN(data71)) {
                    const err183 = { instancePath: instancePath + "/numbers/feed-per-minute/inch", schemaPath: "#/properties/numbers/properties/feed-per-minute/properties/inch/maximum", keyword: "maximum", params: { comparison: "<=", limit: 6 }, message: "must be <= 6" };
                    if (vErrors === null) {
                      vErrors = [err183];
                    } else {
                      vErrors.push(err183);
                    }
                    errors++;
                  }
                  if (data71 < 0 || isNaN(data71)) {
                    const err184 = { instancePath: instancePath + "/numbers/feed-per-minute/inch", schemaPath: "#/properties/numbers/properties/feed-per-minute/properties/inch/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err184];
                    } else {
                      vErrors.push(err184);
                    }
                    errors++;
                  }
                }
              }
              if (data69.point !== void 0) {
                let data72 = data69.point;
                if (typeof data72 !== "string") {
                  const err185 = { instancePath: instancePath + "/numbers/feed-per-minute/point", schemaPath: "#/$defs/own-point/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err185];
                  } else {
                    vErrors.push(err185);
                  }
                  errors++;
                }
                if (!(data72 === "always" || data72 === "when-needed" || data72 === "never")) {
                  const err186 = { instancePath: instancePath + "/numbers/feed-per-minute/point", schemaPath: "#/$defs/own-point/enum", keyword: "enum", params: { allowedValues: schema36.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err186];
                  } else {
                    vErrors.push(err186);
                  }
                  errors++;
                }
              }
              if (data69["trailing-zeros"] !== void 0) {
                let data73 = data69["trailing-zeros"];
                if (typeof data73 !== "string") {
                  const err187 = { instancePath: instancePath + "/numbers/feed-per-minute/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err187];
                  } else {
                    vErrors.push(err187);
                  }
                  errors++;
                }
                if (!(data73 === "keep" || data73 === "drop" || data73 === "one")) {
                  const err188 = { instancePath: instancePath + "/numbers/feed-per-minute/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/enum", keyword: "enum", params: { allowedValues: schema37.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err188];
                  } else {
                    vErrors.push(err188);
                  }
                  errors++;
                }
              }
              if (data69["leading-zero"] !== void 0) {
                let data74 = data69["leading-zero"];
                if (typeof data74 !== "string") {
                  const err189 = { instancePath: instancePath + "/numbers/feed-per-minute/leading-zero", schemaPath: "#/$defs/own-leading-zero/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err189];
                  } else {
                    vErrors.push(err189);
                  }
                  errors++;
                }
                if (!(data74 === "keep" || data74 === "drop")) {
                  const err190 = { instancePath: instancePath + "/numbers/feed-per-minute/leading-zero", schemaPath: "#/$defs/own-leading-zero/enum", keyword: "enum", params: { allowedValues: schema38.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err190];
                  } else {
                    vErrors.push(err190);
                  }
                  errors++;
                }
              }
              if (data69.plus !== void 0) {
                let data75 = data69.plus;
                if (typeof data75 !== "string") {
                  const err191 = { instancePath: instancePath + "/numbers/feed-per-minute/plus", schemaPath: "#/$defs/own-plus/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err191];
                  } else {
                    vErrors.push(err191);
                  }
                  errors++;
                }
                if (!(data75 === "yes" || data75 === "no")) {
                  const err192 = { instancePath: instancePath + "/numbers/feed-per-minute/plus", schemaPath: "#/$defs/own-plus/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err192];
                  } else {
                    vErrors.push(err192);
                  }
                  errors++;
                }
              }
              if (data69["suppressed-zeros"] !== void 0) {
                let data76 = data69["suppressed-zeros"];
                if (typeof data76 !== "string") {
                  const err193 = { instancePath: instancePath + "/numbers/feed-per-minute/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err193];
                  } else {
                    vErrors.push(err193);
                  }
                  errors++;
                }
                if (!(data76 === "leading" || data76 === "trailing" || data76 === "none")) {
                  const err194 = { instancePath: instancePath + "/numbers/feed-per-minute/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/enum", keyword: "enum", params: { allowedValues: schema40.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err194];
                  } else {
                    vErrors.push(err194);
                  }
                  errors++;
                }
              }
              if (data69.digits !== void 0) {
                let data77 = data69.digits;
                if (!(typeof data77 == "number" && (!(data77 % 1) && !isNaN(data77)) && isFinite(data77))) {
                  const err195 = { instancePath: instancePath + "/numbers/feed-per-minute/digits", schemaPath: "#/$defs/own-digits/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err195];
                  } else {
                    vErrors.push(err195);
                  }
                  errors++;
                }
                if (typeof data77 == "number" && isFinite(data77)) {
                  if (data77 > 12 || isNaN(data77)) {
                    const err196 = { instancePath: instancePath + "/numbers/feed-per-minute/digits", schemaPath: "#/$defs/own-digits/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err196];
                    } else {
                      vErrors.push(err196);
                    }
                    errors++;
                  }
                  if (data77 < 1 || isNaN(data77)) {
                    const err197 = { instancePath: instancePath + "/numbers/feed-per-minute/digits", schemaPath: "#/$defs/own-digits/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err197];
                    } else {
                      vErrors.push(err197);
                    }
                    errors++;
                  }
                }
              }
            } else {
              const err198 = { instancePath: instancePath + "/numbers/feed-per-minute", schemaPath: "#/properties/numbers/properties/feed-per-minute/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err198];
              } else {
                vErrors.push(err198);
              }
              errors++;
            }
          }
          if (data36["feed-per-revolution"] !== void 0) {
            let data78 = data36["feed-per-revolution"];
            if (data78 && typeof data78 == "object" && !Array.isArray(data78)) {
              for (const key11 in data78) {
                if (!(key11 === "mm" || key11 === "inch" || key11 === "point" || key11 === "trailing-zeros" || key11 === "leading-zero" || key11 === "plus" || key11 === "suppressed-zeros" || key11 === "digits")) {
                  const err199 = { instancePath: instancePath + "/numbers/feed-per-revolution", schemaPath: "#/properties/numbers/properties/feed-per-revolution/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key11 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err199];
                  } else {
                    vErrors.push(err199);
                  }
                  errors++;
                }
              }
              if (data78.mm !== void 0) {
                let data79 = data78.mm;
                if (!(typeof data79 == "number" && (!(data79 % 1) && !isNaN(data79)) && isFinite(data79))) {
                  const err200 = { instancePath: instancePath + "/numbers/feed-per-revolution/mm", schemaPath: "#/properties/numbers/properties/feed-per-revolution/properties/mm/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err200];
                  } else {
                    vErrors.push(err200);
                  }
                  errors++;
                }
                if (typeof data79 == "number" && isFinite(data79)) {
                  if (data79 > 7 || isNaN(data79)) {
                    const err201 = { instancePath: instancePath + "/numbers/feed-per-revolution/mm", schemaPath: "#/properties/numbers/properties/feed-per-revolution/properties/mm/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                    if (vErrors === null) {
                      vErrors = [err201];
                    } else {
                      vErrors.push(err201);
                    }
                    errors++;
                  }
                  if (data79 < 0 || isNaN(data79)) {
                    const err202 = { instancePath: instancePath + "/numbers/feed-per-revolution/mm", schemaPath: "#/properties/numbers/properties/feed-per-revolution/properties/mm/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err202];
                    } else {
                      vErrors.push(err202);
                    }
                    errors++;
                  }
                }
              }
              if (data78.inch !== void 0) {
                let data80 = data78.inch;
                if (!(typeof data80 == "number" && (!(data80 % 1) && !isNaN(data80)) && isFinite(data80))) {
                  const err203 = { instancePath: instancePath + "/numbers/feed-per-revolution/inch", schemaPath: "#/properties/numbers/properties/feed-per-revolution/properties/inch/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err203];
                  } else {
                    vErrors.push(err203);
                  }
                  errors++;
                }
                if (typeof data80 == "number" && isFinite(data80)) {
                  if (data80 > 6 || isNaN(data80)) {
                    const err204 = { instancePath: instancePath + "/numbers/feed-per-revolution/inch", schemaPath: "#/properties/numbers/properties/feed-per-revolution/properties/inch/maximum", keyword: "maximum", params: { comparison: "<=", limit: 6 }, message: "must be <= 6" };
                    if (vErrors === null) {
                      vErrors = [err204];
                    } else {
                      vErrors.push(err204);
                    }
                    errors++;
                  }
                  if (data80 < 0 || isNaN(data80)) {
                    const err205 = { instancePath: instancePath + "/numbers/feed-per-revolution/inch", schemaPath: "#/properties/numbers/properties/feed-per-revolution/properties/inch/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err205];
                    } else {
                      vErrors.push(err205);
                    }
                    errors++;
                  }
                }
              }
              if (data78.point !== void 0) {
                let data81 = data78.point;
                if (typeof data81 !== "string") {
                  const err206 = { instancePath: instancePath + "/numbers/feed-per-revolution/point", schemaPath: "#/$defs/own-point/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err206];
                  } else {
                    vErrors.push(err206);
                  }
                  errors++;
                }
                if (!(data81 === "always" || data81 === "when-needed" || data81 === "never")) {
                  const err207 = { instancePath: instancePath + "/numbers/feed-per-revolution/point", schemaPath: "#/$defs/own-point/enum", keyword: "enum", params: { allowedValues: schema36.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err207];
                  } else {
                    vErrors.push(err207);
                  }
                  errors++;
                }
              }
              if (data78["trailing-zeros"] !== void 0) {
                let data82 = data78["trailing-zeros"];
                if (typeof data82 !== "string") {
                  const err208 = { instancePath: instancePath + "/numbers/feed-per-revolution/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err208];
                  } else {
                    vErrors.push(err208);
                  }
                  errors++;
                }
                if (!(data82 === "keep" || data82 === "drop" || data82 === "one")) {
                  const err209 = { instancePath: instancePath + "/numbers/feed-per-revolution/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/enum", keyword: "enum", params: { allowedValues: schema37.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err209];
                  } else {
                    vErrors.push(err209);
                  }
                  errors++;
                }
              }
              if (data78["leading-zero"] !== void 0) {
                let data83 = data78["leading-zero"];
                if (typeof data83 !== "string") {
                  const err210 = { instancePath: instancePath + "/numbers/feed-per-revolution/leading-zero", schemaPath: "#/$defs/own-leading-zero/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err210];
                  } else {
                    vErrors.push(err210);
                  }
                  errors++;
                }
                if (!(data83 === "keep" || data83 === "drop")) {
                  const err211 = { instancePath: instancePath + "/numbers/feed-per-revolution/leading-zero", schemaPath: "#/$defs/own-leading-zero/enum", keyword: "enum", params: { allowedValues: schema38.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err211];
                  } else {
                    vErrors.push(err211);
                  }
                  errors++;
                }
              }
              if (data78.plus !== void 0) {
                let data84 = data78.plus;
                if (typeof data84 !== "string") {
                  const err212 = { instancePath: instancePath + "/numbers/feed-per-revolution/plus", schemaPath: "#/$defs/own-plus/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err212];
                  } else {
                    vErrors.push(err212);
                  }
                  errors++;
                }
                if (!(data84 === "yes" || data84 === "no")) {
                  const err213 = { instancePath: instancePath + "/numbers/feed-per-revolution/plus", schemaPath: "#/$defs/own-plus/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err213];
                  } else {
                    vErrors.push(err213);
                  }
                  errors++;
                }
              }
              if (data78["suppressed-zeros"] !== void 0) {
                let data85 = data78["suppressed-zeros"];
                if (typeof data85 !== "string") {
                  const err214 = { instancePath: instancePath + "/numbers/feed-per-revolution/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err214];
                  } else {
                    vErrors.push(err214);
                  }
                  errors++;
                }
                if (!(data85 === "leading" || data85 === "trailing" || data85 === "none")) {
                  const err215 = { instancePath: instancePath + "/numbers/feed-per-revolution/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/enum", keyword: "enum", params: { allowedValues: schema40.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err215];
                  } else {
                    vErrors.push(err215);
                  }
                  errors++;
                }
              }
              if (data78.digits !== void 0) {
                let data86 = data78.digits;
                if (!(typeof data86 == "number" && (!(data86 % 1) && !isNaN(data86)) && isFinite(data86))) {
                  const err216 = { instancePath: instancePath + "/numbers/feed-per-revolution/digits", schemaPath: "#/$defs/own-digits/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err216];
                  } else {
                    vErrors.push(err216);
                  }
                  errors++;
                }
                if (typeof data86 == "number" && isFinite(data86)) {
                  if (data86 > 12 || isNaN(data86)) {
                    const err217 = { instancePath: instancePath + "/numbers/feed-per-revolution/digits", schemaPath: "#/$defs/own-digits/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err217];
                    } else {
                      vErrors.push(err217);
                    }
                    errors++;
                  }
                  if (data86 < 1 || isNaN(data86)) {
                    const err218 = { instancePath: instancePath + "/numbers/feed-per-revolution/digits", schemaPath: "#/$defs/own-digits/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err218];
                    } else {
                      vErrors.push(err218);
                    }
                    errors++;
                  }
                }
              }
            } else {
              const err219 = { instancePath: instancePath + "/numbers/feed-per-revolution", schemaPath: "#/properties/numbers/properties/feed-per-revolution/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err219];
              } else {
                vErrors.push(err219);
              }
              errors++;
            }
          }
          if (data36["inverse-time"] !== void 0) {
            let data87 = data36["inverse-time"];
            const _errs238 = errors;
            let valid55 = false;
            const _errs239 = errors;
            if (!(typeof data87 == "number" && (!(data87 % 1) && !isNaN(data87)) && isFinite(data87))) {
              const err220 = { instancePath: instancePath + "/numbers/inverse-time", schemaPath: "#/properties/numbers/properties/inverse-time/anyOf/0/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
              if (vErrors === null) {
                vErrors = [err220];
              } else {
                vErrors.push(err220);
              }
              errors++;
            }
            if (typeof data87 == "number" && isFinite(data87)) {
              if (data87 > 7 || isNaN(data87)) {
                const err221 = { instancePath: instancePath + "/numbers/inverse-time", schemaPath: "#/properties/numbers/properties/inverse-time/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                if (vErrors === null) {
                  vErrors = [err221];
                } else {
                  vErrors.push(err221);
                }
                errors++;
              }
              if (data87 < 0 || isNaN(data87)) {
                const err222 = { instancePath: instancePath + "/numbers/inverse-time", schemaPath: "#/properties/numbers/properties/inverse-time/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                if (vErrors === null) {
                  vErrors = [err222];
                } else {
                  vErrors.push(err222);
                }
                errors++;
              }
            }
            var _valid4 = _errs239 === errors;
            valid55 = valid55 || _valid4;
            const _errs241 = errors;
            if (data87 && typeof data87 == "object" && !Array.isArray(data87)) {
              for (const key12 in data87) {
                if (!(key12 === "decimals" || key12 === "point" || key12 === "trailing-zeros" || key12 === "leading-zero" || key12 === "plus" || key12 === "suppressed-zeros" || key12 === "digits")) {
                  const err223 = { instancePath: instancePath + "/numbers/inverse-time", schemaPath: "#/properties/numbers/properties/inverse-time/anyOf/1/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key12 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err223];
                  } else {
                    vErrors.push(err223);
                  }
                  errors++;
                }
              }
              if (data87.decimals !== void 0) {
                let data88 = data87.decimals;
                if (!(typeof data88 == "number" && (!(data88 % 1) && !isNaN(data88)) && isFinite(data88))) {
                  const err224 = { instancePath: instancePath + "/numbers/inverse-time/decimals", schemaPath: "#/properties/numbers/properties/inverse-time/anyOf/1/properties/decimals/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err224];
                  } else {
                    vErrors.push(err224);
                  }
                  errors++;
                }
                if (typeof data88 == "number" && isFinite(data88)) {
                  if (data88 > 7 || isNaN(data88)) {
                    const err225 = { instancePath: instancePath + "/numbers/inverse-time/decimals", schemaPath: "#/properties/numbers/properties/inverse-time/anyOf/1/properties/decimals/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                    if (vErrors === null) {
                      vErrors = [err225];
                    } else {
                      vErrors.push(err225);
                    }
                    errors++;
                  }
                  if (data88 < 0 || isNaN(data88)) {
                    const err226 = { instancePath: instancePath + "/numbers/inverse-time/decimals", schemaPath: "#/properties/numbers/properties/inverse-time/anyOf/1/properties/decimals/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err226];
                    } else {
                      vErrors.push(err226);
                    }
                    errors++;
                  }
                }
              }
              if (data87.point !== void 0) {
                let data89 = data87.point;
                if (typeof data89 !== "string") {
                  const err227 = { instancePath: instancePath + "/numbers/inverse-time/point", schemaPath: "#/$defs/own-point/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err227];
                  } else {
                    vErrors.push(err227);
                  }
                  errors++;
                }
                if (!(data89 === "always" || data89 === "when-needed" || data89 === "never")) {
                  const err228 = { instancePath: instancePath + "/numbers/inverse-time/point", schemaPath: "#/$defs/own-point/enum", keyword: "enum", params: { allowedValues: schema36.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err228];
                  } else {
                    vErrors.push(err228);
                  }
                  errors++;
                }
              }
              if (data87["trailing-zeros"] !== void 0) {
                let data90 = data87["trailing-zeros"];
                if (typeof data90 !== "string") {
                  const err229 = { instancePath: instancePath + "/numbers/inverse-time/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err229];
                  } else {
                    vErrors.push(err229);
                  }
                  errors++;
                }
                if (!(data90 === "keep" || data90 === "drop" || data90 === "one")) {
                  const err230 = { instancePath: instancePath + "/numbers/inverse-time/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/enum", keyword: "enum", params: { allowedValues: schema37.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err230];
                  } else {
                    vErrors.push(err230);
                  }
                  errors++;
                }
              }
              if (data87["leading-zero"] !== void 0) {
                let data91 = data87["leading-zero"];
                if (typeof data91 !== "string") {
                  const err231 = { instancePath: instancePath + "/numbers/inverse-time/leading-zero", schemaPath: "#/$defs/own-leading-zero/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err231];
                  } else {
                    vErrors.push(err231);
                  }
                  errors++;
                }
                if (!(data91 === "keep" || data91 === "drop")) {
                  const err232 = { instancePath: instancePath + "/numbers/inverse-time/leading-zero", schemaPath: "#/$defs/own-leading-zero/enum", keyword: "enum", params: { allowedValues: schema38.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err232];
                  } else {
                    vErrors.push(err232);
                  }
                  errors++;
                }
              }
              if (data87.plus !== void 0) {
                let data92 = data87.plus;
                if (typeof data92 !== "string") {
                  const err233 = { instancePath: instancePath + "/numbers/inverse-time/plus", schemaPath: "#/$defs/own-plus/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err233];
                  } else {
                    vErrors.push(err233);
                  }
                  errors++;
                }
                if (!(data92 === "yes" || data92 === "no")) {
                  const err234 = { instancePath: instancePath + "/numbers/inverse-time/plus", schemaPath: "#/$defs/own-plus/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err234];
                  } else {
                    vErrors.push(err234);
                  }
                  errors++;
                }
              }
              if (data87["suppressed-zeros"] !== void 0) {
                let data93 = data87["suppressed-zeros"];
                if (typeof data93 !== "string") {
                  const err235 = { instancePath: instancePath + "/numbers/inverse-time/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err235];
                  } else {
                    vErrors.push(err235);
                  }
                  errors++;
                }
                if (!(data93 === "leading" || data93 === "trailing" || data93 === "none")) {
                  const err236 = { instancePath: instancePath + "/numbers/inverse-time/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/enum", keyword: "enum", params: { allowedValues: schema40.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err236];
                  } else {
                    vErrors.push(err236);
                  }
                  errors++;
                }
              }
              if (data87.digits !== void 0) {
                let data94 = data87.digits;
                if (!(typeof data94 == "number" && (!(data94 % 1) && !isNaN(data94)) && isFinite(data94))) {
                  const err237 = { instancePath: instancePath + "/numbers/inverse-time/digits", schemaPath: "#/$defs/own-digits/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err237];
                  } else {
                    vErrors.push(err237);
                  }
                  errors++;
                }
                if (typeof data94 == "number" && isFinite(data94)) {
                  if (data94 > 12 || isNaN(data94)) {
                    const err238 = { instancePath: instancePath + "/numbers/inverse-time/digits", schemaPath: "#/$defs/own-digits/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err238];
                    } else {
                      vErrors.push(err238);
                    }
                    errors++;
                  }
                  if (data94 < 1 || isNaN(data94)) {
                    const err239 = { instancePath: instancePath + "/numbers/inverse-time/digits", schemaPath: "#/$defs/own-digits/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err239];
                    } else {
                      vErrors.push(err239);
                    }
                    errors++;
                  }
                }
              }
            } else {
              const err240 = { instancePath: instancePath + "/numbers/inverse-time", schemaPath: "#/properties/numbers/properties/inverse-time/anyOf/1/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err240];
              } else {
                vErrors.push(err240);
              }
              errors++;
            }
            var _valid4 = _errs241 === errors;
            valid55 = valid55 || _valid4;
            if (!valid55) {
              const err241 = { instancePath: instancePath + "/numbers/inverse-time", schemaPath: "#/properties/numbers/properties/inverse-time/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err241];
              } else {
                vErrors.push(err241);
              }
              errors++;
            } else {
              errors = _errs238;
              if (vErrors !== null) {
                if (_errs238) {
                  vErrors.length = _errs238;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data36.speed !== void 0) {
            let data95 = data36.speed;
            const _errs265 = errors;
            let valid63 = false;
            const _errs266 = errors;
            if (!(typeof data95 == "number" && (!(data95 % 1) && !isNaN(data95)) && isFinite(data95))) {
              const err242 = { instancePath: instancePath + "/numbers/speed", schemaPath: "#/properties/numbers/properties/speed/anyOf/0/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
              if (vErrors === null) {
                vErrors = [err242];
              } else {
                vErrors.push(err242);
              }
              errors++;
            }
            if (typeof data95 == "number" && isFinite(data95)) {
              if (data95 > 7 || isNaN(data95)) {
                const err243 = { instancePath: instancePath + "/numbers/speed", schemaPath: "#/properties/numbers/properties/speed/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                if (vErrors === null) {
                  vErrors = [err243];
                } else {
                  vErrors.push(err243);
                }
                errors++;
              }
              if (data95 < 0 || isNaN(data95)) {
                const err244 = { instancePath: instancePath + "/numbers/speed", schemaPath: "#/properties/numbers/properties/speed/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                if (vErrors === null) {
                  vErrors = [err244];
                } else {
                  vErrors.push(err244);
                }
                errors++;
              }
            }
            var _valid5 = _errs266 === errors;
            valid63 = valid63 || _valid5;
            const _errs268 = errors;
            if (data95 && typeof data95 == "object" && !Array.isArray(data95)) {
              for (const key13 in data95) {
                if (!(key13 === "decimals" || key13 === "point" || key13 === "trailing-zeros" || key13 === "leading-zero" || key13 === "plus" || key13 === "suppressed-zeros" || key13 === "digits")) {
                  const err245 = { instancePath: instancePath + "/numbers/speed", schemaPath: "#/properties/numbers/properties/speed/anyOf/1/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key13 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err245];
                  } else {
                    vErrors.push(err245);
                  }
                  errors++;
                }
              }
              if (data95.decimals !== void 0) {
                let data96 = data95.decimals;
                if (!(typeof data96 == "number" && (!(data96 % 1) && !isNaN(data96)) && isFinite(data96))) {
                  const err246 = { instancePath: instancePath + "/numbers/speed/decimals", schemaPath: "#/properties/numbers/properties/speed/anyOf/1/properties/decimals/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err246];
                  } else {
                    vErrors.push(err246);
                  }
                  errors++;
                }
                if (typeof data96 == "number" && isFinite(data96)) {
                  if (data96 > 7 || isNaN(data96)) {
                    const err247 = { instancePath: instancePath + "/numbers/speed/decimals", schemaPath: "#/properties/numbers/properties/speed/anyOf/1/properties/decimals/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                    if (vErrors === null) {
                      vErrors = [err247];
                    } else {
                      vErrors.push(err247);
                    }
                    errors++;
                  }
                  if (data96 < 0 || isNaN(data96)) {
                    const err248 = { instancePath: instancePath + "/numbers/speed/decimals", schemaPath: "#/properties/numbers/properties/speed/anyOf/1/properties/decimals/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err248];
                    } else {
                      vErrors.push(err248);
                    }
                    errors++;
                  }
                }
              }
              if (data95.point !== void 0) {
                let data97 = data95.point;
                if (typeof data97 !== "string") {
                  const err249 = { instancePath: instancePath + "/numbers/speed/point", schemaPath: "#/$defs/own-point/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err249];
                  } else {
                    vErrors.push(err249);
                  }
                  errors++;
                }
                if (!(data97 === "always" || data97 === "when-needed" || data97 === "never")) {
                  const err250 = { instancePath: instancePath + "/numbers/speed/point", schemaPath: "#/$defs/own-point/enum", keyword: "enum", params: { allowedValues: schema36.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err250];
                  } else {
                    vErrors.push(err250);
                  }
                  errors++;
                }
              }
              if (data95["trailing-zeros"] !== void 0) {
                let data98 = data95["trailing-zeros"];
                if (typeof data98 !== "string") {
                  const err251 = { instancePath: instancePath + "/numbers/speed/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err251];
                  } else {
                    vErrors.push(err251);
                  }
                  errors++;
                }
                if (!(data98 === "keep" || data98 === "drop" || data98 === "one")) {
                  const err252 = { instancePath: instancePath + "/numbers/speed/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/enum", keyword: "enum", params: { allowedValues: schema37.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err252];
                  } else {
                    vErrors.push(err252);
                  }
                  errors++;
                }
              }
              if (data95["leading-zero"] !== void 0) {
                let data99 = data95["leading-zero"];
                if (typeof data99 !== "string") {
                  const err253 = { instancePath: instancePath + "/numbers/speed/leading-zero", schemaPath: "#/$defs/own-leading-zero/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err253];
                  } else {
                    vErrors.push(err253);
                  }
                  errors++;
                }
                if (!(data99 === "keep" || data99 === "drop")) {
                  const err254 = { instancePath: instancePath + "/numbers/speed/leading-zero", schemaPath: "#/$defs/own-leading-zero/enum", keyword: "enum", params: { allowedValues: schema38.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err254];
                  } else {
                    vErrors.push(err254);
                  }
                  errors++;
                }
              }
              if (data95.plus !== void 0) {
                let data100 = data95.plus;
                if (typeof data100 !== "string") {
                  const err255 = { instancePath: instancePath + "/numbers/speed/plus", schemaPath: "#/$defs/own-plus/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err255];
                  } else {
                    vErrors.push(err255);
                  }
                  errors++;
                }
                if (!(data100 === "yes" || data100 === "no")) {
                  const err256 = { instancePath: instancePath + "/numbers/speed/plus", schemaPath: "#/$defs/own-plus/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err256];
                  } else {
                    vErrors.push(err256);
                  }
                  errors++;
                }
              }
              if (data95["suppressed-zeros"] !== void 0) {
                let data101 = data95["suppressed-zeros"];
                if (typeof data101 !== "string") {
                  const err257 = { instancePath: instancePath + "/numbers/speed/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err257];
                  } else {
                    vErrors.push(err257);
                  }
                  errors++;
                }
                if (!(data101 === "leading" || data101 === "trailing" || data101 === "none")) {
                  const err258 = { instancePath: instancePath + "/numbers/speed/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/enum", keyword: "enum", params: { allowedValues: schema40.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err258];
                  } else {
                    vErrors.push(err258);
                  }
                  errors++;
                }
              }
              if (data95.digits !== void 0) {
                let data102 = data95.digits;
                if (!(typeof data102 == "number" && (!(data102 % 1) && !isNaN(data102)) && isFinite(data102))) {
                  const err259 = { instancePath: instancePath + "/numbers/speed/digits", schemaPath: "#/$defs/own-digits/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err259];
                  } else {
                    vErrors.push(err259);
                  }
                  errors++;
                }
                if (typeof data102 == "number" && isFinite(data102)) {
                  if (data102 > 12 || isNaN(data102)) {
                    const err260 = { instancePath: instancePath + "/numbers/speed/digits", schemaPath: "#/$defs/own-digits/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err260];
                    } else {
                      vErrors.push(err260);
                    }
                    errors++;
                  }
                  if (data102 < 1 || isNaN(data102)) {
                    const err261 = { instancePath: instancePath + "/numbers/speed/digits", schemaPath: "#/$defs/own-digits/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err261];
                    } else {
                      vErrors.push(err261);
                    }
                    errors++;
                  }
                }
              }
            } else {
              const err262 = { instancePath: instancePath + "/numbers/speed", schemaPath: "#/properties/numbers/properties/speed/anyOf/1/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err262];
              } else {
                vErrors.push(err262);
              }
              errors++;
            }
            var _valid5 = _errs268 === errors;
            valid63 = valid63 || _valid5;
            if (!valid63) {
              const err263 = { instancePath: instancePath + "/numbers/speed", schemaPath: "#/properties/numbers/properties/speed/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err263];
              } else {
                vErrors.push(err263);
              }
              errors++;
            } else {
              errors = _errs265;
              if (vErrors !== null) {
                if (_errs265) {
                  vErrors.length = _errs265;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data36.dwell !== void 0) {
            let data103 = data36.dwell;
            const _errs292 = errors;
            let valid71 = false;
            const _errs293 = errors;
            if (!(typeof data103 == "number" && (!(data103 % 1) && !isNaN(data103)) && isFinite(data103))) {
              const err264 = { instancePath: instancePath + "/numbers/dwell", schemaPath: "#/properties/numbers/properties/dwell/anyOf/0/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
              if (vErrors === null) {
                vErrors = [err264];
              } else {
                vErrors.push(err264);
              }
              errors++;
            }
            if (typeof data103 == "number" && isFinite(data103)) {
              if (data103 > 7 || isNaN(data103)) {
                const err265 = { instancePath: instancePath + "/numbers/dwell", schemaPath: "#/properties/numbers/properties/dwell/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                if (vErrors === null) {
                  vErrors = [err265];
                } else {
                  vErrors.push(err265);
                }
                errors++;
              }
              if (data103 < 0 || isNaN(data103)) {
                const err266 = { instancePath: instancePath + "/numbers/dwell", schemaPath: "#/properties/numbers/properties/dwell/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                if (vErrors === null) {
                  vErrors = [err266];
                } else {
                  vErrors.push(err266);
                }
                errors++;
              }
            }
            var _valid6 = _errs293 === errors;
            valid71 = valid71 || _valid6;
            const _errs295 = errors;
            if (data103 && typeof data103 == "object" && !Array.isArray(data103)) {
              for (const key14 in data103) {
                if (!(key14 === "decimals" || key14 === "point" || key14 === "trailing-zeros" || key14 === "leading-zero" || key14 === "plus" || key14 === "suppressed-zeros" || key14 === "digits")) {
                  const err267 = { instancePath: instancePath + "/numbers/dwell", schemaPath: "#/properties/numbers/properties/dwell/anyOf/1/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key14 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err267];
                  } else {
                    vErrors.push(err267);
                  }
                  errors++;
                }
              }
              if (data103.decimals !== void 0) {
                let data104 = data103.decimals;
                if (!(typeof data104 == "number" && (!(data104 % 1) && !isNaN(data104)) && isFinite(data104))) {
                  const err268 = { instancePath: instancePath + "/numbers/dwell/decimals", schemaPath: "#/properties/numbers/properties/dwell/anyOf/1/properties/decimals/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err268];
                  } else {
                    vErrors.push(err268);
                  }
                  errors++;
                }
                if (typeof data104 == "number" && isFinite(data104)) {
                  if (data104 > 7 || isNaN(data104)) {
                    const err269 = { instancePath: instancePath + "/numbers/dwell/decimals", schemaPath: "#/properties/numbers/properties/dwell/anyOf/1/properties/decimals/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                    if (vErrors === null) {
                      vErrors = [err269];
                    } else {
                      vErrors.push(err269);
                    }
                    errors++;
                  }
                  if (data104 < 0 || isNaN(data104)) {
                    const err270 = { instancePath: instancePath + "/numbers/dwell/decimals", schemaPath: "#/properties/numbers/properties/dwell/anyOf/1/properties/decimals/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err270];
                    } else {
                      vErrors.push(err270);
                    }
                    errors++;
                  }
                }
              }
              if (data103.point !== void 0) {
                let data105 = data103.point;
                if (typeof data105 !== "string") {
                  const err271 = { instancePath: instancePath + "/numbers/dwell/point", schemaPath: "#/$defs/own-point/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err271];
                  } else {
                    vErrors.push(err271);
                  }
                  errors++;
                }
                if (!(data105 === "always" || data105 === "when-needed" || data105 === "never")) {
                  const err272 = { instancePath: instancePath + "/numbers/dwell/point", schemaPath: "#/$defs/own-point/enum", keyword: "enum", params: { allowedValues: schema36.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err272];
                  } else {
                    vErrors.push(err272);
                  }
                  errors++;
                }
              }
              if (data103["trailing-zeros"] !== void 0) {
                let data106 = data103["trailing-zeros"];
                if (typeof data106 !== "string") {
                  const err273 = { instancePath: instancePath + "/numbers/dwell/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err273];
                  } else {
                    vErrors.push(err273);
                  }
                  errors++;
                }
                if (!(data106 === "keep" || data106 === "drop" || data106 === "one")) {
                  const err274 = { instancePath: instancePath + "/numbers/dwell/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/enum", keyword: "enum", params: { allowedValues: schema37.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err274];
                  } else {
                    vErrors.push(err274);
                  }
                  errors++;
                }
              }
              if (data103["leading-zero"] !== void 0) {
                let data107 = data103["leading-zero"];
                if (typeof data107 !== "string") {
                  const err275 = { instancePath: instancePath + "/numbers/dwell/leading-zero", schemaPath: "#/$defs/own-leading-zero/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err275];
                  } else {
                    vErrors.push(err275);
                  }
                  errors++;
                }
                if (!(data107 === "keep" || data107 === "drop")) {
                  const err276 = { instancePath: instancePath + "/numbers/dwell/leading-zero", schemaPath: "#/$defs/own-leading-zero/enum", keyword: "enum", params: { allowedValues: schema38.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err276];
                  } else {
                    vErrors.push(err276);
                  }
                  errors++;
                }
              }
              if (data103.plus !== void 0) {
                let data108 = data103.plus;
                if (typeof data108 !== "string") {
                  const err277 = { instancePath: instancePath + "/numbers/dwell/plus", schemaPath: "#/$defs/own-plus/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err277];
                  } else {
                    vErrors.push(err277);
                  }
                  errors++;
                }
                if (!(data108 === "yes" || data108 === "no")) {
                  const err278 = { instancePath: instancePath + "/numbers/dwell/plus", schemaPath: "#/$defs/own-plus/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err278];
                  } else {
                    vErrors.push(err278);
                  }
                  errors++;
                }
              }
              if (data103["suppressed-zeros"] !== void 0) {
                let data109 = data103["suppressed-zeros"];
                if (typeof data109 !== "string") {
                  const err279 = { instancePath: instancePath + "/numbers/dwell/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err279];
                  } else {
                    vErrors.push(err279);
                  }
                  errors++;
                }
                if (!(data109 === "leading" || data109 === "trailing" || data109 === "none")) {
                  const err280 = { instancePath: instancePath + "/numbers/dwell/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/enum", keyword: "enum", params: { allowedValues: schema40.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err280];
                  } else {
                    vErrors.push(err280);
                  }
                  errors++;
                }
              }
              if (data103.digits !== void 0) {
                let data110 = data103.digits;
                if (!(typeof data110 == "number" && (!(data110 % 1) && !isNaN(data110)) && isFinite(data110))) {
                  const err281 = { instancePath: instancePath + "/numbers/dwell/digits", schemaPath: "#/$defs/own-digits/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err281];
                  } else {
                    vErrors.push(err281);
                  }
                  errors++;
                }
                if (typeof data110 == "number" && isFinite(data110)) {
                  if (data110 > 12 || isNaN(data110)) {
                    const err282 = { instancePath: instancePath + "/numbers/dwell/digits", schemaPath: "#/$defs/own-digits/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err282];
                    } else {
                      vErrors.push(err282);
                    }
                    errors++;
                  }
                  if (data110 < 1 || isNaN(data110)) {
                    const err283 = { instancePath: instancePath + "/numbers/dwell/digits", schemaPath: "#/$defs/own-digits/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err283];
                    } else {
                      vErrors.push(err283);
                    }
                    errors++;
                  }
                }
              }
            } else {
              const err284 = { instancePath: instancePath + "/numbers/dwell", schemaPath: "#/properties/numbers/properties/dwell/anyOf/1/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err284];
              } else {
                vErrors.push(err284);
              }
              errors++;
            }
            var _valid6 = _errs295 === errors;
            valid71 = valid71 || _valid6;
            if (!valid71) {
              const err285 = { instancePath: instancePath + "/numbers/dwell", schemaPath: "#/properties/numbers/properties/dwell/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err285];
              } else {
                vErrors.push(err285);
              }
              errors++;
            } else {
              errors = _errs292;
              if (vErrors !== null) {
                if (_errs292) {
                  vErrors.length = _errs292;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data36["cycle-dwell"] !== void 0) {
            let data111 = data36["cycle-dwell"];
            const _errs319 = errors;
            let valid79 = false;
            const _errs320 = errors;
            if (!(typeof data111 == "number" && (!(data111 % 1) && !isNaN(data111)) && isFinite(data111))) {
              const err286 = { instancePath: instancePath + "/numbers/cycle-dwell", schemaPath: "#/properties/numbers/properties/cycle-dwell/anyOf/0/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
              if (vErrors === null) {
                vErrors = [err286];
              } else {
                vErrors.push(err286);
              }
              errors++;
            }
            if (typeof data111 == "number" && isFinite(data111)) {
              if (data111 > 7 || isNaN(data111)) {
                const err287 = { instancePath: instancePath + "/numbers/cycle-dwell", schemaPath: "#/properties/numbers/properties/cycle-dwell/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                if (vErrors === null) {
                  vErrors = [err287];
                } else {
                  vErrors.push(err287);
                }
                errors++;
              }
              if (data111 < 0 || isNaN(data111)) {
                const err288 = { instancePath: instancePath + "/numbers/cycle-dwell", schemaPath: "#/properties/numbers/properties/cycle-dwell/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                if (vErrors === null) {
                  vErrors = [err288];
                } else {
                  vErrors.push(err288);
                }
                errors++;
              }
            }
            var _valid7 = _errs320 === errors;
            valid79 = valid79 || _valid7;
            const _errs322 = errors;
            if (data111 && typeof data111 == "object" && !Array.isArray(data111)) {
              for (const key15 in data111) {
                if (!(key15 === "decimals" || key15 === "point" || key15 === "trailing-zeros" || key15 === "leading-zero" || key15 === "plus" || key15 === "suppressed-zeros" || key15 === "digits")) {
                  const err289 = { instancePath: instancePath + "/numbers/cycle-dwell", schemaPath: "#/properties/numbers/properties/cycle-dwell/anyOf/1/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key15 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err289];
                  } else {
                    vErrors.push(err289);
                  }
                  errors++;
                }
              }
              if (data111.decimals !== void 0) {
                let data112 = data111.decimals;
                if (!(typeof data112 == "number" && (!(data112 % 1) && !isNaN(data112)) && isFinite(data112))) {
                  const err290 = { instancePath: instancePath + "/numbers/cycle-dwell/decimals", schemaPath: "#/properties/numbers/properties/cycle-dwell/anyOf/1/properties/decimals/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err290];
                  } else {
                    vErrors.push(err290);
                  }
                  errors++;
                }
                if (typeof data112 == "number" && isFinite(data112)) {
                  if (data112 > 7 || isNaN(data112)) {
                    const err291 = { instancePath: instancePath + "/numbers/cycle-dwell/decimals", schemaPath: "#/properties/numbers/properties/cycle-dwell/anyOf/1/properties/decimals/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                    if (vErrors === null) {
                      vErrors = [err291];
                    } else {
                      vErrors.push(err291);
                    }
                    errors++;
                  }
                  if (data112 < 0 || isNaN(data112)) {
                    const err292 = { instancePath: instancePath + "/numbers/cycle-dwell/decimals", schemaPath: "#/properties/numbers/properties/cycle-dwell/anyOf/1/properties/decimals/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err292];
                    } else {
                      vErrors.push(err292);
                    }
                    errors++;
                  }
                }
              }
              if (data111.point !== void 0) {
                let data113 = data111.point;
                if (typeof data113 !== "string") {
                  const err293 = { instancePath: instancePath + "/numbers/cycle-dwell/point", schemaPath: "#/$defs/own-point/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err293];
                  } else {
                    vErrors.push(err293);
                  }
                  errors++;
                }
                if (!(data113 === "always" || data113 === "when-needed" || data113 === "never")) {
                  const err294 = { instancePath: instancePath + "/numbers/cycle-dwell/point", schemaPath: "#/$defs/own-point/enum", keyword: "enum", params: { allowedValues: schema36.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err294];
                  } else {
                    vErrors.push(err294);
                  }
                  errors++;
                }
              }
              if (data111["trailing-zeros"] !== void 0) {
                let data114 = data111["trailing-zeros"];
                if (typeof data114 !== "string") {
                  const err295 = { instancePath: instancePath + "/numbers/cycle-dwell/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err295];
                  } else {
                    vErrors.push(err295);
                  }
                  errors++;
                }
                if (!(data114 === "keep" || data114 === "drop" || data114 === "one")) {
                  const err296 = { instancePath: instancePath + "/numbers/cycle-dwell/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/enum", keyword: "enum", params: { allowedValues: schema37.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err296];
                  } else {
                    vErrors.push(err296);
                  }
                  errors++;
                }
              }
              if (data111["leading-zero"] !== void 0) {
                let data115 = data111["leading-zero"];
                if (typeof data115 !== "string") {
                  const err297 = { instancePath: instancePath + "/numbers/cycle-dwell/leading-zero", schemaPath: "#/$defs/own-leading-zero/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err297];
                  } else {
                    vErrors.push(err297);
                  }
                  errors++;
                }
                if (!(data115 === "keep" || data115 === "drop")) {
                  const err298 = { instancePath: instancePath + "/numbers/cycle-dwell/leading-zero", schemaPath: "#/$defs/own-leading-zero/enum", keyword: "enum", params: { allowedValues: schema38.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err298];
                  } else {
                    vErrors.push(err298);
                  }
                  errors++;
                }
              }
              if (data111.plus !== void 0) {
                let data116 = data111.plus;
                if (typeof data116 !== "string") {
                  const err299 = { instancePath: instancePath + "/numbers/cycle-dwell/plus", schemaPath: "#/$defs/own-plus/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err299];
                  } else {
                    vErrors.push(err299);
                  }
                  errors++;
                }
                if (!(data116 === "yes" || data116 === "no")) {
                  const err300 = { instancePath: instancePath + "/numbers/cycle-dwell/plus", schemaPath: "#/$defs/own-plus/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err300];
                  } else {
                    vErrors.push(err300);
                  }
                  errors++;
                }
              }
              if (data111["suppressed-zeros"] !== void 0) {
                let data117 = data111["suppressed-zeros"];
                if (typeof data117 !== "string") {
                  const err301 = { instancePath: instancePath + "/numbers/cycle-dwell/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err301];
                  } else {
                    vErrors.push(err301);
                  }
                  errors++;
                }
                if (!(data117 === "leading" || data117 === "trailing" || data117 === "none")) {
                  const err302 = { instancePath: instancePath + "/numbers/cycle-dwell/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/enum", keyword: "enum", params: { allowedValues: schema40.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err302];
                  } else {
                    vErrors.push(err302);
                  }
                  errors++;
                }
              }
              if (data111.digits !== void 0) {
                let data118 = data111.digits;
                if (!(typeof data118 == "number" && (!(data118 % 1) && !isNaN(data118)) && isFinite(data118))) {
                  const err303 = { instancePath: instancePath + "/numbers/cycle-dwell/digits", schemaPath: "#/$defs/own-digits/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err303];
                  } else {
                    vErrors.push(err303);
                  }
                  errors++;
                }
                if (typeof data118 == "number" && isFinite(data118)) {
                  if (data118 > 12 || isNaN(data118)) {
                    const err304 = { instancePath: instancePath + "/numbers/cycle-dwell/digits", schemaPath: "#/$defs/own-digits/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err304];
                    } else {
                      vErrors.push(err304);
                    }
                    errors++;
                  }
                  if (data118 < 1 || isNaN(data118)) {
                    const err305 = { instancePath: instancePath + "/numbers/cycle-dwell/digits", schemaPath: "#/$defs/own-digits/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err305];
                    } else {
                      vErrors.push(err305);
                    }
                    errors++;
                  }
                }
              }
            } else {
              const err306 = { instancePath: instancePath + "/numbers/cycle-dwell", schemaPath: "#/properties/numbers/properties/cycle-dwell/anyOf/1/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err306];
              } else {
                vErrors.push(err306);
              }
              errors++;
            }
            var _valid7 = _errs322 === errors;
            valid79 = valid79 || _valid7;
            if (!valid79) {
              const err307 = { instancePath: instancePath + "/numbers/cycle-dwell", schemaPath: "#/properties/numbers/properties/cycle-dwell/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err307];
              } else {
                vErrors.push(err307);
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
          if (data36.timeout !== void 0) {
            let data119 = data36.timeout;
            const _errs346 = errors;
            let valid87 = false;
            const _errs347 = errors;
            if (!(typeof data119 == "number" && (!(data119 % 1) && !isNaN(data119)) && isFinite(data119))) {
              const err308 = { instancePath: instancePath + "/numbers/timeout", schemaPath: "#/properties/numbers/properties/timeout/anyOf/0/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
              if (vErrors === null) {
                vErrors = [err308];
              } else {
                vErrors.push(err308);
              }
              errors++;
            }
            if (typeof data119 == "number" && isFinite(data119)) {
              if (data119 > 7 || isNaN(data119)) {
                const err309 = { instancePath: instancePath + "/numbers/timeout", schemaPath: "#/properties/numbers/properties/timeout/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                if (vErrors === null) {
                  vErrors = [err309];
                } else {
                  vErrors.push(err309);
                }
                errors++;
              }
              if (data119 < 0 || isNaN(data119)) {
                const err310 = { instancePath: instancePath + "/numbers/timeout", schemaPath: "#/properties/numbers/properties/timeout/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                if (vErrors === null) {
                  vErrors = [err310];
                } else {
                  vErrors.push(err310);
                }
                errors++;
              }
            }
            var _valid8 = _errs347 === errors;
            valid87 = valid87 || _valid8;
            const _errs349 = errors;
            if (data119 && typeof data119 == "object" && !Array.isArray(data119)) {
              for (const key16 in data119) {
                if (!(key16 === "decimals" || key16 === "point" || key16 === "trailing-zeros" || key16 === "leading-zero" || key16 === "plus" || key16 === "suppressed-zeros" || key16 === "digits")) {
                  const err311 = { instancePath: instancePath + "/numbers/timeout", schemaPath: "#/properties/numbers/properties/timeout/anyOf/1/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key16 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err311];
                  } else {
                    vErrors.push(err311);
                  }
                  errors++;
                }
              }
              if (data119.decimals !== void 0) {
                let data120 = data119.decimals;
                if (!(typeof data120 == "number" && (!(data120 % 1) && !isNaN(data120)) && isFinite(data120))) {
                  const err312 = { instancePath: instancePath + "/numbers/timeout/decimals", schemaPath: "#/properties/numbers/properties/timeout/anyOf/1/properties/decimals/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err312];
                  } else {
                    vErrors.push(err312);
                  }
                  errors++;
                }
                if (typeof data120 == "number" && isFinite(data120)) {
                  if (data120 > 7 || isNaN(data120)) {
                    const err313 = { instancePath: instancePath + "/numbers/timeout/decimals", schemaPath: "#/properties/numbers/properties/timeout/anyOf/1/properties/decimals/maximum", keyword: "maximum", params: { comparison: "<=", limit: 7 }, message: "must be <= 7" };
                    if (vErrors === null) {
                      vErrors = [err313];
                    } else {
                      vErrors.push(err313);
                    }
                    errors++;
                  }
                  if (data120 < 0 || isNaN(data120)) {
                    const err314 = { instancePath: instancePath + "/numbers/timeout/decimals", schemaPath: "#/properties/numbers/properties/timeout/anyOf/1/properties/decimals/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err314];
                    } else {
                      vErrors.push(err314);
                    }
                    errors++;
                  }
                }
              }
              if (data119.point !== void 0) {
                let data121 = data119.point;
                if (typeof data121 !== "string") {
                  const err315 = { instancePath: instancePath + "/numbers/timeout/point", schemaPath: "#/$defs/own-point/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err315];
                  } else {
                    vErrors.push(err315);
                  }
                  errors++;
                }
                if (!(data121 === "always" || data121 === "when-needed" || data121 === "never")) {
                  const err316 = { instancePath: instancePath + "/numbers/timeout/point", schemaPath: "#/$defs/own-point/enum", keyword: "enum", params: { allowedValues: schema36.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err316];
                  } else {
                    vErrors.push(err316);
                  }
                  errors++;
                }
              }
              if (data119["trailing-zeros"] !== void 0) {
                let data122 = data119["trailing-zeros"];
                if (typeof data122 !== "string") {
                  const err317 = { instancePath: instancePath + "/numbers/timeout/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err317];
                  } else {
                    vErrors.push(err317);
                  }
                  errors++;
                }
                if (!(data122 === "keep" || data122 === "drop" || data122 === "one")) {
                  const err318 = { instancePath: instancePath + "/numbers/timeout/trailing-zeros", schemaPath: "#/$defs/own-trailing-zeros/enum", keyword: "enum", params: { allowedValues: schema37.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err318];
                  } else {
                    vErrors.push(err318);
                  }
                  errors++;
                }
              }
              if (data119["leading-zero"] !== void 0) {
                let data123 = data119["leading-zero"];
                if (typeof data123 !== "string") {
                  const err319 = { instancePath: instancePath + "/numbers/timeout/leading-zero", schemaPath: "#/$defs/own-leading-zero/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err319];
                  } else {
                    vErrors.push(err319);
                  }
                  errors++;
                }
                if (!(data123 === "keep" || data123 === "drop")) {
                  const err320 = { instancePath: instancePath + "/numbers/timeout/leading-zero", schemaPath: "#/$defs/own-leading-zero/enum", keyword: "enum", params: { allowedValues: schema38.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err320];
                  } else {
                    vErrors.push(err320);
                  }
                  errors++;
                }
              }
              if (data119.plus !== void 0) {
                let data124 = data119.plus;
                if (typeof data124 !== "string") {
                  const err321 = { instancePath: instancePath + "/numbers/timeout/plus", schemaPath: "#/$defs/own-plus/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err321];
                  } else {
                    vErrors.push(err321);
                  }
                  errors++;
                }
                if (!(data124 === "yes" || data124 === "no")) {
                  const err322 = { instancePath: instancePath + "/numbers/timeout/plus", schemaPath: "#/$defs/own-plus/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err322];
                  } else {
                    vErrors.push(err322);
                  }
                  errors++;
                }
              }
              if (data119["suppressed-zeros"] !== void 0) {
                let data125 = data119["suppressed-zeros"];
                if (typeof data125 !== "string") {
                  const err323 = { instancePath: instancePath + "/numbers/timeout/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err323];
                  } else {
                    vErrors.push(err323);
                  }
                  errors++;
                }
                if (!(data125 === "leading" || data125 === "trailing" || data125 === "none")) {
                  const err324 = { instancePath: instancePath + "/numbers/timeout/suppressed-zeros", schemaPath: "#/$defs/own-suppressed-zeros/enum", keyword: "enum", params: { allowedValues: schema40.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err324];
                  } else {
                    vErrors.push(err324);
                  }
                  errors++;
                }
              }
              if (data119.digits !== void 0) {
                let data126 = data119.digits;
                if (!(typeof data126 == "number" && (!(data126 % 1) && !isNaN(data126)) && isFinite(data126))) {
                  const err325 = { instancePath: instancePath + "/numbers/timeout/digits", schemaPath: "#/$defs/own-digits/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err325];
                  } else {
                    vErrors.push(err325);
                  }
                  errors++;
                }
                if (typeof data126 == "number" && isFinite(data126)) {
                  if (data126 > 12 || isNaN(data126)) {
                    const err326 = { instancePath: instancePath + "/numbers/timeout/digits", schemaPath: "#/$defs/own-digits/maximum", keyword: "maximum", params: { comparison: "<=", limit: 12 }, message: "must be <= 12" };
                    if (vErrors === null) {
                      vErrors = [err326];
                    } else {
                      vErrors.push(err326);
                    }
                    errors++;
                  }
                  if (data126 < 1 || isNaN(data126)) {
                    const err327 = { instancePath: instancePath + "/numbers/timeout/digits", schemaPath: "#/$defs/own-digits/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err327];
                    } else {
                      vErrors.push(err327);
                    }
                    errors++;
                  }
                }
              }
            } else {
              const err328 = { instancePath: instancePath + "/numbers/timeout", schemaPath: "#/properties/numbers/properties/timeout/anyOf/1/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err328];
              } else {
                vErrors.push(err328);
              }
              errors++;
            }
            var _valid8 = _errs349 === errors;
            valid87 = valid87 || _valid8;
            if (!valid87) {
              const err329 = { instancePath: instancePath + "/numbers/timeout", schemaPath: "#/properties/numbers/properties/timeout/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err329];
              } else {
                vErrors.push(err329);
              }
              errors++;
            } else {
              errors = _errs346;
              if (vErrors !== null) {
                if (_errs346) {
                  vErrors.length = _errs346;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data36["code-width"] !== void 0) {
            let data127 = data36["code-width"];
            if (data127 && typeof data127 == "object" && !Array.isArray(data127)) {
              for (const key17 in data127) {
                if (!(key17 === "G" || key17 === "M" || key17 === "T" || key17 === "H" || key17 === "D")) {
                  const err330 = { instancePath: instancePath + "/numbers/code-width", schemaPath: "#/properties/numbers/properties/code-width/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key17 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err330];
                  } else {
                    vErrors.push(err330);
                  }
                  errors++;
                }
              }
              if (data127.G !== void 0) {
                let data128 = data127.G;
                if (!(typeof data128 == "number" && (!(data128 % 1) && !isNaN(data128)) && isFinite(data128))) {
                  const err331 = { instancePath: instancePath + "/numbers/code-width/G", schemaPath: "#/properties/numbers/properties/code-width/properties/G/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err331];
                  } else {
                    vErrors.push(err331);
                  }
                  errors++;
                }
                if (typeof data128 == "number" && isFinite(data128)) {
                  if (data128 > 4 || isNaN(data128)) {
                    const err332 = { instancePath: instancePath + "/numbers/code-width/G", schemaPath: "#/properties/numbers/properties/code-width/properties/G/maximum", keyword: "maximum", params: { comparison: "<=", limit: 4 }, message: "must be <= 4" };
                    if (vErrors === null) {
                      vErrors = [err332];
                    } else {
                      vErrors.push(err332);
                    }
                    errors++;
                  }
                  if (data128 < 1 || isNaN(data128)) {
                    const err333 = { instancePath: instancePath + "/numbers/code-width/G", schemaPath: "#/properties/numbers/properties/code-width/properties/G/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err333];
                    } else {
                      vErrors.push(err333);
                    }
                    errors++;
                  }
                }
              }
              if (data127.M !== void 0) {
                let data129 = data127.M;
                if (!(typeof data129 == "number" && (!(data129 % 1) && !isNaN(data129)) && isFinite(data129))) {
                  const err334 = { instancePath: instancePath + "/numbers/code-width/M", schemaPath: "#/properties/numbers/properties/code-width/properties/M/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err334];
                  } else {
                    vErrors.push(err334);
                  }
                  errors++;
                }
                if (typeof data129 == "number" && isFinite(data129)) {
                  if (data129 > 4 || isNaN(data129)) {
                    const err335 = { instancePath: instancePath + "/numbers/code-width/M", schemaPath: "#/properties/numbers/properties/code-width/properties/M/maximum", keyword: "maximum", params: { comparison: "<=", limit: 4 }, message: "must be <= 4" };
                    if (vErrors === null) {
                      vErrors = [err335];
                    } else {
                      vErrors.push(err335);
                    }
                    errors++;
                  }
                  if (data129 < 1 || isNaN(data129)) {
                    const err336 = { instancePath: instancePath + "/numbers/code-width/M", schemaPath: "#/properties/numbers/properties/code-width/properties/M/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err336];
                    } else {
                      vErrors.push(err336);
                    }
                    errors++;
                  }
                }
              }
              if (data127.T !== void 0) {
                let data130 = data127.T;
                if (!(typeof data130 == "number" && (!(data130 % 1) && !isNaN(data130)) && isFinite(data130))) {
                  const err337 = { instancePath: instancePath + "/numbers/code-width/T", schemaPath: "#/properties/numbers/properties/code-width/properties/T/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err337];
                  } else {
                    vErrors.push(err337);
                  }
                  errors++;
                }
                if (typeof data130 == "number" && isFinite(data130)) {
                  if (data130 > 4 || isNaN(data130)) {
                    const err338 = { instancePath: instancePath + "/numbers/code-width/T", schemaPath: "#/properties/numbers/properties/code-width/properties/T/maximum", keyword: "maximum", params: { comparison: "<=", limit: 4 }, message: "must be <= 4" };
                    if (vErrors === null) {
                      vErrors = [err338];
                    } else {
                      vErrors.push(err338);
                    }
                    errors++;
                  }
                  if (data130 < 1 || isNaN(data130)) {
                    const err339 = { instancePath: instancePath + "/numbers/code-width/T", schemaPath: "#/properties/numbers/properties/code-width/properties/T/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err339];
                    } else {
                      vErrors.push(err339);
                    }
                    errors++;
                  }
                }
              }
              if (data127.H !== void 0) {
                let data131 = data127.H;
                if (!(typeof data131 == "number" && (!(data131 % 1) && !isNaN(data131)) && isFinite(data131))) {
                  const err340 = { instancePath: instancePath + "/numbers/code-width/H", schemaPath: "#/properties/numbers/properties/code-width/properties/H/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err340];
                  } else {
                    vErrors.push(err340);
                  }
                  errors++;
                }
                if (typeof data131 == "number" && isFinite(data131)) {
                  if (data131 > 4 || isNaN(data131)) {
                    const err341 = { instancePath: instancePath + "/numbers/code-width/H", schemaPath: "#/properties/numbers/properties/code-width/properties/H/maximum", keyword: "maximum", params: { comparison: "<=", limit: 4 }, message: "must be <= 4" };
                    if (vErrors === null) {
                      vErrors = [err341];
                    } else {
                      vErrors.push(err341);
                    }
                    errors++;
                  }
                  if (data131 < 1 || isNaN(data131)) {
                    const err342 = { instancePath: instancePath + "/numbers/code-width/H", schemaPath: "#/properties/numbers/properties/code-width/properties/H/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err342];
                    } else {
                      vErrors.push(err342);
                    }
                    errors++;
                  }
                }
              }
              if (data127.D !== void 0) {
                let data132 = data127.D;
                if (!(typeof data132 == "number" && (!(data132 % 1) && !isNaN(data132)) && isFinite(data132))) {
                  const err343 = { instancePath: instancePath + "/numbers/code-width/D", schemaPath: "#/properties/numbers/properties/code-width/properties/D/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err343];
                  } else {
                    vErrors.push(err343);
                  }
                  errors++;
                }
                if (typeof data132 == "number" && isFinite(data132)) {
                  if (data132 > 4 || isNaN(data132)) {
                    const err344 = { instancePath: instancePath + "/numbers/code-width/D", schemaPath: "#/properties/numbers/properties/code-width/properties/D/maximum", keyword: "maximum", params: { comparison: "<=", limit: 4 }, message: "must be <= 4" };
                    if (vErrors === null) {
                      vErrors = [err344];
                    } else {
                      vErrors.push(err344);
                    }
                    errors++;
                  }
                  if (data132 < 1 || isNaN(data132)) {
                    const err345 = { instancePath: instancePath + "/numbers/code-width/D", schemaPath: "#/properties/numbers/properties/code-width/properties/D/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                    if (vErrors === null) {
                      vErrors = [err345];
                    } else {
                      vErrors.push(err345);
                    }
                    errors++;
                  }
                }
              }
            } else {
              const err346 = { instancePath: instancePath + "/numbers/code-width", schemaPath: "#/properties/numbers/properties/code-width/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err346];
              } else {
                vErrors.push(err346);
              }
              errors++;
            }
          }
        } else {
          const err347 = { instancePath: instancePath + "/numbers", schemaPath: "#/properties/numbers/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err347];
          } else {
            vErrors.push(err347);
          }
          errors++;
        }
      }
      if (data.modal !== void 0) {
        let data133 = data.modal;
        if (data133 && typeof data133 == "object" && !Array.isArray(data133)) {
          for (const key18 in data133) {
            if (!(key18 === "motion" || key18 === "axes" || key18 === "arc-end" || key18 === "arc-centre" || key18 === "feed")) {
              const err348 = { instancePath: instancePath + "/modal", schemaPath: "#/properties/modal/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key18 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err348];
              } else {
                vErrors.push(err348);
              }
              errors++;
            }
          }
          if (data133.motion !== void 0) {
            let data134 = data133.motion;
            if (typeof data134 !== "string") {
              const err349 = { instancePath: instancePath + "/modal/motion", schemaPath: "#/properties/modal/properties/motion/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err349];
              } else {
                vErrors.push(err349);
              }
              errors++;
            }
            if (!(data134 === "modal" || data134 === "each-block")) {
              const err350 = { instancePath: instancePath + "/modal/motion", schemaPath: "#/properties/modal/properties/motion/enum", keyword: "enum", params: { allowedValues: schema31.properties.modal.properties.motion.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err350];
              } else {
                vErrors.push(err350);
              }
              errors++;
            }
          }
          if (data133.axes !== void 0) {
            let data135 = data133.axes;
            if (typeof data135 !== "string") {
              const err351 = { instancePath: instancePath + "/modal/axes", schemaPath: "#/properties/modal/properties/axes/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err351];
              } else {
                vErrors.push(err351);
              }
              errors++;
            }
            if (!(data135 === "changed" || data135 === "all")) {
              const err352 = { instancePath: instancePath + "/modal/axes", schemaPath: "#/properties/modal/properties/axes/enum", keyword: "enum", params: { allowedValues: schema31.properties.modal.properties.axes.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err352];
              } else {
                vErrors.push(err352);
              }
              errors++;
            }
          }
          if (data133["arc-end"] !== void 0) {
            let data136 = data133["arc-end"];
            if (typeof data136 !== "string") {
              const err353 = { instancePath: instancePath + "/modal/arc-end", schemaPath: "#/properties/modal/properties/arc-end/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err353];
              } else {
                vErrors.push(err353);
              }
              errors++;
            }
            if (!(data136 === "changed" || data136 === "both")) {
              const err354 = { instancePath: instancePath + "/modal/arc-end", schemaPath: "#/properties/modal/properties/arc-end/enum", keyword: "enum", params: { allowedValues: schema31.properties.modal.properties["arc-end"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err354];
              } else {
                vErrors.push(err354);
              }
              errors++;
            }
          }
          if (data133["arc-centre"] !== void 0) {
            let data137 = data133["arc-centre"];
            if (typeof data137 !== "string") {
              const err355 = { instancePath: instancePath + "/modal/arc-centre", schemaPath: "#/properties/modal/properties/arc-centre/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err355];
              } else {
                vErrors.push(err355);
              }
              errors++;
            }
            if (!(data137 === "non-zero" || data137 === "both")) {
              const err356 = { instancePath: instancePath + "/modal/arc-centre", schemaPath: "#/properties/modal/properties/arc-centre/enum", keyword: "enum", params: { allowedValues: schema31.properties.modal.properties["arc-centre"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err356];
              } else {
                vErrors.push(err356);
              }
              errors++;
            }
          }
          if (data133.feed !== void 0) {
            let data138 = data133.feed;
            if (typeof data138 !== "string") {
              const err357 = { instancePath: instancePath + "/modal/feed", schemaPath: "#/properties/modal/properties/feed/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err357];
              } else {
                vErrors.push(err357);
              }
              errors++;
            }
            if (!(data138 === "modal" || data138 === "after-rapid" || data138 === "each-block")) {
              const err358 = { instancePath: instancePath + "/modal/feed", schemaPath: "#/properties/modal/properties/feed/enum", keyword: "enum", params: { allowedValues: schema31.properties.modal.properties.feed.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err358];
              } else {
                vErrors.push(err358);
              }
              errors++;
            }
          }
        } else {
          const err359 = { instancePath: instancePath + "/modal", schemaPath: "#/properties/modal/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err359];
          } else {
            vErrors.push(err359);
          }
          errors++;
        }
      }
      if (data.axes !== void 0) {
        let data139 = data.axes;
        if (data139 && typeof data139 == "object" && !Array.isArray(data139)) {
          for (const key19 in data139) {
            if (!(key19 === "x" || key19 === "y" || key19 === "z" || key19 === "a" || key19 === "b" || key19 === "c")) {
              const err360 = { instancePath: instancePath + "/axes", schemaPath: "#/properties/axes/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key19 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err360];
              } else {
                vErrors.push(err360);
              }
              errors++;
            }
          }
          if (data139.x !== void 0) {
            let data140 = data139.x;
            if (typeof data140 !== "string") {
              const err361 = { instancePath: instancePath + "/axes/x", schemaPath: "#/$defs/axisLetter/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err361];
              } else {
                vErrors.push(err361);
              }
              errors++;
            }
            if (!(data140 === "X" || data140 === "Y" || data140 === "Z" || data140 === "A" || data140 === "B" || data140 === "C" || data140 === "U" || data140 === "V" || data140 === "W")) {
              const err362 = { instancePath: instancePath + "/axes/x", schemaPath: "#/$defs/axisLetter/enum", keyword: "enum", params: { allowedValues: schema96.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err362];
              } else {
                vErrors.push(err362);
              }
              errors++;
            }
          }
          if (data139.y !== void 0) {
            let data141 = data139.y;
            if (typeof data141 !== "string") {
              const err363 = { instancePath: instancePath + "/axes/y", schemaPath: "#/$defs/axisLetter/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err363];
              } else {
                vErrors.push(err363);
              }
              errors++;
            }
            if (!(data141 === "X" || data141 === "Y" || data141 === "Z" || data141 === "A" || data141 === "B" || data141 === "C" || data141 === "U" || data141 === "V" || data141 === "W")) {
              const err364 = { instancePath: instancePath + "/axes/y", schemaPath: "#/$defs/axisLetter/enum", keyword: "enum", params: { allowedValues: schema96.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err364];
              } else {
                vErrors.push(err364);
              }
              errors++;
            }
          }
          if (data139.z !== void 0) {
            let data142 = data139.z;
            if (typeof data142 !== "string") {
              const err365 = { instancePath: instancePath + "/axes/z", schemaPath: "#/$defs/axisLetter/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err365];
              } else {
                vErrors.push(err365);
              }
              errors++;
            }
            if (!(data142 === "X" || data142 === "Y" || data142 === "Z" || data142 === "A" || data142 === "B" || data142 === "C" || data142 === "U" || data142 === "V" || data142 === "W")) {
              const err366 = { instancePath: instancePath + "/axes/z", schemaPath: "#/$defs/axisLetter/enum", keyword: "enum", params: { allowedValues: schema96.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err366];
              } else {
                vErrors.push(err366);
              }
              errors++;
            }
          }
          if (data139.a !== void 0) {
            let data143 = data139.a;
            if (typeof data143 !== "string") {
              const err367 = { instancePath: instancePath + "/axes/a", schemaPath: "#/$defs/axisLetter/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err367];
              } else {
                vErrors.push(err367);
              }
              errors++;
            }
            if (!(data143 === "X" || data143 === "Y" || data143 === "Z" || data143 === "A" || data143 === "B" || data143 === "C" || data143 === "U" || data143 === "V" || data143 === "W")) {
              const err368 = { instancePath: instancePath + "/axes/a", schemaPath: "#/$defs/axisLetter/enum", keyword: "enum", params: { allowedValues: schema96.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err368];
              } else {
                vErrors.push(err368);
              }
              errors++;
            }
          }
          if (data139.b !== void 0) {
            let data144 = data139.b;
            if (typeof data144 !== "string") {
              const err369 = { instancePath: instancePath + "/axes/b", schemaPath: "#/$defs/axisLetter/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err369];
              } else {
                vErrors.push(err369);
              }
              errors++;
            }
            if (!(data144 === "X" || data144 === "Y" || data144 === "Z" || data144 === "A" || data144 === "B" || data144 === "C" || data144 === "U" || data144 === "V" || data144 === "W")) {
              const err370 = { instancePath: instancePath + "/axes/b", schemaPath: "#/$defs/axisLetter/enum", keyword: "enum", params: { allowedValues: schema96.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err370];
              } else {
                vErrors.push(err370);
              }
              errors++;
            }
          }
          if (data139.c !== void 0) {
            let data145 = data139.c;
            if (typeof data145 !== "string") {
              const err371 = { instancePath: instancePath + "/axes/c", schemaPath: "#/$defs/axisLetter/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err371];
              } else {
                vErrors.push(err371);
              }
              errors++;
            }
            if (!(data145 === "X" || data145 === "Y" || data145 === "Z" || data145 === "A" || data145 === "B" || data145 === "C" || data145 === "U" || data145 === "V" || data145 === "W")) {
              const err372 = { instancePath: instancePath + "/axes/c", schemaPath: "#/$defs/axisLetter/enum", keyword: "enum", params: { allowedValues: schema96.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err372];
              } else {
                vErrors.push(err372);
              }
              errors++;
            }
          }
        } else {
          const err373 = { instancePath: instancePath + "/axes", schemaPath: "#/properties/axes/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err373];
          } else {
            vErrors.push(err373);
          }
          errors++;
        }
      }
      if (data.motion !== void 0) {
        let data146 = data.motion;
        if (data146 && typeof data146 == "object" && !Array.isArray(data146)) {
          for (const key20 in data146) {
            if (!(key20 === "rapid" || key20 === "line" || key20 === "rapids" || key20 === "rapid-axes" || key20 === "axes-at-once" || key20 === "rapid-feed" || key20 === "machine-move-lasts")) {
              const err374 = { instancePath: instancePath + "/motion", schemaPath: "#/properties/motion/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key20 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err374];
              } else {
                vErrors.push(err374);
              }
              errors++;
            }
          }
          if (data146.rapid !== void 0) {
            let data147 = data146.rapid;
            if (typeof data147 === "string") {
              if (!pattern7.test(data147)) {
                const err375 = { instancePath: instancePath + "/motion/rapid", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err375];
                } else {
                  vErrors.push(err375);
                }
                errors++;
              }
            } else {
              const err376 = { instancePath: instancePath + "/motion/rapid", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err376];
              } else {
                vErrors.push(err376);
              }
              errors++;
            }
          }
          if (data146.line !== void 0) {
            let data148 = data146.line;
            if (typeof data148 === "string") {
              if (!pattern7.test(data148)) {
                const err377 = { instancePath: instancePath + "/motion/line", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err377];
                } else {
                  vErrors.push(err377);
                }
                errors++;
              }
            } else {
              const err378 = { instancePath: instancePath + "/motion/line", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err378];
              } else {
                vErrors.push(err378);
              }
              errors++;
            }
          }
          if (data146.rapids !== void 0) {
            let data149 = data146.rapids;
            if (typeof data149 !== "string") {
              const err379 = { instancePath: instancePath + "/motion/rapids", schemaPath: "#/properties/motion/properties/rapids/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err379];
              } else {
                vErrors.push(err379);
              }
              errors++;
            }
            if (!(data149 === "straight" || data149 === "dog-leg")) {
              const err380 = { instancePath: instancePath + "/motion/rapids", schemaPath: "#/properties/motion/properties/rapids/enum", keyword: "enum", params: { allowedValues: schema31.properties.motion.properties.rapids.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err380];
              } else {
                vErrors.push(err380);
              }
              errors++;
            }
          }
          if (data146["rapid-axes"] !== void 0) {
            let data150 = data146["rapid-axes"];
            if (typeof data150 !== "string") {
              const err381 = { instancePath: instancePath + "/motion/rapid-axes", schemaPath: "#/properties/motion/properties/rapid-axes/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err381];
              } else {
                vErrors.push(err381);
              }
              errors++;
            }
            if (!(data150 === "together" || data150 === "one-at-a-time")) {
              const err382 = { instancePath: instancePath + "/motion/rapid-axes", schemaPath: "#/properties/motion/properties/rapid-axes/enum", keyword: "enum", params: { allowedValues: schema31.properties.motion.properties["rapid-axes"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err382];
              } else {
                vErrors.push(err382);
              }
              errors++;
            }
          }
          if (data146["axes-at-once"] !== void 0) {
            let data151 = data146["axes-at-once"];
            if (!(typeof data151 == "number" && (!(data151 % 1) && !isNaN(data151)) && isFinite(data151))) {
              const err383 = { instancePath: instancePath + "/motion/axes-at-once", schemaPath: "#/properties/motion/properties/axes-at-once/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
              if (vErrors === null) {
                vErrors = [err383];
              } else {
                vErrors.push(err383);
              }
              errors++;
            }
            if (typeof data151 == "number" && isFinite(data151)) {
              if (data151 > 6 || isNaN(data151)) {
                const err384 = { instancePath: instancePath + "/motion/axes-at-once", schemaPath: "#/properties/motion/properties/axes-at-once/maximum", keyword: "maximum", params: { comparison: "<=", limit: 6 }, message: "must be <= 6" };
                if (vErrors === null) {
                  vErrors = [err384];
                } else {
                  vErrors.push(err384);
                }
                errors++;
              }
              if (data151 < 2 || isNaN(data151)) {
                const err385 = { instancePath: instancePath + "/motion/axes-at-once", schemaPath: "#/properties/motion/properties/axes-at-once/minimum", keyword: "minimum", params: { comparison: ">=", limit: 2 }, message: "must be >= 2" };
                if (vErrors === null) {
                  vErrors = [err385];
                } else {
                  vErrors.push(err385);
                }
                errors++;
              }
            }
          }
          if (data146["rapid-feed"] !== void 0) {
            let data152 = data146["rapid-feed"];
            const _errs435 = errors;
            let valid107 = false;
            const _errs436 = errors;
            if (typeof data152 !== "string") {
              const err386 = { instancePath: instancePath + "/motion/rapid-feed", schemaPath: "#/properties/motion/properties/rapid-feed/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err386];
              } else {
                vErrors.push(err386);
              }
              errors++;
            }
            if ("none" !== data152) {
              const err387 = { instancePath: instancePath + "/motion/rapid-feed", schemaPath: "#/properties/motion/properties/rapid-feed/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
              if (vErrors === null) {
                vErrors = [err387];
              } else {
                vErrors.push(err387);
              }
              errors++;
            }
            var _valid9 = _errs436 === errors;
            valid107 = valid107 || _valid9;
            const _errs438 = errors;
            const _errs440 = errors;
            let valid109 = false;
            const _errs441 = errors;
            if (typeof data152 == "number" && isFinite(data152)) {
              if (data152 > 1e6 || isNaN(data152)) {
                const err388 = { instancePath: instancePath + "/motion/rapid-feed", schemaPath: "#/$defs/feed/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                if (vErrors === null) {
                  vErrors = [err388];
                } else {
                  vErrors.push(err388);
                }
                errors++;
              }
              if (data152 <= 0 || isNaN(data152)) {
                const err389 = { instancePath: instancePath + "/motion/rapid-feed", schemaPath: "#/$defs/feed/anyOf/0/exclusiveMinimum", keyword: "exclusiveMinimum", params: { comparison: ">", limit: 0 }, message: "must be > 0" };
                if (vErrors === null) {
                  vErrors = [err389];
                } else {
                  vErrors.push(err389);
                }
                errors++;
              }
            } else {
              const err390 = { instancePath: instancePath + "/motion/rapid-feed", schemaPath: "#/$defs/feed/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
              if (vErrors === null) {
                vErrors = [err390];
              } else {
                vErrors.push(err390);
              }
              errors++;
            }
            var _valid10 = _errs441 === errors;
            valid109 = valid109 || _valid10;
            const _errs443 = errors;
            if (typeof data152 === "string") {
              if (!pattern9.test(data152)) {
                const err391 = { instancePath: instancePath + "/motion/rapid-feed", schemaPath: "#/$defs/feed/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^\\d{1,5}(\\.\\d{1,5})? (mm|in)/min$" }, message: 'must match pattern "^\\d{1,5}(\\.\\d{1,5})? (mm|in)/min$"' };
                if (vErrors === null) {
                  vErrors = [err391];
                } else {
                  vErrors.push(err391);
                }
                errors++;
              }
            } else {
              const err392 = { instancePath: instancePath + "/motion/rapid-feed", schemaPath: "#/$defs/feed/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err392];
              } else {
                vErrors.push(err392);
              }
              errors++;
            }
            var _valid10 = _errs443 === errors;
            valid109 = valid109 || _valid10;
            if (!valid109) {
              const err393 = { instancePath: instancePath + "/motion/rapid-feed", schemaPath: "#/$defs/feed/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err393];
              } else {
                vErrors.push(err393);
              }
              errors++;
            } else {
              errors = _errs440;
              if (vErrors !== null) {
                if (_errs440) {
                  vErrors.length = _errs440;
                } else {
                  vErrors = null;
                }
              }
            }
            var _valid9 = _errs438 === errors;
            valid107 = valid107 || _valid9;
            if (!valid107) {
              const err394 = { instancePath: instancePath + "/motion/rapid-feed", schemaPath: "#/properties/motion/properties/rapid-feed/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err394];
              } else {
                vErrors.push(err394);
              }
              errors++;
            } else {
              errors = _errs435;
              if (vErrors !== null) {
                if (_errs435) {
                  vErrors.length = _errs435;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data146["machine-move-lasts"] !== void 0) {
            let data153 = data146["machine-move-lasts"];
            if (typeof data153 !== "string") {
              const err395 = { instancePath: instancePath + "/motion/machine-move-lasts", schemaPath: "#/properties/motion/properties/machine-move-lasts/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err395];
              } else {
                vErrors.push(err395);
              }
              errors++;
            }
            if (!(data153 === "block" || data153 === "until-work-offset")) {
              const err396 = { instancePath: instancePath + "/motion/machine-move-lasts", schemaPath: "#/properties/motion/properties/machine-move-lasts/enum", keyword: "enum", params: { allowedValues: schema31.properties.motion.properties["machine-move-lasts"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err396];
              } else {
                vErrors.push(err396);
              }
              errors++;
            }
          }
        } else {
          const err397 = { instancePath: instancePath + "/motion", schemaPath: "#/properties/motion/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err397];
          } else {
            vErrors.push(err397);
          }
          errors++;
        }
      }
      if (data.units !== void 0) {
        let data154 = data.units;
        if (data154 && typeof data154 == "object" && !Array.isArray(data154)) {
          for (const key21 in data154) {
            if (!(key21 === "mm" || key21 === "inch" || key21 === "programs-in" || key21 === "stated")) {
              const err398 = { instancePath: instancePath + "/units", schemaPath: "#/properties/units/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key21 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err398];
              } else {
                vErrors.push(err398);
              }
              errors++;
            }
          }
          if (data154.mm !== void 0) {
            let data155 = data154.mm;
            if (typeof data155 === "string") {
              if (!pattern7.test(data155)) {
                const err399 = { instancePath: instancePath + "/units/mm", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err399];
                } else {
                  vErrors.push(err399);
                }
                errors++;
              }
            } else {
              const err400 = { instancePath: instancePath + "/units/mm", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err400];
              } else {
                vErrors.push(err400);
              }
              errors++;
            }
          }
          if (data154.inch !== void 0) {
            let data156 = data154.inch;
            if (typeof data156 === "string") {
              if (!pattern7.test(data156)) {
                const err401 = { instancePath: instancePath + "/units/inch", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err401];
                } else {
                  vErrors.push(err401);
                }
                errors++;
              }
            } else {
              const err402 = { instancePath: instancePath + "/units/inch", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err402];
              } else {
                vErrors.push(err402);
              }
              errors++;
            }
          }
          if (data154["programs-in"] !== void 0) {
            let data157 = data154["programs-in"];
            if (typeof data157 !== "string") {
              const err403 = { instancePath: instancePath + "/units/programs-in", schemaPath: "#/properties/units/properties/programs-in/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err403];
              } else {
                vErrors.push(err403);
              }
              errors++;
            }
            if (!(data157 === "job" || data157 === "mm" || data157 === "inch")) {
              const err404 = { instancePath: instancePath + "/units/programs-in", schemaPath: "#/properties/units/properties/programs-in/enum", keyword: "enum", params: { allowedValues: schema31.properties.units.properties["programs-in"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err404];
              } else {
                vErrors.push(err404);
              }
              errors++;
            }
          }
          if (data154.stated !== void 0) {
            let data158 = data154.stated;
            if (typeof data158 !== "string") {
              const err405 = { instancePath: instancePath + "/units/stated", schemaPath: "#/properties/units/properties/stated/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err405];
              } else {
                vErrors.push(err405);
              }
              errors++;
            }
            if (!(data158 === "with-modes" || data158 === "first-block")) {
              const err406 = { instancePath: instancePath + "/units/stated", schemaPath: "#/properties/units/properties/stated/enum", keyword: "enum", params: { allowedValues: schema31.properties.units.properties.stated.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err406];
              } else {
                vErrors.push(err406);
              }
              errors++;
            }
          }
        } else {
          const err407 = { instancePath: instancePath + "/units", schemaPath: "#/properties/units/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err407];
          } else {
            vErrors.push(err407);
          }
          errors++;
        }
      }
      if (data.plane !== void 0) {
        let data159 = data.plane;
        if (data159 && typeof data159 == "object" && !Array.isArray(data159)) {
          for (const key22 in data159) {
            if (!(key22 === "xy" || key22 === "zx" || key22 === "yz")) {
              const err408 = { instancePath: instancePath + "/plane", schemaPath: "#/properties/plane/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key22 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err408];
              } else {
                vErrors.push(err408);
              }
              errors++;
            }
          }
          if (data159.xy !== void 0) {
            let data160 = data159.xy;
            if (typeof data160 === "string") {
              if (!pattern7.test(data160)) {
                const err409 = { instancePath: instancePath + "/plane/xy", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err409];
                } else {
                  vErrors.push(err409);
                }
                errors++;
              }
            } else {
              const err410 = { instancePath: instancePath + "/plane/xy", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err410];
              } else {
                vErrors.push(err410);
              }
              errors++;
            }
          }
          if (data159.zx !== void 0) {
            let data161 = data159.zx;
            if (typeof data161 === "string") {
              if (!pattern7.test(data161)) {
                const err411 = { instancePath: instancePath + "/plane/zx", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err411];
                } else {
                  vErrors.push(err411);
                }
                errors++;
              }
            } else {
              const err412 = { instancePath: instancePath + "/plane/zx", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err412];
              } else {
                vErrors.push(err412);
              }
              errors++;
            }
          }
          if (data159.yz !== void 0) {
            let data162 = data159.yz;
            if (typeof data162 === "string") {
              if (!pattern7.test(data162)) {
                const err413 = { instancePath: instancePath + "/plane/yz", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err413];
                } else {
                  vErrors.push(err413);
                }
                errors++;
              }
            } else {
              const err414 = { instancePath: instancePath + "/plane/yz", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err414];
              } else {
                vErrors.push(err414);
              }
              errors++;
            }
          }
        } else {
          const err415 = { instancePath: instancePath + "/plane", schemaPath: "#/properties/plane/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err415];
          } else {
            vErrors.push(err415);
          }
          errors++;
        }
      }
      if (data.distance !== void 0) {
        let data163 = data.distance;
        if (data163 && typeof data163 == "object" && !Array.isArray(data163)) {
          for (const key23 in data163) {
            if (!(key23 === "absolute" || key23 === "incremental" || key23 === "programs-in")) {
              const err416 = { instancePath: instancePath + "/distance", schemaPath: "#/properties/distance/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key23 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err416];
              } else {
                vErrors.push(err416);
              }
              errors++;
            }
          }
          if (data163.absolute !== void 0) {
            let data164 = data163.absolute;
            if (typeof data164 === "string") {
              if (!pattern7.test(data164)) {
                const err417 = { instancePath: instancePath + "/distance/absolute", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err417];
                } else {
                  vErrors.push(err417);
                }
                errors++;
              }
            } else {
              const err418 = { instancePath: instancePath + "/distance/absolute", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err418];
              } else {
                vErrors.push(err418);
              }
              errors++;
            }
          }
          if (data163.incremental !== void 0) {
            let data165 = data163.incremental;
            if (typeof data165 === "string") {
              if (!pattern7.test(data165)) {
                const err419 = { instancePath: instancePath + "/distance/incremental", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err419];
                } else {
                  vErrors.push(err419);
                }
                errors++;
              }
            } else {
              const err420 = { instancePath: instancePath + "/distance/incremental", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err420];
              } else {
                vErrors.push(err420);
              }
              errors++;
            }
          }
          if (data163["programs-in"] !== void 0) {
            let data166 = data163["programs-in"];
            if (typeof data166 !== "string") {
              const err421 = { instancePath: instancePath + "/distance/programs-in", schemaPath: "#/properties/distance/properties/programs-in/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err421];
              } else {
                vErrors.push(err421);
              }
              errors++;
            }
            if (!(data166 === "absolute" || data166 === "incremental")) {
              const err422 = { instancePath: instancePath + "/distance/programs-in", schemaPath: "#/properties/distance/properties/programs-in/enum", keyword: "enum", params: { allowedValues: schema31.properties.distance.properties["programs-in"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err422];
              } else {
                vErrors.push(err422);
              }
              errors++;
            }
          }
        } else {
          const err423 = { instancePath: instancePath + "/distance", schemaPath: "#/properties/distance/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err423];
          } else {
            vErrors.push(err423);
          }
          errors++;
        }
      }
      if (data.arc !== void 0) {
        let data167 = data.arc;
        if (data167 && typeof data167 == "object" && !Array.isArray(data167)) {
          for (const key24 in data167) {
            if (!func1.call(schema31.properties.arc.properties, key24)) {
              const err424 = { instancePath: instancePath + "/arc", schemaPath: "#/properties/arc/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key24 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err424];
              } else {
                vErrors.push(err424);
              }
              errors++;
            }
          }
          if (data167.cw !== void 0) {
            let data168 = data167.cw;
            if (typeof data168 === "string") {
              if (!pattern7.test(data168)) {
                const err425 = { instancePath: instancePath + "/arc/cw", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err425];
                } else {
                  vErrors.push(err425);
                }
                errors++;
              }
            } else {
              const err426 = { instancePath: instancePath + "/arc/cw", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err426];
              } else {
                vErrors.push(err426);
              }
              errors++;
            }
          }
          if (data167.ccw !== void 0) {
            let data169 = data167.ccw;
            if (typeof data169 === "string") {
              if (!pattern7.test(data169)) {
                const err427 = { instancePath: instancePath + "/arc/ccw", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err427];
                } else {
                  vErrors.push(err427);
                }
                errors++;
              }
            } else {
              const err428 = { instancePath: instancePath + "/arc/ccw", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err428];
              } else {
                vErrors.push(err428);
              }
              errors++;
            }
          }
          if (data167.form !== void 0) {
            let data170 = data167.form;
            if (typeof data170 !== "string") {
              const err429 = { instancePath: instancePath + "/arc/form", schemaPath: "#/properties/arc/properties/form/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err429];
              } else {
                vErrors.push(err429);
              }
              errors++;
            }
            if (!(data170 === "incremental-centre" || data170 === "absolute-centre" || data170 === "radius" || data170 === "none")) {
              const err430 = { instancePath: instancePath + "/arc/form", schemaPath: "#/properties/arc/properties/form/enum", keyword: "enum", params: { allowedValues: schema31.properties.arc.properties.form.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err430];
              } else {
                vErrors.push(err430);
              }
              errors++;
            }
          }
          if (data167["centre-words"] !== void 0) {
            let data171 = data167["centre-words"];
            if (data171 && typeof data171 == "object" && !Array.isArray(data171)) {
              for (const key25 in data171) {
                if (!(key25 === "absolute" || key25 === "incremental")) {
                  const err431 = { instancePath: instancePath + "/arc/centre-words", schemaPath: "#/properties/arc/properties/centre-words/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key25 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err431];
                  } else {
                    vErrors.push(err431);
                  }
                  errors++;
                }
              }
              if (data171.absolute !== void 0) {
                let data172 = data171.absolute;
                if (typeof data172 === "string") {
                  if (!pattern7.test(data172)) {
                    const err432 = { instancePath: instancePath + "/arc/centre-words/absolute", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                    if (vErrors === null) {
                      vErrors = [err432];
                    } else {
                      vErrors.push(err432);
                    }
                    errors++;
                  }
                } else {
                  const err433 = { instancePath: instancePath + "/arc/centre-words/absolute", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err433];
                  } else {
                    vErrors.push(err433);
                  }
                  errors++;
                }
              }
              if (data171.incremental !== void 0) {
                let data173 = data171.incremental;
                if (typeof data173 === "string") {
                  if (!pattern7.test(data173)) {
                    const err434 = { instancePath: instancePath + "/arc/centre-words/incremental", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                    if (vErrors === null) {
                      vErrors = [err434];
                    } else {
                      vErrors.push(err434);
                    }
                    errors++;
                  }
                } else {
                  const err435 = { instancePath: instancePath + "/arc/centre-words/incremental", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err435];
                  } else {
                    vErrors.push(err435);
                  }
                  errors++;
                }
              }
            } else {
              const err436 = { instancePath: instancePath + "/arc/centre-words", schemaPath: "#/properties/arc/properties/centre-words/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err436];
              } else {
                vErrors.push(err436);
              }
              errors++;
            }
          }
          if (data167["radius-word"] !== void 0) {
            let data174 = data167["radius-word"];
            if (typeof data174 === "string") {
              if (!pattern6.test(data174)) {
                const err437 = { instancePath: instancePath + "/arc/radius-word", schemaPath: "#/$defs/letter/pattern", keyword: "pattern", params: { pattern: "^[A-Z]$" }, message: 'must match pattern "^[A-Z]$"' };
                if (vErrors === null) {
                  vErrors = [err437];
                } else {
                  vErrors.push(err437);
                }
                errors++;
              }
            } else {
              const err438 = { instancePath: instancePath + "/arc/radius-word", schemaPath: "#/$defs/letter/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err438];
              } else {
                vErrors.push(err438);
              }
              errors++;
            }
          }
          if (data167.planes !== void 0) {
            let data175 = data167.planes;
            if (Array.isArray(data175)) {
              if (data175.length > 3) {
                const err439 = { instancePath: instancePath + "/arc/planes", schemaPath: "#/properties/arc/properties/planes/maxItems", keyword: "maxItems", params: { limit: 3 }, message: "must NOT have more than 3 items" };
                if (vErrors === null) {
                  vErrors = [err439];
                } else {
                  vErrors.push(err439);
                }
                errors++;
              }
              const len2 = data175.length;
              for (let i3 = 0; i3 < len2; i3++) {
                let data176 = data175[i3];
                if (typeof data176 !== "string") {
                  const err440 = { instancePath: instancePath + "/arc/planes/" + i3, schemaPath: "#/properties/arc/properties/planes/items/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err440];
                  } else {
                    vErrors.push(err440);
                  }
                  errors++;
                }
                if (!(data176 === "xy" || data176 === "zx" || data176 === "yz")) {
                  const err441 = { instancePath: instancePath + "/arc/planes/" + i3, schemaPath: "#/properties/arc/properties/planes/items/enum", keyword: "enum", params: { allowedValues: schema31.properties.arc.properties.planes.items.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err441];
                  } else {
                    vErrors.push(err441);
                  }
                  errors++;
                }
              }
              let i4 = data175.length;
              let j1;
              if (i4 > 1) {
                const indices0 = {};
                for (; i4--; ) {
                  let item0 = data175[i4];
                  if (typeof item0 !== "string") {
                    continue;
                  }
                  if (typeof indices0[item0] == "number") {
                    j1 = indices0[item0];
                    const err442 = { instancePath: instancePath + "/arc/planes", schemaPath: "#/properties/arc/properties/planes/uniqueItems", keyword: "uniqueItems", params: { i: i4, j: j1 }, message: "must NOT have duplicate items (items ## " + j1 + " and " + i4 + " are identical)" };
                    if (vErrors === null) {
                      vErrors = [err442];
                    } else {
                      vErrors.push(err442);
                    }
                    errors++;
                    break;
                  }
                  indices0[item0] = i4;
                }
              }
            } else {
              const err443 = { instancePath: instancePath + "/arc/planes", schemaPath: "#/properties/arc/properties/planes/type", keyword: "type", params: { type: "array" }, message: "must be array" };
              if (vErrors === null) {
                vErrors = [err443];
              } else {
                vErrors.push(err443);
              }
              errors++;
            }
          }
          if (data167["largest-sweep"] !== void 0) {
            let data177 = data167["largest-sweep"];
            if (typeof data177 == "number" && isFinite(data177)) {
              if (data177 > 360 || isNaN(data177)) {
                const err444 = { instancePath: instancePath + "/arc/largest-sweep", schemaPath: "#/properties/arc/properties/largest-sweep/maximum", keyword: "maximum", params: { comparison: "<=", limit: 360 }, message: "must be <= 360" };
                if (vErrors === null) {
                  vErrors = [err444];
                } else {
                  vErrors.push(err444);
                }
                errors++;
              }
              if (data177 <= 0 || isNaN(data177)) {
                const err445 = { instancePath: instancePath + "/arc/largest-sweep", schemaPath: "#/properties/arc/properties/largest-sweep/exclusiveMinimum", keyword: "exclusiveMinimum", params: { comparison: ">", limit: 0 }, message: "must be > 0" };
                if (vErrors === null) {
                  vErrors = [err445];
                } else {
                  vErrors.push(err445);
                }
                errors++;
              }
            } else {
              const err446 = { instancePath: instancePath + "/arc/largest-sweep", schemaPath: "#/properties/arc/properties/largest-sweep/type", keyword: "type", params: { type: "number" }, message: "must be number" };
              if (vErrors === null) {
                vErrors = [err446];
              } else {
                vErrors.push(err446);
              }
              errors++;
            }
          }
          if (data167["full-circle"] !== void 0) {
            let data178 = data167["full-circle"];
            if (typeof data178 !== "string") {
              const err447 = { instancePath: instancePath + "/arc/full-circle", schemaPath: "#/$defs/yesNo/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err447];
              } else {
                vErrors.push(err447);
              }
              errors++;
            }
            if (!(data178 === "yes" || data178 === "no")) {
              const err448 = { instancePath: instancePath + "/arc/full-circle", schemaPath: "#/$defs/yesNo/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err448];
              } else {
                vErrors.push(err448);
              }
              errors++;
            }
          }
          if (data167.helix !== void 0) {
            let data179 = data167.helix;
            if (typeof data179 !== "string") {
              const err449 = { instancePath: instancePath + "/arc/helix", schemaPath: "#/$defs/yesNo/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err449];
              } else {
                vErrors.push(err449);
              }
              errors++;
            }
            if (!(data179 === "yes" || data179 === "no")) {
              const err450 = { instancePath: instancePath + "/arc/helix", schemaPath: "#/$defs/yesNo/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err450];
              } else {
                vErrors.push(err450);
              }
              errors++;
            }
          }
          if (data167["turns-word"] !== void 0) {
            let data180 = data167["turns-word"];
            if (typeof data180 === "string") {
              if (!pattern22.test(data180)) {
                const err451 = { instancePath: instancePath + "/arc/turns-word", schemaPath: "#/$defs/letterOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[A-Z])$" }, message: 'must match pattern "^(none|[A-Z])$"' };
                if (vErrors === null) {
                  vErrors = [err451];
                } else {
                  vErrors.push(err451);
                }
                errors++;
              }
            } else {
              const err452 = { instancePath: instancePath + "/arc/turns-word", schemaPath: "#/$defs/letterOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err452];
              } else {
                vErrors.push(err452);
              }
              errors++;
            }
          }
          if (data167["feed-along"] !== void 0) {
            let data181 = data167["feed-along"];
            if (typeof data181 !== "string") {
              const err453 = { instancePath: instancePath + "/arc/feed-along", schemaPath: "#/properties/arc/properties/feed-along/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err453];
              } else {
                vErrors.push(err453);
              }
              errors++;
            }
            if (!(data181 === "path" || data181 === "circle")) {
              const err454 = { instancePath: instancePath + "/arc/feed-along", schemaPath: "#/properties/arc/properties/feed-along/enum", keyword: "enum", params: { allowedValues: schema31.properties.arc.properties["feed-along"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err454];
              } else {
                vErrors.push(err454);
              }
              errors++;
            }
          }
          if (data167["smallest-radius"] !== void 0) {
            let data182 = data167["smallest-radius"];
            const _errs525 = errors;
            let valid134 = false;
            const _errs526 = errors;
            if (typeof data182 == "number" && isFinite(data182)) {
              if (data182 > 1e6 || isNaN(data182)) {
                const err455 = { instancePath: instancePath + "/arc/smallest-radius", schemaPath: "#/$defs/lengthOrNone/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                if (vErrors === null) {
                  vErrors = [err455];
                } else {
                  vErrors.push(err455);
                }
                errors++;
              }
              if (data182 < 0 || isNaN(data182)) {
                const err456 = { instancePath: instancePath + "/arc/smallest-radius", schemaPath: "#/$defs/lengthOrNone/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                if (vErrors === null) {
                  vErrors = [err456];
                } else {
                  vErrors.push(err456);
                }
                errors++;
              }
            } else {
              const err457 = { instancePath: instancePath + "/arc/smallest-radius", schemaPath: "#/$defs/lengthOrNone/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
              if (vErrors === null) {
                vErrors = [err457];
              } else {
                vErrors.push(err457);
              }
              errors++;
            }
            var _valid11 = _errs526 === errors;
            valid134 = valid134 || _valid11;
            const _errs528 = errors;
            if (typeof data182 === "string") {
              if (!pattern23.test(data182)) {
                const err458 = { instancePath: instancePath + "/arc/smallest-radius", schemaPath: "#/$defs/lengthOrNone/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^(none|\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }, message: 'must match pattern "^(none|\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$"' };
                if (vErrors === null) {
                  vErrors = [err458];
                } else {
                  vErrors.push(err458);
                }
                errors++;
              }
            } else {
              const err459 = { instancePath: instancePath + "/arc/smallest-radius", schemaPath: "#/$defs/lengthOrNone/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err459];
              } else {
                vErrors.push(err459);
              }
              errors++;
            }
            var _valid11 = _errs528 === errors;
            valid134 = valid134 || _valid11;
            if (!valid134) {
              const err460 = { instancePath: instancePath + "/arc/smallest-radius", schemaPath: "#/$defs/lengthOrNone/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err460];
              } else {
                vErrors.push(err460);
              }
              errors++;
            } else {
              errors = _errs525;
              if (vErrors !== null) {
                if (_errs525) {
                  vErrors.length = _errs525;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data167["largest-radius"] !== void 0) {
            let data183 = data167["largest-radius"];
            const _errs532 = errors;
            let valid136 = false;
            const _errs533 = errors;
            if (typeof data183 == "number" && isFinite(data183)) {
              if (data183 > 1e6 || isNaN(data183)) {
                const err461 = { instancePath: instancePath + "/arc/largest-radius", schemaPath: "#/$defs/lengthOrNone/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                if (vErrors === null) {
                  vErrors = [err461];
                } else {
                  vErrors.push(err461);
                }
                errors++;
              }
              if (data183 < 0 || isNaN(data183)) {
                const err462 = { instancePath: instancePath + "/arc/largest-radius", schemaPath: "#/$defs/lengthOrNone/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                if (vErrors === null) {
                  vErrors = [err462];
                } else {
                  vErrors.push(err462);
                }
                errors++;
              }
            } else {
              const err463 = { instancePath: instancePath + "/arc/largest-radius", schemaPath: "#/$defs/lengthOrNone/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
              if (vErrors === null) {
                vErrors = [err463];
              } else {
                vErrors.push(err463);
              }
              errors++;
            }
            var _valid12 = _errs533 === errors;
            valid136 = valid136 || _valid12;
            const _errs535 = errors;
            if (typeof data183 === "string") {
              if (!pattern23.test(data183)) {
                const err464 = { instancePath: instancePath + "/arc/largest-radius", schemaPath: "#/$defs/lengthOrNone/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^(none|\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }, message: 'must match pattern "^(none|\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$"' };
                if (vErrors === null) {
                  vErrors = [err464];
                } else {
                  vErrors.push(err464);
                }
                errors++;
              }
            } else {
              const err465 = { instancePath: instancePath + "/arc/largest-radius", schemaPath: "#/$defs/lengthOrNone/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err465];
              } else {
                vErrors.push(err465);
              }
              errors++;
            }
            var _valid12 = _errs535 === errors;
            valid136 = valid136 || _valid12;
            if (!valid136) {
              const err466 = { instancePath: instancePath + "/arc/largest-radius", schemaPath: "#/$defs/lengthOrNone/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err466];
              } else {
                vErrors.push(err466);
              }
              errors++;
            } else {
              errors = _errs532;
              if (vErrors !== null) {
                if (_errs532) {
                  vErrors.length = _errs532;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data167.tolerance !== void 0) {
            let data184 = data167.tolerance;
            if (data184 && typeof data184 == "object" && !Array.isArray(data184)) {
              for (const key26 in data184) {
                if (!(key26 === "mm" || key26 === "inch" || key26 === "relative")) {
                  const err467 = { instancePath: instancePath + "/arc/tolerance", schemaPath: "#/properties/arc/properties/tolerance/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key26 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err467];
                  } else {
                    vErrors.push(err467);
                  }
                  errors++;
                }
              }
              if (data184.mm !== void 0) {
                let data185 = data184.mm;
                if (typeof data185 == "number" && isFinite(data185)) {
                  if (data185 > 10 || isNaN(data185)) {
                    const err468 = { instancePath: instancePath + "/arc/tolerance/mm", schemaPath: "#/properties/arc/properties/tolerance/properties/mm/maximum", keyword: "maximum", params: { comparison: "<=", limit: 10 }, message: "must be <= 10" };
                    if (vErrors === null) {
                      vErrors = [err468];
                    } else {
                      vErrors.push(err468);
                    }
                    errors++;
                  }
                  if (data185 < 0 || isNaN(data185)) {
                    const err469 = { instancePath: instancePath + "/arc/tolerance/mm", schemaPath: "#/properties/arc/properties/tolerance/properties/mm/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err469];
                    } else {
                      vErrors.push(err469);
                    }
                    errors++;
                  }
                } else {
                  const err470 = { instancePath: instancePath + "/arc/tolerance/mm", schemaPath: "#/properties/arc/properties/tolerance/properties/mm/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                  if (vErrors === null) {
                    vErrors = [err470];
                  } else {
                    vErrors.push(err470);
                  }
                  errors++;
                }
              }
              if (data184.inch !== void 0) {
                let data186 = data184.inch;
                if (typeof data186 == "number" && isFinite(data186)) {
                  if (data186 > 1 || isNaN(data186)) {
                    const err471 = { instancePath: instancePath + "/arc/tolerance/inch", schemaPath: "#/properties/arc/properties/tolerance/properties/inch/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1 }, message: "must be <= 1" };
                    if (vErrors === null) {
                      vErrors = [err471];
                    } else {
                      vErrors.push(err471);
                    }
                    errors++;
                  }
                  if (data186 < 0 || isNaN(data186)) {
                    const err472 = { instancePath: instancePath + "/arc/tolerance/inch", schemaPath: "#/properties/arc/properties/tolerance/properties/inch/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err472];
                    } else {
                      vErrors.push(err472);
                    }
                    errors++;
                  }
                } else {
                  const err473 = { instancePath: instancePath + "/arc/tolerance/inch", schemaPath: "#/properties/arc/properties/tolerance/properties/inch/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                  if (vErrors === null) {
                    vErrors = [err473];
                  } else {
                    vErrors.push(err473);
                  }
                  errors++;
                }
              }
              if (data184.relative !== void 0) {
                let data187 = data184.relative;
                if (typeof data187 == "number" && isFinite(data187)) {
                  if (data187 > 0.01 || isNaN(data187)) {
                    const err474 = { instancePath: instancePath + "/arc/tolerance/relative", schemaPath: "#/properties/arc/properties/tolerance/properties/relative/maximum", keyword: "maximum", params: { comparison: "<=", limit: 0.01 }, message: "must be <= 0.01" };
                    if (vErrors === null) {
                      vErrors = [err474];
                    } else {
                      vErrors.push(err474);
                    }
                    errors++;
                  }
                  if (data187 < 0 || isNaN(data187)) {
                    const err475 = { instancePath: instancePath + "/arc/tolerance/relative", schemaPath: "#/properties/arc/properties/tolerance/properties/relative/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err475];
                    } else {
                      vErrors.push(err475);
                    }
                    errors++;
                  }
                } else {
                  const err476 = { instancePath: instancePath + "/arc/tolerance/relative", schemaPath: "#/properties/arc/properties/tolerance/properties/relative/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                  if (vErrors === null) {
                    vErrors = [err476];
                  } else {
                    vErrors.push(err476);
                  }
                  errors++;
                }
              }
            } else {
              const err477 = { instancePath: instancePath + "/arc/tolerance", schemaPath: "#/properties/arc/properties/tolerance/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err477];
              } else {
                vErrors.push(err477);
              }
              errors++;
            }
          }
          if (data167["chord-tolerance"] !== void 0) {
            let data188 = data167["chord-tolerance"];
            const _errs548 = errors;
            let valid139 = false;
            const _errs549 = errors;
            if (typeof data188 == "number" && isFinite(data188)) {
              if (data188 > 1e6 || isNaN(data188)) {
                const err478 = { instancePath: instancePath + "/arc/chord-tolerance", schemaPath: "#/$defs/length/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                if (vErrors === null) {
                  vErrors = [err478];
                } else {
                  vErrors.push(err478);
                }
                errors++;
              }
              if (data188 < -1e6 || isNaN(data188)) {
                const err479 = { instancePath: instancePath + "/arc/chord-tolerance", schemaPath: "#/$defs/length/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: -1e6 }, message: "must be >= -1000000" };
                if (vErrors === null) {
                  vErrors = [err479];
                } else {
                  vErrors.push(err479);
                }
                errors++;
              }
            } else {
              const err480 = { instancePath: instancePath + "/arc/chord-tolerance", schemaPath: "#/$defs/length/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
              if (vErrors === null) {
                vErrors = [err480];
              } else {
                vErrors.push(err480);
              }
              errors++;
            }
            var _valid13 = _errs549 === errors;
            valid139 = valid139 || _valid13;
            const _errs551 = errors;
            if (typeof data188 === "string") {
              if (!pattern25.test(data188)) {
                const err481 = { instancePath: instancePath + "/arc/chord-tolerance", schemaPath: "#/$defs/length/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }, message: 'must match pattern "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$"' };
                if (vErrors === null) {
                  vErrors = [err481];
                } else {
                  vErrors.push(err481);
                }
                errors++;
              }
            } else {
              const err482 = { instancePath: instancePath + "/arc/chord-tolerance", schemaPath: "#/$defs/length/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err482];
              } else {
                vErrors.push(err482);
              }
              errors++;
            }
            var _valid13 = _errs551 === errors;
            valid139 = valid139 || _valid13;
            if (!valid139) {
              const err483 = { instancePath: instancePath + "/arc/chord-tolerance", schemaPath: "#/$defs/length/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err483];
              } else {
                vErrors.push(err483);
              }
              errors++;
            } else {
              errors = _errs548;
              if (vErrors !== null) {
                if (_errs548) {
                  vErrors.length = _errs548;
                } else {
                  vErrors = null;
                }
              }
            }
          }
        } else {
          const err484 = { instancePath: instancePath + "/arc", schemaPath: "#/properties/arc/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err484];
          } else {
            vErrors.push(err484);
          }
          errors++;
        }
      }
      if (data.path !== void 0) {
        let data189 = data.path;
        if (data189 && typeof data189 == "object" && !Array.isArray(data189)) {
          for (const key27 in data189) {
            if (!(key27 === "exact" || key27 === "stop" || key27 === "blend" || key27 === "tolerance-word" || key27 === "look-ahead")) {
              const err485 = { instancePath: instancePath + "/path", schemaPath: "#/properties/path/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key27 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err485];
              } else {
                vErrors.push(err485);
              }
              errors++;
            }
          }
          if (data189.exact !== void 0) {
            let data190 = data189.exact;
            if (typeof data190 === "string") {
              if (!pattern26.test(data190)) {
                const err486 = { instancePath: instancePath + "/path/exact", schemaPath: "#/$defs/codeWithWordOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$"' };
                if (vErrors === null) {
                  vErrors = [err486];
                } else {
                  vErrors.push(err486);
                }
                errors++;
              }
            } else {
              const err487 = { instancePath: instancePath + "/path/exact", schemaPath: "#/$defs/codeWithWordOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err487];
              } else {
                vErrors.push(err487);
              }
              errors++;
            }
          }
          if (data189.stop !== void 0) {
            let data191 = data189.stop;
            if (typeof data191 === "string") {
              if (!pattern26.test(data191)) {
                const err488 = { instancePath: instancePath + "/path/stop", schemaPath: "#/$defs/codeWithWordOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$"' };
                if (vErrors === null) {
                  vErrors = [err488];
                } else {
                  vErrors.push(err488);
                }
                errors++;
              }
            } else {
              const err489 = { instancePath: instancePath + "/path/stop", schemaPath: "#/$defs/codeWithWordOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err489];
              } else {
                vErrors.push(err489);
              }
              errors++;
            }
          }
          if (data189.blend !== void 0) {
            let data192 = data189.blend;
            if (typeof data192 === "string") {
              if (!pattern26.test(data192)) {
                const err490 = { instancePath: instancePath + "/path/blend", schemaPath: "#/$defs/codeWithWordOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$"' };
                if (vErrors === null) {
                  vErrors = [err490];
                } else {
                  vErrors.push(err490);
                }
                errors++;
              }
            } else {
              const err491 = { instancePath: instancePath + "/path/blend", schemaPath: "#/$defs/codeWithWordOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err491];
              } else {
                vErrors.push(err491);
              }
              errors++;
            }
          }
          if (data189["tolerance-word"] !== void 0) {
            let data193 = data189["tolerance-word"];
            if (typeof data193 === "string") {
              if (!pattern22.test(data193)) {
                const err492 = { instancePath: instancePath + "/path/tolerance-word", schemaPath: "#/$defs/letterOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[A-Z])$" }, message: 'must match pattern "^(none|[A-Z])$"' };
                if (vErrors === null) {
                  vErrors = [err492];
                } else {
                  vErrors.push(err492);
                }
                errors++;
              }
            } else {
              const err493 = { instancePath: instancePath + "/path/tolerance-word", schemaPath: "#/$defs/letterOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err493];
              } else {
                vErrors.push(err493);
              }
              errors++;
            }
          }
          if (data189["look-ahead"] !== void 0) {
            let data194 = data189["look-ahead"];
            const _errs569 = errors;
            let valid145 = false;
            const _errs570 = errors;
            if (typeof data194 !== "string") {
              const err494 = { instancePath: instancePath + "/path/look-ahead", schemaPath: "#/properties/path/properties/look-ahead/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err494];
              } else {
                vErrors.push(err494);
              }
              errors++;
            }
            if ("none" !== data194) {
              const err495 = { instancePath: instancePath + "/path/look-ahead", schemaPath: "#/properties/path/properties/look-ahead/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
              if (vErrors === null) {
                vErrors = [err495];
              } else {
                vErrors.push(err495);
              }
              errors++;
            }
            var _valid14 = _errs570 === errors;
            valid145 = valid145 || _valid14;
            const _errs572 = errors;
            if (data194 && typeof data194 == "object" && !Array.isArray(data194)) {
              for (const key28 in data194) {
                if (!(key28 === "on" || key28 === "off")) {
                  const err496 = { instancePath: instancePath + "/path/look-ahead", schemaPath: "#/properties/path/properties/look-ahead/anyOf/1/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key28 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err496];
                  } else {
                    vErrors.push(err496);
                  }
                  errors++;
                }
              }
              if (data194.on !== void 0) {
                let data195 = data194.on;
                if (typeof data195 === "string") {
                  if (!pattern26.test(data195)) {
                    const err497 = { instancePath: instancePath + "/path/look-ahead/on", schemaPath: "#/$defs/codeWithWordOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$"' };
                    if (vErrors === null) {
                      vErrors = [err497];
                    } else {
                      vErrors.push(err497);
                    }
                    errors++;
                  }
                } else {
                  const err498 = { instancePath: instancePath + "/path/look-ahead/on", schemaPath: "#/$defs/codeWithWordOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err498];
                  } else {
                    vErrors.push(err498);
                  }
                  errors++;
                }
              }
              if (data194.off !== void 0) {
                let data196 = data194.off;
                if (typeof data196 === "string") {
                  if (!pattern26.test(data196)) {
                    const err499 = { instancePath: instancePath + "/path/look-ahead/off", schemaPath: "#/$defs/codeWithWordOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$"' };
                    if (vErrors === null) {
                      vErrors = [err499];
                    } else {
                      vErrors.push(err499);
                    }
                    errors++;
                  }
                } else {
                  const err500 = { instancePath: instancePath + "/path/look-ahead/off", schemaPath: "#/$defs/codeWithWordOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err500];
                  } else {
                    vErrors.push(err500);
                  }
                  errors++;
                }
              }
            } else {
              const err501 = { instancePath: instancePath + "/path/look-ahead", schemaPath: "#/properties/path/properties/look-ahead/anyOf/1/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err501];
              } else {
                vErrors.push(err501);
              }
              errors++;
            }
            var _valid14 = _errs572 === errors;
            valid145 = valid145 || _valid14;
            if (!valid145) {
              const err502 = { instancePath: instancePath + "/path/look-ahead", schemaPath: "#/properties/path/properties/look-ahead/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err502];
              } else {
                vErrors.push(err502);
              }
              errors++;
            } else {
              errors = _errs569;
              if (vErrors !== null) {
                if (_errs569) {
                  vErrors.length = _errs569;
                } else {
                  vErrors = null;
                }
              }
            }
          }
        } else {
          const err503 = { instancePath: instancePath + "/path", schemaPath: "#/properties/path/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err503];
          } else {
            vErrors.push(err503);
          }
          errors++;
        }
      }
      if (data.feed !== void 0) {
        let data197 = data.feed;
        if (data197 && typeof data197 == "object" && !Array.isArray(data197)) {
          for (const key29 in data197) {
            if (!(key29 === "per-minute" || key29 === "per-revolution" || key29 === "inverse-time" || key29 === "inverse-time-unit")) {
              const err504 = { instancePath: instancePath + "/feed", schemaPath: "#/properties/feed/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key29 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err504];
              } else {
                vErrors.push(err504);
              }
              errors++;
            }
          }
          if (data197["per-minute"] !== void 0) {
            let data198 = data197["per-minute"];
            if (typeof data198 === "string") {
              if (!pattern7.test(data198)) {
                const err505 = { instancePath: instancePath + "/feed/per-minute", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err505];
                } else {
                  vErrors.push(err505);
                }
                errors++;
              }
            } else {
              const err506 = { instancePath: instancePath + "/feed/per-minute", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err506];
              } else {
                vErrors.push(err506);
              }
              errors++;
            }
          }
          if (data197["per-revolution"] !== void 0) {
            let data199 = data197["per-revolution"];
            if (typeof data199 === "string") {
              if (!pattern7.test(data199)) {
                const err507 = { instancePath: instancePath + "/feed/per-revolution", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err507];
                } else {
                  vErrors.push(err507);
                }
                errors++;
              }
            } else {
              const err508 = { instancePath: instancePath + "/feed/per-revolution", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err508];
              } else {
                vErrors.push(err508);
              }
              errors++;
            }
          }
          if (data197["inverse-time"] !== void 0) {
            let data200 = data197["inverse-time"];
            if (typeof data200 === "string") {
              if (!pattern7.test(data200)) {
                const err509 = { instancePath: instancePath + "/feed/inverse-time", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err509];
                } else {
                  vErrors.push(err509);
                }
                errors++;
              }
            } else {
              const err510 = { instancePath: instancePath + "/feed/inverse-time", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err510];
              } else {
                vErrors.push(err510);
              }
              errors++;
            }
          }
          if (data197["inverse-time-unit"] !== void 0) {
            let data201 = data197["inverse-time-unit"];
            if (typeof data201 !== "string") {
              const err511 = { instancePath: instancePath + "/feed/inverse-time-unit", schemaPath: "#/properties/feed/properties/inverse-time-unit/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err511];
              } else {
                vErrors.push(err511);
              }
              errors++;
            }
            if (!(data201 === "per-minute" || data201 === "per-second")) {
              const err512 = { instancePath: instancePath + "/feed/inverse-time-unit", schemaPath: "#/properties/feed/properties/inverse-time-unit/enum", keyword: "enum", params: { allowedValues: schema31.properties.feed.properties["inverse-time-unit"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err512];
              } else {
                vErrors.push(err512);
              }
              errors++;
            }
          }
        } else {
          const err513 = { instancePath: instancePath + "/feed", schemaPath: "#/properties/feed/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err513];
          } else {
            vErrors.push(err513);
          }
          errors++;
        }
      }
      if (data.dwell !== void 0) {
        let data202 = data.dwell;
        if (data202 && typeof data202 == "object" && !Array.isArray(data202)) {
          for (const key30 in data202) {
            if (!(key30 === "code" || key30 === "word" || key30 === "unit" || key30 === "blocks")) {
              const err514 = { instancePath: instancePath + "/dwell", schemaPath: "#/properties/dwell/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key30 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err514];
              } else {
                vErrors.push(err514);
              }
              errors++;
            }
          }
          if (data202.code !== void 0) {
            let data203 = data202.code;
            if (typeof data203 === "string") {
              if (!pattern7.test(data203)) {
                const err515 = { instancePath: instancePath + "/dwell/code", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err515];
                } else {
                  vErrors.push(err515);
                }
                errors++;
              }
            } else {
              const err516 = { instancePath: instancePath + "/dwell/code", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err516];
              } else {
                vErrors.push(err516);
              }
              errors++;
            }
          }
          if (data202.word !== void 0) {
            let data204 = data202.word;
            if (typeof data204 === "string") {
              if (!pattern6.test(data204)) {
                const err517 = { instancePath: instancePath + "/dwell/word", schemaPath: "#/$defs/letter/pattern", keyword: "pattern", params: { pattern: "^[A-Z]$" }, message: 'must match pattern "^[A-Z]$"' };
                if (vErrors === null) {
                  vErrors = [err517];
                } else {
                  vErrors.push(err517);
                }
                errors++;
              }
            } else {
              const err518 = { instancePath: instancePath + "/dwell/word", schemaPath: "#/$defs/letter/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err518];
              } else {
                vErrors.push(err518);
              }
              errors++;
            }
          }
          if (data202.unit !== void 0) {
            let data205 = data202.unit;
            if (typeof data205 !== "string") {
              const err519 = { instancePath: instancePath + "/dwell/unit", schemaPath: "#/properties/dwell/properties/unit/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err519];
              } else {
                vErrors.push(err519);
              }
              errors++;
            }
            if (!(data205 === "s" || data205 === "ms")) {
              const err520 = { instancePath: instancePath + "/dwell/unit", schemaPath: "#/properties/dwell/properties/unit/enum", keyword: "enum", params: { allowedValues: schema31.properties.dwell.properties.unit.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err520];
              } else {
                vErrors.push(err520);
              }
              errors++;
            }
          }
          if (data202.blocks !== void 0) {
            let data206 = data202.blocks;
            if (typeof data206 !== "string") {
              const err521 = { instancePath: instancePath + "/dwell/blocks", schemaPath: "#/properties/dwell/properties/blocks/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err521];
              } else {
                vErrors.push(err521);
              }
              errors++;
            }
            if (!(data206 === "apart" || data206 === "with-start")) {
              const err522 = { instancePath: instancePath + "/dwell/blocks", schemaPath: "#/properties/dwell/properties/blocks/enum", keyword: "enum", params: { allowedValues: schema31.properties.dwell.properties.blocks.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err522];
              } else {
                vErrors.push(err522);
              }
              errors++;
            }
          }
        } else {
          const err523 = { instancePath: instancePath + "/dwell", schemaPath: "#/properties/dwell/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err523];
          } else {
            vErrors.push(err523);
          }
          errors++;
        }
      }
      if (data.compensation !== void 0) {
        let data207 = data.compensation;
        const _errs609 = errors;
        let valid156 = false;
        const _errs610 = errors;
        if (typeof data207 !== "string") {
          const err524 = { instancePath: instancePath + "/compensation", schemaPath: "#/properties/compensation/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
          if (vErrors === null) {
            vErrors = [err524];
          } else {
            vErrors.push(err524);
          }
          errors++;
        }
        if ("none" !== data207) {
          const err525 = { instancePath: instancePath + "/compensation", schemaPath: "#/properties/compensation/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
          if (vErrors === null) {
            vErrors = [err525];
          } else {
            vErrors.push(err525);
          }
          errors++;
        }
        var _valid15 = _errs610 === errors;
        valid156 = valid156 || _valid15;
        const _errs612 = errors;
        if (data207 && typeof data207 == "object" && !Array.isArray(data207)) {
          for (const key31 in data207) {
            if (!(key31 === "off" || key31 === "left" || key31 === "right" || key31 === "word" || key31 === "corner-feed")) {
              const err526 = { instancePath: instancePath + "/compensation", schemaPath: "#/properties/compensation/anyOf/1/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key31 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err526];
              } else {
                vErrors.push(err526);
              }
              errors++;
            }
          }
          if (data207.off !== void 0) {
            let data208 = data207.off;
            if (typeof data208 === "string") {
              if (!pattern7.test(data208)) {
                const err527 = { instancePath: instancePath + "/compensation/off", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err527];
                } else {
                  vErrors.push(err527);
                }
                errors++;
              }
            } else {
              const err528 = { instancePath: instancePath + "/compensation/off", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err528];
              } else {
                vErrors.push(err528);
              }
              errors++;
            }
          }
          if (data207.left !== void 0) {
            let data209 = data207.left;
            if (typeof data209 === "string") {
              if (!pattern7.test(data209)) {
                const err529 = { instancePath: instancePath + "/compensation/left", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err529];
                } else {
                  vErrors.push(err529);
                }
                errors++;
              }
            } else {
              const err530 = { instancePath: instancePath + "/compensation/left", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err530];
              } else {
                vErrors.push(err530);
              }
              errors++;
            }
          }
          if (data207.right !== void 0) {
            let data210 = data207.right;
            if (typeof data210 === "string") {
              if (!pattern7.test(data210)) {
                const err531 = { instancePath: instancePath + "/compensation/right", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err531];
                } else {
                  vErrors.push(err531);
                }
                errors++;
              }
            } else {
              const err532 = { instancePath: instancePath + "/compensation/right", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err532];
              } else {
                vErrors.push(err532);
              }
              errors++;
            }
          }
          if (data207.word !== void 0) {
            let data211 = data207.word;
            if (typeof data211 === "string") {
              if (!pattern22.test(data211)) {
                const err533 = { instancePath: instancePath + "/compensation/word", schemaPath: "#/$defs/letterOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[A-Z])$" }, message: 'must match pattern "^(none|[A-Z])$"' };
                if (vErrors === null) {
                  vErrors = [err533];
                } else {
                  vErrors.push(err533);
                }
                errors++;
              }
            } else {
              const err534 = { instancePath: instancePath + "/compensation/word", schemaPath: "#/$defs/letterOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err534];
              } else {
                vErrors.push(err534);
              }
              errors++;
            }
          }
          if (data207["corner-feed"] !== void 0) {
            let data212 = data207["corner-feed"];
            const _errs628 = errors;
            let valid162 = false;
            const _errs629 = errors;
            if (typeof data212 !== "string") {
              const err535 = { instancePath: instancePath + "/compensation/corner-feed", schemaPath: "#/properties/compensation/anyOf/1/properties/corner-feed/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err535];
              } else {
                vErrors.push(err535);
              }
              errors++;
            }
            if ("none" !== data212) {
              const err536 = { instancePath: instancePath + "/compensation/corner-feed", schemaPath: "#/properties/compensation/anyOf/1/properties/corner-feed/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
              if (vErrors === null) {
                vErrors = [err536];
              } else {
                vErrors.push(err536);
              }
              errors++;
            }
            var _valid16 = _errs629 === errors;
            valid162 = valid162 || _valid16;
            const _errs631 = errors;
            if (data212 && typeof data212 == "object" && !Array.isArray(data212)) {
              for (const key32 in data212) {
                if (!(key32 === "on" || key32 === "off")) {
                  const err537 = { instancePath: instancePath + "/compensation/corner-feed", schemaPath: "#/properties/compensation/anyOf/1/properties/corner-feed/anyOf/1/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key32 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err537];
                  } else {
                    vErrors.push(err537);
                  }
                  errors++;
                }
              }
              if (data212.on !== void 0) {
                let data213 = data212.on;
                if (typeof data213 === "string") {
                  if (!pattern26.test(data213)) {
                    const err538 = { instancePath: instancePath + "/compensation/corner-feed/on", schemaPath: "#/$defs/codeWithWordOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$"' };
                    if (vErrors === null) {
                      vErrors = [err538];
                    } else {
                      vErrors.push(err538);
                    }
                    errors++;
                  }
                } else {
                  const err539 = { instancePath: instancePath + "/compensation/corner-feed/on", schemaPath: "#/$defs/codeWithWordOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err539];
                  } else {
                    vErrors.push(err539);
                  }
                  errors++;
                }
              }
              if (data212.off !== void 0) {
                let data214 = data212.off;
                if (typeof data214 === "string") {
                  if (!pattern26.test(data214)) {
                    const err540 = { instancePath: instancePath + "/compensation/corner-feed/off", schemaPath: "#/$defs/codeWithWordOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$"' };
                    if (vErrors === null) {
                      vErrors = [err540];
                    } else {
                      vErrors.push(err540);
                    }
                    errors++;
                  }
                } else {
                  const err541 = { instancePath: instancePath + "/compensation/corner-feed/off", schemaPath: "#/$defs/codeWithWordOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err541];
                  } else {
                    vErrors.push(err541);
                  }
                  errors++;
                }
              }
            } else {
              const err542 = { instancePath: instancePath + "/compensation/corner-feed", schemaPath: "#/properties/compensation/anyOf/1/properties/corner-feed/anyOf/1/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err542];
              } else {
                vErrors.push(err542);
              }
              errors++;
            }
            var _valid16 = _errs631 === errors;
            valid162 = valid162 || _valid16;
            if (!valid162) {
              const err543 = { instancePath: instancePath + "/compensation/corner-feed", schemaPath: "#/properties/compensation/anyOf/1/properties/corner-feed/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err543];
              } else {
                vErrors.push(err543);
              }
              errors++;
            } else {
              errors = _errs628;
              if (vErrors !== null) {
                if (_errs628) {
                  vErrors.length = _errs628;
                } else {
                  vErrors = null;
                }
              }
            }
          }
        } else {
          const err544 = { instancePath: instancePath + "/compensation", schemaPath: "#/properties/compensation/anyOf/1/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err544];
          } else {
            vErrors.push(err544);
          }
          errors++;
        }
        var _valid15 = _errs612 === errors;
        valid156 = valid156 || _valid15;
        if (!valid156) {
          const err545 = { instancePath: instancePath + "/compensation", schemaPath: "#/properties/compensation/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
          if (vErrors === null) {
            vErrors = [err545];
          } else {
            vErrors.push(err545);
          }
          errors++;
        } else {
          errors = _errs609;
          if (vErrors !== null) {
            if (_errs609) {
              vErrors.length = _errs609;
            } else {
              vErrors = null;
            }
          }
        }
      }
      if (data["length-offset"] !== void 0) {
        let data215 = data["length-offset"];
        const _errs641 = errors;
        let valid166 = false;
        const _errs642 = errors;
        if (typeof data215 !== "string") {
          const err546 = { instancePath: instancePath + "/length-offset", schemaPath: "#/properties/length-offset/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
          if (vErrors === null) {
            vErrors = [err546];
          } else {
            vErrors.push(err546);
          }
          errors++;
        }
        if ("none" !== data215) {
          const err547 = { instancePath: instancePath + "/length-offset", schemaPath: "#/properties/length-offset/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
          if (vErrors === null) {
            vErrors = [err547];
          } else {
            vErrors.push(err547);
          }
          errors++;
        }
        var _valid17 = _errs642 === errors;
        valid166 = valid166 || _valid17;
        const _errs644 = errors;
        if (data215 && typeof data215 == "object" && !Array.isArray(data215)) {
          for (const key33 in data215) {
            if (!(key33 === "on" || key33 === "off" || key33 === "word")) {
              const err548 = { instancePath: instancePath + "/length-offset", schemaPath: "#/properties/length-offset/anyOf/1/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key33 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err548];
              } else {
                vErrors.push(err548);
              }
              errors++;
            }
          }
          if (data215.on !== void 0) {
            let data216 = data215.on;
            if (typeof data216 === "string") {
              if (!pattern7.test(data216)) {
                const err549 = { instancePath: instancePath + "/length-offset/on", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err549];
                } else {
                  vErrors.push(err549);
                }
                errors++;
              }
            } else {
              const err550 = { instancePath: instancePath + "/length-offset/on", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err550];
              } else {
                vErrors.push(err550);
              }
              errors++;
            }
          }
          if (data215.off !== void 0) {
            let data217 = data215.off;
            if (typeof data217 === "string") {
              if (!pattern7.test(data217)) {
                const err551 = { instancePath: instancePath + "/length-offset/off", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err551];
                } else {
                  vErrors.push(err551);
                }
                errors++;
              }
            } else {
              const err552 = { instancePath: instancePath + "/length-offset/off", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err552];
              } else {
                vErrors.push(err552);
              }
              errors++;
            }
          }
          if (data215.word !== void 0) {
            let data218 = data215.word;
            if (typeof data218 === "string") {
              if (!pattern6.test(data218)) {
                const err553 = { instancePath: instancePath + "/length-offset/word", schemaPath: "#/$defs/letter/pattern", keyword: "pattern", params: { pattern: "^[A-Z]$" }, message: 'must match pattern "^[A-Z]$"' };
                if (vErrors === null) {
                  vErrors = [err553];
                } else {
                  vErrors.push(err553);
                }
                errors++;
              }
            } else {
              const err554 = { instancePath: instancePath + "/length-offset/word", schemaPath: "#/$defs/letter/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err554];
              } else {
                vErrors.push(err554);
              }
              errors++;
            }
          }
        } else {
          const err555 = { instancePath: instancePath + "/length-offset", schemaPath: "#/properties/length-offset/anyOf/1/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err555];
          } else {
            vErrors.push(err555);
          }
          errors++;
        }
        var _valid17 = _errs644 === errors;
        valid166 = valid166 || _valid17;
        if (!valid166) {
          const err556 = { instancePath: instancePath + "/length-offset", schemaPath: "#/properties/length-offset/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
          if (vErrors === null) {
            vErrors = [err556];
          } else {
            vErrors.push(err556);
          }
          errors++;
        } else {
          errors = _errs641;
          if (vErrors !== null) {
            if (_errs641) {
              vErrors.length = _errs641;
            } else {
              vErrors = null;
            }
          }
        }
      }
      if (data["work-offset"] !== void 0) {
        let data219 = data["work-offset"];
        const _errs657 = errors;
        let valid171 = false;
        const _errs658 = errors;
        if (typeof data219 !== "string") {
          const err557 = { instancePath: instancePath + "/work-offset", schemaPath: "#/properties/work-offset/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
          if (vErrors === null) {
            vErrors = [err557];
          } else {
            vErrors.push(err557);
          }
          errors++;
        }
        if ("none" !== data219) {
          const err558 = { instancePath: instancePath + "/work-offset", schemaPath: "#/properties/work-offset/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
          if (vErrors === null) {
            vErrors = [err558];
          } else {
            vErrors.push(err558);
          }
          errors++;
        }
        var _valid18 = _errs658 === errors;
        valid171 = valid171 || _valid18;
        const _errs660 = errors;
        if (Array.isArray(data219)) {
          if (data219.length > 9) {
            const err559 = { instancePath: instancePath + "/work-offset", schemaPath: "#/properties/work-offset/anyOf/1/maxItems", keyword: "maxItems", params: { limit: 9 }, message: "must NOT have more than 9 items" };
            if (vErrors === null) {
              vErrors = [err559];
            } else {
              vErrors.push(err559);
            }
            errors++;
          }
          if (data219.length < 1) {
            const err560 = { instancePath: instancePath + "/work-offset", schemaPath: "#/properties/work-offset/anyOf/1/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items" };
            if (vErrors === null) {
              vErrors = [err560];
            } else {
              vErrors.push(err560);
            }
            errors++;
          }
          const len3 = data219.length;
          for (let i5 = 0; i5 < len3; i5++) {
            let data220 = data219[i5];
            if (typeof data220 === "string") {
              if (!pattern26.test(data220)) {
                const err561 = { instancePath: instancePath + "/work-offset/" + i5, schemaPath: "#/$defs/codeWithWordOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$"' };
                if (vErrors === null) {
                  vErrors = [err561];
                } else {
                  vErrors.push(err561);
                }
                errors++;
              }
            } else {
              const err562 = { instancePath: instancePath + "/work-offset/" + i5, schemaPath: "#/$defs/codeWithWordOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err562];
              } else {
                vErrors.push(err562);
              }
              errors++;
            }
          }
        } else {
          const err563 = { instancePath: instancePath + "/work-offset", schemaPath: "#/properties/work-offset/anyOf/1/type", keyword: "type", params: { type: "array" }, message: "must be array" };
          if (vErrors === null) {
            vErrors = [err563];
          } else {
            vErrors.push(err563);
          }
          errors++;
        }
        var _valid18 = _errs660 === errors;
        valid171 = valid171 || _valid18;
        if (!valid171) {
          const err564 = { instancePath: instancePath + "/work-offset", schemaPath: "#/properties/work-offset/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
          if (vErrors === null) {
            vErrors = [err564];
          } else {
            vErrors.push(err564);
          }
          errors++;
        } else {
          errors = _errs657;
          if (vErrors !== null) {
            if (_errs657) {
              vErrors.length = _errs657;
            } else {
              vErrors = null;
            }
          }
        }
      }
      if (data["machine-move"] !== void 0) {
        let data221 = data["machine-move"];
        if (typeof data221 === "string") {
          if (!pattern26.test(data221)) {
            const err565 = { instancePath: instancePath + "/machine-move", schemaPath: "#/$defs/codeWithWordOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$"' };
            if (vErrors === null) {
              vErrors = [err565];
            } else {
              vErrors.push(err565);
            }
            errors++;
          }
        } else {
          const err566 = { instancePath: instancePath + "/machine-move", schemaPath: "#/$defs/codeWithWordOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
          if (vErrors === null) {
            vErrors = [err566];
          } else {
            vErrors.push(err566);
          }
          errors++;
        }
      }
      if (data["reference-return"] !== void 0) {
        let data222 = data["reference-return"];
        if (typeof data222 === "string") {
          if (!pattern26.test(data222)) {
            const err567 = { instancePath: instancePath + "/reference-return", schemaPath: "#/$defs/codeWithWordOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$"' };
            if (vErrors === null) {
              vErrors = [err567];
            } else {
              vErrors.push(err567);
            }
            errors++;
          }
        } else {
          const err568 = { instancePath: instancePath + "/reference-return", schemaPath: "#/$defs/codeWithWordOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
          if (vErrors === null) {
            vErrors = [err568];
          } else {
            vErrors.push(err568);
          }
          errors++;
        }
      }
      if (data.cancel !== void 0) {
        let data223 = data.cancel;
        if (data223 && typeof data223 == "object" && !Array.isArray(data223)) {
          for (const key34 in data223) {
            if (!(key34 === "cycles" || key34 === "local-shift" || key34 === "rotation" || key34 === "scale" || key34 === "overrides")) {
              const err569 = { instancePath: instancePath + "/cancel", schemaPath: "#/properties/cancel/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key34 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err569];
              } else {
                vErrors.push(err569);
              }
              errors++;
            }
          }
          if (data223.cycles !== void 0) {
            let data224 = data223.cycles;
            if (typeof data224 === "string") {
              if (!pattern7.test(data224)) {
                const err570 = { instancePath: instancePath + "/cancel/cycles", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err570];
                } else {
                  vErrors.push(err570);
                }
                errors++;
              }
            } else {
              const err571 = { instancePath: instancePath + "/cancel/cycles", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err571];
              } else {
                vErrors.push(err571);
              }
              errors++;
            }
          }
          if (data223["local-shift"] !== void 0) {
            let data225 = data223["local-shift"];
            if (typeof data225 === "string") {
              if (!pattern7.test(data225)) {
                const err572 = { instancePath: instancePath + "/cancel/local-shift", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err572];
                } else {
                  vErrors.push(err572);
                }
                errors++;
              }
            } else {
              const err573 = { instancePath: instancePath + "/cancel/local-shift", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err573];
              } else {
                vErrors.push(err573);
              }
              errors++;
            }
          }
          if (data223.rotation !== void 0) {
            let data226 = data223.rotation;
            if (typeof data226 === "string") {
              if (!pattern7.test(data226)) {
                const err574 = { instancePath: instancePath + "/cancel/rotation", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err574];
                } else {
                  vErrors.push(err574);
                }
                errors++;
              }
            } else {
              const err575 = { instancePath: instancePath + "/cancel/rotation", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err575];
              } else {
                vErrors.push(err575);
              }
              errors++;
            }
          }
          if (data223.scale !== void 0) {
            let data227 = data223.scale;
            if (typeof data227 === "string") {
              if (!pattern7.test(data227)) {
                const err576 = { instancePath: instancePath + "/cancel/scale", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err576];
                } else {
                  vErrors.push(err576);
                }
                errors++;
              }
            } else {
              const err577 = { instancePath: instancePath + "/cancel/scale", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err577];
              } else {
                vErrors.push(err577);
              }
              errors++;
            }
          }
          if (data223.overrides !== void 0) {
            let data228 = data223.overrides;
            if (typeof data228 === "string") {
              if (!pattern7.test(data228)) {
                const err578 = { instancePath: instancePath + "/cancel/overrides", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err578];
                } else {
                  vErrors.push(err578);
                }
                errors++;
              }
            } else {
              const err579 = { instancePath: instancePath + "/cancel/overrides", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err579];
              } else {
                vErrors.push(err579);
              }
              errors++;
            }
          }
        } else {
          const err580 = { instancePath: instancePath + "/cancel", schemaPath: "#/properties/cancel/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err580];
          } else {
            vErrors.push(err580);
          }
          errors++;
        }
      }
      if (data.cycles !== void 0) {
        let data229 = data.cycles;
        const _errs690 = errors;
        let valid183 = false;
        const _errs691 = errors;
        if (typeof data229 !== "string") {
          const err581 = { instancePath: instancePath + "/cycles", schemaPath: "#/properties/cycles/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
          if (vErrors === null) {
            vErrors = [err581];
          } else {
            vErrors.push(err581);
          }
          errors++;
        }
        if ("none" !== data229) {
          const err582 = { instancePath: instancePath + "/cycles", schemaPath: "#/properties/cycles/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
          if (vErrors === null) {
            vErrors = [err582];
          } else {
            vErrors.push(err582);
          }
          errors++;
        }
        var _valid19 = _errs691 === errors;
        valid183 = valid183 || _valid19;
        const _errs693 = errors;
        if (data229 && typeof data229 == "object" && !Array.isArray(data229)) {
          for (const key35 in data229) {
            if (!func1.call(schema31.properties.cycles.anyOf[1].properties, key35)) {
              const err583 = { instancePath: instancePath + "/cycles", schemaPath: "#/properties/cycles/anyOf/1/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key35 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err583];
              } else {
                vErrors.push(err583);
              }
              errors++;
            }
          }
          if (data229.drill !== void 0) {
            let data230 = data229.drill;
            if (typeof data230 === "string") {
              if (!pattern7.test(data230)) {
                const err584 = { instancePath: instancePath + "/cycles/drill", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err584];
                } else {
                  vErrors.push(err584);
                }
                errors++;
              }
            } else {
              const err585 = { instancePath: instancePath + "/cycles/drill", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err585];
              } else {
                vErrors.push(err585);
              }
              errors++;
            }
          }
          if (data229.dwell !== void 0) {
            let data231 = data229.dwell;
            if (typeof data231 === "string") {
              if (!pattern7.test(data231)) {
                const err586 = { instancePath: instancePath + "/cycles/dwell", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err586];
                } else {
                  vErrors.push(err586);
                }
                errors++;
              }
            } else {
              const err587 = { instancePath: instancePath + "/cycles/dwell", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err587];
              } else {
                vErrors.push(err587);
              }
              errors++;
            }
          }
          if (data229.peck !== void 0) {
            let data232 = data229.peck;
            if (typeof data232 === "string") {
              if (!pattern7.test(data232)) {
                const err588 = { instancePath: instancePath + "/cycles/peck", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err588];
                } else {
                  vErrors.push(err588);
                }
                errors++;
              }
            } else {
              const err589 = { instancePath: instancePath + "/cycles/peck", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err589];
              } else {
                vErrors.push(err589);
              }
              errors++;
            }
          }
          if (data229["chip-break"] !== void 0) {
            let data233 = data229["chip-break"];
            if (typeof data233 === "string") {
              if (!pattern7.test(data233)) {
                const err590 = { instancePath: instancePath + "/cycles/chip-break", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err590];
                } else {
                  vErrors.push(err590);
                }
                errors++;
              }
            } else {
              const err591 = { instancePath: instancePath + "/cycles/chip-break", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err591];
              } else {
                vErrors.push(err591);
              }
              errors++;
            }
          }
          if (data229.tap !== void 0) {
            let data234 = data229.tap;
            if (typeof data234 === "string") {
              if (!pattern7.test(data234)) {
                const err592 = { instancePath: instancePath + "/cycles/tap", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err592];
                } else {
                  vErrors.push(err592);
                }
                errors++;
              }
            } else {
              const err593 = { instancePath: instancePath + "/cycles/tap", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err593];
              } else {
                vErrors.push(err593);
              }
              errors++;
            }
          }
          if (data229["tap-left"] !== void 0) {
            let data235 = data229["tap-left"];
            if (typeof data235 === "string") {
              if (!pattern7.test(data235)) {
                const err594 = { instancePath: instancePath + "/cycles/tap-left", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err594];
                } else {
                  vErrors.push(err594);
                }
                errors++;
              }
            } else {
              const err595 = { instancePath: instancePath + "/cycles/tap-left", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err595];
              } else {
                vErrors.push(err595);
              }
              errors++;
            }
          }
          if (data229.ream !== void 0) {
            let data236 = data229.ream;
            if (typeof data236 === "string") {
              if (!pattern7.test(data236)) {
                const err596 = { instancePath: instancePath + "/cycles/ream", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err596];
                } else {
                  vErrors.push(err596);
                }
                errors++;
              }
            } else {
              const err597 = { instancePath: instancePath + "/cycles/ream", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err597];
              } else {
                vErrors.push(err597);
              }
              errors++;
            }
          }
          if (data229["bore-dwell"] !== void 0) {
            let data237 = data229["bore-dwell"];
            if (typeof data237 === "string") {
              if (!pattern7.test(data237)) {
                const err598 = { instancePath: instancePath + "/cycles/bore-dwell", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err598];
                } else {
                  vErrors.push(err598);
                }
                errors++;
              }
            } else {
              const err599 = { instancePath: instancePath + "/cycles/bore-dwell", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err599];
              } else {
                vErrors.push(err599);
              }
              errors++;
            }
          }
          if (data229["bore-stop"] !== void 0) {
            let data238 = data229["bore-stop"];
            if (typeof data238 === "string") {
              if (!pattern7.test(data238)) {
                const err600 = { instancePath: instancePath + "/cycles/bore-stop", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err600];
                } else {
                  vErrors.push(err600);
                }
                errors++;
              }
            } else {
              const err601 = { instancePath: instancePath + "/cycles/bore-stop", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err601];
              } else {
                vErrors.push(err601);
              }
              errors++;
            }
          }
          if (data229["bore-manual"] !== void 0) {
            let data239 = data229["bore-manual"];
            if (typeof data239 === "string") {
              if (!pattern7.test(data239)) {
                const err602 = { instancePath: instancePath + "/cycles/bore-manual", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err602];
                } else {
                  vErrors.push(err602);
                }
                errors++;
              }
            } else {
              const err603 = { instancePath: instancePath + "/cycles/bore-manual", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err603];
              } else {
                vErrors.push(err603);
              }
              errors++;
            }
          }
          if (data229.return !== void 0) {
            let data240 = data229.return;
            if (data240 && typeof data240 == "object" && !Array.isArray(data240)) {
              for (const key36 in data240) {
                if (!(key36 === "initial" || key36 === "retract" || key36 === "without")) {
                  const err604 = { instancePath: instancePath + "/cycles/return", schemaPath: "#/properties/cycles/anyOf/1/properties/return/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key36 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err604];
                  } else {
                    vErrors.push(err604);
                  }
                  errors++;
                }
              }
              if (data240.initial !== void 0) {
                let data241 = data240.initial;
                if (typeof data241 === "string") {
                  if (!pattern7.test(data241)) {
                    const err605 = { instancePath: instancePath + "/cycles/return/initial", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                    if (vErrors === null) {
                      vErrors = [err605];
                    } else {
                      vErrors.push(err605);
                    }
                    errors++;
                  }
                } else {
                  const err606 = { instancePath: instancePath + "/cycles/return/initial", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err606];
                  } else {
                    vErrors.push(err606);
                  }
                  errors++;
                }
              }
              if (data240.retract !== void 0) {
                let data242 = data240.retract;
                if (typeof data242 === "string") {
                  if (!pattern7.test(data242)) {
                    const err607 = { instancePath: instancePath + "/cycles/return/retract", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                    if (vErrors === null) {
                      vErrors = [err607];
                    } else {
                      vErrors.push(err607);
                    }
                    errors++;
                  }
                } else {
                  const err608 = { instancePath: instancePath + "/cycles/return/retract", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err608];
                  } else {
                    vErrors.push(err608);
                  }
                  errors++;
                }
              }
              if (data240.without !== void 0) {
                let data243 = data240.without;
                if (typeof data243 !== "string") {
                  const err609 = { instancePath: instancePath + "/cycles/return/without", schemaPath: "#/properties/cycles/anyOf/1/properties/return/properties/without/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err609];
                  } else {
                    vErrors.push(err609);
                  }
                  errors++;
                }
                if (!(data243 === "retract" || data243 === "initial" || data243 === "none")) {
                  const err610 = { instancePath: instancePath + "/cycles/return/without", schemaPath: "#/properties/cycles/anyOf/1/properties/return/properties/without/enum", keyword: "enum", params: { allowedValues: schema31.properties.cycles.anyOf[1].properties.return.properties.without.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err610];
                  } else {
                    vErrors.push(err610);
                  }
                  errors++;
                }
              }
            } else {
              const err611 = { instancePath: instancePath + "/cycles/return", schemaPath: "#/properties/cycles/anyOf/1/properties/return/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err611];
              } else {
                vErrors.push(err611);
              }
              errors++;
            }
          }
          if (data229["back-off"] !== void 0) {
            let data244 = data229["back-off"];
            if (data244 && typeof data244 == "object" && !Array.isArray(data244)) {
              for (const key37 in data244) {
                if (!(key37 === "peck" || key37 === "chip-break")) {
                  const err612 = { instancePath: instancePath + "/cycles/back-off", schemaPath: "#/properties/cycles/anyOf/1/properties/back-off/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key37 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err612];
                  } else {
                    vErrors.push(err612);
                  }
                  errors++;
                }
              }
              if (data244.peck !== void 0) {
                let data245 = data244.peck;
                const _errs742 = errors;
                let valid200 = false;
                const _errs743 = errors;
                if (typeof data245 == "number" && isFinite(data245)) {
                  if (data245 > 1e6 || isNaN(data245)) {
                    const err613 = { instancePath: instancePath + "/cycles/back-off/peck", schemaPath: "#/$defs/length/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                    if (vErrors === null) {
                      vErrors = [err613];
                    } else {
                      vErrors.push(err613);
                    }
                    errors++;
                  }
                  if (data245 < -1e6 || isNaN(data245)) {
                    const err614 = { instancePath: instancePath + "/cycles/back-off/peck", schemaPath: "#/$defs/length/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: -1e6 }, message: "must be >= -1000000" };
                    if (vErrors === null) {
                      vErrors = [err614];
                    } else {
                      vErrors.push(err614);
                    }
                    errors++;
                  }
                } else {
                  const err615 = { instancePath: instancePath + "/cycles/back-off/peck", schemaPath: "#/$defs/length/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                  if (vErrors === null) {
                    vErrors = [err615];
                  } else {
                    vErrors.push(err615);
                  }
                  errors++;
                }
                var _valid20 = _errs743 === errors;
                valid200 = valid200 || _valid20;
                const _errs745 = errors;
                if (typeof data245 === "string") {
                  if (!pattern25.test(data245)) {
                    const err616 = { instancePath: instancePath + "/cycles/back-off/peck", schemaPath: "#/$defs/length/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }, message: 'must match pattern "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$"' };
                    if (vErrors === null) {
                      vErrors = [err616];
                    } else {
                      vErrors.push(err616);
                    }
                    errors++;
                  }
                } else {
                  const err617 = { instancePath: instancePath + "/cycles/back-off/peck", schemaPath: "#/$defs/length/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err617];
                  } else {
                    vErrors.push(err617);
                  }
                  errors++;
                }
                var _valid20 = _errs745 === errors;
                valid200 = valid200 || _valid20;
                if (!valid200) {
                  const err618 = { instancePath: instancePath + "/cycles/back-off/peck", schemaPath: "#/$defs/length/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err618];
                  } else {
                    vErrors.push(err618);
                  }
                  errors++;
                } else {
                  errors = _errs742;
                  if (vErrors !== null) {
                    if (_errs742) {
                      vErrors.length = _errs742;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
              if (data244["chip-break"] !== void 0) {
                let data246 = data244["chip-break"];
                const _errs749 = errors;
                let valid202 = false;
                const _errs750 = errors;
                if (typeof data246 == "number" && isFinite(data246)) {
                  if (data246 > 1e6 || isNaN(data246)) {
                    const err619 = { instancePath: instancePath + "/cycles/back-off/chip-break", schemaPath: "#/$defs/length/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                    if (vErrors === null) {
                      vErrors = [err619];
                    } else {
                      vErrors.push(err619);
                    }
                    errors++;
                  }
                  if (data246 < -1e6 || isNaN(data246)) {
                    const err620 = { instancePath: instancePath + "/cycles/back-off/chip-break", schemaPath: "#/$defs/length/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: -1e6 }, message: "must be >= -1000000" };
                    if (vErrors === null) {
                      vErrors = [err620];
                    } else {
                      vErrors.push(err620);
                    }
                    errors++;
                  }
                } else {
                  const err621 = { instancePath: instancePath + "/cycles/back-off/chip-break", schemaPath: "#/$defs/length/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                  if (vErrors === null) {
                    vErrors = [err621];
                  } else {
                    vErrors.push(err621);
                  }
                  errors++;
                }
                var _valid21 = _errs750 === errors;
                valid202 = valid202 || _valid21;
                const _errs752 = errors;
                if (typeof data246 === "string") {
                  if (!pattern25.test(data246)) {
                    const err622 = { instancePath: instancePath + "/cycles/back-off/chip-break", schemaPath: "#/$defs/length/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }, message: 'must match pattern "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$"' };
                    if (vErrors === null) {
                      vErrors = [err622];
                    } else {
                      vErrors.push(err622);
                    }
                    errors++;
                  }
                } else {
                  const err623 = { instancePath: instancePath + "/cycles/back-off/chip-break", schemaPath: "#/$defs/length/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err623];
                  } else {
                    vErrors.push(err623);
                  }
                  errors++;
                }
                var _valid21 = _errs752 === errors;
                valid202 = valid202 || _valid21;
                if (!valid202) {
                  const err624 = { instancePath: instancePath + "/cycles/back-off/chip-break", schemaPath: "#/$defs/length/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err624];
                  } else {
                    vErrors.push(err624);
                  }
                  errors++;
                } else {
                  errors = _errs749;
                  if (vErrors !== null) {
                    if (_errs749) {
                      vErrors.length = _errs749;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
            } else {
              const err625 = { instancePath: instancePath + "/cycles/back-off", schemaPath: "#/properties/cycles/anyOf/1/properties/back-off/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err625];
              } else {
                vErrors.push(err625);
              }
              errors++;
            }
          }
          if (data229.levels !== void 0) {
            let data247 = data229.levels;
            if (typeof data247 !== "string") {
              const err626 = { instancePath: instancePath + "/cycles/levels", schemaPath: "#/properties/cycles/anyOf/1/properties/levels/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err626];
              } else {
                vErrors.push(err626);
              }
              errors++;
            }
            if (!(data247 === "absolute" || data247 === "relative")) {
              const err627 = { instancePath: instancePath + "/cycles/levels", schemaPath: "#/properties/cycles/anyOf/1/properties/levels/enum", keyword: "enum", params: { allowedValues: schema31.properties.cycles.anyOf[1].properties.levels.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err627];
              } else {
                vErrors.push(err627);
              }
              errors++;
            }
          }
          if (data229.words !== void 0) {
            let data248 = data229.words;
            if (data248 && typeof data248 == "object" && !Array.isArray(data248)) {
              for (const key38 in data248) {
                if (!(key38 === "retract" || key38 === "peck" || key38 === "dwell" || key38 === "dwell-unit")) {
                  const err628 = { instancePath: instancePath + "/cycles/words", schemaPath: "#/properties/cycles/anyOf/1/properties/words/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key38 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err628];
                  } else {
                    vErrors.push(err628);
                  }
                  errors++;
                }
              }
              if (data248.retract !== void 0) {
                let data249 = data248.retract;
                if (typeof data249 === "string") {
                  if (!pattern6.test(data249)) {
                    const err629 = { instancePath: instancePath + "/cycles/words/retract", schemaPath: "#/$defs/letter/pattern", keyword: "pattern", params: { pattern: "^[A-Z]$" }, message: 'must match pattern "^[A-Z]$"' };
                    if (vErrors === null) {
                      vErrors = [err629];
                    } else {
                      vErrors.push(err629);
                    }
                    errors++;
                  }
                } else {
                  const err630 = { instancePath: instancePath + "/cycles/words/retract", schemaPath: "#/$defs/letter/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err630];
                  } else {
                    vErrors.push(err630);
                  }
                  errors++;
                }
              }
              if (data248.peck !== void 0) {
                let data250 = data248.peck;
                if (typeof data250 === "string") {
                  if (!pattern6.test(data250)) {
                    const err631 = { instancePath: instancePath + "/cycles/words/peck", schemaPath: "#/$defs/letter/pattern", keyword: "pattern", params: { pattern: "^[A-Z]$" }, message: 'must match pattern "^[A-Z]$"' };
                    if (vErrors === null) {
                      vErrors = [err631];
                    } else {
                      vErrors.push(err631);
                    }
                    errors++;
                  }
                } else {
                  const err632 = { instancePath: instancePath + "/cycles/words/peck", schemaPath: "#/$defs/letter/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err632];
                  } else {
                    vErrors.push(err632);
                  }
                  errors++;
                }
              }
              if (data248.dwell !== void 0) {
                let data251 = data248.dwell;
                if (typeof data251 === "string") {
                  if (!pattern6.test(data251)) {
                    const err633 = { instancePath: instancePath + "/cycles/words/dwell", schemaPath: "#/$defs/letter/pattern", keyword: "pattern", params: { pattern: "^[A-Z]$" }, message: 'must match pattern "^[A-Z]$"' };
                    if (vErrors === null) {
                      vErrors = [err633];
                    } else {
                      vErrors.push(err633);
                    }
                    errors++;
                  }
                } else {
                  const err634 = { instancePath: instancePath + "/cycles/words/dwell", schemaPath: "#/$defs/letter/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err634];
                  } else {
                    vErrors.push(err634);
                  }
                  errors++;
                }
              }
              if (data248["dwell-unit"] !== void 0) {
                let data252 = data248["dwell-unit"];
                if (typeof data252 !== "string") {
                  const err635 = { instancePath: instancePath + "/cycles/words/dwell-unit", schemaPath: "#/properties/cycles/anyOf/1/properties/words/properties/dwell-unit/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err635];
                  } else {
                    vErrors.push(err635);
                  }
                  errors++;
                }
                if (!(data252 === "s" || data252 === "ms")) {
                  const err636 = { instancePath: instancePath + "/cycles/words/dwell-unit", schemaPath: "#/properties/cycles/anyOf/1/properties/words/properties/dwell-unit/enum", keyword: "enum", params: { allowedValues: schema31.properties.cycles.anyOf[1].properties.words.properties["dwell-unit"].enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err636];
                  } else {
                    vErrors.push(err636);
                  }
                  errors++;
                }
              }
            } else {
              const err637 = { instancePath: instancePath + "/cycles/words", schemaPath: "#/properties/cycles/anyOf/1/properties/words/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err637];
              } else {
                vErrors.push(err637);
              }
              errors++;
            }
          }
          if (data229.repeat !== void 0) {
            let data253 = data229.repeat;
            if (typeof data253 !== "string") {
              const err638 = { instancePath: instancePath + "/cycles/repeat", schemaPath: "#/properties/cycles/anyOf/1/properties/repeat/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err638];
              } else {
                vErrors.push(err638);
              }
              errors++;
            }
            if (!(data253 === "positions" || data253 === "all")) {
              const err639 = { instancePath: instancePath + "/cycles/repeat", schemaPath: "#/properties/cycles/anyOf/1/properties/repeat/enum", keyword: "enum", params: { allowedValues: schema31.properties.cycles.anyOf[1].properties.repeat.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err639];
              } else {
                vErrors.push(err639);
              }
              errors++;
            }
          }
          if (data229["ended-by"] !== void 0) {
            let data254 = data229["ended-by"];
            if (typeof data254 !== "string") {
              const err640 = { instancePath: instancePath + "/cycles/ended-by", schemaPath: "#/properties/cycles/anyOf/1/properties/ended-by/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err640];
              } else {
                vErrors.push(err640);
              }
              errors++;
            }
            if (!(data254 === "any-motion" || data254 === "cancel-code")) {
              const err641 = { instancePath: instancePath + "/cycles/ended-by", schemaPath: "#/properties/cycles/anyOf/1/properties/ended-by/enum", keyword: "enum", params: { allowedValues: schema31.properties.cycles.anyOf[1].properties["ended-by"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err641];
              } else {
                vErrors.push(err641);
              }
              errors++;
            }
          }
        } else {
          const err642 = { instancePath: instancePath + "/cycles", schemaPath: "#/properties/cycles/anyOf/1/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err642];
          } else {
            vErrors.push(err642);
          }
          errors++;
        }
        var _valid19 = _errs693 === errors;
        valid183 = valid183 || _valid19;
        if (!valid183) {
          const err643 = { instancePath: instancePath + "/cycles", schemaPath: "#/properties/cycles/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
          if (vErrors === null) {
            vErrors = [err643];
          } else {
            vErrors.push(err643);
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
      if (data.spindle !== void 0) {
        let data255 = data.spindle;
        if (data255 && typeof data255 == "object" && !Array.isArray(data255)) {
          for (const key39 in data255) {
            if (!(key39 === "cw" || key39 === "ccw" || key39 === "stop" || key39 === "orient" || key39 === "order" || key39 === "blocks")) {
              const err644 = { instancePath: instancePath + "/spindle", schemaPath: "#/properties/spindle/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key39 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err644];
              } else {
                vErrors.push(err644);
              }
              errors++;
            }
          }
          if (data255.cw !== void 0) {
            let data256 = data255.cw;
            if (typeof data256 === "string") {
              if (!pattern7.test(data256)) {
                const err645 = { instancePath: instancePath + "/spindle/cw", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err645];
                } else {
                  vErrors.push(err645);
                }
                errors++;
              }
            } else {
              const err646 = { instancePath: instancePath + "/spindle/cw", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err646];
              } else {
                vErrors.push(err646);
              }
              errors++;
            }
          }
          if (data255.ccw !== void 0) {
            let data257 = data255.ccw;
            if (typeof data257 === "string") {
              if (!pattern7.test(data257)) {
                const err647 = { instancePath: instancePath + "/spindle/ccw", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err647];
                } else {
                  vErrors.push(err647);
                }
                errors++;
              }
            } else {
              const err648 = { instancePath: instancePath + "/spindle/ccw", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err648];
              } else {
                vErrors.push(err648);
              }
              errors++;
            }
          }
          if (data255.stop !== void 0) {
            let data258 = data255.stop;
            if (typeof data258 === "string") {
              if (!pattern7.test(data258)) {
                const err649 = { instancePath: instancePath + "/spindle/stop", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err649];
                } else {
                  vErrors.push(err649);
                }
                errors++;
              }
            } else {
              const err650 = { instancePath: instancePath + "/spindle/stop", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err650];
              } else {
                vErrors.push(err650);
              }
              errors++;
            }
          }
          if (data255.orient !== void 0) {
            let data259 = data255.orient;
            if (typeof data259 === "string") {
              if (!pattern26.test(data259)) {
                const err651 = { instancePath: instancePath + "/spindle/orient", schemaPath: "#/$defs/codeWithWordOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?( [DEHIJKLPQRS]\\d{1,4})?)$"' };
                if (vErrors === null) {
                  vErrors = [err651];
                } else {
                  vErrors.push(err651);
                }
                errors++;
              }
            } else {
              const err652 = { instancePath: instancePath + "/spindle/orient", schemaPath: "#/$defs/codeWithWordOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err652];
              } else {
                vErrors.push(err652);
              }
              errors++;
            }
          }
          if (data255.order !== void 0) {
            let data260 = data255.order;
            if (typeof data260 !== "string") {
              const err653 = { instancePath: instancePath + "/spindle/order", schemaPath: "#/properties/spindle/properties/order/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err653];
              } else {
                vErrors.push(err653);
              }
              errors++;
            }
            if (!(data260 === "speed-first" || data260 === "start-first")) {
              const err654 = { instancePath: instancePath + "/spindle/order", schemaPath: "#/properties/spindle/properties/order/enum", keyword: "enum", params: { allowedValues: schema31.properties.spindle.properties.order.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err654];
              } else {
                vErrors.push(err654);
              }
              errors++;
            }
          }
          if (data255.blocks !== void 0) {
            let data261 = data255.blocks;
            if (typeof data261 !== "string") {
              const err655 = { instancePath: instancePath + "/spindle/blocks", schemaPath: "#/properties/spindle/properties/blocks/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err655];
              } else {
                vErrors.push(err655);
              }
              errors++;
            }
            if (!(data261 === "together" || data261 === "apart")) {
              const err656 = { instancePath: instancePath + "/spindle/blocks", schemaPath: "#/properties/spindle/properties/blocks/enum", keyword: "enum", params: { allowedValues: schema31.properties.spindle.properties.blocks.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err656];
              } else {
                vErrors.push(err656);
              }
              errors++;
            }
          }
        } else {
          const err657 = { instancePath: instancePath + "/spindle", schemaPath: "#/properties/spindle/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err657];
          } else {
            vErrors.push(err657);
          }
          errors++;
        }
      }
      if (data.coolant !== void 0) {
        let data262 = data.coolant;
        if (data262 && typeof data262 == "object" && !Array.isArray(data262)) {
          for (const key40 in data262) {
            if (!(key40 === "mist" || key40 === "flood" || key40 === "air" || key40 === "through-tool" || key40 === "off")) {
              const err658 = { instancePath: instancePath + "/coolant", schemaPath: "#/properties/coolant/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key40 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err658];
              } else {
                vErrors.push(err658);
              }
              errors++;
            }
          }
          if (data262.mist !== void 0) {
            let data263 = data262.mist;
            if (typeof data263 === "string") {
              if (!pattern7.test(data263)) {
                const err659 = { instancePath: instancePath + "/coolant/mist", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err659];
                } else {
                  vErrors.push(err659);
                }
                errors++;
              }
            } else {
              const err660 = { instancePath: instancePath + "/coolant/mist", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err660];
              } else {
                vErrors.push(err660);
              }
              errors++;
            }
          }
          if (data262.flood !== void 0) {
            let data264 = data262.flood;
            if (typeof data264 === "string") {
              if (!pattern7.test(data264)) {
                const err661 = { instancePath: instancePath + "/coolant/flood", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err661];
                } else {
                  vErrors.push(err661);
                }
                errors++;
              }
            } else {
              const err662 = { instancePath: instancePath + "/coolant/flood", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err662];
              } else {
                vErrors.push(err662);
              }
              errors++;
            }
          }
          if (data262.air !== void 0) {
            let data265 = data262.air;
            if (typeof data265 === "string") {
              if (!pattern7.test(data265)) {
                const err663 = { instancePath: instancePath + "/coolant/air", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err663];
                } else {
                  vErrors.push(err663);
                }
                errors++;
              }
            } else {
              const err664 = { instancePath: instancePath + "/coolant/air", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err664];
              } else {
                vErrors.push(err664);
              }
              errors++;
            }
          }
          if (data262["through-tool"] !== void 0) {
            let data266 = data262["through-tool"];
            if (typeof data266 === "string") {
              if (!pattern7.test(data266)) {
                const err665 = { instancePath: instancePath + "/coolant/through-tool", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err665];
                } else {
                  vErrors.push(err665);
                }
                errors++;
              }
            } else {
              const err666 = { instancePath: instancePath + "/coolant/through-tool", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err666];
              } else {
                vErrors.push(err666);
              }
              errors++;
            }
          }
          if (data262.off !== void 0) {
            let data267 = data262.off;
            if (typeof data267 === "string") {
              if (!pattern7.test(data267)) {
                const err667 = { instancePath: instancePath + "/coolant/off", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err667];
                } else {
                  vErrors.push(err667);
                }
                errors++;
              }
            } else {
              const err668 = { instancePath: instancePath + "/coolant/off", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err668];
              } else {
                vErrors.push(err668);
              }
              errors++;
            }
          }
        } else {
          const err669 = { instancePath: instancePath + "/coolant", schemaPath: "#/properties/coolant/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err669];
          } else {
            vErrors.push(err669);
          }
          errors++;
        }
      }
      if (data.tools !== void 0) {
        let data268 = data.tools;
        if (data268 && typeof data268 == "object" && !Array.isArray(data268)) {
          for (const key41 in data268) {
            if (!(key41 === "change" || key41 === "blocks" || key41 === "order" || key41 === "preselect")) {
              const err670 = { instancePath: instancePath + "/tools", schemaPath: "#/properties/tools/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key41 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err670];
              } else {
                vErrors.push(err670);
              }
              errors++;
            }
          }
          if (data268.change !== void 0) {
            let data269 = data268.change;
            if (typeof data269 === "string") {
              if (!pattern7.test(data269)) {
                const err671 = { instancePath: instancePath + "/tools/change", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err671];
                } else {
                  vErrors.push(err671);
                }
                errors++;
              }
            } else {
              const err672 = { instancePath: instancePath + "/tools/change", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err672];
              } else {
                vErrors.push(err672);
              }
              errors++;
            }
          }
          if (data268.blocks !== void 0) {
            let data270 = data268.blocks;
            if (typeof data270 !== "string") {
              const err673 = { instancePath: instancePath + "/tools/blocks", schemaPath: "#/properties/tools/properties/blocks/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err673];
              } else {
                vErrors.push(err673);
              }
              errors++;
            }
            if (!(data270 === "together" || data270 === "apart")) {
              const err674 = { instancePath: instancePath + "/tools/blocks", schemaPath: "#/properties/tools/properties/blocks/enum", keyword: "enum", params: { allowedValues: schema31.properties.tools.properties.blocks.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err674];
              } else {
                vErrors.push(err674);
              }
              errors++;
            }
          }
          if (data268.order !== void 0) {
            let data271 = data268.order;
            if (typeof data271 !== "string") {
              const err675 = { instancePath: instancePath + "/tools/order", schemaPath: "#/properties/tools/properties/order/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err675];
              } else {
                vErrors.push(err675);
              }
              errors++;
            }
            if (!(data271 === "select-first" || data271 === "change-first")) {
              const err676 = { instancePath: instancePath + "/tools/order", schemaPath: "#/properties/tools/properties/order/enum", keyword: "enum", params: { allowedValues: schema31.properties.tools.properties.order.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err676];
              } else {
                vErrors.push(err676);
              }
              errors++;
            }
          }
          if (data268.preselect !== void 0) {
            let data272 = data268.preselect;
            if (typeof data272 !== "string") {
              const err677 = { instancePath: instancePath + "/tools/preselect", schemaPath: "#/$defs/yesNo/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err677];
              } else {
                vErrors.push(err677);
              }
              errors++;
            }
            if (!(data272 === "yes" || data272 === "no")) {
              const err678 = { instancePath: instancePath + "/tools/preselect", schemaPath: "#/$defs/yesNo/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err678];
              } else {
                vErrors.push(err678);
              }
              errors++;
            }
          }
        } else {
          const err679 = { instancePath: instancePath + "/tools", schemaPath: "#/properties/tools/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err679];
          } else {
            vErrors.push(err679);
          }
          errors++;
        }
      }
      if (data.stops !== void 0) {
        let data273 = data.stops;
        if (data273 && typeof data273 == "object" && !Array.isArray(data273)) {
          for (const key42 in data273) {
            if (!(key42 === "stop" || key42 === "optional" || key42 === "end")) {
              const err680 = { instancePath: instancePath + "/stops", schemaPath: "#/properties/stops/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key42 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err680];
              } else {
                vErrors.push(err680);
              }
              errors++;
            }
          }
          if (data273.stop !== void 0) {
            let data274 = data273.stop;
            if (typeof data274 === "string") {
              if (!pattern7.test(data274)) {
                const err681 = { instancePath: instancePath + "/stops/stop", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err681];
                } else {
                  vErrors.push(err681);
                }
                errors++;
              }
            } else {
              const err682 = { instancePath: instancePath + "/stops/stop", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err682];
              } else {
                vErrors.push(err682);
              }
              errors++;
            }
          }
          if (data273.optional !== void 0) {
            let data275 = data273.optional;
            if (typeof data275 === "string") {
              if (!pattern7.test(data275)) {
                const err683 = { instancePath: instancePath + "/stops/optional", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err683];
                } else {
                  vErrors.push(err683);
                }
                errors++;
              }
            } else {
              const err684 = { instancePath: instancePath + "/stops/optional", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err684];
              } else {
                vErrors.push(err684);
              }
              errors++;
            }
          }
          if (data273.end !== void 0) {
            let data276 = data273.end;
            if (typeof data276 === "string") {
              if (!pattern7.test(data276)) {
                const err685 = { instancePath: instancePath + "/stops/end", schemaPath: "#/$defs/codeOrNone/pattern", keyword: "pattern", params: { pattern: "^(none|[GM]\\d{1,3}(\\.\\d)?)$" }, message: 'must match pattern "^(none|[GM]\\d{1,3}(\\.\\d)?)$"' };
                if (vErrors === null) {
                  vErrors = [err685];
                } else {
                  vErrors.push(err685);
                }
                errors++;
              }
            } else {
              const err686 = { instancePath: instancePath + "/stops/end", schemaPath: "#/$defs/codeOrNone/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err686];
              } else {
                vErrors.push(err686);
              }
              errors++;
            }
          }
        } else {
          const err687 = { instancePath: instancePath + "/stops", schemaPath: "#/properties/stops/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err687];
          } else {
            vErrors.push(err687);
          }
          errors++;
        }
      }
      if (data.wait !== void 0) {
        let data277 = data.wait;
        if (data277 && typeof data277 == "object" && !Array.isArray(data277)) {
          for (const key43 in data277) {
            if (!(key43 === "on" || key43 === "off" || key43 === "timeout-unit")) {
              const err688 = { instancePath: instancePath + "/wait", schemaPath: "#/properties/wait/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key43 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err688];
              } else {
                vErrors.push(err688);
              }
              errors++;
            }
          }
          if (data277.on !== void 0) {
            let data278 = data277.on;
            if (!(typeof data278 == "number" && (!(data278 % 1) && !isNaN(data278)) && isFinite(data278))) {
              const err689 = { instancePath: instancePath + "/wait/on", schemaPath: "#/properties/wait/properties/on/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
              if (vErrors === null) {
                vErrors = [err689];
              } else {
                vErrors.push(err689);
              }
              errors++;
            }
            if (typeof data278 == "number" && isFinite(data278)) {
              if (data278 > 9999 || isNaN(data278)) {
                const err690 = { instancePath: instancePath + "/wait/on", schemaPath: "#/properties/wait/properties/on/maximum", keyword: "maximum", params: { comparison: "<=", limit: 9999 }, message: "must be <= 9999" };
                if (vErrors === null) {
                  vErrors = [err690];
                } else {
                  vErrors.push(err690);
                }
                errors++;
              }
              if (data278 < 0 || isNaN(data278)) {
                const err691 = { instancePath: instancePath + "/wait/on", schemaPath: "#/properties/wait/properties/on/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                if (vErrors === null) {
                  vErrors = [err691];
                } else {
                  vErrors.push(err691);
                }
                errors++;
              }
            }
          }
          if (data277.off !== void 0) {
            let data279 = data277.off;
            if (!(typeof data279 == "number" && (!(data279 % 1) && !isNaN(data279)) && isFinite(data279))) {
              const err692 = { instancePath: instancePath + "/wait/off", schemaPath: "#/properties/wait/properties/off/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
              if (vErrors === null) {
                vErrors = [err692];
              } else {
                vErrors.push(err692);
              }
              errors++;
            }
            if (typeof data279 == "number" && isFinite(data279)) {
              if (data279 > 9999 || isNaN(data279)) {
                const err693 = { instancePath: instancePath + "/wait/off", schemaPath: "#/properties/wait/properties/off/maximum", keyword: "maximum", params: { comparison: "<=", limit: 9999 }, message: "must be <= 9999" };
                if (vErrors === null) {
                  vErrors = [err693];
                } else {
                  vErrors.push(err693);
                }
                errors++;
              }
              if (data279 < 0 || isNaN(data279)) {
                const err694 = { instancePath: instancePath + "/wait/off", schemaPath: "#/properties/wait/properties/off/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                if (vErrors === null) {
                  vErrors = [err694];
                } else {
                  vErrors.push(err694);
                }
                errors++;
              }
            }
          }
          if (data277["timeout-unit"] !== void 0) {
            let data280 = data277["timeout-unit"];
            if (typeof data280 !== "string") {
              const err695 = { instancePath: instancePath + "/wait/timeout-unit", schemaPath: "#/properties/wait/properties/timeout-unit/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err695];
              } else {
                vErrors.push(err695);
              }
              errors++;
            }
            if (!(data280 === "s" || data280 === "ms")) {
              const err696 = { instancePath: instancePath + "/wait/timeout-unit", schemaPath: "#/properties/wait/properties/timeout-unit/enum", keyword: "enum", params: { allowedValues: schema31.properties.wait.properties["timeout-unit"].enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err696];
              } else {
                vErrors.push(err696);
              }
              errors++;
            }
          }
        } else {
          const err697 = { instancePath: instancePath + "/wait", schemaPath: "#/properties/wait/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err697];
          } else {
            vErrors.push(err697);
          }
          errors++;
        }
      }
      if (data.codes !== void 0) {
        let data281 = data.codes;
        if (data281 && typeof data281 == "object" && !Array.isArray(data281)) {
          for (const key44 in data281) {
            if (!pattern84.test(key44)) {
              const err698 = { instancePath: instancePath + "/codes", schemaPath: "#/properties/codes/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key44 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err698];
              } else {
                vErrors.push(err698);
              }
              errors++;
            }
          }
          for (const key45 in data281) {
            if (pattern84.test(key45)) {
              let data282 = data281[key45];
              if (data282 && typeof data282 == "object" && !Array.isArray(data282)) {
                for (const key46 in data282) {
                  if (!(key46 === "does" || key46 === "position" || key46 === "spindle" || key46 === "coolant" || key46 === "length-offset")) {
                    const err699 = { instancePath: instancePath + "/codes/" + key45.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/codes/patternProperties/%5E%5BGM%5D%5Cd%7B1%2C3%7D%24/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key46 }, message: "must NOT have additional properties" };
                    if (vErrors === null) {
                      vErrors = [err699];
                    } else {
                      vErrors.push(err699);
                    }
                    errors++;
                  }
                }
                if (data282.does !== void 0) {
                  let data283 = data282.does;
                  if (typeof data283 === "string") {
                    if (func2(data283) > 120) {
                      const err700 = { instancePath: instancePath + "/codes/" + key45.replace(/~/g, "~0").replace(/\//g, "~1") + "/does", schemaPath: "#/properties/codes/patternProperties/%5E%5BGM%5D%5Cd%7B1%2C3%7D%24/properties/does/maxLength", keyword: "maxLength", params: { limit: 120 }, message: "must NOT have more than 120 characters" };
                      if (vErrors === null) {
                        vErrors = [err700];
                      } else {
                        vErrors.push(err700);
                      }
                      errors++;
                    }
                    if (func2(data283) < 1) {
                      const err701 = { instancePath: instancePath + "/codes/" + key45.replace(/~/g, "~0").replace(/\//g, "~1") + "/does", schemaPath: "#/properties/codes/patternProperties/%5E%5BGM%5D%5Cd%7B1%2C3%7D%24/properties/does/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                      if (vErrors === null) {
                        vErrors = [err701];
                      } else {
                        vErrors.push(err701);
                      }
                      errors++;
                    }
                  } else {
                    const err702 = { instancePath: instancePath + "/codes/" + key45.replace(/~/g, "~0").replace(/\//g, "~1") + "/does", schemaPath: "#/properties/codes/patternProperties/%5E%5BGM%5D%5Cd%7B1%2C3%7D%24/properties/does/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                    if (vErrors === null) {
                      vErrors = [err702];
                    } else {
                      vErrors.push(err702);
                    }
                    errors++;
                  }
                }
                if (data282.position !== void 0) {
                  let data284 = data282.position;
                  if (typeof data284 !== "string") {
                    const err703 = { instancePath: instancePath + "/codes/" + key45.replace(/~/g, "~0").replace(/\//g, "~1") + "/position", schemaPath: "#/properties/codes/patternProperties/%5E%5BGM%5D%5Cd%7B1%2C3%7D%24/properties/position/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                    if (vErrors === null) {
                      vErrors = [err703];
                    } else {
                      vErrors.push(err703);
                    }
                    errors++;
                  }
                  if (!(data284 === "unchanged" || data284 === "unknown" || data284 === "swap-height")) {
                    const err704 = { instancePath: instancePath + "/codes/" + key45.replace(/~/g, "~0").replace(/\//g, "~1") + "/position", schemaPath: "#/properties/codes/patternProperties/%5E%5BGM%5D%5Cd%7B1%2C3%7D%24/properties/position/enum", keyword: "enum", params: { allowedValues: schema31.properties.codes.patternProperties["^[GM]\\d{1,3}$"].properties.position.enum }, message: "must be equal to one of the allowed values" };
                    if (vErrors === null) {
                      vErrors = [err704];
                    } else {
                      vErrors.push(err704);
                    }
                    errors++;
                  }
                }
                if (data282.spindle !== void 0) {
                  let data285 = data282.spindle;
                  if (typeof data285 !== "string") {
                    const err705 = { instancePath: instancePath + "/codes/" + key45.replace(/~/g, "~0").replace(/\//g, "~1") + "/spindle", schemaPath: "#/properties/codes/patternProperties/%5E%5BGM%5D%5Cd%7B1%2C3%7D%24/properties/spindle/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                    if (vErrors === null) {
                      vErrors = [err705];
                    } else {
                      vErrors.push(err705);
                    }
                    errors++;
                  }
                  if (!(data285 === "unchanged" || data285 === "stopped")) {
                    const err706 = { instancePath: instancePath + "/codes/" + key45.replace(/~/g, "~0").replace(/\//g, "~1") + "/spindle", schemaPath: "#/properties/codes/patternProperties/%5E%5BGM%5D%5Cd%7B1%2C3%7D%24/properties/spindle/enum", keyword: "enum", params: { allowedValues: schema31.properties.codes.patternProperties["^[GM]\\d{1,3}$"].properties.spindle.enum }, message: "must be equal to one of the allowed values" };
                    if (vErrors === null) {
                      vErrors = [err706];
                    } else {
                      vErrors.push(err706);
                    }
                    errors++;
                  }
                }
                if (data282.coolant !== void 0) {
                  let data286 = data282.coolant;
                  if (typeof data286 !== "string") {
                    const err707 = { instancePath: instancePath + "/codes/" + key45.replace(/~/g, "~0").replace(/\//g, "~1") + "/coolant", schemaPath: "#/properties/codes/patternProperties/%5E%5BGM%5D%5Cd%7B1%2C3%7D%24/properties/coolant/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                    if (vErrors === null) {
                      vErrors = [err707];
                    } else {
                      vErrors.push(err707);
                    }
                    errors++;
                  }
                  if (!(data286 === "unchanged" || data286 === "off")) {
                    const err708 = { instancePath: instancePath + "/codes/" + key45.replace(/~/g, "~0").replace(/\//g, "~1") + "/coolant", schemaPath: "#/properties/codes/patternProperties/%5E%5BGM%5D%5Cd%7B1%2C3%7D%24/properties/coolant/enum", keyword: "enum", params: { allowedValues: schema31.properties.codes.patternProperties["^[GM]\\d{1,3}$"].properties.coolant.enum }, message: "must be equal to one of the allowed values" };
                    if (vErrors === null) {
                      vErrors = [err708];
                    } else {
                      vErrors.push(err708);
                    }
                    errors++;
                  }
                }
                if (data282["length-offset"] !== void 0) {
                  let data287 = data282["length-offset"];
                  if (typeof data287 !== "string") {
                    const err709 = { instancePath: instancePath + "/codes/" + key45.replace(/~/g, "~0").replace(/\//g, "~1") + "/length-offset", schemaPath: "#/properties/codes/patternProperties/%5E%5BGM%5D%5Cd%7B1%2C3%7D%24/properties/length-offset/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                    if (vErrors === null) {
                      vErrors = [err709];
                    } else {
                      vErrors.push(err709);
                    }
                    errors++;
                  }
                  if (!(data287 === "unchanged" || data287 === "active" || data287 === "cancelled")) {
                    const err710 = { instancePath: instancePath + "/codes/" + key45.replace(/~/g, "~0").replace(/\//g, "~1") + "/length-offset", schemaPath: "#/properties/codes/patternProperties/%5E%5BGM%5D%5Cd%7B1%2C3%7D%24/properties/length-offset/enum", keyword: "enum", params: { allowedValues: schema31.properties.codes.patternProperties["^[GM]\\d{1,3}$"].properties["length-offset"].enum }, message: "must be equal to one of the allowed values" };
                    if (vErrors === null) {
                      vErrors = [err710];
                    } else {
                      vErrors.push(err710);
                    }
                    errors++;
                  }
                }
              } else {
                const err711 = { instancePath: instancePath + "/codes/" + key45.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/codes/patternProperties/%5E%5BGM%5D%5Cd%7B1%2C3%7D%24/type", keyword: "type", params: { type: "object" }, message: "must be object" };
                if (vErrors === null) {
                  vErrors = [err711];
                } else {
                  vErrors.push(err711);
                }
                errors++;
              }
            }
          }
        } else {
          const err712 = { instancePath: instancePath + "/codes", schemaPath: "#/properties/codes/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err712];
          } else {
            vErrors.push(err712);
          }
          errors++;
        }
      }
      if (data.idioms !== void 0) {
        let data288 = data.idioms;
        if (data288 && typeof data288 == "object" && !Array.isArray(data288)) {
          for (const key47 in data288) {
            if (!func1.call(schema31.properties.idioms.properties, key47)) {
              const err713 = { instancePath: instancePath + "/idioms", schemaPath: "#/properties/idioms/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key47 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err713];
              } else {
                vErrors.push(err713);
              }
              errors++;
            }
          }
          if (data288.message !== void 0) {
            let data289 = data288.message;
            if (typeof data289 === "string") {
              if (func2(data289) > 120) {
                const err714 = { instancePath: instancePath + "/idioms/message", schemaPath: "#/$defs/template/maxLength", keyword: "maxLength", params: { limit: 120 }, message: "must NOT have more than 120 characters" };
                if (vErrors === null) {
                  vErrors = [err714];
                } else {
                  vErrors.push(err714);
                }
                errors++;
              }
              if (func2(data289) < 1) {
                const err715 = { instancePath: instancePath + "/idioms/message", schemaPath: "#/$defs/template/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                if (vErrors === null) {
                  vErrors = [err715];
                } else {
                  vErrors.push(err715);
                }
                errors++;
              }
            } else {
              const err716 = { instancePath: instancePath + "/idioms/message", schemaPath: "#/$defs/template/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err716];
              } else {
                vErrors.push(err716);
              }
              errors++;
            }
          }
          if (data288["wait-signal"] !== void 0) {
            let data290 = data288["wait-signal"];
            if (typeof data290 === "string") {
              if (func2(data290) > 120) {
                const err717 = { instancePath: instancePath + "/idioms/wait-signal", schemaPath: "#/$defs/template/maxLength", keyword: "maxLength", params: { limit: 120 }, message: "must NOT have more than 120 characters" };
                if (vErrors === null) {
                  vErrors = [err717];
                } else {
                  vErrors.push(err717);
                }
                errors++;
              }
              if (func2(data290) < 1) {
                const err718 = { instancePath: instancePath + "/idioms/wait-signal", schemaPath: "#/$defs/template/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                if (vErrors === null) {
                  vErrors = [err718];
                } else {
                  vErrors.push(err718);
                }
                errors++;
              }
            } else {
              const err719 = { instancePath: instancePath + "/idioms/wait-signal", schemaPath: "#/$defs/template/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err719];
              } else {
                vErrors.push(err719);
              }
              errors++;
            }
          }
          if (data288["output-on"] !== void 0) {
            let data291 = data288["output-on"];
            if (typeof data291 === "string") {
              if (func2(data291) > 120) {
                const err720 = { instancePath: instancePath + "/idioms/output-on", schemaPath: "#/$defs/template/maxLength", keyword: "maxLength", params: { limit: 120 }, message: "must NOT have more than 120 characters" };
                if (vErrors === null) {
                  vErrors = [err720];
                } else {
                  vErrors.push(err720);
                }
                errors++;
              }
              if (func2(data291) < 1) {
                const err721 = { instancePath: instancePath + "/idioms/output-on", schemaPath: "#/$defs/template/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                if (vErrors === null) {
                  vErrors = [err721];
                } else {
                  vErrors.push(err721);
                }
                errors++;
              }
            } else {
              const err722 = { instancePath: instancePath + "/idioms/output-on", schemaPath: "#/$defs/template/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err722];
              } else {
                vErrors.push(err722);
              }
              errors++;
            }
          }
          if (data288["output-off"] !== void 0) {
            let data292 = data288["output-off"];
            if (typeof data292 === "string") {
              if (func2(data292) > 120) {
                const err723 = { instancePath: instancePath + "/idioms/output-off", schemaPath: "#/$defs/template/maxLength", keyword: "maxLength", params: { limit: 120 }, message: "must NOT have more than 120 characters" };
                if (vErrors === null) {
                  vErrors = [err723];
                } else {
                  vErrors.push(err723);
                }
                errors++;
              }
              if (func2(data292) < 1) {
                const err724 = { instancePath: instancePath + "/idioms/output-off", schemaPath: "#/$defs/template/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                if (vErrors === null) {
                  vErrors = [err724];
                } else {
                  vErrors.push(err724);
                }
                errors++;
              }
            } else {
              const err725 = { instancePath: instancePath + "/idioms/output-off", schemaPath: "#/$defs/template/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err725];
              } else {
                vErrors.push(err725);
              }
              errors++;
            }
          }
          if (data288.release !== void 0) {
            let data293 = data288.release;
            if (typeof data293 === "string") {
              if (func2(data293) > 120) {
                const err726 = { instancePath: instancePath + "/idioms/release", schemaPath: "#/$defs/template/maxLength", keyword: "maxLength", params: { limit: 120 }, message: "must NOT have more than 120 characters" };
                if (vErrors === null) {
                  vErrors = [err726];
                } else {
                  vErrors.push(err726);
                }
                errors++;
              }
              if (func2(data293) < 1) {
                const err727 = { instancePath: instancePath + "/idioms/release", schemaPath: "#/$defs/template/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                if (vErrors === null) {
                  vErrors = [err727];
                } else {
                  vErrors.push(err727);
                }
                errors++;
              }
            } else {
              const err728 = { instancePath: instancePath + "/idioms/release", schemaPath: "#/$defs/template/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err728];
              } else {
                vErrors.push(err728);
              }
              errors++;
            }
          }
          if (data288.clamp !== void 0) {
            let data294 = data288.clamp;
            if (typeof data294 === "string") {
              if (func2(data294) > 120) {
                const err729 = { instancePath: instancePath + "/idioms/clamp", schemaPath: "#/$defs/template/maxLength", keyword: "maxLength", params: { limit: 120 }, message: "must NOT have more than 120 characters" };
                if (vErrors === null) {
                  vErrors = [err729];
                } else {
                  vErrors.push(err729);
                }
                errors++;
              }
              if (func2(data294) < 1) {
                const err730 = { instancePath: instancePath + "/idioms/clamp", schemaPath: "#/$defs/template/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                if (vErrors === null) {
                  vErrors = [err730];
                } else {
                  vErrors.push(err730);
                }
                errors++;
              }
            } else {
              const err731 = { instancePath: instancePath + "/idioms/clamp", schemaPath: "#/$defs/template/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err731];
              } else {
                vErrors.push(err731);
              }
              errors++;
            }
          }
          if (data288["taper-air-on"] !== void 0) {
            let data295 = data288["taper-air-on"];
            if (typeof data295 === "string") {
              if (func2(data295) > 120) {
                const err732 = { instancePath: instancePath + "/idioms/taper-air-on", schemaPath: "#/$defs/template/maxLength", keyword: "maxLength", params: { limit: 120 }, message: "must NOT have more than 120 characters" };
                if (vErrors === null) {
                  vErrors = [err732];
                } else {
                  vErrors.push(err732);
                }
                errors++;
              }
              if (func2(data295) < 1) {
                const err733 = { instancePath: instancePath + "/idioms/taper-air-on", schemaPath: "#/$defs/template/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                if (vErrors === null) {
                  vErrors = [err733];
                } else {
                  vErrors.push(err733);
                }
                errors++;
              }
            } else {
              const err734 = { instancePath: instancePath + "/idioms/taper-air-on", schemaPath: "#/$defs/template/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err734];
              } else {
                vErrors.push(err734);
              }
              errors++;
            }
          }
          if (data288["taper-air-off"] !== void 0) {
            let data296 = data288["taper-air-off"];
            if (typeof data296 === "string") {
              if (func2(data296) > 120) {
                const err735 = { instancePath: instancePath + "/idioms/taper-air-off", schemaPath: "#/$defs/template/maxLength", keyword: "maxLength", params: { limit: 120 }, message: "must NOT have more than 120 characters" };
                if (vErrors === null) {
                  vErrors = [err735];
                } else {
                  vErrors.push(err735);
                }
                errors++;
              }
              if (func2(data296) < 1) {
                const err736 = { instancePath: instancePath + "/idioms/taper-air-off", schemaPath: "#/$defs/template/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                if (vErrors === null) {
                  vErrors = [err736];
                } else {
                  vErrors.push(err736);
                }
                errors++;
              }
            } else {
              const err737 = { instancePath: instancePath + "/idioms/taper-air-off", schemaPath: "#/$defs/template/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err737];
              } else {
                vErrors.push(err737);
              }
              errors++;
            }
          }
          if (data288["cover-open"] !== void 0) {
            let data297 = data288["cover-open"];
            if (typeof data297 === "string") {
              if (func2(data297) > 120) {
                const err738 = { instancePath: instancePath + "/idioms/cover-open", schemaPath: "#/$defs/template/maxLength", keyword: "maxLength", params: { limit: 120 }, message: "must NOT have more than 120 characters" };
                if (vErrors === null) {
                  vErrors = [err738];
                } else {
                  vErrors.push(err738);
                }
                errors++;
              }
              if (func2(data297) < 1) {
                const err739 = { instancePath: instancePath + "/idioms/cover-open", schemaPath: "#/$defs/template/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                if (vErrors === null) {
                  vErrors = [err739];
                } else {
                  vErrors.push(err739);
                }
                errors++;
              }
            } else {
              const err740 = { instancePath: instancePath + "/idioms/cover-open", schemaPath: "#/$defs/template/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err740];
              } else {
                vErrors.push(err740);
              }
              errors++;
            }
          }
          if (data288["cover-close"] !== void 0) {
            let data298 = data288["cover-close"];
            if (typeof data298 === "string") {
              if (func2(data298) > 120) {
                const err741 = { instancePath: instancePath + "/idioms/cover-close", schemaPath: "#/$defs/template/maxLength", keyword: "maxLength", params: { limit: 120 }, message: "must NOT have more than 120 characters" };
                if (vErrors === null) {
                  vErrors = [err741];
                } else {
                  vErrors.push(err741);
                }
                errors++;
              }
              if (func2(data298) < 1) {
                const err742 = { instancePath: instancePath + "/idioms/cover-close", schemaPath: "#/$defs/template/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                if (vErrors === null) {
                  vErrors = [err742];
                } else {
                  vErrors.push(err742);
                }
                errors++;
              }
            } else {
              const err743 = { instancePath: instancePath + "/idioms/cover-close", schemaPath: "#/$defs/template/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err743];
              } else {
                vErrors.push(err743);
              }
              errors++;
            }
          }
          if (data288["hood-up"] !== void 0) {
            let data299 = data288["hood-up"];
            if (typeof data299 === "string") {
              if (func2(data299) > 120) {
                const err744 = { instancePath: instancePath + "/idioms/hood-up", schemaPath: "#/$defs/template/maxLength", keyword: "maxLength", params: { limit: 120 }, message: "must NOT have more than 120 characters" };
                if (vErrors === null) {
                  vErrors = [err744];
                } else {
                  vErrors.push(err744);
                }
                errors++;
              }
              if (func2(data299) < 1) {
                const err745 = { instancePath: instancePath + "/idioms/hood-up", schemaPath: "#/$defs/template/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                if (vErrors === null) {
                  vErrors = [err745];
                } else {
                  vErrors.push(err745);
                }
                errors++;
              }
            } else {
              const err746 = { instancePath: instancePath + "/idioms/hood-up", schemaPath: "#/$defs/template/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err746];
              } else {
                vErrors.push(err746);
              }
              errors++;
            }
          }
          if (data288["hood-down"] !== void 0) {
            let data300 = data288["hood-down"];
            if (typeof data300 === "string") {
              if (func2(data300) > 120) {
                const err747 = { instancePath: instancePath + "/idioms/hood-down", schemaPath: "#/$defs/template/maxLength", keyword: "maxLength", params: { limit: 120 }, message: "must NOT have more than 120 characters" };
                if (vErrors === null) {
                  vErrors = [err747];
                } else {
                  vErrors.push(err747);
                }
                errors++;
              }
              if (func2(data300) < 1) {
                const err748 = { instancePath: instancePath + "/idioms/hood-down", schemaPath: "#/$defs/template/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                if (vErrors === null) {
                  vErrors = [err748];
                } else {
                  vErrors.push(err748);
                }
                errors++;
              }
            } else {
              const err749 = { instancePath: instancePath + "/idioms/hood-down", schemaPath: "#/$defs/template/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err749];
              } else {
                vErrors.push(err749);
              }
              errors++;
            }
          }
          if (data288.measure !== void 0) {
            let data301 = data288.measure;
            if (typeof data301 === "string") {
              if (func2(data301) > 120) {
                const err750 = { instancePath: instancePath + "/idioms/measure", schemaPath: "#/$defs/template/maxLength", keyword: "maxLength", params: { limit: 120 }, message: "must NOT have more than 120 characters" };
                if (vErrors === null) {
                  vErrors = [err750];
                } else {
                  vErrors.push(err750);
                }
                errors++;
              }
              if (func2(data301) < 1) {
                const err751 = { instancePath: instancePath + "/idioms/measure", schemaPath: "#/$defs/template/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                if (vErrors === null) {
                  vErrors = [err751];
                } else {
                  vErrors.push(err751);
                }
                errors++;
              }
            } else {
              const err752 = { instancePath: instancePath + "/idioms/measure", schemaPath: "#/$defs/template/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err752];
              } else {
                vErrors.push(err752);
              }
              errors++;
            }
          }
        } else {
          const err753 = { instancePath: instancePath + "/idioms", schemaPath: "#/properties/idioms/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err753];
          } else {
            vErrors.push(err753);
          }
          errors++;
        }
      }
      if (data.machine !== void 0) {
        let data302 = data.machine;
        if (data302 && typeof data302 == "object" && !Array.isArray(data302)) {
          for (const key48 in data302) {
            if (!func1.call(schema31.properties.machine.properties, key48)) {
              const err754 = { instancePath: instancePath + "/machine", schemaPath: "#/properties/machine/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key48 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err754];
              } else {
                vErrors.push(err754);
              }
              errors++;
            }
          }
          if (data302.travel !== void 0) {
            let data303 = data302.travel;
            if (data303 && typeof data303 == "object" && !Array.isArray(data303)) {
              for (const key49 in data303) {
                if (!(key49 === "x" || key49 === "y" || key49 === "z" || key49 === "a" || key49 === "b" || key49 === "c")) {
                  const err755 = { instancePath: instancePath + "/machine/travel", schemaPath: "#/properties/machine/properties/travel/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key49 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err755];
                  } else {
                    vErrors.push(err755);
                  }
                  errors++;
                }
              }
              if (data303.x !== void 0) {
                let data304 = data303.x;
                if (Array.isArray(data304)) {
                  if (data304.length > 2) {
                    const err756 = { instancePath: instancePath + "/machine/travel/x", schemaPath: "#/properties/machine/properties/travel/properties/x/maxItems", keyword: "maxItems", params: { limit: 2 }, message: "must NOT have more than 2 items" };
                    if (vErrors === null) {
                      vErrors = [err756];
                    } else {
                      vErrors.push(err756);
                    }
                    errors++;
                  }
                  if (data304.length < 2) {
                    const err757 = { instancePath: instancePath + "/machine/travel/x", schemaPath: "#/properties/machine/properties/travel/properties/x/minItems", keyword: "minItems", params: { limit: 2 }, message: "must NOT have fewer than 2 items" };
                    if (vErrors === null) {
                      vErrors = [err757];
                    } else {
                      vErrors.push(err757);
                    }
                    errors++;
                  }
                  const len4 = data304.length;
                  for (let i6 = 0; i6 < len4; i6++) {
                    let data305 = data304[i6];
                    const _errs913 = errors;
                    let valid247 = false;
                    const _errs914 = errors;
                    if (typeof data305 == "number" && isFinite(data305)) {
                      if (data305 > 1e6 || isNaN(data305)) {
                        const err758 = { instancePath: instancePath + "/machine/travel/x/" + i6, schemaPath: "#/$defs/length/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                        if (vErrors === null) {
                          vErrors = [err758];
                        } else {
                          vErrors.push(err758);
                        }
                        errors++;
                      }
                      if (data305 < -1e6 || isNaN(data305)) {
                        const err759 = { instancePath: instancePath + "/machine/travel/x/" + i6, schemaPath: "#/$defs/length/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: -1e6 }, message: "must be >= -1000000" };
                        if (vErrors === null) {
                          vErrors = [err759];
                        } else {
                          vErrors.push(err759);
                        }
                        errors++;
                      }
                    } else {
                      const err760 = { instancePath: instancePath + "/machine/travel/x/" + i6, schemaPath: "#/$defs/length/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                      if (vErrors === null) {
                        vErrors = [err760];
                      } else {
                        vErrors.push(err760);
                      }
                      errors++;
                    }
                    var _valid22 = _errs914 === errors;
                    valid247 = valid247 || _valid22;
                    const _errs916 = errors;
                    if (typeof data305 === "string") {
                      if (!pattern25.test(data305)) {
                        const err761 = { instancePath: instancePath + "/machine/travel/x/" + i6, schemaPath: "#/$defs/length/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }, message: 'must match pattern "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$"' };
                        if (vErrors === null) {
                          vErrors = [err761];
                        } else {
                          vErrors.push(err761);
                        }
                        errors++;
                      }
                    } else {
                      const err762 = { instancePath: instancePath + "/machine/travel/x/" + i6, schemaPath: "#/$defs/length/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                      if (vErrors === null) {
                        vErrors = [err762];
                      } else {
                        vErrors.push(err762);
                      }
                      errors++;
                    }
                    var _valid22 = _errs916 === errors;
                    valid247 = valid247 || _valid22;
                    if (!valid247) {
                      const err763 = { instancePath: instancePath + "/machine/travel/x/" + i6, schemaPath: "#/$defs/length/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                      if (vErrors === null) {
                        vErrors = [err763];
                      } else {
                        vErrors.push(err763);
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
                  const err764 = { instancePath: instancePath + "/machine/travel/x", schemaPath: "#/properties/machine/properties/travel/properties/x/type", keyword: "type", params: { type: "array" }, message: "must be array" };
                  if (vErrors === null) {
                    vErrors = [err764];
                  } else {
                    vErrors.push(err764);
                  }
                  errors++;
                }
              }
              if (data303.y !== void 0) {
                let data306 = data303.y;
                if (Array.isArray(data306)) {
                  if (data306.length > 2) {
                    const err765 = { instancePath: instancePath + "/machine/travel/y", schemaPath: "#/properties/machine/properties/travel/properties/y/maxItems", keyword: "maxItems", params: { limit: 2 }, message: "must NOT have more than 2 items" };
                    if (vErrors === null) {
                      vErrors = [err765];
                    } else {
                      vErrors.push(err765);
                    }
                    errors++;
                  }
                  if (data306.length < 2) {
                    const err766 = { instancePath: instancePath + "/machine/travel/y", schemaPath: "#/properties/machine/properties/travel/properties/y/minItems", keyword: "minItems", params: { limit: 2 }, message: "must NOT have fewer than 2 items" };
                    if (vErrors === null) {
                      vErrors = [err766];
                    } else {
                      vErrors.push(err766);
                    }
                    errors++;
                  }
                  const len5 = data306.length;
                  for (let i7 = 0; i7 < len5; i7++) {
                    let data307 = data306[i7];
                    const _errs922 = errors;
                    let valid251 = false;
                    const _errs923 = errors;
                    if (typeof data307 == "number" && isFinite(data307)) {
                      if (data307 > 1e6 || isNaN(data307)) {
                        const err767 = { instancePath: instancePath + "/machine/travel/y/" + i7, schemaPath: "#/$defs/length/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                        if (vErrors === null) {
                          vErrors = [err767];
                        } else {
                          vErrors.push(err767);
                        }
                        errors++;
                      }
                      if (data307 < -1e6 || isNaN(data307)) {
                        const err768 = { instancePath: instancePath + "/machine/travel/y/" + i7, schemaPath: "#/$defs/length/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: -1e6 }, message: "must be >= -1000000" };
                        if (vErrors === null) {
                          vErrors = [err768];
                        } else {
                          vErrors.push(err768);
                        }
                        errors++;
                      }
                    } else {
                      const err769 = { instancePath: instancePath + "/machine/travel/y/" + i7, schemaPath: "#/$defs/length/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                      if (vErrors === null) {
                        vErrors = [err769];
                      } else {
                        vErrors.push(err769);
                      }
                      errors++;
                    }
                    var _valid23 = _errs923 === errors;
                    valid251 = valid251 || _valid23;
                    const _errs925 = errors;
                    if (typeof data307 === "string") {
                      if (!pattern25.test(data307)) {
                        const err770 = { instancePath: instancePath + "/machine/travel/y/" + i7, schemaPath: "#/$defs/length/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }, message: 'must match pattern "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$"' };
                        if (vErrors === null) {
                          vErrors = [err770];
                        } else {
                          vErrors.push(err770);
                        }
                        errors++;
                      }
                    } else {
                      const err771 = { instancePath: instancePath + "/machine/travel/y/" + i7, schemaPath: "#/$defs/length/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                      if (vErrors === null) {
                        vErrors = [err771];
                      } else {
                        vErrors.push(err771);
                      }
                      errors++;
                    }
                    var _valid23 = _errs925 === errors;
                    valid251 = valid251 || _valid23;
                    if (!valid251) {
                      const err772 = { instancePath: instancePath + "/machine/travel/y/" + i7, schemaPath: "#/$defs/length/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                      if (vErrors === null) {
                        vErrors = [err772];
                      } else {
                        vErrors.push(err772);
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
                  const err773 = { instancePath: instancePath + "/machine/travel/y", schemaPath: "#/properties/machine/properties/travel/properties/y/type", keyword: "type", params: { type: "array" }, message: "must be array" };
                  if (vErrors === null) {
                    vErrors = [err773];
                  } else {
                    vErrors.push(err773);
                  }
                  errors++;
                }
              }
              if (data303.z !== void 0) {
                let data308 = data303.z;
                if (Array.isArray(data308)) {
                  if (data308.length > 2) {
                    const err774 = { instancePath: instancePath + "/machine/travel/z", schemaPath: "#/properties/machine/properties/travel/properties/z/maxItems", keyword: "maxItems", params: { limit: 2 }, message: "must NOT have more than 2 items" };
                    if (vErrors === null) {
                      vErrors = [err774];
                    } else {
                      vErrors.push(err774);
                    }
                    errors++;
                  }
                  if (data308.length < 2) {
                    const err775 = { instancePath: instancePath + "/machine/travel/z", schemaPath: "#/properties/machine/properties/travel/properties/z/minItems", keyword: "minItems", params: { limit: 2 }, message: "must NOT have fewer than 2 items" };
                    if (vErrors === null) {
                      vErrors = [err775];
                    } else {
                      vErrors.push(err775);
                    }
                    errors++;
                  }
                  const len6 = data308.length;
                  for (let i8 = 0; i8 < len6; i8++) {
                    let data309 = data308[i8];
                    const _errs931 = errors;
                    let valid255 = false;
                    const _errs932 = errors;
                    if (typeof data309 == "number" && isFinite(data309)) {
                      if (data309 > 1e6 || isNaN(data309)) {
                        const err776 = { instancePath: instancePath + "/machine/travel/z/" + i8, schemaPath: "#/$defs/length/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                        if (vErrors === null) {
                          vErrors = [err776];
                        } else {
                          vErrors.push(err776);
                        }
                        errors++;
                      }
                      if (data309 < -1e6 || isNaN(data309)) {
                        const err777 = { instancePath: instancePath + "/machine/travel/z/" + i8, schemaPath: "#/$defs/length/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: -1e6 }, message: "must be >= -1000000" };
                        if (vErrors === null) {
                          vErrors = [err777];
                        } else {
                          vErrors.push(err777);
                        }
                        errors++;
                      }
                    } else {
                      const err778 = { instancePath: instancePath + "/machine/travel/z/" + i8, schemaPath: "#/$defs/length/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                      if (vErrors === null) {
                        vErrors = [err778];
                      } else {
                        vErrors.push(err778);
                      }
                      errors++;
                    }
                    var _valid24 = _errs932 === errors;
                    valid255 = valid255 || _valid24;
                    const _errs934 = errors;
                    if (typeof data309 === "string") {
                      if (!pattern25.test(data309)) {
                        const err779 = { instancePath: instancePath + "/machine/travel/z/" + i8, schemaPath: "#/$defs/length/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }, message: 'must match pattern "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$"' };
                        if (vErrors === null) {
                          vErrors = [err779];
                        } else {
                          vErrors.push(err779);
                        }
                        errors++;
                      }
                    } else {
                      const err780 = { instancePath: instancePath + "/machine/travel/z/" + i8, schemaPath: "#/$defs/length/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                      if (vErrors === null) {
                        vErrors = [err780];
                      } else {
                        vErrors.push(err780);
                      }
                      errors++;
                    }
                    var _valid24 = _errs934 === errors;
                    valid255 = valid255 || _valid24;
                    if (!valid255) {
                      const err781 = { instancePath: instancePath + "/machine/travel/z/" + i8, schemaPath: "#/$defs/length/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                      if (vErrors === null) {
                        vErrors = [err781];
                      } else {
                        vErrors.push(err781);
                      }
                      errors++;
                    } else {
                      errors = _errs931;
                      if (vErrors !== null) {
                        if (_errs931) {
                          vErrors.length = _errs931;
                        } else {
                          vErrors = null;
                        }
                      }
                    }
                  }
                } else {
                  const err782 = { instancePath: instancePath + "/machine/travel/z", schemaPath: "#/properties/machine/properties/travel/properties/z/type", keyword: "type", params: { type: "array" }, message: "must be array" };
                  if (vErrors === null) {
                    vErrors = [err782];
                  } else {
                    vErrors.push(err782);
                  }
                  errors++;
                }
              }
              if (data303.a !== void 0) {
                let data310 = data303.a;
                if (Array.isArray(data310)) {
                  if (data310.length > 2) {
                    const err783 = { instancePath: instancePath + "/machine/travel/a", schemaPath: "#/properties/machine/properties/travel/properties/a/maxItems", keyword: "maxItems", params: { limit: 2 }, message: "must NOT have more than 2 items" };
                    if (vErrors === null) {
                      vErrors = [err783];
                    } else {
                      vErrors.push(err783);
                    }
                    errors++;
                  }
                  if (data310.length < 2) {
                    const err784 = { instancePath: instancePath + "/machine/travel/a", schemaPath: "#/properties/machine/properties/travel/properties/a/minItems", keyword: "minItems", params: { limit: 2 }, message: "must NOT have fewer than 2 items" };
                    if (vErrors === null) {
                      vErrors = [err784];
                    } else {
                      vErrors.push(err784);
                    }
                    errors++;
                  }
                  const len7 = data310.length;
                  for (let i9 = 0; i9 < len7; i9++) {
                    let data311 = data310[i9];
                    if (typeof data311 == "number" && isFinite(data311)) {
                      if (data311 > 36e6 || isNaN(data311)) {
                        const err785 = { instancePath: instancePath + "/machine/travel/a/" + i9, schemaPath: "#/properties/machine/properties/travel/properties/a/items/maximum", keyword: "maximum", params: { comparison: "<=", limit: 36e6 }, message: "must be <= 36000000" };
                        if (vErrors === null) {
                          vErrors = [err785];
                        } else {
                          vErrors.push(err785);
                        }
                        errors++;
                      }
                      if (data311 < -36e6 || isNaN(data311)) {
                        const err786 = { instancePath: instancePath + "/machine/travel/a/" + i9, schemaPath: "#/properties/machine/properties/travel/properties/a/items/minimum", keyword: "minimum", params: { comparison: ">=", limit: -36e6 }, message: "must be >= -36000000" };
                        if (vErrors === null) {
                          vErrors = [err786];
                        } else {
                          vErrors.push(err786);
                        }
                        errors++;
                      }
                    } else {
                      const err787 = { instancePath: instancePath + "/machine/travel/a/" + i9, schemaPath: "#/properties/machine/properties/travel/properties/a/items/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                      if (vErrors === null) {
                        vErrors = [err787];
                      } else {
                        vErrors.push(err787);
                      }
                      errors++;
                    }
                  }
                } else {
                  const err788 = { instancePath: instancePath + "/machine/travel/a", schemaPath: "#/properties/machine/properties/travel/properties/a/type", keyword: "type", params: { type: "array" }, message: "must be array" };
                  if (vErrors === null) {
                    vErrors = [err788];
                  } else {
                    vErrors.push(err788);
                  }
                  errors++;
                }
              }
              if (data303.b !== void 0) {
                let data312 = data303.b;
                if (Array.isArray(data312)) {
                  if (data312.length > 2) {
                    const err789 = { instancePath: instancePath + "/machine/travel/b", schemaPath: "#/properties/machine/properties/travel/properties/b/maxItems", keyword: "maxItems", params: { limit: 2 }, message: "must NOT have more than 2 items" };
                    if (vErrors === null) {
                      vErrors = [err789];
                    } else {
                      vErrors.push(err789);
                    }
                    errors++;
                  }
                  if (data312.length < 2) {
                    const err790 = { instancePath: instancePath + "/machine/travel/b", schemaPath: "#/properties/machine/properties/travel/properties/b/minItems", keyword: "minItems", params: { limit: 2 }, message: "must NOT have fewer than 2 items" };
                    if (vErrors === null) {
                      vErrors = [err790];
                    } else {
                      vErrors.push(err790);
                    }
                    errors++;
                  }
                  const len8 = data312.length;
                  for (let i10 = 0; i10 < len8; i10++) {
                    let data313 = data312[i10];
                    if (typeof data313 == "number" && isFinite(data313)) {
                      if (data313 > 36e6 || isNaN(data313)) {
                        const err791 = { instancePath: instancePath + "/machine/travel/b/" + i10, schemaPath: "#/properties/machine/properties/travel/properties/b/items/maximum", keyword: "maximum", params: { comparison: "<=", limit: 36e6 }, message: "must be <= 36000000" };
                        if (vErrors === null) {
                          vErrors = [err791];
                        } else {
                          vErrors.push(err791);
                        }
                        errors++;
                      }
                      if (data313 < -36e6 || isNaN(data313)) {
                        const err792 = { instancePath: instancePath + "/machine/travel/b/" + i10, schemaPath: "#/properties/machine/properties/travel/properties/b/items/minimum", keyword: "minimum", params: { comparison: ">=", limit: -36e6 }, message: "must be >= -36000000" };
                        if (vErrors === null) {
                          vErrors = [err792];
                        } else {
                          vErrors.push(err792);
                        }
                        errors++;
                      }
                    } else {
                      const err793 = { instancePath: instancePath + "/machine/travel/b/" + i10, schemaPath: "#/properties/machine/properties/travel/properties/b/items/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                      if (vErrors === null) {
                        vErrors = [err793];
                      } else {
                        vErrors.push(err793);
                      }
                      errors++;
                    }
                  }
                } else {
                  const err794 = { instancePath: instancePath + "/machine/travel/b", schemaPath: "#/properties/machine/properties/travel/properties/b/type", keyword: "type", params: { type: "array" }, message: "must be array" };
                  if (vErrors === null) {
                    vErrors = [err794];
                  } else {
                    vErrors.push(err794);
                  }
                  errors++;
                }
              }
              if (data303.c !== void 0) {
                let data314 = data303.c;
                if (Array.isArray(data314)) {
                  if (data314.length > 2) {
                    const err795 = { instancePath: instancePath + "/machine/travel/c", schemaPath: "#/properties/machine/properties/travel/properties/c/maxItems", keyword: "maxItems", params: { limit: 2 }, message: "must NOT have more than 2 items" };
                    if (vErrors === null) {
                      vErrors = [err795];
                    } else {
                      vErrors.push(err795);
                    }
                    errors++;
                  }
                  if (data314.length < 2) {
                    const err796 = { instancePath: instancePath + "/machine/travel/c", schemaPath: "#/properties/machine/properties/travel/properties/c/minItems", keyword: "minItems", params: { limit: 2 }, message: "must NOT have fewer than 2 items" };
                    if (vErrors === null) {
                      vErrors = [err796];
                    } else {
                      vErrors.push(err796);
                    }
                    errors++;
                  }
                  const len9 = data314.length;
                  for (let i11 = 0; i11 < len9; i11++) {
                    let data315 = data314[i11];
                    if (typeof data315 == "number" && isFinite(data315)) {
                      if (data315 > 36e6 || isNaN(data315)) {
                        const err797 = { instancePath: instancePath + "/machine/travel/c/" + i11, schemaPath: "#/properties/machine/properties/travel/properties/c/items/maximum", keyword: "maximum", params: { comparison: "<=", limit: 36e6 }, message: "must be <= 36000000" };
                        if (vErrors === null) {
                          vErrors = [err797];
                        } else {
                          vErrors.push(err797);
                        }
                        errors++;
                      }
                      if (data315 < -36e6 || isNaN(data315)) {
                        const err798 = { instancePath: instancePath + "/machine/travel/c/" + i11, schemaPath: "#/properties/machine/properties/travel/properties/c/items/minimum", keyword: "minimum", params: { comparison: ">=", limit: -36e6 }, message: "must be >= -36000000" };
                        if (vErrors === null) {
                          vErrors = [err798];
                        } else {
                          vErrors.push(err798);
                        }
                        errors++;
                      }
                    } else {
                      const err799 = { instancePath: instancePath + "/machine/travel/c/" + i11, schemaPath: "#/properties/machine/properties/travel/properties/c/items/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                      if (vErrors === null) {
                        vErrors = [err799];
                      } else {
                        vErrors.push(err799);
                      }
                      errors++;
                    }
                  }
                } else {
                  const err800 = { instancePath: instancePath + "/machine/travel/c", schemaPath: "#/properties/machine/properties/travel/properties/c/type", keyword: "type", params: { type: "array" }, message: "must be array" };
                  if (vErrors === null) {
                    vErrors = [err800];
                  } else {
                    vErrors.push(err800);
                  }
                  errors++;
                }
              }
            } else {
              const err801 = { instancePath: instancePath + "/machine/travel", schemaPath: "#/properties/machine/properties/travel/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err801];
              } else {
                vErrors.push(err801);
              }
              errors++;
            }
          }
          if (data302.spindle !== void 0) {
            let data316 = data302.spindle;
            if (data316 && typeof data316 == "object" && !Array.isArray(data316)) {
              for (const key50 in data316) {
                if (!(key50 === "min-rpm" || key50 === "max-rpm" || key50 === "spin-up" || key50 === "spin-down" || key50 === "coast-down" || key50 === "orient")) {
                  const err802 = { instancePath: instancePath + "/machine/spindle", schemaPath: "#/properties/machine/properties/spindle/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key50 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err802];
                  } else {
                    vErrors.push(err802);
                  }
                  errors++;
                }
              }
              if (data316["min-rpm"] !== void 0) {
                let data317 = data316["min-rpm"];
                if (typeof data317 == "number" && isFinite(data317)) {
                  if (data317 > 1e6 || isNaN(data317)) {
                    const err803 = { instancePath: instancePath + "/machine/spindle/min-rpm", schemaPath: "#/properties/machine/properties/spindle/properties/min-rpm/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                    if (vErrors === null) {
                      vErrors = [err803];
                    } else {
                      vErrors.push(err803);
                    }
                    errors++;
                  }
                  if (data317 < 0 || isNaN(data317)) {
                    const err804 = { instancePath: instancePath + "/machine/spindle/min-rpm", schemaPath: "#/properties/machine/properties/spindle/properties/min-rpm/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err804];
                    } else {
                      vErrors.push(err804);
                    }
                    errors++;
                  }
                } else {
                  const err805 = { instancePath: instancePath + "/machine/spindle/min-rpm", schemaPath: "#/properties/machine/properties/spindle/properties/min-rpm/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                  if (vErrors === null) {
                    vErrors = [err805];
                  } else {
                    vErrors.push(err805);
                  }
                  errors++;
                }
              }
              if (data316["max-rpm"] !== void 0) {
                let data318 = data316["max-rpm"];
                if (typeof data318 == "number" && isFinite(data318)) {
                  if (data318 > 1e6 || isNaN(data318)) {
                    const err806 = { instancePath: instancePath + "/machine/spindle/max-rpm", schemaPath: "#/properties/machine/properties/spindle/properties/max-rpm/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                    if (vErrors === null) {
                      vErrors = [err806];
                    } else {
                      vErrors.push(err806);
                    }
                    errors++;
                  }
                  if (data318 <= 0 || isNaN(data318)) {
                    const err807 = { instancePath: instancePath + "/machine/spindle/max-rpm", schemaPath: "#/properties/machine/properties/spindle/properties/max-rpm/exclusiveMinimum", keyword: "exclusiveMinimum", params: { comparison: ">", limit: 0 }, message: "must be > 0" };
                    if (vErrors === null) {
                      vErrors = [err807];
                    } else {
                      vErrors.push(err807);
                    }
                    errors++;
                  }
                } else {
                  const err808 = { instancePath: instancePath + "/machine/spindle/max-rpm", schemaPath: "#/properties/machine/properties/spindle/properties/max-rpm/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                  if (vErrors === null) {
                    vErrors = [err808];
                  } else {
                    vErrors.push(err808);
                  }
                  errors++;
                }
              }
              if (data316["spin-up"] !== void 0) {
                let data319 = data316["spin-up"];
                if (typeof data319 === "string") {
                  if (!pattern89.test(data319)) {
                    const err809 = { instancePath: instancePath + "/machine/spindle/spin-up", schemaPath: "#/$defs/time/pattern", keyword: "pattern", params: { pattern: "^\\d{1,6}(\\.\\d{1,6})? ?(s|ms|min)$" }, message: 'must match pattern "^\\d{1,6}(\\.\\d{1,6})? ?(s|ms|min)$"' };
                    if (vErrors === null) {
                      vErrors = [err809];
                    } else {
                      vErrors.push(err809);
                    }
                    errors++;
                  }
                } else {
                  const err810 = { instancePath: instancePath + "/machine/spindle/spin-up", schemaPath: "#/$defs/time/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err810];
                  } else {
                    vErrors.push(err810);
                  }
                  errors++;
                }
              }
              if (data316["spin-down"] !== void 0) {
                let data320 = data316["spin-down"];
                if (typeof data320 === "string") {
                  if (!pattern89.test(data320)) {
                    const err811 = { instancePath: instancePath + "/machine/spindle/spin-down", schemaPath: "#/$defs/time/pattern", keyword: "pattern", params: { pattern: "^\\d{1,6}(\\.\\d{1,6})? ?(s|ms|min)$" }, message: 'must match pattern "^\\d{1,6}(\\.\\d{1,6})? ?(s|ms|min)$"' };
                    if (vErrors === null) {
                      vErrors = [err811];
                    } else {
                      vErrors.push(err811);
                    }
                    errors++;
                  }
                } else {
                  const err812 = { instancePath: instancePath + "/machine/spindle/spin-down", schemaPath: "#/$defs/time/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err812];
                  } else {
                    vErrors.push(err812);
                  }
                  errors++;
                }
              }
              if (data316["coast-down"] !== void 0) {
                let data321 = data316["coast-down"];
                if (typeof data321 === "string") {
                  if (!pattern89.test(data321)) {
                    const err813 = { instancePath: instancePath + "/machine/spindle/coast-down", schemaPath: "#/$defs/time/pattern", keyword: "pattern", params: { pattern: "^\\d{1,6}(\\.\\d{1,6})? ?(s|ms|min)$" }, message: 'must match pattern "^\\d{1,6}(\\.\\d{1,6})? ?(s|ms|min)$"' };
                    if (vErrors === null) {
                      vErrors = [err813];
                    } else {
                      vErrors.push(err813);
                    }
                    errors++;
                  }
                } else {
                  const err814 = { instancePath: instancePath + "/machine/spindle/coast-down", schemaPath: "#/$defs/time/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err814];
                  } else {
                    vErrors.push(err814);
                  }
                  errors++;
                }
              }
              if (data316.orient !== void 0) {
                let data322 = data316.orient;
                if (typeof data322 !== "string") {
                  const err815 = { instancePath: instancePath + "/machine/spindle/orient", schemaPath: "#/$defs/yesNo/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err815];
                  } else {
                    vErrors.push(err815);
                  }
                  errors++;
                }
                if (!(data322 === "yes" || data322 === "no")) {
                  const err816 = { instancePath: instancePath + "/machine/spindle/orient", schemaPath: "#/$defs/yesNo/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err816];
                  } else {
                    vErrors.push(err816);
                  }
                  errors++;
                }
              }
            } else {
              const err817 = { instancePath: instancePath + "/machine/spindle", schemaPath: "#/properties/machine/properties/spindle/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err817];
              } else {
                vErrors.push(err817);
              }
              errors++;
            }
          }
          if (data302.signals !== void 0) {
            let data323 = data302.signals;
            if (data323 && typeof data323 == "object" && !Array.isArray(data323)) {
              for (const key51 in data323) {
                if (!(key51 === "at-speed" || key51 === "stopped" || key51 === "released" || key51 === "clamped" || key51 === "tool-present" || key51 === "air" || key51 === "hold-down")) {
                  const err818 = { instancePath: instancePath + "/machine/signals", schemaPath: "#/properties/machine/properties/signals/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key51 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err818];
                  } else {
                    vErrors.push(err818);
                  }
                  errors++;
                }
              }
              if (data323["at-speed"] !== void 0) {
                let data324 = data323["at-speed"];
                const _errs971 = errors;
                let valid268 = false;
                const _errs972 = errors;
                if (!(typeof data324 == "number" && (!(data324 % 1) && !isNaN(data324)) && isFinite(data324))) {
                  const err819 = { instancePath: instancePath + "/machine/signals/at-speed", schemaPath: "#/properties/machine/properties/signals/properties/at-speed/anyOf/0/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err819];
                  } else {
                    vErrors.push(err819);
                  }
                  errors++;
                }
                if (typeof data324 == "number" && isFinite(data324)) {
                  if (data324 > 9999 || isNaN(data324)) {
                    const err820 = { instancePath: instancePath + "/machine/signals/at-speed", schemaPath: "#/properties/machine/properties/signals/properties/at-speed/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 9999 }, message: "must be <= 9999" };
                    if (vErrors === null) {
                      vErrors = [err820];
                    } else {
                      vErrors.push(err820);
                    }
                    errors++;
                  }
                  if (data324 < 0 || isNaN(data324)) {
                    const err821 = { instancePath: instancePath + "/machine/signals/at-speed", schemaPath: "#/properties/machine/properties/signals/properties/at-speed/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err821];
                    } else {
                      vErrors.push(err821);
                    }
                    errors++;
                  }
                }
                var _valid25 = _errs972 === errors;
                valid268 = valid268 || _valid25;
                const _errs974 = errors;
                if (!validate21(data324, { instancePath: instancePath + "/machine/signals/at-speed", parentData: data323, parentDataProperty: "at-speed", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate21.errors : vErrors.concat(validate21.errors);
                  errors = vErrors.length;
                }
                var _valid25 = _errs974 === errors;
                valid268 = valid268 || _valid25;
                if (!valid268) {
                  const err822 = { instancePath: instancePath + "/machine/signals/at-speed", schemaPath: "#/properties/machine/properties/signals/properties/at-speed/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err822];
                  } else {
                    vErrors.push(err822);
                  }
                  errors++;
                } else {
                  errors = _errs971;
                  if (vErrors !== null) {
                    if (_errs971) {
                      vErrors.length = _errs971;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
              if (data323.stopped !== void 0) {
                let data325 = data323.stopped;
                const _errs976 = errors;
                let valid269 = false;
                const _errs977 = errors;
                if (!(typeof data325 == "number" && (!(data325 % 1) && !isNaN(data325)) && isFinite(data325))) {
                  const err823 = { instancePath: instancePath + "/machine/signals/stopped", schemaPath: "#/properties/machine/properties/signals/properties/stopped/anyOf/0/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err823];
                  } else {
                    vErrors.push(err823);
                  }
                  errors++;
                }
                if (typeof data325 == "number" && isFinite(data325)) {
                  if (data325 > 9999 || isNaN(data325)) {
                    const err824 = { instancePath: instancePath + "/machine/signals/stopped", schemaPath: "#/properties/machine/properties/signals/properties/stopped/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 9999 }, message: "must be <= 9999" };
                    if (vErrors === null) {
                      vErrors = [err824];
                    } else {
                      vErrors.push(err824);
                    }
                    errors++;
                  }
                  if (data325 < 0 || isNaN(data325)) {
                    const err825 = { instancePath: instancePath + "/machine/signals/stopped", schemaPath: "#/properties/machine/properties/signals/properties/stopped/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err825];
                    } else {
                      vErrors.push(err825);
                    }
                    errors++;
                  }
                }
                var _valid26 = _errs977 === errors;
                valid269 = valid269 || _valid26;
                const _errs979 = errors;
                if (!validate21(data325, { instancePath: instancePath + "/machine/signals/stopped", parentData: data323, parentDataProperty: "stopped", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate21.errors : vErrors.concat(validate21.errors);
                  errors = vErrors.length;
                }
                var _valid26 = _errs979 === errors;
                valid269 = valid269 || _valid26;
                if (!valid269) {
                  const err826 = { instancePath: instancePath + "/machine/signals/stopped", schemaPath: "#/properties/machine/properties/signals/properties/stopped/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err826];
                  } else {
                    vErrors.push(err826);
                  }
                  errors++;
                } else {
                  errors = _errs976;
                  if (vErrors !== null) {
                    if (_errs976) {
                      vErrors.length = _errs976;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
              if (data323.released !== void 0) {
                let data326 = data323.released;
                const _errs981 = errors;
                let valid270 = false;
                const _errs982 = errors;
                if (!(typeof data326 == "number" && (!(data326 % 1) && !isNaN(data326)) && isFinite(data326))) {
                  const err827 = { instancePath: instancePath + "/machine/signals/released", schemaPath: "#/properties/machine/properties/signals/properties/released/anyOf/0/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err827];
                  } else {
                    vErrors.push(err827);
                  }
                  errors++;
                }
                if (typeof data326 == "number" && isFinite(data326)) {
                  if (data326 > 9999 || isNaN(data326)) {
                    const err828 = { instancePath: instancePath + "/machine/signals/released", schemaPath: "#/properties/machine/properties/signals/properties/released/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 9999 }, message: "must be <= 9999" };
                    if (vErrors === null) {
                      vErrors = [err828];
                    } else {
                      vErrors.push(err828);
                    }
                    errors++;
                  }
                  if (data326 < 0 || isNaN(data326)) {
                    const err829 = { instancePath: instancePath + "/machine/signals/released", schemaPath: "#/properties/machine/properties/signals/properties/released/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err829];
                    } else {
                      vErrors.push(err829);
                    }
                    errors++;
                  }
                }
                var _valid27 = _errs982 === errors;
                valid270 = valid270 || _valid27;
                const _errs984 = errors;
                if (!validate21(data326, { instancePath: instancePath + "/machine/signals/released", parentData: data323, parentDataProperty: "released", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate21.errors : vErrors.concat(validate21.errors);
                  errors = vErrors.length;
                }
                var _valid27 = _errs984 === errors;
                valid270 = valid270 || _valid27;
                if (!valid270) {
                  const err830 = { instancePath: instancePath + "/machine/signals/released", schemaPath: "#/properties/machine/properties/signals/properties/released/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err830];
                  } else {
                    vErrors.push(err830);
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
              if (data323.clamped !== void 0) {
                let data327 = data323.clamped;
                const _errs986 = errors;
                let valid271 = false;
                const _errs987 = errors;
                if (!(typeof data327 == "number" && (!(data327 % 1) && !isNaN(data327)) && isFinite(data327))) {
                  const err831 = { instancePath: instancePath + "/machine/signals/clamped", schemaPath: "#/properties/machine/properties/signals/properties/clamped/anyOf/0/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err831];
                  } else {
                    vErrors.push(err831);
                  }
                  errors++;
                }
                if (typeof data327 == "number" && isFinite(data327)) {
                  if (data327 > 9999 || isNaN(data327)) {
                    const err832 = { instancePath: instancePath + "/machine/signals/clamped", schemaPath: "#/properties/machine/properties/signals/properties/clamped/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 9999 }, message: "must be <= 9999" };
                    if (vErrors === null) {
                      vErrors = [err832];
                    } else {
                      vErrors.push(err832);
                    }
                    errors++;
                  }
                  if (data327 < 0 || isNaN(data327)) {
                    const err833 = { instancePath: instancePath + "/machine/signals/clamped", schemaPath: "#/properties/machine/properties/signals/properties/clamped/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err833];
                    } else {
                      vErrors.push(err833);
                    }
                    errors++;
                  }
                }
                var _valid28 = _errs987 === errors;
                valid271 = valid271 || _valid28;
                const _errs989 = errors;
                if (!validate21(data327, { instancePath: instancePath + "/machine/signals/clamped", parentData: data323, parentDataProperty: "clamped", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate21.errors : vErrors.concat(validate21.errors);
                  errors = vErrors.length;
                }
                var _valid28 = _errs989 === errors;
                valid271 = valid271 || _valid28;
                if (!valid271) {
                  const err834 = { instancePath: instancePath + "/machine/signals/clamped", schemaPath: "#/properties/machine/properties/signals/properties/clamped/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err834];
                  } else {
                    vErrors.push(err834);
                  }
                  errors++;
                } else {
                  errors = _errs986;
                  if (vErrors !== null) {
                    if (_errs986) {
                      vErrors.length = _errs986;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
              if (data323["tool-present"] !== void 0) {
                let data328 = data323["tool-present"];
                const _errs991 = errors;
                let valid272 = false;
                const _errs992 = errors;
                if (!(typeof data328 == "number" && (!(data328 % 1) && !isNaN(data328)) && isFinite(data328))) {
                  const err835 = { instancePath: instancePath + "/machine/signals/tool-present", schemaPath: "#/properties/machine/properties/signals/properties/tool-present/anyOf/0/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err835];
                  } else {
                    vErrors.push(err835);
                  }
                  errors++;
                }
                if (typeof data328 == "number" && isFinite(data328)) {
                  if (data328 > 9999 || isNaN(data328)) {
                    const err836 = { instancePath: instancePath + "/machine/signals/tool-present", schemaPath: "#/properties/machine/properties/signals/properties/tool-present/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 9999 }, message: "must be <= 9999" };
                    if (vErrors === null) {
                      vErrors = [err836];
                    } else {
                      vErrors.push(err836);
                    }
                    errors++;
                  }
                  if (data328 < 0 || isNaN(data328)) {
                    const err837 = { instancePath: instancePath + "/machine/signals/tool-present", schemaPath: "#/properties/machine/properties/signals/properties/tool-present/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err837];
                    } else {
                      vErrors.push(err837);
                    }
                    errors++;
                  }
                }
                var _valid29 = _errs992 === errors;
                valid272 = valid272 || _valid29;
                const _errs994 = errors;
                if (!validate21(data328, { instancePath: instancePath + "/machine/signals/tool-present", parentData: data323, parentDataProperty: "tool-present", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate21.errors : vErrors.concat(validate21.errors);
                  errors = vErrors.length;
                }
                var _valid29 = _errs994 === errors;
                valid272 = valid272 || _valid29;
                if (!valid272) {
                  const err838 = { instancePath: instancePath + "/machine/signals/tool-present", schemaPath: "#/properties/machine/properties/signals/properties/tool-present/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err838];
                  } else {
                    vErrors.push(err838);
                  }
                  errors++;
                } else {
                  errors = _errs991;
                  if (vErrors !== null) {
                    if (_errs991) {
                      vErrors.length = _errs991;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
              if (data323.air !== void 0) {
                let data329 = data323.air;
                const _errs996 = errors;
                let valid273 = false;
                const _errs997 = errors;
                if (!(typeof data329 == "number" && (!(data329 % 1) && !isNaN(data329)) && isFinite(data329))) {
                  const err839 = { instancePath: instancePath + "/machine/signals/air", schemaPath: "#/properties/machine/properties/signals/properties/air/anyOf/0/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err839];
                  } else {
                    vErrors.push(err839);
                  }
                  errors++;
                }
                if (typeof data329 == "number" && isFinite(data329)) {
                  if (data329 > 9999 || isNaN(data329)) {
                    const err840 = { instancePath: instancePath + "/machine/signals/air", schemaPath: "#/properties/machine/properties/signals/properties/air/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 9999 }, message: "must be <= 9999" };
                    if (vErrors === null) {
                      vErrors = [err840];
                    } else {
                      vErrors.push(err840);
                    }
                    errors++;
                  }
                  if (data329 < 0 || isNaN(data329)) {
                    const err841 = { instancePath: instancePath + "/machine/signals/air", schemaPath: "#/properties/machine/properties/signals/properties/air/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err841];
                    } else {
                      vErrors.push(err841);
                    }
                    errors++;
                  }
                }
                var _valid30 = _errs997 === errors;
                valid273 = valid273 || _valid30;
                const _errs999 = errors;
                if (!validate21(data329, { instancePath: instancePath + "/machine/signals/air", parentData: data323, parentDataProperty: "air", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate21.errors : vErrors.concat(validate21.errors);
                  errors = vErrors.length;
                }
                var _valid30 = _errs999 === errors;
                valid273 = valid273 || _valid30;
                if (!valid273) {
                  const err842 = { instancePath: instancePath + "/machine/signals/air", schemaPath: "#/properties/machine/properties/signals/properties/air/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err842];
                  } else {
                    vErrors.push(err842);
                  }
                  errors++;
                } else {
                  errors = _errs996;
                  if (vErrors !== null) {
                    if (_errs996) {
                      vErrors.length = _errs996;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
              if (data323["hold-down"] !== void 0) {
                let data330 = data323["hold-down"];
                const _errs1001 = errors;
                let valid274 = false;
                const _errs1002 = errors;
                if (!(typeof data330 == "number" && (!(data330 % 1) && !isNaN(data330)) && isFinite(data330))) {
                  const err843 = { instancePath: instancePath + "/machine/signals/hold-down", schemaPath: "#/properties/machine/properties/signals/properties/hold-down/anyOf/0/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                  if (vErrors === null) {
                    vErrors = [err843];
                  } else {
                    vErrors.push(err843);
                  }
                  errors++;
                }
                if (typeof data330 == "number" && isFinite(data330)) {
                  if (data330 > 9999 || isNaN(data330)) {
                    const err844 = { instancePath: instancePath + "/machine/signals/hold-down", schemaPath: "#/properties/machine/properties/signals/properties/hold-down/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 9999 }, message: "must be <= 9999" };
                    if (vErrors === null) {
                      vErrors = [err844];
                    } else {
                      vErrors.push(err844);
                    }
                    errors++;
                  }
                  if (data330 < 0 || isNaN(data330)) {
                    const err845 = { instancePath: instancePath + "/machine/signals/hold-down", schemaPath: "#/properties/machine/properties/signals/properties/hold-down/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err845];
                    } else {
                      vErrors.push(err845);
                    }
                    errors++;
                  }
                }
                var _valid31 = _errs1002 === errors;
                valid274 = valid274 || _valid31;
                const _errs1004 = errors;
                if (!validate21(data330, { instancePath: instancePath + "/machine/signals/hold-down", parentData: data323, parentDataProperty: "hold-down", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate21.errors : vErrors.concat(validate21.errors);
                  errors = vErrors.length;
                }
                var _valid31 = _errs1004 === errors;
                valid274 = valid274 || _valid31;
                if (!valid274) {
                  const err846 = { instancePath: instancePath + "/machine/signals/hold-down", schemaPath: "#/properties/machine/properties/signals/properties/hold-down/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err846];
                  } else {
                    vErrors.push(err846);
                  }
                  errors++;
                } else {
                  errors = _errs1001;
                  if (vErrors !== null) {
                    if (_errs1001) {
                      vErrors.length = _errs1001;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
            } else {
              const err847 = { instancePath: instancePath + "/machine/signals", schemaPath: "#/properties/machine/properties/signals/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err847];
              } else {
                vErrors.push(err847);
              }
              errors++;
            }
          }
          if (data302.waits !== void 0) {
            let data331 = data302.waits;
            if (data331 && typeof data331 == "object" && !Array.isArray(data331)) {
              for (const key52 in data331) {
                if (!(key52 === "on-timeout")) {
                  const err848 = { instancePath: instancePath + "/machine/waits", schemaPath: "#/properties/machine/properties/waits/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key52 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err848];
                  } else {
                    vErrors.push(err848);
                  }
                  errors++;
                }
              }
              if (data331["on-timeout"] !== void 0) {
                let data332 = data331["on-timeout"];
                if (typeof data332 !== "string") {
                  const err849 = { instancePath: instancePath + "/machine/waits/on-timeout", schemaPath: "#/properties/machine/properties/waits/properties/on-timeout/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err849];
                  } else {
                    vErrors.push(err849);
                  }
                  errors++;
                }
                if (!(data332 === "alarm" || data332 === "continues")) {
                  const err850 = { instancePath: instancePath + "/machine/waits/on-timeout", schemaPath: "#/properties/machine/properties/waits/properties/on-timeout/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties.waits.properties["on-timeout"].enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err850];
                  } else {
                    vErrors.push(err850);
                  }
                  errors++;
                }
              }
            } else {
              const err851 = { instancePath: instancePath + "/machine/waits", schemaPath: "#/properties/machine/properties/waits/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err851];
              } else {
                vErrors.push(err851);
              }
              errors++;
            }
          }
          if (data302.swap !== void 0) {
            let data333 = data302.swap;
            if (typeof data333 !== "string") {
              const err852 = { instancePath: instancePath + "/machine/swap", schemaPath: "#/properties/machine/properties/swap/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err852];
              } else {
                vErrors.push(err852);
              }
              errors++;
            }
            if (!(data333 === "controller" || data333 === "rack" || data333 === "operator")) {
              const err853 = { instancePath: instancePath + "/machine/swap", schemaPath: "#/properties/machine/properties/swap/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties.swap.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err853];
              } else {
                vErrors.push(err853);
              }
              errors++;
            }
          }
          if (data302["change-effects"] !== void 0) {
            let data334 = data302["change-effects"];
            if (data334 && typeof data334 == "object" && !Array.isArray(data334)) {
              for (const key53 in data334) {
                if (!(key53 === "position" || key53 === "spindle" || key53 === "coolant" || key53 === "length-offset")) {
                  const err854 = { instancePath: instancePath + "/machine/change-effects", schemaPath: "#/properties/machine/properties/change-effects/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key53 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err854];
                  } else {
                    vErrors.push(err854);
                  }
                  errors++;
                }
              }
              if (data334.position !== void 0) {
                let data335 = data334.position;
                if (typeof data335 !== "string") {
                  const err855 = { instancePath: instancePath + "/machine/change-effects/position", schemaPath: "#/properties/machine/properties/change-effects/properties/position/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err855];
                  } else {
                    vErrors.push(err855);
                  }
                  errors++;
                }
                if (!(data335 === "unchanged" || data335 === "unknown" || data335 === "swap-height")) {
                  const err856 = { instancePath: instancePath + "/machine/change-effects/position", schemaPath: "#/properties/machine/properties/change-effects/properties/position/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties["change-effects"].properties.position.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err856];
                  } else {
                    vErrors.push(err856);
                  }
                  errors++;
                }
              }
              if (data334.spindle !== void 0) {
                let data336 = data334.spindle;
                if (typeof data336 !== "string") {
                  const err857 = { instancePath: instancePath + "/machine/change-effects/spindle", schemaPath: "#/properties/machine/properties/change-effects/properties/spindle/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err857];
                  } else {
                    vErrors.push(err857);
                  }
                  errors++;
                }
                if (!(data336 === "unchanged" || data336 === "stopped")) {
                  const err858 = { instancePath: instancePath + "/machine/change-effects/spindle", schemaPath: "#/properties/machine/properties/change-effects/properties/spindle/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties["change-effects"].properties.spindle.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err858];
                  } else {
                    vErrors.push(err858);
                  }
                  errors++;
                }
              }
              if (data334.coolant !== void 0) {
                let data337 = data334.coolant;
                if (typeof data337 !== "string") {
                  const err859 = { instancePath: instancePath + "/machine/change-effects/coolant", schemaPath: "#/properties/machine/properties/change-effects/properties/coolant/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err859];
                  } else {
                    vErrors.push(err859);
                  }
                  errors++;
                }
                if (!(data337 === "unchanged" || data337 === "off")) {
                  const err860 = { instancePath: instancePath + "/machine/change-effects/coolant", schemaPath: "#/properties/machine/properties/change-effects/properties/coolant/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties["change-effects"].properties.coolant.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err860];
                  } else {
                    vErrors.push(err860);
                  }
                  errors++;
                }
              }
              if (data334["length-offset"] !== void 0) {
                let data338 = data334["length-offset"];
                if (typeof data338 !== "string") {
                  const err861 = { instancePath: instancePath + "/machine/change-effects/length-offset", schemaPath: "#/properties/machine/properties/change-effects/properties/length-offset/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err861];
                  } else {
                    vErrors.push(err861);
                  }
                  errors++;
                }
                if (!(data338 === "unchanged" || data338 === "active" || data338 === "cancelled")) {
                  const err862 = { instancePath: instancePath + "/machine/change-effects/length-offset", schemaPath: "#/properties/machine/properties/change-effects/properties/length-offset/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties["change-effects"].properties["length-offset"].enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err862];
                  } else {
                    vErrors.push(err862);
                  }
                  errors++;
                }
              }
            } else {
              const err863 = { instancePath: instancePath + "/machine/change-effects", schemaPath: "#/properties/machine/properties/change-effects/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err863];
              } else {
                vErrors.push(err863);
              }
              errors++;
            }
          }
          if (data302["measure-effects"] !== void 0) {
            let data339 = data302["measure-effects"];
            if (data339 && typeof data339 == "object" && !Array.isArray(data339)) {
              for (const key54 in data339) {
                if (!(key54 === "position" || key54 === "spindle" || key54 === "coolant" || key54 === "length-offset")) {
                  const err864 = { instancePath: instancePath + "/machine/measure-effects", schemaPath: "#/properties/machine/properties/measure-effects/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key54 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err864];
                  } else {
                    vErrors.push(err864);
                  }
                  errors++;
                }
              }
              if (data339.position !== void 0) {
                let data340 = data339.position;
                if (typeof data340 !== "string") {
                  const err865 = { instancePath: instancePath + "/machine/measure-effects/position", schemaPath: "#/properties/machine/properties/measure-effects/properties/position/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err865];
                  } else {
                    vErrors.push(err865);
                  }
                  errors++;
                }
                if (!(data340 === "unchanged" || data340 === "unknown" || data340 === "swap-height")) {
                  const err866 = { instancePath: instancePath + "/machine/measure-effects/position", schemaPath: "#/properties/machine/properties/measure-effects/properties/position/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties["measure-effects"].properties.position.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err866];
                  } else {
                    vErrors.push(err866);
                  }
                  errors++;
                }
              }
              if (data339.spindle !== void 0) {
                let data341 = data339.spindle;
                if (typeof data341 !== "string") {
                  const err867 = { instancePath: instancePath + "/machine/measure-effects/spindle", schemaPath: "#/properties/machine/properties/measure-effects/properties/spindle/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err867];
                  } else {
                    vErrors.push(err867);
                  }
                  errors++;
                }
                if (!(data341 === "unchanged" || data341 === "stopped")) {
                  const err868 = { instancePath: instancePath + "/machine/measure-effects/spindle", schemaPath: "#/properties/machine/properties/measure-effects/properties/spindle/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties["measure-effects"].properties.spindle.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err868];
                  } else {
                    vErrors.push(err868);
                  }
                  errors++;
                }
              }
              if (data339.coolant !== void 0) {
                let data342 = data339.coolant;
                if (typeof data342 !== "string") {
                  const err869 = { instancePath: instancePath + "/machine/measure-effects/coolant", schemaPath: "#/properties/machine/properties/measure-effects/properties/coolant/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err869];
                  } else {
                    vErrors.push(err869);
                  }
                  errors++;
                }
                if (!(data342 === "unchanged" || data342 === "off")) {
                  const err870 = { instancePath: instancePath + "/machine/measure-effects/coolant", schemaPath: "#/properties/machine/properties/measure-effects/properties/coolant/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties["measure-effects"].properties.coolant.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err870];
                  } else {
                    vErrors.push(err870);
                  }
                  errors++;
                }
              }
              if (data339["length-offset"] !== void 0) {
                let data343 = data339["length-offset"];
                if (typeof data343 !== "string") {
                  const err871 = { instancePath: instancePath + "/machine/measure-effects/length-offset", schemaPath: "#/properties/machine/properties/measure-effects/properties/length-offset/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err871];
                  } else {
                    vErrors.push(err871);
                  }
                  errors++;
                }
                if (!(data343 === "unchanged" || data343 === "active" || data343 === "cancelled")) {
                  const err872 = { instancePath: instancePath + "/machine/measure-effects/length-offset", schemaPath: "#/properties/machine/properties/measure-effects/properties/length-offset/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties["measure-effects"].properties["length-offset"].enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err872];
                  } else {
                    vErrors.push(err872);
                  }
                  errors++;
                }
              }
            } else {
              const err873 = { instancePath: instancePath + "/machine/measure-effects", schemaPath: "#/properties/machine/properties/measure-effects/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err873];
              } else {
                vErrors.push(err873);
              }
              errors++;
            }
          }
          if (data302.retract !== void 0) {
            let data344 = data302.retract;
            if (data344 && typeof data344 == "object" && !Array.isArray(data344)) {
              for (const key55 in data344) {
                if (!(key55 === "by" || key55 === "z" || key55 === "acts-on" || key55 === "cancel-length-first" || key55 === "intermediate" || key55 === "change-position")) {
                  const err874 = { instancePath: instancePath + "/machine/retract", schemaPath: "#/properties/machine/properties/retract/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key55 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err874];
                  } else {
                    vErrors.push(err874);
                  }
                  errors++;
                }
              }
              if (data344.by !== void 0) {
                let data345 = data344.by;
                if (typeof data345 !== "string") {
                  const err875 = { instancePath: instancePath + "/machine/retract/by", schemaPath: "#/properties/machine/properties/retract/properties/by/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err875];
                  } else {
                    vErrors.push(err875);
                  }
                  errors++;
                }
                if (!(data345 === "machine-move" || data345 === "reference-return" || data345 === "clearance")) {
                  const err876 = { instancePath: instancePath + "/machine/retract/by", schemaPath: "#/properties/machine/properties/retract/properties/by/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties.retract.properties.by.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err876];
                  } else {
                    vErrors.push(err876);
                  }
                  errors++;
                }
              }
              if (data344.z !== void 0) {
                let data346 = data344.z;
                const _errs1041 = errors;
                let valid280 = false;
                const _errs1042 = errors;
                if (typeof data346 == "number" && isFinite(data346)) {
                  if (data346 > 1e6 || isNaN(data346)) {
                    const err877 = { instancePath: instancePath + "/machine/retract/z", schemaPath: "#/$defs/length/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                    if (vErrors === null) {
                      vErrors = [err877];
                    } else {
                      vErrors.push(err877);
                    }
                    errors++;
                  }
                  if (data346 < -1e6 || isNaN(data346)) {
                    const err878 = { instancePath: instancePath + "/machine/retract/z", schemaPath: "#/$defs/length/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: -1e6 }, message: "must be >= -1000000" };
                    if (vErrors === null) {
                      vErrors = [err878];
                    } else {
                      vErrors.push(err878);
                    }
                    errors++;
                  }
                } else {
                  const err879 = { instancePath: instancePath + "/machine/retract/z", schemaPath: "#/$defs/length/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                  if (vErrors === null) {
                    vErrors = [err879];
                  } else {
                    vErrors.push(err879);
                  }
                  errors++;
                }
                var _valid32 = _errs1042 === errors;
                valid280 = valid280 || _valid32;
                const _errs1044 = errors;
                if (typeof data346 === "string") {
                  if (!pattern25.test(data346)) {
                    const err880 = { instancePath: instancePath + "/machine/retract/z", schemaPath: "#/$defs/length/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }, message: 'must match pattern "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$"' };
                    if (vErrors === null) {
                      vErrors = [err880];
                    } else {
                      vErrors.push(err880);
                    }
                    errors++;
                  }
                } else {
                  const err881 = { instancePath: instancePath + "/machine/retract/z", schemaPath: "#/$defs/length/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err881];
                  } else {
                    vErrors.push(err881);
                  }
                  errors++;
                }
                var _valid32 = _errs1044 === errors;
                valid280 = valid280 || _valid32;
                if (!valid280) {
                  const err882 = { instancePath: instancePath + "/machine/retract/z", schemaPath: "#/$defs/length/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err882];
                  } else {
                    vErrors.push(err882);
                  }
                  errors++;
                } else {
                  errors = _errs1041;
                  if (vErrors !== null) {
                    if (_errs1041) {
                      vErrors.length = _errs1041;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
              if (data344["acts-on"] !== void 0) {
                let data347 = data344["acts-on"];
                if (typeof data347 !== "string") {
                  const err883 = { instancePath: instancePath + "/machine/retract/acts-on", schemaPath: "#/properties/machine/properties/retract/properties/acts-on/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err883];
                  } else {
                    vErrors.push(err883);
                  }
                  errors++;
                }
                if (!(data347 === "spindle-nose" || data347 === "tool-tip")) {
                  const err884 = { instancePath: instancePath + "/machine/retract/acts-on", schemaPath: "#/properties/machine/properties/retract/properties/acts-on/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties.retract.properties["acts-on"].enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err884];
                  } else {
                    vErrors.push(err884);
                  }
                  errors++;
                }
              }
              if (data344["cancel-length-first"] !== void 0) {
                let data348 = data344["cancel-length-first"];
                if (typeof data348 !== "string") {
                  const err885 = { instancePath: instancePath + "/machine/retract/cancel-length-first", schemaPath: "#/$defs/yesNo/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err885];
                  } else {
                    vErrors.push(err885);
                  }
                  errors++;
                }
                if (!(data348 === "yes" || data348 === "no")) {
                  const err886 = { instancePath: instancePath + "/machine/retract/cancel-length-first", schemaPath: "#/$defs/yesNo/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err886];
                  } else {
                    vErrors.push(err886);
                  }
                  errors++;
                }
              }
              if (data344.intermediate !== void 0) {
                let data349 = data344.intermediate;
                if (typeof data349 !== "string") {
                  const err887 = { instancePath: instancePath + "/machine/retract/intermediate", schemaPath: "#/properties/machine/properties/retract/properties/intermediate/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err887];
                  } else {
                    vErrors.push(err887);
                  }
                  errors++;
                }
                if (!(data349 === "none" || data349 === "incremental-zero")) {
                  const err888 = { instancePath: instancePath + "/machine/retract/intermediate", schemaPath: "#/properties/machine/properties/retract/properties/intermediate/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties.retract.properties.intermediate.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err888];
                  } else {
                    vErrors.push(err888);
                  }
                  errors++;
                }
              }
              if (data344["change-position"] !== void 0) {
                if (!validate29(data344["change-position"], { instancePath: instancePath + "/machine/retract/change-position", parentData: data344, parentDataProperty: "change-position", rootData, dynamicAnchors })) {
                  vErrors = vErrors === null ? validate29.errors : vErrors.concat(validate29.errors);
                  errors = vErrors.length;
                }
              }
            } else {
              const err889 = { instancePath: instancePath + "/machine/retract", schemaPath: "#/properties/machine/properties/retract/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err889];
              } else {
                vErrors.push(err889);
              }
              errors++;
            }
          }
          if (data302["length-offset"] !== void 0) {
            let data351 = data302["length-offset"];
            if (data351 && typeof data351 == "object" && !Array.isArray(data351)) {
              for (const key56 in data351) {
                if (!(key56 === "form" || key56 === "select-moves" || key56 === "cancel-moves")) {
                  const err890 = { instancePath: instancePath + "/machine/length-offset", schemaPath: "#/properties/machine/properties/length-offset/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key56 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err890];
                  } else {
                    vErrors.push(err890);
                  }
                  errors++;
                }
              }
              if (data351.form !== void 0) {
                let data352 = data351.form;
                if (typeof data352 !== "string") {
                  const err891 = { instancePath: instancePath + "/machine/length-offset/form", schemaPath: "#/properties/machine/properties/length-offset/properties/form/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err891];
                  } else {
                    vErrors.push(err891);
                  }
                  errors++;
                }
                if (!(data352 === "with-first-z" || data352 === "own-block" || data352 === "in-tool-word" || data352 === "none")) {
                  const err892 = { instancePath: instancePath + "/machine/length-offset/form", schemaPath: "#/properties/machine/properties/length-offset/properties/form/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties["length-offset"].properties.form.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err892];
                  } else {
                    vErrors.push(err892);
                  }
                  errors++;
                }
              }
              if (data351["select-moves"] !== void 0) {
                let data353 = data351["select-moves"];
                if (typeof data353 !== "string") {
                  const err893 = { instancePath: instancePath + "/machine/length-offset/select-moves", schemaPath: "#/$defs/yesNo/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err893];
                  } else {
                    vErrors.push(err893);
                  }
                  errors++;
                }
                if (!(data353 === "yes" || data353 === "no")) {
                  const err894 = { instancePath: instancePath + "/machine/length-offset/select-moves", schemaPath: "#/$defs/yesNo/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err894];
                  } else {
                    vErrors.push(err894);
                  }
                  errors++;
                }
              }
              if (data351["cancel-moves"] !== void 0) {
                let data354 = data351["cancel-moves"];
                if (typeof data354 !== "string") {
                  const err895 = { instancePath: instancePath + "/machine/length-offset/cancel-moves", schemaPath: "#/$defs/yesNo/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err895];
                  } else {
                    vErrors.push(err895);
                  }
                  errors++;
                }
                if (!(data354 === "yes" || data354 === "no")) {
                  const err896 = { instancePath: instancePath + "/machine/length-offset/cancel-moves", schemaPath: "#/$defs/yesNo/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err896];
                  } else {
                    vErrors.push(err896);
                  }
                  errors++;
                }
              }
            } else {
              const err897 = { instancePath: instancePath + "/machine/length-offset", schemaPath: "#/properties/machine/properties/length-offset/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err897];
              } else {
                vErrors.push(err897);
              }
              errors++;
            }
          }
          if (data302.lengths !== void 0) {
            let data355 = data302.lengths;
            if (typeof data355 !== "string") {
              const err898 = { instancePath: instancePath + "/machine/lengths", schemaPath: "#/properties/machine/properties/lengths/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err898];
              } else {
                vErrors.push(err898);
              }
              errors++;
            }
            if (!(data355 === "table" || data355 === "measured" || data355 === "operator")) {
              const err899 = { instancePath: instancePath + "/machine/lengths", schemaPath: "#/properties/machine/properties/lengths/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties.lengths.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err899];
              } else {
                vErrors.push(err899);
              }
              errors++;
            }
          }
          if (data302.drawbar !== void 0) {
            let data356 = data302.drawbar;
            const _errs1068 = errors;
            let valid285 = false;
            const _errs1069 = errors;
            if (typeof data356 !== "string") {
              const err900 = { instancePath: instancePath + "/machine/drawbar", schemaPath: "#/properties/machine/properties/drawbar/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err900];
              } else {
                vErrors.push(err900);
              }
              errors++;
            }
            if ("none" !== data356) {
              const err901 = { instancePath: instancePath + "/machine/drawbar", schemaPath: "#/properties/machine/properties/drawbar/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
              if (vErrors === null) {
                vErrors = [err901];
              } else {
                vErrors.push(err901);
              }
              errors++;
            }
            var _valid33 = _errs1069 === errors;
            valid285 = valid285 || _valid33;
            const _errs1071 = errors;
            if (data356 && typeof data356 == "object" && !Array.isArray(data356)) {
              for (const key57 in data356) {
                if (!(key57 === "travels" || key57 === "taper-air")) {
                  const err902 = { instancePath: instancePath + "/machine/drawbar", schemaPath: "#/properties/machine/properties/drawbar/anyOf/1/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key57 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err902];
                  } else {
                    vErrors.push(err902);
                  }
                  errors++;
                }
              }
              if (data356.travels !== void 0) {
                let data357 = data356.travels;
                if (typeof data357 !== "string") {
                  const err903 = { instancePath: instancePath + "/machine/drawbar/travels", schemaPath: "#/properties/machine/properties/drawbar/anyOf/1/properties/travels/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err903];
                  } else {
                    vErrors.push(err903);
                  }
                  errors++;
                }
                if (!(data357 === "clamped" || data357 === "released")) {
                  const err904 = { instancePath: instancePath + "/machine/drawbar/travels", schemaPath: "#/properties/machine/properties/drawbar/anyOf/1/properties/travels/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties.drawbar.anyOf[1].properties.travels.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err904];
                  } else {
                    vErrors.push(err904);
                  }
                  errors++;
                }
              }
              if (data356["taper-air"] !== void 0) {
                let data358 = data356["taper-air"];
                if (typeof data358 !== "string") {
                  const err905 = { instancePath: instancePath + "/machine/drawbar/taper-air", schemaPath: "#/$defs/yesNo/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err905];
                  } else {
                    vErrors.push(err905);
                  }
                  errors++;
                }
                if (!(data358 === "yes" || data358 === "no")) {
                  const err906 = { instancePath: instancePath + "/machine/drawbar/taper-air", schemaPath: "#/$defs/yesNo/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err906];
                  } else {
                    vErrors.push(err906);
                  }
                  errors++;
                }
              }
            } else {
              const err907 = { instancePath: instancePath + "/machine/drawbar", schemaPath: "#/properties/machine/properties/drawbar/anyOf/1/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err907];
              } else {
                vErrors.push(err907);
              }
              errors++;
            }
            var _valid33 = _errs1071 === errors;
            valid285 = valid285 || _valid33;
            if (!valid285) {
              const err908 = { instancePath: instancePath + "/machine/drawbar", schemaPath: "#/properties/machine/properties/drawbar/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err908];
              } else {
                vErrors.push(err908);
              }
              errors++;
            } else {
              errors = _errs1068;
              if (vErrors !== null) {
                if (_errs1068) {
                  vErrors.length = _errs1068;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data302.rack !== void 0) {
            let data359 = data302.rack;
            const _errs1080 = errors;
            let valid288 = false;
            const _errs1081 = errors;
            if (typeof data359 !== "string") {
              const err909 = { instancePath: instancePath + "/machine/rack", schemaPath: "#/properties/machine/properties/rack/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err909];
              } else {
                vErrors.push(err909);
              }
              errors++;
            }
            if ("none" !== data359) {
              const err910 = { instancePath: instancePath + "/machine/rack", schemaPath: "#/properties/machine/properties/rack/anyOf/0/const", keyword: "const", params: { allowedValue: "none" }, message: "must be equal to constant" };
              if (vErrors === null) {
                vErrors = [err910];
              } else {
                vErrors.push(err910);
              }
              errors++;
            }
            var _valid34 = _errs1081 === errors;
            valid288 = valid288 || _valid34;
            const _errs1083 = errors;
            if (data359 && typeof data359 == "object" && !Array.isArray(data359)) {
              for (const key58 in data359) {
                if (!func1.call(schema31.properties.machine.properties.rack.anyOf[1].properties, key58)) {
                  const err911 = { instancePath: instancePath + "/machine/rack", schemaPath: "#/properties/machine/properties/rack/anyOf/1/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key58 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err911];
                  } else {
                    vErrors.push(err911);
                  }
                  errors++;
                }
              }
              if (data359.style !== void 0) {
                let data360 = data359.style;
                if (typeof data360 !== "string") {
                  const err912 = { instancePath: instancePath + "/machine/rack/style", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/style/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err912];
                  } else {
                    vErrors.push(err912);
                  }
                  errors++;
                }
                if (!(data360 === "drop-in" || data360 === "slide-in")) {
                  const err913 = { instancePath: instancePath + "/machine/rack/style", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/style/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties.rack.anyOf[1].properties.style.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err913];
                  } else {
                    vErrors.push(err913);
                  }
                  errors++;
                }
              }
              if (data359["clear-z"] !== void 0) {
                let data361 = data359["clear-z"];
                const _errs1090 = errors;
                let valid291 = false;
                const _errs1091 = errors;
                if (typeof data361 == "number" && isFinite(data361)) {
                  if (data361 > 1e6 || isNaN(data361)) {
                    const err914 = { instancePath: instancePath + "/machine/rack/clear-z", schemaPath: "#/$defs/length/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                    if (vErrors === null) {
                      vErrors = [err914];
                    } else {
                      vErrors.push(err914);
                    }
                    errors++;
                  }
                  if (data361 < -1e6 || isNaN(data361)) {
                    const err915 = { instancePath: instancePath + "/machine/rack/clear-z", schemaPath: "#/$defs/length/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: -1e6 }, message: "must be >= -1000000" };
                    if (vErrors === null) {
                      vErrors = [err915];
                    } else {
                      vErrors.push(err915);
                    }
                    errors++;
                  }
                } else {
                  const err916 = { instancePath: instancePath + "/machine/rack/clear-z", schemaPath: "#/$defs/length/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                  if (vErrors === null) {
                    vErrors = [err916];
                  } else {
                    vErrors.push(err916);
                  }
                  errors++;
                }
                var _valid35 = _errs1091 === errors;
                valid291 = valid291 || _valid35;
                const _errs1093 = errors;
                if (typeof data361 === "string") {
                  if (!pattern25.test(data361)) {
                    const err917 = { instancePath: instancePath + "/machine/rack/clear-z", schemaPath: "#/$defs/length/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }, message: 'must match pattern "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$"' };
                    if (vErrors === null) {
                      vErrors = [err917];
                    } else {
                      vErrors.push(err917);
                    }
                    errors++;
                  }
                } else {
                  const err918 = { instancePath: instancePath + "/machine/rack/clear-z", schemaPath: "#/$defs/length/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err918];
                  } else {
                    vErrors.push(err918);
                  }
                  errors++;
                }
                var _valid35 = _errs1093 === errors;
                valid291 = valid291 || _valid35;
                if (!valid291) {
                  const err919 = { instancePath: instancePath + "/machine/rack/clear-z", schemaPath: "#/$defs/length/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err919];
                  } else {
                    vErrors.push(err919);
                  }
                  errors++;
                } else {
                  errors = _errs1090;
                  if (vErrors !== null) {
                    if (_errs1090) {
                      vErrors.length = _errs1090;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
              if (data359["pocket-z"] !== void 0) {
                let data362 = data359["pocket-z"];
                const _errs1097 = errors;
                let valid293 = false;
                const _errs1098 = errors;
                if (typeof data362 == "number" && isFinite(data362)) {
                  if (data362 > 1e6 || isNaN(data362)) {
                    const err920 = { instancePath: instancePath + "/machine/rack/pocket-z", schemaPath: "#/$defs/length/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                    if (vErrors === null) {
                      vErrors = [err920];
                    } else {
                      vErrors.push(err920);
                    }
                    errors++;
                  }
                  if (data362 < -1e6 || isNaN(data362)) {
                    const err921 = { instancePath: instancePath + "/machine/rack/pocket-z", schemaPath: "#/$defs/length/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: -1e6 }, message: "must be >= -1000000" };
                    if (vErrors === null) {
                      vErrors = [err921];
                    } else {
                      vErrors.push(err921);
                    }
                    errors++;
                  }
                } else {
                  const err922 = { instancePath: instancePath + "/machine/rack/pocket-z", schemaPath: "#/$defs/length/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                  if (vErrors === null) {
                    vErrors = [err922];
                  } else {
                    vErrors.push(err922);
                  }
                  errors++;
                }
                var _valid36 = _errs1098 === errors;
                valid293 = valid293 || _valid36;
                const _errs1100 = errors;
                if (typeof data362 === "string") {
                  if (!pattern25.test(data362)) {
                    const err923 = { instancePath: instancePath + "/machine/rack/pocket-z", schemaPath: "#/$defs/length/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }, message: 'must match pattern "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$"' };
                    if (vErrors === null) {
                      vErrors = [err923];
                    } else {
                      vErrors.push(err923);
                    }
                    errors++;
                  }
                } else {
                  const err924 = { instancePath: instancePath + "/machine/rack/pocket-z", schemaPath: "#/$defs/length/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err924];
                  } else {
                    vErrors.push(err924);
                  }
                  errors++;
                }
                var _valid36 = _errs1100 === errors;
                valid293 = valid293 || _valid36;
                if (!valid293) {
                  const err925 = { instancePath: instancePath + "/machine/rack/pocket-z", schemaPath: "#/$defs/length/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err925];
                  } else {
                    vErrors.push(err925);
                  }
                  errors++;
                } else {
                  errors = _errs1097;
                  if (vErrors !== null) {
                    if (_errs1097) {
                      vErrors.length = _errs1097;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
              if (data359["descend-from"] !== void 0) {
                let data363 = data359["descend-from"];
                const _errs1104 = errors;
                let valid295 = false;
                const _errs1105 = errors;
                if (typeof data363 == "number" && isFinite(data363)) {
                  if (data363 > 1e6 || isNaN(data363)) {
                    const err926 = { instancePath: instancePath + "/machine/rack/descend-from", schemaPath: "#/$defs/length/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                    if (vErrors === null) {
                      vErrors = [err926];
                    } else {
                      vErrors.push(err926);
                    }
                    errors++;
                  }
                  if (data363 < -1e6 || isNaN(data363)) {
                    const err927 = { instancePath: instancePath + "/machine/rack/descend-from", schemaPath: "#/$defs/length/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: -1e6 }, message: "must be >= -1000000" };
                    if (vErrors === null) {
                      vErrors = [err927];
                    } else {
                      vErrors.push(err927);
                    }
                    errors++;
                  }
                } else {
                  const err928 = { instancePath: instancePath + "/machine/rack/descend-from", schemaPath: "#/$defs/length/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                  if (vErrors === null) {
                    vErrors = [err928];
                  } else {
                    vErrors.push(err928);
                  }
                  errors++;
                }
                var _valid37 = _errs1105 === errors;
                valid295 = valid295 || _valid37;
                const _errs1107 = errors;
                if (typeof data363 === "string") {
                  if (!pattern25.test(data363)) {
                    const err929 = { instancePath: instancePath + "/machine/rack/descend-from", schemaPath: "#/$defs/length/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }, message: 'must match pattern "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$"' };
                    if (vErrors === null) {
                      vErrors = [err929];
                    } else {
                      vErrors.push(err929);
                    }
                    errors++;
                  }
                } else {
                  const err930 = { instancePath: instancePath + "/machine/rack/descend-from", schemaPath: "#/$defs/length/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err930];
                  } else {
                    vErrors.push(err930);
                  }
                  errors++;
                }
                var _valid37 = _errs1107 === errors;
                valid295 = valid295 || _valid37;
                if (!valid295) {
                  const err931 = { instancePath: instancePath + "/machine/rack/descend-from", schemaPath: "#/$defs/length/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err931];
                  } else {
                    vErrors.push(err931);
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
              if (data359["descend-feed"] !== void 0) {
                let data364 = data359["descend-feed"];
                const _errs1111 = errors;
                let valid297 = false;
                const _errs1112 = errors;
                if (typeof data364 == "number" && isFinite(data364)) {
                  if (data364 > 1e6 || isNaN(data364)) {
                    const err932 = { instancePath: instancePath + "/machine/rack/descend-feed", schemaPath: "#/$defs/feed/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                    if (vErrors === null) {
                      vErrors = [err932];
                    } else {
                      vErrors.push(err932);
                    }
                    errors++;
                  }
                  if (data364 <= 0 || isNaN(data364)) {
                    const err933 = { instancePath: instancePath + "/machine/rack/descend-feed", schemaPath: "#/$defs/feed/anyOf/0/exclusiveMinimum", keyword: "exclusiveMinimum", params: { comparison: ">", limit: 0 }, message: "must be > 0" };
                    if (vErrors === null) {
                      vErrors = [err933];
                    } else {
                      vErrors.push(err933);
                    }
                    errors++;
                  }
                } else {
                  const err934 = { instancePath: instancePath + "/machine/rack/descend-feed", schemaPath: "#/$defs/feed/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                  if (vErrors === null) {
                    vErrors = [err934];
                  } else {
                    vErrors.push(err934);
                  }
                  errors++;
                }
                var _valid38 = _errs1112 === errors;
                valid297 = valid297 || _valid38;
                const _errs1114 = errors;
                if (typeof data364 === "string") {
                  if (!pattern9.test(data364)) {
                    const err935 = { instancePath: instancePath + "/machine/rack/descend-feed", schemaPath: "#/$defs/feed/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^\\d{1,5}(\\.\\d{1,5})? (mm|in)/min$" }, message: 'must match pattern "^\\d{1,5}(\\.\\d{1,5})? (mm|in)/min$"' };
                    if (vErrors === null) {
                      vErrors = [err935];
                    } else {
                      vErrors.push(err935);
                    }
                    errors++;
                  }
                } else {
                  const err936 = { instancePath: instancePath + "/machine/rack/descend-feed", schemaPath: "#/$defs/feed/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err936];
                  } else {
                    vErrors.push(err936);
                  }
                  errors++;
                }
                var _valid38 = _errs1114 === errors;
                valid297 = valid297 || _valid38;
                if (!valid297) {
                  const err937 = { instancePath: instancePath + "/machine/rack/descend-feed", schemaPath: "#/$defs/feed/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err937];
                  } else {
                    vErrors.push(err937);
                  }
                  errors++;
                } else {
                  errors = _errs1111;
                  if (vErrors !== null) {
                    if (_errs1111) {
                      vErrors.length = _errs1111;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
              if (data359.pockets !== void 0) {
                let data365 = data359.pockets;
                const _errs1117 = errors;
                let valid298 = false;
                const _errs1118 = errors;
                if (data365 && typeof data365 == "object" && !Array.isArray(data365)) {
                  for (const key59 in data365) {
                    if (!(key59 === "first" || key59 === "pitch" || key59 === "count")) {
                      const err938 = { instancePath: instancePath + "/machine/rack/pockets", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/pockets/anyOf/0/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key59 }, message: "must NOT have additional properties" };
                      if (vErrors === null) {
                        vErrors = [err938];
                      } else {
                        vErrors.push(err938);
                      }
                      errors++;
                    }
                  }
                  if (data365.first !== void 0) {
                    if (!validate31(data365.first, { instancePath: instancePath + "/machine/rack/pockets/first", parentData: data365, parentDataProperty: "first", rootData, dynamicAnchors })) {
                      vErrors = vErrors === null ? validate31.errors : vErrors.concat(validate31.errors);
                      errors = vErrors.length;
                    }
                  }
                  if (data365.pitch !== void 0) {
                    if (!validate31(data365.pitch, { instancePath: instancePath + "/machine/rack/pockets/pitch", parentData: data365, parentDataProperty: "pitch", rootData, dynamicAnchors })) {
                      vErrors = vErrors === null ? validate31.errors : vErrors.concat(validate31.errors);
                      errors = vErrors.length;
                    }
                  }
                  if (data365.count !== void 0) {
                    let data368 = data365.count;
                    if (!(typeof data368 == "number" && (!(data368 % 1) && !isNaN(data368)) && isFinite(data368))) {
                      const err939 = { instancePath: instancePath + "/machine/rack/pockets/count", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/pockets/anyOf/0/properties/count/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                      if (vErrors === null) {
                        vErrors = [err939];
                      } else {
                        vErrors.push(err939);
                      }
                      errors++;
                    }
                    if (typeof data368 == "number" && isFinite(data368)) {
                      if (data368 > 200 || isNaN(data368)) {
                        const err940 = { instancePath: instancePath + "/machine/rack/pockets/count", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/pockets/anyOf/0/properties/count/maximum", keyword: "maximum", params: { comparison: "<=", limit: 200 }, message: "must be <= 200" };
                        if (vErrors === null) {
                          vErrors = [err940];
                        } else {
                          vErrors.push(err940);
                        }
                        errors++;
                      }
                      if (data368 < 1 || isNaN(data368)) {
                        const err941 = { instancePath: instancePath + "/machine/rack/pockets/count", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/pockets/anyOf/0/properties/count/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                        if (vErrors === null) {
                          vErrors = [err941];
                        } else {
                          vErrors.push(err941);
                        }
                        errors++;
                      }
                    }
                  }
                } else {
                  const err942 = { instancePath: instancePath + "/machine/rack/pockets", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/pockets/anyOf/0/type", keyword: "type", params: { type: "object" }, message: "must be object" };
                  if (vErrors === null) {
                    vErrors = [err942];
                  } else {
                    vErrors.push(err942);
                  }
                  errors++;
                }
                var _valid39 = _errs1118 === errors;
                valid298 = valid298 || _valid39;
                const _errs1125 = errors;
                if (Array.isArray(data365)) {
                  if (data365.length > 200) {
                    const err943 = { instancePath: instancePath + "/machine/rack/pockets", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/pockets/anyOf/1/maxItems", keyword: "maxItems", params: { limit: 200 }, message: "must NOT have more than 200 items" };
                    if (vErrors === null) {
                      vErrors = [err943];
                    } else {
                      vErrors.push(err943);
                    }
                    errors++;
                  }
                  if (data365.length < 1) {
                    const err944 = { instancePath: instancePath + "/machine/rack/pockets", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/pockets/anyOf/1/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items" };
                    if (vErrors === null) {
                      vErrors = [err944];
                    } else {
                      vErrors.push(err944);
                    }
                    errors++;
                  }
                  const len10 = data365.length;
                  for (let i12 = 0; i12 < len10; i12++) {
                    if (!validate31(data365[i12], { instancePath: instancePath + "/machine/rack/pockets/" + i12, parentData: data365, parentDataProperty: i12, rootData, dynamicAnchors })) {
                      vErrors = vErrors === null ? validate31.errors : vErrors.concat(validate31.errors);
                      errors = vErrors.length;
                    }
                  }
                } else {
                  const err945 = { instancePath: instancePath + "/machine/rack/pockets", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/pockets/anyOf/1/type", keyword: "type", params: { type: "array" }, message: "must be array" };
                  if (vErrors === null) {
                    vErrors = [err945];
                  } else {
                    vErrors.push(err945);
                  }
                  errors++;
                }
                var _valid39 = _errs1125 === errors;
                valid298 = valid298 || _valid39;
                if (!valid298) {
                  const err946 = { instancePath: instancePath + "/machine/rack/pockets", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/pockets/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err946];
                  } else {
                    vErrors.push(err946);
                  }
                  errors++;
                } else {
                  errors = _errs1117;
                  if (vErrors !== null) {
                    if (_errs1117) {
                      vErrors.length = _errs1117;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
              if (data359.zone !== void 0) {
                let data370 = data359.zone;
                if (data370 && typeof data370 == "object" && !Array.isArray(data370)) {
                  for (const key60 in data370) {
                    if (!(key60 === "min" || key60 === "max")) {
                      const err947 = { instancePath: instancePath + "/machine/rack/zone", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/zone/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key60 }, message: "must NOT have additional properties" };
                      if (vErrors === null) {
                        vErrors = [err947];
                      } else {
                        vErrors.push(err947);
                      }
                      errors++;
                    }
                  }
                  if (data370.min !== void 0) {
                    if (!validate29(data370.min, { instancePath: instancePath + "/machine/rack/zone/min", parentData: data370, parentDataProperty: "min", rootData, dynamicAnchors })) {
                      vErrors = vErrors === null ? validate29.errors : vErrors.concat(validate29.errors);
                      errors = vErrors.length;
                    }
                  }
                  if (data370.max !== void 0) {
                    if (!validate29(data370.max, { instancePath: instancePath + "/machine/rack/zone/max", parentData: data370, parentDataProperty: "max", rootData, dynamicAnchors })) {
                      vErrors = vErrors === null ? validate29.errors : vErrors.concat(validate29.errors);
                      errors = vErrors.length;
                    }
                  }
                } else {
                  const err948 = { instancePath: instancePath + "/machine/rack/zone", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/zone/type", keyword: "type", params: { type: "object" }, message: "must be object" };
                  if (vErrors === null) {
                    vErrors = [err948];
                  } else {
                    vErrors.push(err948);
                  }
                  errors++;
                }
              }
              if (data359.slide !== void 0) {
                let data373 = data359.slide;
                if (data373 && typeof data373 == "object" && !Array.isArray(data373)) {
                  for (const key61 in data373) {
                    if (!(key61 === "direction" || key61 === "distance" || key61 === "feed")) {
                      const err949 = { instancePath: instancePath + "/machine/rack/slide", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/slide/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key61 }, message: "must NOT have additional properties" };
                      if (vErrors === null) {
                        vErrors = [err949];
                      } else {
                        vErrors.push(err949);
                      }
                      errors++;
                    }
                  }
                  if (data373.direction !== void 0) {
                    let data374 = data373.direction;
                    if (typeof data374 !== "string") {
                      const err950 = { instancePath: instancePath + "/machine/rack/slide/direction", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/slide/properties/direction/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                      if (vErrors === null) {
                        vErrors = [err950];
                      } else {
                        vErrors.push(err950);
                      }
                      errors++;
                    }
                    if (!(data374 === "+x" || data374 === "-x" || data374 === "+y" || data374 === "-y")) {
                      const err951 = { instancePath: instancePath + "/machine/rack/slide/direction", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/slide/properties/direction/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties.rack.anyOf[1].properties.slide.properties.direction.enum }, message: "must be equal to one of the allowed values" };
                      if (vErrors === null) {
                        vErrors = [err951];
                      } else {
                        vErrors.push(err951);
                      }
                      errors++;
                    }
                  }
                  if (data373.distance !== void 0) {
                    let data375 = data373.distance;
                    const _errs1140 = errors;
                    let valid305 = false;
                    const _errs1141 = errors;
                    if (typeof data375 == "number" && isFinite(data375)) {
                      if (data375 > 1e6 || isNaN(data375)) {
                        const err952 = { instancePath: instancePath + "/machine/rack/slide/distance", schemaPath: "#/$defs/length/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                        if (vErrors === null) {
                          vErrors = [err952];
                        } else {
                          vErrors.push(err952);
                        }
                        errors++;
                      }
                      if (data375 < -1e6 || isNaN(data375)) {
                        const err953 = { instancePath: instancePath + "/machine/rack/slide/distance", schemaPath: "#/$defs/length/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: -1e6 }, message: "must be >= -1000000" };
                        if (vErrors === null) {
                          vErrors = [err953];
                        } else {
                          vErrors.push(err953);
                        }
                        errors++;
                      }
                    } else {
                      const err954 = { instancePath: instancePath + "/machine/rack/slide/distance", schemaPath: "#/$defs/length/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                      if (vErrors === null) {
                        vErrors = [err954];
                      } else {
                        vErrors.push(err954);
                      }
                      errors++;
                    }
                    var _valid40 = _errs1141 === errors;
                    valid305 = valid305 || _valid40;
                    const _errs1143 = errors;
                    if (typeof data375 === "string") {
                      if (!pattern25.test(data375)) {
                        const err955 = { instancePath: instancePath + "/machine/rack/slide/distance", schemaPath: "#/$defs/length/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }, message: 'must match pattern "^-?(\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$"' };
                        if (vErrors === null) {
                          vErrors = [err955];
                        } else {
                          vErrors.push(err955);
                        }
                        errors++;
                      }
                    } else {
                      const err956 = { instancePath: instancePath + "/machine/rack/slide/distance", schemaPath: "#/$defs/length/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                      if (vErrors === null) {
                        vErrors = [err956];
                      } else {
                        vErrors.push(err956);
                      }
                      errors++;
                    }
                    var _valid40 = _errs1143 === errors;
                    valid305 = valid305 || _valid40;
                    if (!valid305) {
                      const err957 = { instancePath: instancePath + "/machine/rack/slide/distance", schemaPath: "#/$defs/length/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                      if (vErrors === null) {
                        vErrors = [err957];
                      } else {
                        vErrors.push(err957);
                      }
                      errors++;
                    } else {
                      errors = _errs1140;
                      if (vErrors !== null) {
                        if (_errs1140) {
                          vErrors.length = _errs1140;
                        } else {
                          vErrors = null;
                        }
                      }
                    }
                  }
                  if (data373.feed !== void 0) {
                    let data376 = data373.feed;
                    const _errs1147 = errors;
                    let valid307 = false;
                    const _errs1148 = errors;
                    if (typeof data376 == "number" && isFinite(data376)) {
                      if (data376 > 1e6 || isNaN(data376)) {
                        const err958 = { instancePath: instancePath + "/machine/rack/slide/feed", schemaPath: "#/$defs/feed/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                        if (vErrors === null) {
                          vErrors = [err958];
                        } else {
                          vErrors.push(err958);
                        }
                        errors++;
                      }
                      if (data376 <= 0 || isNaN(data376)) {
                        const err959 = { instancePath: instancePath + "/machine/rack/slide/feed", schemaPath: "#/$defs/feed/anyOf/0/exclusiveMinimum", keyword: "exclusiveMinimum", params: { comparison: ">", limit: 0 }, message: "must be > 0" };
                        if (vErrors === null) {
                          vErrors = [err959];
                        } else {
                          vErrors.push(err959);
                        }
                        errors++;
                      }
                    } else {
                      const err960 = { instancePath: instancePath + "/machine/rack/slide/feed", schemaPath: "#/$defs/feed/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                      if (vErrors === null) {
                        vErrors = [err960];
                      } else {
                        vErrors.push(err960);
                      }
                      errors++;
                    }
                    var _valid41 = _errs1148 === errors;
                    valid307 = valid307 || _valid41;
                    const _errs1150 = errors;
                    if (typeof data376 === "string") {
                      if (!pattern9.test(data376)) {
                        const err961 = { instancePath: instancePath + "/machine/rack/slide/feed", schemaPath: "#/$defs/feed/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^\\d{1,5}(\\.\\d{1,5})? (mm|in)/min$" }, message: 'must match pattern "^\\d{1,5}(\\.\\d{1,5})? (mm|in)/min$"' };
                        if (vErrors === null) {
                          vErrors = [err961];
                        } else {
                          vErrors.push(err961);
                        }
                        errors++;
                      }
                    } else {
                      const err962 = { instancePath: instancePath + "/machine/rack/slide/feed", schemaPath: "#/$defs/feed/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                      if (vErrors === null) {
                        vErrors = [err962];
                      } else {
                        vErrors.push(err962);
                      }
                      errors++;
                    }
                    var _valid41 = _errs1150 === errors;
                    valid307 = valid307 || _valid41;
                    if (!valid307) {
                      const err963 = { instancePath: instancePath + "/machine/rack/slide/feed", schemaPath: "#/$defs/feed/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                      if (vErrors === null) {
                        vErrors = [err963];
                      } else {
                        vErrors.push(err963);
                      }
                      errors++;
                    } else {
                      errors = _errs1147;
                      if (vErrors !== null) {
                        if (_errs1147) {
                          vErrors.length = _errs1147;
                        } else {
                          vErrors = null;
                        }
                      }
                    }
                  }
                } else {
                  const err964 = { instancePath: instancePath + "/machine/rack/slide", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/slide/type", keyword: "type", params: { type: "object" }, message: "must be object" };
                  if (vErrors === null) {
                    vErrors = [err964];
                  } else {
                    vErrors.push(err964);
                  }
                  errors++;
                }
              }
              if (data359.widest !== void 0) {
                let data377 = data359.widest;
                const _errs1154 = errors;
                let valid309 = false;
                const _errs1155 = errors;
                if (typeof data377 == "number" && isFinite(data377)) {
                  if (data377 > 1e6 || isNaN(data377)) {
                    const err965 = { instancePath: instancePath + "/machine/rack/widest", schemaPath: "#/$defs/lengthOrNone/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                    if (vErrors === null) {
                      vErrors = [err965];
                    } else {
                      vErrors.push(err965);
                    }
                    errors++;
                  }
                  if (data377 < 0 || isNaN(data377)) {
                    const err966 = { instancePath: instancePath + "/machine/rack/widest", schemaPath: "#/$defs/lengthOrNone/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err966];
                    } else {
                      vErrors.push(err966);
                    }
                    errors++;
                  }
                } else {
                  const err967 = { instancePath: instancePath + "/machine/rack/widest", schemaPath: "#/$defs/lengthOrNone/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                  if (vErrors === null) {
                    vErrors = [err967];
                  } else {
                    vErrors.push(err967);
                  }
                  errors++;
                }
                var _valid42 = _errs1155 === errors;
                valid309 = valid309 || _valid42;
                const _errs1157 = errors;
                if (typeof data377 === "string") {
                  if (!pattern23.test(data377)) {
                    const err968 = { instancePath: instancePath + "/machine/rack/widest", schemaPath: "#/$defs/lengthOrNone/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^(none|\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }, message: 'must match pattern "^(none|\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$"' };
                    if (vErrors === null) {
                      vErrors = [err968];
                    } else {
                      vErrors.push(err968);
                    }
                    errors++;
                  }
                } else {
                  const err969 = { instancePath: instancePath + "/machine/rack/widest", schemaPath: "#/$defs/lengthOrNone/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err969];
                  } else {
                    vErrors.push(err969);
                  }
                  errors++;
                }
                var _valid42 = _errs1157 === errors;
                valid309 = valid309 || _valid42;
                if (!valid309) {
                  const err970 = { instancePath: instancePath + "/machine/rack/widest", schemaPath: "#/$defs/lengthOrNone/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err970];
                  } else {
                    vErrors.push(err970);
                  }
                  errors++;
                } else {
                  errors = _errs1154;
                  if (vErrors !== null) {
                    if (_errs1154) {
                      vErrors.length = _errs1154;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
              if (data359.longest !== void 0) {
                let data378 = data359.longest;
                const _errs1161 = errors;
                let valid311 = false;
                const _errs1162 = errors;
                if (typeof data378 == "number" && isFinite(data378)) {
                  if (data378 > 1e6 || isNaN(data378)) {
                    const err971 = { instancePath: instancePath + "/machine/rack/longest", schemaPath: "#/$defs/lengthOrNone/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                    if (vErrors === null) {
                      vErrors = [err971];
                    } else {
                      vErrors.push(err971);
                    }
                    errors++;
                  }
                  if (data378 < 0 || isNaN(data378)) {
                    const err972 = { instancePath: instancePath + "/machine/rack/longest", schemaPath: "#/$defs/lengthOrNone/anyOf/0/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                    if (vErrors === null) {
                      vErrors = [err972];
                    } else {
                      vErrors.push(err972);
                    }
                    errors++;
                  }
                } else {
                  const err973 = { instancePath: instancePath + "/machine/rack/longest", schemaPath: "#/$defs/lengthOrNone/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                  if (vErrors === null) {
                    vErrors = [err973];
                  } else {
                    vErrors.push(err973);
                  }
                  errors++;
                }
                var _valid43 = _errs1162 === errors;
                valid311 = valid311 || _valid43;
                const _errs1164 = errors;
                if (typeof data378 === "string") {
                  if (!pattern23.test(data378)) {
                    const err974 = { instancePath: instancePath + "/machine/rack/longest", schemaPath: "#/$defs/lengthOrNone/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^(none|\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$" }, message: 'must match pattern "^(none|\\d{1,6}(\\.\\d{1,7})? mm|\\d{1,4}(\\.\\d{1,6})? in)$"' };
                    if (vErrors === null) {
                      vErrors = [err974];
                    } else {
                      vErrors.push(err974);
                    }
                    errors++;
                  }
                } else {
                  const err975 = { instancePath: instancePath + "/machine/rack/longest", schemaPath: "#/$defs/lengthOrNone/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err975];
                  } else {
                    vErrors.push(err975);
                  }
                  errors++;
                }
                var _valid43 = _errs1164 === errors;
                valid311 = valid311 || _valid43;
                if (!valid311) {
                  const err976 = { instancePath: instancePath + "/machine/rack/longest", schemaPath: "#/$defs/lengthOrNone/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err976];
                  } else {
                    vErrors.push(err976);
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
              if (data359.cover !== void 0) {
                let data379 = data359.cover;
                if (typeof data379 !== "string") {
                  const err977 = { instancePath: instancePath + "/machine/rack/cover", schemaPath: "#/$defs/yesNo/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err977];
                  } else {
                    vErrors.push(err977);
                  }
                  errors++;
                }
                if (!(data379 === "yes" || data379 === "no")) {
                  const err978 = { instancePath: instancePath + "/machine/rack/cover", schemaPath: "#/$defs/yesNo/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err978];
                  } else {
                    vErrors.push(err978);
                  }
                  errors++;
                }
              }
              if (data359["at-end"] !== void 0) {
                let data380 = data359["at-end"];
                if (data380 && typeof data380 == "object" && !Array.isArray(data380)) {
                  for (const key62 in data380) {
                    if (!(key62 === "tool")) {
                      const err979 = { instancePath: instancePath + "/machine/rack/at-end", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/at-end/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key62 }, message: "must NOT have additional properties" };
                      if (vErrors === null) {
                        vErrors = [err979];
                      } else {
                        vErrors.push(err979);
                      }
                      errors++;
                    }
                  }
                  if (data380.tool !== void 0) {
                    let data381 = data380.tool;
                    if (typeof data381 !== "string") {
                      const err980 = { instancePath: instancePath + "/machine/rack/at-end/tool", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/at-end/properties/tool/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                      if (vErrors === null) {
                        vErrors = [err980];
                      } else {
                        vErrors.push(err980);
                      }
                      errors++;
                    }
                    if (!(data381 === "return" || data381 === "keep")) {
                      const err981 = { instancePath: instancePath + "/machine/rack/at-end/tool", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/at-end/properties/tool/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties.rack.anyOf[1].properties["at-end"].properties.tool.enum }, message: "must be equal to one of the allowed values" };
                      if (vErrors === null) {
                        vErrors = [err981];
                      } else {
                        vErrors.push(err981);
                      }
                      errors++;
                    }
                  }
                } else {
                  const err982 = { instancePath: instancePath + "/machine/rack/at-end", schemaPath: "#/properties/machine/properties/rack/anyOf/1/properties/at-end/type", keyword: "type", params: { type: "object" }, message: "must be object" };
                  if (vErrors === null) {
                    vErrors = [err982];
                  } else {
                    vErrors.push(err982);
                  }
                  errors++;
                }
              }
            } else {
              const err983 = { instancePath: instancePath + "/machine/rack", schemaPath: "#/properties/machine/properties/rack/anyOf/1/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err983];
              } else {
                vErrors.push(err983);
              }
              errors++;
            }
            var _valid34 = _errs1083 === errors;
            valid288 = valid288 || _valid34;
            if (!valid288) {
              const err984 = { instancePath: instancePath + "/machine/rack", schemaPath: "#/properties/machine/properties/rack/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err984];
              } else {
                vErrors.push(err984);
              }
              errors++;
            } else {
              errors = _errs1080;
              if (vErrors !== null) {
                if (_errs1080) {
                  vErrors.length = _errs1080;
                } else {
                  vErrors = null;
                }
              }
            }
          }
          if (data302.park !== void 0) {
            if (!validate31(data302.park, { instancePath: instancePath + "/machine/park", parentData: data302, parentDataProperty: "park", rootData, dynamicAnchors })) {
              vErrors = vErrors === null ? validate31.errors : vErrors.concat(validate31.errors);
              errors = vErrors.length;
            }
          }
          if (data302.outputs !== void 0) {
            let data383 = data302.outputs;
            if (data383 && typeof data383 == "object" && !Array.isArray(data383)) {
              for (const key63 in data383) {
                if (!pattern104.test(key63)) {
                  const err985 = { instancePath: instancePath + "/machine/outputs", schemaPath: "#/properties/machine/properties/outputs/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key63 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err985];
                  } else {
                    vErrors.push(err985);
                  }
                  errors++;
                }
              }
              for (const key64 in data383) {
                if (pattern104.test(key64)) {
                  let data384 = data383[key64];
                  if (data384 && typeof data384 == "object" && !Array.isArray(data384)) {
                    for (const key65 in data384) {
                      if (!(key65 === "number" || key65 === "during")) {
                        const err986 = { instancePath: instancePath + "/machine/outputs/" + key64.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/machine/properties/outputs/patternProperties/%5E%5Ba-z%5D%5Ba-z0-9-%5D%7B0%2C30%7D%24/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key65 }, message: "must NOT have additional properties" };
                        if (vErrors === null) {
                          vErrors = [err986];
                        } else {
                          vErrors.push(err986);
                        }
                        errors++;
                      }
                    }
                    if (data384.number !== void 0) {
                      let data385 = data384.number;
                      if (!(typeof data385 == "number" && (!(data385 % 1) && !isNaN(data385)) && isFinite(data385))) {
                        const err987 = { instancePath: instancePath + "/machine/outputs/" + key64.replace(/~/g, "~0").replace(/\//g, "~1") + "/number", schemaPath: "#/properties/machine/properties/outputs/patternProperties/%5E%5Ba-z%5D%5Ba-z0-9-%5D%7B0%2C30%7D%24/properties/number/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
                        if (vErrors === null) {
                          vErrors = [err987];
                        } else {
                          vErrors.push(err987);
                        }
                        errors++;
                      }
                      if (typeof data385 == "number" && isFinite(data385)) {
                        if (data385 > 9999 || isNaN(data385)) {
                          const err988 = { instancePath: instancePath + "/machine/outputs/" + key64.replace(/~/g, "~0").replace(/\//g, "~1") + "/number", schemaPath: "#/properties/machine/properties/outputs/patternProperties/%5E%5Ba-z%5D%5Ba-z0-9-%5D%7B0%2C30%7D%24/properties/number/maximum", keyword: "maximum", params: { comparison: "<=", limit: 9999 }, message: "must be <= 9999" };
                          if (vErrors === null) {
                            vErrors = [err988];
                          } else {
                            vErrors.push(err988);
                          }
                          errors++;
                        }
                        if (data385 < 0 || isNaN(data385)) {
                          const err989 = { instancePath: instancePath + "/machine/outputs/" + key64.replace(/~/g, "~0").replace(/\//g, "~1") + "/number", schemaPath: "#/properties/machine/properties/outputs/patternProperties/%5E%5Ba-z%5D%5Ba-z0-9-%5D%7B0%2C30%7D%24/properties/number/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
                          if (vErrors === null) {
                            vErrors = [err989];
                          } else {
                            vErrors.push(err989);
                          }
                          errors++;
                        }
                      }
                    }
                    if (data384.during !== void 0) {
                      let data386 = data384.during;
                      if (typeof data386 !== "string") {
                        const err990 = { instancePath: instancePath + "/machine/outputs/" + key64.replace(/~/g, "~0").replace(/\//g, "~1") + "/during", schemaPath: "#/properties/machine/properties/outputs/patternProperties/%5E%5Ba-z%5D%5Ba-z0-9-%5D%7B0%2C30%7D%24/properties/during/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                        if (vErrors === null) {
                          vErrors = [err990];
                        } else {
                          vErrors.push(err990);
                        }
                        errors++;
                      }
                      if (!(data386 === "cutting" || data386 === "program")) {
                        const err991 = { instancePath: instancePath + "/machine/outputs/" + key64.replace(/~/g, "~0").replace(/\//g, "~1") + "/during", schemaPath: "#/properties/machine/properties/outputs/patternProperties/%5E%5Ba-z%5D%5Ba-z0-9-%5D%7B0%2C30%7D%24/properties/during/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties.outputs.patternProperties["^[a-z][a-z0-9-]{0,30}$"].properties.during.enum }, message: "must be equal to one of the allowed values" };
                        if (vErrors === null) {
                          vErrors = [err991];
                        } else {
                          vErrors.push(err991);
                        }
                        errors++;
                      }
                    }
                  } else {
                    const err992 = { instancePath: instancePath + "/machine/outputs/" + key64.replace(/~/g, "~0").replace(/\//g, "~1"), schemaPath: "#/properties/machine/properties/outputs/patternProperties/%5E%5Ba-z%5D%5Ba-z0-9-%5D%7B0%2C30%7D%24/type", keyword: "type", params: { type: "object" }, message: "must be object" };
                    if (vErrors === null) {
                      vErrors = [err992];
                    } else {
                      vErrors.push(err992);
                    }
                    errors++;
                  }
                }
              }
            } else {
              const err993 = { instancePath: instancePath + "/machine/outputs", schemaPath: "#/properties/machine/properties/outputs/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err993];
              } else {
                vErrors.push(err993);
              }
              errors++;
            }
          }
          if (data302.hood !== void 0) {
            let data387 = data302.hood;
            if (typeof data387 !== "string") {
              const err994 = { instancePath: instancePath + "/machine/hood", schemaPath: "#/$defs/yesNo/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err994];
              } else {
                vErrors.push(err994);
              }
              errors++;
            }
            if (!(data387 === "yes" || data387 === "no")) {
              const err995 = { instancePath: instancePath + "/machine/hood", schemaPath: "#/$defs/yesNo/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err995];
              } else {
                vErrors.push(err995);
              }
              errors++;
            }
          }
          if (data302["keep-out"] !== void 0) {
            let data388 = data302["keep-out"];
            if (Array.isArray(data388)) {
              if (data388.length > 50) {
                const err996 = { instancePath: instancePath + "/machine/keep-out", schemaPath: "#/properties/machine/properties/keep-out/maxItems", keyword: "maxItems", params: { limit: 50 }, message: "must NOT have more than 50 items" };
                if (vErrors === null) {
                  vErrors = [err996];
                } else {
                  vErrors.push(err996);
                }
                errors++;
              }
              const len11 = data388.length;
              for (let i13 = 0; i13 < len11; i13++) {
                let data389 = data388[i13];
                if (data389 && typeof data389 == "object" && !Array.isArray(data389)) {
                  if (data389.name === void 0) {
                    const err997 = { instancePath: instancePath + "/machine/keep-out/" + i13, schemaPath: "#/properties/machine/properties/keep-out/items/required", keyword: "required", params: { missingProperty: "name" }, message: "must have required property 'name'" };
                    if (vErrors === null) {
                      vErrors = [err997];
                    } else {
                      vErrors.push(err997);
                    }
                    errors++;
                  }
                  if (data389.min === void 0) {
                    const err998 = { instancePath: instancePath + "/machine/keep-out/" + i13, schemaPath: "#/properties/machine/properties/keep-out/items/required", keyword: "required", params: { missingProperty: "min" }, message: "must have required property 'min'" };
                    if (vErrors === null) {
                      vErrors = [err998];
                    } else {
                      vErrors.push(err998);
                    }
                    errors++;
                  }
                  if (data389.max === void 0) {
                    const err999 = { instancePath: instancePath + "/machine/keep-out/" + i13, schemaPath: "#/properties/machine/properties/keep-out/items/required", keyword: "required", params: { missingProperty: "max" }, message: "must have required property 'max'" };
                    if (vErrors === null) {
                      vErrors = [err999];
                    } else {
                      vErrors.push(err999);
                    }
                    errors++;
                  }
                  for (const key66 in data389) {
                    if (!(key66 === "name" || key66 === "min" || key66 === "max")) {
                      const err1000 = { instancePath: instancePath + "/machine/keep-out/" + i13, schemaPath: "#/properties/machine/properties/keep-out/items/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key66 }, message: "must NOT have additional properties" };
                      if (vErrors === null) {
                        vErrors = [err1000];
                      } else {
                        vErrors.push(err1000);
                      }
                      errors++;
                    }
                  }
                  if (data389.name !== void 0) {
                    let data390 = data389.name;
                    if (typeof data390 === "string") {
                      if (func2(data390) > 60) {
                        const err1001 = { instancePath: instancePath + "/machine/keep-out/" + i13 + "/name", schemaPath: "#/properties/machine/properties/keep-out/items/properties/name/maxLength", keyword: "maxLength", params: { limit: 60 }, message: "must NOT have more than 60 characters" };
                        if (vErrors === null) {
                          vErrors = [err1001];
                        } else {
                          vErrors.push(err1001);
                        }
                        errors++;
                      }
                      if (func2(data390) < 1) {
                        const err1002 = { instancePath: instancePath + "/machine/keep-out/" + i13 + "/name", schemaPath: "#/properties/machine/properties/keep-out/items/properties/name/minLength", keyword: "minLength", params: { limit: 1 }, message: "must NOT have fewer than 1 characters" };
                        if (vErrors === null) {
                          vErrors = [err1002];
                        } else {
                          vErrors.push(err1002);
                        }
                        errors++;
                      }
                    } else {
                      const err1003 = { instancePath: instancePath + "/machine/keep-out/" + i13 + "/name", schemaPath: "#/properties/machine/properties/keep-out/items/properties/name/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                      if (vErrors === null) {
                        vErrors = [err1003];
                      } else {
                        vErrors.push(err1003);
                      }
                      errors++;
                    }
                  }
                  if (data389.min !== void 0) {
                    if (!validate29(data389.min, { instancePath: instancePath + "/machine/keep-out/" + i13 + "/min", parentData: data389, parentDataProperty: "min", rootData, dynamicAnchors })) {
                      vErrors = vErrors === null ? validate29.errors : vErrors.concat(validate29.errors);
                      errors = vErrors.length;
                    }
                  }
                  if (data389.max !== void 0) {
                    if (!validate29(data389.max, { instancePath: instancePath + "/machine/keep-out/" + i13 + "/max", parentData: data389, parentDataProperty: "max", rootData, dynamicAnchors })) {
                      vErrors = vErrors === null ? validate29.errors : vErrors.concat(validate29.errors);
                      errors = vErrors.length;
                    }
                  }
                } else {
                  const err1004 = { instancePath: instancePath + "/machine/keep-out/" + i13, schemaPath: "#/properties/machine/properties/keep-out/items/type", keyword: "type", params: { type: "object" }, message: "must be object" };
                  if (vErrors === null) {
                    vErrors = [err1004];
                  } else {
                    vErrors.push(err1004);
                  }
                  errors++;
                }
              }
            } else {
              const err1005 = { instancePath: instancePath + "/machine/keep-out", schemaPath: "#/properties/machine/properties/keep-out/type", keyword: "type", params: { type: "array" }, message: "must be array" };
              if (vErrors === null) {
                vErrors = [err1005];
              } else {
                vErrors.push(err1005);
              }
              errors++;
            }
          }
          if (data302.tapping !== void 0) {
            let data393 = data302.tapping;
            if (data393 && typeof data393 == "object" && !Array.isArray(data393)) {
              for (const key67 in data393) {
                if (!(key67 === "kind" || key67 === "reversal" || key67 === "longhand")) {
                  const err1006 = { instancePath: instancePath + "/machine/tapping", schemaPath: "#/properties/machine/properties/tapping/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key67 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err1006];
                  } else {
                    vErrors.push(err1006);
                  }
                  errors++;
                }
              }
              if (data393.kind !== void 0) {
                let data394 = data393.kind;
                if (typeof data394 !== "string") {
                  const err1007 = { instancePath: instancePath + "/machine/tapping/kind", schemaPath: "#/properties/machine/properties/tapping/properties/kind/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1007];
                  } else {
                    vErrors.push(err1007);
                  }
                  errors++;
                }
                if (!(data394 === "none" || data394 === "floating" || data394 === "synchronised")) {
                  const err1008 = { instancePath: instancePath + "/machine/tapping/kind", schemaPath: "#/properties/machine/properties/tapping/properties/kind/enum", keyword: "enum", params: { allowedValues: schema31.properties.machine.properties.tapping.properties.kind.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1008];
                  } else {
                    vErrors.push(err1008);
                  }
                  errors++;
                }
              }
              if (data393.reversal !== void 0) {
                let data395 = data393.reversal;
                if (typeof data395 === "string") {
                  if (!pattern89.test(data395)) {
                    const err1009 = { instancePath: instancePath + "/machine/tapping/reversal", schemaPath: "#/$defs/time/pattern", keyword: "pattern", params: { pattern: "^\\d{1,6}(\\.\\d{1,6})? ?(s|ms|min)$" }, message: 'must match pattern "^\\d{1,6}(\\.\\d{1,6})? ?(s|ms|min)$"' };
                    if (vErrors === null) {
                      vErrors = [err1009];
                    } else {
                      vErrors.push(err1009);
                    }
                    errors++;
                  }
                } else {
                  const err1010 = { instancePath: instancePath + "/machine/tapping/reversal", schemaPath: "#/$defs/time/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1010];
                  } else {
                    vErrors.push(err1010);
                  }
                  errors++;
                }
              }
              if (data393.longhand !== void 0) {
                let data396 = data393.longhand;
                if (typeof data396 !== "string") {
                  const err1011 = { instancePath: instancePath + "/machine/tapping/longhand", schemaPath: "#/$defs/yesNo/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1011];
                  } else {
                    vErrors.push(err1011);
                  }
                  errors++;
                }
                if (!(data396 === "yes" || data396 === "no")) {
                  const err1012 = { instancePath: instancePath + "/machine/tapping/longhand", schemaPath: "#/$defs/yesNo/enum", keyword: "enum", params: { allowedValues: schema32.enum }, message: "must be equal to one of the allowed values" };
                  if (vErrors === null) {
                    vErrors = [err1012];
                  } else {
                    vErrors.push(err1012);
                  }
                  errors++;
                }
              }
            } else {
              const err1013 = { instancePath: instancePath + "/machine/tapping", schemaPath: "#/properties/machine/properties/tapping/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err1013];
              } else {
                vErrors.push(err1013);
              }
              errors++;
            }
          }
          if (data302.feed !== void 0) {
            let data397 = data302.feed;
            if (data397 && typeof data397 == "object" && !Array.isArray(data397)) {
              for (const key68 in data397) {
                if (!(key68 === "least" || key68 === "most")) {
                  const err1014 = { instancePath: instancePath + "/machine/feed", schemaPath: "#/properties/machine/properties/feed/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key68 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err1014];
                  } else {
                    vErrors.push(err1014);
                  }
                  errors++;
                }
              }
              if (data397.least !== void 0) {
                let data398 = data397.least;
                const _errs1213 = errors;
                let valid325 = false;
                const _errs1214 = errors;
                if (typeof data398 == "number" && isFinite(data398)) {
                  if (data398 > 1e6 || isNaN(data398)) {
                    const err1015 = { instancePath: instancePath + "/machine/feed/least", schemaPath: "#/$defs/feed/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                    if (vErrors === null) {
                      vErrors = [err1015];
                    } else {
                      vErrors.push(err1015);
                    }
                    errors++;
                  }
                  if (data398 <= 0 || isNaN(data398)) {
                    const err1016 = { instancePath: instancePath + "/machine/feed/least", schemaPath: "#/$defs/feed/anyOf/0/exclusiveMinimum", keyword: "exclusiveMinimum", params: { comparison: ">", limit: 0 }, message: "must be > 0" };
                    if (vErrors === null) {
                      vErrors = [err1016];
                    } else {
                      vErrors.push(err1016);
                    }
                    errors++;
                  }
                } else {
                  const err1017 = { instancePath: instancePath + "/machine/feed/least", schemaPath: "#/$defs/feed/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                  if (vErrors === null) {
                    vErrors = [err1017];
                  } else {
                    vErrors.push(err1017);
                  }
                  errors++;
                }
                var _valid44 = _errs1214 === errors;
                valid325 = valid325 || _valid44;
                const _errs1216 = errors;
                if (typeof data398 === "string") {
                  if (!pattern9.test(data398)) {
                    const err1018 = { instancePath: instancePath + "/machine/feed/least", schemaPath: "#/$defs/feed/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^\\d{1,5}(\\.\\d{1,5})? (mm|in)/min$" }, message: 'must match pattern "^\\d{1,5}(\\.\\d{1,5})? (mm|in)/min$"' };
                    if (vErrors === null) {
                      vErrors = [err1018];
                    } else {
                      vErrors.push(err1018);
                    }
                    errors++;
                  }
                } else {
                  const err1019 = { instancePath: instancePath + "/machine/feed/least", schemaPath: "#/$defs/feed/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1019];
                  } else {
                    vErrors.push(err1019);
                  }
                  errors++;
                }
                var _valid44 = _errs1216 === errors;
                valid325 = valid325 || _valid44;
                if (!valid325) {
                  const err1020 = { instancePath: instancePath + "/machine/feed/least", schemaPath: "#/$defs/feed/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err1020];
                  } else {
                    vErrors.push(err1020);
                  }
                  errors++;
                } else {
                  errors = _errs1213;
                  if (vErrors !== null) {
                    if (_errs1213) {
                      vErrors.length = _errs1213;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
              if (data397.most !== void 0) {
                let data399 = data397.most;
                const _errs1220 = errors;
                let valid327 = false;
                const _errs1221 = errors;
                if (typeof data399 == "number" && isFinite(data399)) {
                  if (data399 > 1e6 || isNaN(data399)) {
                    const err1021 = { instancePath: instancePath + "/machine/feed/most", schemaPath: "#/$defs/feed/anyOf/0/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e6 }, message: "must be <= 1000000" };
                    if (vErrors === null) {
                      vErrors = [err1021];
                    } else {
                      vErrors.push(err1021);
                    }
                    errors++;
                  }
                  if (data399 <= 0 || isNaN(data399)) {
                    const err1022 = { instancePath: instancePath + "/machine/feed/most", schemaPath: "#/$defs/feed/anyOf/0/exclusiveMinimum", keyword: "exclusiveMinimum", params: { comparison: ">", limit: 0 }, message: "must be > 0" };
                    if (vErrors === null) {
                      vErrors = [err1022];
                    } else {
                      vErrors.push(err1022);
                    }
                    errors++;
                  }
                } else {
                  const err1023 = { instancePath: instancePath + "/machine/feed/most", schemaPath: "#/$defs/feed/anyOf/0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                  if (vErrors === null) {
                    vErrors = [err1023];
                  } else {
                    vErrors.push(err1023);
                  }
                  errors++;
                }
                var _valid45 = _errs1221 === errors;
                valid327 = valid327 || _valid45;
                const _errs1223 = errors;
                if (typeof data399 === "string") {
                  if (!pattern9.test(data399)) {
                    const err1024 = { instancePath: instancePath + "/machine/feed/most", schemaPath: "#/$defs/feed/anyOf/1/pattern", keyword: "pattern", params: { pattern: "^\\d{1,5}(\\.\\d{1,5})? (mm|in)/min$" }, message: 'must match pattern "^\\d{1,5}(\\.\\d{1,5})? (mm|in)/min$"' };
                    if (vErrors === null) {
                      vErrors = [err1024];
                    } else {
                      vErrors.push(err1024);
                    }
                    errors++;
                  }
                } else {
                  const err1025 = { instancePath: instancePath + "/machine/feed/most", schemaPath: "#/$defs/feed/anyOf/1/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err1025];
                  } else {
                    vErrors.push(err1025);
                  }
                  errors++;
                }
                var _valid45 = _errs1223 === errors;
                valid327 = valid327 || _valid45;
                if (!valid327) {
                  const err1026 = { instancePath: instancePath + "/machine/feed/most", schemaPath: "#/$defs/feed/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
                  if (vErrors === null) {
                    vErrors = [err1026];
                  } else {
                    vErrors.push(err1026);
                  }
                  errors++;
                } else {
                  errors = _errs1220;
                  if (vErrors !== null) {
                    if (_errs1220) {
                      vErrors.length = _errs1220;
                    } else {
                      vErrors = null;
                    }
                  }
                }
              }
            } else {
              const err1027 = { instancePath: instancePath + "/machine/feed", schemaPath: "#/properties/machine/properties/feed/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err1027];
              } else {
                vErrors.push(err1027);
              }
              errors++;
            }
          }
          if (data302["work-zero"] !== void 0) {
            let data400 = data302["work-zero"];
            if (data400 && typeof data400 == "object" && !Array.isArray(data400)) {
              for (const key69 in data400) {
                if (!pattern109.test(key69)) {
                  const err1028 = { instancePath: instancePath + "/machine/work-zero", schemaPath: "#/properties/machine/properties/work-zero/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key69 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err1028];
                  } else {
                    vErrors.push(err1028);
                  }
                  errors++;
                }
              }
              for (const key70 in data400) {
                if (pattern109.test(key70)) {
                  if (!validate29(data400[key70], { instancePath: instancePath + "/machine/work-zero/" + key70.replace(/~/g, "~0").replace(/\//g, "~1"), parentData: data400, parentDataProperty: key70, rootData, dynamicAnchors })) {
                    vErrors = vErrors === null ? validate29.errors : vErrors.concat(validate29.errors);
                    errors = vErrors.length;
                  }
                }
              }
            } else {
              const err1029 = { instancePath: instancePath + "/machine/work-zero", schemaPath: "#/properties/machine/properties/work-zero/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err1029];
              } else {
                vErrors.push(err1029);
              }
              errors++;
            }
          }
        } else {
          const err1030 = { instancePath: instancePath + "/machine", schemaPath: "#/properties/machine/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err1030];
          } else {
            vErrors.push(err1030);
          }
          errors++;
        }
      }
      if (data.confirm !== void 0) {
        let data402 = data.confirm;
        if (data402 && typeof data402 == "object" && !Array.isArray(data402)) {
          for (const key71 in data402) {
            if (!(key71 === "at-speed" || key71 === "stopped" || key71 === "released" || key71 === "clamped" || key71 === "air")) {
              const err1031 = { instancePath: instancePath + "/confirm", schemaPath: "#/properties/confirm/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key71 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err1031];
              } else {
                vErrors.push(err1031);
              }
              errors++;
            }
          }
          if (data402["at-speed"] !== void 0) {
            let data403 = data402["at-speed"];
            const _errs1233 = errors;
            let valid330 = false;
            const _errs1234 = errors;
            if (typeof data403 !== "string") {
              const err1032 = { instancePath: instancePath + "/confirm/at-speed", schemaPath: "#/properties/confirm/properties/at-speed/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err1032];
              } else {
                vErrors.push(err1032);
              }
              errors++;
            }
            if ("operator" !== data403) {
              const err1033 = { instancePath: instancePath + "/confirm/at-speed", schemaPath: "#/properties/confirm/properties/at-speed/anyOf/0/const", keyword: "const", params: { allowedValue: "operator" }, message: "must be equal to constant" };
              if (vErrors === null) {
                vErrors = [err1033];
              } else {
                vErrors.push(err1033);
              }
              errors++;
            }
            var _valid46 = _errs1234 === errors;
            valid330 = valid330 || _valid46;
            const _errs1236 = errors;
            if (!validate41(data403, { instancePath: instancePath + "/confirm/at-speed", parentData: data402, parentDataProperty: "at-speed", rootData, dynamicAnchors })) {
              vErrors = vErrors === null ? validate41.errors : vErrors.concat(validate41.errors);
              errors = vErrors.length;
            }
            var _valid46 = _errs1236 === errors;
            valid330 = valid330 || _valid46;
            if (!valid330) {
              const err1034 = { instancePath: instancePath + "/confirm/at-speed", schemaPath: "#/properties/confirm/properties/at-speed/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err1034];
              } else {
                vErrors.push(err1034);
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
          if (data402.stopped !== void 0) {
            let data404 = data402.stopped;
            const _errs1238 = errors;
            let valid331 = false;
            const _errs1239 = errors;
            if (typeof data404 !== "string") {
              const err1035 = { instancePath: instancePath + "/confirm/stopped", schemaPath: "#/properties/confirm/properties/stopped/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err1035];
              } else {
                vErrors.push(err1035);
              }
              errors++;
            }
            if ("operator" !== data404) {
              const err1036 = { instancePath: instancePath + "/confirm/stopped", schemaPath: "#/properties/confirm/properties/stopped/anyOf/0/const", keyword: "const", params: { allowedValue: "operator" }, message: "must be equal to constant" };
              if (vErrors === null) {
                vErrors = [err1036];
              } else {
                vErrors.push(err1036);
              }
              errors++;
            }
            var _valid47 = _errs1239 === errors;
            valid331 = valid331 || _valid47;
            const _errs1241 = errors;
            if (!validate41(data404, { instancePath: instancePath + "/confirm/stopped", parentData: data402, parentDataProperty: "stopped", rootData, dynamicAnchors })) {
              vErrors = vErrors === null ? validate41.errors : vErrors.concat(validate41.errors);
              errors = vErrors.length;
            }
            var _valid47 = _errs1241 === errors;
            valid331 = valid331 || _valid47;
            if (!valid331) {
              const err1037 = { instancePath: instancePath + "/confirm/stopped", schemaPath: "#/properties/confirm/properties/stopped/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err1037];
              } else {
                vErrors.push(err1037);
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
          if (data402.released !== void 0) {
            let data405 = data402.released;
            const _errs1243 = errors;
            let valid332 = false;
            const _errs1244 = errors;
            if (typeof data405 !== "string") {
              const err1038 = { instancePath: instancePath + "/confirm/released", schemaPath: "#/properties/confirm/properties/released/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err1038];
              } else {
                vErrors.push(err1038);
              }
              errors++;
            }
            if ("operator" !== data405) {
              const err1039 = { instancePath: instancePath + "/confirm/released", schemaPath: "#/properties/confirm/properties/released/anyOf/0/const", keyword: "const", params: { allowedValue: "operator" }, message: "must be equal to constant" };
              if (vErrors === null) {
                vErrors = [err1039];
              } else {
                vErrors.push(err1039);
              }
              errors++;
            }
            var _valid48 = _errs1244 === errors;
            valid332 = valid332 || _valid48;
            const _errs1246 = errors;
            if (!validate41(data405, { instancePath: instancePath + "/confirm/released", parentData: data402, parentDataProperty: "released", rootData, dynamicAnchors })) {
              vErrors = vErrors === null ? validate41.errors : vErrors.concat(validate41.errors);
              errors = vErrors.length;
            }
            var _valid48 = _errs1246 === errors;
            valid332 = valid332 || _valid48;
            if (!valid332) {
              const err1040 = { instancePath: instancePath + "/confirm/released", schemaPath: "#/properties/confirm/properties/released/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err1040];
              } else {
                vErrors.push(err1040);
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
          if (data402.clamped !== void 0) {
            let data406 = data402.clamped;
            const _errs1248 = errors;
            let valid333 = false;
            const _errs1249 = errors;
            if (typeof data406 !== "string") {
              const err1041 = { instancePath: instancePath + "/confirm/clamped", schemaPath: "#/properties/confirm/properties/clamped/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err1041];
              } else {
                vErrors.push(err1041);
              }
              errors++;
            }
            if ("operator" !== data406) {
              const err1042 = { instancePath: instancePath + "/confirm/clamped", schemaPath: "#/properties/confirm/properties/clamped/anyOf/0/const", keyword: "const", params: { allowedValue: "operator" }, message: "must be equal to constant" };
              if (vErrors === null) {
                vErrors = [err1042];
              } else {
                vErrors.push(err1042);
              }
              errors++;
            }
            var _valid49 = _errs1249 === errors;
            valid333 = valid333 || _valid49;
            const _errs1251 = errors;
            if (!validate41(data406, { instancePath: instancePath + "/confirm/clamped", parentData: data402, parentDataProperty: "clamped", rootData, dynamicAnchors })) {
              vErrors = vErrors === null ? validate41.errors : vErrors.concat(validate41.errors);
              errors = vErrors.length;
            }
            var _valid49 = _errs1251 === errors;
            valid333 = valid333 || _valid49;
            if (!valid333) {
              const err1043 = { instancePath: instancePath + "/confirm/clamped", schemaPath: "#/properties/confirm/properties/clamped/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err1043];
              } else {
                vErrors.push(err1043);
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
          if (data402.air !== void 0) {
            let data407 = data402.air;
            const _errs1253 = errors;
            let valid334 = false;
            const _errs1254 = errors;
            if (typeof data407 !== "string") {
              const err1044 = { instancePath: instancePath + "/confirm/air", schemaPath: "#/properties/confirm/properties/air/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err1044];
              } else {
                vErrors.push(err1044);
              }
              errors++;
            }
            if ("operator" !== data407) {
              const err1045 = { instancePath: instancePath + "/confirm/air", schemaPath: "#/properties/confirm/properties/air/anyOf/0/const", keyword: "const", params: { allowedValue: "operator" }, message: "must be equal to constant" };
              if (vErrors === null) {
                vErrors = [err1045];
              } else {
                vErrors.push(err1045);
              }
              errors++;
            }
            var _valid50 = _errs1254 === errors;
            valid334 = valid334 || _valid50;
            const _errs1256 = errors;
            if (!validate41(data407, { instancePath: instancePath + "/confirm/air", parentData: data402, parentDataProperty: "air", rootData, dynamicAnchors })) {
              vErrors = vErrors === null ? validate41.errors : vErrors.concat(validate41.errors);
              errors = vErrors.length;
            }
            var _valid50 = _errs1256 === errors;
            valid334 = valid334 || _valid50;
            if (!valid334) {
              const err1046 = { instancePath: instancePath + "/confirm/air", schemaPath: "#/properties/confirm/properties/air/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
              if (vErrors === null) {
                vErrors = [err1046];
              } else {
                vErrors.push(err1046);
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
          const err1047 = { instancePath: instancePath + "/confirm", schemaPath: "#/properties/confirm/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err1047];
          } else {
            vErrors.push(err1047);
          }
          errors++;
        }
      }
    } else {
      const err1048 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" };
      if (vErrors === null) {
        vErrors = [err1048];
      } else {
        vErrors.push(err1048);
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
