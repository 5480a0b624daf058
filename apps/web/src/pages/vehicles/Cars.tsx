import { useDebouncedCallback } from "@mantine/hooks";
import type { VehicleRow } from "@evenhand/shared/http/vehicles";
import { useInfiniteQuery } from "@tanstack/react-query";
import { getRouteApi, Link } from "@tanstack/react-router";
import { useState } from "react";
import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import { Line, List } from "../../ui/List";
import { moneyText } from "../../ui/money";
import { Empty, Page, Panel, Tag } from "../../ui/Page";
import { SearchField } from "../../ui/SearchField";
import { isKind, useAccount } from "../../entities/account/queries";
import { useCarName } from "../../entities/car/CarName";
import { carsQuery } from "../../entities/car/queries";
import { LinkButton } from "../../ui/LinkButton";

const route = getRouteApi("/signed-in/cars");

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

const NoCars = ({ q, deals }: { readonly q: string | undefined; readonly deals: boolean }) => {
  const t = useText();
  if (q !== undefined) return <Empty title={t("cars.none.found", { q })}>{t("cars.none.found.hint")}</Empty>;
  if (!deals) return <Empty title={t("cars.none")}>{t("cars.none.hint")}</Empty>;
  return (
    <Empty title={t("cars.none.dealer")}>
      <p>{t("cars.none.dealer.hint")}</p>
      <LinkButton to="/cars/new">{t("cars.add")}</LinkButton>
    </Empty>
  );
};

export const Cars = () => {
  const t = useText();
  const account = useAccount();
  const { q } = route.useSearch();
  const navigate = route.useNavigate();
  const [typed, setTyped] = useState(q ?? "");
  const send = useDebouncedCallback(
    (text: string) => void navigate({ search: { q: text.trim() || undefined }, replace: true }),
    300,
  );
  const cars = useInfiniteQuery(carsQuery(q));
  const deals = isKind(account, "dealer");
  return (
    <Page
      title={t(deals ? "cars.title.dealer" : "cars.title")}
      under={t(deals ? "cars.what.dealer" : "cars.what")}
      actions={deals ? <LinkButton to="/cars/new">{t("cars.add")}</LinkButton> : undefined}
      narrow
    >
      <SearchField
        label={t("cars.search")}
        hint={t("cars.search.hint")}
        value={typed}
        onChange={(words) => {
          setTyped(words);
          send(words);
        }}
      />
      <Panel>
        <List
          query={cars}
          keyOf={({ id }) => id}
          renderRow={(car) => <CarLine car={car} />}
          empty={<NoCars q={q} deals={deals} />}
        />
      </Panel>
    </Page>
  );
};
