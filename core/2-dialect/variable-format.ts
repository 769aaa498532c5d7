/** What a controller works out while it reads a program. */
export interface VariableFormat {
  readonly parameters: "none" | "numbered" | "named";
  readonly control: "none" | "calls" | "o-words";
  /** Most calls under way at once. */
  readonly nesting: number;
}
