import { CaseStage, type CaseParty, type CaseStanding } from "@evenhand/shared/http/cases";
import { useText } from "../../strings/text";
import styles from "./Cases.module.css";
import { whoseIs } from "./Waiting";

/** The stages a party has to do with. */
const ways: Readonly<Record<CaseParty, readonly CaseStage[]>> = {
  buyer: CaseStage.options,
  dealer: ["ask", "book", "look", "settle", "decide", "collect"],
  inspector: ["book", "look", "read"],
};

const order = (stage: CaseStage): number => CaseStage.options.indexOf(stage);

/** The way of a case and where it stands on it: a filled mark where the next step is one's own, an outlined one where another's. */
export const Way = ({ as, standing }: { readonly as: CaseParty; readonly standing: CaseStanding }) => {
  const t = useText();
  const { stage: now, next } = standing;
  const whose = whoseIs(next, as);
  const stages = ways[as];
  const here = stages.findLast((stage) => order(stage) <= order(now)) ?? stages[0];
  return (
    <ol className={styles.way} aria-label={t("case.way")}>
      {stages.map((stage) => {
        const isHere = stage === here;
        const gone = order(stage) <= order(now) ? styles.gone : "";
        return (
          <li
            key={stage}
            className={`${styles.stage} ${gone} ${isHere ? styles.here : ""}`}
            aria-current={isHere ? "step" : undefined}
          >
            {isHere && whose !== "nobody" && (
              <span className={whose === "yours" ? styles.filled : styles.outlined} aria-hidden="true" />
            )}
            {t(`case.stage.${stage}`)}
          </li>
        );
      })}
    </ol>
  );
};
