import { z } from "zod";
import type { Client } from "../database.ts";
import { closeConnections, type Target } from "./load.ts";
import { runService, startFloor, startService } from "./programs.ts";

/** The service over the demo's world, the floor beside it, and a buyer signed in. */
export type Ground = {
  readonly client: Client;
  readonly service: Target;
  readonly floor: Target;
  readonly organizations: readonly string[];
  readonly comparison: string;
  readonly vehicle: string;
  readonly report: string;
};

/** What the service prints once the demo's world is there. */
const Guide = z.object({
  main: z.object({
    comparison: z.string(),
    viewer: z.object({ email: z.string(), password: z.string() }),
  }),
});

async function signIn(address: string, person: { email: string; password: string }): Promise<string> {
  const answer = await fetch(`${address}/api/v1/sessions`, {
    method: "POST",
    headers: { "content-type": "application/json", origin: new URL(address).origin },
    body: JSON.stringify(person),
  });
  if (!answer.ok) throw new Error(`Signing in was refused: ${await answer.text()}`);
  return answer.headers
    .getSetCookie()
    .map((one) => one.split(";")[0])
    .join("; ");
}

async function firstRow<R extends object>(client: Client, text: string, values: unknown[]): Promise<R> {
  const { rows } = await client.query<R>(text, values);
  const [row] = rows;
  if (row === undefined) throw new Error("the demo's world lacks what is measured");
  return row;
}

/** Everything of it is stopped when the work ends, however it ends. */
export async function withGround<T>(
  client: Client,
  url: string,
  work: (ground: Ground) => Promise<T>,
): Promise<T> {
  const env = {
    DATABASE_URL: url,
    PORT: "0",
    LOG_LEVEL: "warn",
    MAIL: "file",
    NODE_ENV: "production",
    // What is measured asks more in a minute than any person.
    REQUESTS_BY_ADDRESS: "1000000000",
    REQUESTS_BY_ACCOUNT: "1000000000",
    COSTLY_REQUESTS_BY_ACCOUNT: "1000000000",
  };
  await runService("migrate", env);
  const { main } = Guide.parse(JSON.parse(await runService("load-demo", env)));
  const { organizations } = await firstRow<{ organizations: string[] }>(
    client,
    `SELECT array_agg(m.organization_id) AS organizations FROM membership m
     JOIN account a ON a.id = m.account_id WHERE a.email = $1`,
    [main.viewer.email],
  );
  const { vehicle, report } = await firstRow<{ vehicle: string; report: string }>(
    client,
    "SELECT vehicle_id AS vehicle, a_id AS report FROM comparison WHERE id = $1",
    [main.comparison],
  );
  const service = await startService(env);
  try {
    const floor = await startFloor(env);
    try {
      const cookie = await signIn(service.address, main.viewer);
      return await work({
        client,
        service: { served: service, cookie },
        floor: { served: floor, cookie },
        organizations,
        comparison: main.comparison,
        vehicle,
        report,
      });
    } finally {
      await floor.stop();
    }
  } finally {
    closeConnections();
    await service.stop();
  }
}
