import type { OrderSeen } from "@evenhand/shared/http/orders";
import { useInfiniteQuery } from "@tanstack/react-query";
import { Link } from "@tanstack/react-router";
import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import { Line, List } from "../../ui/List";
import { Empty, Page, Panel, Tag } from "../../ui/Page";
import { isKind, useAccount } from "../../entities/account/queries";
import { useCarName } from "../../entities/car/CarName";
import { ordersQuery } from "../../entities/car/queries";
import { LinkButton } from "../../ui/LinkButton";

export const OrderLine = ({ order }: { readonly order: OrderSeen }) => {
  const t = useText();
  const intl = useIntl();
  const name = useCarName();
  return (
    <Line
      main={
        <Link to="/orders/$order" params={{ order: order.id }}>
          {name(order.vehicle)}
        </Link>
      }
      sub={t("orders.line", {
        dealer: order.dealer.name,
        inspector: order.inspector.name,
        date: intl.formatDate(order.orderedAt, { dateStyle: "medium" }),
      })}
      end={<Tag strong={order.state === "reported"}>{t(`order.state.${order.state}`)}</Tag>}
    />
  );
};

export const NoOrders = () => {
  const t = useText();
  const buys = isKind(useAccount(), "buyer");
  if (!buys) return <Empty title={t("home.inspector.orders.none")} />;
  return (
    <Empty title={t("home.buyer.orders.none")}>
      <p>{t("home.buyer.orders.none.hint")}</p>
      <LinkButton to="/cars">{t("home.buyer.cars")}</LinkButton>
    </Empty>
  );
};

export const Orders = () => {
  const t = useText();
  const orders = useInfiniteQuery(ordersQuery);
  return (
    <Page title={t("nav.orders")} narrow>
      <Panel>
        <List
          query={orders}
          keyOf={({ id }) => id}
          renderRow={(order) => <OrderLine order={order} />}
          empty={<NoOrders />}
        />
      </Panel>
    </Page>
  );
};
