export interface SenseCase {
  /** Lines behind `dialect: own` and `extends: ...`; findings stand on line 3 unless it says otherwise. */
  readonly text: string;
  readonly extends?: string;
  /** "rule key", or "rule key @ line". */
  readonly finds: readonly string[];
}
