/** What a program does, by hand and in thousandths of a millimetre: nothing of core is behind it. */
export type Step =
  | { readonly do: "tool"; readonly number: number; readonly name: string; readonly next: number | undefined }
  | { readonly do: "spindle"; readonly rpm: number; readonly ccw: boolean; readonly wait: number }
  | { readonly do: "coolant"; readonly code: 7 | 8 }
  | { readonly do: "rapid" | "line"; readonly x?: number; readonly y?: number; readonly z?: number; readonly feed?: number } // prettier-ignore
  | { readonly do: "arc"; readonly cw: boolean; readonly x: number; readonly y: number; readonly cx: number; readonly cy: number; readonly feed: number } // prettier-ignore
  | { readonly do: "holes"; readonly code: 81 | 82 | 83; readonly at: readonly (readonly [number, number])[]; readonly depth: number; readonly retract: number; readonly peck: number; readonly dwell: number; readonly feed: number } // prettier-ignore
  | { readonly do: "stop"; readonly text: string };

/** Height of safe travel. */
export const clear = 15_000;

const whole = (random: () => number, from: number, to: number): number =>
  from + Math.floor(random() * (to - from + 1));

/** A program of a few tools: contours with arcs in both senses, circles, corners of many digits, holes. */
export function drawSteps(random: () => number): Step[] {
  const tools = whole(random, 2, 4);
  return Array.from({ length: tools }, (_, index) => ofTool(random, index + 1, index + 1 < tools ? index + 2 : undefined)).flat(); // prettier-ignore
}

function ofTool(random: () => number, number: number, next: number | undefined): Step[] {
  const drills = number % 2 === 0;
  return [
    { do: "tool", number, name: drills ? "DRILL" : "END MILL", next },
    { do: "spindle", rpm: 100 * whole(random, 60, 240), ccw: false, wait: 500 * whole(random, 1, 9) + 250 },
    ...(random() < 0.7 ? [{ do: "coolant", code: random() < 0.5 ? 7 : 8 } as const] : []),
    ...(drills ? holesOf(random) : Array.from({ length: whole(random, 4, 7) }, () => contour(random)).flat()),
  ];
}

/** Down, round a shape of lines and arcs on a grid of the 3-4-5 triangle, a circle, and up. */
function contour(random: () => number): Step[] {
  const x = 1000 * whole(random, -20, 90);
  const y = 1000 * whole(random, -20, 60);
  const feed = 10 * whole(random, 20, 120);
  const depth = -250 * whole(random, 1, 12);
  const radius = 5000 * whole(random, 1, 3);
  const length = radius + 1000 * whole(random, 5, 30);
  const odd = whole(random, 1, 999);
  const plunge = 10 * whole(random, 8, 30);
  return [
    { do: "rapid", x, y },
    { do: "rapid", z: 2000 },
    { do: "line", z: depth, feed: plunge },
    { do: "line", x: x + length, feed },
    { do: "arc", cw: false, x: x + length + radius, y: y + radius, cx: x + length, cy: y + radius, feed },
    { do: "line", y: y + radius + 8000, feed },
    { do: "line", x: x + length + radius - odd, y: y + radius + 8000 + 2 * odd, feed },
    { do: "line", x: x + length, y: y + radius + 12_000, feed },
    // From (5, 0) to (3, 4) by fifths of the radius: an arc that crosses no quadrant line.
    { do: "line", x: x + radius, y: y + radius + 12_000, feed },
    { do: "arc", cw: true, x: x + (2 * radius) / 5, y: y + radius + 12_000 - (4 * radius) / 5, cx: x, cy: y + radius + 12_000, feed }, // prettier-ignore
    ...pieces(random, x + (2 * radius) / 5, y + radius + 12_000 - (4 * radius) / 5, radius, feed),
    { do: "rapid", z: 2000 },
    { do: "rapid", x: x + 500, y: y + 1500 },
    { do: "line", z: depth, feed },
    { do: "line", x: x + 750, y: y + 2500, z: depth - 125, feed },
    { do: "rapid", z: clear },
  ];
}

/** Half a circle and a whole one, from its lowest point. */
function pieces(random: () => number, x: number, y: number, radius: number, feed: number): Step[] {
  const cw = random() < 0.5;
  const way = random() < 0.5 ? 1 : -1;
  return [
    { do: "line", x, y, feed },
    { do: "arc", cw, x, y: y + way * 2 * radius, cx: x, cy: y + way * radius, feed },
    { do: "line", x: x + 1000, feed },
    { do: "arc", cw: !cw, x: x + 1000, y: y + way * 2 * radius, cx: x + 1000, cy: y + way * radius, feed },
  ];
}

function holesOf(random: () => number): Step[] {
  const series = whole(random, 2, 3);
  return Array.from({ length: series }, (_, index): Step[] => {
    const code = ([81, 83, 82] as const)[index % 3];
    const [left, low, pitch] = [
      1000 * whole(random, 0, 20),
      1000 * whole(random, 0, 20),
      500 * whole(random, 8, 40),
    ];
    const at = [0, 1, 2, 3].flatMap((row) => [0, 1, 2].map((column) => [left + pitch * column, low + pitch * row] as const)); // prettier-ignore
    const rows = at.map((_place, place) => at[Math.floor(place / 3) * 3 + (Math.floor(place / 3) % 2 === 0 ? place % 3 : 2 - (place % 3))]); // prettier-ignore
    const depth = -500 * whole(random, 6, 40);
    return [
      { do: "rapid", x: left, y: low },
      { do: "holes", code, at: rows, depth, retract: 2000, peck: 500 * whole(random, 2, 8), dwell: 50 * whole(random, 3, 9), feed: 10 * whole(random, 8, 40) }, // prettier-ignore
      { do: "rapid", z: clear },
    ];
  }).flat();
}
