import type { Item } from "@evenhand/shared/sheet";

type Value = "present" | "absent" | "not-known";

/**
 * What present and absent are called where the item has words of its own: a battery is on a charger or off it, an engine was warmed
 * or not. `undefined` where the plain words do, and where it is not known.
 *
 * @example presenceWords(batteryOnCharger, "absent") // "off a charger"
 */
export const presenceWords = (item: Pick<Item, "presence"> | undefined, value: Value): string | undefined =>
  value === "not-known" ? undefined : item?.presence?.said?.[value].american;
