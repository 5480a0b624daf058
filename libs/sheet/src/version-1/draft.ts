import type { Item, ReadingSpec, Words } from "@evenhand/shared/sheet";
import type { UnitSymbol } from "@evenhand/shared/unit";

/** What the trade calls a thing: the American word, the British one where it is another, and what else people say. */
export function words(american: string, british?: string, synonyms: string[] = []): Words {
  return british === undefined ? { american, synonyms } : { american, british, synonyms };
}

/** ±(absolute + share × reading). */
export type Accuracy = [absolute: number, share?: number];

const accuracy = ([absolute, share = 0]: Accuracy) => ({ absolute, share });

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
  limits?: ReadingSpec["limits"];
  spots?: ReadingSpec["spots"];
  riseAllowed?: number;
  notConfirmableBecause?: string;
};

/** A reading's particulars from their short form. Figures are in `unit`, the item's base unit. */
export function reading(draft: ReadingDraft): ReadingSpec {
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
    instrument: { name, resolution, accuracy: accuracy(instrumentAccuracy) },
    limits: draft.limits ?? [],
    typical: draft.typical,
    spots: draft.spots ?? [],
    ...(draft.riseAllowed === undefined ? {} : { riseAllowed: draft.riseAllowed }),
    ...(draft.notConfirmableBecause === undefined
      ? {}
      : { notConfirmableBecause: draft.notConfirmableBecause }),
  };
}

type Particulars = Pick<
  Item,
  "reading" | "color" | "grade" | "working" | "presence" | "choice" | "code" | "faults"
>;
type Common = Pick<Item, "consequence" | "minutes" | "costRow"> &
  Partial<
    Pick<Item, "positions" | "strict" | "time" | "core" | "needs" | "conditions" | "cautions" | "appliesWhen">
  >;

const kinds = ["reading", "color", "grade", "working", "presence", "choice", "code", "faults"] as const;

/** Cautions that belong to every task done under a raised car, or on the road. */
const lifted = ["lift-points", "jack-alone", "second-person"];
const onTheRoad = ["road-consent", "second-person", "aged-tires", "first-braking"];

function cautionsOf(draft: Common): string[] {
  const needs = draft.needs ?? [];
  return [
    ...new Set([
      ...(needs.includes("lift") ? lifted : []),
      ...(needs.includes("road") ? onTheRoad : []),
      ...(draft.cautions ?? []),
    ]),
  ];
}

/**
 * One item from what is its own. The section is the first word of the id; the answer kind is the one whose particulars are given;
 * safety and structure items are strict; what nothing is said of is steady, not core and needs nothing.
 */
export function item(id: string, named: Words, how: string, draft: Common & Particulars): Item {
  const answer = kinds.find((kind) => draft[kind] !== undefined);
  if (answer === undefined) throw new Error(`${id} has no particulars`);
  const { consequence, costRow, minutes, positions, appliesWhen } = draft;
  const { strict = consequence === "safety" || consequence === "structure" } = draft;
  return {
    id,
    section: id.slice(0, id.indexOf(".")),
    words: named,
    how,
    answer,
    ...(positions === undefined ? {} : { positions }),
    consequence,
    strict,
    time: draft.time ?? "steady",
    core: draft.core ?? false,
    minutes,
    needs: draft.needs ?? [],
    conditions: draft.conditions ?? [],
    cautions: cautionsOf(draft),
    costRow,
    ...(appliesWhen === undefined ? {} : { appliesWhen }),
    [answer]: draft[answer],
  };
}
