import { Refusal } from "../service/refusal";
import { pageOwner } from "./owner";
import { store, type KeptFinding } from "./store";
import { sendWaiting } from "./sync";
import { noteWaiting } from "./uploads-waiting";

/** An answer that stands on this device and not with the service: not sent, refused, in conflict, or not to be read. */
export const isOnlyHere = ({ state, unread }: KeptFinding): boolean =>
  state !== "saved" || unread !== undefined;

/** Reports of which this device holds answers and files that the service does not have, and how many. */
export const onlyHere = async (): Promise<ReadonlyMap<string, number>> => {
  const counts = new Map<string, number>();
  await store.findings.filter(isOnlyHere).each(({ report }) => {
    counts.set(report, (counts.get(report) ?? 0) + 1);
  });
  await store.uploads
    .filter(({ dropped }) => dropped === undefined)
    .each(({ report }) => {
      counts.set(report, (counts.get(report) ?? 0) + 1);
    });
  return counts;
};

/**
 * Sends all that waits, of every report. What one report refuses keeps the others from nothing.
 *
 * @returns how many answers and files stand on this device alone even so; a file goes by itself while a page is open
 */
export const sendEverything = async (
  send: (report: string) => Promise<unknown> = sendWaiting,
): Promise<number> => {
  const queued = [...(await store.operations.toArray()), ...(await store.gates.toArray())];
  const waiting = new Set(queued.map(({ report }) => report));
  for (const report of waiting) {
    try {
      await send(report);
    } catch (error) {
      // What did not arrive is still in the store, and is counted below.
      if (!(error instanceof Refusal)) throw error;
    }
  }
  return [...(await onlyHere()).values()].reduce((sum, count) => sum + count, 0);
};

/** Does this refusal say that the person, as they are signed in now, has nothing to do with the report? */
export const isNotTheirs = (error: unknown): boolean =>
  error instanceof Refusal && [401, 403, 404].includes(error.problem.status);

/**
 * The service has no such report for this person: what it once gave of it is taken off this device. What never arrived stays, out
 * of sight, since it was typed here and is nowhere else.
 */
export const forgetReport = async (report: string): Promise<void> =>
  store.transaction(
    "rw",
    [store.findings, store.operations, store.drafts, store.heard, store.readings],
    async () => {
      await store.drafts.delete(report);
      await store.readings.delete(report);
      await store.heard.delete(report);
      const gone = (await store.findings.where("report").equals(report).toArray()).filter(
        (one) => !isOnlyHere(one),
      );
      await store.findings.bulkDelete(gone.map(({ place }) => [report, place]));
    },
  );

/** Takes everything of this account off this device. */
export const forgetEverything = async (): Promise<void> => {
  // Opened again by whoever asks next: the same person may sign in again on this very page.
  await store.delete({ disableAutoOpen: false });
  const owner = pageOwner();
  if (owner !== null) noteWaiting(owner, 0);
};

/** Takes off this device whatever the service has; all of it, where nothing is left besides. */
export const forgetArrived = async (): Promise<void> => {
  if ((await onlyHere()).size === 0) return forgetEverything();
  const drafts = await store.drafts.toArray();
  for (const { report } of drafts) await forgetReport(report);
};
