import type { PoolConfig } from "pg";

/**
 * For every pool: each of its connections has somebody who hears that it broke, from when it is opened until it is gone. A pool takes
 * its own ear away when it hands a connection out, and whoever awaits it puts theirs there a moment later: what breaks in between is heard
 * by nobody, and ends the process. Whoever asks over it is told by what they ask.
 */
export const heard: Pick<PoolConfig, "onConnect"> = {
  onConnect: (client) => void client.on("error", () => {}),
};
