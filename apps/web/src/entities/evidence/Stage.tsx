import { useCallback, type CSSProperties, type ReactNode } from "react";
import { addressOf } from "../../service/client";
import { followHand, type ChangeZoom } from "./follow-hand";
import { usePictureWords } from "./picture-words";
import type { Picture } from "./pictures";
import styles from "./Stage.module.css";
import { styleOf, type Zoom } from "./zoom";

interface Props {
  readonly picture: Picture;
  readonly zoom: Zoom;
  readonly onZoom: ChangeZoom;
  /** Lies over the picture and goes with it. */
  readonly children?: ReactNode;
}

/** From here on the copy for one screen is too coarse. */
const close = 1.3;

/** One picture through its frame: whole, or as much of it as one looks at closer. */
export const Stage = ({ picture, zoom, onZoom, children }: Props) => {
  const words = usePictureWords();
  const frame = useCallback(
    (element: HTMLDivElement | null) => (element === null ? undefined : followHand(element, onZoom)),
    [onZoom],
  );
  const { id, width, height, placeholder } = picture;
  const shape: CSSProperties & Record<"--ratio", number> = {
    "--ratio": (width ?? 4) / (height ?? 3),
    ...styleOf(zoom),
    backgroundImage: placeholder === null ? undefined : `url("${placeholder}")`,
  };
  return (
    <div className={styles.frame} ref={frame} data-side={picture.side}>
      <div className={styles.picture} data-picture style={shape}>
        <img src={addressOf("evidence.medium", { id })} alt={words(picture)} draggable={false} />
        {zoom.scale > close && (
          <img src={addressOf("evidence.large", { id })} alt="" draggable={false} aria-hidden="true" />
        )}
        {children}
      </div>
    </div>
  );
};
