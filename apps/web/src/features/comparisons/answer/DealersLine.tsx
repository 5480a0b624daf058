import type { Answer } from "@evenhand/shared/page-one";
import { useText } from "../../../strings/text";
import styles from "./AnswerView.module.css";

interface Props extends Pick<Answer, "claims"> {
  readonly by: string;
}

/** What the car is offered with, claim by claim: struck through where it was not found so, marked where nobody knows. */
export const DealersLine = ({ claims, by }: Props) => {
  const t = useText();
  if (claims.line.length === 0) return null;
  return (
    <section className={styles.said}>
      <h2>{t("answer.line", { by })}</h2>
      <ul>
        {claims.line.map(({ words, became }) => (
          <li key={words} data-became={became}>
            {became === "fell" ? <s>{words}</s> : <span>{words}</span>}
            <small>{t(`answer.claims.${became}`)}</small>
          </li>
        ))}
      </ul>
    </section>
  );
};
