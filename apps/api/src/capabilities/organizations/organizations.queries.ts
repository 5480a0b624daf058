import { pageStatement } from "../../platform/database/page.ts";

const organization = `json_build_object(
  'id', page.id, 'name', page.name, 'kind', page.kind, 'place', page.place, 'zone', page.zone)`;

export const organizationsPage = pageStatement(
  "SELECT * FROM organization WHERE (id = ANY($1::uuid[]) OR $2) AND id < $3 ORDER BY id DESC LIMIT $4 + 1",
  organization,
  "$4",
);

export const membersPage = pageStatement(
  `SELECT a.id, a.name, a.email, m.role FROM membership m JOIN account a ON a.id = m.account_id
   WHERE m.organization_id = $1 AND a.id < $2 ORDER BY a.id DESC LIMIT $3 + 1`,
  `json_build_object('account', json_build_object('id', page.id, 'name', page.name), 'email', page.email, 'role', page.role)`,
  "$3",
);

export const inspectorsPage = pageStatement(
  `SELECT * FROM organization o WHERE o.kind = 'inspector' AND o.id < $1 AND NOT EXISTS (
     SELECT 1 FROM firm_admission f WHERE f.organization_id = o.id AND f.state <> 'admitted')
   ORDER BY o.id DESC LIMIT $2 + 1`,
  `json_build_object('id', page.id, 'name', page.name, 'place', page.place, 'zone', page.zone)`,
  "$2",
);
