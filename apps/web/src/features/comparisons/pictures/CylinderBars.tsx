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

/** One pair of bars a cylinder: what was stated and what was found. */
export const CylinderBars = ({ group }: { readonly group: CylinderGroup }) => {
  const t = useText();
  const intl = useIntl();
  const { item, cylinders } = group;
  const most = Math.max(...cylinders.flatMap(({ a, b }) => [a ?? 0, b ?? 0])) || 1;
  const unit = item.reading ? UNITS[item.reading.unit].text : "";
  const text = (value: number | null): string =>
    value === null ? "–" : intl.formatNumber(value, { maximumSignificantDigits: 3 });
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
        <tbody>
          {cylinders.map(({ position, name, a, b }) => (
            <tr key={position}>
              <th scope="row" aria-label={name}>
                {number(position)}
              </th>
              <td data-side="a">
                <span className={styles.track}>
                  <span className={styles.bar} style={{ width: `${((a ?? 0) / most) * 100}%` }} />
                </span>
                <span className={styles.value}>{text(a)}</span>
              </td>
              <td data-side="b">
                <span className={styles.track}>
                  <span className={styles.bar} style={{ width: `${((b ?? 0) / most) * 100}%` }} />
                </span>
                <span className={styles.value}>{text(b)}</span>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </figure>
  );
};
