import { Button } from "@mantine/core";
import { useText } from "../../strings/text";
import { TextField } from "../../ui/Fields";
import type { TypedRate } from "./landed-form";
import styles from "./Money.module.css";
import { CurrencyField } from "./MoneyFields";
import type { LandedForm } from "./use-landed-form";

interface RateProps {
  readonly form: LandedForm;
  readonly rate: TypedRate;
  readonly at: number;
}

/** Changes one rate among the others. */
const changing =
  ({ form, at }: Pick<RateProps, "form" | "at">) =>
  (more: Partial<TypedRate>): void =>
    form.change({ rates: form.typed.rates.map((one, place) => (place === at ? { ...one, ...more } : one)) });

const Remove = ({ form, at }: Omit<RateProps, "rate">) => {
  const t = useText();
  return (
    <Button
      variant="subtle"
      onClick={() => form.change({ rates: form.typed.rates.filter((_, place) => place !== at) })}
      aria-label={t("landed.exchange.remove", { number: at + 1 })}
    >
      ×
    </Button>
  );
};

const RateFields = ({ form, rate, at }: RateProps) => {
  const t = useText();
  const change = changing({ form, at });
  const named = (key: keyof TypedRate) => {
    const field = t(`landed.exchange.${key}`);
    return { label: field, name: t("landed.exchange.of", { number: at + 1, field }) };
  };
  const field = (key: "rate" | "on" | "source", more: object) => (
    <TextField
      className={key === "source" ? styles.source : styles.amount}
      label={named(key).label}
      aria-label={named(key).name}
      value={rate[key]}
      onChange={(value) => change({ [key]: value })}
      {...more}
    />
  );
  const wrong = form.wrong.has(`rate-${at}`) && t("landed.wrong.rate");
  return (
    <li className={styles.fields}>
      <CurrencyField {...named("from")} value={rate.from} onChange={(from) => change({ from })} />
      {field("rate", { inputMode: "decimal", rightSection: form.typed.currency, rightSectionWidth: 56 })}
      {field("on", { type: "date" })}
      {field("source", { maxLength: 300, error: wrong })}
      <Remove form={form} at={at} />
    </li>
  );
};

const newRate: TypedRate = { from: "", rate: "", on: "", source: "" };

/** In which currency the total is given, and the rates that lead there. */
export const ExchangeFields = ({ form }: { readonly form: LandedForm }) => {
  const t = useText();
  const { typed, wrong, change } = form;
  return (
    <details className={styles.more} open={typed.rates.length > 0}>
      <summary>{t("landed.exchange")}</summary>
      <p className={styles.hint}>{t("landed.exchange.hint")}</p>
      <CurrencyField
        label={t("landed.exchange.to")}
        value={typed.currency}
        wrong={wrong.has("currency")}
        onChange={(currency) => change({ currency })}
      />
      <ul className={styles.list}>
        {typed.rates.map((rate, at) => (
          <RateFields key={at} form={form} rate={rate} at={at} />
        ))}
      </ul>
      {typed.rates.length < 10 && (
        <Button variant="default" onClick={() => change({ rates: [...typed.rates, { ...newRate }] })}>
          {t("landed.exchange.add")}
        </Button>
      )}
    </details>
  );
};
