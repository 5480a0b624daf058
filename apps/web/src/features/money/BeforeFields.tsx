import { NumberFrom, type BeforeMoneyLine } from "@evenhand/shared/before-money";
import { useText } from "../../strings/text";
import { LongTextField, TermField, TextField } from "../../ui/Fields";
import type { TypedBefore } from "./before-money-form";
import styles from "./Money.module.css";

interface Props {
  readonly line: BeforeMoneyLine;
  readonly typed: TypedBefore;
  readonly unsaid: boolean;
  readonly onChange: (more: Partial<TypedBefore>) => void;
}

const numbers = ["none", ...NumberFrom.options] as const;

const PayeeFields = ({ typed, onChange }: Pick<Props, "typed" | "onChange">) => {
  const t = useText();
  return (
    <div className={styles.fields}>
      <TextField
        className={styles.source}
        label={t("before.payee.name")}
        maxLength={200}
        value={typed.payee}
        onChange={(payee) => onChange({ payee })}
      />
      <TermField
        label={t("before.payee.from")}
        value={typed.numberFrom}
        terms={numbers}
        wordFor={(from) => t(`before.payee.from.${from}`)}
        onChange={(numberFrom) => onChange({ numberFrom })}
      />
    </div>
  );
};

const useFieldOf = (line: BeforeMoneyLine) => {
  const t = useText();
  return (field: string): string => t("before.field.of", { line: t(`before.line.${line}`), field });
};

const WhoAndWhen = ({ line, typed, onChange }: Omit<Props, "unsaid">) => {
  const t = useText();
  const of = useFieldOf(line);
  return (
    <div className={styles.fields}>
      <TextField
        className={styles.source}
        label={t("before.by")}
        aria-label={of(t("before.by"))}
        maxLength={200}
        value={typed.by}
        onChange={(by) => onChange({ by })}
      />
      <TextField
        label={t("before.on")}
        aria-label={of(t("before.on"))}
        type="date"
        value={typed.on}
        onChange={(on) => onChange({ on })}
      />
    </div>
  );
};

/** Neither answered nor begun: what else there is to say would only make the page long. */
const isBlank = ({ say, payee, words, by, on }: TypedBefore): boolean =>
  say === "none" && [payee, words, by, on].every((text) => text === "");

/** What speaks for the answer. */
const Said = ({ line, typed, onChange }: Omit<Props, "unsaid">) => {
  const t = useText();
  const of = useFieldOf(line);
  return (
    <>
      {line === "payee" && <PayeeFields typed={typed} onChange={onChange} />}
      <LongTextField
        label={t("before.words")}
        aria-label={of(t("before.words"))}
        maxLength={1000}
        value={typed.words}
        onChange={(words) => onChange({ words })}
      />
      <WhoAndWhen line={line} typed={typed} onChange={onChange} />
    </>
  );
};

/** What the buyer says of one line; the rest is asked for once there is an answer. */
export const BeforeFields = ({ line, typed, unsaid, onChange }: Props) => {
  const t = useText();
  const of = useFieldOf(line);
  return (
    <>
      <TermField
        label={of(t("before.say"))}
        value={typed.say}
        terms={["none", "done", "not-due"]}
        wordFor={(say) => t(`before.say.${say}`)}
        onChange={(say) => onChange({ say })}
      />
      {unsaid && <p className={styles.without}>{t("before.wrong.say")}</p>}
      {!isBlank(typed) && <Said line={line} typed={typed} onChange={onChange} />}
    </>
  );
};
