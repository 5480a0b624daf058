import { Button } from "@mantine/core";
import type { TransportRatesSeen } from "@evenhand/shared/http/money";
import { useMutation, useQueryClient } from "@tanstack/react-query";
import { useState } from "react";
import { call } from "../../service/client";
import { useEdited } from "../../service/use-edited";
import { useText } from "../../strings/text";
import { Answered } from "../../ui/Answered";
import { TermField, TextField } from "../../ui/Fields";
import { Form } from "../../ui/Form";
import { Notice } from "../../ui/Notice";
import { Panel } from "../../ui/Page";
import styles from "./Money.module.css";
import { CurrencyField, UnitField } from "./MoneyFields";
import { emptyBand, ratesOf, typedRates, type TypedBand, type TypedRates } from "./rates-form";
import { transportRatesQuery } from "./queries";

interface PartProps {
  readonly typed: TypedRates;
  readonly change: (more: Partial<TypedRates>) => void;
}

const Head = ({ typed, change }: PartProps) => {
  const t = useText();
  return (
    <div className={styles.fields}>
      <CurrencyField
        label={t("landed.currency")}
        value={typed.currency}
        onChange={(currency) => change({ currency })}
      />
      <UnitField value={typed.unit} onChange={(unit) => change({ unit })} />
      <TermField
        label={t("rates.per")}
        value={typed.per}
        terms={["distance", "trip"]}
        wordFor={(per) => t(`rates.per.${per}`)}
        onChange={(per) => change({ per })}
      />
      <TextField
        className={styles.source}
        label={t("landed.source")}
        maxLength={300}
        value={typed.source}
        onChange={(source) => change({ source })}
      />
    </div>
  );
};

const Band = ({ typed, change, band, at }: PartProps & { readonly band: TypedBand; readonly at: number }) => {
  const t = useText();
  const number = at + 1;
  const field = (key: keyof TypedBand, label: string, name: string) => (
    <TextField
      className={styles.amount}
      label={label}
      aria-label={name}
      inputMode="decimal"
      value={band[key]}
      onChange={(value) =>
        change({ bands: typed.bands.map((one, place) => (place === at ? { ...band, [key]: value } : one)) })
      }
    />
  );
  return (
    <li className={styles.fields}>
      {field("upTo", t("rates.up-to"), t("rates.up-to.of", { number }))}
      {field("open", t("rates.open"), t("rates.open.of", { number }))}
      {field("enclosed", t("rates.enclosed"), t("rates.enclosed.of", { number }))}
      <Button
        variant="subtle"
        aria-label={t("rates.remove", { number })}
        onClick={() => change({ bands: typed.bands.filter((_, place) => place !== at) })}
      >
        ×
      </Button>
    </li>
  );
};

/** Saving the rates changes what the lines are worked out with. */
const useRates = (seen: TransportRatesSeen) => {
  const queries = useQueryClient();
  const edited = useEdited(seen, ({ rates }) => typedRates(rates));
  const { revision, typed, touched } = edited;
  const [tried, setTried] = useState(false);
  const body = ratesOf(typed);
  const save = useMutation({
    mutationFn: (sent: { readonly body: NonNullable<typeof body>; readonly typed: TypedRates }) =>
      call("transportRates.put", { ifMatch: revision, body: sent.body }),
    onSuccess: async (saved, sent) => {
      edited.settleSent(sent.typed, saved.revision);
      queries.setQueryData(transportRatesQuery.queryKey, saved);
      await queries.invalidateQueries({ queryKey: ["landed-cost"] });
    },
  });
  return {
    typed,
    change: (more: Partial<TypedRates>): void => edited.change({ ...typed, ...more }),
    isWrong: tried && body === null,
    error: save.error,
    isPending: save.isPending,
    saved: save.isSuccess && !touched ? save.data.revision : undefined,
    submit: (): void => {
      setTried(true);
      if (body !== null) save.mutate({ body, typed });
    },
  };
};

/** A buyer's own table of what transport costs. */
export const RatesForm = ({ seen }: { readonly seen: TransportRatesSeen }) => {
  const t = useText();
  const { typed, change, isWrong, saved, isPending, error, submit } = useRates(seen);
  return (
    <Form error={error} onSubmit={submit}>
      <Panel title={t("rates.title")} hint={t("rates.hint")}>
        <Head typed={typed} change={change} />
        <ul className={styles.list}>
          {typed.bands.map((band, at) => (
            <Band key={at} typed={typed} change={change} band={band} at={at} />
          ))}
        </ul>
        <div className={styles.saving}>
          <Button variant="default" onClick={() => change({ bands: [...typed.bands, emptyBand] })}>
            {t("rates.add")}
          </Button>
          {isWrong && <Notice kind="refusal" title={t("rates.wrong")} />}
          {saved !== undefined && <Answered title={t("rates.saved", { revision: saved })} />}
          <Button type="submit" size="md" loading={isPending}>
            {t("rates.save")}
          </Button>
        </div>
      </Panel>
    </Form>
  );
};
