import fastifyRateLimit from "@fastify/rate-limit";
import { Inject, Injectable } from "@nestjs/common";
import type { NestFastifyApplication } from "@nestjs/platform-fastify";
import type { FastifyInstance, FastifyRequest } from "fastify";
import { Actor } from "../auth/actor.ts";
import { CONFIG, type Config } from "../config/index.ts";
import { ProblemError } from "../problems/problem-error.ts";
import { sendProblem } from "../problems/problem-filter.ts";
import { clientNetwork } from "./client-network.ts";

type Count = ReturnType<FastifyInstance["createRateLimit"]>;
type Counts = Readonly<Record<"network" | "account" | "costly", Count>>;

const minute = 60_000;

const accountOf = (request: FastifyRequest & { user?: unknown }): string =>
  request.user instanceof Actor ? request.user.account : "";

/**
 * How many requests a minute the service takes of one network and of one account, and of one account for what keeps it busy. Each
 * service process counts for itself: what it protects is its own time. The library remembers the last five thousand of each.
 */
@Injectable()
export class RequestLimits {
  private counts: Counts | undefined;
  constructor(@Inject(CONFIG) private readonly config: Config) {}

  /** Begins to count, once the server knows how. */
  countOn(server: FastifyInstance): void {
    const { byAddress, byAccount, costly } = this.config.http.requests;
    const count = (max: number, keyGenerator: (request: FastifyRequest) => string): Count =>
      server.createRateLimit({ max, keyGenerator, timeWindow: minute });
    this.counts = {
      network: count(byAddress, ({ ip }) => clientNetwork(ip)),
      account: count(byAccount, accountOf),
      costly: count(costly, accountOf),
    };
  }

  /** @throws ProblemError `too-many-requests` */
  async admitNetwork(request: FastifyRequest): Promise<void> {
    await this.admit("network", request, "from one address");
  }

  /**
   * @param request with its actor on it
   * @throws ProblemError `too-many-requests`
   */
  async admitAccount(request: FastifyRequest, isCostly: boolean): Promise<void> {
    await this.admit("account", request, "of one account");
    if (isCostly) await this.admit("costly", request, "of this kind, which takes it long, of one account");
  }

  private async admit(which: keyof Counts, request: FastifyRequest, whose: string): Promise<void> {
    if (this.counts === undefined) throw new Error("Nothing is counted yet.");
    const counted = await this.counts[which](request);
    if (counted.isAllowed || !counted.isExceeded) return;
    const { max, ttlInSeconds } = counted;
    const seconds = Math.max(1, ttlInSeconds);
    throw new ProblemError(
      "too-many-requests",
      `The service takes ${max} requests a minute ${whose}. Try again in ${seconds} ${seconds === 1 ? "second" : "seconds"}.`,
      { headers: { "retry-after": String(seconds) } },
    );
  }
}

/** Requests of the interface are counted by network before anything of them is read; by account once it is known. */
export async function registerRequestLimits(app: NestFastifyApplication): Promise<void> {
  const server = app.getHttpAdapter().getInstance();
  await app.register(fastifyRateLimit, { global: false });
  const limits = app.get(RequestLimits);
  limits.countOn(server);
  server.addHook("onRequest", async (request, reply) => {
    if (!request.url.startsWith("/api/")) return undefined;
    try {
      await limits.admitNetwork(request);
      return undefined;
    } catch (error) {
      if (!(error instanceof ProblemError)) throw error;
      sendProblem(request, reply, error);
      return reply;
    }
  });
}
