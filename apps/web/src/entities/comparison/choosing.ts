import type { Row } from "./model";

/** Lines being chosen to lay before the dealer. */
export interface Choosing {
  /** Lines that may be laid before the dealer. */
  readonly may: (row: Row) => boolean;
  readonly chosen: ReadonlySet<number>;
  readonly onChoose: (at: number, chosen: boolean) => void;
}
