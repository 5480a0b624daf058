/** States that take somebody's time, as SQL. */
export const liveStates = "('held', 'requested', 'accepted', 'confirmed', 'under-way')";

const ms = (at: string): string => `(extract(epoch FROM ${at}) * 1000)::bigint`;
const stretch = (row: string): string => `'start', ${ms(`${row}.starts_at`)}, 'end', ${ms(`${row}.ends_at`)}`;

/** Takes time at `$4`: a hold that has run out does not, even before anybody has ended it. `$6`: left out, being moved. */
const takes = (appointment: string): string => `${appointment}.state IN ${liveStates}
  AND NOT (${appointment}.state = 'held' AND ${appointment}.deadline <= $4::timestamptz)
  AND ($6::uuid IS NULL OR ${appointment}.id <> $6::uuid)`;

const within = (row: string): string =>
  `tstzrange(${row}.starts_at, ${row}.ends_at) && tstzrange($2::timestamptz, $3::timestamptz)`;

const bays = `coalesce((SELECT json_agg(json_build_object('id', b.id, 'taken', coalesce((
    SELECT json_agg(json_build_object(${stretch("ab")}) ORDER BY ab.starts_at)
    FROM appointment_bay ab JOIN appointment a ON a.id = ab.appointment_id
    WHERE ab.bay_id = b.id AND ab.state IN ${liveStates} AND ${within("ab")} AND ${takes("a")}), '[]')) ORDER BY b.id)
  FROM bay b WHERE b.site_id = s.id AND NOT b.retired), '[]')`;

const cars = `coalesce((SELECT json_agg(json_build_object('id', v.id, 'engagements', coalesce((
    SELECT json_agg(json_build_object(${stretch("ac")}, 'needsCold', ac.needs_cold, 'warms', ac.warms) ORDER BY ac.starts_at)
    FROM appointment_car ac JOIN appointment a ON a.id = ac.appointment_id
    WHERE ac.vehicle_id = v.id AND ${within("ac")} AND ${takes("a")}), '[]')))
  FROM unnest($5::uuid[]) AS v (id)), '[]')`;

/** Conflicts count whoever of the firm declared them, where the firm holds them or had to do with the car. */
const interests = `coalesce((SELECT json_agg(json_build_object('id', i.id, 'kind', i.kind, 'dealer', i.dealer_id,
    'dealerName', d.name, 'holder', i.holder, 'since', instant(i.since), 'endedAt', instant(i.ended_at), 'note', i.note))
  FROM inspector_interest i JOIN inspector_calendar own ON own.id = i.calendar_id JOIN organization d ON d.id = i.dealer_id
  WHERE i.dealer_id = s.organization_id
    AND (i.calendar_id = c.id OR (i.holder = 'firm' AND own.organization_id = c.organization_id))), '[]')`;

const dealings = `coalesce((SELECT json_agg(json_build_object('car', d.vehicle_id, 'dealing', d.dealing))
  FROM inspector_dealing d JOIN inspector_calendar own ON own.id = d.calendar_id
  WHERE d.vehicle_id = ANY($5::uuid[]) AND own.organization_id = c.organization_id), '[]')`;

/** Four numbers a job: a page of hours reads the jobs of everybody, and names would be most of what is read. */
const engagements = `coalesce((SELECT json_agg(json_build_array(${ms("a.starts_at")}, ${ms("a.ends_at")},
    there.latitude, there.longitude) ORDER BY a.starts_at)
  FROM appointment a JOIN site there ON there.id = a.site_id
  WHERE a.inspector_id = c.id AND ${within("a")} AND ${takes("a")}), '[]')`;

/** One row an inspector: many short documents are read sooner than one long one. */
const inspectorsAt = `SELECT NULL::json AS place, json_build_object(
    'id', c.id, 'name', c.name, 'firm', json_build_object('id', o.id, 'name', o.name), 'hours', c.hours,
    'base', json_build_object('latitude', c.latitude, 'longitude', c.longitude), 'radius', c.radius, 'speed', c.speed,
    'notice', c.notice, 'skills', c.skills,
    'fees', json_build_object('currency', c.currency, 'perVisit', c.per_visit, 'perExtraCar', c.per_extra_car,
      'perMile', c.per_mile),
    'engagements', ${engagements}, 'interests', ${interests}, 'dealings', ${dealings}) AS inspector
  FROM site s CROSS JOIN inspector_calendar c JOIN organization o ON o.id = c.organization_id
  LEFT JOIN firm_admission f ON f.organization_id = o.id
  WHERE s.id = $1::uuid AND ($7::uuid IS NULL OR c.id = $7::uuid) AND NOT c.organization_id = ANY($8::uuid[])
    AND ($6::uuid IS NOT NULL
      OR (c.accepting AND c.admission = 'admitted' AND coalesce(f.state, 'admitted') = 'admitted'))`;

/**
 * Everything that is known of everybody's time at one site, in one statement: a row with `place` for the site, its bays and the
 * cars, and a row with `inspector` for each of them. `$1` site, `$2` and `$3` the horizon, `$4` now, `$5` cars, `$6` an
 * appointment left out or null, `$7` one inspector or null, `$8` firms that are not independent.
 */
export const worldAt = `SELECT json_build_object(
    'site', json_build_object('id', s.id, 'name', s.name, 'address', s.address,
      'place', json_build_object('latitude', s.latitude, 'longitude', s.longitude), 'hours', s.hours, 'closures', s.closures,
      'dealer', (SELECT json_build_object('id', o.id, 'name', o.name) FROM organization o WHERE o.id = s.organization_id),
      'fees', json_build_object('currency', s.currency, 'perVisit', s.per_visit, 'perLiftSpell', s.per_lift_spell)),
    'bays', ${bays}, 'cars', ${cars}) AS place, NULL::json AS inspector
  FROM site s WHERE s.id = $1::uuid
  UNION ALL ${inspectorsAt}`;

/** Firms that share a person with one of the organizations in `$1`. */
export const barredFirms = `SELECT DISTINCT o.id FROM membership of_firm
  JOIN organization o ON o.id = of_firm.organization_id AND o.kind = 'inspector'
  JOIN membership other ON other.account_id = of_firm.account_id AND other.organization_id = ANY($1::uuid[])`;

/** Visits done since `$2` by the inspectors in `$1`. */
export const visitsDone = `SELECT inspector_id AS inspector, dealer_id AS dealer, ${ms("starts_at")}::float8 AS at
  FROM appointment WHERE inspector_id = ANY($1::uuid[]) AND state = 'reported' AND starts_at > $2::timestamptz`;
