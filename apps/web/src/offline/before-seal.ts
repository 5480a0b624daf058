import type { ReportDraft } from "@evenhand/shared/http/reports";
import { keepDraft } from "./changes";
import { store, type KeptFinding } from "./store";
import { sendWaiting } from "./sync";
import { isDue } from "./upload-queue";

/** `unsent`: something of this report has not arrived. `changed`: places that another device changed, not looked at here. */
export type NotReady =
  | { readonly why: "unsent"; readonly places: readonly string[] }
  | { readonly why: "changed"; readonly places: readonly string[] };

/** Says why a report may not be sealed as it stands here. */
export class NotReadyToSeal extends Error {
  readonly reason: NotReady;

  constructor(reason: NotReady) {
    super(reason.why);
    this.name = "NotReadyToSeal";
    this.reason = reason;
  }
}

const here = async (report: string): Promise<readonly KeptFinding[]> =>
  store.findings.where("report").equals(report).toArray();

/** Places of which something has not arrived, asked of what is kept and not of what is shown. */
const unsentPlaces = async (report: string): Promise<readonly string[]> => {
  const queued = await store.operations.where("report").equals(report).toArray();
  const open = (await here(report)).filter(({ state, unread }) => state !== "saved" || unread !== undefined);
  const files = (await store.uploads.where("report").equals(report).toArray())
    .filter(isDue)
    .map(({ item, position }) => ({ place: `${item}@${position}` }));
  return [...new Set([...queued, ...open, ...files].map(({ place }) => place))];
};

const revisions = (findings: readonly KeptFinding[]): ReadonlyMap<string, number | null> =>
  new Map(findings.map(({ place, base }) => [place, base]));

/**
 * Sends what waits, and gives the revision to seal: that of exactly what this person sees. @throws NotReadyToSeal where something
 * has not arrived, or was changed elsewhere meanwhile; what was changed is on the page then.
 */
export const readyToSeal = async (
  report: string,
  fetchDraft: (report: string) => Promise<ReportDraft>,
  send: (report: string) => Promise<unknown> = sendWaiting,
): Promise<number> => {
  await send(report);
  const unsent = await unsentPlaces(report);
  if (unsent.length > 0) throw new NotReadyToSeal({ why: "unsent", places: unsent });
  const seen = revisions(await here(report));
  const draft = await fetchDraft(report);
  await keepDraft(draft);
  const now = revisions(await here(report));
  const places = [...new Set([...seen.keys(), ...now.keys()])].filter(
    (place) => seen.get(place) !== now.get(place),
  );
  if (places.length > 0) throw new NotReadyToSeal({ why: "changed", places });
  return draft.revision;
};
