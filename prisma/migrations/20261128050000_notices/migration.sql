-- How each account wants its news by mail, what of it waits for the morning's letter, and who was reminded of which deadline.
-- Every notice so far was mailed in the minute it was written.
ALTER TABLE "account" ADD COLUMN "news_mail" TEXT NOT NULL DEFAULT 'at-once',
  ADD CONSTRAINT "account_news_mail_known" CHECK ("news_mail" IN ('at-once', 'daily', 'deadlines'));

ALTER TABLE "notice" ADD COLUMN "due_at" TIMESTAMPTZ(3),
  ADD COLUMN "mailing" TEXT NOT NULL DEFAULT 'mailed',
  ADD CONSTRAINT "notice_mailing_known" CHECK ("mailing" IN ('mailed', 'waiting', 'none'));
CREATE INDEX "notice_waiting" ON "notice" ("account_id", "created_at") WHERE "mailing" = 'waiting';

CREATE TABLE "deadline_notice" (
  "organization_id" UUID NOT NULL,
  "subject" UUID NOT NULL,
  "step" TEXT NOT NULL,
  "deadline" TIMESTAMPTZ(3) NOT NULL,
  "told_at" TIMESTAMPTZ(3) NOT NULL,

  CONSTRAINT "deadline_notice_pkey" PRIMARY KEY ("organization_id", "subject", "step", "deadline")
);
CREATE INDEX "deadline_notice_told_at_idx" ON "deadline_notice"("told_at");
