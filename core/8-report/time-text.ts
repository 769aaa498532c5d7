import type { Times } from "#base";

/** 751.4 -> "12 min 31 s"; "1 h 02 min"; below a minute with tenths: "31.2 s". */
export function durationText(seconds: number): string {
  const tenths = Math.round(seconds * 10) / 10;
  if (tenths < 60) return `${tenths.toFixed(1)} s`;
  const whole = Math.round(seconds);
  const [hours, minutes, rest] = [Math.floor(whole / 3600), Math.floor(whole / 60) % 60, whole % 60];
  return hours > 0 ? `${hours} h ${twoDigits(minutes)} min` : `${minutes} min ${twoDigits(rest)} s`;
}

function twoDigits(number: number): string {
  return `${number}`.padStart(2, "0");
}

/** One sentence: the whole, of it what cuts, what swapping saves, what is in no sum, and what it rests on. */
export function timeText(time: Times): string {
  const { cutting, rapid, swap, swaps, stops, optionalStops, basis } = time;
  const most = [
    `of it cutting ${durationText(cutting)}`,
    ...(rapid > 0 ? [`rapids ${durationText(rapid)}`] : []),
    ...(swap > 0 ? [`swaps ${durationText(swap)}`] : []),
  ].join(", ");
  const saving =
    swaps.saving > 0
      ? `; automatic swaps save ${durationText(swaps.saving)} against ${durationText(swaps.oneByHand)} each by hand`
      : "";
  const apart = [counted(stops, "stop"), counted(optionalStops, "optional stop")].flat();
  const without = apart.length === 0 ? "" : `; not counted: ${apart.join(" and ")}`;
  const rests = basis === "feeds" ? "; from feeds alone, machine.acceleration is not stated" : "";
  return `${durationText(time.total)}, ${most}${saving}${without}${rests}`;
}

function counted(number: number, name: string): string[] {
  return number === 0 ? [] : [`${number} ${name}${number === 1 ? "" : "s"}`];
}
