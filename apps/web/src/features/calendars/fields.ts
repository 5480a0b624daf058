import type { MessageId } from "../../strings/en";
import type { CalendarNumber, CalendarText } from "./calendar-form";
import type { SiteNumber, SiteText } from "./site-form";

/** How a typed field is shown, and by which name it is called when it is wrong. */
export interface FieldShown {
  readonly label: MessageId;
  readonly hint?: MessageId;
  readonly inputMode?: "text" | "decimal";
  readonly required?: boolean;
}

export const calendarFields = {
  name: { label: "calendar.name", inputMode: "text" },
  latitude: { label: "place.latitude", hint: "place.latitude.hint", inputMode: "decimal" },
  longitude: { label: "place.longitude", hint: "place.longitude.hint", inputMode: "decimal" },
  radius: { label: "calendar.radius", hint: "calendar.radius.hint", inputMode: "decimal" },
  speed: { label: "calendar.speed", inputMode: "decimal" },
  notice: { label: "calendar.notice", hint: "calendar.notice.hint", inputMode: "decimal" },
  perVisit: { label: "calendar.per-visit", inputMode: "decimal" },
  perExtraCar: { label: "calendar.per-car", inputMode: "decimal" },
  perMile: { label: "calendar.per-mile", inputMode: "decimal" },
  currency: { label: "calendar.currency", inputMode: "text" },
} as const satisfies Readonly<Record<CalendarNumber | CalendarText, FieldShown>>;

export const siteFields = {
  name: { label: "site.name", required: true },
  address: { label: "site.address", required: true },
  latitude: { label: "place.latitude", hint: "place.latitude.hint", required: true },
  longitude: { label: "place.longitude", hint: "place.longitude.hint", required: true },
  perVisit: { label: "site.per-visit", required: true },
  perLiftSpell: { label: "site.per-lift", required: true },
  currency: { label: "calendar.currency", required: true },
} as const satisfies Readonly<Record<SiteNumber | SiteText, FieldShown>>;
