import type { AppointmentState, BriefItem } from "@evenhand/shared/booking";
import type { Need } from "@evenhand/shared/sheet";
import type { RefusedHour } from "../refused-hour/index.ts";

const HOUR_MS = 3_600_000;

/** Changes are taken until so long before the start; common practice, no source. */
export const LAST_CHANGE_MS = 24 * HOUR_MS;

/** While a visit is in one of these, its brief can be changed. What is under way is looked at as it was agreed. */
export const OPEN_TO_CHANGE: readonly AppointmentState[] = ["held", "requested", "accepted", "confirmed"];

/** What the inspector is to look at. A change stands apart until the inspector agrees. */
export type Brief = {
  readonly version: number;
  readonly items: readonly BriefItem[];
  readonly proposed: { readonly items: readonly BriefItem[]; readonly at: number } | null;
};

export type BriefTotals = {
  readonly minutes: number;
  readonly coreMinutes: number;
  readonly chosenMinutes: number;
  /** Minutes of the items that have each need. */
  readonly byNeed: Readonly<Partial<Record<Need, number>>>;
};

/**
 * Minutes of a brief, in all and by need. Driving on to the lift is not in them (`visit-plan/`).
 *
 * @example briefTotals([{ item: "a.b", core: true, minutes: 5, needs: ["lift"] }])
 * // { minutes: 5, coreMinutes: 5, chosenMinutes: 0, byNeed: { lift: 5 } }
 */
export function briefTotals(items: readonly BriefItem[]): BriefTotals {
  const minutes = items.reduce((sum, one) => sum + one.minutes, 0);
  const coreMinutes = items.filter(({ core }) => core).reduce((sum, one) => sum + one.minutes, 0);
  const byNeed: Partial<Record<Need, number>> = {};
  for (const one of items) for (const need of one.needs) byNeed[need] = (byNeed[need] ?? 0) + one.minutes;
  return { minutes, coreMinutes, chosenMinutes: minutes - coreMinutes, byNeed };
}

export type BriefMove =
  | { readonly kind: "propose"; readonly by: "buyer"; readonly items: readonly BriefItem[] }
  | { readonly kind: "agree"; readonly by: "inspector" }
  | { readonly kind: "refuse"; readonly by: "inspector" }
  | { readonly kind: "withdraw"; readonly by: "buyer" };

export type BriefFacts = {
  readonly now: number;
  /** Start of the visit; `null` while none is booked, when the buyer's change needs nobody's agreement. */
  readonly start: number | null;
  /** What speaks against the booked hour with the changed plan: `canBook` with this visit's own stretches left out. */
  readonly refusedHour: readonly RefusedHour[];
};

export type BriefRefusal =
  | { readonly code: "too-late"; readonly until: number }
  | { readonly code: "nothing-proposed" }
  | { readonly code: "nothing-changed" }
  | { readonly code: "item-twice"; readonly items: readonly string[] }
  /** Core items stay: they decide purchases. */
  | { readonly code: "core-left-out"; readonly items: readonly string[] }
  /** It would work at another hour. */
  | { readonly code: "hour-does-not-hold-it"; readonly reasons: readonly RefusedHour[] };

export type BriefDecision =
  | { readonly kind: "changed"; readonly brief: Brief }
  | { readonly kind: "refused"; readonly refusal: BriefRefusal };

const refuse = (refusal: BriefRefusal): BriefDecision => ({ kind: "refused", refusal });
const idsOf = (items: readonly BriefItem[]): string[] => items.map(({ item }) => item);

function checkItems(brief: Brief, items: readonly BriefItem[], facts: BriefFacts): BriefRefusal | null {
  const ids = idsOf(items);
  const twice = ids.filter((id, index) => ids.indexOf(id) !== index);
  if (twice.length > 0) return { code: "item-twice", items: twice };
  const left = idsOf(brief.items.filter(({ core, item }) => core && !ids.includes(item)));
  if (left.length > 0) return { code: "core-left-out", items: left };
  const same = ids.length === brief.items.length && idsOf(brief.items).every((id) => ids.includes(id));
  if (same) return { code: "nothing-changed" };
  const { start, refusedHour } = facts;
  return start !== null && refusedHour.length > 0
    ? { code: "hour-does-not-hold-it", reasons: refusedHour }
    : null;
}

/**
 * Decides a change of the brief: the buyer proposes until a day before the visit, the inspector agrees or refuses until
 * then; before a visit is booked the buyer's change holds at once. Nothing is taken away by a proposal: the brief agreed
 * last stands until the next one is.
 *
 * @example
 * decideBrief(brief, { kind: "agree", by: "inspector" }, { now, start: now + 25 * HOUR_MS, refusedHour: [] })
 * // { kind: "changed", brief: { version: brief.version + 1, items: brief.proposed.items, proposed: null } }
 */
export function decideBrief(brief: Brief, move: BriefMove, facts: BriefFacts): BriefDecision {
  const { now, start } = facts;
  const { proposed, version } = brief;
  const until = start === null ? Infinity : start - LAST_CHANGE_MS;
  if (move.kind === "propose") {
    if (now > until) return refuse({ code: "too-late", until });
    const refusal = checkItems(brief, move.items, facts);
    if (refusal !== null) return refuse(refusal);
    return start === null
      ? { kind: "changed", brief: { version: version + 1, items: move.items, proposed: null } }
      : { kind: "changed", brief: { ...brief, proposed: { items: move.items, at: now } } };
  }
  if (proposed === null) return refuse({ code: "nothing-proposed" });
  if (move.kind !== "agree") return { kind: "changed", brief: { ...brief, proposed: null } };
  if (now > until) return refuse({ code: "too-late", until });
  const refusal = checkItems(brief, proposed.items, facts);
  return refusal === null
    ? { kind: "changed", brief: { version: version + 1, items: proposed.items, proposed: null } }
    : refuse(refusal);
}
