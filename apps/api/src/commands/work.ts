import { createApp } from "../app.ts";
import type { Config } from "../platform/config/index.ts";

/** Does slow work and answers nobody: for machines of which some serve and some work. */
export async function work(config: Config): Promise<{ readonly close: () => Promise<void> }> {
  const app = await createApp({ ...config, jobs: true });
  return { close: () => app.close() };
}
