-- AlterTable
ALTER TABLE "evidence_file" ADD COLUMN     "quality" JSONB;

-- CreateTable
CREATE TABLE "picture_print" (
    "number" BIGSERIAL NOT NULL,
    "file_id" UUID NOT NULL,
    "hashes" BYTEA NOT NULL,

    CONSTRAINT "picture_print_pkey" PRIMARY KEY ("number")
);

-- CreateTable
CREATE TABLE "picture_likeness" (
    "file_id" UUID NOT NULL,
    "other_id" UUID NOT NULL,
    "agreement" DOUBLE PRECISION NOT NULL,

    CONSTRAINT "picture_likeness_pkey" PRIMARY KEY ("file_id","other_id")
);

-- CreateIndex
CREATE UNIQUE INDEX "picture_print_file_id_key" ON "picture_print"("file_id");

-- CreateIndex
CREATE INDEX "picture_likeness_other_id_idx" ON "picture_likeness"("other_id");

-- AddForeignKey
ALTER TABLE "picture_print" ADD CONSTRAINT "picture_print_file_id_fkey" FOREIGN KEY ("file_id") REFERENCES "evidence_file"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "picture_likeness" ADD CONSTRAINT "picture_likeness_file_id_fkey" FOREIGN KEY ("file_id") REFERENCES "evidence_file"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "picture_likeness" ADD CONSTRAINT "picture_likeness_other_id_fkey" FOREIGN KEY ("other_id") REFERENCES "evidence_file"("id") ON DELETE CASCADE ON UPDATE CASCADE;
