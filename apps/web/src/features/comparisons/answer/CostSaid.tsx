import { matterId } from "@evenhand/shared/matter-id";
import type { Answer, AnswerCost } from "@evenhand/shared/page-one";
import { useIntl } from "react-intl";
import { useText } from "../../../strings/text";
import { moneyText } from "../../../ui/money";
import styles from "./AnswerView.module.css";

interface Props {
  readonly answer: Answer;
  readonly cost?: AnswerCost;
}

type Priced = NonNullable<AnswerCost["cost"]>;
const LARGEST = 3;

const Parts = ({ cost, answer }: { readonly cost: Priced; readonly answer: Answer }) => {
  const t = useText();
  const intl = useIntl();
  const { currency } = cost;
  const headlines = new Map(
    [...answer.matters, ...answer.unknown].map(({ matter }) => [matterId(matter), matter.headline]),
  );
  return (
    <ul>
      {cost.byMatter.slice(0, LARGEST).map(({ matter, likely }) => (
        <li key={matter}>
          <span>{headlines.get(matter)}</span>{" "}
          <strong>{t("answer.cost.about", { amount: moneyText(intl, { minor: likely, currency }) })}</strong>
        </li>
      ))}
    </ul>
  );
};

const Range = ({ cost, asking }: { readonly cost: Priced; readonly asking: AnswerCost["asking"] }) => {
  const t = useText();
  const intl = useIntl();
  const { currency, total } = cost;
  const money = (minor: number): string => moneyText(intl, { minor, currency });
  return (
    <p>
      {t("answer.cost.range", {
        low: money(total.low),
        likely: money(total.likely),
        high: money(total.high),
      })}
      {asking !== null && ` ${t("answer.cost.asking", { price: moneyText(intl, asking) })}`}
    </p>
  );
};

/** Cost to put right beside what is asked, with the three largest parts; nothing is guessed where there is no table. */
export const CostSaid = ({ cost, answer }: Props) => {
  const t = useText();
  if (cost === undefined) return null;
  return (
    <section className={styles.cost}>
      <h2>{t("answer.cost")}</h2>
      {cost.cost === null ? (
        <p>{t("answer.cost.none")}</p>
      ) : (
        <>
          <Range cost={cost.cost} asking={cost.asking} />
          <Parts cost={cost.cost} answer={answer} />
          <p>
            {cost.cost.unset.length > 0 && `${t("summary.cost.unset", { count: cost.cost.unset.length })} `}
            {t("answer.cost.plain", { table: cost.cost.table })}
          </p>
        </>
      )}
    </section>
  );
};
