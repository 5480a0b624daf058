-- Offers with an end, a dealer's counter, and what the buyer said to that.
ALTER TYPE "counter_answer" ADD VALUE 'counter';

ALTER TABLE "decision" ADD COLUMN     "back_conditions" TEXT,
ADD COLUMN     "back_price_currency" TEXT,
ADD COLUMN     "back_price_minor" BIGINT,
ADD COLUMN     "back_until" TIMESTAMPTZ(3),
ADD COLUMN     "ended" TEXT,
ADD COLUMN     "ended_at" TIMESTAMPTZ(3),
ADD COLUMN     "replied_at" TIMESTAMPTZ(3),
ADD COLUMN     "replied_by" UUID,
ADD COLUMN     "reply" "counter_answer",
ADD COLUMN     "stands_until" TIMESTAMPTZ(3);
