import ical, { ICalCalendarMethod, ICalEventStatus } from "ical-generator";

/** What a calendar says of a visit. Nothing of what was stated or found, and of the other side no name. */
export type VisitEvent = {
  readonly id: string;
  readonly sequence: number;
  readonly hour: { readonly start: number; readonly end: number };
  readonly status: "confirmed" | "tentative" | "cancelled";
  readonly site: {
    readonly name: string;
    readonly address: string;
    readonly latitude: number;
    readonly longitude: number;
  };
  readonly cars: readonly string[];
  /** When it was written. */
  readonly stamp: Date;
};

const statuses = {
  confirmed: ICalEventStatus.CONFIRMED,
  tentative: ICalEventStatus.TENTATIVE,
  cancelled: ICalEventStatus.CANCELLED,
} as const;

/** Text of people on one line: a line break must begin no property, whatever program reads it. */
const oneLine = (text: string): string => text.replaceAll(/[\p{Cc}\p{Zl}\p{Zp}]+/gu, " ").trim();

const domain = "evenhand.example";
const product = { company: "Evenhand", product: "Visits", language: "EN" };

const toEvent = ({ id, sequence, hour, status, site, cars, stamp }: VisitEvent) => ({
  id: `${id}@${domain}`,
  sequence,
  start: new Date(hour.start),
  end: new Date(hour.end),
  stamp,
  summary: oneLine(`Inspection visit: ${cars.join(", ")}`),
  location: {
    title: oneLine(site.name),
    address: oneLine(site.address),
    geo: { lat: site.latitude, lon: site.longitude },
  },
  status: statuses[status],
});

export type Recipient = { readonly name: string; readonly email: string };

/**
 * An invitation, its change or its end (RFC 5545, RFC 5546): times in UTC, so that a change of offset moves nothing.
 *
 * @param to the one recipient: nobody's address goes to anybody else
 */
export function invitation(
  event: VisitEvent,
  method: "REQUEST" | "CANCEL",
  to: Recipient,
  organizer: string,
): string {
  const calendar = ical({ prodId: product, method: ICalCalendarMethod[method] });
  calendar.createEvent({
    ...toEvent(event),
    organizer: { name: "Evenhand", email: organizer },
    attendees: [{ name: oneLine(to.name), email: to.email, rsvp: false }],
  });
  return calendar.toString();
}

/** A feed that a calendar program reads by itself. */
export function feed(name: string, events: readonly VisitEvent[]): string {
  const calendar = ical({ prodId: product, name: oneLine(name), method: ICalCalendarMethod.PUBLISH });
  for (const event of events) calendar.createEvent(toEvent(event));
  return calendar.toString();
}
