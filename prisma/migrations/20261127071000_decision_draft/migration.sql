-- CreateTable
CREATE TABLE "decision_draft" (
    "summary_id" UUID NOT NULL,
    "revision" INTEGER NOT NULL,
    "document" JSONB NOT NULL,
    "updated_by" UUID NOT NULL,
    "updated_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "decision_draft_pkey" PRIMARY KEY ("summary_id")
);

-- AddForeignKey
ALTER TABLE "decision_draft" ADD CONSTRAINT "decision_draft_summary_id_fkey" FOREIGN KEY ("summary_id") REFERENCES "summary"("id") ON DELETE RESTRICT ON UPDATE CASCADE;
