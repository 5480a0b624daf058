import type { SettlementState } from "@evenhand/shared/settlement";
import type { VirtualItem } from "@tanstack/virtual-core";
import {
  type CSSProperties,
  type RefObject,
  useLayoutEffect,
  useMemo,
  useRef,
  useState,
  useSyncExternalStore,
} from "react";
import { useText } from "../../strings/text";
import type { Choosing } from "../../entities/comparison/choosing";
import type { ComparisonSource, Row } from "../../entities/comparison/model";
import styles from "./LineList.module.css";
import { LineRow, type LineWays } from "./LineRow";
import { type ListPart, listParts } from "./list-parts";
import { SectionPictures } from "./SectionPictures";
import { useFocusBelow } from "./use-focus-below";
import { useOpenLine } from "./use-open-line";
import { usePrinting } from "./use-printing";
import { WindowLines } from "./window-lines";

export interface Props extends LineWays {
  readonly rows: readonly Row[];
  readonly all: readonly Row[];
  readonly source: ComparisonSource;
  readonly order: "pressing" | "sheet";
  readonly open: number | undefined;
  /** The line somebody went to from another view. */
  readonly goTo: RefObject<number | null>;
  readonly choosing?: Choosing;
  /** How lines stand with the dealer, by their place. */
  readonly settled: ReadonlyMap<number, SettlementState>;
}

type HeadingProps = Pick<Props, "all" | "source"> & { readonly part: Extract<ListPart, { is: "heading" }> };

const Heading = ({ part, all, source }: HeadingProps) => {
  const t = useText();
  const { title, count } = part;
  const ofSection = title.of === "section";
  return (
    <div className={styles.heading} id={ofSection ? `section-${title.id}` : undefined}>
      <header className={styles.blockHead}>
        <h2>
          {ofSection && title.number !== null && <span className={styles.number}>{title.number}</span>}
          <span className={styles.title}>{ofSection ? title.words : t(`facing.${title.of}`)}</span>
        </h2>
        <p>{ofSection ? t("facing.lines", { count }) : t(`facing.${title.of}.hint`, { count })}</p>
      </header>
      {ofSection && <SectionPictures section={title.id} all={all} source={source} />}
    </div>
  );
};

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

/** The lines in sight, as the window is scrolled and as they are measured. */
const useLines = (parts: readonly ListPart[]) => {
  const [lines] = useState(() => new WindowLines());
  const list = useRef<HTMLOListElement>(null);
  const inSight = useSyncExternalStore(lines.subscribe, lines.snapshot);
  useLayoutEffect(() => lines.mount(), [lines]);
  useLayoutEffect(() => {
    if (list.current !== null) lines.show(parts, list.current);
  }, [lines, parts]);
  useFocusBelow(list, inSight.total);
  return { lines, list, inSight };
};

const placed = ({ start }: VirtualItem, top: number): CSSProperties => ({
  position: "absolute",
  insetInline: 0,
  top: 0,
  transform: `translateY(${start - top}px)`,
});

interface DrawnProps extends Props {
  readonly part: ListPart;
}

const Drawn = ({ part, ...props }: DrawnProps) => {
  const { source, open, choosing, onToggle, onLay, settled } = props;
  if (part.is === "heading") return <Heading part={part} {...props} />;
  const { row } = part;
  return (
    <LineRow
      row={row}
      source={source}
      open={open === row.at}
      chosen={choosing?.may(row) === true ? choosing.chosen.has(row.at) : undefined}
      onChoose={choosing?.onChoose}
      onToggle={onToggle}
      onLay={onLay}
      settled={settled.get(row.at)}
    />
  );
};

interface PartsProps extends Props {
  readonly parts: readonly ListPart[];
}

const InSightOnly = ({ parts, ...props }: PartsProps) => {
  const { lines, list, inSight } = useLines(parts);
  useOpenLine(props.open, props.goTo, (at) => {
    const place = parts.findIndex((part) => part.is === "line" && part.row.at === at);
    if (place >= 0) lines.scrollTo(place);
  });
  return (
    <ol ref={list} className={styles.rows} style={{ height: inSight.total, position: "relative" }}>
      {inSight.items.map((item) => {
        const part = parts[item.index];
        return (
          part && (
            <li
              key={item.key}
              ref={lines.measure}
              data-index={item.index}
              data-open={part.is === "line" ? props.open === part.row.at : undefined}
              aria-setsize={parts.length}
              aria-posinset={item.index + 1}
              style={placed(item, inSight.top)}
            >
              <Drawn {...props} part={part} />
            </li>
          )
        );
      })}
    </ol>
  );
};

/** The statement on the left page, the inspection on the right, the outcome on the spine between them; only what is in sight is drawn. */
export const LineList = (props: Props) => {
  const { rows, source, order, choosing } = props;
  const parts = useMemo(() => listParts(rows, order), [rows, order]);
  const printing = usePrinting();
  return (
    <div className={styles.pages} data-choosing={choosing !== undefined}>
      <Heads source={source} />
      {printing ? (
        <ol className={styles.rows}>
          {parts.map((part) => (
            <li key={part.key}>
              <Drawn {...props} part={part} />
            </li>
          ))}
        </ol>
      ) : (
        <InSightOnly {...props} parts={parts} />
      )}
    </div>
  );
};
