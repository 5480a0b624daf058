import type { CaseMatter, CaseSeen } from "@evenhand/shared/http/cases";
import { Link } from "@tanstack/react-router";
import { Severity } from "../../entities/matter/Severity";
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

/** How it stands between buyer and dealer; where only part of it was laid before the dealer, how much. */
const State = ({ matter: { state, laid, lines } }: Pick<Props, "matter">) => {
  const t = useText();
  if (state === null) return null;
  const words = t(`matter.state.${state}`);
  if (state === "open") return <span className={styles.open}>{words}</span>;
  const part =
    laid === lines || state === "answered-for" ? words : t("case.matter.part", { state: words, laid, lines });
  return <Tag strong={state === "laid"}>{part}</Tag>;
};

const Matter = ({ matter, car }: Props) => {
  const { severity, unknown, next } = matter;
  return (
    <li>
      <div className={styles.what}>
        <strong>
          <Headline matter={matter} car={car} />
        </strong>
        <Severity severity={severity} unknown={unknown} />
        {next !== null && <span className={styles.next}>{next}</span>}
      </div>
      <State matter={matter} />
    </li>
  );
};

/** What is wrong or unknown with this car, worst first, each with what to do and how it stands between buyer and dealer. */
export const CaseMatters = ({ row: { matters, as, car } }: { readonly row: CaseSeen }) => {
  const t = useText();
  if (matters.length === 0) return null;
  return (
    <section className={pages.part}>
      <h2>
        {t(as === "dealer" ? "case.matters.dealer" : "case.matters")}
        <span className={pages.count}>{matters.length}</span>
      </h2>
      <ol className={styles.matters}>
        {matters.map((matter) => (
          <Matter key={`${matter.comparison} ${matter.id}`} matter={matter} car={car.id} />
        ))}
      </ol>
    </section>
  );
};
