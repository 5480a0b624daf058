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

/** A station in words: where it is, and what lies there. */
const useStationWords = (): ((station: Station, count: Count) => string) => {
  const t = useText();
  const intl = useIntl();
  return ({ number, words }, count) => {
    const parts = outcomeOrder
      .filter((outcome) => (count[outcome] ?? 0) > 0)
      .map((outcome) => t("plan.count", { count: count[outcome] ?? 0, outcome: t(`outcome.${outcome}`) }));
    const what = parts.length > 0 ? intl.formatList(parts) : t("plan.nothing");
    return t("plan.station", { number, place: words.american, what });
  };
};

interface MarkProps extends Pick<Props, "selected" | "onSelect"> {
  readonly station: Station;
  readonly place: readonly [number, number];
  readonly count: Count;
}

/** Where a station lies on the drawing, in the color of what presses most there. */
const Mark = ({ station, place: [x, y], count, selected, onSelect }: MarkProps) => {
  const words = useStationWords()(station, count);
  return (
    <button
      type="button"
      className={styles.station}
      data-outcome={mostPressing(count) ?? "none"}
      aria-pressed={selected === station.id}
      aria-label={words}
      title={words}
      style={{ left: `${x / 2}%`, top: `${y / 4.2}%` }}
      onClick={() => onSelect(selected === station.id ? undefined : station.id)}
    >
      {station.number}
    </button>
  );
};

interface ViewProps extends Pick<Props, "stations" | "selected" | "onSelect"> {
  readonly plan: Station["plan"];
  readonly counts: ReadonlyMap<string, Count>;
}

/** The car from one side, with its stations. */
const PlanOf = ({ plan, stations, counts, ...choice }: ViewProps) => {
  const t = useText();
  const Drawing = plan === "outside" ? OutsideDrawing : UnderneathDrawing;
  return (
    <figure className={styles.plan}>
      <div className={styles.stage}>
        <Drawing />
        {stations.map((station) => {
          const place = stationPlace[station.id];
          if (station.plan !== plan || !place) return null;
          const count = counts.get(station.id) ?? {};
          return <Mark key={station.id} station={station} place={place} count={count} {...choice} />;
        })}
      </div>
      <figcaption>{t(`plan.${plan}`)}</figcaption>
    </figure>
  );
};

/** The plan of the car: where the outcomes lie. Pressing a station shows only what lies there. */
export const CarPlan = ({ rows, ...plan }: Props) => {
  const t = useText();
  const counts = countByStation(rows);
  return (
    <fieldset className={styles.plans}>
      <legend className="only-read">{t("plan.label")}</legend>
      <PlanOf plan="outside" counts={counts} {...plan} />
      <PlanOf plan="underneath" counts={counts} {...plan} />
    </fieldset>
  );
};
