import type { BookingTerms } from "@evenhand/shared/http/booking";
import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import { useDuration } from "../../entities/time/use-duration";
import styles from "./Booking.module.css";

const DAY = 24 * 60;

type Bands = BookingTerms["buyerWithdraws"];
type Who = "buyer" | "dealer";

const useShare = (): ((points: number) => string) => {
  const intl = useIntl();
  return (points) => intl.formatNumber(points / 10_000, { style: "percent", maximumFractionDigits: 2 });
};

/** The notice of a band in words, from it to the longer one before it. */
const useSpan = (): ((bands: Bands, index: number) => string) => {
  const t = useText();
  const duration = useDuration();
  const notice = (minutes: number): string =>
    minutes >= 2 * DAY && minutes % DAY === 0 ? t("terms.days", { count: minutes / DAY }) : duration(minutes);
  return (bands, index) => {
    const least = bands[index]?.atLeast ?? 0;
    const upper = bands[index - 1]?.atLeast;
    if (upper === undefined)
      return least === 0 ? t("terms.any") : t("terms.at-least", { time: notice(least) });
    if (least === 0) return t("terms.short", { upper: notice(upper) });
    return t("terms.less", { time: notice(least), upper: notice(upper) });
  };
};

const BandRow = ({
  who,
  span,
  share,
}: {
  readonly who: Who;
  readonly span: string;
  readonly share: number;
}) => {
  const t = useText();
  const percent = useShare();
  return (
    <tr>
      <th scope="row">{span}</th>
      <td>{share === 0 ? t(`terms.${who}.free`) : t(`terms.${who}.share`, { share: percent(share) })}</td>
    </tr>
  );
};

const ByNotice = ({ bands, who }: { readonly bands: Bands; readonly who: Who }) => {
  const t = useText();
  const span = useSpan();
  return (
    <div>
      <dt>{t(`terms.${who}`)}</dt>
      <dd>
        <table className={styles.bands}>
          <thead className="only-read">
            <tr>
              <th scope="col">{t("terms.notice")}</th>
              <th scope="col">{t("terms.what")}</th>
            </tr>
          </thead>
          <tbody>
            {bands.map(({ atLeast, share }, index) => (
              <BandRow key={atLeast} who={who} span={span(bands, index)} share={share} />
            ))}
          </tbody>
        </table>
      </dd>
    </div>
  );
};

/** Who pays what if the visit does not take place, by notice and by cause: shown before booking and kept with it. */
export const TermsTable = ({ terms }: { readonly terms: BookingTerms }) => {
  const t = useText();
  const share = useShare();
  const others = [
    ["inspector", t("terms.inspector.what")],
    ["missed", t("terms.missed.what", { share: share(terms.missedSite) })],
    ["weather", t("terms.weather.what", { share: share(terms.weatherTravel) })],
    ["safety", t("terms.safety.what", { share: share(terms.safetyLeast) })],
  ] as const;
  return (
    <div className={styles.part}>
      <dl className={styles.terms}>
        <ByNotice bands={terms.buyerWithdraws} who="buyer" />
        <ByNotice bands={terms.dealerFails} who="dealer" />
        {others.map(([who, what]) => (
          <div key={who}>
            <dt>{t(`terms.${who}`)}</dt>
            <dd>{what}</dd>
          </div>
        ))}
      </dl>
      <p className={styles.hint}>{t("terms.version", { version: terms.version })}</p>
    </div>
  );
};
