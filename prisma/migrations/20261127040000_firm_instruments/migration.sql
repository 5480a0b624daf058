-- CreateTable
CREATE TABLE "firm_instruments" (
    "organization_id" UUID NOT NULL,
    "revision" INTEGER NOT NULL,
    "document" JSONB NOT NULL,
    "updated_by" UUID NOT NULL,
    "updated_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "firm_instruments_pkey" PRIMARY KEY ("organization_id")
);

-- AddForeignKey
ALTER TABLE "firm_instruments" ADD CONSTRAINT "firm_instruments_organization_id_fkey" FOREIGN KEY ("organization_id") REFERENCES "organization"("id") ON DELETE CASCADE ON UPDATE CASCADE;
