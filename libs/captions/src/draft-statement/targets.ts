import type { Subject } from "@evenhand/lexicon/lexicon-version-1";
import { numberAt } from "@evenhand/lexicon/number-words";
import type { Item } from "@evenhand/shared/sheet";
import { mirrorImage } from "@evenhand/sheet/call";
import type { Piece } from "../pieces/index.ts";
import { placesOf } from "../places-of/index.ts";
import type { Breath } from "./breath.ts";
import type { Entry } from "./entries.ts";
import { refinedSubject } from "./refined-subject.ts";
import { hasWords } from "./talk.ts";
import type { Talk } from "./talk.ts";
import { isOneOther } from "./the-other.ts";

/** Microns below which nothing is paint. */
const LEAST_PAINT = 50;

/** Tokens after a cold start within which smoke is that of the start. */
const JUST_STARTED = 45;

/** Another time than that of a cold start. */
const WHEN_WARM =
  /\b(?:warm|hot|overrun|no|not|none|get on it|hard|load|accelerat\w*|hill|highway|road|driving|drive|at idle|all the time|clear\w*|clean|away)\b/u;

/** Words past those that choose an item within which the next number is looked for. */
const MOST_TO_NUMBER = 5;

/** "…, hot or cold", "… when it is cold": only when, right behind what was said. */
const TIMES_BEHIND =
  /^(?:(?:,|or|and|nor|not|neither|either|when|whether|it|is|s|on|at|from|first|thing|the|an?|engine|start|up|even|in|morning|after|over ?run|once) ?)*(?:(?:cold|hot|warm)(?: start| up)?(?: ?(?:,|or|and|nor|not|when|it|is)? ?)*)+/u;

export type Target = {
  readonly item: Item;
  readonly places: readonly string[];
  readonly inferred: boolean;
  readonly subject: Subject;
};

/** "The rest of the seats": those of which nothing was said; of paint, those whose paint nothing was said of. */
const othersOf = (subject: Subject, id: string): readonly string[] =>
  /seat|tires|wheels/u.test(subject.id)
    ? subject.items
    : id === "body.faults" && subject.items.includes("doors.bottoms")
      ? [id, "doors.bottoms"]
      : [id];

/** Which items and places of the sheet a part's name means, by the words beside it. */
export class Targets {
  private readonly talk: Talk;

  constructor(talk: Talk) {
    this.talk = talk;
  }

  /** Items and places an entry may mean in this breath, by the words beside it. */
  of(entry: Entry, breath: Breath): Target[] {
    return entry.subjects.flatMap((named) => {
      const subject = refinedSubject(this.talk, named, breath, entry);
      const working = this.askedWhetherWorks(subject, entry, breath);
      return this.chosen(subject, breath, entry.context).flatMap((id) => {
        const item = this.talk.items.get(id);
        if (working.length > 0 && !working.includes(id)) return [];
        if (item === undefined || !this.isMeant(id, subject, breath, entry)) return [];
        const found = placesOf(item, subject, entry.sides, entry.plural, this.talk.inView(), entry.within, {
          form: this.talk.context.form,
          sets: this.talk.sets,
        });
        const kept = this.ofBrakes(subject, entry, found.places);
        const places = entry.sides.other ? this.left(found.places, subject, id, breath) : kept;
        return [{ item, subject, ...found, places }];
      });
    });
  }

  /** Of places, those of which nothing was said yet; of one other, the one across from what was said. */
  private left(places: readonly string[], subject: Subject, id: string, breath: Breath): readonly string[] {
    const isSaid = (place: string): boolean =>
      othersOf(subject, id).some((one) => this.talk.isAnswered(one, place));
    const rest = places.filter((place) => !isSaid(place));
    const isOne = isOneOther(this.talk.tokens, breath.piece);
    return isOne && rest.length > 1 ? rest.filter((place) => isSaid(mirrorImage(place) ?? place)) : rest;
  }

  /** Pads are of discs and shoes of drums. */
  private ofBrakes({ id }: Subject, entry: Entry, places: readonly string[]): readonly string[] {
    if (!id.endsWith("pads")) return places;
    const { brakes } = this.talk.context.form;
    const named = this.talk.tokens.slice(entry.from, entry.to).map(({ stem }) => stem);
    const kind = named.includes("pad") ? "disc" : named.includes("shoe") ? "drum" : undefined;
    const kept = places.filter(
      (place) => kind === undefined || brakes?.[place.endsWith("front") ? "front" : "rear"] === kind,
    );
    return kept.length > 0 ? kept : places;
  }

  /** "Doors close all right?" "The passenger's is perfect": what is said is whether it works, unless a fault is named. */
  private askedWhetherWorks({ items }: Subject, entry: Entry, { piece, words }: Breath): readonly string[] {
    const { conditions, onlyWith } = this.talk.context.compiled.lexicon;
    const namesFault = words.some(({ meanings }) =>
      meanings.some(
        (one) =>
          one.is === "condition" &&
          (conditions[one.condition]?.senses ?? []).some((sense) => "fault" in sense),
      ),
    );
    if (entry.asked !== true || entry.from >= piece.from || namesFault) return [];
    return items.filter(
      (id) =>
        this.talk.items.get(id)?.answer === "working" &&
        onlyWith[id]?.some((one) => hasWords(entry.context, one)) === true,
    );
  }

  /** What is seldom meant by a part's name needs a word of its own beside it. */
  private isMeant(id: string, subject: Subject, breath: Breath, entry: Entry): boolean {
    const words = this.talk.context.compiled.lexicon.onlyWith[id];
    return (
      words === undefined ||
      subject.items[0] === id ||
      words.some((one) => hasWords(breath.text, one) || hasWords(breath.text, `${one}s`)) ||
      (entry.asked === true &&
        this.talk.items.get(id)?.answer === "working" &&
        words.some((one) => hasWords(entry.context, one))) ||
      this.talk.wasLast(id) ||
      (id === "body.paint-thickness" && this.readsPaint(breath))
    );
  }

  /** "Paint: hood one ten": figures of panels where paint is measured. */
  private readsPaint({ numbers, words }: Breath): boolean {
    const { paint, reading } = this.talk.inView();
    const isBare = numbers.some(({ value, unit }) => unit === undefined && value >= LEAST_PAINT);
    return isBare && words.length === 0 && (paint || reading?.item === "body.paint-thickness");
  }

  /** Of items that only the words beside them tell apart, those whose words are there; else the first. */
  private chosen(subject: Subject, breath: Breath, context: string): readonly string[] {
    const { contexts } = this.talk.context.compiled.lexicon;
    const isCold = this.talk.inView().startedAt + JUST_STARTED > breath.piece.from;
    if (isCold && subject.items.includes("engine.smoke-cold") && !WHEN_WARM.test(breath.text))
      return ["engine.smoke-cold"];
    const told = subject.items.filter((id) => contexts[id] !== undefined);
    if (told.length === 0 || subject.items.length === 1) return subject.items;
    const rest = this.restOf(breath.piece, breath.numbers.length > 0);
    const isOfTimes = told.some((id) =>
      this.talk.context.compiled.lexicon.answering.saidTogether.includes(id),
    );
    const sentence = isOfTimes
      ? /^(?:when|on|at|first|from|till|until)\b/u.test(rest)
        ? rest
        : (TIMES_BEHIND.exec(rest)?.[0] ?? "")
      : rest;
    const by = (text: string): string[] =>
      told.filter((id) => contexts[id]?.some((words) => hasWords(text, words)) === true);
    const here = by(breath.text);
    const named = here.length > 0 ? here : by(context);
    const chosen = named.length > 0 ? named : by(sentence);
    const others = subject.items.filter(
      (id) => contexts[id] === undefined || (chosen.length === 0 && id === told[0]),
    );
    return [...chosen, ...others];
  }

  /** The words after a piece to the end of its sentence; of talk without marks a few. */
  private restOf({ to }: Piece, hasNumber: boolean): string {
    const words: string[] = [];
    const most = this.talk.spoken.punctuated ? 20 : 5;
    const last = Math.min(this.talk.tokens.length, to + most + (hasNumber ? MOST_TO_NUMBER : 0));
    for (let at = to; at < last; at += 1) {
      const stem = this.talk.tokens[at]?.stem ?? "";
      if (/^[.?!;]$/u.test(stem)) break;
      // "Twelve five, and with it running fourteen": what leads to another number is said of that one.
      if (hasNumber && numberAt(this.talk.tokens, at) !== undefined) return "";
      if (at < to + most) words.push(stem);
    }
    return words.join(" ");
  }

  /** Smoke cold or warm, a start cold or hot: by the words beside it. */
  timesOf(base: string, breath: Breath): readonly string[] {
    const others = Object.entries(this.talk.context.compiled.lexicon.answering.sameWords).flatMap(
      ([item, same]) => (same === base ? [item] : []),
    );
    if (others.length === 0) return [base];
    const subject: Subject = { id: "", items: [base, ...others], words: [] };
    return this.chosen(subject, breath, "");
  }
}
