import { env } from "node:process";
import { defineConfig } from "vitest/config";

/**
 * What mutation testing runs for libs/measurement: its own tests, or those of the folders named in
 * MEASUREMENT_FOLDERS (with commas), to look at a few folders in a short time.
 */
const folders = env["MEASUREMENT_FOLDERS"]?.split(",") ?? ["**"];

export default defineConfig({
  test: {
    name: "unit",
    include: folders.map((folder) => `libs/measurement/src/${folder}/*.test.ts`),
    maxWorkers: 1,
    testTimeout: 60_000,
  },
});
