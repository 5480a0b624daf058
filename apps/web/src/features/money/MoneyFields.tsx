import type { DistanceUnit } from "@evenhand/shared/landed-cost";
import { useText } from "../../strings/text";
import { TermField, TextField } from "../../ui/Fields";
import styles from "./Money.module.css";
import type { TypedMoney } from "./typed-money";

interface CurrencyProps {
  readonly label: string;
  readonly name?: string;
  readonly value: string;
  readonly wrong?: boolean;
  readonly onChange: (currency: string) => void;
}

/** Three letters of ISO 4217. */
export const CurrencyField = ({ label, name, value, wrong = false, onChange }: CurrencyProps) => {
  const t = useText();
  return (
    <TextField
      className={styles.currency}
      label={label}
      aria-label={name ?? label}
      maxLength={3}
      autoCapitalize="characters"
      value={value}
      error={wrong && t("landed.wrong.currency")}
      onChange={(typed) => onChange(typed.toUpperCase())}
    />
  );
};

interface Props<T extends TypedMoney> {
  readonly typed: T;
  /** Whose amount it is, for whoever hears the fields one by one. */
  readonly of: string;
  readonly wrong: boolean;
  readonly onChange: (typed: T) => void;
}

/** An amount and its currency. */
export const MoneyFields = <T extends TypedMoney>({ typed, of: line, wrong, onChange }: Props<T>) => {
  const t = useText();
  return (
    <>
      <TextField
        className={styles.amount}
        label={t("landed.amount")}
        aria-label={t("landed.amount.of", { line })}
        inputMode="decimal"
        value={typed.amount}
        error={wrong && t("landed.wrong.amount")}
        onChange={(amount) => onChange({ ...typed, amount })}
      />
      <CurrencyField
        label={t("landed.currency")}
        name={t("landed.currency.of", { line })}
        value={typed.currency}
        onChange={(currency) => onChange({ ...typed, currency })}
      />
    </>
  );
};

interface UnitProps {
  readonly value: DistanceUnit;
  readonly onChange: (unit: DistanceUnit) => void;
}

/** In which a distance is given. */
export const UnitField = ({ value, onChange }: UnitProps) => {
  const t = useText();
  return (
    <TermField
      label={t("landed.unit")}
      value={value}
      terms={["mi", "km"]}
      wordFor={(unit) => t(`landed.unit.${unit}`)}
      onChange={onChange}
    />
  );
};
