import { z } from "zod";
import { bought } from "../summaries/index.ts";
import { comparison } from "./landed-cost.queries.ts";

export const BoughtRow = z.object({ bought: z.boolean(), comparison: z.string().nullable() });

/** `$1` organizations, `$2` the case, which is the person's own. */
export const caseBought = `SELECT ${bought} IS NOT NULL AS bought, ${comparison} AS comparison
  FROM buyer_case c WHERE c.id = $2::uuid`;
