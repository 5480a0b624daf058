import { useEffect, useState } from "react";
import { flushSync } from "react-dom";

/** Whether the page is being printed: on paper everything stands, in sight or not. */
export const usePrinting = (): boolean => {
  const [printing, setPrinting] = useState(false);
  useEffect(() => {
    const begin = (): void => flushSync(() => setPrinting(true));
    const end = (): void => setPrinting(false);
    globalThis.addEventListener("beforeprint", begin);
    globalThis.addEventListener("afterprint", end);
    return () => {
      globalThis.removeEventListener("beforeprint", begin);
      globalThis.removeEventListener("afterprint", end);
    };
  }, []);
  return printing;
};
