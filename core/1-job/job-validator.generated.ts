/* Generated from schemas/job.schema.json by `npm run generate`. Do not edit. */

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

  // validator.js
  var validator_exports = {};
  __export(validator_exports, {
    validateJob: () => validateJob
  });
  var validateJob = validate20;
  var schema31 = { "$schema": "https://json-schema.org/draft/2020-12/schema", "$id": "https://tapewright.invalid/schemas/job.schema.json", "title": "Job", "description": "Neutral machining operations, version 1. Lengths are in the job's units, angles in degrees, times in seconds, speeds in revolutions a minute. Numbers are finite; every list holds at least one element; unknown and repeated keys are refused.", "type": "object", "additionalProperties": false, "required": ["job", "units", "clearance", "tools", "operations"], "properties": { "job": { "title": "Version", "description": "Version of this format.", "type": "string", "const": "1", "examples": ["1"] }, "name": { "title": "Name", "description": "What is made; stands on the set-up sheet and in the header of the program.", "type": "string", "examples": ["Weather-station plate"] }, "units": { "title": "Units", "description": "Unit of every length and of every feed in this job.", "type": "string", "enum": ["mm", "inch"], "examples": ["mm"] }, "program": { "title": "Program", "description": "How the controller names the program.", "type": "object", "additionalProperties": false, "properties": { "number": { "title": "Program number", "description": "Number for controllers that number their programs.", "type": "integer", "minimum": 1, "maximum": 99999999, "examples": [1201] }, "name": { "title": "Program name", "description": "Name for controllers that name their programs.", "type": "string", "examples": ["PLATE-1"] } }, "examples": [{ "number": 1201, "name": "PLATE-1" }] }, "stock": { "title": "Stock", "description": "Box of the raw material in work coordinates. Without it, rapids through material cannot be found.", "type": "object", "additionalProperties": false, "required": ["min", "max"], "properties": { "min": { "$ref": "#/$defs/corner", "title": "Least corner", "description": "Least x, y and z of the stock, lengths in work coordinates.", "examples": [[0, 0, -12]] }, "max": { "$ref": "#/$defs/corner", "title": "Greatest corner", "description": "Greatest x, y and z of the stock, lengths in work coordinates; each above that of `min`.", "examples": [[160, 120, 0]] }, "material": { "title": "Material", "description": "What the stock is made of; stands on the set-up sheet.", "type": "string", "examples": ["slate"] } }, "examples": [{ "min": [0, 0, -12], "max": [160, 120, 0], "material": "slate" }] }, "fixtures": { "title": "Fixtures", "description": "Boxes of clamps and stops in work coordinates that no motion may enter.", "type": "array", "minItems": 1, "items": { "title": "Fixture", "description": "One box.", "type": "object", "additionalProperties": false, "required": ["name", "min", "max"], "properties": { "name": { "title": "Fixture name", "description": "What stands there; findings name it.", "type": "string", "examples": ["left clamp"] }, "min": { "$ref": "#/$defs/corner", "title": "Least corner", "description": "Least x, y and z, lengths in work coordinates.", "examples": [[-20, 40, -12]] }, "max": { "$ref": "#/$defs/corner", "title": "Greatest corner", "description": "Greatest x, y and z, lengths in work coordinates; each above that of `min`.", "examples": [[8, 70, 9]] } } }, "examples": [[{ "name": "left clamp", "min": [-20, 40, -12], "max": [8, 70, 9] }]] }, "workOffset": { "$ref": "#/$defs/workOffset", "title": "Work offset", "description": "Work offset of operations that state none, 1 to 9; 1 unless given.", "examples": [1] }, "clearance": { "title": "Clearance", "description": "Z of safe travel over stock and clamps, a length in work coordinates.", "type": "number", "examples": [15] }, "tools": { "title": "Tools", "description": "The tools that the operations use.", "type": "array", "minItems": 1, "items": { "$ref": "#/$defs/tool" } }, "operations": { "title": "Operations", "description": "What is done, in order. Nothing carries over from one operation to the next.", "type": "array", "minItems": 1, "items": { "$ref": "#/$defs/operation" } } }, "$defs": { "corner": { "description": "A point as [x, y, z], lengths in work coordinates.", "type": "array", "minItems": 3, "maxItems": 3, "items": { "type": "number" } }, "workOffset": { "description": "Number of a work offset.", "type": "integer", "minimum": 1, "maximum": 9 }, "above0": { "description": "A number above 0.", "type": "number", "exclusiveMinimum": 0 }, "tableNumber": { "description": "A number in the controller's tool or offset table.", "type": "integer", "minimum": 1, "maximum": 99999999 }, "feed": { "title": "Feed", "description": "Feed along the path of the tool tip: units a minute, units a revolution or 1/minutes, as the operation's `feedMode` says. Holds for the lines, arcs and paths that follow in the operation until another is stated; that of holes is for those holes alone.", "type": "number", "exclusiveMinimum": 0, "examples": [900] }, "coolant": { "description": "Off, one coolant, or a list of those that run together.", "anyOf": [{ "type": "string", "enum": ["off", "mist", "flood", "air", "through-tool"] }, { "type": "array", "minItems": 1, "uniqueItems": true, "items": { "type": "string", "enum": ["mist", "flood", "air", "through-tool"] } }] }, "tool": { "title": "Tool", "description": "One tool.", "type": "object", "additionalProperties": false, "required": ["number", "kind", "diameter"], "properties": { "number": { "$ref": "#/$defs/tableNumber", "title": "Tool number", "description": "Number of the tool, by which operations and the controller know it. No two tools share one.", "examples": [1] }, "kind": { "title": "Tool kind", "description": "What the tool is. The last three never turn.", "type": "string", "enum": ["end-mill", "ball-mill", "bull-nose", "face-mill", "v-bit", "engraver", "drill", "spot-drill", "reamer", "tap", "boring-bar", "chamfer", "thread-mill", "probe", "drag-knife", "pen"], "examples": ["end-mill"] }, "diameter": { "$ref": "#/$defs/above0", "title": "Diameter", "description": "Cutting diameter, a length above 0.", "examples": [6] }, "description": { "title": "Description", "description": "What the operator reads on the set-up sheet and at a tool change.", "type": "string", "examples": ["6 mm carbide, two flutes"] }, "flutes": { "title": "Flutes", "description": "Number of cutting edges.", "type": "integer", "minimum": 1, "maximum": 1e3, "examples": [2] }, "maxRpm": { "$ref": "#/$defs/above0", "title": "Greatest speed", "description": "Greatest spindle speed that the tool bears, revolutions a minute.", "examples": [24e3] }, "minRpm": { "$ref": "#/$defs/above0", "title": "Least speed", "description": "Least spindle speed at which the tool may cut, revolutions a minute; not above `maxRpm`.", "examples": [8e3] }, "maxFeed": { "$ref": "#/$defs/above0", "title": "Greatest feed", "description": "Greatest feed that the tool bears, length units a minute.", "examples": [2400] }, "lengthOffset": { "$ref": "#/$defs/tableNumber", "title": "Length offset", "description": "Number of the tool length offset; the tool's number unless given.", "examples": [1] }, "radiusOffset": { "$ref": "#/$defs/tableNumber", "title": "Radius offset", "description": "Number of the tool radius offset that cutter compensation uses.", "examples": [21] }, "length": { "$ref": "#/$defs/above0", "title": "Gauge length", "description": "Length from the spindle nose to the tool tip, a length.", "examples": [92.4] }, "fluteLength": { "$ref": "#/$defs/above0", "title": "Flute length", "description": "Length of the cutting edges, a length.", "examples": [18] }, "stickOut": { "$ref": "#/$defs/above0", "title": "Stick-out", "description": "Length from the holder's face to the tool tip, a length.", "examples": [32] }, "shank": { "$ref": "#/$defs/above0", "title": "Shank", "description": "Diameter of the shank, a length.", "examples": [6] }, "holder": { "title": "Holder", "description": "The holder as a cylinder.", "type": "object", "additionalProperties": false, "required": ["diameter", "length"], "properties": { "diameter": { "$ref": "#/$defs/above0", "title": "Holder diameter", "description": "Greatest diameter of the holder, a length.", "examples": [40] }, "length": { "$ref": "#/$defs/above0", "title": "Holder length", "description": "Length of the holder from the spindle nose to its face, a length.", "examples": [60] } }, "examples": [{ "diameter": 40, "length": 60 }] }, "cornerRadius": { "title": "Corner radius", "description": "Radius of the corner of a bull-nose tool, a length; 0 is sharp.", "type": "number", "minimum": 0, "examples": [0.5] }, "tipAngle": { "title": "Tip angle", "description": "Included angle of the point, degrees above 0, at most 180.", "type": "number", "exclusiveMinimum": 0, "maximum": 180, "examples": [118] }, "tipDiameter": { "title": "Tip diameter", "description": "Diameter of the flat at the point, a length; 0 is sharp.", "type": "number", "minimum": 0, "examples": [0.2] }, "lead": { "$ref": "#/$defs/above0", "title": "Lead", "description": "Lead of a tap or thread mill, a length a revolution.", "examples": [1] }, "hand": { "title": "Hand", "description": "Hand of cutting: right cuts with the spindle cw, left with it ccw. Without it either direction is accepted.", "type": "string", "enum": ["right", "left"], "examples": ["right"] }, "centreCutting": { "title": "Centre cutting", "description": "Whether the tool may plunge straight down.", "type": "boolean", "examples": [true] }, "life": { "$ref": "#/$defs/above0", "title": "Life", "description": "Cutting time after which the tool is worn, minutes. An operation that would pass it is done with a spare, see `spareFor`; without one a warning tells it.", "examples": [90] }, "spareFor": { "$ref": "#/$defs/tableNumber", "title": "Spare for", "description": "Number of the tool that this one takes over from when that has cut for its `life`, at the start of an operation. Both are of one kind and cutting geometry; lengths, holder, offsets, limits and life may differ. No operation names a spare. Several spares of one tool are taken in the order in which they are listed.", "examples": [1] }, "measure": { "title": "Measure", "description": "Whether the length is measured after each change to this tool.", "type": "boolean", "examples": [true] } }, "examples": [{ "number": 1, "kind": "end-mill", "diameter": 6, "flutes": 2, "maxRpm": 24e3 }] }, "operation": { "title": "Operation", "description": "One operation with one tool.", "type": "object", "additionalProperties": false, "required": ["id", "tool", "moves"], "properties": { "id": { "title": "Operation id", "description": "Short name by which findings and options know the operation. No two operations share one.", "type": "string", "pattern": "\\S", "examples": ["op10"] }, "name": { "title": "Operation name", "description": "What is done; stands on the set-up sheet and in comments of the program. The id unless given.", "type": "string", "examples": ["Outline, outside"] }, "tool": { "$ref": "#/$defs/tableNumber", "title": "Tool", "description": "Number of a tool that the job defines.", "examples": [1] }, "spindle": { "title": "Spindle", "description": "Speed and direction. Stated with every tool that turns, and with none of probe, drag-knife and pen.", "type": "object", "additionalProperties": false, "required": ["rpm", "direction"], "properties": { "rpm": { "$ref": "#/$defs/above0", "title": "Speed", "description": "Spindle speed, revolutions a minute.", "examples": [16e3] }, "direction": { "title": "Direction", "description": "Seen from the spindle towards the work: cw drives a right-hand screw into the work.", "type": "string", "enum": ["cw", "ccw"], "examples": ["cw"] } }, "examples": [{ "rpm": 16e3, "direction": "cw" }] }, "coolant": { "$ref": "#/$defs/coolant", "title": "Coolant", "description": "Coolant at the start of the operation; off unless given.", "examples": ["off", ["mist", "air"]] }, "feedMode": { "title": "Feed mode", "description": "What a feed means: length units a minute, length units a revolution, or 1/minutes for the whole motion. Per minute unless given.", "type": "string", "enum": ["per-minute", "per-revolution", "inverse-time"], "examples": ["per-minute"] }, "workOffset": { "$ref": "#/$defs/workOffset", "title": "Work offset", "description": "Work offset, 1 to 9; the job's unless given.", "examples": [2] }, "clearance": { "title": "Clearance", "description": "Z of safe travel in this operation, a length in work coordinates; the job's unless given.", "type": "number", "examples": [20] }, "hood": { "title": "Hood", "description": "Where the dust hood stands while cutting.", "type": "string", "enum": ["up", "down"], "examples": ["down"] }, "tolerance": { "$ref": "#/$defs/above0", "title": "Tolerance", "description": "How far the path may be rounded off where it is blended, and chords may leave their arc, a length above 0. It is written rounded down; a controller that cannot be told gets the exact path, or the operation is refused.", "examples": [0.01] }, "path": { "title": "Path mode", "description": "Whether corners are met exactly or blended.", "type": "string", "enum": ["exact", "blend"], "examples": ["blend"] }, "moves": { "title": "Moves", "description": "What the tool does, in order. The first motion is a rapid that names x and y; z is at clearance until named.", "type": "array", "minItems": 1 } } }, "move": { "title": "Move", "description": "One move of one kind.", "oneOf": [{ "$ref": "#/$defs/rapidMove" }, { "$ref": "#/$defs/lineMove" }, { "$ref": "#/$defs/arcXyMove" }, { "$ref": "#/$defs/arcZxMove" }, { "$ref": "#/$defs/arcYzMove" }, { "$ref": "#/$defs/holesMove" }, { "$ref": "#/$defs/linePathMove" }, { "$ref": "#/$defs/rapidPathMove" }, { "$ref": "#/$defs/dwellMove" }, { "$ref": "#/$defs/pauseMove" }, { "$ref": "#/$defs/noteMove" }, { "$ref": "#/$defs/spindleMove" }, { "$ref": "#/$defs/coolantMove" }, { "$ref": "#/$defs/compMove" }] }, "axes": { "title": "Axes", "description": "Where the tool tip goes; an axis that is left out keeps its value. At least one is named.", "type": "object", "additionalProperties": false, "minProperties": 1, "properties": { "x": { "title": "X", "description": "A length in work coordinates.", "type": "number", "examples": [10] }, "y": { "title": "Y", "description": "A length in work coordinates.", "type": "number", "examples": [5] }, "z": { "title": "Z", "description": "A length in work coordinates.", "type": "number", "examples": [-2] }, "a": { "title": "A", "description": "Rotation about X, unwrapped degrees.", "type": "number", "examples": [90] }, "b": { "title": "B", "description": "Rotation about Y, unwrapped degrees.", "type": "number", "examples": [-30] }, "c": { "title": "C", "description": "Rotation about Z, unwrapped degrees.", "type": "number", "examples": [720] } } }, "rapidMove": { "title": "Rapid", "description": "A rapid traverse.", "type": "object", "additionalProperties": false, "required": ["rapid"], "properties": { "rapid": { "$ref": "#/$defs/axes", "title": "Rapid", "description": "Where the tool tip goes at rapid traverse.", "examples": [{ "x": 10, "y": 5 }] } }, "examples": [{ "rapid": { "x": 10, "y": 5 } }] }, "lineMove": { "title": "Line", "description": "A straight feed motion. Linear and rotary axes together need inverse-time feed.", "type": "object", "additionalProperties": false, "required": ["line"], "properties": { "line": { "$ref": "#/$defs/axes", "title": "Line", "description": "Where the tool tip goes in a straight line at feed.", "examples": [{ "z": -2 }] }, "feed": { "$ref": "#/$defs/feed" } }, "examples": [{ "line": { "z": -2 }, "feed": 300 }] }, "turn": { "title": "Turn", "description": "Sense of the arc, seen from the + end of the plane's normal (zx: from +Y).", "type": "string", "enum": ["cw", "ccw"], "examples": ["cw"] }, "turns": { "title": "Turns", "description": "Turns started; 1 unless given. An arc that ends where it starts is that many full circles.", "type": "integer", "minimum": 1, "maximum": 32767, "examples": [1] }, "arcXyMove": { "title": "Arc in XY", "description": "An arc or helix about Z.", "type": "object", "additionalProperties": false, "required": ["arc", "turn"], "properties": { "arc": { "title": "Arc", "description": "End and centre in XY, both absolute; z makes a helix.", "type": "object", "additionalProperties": false, "required": ["x", "y", "cx", "cy"], "properties": { "x": { "title": "End X", "description": "A length in work coordinates.", "type": "number", "examples": [20] }, "y": { "title": "End Y", "description": "A length in work coordinates.", "type": "number", "examples": [5] }, "z": { "title": "End Z", "description": "A length in work coordinates; makes a helix.", "type": "number", "examples": [-4] }, "cx": { "title": "Centre X", "description": "A length in work coordinates.", "type": "number", "examples": [15] }, "cy": { "title": "Centre Y", "description": "A length in work coordinates.", "type": "number", "examples": [5] } }, "examples": [{ "x": 20, "y": 5, "cx": 15, "cy": 5 }] }, "turn": { "$ref": "#/$defs/turn" }, "plane": { "title": "Plane", "description": "Plane of the arc; xy unless given.", "type": "string", "const": "xy", "examples": ["xy"] }, "turns": { "$ref": "#/$defs/turns" }, "feed": { "$ref": "#/$defs/feed" } }, "examples": [{ "arc": { "x": 20, "y": 5, "cx": 15, "cy": 5 }, "turn": "cw", "feed": 800 }] }, "arcZxMove": { "title": "Arc in ZX", "description": "An arc or helix about Y.", "type": "object", "additionalProperties": false, "required": ["arc", "turn", "plane"], "properties": { "arc": { "title": "Arc", "description": "End and centre in ZX, both absolute; y makes a helix.", "type": "object", "additionalProperties": false, "required": ["z", "x", "cz", "cx"], "properties": { "x": { "title": "End X", "description": "A length in work coordinates.", "type": "number", "examples": [20] }, "y": { "title": "End Y", "description": "A length in work coordinates; makes a helix.", "type": "number", "examples": [5] }, "z": { "title": "End Z", "description": "A length in work coordinates.", "type": "number", "examples": [-4] }, "cz": { "title": "Centre Z", "description": "A length in work coordinates.", "type": "number", "examples": [-4] }, "cx": { "title": "Centre X", "description": "A length in work coordinates.", "type": "number", "examples": [15] } }, "examples": [{ "z": -4, "x": 20, "cz": -4, "cx": 15 }] }, "turn": { "$ref": "#/$defs/turn" }, "plane": { "title": "Plane", "description": "Plane of the arc.", "type": "string", "const": "zx", "examples": ["zx"] }, "turns": { "$ref": "#/$defs/turns" }, "feed": { "$ref": "#/$defs/feed" } }, "examples": [{ "arc": { "z": -4, "x": 20, "cz": -4, "cx": 15 }, "turn": "ccw", "plane": "zx" }] }, "arcYzMove": { "title": "Arc in YZ", "description": "An arc or helix about X.", "type": "object", "additionalProperties": false, "required": ["arc", "turn", "plane"], "properties": { "arc": { "title": "Arc", "description": "End and centre in YZ, both absolute; x makes a helix.", "type": "object", "additionalProperties": false, "required": ["y", "z", "cy", "cz"], "properties": { "x": { "title": "End X", "description": "A length in work coordinates; makes a helix.", "type": "number", "examples": [20] }, "y": { "title": "End Y", "description": "A length in work coordinates.", "type": "number", "examples": [5] }, "z": { "title": "End Z", "description": "A length in work coordinates.", "type": "number", "examples": [-4] }, "cy": { "title": "Centre Y", "description": "A length in work coordinates.", "type": "number", "examples": [5] }, "cz": { "title": "Centre Z", "description": "A length in work coordinates.", "type": "number", "examples": [-4] } }, "examples": [{ "y": 5, "z": -4, "cy": 5, "cz": -2 }] }, "turn": { "$ref": "#/$defs/turn" }, "plane": { "title": "Plane", "description": "Plane of the arc.", "type": "string", "const": "yz", "examples": ["yz"] }, "turns": { "$ref": "#/$defs/turns" }, "feed": { "$ref": "#/$defs/feed" } }, "examples": [{ "arc": { "y": 5, "z": -4, "cy": 5, "cz": -2 }, "turn": "cw", "plane": "yz" }] }, "places": { "title": "Places", "description": "Where the holes are, each [x, y], lengths in work coordinates.", "type": "array", "minItems": 1, "items": { "type": "array", "minItems": 2, "maxItems": 2, "items": { "type": "number" } }, "examples": [[[10, 10], [150, 10]]] }, "top": { "title": "Top", "description": "Absolute Z of the surface, a length; above depth.", "type": "number", "examples": [0] }, "depth": { "title": "Depth", "description": "Absolute Z of the bottom, a length.", "type": "number", "examples": [-12] }, "retract": { "title": "Retract", "description": "Absolute Z where the feed starts, a length; not below top. Pecks count from it.", "type": "number", "examples": [2] }, "peck": { "title": "Peck", "description": "Depth of one peck, a length above 0.", "type": "number", "exclusiveMinimum": 0, "examples": [3] }, "backOff": { "title": "Back-off", "description": "Way back between pecks, a length above 0; 0.25 mm unless given.", "type": "number", "exclusiveMinimum": 0, "examples": [0.25] }, "holeDwell": { "title": "Dwell", "description": "Dwell at the bottom, seconds above 0.", "type": "number", "exclusiveMinimum": 0, "examples": [0.2] }, "feedOut": { "title": "Feed out", "description": "Feed on the way out, in the unit of `feed`; as the feed in unless given.", "type": "number", "exclusiveMinimum": 0, "examples": [400] }, "between": { "title": "Between", "description": "Level between holes and after the last: `retract`, or `initial`, the higher of retract and the Z before; retract unless given.", "type": "string", "enum": ["retract", "initial"], "examples": ["retract"] }, "holesMove": { "title": "Holes", "description": "A row of like holes along Z. Not under compensation or inverse-time feed.", "type": "object", "additionalProperties": false, "required": ["holes"], "properties": { "holes": { "title": "Holes", "description": "Kind, places and levels of the holes.", "type": "object", "oneOf": [{ "$ref": "#/$defs/drillHoles" }, { "$ref": "#/$defs/dwellHoles" }, { "$ref": "#/$defs/peckHoles" }, { "$ref": "#/$defs/chipBreakHoles" }, { "$ref": "#/$defs/tapHoles" }, { "$ref": "#/$defs/boreHoles" }, { "$ref": "#/$defs/reamHoles" }], "examples": [{ "kind": "drill", "at": [[10, 10]], "top": 0, "depth": -12, "retract": 2 }] }, "feed": { "title": "Feed", "description": "Feed into the holes, for these holes alone. A tap needs none: its feed is speed times lead, and one that is stated must agree within 0.1 %.", "type": "number", "exclusiveMinimum": 0, "examples": [200] } } }, "drillHoles": { "title": "Drill", "description": "Feed in, rapid out.", "type": "object", "additionalProperties": false, "required": ["kind", "at", "top", "depth", "retract"], "properties": { "kind": { "title": "Kind", "description": "Drill.", "type": "string", "const": "drill" }, "at": { "$ref": "#/$defs/places" }, "top": { "$ref": "#/$defs/top" }, "depth": { "$ref": "#/$defs/depth" }, "retract": { "$ref": "#/$defs/retract" }, "between": { "$ref": "#/$defs/between" } } }, "dwellHoles": { "title": "Drill with dwell", "description": "Feed in, dwell, rapid out.", "type": "object", "additionalProperties": false, "required": ["kind", "at", "top", "depth", "retract", "dwell"], "properties": { "kind": { "title": "Kind", "description": "Drill with a dwell at the bottom.", "type": "string", "const": "dwell" }, "at": { "$ref": "#/$defs/places" }, "top": { "$ref": "#/$defs/top" }, "depth": { "$ref": "#/$defs/depth" }, "retract": { "$ref": "#/$defs/retract" }, "dwell": { "$ref": "#/$defs/holeDwell" }, "between": { "$ref": "#/$defs/between" } } }, "peckHoles": { "title": "Peck", "description": "Feed in by pecks, rapid to retract after each and back to the last depth plus the back-off.", "type": "object", "additionalProperties": false, "required": ["kind", "at", "top", "depth", "retract", "peck"], "properties": { "kind": { "title": "Kind", "description": "Deep hole with full retract.", "type": "string", "const": "peck" }, "at": { "$ref": "#/$defs/places" }, "top": { "$ref": "#/$defs/top" }, "depth": { "$ref": "#/$defs/depth" }, "retract": { "$ref": "#/$defs/retract" }, "peck": { "$ref": "#/$defs/peck" }, "backOff": { "$ref": "#/$defs/backOff" }, "between": { "$ref": "#/$defs/between" } } }, "chipBreakHoles": { "title": "Chip break", "description": "Feed in by pecks, rapid up by the back-off between them.", "type": "object", "additionalProperties": false, "required": ["kind", "at", "top", "depth", "retract", "peck"], "properties": { "kind": { "title": "Kind", "description": "Deep hole with chip breaking.", "type": "string", "const": "chip-break" }, "at": { "$ref": "#/$defs/places" }, "top": { "$ref": "#/$defs/top" }, "depth": { "$ref": "#/$defs/depth" }, "retract": { "$ref": "#/$defs/retract" }, "peck": { "$ref": "#/$defs/peck" }, "backOff": { "$ref": "#/$defs/backOff" }, "between": { "$ref": "#/$defs/between" } } }, "tapHoles": { "title": "Tap", "description": "Feed in, reverse, feed out; the feed is speed times lead.", "type": "object", "additionalProperties": false, "required": ["kind", "at", "top", "depth", "retract", "lead"], "properties": { "kind": { "title": "Kind", "description": "Tap; its hand is the tool's.", "type": "string", "const": "tap" }, "at": { "$ref": "#/$defs/places" }, "top": { "$ref": "#/$defs/top" }, "depth": { "$ref": "#/$defs/depth" }, "retract": { "$ref": "#/$defs/retract" }, "lead": { "title": "Lead", "description": "Lead of the thread, a length a revolution above 0.", "type": "number", "exclusiveMinimum": 0, "examples": [1] }, "between": { "$ref": "#/$defs/between" } } }, "boreHoles": { "title": "Bore", "description": "Feed in, dwell if stated, feed out to retract.", "type": "object", "additionalProperties": false, "required": ["kind", "at", "top", "depth", "retract"], "properties": { "kind": { "title": "Kind", "description": "Bore.", "type": "string", "const": "bore" }, "at": { "$ref": "#/$defs/places" }, "top": { "$ref": "#/$defs/top" }, "depth": { "$ref": "#/$defs/depth" }, "retract": { "$ref": "#/$defs/retract" }, "dwell": { "$ref": "#/$defs/holeDwell" }, "feedOut": { "$ref": "#/$defs/feedOut" }, "between": { "$ref": "#/$defs/between" } } }, "reamHoles": { "title": "Ream", "description": "Feed in, feed out to retract.", "type": "object", "additionalProperties": false, "required": ["kind", "at", "top", "depth", "retract"], "properties": { "kind": { "title": "Kind", "description": "Ream.", "type": "string", "const": "ream" }, "at": { "$ref": "#/$defs/places" }, "top": { "$ref": "#/$defs/top" }, "depth": { "$ref": "#/$defs/depth" }, "retract": { "$ref": "#/$defs/retract" }, "feedOut": { "$ref": "#/$defs/feedOut" }, "between": { "$ref": "#/$defs/between" } } }, "points": { "title": "Points", "description": "Points in order, each [x, y, z], lengths in work coordinates.", "type": "array", "minItems": 1, "items": { "type": "array", "minItems": 3, "maxItems": 3, "items": { "type": "number" } }, "examples": [[[10, 10, -1], [20, 10, -1]]] }, "linePathMove": { "title": "Path at feed", "description": "Lines through many points. Not under inverse-time feed.", "type": "object", "additionalProperties": false, "required": ["path"], "properties": { "path": { "title": "Path", "description": "Lines through points.", "type": "object", "additionalProperties": false, "required": ["kind", "points"], "properties": { "kind": { "title": "Kind", "description": "Lines at feed.", "type": "string", "const": "line" }, "points": { "$ref": "#/$defs/points" } } }, "feed": { "$ref": "#/$defs/feed" } } }, "rapidPathMove": { "title": "Path at rapid", "description": "Rapids through many points. Not under inverse-time feed.", "type": "object", "additionalProperties": false, "required": ["path"], "properties": { "path": { "title": "Path", "description": "Rapids through points.", "type": "object", "additionalProperties": false, "required": ["kind", "points"], "properties": { "kind": { "title": "Kind", "description": "Rapids.", "type": "string", "const": "rapid" }, "points": { "$ref": "#/$defs/points" } } } } }, "dwellMove": { "title": "Dwell", "description": "The tool stands still for a time.", "type": "object", "additionalProperties": false, "required": ["dwell"], "properties": { "dwell": { "title": "Dwell", "description": "Time, seconds above 0.", "type": "number", "exclusiveMinimum": 0, "examples": [0.5] } }, "examples": [{ "dwell": 0.5 }] }, "pauseMove": { "title": "Pause", "description": "The machine stops, spindle too, until the operator goes on. Z is at or above clearance.", "type": "object", "additionalProperties": false, "required": ["pause"], "properties": { "pause": { "title": "Pause", "description": "What the operator is to do.", "type": "string", "examples": ["Turn the plate over"] }, "optional": { "title": "Optional", "description": "Whether the operator can switch the stop off.", "type": "boolean", "examples": [true] }, "park": { "title": "Park", "description": "Whether the tool goes to the park position first.", "type": "boolean", "examples": [true] } }, "examples": [{ "pause": "Turn the plate over", "optional": true }] }, "noteMove": { "title": "Note", "description": "A comment in the program.", "type": "object", "additionalProperties": false, "required": ["note"], "properties": { "note": { "title": "Note", "description": "Text of the comment.", "type": "string", "examples": ["finishing pass"] } }, "examples": [{ "note": "finishing pass" }] }, "spindleMove": { "title": "Spindle", "description": "Another speed in an operation that states a spindle; the direction stays.", "type": "object", "additionalProperties": false, "required": ["spindle"], "properties": { "spindle": { "title": "Spindle", "description": "The new speed.", "type": "object", "additionalProperties": false, "required": ["rpm"], "properties": { "rpm": { "$ref": "#/$defs/above0", "title": "Speed", "description": "Spindle speed, revolutions a minute.", "examples": [9e3] } }, "examples": [{ "rpm": 9e3 }] } }, "examples": [{ "spindle": { "rpm": 9e3 } }] }, "coolantMove": { "title": "Coolant", "description": "Another coolant.", "type": "object", "additionalProperties": false, "required": ["coolant"], "properties": { "coolant": { "$ref": "#/$defs/coolant", "title": "Coolant", "description": "What runs from here on.", "examples": ["mist", ["mist", "air"]] } }, "examples": [{ "coolant": "mist" }] }, "compMove": { "title": "Compensation", "description": "Cutter radius compensation by the controller: the coordinates are those of the contour.", "type": "object", "additionalProperties": false, "required": ["comp"], "properties": { "comp": { "title": "Compensation", "description": "Side of the contour on which the tool runs, seen along the motion. It takes effect with the next line in the plane, longer than the tool's radius, and is off before holes, pauses and the operation's end.", "type": "string", "enum": ["left", "right", "off"], "examples": ["left"] } }, "examples": [{ "comp": "left" }] } } };
  var func1 = Object.prototype.hasOwnProperty;
  var schema37 = { "title": "Tool", "description": "One tool.", "type": "object", "additionalProperties": false, "required": ["number", "kind", "diameter"], "properties": { "number": { "$ref": "#/$defs/tableNumber", "title": "Tool number", "description": "Number of the tool, by which operations and the controller know it. No two tools share one.", "examples": [1] }, "kind": { "title": "Tool kind", "description": "What the tool is. The last three never turn.", "type": "string", "enum": ["end-mill", "ball-mill", "bull-nose", "face-mill", "v-bit", "engraver", "drill", "spot-drill", "reamer", "tap", "boring-bar", "chamfer", "thread-mill", "probe", "drag-knife", "pen"], "examples": ["end-mill"] }, "diameter": { "$ref": "#/$defs/above0", "title": "Diameter", "description": "Cutting diameter, a length above 0.", "examples": [6] }, "description": { "title": "Description", "description": "What the operator reads on the set-up sheet and at a tool change.", "type": "string", "examples": ["6 mm carbide, two flutes"] }, "flutes": { "title": "Flutes", "description": "Number of cutting edges.", "type": "integer", "minimum": 1, "maximum": 1e3, "examples": [2] }, "maxRpm": { "$ref": "#/$defs/above0", "title": "Greatest speed", "description": "Greatest spindle speed that the tool bears, revolutions a minute.", "examples": [24e3] }, "minRpm": { "$ref": "#/$defs/above0", "title": "Least speed", "description": "Least spindle speed at which the tool may cut, revolutions a minute; not above `maxRpm`.", "examples": [8e3] }, "maxFeed": { "$ref": "#/$defs/above0", "title": "Greatest feed", "description": "Greatest feed that the tool bears, length units a minute.", "examples": [2400] }, "lengthOffset": { "$ref": "#/$defs/tableNumber", "title": "Length offset", "description": "Number of the tool length offset; the tool's number unless given.", "examples": [1] }, "radiusOffset": { "$ref": "#/$defs/tableNumber", "title": "Radius offset", "description": "Number of the tool radius offset that cutter compensation uses.", "examples": [21] }, "length": { "$ref": "#/$defs/above0", "title": "Gauge length", "description": "Length from the spindle nose to the tool tip, a length.", "examples": [92.4] }, "fluteLength": { "$ref": "#/$defs/above0", "title": "Flute length", "description": "Length of the cutting edges, a length.", "examples": [18] }, "stickOut": { "$ref": "#/$defs/above0", "title": "Stick-out", "description": "Length from the holder's face to the tool tip, a length.", "examples": [32] }, "shank": { "$ref": "#/$defs/above0", "title": "Shank", "description": "Diameter of the shank, a length.", "examples": [6] }, "holder": { "title": "Holder", "description": "The holder as a cylinder.", "type": "object", "additionalProperties": false, "required": ["diameter", "length"], "properties": { "diameter": { "$ref": "#/$defs/above0", "title": "Holder diameter", "description": "Greatest diameter of the holder, a length.", "examples": [40] }, "length": { "$ref": "#/$defs/above0", "title": "Holder length", "description": "Length of the holder from the spindle nose to its face, a length.", "examples": [60] } }, "examples": [{ "diameter": 40, "length": 60 }] }, "cornerRadius": { "title": "Corner radius", "description": "Radius of the corner of a bull-nose tool, a length; 0 is sharp.", "type": "number", "minimum": 0, "examples": [0.5] }, "tipAngle": { "title": "Tip angle", "description": "Included angle of the point, degrees above 0, at most 180.", "type": "number", "exclusiveMinimum": 0, "maximum": 180, "examples": [118] }, "tipDiameter": { "title": "Tip diameter", "description": "Diameter of the flat at the point, a length; 0 is sharp.", "type": "number", "minimum": 0, "examples": [0.2] }, "lead": { "$ref": "#/$defs/above0", "title": "Lead", "description": "Lead of a tap or thread mill, a length a revolution.", "examples": [1] }, "hand": { "title": "Hand", "description": "Hand of cutting: right cuts with the spindle cw, left with it ccw. Without it either direction is accepted.", "type": "string", "enum": ["right", "left"], "examples": ["right"] }, "centreCutting": { "title": "Centre cutting", "description": "Whether the tool may plunge straight down.", "type": "boolean", "examples": [true] }, "life": { "$ref": "#/$defs/above0", "title": "Life", "description": "Cutting time after which the tool is worn, minutes. An operation that would pass it is done with a spare, see `spareFor`; without one a warning tells it.", "examples": [90] }, "spareFor": { "$ref": "#/$defs/tableNumber", "title": "Spare for", "description": "Number of the tool that this one takes over from when that has cut for its `life`, at the start of an operation. Both are of one kind and cutting geometry; lengths, holder, offsets, limits and life may differ. No operation names a spare. Several spares of one tool are taken in the order in which they are listed.", "examples": [1] }, "measure": { "title": "Measure", "description": "Whether the length is measured after each change to this tool.", "type": "boolean", "examples": [true] } }, "examples": [{ "number": 1, "kind": "end-mill", "diameter": 6, "flutes": 2, "maxRpm": 24e3 }] };
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
      if (data.number === void 0) {
        const err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "number" }, message: "must have required property 'number'" };
        if (vErrors === null) {
          vErrors = [err0];
        } else {
          vErrors.push(err0);
        }
        errors++;
      }
      if (data.kind === void 0) {
        const err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "kind" }, message: "must have required property 'kind'" };
        if (vErrors === null) {
          vErrors = [err1];
        } else {
          vErrors.push(err1);
        }
        errors++;
      }
      if (data.diameter === void 0) {
        const err2 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "diameter" }, message: "must have required property 'diameter'" };
        if (vErrors === null) {
          vErrors = [err2];
        } else {
          vErrors.push(err2);
        }
        errors++;
      }
      for (const key0 in data) {
        if (!func1.call(schema37.properties, key0)) {
          const err3 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" };
          if (vErrors === null) {
            vErrors = [err3];
          } else {
            vErrors.push(err3);
          }
          errors++;
        }
      }
      if (data.number !== void 0) {
        let data0 = data.number;
        if (!(typeof data0 == "number" && (!(data0 % 1) && !isNaN(data0)) && isFinite(data0))) {
          const err4 = { instancePath: instancePath + "/number", schemaPath: "#/$defs/tableNumber/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
          if (vErrors === null) {
            vErrors = [err4];
          } else {
            vErrors.push(err4);
          }
          errors++;
        }
        if (typeof data0 == "number" && isFinite(data0)) {
          if (data0 > 99999999 || isNaN(data0)) {
            const err5 = { instancePath: instancePath + "/number", schemaPath: "#/$defs/tableNumber/maximum", keyword: "maximum", params: { comparison: "<=", limit: 99999999 }, message: "must be <= 99999999" };
            if (vErrors === null) {
              vErrors = [err5];
            } else {
              vErrors.push(err5);
            }
            errors++;
          }
          if (data0 < 1 || isNaN(data0)) {
            const err6 = { instancePath: instancePath + "/number", schemaPath: "#/$defs/tableNumber/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
            if (vErrors === null) {
              vErrors = [err6];
            } else {
              vErrors.push(err6);
            }
            errors++;
          }
        }
      }
      if (data.kind !== void 0) {
        let data1 = data.kind;
        if (typeof data1 !== "string") {
          const err7 = { instancePath: instancePath + "/kind", schemaPath: "#/properties/kind/type", keyword: "type", params: { type: "string" }, message: "must be string" };
          if (vErrors === null) {
            vErrors = [err7];
          } else {
            vErrors.push(err7);
          }
          errors++;
        }
        if (!(data1 === "end-mill" || data1 === "ball-mill" || data1 === "bull-nose" || data1 === "face-mill" || data1 === "v-bit" || data1 === "engraver" || data1 === "drill" || data1 === "spot-drill" || data1 === "reamer" || data1 === "tap" || data1 === "boring-bar" || data1 === "chamfer" || data1 === "thread-mill" || data1 === "probe" || data1 === "drag-knife" || data1 === "pen")) {
          const err8 = { instancePath: instancePath + "/kind", schemaPath: "#/properties/kind/enum", keyword: "enum", params: { allowedValues: schema37.properties.kind.enum }, message: "must be equal to one of the allowed values" };
          if (vErrors === null) {
            vErrors = [err8];
          } else {
            vErrors.push(err8);
          }
          errors++;
        }
      }
      if (data.diameter !== void 0) {
        let data2 = data.diameter;
        if (typeof data2 == "number" && isFinite(data2)) {
          if (data2 <= 0 || isNaN(data2)) {
            const err9 = { instancePath: instancePath + "/diameter", schemaPath: "#/$defs/above0/exclusiveMinimum", keyword: "exclusiveMinimum", params: { comparison: ">", limit: 0 }, message: "must be > 0" };
            if (vErrors === null) {
              vErrors = [err9];
            } else {
              vErrors.push(err9);
            }
            errors++;
          }
        } else {
          const err10 = { instancePath: instancePath + "/diameter", schemaPath: "#/$defs/above0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
          if (vErrors === null) {
            vErrors = [err10];
          } else {
            vErrors.push(err10);
          }
          errors++;
        }
      }
      if (data.description !== void 0) {
        if (typeof data.description !== "string") {
          const err11 = { instancePath: instancePath + "/description", schemaPath: "#/properties/description/type", keyword: "type", params: { type: "string" }, message: "must be string" };
          if (vErrors === null) {
            vErrors = [err11];
          } else {
            vErrors.push(err11);
          }
          errors++;
        }
      }
      if (data.flutes !== void 0) {
        let data4 = data.flutes;
        if (!(typeof data4 == "number" && (!(data4 % 1) && !isNaN(data4)) && isFinite(data4))) {
          const err12 = { instancePath: instancePath + "/flutes", schemaPath: "#/properties/flutes/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
          if (vErrors === null) {
            vErrors = [err12];
          } else {
            vErrors.push(err12);
          }
          errors++;
        }
        if (typeof data4 == "number" && isFinite(data4)) {
          if (data4 > 1e3 || isNaN(data4)) {
            const err13 = { instancePath: instancePath + "/flutes", schemaPath: "#/properties/flutes/maximum", keyword: "maximum", params: { comparison: "<=", limit: 1e3 }, message: "must be <= 1000" };
            if (vErrors === null) {
              vErrors = [err13];
            } else {
              vErrors.push(err13);
            }
            errors++;
          }
          if (data4 < 1 || isNaN(data4)) {
            const err14 = { instancePath: instancePath + "/flutes", schemaPath: "#/properties/flutes/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
            if (vErrors === null) {
              vErrors = [err14];
            } else {
              vErrors.push(err14);
            }
            errors++;
          }
        }
      }
      if (data.maxRpm !== void 0) {
        let data5 = data.maxRpm;
        if (typeof data5 == "number" && isFinite(data5)) {
          if (data5 <= 0 || isNaN(data5)) {
            const err15 = { instancePath: instancePath + "/maxRpm", schemaPath: "#/$defs/above0/exclusiveMinimum", keyword: "exclusiveMinimum", params: { comparison: ">", limit: 0 }, message: "must be > 0" };
            if (vErrors === null) {
              vErrors = [err15];
            } else {
              vErrors.push(err15);
            }
            errors++;
          }
        } else {
          const err16 = { instancePath: instancePath + "/maxRpm", schemaPath: "#/$defs/above0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
          if (vErrors === null) {
            vErrors = [err16];
          } else {
            vErrors.push(err16);
          }
          errors++;
        }
      }
      if (data.minRpm !== void 0) {
        let data6 = data.minRpm;
        if (typeof data6 == "number" && isFinite(data6)) {
          if (data6 <= 0 || isNaN(data6)) {
            const err17 = { instancePath: instancePath + "/minRpm", schemaPath: "#/$defs/above0/exclusiveMinimum", keyword: "exclusiveMinimum", params: { comparison: ">", limit: 0 }, message: "must be > 0" };
            if (vErrors === null) {
              vErrors = [err17];
            } else {
              vErrors.push(err17);
            }
            errors++;
          }
        } else {
          const err18 = { instancePath: instancePath + "/minRpm", schemaPath: "#/$defs/above0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
          if (vErrors === null) {
            vErrors = [err18];
          } else {
            vErrors.push(err18);
          }
          errors++;
        }
      }
      if (data.maxFeed !== void 0) {
        let data7 = data.maxFeed;
        if (typeof data7 == "number" && isFinite(data7)) {
          if (data7 <= 0 || isNaN(data7)) {
            const err19 = { instancePath: instancePath + "/maxFeed", schemaPath: "#/$defs/above0/exclusiveMinimum", keyword: "exclusiveMinimum", params: { comparison: ">", limit: 0 }, message: "must be > 0" };
            if (vErrors === null) {
              vErrors = [err19];
            } else {
              vErrors.push(err19);
            }
            errors++;
          }
        } else {
          const err20 = { instancePath: instancePath + "/maxFeed", schemaPath: "#/$defs/above0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
          if (vErrors === null) {
            vErrors = [err20];
          } else {
            vErrors.push(err20);
          }
          errors++;
        }
      }
      if (data.lengthOffset !== void 0) {
        let data8 = data.lengthOffset;
        if (!(typeof data8 == "number" && (!(data8 % 1) && !isNaN(data8)) && isFinite(data8))) {
          const err21 = { instancePath: instancePath + "/lengthOffset", schemaPath: "#/$defs/tableNumber/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
          if (vErrors === null) {
            vErrors = [err21];
          } else {
            vErrors.push(err21);
          }
          errors++;
        }
        if (typeof data8 == "number" && isFinite(data8)) {
          if (data8 > 99999999 || isNaN(data8)) {
            const err22 = { instancePath: instancePath + "/lengthOffset", schemaPath: "#/$defs/tableNumber/maximum", keyword: "maximum", params: { comparison: "<=", limit: 99999999 }, message: "must be <= 99999999" };
            if (vErrors === null) {
              vErrors = [err22];
            } else {
              vErrors.push(err22);
            }
            errors++;
          }
          if (data8 < 1 || isNaN(data8)) {
            const err23 = { instancePath: instancePath + "/lengthOffset", schemaPath: "#/$defs/tableNumber/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
            if (vErrors === null) {
              vErrors = [err23];
            } else {
              vErrors.push(err23);
            }
            errors++;
          }
        }
      }
      if (data.radiusOffset !== void 0) {
        let data9 = data.radiusOffset;
        if (!(typeof data9 == "number" && (!(data9 % 1) && !isNaN(data9)) && isFinite(data9))) {
          const err24 = { instancePath: instancePath + "/radiusOffset", schemaPath: "#/$defs/tableNumber/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
          if (vErrors === null) {
            vErrors = [err24];
          } else {
            vErrors.push(err24);
          }
          errors++;
        }
        if (typeof data9 == "number" && isFinite(data9)) {
          if (data9 > 99999999 || isNaN(data9)) {
            const err25 = { instancePath: instancePath + "/radiusOffset", schemaPath: "#/$defs/tableNumber/maximum", keyword: "maximum", params: { comparison: "<=", limit: 99999999 }, message: "must be <= 99999999" };
            if (vErrors === null) {
              vErrors = [err25];
            } else {
              vErrors.push(err25);
            }
            errors++;
          }
          if (data9 < 1 || isNaN(data9)) {
            const err26 = { instancePath: instancePath + "/radiusOffset", schemaPath: "#/$defs/tableNumber/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
            if (vErrors === null) {
              vErrors = [err26];
            } else {
              vErrors.push(err26);
            }
            errors++;
          }
        }
      }
      if (data.length !== void 0) {
        let data10 = data.length;
        if (typeof data10 == "number" && isFinite(data10)) {
          if (data10 <= 0 || isNaN(data10)) {
            const err27 = { instancePath: instancePath + "/length", schemaPath: "#/$defs/above0/exclusiveMinimum", keyword: "exclusiveMinimum", params: { comparison: ">", limit: 0 }, message: "must be > 0" };
            if (vErrors === null) {
              vErrors = [err27];
            } else {
              vErrors.push(err27);
            }
            errors++;
          }
        } else {
          const err28 = { instancePath: instancePath + "/length", schemaPath: "#/$defs/above0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
          if (vErrors === null) {
            vErrors = [err28];
          } else {
            vErrors.push(err28);
          }
          errors++;
        }
      }
      if (data.fluteLength !== void 0) {
        let data11 = data.fluteLength;
        if (typeof data11 == "number" && isFinite(data11)) {
          if (data11 <= 0 || isNaN(data11)) {
            const err29 = { instancePath: instancePath + "/fluteLength", schemaPath: "#/$defs/above0/exclusiveMinimum", keyword: "exclusiveMinimum", params: { comparison: ">", limit: 0 }, message: "must be > 0" };
            if (vErrors === null) {
              vErrors = [err29];
            } else {
              vErrors.push(err29);
            }
            errors++;
          }
        } else {
          const err30 = { instancePath: instancePath + "/fluteLength", schemaPath: "#/$defs/above0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
          if (vErrors === null) {
            vErrors = [err30];
          } else {
            vErrors.push(err30);
          }
          errors++;
        }
      }
      if (data.stickOut !== void 0) {
        let data12 = data.stickOut;
        if (typeof data12 == "number" && isFinite(data12)) {
          if (data12 <= 0 || isNaN(data12)) {
            const err31 = { instancePath: instancePath + "/stickOut", schemaPath: "#/$defs/above0/exclusiveMinimum", keyword: "exclusiveMinimum", params: { comparison: ">", limit: 0 }, message: "must be > 0" };
            if (vErrors === null) {
              vErrors = [err31];
            } else {
              vErrors.push(err31);
            }
            errors++;
          }
        } else {
          const err32 = { instancePath: instancePath + "/stickOut", schemaPath: "#/$defs/above0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
          if (vErrors === null) {
            vErrors = [err32];
          } else {
            vErrors.push(err32);
          }
          errors++;
        }
      }
      if (data.shank !== void 0) {
        let data13 = data.shank;
        if (typeof data13 == "number" && isFinite(data13)) {
          if (data13 <= 0 || isNaN(data13)) {
            const err33 = { instancePath: instancePath + "/shank", schemaPath: "#/$defs/above0/exclusiveMinimum", keyword: "exclusiveMinimum", params: { comparison: ">", limit: 0 }, message: "must be > 0" };
            if (vErrors === null) {
              vErrors = [err33];
            } else {
              vErrors.push(err33);
            }
            errors++;
          }
        } else {
          const err34 = { instancePath: instancePath + "/shank", schemaPath: "#/$defs/above0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
          if (vErrors === null) {
            vErrors = [err34];
          } else {
            vErrors.push(err34);
          }
          errors++;
        }
      }
      if (data.holder !== void 0) {
        let data14 = data.holder;
        if (data14 && typeof data14 == "object" && !Array.isArray(data14)) {
          if (data14.diameter === void 0) {
            const err35 = { instancePath: instancePath + "/holder", schemaPath: "#/properties/holder/required", keyword: "required", params: { missingProperty: "diameter" }, message: "must have required property 'diameter'" };
            if (vErrors === null) {
              vErrors = [err35];
            } else {
              vErrors.push(err35);
            }
            errors++;
          }
          if (data14.length === void 0) {
            const err36 = { instancePath: instancePath + "/holder", schemaPath: "#/properties/holder/required", keyword: "required", params: { missingProperty: "length" }, message: "must have required property 'length'" };
            if (vErrors === null) {
              vErrors = [err36];
            } else {
              vErrors.push(err36);
            }
            errors++;
          }
          for (const key1 in data14) {
            if (!(key1 === "diameter" || key1 === "length")) {
              const err37 = { instancePath: instancePath + "/holder", schemaPath: "#/properties/holder/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key1 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err37];
              } else {
                vErrors.push(err37);
              }
              errors++;
            }
          }
          if (data14.diameter !== void 0) {
            let data15 = data14.diameter;
            if (typeof data15 == "number" && isFinite(data15)) {
              if (data15 <= 0 || isNaN(data15)) {
                const err38 = { instancePath: instancePath + "/holder/diameter", schemaPath: "#/$defs/above0/exclusiveMinimum", keyword: "exclusiveMinimum", params: { comparison: ">", limit: 0 }, message: "must be > 0" };
                if (vErrors === null) {
                  vErrors = [err38];
                } else {
                  vErrors.push(err38);
                }
                errors++;
              }
            } else {
              const err39 = { instancePath: instancePath + "/holder/diameter", schemaPath: "#/$defs/above0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
              if (vErrors === null) {
                vErrors = [err39];
              } else {
                vErrors.push(err39);
              }
              errors++;
            }
          }
          if (data14.length !== void 0) {
            let data16 = data14.length;
            if (typeof data16 == "number" && isFinite(data16)) {
              if (data16 <= 0 || isNaN(data16)) {
                const err40 = { instancePath: instancePath + "/holder/length", schemaPath: "#/$defs/above0/exclusiveMinimum", keyword: "exclusiveMinimum", params: { comparison: ">", limit: 0 }, message: "must be > 0" };
                if (vErrors === null) {
                  vErrors = [err40];
                } else {
                  vErrors.push(err40);
                }
                errors++;
              }
            } else {
              const err41 = { instancePath: instancePath + "/holder/length", schemaPath: "#/$defs/above0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
              if (vErrors === null) {
                vErrors = [err41];
              } else {
                vErrors.push(err41);
              }
              errors++;
            }
          }
        } else {
          const err42 = { instancePath: instancePath + "/holder", schemaPath: "#/properties/holder/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err42];
          } else {
            vErrors.push(err42);
          }
          errors++;
        }
      }
      if (data.cornerRadius !== void 0) {
        let data17 = data.cornerRadius;
        if (typeof data17 == "number" && isFinite(data17)) {
          if (data17 < 0 || isNaN(data17)) {
            const err43 = { instancePath: instancePath + "/cornerRadius", schemaPath: "#/properties/cornerRadius/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
            if (vErrors === null) {
              vErrors = [err43];
            } else {
              vErrors.push(err43);
            }
            errors++;
          }
        } else {
          const err44 = { instancePath: instancePath + "/cornerRadius", schemaPath: "#/properties/cornerRadius/type", keyword: "type", params: { type: "number" }, message: "must be number" };
          if (vErrors === null) {
            vErrors = [err44];
          } else {
            vErrors.push(err44);
          }
          errors++;
        }
      }
      if (data.tipAngle !== void 0) {
        let data18 = data.tipAngle;
        if (typeof data18 == "number" && isFinite(data18)) {
          if (data18 > 180 || isNaN(data18)) {
            const err45 = { instancePath: instancePath + "/tipAngle", schemaPath: "#/properties/tipAngle/maximum", keyword: "maximum", params: { comparison: "<=", limit: 180 }, message: "must be <= 180" };
            if (vErrors === null) {
              vErrors = [err45];
            } else {
              vErrors.push(err45);
            }
            errors++;
          }
          if (data18 <= 0 || isNaN(data18)) {
            const err46 = { instancePath: instancePath + "/tipAngle", schemaPath: "#/properties/tipAngle/exclusiveMinimum", keyword: "exclusiveMinimum", params: { comparison: ">", limit: 0 }, message: "must be > 0" };
            if (vErrors === null) {
              vErrors = [err46];
            } else {
              vErrors.push(err46);
            }
            errors++;
          }
        } else {
          const err47 = { instancePath: instancePath + "/tipAngle", schemaPath: "#/properties/tipAngle/type", keyword: "type", params: { type: "number" }, message: "must be number" };
          if (vErrors === null) {
            vErrors = [err47];
          } else {
            vErrors.push(err47);
          }
          errors++;
        }
      }
      if (data.tipDiameter !== void 0) {
        let data19 = data.tipDiameter;
        if (typeof data19 == "number" && isFinite(data19)) {
          if (data19 < 0 || isNaN(data19)) {
            const err48 = { instancePath: instancePath + "/tipDiameter", schemaPath: "#/properties/tipDiameter/minimum", keyword: "minimum", params: { comparison: ">=", limit: 0 }, message: "must be >= 0" };
            if (vErrors === null) {
              vErrors = [err48];
            } else {
              vErrors.push(err48);
            }
            errors++;
          }
        } else {
          const err49 = { instancePath: instancePath + "/tipDiameter", schemaPath: "#/properties/tipDiameter/type", keyword: "type", params: { type: "number" }, message: "must be number" };
          if (vErrors === null) {
            vErrors = [err49];
          } else {
            vErrors.push(err49);
          }
          errors++;
        }
      }
      if (data.lead !== void 0) {
        let data20 = data.lead;
        if (typeof data20 == "number" && isFinite(data20)) {
          if (data20 <= 0 || isNaN(data20)) {
            const err50 = { instancePath: instancePath + "/lead", schemaPath: "#/$defs/above0/exclusiveMinimum", keyword: "exclusiveMinimum", params: { comparison: ">", limit: 0 }, message: "must be > 0" };
            if (vErrors === null) {
              vErrors = [err50];
            } else {
              vErrors.push(err50);
            }
            errors++;
          }
        } else {
          const err51 = { instancePath: instancePath + "/lead", schemaPath: "#/$defs/above0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
          if (vErrors === null) {
            vErrors = [err51];
          } else {
            vErrors.push(err51);
          }
          errors++;
        }
      }
      if (data.hand !== void 0) {
        let data21 = data.hand;
        if (typeof data21 !== "string") {
          const err52 = { instancePath: instancePath + "/hand", schemaPath: "#/properties/hand/type", keyword: "type", params: { type: "string" }, message: "must be string" };
          if (vErrors === null) {
            vErrors = [err52];
          } else {
            vErrors.push(err52);
          }
          errors++;
        }
        if (!(data21 === "right" || data21 === "left")) {
          const err53 = { instancePath: instancePath + "/hand", schemaPath: "#/properties/hand/enum", keyword: "enum", params: { allowedValues: schema37.properties.hand.enum }, message: "must be equal to one of the allowed values" };
          if (vErrors === null) {
            vErrors = [err53];
          } else {
            vErrors.push(err53);
          }
          errors++;
        }
      }
      if (data.centreCutting !== void 0) {
        if (typeof data.centreCutting !== "boolean") {
          const err54 = { instancePath: instancePath + "/centreCutting", schemaPath: "#/properties/centreCutting/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean" };
          if (vErrors === null) {
            vErrors = [err54];
          } else {
            vErrors.push(err54);
          }
          errors++;
        }
      }
      if (data.life !== void 0) {
        let data23 = data.life;
        if (typeof data23 == "number" && isFinite(data23)) {
          if (data23 <= 0 || isNaN(data23)) {
            const err55 = { instancePath: instancePath + "/life", schemaPath: "#/$defs/above0/exclusiveMinimum", keyword: "exclusiveMinimum", params: { comparison: ">", limit: 0 }, message: "must be > 0" };
            if (vErrors === null) {
              vErrors = [err55];
            } else {
              vErrors.push(err55);
            }
            errors++;
          }
        } else {
          const err56 = { instancePath: instancePath + "/life", schemaPath: "#/$defs/above0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
          if (vErrors === null) {
            vErrors = [err56];
          } else {
            vErrors.push(err56);
          }
          errors++;
        }
      }
      if (data.spareFor !== void 0) {
        let data24 = data.spareFor;
        if (!(typeof data24 == "number" && (!(data24 % 1) && !isNaN(data24)) && isFinite(data24))) {
          const err57 = { instancePath: instancePath + "/spareFor", schemaPath: "#/$defs/tableNumber/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
          if (vErrors === null) {
            vErrors = [err57];
          } else {
            vErrors.push(err57);
          }
          errors++;
        }
        if (typeof data24 == "number" && isFinite(data24)) {
          if (data24 > 99999999 || isNaN(data24)) {
            const err58 = { instancePath: instancePath + "/spareFor", schemaPath: "#/$defs/tableNumber/maximum", keyword: "maximum", params: { comparison: "<=", limit: 99999999 }, message: "must be <= 99999999" };
            if (vErrors === null) {
              vErrors = [err58];
            } else {
              vErrors.push(err58);
            }
            errors++;
          }
          if (data24 < 1 || isNaN(data24)) {
            const err59 = { instancePath: instancePath + "/spareFor", schemaPath: "#/$defs/tableNumber/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
            if (vErrors === null) {
              vErrors = [err59];
            } else {
              vErrors.push(err59);
            }
            errors++;
          }
        }
      }
      if (data.measure !== void 0) {
        if (typeof data.measure !== "boolean") {
          const err60 = { instancePath: instancePath + "/measure", schemaPath: "#/properties/measure/type", keyword: "type", params: { type: "boolean" }, message: "must be boolean" };
          if (vErrors === null) {
            vErrors = [err60];
          } else {
            vErrors.push(err60);
          }
          errors++;
        }
      }
    } else {
      const err61 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" };
      if (vErrors === null) {
        vErrors = [err61];
      } else {
        vErrors.push(err61);
      }
      errors++;
    }
    validate21.errors = vErrors;
    return errors === 0;
  }
  validate21.evaluated = { "props": true, "dynamicProps": false, "dynamicItems": false };
  var schema54 = { "title": "Operation", "description": "One operation with one tool.", "type": "object", "additionalProperties": false, "required": ["id", "tool", "moves"], "properties": { "id": { "title": "Operation id", "description": "Short name by which findings and options know the operation. No two operations share one.", "type": "string", "pattern": "\\S", "examples": ["op10"] }, "name": { "title": "Operation name", "description": "What is done; stands on the set-up sheet and in comments of the program. The id unless given.", "type": "string", "examples": ["Outline, outside"] }, "tool": { "$ref": "#/$defs/tableNumber", "title": "Tool", "description": "Number of a tool that the job defines.", "examples": [1] }, "spindle": { "title": "Spindle", "description": "Speed and direction. Stated with every tool that turns, and with none of probe, drag-knife and pen.", "type": "object", "additionalProperties": false, "required": ["rpm", "direction"], "properties": { "rpm": { "$ref": "#/$defs/above0", "title": "Speed", "description": "Spindle speed, revolutions a minute.", "examples": [16e3] }, "direction": { "title": "Direction", "description": "Seen from the spindle towards the work: cw drives a right-hand screw into the work.", "type": "string", "enum": ["cw", "ccw"], "examples": ["cw"] } }, "examples": [{ "rpm": 16e3, "direction": "cw" }] }, "coolant": { "$ref": "#/$defs/coolant", "title": "Coolant", "description": "Coolant at the start of the operation; off unless given.", "examples": ["off", ["mist", "air"]] }, "feedMode": { "title": "Feed mode", "description": "What a feed means: length units a minute, length units a revolution, or 1/minutes for the whole motion. Per minute unless given.", "type": "string", "enum": ["per-minute", "per-revolution", "inverse-time"], "examples": ["per-minute"] }, "workOffset": { "$ref": "#/$defs/workOffset", "title": "Work offset", "description": "Work offset, 1 to 9; the job's unless given.", "examples": [2] }, "clearance": { "title": "Clearance", "description": "Z of safe travel in this operation, a length in work coordinates; the job's unless given.", "type": "number", "examples": [20] }, "hood": { "title": "Hood", "description": "Where the dust hood stands while cutting.", "type": "string", "enum": ["up", "down"], "examples": ["down"] }, "tolerance": { "$ref": "#/$defs/above0", "title": "Tolerance", "description": "How far the path may be rounded off where it is blended, and chords may leave their arc, a length above 0. It is written rounded down; a controller that cannot be told gets the exact path, or the operation is refused.", "examples": [0.01] }, "path": { "title": "Path mode", "description": "Whether corners are met exactly or blended.", "type": "string", "enum": ["exact", "blend"], "examples": ["blend"] }, "moves": { "title": "Moves", "description": "What the tool does, in order. The first motion is a rapid that names x and y; z is at clearance until named.", "type": "array", "minItems": 1 } } };
  var schema57 = { "description": "Off, one coolant, or a list of those that run together.", "anyOf": [{ "type": "string", "enum": ["off", "mist", "flood", "air", "through-tool"] }, { "type": "array", "minItems": 1, "uniqueItems": true, "items": { "type": "string", "enum": ["mist", "flood", "air", "through-tool"] } }] };
  var pattern4 = new RegExp("\\S", "u");
  function validate23(data, { instancePath = "", parentData, parentDataProperty, rootData = data, dynamicAnchors = {} } = {}) {
    let vErrors = null;
    let errors = 0;
    const evaluated0 = validate23.evaluated;
    if (evaluated0.dynamicProps) {
      evaluated0.props = void 0;
    }
    if (evaluated0.dynamicItems) {
      evaluated0.items = void 0;
    }
    if (data && typeof data == "object" && !Array.isArray(data)) {
      if (data.id === void 0) {
        const err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "id" }, message: "must have required property 'id'" };
        if (vErrors === null) {
          vErrors = [err0];
        } else {
          vErrors.push(err0);
        }
        errors++;
      }
      if (data.tool === void 0) {
        const err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "tool" }, message: "must have required property 'tool'" };
        if (vErrors === null) {
          vErrors = [err1];
        } else {
          vErrors.push(err1);
        }
        errors++;
      }
      if (data.moves === void 0) {
        const err2 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "moves" }, message: "must have required property 'moves'" };
        if (vErrors === null) {
          vErrors = [err2];
        } else {
          vErrors.push(err2);
        }
        errors++;
      }
      for (const key0 in data) {
        if (!func1.call(schema54.properties, key0)) {
          const err3 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" };
          if (vErrors === null) {
            vErrors = [err3];
          } else {
            vErrors.push(err3);
          }
          errors++;
        }
      }
      if (data.id !== void 0) {
        let data0 = data.id;
        if (typeof data0 === "string") {
          if (!pattern4.test(data0)) {
            const err4 = { instancePath: instancePath + "/id", schemaPath: "#/properties/id/pattern", keyword: "pattern", params: { pattern: "\\S" }, message: 'must match pattern "\\S"' };
            if (vErrors === null) {
              vErrors = [err4];
            } else {
              vErrors.push(err4);
            }
            errors++;
          }
        } else {
          const err5 = { instancePath: instancePath + "/id", schemaPath: "#/properties/id/type", keyword: "type", params: { type: "string" }, message: "must be string" };
          if (vErrors === null) {
            vErrors = [err5];
          } else {
            vErrors.push(err5);
          }
          errors++;
        }
      }
      if (data.name !== void 0) {
        if (typeof data.name !== "string") {
          const err6 = { instancePath: instancePath + "/name", schemaPath: "#/properties/name/type", keyword: "type", params: { type: "string" }, message: "must be string" };
          if (vErrors === null) {
            vErrors = [err6];
          } else {
            vErrors.push(err6);
          }
          errors++;
        }
      }
      if (data.tool !== void 0) {
        let data2 = data.tool;
        if (!(typeof data2 == "number" && (!(data2 % 1) && !isNaN(data2)) && isFinite(data2))) {
          const err7 = { instancePath: instancePath + "/tool", schemaPath: "#/$defs/tableNumber/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
          if (vErrors === null) {
            vErrors = [err7];
          } else {
            vErrors.push(err7);
          }
          errors++;
        }
        if (typeof data2 == "number" && isFinite(data2)) {
          if (data2 > 99999999 || isNaN(data2)) {
            const err8 = { instancePath: instancePath + "/tool", schemaPath: "#/$defs/tableNumber/maximum", keyword: "maximum", params: { comparison: "<=", limit: 99999999 }, message: "must be <= 99999999" };
            if (vErrors === null) {
              vErrors = [err8];
            } else {
              vErrors.push(err8);
            }
            errors++;
          }
          if (data2 < 1 || isNaN(data2)) {
            const err9 = { instancePath: instancePath + "/tool", schemaPath: "#/$defs/tableNumber/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
            if (vErrors === null) {
              vErrors = [err9];
            } else {
              vErrors.push(err9);
            }
            errors++;
          }
        }
      }
      if (data.spindle !== void 0) {
        let data3 = data.spindle;
        if (data3 && typeof data3 == "object" && !Array.isArray(data3)) {
          if (data3.rpm === void 0) {
            const err10 = { instancePath: instancePath + "/spindle", schemaPath: "#/properties/spindle/required", keyword: "required", params: { missingProperty: "rpm" }, message: "must have required property 'rpm'" };
            if (vErrors === null) {
              vErrors = [err10];
            } else {
              vErrors.push(err10);
            }
            errors++;
          }
          if (data3.direction === void 0) {
            const err11 = { instancePath: instancePath + "/spindle", schemaPath: "#/properties/spindle/required", keyword: "required", params: { missingProperty: "direction" }, message: "must have required property 'direction'" };
            if (vErrors === null) {
              vErrors = [err11];
            } else {
              vErrors.push(err11);
            }
            errors++;
          }
          for (const key1 in data3) {
            if (!(key1 === "rpm" || key1 === "direction")) {
              const err12 = { instancePath: instancePath + "/spindle", schemaPath: "#/properties/spindle/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key1 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err12];
              } else {
                vErrors.push(err12);
              }
              errors++;
            }
          }
          if (data3.rpm !== void 0) {
            let data4 = data3.rpm;
            if (typeof data4 == "number" && isFinite(data4)) {
              if (data4 <= 0 || isNaN(data4)) {
                const err13 = { instancePath: instancePath + "/spindle/rpm", schemaPath: "#/$defs/above0/exclusiveMinimum", keyword: "exclusiveMinimum", params: { comparison: ">", limit: 0 }, message: "must be > 0" };
                if (vErrors === null) {
                  vErrors = [err13];
                } else {
                  vErrors.push(err13);
                }
                errors++;
              }
            } else {
              const err14 = { instancePath: instancePath + "/spindle/rpm", schemaPath: "#/$defs/above0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
              if (vErrors === null) {
                vErrors = [err14];
              } else {
                vErrors.push(err14);
              }
              errors++;
            }
          }
          if (data3.direction !== void 0) {
            let data5 = data3.direction;
            if (typeof data5 !== "string") {
              const err15 = { instancePath: instancePath + "/spindle/direction", schemaPath: "#/properties/spindle/properties/direction/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err15];
              } else {
                vErrors.push(err15);
              }
              errors++;
            }
            if (!(data5 === "cw" || data5 === "ccw")) {
              const err16 = { instancePath: instancePath + "/spindle/direction", schemaPath: "#/properties/spindle/properties/direction/enum", keyword: "enum", params: { allowedValues: schema54.properties.spindle.properties.direction.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err16];
              } else {
                vErrors.push(err16);
              }
              errors++;
            }
          }
        } else {
          const err17 = { instancePath: instancePath + "/spindle", schemaPath: "#/properties/spindle/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err17];
          } else {
            vErrors.push(err17);
          }
          errors++;
        }
      }
      if (data.coolant !== void 0) {
        let data6 = data.coolant;
        const _errs19 = errors;
        let valid5 = false;
        const _errs20 = errors;
        if (typeof data6 !== "string") {
          const err18 = { instancePath: instancePath + "/coolant", schemaPath: "#/$defs/coolant/anyOf/0/type", keyword: "type", params: { type: "string" }, message: "must be string" };
          if (vErrors === null) {
            vErrors = [err18];
          } else {
            vErrors.push(err18);
          }
          errors++;
        }
        if (!(data6 === "off" || data6 === "mist" || data6 === "flood" || data6 === "air" || data6 === "through-tool")) {
          const err19 = { instancePath: instancePath + "/coolant", schemaPath: "#/$defs/coolant/anyOf/0/enum", keyword: "enum", params: { allowedValues: schema57.anyOf[0].enum }, message: "must be equal to one of the allowed values" };
          if (vErrors === null) {
            vErrors = [err19];
          } else {
            vErrors.push(err19);
          }
          errors++;
        }
        var _valid0 = _errs20 === errors;
        valid5 = valid5 || _valid0;
        const _errs22 = errors;
        if (Array.isArray(data6)) {
          if (data6.length < 1) {
            const err20 = { instancePath: instancePath + "/coolant", schemaPath: "#/$defs/coolant/anyOf/1/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items" };
            if (vErrors === null) {
              vErrors = [err20];
            } else {
              vErrors.push(err20);
            }
            errors++;
          }
          const len0 = data6.length;
          for (let i0 = 0; i0 < len0; i0++) {
            let data7 = data6[i0];
            if (typeof data7 !== "string") {
              const err21 = { instancePath: instancePath + "/coolant/" + i0, schemaPath: "#/$defs/coolant/anyOf/1/items/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err21];
              } else {
                vErrors.push(err21);
              }
              errors++;
            }
            if (!(data7 === "mist" || data7 === "flood" || data7 === "air" || data7 === "through-tool")) {
              const err22 = { instancePath: instancePath + "/coolant/" + i0, schemaPath: "#/$defs/coolant/anyOf/1/items/enum", keyword: "enum", params: { allowedValues: schema57.anyOf[1].items.enum }, message: "must be equal to one of the allowed values" };
              if (vErrors === null) {
                vErrors = [err22];
              } else {
                vErrors.push(err22);
              }
              errors++;
            }
          }
          let i1 = data6.length;
          let j0;
          if (i1 > 1) {
            const indices0 = {};
            for (; i1--; ) {
              let item0 = data6[i1];
              if (typeof item0 !== "string") {
                continue;
              }
              if (typeof indices0[item0] == "number") {
                j0 = indices0[item0];
                const err23 = { instancePath: instancePath + "/coolant", schemaPath: "#/$defs/coolant/anyOf/1/uniqueItems", keyword: "uniqueItems", params: { i: i1, j: j0 }, message: "must NOT have duplicate items (items ## " + j0 + " and " + i1 + " are identical)" };
                if (vErrors === null) {
                  vErrors = [err23];
                } else {
                  vErrors.push(err23);
                }
                errors++;
                break;
              }
              indices0[item0] = i1;
            }
          }
        } else {
          const err24 = { instancePath: instancePath + "/coolant", schemaPath: "#/$defs/coolant/anyOf/1/type", keyword: "type", params: { type: "array" }, message: "must be array" };
          if (vErrors === null) {
            vErrors = [err24];
          } else {
            vErrors.push(err24);
          }
          errors++;
        }
        var _valid0 = _errs22 === errors;
        valid5 = valid5 || _valid0;
        if (!valid5) {
          const err25 = { instancePath: instancePath + "/coolant", schemaPath: "#/$defs/coolant/anyOf", keyword: "anyOf", params: {}, message: "must match a schema in anyOf" };
          if (vErrors === null) {
            vErrors = [err25];
          } else {
            vErrors.push(err25);
          }
          errors++;
        } else {
          errors = _errs19;
          if (vErrors !== null) {
            if (_errs19) {
              vErrors.length = _errs19;
            } else {
              vErrors = null;
            }
          }
        }
      }
      if (data.feedMode !== void 0) {
        let data8 = data.feedMode;
        if (typeof data8 !== "string") {
          const err26 = { instancePath: instancePath + "/feedMode", schemaPath: "#/properties/feedMode/type", keyword: "type", params: { type: "string" }, message: "must be string" };
          if (vErrors === null) {
            vErrors = [err26];
          } else {
            vErrors.push(err26);
          }
          errors++;
        }
        if (!(data8 === "per-minute" || data8 === "per-revolution" || data8 === "inverse-time")) {
          const err27 = { instancePath: instancePath + "/feedMode", schemaPath: "#/properties/feedMode/enum", keyword: "enum", params: { allowedValues: schema54.properties.feedMode.enum }, message: "must be equal to one of the allowed values" };
          if (vErrors === null) {
            vErrors = [err27];
          } else {
            vErrors.push(err27);
          }
          errors++;
        }
      }
      if (data.workOffset !== void 0) {
        let data9 = data.workOffset;
        if (!(typeof data9 == "number" && (!(data9 % 1) && !isNaN(data9)) && isFinite(data9))) {
          const err28 = { instancePath: instancePath + "/workOffset", schemaPath: "#/$defs/workOffset/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
          if (vErrors === null) {
            vErrors = [err28];
          } else {
            vErrors.push(err28);
          }
          errors++;
        }
        if (typeof data9 == "number" && isFinite(data9)) {
          if (data9 > 9 || isNaN(data9)) {
            const err29 = { instancePath: instancePath + "/workOffset", schemaPath: "#/$defs/workOffset/maximum", keyword: "maximum", params: { comparison: "<=", limit: 9 }, message: "must be <= 9" };
            if (vErrors === null) {
              vErrors = [err29];
            } else {
              vErrors.push(err29);
            }
            errors++;
          }
          if (data9 < 1 || isNaN(data9)) {
            const err30 = { instancePath: instancePath + "/workOffset", schemaPath: "#/$defs/workOffset/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
            if (vErrors === null) {
              vErrors = [err30];
            } else {
              vErrors.push(err30);
            }
            errors++;
          }
        }
      }
      if (data.clearance !== void 0) {
        let data10 = data.clearance;
        if (!(typeof data10 == "number" && isFinite(data10))) {
          const err31 = { instancePath: instancePath + "/clearance", schemaPath: "#/properties/clearance/type", keyword: "type", params: { type: "number" }, message: "must be number" };
          if (vErrors === null) {
            vErrors = [err31];
          } else {
            vErrors.push(err31);
          }
          errors++;
        }
      }
      if (data.hood !== void 0) {
        let data11 = data.hood;
        if (typeof data11 !== "string") {
          const err32 = { instancePath: instancePath + "/hood", schemaPath: "#/properties/hood/type", keyword: "type", params: { type: "string" }, message: "must be string" };
          if (vErrors === null) {
            vErrors = [err32];
          } else {
            vErrors.push(err32);
          }
          errors++;
        }
        if (!(data11 === "up" || data11 === "down")) {
          const err33 = { instancePath: instancePath + "/hood", schemaPath: "#/properties/hood/enum", keyword: "enum", params: { allowedValues: schema54.properties.hood.enum }, message: "must be equal to one of the allowed values" };
          if (vErrors === null) {
            vErrors = [err33];
          } else {
            vErrors.push(err33);
          }
          errors++;
        }
      }
      if (data.tolerance !== void 0) {
        let data12 = data.tolerance;
        if (typeof data12 == "number" && isFinite(data12)) {
          if (data12 <= 0 || isNaN(data12)) {
            const err34 = { instancePath: instancePath + "/tolerance", schemaPath: "#/$defs/above0/exclusiveMinimum", keyword: "exclusiveMinimum", params: { comparison: ">", limit: 0 }, message: "must be > 0" };
            if (vErrors === null) {
              vErrors = [err34];
            } else {
              vErrors.push(err34);
            }
            errors++;
          }
        } else {
          const err35 = { instancePath: instancePath + "/tolerance", schemaPath: "#/$defs/above0/type", keyword: "type", params: { type: "number" }, message: "must be number" };
          if (vErrors === null) {
            vErrors = [err35];
          } else {
            vErrors.push(err35);
          }
          errors++;
        }
      }
      if (data.path !== void 0) {
        let data13 = data.path;
        if (typeof data13 !== "string") {
          const err36 = { instancePath: instancePath + "/path", schemaPath: "#/properties/path/type", keyword: "type", params: { type: "string" }, message: "must be string" };
          if (vErrors === null) {
            vErrors = [err36];
          } else {
            vErrors.push(err36);
          }
          errors++;
        }
        if (!(data13 === "exact" || data13 === "blend")) {
          const err37 = { instancePath: instancePath + "/path", schemaPath: "#/properties/path/enum", keyword: "enum", params: { allowedValues: schema54.properties.path.enum }, message: "must be equal to one of the allowed values" };
          if (vErrors === null) {
            vErrors = [err37];
          } else {
            vErrors.push(err37);
          }
          errors++;
        }
      }
      if (data.moves !== void 0) {
        let data14 = data.moves;
        if (Array.isArray(data14)) {
          if (data14.length < 1) {
            const err38 = { instancePath: instancePath + "/moves", schemaPath: "#/properties/moves/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items" };
            if (vErrors === null) {
              vErrors = [err38];
            } else {
              vErrors.push(err38);
            }
            errors++;
          }
        } else {
          const err39 = { instancePath: instancePath + "/moves", schemaPath: "#/properties/moves/type", keyword: "type", params: { type: "array" }, message: "must be array" };
          if (vErrors === null) {
            vErrors = [err39];
          } else {
            vErrors.push(err39);
          }
          errors++;
        }
      }
    } else {
      const err40 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" };
      if (vErrors === null) {
        vErrors = [err40];
      } else {
        vErrors.push(err40);
      }
      errors++;
    }
    validate23.errors = vErrors;
    return errors === 0;
  }
  validate23.evaluated = { "props": true, "dynamicProps": false, "dynamicItems": false };
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
      if (data.job === void 0) {
        const err0 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "job" }, message: "must have required property 'job'" };
        if (vErrors === null) {
          vErrors = [err0];
        } else {
          vErrors.push(err0);
        }
        errors++;
      }
      if (data.units === void 0) {
        const err1 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "units" }, message: "must have required property 'units'" };
        if (vErrors === null) {
          vErrors = [err1];
        } else {
          vErrors.push(err1);
        }
        errors++;
      }
      if (data.clearance === void 0) {
        const err2 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "clearance" }, message: "must have required property 'clearance'" };
        if (vErrors === null) {
          vErrors = [err2];
        } else {
          vErrors.push(err2);
        }
        errors++;
      }
      if (data.tools === void 0) {
        const err3 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "tools" }, message: "must have required property 'tools'" };
        if (vErrors === null) {
          vErrors = [err3];
        } else {
          vErrors.push(err3);
        }
        errors++;
      }
      if (data.operations === void 0) {
        const err4 = { instancePath, schemaPath: "#/required", keyword: "required", params: { missingProperty: "operations" }, message: "must have required property 'operations'" };
        if (vErrors === null) {
          vErrors = [err4];
        } else {
          vErrors.push(err4);
        }
        errors++;
      }
      for (const key0 in data) {
        if (!func1.call(schema31.properties, key0)) {
          const err5 = { instancePath, schemaPath: "#/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key0 }, message: "must NOT have additional properties" };
          if (vErrors === null) {
            vErrors = [err5];
          } else {
            vErrors.push(err5);
          }
          errors++;
        }
      }
      if (data.job !== void 0) {
        let data0 = data.job;
        if (typeof data0 !== "string") {
          const err6 = { instancePath: instancePath + "/job", schemaPath: "#/properties/job/type", keyword: "type", params: { type: "string" }, message: "must be string" };
          if (vErrors === null) {
            vErrors = [err6];
          } else {
            vErrors.push(err6);
          }
          errors++;
        }
        if ("1" !== data0) {
          const err7 = { instancePath: instancePath + "/job", schemaPath: "#/properties/job/const", keyword: "const", params: { allowedValue: "1" }, message: "must be equal to constant" };
          if (vErrors === null) {
            vErrors = [err7];
          } else {
            vErrors.push(err7);
          }
          errors++;
        }
      }
      if (data.name !== void 0) {
        if (typeof data.name !== "string") {
          const err8 = { instancePath: instancePath + "/name", schemaPath: "#/properties/name/type", keyword: "type", params: { type: "string" }, message: "must be string" };
          if (vErrors === null) {
            vErrors = [err8];
          } else {
            vErrors.push(err8);
          }
          errors++;
        }
      }
      if (data.units !== void 0) {
        let data2 = data.units;
        if (typeof data2 !== "string") {
          const err9 = { instancePath: instancePath + "/units", schemaPath: "#/properties/units/type", keyword: "type", params: { type: "string" }, message: "must be string" };
          if (vErrors === null) {
            vErrors = [err9];
          } else {
            vErrors.push(err9);
          }
          errors++;
        }
        if (!(data2 === "mm" || data2 === "inch")) {
          const err10 = { instancePath: instancePath + "/units", schemaPath: "#/properties/units/enum", keyword: "enum", params: { allowedValues: schema31.properties.units.enum }, message: "must be equal to one of the allowed values" };
          if (vErrors === null) {
            vErrors = [err10];
          } else {
            vErrors.push(err10);
          }
          errors++;
        }
      }
      if (data.program !== void 0) {
        let data3 = data.program;
        if (data3 && typeof data3 == "object" && !Array.isArray(data3)) {
          for (const key1 in data3) {
            if (!(key1 === "number" || key1 === "name")) {
              const err11 = { instancePath: instancePath + "/program", schemaPath: "#/properties/program/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key1 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err11];
              } else {
                vErrors.push(err11);
              }
              errors++;
            }
          }
          if (data3.number !== void 0) {
            let data4 = data3.number;
            if (!(typeof data4 == "number" && (!(data4 % 1) && !isNaN(data4)) && isFinite(data4))) {
              const err12 = { instancePath: instancePath + "/program/number", schemaPath: "#/properties/program/properties/number/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
              if (vErrors === null) {
                vErrors = [err12];
              } else {
                vErrors.push(err12);
              }
              errors++;
            }
            if (typeof data4 == "number" && isFinite(data4)) {
              if (data4 > 99999999 || isNaN(data4)) {
                const err13 = { instancePath: instancePath + "/program/number", schemaPath: "#/properties/program/properties/number/maximum", keyword: "maximum", params: { comparison: "<=", limit: 99999999 }, message: "must be <= 99999999" };
                if (vErrors === null) {
                  vErrors = [err13];
                } else {
                  vErrors.push(err13);
                }
                errors++;
              }
              if (data4 < 1 || isNaN(data4)) {
                const err14 = { instancePath: instancePath + "/program/number", schemaPath: "#/properties/program/properties/number/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
                if (vErrors === null) {
                  vErrors = [err14];
                } else {
                  vErrors.push(err14);
                }
                errors++;
              }
            }
          }
          if (data3.name !== void 0) {
            if (typeof data3.name !== "string") {
              const err15 = { instancePath: instancePath + "/program/name", schemaPath: "#/properties/program/properties/name/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err15];
              } else {
                vErrors.push(err15);
              }
              errors++;
            }
          }
        } else {
          const err16 = { instancePath: instancePath + "/program", schemaPath: "#/properties/program/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err16];
          } else {
            vErrors.push(err16);
          }
          errors++;
        }
      }
      if (data.stock !== void 0) {
        let data6 = data.stock;
        if (data6 && typeof data6 == "object" && !Array.isArray(data6)) {
          if (data6.min === void 0) {
            const err17 = { instancePath: instancePath + "/stock", schemaPath: "#/properties/stock/required", keyword: "required", params: { missingProperty: "min" }, message: "must have required property 'min'" };
            if (vErrors === null) {
              vErrors = [err17];
            } else {
              vErrors.push(err17);
            }
            errors++;
          }
          if (data6.max === void 0) {
            const err18 = { instancePath: instancePath + "/stock", schemaPath: "#/properties/stock/required", keyword: "required", params: { missingProperty: "max" }, message: "must have required property 'max'" };
            if (vErrors === null) {
              vErrors = [err18];
            } else {
              vErrors.push(err18);
            }
            errors++;
          }
          for (const key2 in data6) {
            if (!(key2 === "min" || key2 === "max" || key2 === "material")) {
              const err19 = { instancePath: instancePath + "/stock", schemaPath: "#/properties/stock/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key2 }, message: "must NOT have additional properties" };
              if (vErrors === null) {
                vErrors = [err19];
              } else {
                vErrors.push(err19);
              }
              errors++;
            }
          }
          if (data6.min !== void 0) {
            let data7 = data6.min;
            if (Array.isArray(data7)) {
              if (data7.length > 3) {
                const err20 = { instancePath: instancePath + "/stock/min", schemaPath: "#/$defs/corner/maxItems", keyword: "maxItems", params: { limit: 3 }, message: "must NOT have more than 3 items" };
                if (vErrors === null) {
                  vErrors = [err20];
                } else {
                  vErrors.push(err20);
                }
                errors++;
              }
              if (data7.length < 3) {
                const err21 = { instancePath: instancePath + "/stock/min", schemaPath: "#/$defs/corner/minItems", keyword: "minItems", params: { limit: 3 }, message: "must NOT have fewer than 3 items" };
                if (vErrors === null) {
                  vErrors = [err21];
                } else {
                  vErrors.push(err21);
                }
                errors++;
              }
              const len0 = data7.length;
              for (let i0 = 0; i0 < len0; i0++) {
                let data8 = data7[i0];
                if (!(typeof data8 == "number" && isFinite(data8))) {
                  const err22 = { instancePath: instancePath + "/stock/min/" + i0, schemaPath: "#/$defs/corner/items/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                  if (vErrors === null) {
                    vErrors = [err22];
                  } else {
                    vErrors.push(err22);
                  }
                  errors++;
                }
              }
            } else {
              const err23 = { instancePath: instancePath + "/stock/min", schemaPath: "#/$defs/corner/type", keyword: "type", params: { type: "array" }, message: "must be array" };
              if (vErrors === null) {
                vErrors = [err23];
              } else {
                vErrors.push(err23);
              }
              errors++;
            }
          }
          if (data6.max !== void 0) {
            let data9 = data6.max;
            if (Array.isArray(data9)) {
              if (data9.length > 3) {
                const err24 = { instancePath: instancePath + "/stock/max", schemaPath: "#/$defs/corner/maxItems", keyword: "maxItems", params: { limit: 3 }, message: "must NOT have more than 3 items" };
                if (vErrors === null) {
                  vErrors = [err24];
                } else {
                  vErrors.push(err24);
                }
                errors++;
              }
              if (data9.length < 3) {
                const err25 = { instancePath: instancePath + "/stock/max", schemaPath: "#/$defs/corner/minItems", keyword: "minItems", params: { limit: 3 }, message: "must NOT have fewer than 3 items" };
                if (vErrors === null) {
                  vErrors = [err25];
                } else {
                  vErrors.push(err25);
                }
                errors++;
              }
              const len1 = data9.length;
              for (let i1 = 0; i1 < len1; i1++) {
                let data10 = data9[i1];
                if (!(typeof data10 == "number" && isFinite(data10))) {
                  const err26 = { instancePath: instancePath + "/stock/max/" + i1, schemaPath: "#/$defs/corner/items/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                  if (vErrors === null) {
                    vErrors = [err26];
                  } else {
                    vErrors.push(err26);
                  }
                  errors++;
                }
              }
            } else {
              const err27 = { instancePath: instancePath + "/stock/max", schemaPath: "#/$defs/corner/type", keyword: "type", params: { type: "array" }, message: "must be array" };
              if (vErrors === null) {
                vErrors = [err27];
              } else {
                vErrors.push(err27);
              }
              errors++;
            }
          }
          if (data6.material !== void 0) {
            if (typeof data6.material !== "string") {
              const err28 = { instancePath: instancePath + "/stock/material", schemaPath: "#/properties/stock/properties/material/type", keyword: "type", params: { type: "string" }, message: "must be string" };
              if (vErrors === null) {
                vErrors = [err28];
              } else {
                vErrors.push(err28);
              }
              errors++;
            }
          }
        } else {
          const err29 = { instancePath: instancePath + "/stock", schemaPath: "#/properties/stock/type", keyword: "type", params: { type: "object" }, message: "must be object" };
          if (vErrors === null) {
            vErrors = [err29];
          } else {
            vErrors.push(err29);
          }
          errors++;
        }
      }
      if (data.fixtures !== void 0) {
        let data12 = data.fixtures;
        if (Array.isArray(data12)) {
          if (data12.length < 1) {
            const err30 = { instancePath: instancePath + "/fixtures", schemaPath: "#/properties/fixtures/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items" };
            if (vErrors === null) {
              vErrors = [err30];
            } else {
              vErrors.push(err30);
            }
            errors++;
          }
          const len2 = data12.length;
          for (let i2 = 0; i2 < len2; i2++) {
            let data13 = data12[i2];
            if (data13 && typeof data13 == "object" && !Array.isArray(data13)) {
              if (data13.name === void 0) {
                const err31 = { instancePath: instancePath + "/fixtures/" + i2, schemaPath: "#/properties/fixtures/items/required", keyword: "required", params: { missingProperty: "name" }, message: "must have required property 'name'" };
                if (vErrors === null) {
                  vErrors = [err31];
                } else {
                  vErrors.push(err31);
                }
                errors++;
              }
              if (data13.min === void 0) {
                const err32 = { instancePath: instancePath + "/fixtures/" + i2, schemaPath: "#/properties/fixtures/items/required", keyword: "required", params: { missingProperty: "min" }, message: "must have required property 'min'" };
                if (vErrors === null) {
                  vErrors = [err32];
                } else {
                  vErrors.push(err32);
                }
                errors++;
              }
              if (data13.max === void 0) {
                const err33 = { instancePath: instancePath + "/fixtures/" + i2, schemaPath: "#/properties/fixtures/items/required", keyword: "required", params: { missingProperty: "max" }, message: "must have required property 'max'" };
                if (vErrors === null) {
                  vErrors = [err33];
                } else {
                  vErrors.push(err33);
                }
                errors++;
              }
              for (const key3 in data13) {
                if (!(key3 === "name" || key3 === "min" || key3 === "max")) {
                  const err34 = { instancePath: instancePath + "/fixtures/" + i2, schemaPath: "#/properties/fixtures/items/additionalProperties", keyword: "additionalProperties", params: { additionalProperty: key3 }, message: "must NOT have additional properties" };
                  if (vErrors === null) {
                    vErrors = [err34];
                  } else {
                    vErrors.push(err34);
                  }
                  errors++;
                }
              }
              if (data13.name !== void 0) {
                if (typeof data13.name !== "string") {
                  const err35 = { instancePath: instancePath + "/fixtures/" + i2 + "/name", schemaPath: "#/properties/fixtures/items/properties/name/type", keyword: "type", params: { type: "string" }, message: "must be string" };
                  if (vErrors === null) {
                    vErrors = [err35];
                  } else {
                    vErrors.push(err35);
                  }
                  errors++;
                }
              }
              if (data13.min !== void 0) {
                let data15 = data13.min;
                if (Array.isArray(data15)) {
                  if (data15.length > 3) {
                    const err36 = { instancePath: instancePath + "/fixtures/" + i2 + "/min", schemaPath: "#/$defs/corner/maxItems", keyword: "maxItems", params: { limit: 3 }, message: "must NOT have more than 3 items" };
                    if (vErrors === null) {
                      vErrors = [err36];
                    } else {
                      vErrors.push(err36);
                    }
                    errors++;
                  }
                  if (data15.length < 3) {
                    const err37 = { instancePath: instancePath + "/fixtures/" + i2 + "/min", schemaPath: "#/$defs/corner/minItems", keyword: "minItems", params: { limit: 3 }, message: "must NOT have fewer than 3 items" };
                    if (vErrors === null) {
                      vErrors = [err37];
                    } else {
                      vErrors.push(err37);
                    }
                    errors++;
                  }
                  const len3 = data15.length;
                  for (let i3 = 0; i3 < len3; i3++) {
                    let data16 = data15[i3];
                    if (!(typeof data16 == "number" && isFinite(data16))) {
                      const err38 = { instancePath: instancePath + "/fixtures/" + i2 + "/min/" + i3, schemaPath: "#/$defs/corner/items/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                      if (vErrors === null) {
                        vErrors = [err38];
                      } else {
                        vErrors.push(err38);
                      }
                      errors++;
                    }
                  }
                } else {
                  const err39 = { instancePath: instancePath + "/fixtures/" + i2 + "/min", schemaPath: "#/$defs/corner/type", keyword: "type", params: { type: "array" }, message: "must be array" };
                  if (vErrors === null) {
                    vErrors = [err39];
                  } else {
                    vErrors.push(err39);
                  }
                  errors++;
                }
              }
              if (data13.max !== void 0) {
                let data17 = data13.max;
                if (Array.isArray(data17)) {
                  if (data17.length > 3) {
                    const err40 = { instancePath: instancePath + "/fixtures/" + i2 + "/max", schemaPath: "#/$defs/corner/maxItems", keyword: "maxItems", params: { limit: 3 }, message: "must NOT have more than 3 items" };
                    if (vErrors === null) {
                      vErrors = [err40];
                    } else {
                      vErrors.push(err40);
                    }
                    errors++;
                  }
                  if (data17.length < 3) {
                    const err41 = { instancePath: instancePath + "/fixtures/" + i2 + "/max", schemaPath: "#/$defs/corner/minItems", keyword: "minItems", params: { limit: 3 }, message: "must NOT have fewer than 3 items" };
                    if (vErrors === null) {
                      vErrors = [err41];
                    } else {
                      vErrors.push(err41);
                    }
                    errors++;
                  }
                  const len4 = data17.length;
                  for (let i4 = 0; i4 < len4; i4++) {
                    let data18 = data17[i4];
                    if (!(typeof data18 == "number" && isFinite(data18))) {
                      const err42 = { instancePath: instancePath + "/fixtures/" + i2 + "/max/" + i4, schemaPath: "#/$defs/corner/items/type", keyword: "type", params: { type: "number" }, message: "must be number" };
                      if (vErrors === null) {
                        vErrors = [err42];
                      } else {
                        vErrors.push(err42);
                      }
                      errors++;
                    }
                  }
                } else {
                  const err43 = { instancePath: instancePath + "/fixtures/" + i2 + "/max", schemaPath: "#/$defs/corner/type", keyword: "type", params: { type: "array" }, message: "must be array" };
                  if (vErrors === null) {
                    vErrors = [err43];
                  } else {
                    vErrors.push(err43);
                  }
                  errors++;
                }
              }
            } else {
              const err44 = { instancePath: instancePath + "/fixtures/" + i2, schemaPath: "#/properties/fixtures/items/type", keyword: "type", params: { type: "object" }, message: "must be object" };
              if (vErrors === null) {
                vErrors = [err44];
              } else {
                vErrors.push(err44);
              }
              errors++;
            }
          }
        } else {
          const err45 = { instancePath: instancePath + "/fixtures", schemaPath: "#/properties/fixtures/type", keyword: "type", params: { type: "array" }, message: "must be array" };
          if (vErrors === null) {
            vErrors = [err45];
          } else {
            vErrors.push(err45);
          }
          errors++;
        }
      }
      if (data.workOffset !== void 0) {
        let data19 = data.workOffset;
        if (!(typeof data19 == "number" && (!(data19 % 1) && !isNaN(data19)) && isFinite(data19))) {
          const err46 = { instancePath: instancePath + "/workOffset", schemaPath: "#/$defs/workOffset/type", keyword: "type", params: { type: "integer" }, message: "must be integer" };
          if (vErrors === null) {
            vErrors = [err46];
          } else {
            vErrors.push(err46);
          }
          errors++;
        }
        if (typeof data19 == "number" && isFinite(data19)) {
          if (data19 > 9 || isNaN(data19)) {
            const err47 = { instancePath: instancePath + "/workOffset", schemaPath: "#/$defs/workOffset/maximum", keyword: "maximum", params: { comparison: "<=", limit: 9 }, message: "must be <= 9" };
            if (vErrors === null) {
              vErrors = [err47];
            } else {
              vErrors.push(err47);
            }
            errors++;
          }
          if (data19 < 1 || isNaN(data19)) {
            const err48 = { instancePath: instancePath + "/workOffset", schemaPath: "#/$defs/workOffset/minimum", keyword: "minimum", params: { comparison: ">=", limit: 1 }, message: "must be >= 1" };
            if (vErrors === null) {
              vErrors = [err48];
            } else {
              vErrors.push(err48);
            }
            errors++;
          }
        }
      }
      if (data.clearance !== void 0) {
        let data20 = data.clearance;
        if (!(typeof data20 == "number" && isFinite(data20))) {
          const err49 = { instancePath: instancePath + "/clearance", schemaPath: "#/properties/clearance/type", keyword: "type", params: { type: "number" }, message: "must be number" };
          if (vErrors === null) {
            vErrors = [err49];
          } else {
            vErrors.push(err49);
          }
          errors++;
        }
      }
      if (data.tools !== void 0) {
        let data21 = data.tools;
        if (Array.isArray(data21)) {
          if (data21.length < 1) {
            const err50 = { instancePath: instancePath + "/tools", schemaPath: "#/properties/tools/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items" };
            if (vErrors === null) {
              vErrors = [err50];
            } else {
              vErrors.push(err50);
            }
            errors++;
          }
          const len5 = data21.length;
          for (let i5 = 0; i5 < len5; i5++) {
            if (!validate21(data21[i5], { instancePath: instancePath + "/tools/" + i5, parentData: data21, parentDataProperty: i5, rootData, dynamicAnchors })) {
              vErrors = vErrors === null ? validate21.errors : vErrors.concat(validate21.errors);
              errors = vErrors.length;
            }
          }
        } else {
          const err51 = { instancePath: instancePath + "/tools", schemaPath: "#/properties/tools/type", keyword: "type", params: { type: "array" }, message: "must be array" };
          if (vErrors === null) {
            vErrors = [err51];
          } else {
            vErrors.push(err51);
          }
          errors++;
        }
      }
      if (data.operations !== void 0) {
        let data23 = data.operations;
        if (Array.isArray(data23)) {
          if (data23.length < 1) {
            const err52 = { instancePath: instancePath + "/operations", schemaPath: "#/properties/operations/minItems", keyword: "minItems", params: { limit: 1 }, message: "must NOT have fewer than 1 items" };
            if (vErrors === null) {
              vErrors = [err52];
            } else {
              vErrors.push(err52);
            }
            errors++;
          }
          const len6 = data23.length;
          for (let i6 = 0; i6 < len6; i6++) {
            if (!validate23(data23[i6], { instancePath: instancePath + "/operations/" + i6, parentData: data23, parentDataProperty: i6, rootData, dynamicAnchors })) {
              vErrors = vErrors === null ? validate23.errors : vErrors.concat(validate23.errors);
              errors = vErrors.length;
            }
          }
        } else {
          const err53 = { instancePath: instancePath + "/operations", schemaPath: "#/properties/operations/type", keyword: "type", params: { type: "array" }, message: "must be array" };
          if (vErrors === null) {
            vErrors = [err53];
          } else {
            vErrors.push(err53);
          }
          errors++;
        }
      }
    } else {
      const err54 = { instancePath, schemaPath: "#/type", keyword: "type", params: { type: "object" }, message: "must be object" };
      if (vErrors === null) {
        vErrors = [err54];
      } else {
        vErrors.push(err54);
      }
      errors++;
    }
    validate20.errors = vErrors;
    return errors === 0;
  }
  validate20.evaluated = { "props": true, "dynamicProps": false, "dynamicItems": false };
  return __toCommonJS(validator_exports);
})();

export function validateJob(data: unknown): readonly SchemaError[] {
  return compiled.validateJob(data) ? [] : compiled.validateJob.errors;
}
