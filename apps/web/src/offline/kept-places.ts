import { decidePlace, type PlaceEvent, type PlaceHere } from "./place-states";
import type { KeptOperation, Store } from "./store";

/** Runs a deed with nothing between: what is read of a place still stands when it is written. */
export const inPlaces = <T>(on: Store, deed: () => Promise<T>): Promise<T> =>
  on.transaction("rw", on.findings, on.operations, deed);

export const readPlace = async (on: Store, report: string, place: string): Promise<PlaceHere> => ({
  kept: await on.findings.get([report, place]),
  queue: await on.operations.where("[report+place]").equals([report, place]).sortBy("seq"),
});

const writeQueue = async (
  on: Store,
  before: readonly KeptOperation[],
  after: readonly KeptOperation[],
): Promise<void> => {
  const gone = before.filter(({ id }) => !after.some((one) => one.id === id));
  await on.operations.bulkDelete(gone.flatMap(({ seq }) => (seq === undefined ? [] : [seq])));
  for (const one of after) {
    if (one.seq === undefined) await on.operations.add({ ...one });
    else if (!before.includes(one)) await on.operations.put({ ...one, seq: one.seq });
  }
};

/** Writes what changed of a place, and nothing else. */
export const writePlace = async (
  on: Store,
  [report, place]: [string, string],
  before: PlaceHere,
  after: PlaceHere,
): Promise<void> => {
  if (after.kept === undefined) await on.findings.delete([report, place]);
  else if (after.kept !== before.kept) await on.findings.put(after.kept);
  if (after.queue !== before.queue) await writeQueue(on, before.queue, after.queue);
};

/** One event of one place, from what is kept of it to what is kept of it then. */
export const stepPlace = async (on: Store, report: string, place: string, event: PlaceEvent): Promise<void> =>
  inPlaces(on, async () => {
    const here = await readPlace(on, report, place);
    await writePlace(on, [report, place], here, decidePlace(here, event));
  });
