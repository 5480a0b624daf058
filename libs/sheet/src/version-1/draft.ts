import type { Call, Severity } from "@evenhand/shared/severity";
import type { Depth, Item, Limit, Need, ReadingSpec, Stage, Words } from "@evenhand/shared/sheet";
import type { UnitSymbol } from "@evenhand/shared/unit";

/** What the trade calls a thing: the American word, the British one where it is another, and what else people say. */
export function words(american: string, british?: string, synonyms: string[] = []): Words {
  return british === undefined ? { american, synonyms } : { american, british, synonyms };
}

/** ±(absolute + share × reading). */
export type Accuracy = [absolute: number, share?: number];

const accuracy = ([absolute, share = 0]: Accuracy) => ({ absolute, share });

/** A limit whose severity, where it has none of its own, is its item's. */
export type LimitDraft = Omit<Limit, "severity"> & { severity?: Severity };

type ReadingParticulars = Omit<ReadingSpec, "limits" | "alarms"> & {
  limits: LimitDraft[];
  alarms: LimitDraft[];
};

export type ReadingDraft = {
  unit: UnitSymbol;
  alsoIn: UnitSymbol[];
  delta: Accuracy;
  /** s₀; 30 degrees of freedom unless said otherwise. */
  scatter: Accuracy;
  over?: "repeats" | "spots";
  degreesOfFreedom?: number;
  placement?: number;
  betterIs: "higher" | "lower" | "target";
  target?: number;
  plausible: [number, number];
  typical: number;
  /** Readings at each spot, and spots. */
  ask: [readings: number, spots: number];
  byEye: Accuracy;
  instrument: [name: string, resolution: number, accuracy: Accuracy];
  /** The instrument is part of the car or of its papers, and nobody names it. */
  readOff?: boolean;
  limits?: LimitDraft[];
  alarms?: LimitDraft[];
  noAlarmBecause?: string;
  sound?: ReadingSpec["sound"];
  mirror?: ReadingSpec["mirror"];
  movedBy?: ReadingSpec["movedBy"];
  /** What moves rightly from one day to another: base unit, share. */
  dayToDay?: Accuracy;
  spots?: ReadingSpec["spots"];
  riseAllowed?: number;
  risePerThousandMiles?: number;
  notConfirmableBecause?: string;
};

/** A reading's particulars from their short form. Figures are in `unit`, the item's base unit. */
export function reading(draft: ReadingDraft): ReadingParticulars {
  const [name, resolution, instrumentAccuracy] = draft.instrument;
  const [value, share = 0] = draft.scatter;
  return {
    unit: draft.unit,
    alsoIn: draft.alsoIn,
    delta: accuracy(draft.delta),
    repeatability: {
      value,
      share,
      degreesOfFreedom: draft.degreesOfFreedom ?? 30,
      over: draft.over ?? "repeats",
    },
    placement: draft.placement ?? 0,
    betterIs: draft.betterIs,
    ...(draft.target === undefined ? {} : { target: draft.target }),
    plausible: draft.plausible,
    ask: { readings: draft.ask[0], spots: draft.ask[1] },
    byEye: accuracy(draft.byEye),
    instrument: {
      name,
      resolution,
      accuracy: accuracy(instrumentAccuracy),
      ...(draft.readOff === true ? { readOff: true } : {}),
    },
    limits: draft.limits ?? [],
    alarms: draft.alarms ?? [],
    ...(draft.noAlarmBecause === undefined ? {} : { noAlarmBecause: draft.noAlarmBecause }),
    ...(draft.dayToDay === undefined ? {} : { dayToDay: draft.dayToDay[0] }),
    ...(draft.dayToDay?.[1] === undefined ? {} : { dayToDayShare: draft.dayToDay[1] }),
    ...(draft.mirror === undefined ? {} : { mirror: draft.mirror }),
    ...(draft.movedBy === undefined ? {} : { movedBy: draft.movedBy }),
    typical: draft.typical,
    spots: draft.spots ?? [],
    ...(draft.riseAllowed === undefined ? {} : { riseAllowed: draft.riseAllowed }),
    ...(draft.risePerThousandMiles === undefined ? {} : { risePerThousandMiles: draft.risePerThousandMiles }),
    ...(draft.notConfirmableBecause === undefined
      ? {}
      : { notConfirmableBecause: draft.notConfirmableBecause }),
  };
}

type Choice = NonNullable<Item["choice"]>;
type Working = NonNullable<Item["working"]>;
type Presence = NonNullable<Item["presence"]>;
type Grade = NonNullable<Item["grade"]>;

/** Particulars as a section writes them: a severity left out is the one its item has by default. */
export type ChoiceDraft = Omit<Choice, "options"> & {
  options: (Omit<Choice["options"][number], "call"> & { call: Call | "bad" })[];
};
export type WorkingDraft = Partial<Working>;
export type PresenceDraft = Omit<Presence, "severity"> & { severity?: Severity };
export type GradeDraft = Omit<Grade, "severity"> & { severity?: Severity };
export type FaultsDraft = NonNullable<Item["faults"]>;

type Particulars = Pick<Item, "color" | "code"> & {
  reading?: ReadingParticulars;
  grade?: GradeDraft;
  working?: WorkingDraft;
  presence?: PresenceDraft;
  choice?: ChoiceDraft;
  faults?: FaultsDraft;
};

type Common = Pick<Item, "consequence" | "minutes" | "costRow"> &
  Partial<
    Pick<
      Item,
      | "positions"
      | "strict"
      | "time"
      | "core"
      | "needs"
      | "conditions"
      | "cautions"
      | "appliesWhen"
      | "asked"
      | "qualifies"
      | "sameAs"
      | "circumstance"
      | "checkStandard"
      | "equipment"
      | "stage"
      | "depth"
      | "place"
      | "matter"
      | "sameConditions"
      | "yardstickNeeds"
    >
  > & {
    /** What being bad is where a part of the answer says nothing else; by the consequence where absent. */
    severity?: Severity;
  };

const kinds = ["reading", "color", "grade", "working", "presence", "choice", "code", "faults"] as const;

/** Cautions that belong to every task done under a raised car, or on the road. */
const lifted = ["lift-points", "jack-alone", "second-person", "raised-car", "eye-protection"];
const onTheRoad = ["road-consent", "second-person", "aged-tires", "first-braking"];
const opened = ["owners-word", "closed-again"];

function cautionsOf(draft: Common): string[] {
  const needs = draft.needs ?? [];
  return [
    ...new Set([
      ...(needs.includes("lift") ? lifted : []),
      ...(needs.includes("road") ? onTheRoad : []),
      ...(needs.includes("hot-engine") ? ["hot-parts"] : []),
      ...(needs.includes("dismantling") ? opened : []),
      ...(needs.includes("permission") ? ["owners-word"] : []),
      ...(draft.cautions ?? []),
    ]),
  ];
}

/** What an eye that is used to it reads without an instrument. */
const EYES_READ = /^(gaps\.|doors\.drop|wheels\.tread-depth|interior\.pedals)/;

const SEVERITY_OF: Readonly<Record<Item["consequence"], Severity>> = {
  safety: "danger",
  identity: "worth",
  structure: "worth",
  mechanical: "repair",
  appearance: "small",
  papers: "repair",
};

/** The particulars of an answer with every severity said. */
function complete(draft: Particulars, severity: Severity, eyesRead: boolean): Partial<Item> {
  const limit = (each: LimitDraft): Limit => ({ ...each, severity: each.severity ?? severity });
  const { reading: read, grade, working, presence, choice, faults, color, code } = draft;
  if (read !== undefined) {
    return {
      reading: {
        ...read,
        ...(eyesRead ? { eyesRead } : {}),
        limits: read.limits.map(limit),
        alarms: read.alarms.map(limit),
      },
    };
  }
  if (grade !== undefined) return { grade: { severity, ...grade } };
  if (working !== undefined) return { working: { severity, ...working } };
  if (presence !== undefined) return { presence: { severity, ...presence } };
  if (choice !== undefined) {
    const options = choice.options.map((each) => ({
      ...each,
      call: each.call === "bad" ? severity : each.call,
    }));
    return { choice: { ...choice, options } };
  }
  if (faults !== undefined) return { faults };
  if (color !== undefined) return { color };
  return code === undefined ? {} : { code };
}

const STAGE_OF: readonly (readonly [Need, Stage])[] = [
  ["road", "road"],
  ["hot-engine", "hot"],
  ["cold-engine", "cold"],
  ["lift", "lift"],
  ["daylight", "daylight"],
];

const stageOf = (needs: readonly Need[], section: string): Stage =>
  STAGE_OF.find(([need]) => needs.includes(need))?.[1] ?? (section === "identity" ? "papers" : "daylight");

const depthOf = (core: boolean, needs: readonly Need[]): Depth =>
  needs.includes("dismantling") ? "day" : core ? "first-look" : "half-day";

/** What is said only where it is said. */
const OPTIONAL = [
  "positions",
  "appliesWhen",
  "asked",
  "qualifies",
  "sameAs",
  "circumstance",
  "checkStandard",
  "equipment",
  "place",
  "matter",
  "sameConditions",
  "yardstickNeeds",
] as const;

const optional = (draft: Common): Partial<Item> =>
  Object.fromEntries(OPTIONAL.flatMap((key) => (draft[key] === undefined ? [] : [[key, draft[key]]])));

/**
 * One item from what is its own. The section is the first word of the id; the answer kind is the one whose particulars are given;
 * safety and structure items are strict; what nothing is said of is steady, not core and needs nothing; stage and depth follow
 * from what it needs, the severity of a bad answer from its consequence.
 */
export function item(id: string, named: Words, how: string, draft: Common & Particulars): Item {
  const answer = kinds.find((kind) => draft[kind] !== undefined);
  if (answer === undefined) throw new Error(`${id} has no particulars`);
  const { consequence, costRow, minutes, needs = [], core = false } = draft;
  const { strict = consequence === "safety" || consequence === "structure" } = draft;
  const section = id.slice(0, id.indexOf("."));
  return {
    id,
    section,
    words: named,
    how,
    answer,
    ...optional(draft),
    consequence,
    severity: draft.severity ?? SEVERITY_OF[consequence],
    strict,
    time: draft.time ?? "steady",
    stage: draft.stage ?? stageOf(needs, section),
    depth: draft.depth ?? depthOf(core, needs),
    core,
    minutes,
    needs,
    conditions: draft.conditions ?? [],
    cautions: cautionsOf(draft),
    costRow,
    ...complete(draft, draft.severity ?? SEVERITY_OF[consequence], EYES_READ.test(id)),
  };
}
