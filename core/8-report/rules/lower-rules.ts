import type { RuleTexts } from "./rule-texts.ts";

/** What the dialect cannot say of the job (3-lower, 4-sequence). */
export const lowerRules = {
  "lower/word": "The dialect has a word for what the job asks for.",
  "lower/units": "The program can be written in one of the units that the dialect can say.",
  "lower/feed-mode": "The dialect can say the feed mode of the operation, or it can be converted.",
  "lower/rapid-feed": "Where rapids are lines at a feed, no feed of the job is as fast, or of another mode.",
  "lower/rotary": "The machine has the rotary axes that the job moves.",
  "lower/compensation": "The dialect can say the compensation that the job asks for.",
  "lower/cycle": "A cycle fits the controller's own, or can be written longhand.",
  "lower/arc": "An arc can be said, or replaced by chords within a stated tolerance.",
  "lower/tolerance":
    "The tolerance of a blended path is said, as stated or smaller, or the path is exact: without it corners could be cut wider.",
  "lower/axes-at-once": "No motion at feed moves more axes than the controller moves at once.",
  "lower/full-circle": "An arc whose rounded ends meet stays what it was: a full circle, a line, or nothing.",
  "lower/range": "A number fits the format of its address.",
  "lower/dwell": "A dwell in revolutions stands where the spindle turns.",
  "lower/rounded": "A value is written as stated; otherwise it is said which value takes its place.",
  "lower/work-offset": "The dialect has a word for the work offset.",
  "lower/coolant": "The dialect can switch the coolant on, and off again.",
  "lower/program-number":
    "The job states a program number where the controller wants one, and one that is free for programs.",
  "lower/swap": "A program needs no more tools than the machine can swap within it.",
  "lower/hood": "The dialect can work the hood as the operation asks.",
  "lower/no-message": "The dialect can show a message to the operator; without one, notes are left out.",
} as const satisfies RuleTexts;
