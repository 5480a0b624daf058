import { once } from "node:events";
import type { Readable } from "node:stream";
import { simpleParser, type ParsedMail } from "mailparser";
import ICAL from "ical.js";
import { sync } from "node-ical";
import { SMTPServer } from "smtp-server";
import request from "supertest";
import { afterAll, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { SmtpMailer } from "../../../apps/api/src/platform/mail/mailer.ts";
import { invitation } from "../../../apps/api/src/capabilities/booking/visit-calendar.ts";
import {
  accept,
  type BookingWorld,
  choose,
  confirm,
  findOffers,
  makeBookingWorld,
  monday,
  move,
  newClock,
  request as book,
} from "../setup/booking-story.ts";
import { query } from "../setup/database.ts";
import { useService } from "../setup/service.ts";
import { emailOf } from "../setup/world.ts";

const clock = newClock();
const service = useService({ clock });
let world: BookingWorld;
beforeEach(async () => {
  clock.set(monday);
  world = await makeBookingWorld(service());
});

type Sent = { recipient: string; subject: string; calendar: string; method: string };
const invitations = (to: string) =>
  query<Sent>(
    service().databaseUrl,
    "SELECT recipient, subject, calendar, method FROM mail WHERE calendar IS NOT NULL AND recipient = $1 ORDER BY calendar ~ 'CANCEL', id",
    [emailOf(to)],
  );

/** What two parsers that know nothing of each other make of it. */
function readBoth(text: string) {
  const calendar = new ICAL.Component(ICAL.parse(text));
  const events = calendar.getAllSubcomponents("vevent").map((each) => new ICAL.Event(each));
  const others = Object.values(sync.parseICS(text)).filter((each) => each?.type === "VEVENT");
  return { method: calendar.getFirstPropertyValue("method"), events, others };
}
const sequences = async (to: string) =>
  (await invitations(to)).map(({ calendar }) => readBoth(calendar).events[0]?.sequence);

test("buyer, inspector and dealer each get an invitation for themselves, which two parsers read alike", async () => {
  const id = await confirm(service(), world);
  const { start, end } = await world.buyer.does("appointments.get", { path: { id } });
  for (const name of ["Bea", "Ines", "Delia"]) {
    const [sent, ...more] = await invitations(name);
    expect(more).toEqual([]);
    const { method, events, others } = readBoth(sent?.calendar ?? "");
    expect([method, sent?.method]).toEqual(["REQUEST", "REQUEST"]);
    expect(events[0]?.uid).toBe(`${id}@evenhand.example`);
    expect(events[0]?.startDate.toJSDate().toISOString()).toBe(start);
    expect(events[0]?.endDate.toJSDate().toISOString()).toBe(end);
    expect(others).toMatchObject([{ uid: events[0]?.uid, status: "CONFIRMED", summary: events[0]?.summary }]);
    expect(others[0]).toHaveProperty("start", new Date(start));
    expect(events[0]?.attendees.map((each) => String(each.getFirstValue()).toLowerCase())).toEqual([
      `mailto:${emailOf(name)}`,
    ]);
  }
});

test("moving the visit sends a change, calling it off an end, and the sequence rises", async () => {
  const id = await confirm(service(), world);
  const { offers } = await findOffers(world.buyer, world.vehicle, { moving: id, from: "2027-05-11" });
  await move(service(), world.buyer, "appointments.reschedule", id, { offer: choose(offers[0]!) });
  await move(service(), world.buyer, "appointments.cancel", id, { cause: "buyer-withdrew" });
  const sent = await invitations("Ines");
  expect(sent.map(({ method }) => method)).toEqual(["REQUEST", "REQUEST", "CANCEL"]);
  expect((await sequences("Ines")).toSorted((a = 0, b = 0) => a - b)).toEqual([0, 1, 2]);
  const last = readBoth(sent[2]?.calendar ?? "");
  expect([last.method, last.others[0]]).toMatchObject(["CANCEL", { status: "CANCELLED" }]);
});

test("nothing goes out before the dealer has confirmed", async () => {
  await accept(service(), world);
  expect(await invitations("Bea")).toEqual([]);
});

const event = {
  id: "01920000-0000-7000-8000-000000000001",
  sequence: 0,
  hour: { start: Date.UTC(2027, 2, 14, 6), end: Date.UTC(2027, 2, 14, 10) },
  status: "confirmed" as const,
  stamp: monday,
};
const hostile = "Yard\r\nATTENDEE:mailto:mallory@example.com\nBEGIN:VEVENT\u2028;,\\";

test("what people write begins no property and no event", () => {
  const site = { name: hostile, address: hostile, latitude: 41.5, longitude: -88.1 };
  const to = { name: hostile, email: "bea@example.com" };
  const text = invitation({ ...event, site, cars: [hostile] }, "REQUEST", to, "no-reply@evenhand.example");
  const { events, others } = readBoth(text);
  expect([events.length, others.length]).toEqual([1, 1]);
  expect(events[0]?.attendees.map((each) => String(each.getFirstValue()).toLowerCase())).toEqual([
    "mailto:bea@example.com",
  ]);
  expect(text.replaceAll("\r\n ", "")).not.toMatch(/^(ATTENDEE:mailto:mallory|BEGIN:VEVENT\u2028)/m);
});

test("a visit across the change to daylight saving keeps its instants", () => {
  const site = { name: "Yard", address: "1 Plain Road", latitude: 41.5, longitude: -88.1 };
  const to = { name: "Bea", email: "bea@example.com" };
  const text = invitation({ ...event, site, cars: ["a car"] }, "REQUEST", to, "no-reply@evenhand.example");
  const { events, others } = readBoth(text);
  expect(events[0]?.startDate.toJSDate()).toEqual(new Date(event.hour.start));
  expect(others[0]).toHaveProperty("end", new Date(event.hour.end));
});

const make = async () =>
  world.inspector.does("calendarFeeds.create", {
    body: { organization: world.inspector.organization, calendar: world.calendar, name: "Telephone" },
  });

const read = (path: string) => request(service().url).get(path);

describe("a feed", () => {
  test("opens in two parsers, without a session, and shows what is asked and what is booked", async () => {
    const { path } = await make();
    const id = await book(service(), world);
    const answer = await read(path);
    expect(answer.headers["content-type"]).toBe("text/calendar; charset=utf-8");
    const asked = readBoth(answer.text);
    expect(asked.events.map(({ uid }) => uid)).toEqual([`${id}@evenhand.example`]);
    expect(asked.others).toMatchObject([{ status: "TENTATIVE" }]);
    expect(answer.text).not.toContain("Bea");
  });

  test("is gone once revoked, and for whoever left the firm", async () => {
    const { id, path } = await make();
    const other = await make();
    await world.inspector.does("calendarFeeds.revoke", { path: { id } });
    expect((await read(path)).status).toBe(404);
    expect((await read(other.path)).status).toBe(200);
    await query(service().databaseUrl, "DELETE FROM membership WHERE account_id = $1", [
      world.inspector.account,
    ]);
    expect((await read(other.path)).status).toBe(404);
  });

  test("stores no address that opens it", async () => {
    const { token } = await make();
    const [row] = await query<{ text: string }>(
      service().databaseUrl,
      "SELECT row_to_json(f)::text AS text FROM calendar_feed f",
    );
    expect(row?.text).not.toContain(token);
    expect((await world.inspector.ask("calendarFeeds.list")).text).not.toContain(token);
  });
});

describe("over SMTP", () => {
  const received: ParsedMail[] = [];
  const keep = async (stream: Readable) => {
    received.push(await simpleParser(stream));
  };
  const server = new SMTPServer({
    authOptional: true,
    disabledCommands: ["STARTTLS"],
    onData: (stream, _session, done) => {
      void keep(stream).finally(() => done());
    },
  });
  let url: string;
  beforeAll(async () => {
    server.listen(0, "127.0.0.1");
    await once(server.server, "listening");
    const address = server.server.address();
    url = `smtp://127.0.0.1:${typeof address === "object" && address !== null ? address.port : 0}`;
  });
  afterAll(() => new Promise<void>((resolve) => server.close(resolve)));

  test("an invitation arrives as one, its subject tells neither car nor person nor finding", async () => {
    received.length = 0;
    await confirm(service(), world);
    const mailer = new SmtpMailer(url, "Evenhand <no-reply@evenhand.example>");
    const sent = await query<Sent & { id: string; body: string }>(
      service().databaseUrl,
      "SELECT * FROM mail WHERE calendar IS NOT NULL AND recipient = $1",
      [emailOf("Bea")],
    );
    for (const { id, recipient, subject, body, calendar } of sent)
      await mailer.send({ id, recipient, subject, body, calendar: { method: "REQUEST", text: calendar } });
    const [mail] = received;
    expect(mail?.subject).toBe("An inspection visit for your calendar");
    const part = mail?.attachments.find(({ contentType }) => contentType === "text/calendar");
    expect(readBoth(part?.content.toString("utf8") ?? "").events).toHaveLength(1);
    const subjects = await query<{ subject: string }>(service().databaseUrl, "SELECT subject FROM mail");
    for (const { subject } of subjects)
      expect(subject).not.toMatch(/Uthwick|Alder|A7K214883|Bea|Ines|Delia|horn/);
  });

  test("a line break in a subject or a recipient begins no header", async () => {
    received.length = 0;
    const mailer = new SmtpMailer(url, "Evenhand <no-reply@evenhand.example>");
    await mailer.send({
      id: event.id,
      recipient: "bea@example.com",
      subject: "A visit\r\nBcc: mallory@example.com",
      body: "Words.",
    });
    expect(received[0]?.bcc).toBeUndefined();
    expect(received[0]?.headers.has("bcc")).toBe(false);
  });
});
