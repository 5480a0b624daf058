import type { OfferQuery } from "@evenhand/shared/http/booking";
import { infiniteQueryOptions, queryOptions } from "@tanstack/react-query";
import { call } from "../../service/client";
import { pagedQuery } from "../../service/pages";

export const briefQuery = (vehicle: string) =>
  queryOptions({
    queryKey: ["brief", vehicle],
    queryFn: ({ signal }) => call("brief.get", { params: { id: vehicle }, signal }),
  });

/** Where a visit would begin, by what is known of the car. */
export const lookFirstQuery = (vehicle: string) =>
  queryOptions({
    queryKey: ["look-first", vehicle],
    queryFn: ({ signal }) => call("lookFirst.get", { params: { id: vehicle }, signal }),
  });

/** What narrows the offers; `with` and `skills` are comma-separated, as the service reads them. */
export interface OfferWish {
  readonly from: string;
  readonly until: string;
  readonly with?: string;
  readonly skills?: string;
  readonly moving?: string;
}

/** Never from the store: an hour that was free a minute ago may be somebody's now. */
export const offersQuery = (vehicle: string, wish: OfferWish, limit: OfferQuery["limit"]) =>
  infiniteQueryOptions({
    queryKey: ["offers", vehicle, wish, limit],
    queryFn: ({ pageParam, signal }) =>
      call("offers.list", { params: { id: vehicle }, query: { ...wish, limit, after: pageParam }, signal }),
    initialPageParam: undefined as string | undefined,
    getNextPageParam: ({ next }) => next ?? undefined,
    staleTime: 0,
  });

export const dayQuery = (vehicle: string, date: string, wish: Omit<OfferWish, "from" | "until">) =>
  queryOptions({
    queryKey: ["offers-day", vehicle, date, wish],
    queryFn: ({ signal }) =>
      call("offers.explain", { params: { id: vehicle }, query: { date, ...wish }, signal }),
    staleTime: 0,
  });

export const termsQuery = queryOptions({
  queryKey: ["booking-terms"],
  queryFn: ({ signal }) => call("bookingTerms.get", { signal }),
});

export const appointmentsQuery = (wish: { readonly vehicle?: string; readonly from?: string } = {}) =>
  pagedQuery(["appointments", wish], (after, signal) =>
    call("appointments.list", { query: { ...wish, after }, signal }),
  );

export const appointmentQuery = (id: string) =>
  queryOptions({
    queryKey: ["appointment", id],
    queryFn: ({ signal }) => call("appointments.get", { params: { id }, signal }),
  });

export const appointmentCountsQuery = queryOptions({
  queryKey: ["appointment-counts"],
  queryFn: ({ signal }) => call("appointments.counts", { signal }),
});
