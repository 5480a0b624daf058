import { readFileSync } from "node:fs";
import { join } from "node:path";
import { Injectable } from "@nestjs/common";
import type { DemoPicture, DemoReport } from "@evenhand/shared/demo-scenario";
import { WholeFiles } from "../capabilities/evidence/index.ts";
import { projectFolder } from "../platform/config/project-folder.ts";
import type { DemoWorld } from "./demo-world.ts";

const MINUTE = 60_000;

/** As cameras write an hour: `2026:05:04 09:10:11`. Theirs are set to UTC. */
const cameras = (at: number): string =>
  new Date(at).toISOString().slice(0, 19).replaceAll("-", ":").replace("T", " ");

/** Degrees as cameras write them: whole degrees and minutes, seconds to a hundredth. */
function degrees(value: number): string {
  const hundredths = Math.round(Math.abs(value) * 360_000);
  return `${Math.floor(hundredths / 360_000)}/1 ${Math.floor((hundredths % 360_000) / 6_000)}/1 ${hundredths % 6_000}/100`;
}

/** Photographs at their places of a draft, with what a camera would have written into them. */
@Injectable()
export class DemoPictures {
  constructor(private readonly files: WholeFiles) {}

  async add(
    world: DemoWorld,
    { organization, by }: DemoReport,
    id: string,
    { pictures, began }: { readonly pictures: readonly DemoPicture[]; readonly began: string },
  ): Promise<void> {
    const into = { organization: world.get("organization", organization), report: id };
    for (const picture of pictures) {
      const { filename, item, position, caption, marks } = picture;
      const file = {
        filename,
        item,
        position,
        caption,
        marks,
        bytes: await taken(picture, Date.parse(began)),
      };
      await this.files.add(world.tx, world.actor(by), into, file);
    }
  }
}

async function taken({ file, minutes, changed, camera, place }: DemoPicture, began: number): Promise<Buffer> {
  const { default: sharp } = await import("sharp");
  const at = began + minutes * MINUTE;
  const [make, model] = camera;
  return sharp(readFileSync(join(projectFolder(), "fixtures", "demo", file)))
    .jpeg({ quality: 88 })
    .withExif({
      IFD0: { Make: make, Model: model, DateTime: cameras(at + (changed ?? 0) * MINUTE) },
      IFD2: { DateTimeOriginal: cameras(at), OffsetTimeOriginal: "+00:00" },
      IFD3: {
        GPSLatitudeRef: place.latitude < 0 ? "S" : "N",
        GPSLatitude: degrees(place.latitude),
        GPSLongitudeRef: place.longitude < 0 ? "W" : "E",
        GPSLongitude: degrees(place.longitude),
      },
    })
    .toBuffer();
}
