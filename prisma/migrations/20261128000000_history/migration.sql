-- What a comparison with an inspection tells of the gauges it was read with, read out once. Of nobody but the inspector.
CREATE TABLE "past_pair" (
    "comparison_id" UUID NOT NULL,
    "report_id" UUID NOT NULL,
    "organization_id" UUID NOT NULL,
    "inspector_id" UUID NOT NULL,
    "against_id" UUID NOT NULL,
    "number" INTEGER NOT NULL,
    "readings" JSONB NOT NULL,

    CONSTRAINT "past_pair_pkey" PRIMARY KEY ("comparison_id")
);

-- What past pairs tell of a firm's inspectors and gauges. A row is never changed: comparisons name its hash.
CREATE TABLE "history_table" (
    "id" UUID NOT NULL,
    "organization_id" UUID NOT NULL,
    "hash" CHAR(64) NOT NULL,
    "document" BYTEA NOT NULL,
    "made_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "history_table_pkey" PRIMARY KEY ("id")
);

CREATE INDEX "past_pair_report_id_number_idx" ON "past_pair"("report_id", "number");
CREATE INDEX "history_table_organization_id_id_idx" ON "history_table"("organization_id", "id");

ALTER TABLE "past_pair" ADD CONSTRAINT "past_pair_comparison_id_fkey" FOREIGN KEY ("comparison_id") REFERENCES "comparison"("id") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE "history_table" ADD CONSTRAINT "history_table_organization_id_fkey" FOREIGN KEY ("organization_id") REFERENCES "organization"("id") ON DELETE RESTRICT ON UPDATE CASCADE;
