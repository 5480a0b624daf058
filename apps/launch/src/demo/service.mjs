import { spawn } from "node:child_process";
import { once } from "node:events";
import { createInterface } from "node:readline";
import { text } from "node:stream/consumers";
import { fileURLToPath } from "node:url";
import { root } from "../root.mjs";
import { servingFlags } from "../serving.mjs";

const script = fileURLToPath(new URL("../service.mjs", import.meta.url));

/** A session of its own keeps the terminal's Ctrl-C to this process, which then stops everything in order. */
const spawnService = (args, env, stdout) =>
  spawn(process.execPath, [...servingFlags, script, ...args], {
    cwd: root,
    env: { ...process.env, ...env },
    stdio: ["ignore", stdout, "inherit", "ipc"],
    detached: true,
  });

/** Runs one command of the service to its end and gives what it printed; throws where it fails. */
export async function runServiceCommand(args, env) {
  const child = spawnService(args, env, "pipe");
  const ended = once(child, "exit");
  const said = await text(child.stdout);
  const [code] = await ended;
  if (code !== 0) {
    throw new Error(`The service's command "${args.join(" ")}" failed; what it said stands above.\n${said}`);
  }
  return said.trim();
}

/**
 * Starts the service and waits until it answers.
 *
 * @returns its address, a promise of its end, and a way to stop it
 */
export async function startService(env) {
  const child = spawnService(["serve"], env, "pipe");
  const ended = once(child, "exit").then(([code]) => code);
  const address = await Promise.race([findAddress(child.stdout), ended.then(() => null)]);
  if (address === null) throw new Error("The service did not start; what it said stands above.");
  return {
    address,
    ended,
    stop: async () => {
      child.kill("SIGTERM");
      await ended;
    },
  };
}

async function findAddress(stdout) {
  for await (const line of createInterface({ input: stdout })) {
    const address = /answers at (\S+)/.exec(line)?.[1];
    if (address !== undefined) {
      // What it says later goes nowhere, but must be read, or it would wait for a reader.
      stdout.resume();
      return address;
    }
  }
  return null;
}
