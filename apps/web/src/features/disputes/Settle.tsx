import { Button } from "@mantine/core";
import type { Release, SettlementRequest } from "@evenhand/shared/http/releases";
import { useMutation, useQueryClient } from "@tanstack/react-query";
import { useState } from "react";
import { useCurrency } from "../../entities/car/use-currency";
import { call } from "../../service/client";
import { useText } from "../../strings/text";
import { LongTextField, TermField, TextField } from "../../ui/Fields";
import { ProblemNotice } from "../../ui/ProblemNotice";
import styles from "./Disputes.module.css";
import {
  emptyForm,
  isWaitedFor,
  lacks,
  mayOffer,
  offered,
  offerOf,
  pressesOf,
  requestOf,
  type SettleForm,
} from "./settle-form";
import { EvidenceFields, type Filling } from "./EvidenceFields";
import { usePhotographs } from "./use-photographs";

interface Props {
  /** Lines in one state, moved together. */
  readonly releases: readonly Release[];
}

/** What is filled in, and the one press that sends it. */
const useSettling = (releases: readonly Release[]) => {
  const queries = useQueryClient();
  const [form, setForm] = useState(emptyForm);
  const photographs = usePhotographs(releases[0]?.id ?? "");
  const send = useMutation({
    mutationFn: (asked: Pick<SettlementRequest, "move" | "price" | "remedy">) =>
      call("releases.move", { body: requestOf(releases, asked, form, photographs.waiting) }),
    onSettled: () => queries.invalidateQueries({ queryKey: ["releases"] }),
  });
  const onForm = (change: Partial<SettleForm>): void => setForm((old) => ({ ...old, ...change }));
  return { form, onForm, send, photographs };
};

interface SendProps extends Filling {
  readonly send: ReturnType<typeof useSettling>["send"];
}

interface OfferProps extends Filling {
  readonly currency: string;
}

const OfferFields = ({ form, onForm, currency }: OfferProps) => {
  const t = useText();
  const wrong = form.amount.trim() !== "" && offerOf(form, currency) === null;
  return (
    <div className={styles.fields}>
      <TermField
        label={t("settle.offer.what")}
        value={form.offer}
        terms={offered}
        wordFor={(one) => t(`settle.offer.${one}`)}
        onChange={(one) => onForm({ offer: one })}
      />
      {form.offer === "price" && (
        <TextField
          label={t("settle.offer.amount", { currency })}
          inputMode="decimal"
          error={wrong && t("settle.offer.amount.wrong")}
          value={form.amount}
          onChange={(amount) => onForm({ amount })}
        />
      )}
    </div>
  );
};

const Offer = ({
  form,
  onForm,
  send,
  vehicle,
  waits,
}: SendProps & Pick<Release, "vehicle"> & { readonly waits: boolean }) => {
  const t = useText();
  const currency = useCurrency(vehicle);
  const offer = currency === undefined ? null : offerOf(form, currency);
  return (
    <details className={styles.more}>
      <summary>{t("settle.offer")}</summary>
      {currency !== undefined && <OfferFields form={form} onForm={onForm} currency={currency} />}
      <Button
        variant="default"
        disabled={waits || offer === null || lacks(offer.move, form)}
        loading={send.isPending && send.variables.move === offer?.move}
        onClick={() => offer !== null && send.mutate(offer)}
      >
        {t("settle.move.offer")}
      </Button>
    </details>
  );
};

/** One press each; what is nothing without words waits for them. */
const Presses = ({
  release: { state, as },
  form,
  send,
  waits,
}: { readonly release: Release; readonly waits: boolean } & Omit<SendProps, "onForm">) => {
  const t = useText();
  return (
    <div className={styles.buttons}>
      {pressesOf(state, as).map((move, place) => (
        <Button
          key={move}
          variant={place === 0 ? "filled" : "default"}
          disabled={waits || lacks(move, form)}
          loading={send.isPending && send.variables.move === move}
          onClick={() => send.mutate({ move })}
        >
          {t(`settle.move.${move}`)}
        </Button>
      ))}
    </div>
  );
};

/** What the person can do about these lines: one press each, with words where words are due. */
export const Settle = ({ releases }: Props) => {
  const t = useText();
  const { form, onForm, send, photographs } = useSettling(releases);
  const waits = isWaitedFor(photographs.waiting);
  const [first] = releases;
  if (first === undefined) return null;
  return (
    <div className={styles.form}>
      {send.error !== null && <ProblemNotice error={send.error} />}
      <LongTextField
        minRows={2}
        label={t("settle.words")}
        description={t(`settle.words.hint.${first.as}`)}
        value={form.words}
        onChange={(words) => onForm({ words })}
      />
      <EvidenceFields form={form} onForm={onForm} photographs={photographs} />
      <Presses release={first} form={form} send={send} waits={waits} />
      {mayOffer(first.state, first.as) && (
        <Offer form={form} onForm={onForm} send={send} vehicle={first.vehicle} waits={waits} />
      )}
    </div>
  );
};
