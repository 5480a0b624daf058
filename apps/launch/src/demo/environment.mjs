import { join } from "node:path";
import { dataFolder } from "./data-folder.mjs";

const firstPort = "4870";

/** What the service is told in the demo; what the person's own environment says goes before it. */
export function demoEnvironment(databaseUrl) {
  return {
    DATABASE_URL: databaseUrl,
    PORT: process.env.PORT ?? firstPort,
    LOG_LEVEL: process.env.LOG_LEVEL ?? "warn",
    RECORD_KEYS_FILE: process.env.RECORD_KEYS_FILE ?? join(dataFolder, "record-keys.json"),
    MAIL: "file",
    MAIL_FOLDER: join(dataFolder, "outbox"),
  };
}
