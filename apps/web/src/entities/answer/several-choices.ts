import type { AnswerOf } from "@evenhand/shared/answer";
import type { Item } from "@evenhand/shared/sheet";

type Choice = AnswerOf<"choice">;

export const chosenOptions = (answer: Choice | undefined): readonly string[] =>
  answer === undefined ? [] : [answer.option, ...(answer.also ?? [])];

/** "None", "straight", "not known": nothing else is true beside it. */
export const standsAlone = (item: Pick<Item, "choice">, id: string): boolean => {
  const call = item.choice?.options.find((option) => option.id === id)?.call;
  return call === "good" || id === "not-known";
};

/** What is chosen once an option was pressed, in the order of the sheet; `null` where nothing is left. */
export const answerAfter = (
  item: Pick<Item, "choice">,
  answer: Choice | undefined,
  pressed: string,
): Choice | null => {
  const before = chosenOptions(answer);
  const wanted = before.includes(pressed)
    ? before.filter((id) => id !== pressed)
    : standsAlone(item, pressed)
      ? [pressed]
      : [...before.filter((id) => !standsAlone(item, id)), pressed];
  const [option, ...also] = (item.choice?.options ?? [])
    .map(({ id }) => id)
    .filter((id) => wanted.includes(id));
  if (option === undefined) return null;
  return also.length === 0 ? { kind: "choice", option } : { kind: "choice", option, also };
};
