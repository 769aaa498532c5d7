import type { Random } from "./mutate.ts";
import { pick, upTo } from "./mutate.ts";

/** A place, thousandths of a unit. */
type Place = readonly [x: number, y: number, z: number];

/** Z above everything, thousandths. */
const high = 20_000;

/** A number in thousandths in one of the forms that APT allows. */
function number(random: Random, thousandths: number): string {
  const fixed = (thousandths / 1000).toFixed(3);
  const short = String(thousandths / 1000);
  const forms = [
    fixed,
    `${fixed}000`,
    short,
    short.replace(/^(-?)0\./, "$1."),
    thousandths > 0 ? `+${short}` : short,
  ];
  return pick(random, forms);
}

const list = (random: Random, place: readonly number[]): string =>
  place.map((value) => number(random, value)).join(pick(random, [",", ", ", " , "]));

const somewhere = (random: Random): Place => [
  upTo(random, 90_000),
  upTo(random, 60_000),
  upTo(random, 6000) - 4000,
];

/** A piece of a source: its statements, and where the tool is behind them. */
type Piece = (random: Random, at: Place) => readonly [statements: string, behind: Place];

const pieces: readonly Piece[] = [
  (random) => {
    const to = somewhere(random);
    const axis = pick(random, ["", "", ",0,0,1", ",0.,0.,1.0E0,350"]);
    return [`GOTO/${list(random, to)}${axis}`, to];
  },
  (random, [x, y, z]) => {
    const [dx, dy] = [upTo(random, 4000), upTo(random, 4000)];
    return [`GODLTA/${list(random, [dx, dy, 0])}`, [x + dx, y + dy, z]];
  },
  (random) => {
    const [x, y] = somewhere(random);
    return [`RAPID\nGOTO/${list(random, [x, y, high])}`, [x, y, high]];
  },
  (random, at) => [
    pick(random, ["FEDRAT/300", "FEDRAT/.05,MMPR", "FEDRAT/IPM,12", "fedrat / mmpm, $\n 480.5"]),
    at,
  ],
  // A half turn about the middle between two places, flat or as a helix.
  (random, [x, y, z]) => {
    const radius = 100 + upTo(random, 9000);
    const fall = pick(random, [0, 0, 500]);
    const centre = list(random, [x + radius, y, z]);
    const turn = pick(random, ["0,0,1", "0,0,-1"]);
    const to: Place = [x + 2 * radius, y, z - fall];
    return [`CIRCLE/${centre},${turn},${number(random, radius)}\nGOTO/${list(random, to)}`, to];
  },
  // A quarter turn in ZX or YZ.
  (random, at) => {
    // It rises, so that it begins below.
    const [x, y, z] = at;
    if (z > 5000) return ["$$ too high", at];
    const radius = 100 + upTo(random, 900);
    const isZx = random() < 0.5;
    const centre = list(random, [x, y, z + radius]);
    const to: Place = [isZx ? x + radius : x, isZx ? y : y + radius, z + radius];
    return [
      `CIRCLE/${centre},${isZx ? "0,-1,0" : "1,0,0"},${number(random, radius)}\nGOTO/${list(random, to)}`,
      to,
    ];
  },
  (random) => {
    const kind = pick(random, [
      "DRILL",
      "DEEP,STEP,2",
      "BRKCHP,INCR,1.5",
      "FACE,DWELL,.3",
      "BORE,DWELL,1",
      "REAM",
      "TAP,MMPR,1.25",
      "MILL",
      "CSINK",
    ]);
    const [name, ...more] = kind.split(",");
    const words = ["", ...more].join(",");
    const level = pick(random, ["", ",RTRCTO,12", ",RETURN", ",RAPTO,1.5"]);
    const feed = name === "TAP" ? "" : ",MMPM,120";
    const points = Array.from({ length: 1 + upTo(random, 4) }, () => {
      const [x, y] = somewhere(random);
      return `GOTO/${list(random, [x, y, pick(random, [0, 0, -2000])])}`;
    });
    const head = `CYCLE/${name},FEDTO,${number(random, 1000 + upTo(random, 9000))}${feed}${words},CLEAR,3${level}`;
    const [x, y] = somewhere(random);
    const away = `RAPID\nGOTO/${list(random, [x, y, high])}`;
    return [`${head}\n${points.join("\n")}\nCYCLE/OFF\n${away}`, [x, y, high]];
  },
  (random, at) => [pick(random, ["COOLNT/FLOOD", "COOLNT/MIST", "COOLNT/OFF", "COOLNT/ON"]), at],
  (random, at) => [
    pick(random, ["DELAY/.25", "DELAY/3,REV", "SPINDL/8000,CLW", "SPINDL/RPM,9500.5,CLW"]),
    at,
  ],
  (random, at) => [pick(random, ["PPRINT MIND THE $ HOSE", "REMARK NOTHING", "$$ nothing", "SEQNO/10"]), at],
  (random, [x, y]) => [
    `RAPID\nGOTO/${list(random, [x, y, high])}\n${pick(random, ["STOP", "OPSTOP"])}\nRAPID\nGOTO/${list(random, [x, y, high])}`,
    [x, y, high],
  ],
];

/** A source that is sound but for what no reader can know: pieces that fit each other, tool by tool. */
export function writtenSource(random: Random): string {
  const tools = Array.from({ length: 1 + upTo(random, 2) }, (_, index) => {
    const head = `LOADTL/${index + 1}\nCUTTER/${pick(random, ["6", "8.,1."])}\nSPINDL/9000,CLW`;
    const start: Place = [upTo(random, 9000), upTo(random, 9000), high];
    let at = start;
    const body: string[] = [];
    for (let count = upTo(random, 30); count > 0; count--) {
      const [statements, behind] = pick(random, pieces)(random, at);
      body.push(statements);
      at = behind;
    }
    const end = `RAPID\nGOTO/${list(random, [at[0], at[1], high])}\nSPINDL/OFF`;
    return [head, `RAPID\nGOTO/${list(random, start)}`, "FEDRAT/400,MMPM", ...body, end].join("\n");
  });
  const units = pick(random, ["UNITS/MM", "UNITS/MM", "UNITS/INCHES"]);
  return ["PARTNO WRITTEN BY CHANCE", units, ...tools, "END", "FINI", ""].join("\n");
}
