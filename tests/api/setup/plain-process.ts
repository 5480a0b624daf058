import { spawn, type ChildProcess } from "node:child_process";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("../../../", import.meta.url));

export type PlainProcess = {
  /** Everything said so far. */
  readonly said: () => string;
  /** Waits until what was said matches, and gives the match; three minutes, which no test counts on. */
  readonly says: (pattern: RegExp) => Promise<RegExpExecArray>;
  /** Asks it to stop and waits until it has. */
  readonly stop: (signal?: NodeJS.Signals) => Promise<void>;
  readonly ended: Promise<number | null>;
};

/** Starts a command in the project's folder, `node` being this very Node, with nothing in its environment but what is given. */
export function startProcess(
  [program = "", ...words]: readonly string[],
  environment: Readonly<Record<string, string>>,
): PlainProcess {
  const child: ChildProcess = spawn(program === "node" ? process.execPath : program, words, {
    cwd: root,
    env: { PATH: process.env["PATH"] ?? "", ...environment },
    stdio: ["ignore", "pipe", "pipe"],
  });
  let text = "";
  const hear = (part: Buffer): void => {
    text += part.toString();
  };
  child.stdout?.on("data", hear);
  child.stderr?.on("data", hear);
  const ended = new Promise<number | null>((resolve) => void child.once("exit", (code) => resolve(code)));
  const says = async (pattern: RegExp): Promise<RegExpExecArray> => {
    const end = Date.now() + 180_000;
    for (;;) {
      const found = pattern.exec(text);
      if (found !== null) return found;
      if (child.exitCode !== null || Date.now() > end)
        throw new Error(`${words.join(" ")} never said ${String(pattern)}, but: ${text}`);
      await new Promise((resolve) => void setTimeout(resolve, 50));
    }
  };
  const stop = async (signal: NodeJS.Signals = "SIGTERM"): Promise<void> => {
    if (child.exitCode === null) child.kill(signal);
    await ended;
  };
  return { said: () => text, says, stop, ended };
}
