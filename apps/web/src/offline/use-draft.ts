import type { ReportDraft } from "@evenhand/shared/http/reports";
import type { Stage } from "@evenhand/shared/sheet";
import { useQuery } from "@tanstack/react-query";
import { liveQuery } from "dexie";
import { useCallback, useEffect, useMemo, useReducer, useRef, useState } from "react";
import { call } from "../service/client";
import { Refusal } from "../service/refusal";
import { changeFinding, keepDraft, settleConflict, type Change } from "./changes";
import { noWrites, standingOf, withWrites, writesAfter, type Connection } from "./save-state";
import { gatesRead, keepGate } from "./gates";
import { store, type KeptDraft, type KeptFinding, type KeptGate } from "./store";
import { sendWaiting } from "./sync";

const isUnreachable = (error: unknown): boolean => error instanceof Refusal && error.problem.status === 0;

interface Kept {
  readonly draft: KeptDraft | undefined;
  readonly findings: ReadonlyMap<string, KeptFinding>;
  readonly gates: readonly KeptGate[];
}

const readKept = async (report: string): Promise<Kept> => ({
  draft: await store.drafts.get(report),
  findings: new Map(
    (await store.findings.where("report").equals(report).toArray()).map((one) => [one.place, one]),
  ),
  gates: await store.gates.where("report").equals(report).toArray(),
});

/** The kept rows of one report, live; or why this device's store cannot be read. */
const useKept = (report: string) => {
  const [kept, setKept] = useState<Kept>();
  const [failure, setFailure] = useState<unknown>(null);
  const reload = useCallback(async () => setKept(await readKept(report)), [report]);
  useEffect(() => {
    const watching = liveQuery(() => readKept(report)).subscribe({ next: setKept, error: setFailure });
    return () => watching.unsubscribe();
  }, [report]);
  return { kept, failure, reload };
};

/** Writes to this device. Nothing counts as kept before the write has ended and what was kept has been read again. */
const useWrites = (report: string, reload: () => Promise<void>) => {
  const [writes, step] = useReducer(writesAfter, noWrites);
  const count = useRef(0);
  const write = useCallback(
    async (
      place: string,
      change: Change,
      deed: () => Promise<void>,
      seen: Change | null = change,
    ): Promise<void> => {
      count.current += 1;
      const nth = count.current;
      step({ type: "began", nth, place, change: seen });
      try {
        await deed();
        await reload();
        step({ type: "kept", nth, place });
      } catch {
        step({ type: "failed", nth, place, change });
      }
    },
    [reload],
  );
  const keep = useCallback(
    (place: string, change: Change) => write(place, change, () => changeFinding(report, place, change)),
    [report, write],
  );
  const settle = useCallback(
    (kept: KeptFinding, which: "mine" | "theirs") =>
      write(kept.place, kept, () => settleConflict(kept, which), null),
    [write],
  );
  return { writes, keep, settle };
};

/** Sends when something waits, again when the signal returns, and at growing intervals until then. */
const useSending = (report: string, waiting: number) => {
  const [connection, setConnection] = useState<Connection>("reached");
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
      setConnection("reached");
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

const none: ReadonlyMap<string, KeptFinding> = new Map();
const noGates: readonly KeptGate[] = [];

/**
 * A draft as it stands on this device, kept level with the service. Once opened here it is read from here where the service does not
 * answer, as long as the application itself is loaded.
 */
export const useDraft = (report: string) => {
  const { kept, failure, reload } = useKept(report);
  const { writes, keep, settle } = useWrites(report, reload);
  const remote = useQuery({
    queryKey: ["report", report],
    queryFn: async ({ signal }): Promise<ReportDraft> => {
      const draft = await call("reports.get", { params: { id: report }, signal });
      await keepDraft(draft);
      return draft;
    },
  });
  const stored = kept?.findings ?? none;
  const findings = useMemo(() => withWrites(report, stored, writes), [report, stored, writes]);
  const gates = kept?.gates ?? noGates;
  const waiting = [...stored.values()].filter(({ state }) => state === "waiting").length + gates.length;
  const sending = useSending(report, waiting);
  const standing = standingOf(findings, writes, sending.connection, gates.length);
  const draft = kept?.draft?.draft;
  const known = draft?.report.cautionsRead;
  const cautionsRead = useMemo(() => gatesRead(known, gates), [known, gates]);
  const readCautions = useCallback(
    async (stage: Stage) => {
      await keepGate(report, stage, new Date().toISOString());
      await reload();
    },
    [report, reload],
  );
  return {
    draft,
    findings,
    cautionsRead,
    readCautions,
    standing,
    keep,
    settle,
    failure,
    remote,
    ...sending,
  };
};
