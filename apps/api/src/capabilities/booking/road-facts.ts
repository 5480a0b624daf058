import type { RoadFacts } from "@evenhand/booking/before-the-road";
import { Finding } from "@evenhand/shared/finding";
import type { RoadClearance } from "@evenhand/shared/http/booking";
import { callOf } from "@evenhand/sheet/call";
import type { Transaction } from "../../platform/database/database.ts";
import type { StoredAppointment } from "./appointment-store.ts";
import { gateItems, sheetItem } from "./brief-items.ts";

type Found = { item: string; finding: Finding };

/** What the inspector has committed on the cars, and every gate item of the brief beside it. */
export async function readRoadFacts(
  tx: Transaction,
  { cars }: StoredAppointment,
  { vehicle, consent, insurance, plates, damageBorneBy, openSafety }: RoadClearance,
): Promise<RoadFacts> {
  const gate: RoadFacts["gate"][number][] = [];
  for (const car of cars.filter((each) => vehicle === undefined || each.vehicle === vehicle)) {
    const found = car.order === null ? [] : await readFindings(tx, car.order);
    gate.push(...gateOf(gateItems(car.brief), found, openSafety));
  }
  return {
    consent: consent === null ? null : { by: consent.by, signedAt: Date.parse(consent.signedAt) },
    insurance: paper(insurance),
    plates: paper(plates),
    damageBorneBy,
    gate,
  };
}

const paper = (given: RoadClearance["insurance"]) =>
  given === null
    ? null
    : {
        reference: given.reference,
        validUntil: given.validUntil === null ? null : Date.parse(given.validUntil),
      };

function gateOf(items: readonly string[], found: readonly Found[], open: readonly string[]) {
  const bad = new Set([...open, ...found.filter(isDangerous).map(({ item }) => item)]);
  const asked = new Set([...items, ...bad]);
  return [...asked].map((item) => {
    const own = found.filter((each) => each.item === item);
    const seen = own.length > 0 && own.every(({ finding }) => finding.answer.kind !== "not-seen");
    return { item, seen: seen || !items.includes(item), safetyOpen: bad.has(item) };
  });
}

/** What costs money and hurts nobody yet (play short of the alarm) keeps no car off the road; what can hurt does, whatever item it is of. */
function isDangerous({ item, finding }: Found): boolean {
  const known = sheetItem(item);
  const { position, conditions } = finding;
  return known !== undefined && callOf(finding.answer, known, { position, conditions }) === "danger";
}

async function readFindings(tx: Transaction, order: string): Promise<Found[]> {
  const rows = await tx.$queryRaw<{ item: string; body: unknown }[]>`
    SELECT f.item, f.body FROM report_finding f JOIN report r ON r.id = f.report_id
    WHERE r.order_id = ${order}::uuid AND f.body IS NOT NULL`;
  return rows.map(({ item, body }) => ({ item, finding: Finding.parse(body) }));
}
