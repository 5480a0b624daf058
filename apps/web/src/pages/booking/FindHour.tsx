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

const BriefLine = ({ vehicle }: { readonly vehicle: string }) => {
  const t = useText();
  const intl = useIntl();
  const duration = useDuration();
  const { data: brief, error } = useQuery(briefQuery(vehicle));
  if (error) return <ProblemNotice error={error} />;
  if (!brief) return <Loading />;
  const needs = [...new Set(brief.items.flatMap((one) => one.needs))].map((need) => t(`need.${need}`));
  return (
    <Panel
      title={t("hours.brief")}
      actions={
        <LinkButton variant="default" to="/cars/$vehicle/brief" params={{ vehicle }}>
          {t("hours.brief.change")}
        </LinkButton>
      }
    >
      {brief.plan === null ? (
        <Notice kind="refusal" title={t("brief.problem.title")}>
          <p>{t("brief.problem.other")}</p>
        </Notice>
      ) : (
        <p>
          {t("hours.brief.line", {
            count: brief.items.length,
            time: duration(brief.plan.minutes),
            needs: intl.formatList(needs, { type: "conjunction" }),
          })}
        </p>
      )}
    </Panel>
  );
};

/** A buyer finds an hour for a car, or another one for a visit that is booked. */
export const FindHour = () => {
  const t = useText();
  const name = useCarName();
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
      over={
        moving === undefined ? (
          <Link to="/cars/$vehicle" params={{ vehicle }}>
            {name(car.vehicle)}
          </Link>
        ) : (
          <Link to="/appointments/$appointment" params={{ appointment: moving }}>
            {t("appointment.back")}
          </Link>
        )
      }
    >
      <div className={styles.stack}>
        {moving === undefined && <BriefLine vehicle={vehicle} />}
        <HoursPanel car={car} />
      </div>
    </Page>
  );
};
