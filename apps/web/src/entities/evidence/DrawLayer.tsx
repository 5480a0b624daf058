import { useRef, type PointerEvent } from "react";
import type { Spot } from "./marks";
import styles from "./Marks.module.css";

interface Props {
  readonly onDraw: (from: Spot, to: Spot) => void;
}

const spotOf = (event: PointerEvent<HTMLDivElement>): Spot => {
  const { left, top, width, height } = event.currentTarget.getBoundingClientRect();
  return { x: (event.clientX - left) / width, y: (event.clientY - top) / height };
};

/** Takes strokes over a picture. While one draws, the hand does not move what is seen. */
export const DrawLayer = ({ onDraw }: Props) => {
  const from = useRef<Spot | null>(null);
  return (
    <div
      className={styles.draw}
      data-draw
      onPointerDown={(event) => {
        event.currentTarget.setPointerCapture(event.pointerId);
        from.current = spotOf(event);
      }}
      onPointerUp={(event) => {
        if (from.current !== null) onDraw(from.current, spotOf(event));
        from.current = null;
      }}
      onPointerCancel={() => {
        from.current = null;
      }}
    />
  );
};
