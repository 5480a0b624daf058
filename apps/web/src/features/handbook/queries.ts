import { queryOptions } from "@tanstack/react-query";
import { call } from "../../service/client";

export const firmHandbookQuery = (organization: string) =>
  queryOptions({
    queryKey: ["firm-handbook", organization],
    queryFn: ({ signal }) => call("firmHandbook.get", { params: { id: organization }, signal }),
  });
