import { defineConfig } from "vitest/config";

/** One project a kind of test, so that `npm test -- --project published` runs just one kind. */
const project = (name: string, include: string[], more: object = {}) => ({
  // No test depends on a time: a busy machine is no failure. Every core works: by default one would be kept idle.
  test: { name, include, testTimeout: 60_000, maxWorkers: "100%", ...more },
});

export default defineConfig({
  test: {
    projects: [
      project("unit", [
        "shared/src/**/*.test.ts",
        "libs/*/src/**/*.test.ts",
        "apps/{cli,web,launch}/src/**/*.test.{ts,tsx,mjs}",
      ]),
      project("published", ["tests/published/**/*.test.ts"]),
      project("architecture", ["tests/architecture/**/*.test.ts"], { testTimeout: 60_000 }),
      project("api", ["tests/api/**/*.test.ts"], {
        globalSetup: ["tests/api/setup/database-server.ts"],
        testTimeout: 30_000,
        hookTimeout: 60_000,
      }),
      project("hostile", ["tests/hostile/**/*.test.ts"], {
        globalSetup: ["tests/api/setup/database-server.ts"],
        testTimeout: 60_000,
        hookTimeout: 300_000,
        fileParallelism: false,
      }),
      project("faults", ["tests/faults/**/*.test.ts"], {
        globalSetup: ["tests/api/setup/database-server.ts"],
        testTimeout: 600_000,
        hookTimeout: 60_000,
        fileParallelism: false,
      }),
      project("demo", ["tests/demo/**/*.test.ts"], { testTimeout: 600_000 }),
      project("browser", ["tests/browser/**/*.test.ts"], {
        globalSetup: ["tests/api/setup/database-server.ts"],
        testTimeout: 600_000,
        hookTimeout: 60_000,
      }),
    ],
  },
});
