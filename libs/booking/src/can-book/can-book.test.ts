import { describe, expect, it } from "vitest";
import {
  at,
  DAY,
  from,
  FULL,
  HOUR,
  inspector,
  item,
  MINUTE,
  MONDAY,
  planOf,
  request,
  site,
} from "../../testing/builders.ts";
import type { InspectorCalendar, VisitRequest } from "../calendar/index.ts";
import type { RefusedHour } from "../refused-hour/index.ts";
import { visitCost } from "../visit-cost/index.ts";
import { canBook } from "./index.ts";

const NORTH = { latitude: 89_990 / 1.25 / 111_195.08, longitude: 0 };
const now = MONDAY - 2 * DAY;

type Asked = { start?: number; request?: VisitRequest; inspector?: InspectorCalendar; total?: number };
function reasons({
  start = at(10),
  request: asked = request(),
  inspector: person = inspector(),
  total,
}: Asked): readonly RefusedHour[] {
  const offer = { start, bays: [], cost: { total: total ?? visitCost(asked, person).total } };
  const decision = canBook(offer, { now, request: asked, inspector: person });
  return decision.kind === "refused" ? decision.reasons : [];
}
const full = (more: Partial<VisitRequest> = {}): VisitRequest => request({ plan: planOf(FULL), ...more });

describe("a booking is refused with figures that say what would work", () => {
  it("and allowed where nothing speaks against it", () => {
    expect(reasons({})).toEqual([]);
    expect(reasons({ request: full() })).toEqual([]);
  });

  it.each<[string, Asked, RefusedHour]>([
    ["notice", { inspector: inspector({ notice: 3 * DAY }) }, { code: "notice", earliest: now + 3 * DAY }],
    ["off-the-step", { start: at(10) + MINUTE }, { code: "off-the-step", earlier: at(10), later: at(10.25) }],
    [
      "site-closed",
      { start: at(17.75), inspector: inspector({ hours: [from(8, 20)] }) },
      { code: "site-closed", nearest: from(8, 18) },
    ],
    [
      "dealer-closed",
      { request: request({ site: site({ closures: [from(10.25, 11)] }) }) },
      { code: "dealer-closed", closure: from(10.25, 11) },
    ],
    [
      "no-bay",
      { request: full({ site: site({ bays: [{ id: "b", taken: [from(11.25, 12)] }] }) }) },
      {
        code: "no-bay",
        car: "car-1",
        spell: 1,
        needed: { start: at(10) + 65 * MINUTE, end: at(10) + 95 * MINUTE },
        bays: 1,
      },
    ],
    [
      "no-daylight",
      { request: full({ site: site({ daylight: [from(6, 10.5)] }) }) },
      {
        code: "no-daylight",
        car: "car-1",
        stage: "before-start",
        needed: { start: at(10) + 10 * MINUTE, end: at(11) },
        nearest: from(6, 10.5),
      },
    ],
    [
      "no-daylight in the polar night",
      { request: full({ site: site({ daylight: [] }) }) },
      {
        code: "no-daylight",
        car: "car-1",
        stage: "before-start",
        needed: { start: at(10) + 10 * MINUTE, end: at(11) },
        nearest: null,
      },
    ],
    [
      "car-taken",
      {
        request: request({
          cars: [{ id: "car-1", engagements: [{ ...from(9, 10.25), needsCold: false, warms: false }] }],
        }),
      },
      { code: "car-taken", car: "car-1", taken: from(9, 10.25) },
    ],
    [
      "car-not-cold",
      {
        request: full({
          cars: [{ id: "car-1", engagements: [{ ...from(8, 9), needsCold: false, warms: true }] }],
        }),
      },
      { code: "car-not-cold", car: "car-1", taken: from(8, 9), soak: 8 * HOUR },
    ],
    [
      "car-not-cold for the visit after",
      {
        request: full({
          cars: [{ id: "car-1", engagements: [{ ...from(15, 16), needsCold: true, warms: false }] }],
        }),
      },
      { code: "car-not-cold", car: "car-1", taken: from(15, 16), soak: 8 * HOUR },
    ],
    [
      "outside-hours",
      { inspector: inspector({ base: NORTH, hours: [from(9.5, 18)] }) },
      { code: "outside-hours", away: from(9, 11.5), nearest: from(9.5, 18) },
    ],
    [
      "inspector-taken",
      { inspector: inspector({ engagements: [{ ...from(10.25, 11), place: null }] }) },
      { code: "inspector-taken", taken: from(10.25, 11) },
    ],
    [
      "travel before",
      { inspector: inspector({ engagements: [{ ...from(8, 9.5), place: NORTH }] }) },
      { code: "travel", direction: "before", needed: HOUR, available: HOUR / 2 },
    ],
    [
      "travel after",
      { inspector: inspector({ engagements: [{ ...from(11, 12), place: NORTH }] }) },
      { code: "travel", direction: "after", needed: HOUR, available: HOUR / 2 },
    ],
    [
      "lacks-skill",
      { request: request({ skills: ["body", "welding"] }), inspector: inspector({ skills: ["body"] }) },
      { code: "lacks-skill", skills: ["welding"] },
    ],
    [
      "other-currency",
      { request: request({ currency: "GBP" }) },
      { code: "other-currency", currency: "USD", wanted: "GBP" },
    ],
    ["price-changed", { total: 1 }, { code: "price-changed", offered: 1, total: 42_000 }],
  ])("%s", (_, asked, reason) => {
    expect(reasons(asked)).toEqual([reason]);
  });

  it("outside-radius and not-independent", () => {
    const [radius] = reasons({ inspector: inspector({ base: NORTH, radius: 50_000 }) });
    expect(radius).toMatchObject({ code: "outside-radius", radius: 50_000 });
    expect(radius?.code === "outside-radius" && Math.round(radius.distance / 1000)).toBe(72);
    const conflicts = [{ code: "dealt-with-car" as const, dealing: "sold" as const, car: "car-1" }];
    expect(reasons({ inspector: inspector({ conflicts }) })).toEqual([
      { code: "not-independent", conflicts },
    ]);
  });

  it("never for a job elsewhere that leaves just enough time to drive", () => {
    const jobs = [
      { ...from(8, 9), place: NORTH },
      { ...from(11.5, 12), place: NORTH },
    ];
    expect(reasons({ inspector: inspector({ engagements: jobs }) })).toEqual([]);
  });

  it("never for a bay that has gone while another is free", () => {
    const bays = [
      { id: "gone", taken: [from(8, 18)] },
      { id: "other", taken: [] },
    ];
    const asked = full({ site: site({ bays }) });
    const named = [{ bay: "gone" }, { bay: "gone" }];
    const decision = canBook(
      { start: at(10), bays: named, cost: visitCost(asked, inspector()) },
      { now, request: asked, inspector: inspector() },
    );
    expect(decision.kind === "bookable" && decision.bays.map(({ bay }) => bay)).toEqual(["other", "other"]);
  });

  it("keeps the bays named where they are free", () => {
    const named = [{ bay: "bay-2" }, { bay: "bay-1" }];
    const decision = canBook(
      { start: at(10), bays: named, cost: visitCost(full(), inspector()) },
      { now, request: full(), inspector: inspector() },
    );
    expect(decision.kind === "bookable" && decision.bays.map(({ bay }) => bay)).toEqual(["bay-2", "bay-1"]);
  });
});

describe("what a visit costs", () => {
  it("is the fee for the visit and further cars, the miles out and back, and the site's fees", () => {
    const plan = planOf([...FULL, { car: "car-2", items: [item("papers.title", 10)] }]);
    const tenMiles = { latitude: 16_093.44 / 1.25 / 111_195.08, longitude: 0 };
    expect(visitCost(request({ plan }), inspector({ base: tenMiles }))).toEqual({
      currency: "USD",
      visit: 55_000,
      travel: 1_000,
      site: 5_000,
      total: 61_000,
    });
  });
});
