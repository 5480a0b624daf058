import { useState } from "react";
import { useText } from "../../strings/text";
import { TermField, TextField } from "../../ui/Fields";
import styles from "./Costs.module.css";
import {
  AMOUNTS,
  CHANCES,
  isUnset,
  wrongWith,
  type Amounts,
  type CostedRow,
  type TypedRow,
} from "./cost-form";

interface Props {
  readonly row: TypedRow;
  readonly costed: CostedRow | undefined;
  readonly currency: string;
  /** It was tried to save it, so that what is wrong is said. */
  readonly said: boolean;
  readonly onChange: (row: TypedRow) => void;
}

interface AmountFieldsProps<T extends Amounts> {
  readonly amounts: T;
  readonly nameFor: (figure: string) => string;
  /** What is wrong with them, said at the first. */
  readonly wrong?: string | undefined;
  readonly onChange: (amounts: T) => void;
}

/** What something costs at least, most likely and at most. */
const AmountFields = <T extends Amounts>({ amounts, nameFor, wrong, onChange }: AmountFieldsProps<T>) => {
  const t = useText();
  return AMOUNTS.map((which) => {
    const figure = t(`costs.${which}`);
    return (
      <TextField
        key={which}
        className={styles.amount}
        label={figure}
        aria-label={nameFor(figure)}
        inputMode="decimal"
        value={amounts[which]}
        error={which === "low" ? wrong : wrong !== undefined}
        onChange={(value) => onChange({ ...amounts, [which]: value })}
      />
    );
  });
};

/** What a trifle costs, where it is less than the whole work. */
const Trifle = ({ row, currency, said, onChange }: Omit<Props, "costed">) => {
  const t = useText();
  const isWrong = said && wrongWith(row, currency) === "small";
  return (
    <div className={styles.chances}>
      <p className={styles.hint}>{t("costs.small.hint")}</p>
      {isWrong && <p className={styles.wrong}>{t("costs.wrong.figures")}</p>}
      <AmountFields
        amounts={row.small}
        nameFor={(figure) => t("costs.small.of", { figure, row: row.words })}
        onChange={(small) => onChange({ ...row, small })}
      />
    </div>
  );
};

const Chances = ({ row, currency, said, onChange }: Omit<Props, "costed">) => {
  const t = useText();
  const isWrong = said && wrongWith(row, currency) === "chance";
  return (
    <div className={styles.chances}>
      <p className={styles.hint}>{t("costs.chances.hint")}</p>
      {isWrong && <p className={styles.wrong}>{t("costs.wrong.chance")}</p>}
      {CHANCES.map((chance) => (
        <TextField
          key={chance}
          className={styles.amount}
          label={t(`costs.chance.${chance}`)}
          inputMode="decimal"
          rightSection="%"
          value={row.chances[chance]}
          onChange={(value) => onChange({ ...row, chances: { ...row.chances, [chance]: value } })}
        />
      ))}
    </div>
  );
};

const FallsDue = ({ row, onChange }: Pick<Props, "row" | "onChange">) => {
  const t = useText();
  return (
    <TermField
      label={t("costs.per")}
      value={row.per}
      terms={["place", "car"]}
      wordFor={(per) => t(`costs.per.${per}`)}
      onChange={(per) => onChange({ ...row, per })}
    />
  );
};

/** How often and how likely it falls due, drawn once it is opened: there are many rows. */
const More = (props: Omit<Props, "costed">) => {
  const t = useText();
  const [open, setOpen] = useState(false);
  return (
    <details className={styles.more} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{t("costs.chances")}</summary>
      {open && (
        <div className={styles.inside}>
          <FallsDue row={props.row} onChange={props.onChange} />
          <Trifle {...props} />
          <Chances {...props} />
        </div>
      )}
    </details>
  );
};

/** One thing that is put right: what it costs, how it falls due, and how likely. */
export const CostRowFields = ({ costed, ...props }: Props) => {
  const t = useText();
  const { row } = props;
  const isWrong = props.said && wrongWith(row, props.currency) === "figures";
  return (
    <li className={styles.row} data-unset={isUnset(row)}>
      <p className={styles.name}>
        <span>{row.words}</span>
        {costed !== undefined && (
          <span className={styles.hint}>
            {t("costs.asked-by", { items: costed.items.slice(0, 3).join(", ") })}
          </span>
        )}
      </p>
      <div className={styles.amounts}>
        <AmountFields
          amounts={row}
          nameFor={(figure) => t("costs.of", { figure, row: row.words })}
          wrong={isWrong ? t("costs.wrong.figures") : undefined}
          onChange={props.onChange}
        />
      </div>
      {!isUnset(row) && <More {...props} />}
    </li>
  );
};
