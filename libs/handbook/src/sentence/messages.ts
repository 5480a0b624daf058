import { defineMessages } from "@evenhand/message/define-messages";

/** What stands in or behind the sentence of any rule; a rule's own sentences are in its record. */
export const messages = defineMessages("rule", {
  "of-practice": "{figure} (common practice)",
  "judged-by-firm": "Judged by the firm's own figure: {words}, {figure}.",
  "judged-by-maker": "Judged by the maker's figure: {words}, {figure}.",
  "read-again":
    "{said} It rests on {codes}, which was not read alike twice: read it again, with a photograph, before anything is made of it.",
});
