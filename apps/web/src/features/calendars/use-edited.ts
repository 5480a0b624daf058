import { useState } from "react";

interface Seen {
  readonly revision: number;
}

/**
 * What somebody types over something stored: begun from what is stored, and begun anew when that changes, but not while something
 * typed waits to be saved. A change is meant for the revision it was begun on.
 */
export const useEdited = <S extends Seen, T>(seen: S, begin: (seen: S) => T) => {
  const [revision, setRevision] = useState(seen.revision);
  const [typed, setTyped] = useState(() => begin(seen));
  const [touched, setTouched] = useState(false);
  if (!touched && seen.revision !== revision) {
    setRevision(seen.revision);
    setTyped(begin(seen));
  }
  return {
    revision,
    typed,
    touched,
    change: (next: T): void => {
      setTyped(next);
      setTouched(true);
    },
    /** What was typed is stored. */
    settle: (): void => setTouched(false),
  };
};
