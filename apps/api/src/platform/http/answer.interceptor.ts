import { type CallHandler, type ExecutionContext, Injectable, type NestInterceptor } from "@nestjs/common";
import type { FastifyReply } from "fastify";
import { map, type Observable } from "rxjs";
import { toJsonText } from "./json-text.ts";

/** Writes every answer out: its type, its entity tag, and that nobody on the way may keep it. */
@Injectable()
export class AnswerInterceptor implements NestInterceptor {
  intercept(context: ExecutionContext, next: CallHandler<unknown>): Observable<unknown> {
    const reply = context.switchToHttp().getResponse<FastifyReply>();
    return next.handle().pipe(
      map((value) => {
        if (value === undefined) return undefined;
        const { text, etag } = toJsonText(value);
        void reply.header("content-type", "application/json; charset=utf-8");
        void reply.header("cache-control", "private, no-cache");
        if (etag !== null) void reply.header("etag", `"${etag}"`);
        return text;
      }),
    );
  }
}
