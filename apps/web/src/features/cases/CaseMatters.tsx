import type { CaseMatter, CaseSeen } from "@evenhand/shared/http/cases";
import { Link } from "@tanstack/react-router";
import { Severity } from "../../entities/matter/Severity";
import { useMatterStanding } from "../../entities/release/use-owed-words";
import { useText } from "../../strings/text";
import { Tag } from "../../ui/Page";
import styles from "./CaseMatters.module.css";
import pages from "./Cases.module.css";

interface Props {
  readonly matter: CaseMatter;
  readonly car: string;
}

/** To the lines of the matter; the dealer's to the items laid before them. */
const Headline = ({ matter: { comparison, place, headline }, car }: Props) =>
  place === null ? (
    <Link to="/released" search={{ vehicle: car }}>
      {headline}
    </Link>
  ) : (
    <Link to="/comparisons/$comparison" params={{ comparison }} search={{ view: "items", matter: place }}>
      {headline}
    </Link>
  );

interface StateProps extends Pick<Props, "matter"> {
  readonly row: Pick<CaseSeen, "as" | "zone">;
}

/** How it stands between buyer and dealer, and until when whose answer is due. */
const State = ({ matter, row }: StateProps) => {
  const standing = useMatterStanding();
  const { state } = matter;
  if (state === null) return null;
  const words = standing({ ...matter, state }, row);
  if (state === "open") return <span className={styles.open}>{words}</span>;
  return <Tag strong={matter.owed !== null && matter.owed.of === row.as}>{words}</Tag>;
};

const Matter = ({ matter, row }: StateProps & { readonly row: CaseSeen }) => {
  const { severity, unknown, next } = matter;
  return (
    <li>
      <div className={styles.what}>
        <strong>
          <Headline matter={matter} car={row.car.id} />
        </strong>
        <Severity severity={severity} unknown={unknown} />
        {next !== null && <span className={styles.next}>{next}</span>}
      </div>
      <State matter={matter} row={row} />
    </li>
  );
};

/** What is wrong or unknown with this car, worst first, each with what to do and how it stands between buyer and dealer. */
export const CaseMatters = ({ row }: { readonly row: CaseSeen }) => {
  const t = useText();
  const { matters, as } = row;
  if (matters.length === 0) return null;
  return (
    <section className={pages.part}>
      <h2>
        {t(as === "dealer" ? "case.matters.dealer" : "case.matters")}
        <span className={pages.count}>{matters.length}</span>
      </h2>
      <ol className={styles.matters}>
        {matters.map((matter) => (
          <Matter key={`${matter.comparison} ${matter.id}`} matter={matter} row={row} />
        ))}
      </ol>
    </section>
  );
};
