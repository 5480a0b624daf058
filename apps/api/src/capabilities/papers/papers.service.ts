import { Injectable } from "@nestjs/common";
import { answerPaper } from "@evenhand/paper/answer-paper";
import { summaryPaper } from "@evenhand/paper/summary-paper";
import { currentSheet } from "@evenhand/record/report-document";
import { sheetWords } from "@evenhand/wording/sheet-words";
import { Answer, type AnswerCost } from "@evenhand/shared/page-one";
import type { Actor } from "../../platform/auth/actor.ts";
import { FileAnswer } from "../../platform/http/file-answer.ts";
import type { JsonText } from "../../platform/http/json-text.ts";
import { SiteAddress } from "../../platform/http/site-address.ts";
import { drawOnePage, drawPages } from "../../platform/pdf/draw.ts";
import { ProblemError } from "../../platform/problems/problem-error.ts";
import { ComparisonsService } from "../comparisons/index.ts";
import { AnswerCostService, SummariesService } from "../summaries/index.ts";

type Page = { readonly answer: Answer; readonly hash: string };
type Priced = Page & { readonly cost: AnswerCost | null };

const jsonOf = ({ text }: JsonText): unknown =>
  JSON.parse(typeof text === "string" ? text : Buffer.from(text).toString("utf8"));

/** The answer and the summary as PDF, from what is stored: whoever may read the one may read its paper, and it is noted as shown. */
@Injectable()
export class PapersService {
  constructor(
    private readonly comparisons: ComparisonsService,
    private readonly summaries: SummariesService,
    private readonly costs: AnswerCostService,
    private readonly site: SiteAddress,
  ) {}

  /** Page one of a comparison, with the costs of whoever asks and keeps a table. */
  async answer(actor: Actor, comparison: string): Promise<FileAnswer> {
    const { answer, hash, cost } = await this.priced(actor, comparison);
    const address = `${this.site.base}/api/v1/comparisons/${comparison}/answer`;
    return FileAnswer.pdf("answer.pdf", await drawOnePage(answerPaper({ answer, cost, hash, address })));
  }

  /** Page one as data, with the same costs. */
  async priced(actor: Actor, comparison: string): Promise<Priced> {
    const page = await this.page(actor, comparison);
    return { ...page, cost: await this.cost(actor, comparison) };
  }

  /** A summary with what was decided on it. */
  async summary(actor: Actor, id: string): Promise<FileAnswer> {
    const { summary, hash, decision } = await this.summaries.read(actor, id);
    const { answer } = await this.page(actor, summary.comparison.id);
    const paper = summaryPaper({
      summary,
      decision,
      words: sheetWords(currentSheet),
      stated: answer.a.organization,
      found: answer.b.organization,
      hash,
      address: `${this.site.base}/api/v1/summaries/${id}/document`,
    });
    return FileAnswer.pdf("summary.pdf", await drawPages(paper));
  }

  private async page(actor: Actor, comparison: string): Promise<Page> {
    const stored = await this.comparisons.answer(actor, comparison);
    return { answer: Answer.parse(jsonOf(stored)), hash: stored.etag ?? "" };
  }

  /** `null` for whoever did not order the inspection, as on the screen. */
  private async cost(actor: Actor, comparison: string): Promise<AnswerCost | null> {
    if (actor.organizations("buyer").length === 0) return null;
    try {
      return await this.costs.get(actor, comparison);
    } catch (error) {
      if (error instanceof ProblemError && error.code === "not-found") return null;
      throw error;
    }
  }
}
