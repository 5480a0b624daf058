import { figureBefore } from "../read-value/numbers.ts";
import type { Asked } from "./context.ts";

const AGES: readonly (readonly [least: number, option: string])[] = [
  [10.01, "over-ten-years"],
  [6.01, "over-six-years"],
  [3, "three-to-six-years"],
  [1, "under-three-years"],
  [0, "new"],
];

/** "8 years", "10+ yrs" of a tire. */
export const ageOption = ({ item, value }: Pick<Asked, "item" | "value">): string | undefined => {
  if (item.id !== "wheels.tire-age") return undefined;
  const said =
    /^(?<over>over|more than|>)?\s*(?<years>\d{1,2}(?:\.\d)?)\s*(?<plus>\+)?\s*(?:y|yr|yrs|year|years)\b/i.exec(
      figureBefore(value.text.trim(), (stem) => stem === "year"),
    )?.groups;
  if (said?.["years"] === undefined) return undefined;
  const years = Number(said["years"]) + (said["over"] === undefined && said["plus"] === undefined ? 0 : 0.1);
  return AGES.find(([least]) => years >= least)?.[1];
};
