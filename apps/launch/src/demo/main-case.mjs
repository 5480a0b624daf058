import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { run } from "../process.mjs";
import { signIn } from "./client.mjs";

const cli = fileURLToPath(new URL("../../../cli/src/main.ts", import.meta.url));

/** The car of the scenario's main case. */
function mainVehicle({ comparisons, orders, mainCase }) {
  const order = comparisons.find(({ key }) => key === mainCase.comparison)?.order;
  return orders.find(({ key }) => key === order)?.vehicle;
}

/** Stored documents of the main case, fetched as the buyer who ordered the inspection. */
export async function fetchMainCase(address, scenario) {
  const viewer = scenario.accounts.find(({ key }) => key === scenario.mainCase.viewer);
  const get = await signIn(address, viewer);
  const wanted = scenario.vehicles.find(({ key }) => key === mainVehicle(scenario))?.vehicle;
  const { items: vehicles } = await get(`/vehicles?q=${encodeURIComponent(wanted.model)}`);
  const vehicle = vehicles.find((one) => one.vehicle.identification === wanted.identification);
  const { items: comparisons } = await get(`/comparisons?vehicle=${vehicle.id}`);
  const [{ id, a, b }] = comparisons;
  return {
    comparison: await get(`/comparisons/${id}/document`),
    a: await get(`/report-versions/${a}/document`),
    b: await get(`/report-versions/${b}/document`),
  };
}

/** Prints the discrepancy report of the main case, as it is stored. */
export async function printMainCase(address, scenario) {
  const documents = await fetchMainCase(address, scenario);
  const folder = mkdtempSync(join(tmpdir(), "evenhand-demo-"));
  try {
    const files = ["comparison", "a", "b"].map((name) => {
      const file = join(folder, `${name}.json`);
      writeFileSync(file, JSON.stringify(documents[name]));
      return file;
    });
    const code = await run(process.execPath, [cli, "show", ...files], { cwd: folder });
    if (code !== 0) throw new Error("The discrepancy report could not be shown; what was said stands above.");
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
