import "reflect-metadata";
import fastifyCookie from "@fastify/cookie";
import { ConsoleLogger, Module, type Type } from "@nestjs/common";
import { NestFactory } from "@nestjs/core";
import type { NestFastifyApplication } from "@nestjs/platform-fastify";
import { type FastifyReply, type FastifyRequest, LogController } from "fastify";
import { capabilities } from "./capabilities/index.ts";
import type { Config } from "./platform/config/index.ts";
import type { Given } from "./platform/database/database.module.ts";
import { AnswerAdapter } from "./platform/http/answer-adapter.ts";
import { registerBodyLimits } from "./platform/http/body-limits.ts";
import { registerHealth } from "./platform/http/health.ts";
import { makeOpenApi } from "./platform/http/openapi.ts";
import { registerRequestLimits } from "./platform/http/request-limits.ts";
import { loggerOptions, registerRequestLog, requestIdOf } from "./platform/http/request-log.ts";
import { registerSecurityHeaders, registerSite } from "./platform/http/site.ts";
import { refuseConnection, timeouts } from "./platform/http/slow-requests.ts";
import { registerStreamedBodies } from "./platform/http/streamed-bodies.ts";
import { registerStoredAnswers } from "./platform/http/stored-answers.ts";
import { registerStopping } from "./platform/http/stopping.ts";
import { PlatformModule } from "./platform/platform.module.ts";
import { noSuchRoute } from "./platform/problems/no-such-route.ts";
import { sendProblem } from "./platform/problems/problem-filter.ts";

@Module({})
class AppModule {}

const adapterOf = (config: Config) =>
  new AnswerAdapter({
    logger: loggerOptions(config),
    logController: new LogController({ disableRequestLogging: true }),
    genReqId: requestIdOf,
    bodyLimit: config.http.bodyLimit,
    ...timeouts(config),
    clientErrorHandler: refuseConnection,
    trustProxy: config.http.trustedProxies.length > 0 ? config.http.trustedProxies : false,
    // Whoever asks over a connection they have is answered to the last.
    return503OnClosing: false,
    routerOptions: { maxParamLength: 200 },
    // What is no address at all never reaches a route, nor what is hooked to routes.
    frameworkErrors: (_error: unknown, request: FastifyRequest, reply: FastifyReply) => {
      sendProblem(request, reply, noSuchRoute(request));
    },
  });

/** What the framework itself has to say, in the same form as the requests. */
const nestLogger = ({ logLevel }: Config) =>
  logLevel === "silent"
    ? (false as const)
    : new ConsoleLogger({ json: true, logLevels: ["error", "warn", "fatal"] });

function registerOpenApi(app: NestFastifyApplication): void {
  let document: string | undefined;
  app
    .getHttpAdapter()
    .getInstance()
    .get("/api/openapi.json", async (_request, reply) => {
      document ??= JSON.stringify(makeOpenApi(app));
      return reply.type("application/json; charset=utf-8").send(document);
    });
}

export type AppOptions = Given & {
  /** Further modules, such as a test's own controllers. */
  readonly modules?: readonly Type[];
};

/** The service, ready to listen: what `serve` runs and what tests start. */
export async function createApp(
  config: Config,
  { modules = [], ...given }: AppOptions = {},
): Promise<NestFastifyApplication> {
  const app = await NestFactory.create<NestFastifyApplication>(
    { module: AppModule, imports: [PlatformModule.of(config, given), ...capabilities, ...modules] },
    adapterOf(config),
    { logger: nestLogger(config), abortOnError: false, bodyParser: false },
  );
  app.setGlobalPrefix("api/v1");
  // Bodies are JSON; what a plain form on another site can send is not taken.
  app.getHttpAdapter().getInstance().removeContentTypeParser("text/plain");
  registerBodyLimits(app);
  registerStreamedBodies(app);
  registerRequestLog(app);
  registerStopping(app);
  await app.register(fastifyCookie);
  await registerSecurityHeaders(app, config);
  await registerRequestLimits(app);
  registerStoredAnswers(app);
  await registerSite(app, config);
  registerHealth(app);
  registerOpenApi(app);
  await app.init();
  await app.getHttpAdapter().getInstance().ready();
  return app;
}
