import type { Matter } from "@evenhand/shared/matter";
import { matterId } from "@evenhand/shared/matter-id";
import type { AnswerCost } from "@evenhand/shared/page-one";

/** What a matter is likely to add, in minor units; `undefined` where nothing is known of it. */
export const likelyOf = (cost: AnswerCost | undefined, matter: Pick<Matter, "kind" | "zone">) => {
  const id = matterId(matter);
  const found = cost?.cost?.byMatter.find((one) => one.matter === id);
  return cost?.cost == null || found === undefined
    ? undefined
    : { minor: found.likely, currency: cost.cost.currency };
};
