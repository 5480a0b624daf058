import type { FirmHandbookSeen } from "@evenhand/shared/http/handbook";
import { useMutation, useQueryClient } from "@tanstack/react-query";
import { useState } from "react";
import { call } from "../../service/client";
import { isMoved } from "../../service/refusal";
import { useEdited } from "../../service/use-edited";
import { handbookOf, typedHandbook, wrongCount, type HandbookTyped } from "./own-handbook";
import { firmHandbookQuery } from "./queries";

interface Sent {
  readonly sent: HandbookTyped;
  readonly over: number;
}

/** Sends it for a revision; where somebody else saved since, their handbook is fetched. */
const usePut = (organization: string, onStored: (sent: HandbookTyped, revision: number) => void) => {
  const queries = useQueryClient();
  const { queryKey } = firmHandbookQuery(organization);
  return useMutation({
    mutationFn: ({ sent, over }: Sent) =>
      call("firmHandbook.put", { params: { id: organization }, ifMatch: over, body: handbookOf(sent) }),
    onSuccess: (answer, { sent }) => {
      onStored(sent, answer.revision);
      queries.setQueryData(queryKey, answer);
    },
    onError: (error) => (isMoved(error) ? queries.invalidateQueries({ queryKey }) : undefined),
  });
};

/** How saving stands; `conflict` is that somebody else saved since this was begun. */
const standingOf = (put: ReturnType<typeof usePut>, touched: boolean, conflict: boolean) => ({
  conflict,
  pending: put.isPending,
  refused: put.isError,
  saved: put.isSuccess && !touched,
  error: conflict && isMoved(put.error) ? null : put.error,
});

/** What is typed over a firm's stored handbook, and saving it for the revision it was begun on. */
export const useSave = (organization: string, seen: FirmHandbookSeen) => {
  const { revision, typed, touched, change, settle, settleSent } = useEdited(seen, typedHandbook);
  /** How often saving was tried with something wrong in it. */
  const [tries, setTries] = useState(0);
  const put = usePut(organization, (sent, stored) => {
    settleSent(sent, stored);
    setTries(0);
  });
  const wrong = wrongCount(typed);
  const conflict = touched && !put.isPending && seen.revision !== revision;
  const submit = (over = revision): void => {
    if (wrong > 0) setTries((count) => count + 1);
    else put.mutate({ sent: typed, over });
  };
  const takeTheirs = (): void => {
    put.reset();
    setTries(0);
    settle();
  };
  return { typed, touched, change, wrong, tries, ...standingOf(put, touched, conflict), submit, takeTheirs };
};
