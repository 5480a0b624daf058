import type { Answer, AnswerCost, AnsweredMatter } from "@evenhand/shared/page-one";
import { html } from "@evenhand/message/html";
import type { Markup } from "@evenhand/message/html";
import { costWords, likelyWords } from "./cost.ts";
import { answerWords } from "./words.ts";

const QUOTED = 2;

const matterItem = (one: AnsweredMatter, priced: AnswerCost | null): Markup => {
  const { matter, notes } = one;
  const likely = likelyWords(matter, priced);
  return html`<li class="${matter.severity}">
    <span class="grave">${matter.headline}</span> <small>${answerWords.grave(matter.severity)}</small><br />
    ${matter.found}. ${notes.slice(0, QUOTED).map(({ words }) => html`<q>${words}</q> `)}
    <b>${answerWords.next(one)}.</b>${likely === null ? null : html` To put right: ${likely}.`}
  </li>`;
};

const unknownItem = ({ matter }: AnsweredMatter): Markup =>
  html`<li>${matter.headline} (${matter.lines.length}): ${matter.found}</li>`;

const stops = ({ stops: all }: Answer): Markup => {
  const known = all.filter((stop) => stop.known);
  const unknown = all.filter((stop) => !stop.known);
  if (all.length === 0) return html`<p>${answerWords.stopsHeading}: ${answerWords.noStop}</p>`;
  return html`${
    known.length === 0
      ? null
      : html`<h2>${answerWords.stopsHeading}</h2>
          <ul>
            ${known.map(({ words }) => html`<li>${words}</li>`)}
          </ul>`
  }
  ${
    unknown.length === 0
      ? null
      : html`<p>
          <b>${answerWords.couldStop(unknown.length)}:</b> ${unknown.map(({ words }) => words).join("; ")}
        </p>`
  }`;
};

const cost = (answer: Answer, priced: AnswerCost | null): Markup => {
  const said = costWords(answer, priced);
  if (said === null) return html`<p>${answerWords.noCost}</p>`;
  return html`<p><b>${said.range}</b> ${said.from}</p>
    <ul>
      ${said.largest.map((words) => html`<li>${words}</li>`)}
    </ul>`;
};

const soft = ({ soft: all = [] }: Answer): Markup | null =>
  all.length === 0
    ? null
    : html`<h2>${answerWords.softHeading}</h2>
        <ul>
          ${all.map(
            ({ words, figures }) =>
              html`<li>${words}${figures === undefined ? null : html` <small>${figures}</small>`}</li>`,
          )}
        </ul>`;

/** Page one of the page, and of what is printed: the lines stand behind it. */
export const answerMarkup = (answer: Answer, priced: AnswerCost | null): Markup =>
  html`<section class="answer">
    <p>${answerWords.lookedHeading} ${answerWords.looked(answer.looked)}</p>
    ${stops(answer)}
    <h2>${answerWords.claimsHeading}</h2>
    <p>${answerWords.claims(answer.claims)}</p>
    <ul>
      ${answer.claims.fallen.map((words) => html`<li>${answerWords.fell} ${words}</li>`)}
    </ul>
    <h2>${answerWords.mattersHeading}</h2>
    ${
      answer.matters.length === 0
        ? html`<p>${answerWords.noMatter}</p>`
        : html`<ol>
            ${answer.matters.map((one) => matterItem(one, priced))}
          </ol>`
    }
    ${
      answer.unknown.length === 0
        ? null
        : html`<h2>${answerWords.unknownHeading}</h2>
            <ul>
              ${answer.unknown.map(unknownItem)}
            </ul>`
    }
    <h2>${answerWords.costHeading}</h2>
    ${cost(answer, priced)}
    <h2>${answerWords.questionsHeading}</h2>
    <ol>
      ${answer.questions.map((question) => html`<li>${question}</li>`)}
    </ol>
    ${soft(answer)}
  </section>`;
