import { queryOptions } from "@tanstack/react-query";
import { call } from "../../service/client";

/** Worked out anew from the record, so asked for anew each time it is looked at. */
export const landedCostQuery = (id: string) =>
  queryOptions({
    queryKey: ["landed-cost", id],
    queryFn: ({ signal }) => call("landedCost.get", { params: { id }, signal }),
    staleTime: 0,
  });

export const landedHistoryQuery = (id: string) =>
  queryOptions({
    queryKey: ["landed-cost", id, "history"],
    queryFn: ({ signal }) => call("landedCost.history", { params: { id }, signal }),
    staleTime: 0,
  });

/** Set beside the record as it stands, so asked for anew each time it is looked at. */
export const beforeMoneyQuery = (id: string) =>
  queryOptions({
    queryKey: ["before-money", id],
    queryFn: ({ signal }) => call("beforeMoney.get", { params: { id }, signal }),
    staleTime: 0,
  });

export const transportRatesQuery = queryOptions({
  queryKey: ["transport-rates"],
  queryFn: ({ signal }) => call("transportRates.get", { signal }),
});
