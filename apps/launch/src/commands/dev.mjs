import { spawn } from "node:child_process";
import { join } from "node:path";
import { startDatabase } from "../demo/database.mjs";
import { demoEnvironment } from "../demo/environment.mjs";
import { runServiceCommand } from "../demo/service.mjs";
import { prepareProduct } from "../prepare.mjs";
import { root } from "../root.mjs";
import { servingFlags } from "../serving.mjs";
import { toolScript } from "../tools.mjs";

const servicePort = "4860";

/** Programs that run until one of them ends or the end is asked for. */
function together(programs) {
  const { promise, resolve } = Promise.withResolvers();
  const children = programs.map(({ args, folder = ".", env = {} }) =>
    spawn(process.execPath, args, {
      cwd: join(root, folder),
      env: { ...process.env, ...env },
      stdio: "inherit",
    }),
  );
  for (const child of children) child.once("exit", resolve);
  for (const signal of ["SIGINT", "SIGTERM", "SIGHUP"]) process.on(signal, resolve);
  return promise.then(() => Promise.all(children.map(ended)));
}

function ended(child) {
  if (child.exitCode !== null || child.signalCode !== null) return undefined;
  return new Promise((resolve) => {
    child.once("exit", resolve);
    child.kill("SIGTERM");
  });
}

/** `npm run dev`: the service, built again and restarted on changes, and the web application with its own server beside it. */
export async function main() {
  await prepareProduct();
  const database = await startDatabase();
  try {
    const env = { ...demoEnvironment(database.url), PORT: servicePort };
    await runServiceCommand(["migrate"], env);
    await runServiceCommand(["load-demo"], env);
    const vite = toolScript("vite");
    await together([
      { args: [vite, "build", "--watch", "--logLevel", "warn"], folder: "apps/api" },
      { args: [...servingFlags, "--watch-path=apps/api/dist", "apps/api/dist/main.js", "serve"], env },
      { args: [vite], folder: "apps/web", env: { EVENHAND_SERVICE: `http://127.0.0.1:${servicePort}` } },
    ]);
    return 0;
  } finally {
    await database.stop();
  }
}
