import {
  type DynamicModule,
  Global,
  Inject,
  Logger,
  Module,
  type OnApplicationShutdown,
} from "@nestjs/common";
import { Clock, SystemClock } from "../clock/index.ts";
import { CONFIG, type Config } from "../config/index.ts";
import { AnswerCache } from "./answer-cache.ts";
import { Database } from "./database.ts";
import { FirmDocuments } from "./firm-documents.ts";
import { Ids, TimeIds } from "./ids.ts";
import { DocumentCache } from "./document-cache.ts";

/** The hour and the ids, where something else than the real ones is wanted. */
export type Given = { readonly clock?: Clock; readonly ids?: Ids };

function connect(config: Config): Database {
  const logger = new Logger("database");
  return new Database(config.database, (error) => logger.warn(error.message));
}

@Global()
@Module({})
export class DatabaseModule implements OnApplicationShutdown {
  constructor(@Inject(Database) private readonly database: Database) {}

  static of({ clock = new SystemClock(), ids = new TimeIds(clock) }: Given): DynamicModule {
    return {
      module: DatabaseModule,
      providers: [
        { provide: Clock, useValue: clock },
        { provide: Ids, useValue: ids },
        { provide: Database, useFactory: connect, inject: [CONFIG] },
        AnswerCache,
        DocumentCache,
        FirmDocuments,
      ],
      exports: [Clock, Ids, Database, AnswerCache, DocumentCache, FirmDocuments],
    };
  }

  async onApplicationShutdown(): Promise<void> {
    await this.database.close();
  }
}
