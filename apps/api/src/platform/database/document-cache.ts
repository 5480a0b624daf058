import { Injectable } from "@nestjs/common";
import { LRUCache } from "lru-cache";
import { keptOrMade } from "./kept-or-made.ts";

/**
 * Stored documents never change under their hash, so the bytes of those asked for lately are kept in memory, and for as long
 * their compressed form. Who may see one is asked of the database every time; only then are the bytes taken from here.
 */
@Injectable()
export class DocumentCache {
  static readonly maxBytes = 64 * 1024 * 1024;

  private readonly kept = new LRUCache<string, Uint8Array>({
    maxSize: DocumentCache.maxBytes,
    // The compressed form is kept beside it and is never larger, but for some bytes.
    sizeCalculation: ({ byteLength }, hash) => 2 * byteLength + hash.length + 100,
  });

  /** @param load reads the document where it is stored; asked only for what is not kept */
  async get(hash: string, load: () => Promise<Uint8Array>): Promise<Uint8Array> {
    return keptOrMade(this.kept, hash, load);
  }

  /** What is kept at this moment, compressed forms included. */
  get bytes(): number {
    return this.kept.calculatedSize;
  }
}
