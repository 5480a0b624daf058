import { connect, createServer, type Socket } from "node:net";
import { join } from "node:path";
import { type PlainProcess, startProcess } from "../../api/setup/plain-process.ts";
import { recordKeys, unlimited } from "../../api/setup/service.ts";
import { type KillPoint, openGate } from "./statement-gate.ts";

/** A service in a process of its own that is killed between two statements, and another in its place under the same address. */
export type Killable = {
  /** Where the service is reached, whichever process it is. */
  readonly url: string;
  /** Does the work with a service that is killed at the point, and gives which statement that was. @throws Error where it was not killed */
  readonly killedDuring: (point: KillPoint, work: () => Promise<unknown>) => Promise<number>;
  /** The same with a worker that is started for it, while it moves what asks for `about`. */
  readonly workerKilled: (point: KillPoint, about: RegExp) => Promise<number>;
  /** A worker that does what is in line until this holds. */
  readonly worksUntil: (holds: () => Promise<void>) => Promise<void>;
  readonly close: () => Promise<void>;
};

/** Hands every connection to whichever port is the service's now: people go on asking the same address. */
async function openDoor(port: () => Promise<number>): Promise<{ url: string; close: () => Promise<void> }> {
  const pass = async (asking: Socket): Promise<void> => {
    const answering = connect(await port(), "127.0.0.1");
    for (const [one, other] of [
      [asking, answering],
      [answering, asking],
    ] as const) {
      one.on("error", () => {});
      one.on("close", () => other.destroy());
    }
    asking.pipe(answering).pipe(asking);
  };
  const server = createServer((asking) => void pass(asking));
  await new Promise<void>((resolve) => void server.listen(0, "127.0.0.1", resolve));
  const address = server.address();
  if (address === null || typeof address === "string") throw new Error("The door is at no port.");
  return {
    url: `http://127.0.0.1:${String(address.port)}`,
    close: () => new Promise((resolve) => void server.close(() => resolve())),
  };
}

type Running = { readonly process: PlainProcess; readonly port: Promise<number> };

/**
 * @param folder where letters and files are kept
 * @param kills how many services will be killed: so many others are started, each while the one before it is still there
 */
export async function startKillable(databaseUrl: string, folder: string, kills: number): Promise<Killable> {
  const gate = await openGate(databaseUrl);
  const environment = {
    DATABASE_URL: gate.url,
    DATABASE_POOL: "4",
    MAIL_FOLDER: join(folder, "mail"),
    STORAGE_FOLDER: join(folder, "files"),
    LOG_LEVEL: "silent",
    RECORD_KEYS: recordKeys,
    ...unlimited,
  };
  const start = (): Running => {
    const words = ["node", "apps/api/dist/main.js", "serve"];
    const process = startProcess(words, { ...environment, PORT: "0", JOBS: "off" });
    const port = process.says(/answers at \S+:(\d+)/).then(([, found]) => Number(found));
    return { process, port };
  };
  let [running, next, left] = [start(), start(), kills - 1];
  const door = await openDoor(() => running.port);
  /** The one that was started meanwhile takes its place. */
  const replace = (): void => {
    running = next;
    if (left > 0) next = start();
    left -= 1;
  };
  const startWorker = () => startProcess(["node", "apps/api/dist/main.js", "work"], environment);
  return {
    url: door.url,
    killedDuring: async (point, work) => {
      await running.port;
      const { process } = running;
      const killing: Promise<void>[] = [];
      gate.arm(point, () => {
        killing.push(process.stop("SIGKILL"));
      });
      await work().catch((error: unknown) => {
        if (!(error instanceof Error && /ECONN|EPIPE|hang up/.test(error.message))) throw error;
      });
      const asked = gate.disarm();
      if (killing.length === 0)
        throw new Error(`${JSON.stringify(point)} never came in ${asked} statements.`);
      await Promise.all(killing);
      replace();
      return asked;
    },
    workerKilled: async (point, about) => {
      const worker = startWorker();
      gate.arm(point, () => void worker.stop("SIGKILL"), about);
      await worker.ended;
      return gate.disarm();
    },
    worksUntil: async (holds) => {
      const worker = startWorker();
      await holds();
      await worker.stop("SIGKILL");
    },
    close: async () => {
      await Promise.all([running, next].map(({ process }) => process.stop("SIGKILL")));
      await door.close();
      await gate.close();
    },
  };
}
