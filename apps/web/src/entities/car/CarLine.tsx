import type { VehicleRow } from "@evenhand/shared/http/vehicles";
import { Link } from "@tanstack/react-router";
import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import { Line } from "../../ui/List";
import { moneyText } from "../../ui/money";
import { Tag } from "../../ui/Page";
import { useCarName } from "./CarName";

/** One car in a list: which it is, what of it is stated, what is asked. */
export const CarLine = ({ car }: { readonly car: VehicleRow }) => {
  const t = useText();
  const intl = useIntl();
  const name = useCarName();
  const stated = car.statement
    ? t("cars.stated", {
        version: car.statement.version,
        date: intl.formatDate(car.statement.sealedAt, { dateStyle: "medium" }),
      })
    : t("cars.not-stated");
  return (
    <Line
      main={
        <Link to="/cars/$vehicle" params={{ vehicle: car.id }}>
          {name(car)}
        </Link>
      }
      sub={
        <>
          {t("cars.line", { identification: car.identification, dealer: car.dealer.name })}
          {car.words !== null && <span style={{ display: "block" }}>{car.words}</span>}
          <span style={{ display: "block" }}>{stated}</span>
        </>
      }
      end={
        <>
          {!car.listed && <Tag>{t("cars.not-listed")}</Tag>}
          {car.asking !== null && <strong className="figures">{moneyText(intl, car.asking)}</strong>}
        </>
      }
    />
  );
};
