import { fileURLToPath } from "node:url";
import { resolve } from "node:path";
import { startDatabase } from "../demo/database.mjs";
import { demoEnvironment } from "../demo/environment.mjs";
import { prepareProduct } from "../prepare.mjs";
import { run } from "../process.mjs";
import { root } from "../root.mjs";

const cli = fileURLToPath(new URL("../../../cli/src/main.ts", import.meta.url));
const service = fileURLToPath(new URL("../service.mjs", import.meta.url));

const usage = `npm run record -- verify [--receipt FILE] [--organization ID]
  Holds the record against itself, and against a receipt or a mailed root that was kept elsewhere: in the database at
  DATABASE_URL, or in the demo's. Names the first entry that is broken.
npm run record -- check FILE [--keys FILE]
  Checks a sealed report or summary that was downloaded, away from the service.`;

/** Files are meant from where the person stands; the service runs in the project's folder. */
const fromHere = (word, at, words) => (words[at - 1] === "--receipt" ? resolve(word) : word);

async function verify(words) {
  await prepareProduct();
  const database = await startDatabase();
  try {
    const env = demoEnvironment(database.url);
    return await run(process.execPath, [service, "verify-record", ...words.map(fromHere)], {
      cwd: root,
      env,
    });
  } finally {
    await database.stop();
  }
}

/** `npm run record -- verify` or `check`. */
export async function main([what, ...words]) {
  if (what === "check") return run(process.execPath, [cli, "check", ...words], { cwd: process.cwd() });
  if (what === "verify") return verify(words);
  console.error(usage);
  return 2;
}
