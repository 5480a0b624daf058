import type { HandOverPicture } from "@evenhand/shared/http/hand-overs";
import { useText } from "../../strings/text";
import { SmallPicture } from "../../ui/SmallPicture";
import type { PictureSource } from "./carried-pictures";
import styles from "./Pictures.module.css";

interface Props {
  readonly picture: HandOverPicture;
  readonly source: Pick<PictureSource, "small" | "large" | "here">;
}

/** A picture in words, for who does not see it. */
const usePictureName = ({ stage, place }: HandOverPicture): string => {
  const t = useText();
  return t("hand-over.picture", { stage, place: place === "" ? t("hand-over.picture.whole") : place });
};

/** A photograph, small; pressed, it is shown large beside this page. What cannot be shown says why. */
export const PictureOf = ({ picture, source }: Props) => {
  const t = useText();
  const name = usePictureName(picture);
  if (picture.state === "refused") return <p className={styles.aside}>{picture.refused?.words}</p>;
  const here = source.here?.get(picture.id);
  if (here !== undefined) return <img className={styles.own} src={here} alt={name} />;
  if (picture.state !== "ready") return <p className={styles.aside}>{t("hand-over.picture.preparing")}</p>;
  return <SmallPicture small={source.small(picture.id)} large={source.large(picture.id)} name={name} />;
};
