import type { CalendarSeen } from "@evenhand/shared/http/calendars";
import type { SiteSeen } from "@evenhand/shared/http/sites";
import { call } from "../../service/client";
import { timeOf, typedCalendar, wrongFields, type CalendarNumber, type CalendarTyped } from "./calendar-form";
import { calendarFields, siteFields } from "./fields";
import { siteOf, typedSite, wrongSiteFields, type SiteNumber, type SiteTyped } from "./site-form";
import type { Entry } from "./use-typed-form";

export const calendarEntry: Entry<CalendarSeen, CalendarTyped, CalendarNumber> = {
  typedOf: typedCalendar,
  wrongIn: wrongFields,
  shown: calendarFields,
  save: ({ id }, revision, typed) =>
    call("calendars.change", {
      params: { id },
      ifMatch: revision,
      body: { ...timeOf(typed), name: typed.name, accepting: typed.accepting },
    }),
  listKey: "calendars",
  daysKey: "calendar-days",
};

export const siteEntry: Entry<SiteSeen, SiteTyped, SiteNumber> = {
  typedOf: typedSite,
  wrongIn: wrongSiteFields,
  shown: siteFields,
  save: ({ id }, revision, typed) =>
    call("sites.change", {
      params: { id },
      ifMatch: revision,
      body: { ...siteOf(typed), bays: typed.bays.map((bay) => ({ id: bay.id, name: bay.name })) },
    }),
  listKey: "sites",
  daysKey: "site-days",
};
