import { type CanActivate, type ExecutionContext, Injectable } from "@nestjs/common";
import { SignInRequest } from "@evenhand/shared/http/accounts";
import type { FastifyRequest } from "fastify";
import { ContractPipe } from "../../platform/http/contract.pipe.ts";
import { AccountsService } from "./accounts.service.ts";

/** Address and password, for beginning a session: `request.user` is then the account's id. */
@Injectable()
export class LocalGuard implements CanActivate {
  constructor(private readonly accounts: AccountsService) {}

  /** The body is held against its contract first, so that a refusal names the field. */
  async canActivate(context: ExecutionContext): Promise<boolean> {
    const request = context.switchToHttp().getRequest<FastifyRequest & { user?: unknown }>();
    await new ContractPipe().transform(request.body, { type: "body", schema: SignInRequest });
    const { email, password } = SignInRequest.parse(request.body);
    request.user = await this.accounts.authenticate({ email, password, address: request.ip });
    return true;
  }
}
