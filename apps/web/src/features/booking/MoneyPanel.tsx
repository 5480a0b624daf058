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

/** What it costs, what has moved, and after an ending who pays what. */
export const MoneyPanel = ({ appointment }: { readonly appointment: AppointmentSeen }) => {
  const t = useText();
  const intl = useIntl();
  const times = useTimes();
  const { cost, payments, settlement, zone, as } = appointment;
  return (
    <Panel title={t("appointment.cost")}>
      {cost !== null && <CostTable cost={cost} />}
      {settlement !== null && (
        <div className={styles.part}>
          <h3>{t("settlement.title")}</h3>
          <table className={styles.table}>
            <tbody>
              {parts
                .filter((part) => settlement[part] !== 0 || part === "buyerPays")
                .map((part) => (
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
      )}
      <div className={styles.part}>
        <h3>{t("appointment.payments")}</h3>
        {payments.length === 0 ? (
          <p>{t("appointment.payments.none")}</p>
        ) : (
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
        )}
        {as === "buyer" && <p className={styles.hint}>{t("appointment.payments.provider")}</p>}
      </div>
    </Panel>
  );
};
