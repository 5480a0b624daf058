import { useWindowVirtualizer, type VirtualItem } from "@tanstack/react-virtual";
import {
  type CSSProperties,
  type ReactNode,
  type RefObject,
  useLayoutEffect,
  useMemo,
  useRef,
  useState,
} from "react";
import { useText } from "../../strings/text";
import type { Choosing } from "../../entities/comparison/choosing";
import type { ComparisonSource, Row } from "../../entities/comparison/model";
import styles from "./LineList.module.css";
import { LineRow, type LineWays } from "./LineRow";
import { type ListPart, listParts } from "./list-parts";
import { SectionPictures } from "./SectionPictures";
import { useOpenLine } from "./use-open-line";
import { usePrinting } from "./use-printing";

export interface Props extends LineWays {
  readonly rows: readonly Row[];
  readonly all: readonly Row[];
  readonly source: ComparisonSource;
  readonly order: "pressing" | "sheet";
  readonly open: number | undefined;
  /** The line somebody went to from another view. */
  readonly goTo: RefObject<number | null>;
  readonly choosing?: Choosing;
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

/** How high one is before it is measured, in pixels. */
const LINE = 29;
const HEADING = 44;
/** Lines drawn beyond the edge, so that the keys find the next one. */
const BEYOND = 10;

/** Where the list begins, from the top of the page. */
const useTop = (list: RefObject<HTMLElement | null>): number => {
  const [top, setTop] = useState(0);
  useLayoutEffect(() => {
    if (list.current !== null) setTop(list.current.getBoundingClientRect().top + globalThis.scrollY);
  }, [list]);
  return top;
};

const useLines = (parts: readonly ListPart[], list: RefObject<HTMLElement | null>) => {
  const top = useTop(list);
  return useWindowVirtualizer({
    count: parts.length,
    estimateSize: (at) => (parts[at]?.is === "heading" ? HEADING : LINE),
    getItemKey: (at) => parts[at]?.key ?? at,
    overscan: BEYOND,
    scrollMargin: top,
    scrollPaddingStart: 110,
  });
};

const placed = ({ start }: VirtualItem, top: number): CSSProperties => ({
  position: "absolute",
  insetInline: 0,
  top: 0,
  transform: `translateY(${start - top}px)`,
});

/** The statement on the left page, the inspection on the right, the outcome on the spine between them; only what is in sight is drawn. */
export const LineList = (props: Props) => {
  const { rows, source, order, open, goTo, choosing, onToggle, onLay } = props;
  const parts = useMemo(() => listParts(rows, order), [rows, order]);
  const list = useRef<HTMLOListElement>(null);
  const lines = useLines(parts, list);
  const printing = usePrinting();
  useOpenLine(open, goTo, (at) => {
    const place = parts.findIndex((part) => part.is === "line" && part.row.at === at);
    if (place >= 0) lines.scrollToIndex(place, { align: "center" });
  });
  const draw = (part: ListPart): ReactNode =>
    part.is === "heading" ? (
      <Heading part={part} {...props} />
    ) : (
      <LineRow
        row={part.row}
        source={source}
        open={open === part.row.at}
        chosen={choosing?.may(part.row) === true ? choosing.chosen.has(part.row.at) : undefined}
        onChoose={choosing?.onChoose}
        onToggle={onToggle}
        onLay={onLay}
      />
    );
  const top = lines.options.scrollMargin;
  return (
    <div className={styles.pages} data-choosing={choosing !== undefined}>
      <Heads source={source} />
      {printing ? (
        <ol className={styles.rows}>
          {parts.map((part) => (
            <li key={part.key}>{draw(part)}</li>
          ))}
        </ol>
      ) : (
        <ol ref={list} className={styles.rows} style={{ height: lines.getTotalSize(), position: "relative" }}>
          {lines.getVirtualItems().map((item) => {
            const part = parts[item.index];
            if (part === undefined) return null;
            const isOpen = part.is === "line" && open === part.row.at;
            return (
              <li
                key={item.key}
                ref={lines.measureElement}
                data-index={item.index}
                data-open={part.is === "line" ? isOpen : undefined}
                aria-setsize={parts.length}
                aria-posinset={item.index + 1}
                style={placed(item, top)}
              >
                {draw(part)}
              </li>
            );
          })}
        </ol>
      )}
    </div>
  );
};
