import type { Offer } from "@evenhand/booking/free-hours";
import type { RefusedHour } from "@evenhand/booking/refused-hour";
import type { CancellationTerms, NoticeBand } from "@evenhand/booking/cancellation-terms";
import type { VisitCost } from "@evenhand/booking/visit-cost";
import type { OfferBody } from "@evenhand/shared/booking";
import type { BookingTerms, RefusedHourBody } from "@evenhand/shared/http/booking";
import { toStretch } from "../calendars/index.ts";

const MINUTE = 60_000;
export const instant = (at: number): string => new Date(at).toISOString();
const orNull = (stretch: { start: number; end: number } | null) =>
  stretch === null ? null : toStretch(stretch);

/** A refused hour as the interface gives it: instants in words, lengths in minutes. */
export function refusedBody(refused: RefusedHour): RefusedHourBody {
  switch (refused.code) {
    case "notice":
      return { code: refused.code, earliest: instant(refused.earliest) };
    case "off-the-step":
      return { code: refused.code, earlier: instant(refused.earlier), later: instant(refused.later) };
    case "site-closed":
      return { code: refused.code, nearest: orNull(refused.nearest) };
    case "dealer-closed":
      return { code: refused.code, closure: toStretch(refused.closure) };
    case "no-bay":
      return { ...refused, needed: toStretch(refused.needed) };
    case "no-daylight":
      return { ...refused, needed: toStretch(refused.needed), nearest: orNull(refused.nearest) };
    case "car-taken":
      return { ...refused, taken: toStretch(refused.taken) };
    case "car-not-cold":
      return { ...refused, taken: toStretch(refused.taken), soak: refused.soak / MINUTE };
    case "outside-hours":
      return { code: refused.code, away: toStretch(refused.away), nearest: orNull(refused.nearest) };
    case "inspector-taken":
      return { code: refused.code, taken: toStretch(refused.taken) };
    case "travel":
      return { ...refused, needed: refused.needed / MINUTE, available: refused.available / MINUTE };
    case "lacks-skill":
      return { code: refused.code, skills: [...refused.skills] };
    case "not-independent":
      return { code: refused.code, conflicts: [...refused.conflicts] };
    default:
      return refused;
  }
}

export function costBody({ currency, visit, travel, site, total }: VisitCost): OfferBody["cost"] {
  const money = (minor: number) => ({ minor, currency });
  return { visit: money(visit), travel: money(travel), site: money(site), total: money(total) };
}

export const offerBody = (offer: Offer, outMeters: number): OfferBody => ({
  id: offer.id,
  inspector: offer.inspector,
  start: instant(offer.start),
  end: instant(offer.end),
  bays: offer.bays.map(({ car, bay, ...stay }) => ({ car, bay, ...toStretch(stay) })),
  travel: {
    outMeters: Math.round(outMeters),
    outMinutes: offer.travel.out / MINUTE,
    backMinutes: offer.travel.back / MINUTE,
  },
  cost: costBody(offer.cost),
});

const inMinutes = (bands: readonly NoticeBand[]) =>
  bands.map(({ atLeast, share }) => ({ atLeast: atLeast / MINUTE, share }));
const inMilliseconds = (bands: readonly NoticeBand[]) =>
  bands.map(({ atLeast, share }) => ({ atLeast: atLeast * MINUTE, share }));

export const termsBody = (terms: CancellationTerms): BookingTerms => ({
  ...terms,
  buyerWithdraws: inMinutes(terms.buyerWithdraws),
  dealerFails: inMinutes(terms.dealerFails),
});
export const toTerms = (terms: BookingTerms): CancellationTerms => ({
  ...terms,
  buyerWithdraws: inMilliseconds(terms.buyerWithdraws),
  dealerFails: inMilliseconds(terms.dealerFails),
});
