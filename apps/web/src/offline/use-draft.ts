import type { ReportDraft } from "@evenhand/shared/http/reports";
import { useQuery } from "@tanstack/react-query";
import { liveQuery } from "dexie";
import { useCallback, useEffect, useRef, useState } from "react";
import { call } from "../service/client";
import { Refusal } from "../service/refusal";
import { keepDraft } from "./changes";
import { store, type KeptDraft, type KeptFinding } from "./store";
import { sendWaiting } from "./sync";

export type Connection = "sending" | "saved" | "unreachable" | "refused";

const isUnreachable = (error: unknown): boolean => error instanceof Refusal && error.problem.status === 0;

/** The kept rows of one report, live. */
const useKept = (report: string) => {
  const [kept, setKept] = useState<{
    draft: KeptDraft | undefined;
    findings: ReadonlyMap<string, KeptFinding>;
  }>();
  useEffect(() => {
    const watching = liveQuery(async () => ({
      draft: await store.drafts.get(report),
      findings: new Map(
        (await store.findings.where("report").equals(report).toArray()).map((one) => [one.place, one]),
      ),
    })).subscribe({ next: setKept });
    return () => watching.unsubscribe();
  }, [report]);
  return kept;
};

/** Sends when something waits, again when the signal returns, and at growing intervals until then. */
const useSending = (report: string, waiting: number) => {
  const [connection, setConnection] = useState<Connection>("saved");
  const [refusal, setRefusal] = useState<unknown>(null);
  const busy = useRef(false);
  const tries = useRef(0);
  const send = useCallback(async (): Promise<void> => {
    if (busy.current) return;
    busy.current = true;
    setConnection("sending");
    try {
      await sendWaiting(report);
      tries.current = 0;
      setConnection("saved");
      setRefusal(null);
    } catch (error) {
      tries.current += 1;
      setConnection(isUnreachable(error) ? "unreachable" : "refused");
      setRefusal(error);
    } finally {
      busy.current = false;
    }
  }, [report]);
  useEffect(() => {
    if (waiting === 0 || connection === "sending") return undefined;
    const wait = tries.current === 0 ? 350 : Math.min(30_000, 1_000 * 2 ** tries.current);
    const timer = setTimeout(() => void send(), wait);
    return () => clearTimeout(timer);
  }, [waiting, connection, send]);
  useEffect(() => {
    const again = (): void => {
      tries.current = 0;
      void send();
    };
    globalThis.addEventListener("online", again);
    return () => globalThis.removeEventListener("online", again);
  }, [send]);
  return { connection, refusal, send };
};

/**
 * A draft as it stands on this device, kept level with the service. Once opened here it is read from here where the service does not
 * answer, as long as the application itself is loaded.
 */
export const useDraft = (report: string) => {
  const kept = useKept(report);
  const remote = useQuery({
    queryKey: ["report", report],
    queryFn: async ({ signal }): Promise<ReportDraft> => {
      const draft = await call("reports.get", { params: { id: report }, signal });
      await keepDraft(draft);
      return draft;
    },
  });
  const findings = kept?.findings ?? new Map<string, KeptFinding>();
  const waiting = [...findings.values()].filter(({ state }) => state === "waiting").length;
  const sending = useSending(report, waiting);
  return { draft: kept?.draft?.draft, findings, waiting, remote, ...sending };
};
