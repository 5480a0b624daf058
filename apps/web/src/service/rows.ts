interface Keyed {
  readonly key: string | number;
}

/** The rows with one of them as it is now, known by its key: `[{ key: 1 }, { key: 2 }]` with `{ key: 2, … }` in the second's place. */
export const replaced = <T extends Keyed>(rows: readonly T[], one: T): readonly T[] =>
  rows.map((other) => (other.key === one.key ? one : other));

/** The rows but for the one of that key. */
export const without = <T extends Keyed>(rows: readonly T[], key: T["key"]): readonly T[] =>
  rows.filter((other) => other.key !== key);
