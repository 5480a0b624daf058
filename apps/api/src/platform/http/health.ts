import type { NestFastifyApplication } from "@nestjs/platform-fastify";
import { Database } from "../database/database.ts";
import { missingMigrations } from "../database/migrations.ts";
import { ProblemError } from "../problems/problem-error.ts";
import { sendProblem } from "../problems/problem-filter.ts";
import { Stopping } from "./stopping.ts";

/** `/health`: the process lives. `/ready`: it can do its work, which needs the database with every migration, and not to be stopping. */
export function registerHealth(app: NestFastifyApplication): void {
  const server = app.getHttpAdapter().getInstance();
  const [database, stopping] = [app.get(Database), app.get(Stopping)];
  server.get("/health", async () => ({ status: "alive" }));
  server.get("/ready", async (request, reply) => {
    const reason = stopping.isStopping ? "it is being stopped" : await whyNotReady(database);
    if (reason === null) return { status: "ready" };
    sendProblem(
      request,
      reply,
      new ProblemError("not-ready", `The service cannot do its work: ${reason}.`, {
        headers: { "retry-after": "5" },
      }),
    );
    return reply;
  });
}

async function whyNotReady(database: Database): Promise<string | null> {
  try {
    const missing = await missingMigrations(database.sharedPool);
    return missing.length === 0 ? null : "migrations are missing";
  } catch (error) {
    return error instanceof Error ? "the database does not answer" : "unknown";
  }
}
