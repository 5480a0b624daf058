-- AlterTable
ALTER TABLE "release" ADD COLUMN "matter" JSONB;
