import { defineConfig } from "prisma/config";

/** For the ordinary Prisma command; the service's own commands need no downloaded engine. */
export default defineConfig({
  schema: "prisma/schema.prisma",
  migrations: { path: "prisma/migrations" },
  ...(process.env.DATABASE_URL === undefined ? {} : { datasource: { url: process.env.DATABASE_URL } }),
});
