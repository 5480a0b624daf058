import { newId } from "../service/new-id";
import type { Finding } from "@evenhand/shared/finding";
import type { ReportDraft } from "@evenhand/shared/http/reports";
import { store, type KeptFinding } from "./store";

const placeOf = (finding: { readonly item: string; readonly position: string }): string =>
  `${finding.item}@${finding.position}`;

/**
 * Keeps a change of one finding on this device, and queues it. A change not yet sent is replaced by the next one of the same
 * finding; one that was sent may have arrived, so the next one queues behind it.
 */
export const changeFinding = async (
  report: string,
  place: string,
  finding: Finding | null,
): Promise<void> => {
  await store.transaction("rw", store.findings, store.operations, async () => {
    const known = await store.findings.get([report, place]);
    const queued = await store.operations.where("[report+place]").equals([report, place]).toArray();
    await store.findings.put({ report, place, finding, base: known?.base ?? null, state: "waiting" });
    if (!queued.some(({ sent }) => sent === undefined)) {
      await store.operations.add({ id: newId(), report, place });
    }
  });
};

/** Takes what the service holds as the truth, except where this device has something that has not arrived. */
export const keepDraft = async (draft: ReportDraft): Promise<void> => {
  const { findings, ...rest } = draft;
  await store.transaction("rw", store.findings, store.operations, store.drafts, async () => {
    await store.drafts.put({ report: draft.id, draft: rest });
    const here = await store.findings.where("report").equals(draft.id).toArray();
    const held = new Set(here.filter(({ state }) => state !== "saved").map(({ place }) => place));
    const there = draft.report.findings.map((finding, at): KeptFinding => ({
      report: draft.id,
      place: placeOf(finding),
      finding,
      base: findings[at]?.revision ?? null,
      state: "saved",
    }));
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
export const settleConflict = async (kept: KeptFinding, keep: "mine" | "theirs"): Promise<void> => {
  if (keep === "mine") {
    await changeFinding(kept.report, kept.place, kept.finding);
    return;
  }
  const { report, place, base } = kept;
  if (kept.theirs) await store.findings.put({ report, place, finding: kept.theirs, base, state: "saved" });
  else await store.findings.delete([report, place]);
};
