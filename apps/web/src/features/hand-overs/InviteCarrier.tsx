import { Button } from "@mantine/core";
import { useMutation, useQueryClient } from "@tanstack/react-query";
import { useState } from "react";
import { addDays, instantOf, ownZone, today } from "../../entities/time/zone-time";
import { call } from "../../service/client";
import { useText } from "../../strings/text";
import { CopyAddress } from "../../ui/CopyAddress";
import { TextField } from "../../ui/Fields";
import { Form } from "../../ui/Form";
import { Notice } from "../../ui/Notice";
import { TermsFields } from "./TermsFields";
import { noTerms, termsOf } from "./terms-form";

const MONTH = 30;
const LONGEST = 119;

const blank = () => ({
  carrier: "",
  until: addDays(today(ownZone()), MONTH),
  ...noTerms,
});
type Fields = ReturnType<typeof blank>;

const useInviting = (caseId: string) => {
  const queries = useQueryClient();
  const [fields, setFields] = useState(blank);
  const set = (change: Partial<Fields>): void => setFields((before) => ({ ...before, ...change }));
  const make = useMutation({
    mutationFn: () =>
      call("handOvers.arrange", {
        params: { id: caseId },
        body: {
          carrier: fields.carrier.trim(),
          expires: instantOf(`${fields.until}T23:59`, ownZone()),
          terms: termsOf(fields),
        },
      }),
    onSuccess: () => queries.invalidateQueries({ queryKey: ["hand-overs", caseId] }),
  });
  return { fields, set, make };
};

interface FieldsProps {
  readonly fields: Fields;
  readonly set: (change: Partial<Fields>) => void;
}

const CarrierFields = ({ fields, set }: FieldsProps) => {
  const t = useText();
  return (
    <>
      <TextField
        required
        maxLength={200}
        label={t("hand-over.carrier")}
        value={fields.carrier}
        onChange={(carrier) => set({ carrier })}
      />
      <TextField
        type="date"
        required
        min={today(ownZone())}
        max={addDays(today(ownZone()), LONGEST)}
        label={t("hand-over.expires")}
        value={fields.until}
        onChange={(until) => set({ until })}
      />
    </>
  );
};

/** The secret address, shown this once. */
export const LinkMade = ({ path }: { readonly path: string }) => {
  const t = useText();
  return (
    <Notice kind="note" title={t("hand-over.made")}>
      <CopyAddress address={new URL(path, window.location.origin).href} />
    </Notice>
  );
};

/** Invites a carrier by a link. */
export const InviteCarrier = ({ caseId, open }: { readonly caseId: string; readonly open: boolean }) => {
  const t = useText();
  const { fields, set, make } = useInviting(caseId);
  if (make.data !== undefined) return <LinkMade path={make.data.path} />;
  if (!open) return null;
  return (
    <Form error={make.error} onSubmit={() => make.mutate()}>
      <p>{t("hand-over.invite.what")}</p>
      <CarrierFields fields={fields} set={set} />
      <TermsFields fields={fields} set={set} />
      <div>
        <Button type="submit" size="md" loading={make.isPending}>
          {t("hand-over.make")}
        </Button>
      </div>
    </Form>
  );
};
