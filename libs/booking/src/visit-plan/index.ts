import type { VisitStage } from "@evenhand/shared/booking";
import type { Need } from "@evenhand/shared/sheet";

const MINUTE_MS = 60_000;

/** What is looked at before a car goes on the road. */
export const GATE_SUBJECTS = [
  "lift-points",
  "brakes",
  "steering",
  "tires",
  "wheel-fixings",
  "fuel-lines",
] as const;
export type GateSubject = (typeof GATE_SUBJECTS)[number];

/** An item to be looked at on a visit. */
export type VisitItem = {
  readonly item: string;
  readonly minutes: number;
  readonly needs: readonly Need[];
  /** Where its needs alone do not say: leaks looked for again after the road, smoke on a cold start. */
  readonly stage?: VisitStage;
  /** Subjects of the gate to the road this item speaks to. */
  readonly gate?: readonly GateSubject[];
};

export type CarToVisit = { readonly car: string; readonly items: readonly VisitItem[] };

/** One stretch of a visit, in milliseconds from its start. */
export type VisitSegment = {
  readonly car: string;
  readonly stage: VisitStage;
  readonly from: number;
  readonly to: number;
  readonly lift: boolean;
  readonly daylight: boolean;
  readonly items: readonly string[];
};

/** One unbroken stay on the lift. */
export type LiftSpell = {
  readonly car: string;
  readonly spell: 1 | 2;
  readonly from: number;
  readonly to: number;
};

/** When a car is needed, and what that asks of it and does to it. */
export type CarSpan = {
  readonly car: string;
  readonly from: number;
  readonly to: number;
  readonly needsCold: boolean;
  readonly warms: boolean;
};

export type VisitPlan = {
  /** Milliseconds. */
  readonly length: number;
  readonly segments: readonly VisitSegment[];
  readonly lifts: readonly LiftSpell[];
  readonly cars: readonly CarSpan[];
  /** Items the dealer must allow first: dismantling, or named as needing permission. */
  readonly toAllow: readonly { readonly car: string; readonly item: string }[];
};

export type PlanProblem =
  | { readonly code: "nothing-chosen"; readonly car: string | null }
  | { readonly code: "road-without-gate"; readonly car: string; readonly missing: readonly GateSubject[] }
  | {
      readonly code: "stage-against-needs";
      readonly car: string;
      readonly item: string;
      readonly stage: VisitStage;
    }
  | {
      readonly code: "impossible-minutes";
      readonly car: string;
      readonly item: string;
      readonly minutes: number;
    };

export type PlannedVisit =
  | { readonly kind: "planned"; readonly plan: VisitPlan }
  | { readonly kind: "refused"; readonly problems: readonly PlanProblem[] };

/** Minutes to drive on, set the arms and raise; common practice, no source. */
export const LIFT_HANDLING_MINUTES = 5;

/** The order of a visit. */
export const STAGES: readonly VisitStage[] = [
  "before-start",
  "cold-start",
  "first-lift",
  "road",
  "hot",
  "second-lift",
];
const LIFT_STAGES: ReadonlySet<VisitStage> = new Set(["first-lift", "second-lift"]);
const WARMING_STAGES: ReadonlySet<VisitStage> = new Set(["cold-start", "road", "hot"]);

/**
 * The stage at which an item is looked at: as it says itself, else by its needs.
 *
 * @example stageOf({ item: "driveline.leaks-after", minutes: 3, needs: ["lift", "hot-engine"] }) // "second-lift"
 */
export function stageOf({ stage, needs }: VisitItem): VisitStage {
  if (stage !== undefined) return stage;
  const has = (need: Need): boolean => needs.includes(need);
  if (has("cold-engine")) return has("road") ? "cold-start" : "before-start";
  if (has("lift")) return has("hot-engine") ? "second-lift" : "first-lift";
  if (has("road")) return "road";
  return has("hot-engine") ? "hot" : "before-start";
}

/** Does the stage give what the item needs? */
function fitsStage(item: VisitItem): boolean {
  const stage = stageOf(item);
  const at = STAGES.indexOf(stage);
  return item.needs.every((need) => {
    if (need === "lift") return LIFT_STAGES.has(stage);
    if (need === "cold-engine") return at <= STAGES.indexOf("cold-start");
    if (need === "hot-engine") return at >= STAGES.indexOf("road");
    if (need === "road") return stage === "road" || stage === "cold-start";
    return true;
  });
}

/** Subjects of the gate no item speaks to, where something is to be done on the road. */
function missingFromGate(items: readonly VisitItem[]): GateSubject[] {
  if (!items.some((one) => stageOf(one) === "road")) return [];
  const road = STAGES.indexOf("road");
  const seen = items.filter((one) => STAGES.indexOf(stageOf(one)) < road).flatMap(({ gate }) => gate ?? []);
  return GATE_SUBJECTS.filter((subject) => !seen.includes(subject));
}

function problemsOf({ car, items }: CarToVisit): PlanProblem[] {
  if (items.length === 0) return [{ code: "nothing-chosen", car }];
  const problems: PlanProblem[] = [];
  for (const one of items) {
    const { item, minutes } = one;
    if (!(minutes > 0 && Number.isFinite(minutes)))
      problems.push({ code: "impossible-minutes", car, item, minutes });
    if (!fitsStage(one)) problems.push({ code: "stage-against-needs", car, item, stage: stageOf(one) });
  }
  const missing = missingFromGate(items);
  if (missing.length > 0) problems.push({ code: "road-without-gate", car, missing });
  return problems;
}

type Block = Omit<VisitSegment, "from" | "to"> & { readonly minutes: number };

/** Items of one stage: before the start what needs no daylight comes first, later what needs it. */
function blocksOf({ car, items }: CarToVisit, stage: VisitStage): Block[] {
  const here = items.filter((one) => stageOf(one) === stage);
  const split = stage === "before-start" ? [false, true] : [true, false];
  return split.flatMap((daylight) => {
    const chosen = here.filter(({ needs }) => needs.includes("daylight") === daylight);
    const minutes = chosen.reduce((sum, one) => sum + one.minutes, 0);
    const lift = LIFT_STAGES.has(stage);
    return minutes > 0
      ? [{ car, stage, lift, daylight, minutes, items: chosen.map(({ item }) => item) }]
      : [];
  });
}

/** Every car's cold part first, while all are cold and the day is young; then one car after the other. */
function blocksInOrder(cars: readonly CarToVisit[]): Block[] {
  const [cold, ...rest] = STAGES;
  return [
    ...cars.flatMap((car) => blocksOf(car, cold!)),
    ...cars.flatMap((car) => rest.flatMap((stage) => blocksOf(car, stage))),
  ];
}

function segmentsOf(blocks: readonly Block[]): VisitSegment[] {
  let at = 0;
  return blocks.map(({ minutes, ...block }, index) => {
    const before = blocks[index - 1];
    const raised = before !== undefined && before.lift && before.car === block.car;
    const handling = block.lift && !raised ? LIFT_HANDLING_MINUTES : 0;
    const from = at;
    at += Math.ceil(minutes + handling) * MINUTE_MS;
    return { ...block, from, to: at };
  });
}

function liftsOf(segments: readonly VisitSegment[]): LiftSpell[] {
  const lifts: LiftSpell[] = [];
  for (const { car, lift, from, to } of segments) {
    if (!lift) continue;
    const last = lifts.at(-1);
    if (last !== undefined && last.car === car && last.to === from) lifts[lifts.length - 1] = { ...last, to };
    else lifts.push({ car, spell: last !== undefined && last.car === car ? 2 : 1, from, to });
  }
  return lifts;
}

function spanOf({ car, items }: CarToVisit, segments: readonly VisitSegment[]): CarSpan {
  const own = segments.filter((segment) => segment.car === car);
  return {
    car,
    from: Math.min(...own.map(({ from }) => from)),
    to: Math.max(...own.map(({ to }) => to)),
    needsCold: items.some(({ needs }) => needs.includes("cold-engine")),
    warms: own.some(({ stage }) => WARMING_STAGES.has(stage)),
  };
}

/**
 * The order of a visit to one or more cars at one site: cold proof, papers, body in daylight → cold start → first lift
 * (the gate to the road) → road → what is done hot → second lift. A car is on the lift at most twice; with nothing
 * between them the two spells are one. Refused where a car would go on the road with a subject of its gate not looked at.
 *
 * @example
 * planVisit([{ car: "c", items: [{ item: "brakes.lines", minutes: 10, needs: ["lift"], gate: [...GATE_SUBJECTS] },
 *   { item: "road.tracking", minutes: 20, needs: ["road"] }] }]).plan.segments.map(({ stage }) => stage)
 * // ["first-lift", "road"]
 */
export function planVisit(cars: readonly CarToVisit[]): PlannedVisit {
  const problems =
    cars.length === 0 ? [{ code: "nothing-chosen" as const, car: null }] : cars.flatMap(problemsOf);
  if (problems.length > 0) return { kind: "refused", problems };
  const segments = segmentsOf(blocksInOrder(cars));
  const toAllow = cars.flatMap(({ car, items }) =>
    items
      .filter(({ needs }) => needs.includes("dismantling") || needs.includes("permission"))
      .map(({ item }) => ({ car, item })),
  );
  const plan: VisitPlan = {
    length: segments.at(-1)!.to,
    segments,
    lifts: liftsOf(segments),
    cars: cars.map((car) => spanOf(car, segments)),
    toAllow,
  };
  return { kind: "planned", plan };
}
