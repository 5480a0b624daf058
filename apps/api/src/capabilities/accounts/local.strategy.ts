import { type ExecutionContext, Injectable } from "@nestjs/common";
import { AuthGuard, PassportStrategy } from "@nestjs/passport";
import { SignInRequest } from "@evenhand/shared/http/accounts";
import type { FastifyRequest } from "fastify";
import { Strategy } from "passport-local";
import { ContractPipe } from "../../platform/http/contract.pipe.ts";
import { ProblemError } from "../../platform/problems/problem-error.ts";
import { AccountsService } from "./accounts.service.ts";

/** Address and password, for beginning a session. */
@Injectable()
export class LocalStrategy extends PassportStrategy(Strategy, "local") {
  constructor(private readonly accounts: AccountsService) {
    super({ usernameField: "email", passReqToCallback: true });
  }

  async validate(request: FastifyRequest, email: string, password: string): Promise<string> {
    return this.accounts.authenticate({ email, password, address: request.ip });
  }
}

@Injectable()
export class LocalGuard extends AuthGuard("local") {
  /** The body is held against its contract first, so that a refusal names the field. */
  override async canActivate(context: ExecutionContext): Promise<boolean> {
    const request = context.switchToHttp().getRequest<FastifyRequest>();
    await new ContractPipe().transform(request.body, { type: "body", schema: SignInRequest });
    await super.canActivate(context);
    return true;
  }

  override handleRequest<T>(error: Error | null, account: T | false | null): T {
    if (error !== null) throw error;
    if (account === null || account === false)
      throw new ProblemError("sign-in-refused", "Address and password do not go together. Check both.");
    return account;
  }
}
