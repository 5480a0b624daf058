import type { Closure, SiteSeen } from "@evenhand/shared/http/sites";
import { parseMoney, usualCurrency } from "../../ui/money";
import { amountText, numberOf } from "./calendar-form";
import { firstHours, hoursOf, newKey, typedHours, type HoursTyped } from "./weekly-hours";
import { ownZone, today } from "../../entities/time/zone-time";

export interface BayTyped {
  readonly key: string;
  readonly id: string | null;
  readonly name: string;
}
export interface ClosureTyped extends Closure {
  readonly key: string;
}

export const newBay = (): BayTyped => ({ key: newKey(), id: null, name: "" });

/** The morning of this day on the site's clock, to begin with. */
export const newClosure = (zone: string): ClosureTyped => {
  const date = today(zone);
  return { key: newKey(), from: `${date}T09:00`, until: `${date}T12:00`, note: "" };
};

/** A site as it is typed. */
export interface SiteTyped {
  readonly name: string;
  readonly address: string;
  readonly latitude: string;
  readonly longitude: string;
  readonly hours: HoursTyped;
  readonly closures: readonly ClosureTyped[];
  readonly currency: string;
  readonly perVisit: string;
  readonly perLiftSpell: string;
  readonly bays: readonly BayTyped[];
}

export const firstSite = (): SiteTyped => ({
  name: "",
  address: "",
  latitude: "",
  longitude: "",
  hours: firstHours(ownZone()),
  closures: [],
  currency: usualCurrency,
  perVisit: "0",
  perLiftSpell: "0",
  bays: [],
});

export const typedSite = (site: SiteSeen): SiteTyped => ({
  name: site.name,
  address: site.address,
  latitude: String(site.place.latitude),
  longitude: String(site.place.longitude),
  hours: typedHours(site.hours),
  closures: site.closures.map((one) => ({ ...one, key: newKey() })),
  currency: site.fees.currency,
  perVisit: amountText(site.fees.perVisit, site.fees.currency),
  perLiftSpell: amountText(site.fees.perLiftSpell, site.fees.currency),
  bays: site.bays.map((bay) => ({ ...bay, key: bay.id })),
});

export type SiteNumber = "latitude" | "longitude" | "perVisit" | "perLiftSpell";
export type SiteText = "name" | "address" | "currency";

export const wrongSiteFields = (typed: SiteTyped): readonly SiteNumber[] => [
  ...(["latitude", "longitude"] as const).filter((name) => Number.isNaN(numberOf(typed[name]))),
  ...(["perVisit", "perLiftSpell"] as const).filter(
    (name) => parseMoney(typed[name], typed.currency) === null,
  ),
];

/** An `input type="datetime-local"` leaves the seconds out. */
const withSeconds = (local: string): string => (local.length === 16 ? `${local}:00` : local);

export const siteOf = (typed: SiteTyped) => ({
  name: typed.name,
  address: typed.address,
  place: { latitude: numberOf(typed.latitude), longitude: numberOf(typed.longitude) },
  hours: hoursOf(typed.hours),
  closures: typed.closures.map(({ from, until, note }) => ({
    from: withSeconds(from),
    until: withSeconds(until),
    note,
  })),
  fees: {
    currency: typed.currency,
    perVisit: parseMoney(typed.perVisit, typed.currency)?.minor ?? 0,
    perLiftSpell: parseMoney(typed.perLiftSpell, typed.currency)?.minor ?? 0,
  },
});
