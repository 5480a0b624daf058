import { existsSync } from "node:fs";
import { dirname, join } from "node:path";

/** The folder that holds `prisma/schema.prisma`, above the source file or the bundle that asks. */
export function projectFolder(from: string = import.meta.dirname): string {
  if (existsSync(join(from, "prisma", "schema.prisma"))) return from;
  const above = dirname(from);
  if (above === from)
    throw new Error("The project's folder was not found: no prisma/schema.prisma above the service.");
  return projectFolder(above);
}
