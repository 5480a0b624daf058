import { queryOptions } from "@tanstack/react-query";
import { call } from "../../service/client";
import { pagedQuery } from "../../service/pages";

export const carsQuery = (q: string | undefined) =>
  pagedQuery(["vehicles", { q }], (after, signal) => call("vehicles.list", { query: { q, after }, signal }));

export const carQuery = (id: string) =>
  queryOptions({
    queryKey: ["vehicle", id],
    queryFn: ({ signal }) => call("vehicles.get", { params: { id }, signal }),
  });

export const orderQuery = (id: string) =>
  queryOptions({
    queryKey: ["order", id],
    queryFn: ({ signal }) => call("orders.get", { params: { id }, signal }),
  });

export const inspectorsQuery = pagedQuery(["inspectors"], (after, signal) =>
  call("inspectors.list", { query: { after }, signal }),
);
