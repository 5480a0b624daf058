import type { Entry, ReadingFigures } from "@evenhand/shared/comparison";

/** An entry by hand: an item both sides answered alike. */
export const entry = (more: Partial<Entry> = {}): Entry => ({
  item: "electrics.horn",
  position: "",
  atom: { of: "answer" },
  outcome: "agree",
  calls: { a: "good", b: "good" },
  severity: null,
  marks: [],
  reason: "same-answer",
  direction: "neither",
  standing: "confirmed",
  firmness: { a: "asserted", b: "asserted" },
  finding: { a: 0, b: 0 },
  ...more,
});

const side = (mean: number) => ({
  mean,
  count: 1,
  standardUncertainty: 0.5,
  degreesOfFreedom: null,
  scatterReplaced: false,
  byEye: false,
});

/** Figures of a reading by hand: u = 1, U = 1.96, δ = 2. */
export const readingFigures = (difference: number, more: Partial<ReadingFigures> = {}): ReadingFigures => ({
  of: "reading",
  unit: "psi",
  a: side(difference),
  b: side(0),
  difference,
  standardUncertainty: 1,
  degreesOfFreedom: null,
  coverageFactor: 1.959964,
  expandedUncertainty: 1.959964,
  delta: 2,
  zetaScore: difference,
  eNumber: difference / 1.959964,
  pValue: 0.5,
  qValue: null,
  probabilityWorse: 0.5,
  ...more,
});
