import { notedRead } from "../../platform/access/exposure.ts";
import {
  maySeeComparison,
  maySeeVehicle,
  maySeeVersion,
  mustBeBlind,
} from "../../platform/access/row-access.ts";
import { pageStatement } from "../../platform/database/page.ts";
import { comparisonJson } from "../comparisons/index.ts";
import { maySeeOrder, orderJson } from "../orders/index.ts";

/** The dealer's words are claims and the price says how good they are held to be: kept from whoever must be blind. */
const money = (row: string, shown: string) => `CASE WHEN ${row}.asking_minor IS NOT NULL AND ${shown}
  THEN json_build_object('minor', ${row}.asking_minor, 'currency', ${row}.asking_currency) END`;

const dealer = (row: string) => `(SELECT json_build_object('id', o.id, 'name', o.name)
  FROM organization o WHERE o.id = ${row}.organization_id)`;

const sealed = (version: string) => `json_build_object('id', ${version}.id, 'version', ${version}.number,
  'seal', ${version}.seal, 'sealedAt', instant(${version}.sealed_at))`;

const newestStatement = (row: string) => `(SELECT ${sealed("rv")} FROM report_version rv
  WHERE rv.vehicle_id = ${row}.id AND rv.kind = 'statement' AND ${maySeeVersion("rv", row)} ORDER BY rv.sealed_at DESC, rv.number DESC LIMIT 1)`;

/**
 * In a list nobody of an inspection firm gets the words and price of another's car: it may be the next one they are asked to
 * look at, and running down a list is not to cost them their blindness. A car they open tells them, and that is noted.
 */
const inList = `(NOT ${mustBeBlind("v.id")} AND (v.organization_id = ANY($1::uuid[]) OR NOT EXISTS (
  SELECT 1 FROM organization firm WHERE firm.kind = 'inspector' AND firm.id = ANY($1::uuid[]))))`;

const vehicleItem = `json_build_object(
  'id', page.id, 'make', page.make, 'model', page.model, 'modelYear', page.model_year,
  'identification', page.identification, 'dealer', ${dealer("page")}, 'listed', page.listed,
  'asking', ${money("page", "page.shown")},
  'words', CASE WHEN page.shown THEN page.words END, 'withheld', NOT page.shown, 'statement', ${newestStatement("page")},
  'cover', CASE WHEN page.shown THEN page.cover_id END,
  'createdAt', instant(page.created_at))`;

const columns = `v.id, v.organization_id, v.make, v.model, v.model_year, v.identification, v.listed,
  v.asking_minor, v.asking_currency, v.words, v.cover_id, v.created_at, ${inList} AS shown`;

/** One condition a word: the index over parts of words serves `LIKE` of one pattern, and not `LIKE ALL` of many. */
const hasWords = (count: number): string =>
  Array.from({ length: count }, (_, index) => `AND v.search LIKE $${index + 4}`).join(" ");

const listOf = (visible: string, words = 0): string =>
  pageStatement(
    `SELECT ${columns} FROM vehicle v WHERE ${visible} AND v.id < $2
     ${hasWords(words)} ORDER BY v.id DESC LIMIT $3 + 1`,
    vehicleItem,
    "$3",
  );

const visibleIn = { own: "v.organization_id = ANY($1::uuid[])", seen: maySeeVehicle("v") } as const;

/** `$1` organizations, `$2` cursor, `$3` limit. */
export const vehicleLists = { own: listOf(visibleIn.own), seen: listOf(visibleIn.seen) } as const;

/** The same with so many words searched for: `$4` and on, a pattern each. */
export const searchedVehicles = (list: keyof typeof visibleIn, words: number): string =>
  listOf(visibleIn[list], words);

const inDetail = `NOT ${mustBeBlind("v.id")}`;

/** `$1` organizations, `$2` the car, `$3` the account, `$4` now. The dealer's words, where they are shown, are noted. */
export const vehicleDetail = notedRead(
  "car",
  `SELECT v.id AS vehicle_id, NULL::uuid AS version_id, '' AS item, '' AS position
   FROM vehicle v WHERE v.id = $2 AND v.words IS NOT NULL AND ${maySeeVehicle("v")} AND ${inDetail}`,
  { account: "$3", now: "$4" },
  ({ noted, column }) => `
  WITH noted AS (${noted})
  SELECT json_build_object(
    'id', v.id, 'revision', v.revision, 'vehicle', v.document, 'dealer', ${dealer("v")}, 'listed', v.listed,
    'asking', ${money("v", inDetail)}, 'words', CASE WHEN ${inDetail} THEN v.words END, 'withheld', NOT ${inDetail},
    'statements', coalesce((SELECT json_agg(${sealed("rv")} ORDER BY rv.sealed_at DESC, rv.number DESC)
      FROM report_version rv WHERE rv.vehicle_id = v.id AND rv.kind = 'statement' AND ${maySeeVersion("rv", "v")}), '[]'),
    'drafts', coalesce((SELECT json_agg(json_build_object('id', r.id, 'revision', r.revision, 'kind', r.kind) ORDER BY r.id)
      FROM report r WHERE r.vehicle_id = v.id AND r.drafting AND r.order_id IS NULL
        AND r.organization_id = ANY($1::uuid[])), '[]'),
    'orders', coalesce((SELECT json_agg(${orderJson("io")} ORDER BY io.id DESC)
      FROM inspection_order io WHERE io.vehicle_id = v.id AND ${maySeeOrder("io")}), '[]'),
    'comparisons', coalesce((SELECT json_agg(${comparisonJson("c", "a", "b")} ORDER BY c.id DESC)
      FROM comparison c JOIN report_version a ON a.id = c.a_id JOIN report_version b ON b.id = c.b_id
      WHERE c.vehicle_id = v.id AND ${maySeeComparison("a", "b", "v")}), '[]')
  )::text AS body, v.revision, ${column}
  FROM vehicle v WHERE v.id = $2 AND ${maySeeVehicle("v")}`,
);

/** Each different word becomes a pattern; the characters that mean something in patterns mean themselves. */
export const searchPatterns = (words: string): string[] =>
  [...new Set(words.toLowerCase().split(/\s+/))]
    .filter((word) => word !== "")
    .map((word) => `%${word.replaceAll(/[\\%_]/g, String.raw`\$&`)}%`);
