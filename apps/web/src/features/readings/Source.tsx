import { clockOf } from "@evenhand/captions/draft-report";
import { useText } from "../../strings/text";
import type { Block, Proposal } from "./review";
import styles from "./Review.module.css";
import { videoSecond } from "./video-second";

interface Props {
  readonly block: Block;
  readonly address: string;
  readonly selected: string | undefined;
  readonly onSelect: (key: string) => void;
}

interface Stretch {
  readonly from: number;
  readonly text: string;
  readonly of: Proposal | undefined;
}

/** The text cut where words begin and end that something was made of; of words that serve for several, the selected one's. */
const stretchesOf = ({ text, start, proposals }: Block, selected: string | undefined): readonly Stretch[] => {
  const edges = proposals.flatMap(({ said }) =>
    said === null ? [] : [said.start - start, said.end - start],
  );
  const cuts = [
    ...new Set([0, ...edges.filter((edge) => edge > 0 && edge < text.length), text.length]),
  ].toSorted((a, b) => a - b);
  return cuts.slice(0, -1).map((from, at) => {
    const covering = proposals.filter(
      ({ said }) => said !== null && said.start - start <= from && said.end - start > from,
    );
    return {
      from,
      text: text.slice(from, cuts[at + 1]),
      of: covering.find(({ key }) => key === selected) ?? covering[0],
    };
  });
};

const Where = ({ block: { second, row }, address }: Pick<Props, "block" | "address">) => {
  const t = useText();
  if (row !== null)
    return <span className={styles.where}>{row.grid === "" ? row.number : t("reading.row", row)}</span>;
  if (second === null) return null;
  const link = videoSecond(address, second);
  return (
    <span className={styles.where}>
      {link === undefined ? (
        clockOf(second)
      ) : (
        <a
          href={link}
          target="_blank"
          rel="noopener noreferrer"
          aria-label={t("reading.watch", { time: clockOf(second) })}
        >
          {clockOf(second)}
        </a>
      )}
    </span>
  );
};

type WordsProps = Pick<Props, "selected" | "onSelect"> & { readonly stretch: Stretch };

/** Words that something was made of; the keys walk the findings, this is for whoever points. */
const Words = ({ stretch: { text, of }, selected, onSelect }: WordsProps) =>
  of === undefined ? (
    <span>{text}</span>
  ) : (
    <a
      href={`#proposal-${of.key}`}
      tabIndex={-1}
      className={styles.words}
      data-selected={of.key === selected}
      onClick={(event) => {
        event.preventDefault();
        onSelect(of.key);
      }}
    >
      {text}
    </a>
  );

const wholeRow = ({ text, proposals }: Block, selected: string | undefined): Stretch => ({
  from: 0,
  text,
  of: proposals.find(({ key }) => key === selected) ?? proposals[0],
});

/** What was said or written, as it stands; pressing it leads to what was made of it. */
export const Source = ({ block, address, selected, onSelect }: Props) => {
  const stretches = block.row === null ? stretchesOf(block, selected) : [wholeRow(block, selected)];
  return (
    <div className={styles.source}>
      <Where block={block} address={address} />
      <p>
        {stretches.map((stretch) => (
          <Words key={stretch.from} stretch={stretch} selected={selected} onSelect={onSelect} />
        ))}
      </p>
    </div>
  );
};
