import type { NoticesRead } from "@evenhand/shared/http/notices";
import { useMutation, useQueryClient } from "@tanstack/react-query";
import { accountQuery } from "../../entities/account/queries";
import { call } from "../../service/client";
import { pagedQuery } from "../../service/pages";

export const noticesQuery = pagedQuery(["notices"], (after, signal) =>
  call("notices.list", { query: { after }, signal }),
);

/** Marks as read; list and count are asked for anew, also when the page was left meanwhile. */
export const useReading = () => {
  const queries = useQueryClient();
  return useMutation({
    mutationFn: (body: NoticesRead) => call("notices.read", { body }),
    onSuccess: () =>
      Promise.all([
        queries.invalidateQueries({ queryKey: noticesQuery.queryKey }),
        queries.invalidateQueries({ queryKey: accountQuery.queryKey }),
      ]),
  });
};
