import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Type } from "@nestjs/common";
import type { NestFastifyApplication } from "@nestjs/platform-fastify";
import { afterAll, beforeAll, beforeEach } from "vitest";
import { createApp } from "../../../apps/api/src/app.ts";
import type { Clock } from "../../../apps/api/src/platform/clock/index.ts";
import { parseConfig } from "../../../apps/api/src/platform/config/index.ts";
import { empty, workerDatabase } from "./database.ts";

export type Service = {
  readonly app: NestFastifyApplication;
  readonly url: string;
  readonly databaseUrl: string;
  readonly mailFolder: string;
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
  /** `false` where one scene serves a whole file. */
  emptyBetween?: boolean;
};

/**
 * The whole service, listening on a free port, on the worker's own database; emptied before each test.
 *
 * @returns a function that gives it, from the first test on
 */
export function useService({
  modules = [],
  environment = {},
  clock,
  emptyBetween = true,
}: ServiceOptions = {}): () => Service {
  let service: Service | undefined;
  const mailFolder = mkdtempSync(join(tmpdir(), "evenhand-mail-"));
  const get = (): Service => {
    if (service === undefined) throw new Error("The service is up from the first test on.");
    return service;
  };
  beforeAll(async () => {
    const databaseUrl = await workerDatabase();
    const app = await createApp(
      testConfig(databaseUrl, {
        MAIL_FOLDER: mailFolder,
        STORAGE_FOLDER: join(mailFolder, "files"),
        ...environment,
      }),
      {
        modules,
        ...(clock === undefined ? {} : { clock }),
      },
    );
    await app.listen(0, "127.0.0.1");
    service = { app, url: (await app.getUrl()).replace("[::1]", "127.0.0.1"), databaseUrl, mailFolder };
  });
  beforeEach(async () => {
    if (emptyBetween) await empty(get().databaseUrl);
  });
  afterAll(async () => {
    await service?.app.close();
    rmSync(mailFolder, { recursive: true, force: true });
  });
  return get;
}
