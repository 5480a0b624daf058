import type { VehicleDetail } from "@evenhand/shared/http/vehicles";
import type { VehicleForm } from "@evenhand/shared/report";
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
import { CarPictures } from "../../entities/evidence/CarPictures";
import { carEvidenceQuery } from "../../entities/evidence/queries";
import { Silence } from "../../features/vehicles/Silence";

const route = getRouteApi("/signed-in/cars/$vehicle");

interface Props {
  readonly car: VehicleDetail;
}

const askingText = (
  t: ReturnType<typeof useText>,
  intl: ReturnType<typeof useIntl>,
  { asking, withheld }: VehicleDetail,
): string => {
  if (withheld) return t("car.asking.withheld");
  return asking === null ? t("car.asking.none") : moneyText(intl, asking);
};

type Row = readonly [string, string];

/** What a buyer asks of a car first. */
const useSaleRows = () => {
  const t = useText();
  const intl = useIntl();
  return (car: VehicleDetail): readonly Row[] => {
    const { market, identification } = car.vehicle;
    return [
      [t("car.identification"), identification],
      [t("car.dealer"), car.dealer.name],
      [t("car.asking"), askingText(t, intl, car)],
      ...(market === undefined ? [] : [[t("car.market"), market] as const]),
    ];
  };
};

/** How the car is built. */
const useFormRows = () => {
  const t = useText();
  return ({ cylinders, fuelSystem, brakes, systemVolts, ...form }: VehicleForm): readonly Row[] => {
    const fuel = t(`form.fuelSystem.${fuelSystem}`);
    const [front, rear] = [t(`form.brake.${brakes.front}`), t(`form.brake.${brakes.rear}`)];
    return [
      [t("form.body"), t(`form.body.${form.body}`)],
      [t("form.doors"), String(form.doors)],
      [t("form.engine"), t("form.engine.is", { cylinders, fuel })],
      [t("form.gearbox"), t(`form.gearbox.${form.gearbox}`)],
      [t("form.driven"), t(`form.driven.${form.driven}`)],
      [t("form.construction"), t(`form.construction.${form.construction}`)],
      [t("form.brakes"), t("form.brakes.are", { front, rear })],
      [t("form.volts"), t("form.volts.are", { volts: systemVolts })],
      [t("form.drive"), t(form.leftHandDrive ? "form.drive.left" : "form.drive.right")],
    ];
  };
};

const CarFacts = ({ car }: Props) => {
  const t = useText();
  const [saleRows, formRows] = [useSaleRows(), useFormRows()];
  return (
    <Panel title={t("car.facts")}>
      <Facts rows={[...saleRows(car), ...formRows(car.vehicle.form)]} />
    </Panel>
  );
};

type Statement = VehicleDetail["statements"][number];

const StatementLine = ({ one, newest }: { readonly one: Statement; readonly newest: boolean }) => {
  const t = useText();
  const intl = useIntl();
  return (
    <Line
      main={
        <Link to="/report-versions/$version" params={{ version: one.id }}>
          {t("car.statement.version", { version: one.version })}
        </Link>
      }
      sub={t("car.statement.sealed", {
        date: intl.formatDate(one.sealedAt, { dateStyle: "long", timeStyle: "short" }),
      })}
      end={newest ? <Tag>{t("car.statement.newest")}</Tag> : undefined}
    />
  );
};

/** The statements, newest first, and what the newest is silent about. */
const Stated = ({ car, newest }: Props & { readonly newest: Statement }) => (
  <>
    <ul className={styles.list}>
      {car.statements.map((one) => (
        <li key={one.id}>
          <StatementLine one={one} newest={one.id === newest.id && car.statements.length > 1} />
        </li>
      ))}
    </ul>
    <Silence version={newest.id} form={car.vehicle.form} />
  </>
);

const Statements = ({ car }: Props) => {
  const t = useText();
  const [newest] = car.statements;
  return (
    <Panel title={t("car.statements")} hint={t("car.statements.hint")}>
      {newest === undefined ? (
        <Empty title={t("car.statements.none")}>{t("car.statements.none.hint")}</Empty>
      ) : (
        <Stated car={car} newest={newest} />
      )}
    </Panel>
  );
};

const OrdersHere = ({ car }: Props) => {
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

const ComparisonsHere = ({ car }: Props) => {
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

/** What to do next for this person, what is stated and what is not, orders, comparisons. */
const OneCar = ({ car }: Props) => {
  const account = useAccount();
  return (
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
  );
};

const NoCar = ({ error }: { readonly error: Error }) => {
  const t = useText();
  return (
    <Page title={t("car.title")} narrow>
      <ProblemNotice error={error} />
    </Page>
  );
};

/** The page of one car. */
export const Car = () => {
  const t = useText();
  const name = useCarName();
  const { vehicle: id } = route.useParams();
  const { data: car, error } = useQuery(carQuery(id));
  const pictures = useQuery(carEvidenceQuery(id));
  if (error) return <NoCar error={error} />;
  if (!car) return <Loading />;
  return (
    <Page
      title={name(car.vehicle)}
      over={<Link to="/cars">{t("nav.cars")}</Link>}
      under={car.words ?? undefined}
      actions={car.listed ? undefined : <Tag>{t("cars.not-listed")}</Tag>}
    >
      <CarPictures pictures={pictures.data}>
        <Link to="/cars/$vehicle/pictures" params={{ vehicle: id }}>
          {t("evidence.all")}
        </Link>
      </CarPictures>
      <OneCar car={car} />
    </Page>
  );
};
