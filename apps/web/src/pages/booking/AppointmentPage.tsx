import type { AppointmentSeen } from "@evenhand/shared/http/booking";
import { useQuery } from "@tanstack/react-query";
import { getRouteApi, Link } from "@tanstack/react-router";
import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import { LinkButton } from "../../ui/LinkButton";
import { Loading } from "../../ui/Loading";
import { Page, Panel, Tag } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { useTimes } from "../../entities/time/use-times";
import { useCarName } from "../../entities/car/CarName";
import { OverPart } from "../../entities/case/OverPart";
import { AppointmentFacts } from "../../features/booking/AppointmentFacts";
import styles from "../../features/booking/Booking.module.css";
import { BriefsPanel } from "../../features/booking/BriefsPanel";
import { History } from "../../features/booking/History";
import { Independence } from "../../features/booking/Independence";
import { bringsCaution, Moves } from "../../features/booking/moves/Moves";
import { MoneyPanel } from "../../features/booking/MoneyPanel";
import { PlanView } from "../../features/booking/PlanView";
import { VisitCaution } from "../../features/booking/VisitCaution";
import { SheetStages } from "../../features/booking/SheetStages";
import { appointmentQuery } from "../../entities/appointment/queries";
import { TermsTable } from "../../features/booking/TermsTable";
import { TimeLeft } from "../../features/booking/TimeLeft";

const route = getRouteApi("/signed-in/appointments/$appointment");
const over = ["declined", "cancelled", "missed", "expired"];

/** How it stands, in a sentence for the one who reads it. */
const Standing = ({ appointment }: { readonly appointment: AppointmentSeen }) => {
  const t = useText();
  const times = useTimes();
  const { state, as, deadline, zone, inspector, dealer, cars } = appointment;
  const [car] = cars;
  return (
    <div className={styles.part} aria-live="polite">
      <p>
        <Tag strong>{t(`appointment.state.${state}`)}</Tag>{" "}
        {t(`appointment.now.${state}`, {
          as,
          deadline: deadline === null ? "" : times.full(deadline, zone),
          inspector: inspector.name,
          dealer: dealer.name,
        })}{" "}
        {state === "held" && deadline !== null && <TimeLeft until={deadline} />}
      </p>
      {as === "buyer" && over.includes(state) && car !== undefined && (
        <div>
          <LinkButton to="/cars/$vehicle/hours" params={{ vehicle: car.id }}>
            {t("appointment.again")}
          </LinkButton>
        </div>
      )}
    </div>
  );
};

const IndependencePanel = ({ appointment }: { readonly appointment: AppointmentSeen }) => {
  const t = useText();
  const times = useTimes();
  const { independence, dealer, zone } = appointment;
  if (independence === null) return null;
  return (
    <Panel title={t("appointment.independence")}>
      <p>
        {independence.declaredAt === null
          ? t("appointment.independence.not-yet")
          : t("appointment.independence.declared", { when: times.full(independence.declaredAt, zone) })}
      </p>
      <Independence
        dealer={dealer.name}
        share={independence.shareOfWork}
        interests={independence.interests}
      />
    </Panel>
  );
};

const PlanPanel = ({ appointment }: { readonly appointment: AppointmentSeen }) => {
  const t = useText();
  const name = useCarName();
  const { plan, start, zone, visits, cars } = appointment;
  const nameOf = (car: string): string => {
    const found = cars.find((one) => one.id === car);
    return found ? name(found) : "";
  };
  return (
    <Panel title={t("appointment.plan")} hint={t("plan.hint")}>
      {!bringsCaution({ appointment }) && <VisitCaution plan={plan} />}
      <PlanView plan={plan} start={start} zone={zone} nameOf={nameOf} />
      {visits.map((visit) => (
        <SheetStages
          key={visit.vehicle}
          visit={visit}
          car={visits.length > 1 ? nameOf(visit.vehicle) : undefined}
          isInspector={appointment.as === "inspector"}
        />
      ))}
    </Panel>
  );
};

const Visit = ({ appointment }: { readonly appointment: AppointmentSeen }) => {
  const t = useText();
  return (
    <div className={styles.columns}>
      <div className={styles.stack}>
        <Moves appointment={appointment} />
        <PlanPanel appointment={appointment} />
        <BriefsPanel appointment={appointment} />
        <History appointment={appointment} />
      </div>
      <div className={styles.stack}>
        <AppointmentFacts appointment={appointment} />
        <IndependencePanel appointment={appointment} />
        <MoneyPanel appointment={appointment} />
        <Panel title={t("appointment.terms")}>
          <TermsTable terms={appointment.terms} />
        </Panel>
      </div>
    </div>
  );
};

/** One visit, as buyer, inspector, dealer or operator sees it, with what each may do next. */
export const AppointmentPage = () => {
  const t = useText();
  const intl = useIntl();
  const name = useCarName();
  const { appointment: id } = route.useParams();
  const { data: appointment, error } = useQuery({ ...appointmentQuery(id), refetchInterval: 30_000 });
  if (error) {
    return (
      <Page title={t("appointments.title")} narrow>
        <ProblemNotice error={error} />
      </Page>
    );
  }
  if (!appointment) return <Loading />;
  return (
    <Page
      title={t("appointment.title", {
        cars: intl.formatList(appointment.cars.map(name), { type: "unit" }),
      })}
      over={
        <OverPart parts={[appointment.id]}>
          <Link to="/appointments">{t("nav.appointments")}</Link>
        </OverPart>
      }
      under={<Standing appointment={appointment} />}
    >
      <Visit appointment={appointment} />
    </Page>
  );
};
