import type { Answer } from "@evenhand/shared/page-one";
import { useState } from "react";
import { useText } from "../../../strings/text";
import styles from "./AnswerView.module.css";

interface Props extends Pick<Answer, "claims"> {
  readonly by: string;
}

const FEW = 2;

/**
 * What the car is offered with, claim by claim: struck through where it was not found so, marked where nobody knows. A phone shows
 * those struck through, or the first where none is, and the rest behind a press.
 */
export const DealersLine = ({ claims: { line }, by }: Props) => {
  const t = useText();
  const [all, setAll] = useState(false);
  if (line.length === 0) return null;
  const fell = line.filter(({ became }) => became === "fell").length;
  const first = fell === 0 ? FEW : fell;
  return (
    <section className={styles.said} data-all={all}>
      <h2>{t("answer.line", { by })}</h2>
      <ul>
        {line.map(({ words, became }, at) => (
          <li key={words} data-became={became} data-rest={at >= first}>
            {became === "fell" ? <s>{words}</s> : <span>{words}</span>}
            <small>{t(`answer.claims.${became}`)}</small>
          </li>
        ))}
      </ul>
      {line.length > first && (
        <button type="button" className={styles.rest} aria-expanded={all} onClick={() => setAll(!all)}>
          {all ? t("answer.line.less") : t("answer.line.all", { count: line.length - first })}
        </button>
      )}
    </section>
  );
};
