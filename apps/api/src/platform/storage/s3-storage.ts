import { S3mini } from "s3mini";
import { checkKey, Storage } from "./storage.ts";

export type S3Options = {
  /** With the bucket as its path: `https://s3.example.com/evenhand`. */
  readonly endpoint: string;
  readonly region: string;
  readonly accessKeyId: string;
  readonly secretAccessKey: string;
};

/** Any store that speaks S3; the bucket is there already and open to nobody else. */
export class S3Storage extends Storage {
  private readonly store: S3mini;
  constructor(options: S3Options) {
    super();
    this.store = new S3mini({ ...options, requestAbortTimeout: 60_000 });
  }

  override async put(key: string, bytes: Uint8Array): Promise<void> {
    await this.store.putObject(checkKey(key), Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength));
  }

  override async read(key: string): Promise<Buffer | null> {
    const found = await this.store.getObjectArrayBuffer(checkKey(key));
    return found === null ? null : Buffer.from(found);
  }

  override async remove(key: string): Promise<void> {
    await this.store.deleteObject(checkKey(key));
  }

  /** What was not sent to its end was never there. */
  override clearUnfinished(): Promise<number> {
    return Promise.resolve(0);
  }
}
