import { runTool } from "./tools.mjs";
import { whenChanged } from "./stamp.mjs";

const libraries = ["shared/src", "libs", "tsconfig.base.json", "package-lock.json"];

async function must(title, code) {
  if ((await code) !== 0) throw new Error(`${title} failed; what it said stands above.`);
}

const webApplication = {
  name: "web",
  reads: ["apps/web", ...libraries],
  makes: ["apps/web/dist/site/index.html"],
};

/** Builds the web application's files. */
export function buildWeb() {
  return whenChanged(webApplication, async () => {
    console.log("Building the web application.");
    await must(
      "The build of the web application",
      runTool({ packageName: "vite", args: ["build", "--logLevel", "warn"], folder: "apps/web" }),
    );
  });
}

/** Everything that is made from sources before the product or its tests can run. In sequence: two builds at once need twice the memory. */
export async function prepare() {
  await buildWeb();
}
