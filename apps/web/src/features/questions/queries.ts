import type { QuestionState } from "@evenhand/shared/http/questions";
import { queryOptions } from "@tanstack/react-query";
import { call } from "../../service/client";
import { pagedQuery } from "../../service/pages";

export const questionsQuery = (wish: { readonly vehicle?: string; readonly state?: QuestionState }) =>
  pagedQuery(["questions", wish], (after, signal) =>
    call("questions.list", { query: { ...wish, after }, signal }),
  );

export const questionQuery = (id: string) =>
  queryOptions({
    queryKey: ["question", id],
    queryFn: ({ signal }) => call("questions.get", { params: { id }, signal }),
  });
