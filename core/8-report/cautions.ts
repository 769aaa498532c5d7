/** What a person at the machine has to know before any program runs, proved or not. */
export const machineCautions = [
  "Prove it out: run it first with the work offset raised well above the work, block by block, with rapids slowed and a hand on feed hold. Feed hold stops the axes, not the spindle.",
  "Check every tool length and offset, the clamps, and that nothing stands in the way of the rapids.",
  "A program is no safety function. Interlocks, guards and emergency stop belong to the machine's own safety control; do not bridge them.",
  "Work on mains wiring, spindle drives and compressed air is for people licensed to do it.",
  "Local codes and the machine builder's instructions come first.",
] as const;

/** The same of a proved program. Shown by every command that makes one. */
export const cautions = [
  "The proof says that this text means the job. It does not say that the job, the dialect file, the tool lengths or the clamping are right.",
  ...machineCautions,
] as const;

/** The same of a picture. */
export const plotCautions = [
  "A picture proves nothing: it shows where the tool's tip is told to go, not what the tool, its holder and the machine meet on the way.",
  ...machineCautions,
] as const;
