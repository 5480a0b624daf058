import { Body, Controller, Query } from "@nestjs/common";
import {
  QuestionAnswer,
  QuestionChange,
  QuestionQuery,
  QuestionRequest,
} from "@evenhand/shared/http/questions";
import { By, Id, IfMatch } from "../../platform/access/parameters.ts";
import { Route } from "../../platform/access/route.ts";
import { Actor } from "../../platform/auth/actor.ts";
import { QuestionsService } from "./questions.service.ts";
import type { Transaction } from "../../platform/database/database.ts";
import { InTransaction } from "../../platform/http/in-transaction.ts";

@Controller()
export class QuestionsController {
  constructor(private readonly questions: QuestionsService) {}

  @Route("questions.create")
  create(
    @InTransaction() tx: Transaction,
    @By() actor: Actor,
    @Id() vehicle: string,
    @Body({ schema: QuestionRequest }) body: QuestionRequest,
  ) {
    return this.questions.create(tx, actor, vehicle, body);
  }

  @Route("questions.list")
  list(@By() actor: Actor, @Query({ schema: QuestionQuery }) query: QuestionQuery) {
    return this.questions.list(actor, query);
  }

  @Route("questions.get")
  get(@By() actor: Actor, @Id() id: string) {
    return this.questions.get(actor, id);
  }

  @Route("questions.change")
  change(
    @By() actor: Actor,
    @Id() id: string,
    @IfMatch() revision: number,
    @Body({ schema: QuestionChange }) body: QuestionChange,
  ) {
    return this.questions.change(actor, id, revision, body);
  }

  @Route("questions.answer")
  answer(
    @InTransaction() tx: Transaction,
    @By() actor: Actor,
    @Id() id: string,
    @IfMatch() revision: number,
    @Body({ schema: QuestionAnswer }) body: QuestionAnswer,
  ) {
    return this.questions.answer(tx, actor, id, revision, body);
  }
}
