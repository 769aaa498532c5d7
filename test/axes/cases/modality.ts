import type { AxisCase } from "../axis-case.ts";
import { modalJob } from "../sample-job.ts";

/** Group D: what is repeated, and what stays in force. */
export const cases: readonly AxisCase[] = [
  {
    axis: 39,
    title: "places, or ways from place to place that are differences of rounded places",
    base: "rs274ngc",
    both: "machine: { retract: { intermediate: none } }",
    one: "distance: { absolute: none, incremental: none, programs-in: absolute }",
    other: "distance: { absolute: none, incremental: none, programs-in: incremental }",
    otherRefuses: "lower/word",
  },
  {
    axis: 41,
    title: "the motion word where it changes, or in each block",
    base: "rs274ngc",
    one: "modal: { motion: modal }",
    other: "modal: { motion: each-block }",
    oneTakes: "what keeps within the narrower form suits the wider one",
  },
  {
    axis: 42,
    title: "axes that change, or all of them",
    base: "rs274ngc",
    one: "modal: { axes: changed }",
    other: "modal: { axes: all }",
    oneTakes: "what keeps within the narrower form suits the wider one",
  },
  {
    axis: 42,
    title: "those end words of an arc that change, or both",
    base: "rs274ngc",
    job: modalJob,
    one: "modal: { arc-end: changed }",
    other: "modal: { arc-end: both }",
    oneTakes: "what keeps within the narrower form suits the wider one",
  },
  {
    axis: 43,
    title: "centre words of an arc that are not zero, or both",
    base: "rs274ngc",
    one: "modal: { arc-centre: non-zero }",
    other: "modal: { arc-centre: both }",
    oneTakes: "what keeps within the narrower form suits the wider one",
  },
  {
    axis: 44,
    title: "the feed where it changes, or in each block that cuts",
    base: "rs274ngc",
    one: "modal: { feed: modal }",
    other: "modal: { feed: each-block }",
    oneTakes: "what keeps within the narrower form suits the wider one",
  },
  {
    axis: 44,
    title: "the feed where it changes, or also behind a rapid",
    base: "rs274ngc",
    one: "modal: { feed: modal }",
    other: "modal: { feed: after-rapid }",
    job: modalJob,
    oneTakes: "what keeps within the narrower form suits the wider one",
  },
];
