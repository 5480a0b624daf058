-- CreateTable
CREATE TABLE "cost_table_version" (
    "organization_id" UUID NOT NULL,
    "revision" INTEGER NOT NULL,
    "document" JSONB NOT NULL,
    "saved_by" UUID NOT NULL,
    "saved_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "cost_table_version_pkey" PRIMARY KEY ("organization_id","revision")
);

-- AddForeignKey
ALTER TABLE "cost_table_version" ADD CONSTRAINT "cost_table_version_organization_id_fkey" FOREIGN KEY ("organization_id") REFERENCES "organization"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- What stands is the first version that is known of.
INSERT INTO "cost_table_version" ("organization_id", "revision", "document", "saved_by", "saved_at")
SELECT "organization_id", "revision", "document", "updated_by", "updated_at" FROM "cost_table";
