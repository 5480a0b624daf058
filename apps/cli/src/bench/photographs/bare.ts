import { existsSync, readdirSync } from "node:fs";
import { writeFile } from "node:fs/promises";
import { constants, setPriority } from "node:os";
import { join } from "node:path";
import { PICTURE_SIZES } from "@evenhand/shared/evidence";
import sharp from "sharp";

/** A program: told of photographs and a folder, it draws them one after the other and says how many milliseconds that took. */
export type BareTask = { readonly photographs: readonly Uint8Array[]; readonly folder: string };

const within = (side: number) =>
  ({ width: side, height: side, fit: "inside", withoutEnlargement: true }) as const;

/** What the service makes of a photograph, by sharp and nothing else: decoded once, upright, three sizes in WebP, in files. */
async function draw(photograph: Uint8Array, folder: string): Promise<void> {
  const { data, info } = await sharp(photograph)
    .autoOrient()
    .resize(within(PICTURE_SIZES.large))
    .toColourspace("srgb")
    .raw()
    .toBuffer({ resolveWithObject: true });
  const { width, height, channels } = info;
  for (const [size, side] of Object.entries(PICTURE_SIZES)) {
    const copy = sharp(data, { raw: { width, height, channels } }).resize(within(side));
    await writeFile(join(folder, `${size}.webp`), await copy.webp({ quality: 80 }).toBuffer());
  }
}

/** As low as what opens pictures for the service, so that others on the machine take from both alike. */
function giveWay(): void {
  const threads = "/proc/self/task";
  const ids = existsSync(threads) ? readdirSync(threads).map(Number) : [0];
  for (const id of ids) setPriority(id, constants.priority.PRIORITY_BELOW_NORMAL);
}

async function drawAll({ photographs, folder }: BareTask): Promise<void> {
  const start = performance.now();
  for (const photograph of photographs) await draw(photograph, folder);
  process.send?.({ milliseconds: performance.now() - start });
}

giveWay();
process.on("message", (task: BareTask) => void drawAll(task));
process.once("disconnect", () => process.exit(0));
