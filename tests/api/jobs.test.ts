import { once } from "node:events";
import type { NestFastifyApplication } from "@nestjs/platform-fastify";
import { SMTPServer } from "smtp-server";
import { afterAll, beforeAll, expect, test } from "vitest";
import { createApp } from "../../apps/api/src/app.ts";
import { Database } from "../../apps/api/src/platform/database/database.ts";
import { Outbox } from "../../apps/api/src/platform/mail/outbox.ts";
import { hold, makeBookingWorld, monday, newClock } from "./setup/booking-story.ts";
import { query } from "./setup/database.ts";
import { testConfig, useService } from "./setup/service.ts";
import { until } from "./setup/until.ts";

/** Letters are taken only when so many are being sent at once. */
const together = 10;
const received: string[] = [];
const waiting: (() => void)[] = [];
let [sending, mostAtOnce] = [0, 0];
let holdsBack = true;

/** The letter is kept; the answer comes when enough others are on their way, or at once when all have come. */
function answer(done: (error?: Error | null) => void, refuses: boolean): void {
  waiting.push(() => {
    sending -= 1;
    done(refuses ? new Error("Not this one") : null);
  });
  if (holdsBack && sending < together) return;
  holdsBack = false;
  for (const go of waiting.splice(0)) setImmediate(go);
}

const server = new SMTPServer({
  authOptional: true,
  disabledCommands: ["STARTTLS"],
  onData: (stream, { envelope }, done) => {
    sending += 1;
    mostAtOnce = Math.max(mostAtOnce, sending);
    stream.resume().on("end", () => {
      const recipient = envelope.rcptTo[0]?.address ?? "";
      received.push(recipient);
      answer(done, recipient.startsWith("refused"));
    });
  },
});

const clock = newClock();
const service = useService({ clock, emptyBetween: false });
const on = <R extends object>(text: string, values: unknown[] = []) =>
  query<R>(service().databaseUrl, text, values);
let worker: NestFastifyApplication;
let appointment = "";

/** Put in line in one transaction while nobody works, so that they are fetched together. */
function writeLetters(recipients: readonly string[]): Promise<void> {
  const { app } = service();
  const outbox = app.get(Outbox, { strict: false });
  return app.get(Database, { strict: false }).transaction(async (tx) => {
    for (const recipient of recipients)
      await outbox.enqueue(tx, { recipient, subject: "An invitation", body: "Come in." });
  });
}

const invited = Array.from({ length: 60 }, (_, i) => `guest-${String(i)}@example.com`);

beforeAll(async () => {
  const world = await makeBookingWorld(service());
  appointment = await hold(world.buyer, world.vehicle);
  await writeLetters([...invited.slice(0, 3), "refused@example.com", ...invited.slice(3)]);
  // The job that would have ended the hold is lost.
  await on("DELETE FROM pgboss.job WHERE name = 'appointment'");
  clock.set(new Date(monday.getTime() + 11 * 60_000));
  server.listen(0, "127.0.0.1");
  await once(server.server, "listening");
  const at = server.server.address();
  const more = {
    JOBS: "on",
    MAIL: "smtp",
    SMTP_URL: `smtp://127.0.0.1:${typeof at === "object" ? at?.port : 0}`,
  };
  worker = await createApp(testConfig(service().databaseUrl, more), { clock });
});
afterAll(async () => {
  await worker.close();
  await new Promise<void>((resolve) => {
    server.close(() => resolve());
  });
});

test("sixty invitations go out ten at a time, each once", async () => {
  await until(() => invited.every((each) => received.includes(each)));
  expect(received.filter((each) => each.startsWith("guest"))).toHaveLength(invited.length);
  expect(mostAtOnce).toBe(together);
  await until(async () => (await on("SELECT 1 FROM mail WHERE state = 'sent'")).length === invited.length);
});

test("a letter that is refused waits for its next try, and none that was fetched with it does", async () => {
  const tried =
    "SELECT m.recipient FROM pgboss.job j JOIN mail m ON m.id::text = j.data ->> 'id' WHERE j.state";
  await until(async () => (await on(`${tried} = 'completed'`)).length === invited.length);
  expect(await on(`${tried} = 'retry'`)).toEqual([{ recipient: "refused@example.com" }]);
  expect(await on("SELECT recipient FROM mail WHERE state = 'waiting'")).toEqual([
    { recipient: "refused@example.com" },
  ]);
});

test("an appointment whose job was lost is looked at all the same, by a sweep that runs every minute", async () => {
  expect(await on("SELECT cron FROM pgboss.schedule WHERE name = 'appointment-sweep'")).toEqual([
    { cron: "* * * * *" },
  ]);
  const state = async () =>
    (await on<{ state: string }>("SELECT state FROM appointment WHERE id = $1", [appointment]))[0]?.state;
  expect(await state()).toBeDefined();
  await until(async () => (await state()) === "expired");
});
