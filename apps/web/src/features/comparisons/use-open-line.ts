import { type RefObject, useEffect, useRef } from "react";

const openerOf = (at: number): HTMLElement | null =>
  document.querySelector<HTMLElement>(`#entry-${at} h3 button`);
/** Frames in which a line gone to must have been drawn. */
const FRAMES = 30;

/** Puts the focus on a line as soon as it is drawn. */
const focusWhenDrawn = (at: number, left = FRAMES): void => {
  const opener = openerOf(at);
  if (opener !== null) opener.focus({ preventScroll: true });
  else if (left > 0) requestAnimationFrame(() => focusWhenDrawn(at, left - 1));
};

/**
 * Brings the line the address names into sight when the list opens; one gone to from another view takes the focus, so that who came
 * by keyboard reads on from there.
 *
 * @param open the line that is open
 * @param goTo the line somebody went to from another view, if one
 * @param show brings a line into sight
 */
export const useOpenLine = (
  open: number | undefined,
  goTo: RefObject<number | null>,
  show: (at: number) => void,
): void => {
  const first = useRef(open);
  useEffect(() => {
    const at = first.current;
    if (at === undefined) return;
    const frame = requestAnimationFrame(() => {
      first.current = undefined;
      show(at);
      if (goTo.current === at) focusWhenDrawn(at);
      goTo.current = null;
    });
    return () => cancelAnimationFrame(frame);
  }, [goTo, show]);
};
