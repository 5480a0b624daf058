import { execFile } from "node:child_process";
import { promisify } from "node:util";

const run = promisify(execFile);

/** Runs a command of the built service as a process of its own, as whoever runs the machine does, and gives what it says. */
export async function command(words: readonly string[], environment: NodeJS.ProcessEnv): Promise<string> {
  const { stdout } = await run(process.execPath, ["apps/api/dist/main.js", ...words], {
    env: { PATH: process.env["PATH"], ...environment },
  });
  return stdout;
}
