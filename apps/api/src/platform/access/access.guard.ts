import { type CanActivate, type ExecutionContext, Inject, Injectable } from "@nestjs/common";
import { Reflector } from "@nestjs/core";
import { type Access, accessTable, mayUse, type RouteId } from "@evenhand/shared/access";
import { contractTable } from "@evenhand/shared/http/contracts";
import type { FastifyRequest } from "fastify";
import type { Actor } from "../auth/actor.ts";
import { isOwnOrigin } from "../auth/origin.ts";
import { Credentials, isReading } from "../auth/credentials.ts";
import { CONFIG, type Config } from "../config/index.ts";
import { RequestLimits } from "../http/request-limits.ts";
import { ProblemError } from "../problems/problem-error.ts";
import { ROUTE_ID } from "./route-id.ts";

const refused = (detail: string) => new ProblemError("not-permitted", detail);

export const notSignedIn = (): ProblemError =>
  new ProblemError("not-signed-in", "Sign in, or send a token that still holds.", {
    headers: { "www-authenticate": 'Bearer realm="evenhand"' },
  });

/**
 * The access table at work, in front of every route. A route that names no entry refuses everybody. What remains, the relation to
 * the object, is part of the query that reads it.
 */
@Injectable()
export class AccessGuard implements CanActivate {
  constructor(
    private readonly reflector: Reflector,
    @Inject(CONFIG) private readonly config: Config,
    private readonly credentials: Credentials,
    private readonly limits: RequestLimits,
  ) {}

  async canActivate(context: ExecutionContext): Promise<boolean> {
    const id = this.reflector.get<RouteId | undefined>(ROUTE_ID, context.getHandler());
    const entry = id === undefined ? undefined : accessTable[id];
    if (id === undefined || entry === undefined) throw refused("This address is open to nobody.");
    const request = context.switchToHttp().getRequest<FastifyRequest & { user?: unknown }>();
    if (entry.public) return this.checkOrigin(request, request.headers.origin !== undefined);
    const actor = await this.credentials.findActor(request);
    if (actor === null) throw notSignedIn();
    request.user = actor;
    await this.limits.admitAccount(request, contractTable[id].costly === true);
    this.checkOrigin(request, "session" in actor.by);
    checkActor(id, entry, actor);
    return true;
  }

  private checkOrigin(request: FastifyRequest, needed: boolean): true {
    if (!needed || isReading(request.method) || isOwnOrigin(request, this.config)) return true;
    throw new ProblemError("foreign-origin", "Changes are taken from the service's own pages only.");
  }
}

function checkActor(id: RouteId, entry: Access, actor: Actor): void {
  if ("scopes" in actor.by && (entry.scope === undefined || !actor.by.scopes.includes(entry.scope))) {
    const needed =
      entry.scope === undefined
        ? "This is for people only, not for tokens."
        : `The token lacks the scope "${entry.scope}".`;
    throw new ProblemError("scope-missing", needed);
  }
  if (!mayUse(id, actor.kinds)) {
    const kinds = entry.who.map((each) => each.kind).join(" or ");
    throw refused(`This is for members of an organization of the kind ${kinds}.`);
  }
}
