import type { LimitFigures } from "@evenhand/shared/comparison";
import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import { quantity } from "../../entities/sheet/answer-text";
import styles from "./LimitCalls.module.css";

type Call = NonNullable<LimitFigures["a"]>;

const CallCell = ({ call }: { readonly call: Call | null }) => {
  const t = useText();
  const intl = useIntl();
  if (!call) return <td className={styles.none}>{t("limit.none")}</td>;
  const share = (value: number): string =>
    intl.formatNumber(value, { style: "percent", maximumFractionDigits: 0 });
  const { probability: p } = call;
  // Never a hundred and never nothing: no reading makes sure.
  const probability =
    p > 0.99
      ? t("limit.over", { share: share(0.99) })
      : p < 0.01
        ? t("limit.under", { share: share(0.01) })
        : share(p);
  return (
    <td>
      <strong>{t(`limit.plain.${call.plain}`)}</strong>
      <span className={styles.call}>{t(`limit.call.${call.call}`, { probability })}</span>
    </td>
  );
};

/** The limits, judged beside the outcome: plain by the rule, and how likely the true value meets it. */
export const LimitCalls = ({ limits }: { readonly limits: readonly LimitFigures[] }) => {
  const t = useText();
  return (
    <div className={styles.holder}>
      <table className={styles.limits}>
        <thead>
          <tr>
            <th scope="col">{t("limit.limit")}</th>
            <th scope="col">{t("side.stated")}</th>
            <th scope="col">{t("side.found")}</th>
          </tr>
        </thead>
        <tbody>
          {limits.map((one) => (
            <tr key={`${one.side}${one.value}`}>
              <th scope="row">
                {t(`scale.limit.${one.side}`, { value: quantity(one.value, one.unit) })}
                <span className={styles.source}>{one.source}</span>
              </th>
              <CallCell call={one.a} />
              <CallCell call={one.b} />
            </tr>
          ))}
        </tbody>
      </table>
      <p className={styles.law}>{t("limit.law")}</p>
    </div>
  );
};
