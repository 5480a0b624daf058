import { execFile } from "node:child_process";
import { promisify } from "node:util";

const run = promisify(execFile);

/** Reads a drawing from its first argument and writes the picture of it. */
const paint = `
  import sharp from "sharp";
  const [svg, width] = process.argv.slice(1);
  await sharp(Buffer.from(svg)).resize(Number(width)).removeAlpha().png().pipe(process.stdout);
`;

/**
 * A drawing (SVG) as a picture (PNG), `width` pixels wide. A process of its own paints it: in one that has served an upload every
 * loader of drawings is shut, whichever file of tests was first.
 */
export async function painted(svg: string, width: number): Promise<Buffer> {
  const { stdout } = await run(
    process.execPath,
    ["--input-type=module", "--eval", paint, "--", svg, String(width)],
    { encoding: "buffer", maxBuffer: 64 * 1024 * 1024 },
  );
  return stdout;
}
