import { maySeeVehicle } from "../../platform/access/row-access.ts";
import { pageStatement } from "../../platform/database/page.ts";

const bays = (site: string) => `coalesce((
  SELECT json_agg(json_build_object('id', b.id, 'name', b.name) ORDER BY b.id)
  FROM bay b WHERE b.site_id = ${site}.id AND NOT b.retired), '[]')`;

const fields = (s: string) => `
  'id', ${s}.id, 'revision', ${s}.revision,
  'dealer', (SELECT json_build_object('id', o.id, 'name', o.name) FROM organization o WHERE o.id = ${s}.organization_id),
  'name', ${s}.name, 'address', ${s}.address,
  'place', json_build_object('latitude', ${s}.latitude, 'longitude', ${s}.longitude),
  'hours', ${s}.hours, 'bays', ${bays(s)},
  'fees', json_build_object('currency', ${s}.currency, 'perVisit', ${s}.per_visit, 'perLiftSpell', ${s}.per_lift_spell)`;

const siteJson = (s: string) => `json_build_object(${fields(s)}, 'closures', ${s}.closures)`;

/** `$1` organizations, `$2` cursor, `$3` limit. */
export const siteList = pageStatement(
  `SELECT s.* FROM site s WHERE s.organization_id = ANY($1::uuid[]) AND s.id < $2 ORDER BY s.id DESC LIMIT $3 + 1`,
  siteJson("page"),
  "$3",
);

/** `$1` organizations, `$2` the site. */
export const siteDetail = `SELECT ${siteJson("s")}::text AS body, s.revision FROM site s
  WHERE s.id = $2 AND s.organization_id = ANY($1::uuid[])`;

/** Where a car stands: as its dealer said, or the dealer's only site. */
export const siteOfVehicle = (v: string): string => `coalesce(
  (SELECT p.site_id FROM vehicle_place p WHERE p.vehicle_id = ${v}.id),
  (SELECT min(sole.id::text)::uuid FROM site sole WHERE sole.organization_id = ${v}.organization_id HAVING count(*) = 1))`;

/** The zone of the site where the car with this id stands; `NULL` where it stands at none. */
export const zoneOfVehicle = (id: string): string =>
  `(SELECT s.hours->>'zone' FROM vehicle v JOIN site s ON s.id = ${siteOfVehicle("v")} WHERE v.id = ${id})`;

/** `$1` organizations, `$2` the car. */
export const carPlace = `SELECT json_build_object('site', (
    SELECT json_build_object(${fields("s")}) FROM site s WHERE s.id = ${siteOfVehicle("v")}))::text AS body
  FROM vehicle v WHERE v.id = $2 AND ${maySeeVehicle("v")}`;
