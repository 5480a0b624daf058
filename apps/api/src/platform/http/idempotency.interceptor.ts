import { createHash } from "node:crypto";
import { type CallHandler, type ExecutionContext, Injectable, type NestInterceptor } from "@nestjs/common";
import { Reflector } from "@nestjs/core";
import { accessTable, type RouteId } from "@evenhand/shared/access";
import { contractTable } from "@evenhand/shared/http/contracts";
import { canonicalJson } from "@evenhand/record/canonical-json";
import type { FastifyReply, FastifyRequest } from "fastify";
import { from, lastValueFrom, type Observable } from "rxjs";
import { z } from "zod";
import { ROUTE_ID } from "../access/route-id.ts";
import { Actor } from "../auth/actor.ts";
import { Clock } from "../clock/index.ts";
import { Database, type Transaction } from "../database/database.ts";
import { findRow, sql } from "../database/rows.ts";
import { ProblemError } from "../problems/problem-error.ts";
import { holdAgainst } from "./contract.pipe.ts";
import { beginFor } from "./in-transaction.ts";
import { JsonText, toJsonText } from "./json-text.ts";

const ClaimRow = z.object({ free: z.boolean() });

type Keyed = { actor: Actor; route: RouteId; key: string; requestHash: Uint8Array<ArrayBuffer> };
type Request = FastifyRequest & { user?: unknown };

const kept = 24 * 60 * 60_000;

function readKey(request: Request): string {
  const key = request.headers["idempotency-key"];
  if (typeof key === "string" && /^[\x21-\x7e]{8,200}$/.test(key)) return key;
  throw new ProblemError(
    "idempotency-key-missing",
    "Send an Idempotency-Key of your own making, 8 to 200 characters; the same one when you repeat the request.",
    { problems: [{ at: "header/idempotency-key", reason: "8 to 200 visible characters" }] },
  );
}

/** What was asked: the address, the revision meant, and the body. */
const hashOf = (request: Request): Uint8Array<ArrayBuffer> => {
  const asked = [request.url, request.headers["if-match"] ?? null, request.body ?? null];
  return new Uint8Array(createHash("sha256").update(canonicalJson(asked)).digest());
};

/**
 * A creating request is done once, however often it is sent. The answer is kept in the transaction of the change itself, so that
 * a service killed in between has done and kept both or neither. A repeat gets the first answer, if the person still belongs to
 * every organization they belonged to then; refusals are not kept. It stands on those routes alone whose repeats a key recognizes.
 */
@Injectable()
export class IdempotencyInterceptor implements NestInterceptor {
  constructor(
    private readonly reflector: Reflector,
    private readonly database: Database,
    private readonly clock: Clock,
  ) {}

  intercept(context: ExecutionContext, next: CallHandler<unknown>): Observable<unknown> {
    const route = this.reflector.get<RouteId | undefined>(ROUTE_ID, context.getHandler());
    if (route === undefined || accessTable[route].once !== "key") return next.handle();
    const request = context.switchToHttp().getRequest<Request>();
    if (!(request.user instanceof Actor)) return next.handle();
    const asked = { actor: request.user, route, key: readKey(request) };
    const reply = context.switchToHttp().getResponse<FastifyReply>();
    return from(this.held(asked, request, reply, () => lastValueFrom(next.handle())));
  }

  /** The contract comes before the hash: what does not hold is not worth the work, and need not be anything a hash is made of. */
  private async held(
    asked: Omit<Keyed, "requestHash">,
    request: Request,
    reply: FastifyReply,
    work: () => Promise<unknown>,
  ): Promise<JsonText> {
    const { body } = contractTable[asked.route];
    if (body !== undefined) await holdAgainst(body, request.body, "body");
    return this.once({ ...asked, requestHash: hashOf(request) }, reply, (tx) => {
      beginFor(request, tx);
      return work();
    });
  }

  private async once(
    keyed: Keyed,
    reply: FastifyReply,
    work: (tx: Transaction) => Promise<unknown>,
  ): Promise<JsonText> {
    return this.database.transaction(async (tx) => {
      await claim(tx, keyed);
      const first = await this.findFirst(tx, keyed);
      if (first !== null) {
        void reply.header("idempotency-replayed", "true");
        return first;
      }
      const answer = toJsonText(await work(tx));
      await this.keep(tx, keyed, answer);
      return answer;
    });
  }

  private async findFirst(
    tx: Transaction,
    { actor, route, key, requestHash }: Keyed,
  ): Promise<JsonText | null> {
    const row = await tx.idempotency.findUnique({
      where: { accountId_route_key: { accountId: actor.account, route, key } },
    });
    if (row === null) return null;
    if (this.clock.now().getTime() - row.createdAt.getTime() > kept) {
      await tx.idempotency.delete({
        where: { accountId_route_key: { accountId: actor.account, route, key } },
      });
      return null;
    }
    if (!Buffer.from(row.requestHash).equals(requestHash))
      throw new ProblemError(
        "idempotency-key-reused",
        "This key came with another request before. Use a new one.",
        { problems: [{ at: "header/idempotency-key", reason: "one that came with no other request" }] },
      );
    if (!row.organizations.every((each) => actor.organizations().includes(each)))
      throw new ProblemError("not-permitted", "You have left an organization you acted for then.");
    return new JsonText(row.body, row.etag);
  }

  private async keep(
    tx: Transaction,
    { actor, route, key, requestHash }: Keyed,
    answer: JsonText,
  ): Promise<void> {
    await tx.idempotency.create({
      data: {
        accountId: actor.account,
        route,
        key,
        requestHash,
        organizations: actor.organizations(),
        etag: answer.etag,
        body: Buffer.from(answer.text).toString("utf8"),
        createdAt: this.clock.now(),
      },
    });
  }
}

/** Held until the transaction ends; whoever comes meanwhile is told so. */
async function claim(tx: Transaction, { actor, route, key }: Keyed): Promise<void> {
  const row = await findRow(
    tx,
    ClaimRow,
    sql`
    SELECT pg_try_advisory_xact_lock(hashtextextended(${`${actor.account} ${route} ${key}`}, 0)) AS free`,
  );
  if (row?.free !== true)
    throw new ProblemError(
      "request-in-progress",
      "The same request is still running. Ask again in a moment.",
      {
        headers: { "retry-after": "1" },
      },
    );
}
