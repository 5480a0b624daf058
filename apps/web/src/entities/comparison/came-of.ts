import type { Entry } from "@evenhand/shared/comparison";

/** The string that says what came of a line: its outcome, or that figures decide it. */
export const cameOf = ({ outcome, standing }: Pick<Entry, "outcome" | "standing">) =>
  standing === "contradicted-by-figures" ? "entry.contradicted" : (`outcome.${outcome}` as const);
