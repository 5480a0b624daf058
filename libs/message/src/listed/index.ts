import { defineMessages } from "../define-messages/index.ts";

const { say } = defineMessages("list", {
  comma: "{list}, {next}",
  semicolon: "{list}; {next}",
  and: "{list} and {next}",
  or: "{list} or {next}",
  "comma-or": "{list}, or {next}",
});

/** How things in a row are told apart; by `and` and `or` the last alone, the others by a comma. */
export type ListKind = "comma" | "semicolon" | "and" | "or" | "comma-or";

const isOfTheLast = (kind: ListKind): boolean => kind === "and" || kind === "or";

/**
 * Several things in a row; nothing where there are none.
 *
 * @example listed(["6", "6", "5"], "and") // "6, 6 and 5"
 * @example listed(["1954", "1964"], "comma-or") // "1954, or 1964"
 */
export const listed = (things: readonly string[], kind: ListKind = "comma"): string => {
  let list = things[0] ?? "";
  for (let index = 1; index < things.length; index += 1) {
    const isLast = index === things.length - 1;
    list = say(isOfTheLast(kind) && !isLast ? "comma" : kind, { list, next: things[index] ?? "" });
  }
  return list;
};
