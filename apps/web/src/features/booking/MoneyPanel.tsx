import type { AppointmentSeen } from "@evenhand/shared/http/booking";
import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import { moneyText } from "../../ui/money";
import { Panel } from "../../ui/Page";
import { useTimes } from "../../entities/time/use-times";
import styles from "./Booking.module.css";
import { CostTable } from "./CostTable";

const parts = [
  "buyerPays",
  "buyerRefunded",
  "dealerOwes",
  "inspectorOwes",
  "inspectorGets",
  "siteGets",
] as const;

type Props = Pick<AppointmentSeen, "payments" | "zone">;

const Settlement = ({ settlement }: { readonly settlement: NonNullable<AppointmentSeen["settlement"]> }) => {
  const t = useText();
  const intl = useIntl();
  const shown = parts.filter((part) => settlement[part] !== 0 || part === "buyerPays");
  return (
    <div className={styles.part}>
      <h3>{t("settlement.title")}</h3>
      <table className={styles.table}>
        <tbody>
          {shown.map((part) => (
            <tr key={part}>
              <th scope="row">{t(`settlement.${part}`)}</th>
              <td className="figures">
                {moneyText(intl, { minor: settlement[part], currency: settlement.currency })}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
};

const Payments = ({ payments, zone }: Props) => {
  const t = useText();
  const intl = useIntl();
  const times = useTimes();
  if (payments.length === 0) return <p>{t("appointment.payments.none")}</p>;
  return (
    <table className={styles.table}>
      <tbody>
        {payments.map(({ id, kind, party, amount, at }) => (
          <tr key={id}>
            <th scope="row">
              {t("payment.line", { kind: t(`payment.${kind}`), party: t(`payment.party.${party}`) })}
              <div className={styles.hint}>{times.full(at, zone)}</div>
            </th>
            <td className="figures">{moneyText(intl, amount)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
};

/** What it costs, what has moved, and after an ending who pays what. */
export const MoneyPanel = ({ appointment }: { readonly appointment: AppointmentSeen }) => {
  const t = useText();
  const { cost, payments, settlement, zone, as } = appointment;
  return (
    <Panel title={t("appointment.cost")}>
      {cost !== null && <CostTable cost={cost} />}
      {settlement !== null && <Settlement settlement={settlement} />}
      <div className={styles.part}>
        <h3>{t("appointment.payments")}</h3>
        <Payments payments={payments} zone={zone} />
        {as === "buyer" && <p className={styles.hint}>{t("appointment.payments.provider")}</p>}
      </div>
    </Panel>
  );
};
