-- When and where an inspector was asked to look again before sealing; asked once, and NULL until then.
ALTER TABLE "report" ADD COLUMN     "second_look" JSONB;
