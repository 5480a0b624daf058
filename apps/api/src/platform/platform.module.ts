import { type DynamicModule, Global, Module } from "@nestjs/common";
import { APP_FILTER, APP_GUARD, APP_PIPE } from "@nestjs/core";
import { AccessGuard } from "./access/access.guard.ts";
import { Actors } from "./auth/actors.ts";
import { Credentials } from "./auth/credentials.ts";
import { CONFIG, type Config } from "./config/index.ts";
import { DatabaseModule, type Given } from "./database/database.module.ts";
import { CostlySemaphore } from "./http/costly.interceptor.ts";
import { ContractPipe } from "./http/contract.pipe.ts";
import { RequestLimits } from "./http/request-limits.ts";
import { SiteAddress } from "./http/site-address.ts";
import { Stopping } from "./http/stopping.ts";
import { RecordChain } from "./record/record-chain.ts";
import { ShellPage } from "./page/shell-page.ts";
import { SigningKeys } from "./record/signing-keys.ts";
import { StorageModule } from "./storage/storage.module.ts";
import { ProblemFilter } from "./problems/problem-filter.ts";

@Global()
@Module({})
class ConfigModule {
  static of(config: Config): DynamicModule {
    return {
      module: ConfigModule,
      providers: [{ provide: CONFIG, useValue: config }],
      exports: [CONFIG],
    };
  }
}

/** What every capability stands on. It knows none of them. */
@Global()
@Module({})
export class PlatformModule {
  static of(config: Config, given: Given = {}): DynamicModule {
    return {
      module: PlatformModule,
      imports: [ConfigModule.of(config), DatabaseModule.of(given), StorageModule],
      providers: [
        Actors,
        SiteAddress,
        Stopping,
        Credentials,
        RequestLimits,
        CostlySemaphore,
        SigningKeys,
        RecordChain,
        ShellPage,
        { provide: APP_GUARD, useClass: AccessGuard },
        { provide: APP_PIPE, useClass: ContractPipe },
        { provide: APP_FILTER, useClass: ProblemFilter },
      ],
      exports: [
        Actors,
        CostlySemaphore,
        Credentials,
        RecordChain,
        RequestLimits,
        ShellPage,
        SigningKeys,
        SiteAddress,
      ],
    };
  }
}
