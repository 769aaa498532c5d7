/**
 * Codes with one meaning on every control of the ISO 6983 family, with the keys they may stand at. A dialect cannot give
 * them another one: a slip such as `rapid: G1` would agree with itself when the program is read back.
 *
 * ISO 6983-1 code tables as printed in its national editions; M02 and M30 both end a program, M07 to M09 are coolant.
 */
export const standardCodes: Readonly<Record<string, readonly string[]>> = {
  G0: ["motion.rapid"],
  G1: ["motion.line"],
  G2: ["arc.cw"],
  G3: ["arc.ccw"],
  G4: ["dwell.code"],
  G17: ["plane.xy"],
  G18: ["plane.zx"],
  G19: ["plane.yz"],
  G40: ["compensation.off"],
  G41: ["compensation.left"],
  G42: ["compensation.right"],
  G80: ["cancel.cycles"],
  ...Object.fromEntries(
    ["G81", "G82", "G83", "G84", "G85", "G86", "G87", "G88", "G89"].map((code) => [code, ["cycles."]]),
  ),
  G90: ["distance.absolute"],
  G91: ["distance.incremental"],
  G94: ["feed.per-minute"],
  M0: ["stops.stop"],
  M1: ["stops.optional"],
  M2: ["stops.end"],
  M3: ["spindle.cw"],
  M4: ["spindle.ccw"],
  M5: ["spindle.stop"],
  M6: ["tools.change"],
  M7: ["coolant.mist", "coolant.flood", "coolant.air", "coolant.through-tool"],
  M8: ["coolant.mist", "coolant.flood", "coolant.air", "coolant.through-tool"],
  M9: ["coolant.off"],
  M30: ["stops.end"],
};
