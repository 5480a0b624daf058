import type { CaseRow } from "@evenhand/shared/http/cases";
import { Link } from "@tanstack/react-router";
import { useIntl } from "react-intl";
import { useCarName } from "../../entities/car/CarName";
import { Cover } from "../../entities/car/Cover";
import { useText } from "../../strings/text";
import styles from "./Cases.module.css";
import { useAtRest } from "./use-decided";
import { SpineLine, StepPress, useDue, useSentence, whoseIs } from "./Waiting";

/** Its number, since when it goes, and how much else waits in it. */
const Aside = ({ row, also }: { readonly row: CaseRow; readonly also: number }) => {
  const t = useText();
  const intl = useIntl();
  const since = t("cases.since", { date: intl.formatDate(row.openedAt, { dateStyle: "medium" }) });
  return (
    <p className={styles.aside}>
      {row.car.identification} · {since}
      {also > 0 && ` · ${t("cases.also", { count: also })}`}
    </p>
  );
};

/** One case: what comes next in it, whose that is, and the press where it is one's own. */
export const CaseLine = ({ row }: { readonly row: CaseRow }) => {
  const name = useCarName();
  const due = useDue();
  const sentence = useSentence(row.as);
  const atRest = useAtRest(row.as);
  const { standing, car } = row;
  const { next, waits } = standing;
  const whose = whoseIs(next, row.as);
  return (
    <SpineLine
      whose={whose}
      time={next === null ? "" : due(next)}
      title={
        <Link to="/cases/$case" params={{ case: row.id }}>
          {name(car)}
        </Link>
      }
      cover={row.cover !== null && <Cover id={row.cover} />}
      press={next !== null && whose === "yours" ? <StepPress wait={next} strong /> : undefined}
    >
      <p>{next === null ? atRest(standing) : sentence(next)}</p>
      <Aside row={row} also={waits.length - 1} />
    </SpineLine>
  );
};
