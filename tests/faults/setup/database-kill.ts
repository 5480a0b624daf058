import { spawn } from "node:child_process";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { Client } from "pg";
import { inject } from "vitest";
import { serverUser } from "../../../apps/api/src/platform/database/server-user.ts";
import { until } from "../../api/setup/until.ts";

async function ask<R extends object>(text: string): Promise<R[]> {
  const client = new Client({ connectionString: inject("databaseServer") });
  // Whoever is asked may be gone in the middle; the question fails, and that says it.
  client.on("error", () => {});
  await client.connect();
  try {
    return (await client.query<R>(text)).rows;
  } finally {
    await client.end();
  }
}

const answers = (): Promise<boolean> =>
  ask("SELECT 1").then(
    () => true,
    () => false,
  );

/** The run's own server loses nothing acknowledged from now on when it is killed; the machine's power is not what is tried here. */
export async function makeDurable(): Promise<string> {
  await ask("ALTER SYSTEM RESET synchronous_commit");
  await ask("SELECT pg_reload_conf()");
  await until(async () => {
    const [row] = await ask<{ synchronous_commit: string }>("SHOW synchronous_commit");
    return row?.synchronous_commit === "on";
  });
  const [row] = await ask<{ data_directory: string }>("SHOW data_directory");
  if (row === undefined) throw new Error("The server does not say where its data are.");
  return row.data_directory;
}

/** The program and its words, as the server wrote them down when it was last started. */
function lastStart(folder: string): { program: string; words: string[] } {
  const [program = "", ...quoted] = readFileSync(join(folder, "postmaster.opts"), "utf8").trim().split(' "');
  return { program, words: quoted.map((word) => word.replace(/"$/, "")) };
}

/** Ends the server by SIGKILL in the middle of what it does, with nothing said to anybody. */
export function killServer(folder: string): void {
  process.kill(Number(readFileSync(join(folder, "postmaster.pid"), "utf8").split("\n")[0]), "SIGKILL");
}

/** Starts it as it was, on the same port, as often as those it left behind still keep it from starting; gives when it answers. */
export async function startServer(folder: string): Promise<void> {
  const { program, words } = lastStart(folder);
  const begin = () =>
    spawn(program, words, { ...serverUser(), cwd: folder, detached: true, stdio: "ignore" });
  let server = begin();
  await until(async () => {
    if (server.exitCode !== null) server = begin();
    return answers();
  });
  server.unref();
}
