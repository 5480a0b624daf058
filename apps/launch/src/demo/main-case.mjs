import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { run } from "../process.mjs";
import { signIn } from "./client.mjs";

const cli = fileURLToPath(new URL("../../../cli/src/main.ts", import.meta.url));

/** Stored documents of a comparison, fetched as the buyer who ordered the inspection. */
async function fetchDocuments(address, { comparison: id, viewer }) {
  const get = await signIn(address, viewer);
  const { a, b } = await get(`/comparisons/${id}`);
  return {
    comparison: await get(`/comparisons/${id}/document`),
    a: await get(`/report-versions/${a}/document`),
    b: await get(`/report-versions/${b}/document`),
    costs: (await get("/cost-table")).table,
    asking: (await get(`/comparisons/${id}/cost`)).asking,
  };
}

/** Prints the discrepancy report of the main case, as it is stored. */
export async function printMainCase(address, mainCase) {
  const documents = await fetchDocuments(address, mainCase);
  const folder = mkdtempSync(join(tmpdir(), "evenhand-demo-"));
  try {
    const [costs, ...files] = ["costs", "comparison", "a", "b"].map((name) => {
      const file = join(folder, `${name}.json`);
      writeFileSync(file, JSON.stringify(documents[name]));
      return file;
    });
    const asking = documents.asking === null ? [] : ["--asking", String(documents.asking.minor / 100)];
    const pricing = documents.costs === null ? [] : ["--costs", costs, ...asking];
    const code = await run(process.execPath, [cli, "show", ...files, ...pricing], { cwd: folder });
    if (code !== 0) throw new Error("The discrepancy report could not be shown; what was said stands above.");
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
