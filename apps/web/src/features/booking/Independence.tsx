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

const InterestLine = ({ interest }: { readonly interest: InterestSeen }) => {
  const t = useText();
  const intl = useIntl();
  const day = (instant: string): string => intl.formatDate(instant, { dateStyle: "medium" });
  const { kind, holder, since, endedAt, note } = interest;
  return (
    <li>
      {t(endedAt === null ? "beholden.line" : "beholden.line.ended", {
        kind: t(`interest.${kind}`),
        holder: t(`beholden.holder.${holder}`),
        since: day(since),
        ended: endedAt === null ? "" : day(endedAt),
      })}
      {note !== "" && <span className={styles.hint}> {note}</span>}
    </li>
  );
};

const Interests = ({ dealer, interests }: Omit<Props, "share">) => {
  const t = useText();
  if (interests.length === 0) return <p>{t("beholden.none", { dealer })}</p>;
  return (
    <div>
      <p>{t("beholden.past", { dealer })}</p>
      <ul>
        {interests.map((one) => (
          <InterestLine key={one.id} interest={one} />
        ))}
      </ul>
    </div>
  );
};

/** The share of a year's work at this dealer and what is declared: always shown, never judged. */
export const Independence = ({ dealer, share, interests }: Props) => {
  const t = useText();
  const intl = useIntl();
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
      <Interests dealer={dealer} interests={interests} />
    </div>
  );
};
