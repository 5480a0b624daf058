-- CreateTable
CREATE TABLE "evidence_file" (
    "id" UUID NOT NULL,
    "organization_id" UUID NOT NULL,
    "sha256" CHAR(64) NOT NULL,
    "bytes" INTEGER NOT NULL,
    "state" TEXT NOT NULL,
    "kind" TEXT,
    "refused" JSONB,
    "capture" JSONB,
    "width" INTEGER,
    "height" INTEGER,
    "placeholder" TEXT,
    "copies" JSONB NOT NULL DEFAULT '[]',
    "created_at" TIMESTAMPTZ(3) NOT NULL,
    "decided_at" TIMESTAMPTZ(3),

    CONSTRAINT "evidence_file_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "evidence" (
    "id" UUID NOT NULL,
    "report_id" UUID NOT NULL,
    "organization_id" UUID NOT NULL,
    "account_id" UUID NOT NULL,
    "item" TEXT NOT NULL,
    "position" TEXT NOT NULL,
    "caption" TEXT,
    "name" TEXT NOT NULL,
    "sha256" CHAR(64) NOT NULL,
    "bytes" INTEGER NOT NULL,
    "received" INTEGER NOT NULL,
    "parts" JSONB NOT NULL DEFAULT '[]',
    "state" TEXT NOT NULL,
    "refused" JSONB,
    "file_id" UUID,
    "sealed_in" INTEGER,
    "created_at" TIMESTAMPTZ(3) NOT NULL,
    "expires_at" TIMESTAMPTZ(3) NOT NULL,
    "removed_at" TIMESTAMPTZ(3),

    CONSTRAINT "evidence_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE UNIQUE INDEX "evidence_file_organization_id_sha256_key" ON "evidence_file"("organization_id", "sha256");

-- CreateIndex
CREATE INDEX "evidence_report_id_item_position_id_idx" ON "evidence"("report_id", "item", "position", "id");

-- CreateIndex
CREATE INDEX "evidence_file_id_idx" ON "evidence"("file_id");

-- AddForeignKey
ALTER TABLE "evidence" ADD CONSTRAINT "evidence_report_id_fkey" FOREIGN KEY ("report_id") REFERENCES "report"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "evidence" ADD CONSTRAINT "evidence_file_id_fkey" FOREIGN KEY ("file_id") REFERENCES "evidence_file"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- What the schema language cannot say.

-- The same file at the same place of a report is one, however often it is sent.
CREATE UNIQUE INDEX "evidence_once" ON "evidence" ("report_id", "item", "position", "sha256")
  WHERE "removed_at" IS NULL AND "refused" IS NULL;

ALTER TABLE "evidence"
  ADD CONSTRAINT "evidence_state_known" CHECK ("state" IN ('arriving', 'pending', 'checked', 'ready', 'refused')),
  ADD CONSTRAINT "evidence_received_within" CHECK ("received" BETWEEN 0 AND "bytes"),
  ADD CONSTRAINT "evidence_refused_why" CHECK (("state" = 'refused') = ("refused" IS NOT NULL)),
  ADD CONSTRAINT "evidence_sealed_stays" CHECK ("sealed_in" IS NULL OR ("removed_at" IS NULL AND "file_id" IS NOT NULL));

ALTER TABLE "evidence_file"
  ADD CONSTRAINT "evidence_file_state_known" CHECK ("state" IN ('checked', 'ready', 'refused')),
  ADD CONSTRAINT "evidence_file_refused_why" CHECK (("state" = 'refused') = ("refused" IS NOT NULL)),
  ADD CONSTRAINT "evidence_file_hash" CHECK ("sha256" ~ '^[0-9a-f]{64}$');
