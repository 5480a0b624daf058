import type { View } from "./index.ts";

/** A value with the function that made it. */
export type Kept<Value = unknown> = { readonly by: (view: View) => unknown; readonly value: Value };

/**
 * A function of a view alone, worked out once for each: what several rules ask of one. The view itself keeps it: a weak map would
 * hold a comparison's views long after everybody was done with them, and with them all they were worked out from.
 *
 * @example onceAView(findPanels)(view) === onceAView(findPanels)(view) // true: kept with the view, by the function that made it
 */
export const onceAView = <Value>(make: (view: View) => Value): ((view: View) => Value) => {
  const isOwn = (kept: Kept): kept is Kept<Value> => kept.by === make;
  return (view) => {
    for (const kept of view.kept) if (isOwn(kept)) return kept.value;
    const value = make(view);
    view.kept.push({ by: make, value });
    return value;
  };
};
