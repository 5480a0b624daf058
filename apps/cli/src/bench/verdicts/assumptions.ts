/**
 * Everything the study assumes of people and cars. **None of it was measured on people or cars**: the figures are what is held to be
 * likely, by whoever wrote the sheet, and every row of the study hangs on them. Common practice, no source.
 */

/** How often somebody errs in what is no reading. Shares of answers, unless it says otherwise. */
export type ErrorRates = {
  /** Standard deviation of a grade about what the thing deserves, in house steps, by the place. */
  readonly gradeScatter: number;
  /** The same of what one person's grades of one item share (a mild eye for carpets). */
  readonly gradeLean: number;
  /** Says that it works or is there where it does not or is not, and the other way round. */
  readonly wrongYesNo: number;
  /** Something that works at times is found to do so; else it is said to work. */
  readonly seesIntermittent: number;
  /** Takes the neighboring option of an ordered list. */
  readonly neighborOption: number;
  /** Takes any other option of a list without order. */
  readonly otherOption: number;
  /** Leaves out one of several options that are true together. */
  readonly missesOption: number;
  /** Says "not known" of a list. */
  readonly notKnown: number;
  /** Misreads a code: see `MISREADINGS`. */
  readonly misreadsCode: number;
  /** Finds a fault of at least twice what matters of its kind; of once; and a smaller one. */
  readonly findsFault: readonly [large: number, middling: number, trifle: number];
  /** Takes a kind of fault for another of its family (a ding for a dent). */
  readonly otherKind: number;
  /** Notes a fault in a neighboring cell of the drawing. */
  readonly otherSpot: number;
  /** Notes a trifle that is not there (a shadow taken for a ding), by the place. */
  readonly seesGhost: number;
  /** Could not look. */
  readonly notSeen: number;
  /** Reads with no instrument named where eyes can read. */
  readonly byEye: number;
  /** Two figures exchanged, one dropped or one doubled in a number written down. */
  readonly typingSlip: number;
};

/** Somebody who takes the time the sheet asks for. */
export const CAREFUL: ErrorRates = {
  gradeScatter: 0.3,
  gradeLean: 0.15,
  wrongYesNo: 0.003,
  seesIntermittent: 0.7,
  neighborOption: 0.02,
  otherOption: 0.005,
  missesOption: 0.1,
  notKnown: 0.02,
  misreadsCode: 0.015,
  findsFault: [0.97, 0.85, 0.5],
  otherKind: 0.05,
  otherSpot: 0.04,
  seesGhost: 0.005,
  notSeen: 0.03,
  byEye: 0,
  typingSlip: 0.001,
};

/** Somebody in a hurry. */
export const ORDINARY: ErrorRates = {
  gradeScatter: 0.5,
  gradeLean: 0.3,
  wrongYesNo: 0.01,
  seesIntermittent: 0.4,
  neighborOption: 0.06,
  otherOption: 0.02,
  missesOption: 0.25,
  notKnown: 0.06,
  misreadsCode: 0.03,
  findsFault: [0.92, 0.65, 0.3],
  otherKind: 0.12,
  otherSpot: 0.1,
  seesGhost: 0.015,
  notSeen: 0.08,
  byEye: 0.2,
  typingSlip: 0.005,
};

/** Of codes that are misread: the look of one character, one dropped or doubled, two exchanged; the rest is another character. */
export const MISREADINGS = { lookAlike: 0.55, dropped: 0.15, exchanged: 0.15 } as const;

/** What an old car is like. */
export const CAR = {
  /** Grades of a car scatter about its own condition, and that about 0.66 of 1. */
  condition: [0.5, 0.82],
  gradeSpread: 0.12,
  /** Does not work; works at times. */
  dead: 0.03,
  intermittent: 0.01,
  /** What ought to be there is not, or the other way round. */
  wrongPresence: 0.03,
  /** A list's answer is another than its best one; the farther the rarer, by this factor a step. */
  notBest: 0.08,
  fartherStep: 0.35,
  /** A second thing is true beside what is wrong, in lists where several can be. */
  alsoTrue: 0.3,
  /** Faults of a place, on average; their extent over what matters of their kind, middle of a lognormal spread and its σ. */
  faults: 0.12,
  faultExtent: 1.2,
  faultSpread: 0.7,
  /** Not fitted, of things a car may lack. */
  notFitted: 0.06,
  /** Standard deviation of a reading about an ordinary sound car's, as a share of δ; of one place about the others. */
  readingOfItem: 1,
  readingOfPlace: 0.25,
} as const;

/** Between the two looks. */
export const BETWEEN = {
  days: [3, 24],
  miles: [0, 100],
  /** How much of the use allowed by handling alone is used up, at most. */
  handling: 0.25,
  /** Standard deviation of what drifts, as a share of the allowance from day to day. */
  drift: 0.5,
} as const;

/** Paint that reads as refinished, so that all nine spots of the sheet are measured: six mil (common practice, no source). */
export const ALL_SPOTS_OVER = { value: 152, unit: "um" } as const;

/** A gauge that is out: by so many times its stated accuracy, and how many are, where the scenario has such. */
export const GAUGE_OUT = { times: 2, share: 0.25 } as const;

/** A false statement about a thing that is bad: by how much the reading is dressed, in δ; a grade in house steps. */
export const FALSE = { reading: [2, 5], gradeSteps: 2, faultExtent: 3 } as const;

/** Of the lines that differ, those that a second look, figures or a dispute decides, and decides as things are. */
export const SECOND_LOOK_DECIDES = 0.9;
