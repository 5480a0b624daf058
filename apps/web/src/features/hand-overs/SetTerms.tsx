import { Button } from "@mantine/core";
import type { HandOverSeen, HandOverTerms } from "@evenhand/shared/http/hand-overs";
import { useMutation, useQueryClient } from "@tanstack/react-query";
import { useState } from "react";
import { call } from "../../service/client";
import { useText } from "../../strings/text";
import { Answered } from "../../ui/Answered";
import { Form } from "../../ui/Form";
import { TermsFields } from "./TermsFields";
import { termsOf, type TypedTerms, typedTerms } from "./terms-form";

interface Props {
  readonly seen: Pick<HandOverSeen, "id" | "revision">;
  readonly terms: HandOverTerms;
}

const useTerms = ({ seen: { id, revision }, terms }: Props) => {
  const queries = useQueryClient();
  const [fields, setFields] = useState(() => typedTerms(terms));
  const save = useMutation({
    mutationFn: () =>
      call("handOvers.setTerms", { params: { id }, ifMatch: revision, body: termsOf(fields) }),
    onSuccess: () => queries.invalidateQueries({ queryKey: ["hand-over", id] }),
  });
  const set = (change: Partial<TypedTerms>): void => {
    save.reset();
    setFields((before) => ({ ...before, ...change }));
  };
  return { fields, set, save };
};

/** Enters or mends what was agreed with the carrier, in the words of the papers; folded away until it is wanted. */
export const SetTerms = (props: Props) => {
  const t = useText();
  const { fields, set, save } = useTerms(props);
  const unset = props.terms.claimDeadline === null && props.terms.riskPasses === null;
  return (
    <details>
      <summary>{t(unset ? "hand-over.terms.enter" : "hand-over.terms.mend")}</summary>
      <Form error={save.error} onSubmit={() => save.mutate()}>
        <p>{t("hand-over.terms.what")}</p>
        <TermsFields fields={fields} set={set} />
        <div>
          <Button type="submit" size="md" variant="default" loading={save.isPending}>
            {t("hand-over.terms.save")}
          </Button>
        </div>
      </Form>
      {save.isSuccess && <Answered title={t("hand-over.terms.saved")} />}
    </details>
  );
};
