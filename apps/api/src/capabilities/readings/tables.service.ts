import { Injectable } from "@nestjs/common";
import { currentSheet } from "@evenhand/record/report-document";
import type { TableQuery } from "@evenhand/shared/http/readings";
import { ReportDocument, ReportDraft } from "@evenhand/shared/http/reports";
import type { Report } from "@evenhand/shared/report";
import { namedFinding } from "@evenhand/tables/named-finding";
import { reportCsv, reportTable, reportWorkbook } from "@evenhand/tables/report-table";
import type { Actor } from "../../platform/auth/actor.ts";
import { FileAnswer } from "../../platform/http/file-answer.ts";
import type { JsonText } from "../../platform/http/json-text.ts";
import { ProblemError } from "../../platform/problems/problem-error.ts";
import { ReportsService, ReportVersionsService } from "../reports/index.ts";

type Form = TableQuery["form"];

const jsonOf = ({ text }: JsonText): unknown =>
  JSON.parse(typeof text === "string" ? text : Buffer.from(text).toString("utf8"));

const fileOf = (report: Report, form: Form): FileAnswer => {
  const table = reportTable(report, namedFinding(report, currentSheet));
  return FileAnswer.table(
    form,
    report.kind,
    form === "csv" ? Buffer.from(reportCsv(table)) : Buffer.from(reportWorkbook(table)),
  );
};

/** Reports as tables: whoever may read the report may take it with them, and reading it is noted as it is on the screen. */
@Injectable()
export class TablesService {
  constructor(
    private readonly reports: ReportsService,
    private readonly versions: ReportVersionsService,
  ) {}

  async ofDraft(actor: Actor, id: string, { form }: TableQuery): Promise<FileAnswer> {
    const draft = ReportDraft.safeParse(jsonOf(await this.reports.get(actor, id)));
    if (draft.success) return fileOf(draft.data.report, form);
    throw new ProblemError(
      "report-incomplete",
      "Something in this draft cannot be read any more, so that no table can be made of it. Its page names it: answer it anew, or take it away.",
    );
  }

  async ofVersion(actor: Actor, id: string, { form }: TableQuery): Promise<FileAnswer> {
    const document = ReportDocument.parse(jsonOf(await this.versions.document(actor, id)));
    if (document.format === "evenhand-report") return fileOf(document, form);
    throw new ProblemError(
      "not-permitted",
      "Until your own inspection is sealed you get this statement without its answers, and not as a table. Seal yours; then it comes whole.",
    );
  }
}
