import { z } from "zod";
import { CrossCheck, FirmLimits } from "./cross-check.ts";
import { Firmness } from "./finding.ts";
import { ItemId, LocalId, PositionId, Sha256 } from "./identifier.ts";
import { Direction, Outcome, Standing } from "./outcome.ts";
import { ReportKind } from "./report.ts";
import { Call, isBadCall, Severity } from "./severity.ts";
import { UnitSymbol } from "./unit.ts";

/** The part of an answer an entry is about. Every atom of every answer has exactly one entry. */
export const Atom = z.discriminatedUnion("of", [
  z.strictObject({ of: z.literal("answer") }),
  /** Indexes into `found` of either side; one of them absent where the fault has no match. */
  z.strictObject({
    of: z.literal("fault"),
    kind: LocalId,
    spot: LocalId.optional(),
    a: z.int().optional(),
    b: z.int().optional(),
  }),
  /** A kind denied by one side or both; `all` for "none at all". */
  z.strictObject({ of: z.literal("denial"), kind: LocalId, by: z.enum(["a", "b", "both"]) }),
]);
export type Atom = z.infer<typeof Atom>;

/** What told of a correction: an inspector's lean and a gauge's offset of past pairs of reports, or a check standard read on the visit. */
export const CorrectionPart = z.strictObject({
  of: z.enum(["inspector", "gauge", "check-standard"]),
  /** Base unit of the item; above 0 where it reads high. */
  effect: z.number(),
  standardError: z.number().nonnegative(),
  /** Past pairs of reports it is known from; of a check standard none. */
  pairs: z.int().positive().optional(),
});
export type CorrectionPart = z.infer<typeof CorrectionPart>;

/** What was taken off an inspector's reading (JCGM 100:2008, 3.2.3), and what that may be off by. */
export const Correction = z.strictObject({
  effect: z.number(),
  standardError: z.number().nonnegative(),
  parts: z.array(CorrectionPart).min(1),
});
export type Correction = z.infer<typeof Correction>;

/** One side of a reading, in the item's base unit. */
export const SideFigures = z.strictObject({
  /** As it was read. */
  mean: z.number(),
  /** What it was taken as, where it was corrected; the uncertainty is that of what was taken. */
  taken: z.number().optional(),
  count: z.int(),
  standardUncertainty: z.number(),
  degreesOfFreedom: z.number().nullable(),
  /** The readings scattered more than the sheet's s₀, and drew it up (moderated variance). Before 1.0.4 of the engine only where an F-test at 1 % said so. */
  scatterReplaced: z.boolean(),
  byEye: z.boolean(),
  /** Read with no instrument named: the ordinary one at twice its accuracy was taken. */
  unnamed: z.boolean().optional(),
});
export type SideFigures = z.infer<typeof SideFigures>;

/** Readings needed of one side to settle it; `null` where no number would. */
export const ReadingsToSettle = z.strictObject({ a: z.int().nullable(), b: z.int().nullable() });
export type ReadingsToSettle = z.infer<typeof ReadingsToSettle>;

/** Figures of a comparison of two readings (also two extents), base unit. `degreesOfFreedom: null` is infinite. */
export const ReadingFigures = z.strictObject({
  of: z.literal("reading"),
  unit: UnitSymbol,
  a: SideFigures,
  b: SideFigures,
  /** A − B as it was read. */
  difference: z.number(),
  /**
   * How far A − B may rightly lie beyond ±δ, and on which side: the use allowed between the visits, where it took something off.
   * Outcome, scores and probabilities are those of what is left; the picture draws it.
   */
  useAllowed: z.number().optional(),
  /** What corrections of the sides add to A − B. Outcome, scores and probabilities are those of the corrected difference. */
  correction: z.number().optional(),
  standardUncertainty: z.number(),
  degreesOfFreedom: z.number().nullable(),
  coverageFactor: z.number(),
  expandedUncertainty: z.number(),
  delta: z.number(),
  zetaScore: z.number().nullable(),
  eNumber: z.number().nullable(),
  /** Two-sided p-value of no difference. */
  pValue: z.number(),
  /** Benjamini–Hochberg over the report's readings; set by the whole analysis. */
  qValue: z.number().nullable(),
  /** P(the car is worse than stated by more than nothing), from the interval. */
  probabilityWorse: z.number(),
  /**
   * Calibrated chance that the car is worse than stated by more than δ (off by more, either way, where no side is the worse one), with
   * how far these two people really scatter. Of readings that are not settled and not bad by themselves; cost and order go by it.
   * Comparisons made before it was worked out have none.
   */
  chanceOff: z.number().min(0).max(1).optional(),
  settle: ReadingsToSettle.optional(),
});
export type ReadingFigures = z.infer<typeof ReadingFigures>;

/** Distance of the middles in house steps, and overlap over union. */
export const GradeFigures = z.strictObject({
  of: z.literal("grade"),
  a: z.tuple([z.number(), z.number()]),
  b: z.tuple([z.number(), z.number()]),
  steps: z.number(),
  overlap: z.number(),
});
export type GradeFigures = z.infer<typeof GradeFigures>;
export const ColorFigures = z.strictObject({
  of: z.literal("color"),
  deltaE: z.number(),
  expandedUncertainty: z.number(),
  delta: z.number(),
});
export type ColorFigures = z.infer<typeof ColorFigures>;
export const CodeFigures = z.strictObject({
  of: z.literal("code"),
  a: z.string(),
  b: z.string(),
  /** Which side's text passes its check digit, where the system has one and it applies. */
  passes: z.enum(["a", "b", "both", "neither"]).nullable(),
  differsAt: z.array(z.int()),
});
export type CodeFigures = z.infer<typeof CodeFigures>;
export const Figures = z.discriminatedUnion("of", [ReadingFigures, GradeFigures, ColorFigures, CodeFigures]);
export type Figures = z.infer<typeof Figures>;

export const LimitCall = z.strictObject({
  plain: z.enum(["pass", "fail"]),
  probability: z.number(),
  call: z.enum(["meets", "marginal", "fails"]),
});
export type LimitCall = z.infer<typeof LimitCall>;
export const LimitFigures = z.strictObject({
  side: z.enum(["min", "max"]),
  value: z.number(),
  unit: UnitSymbol,
  source: z.string(),
  /** Only a regulation's figure is worded "required" or "allowed". */
  practice: z.boolean(),
  /** How grave it is to be past it. */
  severity: Severity,
  a: LimitCall.nullable(),
  b: LimitCall.nullable(),
});
export type LimitFigures = z.infer<typeof LimitFigures>;

/** What stands beside an outcome. */
export const MARKS = [
  "both-bad",
  "by-figures",
  "over-limit",
  "too-coarse",
  "hedged",
  "second-hand",
  "by-eye",
  "no-yardstick",
  "only-as-declared",
  "perhaps-unit",
  "perhaps-other-side",
  "not-fitted",
  "looked-twice",
] as const;
export const Mark = z.enum(MARKS);
export type Mark = z.infer<typeof Mark>;

export const Entry = z.strictObject({
  item: ItemId,
  position: PositionId,
  atom: Atom,
  outcome: Outcome,
  /** Each answer called by itself; `null` where a side gave none. */
  calls: z.strictObject({ a: Call.nullable(), b: Call.nullable() }),
  /** The worst of what was found, or of what the claim covers where it was not seen; `null` where nothing is wrong or unknown. */
  severity: Severity.nullable(),
  marks: z.array(Mark),
  /** Stable code of why; the sentence is made from it and the figures. */
  reason: LocalId,
  direction: Direction,
  standing: Standing,
  firmness: z.strictObject({ a: Firmness.nullable(), b: Firmness.nullable() }),
  /** Indexes of the findings in each report; `null` where a side is silent. */
  finding: z.strictObject({ a: z.int().nullable(), b: z.int().nullable() }),
  figures: Figures.optional(),
  limits: z.array(LimitFigures).optional(),
  /** Seen, sound and not stated: counts in coverage, is not listed among the outcomes. */
  coverageOnly: z.boolean().optional(),
  /** What was taken off a side's reading; absent where both stand as read. */
  corrections: z.strictObject({ a: Correction.optional(), b: Correction.optional() }).optional(),
});
export type Entry = z.infer<typeof Entry>;

/**
 * Found where nothing was stated, and nothing says whether it is good: nobody knows more of it than of what was not seen.
 *
 * @example isUnjudged({ outcome: "unstated", marks: ["no-yardstick"] }) // true
 */
export const isUnjudged = ({ marks, outcome }: Pick<Entry, "marks" | "outcome">): boolean =>
  outcome === "unstated" && marks.includes("no-yardstick");

/**
 * The statement owned up to a fault, and made it out worse than the inspection found it, by more than what matters: to the credit of
 * whoever stated it. Never what is in doubt, and never a fault that was not found at all: it may have been missed.
 *
 * @example isStatedWorse({ ...entry, calls: { a: "repair", b: "good" }, outcome: "differ", direction: "found-better" }) // true
 */
export const isStatedWorse = (
  entry: Pick<Entry, "calls" | "outcome" | "direction" | "reason" | "figures">,
): boolean => {
  const { calls, outcome, direction, reason, figures } = entry;
  if (!isBadCall(calls.a)) return false;
  if (reason !== "disclosed-at-least") return outcome === "differ" && direction === "found-better";
  return figures?.of === "reading" && figures.difference - figures.expandedUncertainty > figures.delta;
};

const Count = z.int().nonnegative();
export const CoverageRow = z.strictObject({
  /** Section id, or severity. */
  of: z.string(),
  onSheet: Count,
  stated: Count,
  seen: Count,
  statedAndSeen: Count,
  seenSoundNotStated: Count,
});
export type CoverageRow = z.infer<typeof CoverageRow>;
export const Interval = z.strictObject({ estimate: z.number(), low: z.number(), high: z.number() });
export type Interval = z.infer<typeof Interval>;
export const Statistic = z.discriminatedUnion("state", [
  z.strictObject({
    state: z.literal("known"),
    n: z.int(),
    estimate: z.number(),
    standardError: z.number().nullable(),
    low: z.number(),
    high: z.number(),
  }),
  z.strictObject({ state: z.literal("too-few"), n: z.int(), needed: z.int() }),
]);
export type Statistic = z.infer<typeof Statistic>;

/** Agreement on graded items answered blind; `n` and the `n` of what is shown count items, each a cluster of its places. */
export const Agreement = z.strictObject({
  n: z.int(),
  observed: Statistic,
  kappaLinear: Statistic,
  kappaQuadratic: Statistic,
  gwetAC2: Statistic,
  krippendorffAlpha: Statistic,
});
export type Agreement = z.infer<typeof Agreement>;
export const Bias = z.strictObject({
  /** Mean signed house steps (A − B), one mean an item; positive: stated better. */
  meanStep: Statistic,
  /** Exact sign test over graded items whose mean differs, two-sided. */
  signTestP: z.number().nullable(),
  /** Hodges–Lehmann shift of readings as a share of δ, toward the statement's advantage. */
  shift: Statistic,
});
export type Bias = z.infer<typeof Bias>;
export const Chance = z.strictObject({
  readings: z.int(),
  doubtful: z.int(),
  /** Doubtful readings that chance alone would be expected to give if nothing were wrong. */
  expectedDoubtful: z.number(),
});
export type Chance = z.infer<typeof Chance>;
/** How far the two people really scatter, read off what was found better than stated. */
export const Scatter = z.strictObject({
  /** Readings that tell of it. */
  readings: Count,
  /** How plausible it is that both scattered no more than they declared; `null` where too few readings tell. */
  asDeclared: z.number().min(0).max(1).nullable(),
  /** Readings that agree or differ only if they did; each carries the mark. */
  onlyAsDeclared: Count,
});
export type Scatter = z.infer<typeof Scatter>;
/** Ways to say less than it seems, on either side. */
export const SOFT_KINDS = [
  // Decisive places of which the side says nothing it knows.
  "unmentioned",
  "not-seen",
  "not-known",
  // Decisive places of which it speaks without vouching.
  "hedged",
  "second-hand",
  // Readings.
  "by-eye",
  "unnamed",
  "coarse",
  "scattered",
  // Faults, and grades.
  "vague",
  "wide-scale",
  "praised",
] as const;
export const SoftKind = z.enum(SOFT_KINDS);
export type SoftKind = z.infer<typeof SoftKind>;
/** How soft one side is, by the yardsticks that judge the other too. */
export const SideSoftness = z.strictObject({
  /** Decisive places of which it says something it knows. */
  answered: Count,
  /** Places it read, graded, or lists faults of. */
  readings: Count,
  grades: Count,
  faults: Count,
  /** The first entry of each such place, by its index among the entries. */
  soft: z.partialRecord(SoftKind, z.array(Count)),
});
export type SideSoftness = z.infer<typeof SideSoftness>;

/** Whether the repeats of one report scatter, all together, as the sheet says such readings do. */
export const RepeatsOfSide = z.strictObject({
  found: z.enum(["too-few", "as-declared", "scatters-more", "too-alike"]),
  /** Places with repeats of one spot that tell. */
  places: Count,
  degreesOfFreedom: Count,
  /** Mean variance over that which the sheet says; absent where they are too few. */
  ratio: z.number().optional(),
  /** Of as little, or as much, where all is as declared; absent where it is. */
  chance: z.number().optional(),
});
export type RepeatsOfSide = z.infer<typeof RepeatsOfSide>;

/** Readings that are the same to the last digit on both sides, against what chance makes so. */
export const LikeReadings = z.strictObject({
  compared: Count,
  same: Count,
  /** At most so many by chance. */
  expected: z.number(),
  /** Of so many or more by chance. */
  chance: z.number(),
  moreThanChance: z.boolean(),
  /** Which side was written later. */
  later: z.enum(["a", "b"]).nullable(),
  /** Of the same ones, those that the later side answered blind: no copies of the earlier. */
  blind: Count,
});
export type LikeReadings = z.infer<typeof LikeReadings>;

/** Decisive places (whatever can be halt, danger or worth) stated hedged, by eye, or left silent. */
export const Softness = z.strictObject({
  decisive: Count,
  hedged: Count,
  byEye: Count,
  silent: Count,
  /** Both sides; comparisons made before they were counted have none. */
  sides: z.strictObject({ a: SideSoftness, b: SideSoftness }).optional(),
  /** Entries that part by more than chance and are put down to the days between the visits. */
  betweenDays: z.array(Count).optional(),
});
export type Softness = z.infer<typeof Softness>;

export const ComparedReport = z.strictObject({
  kind: ReportKind,
  organization: z.string(),
  seal: Sha256.nullable(),
  started: z.string(),
});
export type ComparedReport = z.infer<typeof ComparedReport>;

/** What is stored and passed on: the whole analysis of two reports, with the versions of everything it read. */
export const Comparison = z.strictObject({
  format: z.literal("evenhand-comparison"),
  version: z.literal(1),
  engine: z.string(),
  sheet: z.strictObject({ id: LocalId, version: z.int() }),
  vehicle: z.strictObject({
    make: z.string(),
    model: z.string(),
    modelYear: z.int(),
    identification: z.string(),
  }),
  a: ComparedReport,
  b: ComparedReport,
  /** In sheet order. */
  entries: z.array(Entry),
  /** Indexes of the discrepancies (doubtful, differ, unstated, what a rule contradicts) and of what both say is bad, most pressing first. */
  order: z.array(z.int()),
  crossChecks: z.array(CrossCheck),
  /** Whose own figures the handbook's rules were given, and where the figures of the make come from. */
  handbook: z
    .strictObject({ side: z.enum(["a", "b"]), limits: FirmLimits, makerSource: z.string().nullable() })
    .optional(),
  /** Hashes of the tables of past pairs that corrected a side's readings: with the reports, what this is a function of. */
  history: z.strictObject({ a: Sha256.optional(), b: Sha256.optional() }).optional(),
  tally: z.record(Outcome, Count),
  standings: z.record(Standing, Count),
  coverage: z.strictObject({
    bySection: z.array(CoverageRow),
    /** By how grave it can be that a place is not as claimed. */
    bySeverity: z.array(CoverageRow),
    whole: CoverageRow,
  }),
  softness: Softness,
  agreement: Agreement,
  bias: Bias,
  chance: Chance,
  /** Comparisons made before it was read have none. */
  scatter: Scatter.optional(),
  /** Likewise. */
  repeats: z.strictObject({ a: RepeatsOfSide, b: RepeatsOfSide }).optional(),
  /** Absent too where one house wrote both, or no reading tells. */
  likeReadings: LikeReadings.optional(),
});
export type Comparison = z.infer<typeof Comparison>;
