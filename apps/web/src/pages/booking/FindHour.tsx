import type { BriefSeen } from "@evenhand/shared/http/booking";
import type { VehicleDetail } from "@evenhand/shared/http/vehicles";
import { useQuery } from "@tanstack/react-query";
import { getRouteApi, Link } from "@tanstack/react-router";
import { useText } from "../../strings/text";
import { LinkButton } from "../../ui/LinkButton";
import { Loading } from "../../ui/Loading";
import { Notice } from "../../ui/Notice";
import { Page, Panel } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { useIntl } from "react-intl";
import { useDuration } from "../../entities/time/use-duration";
import { useCarName } from "../../entities/car/CarName";
import { carQuery } from "../../entities/car/queries";
import styles from "../../features/booking/Booking.module.css";
import { HoursPanel } from "../../features/booking/hours/HoursPanel";
import { briefQuery } from "../../entities/appointment/queries";

const route = getRouteApi("/signed-in/cars/$vehicle/hours");

/** How much is looked at, or that it cannot be planned. */
const BriefSaid = ({ brief }: { readonly brief: BriefSeen }) => {
  const t = useText();
  const intl = useIntl();
  const duration = useDuration();
  if (brief.plan === null) {
    return (
      <Notice kind="refusal" title={t("brief.problem.title")}>
        <p>{t("brief.problem.other")}</p>
      </Notice>
    );
  }
  const needs = [...new Set(brief.items.flatMap((one) => one.needs))].map((need) => t(`need.${need}`));
  return (
    <p>
      {t("hours.brief.line", {
        count: brief.items.length,
        time: duration(brief.plan.minutes),
        needs: intl.formatList(needs, { type: "conjunction" }),
      })}
    </p>
  );
};

const BriefLine = ({ vehicle }: { readonly vehicle: string }) => {
  const t = useText();
  const { data: brief, error } = useQuery(briefQuery(vehicle));
  if (error) return <ProblemNotice error={error} />;
  if (!brief) return <Loading />;
  const change = (
    <LinkButton variant="default" to="/cars/$vehicle/brief" params={{ vehicle }}>
      {t("hours.brief.change")}
    </LinkButton>
  );
  return (
    <Panel title={t("hours.brief")} actions={change}>
      <BriefSaid brief={brief} />
    </Panel>
  );
};

interface BackProps {
  readonly car: VehicleDetail;
  readonly moving: string | undefined;
}

/** To the car, or to the visit that is moved. */
const Back = ({ car, moving }: BackProps) => {
  const t = useText();
  const name = useCarName();
  if (moving === undefined) {
    return (
      <Link to="/cars/$vehicle" params={{ vehicle: car.id }}>
        {name(car.vehicle)}
      </Link>
    );
  }
  return (
    <Link to="/appointments/$appointment" params={{ appointment: moving }}>
      {t("appointment.back")}
    </Link>
  );
};

/** A buyer finds an hour for a car, or another one for a visit that is booked. */
export const FindHour = () => {
  const t = useText();
  const { vehicle } = route.useParams();
  const { moving } = route.useSearch();
  const { data: car, error } = useQuery(carQuery(vehicle));
  if (error) {
    return (
      <Page title={t("hours.title")} narrow>
        <ProblemNotice error={error} />
      </Page>
    );
  }
  if (!car) return <Loading />;
  return (
    <Page
      title={t(moving === undefined ? "hours.title" : "hours.title.moving")}
      under={t(moving === undefined ? "hours.under" : "hours.under.moving")}
      over={<Back car={car} moving={moving} />}
    >
      <div className={styles.stack}>
        {moving === undefined && <BriefLine vehicle={vehicle} />}
        <HoursPanel car={car} />
      </div>
    </Page>
  );
};
