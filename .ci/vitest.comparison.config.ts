import { env } from "node:process";
import { defineConfig } from "vitest/config";

/**
 * What mutation testing runs for libs/comparison: its own tests, or those of the folders named in COMPARISON_FOLDERS
 * (with commas), to look at a few folders in a short time. Left out are the properties over thousands of generated
 * reports and the demo's whole reports: they would take minutes for every mutant, so the score is won without them.
 */
const folders = env["COMPARISON_FOLDERS"]?.split(",") ?? ["**"];

export default defineConfig({
  test: {
    name: "unit",
    include: folders.map((folder) => `libs/comparison/src/${folder}/*.test.ts`),
    exclude: ["libs/comparison/src/**/*.property.test.ts", "libs/comparison/src/**/demo-pairs.test.ts"],
    maxWorkers: 1,
    testTimeout: 60_000,
  },
});
