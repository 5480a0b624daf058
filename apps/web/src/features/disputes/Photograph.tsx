import { useState } from "react";
import { addressOf } from "../../service/client";
import { useText } from "../../strings/text";
import { SmallPicture } from "../../ui/SmallPicture";
import styles from "./Disputes.module.css";

/** A photograph of a thread, small; pressed, it is shown large beside this page. */
export const Photograph = ({ id, name }: { readonly id: string; readonly name: string }) => {
  const t = useText();
  const [gone, setGone] = useState(false);
  if (gone) return <p className={styles.grounds}>{t("settle.photograph.gone")}</p>;
  return (
    <div className={styles.photograph}>
      <SmallPicture
        small={addressOf("releasePictures.small", { id })}
        large={addressOf("releasePictures.large", { id })}
        name={name}
        onError={() => setGone(true)}
      />
    </div>
  );
};
