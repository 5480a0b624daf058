import { z } from "zod";
import { ItemAnswerKind } from "./answer.ts";
import { ItemId, LocalId, PositionId } from "./identifier.ts";
import { UnitSymbol } from "./unit.ts";

/** Words for a thing: what the interface shows, what the British say, and what else people call it (for search and reading). */
export const Words = z.strictObject({
  american: z.string().min(1),
  british: z.string().min(1).optional(),
  synonyms: z.array(z.string().min(1)).default([]),
});
export type Words = z.infer<typeof Words>;

export const Consequence = z.enum(["safety", "identity", "structure", "mechanical", "appearance", "papers"]);
export type Consequence = z.infer<typeof Consequence>;

export const TimeBehavior = z.enum(["steady", "drifts", "only-rises"]);
export type TimeBehavior = z.infer<typeof TimeBehavior>;

export const Need = z.enum([
  "lift",
  "daylight",
  "road",
  "cold-engine",
  "hot-engine",
  "dismantling",
  "permission",
]);
export type Need = z.infer<typeof Need>;

/** Where a figure comes from. `common-practice` figures are defaults a firm may change. */
export const Source = z.strictObject({
  kind: z.enum(["regulation", "standard", "handbook", "common-practice", "maker"]),
  text: z.string().min(1),
});
export type Source = z.infer<typeof Source>;

export const Limit = z.strictObject({
  side: z.enum(["min", "max"]),
  /** In the item's base unit. */
  value: z.number(),
  source: Source,
});
export type Limit = z.infer<typeof Limit>;

/** All figures in the item's base unit. Shares are of the reading's size. */
export const ReadingSpec = z.strictObject({
  unit: UnitSymbol,
  /** Units offered on the sheet beside the base unit. */
  alsoIn: z.array(UnitSymbol).default([]),
  /** The difference that matters δ: the greater of the absolute and the share. */
  delta: z.strictObject({ absolute: z.number().nonnegative(), share: z.number().min(0).max(1).default(0) }),
  /** s₀ and its degrees of freedom; `over` says whether it is the scatter of repeats on one spot or the spread between spots. `share`: part of the reading's size, added in quadrature. */
  repeatability: z.strictObject({
    value: z.number().nonnegative(),
    share: z.number().min(0).max(1).default(0),
    degreesOfFreedom: z.number().min(30),
    over: z.enum(["repeats", "spots"]),
  }),
  /** p: standard uncertainty of placing the instrument, over the spots touched. */
  placement: z.number().nonnegative(),
  betterIs: z.enum(["higher", "lower", "target"]),
  /** Where better-is is `target` and one is known for every car. */
  target: z.number().optional(),
  plausible: z.tuple([z.number(), z.number()]),
  ask: z.strictObject({ readings: z.int().positive(), spots: z.int().positive() }),
  /** ±(absolute + share × reading) when no instrument is named. */
  byEye: z.strictObject({ absolute: z.number().nonnegative(), share: z.number().min(0).max(1).default(0) }),
  instrument: z.strictObject({
    name: z.string().min(1),
    resolution: z.number().nonnegative(),
    accuracy: z.strictObject({
      absolute: z.number().nonnegative(),
      share: z.number().min(0).max(1).default(0),
    }),
  }),
  limits: z.array(Limit).default([]),
  /** Why U may exceed 0.6 δ with the ordinary instrument, where it does. */
  notConfirmableBecause: z.string().min(1).optional(),
  /** A value an ordinary sound car gives: what is confirmable, and the bench, are computed at it. */
  typical: z.number().optional(),
  /** Named spots at each position, in the order they are taken; empty where any spot name will do. */
  spots: z.array(z.strictObject({ id: LocalId, words: Words })).default([]),
  /** How far an `only-rises` reading may rightly move between two visits with no more than ordinary handling, base unit. */
  riseAllowed: z.number().nonnegative().optional(),
});
export type ReadingSpec = z.infer<typeof ReadingSpec>;

export const ColorSpec = z.strictObject({
  /** δ as ΔE00. */
  delta: z.number().positive(),
  repeatability: z.number().nonnegative(),
  source: Source,
});

export const Option = z.strictObject({
  id: LocalId,
  words: Words,
  /** Answering this is finding the item bad. */
  bad: z.boolean().default(false),
});
/** Options from the most claimed to the least where `ordered`. `not-known` always stands last and is never bad. */
export const ChoiceSpec = z.strictObject({ options: z.array(Option).min(2), ordered: z.boolean() });

export const FaultKind = z.strictObject({
  id: LocalId,
  words: Words,
  unit: UnitSymbol,
  /** Difference of extent that matters, and the accuracy of an extent judged by eye ±(absolute + share). */
  delta: z.strictObject({ absolute: z.number().positive(), share: z.number().min(0).max(1).default(0) }),
  byEye: z.strictObject({ absolute: z.number().nonnegative(), share: z.number().min(0).max(1).default(0) }),
});
export type FaultKind = z.infer<typeof FaultKind>;
/** `drawing` names a grid of cells in the sheet on which spots lie. */
export const FaultsSpec = z.strictObject({ kinds: z.array(LocalId).min(1), drawing: LocalId.optional() });

export const CodeSystem = z.enum([
  "vin",
  "chassis-number",
  "tire-identification",
  "tire-size",
  "casting-number",
  "date-code",
  "paint-code",
  "text",
]);
export type CodeSystem = z.infer<typeof CodeSystem>;

/** Item applies only to cars whose form has one of the values: `{ "body": ["convertible", "roadster"] }`. */
export const AppliesWhen = z.partialRecord(
  z.enum(["body", "construction", "gearbox", "driven", "fuelSystem", "brakesFront", "brakesRear", "doors"]),
  z.array(z.union([z.string(), z.number()])).min(1),
);

export const Item = z
  .strictObject({
    id: ItemId,
    section: LocalId,
    words: Words,
    /** One sentence: how it is looked at or measured. */
    how: z.string().min(1),
    answer: ItemAnswerKind,
    positions: LocalId.optional(),
    consequence: Consequence,
    strict: z.boolean(),
    time: TimeBehavior,
    core: z.boolean(),
    minutes: z.number().positive(),
    needs: z.array(Need),
    /** Conditions a finding must note. */
    conditions: z.array(LocalId).default([]),
    cautions: z.array(LocalId).default([]),
    /** Row of the cost table; `null` where nothing is put right (papers, identity). */
    costRow: LocalId.nullable(),
    appliesWhen: AppliesWhen.optional(),
    reading: ReadingSpec.optional(),
    color: ColorSpec.optional(),
    /** For grades: the house grade below which (in house steps from the best) the item counts as bad. */
    grade: z.strictObject({ badFrom: LocalId }).optional(),
    working: z.strictObject({}).optional(),
    presence: z.strictObject({ goodIs: z.enum(["present", "absent", "neither"]) }).optional(),
    choice: ChoiceSpec.optional(),
    code: z.strictObject({ system: CodeSystem }).optional(),
    faults: FaultsSpec.optional(),
  })
  .refine(
    (item) => item[item.answer] !== undefined,
    "an item carries the particulars of its own answer kind",
  );
export type Item = z.infer<typeof Item>;
export type ItemInput = z.input<typeof Item>;

/** `station`: where its items stand on the plan drawing when their position says nothing else. */
export const Section = z.strictObject({
  id: LocalId,
  number: z.int().nonnegative(),
  words: Words,
  station: LocalId.optional(),
});
export type Section = z.infer<typeof Section>;

/** A list of positions; `count` makes numbered ones from the car (`cylinder-1` … `cylinder-n`). */
export const PositionSet = z.strictObject({
  id: LocalId,
  words: Words,
  positions: z.array(
    z.strictObject({
      id: PositionId,
      words: Words,
      station: LocalId.optional(),
      appliesWhen: AppliesWhen.optional(),
    }),
  ),
  numbered: z
    .strictObject({ prefix: LocalId, words: z.string(), countFrom: z.enum(["cylinders"]) })
    .optional(),
});
export type PositionSet = z.infer<typeof PositionSet>;

/** Cells of a drawing on a grid, so that the distance between two spots is a number. */
export const Drawing = z.strictObject({
  id: LocalId,
  words: Words,
  cells: z.array(z.strictObject({ id: LocalId, words: Words, x: z.number(), y: z.number() })).min(1),
});
export type Drawing = z.infer<typeof Drawing>;

/** A numbered place on the plan drawing of a car, in the order one walks round it; a second sheet for underneath. */
export const Station = z.strictObject({
  id: LocalId,
  plan: z.enum(["outside", "underneath"]),
  number: z.int().positive(),
  words: Words,
});
export type Station = z.infer<typeof Station>;

/** A circumstance a finding notes, and what is asked for: a yes or no, a number in `unit`, or words. */
export const ConditionKind = z.strictObject({
  id: LocalId,
  words: Words,
  ask: z.enum(["yes-no", "number", "text"]),
  unit: UnitSymbol.optional(),
});
export type ConditionKind = z.infer<typeof ConditionKind>;

/** A row of work that cost tables price; the sheet only names it. */
export const CostRowName = z.strictObject({ id: LocalId, section: LocalId, words: Words });
export type CostRowName = z.infer<typeof CostRowName>;

export const Caution = z.strictObject({ id: LocalId, text: z.string().min(1) });
export type Caution = z.infer<typeof Caution>;

/** The house scale from worst to best; `spent` … `as-new`. */
export const HouseGrade = z.enum(["spent", "heavy-wear", "even-wear", "light-wear", "as-new"]);
export type HouseGrade = z.infer<typeof HouseGrade>;

/** The inspection sheet: data with a version. Items in walking order. */
export const Sheet = z.strictObject({
  id: LocalId,
  version: z.int().positive(),
  title: z.string().min(1),
  sections: z.array(Section).min(1),
  positionSets: z.array(PositionSet),
  drawings: z.array(Drawing),
  faultKinds: z.array(FaultKind),
  cautions: z.array(Caution),
  stations: z.array(Station).default([]),
  conditions: z.array(ConditionKind).default([]),
  costRows: z.array(CostRowName).default([]),
  items: z.array(Item).min(1),
});
export type Sheet = z.infer<typeof Sheet>;
