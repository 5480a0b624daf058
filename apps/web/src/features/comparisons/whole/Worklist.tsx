import type { WorklistRow } from "@evenhand/comparison/worklist";
import { cautionsOf } from "@evenhand/sheet/cautions-of";
import { useQuery } from "@tanstack/react-query";
import { useText } from "../../../strings/text";
import { Loading } from "../../../ui/Loading";
import { OutcomeSign } from "../../../ui/OutcomeSign";
import { Empty, Panel } from "../../../ui/Page";
import { ProblemNotice } from "../../../ui/ProblemNotice";
import { useDuration } from "../../../entities/time/use-duration";
import { Cautions } from "../../../entities/sheet/Cautions";
import { capital } from "../../../entities/sheet/sheet-index";
import type { ComparisonSource, Row } from "../../../entities/comparison/model";
import styles from "./Whole.module.css";

interface Props {
  readonly source: ComparisonSource;
  readonly rows: readonly Row[];
  readonly onOpen: (at: number) => void;
}

/** Worked out when it is looked at: nobody waits for it. */
const worklistQuery = ({ index, comparison, a, b }: ComparisonSource) => ({
  queryKey: ["worklist", comparison.a.seal, comparison.b.seal, comparison.engine],
  staleTime: Number.POSITIVE_INFINITY,
  queryFn: async (): Promise<WorklistRow[]> => {
    const [{ worklist }, { compileSheet }] = await Promise.all([
      import("@evenhand/comparison/worklist"),
      import("@evenhand/sheet/compile-sheet"),
    ]);
    return worklist(comparison.entries, a, b, compileSheet(index.sheet));
  },
});

const SHOWN = 12;

/** One piece of work with the line that it would close. */
interface Open {
  readonly work: WorklistRow;
  readonly row: Row;
}

const Line = ({ work, row, onOpen }: Open & Pick<Props, "onOpen">) => {
  const t = useText();
  return (
    <li>
      <OutcomeSign outcome={row.entry.outcome} size={26} />
      <span>
        <button type="button" onClick={() => onOpen(row.at)}>
          {capital([row.name, row.place].filter((part) => part !== "").join(", "))}
        </button>
        <span>
          {t(`outcome.${row.entry.outcome}`)} · {t(`work.${work.work}`, { count: work.readings ?? 0 })}
        </span>
      </span>
    </li>
  );
};

interface LinesProps extends Pick<Props, "onOpen"> {
  readonly lines: readonly Open[];
}

const Lines = ({ lines, onOpen }: LinesProps) => (
  <ul className={styles.work}>
    {lines.map((line) => (
      <Line key={line.row.at} {...line} onOpen={onOpen} />
    ))}
  </ul>
);

/** Those that come after the first ones, folded. */
const More = ({ lines, onOpen }: LinesProps) => {
  const t = useText();
  if (lines.length === 0) return null;
  return (
    <details>
      <summary>{t("work.more", { count: lines.length })}</summary>
      <Lines lines={lines} onOpen={onOpen} />
    </details>
  );
};

const Work = ({ list, source, rows, onOpen }: Props & { readonly list: readonly WorklistRow[] }) => {
  const t = useText();
  const duration = useDuration();
  const lines = list.flatMap((work) => {
    const row = rows[work.entry];
    return row === undefined ? [] : [{ work, row }];
  });
  const minutes = list.reduce((sum, work) => sum + work.minutes, 0);
  const items = lines.map(({ row }) => row.entry.item);
  const cautions = cautionsOf(source.index.sheet, items).map(({ id }) => id);
  return (
    <Panel title={t("work.title")} hint={t("work.hint", { count: lines.length, time: duration(minutes) })}>
      {lines.length === 0 ? (
        <Empty title={t("work.none")} />
      ) : (
        <Lines lines={lines.slice(0, SHOWN)} onOpen={onOpen} />
      )}
      <Cautions index={source.index} ids={cautions} />
      <More lines={lines.slice(SHOWN)} onOpen={onOpen} />
    </Panel>
  );
};

/** What to read or look at again so that what is open closes: safety first, doubtful before consistent. */
export const Worklist = (props: Props) => {
  const t = useText();
  const { data: list, error } = useQuery(worklistQuery(props.source));
  if (list !== undefined) return <Work {...props} list={list} />;
  return (
    <Panel title={t("work.title")}>{error === null ? <Loading /> : <ProblemNotice error={error} />}</Panel>
  );
};
