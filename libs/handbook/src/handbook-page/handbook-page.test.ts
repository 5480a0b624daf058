import { describe, expect, it } from "vitest";
import { limits } from "../limits/index.ts";
import { rules } from "../rules/index.ts";
import { handbookPage } from "./index.ts";

describe("handbookPage", () => {
  it("is what stands in docs/handbook.md", async () => {
    await expect(handbookPage()).toMatchFileSnapshot("../../../../docs/handbook.md");
  });

  it("renders every rule, and every limit with its source", () => {
    const page = handbookPage();
    for (const { title, formula, source } of rules) {
      for (const words of [`## ${title}`, formula, `Source: ${source.text}.`]) expect(page).toContain(words);
    }
    for (const { words, source } of Object.values(limits))
      expect(page).toMatch(
        new RegExp(`${words.replaceAll(/[.()]/g, String.raw`\$&`)}.*${source.text.slice(0, 6)}`),
      );
  });
});
