import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { mutated } from "../mutated.mjs";
import { configOf, filesOf, sampleOf } from "../mutation-config.mjs";
import { root } from "../root.mjs";
import { runTool } from "../tools.mjs";

/** What one run mutates: everything, the folders asked for, or a sample of windows of lines. */
function mutateOf(library, { folders, sample }) {
  const named = folders?.split(",").map((folder) => `/src/${folder}/`);
  const asked = filesOf(library.mutate).filter((path) => named?.some((part) => path.includes(part)) ?? true);
  return sample === undefined ? asked : sampleOf(asked, Number(sample));
}

async function runLibrary(library, options) {
  console.log(`\n── ${library.name}`);
  const folder = join(root, "node_modules/.evenhand/mutation");
  mkdirSync(folder, { recursive: true });
  const file = join(folder, `${library.name}.json`);
  writeFileSync(file, JSON.stringify(configOf(library, mutateOf(library, options)), null, 2));
  const env = {
    MUTATION_TESTS: library.include.join("\n"),
    MUTATION_TESTS_LEFT_OUT: library.exclude.join("\n"),
  };
  return runTool({ packageName: "@stryker-mutator/core", command: "stryker", args: ["run", file], env });
}

/**
 * `npm run mutation [-- LIBRARY … --folders a,b --sample 60]`: one library after the other, whole, some folders of it,
 * or windows of twelve lines drawn by chance; the worst exit code of them.
 */
export async function main(args) {
  const { values, positionals } = parseArgs({
    args,
    allowPositionals: true,
    options: { folders: { type: "string" }, sample: { type: "string" } },
  });
  const unknown = positionals.filter((name) => !mutated.some((library) => library.name === name));
  if (unknown.length > 0) {
    const names = mutated.map(({ name }) => name).join(", ");
    console.error(`No mutation is laid out for ${unknown.join(", ")}. There are: ${names}.`);
    return 2;
  }
  const codes = [];
  for (const library of mutated) {
    if (positionals.length > 0 && !positionals.includes(library.name)) continue;
    codes.push(await runLibrary(library, values));
  }
  return Math.max(0, ...codes);
}
