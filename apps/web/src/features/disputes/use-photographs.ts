import { queryOptions, useMutation, useQuery, useQueryClient } from "@tanstack/react-query";
import { call, callWithFile } from "../../service/client";
import { isWaitedFor } from "./settle-form";

const photographsQuery = (release: string) =>
  queryOptions({
    queryKey: ["releases", "photographs", release],
    queryFn: ({ signal }) => call("releasePictures.list", { params: { id: release }, signal }),
    refetchInterval: ({ state }) => (isWaitedFor(state.data?.items ?? []) ? 1_500 : false),
  });

/** Photographs of a line that wait for an answer to go with: sent one by one as they are chosen. */
export const usePhotographs = (release: string) => {
  const queries = useQueryClient();
  const query = photographsQuery(release);
  const { data } = useQuery(query);
  const anew = () => queries.invalidateQueries({ queryKey: query.queryKey });
  const add = useMutation({
    mutationFn: async (files: readonly File[]) => {
      // One after the other: on a weak line two at once would both come late.
      for (const file of files)
        await callWithFile("releasePictures.add", { params: { id: release } }, file).then(anew);
    },
    onSettled: anew,
  });
  const remove = useMutation({
    mutationFn: (id: string) => call("releasePictures.remove", { params: { id } }),
    onSettled: anew,
  });
  return { waiting: data?.items ?? [], add, remove };
};
export type Photographs = ReturnType<typeof usePhotographs>;
