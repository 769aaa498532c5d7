/** The hand-written parts of dialects/README.md. */

export const introduction = `# Dialect files

<!-- Made from schemas/dialect.schema.json by \`npm run generate\`. Do not edit. -->

A dialect file, NAME.dialect.yaml, says what one controller and its machine want. Each of them in this folder is a shipped
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

\`tapewright dialect new my-router.dialect.yaml\` writes such a file from your answers. Then \`tapewright dialect check my-router.dialect.yaml\` names what is wrong or missing, and
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

export const casesText = `## Cases: what the file must write

\`tapewright dialect test FILE\` holds a dialect to blocks that you have seen the controller take. Cases stand under \`cases\` in the file, or beside
it in NAME.cases.yaml, which has that one key:

\`\`\`yaml
cases:
  - name: the motion word in every block
    given: [rapid x10 y5, line z-2 feed 300, line x20]
    expect:
      - G00 X10.000 Y5.000
      - G01 Z-2.000 F300.0
      - G01 X20.000
  - name: M3 first, and the drive says when
    units: mm # or inch: what the numbers count, and the units of the program
    given: [spindle cw 12000, wait 4 on 10]
    expect: [M03 S12000, M94 P4 R1 Q10.0]
\`\`\`

A case starts with X, Y and Z at 0, in the plane XY, with absolute places where the dialect's programs have them, and feed per minute; block numbers begin anew. Each step is
written as it stands: arcs are not split, holes not written out, nothing is rounded and nothing is put in between, which is done to jobs before. A blank in an expected
block stands for a tab. What is written is read back, and must mean the steps that are given; otherwise the case fails, whatever it expects. \`--update\` shows
what differs and puts what is written now in the place of what is expected, and changes nothing else in the file: read it, as you would read a program.
A case belongs to its file: a dialect that extends the file has none of its cases.

A step is a word and what belongs to it, with blanks between; places are a letter and a number, and stay until they are named again, as a feed does. A text with \`: \`, \`#\` or a comma in it stands in quotes.

| step | what it is |
|---|---|
| \`rapid x10 y5\`, \`line z-2 feed 300\` | a motion in work coordinates; axes x y z a b c |
| \`machine rapid z0\` | the same in machine coordinates |
| \`arc cw x20 y5 cx15 cy5\`, \`... turns 2 feed 800\` | end and centre as places; cx cy, cz cx or cy cz say the plane, which must be selected; cw as in a job |
| \`holes peck at x10 y10 at x20 y10 depth -12 retract 2 peck 3 feed 200\` | a series of one cycle: drill, dwell, peck, chip-break, tap, tap-left, ream, bore-dwell, bore-stop or bore-manual; also \`dwell 0.2\`, \`back-off 0.5\`, \`between initial\` |
| \`cycle off\` | its end |
| \`spindle cw 12000\`, \`spindle ccw\`, \`spindle 9000\`, \`spindle stop\`, \`spindle orient\` | start and speed as a posted program has them (one block or two, and in which order), or one of the two |
| \`coolant mist\`, \`coolant mist off\`, \`coolant off\` | mist, flood, air or through-tool; all off |
| \`dwell 0.5\`, \`dwell 3 turns\` | seconds, or turns of the spindle |
| \`wait 4 on 10\`, \`output 3 off\` | wait for input 4, 10 seconds at most; switch an output |
| \`tool 3\`, \`tool 3 offset 3\`, \`change\` | the tool word, and the change |
| \`length-offset 3\`, \`length-offset off\`, \`work-offset 2\`, \`comp left 3\`, \`comp off\` | offsets; the radius offset may be left out |
| \`units inch\`, \`plane zx\`, \`distance incremental\`, \`arc-centre absolute\`, \`feed-mode inverse-time\`, \`path blend within 0.02\` | modes by their words: also \`path exact\`, \`path stop\` |
| \`look-ahead off\`, \`corner-feed off\`, \`overrides on\`, \`local-shift off\`, \`rotation off\`, \`scale off\` | modes that are on or off |
| \`pause\`, \`pause optional\`, \`message Load tool 3\` | stops, and a message to the operator |
| \`release\`, \`clamp\`, \`taper-air-on\`, \`taper-air-off\`, \`cover-open\`, \`cover-close\`, \`hood-up\`, \`hood-down\`, \`measure\`, \`code M93\` | what idioms and \`codes\` say |
| \`reference z\` | reference return of these axes |
| \`program 7\`, \`end\` | first of all steps: the case is a whole program, marks and all, which starts nowhere; its end |
`;

export const keysIntroduction = `Each key with its values (and unit), what it says, and what happens at the machine where it is wrong.`;
