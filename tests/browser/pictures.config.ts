import { defineConfig } from "vitest/config";

/** `npx vitest run --config tests/browser/pictures.config.ts`: the pictures in docs/pictures, and with PICTURES a folder of every screen. */
export default defineConfig({
  root: `${import.meta.dirname}/../..`,
  test: {
    name: "pictures",
    include: ["tests/browser/pictures.ts"],
    globalSetup: ["tests/api/setup/database-server.ts"],
    testTimeout: 600_000,
    hookTimeout: 60_000,
  },
});
