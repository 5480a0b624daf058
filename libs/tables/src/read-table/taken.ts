import type { Item, Sheet } from "@evenhand/shared/sheet";
import { exceptedParts } from "../cell-parts/exceptions.ts";
import { factsIn, figuresBeside, placedParts, turnedRound } from "../cell-parts/index.ts";
import { itemsNamed } from "../item-names/index.ts";
import { labelOf } from "../label/index.ts";
import type { Label } from "../label/index.ts";
import { WORDS } from "../answer-of/grade.ts";
import { outcomeOf } from "../outcome-words/index.ts";
import { isOnScale } from "../propose/spoken-of.ts";
import type { Proposal } from "../propose/reading.ts";
import { readValue } from "../read-value/index.ts";
import { speaksAgainst } from "../sensed-words/index.ts";
import type { Claim } from "../table-claims/index.ts";
import type { ReadRow } from "./rows.ts";

/** A claim of a row and what it may mean. */
export type Asked = {
  readonly line: string;
  readonly claim: Claim;
  readonly proposal: Proposal;
  readonly read: ReadRow;
  readonly grid: string;
};

/** How a claim is asked what it means, of which sheet. */
type Asking = { readonly ask: (claim: Claim) => Asked; readonly sheet: Sheet };

const placesOf = ({ proposal }: Asked): readonly string[] => {
  const [best] = proposal.ok ? proposal.meant : [];
  return best === undefined ? [] : best.positions.map((position) => `${best.item.id} ${position}`);
};

export const isOfOthers = ({ where }: Claim): boolean => where.some(({ others }) => others);

/** Whether parts of a cell are of different things. */
/** What a part says of several places is of the row's own name: `original` of a seat is not of the engine. */
const ofRow =
  (sheet: Sheet) =>
  (part: Asked): Asked => {
    const row = part.claim.names.at(-1);
    if (!part.proposal.ok || row === undefined) return part;
    const named = new Set(
      itemsNamed(sheet, row, []).flatMap(({ item, fit }) => (fit >= PART_FIT ? [item.id] : [])),
    );
    const meant = part.proposal.meant.filter(
      ({ item, positions }) => positions.length === 1 || named.has(item.id),
    );
    return { ...part, proposal: meant.length > 0 ? { ok: true, meant } : { ok: false, why: "no-item" } };
  };

const areDistinct = (parts: readonly Asked[]): boolean => {
  const all = parts.filter(({ claim }) => !isOfOthers(claim)).flatMap(placesOf);
  return new Set(all).size === all.length;
};

/** Whether parts of a cell are of different things, and at least two are understood. */
const areApart = (parts: readonly Asked[]): boolean =>
  parts.filter((part) => placesOf(part).length > 0).length > 1 && areDistinct(parts);

/** How well a part must fit to be taken out of its cell: no word of prose is an item. */
const PART_FIT = 0.5;

const fits = ({ claim, proposal }: Asked): boolean =>
  claim.value.outcome?.says !== "unseen" && proposal.ok && (proposal.meant[0]?.confidence ?? 0) >= PART_FIT;

/** A figure names its item by its unit as well; of words taken out of a cell a person says whether that is what they were of. */
const toSettle = (part: Asked): Asked => (part.claim.value.numbers === undefined ? unsure(part) : part);

const unsure = (part: Asked): Asked =>
  part.proposal.ok
    ? {
        ...part,
        proposal: { ...part.proposal, meant: part.proposal.meant.map((one) => ({ ...one, sure: false })) },
      }
    : part;

const itemOf = ({ proposal }: Asked): string | undefined =>
  proposal.ok ? proposal.meant[0]?.item.id : proposal.item;

/** Parts that are understood, but those of which another part says something that is not: `solid, surface rust only`. */
const understoodOf = (facts: readonly Asked[]): readonly Asked[] => {
  const open = new Set(facts.filter((fact) => !fits(fact)).map(itemOf));
  return facts.filter((fact) => fits(fact) && !open.has(itemOf(fact)));
};

const answerIn = ({ proposal }: Asked): string =>
  JSON.stringify(proposal.ok ? [proposal.meant[0]?.answer, proposal.meant[0]?.positions] : []);

/** What a cell says as a whole, with what parts of it say of something else; where the whole says nothing, the parts by themselves. */
const withParts = (one: Asked, facts: readonly Asked[], { ask, sheet }: Asking): readonly Asked[] => {
  const understood = understoodOf(facts);
  if (!one.proposal.ok)
    return understood.length > 0 && areDistinct(understood)
      ? [...understood, ...facts.filter((fact) => !understood.includes(fact)).map(leftOpen)]
      : [one];
  const more = understood.filter(
    (fact) => itemOf(fact) !== itemOf(one) && placesOf(fact).length === 1 && namesItself(fact, sheet),
  );
  const apart = more.filter((fact) => answerIn(ask(without(one.claim, fact.claim))) === answerIn(one));
  return areDistinct([one, ...apart]) ? [one, ...apart] : [one];
};

/** Whether a part's own words name what it is of, or it has a figure with a unit. */
const namesItself = ({ claim, proposal }: Asked, sheet: Sheet): boolean =>
  claim.value.numbers?.unit !== undefined ||
  (proposal.ok &&
    claim.own !== undefined &&
    itemsNamed(sheet, claim.own, []).some(
      ({ item, fit }) => item.id === proposal.meant[0]?.item.id && fit >= PART_FIT,
    ));

/** A cell without one of its parts. */
const without = (claim: Claim, { value }: Claim): Claim => ({
  ...claim,
  value: readValue(claim.value.text.replace(value.text, " "), { comma: false }),
});

/** A part of a cell that is left to be settled, whatever it may be of. */
const leftOpen = (part: Asked): Asked => {
  const item = itemOf(part);
  const why = part.proposal.ok ? ("no-such-word" as const) : part.proposal.why;
  return { ...part, proposal: { ok: false, why, ...(item === undefined ? {} : { item }) } };
};

/** `RR tyre | D | 3/32, sidewall cracked`: beside a grade of what has none the remark is what is said, each part of it. */
const factsNoted = (claim: Claim, { ask, sheet }: Asking): readonly Asked[] => {
  const { value, note, scale } = claim;
  const isMark =
    claim.rated === true ||
    (scale !== undefined && value.text.length <= 2) ||
    outcomeOf(value.text) !== undefined ||
    isOnScale(value.text, WORDS);
  if (!isMark || note === "") return [];
  const [best] = [ask(claim).proposal].flatMap((one) => (one.ok ? one.meant : []));
  if (best === undefined || best.answer.kind === "grade") return [];
  const said = { ...claim, value: readValue(note, { comma: false }), note: "", rated: false };
  const facts = factsIn(said).map(ask).map(ofRow(sheet)).map(toSettle);
  return facts.every(fits) && areApart(facts) && facts.every((fact) => isOfSection(fact, best.item))
    ? facts
    : [];
};

/** What stands beside a mark is of what the row is of: of pads a hose is no radiator's. */
const isOfSection = ({ proposal }: Asked, { section }: Item): boolean =>
  proposal.ok && proposal.meant[0]?.item.section === section;

/** How well each of two names must fit, and no one name both. */
const [EACH, WHOLE] = [0.9, 0.8];

/** `Wipers and washers | ok`: a good word for two names is said of each; a bad one leaves open which. */
const ofEachName = (claim: Claim, sheet: Sheet): readonly Claim[] => {
  const [name] = claim.where;
  if (name === undefined || !claim.names.includes(name) || claim.rated === true || !isGoodOfAll(claim))
    return [];
  const parts = withNoun(name.text.split(/\s*(?:[&+/]|\band\b)\s*/i)).map((part) => labelOf(part));
  const best = (label: Label): number => itemsNamed(sheet, label, [])[0]?.fit ?? 0;
  if (parts.length !== 2 || parts.some((part) => best(part) < EACH) || best(name) > WHOLE) return [];
  return parts.map((part) => ({ ...claim, names: [part], where: [part, ...claim.where.slice(1)] }));
};

/** `Side and tail lamps` are side lamps and tail lamps. */
const withNoun = ([first = "", last = "", ...others]: readonly string[]): readonly string[] => {
  const [, noun] = /^\S+ (\S+)$/.exec(last) ?? [];
  return noun !== undefined && /^\S+$/.test(first)
    ? [`${first} ${noun}`, last, ...others]
    : [first, last, ...others];
};

const isGoodOfAll = ({ value, note }: Claim): boolean =>
  value.outcome === undefined
    ? /^(?:all |both )?(?:work(?:s|ing|ed)?|present|functional|operat\w+)$/i.test(value.text.trim())
    : ["good", "yes"].includes(value.outcome.says) && !speaksAgainst(note);

/** What a good word says, and the figures beside it that are of something else. */
const withFigures = (claim: Claim, { ask }: Asking): readonly Asked[] => {
  const beside = figuresBeside(claim).map(ask).filter(fits).filter(isReading);
  if (beside.length === 0) return [];
  const { numbers: _numbers, ...value } = claim.value;
  const main = ask({ ...claim, value: { ...value, text: "", numeric: false } });
  const apart = beside.filter((one) => itemOf(one) !== itemOf(main));
  return fits(main) && !isReading(main) && apart.length > 0 ? [main, ...apart] : [];
};

const isReading = ({ proposal }: Asked): boolean =>
  proposal.ok && proposal.meant[0]?.answer.kind === "reading";

/** Where an answer says nothing of its name, what it says turned round with its remark. */
const orTurned = (one: Asked, { ask, sheet }: Asking): Asked => {
  if (one.proposal.ok || one.proposal.why !== "no-such-word" || !saysWhere(one.claim, sheet)) return one;
  const turned = turnedRound(one.claim);
  const again = turned === undefined ? undefined : unsure(ask(turned));
  return again !== undefined && fits(again) && placesOf(again).length === 1 ? again : one;
};

const saysWhere = ({ value }: Claim, sheet: Sheet): boolean => {
  const label = labelOf(value.text);
  return (
    label.places.size > 0 ||
    itemsNamed(sheet, label, []).some(({ at, fit }) => at !== undefined && fit >= PART_FIT)
  );
};

/** A cell as what it says of one thing, or of each of several. */
export const taken = (claim: Claim, asking: Asking): readonly Asked[] => {
  const { ask, sheet } = asking;
  if (claim.names.length === 0) return [ask(claim)];
  const joined = ofEachName(claim, sheet).map(ask);
  if (joined.length > 0 && joined.every(fits) && areApart(joined)) return joined;
  const excepted = exceptedParts(claim).map(ask);
  const [rest] = excepted;
  if (rest?.proposal.ok === true) return excepted;
  const placed = placedParts(claim).map(ask);
  if (placed.some(fits) && areDistinct(placed.filter(fits))) return placed;
  const figures = withFigures(claim, asking);
  if (figures.length > 0) return figures;
  const noted = factsNoted(claim, asking);
  if (noted.length > 0) return noted;
  const facts = factsIn(claim).map(ask).map(ofRow(sheet)).map(toSettle);
  return facts.every(fits) && areApart(facts)
    ? facts
    : withParts(orTurned(ask(claim), asking), facts, asking);
};
