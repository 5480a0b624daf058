import { sha256Hex } from "../auth/secret.ts";

const tableTypes = {
  csv: "text/csv; charset=utf-8",
  xlsx: "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
} as const;

/** An answer that is a file: its bytes as they are, under a name to keep it by. */
export class FileAnswer {
  readonly bytes: Buffer;
  readonly type: string;
  readonly name: string;

  /** What somebody sent: opened by itself it may do nothing, whatever is in it. */
  readonly isShut: boolean;
  /** To be kept, not to be shown. */
  readonly isKept: boolean;

  private constructor(bytes: Buffer, type: string, name: string, { isShut = false, isKept = false } = {}) {
    this.bytes = bytes;
    this.type = type;
    this.name = name;
    this.isShut = isShut;
    this.isKept = isKept;
  }

  /** A file that somebody sent, or a copy of one. @param file its name of letters, digits, dots and hyphens */
  static shut(file: { bytes: Buffer; type: string; name: string; kept?: true }): FileAnswer {
    return new FileAnswer(file.bytes, file.type, file.name, { isShut: true, isKept: file.kept === true });
  }

  /** @param name of letters, digits, dots and hyphens */
  static pdf(name: string, bytes: Buffer): FileAnswer {
    return new FileAnswer(bytes, "application/pdf", name);
  }

  /** A table to be kept and opened elsewhere. @param name of letters, digits, dots and hyphens */
  static table(form: "csv" | "xlsx", name: string, bytes: Buffer): FileAnswer {
    return new FileAnswer(bytes, tableTypes[form], `${name}.${form}`, { isShut: true, isKept: true });
  }

  /** The same bytes have the same. */
  get etag(): string {
    return sha256Hex(this.bytes);
  }
}
