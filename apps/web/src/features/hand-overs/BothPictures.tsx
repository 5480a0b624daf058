import type { HandOverLineSeen, HandOverPicture, HandOverStage } from "@evenhand/shared/http/hand-overs";
import { addressOf } from "../../service/client";
import { useText } from "../../strings/text";
import { isAt, type PictureSource } from "./carried-pictures";
import { PictureOf } from "./PictureOf";
import styles from "./Pictures.module.css";

/** A hand-over's pictures as a person who is signed in is shown them. */
export const ownSource = (pictures: readonly HandOverPicture[]): PictureSource => ({
  pictures,
  small: (id) => addressOf("handOverPictures.small", { id }),
  large: (id) => addressOf("handOverPictures.large", { id }),
});

interface Props {
  readonly source: PictureSource;
  readonly line: Pick<HandOverLineSeen, "item" | "position">;
}

const Side = ({ source, line: { item, position }, stage }: Props & { readonly stage: HandOverStage }) => {
  const t = useText();
  const here = source.pictures.filter((one) => isAt(one, { stage, item, position }));
  const ofWhole = source.pictures.some((one) => isAt(one, { stage, item: "", position: "" }));
  return (
    <figure className={styles.side}>
      <figcaption>{t(`hand-over.at.${stage}`)}</figcaption>
      {here.map((picture) => (
        <PictureOf key={picture.id} picture={picture} source={source} />
      ))}
      {here.length === 0 && (
        <p className={styles.aside}>
          {t(ofWhole ? "hand-over.photograph-of-whole" : "hand-over.no-photograph")}
        </p>
      )}
    </figure>
  );
};

/** A place as it was photographed when the car left and when it arrived, side by side; a side without a photograph says so. */
export const BothPictures = (props: Props) => (
  <div className={styles.both}>
    {(["collection", "delivery"] as const).map((stage) => (
      <Side key={stage} {...props} stage={stage} />
    ))}
  </div>
);

interface AllProps {
  readonly source: PictureSource;
  readonly stage: HandOverStage;
  /** The files as they were sent, for whom they belong to. */
  readonly originals?: boolean;
}

/** All photographs of one report, each with its place. */
export const ReportPictures = ({ source, stage, originals = false }: AllProps) => {
  const t = useText();
  const all = source.pictures.filter((one) => one.stage === stage);
  if (all.length === 0) return <p className={styles.aside}>{t("hand-over.photographs.none")}</p>;
  return (
    <>
      <h3>{t("hand-over.photographs")}</h3>
      <ul className={styles.row}>
        {all.map((picture) => (
          <li key={picture.id}>
            <PictureOf picture={picture} source={source} />
            <span className={styles.aside}>{picture.place || t("hand-over.picture.whole")}</span>
            {originals && picture.state !== "refused" && (
              <a className={styles.aside} href={addressOf("handOverPictures.original", { id: picture.id })}>
                {t("hand-over.picture.original")}
              </a>
            )}
          </li>
        ))}
      </ul>
    </>
  );
};
