import { beforeAll, beforeEach, expect, test } from "vitest";
import {
  admit,
  type BookingWorld,
  calendarBody,
  findOffers,
  makeBookingWorld,
  newClock,
  weekdays,
} from "../setup/booking-story.ts";
import { query } from "../setup/database.ts";
import { useService } from "../setup/service.ts";

const service = useService({ clock: newClock(), emptyBetween: false });
let world: BookingWorld;
let bad: string;
let kept: unknown;
beforeAll(async () => {
  world = await makeBookingWorld(service());
  bad = await admit(world.inspector, world.operator, { name: "Bo Torn" });
  const [row] = await query<{ hours: unknown }>(
    service().databaseUrl,
    "SELECT hours FROM inspector_calendar WHERE id = $1",
    [bad],
  );
  kept = row?.hours;
});
const store = (table: string, id: string, hours: unknown) =>
  query(service().databaseUrl, `UPDATE ${table} SET hours = $2::jsonb WHERE id = $1`, [
    id,
    JSON.stringify(hours),
  ]);
beforeEach(() => store("inspector_calendar", bad, kept));

const offering = async () => [
  ...new Set((await findOffers(world.buyer, world.vehicle)).offers.map(({ inspector }) => inspector)),
];
const rule = (more: object) => ({ ...weekdays("06:00", "20:00"), rdates: [], exdates: [], ...more });
const zone = "America/Chicago";
const torn: Readonly<Record<string, unknown>> = {
  "a rule nobody can lay out": { zone, open: [rule({ rrule: "FREQ=NEVER" })], away: [] },
  "a zone that is none": { zone: "Mars/Olympus", open: [rule({})], away: [] },
  "a rule that gives out": {
    zone,
    open: [rule({ opens: "2000-01-13T09:00:00", rrule: "FREQ=DAILY;COUNT=65;BYMONTHDAY=-22;BYDAY=WE" })],
    away: [],
  },
  "a time that is none": { zone, open: [rule({ opens: "soon" })], away: [] },
  "no rules at all": { zone },
  "not even an object": 7,
};

test.each(Object.entries(torn))(
  "%s, put past the service into one calendar, takes that inspector's hours away and nobody else's",
  async (_, hours) => {
    expect((await offering()).toSorted()).toEqual([world.calendar, bad].toSorted());
    await store("inspector_calendar", bad, hours);
    expect(await offering()).toEqual([world.calendar]);
    const day = { path: { id: world.vehicle }, query: { date: "2027-05-05" } };
    const explained = await world.buyer.does("offers.explain", day);
    expect(explained.hours.some(({ offeredBy }) => offeredBy.includes(world.calendar))).toBe(true);
    const look = { path: { id: bad }, query: { from: "2027-05-03", until: "2027-05-09" } };
    const told = await world.inspector.isRefused("calendars.days", look);
    expect([told.code, told.problems?.[0]?.at]).toEqual(["hours-unreadable", "/hours"]);
  },
);

test("whoever enters hours that could not be searched hears of it then, rule by rule", async () => {
  const counting = {
    opens: "2000-01-13T09:00:00",
    closes: "17:00",
    rrule: "FREQ=DAILY;COUNT=65;BYMONTHDAY=-22;BYDAY=WE",
  };
  const open = [weekdays("06:00", "20:00"), counting];
  const body = calendarBody(world.inspector, { hours: { zone, open } });
  const refused = await world.inspector.isRefused("calendars.create", { body });
  expect([refused.code, refused.problems?.[0]?.at]).toEqual(["hours-unreadable", "/hours/open/1"]);
  const many = Array.from({ length: 31 }, () => weekdays("06:00", "20:00"));
  const crowded = await world.inspector.isRefused("calendars.create", {
    body: calendarBody(world.inspector, { hours: { zone, open: many } }),
  });
  expect([crowded.code, crowded.problems?.[0]?.at]).toEqual(["invalid-fields", "/hours/open"]);
});

test("nobody's hours are asked for as far ahead as they are laid out for nobody", async () => {
  const far = { from: "2028-05-05", until: "2028-05-06" };
  const refused = await world.buyer.isRefused("offers.list", { path: { id: world.vehicle }, query: far });
  expect([refused.code, refused.problems?.[0]?.at]).toEqual(["invalid-fields", "query/until"]);
  const one = { path: { id: world.vehicle }, query: { date: "2199-05-05" } };
  expect((await world.buyer.isRefused("offers.explain", one)).problems?.[0]?.at).toBe("query/date");
});

test("hours of a site that cannot be laid out are a refusal where they are asked for", async () => {
  const [row] = await query<{ hours: unknown }>(
    service().databaseUrl,
    "SELECT hours FROM site WHERE id = $1",
    [world.site],
  );
  for (const hours of [torn["a zone that is none"], torn["no rules at all"], torn["not even an object"]]) {
    await store("site", world.site, hours);
    const refused = await world.buyer.isRefused("offers.list", { path: { id: world.vehicle } });
    expect(refused.code).toBe("hours-unreadable");
  }
  await store("site", world.site, row?.hours);
});
