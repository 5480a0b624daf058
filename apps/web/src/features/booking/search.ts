import { SKILLS } from "@evenhand/shared/terms";
import { oneOf } from "../../service/one-of";
import { isDate } from "../../entities/time/is-date";
import { text, type RawSearch } from "../../service/search";

export interface HoursSearch {
  readonly view?: "week";
  readonly from?: string;
  readonly skill?: (typeof SKILLS)[number];
  /** Other cars in the same visit, comma-separated. */
  readonly with?: string;
  /** The appointment that is to be moved. */
  readonly moving?: string;
  /** The offer that is open. */
  readonly offer?: string;
  /** The day of which it is shown why hours are not offered. */
  readonly why?: string;
}

const date = (said: unknown): string | undefined => (isDate(said) ? said : undefined);

export const hoursSearch = (raw: RawSearch): HoursSearch => ({
  view: oneOf(["week"], raw["view"]),
  from: date(raw["from"]),
  skill: oneOf(SKILLS, raw["skill"]),
  with: text(raw["with"]),
  moving: text(raw["moving"]),
  offer: text(raw["offer"]),
  why: date(raw["why"]),
});
