import type { Interval } from "@evenhand/shared/comparison";
import type { RecordFigures } from "@evenhand/shared/http/records";
import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import styles from "./DealerRecord.module.css";
import { intervalBar } from "./interval-bar";

type Known = Extract<RecordFigures, { state: "known" }>;

interface ShareProps {
  readonly interval: Interval;
  readonly of: "fallen" | "fallenIfAllOpen" | "stated";
  /** Where the bar ends. */
  readonly top: number;
}

const usePercent = (): ((value: number) => string) => {
  const intl = useIntl();
  return (value) =>
    intl.formatNumber(value, { style: "percent", maximumFractionDigits: value < 0.095 ? 1 : 0 });
};

/** The interval as a band, the share as a mark across it, on 0 to the top. */
const Bar = ({ interval, of, top }: ShareProps) => {
  const { from, width, at } = intervalBar(interval, top);
  return (
    <svg className={styles.bar} data-of={of} aria-hidden="true">
      <rect className={styles.track} x="0" y="6" width="100%" height="4" />
      {["0%", "50%", "100%"].map((x) => (
        <line key={x} className={styles.tick} x1={x} x2={x} y1="3" y2="13" />
      ))}
      <rect className={styles.band} x={from} y="3" width={width} height="10" />
      <line className={styles.mark} x1={at} x2={at} y1="0" y2="16" />
    </svg>
  );
};

const Share = ({ interval, of, top }: ShareProps) => {
  const t = useText();
  const percent = usePercent();
  const { estimate, low, high } = interval;
  return (
    <div className={styles.share}>
      <span>{t(`record.${of}`)}</span>
      <Bar interval={interval} of={of} top={top} />
      <span className={styles.figures}>
        {t("record.share", { share: percent(estimate), low: percent(low), high: percent(high) })}
      </span>
    </div>
  );
};

const Others = ({ others }: Pick<Known, "others">) => {
  const t = useText();
  const percent = usePercent();
  return (
    <p className={styles.cars}>
      {others === null
        ? t("record.no-others")
        : t("record.others", {
            dealers: others.dealers,
            fallen: percent(others.fallen),
            stated: percent(others.stated),
          })}
    </p>
  );
};

const Figures = ({ figures, top }: { readonly figures: Known; readonly top: number }) => {
  const t = useText();
  const { cars, tested, fell, open, notContradicted, settledByMoney, statedWorse } = figures;
  const { fallen, fallenIfAllOpen, stated, others } = figures;
  return (
    <div className={styles.shares}>
      <Share interval={fallen} of="fallen" top={top} />
      {fallenIfAllOpen && <Share interval={fallenIfAllOpen} of="fallenIfAllOpen" top={top} />}
      <Share interval={stated} of="stated" top={1} />
      <p className={styles.cars}>
        {t("record.counts", { cars, tested, fell, open, notContradicted, settledByMoney })}
      </p>
      {statedWorse > 0 && <p className={styles.cars}>{t("record.stated-worse", { count: statedWorse })}</p>}
      <Others others={others} />
    </div>
  );
};

interface Props {
  readonly figures: RecordFigures;
  readonly needed: number;
  readonly name: string;
  /** Where the bars of what fell end, the same for all rows. */
  readonly top: number;
}

/** The whole car or one section: its shares with their intervals, and what they are counted from; or that there are too few. */
export const SectionRow = ({ figures, needed, name, top }: Props) => {
  const t = useText();
  return (
    <li className={styles.section}>
      <h3>{name}</h3>
      {figures.state === "known" ? (
        <Figures figures={figures} top={top} />
      ) : (
        <p className={styles.cars}>{t("record.too-few", { n: figures.cars, needed })}</p>
      )}
    </li>
  );
};
