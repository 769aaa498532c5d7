/** What can be done about codes that a dialect does not have, and that programs often hold. */
interface WayOut {
  readonly fix: string;
  /** Key that gives the code a meaning; undefined where none can. */
  readonly key?: string;
}

const moved = "State the places of the program without it: what it moves the work zero by is not known here.";

/** By letter and number, in tenths: G73 is G 730. */
const known: Readonly<Record<string, WayOut>> = {
  // It changes the tables of offsets, which programs of a job only select (NISTIR 6556 Table 5).
  G100: { fix: `${moved} Set work offsets and tool lengths at the machine.` },
  // They shift the axes (NISTIR 6556 Table 5).
  G920: { fix: moved },
  G923: { fix: moved },
  G921: {
    fix: "Take it out where nothing has been shifted; or state `cancel: { local-shift: G92.1 }` in a leaf of the dialect.",
    key: "cancel.local-shift",
  },
  // Under G91.1 I, J and K count from the start of the arc, as they do where nothing says it; common practice, no source.
  G911: {
    fix: "State `arc: { centre-words: { incremental: G91.1 } }` in a leaf of the dialect, if I, J and K then count from the start of the arc; or take it out.",
    key: "arc.centre-words.incremental",
  },
  // What these two do is common practice, no source: neither is in ISO 6983-1 or NISTIR 6556 as a cycle.
  G730: {
    fix: "Where it pecks and backs off a little, state `cycles: { chip-break: G73 }` in a leaf of the dialect; otherwise write its motions out.",
    key: "cycles.chip-break",
  },
  G740: {
    fix: "Where it taps a left-hand thread, state `cycles: { tap-left: G74 }` in a leaf of the dialect; otherwise write its motions out.",
    key: "cycles.tap-left",
  },
  // The second reference position (NISTIR 6556 3.5.8).
  G300: {
    fix: "Take it out, or write the return that the dialect has; or state `reference-return: G30` in a leaf of the dialect, where the program has this return alone.",
    key: "reference-return",
  },
};

/** The way out for a code that the dialect gives no meaning. */
export function wayOutOf(letter: string, tenths: number): WayOut {
  return (
    known[letter + String(tenths)] ?? {
      fix: "Take the code out, or declare what it does under `codes`.",
      key: "codes",
    }
  );
}
