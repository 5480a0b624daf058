import { createContext, useContext, useEffect, useRef, type RefObject } from "react";

/** Whether a title is awaited after a person went to another page; asking takes it. */
export const TakeAwaitedTitle = createContext<() => boolean>(() => false);

/** The title takes the focus once its page is there, as on a page loaded anew; never on the first page. */
export const useTitleFocus = (): RefObject<HTMLHeadingElement | null> => {
  const title = useRef<HTMLHeadingElement>(null);
  const takeAwaited = useContext(TakeAwaitedTitle);
  useEffect(() => {
    if (takeAwaited()) title.current?.focus({ preventScroll: true });
  });
  return title;
};
