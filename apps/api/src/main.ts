import { parseArgs } from "node:util";
import { ConfigError, parseConfig } from "./platform/config/index.ts";
import { migrate } from "./platform/database/migrations.ts";
import { migrateJobs } from "./platform/jobs/queues.ts";

/** The command was called in a way that cannot work. */
class UsageError extends Error {
  override readonly name = "UsageError";
}

type Command = { words: string; run: () => Promise<void> };

async function runServe(): Promise<void> {
  const { serve, toldToStop } = await import("./commands/serve.ts");
  const { address, close } = await serve(parseConfig(process.env));
  console.log(`Evenhand answers at ${address}`);
  await toldToStop();
  await close();
}

async function runWork(): Promise<void> {
  const { toldToStop } = await import("./commands/serve.ts");
  const { work } = await import("./commands/work.ts");
  const working = await work(parseConfig(process.env));
  console.log("Evenhand works.");
  await toldToStop();
  await working.close();
}

async function runInviteOperator(): Promise<void> {
  const { inviteOperator } = await import("./commands/invite-operator.ts");
  const { Email } = await import("@evenhand/shared/http/accounts");
  const config = parseConfig(process.env);
  const email = Email.safeParse(process.argv[3]);
  if (!email.success) throw new UsageError("Name the operator's e-mail address: invite-operator NAME@HOST");
  const base = await inviteOperator(config, email.data);
  console.log(`The invitation is on its way by mail. Its link leads to ${base}`);
  if (config.http.publicUrl === null)
    console.log("That is this machine only. Set PUBLIC_URL where people reach the service elsewhere.");
}

async function runMigrate(): Promise<void> {
  const { database } = parseConfig(process.env);
  const applied = await migrate(database.url);
  await migrateJobs(database.url);
  console.log(applied.length === 0 ? "Nothing to migrate." : `Migrated: ${applied.join(", ")}`);
}

async function runLoadDemo(): Promise<void> {
  const { loadDemo } = await import("./commands/load-demo.ts");
  console.log(JSON.stringify(await loadDemo(parseConfig(process.env)), null, 2));
}

async function runVerifyRecord(): Promise<void> {
  const { verifyRecord } = await import("./commands/verify-record.ts");
  const { values } = parseArgs({
    args: process.argv.slice(3),
    options: { receipt: { type: "string" }, organization: { type: "string" } },
  });
  const asked = { organization: values.organization, receiptFile: values.receipt };
  const { lines, isWhole } = await verifyRecord(parseConfig(process.env), asked);
  console.log(lines.length === 0 ? "There is no record yet." : lines.join("\n"));
  if (!isWhole) process.exitCode = 1;
}

async function runDraftMigration(): Promise<void> {
  const { draftMigration } = await import("./commands/draft-migration.ts");
  console.log(await draftMigration(parseConfig(process.env).database.url, process.argv[3] ?? ""));
}

/** What `node apps/api/dist/main.js <command>` does; the environment configures it. */
const commands: Readonly<Record<string, Command>> = {
  serve: { words: "serves the interface and the web application", run: runServe },
  work: { words: "does slow work, such as mail, and serves nothing", run: runWork },
  "invite-operator": { words: "invites the operator at the address named", run: runInviteOperator },
  "load-demo": { words: "loads the invented world once, and prints its accounts as JSON", run: runLoadDemo },
  "draft-migration": {
    words: "prints the SQL that leads from the schema file named to prisma/schema.prisma",
    run: runDraftMigration,
  },
  "verify-record": {
    words: "holds the record against itself and what was signed: [--receipt FILE] [--organization ID]",
    run: runVerifyRecord,
  },
  migrate: { words: "applies the migrations that the database lacks", run: runMigrate },
};

function explain(name: string | undefined): void {
  console.error(name === undefined ? "Name a command:" : `There is no command "${name}". There are:`);
  for (const [command, { words }] of Object.entries(commands))
    console.error(`  ${command.padEnd(16)} ${words}`);
}

async function main(): Promise<number> {
  const name = process.argv[2];
  const command = name === undefined || !Object.hasOwn(commands, name) ? undefined : commands[name];
  if (command === undefined) {
    explain(name);
    return 2;
  }
  try {
    await command.run();
    return Number(process.exitCode ?? 0);
  } catch (error) {
    if (error instanceof UsageError) {
      console.error(error.message);
      return 2;
    }
    if (!(error instanceof ConfigError)) throw error;
    console.error(`The environment does not hold together:\n${error.message}`);
    return 2;
  }
}

process.exitCode = await main();
