import { readFileSync } from "node:fs";
import { join } from "node:path";
import { prepareProduct } from "../prepare.mjs";
import { root } from "../root.mjs";

/** `npm run -s sbom`: the list the site's build leaves, of what it holds and of what the service runs with. */
export async function main() {
  // Only the list goes to where it may be piped; what the builds say goes beside it.
  const say = console.log;
  console.log = console.error;
  await prepareProduct();
  console.log = say;
  process.stdout.write(readFileSync(join(root, "apps/web/dist/bom.cdx.json"), "utf8"));
  return 0;
}
