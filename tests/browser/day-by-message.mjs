/** Loaded into a server before it starts: whoever serves it says which day it is, and days pass as they do for a server that is left running. It ends with them. */
process.on("message", (day) => {
  process.env.FARM_TODAY = day;
  process.send(day);
});
process.once("disconnect", () => process.exit());
