import type { GateItem, RoadFacts } from "@evenhand/booking/before-the-road";
import { compiledSheet as sheet } from "@evenhand/record/report-document";
import { type GateReport, gateOfBrief, roadDoubts } from "@evenhand/handbook/road-gate";
import { Finding } from "@evenhand/shared/finding";
import type { RoadClearance } from "@evenhand/shared/http/booking";
import { Vehicle } from "@evenhand/shared/report";
import { readableHeader } from "@evenhand/sheet/readable-header";
import { z } from "zod";
import type { Transaction } from "../../platform/database/database.ts";
import { findRow, sql } from "../../platform/database/rows.ts";
import type { StoredAppointment } from "./appointment-store.ts";

/** What the inspector has committed on the cars, as the gate to the road reads it, and every gate item of the brief beside it. */
export async function readRoadFacts(
  tx: Transaction,
  { cars }: StoredAppointment,
  { vehicle, consent, insurance, plates, damageBorneBy }: RoadClearance,
): Promise<RoadFacts> {
  const gate: GateItem[] = [];
  const doubts: string[] = [];
  for (const car of cars.filter((each) => vehicle === undefined || each.vehicle === vehicle)) {
    const draft = car.order === null ? undefined : await readDraft(tx, car.order);
    gate.push(...gateOfBrief(car.brief, draft, sheet));
    doubts.push(...wordsOfDoubt(draft));
  }
  return {
    consent: consent === null ? null : { by: consent.by, signedAt: Date.parse(consent.signedAt) },
    insurance: paper(insurance),
    plates: paper(plates),
    damageBorneBy,
    gate,
    doubts,
  };
}

const paper = (given: RoadClearance["insurance"]) =>
  given === null
    ? null
    : {
        reference: given.reference,
        validUntil: given.validUntil === null ? null : Date.parse(given.validUntil),
      };

/** Each once: one press leaves every line of the road as unsafe. */
const wordsOfDoubt = (draft: GateReport | undefined): string[] =>
  draft === undefined ? [] : [...new Set(roadDoubts(draft, sheet).map(({ words }) => words))];

const DraftRow = z.object({
  header: z.record(z.string(), z.unknown()),
  vehicle: Vehicle,
  bodies: z.array(Finding),
});

/** The inspection as far as it is written; a part of its header that cannot be read is left out, as while it is filled in. */
async function readDraft(tx: Transaction, order: string): Promise<GateReport | undefined> {
  const row = await findRow(
    tx,
    DraftRow,
    sql`
    SELECT r.header, v.document AS vehicle,
      (SELECT COALESCE(json_agg(f.body ORDER BY f.item, f.position), '[]') FROM report_finding f
        WHERE f.report_id = r.id AND f.body IS NOT NULL) AS bodies
    FROM report r JOIN vehicle v ON v.id = r.vehicle_id WHERE r.order_id = ${order}::uuid`,
  );
  if (row === null) return undefined;
  const { visit, scales } = readableHeader(row.header).header;
  return {
    visit,
    scales,
    vehicle: row.vehicle,
    findings: row.bodies,
  };
}
