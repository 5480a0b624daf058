import { canonicalJson } from "@evenhand/record/canonical-json";
import type { Finding } from "@evenhand/shared/finding";
import type { KeptReading, ReadingDeed } from "../../offline/store";
import type { Proposal, Review } from "./review";

export type Deed = ReadingDeed;
export type Deeds = KeptReading["deeds"];

/** What the draft holds at a place. */
export type AtPlace = (item: string, position: string) => Finding | null;

/**
 * How a proposal stands: `open`; `empty`, nothing could be read and it is settled by hand; `other`, the draft says something else there;
 * `wrong`, the report would not take it.
 */
export type Standing = "accepted" | "rejected" | "open" | "empty" | "other" | "wrong";

/** Whether somebody is done with it. */
export const isDecided = (standing: Standing): standing is "accepted" | "rejected" =>
  standing === "accepted" || standing === "rejected";

/** Whether two findings say the same, as firmly; the notes beside them may differ. */
export const saysSame = (a: Finding | null, b: Finding): boolean =>
  a !== null && a.firmness === b.firmness && canonicalJson(a.answer) === canonicalJson(b.answer);

/** A proposal as it would be written: as it was changed, or as it was read. */
export const findingOf = (proposal: Proposal, deeds: Deeds): Finding | null =>
  deeds.get(proposal.key)?.finding ?? proposal.finding;

export const standingOf = (proposal: Proposal, deeds: Deeds, at: AtPlace): Standing => {
  if (deeds.get(proposal.key)?.is === "rejected") return "rejected";
  const finding = findingOf(proposal, deeds);
  if (finding === null) return "empty";
  const there = at(finding.item, finding.position);
  if (saysSame(there, finding)) return "accepted";
  if (there !== null) return "other";
  const isChanged = finding !== proposal.finding;
  return !isChanged && proposal.doubts.some(({ is }) => is === "problem") ? "wrong" : "open";
};

export const proposalsOf = ({ blocks }: Review): readonly Proposal[] =>
  blocks.flatMap(({ proposals }) => proposals);

export interface Counts {
  readonly all: number;
  readonly accepted: number;
  readonly rejected: number;
  readonly left: number;
}

export const countsOf = (standings: readonly Standing[]): Counts => {
  const of = (which: Standing): number => standings.filter((one) => one === which).length;
  const [accepted, rejected] = [of("accepted"), of("rejected")];
  return { all: standings.length, accepted, rejected, left: standings.length - accepted - rejected };
};

/** What one press may accept: open, without a doubt, at least so sure. Nothing that stands in the draft is written over. */
export const acceptable = (
  proposals: readonly Proposal[],
  least: number,
  standing: (proposal: Proposal) => Standing,
): readonly Proposal[] =>
  proposals.filter(
    (one) =>
      one.confidence >= least &&
      !one.doubts.some(({ is }) => is === "unsure" || is === "problem") &&
      standing(one) === "open",
  );

/** What a line of a sheet is from now on: every place of its item that was accepted of it. */
export const settledLine = (
  line: string,
  item: string,
  proposals: readonly Proposal[],
  deeds: Deeds,
): { readonly line: string; readonly item: string; readonly positions: string[] } => ({
  line,
  item,
  positions: [
    ...new Set(
      proposals.flatMap((one) => {
        const deed = deeds.get(one.key);
        const finding = findingOf(one, deeds);
        return one.line === line && deed?.is !== "rejected" && finding?.item === item
          ? [finding.position]
          : [];
      }),
    ),
  ],
});
