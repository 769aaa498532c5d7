/** Values of `reportOptions` as yargs gives them. */
export interface ReportArguments {
  readonly report: string;
  readonly quiet?: boolean | undefined;
  readonly noColor?: boolean | undefined;
}

/** Values of `dialectOptions`. */
export interface DialectArguments extends ReportArguments {
  readonly dialect: string;
  readonly noCache?: boolean | undefined;
}

/** Values of `readingOptions`. */
export interface ReadingArguments {
  readonly cl?: readonly string[] | undefined;
  readonly readAs?: string | undefined;
  readonly head?: string | undefined;
  readonly inputForm?: string | undefined;
  readonly noCache?: boolean | undefined;
}

/** Values of `programOptions` and `readingOptions`. */
export interface ProgramArguments extends ReportArguments, ReadingArguments {
  readonly only?: string | undefined;
  readonly from?: string | undefined;
  readonly spindleHolds?: string | undefined;
  readonly setup?: string | undefined;
  readonly rack?: string | undefined;
  readonly airCut?: string | undefined;
  readonly airFeed?: string | undefined;
  readonly optionalStops?: boolean | undefined;
}

/** Values of `simulationOptions`. */
export interface SimulationArguments {
  readonly simulate?: boolean | undefined;
  readonly resolution?: string | undefined;
}

/** Arguments of `post`. */
export interface PostArguments extends DialectArguments, ProgramArguments, SimulationArguments {
  readonly input: string;
  /** Further jobs. */
  readonly more: readonly string[];
  /** Every dialect, the first one included. */
  readonly dialects: readonly string[];
  readonly output?: string | undefined;
  readonly watch?: boolean | undefined;
  readonly split?: string | undefined;
}

/** Arguments of `job`. */
export interface JobArguments extends ReportArguments, ReadingArguments {
  readonly input: string;
  readonly output?: string | undefined;
}

/** Arguments of `prove`. */
export interface ProveArguments extends DialectArguments, ProgramArguments, SimulationArguments {
  readonly program: string;
  readonly against?: string | undefined;
}

/** Arguments of `compare`. */
export interface CompareArguments extends ProgramArguments {
  readonly input: string;
  readonly dialect: readonly string[];
  readonly output?: string | undefined;
}

/** Arguments of `sheet`. */
export interface SheetArguments extends DialectArguments, ProgramArguments, SimulationArguments {
  readonly input: string;
  readonly output?: string | undefined;
}

/** Arguments of `plot`. */
export interface PlotArguments extends ProgramArguments {
  readonly input: string;
  readonly dialect?: string | undefined;
  readonly output?: string | undefined;
}

/** Arguments of `why`. */
export interface WhyArguments extends DialectArguments, ProgramArguments {
  readonly input: string;
  readonly line?: string | undefined;
  readonly step?: string | undefined;
  readonly key?: string | undefined;
}

/** Arguments of the commands about one dialect. */
export interface OneDialectArguments extends ReportArguments {
  readonly name: string;
}

/** Arguments of `dialect show`. */
export interface ShowArguments extends OneDialectArguments {
  readonly diff?: string | undefined;
}

/** Arguments of `dialect build`. */
export interface BuildArguments extends OneDialectArguments {
  readonly output?: string | undefined;
  readonly traced?: boolean | undefined;
  readonly force?: boolean | undefined;
}

/** Arguments of `dialect new`. */
export interface NewArguments extends ReportArguments {
  readonly file: string;
  readonly from?: string | undefined;
  readonly answers?: string | undefined;
  readonly force?: boolean | undefined;
}

/** Arguments of `dialect test`. */
export interface TestArguments extends OneDialectArguments {
  readonly update?: boolean | undefined;
}

/** Arguments of `dialect infer`. */
export interface InferArguments extends ReportArguments {
  readonly programs: readonly string[];
  readonly output?: string | undefined;
  readonly from?: string | undefined;
}
