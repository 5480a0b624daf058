import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { html, type Markup } from "@evenhand/message/html";
import { Inject, Injectable } from "@nestjs/common";
import { CONFIG, type Config } from "../config/index.ts";

const TITLE = "<title>Evenhand</title>";
const ROOT = '<div id="root">';

/** The page every address of the web application is answered with, and what can be said in it before the application is there. */
@Injectable()
export class ShellPage {
  private readonly parts: readonly [string, string, string] | null;

  constructor(@Inject(CONFIG) config: Config) {
    const file = join(config.http.siteFolder, "index.html");
    this.parts = existsSync(file) ? partsOf(readFileSync(file, "utf8")) : null;
  }

  /** Whether there is such a page, with places for a title and the application. */
  get isThere(): boolean {
    return this.parts !== null;
  }

  /**
   * The page with something to read ahead of the application, which takes it away once it shows the same itself.
   *
   * @returns `null` where there is no such page
   */
  with({ title, first }: { readonly title: string; readonly first: Markup }): string | null {
    if (this.parts === null) return null;
    const [head, body, rest] = this.parts;
    const ahead = html`<div id="first">
      <header>Evenhand</header>
      <main>${first}</main>
    </div>`;
    return `${head}${html`<title>${title} · Evenhand</title>`.text}${body}${ahead.text}${rest}`;
  }
}

function partsOf(page: string): readonly [string, string, string] | null {
  const [head, after] = page.split(TITLE);
  if (head === undefined || after === undefined) return null;
  const at = after.indexOf(ROOT);
  return at < 0 ? null : [head, after.slice(0, at), after.slice(at)];
}
