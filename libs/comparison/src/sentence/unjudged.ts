import type { Entry } from "@evenhand/shared/comparison";
import type { Item } from "@evenhand/shared/sheet";
import { clauseMessages } from "./messages.ts";

const whyOf = ({ limits }: Pick<Entry, "limits">, { reading }: Pick<Item, "reading">): string => {
  if (reading === undefined) return clauseMessages.say("unjudged.nothing");
  const isJudged = limits?.some(({ b }) => b !== null) === true;
  if (isJudged && reading.sound?.when === undefined) return clauseMessages.say("unjudged.between");
  const hasFigures = reading.limits.length + reading.alarms.length > 0;
  return clauseMessages.say(hasFigures ? "unjudged.not-noted" : "unjudged.no-figure");
};

/**
 * Why nothing is called of what was found and nobody stated: it lies between what is ordinary and what is bad; its figure asks for what
 * was not noted; it has no figure; it is no reading.
 *
 * @returns what fills the sentence of such a line; nothing for every other
 * @example whyUnjudged(panelOf300Micrometers, paintThickness) // { why: "it lies between ordinary and bad" }
 */
export const whyUnjudged = (
  entry: Pick<Entry, "limits" | "reason">,
  item: Pick<Item, "reading">,
): { readonly why?: string } =>
  entry.reason.startsWith("found-without-yardstick") ? { why: whyOf(entry, item) } : {};
