import type { CoolantMedium, Step } from "#base";

/** What lowering hands on beside motion: steps, and what sequencing still has to put into steps. */
export type LoweredStep =
  | Step
  | { readonly kind: "operation-start"; /** Index into the job's operations. */ readonly index: number }
  | { readonly kind: "operation-end"; readonly index: number }
  | {
      readonly kind: "pause-request";
      readonly text: string;
      readonly optional: boolean;
      readonly park: boolean;
    }
  | { readonly kind: "note"; readonly text: string }
  | { readonly kind: "coolant-request"; /** Empty: off. */ readonly media: readonly CoolantMedium[] }
  | { readonly kind: "speed-request"; /** Milli-rpm. */ readonly rpm: number };
