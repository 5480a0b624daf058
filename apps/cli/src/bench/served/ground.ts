import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { z } from "zod";
import type { Client } from "../database.ts";
import { closeConnections, type Target } from "./load.ts";
import { runService, startFloor, startService } from "./programs.ts";

/** The service over the demo's world, the floor beside it, and a buyer signed in. */
export type Ground = {
  readonly client: Client;
  /** What the service was started with, for another beside it. */
  readonly env: Readonly<Record<string, string>>;
  /** Where the service keeps files. */
  readonly files: string;
  readonly service: Target;
  readonly floor: Target;
  readonly account: string;
  readonly organizations: readonly string[];
  readonly comparison: string;
  readonly vehicle: string;
  readonly report: string;
  readonly case: string;
  readonly people: Readonly<Record<Kind, BenchPerson>>;
};

type Kind = "buyer" | "dealer" | "inspector" | "operator";
/** Somebody signed in who is one of the four and nothing else. */
export type BenchPerson = { readonly cookie: string; readonly organizations: readonly string[] };

/** What the service prints once the demo's world is there. */
const Guide = z.object({
  accounts: z.array(z.object({ email: z.string(), password: z.string() })),
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

/** `$1` the kind. Of those who are nothing else, the one with the most cases. */
const busiest = `SELECT a.email, array_agg(o.id) AS organizations
  FROM account a JOIN membership m ON m.account_id = a.id JOIN organization o ON o.id = m.organization_id
  GROUP BY a.id, a.email HAVING bool_and(o.kind = $1::organization_kind)
  ORDER BY (SELECT count(*) FROM buyer_case c WHERE c.buyer_id = ANY(array_agg(o.id)) OR c.dealer_id = ANY(array_agg(o.id))
    OR EXISTS (SELECT 1 FROM inspection_order io WHERE io.vehicle_id = c.vehicle_id AND io.buyer_id = c.buyer_id
      AND io.inspector_id = ANY(array_agg(o.id)))) DESC, a.id LIMIT 1`;

async function signInBusiest(
  client: Client,
  address: string,
  accounts: z.infer<typeof Guide>["accounts"],
  kind: Kind,
): Promise<BenchPerson> {
  const { email, organizations } = await firstRow<{ email: string; organizations: string[] }>(
    client,
    busiest,
    [kind],
  );
  const password = accounts.find((each) => each.email === email)?.password ?? "";
  return { cookie: await signIn(address, { email, password }), organizations };
}

async function signInAll(client: Client, address: string, accounts: z.infer<typeof Guide>["accounts"]) {
  const each = (kind: Kind) => signInBusiest(client, address, accounts, kind);
  return {
    buyer: await each("buyer"),
    dealer: await each("dealer"),
    inspector: await each("inspector"),
    operator: await each("operator"),
  };
}

/** Everything of it is stopped when the work ends, however it ends. */
export async function withGround<T>(
  client: Client,
  url: string,
  work: (ground: Ground) => Promise<T>,
  more: Readonly<Record<string, string>> = {},
): Promise<T> {
  const files = mkdtempSync(join(tmpdir(), "evenhand-bench-files-"));
  const env = {
    DATABASE_URL: url,
    STORAGE_FOLDER: files,
    PORT: "0",
    LOG_LEVEL: "warn",
    MAIL: "file",
    NODE_ENV: "production",
    // What is measured asks more in a minute than any person.
    REQUESTS_BY_ADDRESS: "1000000000",
    REQUESTS_BY_ACCOUNT: "1000000000",
    COSTLY_REQUESTS_BY_ACCOUNT: "1000000000",
    ...more,
  };
  await runService("migrate", env);
  const { main, accounts } = Guide.parse(JSON.parse(await runService("load-demo", env)));
  const { account, organizations } = await firstRow<{ account: string; organizations: string[] }>(
    client,
    `SELECT a.id AS account, array_agg(m.organization_id) AS organizations FROM membership m
     JOIN account a ON a.id = m.account_id WHERE a.email = $1 GROUP BY a.id`,
    [main.viewer.email],
  );
  const { vehicle, report } = await firstRow<{ vehicle: string; report: string }>(
    client,
    "SELECT vehicle_id AS vehicle, a_id AS report FROM comparison WHERE id = $1",
    [main.comparison],
  );
  const own = await firstRow<{ id: string }>(
    client,
    "SELECT id FROM buyer_case WHERE vehicle_id = $1 AND buyer_id = ANY($2)",
    [vehicle, organizations],
  );
  const service = await startService(env);
  try {
    const floor = await startFloor(env);
    try {
      const cookie = await signIn(service.address, main.viewer);
      return await work({
        client,
        env,
        files,
        service: { served: service, cookie },
        floor: { served: floor, cookie },
        account,
        organizations,
        comparison: main.comparison,
        vehicle,
        report,
        case: own.id,
        people: await signInAll(client, service.address, accounts),
      });
    } finally {
      await floor.stop();
    }
  } finally {
    closeConnections();
    await service.stop();
    rmSync(files, { recursive: true, force: true });
  }
}
