import type { VehicleDetail } from "@evenhand/shared/http/vehicles";
import { useQuery } from "@tanstack/react-query";
import { getRouteApi, Link } from "@tanstack/react-router";
import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import { Line } from "../../ui/List";
import { Loading } from "../../ui/Loading";
import { moneyText } from "../../ui/money";
import { Empty, Facts, Page, Panel, Tag } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { mayEver } from "../../entities/account/may-ever";
import { useAccount } from "../../entities/account/queries";
import { DealerRecord } from "../../features/records/DealerRecord";
import { useCarName } from "../../entities/car/CarName";
import styles from "../../features/vehicles/Car.module.css";
import { NextSteps } from "../../features/vehicles/NextSteps";
import { carQuery } from "../../entities/car/queries";
import { Silence } from "../../features/vehicles/Silence";

const route = getRouteApi("/signed-in/cars/$vehicle");

const askingText = (
  t: ReturnType<typeof useText>,
  intl: ReturnType<typeof useIntl>,
  { asking, withheld }: VehicleDetail,
): string => {
  if (withheld) return t("car.asking.withheld");
  return asking === null ? t("car.asking.none") : moneyText(intl, asking);
};

const CarFacts = ({ car }: { readonly car: VehicleDetail }) => {
  const t = useText();
  const intl = useIntl();
  const { form, market, identification } = car.vehicle;
  const rows: (readonly [string, string])[] = [
    [t("car.identification"), identification],
    [t("car.dealer"), car.dealer.name],
    [t("car.asking"), askingText(t, intl, car)],
    [t("form.body"), t(`form.body.${form.body}`)],
    [t("form.doors"), String(form.doors)],
    [
      t("form.engine"),
      t("form.engine.is", { cylinders: form.cylinders, fuel: t(`form.fuelSystem.${form.fuelSystem}`) }),
    ],
    [t("form.gearbox"), t(`form.gearbox.${form.gearbox}`)],
    [t("form.driven"), t(`form.driven.${form.driven}`)],
    [t("form.construction"), t(`form.construction.${form.construction}`)],
    [
      t("form.brakes"),
      t("form.brakes.are", {
        front: t(`form.brake.${form.brakes.front}`),
        rear: t(`form.brake.${form.brakes.rear}`),
      }),
    ],
    [t("form.volts"), t("form.volts.are", { volts: form.systemVolts })],
    [t("form.drive"), t(form.leftHandDrive ? "form.drive.left" : "form.drive.right")],
  ];
  if (market !== undefined) rows.splice(3, 0, [t("car.market"), market]);
  return (
    <Panel title={t("car.facts")}>
      <Facts rows={rows} />
    </Panel>
  );
};

const Statements = ({ car }: { readonly car: VehicleDetail }) => {
  const t = useText();
  const intl = useIntl();
  const [newest] = car.statements;
  return (
    <Panel title={t("car.statements")} hint={t("car.statements.hint")}>
      {newest === undefined ? (
        <Empty title={t("car.statements.none")}>{t("car.statements.none.hint")}</Empty>
      ) : (
        <>
          <ul className={styles.list}>
            {car.statements.map((one) => (
              <li key={one.id}>
                <Line
                  main={
                    <Link to="/report-versions/$version" params={{ version: one.id }}>
                      {t("car.statement.version", { version: one.version })}
                    </Link>
                  }
                  sub={t("car.statement.sealed", {
                    date: intl.formatDate(one.sealedAt, { dateStyle: "long", timeStyle: "short" }),
                  })}
                  end={
                    one.id === newest.id && car.statements.length > 1 ? (
                      <Tag>{t("car.statement.newest")}</Tag>
                    ) : undefined
                  }
                />
              </li>
            ))}
          </ul>
          <Silence version={newest.id} form={car.vehicle.form} />
        </>
      )}
    </Panel>
  );
};

const OrdersHere = ({ car }: { readonly car: VehicleDetail }) => {
  const t = useText();
  const intl = useIntl();
  if (car.orders.length === 0) return null;
  return (
    <Panel title={t("car.orders")}>
      <ul className={styles.list}>
        {car.orders.map((order) => (
          <li key={order.id}>
            <Line
              main={
                <Link to="/orders/$order" params={{ order: order.id }}>
                  {t("car.order.by", { inspector: order.inspector.name })}
                </Link>
              }
              sub={t("car.order.on", {
                version: order.statement.version,
                date: intl.formatDate(order.orderedAt, { dateStyle: "medium" }),
              })}
              end={<Tag>{t(`order.state.${order.state}`)}</Tag>}
            />
          </li>
        ))}
      </ul>
    </Panel>
  );
};

const ComparisonsHere = ({ car }: { readonly car: VehicleDetail }) => {
  const t = useText();
  const intl = useIntl();
  if (car.comparisons.length === 0) return null;
  return (
    <Panel title={t("car.comparisons")}>
      <ul className={styles.list}>
        {car.comparisons.map((one) => (
          <li key={one.id}>
            <Line
              main={
                <Link to="/comparisons/$comparison" params={{ comparison: one.id }}>
                  {t("car.comparison")}
                </Link>
              }
              sub={t("car.comparison.made", {
                date: intl.formatDate(one.createdAt, { dateStyle: "long", timeStyle: "short" }),
              })}
            />
          </li>
        ))}
      </ul>
    </Panel>
  );
};

/** One car: what to do next for this person, what is stated and what is not, orders, comparisons. */
export const Car = () => {
  const t = useText();
  const account = useAccount();
  const name = useCarName();
  const { vehicle: id } = route.useParams();
  const { data: car, error } = useQuery(carQuery(id));
  if (error) {
    return (
      <Page title={t("car.title")} narrow>
        <ProblemNotice error={error} />
      </Page>
    );
  }
  if (!car) return <Loading />;
  return (
    <Page
      title={name(car.vehicle)}
      over={<Link to="/cars">{t("nav.cars")}</Link>}
      under={car.words ?? undefined}
      actions={car.listed ? undefined : <Tag>{t("cars.not-listed")}</Tag>}
    >
      <div className={styles.columns}>
        <div className={styles.main}>
          <NextSteps car={car} />
          <ComparisonsHere car={car} />
          <Statements car={car} />
          <OrdersHere car={car} />
          {mayEver(account, "dealerRecords.get") && <DealerRecord dealer={car.dealer.id} />}
        </div>
        <CarFacts car={car} />
      </div>
    </Page>
  );
};
