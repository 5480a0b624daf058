import { Agent, get } from "node:http";
import type { Served } from "./programs.ts";

const CLIENTS = 16;

export type Target = { readonly served: Served; readonly cookie: string };

const agent = new Agent({ keepAlive: true, maxSockets: CLIENTS });

/** One GET, read to its end. @returns bytes of the body @throws where the answer is not 200 */
export function fetchOnce({ served, cookie }: Target, path: string): Promise<number> {
  return new Promise((resolve, reject) => {
    get(`${served.address}${path}`, { agent, headers: { cookie } }, (response) => {
      let bytes = 0;
      response.on("data", (chunk: Buffer) => (bytes += chunk.length));
      response.on("error", reject);
      response.on("end", () =>
        response.statusCode === 200
          ? resolve(bytes)
          : reject(new Error(`GET ${path} was answered with ${response.statusCode}`)),
      );
    }).on("error", reject);
  });
}

/** Requests a second of the program's own processor time, over many kept connections at once. */
export async function requestsPerProcessorSecond(
  target: Target,
  path: string,
  count: number,
): Promise<number> {
  const before = await target.served.processorTime();
  let left = count;
  const client = async () => {
    while (left > 0) {
      left -= 1;
      await fetchOnce(target, path);
    }
  };
  await Promise.all(Array.from({ length: CLIENTS }, client));
  return count / ((await target.served.processorTime()) - before);
}

/** Milliseconds each path takes, one after the other. */
export async function timesOf(target: Target, paths: readonly string[]): Promise<number[]> {
  const times: number[] = [];
  for (const path of paths) {
    const start = performance.now();
    await fetchOnce(target, path);
    times.push(performance.now() - start);
  }
  return times;
}

export function quantile(values: readonly number[], share: number): number {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? Number.NaN;
}

export function closeConnections(): void {
  agent.destroy();
}
