import { once } from "node:events";
import { createServer } from "node:net";
import type { NestFastifyApplication } from "@nestjs/platform-fastify";
import { createApp } from "../app.ts";
import type { Config } from "../platform/config/index.ts";
import { stopGracefully } from "../platform/http/stopping.ts";

/** How many ports above a taken one are tried. */
const tries = 50;

async function isFree(port: number, host: string): Promise<boolean> {
  const server = createServer();
  try {
    server.listen(port, host);
    await once(server, "listening");
    return true;
  } catch (error) {
    if (error instanceof Error && "code" in error && error.code === "EADDRINUSE") return false;
    throw error;
  } finally {
    server.close();
  }
}

/** The configured port, or where it is taken the next free one above it. */
async function findPort({ http }: Config): Promise<number> {
  if (http.port === 0) return 0;
  for (let port = http.port; port < http.port + tries; port += 1)
    if (await isFree(port, http.host)) return port;
  throw new Error(`The ports from ${http.port} to ${http.port + tries - 1} are all taken.`);
}

export type Serving = {
  /** Where the service is reached. */
  readonly address: string;
  /** Says that it is not ready, finishes what it is doing, takes nothing new, and gives everything back. */
  readonly close: () => Promise<void>;
};

export async function serve(config: Config): Promise<Serving> {
  const app: NestFastifyApplication = await createApp(config);
  await app.listen(await findPort(config), config.http.host);
  return { address: await app.getUrl(), close: () => stopGracefully(app, config.http.notReadyFor) };
}

/** Resolves when the process is told to stop. */
export async function toldToStop(): Promise<void> {
  await Promise.race(["SIGTERM", "SIGINT"].map((signal) => once(process, signal)));
}
