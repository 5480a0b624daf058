import { html, type Markup } from "@evenhand/message/html";
import type { Block, Run } from "@evenhand/paper/blocks";

type BlockOf<K extends Block["kind"]> = Extract<Block, { kind: K }>;

const run = ({ text, tone = "plain" }: Run): Markup => {
  if (tone === "plain") return html`${text}`;
  if (tone === "struck") return html`<s>${text}</s>`;
  return html`<span class="${tone}">${text}</span>`;
};

/** A space between runs, as between words. */
const runs = (all: readonly Run[]): Markup => html`${all.map((each) => html`${run(each)} `)}`;

const item = ({ label, runs: said, under = [] }: BlockOf<"item">): Markup =>
  html`<div class="item">
    <b>${label}</b>
    <div>
      <p>${runs(said)}</p>
      ${under.length > 0 ? html`<p>${runs(under)}</p>` : null}
    </div>
  </div>`;

const figures = ({ figures: all }: BlockOf<"figures">): Markup =>
  html`<dl>
    ${all.map(
      ({ name, value, note }) =>
        html`<div>
          <dt>${name}</dt>
          <dd><strong>${value}</strong><span>${note}</span></dd>
        </div>`,
    )}
  </dl>`;

/** Each kind of block as markup; `null` for a table's, which no page that is sent ahead holds. */
const drawn = (block: Block): Markup | null => {
  switch (block.kind) {
    case "title":
      return html`<h1>${block.text}</h1>`;
    case "heading":
      return html`<h2>${block.text}</h2>`;
    case "text":
      return html`<p>${runs(block.runs)}</p>`;
    case "item":
      return item(block);
    case "figures":
      return figures(block);
    case "facing-head":
    case "facing-part":
    case "facing":
      return null;
  }
};

/**
 * Blocks of paper as markup, each text of it escaped. How it looks is for the web application's style.
 *
 * @example markupOf([{ kind: "title", text: "R&D" }]).text // "<h1>R&amp;D</h1>"
 */
export const markupOf = (blocks: readonly Block[]): Markup => html`${blocks.map(drawn)}`;
