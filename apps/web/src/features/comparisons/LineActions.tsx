import { lineOwed } from "@evenhand/case/matter-state";
import { whyNotReleasable } from "@evenhand/case/releasable";
import { Button } from "@mantine/core";
import { useQuery } from "@tanstack/react-query";
import { Link, useParams } from "@tanstack/react-router";
import { useIntl } from "react-intl";
import { costTableQuery } from "../../entities/comparison/cost-table";
import { comparisonQuery } from "../../entities/comparison/queries";
import type { Row } from "../../entities/comparison/model";
import { useLineRelease } from "../../entities/release/queries";
import { useOwedWords } from "../../entities/release/use-owed-words";
import { capital } from "../../entities/sheet/sheet-index";
import { useDuration } from "../../entities/time/use-duration";
import { useText } from "../../strings/text";
import { LinkButton } from "../../ui/LinkButton";
import { moneyText } from "../../ui/money";
import styles from "./EntryDetail.module.css";

interface Props {
  readonly row: Row;
  readonly onLay?: (at: number) => void;
}

/** What the reader's own table says of putting it right; nothing where it says nothing. */
const useCostWords = (row: Row, buys: boolean): string | null => {
  const t = useText();
  const intl = useIntl();
  const table = useQuery({ ...costTableQuery, enabled: buys }).data?.table;
  const found = table?.rows.find((one) => one.row === row.item?.costRow);
  if (table == null || found === undefined) return null;
  const money = (minor: number): string => moneyText(intl, { minor, currency: table.currency });
  return t("line.cost", { what: found.words, low: money(found.low), high: money(found.high) });
};

const Why = ({ row, buys }: { readonly row: Row; readonly buys: boolean }) => {
  const t = useText();
  const duration = useDuration();
  const cost = useCostWords(row, buys);
  const { item } = row;
  if (item === undefined) return null;
  return (
    <p className={styles.how}>
      {t("line.why", { why: t(`consequence.${item.consequence}`) })} {cost}{" "}
      {t("line.again", { time: duration(Math.max(1, item.minutes)), how: item.how })}
    </p>
  );
};

interface LayProps extends Props {
  readonly comparison: string;
}

/** Lays the line before the dealer; where it lies there already, whose answer is due. Neither where it may not be laid. */
const Lay = ({ row, comparison, onLay }: LayProps) => {
  const t = useText();
  const owedWords = useOwedWords();
  const release = useLineRelease(comparison, row.at, onLay !== undefined);
  if (release !== undefined) {
    const owed = lineOwed(release);
    return (
      <span>
        {owed !== null && `${capital(owedWords(owed, release))}. `}
        <Link to="/released" search={{ vehicle: release.vehicle }}>
          {t("lay.laid")}
        </Link>
      </span>
    );
  }
  if (whyNotReleasable(row.entry) !== null) return null;
  return (
    <Button variant="default" size="compact-md" onClick={() => onLay?.(row.at)}>
      {t("line.lay")}
    </Button>
  );
};

/** What can be done about one line: ask, lay it before the dealer; why it matters, what it costs, how it is looked at again. */
export const LineActions = ({ row, onLay }: Props) => {
  const t = useText();
  const { comparison = "" } = useParams({ strict: false });
  const vehicle = useQuery({ ...comparisonQuery(comparison), enabled: onLay !== undefined }).data?.vehicle;
  const { item, position } = row.entry;
  return (
    <>
      <Why row={row} buys={onLay !== undefined} />
      {onLay !== undefined && vehicle !== undefined && (
        <div className={`${styles.actions} no-print`}>
          <LinkButton
            variant="default"
            size="compact-md"
            to="/cars/$vehicle/ask"
            params={{ vehicle }}
            search={{ item, position }}
          >
            {t("line.ask")}
          </LinkButton>
          <Lay row={row} comparison={comparison} onLay={onLay} />
        </div>
      )}
    </>
  );
};
