import { type QueryClient, useQueryClient } from "@tanstack/react-query";
import { liveQuery } from "dexie";
import { useEffect, useSyncExternalStore } from "react";
import { newId } from "../service/new-id";
import { evidenceKey } from "./evidence-key";
import { managersOf } from "./managers";
import { pageOwner } from "./owner";
import { loadTus, uploadSender } from "./send-upload";
import { store, type KeptUpload } from "./store";
import { noteWaiting } from "./uploads-waiting";
import { UploadQueue, type UploadManagers, type UploadsNow } from "./upload-queue";

/** What is kept on this device, in the order it was added. */
export const uploadStore = (on = store): UploadManagers["store"] => {
  const list = () => on.uploads.orderBy("id").toArray();
  return {
    list,
    watch: (changed, failed) => {
      const watching = liveQuery(list).subscribe({ next: changed, error: failed });
      return () => watching.unsubscribe();
    },
    put: (upload) => on.uploads.put(upload),
    change: (id, change) => on.uploads.update(id, change),
    remove: (id) => on.uploads.delete(id),
  };
};

const loadAdvice = () => import("./picture-advice");

const queues = new WeakMap<QueryClient, UploadQueue>();

/** The one queue of this page: once begun it sends on whatever page is shown. */
const queueOf = (queries: QueryClient): UploadQueue => {
  const known = queues.get(queries);
  if (known !== undefined) return known;
  const { clock, onSignal } = managersOf("");
  const queue = new UploadQueue({
    store: uploadStore(),
    sender: uploadSender(pageOwner()),
    clock,
    onSignal,
    advise: async (file) => (await loadAdvice()).adviceOn(file),
    arrived: ({ report }) => queries.invalidateQueries({ queryKey: evidenceKey(report) }),
  });
  queues.set(queries, queue);
  const owner = pageOwner();
  queue.subscribe(() => {
    const { kept } = queue.snapshot();
    if (owner !== null && kept !== undefined) noteWaiting(owner, kept.length);
  });
  queue.start();
  return queue;
};

type AtPlace = Pick<KeptUpload, "report" | "item" | "position">;

/** Files as they are kept until they are sent, in the order they were chosen. */
const keptOf = ({ report, item, position }: AtPlace, files: readonly File[]): readonly KeptUpload[] => {
  const ids = files.map(newId).toSorted();
  return files.map((file, at) => ({
    id: ids[at] ?? newId(),
    report,
    item,
    position,
    name: file.name,
    file,
  }));
};

/** Every file that stands on this device alone, of whatever report. What waits is sent from now on, wherever the person goes. */
export const useAllUploads = (): UploadsNow & Pick<UploadQueue, "retry"> => {
  const queue = queueOf(useQueryClient());
  const now: UploadsNow = useSyncExternalStore(queue.subscribe, queue.snapshot);
  return { ...now, retry: queue.retry };
};

/** The files of one report that stand on this device alone, and what can be done with them. */
export const useUploads = (report: string) => {
  const queue = queueOf(useQueryClient());
  const now: UploadsNow = useSyncExternalStore(queue.subscribe, queue.snapshot);
  // Loaded while there is a connection: it is there without one, too.
  useEffect(() => void Promise.allSettled([loadAdvice(), loadTus()]), []);
  return {
    ...now,
    kept: now.kept?.filter((one) => one.report === report && one.dropped === undefined),
    add: ({ item, position }: Omit<AtPlace, "report">, files: readonly File[]): Promise<void> =>
      queue.add(keptOf({ report, item, position }, files)),
    remove: queue.remove,
    putBack: (): Promise<void> => queue.putBack(newId()),
    retry: queue.retry,
  };
};
