import { parseArgs } from "node:util";
import { accountLines } from "../demo/accounts.mjs";
import { startDatabase } from "../demo/database.mjs";
import { demoEnvironment } from "../demo/environment.mjs";
import { printMainCase } from "../demo/main-case.mjs";
import { runServiceCommand, startService } from "../demo/service.mjs";
import { prepareProduct } from "../prepare.mjs";

const usage = `npm run demo [-- --once]
  --once  stop after printing the discrepancy report`;

const loadWords = {
  loaded: "The demo scenario is loaded.",
  there: "The demo scenario is there from before.",
  older:
    "The database holds an older demo scenario, and it stays as it is. For the new one, move the folder ./.data away (or use an empty database).",
};

/** Resolves when a person or the system asks for the end; asked again, it goes on ending. */
function askedToStop() {
  const { promise, resolve } = Promise.withResolvers();
  for (const signal of ["SIGINT", "SIGTERM", "SIGHUP"]) process.on(signal, () => resolve(signal));
  return promise;
}

const doors = (address, { accounts }) => `
The web application:  ${address}
Everybody who can sign in; all of it is invented, and printed only here:

${accountLines(accounts)
  .map((line) => `  ${line}`)
  .join("\n")}
`;

/** Where the demo stands on its way: what is done next, counted, so that nobody wonders how long it takes. */
const stepsOf = (count) => {
  let at = 0;
  return (what) => console.log(`${(at += 1)} of ${count}  ${what}`);
};

async function show(service, guide, isOnce, stopped) {
  if (!isOnce) console.log(doors(service.address, guide));
  await printMainCase(service.address, guide.main);
  if (isOnce) return 0;
  console.log(`${doors(service.address, guide)}
The case above is ${guide.main.viewer.email}'s. Ctrl-C stops everything, the database too.`);
  const end = await Promise.race([stopped, service.ended]);
  if (typeof end === "string") return 0;
  console.error("The service has ended by itself; what it said stands above.");
  return 1;
}

/** `npm run demo`: builds, starts, migrates, loads the scenario, prints the main case, serves. */
export async function main(args) {
  const { values } = parseArgs({ args, options: { once: { type: "boolean" }, help: { type: "boolean" } } });
  if (values.help) {
    console.log(usage);
    return 0;
  }
  const stopped = askedToStop();
  const step = stepsOf(6);
  step("what has changed is built");
  await prepareProduct();
  step("the database is started");
  const database = await startDatabase();
  try {
    console.log(`        Using ${database.words}.`);
    const env = demoEnvironment(database.url);
    step("its tables are brought up to date");
    console.log(`        ${await runServiceCommand(["migrate"], env)}`);
    step("the invented world is loaded, dated from today: half a minute the first time");
    const guide = JSON.parse(await runServiceCommand(["load-demo"], env));
    console.log(`        ${loadWords[guide.state]}`);
    step("the service is started");
    const service = await startService(env);
    step("the main case is fetched and printed as its buyer reads it");
    try {
      return await show(service, guide, values.once === true, stopped);
    } finally {
      await service.stop();
    }
  } finally {
    await database.stop();
  }
}
