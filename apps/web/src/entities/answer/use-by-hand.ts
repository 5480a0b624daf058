import { useRef, type MouseEvent } from "react";

/**
 * Tells a choice made with finger or mouse, which may lead on to the next line, from one that an arrow key came by on its way.
 * `props` go on the label round the field; `taken()` says of the change that follows whose it was.
 */
export const useByHand = () => {
  const byHand = useRef(false);
  return {
    props: {
      onClick: ({ detail }: MouseEvent) => {
        if (detail > 0) byHand.current = true;
      },
      onKeyDown: () => {
        byHand.current = false;
      },
    },
    taken: (): boolean => {
      const was = byHand.current;
      byHand.current = false;
      return was;
    },
  };
};
