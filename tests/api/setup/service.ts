import { existsSync, mkdirSync, mkdtempSync, readdirSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Type } from "@nestjs/common";
import type { NestFastifyApplication } from "@nestjs/platform-fastify";
import { afterAll, beforeAll, beforeEach } from "vitest";
import { createApp } from "../../../apps/api/src/app.ts";
import type { Clock } from "../../../apps/api/src/platform/clock/index.ts";
import { parseConfig } from "../../../apps/api/src/platform/config/index.ts";
import { cloneDatabase, empty, worker, workerDatabase } from "./database.ts";

export type Service = {
  readonly app: NestFastifyApplication;
  readonly url: string;
  readonly databaseUrl: string;
  readonly mailFolder: string;
  /** Of pictures and documents. */
  readonly filesFolder: string;
};

export const unlimited = {
  REQUESTS_BY_ADDRESS: "1000000000",
  REQUESTS_BY_ACCOUNT: "1000000000",
  COSTLY_REQUESTS_BY_ACCOUNT: "1000000000",
  HOLDS_OF_A_BUYER: "1000",
};

/** A key that signs in tests only; its seed is 32 zeros. */
export const recordKeys = JSON.stringify([
  { from: "2000-01-01T00:00:00Z", private: Buffer.alloc(32).toString("base64") },
]);

export const testConfig = (databaseUrl: string, more: Readonly<Record<string, string>> = {}) =>
  parseConfig({
    DATABASE_URL: databaseUrl,
    LOG_LEVEL: process.env["TEST_LOG_LEVEL"] ?? "silent",
    JOBS: "off",
    DATABASE_POOL: "8",
    RECORD_KEYS: recordKeys,
    // A test asks more in a minute than any person; what tries the limits sets its own.
    ...unlimited,
    ...more,
  });

export type ServiceOptions = {
  /** Further modules, such as a test's own controllers. */
  modules?: readonly Type[];
  environment?: Readonly<Record<string, string>>;
  /** The hour, where a test sets it. */
  clock?: Clock;
  /** `true` where what other files left with the workers' jobs would be met. */
  alone?: boolean;
  /** `false` where one scene serves a whole file. */
  emptyBetween?: boolean;
};

type Started = Service & { readonly stop: () => Promise<void> };

async function start(
  databaseUrl: string,
  { modules = [], environment = {}, clock }: ServiceOptions = {},
): Promise<Started> {
  const folder = mkdtempSync(join(tmpdir(), "evenhand-service-"));
  const [mailFolder, filesFolder] = [join(folder, "mail"), join(folder, "files")];
  mkdirSync(mailFolder);
  const folders = { MAIL_FOLDER: mailFolder, STORAGE_FOLDER: filesFolder };
  const config = testConfig(databaseUrl, { ...folders, ...environment });
  const app = await createApp(config, { modules, ...(clock === undefined ? {} : { clock }) });
  await app.listen(0, "127.0.0.1");
  const url = (await app.getUrl()).replace("[::1]", "127.0.0.1");
  const stop = async (): Promise<void> => {
    await app.close();
    rmSync(folder, { recursive: true, force: true });
  };
  return { app, url, databaseUrl, mailFolder, filesFolder, stop };
}

const filesIn = (...folders: readonly string[]): string[] =>
  folders
    .filter((folder) => existsSync(folder))
    .flatMap((folder) => readdirSync(folder, { recursive: true, withFileTypes: true }))
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name));

let common: Promise<Started> | undefined;
/** The service of the files that ask for nothing else: one a worker, which ends with it. Starting costs a second each time. */
async function commonService(): Promise<Started> {
  const service = await (common ??= cloneDatabase(`common_${worker}`).then((url) => start(url)));
  await empty(service.databaseUrl);
  filesIn(service.mailFolder, service.filesFolder).forEach((file) => rmSync(file));
  return { ...service, stop: async () => {} };
}

/**
 * The whole service, listening on a free port; what it knows is emptied before each test.
 *
 * @returns a function that gives it, from the first test on
 */
export function useService({
  emptyBetween = true,
  alone = false,
  ...own
}: ServiceOptions = {}): () => Service {
  let service: Started | undefined;
  const get = (): Started => {
    if (service === undefined) throw new Error("The service is up from the first test on.");
    return service;
  };
  beforeAll(async () => {
    service =
      Object.keys(own).length === 0 && !alone
        ? await commonService()
        : await start(await workerDatabase(), own);
  });
  beforeEach(async () => {
    if (emptyBetween) await empty(get().databaseUrl);
  });
  afterAll(() => service?.stop());
  return get;
}
