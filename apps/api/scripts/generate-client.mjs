// Writes the database client from prisma/schema.prisma into src/platform/database/generated.
// The Prisma command would first download a native schema engine, which generating does not use: any existing file stands in.
import { spawnSync } from "node:child_process";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";

const root = join(import.meta.dirname, "..", "..", "..");
const prisma = join(
  dirname(createRequire(import.meta.url).resolve("prisma/package.json")),
  "build",
  "index.js",
);

const done = spawnSync(process.execPath, [prisma, "generate"], {
  cwd: root,
  encoding: "utf8",
  env: {
    ...process.env,
    PRISMA_SCHEMA_ENGINE_BINARY: process.execPath,
    CHECKPOINT_DISABLE: "1",
    PRISMA_HIDE_UPDATE_MESSAGE: "1",
  },
});
if (done.status !== 0) console.error(`${done.stdout}${done.stderr}`);
process.exitCode = done.status ?? 1;
