import { type ArgumentsHost, Catch, type ExceptionFilter } from "@nestjs/common";
import type { RefusedHour } from "@evenhand/booking/refused-hour";
import type { FastifyReply, FastifyRequest } from "fastify";
import { ProblemError } from "../../platform/problems/problem-error.ts";
import { sendProblem, toProblem } from "../../platform/problems/problem-filter.ts";
import { refusedBody } from "./bodies.ts";
import { FreshOffers } from "./fresh-offers.ts";
import type { Search } from "./offer-search.ts";

/** The hour cannot be booked any more. Who asked is shown other hours, looked for after everything here was undone. */
export class HourTaken extends Error {
  override readonly name = "HourTaken";
  readonly reasons: readonly RefusedHour[];
  readonly search: Search;
  constructor(reasons: readonly RefusedHour[], search: Search) {
    super("The hour is not free any more.");
    this.reasons = reasons;
    this.search = search;
  }
}

/** The database saw two at once: an exclusion constraint, a deadlock, or a serialization failure. */
export const isRace = (error: unknown): boolean =>
  error instanceof Error &&
  /23P01|40P01|40001|exclusion constraint|deadlock detected|could not serialize/i.test(
    `${error.message} ${JSON.stringify("meta" in error ? error.meta : "")}`,
  );

/** Answers a lost hour with fresh offers, after the transaction has ended. */
@Catch(HourTaken)
export class HourTakenFilter implements ExceptionFilter<HourTaken> {
  constructor(private readonly fresh: FreshOffers) {}

  async catch({ reasons, search }: HourTaken, host: ArgumentsHost): Promise<void> {
    const http = host.switchToHttp();
    const [request, reply] = [http.getRequest<FastifyRequest>(), http.getResponse<FastifyReply>()];
    sendProblem(request, reply, await this.answer(request, reasons, search));
  }

  private async answer(
    request: FastifyRequest,
    reasons: readonly RefusedHour[],
    search: Search,
  ): Promise<ProblemError> {
    try {
      const members = { reasons: reasons.map(refusedBody), offers: await this.fresh.find(search) };
      return new ProblemError("hour-taken", "That hour is not free any more. These are.", { members });
    } catch (error) {
      request.log.error({ err: error }, "no fresh offers");
      const problem = toProblem(error);
      if (problem !== null) return problem;
      return new ProblemError("hour-taken", "That hour is not free any more. Look for others.", {
        members: { reasons: reasons.map(refusedBody), offers: null },
      });
    }
  }
}
