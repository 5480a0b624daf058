import type { CaseRow } from "@evenhand/shared/http/cases";
import type { ReactNode } from "react";
import { useIntl } from "react-intl";
import { CaseLine } from "./CaseLine";
import styles from "./Cases.module.css";

interface PartProps {
  readonly title: string;
  readonly count: number;
  /** More can be loaded: how many there are is not known. */
  readonly open?: boolean;
  /** Said where there is nothing. */
  readonly none: string;
  readonly children: ReactNode;
}

/** One of the three parts of a first screen, with how many stand in it. */
export const HomePart = ({ title, count, open = false, none, children }: PartProps) => {
  const intl = useIntl();
  return (
    <section className={styles.part}>
      <h2>
        {title}{" "}
        {count > 0 && !open && <span className={`${styles.count} figures`}>{intl.formatNumber(count)}</span>}
      </h2>
      {count === 0 ? <p className={styles.none}>{none}</p> : <ul className={styles.lines}>{children}</ul>}
    </section>
  );
};

export const CaseLines = ({ rows }: { readonly rows: readonly CaseRow[] }) =>
  rows.map((row) => <CaseLine key={`${row.as} ${row.id}`} row={row} />);
