import { defineMessages } from "@evenhand/message/define-messages";

/** What softens an answer, in sentences for a buyer: each with its counts, none about anybody's character. */
export const softMessages = defineMessages("soft", {
  "only-as-declared":
    "Of {readings, plural, one {# reading} other {# readings}} set against each other, {count, plural, one {# agrees or differs} other {# agree or differ}} only if both sides measured as exactly as they say; what was found better than stated {more, select, yes {speaks against it} other {does not speak against it}}.",
});
