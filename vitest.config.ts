import { defineConfig } from "vitest/config";

/** One project a kind of test, so that `npm test -- --project published` runs just one kind. */
const project = (name: string, include: string[], more: object = {}) => ({
  test: { name, include, ...more },
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
    ],
  },
});
