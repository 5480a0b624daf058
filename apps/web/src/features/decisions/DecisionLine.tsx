import type { Decision } from "@evenhand/shared/http/summaries";
import { useQuery } from "@tanstack/react-query";
import { Link } from "@tanstack/react-router";
import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import { Line } from "../../ui/List";
import { moneyText } from "../../ui/money";
import { Tag } from "../../ui/Page";
import { useCarName } from "../../entities/car/CarName";
import { stateOf } from "./state-of";
import { carQuery } from "../../entities/car/queries";

interface Props {
  readonly decision: Decision;
}

/** The car, as the way to what was decided on, where the person may read that. */
const DecidedCar = ({ decision: { id, summary, vehicle } }: Props) => {
  const t = useText();
  const name = useCarName();
  const car = useQuery(carQuery(vehicle)).data;
  const title = car ? name(car.vehicle) : t("car.title");
  return summary === null ? (
    <Link to="/decisions" hash={`decision-${id}`}>
      {title}
    </Link>
  ) : (
    <Link to="/summaries/$summary" params={{ summary }}>
      {title}
    </Link>
  );
};

/** When it was decided, and the price that was countered with, where there was one. */
const useDecided = () => {
  const t = useText();
  const intl = useIntl();
  return ({ decision: kind, decidedAt, price }: Decision, priced: boolean): string => {
    const date = intl.formatDate(decidedAt, { dateStyle: "medium" });
    if (kind !== "counter" || price === null || !priced) return t(`decision.line.${kind}`, { date });
    return t("decision.line.counter.price", { date, price: moneyText(intl, price) });
  };
};

interface LineProps extends Props {
  /** Its price stands under it, and is not said twice. */
  readonly priceBelow?: boolean;
}

export const DecisionLine = ({ decision, priceBelow = false }: LineProps) => {
  const t = useText();
  const decided = useDecided();
  const state = stateOf(decision);
  return (
    <Line
      main={<DecidedCar decision={decision} />}
      sub={decided(decision, !priceBelow)}
      end={
        <Tag strong={state === "countered" || state === "countered-back"}>{t(`decision.state.${state}`)}</Tag>
      }
    />
  );
};
