import type { OfferBody } from "@evenhand/shared/booking";
import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import { moneyText } from "../../ui/money";
import styles from "./Booking.module.css";

type Cost = OfferBody["cost"];

export const CostTable = ({ cost }: { readonly cost: Cost }) => {
  const t = useText();
  const intl = useIntl();
  return (
    <>
      <table className={styles.money}>
        <tbody>
          {(["visit", "travel", "site", "total"] as const).map((part) => (
            <tr key={part}>
              <th scope="row">{t(`cost.${part}`)}</th>
              <td>{moneyText(intl, cost[part])}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className={styles.hint}>{t("cost.who")}</p>
    </>
  );
};
