import type { ComparisonSource, Row } from "../../entities/comparison/model";
import { CylinderBars, cylinderGroups } from "./pictures/CylinderBars";
import { PaintMap } from "./pictures/PaintMap";
import { paintRows } from "./pictures/paint-panels";
import styles from "./SectionPictures.module.css";

interface Props {
  readonly section: string;
  /** Every line, also what a filter hides: a picture with holes would mislead. */
  readonly all: readonly Row[];
  readonly source: ComparisonSource;
}

/** Pictures that belong to a whole section: the cylinders as bars, the paint as a map. */
export const SectionPictures = ({ section, all, source }: Props) => {
  const rows = all.filter((row) => row.section?.id === section);
  const cylinders = cylinderGroups(rows, source);
  const paint = paintRows(rows);
  if (cylinders.length === 0 && paint.length === 0) return null;
  return (
    <div className={styles.pictures}>
      {cylinders.map((group) => (
        <CylinderBars key={group.item.id} group={group} />
      ))}
      {paint.length > 0 && <PaintMap rows={paint} />}
    </div>
  );
};
