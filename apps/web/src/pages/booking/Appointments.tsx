import type { AppointmentRow } from "@evenhand/shared/http/booking";
import { useInfiniteQuery, useQuery } from "@tanstack/react-query";
import { Link } from "@tanstack/react-router";
import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import { LinkButton } from "../../ui/LinkButton";
import { Line, List } from "../../ui/List";
import { Empty, Facts, Page, Panel, Tag } from "../../ui/Page";
import { isKind, useAccount } from "../../entities/account/queries";
import { FeedsPanel } from "../../features/calendars/Feeds";
import { useTimes } from "../../entities/time/use-times";
import { useCarName } from "../../entities/car/CarName";
import styles from "../../features/booking/Booking.module.css";
import { appointmentCountsQuery, appointmentsQuery } from "../../entities/appointment/queries";

export const AppointmentLine = ({ appointment }: { readonly appointment: AppointmentRow }) => {
  const t = useText();
  const intl = useIntl();
  const name = useCarName();
  const times = useTimes();
  const { id, cars, start, zone, site, inspector, state } = appointment;
  return (
    <Line
      main={
        <Link to="/appointments/$appointment" params={{ appointment: id }}>
          {intl.formatList(cars.map(name), { type: "unit" })}
        </Link>
      }
      sub={t("appointments.line", {
        when: times.full(start, zone),
        site: site.name,
        inspector: inspector.name,
      })}
      end={
        <Tag strong={state === "confirmed" || state === "under-way"}>{t(`appointment.state.${state}`)}</Tag>
      }
    />
  );
};

export const NoAppointments = () => {
  const t = useText();
  const account = useAccount();
  if (isKind(account, "buyer")) {
    return (
      <Empty title={t("appointments.none.buyer")}>
        <p>{t("appointments.none.buyer.hint")}</p>
        <LinkButton to="/cars">{t("appointments.cars")}</LinkButton>
      </Empty>
    );
  }
  if (isKind(account, "inspector")) {
    return (
      <Empty title={t("appointments.none.inspector")}>
        <p>{t("appointments.none.inspector.hint")}</p>
        <LinkButton to="/calendars">{t("appointments.hours")}</LinkButton>
      </Empty>
    );
  }
  if (isKind(account, "dealer")) {
    return (
      <Empty title={t("appointments.none.dealer")}>
        <p>{t("appointments.none.dealer.hint")}</p>
        <LinkButton to="/sites">{t("appointments.sites")}</LinkButton>
      </Empty>
    );
  }
  return <Empty title={t("appointments.none.operator")} />;
};

const Counts = () => {
  const t = useText();
  const intl = useIntl();
  const counts = useQuery(appointmentCountsQuery).data?.counts ?? [];
  return (
    <Panel title={t("appointments.counts")}>
      <Facts
        rows={counts.map(({ state, count }) => [t(`appointment.state.${state}`), intl.formatNumber(count)])}
      />
    </Panel>
  );
};

/** An inspector goes from the visits to the day. */
const ToDay = () => {
  const t = useText();
  return (
    <LinkButton variant="default" to="/day">
      {t("nav.day")}
    </LinkButton>
  );
};

/** Every visit the person is a party to. */
export const Appointments = () => {
  const t = useText();
  const account = useAccount();
  const appointments = useInfiniteQuery(appointmentsQuery());
  return (
    <Page
      title={t("appointments.title")}
      under={t("appointments.under")}
      narrow
      actions={isKind(account, "inspector") ? <ToDay /> : undefined}
    >
      <div className={styles.stack}>
        {isKind(account, "operator") && <Counts />}
        <Panel>
          <List
            query={appointments}
            keyOf={({ id }) => id}
            renderRow={(appointment) => <AppointmentLine appointment={appointment} />}
            empty={<NoAppointments />}
          />
        </Panel>
        {!isKind(account, "operator") && <FeedsPanel />}
      </div>
    </Page>
  );
};
