import { beforeEach, describe, expect, test } from "vitest";
import type { Person } from "./setup/person.ts";
import { useService } from "./setup/service.ts";
import { acceptOrder, header, makeVehicle, order, publish } from "./setup/story.ts";
import { joinPerson, makeWorld, type World } from "./setup/world.ts";

const service = useService();
let world: World;
beforeEach(async () => {
  world = await makeWorld(service());
});

const tread = {
  id: "tread",
  name: "Brass one from the van",
  kind: "tread depth gauge",
  resolution: { value: 0.5, unit: "1/32in" },
  accuracy: { absolute: { value: 0.3, unit: "1/32in" }, share: 0 },
  calibrated: "2026-02-11",
};
const paint = {
  id: "paint",
  name: "Paint gauge",
  kind: "coating thickness gauge",
  resolution: { value: 1, unit: "um" },
};
const both = {
  instruments: [
    { ...tread, retired: false },
    { ...paint, retired: true },
  ],
};
const bare = { visit: header.visit, persons: header.persons };

const pathOf = ({ organization }: Person) => ({ path: { id: organization } });
const stored = (person: Person) => person.does("firmInstruments.get", pathOf(person));
const put = (person: Person, body: unknown, revision = 0) =>
  person.does("firmInstruments.put", { ...pathOf(person), revision, body });
const drafted = async (person: Person, id: string) =>
  (await person.does("reports.get", { path: { id } })).report.instruments;

describe("a firm's instruments", () => {
  test("are kept as they were sent, and nothing stands there before", async () => {
    expect(await stored(world.dealer)).toEqual({ revision: 0, instruments: [] });
    expect(await put(world.dealer, both)).toEqual({ revision: 1, ...both });
    expect(await stored(world.dealer)).toEqual({ revision: 1, ...both });
    expect(await stored(world.inspector)).toEqual({ revision: 0, instruments: [] });
  });

  test("meant for an older state are refused, and the newer list stays", async () => {
    await put(world.dealer, both);
    const asked = { ...pathOf(world.dealer), revision: 0, body: { instruments: [] } };
    expect((await world.dealer.isRefused("firmInstruments.put", asked)).code).toBe("revision-moved");
    expect(await stored(world.dealer)).toEqual({ revision: 1, ...both });
  });

  test("are read by everybody of the firm and changed by its administrators", async () => {
    await put(world.inspector, both);
    const member = await joinPerson(service(), world.inspector.organization, "Ivo Marsh-Dell");
    expect(await stored(member)).toEqual({ revision: 1, ...both });
    const asked = { ...pathOf(member), revision: 1, body: { instruments: [] } };
    expect((await member.isRefused("firmInstruments.put", asked)).code).toBe("not-found");
    expect(await stored(member)).toEqual({ revision: 1, ...both });
  });

  test("of another firm are not there for anybody", async () => {
    await put(world.dealer, both);
    const asked = { ...pathOf(world.dealer), revision: 1, body: { instruments: [] } };
    expect((await world.inspector.isRefused("firmInstruments.get", pathOf(world.dealer))).code).toBe(
      "not-found",
    );
    expect((await world.inspector.isRefused("firmInstruments.put", asked)).code).toBe("not-found");
    expect((await stored(world.dealer)).revision).toBe(1);
  });

  test("that do not hold are refused field by field, and nothing of them is kept", async () => {
    const body = {
      instruments: [
        { ...tread, resolution: { value: 1, unit: "psi" }, retired: false },
        { ...tread, kind: "divining rod", retired: false },
      ],
    };
    const asked = { ...pathOf(world.dealer), revision: 0, body };
    const { problems } = await world.dealer.isRefused("firmInstruments.put", asked);
    expect(problems?.map(({ at }) => at)).toEqual([
      "/instruments/0/resolution/unit",
      "/instruments/1/id",
      "/instruments/1/kind",
    ]);
    expect(problems?.[0]?.reason).toContain("write the smallest step in 1/32in");
    expect((await stored(world.dealer)).revision).toBe(0);
  });

  test("may not be named with what turns the direction of writing", async () => {
    const body = { instruments: [{ ...tread, name: "Gauge \u202E7", retired: false }] };
    const asked = { ...pathOf(world.dealer), revision: 0, body };
    const { problems } = await world.dealer.isRefused("firmInstruments.put", asked);
    expect(problems?.map(({ at }) => at)).toEqual(["/instruments/0/name"]);
  });
});

describe("a report that is begun", () => {
  test("as a statement has the firm's instruments, without those retired", async () => {
    await put(world.dealer, both);
    const vehicle = await makeVehicle(world.dealer);
    const { id } = await world.dealer.does("reports.state", { path: { id: vehicle }, body: bare });
    expect(await drafted(world.dealer, id)).toEqual([tread]);
  });

  test("as an inspection has those of the firm that inspects, as they were then", async () => {
    await put(world.dealer, { instruments: [{ ...paint, retired: false }] });
    const { revision } = await put(world.inspector, both);
    const { vehicle, statement } = await publish(world.dealer);
    const asked = await order(world.buyer, world.inspector, vehicle, statement);
    await acceptOrder(world.inspector, asked);
    const { id } = await world.inspector.does("reports.inspect", { path: { id: asked }, body: bare });
    await put(world.inspector, { instruments: [] }, revision);
    expect(await drafted(world.inspector, id)).toEqual([tread]);
  });

  test("with instruments of its own has those, be it none", async () => {
    await put(world.dealer, both);
    const body = { ...bare, instruments: [] };
    const vehicle = await makeVehicle(world.dealer);
    const { id } = await world.dealer.does("reports.state", { path: { id: vehicle }, body });
    expect(await drafted(world.dealer, id)).toEqual([]);
  });
});
