import type { ShareOfWork } from "@evenhand/shared/http/booking";
import type { InterestSeen } from "@evenhand/shared/http/calendars";
import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import styles from "./Booking.module.css";

interface Props {
  readonly dealer: string;
  readonly share: ShareOfWork;
  readonly interests: readonly InterestSeen[];
}

/** The share of a year's work at this dealer and what is declared: always shown, never judged. */
export const Independence = ({ dealer, share, interests }: Props) => {
  const t = useText();
  const intl = useIntl();
  const day = (instant: string): string => intl.formatDate(instant, { dateStyle: "medium" });
  return (
    <div className={styles.part}>
      <p>
        {share.share === null
          ? t("beholden.share.none", { dealer })
          : t("beholden.share", {
              share: intl.formatNumber(share.share, { style: "percent", maximumFractionDigits: 0 }),
              dealer,
              atDealer: share.atDealer,
              all: share.all,
            })}
      </p>
      {interests.length === 0 ? (
        <p>{t("beholden.none", { dealer })}</p>
      ) : (
        <div>
          <p>{t("beholden.past", { dealer })}</p>
          <ul>
            {interests.map((one) => (
              <li key={one.id}>
                {t(one.endedAt === null ? "beholden.line" : "beholden.line.ended", {
                  kind: t(`interest.${one.kind}`),
                  holder: t(`beholden.holder.${one.holder}`),
                  since: day(one.since),
                  ended: one.endedAt === null ? "" : day(one.endedAt),
                })}
                {one.note !== "" && <span className={styles.hint}> {one.note}</span>}
              </li>
            ))}
          </ul>
        </div>
      )}
    </div>
  );
};
