import type { Item } from "@evenhand/shared/sheet";
import { UNITS } from "@evenhand/shared/unit";
import { useIntl } from "react-intl";
import { useText } from "../../../strings/text";
import type { ComparisonSource, Row } from "../../../entities/comparison/model";
import { meanInBase } from "./mean-in-base";
import styles from "./CylinderBars.module.css";

interface Cylinder {
  readonly position: string;
  readonly name: string;
  readonly a: number | null;
  readonly b: number | null;
}
export interface CylinderGroup {
  readonly item: Item;
  readonly cylinders: readonly Cylinder[];
}

/** Readings taken cylinder by cylinder: compression and leak-down. */
export const cylinderGroups = (
  rows: readonly Row[],
  { index }: ComparisonSource,
): readonly CylinderGroup[] => {
  const groups = new Map<string, { item: Item; cylinders: Cylinder[] }>();
  for (const { item, a, b, entry, place } of rows) {
    if (!item?.reading || item.positions === undefined) continue;
    if (index.positionSets.get(item.positions)?.numbered?.countFrom !== "cylinders") continue;
    const group = groups.get(item.id) ?? { item, cylinders: [] };
    group.cylinders.push({
      position: entry.position,
      name: place,
      a: meanInBase(a, item),
      b: meanInBase(b, item),
    });
    groups.set(item.id, group);
  }
  return [...groups.values()].filter((group) => group.cylinders.some(({ a, b }) => a !== null || b !== null));
};

const number = (position: string): string => position.slice(position.lastIndexOf("-") + 1);

interface BarProps {
  readonly side: "a" | "b";
  readonly value: number | null;
  /** The highest of all readings: its bar is whole. */
  readonly most: number;
}

const Bar = ({ side, value, most }: BarProps) => {
  const intl = useIntl();
  return (
    <td data-side={side}>
      <span className={styles.track}>
        <span className={styles.bar} style={{ width: `${((value ?? 0) / most) * 100}%` }} />
      </span>
      <span className={styles.value}>
        {value === null ? "–" : intl.formatNumber(value, { maximumSignificantDigits: 3 })}
      </span>
    </td>
  );
};

const Bars = ({ cylinders }: Pick<CylinderGroup, "cylinders">) => {
  const most = Math.max(...cylinders.flatMap(({ a, b }) => [a ?? 0, b ?? 0])) || 1;
  return (
    <tbody>
      {cylinders.map(({ position, name, a, b }) => (
        <tr key={position}>
          <th scope="row" aria-label={name}>
            {number(position)}
          </th>
          <Bar side="a" value={a} most={most} />
          <Bar side="b" value={b} most={most} />
        </tr>
      ))}
    </tbody>
  );
};

/** One pair of bars a cylinder: what was stated and what was found. */
export const CylinderBars = ({ group: { item, cylinders } }: { readonly group: CylinderGroup }) => {
  const t = useText();
  const unit = item.reading ? UNITS[item.reading.unit].text : "";
  return (
    <figure className={styles.figure}>
      <figcaption>
        <span className={styles.name}>{item.words.american}</span> <span className={styles.unit}>{unit}</span>
      </figcaption>
      <table className={styles.bars}>
        <thead>
          <tr>
            <th scope="col">{t("bars.cylinder")}</th>
            <th scope="col">{t("side.stated")}</th>
            <th scope="col">{t("side.found")}</th>
          </tr>
        </thead>
        <Bars cylinders={cylinders} />
      </table>
    </figure>
  );
};
