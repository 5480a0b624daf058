import { randomUUID } from "node:crypto";
import { type DealerFigures, dealerFigures } from "@evenhand/record/dealer-figures";
import type { DealerRecord, RecordFigures } from "@evenhand/shared/http/records";
import { beforeEach, describe, expect, test } from "vitest";
import { query } from "./setup/database.ts";
import {
  alike,
  confirmed,
  type Counts,
  fell,
  insertInspected,
  notContradicted,
  open,
} from "./setup/inspected-cars.ts";
import type { Person } from "./setup/person.ts";
import { useService } from "./setup/service.ts";
import {
  acceptOrder,
  entryAt,
  header,
  inspect,
  inspected,
  order,
  readComparison,
  reseal,
  horn,
  seal,
  write,
} from "./setup/story.ts";
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

/** What the core makes of the same counts. */
const expected = (dealer: Person, all: ReadonlyMap<Person, readonly Counts[]>): DealerFigures[] =>
  dealerFigures(
    [...all].flatMap(([each, cars]) =>
      cars.map((counts) => ({ dealer: each.organization, counts, decided: new Map() })),
    ),
  ).filter((row) => row.dealer === dealer.organization);
const figuresIn = (record: DealerRecord, section: string): RecordFigures | undefined =>
  record.sections.find((each) => each.section === section)?.figures;

/** Nineteen made-up cars that held up in the section of the horn and of the tires. */
const almostEnough = () => insert(world.dealer, alike(19, { electrics: confirmed, wheels: confirmed }));
/** Past the lock that keeps a comparison as it was: as one made before counts were kept. */
const uncount = (comparison: string) =>
  sql(`ALTER TABLE comparison DISABLE TRIGGER comparison_sealed;
    UPDATE comparison SET statement_counts = NULL WHERE id = '${comparison}';
    ALTER TABLE comparison ENABLE TRIGGER comparison_sealed`);
const countsOf = async (comparison: string): Promise<Counts | null | undefined> =>
  (
    await sql<{ statement_counts: Counts | null }>("SELECT statement_counts FROM comparison WHERE id = $1", [
      comparison,
    ])
  )[0]?.statement_counts;

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
    expect(await countsOf(comparison)).toMatchObject({
      wheels: {
        stated: 2,
        confirmed: 1,
        notContradicted: 0,
        falls: [{ line: "wheels.tread-depth|left-front|answer", by: null }],
      },
      electrics: { stated: 1, confirmed: 0, falls: [{ line: "electrics.horn||answer", by: null }] },
      trunk: { stated: 0, confirmed: 0, falls: [] },
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
    await expect(change("statement_counts = '{}'")).rejects.toThrow(refused);
    await expect(change("statement_counts = NULL")).rejects.toThrow(refused);
    await uncount(comparison);
    await expect(change("statement_counts = '{}', document = '{}'")).rejects.toThrow(refused);
    await expect(change("engine = 'another'")).rejects.toThrow(refused);
    await expect(sql("DELETE FROM comparison WHERE id = $1", [comparison])).rejects.toThrow(refused);
    await change("statement_counts = '{}'");
    expect(await countsOf(comparison)).toEqual({});
  });
});

describe("a dealer's record", () => {
  test("under twenty cars says how many, and not how many statements fell", async () => {
    await insert(world.dealer, [
      ...alike(9, { body: confirmed, trunk: fell }),
      ...alike(10, { body: fell, gaps: notContradicted }),
    ]);
    expect(await recordOf(world.dealer)).toEqual({
      dealer: { id: world.dealer.organization, name: "Delia's firm" },
      cars: 19,
      needed: 20,
      whole: { state: "too-few", cars: 19 },
      sections: [
        { section: "body", figures: { state: "too-few", cars: 19 } },
        { section: "trunk", figures: { state: "too-few", cars: 9 } },
      ],
    });
  });

  test("from twenty cars on is what the core gives for the same counts, in the order of the sheet", async () => {
    const cars = [
      ...alike(14, { wheels: confirmed, body: confirmed }),
      ...alike(5, { wheels: fell, body: open }),
      ...alike(6, { wheels: fell }),
    ];
    await insert(world.dealer, cars);
    const record = await recordOf(world.dealer);
    expect(record.cars).toBe(25);
    expect(record.sections.map(({ section, figures }) => [section, figures.state])).toEqual([
      ["body", "too-few"],
      ["wheels", "known"],
    ]);
    const rows = [{ section: null, figures: record.whole }, ...record.sections].map(
      ({ section, figures }) => ({
        dealer: world.dealer.organization,
        section,
        ...figures,
      }),
    );
    expect(rows).toEqual(expect.arrayContaining(expected(world.dealer, new Map([[world.dealer, cars]]))));
    expect(figuresIn(record, "wheels")).toMatchObject({
      cars: 25,
      tested: 100,
      fell: 11,
      fallen: { estimate: 0.11 },
      others: null,
    });
    expect(record.whole).toMatchObject({ tested: 171, fell: 11, open: 5 });
  });

  test("has the other dealers' middle beside it, and is drawn toward nobody", async () => {
    const own = [...alike(8, { body: confirmed }), ...alike(12, { body: fell })];
    const others = [...alike(18, { body: confirmed }), ...alike(2, { body: fell })];
    await insert(world.dealer, own);
    const alone = (await recordOf(world.dealer)).whole;
    for (const name of ["Ada Fenwick-Lune", "Bram Fenwick-Lune"]) {
      await insert(await makePerson(service(), "dealer", name), others);
    }
    await insert(world.otherDealer, others);
    const { whole, cars } = await recordOf(world.dealer);
    expect(alone).toMatchObject({ fallen: { estimate: 0.15 }, others: null });
    expect(whole).toEqual({ ...alone, others: { dealers: 3, fallen: 0.025, stated: 0.8 } });
    expect(cars).toBe(20);
  });

  test("lets a statement fall once the dealer accepts what was found, and not before", async () => {
    await almostEnough();
    const { comparison } = await inspect(world);
    const lines = await readComparison(world.buyer, comparison);
    const laid = await world.buyer.does("releases.create", {
      path: { id: comparison },
      body: {
        entries: [entryAt(lines, "electrics.horn"), entryAt(lines, "wheels.tread-depth", "left-front")],
      },
    });
    const [first, second] = laid.items;
    const before = await recordOf(world.dealer);
    expect(before.whole).toMatchObject({ cars: 20, fell: 0, open: 2, fallen: { estimate: 0 } });
    const answer = (release: typeof first, how: "accept" | "contest") =>
      world.dealer.does("releases.move", {
        body: { lines: [release], move: how, words: "Looked at again." },
      });
    await answer(second, "contest");
    expect((await recordOf(world.dealer)).whole).toEqual(before.whole);
    await answer(first, "accept");
    expect((await recordOf(world.dealer)).whole).toMatchObject({ fell: 1, open: 1 });
  });

  test("counts the car with the latest of its inspections", async () => {
    await almostEnough();
    const { vehicle, statement } = await inspect(world);
    const before = await recordOf(world.dealer);
    expect(before.whole).toMatchObject({ cars: 20, open: 2 });
    await inspectAgain(vehicle, statement, [horn("yes")]);
    const record = await recordOf(world.dealer);
    expect(record.cars).toBe(20);
    expect(figuresIn(record, "electrics")).toMatchObject({ cars: 20, tested: 77, open: 0 });
    expect(figuresIn(record, "wheels")).toEqual({ state: "too-few", cars: 19 });
  });

  test("counts a corrected inspection with its newest version", async () => {
    await almostEnough();
    const { inspectionReport } = await inspect(world);
    await reseal(world.inspector, inspectionReport, horn("yes"));
    const record = await recordOf(world.dealer);
    expect(record.cars).toBe(20);
    expect(figuresIn(record, "electrics")).toMatchObject({ cars: 20, open: 0 });
    expect(figuresIn(record, "wheels")).toMatchObject({ cars: 20, open: 1 });
  });

  test("takes an inspection against the statement it was ordered on, whatever somebody compares", async () => {
    await almostEnough();
    const { vehicle, statementReport, inspection } = await inspect(world);
    const { id: later } = await reseal(world.dealer, statementReport, horn("no"));
    const made = await world.buyer.does("comparisons.create", {
      path: { id: vehicle },
      body: { a: later, b: inspection },
    });
    expect(await countsOf(made.id)).toMatchObject({ electrics: { falls: [] } });
    expect((await recordOf(world.dealer)).whole).toMatchObject({ cars: 20, open: 2 });
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
      expect(figuresIn(record, "wheels")).toMatchObject({ cars: 20, tested: 77, open: 1 });
    }
    expect(kept).toMatchObject({ wheels: { falls: [{ by: null }] } });
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
