import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { MINUTE } from "../../testing/builders.ts";
import { engagement, HORIZON, type Scenario, scenario } from "../../testing/scenarios.ts";
import type { InspectorCalendar } from "../calendar/index.ts";
import { canBook } from "../can-book/index.ts";
import { explainDay } from "../explain-day/index.ts";
import { normalize, overlap, subtract, union } from "../interval/index.ts";
import { findOffers, type Offer } from "./index.ts";

const runs = { numRuns: 1_500 };
const everything = { horizon: HORIZON, limit: 10_000 };
const offersOf = ({ now, request, inspectors }: Scenario): readonly Offer[] =>
  findOffers(request, inspectors, { ...everything, now }).offers;
const inspectorOf = ({ inspectors }: Scenario, { inspector }: Offer): InspectorCalendar =>
  inspectors.find(({ id }) => id === inspector)!;

const key = ({ cost, start, inspector }: Offer): [number, number, string] => [cost.total, start, inspector];

/** What is booked becomes taken: the inspector at the site, the bays, the cars. */
function booked(one: Scenario, offer: Offer): Scenario {
  const { request } = one;
  const taken = { start: offer.start, end: offer.end, place: request.site.place };
  const inspectors = one.inspectors.map((person) =>
    person.id === offer.inspector ? { ...person, engagements: [...person.engagements, taken] } : person,
  );
  const bays = request.site.bays.map((bay) => ({
    ...bay,
    taken: union(bay.taken, normalize(offer.bays.filter((stay) => stay.bay === bay.id))),
  }));
  const cars = request.cars.map((car) => {
    const { needsCold, warms, from, to } = request.plan.cars.find((span) => span.car === car.id)!;
    const engaged = { start: offer.start + from, end: offer.start + to, needsCold, warms };
    return { ...car, engagements: [...car.engagements, engaged] };
  });
  return { ...one, inspectors, request: { ...request, cars, site: { ...request.site, bays } } };
}

describe("offers", () => {
  it("are found often enough for what follows to mean something", () => {
    const found = fc.sample(scenario, { numRuns: 500, seed: 7 }).map((one) => offersOf(one).length);
    expect(found.filter((count) => count > 0).length).toBeGreaterThan(150);
    expect(found.filter((count) => count === 0).length).toBeGreaterThan(20);
  });

  it("once made are never refused for a reason known when they were made", () => {
    fc.assert(
      fc.property(scenario, fc.integer({ min: 0, max: 10 * MINUTE }), (one, later) => {
        for (const offer of offersOf(one)) {
          const state = { now: one.now + later, request: one.request, inspector: inspectorOf(one, offer) };
          const { end, bays, cost } = offer;
          expect(canBook(offer, state)).toEqual({ kind: "bookable", end, bays, cost });
        }
      }),
      runs,
    );
  });

  it("are exactly the hours against which nothing speaks", () => {
    fc.assert(
      fc.property(scenario, (one) => {
        const explained = explainDay(one.request, one.inspectors, { now: one.now, day: HORIZON });
        const free = explained
          .flatMap(({ start, offeredBy }) => offeredBy.map((id) => `${start} ${id}`))
          .sort();
        expect(
          offersOf(one)
            .map(({ start, inspector }) => `${start} ${inspector}`)
            .sort(),
        ).toEqual(free);
        for (const { site, inspectors, offeredBy } of explained) {
          expect(offeredBy.length + inspectors.length === one.inspectors.length || site.length > 0).toBe(
            true,
          );
        }
      }),
      runs,
    );
  });

  it("never overlap what is taken, nor the way to it and from it", () => {
    fc.assert(
      fc.property(scenario, (one) => {
        const { site, cars, plan, travel } = one.request;
        for (const offer of offersOf(one)) {
          const { speed, engagements } = inspectorOf(one, offer);
          for (const { start, end, place } of engagements) {
            const to = place === null ? 0 : travel(site.place, place, speed).milliseconds;
            const back = place === null ? 0 : travel(place, site.place, speed).milliseconds;
            expect(offer.end + to <= start || end + back <= offer.start).toBe(true);
          }
          expect(offer.bays.length).toBe(plan.lifts.length);
          for (const stay of offer.bays) {
            const bay = site.bays.find(({ id }) => id === stay.bay)!;
            expect(bay.taken.some((taken) => overlap(taken, stay))).toBe(false);
          }
          for (const { car, from, to } of plan.cars) {
            const span = { start: offer.start + from, end: offer.start + to };
            const engaged = cars.find(({ id }) => id === car)!.engagements;
            expect(engaged.some((taken) => overlap(taken, span))).toBe(false);
          }
        }
      }),
      runs,
    );
  });

  it("take their hour from everybody else once booked", () => {
    fc.assert(
      fc.property(scenario, fc.nat(), (one, pick) => {
        const offers = offersOf(one);
        const chosen = offers[pick % Math.max(1, offers.length)];
        if (chosen === undefined) return;
        const after = booked(one, chosen);
        expect(
          canBook(chosen, { now: one.now, request: after.request, inspector: inspectorOf(after, chosen) })
            .kind,
        ).toBe("refused");
        const left = new Set(offers.map(({ id }) => id));
        for (const offer of offersOf(after)) {
          expect(left.has(offer.id)).toBe(true);
          expect(overlap(offer, chosen) && offer.inspector === chosen.inspector).toBe(false);
        }
      }),
      runs,
    );
  });

  it("come by cost, then time, then inspector, whatever order the inspectors come in, page by page the same", () => {
    fc.assert(
      fc.property(scenario, fc.integer({ min: 1, max: 40 }), (one, limit) => {
        const { now, request, inspectors } = one;
        const all = findOffers(request, inspectors, { ...everything, now });
        const sorted = [...all.offers].sort((a, b) => {
          const [x, y] = [key(a), key(b)];
          return x[0] - y[0] || x[1] - y[1] || (x[2] < y[2] ? -1 : 1);
        });
        expect(all.offers).toEqual(sorted);
        const paged: Offer[] = [];
        for (let more = true; more;) {
          const last = paged.at(-1);
          const after = last && { total: last.cost.total, start: last.start, inspector: last.inspector };
          const page = findOffers(request, inspectors.toReversed(), {
            horizon: HORIZON,
            now,
            limit,
            after,
          });
          expect(page.offers.length).toBeLessThanOrEqual(limit);
          paged.push(...page.offers);
          more = page.more;
        }
        expect(paged).toEqual(all.offers);
      }),
      runs,
    );
  });
});

/** Ways to give somebody more free time; `pick` chooses what is freed. */
const FREEING: ((one: Scenario, pick: number, extra: { start: number; end: number }) => Scenario)[] = [
  (one, pick, extra) =>
    withInspector(one, pick, (person) => ({ ...person, hours: union(person.hours, [extra]) })),
  (one, pick) =>
    withInspector(one, pick, (person) => ({ ...person, engagements: without(person.engagements, pick) })),
  (one, pick) => withInspector(one, pick, (person) => ({ ...person, engagements: [] })),
  (one, _, extra) => withSite(one, { open: union(one.request.site.open, [extra]) }),
  (one, _, extra) => withSite(one, { daylight: union(one.request.site.daylight, [extra]) }),
  (one, _, extra) => withSite(one, { closures: subtract(one.request.site.closures, [extra]) }),
  (one) => withSite(one, { bays: [{ id: "bay-new", taken: [] }, ...one.request.site.bays] }),
  (one, _, extra) =>
    withSite(one, {
      bays: one.request.site.bays.map((bay) => ({ ...bay, taken: subtract(bay.taken, [extra]) })),
    }),
  (one, pick) => ({
    ...one,
    request: {
      ...one.request,
      cars: one.request.cars.map((car) => ({ ...car, engagements: without(car.engagements, pick) })),
    },
  }),
];
const without = <T>(list: readonly T[], pick: number): T[] =>
  list.filter((_, i) => i !== pick % Math.max(1, list.length));
const withInspector = (
  one: Scenario,
  pick: number,
  change: (person: InspectorCalendar) => InspectorCalendar,
): Scenario => ({
  ...one,
  inspectors: one.inspectors.map((person, i) =>
    i === pick % one.inspectors.length ? change(person) : person,
  ),
});
const withSite = (one: Scenario, change: Partial<Scenario["request"]["site"]>): Scenario => ({
  ...one,
  request: { ...one.request, site: { ...one.request.site, ...change } },
});

describe("adding free time", () => {
  it("never takes an offer away", () => {
    fc.assert(
      fc.property(scenario, fc.nat(FREEING.length - 1), fc.nat(10), engagement, (one, way, pick, extra) => {
        const more = FREEING[way]!(one, pick, { start: extra.start, end: extra.end });
        const after = new Set(offersOf(more).map(({ id }) => id));
        expect(offersOf(one).filter(({ id }) => !after.has(id))).toEqual([]);
      }),
      { numRuns: 4_000 },
    );
  });
});
