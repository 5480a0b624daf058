import type { Answer } from "@evenhand/shared/answer";
import type { FindingInput } from "@evenhand/shared/finding";
import type { Item } from "@evenhand/shared/sheet";

/** What was said of each place, by item and position. */
export type Said = Readonly<Record<string, Answer>>;

export const placeKey = (item: string, position: string): string => `${item} ${position}`;

/** At a place where something was found, what was not noted is said not to be there. */
const whole = (answer: Answer, item: Item | undefined): Answer => {
  if (answer.kind !== "faults" || answer.found.length === 0) return answer;
  const kinds = item?.faults?.kinds ?? [];
  return { ...answer, denied: kinds.filter((kind) => !answer.found.some((each) => each.kind === kind)) };
};

/** The findings that are sent, from what was said. */
export const findingsOf = (said: Said, items: ReadonlyMap<string, Item>): FindingInput[] =>
  Object.entries(said).map(([key, answer]) => {
    const [item = "", position = ""] = key.split(" ");
    return { item, position, answer: whole(answer, items.get(item)) };
  });
