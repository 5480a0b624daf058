import { type ChildProcess, fork } from "node:child_process";
import { once } from "node:events";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { MOST_SECONDS } from "@evenhand/evidence/evidence-limits";
import { Injectable, type OnApplicationShutdown } from "@nestjs/common";
import type { z } from "zod";
import { projectFolder } from "../../platform/config/project-folder.ts";
import { Turns } from "../../platform/database/turns.ts";
import { Compared, Made, PictureAnswer, type PictureTask } from "./picture-task.ts";

/** In the service's build a file of its own; from the sources the source itself. */
const program = import.meta.url.endsWith(".ts")
  ? fileURLToPath(new URL("./picture-program.ts", import.meta.url))
  : join(projectFolder(), "apps", "api", "dist", "picture-program.js");

/** After so long with nothing to do it ends, and its memory is the machine's again. */
const IDLE_MS = 30_000;
/** Longer than what it bounds by itself. */
const MOST_MS = 1_000 * (MOST_SECONDS + 30);
/** What a picture does to a program that reads it wrongly; whoever stops one sends another signal. */
const crashes: readonly (NodeJS.Signals | null)[] = ["SIGSEGV", "SIGBUS", "SIGABRT", "SIGILL", "SIGFPE"];

/** It ended before it answered. */
class PictureProcessEnded extends Error {
  override readonly name = "PictureProcessEnded";
  readonly crashed: boolean;
  constructor(signal: NodeJS.Signals | null) {
    super(`The process that opens pictures ended before it answered (${signal ?? "by itself"}).`);
    this.crashed = crashes.includes(signal);
  }
}

class PictureTooSlow extends Error {
  override readonly name = "PictureTooSlow";
}

/**
 * Nothing of the service's environment: it opens what strangers send. One arena keeps the memory that the C library holds back within
 * bounds.
 */
const environment = (): NodeJS.ProcessEnv => ({
  PATH: process.env["PATH"],
  SystemRoot: process.env["SystemRoot"],
  MALLOC_ARENA_MAX: "1",
});

const open = (): ChildProcess =>
  fork(program, { execArgv: ["--max-semi-space-size=2"], env: environment(), serialization: "advanced" });
const isAlive = ({ killed, exitCode, signalCode }: ChildProcess): boolean =>
  !killed && exitCode === null && signalCode === null;

const hasCrashed = (error: unknown): boolean => error instanceof PictureProcessEnded && error.crashed;

/** The answer to a task. @throws PictureProcessEnded, PictureTooSlow, or Error with what failed in it */
async function asked(child: ChildProcess, task: PictureTask): Promise<unknown> {
  const heard = new AbortController();
  const { signal } = heard;
  let isLate = false;
  const late = setTimeout(() => {
    isLate = true;
    child.kill("SIGKILL");
  }, MOST_MS);
  try {
    const ended = once(child, "exit", { signal }).then((): never => {
      throw isLate ? new PictureTooSlow() : new PictureProcessEnded(child.signalCode);
    });
    const answered = once(child, "message", { signal });
    child.send(task);
    const [message]: unknown[] = await Promise.race([answered, ended]);
    const answer = PictureAnswer.parse(message);
    if ("failed" in answer) throw new Error(answer.failed);
    return answer.answer;
  } finally {
    clearTimeout(late);
    heard.abort();
  }
}

/**
 * Opens pictures in a process of its own: one that breaks the library takes nothing of the service with it, what is decoded is not the
 * service's memory, and whoever asks for pages goes before. One at a time.
 */
@Injectable()
export class PictureProcess implements OnApplicationShutdown {
  private readonly turns = new Turns(1);
  private child: ChildProcess | undefined;
  private idle: NodeJS.Timeout | undefined;

  /** Its copies, or why there are none: what twice breaks the process cannot be read. @throws Error where it was stopped */
  async make(original: Uint8Array): Promise<Made> {
    const task = { is: "make", original } as const;
    try {
      return await this.ask(task, Made).catch((error: unknown) => {
        if (!hasCrashed(error)) throw error;
        return this.ask(task, Made);
      });
    } catch (error) {
      if (error instanceof PictureTooSlow)
        return { ok: false, refused: { reason: "slow", most: MOST_SECONDS } };
      if (hasCrashed(error)) return { ok: false, refused: { reason: "unreadable" } };
      throw error;
    }
  }

  /** How alike two copies are that were made before. */
  compare(copy: Uint8Array, other: Uint8Array): Promise<Compared> {
    return this.ask({ is: "compare", copy, other }, Compared);
  }

  private ask<T>(task: PictureTask, answer: z.ZodType<T>): Promise<T> {
    return this.turns.take(async () => {
      const child = this.begin();
      try {
        return answer.parse(await asked(child, task));
      } finally {
        this.rest(child);
      }
    });
  }

  /** The one there is, or another where that has ended. */
  private begin(): ChildProcess {
    clearTimeout(this.idle);
    const child = this.child !== undefined && isAlive(this.child) ? this.child : open();
    child.ref();
    child.channel?.ref();
    this.child = child;
    return child;
  }

  /** With nothing to do it keeps nobody from ending, and ends by itself after a while. */
  private rest(child: ChildProcess): void {
    child.unref();
    child.channel?.unref();
    this.idle = setTimeout(() => child.kill(), IDLE_MS).unref();
  }

  onApplicationShutdown(): void {
    clearTimeout(this.idle);
    this.child?.kill();
  }
}
