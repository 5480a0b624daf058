-- A notice of a deadline keeps what is owed, so that the application says it and leads to where it is done; of those written so far only
-- the car is known. And what is not read yet is counted at every page.
ALTER TABLE "notice" ADD COLUMN "step" TEXT;
CREATE INDEX "notice_unread" ON "notice" ("account_id") WHERE "read_at" IS NULL;
