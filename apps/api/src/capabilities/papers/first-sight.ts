import { firstSight } from "@evenhand/paper/first-sight";
import { mayUse } from "@evenhand/shared/access";
import { ObjectId } from "@evenhand/shared/identifier";
import { Injectable, type OnModuleInit } from "@nestjs/common";
import { HttpAdapterHost } from "@nestjs/core";
import type { FastifyAdapter } from "@nestjs/platform-fastify";
import type { FastifyReply, FastifyRequest } from "fastify";
import type { Actor } from "../../platform/auth/actor.ts";
import { Credentials } from "../../platform/auth/credentials.ts";
import { RequestLimits } from "../../platform/http/request-limits.ts";
import { sendPage, wantsPage } from "../../platform/http/site.ts";
import { markupOf } from "../../platform/page/blocks.ts";
import { ShellPage } from "../../platform/page/shell-page.ts";
import { ProblemError } from "../../platform/problems/problem-error.ts";
import { PapersService } from "./papers.service.ts";

type Route = { Params: { comparison: string } };
type Asked = FastifyRequest<Route> & { user?: unknown };

/** The bare address is the answer's, as a browser asks for it: with more behind it, a comparison shows its lines. */
const asksForAnswer = ({ url, headers, params }: Asked): boolean =>
  wantsPage(url, headers.accept) && !url.includes("?") && ObjectId.safeParse(params.comparison).success;

/**
 * The comparison's page with its answer in it, so that a buyer on a weak line reads what is wrong while the application is still on
 * its way. Whoever is not signed in or may not read the answer gets the page as it is, which then says so.
 */
@Injectable()
export class FirstSight implements OnModuleInit {
  constructor(
    private readonly adapters: HttpAdapterHost<FastifyAdapter>,
    private readonly credentials: Credentials,
    private readonly limits: RequestLimits,
    private readonly papers: PapersService,
    private readonly shell: ShellPage,
  ) {}

  onModuleInit(): void {
    if (!this.shell.isThere) return;
    this.adapters.httpAdapter
      .getInstance()
      .get<Route>("/comparisons/:comparison", (request, reply) => this.send(request, reply));
  }

  private async send(request: FastifyRequest<Route>, reply: FastifyReply): Promise<FastifyReply> {
    const page = await this.pageFor(request).catch((error: unknown) => {
      // Whatever is in the way, the application says it better.
      if (!(error instanceof ProblemError)) request.log.error(error);
      return null;
    });
    if (page === null) return sendPage(request, reply);
    return reply.type("text/html; charset=utf-8").header("cache-control", "private, no-store").send(page);
  }

  private async pageFor(request: Asked): Promise<string | null> {
    const actor = asksForAnswer(request) ? await this.findReader(request) : null;
    if (actor === null) return null;
    const { answer, cost } = await this.papers.priced(actor, request.params.comparison);
    const { make, model, modelYear } = answer.vehicle;
    return this.shell.with({
      title: `${modelYear} ${make} ${model}`,
      first: markupOf(firstSight({ answer, cost })),
    });
  }

  /** Somebody signed in whose kind may read answers: a page is for people, never for a program's token. */
  private async findReader(request: Asked): Promise<Actor | null> {
    await this.limits.admitNetwork(request);
    const actor = await this.credentials.findActor(request);
    if (actor === null || !("session" in actor.by) || !mayUse("comparisons.answer", actor.kinds)) return null;
    request.user = actor;
    await this.limits.admitAccount(request, false);
    return actor;
  }
}
