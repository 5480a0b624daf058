import { Injectable } from "@nestjs/common";

/**
 * Stored documents never change under their hash, so the bytes of those asked for lately are kept in memory. Who may see one is
 * asked of the database every time; only then are the bytes taken from here.
 */
@Injectable()
export class KeptDocuments {
  static readonly mostBytes = 64 * 1024 * 1024;

  /** Asked for longest ago first. */
  private readonly kept = new Map<string, Uint8Array>();
  private bytes = 0;

  /** @param load reads the document where it is stored; asked only for what is not kept */
  async get(hash: string, load: () => Promise<Uint8Array>): Promise<Uint8Array> {
    const document = this.kept.get(hash) ?? (await load());
    this.keep(hash, document);
    return document;
  }

  private keep(hash: string, document: Uint8Array): void {
    if (!this.kept.delete(hash)) this.bytes += document.byteLength;
    this.kept.set(hash, document);
    for (const [oldest, { byteLength }] of this.kept) {
      if (this.bytes <= KeptDocuments.mostBytes) return;
      this.kept.delete(oldest);
      this.bytes -= byteLength;
    }
  }
}
