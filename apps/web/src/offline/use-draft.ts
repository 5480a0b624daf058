import type { ReportDraft } from "@evenhand/shared/http/reports";
import { useQuery } from "@tanstack/react-query";
import { useEffect, useMemo, useSyncExternalStore } from "react";
import { call } from "../service/client";
import { keepDraft } from "./changes";
import { DraftQueue, type QueueNow } from "./draft-queue";
import { gatesRead } from "./gates";
import { connectionOf } from "./line-states";
import { managersOf } from "./managers";
import { standingOf, withWrites } from "./save-state";
import type { KeptFinding, KeptGate } from "./store";

const none: ReadonlyMap<string, KeptFinding> = new Map();
const noGates: readonly KeptGate[] = [];

/** The queue of one report, running as long as the page shows it. */
const useQueue = (report: string): readonly [DraftQueue, QueueNow] => {
  const queue = useMemo(() => new DraftQueue(managersOf(report)), [report]);
  useEffect(() => queue.start(), [queue]);
  return [queue, useSyncExternalStore(queue.subscribe, queue.snapshot)];
};

/** Asks the service for the draft, and keeps what it gives. */
const useRemote = (report: string, queue: DraftQueue) =>
  useQuery({
    queryKey: ["report", report],
    queryFn: async ({ signal }): Promise<ReportDraft> => {
      const draft = await call("reports.get", { params: { id: report }, signal });
      await keepDraft(draft);
      if (draft.drafting) queue.open();
      return draft;
    },
  });

/**
 * A draft as it stands on this device, kept level with the service. Once opened here it is read from here where the service does not
 * answer, as long as the application itself is loaded.
 */
export const useDraft = (report: string) => {
  const [queue, { kept, failure, writes, line }] = useQueue(report);
  const remote = useRemote(report, queue);
  const stored = kept?.findings ?? none;
  const findings = useMemo(() => withWrites(report, stored, writes), [report, stored, writes]);
  const gates = kept?.gates ?? noGates;
  const draft = kept?.draft?.draft;
  const known = draft?.report.cautionsRead;
  const cautionsRead = useMemo(() => gatesRead(known, gates), [known, gates]);
  const { readCautions, keep, settle, send } = queue;
  return {
    draft,
    findings,
    cautionsRead,
    readCautions,
    standing: standingOf(findings, writes, connectionOf(line.state), gates.length),
    keep,
    settle,
    failure,
    remote,
    refusal: line.refusal,
    send,
  };
};

/** A draft as a page has it: what it holds, how that stands, and what may be done. */
export type Draft = ReturnType<typeof useDraft>;
