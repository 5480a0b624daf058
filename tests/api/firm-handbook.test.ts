import type { FindingInput } from "@evenhand/shared/finding";
import { beforeEach, describe, expect, test } from "vitest";
import type { Person } from "./setup/person.ts";
import { useService } from "./setup/service.ts";
import { car, draftStatement, inspect, inspected, makeVehicle, readComparison } from "./setup/story.ts";
import { joinPerson, makeWorld, type World } from "./setup/world.ts";

const service = useService();
let world: World;
beforeEach(async () => {
  world = await makeWorld(service());
});

/** Made in the first week of 2023: three years and four months old at the visit. */
const tire: FindingInput = {
  item: "wheels.tire-identification",
  position: "left-front",
  answer: { kind: "code", text: "DOT 4B9Y YKR2 0123" },
};
const compression = { source: "Uthwick shop manual 1958, section 6", data: { compressionLeast: 120 } };

const own = (limits: Record<string, number>, more: object[] = []) => ({ limits, makers: more });
const pathOf = (person: Person) => ({ path: { id: person.organization } });
const put = (person: Person, body: object, revision = 0) =>
  person.does("firmHandbook.put", { ...pathOf(person), revision, body });

const tireAge = async (comparison: string) =>
  (await readComparison(world.buyer, comparison)).crossChecks.find(({ rule }) => rule === "tire-age");

describe("a firm's own figures", () => {
  test("of the firm that inspected judge the comparison, and the sentence's figures say whose they are", async () => {
    await put(world.inspector, own({ "tire-age.caution-years": 3 }));
    const { comparison } = await inspect(world, [...inspected, tire]);
    const check = await tireAge(comparison);
    expect(check).toMatchObject({ verdict: "breaks", reason: "caution-age" });
    expect(check?.limits).toContainEqual({
      id: "tire-age.caution-years",
      value: 3,
      unit: "a",
      origin: "firm",
    });
    expect((await readComparison(world.buyer, comparison)).handbook).toEqual({
      side: "b",
      limits: { "tire-age.caution-years": 3 },
      makerSource: null,
    });
  });

  test("of the dealer, whose claims are judged, do not", async () => {
    await put(world.dealer, own({ "tire-age.caution-years": 3 }));
    const { comparison } = await inspect(world, [...inspected, tire]);
    expect(await tireAge(comparison)).toMatchObject({ verdict: "holds", reason: "young" });
  });

  test("are sealed with the report, and changing them later changes nothing that was sealed", async () => {
    const makers = [
      { make: "uthwick", ...compression },
      { make: "Ebblecote", source: "another", data: { timing: 4 } },
    ];
    const { revision } = await put(world.inspector, own({ "tire-age.caution-years": 3 }, makers));
    const { inspection, comparison } = await inspect(world, [...inspected, tire]);
    const before = await world.inspector.does("reportVersions.document", { path: { id: inspection } });
    expect(before).toMatchObject({
      handbook: { limits: { "tire-age.caution-years": 3 }, maker: compression },
    });
    await put(world.inspector, own({}), revision);
    expect(await world.inspector.does("reportVersions.document", { path: { id: inspection } })).toEqual(
      before,
    );
    expect(await tireAge(comparison)).toMatchObject({ reason: "caution-age" });
    expect((await readComparison(world.buyer, comparison)).handbook?.makerSource).toBe(compression.source);
  });

  test("come with the draft, for help while it is written", async () => {
    const vehicle = await makeVehicle(world.dealer);
    const { id } = await draftStatement(world.dealer, vehicle);
    const empty = await world.dealer.does("reports.get", { path: { id } });
    expect(empty.handbook).toEqual({ limits: {}, makers: [] });
    const handbook = own({}, [{ make: car.make, model: car.model, ...compression }]);
    await put(world.dealer, handbook);
    expect((await world.dealer.does("reports.get", { path: { id } })).handbook).toEqual(handbook);
  });
});

describe("what a firm enters", () => {
  test("is refused figure by figure, and nothing of it is kept", async () => {
    const body = own({ "tire-age.caution-years": 50, "in-use.tread": 1, "no.such": 2 }, [
      { make: "Uthwick", fromYear: 1970, toYear: 1966, ...compression },
    ]);
    const refused = await world.inspector.isRefused("firmHandbook.put", {
      ...pathOf(world.inspector),
      revision: 0,
      body,
    });
    expect(refused.problems?.map(({ at }) => at)).toEqual([
      "/limits/tire-age.caution-years",
      "/limits/in-use.tread",
      "/limits/no.such",
      "/makers/0/toYear",
    ]);
    expect(await world.inspector.does("firmHandbook.get", pathOf(world.inspector))).toEqual({
      revision: 0,
      handbook: own({}),
    });
  });

  test("without a figure or without a source names the field", async () => {
    const body = own({}, [{ make: "Uthwick", source: " ", data: {} }]);
    const refused = await world.inspector.isRefused("firmHandbook.put", {
      ...pathOf(world.inspector),
      revision: 0,
      body,
    });
    expect(refused.problems?.map(({ at }) => at)).toEqual(["/makers/0/source", "/makers/0/data"]);
  });

  test("meant for an older state is refused, and both figures are not mixed", async () => {
    await put(world.inspector, own({ "tire-age.caution-years": 4 }));
    const refused = await world.inspector.isRefused("firmHandbook.put", {
      ...pathOf(world.inspector),
      revision: 0,
      body: own({ "tire-age.caution-years": 5 }),
    });
    expect(refused.code).toBe("revision-moved");
    const { handbook } = await world.inspector.does("firmHandbook.get", pathOf(world.inspector));
    expect(handbook.limits).toEqual({ "tire-age.caution-years": 4 });
  });

  test("is read by everybody of the firm and set by its administrators", async () => {
    const member = await joinPerson(service(), world.inspector.organization, "Ivo Marsh-Dell");
    expect((await member.does("firmHandbook.get", pathOf(member))).revision).toBe(0);
    const refused = await member.isRefused("firmHandbook.put", {
      ...pathOf(member),
      revision: 0,
      body: own({}),
    });
    expect(refused.code).toBe("not-found");
  });
});
