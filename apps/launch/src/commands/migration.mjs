import { execFileSync } from "node:child_process";
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { demoEnvironment } from "../demo/environment.mjs";
import { startDatabase } from "../demo/database.mjs";
import { runServiceCommand } from "../demo/service.mjs";
import { prepareProduct } from "../prepare.mjs";
import { root } from "../root.mjs";

/** The schema as it was committed last, in a file. */
function committedSchema() {
  const file = join(root, "node_modules/.evenhand/before.prisma");
  writeFileSync(file, execFileSync("git", ["show", "HEAD:prisma/schema.prisma"], { cwd: root }));
  return file;
}

/** SQL from the schema of the last commit to the one that stands here; the schema engine wants a database beside it. */
async function draft() {
  const before = committedSchema();
  const database = await startDatabase();
  try {
    return await runServiceCommand(["draft-migration", before], demoEnvironment(database.url));
  } finally {
    await database.stop();
  }
}

/** `20261127080000_cost_table_history`: the hour in UTC, and what it does. */
const folderOf = (name, now) => `${now.toISOString().replaceAll(/\D/g, "").slice(0, 14)}_${name}`;

/** `npm run migration -- NAME`: drafts a migration into a new folder, from the schema of the last commit to the one here. */
export async function main([name = ""]) {
  if (!/^[a-z][a-z0-9_]*$/.test(name)) {
    console.error("Say in small letters what it does: npm run migration -- cost_table_history");
    return 2;
  }
  await prepareProduct();
  const sql = await draft();
  if (!/^[A-Z]/m.test(sql.replaceAll(/^--.*$/gm, ""))) {
    console.error("prisma/schema.prisma says what it said in the last commit: change it first.");
    return 1;
  }
  const folder = join("prisma/migrations", folderOf(name, new Date()));
  mkdirSync(join(root, folder));
  writeFileSync(join(root, folder, "migration.sql"), `${sql}\n`);
  console.log(
    `Drafted ${folder}/migration.sql: read it, and add by hand what the schema language cannot say.`,
  );
  return 0;
}
