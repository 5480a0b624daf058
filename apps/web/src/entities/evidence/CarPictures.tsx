import { useQuery } from "@tanstack/react-query";
import type { ReactNode } from "react";
import { useText } from "../../strings/text";
import styles from "./CarPictures.module.css";
import { addressOf } from "../../service/client";
import { usePictureWords } from "./picture-words";
import { byPlace, isShown, type Picture } from "./pictures";
import type { carEvidenceQuery, caseEvidenceQuery } from "./queries";

interface Props {
  readonly query: ReturnType<typeof carEvidenceQuery> | ReturnType<typeof caseEvidenceQuery>;
  /** Leads to all of them; its words are given. */
  readonly link: (words: string) => ReactNode;
}

/** As many stand beside the car's name. */
const FEW = 3;

const Small = ({ picture }: { readonly picture: Picture }) => {
  const words = usePictureWords();
  return (
    <img
      src={addressOf("evidence.small", { id: picture.id })}
      alt={words(picture)}
      data-side={picture.side}
      loading="lazy"
      decoding="async"
      width={160}
      height={120}
    />
  );
};

/** A car as its photographs show it: a few, the whole car first, and the way to all of them. Nothing where there is none. */
export const CarPictures = ({ query, link }: Props) => {
  const t = useText();
  const { data = [] } = useQuery<Picture[]>(query);
  const shown = byPlace(data, []).flatMap(({ pictures }) => pictures.filter(isShown));
  if (shown.length === 0) return null;
  return (
    <div className={`${styles.pictures} no-print`}>
      {shown.slice(0, FEW).map((one) => (
        <Small key={one.id} picture={one} />
      ))}
      <p>{link(t("evidence.all", { count: data.length }))}</p>
    </div>
  );
};
