import { newId } from "../service/new-id";
import { Finding } from "@evenhand/shared/finding";
import type { ReportDraft } from "@evenhand/shared/http/reports";
import type { FieldProblem } from "@evenhand/shared/problem";
import { readableHeader } from "@evenhand/sheet/readable-header";
import { store, type KeptFinding, type Unread } from "./store";

const placeOf = (finding: { readonly item: string; readonly position: string }): string =>
  `${finding.item}@${finding.position}`;

/** What a place says from now on: its finding, and what was typed there and cannot be read. */
export interface Change {
  readonly finding: Finding | null;
  readonly unread?: Unread | undefined;
}

/**
 * Keeps a change of one finding on this device, and queues it. A change not yet sent is replaced by the next one of the same
 * finding; one that was sent may have arrived, so the next one queues behind it. In a conflict nothing is queued until the person
 * has said which of the two stands.
 */
export const changeFinding = async (
  report: string,
  place: string,
  { finding, unread }: Change,
): Promise<void> => {
  await store.transaction("rw", store.findings, store.operations, async () => {
    const known = await store.findings.get([report, place]);
    const next = { report, place, finding, unread, base: known?.base ?? null };
    if (known?.state === "conflict") {
      await store.findings.put({ ...next, state: "conflict", theirs: known.theirs });
      return;
    }
    const queued = await store.operations.where("[report+place]").equals([report, place]).toArray();
    await store.findings.put({ ...next, state: "waiting" });
    if (!queued.some(({ sent }) => sent === undefined)) {
      await store.operations.add({ id: newId(), report, place });
    }
  });
};

const noLongerRead: FieldProblem = {
  at: "",
  reason: "What is stored here cannot be read any more. Answer it anew.",
};

/** A finding as the service has it; one that cannot be read stays in its place, to be answered anew. */
const fromService = (report: string, raw: Finding, base: number | null): KeptFinding => {
  const read = Finding.safeParse(raw);
  const place = placeOf(raw);
  return read.success
    ? { report, place, finding: read.data, base, state: "saved" }
    : { report, place, finding: null, base, state: "refused", problems: [noLongerRead] };
};

/** Something of this place has not arrived, or is to be looked at by the person first. */
const isHeldHere = ({ state, unread, finding }: KeptFinding): boolean =>
  unread !== undefined || (state !== "saved" && !(state === "refused" && finding === null));

/**
 * Takes what the service holds as the truth, except where this device has something that has not arrived. A draft that was on its way
 * while something newer was saved is left aside: it would put back what stood before.
 */
export const keepDraft = async (draft: ReportDraft): Promise<void> => {
  const { findings, ...rest } = draft;
  await store.transaction("rw", store.findings, store.operations, store.drafts, async () => {
    const known = await store.drafts.get(draft.id);
    if (known !== undefined && known.draft.revision > draft.revision) return;
    const report = { ...rest.report, ...readableHeader(rest.report).header };
    await store.drafts.put({ report: draft.id, draft: { ...rest, report } });
    const here = await store.findings.where("report").equals(draft.id).toArray();
    const held = new Set(here.filter(isHeldHere).map(({ place }) => place));
    const there = draft.report.findings.map((finding, at) =>
      fromService(draft.id, finding, findings[at]?.revision ?? null),
    );
    const places = new Set(there.map(({ place }) => place));
    await store.findings.bulkDelete(
      here
        .filter(({ place }) => !held.has(place) && !places.has(place))
        .map(({ place }) => [draft.id, place]),
    );
    await store.findings.bulkPut(there.filter(({ place }) => !held.has(place)));
  });
};

/** A conflict ends when the person says which of the two stands. */
export const settleConflict = async (
  { report, place }: Pick<KeptFinding, "report" | "place">,
  keep: "mine" | "theirs",
): Promise<void> => {
  await store.transaction("rw", store.findings, store.operations, async () => {
    const kept = await store.findings.get([report, place]);
    if (kept?.state !== "conflict") return;
    const { theirs = null, base, finding, unread } = kept;
    if (keep === "mine") {
      await store.findings.put({ report, place, base, finding, unread, state: "waiting" });
      await store.operations.add({ id: newId(), report, place });
    } else if (theirs) {
      await store.findings.put({ report, place, base, finding: theirs, state: "saved" });
    } else {
      await store.findings.delete([report, place]);
    }
  });
};
