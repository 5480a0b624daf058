import { Inject, Injectable } from "@nestjs/common";
import { PassportStrategy } from "@nestjs/passport";
import type { FastifyRequest } from "fastify";
import passport from "passport";
import { Strategy as HttpBearerStrategy } from "passport-http-bearer";
import { CONFIG, type Config } from "../config/index.ts";
import { Actors } from "./actors.ts";
import type { Actor } from "./actor.ts";
import { readSessionCookie } from "./cookie.ts";

/** Methods that change nothing. */
export const isReading = (method: string): boolean => method === "GET" || method === "HEAD";

type Verified = (error: unknown, actor: Actor | false | null) => void;
type Verify = (request: FastifyRequest, done: Verified) => void;

/** Passport's own sessions are made for another framework; ours are opaque tokens in a cookie, looked up in the database. */
class CookieStrategy extends passport.Strategy {
  private readonly verify: Verify;
  constructor(verify: Verify) {
    super();
    this.verify = verify;
  }
  override authenticate(request: object): void {
    if (!isFastifyRequest(request)) return this.fail(401);
    this.verify(request, (error, actor) => {
      if (actor !== null && actor !== false) this.success(actor);
      else if (error === null) this.fail(401);
      else this.error(error);
    });
  }
}

const isFastifyRequest = (request: object): request is FastifyRequest => "cookies" in request;

@Injectable()
export class SessionStrategy extends PassportStrategy(CookieStrategy, "session") {
  constructor(
    @Inject(CONFIG) private readonly config: Config,
    private readonly actors: Actors,
  ) {
    super();
  }

  async validate(request: FastifyRequest): Promise<Actor | false> {
    const secret = readSessionCookie(request, this.config);
    if (secret === null) return false;
    return (await this.actors.findBySession(secret, !isReading(request.method))) ?? false;
  }
}

@Injectable()
export class BearerStrategy extends PassportStrategy(HttpBearerStrategy, "bearer") {
  constructor(private readonly actors: Actors) {
    super({ passReqToCallback: true });
  }

  /** Only from the header: an address with a token in it ends up in logs. */
  async validate(request: FastifyRequest, secret: string): Promise<Actor | false> {
    if (request.headers.authorization?.endsWith(` ${secret}`) !== true) return false;
    return (await this.actors.findByToken(secret)) ?? false;
  }
}
