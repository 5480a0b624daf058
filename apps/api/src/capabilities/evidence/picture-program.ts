import { existsSync, readdirSync } from "node:fs";
import { constants, setPriority } from "node:os";
import { samePicture } from "@evenhand/evidence/same-picture";
import { makePictures, readGray } from "./make-pictures.ts";
import type { PictureTask } from "./picture-task.ts";

/** Where Linux lists the threads of a process; each has a priority of its own. */
const threads = "/proc/self/task";

/** Whoever serves people goes before. */
function giveWay(): void {
  const ids = existsSync(threads) ? readdirSync(threads).map(Number) : [0];
  for (const id of ids) setPriority(id, constants.priority.PRIORITY_BELOW_NORMAL);
}

async function done(task: PictureTask): Promise<object> {
  if (task.is === "make") return makePictures(task.original);
  return samePicture(await readGray(task.copy), await readGray(task.other));
}

async function answer(task: PictureTask): Promise<void> {
  try {
    process.send?.({ answer: await done(task) });
  } catch (error) {
    process.send?.({ failed: error instanceof Error ? error.message : String(error) });
  }
}

giveWay();
process.on("message", (task: PictureTask) => void answer(task));
// Killed or stopped, whoever asks is gone.
process.once("disconnect", () => process.exit(0));
