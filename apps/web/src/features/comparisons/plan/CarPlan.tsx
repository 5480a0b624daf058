import type { Outcome } from "@evenhand/shared/outcome";
import type { Station } from "@evenhand/shared/sheet";
import { useIntl } from "react-intl";
import { useText } from "../../../strings/text";
import type { Row } from "../../../entities/comparison/model";
import { outcomeOrder } from "../../../entities/comparison/terms";
import { OutsideDrawing, UnderneathDrawing } from "./CarOutline";
import styles from "./CarPlan.module.css";
import { stationPlace } from "./stations";

interface Props {
  readonly stations: readonly Station[];
  readonly rows: readonly Row[];
  readonly selected: string | undefined;
  readonly onSelect: (station: string | undefined) => void;
}

type Count = Partial<Record<Outcome, number>>;

const countByStation = (rows: readonly Row[]): ReadonlyMap<string, Count> => {
  const counts = new Map<string, Count>();
  for (const { station, entry } of rows) {
    if (station === undefined || entry.coverageOnly === true) continue;
    const count = counts.get(station) ?? {};
    count[entry.outcome] = (count[entry.outcome] ?? 0) + 1;
    counts.set(station, count);
  }
  return counts;
};

const mostPressing = (count: Count): Outcome | undefined =>
  outcomeOrder.find((outcome) => (count[outcome] ?? 0) > 0);

/** The plan of the car: where the outcomes lie. Pressing a station shows only what lies there. */
export const CarPlan = ({ stations, rows, selected, onSelect }: Props) => {
  const t = useText();
  const intl = useIntl();
  const counts = countByStation(rows);
  const label = ({ number, words, id }: Station): string => {
    const count = counts.get(id) ?? {};
    const parts = outcomeOrder
      .filter((outcome) => (count[outcome] ?? 0) > 0)
      .map((outcome) => t("plan.count", { count: count[outcome] ?? 0, outcome: t(`outcome.${outcome}`) }));
    const what = parts.length > 0 ? intl.formatList(parts) : t("plan.nothing");
    return t("plan.station", { number, place: words.american, what });
  };
  const marks = (plan: Station["plan"]) =>
    stations
      .filter((station) => station.plan === plan && stationPlace[station.id])
      .map((station) => {
        const [x, y] = stationPlace[station.id] ?? [0, 0];
        return (
          <button
            key={station.id}
            type="button"
            className={styles.station}
            data-outcome={mostPressing(counts.get(station.id) ?? {}) ?? "none"}
            aria-pressed={selected === station.id}
            aria-label={label(station)}
            title={label(station)}
            style={{ left: `${x / 2}%`, top: `${y / 4.2}%` }}
            onClick={() => onSelect(selected === station.id ? undefined : station.id)}
          >
            {station.number}
          </button>
        );
      });
  return (
    <fieldset className={styles.plans}>
      <legend className="only-read">{t("plan.label")}</legend>
      <figure className={styles.plan}>
        <div className={styles.stage}>
          <OutsideDrawing />
          {marks("outside")}
        </div>
        <figcaption>{t("plan.outside")}</figcaption>
      </figure>
      <figure className={styles.plan}>
        <div className={styles.stage}>
          <UnderneathDrawing />
          {marks("underneath")}
        </div>
        <figcaption>{t("plan.underneath")}</figcaption>
      </figure>
    </fieldset>
  );
};
