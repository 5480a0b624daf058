import { z } from "zod";
import { ItemId, LocalId, PositionId } from "./identifier.ts";
import { Severity } from "./severity.ts";

/** `cannot-tell` is an answer of its own: too little was read, or the uncertainty covers the boundary. */
export const Verdict = z.enum(["holds", "breaks", "cannot-tell"]);
export type Verdict = z.infer<typeof Verdict>;

/** A number a rule read or worked out. `unit` is `1` for plain ratios and counts. */
export const Figure = z.strictObject({
  value: z.number(),
  unit: z.string(),
  standardUncertainty: z.number().nonnegative().optional(),
});
export type Figure = z.infer<typeof Figure>;

/** Both ends are possible; nothing is said of what lies between. */
export const FigureRange = z.strictObject({ low: z.number(), high: z.number(), unit: z.string() });
export type FigureRange = z.infer<typeof FigureRange>;

/** Where the figure of a limit came from in this check; a firm may set only common-practice ones. */
export const LimitOrigin = z.enum(["regulation", "standard", "handbook", "common-practice", "maker", "firm"]);
export type LimitOrigin = z.infer<typeof LimitOrigin>;

export const LimitUse = z.strictObject({
  id: z.string(),
  value: z.number(),
  unit: z.string(),
  origin: LimitOrigin,
});
export type LimitUse = z.infer<typeof LimitUse>;

/** What a rule of the handbook answers: a stable reason and the figures; the sentence is made from them. */
export const RuleResult = z.strictObject({
  rule: LocalId,
  verdict: Verdict,
  reason: LocalId,
  /**
   * How grave what was found is where the rule breaks. On `cannot-tell`: how grave it would be as one of the alternatives, which
   * is why it is always printed. `null` where nothing is wrong.
   */
  severity: Severity.nullable(),
  figures: z.record(z.string(), Figure),
  ranges: z.record(z.string(), FigureRange).optional(),
  /** Codes, names and dates the sentence speaks of. */
  words: z.record(z.string(), z.string()).optional(),
  /** Everything a code can mean that no other fact has removed. */
  alternatives: z.array(z.string()).optional(),
  limits: z.array(LimitUse).optional(),
});
export type RuleResult = z.infer<typeof RuleResult>;

/** A finding a check read, by its place. */
export const EntryReference = z.strictObject({
  side: z.enum(["a", "b"]),
  item: ItemId,
  position: PositionId,
});
export type EntryReference = z.infer<typeof EntryReference>;

/** `contradicts`: a break makes the claim contradicted by figures. `hint` and `reminder` only ask for a look. */
export const RuleStrength = z.enum(["contradicts", "hint", "reminder"]);
export type RuleStrength = z.infer<typeof RuleStrength>;

/** A rule run over the findings of one report or of two. */
export const CrossCheck = RuleResult.extend({
  over: z.enum(["one-report", "both-reports"]),
  strength: RuleStrength,
  reads: z.array(EntryReference),
  /** The finding whose claim the rule tests; `null` where nobody claimed anything (a limit, a reminder). */
  claim: EntryReference.nullable(),
  /** Findings that the break makes bad, with the severity; empty unless the rule breaks. */
  bad: z.array(EntryReference),
  /** Claims whose fate these figures decide: they fall where the rule breaks. Empty for hints, reminders and `cannot-tell`. */
  decides: z.array(EntryReference),
  /** Where another broken rule speaks for the same fact: its place in the list. This one stands under it. */
  under: z.int().nonnegative().optional(),
});
export type CrossCheck = z.infer<typeof CrossCheck>;

const atMost =
  (most: number) =>
  (record: object): boolean =>
    Object.keys(record).length <= most;

/** A firm's own figures for limits it may set, by limit id. */
export const FirmLimits = z.record(z.string().max(100), z.number()).refine(atMost(500), "at most 500 limits");
export type FirmLimits = z.infer<typeof FirmLimits>;

/** How a maker dated a part, and the years in which it can have been made. See the handbook's `date-code`. */
export const MakerDateForm = z.strictObject({
  form: z.string().min(1).max(40),
  from: z.int().min(1886).max(2100),
  to: z.int().min(1886).max(2100),
});
export type MakerDateForm = z.infer<typeof MakerDateForm>;

/** What a firm entered for a make and model, each with its source kept beside it: it goes before common practice. */
export const MakerData = z.strictObject({
  /** Form of chassis numbers from before 1981 or from other markets. */
  chassisPattern: z.string().max(80).optional(),
  /** How the stamp on engine or gearbox follows from the chassis number. */
  stampFrom: z.partialRecord(z.enum(["engine", "gearbox"]), z.string().max(80)).optional(),
  /** Units the maker never stamped. */
  neverStamped: z
    .array(z.enum(["engine", "gearbox"]))
    .max(2)
    .optional(),
  /** By part (`block`, `axle`), or `build` for the body tag. */
  dateForms: z.record(LocalId, MakerDateForm).refine(atMost(50), "at most 50 parts").optional(),
  /** Parts made in small numbers. */
  lowVolumeParts: z.array(LocalId).max(50).optional(),
  axleRatios: z.array(z.number().positive()).max(40).optional(),
  compressionLowestShare: z.number().positive().max(1).optional(),
  /** psi */
  compressionLeast: z.number().positive().optional(),
  /** Cylinders beside each other under one head. */
  cylinderNeighbors: z
    .array(z.tuple([z.int(), z.int()]))
    .max(40)
    .optional(),
  /** psi, hot. */
  oilPressureIdle: z.number().positive().optional(),
  oilPressure2000: z.number().positive().optional(),
  /** mm */
  toeFront: z.number().optional(),
  toeRear: z.number().optional(),
  /** Degrees before top dead center at idle. */
  timing: z.number().optional(),
  cam: z.enum(["stock", "other", "unknown"]).optional(),
});
export type MakerData = z.infer<typeof MakerData>;

const given = (data: MakerData): boolean => Object.values(data).some((value) => value !== undefined);

/** Figures of one make, or of a model or some years of it, and where the firm has them from. */
export const MakerEntry = z.strictObject({
  make: z.string().trim().min(1).max(100),
  model: z.string().trim().min(1).max(100).optional(),
  fromYear: z.int().min(1886).max(2100).optional(),
  toYear: z.int().min(1886).max(2100).optional(),
  source: z.string().trim().min(1).max(400),
  data: MakerData.refine(given, { error: "at least one figure" }),
});
export type MakerEntry = z.infer<typeof MakerEntry>;

/** A firm's own handbook: figures in place of common practice, and what it knows of makes. */
export const FirmHandbook = z.strictObject({
  limits: FirmLimits,
  makers: z.array(MakerEntry).max(500),
});
export type FirmHandbook = z.infer<typeof FirmHandbook>;

/** What of it speaks of one car: part of the report, and sealed with it. */
export const ReportHandbook = z.strictObject({
  limits: FirmLimits,
  maker: z.strictObject({ source: z.string().min(1).max(400), data: MakerData }).optional(),
});
export type ReportHandbook = z.infer<typeof ReportHandbook>;
