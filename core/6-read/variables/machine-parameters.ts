/** The highest parameter that belongs to programs, and the highest that there is (NISTIR 6556 3.2.1, and what followed it). */
export const ownParameters = 5000;
export const mostParameters = 5601;

/** Parameters that the controller keeps, with what they hold (NISTIR 6556 Table 2; those from 5399 on as interpreters that followed have them). */
const ranges: readonly { readonly from: number; readonly to: number; readonly holds: string }[] = [
  { from: 5061, to: 5070, holds: "a result of probing" },
  { from: 5161, to: 5189, holds: "the place of a reference point" },
  { from: 5210, to: 5219, holds: "the local shift" },
  { from: 5220, to: 5390, holds: "a work offset" },
  { from: 5399, to: 5399, holds: "the level of an input" },
  { from: 5400, to: 5413, holds: "a value of the tool table" },
  { from: 5420, to: 5428, holds: "the place of the machine" },
];

/** What a parameter above those of programs holds. */
export function heldBy(number: number): string {
  const found = ranges.find(({ from, to }) => number >= from && number <= to);
  return found?.holds ?? "kept by the controller";
}

/** Global names that interpreters keep for what is in force; from their documentation, so from memory. */
const keptNames = new Set(
  (
    "_vmajor _vminor _line _motion_mode _plane _ccomp _metric _imperial _absolute _incremental _inverse_time " +
    "_units_per_minute _units_per_rev _coord_system _tool_offset _retract_r_plane _retract_old_z _spindle_rpm_mode " +
    "_spindle_css_mode _ijk_absolute_mode _lathe_diameter_mode _lathe_radius_mode _spindle_on _spindle_cw _mist _flood " +
    "_speed_override _feed_override _adaptive_feed _feed_hold _feed _rpm _x _y _z _a _b _c _u _v _w _abs_x _abs_y _abs_z " +
    "_abs_a _abs_b _abs_c _current_tool _current_pocket _selected_tool _selected_pocket _value _value_returned _task " +
    "_call_level _remap_level"
  ).split(" "),
);

/** Whether a global name is the controller's. */
export function isKept(name: string): boolean {
  return keptNames.has(name);
}
