import type { DistanceUnit, LandedCostEntries, TransportRates } from "@evenhand/shared/landed-cost";

/** The international mile in kilometers (NIST SP 811, exact). */
const KILOMETERS_A_MILE = 1.609344;
const kilometers: Readonly<Record<DistanceUnit, number>> = { km: 1, mi: KILOMETERS_A_MILE };

/**
 * What a trip costs by a table of rates: that of the first band that reaches so far, for the trip or for each mile or kilometer of
 * it, to the nearest minor unit. `null` beyond the last band, and where the band has no rate for this kind of carrier.
 */
export function tripCost(
  { distance, unit, carrier }: NonNullable<LandedCostEntries["trip"]>,
  rates: TransportRates,
): { minor: number; upTo: number } | null {
  const far = unit === rates.unit ? distance : (distance * kilometers[unit]) / kilometers[rates.unit];
  const band = rates.bands.find(({ upTo }) => far <= upTo);
  const rate = band?.[carrier] ?? null;
  if (band === undefined || rate === null) return null;
  return { minor: rates.per === "trip" ? rate : Math.round(rate * far), upTo: band.upTo };
}
