import { once } from "node:events";
import { SMTPServer } from "smtp-server";
import { afterAll, beforeAll, expect, test } from "vitest";
import { query } from "../api/setup/database.ts";
import { type PlainProcess, startProcess } from "../api/setup/plain-process.ts";
import { useService } from "../api/setup/service.ts";
import { until } from "../api/setup/until.ts";
import { makePerson } from "../api/setup/world.ts";
import { deadWorkers } from "./setup/dead-workers.ts";

/** Short in every run, where the minute that has to pass is brought about; at full length it is waited for. */
const full = process.env["FAULTS"] === "full";

/** The first worker's letter is taken in and never answered; later ones are. */
let answersNow = false;
const received: string[] = [];
const server = new SMTPServer({
  authOptional: true,
  disabledCommands: ["STARTTLS"],
  onData: (stream, { envelope }, done) => {
    stream.resume().on("end", () => {
      received.push(envelope.rcptTo[0]?.address ?? "");
      if (answersNow) done();
    });
  },
});
const service = useService({ alone: true });
const workers: PlainProcess[] = [];
const on = <R extends object>(text: string) => query<R>(service().databaseUrl, text);

beforeAll(async () => {
  server.listen(0, "127.0.0.1");
  await once(server.server, "listening");
});
afterAll(async () => {
  await Promise.all(workers.map((each) => each.stop("SIGKILL")));
  await new Promise<void>((resolve) => {
    server.close(() => resolve());
  });
});

async function startWorker(): Promise<PlainProcess> {
  const at = server.server.address();
  const worker = startProcess(["node", "apps/api/dist/main.js", "work"], {
    DATABASE_URL: service().databaseUrl,
    MAIL: "smtp",
    SMTP_URL: `smtp://127.0.0.1:${typeof at === "object" ? String(at?.port) : "0"}`,
    LOG_LEVEL: "silent",
  });
  workers.push(worker);
  await worker.says(/works/);
  return worker;
}

/** What was last said is made older, the dead are looked for now, and the pause before another try is over. */
async function bringTheMinuteAbout(): Promise<void> {
  await on("UPDATE mail SET claimed_until = claimed_until - interval '31 seconds'");
  const dead = await deadWorkers(service().databaseUrl, "mail");
  await dead.makeSilent();
  expect(await dead.lookForThem()).toBe(1);
  await dead.stop();
}

test("what a killed worker had begun is begun again by another, and is done once", async () => {
  const first = await startWorker();
  const delia = await makePerson(service(), "dealer", "Delia");
  const body = { email: "nils@example.com", organization: delia.organization, role: "member" };
  await delia.does("invitations.create", { body });
  await until(() => received.length === 1);
  await first.stop("SIGKILL");
  expect(await on("SELECT state FROM mail")).toEqual([{ state: "waiting" }]);

  answersNow = true;
  if (!full) await bringTheMinuteAbout();
  await startWorker();
  await until(async () => (await on("SELECT 1 FROM mail WHERE state = 'sent'")).length === 1);
  expect(received).toEqual(["nils@example.com", "nils@example.com"]);
  expect(await on("SELECT attempts FROM mail")).toEqual([{ attempts: 2 }]);
  await until(
    async () =>
      (await on("SELECT 1 FROM pgboss.job WHERE name = 'mail' AND state = 'completed'")).length === 1,
  );
});
