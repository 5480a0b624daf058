import type { FirmHandbookSeen } from "@evenhand/shared/http/handbook";
import { useMutation, useQueryClient } from "@tanstack/react-query";
import { useState } from "react";
import { call } from "../../service/client";
import { Refusal } from "../../service/refusal";
import { useEdited } from "../../service/use-edited";
import { handbookOf, typedHandbook, wrongCount, type HandbookTyped } from "./own-handbook";
import { firmHandbookQuery } from "./queries";

const moved = (error: unknown): boolean =>
  error instanceof Refusal && (error.problem.status === 412 || error.problem.status === 409);

/** What is typed over a firm's stored handbook, and saving it for the revision it was begun on. */
export const useSave = (organization: string, seen: FirmHandbookSeen) => {
  const queries = useQueryClient();
  const { queryKey } = firmHandbookQuery(organization);
  const { revision, typed, touched, change, settle, settleSent } = useEdited(seen, typedHandbook);
  const [tries, setTries] = useState(0);
  const save = useMutation({
    mutationFn: ({ sent, over }: { readonly sent: HandbookTyped; readonly over: number }) =>
      call("firmHandbook.put", { params: { id: organization }, ifMatch: over, body: handbookOf(sent) }),
    onSuccess: (answer, { sent }) => {
      settleSent(sent, answer.revision);
      setTries(0);
      queries.setQueryData(queryKey, answer);
    },
    onError: (error) => (moved(error) ? queries.invalidateQueries({ queryKey }) : undefined),
  });
  const wrong = wrongCount(typed);
  const conflict = touched && !save.isPending && seen.revision !== revision;
  return {
    typed,
    touched,
    change,
    wrong,
    /** Somebody else saved since this was begun. */
    conflict,
    /** How often saving was tried with something wrong in it. */
    tries,
    pending: save.isPending,
    refused: save.isError,
    saved: save.isSuccess && !touched,
    error: conflict && moved(save.error) ? null : save.error,
    submit: (over = revision): void => {
      if (wrong > 0) setTries((count) => count + 1);
      else save.mutate({ sent: typed, over });
    },
    takeTheirs: (): void => {
      save.reset();
      setTries(0);
      settle();
    },
  };
};
