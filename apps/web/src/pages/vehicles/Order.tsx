import type { OrderSeen } from "@evenhand/shared/http/orders";
import { useQuery } from "@tanstack/react-query";
import { getRouteApi, Link } from "@tanstack/react-router";
import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import { Loading } from "../../ui/Loading";
import { Facts, Page, Panel, Tag } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { useAccount } from "../../entities/account/queries";
import { AcceptOrder, BeginInspection, EndOrder } from "../../features/vehicles/OrderDeeds";
import { useCarName } from "../../entities/car/CarName";
import { carQuery, orderQuery } from "../../entities/car/queries";
import { OverPart } from "../../entities/case/OverPart";
import { LinkButton } from "../../ui/LinkButton";

const route = getRouteApi("/signed-in/orders/$order");

const OrderFacts = ({ order }: { readonly order: OrderSeen }) => {
  const t = useText();
  const intl = useIntl();
  const when = (instant: string): string =>
    intl.formatDate(instant, { dateStyle: "long", timeStyle: "short" });
  const rows: (readonly [string, string])[] = [
    [t("car.identification"), order.vehicle.identification],
    [t("car.dealer"), order.dealer.name],
    [t("order.inspector"), order.inspector.name],
    [t("order.buyer"), order.buyer?.name ?? t("order.buyer.hidden")],
    [t("order.statement"), t("car.statement.version", { version: order.statement.version })],
    [t("order.ordered"), when(order.orderedAt)],
  ];
  if (order.acceptedAt !== null) {
    rows.push([t("order.accepted"), when(order.acceptedAt)]);
    rows.push([
      t("order.interests"),
      order.interests.length === 0 ? t("order.interests.none") : intl.formatList(order.interests),
    ]);
  }
  if (order.reason !== null) rows.push([t("order.reason"), order.reason]);
  return (
    <Panel title={t("order.facts")} hint={t("order.frozen")}>
      <Facts rows={rows} />
    </Panel>
  );
};

const Result = ({ order }: { readonly order: OrderSeen }) => {
  const t = useText();
  const car = useQuery({ ...carQuery(order.vehicle.id), enabled: order.state === "reported" }).data;
  const versions = order.report?.versions.map(({ id }) => id) ?? [];
  const comparison = car?.comparisons.find(({ a, b }) => versions.includes(b) || versions.includes(a));
  const [newest] = order.report?.versions ?? [];
  if (order.state !== "reported") return null;
  return (
    <Panel title={t("order.result")} hint={t("order.result.hint")}>
      <div style={{ display: "flex", flexWrap: "wrap", gap: "0.5rem" }}>
        {comparison && (
          <LinkButton to="/comparisons/$comparison" params={{ comparison: comparison.id }}>
            {t("next.read.do")}
          </LinkButton>
        )}
        {newest && (
          <LinkButton variant="default" to="/report-versions/$version" params={{ version: newest.id }}>
            {t("order.report.read")}
          </LinkButton>
        )}
      </div>
    </Panel>
  );
};

/** What this person may do about it, and what came of it. */
const OneOrder = ({ order }: { readonly order: OrderSeen }) => {
  const account = useAccount();
  const { state, inspector } = order;
  const inspects = account?.memberships.some(({ organization }) => organization.id === inspector.id) ?? false;
  return (
    <>
      {inspects && state === "ordered" && <AcceptOrder order={order} />}
      {inspects && state !== "ordered" && <BeginInspection order={order} />}
      <Result order={order} />
      <OrderFacts order={order} />
      {(state === "ordered" || state === "accepted") && <EndOrder order={order} inspects={inspects} />}
    </>
  );
};

const NoOrder = ({ error }: { readonly error: Error }) => {
  const t = useText();
  return (
    <Page title={t("case.not-found.visit")} narrow>
      <ProblemNotice error={error} />
    </Page>
  );
};

/** One ordered inspection, for the buyer and for the inspector. */
export const Order = () => {
  const t = useText();
  const name = useCarName();
  const { order: id } = route.useParams();
  const { data: order, error } = useQuery(orderQuery(id));
  if (error) return <NoOrder error={error} />;
  if (!order) return <Loading />;
  return (
    <Page
      title={t("order.title", { car: name(order.vehicle) })}
      over={
        <OverPart parts={[order.id]}>
          <Link to="/cars/$vehicle" params={{ vehicle: order.vehicle.id }}>
            {t("comparison.back")}
          </Link>
        </OverPart>
      }
      under={<Tag strong={order.state === "reported"}>{t(`order.state.${order.state}`)}</Tag>}
      narrow
    >
      <OneOrder order={order} />
    </Page>
  );
};
