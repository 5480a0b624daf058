import { setImmediate as nextTurn } from "node:timers/promises";
import { type CallHandler, type ExecutionContext, Injectable, type NestInterceptor } from "@nestjs/common";
import { from, type Observable, switchMap } from "rxjs";
import { Turns } from "../database/turns.ts";

/** One for the whole service: each module that has costly routes has an interceptor of its own. */
@Injectable()
export class CostlySemaphore {
  private readonly turns = new Turns(1);

  /** Resolves once the one before has begun, and a turn of the event loop after that. */
  async pass(): Promise<void> {
    await this.turns.take(() => nextTurn());
  }
}

/**
 * Costly requests begin one at a time, with a turn of the event loop before each: whatever else has come meanwhile is answered
 * between two of them, so that nobody waits for more than one. It stands on those routes alone whose contract says so.
 */
@Injectable()
export class CostlyInterceptor implements NestInterceptor {
  constructor(private readonly semaphore: CostlySemaphore) {}

  intercept(_context: ExecutionContext, next: CallHandler<unknown>): Observable<unknown> {
    return from(this.semaphore.pass()).pipe(switchMap(() => next.handle()));
  }
}
