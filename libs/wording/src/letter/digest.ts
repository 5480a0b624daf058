import { defineMessages } from "@evenhand/message/define-messages";

/** The letter that gathers news: each sentence once, with how often it happened. */
export const digestMessages = defineMessages("digest", {
  subject: "Your news since the last letter",
  line: "{sentence}{count, plural, one {} other { (# times)}}",
  lines: "{list}\n{next}",
  body: "{lines}\n\nSign in to read it: {address}/notices\n\nYou chose one letter a day. Choose otherwise here: {address}/account\n",
});
