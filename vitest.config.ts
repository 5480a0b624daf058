import { availableParallelism } from "node:os";
import { defineConfig } from "vitest/config";
import { LongestFirst } from "./tests/setup/longest-first.ts";

/** What starts the service from a test file: one database server a run. */
const withService = {
  globalSetup: ["tests/api/setup/database-server.ts"],
  setupFiles: ["tests/setup/draws.ts", "tests/api/setup/after-each-file.ts"],
};

/** The journeys that every run goes; with BROWSER=full (`npm run test:browser`) what there is beside them as well. */
const inBrowser = [
  "tests/browser/*.test.ts",
  ...(process.env["BROWSER"] === "full" ? ["tests/browser/at-length/*.test.ts"] : []),
];

/** One project a kind of test, so that `npm test -- --project published` runs just one kind. */
const project = (name: string, include: string[], more: object = {}) => ({
  // No test depends on a time: the limits are there for what hangs, and a busy machine is no failure. Every core works: by default one would be kept idle.
  test: {
    name,
    include,
    setupFiles: ["tests/setup/draws.ts"],
    testTimeout: 300_000,
    hookTimeout: 300_000,
    // What is waited for comes sooner or later; by default a second would be all it gets.
    expect: { poll: { timeout: 60_000 } },
    maxWorkers: "100%",
    // What many files share is loaded once a worker.
    isolate: false,
    ...more,
  },
});

export default defineConfig({
  test: {
    sequence: { sequencer: LongestFirst },
    projects: [
      project("unit", [
        "shared/src/**/*.test.ts",
        "libs/*/src/**/*.test.ts",
        "apps/{cli,web,launch}/src/**/*.test.{ts,tsx,mjs}",
      ]),
      project("published", ["tests/published/**/*.test.ts"]),
      project("architecture", ["tests/architecture/**/*.test.ts"]),
      project("api", ["tests/api/**/*.test.ts"], withService),
      project("hostile", ["tests/hostile/**/*.test.ts"], {
        ...withService,
        fileParallelism: false,
      }),
      project("faults", ["tests/faults/**/*.test.ts"], {
        ...withService,
        testTimeout: 600_000,
        fileParallelism: false,
      }),
      project("demo", ["tests/demo/**/*.test.ts"], { testTimeout: 600_000 }),
      project("browser", inBrowser, {
        ...withService,
        testTimeout: 600_000,
        // What a person would press again: once more, and the end of the run names what needed it.
        retry: 1,
        // A browser waits a good part of the time: for a page, for a frame, for what was pressed.
        maxWorkers: Math.ceil(1.5 * availableParallelism()),
      }),
    ],
  },
});
