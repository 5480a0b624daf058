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

/** The handbook's figure and what it may be, marked where the firm set its own. */
const Hint = ({
  limit: { value, unit, between },
  set,
}: {
  readonly limit: OwnLimit;
  readonly set: boolean;
}) => {
  const t = useText();
  const { figure, range } = useFigure();
  return (
    <>
      {t("own.limit.handbook", { figure: figure(value, unit), range: range(between, unit) })}
      {set && (
        <span className={styles.setTag}>
          <Tag strong>{t("own.limit.set")}</Tag>
        </span>
      )}
    </>
  );
};

/** What keeps the typed figure from being taken, in words. */
const useLimitWrong = (typed: LimitsTyped, { id, between, unit }: OwnLimit): string | undefined => {
  const t = useText();
  const { range } = useFigure();
  const wrong = limitWrong(typed, id);
  if (wrong === undefined) return undefined;
  return t(wrong === "not-a-number" ? "own.wrong.not-a-number" : "own.wrong.out-of-range", {
    range: range(between, unit),
  });
};

const ReadLimit = ({ limit, typed }: Pick<Props, "limit" | "typed">) => {
  const t = useText();
  const { figure } = useFigure();
  const { id, words, unit } = limit;
  const set = isSet(typed, id);
  return (
    <div className={styles.beside}>
      <div className={styles.readWords}>{capital(words)}</div>
      <div className={styles.readHint}>
        <Hint limit={limit} set={set} />
      </div>
      <div className={styles.readField}>
        {set ? <strong>{figure(numberTyped(typed[id] ?? ""), unit)}</strong> : t("own.limit.unset")}
      </div>
    </div>
  );
};

type TypedProps = Props & { readonly onChange: (typed: LimitsTyped) => void };

const TypedLimit = ({ limit, typed, tried, onChange }: TypedProps) => {
  const { unitText } = useFigure();
  const wrong = useLimitWrong(typed, limit);
  const { id, words, unit } = limit;
  return (
    <CheckedInput
      beside
      numeric
      label={capital(words)}
      hint={<Hint limit={limit} set={isSet(typed, id)} />}
      unit={unitText(unit)}
      value={typed[id] ?? ""}
      tried={tried}
      wrong={wrong}
      onChange={(next) => onChange({ ...typed, [id]: next })}
    />
  );
};

/** A figure of the handbook, what it may be, and the firm's own in its place. */
export const LimitRow = ({ onChange, ...props }: Props) =>
  onChange === undefined ? <ReadLimit {...props} /> : <TypedLimit {...props} onChange={onChange} />;
