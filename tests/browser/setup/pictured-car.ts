import sharp from "sharp";
import { Arrivals } from "../../../apps/api/src/capabilities/evidence/arrivals.ts";
import { type Announced, send } from "../../api/setup/evidence-story.ts";
import type { Person } from "../../api/setup/person.ts";
import type { Service } from "../../api/setup/service.ts";
import {
  acceptOrder,
  draftStatement,
  header,
  inspected,
  makeVehicle,
  order,
  seal,
  write,
} from "../../api/setup/story.ts";
import type { DemoPeople } from "./demo-car.ts";

type Drawn = { readonly worn: number; readonly light: number; readonly tall?: boolean };

/** How bright a tire is at a place of the picture: its grooves, narrower where it is worn, a stone in one, and how the light falls. */
const brightness = (x: number, y: number, { worn, light }: Drawn): number => {
  const across = (x + (y - 0.5) * (0.05 + worn * 0.1)) * 6;
  const inGroove = Math.abs((across % 1) - 0.5) < 0.21 - worn * 0.15;
  if (Math.hypot(x - 0.72, (y - 0.35) * 0.75) < 0.02) return 190;
  if (inGroove) return 14;
  const block = Math.abs((y * 9 + Math.floor(across) * 0.4) % 1) < 0.06 ? -22 : 0;
  return light + block + 46 * (1 - x) * (1 - y) + ((x * 7919 + y * 6421) % 1) * 10;
};

/** A tire as somebody photographs it, drawn point by point. */
export const tire = (drawn: Drawn): Promise<Buffer> => {
  const [width, height] = drawn.tall ? [900, 1200] : [1600, 1200];
  const bytes = Buffer.alloc(width * height * 3);
  for (let at = 0; at < width * height; at += 1) {
    const shade = brightness((at % width) / width, Math.floor(at / width) / height, drawn);
    bytes.set([shade, shade + 2, shade + 6], at * 3);
  }
  return sharp(bytes, { raw: { width, height, channels: 3 } })
    .jpeg({ quality: 88 })
    .toBuffer();
};

const front = { item: "wheels.tread-depth", position: "left-front" };

/** Sends files to places of a report, and has a worker look at each. */
export async function sendAll(
  { app }: Service,
  person: Person,
  report: string,
  files: readonly (readonly [bytes: Buffer, of: Announced])[],
): Promise<string[]> {
  const ids: string[] = [];
  for (const [bytes, of] of files) {
    const id = await send(person, report, bytes, of);
    await app.get(Arrivals, { strict: false }).take(id);
    ids.push(id);
  }
  return ids;
}

/** A car with photographs of both sides: of one tire from each, of the horn from one, of the whole car from the other. */
export async function picturedCar(service: Service, { dealer, buyer, inspector }: DemoPeople) {
  const vehicle = await makeVehicle(dealer);
  const draft = await draftStatement(dealer, vehicle);
  await sendAll(service, dealer, draft.id, [
    [
      await tire({ worn: 0.1, light: 80 }),
      { ...front, filename: "front-left.jpg", caption: "New last spring" },
    ],
    [await tire({ worn: 0.2, light: 120 }), { item: "", filename: "car.jpg" }],
  ]);
  const { id: statement } = await seal(dealer, draft.id, draft.revision);
  const ordered = await order(buyer, inspector, vehicle, statement);
  await acceptOrder(inspector, ordered);
  const { id: inspection } = await inspector.does("reports.inspect", {
    path: { id: ordered },
    body: header,
  });
  await sendAll(service, inspector, inspection, [
    [await tire({ worn: 0.9, light: 60 }), { ...front, filename: "lf.jpg" }],
    [await tire({ worn: 0.8, light: 70, tall: true }), { ...front, filename: "lf-2.jpg" }],
    [await tire({ worn: 0.5, light: 100 }), { item: "electrics.horn", filename: "horn.jpg" }],
  ]);
  const revision = await write(inspector, inspection, inspected);
  const sealed = await seal(inspector, inspection, revision);
  if (sealed.comparison === null) throw new Error("The sealed inspection made no comparison.");
  const { items } = await buyer.does("cases.ofPart", { path: { id: sealed.comparison } });
  return {
    vehicle,
    case: items[0]?.id ?? "",
    statement,
    inspection: sealed.id,
    comparison: sealed.comparison,
  };
}
