import { problemCodeOf } from "@evenhand/shared/http/problem-codes";
import type { VehicleDetail } from "@evenhand/shared/http/vehicles";
import { Refusal } from "../../../service/refusal";
import { useText } from "../../../strings/text";
import { Loading } from "../../../ui/Loading";
import { Notice } from "../../../ui/Notice";
import { Panel } from "../../../ui/Page";
import { ProblemNotice } from "../../../ui/ProblemNotice";
import styles from "../Booking.module.css";
import { ChosenHour } from "./ChosenHour";
import { FoundHours, MoreHours } from "./FoundHours";
import { narrowedBy } from "./hours-choice";
import { HoursControls } from "./HoursControls";
import { useHours } from "./use-hours";
import { WhyNot } from "./WhyNot";

const OffersRefused = ({ error }: { readonly error: unknown }) => {
  const t = useText();
  const missing = error instanceof Refusal && problemCodeOf(error.problem.type) === "site-missing";
  if (!missing) return <ProblemNotice error={error} />;
  return (
    <Notice kind="refusal" title={t("hours.site.missing")}>
      <p>{t("hours.site.missing.what")}</p>
    </Notice>
  );
};

/** Hours as a list or as a week, one of them open beside it with cost, independence and terms. */
export const HoursPanel = ({ car }: { readonly car: VehicleDetail }) => {
  const hours = useHours(car.id);
  const { search, choose, query, found } = hours;
  return (
    <div className={styles.columns}>
      <div className={styles.stack}>
        <Panel>
          <HoursControls car={car} search={search} day={hours.day} choose={choose} />
          {query.error !== null && <OffersRefused error={query.error} />}
          {query.isPending && <Loading />}
          {found !== undefined && <FoundHours hours={hours} found={found} />}
          {query.hasNextPage && <MoreHours query={query} isWeek={search.view === "week"} />}
        </Panel>
        {search.why !== undefined && (
          <WhyNot
            vehicle={car.id}
            date={search.why}
            wish={narrowedBy(search)}
            onClose={() => choose({ choose: "no-why" })}
          />
        )}
      </div>
      <div className={styles.stack}>
        <ChosenHour hours={hours} />
      </div>
    </div>
  );
};
