import { Injectable } from "@nestjs/common";
import { LRUCache } from "lru-cache";
import { keepPlain } from "../http/json-text.ts";

type Kept = { readonly from: readonly string[]; readonly answer: Uint8Array };

const lengthOf = (texts: readonly string[]): number => texts.reduce((sum, { length }) => sum + length, 0);

/**
 * Answers put together from what the database gave, kept beside that very text under what was asked: as long as it gives the same,
 * nothing is read, reckoned and written out anew. The database is asked every time, and who may see what is a part of what it is
 * asked. The answer is kept as the bytes that go out: to write a text out takes longer than all else that is left to do.
 */
@Injectable()
export class AnswerCache {
  static readonly maxBytes = 16 * 1024 * 1024;

  private readonly kept = new LRUCache<string, Kept>({
    maxSize: AnswerCache.maxBytes,
    sizeCalculation: ({ from, answer }, asked) => answer.length + 2 * (lengthOf(from) + asked.length) + 200,
  });

  /**
   * @param asked what was asked, by whom: short, for only the last answer to it is kept
   * @param from what the answer is made from, and from nothing else but what never changes, each text as it was given. It is held
   * against what was given before, which costs less than to look for a text so long among many
   */
  async get(
    asked: string,
    from: readonly string[],
    make: () => string | Promise<string>,
  ): Promise<Uint8Array> {
    const known = this.kept.get(asked);
    if (known?.from.length === from.length && known.from.every((text, at) => text === from[at]))
      return known.answer;
    const answer = Buffer.from(await make(), "utf8");
    keepPlain(answer);
    this.kept.set(asked, { from, answer });
    return answer;
  }

  /** What is kept at this moment. */
  get bytes(): number {
    return this.kept.calculatedSize;
  }
}
