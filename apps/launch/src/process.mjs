import { spawn } from "node:child_process";
import { constants } from "node:os";

const signals = ["SIGINT", "SIGTERM", "SIGHUP"];
const children = new Set();

/** Asks every program started here to stop. */
export function stopChildren() {
  for (const child of children) child.kill("SIGTERM");
}

/**
 * Runs a program in this terminal and gives its exit code; signals are passed on, and the end is waited for. A `supervised`
 * program holds a line to this one and stops when it is cut, so that killing this process leaves nothing behind.
 *
 * @example await run("node", ["--version"], { cwd: "." }) // 0
 */
export function run(file, args, { cwd, env = {}, supervised = false }) {
  return new Promise((resolve, reject) => {
    const child = spawn(file, args, {
      cwd,
      env: { ...process.env, ...env },
      stdio: ["inherit", "inherit", "inherit", ...(supervised ? ["ipc"] : [])],
      shell: file.endsWith(".cmd"),
    });
    const pass = (signal) => child.kill(signal);
    for (const signal of signals) process.on(signal, pass);
    children.add(child);
    const finish = () => {
      children.delete(child);
      for (const signal of signals) process.removeListener(signal, pass);
    };
    child.once("error", (error) => {
      finish();
      reject(error);
    });
    child.once("exit", (code, signal) => {
      finish();
      resolve(code ?? 128 + (constants.signals[signal ?? "SIGTERM"] ?? 15));
    });
  });
}
