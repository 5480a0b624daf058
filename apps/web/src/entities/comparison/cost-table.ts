import { queryOptions } from "@tanstack/react-query";
import { call } from "../../service/client";

/** One's own table of costs. What is kept beside it, its history and those offered, stands under the same key. */
export const costTableQuery = queryOptions({
  queryKey: ["cost-table"],
  queryFn: ({ signal }) => call("costTable.get", { signal }),
});
