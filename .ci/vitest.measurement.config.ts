import { defineConfig } from "vitest/config";

/** What mutation testing runs for libs/measurement: its own tests alone. */
export default defineConfig({
  test: { name: "unit", include: ["libs/measurement/src/**/*.test.ts"], maxWorkers: 1, testTimeout: 60_000 },
});
