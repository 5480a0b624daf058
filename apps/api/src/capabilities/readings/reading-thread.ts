import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { Worker } from "node:worker_threads";
import { Injectable } from "@nestjs/common";
import { z } from "zod";
import { projectFolder } from "../../platform/config/project-folder.ts";
import { Turns } from "../../platform/database/turns.ts";
import { ProblemError } from "../../platform/problems/problem-error.ts";
import type { ReadingTask } from "./draft-read.ts";

/** How long one reading may take, and what it may hold beside its input. */
const MOST_SECONDS = 60;
const MOST_MIB = 768;
/** Who waits holds a file in memory. */
const MOST_WAITING = 8;

/** In the service's build a file of its own; from the sources the source itself. */
const readerFile = import.meta.url.endsWith(".ts")
  ? new URL("./reader.ts", import.meta.url)
  : pathToFileURL(join(projectFolder(), "apps", "api", "dist", "reader.js"));

const End = z.discriminatedUnion("ok", [
  z.object({ ok: z.literal(true), json: z.string() }),
  z.object({ ok: z.literal(false), reason: z.string() }),
]);
type End = z.infer<typeof End>;

const tooMuch: End = {
  ok: false,
  reason: `Reading this takes more than ${MOST_SECONDS} seconds or more memory than one file may have. Send what is of one car only.`,
};

const isOutOfMemory = (error: unknown): boolean =>
  error instanceof Error && "code" in error && error.code === "ERR_WORKER_OUT_OF_MEMORY";

/** One reading in a thread of its own, which ends with it. */
const inThread = (task: ReadingTask): Promise<End> =>
  new Promise((resolve, reject) => {
    const worker = new Worker(readerFile, {
      workerData: task,
      execArgv: [],
      resourceLimits: { maxOldGenerationSizeMb: MOST_MIB },
    });
    const late = setTimeout(() => {
      resolve(tooMuch);
      void worker.terminate();
    }, MOST_SECONDS * 1000);
    worker.once("message", (message: unknown) => {
      resolve(End.parse(message));
    });
    worker.once("error", (error: unknown) => {
      if (isOutOfMemory(error)) resolve(tooMuch);
      else reject(error instanceof Error ? error : new Error("The thread failed.", { cause: error }));
    });
    worker.once("exit", () => {
      clearTimeout(late);
      reject(new Error("The thread ended without an answer."));
    });
  });

/** Reads what people send away from the thread that answers them: one file at a time, in bounded time and memory. */
@Injectable()
export class ReadingThread {
  private readonly turns = new Turns(1);

  /**
   * @returns the answer's JSON
   * @throws ProblemError `reading-refused` with what would work, `too-crowded`
   */
  async read(task: ReadingTask): Promise<string> {
    if (this.turns.waitingNow >= MOST_WAITING)
      throw new ProblemError("too-crowded", "Many files are read at this moment. Try again in a minute.", {
        headers: { "retry-after": "60" },
      });
    const end = await this.turns.take(() => inThread(task));
    if (end.ok) return end.json;
    throw new ProblemError("reading-refused", "Nothing was read, and nothing was changed.", {
      problems: [{ at: task.is === "spoken" ? "/text" : "/file", reason: end.reason }],
    });
  }
}
