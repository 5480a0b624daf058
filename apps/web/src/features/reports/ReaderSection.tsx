import type { GradeScale } from "@evenhand/shared/report";
import type { Section } from "@evenhand/shared/sheet";
import { useText } from "../../strings/text";
import { Panel } from "../../ui/Page";
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

const ReaderLine = ({
  line,
  index,
  scales,
  side,
}: Omit<Props, "section" | "lines"> & { readonly line: Line }) => {
  const t = useText();
  const { finding } = line;
  const words = finding && answerWords({ index, item: line.item, scales }, finding.answer);
  const grounds = finding && [
    finding.firmness === "asserted" ? null : t(`firmness.${finding.firmness}`),
    t(`basis.${finding.basis}`),
    finding.note,
  ];
  return (
    <tr>
      <th scope="row">
        {line.item.words.american}
        {line.place !== "" && <span className={styles.place}>{line.place}</span>}
      </th>
      {words ? (
        <td>
          <span
            className={words.faint === true ? styles.faint : styles[side]}
            data-code={words.code === true}
          >
            {words.text}
          </span>
          <span className={styles.grounds}>
            {grounds?.filter((part) => part !== null && part !== undefined).join(" · ")}
          </span>
        </td>
      ) : (
        <td className={styles.silent}>{t(line.withheld ? "reader.withheld" : "reader.silent")}</td>
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
