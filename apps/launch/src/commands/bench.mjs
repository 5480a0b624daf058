import { fileURLToPath } from "node:url";
import { prepareProduct } from "../prepare.mjs";
import { run } from "../process.mjs";

const cli = fileURLToPath(new URL("../../../cli/src/main.ts", import.meta.url));

/**
 * `npm run bench`: builds what is measured, then measures. Files named are meant from where the person stands. A measurement may ask
 * for garbage to be collected before it takes the time.
 */
export async function main(args) {
  await prepareProduct();
  return run(process.execPath, ["--expose-gc", cli, "bench", ...args], { cwd: process.cwd() });
}
