import { once } from "node:events";
import { simpleParser } from "mailparser";
import { SMTPServer } from "smtp-server";
import { afterAll, beforeEach, expect, test } from "vitest";
import { SmtpMailer } from "../../apps/api/src/platform/mail/mailer.ts";
import { Outbox } from "../../apps/api/src/platform/mail/outbox.ts";
import { query } from "./setup/database.ts";
import { useService } from "./setup/service.ts";
import { makePerson } from "./setup/world.ts";

/** How the mail server behaves: how long it takes to say that it has the letter, and whether it takes it. */
let behavior = { takesMs: 0, refuses: false };
const received: string[] = [];
const server = new SMTPServer({
  authOptional: true,
  disabledCommands: ["STARTTLS"],
  onData: (stream, _session, done) => {
    const parts: Buffer[] = [];
    stream.on("data", (part: Buffer) => parts.push(part));
    stream.on("end", () => {
      const { takesMs, refuses } = behavior;
      if (!refuses) received.push(Buffer.concat(parts).toString());
      setTimeout(() => done(refuses ? new Error("Not now") : null), takesMs);
    });
  },
});
const listening = server.listen(0, "127.0.0.1");
await once(listening, "listening");
const at = listening.address();
const port = typeof at === "object" && at !== null ? at.port : 0;
afterAll(
  () =>
    new Promise<void>((resolve) => {
      server.close(() => resolve());
    }),
);

const statementTimeout = 1_000;
const service = useService({
  environment: {
    MAIL: "smtp",
    SMTP_URL: `smtp://127.0.0.1:${port}`,
    STATEMENT_TIMEOUT_MS: String(statementTimeout),
  },
});
const outbox = () => service().app.get(Outbox, { strict: false });
type Row = { id: string; state: string; attempts: number; claimed_until: Date | null };
const letters = () =>
  query<Row>(service().databaseUrl, "SELECT id, state, attempts, claimed_until FROM mail");

let id = "";
beforeEach(async () => {
  received.length = 0;
  behavior = { takesMs: 0, refuses: false };
  const delia = await makePerson(service(), "dealer", "Delia");
  const body = { email: "nils@example.com", organization: delia.organization, role: "member" };
  await delia.does("invitations.create", { body });
  id = (await letters())[0]?.id ?? "";
});

test("a slow server gets one copy, however many try and however long a transaction may take", async () => {
  behavior = { takesMs: 3 * statementTimeout, refuses: false };
  const tries = await Promise.allSettled([outbox().deliver(id), outbox().deliver(id), outbox().deliver(id)]);
  expect(tries.filter(({ status }) => status === "fulfilled")).toHaveLength(1);
  await outbox().deliver(id);
  expect(received).toHaveLength(1);
  expect((await simpleParser(received[0] ?? "")).text).toContain("/invitation/");
  expect(await letters()).toMatchObject([{ state: "sent", attempts: 1, claimed_until: null }]);
});

test("while a letter is being sent nothing in the database is held", async () => {
  behavior = { takesMs: 2 * statementTimeout, refuses: false };
  const sending = outbox().deliver(id);
  while (received.length === 0) await new Promise((resolve) => void setTimeout(resolve, 20));
  const open = await query(
    service().databaseUrl,
    "SELECT 1 FROM pg_stat_activity WHERE datname = current_database() AND state LIKE 'idle in transaction%'",
  );
  expect(open).toEqual([]);
  expect(await query(service().databaseUrl, "SELECT 1 FROM mail FOR UPDATE NOWAIT")).toHaveLength(1);
  await sending;
});

test("a letter that is refused waits, and is sent at the next try", async () => {
  behavior = { takesMs: 0, refuses: true };
  await expect(outbox().deliver(id)).rejects.toThrow(/Not now/);
  expect(await letters()).toMatchObject([{ state: "waiting", claimed_until: null }]);
  behavior = { takesMs: 0, refuses: false };
  await outbox().deliver(id);
  expect(received).toHaveLength(1);
});

test("the claim of one who was killed runs out, and the letter is sent", async () => {
  await query(service().databaseUrl, "UPDATE mail SET claimed_until = now() + interval '1 minute'");
  await expect(outbox().deliver(id)).rejects.toThrow(/being sent/);
  await query(service().databaseUrl, "UPDATE mail SET claimed_until = now() - interval '1 second'");
  await outbox().deliver(id);
  expect(received).toHaveLength(1);
});

test("a sending that is stopped ends at once, whatever the server does", async () => {
  behavior = { takesMs: 60_000, refuses: false };
  const stop = new AbortController();
  const mailer = new SmtpMailer(`smtp://127.0.0.1:${port}`, "Evenhand <no-reply@evenhand.example>");
  const letter = { id: "0198-b", recipient: "bea@example.com", subject: "Hello", body: "Stopped." };
  const sending = Promise.allSettled([mailer.send(letter, stop.signal)]);
  while (received.length === 0) await new Promise((resolve) => void setTimeout(resolve, 20));
  stop.abort(new Error("another has it"));
  expect(await sending).toMatchObject([
    { status: "rejected", reason: { message: "The sending was stopped." } },
  ]);
});
