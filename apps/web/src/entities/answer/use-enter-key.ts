import { useEffect, useRef } from "react";
import { typedField } from "./typed-field";

/** The enter key goes from field to field of an answer, and from its last one on to the next line. The ref goes round its fields. */
export const useEnterKey = (onNext: () => void) => {
  const fields = useRef<HTMLDivElement>(null);
  const next = useRef(onNext);
  useEffect(() => {
    next.current = onNext;
  }, [onNext]);
  useEffect(() => {
    const { current } = fields;
    const goOn = (event: KeyboardEvent): void => {
      if (event.key !== "Enter" || !(event.target instanceof HTMLInputElement)) return;
      const all = [...(current?.querySelectorAll<HTMLInputElement>(typedField) ?? [])];
      const at = all.indexOf(event.target);
      if (at === -1) return;
      event.preventDefault();
      const after = all[at + 1];
      if (after) after.focus();
      else next.current();
    };
    current?.addEventListener("keydown", goOn);
    return () => current?.removeEventListener("keydown", goOn);
  }, []);
  return fields;
};
