import { queryOptions } from "@tanstack/react-query";
import { call } from "../../service/client";

export const versionQuery = (id: string) =>
  queryOptions({
    queryKey: ["report-version", id],
    queryFn: ({ signal }) => call("reportVersions.get", { params: { id }, signal }),
  });

/** A sealed document never changes; one that is withheld does, as the reader's own findings are committed. */
export const documentQuery = (id: string) =>
  queryOptions({
    queryKey: ["report-document", id],
    // Large, and it does not change under a reader's eyes.
    refetchOnWindowFocus: false,
    queryFn: ({ signal }) => call("reportVersions.document", { params: { id }, signal }),
  });
