import sharp, { type Sharp } from "sharp";

export const width = 640;
export const height = 400;

/** Four quarters in four colors, so that it is seen which way up it is: red, green over blue, white. */
export async function quarters(): Promise<Buffer> {
  const [w, h] = [width / 2, height / 2];
  const block = (background: string, left: number, top: number) => ({
    input: { create: { width: w, height: h, channels: 3 as const, background } },
    left,
    top,
  });
  return sharp({ create: { width, height, channels: 3, background: "white" } })
    .composite([block("red", 0, 0), block("lime", w, 0), block("blue", 0, h)])
    .png()
    .toBuffer();
}

/** The same as a camera writes it that was held in one of the eight ways of EXIF. */
export async function heldAs(orientation: number): Promise<Buffer> {
  const turned: Record<number, (image: Sharp) => Sharp> = {
    1: (image) => image,
    2: (image) => image.flop(),
    3: (image) => image.rotate(180),
    4: (image) => image.flip(),
    5: (image) => image.rotate(270),
    6: (image) => image.rotate(270),
    7: (image) => image.rotate(90),
    8: (image) => image.rotate(90),
  };
  const first = (turned[orientation] ?? ((image) => image))(sharp(await quarters()));
  const stored = await first.png().toBuffer();
  // 5 and 7 are mirrored, too.
  const mirrored = orientation === 5 || orientation === 7 ? sharp(stored).flip() : sharp(stored);
  return mirrored.jpeg({ quality: 95, chromaSubsampling: "4:4:4" }).withMetadata({ orientation }).toBuffer();
}

const taken = new Map<number, Promise<Buffer>>();

/** A photograph with all that a telephone writes into it; another for every seed, and each worker takes it once. */
export const photograph = (seed = 128): Promise<Buffer> => {
  const known = taken.get(seed) ?? take(seed);
  taken.set(seed, known);
  return known;
};

const take = (seed: number): Promise<Buffer> =>
  sharp({
    create: {
      width: 1600,
      height: 1200,
      channels: 3,
      background: "gray",
      noise: { type: "gaussian", mean: seed, sigma: 30 },
    },
  })
    .jpeg({ quality: 90 })
    .withExif({
      IFD0: { Make: "Ostra", Model: "Field 7", Software: "7.1" },
      IFD2: { DateTimeOriginal: "2026:05:04 09:10:11", OffsetTimeOriginal: "-05:00" },
      IFD3: {
        GPSLatitudeRef: "N",
        GPSLatitude: "41/1 30/1 36/1",
        GPSLongitudeRef: "W",
        GPSLongitude: "81/1 15/1 0/1",
      },
    })
    .toBuffer();

const small = () => sharp({ create: { width: 200, height: 160, channels: 3, background: "teal" } });

/** A PNG's chunk; its check is wrong, which nobody gets as far as asking. */
const chunk = (type: string, data: Uint8Array): Buffer => {
  const length = Buffer.alloc(4);
  length.writeUInt32BE(data.length);
  return Buffer.concat([length, Buffer.from(type), data, Buffer.alloc(4)]);
};
const beforeEnd = (png: Buffer, more: Buffer): Buffer =>
  Buffer.concat([png.subarray(0, -12), more, png.subarray(-12)]);

/** A picture that says it is of another size than it is: the first frame header of a JPEG. */
function claiming(jpeg: Buffer, side: number): Buffer {
  const copy = Buffer.from(jpeg);
  const frame = copy.indexOf(Buffer.from([0xff, 0xc0]));
  copy.writeUInt16BE(side, frame + 5);
  copy.writeUInt16BE(side, frame + 7);
  return copy;
}

const zip = Buffer.concat([
  Buffer.from("PK\u0003\u0004program"),
  Buffer.from("PK\u0005\u0006"),
  Buffer.alloc(18),
]);

/** What is sent to do harm, or by mistake, and why it is refused. */
export async function hostile(): Promise<
  readonly (readonly [name: string, reason: string, bytes: Buffer])[]
> {
  const [jpeg, png] = [await photograph(), await small().png().toBuffer()];
  const squared = await sharp({ create: { width: 80, height: 80, channels: 3, background: "red" } })
    .jpeg()
    .toBuffer();
  const half = jpeg.subarray(0, jpeg.length / 2);
  return [
    ["a bomb of 30,000 by 30,000", "pixels", claiming(squared, 30_000)],
    ["a bomb in a name of its own", "unknown", Buffer.from("MZ\u0090 program.exe")],
    ["photograph and archive", "two-in-one", Buffer.concat([jpeg, zip])],
    ["photograph and page", "two-in-one", Buffer.concat([jpeg, Buffer.from("<script>1</script>")])],
    ["page called a photograph", "markup", Buffer.from("<!doctype html><script>1</script>")],
    ["drawing", "markup", Buffer.from('<svg xmlns="http://www.w3.org/2000/svg" onload="1"/>')],
    ["half a photograph", "cut-short", half],
    ["half a photograph with an end", "cut-short", Buffer.concat([half, Buffer.from([0xff, 0xd9])])],
    ["giant metadata", "metadata", beforeEnd(png, chunk("tEXt", Buffer.alloc(5 * 1024 * 1024)))],
    ["moving picture", "moving", Buffer.from("GIF89a\u0001")],
    ["moving PNG", "moving", beforeEnd(png, chunk("acTL", Buffer.alloc(8)))],
    ["16 bits a channel", "deep", await small().toColourspace("rgb16").png().toBuffer()],
    ["printing colors", "print", await small().toColourspace("cmyk").jpeg().toBuffer()],
    [
      "one pixel",
      "tiny",
      await sharp({ create: { width: 1, height: 1, channels: 3, background: "red" } })
        .png()
        .toBuffer(),
    ],
    ["HEIC", "heic", Buffer.from("\0\0\0\u0018ftypheic\0\0\0\0mif1heic")],
    [
      "PNG of noise",
      "unreadable",
      Buffer.concat([png.subarray(0, 33), chunk("IDAT", Buffer.alloc(900, 7)), png.subarray(-12)]),
    ],
  ];
}
