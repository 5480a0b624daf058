import { problemCodeOf } from "@evenhand/shared/http/problem-codes";
import { liveQuery } from "dexie";
import { Refusal } from "../service/refusal";
import { changeFinding, settleConflict } from "./changes";
import type { Kept, Managers, WhyFailed } from "./draft-queue";
import { keepGate } from "./gates";
import { store } from "./store";
import { sendWaiting } from "./sync";

const readKept = async (report: string, on: typeof store): Promise<Kept> => ({
  draft: await on.drafts.get(report),
  findings: new Map(
    (await on.findings.where("report").equals(report).toArray()).map((one) => [one.place, one]),
  ),
  gates: await on.gates.where("report").equals(report).toArray(),
});

/** What is kept of one report in a store of this device. */
export const storeOf = (report: string, on = store): Managers["store"] => ({
  read: () => readKept(report, on),
  watch: (changed, failed) => {
    const watching = liveQuery(() => readKept(report, on)).subscribe({ next: changed, error: failed });
    return () => watching.unsubscribe();
  },
  keep: (place, change) => changeFinding(report, place, change, on),
  settle: (kept, which) => settleConflict(kept, which, on),
  keepGate: (stage, time) => keepGate(report, stage, time, on),
});

/** Why nothing arrived, from what was thrown. */
export const whyFailed = (error: unknown): WhyFailed => {
  if (!(error instanceof Refusal)) return "refuse";
  const { status, type } = error.problem;
  if (status === 0) return "lose-signal";
  return problemCodeOf(type) === "report-sealed" ? "seal" : "refuse";
};

/** The page's own store, service, clock and signal. */
export const managersOf = (report: string): Managers => ({
  store: storeOf(report),
  sender: { send: () => sendWaiting(report), whyFailed },
  clock: {
    now: () => new Date(),
    ringAfter: (wait, ring) => {
      const timer = setTimeout(ring, wait);
      return () => clearTimeout(timer);
    },
  },
  onSignal: (back) => {
    globalThis.addEventListener("online", back);
    return () => globalThis.removeEventListener("online", back);
  },
});
