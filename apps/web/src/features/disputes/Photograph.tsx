import { useState } from "react";
import { addressOf } from "../../service/client";
import { useText } from "../../strings/text";
import styles from "./Disputes.module.css";

/** A photograph of a thread, small; pressed, it is shown large beside this page. */
export const Photograph = ({ id, name }: { readonly id: string; readonly name: string }) => {
  const t = useText();
  const [gone, setGone] = useState(false);
  if (gone) return <p className={styles.grounds}>{t("settle.photograph.gone")}</p>;
  return (
    <a
      className={styles.photograph}
      href={addressOf("releasePictures.large", { id })}
      target="_blank"
      rel="noreferrer"
    >
      <img
        src={addressOf("releasePictures.small", { id })}
        alt={name}
        loading="lazy"
        decoding="async"
        width={400}
        height={300}
        onError={() => setGone(true)}
      />
    </a>
  );
};
