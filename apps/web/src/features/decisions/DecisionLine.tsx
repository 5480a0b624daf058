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

export const DecisionLine = ({ decision }: { readonly decision: Decision }) => {
  const t = useText();
  const intl = useIntl();
  const name = useCarName();
  const car = useQuery(carQuery(decision.vehicle)).data;
  const date = intl.formatDate(decision.decidedAt, { dateStyle: "medium" });
  const title = car ? name(car.vehicle) : t("car.title");
  return (
    <Line
      main={
        decision.summary === null ? (
          <Link to="/decisions" hash={`decision-${decision.id}`}>
            {title}
          </Link>
        ) : (
          <Link to="/summaries/$summary" params={{ summary: decision.summary }}>
            {title}
          </Link>
        )
      }
      sub={t(`decision.line.${decision.decision}`, {
        date,
        price: decision.price === null ? "" : moneyText(intl, decision.price),
      })}
      end={
        <Tag strong={decision.decision === "counter" && decision.answer === null}>
          {decision.answer === null
            ? t(`decision.state.${decision.decision}`)
            : t(`decision.answer.${decision.answer.answer}`)}
        </Tag>
      }
    />
  );
};
