import { setImmediate as nextTurn } from "node:timers/promises";
import { type CallHandler, type ExecutionContext, Injectable, type NestInterceptor } from "@nestjs/common";
import { Reflector } from "@nestjs/core";
import type { RouteId } from "@evenhand/shared/access";
import { contractTable } from "@evenhand/shared/http/contracts";
import { from, type Observable, switchMap } from "rxjs";
import { ROUTE_ID } from "../access/route.ts";
import { Turns } from "../database/turns.ts";

/**
 * Costly requests begin one at a time, with a turn of the event loop before each: whatever else has come meanwhile is answered
 * between two of them, so that nobody waits for more than one.
 */
@Injectable()
export class CostlyInterceptor implements NestInterceptor {
  private readonly gate = new Turns(1);
  constructor(private readonly reflector: Reflector) {}

  intercept(context: ExecutionContext, next: CallHandler<unknown>): Observable<unknown> {
    const route = this.reflector.get<RouteId | undefined>(ROUTE_ID, context.getHandler());
    if (route === undefined || contractTable[route].costly !== true) return next.handle();
    return from(this.gate.take(() => nextTurn())).pipe(switchMap(() => next.handle()));
  }
}
