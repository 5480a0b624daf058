import { useEffect, useRef } from "react";
import { useFirstScroll } from "../../ui/scroll-to";

const openerOf = (line: HTMLElement): HTMLElement | null => line.querySelector("h3 button");

/**
 * Brings the line the address names into sight when the page opens, and a line gone to from another view when it is there, with the
 * focus on it, so that who came by keyboard reads on from there.
 *
 * @param open the line that is open where lines are shown
 * @returns to be called with a line before going to it
 */
export const useOpenLine = (open: number | undefined): ((at: number) => void) => {
  useFirstScroll(open === undefined ? undefined : `entry-${open}`);
  const wanted = useRef<number | null>(null);
  useEffect(() => {
    if (open === undefined || wanted.current !== open) return;
    wanted.current = null;
    const line = document.getElementById(`entry-${open}`);
    if (line === null) return;
    line.scrollIntoView({ block: "center" });
    openerOf(line)?.focus({ preventScroll: true });
  }, [open]);
  return (at) => {
    wanted.current = at;
  };
};
