export { QuestionsModule } from "./questions.module.ts";
