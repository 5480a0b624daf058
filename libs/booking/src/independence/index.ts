import type { CarDealing, DeclaredInterest } from "@evenhand/shared/booking";
import type { Conflict } from "../calendar/index.ts";
import type { RefusedHour } from "../refused-hour/index.ts";

const DAY_MS = 86_400_000;

/** The year over which shares of work are counted, and for which an ended interest still counts. */
export const INDEPENDENCE_YEAR_MS = 365 * DAY_MS;

/** A visit the inspector has done: where and when. */
export type PastVisit = { readonly dealer: string; readonly at: number };

/** A car the inspector or their firm once had to do with. */
export type CarDealt = { readonly car: string; readonly dealing: CarDealing };

export type IndependenceQuestion = {
  readonly now: number;
  readonly dealer: string;
  readonly cars: readonly string[];
  readonly interests: readonly DeclaredInterest[];
  readonly dealings: readonly CarDealt[];
  /** Every visit done, at any dealer. */
  readonly visits: readonly PastVisit[];
};

/** How much of a year's work lay at this dealer; `share` is `null` where no work was done at all. */
export type ShareOfWork = { readonly atDealer: number; readonly all: number; readonly share: number | null };

export type IndependenceJudgment = {
  readonly mayAccept: boolean;
  /** Why not, if not. */
  readonly conflicts: readonly Conflict[];
  /** Interests in this dealer that ended more than a year ago: no bar, and always shown. */
  readonly past: readonly DeclaredInterest[];
  /** Always shown, whatever it is. */
  readonly share: ShareOfWork;
};

/** Counts the visits of the last year. A high share is shown, never judged: there is no figure at which it turns bad. */
function shareOfWork({ now, dealer, visits }: IndependenceQuestion): ShareOfWork {
  const lastYear = visits.filter(({ at }) => at > now - INDEPENDENCE_YEAR_MS && at <= now);
  const atDealer = lastYear.filter((visit) => visit.dealer === dealer).length;
  return { atDealer, all: lastYear.length, share: lastYear.length === 0 ? null : atDealer / lastYear.length };
}

/**
 * May this inspector accept work on these cars at this dealer?
 *
 * Not with an interest in the dealer, their own or their firm's, that stands or ended within the year; not where either
 * owned, bought, sold, repaired, restored or consigned the car.
 *
 * Source: the idea of a type A body in ISO/IEC 17020:2012, 4.1.6 and Annex A.1, read in secondary texts: independent of the
 * parties, and no part in making, selling, owning or servicing what is inspected. Our own, and in no standard: the list of
 * interests and of dealings, that family, loans and commissions count, the year after which an interest no longer bars, and
 * the share of a year's work shown. Passing this does not make anybody a body of type A.
 *
 * @example
 * judgeIndependence({ now, dealer: "d", cars: ["c"], interests: [], dealings: [{ car: "c", dealing: "repaired" }], visits: [] })
 * // { mayAccept: false, conflicts: [{ code: "dealt-with-car", dealing: "repaired", car: "c" }], past: [],
 * //   share: { atDealer: 0, all: 0, share: null } }
 */
export function judgeIndependence(question: IndependenceQuestion): IndependenceJudgment {
  const { now, dealer, cars, dealings } = question;
  const interests = question.interests.filter((interest) => interest.dealer === dealer);
  const counts = ({ endedAt }: DeclaredInterest): boolean =>
    endedAt === null || Date.parse(endedAt) > now - INDEPENDENCE_YEAR_MS;
  const conflicts: Conflict[] = [
    ...interests
      .filter(counts)
      .map(({ kind, holder }) => ({ code: "interest-in-dealer" as const, kind, holder })),
    ...dealings
      .filter(({ car }) => cars.includes(car))
      .map(({ car, dealing }) => ({ code: "dealt-with-car" as const, dealing, car })),
  ];
  return {
    mayAccept: conflicts.length === 0,
    conflicts,
    past: interests.filter((interest) => !counts(interest)),
    share: shareOfWork(question),
  };
}

/**
 * What speaks against an hour, in two: a part in the dealer or the car, which no other hour would mend, and the rest.
 *
 * @example splitConflicts([{ code: "inspector-taken", taken }]) // { refusedHour: [{ code: "inspector-taken", taken }], conflicts: [] }
 */
export const splitConflicts = (
  reasons: readonly RefusedHour[],
): { refusedHour: RefusedHour[]; conflicts: Conflict[] } => ({
  refusedHour: reasons.filter(({ code }) => code !== "not-independent"),
  conflicts: reasons.flatMap((each) => (each.code === "not-independent" ? each.conflicts : [])),
});
