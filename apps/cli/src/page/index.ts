import { listed } from "@evenhand/message/listed";
import { say } from "@evenhand/wording/say";
import { isFoundBad } from "@evenhand/comparison/found-bad";
import { outcomeWords, severityWords, standingWords } from "@evenhand/comparison/sentence";
import { Outcome, outcomeSign } from "@evenhand/shared/outcome";
import { ruleTitle } from "../view/cross-checks.ts";
import { countedItem, needsSentence } from "../view/index.ts";
import type { Row, SectionView, SideView, View } from "../view/index.ts";
import { catalog } from "../words/catalog.ts";
import { formatShare } from "../words/quantity.ts";
import type { Answer, AnswerCost } from "@evenhand/shared/page-one";
import { answerMarkup } from "../answer/page.ts";
import { html, Markup } from "@evenhand/message/html";
import { intervalPicture } from "./interval-picture.ts";
import { styleSheet } from "./style.ts";

const style = new Markup(styleSheet);

const side = ({ text, silent, firmness, note }: SideView): Markup =>
  html` <div class="side${silent ? " silent" : ""}">
    ${text}${firmness === null ? null : html`<i class="firm">${firmness}</i>`}
    ${note === null ? null : html`<p><small>“${note}”</small></p>`}
  </div>`;

const picture = ({ entry }: Row): Markup | null =>
  entry.figures?.of === "reading" && entry.outcome !== "agree"
    ? intervalPicture(entry.figures, entry.limits ?? [])
    : null;

const row = (one: Row): Markup =>
  html` <div class="row ${one.entry.outcome}">
    <div class="left">
      <h3>${one.item}${one.position === "" ? null : html`<span>, ${one.position}</span>`}</h3>
      ${side(one.stated)}
    </div>
    <div class="spine">
      <b aria-hidden="true">${outcomeSign[one.entry.outcome]}</b
      ><span>${outcomeWords(one.entry.outcome)}</span>
    </div>
    <div class="right">
      <small>${severityAndStanding(one.entry)}</small>${side(one.found)}
      ${needsSentence(one) ? html`<p class="why">${one.sentence}</p>` : null}
      ${one.limits.map((text) => html`<p class="limits"><small>${text}</small></p>`)}${picture(one)}
    </div>
  </div>`;

const severityAndStanding = ({ severity, calls, standing }: Row["entry"]): string =>
  [
    ...(severity === null ? [] : [severityWords(severity, isFoundBad({ calls, standing }))]),
    standingWords(standing),
  ].join(" · ");

const spread = (rows: readonly Row[]): Markup =>
  html` <div class="spread">
    <div class="head">
      <div>${catalog.stated}</div>
      <div class="spine">${catalog.outcomeHeading}</div>
      <div>${catalog.found}</div>
    </div>
    ${rows.map(row)}
  </div>`;

const section = (view: SectionView): Markup =>
  html` <h2 id="${view.section.id}">${catalog.section(view.section.number, view.section.words.american)}</h2>
    ${view.rows.length > 0 ? spread(view.rows) : null}
    ${
      view.unseenPlaces > 0
        ? html`<p class="note faint">
            ${outcomeSign.unseen} ${catalog.unseenBySection(view.unseenPlaces)}:
            ${listed(view.unseen.map(countedItem), "semicolon")}
          </p>`
        : null
    }
    ${view.quiet > 0 ? html`<p class="note faint">${catalog.quietBySection(view.quiet)}</p>` : null}`;

const tally = ({ comparison }: View): Markup =>
  html` <ul class="tally">
    ${Outcome.options.map(
      (outcome) =>
        html`<li title="${say(`outcome.${outcome}.means`)}">
          <b>${comparison.tally[outcome] ?? 0}</b>${outcomeSign[outcome]} ${outcomeWords(outcome)}
        </li>`,
    )}
  </ul>`;

const checks = ({ crossChecks: { broken, holding, untold }, comparison: { handbook, b } }: View): Markup =>
  html` <h2 id="checks">${catalog.crossChecks}</h2>
    ${handbook === undefined ? null : html`<p class="faint">${catalog.ownHandbook(handbook, b.organization)}</p>`}
    <ul class="checks">
      ${broken.map(
        (rule) =>
          html`<li>
            <b
              >${rule.strength === "contradicts" ? `${catalog.verdictSign.breaks} ${catalog.verdict.breaks}` : catalog.hint}</b
            >
            <small>${catalog.whose[rule.over]}</small
            ><span><em>${ruleTitle(rule)}.</em> ${rule.sentence}</span>
          </li>`,
      )}
    </ul>
    ${broken.length === 0 ? html`<p>${catalog.noneBroken}</p>` : null}
    ${holding.length > 0 ? html`<p class="faint">${catalog.rulesHold(holding)}</p>` : null}
    ${untold > 0 ? html`<p class="faint">${catalog.rulesCannotTell(untold)}</p>` : null}`;

const coverage = (view: View): Markup => {
  const words = new Map(view.sections.map(({ section: { id, words: named } }) => [id, named.american]));
  const { coverage: rows, softness, chance, scatter } = view.comparison;
  const scattered = scatter === undefined ? undefined : catalog.scatter(scatter);
  const line = (of: string, { onSheet, stated, seen, statedAndSeen }: typeof rows.whole): Markup =>
    html`<tr>
      <th scope="row">${of}</th>
      ${[onSheet, stated, seen, statedAndSeen].map((count) => html`<td>${count}</td>`)}
      <td>${stated === 0 ? "—" : formatShare(statedAndSeen / stated)}</td>
    </tr>`;
  return html`<h2 id="coverage">${catalog.coverage}</h2>
    <div class="scroll">
      <table>
        <thead>
          <tr>
            ${Object.values(catalog.coverageHead).map((text) => html`<th scope="col">${text}</th>`)}
          </tr>
        </thead>
        <tbody>
          ${rows.bySection.map((one) => line(words.get(one.of) ?? one.of, one))}${line(catalog.whole, rows.whole)}
        </tbody>
      </table>
    </div>
    <p>${catalog.softness(softness)}</p>
    <p>${catalog.chance(chance)}</p>
    ${scattered === undefined ? null : html`<p>${scattered}</p>`}
    ${catalog.likeness(view.comparison).map((said) => html`<p>${said}</p>`)}
    ${view.unseenDecisive.length > 0 ? html`<p>${outcomeSign.unseen} ${catalog.unseenDecisive}: ${listed(view.unseenDecisive, "semicolon")}</p>` : null}`;
};

const reportLine = (name: string, report: View["a"], seal: string | null): Markup =>
  html` <p>
    <b>${name}</b> ${say(`kind.${report.kind}`)} of ${report.visit.started.slice(0, 10)} by
    ${report.author.organization},
    ${catalog.findings(report.findings.length)}${seal === null ? null : `, ${catalog.sealed}`}
  </p>`;

const links = (view: View): Markup =>
  html` <nav>
    <a href="#pressing">${catalog.mostPressing}</a>${view.sections.map(
      ({ section: { id, words } }) => html`<a href="#${id}">${words.american}</a>`,
    )}<a href="#checks">${catalog.crossChecks}</a><a href="#coverage">${catalog.coverage}</a>
  </nav>`;

/** One self-contained page: facing pages with a spine, no script, nothing fetched. */
export const pageOf = (view: View, answer: Answer, priced: AnswerCost | null): string => {
  const { make, model, modelYear, identification } = view.comparison.vehicle;
  return html`<!doctype html>
    <html lang="en">
      <head>
        <meta charset="utf-8" />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'" />
        <title>${modelYear} ${make} ${model}: ${catalog.title}</title>
        <style>
          ${style}
        </style>
      </head>
      <body>
        <main>
          <h1>${modelYear} ${make} ${model}</h1>
          <p class="code">${identification}</p>
          ${reportLine("A", view.a, view.comparison.a.seal)}${reportLine("B", view.b, view.comparison.b.seal)}
          ${answerMarkup(answer, priced)} ${tally(view)}
          <p class="caution">${catalog.caution}</p>
          ${links(view)}
          <h2 id="pressing">${catalog.mostPressing}</h2>
          ${view.pressing.length > 0 ? spread(view.pressing) : html`<p>${catalog.noneInDoubt}</p>`}
          ${view.sections.map(section)} ${checks(view)} ${coverage(view)}
        </main>
      </body>
    </html> `.text;
};
