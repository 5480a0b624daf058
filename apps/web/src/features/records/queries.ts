import { queryOptions } from "@tanstack/react-query";
import { call } from "../../service/client";

export const dealerRecordQuery = (dealer: string) =>
  queryOptions({
    queryKey: ["dealer-record", dealer],
    queryFn: ({ signal }) => call("dealerRecords.get", { params: { id: dealer }, signal }),
  });
