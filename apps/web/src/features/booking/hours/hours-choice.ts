import { SKILLS } from "@evenhand/shared/terms";
import type { OfferWish } from "../../../entities/appointment/queries";
import { isDate } from "../../../entities/time/is-date";
import { addDays, mondayOf } from "../../../entities/time/zone-time";
import { oneOf } from "../../../service/one-of";
import type { HoursSearch } from "../search";

const LIST_DAYS = 30;

/** What somebody who looks for an hour chooses, one thing at a time. */
export type HoursChoice =
  | { readonly choose: "view"; readonly view: string }
  /** As typed: what is no date yet changes nothing. */
  | { readonly choose: "day"; readonly day: string }
  | { readonly choose: "skill"; readonly skill: string }
  | { readonly choose: "cars"; readonly cars: readonly string[] }
  | { readonly choose: "offer"; readonly offer: string }
  | { readonly choose: "why"; readonly day: string }
  | { readonly choose: "no-why" };

/** The search after a choice. Whatever changes which hours are asked for closes the offer that is open; it may not be among them. */
export const hoursAfter = (search: HoursSearch, choice: HoursChoice): HoursSearch => {
  switch (choice.choose) {
    case "view":
      return { ...search, view: oneOf(["week"], choice.view) };
    case "day":
      return isDate(choice.day) ? { ...search, from: choice.day, offer: undefined } : search;
    case "skill":
      return { ...search, skill: oneOf(SKILLS, choice.skill), offer: undefined };
    case "cars":
      return { ...search, with: choice.cars.join(",") || undefined, offer: undefined };
    case "offer":
      return { ...search, offer: choice.offer };
    case "why":
      return { ...search, why: choice.day };
    case "no-why":
      return { ...search, why: undefined };
  }
};

/** The other cars of the same visit. */
export const otherCars = (search: HoursSearch): readonly string[] => search.with?.split(",") ?? [];

/** The Monday so many weeks from the week of a day: `mondayBeside("2026-12-02", 1)` is `"2026-12-07"`. */
export const mondayBeside = (day: string, weeks: number): string => addDays(mondayOf(day), 7 * weeks);

/** The days asked for: the week of the date, or a month from it. */
const daysOf = (view: HoursSearch["view"], day: string): Pick<OfferWish, "from" | "until"> => {
  if (view === undefined) return { from: day, until: addDays(day, LIST_DAYS - 1) };
  const monday = mondayOf(day);
  return { from: monday, until: addDays(monday, 6) };
};

/** What narrows the hours besides the days. */
export const narrowedBy = (search: HoursSearch): Omit<OfferWish, "from" | "until"> => ({
  with: search.with,
  skills: search.skill,
  moving: search.moving,
});

/** What is asked of the service for a search; `day` is where it begins. */
export const wishOf = (search: HoursSearch, day: string): OfferWish => ({
  ...daysOf(search.view, day),
  ...narrowedBy(search),
});
