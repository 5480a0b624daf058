import type { KeptDraft } from "@evenhand/shared/http/summaries";
import { useDebouncedCallback } from "@mantine/hooks";
import { useMutation } from "@tanstack/react-query";
import { useRef, useState } from "react";
import { call } from "../../service/client";
import { type DecideForm, draftOf } from "./decide-form";

/** How long typing rests before it is kept, in milliseconds. */
const REST = 700;

/** Keeps what is chosen and typed with the service, one after the other, the newest last. */
export const useKeptDraft = (summary: string, kept: KeptDraft) => {
  const [newest, setNewest] = useState<DecideForm>();
  const revision = useRef(kept.revision);
  const keep = useMutation({
    scope: { id: `decision-draft-${summary}` },
    mutationFn: async (form: DecideForm) => {
      const answer = await call("summaries.draft", {
        params: { id: summary },
        ifMatch: revision.current,
        body: draftOf(form),
      });
      revision.current = answer.revision;
    },
  });
  const later = useDebouncedCallback((form: DecideForm) => keep.mutate(form), {
    delay: REST,
    flushOnUnmount: true,
  });
  return {
    keep: (form: DecideForm) => {
      setNewest(form);
      later(form);
    },
    // What was kept before says nothing of what was typed since and still rests.
    isKept: keep.isSuccess && keep.variables === newest,
    error: keep.error,
  };
};
