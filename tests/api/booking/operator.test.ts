import { beforeEach, describe, expect, test } from "vitest";
import {
  accept,
  type BookingWorld,
  calendarBody,
  findOffers,
  makeBookingWorld,
  monday,
  move,
  moveRefused,
  newClock,
  siteBody,
} from "../setup/booking-story.ts";
import { useService } from "../setup/service.ts";

const clock = newClock();
const service = useService({ clock });
let world: BookingWorld;
beforeEach(async () => {
  clock.set(monday);
  world = await makeBookingWorld(service());
});
const offered = async () => (await findOffers(world.buyer, world.vehicle)).inspectors.map(({ id }) => id);

describe("admission", () => {
  test("an inspector is offered once admitted, and no longer when suspended", async () => {
    const { id } = await world.inspector.does("calendars.create", {
      body: calendarBody(world.inspector, {
        name: "Ivo",
        fees: { currency: "USD", perVisit: 1, perExtraCar: 1, perMile: 0 },
      }),
    });
    expect(await offered()).not.toContain(id);
    const decide = (decision: string, revision: number) =>
      world.operator.does("admissions.decide", {
        path: { id },
        revision,
        body: { decision, reason: "Papers." },
      });
    await decide("admit", 1);
    expect(await offered()).toContain(id);
    await decide("suspend", 2);
    expect(await offered()).not.toContain(id);
  });

  test("a suspended firm is neither listed nor offered", async () => {
    const path = { id: world.inspector.organization };
    await world.operator.does("admissions.decide", {
      path,
      revision: 0,
      body: { decision: "suspend", reason: "Insurance lapsed." },
    });
    expect(await offered()).toEqual([]);
    const firms = await world.buyer.does("inspectors.list");
    expect(firms.items.map(({ id }) => id)).not.toContain(world.inspector.organization);
    expect((await world.inspector.does("admissions.list")).items).toContainEqual(
      expect.objectContaining({ kind: "firm", state: "suspended", reason: "Insurance lapsed." }),
    );
  });
});

const calendarPath = () => ({ id: world.calendar });

describe("calendars", () => {
  test("hours that cannot be laid out are refused, rule by rule", async () => {
    const hours = {
      zone: "America/Chicago",
      open: [{ opens: "2027-02-30T09:00:00", closes: "17:00", rrule: null }],
    };
    const query = { hours, from: "2027-05-03", until: "2027-05-09" };
    const refused = await world.inspector.isRefused("calendars.layOut", { body: query });
    expect(refused.status).toBe(422);
    expect(refused.problems?.[0]?.at).toMatch(/^\/hours\/open\/0/);
  });

  test("days are laid out on the calendar's own clock, across the change of offset", async () => {
    const { days } = await world.inspector.does("calendars.days", {
      path: calendarPath(),
      query: { from: "2027-03-12", until: "2027-03-15" },
    });
    const hours = days.map(({ day }) => (Date.parse(day.end) - Date.parse(day.start)) / 3_600_000);
    expect(hours).toEqual([24, 24, 23, 24]);
    expect(days.map(({ open }) => open[0]?.start)).toEqual([
      "2027-03-12T12:00:00.000Z",
      undefined,
      undefined,
      "2027-03-15T11:00:00.000Z",
    ]);
  });

  test("the inspector's day shows the way there and back", async () => {
    const id = await accept(service(), world);
    const { start } = await world.inspector.does("appointments.get", { path: { id } });
    const date = start.slice(0, 10);
    const { days } = await world.inspector.does("calendars.days", {
      path: calendarPath(),
      query: { from: date, until: date },
    });
    expect(days[0]?.engagements).toMatchObject([{ appointment: id, travelBefore: 12, travelAfter: 12 }]);
    const yard = await world.dealer.does("sites.days", {
      path: { id: world.site },
      query: { from: date, until: date },
    });
    expect(yard.days[0]?.bays[0]?.engagements.map(({ appointment }) => appointment)).toEqual([id, id]);
  });

  test("a closed yard and an inspector who is away are not offered", async () => {
    const closure = { from: "2027-05-04T00:00:00", until: "2027-05-11T00:00:00", note: "Fair" };
    await world.dealer.does("sites.change", {
      path: { id: world.site },
      revision: 1,
      body: { closures: [closure] },
    });
    const [first] = (await findOffers(world.buyer, world.vehicle)).offers;
    expect(first?.start.slice(0, 10)).toBe("2027-05-11");
    const { hours } = await world.inspector.does("calendars.get", { path: calendarPath() });
    const away = [{ opens: "2027-05-11T00:00:00", closes: "24:00", rrule: null }];
    await world.inspector.does("calendars.change", {
      path: calendarPath(),
      revision: 1,
      body: { hours: { ...hours, away } },
    });
    const [second] = (await findOffers(world.buyer, world.vehicle)).offers;
    expect(second?.start.slice(0, 10)).toBe("2027-05-12");
  });

  test("a yard's document and what the dealer may send name no inspector", async () => {
    for (const more of [{ inspector: world.calendar }, { inspectors: [world.calendar] }]) {
      const body = siteBody(world.dealer, more);
      expect((await world.dealer.isRefused("sites.create", { body })).code).toBe("invalid-fields");
    }
    const id = await accept(service(), world);
    const refused = await moveRefused(service(), world.dealer, "appointments.decline", id, {
      cause: "inspector-unavailable",
    });
    expect(refused["shortfalls"]).toMatchObject([
      { code: "cause", allowed: ["dealer-unavailable", "car-sold"] },
    ]);
  });
});

const before = (minutes: number, start: string) => new Date(Date.parse(start) - minutes * 60_000);

const see = (id: string) => world.buyer.does("appointments.get", { path: { id } });

describe("the brief", () => {
  const further = "gaps.flushness";

  test("holds core and chosen items; an item of another car is named", async () => {
    const path = { id: world.vehicle };
    const seen = await world.buyer.does("brief.put", { path, revision: 0, body: { items: [further] } });
    expect(seen.totals.chosenMinutes).toBeGreaterThan(0);
    expect(seen.items.map(({ item }) => item)).toContain(further);
    const less = await world.buyer.does("brief.put", {
      path,
      revision: 1,
      body: { depth: "first-look", items: ["electrics.horn"] },
    });
    expect(less).toMatchObject({ depth: "first-look", totals: { chosenMinutes: 0.5 }, problems: [] });
    expect(less.totals.minutes).toBeLessThan(seen.totals.minutes / 2);
    expect(await world.buyer.does("brief.get", { path })).toEqual(less);
    const refused = await world.buyer.isRefused("brief.put", {
      path,
      revision: 2,
      body: { items: ["no.such"] },
    });
    expect(refused.problems).toMatchObject([{ at: "/items/0", item: "no.such" }]);
  });

  test("is changed with the inspector's agreement until a day before", async () => {
    const id = await accept(service(), world);
    const { start, end } = await see(id);
    const change = { vehicle: world.vehicle, items: [further] };
    await move(service(), world.buyer, "appointments.proposeBrief", id, change);
    expect((await see(id)).visits[0]?.brief).toMatchObject({ version: 1, proposed: {} });
    await move(service(), world.inspector, "appointments.answerBrief", id, {
      vehicle: world.vehicle,
      answer: "agree",
    });
    const agreed = await see(id);
    expect(agreed.visits[0]?.brief).toMatchObject({ version: 2, proposed: null });
    expect(agreed.start).toBe(start);
    expect(Date.parse(agreed.end)).toBeGreaterThan(Date.parse(end));
    expect(agreed.bays).toHaveLength(2);
    clock.set(before(60, start));
    const late = await moveRefused(service(), world.buyer, "appointments.proposeBrief", id, {
      vehicle: world.vehicle,
      items: [],
    });
    expect(late).toMatchObject({ code: "brief-refused", refusal: { code: "too-late" } });
  });
});

const complain = async () =>
  (
    await world.buyer.does("complaints.create", {
      body: {
        organization: world.buyer.organization,
        about: { kind: "vehicle", id: world.vehicle },
        text: "Nobody came.",
      },
    })
  ).id;

describe("a complaint", () => {
  const reason = "To find out what went wrong.";

  test("is counted for the operator, and read only once opened, which those who complained see", async () => {
    const id = await complain();
    expect((await world.operator.does("complaints.counts")).counts).toEqual([
      { state: "received", count: 1 },
    ]);
    const closed = await world.operator.ask("complaints.list");
    expect(closed.text).not.toMatch(/Nobody came|Bea|vehicle/);
    await world.operator.does("complaints.open", { path: { id }, body: { reason } });
    expect(await world.operator.does("complaints.get", { path: { id } })).toMatchObject({
      text: "Nobody came.",
    });
    const seen = await world.buyer.does("complaints.get", { path: { id } });
    expect(seen.openings).toMatchObject([{ by: "Opal", reason }]);
  });

  test("is answered by an operator who has read it", async () => {
    const id = await complain();
    const blind = { path: { id }, revision: 1, body: { text: "We are sorry." } };
    expect((await world.operator.isRefused("complaints.answer", blind)).code).toBe("complaint-state");
    await world.operator.does("complaints.open", { path: { id }, body: { reason } });
    await world.operator.does("complaints.answer", { ...blind, revision: 2 });
    expect(await world.buyer.does("complaints.get", { path: { id } })).toMatchObject({
      state: "answered",
      reply: "We are sorry.",
    });
  });
});

test("an operator sees states and counts of visits, and neither buyer nor brief nor money", async () => {
  const id = await accept(service(), world);
  expect((await world.operator.does("appointments.counts")).counts).toEqual([
    { state: "accepted", count: 1 },
  ]);
  const seen = await world.operator.does("appointments.get", { path: { id } });
  expect([seen.buyer, seen.cost, seen.visits[0]?.brief, seen.independence]).toEqual([null, null, null, null]);
});
