import { Inject, Injectable } from "@nestjs/common";
import type { FastifyRequest } from "fastify";
import { CONFIG, type Config } from "../config/index.ts";
import { Actors } from "./actors.ts";
import type { Actor } from "./actor.ts";
import { readSessionCookie } from "./cookie.ts";

/** Methods that change nothing. */
export const isReading = (method: string): boolean => method === "GET" || method === "HEAD";

/** RFC 6750, 2.1. Only from the header: an address with a token in it ends up in logs. */
const bearerToken = ({ headers }: FastifyRequest): string | null =>
  /^Bearer +([\w.~+/-]+=*)$/i.exec(headers.authorization ?? "")?.[1] ?? null;

/** Who asks: by an opaque token, in the session's cookie or sent as bearer, looked up in the database. */
@Injectable()
export class Credentials {
  constructor(
    @Inject(CONFIG) private readonly config: Config,
    private readonly actors: Actors,
  ) {}

  /** The session's actor where the session holds, else the token's. */
  async findActor(request: FastifyRequest): Promise<Actor | null> {
    return (await this.findBySession(request)) ?? (await this.findByToken(request));
  }

  private async findBySession(request: FastifyRequest): Promise<Actor | null> {
    const secret = readSessionCookie(request, this.config);
    return secret === null ? null : this.actors.findBySession(secret, !isReading(request.method));
  }

  private async findByToken(request: FastifyRequest): Promise<Actor | null> {
    const secret = bearerToken(request);
    return secret === null ? null : this.actors.findByToken(secret);
  }
}
