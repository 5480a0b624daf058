import { pageStatement } from "../../platform/database/page.ts";

/** The buyer who ordered and the firm that was asked. */
export const maySeeOrder = (order: string): string =>
  `(${order}.buyer_id = ANY($1::uuid[]) OR ${order}.inspector_id = ANY($1::uuid[]))`;

const named = (column: string) =>
  `(SELECT json_build_object('id', o.id, 'name', o.name) FROM organization o WHERE o.id = ${column})`;

/** The report is its inspector's from the first; the buyer learns of it when it is sealed. */
const report = (order: string) => `(
  SELECT json_build_object('id', r.id, 'drafting', r.drafting, 'revision', r.revision, 'versions', coalesce((
    SELECT json_agg(json_build_object('id', rv.id, 'version', rv.number, 'sealedAt', instant(rv.sealed_at)) ORDER BY rv.number DESC)
    FROM report_version rv WHERE rv.report_id = r.id), '[]'))
  FROM report r WHERE r.order_id = ${order}.id AND (r.organization_id = ANY($1::uuid[])
    OR EXISTS (SELECT 1 FROM report_version rv WHERE rv.report_id = r.id)))`;

/** JSON of an order for the person in `$1`; the buyer's name is not the inspector's to see before accepting. */
export const orderJson = (order: string): string => `(
  SELECT json_build_object(
    'id', ${order}.id, 'revision', ${order}.revision, 'state', ${order}.state,
    'vehicle', json_build_object('id', ov.id, 'make', ov.make, 'model', ov.model, 'modelYear', ov.model_year,
      'identification', ov.identification),
    'dealer', ${named("ov.organization_id")},
    'buyer', CASE WHEN ${order}.buyer_id = ANY($1::uuid[]) OR ${order}.accepted_at IS NOT NULL
      THEN ${named(`${order}.buyer_id`)} END,
    'inspector', ${named(`${order}.inspector_id`)},
    'statement', json_build_object('id', os.id, 'version', os.number),
    'interests', ${order}.interests, 'reason', ${order}.reason, 'report', ${report(order)},
    'orderedAt', instant(${order}.ordered_at), 'acceptedAt', instant(${order}.accepted_at))
  FROM vehicle ov, report_version os WHERE ov.id = ${order}.vehicle_id AND os.id = ${order}.statement_id)`;

/** `$1` organizations, `$2` cursor, `$3` limit, `$4` state or null, `$5` vehicle or null. */
export const orderList = pageStatement(
  `SELECT io.* FROM inspection_order io WHERE ${maySeeOrder("io")} AND io.id < $2
   AND ($4::order_state IS NULL OR io.state = $4) AND ($5::uuid IS NULL OR io.vehicle_id = $5)
   ORDER BY io.id DESC LIMIT $3 + 1`,
  orderJson("page"),
  "$3",
);

/** `$1` organizations, `$2` the order. */
export const orderDetail = `SELECT ${orderJson("io")}::text AS body, io.revision
  FROM inspection_order io WHERE io.id = $2 AND ${maySeeOrder("io")}`;
