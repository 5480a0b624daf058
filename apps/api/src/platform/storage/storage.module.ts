import { Global, Module } from "@nestjs/common";
import { CONFIG, type Config } from "../config/index.ts";
import { FileStorage } from "./file-storage.ts";
import { S3Storage } from "./s3-storage.ts";
import { Storage } from "./storage.ts";

const storageOf = ({ storage }: Config): Storage =>
  storage.s3 === null ? new FileStorage(storage.folder) : new S3Storage(storage.s3);

@Global()
@Module({
  providers: [{ provide: Storage, useFactory: storageOf, inject: [CONFIG] }],
  exports: [Storage],
})
export class StorageModule {}
