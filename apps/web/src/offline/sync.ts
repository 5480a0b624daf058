import { type Operation, operationsBytes, type OperationsAnswer } from "@evenhand/shared/http/reports";
import { call } from "../service/client";
import { sendGates } from "./gates";
import { inPlaces, readPlace, stepPlace, writePlace } from "./kept-places";
import { decidePlace } from "./place-states";
import { store, type KeptOperation, type Store } from "./store";

/** More than the service takes in one body is sent in turns, small enough for a weak line. */
const most = 200;
const maxBytes = operationsBytes / 8;

const bytesOf = (operation: Operation): number =>
  new TextEncoder().encode(JSON.stringify(operation)).byteLength + 1;

type SentOperation = KeptOperation & { readonly sent: Operation };

/** The place's oldest change, fixed from now on if there is room for so many bytes; nothing where none is to be sent. */
const fixFirst = async (
  on: Store,
  report: string,
  place: string,
  room: number,
): Promise<SentOperation | "no-room" | null> => {
  const here = await readPlace(on, report, place);
  const after = decidePlace(here, { type: "send" });
  const [first] = after.queue;
  const sent = after.queue.length === here.queue.length ? first?.sent : undefined;
  if (sent !== undefined && bytesOf(sent) > room) return "no-room";
  await writePlace(on, [report, place], here, after);
  return first === undefined || sent === undefined ? null : { ...first, sent };
};

/** The first waiting change of every finding, fixed from now on. */
const nextBatch = async (on: Store, report: string): Promise<readonly SentOperation[]> =>
  inPlaces(on, async () => {
    const waiting = await on.operations.where("report").equals(report).sortBy("seq");
    const batch: SentOperation[] = [];
    let room = Infinity;
    for (const place of new Set(waiting.map((one) => one.place))) {
      const next = batch.length < most ? await fixFirst(on, report, place, room) : "no-room";
      if (next === "no-room") break;
      if (next === null) continue;
      room = Math.min(room, maxBytes) - bytesOf(next.sent);
      batch.push(next);
    }
    return batch;
  });

type Operate = (report: string, operations: readonly Operation[]) => Promise<OperationsAnswer>;

const operate: Operate = (report, operations) =>
  call("reports.operate", { params: { id: report }, body: { operations: [...operations] } });

/** Sends what waits until nothing does. Throws when the service cannot be reached; what was not answered stays queued. */
export const sendWaiting = async (report: string, send = operate, on = store): Promise<number | null> => {
  let revision: number | null = null;
  for (;;) {
    const batch = await nextBatch(on, report);
    if (batch.length === 0) {
      await sendGates(report, undefined, on);
      return revision;
    }
    const answer = await send(
      report,
      batch.map(({ sent }) => sent),
    );
    revision = answer.revision;
    await on.heard.put({ report, revision });
    for (const [at, { id, place }] of batch.entries()) {
      const result = answer.results[at];
      if (result) await stepPlace(on, report, place, { type: "answer", id, result });
    }
  }
};
