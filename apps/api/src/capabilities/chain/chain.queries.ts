import { maySeeVersion, mustBeBlind } from "../../platform/access/row-access.ts";

/** Who may read what was sealed may have what proves it: `$1` organizations, `$2` the version or summary. */
export const receiptOf = `
  SELECT r.organization_id AS organization, r.subject, r.seal, r.size, r.root, r.at, r.key, r.signature
  FROM seal_receipt r WHERE r.subject = $2::uuid AND (
    EXISTS (SELECT 1 FROM report_version rv JOIN vehicle v ON v.id = rv.vehicle_id
      WHERE rv.id = r.subject AND ${maySeeVersion("rv", "v")})
    OR EXISTS (SELECT 1 FROM summary s WHERE s.id = r.subject AND s.buyer_id = ANY($1::uuid[])
      AND NOT ${mustBeBlind("s.vehicle_id")}))`;

/** Records that have grown since their root was signed last: their organizations, in order. */
export const grownRecords = `
  SELECT c.organization_id AS id FROM record_chain c
  WHERE c.size > coalesce((SELECT max(r.size) FROM record_root r WHERE r.organization_id = c.organization_id), 0)
  ORDER BY c.organization_id`;

/** Whoever answers for an organization: `$1` its id. */
export const administrators = `
  SELECT a.email FROM membership m JOIN account a ON a.id = m.account_id
  WHERE m.organization_id = $1::uuid AND m.role = 'admin' ORDER BY a.id`;
