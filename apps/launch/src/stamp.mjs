import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readFileSync, readdirSync, statSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { root } from "./root.mjs";

const passedOver = new Set(["node_modules", "dist", "generated", ".data"]);

function filesUnder(path) {
  if (!existsSync(path)) return [];
  if (statSync(path).isFile()) return [path];
  return readdirSync(path, { withFileTypes: true })
    .filter((entry) => !passedOver.has(entry.name) && !/\.test\.[a-z]+$/.test(entry.name))
    .flatMap((entry) => filesUnder(join(path, entry.name)))
    .sort((a, b) => (a < b ? -1 : 1));
}

/** Hash of the names and bytes of everything under these paths of the project, tests left out. */
export function hashOf(paths) {
  const hash = createHash("sha256");
  for (const path of paths) {
    for (const file of filesUnder(join(root, path))) {
      hash.update(file.slice(root.length)).update("\0").update(readFileSync(file)).update("\0");
    }
  }
  return hash.digest("hex");
}

const stampFile = (name) => join(root, "node_modules", ".evenhand", `${name}.sha256`);

/**
 * Runs `make` where what it reads has changed since it last ended well, or where what it makes is missing.
 * Gives whether it was run.
 */
export async function whenChanged({ name, reads, makes }, make) {
  const hash = hashOf(reads);
  const file = stampFile(name);
  const made = makes.every((path) => existsSync(join(root, path)));
  if (made && existsSync(file) && readFileSync(file, "utf8") === hash) return false;
  await make();
  mkdirSync(dirname(file), { recursive: true });
  writeFileSync(file, hash);
  return true;
}
