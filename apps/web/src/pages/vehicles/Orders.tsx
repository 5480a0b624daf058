import { useInfiniteQuery } from "@tanstack/react-query";
import { useText } from "../../strings/text";
import { List } from "../../ui/List";
import { Page, Panel } from "../../ui/Page";
import { NoOrders, OrderLine } from "../../entities/car/OrderLine";
import { ordersQuery } from "../../entities/car/queries";

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
