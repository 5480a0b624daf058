import type { CasesOfPart } from "@evenhand/shared/http/cases";
import { useQueries } from "@tanstack/react-query";
import { Link } from "@tanstack/react-router";
import type { ReactNode } from "react";
import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import { mayEver } from "../account/may-ever";
import { useAccount } from "../account/queries";
import { useCarName } from "../car/CarName";
import styles from "./OverPart.module.css";
import { partCasesQuery } from "./queries";

type PartCase = CasesOfPart["items"][number];

const CaseLink = ({ row, dated }: { readonly row: PartCase; readonly dated: boolean }) => {
  const t = useText();
  const intl = useIntl();
  const car = useCarName()(row.car);
  const date = intl.formatDate(row.openedAt, { dateStyle: "medium" });
  return (
    <Link to="/cases/$case" params={{ case: row.id }}>
      {dated ? t("case.link.of", { car, date }) : t("case.link", { car })}
    </Link>
  );
};

/** The cases of all parts, each once, the first begun first; nothing before it is known. */
const usePartCases = (parts: readonly string[]): readonly PartCase[] | undefined => {
  const asks = mayEver(useAccount(), "cases.ofPart");
  return useQueries({
    queries: parts.map((part) => ({ ...partCasesQuery(part), enabled: asks })),
    combine: (found) => {
      if (asks && found.some(({ isPending }) => isPending)) return undefined;
      const rows = found.flatMap(({ data }) => data?.items ?? []);
      return [...new Map(rows.map((row) => [row.id, row])).values()];
    },
  });
};

interface Props {
  /** Ids of what the page shows: a question, a visit, a comparison, whatever a case has as a part. */
  readonly parts: readonly string[];
  /** What else the page leads back to. */
  readonly children?: ReactNode;
}

/** Over the title of a page that is part of a case: the case, one press away. */
export const OverPart = ({ parts, children }: Props) => {
  const rows = usePartCases(parts);
  const isAlone = ({ car }: PartCase): boolean => rows?.filter((each) => each.car.id === car.id).length === 1;
  return (
    <span className={styles.line}>
      {rows?.map((row) => (
        <CaseLink key={row.id} row={row} dated={!isAlone(row)} />
      ))}
      {rows && children}
    </span>
  );
};
