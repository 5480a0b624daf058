import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { root } from "../root.mjs";
import { dataFolder } from "./data-folder.mjs";

const embedded = join(root, "apps", "api", "dist", "embedded.js");

/**
 * The database of the demo: PostgreSQL at `DATABASE_URL` where that is set, else the embedded one in `./.data`, started or found
 * running. Only the embedded one is stopped.
 */
export async function startDatabase() {
  const url = process.env.DATABASE_URL;
  if (url !== undefined && url !== "") {
    return { url, words: "the PostgreSQL at DATABASE_URL", stop: async () => undefined };
  }
  const { startEmbedded } = await import(pathToFileURL(embedded).href);
  const asked = join(dataFolder, "postgres");
  const database = await startEmbedded(asked);
  const how = database.reused ? "found running" : "started";
  const elsewhere = `${database.folder}, since its user cannot enter this folder`;
  const where = database.folder === asked ? dataFolder : elsewhere;
  return {
    url: database.url,
    words: `the embedded database in ${where} (${how})`,
    stop: () => database.stop(),
  };
}
