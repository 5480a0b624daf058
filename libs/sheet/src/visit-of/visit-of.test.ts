import type { VehicleForm } from "@evenhand/shared/report";
import type { Depth } from "@evenhand/shared/sheet";
import { describe, expect, it } from "vitest";
import { sheetVersion1 as sheet } from "../sheet-version-1/index.ts";
import { orderedItems } from "../version-1/visit-order.ts";
import { ofBrief, ofDepth, visitOf } from "./index.ts";

const coupe: VehicleForm = {
  body: "coupe",
  doors: 2,
  cylinders: 8,
  construction: "unit-body",
  gearbox: "manual",
  driven: "rear",
  fuelSystem: "carburetor",
  systemVolts: 12,
  brakes: { front: "disc", rear: "drum" },
  leftHandDrive: true,
  frontPivots: "ball-joints",
  powerTop: false,
};
const minutesOf = (depth: Depth, form = coupe) =>
  visitOf(sheet, form, ofDepth(depth)).reduce((sum, { minutes }) => sum + minutes, 0);
const idsOf = (depth: Depth) =>
  visitOf(sheet, coupe, ofDepth(depth)).flatMap(({ items }) => items.map(({ id }) => id));

describe("a visit", () => {
  it("takes about an hour and a half, four to five hours, or more than one person's day", () => {
    expect(minutesOf("first-look")).toBeGreaterThan(85);
    expect(minutesOf("first-look")).toBeLessThan(95);
    expect(minutesOf("half-day")).toBeGreaterThan(220);
    expect(minutesOf("half-day")).toBeLessThan(300);
    expect(minutesOf("day")).toBeGreaterThan(600);
  });

  it("holds in its first look what carries the price, and neither gaps nor compression", () => {
    const first = new Set(idsOf("first-look"));
    const priced = [
      "identity.title-holder",
      "identity.partial-vin",
      "identity.stamping-surface",
      "identity.date-code",
      "identity.plate-fixing",
      "doors.first-color",
      "identity.odometer-on-papers",
      "body.magnet",
      "road.braking",
      "engine.noise",
      "engine.smoke-overrun",
      "road.cold-start",
      "underbody.lift-points",
      "visit.opinion",
    ];
    expect(priced.filter((id) => !first.has(id))).toEqual([]);
    expect(
      ["gaps.width-top", "interior.belt-webbing", "engine.compression"].filter((id) => first.has(id)),
    ).toEqual([]);
  });

  it.each<[string, number]>([
    ["engine.compression", 50],
    ["body.faults", 35],
    ["brakes.lining-thickness", 45],
    ["electrics.lamps", 8],
  ])("counts the honest minutes of %s", (id, minutes) => {
    expect(sheet.items.find((item) => item.id === id)?.minutes).toBe(minutes);
  });

  it.each<Depth>(["first-look", "half-day", "day"])("is on the road for 20 minutes and more: %s", (depth) => {
    const road = visitOf(sheet, coupe, ofDepth(depth)).find(({ stage }) => stage === "road");
    expect(road?.minutes).toBeGreaterThanOrEqual(20);
    expect(road?.minutes).toBeLessThanOrEqual(32);
  });

  it("asks neither what only a seller can claim nor what another item asks", () => {
    const all = new Set(idsOf("day"));
    const left = [
      "wheels.tire-age",
      "engine.rebuild-claim",
      "identity.miles-claim",
      "electrics.power-windows",
      "brakes.pull",
    ];
    expect(left.filter((id) => all.has(id))).toEqual([]);
  });
});

const linesOf = (scope: Parameters<typeof visitOf>[2]) =>
  visitOf(sheet, coupe, scope).flatMap(({ stage, stops }) =>
    stops.flatMap(({ place, lines }) =>
      lines.map(({ item, position }) => ({ stage, place: place.id, item: item.id, position })),
    ),
  );
const lamps = (depth: Depth) => linesOf(ofDepth(depth)).filter(({ item }) => item === "electrics.lamps");

const cornersOf = (depth: Depth) =>
  linesOf(ofDepth(depth)).flatMap(({ item, position }) => (item === "wheels.tread-depth" ? position : []));

describe("the lines of a visit", () => {
  it("of a first look are the lamps the road asks, and in half a day all of them", () => {
    expect(lamps("first-look").map(({ position }) => position)).toEqual([
      "left-front-turn",
      "right-front-turn",
      "left-stop",
      "right-stop",
      "left-rear-turn",
      "right-rear-turn",
    ]);
    expect(lamps("half-day").length).toBeGreaterThanOrEqual(14);
    expect(new Set(lamps("day").map(({ place }) => place))).toEqual(new Set(["cabin"]));
  });

  it("of a first look are the tires the car stands on, and in half a day the spare's too", () => {
    expect(cornersOf("first-look").toSorted()).toEqual([
      "left-front",
      "left-rear",
      "right-front",
      "right-rear",
    ]);
    expect(cornersOf("half-day")).toContain("spare");
  });

  it("are walked wheel by wheel: what belongs to one corner is done while one stands there", () => {
    const wheel = linesOf(ofDepth("first-look")).filter(
      ({ stage, place }) => stage === "daylight" && place === "right-quarter",
    );
    expect(wheel.map(({ item }) => item)).toEqual(
      expect.arrayContaining(["wheels.tire-size", "wheels.tread-depth", "wheels.tire-faults"]),
    );
    expect(
      new Set(wheel.flatMap(({ item, position }) => (item.startsWith("wheels.") ? position : []))),
    ).toEqual(new Set(["right-rear"]));
  });

  it("stand under the car only while it is raised", () => {
    const wrong = linesOf(ofDepth("day")).filter(
      ({ stage, place }) => place.startsWith("under-") && !["lift", "second-lift"].includes(stage),
    );
    expect(wrong).toEqual([]);
  });

  it("of a brief are its items, whole or in part, and no other", () => {
    const brief = ofBrief([
      { item: "electrics.lamps", positions: ["left-stop", "right-stop"] },
      { item: "brakes.pull" },
      { item: "engine.oil" },
    ]);
    expect(linesOf(brief).map(({ item, position }) => `${item}@${position}`)).toEqual([
      "engine.oil@",
      "electrics.lamps@left-stop",
      "electrics.lamps@right-stop",
    ]);
    expect(visitOf(sheet, coupe, brief).map(({ minutes }) => minutes)).toEqual([1, 2]);
  });
});

describe("the order of a visit", () => {
  const stageOf = new Map(sheet.items.map(({ id, stage }) => [id, stage]));

  it("gives every item of the sheet a turn, and none that is not on it", () => {
    expect(orderedItems.toSorted()).toEqual(sheet.items.map(({ id }) => id).toSorted());
  });

  it.each([
    ["lift", ["lift", "second-lift"]],
    ["road", ["road"]],
    ["cold-engine", ["cold", "cold-start"]],
    ["hot-engine", ["hot", "second-lift", "last"]],
    ["daylight", ["daylight"]],
  ] as const)("looks at what needs %s where it has it", (need, stages) => {
    const wrong = sheet.items.filter(
      (item) => item.needs.includes(need) && !stages.some((stage) => stage === item.stage),
    );
    expect(wrong.map(({ id }) => id)).toEqual([]);
  });

  it("runs nothing before the cold start, and takes no slope before the gate", () => {
    const before = sheet.items.filter(({ stage }) => ["cold", "papers", "daylight"].includes(stage));
    const runs = /engine running|\bidl(e|ing)\b|warm engine|start the engine|crank\b|fast idle/i;
    expect(before.filter(({ how }) => runs.test(how)).map(({ id }) => id)).toEqual([]);
    const sloping = sheet.items.filter(
      ({ how, stage }) => /\b(slope|downhill)\b/.test(how) && stage !== "road",
    );
    expect(sloping.map(({ id }) => id)).toEqual([]);
  });

  it("measures compression and leak-down last, and fits testers cold", () => {
    expect(stageOf.get("engine.compression")).toBe("last");
    expect(stageOf.get("engine.leak-down")).toBe("last");
    const fitted = ["engine.combustion-gas", "engine.oil-pressure-idle", "engine.oil-pressure-2000"];
    const hows = sheet.items.filter(({ id }) => fitted.includes(id)).map(({ how }) => how);
    expect(hows.every((how) => /\b(fit|fitted)\b.*\bcold\b/i.test(how))).toBe(true);
  });

  it("names a place to stand for every item, and for every position of the car's outside and underside", () => {
    const places = new Set(sheet.places.map(({ id }) => id));
    const nowhere = sheet.items.filter(({ place }) => place === undefined || !places.has(place));
    expect(nowhere.map(({ id }) => id)).toEqual([]);
    const unknown = sheet.positionSets.flatMap(({ positions }) =>
      positions.filter(({ place }) => place !== undefined && !places.has(place)),
    );
    expect(unknown.map(({ id }) => id)).toEqual([]);
  });
});

describe("cautions at the gates", () => {
  it("stand once at the gate of a stage one of whose items carries them", () => {
    const lift = visitOf(sheet, coupe, ofDepth("first-look")).find(({ stage }) => stage === "lift");
    expect(lift?.cautions.map(({ id }) => id)).toEqual(
      expect.arrayContaining(["lift-points", "jack-alone", "second-person", "raised-car", "eye-protection"]),
    );
    const start = visitOf(sheet, coupe, ofDepth("first-look")).find(({ stage }) => stage === "cold-start");
    expect(start?.cautions.map(({ id }) => id)).toEqual(
      expect.arrayContaining(["chocks", "carbon-monoxide"]),
    );
  });

  it.each([
    ["lift", ["lift-points", "raised-car", "eye-protection"]],
    ["road", ["road-consent", "second-person", "first-braking"]],
    ["hot-engine", ["hot-parts"]],
    ["dismantling", ["owners-word", "closed-again"]],
    ["permission", ["owners-word"]],
  ] as const)("are carried by everything that needs %s", (need, cautions) => {
    const bare = sheet.items.filter(
      (item) => item.needs.includes(need) && cautions.some((id) => !item.cautions.includes(id)),
    );
    expect(bare.map(({ id }) => id)).toEqual([]);
  });

  it("are carried by everything done while the engine runs", () => {
    const bare = sheet.items.filter(
      ({ stage, cautions }) =>
        ["cold-start", "running", "hot"].includes(stage) && !cautions.includes("carbon-monoxide"),
    );
    expect(bare.map(({ id }) => id)).toEqual([]);
  });

  it.each<[caution: string, forbidden: RegExp]>([
    [
      "raised-car",
      /helper (loads|sits|runs)|helper presses(?!.*(on its wheels|drive-on))|helper rocks(?!.*(on the ground|drive-on))/,
    ],
    ["limited-slip", /\b(drive|engine turns|under power)\b/],
    ["lining-dust", /\b(blow|dry-brush|brush)\b/],
    ["lead-paint", /\b(sand|scrape|grind)\b(?!,)/],
    ["asbestos-undercoat", /\b(scrape|sand|heat)\b/],
    ["hot-coolant", /open.*\bhot\b/],
    ["refrigerant", /\b(vent off|open the fittings|let out)\b/],
    ["leak-down-air", /crank held|wrench on the crank/],
    ["road-consent", /full throttle/],
    ["slope", /^On a slope/],
  ])("%s: no item that carries it asks for what it forbids", (caution, forbidden) => {
    const asking = sheet.items.filter(
      ({ how, cautions }) => cautions.includes(caution) && forbidden.test(how),
    );
    expect(asking.map(({ id }) => id)).toEqual([]);
  });

  it("never halves turns, and asks for ten at least", () => {
    const turns = sheet.items.find(({ id }) => id === "driveline.axle-turns")?.how ?? "";
    expect(turns).not.toMatch(/halve|half/);
    expect(turns).toMatch(/ten turns or more/);
    expect(turns).toMatch(/just as counted/);
  });
});
