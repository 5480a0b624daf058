-- Gathered news comes at seven in the morning on the clock that somebody chose; where they chose none, as before on that of the
-- organization they joined first.
ALTER TABLE "account" ADD COLUMN "news_zone" TEXT;
