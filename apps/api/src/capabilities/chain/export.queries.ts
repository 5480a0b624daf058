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

/** A table whose every save is kept. */
const saves = (table: string): string =>
  rows(
    `revision AS id, document, saved_by AS "savedBy", instant(saved_at) AS "savedAt"`,
    `${table} WHERE organization_id = $1::uuid`,
  );

/** As they stand now, sealed since or not. */
const drafts = rows(
  `id, kind::text AS kind, vehicle_id AS vehicle, order_id AS "order", drafting, header, second_look AS "secondLook",
   instant(created_at) AS "createdAt", instant(updated_at) AS "updatedAt",
   (SELECT coalesce(json_agg(json_build_object('item', f.item, 'position', f.position, 'finding', f.body,
      'updatedAt', instant(f.updated_at)) ORDER BY f.item, f.position), '[]')
    FROM report_finding f WHERE f.report_id = report.id) AS findings`,
  "report WHERE organization_id = $1::uuid",
);

const buyers = (value: string): string => `CASE WHEN buyer_id = $1::uuid THEN ${value} END`;

/**
 * What was signed stands by its seal: it holds the names of other parties' people, and is read at its address. The dealer sees the car
 * leave; where it went and what became of it is the buyer's.
 */
const handOvers = rows(
  `id, vehicle_id AS vehicle, buyer_id AS buyer, dealer_id AS dealer, decision_id AS decision, carrier,
   '/api/v1/hand-overs/' || id AS address, instant(created_at) AS "createdAt", ${buyers("terms")} AS terms,
   ${buyers("state")} AS state, ${buyers("comparison")} AS comparison,
   (SELECT coalesce(json_agg(json_build_object('stage', r.stage, 'seal', r.seal, 'paper', r.paper,
      'signedAt', instant(r.signed_at)) ORDER BY r.stage), '[]') FROM hand_over_report r
    WHERE r.hand_over_id = hand_over.id AND (buyer_id = $1::uuid OR r.stage = 'collection')) AS reports,
   (SELECT coalesce(json_agg(json_build_object('id', p.id, 'stage', p.stage, 'item', p.item, 'position', p.position,
      'sha256', f.sha256, 'address', '/api/v1/hand-over-pictures/' || p.id || '/large') ORDER BY p.id), '[]')
    FROM hand_over_picture p JOIN evidence_file f ON f.id = p.file_id
    WHERE p.hand_over_id = hand_over.id AND (buyer_id = $1::uuid OR p.stage = 'collection')) AS pictures,
   ${buyers(`(SELECT coalesce(json_agg(json_build_object('move', m.move, 'by', m.actor, 'note', m.note, 'at', instant(m.at))
      ORDER BY m.id), '[]') FROM hand_over_move m WHERE m.hand_over_id = hand_over.id)`)} AS moves`,
  "hand_over WHERE buyer_id = $1::uuid OR dealer_id = $1::uuid",
);

/** What a buyer keeps with a case, every save of it: what it comes to at their door, and what is asked before money moves. */
const caseDocuments = rows(
  `d.case_id || ' ' || d.kind || ' ' || lpad(d.revision::text, 9, '0') AS id, d.case_id AS "case", c.vehicle_id AS vehicle, d.kind,
   d.revision, d.document, d.saved_by AS "savedBy", instant(d.saved_at) AS "savedAt"`,
  "case_document_version d JOIN buyer_case c ON c.id = d.case_id WHERE c.buyer_id = $1::uuid",
);

/** Decisions as they were typed and not yet made. */
const decisionDrafts = rows(
  `d.summary_id AS id, s.vehicle_id AS vehicle, d.document, instant(d.updated_at) AS "updatedAt"`,
  "decision_draft d JOIN summary s ON s.id = d.summary_id WHERE s.buyer_id = $1::uuid",
);

export const partsOf = {
  drafts,
  decisionDrafts,
  costTables: saves("cost_table_version"),
  transportRates: saves("transport_rates_version"),
  caseDocuments,
  handOvers,
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
     state, instant(released_at) AS "releasedAt",
     (SELECT coalesce(json_agg(json_build_object('id', p.id, 'sha256', f.sha256, 'sentAt', instant(p.sent_at),
        'address', '/api/v1/release-pictures/' || p.id || '/original') ORDER BY p.id), '[]')
      FROM release_picture p JOIN evidence_file f ON f.id = p.file_id
      WHERE p.release_id = release.id AND p.organization_id = $1::uuid) AS photographs`,
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
