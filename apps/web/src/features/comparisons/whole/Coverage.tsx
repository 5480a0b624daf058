import { SEVERITIES } from "@evenhand/shared/terms";
import type { Comparison } from "@evenhand/shared/comparison";
import type { z } from "zod";
import type { CoverageRow } from "@evenhand/shared/comparison";
import { useText } from "../../../strings/text";
import { oneOf } from "../../../service/one-of";
import styles from "./Whole.module.css";

type Covered = z.infer<typeof CoverageRow>;

interface TableProps {
  readonly caption: string;
  readonly rows: readonly { readonly name: string; readonly row: Covered }[];
}

const share = (part: number, whole: number): string => (whole === 0 ? "0%" : `${(part / whole) * 100}%`);

interface PartProps {
  readonly part: number;
  readonly whole: number;
}

/** So many of so many, and how far the bar is filled. */
const PartCell = ({ part, whole }: PartProps) => {
  const t = useText();
  return (
    <td>
      <span className={styles.ratio}>{t("coverage.ratio", { part, whole })}</span>
      <span className={styles.cover} aria-hidden="true">
        <span style={{ width: share(part, whole) }} />
      </span>
    </td>
  );
};

const CoverageLine = ({ name, row }: TableProps["rows"][number]) => (
  <tr>
    <th scope="row" className={styles.coverName}>
      {name}
    </th>
    <PartCell part={row.statedAndSeen} whole={row.stated} />
    <PartCell part={row.seen} whole={row.onSheet} />
    <td>{row.seenSoundNotStated}</td>
  </tr>
);

const columns = ["of", "seen-of-stated", "seen-of-sheet", "sound"] as const;

const CoverageTable = ({ caption, rows }: TableProps) => {
  const t = useText();
  return (
    <div className={styles.scroll}>
      <table className={styles.coverage}>
        <caption>{caption}</caption>
        <thead>
          <tr>
            {columns.map((column) => (
              <th key={column} scope="col">
                {t(`coverage.${column}`)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ name, row }) => (
            <CoverageLine key={row.of} name={name} row={row} />
          ))}
        </tbody>
      </table>
    </div>
  );
};

interface Props {
  readonly coverage: Comparison["coverage"];
  readonly sectionName: (id: string) => string;
}

/** How much was looked at, with both denominators: of what was stated, and of what the sheet holds for this car. */
export const Coverage = ({ coverage, sectionName }: Props) => {
  const t = useText();
  const severityName = (id: string): string => {
    const known = oneOf(SEVERITIES, id);
    return known ? t(`at-stake.${known}`) : id;
  };
  return (
    <>
      <CoverageTable
        caption={t("coverage.by-severity")}
        rows={[
          ...coverage.bySeverity.map((row) => ({ name: severityName(row.of), row })),
          { name: t("coverage.whole"), row: coverage.whole },
        ]}
      />
      <CoverageTable
        caption={t("coverage.by-section")}
        rows={coverage.bySection.map((row) => ({ name: sectionName(row.of), row }))}
      />
    </>
  );
};
