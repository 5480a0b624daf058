import { setTimeout as wait } from "node:timers/promises";
import { Injectable } from "@nestjs/common";
import type { NestFastifyApplication } from "@nestjs/platform-fastify";

/** Whether the service is on its way to stop. */
@Injectable()
export class Stopping {
  private stopping = false;

  get isStopping(): boolean {
    return this.stopping;
  }

  begin(): void {
    this.stopping = true;
  }
}

/** From the moment it stops, each answer ends its connection: whoever keeps theirs asks the next thing elsewhere. */
export function registerStopping(app: NestFastifyApplication): void {
  const stopping = app.get(Stopping);
  app
    .getHttpAdapter()
    .getInstance()
    .addHook("onRequest", (_request, reply, done) => {
      if (stopping.isStopping) void reply.header("connection", "close");
      done();
    });
}

/**
 * Stops without failing a request: first it says that it is not ready and goes on answering for so many milliseconds, so that whoever
 * sends it requests can notice; then it takes nothing new and finishes what it has; only then jobs and connections are given back,
 * since a request that is being finished may need both.
 */
export async function stopGracefully(app: NestFastifyApplication, notReadyFor: number): Promise<void> {
  app.get(Stopping).begin();
  await wait(notReadyFor);
  await app.getHttpAdapter().getInstance().close();
  await app.close();
}
