import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { readFileSync } from "node:fs";
import { createInterface } from "node:readline";
import { text } from "node:stream/consumers";
import { fileURLToPath } from "node:url";
import { z } from "zod";

const inProject = (path: string) => fileURLToPath(new URL(`../../../../../${path}`, import.meta.url));
const service = inProject("apps/launch/src/service.mjs");
const floor = inProject("apps/api/dist/floor.js");
const preload = new URL("processor-time.ts", import.meta.url).href;
/** With what Node serves and works wherever the service is started; the floor runs with the first. */
const { node: flags, work: workFlags } = z
  .object({ node: z.array(z.string()), work: z.array(z.string()) })
  .parse(JSON.parse(readFileSync(inProject("apps/launch/src/serving.json"), "utf8")));

const start = (script: string, args: readonly string[], env: NodeJS.ProcessEnv): ChildProcess =>
  spawn(
    process.execPath,
    [...(args[0] === "work" ? workFlags : flags), "--import", preload, script, ...args],
    {
      env: { ...process.env, ...env },
      stdio: ["ignore", "pipe", "inherit", "ipc"],
    },
  );

/** Runs one command of the service to its end and gives what it printed. */
export async function runService(command: string, env: NodeJS.ProcessEnv): Promise<string> {
  const child = start(service, [command], env);
  const ended = once(child, "exit");
  const said = child.stdout === null ? "" : await text(child.stdout);
  const [code] = await ended;
  if (code !== 0) throw new Error(`The service's command "${command}" failed; what it said stands above.`);
  return said;
}

/** A program that answers over HTTP in a process of its own. */
export type Served = {
  readonly pid: number;
  readonly address: string;
  /** Seconds of processor time used by it so far. */
  processorTime(): Promise<number>;
  /** Sends it something and resolves with its answer. */
  ask(message: object | string): Promise<unknown>;
  stop(): Promise<void>;
};

/** What it says once it is up: where it answers, or that it works and answers nowhere. */
async function addressOf(child: ChildProcess): Promise<string> {
  if (child.stdout === null) throw new Error("nothing of the program can be read");
  for await (const line of createInterface({ input: child.stdout })) {
    const said = /answers at (\S+)| works\.$/.exec(line);
    if (said === null) continue;
    child.stdout.resume();
    return said[1] ?? "";
  }
  throw new Error("The program did not start; what it said stands above.");
}

const Used = z.object({ processorSeconds: z.number() });

async function serve(script: string, args: readonly string[], env: NodeJS.ProcessEnv): Promise<Served> {
  const child = start(script, args, env);
  const ended = once(child, "exit");
  const address = await addressOf(child);
  const ask = async (message: object | string): Promise<unknown> => {
    const answered = once(child, "message");
    child.send(message);
    const [answer] = await answered;
    return answer;
  };
  return {
    pid: child.pid ?? 0,
    address,
    ask,
    processorTime: async () => Used.parse(await ask("processor time")).processorSeconds,
    stop: async () => {
      child.kill("SIGTERM");
      await ended;
    },
  };
}

export const startService = (env: NodeJS.ProcessEnv): Promise<Served> => serve(service, ["serve"], env);
/** Does slow work and answers nothing, with as little memory held back as the composition has it. */
export const startWorker = (env: NodeJS.ProcessEnv): Promise<Served> =>
  serve(service, ["work"], { ...env, MALLOC_ARENA_MAX: "1" });
export const startFloor = (env: NodeJS.ProcessEnv): Promise<Served> => serve(floor, [], env);
