import type { CaseRow } from "@evenhand/shared/http/cases";
import { Link } from "@tanstack/react-router";
import { useIntl } from "react-intl";
import { useCarName } from "../../entities/car/CarName";
import { useText } from "../../strings/text";
import styles from "./Cases.module.css";
import { useAtRest } from "./use-decided";
import { SpineLine, StepPress, useDue, useSentence, whoseIs } from "./Waiting";

/** One case: what comes next in it, whose that is, and the press where it is one's own. */
export const CaseLine = ({ row }: { readonly row: CaseRow }) => {
  const t = useText();
  const intl = useIntl();
  const name = useCarName();
  const due = useDue();
  const sentence = useSentence(row.as);
  const atRest = useAtRest(row.as);
  const { standing, car } = row;
  const { next, waits } = standing;
  const whose = whoseIs(next, row.as);
  const since = t("cases.since", { date: intl.formatDate(row.openedAt, { dateStyle: "medium" }) });
  return (
    <SpineLine
      whose={whose}
      time={next === null ? "" : due(next)}
      title={
        <Link to="/cases/$case" params={{ case: row.id }}>
          {name(car)}
        </Link>
      }
      press={next !== null && whose === "yours" ? <StepPress wait={next} strong /> : undefined}
    >
      <p>{next === null ? atRest(standing) : sentence(next)}</p>
      <p className={styles.aside}>
        {car.identification} · {since}
        {waits.length > 1 && ` · ${t("cases.also", { count: waits.length - 1 })}`}
      </p>
    </SpineLine>
  );
};
