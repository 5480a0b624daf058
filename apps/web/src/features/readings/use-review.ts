import type { Finding } from "@evenhand/shared/finding";
import { useCallback, useMemo, useState } from "react";
import type { Draft } from "../../offline/use-draft";
import { bringScales } from "./bring-scales";
import { lineGroups } from "./line-groups";
import type { Proposal, Review } from "./review";
import {
  type AtPlace,
  type Deed,
  type Deeds,
  findingOf,
  proposalsOf,
  settledLine,
  type Standing,
  standingOf,
} from "./standing";
import { call } from "../../service/client";
import { placeKey } from "../../entities/sheet/places";

/** A grade on a scale of the sheet needs that scale in the report. */
const scalesFor = ({ scales }: Review, findings: readonly Finding[]) =>
  scales.filter(({ id }) => findings.some(({ answer }) => answer.kind === "grade" && answer.scale === id));

/** Settled by hand is what was unsure, empty or changed; what was sure is read the same the next time anyhow. */
const isSettling = ({ finding, line, doubts }: Proposal, accepted: Finding): boolean =>
  line !== null &&
  line !== "" &&
  (doubts.length > 0 || finding?.item !== accepted.item || finding.position !== accepted.position);

const remember = async (
  report: string,
  all: readonly Proposal[],
  accepted: Accepted,
  deeds: Deeds,
): Promise<void> => {
  const lines = accepted
    .filter(([proposal, finding]) => isSettling(proposal, finding))
    .map(([{ line }, { item }]) => settledLine(line ?? "", item, all, deeds));
  await Promise.all(
    lineGroups(lines).map((group) =>
      call("reports.settleLines", { params: { id: report }, body: { lines: group } }),
    ),
  );
};

type Accepted = readonly (readonly [Proposal, Finding])[];

/** A reading to be gone through, and what was done with it so far. */
export interface Reading {
  readonly review: Review;
  /** As they were when it was opened. */
  readonly deeds: Deeds;
  readonly onDeeds: (deeds: Deeds) => void;
}

/** How each proposal stands, and what was done with it here. */
const useDeeds = ({ review, deeds: before, onDeeds }: Reading, findings: Draft["findings"]) => {
  const [deeds, setDeeds] = useState(before);
  const keep = (next: Deeds): void => {
    setDeeds(next);
    onDeeds(next);
  };
  const all = useMemo(() => proposalsOf(review), [review]);
  const at: AtPlace = useCallback(
    (item, position) => findings.get(placeKey(item, position))?.finding ?? null,
    [findings],
  );
  const standing = useCallback((one: Proposal): Standing => standingOf(one, deeds, at), [deeds, at]);
  const note = (entries: readonly (readonly [string, Deed])[]): Deeds => {
    const next = new Map([...deeds, ...entries]);
    keep(next);
    return next;
  };
  const drop = (key: string): void => keep(new Map([...deeds].filter(([each]) => each !== key)));
  return { all, deeds, at, standing, note, drop };
};

/** Writes what was accepted into the draft, with the scales it needs, and remembers what was settled of a sheet. */
const useWriting = (report: string, review: Review, draft: Draft, done: ReturnType<typeof useDeeds>) => {
  const [error, setError] = useState<unknown>(null);
  const { all, at, note } = done;
  const write = async (accepted: Accepted): Promise<void> => {
    setError(null);
    try {
      const scales = scalesFor(
        review,
        accepted.map(([, finding]) => finding),
      );
      if (scales.length > 0 && (await bringScales(report, scales))) await draft.remote.refetch();
      const after = note(
        accepted.map(([{ key }, finding]) => [
          key,
          { is: "accepted", finding, before: at(finding.item, finding.position) },
        ]),
      );
      await Promise.all(
        accepted.map(([, finding]) => draft.keep(placeKey(finding.item, finding.position), { finding })),
      );
      await remember(report, all, accepted, after);
    } catch (failure) {
      setError(failure);
    }
  };
  return { error, write };
};

/** One reading gone through: how each proposal stands, and what may be done with it. What is accepted is kept as if it had been typed. */
export const useReview = (report: string, reading: Reading, draft: Draft) => {
  const { review } = reading;
  const done = useDeeds(reading, draft.findings);
  const { all, deeds, at, standing, note, drop } = done;
  const { error, write } = useWriting(report, review, draft, done);
  const accept = (chosen: readonly Proposal[]): Promise<void> =>
    write(
      chosen.flatMap((one) => {
        const finding = findingOf(one, deeds);
        return finding === null ? [] : [[one, finding] as const];
      }),
    );
  const change = (one: Proposal, finding: Finding): Promise<void> => write([[one, finding]]);
  const reject = ({ key, finding }: Proposal): void => {
    note([[key, { is: "rejected", finding, before: null }]]);
  };
  const takeBack = async (one: Proposal): Promise<void> => {
    const deed = deeds.get(one.key);
    const finding = findingOf(one, deeds);
    // What stood in the draft before is taken back on the sheet, not here.
    if (deed === undefined) return;
    drop(one.key);
    if (deed.is === "rejected" || finding === null) return;
    await draft.keep(placeKey(finding.item, finding.position), { finding: deed.before });
  };
  const { scales } = review;
  return { all, deeds, scales, at, standing, error, accept, change, reject, takeBack };
};

export type Reviewing = ReturnType<typeof useReview>;

/** A settled line is read as any other the next time. */
export const forgetLine = async (report: string, { line }: Proposal): Promise<void> => {
  if (line !== null)
    await call("reports.settleLines", { params: { id: report }, body: { lines: [{ line, item: null }] } });
};
