import { z } from "zod";
import { ItemAnswerKind, NotSeenReason } from "./answer.ts";
import { ItemId, LocalId, PositionId } from "./identifier.ts";
import { Call, Severity } from "./severity.ts";
import { UnitSymbol } from "./unit.ts";
import { DEPTHS, HOUSE_GRADES, NEEDS, STAGES } from "./terms.ts";

export { DEPTHS, STAGES };

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

export const Need = z.enum(NEEDS);
export type Need = z.infer<typeof Need>;

/** Where a figure comes from. `common-practice` figures are defaults a firm may change. */
export const Source = z.strictObject({
  kind: z.enum(["regulation", "standard", "handbook", "common-practice", "maker"]),
  text: z.string().min(1),
});
export type Source = z.infer<typeof Source>;

/** A circumstance that must have been noted so: a yes or no, or a number within bounds. */
export const ConditionNeeded = z.strictObject({
  condition: LocalId,
  is: z.boolean().optional(),
  atLeast: z.number().optional(),
  atMost: z.number().optional(),
});
export type ConditionNeeded = z.infer<typeof ConditionNeeded>;

/**
 * A figure a reading is judged by: a limit (regulation, standard, maker) or an alarm figure of practice. Equality passes.
 * Past it the answer is bad with `severity`.
 */
export const Limit = z.strictObject({
  side: z.enum(["min", "max"]),
  /** In the item's base unit. */
  value: z.number(),
  source: Source,
  severity: Severity,
  /** At these positions it is less or more grave (a spare without tread). */
  at: z.partialRecord(PositionId, Severity).optional(),
  /** Conditions under which the figure holds; where they were not noted so, it judges nothing. */
  when: z.array(ConditionNeeded).optional(),
  /**
   * The figure hangs on the reading of another item (free play on the rim's diameter): the first row whose `upTo` is not
   * below that reading gives the value. Without that reading `value` holds.
   */
  byReading: z
    .strictObject({
      item: ItemId,
      unit: UnitSymbol,
      rows: z.array(z.strictObject({ upTo: z.number(), value: z.number() })).min(1),
    })
    .optional(),
  /** The figure is the reading of another item at the same place (the figure cast in a drum); without it nothing is judged. */
  isReadingOf: z.strictObject({ item: ItemId, unit: UnitSymbol }).optional(),
  /** The figure hangs on the option chosen at another item, or on the system's voltage of the car's form. */
  byOption: z
    .strictObject({
      item: ItemId,
      rows: z.array(z.strictObject({ option: LocalId, value: z.number() })).min(1),
    })
    .optional(),
  /** Judges nothing where the car has none of this item: a pedal's reserve is for hydraulic brakes. */
  needsFitted: ItemId.optional(),
  /** The figure for cars of this system voltage alone. */
  systemVolts: z.union([z.literal(6), z.literal(12)]).optional(),
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
  /** Eyes read it (gaps, tread, wear); without a named instrument the accuracy is `byEye`, else twice the ordinary instrument's. */
  eyesRead: z.boolean().optional(),
  /** ±(absolute + share × reading) of an eye that is used to it. */
  byEye: z.strictObject({ absolute: z.number().nonnegative(), share: z.number().min(0).max(1).default(0) }),
  instrument: z.strictObject({
    name: z.string().min(1),
    resolution: z.number().nonnegative(),
    accuracy: z.strictObject({
      absolute: z.number().nonnegative(),
      share: z.number().min(0).max(1).default(0),
    }),
    /** It is part of the car, of its papers, or a count, so that nobody names it: an odometer, a tag, the teeth of a wheel. */
    readOff: z.boolean().optional(),
  }),
  /** What a regulation, a standard or a maker asks. */
  limits: z.array(Limit).default([]),
  /** Figures of practice past which the answer is bad; a firm may change them. */
  alarms: z.array(Limit).default([]),
  /**
   * Where between sound and alarmed lies what nobody can judge by the figure alone (a panel of 300 µm, a compression of 95 psi):
   * only within these is the reading called good. Where absent, all that no figure makes bad is good.
   */
  sound: z
    .strictObject({
      atLeast: z.number().optional(),
      atMost: z.number().optional(),
      when: z.array(ConditionNeeded).optional(),
    })
    .optional(),
  /**
   * How far the same reading on the other side of the car may lie away: good up to `sound`, bad past `alarm` with `severity`, and
   * between the two nobody can judge. Judges only where both sides were read.
   */
  mirror: z
    .strictObject({ sound: z.number().nonnegative(), alarm: z.number().nonnegative(), severity: Severity })
    .optional(),
  /** How a condition moves the reading: by this much of the base unit for each unit of the condition (inHg by feet of height). */
  movedBy: z.array(z.strictObject({ condition: LocalId, perUnit: z.number() })).optional(),
  /** Why no alarm figure can be given, where there is neither a limit nor an alarm: the reading is shown, never called sound. */
  noAlarmBecause: z.string().min(1).optional(),
  /** How far a reading that drifts may rightly move from one day to another, base unit; part of the reading's size in `dayToDayShare`. */
  dayToDay: z.number().nonnegative().optional(),
  dayToDayShare: z.number().min(0).max(1).optional(),
  /** Why U may exceed 0.6 δ with the ordinary instrument, where it does. */
  notConfirmableBecause: z.string().min(1).optional(),
  /** A value an ordinary sound car gives: what is confirmable, and the bench, are computed at it. */
  typical: z.number().optional(),
  /** Named spots at each position, in the order they are taken; empty where any spot name will do. */
  spots: z.array(z.strictObject({ id: LocalId, words: Words })).default([]),
  /** How far an `only-rises` reading may rightly move between two visits with no more than ordinary handling, base unit. */
  riseAllowed: z.number().nonnegative().optional(),
  /** What a thousand miles between the visits add to it, base unit; only where both reports read the odometer. */
  risePerThousandMiles: z.number().nonnegative().optional(),
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
  /** What answering this says of the thing by itself. */
  call: Call,
  /** At these positions it is another (over ten years: a trifle on a spare). */
  at: z.partialRecord(PositionId, Call).optional(),
});
export type Option = z.infer<typeof Option>;
/** Options from the most claimed to the least where `ordered`. `not-known` always stands last and has no yardstick. */
export const ChoiceSpec = z.strictObject({
  options: z.array(Option).min(2),
  ordered: z.boolean(),
  /**
   * What neighbors are, where ordered. Left out: doubtful, and good is no neighbor of what no yardstick judges. `differ`: what is counted
   * or read off, where two careful people do not part.
   */
  neighbors: z.enum(["doubtful", "consistent", "differ"]).optional(),
  /** Options on the good side claim more than an inspector can see: the weaker does not contradict the stronger. */
  weakerIsNotOtherwise: z.boolean().optional(),
  /** Options that are seen by looking, and the stronger claims they therefore contradict all the same. */
  refutes: z.record(LocalId, z.array(LocalId)).optional(),
  /** Several options can be true at once (noises, smoke, smells). */
  several: z.boolean().optional(),
  /** Where several can be true: options that are degrees of one thing all the same (a slight pull, a pull to the left). */
  degrees: z.array(z.array(LocalId).min(2)).optional(),
  /** Options without a yardstick are as bad as this item is found at the same place (where the air of a bad cylinder goes). */
  followsCallOf: ItemId.optional(),
  /** Options that move from day to day (a level), where others of the item do not (milky oil). */
  drifting: z.array(LocalId).optional(),
});

export type ChoiceSpec = z.infer<typeof ChoiceSpec>;

export const FaultKind = z.strictObject({
  id: LocalId,
  words: Words,
  unit: UnitSymbol,
  /** Difference of extent that matters, and the accuracy of an extent judged by eye ±(absolute + share). */
  delta: z.strictObject({ absolute: z.number().positive(), share: z.number().min(0).max(1).default(0) }),
  byEye: z.strictObject({ absolute: z.number().nonnegative(), share: z.number().min(0).max(1).default(0) }),
  /** Kinds that are stages or names of one thing share a family (bubbles – corrosion – perforation), with rising `rank`. */
  family: LocalId,
  rank: z.int().nonnegative(),
  /** What it is where the item says nothing else. */
  severity: Severity,
  /** Small is no excuse: a denied one of any extent contradicts the denial (perforation, crack, structure). */
  neverTrifling: z.boolean().optional(),
});
export type FaultKind = z.infer<typeof FaultKind>;
/** A severity of faults by kind, extent (in the kind's unit, from this on) and place; the first that fits is taken. */
export const FaultSeverity = z.strictObject({
  kinds: z.array(LocalId).optional(),
  from: z.number().nonnegative().optional(),
  positions: z.array(PositionId).optional(),
  spots: z.array(LocalId).optional(),
  severity: Severity,
});
export type FaultSeverity = z.infer<typeof FaultSeverity>;
/** `drawing` names a grid of cells in the sheet on which spots lie. */
export const FaultsSpec = z.strictObject({
  kinds: z.array(LocalId).min(1),
  drawing: LocalId.optional(),
  severities: z.array(FaultSeverity).optional(),
});

export const CodeSystem = z.enum([
  "vin",
  "chassis-number",
  "tire-identification",
  "tire-size",
  "casting-number",
  "date-code",
  "paint-code",
  "text",
  "description",
  "own-words",
]);
export type CodeSystem = z.infer<typeof CodeSystem>;

/** Systems that people write for people: words in any order, with whatever marks. */
export const IN_WORDS: ReadonlySet<CodeSystem> = new Set(["text", "description", "own-words"]);

/** Item applies only to cars whose form has one of the values: `{ "body": ["convertible", "roadster"] }`. */
export const AppliesWhen = z.partialRecord(
  z.enum([
    "body",
    "construction",
    "gearbox",
    "driven",
    "fuelSystem",
    "brakesFront",
    "brakesRear",
    "doors",
    "servo",
    "frontPivots",
    "torqueBoxes",
    "seatBelts",
    "airConditioning",
    "powerTop",
    "repeaters",
    "ventWindows",
    "headlamps",
  ]),
  z.array(z.union([z.string(), z.number()])).min(1),
);

export const Stage = z.enum(STAGES);
export type Stage = z.infer<typeof Stage>;

export const Depth = z.enum(DEPTHS);
export type Depth = z.infer<typeof Depth>;

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
    /** How grave it is where two answers part and neither is bad by itself (a code, an answer without a yardstick). */
    severity: Severity,
    strict: z.boolean(),
    time: TimeBehavior,
    /** Of whom it is asked: what only a seller can claim is asked of the statement alone. */
    asked: z.enum(["both", "statement"]).optional(),
    /** Light, weather, what was allowed: never compared; it qualifies what was found under it. */
    circumstance: z.boolean().optional(),
    /** Where this is bad, what it spoils: items, and whole sections, whose findings say so (a start that was not cold). */
    qualifies: z
      .strictObject({
        items: z.array(ItemId).default([]),
        sections: z.array(LocalId).default([]),
        /** Options under which nothing of it counts as looked at, and why: dark, wet or dirty is unseen, never sound. */
        unseen: z.record(LocalId, NotSeenReason).optional(),
      })
      .optional(),
    /**
     * A gauge read on a standard that is brought along: the reading less the condition `nominal`, a number, is the offset of that gauge on
     * that visit. Accuracy of the standard ±(absolute + share), base unit of the item.
     */
    checkStandard: z
      .strictObject({
        nominal: LocalId,
        accuracy: z.strictObject({
          absolute: z.number().nonnegative(),
          share: z.number().min(0).max(1).default(0),
        }),
      })
      .optional(),
    /** Asks what another item asks; readable in older files, not asked any more. */
    sameAs: ItemId.optional(),
    /** A thing a car may lack: "not fitted" is an answer. */
    equipment: z.boolean().optional(),
    stage: Stage,
    depth: Depth,
    /** What of it a lesser depth asks already: these positions alone, and their minutes (the stop lamps before the road). */
    sooner: z
      .strictObject({ depth: Depth, positions: z.array(PositionId).min(1), minutes: z.number().positive() })
      .optional(),
    /** All its positions are looked at in one go, from the item's own place (lamps, switched on in turn). */
    inOneGo: z.boolean().optional(),
    /** Where one stands, where the position does not say; a place of the sheet. */
    place: LocalId.optional(),
    /** Kind of matter it belongs to. */
    matter: LocalId.optional(),
    /** Conditions that must be the same on both sides, else the two answers are incomparable. */
    sameConditions: z.array(LocalId).optional(),
    /** Conditions without which its yardstick judges nothing. */
    yardstickNeeds: z.array(ConditionNeeded).optional(),
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
    /** For grades: the house grade from which down it is bad, and how bad; `spent` where the worst grade is graver. */
    grade: z.strictObject({ badFrom: LocalId, severity: Severity, spent: Severity.optional() }).optional(),
    /** How grave it is that it does not work; `intermittent` and `at` where that differs. */
    working: z
      .strictObject({
        severity: Severity,
        intermittent: Severity.optional(),
        /** One answer for several of them (warning lamps): at times means that some do not. */
        ofSeveral: z.boolean().optional(),
        at: z.record(PositionId, Severity).optional(),
      })
      .optional(),
    /** `neither`: no yardstick. `severity` of the other answer. */
    presence: z
      .strictObject({
        goodIs: z.enum(["present", "absent", "neither"]),
        severity: Severity,
        /** No fault unless the statement promised it: a paper nobody promised. */
        onlyIfPromised: z.boolean().optional(),
        /** What the two are called where "present" and "absent" would not be said (on a charger, off a charger). */
        said: z.strictObject({ present: Words, absent: Words }).optional(),
      })
      .optional(),
    choice: ChoiceSpec.optional(),
    code: z.strictObject({ system: CodeSystem }).optional(),
    faults: FaultsSpec.optional(),
  })
  .refine(
    (item) => item[item.answer] !== undefined,
    "an item carries the particulars of its own answer kind",
  );
export type Item = z.infer<typeof Item>;

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
      /** Where one stands for it; a place of the sheet. */
      place: LocalId.optional(),
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
  /** What a no is called (engine cold), where yes or no is asked for. */
  otherwise: Words.optional(),
  ask: z.enum(["yes-no", "number", "text"]),
  unit: UnitSymbol.optional(),
});
export type ConditionKind = z.infer<typeof ConditionKind>;

/** A row of work that cost tables price; the sheet only names it. */
export const CostRowName = z.strictObject({ id: LocalId, section: LocalId, words: Words });
export type CostRowName = z.infer<typeof CostRowName>;

/** A place one stands at, in the order one walks: what is done there is done together. */
export const Place = z.strictObject({ id: LocalId, words: Words });
export type Place = z.infer<typeof Place>;

/** `stages`: at whose gate it stands, once; without one it stands at the task. */
export const Caution = z.strictObject({
  id: LocalId,
  text: z.string().min(1),
  stages: z.array(Stage).optional(),
});
export type Caution = z.infer<typeof Caution>;

/** The house scale from worst to best; `spent` … `as-new`. */
export const HouseGrade = z.enum(HOUSE_GRADES);
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
  places: z.array(Place).default([]),
  stations: z.array(Station).default([]),
  conditions: z.array(ConditionKind).default([]),
  costRows: z.array(CostRowName).default([]),
  items: z.array(Item).min(1),
});
export type Sheet = z.infer<typeof Sheet>;
