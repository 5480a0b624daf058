import type { PictureMark } from "@evenhand/shared/evidence";

/** What is drawn with. */
export type MarkTool = PictureMark["kind"];
export const MARK_TOOLS: readonly MarkTool[] = ["circle", "arrow", "text"];

/** A place on a picture: from 0 to 1 across and down. */
export interface Spot {
  readonly x: number;
  readonly y: number;
}

/** A press without a stroke draws one of a usual size. */
const usualRadius = 0.08;
const usualArrow = { x: 0.12, y: 0.12 };
const shortest = 0.01;

/** A ten-thousandth of a picture is finer than anybody points. */
const share = (value: number): number => Math.round(Math.min(1, Math.max(0, value)) * 10_000) / 10_000;
const spot = ({ x, y }: Spot): Spot => ({ x: share(x), y: share(y) });

/**
 * The circle or arrow of a stroke: a circle grows from where the stroke begins, an arrow points to where it ends. A press draws one of
 * a usual size, whose arrow points to the press.
 *
 * @param ratio the picture's width by its height, so that a circle is round
 * @example strokeMark("circle", { x: 0.5, y: 0.5 }, { x: 0.75, y: 0.5 }, 4 / 3) // { kind: "circle", x: 0.5, y: 0.5, radius: 0.25 }
 */
export const strokeMark = (kind: "circle" | "arrow", from: Spot, to: Spot, ratio: number): PictureMark => {
  const length = Math.hypot(to.x - from.x, (to.y - from.y) / ratio);
  const isPress = length < shortest;
  if (kind === "circle") return { kind, ...spot(from), radius: share(isPress ? usualRadius : length) };
  const begin = isPress
    ? {
        x: to.x > 0.5 ? to.x - usualArrow.x : to.x + usualArrow.x,
        y: to.y > 0.5 ? to.y - usualArrow.y : to.y + usualArrow.y,
      }
    : from;
  const [start, end] = [spot(begin), spot(to)];
  return { kind, ...start, toX: end.x, toY: end.y };
};

export const textMark = (at: Spot, words: string): PictureMark => ({ kind: "text", ...spot(at), words });
