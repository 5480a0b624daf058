import { chmodSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Client } from "pg";
import type { TestProject } from "vitest/node";
import { startEmbedded } from "../../../apps/api/src/platform/database/embedded.ts";
import { migrate } from "../../../apps/api/src/platform/database/migrations.ts";
import { migrateJobs } from "../../../apps/api/src/platform/jobs/queues.ts";

declare module "vitest" {
  interface ProvidedContext {
    /** Of the run's own server; the database `template` is migrated and never connected to. */
    databaseServer: string;
  }
}

const durable = ["fsync", "synchronous_commit", "full_page_writes"];

/** One real server a run, in a folder of its own on a free port, gone afterwards. Nothing of it needs to survive a power cut. */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  const folder = mkdtempSync(join(tmpdir(), "evenhand-tests-"));
  // Under root the server runs as another user, who must get in.
  chmodSync(folder, 0o711);
  const server = await startEmbedded(join(folder, "database"), "template");
  const stop = async () => {
    await server.stop();
    rmSync(folder, { recursive: true, force: true });
  };
  try {
    await forgetDurability(server.urlOf("postgres"));
    await migrate(server.url);
    await migrateJobs(server.url);
  } catch (error) {
    await stop();
    throw error;
  }
  project.provide("databaseServer", server.urlOf("postgres"));
  return stop;
}

async function forgetDurability(url: string): Promise<void> {
  const client = new Client({ connectionString: url });
  await client.connect();
  for (const setting of durable) await client.query(`ALTER SYSTEM SET ${setting} = off`);
  await client.query("SELECT pg_reload_conf()");
  await client.end();
}
