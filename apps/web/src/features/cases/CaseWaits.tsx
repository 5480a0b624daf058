import type { CaseSeen } from "@evenhand/shared/http/cases";
import { useText } from "../../strings/text";
import styles from "./Cases.module.css";
import { useAtRest, useDecided } from "./use-decided";
import { SpineLine, StepPress, useDue, useSentence, whoseIs } from "./Waiting";

/** Bought, or agreed to be: what has to be seen to before money moves. */
const Collect = () => {
  const t = useText();
  return (
    <div className={styles.part}>
      <h3>{t("case.collect")}</h3>
      <p>{t("case.collect.what")}</p>
    </div>
  );
};

const WaitLines = ({ row: { as, standing } }: { readonly row: CaseSeen }) => {
  const due = useDue();
  const sentence = useSentence(as);
  const untimed = standing.waits.every(({ until }) => until === null);
  return (
    <ul className={`${styles.lines} ${untimed ? styles.untimed : ""}`}>
      {standing.waits.map((wait, at) => {
        const whose = whoseIs(wait, as);
        return (
          <SpineLine
            key={`${wait.step} ${wait.subject}`}
            whose={whose}
            time={due(wait)}
            title={sentence(wait)}
            press={whose === "yours" ? <StepPress wait={wait} strong={at === 0} /> : undefined}
          />
        );
      })}
    </ul>
  );
};

/** What waits for whom and until when, one's own first, each of one's own with its press. */
export const CaseWaits = ({ row }: { readonly row: CaseSeen }) => {
  const t = useText();
  const atRest = useAtRest(row.as);
  const decided = useDecided(row.as);
  const { waits, decision, stage } = row.standing;
  return (
    <section className={styles.part}>
      <h2>{t("case.waits")}</h2>
      {decision !== null && <p>{decided(decision)}</p>}
      {waits.length === 0 && (
        <p className={styles.none}>
          {decision === null && `${atRest(row.standing)} `}
          {t("case.waits.none")}
        </p>
      )}
      {waits.length > 0 && <WaitLines row={row} />}
      {stage === "collect" && row.as === "buyer" && <Collect />}
    </section>
  );
};
