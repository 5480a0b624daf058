import type { AppointmentSeen } from "@evenhand/shared/http/booking";
import { Link } from "@tanstack/react-router";
import type { ReactNode } from "react";
import { useInspectorLine } from "./use-inspector-line";
import { useText } from "../../strings/text";
import { Facts, Panel } from "../../ui/Page";
import { useTimes } from "../../entities/time/use-times";
import { When } from "../../entities/time/When";
import { useItemWords } from "../../entities/sheet/item-words";
import { useCarName } from "../../entities/car/CarName";
import { useLiftWords } from "./use-lift-words";

interface Props {
  readonly appointment: AppointmentSeen;
}

const useBuyer = ({ appointment: { as, buyer } }: Props): string => {
  const t = useText();
  if (buyer !== null) return buyer.name;
  return t(as === "dealer" ? "appointment.buyer.dealer" : "appointment.buyer.later");
};

const useKept = ({ appointment: { heldFromSaleUntil, state, zone } }: Props): string => {
  const t = useText();
  const times = useTimes();
  if (heldFromSaleUntil !== null) {
    return t("appointment.kept.until", { when: times.full(heldFromSaleUntil, zone) });
  }
  const asked = state === "held" || state === "requested" || state === "accepted";
  return t(asked ? "appointment.kept.open" : "appointment.kept.not");
};

const Cars = ({ appointment }: Props) => {
  const name = useCarName();
  return appointment.cars.map((car) => (
    <div key={car.id}>
      <Link to="/cars/$vehicle" params={{ vehicle: car.id }}>
        {name(car)}
      </Link>
      , {car.identification}
    </div>
  ));
};

const Orders = ({ appointment }: Props) => {
  const t = useText();
  const { as, visits } = appointment;
  return visits.map(({ vehicle, order, statement }) => (
    <div key={vehicle}>
      {statement !== null && t("appointment.statement.line", { version: statement.version })}
      {order !== null && as !== "dealer" && (
        <>
          {" "}
          <Link to="/orders/$order" params={{ order }}>
            {t("appointment.order")}
          </Link>
        </>
      )}
    </div>
  ));
};

/** What was recorded before the car was driven. */
const Road = ({ appointment: { road, zone } }: Props) => {
  const t = useText();
  const times = useTimes();
  if (road === null) return null;
  const { consent, insurance, plates, damageBorneBy } = road;
  const lines = [
    consent !== null &&
      t("appointment.road.consent", { by: consent.by, when: times.full(consent.signedAt, zone) }),
    insurance !== null && t("appointment.road.insurance", { reference: insurance.reference }),
    plates !== null && t("appointment.road.plates", { reference: plates.reference }),
    damageBorneBy !== null && t("appointment.road.damage", { who: t(`damage.${damageBorneBy}`) }),
  ];
  return lines.map((line) => line !== false && <div key={line}>{line}</div>);
};

const usePermissions = ({ permissions }: AppointmentSeen): readonly string[] => {
  const t = useText();
  const item = useItemWords();
  return permissions.map((one) =>
    t(one.allowed ? "appointment.allowed.yes" : "appointment.allowed.no", {
      item: item({ item: one.item, position: "" }),
    }),
  );
};

type Row = readonly [ReactNode, ReactNode];

/** When and where it is, and who takes part. */
const useWhoAndWhere = (appointment: AppointmentSeen): readonly Row[] => {
  const t = useText();
  const buyer = useBuyer({ appointment });
  const inspectorLine = useInspectorLine();
  const { start, end, zone, site, dealer, inspector } = appointment;
  return [
    [t("offer.when"), <When key="when" start={start} end={end} zone={zone} />],
    [t("appointment.site"), `${site.name}, ${site.address}`],
    [t("appointment.car"), <Cars key="cars" appointment={appointment} />],
    [t("appointment.dealer"), dealer.name],
    [t("appointment.inspector"), inspectorLine(inspector)],
    [t("appointment.buyer"), buyer],
  ];
};

/** What is agreed besides, where there is something. */
const useAgreed = (appointment: AppointmentSeen): readonly Row[] => {
  const t = useText();
  const lifts = useLiftWords(appointment);
  const allowed = usePermissions(appointment);
  const kept = useKept({ appointment });
  const stated = appointment.visits.some(({ statement }) => statement !== null);
  const rows: readonly (Row | false)[] = [
    lifts.length > 0 && [t("appointment.bay"), lifts.join("; ")],
    stated && [t("appointment.statement"), <Orders key="orders" appointment={appointment} />],
    [t("appointment.kept"), kept],
    allowed.length > 0 && [t("appointment.allowed"), allowed.join("; ")],
    appointment.road !== null && [t("appointment.road"), <Road key="road" appointment={appointment} />],
  ];
  return rows.filter((row) => row !== false);
};

/** Everything that is fixed about a visit. */
export const AppointmentFacts = ({ appointment }: Props) => {
  const t = useText();
  const rows = [...useWhoAndWhere(appointment), ...useAgreed(appointment)];
  return (
    <Panel title={t("appointment.facts")}>
      <Facts rows={rows} />
    </Panel>
  );
};
