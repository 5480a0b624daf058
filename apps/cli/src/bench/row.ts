/** One measured goal: a ratio within one run on one machine, or a share or count of a study. */
export type BenchRow = {
  readonly work: string;
  readonly against: string;
  readonly value: number;
  readonly goal: number;
  readonly better: "lower" | "higher";
  readonly met: boolean;
};

export type BenchOptions = {
  /** Writes a line or a table of the measurement's own. */
  readonly print: (text: string) => void;
  /** Cars a row of a study, where somebody asks for more or fewer than it takes by itself. */
  readonly cars?: number | undefined;
  /** File for the study's picture. */
  readonly picture?: string | undefined;
};

/** What every measurement exports. */
export type BenchModule = { readonly rows: (options: BenchOptions) => BenchRow[] | Promise<BenchRow[]> };

/** A row whose goal is judged here, so that no measurement judges itself. */
export const benchRow = (row: Omit<BenchRow, "met">): BenchRow => ({
  ...row,
  met: row.better === "lower" ? row.value <= row.goal : row.value >= row.goal,
});
