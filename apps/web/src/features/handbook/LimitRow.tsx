import { useText } from "../../strings/text";
import { Tag } from "../../ui/Page";
import { capital } from "../../entities/sheet/sheet-index";
import { CheckedInput } from "./CheckedInput";
import { isSet, limitWrong, type LimitsTyped, type OwnLimit } from "./own-limits";
import styles from "./OwnFigures.module.css";
import { numberTyped } from "./typed-number";
import { useFigure } from "./use-figure";

interface Props {
  readonly limit: OwnLimit;
  readonly typed: LimitsTyped;
  readonly tried: boolean;
  /** Left out where it is only to be read. */
  readonly onChange: ((typed: LimitsTyped) => void) | undefined;
}

/** A figure of the handbook, what it may be, and the firm's own in its place. */
export const LimitRow = ({ limit, typed, tried, onChange }: Props) => {
  const t = useText();
  const { figure, range, unitText } = useFigure();
  const { id, words, value, unit, between } = limit;
  const text = typed[id] ?? "";
  const set = isSet(typed, id);
  const wrong = limitWrong(typed, id);
  const hint = (
    <>
      {t("own.limit.handbook", { figure: figure(value, unit), range: range(between, unit) })}
      {set && (
        <span className={styles.setTag}>
          <Tag strong>{t("own.limit.set")}</Tag>
        </span>
      )}
    </>
  );
  if (onChange === undefined) {
    return (
      <div className={styles.beside}>
        <div className={styles.readWords}>{capital(words)}</div>
        <div className={styles.readHint}>{hint}</div>
        <div className={styles.readField}>
          {set ? <strong>{figure(numberTyped(text), unit)}</strong> : t("own.limit.unset")}
        </div>
      </div>
    );
  }
  return (
    <CheckedInput
      beside
      numeric
      label={capital(words)}
      hint={hint}
      unit={unitText(unit)}
      value={text}
      tried={tried}
      wrong={
        wrong === undefined
          ? undefined
          : t(wrong === "not-a-number" ? "own.wrong.not-a-number" : "own.wrong.out-of-range", {
              range: range(between, unit),
            })
      }
      onChange={(next) => onChange({ ...typed, [id]: next })}
    />
  );
};
