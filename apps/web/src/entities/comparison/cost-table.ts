import { queryOptions } from "@tanstack/react-query";
import { call } from "../../service/client";

/** The buyer's own table of costs. */
export const costTableQuery = queryOptions({
  queryKey: ["cost-table"],
  queryFn: ({ signal }) => call("costTable.get", { signal }),
});
