import { HOUSE_GRADES } from "@evenhand/shared/terms";
import type { GradeFigures } from "@evenhand/shared/comparison";
import { useText } from "../../strings/text";
import styles from "./GradePicture.module.css";

const stretch = ([low, high]: readonly [number, number]) => ({
  left: `${low * 100}%`,
  width: `${Math.max(1, (high - low) * 100)}%`,
});

/** Where both grades lie on the house's five words for wear. No number is shown: the stretch is internal. */
export const GradePicture = ({ figures }: { readonly figures: GradeFigures }) => {
  const t = useText();
  return (
    <figure className={styles.figure}>
      <div className={styles.lanes} aria-hidden="true">
        <span className={styles.stated} style={stretch(figures.a)} />
        <span className={styles.found} style={stretch(figures.b)} />
      </div>
      <div className={styles.steps}>
        {HOUSE_GRADES.map((step) => (
          <span key={step}>{t(`grade.${step}`)}</span>
        ))}
      </div>
      <figcaption className={styles.caption}>{t("grade.picture")}</figcaption>
    </figure>
  );
};
