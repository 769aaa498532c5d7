export { batchResult } from "./batch-result.ts";
export type { BatchEntry } from "./batch-result.ts";
export { batchText } from "./text-batch.ts";
export { cautions, plotCautions } from "./cautions.ts";
export { clean } from "./clean.ts";
export type {
  ExplainedBlock,
  ProgramPart,
  SaidStep,
  ShapedLines,
  ShapedWord,
  WhyAnswer,
} from "./why-answer.ts";
export type {
  CompareAnswer,
  ComparedLines,
  ComparedPair,
  ComparedProgram,
  DifferenceGroup,
  DifferenceKey,
  DifferencePlace,
  ListedRow,
  ProgramTimes,
} from "./compare-answer.ts";
export { withJobPlaces } from "./compare-places.ts";
export { compareText } from "./text-compare.ts";
export { placesOf } from "./why-answer.ts";
export type { QuotedPlace } from "./why-answer.ts";
export { whyText } from "./text-why.ts";
export { jsonFinding, jsonReport } from "./json.ts";
export type { JsonFinding } from "./json.ts";
export { locate } from "./locate.ts";
export type { Located, Sources, SourceText } from "./locate.ts";
export { count } from "./outcome.ts";
export type { ProofFacts, Reportable, Summary, Verdict } from "./outcome.ts";
export { createPaint } from "./paint.ts";
export type { Paint, Role } from "./paint.ts";
export { findingsText } from "./text-findings.ts";
export type { Layout } from "./text-findings.ts";
export { comparePage } from "./compare-page/compare-page.ts";
export { sheetText } from "./text-sheet.ts";
export { sheetPage } from "./sheet-page/sheet-page.ts";
export type { SheetPageInput } from "./sheet-page/sheet-page-input.ts";
export { programText, readingText, tally } from "./text-result.ts";
export { changedText } from "./text-changed.ts";
export type { ChangedBlocks, ChangedRun } from "./text-changed.ts";
export { moduleText } from "./text-module.ts";
export { defaultWidth, hang, wrap } from "./wrap.ts";
export { assumptions, toolsUsed } from "./assumptions.ts";
export type { Undertaking } from "./assumptions.ts";
export { rackReport, rackText, reloadSentence } from "./rack-plan.ts";
export type { PocketChange, RackReport, ReloadStop } from "./rack-plan.ts";
export { gather } from "./gather.ts";
export type { Gathering, ReportingStage } from "./gather.ts";
export { withCorrectedBlocks } from "./corrected.ts";
export type { Correction } from "./corrected.ts";
export { ruleChapters, rulesPage } from "./rules.ts";
export type { RuleChapter } from "./rules.ts";
export type {
  AirCut,
  CheckStep,
  Extents,
  FeedUse,
  HashedFile,
  Range,
  SetupSheet,
  SheetBox,
  SheetDialect,
  SheetFeed,
  SheetMachine,
  SheetOffset,
  SheetOperation,
  SheetPlan,
  SheetProgram,
  SheetStop,
  SheetTool,
  StopKind,
  ToolReach,
  Triple,
} from "./sheet/sheet.ts";
export type {
  Extent,
  Packing,
  Plot,
  PlotBox,
  PlotHead,
  PlotMark,
  PlotOperation,
  PlotTool,
  Point,
} from "./plot/plot.ts";
export { atomsPerMicrometre, linesOfPiece, placeText } from "./plot/plot.ts";
export type { Moves } from "./plot/moves.ts";
export {
  createMoves,
  decodeMoves,
  encodeMoves,
  isArcMove,
  kindOf,
  moveFlag,
  moveKind,
  movesOfPiece,
} from "./plot/moves.ts";
export type { Curve } from "./plot/curve.ts";
export { chordsOf, curveOf, placeOnCurve, quadrantParts } from "./plot/curve.ts";
export type { DrawingOptions } from "./plot/drawing/drawing.ts";
export { plotPage } from "./plot/page/plot-page.ts";
export { plotText } from "./text-plot.ts";
export { plotDrawing, wholeDrawing } from "./plot/drawing/drawing.ts";
