import { pageStatement } from "../../platform/database/page.ts";

/** `$1` account, `$2` cursor, `$3` limit. */
export const noticeList = pageStatement(
  "SELECT * FROM notice WHERE account_id = $1 AND id < $2 ORDER BY id DESC LIMIT $3 + 1",
  `json_build_object('id', page.id, 'kind', page.kind, 'subject', page.subject, 'vehicle', page.vehicle_id,
    'createdAt', instant(page.created_at), 'due', instant(page.due_at), 'readAt', instant(page.read_at))`,
  "$3",
);
