import type { Answer, AnswerCost } from "@evenhand/shared/page-one";
import { useIntl } from "react-intl";
import { useText } from "../../../strings/text";
import { moneyText } from "../../../ui/money";
import styles from "./AnswerView.module.css";
import type { Step } from "./steps";

interface Props {
  readonly answer: Answer;
  readonly cost?: AnswerCost;
  readonly step: Step | undefined;
}

interface FigureProps {
  readonly name: string;
  readonly value: string;
  readonly note: string;
}

const Figure = ({ name, value, note }: FigureProps) => (
  <div>
    <dt>{name}</dt>
    <dd>
      <strong>{value}</strong>
      <span>{note}</span>
    </dd>
  </div>
);

const useCostFigure = (cost: AnswerCost | undefined): Omit<FigureProps, "name"> => {
  const t = useText();
  const intl = useIntl();
  const asking =
    cost?.asking == null
      ? t("answer.figure.asking.none")
      : t("answer.figure.asking", { price: moneyText(intl, cost.asking) });
  if (cost?.cost == null) return { value: t("answer.figure.cost.none"), note: asking };
  const { total, currency } = cost.cost;
  const money = (minor: number): string => moneyText(intl, { minor, currency });
  const value = t("answer.figure.cost", { low: money(total.low), high: money(total.high) });
  return { value, note: asking };
};

/** Page one in four figures: what is wrong, what nobody knows, what it may cost beside the price, and what to do first. */
export const Figures = ({ answer, cost, step }: Props) => {
  const t = useText();
  const costFigure = useCostFigure(cost);
  const grave = answer.matters.filter(
    ({ matter }) => matter.severity === "halt" || matter.severity === "danger",
  );
  const places = answer.unknown.reduce((sum, { matter }) => sum + matter.lines.length, 0);
  const couldStop = answer.stops.filter(({ known }) => !known).length;
  return (
    <dl className={styles.figures}>
      <Figure
        name={t("answer.figure.wrong")}
        value={t("answer.figure.matters", { count: answer.matters.length })}
        note={t("answer.figure.grave", { count: grave.length })}
      />
      <Figure
        name={t("answer.figure.unknown")}
        value={t("answer.figure.places", { count: places })}
        note={t("answer.figure.could-stop", { count: couldStop, matters: answer.unknown.length })}
      />
      <Figure name={t("answer.cost")} {...costFigure} />
      {step !== undefined && (
        <Figure name={t("answer.figure.next")} value={step.words} note={step.matters[0]?.headline ?? ""} />
      )}
    </dl>
  );
};
