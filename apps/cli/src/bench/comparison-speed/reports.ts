import type { Answer } from "@evenhand/shared/answer";
import type { Finding } from "@evenhand/shared/finding";
import type { Report, VehicleForm } from "@evenhand/shared/report";
import type { Item, Sheet } from "@evenhand/shared/sheet";
import { normalDeviate, seededRandom } from "@evenhand/measurement/random";
import type { Random } from "@evenhand/measurement/random";
import { applicablePlaces } from "@evenhand/sheet/expand";
import type { Place } from "@evenhand/sheet/expand";
import { houseGrades } from "@evenhand/sheet/grade-scale";

const form: VehicleForm = {
  body: "sedan",
  doors: 2,
  cylinders: 6,
  construction: "body-on-frame",
  gearbox: "manual",
  driven: "rear",
  fuelSystem: "carburetor",
  systemVolts: 12,
  brakes: { front: "disc", rear: "drum" },
  leftHandDrive: true,
};

const pick = <T>(list: readonly T[], random: Random): T | undefined =>
  list[Math.floor(random() * list.length)];

const readingOf = ({ reading }: Item, random: Random): Answer | undefined => {
  if (reading === undefined) return undefined;
  const { ask, delta, unit, spots, plausible, repeatability } = reading;
  const typical = reading.typical ?? (plausible[0] + plausible[1]) / 2;
  const center = typical + 0.6 * delta.absolute * normalDeviate(random);
  const values = Array.from({ length: ask.readings * ask.spots }, (_, index) => {
    const value = Number((center + repeatability.value * normalDeviate(random)).toPrecision(5));
    const spot = spots[index % Math.max(1, spots.length)]?.id;
    return {
      value: Math.min(plausible[1], Math.max(plausible[0], value)),
      ...(spot === undefined ? {} : { spot }),
    };
  });
  return { kind: "reading", unit, values };
};

const faultsOf = ({ faults }: Item, random: Random, cells: readonly string[]): Answer | undefined => {
  if (faults === undefined) return undefined;
  if (random() < 0.6) return { kind: "faults", found: [], denied: "all" };
  const found = Array.from({ length: 1 + Math.floor(random() * 2) }, () => ({
    kind: pick(faults.kinds, random) ?? "dent",
    extent: { value: Math.ceil(random() * 80), unit: "mm" as const },
    ...(cells.length === 0 ? {} : { spot: pick(cells, random) }),
  }));
  const denied = faults.kinds.filter((kind) => found.every((fault) => fault.kind !== kind)).slice(0, 2);
  return { kind: "faults", found, denied };
};

/** What an ordinary careful person writes for an item. */
const answerOf = (item: Item, random: Random, cells: readonly string[]): Answer => {
  if (random() < 0.04) return { kind: "not-seen", reason: "not-reached" };
  switch (item.answer) {
    case "grade":
      return { kind: "grade", scale: "house", value: houseGrades[2 + Math.floor(random() * 3)] ?? "as-new" };
    case "working":
      return { kind: "working", value: random() < 0.92 ? "yes" : "no" };
    case "presence":
      return { kind: "presence", value: random() < 0.5 ? "present" : "absent" };
    case "choice":
      return { kind: "choice", option: pick(item.choice?.options ?? [], random)?.id ?? "not-known" };
    case "code":
      return { kind: "code", text: `${random().toString(36).slice(2, 8)} 4102`.toUpperCase() };
    case "color":
      return { kind: "color", geometry: "45/0", metallic: false, values: [{ L: 41.2, a: 33.7, b: 18.4 }] };
    case "reading":
      return readingOf(item, random) ?? { kind: "not-seen", reason: "no-tool" };
    case "faults":
      return faultsOf(item, random, cells) ?? { kind: "not-seen", reason: "covered" };
  }
};

const findingOf = ({ item, position }: Place, sheet: Sheet, random: Random, index: number): Finding => {
  const cells = sheet.drawings.find(({ id }) => id === item.faults?.drawing)?.cells.map(({ id }) => id) ?? [];
  const answer = answerOf(item, random, cells);
  return {
    item: item.id,
    position,
    answer,
    firmness: random() < 0.85 ? "asserted" : "hedged",
    basis: answer.kind === "reading" ? "measured" : "seen",
    ...(answer.kind === "reading" ? { instrument: "ordinary" } : {}),
    person: "ann",
    time: new Date(Date.UTC(2026, 4, 12, 14) + index * 30_000).toISOString(),
    blind: true,
    ...(index % 9 === 0 ? { note: "Looked at twice, in good light." } : {}),
  };
};

const reportOf = (
  sheet: Sheet,
  places: readonly Place[],
  kind: "statement" | "inspection",
  seed: number,
): Report => {
  const random = seededRandom(seed);
  const dealer = kind === "statement";
  return {
    format: "evenhand-report",
    version: 1,
    kind,
    sheet: { id: sheet.id, version: sheet.version },
    vehicle: { make: "Alderbrook", model: "Meridian", modelYear: 1958, identification: "AM58-10442", form },
    author: dealer
      ? { organization: "Larkspur Motor House", role: "dealer" }
      : { organization: "Quiet Hill Inspection", role: "inspector" },
    visit: { started: dealer ? "2026-05-04T14:00:00Z" : "2026-05-12T14:00:00Z", zone: "America/Chicago" },
    instruments: [{ id: "ordinary", name: "the item's ordinary instrument" }],
    persons: [{ id: "ann", name: "Ann Teller" }],
    scales: [],
    findings: places.map((place, index) => findingOf(place, sheet, random, index)),
  };
};

/** Every so-many-th place, so that all sections and kinds take part. */
const spread = (places: readonly Place[], count: number): Place[] =>
  Array.from({ length: count }, (_, index) => places[Math.floor((index * places.length) / count)]).filter(
    (place) => place !== undefined,
  );

/** How many places the sheet has on the sample's car. */
export const placeCount = (sheet: Sheet): number => applicablePlaces(sheet, form).length;

/**
 * A statement and an inspection of so many findings each, over places spread through the sheet; nine in ten of them
 * answered by both.
 *
 * @throws {RangeError} where the sheet has too few places
 */
export const sampleReports = (sheet: Sheet, findings: number, seed: number): { a: Report; b: Report } => {
  const places = applicablePlaces(sheet, form);
  const wanted = Math.ceil(findings * 1.1);
  if (places.length < wanted) throw new RangeError(`${wanted} places wanted, ${places.length} on the sheet`);
  const chosen = spread(places, wanted);
  return {
    a: reportOf(sheet, chosen.slice(0, findings), "statement", seed),
    b: reportOf(sheet, chosen.slice(wanted - findings), "inspection", seed + 1),
  };
};
