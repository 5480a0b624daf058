import { mkdirSync, mkdtempSync, renameSync, rmSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { run } from "./process.mjs";
import { root } from "./root.mjs";
import { whenChanged } from "./stamp.mjs";

const made = join(root, "node_modules", ".evenhand");
const folder = join(made, "browser");
const script = fileURLToPath(new URL("unpack-browser.mjs", import.meta.url));

/** Into a folder of its own, which takes its place when it is whole: nobody starts a browser that is still being written. */
async function unpack() {
  mkdirSync(made, { recursive: true });
  const beside = mkdtempSync(join(made, "browser-"));
  try {
    const code = await run(process.execPath, [script], { cwd: root, env: { TMPDIR: beside } });
    if (code !== 0) throw new Error("Unpacking the browser failed; what it said stands above.");
    rmSync(folder, { recursive: true, force: true });
    renameSync(beside, folder);
  } finally {
    rmSync(beside, { recursive: true, force: true });
  }
}

/**
 * The browser that tests and measurements drive, unpacked once for each version, before anybody starts it: several that unpack it at
 * once would find it half written.
 */
export function prepareBrowser() {
  const browser = {
    name: "browser",
    reads: ["node_modules/@sparticuz/chromium/package.json"],
    makes: ["node_modules/.evenhand/browser/chromium"],
  };
  return whenChanged(browser, unpack);
}
