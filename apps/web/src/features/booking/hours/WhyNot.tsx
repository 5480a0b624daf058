import { Button } from "@mantine/core";
import type { DayExplained } from "@evenhand/shared/http/booking";
import { useQuery } from "@tanstack/react-query";
import { useText } from "../../../strings/text";
import { Loading } from "../../../ui/Loading";
import { Empty, Panel } from "../../../ui/Page";
import { ProblemNotice } from "../../../ui/ProblemNotice";
import { useTimes } from "../../../entities/time/use-times";
import { dayQuery, type OfferWish } from "../../../entities/appointment/queries";
import { useReason } from "./use-reason";
import { ReasonList } from "./ReasonList";
import { stretchesOf, type Stretch } from "./stretches";
import styles from "../Booking.module.css";

interface StretchProps {
  readonly stretch: Stretch;
  readonly day: DayExplained;
}

/** Who cannot come, each with what is in the way; folded away where it would be long or the site itself is closed. */
const Inspectors = ({ stretch: { first }, day }: StretchProps) => {
  const t = useText();
  const say = useReason(day.zone, undefined);
  const who = new Map(day.inspectors.map((one) => [one.id, one]));
  const refused = first.inspectors.filter(({ reasons }) => reasons.length > 0);
  if (refused.length === 0) return null;
  return (
    <details open={first.site.length === 0 && refused.length <= 3}>
      <summary>{t("why.more")}</summary>
      {refused.map(({ inspector, reasons }) => (
        <div key={inspector}>
          <h4>
            {t("why.one", {
              name: who.get(inspector)?.name ?? "",
              firm: who.get(inspector)?.firm.name ?? "",
            })}
          </h4>
          <ReasonList reasons={reasons} say={say} />
        </div>
      ))}
    </details>
  );
};

const StretchRow = ({ stretch, day }: StretchProps) => {
  const t = useText();
  const times = useTimes();
  const say = useReason(day.zone, undefined);
  const { first, last } = stretch;
  const from = times.time(first.start, day.zone);
  return (
    <li>
      <h3 className="figures">
        {first === last ? from : t("why.starts", { from, to: times.time(last.start, day.zone) })}
      </h3>
      <div>
        {first.offeredBy.length > 0 && <p>{t("why.offered", { count: first.offeredBy.length })}</p>}
        {first.site.length > 0 && <ReasonList reasons={first.site} say={say} />}
        <Inspectors stretch={stretch} day={day} />
      </div>
    </li>
  );
};

interface Props {
  readonly vehicle: string;
  readonly date: string;
  readonly wish: Omit<OfferWish, "from" | "until">;
  readonly onClose: () => void;
}

/** Every start of one day that is not offered, with what is in the way and what would work. */
export const WhyNot = ({ vehicle, date, wish, onClose }: Props) => {
  const t = useText();
  const times = useTimes();
  const day = useQuery(dayQuery(vehicle, date, wish));
  return (
    <Panel
      id="why"
      title={t("why.title", { day: times.date(date) })}
      hint={t("why.hint")}
      actions={
        <Button variant="default" onClick={onClose}>
          {t("why.close")}
        </Button>
      }
    >
      {day.error !== null && <ProblemNotice error={day.error} />}
      {day.isPending && <Loading />}
      {day.data?.hours.length === 0 && <Empty title={t("why.none")} />}
      {day.data !== undefined && day.data.hours.length > 0 && (
        <ol className={styles.why}>
          {stretchesOf(day.data.hours).map((stretch) => (
            <StretchRow key={stretch.first.start} stretch={stretch} day={day.data} />
          ))}
        </ol>
      )}
    </Panel>
  );
};
