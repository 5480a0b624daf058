import { type Entry, isUnjudged } from "@evenhand/shared/comparison";
import type { Item } from "@evenhand/shared/sheet";

/** Items of the identity section that are read on the car and not on paper. */
const ON_THE_CAR: ReadonlySet<string> = new Set([
  "identity.vin",
  "identity.plate-fixing",
  "identity.stamping-surface",
  "identity.engine-number",
  "identity.partial-vin",
  "identity.casting-number",
  "identity.date-code",
  "identity.originality",
  "identity.paint-code",
  "identity.trim-code",
  "identity.build-date",
  "identity.axle-code",
  "identity.gearbox-code",
  "identity.market-label",
  "identity.odometer",
  "identity.keys",
  "identity.claimed-model",
  "identity.options",
  "identity.pad",
  "identity.gearbox-kind",
]);

/** Why the inspector did not see it, where that says what it needs. */
const MUST_BE_OPENED: ReadonlySet<string> = new Set([
  "not-seen-needs-dismantling",
  "not-seen-not-permitted",
  "not-seen-covered",
]);

/** What an item needs whatever was answered there; `undefined` where the answer can say more. */
export const fixedNeed = ({ id, section, needs }: Item): string | undefined => {
  if (section === "identity") return ON_THE_CAR.has(id) ? "unseen-numbers" : "unseen-papers";
  if (needs.includes("road") || section === "road") return "unseen-road";
  return needs.includes("dismantling") || needs.includes("permission") ? "unseen-opened" : undefined;
};

/** What an item needs where nothing was in the way. */
export const looseNeed = ({ section, needs }: Item): string => {
  if (needs.includes("lift") || section === "underbody") return "unseen-lift";
  return needs.includes("cold-engine") || needs.includes("hot-engine") ? "unseen-running" : "unseen-looking";
};

/** Whether the reason why it was not seen says that something had to be opened. */
export const mustBeOpened = ({ reason }: Entry): boolean => MUST_BE_OPENED.has(reason);

/**
 * What it would have needed to know: the id of the kind of matter that holds what nobody knows for that reason.
 *
 * @example needOf({ ...entry, item: "underbody.inner-rockers" }, innerRockers) // "unseen-lift"
 */
export const needOf = (entry: Entry, item: Item): string => {
  if (isUnjudged(entry)) return "no-yardstick";
  return fixedNeed(item) ?? (mustBeOpened(entry) ? "unseen-opened" : looseNeed(item));
};
