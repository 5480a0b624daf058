import { DAMAGE_BEARERS } from "@evenhand/shared/terms";
import type { RoadClearance } from "@evenhand/shared/http/booking";
import { oneOf } from "../../../service/one-of";
import { instantOf, localOf } from "../../../entities/time/zone-time";

/** The papers of a drive as they are typed: days and times on the site's clock. */
export interface RoadTyped {
  readonly consent: string;
  readonly signed: string;
  readonly insurance: string;
  readonly insuranceUntil: string;
  readonly plates: string;
  readonly platesUntil: string;
  readonly damage: string;
}

/** Valid to the end of its last day; without one, for good. */
const paper = (reference: string, until: string, zone: string): RoadClearance["insurance"] =>
  reference.trim() === ""
    ? null
    : { reference: reference.trim(), validUntil: until === "" ? null : instantOf(`${until}T23:59`, zone) };

/** As the service takes it; a paper that has no name, or a consent without its hour, is none. */
export const clearanceOf = (typed: RoadTyped, zone: string): RoadClearance => ({
  consent:
    typed.consent.trim() === "" || typed.signed === ""
      ? null
      : { by: typed.consent.trim(), signedAt: instantOf(typed.signed, zone) },
  insurance: paper(typed.insurance, typed.insuranceUntil, zone),
  plates: paper(typed.plates, typed.platesUntil, zone),
  damageBorneBy: oneOf(DAMAGE_BEARERS, typed.damage) ?? null,
});

const dayOf = (kept: RoadClearance["insurance"] | undefined, zone: string): string =>
  kept?.validUntil == null ? "" : localOf(kept.validUntil, zone).slice(0, 10);

/** To begin with: what is recorded already, else nothing, and the consent signed now. */
export const typedOf = (zone: string, road: RoadClearance | null, now: string): RoadTyped => ({
  consent: road?.consent?.by ?? "",
  signed: localOf(road?.consent?.signedAt ?? now, zone),
  insurance: road?.insurance?.reference ?? "",
  insuranceUntil: dayOf(road?.insurance, zone),
  plates: road?.plates?.reference ?? "",
  platesUntil: dayOf(road?.plates, zone),
  damage: road?.damageBorneBy ?? "",
});
