import type { View } from "./index.ts";

/**
 * A function of a view alone, worked out once for each: what several rules ask of one.
 *
 * @example onceAView(findPanels)(view) === onceAView(findPanels)(view) // false: kept by the function that was made
 */
export const onceAView = <Value>(make: (view: View) => Value): ((view: View) => Value) => {
  const kept = new WeakMap<View, { readonly value: Value }>();
  return (view) => {
    const known = kept.get(view);
    if (known !== undefined) return known.value;
    const value = make(view);
    kept.set(view, { value });
    return value;
  };
};
