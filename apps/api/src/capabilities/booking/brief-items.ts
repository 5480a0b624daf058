import { briefTotals } from "@evenhand/booking/brief";
import { type CarAndBrief, type CarBrief, notOnThisCar, planBriefs } from "@evenhand/booking/visit-brief";
import type { VisitPlan } from "@evenhand/booking/visit-plan";
import { compiledSheet as sheet } from "@evenhand/record/report-document";
import type { BriefItem } from "@evenhand/shared/booking";
import type { BriefSeen, VisitPlan as VisitPlanBody } from "@evenhand/shared/http/booking";
import type { VehicleForm } from "@evenhand/shared/report";
import { ProblemError } from "../../platform/problems/problem-error.ts";

const MINUTE = 60_000;

/** @throws ProblemError `invalid-fields` naming items that the sheet does not have, or that do not apply to the car */
export function checkChosen(form: VehicleForm, chosen: readonly string[]): void {
  const problems = notOnThisCar(sheet, form, chosen).map((index) => ({
    at: `/items/${index}`,
    reason: "an item of the sheet that applies to this car",
    item: chosen[index],
  }));
  if (problems.length === 0) return;
  throw new ProblemError("invalid-fields", "Some of these items are not looked at on this car.", {
    problems,
  });
}

/** @throws ProblemError `brief-not-plannable` with what is wrong */
export function requirePlan(cars: readonly CarAndBrief[]): VisitPlan {
  const planned = planBriefs(sheet, cars);
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
  const planned = planBriefs(sheet, [{ id: vehicle, items }]);
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
