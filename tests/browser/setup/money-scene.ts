import { caseOn } from "../../api/setup/homes.ts";
import type { Person } from "../../api/setup/person.ts";

const usd = (minor: number) => ({ minor, currency: "USD" });

/**
 * What a buyer enters for a car, with lines left unset and one in another currency.
 *
 * @returns the buyer's case
 */
export async function enterLandedCost(buyer: Person, vehicle: string): Promise<string> {
  const { id = "" } = (await caseOn(buyer, vehicle)) ?? {};
  const bands = [
    { upTo: 500, open: 140, enclosed: 210 },
    { upTo: 1500, open: 105, enclosed: null },
  ];
  await buyer.does("transportRates.put", {
    revision: 0,
    body: { currency: "USD", unit: "mi", per: "distance", bands, source: "quotes of three carriers" },
  });
  await buyer.does("landedCost.put", {
    path: { id },
    revision: 0,
    body: {
      lines: {
        duty: { amount: { minor: 310_000, currency: "JPY" }, source: "the broker's letter of May 2" },
        registration: { amount: usd(41_500), source: "the county clerk's table of fees" },
      },
      trip: { distance: 740, unit: "mi", carrier: "open" },
      currency: "USD",
      rates: [{ from: "JPY", to: "USD", rate: 0.0066, on: "2026-11-20", source: "my bank" }],
      limit: usd(6_500_000),
    },
  });
  return id;
}
