import { readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { run } from "./process.mjs";
import { root } from "./root.mjs";

/** The script file of a package's command, so that it runs on this very Node: `toolScript("vite")`. */
export function toolScript(packageName, command = packageName) {
  const manifest = join(root, "node_modules", packageName, "package.json");
  const { bin } = JSON.parse(readFileSync(manifest, "utf8"));
  const script = typeof bin === "string" ? bin : bin[command];
  if (script === undefined) throw new Error(`The package ${packageName} has no command ${command}.`);
  return join(dirname(manifest), script);
}

/** Runs a package's command on this Node in a folder of the project. Gives its exit code. */
export function runTool({ packageName, command = packageName, args, folder = ".", env = {} }) {
  return run(process.execPath, [toolScript(packageName, command), ...args], { cwd: join(root, folder), env });
}
