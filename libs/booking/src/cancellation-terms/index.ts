import type { CancellationCause } from "@evenhand/shared/booking";
import type { VisitCost } from "../visit-cost/index.ts";

const HOUR_MS = 3_600_000;
const WHOLE = 10_000;

/** With at least so many milliseconds of notice, this share in basis points (1 / 10 000). */
export type NoticeBand = { readonly atLeast: number; readonly share: number };

/** Terms as shown before booking. Bands from the longest notice to the shortest; the last holds for anything shorter. */
export type CancellationTerms = {
  readonly version: string;
  /** Share of the visit and site fees the buyer pays. */
  readonly buyerWithdraws: readonly NoticeBand[];
  /** Share of the visit fee the dealer owes for a wasted visit. */
  readonly dealerFails: readonly NoticeBand[];
  /** Share of the travel fee paid when weather turns back an inspector who has set out. */
  readonly weatherTravel: number;
  /** Least share of the visit fee when a visit is stopped for safety; else the share of the minutes done. */
  readonly safetyLeast: number;
  /** Share of the site fee an inspector owes who did not come. */
  readonly missedSite: number;
};

/** Defaults an operator may change; common practice, no source. */
export const DEFAULT_TERMS: CancellationTerms = {
  version: "2026-11",
  buyerWithdraws: [
    { atLeast: 48 * HOUR_MS, share: 0 },
    { atLeast: 24 * HOUR_MS, share: 2_500 },
    { atLeast: 4 * HOUR_MS, share: 5_000 },
    { atLeast: 0, share: WHOLE },
  ],
  dealerFails: [
    { atLeast: 48 * HOUR_MS, share: 0 },
    { atLeast: 24 * HOUR_MS, share: 5_000 },
    { atLeast: 0, share: WHOLE },
  ],
  weatherTravel: WHOLE,
  safetyLeast: 5_000,
  missedSite: WHOLE,
};

/** How far the visit had come. */
export type WorkDone = {
  /** The inspector was on the way or there: travel is owed. */
  readonly setOut: boolean;
  readonly minutesDone: number;
  readonly minutesPlanned: number;
};

export const NO_WORK: WorkDone = { setOut: false, minutesDone: 0, minutesPlanned: 0 };

/**
 * Who gets and who owes what, in whole minor units. What the buyer paid is split between `buyerPays` and
 * `buyerRefunded`; what the buyer pays, the dealer owes and the inspector owes goes to the inspector and the site.
 */
export type Settlement = {
  readonly currency: string;
  readonly buyerPays: number;
  readonly buyerRefunded: number;
  readonly dealerOwes: number;
  readonly inspectorOwes: number;
  readonly inspectorGets: number;
  readonly siteGets: number;
};

export type SettlementQuestion = {
  readonly cause: CancellationCause;
  /** Milliseconds from the cancelling to the start; negative once it has begun. */
  readonly notice: number;
  readonly cost: VisitCost;
  readonly terms: CancellationTerms;
  readonly work: WorkDone;
  /** Share a buyer owes at least, carried over from a late change of the hour. Basis points. */
  readonly leastShare?: number;
};

type Shares = { readonly visit: number; readonly travel: number; readonly site: number };
const NOTHING: Shares = { visit: 0, travel: 0, site: 0 };

/**
 * The share of the first band whose notice is met; of the last where none is.
 *
 * @example shareAt(DEFAULT_TERMS.buyerWithdraws, 30 * HOUR_MS) // 2500
 */
export function shareAt(bands: readonly NoticeBand[], notice: number): number {
  const band = bands.find(({ atLeast }) => notice >= atLeast) ?? bands.at(-1);
  return band?.share ?? 0;
}

const part = (amount: number, share: number): number => Math.round((amount * share) / WHOLE);

function buyerShares({ notice, terms, work, leastShare = 0 }: SettlementQuestion): Shares {
  const share = Math.max(leastShare, shareAt(terms.buyerWithdraws, notice));
  return { visit: share, travel: work.setOut ? WHOLE : 0, site: share };
}

function safetyShares({ terms, work }: SettlementQuestion): Shares {
  const done = work.minutesPlanned > 0 ? Math.floor((WHOLE * work.minutesDone) / work.minutesPlanned) : 0;
  return { visit: Math.min(WHOLE, Math.max(terms.safetyLeast, done)), travel: WHOLE, site: WHOLE };
}

const dealerShares = ({ notice, terms, work }: SettlementQuestion): Shares => ({
  visit: shareAt(terms.dealerFails, notice),
  travel: work.setOut ? WHOLE : 0,
  site: 0,
});

type Rule = {
  readonly payer: "buyer" | "dealer" | "inspector";
  readonly shares: (question: SettlementQuestion) => Shares;
};

const BY_DEALER: Rule = { payer: "dealer", shares: dealerShares };

/** Who pays for what, by cause. */
const RULES: Readonly<Record<CancellationCause, Rule>> = {
  "buyer-withdrew": { payer: "buyer", shares: buyerShares },
  "inspector-unavailable": { payer: "inspector", shares: () => NOTHING },
  "inspector-missed": { payer: "inspector", shares: ({ terms }) => ({ ...NOTHING, site: terms.missedSite }) },
  "dealer-unavailable": BY_DEALER,
  "car-sold": BY_DEALER,
  "car-absent": BY_DEALER,
  "car-warm": BY_DEALER,
  "car-not-on-lift": BY_DEALER,
  weather: {
    payer: "buyer",
    shares: ({ terms, work }) => ({ ...NOTHING, travel: work.setOut ? terms.weatherTravel : 0 }),
  },
  "stopped-for-safety": { payer: "buyer", shares: safetyShares },
};

/**
 * What a cancelled visit costs whom, by cause and notice. The visit and travel fees go to the inspector, the site fee to
 * the site. Where the car was sold, absent, warm or not on the lift, the dealer owes the wasted visit and the buyer has
 * everything back.
 *
 * @example
 * settleCancellation({ cause: "car-absent", notice: 0, cost, terms: DEFAULT_TERMS, work: { ...NO_WORK, setOut: true } })
 * // of 40 000 + 1 000 + 3 500: buyerRefunded 44 500, dealerOwes 41 000, inspectorGets 41 000
 */
export function settleCancellation(question: SettlementQuestion): Settlement {
  const { cost, cause } = question;
  const { payer, shares } = RULES[cause];
  const { visit, travel, site } = shares(question);
  const inspectorGets = part(cost.visit, visit) + part(cost.travel, travel);
  const siteGets = part(cost.site, site);
  const owed = inspectorGets + siteGets;
  const buyerPays = payer === "buyer" ? owed : 0;
  return {
    currency: cost.currency,
    buyerPays,
    buyerRefunded: cost.total - buyerPays,
    dealerOwes: payer === "dealer" ? owed : 0,
    inspectorOwes: payer === "inspector" ? owed : 0,
    inspectorGets,
    siteGets,
  };
}

/** A visit done and reported, whatever was found: everything is paid. */
export const settleReported = ({ currency, visit, travel, site, total }: VisitCost): Settlement => ({
  currency,
  buyerPays: total,
  buyerRefunded: 0,
  dealerOwes: 0,
  inspectorOwes: 0,
  inspectorGets: visit + travel,
  siteGets: site,
});
