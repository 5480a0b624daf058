import { useText } from "../../strings/text";
import { EntryRow } from "./EntryRow";
import styles from "./FacingPages.module.css";
import { byPressing, bySection } from "./filters";
import type { Choosing } from "../../entities/comparison/choosing";
import type { ComparisonSource, Row } from "../../entities/comparison/model";
import { SectionPictures } from "./SectionPictures";

interface Props {
  readonly rows: readonly Row[];
  readonly all: readonly Row[];
  readonly source: ComparisonSource;
  readonly order: "pressing" | "sheet";
  readonly open: number | undefined;
  readonly onToggle: (at: number) => void;
  readonly choosing?: Choosing;
}

interface BlockProps extends Omit<Props, "order"> {
  readonly title: string;
  readonly number?: number | null;
  readonly hint?: string;
  readonly section?: string;
}

const Block = ({ rows, all, title, number, hint, section, source, open, onToggle, choosing }: BlockProps) => {
  const t = useText();
  return (
    <section className={styles.block} id={section === undefined ? undefined : `section-${section}`}>
      <header className={styles.blockHead}>
        <h2>
          {number !== undefined && number !== null && <span className={styles.number}>{number}</span>}
          <span className={styles.title}>{title}</span>
        </h2>
        <p>{hint ?? t("facing.lines", { count: rows.length })}</p>
      </header>
      {section !== undefined && <SectionPictures section={section} all={all} source={source} />}
      <ol className={styles.rows}>
        {rows.map((row) => (
          <EntryRow
            key={row.at}
            row={row}
            source={source}
            open={open === row.at}
            onToggle={onToggle}
            chosen={choosing?.may(row) === true ? choosing.chosen.has(row.at) : undefined}
            onChoose={choosing?.onChoose}
          />
        ))}
      </ol>
    </section>
  );
};

/** Whose answers stand on which page. */
const Heads = ({ source }: Pick<Props, "source">) => {
  const t = useText();
  return (
    <div className={styles.heads} aria-hidden="true">
      <span className={styles.item}>{t("facing.item")}</span>
      <span className={styles.stated}>
        <strong>{t("side.stated")}</strong> {source.a.author.organization}
      </span>
      <span className={styles.spine} />
      <span className={styles.found}>
        <strong>{t("side.found")}</strong> {source.b.author.organization}
      </span>
    </div>
  );
};

const BySection = (props: Props) =>
  bySection(props.rows).map(({ id, title, number, rows }) => (
    <Block key={id} {...props} rows={rows} title={title} number={number} section={id} />
  ));

/** What presses first, then the rest. */
const ByPressing = (props: Props) => {
  const t = useText();
  const blocks = byPressing(props.rows);
  return (["pressing", "rest"] as const)
    .filter((part) => blocks[part].length > 0)
    .map((part) => (
      <Block
        key={part}
        {...props}
        rows={blocks[part]}
        title={t(`facing.${part}`)}
        hint={t(`facing.${part}.hint`, { count: blocks[part].length })}
      />
    ));
};

/** The statement on the left page, the inspection on the right, the outcome on the spine between them. */
export const FacingPages = (props: Props) => (
  <div className={styles.pages} data-choosing={props.choosing !== undefined}>
    <Heads source={props.source} />
    {props.order === "sheet" ? <BySection {...props} /> : <ByPressing {...props} />}
  </div>
);
