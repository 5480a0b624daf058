import { type RefObject, useLayoutEffect, useRef } from "react";

/**
 * Keeps what has the focus below a list in the window while the list above it grows: lines are measured as they come into sight,
 * and who went on with the keys to the button after them would see it pushed out. What had left the window before is let go.
 */
export const useFocusBelow = (list: RefObject<HTMLElement | null>, height: number): void => {
  const before = useRef(height);
  useLayoutEffect(() => {
    const grown = height - before.current;
    before.current = height;
    const held = document.activeElement;
    if (grown === 0 || list.current === null || held === null) return;
    const isBelow =
      (list.current.compareDocumentPosition(held) & Node.DOCUMENT_POSITION_FOLLOWING) !== 0 &&
      !list.current.contains(held);
    const { top, bottom } = held.getBoundingClientRect();
    const wasInSight = bottom - grown > 0 && top - grown < globalThis.innerHeight;
    if (isBelow && wasInSight) held.scrollIntoView({ block: "nearest" });
  }, [list, height]);
};
