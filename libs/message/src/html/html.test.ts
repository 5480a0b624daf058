import { expect, test } from "vitest";
import { html } from "./index.ts";

test("what is put in is escaped, pieces are not escaped twice, lists are joined", () => {
  const item = html`<li>${"<b>'R&D'</b>"}</li>`;
  expect(item.text).toBe("<li>&lt;b&gt;&#39;R&amp;D&#39;&lt;/b&gt;</li>");
  expect(html`<i title="${'a "b"'}">${[item, item]}${null}${3}</i>`.text).toBe(
    `<i title="a &quot;b&quot;">${item.text}${item.text}3</i>`,
  );
});
