/** The hand-written parts of dialects/README.md. */

export const introduction = `# Dialect files

<!-- Made from schemas/dialect.schema.json by \`npm run generate\`. Do not edit. -->

A dialect file, NAME.dialect.yaml, says what one controller and its machine want. Each file in this folder is a shipped
dialect; yours can stand anywhere and extend one of them. A whole file may be as short as this:

\`\`\`yaml
dialect: my-router # the file is my-router.dialect.yaml
title: The router in the shed
extends: rs274ngc # everything that is not stated below is as there
modal: { motion: each-block } # it wants the motion word in every block
confirm:
  at-speed: { dwell: 8 s } # nothing waits for the spindle by itself
  stopped: { dwell: 12 s }
\`\`\`

Then \`tapewright dialect check my-router.dialect.yaml\` names what is wrong or missing, and
\`tapewright post JOB.json --dialect my-router.dialect.yaml\` writes a program with it.

**A dialect file decides how a machine moves.** A wrong value can make a program that is read back and proved all the same, since
it is proved against what the file says. Prove the first program of a new file out above the work with a hand on feed hold, check
lengths and clamps, and leave interlocks to the machine's own safety control.

## How a file is written

- State only what differs. Mappings are merged key by key; lists, single values and \`none\` replace what is inherited.
- A path such as \`numbers.length.mm\` is a key inside a key inside a key: \`numbers: { length: { mm: 4 } }\`, or on lines of their own,
  each two blanks further in. Each top-level key may stand once in a file.
- \`none\` says that the controller has no such word or the machine no such thing. A job that needs it is refused.
- A key that no file of the chain states is never guessed: a job that needs it is refused, and the finding says which
  line to add. \`tapewright dialect show FILE\` prints all values with the file and line each comes from.
- Lengths are in millimetres, or have their unit behind them: \`12.7\`, \`0.5 in\`. Feeds are in mm/min, or \`20 in/min\`. Times
  always have a unit: \`6 s\`, \`500 ms\`, \`2 min\`. Angles are in degrees, spindle speeds in rpm.
- A dwell of a confirmation may be an expression: \`"spin_up * rpm / max_rpm + 0.5 * second"\`. It has numbers, \`+ - * / ( )\`,
  \`min\`, \`max\`, the constants second, minute, mm, inch and rev, and the names below; it must come out as a time.

| name | value |
|---|---|
| \`rpm\` | speed after the change (at-speed only) |
| \`from_rpm\` | speed before it, the highest speed where it is not known (at-speed and stopped) |
| \`min_rpm\`, \`max_rpm\`, \`spin_up\`, \`spin_down\`, \`coast_down\` | the keys of \`machine.spindle\` |
`;

export const whichOne = `Take the one that is nearest to what the manual says, and state the rest; **what you do not state is as in the file that
you extend**, also where the manual says nothing of it. \`tapewright dialect show FILE\` prints all of it; before the first program look
there at least at \`units\`, \`distance\`, \`file\`, \`arc\`, \`cycles\`, \`machine\` and \`confirm\`. None of these files is made for one machine, but some state
machine facts that you inherit until you state your own: how Z is retracted, who changes tools and what a change leaves behind,
where lengths come from, and the longest dwells that are common, 20 s for the start of the spindle and 60 s for its stop.`;

export const recipesIntroduction = `What a manual says in its words, and the line for it. Keys are explained below.`;

export const questionsIntroduction = `\`tapewright dialect new NAME.dialect.yaml\` asks these questions at the terminal, shows five blocks of a small job after each answer, and
writes the file. \`--answers FILE\` takes the answers from a YAML file instead, each by the word in the table; a question that is left out,
or answered with \`keep\`, stays as in the dialect that the file extends. An answer that needs more says it beside its word:

\`\`\`yaml
from: rs274ngc # the dialect to start from; --from says it, too
title: The router in the shed
motion: each-block
spindle: start-first
at-speed: { answer: wait, input: 4, timeout: 10 s, block: "M94 P{{signal}} R{{level}} Q{{timeout}}" }
stopped: { answer: dwell, time: 12 s }
\`\`\`

That the controller can be trusted to hold by itself is never taken over from the dialect that is extended: there the last two questions must be answered.`;

export const keysIntroduction = `Each key with its values (and unit), what it says, and what happens at the machine where it is wrong.`;
