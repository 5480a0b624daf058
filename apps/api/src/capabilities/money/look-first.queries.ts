import { z } from "zod";
import { noteShown } from "../../platform/access/exposure.ts";
import { maySeeVehicle, maySeeVersion, mustBeBlind } from "../../platform/access/row-access.ts";
import { comparison } from "./landed-cost.queries.ts";

/** What is known of a car before it is looked at (again). */
export const KnownRow = z.object({
  /** Of the newest sealed inspection that the buyer ordered. */
  comparison: z.string().nullable(),
  /** The newest statement the buyer may see. */
  statement: z.instanceof(Uint8Array).nullable(),
  /** Items that it was agreed to look at again. */
  again: z.array(z.string()),
});
export type KnownRow = z.infer<typeof KnownRow>;

/**
 * `$1` organizations, `$2` the car, `$3` the buyer, `$4` the account, `$5` now. What is told of the statement is that of every place
 * something or nothing was said, so that it is noted as shown.
 */
export const known = `
  WITH c AS (SELECT v.id AS vehicle_id, $3::uuid AS buyer_id, NOT ${mustBeBlind("v.id")} AS open
    FROM vehicle v WHERE v.id = $2::uuid AND ${maySeeVehicle("v")}),
  said AS MATERIALIZED (SELECT rv.id, rv.vehicle_id, rv.document FROM c
      JOIN vehicle v ON v.id = c.vehicle_id JOIN report_version rv ON rv.vehicle_id = v.id
    WHERE c.open AND rv.kind = 'statement' AND ${maySeeVersion("rv", "v")}
    ORDER BY rv.sealed_at DESC, rv.number DESC LIMIT 1),
  noted AS (${noteShown(
    "statement",
    "SELECT said.vehicle_id, said.id AS version_id, '' AS item, '' AS position FROM said",
    { account: "$4", now: "$5" },
  )})
  SELECT CASE WHEN c.open THEN ${comparison} END AS comparison, (SELECT document FROM said) AS statement,
    ARRAY(SELECT r.snapshot->'entry'->>'item' FROM release r WHERE r.vehicle_id = c.vehicle_id
      AND r.buyer_id = c.buyer_id AND r.state = 'looking-again' AND c.open) AS again
  FROM c`;
