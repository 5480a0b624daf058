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
/** With what Node serves wherever the service is started; the floor runs with the same. */
const { node: flags } = z
  .object({ node: z.array(z.string()) })
  .parse(JSON.parse(readFileSync(inProject("apps/launch/src/serving.json"), "utf8")));

const start = (script: string, args: readonly string[], env: NodeJS.ProcessEnv): ChildProcess =>
  spawn(process.execPath, [...flags, "--import", preload, script, ...args], {
    env: { ...process.env, ...env },
    stdio: ["ignore", "pipe", "inherit", "ipc"],
  });

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
  readonly address: string;
  /** Seconds of processor time used by it so far. */
  processorTime(): Promise<number>;
  /** Sends it something and resolves with its answer. */
  ask(message: object | string): Promise<unknown>;
  stop(): Promise<void>;
};

async function addressOf(child: ChildProcess): Promise<string> {
  if (child.stdout === null) throw new Error("nothing of the program can be read");
  for await (const line of createInterface({ input: child.stdout })) {
    const address = /answers at (\S+)/.exec(line)?.[1];
    if (address === undefined) continue;
    child.stdout.resume();
    return address;
  }
  throw new Error("The program did not start; what it said stands above.");
}

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
    address,
    ask,
    processorTime: async () => {
      const answer = await ask("processor time");
      if (typeof answer !== "object" || answer === null || !("processorSeconds" in answer))
        throw new TypeError("the program does not tell its processor time");
      return Number(answer.processorSeconds);
    },
    stop: async () => {
      child.kill("SIGTERM");
      await ended;
    },
  };
}

export const startService = (env: NodeJS.ProcessEnv): Promise<Served> => serve(service, ["serve"], env);
export const startFloor = (env: NodeJS.ProcessEnv): Promise<Served> => serve(floor, [], env);
