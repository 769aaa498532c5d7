/** What a program says to people. */
export interface Comment {
  /** Byte offset of its line. */
  readonly offset: number;
  readonly text: string;
}
