import type { VehicleRow } from "@evenhand/shared/http/vehicles";
import { Link } from "@tanstack/react-router";
import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import { Line } from "../../ui/List";
import { moneyText } from "../../ui/money";
import { Tag } from "../../ui/Page";
import { useCarName } from "./CarName";
import { Cover } from "./Cover";

interface Props {
  readonly car: VehicleRow;
}

const block = { display: "block" } as const;

/** Its number and dealer, the dealer's words, and what of it is stated. */
const CarFacts = ({ car: { identification, dealer, words, statement } }: Props) => {
  const t = useText();
  const intl = useIntl();
  const stated = statement
    ? t("cars.stated", {
        version: statement.version,
        date: intl.formatDate(statement.sealedAt, { dateStyle: "medium" }),
      })
    : t("cars.not-stated");
  return (
    <>
      {t("cars.line", { identification, dealer: dealer.name })}
      {words !== null && <span style={block}>{words}</span>}
      <span style={block}>{stated}</span>
    </>
  );
};

const Asking = ({ car: { listed, asking } }: Props) => {
  const t = useText();
  const intl = useIntl();
  return (
    <>
      {!listed && <Tag>{t("cars.not-listed")}</Tag>}
      {asking !== null && <strong className="figures">{moneyText(intl, asking)}</strong>}
    </>
  );
};

/** One car in a list: which it is, what of it is stated, what is asked. */
export const CarLine = ({ car }: Props) => {
  const name = useCarName();
  return (
    <Line
      lead={<Cover id={car.cover} />}
      main={
        <Link to="/cars/$vehicle" params={{ vehicle: car.id }}>
          {name(car)}
        </Link>
      }
      sub={<CarFacts car={car} />}
      end={<Asking car={car} />}
    />
  );
};
