import type { Finding } from "@evenhand/shared/finding";
import type { GradeScale } from "@evenhand/shared/report";
import type { Section } from "@evenhand/shared/sheet";
import { useText } from "../../strings/text";
import { Empty, Panel } from "../../ui/Page";
import { answerWords } from "../../entities/sheet/answer-text";
import { capital, type SheetIndex } from "../../entities/sheet/sheet-index";
import type { Line } from "./reader";
import styles from "./Reader.module.css";

interface Props {
  readonly section: Section;
  readonly index: SheetIndex;
  readonly scales: readonly GradeScale[];
  readonly side: "stated" | "found";
  readonly lines: readonly Line[];
}

type LineProps = Omit<Props, "section" | "lines"> & { readonly line: Line };

/** What is said, and what it rests on. */
const Said = ({ line, index, scales, side, finding }: LineProps & { readonly finding: Finding }) => {
  const t = useText();
  const words = answerWords({ index, item: line.item, scales }, finding.answer);
  const grounds = [
    finding.firmness === "asserted" ? undefined : t(`firmness.${finding.firmness}`),
    t(`basis.${finding.basis}`),
    finding.note,
  ];
  return (
    <td>
      <span className={words.faint === true ? styles.faint : styles[side]} data-code={words.code === true}>
        {words.text}
      </span>
      <span className={styles.grounds}>{grounds.filter((part) => part !== undefined).join(" · ")}</span>
    </td>
  );
};

const ReaderLine = (props: LineProps) => {
  const t = useText();
  const { item, place, finding, withheld } = props.line;
  return (
    <tr>
      <th scope="row">
        {item.words.american}
        {place !== "" && <span className={styles.place}>{place}</span>}
      </th>
      {finding ? (
        <Said {...props} finding={finding} />
      ) : (
        <td className={styles.silent}>{t(withheld ? "reader.withheld" : "reader.silent")}</td>
      )}
    </tr>
  );
};

export const ReaderSection = ({ section, lines, ...rest }: Props) => {
  if (lines.length === 0) return null;
  const name = section.words.american;
  return (
    <Panel title={`${section.number} ${capital(name)}`}>
      <table className={styles.table}>
        <tbody>
          {lines.map((line) => (
            <ReaderLine key={line.key} line={line} {...rest} />
          ))}
        </tbody>
      </table>
    </Panel>
  );
};

/** The lines of a report, section by section. */
export const ReaderLines = (props: Omit<Props, "section">) => {
  const t = useText();
  const { index, lines } = props;
  return (
    <>
      {lines.length === 0 && <Empty title={t("reader.none")} />}
      {index.sheet.sections.map((section) => (
        <ReaderSection
          key={section.id}
          {...props}
          section={section}
          lines={lines.filter(({ item }) => item.section === section.id)}
        />
      ))}
    </>
  );
};
