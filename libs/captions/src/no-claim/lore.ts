import type { RepairedToken } from "@evenhand/lexicon/repair";

/** What is true of the model, or of most of them, is no claim of the one that stands here. */
const OF_THE_MODEL =
  /\b(?:they (?:all )?have (?:rust|rot|it|that|leak)\b|they all have (?:some|a bit)\b|these (?:all |always |usually |tend to |do )?(?:rust|rot|leak|crack|go|fail|split|sag|drip|overheat|perish|drop)\b|(?:typically|normally|as a rule|generally|historically)\b|on most(?: car| of)?|in most car|you (?:often|usually|always|typically|generally) (?:find|see|get|have)|(?:this|the) (?:engine|body|car|model) was (?:built|made|offered|designed|available)|they (?:all|always|usually|mostly|generally|tend to|do tend|often|can|used to) (?:just )?(?:rust|rot|leak|crack|fail|do|split|sag|weep|drip|smoke|overheat|stick|suffer|drink|burn|fade|break|seize|rattle|warp|perish|corrode|run hot|wear|lift|bubble|blister|come apart|give up)|(?:all|most|many|half|some|nine out of ten|a lot|plenty) of (?:them|these|those) (?:have|had|rust|rot|leak|crack|are|were|will|suffer|fail|did|do|came)|most (?:people|owner|car|of the membership)|(?:on|with|for) (?:these|those|this (?:model|type|series|generation|era))\b(?! (?:one|door|side|seat|tire|wheel|panel))|(?:the|these|those) (?:early|later|late|first|last|european|american|export) (?:one|car|model|series)|the (?:factory|work|maker) (?:never|used|fitted|left|did|put|built|made|would|specified)|people (?:will |always |often )?(?:say|tell|think|ask|worry)|they (?:are|were) (?:known|notorious|prone|famous|built|made|fitted|supposed|meant)|(?:is|are) (?:known|notorious|prone|famous|the weak (?:spot|point))|weak (?:spot|point) of (?:the|these)|(?:a|any) (?:good|healthy|decent|proper|nice|standard|normal|typical) (?:one|car|example|engine)|common (?:fault|problem|issue|failing)|show me (?:a|one)|on all of them|every one of them (?:does|has|leak|rust|do)|what you want to (?:look|check|see)|first thing (?:you|i|to) (?:look|check)|you (?:want|need) to (?:look|check|watch)|(?:always|usually|generally|typically) (?:rust|rot|leak|crack|fail|split|sag|seize|perish|warp|go)|should (?:give|read|measure|idle|show) (?:you )?|(?:is|are) structural|(?:is|are) (?:as )?(?:common|normal|usual|typical|expensive|hard to find|rare)|worth more than)\b/u;

const DAYS =
  /^(?:monday|tuesday|wednesday|thursday|friday|saturday|sunday|january|february|march|april|may|june|july|august|september|october|november|december)$/u;

/** "On a Spider", "a Spider leaks": a name with an article is the model's, and not the car's. */
const namesModel = (text: string, tokens: readonly RepairedToken[], from: number, to: number): boolean => {
  for (let at = from; at + 1 < to; at += 1) {
    const [article, name] = [tokens[at], tokens[at + 1]];
    if (article === undefined || name === undefined || !/^an?$/u.test(article.stem)) continue;
    const isLed = at === from || /^(?:on|with|for|about|if|when)$/u.test(tokens[at - 1]?.stem ?? "");
    const isName = /^\p{Lu}\p{Ll}/u.test(text.slice(name.start, name.end)) && !DAYS.test(name.stem);
    if (isLed && isName) return true;
  }
  return false;
};

const TROUBLES =
  /^(?:rot|rust|crack|split|silt|seize|delaminate|perish|warp|corrode|sag|fade|fail|bubble|wear|rattle|stick|jam)$/u;
const DETERMINED =
  /^(?:the|this|that|these|those|my|his|her|its|our|your|both|all|some|two|four|each|every|and|but)$/u;

/** "Door skins rot along the bottom": parts by their plural with no article are those of the model. */
const arePartsOfModel = (tokens: readonly RepairedToken[], from: number, to: number): boolean => {
  if (DETERMINED.test(tokens[from]?.stem ?? "")) return false;
  for (let at = from; at < Math.min(to - 1, from + MOST_NAME); at += 1)
    if (tokens[at]?.plural === true)
      return tokens[at + 1]?.plural === false && TROUBLES.test(tokens[at + 1]?.stem ?? "") && at + 2 < to;
  return false;
};
const MOST_NAME = 3;

const stems = (tokens: readonly RepairedToken[], from: number, to: number): string =>
  tokens
    .slice(from, to)
    .map(({ stem }) => stem)
    .join(" ");

/**
 * Whether tokens `from` up to `to` tell of the model and not of this car: "they all rust there", "on a Spider the sills are structural".
 *
 * @param text the words as they were written, for names
 */
export const isLore = (text: string, tokens: readonly RepairedToken[], from: number, to: number): boolean =>
  OF_THE_MODEL.test(stems(tokens, from, to)) ||
  namesModel(text, tokens, from, to) ||
  arePartsOfModel(tokens, from, to);
