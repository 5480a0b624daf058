import { useMatch } from "@tanstack/react-router";
import { createContext, useContext, useEffect, useRef, type RefObject } from "react";

/**
 * Whether the title of the page at this path is awaited after a person went there; asking takes it. The page that is
 * being left may show anew while the next one is fetched: it must not take what the next one is given.
 */
export const TakeAwaitedTitle = createContext<(path: string | undefined) => boolean>(() => false);

/** The title takes the focus once its page is there, as on a page loaded anew; never on the first page. */
export const useTitleFocus = (): RefObject<HTMLHeadingElement | null> => {
  const title = useRef<HTMLHeadingElement>(null);
  const takeAwaited = useContext(TakeAwaitedTitle);
  const path = useMatch({ strict: false, shouldThrow: false, select: ({ pathname }) => pathname });
  useEffect(() => {
    if (takeAwaited(path)) title.current?.focus({ preventScroll: true });
  });
  return title;
};
