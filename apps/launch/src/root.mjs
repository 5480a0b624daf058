import { fileURLToPath } from "node:url";

/** The folder of the project. */
export const root = fileURLToPath(new URL("../../..", import.meta.url)).replace(/[\\/]$/, "");
