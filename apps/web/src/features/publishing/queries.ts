import { queryOptions } from "@tanstack/react-query";
import { call } from "../../service/client";
import { pagedQuery } from "../../service/pages";

export const listingQuery = (vehicle: string) =>
  queryOptions({
    queryKey: ["listing", vehicle],
    queryFn: ({ signal }) => call("listing.get", { params: { id: vehicle }, signal }),
  });

export const shareLinksQuery = (vehicle: string) =>
  pagedQuery(["share-links", vehicle], (after, signal) =>
    call("shareLinks.list", { params: { id: vehicle }, query: { after }, signal }),
  );

export const sharedStatementQuery = (token: string) =>
  queryOptions({
    queryKey: ["shared-statement", token],
    queryFn: ({ signal }) => call("sharedStatements.get", { params: { token }, signal }),
  });
