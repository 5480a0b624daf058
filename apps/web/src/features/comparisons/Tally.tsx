import type { Outcome } from "@evenhand/shared/outcome";
import { useText } from "../../strings/text";
import { OutcomeSign } from "../../ui/OutcomeSign";
import { outcomeOrder } from "../../entities/comparison/terms";
import styles from "./Tally.module.css";

interface Props {
  readonly counts: Readonly<Partial<Record<Outcome, number>>>;
  readonly selected: readonly Outcome[];
  readonly onToggle: (outcome: Outcome) => void;
}

/** The share of each, as a band. */
const Shares = ({ counts }: Pick<Props, "counts">) => {
  const total = outcomeOrder.reduce((sum, outcome) => sum + (counts[outcome] ?? 0), 0);
  return (
    <div className={styles.share} aria-hidden="true">
      {outcomeOrder.map((outcome) => (
        <span
          key={outcome}
          data-outcome={outcome}
          style={{ flexGrow: counts[outcome] ?? 0 }}
          hidden={total === 0 || !counts[outcome]}
        />
      ))}
    </div>
  );
};

/** The seven outcomes with their counts; each is a switch that shows only its lines. */
export const Tally = ({ counts, selected, onToggle }: Props) => {
  const t = useText();
  return (
    <div className={styles.tally}>
      <Shares counts={counts} />
      <fieldset className={styles.switches}>
        <legend className="only-read">{t("tally.label")}</legend>
        {outcomeOrder.map((outcome) => (
          <button
            key={outcome}
            type="button"
            className={styles.switch}
            aria-pressed={selected.includes(outcome)}
            disabled={!counts[outcome]}
            title={t(`outcome.${outcome}.means`)}
            onClick={() => onToggle(outcome)}
          >
            <OutcomeSign outcome={outcome} size={30} />
            <span className={styles.count}>{counts[outcome] ?? 0}</span>
            <span className={styles.word}>{t(`outcome.${outcome}`)}</span>
          </button>
        ))}
      </fieldset>
    </div>
  );
};
