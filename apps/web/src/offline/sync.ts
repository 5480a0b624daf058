import {
  type Operation,
  type OperationResult,
  operationsBytes,
  type OperationsAnswer,
} from "@evenhand/shared/http/reports";
import { call } from "../service/client";
import { sendGates } from "./gates";
import { store, type KeptFinding, type KeptOperation } from "./store";

/** More than the service takes in one body is sent in turns, small enough for a weak line. */
const most = 200;
const mostBytes = operationsBytes / 8;

const bytesOf = (operation: Operation): number =>
  new TextEncoder().encode(JSON.stringify(operation)).byteLength + 1;

const operationOf = (id: string, kept: KeptFinding): Operation | null => {
  const at = kept.place.indexOf("@");
  if (kept.finding) return { id, op: "set", finding: kept.finding, base: kept.base };
  // Nothing to take back where the service never had it.
  if (kept.base === null) return null;
  return {
    id,
    op: "remove",
    item: kept.place.slice(0, at),
    position: kept.place.slice(at + 1),
    base: kept.base,
  };
};

/** The first waiting change of every finding, fixed from now on. */
const nextBatch = async (
  report: string,
): Promise<readonly (KeptOperation & { readonly sent: Operation })[]> =>
  store.transaction("rw", store.findings, store.operations, async () => {
    const waiting = await store.operations.where("report").equals(report).sortBy("seq");
    const batch: (KeptOperation & { readonly sent: Operation })[] = [];
    const taken = new Set<string>();
    let bytes = 0;
    for (const one of waiting) {
      if (taken.has(one.place) || batch.length >= most) continue;
      taken.add(one.place);
      const kept = await store.findings.get([report, one.place]);
      const sent = one.sent ?? (kept ? operationOf(one.id, kept) : null);
      if (sent === null) {
        await store.operations.delete(one.seq);
        if (kept?.unread) await store.findings.put({ ...kept, state: "saved" });
        else if (kept) await store.findings.delete([report, one.place]);
        continue;
      }
      bytes += bytesOf(sent);
      if (bytes > mostBytes && batch.length > 0) break;
      if (one.sent === undefined) await store.operations.update(one.seq, { sent });
      batch.push({ ...one, sent });
    }
    return batch;
  });

const settled = (kept: KeptFinding, result: OperationResult, more: boolean): KeptFinding | null => {
  switch (result.result) {
    case "applied":
    case "duplicate":
      if (!more && kept.finding === null && kept.unread === undefined) return null;
      return {
        ...kept,
        base: result.revision,
        state: more ? "waiting" : "saved",
        theirs: undefined,
        problems: undefined,
      };
    case "conflict":
      return { ...kept, base: result.revision, state: "conflict", theirs: result.current };
    case "refused":
      return { ...kept, state: more ? "waiting" : "refused", problems: result.problems };
  }
};

const takeResult = async (report: string, one: KeptOperation, result: OperationResult): Promise<void> =>
  store.transaction("rw", store.findings, store.operations, async () => {
    if (one.seq !== undefined) await store.operations.delete(one.seq);
    const later = await store.operations.where("[report+place]").equals([report, one.place]).toArray();
    const kept = await store.findings.get([report, one.place]);
    if (!kept) return;
    if (result.result === "conflict") await store.operations.bulkDelete(later.map(({ seq }) => seq));
    const next = settled(kept, result, later.length > 0);
    if (next) await store.findings.put(next);
    else await store.findings.delete([report, one.place]);
  });

type Operate = (report: string, operations: readonly Operation[]) => Promise<OperationsAnswer>;

const operate: Operate = (report, operations) =>
  call("reports.operate", { params: { id: report }, body: { operations: [...operations] } });

/** Sends what waits until nothing does. Throws when the service cannot be reached; what was not answered stays queued. */
export const sendWaiting = async (report: string, send = operate): Promise<number | null> => {
  let revision: number | null = null;
  for (;;) {
    const batch = await nextBatch(report);
    if (batch.length === 0) {
      await sendGates(report);
      return revision;
    }
    const answer = await send(
      report,
      batch.map(({ sent }) => sent),
    );
    revision = answer.revision;
    await store.drafts.update(report, { "draft.revision": revision });
    for (const [at, one] of batch.entries()) {
      const result = answer.results[at];
      if (result) await takeResult(report, one, result);
    }
  }
};
