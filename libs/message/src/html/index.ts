/** Text that is already safe to stand in a page. */
export class Markup {
  readonly text: string;
  constructor(text: string) {
    this.text = text;
  }
}

type Part = Markup | string | number | null | readonly Part[];

const entities: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};

const escape = (text: string): string =>
  text.replaceAll(/[&<>"']/g, (character) => entities[character] ?? character);

const render = (part: Part): string => {
  if (part instanceof Markup) return part.text;
  if (part === null) return "";
  if (typeof part === "string" || typeof part === "number") return escape(String(part));
  return part.map(render).join("");
};

/**
 * A piece of a page. Everything put in is escaped unless it is itself a piece; lists are joined; `null` is nothing.
 *
 * @example html`<b>${"R&D"}</b>`.text // "<b>R&amp;D</b>"
 */
export const html = (strings: TemplateStringsArray, ...parts: readonly Part[]): Markup =>
  new Markup(strings.reduce((text, string, index) => text + render(parts[index - 1] ?? null) + string));
