import { panBy, zoomBy, type Zoom } from "./zoom";

interface Point {
  readonly x: number;
  readonly y: number;
}

/** Changes what is seen, from how it stands. */
export type ChangeZoom = (step: (now: Zoom) => Zoom) => void;

/** How much closer a turn of the wheel by one line or pixel looks. */
const perPixel = 0.0015;
const perLine = 0.03;

const middle = (points: readonly Point[]): Point => ({
  x: points.reduce((sum, { x }) => sum + x, 0) / points.length,
  y: points.reduce((sum, { y }) => sum + y, 0) / points.length,
});

const apart = ([one, other]: readonly Point[]): number =>
  one === undefined || other === undefined ? 0 : Math.hypot(one.x - other.x, one.y - other.y);

/** What two fingers or one did between two moments. */
const moved =
  (before: readonly Point[], after: readonly Point[], of: DOMRect) =>
  (now: Zoom): Zoom => {
    const [from, to] = [middle(before), middle(after)];
    const panned = panBy(now, (to.x - from.x) / of.width, (to.y - from.y) / of.height);
    const [was, is] = [apart(before), apart(after)];
    return was > 0 && is > 0 ? zoomBy(panned, is / was, placeIn(of, to)) : panned;
  };

const placeIn = (of: DOMRect, { x, y }: Point): Point => ({
  x: (x - of.left) / of.width,
  y: (y - of.top) / of.height,
});

/**
 * Lets a hand look closer into a picture: the wheel, two fingers, and moving what is seen with one or the mouse.
 *
 * @param frame what the picture is seen through; the picture in it is marked `data-picture`
 * @returns ends it
 */
export const followHand = (frame: HTMLElement, change: ChangeZoom): (() => void) => {
  const down = new Map<number, Point>();
  const seen = (): DOMRect => (frame.querySelector("[data-picture]") ?? frame).getBoundingClientRect();
  const ending = new AbortController();
  const turn = (event: WheelEvent): void => {
    event.preventDefault();
    const per = event.deltaMode === WheelEvent.DOM_DELTA_PIXEL ? perPixel : perLine;
    const place = placeIn(seen(), { x: event.clientX, y: event.clientY });
    change((now) => zoomBy(now, Math.exp(-event.deltaY * per), place));
  };
  const press = (event: PointerEvent): void => {
    // Who draws does not move the picture.
    if (event.target instanceof Element && event.target.closest("[data-draw]") !== null) return;
    frame.setPointerCapture(event.pointerId);
    down.set(event.pointerId, { x: event.clientX, y: event.clientY });
  };
  const move = (event: PointerEvent): void => {
    if (!down.has(event.pointerId)) return;
    const before = [...down.values()];
    down.set(event.pointerId, { x: event.clientX, y: event.clientY });
    change(moved(before, [...down.values()], seen()));
  };
  const lift = (event: PointerEvent): void => void down.delete(event.pointerId);
  const { signal } = ending;
  frame.addEventListener("wheel", turn, { passive: false, signal });
  frame.addEventListener("pointerdown", press, { signal });
  frame.addEventListener("pointermove", move, { signal });
  for (const end of ["pointerup", "pointercancel"] as const) frame.addEventListener(end, lift, { signal });
  return () => ending.abort();
};
