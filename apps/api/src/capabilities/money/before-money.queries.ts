import { z } from "zod";
import { comparison, ofCase } from "./landed-cost.queries.ts";

export const BoughtRow = z.object({ bought: z.boolean(), comparison: z.string().nullable() });

/** By the last decision of the case: approved, or a price that the other has taken. */
const bought = `coalesce((SELECT d.decision = 'approve' OR (d.decision = 'counter' AND d.ended IS NULL
    AND coalesce(d.reply, d.answer) = 'accept')
  FROM decision d WHERE ${ofCase("d")} ORDER BY d.decided_at DESC, d.id DESC LIMIT 1), false)`;

/** `$1` organizations, `$2` the case, which is the person's own. */
export const caseBought = `SELECT ${bought} AS bought, ${comparison} AS comparison
  FROM buyer_case c WHERE c.id = $2::uuid`;
