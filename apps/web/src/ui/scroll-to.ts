import { useEffect, useRef } from "react";

/** A page whose address names a line shows that line first. */
export const useFirstScroll = (id: string | undefined): void => {
  const first = useRef(id);
  useEffect(() => {
    if (first.current === undefined) return;
    const line = document.getElementById(first.current);
    requestAnimationFrame(() => line?.scrollIntoView({ block: "start" }));
  }, []);
};
