import type { OrderSeen } from "@evenhand/shared/http/orders";
import { Link } from "@tanstack/react-router";
import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import { Line } from "../../ui/List";
import { LinkButton } from "../../ui/LinkButton";
import { Empty, Tag } from "../../ui/Page";
import { isKind, useAccount } from "../account/queries";
import { useCarName } from "./CarName";

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
