import type { BookingTerms } from "@evenhand/shared/http/booking";
import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import { useDuration } from "../calendars/use-duration";
import styles from "./Booking.module.css";

const DAY = 24 * 60;

type Bands = BookingTerms["buyerWithdraws"];

const useNotice = (): ((minutes: number) => string) => {
  const t = useText();
  const duration = useDuration();
  return (minutes) =>
    minutes >= 2 * DAY && minutes % DAY === 0 ? t("terms.days", { count: minutes / DAY }) : duration(minutes);
};

const Rows = ({ bands, who }: { readonly bands: Bands; readonly who: "buyer" | "dealer" }) => {
  const t = useText();
  const intl = useIntl();
  const notice = useNotice();
  const span = (index: number): string => {
    const least = bands[index]?.atLeast ?? 0;
    const upper = bands[index - 1]?.atLeast;
    if (upper === undefined)
      return least === 0 ? t("terms.any") : t("terms.at-least", { time: notice(least) });
    if (least === 0) return t("terms.short", { upper: notice(upper) });
    return t("terms.less", { time: notice(least), upper: notice(upper) });
  };
  return bands.map(({ atLeast, share }, index) => (
    <tr key={atLeast}>
      {index === 0 && (
        <th scope="rowgroup" rowSpan={bands.length}>
          {t(`terms.${who}`)}
        </th>
      )}
      <td>{span(index)}</td>
      <td>
        {share === 0
          ? t(`terms.${who}.free`)
          : t(`terms.${who}.share`, {
              share: intl.formatNumber(share / 10_000, { style: "percent", maximumFractionDigits: 2 }),
            })}
      </td>
    </tr>
  ));
};

/** Who pays what if the visit does not take place, by notice and by cause: shown before booking and kept with it. */
export const TermsTable = ({ terms }: { readonly terms: BookingTerms }) => {
  const t = useText();
  const intl = useIntl();
  const share = (points: number): string =>
    intl.formatNumber(points / 10_000, { style: "percent", maximumFractionDigits: 2 });
  const others = [
    ["inspector", t("terms.inspector.what")],
    ["missed", t("terms.missed.what", { share: share(terms.missedSite) })],
    ["weather", t("terms.weather.what", { share: share(terms.weatherTravel) })],
    ["safety", t("terms.safety.what", { share: share(terms.safetyLeast) })],
  ] as const;
  return (
    <div className={styles.part}>
      <table className={styles.table}>
        <thead>
          <tr>
            <th scope="col">{t("terms.who")}</th>
            <th scope="col">{t("terms.notice")}</th>
            <th scope="col">{t("terms.what")}</th>
          </tr>
        </thead>
        <tbody>
          <Rows bands={terms.buyerWithdraws} who="buyer" />
        </tbody>
        <tbody>
          <Rows bands={terms.dealerFails} who="dealer" />
        </tbody>
        <tbody>
          {others.map(([who, what]) => (
            <tr key={who}>
              <th scope="row">{t(`terms.${who}`)}</th>
              <td>{t("terms.any")}</td>
              <td>{what}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className={styles.hint}>{t("terms.version", { version: terms.version })}</p>
    </div>
  );
};
