-- CreateTable
CREATE TABLE "sheet_line" (
    "organization_id" UUID NOT NULL,
    "line" TEXT NOT NULL,
    "item" TEXT NOT NULL,
    "positions" TEXT[],
    "updated_by" UUID NOT NULL,
    "updated_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "sheet_line_pkey" PRIMARY KEY ("organization_id","line")
);

-- CreateIndex
CREATE INDEX "sheet_line_organization_id_updated_at_idx" ON "sheet_line"("organization_id", "updated_at");

-- AddForeignKey
ALTER TABLE "sheet_line" ADD CONSTRAINT "sheet_line_organization_id_fkey" FOREIGN KEY ("organization_id") REFERENCES "organization"("id") ON DELETE CASCADE ON UPDATE CASCADE;
