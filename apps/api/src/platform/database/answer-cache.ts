import { Injectable } from "@nestjs/common";
import { LRUCache } from "lru-cache";
import { keptOrMade } from "./kept-or-made.ts";

/**
 * Answers put together from what the database gave, kept by that very text: as long as it gives the same, whoever asks, nothing is
 * read, reckoned and written out anew. The database is asked every time, and who may see what is a part of what it is asked.
 */
@Injectable()
export class AnswerCache {
  static readonly maxBytes = 16 * 1024 * 1024;

  private readonly kept = new LRUCache<string, string>({
    maxSize: AnswerCache.maxBytes,
    sizeCalculation: (answer, from) => 2 * (answer.length + from.length) + 200,
  });

  /**
   * @param from what the answer is made from, and from nothing else but what never changes: each text as it was given, with what
   * kind of answer it is
   */
  async get(from: readonly string[], make: () => string | Promise<string>): Promise<string> {
    // JSON as the database writes it has no such character, so that nothing reads like two other texts.
    const key = from.join("\0");
    return keptOrMade(this.kept, key, make);
  }

  /** What is kept at this moment. */
  get bytes(): number {
    return this.kept.calculatedSize;
  }
}
