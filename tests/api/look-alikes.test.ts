import { randomUUID } from "node:crypto";
import { type DrawnCar, drawnPhotograph } from "@evenhand/evidence/drawn-photograph";
import type { EvidenceSeen } from "@evenhand/shared/http/evidence";
import sharp from "sharp";
import { beforeAll, expect, test } from "vitest";
import { Arrivals } from "../../apps/api/src/capabilities/evidence/arrivals.ts";
import { query } from "./setup/database.ts";
import { painted } from "./setup/drawings.ts";
import { type Announced, send } from "./setup/evidence-story.ts";
import type { Person } from "./setup/person.ts";
import { useService } from "./setup/service.ts";
import {
  acceptOrder,
  car,
  draftStatement,
  header,
  inspected,
  makeVehicle,
  order,
  seal,
  write,
} from "./setup/story.ts";
import { makeWorld, type World } from "./setup/world.ts";

const service = useService({ emptyBetween: false });
const drawnCar: DrawnCar = {
  paint: "#35506b",
  trim: "#b09a78",
  number: "A7K214883",
  odometer: "052910",
  seed: 3,
  rust: 0.4,
};
const place = { latitude: "41/1 30/1 0/1", longitude: "81/1 15/1 0/1" };

type Written = { readonly taken: string; readonly changed?: string };

const exif = ({ taken, changed = taken }: Written) => ({
  IFD0: { Make: "Ostra", Model: "Field 7", DateTime: changed },
  IFD2: { DateTimeOriginal: taken, OffsetTimeOriginal: "-05:00" },
  IFD3: {
    GPSLatitudeRef: "N",
    GPSLatitude: place.latitude,
    GPSLongitudeRef: "W",
    GPSLongitude: place.longitude,
  },
});

const onTheDay = { taken: "2026:05:04 11:00:00" };

async function draw(view: "profile" | "tire" | "underside", seed: number, of = drawnCar): Promise<Buffer> {
  const picture = await painted(drawnPhotograph({ view, car: of, seed }), 1024);
  return sharp(picture).jpeg({ quality: 88 }).withExif(exif(onTheDay)).toBuffer();
}
const passedOn = (picture: Buffer): Promise<Buffer> =>
  sharp(picture).resize(800).jpeg({ quality: 60 }).withExif(exif(onTheDay)).toBuffer();
const written = (picture: Buffer, when: Written): Promise<Buffer> =>
  sharp(picture).jpeg({ quality: 84 }).withExif(exif(when)).toBuffer();

let world: World;
let pictures: Record<
  "left" | "tire" | "oldTire" | "editedTire" | "otherShot" | "otherCar" | "blurred",
  Buffer
>;
const cars = { first: "", second: "" };
const reports = { first: "", second: "", inspection: "" };
let inspectionRevision = 0;

async function sendTo(person: Person, report: string, bytes: Buffer, more: Announced): Promise<string> {
  const id = await send(person, report, bytes, more);
  await service().app.get(Arrivals, { strict: false }).take(id);
  return id;
}

const on = <R extends object>(text: string, values: unknown[] = []) =>
  query<R>(service().databaseUrl, text, values);
const ofReport = (person: Person, id: string) => person.does("evidence.ofReport", { path: { id } });
const ofCar = async (person: Person, id: string) =>
  (await person.does("evidence.ofVehicle", { path: { id } })).items;
const asked = (items: readonly Pick<EvidenceSeen, "caption" | "questions">[], caption: string): string[] =>
  items
    .filter((each) => each.caption === caption)
    .flatMap(({ questions }) => questions.map(({ kind }) => kind));

beforeAll(async () => {
  const [left, tire] = [await draw("profile", 1), await draw("tire", 2)];
  pictures = {
    left,
    tire,
    oldTire: await written(await draw("tire", 3), { taken: "2026:05:01 11:00:00" }),
    editedTire: await written(await draw("tire", 4), { ...onTheDay, changed: "2026:05:06 11:00:00" }),
    otherShot: await draw("profile", 9),
    otherCar: await draw("profile", 1, { ...drawnCar, paint: "#8c1f24", seed: 77 }),
    blurred: await sharp(await draw("underside", 5))
      .blur(12)
      .jpeg()
      .toBuffer(),
  };
  world = await makeWorld(service());
  const { dealer, buyer, inspector } = world;
  await on(
    `INSERT INTO site (id, organization_id, name, address, latitude, longitude, hours, closures, currency, per_visit,
       per_lift_spell, revision, created_at) VALUES ($1, $2, 'Yard', 'Yard', 41.6, -81.25, '{}', '[]', 'USD', 0, 0, 1, now())`,
    [randomUUID(), dealer.organization],
  );
  cars.first = await makeVehicle(dealer);
  const first = await draftStatement(dealer, cars.first);
  reports.first = first.id;
  await sendTo(dealer, first.id, pictures.left, { caption: "left" });
  await sendTo(dealer, first.id, pictures.tire, {
    caption: "tire",
    item: "wheels.tire-identification",
    position: "left-front",
  });
  await sendTo(dealer, first.id, pictures.blurred, { caption: "blurred" });
  const { id: statement } = await seal(dealer, first.id, first.revision);
  cars.second = await makeVehicle(dealer, { ...car, identification: "B8L325994" });
  const second = await draftStatement(dealer, cars.second);
  reports.second = second.id;
  await sendTo(dealer, second.id, await passedOn(pictures.left), { caption: "left" });
  await sendTo(dealer, second.id, pictures.otherCar, { caption: "own left" });
  await seal(dealer, second.id, second.revision);
  const ordered = await order(buyer, inspector, cars.first, statement);
  await acceptOrder(inspector, ordered);
  const begun = await inspector.does("reports.inspect", { path: { id: ordered }, body: header });
  reports.inspection = begun.id;
  await sendTo(inspector, begun.id, await passedOn(pictures.tire), { caption: "tire" });
  await sendTo(inspector, begun.id, pictures.oldTire, { caption: "old" });
  await sendTo(inspector, begun.id, pictures.editedTire, { caption: "edited" });
  await sendTo(inspector, begun.id, pictures.otherShot, { caption: "left" });
  inspectionRevision = await write(inspector, begun.id, inspected);
});

test("a picture seen with another car: the owner is told where, others only that", async () => {
  const { items } = await ofReport(world.dealer, reports.second);
  const [question] = items.find(({ caption }) => caption === "left")?.questions ?? [];
  const [first] = (await ofReport(world.dealer, reports.first)).items.filter(
    ({ caption }) => caption === "left",
  );
  expect(question).toMatchObject({ kind: "seen-on-another-car", beside: first?.id });
  const [told] =
    (await ofCar(world.buyer, cars.second)).find(({ caption }) => caption === "left")?.questions ?? [];
  expect(told).toMatchObject({ kind: "seen-on-another-car", beside: null });
  expect(told?.words).not.toContain(cars.first);
});

test("another car from the very same spot, and the same car in another shot, are no copies", async () => {
  expect(asked(await ofCar(world.buyer, cars.second), "own left")).not.toContain("seen-on-another-car");
  expect(asked((await ofReport(world.inspector, reports.inspection)).items, "left")).toEqual([
    "taken-elsewhere",
  ]);
});

test("a car entered twice is not another car", async () => {
  await on("UPDATE vehicle SET identification = 'A7K214883' WHERE id = $1", [cars.second]);
  expect(asked(await ofCar(world.buyer, cars.second), "left")).not.toContain("seen-on-another-car");
  await on("UPDATE vehicle SET identification = 'B8L325994' WHERE id = $1", [cars.second]);
});

test("who must be blind learns nothing of what the statement holds; once sealed, who sees both is told", async () => {
  const kinds = async () => asked((await ofReport(world.inspector, reports.inspection)).items, "tire");
  expect(await kinds()).toEqual(["taken-elsewhere"]);
  await seal(world.inspector, reports.inspection, inspectionRevision);
  expect(await kinds()).toEqual(["supplied-by-both", "taken-elsewhere"]);
  const both = (await ofCar(world.buyer, cars.first)).filter(({ caption }) => caption === "tire");
  expect(both.map(({ side }) => side).toSorted()).toEqual(["inspection", "statement"]);
  for (const { id, questions } of both)
    expect(questions[0]).toMatchObject({
      kind: "supplied-by-both",
      beside: both.find((other) => other.id !== id)?.id,
    });
  const ofDealer = (await ofReport(world.dealer, reports.first)).items;
  expect(asked(ofDealer, "tire")).toEqual(["taken-elsewhere"]);
});

test("time, place and editing: the owner learns the figure, the buyer the fact and no place", async () => {
  const own = (await ofReport(world.inspector, reports.inspection)).items;
  expect(asked(own, "old")).toEqual(["older-than-visit", "taken-elsewhere"]);
  expect(asked(own, "edited")).toEqual(["taken-elsewhere", "edited"]);
  const words = JSON.stringify(own.flatMap(({ questions }) => questions));
  expect(words).toMatch(/2 days before the visit.*11 km from/);
  const told = await ofCar(world.buyer, cars.first);
  expect(asked(told, "old")).toEqual(["older-than-visit", "taken-elsewhere"]);
  expect(JSON.stringify(told)).not.toMatch(/11 km|latitude|2026-05-0|Ostra|"capture"/);
});

test("how sharp a picture is, is its owner's to know, with the advice", async () => {
  const { items } = await ofReport(world.dealer, reports.first);
  const quality = (caption: string) => items.find((each) => each.caption === caption)?.quality;
  expect(quality("left")?.advice).toEqual([]);
  expect(quality("blurred")?.advice.map(({ words }) => words)).toEqual(["Blurred; take it again?"]);
  expect(JSON.stringify(await ofCar(world.buyer, cars.first))).not.toContain("sharpness");
});

test("what the sheet asks for by name is missing until it is sent", async () => {
  const { missing } = await ofReport(world.dealer, reports.first);
  expect(missing.map(({ item }) => item)).toContain("identity.vin");
  expect(missing.find(({ item }) => item === "road.cold-start")).toMatchObject({ as: "film" });
});

test("a picture's print and its likenesses go with it", async () => {
  const count = async () =>
    (await on<{ count: number }>("SELECT count(*)::int AS count FROM picture_likeness"))[0]?.count;
  expect(await count()).toBe(4);
  await on("DELETE FROM evidence WHERE report_id = $1", [reports.second]);
  await on("DELETE FROM evidence_file f WHERE NOT EXISTS (SELECT 1 FROM evidence e WHERE e.file_id = f.id)");
  expect(await count()).toBe(2);
});
