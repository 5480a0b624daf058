import type { Answer } from "@evenhand/shared/answer";
import type { FindingInput } from "@evenhand/shared/finding";
import type { Item } from "@evenhand/shared/sheet";
import type { CarriedSheet } from "./carried-sheet";

export const placeKey = (item: string, position: string): string => `${item} ${position}`;

/** At a place where something was found, what was not noted is said not to be there. */
const whole = (answer: Answer, item: Item | undefined): Answer => {
  if (answer.kind !== "faults" || answer.found.length === 0) return answer;
  const kinds = item?.faults?.kinds ?? [];
  return { ...answer, denied: kinds.filter((kind) => !answer.found.some((each) => each.kind === kind)) };
};

/** The findings that are sent, from what was said and noted. */
export const findingsOf = (
  { said, notes }: Pick<CarriedSheet, "said" | "notes">,
  items: ReadonlyMap<string, Item>,
): FindingInput[] =>
  Object.entries(said).map(([key, answer]) => {
    const [item = "", position = ""] = key.split(" ");
    const note = notes[key]?.trim() ?? "";
    return { item, position, answer: whole(answer, items.get(item)), ...(note === "" ? {} : { note }) };
  });
