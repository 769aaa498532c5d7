/** A dialect file as it was found. */
export interface DialectFile {
  /** Its name as the user knows it; findings and origins quote it. */
  readonly file: string;
  readonly bytes: Uint8Array;
}

/** File access, handed in, so that this stage also runs in a browser. */
export interface DialectLoader {
  /** Names of the shipped dialects. */
  readonly shipped: readonly string[];
  /** A shipped dialect by its name; undefined: there is none. */
  readShipped(name: string): DialectFile | undefined;
  /** A file by its path, with `/` between folders behind the path that the user gave; undefined: cannot be read. */
  readFile(path: string): DialectFile | undefined;
}
