import { readdirSync } from "node:fs";
import { join } from "node:path";
import { root } from "../root.mjs";
import { runTool } from "../tools.mjs";

const pattern = /^stryker\.([a-z-]+)\.config\.json$/;

/** Libraries that say how they are mutated, by `.ci/stryker.<library>.config.json`. */
function libraries() {
  return readdirSync(join(root, ".ci")).flatMap((file) => pattern.exec(file)?.[1] ?? []);
}

/** `npm run mutation [-- LIBRARY …]`: one library after the other; the worst exit code of them. */
export async function main(args) {
  const known = libraries();
  const unknown = args.filter((name) => !known.includes(name));
  if (unknown.length > 0) {
    console.error(`No mutation is laid out for ${unknown.join(", ")}. There are: ${known.join(", ")}.`);
    return 2;
  }
  const codes = [];
  for (const name of args.length > 0 ? args : known) {
    console.log(`\n── ${name}`);
    const config = `.ci/stryker.${name}.config.json`;
    codes.push(
      await runTool({ packageName: "@stryker-mutator/core", command: "stryker", args: ["run", config] }),
    );
  }
  return Math.max(0, ...codes);
}
