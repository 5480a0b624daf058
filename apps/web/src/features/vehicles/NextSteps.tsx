import type { VehicleDetail } from "@evenhand/shared/http/vehicles";
import { useQuery } from "@tanstack/react-query";
import { useText } from "../../strings/text";
import { Panel } from "../../ui/Page";
import { isKind, useAccount } from "../../entities/account/queries";
import { releasesQuery } from "../../entities/release/queries";
import { AskStep, BookingStep, PublishingStep } from "./BookingSteps";
import styles from "./Car.module.css";
import { ListingStep, StatementStep } from "./DealerSteps";
import { OrderInspection } from "./OrderInspection";
import { Step } from "./Step";
import { LinkButton } from "../../ui/LinkButton";

interface Props {
  readonly car: VehicleDetail;
}

const DealerSteps = ({ car }: Props) => {
  const t = useText();
  const waiting = useQuery(releasesQuery({ vehicle: car.id, state: "released" })).data?.items.length ?? 0;
  return (
    <>
      {waiting > 0 && (
        <Step title={t("next.answer", { count: waiting })}>
          <LinkButton to="/released" search={{ vehicle: car.id }}>
            {t("next.answer.do")}
          </LinkButton>
        </Step>
      )}
      <StatementStep car={car} />
      <ListingStep car={car} />
      <PublishingStep vehicle={car.id} />
    </>
  );
};

const ReadComparison = ({ comparison }: { readonly comparison: string }) => {
  const t = useText();
  return (
    <Step title={t("next.read")}>
      <p>{t("next.read.what")}</p>
      <LinkButton to="/comparisons/$comparison" params={{ comparison }}>
        {t("next.read.do")}
      </LinkButton>
    </Step>
  );
};

const WaitForReport = ({ order }: { readonly order: VehicleDetail["orders"][number] }) => {
  const t = useText();
  const title = t(order.state === "ordered" ? "next.wait.ordered" : "next.wait.accepted", {
    inspector: order.inspector.name,
  });
  return (
    <Step title={title}>
      <p>{t("next.wait.what", { version: order.statement.version })}</p>
      <LinkButton variant="default" to="/orders/$order" params={{ order: order.id }}>
        {t("next.wait.do")}
      </LinkButton>
    </Step>
  );
};

const BuyerSteps = ({ car }: Props) => {
  const [order] = car.orders.filter(({ state }) => state !== "declined" && state !== "cancelled");
  const [comparison] = car.comparisons;
  if (comparison) return <ReadComparison comparison={comparison.id} />;
  if (order) return <WaitForReport order={order} />;
  return (
    <>
      {car.statements.length > 0 && <BookingStep vehicle={car.id} />}
      <OrderInspection car={car} />
    </>
  );
};

const InspectorSteps = ({ car }: Props) => {
  const t = useText();
  const [order] = car.orders.filter(({ state }) => state === "ordered" || state === "accepted");
  if (!order) return null;
  return (
    <Step title={t("next.inspect")}>
      <p>{t("next.inspect.what")}</p>
      <LinkButton to="/orders/$order" params={{ order: order.id }}>
        {t("next.inspect.do")}
      </LinkButton>
    </Step>
  );
};

/** What this person can do next about this car. */
export const NextSteps = ({ car }: Props) => {
  const t = useText();
  const account = useAccount();
  const own = account?.memberships.some(({ organization }) => organization.id === car.dealer.id) ?? false;
  const buys = isKind(account, "buyer");
  const inspects = isKind(account, "inspector") && car.orders.length > 0;
  if (!own && !buys && !inspects) return null;
  return (
    <Panel title={t("next.title")}>
      <ul className={styles.steps}>
        {own && <DealerSteps car={car} />}
        {buys && <BuyerSteps car={car} />}
        {buys && <AskStep vehicle={car.id} />}
        {inspects && <InspectorSteps car={car} />}
      </ul>
    </Panel>
  );
};
