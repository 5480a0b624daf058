import { createHash } from "node:crypto";

/** An answer that is a file: its bytes as they are, under a name to keep it by. */
export class FileAnswer {
  readonly bytes: Buffer;
  readonly type: string;
  readonly name: string;

  private constructor(bytes: Buffer, type: string, name: string) {
    this.bytes = bytes;
    this.type = type;
    this.name = name;
  }

  /** @param name of letters, digits, dots and hyphens */
  static pdf(name: string, bytes: Buffer): FileAnswer {
    return new FileAnswer(bytes, "application/pdf", name);
  }

  /** The same bytes have the same. */
  get etag(): string {
    return createHash("sha256").update(this.bytes).digest("hex");
  }
}
