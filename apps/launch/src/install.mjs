import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { run } from "./process.mjs";
import { root } from "./root.mjs";

const lockfile = join(root, "package-lock.json");
const installedLockfile = join(root, "node_modules", ".package-lock.json");
const stamp = join(root, "node_modules", ".evenhand", "package-lock.sha256");

function lockfileHash() {
  return createHash("sha256").update(readFileSync(lockfile)).digest("hex");
}

function readPackages(path) {
  return JSON.parse(readFileSync(path, "utf8")).packages;
}

/**
 * Names of the packages of the lockfile that stand in node_modules in another version or not at all. Optional packages may be
 * missing: npm leaves out those of other platforms. `node_modules/.package-lock.json` is npm's own note of what it installed.
 */
export function differences(wanted, installed) {
  return Object.entries(wanted).flatMap(([path, entry]) => {
    if (!path.startsWith("node_modules/") && !path.includes("/node_modules/")) return [];
    if (entry.link === true) return installed[path] === undefined ? [path] : [];
    const have = installed[path];
    if (have === undefined) return entry.optional === true ? [] : [path];
    return have.version === entry.version ? [] : [path];
  });
}

function writeStamp() {
  mkdirSync(dirname(stamp), { recursive: true });
  writeFileSync(stamp, lockfileHash());
}

/** Whether node_modules holds what package-lock.json says. */
export function isInstalled() {
  if (!existsSync(installedLockfile)) return false;
  if (existsSync(stamp) && readFileSync(stamp, "utf8") === lockfileHash()) return true;
  if (differences(readPackages(lockfile), readPackages(installedLockfile)).length > 0) return false;
  writeStamp();
  return true;
}

/** npm as it was called, else the `npm` of the path; on the machine's own Node, since node_modules is about to be replaced. */
function npmCommand() {
  const script = process.env.npm_execpath;
  if (script !== undefined && script.endsWith(".js")) {
    return { file: process.env.npm_node_execpath ?? process.execPath, args: [script] };
  }
  return { file: process.platform === "win32" ? "npm.cmd" : "npm", args: [] };
}

/** Runs `npm ci`, saying so. Gives its exit code. */
export async function install() {
  const why = existsSync(installedLockfile)
    ? "package-lock.json has changed since the packages were installed"
    : "the packages are not installed yet";
  console.log(`Installing: ${why}. This runs \`npm ci\` and takes a minute or two.`);
  const npm = npmCommand();
  const code = await run(npm.file, [...npm.args, "ci"], {
    cwd: root,
    env: {
      // npm older than 11 knows no allowScripts: keep Prisma's own step from looking for an engine that is never used here.
      PRISMA_SCHEMA_ENGINE_BINARY: process.execPath,
      PRISMA_SKIP_POSTINSTALL_GENERATE: "1",
      SCARF_ANALYTICS: "false",
    },
  });
  if (code !== 0) {
    console.error(`\`npm ci\` ended with code ${code}. Nothing was started.`);
    return code;
  }
  writeStamp();
  return 0;
}
