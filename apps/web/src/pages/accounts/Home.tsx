import { useInfiniteQuery } from "@tanstack/react-query";
import type { ReactNode } from "react";
import { call } from "../../service/client";
import { pagedQuery } from "../../service/pages";
import { useText } from "../../strings/text";
import { Line, List } from "../../ui/List";
import { Empty, Page, Panel, Tag } from "../../ui/Page";
import { DecisionLine } from "../../features/decisions/DecisionLine";
import { decisionsQuery } from "../../features/decisions/queries";
import { ReleaseLine } from "../../features/disputes/ReleaseLine";
import { releasedQuery } from "../../entities/release/queries";
import { CarLine } from "../../entities/car/CarLine";
import { NoOrders, OrderLine } from "../../entities/car/OrderLine";
import { carsQuery, ordersQuery } from "../../entities/car/queries";
import styles from "../../features/accounts/Accounts.module.css";
import { isKind, useAccount } from "../../entities/account/queries";
import { LinkButton } from "../../ui/LinkButton";

interface CarsProps {
  readonly title: string;
  readonly actions?: ReactNode;
  /** What stands there where there is none. */
  readonly empty: ReactNode;
}

const CarsPanel = ({ title, actions, empty }: CarsProps) => {
  const cars = useInfiniteQuery(carsQuery(undefined));
  return (
    <Panel title={title} actions={actions}>
      <List query={cars} keyOf={({ id }) => id} renderRow={(car) => <CarLine car={car} />} empty={empty} />
    </Panel>
  );
};

const OrdersPanel = ({ title }: { readonly title: string }) => {
  const orders = useInfiniteQuery(ordersQuery);
  return (
    <Panel title={title}>
      <List
        query={orders}
        keyOf={({ id }) => id}
        renderRow={(order) => <OrderLine order={order} />}
        empty={<NoOrders />}
      />
    </Panel>
  );
};

/** What was laid before the dealer and waits for an answer. */
const ReleasedPanel = () => {
  const t = useText();
  const released = useInfiniteQuery(releasedQuery({ state: "released" }));
  return (
    <Panel title={t("home.dealer.released")}>
      <List
        query={released}
        keyOf={({ id }) => id}
        renderRow={(release) => <ReleaseLine release={release} />}
        empty={<Empty title={t("home.dealer.released.none")} />}
      />
    </Panel>
  );
};

const DecisionsPanel = () => {
  const t = useText();
  const decisions = useInfiniteQuery(decisionsQuery);
  return (
    <Panel title={t("home.decisions")}>
      <List
        query={decisions}
        keyOf={({ id }) => id}
        renderRow={(decision) => <DecisionLine decision={decision} />}
        empty={<Empty title={t("decisions.none.dealer")} />}
      />
    </Panel>
  );
};

const DealerHome = () => {
  const t = useText();
  return (
    <>
      <ReleasedPanel />
      <CarsPanel
        title={t("home.dealer.cars")}
        actions={
          <LinkButton variant="default" to="/cars/new">
            {t("cars.add")}
          </LinkButton>
        }
        empty={<Empty title={t("cars.none.dealer")}>{t("cars.none.dealer.hint")}</Empty>}
      />
      <DecisionsPanel />
    </>
  );
};

const BuyerHome = () => {
  const t = useText();
  return (
    <>
      <OrdersPanel title={t("home.buyer.orders")} />
      <CarsPanel
        title={t("cars.title")}
        empty={<Empty title={t("cars.none")}>{t("cars.none.hint")}</Empty>}
      />
    </>
  );
};

const InspectorHome = () => {
  const t = useText();
  return <OrdersPanel title={t("home.inspector.orders")} />;
};

const organizationsQuery = pagedQuery(["organizations"], (after, signal) =>
  call("organizations.list", { query: { after }, signal }),
);

const OperatorHome = () => {
  const t = useText();
  const organizations = useInfiniteQuery(organizationsQuery);
  return (
    <Panel title={t("home.operator")}>
      <List
        query={organizations}
        keyOf={({ id }) => id}
        renderRow={({ name, place, kind }) => (
          <Line main={name} sub={place ?? undefined} end={<Tag>{t(`organization.kind.${kind}`)}</Tag>} />
        )}
        empty={<Empty title={t("home.operator.none")} />}
      />
    </Panel>
  );
};

/** Four people, four first screens. Who is more than one of them sees the parts of each. */
export const Home = () => {
  const t = useText();
  const account = useAccount();
  if (!account) return null;
  return (
    <Page title={t("home.title", { name: account.name })}>
      <div className={styles.home}>
        {isKind(account, "inspector") && <InspectorHome />}
        {isKind(account, "dealer") && <DealerHome />}
        {isKind(account, "buyer") && <BuyerHome />}
        {isKind(account, "operator") && <OperatorHome />}
      </div>
    </Page>
  );
};
