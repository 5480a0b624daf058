import { fileURLToPath } from "node:url";
import { prepareBrowser } from "../browser.mjs";
import { prepareProduct } from "../prepare.mjs";
import { run } from "../process.mjs";
import { servingFlags } from "../serving.mjs";

const cli = fileURLToPath(new URL("../../../cli/src/main.ts", import.meta.url));

/**
 * `npm run bench`: builds what is measured, then measures. Files named are meant from where the person stands. A measurement may ask
 * for garbage to be collected before it takes the time. What is measured runs with the memory the service gives it.
 */
export async function main(args) {
  await prepareProduct();
  await prepareBrowser();
  return run(process.execPath, ["--expose-gc", ...servingFlags, cli, "bench", ...args], {
    cwd: process.cwd(),
  });
}
