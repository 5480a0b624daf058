import type { Answer } from "@evenhand/shared/answer";
import { Finding } from "@evenhand/shared/finding";
import type { Item } from "@evenhand/shared/sheet";
import { callOf } from "@evenhand/sheet/call";
import { presenceWords } from "@evenhand/sheet/presence-words";
import type { Locator, Page } from "playwright-core";
import {
  likePlace,
  likeStop,
  openLines,
  workingTogether,
} from "../../../apps/web/src/features/reports/walk.ts";
import type { WalkStage, WalkStop } from "../../../apps/web/src/features/reports/walk.ts";
import { standsAlone } from "../../../apps/web/src/entities/answer/several-choices.ts";
import { typedField } from "../../../apps/web/src/entities/answer/typed-field.ts";
import type { SheetIndex } from "../../../apps/web/src/entities/sheet/sheet-index.ts";
import type { Place } from "../../../apps/web/src/entities/sheet/places.ts";

const houseGrades: Readonly<Record<string, string>> = {
  "as-new": "as new",
  "light-wear": "light wear",
  "even-wear": "even wear",
  "heavy-wear": "heavy wear",
  spent: "spent",
};
const workingWords: Readonly<Record<string, string>> = {
  yes: "works",
  no: "does not work",
  intermittent: "works now and then",
  "not-known": "not known",
};

/** What two answers say, whatever the order of their keys. */
export const same = (a: Answer | undefined, b: Answer | undefined): boolean =>
  a !== undefined && b !== undefined && JSON.stringify(sorted(a)) === JSON.stringify(sorted(b));

const sorted = (value: unknown): unknown => {
  if (Array.isArray(value)) return value.map(sorted);
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .toSorted(([a], [b]) => (a < b ? -1 : 1))
      .map(([key, one]) => [key, sorted(one)]),
  );
};

const askedOf = ({ reading }: Item): number =>
  reading === undefined ? 1 : reading.ask.readings * reading.ask.spots;

const wordsOf = (item: Item, answer: Answer): readonly string[] => {
  switch (answer.kind) {
    case "working":
      return [workingWords[answer.value] ?? answer.value];
    case "presence":
      return [presenceWords(item, answer.value) ?? answer.value.replace("-", " ")];
    case "grade":
      return [houseGrades[String(answer.value)] ?? String(answer.value)];
    case "choice":
      return [answer.option, ...(answer.also ?? [])].map(
        (id) => item.choice?.options.find((option) => option.id === id)?.words.american ?? id,
      );
    default:
      return [];
  }
};

/**
 * Fills lines as they open, one after the other, with what a car's inspection found. It counts as one press: each tap, each choice
 * from a list (a tap to open it and a tap to choose), and each number or code typed with the enter key that ends it. One press for
 * several lines is taken only where it says of every one of them what was found.
 */
export class Walker {
  presses = 0;
  readonly said = new Map<string, { finding: Finding }>();

  constructor(
    readonly page: Page,
    readonly index: SheetIndex,
    readonly wanted: ReadonlyMap<string, Answer>,
  ) {}

  async tap(target: Locator): Promise<void> {
    this.presses += 1;
    await target.tap();
  }

  /** Typed into the field that has the focus: a line that opens puts it in its first one. */
  private async type(text: string, then?: "Enter"): Promise<void> {
    this.presses += 1;
    await this.page.waitForFunction(
      (typed) => document.activeElement?.matches(`li[data-open="true"] ${typed}`) === true,
      typedField,
    );
    await this.page.keyboard.type(text);
    if (then) await this.page.keyboard.press(then);
  }

  private async choose(list: Locator, value: string): Promise<void> {
    this.presses += 2;
    await list.selectOption(value);
  }

  note(places: readonly Place[], answerOf: (place: Place) => Answer | undefined): void {
    for (const place of places) {
      const answer = answerOf(place);
      if (answer === undefined) throw new Error(`nothing was said of ${place.key}`);
      const finding = Finding.parse({ item: place.item.id, position: place.position, answer });
      this.said.set(place.key, { finding });
    }
  }

  private found({ key }: Place): Answer {
    const answer = this.wanted.get(key);
    if (answer === undefined) throw new Error(`the inspection says nothing of ${key}`);
    return answer;
  }

  /** What of one press for several lines is true here. */
  private async together(stage: WalkStage, stop: WalkStop, place: Place, line: Locator): Promise<boolean> {
    const at = this.page.locator(`section[aria-labelledby="stop-${stop.id}"]`);
    const working = workingTogether(stop.lines, this.said);
    const works = { kind: "working", value: "yes" } as const;
    if (working.length > 0 && working.every((one) => same(this.found(one), works))) {
      await this.tap(at.getByRole("button", { name: /^(Both|All \d+) of these work$/ }));
      this.note(working, () => works);
      return true;
    }
    const stopLike = likeStop(stop.lines, stage.lines, this.said);
    if (stopLike?.said.every((one) => same(this.found(one.place), one.answer)) === true) {
      await this.tap(at.getByRole("button", { name: /lines same as/ }));
      for (const one of stopLike.said) this.note([one.place], () => one.answer);
      return true;
    }
    const like = likePlace(place, stage.lines, this.said);
    const answer = like && this.said.get(like.key)?.finding.answer;
    if (answer === undefined || !same(this.found(place), answer)) return false;
    const others = openLines(
      stage.lines.filter(({ item, key }) => item.id === place.item.id && key !== place.key),
      this.said,
    );
    const all = others.length > 0 && others.every((one) => same(this.found(one), answer));
    await this.tap(line.getByRole("button", { name: all ? /^(Both|All \d+) still open:/ : /^Same as/ }));
    this.note(all ? [place, ...others] : [place], () => answer);
    return true;
  }

  private async answer(line: Locator, { item }: Place, answer: Answer): Promise<void> {
    switch (answer.kind) {
      case "not-seen":
        await this.tap(line.getByRole("button", { name: "Not seen" }));
        return this.tap(line.getByText(answer.reason.replaceAll("-", " "), { exact: true }));
      case "not-fitted":
        return this.tap(line.getByRole("button", { name: "Not fitted" }));
      case "code":
        return this.type(answer.text, "Enter");
      case "reading":
        return this.readings(line, item, answer);
      case "faults":
        return this.faults(line, answer);
      case "color":
        throw new Error("no first look measures a color");
      default:
        for (const words of wordsOf(item, answer))
          await this.tap(line.locator("fieldset label").getByText(words, { exact: true }));
    }
  }

  private async readings(
    line: Locator,
    item: Item,
    answer: Extract<Answer, { kind: "reading" }>,
  ): Promise<void> {
    const unit = line.getByLabel("Unit", { exact: true });
    if ((await unit.inputValue()) !== answer.unit) {
      await this.choose(unit, answer.unit);
      await line.locator(typedField).first().focus();
      this.presses += 1;
    }
    const asked = askedOf(item);
    for (const [at, { value }] of answer.values.entries()) {
      const isLast = at === answer.values.length - 1;
      if (at >= asked) {
        await this.tap(line.getByRole("button", { name: "One more reading" }));
        await this.tap(line.locator(typedField).nth(at));
      }
      const goesOn = isLast ? at + 1 >= asked : at + 1 < asked;
      await this.type(String(value), goesOn ? "Enter" : undefined);
    }
  }

  private async faults(line: Locator, answer: Extract<Answer, { kind: "faults" }>): Promise<void> {
    if (answer.found.length === 0 && answer.denied === "all")
      return this.tap(line.getByRole("button", { name: "No faults at all" }));
    for (const [at, { kind, extent, spot }] of answer.found.entries()) {
      const words = this.index.faultKinds.get(kind)?.words.american ?? kind;
      await this.tap(line.getByRole("button", { name: words, exact: true }));
      if (extent) await this.type(String(extent.value));
      if (spot !== undefined) await this.choose(line.locator("ul > li").nth(at).getByLabel("Where"), spot);
    }
  }

  /** What is bad, or may have more to it, stays open for a word and is left with a press of its own. */
  private stays({ item, position }: Place, answer: Answer): boolean {
    if (answer.kind === "reading") return answer.values.length < askedOf(item);
    if (answer.kind === "code" || answer.kind === "not-seen" || answer.kind === "not-fitted") return false;
    if (answer.kind === "faults") return answer.found.length > 0;
    const call = callOf(answer, item, { position, faultKinds: this.index.faultKinds });
    const alone =
      answer.kind !== "choice" || item.choice?.several !== true || standsAlone(item, answer.option);
    return !alone || (call !== "good" && call !== "no-yardstick");
  }

  /** One line that is open, and on to the next. */
  async step(stage: WalkStage, stop: WalkStop, place: Place): Promise<void> {
    const line = this.page.locator(`[id="place-${place.key}"]`);
    if (!(await this.together(stage, stop, place, line))) {
      const answer = this.found(place);
      await this.answer(line, place, answer);
      this.note([place], () => answer);
      if (this.stays(place, answer)) await this.tap(line.getByRole("button", { name: "Done, next" }));
    }
    await this.page.locator(`[id="place-${place.key}"][data-open="true"]`).waitFor({ state: "detached" });
  }
}
