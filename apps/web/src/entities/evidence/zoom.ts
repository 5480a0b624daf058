/** What of a picture is seen: how much larger than whole, and which place of it stands in the middle, from 0 to 1 across and down. */
export interface Zoom {
  readonly scale: number;
  readonly x: number;
  readonly y: number;
}

export const WHOLE: Zoom = { scale: 1, x: 0.5, y: 0.5 };
/** A telephone's photograph stands pixel for pixel long before. */
export const MOST = 12;
/** One press of a button or key. */
export const STEP = 1.5;

const within = (value: number, least: number, most: number): number => Math.min(most, Math.max(least, value));

/** The picture never leaves its frame: what is seen lies within it. */
const kept = ({ scale, x, y }: Zoom): Zoom => {
  const reach = 0.5 / scale;
  return { scale, x: within(x, reach, 1 - reach), y: within(y, reach, 1 - reach) };
};

/**
 * Larger or smaller by a factor, so that the place named stays where it is seen.
 *
 * @param at a place of the picture, 0 to 1 across and down; the middle of what is seen where none is named
 * @example zoomBy(WHOLE, 2, { x: 0.5, y: 0.5 }) // { scale: 2, x: 0.5, y: 0.5 }
 */
export const zoomBy = (
  zoom: Zoom,
  factor: number,
  at: { readonly x: number; readonly y: number } = zoom,
): Zoom => {
  const scale = within(zoom.scale * factor, 1, MOST);
  const share = zoom.scale / scale;
  return kept({ scale, x: at.x + (zoom.x - at.x) * share, y: at.y + (zoom.y - at.y) * share });
};

/**
 * Moves the picture under the hand.
 *
 * @param right and `down`: by which share of the picture as large as it is shown
 */
export const panBy = (zoom: Zoom, right: number, down: number): Zoom =>
  kept({ ...zoom, x: zoom.x - right, y: zoom.y - down });

/** As CSS has it, for a picture that fills its frame at scale 1. */
export const styleOf = ({ scale, x, y }: Zoom): { readonly translate: string; readonly scale: number } => ({
  translate: `${(0.5 - x) * scale * 100}% ${(0.5 - y) * scale * 100}%`,
  scale,
});
