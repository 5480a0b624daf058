import type { InspectorCalendar, VisitRequest } from "../calendar/index.ts";
import type { Interval } from "../interval/index.ts";
import { type VisitCost, visitCost } from "../visit-cost/index.ts";
import { assignBays, type BayStay } from "./assign-bays.ts";
import { inspectorStarts } from "./inspector-starts.ts";
import { siteStarts } from "./site-starts.ts";
import { standingRefusals } from "./standing-refusals.ts";

/** An hour that can be booked. Instants are epoch milliseconds, travel milliseconds. */
export type Offer = {
  /** The same for the same inspector, site and start. */
  readonly id: string;
  readonly inspector: string;
  readonly site: string;
  readonly start: number;
  readonly end: number;
  /** A bay for each stay on the lift. */
  readonly bays: readonly BayStay[];
  readonly travel: { readonly out: number; readonly back: number };
  readonly cost: VisitCost;
};

/** Where a page of offers ends; the next begins after it. */
export type OfferPosition = { readonly total: number; readonly start: number; readonly inspector: string };

export type OfferQuestion = {
  readonly now: number;
  /** Starts are looked for in this stretch. */
  readonly horizon: Interval;
  readonly limit: number;
  readonly after?: OfferPosition;
};

export type FreeHours = {
  /** By total cost, then time, then inspector. */
  readonly offers: readonly Offer[];
  /** Are there offers after the last of these? */
  readonly more: boolean;
};

type Priced = { readonly inspector: InspectorCalendar; readonly cost: VisitCost };
type Candidate = Priced & { readonly starts: readonly Interval[] };

/** First instant on the step at or after `at`. */
const ontoStep = ({ rules }: VisitRequest, at: number): number =>
  rules.alignedTo + Math.ceil((at - rules.alignedTo) / rules.step) * rules.step;

/** The starts one inspector shares with the site, from the end of the notice period on. */
function candidateOf(
  request: VisitRequest,
  priced: Priced,
  atSite: readonly Interval[],
  now: number,
): Candidate {
  const earliest = now + priced.inspector.notice + request.rules.offerLife;
  const among = atSite.filter(({ end }) => end > earliest);
  if (among[0] !== undefined && among[0].start < earliest) among[0] = { start: earliest, end: among[0].end };
  return { ...priced, starts: inspectorStarts(request, priced.inspector, among) };
}

/** The starts of one candidate, one by one. */
function* startsOf(request: VisitRequest, { starts }: Candidate): Generator<number, undefined> {
  for (const { start, end } of starts) {
    for (let at = ontoStep(request, start); at < end; at += request.rules.step) yield at;
  }
}

type Next = { readonly candidate: Candidate; readonly left: Generator<number, undefined>; at: number };

/** Candidates of one price, their starts merged by time, then inspector. */
function* inOrder(
  request: VisitRequest,
  group: readonly Candidate[],
): Generator<[Candidate, number], undefined> {
  const waiting: Next[] = [];
  const advance = (next: Next): boolean => {
    const found = next.left.next();
    if (found.done !== true) next.at = found.value;
    return found.done !== true;
  };
  for (const candidate of group) {
    const next = { candidate, left: startsOf(request, candidate), at: 0 };
    if (advance(next)) waiting.push(next);
  }
  while (waiting.length > 0) {
    let first = 0;
    for (let i = 1; i < waiting.length; i += 1) if (waiting[i]!.at < waiting[first]!.at) first = i;
    const next = waiting[first]!;
    yield [next.candidate, next.at];
    if (!advance(next)) waiting.splice(first, 1);
  }
}

const byPriceThenId = (a: Priced, b: Priced): number =>
  a.cost.total - b.cost.total || (a.inspector.id < b.inspector.id ? -1 : 1);

function comesAfter(
  after: OfferPosition | undefined,
  { cost, inspector }: Candidate,
  start: number,
): boolean {
  if (after === undefined) return true;
  if (cost.total !== after.total) return cost.total > after.total;
  return start !== after.start ? start > after.start : inspector.id > after.inspector;
}

function offerOf(request: VisitRequest, { inspector, cost }: Candidate, start: number): Offer {
  const { plan, site, travel } = request;
  const { id, base, speed } = inspector;
  const bays = assignBays(site, plan.lifts, start);
  if (bays === null) throw new Error(`no bay at ${start}, which the free hours said there was`);
  return {
    id: `${site.id}.${id}.${start}`,
    inspector: id,
    site: site.id,
    start,
    end: start + plan.length,
    bays,
    travel: {
      out: travel(base, site.place, speed).milliseconds,
      back: travel(site.place, base, speed).milliseconds,
    },
    cost,
  };
}

/** Inspectors against whom nothing speaks at any hour, in groups of one price, cheapest first. */
function pricedGroups(
  request: VisitRequest,
  inspectors: readonly InspectorCalendar[],
  after: OfferPosition | undefined,
): Priced[][] {
  const priced = inspectors
    .filter((inspector) => standingRefusals(request, inspector).length === 0)
    .map((inspector) => ({ inspector, cost: visitCost(request, inspector) }))
    .filter(({ cost }) => after === undefined || cost.total >= after.total)
    .sort(byPriceThenId);
  const groups: Priced[][] = [];
  for (const one of priced) {
    const last = groups.at(-1);
    if (last?.[0]?.cost.total === one.cost.total) last.push(one);
    else groups.push([one]);
  }
  return groups;
}

/**
 * The hours that inspector, site, bays, cars and daylight share, after the notice period and with time to travel,
 * cheapest first.
 *
 * Works with sets of starts: each demand says at which starts it is met, and the sets are intersected. An inspector's
 * price does not depend on the hour, so calendars are only looked into, cheapest first, until the limit is reached.
 *
 * @param request what is visited, where, by whose rules
 * @param inspectors in any order; the answer does not depend on it
 * @throws RangeError where a car of the plan has no calendar, or a speed of travel is not above zero
 * @example
 * // one inspector free from 9 to 12 an hour's drive from the site and back, a visit of 30 minutes
 * findOffers(request, [inspector], { now, horizon: day, limit: 10 }).offers.map(({ start }) => start)
 * // 10:00, 10:15, 10:30
 */
export function findOffers(
  request: VisitRequest,
  inspectors: readonly InspectorCalendar[],
  question: OfferQuestion,
): FreeHours {
  const { now, horizon, limit, after } = question;
  const atSite = siteStarts(request, [horizon]);
  const offers: Offer[] = [];
  for (const group of pricedGroups(request, inspectors, after)) {
    const candidates = group.map((priced) => candidateOf(request, priced, atSite, now));
    for (const [candidate, start] of inOrder(request, candidates)) {
      if (!comesAfter(after, candidate, start)) continue;
      if (offers.length === limit) return { offers, more: true };
      offers.push(offerOf(request, candidate, start));
    }
  }
  return { offers, more: false };
}
