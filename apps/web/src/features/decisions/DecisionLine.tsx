import type { Decision } from "@evenhand/shared/http/summaries";
import { useQuery } from "@tanstack/react-query";
import { Link } from "@tanstack/react-router";
import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import { Line } from "../../ui/List";
import { moneyText } from "../../ui/money";
import { Tag } from "../../ui/Page";
import { useCarName } from "../../entities/car/CarName";
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

export const DecisionLine = ({ decision }: Props) => {
  const t = useText();
  const intl = useIntl();
  const { decision: kind, decidedAt, price, answer } = decision;
  return (
    <Line
      main={<DecidedCar decision={decision} />}
      sub={t(`decision.line.${kind}`, {
        date: intl.formatDate(decidedAt, { dateStyle: "medium" }),
        price: price === null ? "" : moneyText(intl, price),
      })}
      end={
        <Tag strong={kind === "counter" && answer === null}>
          {answer === null ? t(`decision.state.${kind}`) : t(`decision.answer.${answer.answer}`)}
        </Tag>
      }
    />
  );
};
