import { Global, Inject, Logger, Module, type OnApplicationShutdown } from "@nestjs/common";
import { Clock, SystemClock } from "../clock/index.ts";
import { CONFIG, type Config } from "../config/index.ts";
import { Database } from "./database.ts";
import { Ids, TimeIds } from "./ids.ts";

@Global()
@Module({
  providers: [
    { provide: Clock, useClass: SystemClock },
    { provide: Ids, useFactory: (clock: Clock) => new TimeIds(clock), inject: [Clock] },
    {
      provide: Database,
      useFactory: (config: Config) => {
        const logger = new Logger("database");
        return new Database(config.database, (error) => logger.warn(error.message));
      },
      inject: [CONFIG],
    },
  ],
  exports: [Clock, Ids, Database],
})
export class DatabaseModule implements OnApplicationShutdown {
  constructor(@Inject(Database) private readonly database: Database) {}

  async onApplicationShutdown(): Promise<void> {
    await this.database.close();
  }
}
