import type { CarDealing, InterestKind } from "@evenhand/shared/booking";
import { instantOf, today } from "../time/zone-time";

/** An interest as it is typed: dates with no time. */
export interface InterestTyped {
  readonly key: number;
  readonly kind: InterestKind;
  readonly holder: "inspector" | "firm";
  readonly since: string;
  readonly ended: string;
  readonly note: string;
}

export interface DealingTyped {
  readonly key: number;
  readonly vehicle: string;
  readonly dealing: CarDealing;
  readonly note: string;
}

export const newInterest = (key: number, zone: string): InterestTyped => ({
  key,
  kind: "supplies",
  holder: "inspector",
  since: today(zone),
  ended: "",
  note: "",
});

/** As the service takes it: midnights of the zone. */
export const interestBody = ({ kind, holder, since, ended, note }: InterestTyped, zone: string) => ({
  kind,
  holder,
  since: instantOf(`${since}T00:00`, zone),
  endedAt: ended === "" ? null : instantOf(`${ended}T00:00`, zone),
  note,
});
