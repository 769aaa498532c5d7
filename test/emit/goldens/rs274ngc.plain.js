// Nothing that this module prints has been guarded or proved: it writes whatever sequence it is given.
// It was generated from a dialect, and imports nothing.

const rapidRow = 0;
const lineRow = 1;
const arcXyRow = 2;
const arcZxRow = 3;
const arcYzRow = 4;
const radiusXyRow = 5;
const radiusZxRow = 6;
const radiusYzRow = 7;
const holeRow = 8;
const asideRow = 9;
const lineFeed = 10;
const space = 32;
const minus = 45;
const point = 46;
const zero = 48;
const A = 65;
const B = 66;
const C = 67;
const D = 68;
const F = 70;
const H = 72;
const I = 73;
const J = 74;
const K = 75;
const P = 80;
const Q = 81;
const R = 82;
const S = 83;
const T = 84;
const X = 88;
const Y = 89;
const Z = 90;

// Writes the rows of all batches; a chunk is handed on when it is full.
export function* emitUnproved(batches, options) {
    const state = createState(options);
    for (const batch of batches) {
        let row = 0;
        while (row < batch.count) {
            if (state.at >= 65536)
                yield take(state);
            if (state.fragment)
                restate(state);
            row = writeRows(state, batch, row, state.fragment ? row + 1 : batch.count);
        }
    }
    finish(state);
    if (state.at > 0)
        yield take(state);
}

// A text as a message to the operator has it.
export function cleanText(text) {
    return cleanCharacters(text, 55);
}

// Writes rows until a chunk is full; returns the row that comes next.
function writeRows(state, batch, row, end) {
    while (row < end && state.at < 65536) {
        switch (batch.kind[row]) {
            case rapidRow:
                if (batch.frame[row] === 0)
                    writeRapid(state, batch, row);
                else
                    writeMachineRapid(state, batch, row);
                break;
            case lineRow:
                if (batch.frame[row] === 0)
                    writeLine(state, batch, row);
                else
                    writeMachineLine(state, batch, row);
                break;
            case arcXyRow:
                writeArcXy(state, batch, row);
                break;
            case arcZxRow:
                writeArcZx(state, batch, row);
                break;
            case arcYzRow:
                writeArcYz(state, batch, row);
                break;
            case radiusXyRow: throw fault("arc.form");
            case radiusZxRow: throw fault("arc.form");
            case radiusYzRow: throw fault("arc.form");
            case holeRow:
                writeHole(state, batch, row);
                break;
            case asideRow:
                writeStep(state, batch.asides[batch.aside[row]]);
                break;
            default: throw fault("motion");
        }
        row += 1;
    }
    return row;
}

// Writes a rare step.
function writeStep(state, step) {
    switch (step.kind) {
        case "program-start":
            writeProgramStart(state, step);
            break;
        case "units":
            writeUnits(state, step);
            break;
        case "plane":
            writePlane(state, step);
            break;
        case "distance":
            writeDistance(state, step);
            break;
        case "arc-centre":
            writeArcCentreMode(state, step);
            break;
        case "feed-mode":
            writeFeedMode(state, step);
            break;
        case "path":
            writePath(state, step);
            break;
        case "look-ahead":
            writeLookAhead(state, step);
            break;
        case "corner-feed":
            writeCornerFeed(state, step);
            break;
        case "overrides":
            writeOverrides(state, step);
            break;
        case "cycle":
            writeCycleOff(state, step);
            break;
        case "local-shift":
            writeLocalShift(state, step);
            break;
        case "rotation":
            writeRotation(state, step);
            break;
        case "scale":
            writeScale(state, step);
            break;
        case "compensation":
            writeCompensation(state, step);
            break;
        case "work-offset":
            writeWorkOffset(state, step);
            break;
        case "length-offset":
            writeLengthOffset(state, step);
            break;
        case "select-tool":
            writeSelectTool(state, step);
            break;
        case "change-tool":
            writeChangeTool(state, step);
            break;
        case "spindle-speed":
            writeSpindleSpeed(state, step);
            break;
        case "spindle-start":
            writeSpindleStart(state, step);
            break;
        case "spindle-stop":
            writeSpindleStop(state, step);
            break;
        case "spindle-orient":
            writeSpindleOrient(state, step);
            break;
        case "coolant":
            writeCoolant(state, step);
            break;
        case "output":
            writeOutput(state, step);
            break;
        case "wait":
            writeWait(state, step);
            break;
        case "dwell":
            writeDwell(state, step);
            break;
        case "pause":
            writePause(state, step);
            break;
        case "message":
            writeMessage(state, step);
            break;
        case "cycle-definition":
            writeCycleDefinition(state, step);
            break;
        case "auxiliary":
            writeAuxiliary(state, step);
            break;
        case "reference-return":
            writeReferenceReturn(state, step);
            break;
        case "program-end":
            writeProgramEnd(state, step);
            break;
        default: throw fault("step");
    }
}

function writeRapid(state, batch, row) {
    let offset = 0;
    if (state.held === "length" && batch.stated[row] & 4) {
        offset = state.value;
        state.held = "";
        state.waiting = false;
    }
    else if (state.waiting)
        settle(state);
    const axes = batch.stated[row] || batch.known[row];
    requireKnown(state, axes);
    let at = state.at;
    if (offset !== 0)
        at = write(state, at, "G43 ");
    if (state.motion !== "G0 ") {
        at = write(state, at, "G0 ");
        state.motion = "G0 ";
    }
    if (axes & 1)
        at = writeLength(state, at, X, batch.x[row] - (state.incremental ? state.x : 0));
    if (axes & 2)
        at = writeLength(state, at, Y, batch.y[row] - (state.incremental ? state.y : 0));
    if (axes & 4)
        at = writeLength(state, at, Z, batch.z[row] - (state.incremental ? state.z : 0));
    if (axes & 8)
        at = writeAngle(state, at, A, batch.abc[0][row] - (state.incremental ? state.a : 0));
    if (axes & 16)
        at = writeAngle(state, at, B, batch.abc[1][row] - (state.incremental ? state.b : 0));
    if (axes & 32)
        at = writeAngle(state, at, C, batch.abc[2][row] - (state.incremental ? state.c : 0));
    if (offset !== 0)
        at = writeWholeWord(state, at, H, offset, 1);
    endBlock(state, at);
    keepPlace(state, batch, row);
}

function writeLine(state, batch, row) {
    if (state.waiting)
        settle(state);
    const axes = batch.stated[row] || batch.known[row];
    requireKnown(state, axes);
    let at = state.at;
    if (state.motion !== "G1 ") {
        at = write(state, at, "G1 ");
        state.motion = "G1 ";
    }
    if (axes & 1)
        at = writeLength(state, at, X, batch.x[row] - (state.incremental ? state.x : 0));
    if (axes & 2)
        at = writeLength(state, at, Y, batch.y[row] - (state.incremental ? state.y : 0));
    if (axes & 4)
        at = writeLength(state, at, Z, batch.z[row] - (state.incremental ? state.z : 0));
    if (axes & 8)
        at = writeAngle(state, at, A, batch.abc[0][row] - (state.incremental ? state.a : 0));
    if (axes & 16)
        at = writeAngle(state, at, B, batch.abc[1][row] - (state.incremental ? state.b : 0));
    if (axes & 32)
        at = writeAngle(state, at, C, batch.abc[2][row] - (state.incremental ? state.c : 0));
    if (batch.feed[row] !== state.feed || state.feedMode === "inverse-time")
        at = writeFeed(state, at, F, batch.feed[row]);
    endBlock(state, at);
    keepPlace(state, batch, row);
}

// A rapid in machine coordinates.
function writeMachineRapid(state, batch, row) {
    if (state.waiting)
        settle(state);
    const axes = batch.stated[row] || batch.known[row];
    let at = state.at;
    at = write(state, at, "G53 ");
    at = write(state, at, "G0 ");
    if (axes & 1)
        at = writeLength(state, at, X, batch.x[row]);
    if (axes & 2)
        at = writeLength(state, at, Y, batch.y[row]);
    if (axes & 4)
        at = writeLength(state, at, Z, batch.z[row]);
    if (axes & 8)
        at = writeAngle(state, at, A, batch.abc[0][row]);
    if (axes & 16)
        at = writeAngle(state, at, B, batch.abc[1][row]);
    if (axes & 32)
        at = writeAngle(state, at, C, batch.abc[2][row]);
    endBlock(state, at);
    state.motion = "G0 ";
    state.known = state.known & ~batch.stated[row];
}

// A line in machine coordinates.
function writeMachineLine(state, batch, row) {
    if (state.waiting)
        settle(state);
    const axes = batch.stated[row] || batch.known[row];
    let at = state.at;
    at = write(state, at, "G53 ");
    at = write(state, at, "G1 ");
    if (axes & 1)
        at = writeLength(state, at, X, batch.x[row]);
    if (axes & 2)
        at = writeLength(state, at, Y, batch.y[row]);
    if (axes & 4)
        at = writeLength(state, at, Z, batch.z[row]);
    if (axes & 8)
        at = writeAngle(state, at, A, batch.abc[0][row]);
    if (axes & 16)
        at = writeAngle(state, at, B, batch.abc[1][row]);
    if (axes & 32)
        at = writeAngle(state, at, C, batch.abc[2][row]);
    if (batch.feed[row] !== state.feed || state.feedMode === "inverse-time")
        at = writeFeed(state, at, F, batch.feed[row]);
    endBlock(state, at);
    state.motion = "G1 ";
    state.known = state.known & ~batch.stated[row];
}

function writeArcXy(state, batch, row) {
    if (state.waiting)
        settle(state);
    if (batch.frame[row] !== 0 || batch.stated[row] > 7)
        throw fault("arc");
    const axes = batch.stated[row] | 3;
    requireKnown(state, axes);
    if ((state.known & 3) !== 3)
        throw fault("arc.form");
    const first = batch.c1[row] - state.x;
    const second = batch.c2[row] - state.y;
    const turns = Math.abs(batch.turns[row]);
    if (turns > 1)
        throw fault("arc.turns-word");
    const code = batch.turns[row] < 0 ? "G2 " : "G3 ";
    let at = state.at;
    if (state.motion !== code) {
        at = write(state, at, code);
        state.motion = code;
    }
    if (axes & 1)
        at = writeLength(state, at, X, batch.x[row] - (state.incremental ? state.x : 0));
    if (axes & 2)
        at = writeLength(state, at, Y, batch.y[row] - (state.incremental ? state.y : 0));
    if (axes & 4)
        at = writeLength(state, at, Z, batch.z[row] - (state.incremental ? state.z : 0));
    at = writeArcCentre(state, at, I, first);
    at = writeArcCentre(state, at, J, second);
    if (batch.feed[row] !== state.feed || state.feedMode === "inverse-time")
        at = writeFeed(state, at, F, batch.feed[row]);
    endBlock(state, at);
    keepPlace(state, batch, row);
}

function writeArcZx(state, batch, row) {
    if (state.waiting)
        settle(state);
    if (batch.frame[row] !== 0 || batch.stated[row] > 7)
        throw fault("arc");
    const axes = batch.stated[row] | 5;
    requireKnown(state, axes);
    if ((state.known & 5) !== 5)
        throw fault("arc.form");
    const first = batch.c1[row] - state.z;
    const second = batch.c2[row] - state.x;
    const turns = Math.abs(batch.turns[row]);
    if (turns > 1)
        throw fault("arc.turns-word");
    const code = batch.turns[row] < 0 ? "G2 " : "G3 ";
    let at = state.at;
    if (state.motion !== code) {
        at = write(state, at, code);
        state.motion = code;
    }
    if (axes & 1)
        at = writeLength(state, at, X, batch.x[row] - (state.incremental ? state.x : 0));
    if (axes & 2)
        at = writeLength(state, at, Y, batch.y[row] - (state.incremental ? state.y : 0));
    if (axes & 4)
        at = writeLength(state, at, Z, batch.z[row] - (state.incremental ? state.z : 0));
    at = writeArcCentre(state, at, I, second);
    at = writeArcCentre(state, at, K, first);
    if (batch.feed[row] !== state.feed || state.feedMode === "inverse-time")
        at = writeFeed(state, at, F, batch.feed[row]);
    endBlock(state, at);
    keepPlace(state, batch, row);
}

function writeArcYz(state, batch, row) {
    if (state.waiting)
        settle(state);
    if (batch.frame[row] !== 0 || batch.stated[row] > 7)
        throw fault("arc");
    const axes = batch.stated[row] | 6;
    requireKnown(state, axes);
    if ((state.known & 6) !== 6)
        throw fault("arc.form");
    const first = batch.c1[row] - state.y;
    const second = batch.c2[row] - state.z;
    const turns = Math.abs(batch.turns[row]);
    if (turns > 1)
        throw fault("arc.turns-word");
    const code = batch.turns[row] < 0 ? "G2 " : "G3 ";
    let at = state.at;
    if (state.motion !== code) {
        at = write(state, at, code);
        state.motion = code;
    }
    if (axes & 1)
        at = writeLength(state, at, X, batch.x[row] - (state.incremental ? state.x : 0));
    if (axes & 2)
        at = writeLength(state, at, Y, batch.y[row] - (state.incremental ? state.y : 0));
    if (axes & 4)
        at = writeLength(state, at, Z, batch.z[row] - (state.incremental ? state.z : 0));
    at = writeArcCentre(state, at, J, first);
    at = writeArcCentre(state, at, K, second);
    if (batch.feed[row] !== state.feed || state.feedMode === "inverse-time")
        at = writeFeed(state, at, F, batch.feed[row]);
    endBlock(state, at);
    keepPlace(state, batch, row);
}

// A hole of the fixed cycle in force.
function writeHole(state, batch, row) {
    if (state.waiting)
        settle(state);
    if (batch.frame[row] !== 0 || state.code === "")
        throw fault("cycles");
    const axes = batch.stated[row] & 3;
    requireKnown(state, axes);
    const first = state.fresh;
    let at = state.at;
    if (first)
        if (state.returnCode !== "")
            at = write(state, at, state.returnCode);
    if (first || state.motion !== state.code) {
        at = write(state, at, state.code);
        state.motion = state.code;
    }
    if (axes & 1)
        at = writeLength(state, at, X, batch.x[row] - (state.incremental ? state.x : 0));
    if (axes & 2)
        at = writeLength(state, at, Y, batch.y[row] - (state.incremental ? state.y : 0));
    if (first)
        at = writeLength(state, at, Z, state.depth - (state.incremental ? state.retract : 0));
    if (first || state.incremental)
        at = writeLength(state, at, R, state.retract - (state.incremental ? state.z : 0));
    if (first)
        if (state.dwells)
            at = writeCycleDwell(state, at, P, state.dwell);
    if (first)
        if (state.pecks)
            at = writePeck(state, at, Q, state.peck);
    if (batch.feed[row] !== state.feed)
        at = writeFeed(state, at, F, batch.feed[row]);
    endBlock(state, at);
    state.fresh = false;
    keepPlace(state, batch, row);
}

function writeProgramStart(state, step) {
    state.motion = "";
    state.feed = -1;
    if (!state.fragment) {
        writeDelimiter(state);
        if (step.number !== 0)
            throw fault("file.program-number");
        for (const line of state.header)
            writeComment(state, line);
    }
}

function writeUnits(state, step) {
    switch (step.value) {
        case "mm":
            writeMode(state, 4, "G21 ");
            break;
        case "inch":
            writeMode(state, 4, "G20 ");
            break;
        default: throw fault("units");
    }
    state.inch = step.value === "inch";
    state.feed = -1;
}

function writePlane(state, step) {
    switch (step.value) {
        case "xy":
            writeMode(state, 3, "G17 ");
            break;
        case "zx":
            writeMode(state, 3, "G18 ");
            break;
        case "yz":
            writeMode(state, 3, "G19 ");
            break;
        default: throw fault("plane");
    }
}

function writeDistance(state, step) {
    switch (step.value) {
        case "absolute":
            writeMode(state, 11, "G90 ");
            break;
        case "incremental":
            writeMode(state, 11, "G91 ");
            break;
        default: throw fault("distance");
    }
    state.incremental = step.value === "incremental";
}

function writeArcCentreMode(state, step) {
    switch (step.value) {
        case "absolute": throw fault("arc.centre-words.absolute");
        case "incremental": throw fault("arc.centre-words.incremental");
        default: throw fault("arc-centre");
    }
    state.centreAbsolute = step.value === "absolute";
}

function writeFeedMode(state, step) {
    switch (step.value) {
        case "per-minute":
            writeMode(state, 1, "G94 ");
            break;
        case "per-revolution": throw fault("feed.per-revolution");
        case "inverse-time":
            writeMode(state, 1, "G93 ");
            break;
        default: throw fault("feed-mode");
    }
    state.feedMode = step.value;
    state.feed = -1;
}

function writePath(state, step) {
    switch (step.value) {
        case "exact":
            writeMode(state, 8, "G61 ");
            break;
        case "stop":
            writeMode(state, 8, "G61.1 ");
            break;
        case "blend":
            writeMode(state, 8, "G64 ");
            break;
        default: throw fault("path");
    }
}

function writeLookAhead(state, step) {
    switch (step.value) {
        case "on": throw fault("path.look-ahead.on");
        case "off": throw fault("path.look-ahead.off");
        default: throw fault("look-ahead");
    }
}

function writeCornerFeed(state, step) {
    switch (step.value) {
        case "on": throw fault("compensation.corner-feed.on");
        case "off": throw fault("compensation.corner-feed.off");
        default: throw fault("corner-feed");
    }
}

function writeOverrides(state, step) {
    switch (step.value) {
        case "on":
            writeMode(state, 2, "M48 ");
            break;
        default: throw fault("overrides");
    }
}

function writeCycleOff(state, step) {
    switch (step.value) {
        case "off":
            writeMode(state, 16, "G80 ");
            break;
        default: throw fault("cycle");
    }
    state.motion = "";
    state.code = "";
}

function writeLocalShift(state, step) {
    switch (step.value) {
        case "off":
            writeMode(state, 13, "G92.2 ");
            break;
        default: throw fault("local-shift");
    }
}

function writeRotation(state, step) {
    switch (step.value) {
        case "off": throw fault("cancel.rotation");
        default: throw fault("rotation");
    }
}

function writeScale(state, step) {
    switch (step.value) {
        case "off": throw fault("cancel.scale");
        default: throw fault("scale");
    }
}

function writeCompensation(state, step) {
    switch (step.value) {
        case "off":
            writeMode(state, 5, "G40 ");
            break;
        case "left": {
            if (state.waiting)
                settle(state);
            let at = state.at;
            at = write(state, at, "G41 ");
            if (step.offset !== 0)
                at = writeWholeWord(state, at, D, step.offset, 1);
            endBlock(state, at);
            break;
        }
        case "right": {
            if (state.waiting)
                settle(state);
            let at = state.at;
            at = write(state, at, "G42 ");
            if (step.offset !== 0)
                at = writeWholeWord(state, at, D, step.offset, 1);
            endBlock(state, at);
            break;
        }
        default: throw fault("compensation");
    }
}

function writeWorkOffset(state, step) {
    switch (step.number) {
        case 1:
            writeMode(state, 7, "G54 ");
            break;
        case 2:
            writeMode(state, 7, "G55 ");
            break;
        case 3:
            writeMode(state, 7, "G56 ");
            break;
        case 4:
            writeMode(state, 7, "G57 ");
            break;
        case 5:
            writeMode(state, 7, "G58 ");
            break;
        case 6:
            writeMode(state, 7, "G59 ");
            break;
        case 7:
            writeMode(state, 7, "G59.1 ");
            break;
        case 8:
            writeMode(state, 7, "G59.2 ");
            break;
        case 9:
            writeMode(state, 7, "G59.3 ");
            break;
        default: throw fault("work-offset");
    }
    if (step.number !== state.workOffset)
        state.known = 0;
    state.workOffset = step.number;
}

function writeLengthOffset(state, step) {
    if (step.number === 0)
        writeMode(state, 6, "G49 ");
    else {
        if (state.waiting)
            settle(state);
        state.held = "length";
        state.value = step.number;
        state.waiting = true;
    }
    if (step.number !== state.lengthOffset)
        state.known = state.known & ~4;
    state.lengthOffset = step.number;
}

function writeSelectTool(state, step) {
    if (state.waiting)
        settle(state);
    state.held = "tool";
    state.value = step.tool;
    state.waiting = true;
}

function writeChangeTool(state, step) {
    if (state.held === "tool") {
        let at = state.at;
        at = writeWholeWord(state, at, T, state.value, 1);
        at = write(state, at, "M6 ");
        endBlock(state, at);
        state.held = "";
        state.waiting = false;
    }
    else {
        if (state.waiting)
            settle(state);
        let at = state.at;
        at = write(state, at, "M6 ");
        endBlock(state, at);
    }
    state.motion = "";
    state.feed = -1;
}

function writeSpindleSpeed(state, step) {
    if (state.waiting)
        settle(state);
    state.held = "speed";
    state.value = step.rpm;
    state.waiting = true;
}

function writeSpindleStart(state, step) {
    if (state.held === "speed") {
        let at = state.at;
        at = writeSpeed(state, at, S, state.value);
        switch (step.direction) {
            case "cw":
                at = write(state, at, "M3 ");
                break;
            case "ccw":
                at = write(state, at, "M4 ");
                break;
            default: throw fault("spindle");
        }
        endBlock(state, at);
        state.held = "";
        state.waiting = false;
    }
    else {
        if (state.waiting)
            settle(state);
        let at = state.at;
        switch (step.direction) {
            case "cw":
                at = write(state, at, "M3 ");
                break;
            case "ccw":
                at = write(state, at, "M4 ");
                break;
            default: throw fault("spindle");
        }
        endBlock(state, at);
    }
}

function writeSpindleStop(state, step) {
    if (state.waiting)
        settle(state);
    let at = state.at;
    at = write(state, at, "M5 ");
    endBlock(state, at);
}

function writeSpindleOrient(state, step) {
    if (state.waiting)
        settle(state);
    throw fault("spindle.orient");
}

function writeCoolant(state, step) {
    if (state.waiting)
        settle(state);
    let at = state.at;
    if (!step.on && step.medium === "all")
        at = write(state, at, "M9 ");
    else {
        if (!step.on)
            throw fault("coolant.off");
        switch (step.medium) {
            case "mist":
                at = write(state, at, "M7 ");
                break;
            case "flood":
                at = write(state, at, "M8 ");
                break;
            case "air": throw fault("coolant.air");
            case "through-tool": throw fault("coolant.through-tool");
            default: throw fault("coolant");
        }
    }
    endBlock(state, at);
}

function writeOutput(state, step) {
    if (state.waiting)
        settle(state);
    if (step.on)
        throw fault("idioms.output-on");
    else
        throw fault("idioms.output-off");
}

function writeWait(state, step) {
    if (state.waiting)
        settle(state);
    throw fault("idioms.wait-signal");
}

function writeDwell(state, step) {
    if (state.waiting)
        settle(state);
    let at = state.at;
    at = write(state, at, "G4 ");
    at = writeDwellTime(state, at, P, step.time);
    endBlock(state, at);
}

function writePause(state, step) {
    if (state.waiting)
        settle(state);
    let at = state.at;
    if (step.optional)
        at = write(state, at, "M1 ");
    else
        at = write(state, at, "M0 ");
    endBlock(state, at);
    state.motion = "";
    state.feed = -1;
    state.known = 0;
}

function writeMessage(state, step) {
    if (state.waiting)
        settle(state);
    let at = state.at;
    at = write(state, at, "(MSG, ");
    at = writeText(state, at, cleanCharacters(step.text, 55));
    at = write(state, at, ")");
    at = write(state, at, " ");
    endBlock(state, at);
}

function writeCycleDefinition(state, step) {
    if (state.waiting)
        settle(state);
    if (state.incremental && !(state.known & 4))
        throw fault("cycles.levels");
    if (state.code === "")
        state.initial = state.z;
    state.pecks = false;
    state.dwells = false;
    switch (step.cycle) {
        case "drill":
            state.code = "G81 ";
            break;
        case "dwell":
            state.dwells = true;
            state.code = "G82 ";
            break;
        case "peck":
            state.pecks = true;
            state.code = "G83 ";
            break;
        case "chip-break": throw fault("cycles.chip-break");
        case "tap":
            state.code = "G84 ";
            break;
        case "tap-left": throw fault("cycles.tap-left");
        case "ream":
            state.code = "G85 ";
            break;
        case "bore-dwell":
            state.dwells = true;
            state.code = "G89 ";
            break;
        case "bore-stop":
            state.dwells = true;
            state.code = "G86 ";
            break;
        case "bore-manual":
            state.dwells = true;
            state.code = "G88 ";
            break;
        default: throw fault("cycles");
    }
    switch (step.between) {
        case "initial":
            if (step.levelStated || state.fragment)
                state.returnCode = "G98 ";
            else
                state.returnCode = "";
            break;
        case "retract":
            if (step.levelStated || state.fragment)
                state.returnCode = "G99 ";
            else
                state.returnCode = "";
            break;
        default: throw fault("cycles.return");
    }
    state.depth = step.depth;
    state.retract = step.retract;
    state.peck = step.peck;
    state.dwell = step.dwell;
    state.fresh = true;
}

function writeAuxiliary(state, step) {
    if (state.waiting)
        settle(state);
    switch (step.action) {
        case "release": throw fault("idioms.release");
        case "clamp": throw fault("idioms.clamp");
        case "taper-air-on": throw fault("idioms.taper-air-on");
        case "taper-air-off": throw fault("idioms.taper-air-off");
        case "cover-open": throw fault("idioms.cover-open");
        case "cover-close": throw fault("idioms.cover-close");
        case "hood-up": throw fault("idioms.hood-up");
        case "hood-down": throw fault("idioms.hood-down");
        case "measure": throw fault("idioms.measure");
        case "opaque":
            switch (step.code.charAt(0) + Number(step.code.slice(1))) {
                default: throw fault("codes");
            }
            break;
        default: throw fault("idioms");
    }
}

function writeReferenceReturn(state, step) {
    if (state.waiting)
        settle(state);
    let at = state.at;
    at = write(state, at, "G28 ");
    if (step.axes & 1)
        at = writeLength(state, at, X, 0);
    if (step.axes & 2)
        at = writeLength(state, at, Y, 0);
    if (step.axes & 4)
        at = writeLength(state, at, Z, 0);
    endBlock(state, at);
    state.motion = "";
    state.known = state.known & ~step.axes;
}

function writeProgramEnd(state, step) {
    if (state.waiting)
        settle(state);
    let at = state.at;
    at = write(state, at, "M2 ");
    endBlock(state, at);
}

function writeDelimiter(state) {
    let at = state.at;
    at = write(state, at, "%\n");
    state.at = at;
}

// Ends the text.
function finish(state) {
    if (state.waiting)
        settle(state);
    if (!state.fragment)
        writeDelimiter(state);
}

// Writes what has waited to share the block of the next step.
function settle(state) {
    switch (state.held) {
        case "speed": {
            let at = state.at;
            at = writeSpeed(state, at, S, state.value);
            endBlock(state, at);
            break;
        }
        case "tool": {
            let at = state.at;
            at = writeWholeWord(state, at, T, state.value, 1);
            endBlock(state, at);
            break;
        }
        case "length": {
            let at = state.at;
            at = write(state, at, "G43 ");
            at = writeWholeWord(state, at, H, state.value, 1);
            endBlock(state, at);
            break;
        }
    }
    if (state.width > 0)
        writeModes(state);
    state.held = "";
    state.waiting = false;
}

// Takes back the separator behind the last word, and ends the block.
function endBlock(state, at) {
    const bytes = state.bytes;
    at -= 1;
    bytes[at++] = lineFeed;
    state.at = at;
}

// Writes the modes that share a block.
function writeModes(state) {
    let at = state.at;
    for (const word of state.early)
        at = write(state, at, word.text);
    state.early = [];
    for (const word of state.late)
        at = write(state, at, word.text);
    state.late = [];
    endBlock(state, at);
    state.group = 0;
    state.width = 0;
    state.miscellaneous = 0;
}

// Writes the word of a mode; `group` is its place in the order of execution.
function writeMode(state, group, text) {
    if (state.held !== "" || group <= state.group || text.charAt(0) === "M" && state.miscellaneous >= 4 || state.width + text.length > 81)
        settle(state);
    (text.charAt(0) === "M" ? state.late : state.early).push({ text });
    if (text.charAt(0) === "M")
        state.miscellaneous += 1;
    state.group = group;
    state.width += text.length;
    state.waiting = true;
}

// Everything that is remembered from one row to the next.
function createState(options) {
    const fragment = options.fragment === true;
    const start = options.start ?? { known: 0, x: 0, y: 0, z: 0, a: 0, b: 0, c: 0, distance: "absolute", feedMode: "per-minute" };
    const state = {
        bytes: new Uint8Array(67584),
        at: 0,
        base: 0,
        header: options.header,
        fragment,
        numbered: !fragment,
        number: 0,
        waiting: false,
        held: "",
        value: 0,
        group: 0,
        width: 0,
        miscellaneous: 0,
        early: [],
        late: [],
        inch: options.units === "inch",
        incremental: start.distance === "incremental",
        centreAbsolute: false,
        feedMode: start.feedMode,
        motion: "",
        feed: -1,
        afterRapid: false,
        workOffset: -1,
        lengthOffset: -1,
        known: start.known,
        x: start.x,
        y: start.y,
        z: start.z,
        a: start.a,
        b: start.b,
        c: start.c,
        code: "",
        returnCode: "",
        fresh: false,
        pecks: false,
        dwells: false,
        initial: 0,
        depth: 0,
        retract: 0,
        peck: 0,
        dwell: 0
    };
    return state;
}

// The bytes written so far, as a chunk.
function take(state) {
    const chunk = state.bytes.subarray(0, state.at);
    state.base += state.at;
    state.at = 0;
    return chunk;
}

// Makes the next block state all its modal words.
function restate(state) {
    state.motion = "";
    state.feed = -1;
    state.fresh = true;
}

// Remembers where a row in work coordinates ends.
function keepPlace(state, batch, row) {
    state.known = batch.known[row];
    state.x = batch.x[row];
    state.y = batch.y[row];
    state.z = batch.z[row];
    if (batch.abc) {
        state.a = batch.abc[0][row];
        state.b = batch.abc[1][row];
        state.c = batch.abc[2][row];
    }
}

// An incremental word needs to know where the axis is.
function requireKnown(state, axes) {
    if (state.incremental && axes & ~state.known)
        throw fault("distance.absolute");
}

// A comment in a line of its own.
function writeComment(state, text) {
    const clean = cleanCharacters(text, 60);
    if (clean === "")
        return;
    let at = write(state, state.at, "(");
    at = writeText(state, at, clean);
    at = write(state, at, ") ");
    endBlock(state, at);
}

// The feed word in the unit of the feed mode.
function writeFeed(state, at, address, value) {
    state.feed = value;
    state.afterRapid = false;
    switch (state.feedMode) {
        case "per-minute": return writeFeedPerMinute(state, at, address, value);
        case "inverse-time": return writeInverseTime(state, at, address, value);
        default: throw fault("feed");
    }
}

function writeLength(state, at, address, value) {
    const bytes = state.bytes;
    bytes[at++] = address;
    at = state.inch ? writeDecimals4(bytes, at, value / 25400) : writeDecimals3(bytes, at, value / 10000);
    bytes[at++] = space;
    return at;
}

function writeArcCentre(state, at, address, value) {
    const bytes = state.bytes;
    bytes[at++] = address;
    at = state.inch ? writeDecimals4(bytes, at, value / 25400) : writeDecimals3(bytes, at, value / 10000);
    bytes[at++] = space;
    return at;
}

function writePeck(state, at, address, value) {
    const bytes = state.bytes;
    bytes[at++] = address;
    at = state.inch ? writeDecimals4(bytes, at, value / 25400) : writeDecimals3(bytes, at, value / 10000);
    bytes[at++] = space;
    return at;
}

function writeAngle(state, at, address, value) {
    const bytes = state.bytes;
    bytes[at++] = address;
    at = writeDecimals3(bytes, at, value / 1000);
    bytes[at++] = space;
    return at;
}

function writeFeedPerMinute(state, at, address, value) {
    const bytes = state.bytes;
    bytes[at++] = address;
    at = state.inch ? writeDecimals2(bytes, at, value / 2540000) : writeDecimals1(bytes, at, value / 1000000);
    bytes[at++] = space;
    return at;
}

function writeInverseTime(state, at, address, value) {
    const bytes = state.bytes;
    bytes[at++] = address;
    at = writeDecimals4(bytes, at, value / 100);
    bytes[at++] = space;
    return at;
}

function writeSpeed(state, at, address, value) {
    const bytes = state.bytes;
    bytes[at++] = address;
    at = writeDecimals0(bytes, at, value / 1000);
    bytes[at++] = space;
    return at;
}

function writeDwellTime(state, at, address, value) {
    const bytes = state.bytes;
    bytes[at++] = address;
    at = writeDecimals2(bytes, at, value / 10000);
    bytes[at++] = space;
    return at;
}

function writeCycleDwell(state, at, address, value) {
    const bytes = state.bytes;
    bytes[at++] = address;
    at = writeDecimals2(bytes, at, value / 10000);
    bytes[at++] = space;
    return at;
}

// A word with a whole number of at least `width` digits.
function writeWholeWord(state, at, address, value, width) {
    const bytes = state.bytes;
    bytes[at++] = address;
    at = writePadded(bytes, at, value, width);
    bytes[at++] = space;
    return at;
}

function writeDecimals4(bytes, at, value) {
    const cells = Math.floor(Math.abs(value) + 0.5);
    if (value < 0 && cells > 0)
        bytes[at++] = minus;
    const whole = cells < 2147483648 ? (cells | 0) / 10000 | 0 : Math.floor(cells / 10000);
    let fraction = cells - whole * 10000 | 0;
    at = writeLarge(bytes, at, whole);
    if (fraction === 0)
        return at;
    let digits = 4;
    while (fraction % 10 === 0) {
        fraction = fraction / 10 | 0;
        digits -= 1;
    }
    bytes[at] = point;
    let place = at + digits;
    while (place > at) {
        bytes[place] = zero + fraction % 10;
        fraction = fraction / 10 | 0;
        place -= 1;
    }
    return at + digits + 1;
}

function writeDecimals3(bytes, at, value) {
    const cells = Math.floor(Math.abs(value) + 0.5);
    if (value < 0 && cells > 0)
        bytes[at++] = minus;
    const whole = cells < 2147483648 ? (cells | 0) / 1000 | 0 : Math.floor(cells / 1000);
    let fraction = cells - whole * 1000 | 0;
    at = writeLarge(bytes, at, whole);
    if (fraction === 0)
        return at;
    let digits = 3;
    while (fraction % 10 === 0) {
        fraction = fraction / 10 | 0;
        digits -= 1;
    }
    bytes[at] = point;
    let place = at + digits;
    while (place > at) {
        bytes[place] = zero + fraction % 10;
        fraction = fraction / 10 | 0;
        place -= 1;
    }
    return at + digits + 1;
}

function writeDecimals2(bytes, at, value) {
    const cells = Math.floor(Math.abs(value) + 0.5);
    if (value < 0 && cells > 0)
        bytes[at++] = minus;
    const whole = cells < 2147483648 ? (cells | 0) / 100 | 0 : Math.floor(cells / 100);
    let fraction = cells - whole * 100 | 0;
    at = writeLarge(bytes, at, whole);
    if (fraction === 0)
        return at;
    let digits = 2;
    while (fraction % 10 === 0) {
        fraction = fraction / 10 | 0;
        digits -= 1;
    }
    bytes[at] = point;
    let place = at + digits;
    while (place > at) {
        bytes[place] = zero + fraction % 10;
        fraction = fraction / 10 | 0;
        place -= 1;
    }
    return at + digits + 1;
}

function writeDecimals1(bytes, at, value) {
    const cells = Math.floor(Math.abs(value) + 0.5);
    if (value < 0 && cells > 0)
        bytes[at++] = minus;
    const whole = cells < 2147483648 ? (cells | 0) / 10 | 0 : Math.floor(cells / 10);
    let fraction = cells - whole * 10 | 0;
    at = writeLarge(bytes, at, whole);
    if (fraction === 0)
        return at;
    let digits = 1;
    while (fraction % 10 === 0) {
        fraction = fraction / 10 | 0;
        digits -= 1;
    }
    bytes[at] = point;
    let place = at + digits;
    while (place > at) {
        bytes[place] = zero + fraction % 10;
        fraction = fraction / 10 | 0;
        place -= 1;
    }
    return at + digits + 1;
}

function writeDecimals0(bytes, at, value) {
    const cells = Math.floor(Math.abs(value) + 0.5);
    if (value < 0 && cells > 0)
        bytes[at++] = minus;
    return writeLarge(bytes, at, cells);
}

// The digits of a whole number below 2^31.
function writeWhole(bytes, at, whole) {
    let end = at + 1;
    let limit = 10;
    while (whole >= limit) {
        end += 1;
        limit = limit * 10;
    }
    let place = end - 1;
    while (place > at) {
        bytes[place] = zero + whole % 10;
        whole = whole / 10 | 0;
        place -= 1;
    }
    bytes[at] = zero + whole;
    return end;
}

// The digits of a whole number of any size.
function writeLarge(bytes, at, whole) {
    if (whole < 2147483648)
        return writeWhole(bytes, at, whole | 0);
    const rest = Math.floor(whole / 1000000000);
    at = writeWhole(bytes, at, rest | 0);
    return writePadded(bytes, at, whole - rest * 1000000000, 9);
}

// The digits of a whole number, with zeros before it up to `width`.
function writePadded(bytes, at, whole, width) {
    let digits = 1;
    let limit = 10;
    while (whole >= limit) {
        digits += 1;
        limit = limit * 10;
    }
    while (digits < width) {
        bytes[at++] = zero;
        digits += 1;
    }
    return writeLarge(bytes, at, whole);
}

// Text of the dialect, which is ASCII.
function write(state, at, text) {
    const bytes = state.bytes;
    let place = 0;
    while (place < text.length) {
        bytes[at + place] = text.charCodeAt(place);
        place += 1;
    }
    return at + text.length;
}

// Any text, as UTF-8; makes room for it.
function writeText(state, at, text) {
    const chunk = new TextEncoder().encode(text);
    if (at + chunk.length + 2048 > state.bytes.length) {
        const larger = new Uint8Array(2 * (at + chunk.length + 2048));
        larger.set(state.bytes.subarray(0, at));
        state.bytes = larger;
    }
    state.bytes.set(chunk, at);
    return at + chunk.length;
}

// A text from the job in the characters of comments, cut to `longest` of them.
function cleanCharacters(text, longest) {
    const clean = text.normalize("NFKD").toUpperCase().replace(/[\s\p{C}]+/gu, " ").replace(/\(/gu, "[").replace(/\)/gu, "]").replace(/;/gu, ",").replace(/[%:]|[^ -_]/gu, "").replace(/\s+/gu, " ").trim();
    return Array.from(clean).slice(0, longest).join("").trimEnd();
}

// The dialect has no word for what a step asks: a fault of the compiler.
function fault(key) {
    return new Error("The dialect has no word for this step (" + key + "); it should have been refused before it was written. This is a fault of the compiler.");
}
