import { Button } from "@mantine/core";
import type { UseInfiniteQueryResult } from "@tanstack/react-query";
import type { ReactNode } from "react";
import { useText } from "../strings/text";
import styles from "./List.module.css";
import { Loading } from "./Loading";
import { ProblemNotice } from "./ProblemNotice";

interface Props<T> {
  readonly query: UseInfiniteQueryResult<readonly T[]>;
  readonly renderRow: (item: T) => ReactNode;
  readonly keyOf: (item: T) => string;
  readonly empty: ReactNode;
}

/** A list that loads on, says when it is empty what to do, and says when it cannot be read why. */
export const List = <T,>({ query, renderRow, keyOf, empty }: Props<T>) => {
  const t = useText();
  if (query.error) return <ProblemNotice error={query.error} />;
  if (!query.data) return <Loading />;
  if (query.data.length === 0) return <>{empty}</>;
  return (
    <>
      <ul className={styles.list}>
        {query.data.map((item) => (
          <li key={keyOf(item)}>{renderRow(item)}</li>
        ))}
      </ul>
      {query.hasNextPage && (
        <div className={styles.more}>
          <Button
            variant="default"
            loading={query.isFetchingNextPage}
            onClick={() => void query.fetchNextPage()}
          >
            {t("list.more")}
          </Button>
        </div>
      )}
    </>
  );
};

/** A line of a list that leads somewhere: what it is, what is said of it, and what stands at its end. */
export const Line = ({
  lead,
  main,
  sub,
  end,
}: {
  /** A picture before it. */
  readonly lead?: ReactNode;
  readonly main: ReactNode;
  readonly sub?: ReactNode;
  readonly end?: ReactNode;
}) => (
  <div className={styles.line}>
    {lead}
    <div className={styles.text}>
      <div className={styles.main}>{main}</div>
      {sub !== undefined && <div className={styles.sub}>{sub}</div>}
    </div>
    {end !== undefined && <div className={styles.end}>{end}</div>}
  </div>
);
