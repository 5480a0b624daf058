import { type CarToVisit, planVisit, type PlannedVisit, type VisitPlan } from "@evenhand/booking/visit-plan";
import { toVisitItem } from "@evenhand/booking/visit-items";
import { briefTotals } from "@evenhand/booking/brief";
import type { BriefItem } from "@evenhand/shared/booking";
import type { BriefSeen, VisitPlan as VisitPlanBody } from "@evenhand/shared/http/booking";
import type { Vehicle } from "@evenhand/shared/report";
import { DEPTHS, type Depth, type Item } from "@evenhand/shared/sheet";
import { isAskedOnVisit } from "@evenhand/sheet/asked-at";
import { briefItem } from "@evenhand/sheet/brief-item";
import { applicablePlaces } from "@evenhand/sheet/expand";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { ProblemError } from "../../platform/problems/problem-error.ts";

const MINUTE = 60_000;
const itemsById = new Map<string, Item>(sheetVersion1.items.map((item) => [item.id, item]));

/** Items of the sheet that are asked on a visit to this car, each once, in its order. */
const applicable = (form: Vehicle["form"]): Item[] =>
  [...new Set(applicablePlaces(sheetVersion1, form).map(({ item }) => item))].filter(isAskedOnVisit);

export type CarBrief = {
  readonly depth: Depth;
  readonly items: readonly BriefItem[];
  readonly further: readonly BriefItem[];
};

/** What the depth asks of the car and the items chosen beside it, and what else could be chosen. */
export function briefOf(form: Vehicle["form"], depth: Depth, chosen: readonly string[]): CarBrief {
  const all = applicable(form);
  const wanted = new Set(chosen);
  const items = all.map((item) => briefItem(item, depth, wanted)).filter((item) => item !== null);
  const taken = new Set(items.map(({ item }) => item));
  const further = all
    .filter(({ id }) => !taken.has(id))
    .map(({ id, minutes, needs }) => ({ item: id, core: false, minutes, needs }));
  return { depth, items, further };
}

/** How deep an agreed brief goes: the deepest item its depth asks whole. */
export function depthOf(items: readonly BriefItem[]): Depth {
  const depths = new Set(
    items.flatMap(({ item, core, positions }) =>
      core && positions === undefined ? [itemsById.get(item)?.depth] : [],
    ),
  );
  return DEPTHS.findLast((depth) => depths.has(depth)) ?? "first-look";
}

/** @throws ProblemError `invalid-fields` naming items that the sheet does not have, or that do not apply to the car */
export function checkChosen(form: Vehicle["form"], chosen: readonly string[]): void {
  const known = new Set(applicable(form).map(({ id }) => id));
  const problems = chosen.flatMap((item, index) =>
    known.has(item)
      ? []
      : [{ at: `/items/${index}`, reason: "an item of the sheet that applies to this car", item }],
  );
  if (problems.length === 0) return;
  throw new ProblemError("invalid-fields", "Some of these items are not looked at on this car.", {
    problems,
  });
}

const toCar = (car: string, items: readonly BriefItem[]): CarToVisit => ({
  car,
  items: items.flatMap(({ item, minutes }) => {
    const found = itemsById.get(item);
    return found === undefined ? [] : [toVisitItem({ ...found, minutes })];
  }),
});

export const planCars = (cars: readonly { id: string; items: readonly BriefItem[] }[]): PlannedVisit =>
  planVisit(cars.map(({ id, items }) => toCar(id, items)));

/** @throws ProblemError `brief-not-plannable` with what is wrong */
export function requirePlan(cars: readonly { id: string; items: readonly BriefItem[] }[]): VisitPlan {
  const planned = planCars(cars);
  if (planned.kind === "planned") return planned.plan;
  throw new ProblemError(
    "brief-not-plannable",
    "The brief cannot be planned as one visit; change its items.",
    {
      problems: planned.problems.map((problem) => ({ at: "/items", reason: problem.code })),
      members: { planProblems: planned.problems },
    },
  );
}

export const planBody = ({ length, segments, lifts, toAllow }: VisitPlan): VisitPlanBody => ({
  minutes: length / MINUTE,
  segments: segments.map((segment) => ({
    ...segment,
    from: segment.from / MINUTE,
    to: segment.to / MINUTE,
    items: [...segment.items],
  })),
  lifts: lifts.map((lift) => ({ ...lift, from: lift.from / MINUTE, to: lift.to / MINUTE })),
  toAllow: [...toAllow],
});

export function totalsBody(items: readonly BriefItem[]): BriefSeen["totals"] {
  const { byNeed, ...totals } = briefTotals(items);
  return { ...totals, byNeed: { ...byNeed } };
}

export function briefBody(vehicle: string, revision: number, { depth, items, further }: CarBrief): BriefSeen {
  const planned = planCars([{ id: vehicle, items }]);
  return {
    revision,
    vehicle,
    depth,
    items: [...items],
    totals: totalsBody(items),
    plan: planned.kind === "planned" ? planBody(planned.plan) : null,
    problems: planned.kind === "planned" ? [] : [...planned.problems],
    further: [...further],
  };
}
