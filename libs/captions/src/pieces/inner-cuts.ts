import type { Mention } from "@evenhand/lexicon/find-mentions";
import type { RepairedToken } from "@evenhand/lexicon/repair";
import { beforeOpening, cutBefore, lastBefore } from "./cut-before.ts";
import {
  LONG_SAID,
  belongsTo,
  hangs,
  isAbout,
  isAnotherSide,
  isCount,
  isDoneTo,
  isListedOn,
  isOnlyOne,
  isOwned,
  isPlace,
  isRest,
  isUnjoined,
  ofPronoun,
} from "./goes-on.ts";
import { leadsTo } from "./leads.ts";
import { deniesAnew, opensAnew, opensBare, opensThere, repeats } from "./opens-anew.ts";
import { isRunAt, opensClauseAt } from "./opens-clause.ts";
import type { Join } from "./piece.ts";

/**
 * Where, within a piece, somebody begins to speak of something else: a part after what was said of another, with no word that leads to
 * it; or a side after what was said of the other.
 */
export const innerCuts = (
  tokens: readonly RepairedToken[],
  mentions: readonly Mention[],
  from: number,
  join: Join,
): number[] => {
  const cuts: number[] = [];
  let about: Mention[] = [];
  let named: Mention | undefined;
  let isComplete = false;
  const isContinued = join === "and" || join === "but";
  for (const [index, mention] of mentions.entries()) {
    if (isAbout(mention)) {
      if (opensThere(tokens, mention.from, mention.from + 1) >= 0) continue;
      const anew = named === undefined ? -1 : deniesAnew(tokens, mentions.slice(index), about);
      if (anew > (cuts.at(-1) ?? from)) {
        cuts.push(anew);
        about = [];
        named = undefined;
        isComplete = false;
      }
      const before = lastBefore(about, mention.from);
      const bare = about.length > 0 ? opensBare(tokens, mentions, mention) : -1;
      const runs = about.length > 0 && isRunAt(tokens, mention.from) && mention.from > (cuts.at(-1) ?? from);
      const there =
        bare >= 0
          ? bare
          : runs
            ? mention.from
            : before === undefined
              ? -1
              : opensAnew(tokens, before.to, mention.from);
      if (there > (cuts.at(-1) ?? from)) {
        cuts.push(there);
        about = [];
        named = undefined;
        isComplete = false;
      }
      about.push(mention);
      continue;
    }
    if (mention.is !== "subject" && !isPlace(mention) && !isRest(tokens, mention)) continue;
    // "Original paint" says of the hood what it says, and names no paint anew.
    if (
      mention.is === "subject" &&
      about.some(
        (one) =>
          one.is === "said" &&
          one.from < mention.from &&
          one.to >= mention.to &&
          (named !== undefined || one.to - one.from > LONG_SAID),
      )
    )
      continue;
    const begun = cuts.at(-1) ?? from;
    const clause =
      mention.is === "subject" || isPlace(mention)
        ? opensClauseAt(tokens, mention, begun, lastBefore(about, mention.from))
        : -1;
    if (clause > begun) {
      cuts.push(clause);
      about = about.filter((one) => one.from >= clause);
      named = mention;
      isComplete = false;
      continue;
    }
    const last = lastBefore(about, mention.from);
    const counted =
      last !== undefined &&
      isCount(last, mention) &&
      !about.some((one) => one.is === "number" && one.to === last.from)
        ? last
        : undefined;
    // "The headlights are good | one tail light is out": the number counts what follows.
    const said =
      counted === undefined
        ? last
        : lastBefore(
            about.filter((one) => one !== counted),
            mention.from,
          );
    const isDone =
      isComplete ||
      (said !== undefined &&
        (named === undefined
          ? ofPronoun(tokens, begun, said.from) ||
            (join === "comma" &&
              begun === from &&
              said.is === "said" &&
              said.to - said.from >= LONG_SAID &&
              said.from <= from + 1) ||
            (isContinued && begun === from && said.to < mention.from) ||
            (tokens[begun]?.stem === "no" && said.to - begun > 1)
          : said.to > named.from ||
            (said.to === named.from &&
              named.is === "subject" &&
              mention.is === "subject" &&
              isUnjoined(tokens, mention))));
    const after = said?.to ?? begun + 1;
    const there = isDone ? opensAnew(tokens, after, mention.from) : -1;
    const goesOn =
      said !== undefined &&
      ((leadsTo(tokens, said.to, counted?.from ?? mention.from) && !isAnotherSide(tokens, mention)) ||
        isOwned(tokens, said.to, mention.from) ||
        isDoneTo(tokens, said, mention) ||
        isOnlyOne(tokens, said, mention) ||
        (mention.is === "subject" && belongsTo(tokens, mentions.slice(index), said, mention)));
    const isOther =
      mention.is === "subject" &&
      isComplete &&
      /^(?:or|nor)$/u.test(tokens[beforeOpening(tokens, mention.from) - 1]?.stem ?? "");
    const isHanging =
      named !== undefined &&
      (hangs(tokens, mention.from) ||
        (join === "except" &&
          mention.is === "subject" &&
          named.is === "subject" &&
          isUnjoined(tokens, mention)));
    const again = repeats(tokens, mentions, index);
    const cut =
      again > begun
        ? again
        : there >= 0
          ? there
          : isHanging || (isDone && !goesOn && !isOther)
            ? cutBefore(tokens, mentions, counted ?? mention, said)
            : -1;
    if (cut > begun) {
      cuts.push(cut);
      about = about.filter((one) => one.from >= cut);
      isComplete = false;
    }
    if (mention.is === "subject") {
      const led = lastBefore(about, mention.from);
      const isDenied = tokens[mention.from - 1]?.stem === "no" && !isListedOn(tokens, mentions[index + 1]);
      isComplete = isDenied || (led !== undefined && leadsTo(tokens, led.to, mention.from));
      named = mention;
    } else if (cut > begun || (named === undefined && about.length === 0)) named = mention;
  }
  return cuts;
};
