import { whenChanged } from "./stamp.mjs";
import { runTool } from "./tools.mjs";
import { run } from "./process.mjs";
import { root } from "./root.mjs";

const libraries = ["shared/src", "libs", "tsconfig.base.json", "package-lock.json"];

async function must(title, code) {
  if ((await code) !== 0) throw new Error(`${title} failed; what it said stands above.`);
}

const build = (title, folder) =>
  must(title, runTool({ packageName: "vite", args: ["build", "--logLevel", "error"], folder }));

const client = {
  name: "prisma-client",
  reads: ["prisma/schema.prisma", "prisma.config.ts", "apps/api/scripts", "package-lock.json"],
  makes: ["apps/api/src/platform/database/generated/client.ts"],
};

const service = {
  name: "service",
  reads: [
    "apps/api/src",
    "apps/api/vite.config.ts",
    "apps/api/package.json",
    "prisma/schema.prisma",
    ...libraries,
  ],
  makes: [
    "apps/api/dist/main.js",
    "apps/api/dist/embedded.js",
    "apps/api/dist/floor.js",
    "apps/api/dist/reader.js",
  ],
};

const site = {
  name: "site",
  reads: ["apps/web", ...libraries],
  makes: ["apps/web/dist/site/index.html", "apps/web/dist/bom.cdx.json"],
};

/** The database client, made from the schema; the service's types need it. */
export function prepareClient() {
  return whenChanged(client, () => {
    console.log("Making the database client.");
    const script = "apps/api/scripts/generate-client.mjs";
    return must("Making the database client", run(process.execPath, [script], { cwd: root }));
  });
}

/**
 * Everything the product and its tests need before they run: database client, service, web application. In sequence, since two
 * builds at once need twice the memory; each only where what it is made from has changed.
 */
export async function prepareProduct() {
  await prepareClient();
  await whenChanged(service, () => {
    console.log("Building the service.");
    return build("The build of the service", "apps/api");
  });
  await whenChanged(site, () => {
    console.log("Building the web application.");
    return build("The build of the web application", "apps/web");
  });
}
