import type { Subject } from "@evenhand/lexicon/lexicon-version-1";
import { numberAt } from "@evenhand/lexicon/number-words";
import type { RepairedToken } from "@evenhand/lexicon/repair";
import type { Item, PositionSet } from "@evenhand/shared/sheet";
import type { Piece } from "../pieces/index.ts";
import { placesOf } from "../places-of/index.ts";
import type { SpokenText } from "../spoken-text/index.ts";
import type { Breath } from "./breath.ts";
import type { DraftContext } from "./context.ts";
import type { Entry } from "./entries.ts";

/** Items whose words are listed at another: the same smoke, start and leak at another time. */
export const SAME_WORDS: Readonly<Record<string, string>> = {
  "engine.smoke-cold": "engine.smoke-warm",
  "driveline.leaks-after": "driveline.leaks-before",
  "road.hot-restart": "road.cold-start",
};

/** What a clock shows from here on is miles. */
const LEAST_MILES = 1000;

/** "Three seventy-three gears", "3.55 gears". */
const isRatio = (value: number, subject: string): boolean =>
  (value > 2 && value < 7.5 && !Number.isInteger(value)) ||
  (subject === "axle" && value > 200 && value < 750);

const isYear = (value: number, now: number): boolean => value >= 1900 && value <= now;

/** Microns below which nothing is paint. */
const LEAST_PAINT = 50;

/** Tokens after a cold start within which smoke is that of the start. */
const JUST_STARTED = 45;

/** Another time than that of a cold start. */
const WHEN_WARM =
  /\b(?:warm|hot|overrun|no|not|none|get on it|hard|load|accelerat\w*|hill|highway|road|driving|drive|at idle|all the time|clear\w*|clean|away)\b/u;

/** Tokens after a trunk within which a floor is the trunk's. */
const IN_TRUNK = 30;

/** Words past those that choose an item within which the next number is looked for. */
const MOST_TO_NUMBER = 5;

/** What a word means in a list of gauges. */
const GAUGES: Readonly<Record<string, string>> = {
  oil: "oil-gauge",
  "running-temperature": "temperature-gauge",
  "leak-fuel": "fuel-gauge",
  volts: "charge-gauge",
};

/** "…, hot or cold", "… when it is cold": only when, right behind what was said. */
const TIMES_BEHIND =
  /^(?:(?:,|or|and|nor|not|neither|either|when|whether|it|is|s|on|at|from|first|thing|the|an?|engine|start|up|even|in|morning|after|over ?run|once) ?)*(?:(?:cold|hot|warm)(?: start| up)?(?: ?(?:,|or|and|nor|not|when|it|is)? ?)*)+/u;

export const hasWords = (text: string, words: string): boolean => ` ${text} `.includes(` ${words} `);

/** What is said, what it is said by, and how far the talk has come. */
export type Talk = {
  readonly context: DraftContext;
  readonly spoken: SpokenText;
  readonly tokens: readonly RepairedToken[];
  readonly items: ReadonlyMap<string, Item>;
  readonly sets: ReadonlyMap<string, PositionSet>;
  /** Whether a list of gauges is gone through, and the side spoken of last. */
  readonly inView: () => {
    readonly gauges: boolean;
    readonly side: string | undefined;
    readonly end: string | undefined;
    readonly startedAt: number;
    readonly trunkAt: number;
    readonly paint: boolean;
    readonly reading: { readonly item: string } | undefined;
    readonly lastAt: number;
  };
  /** Who says bonnet calls a soft top a hood. */
  readonly hoodIsTop: boolean;
  readonly isAnswered: (item: string, position: string) => boolean;
  /** The item was what was answered last. */
  readonly wasLast: (item: string) => boolean;
};

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
      const subject = this.refined(named, breath, entry);
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
        const places = entry.sides.other
          ? found.places.filter(
              (place) => !othersOf(subject, id).some((one) => this.talk.isAnswered(one, place)),
            )
          : kept;
        return [{ item, subject, ...found, places }];
      });
    });
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

  /** The words of a sentence before a piece. */
  private before({ from }: Piece): string {
    const words: string[] = [];
    for (let at = from - 1; at >= Math.max(0, from - 20); at -= 1) {
      const stem = this.talk.tokens[at]?.stem ?? "";
      if (/^[.?!;]$/u.test(stem)) break;
      words.push(stem);
    }
    return words.join(" ");
  }

  private refined(subject: Subject, breath: Breath, entry: Entry): Subject {
    const { compiled } = this.talk.context;
    const isHood = this.talk.tokens.slice(entry.from, entry.to).some(({ stem }) => stem === "hood");
    if (subject.id === "hood" && this.talk.hoodIsTop && isHood)
      return compiled.subjects.get("top") ?? subject;
    const { body } = this.talk.context.form;
    if (
      subject.id === "rear-window" &&
      /^(?:convertible|roadster)$/u.test(body) &&
      !/\bglass\b/u.test(`${entry.context} ${breath.text}`)
    )
      return compiled.subjects.get("top-window") ?? subject;
    // "Right rear wing" is the quarter.
    if (subject.id === "fender" && entry.sides.adds.includes("rear"))
      return compiled.subjects.get("quarter") ?? subject;
    const isInTrunk = this.talk.inView().trunkAt + IN_TRUNK > breath.piece.from;
    if (
      subject.id === "floors" &&
      isInTrunk &&
      !entry.plural &&
      entry.sides.adds.every((add) => add === "left" || add === "right")
    )
      return compiled.subjects.get("trunk-floor") ?? subject;
    if (subject.id === "mat" && isInTrunk) return compiled.subjects.get("trunk-lining") ?? subject;
    const isLastFloor = breath.entries.length === 0 && entry.from <= this.talk.inView().lastAt;
    if (subject.id === "floors" && isLastFloor && this.talk.wasLast("trunk.floor"))
      return compiled.subjects.get("trunk-floor") ?? subject;
    const figure = breath.numbers.find(({ unit }) => unit === undefined)?.value ?? 0;
    if (
      /^(?:clock|speedometer)$/u.test(subject.id) &&
      figure >= LEAST_MILES &&
      !isYear(figure, this.talk.context.year)
    )
      return compiled.subjects.get("odometer") ?? subject;
    if (/^(?:shifts|axle)$/u.test(subject.id) && isRatio(figure, subject.id))
      return compiled.subjects.get("axle-ratio") ?? subject;
    const gauge = GAUGES[subject.id];
    if (this.talk.inView().gauges && gauge !== undefined) return compiled.subjects.get(gauge) ?? subject;
    const text = subject.id === "hoses" ? `${this.before(breath.piece)} ${breath.text}` : breath.text;
    const found = compiled.lexicon.refinements.find(
      ({ from, words }) => from === subject.id && words.some((word) => hasWords(text, word)),
    );
    const better = compiled.subjects.get(found?.to ?? this.keptBy(subject, breath, entry) ?? "");
    // A car without such a part has the one that was named.
    return better?.items.some((id) => this.talk.items.has(id)) === true ? better : subject;
  }

  /** "The door's rusty at the bottom, you can poke a finger through it": what was spoken of last still is. */
  private keptBy({ id }: Subject, { entries, text }: Breath, { from: named }: Entry): string | undefined {
    const { compiled } = this.talk.context;
    if (entries.length > 0 || named > this.talk.inView().lastAt || !/\b(?:it|that|there)\b/u.test(text))
      return undefined;
    const own = compiled.subjects.get(id)?.items[0];
    return compiled.lexicon.refinements.find(({ from, to }) => {
      const [item] = compiled.subjects.get(to)?.items ?? [];
      return from === id && item !== own && this.talk.wasLast(item ?? "");
    })?.to;
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
    const others = Object.entries(SAME_WORDS).flatMap(([item, same]) => (same === base ? [item] : []));
    if (others.length === 0) return [base];
    const subject: Subject = { id: "", items: [base, ...others], words: [] };
    return this.chosen(subject, breath, "");
  }
}
