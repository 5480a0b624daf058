import { useState } from "react";

interface Seen {
  readonly revision: number;
}

/**
 * What somebody types over something stored: begun from what is stored, and begun anew when that changes, but not while something
 * typed waits to be saved. A change is meant for the revision it was begun on.
 */
export const useEdited = <S extends Seen, T>(seen: S, begin: (seen: S) => T) => {
  const [state, setState] = useState(() => ({
    revision: seen.revision,
    typed: begin(seen),
    touched: false,
  }));
  if (!state.touched && seen.revision !== state.revision) {
    setState({ revision: seen.revision, typed: begin(seen), touched: false });
  }
  return {
    ...state,
    change: (typed: T): void => setState((now) => ({ ...now, typed, touched: true })),
    /** What was typed is stored. */
    settle: (): void => setState((now) => ({ ...now, touched: false })),
    /** What was sent is stored at that revision; what was typed since waits to be saved over it. */
    settleSent: (sent: T, revision: number): void =>
      setState((now) =>
        now.typed === sent ? { ...now, touched: false } : { ...now, revision, touched: true },
      ),
  };
};
