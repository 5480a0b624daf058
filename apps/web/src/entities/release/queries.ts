import type { ReleaseQuery } from "@evenhand/shared/http/releases";
import { queryOptions } from "@tanstack/react-query";
import { call } from "../../service/client";
import { pagedQuery } from "../../service/pages";

type Narrowed = Partial<Pick<ReleaseQuery, "vehicle" | "comparison" | "state">>;

/** The first hundred, for counting. */
export const releasesQuery = (narrowed: Narrowed) =>
  queryOptions({
    queryKey: ["releases", narrowed],
    queryFn: ({ signal }) => call("releases.list", { query: { ...narrowed, limit: 100 }, signal }),
  });

export const releasedQuery = (narrowed: Narrowed) =>
  pagedQuery(["releases", "list", narrowed], (after, signal) =>
    call("releases.list", { query: { ...narrowed, after }, signal }),
  );
