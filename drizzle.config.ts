import { defineConfig } from "drizzle-kit";

/** Used only to write a new migration after a change of the schema: `npx drizzle-kit generate`. */
export default defineConfig({
  dialect: "sqlite",
  schema: "./db/schema/*.ts",
  out: "./db/migrations",
});
