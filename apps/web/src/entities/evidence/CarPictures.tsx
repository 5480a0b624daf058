import type { ReactNode } from "react";
import styles from "./CarPictures.module.css";
import { addressOf } from "../../service/client";
import { usePictureWords } from "./picture-words";
import { byPlace, isShown, type Picture } from "./pictures";

interface Props {
  /** As far as they have come; nothing is shown before. */
  readonly pictures: readonly Picture[] | undefined;
  /** Leads to all of them. */
  readonly children: ReactNode;
}

/** As many stand beside the car's name. */
const FEW = 3;
const none: readonly never[] = [];

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
export const CarPictures = ({ pictures = none, children }: Props) => {
  const shown = byPlace(pictures, none).flatMap(({ pictures: here }) => here.filter(isShown));
  if (shown.length === 0) return null;
  return (
    <div className={`${styles.pictures} no-print`}>
      {shown.slice(0, FEW).map((one) => (
        <Small key={one.id} picture={one} />
      ))}
      <p>{children}</p>
    </div>
  );
};
