import { mentionsIn } from "@evenhand/lexicon/find-mentions";
import type { Subject } from "@evenhand/lexicon/lexicon-version-1";
import { repair } from "@evenhand/lexicon/repair";
import type { RepairedToken } from "@evenhand/lexicon/repair";
import { tokenize } from "@evenhand/lexicon/tokenize";
import { applies } from "@evenhand/sheet/expand";
import type { Answer } from "@evenhand/shared/answer";
import type { Item, PositionSet } from "@evenhand/shared/sheet";
import { answerOf, extentOf, isFaultElsewhere } from "../answer-of/index.ts";
import type { SaidNumber, SaidOf, SaidWord } from "../answer-of/index.ts";
import { firmnessOf } from "../firmness/index.ts";
import { noClaim, noClaimAt } from "../no-claim/index.ts";
import { LEADS, piecesOf } from "../pieces/index.ts";
import { pruneMentions } from "../prune-mentions/index.ts";
import type { Piece } from "../pieces/index.ts";
import { placesOf } from "../places-of/index.ts";
import type { SpokenText } from "../spoken-text/index.ts";
import { breathOf, ellipsisOf } from "./breath.ts";
import type { Breath, Entry } from "./breath.ts";
import { codeIn } from "./codes.ts";
import type { DraftContext } from "./context.ts";
import { joined } from "./remark.ts";
import type { Remark } from "./remark.ts";
import { merged, replaced } from "./sides.ts";
import {
  ALL_OF_THEM,
  ANYTHING,
  behindFirst,
  CAR_ASKED,
  codeAnswer,
  gearboxKind,
  IS_ONE,
  isBritish,
  isDry,
  isLeaks,
  isLonger,
  isPanel,
  isWholeOf,
  NONE_OF_THAT,
  OF_CAR,
  OF_ITSELF,
  OF_THE_REST,
  OF_VIEW,
  REPLY,
  SCENE,
  secondAt,
  THIS_ONE,
  turnsOf,
  UNKNOWN,
} from "./phrases.ts";
import { atFirst, PENDING } from "./state.ts";
import { stoodFor } from "./stood.ts";
import { tireDateIn, tireSizeIn } from "./tire-codes.ts";
import { hasWords, SAME_WORDS, Targets } from "./targets.ts";

export type { DraftContext, Remark };

/** Tokens between a part's name and what is said of it, up to which both are shown together. */
const MOST_SPAN = 25;
const REMEMBERED_CONFIDENCE = 0.75;
const CERTAIN = 0.95;

const VOLTS = ["electrics.volts-cranking", "electrics.volts-charging", "electrics.volts-rest"];

const keyOf = (item: string, position: string): string => `${item}@${position}`;

/** Makes a draft of what was said: one pass, with no more in memory than the claims and what is in view. */
class Drafting {
  readonly remarks = new Map<string, Remark>();
  private readonly items: ReadonlyMap<string, Item>;
  private readonly sets: ReadonlyMap<string, PositionSet>;
  private readonly state = atFirst();
  private nextAside = 0;
  private readonly spoken: SpokenText;
  private readonly tokens: readonly RepairedToken[];
  private readonly context: DraftContext;
  private readonly targets: Targets;

  constructor(spoken: SpokenText, tokens: readonly RepairedToken[], context: DraftContext) {
    this.spoken = spoken;
    this.tokens = tokens;
    this.context = context;
    this.items = new Map(
      context.sheet.items
        .filter((item) => applies(item.appliesWhen, context.form))
        .map((item) => [item.id, item]),
    );
    this.sets = new Map(context.sheet.positionSets.map((set) => [set.id, set]));
    this.targets = new Targets({
      context,
      spoken,
      tokens,
      items: this.items,
      sets: this.sets,
      inView: () => this.state,
      hoodIsTop: /^(?:convertible|roadster)$/u.test(context.form.body) && isBritish(tokens),
      isAnswered: (item, position) => this.remarks.has(keyOf(item, position)),
      wasLast: (item) => this.lastIs(item),
    });
  }

  take(piece: Piece, sentenceEnd: number): void {
    const { state } = this;
    if (piece.join === "start") this.beginSentence(piece, sentenceEnd);
    if (piece.join === "colon")
      state.gauges = state.entries.some(({ subjects }) => subjects.some(({ id }) => id === "gauges"));
    if (
      state.skip &&
      THIS_ONE.test(this.wordsOf({ from: piece.from, to: Math.min(piece.to, piece.from + 3) }))
    )
      state.skip = false;
    if (state.skip) return;
    const isListed = piece.join === "comma" && piece.to - piece.from <= 3;
    const breath = this.relevant(breathOf(this.tokens, piece, state.carried && isListed));
    this.noteSide(breath);
    const said = this.onThisSide(breath);
    if (piece.question || (said.entries.length > 0 && !this.saysSomething(said) && this.isAside(piece))) {
      this.asked(said);
      return;
    }
    if (this.isAside(piece)) return;
    const claimed = this.claimed(said);
    if (claimed === undefined) return;
    if (breath.corrects) state.correcting = true;
    const made = this.pendingOf(claimed) ?? this.answer(claimed);
    this.keepPending(claimed, made);
    state.sentenceClaims += made.length;
    this.firmnessLater(breath, made);
    state.carried = breath.words.some(({ negated }) => negated);
    if (breath.words.length > 0 || breath.entries.length > 0) state.correcting = false;
    state.paint =
      /\b(?:paint|finish|painted|paintwork)\b/u.test(breath.text) || (state.paint && piece.join !== "start");
  }

  /** "There's a dent right there, …, on the fender"; "one is out, that's the right one": the part or the side follows. */
  private pendingOf(breath: Breath): readonly string[] | undefined {
    const { pending } = this.state;
    if (pending === undefined || breath.words.length > 0 || breath.numbers.length > 0) return undefined;
    const isNamed = breath.entries.length > 0 && this.leadsIn(breath);
    const isSided =
      breath.entries.length === 0 &&
      this.isPlaced(breath) &&
      pending.entries.length > 0 &&
      IS_ONE.test(breath.text);
    if (!isNamed && !isSided) return undefined;
    const group = isNamed
      ? breath.entries
      : pending.entries.map((entry) => ({
          ...entry,
          sides: { ...replaced(entry.sides, breath.sides), one: false },
        }));
    const made = this.apply(group, { ...breath, words: pending.words }, isSided);
    if (made.length === 0) return undefined;
    this.view(group);
    this.state.pending = undefined;
    return made;
  }

  private leadsIn({ entries: [entry], piece, text }: Breath): boolean {
    if (entry === undefined || entry.none) return false;
    return (
      /\b(?:it|that|they) (?:is|s|are|look|come|be)\b|\bfrom\b|\bcoming\b/u.test(text) ||
      LEADS.has(this.tokens[piece.from]?.stem ?? "") ||
      LEADS.has(this.tokens[piece.from + 1]?.stem ?? "")
    );
  }

  private keepPending(breath: Breath, made: readonly string[]): void {
    const { state } = this;
    const isNot = breath.ellipsis === "no" && breath.entries.some(({ sides }) => sides.one === true);
    const isNew = made.length === 0 && (isNot || this.saysFault(breath));
    if (isNew)
      state.pending = {
        words: isNot ? state.words : breath.words,
        entries: breath.entries.length > 0 ? breath.entries : state.entries,
        left: PENDING,
      };
    else if (made.length > 0 || (state.pending !== undefined && (state.pending.left -= 1) <= 0))
      state.pending = undefined;
  }

  /** Only what is wrong waits for its part: praise without one is none. */
  private saysFault({ words }: Breath): boolean {
    const { conditions } = this.context.compiled.lexicon;
    return words.some(({ meanings, negated }) =>
      meanings.some((one) =>
        one.is === "option"
          ? !negated && /leak|weep|drip/u.test(one.option)
          : (conditions[one.condition]?.senses ?? []).some(
              (sense) =>
                ("fault" in sense && !negated) ||
                ("working" in sense && sense.working === (negated ? "yes" : "no")),
            ),
      ),
    );
  }

  private isAside({ from }: Piece): boolean {
    const start = this.tokens[from]?.start ?? 0;
    const { asides } = this.spoken;
    while (this.nextAside < asides.length && (asides[this.nextAside]?.end ?? 0) <= start) this.nextAside += 1;
    return (asides[this.nextAside]?.start ?? Infinity) <= start;
  }

  /** Words that say something of one part alone count only where that part is named or in view. */
  private relevant(breath: Breath): Breath {
    const { refinements } = this.context.compiled.lexicon;
    const named = [...breath.entries, ...this.state.entries].flatMap((entry) =>
      [entry, ...(entry.instead === undefined ? [] : [entry.instead])].flatMap(({ subjects }) => subjects),
    );
    const refined = refinements
      .filter(({ from }) => named.some(({ id }) => id === from))
      .flatMap(({ to }) => this.context.compiled.subjects.get(to) ?? []);
    const items = new Set(
      [...named, ...refined].flatMap((one) => one.items.flatMap((id) => [id, SAME_WORDS[id] ?? id])),
    );
    const counts = (meaning: SaidWord["meanings"][number]): boolean =>
      meaning.is === "condition" ||
      meaning.alone ||
      items.has(meaning.item) ||
      (meaning.item === "body.paint-history" && OF_CAR.test(breath.text));
    const words = breath.words.filter(({ meanings }) => meanings.some(counts));
    const isBare = words.length === 0 && breath.numbers.length === 0;
    return { ...breath, words, ellipsis: breath.ellipsis ?? ellipsisOf(breath.text, isBare) };
  }

  /** Money, plans and other cars: of talk with marks to the end of the sentence, of talk without to the end of the piece. */
  private claimed(breath: Breath): Breath | undefined {
    const { piece, words } = breath;
    if (this.spoken.punctuated) {
      const none = noClaim(this.tokens, piece.from, piece.to);
      if (none === undefined) return breath;
      this.state.skip = true;
      // "They stop straight if you leave some room": what stands before the "if" is claimed.
      const supposed = none === "supposed" ? noClaimAt(this.tokens, piece.from, piece.to) : undefined;
      const before = words.filter(({ to }) => to <= (supposed ?? 0));
      const isAfter =
        supposed !== undefined &&
        !/\bif you (?:hold|press|push|pump|keep|do not)\b/u.test(this.wordsOf(piece)) &&
        before.length > 0 &&
        noClaim(this.tokens, piece.from, supposed) === undefined;
      return isAfter ? { ...breath, words: before } : undefined;
    }
    const at = noClaimAt(this.tokens, piece.from, piece.to);
    const first = piece.mentions.find(({ is }) => is === "subject")?.from ?? words[0]?.from ?? piece.to;
    const last = words.at(-1)?.to ?? piece.from;
    return at !== undefined && at >= first && at < last ? undefined : breath;
  }

  private beginSentence(piece: Piece, sentenceEnd: number): void {
    const { state } = this;
    state.skip = this.spoken.punctuated && noClaim(this.tokens, piece.from, sentenceEnd) === "elsewhere";
    state.toldForSentence = false;
    state.hedgeNext = false;
    state.sentenceClaims = 0;
    state.carried = false;
    state.paint = false;
    state.gauges = state.entries.some(({ subjects }) =>
      subjects.some(({ id }) => /^(?:gauges|.+-gauge)$/u.test(id)),
    );
  }

  /** "On this side": the side spoken of last. */
  private onThisSide(breath: Breath): Breath {
    const { side } = this.state;
    const isThis = breath.piece.mentions.some(
      (one) => one.is === "side" && one.side === "this" && this.tokens[one.to - 1]?.stem === "side",
    );
    if (side === undefined || !isThis) return breath;
    const on = <Sided extends { readonly sides: Breath["sides"] }>(one: Sided): Sided => ({
      ...one,
      sides: { ...one.sides, adds: [...one.sides.adds, side], all: false },
    });
    return { ...on(breath), entries: breath.entries.map(on) };
  }

  private noteSide({ piece }: Breath): void {
    const { leftHandDrive } = this.context.form;
    // "Round the back, …", "starting at the front, …"
    const isScene = piece.mentions.length > 0 && piece.mentions.every(({ is }) => is === "side");
    for (const mention of piece.mentions) {
      if (mention.is === "subject" && mention.subjects.some(({ id }) => /^trunk(?:-lid)?$/u.test(id)))
        this.state.trunkAt = mention.from;
      if (mention.is !== "side") continue;
      for (const add of mention.adds) {
        if (isScene && (add === "front" || add === "rear")) this.state.end = add;
        if (add === "left" || add === "right") this.state.side = add;
        if (add === "driver") this.state.side = leftHandDrive ? "left" : "right";
        if (add === "passenger") this.state.side = leftHandDrive ? "right" : "left";
      }
    }
  }

  /** A question claims nothing; it brings its part into view, and a yes after it says what it asked. */
  private asked(breath: Breath): void {
    const { state } = this;
    if (breath.entries.length > 0) {
      const named = breath.entries.map((entry) => ({ ...entry, none: false }));
      // "Wipers and horn?"
      const isListed = breath.piece.join !== "start" && state.asked !== undefined && state.open;
      state.entries = isListed ? [...state.entries, ...named] : named;
      this.noteWhole(state.entries);
      state.applied = false;
      state.open = true;
      state.row = undefined;
    } else if (this.isPlaced(breath) && state.entries.length > 0) {
      state.entries = state.entries.map((entry) => ({
        ...entry,
        sides: replaced(entry.sides, breath.sides),
      }));
      state.applied = false;
    } else if (breath.piece.join === "start" && !this.saysFault(breath) && !OF_ITSELF.test(breath.text))
      state.entries = [];
    state.asked = breath;
    state.query = breath.words.length > 0 ? breath : undefined;
  }

  private answer(breath: Breath): readonly string[] {
    const { state } = this;
    const { piece } = breath;
    const entries = this.spokenOf(breath);
    const asked = state.asked;
    state.asked = undefined;
    const part = this.replyOfPart({ ...breath, entries });
    if (part !== undefined) return part;
    // "Lights?" "All of them."
    if (asked?.words.length === 0 && entries.length === 0 && ALL_OF_THEM.test(breath.text))
      return this.ofView({ ...breath, sides: { ...breath.sides, all: true }, yesOrNo: "yes" });
    const reply = asked === undefined || asked.words.length === 0 ? undefined : REPLY.exec(breath.text);
    if (asked !== undefined && reply !== null && reply !== undefined) {
      const denies = reply.groups?.["no"] !== undefined;
      const plain = breath.yesOrNo === "no" ? this.ofView({ ...breath, entries }) : [];
      if (plain.length > 0) return plain;
      const words = asked.words
        .filter((word) => !this.isFaint(word))
        .map((word) => (denies ? { ...word, negated: !word.negated } : word));
      const group =
        state.entries.length === 0 && this.isOfWholeCar(asked) ? this.wholeCar(asked) : state.entries;
      return this.apply(group, { ...asked, words, piece }, false);
    }
    if (piece.join === "except") return this.except(breath);
    if (entries.length === 0 && this.isOfTheRest(piece)) return [];
    // "Any cracks? In the rears": there, what was asked.
    if (asked !== undefined && asked.words.length > 0 && this.isOnlyPlace(breath))
      return this.apply(this.placedIn(breath), { ...asked, piece }, false);
    if (this.isInList(breath, entries)) return this.ofNamed({ ...breath, entries, has: true });
    if (NONE_OF_THAT.test(breath.text) && state.words.length > 0 && !this.isFitted(entries))
      return entries.length > 0
        ? this.namedOnly({ ...breath, entries, ellipsis: "no" })
        : this.ellipsis({ ...breath, ellipsis: "no" }, state.entries);
    const isSaid = this.saysSomething(breath);
    if (
      state.correcting &&
      entries.length > 0 &&
      breath.words.length === 0 &&
      entries.every(({ none }) => none)
    ) {
      this.takeBack(breath);
      return [];
    }
    // "Tonneau? In the boot": where it is, and no part anew.
    if (asked !== undefined && !isSaid && LEADS.has(this.tokens[piece.from]?.stem ?? "")) return [];
    if (entries.length > 0) return isSaid ? this.ofNamed({ ...breath, entries }) : this.namedOnly(breath);
    if (isSaid) return this.ofView({ ...breath, entries });
    if (
      asked !== undefined &&
      breath.same &&
      /^(?:the )?same\b/u.test(breath.text) &&
      state.allWords.length > 0
    )
      return this.apply(state.entries, { ...breath, words: state.words, numbers: state.numbers }, false);
    if (
      this.isPlaced(breath) &&
      state.last.length > 0 &&
      (breath.same || (piece.join === "and" && breath.sides.adds.length > 0))
    )
      return this.again(
        breath,
        state.entries.map((entry) => ({ ...entry, sides: replaced(entry.sides, breath.sides) })),
      );
    const isOfView = this.isPlaced(breath) || OF_VIEW.test(breath.text);
    if (breath.ellipsis !== undefined && state.words.length > 0 && isOfView)
      return this.ellipsis(breath, state.entries);
    if (
      (breath.sides.adds.length > 0 || breath.sides.other) &&
      state.applied &&
      (piece.join !== "start" ||
        breath.sides.other ||
        this.tokens[piece.from]?.plural === true ||
        /^(?:the )?\w+ one\b/u.test(breath.text)) &&
      /\b(?:is|are|was|were)\b/u.test(breath.text)
    )
      state.entries = state.entries.map((entry) => ({
        ...entry,
        sides: replaced(entry.sides, breath.sides),
      }));
    if (state.applied && this.isOnlyPlace(breath)) {
      state.entries = this.placedIn(breath);
      state.applied = false;
    } else if (this.isPlaced(breath) && !state.applied && state.entries.length > 0 && piece.join !== "start")
      state.entries = state.entries.map((entry) => ({ ...entry, sides: merged(entry.sides, breath.sides) }));
    return [];
  }

  /** "Any rust? Not in the floors, the left fender has some": what was asked, said part by part. */
  private replyOfPart(breath: Breath): readonly string[] | undefined {
    const { query } = this.state;
    const { entries, words, numbers, text } = breath;
    const isSide = entries.length === 0 && this.isPlaced(breath) && breath.ellipsis !== undefined;
    if (query === undefined || (entries.length === 0 && !isSide) || numbers.length > 0) return undefined;
    const denies = /^(?:no|not|none|nothing)\b|\b(?:no|not|none)$/u.test(text);
    const isYes = isSide && breath.ellipsis === "yes";
    const affirms =
      isYes ||
      /^there (?:is|s) (?:some|a bit|a little|a spot|one)\b|^(?:just )?(?:a )?(?:little|bit|some|touch|tiny)(?: bit| of it)? (?:in|on|at|around|under)\b|\b(?:has|have|got|is|there (?:is|s)) (?:some|a bit|a little)$|\byes$/u.test(
        text,
      );
    if (words.some((word) => this.wordsOf(word) !== "there") || (!denies && !affirms)) {
      this.state.query = undefined;
      return undefined;
    }
    const named = isSide ? this.placedIn(breath) : entries.map((entry) => ({ ...entry, none: false }));
    const asked = query.words.map((word) => (denies ? { ...word, negated: !word.negated } : word));
    const made = this.apply(
      named,
      { ...query, entries: named, sides: breath.sides, words: asked, piece: breath.piece },
      false,
    );
    if (made.length > 0) this.view(named);
    return made.length > 0 ? made : undefined;
  }

  /** "Offside, …", "in the rears": nothing but where. */
  private isOnlyPlace({ piece: { from, to, mentions }, sides, entries }: Breath): boolean {
    return (
      sides.adds.length > 0 &&
      entries.length === 0 &&
      this.tokens
        .slice(from, to)
        .every(
          ({ stem }, index) =>
            /^(?:the|in|on|at|and|then|now|s|side|hand|one)$/u.test(stem) ||
            mentions.some((one) => one.is === "side" && one.from <= from + index && one.to > from + index),
        )
    );
  }

  private placedIn({ sides }: Breath): readonly Entry[] {
    return this.state.entries.map((entry) => ({
      ...entry,
      sides: replaced(entry.sides, sides),
      none: false,
    }));
  }

  /** "Does it fold all right? It does" is no grade. */
  private isFaint({ meanings }: SaidWord): boolean {
    const { conditions } = this.context.compiled.lexicon;
    return meanings.every(
      (one) =>
        one.is === "condition" &&
        conditions[one.condition]?.senses.some((sense) => "grade" in sense && sense.grade === "even-wear") ===
          true,
    );
  }

  private isOfTheRest({ from, to }: Piece): boolean {
    const before = this.wordsOf({ from: Math.max(0, from - 4), to: from });
    return OF_THE_REST.test(before) || OF_THE_REST.test(this.wordsOf({ from, to: Math.min(to, from + 3) }));
  }

  /** "It doesn't leak" after a radiator is said of the radiator. */
  private spokenOf(breath: Breath): readonly Entry[] {
    const { entries, piece, text } = breath;
    const named = entries.some(isPanel)
      ? entries.filter(({ subjects }) => !subjects.every(({ id }) => id === "all-panels"))
      : entries;
    if (named.length === 0 && this.isOfWholeCar(breath)) return this.wholeCar(breath);
    const others = named.filter((entry) => !isLeaks(entry));
    const inView = piece.join !== "start" && this.state.entries.length > 0;
    const kept = (others.length > 0 || inView ? others : named).map((entry) => this.latchOfLid(entry));
    return this.isPaintOfView(kept, piece, text) ? [] : kept;
  }

  /** "Trunk lid? Fine. The latch sticks": a latch behind a lid is the lid's. */
  private latchOfLid(entry: Entry): Entry {
    const [lid] = this.state.entries.flatMap(({ subjects }) => subjects.flatMap((one) => one.at ?? []));
    if (entry.subjects.every(({ id }) => id !== "latches") || entry.sides.adds.length > 0) return entry;
    const own = [...this.context.compiled.subjects.values()].find(
      ({ items, at }) => items[0] === "doors.lid-latches" && at?.includes(lid ?? "") === true,
    );
    return own === undefined ? entry : { ...entry, subjects: [own] };
  }

  /** "It was repainted in 2016", and no panel is in view. */
  private isOfWholeCar({ text, words }: Breath): boolean {
    const isRepaint = words.some(
      ({ meanings, negated }) =>
        !negated &&
        meanings.some(
          (one) => one.is === "option" && one.item === "body.paint-history" && one.option === "refinished",
        ),
    );
    return isRepaint && (OF_CAR.test(text) || CAR_ASKED.test(text)) && !this.state.entries.some(isPanel);
  }

  private wholeCar({ piece: { from }, sides, text }: Breath): readonly Entry[] {
    const paint = this.context.compiled.subjects.get("all-panels");
    return paint === undefined
      ? []
      : [
          {
            subjects: [paint],
            sides,
            plural: true,
            none: false,
            from,
            to: from,
            confidence: 1,
            heard: [],
            context: text,
            within: [],
          },
        ];
  }

  /** "I have the bills and the photographs": what stands in a list of things that are there is there. */
  private isInList({ piece, words, numbers }: Breath, entries: readonly Entry[]): boolean {
    const isPresence = (id: string | undefined): boolean => this.items.get(id ?? "")?.answer === "presence";
    const last = this.remarks.get(this.state.last[0] ?? "")?.answer;
    return (
      (piece.join === "and" || piece.join === "comma") &&
      words.length === 0 &&
      numbers.length === 0 &&
      entries.length > 0 &&
      ((last?.kind === "presence" && last.value === "present") || this.lastIs("identity.keys")) &&
      entries.every(({ subjects, none }) => !none && subjects.every(({ items }) => isPresence(items[0])))
    );
  }

  /** A thing a car may lack: "it has none" says that it does. */
  private isFitted(entries: readonly Entry[]): boolean {
    return entries.some(({ subjects }) =>
      subjects.some(({ items }) => this.items.get(items[0] ?? "")?.equipment === true),
    );
  }

  /** "It has new paint", of a panel in view, is said of that panel. */
  private isPaintOfView(entries: readonly Entry[], { join }: Piece, text: string): boolean {
    const isPaint =
      entries.length > 0 && entries.every(({ subjects }) => subjects.every(({ id }) => id === "all-panels"));
    const isOfPanel = this.state.entries.some(isPanel);
    return (
      isPaint &&
      isOfPanel &&
      !/\b(?:all|every|car|whole|everything|else|rest|other|panel|anywhere)\b/u.test(text) &&
      (join !== "start" || /\b(?:it|its|that|there)\b/u.test(text))
    );
  }

  private isPlaced({ sides }: Breath): boolean {
    return sides.adds.length > 0 || sides.other || sides.index !== undefined || sides.all;
  }

  private saysSomething({ words, numbers, yesOrNo, entries, has, text }: Breath): boolean {
    if (words.length > 0 || numbers.length > 0) return true;
    if (
      yesOrNo !== undefined &&
      (entries.length > 0 || (this.state.entries.length > 0 && !this.state.applied))
    )
      return true;
    if (entries.some(({ none }) => none)) return true;
    if (/\b(?:tight|no play)\b/u.test(text)) return true;
    const isThere = (subject: Subject): boolean =>
      this.items.get(subject.items[0] ?? "")?.answer === "presence";
    return entries.some(({ subjects }) =>
      subjects.some((one) => one.id === "gearbox-kind" || (has && isThere(one))),
    );
  }

  /** Only a name: it joins the names before it, or opens a new view; "the same" and "isn't" say of it what was said last. */
  private namedOnly(breath: Breath): readonly string[] {
    const { state } = this;
    const joins =
      breath.piece.join !== "start" && breath.piece.join !== "colon" && state.open && !state.correcting;
    if (
      breath.ellipsis === "no" &&
      this.lastIsPresence() &&
      breath.entries.every((one) => this.isOfPresence(one))
    ) {
      this.view(breath.entries);
      return this.apply(
        breath.entries.map((entry) => ({ ...entry, none: true })),
        breath,
        false,
      );
    }
    if (breath.ellipsis !== undefined && state.words.length > 0) {
      this.view(breath.entries);
      return this.ellipsis(breath, breath.entries);
    }
    // "The gearbox got rebuilt too" says something of its own.
    const saysOwn = breath.piece.mentions.some(({ is }) => is === "said");
    const isSameKind = !/\ball (?:of )?the same\b|\bsame (?:make|brand|age|type|kind)\b/u.test(breath.text);
    if (breath.same && isSameKind && !saysOwn && (state.words.length > 0 || state.numbers.length > 0)) {
      this.view(breath.entries);
      return this.again(breath, breath.entries);
    }
    if (state.correcting && breath.text.includes("not")) {
      this.takeBack(breath);
      return [];
    }
    const isWhere = LEADS.has(this.tokens[breath.piece.from]?.stem ?? "") || this.startsAtPart(breath);
    if (
      breath.piece.join === "and" &&
      state.applied &&
      state.wasLed &&
      isWhere &&
      this.isAlike(breath.entries)
    )
      return this.again(breath, breath.entries);
    const bare = breath.entries.map((entry) => ({ ...entry, none: false }));
    state.entries = joins ? (this.whereOf(state.entries, bare) ?? [...state.entries, ...bare]) : bare;
    state.applied = false;
    // "The sills were done in 2009": a clause of its own, which no other name joins.
    state.open = !/\b(?:is|are|was|were|has|have|had|do|does|did|got)\b/u.test(breath.text);
    state.row = undefined;
    return [];
  }

  /** "Hinge play, driver's door, …": a part that is only where the one named before is looked at. */
  private whereOf(named: readonly Entry[], wheres: readonly Entry[]): readonly Entry[] | undefined {
    const [what, ...others] = named;
    const [where, ...more] = wheres;
    const at = where?.subjects.flatMap((one) => one.at ?? []) ?? [];
    if (what === undefined || where === undefined || others.length > 0 || more.length > 0) return undefined;
    const item = this.items.get(what.subjects[0]?.items[0] ?? "");
    const places = this.sets.get(item?.positions ?? "")?.positions.map(({ id }) => id) ?? [];
    const isWhere =
      item?.answer === "reading" &&
      what.subjects.every((one) => one.at === undefined && !where.subjects.includes(one)) &&
      at.length > 0 &&
      at.every((place) => places.includes(place));
    return isWhere ? [{ ...what, sides: where.sides, plural: where.plural, within: at }] : undefined;
  }

  /** "Original on the roof and the trunk lid": another of the same kind. */
  private isAlike(entries: readonly Entry[]): boolean {
    const kinds = new Set(
      this.state.entries.flatMap(({ subjects }) => subjects.map(({ items }) => items[0])),
    );
    return entries.every(({ subjects, none }) => !none && subjects.some(({ items }) => kinds.has(items[0])));
  }

  /** "… and the roof", and not "… and touch-ups on the roof". */
  private startsAtPart({ entries: [first], piece: { from, mentions } }: Breath): boolean {
    const to = first?.from ?? from;
    return this.tokens
      .slice(from, to)
      .every(
        ({ stem }, index) =>
          /^(?:the|an?|my|its|s|also|both|all|of|side|on|in|at)$/u.test(stem) ||
          mentions.some((one) => one.is !== "said" && one.from <= from + index && one.to > from + index),
      );
  }

  private lastIsPresence(): boolean {
    return (
      this.state.words.length === 0 ||
      this.state.last.some((key) => this.remarks.get(key)?.answer.kind === "presence")
    );
  }

  private isOfPresence({ subjects }: Entry): boolean {
    return subjects.every(({ items }) => this.items.get(items[0] ?? "")?.answer === "presence");
  }

  private takeBack(breath: Breath): void {
    for (const key of this.state.last) {
      const item = key.split("@")[0] ?? "";
      if (breath.entries.some(({ subjects }) => subjects.some((one) => one.items.includes(item))))
        this.remarks.delete(key);
    }
  }

  private view(entries: readonly Entry[]): void {
    this.noteWhole(entries);
    this.state.entries = entries;
    this.state.applied = true;
    this.state.open = false;
    this.state.row = undefined;
  }

  private noteWhole([first]: readonly Entry[]): void {
    const [named] = first?.subjects ?? [];
    if (first !== undefined && /^(?:gauges|lamps|glass)$/u.test(named?.id ?? "")) this.state.whole = first;
  }

  /** "Gauges? The fuel gauge is dead. The rest work": the rest of what was named as a whole. */
  private restOfWhole({ sides }: Breath): Entry | undefined {
    const { whole, entries } = this.state;
    const items = whole?.subjects.flatMap((one) => one.items) ?? [];
    const isPart = entries.every(({ subjects }) =>
      subjects.every((one) => items.includes(one.items[0] ?? "")),
    );
    return sides.other && sides.adds.length === 0 && entries.length > 0 && isPart ? whole : undefined;
  }

  private ofNamed(breath: Breath): readonly string[] {
    const { state } = this;
    const { piece, entries } = breath;
    const joins =
      piece.join !== "start" &&
      piece.join !== "colon" &&
      piece.join !== "but" &&
      state.open &&
      !state.correcting &&
      !(piece.join === "inner" && /^(?:it|they|there|that|we|i|he|she)\b/u.test(breath.text)) &&
      state.entries.length > 0;
    const group = joins ? [...state.entries.filter((one) => !isWholeOf(one, entries)), ...entries] : entries;
    this.view(group);
    const made = this.apply(group, breath, false);
    state.applied = made.length > 0;
    const [first] = entries;
    state.wasLed = first !== undefined && breath.words.some(({ to }) => to <= first.from);
    return made;
  }

  /** No part is named: it is said of the one last in view. */
  private ofView(breath: Breath): readonly string[] {
    const { state } = this;
    if (breath.piece.join !== "and" && SCENE.test(breath.text)) state.entries = [];
    if (this.isOfUnknown(breath)) return [];
    const sized = this.tireSize(breath);
    if (sized !== undefined) return sized;
    if (this.isOilPressure(breath)) return this.apply([], breath, false);
    const rowed = this.nextInRow(breath);
    if (rowed !== undefined) return rowed;
    if (breath.words.length === 0 && breath.numbers.length === 1 && this.lastIsFault()) {
      const extended = this.extent(breath, []);
      if (extended.length > 0) return extended;
    }
    const placed = this.isPlaced(breath);
    const isOne =
      /^(?:(?:and|but) )?(?:(?:this|that) one|(?:one|two|three) (?:is|s|has|are|have|of them))\b/u.test(
        breath.text,
      );
    const whole = this.restOfWhole(breath);
    const group = (whole === undefined ? state.entries : [whole]).map((entry) =>
      isOne
        ? { ...entry, sides: { ...entry.sides, one: true, all: false }, none: false }
        : placed
          ? {
              ...entry,
              sides: replaced(entry.sides, breath.sides),
              plural: entry.plural || breath.sides.adds.length > 0,
              none: false,
            }
          : { ...entry, none: false },
    );
    const made = this.apply(group, breath, breath.piece.join === "start");
    if (made.length > 0) {
      state.applied = true;
      state.open = false;
      if (placed) state.entries = group;
    } else if (placed && breath.words.length > 0 && (breath.sides.other || breath.sides.adds.length > 0))
      state.entries = group;
    return this.extent(breath, made);
  }

  /** "One chain is broken", "the armrest is torn": of something that is not on the sheet. */
  private isOfUnknown({ piece: { from, to, mentions } }: Breath): boolean {
    const stems = this.tokens.slice(from, Math.min(to, from + 6)).map(({ stem }) => stem);
    const match = UNKNOWN.exec(stems.join(" "));
    if (match === null) return false;
    const noun = match.groups?.["noun"]?.trim().split(" ") ?? [];
    const begin = from + stems.indexOf(noun[0] ?? "");
    return mentions.every((one) => one.to <= begin || one.from >= begin + noun.length);
  }

  /** "Plenty of tread. They're one fifty-five thirteens": a size is of the tires, whatever of them is in view. */
  private tireSize(breath: Breath): readonly string[] | undefined {
    const tires = this.context.compiled.subjects.get("tires");
    const inView = this.state.entries.flatMap(({ subjects }) => subjects);
    const isOfTires = inView.some(({ id }) => /^(?:tread|pressure|tire-code|spare)$/u.test(id));
    const { from, to } = breath.piece;
    if (
      !isOfTires ||
      tires === undefined ||
      breath.words.length > 0 ||
      tireSizeIn(this.tokens, from, to) === undefined
    )
      return undefined;
    const group = this.state.entries.map((entry) => ({ ...entry, subjects: [tires], plural: true }));
    this.view(group);
    return this.apply(group, breath, true);
  }

  private lastIsFault(): boolean {
    return this.state.last.some((key) => {
      const answer = this.remarks.get(key)?.answer;
      return answer?.kind === "faults" && answer.found.length === 1 && answer.found[0]?.extent === undefined;
    });
  }

  /** "Chip, three millimeters": a length by itself is that of the fault just named. */
  private extent(breath: Breath, made: readonly string[]): readonly string[] {
    const [number] = breath.numbers;
    if (made.length > 0 || number === undefined || breath.piece.join === "start") return made;
    const extent = extentOf(breath.numbers, 1);
    if (extent === undefined) return made;
    const { firmness, about } = firmnessOf(this.tokens, breath.piece.from, breath.piece.to);
    const sized: string[] = [];
    for (const key of this.state.last) {
      const remark = this.remarks.get(key);
      if (remark?.answer.kind !== "faults" || remark.answer.found.length !== 1) continue;
      const found = remark.answer.found.map((fault) => ({ ...fault, extent }));
      const isRough = remark.firmness === "asserted" && (about || firmness === "hedged");
      this.remarks.set(key, {
        ...remark,
        answer: { ...remark.answer, found },
        ...(isRough ? { firmness: "hedged" } : {}),
      });
      sized.push(key);
    }
    return sized;
  }

  private ellipsis(breath: Breath, entries: readonly Entry[]): readonly string[] {
    const { state } = this;
    const words = state.words.map((word) => ({
      ...word,
      negated: breath.ellipsis === "no" ? !word.negated : false,
    }));
    const placed = this.isPlaced(breath) && breath.entries.length === 0;
    const group = placed
      ? entries.map((entry) => ({ ...entry, sides: replaced(entry.sides, breath.sides) }))
      : entries;
    return this.apply(group, { ...breath, words, numbers: [] }, breath.entries.length === 0);
  }

  private again(breath: Breath, entries: readonly Entry[]): readonly string[] {
    return this.apply(entries, { ...breath, words: this.state.allWords, numbers: this.state.numbers }, false);
  }

  /** "All but the clock": what follows is taken out, and where the rest works it does not. */
  private except(breath: Breath): readonly string[] {
    const { state } = this;
    const last = state.last.map((key) => this.remarks.get(key)).filter((one) => one !== undefined);
    // "All but the left dipper": of something that is not known nothing is taken out.
    if (breath.entries.length === 0 && breath.words.length === 0 && !this.isOnlyPlace(breath)) return [];
    const group =
      breath.entries.length > 0
        ? breath.entries
        : state.entries.map((entry) => ({ ...entry, sides: replaced(entry.sides, breath.sides) }));
    const isWorking = last.some(({ answer }) => answer.kind === "working" && answer.value === "yes");
    for (const entry of group)
      for (const { item, places } of this.targets.of(entry, breath))
        for (const place of places)
          if (last.some((one) => one.item === item.id && one.position === place))
            this.remarks.delete(keyOf(item.id, place));
    this.view(group);
    state.applied = false;
    const says = this.saysSomething(breath) && breath.words.length > 0;
    if (says) {
      state.applied = true;
      return this.apply(group, breath, false);
    }
    if (!isWorking) return [];
    const words = state.words.map((word) => ({ ...word, negated: !word.negated }));
    return this.apply(group, { ...breath, words, numbers: [] }, false);
  }

  /** Numbers one after another, with no part between them, are dealt out over the places of the item: cylinder by cylinder. */
  private nextInRow(breath: Breath): readonly string[] | undefined {
    const { row } = this.state;
    const [number] = breath.numbers;
    if (row === undefined || number === undefined || breath.words.length > 0 || this.isPlaced(breath))
      return undefined;
    const item = this.items.get(row.item);
    const place = row.places[row.next];
    if (item === undefined) return undefined;
    if (this.state.correcting)
      return this.put(
        item,
        [row.places[row.next - 1] ?? ""],
        this.answered(item, breath),
        breath,
        false,
        1,
        [],
      );
    if (place === undefined) return undefined;
    const answer = this.answered(item, breath);
    if (answer === undefined) return undefined;
    if (row.next === 1) for (const later of row.places.slice(1)) this.remarks.delete(keyOf(row.item, later));
    row.next += 1;
    return this.put(item, [place], answer, breath, false, 1, []);
  }

  private answered(item: Item, breath: Breath): Answer | undefined {
    return answerOf(
      item,
      { ...this.saidOf(breath, breath.words, undefined, item), bare: true },
      this.context.compiled,
      (word) => this.wordsOf(word),
    );
  }

  private wordsOf({ from, to }: { from: number; to: number }): string {
    return this.tokens
      .slice(from, to)
      .map(({ stem }) => stem)
      .join(" ");
  }

  private saidOf(breath: Breath, words: readonly SaidWord[], entry: Entry | undefined, item: Item): SaidOf {
    const isFirst = entry?.subjects.some((one) => one.items[0] === item.id) === true;
    const same = SAME_WORDS[item.id];
    return {
      words:
        same === undefined
          ? words
          : words.map((word) => ({
              ...word,
              meanings: word.meanings.map((one) =>
                one.is === "option" && one.item === same ? { ...one, item: item.id } : one,
              ),
            })),
      numbers: behindFirst(breath.numbers, entry).map((number) => this.withUnit(number, item)),
      isFirst,
      faultsElsewhere:
        entry?.subjects.flatMap((one) =>
          one.items.filter((id) => id !== item.id).flatMap((id) => this.items.get(id)?.faults?.kinds ?? []),
        ) ?? [],
      named: entry !== undefined && entry.from >= breath.piece.from && entry.to <= breath.piece.to,
      bare: this.isBare(entry, item),
      noSubject: entry?.none === true && isFirst,
      has: breath.has && isFirst,
      yesOrNo: isFirst || entry === undefined ? breath.yesOrNo : undefined,
      text: breath.text,
      ofPaint: this.state.paint || /\b(?:paint|finish)\b/u.test(breath.text),
      year: this.context.year,
    };
  }

  /** A number without a unit has the one of the number said before it of the same item. */
  private withUnit(number: SaidNumber, item: Item): SaidNumber {
    const last = this.state.reading;
    if (number.unit !== undefined || last?.item !== item.id) return number;
    const { unit, value } = last;
    const alike = number.value <= value * 5 && number.value * 5 >= value;
    return alike ? { ...number, unit } : number;
  }

  /** A number without a unit is meant for the reading a subject means first. */
  private isBare(entry: Entry | undefined, item: Item): boolean {
    if (entry === undefined) return false;
    if (this.state.reading?.item === item.id) return true;
    if (item.id === "body.paint-thickness" && this.state.paint) return true;
    return entry.subjects.some((one) => {
      const at = one.items.indexOf(item.id);
      return one.items
        .slice(0, Math.max(0, at))
        .every((id) => this.items.get(id)?.answer === "reading" || id === "electrics.oil-gauge");
    });
  }

  private apply(group: readonly Entry[], breath: Breath, remembered: boolean): readonly string[] {
    const used = new Set<SaidWord>();
    const made = group.flatMap((entry) => this.applyTo(entry, breath, remembered, used));
    const alone = this.alone(breath, used);
    const numbered = this.hasReading(made) ? [] : [...this.aloneNumber(breath), ...this.stood(breath, made)];
    const all = [...made, ...alone, ...numbered];
    if (breath.words.length > 0 || breath.numbers.length > 0) {
      this.state.allWords =
        breath.entries.length > 0 ? breath.words : [...this.state.allWords.slice(-12), ...breath.words];
      this.state.words = breath.words;
      this.state.numbers = breath.numbers;
    }
    if (all.length > 0) this.state.last = all;
    return all;
  }

  private applyTo(entry: Entry, breath: Breath, remembered: boolean, used: Set<SaidWord>): readonly string[] {
    const mine = new Set<SaidWord>();
    const made: string[] = [];
    let numbersTaken = false;
    for (const { item, subject, places, inferred } of this.targets.of(entry, breath)) {
      const code =
        item.answer === "code" && (subject.items[0] === item.id || item.id === "wheels.tire-size")
          ? this.code(item, subject, entry, breath)
          : undefined;
      if (code !== undefined && item.section === "wheels") numbersTaken = true;
      if (numbersTaken && item.answer === "reading") continue;
      const words = breath.words.filter((word) => !mine.has(word));
      const said = this.saidOf(
        this.numbersFor(item, subject, entry, breath, numbersTaken),
        words,
        entry,
        item,
      );
      const answer =
        code ??
        (item.answer === "code"
          ? undefined
          : answerOf(item, said, this.context.compiled, (word) => this.wordsOf(word)));
      if (item.id === "identity.restoration-bills" && (this.areOfRebuild(answer, breath) || !entry.plural))
        continue;
      if (answer === undefined) this.retract(item, places, words);
      if (answer === undefined || !this.fits(item, answer, said, breath)) continue;
      if (answer.kind === "not-seen" && (item.section === "identity" || !this.isUnseen(entry, breath)))
        continue;
      if (places.length === 0 || (subject.id === "leaks" && !isDry(answer))) continue;
      if (item.answer !== "working")
        for (const word of words)
          if (this.speaksOf(word, item) && !this.isOfOther(word, item, said)) mine.add(word);
      if (item.answer === "working") for (const word of words) used.add(word);
      const keys = this.put(
        item,
        places,
        answer,
        breath,
        remembered || inferred,
        entry.confidence,
        entry.heard,
        entry,
      );
      made.push(...keys);
      if (answer.kind === "faults" && answer.found.some(({ extent }) => extent !== undefined))
        numbersTaken = true;
      if (answer.kind === "reading") {
        numbersTaken = true;
        this.state.reading = { item: item.id, unit: answer.unit, value: answer.values[0]?.value ?? 0 };
        this.openRow(item, places, breath);
        made.push(...this.dealOut(item, places, breath));
      }
      if (answer.kind === "not-seen" || answer.kind === "not-fitted") break;
    }
    for (const word of mine) used.add(word);
    return made.length === 0 && entry.instead !== undefined
      ? this.applyTo(entry.instead, breath, remembered, used)
      : made;
  }

  /** "Did the engine, and I have the bills": they are of what was said just before. */
  private areOfRebuild(answer: Answer | undefined, { piece }: Breath): boolean {
    const key = keyOf("engine.rebuild-claim", "");
    const remark = this.remarks.get(key);
    const isThere = answer?.kind === "presence" && answer.value === "present";
    if (remark?.answer.kind !== "choice" || !this.state.last.includes(key) || !isThere) return false;
    const isTold = firmnessOf(this.tokens, piece.from, piece.to).firmness === "second-hand";
    if (remark.answer.option === "rebuilt" && !isTold)
      this.remarks.set(key, { ...remark, answer: { kind: "choice", option: "rebuilt-with-bills" } });
    return true;
  }

  /** "It's not perfect" takes back that it is. */
  private retract(item: Item, places: readonly string[], words: readonly SaidWord[]): void {
    const { conditions } = this.context.compiled.lexicon;
    const denied = words
      .flatMap(({ negated, meanings }) => (negated ? meanings : []))
      .flatMap((one) => (one.is === "condition" ? (conditions[one.condition]?.senses ?? []) : []));
    for (const place of places) {
      const answer = this.remarks.get(keyOf(item.id, place))?.answer;
      if (
        answer?.kind === "grade" &&
        denied.some((sense) => "grade" in sense && sense.grade === answer.value)
      )
        this.remarks.delete(keyOf(item.id, place));
    }
  }

  /** That nobody looked is said of a part named in the same sentence, or of "it". */
  private isUnseen(entry: Entry, { piece, text }: Breath): boolean {
    const isHere =
      entry.from >= piece.from ||
      (piece.join !== "start" && !/^(?:what|all|who|which|and what)\b/u.test(text));
    return isHere || /\b(?:it|that|them|those|one)\b/u.test(text);
  }

  /** "Original" of a panel is its paint only where paint is spoken of. */
  private fits(item: Item, answer: Answer, said: SaidOf, { piece }: Breath): boolean {
    if (item.id === "body.paint-history" && answer.kind === "choice" && answer.option === "original")
      return (
        said.ofPaint ||
        said.words.some(({ negated }) => negated) ||
        (piece.join === "colon" && said.text === "original") ||
        this.lastIs(item.id) ||
        this.lastIs("body.paint-thickness")
      );
    return true;
  }

  private lastIs(item: string): boolean {
    return this.state.last.some((key) => key.startsWith(`${item}@`));
  }

  private openRow(item: Item, places: readonly string[], breath: Breath): void {
    if (this.state.row?.item === item.id && this.state.row.next > 1) return;
    const several =
      places.length > 1 && breath.sides.adds.length === 0 && !breath.sides.all && breath.words.length === 0;
    const begun = several && this.remarks.has(keyOf(item.id, places[0] ?? ""));
    this.state.row = begun ? { item: item.id, places, next: 1 } : undefined;
  }

  /** Several numbers in one breath, as many as there are places. */
  private dealOut(item: Item, places: readonly string[], breath: Breath): readonly string[] {
    const answers = breath.numbers
      .map((number) => this.answered(item, { ...breath, numbers: [number] }))
      .filter((answer) => answer !== undefined);
    if (answers.length < 3 || answers.length > places.length) return [];
    for (const place of places) this.remarks.delete(keyOf(item.id, place));
    if (this.state.row !== undefined) this.state.row.next = answers.length;
    return answers.flatMap((answer, index) =>
      this.put(item, [places[index] ?? ""], answer, breath, false, 1, []),
    );
  }

  private code(item: Item, subject: Subject, entry: Entry, breath: Breath): Answer | undefined {
    const inPiece = entry.from >= breath.piece.from && entry.to <= breath.piece.to;
    if (subject.id === "gearbox-kind")
      return inPiece ? codeAnswer(gearboxKind(this.wordsOf(entry))) : undefined;
    const from = inPiece ? entry.to : breath.piece.from;
    if (item.id === "wheels.tire-size")
      return codeAnswer(
        tireSizeIn(this.tokens, from, breath.piece.to) ??
          (subject.items[0] === item.id
            ? codeIn(this.spoken.text, this.tokens, from, breath.piece.to)
            : undefined),
      );
    if (item.id === "wheels.tire-identification")
      return codeAnswer(tireDateIn(this.tokens, from, breath.piece.to, this.context.year));
    if (item.id === "engine.timing-belt-date") {
      const year = breath.numbers.findLast(({ value }) => value >= 1950 && value <= this.context.year);
      return year === undefined ? undefined : codeAnswer(String(year.value));
    }
    return codeAnswer(
      codeIn(this.spoken.text, this.tokens, inPiece ? entry.to : breath.piece.from, breath.piece.to),
    );
  }

  /** A breath with the numbers that are left for an item: of a tire's age those of its date code. */
  private numbersFor(item: Item, subject: Subject, entry: Entry, breath: Breath, areTaken: boolean): Breath {
    if (item.id !== "wheels.tire-age") return areTaken ? { ...breath, numbers: [] } : breath;
    if (subject.id !== "tire-code") return breath;
    const from = entry.from >= breath.piece.from ? entry.to : breath.piece.from;
    const code = tireDateIn(this.tokens, from, breath.piece.to, this.context.year);
    return code === undefined
      ? breath
      : {
          ...breath,
          numbers: [
            {
              is: "number",
              value: 2000 + Number(code.slice(2)),
              from,
              to: from,
              start: 0,
              end: 0,
              confidence: 1,
            },
          ],
        };
  }

  /** Whether a word can have been what an item was answered by. */
  private speaksOf(word: SaidWord, item: Item): boolean {
    const { lexicon } = this.context.compiled;
    return word.meanings.some((meaning) => {
      if (meaning.is === "option") return meaning.item === item.id || meaning.item === SAME_WORDS[item.id];
      return (lexicon.conditions[meaning.condition]?.senses ?? []).some((sense) => {
        if ("fault" in sense && item.faults?.kinds.includes(sense.fault) === true) return true;
        if ("grade" in sense && item.answer === "grade") return !word.negated;
        if ("working" in sense && item.answer === "working") return true;
        if ("presence" in sense && item.answer === "presence") return true;
        return "general" in sense;
      });
    });
  }

  /** "Pitted" of chrome is a fault with an item of its own, and leaves the grade alone. */
  private isOfOther(word: SaidWord, item: Item, said: SaidOf): boolean {
    return item.answer === "grade" && isFaultElsewhere(word, said, this.context.compiled);
  }

  /** What needs no part to be named: "fires right up", "never been hit". */
  private alone(breath: Breath, used: ReadonlySet<SaidWord>): readonly string[] {
    const free = breath.words.filter((word) => !used.has(word) && !ANYTHING.test(this.wordsOf(word)));
    const items = new Set(
      free.flatMap(({ meanings }) =>
        meanings.flatMap((one) => (one.is === "option" && one.alone ? [one.item] : [])),
      ),
    );
    return [...items].flatMap((base) =>
      this.targets.timesOf(base, breath).flatMap((id) => {
        const item = this.items.get(id);
        if (item === undefined) return [];
        const own = free.filter(
          (word) =>
            word.meanings.some((one) => one.is === "option" && one.alone && one.item === base) &&
            !free.some(
              (other) =>
                isLonger(other, word) &&
                other.meanings.every((one) => one.is === "option" && one.item !== base),
            ),
        );
        if (own.some((word) => [...used].some((other) => other.from <= word.from && other.to >= word.to)))
          return [];
        const answer = answerOf(
          item,
          this.saidOf({ ...breath, numbers: [] }, own, undefined, item),
          this.context.compiled,
          (word) => this.wordsOf(word),
        );
        const { places } = placesOf(item, undefined, breath.sides, true, this.state, [], {
          form: this.context.form,
          sets: this.sets,
        });
        return answer === undefined || answer.kind !== "choice"
          ? []
          : this.put(item, places, answer, breath, false, 1, []);
      }),
    );
  }

  private hasReading(keys: readonly string[]): boolean {
    return keys.some((key) => {
      const answer = this.remarks.get(key)?.answer;
      return (
        answer?.kind === "reading" ||
        (answer?.kind === "faults" && answer.found.some(({ extent }) => extent !== undefined))
      );
    });
  }

  /** Miles and cubic inches can only be one thing; pounds of pressure hot are oil's where idle or speed is named. */
  private aloneNumber(breath: Breath): readonly string[] {
    const number =
      breath.numbers.find(({ unit }) => unit !== undefined) ??
      this.milesShown(breath) ??
      this.heatShown(breath);
    if (
      number?.unit === undefined ||
      /\b(?:ago|since|after|every|per|rebuilt|year|last|ever|only)\b/u.test(breath.text)
    )
      return [];
    const { unit, value } = number;
    const byContext = (id: string): boolean =>
      this.context.compiled.lexicon.contexts[id]?.some((one) => hasWords(breath.text, one)) === true;
    const found =
      (unit === "mi" || unit === "km") && value >= 1000
        ? "identity.odometer"
        : unit === "in3" || unit === "cm3"
          ? "engine.displacement"
          : unit.startsWith("deg") &&
              value >= 60 &&
              value <= 250 &&
              /\b(?:settle|sit|stay|hold|run|temp)\b/u.test(breath.text)
            ? "road.temperature-after-20"
            : unit === "psi"
              ? (["engine.oil-pressure-2000", "engine.oil-pressure-idle"].find(byContext) ??
                (breath.sides.index === undefined ? undefined : "engine.compression"))
              : unit === "V"
                ? VOLTS.find(byContext)
                : unit === "inHg"
                  ? "engine.vacuum"
                  : undefined;
    const item = found === undefined ? undefined : this.items.get(found);
    if (item === undefined || (found === "identity.odometer" && this.remarks.has(keyOf(found, ""))))
      return [];
    const places = item.positions === undefined ? [""] : [`cylinder-${breath.sides.index ?? 1}`];
    const made = this.put(item, places, this.answered(item, breath), breath, false, 1, []);
    const subject = [...this.context.compiled.subjects.values()].find(({ items }) => items.includes(item.id));
    if (subject !== undefined)
      this.state.entries = [
        {
          subjects: [subject],
          sides: breath.sides,
          plural: false,
          none: false,
          from: breath.piece.from,
          to: breath.piece.to,
          confidence: 1,
          heard: [],
          context: "",
          within: [],
        },
      ];
    return made;
  }

  /** "Off the road since 2009." */
  private stood(breath: Breath, made: readonly string[]): readonly string[] {
    const item = this.items.get("identity.stood");
    const option = stoodFor(breath.text, breath.numbers, this.context.year);
    return item === undefined || option === undefined || made.length > 0
      ? []
      : this.put(item, [""], { kind: "choice", option }, breath, false, 1, []);
  }

  /** "Sixty-five psi at two grand" after the cylinders is of the oil. */
  private isOilPressure({ numbers, text }: Breath): boolean {
    const { contexts } = this.context.compiled.lexicon;
    return (
      numbers.some(({ unit }) => unit === "psi") &&
      this.state.reading?.item === "engine.compression" &&
      ["engine.oil-pressure-2000", "engine.oil-pressure-idle"].some(
        (id) => contexts[id]?.some((words) => hasWords(text, words)) === true,
      )
    );
  }

  /** "Runs at one eighty": without a unit it is of heat. */
  private heatShown({ numbers, text }: Breath): SaidNumber | undefined {
    const [number] = numbers;
    return number?.unit === undefined &&
      number !== undefined &&
      number.value >= 75 &&
      number.value <= 240 &&
      /\b(?:run|sit|settle|stay)(?: right| happily| steady)? (?:at|around|about|on)\b/u.test(text)
      ? { ...number, unit: "deg?" }
      : undefined;
  }

  /** "Ninety-one thousand four hundred showing": without a unit it is of miles. */
  private milesShown({ numbers, text }: Breath): SaidNumber | undefined {
    const [number] = numbers;
    return number !== undefined &&
      number.value >= 1000 &&
      /\b(?:showing|indicated|show|it (?:say|says|read|reads)|(?:she|it|he) (?:has|s|is|have) (?:only |just )?(?:done|covered))\b/u.test(
        text,
      )
      ? { ...number, unit: "mi" }
      : undefined;
  }

  private put(
    item: Item,
    places: readonly string[],
    answer: Answer | undefined,
    breath: Breath,
    inferred: boolean,
    confidence: number,
    heard: readonly string[],
    entry?: Entry,
  ): readonly string[] {
    if (answer === undefined) return [];
    const { firmness, about } = firmnessOf(this.tokens, breath.piece.from, breath.piece.to);
    if (
      item.answer === "choice" &&
      breath.words.every(({ negated }) => negated) &&
      breath.words.length > 0 &&
      places.some((place) => this.state.last.includes(keyOf(item.id, place))) &&
      !this.state.correcting
    )
      return [];
    if (item.id === "identity.originality" && this.isOnlyNotOriginal(item, places, answer, breath)) return [];
    const roughly =
      about &&
      (answer.kind === "reading" ||
        item.id === "wheels.tire-age" ||
        (answer.kind === "faults" && answer.found.some(({ extent }) => extent !== undefined)));
    const told = firmness === "second-hand" || this.state.toldForSentence;
    const hedged = firmness === "hedged" || roughly || this.state.hedgeNext;
    const span = this.spanOf(breath.piece, entry);
    return places.map((position) => {
      const key = keyOf(item.id, position);
      const remark: Remark = {
        item: item.id,
        position,
        answer,
        firmness: told ? "second-hand" : hedged ? "hedged" : "asserted",
        ...span,
        confidence: Number((CERTAIN * confidence * (inferred ? REMEMBERED_CONFIDENCE : 1)).toFixed(2)),
        inferred,
        heard,
      };
      if (item.id === "road.cold-start") this.state.startedAt = breath.piece.from;
      this.remarks.set(key, joined(this.remarks.get(key), remark, this.state.correcting, places.length));
      return key;
    });
  }

  /** "The right type, but not the original one" stays the right type. */
  private isOnlyNotOriginal(
    item: Item,
    places: readonly string[],
    answer: Answer,
    { words, text }: Breath,
  ): boolean {
    const isNotOriginal = words.every(({ negated }) => negated) || /\bnot (?:the )?original\b/u.test(text);
    if (answer.kind !== "choice" || answer.option !== "other-type" || !isNotOriginal) return false;
    return places.some((place) => {
      const before = this.remarks.get(keyOf(item.id, place))?.answer;
      return before?.kind === "choice" && before.option.startsWith("right-type");
    });
  }

  /** Words from where the part was named, in the same sentence, to what was said of it. */
  private spanOf(
    { from, to, join }: Piece,
    entry: Entry | undefined,
  ): Pick<Remark, "second" | "start" | "end" | "words"> {
    const isNear =
      entry !== undefined && join !== "start" && entry.from < from && from - entry.from <= MOST_SPAN;
    const start = this.tokens[isNear ? entry.from : from]?.start ?? 0;
    const end = this.tokens[to - 1]?.end ?? start;
    const { at, text } = this.spoken;
    return { second: Math.floor(secondAt(at, start)), start, end, words: text.slice(start, end) };
  }

  /** "I think the hood | was …": in talk without marks a hedge behind the part is of what was said before. */
  private isHedgedAhead({ entries: [first], piece }: Breath): boolean {
    if (this.spoken.punctuated || first === undefined) return true;
    return firmnessOf(this.tokens, piece.from, Math.max(piece.from, first.from)).firmness === "hedged";
  }

  /** A hedge without a claim of its own is meant for what was just said, or for what follows. */
  private firmnessLater(breath: Breath, made: readonly string[]): void {
    const { state } = this;
    const { firmness } = firmnessOf(this.tokens, breath.piece.from, breath.piece.to);
    state.hedgeNext = false;
    if (firmness === "asserted") return;
    if (firmness === "second-hand" && this.spoken.punctuated) state.toldForSentence = true;
    if (made.length > 0) return;
    // "The spare is here, it looks unused": a clause that says something hedges itself alone.
    const isOwn = breath.words.length > 0 || /^(?:look|appear|seem) (?:to|like)\b/u.test(breath.text);
    if (isOwn && breath.piece.join !== "start") return;
    if (state.sentenceClaims > 0 && this.spoken.punctuated) {
      for (const key of state.last) {
        const remark = this.remarks.get(key);
        if (remark !== undefined) this.remarks.set(key, { ...remark, firmness });
      }
    } else state.hedgeNext = firmness === "hedged" && this.isHedgedAhead(breath);
  }
}

/**
 * What a spoken walkaround claims, remark by remark: item, place, answer, how firmly, at which second, from which words. Greetings,
 * questions, prices, plans and other cars are no claims and are not in it. It is a draft: nothing of it is stated before somebody
 * confirms it.
 */
export const draftStatement = (spoken: SpokenText, context: DraftContext): Remark[] => {
  const tokens = repair(tokenize(spoken.text), context.compiled);
  const pieces = piecesOf(
    tokens,
    pruneMentions(tokens, mentionsIn(tokens, context.compiled)),
    turnsOf(spoken, tokens),
  );
  const drafting = new Drafting(spoken, tokens, context);
  const ends: number[] = pieces.map(() => 0);
  let end = tokens.length;
  for (let index = pieces.length - 1; index >= 0; index -= 1) {
    ends[index] = end;
    if (pieces[index]?.join === "start") end = pieces[index]?.from ?? end;
  }
  for (const [index, piece] of pieces.entries()) drafting.take(piece, ends[index] ?? tokens.length);
  return [...drafting.remarks.values()].toSorted((a, b) => a.start - b.start);
};
