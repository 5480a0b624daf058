import { randomUUID } from "node:crypto";
import { type HeldUp, heldUp } from "@evenhand/comparison/held-up";
import type { DealerRecord, SectionRecord } from "@evenhand/shared/http/records";
import { beforeEach, describe, expect, test } from "vitest";
import { query } from "./setup/database.ts";
import {
  alike,
  confirmed,
  type Counts,
  fell,
  insertInspected,
  notContradicted,
} from "./setup/inspected-cars.ts";
import type { Person } from "./setup/person.ts";
import { useService } from "./setup/service.ts";
import { acceptOrder, header, inspect, inspected, order, reseal, horn, seal, write } from "./setup/story.ts";
import { makePerson, makeWorld, type World } from "./setup/world.ts";

const service = useService();
let world: World;
beforeEach(async () => {
  world = await makeWorld(service());
});

const recordOf = (dealer: Person, by: Person = world.buyer): Promise<DealerRecord> =>
  by.does("dealerRecords.get", { path: { id: dealer.organization } });
const insert = (dealer: Person, cars: readonly Counts[]) =>
  insertInspected({ ...world, databaseUrl: service().databaseUrl, dealer }, cars);
const sql = <R extends object>(text: string, values: unknown[] = []) =>
  query<R>(service().databaseUrl, text, values);

/** What the core makes of the same counts, as it may be shown. */
const expected = (dealer: Person, all: ReadonlyMap<Person, readonly Counts[]>): object[] =>
  heldUp(
    [...all].flatMap(([each, cars]) =>
      cars.map((counts, car) => ({
        dealer: each.organization,
        car: String(car),
        sections: new Map(Object.entries(counts)),
      })),
    ),
  )
    .filter((row) => row.dealer === dealer.organization)
    .map((row: HeldUp) => {
      const { dealer: _dealer, cars, ...shown } = row;
      if (row.state === "too-few") return shown;
      const { confirmed: confirmedCars, notContradicted: silent, fell: fallen } = cars;
      return { ...shown, fell: fallen, notContradicted: silent, confirmedCars };
    });
const shareIn = (record: DealerRecord, section: string): number | undefined => {
  const row = record.sections.find((each) => each.section === section);
  return row?.state === "known" ? row.heldUp.estimate : undefined;
};
const sectionIn = (record: DealerRecord, section: string): SectionRecord | undefined =>
  record.sections.find((each) => each.section === section);

/** Nineteen made-up cars that held up in the section of the horn and of the tires. */
const almostEnough = () => insert(world.dealer, alike(19, { electrics: confirmed, wheels: confirmed }));
/** Past the lock that keeps a comparison as it was: as one made before counts were kept. */
const uncount = (comparison: string) =>
  sql(`ALTER TABLE comparison DISABLE TRIGGER comparison_sealed;
    UPDATE comparison SET held_up_counts = NULL WHERE id = '${comparison}';
    ALTER TABLE comparison ENABLE TRIGGER comparison_sealed`);
const countsOf = async (comparison: string): Promise<Counts | null | undefined> =>
  (
    await sql<{ held_up_counts: Counts | null }>("SELECT held_up_counts FROM comparison WHERE id = $1", [
      comparison,
    ])
  )[0]?.held_up_counts;

/** The same car ordered again, inspected again by the same firm. */
async function inspectAgain(vehicle: string, statement: string, findings = inspected): Promise<string> {
  const { buyer, inspector } = world;
  const id = await order(buyer, inspector, vehicle, statement);
  await acceptOrder(inspector, id);
  const report = await inspector.does("reports.inspect", { path: { id }, body: header });
  return (await seal(inspector, report.id, await write(inspector, report.id, findings))).comparison ?? "";
}

describe("what a comparison keeps", () => {
  test("is what became of the statement, by section", async () => {
    const { comparison } = await inspect(world);
    expect(await countsOf(comparison)).toEqual({
      wheels: { confirmed: 1, notContradicted: 0, fell: 1, leftOut: 0 },
      electrics: { confirmed: 0, notContradicted: 0, fell: 1, leftOut: 0 },
    });
  });

  test("is nothing where two statements are compared, or an inspection with a statement", async () => {
    const { vehicle, statement, statementReport, inspection } = await inspect(world);
    const { id: second } = await reseal(world.dealer, statementReport, horn("no"));
    const compare = (a: string, b: string) =>
      world.buyer.does("comparisons.create", { path: { id: vehicle }, body: { a, b } });
    expect(await countsOf((await compare(statement, second)).id)).toBeNull();
    expect(await countsOf((await compare(inspection, statement)).id)).toBeNull();
  });

  test("is filled in once, and neither it nor anything else is changed afterwards", async () => {
    const { comparison } = await inspect(world);
    const refused = /rows of comparison are never changed/;
    const change = (what: string) => sql(`UPDATE comparison SET ${what} WHERE id = $1`, [comparison]);
    await expect(change("held_up_counts = '{}'")).rejects.toThrow(refused);
    await expect(change("held_up_counts = NULL")).rejects.toThrow(refused);
    await uncount(comparison);
    await expect(change("held_up_counts = '{}', document = '{}'")).rejects.toThrow(refused);
    await expect(change("engine = 'another'")).rejects.toThrow(refused);
    await expect(sql("DELETE FROM comparison WHERE id = $1", [comparison])).rejects.toThrow(refused);
    await change("held_up_counts = '{}'");
    expect(await countsOf(comparison)).toEqual({});
  });
});

describe("a dealer's record", () => {
  test("under twenty cars says how many, and not how many fell", async () => {
    await insert(world.dealer, [
      ...alike(9, { body: confirmed, trunk: fell }),
      ...alike(10, { body: fell, gaps: notContradicted }),
    ]);
    expect(await recordOf(world.dealer)).toEqual({
      dealer: { id: world.dealer.organization, name: "Delia's firm" },
      cars: 19,
      needed: 20,
      sections: [
        { section: "body", state: "too-few", n: 19, needed: 20 },
        { section: "gaps", state: "too-few", n: 10, needed: 20 },
        { section: "trunk", state: "too-few", n: 9, needed: 20 },
      ],
    });
  });

  test("from twenty cars on is what the core gives for the same counts, in the order of the sheet", async () => {
    const cars = [
      ...alike(14, { wheels: confirmed, body: confirmed }),
      ...alike(5, { wheels: fell, body: notContradicted }),
      ...alike(6, { wheels: fell }),
    ];
    await insert(world.dealer, cars);
    const record = await recordOf(world.dealer);
    expect(record.cars).toBe(25);
    expect(record.sections.map(({ section, state }) => [section, state])).toEqual([
      ["body", "too-few"],
      ["wheels", "known"],
    ]);
    expect(record.sections).toEqual(
      expect.arrayContaining(expected(world.dealer, new Map([[world.dealer, cars]]))),
    );
    expect(sectionIn(record, "wheels")).toMatchObject({
      n: 25,
      pooled: false,
      heldUp: { estimate: 14 / 25 },
      fell: 11,
      notContradicted: 0,
      confirmedCars: 14,
    });
  });

  test("is pooled with other dealers' cars from five dealers on", async () => {
    const own = [...alike(8, { body: confirmed }), ...alike(12, { body: fell })];
    const others = [...alike(18, { body: confirmed }), ...alike(2, { body: fell })];
    const all = new Map<Person, readonly Counts[]>([[world.dealer, own]]);
    await insert(world.dealer, own);
    for (const name of ["Ada Fenwick-Lune", "Bram Fenwick-Lune", "Cleo Fenwick-Lune"]) {
      const dealer = await makePerson(service(), "dealer", name);
      await insert(dealer, others);
      all.set(dealer, others);
    }
    expect(shareIn(await recordOf(world.dealer), "body")).toBe(0.4);
    await insert(world.otherDealer, others);
    all.set(world.otherDealer, others);
    const record = await recordOf(world.dealer);
    expect(record.sections).toEqual(expected(world.dealer, all));
    expect(sectionIn(record, "body")).toMatchObject({ pooled: true, n: 20, fell: 12 });
    expect(shareIn(record, "body")).toBeGreaterThan(0.4);
    expect(record.cars).toBe(20);
  });

  test("counts the car with the latest of its inspections", async () => {
    await almostEnough();
    const { vehicle, statement } = await inspect(world);
    const before = await recordOf(world.dealer);
    expect(sectionIn(before, "electrics")).toMatchObject({ n: 20, fell: 1, confirmedCars: 19 });
    await inspectAgain(vehicle, statement, [horn("yes")]);
    const record = await recordOf(world.dealer);
    expect(record.cars).toBe(20);
    expect(sectionIn(record, "electrics")).toMatchObject({ n: 20, fell: 0, confirmedCars: 20 });
    expect(sectionIn(record, "wheels")).toEqual({
      section: "wheels",
      state: "too-few",
      n: 19,
      needed: 20,
    });
  });

  test("counts a corrected inspection with its newest version", async () => {
    await almostEnough();
    const { inspectionReport } = await inspect(world);
    await reseal(world.inspector, inspectionReport, horn("yes"));
    const record = await recordOf(world.dealer);
    expect(record.cars).toBe(20);
    expect(sectionIn(record, "electrics")).toMatchObject({ n: 20, fell: 0 });
    expect(sectionIn(record, "wheels")).toMatchObject({ n: 20, fell: 1 });
  });

  test("takes an inspection against the statement it was ordered on, whatever somebody compares", async () => {
    await almostEnough();
    const { vehicle, statementReport, inspection } = await inspect(world);
    const { id: later } = await reseal(world.dealer, statementReport, horn("no"));
    const made = await world.buyer.does("comparisons.create", {
      path: { id: vehicle },
      body: { a: later, b: inspection },
    });
    expect(await countsOf(made.id)).toMatchObject({ electrics: { fell: 0 } });
    expect(sectionIn(await recordOf(world.dealer), "electrics")).toMatchObject({ n: 20, fell: 1 });
  });

  test("counts what was stored before counts were kept, and keeps the count", async () => {
    await almostEnough();
    const { comparison } = await inspect(world);
    const kept = await countsOf(comparison);
    await uncount(comparison);
    expect(await countsOf(comparison)).toBeNull();
    const records = await Promise.all([recordOf(world.dealer), recordOf(world.dealer)]);
    for (const record of records) {
      expect(record.cars).toBe(20);
      expect(sectionIn(record, "wheels")).toMatchObject({ n: 20, fell: 1, confirmedCars: 19 });
    }
    expect(kept).toMatchObject({ wheels: { fell: 1 } });
    expect(await countsOf(comparison)).toEqual(kept);
  });

  test("names no car, no buyer and no inspector", async () => {
    const cars = await insert(world.dealer, alike(20, { body: confirmed }));
    const text = JSON.stringify(await recordOf(world.dealer));
    for (const id of [...cars, world.buyer.organization, world.inspector.organization]) {
      expect(text).not.toContain(id);
    }
  });

  test("of a dealer without inspected cars is empty", async () => {
    await almostEnough();
    expect(await recordOf(world.otherDealer)).toMatchObject({ cars: 0, sections: [] });
  });

  test("is there of dealers alone", async () => {
    for (const id of [randomUUID(), world.buyer.organization, world.inspector.organization]) {
      const refused = await world.buyer.isRefused("dealerRecords.get", { path: { id } });
      expect([refused.status, refused.code]).toEqual([404, "not-found"]);
    }
  });
});
