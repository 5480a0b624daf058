import { z } from "zod";
import { Place, WeeklyHours } from "../booking.ts";
import { Currency } from "../currency.ts";
import { LocalDateTime, ObjectId } from "../identifier.ts";
import { nameOf } from "../names.ts";
import { hoursBytes, Minor, ShortName } from "./calendars.ts";
import { CreatedDraft, Named, pageOf, PageQuery, Revision, type Contract } from "./paging.ts";

/** A time the dealer gives no access: wall-clock times of the site. */
export const Closure = z
  .strictObject({ from: LocalDateTime, until: LocalDateTime, note: z.string().trim().max(200).default("") })
  .refine(({ from, until }) => from < until, { path: ["until"], message: "after `from`" });
export type Closure = z.infer<typeof Closure>;

export const SiteFees = z.strictObject({ currency: Currency, perVisit: Minor, perLiftSpell: Minor });
export type SiteFees = z.infer<typeof SiteFees>;

const siteShape = {
  name: ShortName,
  address: nameOf(500),
  place: Place,
  /** Opening hours; the zone is the site's. */
  hours: WeeklyHours,
  closures: z.array(Closure).max(200),
  fees: SiteFees,
};
export const SiteRequest = z.strictObject({
  organization: ObjectId,
  ...siteShape,
  closures: siteShape.closures.default([]),
  /** Names of the lifts. */
  bays: z.array(ShortName).max(50).default([]),
});
export type SiteRequest = z.infer<typeof SiteRequest>;
/** `bays` replaces the list: `id: null` is a new lift, one left out is taken out of use. */
export const SiteChange = z
  .strictObject({
    ...siteShape,
    bays: z.array(z.strictObject({ id: ObjectId.nullable(), name: ShortName })).max(50),
  })
  .partial();
export type SiteChange = z.infer<typeof SiteChange>;

export const SiteSeen = z.strictObject({
  id: ObjectId,
  revision: Revision,
  dealer: Named,
  ...siteShape,
  bays: z.array(z.strictObject({ id: ObjectId, name: z.string() })),
});
export type SiteSeen = z.infer<typeof SiteSeen>;

/** Where a car stands to be seen. */
export const CarPlaceRequest = z.strictObject({ site: ObjectId });
export type CarPlaceRequest = z.infer<typeof CarPlaceRequest>;
/** `null`: the dealer has not said, and has not exactly one site. */
export const CarPlace = z.strictObject({ site: SiteSeen.omit({ closures: true }).nullable() });
export type CarPlace = z.infer<typeof CarPlace>;

export const siteContracts = {
  "sites.create": {
    body: SiteRequest,
    bodyBytes: hoursBytes,
    costly: true,
    status: 201,
    answer: CreatedDraft,
  },
  "sites.list": { query: PageQuery, status: 200, answer: pageOf(SiteSeen) },
  "sites.get": { status: 200, answer: SiteSeen },
  "sites.change": {
    body: SiteChange,
    bodyBytes: hoursBytes,
    costly: true,
    status: 200,
    answer: CreatedDraft,
  },
  "carPlace.get": { status: 200, answer: CarPlace },
  "carPlace.put": { body: CarPlaceRequest, status: 200, answer: CarPlace },
} as const satisfies Record<string, Contract>;
