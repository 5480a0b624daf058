import type { Release, ReleaseQuery } from "@evenhand/shared/http/releases";
import type { SettlementState } from "@evenhand/shared/settlement";
import { queryOptions, useQuery } from "@tanstack/react-query";
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

const noStates: ReadonlyMap<number, SettlementState> = new Map();

/** How each line of a comparison stands that was laid before the dealer, by its place; nothing to whoever laid none. */
export const useLineStates = (comparison: string, buys: boolean): ReadonlyMap<number, SettlementState> =>
  useQuery({
    ...releasesQuery({ comparison }),
    enabled: buys,
    select: ({ items }) =>
      new Map(
        items.flatMap(({ standsIn, state }) => (standsIn === null ? [] : [[standsIn.entryIndex, state]])),
      ),
  }).data ?? noStates;

/** A line of a comparison as it was laid before the dealer; `undefined` while it was not, and to whoever lays none. */
export const useLineRelease = (comparison: string, at: number, buys: boolean): Release | undefined =>
  useQuery({
    ...releasesQuery({ comparison }),
    enabled: buys,
    select: ({ items }) => items.find(({ standsIn }) => standsIn?.entryIndex === at),
  }).data;
