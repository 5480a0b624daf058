import { maySeeVehicle } from "../../platform/access/row-access.ts";
import { pageStatement } from "../../platform/database/page.ts";

/** A car is named while the reader may see it: who left a firm keeps what they were told, and is told no more. */
const car = `(SELECT json_build_object('make', v.make, 'model', v.model, 'modelYear', v.model_year)
  FROM vehicle v WHERE v.id = page.vehicle_id AND ${maySeeVehicle("v")})`;

/** `$1` organizations, `$2` cursor, `$3` limit, `$4` account. */
export const noticeList = pageStatement(
  "SELECT * FROM notice WHERE account_id = $4 AND id < $2 ORDER BY id DESC LIMIT $3 + 1",
  `json_build_object('id', page.id, 'kind', page.kind, 'subject', page.subject, 'vehicle', page.vehicle_id,
    'car', ${car}, 'createdAt', instant(page.created_at), 'due', instant(page.due_at), 'step', page.step,
    'readAt', instant(page.read_at))`,
  "$3",
);

/** Counted to a hundred: more is not told apart. */
export const unreadCount = (account: string): string => `(SELECT count(*) FROM (
  SELECT 1 FROM notice n WHERE n.account_id = ${account} AND n.read_at IS NULL LIMIT 100) unread)`;

/** Of the organization an account joined first; nothing for whoever is in none. */
export const firmZone = (account: string): string =>
  `(SELECT o.zone FROM membership m JOIN organization o ON o.id = m.organization_id
    WHERE m.account_id = ${account} ORDER BY m.created_at, o.id LIMIT 1)`;

/** `$1` the account. */
export const newsChoice = `SELECT a.news_mail AS mail, a.news_zone AS zone, ${firmZone("a.id")} AS "firmZone"
  FROM account a WHERE a.id = $1::uuid`;
