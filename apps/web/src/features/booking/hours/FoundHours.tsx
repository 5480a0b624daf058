import { Button } from "@mantine/core";
import { useText } from "../../../strings/text";
import { Empty } from "../../../ui/Page";
import { useTimes } from "../../../entities/time/use-times";
import styles from "../Booking.module.css";
import { wishOf } from "./hours-choice";
import { OfferList } from "./OfferList";
import { OfferWeek } from "./OfferWeek";
import type { Found, Hours } from "./use-hours";

interface Props {
  readonly hours: Hours;
  readonly found: Found;
}

const NoHours = ({ hours: { day, choose } }: Pick<Props, "hours">) => {
  const t = useText();
  const times = useTimes();
  return (
    <Empty title={t("hours.none")}>
      <p>{t("hours.none.hint")}</p>
      <Button variant="default" onClick={() => choose({ choose: "why", day })}>
        {t("hours.none.why", { day: times.date(day) })}
      </Button>
    </Empty>
  );
};

/** On whose clock the hours stand, and in which order. */
const Legend = ({
  found: { site, zone, offers },
  isWeek,
}: Pick<Props, "found"> & { readonly isWeek: boolean }) => {
  const t = useText();
  const times = useTimes();
  return (
    <p className={styles.hint}>
      {t("hours.shown", {
        site: site.name,
        name: times.zoneName(offers[0]?.start ?? "", zone),
        zone: zone.replaceAll("_", " "),
      })}{" "}
      {t(isWeek ? "hours.week.count" : "hours.list.order")}
    </p>
  );
};

/** What is free, as a list or as a week; where nothing is, what to ask next. */
export const FoundHours = ({ hours, found }: Props) => {
  const { search, day, choose, open } = hours;
  if (found.offers.length === 0) return <NoHours hours={hours} />;
  const isWeek = search.view === "week";
  const shown = { found, open: search.offer, onOpen: open };
  return (
    <>
      <Legend found={found} isWeek={isWeek} />
      {isWeek ? (
        <OfferWeek
          {...shown}
          monday={wishOf(search, day).from}
          onWhy={(date) => choose({ choose: "why", day: date })}
        />
      ) : (
        <OfferList {...shown} />
      )}
    </>
  );
};

interface MoreProps {
  readonly query: Hours["query"];
  readonly isWeek: boolean;
}

/** The service has more than was read. */
export const MoreHours = ({ query, isWeek }: MoreProps) => {
  const t = useText();
  return (
    <div className={styles.buttons}>
      {isWeek && <p className={styles.hint}>{t("hours.week.more")}</p>}
      <Button variant="default" loading={query.isFetchingNextPage} onClick={() => void query.fetchNextPage()}>
        {t("list.more")}
      </Button>
    </div>
  );
};
