import type { HoursTrial } from "@evenhand/shared/http/calendars";
import { queryOptions } from "@tanstack/react-query";
import { call } from "../../service/client";
import { pagedQuery } from "../../service/pages";
import { addDays } from "../time/zone-time";

export const calendarsQuery = pagedQuery(["calendars"], (after, signal) =>
  call("calendars.list", { query: { after }, signal }),
);

export const calendarQuery = (id: string) =>
  queryOptions({
    queryKey: ["calendar", id],
    queryFn: ({ signal }) => call("calendars.get", { params: { id }, signal }),
  });

export const calendarDaysQuery = (id: string, from: string, days = 7) =>
  queryOptions({
    queryKey: ["calendar-days", id, from, days],
    queryFn: ({ signal }) =>
      call("calendars.days", { params: { id }, query: { from, until: addDays(from, days - 1) }, signal }),
  });

/** Hours laid out before anything is saved. */
export const trialQuery = (trial: HoursTrial) =>
  queryOptions({
    queryKey: ["hours-trial", trial],
    queryFn: ({ signal }) => call("calendars.layOut", { body: trial, signal }),
    staleTime: Number.POSITIVE_INFINITY,
  });

export const sitesQuery = pagedQuery(["sites"], (after, signal) =>
  call("sites.list", { query: { after }, signal }),
);

export const siteQuery = (id: string) =>
  queryOptions({
    queryKey: ["site", id],
    queryFn: ({ signal }) => call("sites.get", { params: { id }, signal }),
  });

export const siteDaysQuery = (id: string, from: string) =>
  queryOptions({
    queryKey: ["site-days", id, from],
    queryFn: ({ signal }) =>
      call("sites.days", { params: { id }, query: { from, until: addDays(from, 6) }, signal }),
  });

export const carPlaceQuery = (vehicle: string) =>
  queryOptions({
    queryKey: ["car-place", vehicle],
    queryFn: ({ signal }) => call("carPlace.get", { params: { id: vehicle }, signal }),
  });

export const feedsQuery = pagedQuery(["calendar-feeds"], (after, signal) =>
  call("calendarFeeds.list", { query: { after }, signal }),
);
