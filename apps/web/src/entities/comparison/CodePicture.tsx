import type { CodeFigures } from "@evenhand/shared/comparison";
import { useText } from "../../strings/text";
import styles from "./CodePicture.module.css";

const Code = ({
  text,
  differsAt,
  label,
}: {
  readonly text: string;
  readonly differsAt: readonly number[];
  readonly label: string;
}) => (
  <div className={styles.line}>
    <span className={styles.label}>{label}</span>
    <code className={styles.code}>
      {text
        .split("")
        .map((letter, at) =>
          differsAt.includes(at) ? <mark key={at}>{letter}</mark> : <span key={at}>{letter}</span>,
        )}
    </code>
  </div>
);

/** Both codes letter under letter, with the places where they part marked. */
export const CodePicture = ({ figures }: { readonly figures: CodeFigures }) => {
  const t = useText();
  return (
    <div className={styles.codes}>
      <Code text={figures.a} differsAt={figures.differsAt} label={t("side.stated")} />
      <Code text={figures.b} differsAt={figures.differsAt} label={t("side.found")} />
      {figures.passes !== null && <p className={styles.passes}>{t(`code.passes.${figures.passes}`)}</p>}
    </div>
  );
};
