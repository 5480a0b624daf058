import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type ParsedMail, simpleParser } from "mailparser";
import { SMTPServer } from "smtp-server";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { FileMailer, type Mailer, mailerOf, SmtpMailer } from "../../apps/api/src/platform/mail/mailer.ts";
import { Outbox } from "../../apps/api/src/platform/mail/outbox.ts";
import { query } from "./setup/database.ts";
import { testConfig, useService } from "./setup/service.ts";
import { inspect } from "./setup/story.ts";
import { emailOf, makeWorld } from "./setup/world.ts";

const from = "Evenhand <no-reply@evenhand.example>";
const received: Buffer[] = [];
const folder = mkdtempSync(join(tmpdir(), "evenhand-mail-"));
const server = new SMTPServer({
  authOptional: true,
  disabledCommands: ["STARTTLS"],
  onData: (stream, _session, done) => {
    const parts: Buffer[] = [];
    stream.on("data", (part: Buffer) => parts.push(part));
    stream.on("end", () => {
      received.push(Buffer.concat(parts));
      done();
    });
  },
});
let smtpUrl = "";
beforeAll(async () => {
  await new Promise<void>((resolve) => void server.listen(0, "127.0.0.1", resolve));
  const address = server.server.address();
  smtpUrl = `smtp://127.0.0.1:${typeof address === "object" && address !== null ? address.port : 0}`;
});
afterAll(async () => {
  await new Promise<void>((resolve) => {
    server.close(() => resolve());
  });
  rmSync(folder, { recursive: true, force: true });
});

const ways: readonly { name: string; mailer: () => Mailer; last: () => Buffer }[] = [
  {
    name: "a file",
    mailer: () => new FileMailer(folder, from),
    last: () => readFileSync(join(folder, readdirSync(folder).toSorted().at(-1) ?? "")),
  },
  {
    name: "SMTP",
    mailer: () => new SmtpMailer(smtpUrl, from),
    last: () => received.at(-1) ?? Buffer.alloc(0),
  },
];

describe.each(ways)("mail by $name", ({ mailer, last }) => {
  const message = {
    id: "0198-a",
    recipient: "bea@example.com",
    subject: "Prüfung — ready",
    body: "Zeile eins\n.\nlast",
  };
  const read = async (): Promise<ParsedMail> => simpleParser(last());

  test("arrives as it was written", async () => {
    await mailer().send(message);
    const mail = await read();
    expect([mail.subject, mail.text?.trim(), mail.messageId]).toEqual([
      message.subject,
      message.body,
      "<0198-a@evenhand.example>",
    ]);
    expect([mail.to].flat()[0]?.text).toBe("bea@example.com");
  });

  test("a subject with a line break makes no further header", async () => {
    await mailer().send({ ...message, subject: "Hello\r\nBcc: eve@example.com" });
    const mail = await read();
    expect(mail.bcc).toBeUndefined();
    expect(mail.headers.has("bcc")).toBe(false);
  });
});

const by = (more: Record<string, string>) => mailerOf(testConfig("postgresql://127.0.0.1/none", more));

test("MAIL decides how letters go out, whatever else is set", () => {
  expect(by({ SMTP_URL: smtpUrl })).toBeInstanceOf(FileMailer);
  expect(by({ SMTP_URL: smtpUrl, MAIL: "file" })).toBeInstanceOf(FileMailer);
  expect(by({ SMTP_URL: smtpUrl, MAIL: "smtp" })).toBeInstanceOf(SmtpMailer);
});

const service = useService({ environment: { JOBS: "on" } });

async function until(holds: () => Promise<boolean>): Promise<void> {
  const end = Date.now() + 20_000;
  while (!(await holds())) {
    if (Date.now() > end) throw new Error("It did not happen within twenty seconds.");
    await new Promise((resolve) => void setTimeout(resolve, 100));
  }
}

test("what happens is told by mail in the transaction that makes it happen, and sent by a job", async () => {
  const world = await makeWorld(service());
  const made = await inspect(world);
  const waiting = async () => query(service().databaseUrl, "SELECT 1 FROM mail WHERE state = 'waiting'");
  await until(async () => (await waiting()).length === 0);
  const files = readdirSync(service().mailFolder).toSorted();
  const mails = await Promise.all(
    files.map((file) => simpleParser(readFileSync(join(service().mailFolder, file)))),
  );
  expect(mails.map((mail) => [[mail.to].flat()[0]?.text, mail.subject])).toEqual([
    [emailOf("Ines"), "A buyer asks you to inspect a car."],
    [emailOf("Bea"), "An inspection you ordered was accepted."],
    [emailOf("Bea"), "An inspection report is sealed, and the comparison is ready."],
  ]);
  expect(mails.map((mail) => mail.text).join()).not.toMatch(/horn|tread|Uthwick|A7K/);
  for (const [at, path] of [
    `/orders/${made.order}`,
    `/orders/${made.order}`,
    `/comparisons/${made.comparison}`,
  ].entries())
    expect(mails[at]?.text?.trimEnd().endsWith(path)).toBe(true);
});

test("a mail that is out is forgotten but for the fact, and never sent twice", async () => {
  const world = await makeWorld(service());
  const body = { email: "nils@example.com", organization: world.dealer.organization, role: "member" };
  await world.dealer.does("invitations.create", { body });
  const sent = async () =>
    query<{ id: string; body: string | null }>(
      service().databaseUrl,
      "SELECT id, body FROM mail WHERE state = 'sent'",
    );
  await until(async () => (await sent()).length === 1);
  const [mail] = await sent();
  expect(mail?.body).toBeNull();
  const before = readdirSync(service().mailFolder).length;
  await service()
    .app.get(Outbox, { strict: false })
    .deliver(mail?.id ?? "");
  expect(readdirSync(service().mailFolder)).toHaveLength(before);
});

test("what happened also stands in the application, until it is read", async () => {
  const world = await makeWorld(service());
  const { comparison } = await inspect(world);
  const { items } = await world.buyer.does("notices.list");
  expect(items.map(({ kind, readAt }) => [kind, readAt])).toEqual([
    ["inspection-sealed", null],
    ["order-accepted", null],
  ]);
  expect(items[0]?.subject).toBe(comparison);
  const unread = async () => (await world.buyer.does("account.get")).unread;
  expect(await unread()).toBe(2);
  await world.otherBuyer.does("notices.read", { body: { only: items[0]?.id } });
  expect(await unread()).toBe(2);
  await world.buyer.does("notices.read", { body: { only: items[0]?.id } });
  const one = (await world.buyer.does("notices.list")).items;
  expect([await unread(), one[0]?.readAt === null, one[1]?.readAt]).toEqual([1, false, null]);
  await world.buyer.does("notices.read", { body: { upTo: items[0]?.id } });
  const again = await world.buyer.does("notices.list");
  expect(again.items.every(({ readAt }) => readAt !== null)).toBe(true);
  expect(await unread()).toBe(0);
  expect((await world.otherBuyer.does("notices.list")).items).toEqual([]);
});

test("a notice names its car as long as its reader may see it", async () => {
  const world = await makeWorld(service());
  await inspect(world);
  const seen = async () => (await world.inspector.does("notices.list")).items.map(({ car }) => car?.model);
  expect(await seen()).toEqual(["Alder"]);
  const { databaseUrl } = service();
  await query(databaseUrl, "UPDATE vehicle SET listed = false");
  await query(databaseUrl, "UPDATE inspection_order SET state = 'cancelled'");
  expect(await seen()).toEqual([undefined]);
});
