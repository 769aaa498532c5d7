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

export const fromPrograms = `Where the manual is lost, take programs that are known to run on the machine:

\`\`\`
tapewright dialect infer PROGRAM... --output my-router.dialect.yaml
\`\`\`

It works out how they are written, chooses the shipped file of which the fewest keys have to be stated anew (\`--from D\` chooses another), and writes what
differs, each line with its evidence ("G01 on 412 of 412 line blocks, e.g. line 57"). Then it reads each program with that file, writes it
again, and says how many blocks came out alike. Several programs show more than one: which cycles there are, which parts of the header vary.

- What the programs do not show is asked, with the answer that holds until you give another: that of the file that is extended.
- What they say in two ways is told with its lines; where no way prevails, nothing is settled.
- **How the spindle's speed and standstill are confirmed is never taken from a program**: that it ran does not show that a wait was long enough. It is a wait or a
  dwell, and stands with the other risky questions under \`unanswered\`; each key there is told on every post until you have looked and taken it out.
- Travel, spindle limits, a rack and the like are in no program: state them under \`machine\`.
- A code that no shipped file knows is declared under \`codes\` as one that changes nothing, so that the program can be read: say what it does.

A program can only show what it has in it, and a file that was inferred is a guess with reasons: prove the first program out as carefully as with a file from a manual.`;

export const recipesIntroduction = `What a manual says in its words, and the line for it. Keys are explained below.`;

export const keysIntroduction = `Each key with its values (and unit), what it says, and what happens at the machine where it is wrong.`;
