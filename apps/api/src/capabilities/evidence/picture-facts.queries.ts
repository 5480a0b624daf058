import { maySeeVersion, mustBeBlind } from "../../platform/access/row-access.ts";
import { siteOfVehicle } from "../sites/index.ts";

/** A file `e` of a firm among whose items the dealer sees it: its item was laid before them. `r` is its report. */
export const isReleased = (e: string, r: string): string => `EXISTS (SELECT 1 FROM release rel
  WHERE rel.vehicle_id = ${r}.vehicle_id
    AND rel.dealer_id = ANY($1::uuid[]) AND rel.inspector_id = ${e}.organization_id AND ${e}.item <> ''
    AND rel.snapshot->'entry'->>'item' = ${e}.item AND coalesce(rel.snapshot->'entry'->>'position', '') = ${e}.position)`;

/** No statement to whoever must be blind. `r` is the report. */
export const notWithheld = (r: string): string =>
  `(${r}.kind = 'inspection' OR NOT ${mustBeBlind(`${r}.vehicle_id`)})`;

/** Sealed files at other places that show what the file of `e` shows: `o`, in the report `ro` on the car `vo`. */
const alike = `evidence o JOIN report ro ON ro.id = o.report_id JOIN vehicle vo ON vo.id = ro.vehicle_id
  WHERE o.id <> e.id AND o.sealed_in IS NOT NULL AND (o.file_id = e.file_id
    OR o.file_id IN (SELECT same.other_id FROM picture_likeness same WHERE same.file_id = e.file_id))`;

const maySeeOther = `${notWithheld("ro")} AND (o.organization_id = ANY($1::uuid[]) OR ${isReleased("o", "ro")}
    OR EXISTS (SELECT 1 FROM report_version rv WHERE rv.report_id = ro.id AND rv.number >= o.sealed_in
      AND ${maySeeVersion("rv", "vo")}))`;

/** Of the other side, about this car; nobody learns of what they may not see. */
const bothSides = `(SELECT o.id FROM ${alike} AND vo.id = e.vehicle_id AND ro.kind IN ('statement', 'inspection')
    AND (ro.kind = 'inspection') <> (e.report_kind = 'inspection') AND ${maySeeOther} ORDER BY o.id LIMIT 1)`;

/**
 * With another car, which a car entered twice is not. That it was seen is told to whoever sees the picture, where only to its owner; a
 * blind inspector is told nothing that a statement of a car they have work on holds.
 */
const otherCar = `(SELECT json_build_object('beside', max(o.id::text) FILTER (WHERE o.organization_id = ANY($1::uuid[])))
  FROM ${alike} AND vo.identification <> (SELECT v.identification FROM vehicle v WHERE v.id = e.vehicle_id)
    AND ${notWithheld("ro")} HAVING count(*) > 0)`;

/** Where the car stood: on the visit, else where it is entered to stand. */
const site = `(SELECT json_build_object('latitude', s.latitude, 'longitude', s.longitude) FROM site s WHERE s.id = coalesce(
  (SELECT a.site_id FROM report r JOIN appointment_car ac ON ac.order_id = r.order_id JOIN appointment a ON a.id = ac.appointment_id
    WHERE r.id = e.report_id ORDER BY a.starts_at DESC LIMIT 1),
  (SELECT ${siteOfVehicle("v")} FROM vehicle v WHERE v.id = e.vehicle_id)))`;

/**
 * What may be asked of the picture at a place, for the service alone: `PictureFactsRow`. Over `e`, with its `report_kind` and
 * `vehicle_id`, and `f`, its file.
 */
export const pictureFacts = `json_build_object('isOwn', e.organization_id = ANY($1::uuid[]), 'capture', f.capture,
  'visitBegan', CASE WHEN e.report_kind = 'inspection' THEN (
    SELECT r.header->'visit'->>'started' FROM report r WHERE r.id = e.report_id) END,
  'site', ${site}, 'bothSides', ${bothSides}, 'otherCar', ${otherCar})`;
