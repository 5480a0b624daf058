/** Of each: `$1` the organization. What a row says of another party's report, or to another party alone, stands in none. */
const rows = (columns: string, from: string): string => `
  SELECT coalesce(json_agg(to_json(part) ORDER BY part.id), '[]') AS rows FROM (SELECT ${columns} FROM ${from}) part`;

export const organizationOf = `
  SELECT o.id, o.name, o.kind::text AS kind, o.place, o.zone, instant(o.created_at) AS "createdAt",
    (SELECT coalesce(json_agg(json_build_object('account', a.id, 'name', a.name, 'email', a.email, 'role', m.role) ORDER BY a.id), '[]')
     FROM membership m JOIN account a ON a.id = m.account_id WHERE m.organization_id = o.id) AS members
  FROM organization o WHERE o.id = $1::uuid`;

export const documentsOf = `
  SELECT id, kind::text AS kind, vehicle_id AS vehicle, seal, instant(sealed_at) AS "sealedAt",
    '/api/v1/report-versions/' || id || '/document' AS address FROM report_version WHERE organization_id = $1::uuid
  UNION ALL SELECT id, 'summary', vehicle_id, hash, instant(created_at),
    '/api/v1/summaries/' || id || '/document' FROM summary WHERE buyer_id = $1::uuid
  ORDER BY id`;

export const partsOf = {
  vehicles: rows(
    `id, document, asking_minor AS "askingMinor", asking_currency AS "askingCurrency", words, listed, instant(created_at) AS "createdAt"`,
    "vehicle WHERE organization_id = $1::uuid",
  ),
  orders: rows(
    `id, vehicle_id AS vehicle, buyer_id AS buyer, inspector_id AS inspector, statement_id AS statement, state, reason,
     instant(ordered_at) AS "orderedAt", instant(ended_at) AS "endedAt"`,
    "inspection_order WHERE buyer_id = $1::uuid OR inspector_id = $1::uuid",
  ),
  visits: rows(
    `id, state, buyer_id AS buyer, firm_id AS firm, dealer_id AS dealer, site_id AS site, instant(starts_at) AS "startsAt",
     instant(ends_at) AS "endsAt"`,
    `appointment WHERE buyer_id = $1::uuid OR (requested_at IS NOT NULL AND (firm_id = $1::uuid OR dealer_id = $1::uuid))`,
  ),
  releases: rows(
    `id, comparison_id AS comparison, entry_index AS entry, vehicle_id AS vehicle, buyer_id AS buyer, dealer_id AS dealer,
     state, instant(released_at) AS "releasedAt"`,
    "release WHERE buyer_id = $1::uuid OR dealer_id = $1::uuid",
  ),
  decisions: rows(
    `id, vehicle_id AS vehicle, buyer_id AS buyer, dealer_id AS dealer, decision, price_minor AS "priceMinor",
     price_currency AS "priceCurrency", conditions, answer, answer_note AS "answerNote", instant(decided_at) AS "decidedAt",
     CASE WHEN buyer_id = $1::uuid THEN acknowledgements END AS acknowledgements`,
    "decision WHERE buyer_id = $1::uuid OR dealer_id = $1::uuid",
  ),
  questions: rows(
    `id, vehicle_id AS vehicle, buyer_id AS buyer, dealer_id AS dealer, item, position, text, state,
     instant(created_at) AS "createdAt"`,
    "question WHERE buyer_id = $1::uuid OR (dealer_id = $1::uuid AND asked_at IS NOT NULL)",
  ),
  complaints: rows(
    `id, about_kind AS about, about_id AS "aboutId", text, reply, state, instant(received_at) AS "receivedAt"`,
    "complaint WHERE organization_id = $1::uuid",
  ),
  sites: rows(
    `id, name, address, latitude, longitude, hours, closures, currency, per_visit AS "perVisit", per_lift_spell AS "perLiftSpell"`,
    "site WHERE organization_id = $1::uuid",
  ),
  calendars: rows(
    `id, account_id AS account, name, hours, latitude, longitude, radius, speed, notice, currency, per_visit AS "perVisit",
     per_extra_car AS "perExtraCar", per_mile AS "perMile", skills, accepting, admission`,
    "inspector_calendar WHERE organization_id = $1::uuid",
  ),
} as const;
