import type { ReportDraft } from "@evenhand/shared/http/reports";
import type { CautionsRead } from "@evenhand/shared/report";
import type { Stage } from "@evenhand/shared/sheet";
import { call } from "../service/client";
import { afterMoves } from "../service/after-moves";
import { store, type KeptGate } from "./store";

/** Keeps on this device that the cautions at a stage's gate were read. */
export const keepGate = async (report: string, stage: Stage, time: string, on = store): Promise<void> => {
  await on.gates.put({ report, stage, time });
};

/** What the service has, and what waits here beside it: each stage once, the first time. */
export const gatesRead = (
  known: readonly CautionsRead[] | undefined,
  waiting: readonly Pick<KeptGate, "stage" | "time">[],
): readonly CautionsRead[] => {
  const had = new Set(known?.map(({ stage }) => stage));
  return [
    ...(known ?? []),
    ...waiting
      .filter(({ stage }) => !had.has(stage))
      .toSorted((a, b) => Date.parse(a.time) - Date.parse(b.time))
      .map(({ stage, time }) => ({ stage, time })),
  ];
};

interface Service {
  readonly get: (report: string) => Promise<Pick<ReportDraft, "revision" | "report">>;
  readonly change: (report: string, revision: number, read: readonly CautionsRead[]) => Promise<unknown>;
}

const service: Service = {
  get: async (report) => call("reports.get", { params: { id: report } }),
  change: async (report, revision, read) =>
    call("reports.change", { params: { id: report }, ifMatch: revision, body: { cautionsRead: [...read] } }),
};

/** Sends which gates were read, and forgets here what has arrived. Throws where the service cannot be reached; nothing is lost. */
export const sendGates = async (report: string, { get, change } = service, on = store): Promise<void> => {
  const waiting = await on.gates.where("report").equals(report).toArray();
  if (waiting.length === 0) return;
  await afterMoves(async () => {
    const { revision, report: there } = await get(report);
    const read = gatesRead(there.cautionsRead, waiting);
    if (read.length > (there.cautionsRead ?? []).length) await change(report, revision, read);
    await on.transaction("rw", on.drafts, on.gates, async () => {
      const kept = await on.drafts.get(report);
      if (kept) {
        const { draft } = kept;
        await on.drafts.put({
          report,
          draft: { ...draft, report: { ...draft.report, cautionsRead: [...read] } },
        });
      }
      await on.gates.bulkDelete(waiting.map(({ stage }): [string, string] => [report, stage]));
    });
  });
};
