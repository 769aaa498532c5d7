/** Small pieces of a drawing as SVG text. All of it is numbers and words of ours: no text of a job gets in here. */

/** A number of pixels with at most one decimal. */
function px(value: number): string {
  return String(Number(value.toFixed(1)));
}

/** A straight line; the class says how it looks. */
export function line(x1: number, y1: number, x2: number, y2: number, className: string): string {
  return `<line class="${className}" x1="${px(x1)}" y1="${px(y1)}" x2="${px(x2)}" y2="${px(y2)}"/>`;
}

/** A rectangle between two corners in any order. */
export function rectangle(x1: number, y1: number, x2: number, y2: number, className: string): string {
  const [x, y] = [Math.min(x1, x2), Math.min(y1, y2)];
  const [width, height] = [Math.abs(x2 - x1), Math.abs(y2 - y1)];
  return `<rect class="${className}" x="${px(x)}" y="${px(y)}" width="${px(width)}" height="${px(height)}"/>`;
}

/** A text; `turned` reads upwards, as dimensions at the side do. */
export function label(
  x: number,
  y: number,
  text: string,
  anchor: "start" | "middle" | "end" = "middle",
  turned = false,
): string {
  const turn = turned ? ` transform="rotate(-90 ${px(x)} ${px(y)})"` : "";
  return `<text x="${px(x)}" y="${px(y)}" text-anchor="${anchor}"${turn}>${text}</text>`;
}

const head = 7;

/** The head of an arrow at a place, pointing along dx dy (one of them 0, the other 1 or -1). */
function arrowHead(x: number, y: number, dx: number, dy: number): string {
  const [bx, by] = [x - dx * head, y - dy * head];
  const [nx, ny] = [-dy * head * 0.35, dx * head * 0.35];
  const points = [
    [x, y],
    [bx + nx, by + ny],
    [bx - nx, by - ny],
  ];
  return `<polygon class="solid" points="${points.map((place) => place.map(px).join(",")).join(" ")}"/>`;
}

/** A line with an arrow at its end, along one axis. */
export function arrow(x1: number, y1: number, x2: number, y2: number): string {
  return line(x1, y1, x2, y2, "thin") + arrowHead(x2, y2, Math.sign(x2 - x1), Math.sign(y2 - y1));
}

/** Room that a text takes in a dimension between arrows. */
const roomy = 60;

/** A dimension along X at height y, with its extension lines from y1 and y2. */
export function dimensionAlong(x1: number, x2: number, y: number, from: number, text: string): string {
  const [left, right] = [Math.min(x1, x2), Math.max(x1, x2)];
  const ends = [left, right].map((x) => line(x, from, x, y + 5, "thin")).join("");
  const isWide = right - left > 2 * head;
  const bar = line(left, y, right, y, "thin");
  const heads = isWide ? arrowHead(left, y, -1, 0) + arrowHead(right, y, 1, 0) : "";
  const isInside = right - left > roomy;
  const words = isInside ? label((left + right) / 2, y - 6, text) : label(right + 8, y + 5, text, "start");
  return ends + bar + heads + words;
}

/** The same along Y or Z at place x; the text reads upwards. */
export function dimensionUp(y1: number, y2: number, x: number, from: number, text: string): string {
  const [upper, lower] = [Math.min(y1, y2), Math.max(y1, y2)];
  const ends = [upper, lower].map((y) => line(from, y, x - 5, y, "thin")).join("");
  const bar = line(x, upper, x, lower, "thin");
  const isWide = lower - upper > 2 * head;
  const heads = isWide ? arrowHead(x, upper, 0, -1) + arrowHead(x, lower, 0, 1) : "";
  const isInside = lower - upper > roomy;
  const words = isInside
    ? label(x - 6, (upper + lower) / 2, text, "middle", true)
    : label(x - 8, (upper + lower) / 2 + 5, text, "end");
  return ends + bar + heads + words;
}

/** The mark of work zero: a circle with two of its quarters filled. */
export function zeroMark(x: number, y: number): string {
  const r = 9;
  const quarter = (dx: number, dy: number): string =>
    `<path class="solid" d="M${px(x)} ${px(y)}L${px(x + dx * r)} ${px(y)}A${r} ${r} 0 0 ${dx * dy > 0 ? 1 : 0} ${px(x)} ${px(y + dy * r)}Z"/>`;
  return `<circle class="zero" cx="${px(x)}" cy="${px(y)}" r="${r}"/>${quarter(1, -1)}${quarter(-1, 1)}`;
}
