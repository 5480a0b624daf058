import { parentPort, workerData } from "node:worker_threads";
import type { ReadingEnd, ReadingTask } from "./draft-read.ts";
import { readSheet } from "./read-sheet.ts";
import { readSpoken } from "./read-spoken.ts";

// The worker's own file: it imports nothing that plain Node could not run as it stands.

const end = (task: ReadingTask): ReadingEnd => {
  const read =
    task.is === "spoken"
      ? readSpoken(task.text, task.draft)
      : readSheet(task.bytes, task.draft, task.settled);
  return "reason" in read ? { ok: false, reason: read.reason } : { ok: true, json: JSON.stringify(read) };
};

// Nothing is handed over with it but the words.
parentPort?.postMessage(end(workerData), []);
