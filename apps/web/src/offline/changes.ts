import { newId } from "../service/new-id";
import { Finding } from "@evenhand/shared/finding";
import type { ReportDraft } from "@evenhand/shared/http/reports";
import type { FieldProblem } from "@evenhand/shared/problem";
import { readableHeader } from "@evenhand/sheet/readable-header";
import { stepPlace } from "./kept-places";
import { decidePlace, type PlaceHere } from "./place-states";
import { store, type Change, type KeptFinding, type KeptOperation } from "./store";

export type { Change } from "./store";

const placeOf = (finding: { readonly item: string; readonly position: string }): string =>
  `${finding.item}@${finding.position}`;

/**
 * Keeps a change of one finding on this device, and queues it. A change not yet sent is replaced by the next one of the same
 * finding; one that was sent may have arrived, so the next one queues behind it. In a conflict nothing is queued until the person
 * has said which of the two stands.
 */
export const changeFinding = async (
  report: string,
  place: string,
  change: Change,
  on = store,
): Promise<void> => stepPlace(on, report, place, { type: "keep", report, place, id: newId(), change });

/** A conflict ends when the person says which of the two stands. */
export const settleConflict = async (
  { report, place }: Pick<KeptFinding, "report" | "place">,
  which: "mine" | "theirs",
  on = store,
): Promise<void> => stepPlace(on, report, place, { type: "settle", id: newId(), which });

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

/** Every place that this device or the service has something of, as it stands here. */
const placesOf = (
  findings: readonly KeptFinding[],
  operations: readonly KeptOperation[],
  places: Iterable<string>,
): ReadonlyMap<string, PlaceHere> => {
  const kept = new Map(findings.map((one) => [one.place, one]));
  const queues = Map.groupBy(operations, ({ place }) => place);
  const all = new Set([...kept.keys(), ...places]);
  return new Map([...all].map((place) => [place, { kept: kept.get(place), queue: queues.get(place) ?? [] }]));
};

/** Takes what the service holds of each place, where nothing that has not arrived stands here. */
const bringFindings = async ({ id, report, findings }: ReportDraft, on: typeof store): Promise<void> => {
  const held = new Map(
    report.findings.map((raw, at) => [placeOf(raw), fromService(id, raw, findings[at]?.revision ?? null)]),
  );
  const here = placesOf(
    await on.findings.where("report").equals(id).toArray(),
    await on.operations.where("report").equals(id).toArray(),
    held.keys(),
  );
  const after = [...here].map(([place, one]) => {
    const { kept } = decidePlace(one, { type: "bring", held: held.get(place) });
    return { place, before: one.kept, kept };
  });
  const changed = after.filter(({ before, kept }) => before !== kept);
  await on.findings.bulkPut(changed.flatMap(({ kept }) => kept ?? []));
  await on.findings.bulkDelete(
    changed.filter(({ kept }) => kept === undefined).map(({ place }) => [id, place]),
  );
};

/**
 * Takes what the service holds as the truth, except where this device has something that has not arrived. A draft that was on its way
 * while something newer was saved is left aside: it would put back what stood before.
 */
export const keepDraft = async (draft: ReportDraft, on = store): Promise<void> => {
  const { findings: _findings, ...rest } = draft;
  await on.transaction("rw", on.findings, on.operations, on.drafts, on.heard, async () => {
    const heard = await on.heard.get(draft.id);
    if (heard !== undefined && heard.revision > draft.revision) return;
    await on.heard.put({ report: draft.id, revision: draft.revision });
    const report = { ...rest.report, ...readableHeader(rest.report).header };
    await on.drafts.put({ report: draft.id, draft: { ...rest, report } });
    await bringFindings(draft, on);
  });
};
