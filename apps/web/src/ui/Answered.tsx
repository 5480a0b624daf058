import { useEffect, useRef, type ReactNode } from "react";
import { Notice } from "./Notice";

interface Props {
  readonly title: ReactNode;
  readonly children?: ReactNode;
}

/** Says what a deed did and what comes next, where the eye is: it comes into sight and takes the focus. */
export const Answered = ({ title, children }: Props) => {
  const place = useRef<HTMLOutputElement>(null);
  useEffect(() => {
    place.current?.focus({ preventScroll: true });
    place.current?.scrollIntoView({ block: "center" });
  }, []);
  return (
    <output className="no-print" ref={place} tabIndex={-1} style={{ display: "block", outlineOffset: "3px" }}>
      <Notice kind="note" title={title}>
        {children}
      </Notice>
    </output>
  );
};
