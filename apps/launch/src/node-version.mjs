import { existsSync } from "node:fs";
import { join } from "node:path";
import { root } from "./root.mjs";

/** The oldest Node that can install the packages and run this file. */
export const oldestInstaller = [20, 19, 0];
/** The oldest Node that runs the product where the pinned one does not exist for the machine: it strips types by itself. */
export const oldestRuntime = [24, 0, 0];

function parse(version) {
  return version.split(".").map(Number);
}

/** Whether version `a` is at least `b`, both as numbers: `isAtLeast([24, 1, 0], [24, 0, 0])` is true. */
export function isAtLeast(a, b) {
  for (let index = 0; index < b.length; index += 1) {
    const difference = (a[index] ?? 0) - b[index];
    if (difference !== 0) return difference > 0;
  }
  return true;
}

/** Why this Node cannot install the packages, or `null` where it can. */
export function installerProblem(version) {
  if (isAtLeast(parse(version), oldestInstaller)) return null;
  return (
    `Evenhand needs Node ${oldestInstaller.join(".")} or newer to install itself; this is Node ${version}.\n` +
    "Install a newer Node (an LTS release will do) and run the same command again."
  );
}

/** Where a package with a pinned Node puts it; not every npm links the command of an optional package. */
function pinnedNode() {
  const isWindows = process.platform === "win32";
  const packageName = `node-${isWindows ? "win" : process.platform}-${process.arch}`;
  const path = join(root, "node_modules", packageName, "bin", isWindows ? "node.exe" : "node");
  return existsSync(path) ? path : null;
}

/**
 * The Node that runs the product: the pinned one from the packages, else the machine's own where it is new enough.
 * Gives `{ path }` or `{ problem }`.
 */
export function runtimeNode() {
  const pinned = pinnedNode();
  if (pinned !== null) return { path: pinned };
  if (isAtLeast(parse(process.versions.node), oldestRuntime)) return { path: process.execPath };
  return {
    problem:
      `There is no pinned Node for ${process.platform}-${process.arch} among the packages, and this machine's own, ` +
      `${process.versions.node}, is older than ${oldestRuntime.join(".")}. Install Node 24 and run the same command again.`,
  };
}
