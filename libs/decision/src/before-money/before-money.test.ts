import { BEFORE_MONEY_LINES, type BeforeMoneyAnswer } from "@evenhand/shared/before-money";
import { expect, test } from "vitest";
import { beforeMoneyLines, type MatterAtItems, standing } from "./index.ts";

const today = "2027-05-04";
const matter = (id: string, item: string, severity: MatterAtItems["severity"] = "halt"): MatterAtItems => ({
  id,
  severity,
  headline: `${id} is open`,
  found: "",
  decides: "",
  items: [item],
});
const lien = matter("lien", "identity.lien");
const title = matter("title", "identity.title-holder");
const theft = matter("theft-import", "identity.theft");
const done = (words: string, ...halts: MatterAtItems[]): BeforeMoneyAnswer => ({
  say: "done",
  words,
  by: "Bea Marsh",
  on: "2027-05-03",
  halts: halts.map(({ id, headline }) => ({ id, headline })),
});
const payee = { name: "Ridge Lane Motors", numberFrom: "known-before" } as const;
const all = {
  title: done("The title lay before me, both sides.", title),
  brand: done("No brand stands on the title."),
  lien: done("The bank's letter of release is here.", lien),
  numbers: done("Plate, engine, title and invoice agree."),
  border: { ...done("The car stays in the country."), say: "not-due" as const },
  payee: { ...done("I called the number on their old invoice."), payee },
  law: done("My lawyer has read the contract."),
};
const openAt = (matters: readonly MatterAtItems[], answers: object, line: string) =>
  standing(beforeMoneyLines, matters, { ...all, ...answers }, today).lines.find((one) => one.line === line)
    ?.open;

test("every line is data, once, in the order it is read", () => {
  expect(beforeMoneyLines.map(({ line }) => line)).toEqual(BEFORE_MONEY_LINES);
});

test("nothing said: what stops the money stops it; without such it is open; nothing compared is never all answered", () => {
  expect(standing(beforeMoneyLines, [lien], {}, today).state).toBe("stopped");
  expect(standing(beforeMoneyLines, [], {}, today).state).toBe("open");
  expect(standing(beforeMoneyLines, [], all, today).state).toBe("answered");
  expect(standing(beforeMoneyLines, null, all, today).state).toBe("open");
});

test("one line that stops the money and stands open stops it, whatever else is said", () => {
  const { lien: _lien, ...others } = all;
  expect(standing(beforeMoneyLines, [lien, title], others, today).state).toBe("stopped");
  expect(standing(beforeMoneyLines, [lien, title], all, today).state).toBe("answered");
});

test("what stops the money is only ended as done, in words of its own, for what was read", () => {
  const words = all.title.words;
  expect(openAt([lien], { lien: { ...all.lien, say: "not-due" } }, "lien")).toBe("halt-not-done");
  expect(openAt([lien], { lien: { ...all.lien, words: "paid" } }, "lien")).toBe("no-words");
  expect(openAt([title, lien], { lien: { ...all.lien, words: ` ${words.toUpperCase()}` } }, "lien")).toBe(
    "same-words",
  );
  expect(openAt([{ ...lien, headline: "A second lien" }], {}, "lien")).toBe("new-halt");
  expect(openAt([lien], {}, "lien")).toBeNull();
});

test("what stops the money and no line names stands by itself; what only bears on the price does not", () => {
  expect(openAt([theft], {}, "other")).toBe("not-answered");
  expect(openAt([theft], { other: { ...done("Checked with them.", theft), say: "not-due" } }, "other")).toBe(
    "always-due",
  );
  expect(openAt([matter("engine", "engine.smoke", "worth")], {}, "other")).toBeUndefined();
  const both = { ...title, items: ["identity.title-holder", "identity.theft"] };
  expect(openAt([both], {}, "other")).toBe("not-answered");
});

test.each([
  [{ payee: undefined }, "no-payee"],
  [{ payee: { ...payee, name: " " } }, "no-payee"],
  [{ payee: { ...payee, numberFrom: null } }, "no-call"],
  [{ payee: { ...payee, numberFrom: "same-mail" } }, "number-of-the-mail"],
  [{ say: "not-due" }, "always-due"],
  [{ by: " " }, "nobody"],
  [{ on: null }, "no-day"],
  [{ on: "2027-05-05" }, "day-to-come"],
  [{ on: today }, null],
])("who receives the money, with %o: %s", (more, open) => {
  expect(openAt([], { payee: { ...all.payee, ...more } }, "payee")).toBe(open);
});
